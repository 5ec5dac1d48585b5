import type { Finding } from "../../base/index.ts";
import { answerMatchesNothing, answerReopened } from "../findings/index.ts";
import type { AnsweredFinding, UnstampedAnswer } from "../proof.ts";
import { stampOfWords } from "../stamp.ts";
import type { DesignTable, TableAnswer } from "./document.ts";

interface Settled {
  readonly findings: readonly Finding[];
  readonly answered: readonly AnsweredFinding[];
  readonly unstamped: readonly UnstampedAnswer[];
}

/**
 * Holds the answers of the table against the findings that stand in it. An answer's stamp is that of the findings' own words
 * and numbers, so the answer is open again when a number of them changes.
 */
export function settleTableAnswers(table: DesignTable, findings: readonly Finding[]): Settled {
  const left = new Set(findings);
  const answered: AnsweredFinding[] = [];
  const unstamped: UnstampedAnswer[] = [];
  const raised: Finding[] = [];
  for (const said of table.asMeant) {
    const where = { span: said.span, piece: null, row: null, sizes: [] };
    const facts = { row: "the table", reason: said.reason };
    const meant = [...left].filter(({ code, span }) => code === said.code && span.to <= table.to);
    if (meant.length === 0) {
      raised.push(answerMatchesNothing.at(where, facts));
      continue;
    }
    const stamp = stampOfWords(meant.map(({ what, why }) => `${what} ${why}`).join(" "));
    if (said.stamp !== null && said.stamp !== stamp) {
      raised.push(answerReopened.at(where, facts));
      continue;
    }
    const answer = answerOf(said);
    if (said.stamp === null)
      unstamped.push({
        answer,
        edit: { span: { from: endOf(said, table.text), to: endOf(said, table.text) }, text: ` ~${stamp}` },
      });
    for (const finding of meant) {
      left.delete(finding);
      answered.push({ finding, answer });
    }
  }
  return { findings: [...left, ...raised], answered, unstamped };
}

const answerOf = ({ span, code, reason, stamp }: TableAnswer) =>
  ({ span, is: "as-meant", code, reason, stamp }) as const;

/** A stamp goes behind the reason and before a closing quotation mark. */
function endOf({ span }: TableAnswer, text: string): number {
  return /["']/.test(text[span.to - 1] ?? "") ? span.to - 1 : span.to;
}
