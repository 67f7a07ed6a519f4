import type { Reader } from "../language/Reader";
import { tell } from "../language/tell";
import { tellText } from "../language/tellText";

/** What a step asks for beside its coat's own resin and cloth, in one line. */
export function haveReady(materials: readonly string[], reader: Reader): string {
  const t = tell(reader);
  return t`Have ready: ${materials.map((material) => tellText(material, reader)).join("; ")}`;
}
