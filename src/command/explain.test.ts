import { describe, expect, it } from "vitest";
import { findPage } from "./manual.ts";
import { setPage } from "./page.ts";
import { paintFor } from "./paint.ts";

const set = (markdown: string, width = 40) => setPage(markdown, width, paintFor(false));

describe("a page of the manual", () => {
  it("keeps the lines of patterns and fills those of prose", () =>
    expect(
      set(
        "# A row\n\n`rows/a` · error\n\nThe row repeats its stars or brackets\nto the **end**.\n\n```pattern wrong\nCh 15.\n\n  Row 1: Sc.\n```\n\n## When",
      ),
    ).toEqual([
      "A row",
      "=====",
      "",
      "rows/a · error",
      "",
      "The row repeats its stars or brackets to",
      "the end.",
      "",
      "    Ch 15.",
      "    ",
      "      Row 1: Sc.",
      "",
      "When",
    ]));
  it("leads on by the command where it links to the page of all", () =>
    expect(set("[How](../index.md#answering) and [rows/b](../rows/b.md)", 80)).toEqual([
      "How: loopwright check --explain index and rows/b",
    ]));
  it("sets lists and tables", () =>
    expect(set("- one\n  more\n- two\n\n| code | |\n|---|---|\n| [a](a.md) | First |")).toEqual([
      "  - one more",
      "  - two",
      "",
      "  code  ",
      "  a     First",
    ]));
});

describe("finding a page", () => {
  const pages = { index: "all", "rows/turn-missing": "one", "rows/doubled": "two", "seams/doubled": "three" };
  const said = (code: string) => {
    const page = findPage(code, pages);
    return "refusal" in page ? page.refusal : page.code;
  };
  it.each([
    ["rows/turn-missing", "rows/turn-missing"],
    ["Turn-Missing", "rows/turn-missing"],
    ["index", "index"],
    ["doubled", "There is no finding doubled. There are: rows/doubled, seams/doubled."],
    ["seams/", "There is no finding seams/. There are: seams/doubled."],
    ["rows/turn-mising", "There is no finding rows/turn-mising. Is rows/turn-missing meant?"],
    ["wool", "There is no finding wool. All codes: loopwright check --explain index"],
  ])("%s", (typed, found) => expect(said(typed)).toBe(found));
});
