import type { Cloth } from "../constants/cloths";
import { listNearest } from "../foundation/findNearest";
import { say } from "../foundation/phrase";
import { quoteText } from "../foundation/quoteText";
import { finding, type Stage } from "../foundation/stage";
import { listCloths } from "../materials/listCloths";
import type { MaterialsInput } from "../materials/MaterialsInput";

/** The cloth that an id names; null with a blocker naming the nearest ids where none does. */
export function findCloth(id: string, path: string, materials: MaterialsInput | undefined): Stage<Cloth> {
  const cloths = listCloths(materials);
  const cloth = Object.hasOwn(cloths, id) ? cloths[id] : undefined;
  if (cloth !== undefined) return { value: cloth, findings: [], assumptions: [] };
  const near = listNearest(id, Object.keys(cloths)).join(", ");
  const says = say`no cloth ${quoteText(id)} is known; the nearest are ${near}`;
  return { value: null, findings: [finding("blocker", "layup.unknown-cloth", path, says)], assumptions: [] };
}
