import { Kept, type Span } from "../base/index.ts";
import { type Clause, type Definition, firstRead } from "../notation/index.ts";
import type { ChainMeanings, Table } from "./hands.ts";
import type { RowAfter } from "./row.ts";

/** What a row asked for while it was worked, beside its words, its edge and its size's numbers, and what it was told. */
type Asked =
  | {
      readonly is: "choice";
      readonly key: string;
      readonly readings: number;
      readonly span: Span;
      readonly told: number;
    }
  | {
      readonly is: "meaning";
      readonly chains: number;
      readonly stitch: string | null;
      readonly told: readonly string[] | null;
    }
  | { readonly is: "main-stitch"; readonly told: string };

interface KeptRow {
  readonly after: RowAfter;
  readonly asked: readonly Asked[];
  /** How far its clauses stood from where these words were read first. */
  readonly by: number;
}

/** What a row can be told beside its words, its edge and its size's numbers. */
export type Telling = Pick<Table, "choices" | "meanings" | "mainStitch">;

/** Rows worked before, by their words and a key of what they were worked from. Kept as long as the words are. */
const rows = new WeakMap<readonly Clause[], Map<string, KeptRow[]>>();

/** Outcomes that are kept of one row: nine sizes on a few edges each. */
const MOST = 120;

/**
 * The outcome of a row that was worked before and was told then what it would be told now; undefined where there is none.
 *
 * @param key    the edge, the size, and how the row begins
 * @param fixed  spans of the outcome may stand outside the row, so that it holds only where the row has not moved
 */
export function recallRow(
  clauses: readonly Clause[],
  key: string,
  telling: Telling,
  fixed: boolean,
): RowAfter | undefined {
  const first = firstRead(clauses);
  for (const kept of rows.get(first.clauses)?.get(key) ?? []) {
    const by = first.by - kept.by;
    if ((by === 0 || !fixed) && kept.asked.every((asked) => toldAgain(asked, telling, by)))
      return by === 0 ? kept.after : movedRow(kept.after, by);
  }
  return undefined;
}

/** Keeps the outcome of a row that was worked while a listener heard what it asked. */
export function keepRow(clauses: readonly Clause[], key: string, listener: Listener, after: RowAfter): void {
  if (listener.said) return;
  const first = firstRead(clauses);
  let ofWords = rows.get(first.clauses);
  if (!ofWords || ofWords.size >= MOST) {
    ofWords = new Map();
    rows.set(first.clauses, ofWords);
  }
  const kept = ofWords.get(key);
  const row = { after, asked: listener.asked, by: first.by };
  if (!kept) ofWords.set(key, [row]);
  else if (kept.length < MOST) kept.push(row);
}

/** Stands between a row and what tells it things, and hears what the row asks. */
export class Listener implements Telling {
  asked: readonly Asked[] = NOTHING;
  /** The row told something of its chain, for others to hear. */
  said = false;

  constructor(private readonly to: Telling) {}

  /** Begins to listen to another row. */
  begin(): void {
    this.asked = NOTHING;
    this.said = false;
  }

  private hear(asked: Asked): void {
    this.asked = [...this.asked, asked];
  }

  readonly choices: Telling["choices"] = {
    take: (key, readings, span) => {
      const told = this.to.choices.take(key, readings, span);
      if (!this.asked.some((one) => one.is === "choice" && one.key === key && one.readings === readings))
        this.hear({ is: "choice", key, readings, span, told });
      return told;
    },
  };

  readonly meanings: ChainMeanings = {
    said: (chains, stitch) => {
      const told = this.to.meanings.said(chains, stitch);
      if (!this.asked.some((one) => one.is === "meaning" && one.chains === chains && one.stitch === stitch))
        this.hear({ is: "meaning", chains, stitch, told });
      return told;
    },
    say: (...meaning) => {
      this.said = true;
      this.to.meanings.say(...meaning);
    },
    differs: (...meaning) => {
      this.said = true;
      return this.to.meanings.differs(...meaning);
    },
  };

  mainStitch(): string {
    const told = this.to.mainStitch();
    if (!this.asked.some((one) => one.is === "main-stitch")) this.hear({ is: "main-stitch", told });
    return told;
  }
}

const NOTHING: readonly Asked[] = [];

/** Asks a question again, so that a choice is met as if the row were worked; whether the answer is the same. */
function toldAgain(asked: Asked, telling: Telling, by: number): boolean {
  switch (asked.is) {
    case "choice":
      return telling.choices.take(asked.key, asked.readings, movedSpan(asked.span, by)) === asked.told;
    case "meaning": {
      const told = telling.meanings.said(asked.chains, asked.stitch);
      return told === asked.told || (told !== null && told.join() === asked.told?.join());
    }
    case "main-stitch":
      return telling.mainStitch() === asked.told;
  }
}

/** An empty span at the beginning of the text stands for no place. */
const movedSpan = (span: Span, by: number): Span =>
  by === 0 || span.to === 0 ? span : { from: span.from + by, to: span.to + by };

function movedRow(after: RowAfter, by: number): RowAfter {
  const { troubles, misnamed, chainAfter } = after;
  if (troubles.length === 0 && misnamed.length === 0 && chainAfter === null) return after;
  return {
    ...after,
    troubles: troubles.map((trouble) => movedTrouble(trouble, by)),
    misnamed: misnamed.map((name) => ({ ...name, span: movedSpan(name.span, by) })),
    chainAfter: chainAfter && { ...chainAfter, span: movedSpan(chainAfter.span, by) },
  };
}

const movedTrouble = <T extends RowAfter["troubles"][number]>(trouble: T, by: number): T => ({
  ...trouble,
  span: movedSpan(trouble.span, by),
});

/** Names of what patterns define, by all that is defined. A name is not given twice. */
const definitionNames = new Kept<string, string>(50);
let named = 0;

/** A short name for the stitches that a pattern defines: the same only for the same words in the same place. */
export function nameDefinitions(definitions: readonly Definition[]): string {
  if (definitions.length === 0) return "";
  const whole = JSON.stringify(definitions);
  let name = definitionNames.get(whole);
  if (name === undefined) {
    name = String(++named);
    definitionNames.set(whole, name);
  }
  return name;
}
