import type { SizeRun } from "../../base/index.ts";
import { plainName } from "../../sizing/index.ts";
import { entryNotUnderstood } from "../findings/index.ts";
import type { Costs } from "./document.ts";
import { shareOf } from "./making-habits.ts";
import type { Entry, Table } from "./table.ts";
import { priceOf } from "./yarns.ts";

/** What the design costs and brings in. Every entry that is not one of the known ones is a sum that was paid. */
export function readCosts(table: Table, entry: Entry | undefined, sizes: SizeRun): Costs | null {
  if (entry === undefined) return null;
  const costs = {
    price: null as number | null,
    fee: 0,
    hours: 0,
    wage: 0,
    sold: null as number | null,
    sample: null as number | null,
  };
  const sums: { name: string; amount: number }[] = [];
  let currency: string | null = null;
  const sum = (one: Entry): number | null => {
    const read = sumOf(table, one);
    if (read === null) return null;
    currency ??= read.currency;
    if (read.currency === currency) return read.amount;
    table.tell(entryNotUnderstood, one.span, {
      entry: one.key,
      found: read.currency,
      wants: `All sums stand in one currency; the first is in ${currency}.`,
    });
    return null;
  };
  for (const one of table.entries(entry.node, entry.key))
    switch (plainName(one.key)) {
      case "price":
        costs.price = sum(one);
        break;
      case "wage":
        costs.wage = sum(one) ?? 0;
        break;
      case "fee":
        costs.fee = shareOf(table, one) ?? 0;
        break;
      case "hours":
        costs.hours = plainNumber(table, one) ?? 0;
        break;
      case "sold":
        costs.sold = plainNumber(table, one);
        break;
      case "sample":
        costs.sample = sizeNamed(table, one, sizes);
        break;
      default: {
        const amount = sum(one);
        if (amount !== null) sums.push({ name: one.key, amount });
      }
    }
  return { span: entry.keySpan, currency, ...costs, sums };
}

/** "161.50 EUR", or so many of them: "4 at 35 EUR". */
function sumOf(table: Table, entry: Entry): { readonly amount: number; readonly currency: string } | null {
  const words = table.words(entry, "A sum is a number with its currency, as in 35 EUR, or 4 at 35 EUR.");
  if (words === null) return null;
  const many = /^(\d{1,5})\s*(?:at|x|times)\s+(?=\S)/i.exec(words.text.trim());
  if (many === null) return priceOf(table, entry);
  const each = /^(\d{1,7}(?:\.\d{1,3})?)\s*([A-Za-z]{3}|[^\s\d.,])$/u.exec(
    words.text.trim().slice(many[0].length),
  );
  if (each) return { amount: Number(many[1]) * Number(each[1]), currency: (each[2] ?? "").toUpperCase() };
  table.tell(entryNotUnderstood, words.span, {
    entry: entry.key,
    found: words.text.trim(),
    wants: "A sum is a number with its currency, as in 35 EUR, or 4 at 35 EUR.",
  });
  return null;
}

function plainNumber(table: Table, entry: Entry): number | null {
  const wants = "A number belongs here.";
  const words = table.words(entry, wants);
  if (words === null) return null;
  const found = /^(\d{1,7}(?:\.\d{1,2})?)(?:\s*(?:hours?|h|copies))?$/i.exec(words.text.trim());
  if (found) return Number(found[1]);
  table.tell(entryNotUnderstood, words.span, { entry: entry.key, found: words.text.trim(), wants });
  return null;
}

function sizeNamed(table: Table, entry: Entry, sizes: SizeRun): number | null {
  const wants = "The size that was made as a sample belongs here.";
  const words = table.words(entry, wants);
  if (words === null) return null;
  const at = sizes.findIndex((name) => plainName(name) === plainName(words.text));
  if (at !== -1) return at;
  table.tell(entryNotUnderstood, words.span, { entry: entry.key, found: words.text.trim(), wants });
  return null;
}
