import type { Quantity } from "@lapline/engine";
import { showQuantity } from "@lapline/present";
import { useSettings } from "../settings/Settings";
import { WhyNumber } from "../why/WhyNumber";
import { AmountText } from "./AmountText";
import { Fractions } from "./Fractions";

interface AmountProps {
  readonly of: Quantity | null;
  /** Its place in the plan, where it can be turned over. */
  readonly why?: string | undefined;
}

/** A quantity in the reader's units; what cannot be known is a dash. */
export function Amount({ of, why }: AmountProps) {
  const { reader } = useSettings();
  if (of === null) return <span className="amount">–</span>;
  const text = showQuantity(of, reader);
  return (
    <WhyNumber path={why}>
      {of.dimension === "duration" ? (
        <span className="amount">
          <Fractions text={text} />
        </span>
      ) : (
        <AmountText text={text} />
      )}
    </WhyNumber>
  );
}
