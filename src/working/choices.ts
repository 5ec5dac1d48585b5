import type { Span } from "../base/index.ts";

/**
 * One form of words that can be read in more than one way. The choice made for a form holds for the whole document.
 */
export interface Form {
  /** Names the form: "turning-chain:3:dc", "times-after-star-pair". */
  readonly key: string;
  /** How many readings a person could defend, likelier first. */
  readonly readings: number;
  /** Where it was met first. */
  readonly span: Span;
}

/** The readings taken for one pass over the document, and the forms that were met on the way. */
export class Choices {
  readonly met = new Map<string, Form>();

  /** @param taken  reading by form key; a form that is not there is read the likelier way */
  constructor(readonly taken: ReadonlyMap<string, number>) {}

  /** The reading of a form, from 0. */
  take(key: string, readings: number, span: Span): number {
    if (!this.met.has(key)) this.met.set(key, { key, readings, span });
    const chosen = this.taken.get(key) ?? 0;
    return chosen < readings ? chosen : 0;
  }
}

/** The readings settled on, and how the document came out under them. */
export interface Settled<Outcome> {
  readonly outcome: Outcome;
  readonly choices: Choices;
  readonly wrong: number;
}

/**
 * Finds the readings under which most rows of all sizes come true. Every form is tried in turn and the best single change
 * is kept, until none helps; a reading is changed only when strictly more comes true, so a tie keeps the likelier one.
 *
 * @param pass  works the document under some choices; returns how much is wrong and the forms met
 */
export function settleChoices<Outcome>(
  pass: (choices: Choices) => { readonly outcome: Outcome; readonly wrong: number },
  start: ReadonlyMap<string, number> = new Map(),
  mostPasses = 60,
): Settled<Outcome> {
  let choices = new Choices(start);
  let best = pass(choices);
  let passes = 1;
  while (best.wrong > 0 && passes < mostPasses) {
    let bestChange: { form: Form; choices: Choices; result: typeof best } | null = null;
    for (const form of choices.met.values()) {
      const now = choices.taken.get(form.key) ?? 0;
      for (let reading = 0; reading < form.readings; reading++) {
        if (reading === now || passes >= mostPasses) continue;
        const tried = new Choices(new Map(choices.taken).set(form.key, reading));
        const result = pass(tried);
        passes++;
        if (result.wrong < (bestChange?.result.wrong ?? best.wrong))
          bestChange = { form, choices: tried, result };
      }
    }
    if (!bestChange) break;
    choices = bestChange.choices;
    best = bestChange.result;
  }
  return { outcome: best.outcome, choices, wrong: best.wrong };
}
