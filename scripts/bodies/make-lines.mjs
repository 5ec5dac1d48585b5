// Derives the straight lines of the corrected charts into src/bodies/data/lines.ts: every measurement of the survey on
// the bust or chest, with the spread about the line and the ends of the survey.
//   node scripts/bodies/make-lines.mjs      (after make-surveys and make-arm-relation, whose modules it reads)
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { line } from "./make-arm-relation.mjs";
import { writeModule } from "./tables.mjs";

const root = fileURLToPath(new URL("../..", import.meta.url));

/** The room's own list of measurements, so that there is no second one. */
async function loadMeasures() {
  const { outputFiles } = await build({
    absWorkingDir: root,
    entryPoints: ["src/bodies/body-measures.ts"],
    bundle: true,
    format: "esm",
    write: false,
  });
  const code = Buffer.from(outputFiles[0]?.contents ?? []).toString("base64");
  return /** @type {typeof import("../../src/bodies/body-measures.ts")} */ (
    await import(`data:text/javascript;base64,${code}`)
  );
}

const { BODY_ANSWERS, bodyMeasures } = await loadMeasures();
/** @param {number} value  @param {number} places */
const fixed = (value, places) => String(Number(value.toFixed(places)));
const entries = /** @type {const} */ (["women", "men"]).map((population) => {
  const bust = [...bodyMeasures(population, "bust")];
  const rows = BODY_ANSWERS.filter(({ measurement }) => measurement !== "bust").map(({ measurement }) => {
    const [r, slope, base, sd] = line(bust, [...bodyMeasures(population, measurement)]);
    return `      ["${measurement}", ${fixed(slope, 5)}, ${fixed(base, 3)}, ${fixed(sd, 2)}, ${fixed(r, 3)}],\n`;
  });
  return `  ${population}: {
    people: ${bust.length},
    bust: [${fixed(Math.min(...bust), 1)}, ${fixed(Math.max(...bust), 1)}],
    lines: [
${rows.join("")}    ],
  },\n`;
});
writeModule(
  "lines.ts",
  "make-lines.mjs",
  `import type { BodyLines } from "../corrected.ts";
import type { Surveyed } from "../survey.ts";

export const BODY_LINES: Readonly<Record<Surveyed, BodyLines>> = {
${entries.join("")}};
`,
);
