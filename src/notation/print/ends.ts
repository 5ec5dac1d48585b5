import type {
  AlongClause,
  HoldClause,
  JoinClause,
  JoinYarnClause,
  LeaveClause,
  LoopsClause,
  MarkerClause,
} from "../tree.ts";
import { isOne, printAmount } from "./amounts.ts";
import { lead } from "./own-words.ts";
import { printTarget, printWorkedPlace } from "./places.ts";
import { printStitch } from "./stitch-words.ts";
import { RowWord, type Setting } from "./style.ts";

/** "join with sl st in first sc", "join with sl st in first ch to form a ring", "join". */
export function printJoin(clause: JoinClause, setting: Setting): string {
  const ring = clause.ring ? " to form a ring" : "";
  if (clause.target === null && clause.stitch === "sl st") return `join${ring}`;
  const place = clause.target === null ? "" : ` in ${printWorkedPlace(clause.target, setting)}`;
  return `join with ${printStitch(clause.stitch, setting.style)}${place}${ring}`;
}

/** "with RS facing, join A with sc in next st", "join yarn at underarm". */
export function printJoinYarn(clause: JoinYarnClause, setting: Setting): string {
  const facing = clause.side === undefined ? "" : `with ${clause.side} facing, `;
  const stitch = clause.stitch === undefined ? "" : ` with ${printStitch(clause.stitch, setting.style)}`;
  const place =
    clause.target !== null
      ? ` in ${printTarget(clause.target, setting)}`
      : clause.where !== undefined
        ? ` at ${clause.where}`
        : "";
  return `${facing}join ${clause.colour === undefined ? "yarn" : printColour(clause.colour, setting)}${stitch}${place}`;
}

/** "A", "cream"; a yarn that has only a number needs its noun, "color 2". */
export function printColour(colour: string, setting: Setting): string {
  if (!/^\d/.test(colour)) return colour;
  return `${setting.style.terms === "US" ? "color" : "colour"} ${colour}`;
}

/** "place marker in next st", "move marker A to last st", "remove marker". */
export function printMarker(clause: MarkerClause, setting: Setting): string {
  const name = clause.name === undefined ? "" : ` ${clause.name}`;
  const place =
    clause.target === null
      ? ""
      : ` ${clause.action === "move" ? "to" : clause.action === "remove" ? "from" : "in"} ${printTarget(clause.target, setting)}`;
  return `${clause.action} marker${name}${place}`;
}

/** "leave remaining sts unworked", "leave remaining 12 sts unworked". */
export function printLeave(clause: LeaveClause): string {
  if (clause.count === undefined) return "leave remaining sts unworked";
  return `leave remaining ${printAmount(clause.count)} ${isOne(clause.count) ? "st" : "sts"} unworked`;
}

/** "working in back loops only". */
export function printLoops(clause: LoopsClause): string {
  const names = {
    back: "back loops only",
    front: "front loops only",
    both: "both loops",
    third: "third loops only",
    "back-bump": "back bumps only",
  } as const;
  return `working in ${names[clause.loops]}${clause.throughout ? " throughout" : ""}`;
}

/** "working along row ends", "working in free loops of Rnd 3". */
export function printAlong(clause: AlongClause, setting: Setting): string {
  const ofRow = clause.ofRow ? ` of ${RowWord(setting)} ${printAmount(clause.ofRow)}` : "";
  switch (clause.edge) {
    case "row-ends":
      return `working along row ends${ofRow}`;
    case "foundation":
      return "working on other side of foundation ch";
    case "free-loops":
      return `working in free loops${ofRow}`;
    case "all-round":
      return "working all around";
    case "other":
      return lead(clause.words);
    default:
      return `working along ${clause.edge} edge${ofRow}`;
  }
}

/** "place next 20 sts on hold". */
export function printHold(clause: HoldClause, setting: Setting): string {
  // "Divide for neck" holds stitches too.
  if (clause.count === undefined)
    return setting.own ? lead(setting.own(clause.span)) : "place remaining sts on hold";
  return `place next ${printAmount(clause.count)} ${isOne(clause.count) ? "st" : "sts"} on hold`;
}
