import { nearest } from "./nearest.ts";

/** The pages on findings by code, and "index"; put in when the command is built, so that it needs no file at run time. */
declare const FINDING_PAGES: Readonly<Record<string, string>>;

/** A page of the manual, or the sentence that says why there is none. */
export type Page = { readonly code: string; readonly markdown: string } | { readonly refusal: string };

/** The page of a finding. The code may be written without its folder where no other code ends like it. */
export function findPage(typed: string, pages: Readonly<Record<string, string>> = FINDING_PAGES): Page {
  const codes = Object.keys(pages);
  const asked = typed.trim().toLowerCase().replace(/\.md$/, "");
  const alike = codes.filter((code) => code === asked || code.split("/")[1] === asked);
  const code = codes.includes(asked) ? asked : alike.length === 1 ? (alike[0] as string) : undefined;
  if (code !== undefined) return { code, markdown: pages[code] as string };
  const inFolder = codes.filter((one) => one.startsWith(`${asked.replace(/\/$/, "")}/`));
  const meant = nearest(asked, [...codes, ...codes.flatMap((one) => one.split("/")[1] ?? [])]);
  const hint =
    alike.length > 1 || inFolder.length > 0
      ? ` There are: ${[...alike, ...inFolder].join(", ")}.`
      : meant
        ? ` Is ${codes.find((one) => one === meant || one.split("/")[1] === meant)} meant?`
        : " All codes: loopwright check --explain index";
  return { refusal: `There is no finding ${typed}.${hint}` };
}
