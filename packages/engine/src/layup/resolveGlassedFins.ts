import type { Cloth } from "../constants/cloths";
import { GLASSED_FIN } from "../constants/glassedFins";
import { say } from "../foundation/phrase";
import { length } from "../foundation/quantity";
import { type Assumption, finding, type Stage } from "../foundation/stage";
import { assume } from "../sources/assume";
import type { FittingsInput } from "./FittingsInput";
import type { FaceSchedules } from "./Schedule";

/** A fin glassed to the board, with the cloth that goes over it. */
export interface GlassedFin {
  /** `front-left`, `centre`. */
  readonly id: string;
  /** The name that fins cut alike share: `front`. */
  readonly fin: string;
  readonly cloth: Cloth;
  readonly baseM: number;
  readonly depthM: number;
}

/** Fins that are glassed on, two for one that is set from the rail; none for boxes. Their cloth is the bottom's innermost. */
export function resolveGlassedFins(
  fins: FittingsInput | undefined,
  faces: FaceSchedules,
): Stage<readonly GlassedFin[]> {
  const none = { value: [], findings: [], assumptions: [] };
  if (fins?.boxes !== "glassed-on") return none;
  const cloth = faces.bottom.layers[0] ?? faces.deck.layers[0];
  if (cloth === undefined) {
    const says = say`there is no cloth in the lay-up to glass the fins on with: their cloth and resin are left out`;
    return { ...none, findings: [finding("warning", "layup.glassed-on", "fins.boxes", says)] };
  }
  const assumptions: Assumption[] = [sayLayers(cloth)];
  const value = fins.set.flatMap((fin, i): GlassedFin[] => {
    const depthM = fin.depthM ?? GLASSED_FIN.depthM.value;
    const baseM = fin.baseM ?? GLASSED_FIN.baseM.value;
    if (fin.depthM === undefined) {
      const taken = say`${length(depthM)} from base to tip`;
      assumptions.push(
        assume(`fins.set[${i}].depth`, taken, "no depth was given", GLASSED_FIN.depthM.source),
      );
    }
    const ids = fin.fromRailM === undefined ? [fin.fin] : [`${fin.fin}-left`, `${fin.fin}-right`];
    return ids.map((id) => ({ id, fin: fin.fin, cloth, baseM, depthM }));
  });
  return { value, findings: [], assumptions };
}

function sayLayers(cloth: Cloth): Assumption {
  const { layersASide, footM, filletM } = GLASSED_FIN;
  return assume(
    "layup.coats",
    say`glassed-on fins: ${layersASide.value} layers of ${cloth.name} a side, ${length(footM.value)} out onto the bottom, corners filled to a radius of ${length(filletM.value)}, the fins' own weight left out`,
    "how the fins are glassed was not given; rope in the corner is counted as resin",
    "common-practice",
  );
}
