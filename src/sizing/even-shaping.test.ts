import { describe, expect, it } from "vitest";
import {
  decreaseEvenly,
  groupSteps,
  increaseEvenly,
  type ShapingStep,
  shapingPlaces,
  tally,
} from "./even-shaping.ts";

const say = (steps: readonly ShapingStep[]) =>
  steps
    .map(({ kind, stitches }) =>
      kind === "plain" ? `${stitches}` : `${kind === "increase" ? "+" : "-"}${stitches}`,
    )
    .join(" ");
const sayGroups = (steps: readonly ShapingStep[]) =>
  groupSteps(steps)
    .map((group) => `(${say(group.steps)}) x${group.times}`)
    .join(" ");

describe("increases", () => {
  // Trade handbook, 3.4.
  it.each([
    [51, 4, "7 20 32 45"],
    [87, 9, "5 15 25 34 44 54 63 73 83"],
  ])("of %i stitches by %i stand at %s", (n, k, places) =>
    expect(shapingPlaces(increaseEvenly(n, k).steps).join(" ")).toBe(places),
  );
  it.each([
    [112, 16, 7],
    [60, 6, 10],
    [40, 4, 10],
  ])("of %i stitches by %i come every %i", (n, k, every) => {
    const at = shapingPlaces(increaseEvenly(n, k).steps);
    expect(new Set(at.slice(1).map((here, i) => here - at[i]!))).toEqual(new Set([every]));
    expect(at[0]).toBeGreaterThan(1);
  });
  it("beyond one in each stitch work three into some", () => {
    const { steps, result } = increaseEvenly(5, 8);
    expect(steps.map(({ stitches }) => stitches).toSorted()).toEqual([2, 2, 3, 3, 3]);
    expect(result).toBe(13);
  });
  it("of nothing are a plain row", () => expect(say(increaseEvenly(12, 0).steps)).toBe("12"));
});

describe("decreases", () => {
  // Trade handbook, 3.5.
  it("of 30 by 10 in the round are one plain and one decrease, ten times", () =>
    expect(sayGroups(even(30, 10, "round"))).toBe("(1 -2) x10"));
  it("of 100 by 16 lie between 17 gaps of 4", () =>
    expect(sayGroups(even(100, 16, "flat"))).toBe("(4 -2) x16 (4) x1"));
  it("of 87 by 9 lie between 10 gaps, one of 6 and nine of 7", () => {
    const gaps = even(87, 9, "flat").flatMap((step) => (step.kind === "plain" ? [step.stitches] : []));
    expect(gaps.toSorted().join(" ")).toBe("6 7 7 7 7 7 7 7 7 7");
  });
  it("of 26 by 15 are 7 two together and 4 three together", () => {
    const takes = even(26, 15, "flat").map((step) => (step.kind === "decrease" ? step.stitches : 0));
    expect(takes.filter((n) => n === 2)).toHaveLength(7);
    expect(takes.filter((n) => n === 3)).toHaveLength(4);
    expect(takes).toHaveLength(11);
  });
  it("beyond three together are refused, and shared between rows", () => {
    expect(decreaseEvenly(30, 21)).toEqual({ kind: "refused", most: 20, rows: [11, 10] });
    expect(decreaseEvenly(100, 99)).toMatchObject({ kind: "refused", most: 66 });
    expect(decreaseEvenly(10, 10)).toEqual({ kind: "refused", most: 6, rows: [] });
  });

  it("use up every stitch and leave what was promised, for all rows up to 60", () => {
    for (let n = 1; n <= 60; n++) {
      for (let k = 0; k < n; k++) {
        for (const way of ["flat", "round"] as const) {
          const row = decreaseEvenly(n, k, way);
          if (row.kind === "even") expect(tally(row.steps)).toEqual({ takes: n, makes: n - k });
          else expect(worked(n, row.rows)).toBe(n - k);
        }
        const more = increaseEvenly(n, k);
        expect(tally(more.steps)).toEqual({ takes: n, makes: n + k });
      }
    }
  });
});

function even(n: number, k: number, way: "flat" | "round"): readonly ShapingStep[] {
  const row = decreaseEvenly(n, k, way);
  if (row.kind === "refused") throw new Error("refused");
  return row.steps;
}

function worked(n: number, rows: readonly number[]): number {
  expect(rows.length).toBeGreaterThan(1);
  return rows.reduce((have, k) => {
    const row = decreaseEvenly(have, k);
    return row.kind === "even" ? row.result : Number.NaN;
  }, n);
}
