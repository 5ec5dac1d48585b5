// For tests and timing only: invented garments of many quantities, drawn from a seed.
import type { GradingProblem, GradingRule, Quantity } from "./problem.ts";

/** Numbers from 0 up to 1, the same for the same seed. */
export function numbersFrom(seed: number): () => number {
  let state = seed * 7919 + 1;
  return () => {
    state = (Math.imul(state, 1103515245) + 12345) & 0x7fffffff;
    return state / 0x7fffffff;
  };
}

/**
 * Pairs of pieces that are sewn together: the second of each pair has the stitches of the first.
 *
 * @param quantities  an even number
 */
export function pairedGarment(seed: number, sizes: number, quantities: number): GradingProblem {
  const next = numbersFrom(seed);
  const run = Array.from({ length: sizes }, (_, s) => `size ${s + 1}`);
  const made: Quantity[] = [];
  const rules: GradingRule[] = [];
  for (let q = 0; q < quantities; q += 2) {
    const unit = 0.3 + 0.6 * next();
    const [base, step] = [20 + 60 * next(), 1 + 5 * next()];
    const targets = run.map((_, s) => base + step * s + 2 * next() - 1);
    const [one, two] = [`piece ${q}`, `piece ${q + 1}`];
    made.push({ id: one, unit, targets });
    made.push({ id: two, unit, targets: targets.map((target) => target + 3 * next() - 1.5) });
    const multiple = [1, 2, 4, 6, 8][Math.floor(5 * next())]!;
    rules.push(
      { kind: "multiple", of: one, multiple, remainder: 0, words: `${one} is a multiple of ${multiple}` },
      { kind: "multiple", of: two, multiple: 2, remainder: 0, words: `${two} is even` },
      { kind: "equal", of: two, as: one, words: `${two} is sewn to ${one}` },
      { kind: "order", of: one, direction: "up", words: `${one} never falls` },
      { kind: "order", of: two, direction: "up", words: `${two} never falls` },
    );
  }
  return { sizes: run, quantities: made, rules };
}

/** Pieces tied in a row: each comes to the sum of the next two and a number, which seldom suits their targets. */
export function knottedGarment(
  seed: number,
  sizes: number,
  quantities: number,
  within: number,
): GradingProblem {
  const next = numbersFrom(seed);
  const run = Array.from({ length: sizes }, (_, s) => `size ${s + 1}`);
  const made: Quantity[] = [];
  const rules: GradingRule[] = [];
  for (let q = 0; q < quantities; q++) {
    const unit = 0.3 + 0.6 * next();
    const [base, step] = [20 + 60 * next(), 1 + 5 * next()];
    made.push({ id: `piece ${q}`, unit, targets: run.map((_, s) => base + step * s + 2 * next() - 1) });
    const multiple = [1, 2, 2, 4][Math.floor(4 * next())]!;
    rules.push(
      {
        kind: "multiple",
        of: `piece ${q}`,
        multiple,
        remainder: 0,
        words: `piece ${q} is a multiple of ${multiple}`,
      },
      { kind: "order", of: `piece ${q}`, direction: "up", words: `piece ${q} never falls` },
    );
  }
  for (let q = 0; q + 2 < quantities; q += 2) {
    const wanted = (piece: number) => made[piece]!.targets[sizes >> 1]! / made[piece]!.unit;
    rules.push({
      kind: "sum",
      terms: [
        { of: `piece ${q}`, times: 1 },
        { of: `piece ${q + 1}`, times: -1 },
        { of: `piece ${q + 2}`, times: -1 },
      ],
      makes: 4 * Math.round((wanted(q) - wanted(q + 1) - wanted(q + 2)) / 4),
      measured: "counts",
      within,
      words: `piece ${q} is the next two together`,
    });
  }
  return { sizes: run, quantities: made, rules };
}

/**
 * A raglan cardigan from the neck down, its body and sleeves increasing by two schedules over the same rounds: eight ties between
 * three counts and more, and two bands that are picked up by a ratio.
 *
 * @param sizes  nine have the names and measures of a garment from XS to 5X
 */
