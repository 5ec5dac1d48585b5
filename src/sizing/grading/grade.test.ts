import fc from "fast-check";
import loadHighs from "highs";
import { beforeAll, describe, expect, it } from "vitest";
import { type GradingResult, grade, gradeBy } from "./grade.ts";
import { highsSolver, type LinearSolver } from "./linear-solver.ts";
import { type GradingProblem, type GradingRule, namedIn, reachOf } from "./problem.ts";
import { problems } from "./random-problems.ts";
import { gradeWithSolver, solveWithSolver } from "./solve-sums.ts";
import { keepsAll, tryAll, tryAny } from "./try-all.ts";

let solver: LinearSolver;
beforeAll(async () => {
  solver = highsSolver(await loadHighs());
});

/** Compares with trying everything; on a conflict, that the named rules cannot hold and are all needed. */
function expectSame(problem: GradingProblem, result: GradingResult): void {
  const tried = tryAll(problem);
  if (tried === null) {
    expect(result.kind).toBe("conflict");
    if (result.kind !== "conflict") return;
    expect(result.tight).toBe(true);
    expect(cannotHold(problem, result.rules)).toBe(true);
    for (const one of result.rules) {
      const without = { ...problem, rules: result.rules.filter((other) => other !== one) };
      const held = gradeBy(problem, without.rules);
      expect(
        held.kind === "graded" &&
          keepsAll(
            without,
            held.quantities.map(({ counts }) => counts),
          ),
      ).toBe(true);
    }
    return;
  }
  expect(result.kind).toBe("graded");
  if (result.kind !== "graded") return;
  expect(result.proved).toBe(true);
  expect(Math.round(result.cost * 1e6)).toBe(tried.cost);
  expect(Math.round(result.worst * 1e6)).toBe(tried.worst);
  expect(result.floor).toBeCloseTo(result.cost, 9);
  expect(result.latticeFloor).toBeLessThanOrEqual(result.cost + 1e-5);
  expect(result.quantities.map(({ counts }) => counts)).toEqual(tried.counts);
}

/** Whether rules cannot hold, tried out on the quantities they name, as far as any count may ever go. */
function cannotHold(problem: GradingProblem, rules: readonly GradingRule[]): boolean {
  const quantities = problem.quantities.filter(({ id }) => rules.some((one) => namedIn(one).includes(id)));
  const wide = quantities.map(
    ({ id }): GradingRule => ({ kind: "at most", of: id, counts: [reachOf(problem)], words: "" }),
  );
  return !tryAny({ ...problem, quantities, rules: [...rules, ...wide] });
}

const SEED = 20261124;

describe("grading agrees with trying every count", () => {
  it("where ties join counts two by two", () => {
    fc.assert(
      fc.property(problems(false), (problem) => expectSame(problem, grade(problem))),
      { seed: SEED, numRuns: 500 },
    );
  }, 120_000);

  it("where sums and ratios tie them", () => {
    fc.assert(
      fc.property(problems(true), (problem) => expectSame(problem, grade(problem))),
      { seed: SEED + 1, numRuns: 500 },
    );
  }, 120_000);
});

describe("grading with a solver at hand", () => {
  it("agrees with HiGHS, given the same problems and nothing else", async () => {
    await fc.assert(
      fc.asyncProperty(problems(true), async (problem) => {
        const ours = grade({ ...problem, aim: "least sum" });
        const theirs = await solveWithSolver(problem, solver, 10_000);
        expect(theirs === null).toBe(ours.kind === "conflict");
        if (theirs !== null && ours.kind === "graded") expect(theirs).toBeCloseTo(ours.cost, 5);
      }),
      { seed: SEED + 2, numRuns: 500 },
    );
  }, 120_000);

  it("is the same as without, where nothing is left open", async () => {
    await fc.assert(
      fc.asyncProperty(problems(true), async (problem) => {
        expect(await gradeWithSolver(problem, solver)).toEqual(grade(problem));
      }),
      { seed: SEED + 3, numRuns: 100 },
    );
  }, 60_000);
});
