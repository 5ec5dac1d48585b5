import { inColour, inGroup, lengthOf, type Place, stitchPlace } from "./place.ts";

/** A stretch of an edge: the unit, so many times over. */
export interface Run {
  readonly unit: readonly Place[];
  readonly times: number;
}

/**
 * The ordered places that the next row can be worked into, as runs: what is written once and repeated is kept once, so
 * that the cost of a row follows its words and not its stitches. Never changed after it is made.
 */
export class Edge {
  /** Length of one unit of each run, and the length from each run's beginning to the end of the edge. */
  private readonly unitLengths: Float64Array;
  private readonly lengthsFrom: Float64Array;
  /** Text that two edges share exactly when they are worked alike. */
  private keyText: string | null = null;
  private turned: Edge | null = null;
  private alike: Edge | null = null;

  constructor(
    readonly runs: readonly Run[],
    /** Goes on round: a joined round or a spiral. */
    readonly closed: boolean,
  ) {
    this.unitLengths = new Float64Array(runs.length);
    this.lengthsFrom = new Float64Array(runs.length + 1);
    for (let r = runs.length - 1; r >= 0; r--) {
      const run = runs[r] as Run;
      let length = 0;
      for (const place of run.unit) length += lengthOf(place);
      this.unitLengths[r] = length;
      this.lengthsFrom[r] = (this.lengthsFrom[r + 1] as number) + length * run.times;
    }
  }

  get length(): number {
    return this.lengthsFrom[0] as number;
  }

  get key(): string {
    if (this.keyText === null) {
      let key = this.closed ? "o" : "-";
      for (const run of this.runs) key += `${run.unit.map((place) => place.id).join(".")}*${run.times};`;
      this.keyText = key;
    }
    return this.keyText;
  }

  /** The edge as seen after the work is turned. */
  reversed(): Edge {
    if (!this.turned) {
      const runs = this.runs
        .map((run) => ({ unit: run.unit.map(mirrored).reverse(), times: run.times }))
        .reverse();
      this.turned = new Edge(runs, this.closed);
      this.turned.turned = this;
    }
    return this.turned;
  }

  /** The edge with all its stitches of one kind: what a row sees that does not ask for kinds, in as few runs as may be. */
  get ofOneKind(): Edge {
    if (!this.alike) {
      const maker = new EdgeMaker();
      for (const run of this.runs) maker.addUnit(run.unit.map(withoutKind), run.times);
      // A run of no times says that nothing is known.
      const kept = this.runs.some((run) => run.times === 0) ? this : maker.finish(this.closed);
      this.alike = kept;
      kept.alike = kept;
    }
    return this.alike;
  }

  unitLength(run: number): number {
    return this.unitLengths[run] as number;
  }

  /** Length from the beginning of a run to the end of the edge. */
  lengthFrom(run: number): number {
    return this.lengthsFrom[run] as number;
  }

  /** Adds up a number over all places, each run once. */
  sum(value: (place: Place) => number): number {
    let total = 0;
    for (const run of this.runs) {
      let unit = 0;
      for (const place of run.unit) unit += value(place);
      total += unit * run.times;
    }
    return total;
  }

  some(test: (place: Place) => boolean): boolean {
    return this.runs.some((run) => run.unit.some(test));
  }

  /** The part before a position, which must not stand inside a run of chains. */
  before(position: Position): Edge {
    const runs: Run[] = this.runs.slice(0, position.run) as Run[];
    const run = this.runs[position.run];
    if (run) {
      if (position.round > 0) runs.push({ unit: run.unit, times: position.round });
      if (position.at > 0) runs.push({ unit: run.unit.slice(0, position.at), times: 1 });
    }
    return new Edge(runs, false);
  }

  /** The part between two positions, neither inside a run of chains. */
  between(from: Position, to: Position): Edge {
    return this.before(to).from(from, (place) => place);
  }

  /** The part from a position on; a run of chains cut in two keeps its rest. */
  from(position: Position, makeRest: (place: Place, used: number) => Place): Edge {
    const runs: Run[] = [];
    const run = this.runs[position.run];
    if (run) {
      const head = run.unit.slice(position.at);
      if (position.used > 0 && head[0]) head[0] = makeRest(head[0], position.used);
      if (head.length > 0) runs.push({ unit: head, times: 1 });
      const whole = run.times - position.round - 1;
      if (whole > 0) runs.push({ unit: run.unit, times: whole });
      for (let r = position.run + 1; r < this.runs.length; r++) runs.push(this.runs[r] as Run);
    }
    return new Edge(runs, false);
  }
}

/** A position between two places: run, which time round its unit, place in the unit, chains used of a run of chains. */
export interface Position {
  readonly run: number;
  readonly round: number;
  readonly at: number;
  readonly used: number;
}

/** Where the hook is on an edge. Copying it is cheap; tries are taken back by `go`. */
export class Cursor {
  run = 0;
  round = 0;
  at = 0;
  used = 0;

  constructor(readonly edge: Edge) {
    this.settle();
  }

  position(): Position {
    return { run: this.run, round: this.round, at: this.at, used: this.used };
  }

