import { Kept } from "../../base/index.ts";
import { plainText } from "../glyphs.ts";

/** A name before "made", before an equals sign, a colon or a bracket, behind an equals sign, or alone in a bracket. */
const GIVEN =
  /(?<![\p{L}\d-])(?:((?:[\p{L}\d-]{1,24}\s)?[\p{L}\d-]{1,24})\s(?:is\s|now\s)?(?:made|completed?|formed)(?!\p{L})|((?:\p{L}[\p{L}\d-]{0,24}\s)?\p{L}[\p{L}\d-]{0,24})\s?[=(:])|=\s?(?:an?\s)?(\p{L}[\p{L}\d-]{0,24})|\((?:an?\s)?(\p{L}[\p{L}\d-]{0,24})\)/gu;

/**
 * The names that a stretch of text gives to what it tells: "5 dc in next st (shell made)", "2 sc in next st = inc",
 * "puff (yo, ...)", "slip stitch (ss)". Sooner one name too many than one too few.
 */
export function namesGiven(text: string): readonly string[] {
  let names = known.get(text);
  if (!names) {
    names = namesIn(text);
    known.set(text, names);
  }
  return names;
}

const known = new Kept<string, readonly string[]>(3000);

function namesIn(text: string): string[] {
  return [...plainText(text).matchAll(GIVEN)].flatMap((match) =>
    match.slice(1).filter((word) => word !== undefined),
  );
}
