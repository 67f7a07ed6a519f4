import { splitFractions } from "./splitFractions";

/** Mean advance of a semi-condensed sans over its em, digits and lower case mixed; a declared convention, a little wide. */
const ADVANCE_PER_EM = 0.5;
/** The same within a fraction, whose figures are set small. */
const FRACTION_ADVANCE_PER_EM = 0.34;

/** About how wide a text will be drawn, so that labels can be kept apart: in millimetres, from its em size in millimetres. */
export function estimateTextWidthMm(text: string, sizeMm: number): number {
  return splitFractions(text).reduce(
    (widthMm, part) =>
      widthMm + part.text.length * sizeMm * (part.isFraction ? FRACTION_ADVANCE_PER_EM : ADVANCE_PER_EM),
    0,
  );
}
