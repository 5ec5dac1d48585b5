import { describe, expect, it } from "vitest";
import { foundIn } from "./found-in.ts";

// All hooks and notions used are listed: trade handbook, section 5.3.

const pattern = (materials: string, rows: string) =>
  `MATERIALS\n${materials}\n\nBAND\nCh 25.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn.\n${rows}\n`;

describe("hooks", () => {
  const hooks = (materials: string, rows: string) =>
    foundIn(pattern(materials, rows), "materials/hook-not-listed");
  it("are found by their millimetres", () =>
    expect(hooks("DK yarn, 50 g\n5 mm hook", "Change to 4 mm hook.\nRow 2: Ch 1, sc across.")).toEqual([
      "-: Change to 4 mm hook: The 4 mm hook is used and not listed.",
    ]));
  it("are found in the gauge", () =>
    expect(
      hooks(
        "DK yarn, 50 g\n5 mm hook\n\nGAUGE\n16 sts and 18 rows = 10 cm with 4 mm hook",
        "Row 2: Ch 1, sc across.",
      ),
    ).toHaveLength(1));
  it.each([
    ["the same size otherwise written", "5.00mm (US H-8) hook", "Change to 5 mm hook."],
    ["a letter for listed millimetres", "5 mm hook\n4 mm hook", "Change to size G hook."],
    ["millimetres that makers sell under one letter", "3.25 mm hook", "Change to 3.125 mm hook."],
    ["a hook without a size", "5 mm hook", "Change to smaller hook."],
    ["materials that list no hook", "DK yarn, 50 g", "Change to 4 mm hook."],
  ])("are let be: %s", (_, materials, rows) => expect(hooks(materials, rows)).toEqual([]));
});

describe("notions", () => {
  const notions = (materials: string, rows: string) =>
    foundIn(pattern(materials, rows), "materials/notion-not-listed").map((one) =>
      one.replace(/^.*listed: /, ""),
    );
  it("that are sewn on are found in any list of materials", () => {
    expect(notions("DK yarn, 50 g\n5 mm hook", "Sew on 2 buttons.")).toEqual(["buttons."]);
    expect(notions("DK yarn, 50 g\n5 mm hook", "Sew in the zip.")).toEqual(["a zip."]);
  });
  it("that lie in every basket are found beside other notions", () => {
    expect(notions("DK yarn, 50 g\n5 mm hook\n2 buttons", "Place a marker in last st.")).toEqual([
      "stitch markers.",
    ]);
    expect(notions("DK yarn, 50 g\n5 mm hook", "Place a marker in last st.")).toEqual([]);
    expect(
      notions("DK yarn, 50 g\n5 mm hook\n2 buttons", "With a yarn needle, sew the ends together."),
    ).toEqual(["a yarn needle."]);
  });
  it.each([
    ["listed under another name", "DK yarn\n5 mm hook\nToggles", "Sew on 2 buttons."],
    ["buttonholes", "DK yarn\n5 mm hook", "Sew the button band to the front, buttonholes to the right."],
    ["pins for markers", "DK yarn\n5 mm hook\n2 buttons, safety pins", "Place a marker in last st."],
    [
      "sewing with nothing said of a needle",
      "DK yarn\n5 mm hook\n2 buttons",
      "Sew the ends together. Weave in the ends.",
    ],
  ])("are let be: %s", (_, materials, rows) => expect(notions(materials, rows)).toEqual([]));
});

describe("colours", () => {
  const colours = (materials: string, rows: string) =>
    foundIn(pattern(materials, rows), "materials/colour-not-listed");
  const TWO = "DK yarn: color A (slate), 20 g; color B (cream), 10 g\n5 mm hook";
  it("are found once each", () =>
    expect(colours(TWO, "Row 2: With C, ch 1, sc across.\nRow 3: With C, ch 1, sc across.")).toEqual([
      "Row 2: With C: Colour C is used and not listed.",
    ]));
  it.each([
    ["listed letters", TWO, "Row 2: With B, ch 1, sc across, changing to A in last sc."],
    ["the name beside the letter", TWO, "Row 2: With cream, ch 1, sc across."],
    ["words for one of them", TWO, "Row 2: With second color, ch 1, sc across."],
    [
      "long forms",
      "Main color (MC): 20 g; contrasting color: 10 g\n5 mm hook",
      "Row 2: With CC, ch 1, sc across.",
    ],
    ["materials without colours", "DK yarn, 20 g\n5 mm hook", "Row 2: With B, ch 1, sc across."],
  ])("are let be: %s", (_, materials, rows) => expect(colours(materials, rows)).toEqual([]));
});
