import { codesCovered, hasStitch, lookupStitch, stitchOf } from "../../stitches/index.ts";
import type { AbbreviationEntry, PatternTree } from "../tree.ts";
import { namesGiven } from "./names-given.ts";
import { Phrases } from "./phrases.ts";
import { linesOf, textBetween } from "./seen.ts";

/** With fewer entries a list explains a few odd words and does not set out to be whole. */
const FEWEST = 3;
/** What nearly every pattern uses: a list that sets out to be whole has at least two of these. */
const BASIC: ReadonlySet<string> = new Set(["ch", "sl st", "sc", "hdc", "dc", "tr"]);

/** The spellings that an entry explains: "rnd(s)" is "rnd", "FPdc, BPdc" and "sc/dc" are two each. */
export function spellingsOf(entry: AbbreviationEntry): string[] {
  const whole = entry.abbreviation.replace(/\(e?s\)/giu, "");
  const parts = whole.split(/\s*(?:[,;/&]|\bor\b|\band\b)\s*|[()[\]]/u);
  return [...new Set([whole, ...parts].map((part) => part.trim()).filter((part) => /[\p{L}]/u.test(part)))];
}

/** Dictionary codes of the stitches that an entry explains. */
export function codesOf(entry: AbbreviationEntry, terms: PatternTree["terms"]): string[] {
  const codes = spellingsOf(entry).map((spelling) => lookupStitch(spelling, terms)?.code);
  return [...new Set([entry.code, ...codes].filter((code) => code !== undefined))];
}

/** What a pattern explains of its own words, in its list of abbreviations, its special stitches, its notes and its rows. */
export class Explained {
  /** Whether the list sets out to explain every stitch. */
  readonly isWhole: boolean;
  /** Codes of the stitches that are explained, and of those that their names cover. */
  private readonly codes: ReadonlySet<string>;
  /** The names that something is told of. */
  private readonly names: Phrases;
  /** All words of the lines that explain. */
  private readonly words: Phrases;

  constructor(private readonly tree: PatternTree) {
    const { abbreviations, definitions, terms } = tree;
    const listed = abbreviations.flatMap((entry) => codesOf(entry, terms));
    const named = definitions.flatMap(({ names }) => names);
    const defined = named.map((name) => lookupStitch(name, terms)?.code ?? name);
    const basics = new Set(listed.filter((code) => BASIC.has(code)));
    this.isWhole = abbreviations.length >= FEWEST && basics.size >= 2;
    this.codes = new Set([...listed, ...defined].flatMap(kindsOf));
    // Lines of a list that were not read as entries may explain any of their words.
    const unread = textBetween(
      tree,
      abbreviations.map(({ span }) => span),
      "abbreviations",
    );
    const rows = tree.pieces.flatMap(({ instructions }) => instructions.map(({ span }) => span));
    this.names = new Phrases(
      unread,
      ...abbreviations.flatMap(spellingsOf),
      ...named,
      // A special stitch with a line to itself may look like the heading of a piece.
      ...tree.pieces.map(({ name }) => name),
      linesOf(tree, "heading"),
      ...namesGiven(linesOf(tree, "definition", "note", "prose", "abbreviations", "gauge")),
      ...rows.flatMap(({ from, to }) => namesGiven(tree.text.slice(from, to))),
    );
    this.words = new Phrases(
      linesOf(tree, "abbreviations", "definition", "note", "heading"),
      ...abbreviations.flatMap(({ meaning }) => meaning),
      ...tree.pieces.map(({ name }) => name),
    );
  }

  /** Whether the spelling itself is explained, or one of its long forms stands among the words that explain. */
  hasSpelling(spelling: string, ...longForms: readonly string[]): boolean {
    return this.names.has(spelling) || longForms.some((long) => this.words.has(long));
  }

  /** Whether a stitch is explained by its own entry or by those of the parts it is named from. */
  hasStitch(code: string): boolean {
    return this.codes.has(code) || this.isNamed(code) || this.isDerived(code);
  }

  private isNamed(code: string): boolean {
    if (!hasStitch(code)) return this.hasSpelling(code);
    const { abbreviation, name } = this.tree.terms === "US" ? stitchOf(code).us : stitchOf(code).uk;
    return this.names.has(code) || this.hasSpelling(abbreviation, name);
  }

  /** "dc3tog" follows from dc and any other decrease, "FPtr" from tr and FPdc, a 4-dc cluster from any cluster. */
  private isDerived(code: string): boolean {
    const { words } = this;
    const isAmong = (pattern: RegExp) => [...this.codes].some((other) => pattern.test(other));
    const begins = (start: string) => words.some((word) => word.startsWith(start));
    if (code === "inc") return begins("inc");
    if (code === "dec") return begins("dec") || isAmong(/\dtog$/u);
    const tog = /^(.+)\dtog$/u.exec(code);
    if (tog)
      return this.hasStitch(tog[1] as string) && (isAmong(/\dtog$/u) || words.has("tog") || begins("dec"));
    const post = /^([fb]p)(.+)$/u.exec(code);
    if (post) {
      const [short, long, other] =
        post[1] === "fp" ? ["fp", "front post", /^fp/u] : ["bp", "back post", /^bp/u];
      return (
        (isAmong(other as RegExp) || this.hasSpelling(short as string, long as string)) &&
        this.hasStitch(post[2] as string)
      );
    }
    const lump = /^\d[a-z]+-(.+)$/u.exec(code)?.[1] ?? code;
    return isAmong(new RegExp(`(?:^|-)${lump.replace(/[^a-z-]/gu, ".")}$`, "u"));
  }
}

/** "Cluster" explains the clusters of every size; "dc" does not explain the stitches that are variants of it. */
function kindsOf(code: string): readonly string[] {
  return hasStitch(code) && stitchOf(code).varies === true ? codesCovered(code) : [code];
}
