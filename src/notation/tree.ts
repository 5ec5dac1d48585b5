import type { Edit, SizeRun, Span } from "../base/index.ts";

/*
 * The instruction tree: what the reader found on the page, before anybody works it.
 *
 * Every node has the exact span of its words. The spans of a line's nodes do not overlap except by nesting; what lies
 * between them is punctuation, filler words ("then", "work", "and") or an Aside. Stitches are named by dictionary
 * code in US meaning, whatever terms the text uses: a British "dc" is `sc` here.
 */

/** A whole number or a measure, one value for every size; a list of one value stands for all sizes. */
export interface Amount {
  readonly span: Span;
  /** null: the size does none ("-" or "—" in a list). A list may have the wrong number of values: that is a finding. */
  readonly values: readonly (number | null)[];
}

/** A length: "11 (11½, 12) in [28 (29, 30.5) cm]". Values in cm where a unit is known; `unit` is the first as written. */
export interface Measure extends Amount {
  readonly unit: "cm" | "in" | "mm" | null;
}

/* ------------------------------------------------------------------ places */

/** Which loop of a stitch's top. */
export type LoopWord = "back" | "front" | "both" | "third" | "back-bump";

/** What sort of place is named. */
export type PlaceWord =
  /** "st", "stitch", or nothing at all. */
  | { readonly is: "any" }
  /** "dc", "sc2tog", "shell": a dictionary code, or the name of a special stitch of this pattern, lower case. */
  | { readonly is: "stitch"; readonly code: string }
  /** "ch": one chain as a place. */
  | { readonly is: "chain" }
  /** "ch-2 sp", "ch sp", "2ch-sp", "loop", "sp", "corner sp". `chains` where the length is named; `corner` for a corner. */
  | {
      readonly is: "space";
      readonly chains?: number;
      readonly corner?: boolean;
      /** "point sp": a space that the pattern gives a name of its own, lower case. */
      readonly name?: string;
    }
  /** "ring", "magic ring", "centre of ring". */
  | { readonly is: "ring" }
  /** "turning ch", "tch", "beg ch-3", "ch-3 at beg of row"; `nth` in Target for "3rd ch of tch". */
  | { readonly is: "turning-chain"; readonly chains?: number }
  /** "row end", "end of each dc row", "side of row". */
  | { readonly is: "row-end" }
  /** "free loop", "unused front loop", "remaining loops of Rnd 3". */
  | { readonly is: "free-loop" }
  /** "foundation ch", "other side of ch", "base ch": the chain the piece grew from. */
  | { readonly is: "foundation" }
  /** "marked st", "st with marker". `name` for "marker A". */
  | { readonly is: "marked"; readonly name?: string }
  /** "between sts", "sp between 2 dc", with a `code` for stitches that stand as one: "between next 2 shells". */
  | { readonly is: "between"; readonly code?: string }
  /** "base of ch", "same place", "st at base of beg ch": where the last stitch or the row's chain stands. */
  | { readonly is: "base" }
  /** "skipped st", "unworked st": places passed earlier. */
  | { readonly is: "skipped"; readonly code?: string }
  /** "corner" (as a place without a space), "corner st". */
  | { readonly is: "corner" }
  /** "joining sl st", "join". */
  | { readonly is: "join" };

/** Where the hook goes. */
export interface Target {
  readonly span: Span;
  /**
   * next: the next `count` places (one each). each: every place up to `until` (default the end of the row or round).
   * every-other: every second. first/last: from the start or end of the edge. same: where the last stitch went.
   * nth: the `nth` place counted from `from`. any: any place of the kind. here: no place was said at all.
   */
  readonly ref:
    | "next"
    | "each"
    | "every-other"
    | "first"
    | "last"
    | "same"
    | "nth"
    | "any"
    | "center"
    | "here";
  /** How many places: "next 5", "each of next 5", "last 2", "first 6". Absent means one, or all for `each`. */
  readonly count?: Amount;
  /** True where the words say that each place gets its own ("each of next 5"), so that "2 sc in each of next 3" makes six. */
  readonly each?: boolean;
  /** "2nd ch", "4th tr": the ordinal. */
  readonly nth?: Amount;
  readonly from?: "hook" | "start" | "end";
  readonly what: PlaceWord;
  /** Further kinds of place taken alike: "each sc and ch-1 sp across", "in each ch and st". */
  readonly and?: readonly PlaceWord[];
  /** "of next shell", "of tch", "of 5-dc group": what the place is a part of. */
  readonly of?: Target;
  /** Where an `each` stops. Absent: the end. */
  readonly until?: Limit;
  /** "2 rows below", "of Row 3", "in sc of rnd before last". */
  readonly rowsBelow?: number;
  readonly ofRow?: Amount;
  /** Loop words standing with the place: "in back loop of next st". */
  readonly loops?: LoopWord;
  /** "(skipped 3 ch count as first dc)" beside an Nth chain from the hook. */
  readonly countsAs?: CountsAs;
  /** "sk ... behind", "in front of", kept for people; working in front or behind changes no count. */
  readonly aside?: boolean;
}

