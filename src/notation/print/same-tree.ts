import { unitNoun } from "./claims.ts";

type Fields = Readonly<Record<string, unknown>>;

/**
 * Whether two trees, or parts of trees, say the same: all their fields are equal but for spans, for words that only repeat what
 * other fields say, for a number one that need not be said, and for the manner in which a repeat is marked. Lengths may differ in
 * the last digits, since inches are turned into centimetres and back.
 */
export function sameTree(a: unknown, b: unknown): boolean {
  if (typeof a === "number" && typeof b === "number") {
    return a === b || Math.abs(a - b) <= 1e-5 * Math.max(1, Math.abs(a), Math.abs(b));
  }
  if (a === null || b === null || typeof a !== "object" || typeof b !== "object") return a === b;
  if (Array.isArray(a) || Array.isArray(b)) {
    return (
      Array.isArray(a) &&
      Array.isArray(b) &&
      a.length === b.length &&
      a.every((item, index) => sameTree(item, b[index]))
    );
  }
  return sameFields(a as Fields, b as Fields);
}

/** Where something stands, and how a count is told part by part once more. */
const ASIDE: ReadonlySet<string> = new Set(["span", "stitchSpan", "nameSpan", "shares"]);

function sameFields(a: Fields, b: Fields): boolean {
  const names = new Set([...Object.keys(a), ...Object.keys(b)].filter((name) => !ASIDE.has(name)));
  for (const name of names) {
    if (name === "words" && typeof a[name] === "string" && typeof b[name] === "string") {
      if (wordsMatter(a) && !sameWords(nounOf(a, a[name]), nounOf(b, b[name]))) return false;
    } else if (name === "style" && a.kind === "repeat") {
    } else if (name === "count" && meansOneEach(a)) {
      if (!sameTree(unlessOne(a.count), unlessOne(b.count))) return false;
    } else if (!sameTree(a[name], b[name])) {
      return false;
    }
  }
  return true;
}

/** Stitches and places of which there is one where no number is said: "1 sc in next 1 st" is "sc in next st". */
function meansOneEach(node: Fields): boolean {
  return node.kind === "work" || (node.kind === undefined && "ref" in node && node.ref !== "each");
}

function unlessOne(count: unknown): unknown {
  return isJustOne(count) ? undefined : count;
}

function isJustOne(count: unknown): boolean {
  const values = (count as { readonly values?: readonly unknown[] } | undefined)?.values;
  return values?.length === 1 && values[0] === 1;
}

/** Of a count of units only the noun matters; its number is a field of its own. */
function nounOf(node: Fields, words: string): string {
  return "amount" in node ? unitNoun(words) : words;
}

function sameWords(a: string, b: string): boolean {
  const bare = (words: string): string => words.toLowerCase().replace(/\s+/gu, " ").trim();
  return bare(a) === bare(b);
}

/** Whether the words of a node say more than its other fields. */
function wordsMatter(node: Fields): boolean {
  if ("rows" in node && "rounds" in node) return isNamedLabel(node);
  if ("amount" in node) return node.kind === "unit";
  switch (node.kind) {
    case "along":
      return node.edge === "other";
    case "seam":
      return node.seam === "other";
    case "hook":
      return node.mm === null;
    case "size-only":
      return false;
    default:
      return true;
  }
}

function isNamedLabel(label: Fields): boolean {
  return label.is === "named" || label.is === "foundation" || label.open !== undefined;
}
