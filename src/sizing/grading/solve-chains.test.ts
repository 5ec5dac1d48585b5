import { describe, expect, it } from "vitest";
import { buildModel } from "./model.ts";
import type { GradingProblem, GradingRule } from "./problem.ts";
import { solveChain } from "./solve-chains.ts";

const up = (of: string): GradingRule => ({ kind: "order", of, direction: "up", words: `${of} never falls` });
const multiple = (of: string, m: number, remainder: number): GradingRule => ({
  kind: "multiple",
  of,
  multiple: m,
  remainder,
  words: `${of} is a multiple of ${m} plus ${remainder}`,
});
const equal = (of: string, as: string, plus = 0): GradingRule => ({
  kind: "equal",
  of,
  as,
  plus,
  words: `${of} is ${as}`,
});

function solve(problem: GradingProblem) {
  const model = buildModel(problem);
  if ("kind" in model) return "clash";
  const answers = model.chains.map((chain) => solveChain(problem, chain));
  if (answers.includes(null)) return "closed";
  const counts = model.places.map(({ chain, member }) =>
    answers[chain]!.k.map((k) => member.factor * k + member.offset).join(" "),
  );
  return { counts, cost: answers.reduce((sum, answer) => sum + answer!.cost, 0) / 1e6 };
}

const three = { sizes: ["S", "M", "L"], quantities: [{ id: "a", unit: 0.5, targets: [10, 10.6, 11.4] }] };

describe("one chain", () => {
  // Computation notes, section 5: g = 0.5, m = 2, r = 1, targets 10.0, 10.6, 11.4: 19, 21, 23 at 0.7.
  it("is chosen exactly", () =>
    expect(solve({ ...three, rules: [multiple("a", 2, 1), up("a")] })).toEqual({
      counts: ["19 21 23"],
      cost: 0.7,
    }));

  // The same notes: 21, 21, 23 costs 0.8.
  it("costs what a held count makes it cost", () =>
    expect(
      solve({
        ...three,
        rules: [multiple("a", 2, 1), up("a"), { kind: "hold", of: "a", size: 0, count: 21, words: "" }],
      }),
    ).toEqual({ counts: ["21 21 23"], cost: 0.8 }));

  it("merges the multiples of what is tied", () => {
    const tied = {
      sizes: ["S"],
      quantities: [
        { id: "a", unit: 1, targets: [20] },
        { id: "b", unit: 1, targets: [20] },
      ],
    };
    const rules = (m: number, r: number) => [multiple("a", 4, 1), multiple("b", m, r), equal("a", "b")];
    expect(solve({ ...tied, rules: rules(6, 3) })).toEqual({ counts: ["21", "21"], cost: 2 });
    expect(solve({ ...tied, rules: rules(6, 2) })).toBe("clash");
  });

  it("takes the larger count of two that cost the same", () =>
    expect(
      solve({ sizes: ["S", "M"], quantities: [{ id: "a", unit: 1, targets: [10.5, 11.5] }], rules: [] }),
    ).toEqual({
      counts: ["11 12"],
      cost: 1,
    }));

  it("follows exact ties with other factors", () => {
    const sleeve: GradingProblem = {
      sizes: ["S", "M"],
      quantities: [
        { id: "sleeve top", unit: 0.5, targets: [40, 44] },
        { id: "armhole", unit: 0.5, targets: [20.3, 22] },
      ],
      rules: [
        {
          kind: "sum",
          terms: [
            { of: "sleeve top", times: 1 },
            { of: "armhole", times: -2 },
          ],
          makes: 0,
          measured: "counts",
          words: "the sleeve top is twice the armhole",
        },
      ],
    };
    expect(solve(sleeve)).toEqual({ counts: ["80 88", "40 44"], cost: 0.3 });
  });

  it("stays where it must neither rise nor fall", () => {
    const down: GradingRule = { kind: "order", of: "a", direction: "down", words: "a never rises" };
    expect(solve({ ...three, rules: [up("a"), down] })).toEqual({
      counts: ["21 21 21"],
      cost: expect.closeTo(1.5, 9),
    });
  });

  it("closes when holds stand in the wrong order", () =>
    expect(
      solve({
        ...three,
        rules: [
          up("a"),
          { kind: "hold", of: "a", size: 0, count: 24, words: "" },
          { kind: "hold", of: "a", size: 2, count: 22, words: "" },
        ],
      }),
    ).toBe("closed"));

  it("finds far optima: a step the smoothness spreads over all sizes", () => {
    const sizes = [..."abcdefghi"];
    const problem: GradingProblem = {
      sizes,
      quantities: [{ id: "a", unit: 1, targets: sizes.map((_, s) => (s < 5 ? 20 : 60)), smoothness: 50 }],
      rules: [up("a")],
    };
    // So dear a change of step leaves an even slope through the cheapest miss: tried for all slopes and starts.
    let cheapest = Number.POSITIVE_INFINITY;
    for (let start = 0; start <= 80; start++) {
      for (let step = 0; step <= 20; step++) {
        const cost = sizes.reduce((sum, _, s) => sum + Math.abs(start + step * s - (s < 5 ? 20 : 60)), 0);
        cheapest = Math.min(cheapest, cost);
      }
    }
    expect(solve(problem)).toMatchObject({ cost: cheapest });
  });
});
