import { type PerSize, valueAt } from "../../base/index.ts";
import { MEASUREMENTS, type Measurement } from "../../bodies/index.ts";
import {
  addLengths,
  type Expression,
  exactly,
  type Length,
  type Lookup,
  lengthOf,
  namesIn,
  plusMinusOf,
  putInOrder,
  timesLength,
} from "../../sizing/index.ts";
import type { Count, DesignTable, Fabric, HangOfSize } from "./document.ts";
import { finishedOf, gaugeName, inPlan, lengthOfFabric, lookupIn } from "./plan.ts";
import type { WorkedCount } from "./worked-counts.ts";

/** Where a finished measurement has its counts from. */
export type MadeFrom = "rows" | "trust" | "table";

/** A measurement of the finished garment, cm, in each size. */
export interface FinishedMeasure {
  readonly name: string;
  /** The body measurement with its ease, where it is one. */
  readonly measurement: Measurement | null;
  readonly wanted: PerSize<number | null>;
  /** From the counts as worked and the washed gauge; null where no count makes it. */
  readonly made: PerSize<number | null>;
  /** made − wanted. */
  readonly missed: PerSize<number | null>;
  /** The measure lies within made ± this 19 times of 20, as far as the swatch was measured right. */
  readonly plusMinus: PerSize<number | null>;
  /** cm of `made` that it grows by when it hangs; null where it does not hang. */
  readonly hanging: PerSize<number | null> | null;
  /** Rows as worked, rows some of which are taken on trust, or the table alone where no row says the count. */
  readonly from: MadeFrom | null;
  /** The counts it comes from. */
  readonly counts: readonly string[];
  /** The fabric it lies in, where it is one alone. */
  readonly fabric: string | null;
}

interface Made {
  readonly lengths: PerSize<Length | null>;
  readonly counts: readonly string[];
}

/** Every measure of the plan and every body measurement with ease, as the counts make them. */
export function finishedMeasures(
  table: DesignTable,
  worked: readonly WorkedCount[],
): readonly FinishedMeasure[] {
  const maker = new Measurer(table, worked);
  const planned = table.plan.map((measure) =>
    maker.finished(measure.name, null, measure.wanted, inPlan(measure.name)),
  );
  const taken = new Set(table.plan.map(({ name }) => inPlan(name)));
  const eased = MEASUREMENTS.flatMap(({ name }) => {
    const ease = table.ease.find((one) => one.measurement === name);
    // A measure of the plan by the same name is the finished one.
    if (!ease || taken.has(inPlan(name)) || taken.has(inPlan(`finished ${name}`))) return [];
    const body = table.body?.of(name);
    const wanted = table.sizes.map((_, size) => {
      const cm = body?.[size] ?? null;
      return cm === null ? null : cm + (ease.wanted[size] ?? 0);
    });
    return [maker.finished(`finished ${name}`, name, wanted, finishedOf(name))];
  });
  return [...eased, ...planned];
}

class Measurer {
  private readonly made = new Map<string, Made>();
  private readonly shares: ReadonlyMap<string, number>;
  private readonly wanted: Lookup;
  /** cm that each measure that hangs has grown by, by its key. */
  private readonly grown = new Map<string, PerSize<number | null>>();
  private readonly byName: ReadonlyMap<string, WorkedCount>;

  constructor(
    private readonly table: DesignTable,
    worked: readonly WorkedCount[],
  ) {
    this.byName = new Map(worked.map((one) => [one.name, one]));
    this.shares = sharesOf(table.fabrics);
    this.wanted = lookupIn(new Map(), table);
    for (const count of table.counts) this.addCount(count);
    this.addTurnedRound();
    this.addSums();
  }

