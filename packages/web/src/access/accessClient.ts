import type { Access, Role } from "./Access";

/** As the server takes names. */
export const LONGEST_NAME = 40;

/** Why a device was not let in. */
export type Refusal =
  | { readonly reason: "wrong"; readonly left: number }
  | { readonly reason: "slow"; readonly waitS: number }
  | { readonly reason: "locked" | "none" | "name" | "away" };

export interface ListedDevice {
  readonly id: string;
  readonly name: string;
  readonly role: Role;
  readonly seenAt: string;
  readonly own: boolean;
}

export interface Offer {
  readonly state: "waiting" | "used" | "expired" | "locked";
  readonly code: string | null;
  readonly role: Role;
  readonly expiresAt: string;
  /** Where it is typed in or scanned, the likeliest first. */
  readonly links: readonly string[];
}

export interface Pairing {
  readonly shared: boolean;
  readonly secure: boolean;
  readonly offer: Offer | null;
}

/** Null where no answer came. */
export const readAccess = (): Promise<Access | null> => read("/api/access");
export const readPairing = (): Promise<Pairing | null> => read("/api/pairing");
export const makeCode = async (role: Role): Promise<boolean> =>
  (await send("POST", "/api/pairing", { role }))?.ok === true;
export const listDevices = async (): Promise<readonly ListedDevice[] | null> =>
  (await read<{ devices: readonly ListedDevice[] }>("/api/devices"))?.devices ?? null;
export const revokeDevice = async (id: string): Promise<boolean> =>
  (await send("DELETE", pathOf(id)))?.ok === true;

export async function renameDevice(id: string, name: string): Promise<"renamed" | "taken" | "name" | "away"> {
  const status = (await send("PATCH", pathOf(id), { name }))?.status;
  if (status === 204) return "renamed";
  return status === 409 ? "taken" : status === 422 ? "name" : "away";
}

/** Hands in a code; null where the device is let in. */
export async function handInCode(code: string, name: string): Promise<Refusal | null> {
  const answer = await send("POST", "/api/access", { code, name });
  if (answer?.status === 201) return null;
  const said = (await answer?.json().catch(() => null)) as Refusal | null | undefined;
  return said?.reason === undefined ? { reason: "away" } : said;
}

const pathOf = (id: string) => `/api/devices/${encodeURIComponent(id)}`;

async function read<T>(path: string): Promise<T | null> {
  const answer = await send("GET", path);
  return answer?.ok === true ? ((await answer.json().catch(() => null)) as T | null) : null;
}

async function send(method: string, path: string, body?: unknown): Promise<Response | null> {
  const sent =
    body === undefined ? {} : { body: JSON.stringify(body), headers: { "content-type": "application/json" } };
  return fetch(path, { method, ...sent }).catch(() => null);
}
