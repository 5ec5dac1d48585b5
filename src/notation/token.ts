import type { Edit, Span } from "../base/index.ts";

/**
 * A token of the notation. Size lists are one token with a value per size, so that they stand wherever a number can.
 * `glued` is true where no white space stands before it: "3tr" is a number and a glued word.
 */
export type Token =
  | {
      readonly is: "word";
      readonly span: Span;
      readonly text: string /** lower case, dots and possessives gone: "s.c." is "sc", "ch's" is "ch" */;
      readonly norm: string;
      readonly glued: boolean;
    }
  | {
      readonly is: "number";
      readonly span: Span;
      readonly text: string;
      readonly values: readonly (number | null)[];
      /** "2nd", "4th", "second": an ordinal. */
      readonly ordinal: boolean;
      /** Written as a word: "two", "twice" is { values: [2], word: true }. */
      readonly word: boolean;
      readonly glued: boolean;
      /** The list stands in brackets with no value before them, "(62, 66, 70)": it may be a count of the row as well as a number. */
      readonly bracketed?: boolean;
      /** A unit written inside the list, 9" (10", 11"); a unit after the list is a token of its own. */
      readonly unit?: "cm" | "in" | "mm";
      /** A slip that was forgiven, with the edit that mends it: a bracket left open or closed with another kind. */
      readonly mend?: Edit;
      /** The words between the braces, "body sts + 1". A name that is not among the counts leaves `values` empty. */
      readonly count?: string;
    }
  | {
      readonly is: "mark";
      readonly span: Span;
      readonly text:
        | "*"
        | "**"
        | "#"
        | "("
        | ")"
        | "["
        | "]"
        | "{"
        | "}"
        | "<"
        | ">"
        | ","
        | ";"
        | ":"
        | "."
        | "-"
        | "="
        | "+"
        | "&"
        | "/"
        | '"'
        | "x"
        | "…"
        | "?"
        | "!"
        | "other";
      readonly glued: boolean;
    }
  | { readonly is: "break"; readonly span: Span };
