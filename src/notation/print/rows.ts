import { ordinal, sayList } from "../../base/index.ts";
import type {
  Amount,
  AsPieceClause,
  Beat,
  EvenClause,
  EvenlyClause,
  InPatternClause,
  RepeatRowsClause,
  RowRange,
  RowsMeant,
  ScheduleClause,
  Until,
} from "../tree.ts";
import { isOne, printAmount, printMeasure, printOrdinal, printTimes } from "./amounts.ts";
import { printAlong } from "./ends.ts";
import { lead } from "./own-words.ts";
import { printTarget } from "./places.ts";
import { printStitch, printStitches } from "./stitch-words.ts";
import { RowWord, rowWord, type Setting } from "./style.ts";

/** "Rows 3 and 4", "Row 2", "Rows 3-6 (9, 11), 12 and 14" without the word in front: "3 and 4". */
export function printRanges(ranges: readonly RowRange[]): string {
  return sayList(ranges.map(printRange));
}

/** "8", "8-19 (21, 25)"; a beginning that differs by size stands beside its end: "8-19 (9-21, 10-25)". */
function printRange({ from, to }: RowRange): string {
  if (sameAmount(from, to)) return printAmount(from);
  if (from.values.length === 1) return `${printAmount(from)}-${printAmount(to)}`;
  if (from.values.length !== to.values.length) return `${printAmount(from)} to ${printAmount(to)}`;
  const [first, ...rest] = from.values.map((value, size) => `${value ?? "—"}-${to.values[size] ?? "—"}`);
  return `${first} (${rest.join(", ")})`;
}

function sameAmount(a: Amount, b: Amount): boolean {
  return a.values.length === b.values.length && a.values.every((value, index) => value === b.values[index]);
}

/** Whether the ranges name more than one row, so that the word in front is a plural. */
export function areSeveral(ranges: readonly RowRange[]): boolean {
  return ranges.length > 1 || ranges.some((range) => !sameAmount(range.from, range.to));
}

/** "rep Rows 3 and 4 6 more times", "rep last 2 rows until piece measures 28 cm". */
export function printRepeatRows(clause: RepeatRowsClause, setting: Setting): string {
  const said = clause.times === undefined ? "" : printTimes(clause.times, true);
  // A bracket directly behind the number of a row would be the other sizes of that number.
  const times = said === "" ? "" : said.startsWith("(") ? ` for ${said}` : ` ${said}`;
  const until = clause.until ? sayUntil(clause.until, setting) : "";
  return `rep ${printRowsMeant(clause.rows, setting)}${times}${until}`;
}

function printRowsMeant(rows: RowsMeant, setting: Setting): string {
  switch (rows.are) {
    case "numbered": {
      const word = `${RowWord(setting)}${areSeveral(rows.list) ? "s" : ""}`;
      return `${word} ${printRanges(rows.list)}${rows.piece === undefined ? "" : ` of ${rows.piece}`}`;
    }
    case "last":
      return isOne(rows.count)
        ? `last ${rowWord(setting)}`
        : `last ${printAmount(rows.count)} ${rowWord(setting)}s`;
    case "pattern":
      return "pattern";
  }
}

/** The same behind what it ends; an ending alone takes a comma. */
function sayUntil(until: Until, setting: Setting): string {
  const words = printUntil(until, setting);
  return words === "" ? "" : words.startsWith("ending") ? `, ${words}` : ` ${words}`;
}

/** "until piece measures 28 cm from beg, ending with a WS row". */
export function printUntil(until: Until, setting: Setting): string {
  const parts: string[] = [];
  if (until.measure) {
    parts.push(
      `until piece measures ${printMeasure(until.measure)}${until.from === "beginning" ? " from beg" : ""}`,
    );
  }
  if (until.rows && until.more) parts.push(`for ${printAmount(until.rows)} more ${rowWord(setting)}s`);
  else if (until.rows) parts.push(`until ${printAmount(until.rows)} ${rowWord(setting)}s have been worked`);
  if (until.stitches) parts.push(`until ${printAmount(until.stitches)} sts remain`);
  if (!until.measure && until.from === "other" && setting.own)
    return lead(setting.own(until.span).replace(/^[,;\s]+/u, ""));
  if (until.endingSide) parts.push(`ending with a ${until.endingSide} ${rowWord(setting)}`);
  if (until.endingRow) parts.push(`ending with ${RowWord(setting)} ${printAmount(until.endingRow)}`);
  return parts.join(", ");
}

