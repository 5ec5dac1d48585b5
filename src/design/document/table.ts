import { isAlias, isMap, isScalar, isSeq, type ParsedNode, parseDocument, type YAMLError } from "yaml";
import type { Finding, FindingKind, Span } from "../../base/index.ts";
import { nearestName, plainName } from "../../sizing/index.ts";
import { entryNotUnderstood, entryUnknown, tableNotRead } from "../findings/index.ts";

/** Where the table at the head of a design stands: between two lines of three hyphens. */
export interface TablePlace {
  /** The YAML between the hyphens. */
  readonly yaml: Span;
  /** First character of the text behind the closing hyphens. */
  readonly to: number;
}

/** One entry of a map: its name, where that stands, and what is said behind the colon. */
export interface Entry {
  readonly key: string;
  readonly keySpan: Span;
  /** null: nothing stands behind the colon. */
  readonly node: TableNode | null;
  readonly span: Span;
}

/** A part of the table; what it is, is asked of the table. */
export type TableNode = ParsedNode;

/** Words of the table, with the place in the design of any part of them. */
export interface Words {
  readonly text: string;
  readonly span: Span;
  place(part: Span): Span;
}

const OPEN = /^[\s\uFEFF]{0,8}---[ \t\r]{0,20}\n/;
const CLOSE = /(?:^|\n)---[ \t\r]{0,20}(?:\n|$)/;
const ENTRY = /^[\w][\w -]{0,40}:(?:\s|$)/m;

/** The table at the head of a text; null where it begins without one, as patterns in plain text do. */
export function findTable(text: string): TablePlace | null {
  const open = OPEN.exec(text.slice(0, 64));
  if (!open) return null;
  const from = open[0].length;
  const close = CLOSE.exec(text.slice(from));
  if (!close) return null;
  const to = from + close.index + (close[0].startsWith("\n") ? 1 : 0);
  // Without a single "name: value" it is a paragraph between two rules.
  if (!ENTRY.test(text.slice(from, to))) return null;
  return { yaml: { from, to }, to: from + close.index + close[0].length };
}

/** The table of a design as it is read: asks for entries and words, and collects what is wrong with them. Never throws. */
export class Table {
  readonly findings: Finding[] = [];
  readonly root: TableNode | null;
  private readonly yaml: string;
  private readonly resolve: (node: TableNode | null) => TableNode | null;

  constructor(
    readonly text: string,
    private readonly at: Span,
  ) {
    this.yaml = text.slice(at.from, at.to);
    // Every value is kept as it is written: "NO" is a size and 1.50 a price, whatever else YAML makes of them.
    try {
      const document = parseDocument(this.yaml, {
        schema: "failsafe",
        prettyErrors: false,
        logLevel: "silent",
      });
      for (const fault of document.errors) this.tellFault(fault);
      this.root = (document.contents as TableNode | null) ?? null;
      this.resolve = (node) =>
        isAlias(node) ? ((node.resolve(document) as TableNode | undefined) ?? null) : node;
    } catch {
      // The parser goes down into brackets; a thousand of them exhaust it.
      this.root = null;
      this.resolve = (node) => node;
      this.tell(tableNotRead, at, { problem: "The entries are nested too deeply." });
    }
  }

  tell<Facts>(kind: FindingKind<Facts>, span: Span, facts: Facts, sizes: readonly number[] = []): void {
    this.findings.push(kind.at({ span, piece: null, row: null, sizes }, facts));
  }

  /** The entries of a map, in order; empty, and told, where something else stands. */
  entries(node: TableNode | null, name: string): Entry[] {
    const map = this.resolve(node);
    if (map === null) return [];
    if (!isMap(map)) {
      this.tell(entryNotUnderstood, this.spanOf(node), {
        entry: name,
        found: this.excerpt(node),
        wants: "Entries with a name, a colon and a value belong here.",
      });
      return [];
    }
    return map.items.flatMap(({ key, value }): Entry[] => {
      const keyNode = key as TableNode | null;
      if (!isScalar(keyNode) || String(keyNode.value).trim() === "") {
        this.tell(entryNotUnderstood, this.spanOf(keyNode ?? node), {
          entry: name,
          found: this.excerpt(keyNode),
          wants: "An entry begins with its name and a colon.",
        });
        return [];
      }
      const keySpan = this.spanOf(keyNode);
      const valueNode = this.resolve((value as TableNode | null) ?? null);
      const empty =
        valueNode === null ||
        (isScalar(valueNode) && valueNode.value === "" && !valueNode.type?.startsWith("QUOTE"));
      return [
        {
          key: String(keyNode.value),
          keySpan,
          node: empty ? null : valueNode,
          span: empty ? keySpan : this.spanOf((value as TableNode | null) ?? null),
        },
      ];
    });
  }

  /**
   * The entries of a map by the names they may have, however these are spaced or capitalised. Others are noted, unless `free`.
   *
   * @param known  name looked for, and other names it goes by
   */
  known<Name extends string>(
    entries: readonly Entry[],
    known: Readonly<Record<Name, readonly string[]>>,
    under: string | null,
  ): Partial<Record<Name, Entry>> {
    const found: Partial<Record<Name, Entry>> = {};
    const names = Object.entries(known) as [Name, readonly string[]][];
    for (const entry of entries) {
      const plain = plainName(entry.key);
      const name = names.find(([one, others]) => plainName(one) === plain || others.includes(plain))?.[0];
      if (name !== undefined) found[name] ??= entry;
      else
        this.tell(entryUnknown, entry.keySpan, {
          entry: entry.key,
          under,
          near: nearestName(entry.key, Object.keys(known)),
        });
    }
    return found;
  }

