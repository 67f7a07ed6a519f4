import type { Device, DeviceRole, Shop } from "@lapline/store";
import type { Context } from "hono";
import { limitTries, type TryLimit } from "./limitTries";
import { type OpenAnswers, openAnswers } from "./OpenAnswers";
import { openPairingDesk, type PairingCode, type PairingDesk } from "./PairingDesk";

/** Under what the shop's devices reach this machine. */
export interface Sharing {
  readonly isSecure: boolean;
  /** `http://192.168.1.20:5190`, each that it has now, the likeliest first. */
  addresses(): readonly string[];
}

/** What letting devices in stands on. */
export interface Access {
  readonly devices: Shop["devices"];
  readonly now: () => Date;
  readonly desk: PairingDesk;
  readonly tries: TryLimit;
  readonly answers: OpenAnswers;
  /** Null where only this machine is answered. */
  readonly sharing: Sharing | null;
}

export function openAccess(shop: Shop, now: () => Date, sharing: Sharing | null): Access {
  return {
    devices: shop.devices,
    now,
    desk: openPairingDesk(now),
    tries: limitTries(now),
    answers: openAnswers(shop),
    sharing,
  };
}

/** A code with where it can be typed in or scanned. The code stands behind the #, which no browser sends and no server writes down. */
export interface PairingOffer extends PairingCode {
  readonly links: readonly string[];
}

export function offerOf({ sharing }: Access, code: PairingCode): PairingOffer {
  const behind = code.code === null ? "" : `#${code.code}`;
  return { ...code, links: (sharing?.addresses() ?? []).map((address) => `${address}/pair${behind}`) };
}

/** What a door remembers of a request: which door it came in by, and the device, where it is one that is let in. */
export interface Asker {
  readonly isHere: boolean;
  readonly device: Device | null;
}

export function setAsker(context: Context, asker: Asker): void {
  context.set("asker", asker);
  // As versions and entries name it.
  if (asker.device !== null) context.set("device", asker.device.name);
}

export function askerOf(context: Context): Asker {
  return (context.get("asker") as Asker | undefined) ?? { isHere: false, device: null };
}

export const isRole = (word: unknown): word is DeviceRole => word === "bench" || word === "keeper";
