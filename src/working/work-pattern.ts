import type { Definition, PatternTree } from "../notation/index.ts";
import { type Choices, settleChoices } from "./choices.ts";
import { chainsByNotes } from "./counting.ts";
import { compareFastenings } from "./fastenings.ts";
import { type LineOutcome, Maker } from "./maker.ts";
import { makingOf } from "./making.ts";
import { calledNames } from "./named-rows.ts";
import { reportWork } from "./report.ts";
import { nameDefinitions } from "./rows-kept.ts";
import type { SampleWidth } from "./samples.ts";
import { compareMirrored, compareSeam } from "./seams.ts";
import { turnsBeforeWork } from "./segments.ts";
import { stopsMaker } from "./trouble.ts";
import { turnsAreWritten } from "./turning-habit.ts";
import { sayUndecided, undecidedChains } from "./undecided.ts";
import type { WorkedPattern } from "./worked.ts";
import type { Placed } from "./worked-sizes.ts";

/**
 * Works a whole pattern stitch by stitch in every size, and says what a maker would find wrong. Never throws on the designer's
 * text.
 */
export function workPattern(tree: PatternTree): WorkedPattern {
  const placed: Placed[] = tree.pieces.flatMap((piece, pieceAt) =>
    piece.instructions.map((instruction) => ({ instruction, piece: piece.name, pieceAt })),
  );
  const specials = specialsOf(tree.definitions);
  const called = calledNames(tree);
  const definitions = nameDefinitions(tree.definitions);
  const noted = (about: string): boolean => tree.notes.some((note) => note.says.about === about);
  const habit = {
    written: turnsAreWritten(placed),
    noted: tree.notes.some(({ says }) => says.about === "turn" && says.turned),
    once: rowsTurnedFirst(placed) < 2,
    joined: !noted("join") && !noted("spiral") && joinsAreWritten(placed),
  };
  const sizes = tree.sizes.map((_, size) => size);
  const work = (choices: Choices, sampleWidth: SampleWidth = "sample") => {
    const makers = sizes.map(
      (size) => new Maker({ tree, size, choices, specials, habit, called, definitions, sampleWidth }),
    );
    const lines = makers.map((maker) => maker.workAll());
    return { outcome: { lines, pieces: makers.map((maker) => maker.pieces) }, wrong: wrongOf(lines) };
  };
  const settled = settleChoices((choices) => {
    const first = work(choices);
    return isSampled(first.outcome.lines)
      ? { outcome: first.outcome, wrong: first.wrong + work(choices, "wider").wrong }
      : first;
  });
  const chainsCount =
    chainsByNotes(tree.notes) ?? (settled.choices.taken.get("chains-in-counts") === 1 ? "all" : "none");
  const undecided = undecidedChains(settled.choices, settled.wrong, (choices) => work(choices).wrong);
  const wider = isSampled(settled.outcome.lines) ? work(settled.choices, "wider").outcome.lines : null;
  const outcomes = wider ? alsoWider(settled.outcome.lines, wider) : settled.outcome.lines;
  const report = reportWork({ tree, placed, outcomes, wider, chainsCount }, settled.choices);
  const seams = placed.flatMap(({ instruction, piece }) =>
    instruction.clauses.flatMap((clause) =>
      clause.kind === "seam" ? compareSeam(tree, clause, settled.outcome.pieces, piece) : [],
    ),
  );
  return {
    ...report,
    made: makingOf(tree, settled.outcome.pieces),
    findings: [
      ...report.findings,
      ...undecided.map((form) => sayUndecided(tree, form, settled.choices)),
      ...compareMirrored(tree, settled.outcome.pieces),
      ...compareFastenings(tree),
      ...seams,
    ],
  };
}

const isSampled = (lines: readonly (readonly LineOutcome[])[]): boolean =>
  lines.some((outcomes) => outcomes.some((outcome) => outcome.sample !== null));

/** A row that closes on one sample and not on a wider one does not close on every number of repeats. */
function alsoWider(
  lines: readonly (readonly LineOutcome[])[],
  wider: readonly (readonly LineOutcome[])[],
): readonly (readonly LineOutcome[])[] {
  return lines.map((outcomes, size) =>
    outcomes.map((outcome, at) => {
      const other = wider[size]?.[at];
      const fine = outcome.sample === null || outcome.troubles.length > 0 || !other;
      return fine ? outcome : { ...outcome, troubles: other.troubles };
    }),
  );
}

/** Rows and sizes in which something is wrong: what the choice of a reading is judged by. */
function wrongOf(outcomes: readonly (readonly LineOutcome[])[]): number {
  let wrong = 0;
  for (const lines of outcomes)
    for (const line of lines) {
      if (line.troubles.some(stopsMaker)) wrong += 10;
      if (line.unknown !== null && line.made !== "nothing") wrong += 10;
      wrong += line.misnamed.length;
    }
  return wrong;
}

export function specialsOf(definitions: readonly Definition[]): ReadonlyMap<string, Definition> {
  const specials = new Map<string, Definition>();
  for (const definition of definitions) {
    const plain = plainDefinition(definition);
    for (const name of definition.names) if (!specials.has(name)) specials.set(name, plain);
  }
  return specials;
}

/**
 * What a definition does: without the name said again before it ("inc - increase: 2 sc in next st"), and without what is said
 * about it behind ("3 tr in the place stated. At the beginning of a row ...").
 */
function plainDefinition(definition: Definition): Definition {
  const { clauses, names } = definition;
  const [first] = clauses;
  const again =
    first?.kind === "work" &&
    first.target.ref === "here" &&
    !first.count &&
    (names.includes(first.stitch) || ["inc", "dec"].includes(first.stitch));
  const from =
    again && clauses.slice(1).some((clause) => clause.kind === "work" || clause.kind === "group") ? 1 : 0;
  const makes = clauses.findIndex(
    (clause, at) =>
      at >= from && (clause.kind === "work" || clause.kind === "group" || clause.kind === "repeat"),
  );
  const talk = clauses.findIndex(
    (clause, at) => at > makes && (clause.kind === "remark" || clause.kind === "aside"),
  );
  return { ...definition, clauses: clauses.slice(from, makes === -1 || talk === -1 ? undefined : talk) };
}

/** Whether rounds end with a join as a rule. */
function joinsAreWritten(placed: readonly Placed[]): boolean {
  let rounds = 0;
  let joins = 0;
  for (const { instruction } of placed) {
    const { label, clauses } = instruction;
    const told = clauses.some((clause) =>
      ["repeat-rows", "even", "schedule", "do-not-join", "turn"].includes(clause.kind),
    );
    if (!label?.rounds || told) continue;
    rounds++;
    if (
      clauses.some(
        (clause) => clause.kind === "join" || (clause.kind === "work" && clause.stitch === "sl st"),
      )
    )
      joins++;
  }
  return rounds >= 3 && joins / rounds >= 0.6;
}

/** Rows that begin with the turn; where several do, it is a habit of the writer. */
function rowsTurnedFirst(placed: readonly Placed[]): number {
  return placed.filter(({ instruction }) => turnsBeforeWork(instruction.clauses)).length;
}
