import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { proveDesign } from "../src/design/index.ts";

const PAGES = new URL("../docs/findings/", import.meta.url).pathname;

const pages = readdirSync(PAGES, { recursive: true, encoding: "utf8" })
  .filter((path) => path.endsWith(".md") && path.includes("/"))
  .map((path) => ({
    code: path.replace(/\.md$/, ""),
    examples: [
      ...readFileSync(join(PAGES, path), "utf8").matchAll(
        /```pattern (wrong|right)( also [^\n]*)?\n([\s\S]*?)```/g,
      ),
    ].map((found) => ({ is: found[1], also: found[2] ?? "", text: found[3] ?? "" })),
  }));

/** Codes raised on a text, notes left out but for the one asked about. */
const raised = (text: string, code: string): readonly string[] =>
  proveDesign(text)
    .findings.filter((finding) => finding.severity !== "note" || finding.code === code)
    .map((finding) => finding.code);

describe.each(pages.filter((page) => page.examples.length > 0))("the page of $code", ({ code, examples }) => {
  it.each(examples.filter((each) => each.is === "wrong"))("raises it on the wrong example", (example) => {
    const found = raised(example.text, code);
    expect(found).toContain(code);
    expect(found.filter((each) => each !== code && !example.also.includes(each))).toEqual([]);
  });

  it.each(examples.filter((each) => each.is === "right"))("finds nothing in the right example", (example) => {
    expect(raised(example.text, code)).toEqual([]);
  });
});
