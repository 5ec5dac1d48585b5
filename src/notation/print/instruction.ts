import type { Clause, Instruction } from "../tree.ts";
import { printAnswer, printClaims } from "./claims.ts";
import { printInside, printSentences } from "./clauses.ts";
import { printLabel, printSizesOnly } from "./label.ts";
import type { PrintStyle, Setting } from "./style.ts";

/**
 * One row in clean notation: "Row 7 (RS): Ch 1, sc in next 5 sts, 2 sc in last st, turn. (24 (26, 28) sts)".
 * A clause that may be read in several ways is printed by its first reading; an aside is left out, having no words in the tree
 * unless `text` is the text the tree was read from.
 */
export function printInstruction(
  instruction: Instruction,
  style: PrintStyle,
  text: string | null = null,
): string {
  const { label } = instruction;
  const setting = settingOf(style, label !== null && (label.is === "round" || label.rounds), text);
  const counts = style.counts?.(instruction) ?? null;
  const parts = [
    label === null ? "" : printLabel(label),
    printSentences(instruction.clauses, setting),
    counts === null
      ? printClaims(instruction.claims, style, setting.rounds ? "Rnd" : "Row")
      : counts === ""
        ? ""
        : `(${counts})`,
    ...instruction.answers.map(printAnswer),
  ];
  return printSizesOnly(instruction, style) + parts.filter((part) => part !== "").join(" ");
}

/** Clauses as they stand inside a row, without a capital or a full stop: "ch 1, sc in each st across, turn". */
export function printClauses(clauses: readonly Clause[], style: PrintStyle): string {
  return printInside(clauses, settingOf(style, false, null));
}

function settingOf(style: PrintStyle, rounds: boolean, text: string | null): Setting {
  return { style, rounds, starred: false, text, inner: printInside };
}
