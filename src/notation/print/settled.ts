import type { ChoiceClause, Clause } from "../tree.ts";

/** Which option of a clause that reads in several ways is meant; by index. */
export type Chosen = (choice: ChoiceClause) => number;

/** The likeliest reading. */
export const first: Chosen = () => 0;

/** The clauses with every choice replaced by the option that is meant, however deep it stands, and without asides. */
export function settled(clauses: readonly Clause[], chosen: Chosen = first): readonly Clause[] {
  return clauses.flatMap((clause): readonly Clause[] => {
    switch (clause.kind) {
      case "aside":
        return [];
      case "choice":
        return settled(optionOf(clause, chosen), chosen);
      case "repeat":
        return [settledRepeat(clause, chosen)];
      case "group":
      case "size-only":
        return [{ ...clause, body: settled(clause.body, chosen) }];
      default:
        return [clause];
    }
  });
}

/** The clauses of the option that is meant; the first where the index is none. */
export function optionOf(choice: ChoiceClause, chosen: Chosen): readonly Clause[] {
  return choice.options[chosen(choice)] ?? choice.options[0] ?? [];
}

/** A mark of where the last time round ends counts clauses, which may grow fewer or more. */
function settledRepeat(clause: Extract<Clause, { kind: "repeat" }>, chosen: Chosen): Clause {
  const { body, endBefore } = clause;
  if (endBefore === undefined) return { ...clause, body: settled(body, chosen) };
  const before = settled(body.slice(0, endBefore), chosen);
  return {
    ...clause,
    body: [...before, ...settled(body.slice(endBefore), chosen)],
    endBefore: before.length,
  };
}
