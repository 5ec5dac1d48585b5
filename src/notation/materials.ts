import type { Span } from "../base/index.ts";
import { lookupHook } from "../stitches/index.ts";
import { findColours } from "./colours.ts";
import type { Materials } from "./tree.ts";

/*
 * Hooks, yarns and notions that the head of a pattern lists.
 */

const HOOK_MM =
  /(?<![\d.])(\d{1,2}(?:[.,]\d{1,2})?)((?:\s?(?:[[(]\s?)?[:/,]\s?\d{1,2}(?:[.,]\d{1,2})?){0,4}[\])]?)\s?-?mm\b(?!\s?(?:wide|across|button|bead|eyes?|long|diameter|safety|round|pompom|snap|zip|d-ring|ring))/gi;
const HOOK_LETTER =
  /\bsize\s(?:us\s)?"?([B-S](?:[-/]?\d{1,2}(?:\.\d)?)?)"?\s?(?:\([^)]{0,24}\)\s?)?(?:crochet\s)?hook|\b(?:us\s)?([B-S](?:[-/]\d{1,2}(?:\.\d)?)?)\s(?:crochet\s)?hook\b|\bhook,?\s(?:size\s)?(?:us\s)?([B-S](?:[-/]\d{1,2})?)\b(?!\w)/g;
const NOTION =
  /\b(?:\d{1,2}\s)?(?:[a-z]+\s){0,3}?(?:(?:stitch |locking |row )?markers?|(?:yarn|tapestry|darning|sewing|blunt|wool)\s(?:needles?|thread)|needle|buttons?|zip(?:per)?s?|elastic|ribbon|beads?|snaps?|safety (?:pins?|eyes)|pins|stuffing|fiberfill|fibrefill|filling|polyfill|toy filling|scissors|tape measure|thread|pom-?pom maker|waste yarn|hooks? and eyes?|d-?rings?|clasps?|sewing thread|cardboard)\b/gi;

/** Reads the stretches of the materials section; colours named elsewhere in the head may be added by the caller. */
export function readMaterials(text: string, plain: string, stretches: readonly Span[]): Materials {
  const hooksMm: { span: Span; mm: readonly number[] }[] = [];
  const notions: { span: Span; words: string }[] = [];
  const colours = stretches.flatMap(({ from, to }) => findColours(text, plain, from, to));
  for (const { from, to } of stretches) {
    const words = plain.slice(from, to);
    hooksMm.push(...hooksIn(words, from));
    for (const hit of words.matchAll(NOTION)) {
      const at = from + hit.index;
      notions.push({ span: { from: at, to: at + hit[0].length }, words: text.slice(at, at + hit[0].length) });
    }
  }
  const first = stretches[0];
  const last = stretches.at(-1);
  const once = colours.filter(
    (colour, i) => colours.findIndex((other) => other.name.toLowerCase() === colour.name.toLowerCase()) === i,
  );
  return { span: first && last ? { from: first.from, to: last.to } : null, hooksMm, colours: once, notions };
}

/** Hooks named in a stretch of plain text that begins at `from`: by millimetres, else by their American letter. */
export function hooksIn(words: string, from: number): { span: Span; mm: readonly number[] }[] {
  const found: { span: Span; mm: readonly number[] }[] = [];
  for (const hit of words.matchAll(HOOK_MM)) {
    const mm = [hit[1] as string, ...((hit[2] ?? "").match(/\d{1,2}(?:[.,]\d{1,2})?/g) ?? [])].map((number) =>
      Number(number.replace(",", ".")),
    );
    if (mm.every((size) => size >= 0.4 && size <= 40))
      found.push({ span: { from: from + hit.index, to: from + hit.index + hit[0].length }, mm });
  }
  for (const hit of words.matchAll(HOOK_LETTER)) {
    const at = from + hit.index;
    const near = words.slice(Math.max(0, hit.index - 24), hit.index + hit[0].length + 24);
    if (/\d\s?-?mm\b/i.test(near)) continue;
    const hook = lookupHook(`US ${hit[1] ?? hit[2] ?? hit[3]}`);
    if (hook) found.push({ span: { from: at, to: at + hit[0].length }, mm: [hook.mm] });
  }
  return found.sort((a, b) => a.span.from - b.span.from);
}
