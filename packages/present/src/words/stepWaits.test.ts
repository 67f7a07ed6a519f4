import { expect, test } from "vitest";
import { stepWaits } from "./stepWaits";

type Step = Parameters<typeof stepWaits>[1];

const step = (id: string, needs: Step["needs"] = [], waitS: number | null = 0): Step => ({
  id,
  title: id,
  after: needs.map((need) => need.step),
  needs,
  because: "",
  coat: null,
  cures: null,
  handsOnS: 0,
  waitS,
  noLoadS: null,
  materials: [],
  tools: [],
  cautions: [],
  done: false,
  doneAt: null,
});
const need = (until: Step["needs"][number]["until"], waitS: number | null) => ({
  step: "boxes",
  until,
  because: "",
  waitS,
});

test("every stage that later steps wait for is said once, soonest first", () => {
  const boxes = step("boxes", [], 8460);
  const steps = [
    boxes,
    step("sand-bottom", [need("sandable", 81240), need("hands-off", 0)]),
    step("set-leash-plug", [need("flip", 8460)]),
    step("sand-deck", [need("sandable", 81240), need("trim", null)]),
  ];
  expect(stepWaits(steps, boxes, { units: "mm", language: "en" })).toEqual([
    { words: "flip after", waitS: 8460, path: "steps[set-leash-plug].needs[boxes].waitS" },
    { words: "sand after", waitS: 81240, path: "steps[sand-bottom].needs[boxes].waitS" },
  ]);
});

test("a step that is nothing but a wait says how long; one that is not says nothing", () => {
  const cure = step("cure-out", [], 464000);
  const trim = step("trim-bottom");
  const steps = [cure, trim, step("water", [{ ...need("hands-off", 0), step: "cure-out" }])];
  expect(stepWaits(steps, cure, { units: "mm", language: "en" })).toEqual([
    { words: "then wait", waitS: 464000, path: `steps[${cure.id}].waitS` },
  ]);
  expect(stepWaits(steps, trim, { units: "mm", language: "en" })).toEqual([]);
});
