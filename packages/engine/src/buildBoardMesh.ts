import { buildMesh, type Mesh, type MeshDetail } from "./shape/buildMesh";
import { buildShape } from "./shape/buildShape";
import { SurveyedShape } from "./shape/SurveyedShape";
import { buildSurvey } from "./survey/buildSurvey";
import type { SurveyInput } from "./survey/SurveyInput";

/** The surveyed solid as a watertight mesh in metres; null where the plan has no shape. Coarse for a first look only. */
export function buildBoardMesh(survey: SurveyInput, detail: MeshDetail = "fine"): Mesh | null {
  const shape = buildShape(buildSurvey(survey).value).value;
  return shape instanceof SurveyedShape ? buildMesh(shape, detail) : null;
}
