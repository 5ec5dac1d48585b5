import { type Edit, type Finding, Kept } from "../base/index.ts";
import { inspectTree, type PatternTree, type ReadOptions, readPattern } from "../notation/index.ts";
import { type WorkedPattern, workPattern } from "../working/index.ts";
import { settleAnswers } from "./answers.ts";
import type { DesignTable } from "./document/document.ts";
import { proveTable, type TableReader, tableReader } from "./document/prove-table.ts";
import type { Coverage, Proof } from "./proof.ts";
import { roughYarn } from "./prove-yarn.ts";

/** Remedies whose edits are tried on the whole design; beyond this many the designer mends what is there first. */
const MOST_TRIED = 24;

/**
 * Proves a design: reads it, works it in every size, holds the answers against the findings. Never throws on the designer's
 * text. A remedy keeps its edits only where the whole design, proved with them, has fewer errors and warnings and no new ones.
 */
export function proveDesign(text: string, options: ReadOptions = {}): Proof {
  const { counts, ...others } = options;
  const asked = JSON.stringify([counts && [...counts], others]);
  let known = proofs.get(text);
  if (known?.asked !== asked) {
    known = { asked, proof: proveAnew(text, options) };
    proofs.set(text, known);
  }
  return known.proof;
}

/** The designs proved last, by their text, and what else was asked. */
const proofs = new Kept<string, { readonly asked: string; readonly proof: Proof }>(8);

function proveAnew(text: string, options: ReadOptions): Proof {
  // Remedies change rows, hardly ever the table, so a table is read once.
  const tables = tableReader();
  const proof = proveOnce(text, options, tables);
  let tried = 0;
  const findings = proof.findings.map((finding) => {
    if (!finding.todo.some((remedy) => remedy.edits)) return finding;
    return {
      ...finding,
      todo: finding.todo.map((remedy) => {
        if (!remedy.edits || (tried++ < MOST_TRIED && mends(proof, finding, remedy.edits, options, tables)))
          return remedy;
        return { say: remedy.say };
      }),
    };
  });
  return { ...proof, yarn: proof.yarn ?? roughYarn(proof.tree, proof.worked), findings };
}

function proveOnce(text: string, options: ReadOptions, tables: TableReader): Proof {
  const table = tables(text, options);
  const tree = readPattern(text, table ? readOptions(table, options) : options);
  const worked = workPattern(tree);
  const found = [...inspectTree(tree), ...worked.findings];
  const settled = settleAnswers(tree, worked, found);
  const design = table && proveTable(table, tree, worked);
  return {
    text,
    title: table?.title ?? tree.title,
    terms: tree.terms,
    sizes: tree.sizes,
    tree,
    worked,
    ...(design?.proof ?? {}),
    ...settled,
    answered: [...settled.answered, ...(design?.answered ?? [])],
    unstamped: [...settled.unstamped, ...(design?.unstamped ?? [])],
    findings: [...settled.findings, ...(design?.findings ?? [])].sort(byPlace),
    coverage: coverageOf(tree, worked),
  };
}

/** What the table at the head tells the reader of the rows. */
function readOptions(table: DesignTable, options: ReadOptions): ReadOptions {
  const terms = table.terms ?? options.terms;
  return {
    ...options,
    ...(terms ? { terms } : {}),
    sizes: table.sizes,
    ...(table.counts.length > 0
      ? { counts: new Map(table.counts.map(({ name, values }) => [name, values ?? []] as const)) }
      : {}),
  };
}

const SEVERITIES = ["error", "warning", "note"];

const byPlace = (a: Finding, b: Finding): number =>
  a.span.from - b.span.from ||
  SEVERITIES.indexOf(a.severity) - SEVERITIES.indexOf(b.severity) ||
  a.code.localeCompare(b.code);

/** Whether the design with the edits has fewer errors and warnings, none of them new in kind and row. */
function mends(
  proof: Proof,
  finding: Finding,
  edits: readonly Edit[],
  options: ReadOptions,
  tables: TableReader,
): boolean {
  const after = proveOnce(applyEdits(proof.text, edits), options, tables);
  const serious = (findings: readonly Finding[]): Finding[] =>
    findings.filter((one) => one.severity !== "note");
  const key = (one: Finding): string => `${one.code}|${one.piece}|${one.row}|${one.sizes.join()}`;
  const before = new Set(serious(proof.findings).map(key));
  const now = serious(after.findings);
  return (
    now.length < serious(proof.findings).length &&
    now.every((one) => before.has(key(one))) &&
    !now.some((one) => key(one) === key(finding))
  );
}

/** The text with edits made; they must not overlap. */
export function applyEdits(text: string, edits: readonly Edit[]): string {
  let result = text;
  for (const edit of [...edits].sort((a, b) => b.span.from - a.span.from))
    result = result.slice(0, edit.span.from) + edit.text + result.slice(edit.span.to);
  return result;
}

function coverageOf(tree: PatternTree, worked: WorkedPattern): Coverage {
  const lines = worked.pieces.flatMap((piece) => piece.lines);
  return {
    instructionLines: tree.pieces.reduce((sum, piece) => sum + piece.instructions.length, 0),
    read: lines.filter((line) => line.read).length,
    proved: lines.filter((line) => line.proved).length,
    onTrust: lines.filter((line) => line.trust).length,
  };
}
