import { Worker } from "node:worker_threads";
import { build } from "esbuild";
import type { Task, TaskDone } from "./worker.ts";

/** A change that takes longer than this is given up and named. */
const MOST_MS = 60_000;

/** Bundles the worker as the source stands now, so that editing it meanwhile changes nothing of this run. */
export async function bundleWorker(root: string): Promise<string> {
  const outfile = `${root}build/measure/worker.mjs`;
  await build({
    absWorkingDir: root,
    entryPoints: ["tools/measure/worker.ts"],
    outfile,
    bundle: true,
    format: "esm",
    platform: "node",
    target: "node20",
    packages: "external",
    logLevel: "warning",
  });
  return outfile;
}

/** Works all tasks on so many threads; the answers come in the order of the tasks. */
export function workAll(
  file: string,
  tasks: readonly Task[],
  threads: number,
  onDone: (done: number) => void,
): Promise<TaskDone[]> {
  const results = new Map<number, TaskDone>();
  let next = 0;
  return new Promise((resolve, reject) => {
    let open = 0;
    const finish = (done: TaskDone): void => {
      results.set(done.id, done);
      onDone(results.size);
    };
    const start = (): void => {
      open++;
      const worker = new Worker(file);
      let timer: NodeJS.Timeout | undefined;
      const give = (): void => {
        clearTimeout(timer);
        const task = tasks[next++];
        if (!task) {
          void worker.terminate();
          if (--open === 0) resolve(tasks.map(({ id }) => results.get(id) as TaskDone));
          return;
        }
        timer = setTimeout(() => {
          finish({ id: task.id, verdict: null, threw: `took longer than ${MOST_MS / 1000} s` });
          void worker.terminate();
          open--;
          start();
        }, MOST_MS);
        worker.postMessage(task);
      };
      worker.on("message", (done: TaskDone) => {
        finish(done);
        give();
      });
      worker.on("error", reject);
      give();
    };
    for (let at = 0; at < Math.max(1, threads); at++) start();
  });
}
