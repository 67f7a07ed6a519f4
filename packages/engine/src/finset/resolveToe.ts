import { MOST_TOE } from "../constants/finLimits";
import { say } from "../foundation/phrase";
import { angle, length } from "../foundation/quantity";
import { type Finding, finding } from "../foundation/stage";
import type { FilledFin } from "./FilledFins";
import type { ToeInput } from "./FinsInput";
import {
  type BaseLine,
  computeToeBesideNoseRad,
  computeToeBeyondNoseRad,
  computeToeForms,
  computeToeOverBaseRad,
} from "./ToeForms";

/** A trailing mark with its fin, before its toe is known. */
export interface ToeSpot {
  readonly fin: FilledFin;
  readonly path: string;
  readonly base: BaseLine;
}

export interface ToeRequest {
  readonly spot: ToeSpot;
  /** The other fins on the same side, by name. */
  readonly beside: ReadonlyMap<string, ToeSpot>;
  /** Names already followed through `meets`, so that a circle is seen. */
  readonly followed?: readonly string[];
}

/**
 * Gives the toe of one fin, in whatever way it was stated; none stated is parallel to the line (the caller says so).
 * @returns radians, positive when the front points to the line, or the finding that stops it
 */
export function resolveToe(request: ToeRequest): number | Finding {
  const { spot } = request;
  const toe = spot.fin.toe;
  if (toe === undefined) return 0;
  const toeRad = computeStatedRad(request, toe);
  if (typeof toeRad !== "number") return toeRad;
  if (Math.abs(toeRad) <= MOST_TOE.rad) return toeRad;
  return blocker(
    spot,
    "finset.toe-absurd",
    say`the toe of the ${spot.fin.fin} fin comes to ${angle(toeRad)}: a fin stands within a few degrees of the centreline, so look at its aim, its unit and its distance from the rail`,
  );
}

function computeStatedRad(request: ToeRequest, toe: ToeInput): number | Finding {
  switch (toe.kind) {
    case "angle":
      return toe.angleRad;
    case "aimBesideNose":
      return computeToeBesideNoseRad(request.spot.base, toe.offsetM);
    case "aimBeyondNose":
      return beyondNose(request.spot, toe.beyondM);
    case "overBase":
      return overBase(request.spot, toe.overM);
    case "meets":
      return meets(request, toe.fin);
  }
}

function beyondNose(spot: ToeSpot, beyondM: number): number | Finding {
  const aheadM = spot.base.noseUM + beyondM - spot.base.uM;
  if (aheadM > spot.base.baseM) return computeToeBeyondNoseRad(spot.base, beyondM);
  const leastM = spot.base.uM + spot.base.baseM - spot.base.noseUM;
  return blocker(
    spot,
    "finset.aim-behind-fin",
    say`the aim of the ${spot.fin.fin} fin lies ${length(-beyondM)} short of the nose tip, which is not ahead of the fin's own front: its line must meet the centreline more than ${length(leastM)} from the nose tip`,
  );
}

function overBase(spot: ToeSpot, overM: number): number | Finding {
  if (Math.abs(overM) < spot.base.baseM) return computeToeOverBaseRad(spot.base.baseM, overM);
  return blocker(
    spot,
    "finset.toe-absurd",
    say`the ${spot.fin.fin} fin is to toe ${length(overM)} over a base of ${length(spot.base.baseM)}: the front cannot come in by as much as the base is long`,
  );
}

/** The line runs to where the other fin's string ends: on the centreline beyond the nose, or beside the nose tip. */
function meets(request: ToeRequest, name: string): number | Finding {
  const { spot, beside, followed = [] } = request;
  const other = beside.get(name);
  if (other === undefined || followed.includes(name) || name === spot.fin.fin)
    return blocker(
      spot,
      "finset.meets-nothing",
      other === undefined
        ? say`the ${spot.fin.fin} fin's line is to meet that of "${name}", and there is no such fin on that side`
        : say`the ${spot.fin.fin} fin's line is to meet that of "${name}", which goes round in a circle: state the toe of one of them in another way`,
    );
  if (other.fin.toe?.kind === "aimBeyondNose") return beyondNose(spot, other.fin.toe.beyondM);
  const toeRad = resolveToe({ spot: other, beside, followed: [...followed, spot.fin.fin] });
  if (typeof toeRad !== "number") return toeRad;
  return computeToeBesideNoseRad(spot.base, computeToeForms(other.base, toeRad).aimBesideNoseM);
}

function blocker(spot: ToeSpot, code: string, says: Parameters<typeof finding>[3]): Finding {
  return finding("blocker", code, `${spot.path}.toe`, says);
}
