import { loopWordOf } from "../stitch-words.ts";
import type { LoopWord } from "../tree.ts";
import type { Reading } from "./reading.ts";

/** Whether loop words stand here. */
export function startsWithLoops(reading: Reading): boolean {
  const { cursor } = reading;
  return (
    loopWordOf(cursor.key()) !== null ||
    cursor.fits("the? front|back|both|3rd|third loop|lp|loops|lps|bump|bumps|hump|humps|bar|ridge") > 0
  );
}

const LOOP_NOUN = "loop|loops|lp|lps|lop|lo|strand|strands|thread|threads|half|leg|legs";

/** "back loop only of", "both loops of", "the blo", "back bump"; null and no step where no loop is named. */
export function readLoops(reading: Reading): LoopWord | null {
  return reading.cursor.attempt(() => {
    const { cursor } = reading;
    cursor.accept("only");
    cursor.accept("the");
    const word = cursor.isWord() ? loopWordOf(cursor.key()) : null;
    let loops: LoopWord | null = word;
    if (word) cursor.at += 1;
    else if (cursor.accept(`back|rear|bk|far ${LOOP_NOUN}`)) loops = "back";
    else if (cursor.accept(`front|near|fr ${LOOP_NOUN}`)) loops = "front";
    else if (cursor.accept(`both|2|two|entire ${LOOP_NOUN}`)) loops = "both";
    else if (cursor.accept(`3rd|third ${LOOP_NOUN}`)) loops = "third";
    else if (cursor.accept("back|bottom bump|bumps|hump|humps|ridge|bar|vein|nub")) loops = "back-bump";
    if (!loops) return null;
    cursor.accept("only|onl");
    return loops;
  });
}

/** Whether loop words stand behind the place just read. */
export function loopsAhead(reading: Reading): boolean {
  const { cursor } = reading;
  return (
    cursor.attempt(() => {
      const start = cursor.at;
      const loops = readLoopsAfter(reading);
      cursor.at = start;
      return loops ? true : null;
    }) === true
  );
}

/** "sc in next 3 sts in back loops only", "dc across blo". */
export function readLoopsAfter(reading: Reading): LoopWord | null {
  const { cursor } = reading;
  cursor.accept("working|worked? in|into|through|thru|using");
  const loops = readLoops(reading);
  if (!loops || cursor.fits("of")) return null;
  return loops;
}
