import { jsonSchemas } from "@nightspan/edge";
import { EXIT, type ExitCode } from "../exit-code.ts";
import type { Io } from "../io.ts";
import { tellRefusals } from "../refusals.ts";

/** `schema`: the JSON Schema of one file, or all by name. */
export function schemaCommand(name: string | undefined, io: Io): ExitCode {
  const schemas = jsonSchemas();
  if (name !== undefined && name !== "camp" && name !== "plan" && name !== "log") {
    return tellRefusals("schema", [{ field: "NAME", got: name, need: '"camp", "plan" or "log"' }], io);
  }
  io.out(`${JSON.stringify(name === undefined ? schemas : schemas[name], null, 2)}\n`);
  return EXIT.done;
}
