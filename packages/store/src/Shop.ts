import type { BoardStore } from "./boards/BoardStore";
import type { Changes } from "./Changes";
import type { DeviceStore } from "./devices/DeviceStore";
import type { JournalStore } from "./journal/JournalStore";
import type { Unavailable } from "./StoreUnavailableError";

/** Everything the shop keeps. */
export interface Shop {
  readonly boards: BoardStore;
  readonly journal: JournalStore;
  readonly changes: Changes;
  readonly devices: DeviceStore;
  /** How the last write went: whether what is sent now can be kept. */
  state(): "ok" | Unavailable;
  /** What the database's own check finds wrong; empty where it is whole. */
  check(): Promise<readonly string[]>;
  /** The whole shop at one moment as lines of JSON, handed to `sink` in pieces. Writers are not held up. */
  export(sink: (lines: string) => Promise<void>): Promise<void>;
  /** Takes what `export` gave into a shop without boards, all or nothing; throws ArchiveRefusedError. */
  import(lines: AsyncIterable<string>): Promise<void>;
  close(): Promise<void>;
}
