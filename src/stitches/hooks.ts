/** A hook as makers sell it. Numbers and letters differ between makers: the millimetres are what counts. */
export interface Hook {
  readonly kind: "regular" | "steel";
  readonly mm: number;
  /** American letter and number as printed, "H-8"; null where there is none. */
  readonly us: string | null;
  /** Old British number; the larger the number the finer the hook. Null where there is none. */
  readonly uk: string | null;
  readonly note?: string;
  /** How well it is known: "two" public copies, "one", or "memory". */
  readonly seen: "two" | "one" | "memory";
}

const hook = (mm: number, us: string | null, uk: string | null, seen: Hook["seen"], note?: string): Hook => ({
  kind: "regular",
  mm,
  us,
  uk,
  seen,
  ...(note === undefined ? {} : { note }),
});

const steel = (mm: number, us: string, seen: Hook["seen"], note?: string): Hook => ({
  kind: "steel",
  mm,
  us,
  uk: null,
  seen,
  ...(note === undefined ? {} : { note }),
});

const STEEL_DIFFERS = "makers differ by up to about 0.25 mm for the same number";

/** Source: public copies of the general table of hook sizes; old British numbers from two makers' tables. */
export const HOOKS: readonly Hook[] = [
  hook(2, null, "14", "one"),
  hook(2.25, "B-1", "13", "two"),
  hook(2.5, null, "12", "two", "UK 12 is printed beside 2.5 mm by some makers and 2.75 mm by others"),
  hook(2.75, "C-2", "12", "two", "UK 11 in some tables"),
  hook(3, null, "11", "memory", "UK 10 in some tables"),
  hook(3.125, "D", null, "two"),
  hook(3.25, "D-3", "10", "two"),
  hook(3.5, "E-4", "9", "two"),
  hook(3.75, "F-5", null, "two", "UK 9 in some tables"),
  hook(4, "G-6", "8", "two"),
  hook(4.25, "G", null, "two"),
  hook(4.5, "7", "7", "two", "number only, no letter"),
  hook(5, "H-8", "6", "two"),
  hook(5.25, "I", null, "two"),
  hook(5.5, "I-9", "5", "two"),
  hook(5.75, "J", null, "two"),
  hook(6, "J-10", "4", "two"),
  hook(6.5, "K-10.5", "3", "two"),
  hook(7, null, "2", "two", "no US size"),
  hook(8, "L-11", "0", "two"),
  hook(9, "M/N-13", "00", "two"),
  hook(10, "N/P-15", "000", "two"),
  hook(11.5, "P-16", null, "two"),
  hook(12, null, null, "two", "no US size"),
  hook(15, "P/Q", null, "two"),
  hook(15.75, "Q", null, "two"),
  hook(16, "Q", null, "two"),
  hook(19, "S", null, "two"),
  hook(25, "T/U/X", null, "two"),
  hook(30, "T/X", null, "two"),
  steel(3.5, "00", "two"),
  steel(3.25, "0", "memory"),
  steel(2.75, "1", "memory"),
  steel(2.25, "2", "memory"),
  steel(2.1, "3", "memory"),
  steel(2, "4", "memory", STEEL_DIFFERS),
  steel(1.9, "5", "memory"),
  steel(1.8, "6", "memory", STEEL_DIFFERS),
  steel(1.65, "7", "two", STEEL_DIFFERS),
  steel(1.5, "8", "memory", STEEL_DIFFERS),
  steel(1.4, "9", "memory", STEEL_DIFFERS),
  steel(1.3, "10", "memory", STEEL_DIFFERS),
  steel(1.1, "11", "memory"),
  steel(1, "12", "memory"),
  steel(0.85, "13", "memory"),
  steel(0.75, "14", "one", "another maker's 14 is 0.6 mm"),
];

/**
 * The hook nearest in millimetres; of two as near the finer one, of two kinds the regular one unless steel is asked for.
 * @throws {RangeError} on a size that is not above zero
 */
