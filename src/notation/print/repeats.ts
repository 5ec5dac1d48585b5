import type { Clause, RepeatClause, Stop } from "../tree.ts";
import { printTimes } from "./amounts.ts";
import { printLimit } from "./places.ts";
import type { Setting } from "./style.ts";

/**
 * A repeat in one of two shapes: brackets where it is worked so many times in all, stars for everything else. Inside a star
 * repeat only brackets are clear, since "rep from *" could mean either star.
 */
export function printRepeat(clause: RepeatClause, setting: Setting): string {
  const { stop } = clause;
  if (stop.by === "times" && stop.counting === "total" && clause.endBefore === undefined) {
    return inBrackets(clause, printTimes(stop.times, false), setting);
  }
  if (clause.style === "bracket" || setting.starred) {
    const how = bracketStop(stop, setting);
    if (how !== null && clause.endBefore === undefined) return inBrackets(clause, how, setting);
  }
  return inStars(clause, setting);
}

function inBrackets(clause: RepeatClause, how: string, setting: Setting): string {
  const body = `[${setting.inner(clause.body, setting)}]`;
  return how === "" ? body : `${body} ${how}`;
}

function bracketStop(stop: Stop, setting: Setting): string | null {
  switch (stop.by) {
    case "times":
      return printTimes(stop.times, stop.counting === "extra");
    case "limit":
      return printLimit(stop.limit, setting);
    case "unsaid":
      return null;
  }
}

function inStars(clause: RepeatClause, setting: Setting): string {
  const within = { ...setting, starred: true };
  const { stop, endBefore } = clause;
  const pair = stop.by === "times" && stop.counting === "either-total" && endBefore === undefined;
  const body = pair
    ? `*${setting.inner(clause.body, within)}*; rep from * to *`
    : `*${starBody(clause.body, endBefore, within)}; rep from *`;
  const how =
    stop.by === "unsaid"
      ? ""
      : ` ${stop.by === "limit" ? printLimit(stop.limit, setting) : printTimes(stop.times, stop.counting === "extra")}`;
  return `${body}${how}${endBefore === undefined ? "" : ", ending last rep at **"}`;
}

function starBody(body: readonly Clause[], endBefore: number | undefined, setting: Setting): string {
  if (endBefore === undefined) return setting.inner(body, setting);
  const before = setting.inner(body.slice(0, endBefore), setting);
  const after = setting.inner(body.slice(endBefore), setting);
  return after === "" ? `${before}**` : `${before}**, ${after}`;
}
