import { createReadStream } from "node:fs";
import { stat } from "node:fs/promises";
import { getSystemErrorMap } from "node:util";
import type { Terminal } from "./terminal.ts";

/** The text of one input, or the sentence that says why there is none. */
export type Input = { readonly text: string } | { readonly refusal: string };

/** A pattern of a hundred pages has a tenth of it. */
const MOST_BYTES = 10_000_000;

/**
 * Reads a file, or standard input where the name is "-". Text is UTF-8, with or without a byte order mark (which is no part of
 * the text); anything else is refused with a sentence.
 */
export async function readInput(file: string, terminal: Terminal): Promise<Input> {
  const name = nameOf(file);
  const no = (why: string): Input => ({ refusal: `${name} ${why}` });
  try {
    if (file !== "-" && (await stat(file)).isDirectory())
      return no("is a folder. Name the file of the pattern itself.");
    const source = file === "-" ? (terminal.input ?? []) : createReadStream(file);
    const parts: Uint8Array[] = [];
    let bytes = 0;
    for await (const part of source) {
      const piece: Uint8Array = typeof part === "string" ? new TextEncoder().encode(part) : part;
      bytes += piece.length;
      if (bytes > MOST_BYTES)
        return no("is larger than 10 MB. A written pattern is much smaller: is it another file?");
      parts.push(piece);
    }
    return decode(Buffer.concat(parts), no);
  } catch (fault) {
    return no(sayFault(fault as NodeJS.ErrnoException));
  }
}

/** What an input is called in messages. */
export const nameOf = (file: string): string => (file === "-" ? "Standard input" : file);

function decode(bytes: Uint8Array, no: (why: string) => Input): Input {
  if (bytes.includes(0)) return no("is not a text file. Save the pattern as plain text, in UTF-8.");
  try {
    return { text: new TextDecoder("utf-8", { fatal: true }).decode(bytes) };
  } catch {
    return no("is not in UTF-8. Save the pattern as plain text, in UTF-8.");
  }
}

function sayFault(fault: NodeJS.ErrnoException): string {
  if (fault.code === "ENOENT" || fault.code === "ENOTDIR") return "is not there.";
  if (fault.code === "EACCES" || fault.code === "EPERM") return "may not be read by you.";
  const words = fault.errno === undefined ? undefined : getSystemErrorMap().get(fault.errno)?.[1];
  return `cannot be read: ${words ?? fault.message}.`;
}
