import { describe, expect, it } from "vitest";
import type { MadeRow, Making } from "../working/index.ts";
import { apart, disagreements } from "./agreement.ts";
import { estimateYarn } from "./estimate.ts";
import type { YarnJob } from "./job.ts";
import { stitchLength, yarnThickness } from "./stitch-length.ts";

const row = (count: number, kind: string, rows = 1, more: Partial<MadeRow> = {}): MadeRow => ({
  at: 0,
  section: "Body",
  rows,
  untilCm: null,
  stitches: count,
  made: [{ kind, colour: null, count }],
  begins: false,
  ...more,
});

const making = (rows: readonly MadeRow[], times = 1, name = "Back"): Making => ({
  name,
  times: [times],
  made: [{ chains: [{ kind: "ch", colour: null, count: 1 }], rows }],
});

/** Plain sc at 16 sts and 18 rows in 10 cm, 2 m in a gram; the swatch weighs what geometry says, times `weight`. */
function job(rows: readonly MadeRow[], weight = 1, more: Partial<YarnJob> = {}): YarnJob {
  const [stitchCm, rowCm] = [10 / 16, 10 / 18];
  const sc = stitchLength("sc", { width: stitchCm, scHeight: rowCm, yarn: yarnThickness(2) }) ?? 0;
  const swatch = {
    stitches: 32,
    rows: 36,
    grams: (32 * 36 * sc * weight) / 200,
    minutes: 58,
    madeOf: new Map([["sc", 32 * 36]]),
  };
  return {
    sizes: 1,
    makings: [making(rows)],
    fabrics: [{ name: "plain", stitchCm, rowCm, yarn: "main", swatches: [swatch] }],
    yarns: [{ name: "main", yarnClass: 4, metres: 100, grams: 50, price: { amount: 5, currency: "EUR" } }],
    fabricOf: () => 0,
    yarnOf: (colour) => (colour === "B" ? 1 : 0),
    tailCm: 15,
    seamsCm: null,
    safety: 0.1,
    finishing: null,
    ...more,
  };
}

describe("yarn by two ways", () => {
  it("agrees where the piece is made as the swatch is", () => {
    const estimate = estimateYarn(job([row(80, "sc", 90)], 1.1));
    const [ways] = estimate.yarns[0]?.ways ?? [];
    expect(apart(ways as NonNullable<typeof ways>)).toBeCloseTo(0, 1);
    expect(disagreements(estimate)).toEqual([]);
    expect(estimate.rough).toBe(false);
    // 80 x 90 stitches at 16 and 18 in 10 cm are 50 x 50 cm.
    expect(estimate.pieces[0]?.areaCm2[0]).toBeCloseTo(2500, 6);
  });

  it("by area is the swatch's weight for its area, whatever the stitches are", () => {
    const { fabrics, ...rest } = job([row(80, "sc", 90)], 1.3);
    const grams = fabrics[0]?.swatches[0]?.grams ?? 0;
    const swatchArea = (32 * 36 * 100) / (16 * 18);
    const [ways] = estimateYarn({ ...rest, fabrics }).yarns[0]?.ways ?? [];
    // Trade handbook, 4.1 [S74]: grams = area x swatch grams / swatch area; metres = grams x metres for a gram.
    expect(ways?.byArea).toBeCloseTo(((2500 * grams) / swatchArea) * 2, 6);
  });

  it("says where the two are more than a tenth apart", () => {
    // The rows are of dc, the swatch and its gauge of sc: a mistake in one of them.
    const found = disagreements(estimateYarn(job([row(80, "dc", 90)])));
    expect(found.map(({ piece }) => piece)).toEqual([null, "Back"]);
    const [first] = found[0]?.cases ?? [];
    expect((first?.byStitch ?? 0) / (first?.byArea ?? 1)).toBeGreaterThan(1.1);
  });

  it("weighs a swatch against its stitches by geometry", () => {
    const [weight] = estimateYarn(job([row(80, "sc", 90)], 0.6)).lengths.weights;
    expect((weight?.grams ?? 0) / (weight?.expected ?? 1)).toBeCloseTo(0.6, 6);
  });
});

