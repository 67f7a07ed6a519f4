import { Fractions } from "./Fractions";

/** Digits, signs, fractions and the marks of feet and inches; what follows is the unit. */
const NUMBER_AND_UNIT = /^([-\d.,/'" ]*[\d'"])(\s*)(\D.*)?$/;

/** A quantity already in words, the number to act on and its unit small beside it. */
export function AmountText({ text }: { text: string }) {
  const [, number = text, gap = "", unit] = NUMBER_AND_UNIT.exec(text) ?? [];
  return (
    <span className="amount">
      <Fractions text={number} />
      {unit !== undefined && (
        <span className="unit">
          {gap}
          {unit}
        </span>
      )}
    </span>
  );
}
