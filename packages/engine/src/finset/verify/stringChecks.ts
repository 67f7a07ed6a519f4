import { say } from "../../foundation/phrase";
import { angle, length } from "../../foundation/quantity";
import type { FinMark } from "../FinMark";
import { computeToeBesideNoseRad } from "../ToeForms";
import { buildReading, type CheckOf, type VerifyCheck } from "./VerifyCheck";
import { buildLength } from "./VerifyReading";
import { findLatest, type VerifyRequest } from "./VerifyRequest";

/**
 * The string over both marks of each side fin, read where it crosses the square at the nose tip.
 *
 * It is held to what the set-out's tolerance at one end of the base comes to at the nose: tolerance × reach / (b cos τ), by
 * similar triangles. What is out is cured at the leading mark, the trailing one held.
 */
export function buildStringChecks(request: VerifyRequest): readonly VerifyCheck[] {
  return request.marks.filter(({ side }) => side !== "centre").map((mark) => buildStringCheck(request, mark));
}

function buildStringCheck({ line, toleranceM, read }: VerifyRequest, mark: FinMark): VerifyCheck {
  const { baseM, toeRad, trailing, aimBesideNoseM } = mark;
  const reachM = line.noseFromTailM - trailing.fromTailM;
  const readM = findLatest(
    read.strings,
    ({ fin, side }) => fin === mark.fin && side === mark.side,
  )?.besideNoseM;
  const reading = buildLength({
    id: "beside-nose",
    targetM: aimBesideNoseM,
    toleranceM: (toleranceM * reachM) / (baseM * Math.cos(toeRad)),
    readM,
  });
  const what: CheckOf = {
    id: `string-${mark.id}`,
    matter: "string",
    how: "Stretch a string over the middle of both marks to the square at the nose tip, and read how far from the centreline it crosses.",
    fin: mark.fin,
    side: mark.side,
  };
  return buildReading(what, {
    lengths: [reading],
    cure: () => {
      const base = {
        uM: trailing.fromTailM,
        vM: trailing.fromCentrelineM,
        baseM,
        noseUM: line.noseFromTailM,
      };
      const asReadRad = computeToeBesideNoseRad(base, reading.readM ?? aimBesideNoseM);
      const leadingAcrossM = baseM * (Math.sin(asReadRad) - Math.sin(toeRad));
      const isOut = (reading.errorM ?? 0) > 0;
      return {
        correction: { end: "leading", leadingAcrossM },
        says: say`the string of the ${mark.id} fin crosses ${length(Math.abs(reading.errorM ?? 0), "fine")} too far ${isOut ? "outward" : "inward"} beside the nose, which is ${angle(Math.abs(asReadRad - toeRad), "fine")} too ${isOut ? "little" : "much"} toe: move its leading mark ${length(Math.abs(leadingAcrossM), "fine")} ${isOut ? "inward" : "outward"}`,
      };
    },
  });
}
