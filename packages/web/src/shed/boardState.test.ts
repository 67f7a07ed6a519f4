import { DEMO_BOARDS, readBoardFile } from "@lapline/contract";
import { type Plan, planBuild } from "@lapline/engine";
import { expect, test } from "vitest";
import { boardStateAt, boardStateWords } from "./boardState";

const EN = { units: "mm", language: "en" } as const;

/** The quad whose bottom was laminated on 11 April 2026 at 11:05. */
function planOfQuad(change: (file: Record<string, unknown>) => void = () => undefined): Plan {
  const file = JSON.parse(DEMO_BOARDS[0]?.text ?? "");
  change(file);
  const read = readBoardFile(JSON.stringify(file));
  if (!read.ok) throw new Error(read.problems[0]?.message);
  return planBuild(read.board);
}

/** By the browser's own clock, as wall times are. */
const at = (wall: string) => new Date(wall).getTime();

test("waits while the calendar has the next step later, and can go on from its very minute", () => {
  const plan = planOfQuad();
  const open = plan.calendar?.find(({ done, startsAt }) => !done && startsAt !== null);
  if (open?.startsAt === undefined || open.startsAt === null) throw new Error("nothing is open");
  const before = boardStateAt(plan, at(open.startsAt) - 60_000);
  expect(["waiting", "curing"]).toContain(before.kind);
  expect(before.from).toBe(open.startsAt);
  expect(before.next?.id).toBe(open.step);
  expect(boardStateWords(before, EN)).toMatch(/^(waiting|curing) until \w{3} 1[12] Apr 2026, \d\d:\d\d$/);
  expect(boardStateAt(plan, at(open.startsAt))).toMatchObject({ kind: "open", from: null });
});

test("is curing while what was laid last is not ready for what follows", () => {
  const plan = planOfQuad((file) => {
    file.record = [
      { id: "r1", kind: "done", step: "prep", at: "2026-04-11T09:50" },
      { id: "r2", kind: "done", step: "mark-fins", at: "2026-04-11T10:20" },
      { id: "r3", kind: "done", step: "laminate-bottom", at: "2026-04-11T11:05" },
    ];
  });
  const ready = plan.calendar?.find(({ step }) => step === "laminate-bottom")?.readyAt ?? "";
  const state = boardStateAt(plan, at(ready) - 60_000);
  expect(state).toMatchObject({ kind: "curing", next: { id: "trim-bottom" } });
  expect(boardStateWords(state, EN)).toContain("curing until Sat 11 Apr 2026");
});

test("is to be measured without an outline, stopped by a blocker, ready once every step is marked", () => {
  const bare = planOfQuad((file) => {
    file.survey = { ...(file.survey as object), stations: [{ fromTail: "12 in" }] };
  });
  expect(boardStateAt(bare, 0).kind).toBe("measure");
  const harmed = planOfQuad((file) => {
    file.blank = { foam: "eps-20" };
  });
  expect(boardStateAt(harmed, 0).kind).toBe("stopped");
  const plan = planOfQuad();
  const done = planOfQuad((file) => {
    file.record = (plan.steps ?? []).map(({ id }, i) => ({ id: `d${i}`, kind: "done", step: id }));
  });
  expect(boardStateAt(done, 0)).toMatchObject({ kind: "ready", next: null });
});
