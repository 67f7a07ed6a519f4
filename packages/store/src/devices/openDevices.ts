import { randomUUID } from "node:crypto";
import type { Tx } from "../database/Database";
import type { StoreParts } from "../StoreParts";
import type { Device, DeviceRole, DeviceStore } from "./DeviceStore";

/** Versions and entries name these; a device that bore one would pass for it. */
const NOT_A_DEVICE = ["this machine", "demo", "copy of a shop", "folder of files"];

/** The devices, on either database. */
export function openDevices({ database: { db }, now, write }: StoreParts): DeviceStore {
  const letIn = (tx: Tx) =>
    tx
      .selectFrom("devices")
      .select(["id", "name", "role", "paired_at as pairedAt", "seen_at as seenAt", "expires_at as expiresAt"])
      .where("revoked_at", "is", null)
      .where("expires_at", ">", now().toISOString());
  return {
    list: async () => (await letIn(db).orderBy("name").orderBy("id").execute()).map(deviceOf),
    async find(tokenHash) {
      const row = await letIn(db).where("token_hash", "=", tokenHash).executeTakeFirst();
      return row === undefined ? null : deviceOf(row);
    },
    add: ({ name, role, tokenHash, expiresAt }) =>
      write(name, async ({ tx, at }) => {
        const device = {
          id: randomUUID(),
          name: await freeName(tx, name),
          role,
          pairedAt: at,
          seenAt: at,
          expiresAt,
        };
        await tx
          .insertInto("devices")
          .values({
            id: device.id,
            name: device.name,
            name_key: keyOf(device.name),
            role,
            token_hash: tokenHash,
            paired_at: at,
            seen_at: at,
            expires_at: expiresAt,
            revoked_at: null,
            revoked_by: null,
          })
          .execute();
        return device;
      }),
    see: (id, expiresAt) =>
      write(id, async ({ tx, at }) => {
        await tx
          .updateTable("devices")
          .set({ seen_at: at, expires_at: expiresAt })
          .where("id", "=", id)
          .where("revoked_at", "is", null)
          .execute();
      }),
    rename: (id, name, by) =>
      write(by, async ({ tx }) => {
        const holder = await holderOf(tx, keyOf(name));
        if (holder !== null && holder !== id) return "taken";
        if ((await letIn(tx).where("id", "=", id).executeTakeFirst()) === undefined) return "gone";
        await tx
          .updateTable("devices")
          .set({ name, name_key: keyOf(name) })
          .where("id", "=", id)
          .execute();
        return "renamed";
      }),
    revoke: (id, by) =>
      write(by, async ({ tx, at }) => {
        const { numUpdatedRows } = await tx
          .updateTable("devices")
          .set({ revoked_at: at, revoked_by: by })
          .where("id", "=", id)
          .where("revoked_at", "is", null)
          .executeTakeFirst();
        return numUpdatedRows > 0n;
      }),
  };
}

interface DeviceRow extends Omit<Device, "role"> {
  readonly role: string;
}

/** A role that this program does not know may do the least. */
const deviceOf = (row: DeviceRow): Device => ({
  ...row,
  role: (row.role === "keeper" ? "keeper" : "bench") satisfies DeviceRole,
});

/** Names that read alike are one name. */
const keyOf = (name: string): string => name.normalize("NFKC").toLowerCase().replace(/\s+/gu, " ").trim();

async function freeName(tx: Tx, name: string): Promise<string> {
  for (let number = 1; ; number++) {
    const tried = number === 1 ? name : `${name} ${number}`;
    if ((await holderOf(tx, keyOf(tried))) === null) return tried;
  }
}

/** The id of the device that has the name; a word where none may have it. */
async function holderOf(tx: Tx, key: string): Promise<string | null> {
  if (NOT_A_DEVICE.includes(key)) return "reserved";
  const row = await tx.selectFrom("devices").select("id").where("name_key", "=", key).executeTakeFirst();
  return row?.id ?? null;
}
