import { listFoamIds, listWoods } from "./listBlanks";
import { listCloths } from "./listCloths";
import { listFillers } from "./listFillers";
import { listResins } from "./listResins";
import type { MaterialsInput } from "./MaterialsInput";

interface KnownMaterial {
  readonly id: string;
  /** A kind of material, never a make; the id where nothing better is known. */
  readonly name: string;
}

/** What a board file can name, its own records with it, in an order to choose from. */
export interface KnownMaterials {
  readonly cloths: readonly KnownMaterial[];
  readonly resins: readonly KnownMaterial[];
  readonly foams: readonly KnownMaterial[];
  readonly woods: readonly KnownMaterial[];
  readonly fillers: readonly KnownMaterial[];
  readonly tints: readonly KnownMaterial[];
}

/** Every material by id and name, generic ones and the builder's own. */
export function listMaterials(materials: MaterialsInput | undefined): KnownMaterials {
  const named = (records: Readonly<Record<string, { readonly name: string }>>) =>
    Object.entries(records).map(([id, { name }]) => ({ id, name }));
  return {
    cloths: named(listCloths(materials)),
    resins: named(listResins(materials)),
    foams: listFoamIds(materials).map((id) => ({ id, name: materials?.foams?.[id]?.name ?? id })),
    woods: named(listWoods(materials)),
    fillers: named(listFillers(materials)),
    tints: Object.entries(materials?.tints ?? {}).map(([id, { name }]) => ({ id, name: name ?? id })),
  };
}
