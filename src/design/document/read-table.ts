import type { SizeRun } from "../../base/index.ts";
import { entryNotUnderstood } from "../findings/index.ts";
import { readBody } from "./body.ts";
import { readCosts } from "./costs.ts";
import { readCounts, wantedLying } from "./counts.ts";
import type { DesignTable, PlacedRule, TableAnswer } from "./document.ts";
import { readEase } from "./ease.ts";
import { readFabrics } from "./fabrics.ts";
import { readHangs } from "./hangs.ts";
import { readAim, readSizes, readTerms, readTitle } from "./head.ts";
import { readMakingHabits } from "./making-habits.ts";
import { lyingIn, readPlan } from "./plan.ts";
import { type Entry, findTable, Table } from "./table.ts";
import { readTies } from "./ties.ts";
import { readHooks, readYarns } from "./yarns.ts";

const KNOWN = {
  title: [],
  terms: [],
  sizes: [],
  body: ["bodies"],
  ease: [],
  yarn: ["yarns"],
  hooks: ["hook"],
  fabrics: ["fabric"],
  plan: [],
  aim: [],
  hangs: ["hanging"],
  counts: [],
  ties: [],
  making: [],
  costs: ["cost"],
  "as meant": [],
} as const;

/**
 * Reads the table at the head of a design; null where the text has none. Never throws: what is wrong is a finding with its
 * place, and the rest is read.
 *
 * @param sizesOfText  the sizes that the text itself shows, for a table that does not say them
 */
export function readTable(text: string, sizesOfText: () => SizeRun): DesignTable | null {
  const place = findTable(text);
  if (place === null) return null;
  const table = new Table(text, place.yaml);
  const own = table.known(table.entries(table.root, "The table"), KNOWN, null);
  const said = readSizes(table, own.sizes);
  const sizes = said?.sizes ?? sizesOfText();
  const title = readTitle(table, own.title);
  const terms = readTerms(table, own.terms);
  const body = readBody(table, own.body, sizes);
  const ease = readEase(table, own.ease, sizes);
  const yarns = readYarns(table, own.yarn);
  const fabrics = readFabrics(table, own.fabrics, yarns, terms ?? "US");
  const ground = { sizes, body, ease, fabrics };
  const plan = readPlan(table, own.plan, ground);
  const { counts, rules, vocabulary } = readCounts(table, own.counts, plan, ground);
  const hangs = readHangs(table, own.hangs, plan, ground, counts);
  const ties = readTies(table, own.ties, vocabulary);
  const all: PlacedRule[] = [...rules, ...ties.map(({ rule, span }) => ({ rule, span, count: null }))];
  return {
    text: text.slice(0, place.to),
    span: { from: 0, to: place.to },
    to: place.to,
    title,
    terms,
    sizes,
    sizesSpan: said?.span ?? null,
    body,
    ease,
    yarns,
    hooksMm: readHooks(table, own.hooks),
    fabrics,
    plan: plan.measures,
    aim: readAim(table, own.aim),
    hangs,
    counts: hangs.length === 0 ? counts : wantedLying(counts, lyingIn(plan.wanted, hangs)),
    ties,
    rules: all,
    making: readMakingHabits(table, own.making, plan, sizes),
    costs: readCosts(table, own.costs, sizes),
    asMeant: readAnswers(table, own["as meant"]),
    findings: table.findings,
  };
}

/** "as meant: { design/shoulder-off: the seam is meant to drop further in larger sizes ~k7f2q }". */
function readAnswers(table: Table, entry: Entry | undefined): TableAnswer[] {
  if (entry === undefined) return [];
  return table.entries(entry.node, entry.key).flatMap((one): TableAnswer[] => {
    const words = table.words(one, "The reason belongs here, in words.");
    if (words === null) return [];
    const stamped = /^(.*?)\s*~([a-z0-9]{5})\s*$/su.exec(words.text);
    const reason = (stamped?.[1] ?? words.text).trim();
    if (reason === "") {
      table.tell(entryNotUnderstood, words.span, {
        entry: one.key,
        found: words.text,
        wants: "The reason belongs here, in words.",
      });
      return [];
    }
    return [{ code: one.key.trim(), reason, stamp: stamped?.[2] ?? null, span: words.span }];
  });
}
