// Derives how much a flexed upper arm is above a relaxed one, and what the health survey says of large bodies, into
// src/bodies/data/arm-relation.ts.
//   node scripts/bodies/make-arm-relation.mjs
// No survey measured both arms. The health survey has relaxed arms, weight and stature; the Army survey flexed arms, weight
// and stature. So the relaxed arm is fitted on weight, weight squared and stature in the one (people of 40 to 110 kg, where
// the Army's weights lie) and expected for every person of the other; the mean of flexed minus expected is the relation.
import { fileURLToPath } from "node:url";
import { numbersOf, readTable, writeModule } from "./tables.mjs";

const HEAVIEST = 110;
const LIGHTEST = 40;

/** Half-width, kg, of the window of weights in which relaxed arms are looked up for large bodies. */
const WINDOW = 4;

/** Busts, inches, at and past the end of the Army survey, for which the health survey is asked by weight. */
const LARGE_BUSTS = [49, 53, 57, 61];

/**
 * Least squares by the normal equations, solved by elimination with pivoting.
 * @param {number[][]} rows  @param {number[]} wanted  @returns {number[]} one coefficient a column
 */
export function leastSquares(rows, wanted) {
  const width = rows[0]?.length ?? 0;
  const system = Array.from({ length: width }, (_, i) => [
    ...Array.from({ length: width }, (_, j) => sum(rows.map((row) => at(row, i) * at(row, j)))),
    sum(rows.map((row, index) => at(row, i) * at(wanted, index))),
  ]);
  for (let column = 0; column < width; column++) {
    const pivot = system
      .slice(column)
      .reduce(
        (best, row, index) =>
          Math.abs(at(row, column)) > Math.abs(at(/** @type {number[]} */ (system[best]), column))
            ? column + index
            : best,
        column,
      );
    const lifted = /** @type {number[]} */ (system[pivot]);
    system[pivot] = /** @type {number[]} */ (system[column]);
    system[column] = lifted;
    system.forEach((row, index) => {
      if (index === column) return;
      const factor = at(row, column) / at(lifted, column);
      for (let j = column; j <= width; j++) row[j] = at(row, j) - factor * at(lifted, j);
    });
  }
  return system.map((row, index) => at(row, width) / at(row, index));
}

/** @param {readonly number[]} values */
export const sum = (values) => values.reduce((all, value) => all + value, 0);
/** @param {readonly number[]} values */
export const mean = (values) => sum(values) / values.length;
/** @param {readonly number[]} values */
const spread = (values) => Math.sqrt(sum(values.map((value) => (value - mean(values)) ** 2)) / values.length);
/** @param {readonly number[]} values */
const median = (values) => {
  const sorted = [...values].sort((a, b) => a - b);
  const half = sorted.length / 2;
  return (at(sorted, Math.ceil(half) - 1) + at(sorted, Math.floor(half))) / 2;
};
/** @param {readonly number[]} values  @param {number} index */
const at = (values, index) => {
  const value = values[index];
  if (value === undefined) throw new Error(`nothing at ${index}`);
  return value;
};

/** Weights are centred and scaled so that the squares stay tame. @param {number} kg  @param {number} cm */
const terms = (kg, cm) => [1, (kg - 75) / 10, ((kg - 75) / 10) ** 2, (cm - 165) / 10];

/** @param {"women" | "men"} sex */
export function armRelation(sex) {
  const health = readTable(`health-${sex}.csv`);
  const army = readTable(`army-${sex}.csv`);
  const [kg, cm, arm, hip] = ["weight_kg", "stature_cm", "upper_arm_circ_relaxed_cm", "hip_circ_cm"].map(
    (column) => numbersOf(health, column),
  );
  if (!kg || !cm || !arm || !hip) throw new Error("a column is missing");
  const fitted = kg.flatMap((weight, index) => (weight > LIGHTEST && weight < HEAVIEST ? [index] : []));
  const model = leastSquares(
    fitted.map((index) => terms(at(kg, index), at(cm, index))),
    fitted.map((index) => at(arm, index)),
  );
  const bust = numbersOf(army, "chest_or_bust_circ_mm").map((mm) => mm / 10);
  const armyKg = numbersOf(army, "weight_kg");
  const armyCm = numbersOf(army, "stature_mm").map((mm) => mm / 10);
  const flexed = numbersOf(army, "upper_arm_circ_flexed_mm").map((mm) => mm / 10);
  const above = flexed.map(
    (girth, index) =>
      girth - sum(terms(at(armyKg, index), at(armyCm, index)).map((term, i) => term * at(model, i))),
  );
  const [, weightSlope, weightBase] = line(bust, armyKg);
  const [r, slope, base, sd] = line(hip, arm);
  const largestHip = Math.max(...numbersOf(army, "hip_buttock_circ_mm")) / 10;
  return {
    flexedAbove: mean(above),
    sd: spread(above),
    fittedOn: fitted.length,
    byHip: { slope, base, sd, r },
    hipsBeyond: hip.filter((girth) => girth > largestHip).length / hip.length,
    largestHip,
    largeArms: LARGE_BUSTS.map((inches) => {
      const weight = weightBase + weightSlope * inches * 2.54;
      const near = kg.flatMap((value, index) => (Math.abs(value - weight) < WINDOW ? [at(arm, index)] : []));
      return { bust: inches * 2.54, weight, people: near.length, arm: median(near) };
    }),
  };
}

/**
 * The least-squares line of y on x. @param {readonly number[]} x  @param {readonly number[]} y
 * @returns {[r: number, slope: number, base: number, sd: number]} sd about the line, n − 2 degrees of freedom
 */
export function line(x, y) {
  const [mx, my] = [mean(x), mean(y)];
  const sxx = sum(x.map((value) => (value - mx) ** 2));
  const syy = sum(y.map((value) => (value - my) ** 2));
  const sxy = sum(x.map((value, index) => (value - mx) * (at(y, index) - my)));
  const slope = sxy / sxx;
  return [
    sxy / Math.sqrt(sxx * syy),
    slope,
    my - slope * mx,
    Math.sqrt(Math.max(0, syy - slope * sxy) / (x.length - 2)),
  ];
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  /** @param {number} value  @param {number} places */
  const fixed = (value, places) => String(Number(value.toFixed(places)));
  const entries = /** @type {const} */ (["women", "men"]).map((sex) => {
    const { flexedAbove, sd, fittedOn, byHip, hipsBeyond, largestHip, largeArms } = armRelation(sex);
    return `  ${sex}: {
    flexedAbove: ${fixed(flexedAbove, 2)},
    sd: ${fixed(sd, 2)},
    fittedOn: ${fittedOn},
    byHip: { slope: ${fixed(byHip.slope, 4)}, base: ${fixed(byHip.base, 3)}, sd: ${fixed(byHip.sd, 2)}, r: ${fixed(byHip.r, 3)} },
    largestHip: ${largestHip},
    hipsBeyond: ${fixed(hipsBeyond, 4)},
    largeArms: [
${largeArms.map(({ bust, weight, people, arm }) => `      { bust: ${fixed(bust, 1)}, weight: ${fixed(weight, 1)}, people: ${people}, arm: ${fixed(arm, 1)} },\n`).join("")}    ],
  },\n`;
  });
  writeModule(
    "arm-relation.ts",
    "make-arm-relation.mjs",
    `import type { ArmRelation } from "../body-measures.ts";
import type { Surveyed } from "../survey.ts";

export const ARM_RELATION: Readonly<Record<Surveyed, ArmRelation>> = {
${entries.join("")}};
`,
  );
}
