import { FOAM_EXAMPLES, FOAM_KINDS, type Foam, findFoam } from "../constants/foams";
import { WOODS, type Wood } from "../constants/woods";
import type { MaterialsInput } from "./MaterialsInput";
import type { OwnFoamInput } from "./OwnBlankInput";

/** The foam of that id: the builder's own record, or what the id itself says (`pu-48`); null where neither knows it. */
export function findFoamIn(materials: MaterialsInput | undefined, id: string): Foam | null {
  const foams = materials?.foams ?? {};
  return Object.hasOwn(foams, id) ? makeOwnFoam(id, foams[id]!) : findFoam(id);
}

/** Ids to offer where a foam is not known. */
export function listFoamIds(materials: MaterialsInput | undefined): readonly string[] {
  return [...Object.keys(materials?.foams ?? {}), ...FOAM_EXAMPLES];
}

/** Every wood that this board file can name. */
export function listWoods(materials: MaterialsInput | undefined): Readonly<Record<string, Wood>> {
  const own = Object.entries(materials?.woods ?? {});
  if (own.length === 0) return WOODS;
  const made = own.map(([id, { name, densityKgM3 }]): [string, Wood] => [
    id,
    { id, name: name ?? id, densityKgM3: { value: densityKgM3, source: "own-sheet" } },
  ]);
  return { ...WOODS, ...Object.fromEntries(made) };
}

function makeOwnFoam(id: string, input: OwnFoamInput): Foam {
  const kind = FOAM_KINDS[input.kind];
  const spread = kind.sold.spreadShare * input.densityKgM3;
  return {
    id,
    name: input.name ?? id,
    kind: input.kind,
    densityKgM3: {
      value: input.densityKgM3,
      low: input.densityKgM3 - spread,
      high: input.densityKgM3 + spread,
      source: "own-sheet",
    },
    uptakeKgM2:
      input.uptakeKgM2 === undefined ? kind.uptakeKgM2 : { value: input.uptakeKgM2, source: "own-sheet" },
    sealedUptakeKgM2:
      input.sealedUptakeKgM2 === undefined
        ? kind.sealedUptakeKgM2
        : { value: input.sealedUptakeKgM2, source: "own-sheet" },
  };
}
