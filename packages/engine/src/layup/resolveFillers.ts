import type { Filler } from "../constants/fillers";
import { listNearest } from "../foundation/findNearest";
import { say } from "../foundation/phrase";
import { quoteText } from "../foundation/quoteText";
import { type Finding, finding, type Stage } from "../foundation/stage";
import { listFillers } from "../materials/listFillers";
import type { MaterialsInput } from "../materials/MaterialsInput";
import { assume } from "../sources/assume";
import type { GlassInput } from "./GlassInput";

/** What thickens the resin around boxes and plug, and that of the seal; null where it goes in neat. */
export interface Fillers {
  readonly box: Filler | null;
  readonly seal: Filler | null;
}

/** The fillers that the board file names. None is taken by default: neat resin is said. */
export function resolveFillers(glass: GlassInput, materials: MaterialsInput | undefined): Stage<Fillers> {
  const known = listFillers(materials);
  const findings: Finding[] = [];
  const find = (use: keyof Fillers): Filler | null => {
    const id = glass.fillers?.[use];
    if (id === undefined) return null;
    if (Object.hasOwn(known, id)) return known[id]!;
    const near = listNearest(id, Object.keys(known)).join(", ");
    const says = say`no filler ${quoteText(id)} is known; the nearest are ${near}`;
    findings.push(finding("blocker", "layup.unknown-filler", `glass.fillers.${use}`, says));
    return null;
  };
  const value = { box: find("box"), seal: find("seal") };
  const tint = glass.tint?.of;
  const tints = Object.keys(materials?.tints ?? {});
  if (tint !== undefined && !tints.includes(tint)) {
    const says = say`no tint ${quoteText(tint)} is known: add it to the file's own tints, or leave its name away`;
    findings.push(finding("blocker", "layup.unknown-tint", "glass.tint.of", says));
  }
  const neat = assume(
    "glass.fillers.box",
    say`the resin around boxes and plug goes in without a filler`,
    "none was named; many builders stir milled glass fibre into it",
    "common-practice",
  );
  return {
    value: findings.length > 0 ? null : value,
    findings,
    assumptions: glass.fillers?.box === undefined ? [neat] : [],
  };
}
