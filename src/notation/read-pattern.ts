import { ONE_SIZE, type SizeRun, type Span } from "../base/index.ts";
import { readAbbreviations } from "./abbreviation-list.ts";
import { findAnswers } from "./answers.ts";
import { type Body, contextKey, recallBody } from "./body-memo.ts";
import { findColours } from "./colours.ts";
import type { ReadContext } from "./context.ts";
import { readConventions } from "./conventions.ts";
import { type DefinitionFound, readDefinitions, specialSpellings, splitDefinitions } from "./definitions.ts";
import { cutDocument, type Unit } from "./document.ts";
import { findSizes } from "./find-sizes.ts";
import { findTerms } from "./find-terms.ts";
import { readFrontMatter } from "./front-matter.ts";
import { readGauges } from "./gauges.ts";
import { plainText } from "./glyphs.ts";
import { readInstructionBody } from "./instruction.ts";
import { lex } from "./lex.ts";
import { splitLines } from "./lines.ts";
import { readMaterials } from "./materials.ts";
import { findMultiples } from "./multiples.ts";
import { buildPieces } from "./pieces.ts";
import type { Token } from "./token.ts";
import type {
  Amount,
  Answer,
  Definition,
  Instruction,
  Label,
  OtherLine,
  PatternTree,
  ReadOptions,
} from "./tree.ts";

/**
 * Reads a whole pattern text into its tree. Never throws, whatever the text, and takes time in proportion to its length.
 * Spans of instructions and other lines are in order and do not overlap; between them there is only white space and the
 * marks of lists and headings.
 */
export function readPattern(text: string, options: ReadOptions = {}): PatternTree {
  const plain = plainText(text);
  const front = readFrontMatter(plain);
  const lines = splitLines(plain).filter((line) => line.from >= front.to);
  const found = findSizes(plain, lines);
  const sizes: SizeRun = options.sizes ?? front.sizes ?? found.names;
  const sizesSpan = found.span !== null && sameRun(sizes, found.names) ? found.span : null;
  const body = front.to === 0 ? plain : `${" ".repeat(front.to)}${plain.slice(front.to)}`;
  const terms = findTerms(body, front.terms ?? options.terms);
  const colours = findColours(text, plain, front.to, Math.min(plain.length, front.to + 100_000)).map(
    (colour) => colour.name,
  );
  const counts = options.counts ? { counts: options.counts } : {};
  const place = {
    sizes: sizes.length,
    sizeNames: sizes,
    sizesSpan,
    colours,
    rounds: saysRounds(plain),
    ...counts,
  };
  const { units, flat } = cutDocument(text, plain, lines, place);
  const said = front.terms ? { terms: front.terms, from: "stated" as const } : terms;

  const abbreviations = spansOf(units, "abbreviations").flatMap(({ from, to }) =>
    readAbbreviations(text, flat, from, to, said.terms),
  );
  const definitionsFound = [...findDefinitions(units, flat), ...definedInList(abbreviations, flat)];
  const context: ReadContext = {
    text,
    terms: said.terms,
    sizes: sizes.length,
    sizeNames: sizes,
    specials: specialSpellings(definitionsFound, said.terms),
    colours,
    ...counts,
  };
  const reader = new BodyReader(text, plain, context);

  const definitions: Definition[] = definitionsFound.map(({ span, names, words, countsAs }) => ({
    span,
    names,
    words: text.slice(words.from, words.to),
    clauses: reader.clauses(words.from, words.to),
    ...(countsAs === undefined ? {} : { countsAs }),
  }));
  const { pieces, made } = buildPieces(text, plain, units, sizes.length, (unit, answers) =>
    reader.instruction(unit, answers),
  );
  const others = otherLines(units, made, front.to, plain);
  const materials = spansOf(units, "materials");
  const notes = [
    ...spansOf(units, "note"),
    ...spansOf(units, "definition"),
    ...spansOf(units, "prose"),
    ...spansOf(units, "sizes"),
    ...spansOf(units, "gauge"),
    ...materials,
  ]
    .sort((a, b) => a.from - b.from)
    .flatMap(({ from, to }) => readConventions(flat, from, to, said.terms));

  return {
    text,
    title: titleOf(units, text) ?? front.title ?? "",
    terms: said.terms,
    termsFrom: said.from,
    sizes: sizes.length > 0 ? sizes : ONE_SIZE,
    sizesSpan,
    pieces,
    definitions,
    abbreviations,
    notes,
    gauges: spansOf(units, "gauge").flatMap(({ from, to }) => readGauges(text, flat, from, to, said.terms)),
    multiples: findMultiples(text, flat, front.to, context),
    materials: readMaterials(text, flat, materials),
    others,
    sizeLists: [...reader.sizeLists, ...listsElsewhere(text, others, context, front.to)].sort(
      (a, b) => a.span.from - b.span.from,
    ),
    forgiven: reader.forgiven.sort((a, b) => a.span.from - b.span.from),
  };
}

