/**
 * What the shop's memory holds under kills and load, `npm run reliability`: kills at seeded points under writes from four clients, on
 * both databases, and how long the list of 10,000 boards takes. `npm run reliability -- 50` does with 50 kills.
 */
import { mkdtemp, rm } from "node:fs/promises";
import { cpus, loadavg, tmpdir } from "node:os";
import { join } from "node:path";
import { startPostgres } from "../packages/store/tests/startPostgres";
import { killRun } from "../tests/reliability/killRun";
import { listRun } from "../tests/reliability/listRun";

const kills = Number(process.argv[2] ?? "200");
const SEED = 8;

console.log(`${cpus().length} cores, ${cpus()[0]?.model ?? "?"}; load before ${loadavg()[0]?.toFixed(2)}`);
const figures = [];
for (const kind of ["SQLite", "PostgreSQL"] as const) {
  const folder = await mkdtemp(join(tmpdir(), "lapline-reliability-"));
  const postgres = kind === "PostgreSQL" ? await startPostgres() : undefined;
  try {
    const run = await killRun({ folder, kills, seed: SEED, ...(postgres === undefined ? {} : { postgres }) });
    figures.push(run);
    console.log(
      `${kind}: ${run.kills} kills, ${run.databaseKills} of the database's server; ${run.acknowledged} writes acknowledged, ` +
        `${run.lost.length} lost, ${run.doubled.length} kept twice; ${run.unanswered} left unanswered; check: ${run.check.join("; ") || "clean"}`,
    );
  } finally {
    await postgres?.stop();
    await rm(folder, { recursive: true });
  }
}
const { boards, times, p50Ms, p95Ms, worstMs, bytes } = await listRun({ boards: 10_000, times: 200 });
console.log(
  `list of ${boards} boards (${(bytes / 1e6).toFixed(1)} MB), ${times} times: median ${p50Ms.toFixed(1)} ms, p95 ${p95Ms.toFixed(1)} ms, worst ${worstMs.toFixed(1)} ms; load after ${loadavg()[0]?.toFixed(2)}`,
);
const isWhole = figures.every(
  ({ lost, doubled, check }) => lost.length + doubled.length + check.length === 0,
);
process.exitCode = isWhole ? 0 : 1;
