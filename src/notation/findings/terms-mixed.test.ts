import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { termsMixed } from "./terms-mixed.ts";

it.each([
  ["htr", "US", "UK"],
  ["sc", "UK", "US"],
] as const)("%s in a pattern in %s terms", (word, terms, other) =>
  expect(said(termsMixed, { word, terms, because: "its first lines say so" })).toEqual([
    `"${word}" is a ${other} term in a pattern in ${terms} terms.`,
    `The pattern is read in ${terms} terms: its first lines say so.`,
    `Write the ${terms} term.`,
    "Name the terms at the head of the pattern.",
  ]),
);
