import type { Plan } from "@lapline/engine";
import type { Reader } from "../language/Reader";
import { zoneName } from "./sandWords";

type Zone = NonNullable<Plan["layup"]>["zones"][number];

export interface SkinGroup {
  /** Where the skin is like this, in the reader's words; the boxes together. */
  readonly names: readonly string[];
  readonly zone: Zone;
}

/** Zones whose skin comes out alike, together, in the order of the plan: a strip or a line serves for all of them. */
export function skinGroups(zones: readonly Zone[], reader: Reader): readonly SkinGroup[] {
  const groups: Array<{ names: string[]; zone: Zone }> = [];
  for (const zone of zones) {
    const name = zoneName(zone.id, reader);
    const group = groups.find((each) => isAlike(each.zone, zone));
    if (group === undefined) groups.push({ names: [name], zone });
    else if (!group.names.includes(name)) group.names.push(name);
  }
  return groups;
}

function isAlike(a: Zone, b: Zone): boolean {
  return (
    a.laminateThicknessM === b.laminateThicknessM &&
    a.fillThicknessM === b.fillThicknessM &&
    a.glossThicknessM === b.glossThicknessM
  );
}
