import type { Amount, LoopWord, Target } from "../tree.ts";
import type { Noun } from "./nouns.ts";

/** A place while its words are being read. */
export interface Draft {
  ref: Target["ref"] | null;
  each: boolean;
  count?: Amount;
  nth?: Amount;
  noun: Noun | null;
  of?: Target;
  rowsBelow?: number;
  ofRow?: Amount;
  from?: "hook" | "start" | "end";
  loops?: LoopWord;
  /** "underside of": the chain's other side. */
  underside?: boolean;
}
