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

/** A finding whose remedy at an index is done by edits. */
export function withEdit(finding: Finding, remedy: number, edit: Edit | null): Finding {
  if (!edit) return finding;
  return {
    ...finding,
    todo: finding.todo.map((each, at) => (at === remedy ? { ...each, edits: [edit] } : each)),
  };
}
