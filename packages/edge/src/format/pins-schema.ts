import * as z from "zod/mini";
import { record, text } from "./fields.ts";
import { id } from "./ground-schema.ts";

/** A berth that is kept: this sleeper between these two trees. Its rules between fields are in `pin-checks.ts`. */
export const pinSchema = record("a pin", {
  sleeper: id(),
  trees: z.optional(
    z
      .tuple([text("a tree", 200), text("a tree", 200)], { error: "two ids or tags of trees" })
      .check(z.describe("ids or tags of two trees; or say pair instead")),
  ),
  pair: z.optional(id()),
  head: z.optional(text("the id or tag of the tree at the head", 200)),
});
