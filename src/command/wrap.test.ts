import { describe, expect, it } from "vitest";
import { cellsOf, clean, clip, widthOf } from "./cells.ts";
import { fill, hang, wrap } from "./wrap.ts";

describe("columns on a terminal", () => {
  // Source of the widths: Unicode Standard Annex 11, East Asian Width; marks take no column of their own.
  it.each([
    ["sc", 2],
    ["長編み", 6],
    ["u\u0308ber", 4],
    ["½", 1],
    ["🧶", 2],
    ["❤️", 2],
    ["a\u200db", 2],
  ])("%s fills %i", (words, width) => expect(widthOf(words)).toBe(width));
  it("stop at every fourth column after a tab", () =>
    expect(cellsOf("a\tb").map((cell) => cell.text)).toEqual(["a", "   ", "b"]));
});

describe("words from a text", () => {
  it("cannot command the terminal", () =>
    expect(clean("Row\u001b[31m 1\u202e")).toBe("Row\ufffd[31m 1\ufffd"));
  it("are cut to a width", () => {
    expect(clip("Decrease round", 9)).toBe("Decrease…");
    expect(clip("Row 1", 5)).toBe("Row 1");
    expect(clip("長編み", 5)).toBe("長編…");
  });
});

describe("lines", () => {
  it("break at spaces", () => expect(wrap("sc in each  st across", 10)).toEqual(["sc in each", "st across"]));
  it("break a word only where it fills a whole line", () =>
    expect(wrap("an overlongword here", 6)).toEqual(["an", "overlo", "ngword", "here"]));
  it("never break a number", () => expect(fill(["1234567", "(89,"], 5)).toEqual(["1234567", "(89,"]));
  it("hang behind a lead", () => expect(hang("Try: ", ["One.", "Two."])).toEqual(["Try: One.", "     Two."]));
  it("are none for no words", () => expect(wrap("  ", 10)).toEqual([]));
});