export function nearestHook(mm: number, kind?: Hook["kind"]): Hook {
  if (!(mm > 0)) throw new RangeError(`a hook is above 0 mm, got ${mm}`);
  const off = (one: Hook): number => Math.abs(one.mm - mm);
  const candidates = kind === undefined ? HOOKS : HOOKS.filter((one) => one.kind === kind);
  return candidates.reduce((best, one) => {
    if (off(one) !== off(best)) return off(one) < off(best) ? one : best;
    if (one.kind !== best.kind) return one.kind === "regular" ? one : best;
    return one.mm < best.mm ? one : best;
  });
}

/** What was found under the words for a hook. */
export interface HookFound {
  /** Millimetres as written, or those of the letter or number in the table. */
  readonly mm: number;
  /** The hook of the table with these millimetres; null where a size stands between those sold. */
  readonly hook: Hook | null;
  /** Told by "mm", by an American letter or number, or by an old British number. */
  readonly by: "mm" | "us" | "uk";
}

/**
 * The hook that words speak of: "5 mm", "5.00mm", "US H/8", "size H-8", "K-10½", "UK 6", "steel 7". Millimetres are
 * taken before letters where both stand. A bare number without "US", "UK", "size", "no." or "steel" is not
 * taken for a hook, and undefined is given back where the words name none.
 */
export function lookupHook(words: string): HookFound | undefined {
  const text = words
    .toLowerCase()
    .replace(/½|\s+1\/2/gu, ".5")
    .replace(/,(?=\d)/gu, ".");
  const isSteel = /\bsteel\b/u.test(text);
  const millimetres = /(\d+(?:\.\d+)?)\s*-?\s*mm\b/u.exec(text);
  if (millimetres !== null) {
    const mm = Number(millimetres[1]);
    if (!(mm > 0)) return undefined;
    const near = nearestHook(mm, isSteel ? "steel" : undefined);
    return { mm, hook: near.mm === mm ? near : null, by: "mm" };
  }
  const british = /\b(?:old\s+)?uk\s*(?:size\s*)?(?:no\.?\s*)?(\d+)\b/u.exec(text);
  if (british !== null)
    return found(
      HOOKS.find((one) => one.uk === british[1]),
      "uk",
    );
  const lettered =
    /(?:^|[^a-z0-9])([a-z](?:\/[a-z])*)(?:\s*[-/]\s*|\s+)?(\d+(?:\.\d+)?)?(?=$|[^a-z0-9])/u.exec(text);
  if (lettered !== null && !isSteel)
    return found(americanHook(lettered[1]!.toUpperCase(), lettered[2]), "us");
  const numbered =
    /\b(?:us|usa|size|no\.?|steel|#)\s*(?:size\s*)?(?:no\.?\s*)?#?(\d+(?:\.\d+)?)\b/u.exec(text) ??
    /#(\d+(?:\.\d+)?)\b/u.exec(text);
  if (numbered === null) return undefined;
  const number = numbered[1]!;
  return found(
    HOOKS.find((one) => one.kind === (isSteel ? "steel" : "regular") && numberOf(one) === number),
    "us",
  );
}

function found(one: Hook | undefined, by: HookFound["by"]): HookFound | undefined {
  return one === undefined ? undefined : { mm: one.mm, hook: one, by };
}

/** By letters and number; letters alone prefer the hook that has just these, then the first that has them among others. */
function americanHook(letters: string, number: string | undefined): Hook | undefined {
  const wanted = letters.split("/");
  const regular = HOOKS.filter(
    (one) => one.kind === "regular" && wanted.every((letter) => lettersOf(one).includes(letter)),
  );
  if (number !== undefined) return regular.find((one) => numberOf(one) === number);
  const numbered = regular.filter((one) => numberOf(one) !== undefined);
  const exact = (list: readonly Hook[]): Hook | undefined =>
    list.find((one) => lettersOf(one).length === wanted.length);
  return exact(numbered) ?? exact(regular) ?? regular[0];
}

function lettersOf(one: Hook): readonly string[] {
  return /^[A-Z/]+/u.exec(one.us ?? "")?.[0].split("/") ?? [];
}

function numberOf(one: Hook): string | undefined {
  return /\d+(?:\.\d+)?$/u.exec(one.us ?? "")?.[0];
}
