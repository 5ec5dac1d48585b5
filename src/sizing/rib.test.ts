import { expect, it } from "vitest";
import { fitRib, goesOver, HEM_RIB, ribOf } from "./rib.ts";

const rib = ribOf({ stitches: 24, relaxed: 12, stretched: 18, afterwards: 12.6 });

it("measures a rib at rest, pulled out and let go", () =>
  expect(rib).toEqual({ stitchRelaxed: 0.5, stitchStretched: 0.75, stretch: 1.5, recovery: 1.05 }));

it("fits a rib to its edge within the multiple", () => {
  const fit = fitRib(rib, 50, 0.85, { multiple: 4, remainder: 2 });
  expect(fit).toEqual({ stitches: 86, relaxed: 43, stretched: 64.5, share: 0.86 });
  expect(fit.share).toBeGreaterThan(HEM_RIB.least);
  expect(fit.share).toBeLessThan(HEM_RIB.most);
});

it("says whether a head goes through", () => {
  expect(goesOver(56, 56)).toBe(true);
  expect(goesOver(55.9, 56)).toBe(false);
});

it("refuses a rib of no stitches", () =>
  expect(() => ribOf({ stitches: 0, relaxed: 1, stretched: 1, afterwards: 1 })).toThrow(RangeError));
