import type { PieceState, WorkedRow } from "./piece.ts";

/** Rows that a name means: a piece, a section of one, or a section told with its piece ("rib of the Back", "Back armholes"). */
export interface NamedPart {
  readonly piece: PieceState;
  readonly rows: readonly WorkedRow[];
  /** The whole piece is meant. */
  readonly whole: boolean;
}

const LITTLE_WORDS = new Set(["the", "of", "for", "a", "an", "and", "to", "in", "on"]);

const wordsOf = (name: string): string[] =>
  name
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== "" && !LITTLE_WORDS.has(word))
    .map((word) => word.replace(/s$/, ""));

const PARTING = new Set([
  "shape",
  "shaping",
  "divide",
  "dividing",
  "division",
  "split",
  "neck",
  "neckline",
  "shoulder",
  "armhole",
]);

/** Whether a heading says that the work is parted there, so that a row may stop and leave the rest for the other side. */
export function saysParting(name: string): boolean {
  return wordsOf(name).some((word) => PARTING.has(word));
}

/** Finds what a name means among the pieces worked so far; undefined where nothing has the name. */
export function partNamed(name: string, pieces: readonly PieceState[]): NamedPart | undefined {
  const all = wordsOf(name);
  // "Right mitten as far as the thumb": the name is as much of it as is one.
  for (let length = all.length; length > 0; length--) {
    const part = partOfWords(all.slice(0, length), pieces);
    if (part) return part;
  }
  return undefined;
}

function partOfWords(wanted: readonly string[], pieces: readonly PieceState[]): NamedPart | undefined {
  let best: { part: NamedPart; extra: number } | undefined;
  const consider = (part: NamedPart, words: readonly string[]): void => {
    if (part.rows.length === 0 || !wanted.every((word) => words.includes(word))) return;
    const extra = words.length - wanted.length;
    if (!best || extra < best.extra) best = { part, extra };
  };
  for (const piece of pieces) {
    consider({ piece, rows: piece.rows, whole: true }, wordsOf(piece.name));
    for (const at of new Set(piece.rows.map((row) => row.sectionAt))) {
      const rows = piece.rows.filter((row) => row.sectionAt === at);
      const section = rows[0]?.section ?? "";
      if (section === piece.name) continue;
      consider({ piece, rows, whole: false }, [...wordsOf(piece.name), ...wordsOf(section)]);
      consider({ piece, rows, whole: false }, wordsOf(section));
    }
  }
  return best?.part;
}

const PATTERN_WORDS = new Set(["pattern", "patt", "pat", "stitch"]);

/** The rows of a stitch pattern that was worked on a sample, in order and each once; none where no pattern has the name. */
export function rowsOfStitchPattern(name: string, pieces: readonly PieceState[]): readonly WorkedRow[] {
  const wanted = wordsOf(name).filter((word) => !PATTERN_WORDS.has(word));
  const named = pieces.filter(
    (piece) => piece.sample && wanted.every((word) => wordsOf(piece.sample?.name ?? "").includes(word)),
  );
  const [piece] = named;
  if (!piece || named.length > 1) return [];
  const rows = new Map<number, WorkedRow>();
  for (const row of piece.rows) if (row.number !== null && !rows.has(row.number)) rows.set(row.number, row);
  return [...rows.values()];
}

/** The last section of a piece that some words name; null where they name none. */
export function lastSectionNamed(words: string, piece: PieceState): number | null {
  const said = wordsOf(words);
  let last: number | null = null;
  for (const row of piece.rows) {
    if (row.section === piece.name) continue;
    if (wordsOf(row.section).every((word) => said.includes(word))) last = Math.max(last ?? 0, row.sectionAt);
  }
  return last;
}
