import { ONE_SIZE, type SizeRun, type Span } from "../../base/index.ts";
import { entryNotUnderstood } from "../findings/index.ts";
import type { Aim } from "./document.ts";
import type { Entry, Table } from "./table.ts";

/** The title; null where there is none. */
export function readTitle(table: Table, entry: Entry | undefined): string | null {
  if (entry === undefined) return null;
  return table.words(entry, "A title is a line of words.")?.text.trim() ?? null;
}

/** The terms that the text is written in. */
export function readTerms(table: Table, entry: Entry | undefined): "US" | "UK" | null {
  if (entry === undefined) return null;
  const words = table.words(entry, "The terms are US or UK.");
  if (words === null) return null;
  const terms = words.text.trim().toUpperCase();
  if (terms === "US" || terms === "UK") return terms;
  table.tell(entryNotUnderstood, words.span, {
    entry: entry.key,
    found: words.text.trim(),
    wants: "The terms are US or UK.",
  });
  return null;
}

const AIMS: readonly (readonly [RegExp, Aim])[] = [
  [/^(?:the )?(?:least |smallest )?(?:sum|total)(?: of (?:all )?misses)?$|^all misses$/, "least sum"],
  [/^(?:the )?(?:least |smallest )?(?:worst|largest|greatest)(?: (?:one|miss))?$/, "least worst"],
];

/** What grading aims at: "sum of misses", which is usual, or "largest miss". */
export function readAim(table: Table, entry: Entry | undefined): Aim {
  if (entry === undefined) return "least sum";
  const wants = "The aim is the sum of misses, or the largest miss.";
  const words = table.words(entry, wants);
  const said = words?.text.trim().toLowerCase().replace(/\s+/g, " ") ?? "";
  const aim = AIMS.find(([form]) => form.test(said))?.[1];
  if (aim === undefined && words !== null)
    table.tell(entryNotUnderstood, words.span, { entry: entry.key, found: words.text.trim(), wants });
  return aim ?? "least sum";
}

/** A design with more sizes than this is a slip: no count is told apart in a hundred columns. */
const MOST_SIZES = 60;

/** The size run: names with spaces or commas between them, or a list; null where it is not said. */
export function readSizes(
  table: Table,
  entry: Entry | undefined,
): { readonly sizes: SizeRun; readonly span: Span } | null {
  if (entry === undefined) return null;
  const wants = "Sizes are their names, smallest first, as in XS S M L.";
  const no = (found: string): null => {
    table.tell(entryNotUnderstood, entry.span, { entry: entry.key, found, wants });
    return null;
  };
  const names = table.isList(entry.node)
    ? table.items(entry.node).map((item) => table.wordsOf(item)?.text.trim() ?? "")
    : namesIn(table.words(entry, wants)?.text ?? null);
  if (names === null) return null;
  if (names.length === 0 || names.includes("")) return no(table.excerpt(entry.node));
  if (names.length > MOST_SIZES) return no(`${names.length} names`);
  const twice = names.find((name, at) => names.indexOf(name) !== at);
  if (twice !== undefined) {
    table.tell(entryNotUnderstood, entry.span, {
      entry: entry.key,
      found: table.excerpt(entry.node),
      wants: `The size ${twice} stands there twice.`,
    });
    return null;
  }
  return { sizes: names, span: entry.span };
}

function namesIn(words: string | null): string[] | null {
  if (words === null) return null;
  const plain = words.trim().toLowerCase();
  if (plain === ONE_SIZE[0]) return [...ONE_SIZE];
  // Names of more than one word have commas between them.
  return (words.includes(",") ? words.split(",") : words.split(/\s+/))
    .map((name) => name.trim())
    .filter((name) => name !== "");
}
