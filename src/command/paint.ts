/** How words are set off. What colour says is always said by a word or a sign too. */
export interface Paint {
  readonly strong: (words: string) => string;
  readonly quiet: (words: string) => string;
  readonly error: (words: string) => string;
  readonly warning: (words: string) => string;
  readonly note: (words: string) => string;
  readonly good: (words: string) => string;
}

const plain = (words: string): string => words;

/** SGR codes of ECMA-48: 1 bold, 2 faint, 31 red, 33 yellow, 32 green. Notes are set calm, in the terminal's own colour. */
const coded =
  (...codes: readonly number[]) =>
  (words: string): string =>
    words === "" ? "" : `\u001b[${codes.join(";")}m${words}\u001b[0m`;

export function paintFor(colour: boolean | undefined): Paint {
  return colour
    ? {
        strong: coded(1),
        quiet: coded(2),
        error: coded(1, 31),
        warning: coded(33),
        note: coded(1),
        good: coded(32),
      }
    : { strong: plain, quiet: plain, error: plain, warning: plain, note: plain, good: plain };
}
