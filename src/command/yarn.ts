import { counted, sayList } from "../base/index.ts";
import { type Proof, proveDesign, type YarnProof } from "../design/index.ts";
import { oneLine } from "./cells.ts";
import { setFindings, WIDEST_PROSE } from "./findings.ts";
import { type Paint, paintFor } from "./paint.ts";
import { nameOf, readInput } from "./read-input.ts";
import { countFindings } from "./report.ts";
import type { YarnRequest } from "./request.ts";
import { type SizeLine, setSizeTable } from "./size-table.ts";
import { columnsOf, type ExitCode, type Terminal } from "./terminal.ts";
import { viewOf } from "./view.ts";
import { wrap } from "./wrap.ts";
import { yarnJson } from "./yarn-json.ts";

/** Shows the yarn, the hours and the money of a pattern in every size. */
export async function showYarn(request: YarnRequest, terminal: Terminal): Promise<ExitCode> {
  const input = await readInput(request.file, terminal);
  if ("refusal" in input) {
    terminal.err(`loopwright: ${input.refusal}\n`);
    return 2;
  }
  const proof = proveDesign(input.text);
  if (request.json) terminal.out(`${JSON.stringify(yarnJson(proof))}\n`);
  else {
    const paint = paintFor(terminal.colour);
    const lines = setYarn(proof, nameOf(request.file), columnsOf(terminal), paint);
    terminal.out(`${lines.map((line) => line.trimEnd()).join("\n")}\n`);
  }
  return countFindings(proof.findings).errors > 0 ? 1 : 0;
}

function setYarn(proof: Proof, file: string, width: number, paint: Paint): string[] {
  const { yarn, sizes } = proof;
  const prose = (words: string): string[] => wrap(words, Math.min(width, WIDEST_PROSE));
  const table = (title: string, lines: readonly SizeLine[]): string[] =>
    setSizeTable(title, sizes, lines, width, paint);
  const findings = countFindings(proof.findings);
  return [
    paint.strong(oneLine(proof.title) || "A pattern without a title"),
    ...prose(`${file}. ${counted(sizes.length, "size")}: ${sizes.map(oneLine).join(", ")}.`),
    "",
    ...(yarn ? setEstimate(yarn, table, prose) : []),
    ...(proof.table ? setFindings(viewOf(onlyYarn(proof)), width, paint) : []),
    ...(findings.errors > 0
      ? prose(
          `${findings.words}. Yarn follows from the rows as they are; loopwright check ${file} shows what is wrong with them.`,
        )
      : []),
  ];
}

/** The findings that are about yarn; the others are for other commands. */
const onlyYarn = (proof: Proof): Proof => ({
  ...proof,
  findings: proof.findings.filter(({ code }) => YARN_CODES.has(code)),
});

const YARN_CODES = new Set([
  "design/colour-without-yarn",
  "design/swatch-weight-off",
  "design/yarn-ways-differ",
]);

type SetTable = (title: string, lines: readonly SizeLine[]) => string[];

function setEstimate(yarn: YarnProof, table: SetTable, prose: (words: string) => string[]): string[] {
  const some = yarn.pieces.some(({ areaCm2 }) => areaCm2.some((one) => one !== null));
  const known = yarn.yarns.some(({ metres }) => metres.some((one) => one !== null));
  return [
    ...(known ? [...table("To buy", toBuy(yarn)), ...table("Used, m", used(yarn))] : []),
    ...(some ? table("Pieces, m", pieces(yarn)) : []),
    ...(known ? table("Hours", hours(yarn)) : []),
    ...table("Another yarn", instead(yarn)),
    ...prosed(sayWays(yarn), prose),
    ...(some ? prosed(sayHow(yarn), prose) : []),
    ...prosed(sayMoney(yarn), prose),
    ...prosed(yarn.missing, prose),
  ];
}

const prosed = (said: readonly string[], prose: (words: string) => string[]): string[] =>
  said.length === 0 ? [] : [...said.flatMap(prose), ""];

const whole = (value: number | null): string => (value === null ? "?" : String(Math.round(value)));
const tenth = (value: number | null): string => (value === null ? "?" : value.toFixed(1));

/** Whole balls, what they cost and what stays over; metres where the ball is not known. */
function toBuy({ yarns, currency, safety }: YarnProof): SizeLine[] {
  return yarns.flatMap(({ name, buy }): SizeLine[] => {
    const balls = buy.some((one) => one.balls !== null);
    if (!balls)
      return [
        {
          label: `${name}, m with ${Math.round(safety * 100)} % more`,
          values: buy.map((one) => whole(one.metres)),
        },
      ];
    return [
      { label: `${name}, balls`, values: buy.map((one) => whole(one.balls)) },
      ...(buy.some((one) => one.cost !== null)
        ? [
            {
              label: `cost, ${currency ?? ""}`,
              values: buy.map((one) => whole(one.cost)),
              tone: "more" as const,
            },
          ]
        : []),
      { label: "left over, g", values: buy.map((one) => whole(one.leftGrams)), tone: "more" },
    ];
  });
}

