import { describe, expect, it } from "vitest";
import { readPattern } from "../notation/index.ts";
import { workPattern } from "./work-pattern.ts";

/** What each row is made of in the first size: "ch 1, sc 12 | A: dc 6, B: sc 3". */
function madeIn(text: string, piece = 0, size = 0): string[] {
  const made = workPattern(readPattern(text)).made[piece]?.made[size];
  const say = (list: NonNullable<typeof made>["chains"]): string =>
    list.map(({ kind, colour, count }) => `${colour ? `${colour}: ` : ""}${count} ${kind}`).join(", ");
  return [say(made?.chains ?? []), ...(made?.rows.map(({ made: row }) => say(row)) ?? [])];
}

/* The rows are our own; what each is made of is counted on the fingers. */
describe("what a row is made of", () => {
  it("is told by kind, with turning chains and the foundation", () =>
    expect(
      madeIn(
        "Ch 14.\nRow 1: Hdc in 3rd ch from hook and in each ch across, turn. 12 hdc.\nRow 2: Ch 2 (does not count as a st), *sc in next st, dc in next 2 sts; rep from * across, turn. 12 sts.\nRow 3: Ch 1 (does not count as a st), (sc2tog) twice, ch 3, skip next 3 sts, sc in each of next 5 sts.",
      ),
    ).toEqual(["14 ch", "12 hdc", "2 ch, 4 sc, 8 dc", "4 ch, 2 sc2tog, 5 sc"]));

  it("counts a chain that stands for a stitch as chains, and the slip stitch that closes a round", () =>
    expect(
      madeIn(
        "Ch 4, join with sl st to form a ring.\nRnd 1: Ch 3 (counts as dc), 11 dc in ring, join with sl st to top of ch 3. 12 dc.",
      ),
    ).toEqual(["4 ch", "3 ch, 11 dc, 1 sl st"]));

  it("keeps the colour from row to row until another comes", () =>
    expect(
      madeIn(
        "Colors: A, B\n\nWith A, ch 7.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. 6 sc.\nRow 2: Ch 1 (does not count as a st), sc in each st across, changing to B in last st, turn.\nRow 3: Ch 1 (does not count as a st), sc in each st across, turn.\nRow 4: With A, ch 1 (does not count as a st), sc in each st across, turn.\nRows 5 and 6: With B, rep Row 3.",
      ),
    ).toEqual([
      "A: 7 ch",
      "A: 6 sc",
      "A: 1 ch, A: 6 sc",
      "B: 1 ch, B: 6 sc",
      "A: 1 ch, A: 6 sc",
      "B: 1 ch, B: 6 sc",
      "B: 1 ch, B: 6 sc",
    ]));

  it("keeps the colours of stripes that are worked again", () =>
    expect(
      madeIn(
        "Colors: A, B\n\nWith A, ch 7.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. 6 sc.\nRow 2: Ch 1 (does not count as a st), sc in each st across, turn.\nRow 3: Rep Row 2, changing to B in the last st.\nRow 4: Rep Row 2.\nRow 5: With A, rep Row 2.\nRows 6-9: Rep Rows 4 and 5.",
      ).map((row) => row[0]),
    ).toEqual(["A", "A", "A", "A", "B", "A", "B", "A", "B", "A"]));

  it("takes the colour that a label names", () =>
    expect(
      madeIn(
        "Ch 7.\nRow 1 (A): Sc in 2nd ch from hook and in each ch across, turn. 6 sc.\nRow 2 (B): Ch 1 (does not count as a st), sc in each st across, turn.\nRow 3: Rep Row 2.",
      ),
    ).toEqual(["7 ch", "A: 6 sc", "B: 1 ch, B: 6 sc", "B: 1 ch, B: 6 sc"]));

  it("gives a colour said behind a stitch to that stitch", () =>
    expect(
      madeIn(
        "With A, ch 13.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. 12 sc.\nRow 2: Ch 1 (does not count as a st), sc in next 5 sts with A, sc in next 7 sts with B, turn. 12 sc.",
      ).at(-1),
    ).toBe("A: 1 ch, A: 5 sc, B: 7 sc"));

  it("tells colours apart within a row, through its repeats", () =>
    expect(
      madeIn(
        "Colors: A, B\n\nWith A, ch 21.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. 20 sc.\nRow 2: Ch 1 (does not count as a st), *with A sc in next 3 sts, with B sc in next 2 sts; rep from * across, turn. 20 sc.\nRow 3: With B, ch 1 (does not count as a st), sc in each st across.",
      ),
    ).toEqual(["A: 21 ch", "A: 20 sc", "A: 1 ch, A: 12 sc, B: 8 sc", "B: 1 ch, B: 20 sc"]));

  it("is kept by piece, size and how many are made", () => {
    const text =
      "Sizes: S (M)\n\n## Back\nCh 11 (13).\nRow 1: Sc in 2nd ch from hook and in each ch across. 10 (12) sc.\n\n## Pocket (make 2)\nCh 6.\nRow 1: Sc in 2nd ch from hook and in each ch across. 5 sc.";
    expect(madeIn(text, 0, 1)).toEqual(["13 ch", "12 sc"]);
    expect(madeIn(text, 1, 0)).toEqual(["6 ch", "5 sc"]);
    expect(workPattern(readPattern(text)).made.map(({ times }) => times)).toEqual([
      [1, 1],
      [2, 2],
    ]);
  });

  it("says a length where only a measure tells how many rows", () => {
    const made = workPattern(
      readPattern(
        "Ch 11.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. 10 sc.\nRow 2: Ch 1 (does not count as a st), sc in each st across, turn.\nRep Row 2 until piece measures 30 cm from beginning.",
      ),
    ).made[0]?.made[0];
    expect(made?.rows.at(-1)).toMatchObject({ rows: null, untilCm: 30, stitches: 10 });
  });
});
