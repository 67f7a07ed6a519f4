import { strFromU8, unzipSync } from "fflate";
import validator from "gltf-validator";
import { describe, expect, test } from "vitest";
import { solid3mf, solidGlb } from "../../src/solid";
import { countOpenEdges, measureSolid } from "./measureSolid";
import type { ReadSolid } from "./ReadSolid";
import { read3mf } from "./read3mf";
import { readGlb } from "./readGlb";
import { LOPSIDED, LOPSIDED_M, SOLID_BOARDS, type SolidBoard } from "./solidBoards";

/** The issue's own figure: 0.05 %. */
const VOLUME_RELATIVE = 5e-4;
/** Facets between two rings pass the widest point by less than this; ends are met. */
const BOX_M = 1e-4;

const TETRAHEDRON = {
  positions: Float64Array.from([0, 0, 0, 1, 0, 0, 0, 1, 0, 0, 0, 1]),
  triangles: Uint32Array.from([0, 2, 1, 0, 1, 3, 0, 3, 2, 1, 2, 3]),
};

/** Both files with how their axes and unit stand to the board's: metres, x tail to nose, y left, z up. */
const KINDS = [
  {
    kind: "3MF",
    perM: 1000,
    axes: [0, 1, 2],
    make: async ({ solid }: SolidBoard) => solid3mf(solid),
    read: read3mf,
  },
  // glTF 2.0, 3.4: "+Y as up, +Z as forward, and -X as right".
  { kind: "glTF", perM: 1, axes: [2, 0, 1], make: ({ solid }: SolidBoard) => solidGlb(solid), read: readGlb },
] as const;

/** Each made, read and measured once. */
const CASES = await Promise.all(
  KINDS.flatMap((kind) =>
    SOLID_BOARDS.map(async (board) => {
      const bytes = await kind.make(board);
      const solid = kind.read(bytes);
      return { ...kind, name: board.name, board, bytes, solid, measured: measureSolid(solid) };
    }),
  ),
);
const LOPSIDED_CASES = CASES.filter(({ board }) => board === LOPSIDED);

/** Height of the point nearest the nose (1) or the tail (-1). */
function heightAtEnd(
  { positions }: ReadSolid,
  [x, , z]: readonly [number, number, number],
  end: 1 | -1,
): number {
  let best = 0;
  for (let i = 0; i < positions.length; i += 3) {
    if (end * (positions[i + x] ?? 0) > end * (positions[best + x] ?? 0)) best = i;
  }
  return positions[best + z] ?? Number.NaN;
}

describe("the solid in a file, read back by other programs", () => {
  test.each(CASES)(
    "$kind, $name: closed, one part, the plan's volume",
    ({ board, solid, measured, perM }) => {
      expect(countOpenEdges(solid)).toBe(0);
      expect(measured).toMatchObject({ status: "NoError", parts: 1, genus: 0 });
      const relative = measured.volume / perM ** 3 / board.shape.volumeM3 - 1;
      expect(Math.abs(relative)).toBeLessThanOrEqual(VOLUME_RELATIVE);
    },
  );

  test.each(CASES)("$kind, $name: the plan's length and widths", ({ board, measured, perM, axes }) => {
    const { min, max } = measured;
    const [x, y] = axes;
    expect(Math.abs(min[x] / perM)).toBeLessThanOrEqual(BOX_M);
    expect(Math.abs(max[x] / perM - board.shape.lengthM)).toBeLessThanOrEqual(BOX_M);
    const most = (side: "leftM" | "rightM") => Math.max(...board.shape.outline.map((point) => point[side]));
    expect(Math.abs(max[y] / perM - most("leftM"))).toBeLessThanOrEqual(BOX_M);
    expect(Math.abs(-min[y] / perM - most("rightM"))).toBeLessThanOrEqual(BOX_M);
  });

  test.each(LOPSIDED_CASES)("$kind: left stays left, the nose is ahead and the deck up", (each) => {
    const { solid, measured, axes, perM } = each;
    const [, y, z] = axes;
    expect((measured.max[y] + measured.min[y]) / perM).toBeGreaterThan(LOPSIDED_M / 2);
    // The rocker lifts the nose more than the tail; the straightedge lies under the bottom at half length.
    const [noseUpM, tailUpM] = [heightAtEnd(solid, axes, 1) / perM, heightAtEnd(solid, axes, -1) / perM];
    expect(noseUpM).toBeGreaterThan(LOPSIDED.shape.noseRockerM - BOX_M);
    expect(noseUpM).toBeGreaterThan(tailUpM);
    expect(Math.abs(measured.min[z] / perM)).toBeLessThan(0.002);
  });

  test.each(LOPSIDED_CASES)("$kind: the same bytes for the same board", async ({ make, bytes }) => {
    expect(Buffer.compare(await make(LOPSIDED), bytes)).toBe(0);
  });
});

describe("a 3MF file", () => {
  const files = CASES.filter(({ kind }) => kind === "3MF");

  test.each(files)("$name: by the consortium's reader, strictly, without a warning", ({ board, bytes }) => {
    const read = read3mf(bytes);
    expect(read).toMatchObject({
      warnings: 0,
      isInMillimetres: true,
      isManifoldAndOriented: true,
      name: board.name,
      metadata: { Title: board.name, Application: `Lapline ${board.plan.engine}` },
    });
    // 3MF core specification, 3.3: what is placed should lie where no coordinate is negative.
    for (const least of read.placedFrom) expect(Math.abs(least)).toBeLessThan(1e-3);
  });

  test("is a package of three parts, none dated", () => {
    const parts = unzipSync(solid3mf(LOPSIDED.solid));
    expect(Object.keys(parts)).toEqual(["[Content_Types].xml", "_rels/.rels", "3D/3dmodel.model"]);
    const model = strFromU8(parts["3D/3dmodel.model"] ?? new Uint8Array());
    expect(model).toContain('unit="millimeter"');
    expect(model).not.toMatch(/Date|NaN|Infinity|="-0"|\de[-+]?\d/);
  });

  test("holds whatever a name holds", () => {
    const odd = 'Ł "5\'10" & <b>\u0007\ud800 \u{1f30a}';
    const { name, metadata } = read3mf(solid3mf({ ...LOPSIDED.solid, name: odd, mesh: TETRAHEDRON }));
    expect(name).toBe('Ł "5\'10" & <b>\ufffd\ufffd \u{1f30a}');
    expect(metadata.Title).toBe(name);
  });
});

describe("a glTF file", () => {
  const files = CASES.filter(({ kind }) => kind === "glTF");

  test.each(files)("$name: by the validator, without error, warning, info or hint", async (file) => {
    const report = await validator.validateBytes(file.bytes);
    expect(report.issues).toMatchObject({ numErrors: 0, numWarnings: 0, numInfos: 0, numHints: 0 });
    expect(report.info).toMatchObject({ version: "2.0", generator: `Lapline ${file.board.plan.engine}` });
  });

  test("is named after the board, and no node turns it", async () => {
    const { gltf } = readGlb(await solidGlb(LOPSIDED.solid));
    const [node] = gltf.nodes;
    expect([gltf.scenes[0]?.name, node?.name, gltf.meshes[0].name]).toEqual(Array(3).fill(LOPSIDED.name));
    expect([node?.rotation, node?.scale, node?.translation, node?.matrix]).toEqual(Array(4).fill(undefined));
  });
});
