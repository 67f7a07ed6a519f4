import { tell, tellText } from "@lapline/present";
import { useSettings } from "../settings/Settings";
import type { VerifyCheck } from "./FinsForm";

/** Where a check stands, in a word. */
export function StateWord({ check: { state, required } }: { check: VerifyCheck }) {
  const { reader } = useSettings();
  const t = tell(reader);
  return (
    <span className="state">{state === "open" && !required ? t`if wanted` : tellText(state, reader)}</span>
  );
}
