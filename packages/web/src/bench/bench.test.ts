import { DEMO_BOARDS } from "@lapline/contract";
import { describe, expect, test } from "vitest";
import { planOf } from "../plan/planOf";
import { localMs } from "../shared/localMs";
import { chooseStep } from "./chooseStep";
import { listCards } from "./listCards";
import { listClock, runningClocks } from "./listClock";
import { mixedCups } from "./mixedCups";

function demo(id: string, change: (file: { record?: unknown[] }) => void = () => undefined) {
  const file = JSON.parse(DEMO_BOARDS.find((board) => board.id === id)?.text ?? "");
  change(file);
  const read = planOf(JSON.stringify(file));
  if (!read.ok) throw new Error(read.problems.map(({ message }) => message).join("; "));
  return read;
}

const stepOf = ({ plan }: ReturnType<typeof demo>, id: string) => {
  const step = plan.steps?.find((each) => each.id === id);
  if (step === undefined) throw new Error(`the demo has no step ${id}`);
  return step;
};
const cardIds = (board: ReturnType<typeof demo>, step: string, mixed = 0) =>
  listCards(board.plan, stepOf(board, step), mixed).map(({ id }) => id);

const quad = demo("five-ten-quad");
const long = demo("nine-two-long");
const MINUTE_MS = 60_000;

describe("the screens of a step", () => {
  test("a laminate is cut, laid, mixed cup by cup, timed and weighed", () => {
    expect(cardIds(long, "laminate-bottom")).toEqual([
      "start",
      "e-203-cut-1",
      "lay",
      "cup-1",
      "cup-2",
      "clock",
      "weigh",
    ]);
    expect(cardIds(long, "laminate-bottom", 3)).toContain("cup-3");
  });

  test("fins are marked pair by pair, each end of the base and how it stands", () => {
    expect(cardIds(quad, "mark-fins")).toEqual([
      "start",
      ...["front", "rear"].flatMap((fin) => [
        `mark-${fin}-trailing`,
        `mark-${fin}-leading`,
        `mark-${fin}-stand`,
      ]),
    ]);
  });

  test("every check of the gate stands on one screen before the router", () => {
    const cards = listCards(quad.plan, stepOf(quad, "set-boxes"));
    const checks = cards.flatMap((card) => (card.kind === "gate" ? card.checks : []));
    expect(checks).toEqual(quad.plan.finset?.verify.checks.map(({ id }) => id));
  });

  test("papers stand at the step that uses them", () => {
    expect(cardIds(quad, "sand-deck").slice(1)).toEqual([
      ...(quad.plan.sanding?.grits ?? []).filter(({ wet }) => !wet).map(({ grit }) => `paper-${grit}`),
      "through",
    ]);
    expect(cardIds(long, "wet-sand")).toContain("paper-P1000");
    expect(cardIds(long, "wet-sand")).not.toContain("paper-P80");
  });

  test("other work has its cautions only, and the blank is weighed where it is prepared", () => {
    expect(cardIds(quad, "trim-deck")).toEqual(["start"]);
    expect(cardIds(quad, "prep")).toEqual(["start", "weigh"]);
  });
});

describe("which step", () => {
  test("by its id, or else the first that is not done", () => {
    const steps = quad.plan.steps ?? [];
    expect(chooseStep(steps, undefined)?.step.id).toBe("laps-bottom");
    expect(chooseStep(steps, "prep")).toMatchObject({ number: 1, before: null });
    expect(chooseStep(steps, "nothing-such")?.step.id).toBe("laps-bottom");
    const done = steps.map((step) => ({ ...step, done: true }));
    expect(chooseStep(done, undefined)?.step.id).toBe(steps.at(-1)?.id);
    expect(chooseStep([], undefined)).toBeNull();
  });
});

describe("the wet clock", () => {
  const coat = quad.plan.mix?.coats.find(({ id }) => id === "laminate-bottom");
  if (coat === undefined || coat.clock === null) throw new Error("the demo has its laminate's clock");
  const startMs = localMs("2026-04-11T10:45") ?? Number.NaN;
  const moments = listClock(coat);

  test("puts the plan's seconds behind the cup's wall time, in the order in which they come", () => {
    expect(moments.map(({ kind }) => kind)).toEqual(["spread", "trim", "recoat", "flip", "sand"]);
    const trim = moments.find(({ kind }) => kind === "trim");
    expect(trim?.atMs).toBe(startMs + (coat.clock?.trimFromS ?? 0) * 1000);
    expect(trim?.untilMs).toBe(startMs + (coat.clock?.trimUntilS ?? 0) * 1000);
    // The calendar of the same plan has the same wall time, to its minute.
    const entry = quad.plan.calendar?.find(({ step }) => step === "laminate-bottom");
    const atMs = localMs(entry?.moments.find(({ kind }) => kind === "trim")?.at) ?? Number.NaN;
    expect(Math.abs((trim?.atMs ?? 0) - atMs)).toBeLessThanOrEqual(MINUTE_MS);
  });

  test("is not there before the hardener is in", () => {
    const dry = demo("five-ten-quad", (file) => {
      file.record = [];
    });
    expect(dry.plan.mix?.coats.flatMap(listClock)).toEqual([]);
  });

  test("runs until its last time is past", () => {
    expect(runningClocks(quad.plan, startMs).map((clock) => clock.coat)).toEqual(["laminate-bottom"]);
    expect(runningClocks(quad.plan, moments.at(-1)?.atMs ?? 0)).toEqual([]);
  });

  test("two coats at once: the one whose next time comes first in front", () => {
    const two = demo("five-ten-quad", (file) => {
      file.record?.push({
        id: "r8",
        kind: "mixed",
        coat: "laminate-deck",
        base: "430 g",
        hardener: "7 g",
        at: "2026-04-11T13:00",
      });
    });
    const atMs = localMs("2026-04-11T13:01") ?? Number.NaN;
    expect(runningClocks(two.plan, atMs).map((clock) => clock.coat)).toEqual([
      "laminate-deck",
      "laminate-bottom",
    ]);
  });

  test("a fingertip moves the times that are still ahead", () => {
    const without = demo("five-ten-quad", (file) => {
      file.record = (file.record ?? []).filter(
        (entry) => (entry as { readonly kind: string }).kind !== "touched",
      );
    });
    const plain = without.plan.mix?.coats.find(({ id }) => id === "laminate-bottom");
    if (plain === undefined) throw new Error("the demo has its laminate");
    const flipOf = (each: typeof plain) => listClock(each).find(({ kind }) => kind === "flip")?.atMs;
    expect(flipOf(coat)).not.toBe(flipOf(plain));
  });
});

test("cups of a coat as they stand, corrected ones once", () => {
  const corrected = demo("five-ten-quad", (file) => {
    file.record?.push({
      id: "r8",
      kind: "mixed",
      coat: "laminate-bottom",
      base: "300 g",
      hardener: "5.4 g",
      at: "2026-04-11T10:45",
      corrects: "r3",
    });
  });
  expect(mixedCups(corrected.file, "laminate-bottom").map(({ id }) => id)).toEqual(["r8"]);
  expect(mixedCups(corrected.file, "laminate-deck")).toEqual([]);
});
