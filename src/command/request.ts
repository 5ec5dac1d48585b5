import { parseArgs } from "node:util";
import type { Wishes } from "../constructions/index.ts";
import { nearest } from "./nearest.ts";

/** What one command line asks for. */
export type Request =
  | { readonly is: "version" }
  | { readonly is: "help"; readonly of: "loopwright" | Command }
  | { readonly is: "explain"; readonly code: string }
  | CheckRequest
  | SizeRequest
  | GradeRequest
  | BeginRequest
  | TidyRequest
  | YarnRequest
  /** It cannot be done as typed: why, in a sentence. */
  | { readonly is: "unclear"; readonly why: string };

export interface CheckRequest {
  readonly is: "check";
  /** Names of files; "-" is standard input. */
  readonly files: readonly string[];
  readonly json: boolean;
  /** Name of the one size to show. */
  readonly size?: string;
  /** Terms for a text that does not say. */
  readonly terms?: "US" | "UK";
}

/** Shows what the counts of one design make. */
export interface SizeRequest {
  readonly is: "size";
  readonly file: string;
  readonly json: boolean;
}

/** Chooses the counts of one design anew. */
export interface GradeRequest {
  readonly is: "grade";
  readonly file: string;
  readonly json: boolean;
  /** Shows the difference and writes nothing. */
  readonly dryRun: boolean;
}

/** Writes a first draft of a design. */
export interface BeginRequest {
  readonly is: "begin";
  /** Absent: the designer is asked. */
  readonly wishes?: Wishes;
  /** Name of the new file; absent: made of the title. */
  readonly out?: string;
}

/** Shows the yarn, the hours and the money of one pattern. */
export interface YarnRequest {
  readonly is: "yarn";
  readonly file: string;
  readonly json: boolean;
}

/** Sets one pattern in clean notation. */
export interface TidyRequest {
  readonly is: "tidy";
  readonly file: string;
  /** Terms to set it in; absent: its own. */
  readonly terms?: "US" | "UK";
  /** Writes into the file instead of printing. */
  readonly write: boolean;
}

export type Command = "tidy" | "begin" | "check" | "size" | "grade" | "yarn";

const OPTIONS = {
  json: { type: "boolean" },
  size: { type: "string" },
  terms: { type: "string" },
  explain: { type: "string" },
  help: { type: "boolean", short: "h" },
  version: { type: "boolean", short: "v" },
  "dry-run": { type: "boolean" },
  title: { type: "string" },
  body: { type: "string" },
  sizes: { type: "string" },
  fabric: { type: "string" },
  gauge: { type: "string" },
  yarn: { type: "string" },
  hook: { type: "string" },
  ease: { type: "string" },
  "arm-ease": { type: "string" },
  armhole: { type: "string" },
  hem: { type: "string" },
  sleeves: { type: "boolean" },
  pockets: { type: "boolean" },
  out: { type: "string" },
  write: { type: "boolean" },
} as const;

type Name = keyof typeof OPTIONS;

/** What the options with a value are followed by. */
const FOLLOWED_BY: Partial<Record<Name, string>> = {
  size: "the name of a size, as in --size M",
  terms: "us or uk",
  explain: "the code of a finding, as in --explain rows/count-differs",
  title: 'the name of the design, as in --title "Plain Top"',
  body: 'the name of a chart, as in --body "men, corrected"',
  sizes: 'names of sizes, as in --sizes "S M L"',
  fabric: "the name of a fabric, as in --fabric bumps",
  gauge: 'stitches and rows over 10 cm, as in --gauge "14 x 11"',
  yarn: "the class of the yarn, 1 to 6",
  hook: "the hook in millimetres, as in --hook 5.5",
  ease: "centimetres at the bust, as in --ease 14",
  "arm-ease": "centimetres at the upper arm, as in --arm-ease 10",
  armhole: "notch or straight",
  hem: "post rib or ridges",
  out: "the name of the new file, as in --out my-design.md",
};

const COMMANDS: readonly Command[] = ["begin", "check", "size", "grade", "yarn", "tidy"];

/** The options that belong to each command. */
const BELONG: Readonly<Record<Command, readonly Name[]>> = {
  begin: [
    "title",
    "body",
    "sizes",
    "fabric",
    "gauge",
    "yarn",
    "hook",
    "ease",
    "arm-ease",
    "armhole",
    "hem",
    "sleeves",
    "pockets",
    "out",
  ],
  check: ["json", "size", "terms", "explain"],
  tidy: ["terms", "write"],
  size: ["json"],
  grade: ["json", "dry-run"],
  yarn: ["json"],
};

/** Reads a command line. What is wrong with it is an answer too, so nothing is thrown. */
export function readRequest(args: readonly string[]): Request {
  const { tokens } = parseArgs({
    args: [...args],
    options: OPTIONS,
    strict: false,
    allowPositionals: true,
    tokens: true,
  });
  const words: string[] = [];
  const given = new Map<Name, string>();
  for (const token of tokens) {
    if (token.kind === "positional") words.push(token.value);
    if (token.kind !== "option") continue;
    if (!Object.hasOwn(OPTIONS, token.name)) return unclear(noSuchOption(token.rawName));
    const name = token.name as Name;
    const takesValue = OPTIONS[name].type === "string";
    if (given.has(name) && takesValue) return unclear(`--${name} can be given only once.`);
    if (!takesValue && token.value !== undefined) return unclear(`--${name} takes no value.`);
    if (takesValue && (!token.value || (!token.inlineValue && token.value.startsWith("-"))))
      return unclear(`--${name} is followed by ${FOLLOWED_BY[name]}.`);
    given.set(name, token.value ?? "");
  }
  return requestOf(words, given);
}

