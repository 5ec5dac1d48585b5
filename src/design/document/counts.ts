import type { PerSize, SizeRun, Span } from "../../base/index.ts";
import { valueAt } from "../../base/index.ts";
import type { Cm } from "../../bodies/index.ts";
import {
  type Expression,
  fittingAround,
  type GradingRule,
  type Lookup,
  lengthOf,
  linearOf,
  type Multiple,
  namesIn,
  nearestName,
  plainName,
  putInOrder,
  readCountList,
  type Vocabulary,
} from "../../sizing/index.ts";
import {
  entryNotUnderstood,
  measureNotRead,
  measuresInCircle,
  nameUnknown,
  valuesAndSizes,
} from "../findings/index.ts";
import type { Count, Fabric, PlacedRule } from "./document.ts";
import { endOfLine } from "./edit-table.ts";
import { multipleOf } from "./fabrics.ts";
import { NameBook, readWords, tellSlip } from "./measures.ts";
import { type Plan, type PlanGround, tellMissing } from "./plan.ts";
import type { Entry, Table } from "./table.ts";
import { positive } from "./yarns.ts";

const KNOWN = {
  along: [],
  in: ["fabric"],
  of: [],
  multiple: ["repeat"],
  parity: [],
  order: [],
  "same as": [],
  "at least": [],
  "at most": [],
  held: ["hold"],
  weight: [],
  is: ["values"],
} as const;

/** The counts, their rules with them. */
export interface CountsRead {
  readonly counts: readonly Count[];
  readonly rules: readonly PlacedRule[];
  /** What words about counts may name. */
  readonly vocabulary: Vocabulary;
}

/** Reads the counts. Each is a map, or its values alone. */
export function readCounts(
  table: Table,
  entry: Entry | undefined,
  plan: Plan,
  ground: PlanGround,
): CountsRead {
  const entries = entry === undefined ? [] : table.entries(entry.node, entry.key);
  const book = new NameBook();
  for (const { key } of entries) book.add(key, key);
  const vocabulary: Vocabulary = { sizes: ground.sizes.length, names: book.names, about: "counts" };
  const read = entries.map((one) => new CountReader(table, one, plan, ground, vocabulary).read());
  const counts = followTies(
    table,
    read.map(({ count }) => count),
    ground.sizes,
  );
  return { counts, rules: read.flatMap(({ rules }) => rules), vocabulary };
}

/** The counts with what is wanted of them worked out anew, from lengths as they lie. */
export function wantedLying(counts: readonly Count[], lying: Lookup): Count[] {
  return counts.map((count) => ({
    ...count,
    wanted: wantedOf(count.along, count.plus, count.wanted.length, lying),
  }));
}

/** cm that the stitches or rows themselves are to make. */
function wantedOf(along: Expression | null, plus: Cm, sizes: number, lookup: Lookup): PerSize<Cm | null> {
  return Array.from({ length: sizes }, (_, size) => {
    const cm = along === null ? null : (lengthOf(along, size, lookup)?.cm ?? null);
    return cm === null ? null : Math.max(0, cm - plus);
  });
}

class CountReader {
  private readonly rules: PlacedRule[] = [];
  private readonly name: string;
  private readonly sizes: SizeRun;

  constructor(
    private readonly table: Table,
    private readonly entry: Entry,
    private readonly plan: Plan,
    private readonly ground: PlanGround,
    private readonly vocabulary: Vocabulary,
  ) {
    this.name = entry.key;
    this.sizes = ground.sizes;
  }

  read(): { readonly count: Count; readonly rules: readonly PlacedRule[] } {
    const { table, entry } = this;
    const isMap = table.isMap(entry.node);
    const own = isMap ? table.known(table.entries(entry.node, entry.key), KNOWN, entry.key) : {};
    const values = isMap ? this.values(own.is) : this.values(entry.node === null ? undefined : entry);
    const of = this.of(own.of);
    const fabric = this.fabric(own.in, own.along !== undefined);
    const multiple = own.multiple ? multipleOf(table, own.multiple) : null;
    const along = this.along(own.along);
    const { unit, plus } = unitOf(of, fabric, multiple);
    const bounded = this.bounds(own, unit);
    if (multiple && own.multiple && of !== "repeats")
      this.rule(
        {
          kind: "multiple",
          of: this.name,
          ...multiple,
          words: `${this.name} is a multiple of ${sayMultiple(multiple)}`,
        },
        own.multiple,
      );
    if (own.parity) this.parity(own.parity);
    const order = own.order ? this.order(own.order) : null;
    if (own.held) this.held(own.held);
    const sameAs = own["same as"] ? this.sameAs(own["same as"]) : null;
    return {
      count: {
        name: this.name,
        span: entry.span,
        keySpan: entry.keySpan,
        of,
        fabric: fabric?.name ?? null,
        along,
        unit,
        plus,
        wanted: wantedOf(along, plus, this.sizes.length, this.plan.wanted),
        multiple,
        order,
        weight: positive(table, own.weight) ?? 1,
        sameAs,
        values: values?.values ?? null,
        valuesSpan: values?.span ?? null,
        insertAt: this.insertAt(isMap),
      },
      rules: [...this.rules, ...bounded],
    };
  }

