import type { Finding, PerSize, Span } from "../base/index.ts";
import type { PatternTree } from "../notation/index.ts";
import type { WorkedPattern } from "../working/index.ts";
import {
  disagreements,
  type Earnings,
  earningsOf,
  estimateYarn,
  type Purchase,
  purchaseOf,
  type Substitution,
  SWATCH_DOUBT,
  substitute,
  USUAL_SAFETY,
  type YarnEstimate,
} from "../yarn/index.ts";
import type { DesignTable } from "./document/document.ts";
import { colourWithoutYarn, swatchWeightOff, yarnNotKnown, yarnWaysDiffer } from "./findings/index.ts";
import { type JobRead, jobOfTable, jobOfText, type ToldBy } from "./yarn-job.ts";

/** A yarn taken instead of one of the design's. */
export interface YarnInstead {
  readonly of: string;
  readonly name: string;
  readonly substitution: Substitution;
  readonly buy: PerSize<Purchase>;
}

/** What the design costs and earns, with the sums it comes from. */
export interface DesignBusiness extends Earnings {
  readonly currency: string | null;
  readonly price: number;
  readonly fee: number;
  readonly cash: number;
  readonly hours: number;
  readonly wage: number;
  readonly sold: number | null;
  /** Sums paid, the sample's yarn among them. */
  readonly sums: readonly { readonly name: string; readonly amount: number }[];
  /** Hours of them that went into making the sample. */
  readonly sampleHours: number;
}

/** Yarn, time and money of a design. */
export interface YarnProof extends YarnEstimate {
  readonly safety: number;
  readonly currency: string | null;
  readonly instead: readonly YarnInstead[];
  readonly business: DesignBusiness | null;
  /** What the figures lack, each in a sentence. */
  readonly missing: readonly string[];
}

/** Works out the yarn of a design with a table, and what is to be said of it. */
export function proveYarn(
  table: DesignTable,
  tree: PatternTree,
  worked: WorkedPattern,
): { readonly yarn: YarnProof; readonly findings: readonly Finding[] } {
  const read = jobOfTable(table, tree, worked);
  const estimate = estimateYarn(read.job);
  const yarn = proofOf(read, estimate, table, missingIn(read, estimate, table));
  return { yarn, findings: table.yarns.length === 0 ? [] : findingsOf(table, read, yarn, tree) };
}

/** The yarn of a text without a table, by its gauge and geometry alone. */
export function roughYarn(tree: PatternTree, worked: WorkedPattern): YarnProof {
  const read = jobOfText(tree, worked);
  const estimate = estimateYarn(read.job);
  return proofOf(read, estimate, null, missingIn(read, estimate, null));
}

function proofOf(
  { job }: JobRead,
  estimate: YarnEstimate,
  table: DesignTable | null,
  missing: readonly string[],
): YarnProof {
  const safety = job.safety ?? USUAL_SAFETY;
  return {
    ...estimate,
    safety,
    currency: job.yarns.find(({ price }) => price !== null)?.price?.currency ?? null,
    instead: (table?.yarns ?? []).flatMap((yarn, at) =>
      yarn.instead.map((other): YarnInstead => {
        const substitution = substitute(yarn, other);
        const used = estimate.yarns[at]?.metres ?? [];
        return {
          of: yarn.name,
          name: other.name,
          substitution,
          buy: used.map((metres) =>
            purchaseOf(metres === null ? null : metres * substitution.lengthFactor, other, safety),
          ),
        };
      }),
    ),
    business: table && businessOf(table, estimate),
    missing,
  };
}

function businessOf({ costs, sizes }: DesignTable, { yarns, hours }: YarnEstimate): DesignBusiness | null {
  if (costs?.price == null) return null;
  const { price, fee, wage, sold, currency } = costs;
  const sums = [...costs.sums];
  let sampleHours = 0;
  if (costs.sample !== null) {
    const size = costs.sample;
    const bought = yarns.map(({ buy }) => buy[size]?.cost ?? null);
    const amount = bought.reduce<number>((sum, one) => sum + (one ?? 0), 0);
    if (amount > 0) sums.push({ name: `yarn of the sample, ${sizes[size]}`, amount });
    sampleHours = hours[size] ?? 0;
  }
  const cash = sums.reduce((sum, { amount }) => sum + amount, 0);
  const figures = { price, fee, cash, hours: costs.hours + sampleHours, wage, sold };
  return { currency, sums, sampleHours, ...figures, ...earningsOf(figures) };
}

/* ------------------------------------------------------------------ missing */

