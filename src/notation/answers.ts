import type { Span } from "../base/index.ts";
import type { LexContext } from "./context.ts";
import { lex } from "./lex.ts";
import type { Answer } from "./tree.ts";

/*
 * The designer's answers, standing behind a row as a remark to its maker:
 *
 *   (As meant: the last stitch is left for the band. ~k7f2q)
 *   (As meant, rows/count-differs: the edge stitch is not counted)
 *   (Vouched, 40 (44, 48) sts: the chart shows this row. ~k7f2q)
 */

const OPEN = /\(\s?(as\smeant|vouched)\b\s?/iy;
const CODE = /,\s?([a-z][a-z0-9-]*\/[a-z0-9-]+)\s?/iy;
const STAMP = /\s?~([a-z0-9]{5})\s?$/i;
/** A remark longer than this is not an answer. */
const LONGEST = 1200;

/** The answer that opens at `at` in plain text, or null. */
export function readAnswer(
  text: string,
  plain: string,
  at: number,
  to: number,
  context: LexContext,
): Answer | null {
  OPEN.lastIndex = at;
  const open = OPEN.exec(plain);
  if (!open) return null;
  const end = closing(plain, at, Math.min(to, at + LONGEST));
  if (end === -1) return null;
  const isVouched = (open[1] as string).toLowerCase() === "vouched";
  let begin = at + open[0].length;
  CODE.lastIndex = begin;
  const code = CODE.exec(plain);
  if (code) begin += code[0].length;
  const colon = plain.indexOf(":", begin);
  const colonIn = colon !== -1 && colon < end;
  const count = isVouched ? countIn(text, begin, colonIn ? colon : end, context) : undefined;
  // Without a colon only a bare "(As meant)" or "(Vouched, 40 sts)" is an answer.
  if (
    !colonIn &&
    plain.slice(begin, end).trim() !== "" &&
    count === undefined &&
    !STAMP.test(plain.slice(begin, end))
  )
    return null;
  const said = colonIn ? text.slice(colon + 1, end) : text.slice(begin, end);
  const stamp = STAMP.exec(said);
  const reason = (stamp ? said.slice(0, stamp.index) : said).replace(/\s+/g, " ").trim();
  return {
    span: { from: at, to: end + 1 },
    is: isVouched ? "vouched" : "as-meant",
    ...(code ? { code: code[1] as string } : {}),
    reason: colonIn ? reason : "",
    ...(count ? { count } : {}),
    stamp: stamp ? (stamp[1] as string).toLowerCase() : null,
  };
}

/** The first bracket in a stretch of plain text that opens as an answer does, or null. */
export function answerSpan(plain: string, from: number, to: number): Span | null {
  const hit = /\(\s?(?:as\smeant|vouched)\b/i.exec(plain.slice(from, to));
  if (!hit) return null;
  const at = from + hit.index;
  const end = closing(plain, at, Math.min(to, at + LONGEST));
  return end === -1 ? null : { from: at, to: end + 1 };
}

function closing(plain: string, at: number, to: number): number {
  let depth = 0;
  for (let i = at; i < to; i++) {
    if (plain[i] === "(") depth++;
    else if (plain[i] === ")" && --depth === 0) return i;
  }
  return -1;
}

function countIn(text: string, from: number, to: number, context: LexContext): Answer["count"] {
  for (const token of lex(text, from, to, context))
    if (token.is === "number") return { span: token.span, values: token.values };
  return undefined;
}

/** The answers in a stretch of plain text, in order. */
export function findAnswers(
  text: string,
  plain: string,
  from: number,
  to: number,
  context: LexContext,
): Answer[] {
  const answers: Answer[] = [];
  let end = from;
  for (const hit of plain.slice(from, to).matchAll(/\(\s?(?:as\smeant|vouched)\b/gi)) {
    if (from + hit.index < end) continue;
    const answer = readAnswer(text, plain, from + hit.index, to, context);
    if (!answer) continue;
    answers.push(answer);
    end = answer.span.to;
  }
  return answers;
}
