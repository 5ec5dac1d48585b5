import { plural } from "../../base/index.ts";
import type { Limit, PlaceWord, Target } from "../tree.ts";
import { goesWithoutSaying, isOne, printAmount, printOrdinal } from "./amounts.ts";
import { LOOP_NAMES, printStitch, printStitches } from "./stitch-words.ts";
import type { Setting } from "./style.ts";
import { RowWord } from "./style.ts";

/** A place by its word: "st", "dc", "ch-2 sp", "turning ch"; `many` for more than one. */
export function printPlaceWord(what: PlaceWord, many: boolean, setting: Setting): string {
  const { style } = setting;
  switch (what.is) {
    case "stitch":
      return many ? printStitches(what.code, style) : printStitch(what.code, style);
    case "turning-chain":
      return what.chains === undefined ? "turning ch" : `turning ch-${what.chains}`;
    case "ring":
      return "ring";
    case "free-loop":
      return many ? "free loops" : "free loop";
    case "foundation":
      return "foundation ch";
    case "base":
      return "base of ch";
    case "join":
      return "joining sl st".replace("sl st", printStitch("sl st", style));
    default:
      return many ? plural(singular(what, setting)) : singular(what, setting);
  }
}

function singular(what: PlaceWord, setting: Setting): string {
  switch (what.is) {
    case "chain":
      return "ch";
    case "space":
      if (what.corner) return what.chains === undefined ? "corner sp" : `corner ch-${what.chains} sp`;
      return what.chains === undefined ? "ch sp" : `ch-${what.chains} sp`;
    case "row-end":
      return "row end";
    case "marked":
      return what.name === undefined ? "marked st" : `marker ${what.name}`;
    case "between":
      return "sp between sts";
    case "skipped":
      return `skipped ${what.code === undefined ? "st" : printStitch(what.code, setting.style)}`;
    case "corner":
      return "corner";
    default:
      return "st";
  }
}

/** A place that is worked into: the top of a turning chain, any other place by its words. */
export function printWorkedPlace(target: Target, setting: Setting): string {
  const words = printTarget(target, setting);
  if (target.ref !== "any" || target.what.is !== "turning-chain" || target.loops !== undefined) return words;
  return `top of ${setting.rounds ? words.replace("turning", "beg") : words}`;
}

/** A place, or places, in words that follow "in": "next 5 sts", "each st across", "2nd ch from hook". */
export function printTarget(target: Target, setting: Setting): string {
  if (target.what.is === "between") return printBetween(target, setting);
  const loops = target.loops === undefined ? "" : `${LOOP_NAMES[target.loops]} of `;
  const each = target.each && target.ref !== "each" ? "each of " : "";
  const parts = [`${loops}${each}${head(target, setting)}`];
  if (target.from === "hook") parts.push("from hook");
  else if (target.from !== undefined) parts.push(target.from === "start" ? "from beg" : "from end");
  if (target.of) parts.push(`of ${printTarget(target.of, setting)}`);
  if (target.rowsBelow !== undefined)
    parts.push(`${target.rowsBelow} ${plural(RowWord(setting).toLowerCase())} below`);
  if (target.ofRow) parts.push(`of ${RowWord(setting)} ${printAmount(target.ofRow)}`);
  if (target.until) parts.push(printLimit(target.until, setting));
  return parts.join(" ");
}

/** "between next 2 sts", "between sts across"; it brings its own preposition. */
function printBetween(target: Target, setting: Setting): string {
  const until = target.until ? ` ${printLimit(target.until, setting)}` : "";
  if (target.ref === "each") return target.until ? `between sts${until}` : "between each st";
  return `between ${target.ref} 2 sts`;
}

/** Places of which there is one: "in ring", "in turning ch", "in marked st". */
const NEED_NO_ANY: ReadonlySet<PlaceWord["is"]> = new Set(["ring", "turning-chain", "marked"]);

/** The reference, the number and the kinds of place. */
function head(target: Target, setting: Setting): string {
  const { ref, count } = target;
  const kinds = (many: boolean): string =>
    [target.what, ...(target.and ?? [])].map((what) => printPlaceWord(what, many, setting)).join(" and ");
  const number =
    count === undefined || (ref !== "each" && goesWithoutSaying(count)) ? "" : `${printAmount(count)} `;
  const many = !isOne(count);
  switch (ref) {
    case "each":
      return count === undefined ? `each ${kinds(false)}` : `each of ${number}${kinds(many)}`;
    case "every-other":
      return `every other ${kinds(false)}`;
    case "nth":
      return `${target.nth ? printOrdinal(target.nth) : "next"} ${kinds(false)}`;
    case "here":
      return `${number}${kinds(many)}`;
    case "any":
      return `${NEED_NO_ANY.has(target.what.is) ? "" : "any "}${number}${kinds(many)}`;
    case "same":
      if (target.what.is === "base") return "same place";
      return target.what.is === "join" ? kinds(false) : `same ${number}${kinds(many)}`;
    case "center":
      return `${setting.style.terms === "US" ? "center" : "centre"} ${number}${kinds(many)}`;
    default:
      return `${ref} ${number}${kinds(many)}`;
  }
}

/** Where something stops, in words that follow it: "across", "to last 4 sts", "to next ch-2 sp". */
export function printLimit(limit: Limit, setting: Setting): string {
  switch (limit.at) {
    case "end":
      return limit.word === "end" ? "to end" : limit.word;
    case "last":
      return `to last ${goesWithoutSaying(limit.count) ? "" : `${printAmount(limit.count)} `}${printPlaceWord(limit.what, !isOne(limit.count), setting)}`;
    case "place":
      return `to ${printTarget(limit.place, setting)}`;
    case "count":
      return limit.remain
        ? `until ${printAmount(limit.count)} sts remain`
        : `until you have ${printAmount(limit.count)} sts`;
  }
}
