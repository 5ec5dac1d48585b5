import type { Clause, Definition } from "../notation/index.ts";

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

function namedBy(clauses: readonly Clause[]): Named {
  let found = known.get(clauses);
  if (!found) {
    const stitches = new Set<string>();
    found = { tellsApart: !byRole(clauses, stitches), stitches: [...stitches] };
    known.set(clauses, found);
  }
  return found;
}

/** Whether every place named in a part of the tree is known by its role; gathers the stitches worked. */
function byRole(part: unknown, stitches: Set<string>): boolean {
  if (typeof part !== "object" || part === null) return true;
  if (Array.isArray(part)) return part.every((each) => byRole(each, stitches));
  // "between next 2 shells" asks for shells.
  if ("is" in part && part.is === "between" && "code" in part) return false;
  for (const name in part) {
    const value = (part as Record<string, unknown>)[name];
    if (name === "is" && !BY_ROLE.has(value as string)) return false;
    if (name === "ref" && value === "center") return false;
    if (name === "stitch" && typeof value === "string") stitches.add(value);
    if (typeof value === "object" && name !== "span" && !byRole(value, stitches)) return false;
  }
  return true;
}
