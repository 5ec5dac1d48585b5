import { agree, counted, type Finding, type Severity } from "../base/index.ts";
import type { Proof } from "../design/index.ts";
import { clean, clip, oneLine, widthOf } from "./cells.ts";
import { setFindings, WIDEST_PROSE } from "./findings.ts";
import { type Paint, paintFor } from "./paint.ts";
import { setTables } from "./table.ts";
import type { View } from "./view.ts";
import { hang, wrap } from "./wrap.ts";

/** How a report is set. */
export interface Setting {
  readonly columns: number;
  readonly colour?: boolean;
}

/**
 * The proof of one pattern, set for people: its head, what was settled, each piece row by row, the findings, the answers, and
 * one line that sums it up.
 *
 * @param file  name of the file, as the designer gave it
 */
export function setReport(view: View, file: string, { columns, colour }: Setting): string {
  const paint = paintFor(colour);
  const lines = [
    ...setHead(view, file, columns, paint),
    "",
    ...setSettled(view, columns, paint),
    ...setTables(view, columns, paint),
    ...setFindings(view, columns, paint),
    ...setAnswers(view.proof, view, columns, paint),
    ...setSummary(view, columns, paint),
  ];
  return `${lines.map((line) => line.trimEnd()).join("\n")}\n`;
}

/* ------------------------------------------------------------------- head */

const TERMS_KNOWN = {
  stated: "",
  told: ", told by its words",
  assumed: ", taken as such: the text does not say",
};

function setHead(view: View, file: string, width: number, paint: Paint): string[] {
  const { proof } = view;
  const title = oneLine(proof.title) || "A pattern without a title";
  const name = oneLine(file);
  const room = width - widthOf(title) - widthOf(name);
  const first =
    room >= 3
      ? [paint.strong(title) + " ".repeat(room) + paint.quiet(name)]
      : [...wrap(title, width).map(paint.strong), paint.quiet(clip(name, width))];
  const facts = [
    `${proof.terms} terms${TERMS_KNOWN[proof.tree.termsFrom]}.`,
    saySizes(view),
    sayCoverage(proof),
  ];
  return [...first, ...facts.flatMap((words) => wrap(words, Math.min(width, WIDEST_PROSE)))];
}

function saySizes({ proof, sizes }: View): string {
  if (proof.sizes.length === 1) return "One size.";
  if (sizes.length < proof.sizes.length)
    return `Size ${sizes.join()} of ${proof.sizes.length}: ${proof.sizes.map(oneLine).join(", ")}.`;
  return `${proof.sizes.length} sizes: ${proof.sizes.map(oneLine).join(", ")}.`;
}

function sayCoverage(proof: Proof): string {
  const { instructionLines, read, onTrust } = proof.coverage;
  if (instructionLines === 0) return "No row, round or other instruction was found in the text.";
  const reading =
    read === instructionLines
      ? `${counted(instructionLines, "instruction line")}, all read.`
      : `${counted(instructionLines, "instruction line")}, ${read} read.`;
  const trust = onTrust > 0 ? ` ${onTrust} on trust.` : "";
  return `${reading} ${sayProved(proof)}${trust}`;
}

/** Lines that make no row, such as sewing and joining yarn, have no count to prove. */
function sayProved({ coverage, worked }: Proof): string {
  const rows = worked.pieces.flatMap(({ lines }) => lines).filter(({ kind }) => kind !== "other").length;
  if (rows === 0) return "No line makes a row.";
  if (coverage.proved === rows)
    return rows === 1
      ? "The line that makes rows is proved."
      : `All ${rows} lines that make rows are proved.`;
  return `${coverage.proved} of ${counted(rows, "line")} that ${agree([rows], "makes", "make")} rows proved.`;
}

function setSettled({ proof }: View, width: number, paint: Paint): string[] {
  const { conventions } = proof.worked;
  if (conventions.length === 0) return [];
  return [
    paint.strong("Settled for the whole pattern"),
    ...conventions.flatMap((words) => hang("  ", wrap(clean(words), Math.min(width, WIDEST_PROSE) - 2))),
    "",
  ];
}

/* ---------------------------------------------------------------- answers */

function setAnswers(proof: Proof, view: View, width: number, paint: Paint): string[] {
  const measure = Math.min(width, WIDEST_PROSE);
  const lineOf = (at: number): number => view.index.position(at).line;
  const say = (lead: string, words: string): string[] =>
    hang(lead, wrap(clean(words), measure - widthOf(lead)));
  const reason = (words: string): string => words || "no reason given";
  const section = (title: string, lines: readonly string[]): string[] =>
    lines.length === 0 ? [] : [paint.strong(title), ...lines, ""];
  return [
    ...section(
      "Answered as meant",
      proof.answered.flatMap(({ finding, answer }) => [
        ...say(`  line ${lineOf(finding.span.from)}  `, `${finding.what} (${finding.code})`),
        ...say("    ", `As meant: ${reason(answer.reason)}`),
      ]),
    ),
    ...section(
      "Vouched for, not proved",
      proof.vouched.flatMap(({ piece, row, answer }) =>
        say(
          `  line ${lineOf(answer.span.from)}  `,
          `${row}${piece ? ` of ${piece}` : ""}: ${reason(answer.reason)}`,
        ),
      ),
    ),
    ...section("Answers without a stamp", [
      ...(proof.unstamped.length > 0
        ? say(
            "  ",
            "Write the stamp into the answer, so that it opens again when the row or its counts change:",
          )
        : []),
      ...proof.unstamped.flatMap(({ answer, edit }) =>
        say(`  line ${lineOf(answer.span.from)}  `, stamped(proof.text, answer.span, edit)),
      ),
    ]),
  ];
}

/** The answer as it reads with its stamp. */
function stamped(text: string, span: Finding["span"], edit: Proof["unstamped"][number]["edit"]): string {
  const inside = edit.span.from >= span.from && edit.span.to <= span.to;
  if (!inside) return `${text.slice(span.from, span.to)}${edit.text}`;
  return text.slice(span.from, edit.span.from) + edit.text + text.slice(edit.span.to, span.to);
}

/* ---------------------------------------------------------------- summary */

function setSummary(view: View, width: number, paint: Paint): string[] {
  const { errors, words } = countFindings(view.findings);
  const { coverage } = view.proof;
  const proved = coverage.instructionLines === 0 ? "There was nothing to prove." : sayProved(view.proof);
  const elsewhere =
    view.elsewhere > 0 ? ` ${counted(view.elsewhere, "finding")} in other sizes not shown.` : "";
  const tone = errors > 0 ? paint.error : coverage.proved > 0 ? paint.good : paint.strong;
  return wrap(`${words}. ${proved}${elsewhere}`, width).map(tone);
}

/** "2 errors, 1 warning, 3 notes"; "No errors" leads where there are none. */
export function countFindings(findings: readonly Finding[]): {
  readonly errors: number;
  readonly words: string;
} {
  const of = (severity: Severity): number =>
    findings.filter((finding) => finding.severity === severity).length;
  const errors = of("error");
  const parts = [errors === 0 ? "No errors" : counted(errors, "error")];
  if (of("warning") > 0) parts.push(counted(of("warning"), "warning"));
  if (of("note") > 0) parts.push(counted(of("note"), "note"));
  return { errors, words: parts.join(", ") };
}
