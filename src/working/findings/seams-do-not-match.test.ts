import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { seamsDoNotMatch } from "./seams-do-not-match.ts";

const back = { one: "side of Back", other: "side of Front" };

it("compares lengths and places", () =>
  expect(
    said(seamsDoNotMatch, {
      words: "Sew side seams",
      cases: [{ size: "one size", ...back, oneCm: 40, oneCount: 44, otherCm: 42.54, otherCount: 47 }],
    }),
  ).toEqual([
    'The edges of "Sew side seams" do not match.',
    "Length: side of Back 40 cm, side of Front 42.5 cm. Places: side of Back 44, side of Front 47.",
    "Change one of the pieces so that the edges match.",
    "Say how much of the longer edge is eased in.",
  ]));

it("says only what is known, and each pair of edges by itself", () =>
  expect(
    said(seamsDoNotMatch, {
      words: "Sew seams",
      cases: [
        { size: "M", ...back, oneCm: null, oneCount: 44, otherCm: 42, otherCount: 46 },
        { size: "L", ...back, oneCm: null, oneCount: 48, otherCm: 44, otherCount: 50 },
        {
          size: "L",
          one: "top of Sleeve",
          other: "armhole",
          oneCm: 44,
          oneCount: null,
          otherCm: 41,
          otherCount: null,
        },
      ],
    }).slice(0, 2),
  ).toEqual([
    'The edges of "Sew seams" do not match in sizes M and L.',
    "Places: side of Back 44 and 48, side of Front 46 and 50 in sizes M and L. " +
      "Length: top of Sleeve 44 cm, armhole 41 cm in size L.",
  ]));
