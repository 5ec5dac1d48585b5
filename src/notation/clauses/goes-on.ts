import type { RemarkClause } from "../tree.ts";
import type { Reading } from "./reading.ts";

const WAYS = [
  "continue|cont|continuing|carry-on|go-on|keep|keeping in|on|to this|the? same? way|manner|fashion",
  "continue|cont|continuing|keep|keeping|go on? increasing|decreasing|adding|working|inc|dec? in this|the? same? way|manner|fashion",
  "go|keep|carry|continue on? adding|increasing|decreasing",
  "continue|cont thus|so|likewise",
];
/** What is done in further rows, said as a way of working and not stitch by stitch. */
const DOING = "working|adding|increasing|decreasing|making|with|having|always|inc|dec|one|by";

/**
 * "Continue in this way, working 1 more dc between increases on each round, until ...": rows that change from one to the next by a
 * rule of their own. The rule is not read; where they end is left to the words behind it.
 */
export function readGoesOn(reading: Reading): RemarkClause | null {
  return reading.cursor.attempt(() => {
    const { cursor } = reading;
    const start = cursor.at;
    if (!cursor.acceptAny(WAYS)) return null;
    const shaped = /\b(?:add|inc|dec)/iu.test(cursor.wordsFrom(start));
    cursor.accept(",|;|-|:");
    if (!shaped && !cursor.fits(DOING)) return null;
    while (!cursor.done && !cursor.isMark(".") && !cursor.fits("until|till") && !cursor.isOpener())
      cursor.at += 1;
    const span = cursor.spanFrom(start);
    return { kind: "remark", span, words: reading.words(span) };
  });
}
