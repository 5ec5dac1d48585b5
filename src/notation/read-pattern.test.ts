import { describe, expect, it } from "vitest";
import { readPattern } from "./read-pattern.ts";
import type { Instruction, PatternTree } from "./tree.ts";

const labelOf = (instruction: Instruction): string => {
  const { label, sizes } = instruction;
  const limited = sizes.length > 0 ? ` {${sizes.join(",")}}` : "";
  return (label ? `${label.words}${label.side ? ` ${label.side}` : ""}` : "-") + limited;
};

/** Pieces in short: "Back: -, Row 1 RS, Row 2"; a section has a dash before its name. */
const outline = (tree: PatternTree): string[] =>
  tree.pieces.map(
    (piece) =>
      `${piece.level === 2 ? "- " : ""}${piece.name}${piece.make ? ` x${piece.make.values.join("/")}` : ""}: ${piece.instructions.map(labelOf).join(", ")}`,
  );

const VEST = `Meadow Vest

A roomy vest worked from the hem up. It has no shaping at the waist, so it is quick to make.

SIZES
S (M, L, XL)
To fit bust 80 (90, 100, 110) cm

MATERIALS
Yarn: class 4, 100 m in 50 g, 5 (6, 7, 8) balls
5.5 mm hook
4 buttons, yarn needle

GAUGE
14 sts and 12 rows = 10 cm [4"] in hdc

ABBREVIATIONS (US terms)
ch = chain; hdc = half double crochet; sl st = slip stitch; st(s) = stitch(es)

SPECIAL STITCHES
Shell: 5 dc in next st.
V-stitch (V-st): (dc, ch 1, dc) in next st.

NOTES
1. Ch 2 at the beginning of a row does not count as a st.
2. Turn at the end of each row.

BACK
Ch 62 (68, 74, 80).
Row 1 (RS): Hdc in 3rd ch from hook and in each ch across, turn. (60 (66, 72, 78) sts)
Row 2: Ch 2, hdc in each st across, turn.
Rows 3-20 (22, 24, 26): Rep Row 2.
Work 4 more rows even.
Fasten off.

Shape armholes
Row 1: Sl st in first 4 sts, ch 2, hdc to last 4 sts, turn. Row 2: Ch 2, hdc across, turn.
Sizes L and XL only:
Row 3: Ch 2, hdc2tog, hdc to end, turn.
All sizes:
Next row: Ch 2, hdc across.

SLEEVES (make 2)
Ch 30 (32, 34, 36).
Row 1: Hdc in 3rd ch from hook and in each ch across, turn.

FINISHING
Block the pieces.
Sew side seams.
`;

describe("a whole pattern", () => {
  const tree = readPattern(VEST);

  it("finds pieces, sections and every row", () =>
    expect(outline(tree)).toEqual([
      "BACK: -, Row 1 RS, Row 2, Rows 3-20 (22, 24, 26), -, -",
      "- Shape armholes: Row 1, Row 2, Row 3 {2,3}, Next row",
      "SLEEVES x2: -, Row 1",
      "FINISHING: -",
    ]));

  it("finds the title, the sizes and the terms", () => {
    expect(tree.title).toBe("Meadow Vest");
    expect(tree.sizes).toEqual(["S", "M", "L", "XL"]);
    expect(VEST.slice(tree.sizesSpan?.from, tree.sizesSpan?.to)).toBe("S (M, L, XL)");
    expect([tree.terms, tree.termsFrom]).toEqual(["US", "stated"]);
  });

  it("reads the head: hooks, notions, gauge, abbreviations, definitions, notes", () => {
    expect(tree.materials.hooksMm.map((hook) => hook.mm)).toEqual([[5.5]]);
    expect(tree.materials.notions.map((notion) => notion.words)).toEqual(["4 buttons", "yarn needle"]);
    const [gauge] = tree.gauges;
    expect([
      gauge?.stitches?.values,
      gauge?.rows?.values,
      gauge?.widthCm,
      gauge?.heightCm,
      gauge?.over,
    ]).toEqual([[14], [12], 10, 10, "hdc"]);
    expect(
      tree.abbreviations.map(({ abbreviation, meaning, code }) => [abbreviation, meaning, code]),
    ).toEqual([
      ["ch", "chain", "ch"],
      ["hdc", "half double crochet", "hdc"],
      ["sl st", "slip stitch", "sl st"],
      ["st(s)", "stitch(es)", undefined],
    ]);
    expect(tree.definitions.map(({ names, words }) => [names, words])).toEqual([
      [["shell"], "5 dc in next st."],
      [["v-stitch", "v-st"], "(dc, ch 1, dc) in next st."],
    ]);
    expect(tree.notes.map((note) => note.says)).toEqual([
      { about: "turning-chain", chains: 2, parts: [] },
      { about: "turn", turned: true },
    ]);
  });

  it("lists every size list with where it stands", () => {
    expect(tree.sizeLists.every((list) => list.values.length === 4)).toBe(true);
    expect(tree.sizeLists.filter((list) => !list.inRow).map((list) => list.values[0])).toEqual([80, 5]);
    expect(tree.sizeLists.filter((list) => list.inRow).map((list) => list.values)).toEqual([
      [62, 68, 74, 80],
      [60, 66, 72, 78],
      [20, 22, 24, 26],
      [30, 32, 34, 36],
    ]);
  });
});

