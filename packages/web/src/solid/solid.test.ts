import { readFileSync } from "node:fs";
import { buildBoardMesh } from "@lapline/engine";
import { Vector3 } from "three";
import { describe, expect, test } from "vitest";
import { demoPlan } from "../../tests/demoPlan";
import { bandOf, divergingBands, sequentialBands } from "./Colouring";
import { listColourings } from "./colourings";
import { keyAct } from "./keyAct";
import { placeWords } from "./placeWords";
import { lineOf, placeFinder } from "./SolidPlace";
import { fitScale, turnOf } from "./solidViews";

const { plan, board } = demoPlan();
const { shape, sanding, layup } = plan;
if (shape === null || sanding === null || layup === null) throw new Error("the demo has all of them");
const [difference, film, skin] = listColourings(plan);
const mm = { units: "mm", language: "en" } as const;

describe("a value at a place", () => {
  test("is what an outline of straight lines has there, to a nanometre", () => {
    // Closed form: left 0.25 m, right 0.25 − 0.002 − 0.003 x, so left over right is 0.002 + 0.003 x.
    const outline = Array.from({ length: 41 }, (_, i) => ({
      fromTailM: i * 0.05,
      leftM: 0.25,
      rightM: 0.248 - 0.003 * i * 0.05,
    }));
    const [straight] = listColourings({ ...plan, shape: { ...shape, lengthM: 2, outline } });
    for (const fromTailM of [0, 0.013, 0.777, 1.5, 2]) {
      const place = { fromTailM, face: "deck", fromEdgeM: 0.1 } as const;
      const leftM = straight?.valueAt({ ...place, side: "left" });
      expect(leftM).toBeCloseTo(0.002 + 0.003 * fromTailM, 9);
      expect(straight?.valueAt({ ...place, side: "right" })).toBe(-(leftM ?? 0));
    }
  });

  test("is the plan's own at the plan's own places", () => {
    const worst = {
      fromTailM: shape.symmetry.worstFromTailM,
      side: "left",
      face: "deck",
      fromEdgeM: 0,
    } as const;
    expect(difference?.valueAt(worst)).toBeCloseTo(shape.symmetry.worstM, 5);
    for (const { fromTailM, side, remainingM } of sanding.places) {
      expect(film?.valueAt({ fromTailM, side, face: "deck", fromEdgeM: 0 })).toBeCloseTo(remainingM, 12);
      expect(film?.valueAt({ fromTailM, side, face: "bottom", fromEdgeM: 0 })).toBeCloseTo(remainingM, 12);
    }
    const flat = { fromTailM: 0.9, side: "right", fromEdgeM: 0.2 } as const;
    const zoneOf = (id: string) => layup.zones.find((zone) => zone.id === id);
    for (const face of ["deck", "bottom"] as const) {
      const left = sanding.zones.find(({ id }) => id === face)?.remainingM;
      expect(film?.valueAt({ ...flat, face })).toBe(left);
      const zone = zoneOf(face);
      expect(skin?.valueAt({ ...flat, face })).toBe(
        (zone?.laminateThicknessM ?? 0) + (zone?.fillThicknessM ?? 0),
      );
    }
    const foot = zoneOf("deck-foot");
    expect(skin?.valueAt({ ...flat, fromTailM: 0.2, face: "deck" })).toBe(
      (foot?.laminateThicknessM ?? 0) + (foot?.fillThicknessM ?? 0),
    );
  });

  test("belongs to the side, the face and the edge that a point of the mesh lies at", () => {
    const mesh = buildBoardMesh(board.survey);
    const placeOf = placeFinder(shape);
    const halfWidthOf = lineOf(shape.outline, ({ leftM }) => leftM);
    let edges = 0;
    for (let i = 0; i < (mesh?.positions.length ?? 0); i += 3 * 7) {
      const [x, y, z] = [0, 1, 2].map((k) => mesh?.positions[i + k] ?? 0) as [number, number, number];
      const place = placeOf(x, y, z);
      expect(place.side).toBe(y >= 0 ? "left" : "right");
      if (y > 0 && x > 0.2 && x < 1.5) {
        expect(place.fromEdgeM).toBeCloseTo(Math.max(halfWidthOf(x) - y, 0), 9);
        if (place.fromEdgeM < 1e-4) edges++;
      }
    }
    expect(edges).toBeGreaterThan(10);
    const middle = lineOf(shape.profile, ({ rockerM }) => rockerM)(0.9);
    expect(placeOf(0.9, 0, middle).face).toBe("bottom");
    expect(placeOf(0.9, 0, middle + shape.thicknessMaxM).face).toBe("deck");
  });

  test("is told in words with its place", () => {
    const { side, fromTailM } = sanding.worst ?? { side: "left", fromTailM: 0 };
    const words = placeWords(film!, { fromTailM, side, face: "deck", fromEdgeM: 0 }, { plan, reader: mm });
    expect(words).toMatch(/^(Left|Right) rail, \d+ mm from the tail: through, \d+ µm short\.$/);
    expect(words).toContain(`${Math.round(fromTailM * 1000)} mm`);
    expect(words).toContain(`${Math.round(-(sanding.worst?.remainingM ?? 0) * 1e6)} µm`);
  });
});

