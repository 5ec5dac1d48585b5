import { LineIndex } from "../../src/base/index.ts";
import type { Kind, Mutation } from "./mutation.ts";
import { KINDS } from "./mutation.ts";
import { drawTable, share } from "./tables.ts";
import type { TaskDone } from "./worker.ts";

/** The changes of one sample in one round, with what came of those that were tried. */
export interface Round {
  readonly sample: string;
  readonly counts: "all" | "few";
  readonly text: string;
  readonly possible: readonly Mutation[];
  readonly tried: readonly { readonly change: Mutation; readonly done: TaskDone }[];
}

interface Tally {
  possible: number;
  harmless: number;
  tried: number;
  found: number;
  rightLine: number;
}

export function tally(rounds: readonly Round[], wanted: (round: Round, change: Mutation) => boolean): Tally {
  const sum = { possible: 0, harmless: 0, tried: 0, found: 0, rightLine: 0 };
  for (const round of rounds) {
    for (const change of round.possible) {
      if (!wanted(round, change)) continue;
      if (change.harmless) sum.harmless++;
      else sum.possible++;
    }
    for (const { change, done } of round.tried) {
      if (!wanted(round, change)) continue;
      sum.tried++;
      if (done.verdict?.found) sum.found++;
      if (done.verdict?.rightLine) sum.rightLine++;
    }
  }
  return sum;
}

const HEAD = [
  "faults",
  "harmless",
  "left out",
  "tried",
  "found",
  "share",
  "right line",
  "with few counts: tried",
  "found",
  "share",
  "right line",
];

/** Found and on the right line, by the rows that `keys` gives, and all together. */
export function faultTable(
  rounds: readonly Round[],
  title: string,
  keys: readonly string[],
  keyOf: (round: Round, change: Mutation) => string,
): string {
  const cells = (wanted: (round: Round, change: Mutation) => boolean): string[] => {
    const all = tally(rounds, (round, change) => round.counts === "all" && wanted(round, change));
    const few = tally(rounds, (round, change) => round.counts === "few" && wanted(round, change));
    return [
      ...[all.possible, all.harmless, all.possible - all.tried, all.tried, all.found].map(String),
      share(all.found, all.tried),
      share(all.rightLine, all.tried),
      ...[few.tried, few.found].map(String),
      share(few.found, few.tried),
      share(few.rightLine, few.tried),
    ];
  };
  const rows = keys.map((key) => [key, ...cells((round, change) => keyOf(round, change) === key)]);
  return drawTable(
    [title, ...HEAD],
    rows,
    ["all that is read", ...cells((_, change) => change.kind !== "number not read")],
    ["all", ...cells(() => true)],
  );
}

export const kindTable = (rounds: readonly Round[]): string =>
  faultTable(rounds, "kind of fault", Object.keys(KINDS), (_, change): Kind => change.kind);

export const sampleTable = (rounds: readonly Round[]): string =>
  faultTable(rounds, "sample", [...new Set(rounds.map(({ sample }) => sample))], ({ sample }) => sample);

/** How many changes each hand-written reason keeps out. */
export function harmlessTable(rounds: readonly Round[]): string {
  const reasons = new Map<string, number>();
  for (const { counts, possible } of rounds)
    for (const { harmless } of possible)
      if (harmless && counts === "all") reasons.set(harmless, (reasons.get(harmless) ?? 0) + 1);
  return drawTable(
    ["harmless, and not tried", "changes"],
    [...reasons].sort((a, b) => b[1] - a[1]).map(([reason, count]) => [reason, String(count)]),
  );
}

/** One line for every change that was not found, was found elsewhere, or that the engine threw at. */
export function listSurvivors(rounds: readonly Round[]): string {
  const lines: string[] = [];
  for (const { sample, counts, text, tried } of rounds) {
    const index = new LineIndex(text);
    for (const { change, done } of tried) {
      if (done.verdict?.rightLine) continue;
      const line = index.position(change.span.from).line;
      const where = `samples/${sample}.txt:${line}${counts === "few" ? " (few counts)" : ""}`;
      const near = text.slice(Math.max(0, change.span.from - 24), change.span.to + 24).replace(/\s+/g, " ");
      const elsewhere = done.verdict?.findings
        .map(({ code, at }) => `${code} on line ${index.position(at).line}`)
        .join(", ");
      const fate = done.threw
        ? `THREW ${done.threw}`
        : elsewhere
          ? `found elsewhere: ${elsewhere}`
          : "not found";
      lines.push(`${where}\t${change.kind}\t${change.words}\t${fate}\t… ${near} …`);
    }
  }
  return `${lines.join("\n")}\n`;
}
