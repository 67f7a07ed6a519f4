export type { BoardVersion, StoredBoard, WriteCondition } from "./boards/BoardStore";
export { idsFromName } from "./boards/idsFromName";
export { isBoardId } from "./boards/isBoardId";
export type { Change } from "./Changes";
export { NewerDatabaseError } from "./database/migrate";
export type { JournalEntry } from "./journal/JournalStore";
export { openShop } from "./openShop";
export type { Shop } from "./Shop";
export { StoreUnavailableError } from "./StoreUnavailableError";
