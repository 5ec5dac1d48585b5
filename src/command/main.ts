import manifest from "../../package.json" with { type: "json" };

/** Where the command prints. A test hands in its own. */
export interface Output {
  out(text: string): void;
  err(text: string): void;
}

/** Exit codes: 0 the job was done, 1 it was done and found errors, 2 it could not be done. */
export type ExitCode = 0 | 1 | 2;

const HELP = `loopwright ${manifest.version}
Works a written crochet pattern in every size and proves or disproves its counts.

  loopwright --version
  loopwright --help
`;

/** Runs one command line. Never throws on what the designer typed; answers with an exit code. */
export async function main(args: readonly string[], output: Output): Promise<ExitCode> {
  const first = args[0];
  if (first === "--version" || first === "-v") {
    output.out(`${manifest.version}\n`);
    return 0;
  }
  if (first === "--help" || first === "-h") {
    output.out(HELP);
    return 0;
  }
  output.err(first === undefined ? HELP : `loopwright ${first}: not built yet.\n`);
  return 2;
}
