import { mkdir, readdir, readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { DEMO_BOARDS } from "@lapline/contract";
import { expect, test } from "vitest";
import { MIGRATIONS } from "../src/database/migrations";
import { NewerDatabaseError } from "../src/index";
import { onBoth } from "./onBoth";

const device = "phone in the bay";
const ABSENT = { ifAbsent: true } as const;
const ODD_IDS = ["../a", "a/b", "A", "", ".", "a.json", "a--b", "-a", "a".repeat(65), "a\0b"];

onBoth("boards", (under) => {
  const write = (id: string, text: string, condition: { ifRevision: string } | typeof ABSENT = ABSENT) =>
    under().shop.boards.write({ id, text, condition, device });
  const revisionAfter = async (id: string, text: string) => {
    const result = await write(id, text);
    if (result.kind !== "written") throw new Error("the first write was refused");
    return result.board.revision;
  };

  test("every saved version is kept, with time, device and engine", async () => {
    const first = await revisionAfter("b", '{"name":"½ of it"}');
    expect(await write("b", "{}", { ifRevision: first })).toMatchObject({ created: false });
    const { boards } = under().shop;
    expect((await boards.read("b"))?.text).toBe("{}");
    expect((await boards.readVersion("b", 1))?.text).toBe('{"name":"½ of it"}');
    expect(await boards.listVersions("b")).toMatchObject([
      { version: 2, savedAt: "2026-04-11T09:00:00.000Z", device, engine: "1.2.3" },
      { version: 1, revision: first },
    ]);
  });

  test("are listed by id, by its bytes, with what one knows them by", async () => {
    const [demo] = DEMO_BOARDS;
    for (const id of ["a-b", "ab", "a1", "a"]) await write(id, demo?.text ?? "");
    await write("spoilt", "{");
    const list = (await under().shop.boards.listSummaries()).map((text) => JSON.parse(text));
    expect(list.map(({ id }) => id)).toEqual(["a", "a-b", "a1", "ab", "spoilt"]);
    expect(list[0]).toMatchObject({ name: JSON.parse(demo?.text ?? "").name, readable: true });
    expect(list[4]).toMatchObject({ name: "spoilt", readable: false });
  });

  test("are written only onto the revision that was read", async () => {
    const first = await revisionAfter("a", "1");
    await write("a", "2", { ifRevision: first });
    const late = await write("a", "3", { ifRevision: first });
    expect(late).toMatchObject({ kind: "changed-meanwhile", current: { text: "2", version: 2, device } });
    expect((await write("a", "3")).kind).toBe("changed-meanwhile");
    expect(await write("none", "3", { ifRevision: first })).toEqual({
      kind: "changed-meanwhile",
      current: null,
    });
    expect((await under().shop.boards.read("a"))?.text).toBe("2");
  });

  test("one of several writers onto the same revision gets through, the others are told", async () => {
    const texts = Array.from({ length: 20 }, (_, i) => String(i));
    const results = await Promise.all(texts.map((text) => write("a", text)));
    expect(results.filter((result) => result.kind === "written")).toHaveLength(1);
    expect(await under().shop.boards.listVersions("a")).toHaveLength(1);
  });

  test("changes are numbered without a gap, in the order in which they landed", async () => {
    await Promise.all(Array.from({ length: 20 }, (_, i) => write(`b-${i}`, "{}")));
    const { changes } = under().shop;
    const all = await changes.after(0);
    expect(all.map(({ seq }) => seq)).toEqual(Array.from({ length: 20 }, (_, i) => i + 1));
    expect(new Set(all.map(({ boardId }) => boardId)).size).toBe(20);
    expect(await changes.last()).toBe(20);
  });

  test("are there when the shop is opened again, and its check finds nothing", async () => {
    await write("a", "{}");
    const shop = await under().reopen();
    expect((await shop.boards.read("a"))?.text).toBe("{}");
    expect(await shop.check()).toEqual([]);
  });

  test.each(ODD_IDS)("no board is %j", async (id) => {
    expect(await under().shop.boards.read(id)).toBeNull();
    await expect(write(id, "{}")).rejects.toThrow(RangeError);
  });

  test("boards of an earlier folder of files are taken in, and the files stay as they are", async () => {
    const { folder, reopen } = under();
    await mkdir(join(folder, "boards", "old.json"), { recursive: true });
    await writeFile(join(folder, "boards", "nine-six.json"), '{"name":"½"}');
    await writeFile(join(folder, "right-here.json"), "{}");
    await writeFile(join(folder, "boards", "Notes.txt"), "");
    const shop = await reopen();
    const ids = (await shop.boards.listSummaries()).map((text) => JSON.parse(text).id);
    expect(ids).toEqual(["nine-six", "right-here"]);
    expect((await shop.boards.read("nine-six"))?.text).toBe('{"name":"½"}');
    expect(await readFile(join(folder, "boards", "nine-six.json"), "utf8")).toBe('{"name":"½"}');
    expect(await (await reopen()).boards.listVersions("nine-six")).toHaveLength(1);
  });

  test("a newer program's step is taken with a copy before, and an older program then refuses", async () => {
    await write("a", "{}");
    const { folder, reopen } = under();
    const latest = MIGRATIONS.at(-1)?.version ?? 0;
    const next = {
      version: latest + 1,
      up: async (tx: Parameters<(typeof MIGRATIONS)[0]["up"]>[0]) =>
        void (await tx.schema.alterTable("boards").addColumn("stand", "integer").execute()),
    };
    const newer = await reopen({ migrations: [...MIGRATIONS, next] });
    expect((await newer.boards.read("a"))?.text).toBe("{}");
    if (under().options.databaseUrl === undefined)
      expect(await readdir(join(folder, "copies"))).toEqual([`before-version-${latest + 1}.sqlite`]);
    await expect(reopen()).rejects.toThrow(NewerDatabaseError);
    expect((await (await reopen({ migrations: [...MIGRATIONS, next] })).boards.read("a"))?.text).toBe("{}");
  });

  test("a step that fails leaves the tables as they were", async () => {
    await write("a", "{}");
    const { reopen } = under();
    const broken = {
      version: (MIGRATIONS.at(-1)?.version ?? 0) + 1,
      up: async (tx: Parameters<(typeof MIGRATIONS)[0]["up"]>[0]) => {
        await tx.deleteFrom("board_versions").execute();
        throw new Error("halfway");
      },
    };
    await expect(reopen({ migrations: [...MIGRATIONS, broken] })).rejects.toThrow("halfway");
    expect((await (await reopen()).boards.read("a"))?.text).toBe("{}");
  });
});
