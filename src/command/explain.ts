import { WIDEST_PROSE } from "./findings.ts";
import { findPage } from "./manual.ts";
import { setPage } from "./page.ts";
import { paintFor } from "./paint.ts";
import { columnsOf, type ExitCode, type Terminal } from "./terminal.ts";

/** Prints the manual's page on a finding. */
export function explain(code: string, terminal: Terminal): ExitCode {
  const page = findPage(code);
  if ("refusal" in page) {
    terminal.err(`loopwright: ${page.refusal}\n`);
    return 2;
  }
  const width = Math.min(columnsOf(terminal), WIDEST_PROSE);
  const lines = setPage(page.markdown, width, paintFor(terminal.colour));
  terminal.out(`${lines.map((line) => line.trimEnd()).join("\n")}\n`);
  return 0;
}
