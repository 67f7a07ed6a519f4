import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { DEMO_BOARDS } from "@lapline/contract";
import { afterEach, beforeEach, expect, test } from "vitest";
import { openShop, type Shop } from "../src/index";
import { holdSqliteDisk, type SqliteDisk } from "./sqliteDisk";

const device = "phone";
const named = (name: string) => JSON.stringify({ ...JSON.parse(DEMO_BOARDS[0]?.text ?? ""), name });
const ENTRY = { kind: "done", step: "prep", at: "2026-04-11T11:20" };

let disk: SqliteDisk;
let folder: string;
let shop: Shop;
const open = () =>
  openShop({
    folder,
    engine: "1.2.3",
    now: () => new Date("2026-04-11T09:00:00Z"),
    report: () => undefined,
  });
beforeEach(async () => {
  disk = holdSqliteDisk();
  folder = await mkdtemp(join(tmpdir(), "lapline-disk-"));
  shop = await open();
});
afterEach(async () => {
  await shop.close();
  disk.letGo();
  await rm(folder, { recursive: true });
});

const STATES = [
  ["full", (held: SqliteDisk) => held.fill()],
  ["read-only", (held: SqliteDisk) => held.protect()],
  ["away", (held: SqliteDisk) => held.occupy()],
] as const;

test.each(STATES)(
  "a database that is %s refuses whole writes, and everything acknowledged is there after",
  async (reason, make) => {
    const kept = [];
    for (let i = 0; i < 5; i++) {
      const text = named(`board ${i}`);
      const result = await shop.boards.write({ id: `b${i}`, text, condition: { ifAbsent: true }, device });
      expect(result.kind).toBe("written");
      kept.push({ id: `b${i}`, text });
    }
    make(disk);
    const entry = (i: number) => ({
      boardId: "b0",
      id: `e${i}`,
      text: JSON.stringify({ id: `e${i}`, ...ENTRY }),
      device,
    });
    // Several at once share a transaction, and none of them may be told that it is kept.
    const refused = await Promise.allSettled([
      shop.boards.write({ id: "late", text: named("late"), condition: { ifAbsent: true }, device }),
      ...Array.from({ length: 40 }, (_, i) => shop.journal.add(entry(i))),
    ]);
    const acknowledged = refused.flatMap((each, i) => (each.status === "fulfilled" ? [i] : []));
    for (const each of refused) if (each.status === "rejected") expect(each.reason).toMatchObject({ reason });
    // A page that is there already may take a little more; whole pages are not to be had.
    expect(acknowledged).not.toContain(0);
    expect(refused.at(-1)?.status).toBe("rejected");
    expect(shop.state()).toBe(reason);
    expect((await shop.boards.read("b0"))?.text).toContain("board 0");

    disk.free();
    expect((await shop.journal.add(entry(99))).kind).toBe("kept");
    expect(shop.state()).toBe("ok");
    await shop.close();
    shop = await open();
    expect((await shop.boards.listSummaries()).length).toBe(5);
    for (const { id, text } of kept.slice(1)) expect((await shop.boards.read(id))?.text).toBe(text);
    const ids = (await shop.journal.list("b0")).map(({ id }) => id);
    expect(ids).toEqual([...acknowledged.map((i) => `e${i - 1}`), "e99"]);
    expect(await shop.check()).toEqual([]);
  },
);
