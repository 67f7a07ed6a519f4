import { CLOTHS, type Cloth } from "../constants/cloths";
import { listNearest } from "../foundation/findNearest";
import { say } from "../foundation/phrase";
import { quoteText } from "../foundation/quoteText";
import { finding, type Stage } from "../foundation/stage";

/** The cloth that an id names; null with a blocker naming the nearest ids where none does. */
export function findCloth(id: string, path: string): Stage<Cloth> {
  const cloth = Object.hasOwn(CLOTHS, id) ? CLOTHS[id] : undefined;
  if (cloth !== undefined) return { value: cloth, findings: [], assumptions: [] };
  const near = listNearest(id, Object.keys(CLOTHS)).join(", ");
  const says = say`no cloth ${quoteText(id)} is known; the nearest are ${near}`;
  return { value: null, findings: [finding("blocker", "layup.unknown-cloth", path, says)], assumptions: [] };
}
