import { mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { openShop } from "@lapline/store";
import { afterEach, beforeEach, expect, test } from "vitest";
import { runHere } from "./runHere";

let folder: string;
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), "lapline-backup-"));
});
afterEach(() => rm(folder, { recursive: true }));
const open = (name: string) =>
  openShop({ folder: join(folder, name), engine: "1", now: () => new Date(0), report: () => undefined });

test("a copy made while the app has the shop open is restored into another folder, byte for byte", async () => {
  const shop = await open("shop");
  await shop.boards.write({ id: "a", text: '{"name":"½"}', condition: { ifAbsent: true }, device: "phone" });
  const [one, two] = [join(folder, "one.jsonl"), join(folder, "two.jsonl")];
  expect(await runHere(["backup", one, "--data", join(folder, "shop")])).toMatchObject({ code: 0 });
  await shop.close();
  expect(await runHere(["restore", one, "--data", join(folder, "new")])).toMatchObject({ code: 0 });
  expect(await runHere(["backup", two, "--data", join(folder, "new")])).toMatchObject({ code: 0 });
  expect(await readFile(two, "utf8")).toBe(await readFile(one, "utf8"));
  const again = await runHere(["restore", one, "--data", join(folder, "new")]);
  expect(again.code).toBe(2);
  expect(again.err).toContain("there are boards already");
});

test("what is no copy, or not there, is refused in a line", async () => {
  await writeFile(join(folder, "no.jsonl"), "hello\n");
  for (const [name, why] of [
    ["no.jsonl", "not JSON"],
    ["none.jsonl", "no such file"],
  ] as const) {
    const { code, err } = await runHere(["restore", join(folder, name), "--data", join(folder, "new")]);
    expect(code).toBe(2);
    expect(err).toContain(why);
  }
  const { code, err } = await runHere([
    "backup",
    join(folder, "none", "x.jsonl"),
    "--data",
    join(folder, "new"),
  ]);
  expect(code).toBe(2);
  expect(err).toContain("No copy was made");
});
