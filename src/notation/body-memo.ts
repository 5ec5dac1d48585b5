import { Kept } from "../base/index.ts";
import type { ReadContext } from "./context.ts";
import { readCount } from "./count-braces.ts";
import { moved, noteMoved } from "./moved.ts";
import type { Claim, Clause, PatternTree } from "./tree.ts";

/** What was read of the body of one row. */
export interface Body {
  readonly clauses: readonly Clause[];
  readonly claims: readonly Claim[];
  readonly lists: readonly PatternTree["sizeLists"][number][];
  /** Slips in numbers, and slips in words, that were read all the same. */
  readonly mended: readonly PatternTree["forgiven"][number][];
  readonly forgiven: readonly PatternTree["forgiven"][number][];
}

interface BodyRead {
  /** Where in its text it stood when it was read. */
  readonly at: number;
  readonly body: Body;
  /** The copies made last, and where they stand. */
  readonly copies: { at: number; body: Body }[];
}

/** Bodies of rows read before, by their words and all that their reading depends on. */
const bodies = new Kept<string, BodyRead>(3000);

/** Copies of one body that are kept: rows of the same words, and the places a row has been pushed to and fro by edits. */
const MOST_COPIES = 4;

/** Words longer than this are no row that anybody repeats. */
const LONGEST = 4000;

/** All that the reading of a row depends on beside its own words, as a text. */
export function contextKey(context: ReadContext): string {
  const { terms, sizes, sizeNames, specials, colours, counts } = context;
  return JSON.stringify([terms, sizes, sizeNames, [...specials], colours, counts !== undefined]);
}

/**
 * The body of a row, read now or before.
 *
 * @param key   the context, as `contextKey` has it, and what else the reading depends on
 * @param read  reads it where it stands
 */
export function recallBody(
  key: string,
  context: ReadContext,
  from: number,
  to: number,
  read: () => Body,
): Body {
  const words = context.text.slice(from, to);
  if (words.length > LONGEST) return read();
  const whole = `${words}\n${countsIn(words, context)}\n${key}`;
  const known = bodies.get(whole);
  if (!known) {
    const body = read();
    bodies.set(whole, { at: from, body, copies: [] });
    return body;
  }
  if (known.at === from) return known.body;
  const before = known.copies.find((copy) => copy.at === from);
  if (before) return before.body;
  const body = moved(known.body, from - known.at);
  noteMoved(body.clauses, known.body.clauses, from - known.at);
  if (known.copies.length >= MOST_COPIES) known.copies.shift();
  known.copies.push({ at: from, body });
  return body;
}

/** The values of the counts in braces. */
function countsIn(words: string, { counts }: ReadContext): string {
  if (!counts) return "";
  let found = "";
  for (let at = words.indexOf("{"); at !== -1; at = words.indexOf("{", at + 1))
    found += `${at}:${JSON.stringify(readCount(words, at, counts)?.values ?? null)}`;
  return found;
}
