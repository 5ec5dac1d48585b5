import type { Unit } from "./document.ts";
import { namesEdging, namesPart } from "./section-words.ts";

type Heading = Extract<Unit, { kind: "heading" }>;

/**
 * Which headings begin a piece (1) and which a section of the piece before (2): by depth where the text is Markdown, by
 * capitals against small letters where both are used, by the words where all headings look alike.
 *
 * @param nameOf  the words of a heading
 */
export function headingLevels(
  headings: readonly Heading[],
  nameOf: (heading: Heading) => string,
): Map<Heading, 1 | 2> {
  const levels = new Map<Heading, 1 | 2>();
  const depths = headings
    .map((heading) => (typeof heading.style === "object" ? heading.style.hashes : 0))
    .filter((depth) => depth > 0);
  const top = depths.length > 0 ? Math.min(...new Set(depths)) : 0;
  const inCapitals = headings.filter((heading) => heading.style === "capitals" && !heading.finishing);
  const capitals = inCapitals.length > 1 || inCapitals.some((heading) => !namesPart(nameOf(heading)));
  let underFinishing = false;
  let pieces = 0;
  for (const heading of headings) {
    const name = nameOf(heading);
    const level = levelOf(heading, name, top, capitals, underFinishing, pieces);
    levels.set(heading, level);
    if (level === 1) {
      pieces++;
      underFinishing = heading.finishing;
    }
  }
  return levels;
}

function levelOf(
  heading: Heading,
  name: string,
  top: number,
  capitals: boolean,
  underFinishing: boolean,
  pieces: number,
): 1 | 2 {
  if (heading.finishing || pieces === 0) return 1;
  const { style } = heading;
  if (typeof style === "object") return style.hashes > top ? 2 : 1;
  if (top > 0) return 2;
  const edging = namesEdging(name);
  if (style === "capitals") return isShaping(name) ? 2 : 1;
  if (underFinishing) return edging && !isSeamWords(name) ? 1 : 2;
  if (capitals) return 2;
  return namesPart(name) &&
    !/^(?:left|right) (?:front|back|sleeve|side|mitten|hand|foot|leg|ear)s?\b/i.test(name) &&
    !/^(?:body|rib|ribbing|hem|upper|lower)\b/i.test(name)
    ? 2
    : 1;
}

/** "SHAPE NECK", "ARMHOLE SHAPING", "RIGHT SHOULDER": part of the piece even in capitals. */
function isShaping(name: string): boolean {
  return /^(?:to )?(?:shape|divide|split|shaping|for )\b|\bshaping\b|^(?:right|left|first|second|back|front)\s(?:shoulder|neck|armhole|half|side)\b|^(?:armholes?|shoulders?|neck|neckline|underarm)$/i.test(
    name,
  );
}

/** "Shoulders", "Sleeves", "Side seams" under Finishing say what is sewn. */
function isSeamWords(name: string): boolean {
  return /\bseams?\b/i.test(name) || /^(?:shoulders?|sleeves?|sides?|buttons?)$/i.test(name);
}
