import { describe, expect, it } from "vitest";
import type { Finding } from "../base/index.ts";
import type { Proof } from "../design/index.ts";
import { handMadeProof } from "./hand-made-proof.ts";
import { setReport } from "./report.ts";
import { viewOf } from "./view.ts";

const report = (proof: Proof, columns = 80, size?: number): string =>
  setReport(viewOf(proof, size), "cowl.txt", { columns });

const cowl = handMadeProof({
  sizes: ["S", "M"],
  conventions: ["The ch 1 at the start of a row does not count as a stitch."],
  pieces: {
    Band: [
      { text: "Row 11: Sc across, turn.", stitches: [64, 66] },
      {
        text: "Row 12: Ch 1, *sc in next 6 sts, sc2tog; rep from * across, turn.",
        stitches: [56, null],
        proved: false,
        wrong: ["error rows/repeat-leaves-stitches @ *sc in next 6 sts, sc2tog; rep from * across"],
      },
    ],
  },
});
const [leaves] = cowl.findings as readonly [Finding];
/** The finding whose layout the house fixes: 8 repeats of 8 use 64 of 66 stitches and leave 2. */
const said: Finding = {
  ...leaves,
  sizes: [1],
  what: "Row 12 does not come out even in size M.",
  why: "Row 11 ends with 66 stitches. The repeat takes 8: 8 repeats use 64 and leave 2 unworked.",
  todo: [
    { say: "Work the last 2 stitches after the repeat." },
    {
      say: "End Row 11 on a multiple of 8.",
      edits: [{ span: { from: 0, to: 0 }, text: "" }],
    },
  ],
};
const proof: Proof = { ...cowl, findings: [said] };

it("sets a proof from its title to its sum", () =>
  expect(report(proof)).toBe(`Little Cowl                                                             cowl.txt
US terms.
2 sizes: S, M.
2 instruction lines, all read. 1 of 2 lines that make rows proved.

Settled for the whole pattern
  The ch 1 at the start of a row does not count as a stitch.

Band                 S   M
   3  Row 11        64  66
!! 4  Row 12        56   ?

Key: !! an error · ? not known

In Band

error  Row 12 does not come out even in size M.      rows/repeat-leaves-stitches
  4  Row 12: Ch 1, *sc in next 6 sts, sc2tog; rep from * across, turn.
                   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
  Row 11 ends with 66 stitches. The repeat takes 8: 8 repeats use 64 and leave 2
  unworked.
  Try: Work the last 2 stitches after the repeat.
       End Row 11 on a multiple of 8. (can be applied)

1 error. 1 of 2 lines that make rows proved.
`));

describe("a finding", () => {
  const place = (finding: Finding, columns = 80): string => {
    const text = report({ ...cowl, findings: [finding] }, columns);
    return text.slice(text.indexOf("In Band"), text.indexOf("\n\n", text.indexOf("In Band") + 9));
  };

  it("shows a second place before or after its own, as they stand in the text", () => {
    const at = cowl.text.indexOf("Sc across");
    expect(place({ ...said, also: { from: at, to: at + 9 } })).toContain(
      [
        "  3  Row 11: Sc across, turn.",
        "             ---------",
        "  4  Row 12: Ch 1, *sc in next 6 sts, sc2tog; rep from * across, turn.",
      ].join("\n"),
    );
  });
  it("puts its code below where the sentence leaves no room", () =>
    expect(place(said, 60).split("\n").slice(2, 4)).toEqual([
      "error  Row 12 does not come out even in size M.",
      "                                 rows/repeat-leaves-stitches",
    ]));
  it.each([40, 60, 80, 140])("stays within %i columns", (columns) => {
    for (const line of report(proof, columns).split("\n")) expect(line.length).toBeLessThanOrEqual(columns);
  });
  it("says that it stands outside the pieces", () =>
    expect(report({ ...cowl, findings: [said, { ...said, piece: null }] })).toContain(
      "\nOutside the pieces\n",
    ));
});

describe("one size alone", () => {
  it("has the findings of that size", () => {
    expect(report(proof, 80, 1)).toContain("error  Row 12");
    expect(report(proof, 80, 1)).toContain("Size M of 2: S, M.");
  });
  it("says that there are findings in others", () => {
    const small = report(proof, 80, 0);
    expect(small).not.toContain("error  Row 12");
    expect(small.replace(/\s+/g, " ")).toContain(
      "No errors. 1 of 2 lines that make rows proved. 1 finding in other sizes not shown.",
    );
  });
});

describe("answers", () => {
  const at = cowl.text.indexOf("Sc across");
  const answer = {
    span: { from: at, to: at + 9 },
    is: "as-meant",
    reason: "It is the strap.",
    stamp: null,
  } as const;
  const answered = report({
    ...cowl,
    findings: [],
    answered: [{ finding: said, answer }],
    vouched: [{ piece: "Band", row: "Row 11", answer: { ...answer, is: "vouched", reason: "" } }],
    unstamped: [{ answer, edit: { span: { from: at + 9, to: at + 9 }, text: " ~k7f2q" } }],
  });

  it("are shown with their reasons, and with the stamps they lack", () =>
    expect(answered.slice(answered.indexOf("Answered"))).toBe(`Answered as meant
  line 4  Row 12 does not come out even in size M. (rows/repeat-leaves-stitches)
    As meant: It is the strap.

Vouched for, not proved
  line 3  Row 11 of Band: no reason given

Answers without a stamp
  Write the stamp into the answer, so that it opens again when the row or its
  counts change:
  line 3  Sc across ~k7f2q

No errors. 1 of 2 lines that make rows proved.
`));
  it("mark their rows in the table", () => expect(answered).toMatch(/4 {2}Row 12 +m/));
});

describe("colour", () => {
  const coloured = setReport(viewOf(proof), "cowl.txt", { columns: 80, colour: true });
  it("changes no word", () =>
    // biome-ignore lint/suspicious/noControlCharactersInRegex: these are the codes of colours
    expect(coloured.replace(/\u001b\[[\d;]*m/g, "")).toBe(report(proof)));
  it("is louder for an error than for a note", () => {
    expect(coloured).toContain("\u001b[1;31merror\u001b[0m");
    const note = setReport(viewOf({ ...proof, findings: [{ ...said, severity: "note" }] }), "cowl.txt", {
      columns: 80,
      colour: true,
    });
    expect(note).not.toContain("\u001b[1;31m");
  });
  it("cannot be brought in by the pattern", () => {
    const text = cowl.text.replace("Row 12:", "Row \u001b[5m:");
    const title = "\u001b[2JCowl";
    const set = report({ ...proof, title, text, findings: [{ ...said, what: "\u0007 rings" }] });
    // biome-ignore lint/suspicious/noControlCharactersInRegex: no control may be left
    expect(set).not.toMatch(/[\u0000-\u0009\u000b-\u001f]/);
  });
});
