import type { Quantity } from "@lapline/engine";
import { formatTolerance } from "@lapline/present";
import { useSettings } from "../settings/Settings";
import { Amount } from "../shared/Amount";
import { AmountText } from "../shared/AmountText";

/** How near a reading must come. */
export function Tolerance({ of }: { of: Quantity }) {
  const { reader } = useSettings();
  return of.dimension === "length" ? (
    <AmountText text={formatTolerance(of.value, reader)} />
  ) : (
    <Amount of={of} />
  );
}