/** Where something stops before the end. */
export type Limit =
  /** "across", "around", "to end". */
  | { readonly at: "end"; readonly span: Span; readonly word: "across" | "around" | "end" }
  /** "to last 4 sts", "to within 2 sts of end". */
  | { readonly at: "last"; readonly span: Span; readonly count: Amount; readonly what: PlaceWord }
  /** "to marked st", "to next ch-2 sp", "to corner": up to the place, which is not worked. */
  | {
      readonly at: "place";
      readonly span: Span;
      readonly place: Target;
      /** "to 1 st before marked st", "to within 1 sc of marker": so many places are left before it. */
      readonly before?: Amount;
    }
  /** "until 20 sts rem", "until you have 64 sts". */
  | { readonly at: "count"; readonly span: Span; readonly count: Amount; readonly remain: boolean };

/* ----------------------------------------------------------------- clauses */

/** What a starting or turning chain stands for, as the text says beside it. */
export interface CountsAs {
  readonly span: Span;
  /** Dictionary codes in order, "ch 1" for a chain with its space: counts as dc + ch 1 is ["dc", "ch 1"]. Empty: does not count. */
  readonly parts: readonly string[];
  /** "here and throughout". */
  readonly throughout: boolean;
}

interface Node {
  readonly span: Span;
}

/** "ch 3", "make 58 ch", "a chain of 5 sts". */
export interface ChainClause extends Node {
  readonly kind: "chain";
  readonly count: Amount;
  readonly countsAs?: CountsAs;
  /** "a multiple of 8 plus 5": then `count` is not known and holds no values. */
  readonly multiple?: { readonly of: number; readonly plus: number };
}

/** Stitches made: "sc in next 5 sts", "2 dc in last st", "31 hdc", "hdc across", "fsc 64", "sc2tog", "inc". */
export interface WorkClause extends Node {
  readonly kind: "work";
  /**
   * Dictionary code or name of a special stitch (lower case). "inc" and "dec" bare are codes of their own: which stitch is
   * meant follows from the row.
   */
  readonly stitch: string;
  readonly stitchSpan: Span;
  /** Stitches said before or after the name; absent means one a place. */
  readonly count?: Amount;
  readonly target: Target;
  /** Loop words at the stitch: "hdc blo", "24 hdc flo". */
  readonly loops?: LoopWord;
  /** Colour named for it. */
  readonly colour?: string;
  /** "loosely", "(V-st made)" and the like. */
  readonly named?: string;
  /** "dc in 4th ch from hook (3 skipped chs count as dc)": what the chains before it stand for. */
  readonly skippedCountsAs?: CountsAs;
}

/** "sk next 2 sts", "miss 1 ch", "skip to next ch-1 sp". */
export interface SkipClause extends Node {
  readonly kind: "skip";
  readonly target: Target;
  /** "skip to": goes up to the place, which is not passed. */
  readonly to?: boolean;
  /** "skip 3 ch (counts as dc)". */
  readonly countsAs?: CountsAs;
}

/** Several clauses worked into one place, or the same into each place of the target: "(sc, ch 2, sc) in next st". */
export interface GroupClause extends Node {
  readonly kind: "group";
  readonly body: readonly Clause[];
  readonly target: Target;
  /** "shell made": the name given to it here. */
  readonly named?: string;
}

