import { type Clause, type Definition, firstRead } from "../notation/index.ts";

/** What the words of a row name: whether they tell stitches of the row below apart, and which stitches they work. */
interface Named {
  readonly tellsApart: boolean;
  readonly stitches: readonly string[];
}

const known = new WeakMap<readonly Clause[], Named>();

/** Places that are known without looking at the kind of a stitch or the group it stands in. */
const BY_ROLE: ReadonlySet<string> = new Set([
  "any",
  "chain",
  "space",
  "ring",
  "turning-chain",
  "row-end",
  "free-loop",
  "foundation",
  "marked",
  "base",
  "skipped",
  "between",
]);

/**
 * Whether the words of a row ask which kinds of stitch the row below is made of: "dc in each sc", "center st of shell". A row that
 * does not comes out the same on every edge that has as many stitches between the same chains.
 */
export function tellsKindsApart(
  clauses: readonly Clause[],
  specials: ReadonlyMap<string, Definition>,
): boolean {
  const asked = new Set<readonly Clause[]>();
  const asks = (row: readonly Clause[]): boolean => {
    if (asked.has(row)) return false;
    asked.add(row);
    const { tellsApart, stitches } = namedBy(row);
    return (
      tellsApart ||
      stitches.some((stitch) => {
        const special = specials.get(stitch);
        return special !== undefined && asks(special.clauses);
      })
    );
  };
  return asks(clauses);
}

/** Whether a row names a stitch that the pattern defines. */
export function namesDefined(clauses: readonly Clause[], specials: ReadonlyMap<string, Definition>): boolean {
  return specials.size > 0 && namedBy(clauses).stitches.some((stitch) => specials.has(stitch));
}

function namedBy(clauses: readonly Clause[]): Named {
  const { clauses: words } = firstRead(clauses);
  let found = known.get(words);
  if (!found) {
    const stitches = new Set<string>();
    found = { tellsApart: !byRole(words, stitches), stitches: [...stitches] };
    known.set(words, found);
  }
  return found;
}

/** Whether every place named in a part of the tree is known by its role; gathers the stitches worked. */
function byRole(part: unknown, stitches: Set<string>): boolean {
  if (typeof part !== "object" || part === null) return true;
  let all = true;
  if (Array.isArray(part)) {
    for (const each of part) if (typeof each === "object" && !byRole(each, stitches)) all = false;
    return all;
  }
  // "between next 2 shells" asks for shells.
  if ("is" in part && part.is === "between" && "code" in part) all = false;
  for (const name in part) {
    const value = (part as Record<string, unknown>)[name];
    if (name === "is" && !BY_ROLE.has(value as string)) all = false;
    if (name === "ref" && value === "center") all = false;
    if (name === "stitch" && typeof value === "string") stitches.add(value);
    if (typeof value === "object" && name !== "span" && !byRole(value, stitches)) all = false;
  }
  return all;
}