  private rule(rule: GradingRule, { span }: { readonly span: Span }): void {
    this.rules.push({ rule, span, count: this.name });
  }

  private tell(entry: Entry, wants: string): void {
    this.table.tell(entryNotUnderstood, entry.span, {
      entry: entry.key,
      found: this.table.excerpt(entry.node),
      wants,
    });
  }

  private values(
    entry: Entry | undefined,
  ): { readonly values: PerSize<number | null>; readonly span: Span } | null {
    if (entry === undefined || entry.node === null) return null;
    const { table, sizes } = this;
    const said = table.isList(entry.node)
      ? table.items(entry.node).map((item) => table.wordsOf(item)?.text ?? "")
      : null;
    const wants = "Whole numbers belong here, one for each size.";
    const words =
      said === null
        ? table.words(entry, wants)
        : { text: said.join(" "), span: entry.span, place: () => entry.span };
    if (words === null) return null;
    const { list, slip } = readCountList(words.text);
    if (slip) {
      tellSlip(table, words, this.name, slip, { about: "counts", sizes: sizes.length });
      return null;
    }
    const has = list.values.length;
    if (has !== 1 && has !== sizes.length) {
      table.tell(valuesAndSizes, words.span, { entry: this.name, has, sizes: sizes.length });
      return null;
    }
    const values = sizes.map((_, size) => valueAt(list.values, size) ?? null);
    return { values, span: words.span };
  }

  private of(entry: Entry | undefined): Count["of"] {
    if (entry === undefined)
      return /\b(?:rows?|rounds?|rnds?)$/i.test(this.name.trim()) ? "rows" : "stitches";
    const words = this.table.words(entry, "A count is of stitches, rows or repeats.");
    const plain = words?.text.trim().toLowerCase() ?? "";
    if (/^(?:stitch(?:es)?|sts?)$/.test(plain)) return "stitches";
    if (/^(?:rows?|rounds?|rnds?)$/.test(plain)) return "rows";
    if (/^repeats?$/.test(plain)) return "repeats";
    if (words) this.tell(entry, "A count is of stitches, rows or repeats.");
    return "stitches";
  }

  private fabric(entry: Entry | undefined, needed: boolean): Fabric | null {
    const { fabrics } = this.ground;
    if (entry === undefined) {
      if (needed && fabrics.length > 1)
        this.table.tell(entryNotUnderstood, this.entry.keySpan, {
          entry: this.name,
          found: "",
          wants: "There are several fabrics: say which one it is counted in, as in { in: bump }.",
        });
      if (needed && fabrics.length === 0)
        this.table.tell(entryNotUnderstood, this.entry.keySpan, {
          entry: this.name,
          found: "",
          wants: "There is no fabric to count it in: a swatch belongs under fabrics.",
        });
      return needed && fabrics.length === 1 ? (fabrics[0] ?? null) : null;
    }
    const words = this.table.words(entry, "The name of a fabric belongs here.");
    if (words === null) return null;
    const found = fabrics.find(({ name }) => plainName(name) === plainName(words.text));
    if (!found)
      this.table.tell(nameUnknown, words.span, {
        name: words.text.trim(),
        what: "fabric",
        where: null,
        near: nearestName(
          words.text,
          fabrics.map(({ name }) => name),
        ),
      });
    else if (found.gauge === null)
      this.table.tell(entryNotUnderstood, words.span, {
        entry: entry.key,
        found: words.text.trim(),
        wants: `${found.name} has no swatch, so what a stitch of it measures is not known.`,
      });
    return found ?? null;
  }