/** How often a repeat is worked. */
export type Stop =
  /** `counting` total: so often in all. extra: so often after the first. either: the words are used both ways, likelier first. */
  | {
      readonly by: "times";
      readonly span: Span;
      readonly times: Amount;
      readonly counting: "total" | "extra" | "either-total" | "either-extra";
    }
  | { readonly by: "limit"; readonly span: Span; readonly limit: Limit }
  /** No stop was said: to the end if it comes out. */
  | { readonly by: "unsaid"; readonly span: Span };

/** "*sc in next 6 sts, sc2tog; rep from * across", "(sc, inc) 6 times", "[dc, ch 1] x 9". */
export interface RepeatClause extends Node {
  readonly kind: "repeat";
  readonly body: readonly Clause[];
  readonly stop: Stop;
  /** Index into `body` of the first clause after a `**`: the last time round ends before it ("ending last rep at **"). */
  readonly endBefore?: number;
  readonly style: "star" | "star-pair" | "bracket" | "bare";
}

/** A clause that reads in more than one way; candidates in order of likelihood. A form of words is decided once a document. */
export interface ChoiceClause extends Node {
  readonly kind: "choice";
  /** Names the form of words: "bracket-group-or-sequence", "twice-means". The choice made for a form holds for the document. */
  readonly form: string;
  readonly options: readonly (readonly Clause[])[];
}

export interface TurnClause extends Node {
  readonly kind: "turn";
}

/** "join with sl st in first sc", "ss to top of 3ch", bare "join", "join with hdc in first dc". */
export interface JoinClause extends Node {
  readonly kind: "join";
  /** Code of the joining stitch; "sl st" unless said. */
  readonly stitch: string;
  readonly target: Target | null;
  /** "to form a ring". */
  readonly ring: boolean;
}

/** "do not turn", "do not join", "work in a spiral". */
export interface NegationClause extends Node {
  readonly kind: "do-not-turn" | "do-not-join";
}

export interface FastenOffClause extends Node {
  readonly kind: "fasten-off";
}

/** "join A in next st", "with RS facing, rejoin yarn at underarm", "join yarn with sc in any ch-2 sp". */
export interface JoinYarnClause extends Node {
  readonly kind: "join-yarn";
  readonly colour?: string;
  /** null: no place was said. */
  readonly target: Target | null;
  /** Words for a place that is not a Target: "underarm", "neck edge", "same st as first shoulder". */
  readonly where?: string;
  readonly side?: "RS" | "WS";
  /** Code of the stitch it is joined with, when one is named ("join with sc"): that stitch is made. */
  readonly stitch?: string;
}

/** "changing to B in last sc", "change to B", "with A". */
export interface ColourClause extends Node {
  readonly kind: "colour";
  readonly colour: string;
}

/** "with RS facing". */
export interface FacingClause extends Node {
  readonly kind: "facing";
  readonly side: "RS" | "WS";
}

export interface MarkerClause extends Node {
  readonly kind: "marker";
  readonly action: "place" | "move" | "remove";
  readonly name?: string;
  readonly target: Target | null;
}

/** "leave remaining sts unworked", "leave last 4 sts unworked", "leaving rem 12 sts unworked". */
export interface LeaveClause extends Node {
  readonly kind: "leave";
  readonly count?: Amount;
}

/** "working in back loops only": for the rest of the row or, with `throughout`, of the piece. */
export interface LoopsClause extends Node {
  readonly kind: "loops";
  readonly loops: LoopWord;
  readonly throughout?: boolean;
}

/** "working along row ends", "working on other side of foundation ch", "in free loops of Rnd 3", "evenly along neck edge". */
export interface AlongClause extends Node {
  readonly kind: "along";
  readonly edge:
    | "row-ends"
    | "foundation"
    | "free-loops"
    | "neck"
    | "armhole"
    | "front"
    | "side"
    | "hem"
    | "opening"
    | "all-round"
    | "other";
  readonly ofRow?: Amount;
  /** "in free front loops of Rnd 3". */
  readonly loops?: LoopWord;
  /** The words themselves. */
  readonly words: string;
}

