/** What the lexer needs to know of the whole text: how many sizes there are decides what a bracket of numbers is. */
export interface LexContext {
  /** How many sizes; 1 if the pattern is not graded. */
  readonly sizes: number;
  /** Names of the sizes as the pattern lists them, so that "4X" is a name and not "4 times". */
  readonly sizeNames?: readonly string[];
  /** The text begins with numbers of rows, the word "Rows" having been read: commas and hyphens there make no size list. */
  readonly rowNumbers?: boolean;
  /** Values of `{count}` names, one per size (or one for all). Absent: braces are ordinary brackets. */
  readonly counts?: ReadonlyMap<string, readonly (number | null)[]>;
}

/** What the reader of one row needs to know of the whole text. */
export interface ReadContext extends LexContext {
  readonly text: string;
  readonly terms: "US" | "UK";
  readonly sizeNames: readonly string[];
  /** Every spelling of a special stitch in lower case, to its first name in lower case. */
  readonly specials: ReadonlyMap<string, string>;
  /** Names and letters of the yarns, as written: "A", "MC", "cream". */
  readonly colours: readonly string[];
}
