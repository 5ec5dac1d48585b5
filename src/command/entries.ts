import type { PerSize } from "../base/index.ts";
import type { WorkedLine, WorkedPiece } from "../working/index.ts";
import { oneLine } from "./cells.ts";
import {
  gravestIn,
  isIn,
  type PieceTitle,
  pick,
  type Standing,
  standingOf,
  titlesOf,
  type View,
} from "./view.ts";

/** One line of a table: a row of the pattern, or more about the row above it. */
export interface Entry {
  readonly gutter: "error" | "warning" | null;
  readonly line: number | null;
  readonly label: string;
  readonly side: string;
  readonly sign: string;
  /** One a size; empty where the entry has no numbers. */
  readonly values: readonly string[];
  /** The sizes in which the number is the one above it. */
  readonly same?: readonly boolean[];
  /** Set after the numbers where there is one size alone. */
  readonly aside: string;
  readonly tone: "row" | "more" | "error" | "quiet";
}

/** The table of one piece. */
export interface Block {
  readonly title: PieceTitle;
  readonly entries: readonly Entry[];
}

/** Stands behind a count that was taken on trust. */
export const TRUSTED = "t";
/** How a printed count stands to the worked one, as a sign before the numbers. */
export const SIGNS: Readonly<Record<Standing, string>> = {
  agrees: "=",
  differs: "≠",
  "as meant": "m",
  vouched: "v",
  "on trust": "",
  "nothing printed": "",
  open: "",
};
/** So many lines that make no row are shown by their words; more are only counted. */
const MOST_QUOTED = 2;

/** What the tables of a pattern hold, piece by piece. */
export function blocksOf(view: View): Block[] {
  const titles = titlesOf(view.proof);
  return view.proof.worked.pieces.map((piece, at) => ({
    title: titles[at] as PieceTitle,
    entries: entriesOf(view, piece),
  }));
}

function entriesOf(view: View, piece: WorkedPiece): Entry[] {
  const entries: Entry[] = [];
  let plain: WorkedLine[] = [];
  const flush = (): void => {
    entries.push(...plainEntries(view, plain));
    plain = [];
  };
  for (const line of piece.lines) {
    if (isPlain(view, line)) plain.push(line);
    else {
      flush();
      entries.push(...rowEntries(view, line));
    }
  }
  flush();
  return entries;
}

/** An instruction that makes no row and has no finding, such as "Fasten off." or "Sew the side seams." */
const isPlain = (view: View, line: WorkedLine): boolean =>
  line.label === "" &&
  line.stitches.every((count) => count === null) &&
  line.printed === null &&
  line.printedKinds === null &&
  !view.findings.some((finding) => finding.severity !== "note" && isIn(finding, line));

function plainEntries(view: View, lines: readonly WorkedLine[]): Entry[] {
  const quiet = { gutter: null, side: "", sign: "", values: [], aside: "", tone: "quiet" } as const;
  const lineOf = (line: WorkedLine): number => view.index.position(line.span.from).line;
  if (lines.length <= MOST_QUOTED)
    return lines.map((line) => ({
      ...quiet,
      line: lineOf(line),
      label: quote(view, line),
    }));
  const unread = lines.filter((line) => !line.read).length;
  const first = lineOf(lines[0] as WorkedLine);
  const last = lineOf(lines[lines.length - 1] as WorkedLine);
  const to = last > first ? ` to line ${last}` : "";
  return [
    {
      ...quiet,
      line: first,
      label: `${to ? `up${to}: ` : ""}${lines.length} instructions that make no row${unread > 0 ? `, ${unread} of them not read` : ""}`,
    },
  ];
}

const quote = (view: View, line: WorkedLine): string =>
  oneLine(view.proof.text.slice(line.span.from, line.span.to));