/** Which rows are meant: "Rows 3 and 4", "Rnds 2-5", "last 2 rows", "Row 2 of Back". */
export type RowsMeant =
  | {
      readonly are: "numbered";
      readonly span: Span;
      readonly list: readonly RowRange[];
      readonly piece?: string;
      /** "the increase rnd": rows by a name of their own, lower case; then `list` is empty. */
      readonly name?: string;
    }
  | { readonly are: "last"; readonly span: Span; readonly count: Amount }
  | { readonly are: "pattern"; readonly span: Span };

export interface RowRange {
  readonly from: Amount;
  readonly to: Amount;
}

/** A number of rows told by a measure or by a target. */
export interface Until {
  readonly span: Span;
  /** "until piece measures 28 cm [from beg]". */
  readonly measure?: Measure;
  /** What the measure is taken from: the beginning of the piece or another stated place. */
  readonly from?: "beginning" | "other";
  /** "until 26 rows have been worked"; with `more`, "for 14 rows", counted from here on. */
  readonly rows?: Amount;
  readonly more?: boolean;
  /** "until 20 sts rem". */
  readonly stitches?: Amount;
  /** "ending with a WS row", "end Row 5". */
  readonly endingSide?: "RS" | "WS";
  readonly endingRow?: Amount;
}

/** "Rep Rows 3 and 4 6 times more", "Rep last 2 rows until ...", "As Row 2". */
export interface RepeatRowsClause extends Node {
  readonly kind: "repeat-rows";
  readonly rows: RowsMeant;
  /** Times the whole set is worked: "more" times after what stands. Absent: as often as the label or `until` asks, else once. */
  readonly times?: Amount;
  /** "on every 4th row": worked on every so-manieth row, the pattern's own rows between. */
  readonly every?: Amount;
  readonly until?: Until;
}

/** "work even for 6 rows", "work straight until ...", "sc in each st for 10 rows" (then `stitch`). */
export interface EvenClause extends Node {
  readonly kind: "even";
  readonly rows?: Amount;
  readonly until?: Until;
  /** "in pattern", "keeping pattern correct". */
  readonly inPattern: boolean;
  /** "in Fan pattern": the name of the stitch pattern, lower case. */
  readonly pattern?: string;
  /** "beginning with Row 4": the row of the pattern that comes first. */
  readonly startRow?: Amount;
  readonly stitch?: string;
}

/** "work in patt to last 6 sts", "patt across next 20 sts", "cont in patt across". */
export interface InPatternClause extends Node {
  readonly kind: "in-pattern";
  readonly target: Target;
}

/** One "every Nth row, K times" part of a shaping schedule. */
export interface Beat {
  readonly span: Span;
  /** Rows from one shaping row to the next: 4 in "every 4th row"; 2 for "every other/alternate row", 1 for "every row". */
  readonly every: Amount;
  /** How often; absent: until the target of the clause is reached. */
  readonly times?: Amount;
}

/** "inc 1 st each end of next row, then every 4th row 6 times". */
export interface ScheduleClause extends Node {
  readonly kind: "schedule";
  readonly change: "inc" | "dec";
  /** Stitches changed at each place. */
  readonly by: Amount;
  readonly where:
    | "each-end"
    | "neck-edge"
    | "armhole-edge"
    | "beginning"
    | "end"
    | "one-edge"
    | "each-marker";
  /** The first shaping row: 1 for "next row", 4 for "4th row"; absent: the first beat's own step from here. */
  readonly first?: Amount;
  readonly beats: readonly Beat[];
  /** "until there are 60 sts". */
  readonly until?: Until;
  /** "at the same time". */
  readonly together?: boolean;
}

/** "dec 6 sts evenly", "work 48 sc evenly along edge", "sc evenly around". */
export interface EvenlyClause extends Node {
  readonly kind: "evenly";
  readonly change: "inc" | "dec" | "make";
  readonly stitch?: string;
  /** Absent: no number was said. For inc and dec the number of stitches gained or lost; for make the stitches made. */
  readonly count?: Amount;
  /** "to 84 sts": the total wanted. */
  readonly total?: Amount;
  readonly along?: AlongClause;
}