  finished(
    name: string,
    measurement: Measurement | null,
    wanted: PerSize<number | null>,
    key: string,
  ): FinishedMeasure {
    const made = this.made.get(key);
    const lengths = made?.lengths ?? wanted.map(() => null);
    const cm = lengths.map((length) => length?.cm ?? null);
    const fabrics = new Set(made?.counts.map((count) => this.countOf(count)?.fabric ?? ""));
    return {
      name,
      measurement,
      wanted,
      made: cm,
      missed: cm.map((one, size) => {
        const want = wanted[size] ?? null;
        return one === null || want === null ? null : one - want;
      }),
      plusMinus: lengths.map((length) => length && plusMinusOf(length, this.shares)),
      hanging: this.grown.get(key) ?? null,
      from: made ? this.fromOf(made.counts) : null,
      counts: made?.counts ?? [],
      fabric: fabrics.size === 1 ? ([...fabrics][0] ?? null) || null : null,
    };
  }

  private countOf(name: string): Count | undefined {
    return this.table.counts.find((count) => count.name === name);
  }

  private fromOf(counts: readonly string[]): MadeFrom {
    const worked = counts.map((name) => this.byName.get(name));
    if (worked.some((one) => one === undefined || one.worked.every((value) => value === null)))
      return "table";
    return worked.some((one) => one?.trust) ? "trust" : "rows";
  }

  /** A measure that a count makes; the first count along it is taken. */
  private addCount(count: Count): void {
    const { along, fabric, unit } = count;
    if (along === null || fabric === null || unit === null) return;
    const lengths = this.table.sizes.map((_, size): Length | null => {
      const value =
        this.byName.get(count.name)?.worked[size] ?? (count.values && valueAt(count.values, size)) ?? null;
      if (value === null) return null;
      const cm = value * unit + count.plus;
      const of = count.of === "rows" ? "rows" : "stitches";
      return { cm, restsOn: new Map([[gaugeName(fabric, of), cm]]) };
    });
    this.putLying(keyOf(along, count.name), { lengths, counts: [count.name] });
  }

  private put(key: string, made: Made): void {
    if (!this.made.has(key)) this.made.set(key, made);
  }

  /** What counts make is how a measure lies; what hangs is kept as it is worn. */
  private putLying(key: string, made: Made): void {
    const hang = this.table.hangs.find((one) => one.key === key);
    if (!hang || this.made.has(key)) {
      this.put(key, made);
      return;
    }
    const worn = made.lengths.map((length, size) => {
      const one = hang.perSize[size];
      return length && one ? wornLength(length, one) : length;
    });
    this.grown.set(
      key,
      worn.map((length, size) => {
        const lying = made.lengths[size];
        return length && lying ? length.cm - lying.cm : null;
      }),
    );
    this.put(key, { ...made, lengths: worn });
  }

  /**
   * Words turned round: where "body width" is half of the finished bust and 43.5 cm were made, the finished bust is 87 cm.
   * Each turn solves for the one measure in the words that nothing else makes; what it makes may help the next.
   */
  private addTurnedRound(): void {
    const said = [
      ...this.table.plan.map(({ name, expression }) => ({ key: inPlan(name), expression, lies: false })),
      ...this.table.counts.flatMap(({ name, along }) =>
        along && along.is !== "name" ? [{ key: keyOf(along, name), expression: along, lies: true }] : [],
      ),
    ].filter(({ expression }) => expression !== null && isStraight(expression));
    for (let found = true; found; ) {
      found = false;
      for (const { key, expression, lies } of said) {
        const made = this.made.get(key);
        if (!made || !expression) continue;
        const open = [...new Set(namesIn(expression).map(({ name }) => name))].filter(
          (name) => !isOfBody(name) && !this.made.has(name),
        );
        const [name] = open;
        if (name === undefined || open.length > 1 || name === key) continue;
        const others = namesIn(expression).flatMap((one) => this.made.get(one.name)?.counts ?? []);
        const lengths = made.lengths.map(
          (length, size) => length && this.solve(expression, name, length, size, lies),
        );
        this[lies ? "putLying" : "put"](name, { lengths, counts: [...new Set([...made.counts, ...others])] });
        found = true;
      }
    }
  }

