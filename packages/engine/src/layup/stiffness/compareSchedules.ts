import type { Cloth } from "../../constants/cloths";
import { WRINKLING_K } from "../../constants/elasticity";
import type { BoardShape } from "../../shape/BoardShape";
import { FACES, type Face, type SchedulePlan } from "../LayupPlan";
import type { FaceSchedules, Schedule } from "../Schedule";
import type { Skin } from "../Skin";
import { type BeamInputs, computeBending } from "./computeBending";
import { computeFoamElasticity, computeWrinklingLoad } from "./computeFoamElasticity";
import { computeStretchStiffness } from "./laminateStiffness";
import { listAlternatives } from "./listAlternatives";
import { makeLaminate } from "./makeLaminate";
import { makeStretchOf } from "./makeStretchOf";
import { measureMidSection } from "./measureMidSection";

interface Measures {
  readonly bending: number;
  readonly wrinkling: Readonly<Record<Face, number>>;
}

/**
 * The board's own schedule beside lighter and stronger ones: bending stiffness amidships and the load at which each skin would fold into
 * waves, as shares of the board's own. Method: classical lamination theory for each strip of skin, a beam of the thickest section with foam
 * and stringer, Hoff's formula. Only ratios: the moduli are generic, and voids, dings, heat and blows are not in the model.
 * @returns the own schedule first; empty where nothing is laid
 */
export function compareSchedules(
  schedule: Schedule,
  board: { readonly shape: BoardShape; readonly skin: Skin; readonly stringerM: number },
  cloths: Readonly<Record<string, Cloth>>,
): readonly SchedulePlan[] {
  if (FACES.every((face) => schedule.faces[face].layers.length === 0)) return [];
  const section = measureMidSection(board.shape);
  const foam = computeFoamElasticity(schedule.foam);
  const measure = (faces: FaceSchedules): Measures => {
    const stretchOf = makeStretchOf(schedule, faces, section.tapeM);
    const bending = computeBending({ stretchOf, section, foam, stringerM: board.stringerM });
    return { bending, wrinkling: measureWrinkling(schedule, faces, foam) };
  };
  const own = measure(schedule.faces);
  return listAlternatives(schedule.faces, cloths).map(({ id, faces }) => {
    const measures = id === "own" ? own : measure(faces);
    const share = (face: Face) =>
      own.wrinkling[face] > 0 ? measures.wrinkling[face] / own.wrinkling[face] : null;
    return {
      id,
      bottom: faces.bottom.layers.map((cloth) => cloth.id),
      deck: faces.deck.layers.map((cloth) => cloth.id),
      skinMassKg: weighLayers(schedule, faces, board.skin),
      stiffnessRatio: measures.bending / own.bending,
      deckWrinklingRatio: share("deck"),
      bottomWrinklingRatio: share("bottom"),
    };
  });
}

function measureWrinkling(
  schedule: Schedule,
  faces: FaceSchedules,
  foam: BeamInputs["foam"],
): Readonly<Record<Face, number>> {
  const load = (face: Face): number => {
    const { thicknessM, stiffness } = makeLaminate(
      schedule,
      faces[face].layers.map((cloth) => ({ cloth, angleRad: 0 })),
    );
    if (thicknessM === 0) return 0;
    const modulusPa = computeStretchStiffness(stiffness) / thicknessM;
    return computeWrinklingLoad({ modulusPa, thicknessM, foam, k: WRINKLING_K.value });
  };
  return { deck: load("deck"), bottom: load("bottom") };
}

/** Cloth of the full layers and the resin they hold once cured. */
function weighLayers({ ratio }: Schedule, faces: FaceSchedules, skin: Skin): number {
  let clothKg = 0;
  for (const face of FACES) {
    faces[face].layers.forEach((cloth, i) => {
      const areaM2 = skin.faces[face].areaM2 + faces[face].lapsM[i]! * skin.railLineM;
      clothKg += cloth.arealMassKgM2.value * areaM2;
    });
  }
  return (1 + ratio.value) * clothKg;
}
