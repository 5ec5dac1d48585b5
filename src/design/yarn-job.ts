import type { Span } from "../base/index.ts";
import type { PatternTree } from "../notation/index.ts";
import { plainName } from "../sizing/index.ts";
import { classesForHook } from "../stitches/index.ts";
import type { MadeRow, WorkedPattern } from "../working/index.ts";
import {
  type FabricSwatch,
  type NamedYarn,
  USUAL_TAIL_CM,
  type YarnFabric,
  type YarnJob,
} from "../yarn/index.ts";
import type { DesignTable, Fabric } from "./document/document.ts";

/** A colour that rows name and that no yarn of the table has, with the first line that uses it. */
export interface StrayColour {
  readonly colour: string;
  readonly at: number;
}

/** A job of yarn with the colours that found no yarn: they are reckoned as the first. */
export interface JobRead {
  readonly job: YarnJob;
  readonly stray: readonly StrayColour[];
  /** From what the fabric is told, in a text without a table. */
  readonly by?: ToldBy;
}

/** What the trade calls the first and the second of two yarns. */
const FIRST = new Set(["mc", "main", "main color", "main colour", "main yarn"]);
const SECOND = new Set(["cc", "contrast", "contrast color", "contrast colour", "contrasting"]);

/** The job of a design with a table. */
export function jobOfTable(table: DesignTable, tree: PatternTree, worked: WorkedPattern): JobRead {
  const fabrics = table.fabrics.map(fabricOf);
  const yarns: readonly NamedYarn[] = table.yarns.length > 0 ? table.yarns : [NO_YARN];
  const rows = new RowFabrics(table, tree);
  const colours = coloursIn(worked);
  const names = table.yarns.map(({ name, colour, called }) =>
    [name, colour, called].flatMap((one) => (one === null ? [] : [plainName(one)])),
  );
  const found = new Map<string, number>();
  const stray: StrayColour[] = [];
  for (const [colour, at] of colours) {
    const plain = plainName(colour);
    let yarn = names.findIndex((own) => own.includes(plain));
    if (yarn === -1 && (FIRST.has(plain) || (colours.size === 1 && yarns.length === 1))) yarn = 0;
    if (yarn === -1 && SECOND.has(plain) && yarns.length === 2) yarn = 1;
    if (yarn === -1) stray.push({ colour, at });
    found.set(colour, Math.max(0, yarn));
  }
  const ofFabric = fabrics.map(({ yarn }) =>
    Math.max(
      0,
      yarns.findIndex(({ name }) => name === yarn),
    ),
  );
  const { safety, tailCm, seamsCm, finishing } = table.making;
  return {
    stray: table.yarns.length === 0 ? [] : stray,
    job: {
      sizes: table.sizes.length,
      makings: worked.made,
      fabrics,
      yarns,
      fabricOf: (row) => rows.of(row),
      yarnOf: (colour, fabric) => (colour === null ? (ofFabric[fabric] ?? 0) : (found.get(colour) ?? 0)),
      tailCm: tailCm ?? USUAL_TAIL_CM,
      seamsCm,
      ...(safety === null ? {} : { safety }),
      finishing,
    },
  };
}

/** From what the fabric of a text without a table is told: a whole gauge, its stitches alone, the hook by the trade's table. */
export type ToldBy = "gauge" | "stitches" | "hook" | "nothing";

interface FabricTold {
  readonly by: ToldBy;
  readonly stitchCm: number | null;
  readonly rowCm: number | null;
}

function fabricTold({ gauges, materials }: PatternTree): FabricTold {
  const each = (cm: number | null, count: number | null | undefined): number | null =>
    cm && count ? cm / count : null;
  const told = gauges.map(({ stitches, rows, widthCm, heightCm }) => ({
    stitchCm: each(widthCm, stitches?.values[0]),
    rowCm: each(heightCm, rows?.values[0]),
  }));
  const whole = told.find(({ stitchCm, rowCm }) => stitchCm !== null && rowCm !== null);
  if (whole) return { by: "gauge", ...whole };
  const across = told.find(({ stitchCm }) => stitchCm !== null);
  if (across) return { by: "stitches", ...across };
  const hook = materials.hooksMm[0]?.mm[0];
  // The middle of what the trade's table of yarns has for the hook, over single crochet.
  const ranges = (hook === undefined ? [] : classesForHook(hook)).filter(
    ({ gauge, gaugeStitch }) => gauge.from !== null && gauge.to !== null && gaugeStitch === "sc",
  );
  if (ranges.length === 0) return { by: "nothing", stitchCm: null, rowCm: null };
  const middles = ranges.map(({ gauge }) => ((gauge.from ?? 0) + (gauge.to ?? 0)) / 2);
  const stitches = middles.reduce((sum, one) => sum + one, 0) / middles.length;
  return { by: "hook", stitchCm: 10 / stitches, rowCm: null };
}

