import type { Finding, FindingKind, PerSize, SizeRun, Span } from "../../base/index.ts";
import type { Measurement } from "../../bodies/index.ts";
import { plainName } from "../../sizing/index.ts";
import {
  doesNotGoOver,
  edgeLengthsDiffer,
  shoulderOff,
  stretchNotMeasured,
  tooTight,
} from "../findings/index.ts";
import { bodyForWearing } from "./body.ts";
import type { DesignTable } from "./document.ts";
import type { FinishedMeasure } from "./finished.ts";

/*
 * Whether people get into the garment. Measures are known by their names in the plan:
 *
 *   neck opening            round the neck, against the head
 *   cuff, cuff around       round the cuff, against the hand
 *   upper sleeve            round the sleeve at its top, against the upper arm
 *   sleeve top, armhole     round each, against each other; an armhole depth stands for half an armhole
 *   width across shoulders  against the cross back
 *
 * and every finished body measurement against the body.
 */

const NAMES = {
  neck: ["neck opening", "neck around", "neckline around", "neck edge"],
  cuff: ["cuff", "cuff around", "cuff width around", "wrist around", "sleeve hem around"],
  sleeve: ["upper sleeve", "upper sleeve around", "sleeve around", "sleeve width around"],
  sleeveTop: ["sleeve top", "sleeve top around", "sleeve cap edge"],
  armhole: ["armhole", "armhole around", "armhole edge"],
  armholeDepth: ["armhole depth"],
  shoulders: [
    "width across shoulders",
    "shoulder to shoulder",
    "across shoulders",
    "cross back",
    "width across chest",
  ],
} as const;

/** A sleeve top may be so much longer than its armhole, cm, and is never shorter (trade handbook, section 2.4: up to 1 in). */
const EASED_IN = 2.5;
/** cm that two edges may differ by and still be the same: less than a stitch of most fabrics. */
const SAME = 0.8;
/** cm by which the shoulder may fall otherwise in one size than in another before it is worth a word. */
const DROP_SPREAD = 4;

/** Everything about wearing that a designer should know, in the order of the checks. */
export function wearabilityOf(table: DesignTable, finished: readonly FinishedMeasure[]): Finding[] {
  const checks = new Wearing(table, finished);
  return [
    ...checks.goesOver("neck", "head"),
    ...checks.goesOver("cuff", "hand"),
    ...checks.girths(),
    ...checks.sleeveTops(),
    ...checks.shoulders(),
  ];
}

class Wearing {
  private readonly sizes: SizeRun;

  constructor(
    private readonly table: DesignTable,
    private readonly finished: readonly FinishedMeasure[],
  ) {
    this.sizes = table.sizes;
  }

  /** An opening against what goes through it. */
  goesOver(opening: "neck" | "cuff", body: "head" | "hand"): Finding[] {
    const measure = this.named(opening);
    const needs = this.body(body);
    if (!measure || !needs) return [];
    const stretch = this.stretchOf(measure);
    const cases = this.cases(measure, (rest, size) => {
      const need = needs[size] ?? null;
      const stretched = stretch === null ? null : rest * stretch;
      if (need === null || (stretched ?? rest) >= need) return null;
      return { size, rest, stretched, needs: need };
    });
    return this.tell(doesNotGoOver, measure, cases, { opening: measure.name, body });
  }

  /** Every girth against the body it goes round; where it is smaller, the fabric has to stretch. */
  girths(): Finding[] {
    const sleeve = this.named("sleeve");
    const girths: (readonly [FinishedMeasure, Measurement])[] = [
      ...(sleeve &&
      !this.finished.some(
        ({ measurement, made }) => measurement === "upper arm" && made.some((cm) => cm !== null),
      )
        ? [[sleeve, "upper arm"] as const]
        : []),
      ...this.finished.flatMap((measure) =>
        measure.measurement && GIRTHS.has(measure.measurement)
          ? [[measure, measure.measurement] as const]
          : [],
      ),
    ];
    return girths.flatMap(([measure, body]) => {
      const needs = this.body(body);
      if (!needs) return [];
      const has = this.stretchOf(measure);
      const smaller = this.cases(measure, (made, size) => {
        const need = needs[size] ?? null;
        return need !== null && made < need && (has === null || made * has < need)
          ? { size, made, body: need }
          : null;
      });
      return has === null
        ? this.tell(stretchNotMeasured, measure, smaller, {
            measure: measure.name,
            body,
            fabric: measure.fabric,
          })
        : this.tell(
            tooTight,
            measure,
            smaller.map((one) => ({ ...one, has })),
            { measure: measure.name, body },
          );
    });
  }

