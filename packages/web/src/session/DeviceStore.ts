import type { RecordEntryFile } from "@lapline/contract";
import type { HeldBoard } from "./HeldBoard";

/** An entry that waits for the shop's computer. */
export interface WaitingEntry {
  /** Grows with each entry: their order. */
  readonly key: number;
  readonly boardId: string;
  readonly entry: RecordEntryFile;
}

/** A board as this device keeps it for the next time it is opened. */
export interface BoardOnDevice {
  readonly id: string;
  readonly held: HeldBoard;
  /** Something of it is not yet on the shop's computer. */
  readonly isUnsent: boolean;
}

/** What this device keeps, through a closed page, a dead battery and days without network. */
export interface DeviceStore {
  readBoard(id: string): Promise<BoardOnDevice | undefined>;
  keepBoard(board: BoardOnDevice): Promise<void>;
  /** The boards of which something waits. */
  listUnsent(): Promise<readonly string[]>;
  addEntry(boardId: string, entry: RecordEntryFile): Promise<void>;
  /** The oldest that waits. */
  firstEntry(): Promise<WaitingEntry | undefined>;
  dropEntry(key: number): Promise<void>;
  countEntries(boardId: string): Promise<number>;
}
