import { type Accessor, Document, WebIO } from "@gltf-transform/core";
import type { Mesh } from "@lapline/engine";
import type { Solid } from "./Solid";

/** Shaped foam: a warm white, dull. */
const FOAM = { colour: [0.86, 0.84, 0.78, 1], roughness: 0.85 } as const;
/** The number that 16 bits keep for themselves (glTF 2.0, 3.7.2.1) is one more than the last vertex they can name. */
const MOST_IN_16_BITS = 65_535;

/**
 * The surveyed solid as a binary glTF 2.0 file in metres, for a viewer.
 *
 * The points themselves are turned from the board's frame into that of glTF (3.4: +Y up, +Z forward, -X right, right-handed):
 * its X is the board's y, so the surfer's left, its Y the board's z, its Z the board's x, tail to nose. No node turns anything.
 * Facets are flat, as they were surveyed: no normals are given. It holds no date, so equal boards give equal bytes.
 */
export async function solidGlb({ name, engine, mesh }: Solid): Promise<Uint8Array> {
  const document = new Document();
  document.getRoot().getAsset().generator = `Lapline ${engine}`;
  const buffer = document.createBuffer();
  const accessor = (
    type: Parameters<Accessor["setType"]>[0],
    array: Float32Array | Uint16Array | Uint32Array,
  ) => document.createAccessor().setType(type).setArray(array).setBuffer(buffer);
  const foam = document
    .createMaterial("shaped foam")
    .setBaseColorFactor([...FOAM.colour])
    .setMetallicFactor(0)
    .setRoughnessFactor(FOAM.roughness);
  const skin = document
    .createPrimitive()
    .setAttribute("POSITION", accessor("VEC3", turn(mesh.positions)))
    .setIndices(accessor("SCALAR", numbers(mesh)))
    .setMaterial(foam);
  const node = document.createNode(name).setMesh(document.createMesh(name).addPrimitive(skin));
  const scene = document.createScene(name).addChild(node);
  document.getRoot().setDefaultScene(scene);
  return new WebIO().writeBinary(document);
}

/** A cycle of the axes, which keeps right-handed right-handed. */
function turn(positions: Float64Array): Float32Array {
  const turned = new Float32Array(positions.length);
  for (let i = 0; i < positions.length; i += 3) {
    turned[i] = positions[i + 1] ?? 0;
    turned[i + 1] = positions[i + 2] ?? 0;
    turned[i + 2] = positions[i] ?? 0;
  }
  return turned;
}

function numbers({ positions, triangles }: Mesh): Uint16Array | Uint32Array {
  return positions.length / 3 <= MOST_IN_16_BITS ? Uint16Array.from(triangles) : Uint32Array.from(triangles);
}
