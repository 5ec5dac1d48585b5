import { mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { proveDesign } from "../design/index.ts";
import { main } from "./main.ts";

let folder = "";
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "begin-"));
});
afterAll(() => rm(folder, { recursive: true }));

async function run(args: readonly string[], answers?: string) {
  let out = "";
  let err = "";
  const input = answers === undefined ? {} : { asks: true, input: pieces(answers) };
  const code = await main(args, {
    out: (text) => {
      out += text;
    },
    err: (text) => {
      err += text;
    },
    columns: 80,
    ...input,
  });
  return { code, out, err };
}

async function* pieces(text: string): AsyncGenerator<Uint8Array> {
  // In pieces that do not end where lines do.
  for (let at = 0; at < text.length; at += 7) yield new TextEncoder().encode(text.slice(at, at + 7));
}

describe("loopwright begin", () => {
  it("writes a proved design from options", async () => {
    const file = join(folder, "top.md");
    const { code, out } = await run([
      "begin",
      "pullover",
      "--fabric",
      "double crochet",
      "--sizes",
      "S L",
      "--title",
      "Plain: a top",
      "--out",
      file,
    ]);
    expect(code).toBe(0);
    expect(out.replace(/\s+/g, " ")).toContain("Every row is proved in every size.");
    const proof = proveDesign(await readFile(file, "utf8"));
    expect(proof.title).toBe("Plain: a top");
    expect(proof.sizes).toEqual(["S", "L"]);
    expect(proof.findings.filter(({ severity }) => severity === "error")).toEqual([]);
  });

  it("asks where nothing is said, and takes the usual for an empty answer", async () => {
    const file = join(folder, "asked.md");
    const answers = ["panels", "Open vest", "", "M", "single crochet", "3", "16 x 17", "", "no", "yes"];
    const { code, out } = await run(["begin", "--out", file], `${answers.join("\n")}\n`);
    expect(out).toContain("What kind of garment?");
    expect(code).toBe(0);
    const text = await readFile(file, "utf8");
    expect(text).toContain('title: "Open vest"');
    expect(text).toContain("# Pockets (make 2)");
  });

  it("never writes over a file", async () => {
    const file = join(folder, "mine.md");
    await writeFile(file, "mine");
    const { code, err } = await run(["begin", "raglan", "--sizes", "M", "--out", file]);
    expect([code, await readFile(file, "utf8")]).toEqual([2, "mine"]);
    expect(err).toContain("is there already");
  });

  it.each([
    [["begin", "poncho"], "There is no construction poncho."],
    [["begin", "raglan", "--fabric", "basket"], "cannot be drafted in basket yet"],
    [["begin", "pullover", "--sizes", "Q"], "The chart has no size Q."],
    [["begin", "pullover", "--gauge", "loose"], "A gauge is stitches and rows over 10 cm"],
    [["begin", "pullover", "--ease", "much"], "The ease at the bust in cm is a number"],
    [["begin"], "Say what to begin with"],
    [["begin", "pullover", "raglan"], "takes one construction"],
    [["check", "--fabric", "bumps"], "--fabric is no option of check"],
  ])("says what is wrong with %j", async (args, why) => {
    const { code, err } = await run(args);
    expect(code).toBe(2);
    expect(err).toContain(why);
  });

  it("tells the cautions for a child's garment", async () => {
    const file = join(folder, "child.md");
    await run(["begin", "raglan", "--body", "children, published", "--sizes", "4 8", "--out", file]);
    expect(await readFile(file, "utf8")).toContain("Follow your local rules");
  });

  it("takes a name with a space for one size", async () => {
    const { err } = await run([
      "begin",
      "panels",
      "--body",
      "babies, published",
      "--sizes",
      "12 months",
      "--gauge",
      "no",
    ]);
    expect(err).toContain("A gauge is stitches and rows");
    expect(err).not.toContain("The chart has no size");
  });
});
