import { stat, writeFile } from "node:fs/promises";
import { counted } from "../base/index.ts";
import {
  beginDesign,
  CONSTRUCTION_WORDS,
  CONSTRUCTIONS,
  choose,
  fabricsFor,
  type Wishes,
} from "../constructions/index.ts";
import { setFindings, WIDEST_PROSE } from "./findings.ts";
import { loadSolver } from "./load-solver.ts";
import { paintFor } from "./paint.ts";
import { countFindings } from "./report.ts";
import type { BeginRequest } from "./request.ts";
import { columnsOf, type ExitCode, type Terminal } from "./terminal.ts";
import { viewOf } from "./view.ts";
import { wrap } from "./wrap.ts";

/** Writes a first draft of a design into a new file, from options or from answers to questions. */
export async function begin(request: BeginRequest, terminal: Terminal): Promise<ExitCode> {
  const refuse = (...why: readonly string[]): ExitCode => {
    for (const one of why) terminal.err(`loopwright: ${one}\n`);
    return 2;
  };
  const wishes = request.wishes ?? (await askAll(terminal));
  if (wishes === null)
    return refuse(
      `Say what to begin with: loopwright begin ${CONSTRUCTIONS.join("|")} --out my-design.md. More: loopwright begin --help`,
    );
  const chosen = choose(wishes);
  if ("problems" in chosen) return refuse(...chosen.problems);
  const file = request.out ?? fileNameOf(chosen.choices.title);
  if (await exists(file)) return refuse(`${file} is there already. Name another file: --out ANOTHER.md`);
  const begun = await beginDesign(chosen.choices, await loadSolver());
  const width = columnsOf(terminal);
  const paint = paintFor(terminal.colour);
  if (begun.is === "not wearable")
    return refuse("these choices do not come out, so nothing was written.", ...begun.why);
  if (begun.is === "not graded") {
    terminal.err("loopwright: no counts fit these choices, so nothing was written.\n");
    const view = viewOf({ ...begun.why.before, findings: begun.why.findings });
    terminal.err(`${setFindings(view, width, paint).join("\n")}\n`);
    return 1;
  }
  try {
    await writeFile(file, begun.text, { flag: "wx" });
  } catch (fault) {
    return refuse(`${file} cannot be written: ${fault instanceof Error ? fault.message : fault}`);
  }
  const { errors, words } = countFindings(begun.proof.findings);
  const { instructionLines, read, onTrust } = begun.proof.coverage;
  const whole = errors === 0 && onTrust === 0 && read === instructionLines;
  const lines = [
    `${file} is written in ${counted(chosen.choices.sizes.length, "size")}. ${whole ? "Every row is proved in every size." : `${read} of ${counted(instructionLines, "instruction line")} read, ${onTrust} on trust.`} ${words}.`,
    `Its swatches are estimates. Work one in ${chosen.choices.fabric.stitch}, wash it, write its numbers into the file, and say: loopwright grade ${file}`,
  ];
  terminal.out(`${lines.flatMap((line) => wrap(line, Math.min(width, WIDEST_PROSE))).join("\n")}\n`);
  return errors > 0 ? 1 : 0;
}

const exists = (file: string): Promise<boolean> =>
  stat(file).then(
    () => true,
    () => false,
  );

const fileNameOf = (title: string): string =>
  `${
    title
      .normalize("NFKD")
      .toLowerCase()
      .replace(/[^\p{L}\p{N}]+/gu, "-")
      .replace(/^-+|-+$/g, "") || "design"
  }.md`;

/* ------------------------------------------------------------------- questions */

/** Asks one thing after the other; an empty answer takes what stands in brackets. Null without somebody to ask. */
async function askAll(terminal: Terminal): Promise<Wishes | null> {
  if (!terminal.asks || !terminal.input) return null;
  const lines = linesOf(terminal.input);
  const ask = async (question: string): Promise<string | undefined> => {
    terminal.out(`${question} `);
    const answer = (await lines.next()).value?.trim();
    return answer === "" ? undefined : answer;
  };
  for (const name of CONSTRUCTIONS) terminal.out(`  ${name.padEnd(10)} ${CONSTRUCTION_WORDS[name]}\n`);
  const construction = (await ask("What kind of garment? [pullover]")) ?? "pullover";
  const known = CONSTRUCTIONS.find((name) => name === construction.toLowerCase());
  const title = await ask("What is it called? [My design]");
  const body = await ask(
    "Whom is it for? women, corrected; men, corrected; youth, children or babies, published [women, corrected]",
  );
  const sizes = await ask("Which sizes? [all of the chart]");
  const fabrics = fabricsFor(known ?? "pullover");
  for (const { name, looks } of fabrics) terminal.out(`  ${name.padEnd(20)} ${looks}\n`);
  const fabric = await ask(`In which fabric? [${known === "pullover" ? "bumps" : "half double crochet"}]`);
  const yarn = await ask("Which class is the yarn, 1 to 6? [4]");
  const gauge = await ask("Stitches and rows over 10 cm, washed, as in 14 x 11? [usual for the class]");
  const ease = await ask("How much larger than the body at the bust, in cm? [usual]");
  const more: { -readonly [Key in keyof Wishes]?: Wishes[Key] } = {};
  if (known === "pullover") {
    const armhole = await ask("A square notch under the arm, or a straight side: notch or straight? [notch]");
    if (armhole !== undefined) more.armhole = armhole;
  }
  if (known === "panels") {
    more.sleeves = /^y/i.test((await ask("With sleeves? yes or no [no]")) ?? "");
    more.pockets = /^y/i.test((await ask("With pockets? yes or no [no]")) ?? "");
  }
  const said = { title, body, sizes, fabric, yarn, gauge, ease };
  return {
    construction,
    ...more,
    ...Object.fromEntries(Object.entries(said).filter(([, value]) => value !== undefined)),
  };
}

async function* linesOf(input: AsyncIterable<Uint8Array>): AsyncGenerator<string, undefined> {
  const decoder = new TextDecoder();
  let rest = "";
  for await (const piece of input) {
    rest += decoder.decode(piece, { stream: true });
    for (let end = rest.indexOf("\n"); end !== -1; end = rest.indexOf("\n")) {
      yield rest.slice(0, end);
      rest = rest.slice(end + 1);
    }
  }
  if (rest !== "") yield rest;
  return undefined;
}
