import { describe, expect, it } from "vitest";
import { readRequest } from "./request.ts";

const read = (line: string) => readRequest(line.split(" ").filter(Boolean));
const why = (line: string) => {
  const request = read(line);
  return request.is === "unclear" ? request.why : `understood as ${request.is}`;
};

describe("a command line that can be done", () => {
  it.each([
    ["--version", { is: "version" }],
    ["-v", { is: "version" }],
    ["--help", { is: "help", of: "loopwright" }],
    ["check -h", { is: "help", of: "check" }],
    ["check a.txt - b.md", { is: "check", files: ["a.txt", "-", "b.md"], json: false }],
    [
      "check --json --size 2X --terms uk a.txt",
      { is: "check", files: ["a.txt"], json: true, size: "2X", terms: "UK" },
    ],
    ["check a.txt --terms=US", { is: "check", files: ["a.txt"], json: false, terms: "US" }],
    ["check -- --json", { is: "check", files: ["--json"], json: false }],
    ["size a.md --json", { is: "size", file: "a.md", json: true }],
    ["size --help", { is: "help", of: "size" }],
    ["grade a.md", { is: "grade", file: "a.md", json: false, dryRun: false }],
    ["grade --dry-run -", { is: "grade", file: "-", json: false, dryRun: true }],
    ["check --explain rows/count-differs", { is: "explain", code: "rows/count-differs" }],
  ])("%s", (line, request) => expect(read(line)).toEqual(request));
});

describe("a command line that cannot", () => {
  it.each([
    ["check", "Name the file to check, or - for standard input."],
    ["check - -", "Standard input (-) can be checked only once."],
    ["check --jsno a.txt", "There is no option --jsno. Is --json meant?"],
    ["check --colour a.txt", "There is no option --colour."],
    ["check -x a.txt", "There is no option -x."],
    ["check --json=yes a.txt", "--json takes no value."],
    ["check a.txt --size", "--size is followed by the name of a size, as in --size M."],
    ["check --size --json a.txt", "--size is followed by the name of a size, as in --size M."],
    ["check --size M --size L a.txt", "--size can be given only once."],
    ["check --terms fr a.txt", "--terms is followed by us or uk, not by fr."],
    [
      "check --explain",
      "--explain is followed by the code of a finding, as in --explain rows/count-differs.",
    ],
    ["check --explain a/b c.txt", "--explain prints a page of the manual and takes nothing but a code."],
    ["chekc a.txt", "There is no command chekc. Is check meant?"],
    ["a.txt", "To check a.txt, say: loopwright check a.txt"],
    ["weave", "There is no command weave. There is: begin, check, size, grade, yarn, tidy."],
    ["size", "Name the file of the design."],
    ["size a.md b.md", "size takes one file at a time."],
    ["size --terms us a.md", "--terms is no option of size. It belongs to check and tidy."],
    ["check --dry-run a.md", "--dry-run is no option of check. It belongs to grade."],
    ["grade -", "There is no file to write to in standard input (-): name a file, or say --dry-run."],
    ["--json", "--json belongs to a command: loopwright check."],
  ])("%s", (line, said) => expect(why(line)).toBe(said));
});
