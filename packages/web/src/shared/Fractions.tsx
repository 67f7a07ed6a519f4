import { splitFractions } from "@lapline/present";
import { Fragment } from "react";

/** Before a fraction the space is a thin one, as it is set in print. */
const THIN_SPACE = "\u2009";
/** A number and its unit stay on one line. */
const UNIT_GAP = /(?<=^|\d) (?=(?:µm|mm|cm|m|in|ft|g|kg|lb|oz|mL|L|%|K|h|min|s)(?!\p{L})|°)/gu;
const NO_BREAK = "\u00a0";

/** A text with its fractions set as fractions. */
export function Fractions({ text }: { text: string }) {
  return splitFractions(text).map((part, i) =>
    part.isFraction ? (
      // biome-ignore lint/suspicious/noArrayIndexKey: the parts of one text have no other name
      <span key={i} className="fraction">
        {part.text}
      </span>
    ) : (
      // biome-ignore lint/suspicious/noArrayIndexKey: the parts of one text have no other name
      <Fragment key={i}>{part.text.replace(UNIT_GAP, NO_BREAK).replace(/ $/, THIN_SPACE)}</Fragment>
    ),
  );
}
