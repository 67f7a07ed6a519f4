import { type Finding, formatPhrase } from "@lapline/engine";
import { useSettings } from "../settings/Settings";
import { Fractions } from "../shared/Fractions";

const WORD: Readonly<Record<Finding["severity"], string>> = {
  blocker: "Stop",
  warning: "Look",
  note: "Note",
};

/** A finding as a piece of tape. */
export function FindingTape({ finding }: { finding: Finding }) {
  const { units } = useSettings();
  return (
    <p className={`tape tape-${finding.severity}`}>
      <b>{WORD[finding.severity]}:</b> <Fractions text={formatPhrase(finding.says, units)} />
    </p>
  );
}
