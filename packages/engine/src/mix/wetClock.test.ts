import { erf } from "mathjs";
import { describe, expect, it } from "vitest";
import { kelvin, makeLayup } from "../../tests/fixtures/mixLayup";
import { CURE_STAGES } from "../constants/cureStages";
import { logHalfOf } from "./bands";
import { buildMix } from "./buildMix";
import { computePace, type Touch } from "./computePace";
import type { Feel, MixEntry } from "./MixEntry";
import type { MixCoatPlan } from "./MixPlan";

const MINUTE_S = 60;
const { gels } = CURE_STAGES.peroxide;
const PRIOR = 0.7;

describe("the pace of one film", () => {
  it("is the model's, with its band, while nothing was touched", () => {
    const pace = computePace("peroxide", [], PRIOR);
    expect(pace.log).toBeCloseTo(0, 12);
    // The sum ends at four standard deviations.
    expect(pace.logHalf).toBeCloseTo(PRIOR, 2);
  });

  it("is slower where it is found wet late, and quicker where it is found hard early", () => {
    expect(computePace("peroxide", [{ feels: "wet", filmGels: 1.5 }], PRIOR).log).toBeGreaterThan(0.3);
    expect(computePace("peroxide", [{ feels: "hard", filmGels: 0.8 }], PRIOR).log).toBeLessThan(-0.3);
  });

  it("is better known after each test", () => {
    const touches: readonly Touch[] = [
      { feels: "strings", filmGels: 0.85 },
      { feels: "leathery", filmGels: 1.4 },
      { feels: "hard", filmGels: 2.6 },
    ];
    const halves = [0, 1, 2, 3].map(
      (count) => computePace("peroxide", touches.slice(0, count), PRIOR).logHalf,
    );
    expect(halves).toEqual([...halves].sort((a, b) => b - a));
  });

  it("agrees with Simpson's rule over the normal distribution of a general library", () => {
    const touches: readonly Touch[] = [
      { feels: "strings", filmGels: 1.2 },
      { feels: "leathery", filmGels: 1.9 },
    ];
    const phi = (z: number) => (1 + erf(z / Math.SQRT2)) / 2;
    const sdOf = (stage: keyof typeof gels) => logHalfOf(gels[stage]) / 1.645;
    const past = (stage: keyof typeof gels, x: number, log: number) =>
      phi((Math.log(x / gels[stage].value) - log) / sdOf(stage));
    const sd = PRIOR / 1.645;
    const weight = (log: number) =>
      Math.exp(-((log / sd) ** 2) / 2) *
      past("strings", 1.2, log) *
      (1 - past("trimFrom", 1.2, log)) *
      past("trimFrom", 1.9, log) *
      (1 - past("trimUntil", 1.9, log));
    const integral = (of: (log: number) => number) => {
      const [from, to, n] = [-5 * sd, 5 * sd, 2000];
      const step = (to - from) / n;
      let sum = of(from) + of(to);
      for (let i = 1; i < n; i++) sum += (i % 2 === 1 ? 4 : 2) * of(from + i * step);
      return (sum * step) / 3;
    };
    const mean = integral((log) => log * weight(log)) / integral(weight);
    const square = integral((log) => log ** 2 * weight(log)) / integral(weight);
    const pace = computePace("peroxide", touches, PRIOR);
    // The logistic stands for the normal distribution within 0.01.
    expect(Math.abs(pace.log - mean)).toBeLessThan(0.01);
    expect(Math.abs(pace.logHalf - 1.645 * Math.sqrt(square - mean ** 2))).toBeLessThan(0.02);
  });
});

