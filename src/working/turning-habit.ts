import type { Clause, Instruction } from "../notation/index.ts";
import { turnsBeforeWork } from "./segments.ts";
import type { Placed } from "./worked-sizes.ts";

/** Fewer pairs of rows than these show no habit. */
const FEWEST = 3;
const MOST_OF = 0.6;

/**
 * Whether the document says "turn" between most of its flat rows, at the end of the one or at the beginning of the other, so that two
 * rows without it are an oversight and not a habit. A row that is worked again says what the row it repeats says.
 */
export function turnsAreWritten(placed: readonly Placed[]): boolean {
  let pairs = 0;
  let turns = 0;
  const count = (said: boolean): void => {
    pairs++;
    if (said) turns++;
  };
  const told = new Map<string, readonly Clause[]>();
  let before: Placed | undefined;
  for (const [at, row] of placed.entries()) {
    const { instruction, pieceAt } = row;
    const { label, clauses } = instruction;
    if (label === null) continue;
    const number = label.rows[0]?.from.values[0];
    if (number !== undefined && !clauses.some(isAgain)) told.set(`${pieceAt} ${number}`, clauses);
    const first = rowMeant(clauses, told, pieceAt, "first");
    const last = rowMeant(clauses, told, pieceAt, "last");
    if (isFlat(instruction) && before?.pieceAt === pieceAt && isFlat(before.instruction)) {
      const ended = rowMeant(before.instruction.clauses, told, pieceAt, "last");
      if (first && ended && !cuts(before.instruction.clauses))
        count(endsTurned(ended) || turnsBeforeWork(first));
    }
    // "Rows 3-20: Rep Row 2": the row stands on itself.
    if (
      isFlat(instruction) &&
      first &&
      last &&
      label.rows.some(({ from, to }) => from.span.from !== to.span.from)
    )
      count(endsTurned(last) || turnsBeforeWork(first));
    // A turn behind the last row of a piece tells of the habit too; that there is none tells nothing.
    const next = placed.slice(at + 1, at + 9).find((each) => each.instruction.label !== null);
    if (isFlat(instruction) && last && endsTurned(last) && next?.pieceAt !== pieceAt) count(true);
    before = row;
  }
  return pairs >= FEWEST && turns / pairs >= MOST_OF;
}

const isAgain = (clause: Clause): boolean => clause.kind === "repeat-rows";
const cuts = (clauses: readonly Clause[]): boolean => clauses.some(({ kind }) => kind === "fasten-off");
const endsTurned = (clauses: readonly Clause[]): boolean =>
  clauses.some(({ kind }) => kind === "turn") && !turnsBeforeWork(clauses);

/** Worked there and back, one row a line. */
function isFlat({ label, clauses }: Instruction): boolean {
  if (label?.is !== "row" || label.rounds) return false;
  return !clauses.some(({ kind }) => ["even", "schedule", "join", "do-not-turn", "as-piece"].includes(kind));
}

/** The clauses of the row that stands at the beginning or the end of a line; null where it repeats rows that are not known. */
function rowMeant(
  clauses: readonly Clause[],
  told: ReadonlyMap<string, readonly Clause[]>,
  pieceAt: number,
  which: "first" | "last",
): readonly Clause[] | null {
  const again = clauses.find((clause) => clause.kind === "repeat-rows");
  if (again?.kind !== "repeat-rows") return clauses;
  if (again.rows.are !== "numbered") return null;
  const range = which === "first" ? again.rows.list[0] : again.rows.list.at(-1);
  const number = (which === "first" ? range?.from : range?.to)?.values[0];
  return told.get(`${pieceAt} ${number}`) ?? null;
}
