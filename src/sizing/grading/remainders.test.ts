import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Link } from "./model.ts";
import { remaindersAgree } from "./remainders.ts";

const link = (times: readonly number[], sum: number, slack = 0): Link => ({
  rule: 0,
  terms: times.map((n, chain) => ({ chain, times: n })).filter(({ times: n }) => n !== 0),
  least: sum - slack,
  most: sum + slack,
});

describe("sums that must come out exactly", () => {
  it("of even numbers are never odd", () => {
    expect(remaindersAgree([link([2, -4, 6], 1)], 3)).toBe(false);
    expect(remaindersAgree([link([2, -4, 6], 8)], 3)).toBe(true);
  });
  it("may contradict each other only together", () => {
    expect(remaindersAgree([link([1, 1], 3)], 2)).toBe(true);
    expect(remaindersAgree([link([1, -1], 2)], 2)).toBe(true);
    expect(remaindersAgree([link([1, 1], 3), link([1, -1], 2)], 2)).toBe(false);
    expect(remaindersAgree([link([1, 1], 4), link([1, -1], 2)], 2)).toBe(true);
  });
  it("with halves are doubled first", () => expect(remaindersAgree([link([1, -2, -0.5], 0)], 3)).toBe(true));
  it("that may miss say nothing", () => expect(remaindersAgree([link([2, 4], 1, 1)], 2)).toBe(true));

  it("agree with trying small numbers", () => {
    const row = fc.tuple(
      fc.array(fc.integer({ min: -4, max: 4 }), { minLength: 3, maxLength: 3 }),
      fc.integer({ min: -6, max: 6 }),
    );
    fc.assert(
      fc.property(row, row, (a, b) => {
        const said = remaindersAgree([link(...a), link(...b)], 3);
        const range = Array.from({ length: 41 }, (_, i) => i - 20);
        const fits = ([times, sum]: readonly [readonly number[], number], k: readonly number[]) =>
          times.reduce((all, n, i) => all + n * k[i]!, 0) === sum;
        const found = range.some((x) =>
          range.some((y) => range.some((z) => fits(a, [x, y, z]) && fits(b, [x, y, z]))),
        );
        if (found) expect(said).toBe(true);
        // Numbers this small have a small solution when they have any.
        else expect(said).toBe(false);
      }),
      { seed: 5, numRuns: 150 },
    );
  });
});
