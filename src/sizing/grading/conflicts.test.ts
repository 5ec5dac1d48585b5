import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { canHold, findConflict } from "./conflicts.ts";
import { grade } from "./grade.ts";
import type { GradingProblem, GradingRule } from "./problem.ts";
import { problems } from "./random-problems.ts";

const sizes = ["S", "M", "L"];
const quantities = [
  { id: "back", unit: 0.5, targets: [50, 55, 60] },
  { id: "front", unit: 0.5, targets: [24, 26, 28] },
  { id: "band", unit: 0.5, targets: [3, 3, 3] },
];
const halves: GradingRule = {
  kind: "sum",
  terms: [
    { of: "front", times: 1 },
    { of: "back", times: -0.5 },
    { of: "band", times: 0.5 },
  ],
  makes: 0,
  measured: "counts",
  words: "a front and half the band are half of the back",
};
const rule = {
  up: { kind: "order", of: "back", direction: "up", words: "the back never falls" },
  odd: { kind: "multiple", of: "back", multiple: 2, remainder: 1, words: "the back is odd" },
  even: { kind: "multiple", of: "band", multiple: 2, remainder: 0, words: "the band is even" },
  hold: (size: number, count: number): GradingRule => ({
    kind: "hold",
    of: "back",
    size,
    count,
    words: `the back is ${count} in ${sizes[size]}`,
  }),
} as const satisfies Record<string, GradingRule | ((size: number, count: number) => GradingRule)>;

const named = (rules: readonly GradingRule[]) => {
  const result = grade({ sizes, quantities, rules });
  return result.kind === "conflict"
    ? { tight: result.tight, words: result.rules.map(({ words }) => words) }
    : result.kind;
};

describe("rules that cannot all hold", () => {
  it("are named in their own words, without those that are not to blame", () =>
    expect(named([rule.up, rule.even, rule.hold(0, 108), rule.hold(2, 100)])).toEqual({
      tight: true,
      words: ["the back never falls", "the back is 108 in S", "the back is 100 in L"],
    }));

  // Front = back/2 − band/2 needs back and band both odd or both even; no count is large enough to mend that.
  it("are found where only remainders disagree", () =>
    expect(named([halves, rule.up, rule.odd, rule.even])).toEqual({
      tight: true,
      words: [halves.words, "the back is odd", "the band is even"],
    }));

  it("are found in a bound that reason sets: no count is below 0", () => {
    const below: GradingRule = {
      kind: "sum",
      terms: [{ of: "band", times: 2 }],
      makes: -4,
      measured: "counts",
      words: "twice the band is less than nothing",
    };
    expect(named([below, rule.up])).toEqual({ tight: true, words: [below.words] });
  });

  it("are the smallest set of several", () => {
    const clash: GradingRule = {
      kind: "at most",
      of: "back",
      counts: [null, 90, null],
      words: "the back is at most 90 in M",
    };
    // The order with the holds of S and L, or the hold of M with the bound of M: two rules are fewer than three.
    expect(named([rule.hold(0, 108), rule.hold(2, 100), rule.up, rule.hold(1, 104), clash])).toEqual({
      tight: true,
      words: ["the back is 104 in M", "the back is at most 90 in M"],
    });
  });

  it("are never more than trying every set of rules finds", () => {
    let conflicts = 0;
    fc.assert(
      fc.property(problems(true), (problem) => {
        if (canHold(problem, problem.rules) !== "no") return;
        conflicts++;
        const found = findConflict(problem).rules.length;
        const { rules } = problem;
        for (let set = 0; set < 2 ** rules.length; set++) {
          const some = rules.filter((_, i) => set & (1 << i));
          if (some.length < found) expect(canHold(problem, some)).not.toBe("no");
        }
      }),
      { seed: 79, numRuns: 150 },
    );
    expect(conflicts).toBeGreaterThan(30);
  }, 120_000);

  it("are the smallest even where every order of leaving out finds a larger set", () => {
    const equal = (of: string, as: string): GradingRule => ({
      kind: "equal",
      of,
      as,
      words: `${of} is ${as}`,
    });
    const rules = [
      rule.hold(0, 100),
      equal("back", "front"),
      equal("front", "band"),
      { kind: "at most", of: "band", counts: [90], words: "the band is at most 90" } satisfies GradingRule,
      {
        kind: "at least",
        of: "front",
        counts: [95],
        words: "the front is at least 95",
      } satisfies GradingRule,
    ];
    // The hold goes by way of two ties against the bound of the band, the bound of the front by way of one.
    expect(named(rules)).toEqual({
      tight: true,
      words: ["front is band", "the band is at most 90", "the front is at least 95"],
    });
  });

  it("may hold after all", () => {
    const problem: GradingProblem = { sizes, quantities, rules: [halves, rule.up, rule.even] };
    expect(canHold(problem, problem.rules)).toBe("yes");
    expect(canHold(problem, [...problem.rules, rule.odd])).toBe("no");
    expect(findConflict(problem, [...problem.rules, rule.odd]).rules).toHaveLength(3);
  });
});

describe("a grading", () => {
  const result = grade({ sizes, quantities, rules: [halves, rule.up, rule.even] });
  it("sets wanted, made and missed out, and how close a repeat could come", () => {
    if (result.kind !== "graded") throw new Error(result.kind);
    const [back, front, band] = result.quantities;
    for (const size of [0, 1, 2]) {
      expect(front!.counts[size]! + band!.counts[size]! / 2).toBe(back!.counts[size]! / 2);
      expect(back!.made[size]).toBe(back!.counts[size]! / 2);
      expect(back!.off[size]).toBeCloseTo(back!.made[size]! - quantities[0]!.targets[size]!, 12);
      expect(Math.abs(band!.off[size]!)).toBeGreaterThanOrEqual(band!.closest[size]!);
    }
    expect(result.cost).toBeGreaterThanOrEqual(result.latticeFloor);
    expect(result.proved).toBe(true);
  });
});

describe("a problem nobody can have meant", () => {
  it.each([
    [{ quantities: [...quantities, quantities[0]!] }, /two quantities are called back/],
    [{ quantities: [{ id: "back", unit: 0, targets: [1, 2, 3] }] }, /gauge of back must be above 0/],
    [{ quantities: [{ id: "back", unit: 1, targets: [1, 2] }] }, /2 targets for 3 sizes/],
    [{ rules: [{ kind: "order", of: "sleeve", direction: "up", words: "" }] }, /sleeve, which there is not/],
    [{ rules: [{ kind: "multiple", of: "back", multiple: 1.5, remainder: 0, words: "" }] }, /whole number/],
    [{ rules: [{ kind: "hold", of: "back", size: 3, count: 5, words: "" }] }, /no size 3/],
    [{ rules: [{ ...halves, terms: [] }] }, /no terms/],
  ] as [Partial<GradingProblem>, RegExp][])("is the caller's mistake", (wrong, says) =>
    expect(() => grade({ sizes, quantities, rules: [], ...wrong })).toThrow(says),
  );
});
