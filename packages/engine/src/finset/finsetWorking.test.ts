import { describe, expect, it } from "vitest";
import { finsetShape } from "../../tests/fixtures/finsetShape";
import { toldText } from "../../tests/fixtures/toldText";
import { buildFinset } from "./buildFinset";
import type { FinsInput } from "./FinsInput";
import { finsetWorking } from "./finsetWorking";

const box = { lengthM: 0.13, widthM: 0.02, depthM: 0.02 };
const fins: FinsInput = {
  arrangement: "quad",
  fromTailOf: "crotch",
  set: [
    {
      fin: "front",
      fromTailM: 0.2,
      fromRailM: 0.04,
      baseM: 0.11,
      toe: { kind: "aimBesideNose", offsetM: 0.07 },
      cantRad: 0.1,
      depthM: 0.115,
      sweepRad: 0.6,
      foil: { kind: "flat-inside", thickness: 0.08 },
      box,
    },
    { fin: "rear", fromTailM: 0.04, fromRailM: 0.08, baseM: 0.1, toe: { kind: "meets", fin: "front" }, box },
  ],
  leashPlug: { fromTailM: 0.08, fromCentrelineM: 0.12, side: "right", diameterM: 0.028, depthM: 0.02 },
  asSet: (["left", "right"] as const).map((side) => ({
    fin: "front",
    side,
    on: "fill" as const,
    trailing: { fromTailM: 0.201, fromCentrelineM: 0.16 },
    leading: { fromTailM: 0.311, fromCentrelineM: 0.154 },
    cantRad: 0.12,
  })),
  verify: {
    strings: [{ fin: "front", side: "left", besideNoseM: 0.1 }],
    diagonals: [{ fin: "front", from: "nose", to: "trailing", leftM: 1.5, rightM: 1.49 }],
    cantBlocks: [{ fin: "front", cantRad: 0.13 }],
    depthStops: [{ fin: "front", depthM: 0.025 }],
    proud: [{ fin: "front", heightM: -0.001 }],
  },
};
const shape = finsetShape({
  lengthM: 1.8,
  left: () => 0.2,
  right: () => 0.2,
  notch: { halfWidthM: 0.05, depthM: 0.08 },
});
const { value } = buildFinset({ ...fins, boxes: "after-laminate" }, shape);
const context = { plan: { finset: value, shape: shape.plan }, board: { fins } };
const glassedOn = buildFinset({ ...fins, boxes: "glassed-on" }, shape).value;

interface Leaf {
  readonly path: string;
  readonly ids: readonly string[];
}

/** Every number of the plan, its path with emptied brackets and the ids that stood in them. */
function leaves(part: unknown, path: string, ids: readonly string[]): readonly Leaf[] {
  if (typeof part === "number") return [{ path, ids }];
  if (part === null || typeof part !== "object") return [];
  if (Array.isArray(part))
    return part.flatMap((element: { readonly id: string }) =>
      leaves(element, `${path}[]`, [...ids, element.id]),
    );
  return Object.entries(part).flatMap(([key, inner]) => leaves(inner, `${path}.${key}`, ids));
}

describe("the working of the fins' numbers", () => {
  // No one plan has boxes and glassed-on fins.
  const found = [
    ...leaves(value, "finset", []),
    ...leaves(glassedOn?.verify.glassedOn, "finset.verify.glassedOn", []),
    ...leaves(glassedOn?.verify.checks, "finset.verify.checks", []),
  ];

  it("of a toe that meets another fin's line gives that line's aim", () => {
    const { inputs } = finsetWorking["finset.marks[].toeRad"]!;
    const aim = inputs(context, ["rear-left"]).find(({ name }) =>
      toldText(name).startsWith("o, where that line"),
    );
    const met = value?.marks.find(({ id }) => id === "front-left");
    expect(aim?.value).toMatchObject({ dimension: "length", value: met?.aimBesideNoseM, grain: "fine" });
  });

  it("is there for every number of plans that have them all between them", () => {
    const paths = new Set(found.map(({ path }) => path));
    expect([...paths].filter((path) => finsetWorking[path] === undefined)).toEqual([]);
    expect(Object.keys(finsetWorking).filter((path) => !paths.has(path))).toEqual([]);
  });

  it("gives words, a formula, a source and inputs that can be shown", () => {
    for (const { path, ids } of found) {
      const working = finsetWorking[path]!;
      expect(toldText(working.words), path).toMatch(/\.$/);
      expect(working.formula.length, path).toBeGreaterThan(0);
      expect(working.sources.length, path).toBeGreaterThan(0);
      for (const { name, value: shown } of working.inputs(context, ids)) {
        expect(name.length, path).toBeGreaterThan(0);
        if (typeof shown === "object" && "dimension" in shown)
          expect(Number.isFinite(shown.value), `${path}: ${name}`).toBe(true);
      }
    }
  });

  it("shows the string's offset where the toe was stated by it", () => {
    const inputs = finsetWorking["finset.marks[].toeRad"]!.inputs(context, ["front-left"]);
    expect(inputs.find(({ name }) => toldText(name).startsWith("o,"))?.value).toMatchObject({ value: 0.07 });
  });

  it("shows what the depth stop's target is made of, and nothing of the kind for a string", () => {
    const target = finsetWorking["finset.verify.checks[].lengths[].targetM"]!;
    const names = (ids: readonly string[]) => target.inputs(context, ids).map(({ name }) => name);
    expect(names(["depth-stop-front", "depth"])).toEqual(["D, box", "g − p, room for resin less proud"]);
    expect(names(["string-front-left", "beside-nose"])).toEqual(["aim beside the nose"]);
  });

  it("shows nothing where the plan has no fins", () => {
    const empty = { plan: { finset: null, shape: null }, board: {} };
    for (const working of Object.values(finsetWorking))
      expect(working.inputs(empty, ["front-left"])).toEqual([]);
  });
});
