/** Whose words a pattern uses: the same word names different stitches in the two. */
export type Terms = "US" | "UK";
