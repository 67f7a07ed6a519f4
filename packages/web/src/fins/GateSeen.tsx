import { checkName } from "@lapline/present";
import { useEffect, useState } from "react";
import { useSettings } from "../settings/Settings";
import type { Finset, FinsForm, VerifyCheck } from "./FinsForm";
import { StateWord } from "./StateWord";
import { withConfirmed } from "./verifyReadings";

interface GateSeenProps {
  readonly form: FinsForm;
  readonly check: VerifyCheck;
  readonly verify: Finset["verify"];
}

/** Something to be seen: one touch anywhere on its line confirms it. */
export function GateSeen({ form, check, verify }: GateSeenProps) {
  const { reader } = useSettings();
  const { fins, edit } = form;
  // Shown at once; the plan says it a moment later, and then it holds.
  const [touched, setTouched] = useState<boolean | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the plan's newer word ends it
  useEffect(() => setTouched(null), [check]);
  const known = verify.checks.map(({ id }) => id);
  return (
    <div className="seen">
      <label>
        <input
          type="checkbox"
          checked={touched ?? check.state === "good"}
          onChange={({ target: { checked: isMade } }) => {
            setTouched(isMade);
            edit(["fins", "verify"], withConfirmed(fins.verify, { check, isMade, known }));
          }}
        />
        <span>{checkName(check, reader)}</span>
      </label>
      <StateWord check={check} />
    </div>
  );
}
