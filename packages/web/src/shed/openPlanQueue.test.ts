import { expect, test } from "vitest";
import { openPlanQueue } from "./openPlanQueue";

interface Work {
  readonly id: string;
  run(): void;
}

/** A queue whose boards are worked out by hand. */
function open(fails: readonly string[] = []) {
  const works: Work[] = [];
  const told: Array<readonly [string, string | null]> = [];
  let last = "";
  const queue = openPlanQueue<string>({
    async read(id) {
      last = id;
      if (fails.includes(id)) throw new Error("away");
      return `text of ${id}`;
    },
    plan: (text) => new Promise((run) => works.push({ id: last, run: () => run(`plan from ${text}`) })),
    told: (id, planned) => told.push([id, planned]),
  });
  const settle = async () => {
    for (let turn = 0; turn < 10; turn += 1) await Promise.resolve();
  };
  const workOne = async () => {
    await settle();
    works.shift()?.run();
    await settle();
  };
  return { queue, works, told, workOne, settle };
}

test("works boards out two at a time, never all at once, and each once", async () => {
  const { queue, works, told, workOne, settle } = open();
  queue.add(["a", "b", "c"]);
  queue.add(["a"]);
  await settle();
  expect(told).toEqual([]);
  expect(works).toHaveLength(2);
  await workOne();
  expect(told).toEqual([["a", "plan from text of a"]]);
  for (let work = 0; work < 5; work += 1) await workOne();
  expect(told.map(([id]) => id)).toEqual(["a", "b", "c"]);
});

test("takes a board that came into view before those that wait", async () => {
  const { queue, told, workOne } = open();
  queue.add(["a", "b", "c", "d"]);
  queue.hurry("d");
  for (let work = 0; work < 6; work += 1) await workOne();
  expect(told.map(([id]) => id)).toEqual(["a", "b", "d", "c"]);
});

test("tells of a board that could not be fetched and goes on", async () => {
  const { queue, told, workOne } = open(["a"]);
  queue.add(["a", "b"]);
  for (let work = 0; work < 4; work += 1) await workOne();
  expect(told).toContainEqual(["a", null]);
  expect(told).toContainEqual(["b", "plan from text of b"]);
});

test("tells nothing once it is stopped", async () => {
  const { queue, told, workOne } = open();
  queue.add(["a", "b"]);
  queue.stop();
  for (let work = 0; work < 4; work += 1) await workOne();
  expect(told).toEqual([]);
});
