import { buildSeen, type VerifyCheck } from "./VerifyCheck";
import type { ConfirmedInput } from "./VerifyInput";

/** How the board lies, before anything is measured: the mistake that cannot be undone is a hole on the wrong side. */
export function buildPositionChecks(confirmed: readonly ConfirmedInput[]): readonly VerifyCheck[] {
  const seen = [
    { id: "bottom-up", matter: "bottom-up", how: "Lay the board on its deck." },
    {
      id: "nose-away",
      matter: "nose-away",
      how: "Stand at the tail with the nose pointing away from you.",
    },
    {
      id: "left-named",
      matter: "left-named",
      how: "Say LEFT and RIGHT aloud and write them on the board: bottom up and nose away, the surfer's left is on your right hand.",
    },
  ] as const;
  return seen.map((what) => buildSeen(what, confirmed));
}

/** The last thing before resin is poured. */
export function buildTapeCheck(confirmed: readonly ConfirmedInput[]): VerifyCheck {
  const how = "Tape the slots and screw holes of every box, so that no resin runs in.";
  return buildSeen({ id: "slots-taped", matter: "slots-taped", how }, confirmed);
}
