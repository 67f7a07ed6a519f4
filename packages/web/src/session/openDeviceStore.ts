import { type DBSchema, openDB } from "idb";
import type { BoardOnDevice, DeviceStore, WaitingEntry } from "./DeviceStore";
import { keepInMemory } from "./keepInMemory";

interface Kept extends DBSchema {
  boards: { key: string; value: BoardOnDevice };
  entries: { key: number; value: Omit<WaitingEntry, "key">; indexes: { boardId: string } };
}

/** What this device keeps, in the browser's database; only as long as the page where the browser forbids one. */
export function openDeviceStore(): DeviceStore {
  const store = openKept().catch(keepInMemory);
  return {
    readBoard: async (id) => (await store).readBoard(id),
    keepBoard: async (board) => (await store).keepBoard(board),
    listUnsent: async () => (await store).listUnsent(),
    addEntry: async (boardId, entry) => (await store).addEntry(boardId, entry),
    firstEntry: async () => (await store).firstEntry(),
    dropEntry: async (key) => (await store).dropEntry(key),
    countEntries: async (boardId) => (await store).countEntries(boardId),
  };
}

async function openKept(): Promise<DeviceStore> {
  const db = await openDB<Kept>("lapline", 1, {
    upgrade(fresh) {
      fresh.createObjectStore("boards", { keyPath: "id" });
      fresh.createObjectStore("entries", { autoIncrement: true }).createIndex("boardId", "boardId");
    },
  });
  return {
    readBoard: (id) => db.get("boards", id),
    keepBoard: async (board) => void (await db.put("boards", board)),
    listUnsent: async () => (await db.getAll("boards")).filter((each) => each.isUnsent).map(({ id }) => id),
    // On the disk before it counts as kept: the battery may be the next to go.
    async addEntry(boardId, entry) {
      const tx = db.transaction("entries", "readwrite", { durability: "strict" });
      await Promise.all([tx.store.add({ boardId, entry }), tx.done]);
    },
    async firstEntry() {
      const cursor = await db.transaction("entries").store.openCursor();
      return cursor === null ? undefined : { key: cursor.key, ...cursor.value };
    },
    dropEntry: (key) => db.delete("entries", key),
    countEntries: (boardId) => db.countFromIndex("entries", "boardId", boardId),
  };
}
