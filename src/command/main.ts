import manifest from "../../package.json" with { type: "json" };
import { checkFiles } from "./check.ts";
import { explain } from "./explain.ts";
import { readRequest } from "./request.ts";
import type { ExitCode, Terminal } from "./terminal.ts";

export { type ExitCode, processTerminal, type Terminal } from "./terminal.ts";

const HELP = `loopwright ${manifest.version}
Works a written crochet pattern in every size and proves or disproves its counts.

  loopwright check FILE...          check patterns; - is standard input
  loopwright check --explain CODE   what a finding means, with an example
  loopwright check --help           more about checking
  loopwright --version
`;

const HELP_CHECK = `loopwright check FILE...
Checks written patterns: plain text or Markdown, as they would be published.
The file is only read, never changed. - stands for standard input.

  --size M          show one size only
  --terms us|uk     terms of a text that does not say them itself
  --json            one JSON object a file, each on a line of its own
  --explain CODE    what a finding means, with an example; --explain index
                    lists all codes

The exit code is 0 without errors, 1 when errors were found, 2 when a file
could not be checked; of several files, the worst.
`;

/** Runs one command line. Never throws on what the designer typed; answers with an exit code. */
export async function main(args: readonly string[], terminal: Terminal): Promise<ExitCode> {
  const request = readRequest(args);
  switch (request.is) {
    case "version":
      terminal.out(`${manifest.version}\n`);
      return 0;
    case "help":
      terminal.out(request.of === "check" ? HELP_CHECK : HELP);
      return 0;
    case "explain":
      return explain(request.code, terminal);
    case "check":
      return checkFiles(request, terminal);
    case "unclear":
      terminal.err(request.why === "" ? HELP : `loopwright: ${request.why}\nMore: loopwright check --help\n`);
      return 2;
  }
}
