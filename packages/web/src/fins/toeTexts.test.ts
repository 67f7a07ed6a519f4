import { angle, formatQuantity } from "@lapline/engine";
import { describe, expect, test } from "vitest";
import { demoPlan } from "../../tests/demoPlan";
import { TOE_FORMS, toeTexts } from "./toeTexts";

describe("toe in every form", () => {
  const { finset, fins } = demoPlan();
  const mark = finset.marks[0];

  test("the stated form is as it was typed, slips and all; the others are the plan's", () => {
    const texts = toeTexts({ aimBesideNose: "2 1/2" }, mark, "mm");
    expect(texts.aimBesideNose).toBe("2 1/2");
    expect(texts.angle).toBe(formatQuantity(angle(mark?.toeRad ?? 0, "fine"), "mm"));
  });

  test.each(TOE_FORMS)("what stands under $label, typed as it stands there, gives the same toe", ({ id }) => {
    for (const units of ["inch", "mm"] as const) {
      const text = toeTexts(fins.set[0]?.toe, mark, units)[id];
      const [front, ...others] = fins.set;
      if (front === undefined) throw new Error("the demo has a front fin");
      const again = demoPlan({ set: [{ ...front, toe: { [id]: text } }, ...others] }).finset.marks[0];
      // Rounded to the tape: 1/64 in over the base is 0.2 degrees, and far less at the end of a string.
      expect(Math.abs((again?.toeRad ?? 1) - (mark?.toeRad ?? 0))).toBeLessThan(0.0036);
    }
  });

  test("a fin that is not marked has no figures, only what was typed", () => {
    expect(toeTexts({ angle: "3 deg" }, undefined, "mm")).toEqual({
      aimBesideNose: "",
      aimBeyondNose: "",
      overBase: "",
      angle: "3 deg",
    });
  });
});
