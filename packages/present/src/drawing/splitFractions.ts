export interface TextPart {
  readonly text: string;
  readonly isFraction: boolean;
}

const FRACTION = /(\d+\/\d+)/;

/** Cuts a text at its fractions, so that `1 1/8 in` can be set with a true fraction and nothing else set small. */
export function splitFractions(text: string): readonly TextPart[] {
  return text
    .split(FRACTION)
    .map((part, i) => ({ text: part, isFraction: i % 2 === 1 }))
    .filter((part) => part.text !== "");
}
