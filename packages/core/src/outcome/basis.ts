import type { SourceKey } from "./source-key.ts";

/** What a result rests on: the rule that made it, where the rule is from, what it takes for granted. */
export interface Basis {
  readonly rule: string;
  readonly source: SourceKey;
  readonly assumes: readonly string[];
}