function sameRun(a: SizeRun, b: SizeRun): boolean {
  return a.length === b.length && a.every((name, i) => name === b[i]);
}

/** What "R4" and a bare "4." stand for: rounds where the text works in the round and does not turn. */
function saysRounds(plain: string): boolean {
  const text = plain.slice(0, 100_000);
  const count = (pattern: RegExp) => text.match(pattern)?.length ?? 0;
  const rounds = count(
    /\b(?:rnds?|rounds?|around|magic (?:ring|circle|loop)|mr|join(?:ed)? with|spiral)\b/gi,
  );
  const rows = count(/\b(?:rows?|turn|across)\b/gi);
  return rounds >= rows;
}

function titleOf(units: readonly Unit[], text: string): string | null {
  const title = units.find((unit) => unit.kind === "other" && unit.is === "title");
  return title ? text.slice(title.from, title.to).replace(/\s+/g, " ").trim() : null;
}

function spansOf(units: readonly Unit[], is: OtherLine["is"]): Span[] {
  return units
    .filter((unit) => unit.kind === "other" && unit.is === is)
    .map(({ from, to }) => ({ from, to }));
}

/** Definitions as they stand; a line that begins none goes on with the one before it. */
function findDefinitions(units: readonly Unit[], flat: string): DefinitionFound[] {
  const found: DefinitionFound[] = [];
  let previous: Unit | null = null;
  for (const unit of units) {
    if (unit.kind === "other" && unit.is === "definition") {
      const definitions = splitDefinitions(flat, unit.from, unit.to).flatMap(({ from, to }) =>
        readDefinitions(flat, from, to),
      );
      const last = found.at(-1);
      if (definitions.length > 0) found.push(...definitions);
      else if (last && previous?.kind === "other" && previous.is === "definition") {
        found[found.length - 1] = {
          ...last,
          span: { from: last.span.from, to: unit.to },
          words: { from: last.words.from, to: unit.to },
        };
      }
    }
    previous = unit;
  }
  return found;
}

/** "inc: 2 hdc in the next st" in a list of abbreviations says how to work it. */
function definedInList(entries: PatternTree["abbreviations"], flat: string): DefinitionFound[] {
  const found: DefinitionFound[] = [];
  for (const { span, abbreviation, meaning } of entries) {
    if (
      !/\b(?:\d|two|three)\s[a-z]{2,4}\s(?:in|into)\b|\binsert\b|\bin(?:to)? (?:the )?(?:next|same)\b|\bover (?:the )?next\b/i.test(
        meaning,
      )
    )
      continue;
    const at = flat.indexOf(meaning.slice(0, 12), span.from);
    if (at === -1 || at >= span.to) continue;
    found.push({ span, names: [abbreviation.toLowerCase()], words: { from: at, to: span.to } });
  }
  return found;
}

function otherLines(
  units: readonly Unit[],
  made: ReadonlySet<Unit>,
  frontTo: number,
  plain: string,
): OtherLine[] {
  const others: OtherLine[] = [];
  if (frontTo > 0) others.push({ span: { from: 0, to: trimEnd(plain, 0, frontTo) }, is: "prose" });
  for (const unit of units) {
    if (unit.kind === "other") others.push({ span: { from: unit.from, to: unit.to }, is: unit.is });
    else if (made.has(unit)) others.push({ span: { from: unit.from, to: unit.to }, is: "note" });
    else if (unit.kind === "heading") others.push({ span: { from: unit.from, to: unit.to }, is: "heading" });
  }
  return others;
}

function trimEnd(plain: string, from: number, to: number): number {
  let end = to;
  while (end > from && /\s/.test(plain[end - 1] as string)) end--;
  return end;
}

type SizeList = PatternTree["sizeLists"][number];

function listsElsewhere(
  text: string,
  others: readonly OtherLine[],
  context: ReadContext,
  frontTo: number,
): SizeList[] {
  const lists: SizeList[] = [];
  for (const { span, is } of others) {
    if (
      span.from < frontTo ||
      is === "abbreviations" ||
      is === "heading" ||
      is === "title" ||
      !/\d\D{1,8}\d/.test(text.slice(span.from, Math.min(span.to, span.from + 20_000)))
    )
      continue;
    for (const token of lex(text, span.from, span.to, context)) {
      if (token.is === "number" && token.values.length > 1)
        lists.push({ span: token.span, values: token.values, inRow: false });
    }
  }
  return lists;
}

/** "Sc in next - (12, 14) sts, - (3, 4) dc": sizes that have a dash in every list do not work the row; empty where all do. */
function sizesWithNumbers(met: readonly SizeList[], sizes: number): readonly number[] {
  const lists = met.flatMap(({ values }) => (values.length === sizes ? [values] : []));
  if (sizes < 2 || lists.length < 2) return [];
  const worked = Array.from({ length: sizes }, (_, size) => size).filter((size) =>
    lists.some((values) => values[size] !== null),
  );
  return worked.length < sizes ? worked : [];
}

