/**
 * What the shop's memory holds under kills and load, `npm run reliability`: kills at seeded points under writes from four clients, on
 * both databases, how long the list of 10,000 boards takes, 50 devices that listen and write for a minute, and 20,000 made-up and mutated
 * requests. `npm run reliability -- kills 50` does with 50 kills; `list`, `load` and `mutate` name the others.
 */
import { mkdtemp, rm } from "node:fs/promises";
import { cpus, loadavg, tmpdir } from "node:os";
import { join } from "node:path";
import { startPostgres } from "../packages/store/tests/startPostgres";
import { killRun } from "../tests/reliability/killRun";
import { listRun } from "../tests/reliability/listRun";
import { loadRun } from "../tests/reliability/loadRun";
import { mutateRun } from "../tests/reliability/mutateRun";

const PARTS = ["kills", "list", "load", "mutate"] as const;
const [asked, count] = process.argv.slice(2);
const isAsked = (part: (typeof PARTS)[number]) => asked === undefined || asked === part;
const SEED = 8;
const ms = (value: number) => `${value.toFixed(1)} ms`;
const load = () => loadavg()[0]?.toFixed(2) ?? "?";
let isWhole = true;

console.log(`${cpus().length} cores, ${cpus()[0]?.model ?? "?"}; load before ${load()}`);
if (isAsked("kills"))
  for (const kind of ["SQLite", "PostgreSQL"] as const) {
    const folder = await mkdtemp(join(tmpdir(), "lapline-reliability-"));
    const postgres = kind === "PostgreSQL" ? await startPostgres() : undefined;
    try {
      const own = postgres === undefined ? {} : { postgres };
      const run = await killRun({ folder, kills: Number(count ?? "200"), seed: SEED, ...own });
      isWhole &&= run.lost.length + run.doubled.length + run.check.length === 0;
      console.log(
        `${kind}: ${run.kills} kills, ${run.databaseKills} of the database's server; ${run.acknowledged} writes acknowledged, ` +
          `${run.lost.length} lost, ${run.doubled.length} kept twice; ${run.unanswered} left unanswered; check: ${run.check.join("; ") || "clean"}; load ${load()}`,
      );
    } finally {
      await postgres?.stop();
      await rm(folder, { recursive: true });
    }
  }
if (isAsked("list")) {
  const run = await listRun({ boards: 10_000, times: 200 });
  console.log(
    `list of ${run.boards} boards (${(run.bytes / 1e6).toFixed(1)} MB), ${run.times} times: median ${ms(run.p50Ms)}, p95 ${ms(run.p95Ms)}, worst ${ms(run.worstMs)}; load ${load()}`,
  );
}
if (isAsked("load")) {
  const run = await loadRun({ devices: 50, writesPerSecond: 100, seconds: Number(count ?? "60") });
  isWhole &&= run.refused === 0;
  console.log(
    `50 devices listening, ${run.writes} writes in ${run.lastedS.toFixed(1)} s, ${run.refused} refused, ${run.events} events heard: median ${ms(run.p50Ms)}, p95 ${ms(run.p95Ms)}, p99 ${ms(run.p99Ms)}, worst ${ms(run.worstMs)}; the server worked ${run.serverCpuS.toFixed(1)} s, the asker ${run.askerCpuS.toFixed(1)} s; load ${load()}`,
  );
}
if (isAsked("mutate")) {
  const run = await mutateRun({ requests: Number(count ?? "20000"), seed: SEED });
  isWhole &&= run.wrong.length === 0 && run.isAlive;
  console.log(
    `${run.requests} made-up and mutated requests: ${run.wrong.length} wrong; slowest ${ms(run.slowestMs)}, most memory ${run.mostMemoryMb.toFixed(0)} MB; by status ${JSON.stringify(run.statuses)}; load ${load()}`,
  );
  for (const { words, ms: took } of run.slow) console.log(`  slow: ${ms(took)}, ${words}`);
  for (const each of run.wrong.slice(0, 20)) console.log(`  ${each}`);
}
process.exitCode = isWhole ? 0 : 1;
