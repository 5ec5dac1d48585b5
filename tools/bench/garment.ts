import { randomFrom } from "../measure/random.ts";
import { Counts } from "./counts.ts";
import { drawRow } from "./garment-rows.ts";

/*
 * A lace cardigan that nobody asked for, made by rule: nine sizes, some sixty thousand stitches in each, every row in words of
 * its own. The body is worked in one piece to the armholes and divided there; the sleeve grows from the cuff and ends in a
 * cap. Its arithmetic is right in every size: what the engine says against it is a fault of the engine.
 */

export interface Garment {
  readonly text: string;
  /** Stitches and chains a maker makes, per size; the sleeve once. */
  readonly stitches: readonly number[];
  /** Instruction lines whose words, without label and number, stand nowhere else. */
  readonly distinctLines: number;
  /** A row in the middle of the body, without lace: the place of a one-line edit. */
  readonly editLine: string;
}

/** Stitches around the body and the wrist, smallest size first. */
const BODY = [248, 268, 288, 308, 328, 348, 368, 388, 408];
const CUFF = [69, 73, 77, 81, 85, 89, 93, 97, 101];
const HEAD = `LACE CARDIGAN BY RULE

Sizes: XS (S, M, L) (XL, 2X, 3X, 4X, 5X)

Materials
Yarn: class 1 (super fine), as much as it takes.
Hooks: 2.5 mm.

Abbreviations (US terms)
ch = chain; dc = double crochet; hdc = half double crochet; rep = repeat; RS = right side; sc = single crochet; sc2tog = single crochet 2 together; sl st = slip stitch; sp(s) = space(s); st(s) = stitch(es); WS = wrong side

Notes
The turning ch 1 never counts as a stitch. The first stitch of a row goes into the first stitch of the row below.
`;

/**
 * @param seed   another seed gives other rows in the same shapes
 * @param wider  so many times as many stitches in every row, in the same words
 */
export function makeGarment(seed: number, wider = 1): Garment {
  const writer = new Writer(seed);
  const body = new Counts(BODY.map((count) => count * wider));
  writer.heading("BODY");
  writer.foundation(body);
  writer.rows(2, 96, (row) => (row % 12 === 7 && row < 40 ? -2 : row % 12 === 7 && row > 50 ? 2 : 0));
  const divided = writer.counts;
  const front = divided.map((count) => Math.floor(count / 4));
  const back = divided.map((count, size) => count - 2 * front.at(size));

  writer.heading("RIGHT FRONT");
  writer.line(
    `Row 1 (RS): Ch 1, sc in each of first ${front} sts, turn, leaving the remaining ${divided.minus(front)} sts unworked. ${front} sts.`,
    front,
  );
  writer.rows(2, 48, (row) => (row % 4 === 1 && row > 4 ? -1 : 0));
  writer.fastenOff();

  writer.heading("BACK");
  writer.join("With RS facing, join yarn with a sl st in the next unworked st of the last body row.");
  writer.line(
    `Row 1 (RS): Ch 1, sc in same st as joining, sc in each of next ${back.map((count) => count - 1)} sts, turn, leaving the remaining ${front} sts unworked. ${back} sts.`,
    back,
  );
  writer.rows(2, 48, (row) => (row % 4 === 1 && row > 4 && row < 24 ? -2 : 0));
  writer.fastenOff();

  writer.heading("LEFT FRONT");
  writer.join("With RS facing, join yarn with a sl st in the next unworked st of the last body row.");
  writer.line(
    `Row 1 (RS): Ch 1, sc in same st as joining, sc in each of next ${front.map((count) => count - 1)} sts, turn. ${front} sts.`,
    front,
  );
  writer.rows(2, 48, (row) => (row % 4 === 1 && row > 4 ? -1 : 0));
  writer.fastenOff();

  writer.heading("SLEEVES (make 2)");
  writer.foundation(new Counts(CUFF.map((count) => count * wider)));
  writer.rows(2, 96, (row) => (row % 4 === 3 ? 2 : 0));
  writer.rows(97, 120, (row) => (row % 2 === 1 ? -2 : 0));
  writer.fastenOff();
  return writer.garment();
}

