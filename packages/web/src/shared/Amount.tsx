import type { Quantity } from "@lapline/engine";
import { showQuantity } from "@lapline/present";
import { useSettings } from "../settings/Settings";
import { AmountText } from "./AmountText";
import { Fractions } from "./Fractions";

/** A quantity in the reader's units; what cannot be known is a dash. */
export function Amount({ of }: { of: Quantity | null }) {
  const { reader } = useSettings();
  if (of === null) return <span className="amount">–</span>;
  const text = showQuantity(of, reader);
  if (of.dimension !== "duration") return <AmountText text={text} />;
  return (
    <span className="amount">
      <Fractions text={text} />
    </span>
  );
}