export function raglanGarment(seed: number, sizes = 9): GradingProblem {
  const next = numbersFrom(seed);
  const wobble = () => (next() - 0.5) * 0.8;
  const run = Array.from({ length: sizes }, (_, s) => `size ${s + 1}`);
  const [stitch, row] = [0.62 + 0.1 * next(), 0.8 + 0.15 * next()];
  const along = (from: number, step: number, bend = 0) =>
    run.map((_, s) => from + step * s + bend * s * s + wobble());
  const own = {
    "back neck": along(15, 0.4),
    "front neck": along(5, 0.2),
    "sleeve neck": along(6, 0.3),
    back: along(42, 4.6),
    underarm: along(4, 0.6),
    "button band": run.map(() => 3),
  };
  // Whoever plans a garment plans it so that its parts add up; the stitches then seldom do.
  const added = (terms: readonly (readonly [keyof typeof own, number])[]) =>
    run.map((_, s) => terms.reduce((cm, [name, times]) => cm + times * own[name][s]!, 0));
  const measured: readonly (readonly [id: string, unit: number, targets: readonly number[]])[] = [
    ...Object.entries(own).map(([name, targets]) => [name, stitch, targets] as const),
    [
      "front",
      stitch,
      added([
        ["back", 0.5],
        ["button band", -0.5],
      ]),
    ],
    [
      "body",
      stitch,
      added([
        ["back", 2],
        ["button band", -1],
        ["underarm", 2],
      ]),
    ],
    [
      "neckband",
      stitch,
      added([
        ["back neck", 1],
        ["front neck", 2],
        ["sleeve neck", 2],
      ]),
    ],
    ["yoke rounds", row, along(19, 0.9)],
    ["upper sleeve", stitch, along(31, 2.4, 0.1)],
    ["cuff", stitch, along(20, 0.8)],
    ["front rows", row, along(52, 1.1)],
    ["band", stitch, along(53, 1.1)],
  ];
  const counted = ["body increases", "sleeve increases", "sleeve plain rounds", "sleeve decreases"];
  const quantities: Quantity[] = [
    ...measured.map(([id, unit, targets]) => ({ id, unit, targets })),
    // Counts that make no measure stay where they are, for next to nothing.
    ...counted.map((id) => ({ id, unit: 1, targets: run.map(() => 12), weight: 1e-6, smoothness: 0 })),
  ];
  const sum = (
    words: string,
    makes: number,
    ...terms: readonly (readonly [string, number])[]
  ): GradingRule => ({
    kind: "sum",
    terms: terms.map(([of, times]) => ({ of, times })),
    makes,
    measured: "counts",
    words,
  });
  const ratio = (of: string, to: string, least: number, most: number): GradingRule => ({
    kind: "ratio",
    of,
    to,
    measured: "counts",
    least,
    most,
    words: `${of} is picked up along ${to}`,
  });
  const up = measured.map(
    ([of]): GradingRule => ({ kind: "order", of, direction: "up", words: `${of} never falls` }),
  );
  const multiples: readonly (readonly [string, number, number])[] = [
    ["yoke rounds", 2, 0],
    ["front rows", 2, 0],
    ["band", 4, 2],
    ["cuff", 2, 0],
  ];
  return {
    sizes: run,
    quantities,
    rules: [
      sum(
        "back is back neck plus twice the body increases",
        0,
        ["back", 1],
        ["back neck", -1],
        ["body increases", -2],
      ),
      sum(
        "front is front neck plus the body increases",
        0,
        ["front", 1],
        ["front neck", -1],
        ["body increases", -1],
      ),
      sum(
        "body is back, both fronts and both underarms",
        0,
        ["body", 1],
        ["back", -1],
        ["front", -2],
        ["underarm", -2],
      ),
      sum(
        "upper sleeve is sleeve neck, its increases and the underarm",
        0,
        ["upper sleeve", 1],
        ["sleeve neck", -1],
        ["sleeve increases", -2],
        ["underarm", -1],
      ),
      sum(
        "sleeves increase in every round but the plain ones",
        0,
        ["yoke rounds", 1],
        ["sleeve increases", -1],
        ["sleeve plain rounds", -1],
      ),
      sum(
        "cuff is the upper sleeve less its decreases",
        0,
        ["cuff", 1],
        ["upper sleeve", -1],
        ["sleeve decreases", 2],
      ),
      {
        ...sum(
          "a front and half the button band are half of the back",
          0,
          ["front", 1],
          ["button band", 0.5],
          ["back", -0.5],
        ),
        within: 1,
      } as GradingRule,
      sum(
        "the neck edge is back, fronts and sleeves",
        4,
        ["neckband", 1],
        ["back neck", -1],
        ["front neck", -2],
        ["sleeve neck", -2],
      ),
      ratio("band", "front rows", 1.2, 1.25),
      ratio("neckband", "back neck", 2, 3.5),
      ...up,
      ...multiples.map(
        ([of, multiple, remainder]): GradingRule => ({
          kind: "multiple",
          of,
          multiple,
          remainder,
          words: `${of} is a multiple of ${multiple} plus ${remainder}`,
        }),
      ),
    ],
  };
}
