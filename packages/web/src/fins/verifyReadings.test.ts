import { describe, expect, test } from "vitest";
import { demoPlan } from "../../tests/demoPlan";
import type { VerifyFile } from "./FinsForm";
import { findReading, verifyPlace, withConfirmed, withReading } from "./verifyReadings";

const { finset } = demoPlan();
const { checks } = finset.verify;

function placeOf(id: string) {
  const check = checks.find((each) => each.id === id);
  const place = check === undefined ? null : verifyPlace(check);
  if (place === null) throw new Error(`no place for ${id}`);
  return place;
}

/** What the plan says of a check once the gate was read like this. */
function stateOf(id: string, verify: VerifyFile | undefined): string | undefined {
  const plan = demoPlan(verify === undefined ? {} : { verify });
  return plan.finset.verify.checks.find((each) => each.id === id)?.state;
}

describe("readings of the gate in the file", () => {
  test("every reading that is not of the marks has a place, and the plan takes it from there", () => {
    for (const check of checks) {
      const place = verifyPlace(check);
      const isElsewhere = check.kind === "check" || check.matter === "marks" || check.matter === "sides";
      expect(place === null).toBe(isElsewhere);
      if (place === null) continue;
      const far = Object.fromEntries(
        place.fields.map(({ field, dimension }, i) => [
          field,
          dimension === "angle" ? "20 deg" : i === 0 ? "12 mm" : "50 mm",
        ]),
      );
      expect(stateOf(check.id, withReading(undefined, place, far))).toBe("out");
    }
  });

  test("a reading is changed in place, and taken away when it is emptied", () => {
    const place = placeOf("string-front-left");
    const first = withReading(undefined, place, { besideNose: "2 1/2 in" });
    expect(first).toEqual({ strings: [{ fin: "front", side: "left", besideNose: "2 1/2 in" }] });
    const second = withReading(first, place, { besideNose: "2 in" });
    expect(second?.strings).toHaveLength(1);
    expect(findReading(second, place)).toEqual({
      at: 0,
      entry: { fin: "front", side: "left", besideNose: "2 in" },
    });
    expect(withReading(second, place, { besideNose: "" })).toBeUndefined();
  });

  test("a diagonal is kept only once both its sides are read", () => {
    const place = placeOf("diagonal-front-nose-trailing");
    expect(withReading(undefined, place, { left: "58 in" })).toBeUndefined();
    expect(withReading(undefined, place, { left: "58 in", right: "58 in" })).toEqual({
      diagonals: [{ fin: "front", from: "nose", to: "trailing", left: "58 in", right: "58 in" }],
    });
  });

  test("a check is confirmed and taken back; what the plan has no check for is dropped", () => {
    const known = checks.map(({ id }) => id);
    const made = withConfirmed(
      { confirmed: ["no-such", "nose-away"] },
      { id: "bottom-up", isMade: true, known },
    );
    expect(made).toEqual({ confirmed: ["nose-away", "bottom-up"] });
    expect(stateOf("bottom-up", made)).toBe("good");
    expect(
      withConfirmed({ confirmed: ["bottom-up"] }, { id: "bottom-up", isMade: false, known }),
    ).toBeUndefined();
    const on: VerifyFile = { on: "foam", confirmed: ["bottom-up"] };
    expect(withConfirmed(on, { id: "bottom-up", isMade: false, known })).toEqual({ on: "foam" });
  });
});