const BOTH_LAYERS = /\bthrough\s(?:both|the\stwo|2)\s(?:layers|sides|thicknesses)\b/i;

/** Reads bodies of rows, and keeps what was met on the way. */
class BodyReader {
  readonly sizeLists: SizeList[] = [];
  readonly forgiven: PatternTree["forgiven"][number][] = [];

  private readonly key: string;

  constructor(
    private readonly text: string,
    private readonly plain: string,
    private readonly context: ReadContext,
  ) {
    this.key = contextKey(context);
  }

  clauses(from: number, to: number): Definition["clauses"] {
    return this.body(from, to, []).clauses;
  }

  /** Where a row is for some sizes only, its lists may have a value for each of these alone. */
  private few: readonly number[] = [];

  instruction(unit: Extract<Unit, { kind: "row" | "order" }>, following: readonly Span[]): Instruction {
    this.few = unit.sizes;
    const label = unit.kind === "row" ? this.spreadLabel(unit.label) : null;
    const begin = unit.kind === "row" ? unit.body : unit.from;
    const answers: Answer[] = findAnswers(this.text, this.plain, begin, unit.to, this.context);
    const inside = answers.map((answer) => answer.span);
    for (const { from, to } of following)
      answers.push(...findAnswers(this.text, this.plain, from, to, this.context));
    if (label) {
      const { lists, mended } = listsOf(lex(this.text, label.span.from, label.span.to, this.context));
      this.sizeLists.push(...lists);
      this.forgiven.push(...mended);
    }
    const read = this.body(begin, unit.to, inside);
    this.few = [];
    this.forgiven.push(...read.forgiven);
    const last = answers.at(-1);
    return {
      span: { from: unit.from, to: Math.max(unit.to, last?.span.to ?? 0) },
      label,
      clauses: read.clauses,
      claims: read.claims,
      sizes: unit.sizes.length > 0 ? unit.sizes : sizesWithNumbers(read.lists, this.context.sizes),
      answers,
      ...(BOTH_LAYERS.test(this.plain.slice(begin, unit.to)) ? { bothLayers: true } : {}),
    };
  }

  /** Reads a stretch but for the answers in it. */
  private body(from: number, to: number, without: readonly Span[]): Body {
    const read = () => this.readBody(from, to, without);
    const body =
      without.length > 0
        ? read()
        : recallBody(`${this.key}|${this.few.join()}`, this.context, from, to, read);
    this.sizeLists.push(...body.lists);
    this.forgiven.push(...body.mended);
    return body;
  }

  private readBody(from: number, to: number, without: readonly Span[]): Body {
    const tokens = this.tokens(from, to, without);
    const { clauses, claims, forgiven } = readInstructionBody(tokens, this.context);
    return { clauses, claims, forgiven, ...listsOf(tokens) };
  }

  /** The tokens of a stretch but for the answers in it. */
  private tokens(from: number, to: number, without: readonly Span[]): Token[] {
    const tokens: Token[] = [];
    let at = from;
    for (const span of [...without, { from: to, to }]) {
      if (span.from > at)
        for (const token of lex(
          this.text,
          at,
          span.from,
          this.few.length > 0 ? { ...this.context, sizes: this.few.length } : this.context,
        ))
          tokens.push(this.spread(token));
      at = Math.max(at, span.to);
    }
    return tokens;
  }

  /** A list with one value for each of the few sizes that work the row, set out over the whole run: the others do none. */
  private spread(token: Token): Token {
    if (token.is !== "number") return token;
    const values = this.spreadValues(token.values);
    return values === token.values ? token : { ...token, values };
  }

  private spreadLabel(label: Label): Label {
    if (this.few.length < 2) return label;
    const amount = (one: Amount): Amount => ({ ...one, values: this.spreadValues(one.values) });
    const rows = label.rows.map(({ from, to }) => ({ from: amount(from), to: amount(to) }));
    return { ...label, rows, ...(label.next ? { next: amount(label.next) } : {}) };
  }

  private spreadValues(of: readonly (number | null)[]): readonly (number | null)[] {
    if (of.length !== this.few.length || of.length < 2) return of;
    const values: (number | null)[] = Array.from({ length: this.context.sizes }, () => null);
    this.few.forEach((size, i) => {
      values[size] = of[i] ?? null;
    });
    return values;
  }
}

/** The lists among tokens, and the slips that were forgiven in them. */
function listsOf(tokens: readonly Token[]): Pick<Body, "lists" | "mended"> {
  const lists: SizeList[] = [];
  const mended: PatternTree["forgiven"][number][] = [];
  for (const token of tokens) {
    if (token.is !== "number") continue;
    if (token.values.length > 1 && token.count === undefined)
      lists.push({ span: token.span, values: token.values, inRow: true });
    if (token.mend) mended.push({ span: token.span, words: token.text, mend: token.mend });
  }
  return { lists, mended };
}
