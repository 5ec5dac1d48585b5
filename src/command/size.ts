import { counted } from "../base/index.ts";
import { nextBestChoice, type Proof, proveDesign, ruleCosts } from "../design/index.ts";
import { oneLine } from "./cells.ts";
import { setFindings, WIDEST_PROSE } from "./findings.ts";
import { findingJson } from "./json.ts";
import { type Paint, paintFor } from "./paint.ts";
import { nameOf, readInput } from "./read-input.ts";
import { countFindings } from "./report.ts";
import type { SizeRequest } from "./request.ts";
import { cmOf, countOf, isMissed, missOf, type SizeLine, setSizeTable } from "./size-table.ts";
import { columnsOf, type ExitCode, type Terminal } from "./terminal.ts";
import { viewOf } from "./view.ts";
import { coverageJson, setWhom } from "./whom.ts";
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
  const { choice } = proof;
  return {
    title: proof.title,
    sizes: proof.sizes,
    proven: choice?.best ?? false,
    gap: thousandth(choice?.gap ?? null),
    measurements: proof.finished.map(({ name, wanted, made, missed, plusMinus, hanging, from }) => ({
      name,
      unit: "cm",
      wanted: wanted.map(thousandth),
      made: made.map(thousandth),
      missed: missed.map(thousandth),
      plusMinus: plusMinus.map(thousandth),
      hanging: hanging?.map(thousandth) ?? null,
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
    nextBest: nextBestJson(proof),
    coverage: coverageJson(proof),
    findings: proof.findings.map((finding) => findingJson(viewOf(proof), finding)),
  };
}

function nextBestJson({ table, sizes }: DesignProved) {
  const next = nextBestChoice(table);
  return (
    next && {
      costsMore: thousandth(next.costsMore),
      worstMore: thousandth(next.worstMore),
      proven: next.proved,
      changes: next.changes.map(({ id, size, from, to }) => ({
        count: id,
        size: sizes[size] ?? "",
        from,
        to,
      })),
    }
  );
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
    ...setNextBest(proof).flatMap(prose),
    "",
    ...setWhom(proof, width, Math.min(width, WIDEST_PROSE), paint),
    ...setFindings(viewOf(proof), width, paint),
    ...prose(`${countFindings(proof.findings).words}.`),
  ];
}

const FROM = { rows: "", trust: ", on trust", table: ", from the table" } as const;

/** Wanted, made, missed and plus-or-minus of every measurement. */
export function setMeasures({ finished, sizes }: DesignProved, width: number, paint: Paint): string[] {
  const lines = finished.flatMap(({ name, wanted, made, missed, plusMinus, hanging, from }): SizeLine[] => {
    if (made.every((cm) => cm === null))
      return [
        { label: `${name}: wanted`, values: wanted.map(cmOf) },
        { label: "no count makes it", values: [], tone: "more" },
      ];
    return [
      { label: `${name}${FROM[from ?? "rows"]}`, values: made.map(cmOf) },
      ...(hanging ? [{ label: "by hanging", values: hanging.map(missOf), tone: "more" as const }] : []),
      { label: "wanted", values: wanted.map(cmOf), tone: "more" },
      ...(isMissed(missed) ? [{ label: "missed", values: missed.map(missOf), tone: "more" as const }] : []),
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

function setChoice({ choice, table }: DesignProved): string[] {
  if (!choice) return [];
  if (choice.cost === null) return ["Some counts have no values yet: loopwright grade chooses them."];
  const { cost, worst, worstAtBest, floor } = choice;
  if (table.aim === "least worst" && worst !== null && worstAtBest !== null) {
    const miss = `The largest miss is ${cmOf(worst)} cm`;
    return [
      choice.best
        ? `${miss}, and no choice of counts has a smaller one or, with that, smaller misses in all.`
        : `${miss}; a choice with ${cmOf(worstAtBest)} cm was found.`,
    ];
  }
  const all = `Misses and uneven steps come to ${cmOf(cost)} cm in all`;
  if (choice.best) return [`${all}, and no choice of counts comes closer to the plan.`];
  return floor === null ? [] : [`${all}; no choice comes to less than ${cmOf(floor)} cm.`];
}

/** The rules that keep the counts farthest from the plan. */
function setRules({ table }: DesignProved): string[] {
  const costly = ruleCosts(table).filter(({ cost }) => cost >= 0.05);
  if (costly.length === 0) return [];
  const [dearest, ...more] = costly.map(
    ({ words, line, cost }) => `"${words}" (line ${line}), ${cmOf(cost)} cm`,
  );
  const also = more.length > 0 ? ` Then ${more.slice(0, 2).join("; ")}.` : "";
  const what = table.aim === "least worst" ? "of the largest miss" : "of misses and uneven steps";
  return [`The rule that costs the most, ${what} that would go without it: ${dearest}.${also}`];
}

/** The choice that is the best but for the chosen one. */
function setNextBest({ table, sizes }: DesignProved): string[] {
  const next = nextBestChoice(table);
  if (next === null) return [];
  const changes = next.changes.map(
    ({ id, size, from, to }) => `${id} ${to} for ${from} in ${oneLine(sizes[size] ?? "")}`,
  );
  const [first = "", ...more] = changes;
  const shown = [first, ...more.slice(0, 4)].join(", ");
  const rest = changes.length > 5 ? ` and ${changes.length - 5} more` : "";
  const sum =
    table.aim === "least worst" && next.worstMore >= 0.05
      ? `its largest miss is ${cmOf(next.worstMore)} cm more`
      : next.costsMore < 0.05
        ? "it comes as close"
        : `it misses by ${cmOf(next.costsMore)} cm more`;
  return [`The next best choice: ${shown}${rest}; ${sum}.`];
}
