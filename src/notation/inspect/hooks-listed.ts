import type { Finding, Span } from "../../base/index.ts";
import { lookupHook } from "../../stitches/index.ts";
import { hookNotListed } from "../findings/index.ts";
import { inRow, linesOf, outside, type RowSeen, type Seen } from "./seen.ts";

/** Millimetres by which makers' sizes of one letter differ: nearer sizes are one hook. */
const NEAR = 0.13;

interface Use {
  readonly span: Span;
  readonly row: RowSeen | null;
  readonly mm: number;
}

/** Hooks that rows or the gauge ask for by size, where the materials list hooks and not these. One finding a size. */
export function findHooksNotListed(seen: Seen): Finding[] {
  const { tree } = seen;
  const listed = tree.materials.hooksMm.flatMap(({ mm }) => mm);
  if (listed.length === 0) return [];
  const known = [...listed, ...sizesIn(linesOf(tree, "materials")).map(({ mm }) => mm)];
  const found: Use[] = [];
  for (const use of [...gaugeUses(seen), ...rowUses(seen)]) {
    const isNear = (mm: number) => Math.abs(mm - use.mm) <= NEAR;
    if (known.some(isNear) || found.some(({ mm }) => isNear(mm))) continue;
    found.push(use);
  }
  return found.map(({ span, row, mm }) =>
    hookNotListed.at(row === null ? outside(span) : inRow(row, span), { mm: `${mm} mm` }),
  );
}

function rowUses(seen: Seen): Use[] {
  return seen.rows.flatMap((row) =>
    row.clauses.flatMap((clause) => {
      if (clause.kind !== "hook") return [];
      const byLetter = clause.mm === null ? lookupHook(clause.words)?.mm : undefined;
      const sizes =
        clause.mm?.values.filter((mm) => mm !== null) ?? (byLetter === undefined ? [] : [byLetter]);
      return [...new Set(sizes)].filter((mm) => mm > 0).map((mm) => ({ span: clause.span, row, mm }));
    }),
  );
}

function gaugeUses({ tree }: Seen): Use[] {
  return tree.others
    .filter((line) => line.is === "gauge")
    .flatMap(({ span }) =>
      sizesIn(tree.text.slice(span.from, span.to)).map(({ mm, from, to }) => ({
        span: { from: span.from + from, to: span.from + to },
        row: null,
        mm,
      })),
    );
}

const MILLIMETRES =
  /(\d{1,2}(?:[.,]\d{1,2})?)\s?-?mm(?:\s?[[(][^)\]]{1,12}[)\]])?(?:\s(?:crochet\s)?hook)?/giu;

/** Hook sizes in millimetres: "5.5 mm", "5 mm hook". Larger measures in mm are no hooks. */
function sizesIn(text: string): { readonly mm: number; readonly from: number; readonly to: number }[] {
  return [...text.matchAll(MILLIMETRES)].flatMap((match) => {
    const mm = Number((match[1] as string).replace(",", "."));
    return mm > 0 && mm <= 20 ? [{ mm, from: match.index, to: match.index + match[0].length }] : [];
  });
}
