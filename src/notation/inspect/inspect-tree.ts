import type { Finding } from "../../base/index.ts";
import { listLength, termsMixed } from "../findings/index.ts";
import type { PatternTree } from "../tree.ts";
import { findColoursNotListed } from "./colours-listed.ts";
import { findDefinedNotUsed } from "./defined-not-used.ts";
import { findUnevenSteps } from "./even-steps.ts";
import { findHooksNotListed } from "./hooks-listed.ts";
import { findListEchoes } from "./list-echo.ts";
import { findListLengths } from "./list-length.ts";
import { findListOrder } from "./list-order.ts";
import { findMended } from "./mended.ts";
import { findMixedTerms } from "./mixed-terms.ts";
import { findNotDefined } from "./not-defined.ts";
import { findNotUnderstood } from "./not-understood.ts";
import { findNotionsNotListed } from "./notions-listed.ts";
import { layOut } from "./seen.ts";

const INSPECTIONS = [
  findMended,
  findListLengths,
  findListOrder,
  findListEchoes,
  findUnevenSteps,
  findNotDefined,
  findDefinedNotUsed,
  findMixedTerms,
  findHooksNotListed,
  findNotionsNotListed,
  findColoursNotListed,
] as const;

/** Kinds that say why the words around them could not be read. */
const EXPLAINING: ReadonlySet<string> = new Set([listLength.code, termsMixed.code]);

/**
 * What can be seen in a pattern without working it: words that were not understood, lists that do not fit the sizes,
 * words and materials that are used and not listed. In the order of the text; never throws.
 */
export function inspectTree(tree: PatternTree): Finding[] {
  const seen = layOut(tree);
  const found = INSPECTIONS.flatMap((inspect) => inspect(seen));
  const told = found.filter(({ code }) => EXPLAINING.has(code)).map(({ span }) => span);
  return [...findNotUnderstood(seen, told), ...found].toSorted((a, b) => a.span.from - b.span.from);
}