describe("what comes on top", () => {
  it("is two ends for each beginning, and for each ball joined", () => {
    const one = estimateYarn(job([row(10, "sc", 4)])).yarns[0];
    expect(one?.endsMetres[0]).toBeCloseTo(0.3, 9);
    const rejoined = estimateYarn(job([row(10, "sc", 4), row(10, "sc", 4, { begins: true })])).yarns[0];
    expect(rejoined?.endsMetres[0]).toBeCloseTo(0.6, 9);
    const large = estimateYarn(job([row(80, "sc", 90)])).yarns[0];
    const balls = Math.floor((large?.ways[0]?.byStitch ?? 0) / 100);
    expect(balls).toBeGreaterThan(0);
    expect(large?.endsMetres[0]).toBeCloseTo(0.3 * (1 + balls), 9);
  });

  it("is three times the seam", () => {
    // Trade handbook, 4.4: about 2.5-3 times the seam's length. Common practice, no source.
    expect(estimateYarn(job([row(10, "sc")], 1, { seamsCm: [200] })).yarns[0]?.seamMetres).toEqual([6]);
  });

  it("counts pieces that are made twice, twice", () => {
    const once = job([row(40, "sc", 30)]);
    const twice = { ...once, makings: [making([row(40, "sc", 30)], 2)] };
    const metres = (one: YarnJob): number => estimateYarn(one).yarns[0]?.ways[0]?.byStitch ?? 0;
    expect(metres(twice)).toBeCloseTo(2 * metres(once), 9);
  });
});

describe("colours", () => {
  const stripe = (colour: string, rows: number): MadeRow => ({
    ...row(40, "sc", rows),
    made: [{ kind: "sc", colour, count: 40 }],
  });
  const two = (rows: readonly MadeRow[]): YarnJob => {
    const one = job(rows);
    return { ...one, yarns: [...one.yarns, { ...one.yarns[0], name: "B" } as (typeof one.yarns)[number]] };
  };

  it("are reckoned apart, and rounded up apart", () => {
    const [a, b] = estimateYarn(two([stripe("A", 20), stripe("B", 10)])).yarns;
    expect((a?.ways[0]?.byStitch ?? 0) / (b?.ways[0]?.byStitch ?? 1)).toBeGreaterThan(1.9);
    expect(a?.buy[0]?.balls).toBeGreaterThanOrEqual(1);
    expect(b?.buy[0]?.balls).toBe(1);
  });

  it("are carried up over two rows and cut for more", () => {
    const [a] = estimateYarn(two([stripe("A", 2), stripe("B", 2), stripe("A", 2)])).yarns;
    // Trade handbook, 4.4: a carried yarn takes the rows' height times 1.3.
    expect(a?.endsMetres[0]).toBeCloseTo(0.3 + (1.3 * 2 * 10) / 18 / 100, 9);
    const [cut] = estimateYarn(two([stripe("A", 2), stripe("B", 8), stripe("A", 2)])).yarns;
    expect(cut?.endsMetres[0]).toBeCloseTo(0.6, 9);
  });
});

describe("what is not known", () => {
  it("is not made up", () => {
    const estimate = estimateYarn(job([row(40, "sc", 10), { ...row(40, "sc"), stitches: null, made: [] }]));
    expect(estimate.yarns[0]?.metres).toEqual([null]);
    expect(estimate.yarns[0]?.buy[0]?.balls).toBeNull();
    expect(estimate.hours).toEqual([null]);
    expect(estimate.unknown).toEqual([{ piece: "Back", section: "Body", size: 0 }]);
  });

  it("takes a stitch of no known kind for the fabric's mean", () => {
    const known = estimateYarn(job([row(40, "sc", 20)])).yarns[0]?.ways[0]?.byStitch ?? 0;
    const half = estimateYarn(job([row(40, "sc", 10), row(40, "?", 10)])).yarns[0]?.ways[0]?.byStitch ?? 0;
    expect(half).toBeCloseTo(known, 6);
  });

  it("works rows to a length by the row gauge", () => {
    const told = { ...row(40, "sc", 1), rows: null, untilCm: 20 };
    // 36 rows are 20 cm; 4 of them stand already.
    const byLength = estimateYarn(job([row(40, "sc", 4), told])).yarns[0]?.ways[0]?.byStitch ?? 0;
    const byRows = estimateYarn(job([row(40, "sc", 36)])).yarns[0]?.ways[0]?.byStitch ?? 0;
    expect(byLength).toBeCloseTo(byRows, 6);
  });

  it("is marked where no swatch was weighed or timed", () => {
    const bare = job([row(40, "sc", 10)]);
    const estimate = estimateYarn({
      ...bare,
      fabrics: bare.fabrics.map((fabric) => ({ ...fabric, swatches: [] })),
    });
    expect([estimate.rough, estimate.roughHours]).toEqual([true, true]);
    expect(estimate.yarns[0]?.ways[0]?.byArea).toBeNull();
    // 400 stitches at 20 a minute and a quarter more, and two ends.
    expect(estimate.hours[0]).toBeCloseTo(((401 / 20) * 1.25 + 4) / 60, 6);
  });
});

describe("hours", () => {
  it("are the swatch's own, stitch for stitch", () => {
    const { hours } = estimateYarn(job([row(80, "sc", 90)], 1, { finishing: 60 }));
    // 7,201 stitches and chains at 58 minutes for 1,152, and an hour of finishing.
    expect(hours[0]).toBeCloseTo((7201 * 58) / 1152 / 60 + 1, 6);
  });
});