describe("the head of a pattern", () => {
  it("parts definitions that share a paragraph", () => {
    const tree = readPattern(
      "SPECIAL STITCHES. Fan: 5 dc in one st. Small fan (sfan): 3 dc in one st.\n\nCh 20.\nRow 1: Fan in 5th ch from hook.",
    );
    expect(tree.definitions.map(({ names, words }) => [names, words])).toEqual([
      [["fan"], "5 dc in one st."],
      [["small fan", "sfan"], "3 dc in one st."],
    ]);
  });

  it("gives the words of two stitches to both", () =>
    expect(
      readPattern("SPECIAL STITCHES\nLeft wing, right wing: 3 dc in next st.\n\nCh 20.").definitions.map(
        (definition) => definition.names,
      ),
    ).toEqual([["left wing"], ["right wing"]]));

  it.each([
    ["S (M, L)", ["S", "M", "L"]],
    ["XS/S (M/L, 1X/2X)", ["XS/S", "M/L", "1X/2X"]],
    ["2 (4, 6) years", ["2 years", "4 years", "6 years"]],
    ['32 (34, 36)" bust', ["32", "34", "36"]],
    ["small, medium and large", ["small", "medium", "large"]],
    ["XS (S, M, L) (XL, 2X)", ["XS", "S", "M", "L", "XL", "2X"]],
    ["Lap [Twin, Queen]", ["Lap", "Twin", "Queen"]],
    ["0-3 (3-6, 6-12) months", ["0-3 months", "3-6 months", "6-12 months"]],
    ["S (M) L (XL) 2X", ["S", "M", "L", "XL", "2X"]],
  ])("reads the run %j", (run, names) => {
    const list =
      names.length === 3
        ? "20 (22, 24)"
        : names.length === 5
          ? "20 (22) 24 (26) 28"
          : "20 (22, 24, 26) (28, 30)";
    expect(readPattern(`Sizes: ${run}\n\nCh ${list}.\nRow 1: Sc ${list}.\n`).sizes).toEqual(names);
  });

  it("reads a run told in a sentence or a list", () => {
    const rows = "Ch 20 (22, 24).\nRow 1: Sc 19 (21, 23).\n";
    expect(
      readPattern(`Directions are for size Small; changes for Medium and Large are in parentheses.\n${rows}`)
        .sizes,
    ).toEqual(["Small", "Medium", "Large"]);
    expect(
      readPattern(`Sizes\nSmall: 80 cm bust\nMedium: 90 cm bust\nLarge: 100 cm bust\n\n${rows}`).sizes,
    ).toEqual(["Small", "Medium", "Large"]);
  });

  it.each([
    ["14 sts and 12 rows = 10 cm", [14], [12], 10, 10],
    ["6 dc = 1 inch", [6], undefined, 2.54, null],
    ['4" x 4" in half double crochet ~ 14 stitches x 12 rows', [14], [12], 10.16, 10.16],
    ["42 sts x 36 rows in 30.0 x 32.4 cm", [42], [36], 30, 32.4],
    ["16 sts = 10 cm; 18 rows = 12 cm", [16], [18], 10, 12],
    ["With 4 mm hook 15 sc to 10 cm", [15], undefined, 10, null],
  ])("reads the gauge %j", (words, stitches, rows, width, height) => {
    const [gauge] = readPattern(`GAUGE\n${words}\n\nCh 20.`).gauges;
    expect([gauge?.stitches?.values, gauge?.rows?.values]).toEqual([stitches, rows]);
    expect(gauge?.widthCm ?? null).toEqual(width);
    expect(gauge?.heightCm ?? null).toEqual(height);
  });

  it.each([
    ["Ch 3 at beg of row counts as dc throughout.", { about: "turning-chain", chains: 3, parts: ["dc"] }],
    ["Turning ch does not count as a st.", { about: "turning-chain", parts: [] }],
    ["The beginning ch-2 never counts as a stitch.", { about: "turning-chain", chains: 2, parts: [] }],
    [
      "Ch 4 at the start of a row counts as dc and ch 1.",
      { about: "turning-chain", chains: 4, parts: ["dc", "ch 1"] },
    ],
    ["Each chain-2 space counts as 2 stitches.", { about: "chains", counted: true, chains: 2 }],
    ["Ch-1 sps do not count as sts.", { about: "chains", counted: false, chains: 1 }],
    ["Join each round with a sl st in the first st.", { about: "join", joined: true }],
    ["Do not join rounds.", { about: "join", joined: false }],
    ["Worked in a continuous spiral.", { about: "spiral" }],
    ["Turn at the end of each row.", { about: "turn", turned: true }],
    ["Work all stitches in back loops only throughout.", { about: "loops", loops: "back" }],
  ])("reads the convention %j", (words, says) =>
    expect(readPattern(`NOTES\n${words}\n\nCh 20.`).notes.map((note) => note.says)).toContainEqual(says),
  );
});

