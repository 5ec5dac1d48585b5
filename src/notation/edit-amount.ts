import type { Edit } from "../base/index.ts";
import type { Amount } from "./tree.ts";

/**
 * The edit that prints other values in the stead of a written number or list; null where the list as written has not one number
 * for each value.
 *
 * @param wanted  by size; only sizes that change need be there
 */
export function editAmount(
  text: string,
  amount: Amount,
  wanted: ReadonlyMap<number, number>,
  sizes: number,
): Edit | null {
  const { span, values } = amount;
  const written = text.slice(span.from, span.to);
  if (values.length === 1) {
    const all = new Set(wanted.values());
    const [only] = all;
    if (all.size !== 1 || only === undefined || wanted.size !== sizes || !/^\d+$/u.test(written.trim()))
      return null;
    return { span, text: written.replace(/\d+/u, String(only)) };
  }
  const numbers = [...written.matchAll(/\d+/gu)];
  if (numbers.length !== values.length || /[½¼¾⅓⅔⅛{]|\d[.,]\d{1,2}(?!\d)\s*(?:cm|in)/u.test(written))
    return null;
  let result = written;
  for (let at = numbers.length - 1; at >= 0; at--) {
    const value = wanted.get(at);
    const found = numbers[at];
    if (value === undefined || !found) continue;
    result = result.slice(0, found.index) + String(value) + result.slice(found.index + found[0].length);
  }
  return result === written ? null : { span, text: result };
}
