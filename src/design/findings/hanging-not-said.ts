import { declare } from "../../base/index.ts";

/** A swatch that was hung, where nothing says which lengths of the garment hang. */
export interface Facts {
  readonly fabric: string;
}

export const hangingNotSaid = declare<Facts>({
  code: "design/hanging-not-said",
  severity: "note",
  what: (d) => `The swatch of ${d.fabric} was hung, and nothing says which lengths hang.`,
  why: () => "Finished lengths are those of the garment lying flat until the table says what hangs.",
  todo: () => [
    "Say it in the table, as in: hangs: { hem to underarm: finished bust }.",
    "Leave it, if growth does not matter here.",
  ],
});
