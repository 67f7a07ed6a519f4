import { DEMO_BOARDS } from "@lapline/contract";
import { buildBoardMesh, buildHouseSetOffers, HOUSE_SETS } from "@lapline/engine";
import { describe, expect, test } from "vitest";
import { withField } from "../board/withField";
import { type Answer, type Asked, answerAsked, type PlanFailed } from "./answerPlan";
import type { GoodBoard } from "./GoodBoard";
import { openPlanner } from "./openPlanner";
import { planOf } from "./planOf";

/** A thread that answers when the test says so. */
function openByHand() {
  const asked: Asked[] = [];
  const threads: { answered(answer: Answer | PlanFailed): void; lost(): void }[] = [];
  const planner = openPlanner(() => ({
    ask: (each) => asked.push(structuredClone(each)),
    listen: (calls) => threads.push(calls),
  }));
  const last = () => threads.at(-1);
  return {
    planner,
    answer: () => {
      const first = asked.shift();
      if (first !== undefined) last()?.answered(structuredClone(answerAsked(first)));
    },
    fail: (why: string) => last()?.answered({ why }),
    lose: () => last()?.lost(),
  };
}

function demo(id: string): { readonly text: string; readonly good: GoodBoard } {
  const text = DEMO_BOARDS.find((each) => each.id === id)?.text ?? "";
  const read = planOf(text);
  if (!read.ok) throw new Error("the demo board cannot be read");
  const { board, file, plan } = read;
  return { text, good: { board, file, plan } };
}

describe("a plan from another thread", () => {
  test.each(DEMO_BOARDS)("is the plan that is made here, to the last field: $id", async ({ id }) => {
    const { text, good } = demo(id);
    const { planner, answer } = openByHand();
    const coming = planner.plan(text);
    answer();
    const read = await coming;
    expect(JSON.parse(JSON.stringify(read))).toEqual(JSON.parse(JSON.stringify({ ok: true, ...good })));
    expect(read).toEqual({ ok: true, ...good });
  });

  test("keeps the parts that did not change as the very same objects", async () => {
    const { text } = demo("six-four-tri");
    const { planner, answer } = openByHand();
    const first = planner.plan(text);
    answer();
    const before = await first;
    if (!before.ok) throw new Error("it cannot be read");
    const typed = withField(before.file, ["fins", "set", 0, "cant"], "5 deg");
    const next = planner.understand(typed, before.file);
    answer();
    const after = (await next).good;
    expect(after?.plan.finset).not.toEqual(before.plan.finset);
    expect(after?.plan.shape).toBe(before.plan.shape);
    expect(after?.plan.layup).toBe(before.plan.layup);
    expect(after?.board.survey).toBe(before.board.survey);
  });

  test("comes beside the solid of its readings, which is the one that is made here", async () => {
    const { good } = demo("six-four-tri");
    const { planner, answer } = openByHand();
    const coming = planner.mesh(good.board.survey, "coarse");
    answer();
    const mesh = await coming;
    expect(mesh).toEqual(buildBoardMesh(good.board.survey, "coarse"));
    expect(mesh?.triangles.length).toBeGreaterThan(1000);
  });

  test.each(HOUSE_SETS)(
    "comes beside what $id would be on its board, which is what is worked out here",
    async (set) => {
      const { good } = demo("six-four-tri");
      const { planner, answer } = openByHand();
      const coming = planner.offers(good.board, set);
      answer();
      const offers = await coming;
      expect(offers).toEqual(buildHouseSetOffers(good.board, set));
      expect(offers.length).toBeGreaterThan(0);
    },
  );

  test("tells what is wrong with a text, and answers in the order it was asked in", async () => {
    const { text, good } = demo("six-four-tri");
    const { planner, answer } = openByHand();
    const coming = [planner.plan("{"), planner.plan(text)];
    answer();
    answer();
    const [wrong, right] = await Promise.all(coming);
    expect(wrong?.ok).toBe(false);
    expect(right).toMatchObject({ ok: true, plan: { name: good.plan.name } });
  });

  test("that cannot be made or fetched is told, and the next one is asked of a new thread", async () => {
    const { text } = demo("six-four-tri");
    const { planner, answer, fail, lose } = openByHand();
    const failed = planner.plan(text);
    fail("no such curve");
    await expect(failed).rejects.toThrow("no such curve");
    const lost = planner.plan(text);
    lose();
    await expect(lost).rejects.toThrow("could not be loaded");
    const again = planner.plan(text);
    answer();
    answer();
    answer();
    expect((await again).ok).toBe(true);
  });
});
