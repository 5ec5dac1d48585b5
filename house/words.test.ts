import { expect, it } from "vitest";
import { keptFiles, keptText } from "../scripts/repository.mjs";

// Written in pieces, or this file would be the first to be found.
const WORKPLACE = new RegExp(
  [String.raw`\.\./sha${"red"}`, `/work/sha${"red"}`, `issue ${"tracker"}`, `sub${"agent"}`].join("|"),
  "i",
);

it("speaks of the project and never of the place it was made in", () => {
  const texts = keptFiles().flatMap((name) => {
    const text = keptText(name);
    return text === undefined ? [] : [{ name, text }];
  });
  expect(texts.length).toBeGreaterThan(10);
  const said = texts.flatMap(({ name, text }) =>
    text
      .split("\n")
      .flatMap((line, index) => (WORKPLACE.test(line) ? [`${name}:${index + 1} ${line.trim()}`] : [])),
  );
  expect(said).toEqual([]);
});

it("would notice", () => {
  expect(WORKPLACE.test(`see ${"../"}shared/notes.md`)).toBe(true);
  expect(WORKPLACE.test("several sizes share a row")).toBe(false);
});
