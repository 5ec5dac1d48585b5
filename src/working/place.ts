/** What a place is in the row that made it. */
export type PlaceRole =
  /** A stitch top. */
  | "stitch"
  /** A run of chains inside a row, with the space under it. */
  | "chain"
  /** What stands for the first stitch of a row, or stands beside it without counting. */
  | "turning"
  /** The slip stitch that closed a round. */
  | "join"
  /** The chain a piece begins with. */
  | "foundation"
  /** The end of a row, worked into along the side. */
  | "row-end"
  /** A loop left free by an earlier row. */
  | "free-loop"
  /** A ring: takes any number of stitches. */
  | "ring"
  /** Taken on trust: its kind is not known. */
  | "unknown";

/**
 * One place a hook can go, or a run of chains. Places are interned: two that say the same are the same object, so edges
 * are compared by reference.
 */
export interface Place {
  readonly id: number;
  /** Dictionary code or special stitch of the pattern; "ch" for chains; "?" where it was taken on trust. */
  readonly code: string;
  readonly role: PlaceRole;
  /** Length of a run of chains, or of the turning chain it is the top of; else 0. */
  readonly chains: number;
  /** Whether it is a stitch of the row as the pattern counts. Chains inside rows are asked of the conventions instead. */
  readonly counted: boolean;
  /** Name of the special stitch it is a part of, "" for several plain stitches in one place, null alone. */
  readonly group: string | null;
  /** Index in the group and how many places the group has. */
  readonly groupAt: number;
  readonly groupSize: number;
  /** Colour it was made in, where that is not the colour its row began in. */
  readonly colour: string | null;
}

const interned = new Map<string, Place>();

/** The one place that says this. */
export function placeOf(
  code: string,
  role: PlaceRole,
  counted: boolean,
  chains = 0,
  group: string | null = null,
  groupAt = 0,
  groupSize = 1,
  colour: string | null = null,
): Place {
  const key = `${code}|${role}|${counted ? 1 : 0}|${chains}|${group ?? "\u0000"}|${groupAt}|${groupSize}|${colour ?? "\u0000"}`;
  const known = interned.get(key);
  if (known) return known;
  const place: Place = { id: interned.size, code, role, chains, counted, group, groupAt, groupSize, colour };
  interned.set(key, place);
  return place;
}

/** A plain stitch top. */
export const stitchPlace = (code: string): Place => placeOf(code, "stitch", code !== "sl st");

/** A run of chains inside a row. */
export const chainPlace = (chains: number): Place => placeOf("ch", "chain", false, chains);

/** A place whose kind nobody knows, as after a row taken on trust. */
export const UNKNOWN_PLACE: Place = placeOf("?", "unknown", true);

/** The same place as a member of a group of places made in one go. */
export function inGroup(place: Place, group: string, at: number, size: number): Place {
  return placeOf(place.code, place.role, place.counted, place.chains, group, at, size, place.colour);
}

/** The same place in a colour of its own. */
export function inColour(place: Place, colour: string): Place {
  const { code, role, counted, chains, group, groupAt, groupSize } = place;
  return placeOf(code, role, counted, chains, group, groupAt, groupSize, colour);
}

/** How much of an edge it fills, counting every chain of a run: the measure by which positions are compared. */
export const lengthOf = (place: Place): number =>
  place.role === "chain" || place.role === "foundation" ? place.chains : 1;
