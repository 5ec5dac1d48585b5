import type { Claim, Clause } from "../notation/index.ts";
import type { Edge } from "./edge.ts";
import type { ChainBefore } from "./hands.ts";
import type { Sample } from "./samples.ts";
import type { StandingRow } from "./standing-rows.ts";

/** One row as it was worked in one size. */
export interface WorkedRow {
  /** Its number in the piece; null where no number can be told. */
  readonly number: number | null;
  readonly label: string;
  /** All that stands before its colon, as names are compared: "row 4 inc". */
  readonly heading: string;
  /** Heading it stands under, and which heading of the pattern that is. */
  readonly section: string;
  readonly sectionAt: number;
  readonly clauses: readonly Clause[];
  readonly round: boolean;
  /** The edge in the order it was made. */
  readonly edge: Edge;
  /** Turns since the yarn was joined, even or odd. */
  readonly flips: number;
  /** Which run of rows its side belongs to: sides within one are tied to one another by turns. */
  readonly strand: number;
  /** Places entered under one loop only: what stays free, by the loop that was taken. */
  readonly singly: { readonly front: number; readonly back: number };
  /** What is printed of a row that was told under a name before it is worked: "2 sts increased". */
  readonly told?: readonly Claim[];
  /** Where the words of its instruction begin. */
  readonly at: number;
  /** Rows told as a whole stand as one; null where a measure alone says how many. */
  readonly rows: number | null;
  /** Length of the piece at its end, cm, where a measure alone says how many rows. */
  readonly untilCm: number | null;
  /** Stitches of the first of several rows that are shaped on their way; null where all are alike. */
  readonly stitchesBefore: number | null;
  /** Colour it begins in; null where none was named so far. */
  readonly colour: string | null;
  /** A yarn was joined for it. */
  readonly begins: boolean;
  /** Chains that the row stands on at its start belong to the foundation. */
  readonly onFoundation: boolean;
  /** A slip stitch closed it. */
  readonly joined: boolean;
}

/** How many rows there are, those told as a whole with all of theirs; null where a measure alone says it. */
export function countRows(rows: readonly WorkedRow[]): number | null {
  let count = 0;
  for (const row of rows) {
    if (row.rows === null) return null;
    count += row.rows;
  }
  return count;
}

/** A chain that a piece begins with. */
export interface Foundation {
  readonly edge: Edge;
  readonly colour: string | null;
  readonly at: number;
}

/** A part of an edge left for later. */
export interface HeldEdge {
  readonly edge: Edge;
  readonly row: number | null;
  /** Side that faced when it was left, where the row says. */
  readonly side: "RS" | "WS" | null;
}

/** Where the work on a piece stands, in one size. Changed as rows are worked. */
export class PieceState {
  edge: Edge | null = null;
  rows: WorkedRow[] = [];
  /** Number of the last row; null where it is not known. */
  number: number | null = 0;
  flips = 0;
  strand = 0;
  turnPending = false;
  fastened = false;
  /** Edge to begin the next row with, set by a join or a change to another edge that made nothing yet. */
  begin: Edge | null = null;
  beginFacing: "RS" | "WS" | null = null;
  /** What is printed as the count of the last row, where it was worked otherwise: a second try at the edge. */
  printed: Edge | null = null;
  /** Row numbers were left out before the next row: what it is worked into may not be known. */
  doubtful = false;
  /** The edge is what came of a row that could not be worked to its end: nothing is held against it. */
  asFar = false;
  /** Some row of the piece could not be read or worked. */
  everUnread = false;
  /** Words of the last row were not understood. */
  lastUnread = false;
  /** The last round ended with a join. */
  lastJoined = false;
  /** A row said "do not join", and none was joined since. */
  unjoined = false;
  /** Side that the last row's label tells. */
  lastSide: "RS" | "WS" | null = null;
  chainBefore: ChainBefore | null = null;
  foundation: Edge | null = null;
  /** The sample that the piece is worked on, where the text leaves its width open. */
  sample: Sample | null = null;
  /** Every foundation chain made for the piece. */
  foundations: Foundation[] = [];
  /** Colour in hand; null where none was named so far. */
  colour: string | null = null;
  ring = false;
  held: HeldEdge[] = [];
  mainStitch = "sc";
  /** Rows told ahead: "Rows 3, 5 and 7", "8th and every alt row". */
  readonly standing: StandingRow[] = [];
  /** Rows without a number stand among the numbered ones, so that jumps tell nothing. */
  numbersLoose = false;
  /** The size has come to its end in this piece. */
  ended = false;
  /** Rows that were worked, all told, for the places along the side; null where a measure made the number unknown. */
  rowsWorked: number | null = 0;
  /** Stitches were picked up along the ends of rows: the rows before lie across the later ones and add nothing to their length. */
  crossed = false;

  constructor(
    readonly name: string,
    /** Which heading of the pattern it begins under. */
    readonly at: number,
  ) {}

  /** Whether the last row went round. */
  get wasRound(): boolean {
    return this.rows[this.rows.length - 1]?.round ?? false;
  }

  /** Takes over what another piece came to, all of it or up to the end of one of its sections. */
  takeFrom(other: PieceState, untilSection: number | null): void {
    this.rows =
      untilSection === null ? [...other.rows] : other.rows.filter((row) => row.sectionAt <= untilSection);
    const last = this.rows[this.rows.length - 1];
    if (!last) return;
    this.edge = last.edge;
    this.number = last.number;
    this.flips = last.flips;
    this.strand = last.strand;
    this.turnPending = !last.round;
    this.foundation = other.foundation;
    this.foundations = [...this.foundations, ...other.foundations];
    this.colour = last.colour;
    this.rowsWorked = untilSection === null ? other.rowsWorked : countRows(this.rows);
    this.crossed = other.crossed;
    this.mainStitch = other.mainStitch;
    this.held = untilSection === null ? [...other.held] : [];
  }

  /** Keeps where the work stands, to take back rows that were only tried. */
  keep(): () => void {
    const { rows, held, standing, ...fields } = this;
    const kept = { rows: [...rows], held: [...held], standing: [...standing] };
    return () => {
      Object.assign(this, fields);
      this.rows = kept.rows;
      this.held = kept.held;
      this.standing.splice(0, this.standing.length, ...kept.standing);
    };
  }

  /** The last row that carries this number. */
  rowNumbered(number: number): WorkedRow | undefined {
    for (let i = this.rows.length - 1; i >= 0; i--)
      if ((this.rows[i] as WorkedRow).number === number) return this.rows[i];
    return undefined;
  }
}
