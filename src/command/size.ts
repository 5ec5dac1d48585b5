import { counted, plural } from "../base/index.ts";
import { type Proof, proveDesign, ruleCosts, whomItFits } from "../design/index.ts";
import { oneLine } from "./cells.ts";
import { setFindings, WIDEST_PROSE } from "./findings.ts";
import { findingJson } from "./json.ts";
import { type Paint, paintFor } from "./paint.ts";
import { nameOf, readInput } from "./read-input.ts";
import { countFindings } from "./report.ts";
import type { SizeRequest } from "./request.ts";
import { cmOf, countOf, missOf, type SizeLine, setSizeTable } from "./size-table.ts";
import { columnsOf, type ExitCode, type Terminal } from "./terminal.ts";
import { viewOf } from "./view.ts";
import { wrap } from "./wrap.ts";

/** A proof of a text that has a table at its head. */
export type DesignProved = Proof & Required<Pick<Proof, "table" | "counts" | "finished" | "ties">>;

export const hasTable = (proof: Proof): proof is DesignProved => proof.table !== undefined;

/** Shows the measurements and counts of a design in every size. */
export async function showSizes(request: SizeRequest, terminal: Terminal): Promise<ExitCode> {
  const input = await readInput(request.file, terminal);
  if ("refusal" in input) {
    terminal.err(`loopwright: ${input.refusal}\n`);
    return 2;
  }
  const proof = proveDesign(input.text);
  if (!hasTable(proof)) {
    terminal.err(`loopwright: ${noTable(request.file)}\n`);
    return 2;
  }
  if (request.json) terminal.out(`${JSON.stringify(sizesJson(proof))}\n`);
  else {
    const paint = paintFor(terminal.colour);
    const lines = setSizes(proof, nameOf(request.file), columnsOf(terminal), paint);
    terminal.out(`${lines.map((line) => line.trimEnd()).join("\n")}\n`);
  }
  return countFindings(proof.findings).errors > 0 ? 1 : 0;
}

export const noTable = (file: string): string =>
  `${nameOf(file)} has no table at its head, between two lines of three hyphens, so there are no sizes to choose. To check its rows, say: loopwright check ${file}`;

/* ------------------------------------------------------------------- json */

/** What the sizes of a design come to, for other programs. */
export function sizesJson(proof: DesignProved) {
  const fits = whomItFits(proof);
  const { choice } = proof;
  const gap = choice?.cost == null || choice.floor === null ? null : Math.max(0, choice.cost - choice.floor);
  return {
    title: proof.title,
    sizes: proof.sizes,
    proven: choice?.best ?? false,
    gap: choice?.best ? 0 : gap,
    measurements: proof.finished.map(({ name, wanted, made, missed, plusMinus, from }) => ({
      name,
      unit: "cm",
      wanted: wanted.map(thousandth),
      made: made.map(thousandth),
      missed: missed.map(thousandth),
      plusMinus: plusMinus.map(thousandth),
      from,
    })),
    counts: proof.counts.map(({ name, values, multiple, remainder, worked, from }) => ({
      name,
      values: values ?? proof.sizes.map(() => null),
      multiple,
      remainder,
      worked,
      from,
    })),
    ties: proof.ties.map(({ text, difference, measured, within }) => ({
      text,
      difference,
      measured,
      within,
    })),
    rules: ruleCosts(proof.table).map(({ words, line, cost }) => ({
      text: words,
      line,
      cost: thousandth(cost),
    })),
    coverage:
      fits === null || fits.coverage.share === null
        ? null
        : {
            population: fits.population,
            share: fits.coverage.share,
            bySize: fits.coverage.bySize.map(({ size, share, people }) => ({ size, share, people })),
            shutOut: fits.coverage.shutOut.map(({ measurement, share }) => ({ measurement, share })),
            notJudged: fits.coverage.notJudged.sizes,
          },
    findings: proof.findings.map((finding) => findingJson(viewOf(proof), finding)),
  };
}

/** Thousandths of a centimetre: what lies below them is the arithmetic's own. */
const thousandth = (cm: number | null): number | null => (cm === null ? null : Math.round(cm * 1000) / 1000);

/* ------------------------------------------------------------------ tables */

function setSizes(proof: DesignProved, file: string, width: number, paint: Paint): string[] {
  const prose = (words: string): string[] => wrap(words, Math.min(width, WIDEST_PROSE));
  return [
    paint.strong(oneLine(proof.title) || "A design without a title"),
    ...prose(`${file}. ${counted(proof.sizes.length, "size")}: ${proof.sizes.map(oneLine).join(", ")}.`),
    "",
    ...setMeasures(proof, width, paint),
    ...setCounts(proof, width, paint),
    ...setTies(proof, width, paint),
    ...setChoice(proof).flatMap(prose),
    ...setRules(proof).flatMap(prose),
    ...setFits(proof).flatMap(prose),
    "",
    ...setFindings(viewOf(proof), width, paint),
    ...prose(`${countFindings(proof.findings).words}.`),
  ];
}

