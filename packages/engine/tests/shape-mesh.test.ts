import { describe, expect, it } from "vitest";
import { planBuild } from "../src/index";
import { MESH_BOARDS, MESHES, readMesh } from "./fixtures/meshBoards";
import { surveyReference } from "./fixtures/referenceShape";
import { makeBoard } from "./fixtures/surveyTruth";

const { expected, tolerance } = MESHES;

describe("the board's mesh, by a library for solids (reference/shape/mesh.json)", () => {
  it("comes from every kind of tail", () => {
    expect([...new Set(MESH_BOARDS.map(({ inputs }) => inputs.tail.kind))].sort()).toEqual(
      ["square", "squash", "round", "pin", "swallow", "diamond"].sort(),
    );
  });

  it.each(MESH_BOARDS)("$name: watertight, one part, outside out", ({ inputs }) => {
    const solid = readMesh(inputs);
    expect(solid.status()).toBe("NoError");
    expect(solid.genus()).toBe(expected.genus);
    expect(solid.decompose().length).toBe(expected.parts);
    expect(solid.volume()).toBeGreaterThan(0);
  });

  it.each(MESH_BOARDS)("$name: the plan's surface", ({ inputs }) => {
    const solid = readMesh(inputs);
    const shape = planBuild(makeBoard(surveyReference(inputs))).shape!;
    const surfaceM2 = shape.deckAreaM2 + shape.bottomAreaM2 + shape.endAreaM2;
    expect(Math.abs(solid.surfaceArea() / surfaceM2 - 1)).toBeLessThanOrEqual(tolerance.areaRelative);
  });
});
