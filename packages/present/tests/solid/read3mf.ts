import lib3mf, { type Held, type MeshObject } from "@3mfconsortium/lib3mf";
import type { ReadSolid } from "./ReadSolid";

/** The consortium's own implementation of the 3MF specification. */
const reference = await lib3mf();

export interface Read3mf extends ReadSolid {
  readonly warnings: number;
  readonly isInMillimetres: boolean;
  readonly isManifoldAndOriented: boolean;
  readonly name: string;
  readonly metadata: Readonly<Record<string, string>>;
  /** Least coordinates of what is placed. */
  readonly placedFrom: readonly number[];
}

/** Reads a 3MF file strictly: whatever is not as the specification has it is refused or counted as a warning. */
export function read3mf(bytes: Uint8Array): Read3mf {
  const held: Held[] = [];
  const hold = <T extends Held>(object: T): T => {
    held.push(object);
    return object;
  };
  reference.FS.writeFile("/read.3mf", bytes);
  const model = hold(hold(new reference.CWrapper()).CreateModel());
  const reader = hold(model.QueryReader("3mf"));
  reader.SetStrictModeActive(true);
  reader.ReadFromFile("/read.3mf");
  const objects = hold(model.GetMeshObjects());
  objects.MoveNext();
  const mesh = hold(objects.GetCurrentMeshObject());
  if (objects.MoveNext()) throw new Error("one object was expected");
  const box = hold(model.GetOutbox());
  const group = hold(model.GetMetaDataGroup());
  const metadata = Array.from({ length: group.GetMetaDataCount() }, (_, i) => hold(group.GetMetaData(i)));
  const read = {
    warnings: reader.GetWarningCount(),
    isInMillimetres: model.GetUnit() === reference.eModelUnit.MilliMeter,
    isManifoldAndOriented: mesh.IsManifoldAndOriented(),
    name: mesh.GetName(),
    metadata: Object.fromEntries(metadata.map((each) => [each.GetName(), each.GetValue()])),
    placedFrom: [box.get_MinCoordinate0(), box.get_MinCoordinate1(), box.get_MinCoordinate2()],
    positions: Float64Array.from(points(mesh)),
    triangles: Uint32Array.from(corners(mesh)),
  };
  for (const object of held.reverse()) object.delete();
  return read;
}

function* points(mesh: MeshObject): Generator<number> {
  for (let i = 0; i < mesh.GetVertexCount(); i++) {
    const point = mesh.GetVertex(i);
    yield* [point.get_Coordinates0(), point.get_Coordinates1(), point.get_Coordinates2()];
    point.delete();
  }
}

function* corners(mesh: MeshObject): Generator<number> {
  for (let i = 0; i < mesh.GetTriangleCount(); i++) {
    const triangle = mesh.GetTriangle(i);
    yield* [triangle.get_Indices0(), triangle.get_Indices1(), triangle.get_Indices2()];
    triangle.delete();
  }
}
