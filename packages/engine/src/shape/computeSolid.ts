import { SIDES, type Side } from "../survey/Side";
import type { HalfSection } from "./Section";
import { stationsAlong } from "./stationsAlong";

export interface Solid {
  readonly volumeM3: number;
  readonly planAreaM2: number;
  /** What of the volume lies between the rails' widest line and the deck, and the block around that. */
  readonly overRailM3: number;
  readonly overRailBlockM3: number;
  /** dV/dt at each place: what a thickness error there is worth. */
  readonly perThickness: ReadonlyArray<{ readonly xM: number; readonly weight: number }>;
}

/** What the quadrature asks of a board. */
interface SectionedBoard {
  readonly lengthM: number;
  section(side: Side, xM: number): HalfSection;
  notchHalfWidthM(xM: number): number;
  thicknessM(xM: number): number;
}

/** At 72 stations volume and plan area are true to 0.001 % of a closed form. */
const STATIONS = 72;
const NOTCH_POINTS = 8;

/**
 * Volume and plan area of the surveyed board: closed-form section areas, integrated along the board by the midpoint
 * rule in θ. A swallow's notch is taken out. The half-widths, thickness and sections are those of the survey.
 */
export function computeSolid(shape: SectionedBoard): Solid {
  let volumeM3 = 0;
  let planAreaM2 = 0;
  let overRailM3 = 0;
  let overRailBlockM3 = 0;
  const perThickness: Array<{ xM: number; weight: number }> = [];
  for (const { xM, weightM } of stationsAlong(shape.lengthM, STATIONS)) {
    let areaM2 = 0;
    for (const side of SIDES) {
      const section = shape.section(side, xM);
      const notchM = Math.min(shape.notchHalfWidthM(xM), section.halfWidthM);
      planAreaM2 += (section.halfWidthM - notchM) * weightM;
      areaM2 += section.areaM2();
      const blockM2 = section.halfWidthM * (section.heightM - section.apexM);
      overRailBlockM3 += blockM2 * weightM;
      overRailM3 += blockM2 * section.deckShare() * weightM;
      for (let i = 0; notchM > 0 && i < NOTCH_POINTS; i++) {
        const yM = ((i + 0.5) * notchM) / NOTCH_POINTS;
        areaM2 -= ((section.deckM(yM) - section.bottomM(yM)) * notchM) / NOTCH_POINTS;
      }
    }
    volumeM3 += areaM2 * weightM;
    perThickness.push({ xM, weight: (areaM2 * weightM) / shape.thicknessM(xM) });
  }
  return { volumeM3, planAreaM2, overRailM3, overRailBlockM3, perThickness };
}
