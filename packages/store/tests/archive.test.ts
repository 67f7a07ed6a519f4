import { readdir, readFile } from "node:fs/promises";
import { join } from "node:path";
import { expect, test } from "vitest";
import { keepDailyCopy, makeCopy, type Shop } from "../src/index";
import { onBoth } from "./onBoth";

const device = "phone";

async function fill({ boards, journal }: Shop): Promise<void> {
  for (const id of ["b", "a-1", "a"]) {
    const first = await boards.write({
      id,
      text: `{"name":"½ ${id}"}`,
      condition: { ifAbsent: true },
      device,
    });
    if (first.kind !== "written") throw new Error("not written");
    await boards.write({ id, text: "{}", condition: { ifRevision: first.board.revision }, device });
    await journal.add({ boardId: id, id: "e1", text: '{"kind":"done"}', device });
  }
}

async function textOf(shop: Shop): Promise<string> {
  let text = "";
  await shop.export(async (lines) => {
    text += lines;
  });
  return text;
}

async function* linesOf(text: string): AsyncGenerator<string> {
  yield* text.trimEnd().split("\n");
}

onBoth("a copy of the shop", (under) => {
  test("taken into an empty shop gives the same bytes again, and the whole history", async () => {
    await fill(under().shop);
    const text = await textOf(under().shop);
    const other = await under().openOther();
    await other.import(linesOf(text));
    expect(await textOf(other)).toBe(text);
    expect(await other.boards.listVersions("a")).toEqual(await under().shop.boards.listVersions("a"));
    expect((await other.boards.readVersion("a", 1))?.text).toBe('{"name":"½ a"}');
    expect(await other.journal.list("b")).toEqual(await under().shop.journal.list("b"));
    expect(await other.check()).toEqual([]);
  });

  test("is not taken into a shop with boards", async () => {
    await fill(under().shop);
    const text = await textOf(under().shop);
    await expect(under().shop.import(linesOf(text))).rejects.toThrow("there are boards already");
  });

  test.each<[string, (text: string) => string]>([
    ["cut off", (text) => text.slice(0, text.lastIndexOf("\n", text.length - 2) + 1)],
    ["short of a row", (text) => text.replace(/\["journal_entries".*\n/, "")],
    ["altered", (text) => text.replace("½", "¼")],
    ["of a newer version", (text) => text.replace(/"schema":\d+/, '"schema":99')],
    ["no copy", () => "{}\n"],
    ["empty", () => ""],
    ["with a row of another table", (text) => text.replace('["boards"', '["changes"')],
    ["with a name that leads elsewhere", (text) => text.replaceAll('"a-1"', '"../a"')],
    ["with text for a number", (text) => text.replace(/\["boards","a",2/, '["boards","a","2"')],
    ["with lines behind its end", (text) => `${text}[]\n`],
  ])("that is %s is refused, and nothing is kept", async (_, spoil) => {
    await fill(under().shop);
    const text = spoil(await textOf(under().shop));
    const other = await under().openOther();
    await expect(other.import(linesOf(text))).rejects.toThrow();
    expect(await other.boards.listSummaries()).toEqual([]);
  });

  test("is made while others write, and holds one moment", async () => {
    await fill(under().shop);
    const { shop } = under();
    const writing = Promise.all(
      Array.from({ length: 20 }, (_, i) =>
        shop.journal.add({ boardId: "a", id: `w${i}`, text: "{}", device }),
      ),
    );
    const text = await textOf(shop);
    await writing;
    const other = await under().openOther();
    await other.import(linesOf(text));
    expect(await textOf(other)).toBe(text);
  });

  test("is made once a day, and the oldest goes", async () => {
    const { shop, folder } = under();
    await fill(shop);
    for (const day of ["2026-04-11", "2026-04-12", "2026-04-12", "2026-04-13"])
      await keepDailyCopy(shop, { folder, day, kept: 2 });
    const copies = join(folder, "copies");
    expect((await readdir(copies)).sort()).toEqual(["shop-2026-04-12.jsonl", "shop-2026-04-13.jsonl"]);
    await makeCopy(shop, join(folder, "by-hand.jsonl"));
    expect(await readFile(join(folder, "by-hand.jsonl"), "utf8")).toBe(await textOf(shop));
  });
});
