import type { ReadSolid } from "./ReadSolid";

const GLB = { magic: 0x46546c67, json: 0x4e4f534a, binary: 0x004e4942, floats: 5126, shorts: 5123 };

interface Part {
  readonly name?: string;
}

interface Gltf {
  readonly asset: { readonly version: string; readonly generator: string };
  readonly scenes: readonly Part[];
  /** Only what a test looks for: a node that turns or moves would have one of these. */
  readonly nodes: readonly (Part & {
    rotation?: unknown;
    scale?: unknown;
    translation?: unknown;
    matrix?: unknown;
  })[];
  readonly meshes: readonly [
    Part & { readonly primitives: readonly [{ attributes: { POSITION: number }; indices: number }] },
  ];
  readonly accessors: ReadonlyArray<{
    readonly bufferView: number;
    readonly byteOffset?: number;
    readonly componentType: number;
    readonly count: number;
  }>;
  readonly bufferViews: ReadonlyArray<{ readonly byteOffset?: number; readonly byteStride?: number }>;
}

export interface ReadGlb extends ReadSolid {
  readonly gltf: Gltf;
}

/** Reads a binary glTF file by the specification's own words (glTF 2.0, chapter 4), without the library that wrote it. */
export function readGlb(bytes: Uint8Array): ReadGlb {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const word = (at: number) => view.getUint32(at, true);
  if (word(0) !== GLB.magic || word(4) !== 2 || word(8) !== bytes.length) throw new Error("no GLB header");
  const jsonBytes = word(12);
  if (word(16) !== GLB.json || word(24 + jsonBytes) !== GLB.binary) throw new Error("no GLB chunks");
  const gltf: Gltf = JSON.parse(new TextDecoder().decode(bytes.subarray(20, 20 + jsonBytes)));
  const binaryAt = 28 + jsonBytes;
  const [{ attributes, indices }] = gltf.meshes[0].primitives;
  const read = (index: number, perElement: number): number[] => {
    const accessor = gltf.accessors[index];
    const bufferView = gltf.bufferViews[accessor?.bufferView ?? -1];
    if (accessor === undefined || bufferView === undefined) throw new Error(`no accessor ${index}`);
    const isFloat = accessor.componentType === GLB.floats;
    if (!isFloat && accessor.componentType !== GLB.shorts) throw new Error("other numbers than expected");
    const size = isFloat ? 4 : 2;
    const stride = bufferView.byteStride ?? size * perElement;
    const from = binaryAt + (bufferView.byteOffset ?? 0) + (accessor.byteOffset ?? 0);
    return Array.from({ length: accessor.count * perElement }, (_, i) => {
      const at = from + Math.floor(i / perElement) * stride + (i % perElement) * size;
      return isFloat ? view.getFloat32(at, true) : view.getUint16(at, true);
    });
  };
  return {
    gltf,
    positions: Float64Array.from(read(attributes.POSITION, 3)),
    triangles: Uint32Array.from(read(indices, 1)),
  };
}
