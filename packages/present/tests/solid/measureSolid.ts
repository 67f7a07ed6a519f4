import ManifoldModule from "manifold-3d";
import type { ReadSolid } from "./ReadSolid";

const solids = await ManifoldModule();
solids.setup();

/** What a general library for solids makes of a mesh: whether it is one closed solid, and its volume in the mesh's unit. */
export function measureSolid({ positions, triangles }: ReadSolid) {
  const solid = new solids.Manifold(
    new solids.Mesh({ numProp: 3, vertProperties: Float32Array.from(positions), triVerts: triangles }),
  );
  const { min, max } = solid.boundingBox();
  return {
    status: solid.status(),
    parts: solid.decompose().length,
    genus: solid.genus(),
    volume: solid.volume(),
    min,
    max,
  };
}

/** Edges that are not run along once in each direction: none in a closed mesh whose triangles all face outwards. */
export function countOpenEdges({ positions, triangles }: ReadSolid): number {
  const numbers = positions.length / 3;
  const runs = new Map<number, number>();
  for (let i = 0; i < triangles.length; i++) {
    const from = triangles[i] ?? 0;
    const to = triangles[i % 3 === 2 ? i - 2 : i + 1] ?? 0;
    runs.set(from * numbers + to, (runs.get(from * numbers + to) ?? 0) + 1);
  }
  const back = (edge: number) => (edge % numbers) * numbers + Math.floor(edge / numbers);
  return [...runs].filter(([edge, count]) => count !== 1 || runs.get(back(edge)) !== 1).length;
}
