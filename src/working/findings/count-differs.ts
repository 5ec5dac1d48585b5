import {
  counted,
  declare,
  inSizes,
  type SizedNumbers,
  sayList,
  sayNumbers,
  sentence,
} from "../../base/index.ts";
import { verb } from "./label.ts";

/** A printed count that is not what the row makes. */
export interface Facts {
  readonly row: string;
  /** Kind of stitch the count names, in the pattern's own words and singular: "dc", "ch-2 sp"; null for stitches of all kinds. */
  readonly of: string | null;
  /** Only the sizes at fault; the same sizes in `worked`. */
  readonly printed: SizedNumbers;
  readonly worked: SizedNumbers;
  /** Short arithmetic: "Row 11 ends with 66 sts; this row adds 2". */
  readonly how: string | null;
}

const numbers = (sized: SizedNumbers) => sized.map((one) => one.n);

export const countDiffers = declare<Facts>({
  code: "rows/count-differs",
  severity: "error",
  what: (d) =>
    `${d.row} ${verb(d.row, "does", "do")} not come to ${verb(d.row, "its", "their")} printed count${inSizes(d.printed)}: ` +
    `${counted(numbers(d.printed), d.of ?? "st")} printed, ${sayNumbers(numbers(d.worked))} worked.`,
  why: (d) => `${d.how === null ? "" : `${sentence(d.how)} `}${difference(d)}`,
  todo: (d) => [
    `Print ${counted(numbers(d.worked), d.of ?? "st")} after ${d.row}${inSizes(d.worked)}.`,
    `Change ${d.row} so that ${verb(d.row, "it makes", "they make")} ${counted(numbers(d.printed), d.of ?? "st")}${inSizes(d.printed)}.`,
  ],
});

/** "That is 1 more than printed." Sizes are told apart where some have more and some fewer. */
function difference({ printed, worked }: Facts): string {
  const off = worked.flatMap(({ size, n }) => {
    const wanted = printed.find((one) => one.size === size);
    return wanted === undefined || wanted.n === n ? [] : [{ size, n: n - wanted.n }];
  });
  const more = off.filter(({ n }) => n > 0);
  const fewer = off.filter(({ n }) => n < 0);
  const mixed = more.length > 0 && fewer.length > 0;
  const say = (some: SizedNumbers, word: string) =>
    some.length === 0
      ? []
      : [`${sayNumbers(some.map(({ n }) => Math.abs(n)))} ${word}${mixed ? inSizes(some) : ""}`];
  return `That is ${sayList([...say(more, "more"), ...say(fewer, "fewer")])} than printed.`;
}
