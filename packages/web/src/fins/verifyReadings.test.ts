import { describe, expect, test } from "vitest";
import { demoPlan } from "../../tests/demoPlan";
import type { VerifyFile } from "./FinsForm";
import { findReading, verifyPlace, withConfirmed, withReading } from "./verifyReadings";

const { finset } = demoPlan();
const { checks } = finset.verify;

function checkOf(id: string) {
  const check = checks.find((each) => each.id === id);
  if (check === undefined) throw new Error(`no check ${id}`);
  return check;
}

function placeOf(id: string) {
  const place = verifyPlace(checkOf(id));
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
      { check: checkOf("bottom-up"), isMade: true, known },
    );
    expect(made).toEqual({ confirmed: ["nose-away", "bottom-up"] });
    expect(stateOf("bottom-up", made)).toBe("good");
    expect(
      withConfirmed({ confirmed: ["bottom-up"] }, { check: checkOf("bottom-up"), isMade: false, known }),
    ).toBeUndefined();
    const on: VerifyFile = { on: "foam", confirmed: ["bottom-up"] };
    expect(withConfirmed(on, { check: checkOf("bottom-up"), isMade: false, known })).toEqual({ on: "foam" });
  });

  test("a box tried on scrap is kept with the pocket it was tried in, and counts for that pocket only", () => {
    const made = withConfirmed(undefined, { check: checkOf("dry-fit-front"), isMade: true, known: [] });
    expect(stateOf("dry-fit-front", made)).toBe("good");
    expect(stateOf("dry-fit-front", { ...made, on: "foam" })).toBe("open");
    expect(stateOf("dry-fit-front", { confirmed: ["dry-fit-front"] })).toBe("open");
  });

  test("a stop is kept with the surface it was set from", () => {
    const { targetM } = checkOf("depth-stop-front").lengths[0]!;
    const depth = `${targetM * 1000} mm`;
    const read = withReading(undefined, placeOf("depth-stop-front"), { depth });
    expect(stateOf("depth-stop-front", read)).toBe("good");
    expect(stateOf("depth-stop-front", { ...read, on: "foam" })).toBe("open");
  });
});
