import type { Span } from "../../base/index.ts";
import type { ReadContext } from "../context.ts";
import type { Token } from "../token.ts";
import type { Claim, Clause } from "../tree.ts";
import { Cursor } from "./cursor.ts";

/** The same fields, each of which may be undefined; `made` leaves those out. */
export type Loose<T> = { [K in keyof T]: T[K] | undefined };

/** Builds a node without its undefined fields. */
export function made<T>(fields: Loose<T>): T {
  const node: Record<string, unknown> = {};
  for (const [name, value] of Object.entries(fields)) if (value !== undefined) node[name] = value;
  return node as T;
}

/** A star or other mark that opened a repeat. */
export interface OpenMark {
  readonly mark: string;
  /** Where its clauses begin in the list being built. */
  readonly index: number;
  readonly span: Span;
  /** Index of the first clause after a `**`. */
  inner?: number;
}

/** Reads a sequence of clauses up to the fence of the cursor. Set once by the sequence reader; the clause readers call it. */
export type SequenceReader = (reading: Reading) => Clause[];

/** Beyond this many brackets inside each other nobody can follow the text, and the reader does not try. */
export const DEEPEST = 12;

/** The state of reading one row: where it is, what was said last, what was collected. */
export class Reading {
  readonly cursor: Cursor;
  readonly claims: Claim[] = [];
  /** Slips of the text that were read all the same. */
  readonly forgiven: { readonly span: Span; readonly words: string }[] = [];
  /** The clauses of the sequence being read, so that a clause can look back. */
  out: Clause[] = [];
  /** The stitch a bare number stands for. */
  lastStitch: { readonly code: string; readonly span: Span } | null = null;
  depth = 0;
  /** Inside a bracket that is worked several times, where rows may be listed by name. */
  inRepeat = false;

  constructor(
    tokens: readonly Token[],
    readonly context: ReadContext,
    private readonly sequence: SequenceReader,
  ) {
    this.cursor = new Cursor(tokens);
  }

  get terms(): "US" | "UK" {
    return this.context.terms;
  }

  get specials(): ReadonlyMap<string, string> {
    return this.context.specials;
  }

  /** Reads the clauses between here and the token at `end`, which is not passed. */
  inside(end: number): Clause[] {
    const before = this.out;
    this.depth += 1;
    try {
      return this.cursor.within(end, () => this.sequence(this));
    } finally {
      this.depth -= 1;
      this.out = before;
    }
  }

  /** The designer's own characters. */
  words(span: Span): string {
    return this.context.text.slice(span.from, span.to).replace(/\s+/gu, " ").trim();
  }
}

/** Reads one clause, or several, at the cursor; null where the words are not its own. A reader that fails may leave the cursor anywhere. */
export type ClauseReader = (reading: Reading) => Clause | readonly Clause[] | null;
