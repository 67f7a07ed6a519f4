import { createHash } from "node:crypto";
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
const PHOTO = Buffer.concat([
  Buffer.from("ffd8ffe000104a46494600010100000100010000ffc0000b080015002501011100", "hex"),
  Buffer.alloc(200_000, 7),
]);

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

/** With the end that fits what stands before it. */
function sealed(text: string): string {
  const lines = text.trimEnd().split("\n").slice(0, -1);
  const before = lines.map((line) => `${line}\n`).join("");
  const sha256 = createHash("sha256").update(before).digest("hex");
  return `${before}${JSON.stringify({ end: lines.length - 1, sha256 })}\n`;
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

  test.each<[string, string, (text: string) => string]>([
    [
      "cut off",
      "its last line is missing",
      (text) => text.slice(0, text.lastIndexOf("\n", text.length - 2) + 1),
    ],
    ["short of a row", "cut short or altered", (text) => text.replace(/\["journal_entries".*\n/, "")],
    ["altered", "contradicts itself", (text) => text.replace("½", "¼")],
    ["of a newer version", "tables are of version 99", (text) => text.replace(/"schema":\d+/, '"schema":99')],
    ["no copy", "no copy of a shop", () => "{}\n"],
    ["empty", "its last line is missing", () => ""],
    ["all one line without an end", "not JSON", (text) => text.replaceAll("\n", " ").repeat(20)],
    ["with lines behind its end", "more behind its end", (text) => `${text}[]\n`],
  ])("that is %s is refused, and nothing is kept", async (_, why, spoil) => {
    await refuses(spoil, why);
  });

  const NAMED_WRONG = "contradicts itself";
  const FORM = "no known form";
  test.each<[string, string, string | RegExp, string]>([
    ["a row of another table", FORM, '["boards"', '["changes"'],
    ["text for a number", FORM, /\["boards","a",3/, '["boards","a","3"'],
    ["a page for a photo", NAMED_WRONG, '"image/jpeg"', '"text/html"'],
    ["a photo that is of another type", "not what its row says", '"image/jpeg"', '"image/png"'],
    ["a file that no row names", "belongs to no row", /\["photos".*\n/g, ""],
    ["a file that is another", "not what its row says", /(\["content","\w+",")..../, "$1AAAA"],
    ["a file too few", "files are missing", /\["content".*\n/g, ""],
    ["a list's entry that is no JSON", NAMED_WRONG, /(\["boards","a",3,"\w+",")\{/, "$1</script>"],
    ["a list's entry of another board", NAMED_WRONG, '{\\"id\\":\\"a\\"', '{\\"id\\":\\"../b\\"'],
    ["a board's name that leads elsewhere", NAMED_WRONG, /"a-1"/g, '"../a"'],
    ["a file's name that leads elsewhere", NAMED_WRONG, /"sheets","a","1",2,"\w/, '"sheets","a","1",2,"/'],
    ["a record's name that leads elsewhere", NAMED_WRONG, '"prices","wax"', '"prices","../wax"'],
    ["a record's name that ends a header", NAMED_WRONG, '"prices","wax"', '"prices","wax\\"\\r\\nx-a: b"'],
    ["a shelf that is none", NAMED_WRONG, '"prices","wax"', '"tools","wax"'],
    ["a Sheet's name that leads elsewhere", NAMED_WRONG, '"sheets","a","1"', '"sheets","a","../1"'],
    ["a Sheet's name that no count gives", NAMED_WRONG, '"sheets","a","1"', '"sheets","a","0"'],
    ["a Sheet of a board that leads elsewhere", NAMED_WRONG, '"sheets","a"', '"sheets","../a"'],
    ["an entry under another's id", NAMED_WRONG, '"journal_entries","a","e1"', '"journal_entries","a","e2"'],
    ["a version before the first", NAMED_WRONG, '"board_versions","a",1', '"board_versions","a",0'],
  ])("with %s and the right end is refused, and nothing is kept", async (_, why, from, to) => {
    await refuses((text) => sealed(text.replace(from, to)), why);
  });

  async function refuses(spoil: (text: string) => string, why: string): Promise<void> {
    await fill(under().shop);
    const whole = await textOf(under().shop);
    const text = spoil(whole);
    expect(text).not.toBe(whole);
    const other = await under().openOther();
    await expect(other.import(linesOf(text))).rejects.toThrow(why);
    expect(await other.boards.listSummaries()).toEqual([]);
    expect(await other.shelf.list()).toEqual([]);
  }

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
