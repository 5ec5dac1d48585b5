import { describe, expect, it } from "vitest";
import { foundIn } from "./found-in.ts";

const echoes = (text: string) => foundIn(text, "sizes/list-differs-once");
const sewn = (words: string, more = ""): string =>
  `Sizes: S (M, L, XL)\n\nBACK\nCh 31 (35, 39, 43).\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. 30 (34, 38, 42) sts.\n${more}\nFINISHING\n${words}`;

describe("a list told in words", () => {
  it("is held against the rows where it differs in one size", () => {
    expect(echoes(sewn("Sew the 30 (34, 38, 42) sts to the yoke."))).toEqual([]);
    expect(echoes(sewn("Sew the 30 (34, 38, 43) sts to the yoke."))).toHaveLength(1);
    expect(echoes(sewn("Sew the 29 (34, 38, 42) sts to the yoke."))).toHaveLength(1);
  });

  it("is another list where it differs in two", () =>
    expect(echoes(sewn("Sew the 30 (34, 37, 41) sts to the yoke."))).toEqual([]));

  it("is right where some other row has it", () =>
    expect(
      echoes(
        sewn(
          "Sew the 30 (34, 38, 43) sts to the yoke.",
          "SLEEVE\nCh 31 (35, 39, 44).\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. 30 (34, 38, 43) sts.\n",
        ),
      ),
    ).toEqual([]));

  it("is no list of the rows where it is a length", () =>
    expect(echoes(sewn("The back measures 30 (34, 38, 43) cm."))).toEqual([]));
});
