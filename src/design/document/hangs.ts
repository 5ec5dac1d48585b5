import type { PerSize } from "../../base/index.ts";
import { valueAt } from "../../base/index.ts";
import { type Expression, growthAlong, lengthOf, nearestName, plainName } from "../../sizing/index.ts";
import { entryNotUnderstood, hangHeavier, hangingNotSaid, nameUnknown } from "../findings/index.ts";
import type { Count, Fabric, Hang, HangOfSize } from "./document.ts";
import { readWords } from "./measures.ts";
import { gaugeName, inPlan, type Plan, type PlanGround, tellMissing } from "./plan.ts";
import type { Entry, Table } from "./table.ts";

const KNOWN = { round: ["around"], below: ["with"] } as const;
const WANTS =
  "What hangs is a measure of the plan, and behind it stands how wide it is round, as in hem to underarm: finished bust.";

/**
 * The lengths that grow when the garment is worn: "hem to underarm: finished bust", or "{ round: twice width across shoulders,
 * below: hem to underarm and 120 g }". Each bears what hangs below it and the half of itself.
 */
export function readHangs(
  table: Table,
  entry: Entry | undefined,
  plan: Plan,
  ground: PlanGround,
  counts: readonly Count[],
): Hang[] {
  const { fabrics, sizes } = ground;
  if (entry === undefined) {
    for (const { name, span, gauge } of fabrics)
      if (gauge && gauge.growth.length > 0 && counts.some((one) => one.fabric === name && one.of === "rows"))
        table.tell(hangingNotSaid, span, { fabric: name });
    return [];
  }
  const hangs: Hang[] = [];
  for (const one of table.entries(entry.node, entry.key)) {
    const measure = plan.measures.find(({ name }) => plainName(name) === plainName(one.key));
    if (measure === undefined) {
      const near = nearestName(
        one.key,
        plan.measures.map(({ name }) => name),
      );
      table.tell(nameUnknown, one.keySpan, { name: one.key, what: "measure", where: "the plan", near });
      continue;
    }
    const isMap = table.isMap(one.node);
    const own = isMap ? table.known(table.entries(one.node, one.key), KNOWN, one.key) : { round: one };
    const words = own.round ? table.words(own.round, WANTS) : null;
    const round = words && readWords(table, words, one.key, plan.vocabulary);
    if (!words || !round) {
      if (!own.round)
        table.tell(entryNotUnderstood, one.keySpan, { entry: one.key, found: "", wants: WANTS });
      continue;
    }
    tellMissing(table, words, round, one.key, ground);
    const below = own.below ? readBelow(table, own.below, hangs, sizes.length) : sizes.map(() => 0);
    const made = partsOf(measure.name, counts, fabrics);
    const weightless = made.find(({ fabric }) => fabric.gauge?.gramsPerCm2 == null)?.fabric;
    const hung = made.filter(({ of, fabric }) => of === "rows" && (fabric.gauge?.growth.length ?? 0) > 0);
    const problem =
      hung.length === 0
        ? "No count of rows makes it in a fabric whose swatch was hung, so how it grows is not known."
        : weightless
          ? `The swatch of ${weightless.name} was not weighed, so how much hangs is not known: say its grams.`
          : null;
    if (problem !== null) {
      table.tell(entryNotUnderstood, one.keySpan, { entry: one.key, found: "", wants: problem });
      continue;
    }
    const perSize = sizes.map((_, size): HangOfSize | null => {
      const wanted = measure.wanted[size] ?? null;
      const around = lengthOf(round, size, plan.wanted)?.cm ?? null;
      if (wanted === null || around === null || !(around > 0) || !(wanted > 0)) return null;
      return hangOf(made, size, plan, wanted, around, valueAt(below, size) ?? 0);
    });
    const hang: Hang = { measure: measure.name, key: inPlan(measure.name), span: one.keySpan, perSize };
    hangs.push(hang);
    tellHeavier(table, hang, hung, sizes);
  }
  return hangs;
}

/** A length of one fabric inside a measure; `cm` is what words say of it, null for what is left of the measure. */
interface PartOfMeasure {
  readonly fabric: Fabric;
  readonly of: "stitches" | "rows";
  readonly length: Expression | null;
}

/**
 * What a measure is made of: the count that is said by it makes the most of it, and what is taken off in its words, "hem to
 * underarm minus rib depth minus 1 row in bump", is the rest.
 */
function partsOf(name: string, counts: readonly Count[], fabrics: readonly Fabric[]): PartOfMeasure[] {
  const key = inPlan(name);
  const fabricOf = (of: string | null): Fabric | undefined =>
    of === null ? undefined : fabrics.find((one) => plainName(one.name) === plainName(of));
  const count = counts.find(
    ({ along, of }) =>
      of === "rows" &&
      (along?.is === "name"
        ? along.name === key
        : along?.is === "sum" &&
          along.terms.some(({ sign, what }) => sign === 1 && what.is === "name" && what.name === key)),
  );
  const main = fabricOf(count?.fabric ?? null);
  if (!count?.along || !main) return [];
  const parts: PartOfMeasure[] = [{ fabric: main, of: "rows", length: null }];
  if (count.along.is !== "sum") return parts;
  for (const { sign, what } of count.along.terms) {
    if (sign === 1) continue;
    if (what.is === "fabric") {
      const fabric = fabricOf(what.fabric);
      // Rows of the same fabric are no part of their own.
      if (fabric && (fabric !== main || what.of !== "rows"))
        parts.push({ fabric, of: what.of, length: what });
    } else if (what.is === "name") {
      const other = counts.find(({ along }) => along?.is === "name" && along.name === what.name);
      const fabric = fabricOf(other?.fabric ?? null) ?? main;
      parts.push({ fabric, of: other?.of === "rows" ? "rows" : "stitches", length: what });
    } else parts.push({ fabric: main, of: "stitches", length: what });
  }
  return parts;
}

