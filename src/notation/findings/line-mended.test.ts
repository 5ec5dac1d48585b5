import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { lineMended } from "./line-mended.ts";

it("says how it is read", () =>
  expect(
    said(lineMended, { words: "(sc, ch 2, sc in next st", how: 'a closing bracket is read after "sc"' }),
  ).toEqual([
    'A slip in "(sc, ch 2, sc in next st" is read past.',
    'A closing bracket is read after "sc".',
    "Mend it in the text.",
  ]));