describe("lines and paragraphs", () => {
  const rows = (text: string) => outline(readPattern(text));

  it("cuts several rows of one paragraph apart", () =>
    expect(
      rows(
        "Ch 21. Row 1: Sc in 2nd ch from hook and across, turn. Row 2: Ch 1, sc across, turn. 3rd row - Ch 1, sc across.",
      ),
    ).toEqual([": -, Row 1, Row 2, 3rd row"]));

  it("joins a row that the page broke", () => {
    const text =
      "Row 1: Sc in 2nd ch from hook and in\neach ch across, turn. 20\nsts.\nRow 2: Ch 1, sc in each st\nacross, turn.\n";
    const tree = readPattern(text);
    expect(outline(tree)).toEqual([": Row 1, Row 2"]);
    expect(tree.pieces[0]?.instructions[0]?.span).toEqual({ from: 0, to: text.indexOf("\nRow 2") });
  });

  it("finds a label that the page broke in two", () =>
    expect(
      rows(
        "1st row: Sc in 2nd ch from hook and in each ch across. Ch 1, turn. 2nd\nrow: Sc in each sc across and in the turning chain of row 1. Ch 1, turn.\nRepeat 2nd row until there are 20 rows in all, counting from the start\nof the piece. Fasten off and weave in the ends of the yarn with needle.",
      ),
    ).toEqual([": 1st row, 2nd row, -, -"]));

  it("takes a count that stands on the next line for the row's own", () => {
    const tree = readPattern(
      "Row 1: Ch 1, sc in each st across, turn.\n\n20 sc.\n\nRow 2: Ch 1, sc across.\n",
    );
    expect(outline(tree)).toEqual([": Row 1, Row 2"]);
    expect(tree.pieces[0]?.instructions[0]?.span.to).toBe(48);
  });

  it("reads headings that are run into the line", () =>
    expect(
      rows(
        "SLEEVE-Chain 31.\nRow 1: Sc across.\nLeft Front: Row 1: Sc in next 10 sts, turn.\nDivide for neck-Row 1: Sc in next 5 sts, turn.\nBACK. 1st row: Sc across.",
      ),
    ).toEqual(["SLEEVE: -, Row 1", "- Left Front: Row 1", "- Divide for neck: Row 1", "BACK: 1st row"]));

  it('takes "Make 44ch" behind a name for the beginning of a piece and no heading', () =>
    expect(
      rows(
        "BACK: Make 44ch.\n1st row: 1dc into each ch to end.\n\nLEFT FRONT: Make 20 (24) 26ch.\n1st row: 1dc into each ch.\n\nSLEEVES (make 2)\nMake 30ch.\n1st row: 1dc into each ch.",
      ),
    ).toEqual(["BACK: -, 1st row", "LEFT FRONT: -, 1st row", "SLEEVES x2: -, 1st row"]));

  it("reads names of parts that stand before a label with no mark", () =>
    expect(
      rows(
        "BACK\nCh 40.\nRow 1: Sc across, turn. Fasten off. Shape Armholes Row 1: Sl st in first 4 sts, turn. Row 2: Sc across. Pattern Stitch, Row 1: Dc across.",
      ),
    ).toEqual(["BACK: -, Row 1", "- Shape Armholes: Row 1, Row 2", "- Pattern Stitch: Row 1"]));

  it("reads a text whose line breaks were lost", () =>
    expect(
      rows(
        "GAUGE: 12 sts = 4 in. CHECK YOUR GAUGE. Use any size hook to obtain the gauge. SHRUG Right Side Ch 60, sl st in first ch to join. Round 1: Ch 3, dc in each ch around. Round 2: Ch 3, dc around. SLEEVE Ch 30. Row 1: Sc across.",
      ),
    ).toEqual(["SHRUG Right Side: -, Round 1, Round 2", "SLEEVE: -, Row 1"]));

  it("reads rows told by a number alone", () => {
    const tree = readPattern(
      "Crown\n1. Ch 4, 12 dc in 4th ch from hook. Join.\n2. Ch 3, 2 dc in each st around. Join. (24)\n3-5. Ch 3, dc in each st around. Join.\n6) Ch 1, sc around. Join.\n",
    );
    expect(outline(tree)).toEqual(["Crown: 1, 2, 3-5, 6"]);
    expect(tree.pieces[0]?.instructions[2]?.label?.is).toBe("round");
  });

  it("leaves the numbers of notes and steps alone", () =>
    expect(
      rows(
        "Notes\n1. Ch 1 never counts.\n2. Work loosely.\n3. Join each round.\n\nHat\nRnd 1: 6 sc in magic ring.\nRnd 2: 2 sc in each st around.\nRnd 3: Sc in each st around.\nRnd 4: Sc around.",
      ),
    ).toEqual(["Hat: Rnd 1, Rnd 2, Rnd 3, Rnd 4"]));

  it("never takes talk for a row", () => {
    const tree = readPattern(
      "Cloud Hat\nI made this hat on a rainy weekend and I love it. You can make it in any yarn you like.\nThe hat is worked in rounds from the crown down.\n\nRnd 1: 6 sc in magic ring.\nYour piece should lie flat now.\nRow by row the pattern grows.\nRnd 2: 2 sc in each st around. (12)\nThanks for reading!",
    );
    expect(outline(tree)).toEqual([": Rnd 1, Rnd 2"]);
    expect(tree.others.filter((line) => line.is === "prose")).toHaveLength(5);
  });

  it("keeps a row whose label stands alone", () =>
    expect(rows("Row 2:\nStarting with 2nd ch from hook, sc in each ch across.\nRow 3:\nSc across.")).toEqual(
      [": Row 2, Row 3"],
    ));

  it("reads size-only words in every place", () =>
    expect(
      rows(
        "Sizes: 2 (4, 6, 8)\nCh 20 (22, 24, 26).\nSize 4 only: 9th round: Sc around.\nSizes 6 and 8 only: 9th round: Ch 2, sc around.\nFor size 8: Rows 1-9: Sc across.\nAll sizes: Next round: Sc around.\nRow 12: Sc 20 (22, 24, 26).",
      ),
    ).toEqual([": -, 9th round {1}, 9th round {2,3}, Rows 1-9 {3}, Next round, Row 12"]));

  it("sets out the lists of a size-only row over the whole run", () => {
    const tree = readPattern(
      "Sizes: S (M, L, XL)\nCh 20 (22, 24, 26).\nRow 1: Sc 19 (21, 23, 25).\nL and XL only:\nRow 2: Sc in next 5 (7) sts, turn.\n",
    );
    expect(tree.sizeLists.at(-1)?.values).toEqual([null, null, 5, 7]);
  });

  it("infers a run that no line states", () => {
    const tree = readPattern(
      "Row 1: Ch 1, sc 10 (12, 14), turn.\nRow 2: Ch 1, sc 10 (12, 14), turn. 10 (12, 14) sts\n",
    );
    expect(tree.sizes).toEqual(["size 1", "size 2", "size 3"]);
    expect(tree.sizesSpan).toBe(null);
  });

  it("tells terms by their words where they are not stated", () => {
    expect(readPattern("Row 1: 3 ch, miss 1 st, 1 htr in each st to end.").terms).toBe("UK");
    expect(readPattern("Row 1: Ch 1, sc in each st across.").termsFrom).toBe("told");
    const silent = readPattern("Row 1: 3 ch, 1 dc in each st.");
    expect([silent.terms, silent.termsFrom]).toEqual(["US", "assumed"]);
    expect(readPattern("Row 1: 3 ch, 1 dc in each st.", { terms: "UK" }).terms).toBe("UK");
  });
});

