// Made by scripts/bodies/make-lines.mjs from data/bodies. Change the table or the script, not this file.

import type { BodyLines } from "../corrected.ts";
import type { Surveyed } from "../survey.ts";

export const BODY_LINES: Readonly<Record<Surveyed, BodyLines>> = {
  women: {
    people: 1986,
    bust: [69.5, 126.6],
    lines: [
      ["neck to wrist", 0.11786, 61.463, 3.36, 0.279],
      ["back length", 0.15011, 28.327, 2.33, 0.47],
      ["shoulder width", 0.06396, 30.479, 1.75, 0.289],
      ["back at underarm", 0.22889, 15.663, 2.31, 0.634],
      ["arm length", 0.0277, 42.126, 2.93, 0.078],
      ["upper arm", 0.27752, 3.64, 2.05, 0.746],
      ["armhole depth", 0.03091, 12.737, 1.42, 0.177],
      ["waist", 1.01994, -10.484, 5.36, 0.844],
      ["hip", 0.68175, 37.573, 5.08, 0.743],
      ["wrist", 0.04967, 10.776, 0.67, 0.525],
      ["hand", 0.04177, 14.7, 0.81, 0.392],
      ["neck", 0.15613, 22.332, 1.48, 0.657],
      ["head", 0.0486, 51.51, 1.89, 0.208],
      ["height", 0.2015, 143.768, 6.2, 0.26],
    ],
  },
  men: {
    people: 4082,
    bust: [77.4, 146.9],
    lines: [
      ["neck to wrist", 0.12738, 66.61, 3.46, 0.306],
      ["back length", 0.158, 31.034, 2.4, 0.498],
      ["shoulder width", 0.1135, 29.551, 1.64, 0.518],
      ["back at underarm", 0.27823, 13.629, 2.55, 0.69],
      ["arm length", -0.01167, 49.382, 3.03, -0.034],
      ["upper arm", 0.31138, 0.728, 2.14, 0.786],
      ["armhole depth", 0.06009, 12.46, 1.35, 0.362],
      ["waist", 1.1319, -25.777, 5.18, 0.886],
      ["hip", 0.73346, 24.3, 4.2, 0.836],
      ["wrist", 0.06199, 11.029, 0.71, 0.605],
      ["hand", 0.05732, 15.16, 0.89, 0.489],
      ["neck", 0.22003, 20.165, 1.7, 0.749],
      ["head", 0.07673, 49.313, 1.46, 0.418],
      ["height", 0.19396, 155.087, 6.64, 0.247],
    ],
  },
};
