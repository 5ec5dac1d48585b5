import { type Finding, LineIndex, type PerSize } from "../base/index.ts";
import type { Proof } from "../design/index.ts";
import type { WorkedLine } from "../working/index.ts";

/** A proof as it is shown: all sizes, or one. */
export interface View {
  readonly proof: Proof;
  readonly index: LineIndex;
  /** Indices of the sizes shown. */
  readonly shown: readonly number[];
  readonly sizes: readonly string[];
  /** Findings that concern a size shown, or no size at all. */
  readonly findings: readonly Finding[];
  /** How many findings concern other sizes alone. */
  readonly elsewhere: number;
}

/** @param size  index of the one size to show; absent: all */
export function viewOf(proof: Proof, size?: number): View {
  const shown = size === undefined ? proof.sizes.map((_, at) => at) : [size];
  const concerns = (finding: Finding): boolean =>
    size === undefined || finding.sizes.length === 0 || finding.sizes.includes(size);
  const findings = proof.findings.filter(concerns);
  return {
    proof,
    index: new LineIndex(proof.text),
    shown,
    sizes: shown.map((at) => proof.sizes[at] as string),
    findings,
    elsewhere: proof.findings.length - findings.length,
  };
}

/** The index of a size by its name, however it is capitalised; undefined where there is none. */
export function findSize(sizes: readonly string[], name: string): number | undefined {
  const exact = sizes.indexOf(name.trim());
  if (exact !== -1) return exact;
  const alike = sizes.findIndex((size) => size.toLowerCase() === name.trim().toLowerCase());
  return alike === -1 ? undefined : alike;
}

/** The values of the sizes shown. */
export function pick<T>(view: View, values: PerSize<T>): T[] {
  return view.shown.map((at) => values[at] as T);
}

/** How a printed count stands to the worked one. */
export type Standing =
  | "agrees"
  | "differs"
  | "as meant"
  | "vouched"
  | "on trust"
  | "nothing printed"
  | "open";

export function standingOf({ proof, findings }: View, line: WorkedLine): Standing {
  const here = (one: { readonly span: Finding["span"] }): boolean => isIn(one, line);
  if (proof.vouched.some(({ answer }) => isIn(answer, line))) return "vouched";
  if (findings.some((finding) => COUNT_CODES.has(finding.code) && here(finding))) return "differs";
  if (proof.answered.some(({ finding }) => finding.severity === "error" && here(finding))) return "as meant";
  if (line.trust) return "on trust";
  if (line.printed === null && line.printedKinds === null) return "nothing printed";
  return line.stitches.some((count) => count !== null) ? "agrees" : "open";
}

/** Findings that hold a printed count against the worked one. */
const COUNT_CODES: ReadonlySet<string> = new Set(["rows/count-differs", "shaping/misses-its-count"]);

/** Whether something stands in a line of the pattern. */
export const isIn = (one: { readonly span: Finding["span"] }, line: WorkedLine): boolean =>
  one.span.from >= line.span.from && one.span.from < Math.max(line.span.to, line.span.from + 1);

/** The gravest finding of a line. */
export function gravestIn(view: View, line: WorkedLine): Finding["severity"] | null {
  const here = view.findings.filter((finding) => isIn(finding, line));
  return (["error", "warning", "note"] as const).find((s) => here.some((f) => f.severity === s)) ?? null;
}

/** A heading with the headings it stands under. */
export interface PieceTitle {
  /** Heading of the piece of a section, or null for a piece itself. */
  readonly under: string | null;
  readonly name: string;
}

/**
 * The title of each worked piece. A worked piece knows its own heading alone; which heading is a section of which stands in the
 * document, and is only looked up here, not worked out.
 */
export function titlesOf(proof: Proof): PieceTitle[] {
  let top = "";
  const headings = proof.tree.pieces.map((piece) => {
    if (piece.level === 1) top = piece.name;
    return { piece, under: piece.level > 1 && top !== "" ? top : null };
  });
  return proof.worked.pieces.map(({ name, lines }) => {
    const at = lines[0]?.span.from ?? -1;
    const heading = headings.find(
      ({ piece }) => piece.name === name && piece.instructions.some(({ span }) => span.from === at),
    );
    return { under: heading?.under ?? null, name };
  });
}
