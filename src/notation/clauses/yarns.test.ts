import { describe, expect, it } from "vitest";
import { readRow } from "./row-for-tests.ts";

// Forms of words: notation survey, section 7. Rows are our own; how each is understood is common practice, no source.
describe("Yarn, colour, side, hook, markers", () => {
  it.each([
    ["join A in next st", "(join-yarn A @ next st)"],
    ["with RS facing, rejoin yarn at underarm", '(join-yarn RS at "underarm")'],
    ["join yarn with sc in any ch-2 sp", "(join-yarn with sc @ any ch2-sp)"],
    ["dc join cream in any ch-2 sp", "(join-yarn cream with dc @ any ch2-sp)"],
    ["sc to last st, changing to B in last sc", "(sc @ each st ..last 1) (colour B)"],
    ["Change to B.", "(colour B)"],
    ["With A, ch 1, sc across", "(colour A) (ch 1) (sc @ each st ..)"],
    ["change to 4 mm hook", "(hook 4mm)"],
    ["with larger hook, ch 20", "(hook) (ch 20)"],
    ["with WS facing, sc across", "(facing WS) (sc @ each st ..)"],
    ["pm in next st", "(place-marker @ next st)"],
    ["move marker up", "(move-marker)"],
    ["remove marker", "(remove-marker)"],
    ["sc in next 3 sts, drop B, sc in next 3 sts", "(sc @ next 3 st) (aside) (sc @ next 3 st)"],
  ])("%s", (row, tree) => expect(readRow(row)).toBe(tree));
});
