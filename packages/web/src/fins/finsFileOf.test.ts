import { buildHouseSetOffers, HOUSE_SETS } from "@lapline/engine";
import { describe, expect, test } from "vitest";
import { demoPlan } from "../../tests/demoPlan";
import { finsFileOf } from "./finsFileOf";

/** Half of a tape's finest step: 1/64 in, and the half of a tenth of a millimetre that a file in millimetres keeps. */
const WITHIN_M = { inch: 0.0254 / 64, mm: 0.00005 };

describe.each(HOUSE_SETS)("$name put on a board", (set) => {
  const { board, fins } = demoPlan({
    asSet: [{ fin: "front", side: "left", trailing: { fromTail: "292 mm" } }],
    verify: { confirmed: ["bottom-up"] },
  });
  test.each(["inch", "mm"] as const)("stands in the file in %s as the engine offers it", (units) => {
    for (const offer of buildHouseSetOffers(board, set)) {
      const file = finsFileOf(offer.fins, fins, units);
      expect(file).toMatchObject({ sides: fins.sides, boxes: fins.boxes, leashPlug: fins.leashPlug });
      expect(file.asSet).toBeUndefined();
      expect(file.verify).toBeUndefined();
      expect(file.set[0]?.box).toEqual(fins.set[0]?.box);
      const { finset } = demoPlan(file);
      expect(finset.marks.map(({ id }) => id)).toEqual(offer.differences.map(({ id }) => id));
      for (const [i, mark] of finset.marks.entries()) {
        const offered = offer.differences[i];
        const tail = mark.trailing.fromTailTapeM - (offered?.fromTailTapeM ?? 0);
        expect(Math.abs(tail)).toBeLessThanOrEqual(WITHIN_M[units] + 1e-9);
        expect(mark.toeRad).toBeCloseTo(offered?.toeRad ?? 1, 2);
        expect(mark.cantRad).toBeCloseTo(offered?.cantRad ?? 1, 6);
      }
    }
  });
});
