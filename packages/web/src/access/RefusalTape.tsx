import { useTell } from "../settings/useTell";
import type { Refusal } from "./accessClient";

/** Why this device is not let in, and what to do. */
export function RefusalTape({ refusal }: { refusal: Refusal }) {
  return (
    <p className="tape tape-blocker">
      <RefusalWords refusal={refusal} />
    </p>
  );
}

function RefusalWords({ refusal }: { refusal: Refusal }) {
  const t = useTell();
  switch (refusal.reason) {
    case "wrong":
      return t`That is not the code. Wrong guesses left before it is locked: ${refusal.left}.`;
    case "locked":
      return t`Five wrong codes: this one is locked. Make a new one at the shop's computer.`;
    case "none":
      return t`There is no code just now: it has run out or was used. Make a new one at the shop's computer.`;
    case "slow":
      return t`Too many wrong codes from this device. Wait ${Math.ceil(refusal.waitS / 60)} min.`;
    case "name":
      return t`A name is one line of 1 to 40 characters.`;
    default:
      return t`The shop's computer cannot be reached.`;
  }
}
