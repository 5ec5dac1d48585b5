/** Where a command reads and prints. A test hands in its own. */
export interface Terminal {
  out(text: string): void;
  err(text: string): void;
  /** Columns the output is set in; absent: 100. */
  readonly columns?: number;
  /** Whether the output shows colour; absent: no. */
  readonly colour?: boolean;
  /** Standard input, piece by piece; absent: there is none. */
  readonly input?: AsyncIterable<Uint8Array>;
  /** Somebody sits at the input and can be asked; absent: nobody. */
  readonly asks?: boolean;
}

/** Exit codes: 0 the job was done, 1 it was done and found errors, 2 it could not be done. */
export type ExitCode = 0 | 1 | 2;

const DEFAULT_COLUMNS = 100;
/** Below this nothing reads well, so a narrower terminal is left to wrap by itself. */
const FEWEST_COLUMNS = 40;

/** Columns to set the output in. */
export function columnsOf(terminal: Terminal): number {
  return Math.max(FEWEST_COLUMNS, Math.floor(terminal.columns ?? DEFAULT_COLUMNS));
}

/**
 * The terminal of the running process. Colour is for a terminal only, and never where the environment says NO_COLOR or the
 * terminal cannot show it. A reader of the output that goes away early (`| head`) ends the process quietly.
 */
export function processTerminal(): Terminal {
  const { stdout, stderr, stdin, env } = process;
  stdout.on("error", (fault: NodeJS.ErrnoException) => {
    if (fault.code === "EPIPE") process.exit();
    throw fault;
  });
  return {
    out: (text) => stdout.write(text),
    err: (text) => stderr.write(text),
    ...(stdout.columns ? { columns: stdout.columns } : {}),
    colour: Boolean(stdout.isTTY) && !env.NO_COLOR && env.TERM !== "dumb",
    input: stdin,
    asks: Boolean(stdin.isTTY && stdout.isTTY),
  };
}
