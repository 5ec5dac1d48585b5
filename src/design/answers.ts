import type { Finding } from "../base/index.ts";
import type { Answer, Instruction, PatternTree } from "../notation/index.ts";
import type { WorkedLine, WorkedPattern } from "../working/index.ts";
import { answerMatchesNothing, answerReopened } from "./findings/index.ts";
import type { AnsweredFinding, UnstampedAnswer, VouchedLine } from "./proof.ts";
import { stampOf } from "./stamp.ts";

interface Settled {
  readonly findings: readonly Finding[];
  readonly answered: readonly AnsweredFinding[];
  readonly vouched: readonly VouchedLine[];
  readonly unstamped: readonly UnstampedAnswer[];
}

/**
 * Holds the designer's answers against the findings. A finding that stands inside the row of an answer is answered, unless the
 * answer names another code or its stamp tells that the row or its counts have changed since; then the answer is open again.
 */
export function settleAnswers(
  tree: PatternTree,
  worked: WorkedPattern,
  findings: readonly Finding[],
): Settled {
  const left = new Set(findings);
  const answered: AnsweredFinding[] = [];
  const vouched: VouchedLine[] = [];
  const unstamped: UnstampedAnswer[] = [];
  const raised: Finding[] = [];
  const lines = worked.pieces.flatMap((piece) => piece.lines.map((line) => ({ piece: piece.name, line })));
  tree.pieces
    .flatMap((piece) => piece.instructions)
    .forEach((instruction, at) => {
      const place = lines[at];
      if (!place) return;
      for (const answer of instruction.answers) {
        const row = place.line.label || "This line";
        const where = {
          span: answer.span,
          piece: place.piece || null,
          row: place.line.label || null,
          sizes: [],
        };
        const before = at > 0 && lines[at - 1]?.piece === place.piece ? (lines[at - 1]?.line ?? null) : null;
        const stamp = stampOf(tree.text, instruction, place.line, before);
        if (answer.stamp !== null && answer.stamp !== stamp) {
          raised.push(answerReopened.at(where, { row, reason: answer.reason }));
          continue;
        }
        if (answer.stamp === null) unstamped.push({ answer, edit: stampEdit(tree.text, answer, stamp) });
        if (answer.is === "vouched") {
          vouched.push({ piece: place.piece, row, answer });
          for (const finding of left)
            if (finding.code === "lines/not-understood" && standsIn(finding, instruction))
              left.delete(finding);
          continue;
        }
        const meant = [...left].filter((finding) => answers(answer, finding, instruction, place.line));
        if (meant.length === 0) raised.push(answerMatchesNothing.at(where, { row, reason: answer.reason }));
        for (const finding of meant) {
          left.delete(finding);
          answered.push({ finding, answer });
        }
      }
    });
  return { findings: [...left, ...raised], answered, vouched, unstamped };
}

function answers(answer: Answer, finding: Finding, instruction: Instruction, line: WorkedLine): boolean {
  if (answer.code !== undefined && answer.code !== finding.code) return false;
  return (
    standsIn(finding, instruction) &&
    (finding.row === null || finding.row === line.label || line.label === "")
  );
}

const standsIn = (finding: Finding, instruction: Instruction): boolean =>
  finding.span.from >= instruction.span.from && finding.span.to <= instruction.span.to;

/** The edit that writes a stamp before the closing bracket of an answer. */
function stampEdit(text: string, answer: Answer, stamp: string): UnstampedAnswer["edit"] {
  const words = text.slice(answer.span.from, answer.span.to);
  const closes = /[)\]]\s*$/u.exec(words);
  const at = closes ? answer.span.from + closes.index : answer.span.to;
  return { span: { from: at, to: at }, text: ` ~${stamp}` };
}
