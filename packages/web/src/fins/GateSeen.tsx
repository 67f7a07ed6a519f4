import { checkName } from "@lapline/present";
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
  const known = verify.checks.map(({ id }) => id);
  return (
    <div className="seen">
      <label>
        <input
          type="checkbox"
          checked={check.state === "good"}
          onChange={(event) =>
            edit(
              ["fins", "verify"],
              withConfirmed(fins.verify, { check, isMade: event.target.checked, known }),
            )
          }
        />
        <span>{checkName(check, reader)}</span>
      </label>
      <StateWord check={check} />
    </div>
  );
}