describe("a scale", () => {
  test.each([0.0001, 0.0011, 0.004, 0.02])(
    "about nought holds %d on both sides and is neutral in the middle",
    (mostM) => {
      const bands = divergingBands(mostM);
      expect(bands).toHaveLength(7);
      expect(bandOf(bands, 0)).toBe(3);
      expect(bands[3]?.fromM).toBeCloseTo(-(bands[3]?.toM ?? 0), 12);
      expect([5, 6]).toContain(bandOf(bands, mostM));
      expect(bandOf(bands, -mostM)).toBe(6 - bandOf(bands, mostM));
    },
  );

  test.each([
    [0, 92e-6],
    [346e-6, 773e-6],
    [5e-4, 5e-4],
  ])("from %d to %d holds both ends, without gaps, in at most six steps", (leastM, mostM) => {
    const bands = sequentialBands(leastM, mostM);
    expect(bands.length).toBeLessThanOrEqual(6);
    bands.slice(1).forEach(({ fromM }, i) => {
      expect(fromM).toBeCloseTo(bands[i]?.toM ?? 0, 12);
    });
    for (const valueM of [leastM, mostM]) {
      const band = bands[bandOf(bands, valueM)];
      expect(valueM).toBeGreaterThanOrEqual((band?.fromM ?? 0) - 1e-12);
      expect(valueM).toBeLessThan((band?.toM ?? 0) + 1e-12);
    }
  });

  test("is told apart without red and green: by lightness, or by blue against yellow", () => {
    const sequential = [1, 2, 3, 4, 5, 6].map((i) => labOf(`solid-s${i}`));
    sequential.slice(1).forEach(([lightness], i) => {
      expect((sequential[i]?.[0] ?? 0) - lightness).toBeGreaterThan(8);
    });
    const diverging = [1, 2, 3, 4, 5, 6, 7].map((i) => labOf(`solid-d${i}`));
    for (const i of [0, 1, 2]) {
      expect((diverging[i + 1]?.[0] ?? 0) - (diverging[i]?.[0] ?? 0)).toBeGreaterThan(8);
      expect((diverging[5 - i]?.[0] ?? 0) - (diverging[6 - i]?.[0] ?? 0)).toBeGreaterThan(8);
      expect(diverging[i]?.[1]).toBeLessThan(-10);
      expect(diverging[6 - i]?.[1]).toBeGreaterThan(10);
    }
    expect(Math.abs(diverging[3]?.[1] ?? 99)).toBeLessThan(6);
    for (const [, blueYellow] of sequential) expect(blueYellow).toBeGreaterThan(10);
    expect(labOf("solid-through")[1]).toBeLessThan(-40);
  });
});

/** CIE 1976 L* and b* under D65 from sRGB (IEC 61966-2-1; from memory). */
function labOf(token: string): readonly [lightness: number, blueYellow: number] {
  const css = readFileSync(new URL("../tokens.css", import.meta.url), "utf8");
  const hex = new RegExp(`--${token}: #([0-9a-f]{6});`).exec(css)?.[1];
  if (hex === undefined) throw new Error(`no token ${token}`);
  const [r, g, b] = [0, 2, 4].map((at) => {
    const share = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  }) as [number, number, number];
  const f = (t: number): number => (t > 0.008856 ? Math.cbrt(t) : 7.787 * t + 16 / 116);
  const y = f(0.2126 * r + 0.7152 * g + 0.0722 * b);
  const z = f((0.0193 * r + 0.1192 * g + 0.9505 * b) / 1.0888);
  return [116 * y - 16, 200 * (y - z)];
}

describe("a view", () => {
  const seen = (
    view: "deck" | "bottom" | "side",
    stands: boolean,
    [x, y, z]: readonly [number, number, number],
  ) =>
    new Vector3(x, y, z)
      .applyQuaternion(turnOf(view, stands))
      .toArray()
      .map((value) => Math.round(value) || 0);

  test("has the nose to the right, or up, and left where it belongs", () => {
    expect(seen("deck", false, [1, 0, 0])).toEqual([1, 0, 0]);
    expect(seen("deck", false, [0, 1, 0])).toEqual([0, 1, 0]);
    expect(seen("deck", true, [1, 0, 0])).toEqual([0, 1, 0]);
    expect(seen("deck", true, [0, 1, 0])).toEqual([-1, 0, 0]);
    expect(seen("bottom", false, [0, 0, -1])).toEqual([0, 0, 1]);
    expect(seen("bottom", false, [0, 1, 0])).toEqual([0, -1, 0]);
    expect(seen("side", false, [0, 0, 1])).toEqual([0, 1, 0]);
    expect(seen("side", false, [0, -1, 0])).toEqual([0, 0, 1]);
  });

  test("holds the whole board", () => {
    const size = { x: 1.8, y: 0.5, z: 0.15 };
    expect(1.8 * fitScale({ x: 1232, y: 448 }, size, false)).toBeLessThan(1232);
    expect(0.5 * fitScale({ x: 1232, y: 448 }, size, false)).toBeLessThan(448);
    expect(1.8 * fitScale({ x: 328, y: 448 }, size, true)).toBeLessThan(448);
  });

  test("is turned, moved and made larger by keys, and leaves other keys alone", () => {
    const done: string[] = [];
    const solid = {
      turn: (right: number, down: number) => done.push(`turn ${Math.sign(right)} ${Math.sign(down)}`),
      move: (right: number, down: number) => done.push(`move ${Math.sign(right)} ${Math.sign(down)}`),
      zoom: (factor: number) => done.push(factor > 1 ? "nearer" : "further"),
      show: (view: string) => done.push(view),
    };
    for (const key of ["ArrowLeft", "ArrowDown", "+", "-", "0"]) expect(keyAct(solid, key, false)).toBe(true);
    expect(keyAct(solid, "ArrowUp", true)).toBe(true);
    expect(keyAct(solid, "Tab", false)).toBe(false);
    expect(done).toEqual(["turn -1 0", "turn 0 1", "nearer", "further", "whole", "move 0 -1"]);
  });
});