const STITCHES = ["sc", "hdc", "dc"];
const CHANGEABLE = /\b(?:sc|hdc|dc)(?= in next)/g;

const changeable = (line: string): number => line.match(CHANGEABLE)?.length ?? 0;

/** The garment with other stitches in one row, as right as before; another number from 1 gives other stitches. */
export function editRight({ text, editLine }: Garment, number: number): string {
  let left = number;
  const other = editLine.replace(CHANGEABLE, (stitch) => {
    const by = left % STITCHES.length;
    left = Math.floor(left / STITCHES.length);
    return STITCHES[(STITCHES.indexOf(stitch) + by) % STITCHES.length] as string;
  });
  return text.replace(editLine, other);
}

/** The garment with a wrong number in the printed count of one row. */
export function editWrong({ text, editLine }: Garment, number: number): string {
  return text.replace(
    editLine,
    editLine.replace(/(turn\. )(\d+)/, (_, before, count) => `${before}${Number(count) + number}`),
  );
}

/** Writes rows one after another and keeps the counts. */
class Writer {
  counts = new Counts(BODY);
  private readonly random: () => number;
  private readonly lines: string[] = [HEAD];
  private readonly words = new Map<string, number>();
  private readonly stitches: number[] = BODY.map(() => 0);
  private openChains = false;
  private editLine = "";

  constructor(seed: number) {
    this.random = randomFrom(seed);
  }

  heading(name: string): void {
    this.lines.push("", name);
  }

  foundation(counts: Counts): void {
    this.lines.push(`With 2.5 mm hook, ch ${counts.map((count) => count + 1)}.`);
    this.add(counts.map((count) => count + 1));
    this.line(`Row 1 (RS): Sc in 2nd ch from hook and in each ch across, turn. ${counts} sts.`, counts);
  }

  join(words: string): void {
    this.lines.push(words);
  }

  /** A row that is given in words: it leaves so many stitches. */
  line(words: string, counts: Counts): void {
    this.keep(words);
    this.add(counts);
    this.counts = counts;
    this.openChains = false;
  }

  /** Rows from one number to another, changing the width by so many stitches where `change` says so. */
  rows(from: number, to: number, change: (row: number) => number): void {
    for (let number = from; number <= to; number++) {
      const side = number % 2 === 1 ? "RS" : "WS";
      // No lace below a row that shapes, nor at the end, where other rows are worked into it.
      const lace = number < to && change(number + 1) === 0;
      const row = drawRow(this.random, this.counts, {
        change: change(number),
        closing: this.openChains,
        lace,
      });
      this.keep(`Row ${number} (${side}): ${row.words}, turn. ${row.printed}.`);
      this.add(row.made);
      this.counts = row.counts;
      this.openChains = row.openChains;
      const plain = !row.openChains && changeable(row.words) >= 3;
      if (number >= 40 && plain && this.editLine === "") this.editLine = this.lines.at(-1) ?? "";
    }
  }

  fastenOff(): void {
    this.lines.push("Fasten off.");
  }

  private keep(line: string): void {
    this.lines.push(line);
    const words = line.replace(/^Row \d+ \(\w+\): /, "");
    this.words.set(words, (this.words.get(words) ?? 0) + 1);
  }

  private add(made: Counts): void {
    this.stitches.forEach((_, size) => {
      this.stitches[size] = (this.stitches[size] as number) + made.at(size);
    });
  }

  garment(): Garment {
    const text = `${this.lines.join("\n")}\n`;
    return {
      text,
      stitches: this.stitches,
      distinctLines: [...this.words.values()].filter((times) => times === 1).length,
      editLine: this.editLine,
    };
  }
}
