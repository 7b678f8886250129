import { refuse, succeed, type Outcome } from "@nightspan/core";
import { MOST_BYTES } from "@nightspan/edge";

/** Whether what the user named is an address and not a file. */
export function isAddress(named: string): boolean {
  return /^https?:\/\//i.test(named);
}

/**
 * The text at an address that the user gave: asked once, nothing sent along, at most 20 MB and half a minute. An address
 * that sends on elsewhere is refused, so that only the host that was named is ever asked.
 */
export async function fetchText(address: string, waitMs = WAIT_MS): Promise<Outcome<string>> {
  if (!URL.canParse(address)) return refuse("address", address, "a whole http or https address");
  const signal = AbortSignal.timeout(waitMs);
  try {
    const response = await fetch(address, { redirect: "manual", credentials: "omit", signal });
    if (response.status >= 300 && response.status < 400)
      return refuse("address", sentOn(response), "an address that answers itself");
    if (!response.ok) return refuse("address", `status ${response.status}`, "an address that answers");
    return await textOf(response);
  } catch (error) {
    return refuse("address", reason(error, waitMs), "an address that answers");
  }
}

const WAIT_MS = 30_000;

function sentOn({ headers, status }: Response): string {
  const to = headers.get("location");
  return to === null ? `status ${status}` : `sent on to ${to}`;
}

/** Stops reading as soon as it is too much. */
async function textOf(response: Response): Promise<Outcome<string>> {
  const parts: Uint8Array[] = [];
  let size = 0;
  const body: AsyncIterable<Uint8Array> | null = response.body;
  for await (const part of body ?? []) {
    size += part.byteLength;
    if (size > MOST_BYTES) return refuse("address", "more than 20 MB", "at most 20 MB");
    parts.push(part);
  }
  try {
    return succeed(new TextDecoder("utf-8", { fatal: true }).decode(Buffer.concat(parts)));
  } catch {
    return refuse("address", "bytes that are no text", "text in UTF-8");
  }
}

function reason(error: unknown, waitMs: number): string {
  if (!(error instanceof Error)) throw error;
  if (error.name === "TimeoutError") return `no answer within ${waitMs / 1000} s`;
  const { cause } = error;
  const code = cause instanceof Error && "code" in cause ? String(cause.code) : "";
  return code === "" ? error.message : `no answer (${code})`;
}
