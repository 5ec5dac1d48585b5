import { capital } from "../../base/index.ts";
import type { Clause, HookClause, SeamClause, SizeEndClause, SizeOnlyClause } from "../tree.ts";
import { printAmount, printMeasure } from "./amounts.ts";
import {
  printAlong,
  printColour,
  printHold,
  printJoin,
  printJoinYarn,
  printLeave,
  printLoops,
  printMarker,
} from "./ends.ts";
import { sizesOnly } from "./label.ts";
import { printChain, printGroup, printSkip, printUnderstood, printWork } from "./making.ts";
import { printRepeat } from "./repeats.ts";
import {
  printAsPiece,
  printEven,
  printEvenly,
  printInPattern,
  printRepeatRows,
  printSchedule,
} from "./rows.ts";
import type { Setting } from "./style.ts";

/** Clauses that stand inside another, parted by commas; the first option of a choice, and no aside that has no words. */
export function printInside(clauses: readonly Clause[], setting: Setting): string {
  let words = "";
  for (const clause of flat(clauses)) {
    const said = printClause(clause, setting);
    if (said !== "") words += words === "" ? said : `${separator(clause)}${said}`;
  }
  return words;
}

/** The clauses of a row as sentences, each with a capital and a full stop: "Ch 1, sc in each st across, turn. Fasten off." */
export function printSentences(clauses: readonly Clause[], setting: Setting): string {
  const sentences: string[] = [];
  let open: Clause[] = [];
  const close = (): void => {
    const words = printInside(open, setting);
    if (words !== "") sentences.push(`${capital(words)}.`);
    open = [];
  };
  for (const clause of flat(clauses)) {
    if (STANDS_ALONE.has(clause.kind)) {
      close();
      open = [clause];
      close();
    } else {
      open.push(clause);
    }
  }
  close();
  return sentences.join(" ");
}

/** Clauses that are whole sentences. */
const STANDS_ALONE: ReadonlySet<Clause["kind"]> = new Set([
  "fasten-off",
  "size-only",
  "size-end",
  "seam",
  "hook",
  "as-piece",
]);

/** Choices replaced by the clauses of their first option. */
function flat(clauses: readonly Clause[]): readonly Clause[] {
  return clauses.flatMap((clause) => (clause.kind === "choice" ? flat(clause.options[0] ?? []) : [clause]));
}

function separator(clause: Clause): string {
  return clause.kind === "join" ? "; " : ", ";
}

function printClause(clause: Clause, setting: Setting): string {
  switch (clause.kind) {
    case "chain":
      return printChain(clause, setting);
    case "work":
      return printWork(clause, setting);
    case "skip":
      return printSkip(clause, setting);
    case "group":
      return printGroup(clause, setting);
    case "understood":
      return printUnderstood(clause, setting);
    case "repeat":
      return printRepeat(clause, setting);
    case "choice":
      return printInside(clause.options[0] ?? [], setting);
    case "turn":
      return "turn";
    case "do-not-turn":
      return "do not turn";
    case "do-not-join":
      return "do not join";
    case "fasten-off":
      return "fasten off";
    case "join":
      return printJoin(clause, setting);
    case "join-yarn":
      return printJoinYarn(clause, setting);
    case "colour":
      return `change to ${printColour(clause.colour, setting)}`;
    case "facing":
      return `with ${clause.side} facing`;
    case "marker":
      return printMarker(clause, setting);
    case "leave":
      return printLeave(clause);
    case "loops":
      return printLoops(clause);
    case "along":
      return printAlong(clause, setting);
    case "repeat-rows":
      return printRepeatRows(clause, setting);
    case "even":
      return printEven(clause, setting);
    case "in-pattern":
      return printInPattern(clause, setting);
    case "schedule":
      return printSchedule(clause, setting);
    case "evenly":
      return printEvenly(clause, setting);
    case "size-only":
      return printSizeOnly(clause, setting);
    case "size-end":
      return printSizeEnd(clause, setting);
    case "as-piece":
      return printAsPiece(clause, setting);
    case "seam":
      return printSeam(clause);
    case "hook":
      return printHook(clause);
    case "hold":
      return printHold(clause);
    case "aside":
      return setting.text === null ? "" : setting.text.slice(clause.span.from, clause.span.to);
    case "remark":
      return clause.words;
  }
}

function printSizeOnly(clause: SizeOnlyClause, setting: Setting): string {
  return `${sizesOnly(clause.sizes, setting.style)} only: ${printInside(clause.body, setting)}`;
}

function printSizeEnd(clause: SizeEndClause, setting: Setting): string {
  return `${sizesOnly(clause.sizes, setting.style)}: end here`;
}

const SEAMS = {
  side: "sew side seams",
  shoulder: "sew shoulder seams",
  sleeve: "sew sleeve seams",
  "sleeve-to-armhole": "sew sleeves to armholes",
} as const;

function printSeam(clause: SeamClause): string {
  const open = clause.open ? `, leaving ${printMeasure(clause.open)} open` : "";
  return `${clause.seam === "other" ? clause.words : SEAMS[clause.seam]}${open}`;
}

function printHook(clause: HookClause): string {
  return clause.mm === null ? clause.words : `change to ${printAmount(clause.mm)} mm hook`;
}
