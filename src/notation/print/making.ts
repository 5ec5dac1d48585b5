import { hasStitch, stitchOf } from "../../stitches/index.ts";
import type {
  ChainClause,
  CountsAs,
  GroupClause,
  SkipClause,
  Target,
  UnderstoodClause,
  WorkClause,
} from "../tree.ts";
import { goesWithoutSaying, isOne, printAmount } from "./amounts.ts";
import { printTarget, printWorkedPlace } from "./places.ts";
import { LOOP_NAMES, printParts, printStitch, printStitches, SHORT_LOOPS } from "./stitch-words.ts";
import type { PrintStyle, Setting } from "./style.ts";

/** "ch 3 (counts as dc)", "ch a multiple of 8 plus 5". */
export function printChain(clause: ChainClause, setting: Setting): string {
  const { multiple, countsAs } = clause;
  const chain = multiple
    ? `ch a multiple of ${multiple.of}${multiple.plus === 0 ? "" : ` plus ${multiple.plus}`}`
    : `ch ${printAmount(clause.count)}`;
  if (!countsAs) return chain;
  const meaning =
    countsAs.parts.length === 0 ? "does not count as a st" : `counts as ${meant(countsAs, setting)}`;
  return `${chain} (${meaning}${throughout(countsAs)})`;
}

/** What the chains passed over before the hook stand for: "(skipped ch count as dc)". */
function printSkipped(countsAs: CountsAs, setting: Setting): string {
  const meaning =
    countsAs.parts.length === 0 ? "do not count as a st" : `count as ${meant(countsAs, setting)}`;
  return `(skipped ch ${meaning}${throughout(countsAs)})`;
}

function meant(countsAs: CountsAs, setting: Setting): string {
  return printParts(countsAs.parts, setting.style);
}

function throughout(countsAs: CountsAs): string {
  return countsAs.throughout ? " here and throughout" : "";
}

/** "sc in next 5 sts", "2 dc in last st", "24 hdc BLO", "FPdc around next st". */
export function printWork(clause: WorkClause, setting: Setting): string {
  const { style } = setting;
  const { stitch, count, target } = clause;
  const number = count === undefined || goesWithoutSaying(count) ? "" : `${printAmount(count)} `;
  const name =
    count === undefined || isOne(count) ? printStitch(stitch, style) : printStitches(stitch, style);
  const parts = [`${number}${name}`];
  if (clause.loops) parts.push(SHORT_LOOPS[clause.loops] ?? `in ${LOOP_NAMES[clause.loops]}`);
  if (clause.colour !== undefined) parts.push(`with ${clause.colour}`);
  const place = printPlace(target, setting, prepositionOf(stitch, target));
  if (place !== "") parts.push(place);
  if (target.countsAs) parts.push(printSkipped(target.countsAs, setting));
  if (clause.named !== undefined) parts.push(`(${printStitch(clause.named, style)} made)`);
  return parts.join(" ");
}

/** "(sc, ch 2, sc) in next st". */
export function printGroup(clause: GroupClause, setting: Setting): string {
  const body = setting.inner(clause.body, setting);
  const named = clause.named === undefined ? "" : ` (${printStitch(clause.named, setting.style)} made)`;
  return `(${body}) ${printPlace(clause.target, setting, "in") || "in same place"}${named}`;
}

/** "skip next 2 sts", "skip to next ch-1 sp"; "miss" in British terms. */
export function printSkip(clause: SkipClause, setting: Setting): string {
  const word = skipWord(setting.style);
  const counts = clause.target.countsAs ? ` ${printSkipped(clause.target.countsAs, setting)}` : "";
  // A stitch that is passed over has not been worked yet.
  const place = printTarget(clause.target, setting).replace(/\bskipped (?=sts?\b)/, "unworked ");
  return `${word} ${clause.to ? "to " : ""}${place}${counts}`;
}

/** "5", "2 in next st": the stitch is the one before. */
export function printUnderstood(clause: UnderstoodClause, setting: Setting): string {
  const place = printPlace(clause.target, setting, "in");
  return place === "" ? printAmount(clause.count) : `${printAmount(clause.count)} ${place}`;
}

function skipWord(style: PrintStyle): string {
  return style.terms === "US" ? "skip" : "miss";
}

/** The place with its preposition: "in next st", "in each st across"; nothing where no place was said. */
function printPlace(target: Target, setting: Setting, preposition: string): string {
  if (target.ref === "here" && target.what.is === "any" && target.count === undefined) return "";
  const place = printWorkedPlace(target, setting);
  return target.what.is === "between" ? place : `${preposition} ${place}`;
}

/** Stitches round a post go around it; a stitch that takes several is worked over them. */
function prepositionOf(stitch: string, target: Target): string {
  if (!hasStitch(stitch)) return "in";
  const { hold, takes } = stitchOf(stitch);
  if (hold === "front-post" || hold === "back-post") return takes > 1 ? "over" : "around";
  return takes > 1 && target.ref === "next" && target.each !== true ? "over" : "in";
}
