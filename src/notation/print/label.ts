import { capital, namesOf } from "../../base/index.ts";
import type { Instruction, Label } from "../tree.ts";
import { isOne, printAmount } from "./amounts.ts";
import { areSeveral, printRanges } from "./rows.ts";
import type { OwnWords, PrintStyle } from "./style.ts";

/** What stands before the row, colon included: "Row 7 (RS):", "Rnds 5-12:", "Next 4 (6, 8) rows:", "Inc row (WS):". */
export function printLabel(label: Label, own: OwnWords | null = null): string {
  const tags = [label.side, label.colour, ...(own ? furtherTags(label, own(label.span)) : [])];
  return `${labelWords(label)}${tags.map((tag) => (tag === undefined ? "" : ` (${tag})`)).join("")}:`;
}

/** "(increase row)": what stands in brackets behind the number and is neither a side nor a colour. */
function furtherTags(label: Label, words: string): readonly string[] {
  return [...words.matchAll(/\(([\p{L}][^()]*)\)/gu)]
    .map((found) => (found[1] as string).trim())
    .filter(
      (tag) =>
        !/^(?:rs|ws|right|wrong)\b/iu.test(tag) &&
        !(label.colour !== undefined && tag.includes(label.colour)),
    );
}

function labelWords(label: Label): string {
  const row = label.is === "round" || label.rounds ? "Rnd" : "Row";
  // An open range is said in so many ways that only its own words say what it opens.
  if (label.open) return label.words;
  if ((label.is === "row" || label.is === "round") && label.rows.length > 0) {
    return `${row}${areSeveral(label.rows) ? "s" : ""} ${printRanges(label.rows)}`;
  }
  if (label.is === "next") {
    if (!label.next) return `Next ${row.toLowerCase()}`;
    return `Next ${printAmount(label.next)} ${row.toLowerCase()}${isOne(label.next) ? "" : "s"}`;
  }
  return capital(label.words);
}

/** "Sizes M and L only: " in front of a row that only some sizes work; nothing where all do. */
export function printSizesOnly(instruction: Instruction, style: PrintStyle): string {
  return instruction.sizes.length === 0 ? "" : `${sizesOnly(instruction.sizes, style)} only: `;
}

/** "Size M", "Sizes M and L". */
export function sizesOnly(sizes: readonly number[], style: PrintStyle): string {
  const names = namesOf(style.sizes, sizes);
  const list =
    names.length < 2 ? (names[0] ?? "") : `${names.slice(0, -1).join(", ")} and ${names[names.length - 1]}`;
  return `${names.length === 1 ? "Size" : "Sizes"} ${list}`;
}