/** The job of a text without a table: one fabric; its colours are its yarns, and nothing is known of them. */
export function jobOfText(tree: PatternTree, worked: WorkedPattern): JobRead {
  const { by, stitchCm, rowCm } = fabricTold(tree);
  const colours = [...coloursIn(worked).keys()];
  const yarns = (colours.length > 0 ? colours : ["yarn"]).map((name) => ({ ...NO_YARN, name }));
  return {
    stray: [],
    by,
    job: {
      sizes: tree.sizes.length,
      makings: worked.made,
      fabrics: [
        {
          name: "fabric",
          stitchCm,
          rowCm,
          yarn: null,
          swatches: [],
        },
      ],
      yarns,
      fabricOf: () => 0,
      yarnOf: (colour) => Math.max(0, colours.indexOf(colour ?? "")),
      tailCm: USUAL_TAIL_CM,
      seamsCm: null,
      finishing: null,
    },
  };
}

const NO_YARN: NamedYarn = { name: "yarn", yarnClass: null, metres: null, grams: null, price: null };

function fabricOf({ name, gauge, yarn, swatches }: Fabric): YarnFabric {
  return {
    name,
    yarn,
    stitchCm: gauge?.stitchWidth.value ?? null,
    rowCm: gauge?.rowHeight.value ?? null,
    swatches: swatches.flatMap(({ readings, grams, minutes, madeOf }): FabricSwatch[] => {
      const [first] = readings;
      if (!first) return [];
      return [
        {
          stitches: first.stitches,
          rows: first.rows,
          grams: grams ?? null,
          minutes: minutes ?? null,
          madeOf: madeOf ?? null,
        },
      ];
    }),
  };
}

/** Colours that the rows name, each with the beginning of the first line that does. */
function coloursIn({ made }: WorkedPattern): ReadonlyMap<string, number> {
  const colours = new Map<string, number>();
  for (const { made: sizes } of made)
    for (const piece of sizes) {
      const rows = piece?.rows ?? [];
      const first = rows[0]?.at ?? 0;
      for (const { colour } of piece?.chains ?? [])
        if (colour !== null && !colours.has(colour)) colours.set(colour, first);
      for (const row of rows)
        for (const { colour } of row.made)
          if (colour !== null && !colours.has(colour)) colours.set(colour, row.at);
    }
  return colours;
}

/**
 * Which fabric each row is worked in: the one whose headings name its heading; else that of a count in braces on its line; else
 * that of the next line under its heading which tells, or the one before; else the fabric that most counts are in.
 */
class RowFabrics {
  private readonly byLine = new Map<number, number>();
  private readonly usual: number;

  constructor(
    private readonly table: DesignTable,
    tree: PatternTree,
  ) {
    const { fabrics, counts } = table;
    const uses = fabrics.map(({ name }) => counts.filter(({ fabric }) => fabric === name).length);
    this.usual = Math.max(0, uses.indexOf(Math.max(...uses)));
    let above = "";
    for (const { name, level, instructions } of tree.pieces) {
      if (level === 1) above = name;
      const said = this.byHeading(name) ?? this.byHeading(above);
      const told = instructions.map(({ span }) => said ?? this.byCounts(tree.text, span));
      instructions.forEach(({ span }, at) => {
        const fabric =
          told.slice(at).find((one) => one !== null) ?? told.slice(0, at).findLast((one) => one !== null);
        this.byLine.set(span.from, fabric ?? this.usual);
      });
    }
  }

  of(row: MadeRow): number {
    return this.byLine.get(row.at) ?? this.usual;
  }

  private byHeading(name: string): number | null {
    const plain = plainName(name);
    const at = this.table.fabrics.findIndex(({ headings }) =>
      headings.some((heading) => plainName(heading) === plain),
    );
    return at === -1 ? null : at;
  }

  /** Counts of stitches tell it before counts of rows: rows are picked up along a rib by the rib's own count. */
  private byCounts(text: string, { from, to }: Span): number | null {
    const names = [...text.slice(from, to).matchAll(/\{([^{}\n]{1,200})\}/g)].flatMap((hit) =>
      (hit[1] ?? "").split(/\s[+-]\s/).map(plainName),
    );
    const used = this.table.counts.filter(
      ({ name, along, fabric }) => along !== null && fabric !== null && names.includes(plainName(name)),
    );
    const count = used.find(({ of }) => of === "stitches") ?? used[0];
    const at = this.table.fabrics.findIndex(({ name }) => name === count?.fabric);
    return at === -1 ? null : at;
  }
}