  go(position: Position): void {
    this.run = position.run;
    this.round = position.round;
    this.at = position.at;
    this.used = position.used;
  }

  get atEnd(): boolean {
    return this.run >= this.edge.runs.length;
  }

  /** The place at the cursor; a run of chains is given whole, whatever is used of it. */
  get place(): Place | undefined {
    return this.edge.runs[this.run]?.unit[this.at];
  }

  /** Length of the edge still before the cursor. */
  get left(): number {
    const run = this.edge.runs[this.run];
    if (!run) return 0;
    let within = -this.used;
    for (let i = this.at; i < run.unit.length; i++) within += lengthOf(run.unit[i] as Place);
    return (
      within +
      this.edge.unitLength(this.run) * (run.times - this.round - 1) +
      this.edge.lengthFrom(this.run + 1)
    );
  }

  /** Past the place at the cursor. */
  step(): void {
    this.at++;
    this.used = 0;
    this.settle();
  }

  /** Past `count` chains of the run at the cursor. */
  stepChains(count: number): void {
    this.used += count;
    const place = this.place;
    if (place && this.used >= place.chains) this.step();
  }

  /** Past whole units of the run at the cursor, standing where it stood in the unit. */
  stepUnits(count: number): void {
    this.round += count;
    this.settle();
  }

  toEnd(): void {
    this.run = this.edge.runs.length;
    this.round = 0;
    this.at = 0;
    this.used = 0;
  }

  private settle(): void {
    const runs = this.edge.runs;
    while (this.run < runs.length) {
      const run = runs[this.run] as Run;
      if (this.at >= run.unit.length) {
        this.at = 0;
        this.round++;
      }
      if (run.unit.length > 0 && this.round < run.times) return;
      this.run++;
      this.round = 0;
      this.at = 0;
      this.used = 0;
    }
  }
}

/** Gathers the places that a row makes, folding like neighbours into runs. */
export class EdgeMaker {
  private runs: Run[] = [];
  /** Colour that what is added is made in; null: the one the row began in. */
  colour: string | null = null;

  /** One place, so many times. */
  add(place: Place, times = 1): void {
    this.push(this.dyed(place), times);
  }

  private dyed(place: Place): Place {
    return this.colour === null || place.colour !== null ? place : inColour(place, this.colour);
  }

  private push(place: Place, times = 1): void {
    if (times <= 0) return;
    const last = this.runs[this.runs.length - 1];
    if (last && last.unit.length === 1 && last.unit[0] === place)
      this.runs[this.runs.length - 1] = { unit: last.unit, times: last.times + times };
    else this.runs.push({ unit: [place], times });
  }

  /** A unit of places, so many times. */
  addUnit(unit: readonly Place[], times: number): void {
    this.addMade(this.colour === null ? unit : unit.map((place) => this.dyed(place)), times);
  }

  /** A unit of places that have their colours already. */
  addMade(unit: readonly Place[], times: number): void {
    if (times <= 0 || unit.length === 0) return;
    const only = unit[0] as Place;
    if (unit.every((place) => place === only)) {
      this.push(only, unit.length * times);
      return;
    }
    const last = this.runs[this.runs.length - 1];
    if (last && sameUnit(last.unit, unit))
      this.runs[this.runs.length - 1] = { unit: last.unit, times: last.times + times };
    else this.runs.push({ unit, times });
  }

  snapshot(): readonly Run[] {
    return [...this.runs];
  }

  restore(runs: readonly Run[]): void {
    this.runs = [...runs];
  }

  /** Everything so far as the runs of an edge. */
  finish(closed: boolean): Edge {
    return new Edge(this.runs, closed);
  }

  /** The last place added, or undefined. */
  get last(): Place | undefined {
    const run = this.runs[this.runs.length - 1];
    return run?.unit[run.unit.length - 1];
  }

  /** Puts another place in the stead of the last one. */
  replaceLast(place: Place): void {
    const run = this.runs.pop();
    if (!run) return;
    if (run.times > 1) this.runs.push({ unit: run.unit, times: run.times - 1 });
    for (const kept of run.unit.slice(0, -1)) this.push(kept);
    this.push(place);
  }

  sum(value: (place: Place) => number): number {
    return new Edge(this.runs, false).sum(value);
  }
}

/** The places of some runs, written out; only for the few that one repeat makes. */
export function flatten(runs: readonly Run[]): Place[] {
  const places: Place[] = [];
  for (const run of runs) for (let i = 0; i < run.times; i++) places.push(...run.unit);
  return places;
}

function sameUnit(a: readonly Place[], b: readonly Place[]): boolean {
  return a.length === b.length && a.every((place, i) => place === b[i]);
}

const STITCH = stitchPlace("sc");

/** A stitch that counts and has no marker, whatever its kind; any other place as it is. */
function withoutKind(place: Place): Place {
  return place.role === "stitch" && place.counted && place.code !== "sl st" && !place.group?.startsWith("@")
    ? STITCH
    : place;
}

/** A member of a group counts from the other end once the work is turned. */
function mirrored(place: Place): Place {
  if (place.group === null || place.groupSize < 2) return place;
  return inGroup(place, place.group, place.groupSize - 1 - place.groupAt, place.groupSize);
}
