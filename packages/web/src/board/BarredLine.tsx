import type { Plan } from "@lapline/engine";
import { barredSentence } from "@lapline/present";
import { useSettings } from "../settings/Settings";
import { Fractions } from "../shared/Fractions";

/** Stands on every page of a board while foam shows or a box is not sealed in; nothing once all is closed. */
export function BarredLine({ plan }: { readonly plan: Plan }) {
  const { reader } = useSettings();
  const barred = barredSentence(plan, reader);
  return barred === null ? null : (
    <p className="barred">
      <Fractions text={barred} />
    </p>
  );
}
