import { DEMO_BOARDS } from "@lapline/contract";
import { expect, test } from "vitest";
import { onBoth } from "./onBoth";

const device = "phone in the bay";
const text = DEMO_BOARDS[0]?.text ?? "";

onBoth("writes that come at once", (under) => {
  test("land together, in their order, and one that fails undoes only itself", async () => {
    const { shop } = under();
    const write = (id: string, sent = text) =>
      shop.boards.write({ id, text: sent, condition: { ifAbsent: true }, device });
    // Fails inside its own write, before anything of it is kept.
    const broken = shop.boards.write({
      id: "b",
      text: null as unknown as string,
      condition: { ifAbsent: true },
      device,
    });
    const results = await Promise.allSettled([write("a"), broken, write("c"), write("a")]);
    expect(results.map(({ status }) => status)).toEqual(["fulfilled", "rejected", "fulfilled", "fulfilled"]);
    expect(results[3]).toMatchObject({ value: { kind: "changed-meanwhile" } });
    const told = await shop.changes.after(0);
    expect(told.map(({ seq, boardId }) => [seq, boardId])).toEqual([
      [1, "a"],
      [2, "c"],
    ]);
    const reopened = await under().reopen();
    expect((await reopened.boards.listSummaries()).length).toBe(2);
    expect(await reopened.check()).toEqual([]);
  });
});
