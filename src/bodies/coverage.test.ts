import { describe, expect, it } from "vitest";
import { readTable } from "../../scripts/bodies/tables.mjs";
import { bodyMeasures } from "./body-measures.ts";
import { type Chart, middlesOf } from "./chart.ts";
import { correctedChart } from "./corrected.ts";
import { type Coverage, type CoverageQuestion, coverage, type GarmentSize } from "./coverage.ts";
import type { EaseRange } from "./ease.ts";
import type { Cm, Measurement } from "./measurement.ts";
import { publishedChart } from "./published.ts";
import type { Surveyed } from "./survey.ts";

/** A garment made to a chart: the middle of each size plus this ease. */
function garment(chart: Chart, ease: Partial<Record<Measurement, Cm>>): GarmentSize[] {
  return chart.sizes.map((size, index) => ({
    size,
    finished: Object.fromEntries(
      (Object.entries(ease) as [Measurement, Cm][]).map(([measurement, cm]) => [
        measurement,
        (middlesOf(chart, measurement)[index] ?? 0) + cm,
      ]),
    ),
  }));
}

const PULLOVER: CoverageQuestion["easeRanges"] = {
  bust: { least: 5, most: 20 },
  hip: { least: 0, most: 25 },
  "upper arm": { least: 3, most: 12 },
  "shoulder width": { least: -2, most: 5 },
  "back length": { least: -4, most: 6 },
};
const MADE: Partial<Record<Measurement, Cm>> = {
  bust: 12,
  hip: 12,
  "upper arm": 7,
  "shoulder width": 1,
  "back length": 0,
};

describe("coverage", () => {
  // data/bodies/checks/chart-vs-bodies.csv: with no ease and half a range of grace, the sizes are the printed ranges,
  // so the counts must be those of women strictly inside them.
  it("counts the women of the printed ranges when the ease says just that", () => {
    const chart = publishedChart("women");
    const sizes = garment(chart, { bust: 0 }).filter((_, index) => [0, 1, 2, 3, 5].includes(index));
    // These five ranges are 5 cm wide; XL, 4X and 5X are printed wider.
    const found = coverage({ population: "women", sizes, easeRanges: { bust: { least: -2.5, most: 2.5 } } });
    const counted = readTable("checks/chart-vs-bodies.csv").filter(({ grouping }) => grouping === "strict");
    expect(found.bySize.map(({ size, people }) => [size, people])).toEqual(
      ["XS", "S", "M", "L", "2X"].map((size) => [
        size,
        Number(counted.find((row) => row.size === size)?.n_women),
      ]),
    );
    expect(found.share).toBeCloseTo((3 + 217 + 470 + 234 + 3) / 1986, 9);
  });

  it("says what the published chart's cross back does to a pullover with a shoulder seam", () => {
    const printed = coverage({
      population: "women",
      sizes: garment(publishedChart("women"), MADE),
      easeRanges: PULLOVER,
    });
    const drawn = coverage({
      population: "women",
      sizes: garment(correctedChart("women"), MADE),
      easeRanges: PULLOVER,
    });
    expect(printed.shutOut[0]).toMatchObject({ measurement: "shoulder width", tooTight: 0 });
    expect(printed.widening.at(-1)?.measurement).toBe("shoulder width");
    expect(drawn.share!).toBeGreaterThan(printed.share! + 0.3);
    expect(printed.share).toBeCloseTo(
      printed.bySize.reduce((sum, { share }) => sum + share, 0),
      9,
    );
  });

  it("says where the measured bodies end", () => {
    const { notJudged } = coverage({
      population: "women",
      sizes: garment(correctedChart("women"), MADE),
      easeRanges: PULLOVER,
    });
    expect(notJudged).toMatchObject({
      measurement: "bust",
      least: 69.5,
      most: 126.6,
      sizes: ["3X", "4X", "5X"],
    });
    expect(notJudged.partly).toEqual(["XS", "2X"]);
    expect(notJudged.hipsBeyond).toBeCloseTo(0.074, 3);
  });

  it("leaves out what cannot count and says why", () => {
    const found = coverage({
      population: "men",
      sizes: [
        { size: "M", finished: { bust: 112, "back hip length": 66, hip: 110 } },
        { size: "L", finished: { bust: 122, "back hip length": 68 } },
      ],
      easeRanges: {
        bust: { least: 5, most: null },
        "back hip length": { least: 0, most: 5 },
        hip: { least: 0, most: 10 },
        waist: { least: null, most: null },
      },
    });
    expect(found.asked).toEqual(["bust"]);
    expect(found.leftOut).toEqual([
      { measurement: "back hip length", why: "not in the survey" },
      { measurement: "hip", why: "not in every size" },
      { measurement: "waist", why: "no limit stated" },
    ]);
    expect(found.bySize[0]).toMatchObject({ least: null, most: 107 });
    expect(
      coverage({ population: "men", sizes: [{ size: "M", finished: {} }], easeRanges: {} }).share,
    ).toBeNull();
  });

  it("refuses what no garment is", () => {
    expect(() => coverage({ population: "men", sizes: [], easeRanges: {} })).toThrow(RangeError);
    expect(() =>
      coverage({
        population: "men",
        sizes: [{ size: "M", finished: { bust: Number.NaN } }],
        easeRanges: { bust: { least: 0, most: 5 } },
      }),
    ).toThrow(RangeError);
  });

  it("counts a body on the limit as within", () => {
    const bust = bodyMeasures("women", "bust")[0]!;
    const found = coverage({
      population: "women",
      sizes: [{ size: "her", finished: { bust: bust + 0.1 + 0.2 } }],
      easeRanges: { bust: { least: 0.3, most: 0.3 } },
    });
    expect(found.bySize[0]!.people).toBe(
      [...bodyMeasures("women", "bust")].filter((cm) => cm === bust).length,
    );
  });

  it.each([1, 2, 3, 4, 5, 6])("agrees with asking everybody in every size (seed %i)", (seed) => {
    const question = invented(seed);
    const found = coverage(question);
    const wanted = askEverybody(question);
    expect(found.share! * found.judged).toBeCloseTo(wanted.fitted, 6);
    for (const { measurement, share, tooTight, tooLoose } of found.shutOut) {
      expect(share * found.judged).toBeCloseTo(wanted.without[measurement]! - wanted.fitted, 6);
      expect(tooTight + tooLoose).toBeCloseTo(share, 9);
    }
    for (const { measurement, gain, gainTighter, gainLooser } of found.widening) {
      const ranges = rangesOf(question, measurement);
      const larger = question.sizes.map(({ size, finished }) => ({
        size,
        finished: { ...finished, [measurement]: finished[measurement]! + 1 },
      }));
      const withRanges = (changed: (range: EaseRange) => EaseRange) =>
        askEverybody({
          ...question,
          easeRanges: { ...question.easeRanges, [measurement]: ranges.map(changed) },
        }).fitted;
      expect(gain * found.judged).toBeCloseTo(
        askEverybody({ ...question, sizes: larger }).fitted - wanted.fitted,
        6,
      );
      expect(gainTighter * found.judged).toBeCloseTo(
        withRanges(({ least, most }) => ({ least: least! - 1, most })) - wanted.fitted,
        6,
      );
      expect(gainLooser * found.judged).toBeCloseTo(
        withRanges(({ least, most }) => ({ least, most: most! + 1 })) - wanted.fitted,
        6,
      );
    }
    expect(found.several * found.judged).toBeCloseTo(wanted.several, 6);
    expect(peopleOf(found)).toEqual(wanted.takes);
  });
});

