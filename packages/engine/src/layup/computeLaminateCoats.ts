import { LAP_DRIP_KG_M, LEFT_ON_TOOLS_KG } from "../constants/handling";
import { composeCoat } from "./composeCoat";
import { type CoatPlan, FACES, type Face, type PiecePlan } from "./LayupPlan";
import type { Schedule } from "./Schedule";
import type { Skin } from "./Skin";

/**
 * The laminating resin of each face that has cloth: glass mass times the maker's ratio, what the foam drinks, what leaves as
 * styrene, what drips from the laps and what tools and cups keep. The bottom is laid first, so its lap keeps that strip of the deck's
 * foam dry of the deck's resin.
 */
export function computeLaminateCoats(
  schedule: Schedule,
  skin: Skin,
  pieces: readonly PiecePlan[],
): CoatPlan[] {
  const laid = FACES.filter((face) => pieces.some((piece) => piece.coat === `laminate-${face}`));
  return laid.map((face) => computeLaminateCoat(schedule, skin, { face, pieces, isFirst: face === laid[0] }));
}

function computeLaminateCoat(
  schedule: Schedule,
  skin: Skin,
  on: { readonly face: Face; readonly pieces: readonly PiecePlan[]; readonly isFirst: boolean },
): CoatPlan {
  const { id, resin } = schedule.resins.laminate;
  const pieces = on.pieces.filter((piece) => piece.coat === `laminate-${on.face}`);
  const glassKg = sum(pieces.map((piece) => piece.clothMassKg));
  const lapsKg = sum(pieces.map((piece) => (piece.clothMassKg * piece.lapAreaM2) / piece.areaM2));
  const foamM2 = computeWettedFoam(schedule, skin, on);
  const lapEdgeM = schedule.faces[on.face].lapM > 0 ? skin.railLineM : 0;
  const { foam } = schedule;
  return composeCoat({
    id: `laminate-${on.face}`,
    kind: "laminate",
    face: on.face,
    resin: id,
    areaM2: skin.faces[on.face].areaM2 + schedule.faces[on.face].lapM * skin.railLineM,
    drivers: {
      ratio: schedule.ratio,
      uptakeKgM2: schedule.isSealed ? foam.sealedUptakeKgM2 : foam.uptakeKgM2,
      lossShare: resin.styreneLossShare,
      dripKgM: LAP_DRIP_KG_M[schedule.lapKind],
    },
    toolsKg: LEFT_ON_TOOLS_KG.laminate,
    terms: ({ ratio, uptakeKgM2, lossShare, dripKgM }) => {
      const keptKg = ratio * glassKg + uptakeKgM2 * foamM2;
      return {
        "in-glass": ratio * (glassKg - lapsKg),
        "in-laps": ratio * lapsKg,
        "into-foam": uptakeKgM2 * foamM2,
        "styrene-lost": (keptKg * lossShare) / (1 - lossShare),
        dripped: dripKgM * lapEdgeM,
      };
    },
  });
}

/** Foam that this face's resin is the first to reach; patches without a layer wet at most their face. */
function computeWettedFoam(
  schedule: Schedule,
  skin: Skin,
  on: { readonly face: Face; readonly pieces: readonly PiecePlan[]; readonly isFirst: boolean },
): number {
  const { areaM2 } = skin.faces[on.face];
  const { layers, lapM } = schedule.faces[on.face];
  if (layers.length === 0) {
    return Math.min(
      areaM2,
      sum(on.pieces.filter((piece) => piece.coat === `laminate-${on.face}`).map((piece) => piece.areaM2)),
    );
  }
  const otherFace: Face = on.face === "deck" ? "bottom" : "deck";
  const other = schedule.faces[otherFace];
  if (on.isFirst || other.layers.length === 0) return areaM2 + lapM * skin.railLineM;
  return areaM2 - other.lapM * skin.railLineM;
}

function sum(list: readonly number[]): number {
  return list.reduce((total, item) => total + item, 0);
}
