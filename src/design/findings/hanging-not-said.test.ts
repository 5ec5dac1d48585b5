import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { hangingNotSaid } from "./hanging-not-said.ts";

it("says what, why and what to do", () =>
  expect(said(hangingNotSaid, { fabric: "bump" })).toEqual([
    "The swatch of bump was hung, and nothing says which lengths hang.",
    "Finished lengths are those of the garment lying flat until the table says what hangs.",
    "Say it in the table, as in: hangs: { hem to underarm: finished bust }.",
    "Leave it, if growth does not matter here.",
  ]));
