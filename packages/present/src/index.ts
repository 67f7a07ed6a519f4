export { loadLanguage } from "#catalogues";
export { asSetDrawing } from "./board/asSetDrawing";
export { checkDrawing } from "./board/checkDrawing";
export { cupDrawing } from "./board/cupDrawing";
export { filmClockDrawing } from "./board/filmClockDrawing";
export { filmDrawing } from "./board/filmDrawing";
export { finDrawing } from "./board/finDrawing";
export { gelBandDrawing } from "./board/gelBandDrawing";
export { gelPointsDrawing } from "./board/gelPointsDrawing";
export { planDrawing } from "./board/planDrawing";
export { profileDrawing } from "./board/profileDrawing";
export { silhouetteDrawing } from "./board/silhouetteDrawing";
export { skinStrip } from "./board/skinStrip";
export { weightDrawing } from "./board/weightDrawing";
export { formatLayText, layWords, type SearchedLay } from "./cut/formatLayText";
export { layOfRoll, type RollLay } from "./cut/RollLay";
export { rollDrawings } from "./cut/rollDrawings";
export type { Drawing } from "./drawing/Drawing";
export { drawingToSvg } from "./drawing/drawingToSvg";
export { drawingToSvgNode } from "./drawing/drawingToSvgNode";
export type { SvgNode } from "./drawing/SvgNode";
export { splitFractions } from "./drawing/splitFractions";
export { LANGUAGES, type Language } from "./language/Language";
export type { Reader } from "./language/Reader";
export { showQuantity } from "./language/showQuantity";
export { type Tell, tell } from "./language/tell";
export { tellPhrase } from "./language/tellPhrase";
export { tellText } from "./language/tellText";
export { formatCheckText } from "./text/formatCheckText";
export { formatPlanText } from "./text/formatPlanText";
export { formatWhyText } from "./text/formatWhyText";
export { asSentence } from "./words/asSentence";
export { cautionWords } from "./words/cautionWords";
export { checkName, readingWords, verdictWords } from "./words/checkWords";
export { correctionWords } from "./words/correctionWords";
export { costSentences, costWords } from "./words/costWords";
export { type CutStep, cutSteps } from "./words/cutWords";
export { finName } from "./words/finName";
export { floatSentences } from "./words/floatSentences";
export { formatDiagonalWorth } from "./words/formatDiagonalWorth";
export { formatDifference } from "./words/formatDifference";
export { formatTapeLength } from "./words/formatTapeLength";
export { formatTolerance } from "./words/formatTolerance";
export { groupCups } from "./words/groupCups";
export { hardenerAmounts } from "./words/hardenerAmounts";
export { haveReady } from "./words/haveReady";
export {
  comparisonLimits,
  cuttingSentence,
  notchSentences,
  scheduleLayers,
  scheduleName,
} from "./words/layupWords";
export { readNoLoadS } from "./words/readNoLoadS";
export { repairSentences, repairTitle } from "./words/repairWords";
export { riskWord, sandRows, sandRules, worstSentence, zoneName } from "./words/sandWords";
export { setOutWords } from "./words/setOutWords";
export { skinGroups } from "./words/skinGroups";
export { sortFindings } from "./words/sortFindings";
export { type CautionsHere, stepCautions } from "./words/stepCautions";
export { stepTitle } from "./words/stepTitle";
export { type StepWait, stepWaits } from "./words/stepWaits";
export { symmetrySentences } from "./words/symmetrySentences";
export { statedTailWord, tailWord } from "./words/tailWords";
export { waterRules } from "./words/waterWords";
export { aheadSentences, weighinSentences } from "./words/weighinWords";
export { widthWords } from "./words/widthWords";
export { worstVapour } from "./words/worstVapour";
export { worthWords } from "./words/worthWords";
