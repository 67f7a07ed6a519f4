import { createReadStream } from "node:fs";
import { readdir, readFile } from "node:fs/promises";
import { join } from "node:path";
import { DEMO_BOARDS } from "@lapline/contract";
import { expect, test } from "vitest";
import { keepDailyCopy, makeCopy, type Shop } from "../src/index";
import { onBoth } from "./onBoth";

const device = "phone";

const NAMED = (name: string) => JSON.stringify({ ...JSON.parse(DEMO_BOARDS[0]?.text ?? ""), name });
const ENTRY = '{"id":"e1","kind":"done","step":"prep"}';
const PHOTO = Buffer.concat([Buffer.from("ffd8ffe000104a464946", "hex"), Buffer.alloc(200_000, 7)]);

async function fill({ boards, journal, photos, sheets, shelf }: Shop): Promise<void> {
  for (const id of ["b", "a-1", "a"]) {
    const first = await boards.write({
      id,
      text: NAMED(`½ ${id}`),
      condition: { ifAbsent: true },
      device,
    });
    if (first.kind !== "written") throw new Error("not written");
    await boards.write({ id, text: NAMED(id), condition: { ifRevision: first.board.revision }, device });
    await journal.add({ boardId: id, id: "e1", text: ENTRY, device });
    await photos.add({ boardId: id, bytes: [PHOTO], device });
  }
  await photos.add({ boardId: "a", bytes: [PHOTO.subarray(0, 100)], device });
  const [plan, pdf] = [Buffer.from("{}"), Buffer.from("%PDF-1.7")];
  await sheets.issue({ boardId: "a", boardVersion: 2, plan, pdf, device });
  const record = {
    shelf: "prices",
    id: "wax",
    text: '{"price":3}',
    condition: { ifAbsent: true },
    device,
  } as const;
  await shelf.write(record);
  const ifRevision = (await boards.read("b"))?.revision ?? "";
  await boards.putAway({ id: "b", ifRevision, device });
}

async function textOf(shop: Shop): Promise<string> {
  let text = "";
  await shop.export(async (lines) => {
    text += lines;
  });
  return text;
}

/** In parts that end anywhere, as a connection hands them out. */
async function* linesOf(text: string): AsyncGenerator<Uint8Array> {
  const bytes = Buffer.from(text);
  for (let at = 0; at < bytes.length; at += 1000) yield bytes.subarray(at, at + 1000);
}

onBoth("a copy of the shop", (under) => {
  test("taken into an empty shop gives the same bytes again, and the whole history", async () => {
    await fill(under().shop);
    const text = await textOf(under().shop);
    const other = await under().openOther();
    await other.import(linesOf(text));
    expect(await textOf(other)).toBe(text);
    expect(await other.boards.listVersions("a")).toEqual(await under().shop.boards.listVersions("a"));
    expect((await other.boards.readVersion("a", 1))?.text).toBe(NAMED("½ a"));
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
    ["with text for a number", (text) => text.replace(/\["boards","a",3/, '["boards","a","3"')],
    ["with a page for a photo", (text) => text.replace('"image/jpeg"', '"text/html"')],
    ["with a file that no row names", (text) => text.replace(/\["photos".*\n/g, "")],
    ["with a file that is another", (text) => text.replace(/(\["content","\w+",")..../, "$1AAAA")],
    ["short of a file", (text) => text.replace(/\["content".*\n/g, "")],
    [
      "with a file's name that leads elsewhere",
      (text) => text.replace(/"sheets","a","1",2,"\w/, '"sheets","a","1",2,"/'),
    ],
    [
      "with a list's entry that is no JSON",
      (text) => text.replace(/(\["boards","a",3,"\w+",")\{/, "$1</script>"),
    ],
    ["all one line without an end", (text) => text.replaceAll("\n", " ").repeat(20)],
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
        shop.journal.add({ boardId: "a", id: `w${i}`, text: ENTRY.replace("e1", `w${i}`), device }),
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
    const copied = createReadStream(join(copies, "shop-2026-04-13.jsonl"));
    const other = await under().openOther();
    await other.import(copied, { contentFolder: join(folder, "content") });
    expect(await textOf(other)).toBe(await textOf(shop));
    expect(await other.check()).toEqual([]);
    expect((await readdir(copies)).sort()).toEqual(["shop-2026-04-12.jsonl", "shop-2026-04-13.jsonl"]);
    await makeCopy(shop, join(folder, "by-hand.jsonl"));
    expect(await readFile(join(folder, "by-hand.jsonl"), "utf8")).toBe(await textOf(shop));
  });
});
