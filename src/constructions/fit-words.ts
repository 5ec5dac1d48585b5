import type { Choices } from "./choices.ts";

/** How a garment sits, one sentence. Shares of the bust as words: trade handbook, section 2.1; the words differ, so the number is said. */
export function fitWords({ ease, forChildren }: Choices): string {
  const cm = ease.bust;
  const round = forChildren ? "chest" : "bust";
  if (cm < 0)
    return `It fits closely, ${-cm} cm smaller than the body at the ${round}, and stretches as it is worn.`;
  const fit = cm < 5 ? "close" : cm < 11 ? "easy" : cm < 16 ? "loose" : "very loose";
  return `The fit is ${fit}: the finished garment is about ${cm} cm larger than the body at the ${round}.`;
}