const shop = { temperature: { dayK: kelvin(18), nightK: kelvin(18) } };
const layup = makeLayup("polyester");
const at = (minutes: number) => new Date(Date.UTC(2026, 3, 11, 10, minutes)).toISOString().slice(0, 16);
const mixed = (id: string, minutes: number, hardenerKg = 0.006): MixEntry => ({
  id,
  kind: "mixed",
  coat: "laminate-bottom",
  baseKg: 0.4,
  hardenerKg,
  at: at(minutes),
});
const touched = (id: string, minutes: number, feels: Feel): MixEntry => ({
  id,
  kind: "touched",
  coat: "laminate-bottom",
  feels,
  at: at(minutes),
});
const coatOf = (record: readonly MixEntry[]): MixCoatPlan =>
  buildMix({ shop, record }, layup).value!.coats.find(({ id }) => id === "laminate-bottom")!;
const codes = (record: readonly MixEntry[]) =>
  buildMix({ shop, record }, layup).findings.map(({ code }) => code);

describe("the wet clock", () => {
  it("goes by the dose that was weighed in, not by the plan's", () => {
    const [weak, strong] = [0.004, 0.008].map((kg) => coatOf([mixed("r1", 0, kg)]).clock!);
    expect(weak!.trimFromS! / strong!.trimFromS!).toBeGreaterThan(2);
    // The handbook's exponent, 1.37: twice the dose.
    expect(Math.log2(weak!.trimFromS! / strong!.trimFromS!)).toBeCloseTo(1.37, 1);
    expect(weak!.potGelS).toBe(strong!.potGelS);
  });

  it("tells from when it counts, the last cup, and what is not recorded it does not know", () => {
    expect(coatOf([]).startedAt).toBeNull();
    expect(coatOf([mixed("r1", 0), mixed("r2", 20)]).startedAt).toBe(at(20));
    expect(coatOf([mixed("r1", 0), { ...mixed("r2", 20), corrects: "r1" }]).startedAt).toBe(at(20));
  });

  it("is moved by a fingertip, and nothing that was felt lies in the future", () => {
    const plain = coatOf([mixed("r1", 0)]).clock!;
    const leathery = coatOf([mixed("r1", 0), touched("r2", 30, "leathery")]);
    expect(leathery.paceRatio).toBeLessThan(1);
    expect(leathery.clock!.trimFromS).toBeLessThanOrEqual(30 * MINUTE_S);
    expect(leathery.clock!.trimUntilS).toBeGreaterThanOrEqual(30 * MINUTE_S);
    expect(leathery.clock!.sandableS!).toBeLessThan(plain.sandableS!);
    const wet = coatOf([mixed("r1", 0), touched("r2", 240, "wet")]);
    expect(wet.paceRatio).toBeGreaterThan(1);
    expect(wet.clock!.trimFromLowS).toBeGreaterThanOrEqual(240 * MINUTE_S);
    expect(wet.clock!.sandableS!).toBeGreaterThan(plain.sandableS!);
  });

  it("narrows the bands of the stages to come", () => {
    const width = ({ sandableHighS, sandableLowS }: NonNullable<MixCoatPlan["clock"]>) =>
      sandableHighS! / sandableLowS!;
    const plain = coatOf([mixed("r1", 0)]).clock!;
    const told = coatOf([mixed("r1", 0), touched("r2", 90, "strings"), touched("r3", 150, "leathery")]);
    expect(width(told.clock!)).toBeLessThan(width(plain));
    expect(told.paceLowRatio!).toBeLessThan(told.paceRatio!);
    expect(told.paceHighRatio!).toBeGreaterThan(told.paceRatio!);
  });

  it("warns of a film that got softer and lets the later entry stand, whatever their order in time", () => {
    const [hard, wet] = [touched("r2", 25, "hard"), touched("r3", 105, "wet")];
    const both = [mixed("r1", 0), hard, wet];
    expect(codes(both)).toContain("mix.touch-backwards");
    expect(coatOf(both).clock).toEqual(coatOf([mixed("r1", 0), wet]).clock);
    expect(coatOf([mixed("r1", 0), wet, hard]).clock).toEqual(coatOf([mixed("r1", 0), hard]).clock);
    expect(codes([mixed("r1", 0), touched("r2", 25, "wet"), touched("r3", 105, "hard")])).not.toContain(
      "mix.touch-backwards",
    );
  });

  it("warns of a touch before the cup, and of a coat that the board does not have", () => {
    expect(codes([mixed("r1", 30), touched("r2", 20, "wet")])).toContain("mix.touch-early");
    const slip: MixEntry = {
      id: "r1",
      kind: "mixed",
      coat: "laminate-botom",
      baseKg: 0.4,
      hardenerKg: 0.006,
      at: at(0),
    };
    const found = buildMix({ shop, record: [slip] }, layup).findings.find(
      ({ code }) => code === "mix.unknown-coat",
    );
    expect(found).toMatchObject({ severity: "warning", path: "record[r1].coat" });
    expect(found!.text).toContain("laminate-bottom");
    expect(codes([mixed("r1", 0)])).not.toContain("mix.unknown-coat");
  });

  it("calls an overdose a fire, and more than any sheet allows a blocker", () => {
    const overdose = (hardenerKg: number) =>
      buildMix({ shop, record: [mixed("r1", 0, hardenerKg)] }, layup).findings.find(
        ({ code }) => code === "mix.overdose",
      );
    expect(overdose(0.008)).toBeUndefined();
    // 3 % of 400 g and 16 %; three published polyester sheets: never above 4 %.
    expect(overdose(0.012)?.severity).toBe("warning");
    expect(overdose(0.064)?.severity).toBe("blocker");
    for (const hardenerKg of [0.012, 0.064]) {
      expect(overdose(hardenerKg)!.text).toMatch(/smoke and catch fire/);
      expect(overdose(hardenerKg)!.text).not.toContain("stay soft");
    }
  });

  it("says so where the fingertips are further off than resins differ", () => {
    expect(codes([mixed("r1", 0), touched("r2", 1400, "wet")])).toContain("mix.far-pace");
    expect(codes([mixed("r1", 0), touched("r2", 90, "leathery")])).not.toContain("mix.far-pace");
  });

  it("says so where a test can move nothing, or the cup held another dose than the sheet allows", () => {
    expect(codes([touched("r1", 30, "wet")])).toContain("mix.untimed-touch");
    expect(codes([mixed("r1", 0, 0.016)])).toContain("mix.overdose");
    expect(codes([mixed("r1", 0, 0.0036)])).toContain("mix.dose-used");
    expect(codes([mixed("r1", 0), touched("r2", 30, "wet")])).not.toContain("mix.untimed-touch");
    expect(codes([mixed("r1", 0)])).not.toContain("mix.dose-used");
  });

  it("goes on for a coat that is on the board, although the shop is too cold to mix another", () => {
    const cold = { temperature: { dayK: kelvin(13), nightK: kelvin(8) }, start: "2026-04-11T09:00" };
    const coat = buildMix({ shop: cold, record: [mixed("r1", 0)] }, layup).value!.coats[0]!;
    expect(coat).toMatchObject({ hardenerRatio: null, cups: [], startedAt: at(0) });
    expect(coat.clock).toMatchObject({ trimFromS: null, sandableS: null });
    expect(coat.clock!.potGelS).toBeGreaterThan(0);
  });

  it("waits in the cold: a test after a night that counts for nothing says nothing of the pace", () => {
    const cold = { temperature: { dayK: kelvin(18), nightK: kelvin(8) }, start: "2026-04-11T09:00" };
    const evening: readonly MixEntry[] = [
      { ...mixed("r1", 0), at: "2026-04-11T18:30" },
      { ...touched("r2", 0, "wet"), at: "2026-04-12T08:30" },
    ];
    const coat = buildMix({ shop: cold, record: evening }, layup).value!.coats[0]!;
    expect(coat.startedAt).toBe("2026-04-11T18:30");
    expect(coat.paceRatio).toBeNull();
  });
});
