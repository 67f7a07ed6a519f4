import { CLOTHS } from "../constants/cloths";
import { FILLERS } from "../constants/fillers";
import { findFoam } from "../constants/foams";
import { RESINS } from "../constants/resins";
import { WOODS } from "../constants/woods";
import { type Phrase, say } from "../foundation/phrase";
import { density } from "../foundation/quantity";

const HARDENER = /-hardener$/;
const NAMED: ReadonlyArray<Readonly<Record<string, { readonly name: string }>>> = [
  CLOTHS,
  RESINS,
  FILLERS,
  WOODS,
];

/** What a material's id stands for, as one asks for it over the counter; a builder's own id is the builder's own word. */
export function nameMaterial(id: string): Phrase {
  if (HARDENER.test(id)) return say`${nameMaterial(id.replace(HARDENER, ""))} hardener`;
  const foam = findFoam(id);
  if (foam !== null) return say`${foam.name}, ${density(foam.densityKgM3.value)}`;
  const named = NAMED.find((records) => Object.hasOwn(records, id))?.[id];
  return say`${named?.name ?? id}`;
}