  private along(entry: Entry | undefined): Expression | null {
    if (entry === undefined) return null;
    const words = this.table.words(entry, "The measure that the count makes belongs here.");
    const expression = words && readWords(this.table, words, this.name, this.plan.vocabulary);
    if (words && expression) tellMissing(this.table, words, expression, this.name, this.ground);
    return expression;
  }

  private parity(entry: Entry): void {
    const words = this.table.words(entry, "Parity is even or odd.")?.text.trim().toLowerCase();
    if (words === undefined) return;
    const side = /^ends? (?:on|with) an? (rs|ws) row$/.exec(words)?.[1];
    const remainder = words === "even" || side === "ws" ? 0 : words === "odd" || side === "rs" ? 1 : null;
    if (remainder === null) {
      this.tell(entry, "Parity is even or odd; ends on a WS row is even, where Row 1 is a RS row.");
      return;
    }
    this.rule(
      {
        kind: "multiple",
        of: this.name,
        multiple: 2,
        remainder,
        words: `${this.name} is ${remainder === 0 ? "even" : "odd"}`,
      },
      entry,
    );
  }

  private order(entry: Entry): "up" | "down" | "any" | null {
    const words = this.table.words(entry, "The order is up, down or any.")?.text.trim().toLowerCase();
    if (words === undefined) return null;
    if (words !== "up" && words !== "down" && words !== "any") {
      this.tell(entry, "The order is up, down or any.");
      return null;
    }
    if (words !== "any")
      this.rule(
        {
          kind: "order",
          of: this.name,
          direction: words,
          words: `${this.name} goes ${words} from size to size`,
        },
        entry,
      );
    return words;
  }

  /** "at least" and "at most": counts, or a measure that is turned into counts. */
  private bounds(own: Partial<Record<keyof typeof KNOWN, Entry>>, unit: Cm | null): PlacedRule[] {
    const kinds = ["at least", "at most"] as const;
    return kinds.flatMap((kind): PlacedRule[] => {
      const entry = own[kind];
      if (entry === undefined) return [];
      const words = this.table.words(entry, "A count or a measure belongs here.");
      if (words === null) return [];
      const said = `${this.name} is ${kind} ${words.text.trim()}`;
      const { list } = readCountList(words.text);
      if (list) {
        if (list.values.length !== 1 && list.values.length !== this.sizes.length) {
          this.table.tell(valuesAndSizes, words.span, {
            entry: `${this.name}: ${kind}`,
            has: list.values.length,
            sizes: this.sizes.length,
          });
          return [];
        }
        return [
          {
            rule: { kind, of: this.name, counts: list.values, words: said },
            span: entry.span,
            count: this.name,
          },
        ];
      }
      const expression = readWords(this.table, words, `${this.name}: ${kind}`, this.plan.vocabulary);
      if (expression === null) return [];
      tellMissing(this.table, words, expression, this.name, this.ground);
      const counts = this.sizes.map((_, size) => {
        const cm = lengthOf(expression, size, this.plan.wanted)?.cm ?? null;
        if (cm === null || unit === null) return null;
        const { below, above } = fittingAround(cm / unit, { multiple: 1, remainder: 0 });
        return Math.max(0, kind === "at least" ? above : below);
      });
      return [{ rule: { kind, of: this.name, counts, words: said }, span: entry.span, count: this.name }];
    });
  }

  /** "held: { M: 77 }": counts that grading leaves alone. */
  private held(entry: Entry): void {
    for (const one of this.table.entries(entry.node, entry.key)) {
      const size = this.sizes.findIndex((name) => name.toLowerCase() === one.key.trim().toLowerCase());
      if (size === -1) {
        this.table.tell(nameUnknown, one.keySpan, {
          name: one.key,
          what: "size",
          where: "the sizes",
          near: null,
        });
        continue;
      }
      const words = this.table.words(one, "A whole number belongs here.");
      if (words === null) continue;
      if (!/^\d{1,6}$/.test(words.text.trim())) {
        this.tell(one, "A whole number belongs here.");
        continue;
      }
      const count = Number(words.text);
      this.rule(
        {
          kind: "hold",
          of: this.name,
          size,
          count,
          words: `${this.name} is held at ${count} in ${this.sizes[size]}`,
        },
        { span: { from: one.keySpan.from, to: one.span.to } },
      );
    }
  }

