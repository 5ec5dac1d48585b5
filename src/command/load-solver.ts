import { highsSolver, type LinearSolver } from "../sizing/index.ts";

/** The solver for what the search leaves open; without its package the best that was found is taken. */
export async function loadSolver(): Promise<LinearSolver | null> {
  try {
    const { default: load } = await import("highs");
    return highsSolver(await load());
  } catch {
    return null;
  }
}
