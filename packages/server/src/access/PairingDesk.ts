import { createHash, randomInt, timingSafeEqual } from "node:crypto";
import type { DeviceRole } from "@lapline/store";

const DIGITS = 8;
const LASTS_MS = 5 * 60_000;
const MOST_WRONG = 5;

/** A code as it is shown at the shop's computer. Its digits are there only while it lets somebody in. */
export interface PairingCode {
  readonly state: "waiting" | "used" | "expired" | "locked";
  readonly code: string | null;
  readonly role: DeviceRole;
  readonly expiresAt: string;
}

export type Guess =
  /** The code is used up by this; `giveBack` undoes that where the device could not be kept. */
  | { readonly kind: "right"; readonly role: DeviceRole; giveBack(): void }
  | { readonly kind: "wrong"; readonly left: number }
  | { readonly kind: "locked" }
  /** There is none, or it has run out, or it was used. */
  | { readonly kind: "none" };

/** Where codes are made and held against what is typed in. There is one code at a time. */
export interface PairingDesk {
  /** A new one in the place of the last. */
  make(role: DeviceRole): PairingCode;
  look(): PairingCode | null;
  guess(digits: string): Guess;
}

/**
 * A code of eight digits from the system's random source, good for five minutes and for one device, and locked by the fifth wrong guess
 * from wherever: one guess in twenty million hits. Kept in memory only, so that it ends with the program.
 */
export function openPairingDesk(now: () => Date): PairingDesk {
  let made: { code: string; role: DeviceRole; expiresMs: number; wrong: number; used: boolean } | null = null;
  const look = (): PairingCode | null => {
    if (made === null) return null;
    const state = made.used
      ? "used"
      : made.wrong >= MOST_WRONG
        ? "locked"
        : now().getTime() >= made.expiresMs
          ? "expired"
          : "waiting";
    const expiresAt = new Date(made.expiresMs).toISOString();
    return { state, code: state === "waiting" ? made.code : null, role: made.role, expiresAt };
  };
  return {
    make(role) {
      const code = String(randomInt(10 ** DIGITS)).padStart(DIGITS, "0");
      const expiresMs = now().getTime() + LASTS_MS;
      made = { code, role, expiresMs, wrong: 0, used: false };
      return { state: "waiting", code, role, expiresAt: new Date(expiresMs).toISOString() };
    },
    look,
    guess(digits) {
      const state = look()?.state;
      if (made === null || state === "used" || state === "expired") return { kind: "none" };
      if (state === "locked") return { kind: "locked" };
      const asked = made;
      if (isSame(digits, asked.code)) {
        asked.used = true;
        const giveBack = () => {
          asked.used = false;
        };
        return { kind: "right", role: asked.role, giveBack };
      }
      asked.wrong++;
      const left = MOST_WRONG - asked.wrong;
      return left > 0 ? { kind: "wrong", left } : { kind: "locked" };
    },
  };
}

/** In the same time wherever they differ. */
function isSame(one: string, other: string): boolean {
  const hash = (text: string) => createHash("sha256").update(text).digest();
  return timingSafeEqual(hash(one), hash(other));
}
