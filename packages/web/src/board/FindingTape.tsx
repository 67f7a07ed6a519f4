import type { Finding } from "@lapline/engine";
import { tell, tellPhrase } from "@lapline/present";
import { useSettings } from "../settings/Settings";
import { Fractions } from "../shared/Fractions";

/** A finding as a piece of tape; with the number that stands for it on a drawing, if there is one. */
export function FindingTape({ finding, number }: { finding: Finding; number?: number }) {
  const { reader } = useSettings();
  const t = tell(reader);
  const word = { blocker: t`Stop`, warning: t`Look`, note: t`Note` };
  return (
    <p className={`tape tape-${finding.severity}`}>
      {number !== undefined && <b>{number} </b>}
      <b>{word[finding.severity]}:</b> <Fractions text={tellPhrase(finding.says, reader)} />
    </p>
  );
}