/** How a measure hangs in one size: what of it grows, by how much, and under which load. */
function hangOf(
  parts: readonly PartOfMeasure[],
  size: number,
  { wanted: lookup }: Plan,
  worn: number,
  round: number,
  below: number,
): HangOfSize {
  const said = parts.map(({ length }) => (length ? (lengthOf(length, size, lookup)?.cm ?? 0) : null));
  const rest = said.reduce<number>((sum, cm) => sum + (cm ?? 0), 0);
  let growth = 0;
  let result: HangOfSize = { growth: 0, byGauge: new Map(), grams: 0, gramsPerCm: 0 };
  // How long it is to be lying depends on how much it grows, and that on its weight: a few rounds settle it.
  for (let settle = 0; settle < 30; settle++) {
    const lying = worn / (1 + growth);
    const lengths = said.map((cm) => cm ?? Math.max(0, lying - rest));
    // Fabrics that were not hung bear nothing here: they are taken to lie below, as a rib at the hem does.
    const hangs = parts.map(({ fabric, of }) => of === "rows" && (fabric.gauge?.growth.length ?? 0) > 0);
    const weigh = (at: number): number => (lengths[at] ?? 0) * (parts[at]?.fabric.gauge?.gramsPerCm2 ?? 0);
    let load = below / round + parts.reduce((sum, _, at) => sum + (hangs[at] ? 0 : weigh(at)), 0);
    const byGauge = new Map<string, number>();
    let added = 0;
    for (const [at, { fabric }] of parts.entries()) {
      if (!hangs[at] || !fabric.gauge) continue;
      const share = growthAlong(fabric.gauge.growth, load, load + weigh(at));
      byGauge.set(gaugeName(fabric.name, "rows"), share);
      added += (lengths[at] ?? 0) * share;
      load += weigh(at);
    }
    const next = lying > 0 ? added / lying : 0;
    result = { growth: next, byGauge, grams: load * round, gramsPerCm: load };
    if (Math.abs(next - growth) < 1e-12) break;
    growth = next;
  }
  return result;
}

const GRAMS = /^(\d{1,5}(?:\.\d{1,2})?(?:[\s,]+\d{1,5}(?:\.\d{1,2})?)*)\s*g(?:rams?)?$/i;

/** Grams that hang below besides: "120 g", "120 130 140 g", the name of a measure that hangs, or some of them with "and". */
function readBelow(table: Table, entry: Entry, hangs: readonly Hang[], sizes: number): PerSize<number> {
  const wants = "What hangs below is a weight, as in 120 g, or a measure that hangs and stands further up.";
  const words = table.words(entry, wants);
  const sum = Array.from({ length: sizes }, () => 0);
  if (words === null) return sum;
  for (const part of words.text.split(/\s+(?:and|plus)\s+/i)) {
    const grams = GRAMS.exec(part.trim())?.[1]
      ?.split(/[\s,]+/)
      .map(Number);
    const hang = hangs.find(({ measure }) => plainName(measure) === plainName(part));
    if (grams && (grams.length === 1 || grams.length === sizes))
      for (const size of sum.keys()) sum[size] = (sum[size] ?? 0) + (valueAt(grams, size) ?? 0);
    else if (hang)
      for (const size of sum.keys()) sum[size] = (sum[size] ?? 0) + (hang.perSize[size]?.grams ?? 0);
    else table.tell(entryNotUnderstood, words.span, { entry: entry.key, found: part.trim(), wants });
  }
  return sum;
}

/** Sizes in which more hangs on the fabric than its swatch was hung with. */
function tellHeavier(
  table: Table,
  { measure, span, perSize }: Hang,
  hung: readonly PartOfMeasure[],
  sizes: readonly string[],
): void {
  const [first] = hung;
  const most = first?.fabric.gauge?.growth.at(-1)?.gramsPerCm ?? 0;
  const width = first?.fabric.swatches.find(({ readings }) => readings.length > 0)?.readings[0]?.width ?? 0;
  const over = perSize.flatMap((one, size) => (one !== null && one.gramsPerCm > most * 1.02 ? [size] : []));
  if (!first || over.length === 0) return;
  const loads = over.map((size) => perSize[size]?.gramsPerCm ?? 0);
  const cases = over.map((size, i) => ({ size: sizes[size] ?? "", grams: (loads[i] ?? 0) * width }));
  table.tell(hangHeavier, span, { measure, fabric: first.fabric.name, hungWith: most * width, cases }, over);
}
