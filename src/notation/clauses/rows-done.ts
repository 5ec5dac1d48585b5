import type { Amount } from "../tree.ts";
import { readAmount } from "./amounts.ts";
import type { Reading } from "./reading.ts";

const ROWS = "rows|rnds|rounds";
/** What brings the number, right before it. */
const HAVE = "has|have|are now|then? been? worked|made|done|completed? a? total? of?";
/** What ends the sentence behind "N rows". */
const OVER = ["in total|all", "altogether", "so far"];
/** What says of "N rows" that they are there. */
const DONE = "are|have been? now? done|worked|complete|completed|finished|made";

/**
 * "You have now worked 44 rows", "there are 49 rnds", "20 armhole rows are done": how many rows a statement says there are. The
 * cursor stands behind the statement, and stays.
 *
 * @param from  index of the statement's first token
 */
export function readRowsDone(reading: Reading, from: number): Amount | null {
  const { cursor } = reading;
  const end = cursor.at;
  let found: Amount | null = null;
  for (cursor.at = from; cursor.at < end && !found; cursor.at += 1) {
    const at = cursor.at;
    const noun = cursor.fits(ROWS, 1) > 0 ? 1 : cursor.isWord(1) && cursor.fits(ROWS, 2) > 0 ? 2 : 0;
    if (!cursor.isNumber() || noun === 0) continue;
    const done = at === from && cursor.fits(DONE, noun + 1) > 0;
    const over = cursor.isBoundary(noun + 1) || OVER.some((words) => cursor.fits(words, noun + 1) > 0);
    if (!done && !(over && isBrought(reading, from, at))) continue;
    found = readAmount(reading);
  }
  cursor.at = end;
  return found;
}

function isBrought({ cursor }: Reading, from: number, number: number): boolean {
  for (let at = Math.max(from, number - 6); at < number; at += 1) {
    const length = cursor.fits(HAVE, at - number);
    if (length > 0 && at + length === number) return true;
  }
  return false;
}