/** "Sizes M and L only: ...", "For size 4 ...". Sizes by their index in the run. */
export interface SizeOnlyClause extends Node {
  readonly kind: "size-only";
  readonly sizes: readonly number[];
  readonly words: string;
  readonly body: readonly Clause[];
}

/** "End here for S", "Sizes XS-M: fasten off here" as a stop for those sizes. */
export interface SizeEndClause extends Node {
  readonly kind: "size-end";
  readonly sizes: readonly number[];
}

/** "Work as for Left Front, reversing shaping". */
export interface AsPieceClause extends Node {
  readonly kind: "as-piece";
  readonly piece: string;
  readonly reversing: boolean;
  /** "to row 12", "to armhole", where it stops. */
  readonly until?: Until;
}

/** "Sew side seams", "join shoulders with sl st, RS together", "leaving 8 cm open". */
export interface SeamClause extends Node {
  readonly kind: "seam";
  readonly seam: "side" | "shoulder" | "sleeve" | "sleeve-to-armhole" | "other";
  /** The words call it a seam, "side seams", and not only an edge that is sewn. */
  readonly calledSeam?: boolean;
  readonly words: string;
  readonly open?: Measure;
}

/** "Change to 4 mm hook". */
export interface HookClause extends Node {
  readonly kind: "hook";
  readonly mm: Amount | null;
  readonly words: string;
}

/** "Divide for neck", "place next 20 sts on hold". */
export interface HoldClause extends Node {
  readonly kind: "hold";
  readonly count?: Amount;
}

/** A bare number whose stitch is understood from the clause before: "5, 2 in next" in a repeat. */
export interface UnderstoodClause extends Node {
  readonly kind: "understood";
  readonly count: Amount;
  readonly target: Target;
}

/** Words that were read and change nothing: jokes, "loosely", photo references, advice, weaving in ends. */
export interface AsideClause extends Node {
  readonly kind: "aside";
  /** "The sleeve has 46 rnds", "20 armhole rows are done": rows that should stand by now. */
  readonly rowsDone?: Amount;
}

/** Words that were not understood. */
export interface RemarkClause extends Node {
  readonly kind: "remark";
  readonly words: string;
}

export type Clause =
  | ChainClause
  | WorkClause
  | SkipClause
  | GroupClause
  | RepeatClause
  | ChoiceClause
  | TurnClause
  | JoinClause
  | NegationClause
  | FastenOffClause
  | JoinYarnClause
  | ColourClause
  | FacingClause
  | MarkerClause
  | LeaveClause
  | LoopsClause
  | AlongClause
  | RepeatRowsClause
  | EvenClause
  | InPatternClause
  | ScheduleClause
  | EvenlyClause
  | SizeOnlyClause
  | SizeEndClause
  | AsPieceClause
  | SeamClause
  | HookClause
  | HoldClause
  | UnderstoodClause
  | AsideClause
  | RemarkClause;

export type ClauseKind = Clause["kind"];

/* ------------------------------------------------------------ labels, counts */

/** What stands before the colon. */
export interface Label {
  readonly span: Span;
  /** foundation: "Foundation row", "Base chain". next: "Next row", "Next 4 rows". named: "Inc row", "Set-up", "Pattern row". */
  readonly is: "row" | "round" | "foundation" | "next" | "named";
  /** The words without separator and side tag: "Rows 5-12". */
  readonly words: string;
  /** Row numbers, as ranges: "Rows 3, 5 and 7" has three; "Next 4 rows" none. */
  readonly rows: readonly RowRange[];
  /** "Next 4 rows": 4. "Next row": absent. */
  readonly next?: Amount;
  /** Whether "next" rows or a named row are rounds. */
  readonly rounds: boolean;
  readonly side?: "RS" | "WS";
  /** "8th and every alt row", "all even rows", "Row 3 and all following rows", "Row 2-?". */
  readonly open?: { readonly parity?: "odd" | "even"; readonly step: number };
  readonly colour?: string;
}