  private sameAs(entry: Entry): Expression | null {
    const words = this.table.words(entry, "A count belongs here, or counts joined by plus and minus.");
    const expression = words && readWords(this.table, words, this.name, this.vocabulary);
    if (!words || !expression) return null;
    const line = linearOf(expression);
    const plus = line?.plus[0] ?? 0;
    if (line === null || line.plus.some((one) => one !== plus)) {
      this.table.tell(measureNotRead, words.span, {
        entry: this.name,
        problem:
          "A count is the same as other counts joined by plus and minus, with one number for all sizes.",
      });
      return null;
    }
    const said = `${this.name} is ${words.text.trim()}`;
    const terms = [...line.times];
    const [only] = terms;
    if (terms.some(([name]) => name === this.name)) return expression;
    if (terms.length === 1 && only?.[1] === 1 && Number.isInteger(plus))
      this.rule({ kind: "equal", of: this.name, as: only[0], plus, words: said }, entry);
    else
      this.rule(
        {
          kind: "sum",
          terms: [{ of: this.name, times: 1 }, ...terms.map(([of, times]) => ({ of, times: -times }))],
          makes: plus,
          measured: "counts",
          words: said,
        },
        entry,
      );
    return expression;
  }

  /** Where "is: ..." goes: behind the last entry in braces, or on a line of its own. */
  private insertAt(isMap: boolean): Count["insertAt"] {
    const { table, entry } = this;
    if (!isMap) return { at: entry.keySpan.to + 1, before: " ", after: "" };
    const span = table.spanOf(entry.node);
    if (table.isInBraces(entry.node)) {
      const close = table.text.lastIndexOf("}", span.to - 1);
      const blanks = /[ \t]*$/.exec(table.text.slice(span.from, close))?.[0].length ?? 0;
      const comma = /,\s*$/.test(table.text.slice(span.from, close)) ? " " : ", ";
      return { at: close - blanks, before: `${comma}is: `, after: blanks > 0 ? "" : " " };
    }
    const line = table.text.lastIndexOf("\n", span.from) + 1;
    const indent = /^[ ]*/.exec(table.text.slice(line, span.from))?.[0] ?? "";
    return { at: endOfLine(table.text, span.to), before: `\n${indent}is: `, after: "" };
  }
}

/** cm that one measures, and what stitches outside the repeats add. */
function unitOf(
  of: Count["of"],
  fabric: Fabric | null,
  multiple: Multiple | null,
): { readonly unit: Cm | null; readonly plus: Cm } {
  const gauge = fabric?.gauge;
  if (!gauge) return { unit: null, plus: 0 };
  if (of === "rows") return { unit: gauge.rowHeight.value, plus: 0 };
  if (of === "stitches") return { unit: gauge.stitchWidth.value, plus: 0 };
  const repeat = multiple ?? fabric.multiple ?? { multiple: 1, remainder: 0 };
  return {
    unit: repeat.multiple * gauge.stitchWidth.value,
    plus: repeat.remainder * gauge.stitchWidth.value,
  };
}

export const sayMultiple = ({ multiple, remainder }: Multiple): string =>
  remainder === 0 ? `${multiple}` : `${multiple} ${remainder > 0 ? "plus" : "minus"} ${Math.abs(remainder)}`;

/** Counts without values of their own get them from the counts they are the same as; circles are told. */
function followTies(table: Table, counts: readonly Count[], sizes: SizeRun): Count[] {
  const { order, circles } = putInOrder(
    new Map(
      counts.map(({ name, sameAs, values }) => [
        name,
        sameAs && values === null ? namesIn(sameAs).map((use) => use.name) : [],
      ]),
    ),
  );
  for (const circle of circles) {
    const first = counts.find(({ name }) => name === circle[0]);
    if (first) table.tell(measuresInCircle, first.keySpan, { names: circle });
  }
  const circular = new Set(circles.flat());
  const values = new Map(counts.map((count) => [count.name, count.values] as const));
  for (const name of order) {
    const count = counts.find((one) => one.name === name);
    if (!count || count.values !== null || count.sameAs === null || circular.has(name)) continue;
    const line = linearOf(count.sameAs);
    if (line === null) continue;
    const follows = sizes.map((_, size) => {
      let sum = valueAt(line.plus, size) ?? 0;
      for (const [of, times] of line.times) {
        const value = values.get(of)?.[size] ?? null;
        if (value === null) return null;
        sum += times * value;
      }
      const rounded = Math.round(sum);
      return Math.abs(sum - rounded) < 1e-9 && rounded >= 0 ? rounded : null;
    });
    if (follows.some((value) => value !== null)) values.set(name, follows);
  }
  return counts.map((count) => ({ ...count, values: values.get(count.name) ?? null }));
}
