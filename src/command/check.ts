import { proveDesign } from "../design/index.ts";
import { setJson } from "./json.ts";
import { nameOf, readInput } from "./read-input.ts";
import { countFindings, setReport } from "./report.ts";
import type { CheckRequest } from "./request.ts";
import { columnsOf, type ExitCode, type Terminal } from "./terminal.ts";
import { findSize, type View, viewOf } from "./view.ts";

/**
 * Checks files one after the other and prints what each came to. One that cannot be checked is said on the error output and does
 * not keep the others from being checked.
 *
 * @returns the worst exit code of all files
 */
export async function checkFiles(request: CheckRequest, terminal: Terminal): Promise<ExitCode> {
  let worst: ExitCode = 0;
  let printed = 0;
  for (const file of request.files) {
    const view = await proveFile(file, request, terminal);
    if ("refusal" in view) {
      terminal.err(`loopwright: ${view.refusal}\n`);
      worst = 2;
      continue;
    }
    if (request.json) terminal.out(setJson(view, file));
    else {
      if (printed > 0) terminal.out(`\n${"─".repeat(columnsOf(terminal))}\n\n`);
      terminal.out(
        setReport(view, nameOf(file), {
          columns: columnsOf(terminal),
          colour: terminal.colour ?? false,
        }),
      );
    }
    printed++;
    if (countFindings(view.findings).errors > 0 && worst === 0) worst = 1;
  }
  return worst;
}

async function proveFile(
  file: string,
  { size, terms }: CheckRequest,
  terminal: Terminal,
): Promise<View | { readonly refusal: string }> {
  const input = await readInput(file, terminal);
  if ("refusal" in input) return input;
  try {
    const proof = proveDesign(input.text, terms ? { terms } : {});
    if (size === undefined) return viewOf(proof);
    const at = findSize(proof.sizes, size);
    if (at !== undefined) return viewOf(proof, at);
    const there = proof.sizes.length === 1 ? "It is not graded." : `Its sizes are ${proof.sizes.join(", ")}.`;
    return { refusal: `${nameOf(file)} has no size ${size}. ${there}` };
  } catch (fault) {
    // Nothing that stands in a pattern may bring the proof down, so this is a fault of the program.
    const words = fault instanceof Error ? fault.message : String(fault);
    return {
      refusal: `${nameOf(file)} could not be checked. This is a fault of loopwright, not of the pattern: ${words}`,
    };
  }
}
