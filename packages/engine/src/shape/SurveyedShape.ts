import { lameArea } from "../geometry/lameCurve";
import type { RockerCurve } from "../survey/RockerCurve";
import type { SectionProfile } from "../survey/SectionProfile";
import type { Side } from "../survey/Side";
import type { Survey } from "../survey/Survey";
import type { BoardShape } from "./BoardShape";
import { computeSolid, type Solid } from "./computeSolid";
import type { ThicknessCurve } from "./fitThickness";
import type { OutlineCurve } from "./OutlineCurve";
import { HalfSection } from "./Section";

/** Intervals across one face of one side when its length along the skin is summed; true to 0.05 %. */
const GIRTH_INTERVALS = 24;

/** The fitted curves put together: everything about the board that is a function of the distance from the tail. */
export class SurveyedShape implements Omit<BoardShape, "plan"> {
  readonly lengthM: number;
  readonly rocker: RockerCurve;
  readonly sections: SectionProfile;
  readonly solid: Solid;

  constructor(
    private readonly survey: Survey,
    readonly outline: OutlineCurve,
    readonly thickness: ThicknessCurve,
  ) {
    this.lengthM = survey.lengthM;
    this.rocker = survey.rocker;
    this.sections = survey.sections;
    this.solid = computeSolid(this);
  }

  halfWidthM(side: Side, xM: number): number {
    return this.outline.halfWidthM(side, xM);
  }

  halfWidthSlope(side: Side, xM: number): number {
    return this.outline.halfWidthSlope(side, xM);
  }

  notchHalfWidthM(xM: number): number {
    const { kind, widthM = 0, depthM = 0 } = this.survey.tail;
    if (kind !== "swallow" || xM >= depthM) return 0;
    return (widthM / 2) * (1 - Math.max(xM, 0) / depthM);
  }

  thicknessM(xM: number): number {
    return this.thickness.thicknessM(xM);
  }

  rockerM(xM: number): number {
    return this.rocker.heightM(xM);
  }

  rockerSlope(xM: number): number {
    return this.rocker.slope(xM);
  }

  tapeFromStraightM(xM: number): number {
    return this.rocker.tapeFromStraightM(xM);
  }

  straightFromTapeM(tapeM: number): number {
    return this.rocker.straightFromTapeM(tapeM);
  }

  centrelineM(xM: number): number {
    return this.outline.shiftM + this.outline.skewM * ((2 * xM) / this.lengthM - 1);
  }

  twistRad(xM: number): number {
    return this.survey.twistRad * (0.5 - xM / this.lengthM);
  }

  /** Places where the outline breaks: a swallow's crotch, a diamond's corners. */
  cornersM(): readonly number[] {
    const { kind, depthM = 0 } = this.survey.tail;
    return (kind === "swallow" || kind === "diamond") && depthM > 0 ? [depthM] : [];
  }

  section(side: Side, xM: number): HalfSection {
    return new HalfSection(this.halfWidthM(side, xM), this.thicknessM(xM), this.sections.at(xM));
  }

  deckHeightM(side: Side, xM: number, yM: number): number {
    return this.baseM(xM) + this.section(side, xM).deckM(yM);
  }

  bottomHeightM(side: Side, xM: number, yM: number): number {
    return this.baseM(xM) + this.section(side, xM).bottomM(yM);
  }

  girthM(side: Side, face: "deck" | "bottom", xM: number): number {
    return this.section(side, xM).girthM(face, GIRTH_INTERVALS);
  }

  volumeAtDeckFullnessM3(deckFullness: number): number {
    const { volumeM3, overRailM3, overRailBlockM3 } = this.solid;
    return volumeM3 - overRailM3 + overRailBlockM3 * lameArea(deckFullness);
  }

  /** Height of the rails' lowest plane at x: the rocker is measured at the centreline, which a concave lifts. */
  baseM(xM: number): number {
    return this.rockerM(xM) - this.sections.at(xM).concaveM;
  }
}