function requestOf(words: readonly string[], given: ReadonlyMap<Name, string>): Request {
  const [command, ...files] = words;
  if (command !== undefined && !isCommand(command)) return unclear(noSuchCommand(command));
  if (given.has("help")) return { is: "help", of: command ?? "loopwright" };
  if (given.has("version")) return { is: "version" };
  if (command === undefined)
    return unclear(given.size > 0 ? `--${[...given.keys()][0]} belongs to a command: loopwright check.` : "");
  const stray = [...given.keys()].find((name) => !BELONG[command].includes(name));
  if (stray !== undefined) return unclear(doesNotBelong(stray, command));
  if (command === "begin") return beginRequest(files, given);
  if (command === "tidy") return tidyRequest(files, given);
  return command === "check" ? checkRequest(files, given) : designRequest(command, files, given);
}

const isCommand = (word: string): word is Command => COMMANDS.some((command) => command === word);

function doesNotBelong(name: Name, command: Command): string {
  const owners = COMMANDS.filter((one) => BELONG[one].includes(name));
  return `--${name} is no option of ${command}. It belongs to ${owners.join(" and ")}.`;
}

function designRequest(
  command: Exclude<Command, "begin" | "check" | "tidy">,
  files: readonly string[],
  given: ReadonlyMap<Name, string>,
): Request {
  const [file, ...more] = files;
  if (file === undefined)
    return unclear(`Name the file of the ${command === "yarn" ? "pattern" : "design"}.`);
  if (more.length > 0) return unclear(`${command} takes one file at a time.`);
  const json = given.has("json");
  if (command !== "grade") return { is: command, file, json };
  const dryRun = given.has("dry-run");
  if (file === "-" && !dryRun)
    return unclear("There is no file to write to in standard input (-): name a file, or say --dry-run.");
  return { is: "grade", file, json, dryRun };
}

function beginRequest(words: readonly string[], given: ReadonlyMap<Name, string>): Request {
  const [construction, ...more] = words;
  const out = given.get("out");
  const file = out === undefined ? {} : { out };
  if (more.length > 0) return unclear(`begin takes one construction, not also ${more[0]}.`);
  if (construction === undefined)
    return given.size > (out === undefined ? 0 : 1)
      ? unclear("Say what to begin with, as in: loopwright begin pullover")
      : { is: "begin", ...file };
  const { "arm-ease": armEase, ...said } = Object.fromEntries(
    [...given].filter(([name]) => !["out", "sleeves", "pockets"].includes(name)),
  );
  return {
    is: "begin",
    ...file,
    wishes: {
      construction,
      ...said,
      ...(armEase === undefined ? {} : { armEase }),
      sleeves: given.has("sleeves"),
      pockets: given.has("pockets"),
    },
  };
}

function tidyRequest(files: readonly string[], given: ReadonlyMap<Name, string>): Request {
  const [file, ...more] = files;
  if (file === undefined) return unclear("Name the file of the pattern, or - for standard input.");
  if (more.length > 0) return unclear("tidy takes one file at a time.");
  const terms = termsOf(given);
  if (typeof terms === "object") return terms;
  const write = given.has("write");
  if (file === "-" && write)
    return unclear("There is no file to write to in standard input (-): name a file, or leave out --write.");
  return { is: "tidy", file, write, ...(terms === undefined ? {} : { terms }) };
}

function termsOf(given: ReadonlyMap<Name, string>): "US" | "UK" | undefined | Request {
  const terms = given.get("terms")?.toUpperCase();
  if (terms !== undefined && terms !== "US" && terms !== "UK")
    return unclear(`--terms is followed by us or uk, not by ${given.get("terms")}.`);
  return terms;
}

function checkRequest(files: readonly string[], given: ReadonlyMap<Name, string>): Request {
  const code = given.get("explain");
  if (code !== undefined) {
    if (files.length > 0 || given.size > 1)
      return unclear(`--explain prints a page of the manual and takes nothing but a code.`);
    return { is: "explain", code };
  }
  if (files.length === 0) return unclear("Name the file to check, or - for standard input.");
  if (files.filter((file) => file === "-").length > 1)
    return unclear("Standard input (-) can be checked only once.");
  const terms = termsOf(given);
  if (typeof terms === "object") return terms;
  const size = given.get("size");
  return {
    is: "check",
    files,
    json: given.has("json"),
    ...(size === undefined ? {} : { size }),
    ...(terms === undefined ? {} : { terms }),
  };
}

const unclear = (why: string): Request => ({ is: "unclear", why });

function noSuchOption(typed: string): string {
  const meant = nearest(typed.replace(/^-+/, ""), Object.keys(OPTIONS));
  return `There is no option ${typed}.${meant ? ` Is --${meant} meant?` : ""}`;
}

function noSuchCommand(typed: string): string {
  const meant = nearest(typed, COMMANDS);
  if (meant) return `There is no command ${typed}. Is ${meant} meant?`;
  const isFile = /[./\\]/.test(typed);
  return isFile
    ? `To check ${typed}, say: loopwright check ${typed}`
    : `There is no command ${typed}. There is: ${COMMANDS.join(", ")}.`;
}
