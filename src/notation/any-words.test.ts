import { array, assert, constantFrom, property } from "fast-check";
import { describe, expect, it } from "vitest";
import { readPattern } from "./read-pattern.ts";

/** Words, marks and numbers that patterns are made of. */
const WORDS = (
  "* ** ( ) [ ] { } , ; . : - = # Row Rnd 1 2 3 12 (4, 8) sc dc ch sl st sts sp inc dec 2tog shell in into next each last first same " +
  "ring skip rep from to end across around times more twice turn join fasten off until cm every other end evenly hook BLO RS WS " +
  "Repeat with between center corner and or ending leaving unworked make piece Sleeve Back * * ** ( )"
).split(" ");

describe("pattern words in any order", () => {
  it("are read without an end of patience, and every character is kept", () => {
    assert(
      property(array(constantFrom(...WORDS, "\n"), { minLength: 1, maxLength: 60 }), (words) => {
        const text = words.join(" ");
        expect(readPattern(text).text).toBe(text);
      }),
      { numRuns: 1000 },
    );
  });

  it("are read where stars and brackets stand anyhow", () => {
    const repeats =
      "* ** * ** ( ) [ ] . , Rep rep from to dc ch 1 2 last sts times more once ending at".split(" ");
    assert(
      property(array(constantFrom(...repeats), { minLength: 4, maxLength: 24 }), (words) => {
        const text = `4 Ch 1. ${words.join(" ")}.`;
        expect(readPattern(text).text).toBe(text);
      }),
      { numRuns: 1000 },
    );
  });

  it("keep a closing star that was called after its steps were taken away", () => {
    const text = "4 Ch 1. dc.** Rep * * **";
    expect(readPattern(text).text).toBe(text);
  });
});
