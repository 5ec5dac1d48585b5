import type { ConventionNote } from "../notation/index.ts";
import type { ChainMeanings } from "./hands.ts";

/** What the text says of its starting chains: in the notes, or beside a chain "here and throughout". */
export class ChainMeaningsSaid implements ChainMeanings {
  private readonly beside = new Map<string, readonly string[]>();
  /** What each row said beside its own chain, to tell a chain that is used two ways. */
  private readonly ways = new Map<string, boolean>();
  /** Grows with every saying. */
  version = 0;

  constructor(private readonly notes: readonly ConventionNote[]) {}

  said(chains: number, stitch: string | null): readonly string[] | null {
    const beside = this.beside.get(`${chains}:${stitch ?? ""}`) ?? this.beside.get(`${chains}:`);
    if (beside) return beside;
    for (const { says } of this.notes) {
      if (says.about !== "turning-chain") continue;
      if (says.chains !== undefined && says.chains !== chains) continue;
      if (says.stitch !== undefined && stitch !== null && says.stitch !== stitch) continue;
      if (says.parts.length === 0) return [];
      if (says.chains !== undefined) return says.parts;
      // "The turning chain counts as the first stitch": as a stitch of the row's own kind.
      if (stitch !== null) return [stitch];
    }
    return null;
  }

  say(chains: number, stitch: string | null, parts: readonly string[]): void {
    this.beside.set(`${chains}:${stitch ?? ""}`, parts);
    if (stitch !== null) this.beside.set(`${chains}:`, parts);
    this.version++;
  }

  /** Notes what a row says of its chain; true where the text said otherwise before. */
  differs(chains: number, stitch: string | null, counts: boolean): boolean {
    const key = `${chains}:${stitch ?? ""}`;
    const noted = this.said(chains, stitch);
    const before = this.ways.get(key) ?? (noted === null ? undefined : noted.length > 0);
    if (before === undefined) this.ways.set(key, counts);
    return before !== undefined && before !== counts;
  }
}
