import type { Finding } from "../base/index.ts";
import type { Clause, Instruction, PatternTree, PieceTree } from "../notation/index.ts";
import { notFastenedOff } from "./findings/index.ts";
import { makesFoundation } from "./samples.ts";

/* Parts whose yarn is never cut, in a pattern that says of all others that it is. */

/** Fewer parts that are fastened off show no habit. */
const FEWEST = 3;
const MOST_OF = 0.75;

interface Part {
  readonly piece: PieceTree;
  /** The last instruction that makes a row. */
  readonly last: Instruction;
  readonly fastened: boolean;
  /** The heading of the part that begins anew behind it; null at the end of the pattern. */
  readonly next: PieceTree | null;
}

/** Parts that end without a word on the yarn, where the next begins with yarn of its own and nearly all others are fastened off. */
export function compareFastenings(tree: PatternTree): Finding[] {
  const parts = partsOf(tree.pieces);
  const fastened = parts.filter((part) => part.fastened).length;
  if (fastened < FEWEST || fastened / parts.length < MOST_OF) return [];
  return parts
    .filter((part) => !part.fastened)
    .map(({ piece, last, next }) =>
      notFastenedOff.at(
        {
          span: last.label?.span ?? last.span,
          piece: piece.name || null,
          row: last.label?.words ?? null,
          sizes: [],
          ...(next ? { also: next.nameSpan } : {}),
        },
        {
          row: last.label?.words ?? "This line",
          piece: piece.name,
          next: next?.name ?? null,
          others: fastened,
        },
      ),
    );
}

/** Parts of which it can be told whether the yarn is cut: the next begins with yarn of its own, or there is none. */
function partsOf(pieces: readonly PieceTree[]): Part[] {
  const working = pieces.filter((piece) => piece.instructions.some(makesRow));
  return working.flatMap((piece, at): readonly Part[] => {
    const next = working[at + 1] ?? null;
    const end = piece.instructions.findLastIndex(makesRow);
    const last = piece.instructions[end];
    if (!last || (next && !beginsAnew(next))) return [];
    const until = next ? pieces.indexOf(next) : pieces.length;
    const behind = [
      ...piece.instructions.slice(end + 1),
      ...pieces.slice(pieces.indexOf(piece) + 1, until).flatMap(({ instructions }) => instructions),
    ];
    const all = [last, ...behind];
    if (all.some(({ clauses }) => clauses.some(({ kind }) => kind === "fasten-off")))
      return [{ piece, last, fastened: true, next }];
    // What is told of other pieces, or was not understood, may say it.
    const said = piece.instructions.some(({ clauses }) => clauses.some(({ kind }) => ELSEWHERE.has(kind)));
    const talk = piece.instructions.slice(end).some(({ clauses }) => talksLast(clauses));
    return said || talk ? [] : [{ piece, last, fastened: false, next }];
  });
}

const ELSEWHERE: ReadonlySet<Clause["kind"]> = new Set(["as-piece", "remark", "hold"]);
const MAKES: ReadonlySet<Clause["kind"]> = new Set([
  "work",
  "group",
  "repeat",
  "repeat-rows",
  "even",
  "evenly",
  "schedule",
  "in-pattern",
  "as-piece",
  "understood",
]);

const makesRow = ({ label, clauses }: Instruction): boolean =>
  label?.is === "row" || label?.is === "round" || clauses.some(({ kind }) => MAKES.has(kind));

const talksLast = (clauses: readonly Clause[]): boolean => {
  const kind = clauses.at(-1)?.kind;
  return kind === "aside" || kind === "remark";
};

/** A part that begins with a chain, a ring or yarn that is joined. */
function beginsAnew({ instructions }: PieceTree): boolean {
  const first = instructions.findIndex(makesRow);
  return instructions
    .slice(0, first + 1)
    .some(
      ({ clauses }) =>
        clauses.some(
          (clause) =>
            clause.kind === "join-yarn" || (clause.kind === "work" && clause.target.what.is === "ring"),
        ) || makesFoundation(clauses),
    );
}