const FROM = { rows: "", trust: ", on trust", table: ", from the table" } as const;

/** Wanted, made, missed and plus-or-minus of every measurement. */
export function setMeasures({ finished, sizes }: DesignProved, width: number, paint: Paint): string[] {
  const lines = finished.flatMap(({ name, wanted, made, missed, plusMinus, from }): SizeLine[] => {
    if (made.every((cm) => cm === null))
      return [
        { label: `${name}: wanted`, values: wanted.map(cmOf) },
        { label: "no count makes it", values: [], tone: "more" },
      ];
    return [
      { label: `${name}${FROM[from ?? "rows"]}`, values: made.map(cmOf) },
      { label: "wanted", values: wanted.map(cmOf), tone: "more" },
      { label: "missed", values: missed.map(missOf), tone: "more" },
      {
        label: "plus or minus",
        values: plusMinus.map((cm) => (cm === null ? "" : cmOf(cm))),
        tone: "more",
      },
    ];
  });
  return setSizeTable("Finished, cm", sizes, lines, width, paint);
}

function setCounts({ counts, sizes }: DesignProved, width: number, paint: Paint): string[] {
  const lines = counts.map(({ name, values, worked, from }): SizeLine => {
    const differs =
      from !== "table" && worked.some((count, size) => count !== null && count !== values?.[size]);
    return {
      label: name,
      values: (values ?? sizes.map(() => null)).map(countOf),
      ...(differs ? { tone: "warning" as const } : {}),
    };
  });
  return setSizeTable("Counts", sizes, lines, width, paint);
}

function setTies({ ties }: DesignProved, width: number, paint: Paint): string[] {
  const off = ties.filter(({ difference, within }) =>
    difference.some((one) => one !== null && Math.abs(one) > within + 1e-9),
  );
  if (ties.length === 0) return [];
  const words =
    off.length === 0
      ? `${counted(ties.length, "tie")} between counts, and ${ties.length === 1 ? "it holds" : "all hold"}.`
      : `${off.length} of ${counted(ties.length, "tie")} between counts do not hold: ${off.map(({ text }) => text).join("; ")}.`;
  return [...wrap(words, Math.min(width, WIDEST_PROSE)).map(off.length === 0 ? paint.good : paint.error), ""];
}

function setChoice({ choice }: DesignProved): string[] {
  if (!choice) return [];
  if (choice.best) return ["No choice of counts comes closer to the plan than the one that is written."];
  if (choice.cost === null) return ["Some counts have no values yet: loopwright grade chooses them."];
  if (choice.floor === null) return [];
  return [
    `The counts as written miss the plan by ${cmOf(choice.cost)} cm in all; no choice misses it by less than ${cmOf(choice.floor)} cm.`,
  ];
}

/** The rules that keep the counts farthest from the plan. */
function setRules(proof: DesignProved): string[] {
  const costly = ruleCosts(proof.table)
    .filter(({ cost }) => cost >= 0.05)
    .slice(0, 3);
  if (costly.length === 0) return [];
  const said = costly.map(({ words, line, cost }) => `${cmOf(cost)} cm for "${words}" (line ${line})`);
  return [`What rules cost, in misses and uneven steps that would go without them: ${said.join("; ")}.`];
}

const hundredth = (share: number): string => `${Math.round(share * 100)} in 100`;

function setFits(proof: DesignProved): string[] {
  const fits = whomItFits(proof);
  if (fits === null || fits.coverage.share === null) return [];
  const { share, shutOut, notJudged } = fits.coverage;
  const out = shutOut
    .filter((one) => one.share >= 0.005)
    .slice(0, 3)
    .map((one) => `${one.measurement} ${hundredth(one.share)}`);
  return [
    `${hundredth(share)} measured ${fits.population} find a size that fits them at ${fits.by.join(", ")}${out.length > 0 ? `; shut out by one measurement alone: ${out.join(", ")}` : ""}.`,
    ...(notJudged.sizes.length > 0
      ? [
          `Not judged: ${plural("size").slice(0, notJudged.sizes.length === 1 ? 4 : 5)} ${notJudged.sizes.join(", ")}, since nobody was measured above ${notJudged.most} cm at the ${notJudged.measurement}.`,
        ]
      : []),
  ];
}
