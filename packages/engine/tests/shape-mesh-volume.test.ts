import { describe, expect, it } from "vitest";
import { planBuild } from "../src/index";
import { MESH_BOARDS, MESHES, readMesh } from "./fixtures/meshBoards";
import { surveyReference } from "./fixtures/referenceShape";
import { makeBoard } from "./fixtures/surveyTruth";

const { tolerance } = MESHES;

describe("the volume of the board's mesh, by a library for solids (reference/shape/mesh.json)", () => {
  it.each(MESH_BOARDS)("$name", ({ inputs }) => {
    const { volumeM3 } = planBuild(makeBoard(surveyReference(inputs))).shape!;
    expect(Math.abs(readMesh(inputs).volume() / volumeM3 - 1)).toBeLessThanOrEqual(tolerance.volumeRelative);
  });
});