describe("Markdown and front matter", () => {
  const DESIGN = `---
title: Pullover
terms: US
sizes: XS S M
---
# Back
Make 1, worked from the hem up.

Foundation: Ch {body sts + 1}.
**Row 1 (WS):** Sc in 2nd ch from hook and in each ch across, turn. ({body sts} sts)
- Row 2 (RS): Ch 2, hdc in each st across, turn.

## Neck
Row 1: Ch 1, sc in next {neck} sts, turn.

# Sleeve (make 2)
Foundation: Ch 20.
`;
  const counts = new Map([
    ["body sts", [40, 44, 48]],
    ["neck", [9, 10, 11]],
  ]);

  it("reads a design document", () => {
    const tree = readPattern(DESIGN, { counts });
    expect(outline(tree)).toEqual([
      "Back x1: Foundation, Row 1 WS, Row 2 RS",
      "- Neck: Row 1",
      "Sleeve x2: Foundation",
    ]);
    expect(tree.title).toBe("Pullover");
    expect(tree.sizes).toEqual(["XS", "S", "M"]);
    expect(tree.pieces[0]?.instructions[0]?.clauses[0]).toMatchObject({
      kind: "chain",
      count: { values: [41, 45, 49] },
    });
  });
});

describe("the designer's answers", () => {
  const TEXT = `Row 1: Sc in next 5 sts, turn. (As meant: the last stitch is left for the band. ~k7f2q)
Row 2: Sc across, turn.
(As meant, rows/count-differs: the edge is not counted)
Row 3: Work the chart. (Vouched, 40 (44, 48) sts: the chart shows it. ~ab12c)
`;

  it("belong to the row before them", () => {
    const tree = readPattern(TEXT, { sizes: ["S", "M", "L"] });
    const [one, two, three] = (tree.pieces[0]?.instructions ?? []).map((instruction) => instruction.answers);
    expect(one).toMatchObject([
      { is: "as-meant", reason: "the last stitch is left for the band.", stamp: "k7f2q" },
    ]);
    expect(two).toMatchObject([
      { is: "as-meant", code: "rows/count-differs", reason: "the edge is not counted", stamp: null },
    ]);
    expect(three).toMatchObject([
      { is: "vouched", count: { values: [40, 44, 48] }, reason: "the chart shows it.", stamp: "ab12c" },
    ]);
    expect(tree.pieces[0]?.instructions[1]?.clauses.some((clause) => clause.kind === "remark")).toBe(false);
  });
});

