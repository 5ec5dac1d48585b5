/*
 * The table at the head of a design: lines between two rows of three hyphens, before everything else. Its meaning is not the
 * reader's; only the title, and what decides how the rows are read, are looked up.
 */

export interface FrontMatter {
  /** Offset behind the closing hyphens and their line break; 0 where there is none. */
  readonly to: number;
  readonly title: string | null;
  readonly terms: "US" | "UK" | null;
  readonly sizes: readonly string[] | null;
}

const NONE: FrontMatter = { to: 0, title: null, terms: null, sizes: null };

export function readFrontMatter(plain: string): FrontMatter {
  const open = /^\s{0,8}---[ ]{0,20}\n/.exec(plain.slice(0, 64));
  if (!open) return NONE;
  const close = plain.slice(open[0].length).search(/(?:^|\n)---[ ]{0,20}(?:\n|$)/);
  if (close === -1) return NONE;
  const body = plain.slice(open[0].length, open[0].length + close + 1);
  // Without a single "name: value" it is a paragraph between two rules.
  if (!/^[\w][\w -]{0,40}:(?:\s|$)/m.test(body)) return NONE;
  const from = open[0].length + close;
  const line = plain.indexOf("\n", from + 1);
  const value = (name: string) =>
    new RegExp(`^${name}:[ ]*(.+)$`, "im")
      .exec(body)?.[1]
      ?.trim()
      .replace(/^["'](.*)["']$/, "$1") ?? null;
  const terms = value("terms")?.toUpperCase();
  const sizes = value("sizes")
    ?.replace(/^[[{]|[\]}]$/g, "")
    .split(/[,\s]+/)
    .filter((name) => name !== "");
  return {
    to: line === -1 ? plain.length : line + 1,
    title: value("title"),
    terms: terms === "US" || terms === "UK" ? terms : null,
    sizes: sizes && sizes.length > 0 ? sizes : null,
  };
}