  /** The words of a value; null, and told, where a map or a list stands. */
  words(entry: Entry, wants: string): Words | null {
    const words = this.wordsOf(entry.node);
    if (words !== null && words.text.trim() !== "") return words;
    this.tell(entryNotUnderstood, entry.span, { entry: entry.key, found: this.excerpt(entry.node), wants });
    return null;
  }

  /** The words of a node that holds words, or a list of them written as one. */
  wordsOf(node: TableNode | null): Words | null {
    const one = this.resolve(node);
    if (isScalar(one)) {
      const text = String(one.value ?? "");
      const span = this.spanOf(one);
      // Words in quotation marks begin one further on; words that were folded or escaped keep only their whole place.
      const lead = [0, 1].find((skip) => this.text.startsWith(text, span.from + skip));
      const place = (part: Span): Span =>
        lead === undefined ? span : { from: span.from + lead + part.from, to: span.from + lead + part.to };
      return { text, span, place };
    }
    return null;
  }

  /** The items of a list, or the one value that stands for a list. */
  items(node: TableNode | null): TableNode[] {
    const one = this.resolve(node);
    if (one === null) return [];
    if (!isSeq(one)) return [one];
    return one.items.flatMap((item) => this.resolve((item as TableNode | null) ?? null) ?? []);
  }

  isMap(node: TableNode | null): boolean {
    return isMap(this.resolve(node));
  }

  isList(node: TableNode | null): boolean {
    return isSeq(this.resolve(node));
  }

  /** Whether a map is written in braces on one line, as in { a: b }. */
  isInBraces(node: TableNode | null): boolean {
    const one = this.resolve(node);
    return isMap(one) && one.flow === true;
  }

  /** Place in the design of a node, without the line break that may follow it. */
  spanOf(node: TableNode | null): Span {
    const range = node?.range;
    if (!range) return { from: this.at.from, to: this.at.from };
    const [from, to] = [this.at.from + range[0], this.at.from + range[1]];
    const words = this.text.slice(from, to).trimEnd();
    return { from, to: from + Math.max(words.length, 0) };
  }

  /** The first words of a value, for a message. */
  excerpt(node: TableNode | null): string {
    const { from, to } = this.spanOf(node);
    const words = this.text.slice(from, to).replace(/\s+/g, " ").trim();
    return words.length > 40 ? `${words.slice(0, 39)}…` : words;
  }

  /** Marks the line from the place on at which the parser stumbled; it often names one sign alone. */
  private tellFault(fault: YAMLError): void {
    const lead = /^[ \t]*/.exec(this.yaml.slice(fault.pos[0]))?.[0].length ?? 0;
    const start = Math.min(fault.pos[0] + lead, this.yaml.length);
    const end = this.yaml.indexOf("\n", start);
    const words = this.yaml.slice(start, end === -1 ? this.yaml.length : end).trimEnd();
    const from = this.at.from + start;
    this.tell(
      tableNotRead,
      { from, to: from + words.length },
      { problem: SAID[fault.code] ?? "What stands here does not fit what stands before it." },
    );
  }
}

/** What is wrong, by the parser's own codes. */
const SAID: Partial<Record<YAMLError["code"], string>> = {
  ALIAS_PROPS: "A reference (*name) stands alone.",
  BAD_ALIAS: "This reference (*name) leads nowhere.",
  BAD_DQ_ESCAPE: "A backslash inside quotation marks begins something that is not known.",
  BAD_INDENT: "This line is set in by another number of spaces than the lines it belongs to.",
  BAD_PROP_ORDER: "A mark stands before the wrong thing here.",
  BAD_SCALAR_START: "A value cannot begin with this sign; put the value in quotation marks.",
  BLOCK_AS_IMPLICIT_KEY:
    "Two colons stand in one entry; put the value in quotation marks, or on lines of its own.",
  BLOCK_IN_FLOW: "Entries in braces stand on one line, parted by commas.",
  DUPLICATE_KEY: "This entry stands here twice.",
  IMPOSSIBLE: "This cannot be read.",
  KEY_OVER_1024_CHARS: "A colon is missing: the name of this entry does not end.",
  MISSING_CHAR: "A sign is missing here: a bracket, a brace, a comma, a colon or a quotation mark.",
  MULTILINE_IMPLICIT_KEY: "The name of an entry stands on one line, with a colon behind it.",
  MULTIPLE_ANCHORS: "One value has two names (&name).",
  MULTIPLE_DOCS: "The table ends before this line.",
  NON_STRING_KEY: "The name of an entry is words.",
  TAB_AS_INDENT: "A line is set in with a tabulator; use spaces.",
  TAG_RESOLVE_FAILED:
    "A word with an exclamation mark before it is not known; put the value in quotation marks.",
  UNEXPECTED_TOKEN: "This does not belong here; a line may begin too far to the left or right.",
  BAD_COLLECTION_TYPE:
    "A word with an exclamation mark before it is not known; put the value in quotation marks.",
};
