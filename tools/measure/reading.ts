import type { Finding } from "../../src/base/index.ts";
import { LineIndex } from "../../src/base/index.ts";
import { type Proof, proveDesign } from "../../src/design/index.ts";
import { serious } from "./judge.ts";
import { drawTable, share } from "./tables.ts";

/** A sample as it stands, proved. */
export interface Clean {
  readonly sample: string;
  readonly text: string;
  readonly proof: Proof;
  readonly ms: number;
}

export function proveClean(sample: string, text: string): Clean {
  const start = performance.now();
  const proof = proveDesign(text);
  return { sample, text, proof, ms: performance.now() - start };
}

/** Lines read and counts proved; rows are the lines that end with a count in some size, or should. */
export function readingTable(samples: readonly Clean[]): string {
  const cells = (those: readonly Clean[]): string[] => {
    const sum = (of: (clean: Clean) => number): number =>
      those.reduce((total, clean) => total + of(clean), 0);
    const rows = sum(({ proof }) => rowsOf(proof).length);
    const lines = sum(({ proof }) => proof.coverage.instructionLines);
    const read = sum(({ proof }) => proof.coverage.read);
    const proved = sum(({ proof }) => rowsOf(proof).filter((line) => line.proved).length);
    const printed = sum(({ proof }) => countsOf(proof).length);
    const held = sum(({ proof }) => countsOf(proof).filter((proved) => proved).length);
    return [
      ...[lines, read].map(String),
      share(read, lines),
      ...[rows, proved].map(String),
      share(proved, rows),
      ...[printed, held].map(String),
      share(held, printed),
      ...[
        sum(({ proof }) => proof.coverage.onTrust),
        sum(({ proof }) => of(proof, "error")),
        sum(({ proof }) => of(proof, "warning")),
      ].map(String),
      `${Math.round(sum(({ ms }) => ms))} ms`,
    ];
  };
  return drawTable(
    [
      "sample",
      "lines",
      "read",
      "share",
      "rows",
      "proved",
      "share",
      "printed counts",
      "proved",
      "share",
      "on trust",
      "errors",
      "warnings",
      "once, cold",
    ],
    samples.map((clean) => [clean.sample, ...cells([clean])]),
    ["all", ...cells(samples)],
  );
}

const rowsOf = (proof: Proof) =>
  proof.worked.pieces.flatMap(({ lines }) => lines.filter(({ kind }) => kind !== "other"));

const of = (proof: Proof, severity: Finding["severity"]): number =>
  proof.findings.filter((one) => one.severity === severity).length;

/** For every line that prints a count, in any size, whether it was proved. */
const countsOf = (proof: Proof): boolean[] =>
  proof.worked.pieces.flatMap(({ lines }) =>
    lines.filter(({ printed, printedKinds }) => printed || printedKinds).map(({ proved }) => proved),
  );

/** Errors and warnings of texts that are right: every one is a false alarm. */
export function listAlarms(samples: readonly Clean[]): string {
  return samples
    .flatMap(({ sample, text, proof }) => {
      const index = new LineIndex(text);
      return serious(proof.findings).map(
        ({ code, severity, span, what }) =>
          `samples/${sample}.txt:${index.position(span.from).line}\t${severity}\t${code}\t${what}`,
      );
    })
    .join("\n")
    .concat("\n");
}

/** False alarms by code, most first. */
export function alarmTable(samples: readonly Clean[]): string {
  const byCode = new Map<string, number>();
  for (const { proof } of samples)
    for (const { code, severity } of serious(proof.findings))
      byCode.set(`${severity} ${code}`, (byCode.get(`${severity} ${code}`) ?? 0) + 1);
  const rows = [...byCode].sort((a, b) => b[1] - a[1]).map(([code, count]) => [code, String(count)]);
  return drawTable(["false alarms on the clean samples (goal 0)", "findings"], rows, [
    "all",
    String([...byCode.values()].reduce((a, b) => a + b, 0)),
  ]);
}
