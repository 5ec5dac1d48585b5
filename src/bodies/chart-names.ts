import type { Chart } from "./chart.ts";
import { correctedChart } from "./corrected.ts";
import { publishedChart } from "./published.ts";
import type { Population } from "./rows.ts";

const POPULATIONS: Readonly<Record<string, Population>> = {
  women: "women",
  woman: "women",
  men: "men",
  man: "men",
  youth: "youth",
  child: "child",
  children: "child",
  baby: "baby",
  babies: "baby",
};

/** The names under which a design may ask for a chart that comes with the house. */
export const CHART_NAMES: readonly string[] = [
  "women, published",
  "women, corrected",
  "men, published",
  "men, corrected",
  "youth, published",
  "children, published",
  "babies, published",
];

/**
 * The chart a design names, as in "women, corrected"; without a second word the published one.
 *
 * @returns  undefined where no chart of that name comes with the house: children were not measured
 */
export function chartNamed(words: string): Chart | undefined {
  const [whom = "", which = "published", ...more] = words
    .toLowerCase()
    .split(/[\s,]+/)
    .filter(Boolean);
  const population = Object.hasOwn(POPULATIONS, whom) ? POPULATIONS[whom] : undefined;
  if (population === undefined || more.length > 0) return undefined;
  if (which === "published") return publishedChart(population);
  return which === "corrected" && (population === "women" || population === "men")
    ? correctedChart(population)
    : undefined;
}