  /** The top of the sleeve against the armhole it is sewn into. */
  sleeveTops(): Finding[] {
    const top = this.named("sleeveTop") ?? this.named("sleeve");
    const armhole = this.named("armhole") ?? this.named("armholeDepth");
    if (!top || !armhole) return [];
    const times = armhole === this.named("armhole") ? 1 : 2;
    const cases = this.cases(top, (one, size) => {
      const made = armhole.made[size] ?? null;
      if (made === null) return null;
      const other = made * times;
      return one < other - SAME || one > other + EASED_IN ? { size, one, other } : null;
    });
    const other = times === 2 ? `twice the ${armhole.name}` : armhole.name;
    return this.tell(edgeLengthsDiffer, top, cases, { one: top.name, other });
  }

  /** How far the armhole seam lies beyond the shoulder, and whether it does so alike in all sizes. */
  shoulders(): Finding[] {
    const measure = this.named("shoulders");
    const body = this.body("cross back");
    if (!measure || !body) return [];
    const drops = this.cases(measure, (made, size) => {
      const cm = body[size] ?? null;
      return cm === null ? null : { size, drop: (made - cm) / 2 };
    });
    const sorted = [...drops].sort((a, b) => a.drop - b.drop);
    const [least, most] = [sorted[0], sorted[sorted.length - 1]];
    if (!least || !most || most.drop - least.drop <= DROP_SPREAD) return [];
    return this.tell(shoulderOff, measure, [least, most], { measure: measure.name });
  }

  private named(which: keyof typeof NAMES): FinishedMeasure | undefined {
    const names: readonly string[] = NAMES[which];
    return this.finished.find(
      ({ name, made }) => names.includes(plainName(name)) && made.some((cm) => cm !== null),
    );
  }

  private body(measurement: Measurement): PerSize<number | null> | null {
    const { body } = this.table;
    return body && bodyForWearing(body, measurement, this.sizes);
  }

  /** How far a measure stretches: by its fabric, across the stitches or along the rows that make it. */
  private stretchOf({ fabric, counts }: FinishedMeasure): number | null {
    const stretch = this.table.fabrics.find(({ name }) => name === fabric)?.gauge?.stretch;
    const first = this.table.counts.find(({ name }) => name === counts[0]);
    return (first?.of === "rows" ? stretch?.rows : stretch?.stitches) ?? null;
  }

  private cases<Case>(measure: FinishedMeasure, of: (made: number, size: number) => Case | null): Case[] {
    return measure.made.flatMap((made, size) => (made === null ? [] : (of(made, size) ?? [])));
  }

  /** Tells a finding of some sizes; the sizes go in by name. */
  private tell<
    Facts extends { readonly cases: readonly { readonly size: string }[] },
    Case extends { readonly size: number },
  >(
    kind: FindingKind<Facts>,
    measure: FinishedMeasure,
    cases: readonly Case[],
    facts: Omit<Facts, "cases">,
  ): Finding[] {
    if (cases.length === 0) return [];
    const sizes = cases.map(({ size }) => size);
    const named = cases.map((one) => ({ ...one, size: this.sizes[one.size] ?? "" }));
    return [
      kind.at({ span: this.spanOf(measure), piece: null, row: null, sizes }, {
        ...facts,
        cases: named,
      } as unknown as Facts),
    ];
  }

  private spanOf(measure: FinishedMeasure): Span {
    const planned = this.table.plan.find(({ name }) => name === measure.name);
    const eased = this.table.ease.find(({ measurement }) => measurement === measure.measurement);
    return (planned ?? eased ?? this.table).span;
  }
}

const GIRTHS: ReadonlySet<Measurement> = new Set(["bust", "waist", "hip", "upper arm", "neck"]);
