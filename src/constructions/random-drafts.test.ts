import fc from "fast-check";
import loadHighs from "highs";
import { expect, it } from "vitest";
import { highsSolver } from "../sizing/index.ts";
import { beginDesign } from "./begin.ts";
import { draftFaults } from "./draft-faults.ts";
import { randomWishes } from "./random-wishes.ts";
import { choose } from "./wishes.ts";

/**
 * A draft takes about a second, so only a few are tried with the other tests, and always the same; `npm run check:drafts` tries 500
 * others each time.
 */
const { DRAFT_RUNS, DRAFT_SEED } = process.env;
const RUNS = Number(DRAFT_RUNS ?? 8);
const SEED = Number(DRAFT_SEED ?? (DRAFT_RUNS === undefined ? 1 : Date.now() % 1_000_000));
/** Even the most extreme choices are settled, or given up, in this time, on a machine that has much else to do. */
const MOST_SECONDS = 120;

it(
  `every one of ${RUNS} random drafts (seed ${SEED}) is proved whole, or refused in sentences`,
  async () => {
    const solver = highsSolver(await loadHighs());
    let [begun, refused] = [0, 0];
    await fc.assert(
      fc.asyncProperty(randomWishes, async (wishes) => {
        const chosen = choose(wishes);
        if ("problems" in chosen) {
          expect(chosen.problems.join(" ")).toMatch(/\.$/);
          refused += 1;
          return;
        }
        const from = performance.now();
        const design = await beginDesign(chosen.choices, solver);
        expect((performance.now() - from) / 1000).toBeLessThan(MOST_SECONDS);
        if (design.is === "begun") {
          expect(draftFaults(design)).toEqual([]);
          begun += 1;
          return;
        }
        const why = design.is === "not wearable" ? design.why : design.why.findings.map(({ what }) => what);
        expect(why.join(" ")).toMatch(/\.$/);
        refused += 1;
      }),
      { seed: SEED, numRuns: RUNS, endOnFailure: true },
    );
    // Refusing everything would be no draft at all.
    expect(begun).toBeGreaterThan(refused);
  },
  RUNS * 60_000,
);
