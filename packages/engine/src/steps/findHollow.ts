import { type Band, computeBand } from "../layup/computeBand";
import { findCloth } from "../layup/findCloth";
import type { LayupPlan } from "../layup/LayupPlan";
import type { SandThroughEntry } from "./Standing";
import type { StepsInput } from "./StepsInput";

/** What the paper took away over a spot. */
export interface Hollow {
  readonly depthM: Band;
  /** Bare foam lies at its floor. */
  readonly isFoam: boolean;
}

/**
 * How deep the spot lies under the face, where glass is gone: the film of the fill coat and the skin where foam shows, the film and the
 * outermost cloth where glass is cut. Both are the plan's own for the middle of that face, with their bands taken as independent.
 * @returns null where the face's skin is not known
 */
export function findHollow(board: StepsInput, layup: LayupPlan, entry: SandThroughEntry): Hollow | null {
  const zone = layup.zones.find(({ id }) => id === entry.face);
  if (zone === undefined) return null;
  const share = entry.shows === "foam" ? 1 : shareOfOutermost(board, layup, entry);
  const film = { value: zone.fillThicknessM, low: zone.fillThicknessLowM, high: zone.fillThicknessHighM };
  const skin = {
    value: zone.laminateThicknessM,
    low: zone.laminateThicknessLowM,
    high: zone.laminateThicknessHighM,
  };
  return {
    depthM: computeBand({ film, skin }, (values) => values.film + share * values.skin),
    isFoam: entry.shows === "foam",
  };
}

/** The share of the skin's thickness that the outermost full layer is; cloths of one resin ratio are as thick as they are heavy. */
function shareOfOutermost(board: StepsInput, layup: LayupPlan, { face }: SandThroughEntry): number {
  const full = layup.pieces.filter(({ coat, extent }) => coat === `laminate-${face}` && extent === null);
  const outermost = findCloth(full.at(-1)?.cloth ?? "", "", board.materials).value;
  const glassKgM2 = layup.zones.find(({ id }) => id === face)?.glassArealMassKgM2 ?? 0;
  return outermost === null || glassKgM2 === 0 ? 0 : outermost.arealMassKgM2.value / glassKgM2;
}
