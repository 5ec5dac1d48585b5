import type { PatternTree } from "../../src/notation/index.ts";
import { markHarmless, Pattern } from "./harmless.ts";
import { KINDS, type Kind, type Mutation, mutate } from "./mutation.ts";
import { changeNumbers } from "./number-mutations.ts";
import { drawSome } from "./random.ts";
import { changeWords } from "./word-mutations.ts";

/** Every change of a pattern that is made by rule, each different from the text and from the others of its kind. */
export function mutationsOf(tree: PatternTree): Mutation[] {
  const pattern = new Pattern(tree);
  const seen = new Set<string>();
  return pattern.placed
    .flatMap((placed) => [...changeNumbers(tree.text, placed), ...changeWords(tree, placed)])
    .filter((change) => {
      const key = `${change.span.from}-${change.span.to}-${change.text}`;
      if (seen.has(key) || mutate(tree.text, change) === tree.text) return false;
      seen.add(key);
      return true;
    })
    .map((change) => markHarmless(change, pattern));
}

/** At least so many of every kind are kept, however many there are of the others. */
const LEAST_OF_A_KIND = 3;

/**
 * So many changes at most, drawn evenly: every kind in proportion to its number, spread over the whole text by lot.
 * The same seed draws the same ones.
 */
export function drawEvenly(changes: readonly Mutation[], most: number, seed: number): Mutation[] {
  if (changes.length <= most) return [...changes];
  const kinds = (Object.keys(KINDS) as Kind[]).map((kind) =>
    changes.filter((change) => change.kind === kind),
  );
  return kinds.flatMap((ofKind, at) => {
    const share = Math.max(LEAST_OF_A_KIND, Math.round((most * ofKind.length) / changes.length));
    return drawSome(ofKind, share, seed + at);
  });
}
