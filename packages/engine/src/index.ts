export type { Board } from "./Board";
export { buildBoardMesh } from "./buildBoardMesh";
export { buildHouseSetOffers } from "./buildHouseSetOffers";
export { buildShopCalendar, type ShopBoard, type ShopCalendar } from "./calendar/buildShopCalendar";
export { computeSensitivity, type Influence, walkSensitivity } from "./computeSensitivity";
export { GRITS } from "./constants/abrasives";
export { CAUTIONS } from "./constants/cautions";
export { MOST_CANT } from "./constants/finLimits";
export { HOUSE_SETS, type HouseSet } from "./constants/houseSets";
export { SHEARS_GAP_M } from "./constants/rollCutting";
export { SHOP_DEFAULTS } from "./constants/shopDefaults";
export { TAPE_OVER_STRAIGHT } from "./constants/surveyDefaults";
export { TAPE_STEPS } from "./constants/tapeSteps";
export { PRICED_IDS } from "./cost/pricedIds";
export { keepSide } from "./cutplan/keepSide";
export { outlineOnRoll, type RollPoint } from "./cutplan/outlineOnRoll";
export { type Explanation, explain } from "./explain";
export {
  ARRANGEMENTS,
  type Arrangement,
  type AsSetInput,
  BOX_TIMINGS,
  type BoxInput,
  type BoxTiming,
  type FinInput,
  type FinsInput,
  type LeashPlugInput,
  SIDES_RULES,
  type SidesRule,
  type ToeInput,
} from "./finset/FinsInput";
export type { HouseSetOffer } from "./finset/offerHouseSet";
export { describeKey } from "./foundation/describeKey";
export { findNearest } from "./foundation/findNearest";
export { formatLength } from "./foundation/formatLength";
export { formatQuantity } from "./foundation/formatQuantity";
export { type ParsedQuantity, parseQuantity } from "./foundation/parseQuantity";
export { formatPhrase, type Phrase, say } from "./foundation/phrase";
export {
  angle,
  area,
  arealMass,
  count,
  type Dimension,
  density,
  duration,
  flow,
  fraction,
  length,
  mass,
  type Quantity,
  temperature,
  type Units,
  volume,
} from "./foundation/quantity";
export { quoteText } from "./foundation/quoteText";
export { DIMENSION_WORDS } from "./foundation/readableUnits";
export type { Assumption, Finding, Severity, Told } from "./foundation/stage";
export { standingEntries } from "./foundation/standingEntries";
export type { BlankInput, FaceLayersInput, GlassInput, PatchInput } from "./layup/GlassInput";
export { namePiece } from "./layup/namePiece";
export { type KnownMaterials, listMaterials } from "./materials/listMaterials";
export type { MaterialsInput } from "./materials/MaterialsInput";
export { nameMaterial } from "./materials/nameMaterial";
export { doseGrain } from "./mix/doseGrain";
export type { ShopInput } from "./mix/ShopInput";
export type { Plan } from "./Plan";
export { planBuild } from "./planBuild";
export { readPlanPath } from "./readPlanPath";
export { nameZone } from "./sanding/nameZone";
export type { Mesh, MeshDetail } from "./shape/buildMesh";
export type { RecordEntry } from "./steps/RecordEntry";
export type { Side } from "./survey/Side";
export type { BottomInput, SectionInput, StationInput, SurveyInput, TailInput } from "./survey/SurveyInput";
