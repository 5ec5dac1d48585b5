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
import { fullerOf, lead } from "./own-words.ts";
import { printRepeat } from "./repeats.ts";
import {
  printAsPiece,
  printEven,
  printEvenly,
  printInPattern,
  printRepeatRows,
  printSchedule,
} from "./rows.ts";
import { optionOf } from "./settled.ts";
import { chosenIn, type Setting } from "./style.ts";

/** Clauses that stand inside another, parted by commas; the first option of a choice, and no aside that has no words. */
export function printInside(clauses: readonly Clause[], setting: Setting, last?: Clause): string {
  let words = "";
  let before = last;
  for (const clause of flat(clauses, setting)) {
    const said = printClause(clause, setting);
    if (said === "") continue;
    const verb =
      (before && followsAsCount(clause, said, before)) || joinsNumbers(words, said, setting) ? "work " : "";
    words += words === "" ? verb + said : `${separator(clause)}${verb}${said}`;
    before = clause;
  }
  return words;
}

/**
 * Whether a clause that begins with a number could be taken for the count of the row: "7 dc" with no place behind what may be all
 * of the row, or any number behind what ends one.
 */
function followsAsCount(clause: Clause, said: string, before: Clause): boolean {
  if (!/^\d/.test(said) || !mayEndTheRow(before)) return false;
  const inRow = before.kind === "work" || before.kind === "group" || before.kind === "repeat";
  return !inRow || !("target" in clause) || clause.target?.ref === "here" || clause.target?.ref === "first";
}

/** "ch 20, 22 sc": in a pattern of two sizes the two numbers could be one for each. */
function joinsNumbers(words: string, said: string, setting: Setting): boolean {
  return setting.style.sizes.length === 2 && /\d\d$/.test(words) && /^\d/.test(said);
}

/** Whether a row may be over with this clause, so that a number behind it reads as its count. */
function mayEndTheRow(clause: Clause): boolean {
  if (clause.kind === "work" || clause.kind === "group") {
    const { ref, what } = clause.target;
    return ref === "each" || ref === "last" || what.is === "turning-chain";
  }
  return !["chain", "skip", "understood", "colour", "loops", "facing", "along", "marker"].includes(
    clause.kind,
  );
}

/** The clauses of a row as sentences, each with a capital and a full stop: "Ch 1, sc in each st across, turn. Fasten off." */
export function printSentences(clauses: readonly Clause[], setting: Setting): string {
  const sentences: string[] = [];
  let open: Clause[] = [];
  let last: Clause | undefined;
  const close = (): void => {
    const words = printInside(open, setting, last);
    if (words !== "") sentences.push(`${capital(words)}.`);
    last = open.at(-1) ?? last;
    open = [];
  };
  for (const clause of flat(clauses, setting)) {
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
const STANDS_ALONE: ReadonlySet<Clause["kind"]> = new Set(["fasten-off", "size-end", "seam", "as-piece"]);

/** Choices replaced by the clauses of the option that is meant. */
function flat(clauses: readonly Clause[], setting: Setting): readonly Clause[] {
  const chosen = chosenIn(setting.style);
  return clauses.flatMap((clause) =>
    clause.kind === "choice" ? flat(optionOf(clause, chosen), setting) : [clause],
  );
}

function separator(clause: Clause): string {
  return clause.kind === "join" ? "; " : ", ";
}

/** Clauses of which the tree does not keep all the words. */
const KEEPS_LESS: ReadonlySet<Clause["kind"]> = new Set([
  "fasten-off",
  "colour",
  "marker",
  "along",
  "as-piece",
  "seam",
  "hook",
  "hold",
]);

function printClause(clause: Clause, setting: Setting): string {
  const said = wordsOf(clause, setting);
  return KEEPS_LESS.has(clause.kind) ? fullerOf(said, clause.span, setting.own) : said;
}

function wordsOf(clause: Clause, setting: Setting): string {
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
      return printInside([clause], setting);
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
      // "With A" begins a row, "change to B" is said in the midst of one: the designer knew which.
      return setting.own
        ? lead(setting.own(clause.span))
        : `change to ${printColour(clause.colour, setting)}`;
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
      return printHold(clause, setting);
    case "aside":
      return setting.own === null ? "" : lead(setting.own(clause.span));
    case "remark":
      return clause.words;
  }
}

function printSizeOnly(clause: SizeOnlyClause, setting: Setting): string {
  return `(${sizesOnly(clause.sizes, setting.style)} only: ${printInside(clause.body, setting)})`;
}

function printSizeEnd(clause: SizeEndClause, setting: Setting): string {
  return `${sizesOnly(clause.sizes, setting.style)}: end here`;
}

/** Edges that are sewn without being called a seam. */
const EDGES: Partial<Record<SeamClause["seam"], string>> = {
  side: "sew the sides together",
  shoulder: "sew the shoulders together",
};

const SEAMS = {
  side: "sew side seams",
  shoulder: "sew shoulder seams",
  sleeve: "sew sleeve seams",
  "sleeve-to-armhole": "sew sleeves to armholes",
} as const;

function printSeam(clause: SeamClause): string {
  if (clause.seam === "other") return lead(clause.words);
  const open = clause.open ? `, leaving ${printMeasure(clause.open)} open` : "";
  return `${(clause.calledSeam ? SEAMS : EDGES)[clause.seam] ?? SEAMS[clause.seam]}${open}`;
}

/** "with 4 mm hook"; a hook that is told by other words has them as they were said. */
function printHook(clause: HookClause): string {
  if (clause.mm !== null) return `with ${printAmount(clause.mm)} mm hook`;
  return lead(clause.words);
}
