export { ArchiveRefusedError } from "./archive/ArchiveRefusedError";
export { DEMO_DEVICE } from "./archive/emptyShop";
export { keepDailyCopy } from "./archive/keepDailyCopy";
export { makeCopy } from "./archive/makeCopy";
export type { NewestBoard, StoredBoard, WriteCondition } from "./boards/BoardStore";
export { idsFromName } from "./boards/idsFromName";
export { isBoardId } from "./boards/isBoardId";
export { readOnce } from "./boards/readOnce";
export type { Change } from "./Changes";
export { NewerDatabaseError } from "./database/migrate";
export type { Device, DeviceRole } from "./devices/DeviceStore";
export type { JournalEntry } from "./journal/JournalStore";
export { openShop } from "./openShop";
export {
  LARGEST_PHOTO_BYTES,
  LONGEST_PHOTO_SIDE,
  MOST_PHOTO_PIXELS,
  type Photo,
} from "./photos/PhotoStore";
export type { Shop } from "./Shop";
export { StoreUnavailableError, toldError } from "./StoreUnavailableError";
export type { IssuedSheet } from "./sheets/SheetStore";
export { type ShelfItem, TAKEN_OFF } from "./shelf/ShelfStore";
