// What was proved is kept, so that the same text again costs a look-up; "a new garment" tells what it costs to prove.
// How fast the engine is, beside JSON.parse on as many bytes in the same run. Says times and judges none.
//   npm run bench -- --rounds N      --prove: also ask the solver for a proof that takes it minutes
import { readFileSync } from "node:fs";
import { cpus } from "node:os";
import { proveDesign } from "../../src/design/index.ts";
import { inspectTree, readPattern } from "../../src/notation/index.ts";
import { workPattern } from "../../src/working/index.ts";
import { drawTable } from "../measure/tables.ts";
import { editRight, editWrong, type Garment, makeGarment } from "./garment.ts";
import { timeGrading } from "./grading.ts";
import { timeInTurn } from "./timing.ts";

const at = process.argv.indexOf("--rounds");
const rounds = at < 0 ? 9 : Number(process.argv[at + 1]);
if (!Number.isInteger(rounds) || rounds < 1) {
  process.stderr.write("--rounds needs a whole number\n");
  process.exit(2);
}
const WARM_UP = 3;

/** A garment of its own for every job and round, so that nothing kept from another helps. */
const garments = (seed: number, wider = 1): readonly Garment[] =>
  Array.from({ length: rounds + WARM_UP }, (_, round) => makeGarment(seed + round, wider));
const toRead = garments(1000);
const toWork = garments(2000);
const fresh = garments(3000);
const wide = garments(4000, 4);
const same = makeGarment(1);
const json = asJson(same.text);
const trees = toWork.map(({ text }) => readPattern(text));
const textOf = (of: readonly Garment[], round: number): string => (of[round] as Garment).text;

/** The garment's lines as a JSON document of as many bytes: a list of objects with a label and words. */
function asJson(text: string): string {
  const rows = text.split("\n").map((line) => ({ label: line.slice(0, 11), words: line.slice(11) }));
  let written = JSON.stringify(rows);
  while (written.length > text.length) {
    rows.pop();
    written = JSON.stringify(rows);
  }
  return written + " ".repeat(text.length - written.length);
}

/** The pullover in nine sizes, with its table of plan and counts. */
const design = readFileSync(new URL("../../samples/pullover-no-9.md", import.meta.url), "utf8");
const PLAN = "rib depth:              5 cm";
if (!design.includes(PLAN)) throw new Error("the sample no longer says its rib depth so");
/** The design with one number of its plan changed, another in every round. */
const designChanged = (round: number): string =>
  design.replace(PLAN, PLAN.replace("5 cm", `5.${String(round + 1).padStart(3, "0")} cm`));
/** The design with one printed number of a row changed. */
const rowChanged = (round: number): string =>
  design.replace("Rows 7-9: Rep Rows 5 and 6", `Rows 7-${10 + round}: Rep Rows 5 and 6`);

const JOBS: readonly { name: string; goal: string; run: (round: number) => unknown }[] = [
  { name: "JSON.parse on as many bytes", goal: "", run: () => JSON.parse(json) },
  { name: "text → tree, a new garment", goal: "", run: (round) => readPattern(textOf(toRead, round)) },
  {
    name: "tree → findings, a new garment",
    goal: "",
    run: (round) => {
      const tree = trees[round] ?? readPattern(textOf(toWork, round));
      return [inspectTree(tree), workPattern(tree)];
    },
  },
  { name: "text → findings, a new garment", goal: "", run: (round) => proveDesign(textOf(fresh, round)) },
  {
    name: "text → findings, four times the stitches",
    goal: "",
    run: (round) => proveDesign(textOf(wide, round)),
  },
  { name: "text → findings, the same text again", goal: "10 ms", run: () => proveDesign(same.text) },
  {
    name: "text → findings, after a one-line edit",
    goal: "2 ms",
    run: (round) => proveDesign(editRight(same, round + 1)),
  },
  {
    name: "the same, where the edit makes a count wrong",
    goal: "",
    run: (round) => proveDesign(editWrong(same, round + 1)),
  },
  { name: "proveDesign, the sample from text", goal: "25 ms", run: () => proveDesign(design) },
  {
    name: "proveDesign, one number of its plan changed",
    goal: "5 ms",
    run: (round) => proveDesign(designChanged(round)),
  },
  {
    name: "proveDesign, one number of a row changed",
    goal: "5 ms",
    run: (round) => proveDesign(rowChanged(round)),
  },
];

const medians = timeInTurn(
  JOBS.map(({ run }) => run),
  rounds,
  WARM_UP,
);
const [reference = Number.NaN, reading = Number.NaN, , total = Number.NaN, four = Number.NaN] = medians;
const bytes = Buffer.byteLength(same.text);
const megabytes = (ms: number): string => `${(bytes / 1e6 / (ms / 1000)).toFixed(1)} MB/s`;
const proof = proveDesign(same.text);
const serious = proof.findings.filter(({ severity }) => severity !== "note").length;

process.stdout.write(
  [
    `Node ${process.version}, ${cpus()[0]?.model ?? "unknown processor"}; medians of ${rounds} rounds after ${WARM_UP}.`,
    `The garment: ${same.stitches.length} sizes of ${Math.min(...same.stitches)} to ${Math.max(...same.stitches)} stitches (middle ${same.stitches[4]}), ` +
      `${same.distinctLines} lines in words of their own, ${bytes} bytes; ${serious} errors and warnings (none is right).`,
    "",
    drawTable(
      ["job", "median", "× JSON.parse", "goal"],
      JOBS.map(({ name, goal }, job) => {
        const ms = medians[job] as number;
        return [name, `${ms.toFixed(2)} ms`, (ms / reference).toFixed(1), goal];
      }),
    ),
    "",
    drawTable(
      ["ratio", "is", "goal"],
      [
        ["four times the stitches : once", (four / total).toFixed(2), "1.3"],
        ["reader", megabytes(reading), ""],
        ["JSON.parse", megabytes(reference), ""],
        ["reader : JSON.parse", (reference / reading).toFixed(4), ""],
      ],
    ),
    "",
    drawTable(
      ["choosing counts", "took", "goal", "comes to"],
      (await timeGrading(rounds, process.argv.includes("--prove"))).map(({ job, took, goal, says }) => [
        job,
        took,
        goal,
        says,
      ]),
    ),
    "",
  ].join("\n"),
);
