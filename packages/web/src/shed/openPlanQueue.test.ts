import { expect, test } from "vitest";
import { openPlanQueue } from "./openPlanQueue";

interface Slice {
  readonly id: string;
  run(): void;
}

/** A queue whose idle slices are run by hand. */
function open(fails: readonly string[] = []) {
  const slices: Slice[] = [];
  const told: Array<readonly [string, string | null]> = [];
  let last = "";
  const queue = openPlanQueue<string>({
    async read(id) {
      last = id;
      if (fails.includes(id)) throw new Error("away");
      return `text of ${id}`;
    },
    plan: (text) => `plan from ${text}`,
    whenIdle: () => new Promise((run) => slices.push({ id: last, run })),
    told: (id, planned) => told.push([id, planned]),
  });
  const settle = async () => {
    for (let turn = 0; turn < 10; turn += 1) await Promise.resolve();
  };
  const idle = async () => {
    await settle();
    slices.shift()?.run();
    await settle();
  };
  return { queue, slices, told, idle, settle };
}

test("works boards out one in an idle slice, never all at once, and each once", async () => {
  const { queue, slices, told, idle, settle } = open();
  queue.add(["a", "b", "c"]);
  queue.add(["a"]);
  await settle();
  expect(told).toEqual([]);
  expect(slices).toHaveLength(2);
  await idle();
  expect(told).toEqual([["a", "plan from text of a"]]);
  for (let slice = 0; slice < 5; slice += 1) await idle();
  expect(told.map(([id]) => id)).toEqual(["a", "b", "c"]);
});

test("takes a board that came into view before those that wait", async () => {
  const { queue, told, idle } = open();
  queue.add(["a", "b", "c", "d"]);
  queue.hurry("d");
  for (let slice = 0; slice < 6; slice += 1) await idle();
  expect(told.map(([id]) => id)).toEqual(["a", "b", "d", "c"]);
});

test("tells of a board that could not be fetched and goes on", async () => {
  const { queue, told, idle } = open(["a"]);
  queue.add(["a", "b"]);
  for (let slice = 0; slice < 4; slice += 1) await idle();
  expect(told).toContainEqual(["a", null]);
  expect(told).toContainEqual(["b", "plan from text of b"]);
});

test("tells nothing once it is stopped", async () => {
  const { queue, told, idle } = open();
  queue.add(["a", "b"]);
  queue.stop();
  for (let slice = 0; slice < 4; slice += 1) await idle();
  expect(told).toEqual([]);
});
