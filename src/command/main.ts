import manifest from "../../package.json" with { type: "json" };
import { begin } from "./begin.ts";
import { checkFiles } from "./check.ts";
import { explain } from "./explain.ts";
import { gradeFile } from "./grade.ts";
import { type Command, readRequest } from "./request.ts";
import { showSizes } from "./size.ts";
import type { ExitCode, Terminal } from "./terminal.ts";
import { tidyFile } from "./tidy.ts";
import { showYarn } from "./yarn.ts";

export { type ExitCode, processTerminal, type Terminal } from "./terminal.ts";

const HELP = `loopwright ${manifest.version}
Works a written crochet pattern in every size and proves or disproves its counts.

  loopwright begin                  write a first draft of a garment
  loopwright check FILE...          check patterns; - is standard input
  loopwright check --explain CODE   what a finding means, with an example
  loopwright check --help           more about checking
  loopwright size FILE              what the counts of a design make, size by size
  loopwright grade FILE             choose all counts of a design anew
  loopwright yarn FILE              yarn, balls, hours and money, size by size
  loopwright tidy FILE              set a pattern in clean notation
  loopwright --version
`;

const HELP_BEGIN = `loopwright begin [pullover|raglan|panels]
Writes a first draft of a garment into a new file: plan, rules, the best counts
of all sizes, and every row. Without a word behind it, it asks.

  pullover          four flat pieces from the hem up
  raglan            from the neck down in joined rounds
  panels            an open vest or jacket worked sideways

  --title TITLE     the name of the design; its file is named after it
  --body CHART      "women, corrected", "men, published", "children, published"
  --sizes "S M L"   sizes of the chart; otherwise all
  --fabric NAME     bumps, pebbles, half double crochet, ...
  --gauge "14 x 11" stitches and rows over 10 cm, washed
  --yarn 4          class of the yarn, 1 to 6
  --hook 5.5        hook in millimetres
  --ease 14         centimetres larger than the body at the bust
  --arm-ease 10     the same at the upper arm
  --armhole WORD    notch or straight, of a pullover
  --hem WORD        "post rib" or ridges
  --sleeves         panels with sleeves: a jacket
  --pockets         panels with pockets
  --out FILE        name of the new file

A file that is there already is never written over. The exit code is 0 when the
draft is written and proved, 1 when no counts fit, 2 when it could not be done.
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

const HELP_SIZE = `loopwright size FILE
Shows for every measurement and size of a design what was wanted, what the
counts make as worked, and by how much that misses. Nothing is changed.

  --json            one JSON object instead of the tables

The exit code is 0 without errors, 1 when errors were found, 2 when the file
could not be read or is no design.
`;

const HELP_GRADE = `loopwright grade FILE
Chooses every count of every size of a design together, as close to the plan
as its rules allow. Shows the difference, then writes the counts into the
file; only the numbers are changed.

  --dry-run         shows the difference and writes nothing
  --json            one JSON object instead of the tables

The exit code is 0 when the counts are written or stand as they are, 1 when
rules clash or the design has errors, 2 when it could not be done.
`;

const HELP_YARN = `loopwright yarn FILE
Shows for every size how much yarn a pattern takes, by piece and colour: in
metres, grams and whole balls, with cost and what is left over, the hours of
making, and what the design costs and earns. A design says its yarn, weighed
and timed swatches in the table at its head; of a text without one, lengths
are told roughly by its gauge. Nothing is changed.

  --json            one JSON object instead of the tables

The exit code is 0 without errors, 1 when the pattern has errors, 2 when the
file could not be read.
`;

const HELP_TIDY = `loopwright tidy FILE
Prints a pattern in clean notation: one row a line, in the same words for the
same thing, with its count in every size behind it. What is no row, and rows
that were not read, stay as they are. - stands for standard input.

  --terms us|uk     set it in these terms; needs every row to be read
  --write           writes into the file instead of printing

The new text is proved before it is given. The exit code is 0 when it is set,
1 when it cannot be set so, 2 when the file could not be read.
`;

const HELPS: Readonly<Record<Command | "loopwright", string>> = {
  loopwright: HELP,
  begin: HELP_BEGIN,
  tidy: HELP_TIDY,
  check: HELP_CHECK,
  size: HELP_SIZE,
  grade: HELP_GRADE,
  yarn: HELP_YARN,
};

/** Runs one command line. Never throws on what the designer typed; answers with an exit code. */
export async function main(args: readonly string[], terminal: Terminal): Promise<ExitCode> {
  const request = readRequest(args);
  switch (request.is) {
    case "version":
      terminal.out(`${manifest.version}\n`);
      return 0;
    case "help":
      terminal.out(HELPS[request.of]);
      return 0;
    case "explain":
      return explain(request.code, terminal);
    case "begin":
      return begin(request, terminal);
    case "tidy":
      return tidyFile(request, terminal);
    case "check":
      return checkFiles(request, terminal);
    case "size":
      return showSizes(request, terminal);
    case "grade":
      return gradeFile(request, terminal);
    case "yarn":
      return showYarn(request, terminal);
    case "unclear":
      terminal.err(request.why === "" ? HELP : `loopwright: ${request.why}\nMore: loopwright check --help\n`);
      return 2;
  }
}
