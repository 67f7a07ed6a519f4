import { SEAL_POURED_KG_M2 } from "../constants/coatFilms";
import { LEFT_ON_TOOLS_KG } from "../constants/handling";
import { composeCoat } from "./composeCoat";
import type { CoatPlan, Face } from "./LayupPlan";
import type { Schedule } from "./Schedule";
import type { Skin } from "./Skin";

/** The laminating resin, thickened, squeegeed into one face's bare foam before the glass. */
export function computeSealCoat(schedule: Schedule, skin: Skin, face: Face): CoatPlan {
  const { areaM2 } = skin.faces[face];
  const { id, resin } = schedule.resins.laminate;
  return composeCoat({
    id: `seal-${face}`,
    kind: "seal",
    face,
    resin: id,
    areaM2,
    drivers: { pouredKgM2: SEAL_POURED_KG_M2, lossShare: resin.styreneLossShare },
    filler: schedule.fillers.seal,
    toolsKg: LEFT_ON_TOOLS_KG.film,
    terms: ({ pouredKgM2, lossShare }) => ({
      "into-foam": pouredKgM2 * (1 - lossShare) * areaM2,
      "styrene-lost": pouredKgM2 * lossShare * areaM2,
    }),
  });
}
