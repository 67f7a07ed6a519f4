import { expect, test } from "vitest";
import { onBoth } from "./onBoth";

const device = "phone in the bay";

onBoth("the journal", (under) => {
  const add = (id: string, text: string, boardId = "a") =>
    under().shop.journal.add({ boardId, id, text, device });
  const makeBoard = () =>
    under().shop.boards.write({ id: "a", text: "{}", condition: { ifAbsent: true }, device });

  test("keeps an entry once, however often and from wherever it is sent", async () => {
    await makeBoard();
    const sent = await Promise.all(Array.from({ length: 10 }, () => add("e1", '{"kind":"done"}')));
    expect(sent.filter((result) => result.kind === "kept" && result.isNew)).toHaveLength(1);
    expect(await under().shop.journal.list("a")).toEqual([
      { id: "e1", place: 1, text: '{"kind":"done"}', receivedAt: "2026-04-11T09:00:00.000Z", device },
    ]);
  });

  test("never puts another entry in the place of one", async () => {
    await makeBoard();
    await add("e1", "1");
    expect(await add("e1", "2")).toMatchObject({ kind: "taken", entry: { text: "1" } });
  });

  test("lists entries as they came, and knows no board that is not there", async () => {
    await makeBoard();
    for (const id of ["z", "b", "a"]) await add(id, "{}");
    const shop = await under().reopen();
    expect((await shop.journal.list("a")).map(({ id, place }) => [id, place])).toEqual([
      ["z", 1],
      ["b", 2],
      ["a", 3],
    ]);
    expect((await shop.changes.after(0)).map(({ kind, item }) => [kind, item]).slice(1)).toEqual([
      ["journal", "z"],
      ["journal", "b"],
      ["journal", "a"],
    ]);
    expect(await shop.journal.add({ boardId: "none", id: "e", text: "{}", device })).toEqual({
      kind: "no-board",
    });
  });
});
