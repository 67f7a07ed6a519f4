import { formatQuantity, type Quantity } from "@lapline/engine";
import { useSettings } from "../settings/Settings";
import { Fractions } from "./Fractions";

/** Digits, signs, fractions and the marks of feet and inches; what follows is the unit. */
const NUMBER_AND_UNIT = /^([-\d.,/'" ]*[\d'"])(\s*)(\D.*)?$/;

/** A quantity in the reader's units, the number to act on and its unit small beside it. */
export function Amount({ of }: { of: Quantity | null }) {
  const { units } = useSettings();
  if (of === null) return <span className="amount">–</span>;
  const text = formatQuantity(of, units);
  const [, number = text, gap = "", unit] =
    of.dimension === "duration" ? [] : (NUMBER_AND_UNIT.exec(text) ?? []);
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
