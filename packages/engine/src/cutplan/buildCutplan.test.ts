import { describe, expect, it } from "vitest";
import type { LayupPlan, PatternPlan, PiecePlan } from "../layup/LayupPlan";
import { buildCutplan } from "./buildCutplan";
import { outlineOnRoll } from "./outlineOnRoll";

const QUARTERS = [0, Math.PI / 2, Math.PI, (3 * Math.PI) / 2];

interface Given {
  readonly id: string;
  readonly lengthM: number;
  readonly widthM: number;
  /** Width of the far end where the piece runs to a blunt point; a rectangle if left out. */
  readonly noseM?: number;
  readonly turnsRad?: readonly number[];
  readonly cloth?: string;
}

/** Pieces with straight edges about the stringer; what is turned is a patch. */
function layupOf(given: readonly Given[], hangsM = 0): LayupPlan {
  const patterns = given.map(({ id, lengthM, widthM, noseM = widthM, turnsRad }): PatternPlan => {
    const points = [
      { alongM: 0, acrossM: -widthM / 2 },
      { alongM: lengthM, acrossM: -noseM / 2 },
      { alongM: lengthM, acrossM: noseM / 2 },
      { alongM: 0, acrossM: widthM / 2 },
    ];
    const areaM2 = (lengthM * (widthM + noseM)) / 2;
    return {
      id,
      face: "deck",
      points,
      lengthM,
      widthM,
      areaM2,
      edgeM: 1,
      turnsRad: turnsRad ?? [0, Math.PI],
      notches: [],
    };
  });
  const pieces = given.map(({ id, lengthM, widthM, turnsRad, cloth = "e-136" }, i): PiecePlan => {
    const { areaM2 } = patterns[i]!;
    const extent = turnsRad === undefined ? null : { fromTailTapeM: 0, toTapeM: lengthM, angleRad: 0 };
    const hung = turnsRad === undefined ? lengthM + 2 * hangsM : lengthM;
    return {
      id,
      face: "deck",
      coat: "laminate-deck",
      cloth,
      pattern: id,
      lengthM: hung,
      widthM,
      areaM2,
      lapAreaM2: 0,
      seamAreaM2: 0,
      clothMassKg: 0,
      resinMassKg: 0,
      extent,
    };
  });
  const whole = {
    railLineM: 4,
    resinRatio: 1,
    resinRatioLow: 1,
    resinRatioHigh: 1,
    cutting: "rolled",
  } as const;
  return { ...whole, faces: [], pieces, patterns, coats: [], zones: [], fittings: [], compared: [] };
}

const roll = (widthM: number, price?: number) => ({
  shop: { rolls: { "e-136": { widthM, ...(price === undefined ? {} : { price }) } } },
});

function onlyRoll(given: readonly Given[], board: Parameters<typeof buildCutplan>[0], hangsM = 0) {
  const built = buildCutplan(board, layupOf(given, hangsM)).value?.rolls[0];
  if (built === undefined) throw new Error("no roll was built");
  return built;
}