describe("any text at all", () => {
  /** All stretches in order, none over another, with nothing but space and list marks between. */
  function checkCover(text: string): void {
    const tree = readPattern(text);
    const spans = [
      ...tree.others.map((line) => line.span),
      ...tree.pieces.flatMap((piece) => piece.instructions.map((instruction) => instruction.span)),
    ].sort((a, b) => a.from - b.from || a.to - b.to);
    let at = 0;
    for (const span of spans) {
      expect(span.from).toBeGreaterThanOrEqual(at);
      expect(text.slice(at, span.from)).toMatch(/^[\s\p{Cf}\0*•#_<>+o\d.)>,:=-]*(?:step \d+.?)?\s*$/iu);
      at = span.to;
    }
    expect(text.slice(at)).toMatch(/^[\s\p{Cf}\0*#_-]*$/u);
  }

  it("is kept, every character of it", () => {
    checkCover(VEST);
    checkCover("\u200fRow 1: Sc.\u0000\r\n\r\n## Odd * heading **\r\n> Row 2: Sc.");
  });

  it("never throws and keeps to linear time", () => {
    // A linear congruential generator with a fixed seed.
    let seed = 20_240_607;
    const random = () => {
      seed = (seed * 1_103_515_245 + 12_345) & 0x7fffffff;
      return seed / 0x7fffffff;
    };
    const words = [
      "Row",
      "1",
      ":",
      "sc",
      "(",
      ")",
      "[",
      "*",
      "rep from *",
      "\n",
      "ch 3",
      "12 (14, 16)",
      "Size",
      "only",
      "S",
      "# ",
      "---\n",
      ".",
      "-",
      "{",
      "}",
      "~",
      "Notes\n",
      "Back\n",
      "\u0000",
      "½",
      "turn",
      "“",
      "З",
    ];
    for (let round = 0; round < 150; round++) {
      const text = Array.from(
        { length: Math.floor(random() * 60) },
        () => words[Math.floor(random() * words.length)],
      ).join(random() < 0.5 ? " " : "");
      expect(() => readPattern(text), JSON.stringify(text)).not.toThrow();
    }
    for (const hard of [
      "(".repeat(10_000),
      "\u0000".repeat(1000),
      "\u202e\u200fRow 1: sc",
      "\ud800\udfff\ud800",
      "",
    ])
      expect(() => readPattern(hard)).not.toThrow();
    const noise = Array.from({ length: 300_000 }, () =>
      String.fromCharCode(32 + Math.floor(random() * 95)),
    ).join("");
    const begun = performance.now();
    readPattern(noise);
    expect(performance.now() - begun).toBeLessThan(6000);
  });
});

describe("counts in braces", () => {
  const counts = new Map([
    ["body sts", [61, 69]],
    ["body rows", [44, 46]],
  ]);
  const read = (text: string) =>
    readPattern(text, { sizes: ["S", "M"], counts }).pieces.flatMap(({ instructions }) => instructions);
  const rows = `# Back

Row 1: Ch {body sts + 1}.
Row 2: Sc in each st across, turn.
Rows 3-{body rows}: Rep Row 2. {body sts} sts.
Work Row 2 for 4 more rows. {body sts} sts.`;
  it("end the numbers of a label", () => expect(read(rows)[2]?.label?.rows[0]?.to.values).toEqual([44, 46]));
  it("are printed counts behind a sentence, as lists of numbers are", () =>
    expect(read(rows).map(({ claims }) => claims[0]?.parts[0]?.amount.values)).toEqual([
      undefined,
      undefined,
      [61, 69],
      [61, 69],
    ]));
});
