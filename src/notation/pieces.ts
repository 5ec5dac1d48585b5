import type { Span } from "../base/index.ts";
import type { Unit } from "./document.ts";
import { headingLevels } from "./heading-levels.ts";
import { readMake } from "./make-words.ts";
import type { Instruction, PieceTree } from "./tree.ts";

type Heading = Extract<Unit, { kind: "heading" }>;
type Worked = Extract<Unit, { kind: "row" | "order" }>;

interface Draft {
  readonly heading: Heading | null;
  readonly instructions: Instruction[];
  make?: PieceTree["make"];
}

export interface PiecesBuilt {
  readonly pieces: PieceTree[];
  /** Units that only said how many to make of a piece, and are no instructions. */
  readonly made: ReadonlySet<Unit>;
}

/**
 * Gathers instructions under their headings. A heading without instructions is no piece, unless sections of it follow.
 *
 * @param read  reads one instruction, given the stretches behind it that hold the designer's answers
 */
export function buildPieces(
  text: string,
  plain: string,
  units: readonly Unit[],
  sizes: number,
  read: (unit: Worked, answers: readonly Span[]) => Instruction,
): PiecesBuilt {
  const made = new Set<Unit>();
  const drafts: Draft[] = [{ heading: null, instructions: [] }];
  for (let i = 0; i < units.length; i++) {
    const unit = units[i] as Unit;
    const draft = drafts.at(-1) as Draft;
    if (unit.kind === "heading") drafts.push({ heading: unit, instructions: [] });
    else if (unit.kind === "row" || unit.kind === "order") {
      const make =
        unit.kind === "order" && draft.heading && draft.instructions.length === 0 && !draft.make
          ? readMake(text, plain, unit.from, unit.to, sizes)
          : null;
      if (make && make.nameTo <= unit.from + 2) {
        draft.make = make.make;
        made.add(unit);
      } else draft.instructions.push(read(unit, answersBehind(units, i)));
    } else if (unit.kind === "other" && draft.heading && draft.instructions.length === 0 && !draft.make) {
      const make = readMake(text, plain, unit.from, unit.to, sizes);
      if (make) draft.make = make.make;
    }
  }
  const headings = drafts.flatMap((draft) => draft.heading ?? []);
  const nameOf = (heading: Heading) => nameIn(text, plain, heading, sizes).name;
  const levels = headingLevels(headings, nameOf);
  const pieces: PieceTree[] = [];
  drafts.forEach((draft, i) => {
    const level = draft.heading ? (levels.get(draft.heading) ?? 1) : 1;
    const hasSections = level === 1 && sectionsFollow(drafts, i, levels);
    if (draft.instructions.length === 0 && !(draft.heading && (hasSections || draft.make))) return;
    pieces.push(pieceOf(text, plain, draft, level, sizes));
  });
  return { pieces, made };
}

function answersBehind(units: readonly Unit[], at: number): Span[] {
  const spans: Span[] = [];
  for (let i = at + 1; i < units.length && units[i]?.kind === "answer"; i++)
    spans.push({ from: (units[i] as Unit).from, to: (units[i] as Unit).to });
  return spans;
}

function sectionsFollow(drafts: readonly Draft[], at: number, levels: ReadonlyMap<Heading, 1 | 2>): boolean {
  for (let i = at + 1; i < drafts.length; i++) {
    const { heading, instructions } = drafts[i] as Draft;
    if (!heading || levels.get(heading) !== 2) return false;
    if (instructions.length > 0) return true;
  }
  return false;
}

function nameIn(
  text: string,
  plain: string,
  heading: Heading,
  sizes: number,
): { name: string; span: Span; make?: PieceTree["make"] } {
  const found = readMake(text, plain, heading.nameFrom, heading.nameTo, sizes);
  let to = found ? found.nameTo : heading.nameTo;
  while (to > heading.nameFrom && /[\s:.,(-]/.test(plain[to - 1] as string)) to--;
  // "Make 2" as a heading of its own keeps its words.
  if (to === heading.nameFrom) to = heading.nameTo;
  const name = text.slice(heading.nameFrom, to).replace(/\s+/g, " ").trim();
  return { name, span: { from: heading.nameFrom, to }, ...(found ? { make: found.make } : {}) };
}

function pieceOf(text: string, plain: string, draft: Draft, level: 1 | 2, sizes: number): PieceTree {
  const { heading, instructions } = draft;
  const first = instructions[0]?.span.from ?? heading?.from ?? 0;
  const last = instructions.at(-1)?.span.to ?? heading?.to ?? first;
  if (!heading)
    return {
      span: { from: first, to: last },
      name: "",
      nameSpan: { from: first, to: first },
      level: 1,
      instructions,
    };
  const { name, span, make } = nameIn(text, plain, heading, sizes);
  const made = make ?? draft.make;
  return {
    span: { from: heading.from, to: last },
    name,
    nameSpan: span,
    ...(made ? { make: made } : {}),
    level,
    instructions,
  };
}
