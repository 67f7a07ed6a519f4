import { planBuild } from "@lapline/engine";
import { describe, expect, it } from "vitest";
import { readBoardFile } from "../src/readBoardFile";
import { editDemo } from "./editDemo";

const MATERIALS = {
  cloths: {
    "carbon-strip": { fibre: "carbon", mass: "200 g/m2", weave: "one-way", width: "50 mm" },
    "basalt-6": { name: "6 oz basalt", fibre: "basalt", mass: "6 oz/yd2", warpShare: "52 %" },
  },
  foams: { "shed-pu": { kind: "pu", density: "3 lb/ft3", uptake: "90 g/m2" } },
  woods: { ash: { density: "680 kg/m3" } },
  fillers: { cotton: { name: "cotton fibre", density: "1500 kg/m3", share: "12 %" } },
  tints: { "my-blue": { most: "8 %" } },
};

function read(path: readonly (string | number)[], value: unknown) {
  return readBoardFile(JSON.stringify(editDemo([...path], value)));
}

function problemsOf(path: readonly (string | number)[], value: unknown): string {
  const result = read(path, value);
  return result.ok ? "" : JSON.stringify(result.problems);
}

describe("cloths, foams and woods of the builder's own", () => {
  it("are read into SI, with what was left out left out", () => {
    const result = read(["materials"], MATERIALS);
    if (!result.ok) throw new Error(JSON.stringify(result.problems));
    const { cloths, foams, woods } = result.board.materials ?? {};
    expect(cloths?.["carbon-strip"]).toEqual({
      fibre: "carbon",
      arealMassKgM2: 0.2,
      weave: "one-way",
      rollWidthM: 0.05,
    });
    expect(cloths?.["basalt-6"]?.arealMassKgM2).toBeCloseTo(0.2034345, 7);
    // 1 lb/ft³ is 16.01846 kg/m³ (NIST SP 811, from memory).
    expect(foams?.["shed-pu"]?.densityKgM3).toBeCloseTo(48.05538, 4);
    expect(woods?.ash).toEqual({ densityKgM3: 680 });
  });

  it("fill the resin around boxes and colour a coat, in the plan and on the list of what to buy", () => {
    const file = editDemo(["materials"], MATERIALS) as { glass: object; shop: object };
    file.glass = {
      ...file.glass,
      fillers: { box: "cotton" },
      tint: { of: "my-blue", laminate: "7 %" },
    };
    file.shop = { ...file.shop, prices: { cotton: { price: 4, pack: "1 kg" } } };
    const result = readBoardFile(JSON.stringify(file));
    if (!result.ok) throw new Error(JSON.stringify(result.problems));
    const { layup, cost, findings, steps } = planBuild(result.board);
    const boxes = layup?.coats.find(({ id }) => id === "boxes");
    expect(boxes?.filler?.massKg).toBeCloseTo(0.12 * (boxes?.resinMassKg ?? 0), 12);
    expect(cost?.lines.map(({ id }) => id)).toEqual(expect.arrayContaining(["cotton", "my-blue"]));
    expect(cost?.lines.find(({ id }) => id === "cotton")?.packs).toBe(1);
    // 7 % is above what is usual and below what this tint's own sheet allows.
    expect(findings.map(({ code }) => code)).not.toContain("mix.much-tint");
    const pour = steps?.find(({ id }) => id === "boxes");
    expect(pour?.materials).toContain("cotton fibre");
    expect(pour?.cautions.join(" ")).toContain("respirator");
  });

  it("stand beside a vent, logos, a pinline and patches by place", () => {
    const patches = [{ face: "deck", cloth: "e-136", over: "tail" }];
    for (const [path, value] of [
      [["blank", "vent"], true],
      [["glass", "logos"], true],
      [["glass", "pinline"], false],
      [["glass", "patches"], patches],
    ] as const) {
      expect(problemsOf(path, value)).toBe("");
    }
  });

  it("can be named in the lay-up", () => {
    const file = editDemo(["materials"], MATERIALS) as { glass: { bottom: { layers: string[] } } };
    file.glass.bottom.layers = ["basalt-6"];
    const result = readBoardFile(JSON.stringify(file));
    if (!result.ok) throw new Error(JSON.stringify(result.problems));
    const piece = planBuild(result.board).layup?.pieces.find(({ id }) => id === "bottom-1");
    expect(piece?.cloth).toBe("basalt-6");
    expect((piece?.clothMassKg ?? 0) / (piece?.areaM2 ?? 1)).toBeCloseTo(0.2034345, 7);
  });

  it.each([
    [["materials"], { foams: { heavy: { kind: "pu", density: "3 kg/m3" } } }, "is the unit right"],
    [["materials"], { foams: { heavy: { kind: "pu", density: 48 } } }, "kg/m3"],
    [
      ["materials"],
      { foams: { heavy: { kind: "pu", density: "48 g/m2" } } },
      "materials.foams.heavy.density",
    ],
    [["materials"], { cloths: { thin: { fibre: "e-glass", mass: "4 g/m2" } } }, "is the unit right"],
    [["materials"], { cloths: { odd: { fibre: "glass", mass: "4 oz/yd2" } } }, "e-glass"],
    [["shop", "rolls"], { "e-136": { price: -2 } }, "price"],
    [["glass", "cutting"], "scissors", "rolled"],
    [["glass", "fillers"], { lid: "silica" }, "box"],
    [["materials"], { fillers: { flour: { density: "1500 kg/m3", share: 12 } } }, "%"],
    [["materials"], { tints: { blue: { most: "80 %" } } }, "materials.tints.blue.most"],
    [["glass", "logos"], "yes", "true or false"],
    [["blank", "vent"], "open", "true or false"],
    [["glass", "patches"], [{ face: "deck", cloth: "e-136", over: "middle" }], "strip"],
    [["glass", "deck"], { layers: ["e-136"], laps: ["50"] }, "unit"],
  ])("refuses what cannot be, at its place: %j %j", (path, value, words) => {
    expect(problemsOf(path, value)).toContain(words);
  });
});
