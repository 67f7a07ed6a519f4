import type { FinsFile } from "@lapline/contract";
import type { Tell } from "@lapline/present";

/** Arrangements whose own names say too little. */
export const arrangementNames = (t: Tell): Partial<Record<FinsFile["arrangement"], string>> => ({
  "twin-trailer": t`twin with trailer`,
  "single-sides": t`long box, sides`,
});
