import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { Ajv2020 } from "ajv/dist/2020.js";
import { afterAll, describe, expect, it } from "vitest";
import schema from "../../docs/check-report.schema.json" with { type: "json" };
import manifest from "../../package.json" with { type: "json" };
import { main } from "./main.ts";

const folder = mkdtempSync(path.join(tmpdir(), "check-"));
afterAll(() => rmSync(folder, { recursive: true }));

/** Keeps a file of this content and returns its name. */
function keep(name: string, content: string | Uint8Array): string {
  writeFileSync(path.join(folder, name), content);
  return path.join(folder, name);
}

async function run(args: readonly string[], input?: string) {
  let out = "";
  let err = "";
  const code = await main(args, {
    out: (text) => (out += text),
    err: (text) => (err += text),
    columns: 90,
    ...(input === undefined ? {} : { input: chunks(input) }),
  });
  return { code, out, err };
}

/** A text as it comes from a pipe: in pieces that may cut a letter in two. */
async function* chunks(text: string): AsyncGenerator<Uint8Array> {
  const bytes = new TextEncoder().encode(text);
  for (let at = 0; at < bytes.length; at += 7) yield bytes.slice(at, at + 7);
}

const GRADED = `Röhrenschal
Sizes: S (M, L)

Note: Ch 1 does not count as a st throughout.

Band
Ch 15 (19, 23).
Row 1: Sc in 2nd ch from hook and in each ch across, turn. 14 (18, 22) sts.
Row 2: Ch 1, sc in each st across, turn. 14 (18, 22) sts.
`;
// 18 sts are printed as 19 in size M alone.
const WRONG = GRADED.replace(/14 \(18, 22\) sts\.\n$/, "14 (19, 22) sts.\n");

describe("words about the command", () => {
  it("are its version", async () =>
    expect(await run(["--version"])).toEqual({ code: 0, out: `${manifest.version}\n`, err: "" }));
  it("are its help, on the output when asked for and on the error output when not", async () => {
    expect(await run(["--help"])).toMatchObject({ code: 0, err: "" });
    expect(await run(["check", "--help"])).toMatchObject({ code: 0, err: "" });
    expect(await run([])).toMatchObject({ code: 2, out: "" });
  });
  it("say what was typed wrong, and how to get on", async () =>
    expect(await run(["check", "--sise", "M"])).toEqual({
      code: 2,
      out: "",
      err: "loopwright: There is no option --sise. Is --size meant?\nMore: loopwright check --help\n",
    }));
});

describe("checking a file", () => {
  it("ends with 0 where nothing is wrong", async () => {
    const { code, out, err } = await run(["check", keep("good.txt", GRADED)]);
    expect({ code, err }).toEqual({ code: 0, err: "" });
    expect(out).toContain("No errors");
  });
  it("ends with 1 where an error is found, and names its size and line", async () => {
    const { code, out } = await run(["check", keep("wrong.txt", WRONG)]);
    expect(code).toBe(1);
    expect(out).toMatch(/error .*size M/);
    expect(out).toContain("9  Row 2: Ch 1, sc in each st across, turn. 14 (19, 22) sts.");
  });
  it("looks at one size", async () => {
    const file = keep("wrong.txt", WRONG);
    expect((await run(["check", "--size", "m", file])).code).toBe(1);
    expect((await run(["check", "--size", "L", file])).code).toBe(0);
    expect(await run(["check", "--size", "4X", file])).toEqual({
      code: 2,
      out: "",
      err: `loopwright: ${file} has no size 4X. Its sizes are S, M, L.\n`,
    });
  });
  it("reads standard input", async () => {
    const { code, out } = await run(["check", "-"], GRADED);
    expect(code).toBe(0);
    expect(out).toMatch(/^Röhrenschal +Standard input\n/);
  });
  it("reads the terms it is told in a text that does not say", async () => {
    const text = GRADED.replaceAll(/\bsc\b/gi, "dc");
    const terms = async (...more: string[]) => (await run(["check", ...more, "-"], text)).out.split("\n")[1];
    expect(await terms("--terms", "uk")).toMatch(/^UK terms/);
    expect(await terms("--terms", "us")).toMatch(/^US terms/);
  });
  it("is not stopped by a byte order mark or by line ends of another system", async () => {
    const file = keep("marked.txt", `\ufeff${GRADED.replaceAll("\n", "\r\n")}`);
    const { code, out } = await run(["check", file]);
    expect(code).toBe(0);
    expect(out).toMatch(/^Röhrenschal/);
  });
  it("says that nothing was found in an empty one", async () =>
    expect((await run(["check", keep("empty.txt", "")])).out).toContain("There was nothing to prove."));
});

