import { KINDS, type Kind } from "./mutation.ts";

export interface Options {
  /** Name of one sample, without ending; null for all. */
  readonly sample: string | null;
  readonly kind: Kind | null;
  /** Changes tried of one sample in one round. */
  readonly most: number;
}

/** So many that all samples are done in a few minutes on two cores. */
const MOST = 60;

/** Reads the words of the command line. @throws {Error} with a sentence for the user. */
export function readOptions(words: readonly string[]): Options {
  const options: { -readonly [K in keyof Options]: Options[K] } = { sample: null, kind: null, most: MOST };
  for (let at = 0; at < words.length; at += 2) {
    const [option, value] = [words[at], words[at + 1]];
    if (value === undefined) throw new Error(`${option} needs a value: --sample NAME, --kind KIND, --most N`);
    if (option === "--sample") options.sample = value.replace(/^.*\//, "").replace(/\.txt$/, "");
    else if (option === "--kind") options.kind = kindOf(value);
    else if (option === "--most") {
      options.most = Number(value);
      if (!Number.isInteger(options.most) || options.most < 0)
        throw new Error(`--most needs a whole number, not ${value}`);
    } else throw new Error(`There is no option ${option}: --sample NAME, --kind KIND, --most N`);
  }
  return options;
}

function kindOf(value: string): Kind {
  const kinds = Object.keys(KINDS) as Kind[];
  const fits = kinds.filter((kind) => kind === value || kind.startsWith(value));
  if (fits.length === 1) return fits[0] as Kind;
  throw new Error(`There is no kind "${value}". There are: ${kinds.join(", ")}`);
}