function rowEntries(view: View, line: WorkedLine): Entry[] {
  const standing = standingOf(view, line);
  const gravest = gravestIn(view, line);
  const sides = new Set(pick(view, line.side).filter((side) => side !== null));
  const alone = view.shown.length === 1;
  const entries: Entry[] = [
    {
      gutter: gravest === "note" ? null : gravest,
      line: view.index.position(line.span.from).line,
      label: line.label === "" ? quote(view, line) : shortLabel(line),
      side: sides.size === 1 ? ([...sides][0] as string) : "",
      sign: SIGNS[standing],
      values: pick(view, cellsFor(line)),
      aside: alone ? kindsOf(view, line) : "",
      tone: "row",
    },
  ];
  const more: More = (label, values, tone, same) => {
    const base = { gutter: null, line: null, side: "", sign: "", aside: "" } as const;
    entries.push({ ...base, label: `  ${label}`, values, tone, ...(same ? { same } : {}) });
  };
  if (standing === "differs" || standing === "as meant") {
    const tone = standing === "differs" ? "error" : "more";
    if (line.printed) tellApart(view, "printed", line.printed, line.stitches, more, tone);
    for (const [kind, printed] of Object.entries(line.printedKinds ?? {})) {
      const worked = line.kinds[kind] ?? printed.map(() => null);
      if (!differ(pick(view, printed), pick(view, worked))) continue;
      // A row of one kind has its worked count above already.
      if (differ(pick(view, worked), pick(view, line.stitches)))
        more(`${kind} worked`, pick(view, worked).map(sayCount), "more");
      tellApart(view, `${kind} printed`, printed, worked, more, tone);
    }
  }
  if (standing === "open" && line.printed) more("printed", pick(view, line.printed).map(sayCount), "more");
  const last = pick(view, line.last);
  if (SIZE_LIST.test(line.label) && last.some((row) => row !== null))
    more(
      line.kind === "round" ? "to round" : "to row",
      last.map((row) => (row === null ? "-" : String(row))),
      "more",
    );
  if (sides.size > 1)
    more(
      "side",
      pick(view, line.side).map((side) => side ?? "-"),
      "more",
    );
  return entries;
}

type More = (
  label: string,
  values: readonly string[],
  tone: Entry["tone"],
  same?: readonly boolean[],
) => void;

/** Adds the printed counts where some of them are not the worked ones. */
function tellApart(
  view: View,
  label: string,
  printed: PerSize<number | null>,
  worked: PerSize<number | null>,
  more: More,
  tone: Entry["tone"],
): void {
  const [theirs, ours] = [pick(view, printed), pick(view, worked)];
  if (!differ(theirs, ours)) return;
  more(
    label,
    theirs.map(sayCount),
    tone,
    theirs.map((count, at) => count === ours[at]),
  );
}

const differ = (a: readonly (number | null)[], b: readonly (number | null)[]): boolean =>
  a.some((count, at) => count !== null && count !== b[at]);

const sayCount = (count: number | null): string => (count === null ? "-" : String(count));

/** What a line came to in each size: a count, "?" where it is not known, "-" where the size does not work the line. */
function cellsFor(line: WorkedLine): string[] {
  const numbered = line.first.some((row) => row !== null);
  const makes = line.kind !== "other" || line.stitches.some((count) => count !== null);
  return line.stitches.map((count, size) => {
    if (count !== null) return `${count}${line.trust ? TRUSTED : ""}`;
    if (numbered && line.first[size] === null) return "-";
    return makes || line.printed !== null || line.printedKinds !== null ? "?" : "";
  });
}

/** "24 dc, 8 ch-2 sp", where there is more than one kind. */
function kindsOf(view: View, line: WorkedLine): string {
  const kinds = Object.entries(line.kinds).flatMap(([kind, counts]) => {
    const count = pick(view, counts)[0];
    return count ? [`${count} ${kind}`] : [];
  });
  return kinds.length > 1 ? kinds.join(", ") : "";
}

/** Numbers of all sizes inside a label: "61 (69, 77, 83) (91, 97)". */
const SIZE_LIST = /\d+\s*[([][^()[\]]*[)\]](?:\s*[([][^()[\]]*[)\]])*/gu;

const shortLabel = (line: WorkedLine): string => oneLine(line.label.replace(SIZE_LIST, "…"));
