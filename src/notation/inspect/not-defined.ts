import type { Finding, Span } from "../../base/index.ts";
import { hasStitch, lookupAbbreviations, stitchOf } from "../../stitches/index.ts";
import { notDefined } from "../findings/index.ts";
import type { OtherLine } from "../tree.ts";
import { Explained } from "./explained.ts";
import { Phrases } from "./phrases.ts";
import { inRow, nameRow, type RowSeen, type Seen, wordsAt } from "./seen.ts";

/*
 * Stitches and loop words that rows use and that a list of abbreviations leaves out, and stitches that books work in
 * different ways, such as a shell or a puff, which every pattern has to explain. General words are known to everyone.
 */

/** Lines in which a pattern explains itself. */
const HEAD: ReadonlySet<OtherLine["is"]> = new Set(["abbreviations", "definition", "materials", "note"]);

interface Use {
  readonly row: RowSeen;
  readonly span: Span;
  readonly word: string;
}

export function findNotDefined(seen: Seen): Finding[] {
  const { tree } = seen;
  const explained = new Explained(tree);
  // A leaf of a pattern, without its head, explains nothing and is not asked to.
  const hasHead = explained.isWhole || tree.others.some(({ is }) => HEAD.has(is));
  if (!hasHead) return [];
  const uses = [
    ...stitchUses(seen, (code, word) => needsStitch(explained, code, word, tree.terms)),
    ...(explained.isWhole ? loopUses(seen, explained) : []),
  ];
  return uses.map(({ row, span, word }) => notDefined.at(inRow(row, span), { word, row: nameRow(row) }));
}

function needsStitch(explained: Explained, code: string, word: string, terms: "US" | "UK"): boolean {
  const varies = hasStitch(code) && stitchOf(code).varies === true;
  if (!varies && !explained.isWhole) return false;
  const isShort = lookupAbbreviations(word, terms).some((one) => one.needsDefinition);
  return (varies || isShort) && !explained.hasSpelling(word) && !explained.hasStitch(code);
}

/** The first use of each stitch that needs a definition and is given none, not even in the row itself. */
function stitchUses(seen: Seen, needs: (code: string, word: string) => boolean): Use[] {
  const { tree } = seen;
  const first = new Map<string, Use>();
  const asked = new Set<string>();
  const named = namedInRows(seen);
  for (const row of seen.rows)
    for (const clause of row.clauses) {
      if (clause.kind !== "work" || asked.has(clause.stitch)) continue;
      // "Shell border" names no stitch that is worked.
      if (clause.target.ref === "here" && clause.count === undefined) continue;
      asked.add(clause.stitch);
      const word = wordsAt(tree, clause.stitchSpan);
      if (word === "" || named.has(word) || !needs(clause.stitch, word)) continue;
      first.set(clause.stitch, { row, span: clause.stitchSpan, word });
    }
  return [...first.values()];
}

/** What rows call their own stitches: "(shell made)". */
function namedInRows({ rows }: Seen): Phrases {
  const clauses = rows.flatMap((row) => row.clauses);
  return new Phrases(
    ...clauses.flatMap((one) =>
      (one.kind === "group" || one.kind === "work") && one.named ? one.named : [],
    ),
  );
}

const LOOP_WORDS = /\b(?:BLO|FLO|blo|flo)\b/gu;

/** The first use of each loop word that the list leaves out. */
function loopUses(seen: Seen, explained: Explained): Use[] {
  const asked = new Set<string>();
  const uses: Use[] = [];
  for (const row of seen.rows) {
    const { from, to } = row.instruction.span;
    for (const match of seen.tree.text.slice(from, to).matchAll(LOOP_WORDS)) {
      const word = match[0];
      const key = word.toLowerCase();
      if (asked.has(key)) continue;
      asked.add(key);
      const side = key === "blo" ? "back loop" : "front loop";
      if (explained.hasSpelling(word, side) || explained.hasSpelling(key.slice(0, 2))) continue;
      const at = from + match.index;
      uses.push({ row, span: { from: at, to: at + word.length }, word });
    }
  }
  return uses;
}