/** Counts that the pattern prints for a row. */
export interface Claim {
  readonly span: Span;
  /**
   * The parts, as named: "(48 dc, 4 ch-2 sps)" has two; "(40 sts)" or "[24]" one of kind "any". A kind is a dictionary code, a
   * special stitch's name, "any", "ch-sp" with `chains`, or "unit" with the word (repeats, blocks, points).
   */
  readonly parts: readonly ClaimPart[];
  /** "4 sts inc", "6 sts dec'd": the number is a change. */
  readonly change?: "inc" | "dec";
  /** "at end of Row 10": counts of another row than this. */
  readonly ofRow?: Amount;
  /** Counts of the rows of a range in order, "(40 sts)(38 sts)(36 sts)": then one Claim a row, `index` from 0. */
  readonly index?: number;
  /** "incl ch 2", "including tch". */
  readonly includesChain?: boolean;
  /** "counting each ch-1 as a st": chains between stitches that are in the number, by the length of their runs or all. */
  readonly countsChains?: number | "all";
  /** "not counting sl sts", "not counting tch". */
  readonly excludes?: "sl st" | "turning-chain" | "chain";
  /** "each side", "each end", "for each sleeve": the number is of one part. */
  readonly eachSide?: boolean;
  /** ": back 32, sleeves 12 each, front 32", ": 7 on each side": the same stitches told part by part, all of them. */
  readonly shares?: readonly ClaimShare[];
}

/** One part's share of a printed count. */
export interface ClaimShare {
  readonly span: Span;
  readonly amount: Amount;
  /** How many parts have this number, as the words may be meant: "sleeves 12 each" two, "sleeves 12" one or two; empty where nobody can tell. */
  readonly times: readonly number[];
  /** "7 on each side": of a point, which may have a stitch of its own between the sides. */
  readonly sides?: boolean;
}

export interface ClaimPart {
  readonly span: Span;
  readonly amount: Amount;
  readonly kind: string;
  readonly chains?: number;
  readonly words: string;
}

/* ------------------------------------------------------------------- lines */

/** One labelled row, foundation, or unlabelled instruction sentence ("Sew side seams.", "Ch 58."). */
export interface Instruction {
  /** "Through both layers": a tube laid flat, of which every stitch takes two. */
  readonly bothLayers?: boolean;
  readonly span: Span;
  readonly label: Label | null;
  readonly clauses: readonly Clause[];
  readonly claims: readonly Claim[];
  /** A label inside a paragraph for one or some sizes only: indices; empty for all. */
  readonly sizes: readonly number[];
  /** The designer's answer standing after the row, if any. */
  readonly answers: readonly Answer[];
}

/** "(As meant: the last stitch is left for the band. ~k7f2q)" or "(Vouched, 40 sts: ... ~k7f2q)". */
export interface Answer {
  readonly span: Span;
  readonly is: "as-meant" | "vouched";
  /** Code of the finding answered, where named. */
  readonly code?: string;
  readonly reason: string;
  /** Stitches vouched for. */
  readonly count?: Amount;
  /** Stamp of the row and its counts at the time; null while not stamped. */
  readonly stamp: string | null;
}

/** A name and what it stands for: "Shell: 5 dc in next st", "V-st = (dc, ch 1, dc) in same st". */
export interface Definition {
  readonly span: Span;
  /** Names in lower case as used in rows, the first being the one in clauses: ["shell", "sh"]. */
  readonly names: readonly string[];
  readonly words: string;
  readonly clauses: readonly Clause[];
  /** Where a note in the definition says so: how many stitches it counts as. */
  readonly countsAs?: number;
}

/** An entry of the abbreviations: "sc = single crochet". */
export interface AbbreviationEntry {
  readonly span: Span;
  readonly abbreviation: string;
  readonly meaning: string;
  /** Dictionary code it stands for, where it is a stitch. */
  readonly code?: string;
}

/** A sentence that sets how things count. */
export interface ConventionNote {
  readonly span: Span;
  readonly says: /** "Ch 3 at beg of row counts as dc throughout." `chains` and `stitch` where named; parts empty: does not count. */
    | {
        readonly about: "turning-chain";
        readonly chains?: number;
        readonly stitch?: string;
        readonly parts: readonly string[];
      }
    /** "Ch-1 sps count as sts", "do not count chains". */
    | { readonly about: "chains"; readonly counted: boolean; readonly chains?: number }
    /** "Join each round with a sl st in first st", "join" explained. */
    | { readonly about: "join"; readonly joined: boolean }
    /** "Turn at the end of each row/round", "do not turn". */
    | { readonly about: "turn"; readonly turned: boolean }
    /** "Worked in a spiral". */
    | { readonly about: "spiral" }
    | { readonly about: "terms"; readonly terms: "US" | "UK" }
    /** "Work all sts in back loops only throughout". */
    | { readonly about: "loops"; readonly loops: LoopWord };
}

