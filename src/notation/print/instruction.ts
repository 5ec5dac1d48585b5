import type { Claim, Clause, Instruction } from "../tree.ts";
import { printAnswer, printClaim, printClaims } from "./claims.ts";
import { printInside, printSentences } from "./clauses.ts";
import { printLabel, printSizesOnly } from "./label.ts";
import type { OwnWords, PrintStyle, Setting } from "./style.ts";

/**
 * One row in clean notation: "Row 7 (RS): Ch 1, sc in next 5 sts, 2 sc in last st, turn. (24 (26, 28) sts)".
 * A clause that may be read in several ways is printed by its first reading; an aside, which has no words in the tree, is left out.
 */
export function printInstruction(instruction: Instruction, style: PrintStyle): string {
  return printSizesOnly(instruction, style) + printRow(instruction, style, null);
}

/**
 * The same without the sizes that it is for, where the text about it says them already.
 *
 * @param own  the designer's words at a span, so that asides and other words which the tree does not keep are not lost; null leaves
 *             them out
 */
export function printRow(instruction: Instruction, style: PrintStyle, own: OwnWords | null): string {
  const { label, clauses, claims, answers } = narrowed(instruction, style.sizes.length);
  const setting = settingOf(style, label !== null && (label.is === "round" || label.rounds), own);
  const row = setting.rounds ? "Rnd" : "Row";
  const counts = style.counts?.(instruction) ?? null;
  // The count stands at the end of the row, before the yarn is cut.
  const end = lastOff(clauses);
  const parts = [
    label === null ? "" : printLabel(label, own),
    printSentences(clauses.slice(0, end), setting),
    counts === null
      ? countsAsClaimed(claims, style, row, label === null && clauses.length === 0)
      : inBrackets(counts),
    printSentences(clauses.slice(end), setting),
    ...answers.map(printAnswer),
  ];
  return parts.filter((part) => part !== "").join(" ");
}

/** Where the fasten-off at the end of a row stands; the end where there is none. */
function lastOff(clauses: readonly Clause[]): number {
  return clauses.length > 1 && clauses.at(-1)?.kind === "fasten-off" ? clauses.length - 1 : clauses.length;
}

/** The printed counts; where they are all that is said, as a sentence. */
function countsAsClaimed(claims: readonly Claim[], style: PrintStyle, row: string, alone: boolean): string {
  return alone
    ? claims.map((claim) => `You have ${printClaim(claim, style, row)}.`).join(" ")
    : printClaims(claims, style, row);
}

function inBrackets(counts: string): string {
  return counts === "" ? "" : `(${counts})`;
}

/** A row of some sizes with the numbers of these alone: "24 (26)" where all the others do none. */
function narrowed(instruction: Instruction, run: number): Instruction {
  const { sizes } = instruction;
  if (sizes.length === 0 || sizes.length === run) return instruction;
  return narrow(instruction, sizes, run);
}

function narrow<T>(node: T, sizes: readonly number[], run: number): T {
  if (node === null || typeof node !== "object") return node;
  if (Array.isArray(node)) return node.map((item) => narrow(item, sizes, run)) as T;
  const fields = Object.entries(node).map(([name, value]): [string, unknown] => {
    if (name !== "values" || !Array.isArray(value)) return [name, narrow(value, sizes, run)];
    const others = value.some((one, size) => one !== null && !sizes.includes(size));
    return [name, value.length !== run || others ? value : sizes.map((size) => value[size])];
  });
  return Object.fromEntries(fields) as T;
}

/** Clauses as they stand inside a row, without a capital or a full stop: "ch 1, sc in each st across, turn". */
export function printClauses(clauses: readonly Clause[], style: PrintStyle): string {
  return printInside(clauses, settingOf(style, false, null));
}

function settingOf(style: PrintStyle, rounds: boolean, own: OwnWords | null): Setting {
  return { style, rounds, starred: false, own, inner: printInside };
}
