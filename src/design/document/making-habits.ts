import type { SizeRun } from "../../base/index.ts";
import { lengthOf } from "../../sizing/index.ts";
import { entryNotUnderstood } from "../findings/index.ts";
import type { MakingHabits } from "./document.ts";
import { readWords } from "./measures.ts";
import type { Plan } from "./plan.ts";
import type { Entry, Table } from "./table.ts";

const KNOWN = {
  safety: [],
  tails: ["tail", "ends"],
  seams: ["seam"],
  finishing: [],
} as const;

const SAYS = {
  safety: "A share in 100, as in 10 %.",
  tails: "A length in centimetres or inches, as in 18 cm.",
  minutes: "A number of minutes, as in 45 minutes.",
} as const;

/** How the garment is finished: "safety: 10 %", "tails: 18 cm", "seams: twice body length", "finishing: 3 hours". */
export function readMakingHabits(
  table: Table,
  entry: Entry | undefined,
  plan: Plan,
  sizes: SizeRun,
): MakingHabits {
  const own = entry ? table.known(table.entries(entry.node, entry.key), KNOWN, entry.key) : {};
  const words = own.seams && table.words(own.seams, "The length of all seams, in words as in the plan.");
  const seams = own.seams && words ? readWords(table, words, own.seams.key, plan.vocabulary) : null;
  return {
    safety: own.safety ? shareOf(table, own.safety) : null,
    tailCm: own.tails ? tailOf(table, own.tails) : null,
    seamsCm: seams && sizes.map((_, size) => lengthOf(seams, size, plan.wanted)?.cm ?? null),
    finishing: own.finishing ? minutesOf(table, own.finishing) : null,
  };
}

/** A share written in hundredths, "10 %" or "10". */
export function shareOf(table: Table, entry: Entry): number | null {
  const found = numberIn(table, entry, /^(\d{1,3}(?:\.\d{1,3})?)\s*%?$/, SAYS.safety);
  return found && found.number <= 100 ? found.number / 100 : null;
}

function tailOf(table: Table, entry: Entry): number | null {
  const found = numberIn(table, entry, /^(\d{1,3}(?:\.\d{1,2})?)\s*(cm|in|inches|")?$/i, SAYS.tails);
  return found && (found.unit === "" || found.unit === "cm" ? found.number : found.number * 2.54);
}

/** "45 minutes", "45 min", "1.5 hours"; a bare number is minutes. */
export function minutesOf(table: Table, entry: Entry): number | null {
  const unit = /^(\d{1,5}(?:\.\d{1,2})?)\s*(minutes?|min|hours?|h)?$/i;
  const found = numberIn(table, entry, unit, SAYS.minutes);
  return found && (found.unit.startsWith("h") ? found.number * 60 : found.number);
}

function numberIn(
  table: Table,
  entry: Entry,
  form: RegExp,
  wants: string,
): { readonly number: number; readonly unit: string } | null {
  const words = table.words(entry, wants);
  if (words === null) return null;
  const found = form.exec(words.text.trim());
  if (found) return { number: Number(found[1]), unit: (found[2] ?? "").toLowerCase() };
  table.tell(entryNotUnderstood, words.span, { entry: entry.key, found: words.text.trim(), wants });
  return null;
}
