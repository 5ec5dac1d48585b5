import type { Span } from "../../base/index.ts";
import {
  type Expression,
  namesIn,
  plainName,
  readMeasure,
  type Slip,
  type Vocabulary,
} from "../../sizing/index.ts";
import { measureNotRead, nameUnknown, valuesAndSizes } from "../findings/index.ts";
import type { Table, Words } from "./table.ts";

/**
 * Reads words as a measure or a count and tells what is wrong with them.
 *
 * @param entry  name of the entry they stand in
 * @returns      null where they were not understood
 */
export function readWords(
  table: Table,
  words: Words,
  entry: string,
  vocabulary: Vocabulary,
): Expression | null {
  const { expression, slip } = readMeasure(words.text, vocabulary);
  if (slip) tellSlip(table, words, entry, slip, vocabulary);
  return expression;
}

/** Tells a slip of the words at its place in the design. */
export function tellSlip(
  table: Table,
  words: Words,
  entry: string,
  slip: Slip,
  { about, sizes }: Pick<Vocabulary, "about" | "sizes">,
): void {
  const span = wide(words.place(slip.span), table.text);
  if (slip.about?.is === "sizes") table.tell(valuesAndSizes, span, { entry, has: slip.about.has, sizes });
  else if (slip.about?.is === "name")
    table.tell(nameUnknown, span, {
      name: slip.about.words,
      what: slip.say.startsWith("There is no fabric") ? "fabric" : about === "counts" ? "count" : "measure",
      where: null,
      near: slip.about.near,
    });
  else table.tell(measureNotRead, span, { entry, problem: slip.say });
}

/** A place without width is shown by the sign before it. */
function wide(span: Span, text: string): Span {
  if (span.to > span.from) return span;
  return span.from > 0 && text[span.from - 1] !== "\n" ? { from: span.from - 1, to: span.from } : span;
}

/** The names an expression uses that satisfy a test, each with its place in the design. */
export function usesOf(
  words: Words,
  expression: Expression,
  test: (name: string) => boolean,
): { readonly name: string; readonly span: Span }[] {
  return namesIn(expression)
    .filter(({ name }) => test(name))
    .map(({ name, span }) => ({ name, span: words.place(span) }));
}

/** Names as the designer may write them, with what each stands for; the first that claims a name keeps it. */
export class NameBook {
  readonly names = new Map<string, string>();

  add(words: string, name: string): void {
    const plain = plainName(words);
    if (plain !== "" && !this.names.has(plain)) this.names.set(plain, name);
  }
}