/** How far a text without a table may be trusted, by what tells its fabric. Own estimate, from how far makers and tables differ. */
const ROUGHLY: Readonly<Record<ToldBy, string>> = {
  gauge:
    "No swatch was weighed: lengths follow from the gauge and the shape of the stitches alone, and may be a quarter off.",
  stitches:
    "No swatch was weighed and the gauge has no rows: rows are taken as high as their stitches usually are. The length may be a third off.",
  hook: "There is no gauge: stitches are taken as wide as yarns for the hook usually make them. The length may be half as much again, or a third less.",
  nothing: "",
};

function missingIn({ job, by }: JobRead, estimate: YarnEstimate, table: DesignTable | null): string[] {
  const missing: string[] = [];
  const bare = job.fabrics.filter(({ stitchCm }) => stitchCm === null);
  if (job.makings.length === 0) return ["No row was read, so there is nothing to reckon."];
  if (job.fabrics.length === 0 || bare.length > 0) {
    const which = table === null || bare.length === 0 ? "" : ` of ${bare.map(({ name }) => name).join(", ")}`;
    missing.push(`A gauge${which} is missing, from which lengths could be told.`);
  } else
    for (const [piece, sections] of groupUnknown(estimate))
      missing.push(
        `${piece || "The pattern"}: not every row is known${sections.length > 0 ? ` (${sections.join(", ")})` : ""}, so its yarn is not.`,
      );
  if (table === null && bare.length > 0) return missing;
  if (table === null) missing.push(ROUGHLY[by ?? "gauge"]);
  else {
    const unweighed = job.fabrics.filter((_, at) => !estimate.lengths.weighed[at]).map(({ name }) => name);
    if (unweighed.length > 0)
      missing.push(`No swatch of ${unweighed.join(", ")} was weighed: its yarn is by geometry alone.`);
    const open = job.yarns.filter(({ metres, grams }) => metres === null || grams === null);
    for (const { name } of open)
      missing.push(`Metres and grams of a ball of ${name} are missing, so its balls are not known.`);
  }
  return missing;
}

function groupUnknown({ unknown }: YarnEstimate): ReadonlyMap<string, readonly string[]> {
  const byPiece = new Map<string, string[]>();
  for (const { piece, section } of unknown) {
    const sections = byPiece.get(piece) ?? [];
    byPiece.set(piece, sections);
    if (section !== "" && section !== piece && !sections.includes(section)) sections.push(section);
  }
  return byPiece;
}

/* ----------------------------------------------------------------- findings */

function findingsOf(table: DesignTable, { stray }: JobRead, yarn: YarnProof, tree: PatternTree): Finding[] {
  const at = (span: Span, sizes: readonly number[] = []) => ({ span, piece: null, row: null, sizes });
  const names = (sizes: readonly number[]): string[] => sizes.map((size) => table.sizes[size] ?? "");
  const lineAt = (from: number): Span =>
    tree.pieces.flatMap(({ instructions }) => instructions).find(({ span }) => span.from === from)?.span ?? {
      from,
      to: from + 1,
    };
  const findings: Finding[] = stray.map(({ colour, at: from }) =>
    colourWithoutYarn.at(at(lineAt(from)), { colour, yarns: table.yarns.map(({ name }) => name) }),
  );
  for (const { fabric, grams, expected } of yarn.lengths.weights) {
    const own = table.fabrics[fabric];
    if (!own || Math.abs(grams / expected - 1) <= SWATCH_DOUBT) continue;
    findings.push(swatchWeightOff.at(at(own.span), { fabric: own.name, grams, expected }));
  }
  // The whole says it for its pieces.
  const apart = disagreements(yarn);
  for (const { piece, yarn: name, cases } of apart) {
    if (piece !== null && apart.some((one) => one.piece === null && one.yarn === name)) continue;
    const span = table.yarns.find((one) => one.name === name)?.span ?? table.span;
    const sizes = cases.map(({ size }) => size);
    findings.push(
      yarnWaysDiffer.at(at(span, sizes.length === table.sizes.length ? [] : sizes), {
        piece,
        yarn: name,
        cases: cases.map(({ byStitch, byArea }, i) => ({ size: names(sizes)[i] ?? "", byStitch, byArea })),
      }),
    );
  }
  const first = table.yarns[0];
  const weighs = yarn.lengths.weights.length > 0;
  if (first && weighs && yarn.missing.length > 0)
    findings.push(yarnNotKnown.at(at(first.span), { missing: yarn.missing }));
  return findings;
}
