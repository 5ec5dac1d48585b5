import type { Edit, Finding, Span } from "../base/index.ts";
import type { Amount, Instruction } from "../notation/index.ts";

/* Edits that may mend a finding. Whether they do is found out elsewhere, by proving the whole design with them. */

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

/**
 * The edit that adds a step at the end of the row above, before its count: ", turn". Null where no row of the same piece stands there.
 */
export function editRowAbove(
  placed: readonly { readonly instruction: Instruction; readonly piece: string }[],
  at: number,
  step: string,
): Edit | null {
  for (let above = at - 1; above >= 0; above -= 1) {
    const row = placed[above];
    if (!row || row.piece !== placed[at]?.piece) return null;
    if (!row.instruction.label) continue;
    const last = row.instruction.clauses.findLast(({ kind }) => kind !== "aside");
    return last ? { span: { from: last.span.to, to: last.span.to }, text: step } : null;
  }
  return null;
}

/** The edit that gives a row the number that comes next: "Row 7" to "Row 6". Null where its label tells several rows or no figure. */
export function editRowNumber(text: string, { label }: Instruction, next: number): Edit | null {
  const [range, ...more] = label?.rows ?? [];
  if (!range || more.length > 0 || range.from.span.to !== range.to.span.to) return null;
  const { from, to } = range.from.span;
  const figure = /^\d+/.exec(text.slice(from, to))?.[0];
  return figure === undefined ? null : { span: { from, to: from + figure.length }, text: String(next) };
}

/** A finding whose remedy at an index is done by edits. */
export function withEdit(finding: Finding, remedy: number, edit: Edit | null): Finding {
  if (!edit) return finding;
  return {
    ...finding,
    todo: finding.todo.map((each, at) => (at === remedy ? { ...each, edits: [edit] } : each)),
  };
}
