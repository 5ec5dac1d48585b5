import { declare } from "../../base/index.ts";

/** A picture that says nothing to who cannot see it. */
export interface Facts {
  readonly picture: string;
}

export const pictureWithoutWords = declare<Facts>({
  code: "design/picture-without-words",
  severity: "warning",
  what: (d) => `The picture ${d.picture} has no words.`,
  why: () => "Who does not see it, or has it read aloud, gets nothing.",
  todo: () => ["Say in the square brackets what it shows, as in ![Front of the pullover, flat](front.jpg)."],
});
