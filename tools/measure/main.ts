// What the engine reads, proves and finds on the samples.
//   npm run measure -- --sample NAME --kind KIND --most N
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { availableParallelism } from "node:os";
import { fileURLToPath } from "node:url";
import { type Mutation, mutate } from "./mutation.ts";
import { drawEvenly, mutationsOf } from "./mutations.ts";
import { readOptions } from "./options.ts";
import { bundleWorker, workAll } from "./pool.ts";
import { seedOf } from "./random.ts";
import { alarmTable, type Clean, listAlarms, proveClean, readingTable } from "./reading.ts";
import { harmlessTable, kindTable, listSurvivors, type Round, sampleTable } from "./report.ts";
import { removeCounts } from "./without-counts.ts";
import type { Task } from "./worker.ts";

const root = fileURLToPath(new URL("../../", import.meta.url));
const SEED = 20250;
const SHARE_REMOVED = 0.7;

const say = (words: string): void => {
  process.stdout.write(`${words}\n`);
};

async function measure(): Promise<void> {
  const options = readOptions(process.argv.slice(2));
  const start = performance.now();
  const names = readdirSync(`${root}samples`)
    .filter((name) => name.endsWith(".txt"))
    .map((name) => name.slice(0, -4));
  const chosen = names.filter((name) => options.sample === null || name === options.sample).sort();
  if (chosen.length === 0)
    throw new Error(`There is no sample "${options.sample}". There are: ${names.join(", ")}`);
  const folder = `${root}build/measure/`;
  mkdirSync(folder, { recursive: true });

  const clean = chosen.map((name) => proveClean(name, readFileSync(`${root}samples/${name}.txt`, "utf8")));
  say(`${readingTable(clean)}\n\n${alarmTable(clean)}\n`);

  const few: Clean[] = [];
  let [removed, printed] = [0, 0];
  for (const { sample, proof } of clean) {
    const fewer = removeCounts(proof.tree, SHARE_REMOVED, SEED ^ seedOf(sample));
    removed += fewer.removed;
    printed += fewer.printed;
    few.push(proveClean(sample, fewer.text));
  }
  writeFileSync(`${folder}false-alarms.txt`, listAlarms(clean));
  writeFileSync(`${folder}false-alarms-few-counts.txt`, listAlarms(few));
  const alarms = few.reduce(
    (sum, { proof }) => sum + proof.findings.filter(({ severity }) => severity !== "note").length,
    0,
  );
  say(
    `With few counts: ${removed} of ${printed} printed counts taken out by lot; ${alarms} errors and warnings on the samples without them.\n`,
  );
  if (options.most === 0) return;

  const plans = [
    ...clean.map((one) => ({ ...one, counts: "all" as const })),
    ...few.map((one) => ({ ...one, counts: "few" as const })),
  ].map(({ sample, counts, text, proof }) => {
    const possible = mutationsOf(proof.tree).filter(
      ({ kind }) => options.kind === null || kind === options.kind,
    );
    const faults = possible.filter(({ harmless }) => !harmless);
    return { sample, counts, text, possible, drawn: drawEvenly(faults, options.most, SEED ^ seedOf(sample)) };
  });
  const tasks: Task[] = plans
    .flatMap(({ sample, counts, text, drawn }) =>
      drawn.map((change) => ({ id: 0, textName: `${sample} ${counts}`, text, change })),
    )
    .map((task, id) => ({ ...task, id }));
  const done = await workAll(
    await bundleWorker(root),
    tasks,
    Math.min(availableParallelism(), 8),
    progress(tasks.length),
  );

  let at = 0;
  const rounds: Round[] = plans.map(({ drawn, ...plan }) => ({
    ...plan,
    tried: drawn.map((change: Mutation) => ({ change, done: done[at++] as (typeof done)[number] })),
  }));
  writeFileSync(`${folder}survivors.txt`, listSurvivors(rounds));
  say(`${kindTable(rounds)}\n\n${sampleTable(rounds)}\n\n${harmlessTable(rounds)}\n`);
  const threw = done.filter((one) => one.threw !== undefined);
  for (const one of threw.slice(0, 5)) say(`The engine threw: ${one.threw}`);
  if (threw.length > 0) {
    const first = tasks[threw[0]?.id ?? 0];
    if (first) writeFileSync(`${folder}threw.txt`, mutate(first.text, first.change));
    say(`The engine threw at ${threw.length} changed samples; the first is build/measure/threw.txt.`);
    process.exitCode = 1;
  }
  say(
    `What was not found: build/measure/survivors.txt. False alarms: build/measure/false-alarms.txt. ${Math.round((performance.now() - start) / 1000)} s.`,
  );
}

/** A line on a terminal that says how far it has come; nothing in a file. */
function progress(of: number): (done: number) => void {
  if (!process.stderr.isTTY) return () => {};
  return (done) => process.stderr.write(done === of ? "\r\u001b[K" : `\r${done} of ${of}`);
}

try {
  await measure();
} catch (error) {
  process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
  process.exitCode = 2;
}
