import { describe, expect, it } from "vitest";
import { YARN_CLASSES } from "../stitches/index.ts";
import { ballsFor } from "./buying.ts";
import { classByLength, substitute } from "./substitute.ts";

const yarn = (yarnClass: number | null, metres: number, grams: number) => ({
  yarnClass,
  metres,
  grams,
  price: null,
});

describe("another yarn", () => {
  it("of the same thickness is bought by its length, never by its weight", () => {
    // Trade handbook, 4.3: 600 m in balls of 150 and of 90 m are 4 and 7 balls [S75].
    const { lengthFactor, fit } = substitute(yarn(4, 150, 75), yarn(4, 90, 45));
    expect(fit).toBe("as it is");
    expect(ballsFor(600 * lengthFactor, 90)).toBe(7);
  });

  it("that is a little thinner wants a swatch first", () =>
    expect(substitute(yarn(4, 95, 50), yarn(4, 112, 50)).fit).toBe("swatch first"));

  it("of another class will not give the gauge; a first guess at its length goes with the thickness", () => {
    const { lengthFactor, thickness, fit } = substitute(yarn(4, 100, 50), yarn(5, 50, 50));
    expect(fit).toBe("another gauge");
    expect(thickness).toBeCloseTo(Math.SQRT2, 9);
    expect(lengthFactor).toBeCloseTo(1 / Math.SQRT2, 9);
    expect(substitute(yarn(3, 100, 50), yarn(4, 100, 50)).fit).toBe("another gauge");
    expect(substitute(yarn(4, 100, 50), { ...yarn(4, 1, 1), metres: null }).fit).toBe("as it is");
  });

  it("has its class told by its length for its weight", () => {
    // Trade handbook, 4.3: metres in 100 g by class, common practice, no source.
    expect(classByLength(yarn(null, 95, 50))).toBe(4);
    expect(classByLength(yarn(null, 400, 100))).toBe(1);
    expect(classByLength(yarn(null, 115, 100))).toBe(5);
    expect(classByLength(yarn(null, 5000, 100))).toBeNull();
    expect(YARN_CLASSES.map(({ number }) => number)).toContain(classByLength(yarn(null, 300, 100)));
  });
});
