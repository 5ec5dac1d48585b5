// For tests only: what designers may wish for, over everything that can be chosen.
import fc from "fast-check";
import { CHART_NAMES, chartNamed } from "../bodies/index.ts";
import { CONSTRUCTIONS, fabricsFor, type Wishes } from "./wishes.ts";

/** Random wishes that `choose` understands; some of them ask for what cannot be made. */
export const randomWishes: fc.Arbitrary<Wishes> = fc
  .record({
    construction: fc.constantFrom(...CONSTRUCTIONS),
    body: fc.constantFrom(...CHART_NAMES),
  })
  .chain(({ construction, body }) => {
    const sizes = chartNamed(body)?.sizes ?? [];
    return fc
      .record({
        fabric: fc.constantFrom(...fabricsFor(construction)),
        sizes: fc.oneof(
          { arbitrary: fc.subarray([...sizes], { minLength: 1, maxLength: 1 }), weight: 1 },
          { arbitrary: fc.subarray([...sizes], { minLength: 1 }), weight: 2 },
          { arbitrary: fc.constant([...sizes]), weight: 2 },
        ),
        stitches: fc.oneof(
          fc.integer({ min: 12, max: 60 }).map((half) => half / 2),
          fc.constantFrom(6, 7, 28, 30),
        ),
        /** How much taller or flatter than the fabric's usual aspect a row is. */
        flat: fc.integer({ min: 85, max: 115 }).map((share) => share / 100),
        ease: fc.option(fc.integer({ min: 0, max: 30 }), { nil: undefined }),
        armEase: fc.option(fc.integer({ min: 2, max: 16 }), { nil: undefined }),
        armhole: fc.constantFrom("notch", "straight"),
        hem: fc.constantFrom("post rib", "ridges"),
        sleeves: fc.boolean(),
        pockets: fc.boolean(),
      })
      .map(({ fabric, stitches, flat, ease, armEase, sizes: names, ...more }): Wishes => {
        const rows = Math.min(50, Math.max(2, Math.round((2 * stitches * flat) / fabric.aspect) / 2));
        return {
          construction,
          body,
          fabric: fabric.name,
          sizes: names.join(", "),
          gauge: `${stitches} x ${rows}`,
          yarn: String(yarnFor(stitches)),
          ...(ease === undefined ? {} : { ease: String(ease) }),
          ...(armEase === undefined ? {} : { armEase: String(armEase) }),
          ...more,
        };
      });
  });

/** A class of yarn that gives such a gauge, about. */
const yarnFor = (stitches: number): number =>
  [25, 18, 14.5, 11.5, 9].filter((least) => stitches < least).length + 1;
