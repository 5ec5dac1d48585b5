import { describeClaims, describeClauses } from "../describe.ts";
import { readInstructionBody } from "../instruction.ts";
import { lex } from "../lex.ts";

/** Reads the body of a row of a pattern in sizes S, M and L and describes its clauses, then its counts. For tests alone. */
export function readRow(row: string, terms: "US" | "UK" = "US"): string {
  const context = {
    text: row,
    terms,
    sizes: 3,
    sizeNames: ["S", "M", "L"],
    specials: new Map<string, string>(),
    colours: [],
  };
  const { clauses, claims } = readInstructionBody(lex(row, 0, row.length, context), context);
  return [describeClauses(clauses), describeClaims(claims)].filter((words) => words !== "").join(" ");
}