/** A heading with the instructions that stand under it, in order. */
export interface PieceTree {
  readonly span: Span;
  /** As written, without trailing colon; "" for rows before any heading. */
  readonly name: string;
  readonly nameSpan: Span;
  /** "Make 2", "(make 2 alike)"; absent: one. */
  readonly make?: Amount;
  /** 1 for a piece, 2 for a section of the piece before ("Shape neck", "Right shoulder"). */
  readonly level: number;
  readonly instructions: readonly Instruction[];
}

/** A width told as a rule: "a multiple of 6 sts + 1 (add 2 for base chain)", "worked over an odd number of sts". */
export interface MultipleNote {
  readonly span: Span;
  readonly of: number;
  readonly plus: number;
  /** Chains that the words add for the base chain; null where they say nothing of it. */
  readonly base: number | null;
  /** What is counted: chains, stitches, or not said. */
  readonly counts: "chains" | "stitches" | "unsaid";
  /** The words before it that name the stitch pattern; "" where there are none. */
  readonly name: string;
}

/** A gauge statement: stitches and rows over a width and height. */
export interface GaugeStatement {
  readonly span: Span;
  readonly stitches: Amount | null;
  readonly rows: Amount | null;
  readonly widthCm: number | null;
  readonly heightCm: number | null;
  /** Dictionary code of the stitch it was measured over, or the words. */
  readonly over: string | null;
}

/** What the head of the pattern lists. */
export interface Materials {
  readonly span: Span | null;
  readonly hooksMm: readonly { readonly span: Span; readonly mm: readonly number[] }[];
  readonly colours: readonly { readonly span: Span; readonly name: string }[];
  readonly notions: readonly { readonly span: Span; readonly words: string }[];
}

/** A line that is not an instruction: kept, never mistaken for a row. */
export interface OtherLine {
  readonly span: Span;
  readonly is:
    | "title"
    | "heading"
    | "sizes"
    | "materials"
    | "gauge"
    | "abbreviations"
    | "definition"
    | "note"
    | "finishing"
    | "prose"
    | "blank";
}

/** The whole text, read. */
export interface PatternTree {
  readonly text: string;
  readonly title: string;
  readonly terms: "US" | "UK";
  /** How the terms were known: stated in the text or by the caller, told by tell-tale words, or taken as US for want of evidence. */
  readonly termsFrom: "stated" | "told" | "assumed";
  readonly sizes: SizeRun;
  /** Span of the words that set the size run; null when it was inferred from the lists. */
  readonly sizesSpan: Span | null;
  readonly pieces: readonly PieceTree[];
  readonly definitions: readonly Definition[];
  readonly abbreviations: readonly AbbreviationEntry[];
  readonly notes: readonly ConventionNote[];
  readonly gauges: readonly GaugeStatement[];
  /** Rules of width, in the order of the text. */
  readonly multiples: readonly MultipleNote[];
  readonly materials: Materials;
  readonly others: readonly OtherLine[];
  /** Every list of more than one value in the text, wherever it stands, with how many values it has. */
  readonly sizeLists: readonly {
    readonly span: Span;
    readonly values: readonly (number | null)[];
    readonly inRow: boolean;
  }[];
  /** Words or glyphs that the reader forgave, with the edit that would mend them: OCR stars, missing brackets. */
  readonly forgiven: readonly { readonly span: Span; readonly words: string; readonly mend?: Edit }[];
}

/** What a caller may tell the reader. */
export interface ReadOptions {
  /** Terms for a text that does not say. */
  readonly terms?: "US" | "UK";
  readonly sizes?: SizeRun;
  /** Values of `{count}` names, one per size. */
  readonly counts?: ReadonlyMap<string, readonly (number | null)[]>;
}
