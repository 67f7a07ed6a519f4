import type { RecordEntryFile } from "@lapline/contract";
import type { ShopFailure } from "../api/ShopFailure";
import type { DeviceStore } from "./DeviceStore";
import type { ShopCalls } from "./ShopCalls";

/** The entries that wait for the shop's computer, of all boards. */
export interface Outbox {
  /** Resolves once the entry is kept on this device. */
  add(boardId: string, entry: RecordEntryFile): Promise<void>;
  /** Sends what waits, the oldest first, until there is none or one could not be sent: then why. */
  flush(): Promise<ShopFailure | null>;
  count(boardId: string): Promise<number>;
  /** Calls back when an entry came or went; gives what ends it. */
  subscribe(heard: () => void): () => void;
}

interface OutboxParts {
  readonly device: DeviceStore;
  readonly shop: Pick<ShopCalls, "sendEntry">;
  /** Runs one sender at a time, in whichever tab. */
  readonly alone: <T>(work: () => Promise<T>) => Promise<T>;
}

/**
 * Sends entries in their order, each once: an entry is dropped here only after it was kept there, and sent again it is the same
 * entry, since its id was made here.
 */
export function openOutbox({ device, shop, alone }: OutboxParts): Outbox {
  const heard = new Set<() => void>();
  const tell = () => {
    for (const each of heard) each();
  };
  let running: Promise<ShopFailure | null> | null = null;
  const sendAll = async (): Promise<ShopFailure | null> => {
    for (;;) {
      const next = await device.firstEntry();
      if (next === undefined) return null;
      const result = await shop.sendEntry(next.boardId, next.entry);
      // One that is refused goes with the board's record, and what is wrong with it is told there.
      if (result.kind !== "kept" && result.kind !== "refused") return result;
      await device.dropEntry(next.key);
      tell();
    }
  };
  return {
    async add(boardId, entry) {
      await device.addEntry(boardId, entry);
      tell();
    },
    flush() {
      running ??= alone(sendAll).finally(() => {
        running = null;
      });
      return running;
    },
    count: (boardId) => device.countEntries(boardId),
    subscribe(call) {
      heard.add(call);
      return () => void heard.delete(call);
    },
  };
}
