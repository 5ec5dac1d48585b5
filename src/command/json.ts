import manifest from "../../package.json" with { type: "json" };
import { type Finding, namesOf, type PerSize } from "../base/index.ts";
import type { WorkedLine } from "../working/index.ts";
import { pick, type View } from "./view.ts";

/**
 * The proof of one pattern for other programs: one object on one line. Its shape is told in docs/check-report.schema.json.
 *
 * @param file  name of the file, as the designer gave it
 */
export function setJson(view: View, file: string): string {
  const { proof } = view;
  const report = {
    loopwright: manifest.version,
    file,
    title: proof.title,
    terms: proof.terms,
    sizes: view.sizes,
    pieces: proof.worked.pieces.map((piece) => ({
      name: piece.name,
      rows: piece.lines.map((line) => rowOf(view, line)),
    })),
    findings: view.findings.map((finding) => findingJson(view, finding)),
    coverage: { ...proof.coverage },
  };
  return `${JSON.stringify(report)}\n`;
}

/** A finding with its place in lines and columns, as every report for other programs has it. */
export function findingJson({ index, proof }: Pick<View, "index" | "proof">, finding: Finding) {
  const from = index.position(finding.span.from);
  const to = index.position(finding.span.to);
  return {
    code: finding.code,
    severity: finding.severity,
    piece: finding.piece,
    row: finding.row,
    line: from.line,
    column: from.column,
    endLine: to.line,
    endColumn: to.column,
    sizes: namesOf(proof.sizes, finding.sizes),
    what: finding.what,
    why: finding.why,
    try: finding.todo.map((remedy) => remedy.say),
  };
}

function rowOf(view: View, line: WorkedLine) {
  const kinds = (counts: Readonly<Record<string, PerSize<number | null>>>) =>
    Object.fromEntries(Object.entries(counts).map(([kind, values]) => [kind, pick(view, values)]));
  return {
    label: line.label,
    line: view.index.position(line.span.from).line,
    first: rowNumber(pick(view, line.first)),
    last: rowNumber(pick(view, line.last)),
    kind: line.kind,
    read: line.read,
    side: pick(view, line.side),
    stitches: pick(view, line.stitches),
    kinds: kinds(line.kinds),
    printed: line.printed && pick(view, line.printed),
    printedKinds: line.printedKinds && kinds(line.printedKinds),
    trust: line.trust,
    ...(line.sample
      ? {
          sample: {
            wide: line.sample.wide,
            repeats: line.sample.repeats,
            perRepeat: pick(view, line.sample.perRepeat),
          },
        }
      : {}),
  };
}

/** One number where all sizes have the same, a list where they differ, null where no size has one. */
function rowNumber(numbers: readonly (number | null)[]): number | null | (number | null)[] {
  return new Set(numbers).size === 1 ? (numbers[0] ?? null) : [...numbers];
}
