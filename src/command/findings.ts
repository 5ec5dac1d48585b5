import type { Finding, Severity } from "../base/index.ts";
import { clean, oneLine, padStart, widthOf } from "./cells.ts";
import type { Paint } from "./paint.ts";
import { underline } from "./underline.ts";
import { titlesOf, type View } from "./view.ts";
import { hang, wrap } from "./wrap.ts";

/** Sentences are set no wider than this: longer lines are hard to follow back. */
export const WIDEST_PROSE = 100;
const INDENT = "  ";
const APPLIES = " (can be applied)";

/** Every finding: what, where, why, what to do; under the heading of its piece. */
export function setFindings(view: View, width: number, paint: Paint): string[] {
  let before: string | null = null;
  return view.findings.flatMap((finding) => {
    const title = titleOf(view, finding);
    const words = title === null ? "Outside the pieces" : `In ${title}`;
    const isNew = title !== before;
    before = title;
    return [...(isNew ? [paint.quiet(words), ""] : []), ...setFinding(view, finding, width, paint), ""];
  });
}

/** "Back, Armholes": the headings a finding stands under. */
function titleOf({ proof }: View, finding: Finding): string | null {
  if (finding.piece === null || finding.piece === "") return null;
  const at = proof.worked.pieces.findIndex(
    ({ lines }) =>
      (lines[0]?.span.from ?? 0) <= finding.span.from &&
      finding.span.from < (lines[lines.length - 1]?.span.to ?? 0),
  );
  const title = at === -1 ? undefined : titlesOf(proof)[at];
  return oneLine(title?.under ? `${title.under}, ${title.name}` : finding.piece);
}

function setFinding(view: View, finding: Finding, width: number, paint: Paint): string[] {
  const measure = Math.min(width, WIDEST_PROSE);
  const prose = (words: string): string[] =>
    wrap(clean(words), measure - INDENT.length).map((line) => INDENT + line);
  return [
    ...setTitle(finding, measure, paint),
    ...setPlace(view, finding, width, paint),
    ...prose(finding.why),
    ...finding.todo.flatMap((remedy, at) =>
      hang(
        `${INDENT}${at === 0 ? "Try: " : "     "}`,
        wrap(clean(remedy.say) + (remedy.edits ? APPLIES : ""), measure - 7),
      ),
    ),
  ];
}

/** "error  Row 12 does not come out even in size M.          rows/repeat-leaves-stitches" */
function setTitle(finding: Finding, width: number, paint: Paint): string[] {
  const word = finding.severity;
  const lead = `${word}  `;
  const what = wrap(clean(finding.what), width - lead.length);
  const lines = hang(lead, what);
  const last = lines[lines.length - 1] ?? lead;
  const room = width - widthOf(last) - finding.code.length;
  const painted = lines.map((line, at) =>
    at === 0
      ? paint[word](word) + strongFor(word, paint)(line.slice(word.length))
      : strongFor(word, paint)(line),
  );
  const code = paint.quiet(finding.code);
  if (room >= 2) painted[painted.length - 1] += " ".repeat(room) + code;
  else painted.push(" ".repeat(Math.max(0, width - finding.code.length)) + code);
  return painted;
}

const strongFor = (severity: Severity, paint: Paint): ((words: string) => string) =>
  severity === "note" ? (words) => words : paint.strong;

/** The pattern's own lines, each with its number, and the marks under the place. */
function setPlace(view: View, finding: Finding, width: number, paint: Paint): string[] {
  const { index, proof } = view;
  const spans = [
    { span: finding.span, mark: "^", tone: paint[finding.severity] },
    ...(finding.also ? [{ span: finding.also, mark: "-", tone: paint.quiet }] : []),
  ];
  const digits = String(index.lineCount).length;
  const lead = INDENT.length + digits + 2;
  const blocks = spans.map(({ span, mark, tone }) =>
    underline(proof.text, index, span, width - lead, mark).flatMap((row) => {
      const number = padStart(row.line === null ? "" : String(row.line), digits);
      const line = `${INDENT}${paint.quiet(number)}  ${row.text}`;
      return row.marks === "" ? [line] : [line, " ".repeat(lead) + tone(row.marks)];
    }),
  );
  const [here = [], also = []] = blocks;
  // The place that comes first in the text is shown first.
  return finding.also && finding.also.from < finding.span.from ? [...also, ...here] : [...here, ...also];
}
