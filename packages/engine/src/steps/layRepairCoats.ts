import { FILL_FILM } from "../constants/coatFilms";
import { LEFT_ON_TOOLS_KG } from "../constants/handling";
import type { Resin } from "../constants/Resin";
import type { Sourced } from "../constants/Sourced";
import { LEAST_IN_CUP_KG } from "../constants/workTimes";
import { discM2 } from "../geometry/discM2";
import { composeCoat } from "../layup/composeCoat";
import type { CoatPlan, LayupPlan } from "../layup/LayupPlan";
import { findFoamIn } from "../materials/listBlanks";
import { findResin } from "../materials/listResins";
import type { Hollow } from "./findHollow";
import type { RepairLayerPlan } from "./RepairPlan";
import type { SandThrough } from "./Standing";
import type { StepsInput } from "./StepsInput";

const NONE: Sourced = { value: 0, source: "convention" };

/**
 * The patches' resin: what the glass holds, what makes the hollow level under it, what bare foam drinks, and what styrene, brush and cup
 * take, by the shares of the laminate coat. Sanding opens a seal too, so the foam that shows drinks as bare foam does.
 */
export function layPatchCoat(
  board: StepsInput,
  layup: LayupPlan,
  of: {
    readonly through: SandThrough;
    readonly acrossM: number;
    readonly layers: readonly RepairLayerPlan[];
    readonly hollow: Hollow | null;
  },
): CoatPlan {
  const { entry, number } = of.through;
  const { id, resin } = resinOf(board, layup, ["laminate", entry.face]);
  const glassKg = of.layers.reduce((sumKg, layer) => sumKg + layer.clothMassKg, 0);
  const spotM2 = discM2(entry.sizeM);
  const foam = of.hollow?.isFoam === true ? findFoamIn(board.materials, board.blank?.foam ?? "") : null;
  const { resinRatio: value, resinRatioLow: low, resinRatioHigh: high } = layup;
  const coat = composeCoat({
    id: `repair-${number}-patch`,
    kind: "repair",
    face: entry.face,
    resin: id,
    areaM2: discM2(of.acrossM),
    drivers: {
      ratio: { value, low, high },
      depthM: of.hollow?.depthM ?? NONE,
      densityKgM3: resin?.curedDensityKgM3 ?? NONE,
      uptakeKgM2: foam?.uptakeKgM2 ?? NONE,
      lossShare: resin?.styreneLossShare ?? NONE,
    },
    toolsKg: LEFT_ON_TOOLS_KG.pour,
    terms: ({ ratio, depthM, densityKgM3, uptakeKgM2, lossShare }) => {
      const inGlassKg = ratio * glassKg;
      const inHollowKg = densityKgM3 * depthM * spotM2;
      const intoFoamKg = uptakeKgM2 * spotM2;
      const keptKg = inGlassKg + inHollowKg + intoFoamKg;
      return {
        "in-patches": inGlassKg,
        "in-hollow": inHollowKg,
        ...(foam === null ? {} : { "into-foam": intoFoamKg }),
        "styrene-lost": (keptKg * lossShare) / (1 - lossShare),
      };
    },
  });
  return raiseToCup(coat);
}

/** A spot of fill coat: poured as on the face, and none of it runs off. */
export function layFillSpot(
  board: StepsInput,
  layup: LayupPlan,
  { through, acrossM }: { readonly through: SandThrough; readonly acrossM: number },
): CoatPlan {
  const { entry, number } = through;
  const { id, resin } = resinOf(board, layup, ["fill", entry.face]);
  const areaM2 = discM2(acrossM);
  const coat = composeCoat({
    id: `repair-${number}-fill`,
    kind: "repair-fill",
    face: entry.face,
    resin: id,
    areaM2,
    drivers: { pouredKgM2: FILL_FILM.pouredKgM2, lossShare: resin?.styreneLossShare ?? NONE },
    toolsKg: LEFT_ON_TOOLS_KG.pour,
    terms: ({ pouredKgM2, lossShare }) => ({
      "net-film": pouredKgM2 * (1 - lossShare) * areaM2,
      "styrene-lost": pouredKgM2 * lossShare * areaM2,
    }),
  });
  return raiseToCup(coat);
}

/** A face without that coat is mended with the resin of the fill coat, which every face has. */
function resinOf(
  { materials }: StepsInput,
  { coats }: LayupPlan,
  [kind, face]: readonly ["laminate" | "fill", CoatPlan["face"]],
): { readonly id: string; readonly resin: Resin | undefined } {
  const own =
    coats.find(({ id }) => id === `${kind}-${face}`) ?? coats.find(({ id }) => id === `fill-${face}`);
  return { id: own?.resin ?? "", resin: findResin(materials, own?.resin) };
}

/** Never less in the cup than is worth mixing; what is over stays in it. */
function raiseToCup(coat: CoatPlan): CoatPlan {
  const leastKg = LEAST_IN_CUP_KG.value;
  const overKg = Math.max(0, leastKg - coat.resinMassKg);
  return {
    ...coat,
    resinMassKg: coat.resinMassKg + overKg,
    resinMassLowKg: Math.max(coat.resinMassLowKg, leastKg),
    resinMassHighKg: Math.max(coat.resinMassHighKg, leastKg),
    terms: coat.terms.map((term) =>
      term.id === "left-in-cups" ? { ...term, massKg: term.massKg + overKg } : term,
    ),
  };
}
