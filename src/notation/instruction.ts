import { Reading } from "./clauses/reading.ts";
import { readSequence } from "./clauses/sequence.ts";
import type { ReadContext } from "./context.ts";
import { withoutGlosses } from "./glosses.ts";
import type { Token } from "./token.ts";
import type { Answer, Claim, Clause, PatternTree } from "./tree.ts";

/** What stands after a row's label. */
export interface InstructionBody {
  readonly clauses: Clause[];
  readonly claims: Claim[];
  /** Always empty here: the designer's answers are taken out of the text before its rows are read. */
  readonly answers: Answer[];
  /** Slips that were read all the same. */
  readonly forgiven: PatternTree["forgiven"];
}

/**
 * Reads the body of one row, after its label. Never throws and reads in linear time; what it does not know becomes a remark
 * clause with its exact span, and reading goes on after it.
 */
export function readInstructionBody(tokens: readonly Token[], context: ReadContext): InstructionBody {
  const reading = new Reading(withoutGlosses(tokens), context, readSequence);
  const clauses = readSequence(reading);
  return { clauses, claims: numbered(reading.claims, context.text), answers: [], forgiven: reading.forgiven };
}

/** The clauses alone, as for the definition of a special stitch. */
export function readClauses(tokens: readonly Token[], context: ReadContext): Clause[] {
  return readInstructionBody(tokens, context).clauses;
}

/** "(40 sts)(38 sts)(36 sts)": several bracketed counts side by side belong to the rows of a range in turn. */
function numbered(claims: readonly Claim[], text: string): Claim[] {
  const side =
    claims.length > 1 &&
    claims.every((claim, at) => {
      const before = claims[at - 1];
      return (
        "([{".includes(text.charAt(claim.span.from)) &&
        claim.change === undefined &&
        claim.parts.length === 1 &&
        (before === undefined || claim.span.from - before.span.to <= 2) &&
        claim.parts[0]?.kind === claims[0]?.parts[0]?.kind
      );
    });
  return side ? claims.map((claim, index) => ({ ...claim, index })) : [...claims];
}
