import { DEMO_BOARDS, readBoardFile } from "@lapline/contract";
import { expect, test } from "vitest";
import { onBoth } from "./onBoth";

const device = "phone in the bay";
const BOARD = JSON.stringify({ ...JSON.parse(DEMO_BOARDS[0]?.text ?? ""), record: [] });
const entry = (id: string, more: object = {}) =>
  JSON.stringify({ id, kind: "done", step: "prep", at: "2026-04-11T11:20", ...more });

onBoth("the journal", (under) => {
  const add = (id: string, text = entry(id), boardId = "a") =>
    under().shop.journal.add({ boardId, id, text, device });
  const makeBoard = () =>
    under().shop.boards.write({ id: "a", text: BOARD, condition: { ifAbsent: true }, device });

  test("keeps an entry once, however often and from wherever it is sent", async () => {
    await makeBoard();
    const sent = await Promise.all(Array.from({ length: 10 }, () => add("e1")));
    expect(sent.filter((result) => result.kind === "kept" && result.isNew)).toHaveLength(1);
    expect(await under().shop.journal.list("a")).toEqual([
      { id: "e1", place: 1, text: entry("e1"), receivedAt: "2026-04-11T09:00:00.000Z", device },
    ]);
  });

  test("never puts another entry in the place of one", async () => {
    await makeBoard();
    await add("e1");
    const other = entry("e1", { step: "mark-fins" });
    expect(await add("e1", other)).toMatchObject({ kind: "taken", entry: { step: "prep" } });
  });

  test("lists entries as they came, and knows no board that is not there", async () => {
    await makeBoard();
    for (const id of ["z", "b", "a"]) await add(id);
    const shop = await under().reopen();
    expect((await shop.journal.list("a")).map(({ id, place }) => [id, place])).toEqual([
      ["z", 1],
      ["b", 2],
      ["a", 3],
    ]);
    const told = (await shop.changes.after(0)).filter(({ kind }) => kind === "journal");
    expect(told.map(({ item }) => item)).toEqual(["z", "b", "a"]);
    expect(await shop.journal.add({ boardId: "none", id: "e", text: "{}", device })).toEqual({
      kind: "no-board",
    });
  });

  const recordOf = async () => {
    const read = readBoardFile((await under().shop.boards.read("a"))?.text ?? "");
    return read.ok ? (read.file.record ?? []).map(({ id }) => id) : null;
  };
  const save = async (text: string) => {
    const ifRevision = (await under().shop.boards.read("a"))?.revision ?? "";
    return under().shop.boards.write({ id: "a", text, condition: { ifRevision }, device });
  };

  test("an entry stands in the board's record, once, as a version of its own", async () => {
    await makeBoard();
    await add("e1");
    await add("e1");
    await add("c1", entry("c1", { corrects: "e1", step: "mark-fins" }));
    expect(await recordOf()).toEqual(["e1", "c1"]);
    expect(await under().shop.boards.listVersions("a")).toHaveLength(3);
  });

  test("a file saved without an entry gets it back, and the same file again is no new version", async () => {
    await makeBoard();
    await add("e1");
    const ifRevision = (await under().shop.boards.read("a"))?.revision ?? "";
    const text = BOARD.replace('"name":"', '"name":"other ');
    const write = { id: "a", text, condition: { ifRevision }, device };
    expect(await under().shop.boards.write(write)).toMatchObject({ kind: "written", added: ["e1"] });
    expect(await recordOf()).toEqual(["e1"]);
    expect(await under().shop.boards.write(write)).toMatchObject({ kind: "written", board: { version: 3 } });
    expect((await save(BOARD)).kind).toBe("written");
    expect(await recordOf()).toEqual(["e1"]);
  });

  test("an entry that the page has put into the file itself is kept once; another one under its id is not", async () => {
    await makeBoard();
    await save(JSON.stringify({ ...JSON.parse(BOARD), record: [JSON.parse(entry("e1"))] }));
    expect(await add("e1", entry("e1", { step: "mark-fins" }))).toMatchObject({ kind: "taken" });
    expect(await add("e1")).toMatchObject({ kind: "kept", isNew: true });
    expect(await recordOf()).toEqual(["e1"]);
  });

  test("an entry that does not fit the board is refused, and nothing of it is kept", async () => {
    await makeBoard();
    expect((await add("e1", entry("e1", { corrects: "nowhere" }))).kind).toBe("refused");
    expect(await under().shop.journal.list("a")).toEqual([]);
    expect(await under().shop.boards.listVersions("a")).toHaveLength(1);
  });

  test("an entry stands in nobody's way: a change made before it came is kept, and so is the entry", async () => {
    await makeBoard();
    const ifRevision = (await under().shop.boards.read("a"))?.revision ?? "";
    await add("e1");
    await add("e2");
    const write = (name: string) =>
      under().shop.boards.write({
        id: "a",
        text: BOARD.replace('"name":"', `"name":"${name} `),
        condition: { ifRevision },
        device,
      });
    expect(await write("one")).toMatchObject({ kind: "written", added: ["e1", "e2"] });
    expect(await recordOf()).toEqual(["e1", "e2"]);
    expect((await write("two")).kind).toBe("changed-meanwhile");
  });
});
