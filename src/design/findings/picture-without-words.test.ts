import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { pictureWithoutWords } from "./picture-without-words.ts";

it("says what, why and what to do", () =>
  expect(said(pictureWithoutWords, { picture: "front.jpg" })).toEqual([
    "The picture front.jpg has no words.",
    "Who does not see it, or has it read aloud, gets nothing.",
    "Say in the square brackets what it shows, as in ![Front of the pullover, flat](front.jpg).",
  ]));