function used({ yarns }: YarnProof): SizeLine[] {
  return yarns.flatMap(({ name, metres, grams, ways }): SizeLine[] => [
    { label: name, values: metres.map(whole) },
    ...(grams.some((one) => one !== null)
      ? [{ label: "in grams", values: grams.map(whole), tone: "more" as const }]
      : []),
    ...(ways.some(({ byArea }) => byArea !== null)
      ? [
          { label: "by stitches", values: ways.map((way) => whole(way.byStitch)), tone: "more" as const },
          { label: "by area", values: ways.map((way) => whole(way.byArea)), tone: "more" as const },
        ]
      : []),
  ]);
}

/** Every piece, all of its copies together, and what comes on top. */
function pieces({ pieces: all, yarns }: YarnProof): SizeLine[] {
  const several = yarns.length > 1;
  const lines = all.flatMap(({ name, times, yarns: own }): SizeLine[] => {
    const copies = Math.max(...times);
    const label = `${name || "pattern"}${copies > 1 ? `, ${copies} of them` : ""}`;
    const sums = times.map((_, size) => sumOf(own.map((ways) => ways[size]?.byStitch ?? null)));
    const parts = own.flatMap((ways, at): SizeLine[] =>
      ways.some(({ byStitch }) => (byStitch ?? 0) > 0)
        ? [
            {
              label: yarns[at]?.name ?? "",
              values: ways.map(({ byStitch }) => whole(byStitch)),
              tone: "more",
            },
          ]
        : [],
    );
    return [{ label, values: sums.map(whole) }, ...(several ? parts : [])];
  });
  const [first] = yarns;
  if (!first) return lines;
  const ends = first.metres.map((_, size) => sumOf(yarns.map(({ endsMetres }) => endsMetres[size] ?? null)));
  const seams = first.metres.map((_, size) => sumOf(yarns.map(({ seamMetres }) => seamMetres[size] ?? null)));
  return [
    ...lines,
    { label: "ends and joins", values: ends.map(whole) },
    ...(seams.some((one) => (one ?? 0) > 0) ? [{ label: "seams", values: seams.map(whole) }] : []),
  ];
}

function sumOf(values: readonly (number | null)[]): number | null {
  return values.reduce<number | null>((sum, one) => (sum === null || one === null ? null : sum + one), 0);
}

function hours({ hours: all, finishing }: YarnProof): SizeLine[] {
  return [
    { label: "in all", values: all.map(tenth) },
    { label: "finishing", values: finishing.map(tenth), tone: "more" },
  ];
}

function instead({ instead: others }: YarnProof): SizeLine[] {
  return others.map(({ of, name, buy }) => ({
    label: `${name} for ${of}, balls`,
    values: buy.map((one) => whole(one.balls)),
  }));
}

/* -------------------------------------------------------------------- prose */

/** How far the two ways are apart at most, over yarns and sizes. */
function sayWays({ yarns }: YarnProof): string[] {
  const off = yarns.flatMap(({ ways }) =>
    ways.flatMap(({ byStitch, byArea }) => (byStitch && byArea ? [Math.abs(byStitch / byArea - 1)] : [])),
  );
  if (off.length === 0) return [];
  const most = Math.max(...off) * 100;
  return [
    `Reckoned by stitches and by area, the yarn comes out ${most < 0.5 ? "the same" : `within ${Math.ceil(most)} in 100`} in every size.`,
  ];
}

/** On what the figures rest. */
function sayHow({ safety, roughHours, instead: others }: YarnProof): string[] {
  return [
    `To buy: ${Math.round(safety * 100)} in 100 more than is used, rounded up to whole balls, each colour by itself.`,
    ...(roughHours
      ? [
          "Hours: no swatch was timed, so 20 stitches a minute are taken and a quarter more for turning and counting.",
        ]
      : []),
    ...others.flatMap(({ of, name, substitution }) =>
      substitution.fit === "as it is"
        ? []
        : substitution.fit === "swatch first"
          ? [`${name} is not quite as thick as ${of}: make a swatch first.`]
          : [
              `${name} is of another thickness than ${of} and will not give the gauge; its balls are a first guess for a garment of the same size.`,
            ],
    ),
  ];
}

function sayMoney({ business }: YarnProof): string[] {
  if (business === null) return [];
  const { price, fee, perCopy, cash, hours: spent, wage, copiesForCash, copiesForAll, sold, sums } = business;
  const money = (sum: number): string =>
    `${sum.toFixed(2)}${business.currency ? ` ${business.currency}` : ""}`;
  const lines = [
    `Money: a copy at ${money(price)} brings ${money(perCopy)}${fee > 0 ? ` after the shop's ${Math.round(fee * 1000) / 10} %` : ""}. Paid: ${money(cash)}${sums.length > 0 ? ` (${sayList(sums.map(({ name, amount }) => `${oneLine(name)} ${amount.toFixed(2)}`))})` : ""}. Hours: ${tenth(spent)}${business.sampleHours > 0 ? `, ${tenth(business.sampleHours)} of them for the sample` : ""}.`,
  ];
  if (copiesForCash !== null)
    lines.push(
      `${counted(copiesForCash, "copy")} pay what was spent${wage > 0 && copiesForAll !== null ? `, ${copiesForAll} pay the hours too, at ${money(wage)} each` : ""}.`,
    );
  const { left, perHour, profit } = business;
  if (sold !== null && left !== null)
    lines.push(
      `With ${counted(sold, "copy")} sold, ${money(left)} are left${perHour === null ? "" : `, ${money(perHour)} an hour`}${wage > 0 && profit !== null ? `; after the wage ${money(profit)}` : ""}.`,
    );
  return lines;
}
