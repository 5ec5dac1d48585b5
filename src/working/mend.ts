import type { Edit, Finding, Span } from "../base/index.ts";
import type { Amount, Instruction } from "../notation/index.ts";

/* Edits that may mend a finding. Whether they do is found out elsewhere, by proving the whole design with them. */

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

/** The written number of a printed count that stands at a place of a line, or of a line before that it calls; null where there is none. */
export function claimedAmount(
  placed: readonly { readonly instruction: Instruction }[],
  at: number,
  { from, to }: Span,
): Amount | null {
  const asked = placed[at]?.instruction;
  const there = placed.find(({ instruction }) => instruction.span.from <= from && to <= instruction.span.to);
  for (const instruction of [asked, there?.instruction])
    for (const claim of instruction?.claims ?? [])
      for (const part of claim.parts) if (part.span.from === from && part.span.to === to) return part.amount;
  return null;
}

/** The edit that turns a side tag over: "(RS)" to "(WS)"; null where the label does not tell it so. */
export function editSideTag(text: string, { label }: Instruction): Edit | null {
  if (!label) return null;
  const words = text.slice(label.span.from, label.span.to);
  const tag = /\b([RW])S\b/u.exec(words);
  if (!tag) return null;
  const from = label.span.from + tag.index;
  return { span: { from, to: from + 2 }, text: tag[1] === "R" ? "WS" : "RS" };
}

/** A finding whose remedy at an index is done by edits. */
export function withEdit(finding: Finding, remedy: number, edit: Edit | null): Finding {
  if (!edit) return finding;
  return {
    ...finding,
    todo: finding.todo.map((each, at) => (at === remedy ? { ...each, edits: [edit] } : each)),
  };
}
