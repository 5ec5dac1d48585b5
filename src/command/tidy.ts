import { counted, LineIndex, type Span } from "../base/index.ts";
import { type NotTidied, tidyPattern } from "../design/index.ts";
import { nameOf, readInput } from "./read-input.ts";
import { replaceFile } from "./replace-file.ts";
import type { TidyRequest } from "./request.ts";
import type { ExitCode, Terminal } from "./terminal.ts";

/** Prints a pattern in clean notation, or writes it into its file. What was left as it stood is said apart from the text. */
export async function tidyFile(request: TidyRequest, terminal: Terminal): Promise<ExitCode> {
  const input = await readInput(request.file, terminal);
  const say = (why: string): void => terminal.err(`loopwright: ${why}\n`);
  if ("refusal" in input) {
    say(input.refusal);
    return 2;
  }
  const result = tidyPattern(input.text, request.terms);
  const name = nameOf(request.file);
  if (result.is !== "tidied") {
    say(refusalOf(result, name, input.text, request.terms));
    return 1;
  }
  const { asWritten, text } = result;
  if (asWritten.length > 0) {
    const rows = counted(asWritten.length, "instruction");
    say(`${rows} left as written, ${linesOf(asWritten, input.text)}.`);
  }
  if (!request.write) {
    terminal.out(text.endsWith("\n") ? text : `${text}\n`);
    return 0;
  }
  if (text === input.text) return 0;
  try {
    await replaceFile(request.file, text, input.text);
  } catch (fault) {
    say(`${name} cannot be written: ${fault instanceof Error ? fault.message : fault}`);
    return 2;
  }
  return 0;
}

function refusalOf({ is, rows }: NotTidied, name: string, text: string, terms: string | undefined): string {
  switch (is) {
    case "has a table":
      return `${name} is a design with a table; its counts in braces stay as they are. Only patterns without a table are set anew.`;
    case "rows not read":
      return `Not every row of ${name} is read, so it cannot be put into ${terms} terms: ${linesOf(rows, text)}.`;
    case "comes out otherwise":
      return `${name} would not come to the same stitches in clean notation${rows.length > 0 ? `: ${linesOf(rows, text)}` : ""}. It stays as it is.`;
  }
}

/** "line 4", "lines 4, 9 and 12". */
function linesOf(spans: readonly Span[], text: string): string {
  const index = new LineIndex(text);
  const lines = [...new Set(spans.map(({ from }) => index.position(from).line))];
  const last = lines.pop();
  return lines.length === 0 ? `line ${last}` : `lines ${lines.join(", ")} and ${last}`;
}
