import type { Reader } from "../language/Reader";
import { tell } from "../language/tell";

/** What goes before the first surf beside the steps, and what is looked at after it. */
export function waterRules(reader: Reader): readonly string[] {
  const t = tell(reader);
  return [
    t`Not before the wax is on and the leash, its plug cured and pulled. No dark board lies in the sun; a vent is closed before the water.`,
    t`After the first surf: look for dings, along the edges of the boxes and about the leash plug; what shows foam dries before it is closed.`,
  ];
}
