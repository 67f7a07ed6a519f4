import type { Cloth } from "../constants/cloths";
import { DEFAULT_LAP_M } from "../constants/handling";
import { say } from "../foundation/phrase";
import { length } from "../foundation/quantity";
import { type Assumption, type Finding, finding, type Stage } from "../foundation/stage";
import type { MaterialsInput } from "../materials/MaterialsInput";
import { assume } from "../sources/assume";
import { findCloth } from "./findCloth";
import type { FaceLayersInput, GlassInput } from "./GlassInput";
import type { Face } from "./LayupPlan";
import { FACES } from "./LayupPlan";
import type { FaceSchedule, FaceSchedules } from "./Schedule";
import type { Skin } from "./Skin";

/**
 * Layers and lap of each face. A face without layers is allowed with a warning; a lap that passes the stringer is not.
 * @param skin null where the shape is not known: then laps are not held against its width
 */
export function resolveFaces(
  glass: GlassInput,
  skin: Skin | null,
  materials: MaterialsInput | undefined,
): Stage<FaceSchedules> {
  const byFace = FACES.map((face) => ({ face, stage: resolveFace(face, glass[face], { skin, materials }) }));
  const stages = byFace.map(({ stage }) => stage);
  const isWhole = stages.every((stage) => stage.value !== null);
  return {
    value: isWhole
      ? (Object.fromEntries(byFace.map(({ face, stage }) => [face, stage.value])) as FaceSchedules)
      : null,
    findings: stages.flatMap((stage) => stage.findings),
    assumptions: stages.flatMap((stage) => stage.assumptions),
  };
}

interface Known {
  readonly skin: Skin | null;
  readonly materials: MaterialsInput | undefined;
}

function resolveFace(
  face: Face,
  input: FaceLayersInput | undefined,
  { skin, materials }: Known,
): Stage<FaceSchedule> {
  const layers = input?.layers ?? [];
  if (layers.length === 0) {
    const says = say`no cloth on the ${face}: the foam has only the fill coat over it`;
    const bare = finding("warning", "layup.no-layers", `glass.${face}.layers`, says);
    return { value: { layers: [], lapsM: [], lapM: 0 }, findings: [bare], assumptions: [] };
  }
  const cloths = layers.map((id, i) => findCloth(id, `glass.${face}.layers[${i}]`, materials));
  const commonM = input?.lapM ?? DEFAULT_LAP_M.value;
  const lapsM = layers.map((_, i) => input?.lapsM?.[i] ?? commonM);
  const findings: Finding[] = [...cloths.flatMap((cloth) => cloth.findings), ...checkLaps(face, input, skin)];
  const known = cloths.map((cloth) => cloth.value).filter((cloth): cloth is Cloth => cloth !== null);
  const assumptions: Assumption[] = [];
  if (input?.lapM === undefined && input?.lapsM === undefined) {
    assumptions.push(
      assume(`glass.${face}.lap`, say`${length(commonM)}`, "no lap was given", DEFAULT_LAP_M.source),
    );
  }
  const value = { layers: known, lapsM, lapM: Math.max(...lapsM) };
  return { value: findings.length > 0 ? null : value, findings, assumptions };
}

function checkLaps(face: Face, input: FaceLayersInput | undefined, skin: Skin | null): Finding[] {
  const { layers = [], lapM = DEFAULT_LAP_M.value, lapsM } = input ?? {};
  if (lapsM === undefined) return checkLap(`glass.${face}.lap`, lapM, skin);
  if (lapsM.length === layers.length) {
    return lapsM.flatMap((oneM, i) => checkLap(`glass.${face}.laps[${i}]`, oneM, skin));
  }
  const says = say`${layers.length} layers and ${lapsM.length} laps: give one lap for each layer, innermost first`;
  return [finding("blocker", "layup.laps-per-layer", `glass.${face}.laps`, says)];
}

function checkLap(path: string, lapM: number, skin: Skin | null): Finding[] {
  if (!(lapM >= 0 && Number.isFinite(lapM))) {
    return [finding("blocker", "layup.lap-not-a-width", path, say`a lap is a width of nought or more`)];
  }
  if (skin === null || lapM <= skin.halfWidthMaxM) return [];
  const says = say`a lap of ${length(lapM)} is wider than half the board, ${length(skin.halfWidthMaxM)}: it is measured from the rail's widest line, usually ${length(DEFAULT_LAP_M.low)} to ${length(DEFAULT_LAP_M.high)}`;
  return [finding("blocker", "layup.lap-too-wide", path, says)];
}
