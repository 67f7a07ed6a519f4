import { describe, expect, it } from "vitest";
import { P_GRAIN_M, US_GRAIN_M } from "../src/constants/abrasives";
import { ADMISSIBLE_FACTOR, SEA_VISCOSITY_M2_S, SURF_SPEED_M_S } from "../src/constants/sandingWork";
import { normalShare } from "../src/geometry/normalShare";
import { computeBearing } from "../src/sanding/computeSpot";
import { listRungs } from "../src/sanding/listRungs";
import chart from "./reference/sanding/grit-chart.json";

describe("the grit table", () => {
  it("is the published one, P grades and US grades", () => {
    const inUm = (table: Readonly<Record<string, { readonly value: number }>>) =>
      Object.fromEntries(
        Object.entries(table).map(([grade, { value }]) => [grade, Number((value * 1e6).toFixed(1))]),
      );
    expect(inUm(P_GRAIN_M)).toEqual(chart.p);
    expect(inUm(US_GRAIN_M)).toEqual(chart.us);
  });

  it.each(chart.sameAs)("has US $us stand for $p", ({ us, p }) => {
    const rungs = (["sanded", "wet-sanded", "gloss"] as const).flatMap((finish) => listRungs({ finish }));
    expect(rungs.find(({ grit }) => grit === p)?.us).toBe(us);
  });
});

describe("the ladder", () => {
  // Common practice, no source: sanded to about P220 to P400, wet-sanded to P600 to P1200, a gloss on to compound.
  it.each([
    ["sanded", "P220", "P400"],
    ["wet-sanded", "P1200", "P1200"],
    ["gloss", "P1200", "P2500"],
  ] as const)("of a %s board ends between %s and %s", (finish, from, to) => {
    const last = listRungs({ finish }).at(-1)!;
    expect(last.grainM).toBeLessThanOrEqual(P_GRAIN_M[from].value);
    expect(last.grainM).toBeGreaterThanOrEqual(P_GRAIN_M[to].value);
  });

  it("begins anew on a gloss coat, which has no scratches to take out", () => {
    const first = listRungs({ finish: "gloss" }).find(({ on }) => on === "gloss")!;
    expect(first.beforeM).toBeNull();
    expect(first.wet).toBe(true);
  });

  it("keeps the coarsest paper off the rails", () => {
    expect(listRungs({ finish: "sanded" }).map(({ onEdges }) => onEdges)).toEqual([
      false,
      true,
      true,
      true,
      true,
    ]);
  });
});

describe("admissible roughness", () => {
  // Schlichting, ch. 21 (from memory): 100 ν/U; worked: 100 × 1.18831e-6 / 5 = 23.8 µm in salt water of 15 °C.
  it("is 23.8 µm at 5 m/s in salt water of 15 °C", () => {
    const kM = (ADMISSIBLE_FACTOR.value * SEA_VISCOSITY_M2_S.value) / SURF_SPEED_M_S.value;
    expect(kM * 1e6).toBeCloseTo(23.8, 1);
  });
});

describe("the normal distribution", () => {
  // Standard table (from memory).
  it.each([
    [0, 0.5],
    [1, 0.841345],
    [1.645, 0.950015],
    [-1.96, 0.024998],
    [3, 0.99865],
  ])("has below %f standard deviations the share %f", (deviations, share) => {
    expect(normalShare(deviations)).toBeCloseTo(share, 5);
  });
});

describe("a soft pad on an edge", () => {
  // Worked: half width 35 mm, gives 5 mm; on R 10 mm it touches √(2 × 10 × 5) = 10 mm either side: 3.5 times as hard.
  it("bears 3.5 times as hard on an edge of 10 mm", () => {
    expect(computeBearing(0.01, 0.005)).toBeCloseTo(3.5, 9);
  });

  it("bears as on a flat where the edge is rounder than the pad gives, and on a flat", () => {
    expect(computeBearing(1, 0.005)).toBe(1);
    expect(computeBearing(null, 0.005)).toBe(1);
  });
});
