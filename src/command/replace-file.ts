import { rename, stat, writeFile } from "node:fs/promises";

/**
 * Writes beside the file and renames, so that a crash never leaves half a text. A mark at the beginning of the file that
 * reading took off is put back.
 */
export async function replaceFile(file: string, text: string, before: string): Promise<void> {
  const { mode, size } = await stat(file);
  const marked = size === Buffer.byteLength(before) + 3 ? "\uFEFF" : "";
  const draft = `${file}.${process.pid}.new`;
  await writeFile(draft, marked + text, { mode });
  await rename(draft, file);
}
