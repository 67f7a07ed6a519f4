import { FILLERS, type Filler } from "../constants/fillers";
import type { MaterialsInput } from "./MaterialsInput";

/** Every filler that this board file can name: the generic ones, and over them the builder's own. */
export function listFillers(materials: MaterialsInput | undefined): Readonly<Record<string, Filler>> {
  const own = Object.entries(materials?.fillers ?? {});
  if (own.length === 0) return FILLERS;
  const made = own.map(([id, { name, densityKgM3, shareByMass }]): [string, Filler] => [
    id,
    {
      id,
      name: name ?? id,
      densityKgM3: { value: densityKgM3, source: "own-sheet" },
      shareByMass: { value: shareByMass, source: "own-sheet" },
    },
  ]);
  return { ...FILLERS, ...Object.fromEntries(made) };
}
