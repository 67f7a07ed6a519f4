import { type BoxFrame, buildBoxFrame, computeSkinM, placeBoxPoint } from "./BoxFrame";
import { computeFoamBesideM } from "./boxFoam";
import type { FinSpot } from "./FinSpot";
import { spotSide } from "./FinSpot";
import type { ClearancePlan } from "./FinsetPlan";
import { buildFootprint, computeGapM, type Polygon } from "./footprint";
import { computeToRailM } from "./railDistance";
import { type BoardPoint, type SetOutLine, sideSign } from "./SetOutLine";

/** What a fin covers, once its spot is known to be on the board. */
export interface Ground {
  readonly spot: FinSpot;
  readonly frame: BoxFrame;
  readonly footprint: Polygon;
}

export function buildGround(line: SetOutLine, spot: FinSpot): Ground {
  const frame = buildBoxFrame(line, spot);
  return { spot, frame, footprint: buildFootprint(frame) };
}

/** Gives the room around each box, or around the base of a fin without one. */
export function computeClearances(grounds: readonly Ground[]): readonly ClearancePlan[] {
  const nearest = findNearest(grounds);
  return grounds.map((ground) => {
    const { spot, frame, footprint } = ground;
    const next = nearest.get(spot.id);
    return {
      id: spot.id,
      foamBesideM: computeFoamBesideM(frame),
      toRailM: Math.min(...outerCorners(ground).map((corner) => computeSignedToRailM(frame, corner))),
      toStringerM:
        spot.side === "centre" ? null : Math.min(...footprint.map(({ yM }) => sideSign(spotSide(spot)) * yM)),
      toNextM: next?.gapM ?? null,
      next: next?.id ?? null,
      bowUnderBaseM: computeBowM(frame),
    };
  });
}

/** The corners that can be nearest to the rail; of a centre box all four. */
function outerCorners({ spot, footprint }: Ground): Polygon {
  return spot.side === "centre" ? footprint : [footprint[1]!, footprint[2]!];
}

/** Negative where the corner lies over the rail. */
function computeSignedToRailM({ line, spot }: BoxFrame, corner: BoardPoint): number {
  const { shape } = line;
  const side = spot.side === "centre" ? (corner.yM >= 0 ? "left" : "right") : spot.side;
  const toRailM = computeToRailM(shape, side, corner);
  const xM = Math.min(Math.max(corner.xM, 0), shape.lengthM);
  return sideSign(side) * corner.yM > shape.halfWidthM(side, xM) ? -toRailM : toRailM;
}

interface Neighbour {
  readonly id: string;
  readonly gapM: number;
}

/** The fin nearest to each, by its id; every two are held against each other once. */
function findNearest(grounds: readonly Ground[]): ReadonlyMap<string, Neighbour> {
  const nearest = new Map<string, Neighbour>();
  const offer = (to: Ground, { spot }: Ground, gapM: number) => {
    const known = nearest.get(to.spot.id);
    if (known === undefined || gapM < known.gapM) nearest.set(to.spot.id, { id: spot.id, gapM });
  };
  grounds.forEach((ground, i) => {
    for (const other of grounds.slice(i + 1)) {
      const gapM = computeGapM(ground.footprint, other.footprint);
      offer(ground, other, gapM);
      offer(other, ground, gapM);
    }
  });
  return nearest;
}

/** The bottom is smooth over a base, so quarters of it find the bow to a few hundredths of itself. */
const SAMPLES = 4;

/** Where the bottom is farthest from a straightedge laid along the base: positive where it is hollow. */
function computeBowM(frame: BoxFrame): number {
  const { baseM } = frame.spot.fin;
  const heightM = (share: number) =>
    computeSkinM(frame.line, "bottom", placeBoxPoint(frame, { alongM: share * baseM, outM: 0, inM: 0 }));
  const [rearM, frontM] = [heightM(0), heightM(1)];
  let worstM = 0;
  for (let i = 1; i < SAMPLES; i += 1) {
    const hereM = heightM(i / SAMPLES);
    if (hereM === null || rearM === null || frontM === null) continue;
    const bowM = hereM - (rearM + (i / SAMPLES) * (frontM - rearM));
    if (Math.abs(bowM) > Math.abs(worstM)) worstM = bowM;
  }
  return worstM;
}
