import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { beforeAll, expect, test } from "vitest";
import { startPostgres } from "../../packages/store/tests/startPostgres";
import { buildFirst } from "../buildFirst";
import { killRun } from "./killRun";

beforeAll(() => buildFirst("cli", "web"));

const WHOLE = { lost: [], doubled: [], check: [] };

test("no acknowledged write is lost when the server is killed", async () => {
  const folder = await mkdtemp(join(tmpdir(), "lapline-kills-"));
  const figures = await killRun({ folder, kills: 4, seed: 8 });
  expect(figures).toMatchObject({ kills: 4, ...WHOLE });
  expect(figures.acknowledged).toBeGreaterThan(4);
  await rm(folder, { recursive: true });
});

test("nor on PostgreSQL, when its server is killed too", async () => {
  const folder = await mkdtemp(join(tmpdir(), "lapline-kills-"));
  const postgres = await startPostgres();
  try {
    const figures = await killRun({ folder, kills: 2, seed: 9, postgres });
    expect(figures).toMatchObject({ kills: 2, databaseKills: 1, ...WHOLE });
    expect(figures.acknowledged).toBeGreaterThan(2);
  } finally {
    await postgres.stop();
    await rm(folder, { recursive: true });
  }
});