/** "work even in pattern for 6 rows", "sc in each st for 10 rows". */
export function printEven(clause: EvenClause, setting: Setting): string {
  const pattern = clause.inPattern ? " in pattern" : "";
  const work =
    clause.stitch === undefined
      ? `work even${pattern}`
      : `${printStitch(clause.stitch, setting.style)} in each st${pattern}`;
  // "until 26 rows have been worked" says the number itself.
  const rows =
    clause.rows && !(clause.until?.rows && !clause.until.measure)
      ? ` for ${printAmount(clause.rows)} ${rowWord(setting)}${isOne(clause.rows) ? "" : "s"}`
      : "";
  return `${work}${rows}${clause.until ? sayUntil(clause.until, setting) : ""}`;
}

/** "work in pattern to last 6 sts", "work in pattern across next 20 sts". */
export function printInPattern(clause: InPatternClause, setting: Setting): string {
  const { target } = clause;
  if (target.ref === "each" && target.what.is === "any" && target.count === undefined && target.until) {
    const words = printTarget(target, setting);
    return `work in pattern ${words.replace(/^each st /, "")}`;
  }
  if (target.ref === "here") return "work in pattern";
  return `work in pattern across ${printTarget(target, setting)}`;
}

const PLACES = {
  "each-end": "each end",
  "neck-edge": "at neck edge",
  "armhole-edge": "at armhole edge",
  beginning: "at beg",
  end: "at end",
  "one-edge": "at one edge",
  "each-marker": "at each marker",
} as const;

/** "inc 1 st each end of next row, then every 4th row 6 times". */
export function printSchedule(clause: ScheduleClause, setting: Setting): string {
  const together = clause.together ? "at the same time, " : "";
  const sts = `${clause.change} ${printAmount(clause.by)} ${isOne(clause.by) ? "st" : "sts"}`;
  const parts: string[] = [];
  if (clause.first) parts.push(`of ${firstRow(clause.first)} ${rowWord(setting)}`);
  for (const beat of clause.beats) {
    parts.push(`${parts.length > 0 ? "then " : ""}${printBeat(beat, setting)}`);
  }
  const until = clause.until ? sayUntil(clause.until, setting) : "";
  return `${together}${sts} ${PLACES[clause.where]}${parts.length > 0 ? ` ${parts.join(", ")}` : ""}${until}`;
}

function firstRow(first: Amount): string {
  return first.values.every((value) => value === 1) ? "next" : printOrdinal(first);
}

function printBeat(beat: Beat, setting: Setting): string {
  const times = beat.times ? ` ${printTimes(beat.times, false)}` : "";
  return `every ${step(beat.every)}${rowWord(setting)}${times}`;
}

function step(every: Amount): string {
  const [only] = every.values;
  if (every.values.length > 1 || only === undefined || only === null) return `${printOrdinal(every)} `;
  return only === 1 ? "" : only === 2 ? "other " : `${ordinal(only)} `;
}

/** "dec 6 sts evenly", "48 sc evenly along neck edge", "inc evenly to 84 sts". */
export function printEvenly(clause: EvenlyClause, setting: Setting): string {
  const { count, total } = clause;
  const along = clause.along ? ` ${printAlong(clause.along, setting).replace(/^working /, "")}` : "";
  const to = total ? ` to ${printAmount(total)} sts` : "";
  if (clause.change === "make") {
    const stitch =
      clause.stitch === undefined
        ? isOne(count)
          ? "st"
          : "sts"
        : count === undefined
          ? printStitch(clause.stitch, setting.style)
          : printStitches(clause.stitch, setting.style);
    return `work ${count ? `${printAmount(count)} ` : ""}${stitch} evenly${along}${to}`;
  }
  const sts = count ? ` ${printAmount(count)} ${isOne(count) ? "st" : "sts"}` : "";
  return `${clause.change}${sts} evenly${along}${to}`;
}

/** "work as for Left Front to Row 12, reversing shaping". */
export function printAsPiece(clause: AsPieceClause, setting: Setting): string {
  const until = clause.until ? sayUntil(clause.until, setting) : "";
  return `work as for ${clause.piece}${until}${clause.reversing ? ", reversing shaping" : ""}`;
}
