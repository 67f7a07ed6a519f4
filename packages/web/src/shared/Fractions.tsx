import { splitFractions } from "@lapline/present";
import { Fragment } from "react";

/** Before a fraction the space is a thin one, as it is set in print. */
const THIN_SPACE = "\u2009";

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
      <Fragment key={i}>{part.text.replace(/ $/, THIN_SPACE)}</Fragment>
    ),
  );
}
