// For tests only: invented garments of many quantities, drawn from a seed.
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