describe("buildCutplan", () => {
  it("cuts full layers off the roll one after another, with what hangs over", () => {
    const full = { lengthM: 1.9, widthM: 0.6 };
    const built = onlyRoll(
      [
        { id: "bottom-1", ...full },
        { id: "deck-1", ...full },
      ],
      roll(0.7),
      0.03,
    );
    expect(built.cuts.map(({ lengthM }) => lengthM)).toEqual([1.96, 1.96]);
    expect(built.lengthM).toBeCloseTo(2 * 1.96, 12);
    expect(built.usedRatio).toBeCloseTo((2 * 1.9 * 0.6) / (0.7 * 2 * 1.96), 12);
  });

  it("lays two layers side by side where the roll is wide enough for both and the shears", () => {
    const full = { lengthM: 1.9, widthM: 0.6 };
    const pair = [
      { id: "bottom-1", ...full },
      { id: "deck-1", ...full },
    ];
    expect(onlyRoll(pair, roll(1.21)).lengthM).toBeCloseTo(1.9, 12);
    expect(onlyRoll(pair, roll(1.2)).lengthM).toBeCloseTo(3.8, 12);
  });

  it("takes a patch out of the corner beside a narrow nose, and from the roll where it does not fit there", () => {
    const layer = { id: "deck-1", lengthM: 2, widthM: 0.6, noseM: 0.1 };
    const patch = (widthM: number) => ({ id: "patch-1", lengthM: 0.4, widthM, turnsRad: [0] });
    // Laid against the roll's edge its upper edge stands at 0.35 m at the nose, and 0.125 m more for each metre back from there.
    const topM = 0.35 + 0.125 * (2 - 1.59);
    const fits = 0.7 - topM - 0.01;
    const beside = onlyRoll([layer, patch(fits - 1e-6)], roll(0.7));
    expect(beside.lengthM).toBeCloseTo(2, 12);
    expect(beside.placed[1]).toMatchObject({ id: "patch-1", from: "offcut", cut: "cut-1" });
    expect(beside.placed[1]?.fromStartM).toBeCloseTo(1.6, 12);
    expect(onlyRoll([layer, patch(fits + 1e-6)], roll(0.7)).lengthM).toBeCloseTo(2.4, 12);
  });

  it("turns a patch where that saves length, and only as it may be turned", () => {
    const patch = { id: "patch-1", lengthM: 0.65, widthM: 0.3 };
    expect(onlyRoll([{ ...patch, turnsRad: QUARTERS }], roll(0.7)).lengthM).toBeCloseTo(0.3, 12);
    expect(onlyRoll([{ ...patch, turnsRad: [0, Math.PI] }], roll(0.7)).lengthM).toBeCloseTo(0.65, 12);
  });

  it("proposes a seam on the stringer, and the roll that needs none, where a layer is wider than its roll", () => {
    const stage = buildCutplan(roll(0.686), layupOf([{ id: "deck-1", lengthM: 2.9, widthM: 0.72 }]));
    const built = stage.value?.rolls[0];
    expect(built?.seams).toEqual([{ id: "deck-1", fromStringerM: 0, overlapM: 0.025, rollWidthM: 0.72 }]);
    expect(built?.placed.map(({ id, widthM }) => [id, widthM])).toEqual([
      ["deck-1-left", 0.3725],
      ["deck-1-right", 0.3725],
    ]);
    expect(stage.findings.map(({ severity, text }) => [severity, text])).toEqual([
      [
        "warning",
        "deck 1 is 720 mm wide and the roll of e-136 686 mm: lay it in two strips that overlap by 25 mm on the stringer, or take a roll at least 720 mm wide",
      ],
    ]);
  });

  it("stops where a piece does not fit the roll even in two strips, and says what would do", () => {
    const stage = buildCutplan(roll(0.3), layupOf([{ id: "deck-1", lengthM: 2.9, widthM: 0.72 }]));
    expect(stage.value).toBeNull();
    expect(stage.findings.map(({ severity, path, text }) => [severity, path, text])).toEqual([
      [
        "blocker",
        "shop.rolls[e-136].width",
        "deck 1 does not fit the roll of e-136, which is 300 mm wide: it needs a roll at least 720 mm wide",
      ],
    ]);
  });

  it("says that there is nothing to buy where there are no pieces, and that it waits where there is no lay-up", () => {
    const none = buildCutplan({}, layupOf([]));
    expect(none.value).toEqual({ rolls: [], repairs: [] });
    expect(none.findings[0]?.text).toContain("no cloth to buy");
    const waits = buildCutplan({}, null);
    expect(waits.value).toBeNull();
    expect(waits.findings[0]?.text).toContain("waits for the glass");
  });

  it("takes the cloth's usual roll where none was given, and says so", () => {
    const stage = buildCutplan({}, layupOf([{ id: "deck-1", lengthM: 1.9, widthM: 0.6 }]));
    expect(stage.value?.rolls[0]?.widthM).toBe(0.762);
    expect(stage.assumptions.map(({ path }) => path)).toContain("shop.rolls[e-136].width");
  });

  it("takes the width that the builder's own cloth has, and assumes nothing", () => {
    const cloths = { mine: { fibre: "e-glass", arealMassKgM2: 0.15, rollWidthM: 0.9 } } as const;
    const layup = layupOf([{ id: "deck-1", lengthM: 2, widthM: 0.6, cloth: "mine" }]);
    const stage = buildCutplan({ materials: { cloths } }, layup);
    expect(stage.value?.rolls[0]?.widthM).toBe(0.9);
    expect(stage.assumptions.map(({ path }) => path)).toEqual(["cutplan.rolls"]);
  });

  it("prices the length to buy by the metre, and keeps each cloth on a roll of its own", () => {
    const layer = { lengthM: 2, widthM: 0.6 };
    const layup = layupOf([
      { id: "bottom-1", ...layer, cloth: "e-203" },
      { id: "deck-1", ...layer },
    ]);
    const rolls = buildCutplan(roll(0.7, 9.5), layup).value?.rolls;
    expect(rolls?.map(({ cloth, cost }) => [cloth, cost])).toEqual([
      ["e-203", null],
      ["e-136", 19],
    ]);
  });

  it("keeps each piece's flat edge inside its cut", () => {
    const layup = layupOf([{ id: "deck-1", lengthM: 1.9, widthM: 0.6, noseM: 0.1 }], 0.03);
    const placed = buildCutplan(roll(0.7), layup).value?.rolls[0]?.placed[0];
    if (placed === undefined) throw new Error("nothing was placed");
    const alongM = outlineOnRoll(layup.patterns[0]!, placed).map((point) => point.alongM);
    expect(Math.min(...alongM)).toBeCloseTo(0.03, 12);
    expect(Math.max(...alongM)).toBeCloseTo(1.93, 12);
  });
});