  /** The length of one name in an expression that comes to `length`: on a straight line two points are enough. */
  private solve(
    expression: Expression,
    name: string,
    length: Length,
    size: number,
    lies: boolean,
  ): Length | null {
    const at = (cm: number): Length | null =>
      lengthOf(expression, size, {
        measure: (one, index) =>
          one === name ? exactly(cm) : lies ? this.lying(one, index) : this.known(one, index),
        fabric: (fabric, of, count) => lengthOfFabric(this.table.fabrics, fabric, of, count),
      });
    const [zero, one] = [at(0), at(1)];
    if (zero === null || one === null || one.cm === zero.cm) return null;
    return timesLength(addLengths(length, timesLength(zero, -1)), 1 / (one.cm - zero.cm));
  }

  /** A measure as made; one of the body, which nobody makes, as it is. */
  private known(name: string, size: number): Length | null {
    if (isOfBody(name)) return this.wanted.measure(name, size);
    return this.made.get(name)?.lengths[size] ?? null;
  }

  /** The same as it lies, which words of counts speak of. */
  private lying(name: string, size: number): Length | null {
    const worn = this.known(name, size);
    const grown = this.grown.get(name)?.[size] ?? 0;
    return worn && grown !== 0 ? timesLength(worn, (worn.cm - grown) / worn.cm) : worn;
  }

  /** "back length: rib depth plus hem to underarm plus armhole depth": a sum of what was made. */
  private addSums(): void {
    const byKey = new Map(
      this.table.plan.flatMap(({ name, expression }) =>
        expression ? [[inPlan(name), expression] as const] : [],
      ),
    );
    const { order } = putInOrder(
      new Map([...byKey].map(([key, expression]) => [key, namesIn(expression).map(({ name }) => name)])),
    );
    for (const key of order) {
      const expression = byKey.get(key);
      if (this.made.has(key) || !expression) continue;
      const names = namesIn(expression).map(({ name }) => name);
      // What leans on the body alone is only wanted: no count makes it.
      if (!names.some((name) => this.made.has(name))) continue;
      if (!names.every((name) => isOfBody(name) || this.made.has(name))) continue;
      const lengths = this.table.sizes.map((_, size) =>
        lengthOf(expression, size, {
          measure: (name, at) => this.known(name, at),
          fabric: (fabric, of, count) => lengthOfFabric(this.table.fabrics, fabric, of, count),
        }),
      );
      const counts = [...new Set(names.flatMap((name) => this.made.get(name)?.counts ?? []))];
      this.put(key, { lengths, counts });
    }
  }
}

/** A length with what each of its fabrics grows by. */
function wornLength(length: Length, { byGauge }: HangOfSize): Length {
  let { cm } = length;
  const restsOn = new Map(length.restsOn);
  for (const [gauge, share] of byGauge) {
    const own = restsOn.get(gauge) ?? 0;
    cm += own * share;
    restsOn.set(gauge, own * (1 + share));
  }
  return { cm, restsOn };
}

const isOfBody = (name: string): boolean => name.startsWith("body:") || name.startsWith("ease:");

/** Whether the words are a straight line in each of their measures: no larger or smaller of two. */
function isStraight(expression: Expression): boolean {
  switch (expression.is) {
    case "larger":
    case "smaller":
      return false;
    case "times":
      return isStraight(expression.what);
    case "sum":
      return expression.terms.every(({ what }) => isStraight(what));
    default:
      return true;
  }
}

/** A count along a measure by name makes that measure; one along other words makes them alone. */
const keyOf = (along: Expression, count: string): string =>
  along.is === "name" ? along.name : `along:${count}`;

function sharesOf(fabrics: readonly Fabric[]): ReadonlyMap<string, number> {
  const shares = new Map<string, number>();
  for (const { name, gauge } of fabrics) {
    if (gauge === null) continue;
    shares.set(gaugeName(name, "stitches"), gauge.stitchWidth.u / gauge.stitchWidth.value);
    shares.set(gaugeName(name, "rows"), gauge.rowHeight.u / gauge.rowHeight.value);
  }
  return shares;
}
