import { DEMO_BOARDS, readBoardFile } from "@lapline/contract";
import { type Plan, planBuild } from "@lapline/engine";
import { expect, test } from "vitest";
import { partProgress, progressWords } from "./partProgress";
import { PARTS } from "./parts";

function planOf(change: (file: Record<string, unknown>) => void = () => undefined): Plan {
  const file = JSON.parse(DEMO_BOARDS[0]?.text ?? "");
  change(file);
  const read = readBoardFile(JSON.stringify(file));
  if (!read.ok) throw new Error(read.problems[0]?.message);
  return planBuild(read.board);
}

const kinds = (plan: Plan) => Object.fromEntries([...partProgress(plan)].map(([id, { kind }]) => [id, kind]));

test("the quad with its bottom on is measured, is being glassed, and the rest says from when", () => {
  const plan = planOf();
  expect(kinds(plan)).toEqual({
    measure: "done",
    fins: "waiting",
    glass: "now",
    cut: "waiting",
    mix: "waiting",
    sand: "waiting",
    seal: "waiting",
    water: "waiting",
  });
  const sand = partProgress(plan).get("sand");
  const first = plan.calendar?.find(({ step, done }) => /^sand-/.test(step) && !done);
  expect(sand?.from).toBe(first?.startsAt);
  if (sand === undefined) throw new Error("no part");
  expect(progressWords(sand, { units: "mm", language: "en" })).toMatch(/^from \w{3} \d+ Apr, \d\d:\d\d$/);
});

test("a board without readings is to be measured first, whatever else is known", () => {
  const plan = planOf((file) => {
    file.survey = { ...(file.survey as object), stations: [] };
    delete file.record;
  });
  expect(kinds(plan).measure).toBe("now");
  expect([...partProgress(plan).values()].filter(({ kind }) => kind === "now")).toHaveLength(1);
});

test("every part is done once every step is marked", () => {
  const steps = planOf().steps ?? [];
  const plan = planOf((file) => {
    file.record = steps.map(({ id }, i) => ({ id: `d${i}`, kind: "done", step: id }));
  });
  expect(PARTS.map(({ id }) => kinds(plan)[id])).toEqual(PARTS.map(() => "done"));
});

test("every step of a whole build, and of its repair, belongs to a part", () => {
  const plan = planOf((file) => {
    file.glass = { ...(file.glass as object), finish: "gloss", pinline: true };
  });
  for (const { id } of plan.steps ?? []) {
    const rest = (plan.steps ?? []).filter((step) => step.id !== id);
    const only = {
      ...plan,
      steps: [
        ...rest.map((step) => ({ ...step, done: true })),
        ...(plan.steps ?? []).filter((step) => step.id === id).map((step) => ({ ...step, done: false })),
      ],
    };
    expect([id, [...partProgress(only).values()].filter(({ kind }) => kind === "now").length]).toEqual([
      id,
      1,
    ]);
  }
});
