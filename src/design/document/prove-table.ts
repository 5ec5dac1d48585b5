import { type Finding, valueAt } from "../../base/index.ts";
import { type PatternTree, type ReadOptions, readPattern } from "../../notation/index.ts";
import { breaksOf } from "../../sizing/index.ts";
import type { WorkedPattern } from "../../working/index.ts";
import type { AnsweredFinding, UnstampedAnswer } from "../proof.ts";
import { proveYarn } from "../prove-yarn.ts";
import { choiceOf } from "./choice.ts";
import type { DesignProof, ProvedCount, ProvedTie } from "./design-proof.ts";
import type { Count, DesignTable } from "./document.ts";
import { finishedMeasures } from "./finished.ts";
import { readTable } from "./read-table.ts";
import { findTable } from "./table.ts";
import { settleTableAnswers } from "./table-answers.ts";
import {
  countFindings,
  missFindings,
  pictureFindings,
  rowFindings,
  unknownCounts,
} from "./table-findings.ts";
import { wearabilityOf } from "./wearability.ts";
import { readWorkedCounts, type WorkedCount } from "./worked-counts.ts";

/** Reads the table of a text; null where it has none. */
export type TableReader = (text: string, options: ReadOptions) => DesignTable | null;

/** A reader that reads each table once, however often the rows below it change. */
export function tableReader(): TableReader {
  const known = new Map<string, DesignTable | null>();
  return (text, options) => {
    const place = findTable(text);
    if (place === null) return null;
    const head = text.slice(0, place.to);
    let table = known.get(head);
    if (table === undefined) {
      table = readTable(text, () => options.sizes ?? readPattern(text, options).sizes);
      // Sizes that only the rows show may change with the rows.
      if (table?.sizesSpan) known.set(head, table);
    }
    return table;
  };
}

/** What a proof says of a table, its findings, and the answers that stand in it. */
export interface TableProved {
  readonly proof: DesignProof;
  readonly findings: readonly Finding[];
  readonly answered: readonly AnsweredFinding[];
  readonly unstamped: readonly UnstampedAnswer[];
}

/** Holds the table against the worked rows. */
export function proveTable(table: DesignTable, tree: PatternTree, worked: WorkedPattern): TableProved {
  const read = readWorkedCounts(tree, worked, table.counts);
  const finished = finishedMeasures(table, read);
  const choice = choiceOf(table);
  const yarn = proveYarn(table, tree, worked);
  const broken = countFindings(table);
  const isBroken = broken.some(({ severity }) => severity === "error");
  const conflicts = choice?.findings.filter(({ severity }) => severity === "error") ?? [];
  const settled = settleTableAnswers(table, [
    ...table.findings,
    ...broken,
    ...rowFindings(table, read),
    ...missFindings(table, finished),
    ...wearabilityOf(table, finished),
    ...yarn.findings,
    // Where counts break their rules, that is said; a better choice then says nothing more.
    ...(isBroken ? conflicts : (choice?.findings ?? [])),
    ...(table.counts.length > 0 ? unknownCounts(tree.text, table) : []),
    ...pictureFindings(tree.text, table.to),
  ]);
  return {
    proof: {
      table,
      plan: table.plan,
      counts: table.counts.map((count, at) => provedCount(count, read[at])),
      finished,
      ties: provedTies(table, read),
      choice,
      yarn: yarn.yarn,
    },
    ...settled,
  };
}

function provedCount(count: Count, read: WorkedCount | undefined): ProvedCount {
  const { name, keySpan, of, fabric, values, multiple, unit, wanted } = count;
  const worked = read?.worked ?? wanted.map(() => null);
  return {
    name,
    span: keySpan,
    of,
    fabric,
    values,
    multiple: multiple?.multiple ?? 1,
    remainder: multiple?.remainder ?? 0,
    wanted: wanted.map((cm) => (cm === null || unit === null ? null : cm / unit)),
    worked,
    from: worked.every((value) => value === null) ? "table" : read?.trust ? "trust" : "rows",
    places: read?.places ?? [],
  };
}

/** Every tie, those written inside a count ("same as") too, on the counts as worked. */
function provedTies(table: DesignTable, read: readonly WorkedCount[]): ProvedTie[] {
  const byName = new Map(
    table.counts.map((count, at) => [count.name, { count, worked: read[at]?.worked }] as const),
  );
  const made = {
    values: (name: string) => {
      const one = byName.get(name);
      if (!one) return null;
      return table.sizes.map(
        (_, size) => one.worked?.[size] ?? (one.count.values && valueAt(one.count.values, size)) ?? null,
      );
    },
    unit: (name: string) => byName.get(name)?.count.unit ?? 0,
  };
  return table.rules.flatMap(({ rule, span }): ProvedTie[] => {
    if (rule.kind !== "equal" && rule.kind !== "sum") return [];
    return [
      {
        text: rule.words,
        span,
        measured: rule.kind === "sum" ? rule.measured : "counts",
        difference: breaksOf(rule, table.sizes.length, made).comesTo,
        within: rule.kind === "sum" ? (rule.within ?? 0) : 0,
      },
    ];
  });
}
