import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { DEMO_BOARDS } from "@lapline/contract";
import { expect, test, vi } from "vitest";
import { openShop } from "../src/index";
import { startPostgres } from "./startPostgres";

/** A slow machine needs patience; left out it would be a second. */
const PATIENT = { timeout: 60_000 };

const text = DEMO_BOARDS[0]?.text ?? "";

test("a shop whose PostgreSQL was killed writes again, and hears what others write there", async () => {
  const folder = await mkdtemp(join(tmpdir(), "lapline-away-"));
  const postgres = await startPostgres();
  const databaseUrl = postgres.makeShop("away");
  const reports: string[] = [];
  const open = () =>
    openShop({
      folder,
      databaseUrl,
      engine: "1.2.3",
      now: () => new Date("2026-04-11T09:00:00Z"),
      report: (message) => void reports.push(message),
    });
  const [one, other] = [await open(), await open()];
  const write = (id: string) =>
    other.boards.write({ id, text, condition: { ifAbsent: true }, device: "phone" });
  const heard = vi.fn();
  one.changes.watch(heard);
  await write("before");
  await vi.waitFor(() => expect(heard).toHaveBeenCalled(), PATIENT);

  await postgres.killAndRestart();
  await vi.waitFor(
    () => expect(reports.filter((each) => each.includes("heard again"))).toHaveLength(2),
    PATIENT,
  );
  heard.mockClear();
  await vi.waitFor(() => write("after"), PATIENT);
  await vi.waitFor(() => expect(heard).toHaveBeenCalled(), PATIENT);
  expect((await one.changes.after(0)).map(({ boardId }) => boardId)).toEqual(["before", "after"]);
  await Promise.all([one.close(), other.close()]);
  await postgres.stop();
  await rm(folder, { recursive: true });
});
