import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { applyEdits, proveDesign } from "../prove.ts";
import { addSize, setEntry } from "./edit-table.ts";

const DESIGN = `---
title: Cowl # a name to come
sizes: S M L
fabrics:
  plain: { hook: 5 mm, swatch: { washed: 30 sts x 30 rows in 20 cm } } # dried flat
  rib:
    hook: 4.5 mm # smaller
plan:
  width: 20 24 28 cm
---
Row 1: Ch 4.
`;

const set = (path: readonly string[], words: string, text = DESIGN) => {
  const edit = setEntry(text, path, words);
  return edit && applyEdits(text, [edit]);
};

describe("one entry set", () => {
  it.each<[string[], string, string, string]>([
    [["title"], "Loop", "title: Cowl #", "title: Loop #"],
    [["fabrics", "plain", "hook"], "5.5 mm", "hook: 5 mm,", "hook: 5.5 mm,"],
    [["fabrics", "plain", "swatch", "washed"], "31 sts x 30 rows in 20 cm", "30 sts x", "31 sts x"],
    [["fabrics", "plain", "multiple"], "2 + 1", " } } # dried", " }, multiple: 2 + 1 } # dried"],
    [
      ["fabrics", "plain", "swatch", "stretched"],
      "30 sts in 24 cm",
      "20 cm } }",
      "20 cm, stretched: 30 sts in 24 cm } }",
    ],
    [["fabrics", "rib", "multiple"], "2", "# smaller\n", "# smaller\n    multiple: 2\n"],
    [["plan", "length"], "half of bust: no", "28 cm\n", '28 cm\n  length: "half of bust: no"\n'],
    [["ease", "bust"], "-4 cm", "28 cm\n", "28 cm\nease:\n  bust: -4 cm\n"],
    [["fabrics", "plain", "stitch"], "sc, dc", " } } # dried", ' }, stitch: "sc, dc" } # dried'],
  ])("%s", (path, words, before, after) => expect(set(path, words)).toBe(DESIGN.replace(before, after)));

  it("gives a plain text a table", () =>
    expect(set(["sizes"], "S M", "Row 1: Ch 4.\n")).toBe("---\nsizes: S M\n---\n\nRow 1: Ch 4.\n"));
  it("is not possible below words", () => expect(set(["title", "more"], "x")).toBeNull());
  it("can be read again", () => {
    const text = set(["yarn", "main", "class"], "4") ?? "";
    expect(proveDesign(text).table?.yarns[0]?.yarnClass).toBe(4);
  });
});

describe("a size added", () => {
  const add = (name: string, after: string | null, text = DESIGN) => {
    const edits = addSize(text, name, after);
    return edits && applyEdits(text, edits);
  };
  it("gets its neighbour's values to begin with", () =>
    expect(add("XL", "L")).toBe(DESIGN.replace("S M L", "S M L XL").replace("24 28 cm", "24 28 28 cm")));
  it("may come first or between", () => {
    expect(add("XS", null)).toBe(DESIGN.replace("S M L", "XS S M L").replace("20 24", "20 20 24"));
    expect(add("M/L", "M")).toBe(DESIGN.replace("S M L", "S M M/L L").replace("24 28", "24 24 28"));
  });
  it("keeps commas and brackets", () =>
    expect(add("XL", "L", DESIGN.replace("S M L", "[S, M, L]").replace("20 24 28", "20 (24, 28)"))).toBe(
      DESIGN.replace("S M L", "[S, M, L, XL]").replace("20 24 28", "20 (24, 28, 28)"),
    ));
  it("is refused where there is no such place", () => {
    expect(add("XL", "XXL")).toBeNull();
    expect(add("M", "L")).toBeNull();
    expect(add("M", null, "Row 1: Ch 4.")).toBeNull();
  });
  it("touches only the lines concerned of a whole design", () => {
    const sample = readFileSync(new URL("../../../samples/pullover-no-9.md", import.meta.url), "utf8");
    const text = add("6X", "5X", sample) ?? "";
    const [old, now] = [sample.split("\n"), text.split("\n")];
    expect(now).toHaveLength(old.length);
    expect(now.filter((line, at) => line !== old[at]).length).toBeGreaterThan(10);
    const table = proveDesign(text).table;
    expect(table?.sizes).toHaveLength(10);
    // The chart has no 6X; every list has its tenth value.
    expect(new Set(table?.findings.map(({ code }) => code))).toEqual(new Set(["design/name-unknown"]));
    expect(table?.counts.every(({ values }) => values === null || values.length === 10)).toBe(true);
  }, 120_000);
});
