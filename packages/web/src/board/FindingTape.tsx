import { type Finding, formatPhrase } from "@lapline/engine";
import { useSettings } from "../settings/Settings";
import { Fractions } from "../shared/Fractions";

const WORD: Readonly<Record<Finding["severity"], string>> = {
  blocker: "Stop",
  warning: "Look",
  note: "Note",
};

/** A finding as a piece of tape; with the number that stands for it on a drawing, if there is one. */
export function FindingTape({ finding, number }: { finding: Finding; number?: number }) {
  const { units } = useSettings();
  return (
    <p className={`tape tape-${finding.severity}`}>
      {number !== undefined && <b>{number} </b>}
      <b>{WORD[finding.severity]}:</b> <Fractions text={formatPhrase(finding.says, units)} />
    </p>
  );
}
