import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { buildFinset } from "../../src/finset/buildFinset";
import type { BoxInput, FinsInput } from "../../src/finset/FinsInput";
import type { VerifyPlan } from "../../src/finset/verify/VerifyPlan";
import { boards, number, RULES, sets } from "../fixtures/anyFinset";
import { type FinsetShapeSpec, finsetShape } from "../fixtures/finsetShape";
import { readAsPlanned } from "../fixtures/readAsPlanned";

const RUNS = { seed: 20260518, numRuns: 150 };

const box: fc.Arbitrary<BoxInput> = fc.record({
  lengthM: number(0.05, 0.15),
  widthM: number(0.005, 0.04),
  depthM: number(0.005, 0.04),
});
const timing = fc.constantFrom(
  "before-glass" as const,
  "after-laminate" as const,
  "after-fill" as const,
  "glassed-on" as const,
);

/** Fins about where builders set them, so that most of the sets can stand. */
const usual = (name: string, upM: number) =>
  fc
    .record({
      fromTailM: number(upM - 0.03, upM + 0.03),
      fromRailM: number(0.03, 0.08),
      baseM: number(0.05, 0.11),
      cantRad: number(0, 0.15),
      toe: fc.record({ kind: fc.constant("angle" as const), angleRad: number(-0.02, 0.08) }),
    })
    .map((stated) => ({ fin: name, ...stated }));
const usualSets: fc.Arbitrary<FinsInput> = fc.record({
  arrangement: fc.constant("quad" as const),
  sides: fc.constantFrom(...RULES),
  fromTailBy: fc.constantFrom("tape" as const, "straight" as const),
  set: fc.tuple(usual("front", 0.4), usual("rear", 0.15)).map((pair) => [...pair]),
});

/** Sets with boxes, as they are and with everything read as planned. */
const readSets = fc
  .tuple(boards, fc.oneof(sets, usualSets), box, timing)
  .map(([spec, fins, socket, boxes]) => {
    const shape = finsetShape(spec);
    const stated: FinsInput = { ...fins, boxes, set: fins.set.map((fin) => ({ ...fin, box: socket })) };
    return { shape, stated, read: readAsPlanned(shape, stated) };
  });

const gateOf = (fins: FinsInput, shape: ReturnType<typeof finsetShape>): VerifyPlan | null =>
  buildFinset(fins, shape).value?.verify ?? null;

