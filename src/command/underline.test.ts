import { describe, expect, it } from "vitest";
import { LineIndex } from "../base/index.ts";
import { underline } from "./underline.ts";

/** Underlines the words given inside a text, as it would be printed. */
function show(text: string, words: string, width = 80): string {
  const from = text.indexOf(words);
  expect(from).toBeGreaterThanOrEqual(0);
  return underlined(text, from, from + words.length, width);
}

function underlined(text: string, from: number, to: number, width: number): string {
  return underline(text, new LineIndex(text), { from, to }, width)
    .flatMap((row) => [`${row.line ?? "-"} ${row.text}`, ...(row.marks === "" ? [] : [`  ${row.marks}`])])
    .join("\n");
}

const row = "Row 12: Ch 1, *sc in next 6 sts, sc2tog; rep from * across, turn.";

describe("a place in a line that fits", () => {
  it("is marked under its words", () =>
    expect(show(row, "sc2tog")).toBe(`1 ${row}\n                                   ^^^^^^`));
  it("leaves out the spaces at its ends", () =>
    expect(underlined("a bc d", 1, 5, 20)).toBe("1 a bc d\n    ^^"));
  it("stands under tabs, wide and combining letters", () => {
    expect(show("\tRow 1:\tsc", "sc")).toBe("1 Row 1:  sc\n          ^^");
    expect(show("長編み dc", "編み")).toBe("1 長編み dc\n    ^^^^");
    expect(show("fu\u0308r dc", "dc")).toBe("1 fu\u0308r dc\n      ^^");
  });
  it("has one sign where something is missing", () => {
    expect(underlined("Row 1", 3, 3, 20)).toBe("1 Row 1\n     ^");
    expect(underlined("Row 1", 5, 5, 20)).toBe("1 Row 1\n       ^");
    expect(underlined("", 0, 0, 20)).toBe("1 \n  ^");
  });
  it("is clear of line ends and of places past the text", () => {
    expect(underlined("Row 1\r\nRow 2\r\n", 0, 7, 20)).toBe("1 Row 1\n  ^^^^^");
    expect(underlined("Row 1", 4, 99, 20)).toBe("1 Row 1\n      ^");
  });
});

describe("a line that is too long", () => {
  const long = `${"sc in next st, ".repeat(8)}HERE in last 2 sts, turn. ${"And so on. ".repeat(8)}`;
  it("is cut to a window around the place", () =>
    expect(show(long, "HERE", 50)).toBe(
      "1 …sc in next st, HERE in last 2 sts, turn. And so…\n                  ^^^^",
    ));
  it("keeps its beginning or its end where the place is near it", () => {
    expect(show(row, "Row 12", 30)).toBe("1 Row 12: Ch 1, *sc in next 6…\n  ^^^^^^");
    expect(show(row, "turn.", 30)).toBe("1 …rep from * across, turn.\n                      ^^^^^");
  });
  it.each([20, 33, 47, 64])("never grows wider than %i columns, and marks all of a short place", (width) => {
    for (let at = 0; at + 4 < long.trimEnd().length; at++) {
      if (long[at] === " " || long[at + 3] === " ") continue;
      const rows = underline(long, new LineIndex(long), { from: at, to: at + 4 }, width);
      for (const { text, marks } of rows) {
        expect(text.length).toBeLessThanOrEqual(width);
        expect(marks.length).toBeLessThanOrEqual(width);
      }
      const marked = rows.map(({ text, marks }) =>
        [...marks].map((sign, column) => (sign === "^" ? text[column] : "")).join(""),
      );
      expect(marked.join("").replace(/ /g, "")).toBe(long.slice(at, at + 4).replace(/ /g, ""));
    }
  });
  it("goes on below under a long place", () =>
    expect(show(row, "*sc in next 6 sts, sc2tog; rep from * across", 41)).toBe(
      [
        "1 Row 12: Ch 1, *sc in next 6 sts, sc2tog;",
        "                ^^^^^^^^^^^^^^^^^^^^^^^^^^",
        "- rep from * across, turn.",
        "  ^^^^^^^^^^^^^^^^^",
      ].join("\n"),
    ));
});

describe("a place over several lines", () => {
  const lines = ["Row 1: Sc", "in each", "", "st across.", "Turn.", "Row 2."].join("\n");
  it("shows each", () =>
    expect(show(lines, "Sc\nin each\n\nst")).toBe(
      ["1 Row 1: Sc", "         ^^", "2 in each", "  ^^^^^^^", "4 st across.", "  ^^"].join("\n"),
    ));
  it("shows the first two and the last of many", () =>
    expect(show(lines, lines)).toBe(
      ["1 Row 1: Sc", "  ^^^^^^^^^", "2 in each", "  ^^^^^^^", "- …", "6 Row 2.", "  ^^^^^^"].join("\n"),
    ));
});
