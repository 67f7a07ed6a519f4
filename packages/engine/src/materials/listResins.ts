import type { Resin } from "../constants/Resin";
import { RESINS } from "../constants/resins";
import type { MaterialsInput } from "./MaterialsInput";
import { makeOwnResin } from "./makeOwnResin";

/** Every resin that this board file can name: the generic ones, and over them the builder's own. */
export function listResins(materials: MaterialsInput | undefined): Readonly<Record<string, Resin>> {
  const own = Object.entries(materials?.resins ?? {});
  if (own.length === 0) return RESINS;
  return { ...RESINS, ...Object.fromEntries(own.map(([id, input]) => [id, makeOwnResin(id, input)])) };
}

/** The resin of that id; undefined where none is known. */
export function findResin(materials: MaterialsInput | undefined, id: string | undefined): Resin | undefined {
  const resins = listResins(materials);
  return id !== undefined && Object.hasOwn(resins, id) ? resins[id] : undefined;
}