describe("the stop before the router", () => {
  it("goes where everything is read as planned, and only there", () => {
    const seen = { go: 0, blocked: 0 };
    fc.assert(
      fc.property(readSets, ({ shape, stated, read }) => {
        const gate = gateOf(read, shape);
        if (gate === null) return;
        expect(gateOf(stated, shape)?.verdict).not.toBe("go");
        expect(["go", "blocked"]).toContain(gate.verdict);
        seen[gate.verdict as keyof typeof seen] += 1;
        expect(gate.checks.filter(({ state }) => state === "out")).toEqual([]);
      }),
      RUNS,
    );
    expect(seen.go).toBeGreaterThan(20);
    expect(seen.blocked).toBeGreaterThan(5);
  });

  it("is held by one string that is off by more than its tolerance, and let go by the cure it names", () => {
    let held = 0;
    fc.assert(
      fc.property(readSets, number(1.05, 5), fc.boolean(), ({ shape, read }, times, out) => {
        const { marks = [] } = buildFinset(read, shape).value ?? {};
        const [mark] = marks;
        const before = gateOf(read, shape);
        if (mark === undefined || before?.verdict !== "go") return;
        held += 1;
        const string = before.checks.find(({ id }) => id === `string-${mark.id}`)!;
        const offM = (out ? 1 : -1) * times * (string.lengths[0]?.toleranceM ?? 0);
        const readAt = (besideNoseM: number): FinsInput => ({
          ...read,
          verify: {
            ...read.verify,
            strings: [
              ...(read.verify?.strings ?? []),
              { fin: mark.fin, side: mark.side as "left", besideNoseM },
            ],
          },
        });
        const after = gateOf(readAt(mark.aimBesideNoseM + offM), shape)!;
        expect(after).toMatchObject({ verdict: "correct", next: string.id });
        // The base as the string shows it, its front moved by the cure with the trailing end held, points where it should.
        const reachM = (mark.trailing.fromCentrelineM - mark.aimBesideNoseM) / Math.tan(mark.toeRad);
        if (!Number.isFinite(reachM) || Math.abs(mark.toeRad) < 1e-3) return;
        const asReadRad = Math.atan((mark.trailing.fromCentrelineM - mark.aimBesideNoseM - offM) / reachM);
        const { leadingAcrossM = 0 } = after.checks.find(({ id }) => id === string.id)?.correction ?? {};
        const curedRad = Math.asin((mark.baseM * Math.sin(asReadRad) - leadingAcrossM) / mark.baseM);
        expect(curedRad).toBeCloseTo(mark.toeRad, 9);
      }),
      RUNS,
    );
    expect(held).toBeGreaterThan(20);
  });

  it("is the mirrored gate on a mirrored board", () => {
    const mirrored = (spec: FinsetShapeSpec): FinsetShapeSpec => ({
      ...spec,
      left: spec.right,
      right: spec.left,
      shiftM: -(spec.shiftM ?? 0),
      skewRad: -(spec.skewRad ?? 0),
      twistRad: -(spec.twistRad ?? 0),
    });
    const other = (id: string) =>
      id.replace(/-(left|right)$/, (_, side) => (side === "left" ? "-right" : "-left"));
    fc.assert(
      fc.property(boards, sets, (spec, fins) => {
        const here = gateOf(fins, finsetShape(spec))?.checks ?? [];
        const there = gateOf(fins, finsetShape(mirrored(spec)))?.checks ?? [];
        expect(there.length).toBe(here.length);
        for (const { id, matter, lengths } of here) {
          const turned = there.find((check) => check.id === other(id))!;
          for (const [i, { targetM }] of lengths.entries()) {
            const mirroredM = matter === "diagonals" ? [1, 0, 2][i]! : i;
            const sign = matter === "diagonals" && i === 2 ? -1 : 1;
            expect(turned.lengths[mirroredM]?.targetM, id).toBeCloseTo(sign * targetM, 9);
          }
        }
      }),
      RUNS,
    );
  });

  it("never holds a number that is none, whatever was read", () => {
    const wild = fc.oneof(fc.double(), fc.constantFrom(Number.NaN, Number.POSITIVE_INFINITY, -0));
    fc.assert(
      fc.property(readSets, wild, wild, ({ shape, stated }, a, b) => {
        const fins: FinsInput = {
          ...stated,
          verify: {
            strings: [{ fin: "front", side: "left", besideNoseM: a }],
            diagonals: [{ fin: "rear", from: "tail", to: "leading", leftM: a, rightM: b }],
            cantBlocks: [{ fin: "front", cantRad: b }],
            depthStops: [{ fin: "rear", depthM: a }],
            proud: [{ fin: "front", heightM: b }],
          },
        };
        const text = JSON.stringify(buildFinset(fins, shape), (_key, value: unknown) =>
          typeof value === "number" && Number.isNaN(value) ? "not a number" : value,
        );
        expect(text).not.toContain("not a number");
      }),
      RUNS,
    );
  });
});

describe("the resin around a box", () => {
  it("is the pocket less the box, grows with the room around it, and lies within its band", () => {
    fc.assert(
      fc.property(box, (socket) => {
        const shape = finsetShape({ lengthM: 1.8, left: () => 0.3, right: () => 0.3, thicknessM: () => 0.1 });
        const front = { fin: "front", fromTailM: 0.5, fromRailM: 0.15, baseM: 0.04, box: socket };
        const plan = gateOf({ arrangement: "twin", boxes: "after-fill", set: [front] }, shape)!.boxes[0]!;
        const { cutOut, proudM, fillVolumeM3, fillVolumeLowM3, fillVolumeHighM3 } = plan;
        const pocketM3 = cutOut.lengthM * cutOut.widthM * (cutOut.depthM + proudM);
        expect(fillVolumeM3).toBeCloseTo(pocketM3 - socket.lengthM * socket.widthM * socket.depthM, 12);
        expect(fillVolumeLowM3).toBeGreaterThan(0);
        expect(fillVolumeM3).toBeGreaterThan(fillVolumeLowM3);
        expect(fillVolumeHighM3).toBeGreaterThan(fillVolumeM3);
      }),
      RUNS,
    );
  });
});