/** A measurement's range of ease in every size. */
function rangesOf({ sizes, easeRanges }: CoverageQuestion, measurement: Measurement): readonly EaseRange[] {
  const said = easeRanges[measurement]!;
  return "least" in said ? sizes.map(() => said) : said;
}

const peopleOf = (found: Coverage) => found.bySize.map(({ people }) => people);

/** A garment of three to six sizes in two to four measurements, the same for the same seed; odd seeds have a range for each size. */
function invented(seed: number): CoverageQuestion {
  let state = seed * 2654435761;
  const random = () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
  const population: Surveyed = random() < 0.5 ? "women" : "men";
  const chart = correctedChart(population);
  const all: readonly Measurement[] = ["bust", "hip", "upper arm", "back length", "shoulder width", "wrist"];
  const measurements = all.slice(0, 2 + Math.floor(random() * 4));
  const ease = Object.fromEntries(measurements.map((name) => [name, Math.round(random() * 20) / 2]));
  const sizes = garment(chart, ease).slice(0, 3 + Math.floor(random() * 4));
  const rangeOf = (name: Measurement): EaseRange => {
    const room = 1 + random() * 8;
    return { least: (ease[name] ?? 0) - room, most: (ease[name] ?? 0) + room };
  };
  return {
    population,
    sizes,
    easeRanges: Object.fromEntries(
      measurements.map((name) => [name, seed % 2 === 1 ? sizes.map(() => rangeOf(name)) : rangeOf(name)]),
    ),
  };
}

/** The same by the plainest means: every person in every size, all measurements. */
function askEverybody(question: CoverageQuestion) {
  const { population, sizes } = question;
  const names = Object.keys(question.easeRanges) as Measurement[];
  const ranges = Object.fromEntries(names.map((name) => [name, rangesOf(question, name)]));
  const bodies = names.map((name) => bodyMeasures(population, name));
  const without: Partial<Record<Measurement, number>> = {};
  const takes = sizes.map(() => 0);
  let fitted = 0;
  let several = 0;
  for (let person = 0; person < bodies[0]!.length; person++) {
    const misses = sizes.map(({ finished }, size) =>
      names.filter((name, index) => {
        const ease = finished[name]! - bodies[index]![person]!;
        const { least, most } = ranges[name]![size]!;
        return ease < least! - 1e-9 || ease > most! + 1e-9;
      }),
    );
    const fits = misses.flatMap((missed, size) => (missed.length === 0 ? [size] : []));
    if (fits.length > 0) {
      fitted++;
      const off = (size: number) => {
        const { least, most } = ranges.bust![size]!;
        return Math.abs(sizes[size]!.finished.bust! - bodies[0]![person]! - (least! + most!) / 2);
      };
      const taken = fits.reduce((best, size) => (off(size) < off(best) - 1e-9 ? size : best));
      takes[taken]!++;
    }
    let explained = fits.length > 0;
    for (const name of names) {
      if (misses.some((missed) => missed.every((other) => other === name))) {
        without[name] = (without[name] ?? 0) + 1;
        explained = true;
      }
    }
    if (!explained) several++;
  }
  return { fitted, without, takes, several };
}
