import { agree, LineIndex } from "../base/index.ts";
import { gradeDesign, type NotGraded, type Regraded } from "../design/index.ts";
import { setFindings, WIDEST_PROSE } from "./findings.ts";
import { findingJson } from "./json.ts";
import { loadSolver } from "./load-solver.ts";
import { type Paint, paintFor } from "./paint.ts";
import { nameOf, readInput } from "./read-input.ts";
import { replaceFile } from "./replace-file.ts";
import type { GradeRequest } from "./request.ts";
import { hasTable, noTable, sizesJson } from "./size.ts";
import { cmOf, countOf, missOf, type SizeLine, setSizeTable } from "./size-table.ts";
import { columnsOf, type ExitCode, type Terminal } from "./terminal.ts";
import { viewOf } from "./view.ts";
import { wrap } from "./wrap.ts";

/** Chooses the counts of a design anew, shows the difference, and writes it into the file unless it is a dry run. */
export async function gradeFile(request: GradeRequest, terminal: Terminal): Promise<ExitCode> {
  const input = await readInput(request.file, terminal);
  const refuse = (why: string): ExitCode => {
    terminal.err(`loopwright: ${why}\n`);
    return 2;
  };
  if ("refusal" in input) return refuse(input.refusal);
  const result = await gradeDesign(input.text, await loadSolver());
  if (result.is === "no table") return refuse(noTable(request.file));
  const paint = paintFor(terminal.colour);
  const width = columnsOf(terminal);
  if (result.is !== "graded") {
    if (request.json) terminal.out(`${JSON.stringify(refusalJson(result))}\n`);
    else terminal.out(set(setRefusal(result, width, paint)));
    return 1;
  }
  const writes = !request.dryRun && result.edits.length > 0;
  if (request.json) terminal.out(`${JSON.stringify(gradedJson(result, writes))}\n`);
  else terminal.out(set(setDifference(result, request, width, paint)));
  if (!writes) return 0;
  try {
    await replaceFile(request.file, result.text, input.text);
  } catch (fault) {
    return refuse(
      `${nameOf(request.file)} cannot be written: ${fault instanceof Error ? fault.message : fault}`,
    );
  }
  return 0;
}

const set = (lines: readonly string[]): string => `${lines.map((line) => line.trimEnd()).join("\n")}\n`;

/* ------------------------------------------------------------------- json */

function refusalJson(result: NotGraded) {
  const view = viewOf(result.before);
  return {
    graded: false,
    why: result.is,
    findings: result.findings.map((finding) => findingJson(view, finding)),
  };
}

function gradedJson(result: Regraded, written: boolean) {
  return {
    graded: true,
    written,
    proven: result.proved,
    gap: Math.max(0, result.costAfter - result.floor),
    missBefore: result.costBefore,
    missAfter: result.costAfter,
    worstBefore: result.worstBefore,
    worstAfter: result.worstAfter,
    changes: result.changes.map(({ name, before, after }) => ({ name, before, after })),
    before: hasTable(result.before) ? sizesJson(result.before) : null,
    after: hasTable(result.after) ? sizesJson(result.after) : null,
  };
}

/* ------------------------------------------------------------------ tables */

const REFUSALS: Readonly<Record<NotGraded["is"], string>> = {
  "no table": "",
  "no counts": "The table has no counts to choose.",
  "table has errors": "Nothing was chosen: mend the table first, so that the whole plan is known.",
  "rules clash": "Nothing was chosen: the rules of the counts cannot all hold.",
  unsettled:
    "Nothing was chosen: within the limits of the search no counts were found, nor that there are none.",
};

function setRefusal(result: NotGraded, width: number, paint: Paint): string[] {
  const view = { ...viewOf(result.before), findings: result.findings };
  return [
    ...setFindings(view, width, paint),
    ...wrap(REFUSALS[result.is], Math.min(width, WIDEST_PROSE)).map(paint.error),
  ];
}

/** What the chosen counts come to, beside the written ones. */
function sumOf({ before, costBefore, costAfter, worstBefore, worstAfter }: Regraded): string {
  const instead = (was: number | null, is: number): string =>
    was === null || Math.abs(was - is) < 0.005 ? "" : ` instead of ${cmOf(was)} cm`;
  const all = `misses and uneven steps come to ${cmOf(costAfter)} cm in all${instead(costBefore, costAfter)}`;
  return before.table?.aim === "least worst"
    ? `The largest miss is ${cmOf(worstAfter)} cm${instead(worstBefore, worstAfter)}; ${all}.`
    : `M${all.slice(1)}.`;
}

function setDifference(
  result: Regraded,
  { file, dryRun }: GradeRequest,
  width: number,
  paint: Paint,
): string[] {
  const { before, changes, edits, floor, proved } = result;
  const prose = (words: string): string[] => wrap(words, Math.min(width, WIDEST_PROSE));
  const judged = proved
    ? "No choice of counts does better."
    : `No choice of counts does better than ${cmOf(floor)} cm; whether one does better than this is not settled.`;
  if (changes.length === 0)
    return [
      ...prose(
        `${nameOf(file)} stays as it is: its counts are those that are chosen. ${sumOf(result)} ${judged}`,
      ),
    ];
  const lines = changes.flatMap(({ name, before: old, after }): SizeLine[] => [
    {
      label: name,
      values: after.map((value, size) => (value === old?.[size] ? "=" : countOf(value))),
      tone: "good",
    },
    { label: "was", values: (old ?? after.map(() => null)).map(countOf), tone: "more" },
  ]);
  return [
    ...setSizeTable("Counts", before.sizes, lines, width, paint),
    ...setMeasureChanges(result, width, paint),
    ...prose(`${sumOf(result)} ${judged}`),
    ...prose(
      dryRun
        ? `Nothing was written: this is a dry run. It would change ${linesOf(result)}.`
        : edits.length === 0
          ? "Nothing was written."
          : `Written into ${file}: ${linesOf(result)} changed.`,
    ),
  ];
}

function linesOf({ before, edits }: Regraded): string {
  const index = new LineIndex(before.text);
  const lines = [...new Set(edits.map(({ span }) => index.position(span.from).line))].sort((a, b) => a - b);
  return `${agree([lines.length], "line", "lines")} ${lines.join(", ")}`;
}

/** The measurements that come out otherwise. */
function setMeasureChanges({ before, after }: Regraded, width: number, paint: Paint): string[] {
  const lines = (after.finished ?? []).flatMap((measure, at): SizeLine[] => {
    const old = before.finished?.[at];
    const same = measure.made.every((cm, size) => cmOf(cm) === cmOf(old?.made[size] ?? null));
    if (same) return [];
    return [
      { label: measure.name, values: measure.made.map(cmOf) },
      { label: "was", values: (old?.made ?? measure.made.map(() => null)).map(cmOf), tone: "more" },
      { label: "misses", values: measure.missed.map(missOf), tone: "more" },
    ];
  });
  return setSizeTable("Finished, cm", after.sizes, lines, width, paint);
}