describe("a file that cannot be checked", () => {
  it.each([
    ["is not there.", () => path.join(folder, "none.txt")],
    ["is a folder. Name the file of the pattern itself.", () => folder],
    ["is not a text file. Save the pattern as plain text, in UTF-8.", () => keep("null.txt", "Row 1\0")],
    [
      "is not in UTF-8. Save the pattern as plain text, in UTF-8.",
      () => keep("latin.txt", Uint8Array.of(0x52, 0xfc, 0x20)),
    ],
    [
      "is larger than 10 MB. A written pattern is much smaller: is it another file?",
      () => keep("large.txt", "a".repeat(10_000_001)),
    ],
  ])("%s", async (why, make) => {
    const file = make();
    expect(await run(["check", file])).toEqual({ code: 2, out: "", err: `loopwright: ${file} ${why}\n` });
  });
  it("keeps no other from being checked, and the worst decides", async () => {
    const good = keep("good.txt", GRADED);
    const wrong = keep("wrong.txt", WRONG);
    const { code, out } = await run(["check", path.join(folder, "none.txt"), good, wrong]);
    expect(code).toBe(2);
    expect(out.match(/^Röhrenschal/gm)).toHaveLength(2);
    expect((await run(["check", good, wrong, good])).code).toBe(1);
  });
});

describe("JSON", () => {
  const fits = new Ajv2020({ strict: true, allowUnionTypes: true, allErrors: true }).compile(schema);
  const json = async (...args: string[]) => {
    const { code, out } = await run(["check", "--json", ...args]);
    const lines = out.split("\n");
    expect(lines.pop()).toBe("");
    return { code, reports: lines.map((line) => JSON.parse(line)) };
  };

  it("is one object a file and a line, and fits its schema", async () => {
    const files = [keep("good.txt", GRADED), keep("wrong.txt", WRONG), keep("empty.txt", "")];
    const { code, reports } = await json(...files, path.join(folder, "none.txt"));
    expect(code).toBe(2);
    expect(reports.map((report) => report.file)).toEqual(files);
    for (const report of reports) {
      fits(report);
      expect(fits.errors ?? []).toEqual([]);
    }
  });
  it("fits its schema for the samples too", async () => {
    const sample = (name: string) => new URL(`../../samples/${name}.txt`, import.meta.url).pathname;
    const { reports } = await json(sample("pullover-no-9"), sample("lace-top-shells"), sample("toy-spirals"));
    expect(reports).toHaveLength(3);
    for (const report of reports) {
      fits(report);
      expect(fits.errors ?? []).toEqual([]);
      const counts = report.pieces.flatMap((piece: { rows: { stitches: unknown[] }[] }) =>
        piece.rows.map((row) => row.stitches.length),
      );
      expect(new Set(counts)).toEqual(new Set([report.sizes.length]));
    }
  });
  it("would be found not to fit", async () => {
    const { reports } = await json(keep("good.txt", GRADED));
    expect(fits({ ...reports[0], terms: "FR" })).toBe(false);
    expect(fits({ ...reports[0], more: 1 })).toBe(false);
  });
  it("tells rows and findings with their places, from 1", async () => {
    const { reports } = await json(keep("wrong.txt", WRONG));
    const [report] = reports;
    expect(report).toMatchObject({
      loopwright: manifest.version,
      title: "Röhrenschal",
      terms: "US",
      sizes: ["S", "M", "L"],
      coverage: { instructionLines: 3 },
    });
    expect(report.pieces[0].rows[2]).toMatchObject({
      label: "Row 2",
      line: 9,
      first: 2,
      last: 2,
      kind: "row",
      read: true,
      stitches: [14, 18, 22],
      kinds: { sc: [14, 18, 22] },
      printed: [14, 19, 22],
      trust: false,
    });
    const column = "Row 2: Ch 1, sc in each st across, turn. ".length + 1;
    expect(
      report.findings.filter((finding: { severity: string }) => finding.severity === "error"),
    ).toMatchObject([
      { code: "rows/count-differs", piece: "Band", row: "Row 2", line: 9, column, endLine: 9, sizes: ["M"] },
    ]);
  });
  it("has one value a list where one size is asked for", async () => {
    const { reports } = await json("--size", "L", keep("good.txt", GRADED));
    expect(reports[0].sizes).toEqual(["L"]);
    expect(reports[0].pieces[0].rows[1]).toMatchObject({ stitches: [22], printed: [22], side: [null] });
  });
  it("gives the row numbers of each size where they differ", async () => {
    const text = `${GRADED}Rows 3-4 (6, 8): Rep Row 2. 14 (18, 22) sts.\n`;
    const { reports } = await json(keep("long.txt", text));
    expect(reports[0].pieces[0].rows[3]).toMatchObject({ first: 3, last: [4, 6, 8] });
  });
});

describe("--explain", () => {
  it("prints the page of a finding", async () => {
    const page = readFileSync(new URL("../../docs/findings/rows/count-differs.md", import.meta.url), "utf8");
    const { code, out } = await run(["check", "--explain", "rows/count-differs"]);
    expect(code).toBe(0);
    expect(out.split("\n")[0]).toBe(page.split("\n")[0]?.replace("# ", ""));
    expect(out).not.toContain("```");
  });
  it("says that there is no such page", async () =>
    expect(await run(["check", "--explain", "rows/count-difers"])).toEqual({
      code: 2,
      out: "",
      err: "loopwright: There is no finding rows/count-difers. Is rows/count-differs meant?\n",
    }));
});
