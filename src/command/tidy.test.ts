import { mkdtemp, readdir, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { proveDesign } from "../design/index.ts";
import { main } from "./main.ts";

let folder = "";
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "tidy-"));
});
afterAll(() => rm(folder, { recursive: true }));

async function run(...args: readonly string[]) {
  let out = "";
  let err = "";
  const code = await main(["tidy", ...args], {
    out: (text) => {
      out += text;
    },
    err: (text) => {
      err += text;
    },
  });
  return { code, out, err };
}

async function fileOf(text: string): Promise<string> {
  const file = join(folder, `pattern-${Math.random().toString(36).slice(2)}.txt`);
  await writeFile(file, text);
  return file;
}

const UNTIDY =
  "Sizes: S (M)\n\nCuff\nChain 15 (17). row 1 - sc 2nd ch from hk & ea ch across. turn Row 2. ch1, sc BLO in ea st to end, turn; Rows 3-6 rep row 2\n";

describe("loopwright tidy", () => {
  it("sets one row a line, each with its proved count in every size", async () => {
    const { code, out } = await run(await fileOf(UNTIDY));
    expect(code).toBe(0);
    expect(out.split("\n").filter((line) => line.startsWith("Row"))).toEqual([
      "Row 1: Sc in 2nd ch from hook, sc in each ch across, turn. (14 (16) sts)",
      "Row 2: Ch 1, sc BLO in each st to end, turn. (14 (16) sts)",
      "Rows 3-6: Rep Row 2. (14 (16) sts)",
    ]);
  });

  it("changes the terms, and writes into the file only when it is told to", async () => {
    const file = await fileOf(UNTIDY);
    expect((await run(file, "--terms", "uk")).out).toContain("Row 1: Dc in 2nd ch from hook");
    expect(await readFile(file, "utf8")).toBe(UNTIDY);
    await run(file, "--terms", "uk", "--write");
    expect(await readFile(file, "utf8")).toContain("Row 1: Dc in 2nd ch from hook");
  });

  it("leaves a row that was not read as it is, and says so; other terms are then refused", async () => {
    const file = await fileOf(
      "Ch 11.\nRow 1: sc in 2nd ch from hook and in each ch across, turn. 10 sts\nRow 2: Ch 1, frobble the next 3 sts, turn.\n",
    );
    const { code, out, err } = await run(file);
    expect([code, out.includes("Row 2: Ch 1, frobble the next 3 sts, turn.")]).toEqual([0, true]);
    expect(err).toContain("line 3");
    expect(await run(file, "--terms", "uk")).toMatchObject({ code: 1, out: "" });
  });

  it("refuses a design with a table, and a file that is not there", async () => {
    expect((await run("samples/pullover-no-9.md")).code).toBe(1);
    expect((await run("no-such-file.txt")).code).toBe(2);
  });

  it("gives every sample back with the same stitches, in both terms", async () => {
    const files = (await readdir("samples")).filter((name) => name.endsWith(".txt"));
    expect(files.length).toBeGreaterThan(15);
    for (const name of files) {
      const text = await readFile(join("samples", name), "utf8");
      const counts = (of: string) =>
        proveDesign(of).worked.pieces.flatMap(({ lines }) =>
          lines.filter(({ kind }) => kind !== "other").map(({ stitches }) => stitches.join()),
        );
      for (const terms of ["us", "uk"]) {
        const { code, out } = await run(join("samples", name), "--terms", terms);
        expect([name, terms, code]).toEqual([name, terms, 0]);
        expect(counts(out)).toEqual(counts(text));
      }
    }
  });
});
