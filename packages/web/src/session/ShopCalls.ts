import type { RecordEntryFile } from "@lapline/contract";
import type { EntryResult, KeptBoard, SavedVersion, SaveResult } from "../api/boardClient";

/** The shop's computer, as a session asks it. */
export interface ShopCalls {
  readBoard(id: string): Promise<KeptBoard>;
  listVersions(id: string): Promise<readonly SavedVersion[]>;
  saveBoard(id: string, text: string, revision: string | null): Promise<SaveResult>;
  sendEntry(id: string, entry: RecordEntryFile): Promise<EntryResult>;
}
