import { type Finding, namesOf, type Span, valueAt } from "../../base/index.ts";
import { breaksOf, nearestName, plainName, type WrittenCounts } from "../../sizing/index.ts";
import {
  countBreaksRule,
  countWithoutValues,
  missesPlan,
  nameUnknown,
  pictureWithoutWords,
  rowsComeOtherwise,
} from "../findings/index.ts";
import type { DesignTable } from "./document.ts";
import type { FinishedMeasure } from "./finished.ts";
import type { WorkedCount } from "./worked-counts.ts";

const at = (span: Span, sizes: readonly number[] = []) => ({ span, piece: null, row: null, sizes });

/** How the rules take the counts as they are written. */
export function writtenCounts({ counts }: Pick<DesignTable, "counts">): WrittenCounts {
  const byName = new Map(counts.map((count) => [count.name, count] as const));
  return {
    values: (name) => byName.get(name)?.values ?? null,
    unit: (name) => byName.get(name)?.unit ?? 0,
  };
}

/** Counts without values, and counts that break a rule of their own. */
export function countFindings(table: DesignTable): Finding[] {
  const written = writtenCounts(table);
  const missing = table.counts
    .filter(({ values }) => values === null)
    .map((count) => countWithoutValues.at(at(count.keySpan), { count: count.name }));
  const broken = table.rules.flatMap(({ rule, span, count }) => {
    const { sizes, comesTo } = breaksOf(rule, table.sizes.length, written);
    if (sizes.length === 0) return [];
    const name = count ?? ("of" in rule ? rule.of : (rule.terms[0]?.of ?? ""));
    const values = written.values(name);
    const isSum = rule.kind === "sum" || rule.kind === "equal";
    return [
      countBreaksRule.at(at(span, sizes), {
        count: name,
        rule: rule.words,
        cases: sizes.map((size) => ({
          size: table.sizes[size] ?? "",
          written: values?.[size] ?? 0,
          off: isSum ? (comesTo[size] ?? null) : null,
        })),
      }),
    ];
  });
  return [...missing, ...broken];
}

/** Rows that are told to be so many in all, "{sleeve rows} rows", and are not. */
export function rowFindings(table: DesignTable, read: readonly WorkedCount[]): Finding[] {
  return table.counts.flatMap(({ name, of, values }, index) => {
    const { worked, places } = read[index] ?? { worked: [], places: [] };
    const [place] = places;
    if (of !== "rows" || values === null || place === undefined) return [];
    const sizes = worked.flatMap((rows, size) => {
      const written = valueAt(values, size) ?? null;
      return rows === null || written === null || rows === written ? [] : [size];
    });
    if (sizes.length === 0) return [];
    const cases = sizes.map((size) => ({
      size: table.sizes[size] ?? "",
      written: valueAt(values, size) as number,
      worked: worked[size] as number,
    }));
    return [rowsComeOtherwise.at(at(place, sizes), { count: name, cases })];
  });
}

/** Finished body measurements that miss the plan by more than half of the step to the next size (trade handbook, 2.5). */
export function missFindings(table: DesignTable, finished: readonly FinishedMeasure[]): Finding[] {
  return finished.flatMap(({ name, measurement, wanted, made }) => {
    if (measurement === null) return [];
    const sizes = made.flatMap((cm, size) => {
      const want = wanted[size] ?? null;
      if (cm === null || want === null) return [];
      const next = wanted[cm > want ? size + 1 : size - 1] ?? wanted[cm > want ? size - 1 : size + 1] ?? null;
      const step = next === null ? 0 : Math.abs(next - want);
      return step > 0 && Math.abs(cm - want) > step / 2 ? [size] : [];
    });
    if (sizes.length === 0) return [];
    const ease = table.ease.find((one) => one.measurement === measurement);
    const names = namesOf(table.sizes, sizes);
    return [
      missesPlan.at(at(ease?.span ?? table.span, sizes), {
        measure: name,
        cases: sizes.map((size, i) => ({
          size: names[i] ?? "",
          wanted: wanted[size] as number,
          made: made[size] as number,
        })),
      }),
    ];
  });
}

const BRACES = /\{([^{}\n]{1,200})\}/g;

/** Names in braces that are no count of the table. */
export function unknownCounts(text: string, table: DesignTable): Finding[] {
  const known = new Set(table.counts.map(({ name }) => plainName(name)));
  return [...text.slice(table.to).matchAll(BRACES)].flatMap((found) => {
    const words = found[1] as string;
    if (!/^\s*[a-z]/i.test(words) || known.has(plainName(words))) return [];
    let offset = table.to + found.index + 1;
    return words.split(/(\s+[+-]\s+)/).flatMap((part, i) => {
      const from = offset + (part.length - part.trimStart().length);
      offset += part.length;
      const name = part.trim();
      if (i % 2 === 1 || /^\d+$/.test(name) || known.has(plainName(name))) return [];
      const near = nearestName(
        name,
        table.counts.map((count) => count.name),
      );
      return [
        nameUnknown.at(at({ from, to: from + name.length }), { name, what: "count", where: null, near }),
      ];
    });
  });
}

const PICTURE = /!\[([^\]\n]{0,400})\]\(\s*<?([^)\s>]{1,400})>?[^)\n]{0,200}\)/g;

/** Pictures without words for who cannot see them. */
export function pictureFindings(text: string, from: number): Finding[] {
  return [...text.slice(from).matchAll(PICTURE)].flatMap((found) => {
    if ((found[1] as string).trim() !== "") return [];
    const start = from + found.index;
    return [
      pictureWithoutWords.at(at({ from: start, to: start + found[0].length }), {
        picture: found[2] as string,
      }),
    ];
  });
}
