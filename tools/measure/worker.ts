import { parentPort } from "node:worker_threads";
import { proveDesign } from "../../src/design/index.ts";
import { Judge, type Verdict } from "./judge.ts";
import { type Mutation, mutate } from "./mutation.ts";

/** One change to be proved, of the text of that name; `text` comes with the first change of a text. */
export interface Task {
  readonly id: number;
  readonly textName: string;
  readonly text: string;
  readonly change: Mutation;
}

export interface TaskDone {
  readonly id: number;
  readonly verdict: Verdict | null;
  /** What was thrown: the engine never should. */
  readonly threw?: string;
}

const judges = new Map<string, Judge>();

function judgeOf(name: string, text: string): Judge {
  let judge = judges.get(name);
  if (!judge) {
    const { tree, findings } = proveDesign(text);
    judge = new Judge(tree, findings);
    judges.set(name, judge);
  }
  return judge;
}

function work({ id, textName, text, change }: Task): TaskDone {
  try {
    const { findings } = proveDesign(mutate(text, change));
    return { id, verdict: judgeOf(textName, text).judge(findings, change, change.instruction) };
  } catch (error) {
    return {
      id,
      verdict: null,
      threw:
        error instanceof Error
          ? (error.stack ?? error.message).split("\n").slice(0, 2).join(" ")
          : String(error),
    };
  }
}

parentPort?.on("message", (task: Task) => parentPort?.postMessage(work(task)));
