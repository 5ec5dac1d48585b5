import { describe, expect, it } from "vitest";
import type { LexContext } from "./context.ts";
import { lex } from "./lex.ts";

/** Tokens in short: words by their norm, numbers in angle brackets, "th" for ordinals, breaks as "/". */
function said(text: string, sizes = 1, more: Partial<LexContext> = {}): string {
  return lex(text, 0, text.length, { sizes, ...more })
    .map((token) => {
      if (token.is === "number")
        return `<${token.values.map((value) => value ?? "-").join(" ")}${token.ordinal ? "th" : ""}>`;
      return token.is === "word" ? token.norm : token.is === "mark" ? token.text : "/";
    })
    .join(" ");
}

describe("tokens (notation survey, sections 2, 5 and 10)", () => {
  it.each([
    ["3tr, ch1, 45sc", "<3> tr , ch <1> , <45> sc"],
    ["sc2tog, 2dctog, dc3-tog, sc 2tog", "sc2tog , 2dctog , dc3tog , sc 2tog"],
    ["in next ch-2 sp", "in next ch - <2> sp"],
    ["s.c. in next s. c., d.c.", "sc in next sc , dc"],
    ["1 s c in each s c", "<1> sc in each sc"],
    ["sk next 2 s t s", "sk next <2> sts"],
    ["DC's, ch's, st's", "dc , ch , st"],
    ["sl. st in next ch. 3 sc in next", "sl st in next ch . <3> sc in next"],
    ["Ch. 3, turn", "ch <3> , turn"],
    ["2nd, 2d, second, 4th, 1st, first", "<2th> , <2th> , <2th> , <4th> , <1th> , first"],
    ["twice, once, thrice, twenty-four", "<2> , <1> , <3> , <24>"],
    ["a sc in 1 st", "a sc in <1> st"],
    ["11½ 11 1/2 ½", "<11.5> <11.5> <0.5>"],
    ["3,5 mm and 3.75mm", "<3.5> mm and <3.75> mm"],
    ["(4 dc, inc) x 7", "( <4> dc , inc ) x <7>"],
    ["(4 dc, inc) × 7", "( <4> dc , inc ) x <7>"],
    ["[sc, inc] 4x", "[ sc , inc ] <4> x"],
    ["with yarn x, sc", "with yarn x , sc"],
    ["*sc** rep from *", "* sc ** rep from *"],
    ["∗sc; rep from ＊", "* sc ; rep from *"],
    ["sc … 24 … 30", "sc … <24> … <30>"],
    ["sc ... (24)", "sc … ( <24> )"],
    ["ѕс in next сh", "sc in next ch"],
    ["Тurn, sc\u00a0in next\u20092 sts", "turn , sc in next <2> sts"],
    ["ｓｃ in next ２ sts", "sc in next <2> sts"],
    ["tum, ch 1 − 24 sts", "turn , ch <1> - <24> sts"],
    ["6\" and 6''", '<6> " and <6> "'],
    ["\\*sc; rep from \\*", "* sc ; rep from *"],
    ["Row 12 &amp", "row <12> & amp"],
  ])("%s", (text, wanted) => expect(said(text)).toBe(wanted));

  it("reads size lists as one number wherever one can stand", () => {
    expect(said("Sc in next 41 (45, 51) sts, rep 3 (3, 4) more times - 60 (66, 72) sts", 3)).toBe(
      "sc in next <41 45 51> sts , rep <3 3 4> more times - <60 66 72> sts",
    );
    expect(said('until 11 (11½, 12)" [28 (29, 30.5) cm] from beg', 3)).toBe(
      'until <11 11.5 12> " [ <28 29 30.5> cm ] from beg',
    );
  });

  it("reads graded ranges of rows as two lists", () => {
    expect(said("Rep Rows 8-19 (8-21, 8-25)", 3)).toBe("rep rows <8> - <19 21 25>");
    expect(said("Rows 5-6 (7-8, 9-10)", 3)).toBe("rows <5 7 9> - <6 8 10>");
    expect(said("Rep Rows 3, 5, 7 and 9", 3)).toBe("rep rows <3> , <5> , <7> and <9>");
  });

  it("reads counts by name", () => {
    const counts = new Map([
      ["body sts", [40, 44, 48]],
      ["edge", [2]],
    ]);
    expect(said("Ch {body sts + 1}, {24}, {body sts + edge - 3}, {nothing known}", 3, { counts })).toBe(
      "ch <41 45 49> , { <24> } , <39 43 47> , <>",
    );
    expect(said("{24} {sts}", 3)).toBe("{ <24> } { sts }");
  });

  it("keeps names of sizes whole", () => {
    expect(said("sizes 4X and 2XL only", 2, { sizeNames: ["4X", "2XL"] })).toBe("sizes 4x and 2xl only");
    expect(said("(sc, inc) 4X", 2, { sizeNames: ["S", "M"] })).toBe("( sc , inc ) <4> x");
  });

  it("breaks at the end of a sentence, not where a line was wrapped", () => {
    expect(said("Sc in next\n2 sts.\nTurn")).toBe("sc in next <2> sts . / turn");
    expect(said("Sc in next 2\n\nTurn")).toBe("sc in next <2> / turn");
  });

  it("has exact spans and says what is glued", () => {
    const text = "Ch-2, 12 (14, 16)sc";
    const tokens = lex(text, 0, text.length, { sizes: 3 });
    expect(tokens.map((token) => text.slice(token.span.from, token.span.to))).toEqual([
      "Ch",
      "-",
      "2",
      ",",
      "12 (14, 16)",
      "sc",
    ]);
    expect(tokens.map((token) => token.is !== "break" && token.glued)).toEqual([
      false,
      true,
      true,
      true,
      false,
      true,
    ]);
  });

  it("reads a part of a text with spans of the whole", () => {
    const text = "Row 1: Sc in next 5.";
    const tokens = lex(text, 7, text.length, { sizes: 1 });
    expect(tokens[0]?.span).toEqual({ from: 7, to: 9 });
  });

  it("takes time in proportion to the text", () => {
    const time = (text: string) => {
      const begun = performance.now();
      lex(text, 0, text.length, { sizes: 4 });
      return performance.now() - begun;
    };
    for (const unit of ["(", "1 (", "1, ", "a.b.", " ", "\n", "1-", "* ", "\u0000", "x x ", "1 1/2 "])
      expect(time(unit.repeat(40_000 / unit.length)), unit).toBeLessThan(3000);
  }, 30_000);
});
