// How fast counts are chosen. The solver's time stands beside, on the same problem.
import loadHighs from "highs";
import { grade, gradeAtOnce } from "../../src/sizing/grading/grade.ts";
import { highsSolver } from "../../src/sizing/grading/linear-solver.ts";
import { gradeWithSolver, solveWithSolver } from "../../src/sizing/grading/solve-sums.ts";
import { pairedGarment, raglanGarment } from "../../src/sizing/grading/whole-garment.ts";
import { median, time } from "./timing.ts";

const NINE = 9;
/** Counts tied two by two: the dynamic programme alone settles them. */
const paired = pairedGarment(7, NINE, 30);
/** Eight sums of three counts and more, two bands picked up by a ratio, two schedules of increases. */
const raglan = raglanGarment(2, NINE);

export interface Row {
  readonly job: string;
  readonly took: string;
  readonly goal: string;
  readonly says: string;
}

/**
 * @param rounds   of each job; the solver is asked once
 * @param proving  whether the solver is also asked to prove the raglan, which takes it minutes
 */
export async function timeGrading(rounds: number, proving: boolean): Promise<readonly Row[]> {
  const solver = highsSolver(await loadHighs());
  const ours = medianOf(rounds, () => grade(paired));
  const theirs = await timeOnce(() => solveWithSolver(paired, solver));
  const first = medianOf(rounds, () => gradeAtOnce(raglan));
  const searched = medianOf(Math.min(rounds, 3), () => grade(raglan));
  const rows: Row[] = [
    row("grade 9 sizes x 30 counts tied two by two", ours.ms, "1 ms", sayOf(ours.result)),
    row("the same by HiGHS", theirs.ms, "", `${theirs.result?.toFixed(3)} cm`),
    row(
      "grade a raglan with 8 sums and 2 ratios: an answer with its gap",
      first.ms,
      "16 ms",
      sayOf(first.result),
    ),
    row("the same, searched without a solver", searched.ms, "", sayOf(searched.result)),
  ];
  if (!proving) return rows;
  const proof = await timeOnce(() => gradeWithSolver(raglan, solver));
  return [...rows, row("the same, proved with HiGHS", proof.ms, "2000 ms", sayOf(proof.result))];
}

const row = (job: string, ms: number, goal: string, says: string): Row => ({
  job,
  took: `${ms.toFixed(2)} ms`,
  goal,
  says,
});

function sayOf(result: ReturnType<typeof grade | typeof gradeAtOnce>): string {
  if (result.kind !== "graded") return result.kind;
  const { cost, floor, proved } = result;
  return proved ? `${cost.toFixed(3)} cm, proved` : `${cost.toFixed(3)} cm, gap ${(cost - floor).toFixed(3)}`;
}

function medianOf<Result>(
  rounds: number,
  run: () => Result,
): { readonly ms: number; readonly result: Result } {
  for (let warm = 0; warm < 3; warm++) run();
  return { ms: median(Array.from({ length: rounds }, () => time(run))), result: run() };
}

async function timeOnce<Result>(
  run: () => Promise<Result>,
): Promise<{ readonly ms: number; readonly result: Result }> {
  const start = performance.now();
  const result = await run();
  return { ms: performance.now() - start, result };
}
