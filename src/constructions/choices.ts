import type { FabricPattern } from "./fabric.ts";

/** What a designer chooses before there is any text. Lengths in cm, gauge over 10 cm. */
export interface Choices {
  readonly construction: "pullover" | "raglan" | "panels";
  readonly title: string;
  /** A chart that the design document knows: "women, corrected". */
  readonly body: string;
  readonly sizes: readonly string[];
  readonly fabric: FabricPattern;
  /** Washed, over 10 cm. */
  readonly gauge: { readonly stitches: number; readonly rows: number };
  readonly hookMm: number;
  /** The smaller hook, for ribs. */
  readonly ribHookMm: number;
  readonly yarn: {
    readonly class: number;
    readonly metres: number;
    readonly grams: number;
    readonly price?: string;
  };
  /** From the nape to the hem, in words of the plan. */
  readonly bodyLength: string;
  /** Finished less body, cm. */
  readonly ease: { readonly bust: number; readonly upperArm: number };
  /** A straight side to the shoulder, or a square notch under the arm. */
  readonly armhole: "straight" | "notch";
  readonly hem: "post rib" | "ridges";
  /** How deep the front neck is cut, cm. */
  readonly neckDrop: number;
  readonly ribDepth: number;
  /** Of a garment of panels: a pullover has them. */
  readonly sleeves: boolean;
  readonly pockets: boolean;
  readonly forChildren: boolean;
}
