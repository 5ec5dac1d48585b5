import { counted, declare } from "../../base/index.ts";

/** Two estimates of one yarn that are more than a tenth apart. */
export interface Facts {
  /** Null for the whole garment. */
  readonly piece: string | null;
  readonly yarn: string;
  readonly cases: readonly { readonly size: string; readonly byStitch: number; readonly byArea: number }[];
}

export const yarnWaysDiffer = declare<Facts>({
  code: "design/yarn-ways-differ",
  severity: "warning",
  what: (d) =>
    `The yarn of ${d.piece ?? "the garment"} comes out differently by its stitches and by its area${d.yarn === "main" ? "" : `, for ${d.yarn}`}.`,
  why: (d) => {
    const said = d.cases.map(
      ({ size, byStitch, byArea }) => `${size} ${Math.round(byStitch)} m and ${Math.round(byArea)} m`,
    );
    const more = said.length - 3;
    return `By stitches and by the swatch's weight for its area: ${said.slice(0, 3).join("; ")}${more > 0 ? `; and ${counted(more, "more size")}` : ""}. More than a tenth apart, one of the two is mistaken.`;
  },
  todo: () => [
    "Check that each fabric's rows are worked in it, and say under headings which are where it cannot be told.",
    "Weigh the swatches again, all of one yarn together.",
  ],
});
