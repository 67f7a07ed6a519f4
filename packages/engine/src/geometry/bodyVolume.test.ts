import { describe, expect, it } from "vitest";
import { type Body, computeAroundM3, computeBodyVolumeM3, computeMouthM2 } from "./bodyVolume";

/** Worked by hand from length, width, depth and π/4. */
describe("a body and the pocket cut for it", () => {
  const block: Body = { form: "block", lengthM: 0.1, widthM: 0.02, depthM: 0.015 };
  const plug: Body = { form: "cylinder", diameterM: 0.03, depthM: 0.02 };

  it("takes its own space", () => {
    expect(computeBodyVolumeM3(block)).toBeCloseTo(30e-6, 15);
    expect(computeBodyVolumeM3(plug)).toBeCloseTo(14.137166941e-6, 14);
    expect(computeMouthM2(block)).toBeCloseTo(20e-4, 15);
    expect(computeMouthM2(plug)).toBeCloseTo(7.068583471e-4, 12);
  });

  it("leaves the gap all round and beneath", () => {
    // 104 × 24 × 17 mm less 100 × 20 × 15 mm.
    expect(computeAroundM3(block, 0.002)).toBeCloseTo(12.432e-6, 15);
    // π/4 × 34² × 22 mm less π/4 × 30² × 20 mm.
    expect(computeAroundM3(plug, 0.002)).toBeCloseTo((Math.PI / 4) * (1156 * 22 - 900 * 20) * 1e-9, 15);
    expect(computeAroundM3(plug, 0)).toBe(0);
  });
});
