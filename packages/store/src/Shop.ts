import type { BoardStore } from "./boards/BoardStore";
import type { Changes } from "./Changes";
import type { DeviceStore } from "./devices/DeviceStore";
import type { JournalStore } from "./journal/JournalStore";
import type { PhotoStore } from "./photos/PhotoStore";
import type { Unavailable } from "./StoreUnavailableError";
import type { SheetStore } from "./sheets/SheetStore";
import type { ShelfStore } from "./shelf/ShelfStore";

/** Everything the shop keeps. */
export interface Shop {
  readonly boards: BoardStore;
  readonly journal: JournalStore;
  readonly changes: Changes;
  readonly devices: DeviceStore;
  readonly shelf: ShelfStore;
  readonly photos: PhotoStore;
  readonly sheets: SheetStore;
  /** How the last write went: whether what is sent now can be kept. */
  state(): "ok" | Unavailable;
  /** What the database's own check finds wrong; empty where it is whole. */
  check(): Promise<readonly string[]>;
  /** The whole shop at one moment as lines of JSON, handed to `sink` in pieces. Writers are not held up. */
  export(sink: (lines: string) => Promise<void>, options?: ExportOptions): Promise<void>;
  /** Takes what `export` gave into a shop that holds nothing of its own, all or nothing; throws ArchiveRefusedError. */
  import(copy: AsyncIterable<Uint8Array>, options?: ImportOptions): Promise<void>;
  close(): Promise<void>;
}

export interface ExportOptions {
  /** Leaves the photos' and Sheets' files out: they lie beside the copy, in the shop's folder. */
  readonly withoutContents?: boolean;
}

export interface ImportOptions {
  /** The folder, `content` of a shop, with the files of a copy that was made without them. */
  readonly contentFolder?: string;
  /** Waits for the whole copy first, on the disk, so that a slow sender holds no writer up. */
  readonly isSlow?: boolean;
}
