import { type BoardFile, isSame } from "@lapline/contract";
import type { ShelfRecord } from "../api/shelfClient";

/** The shelves of which a board has records of its own, in the order of a materials list. */
export const BOARD_SHELVES = [
  "resins",
  "cloths",
  "foams",
  "woods",
  "fillers",
  "tints",
  "prices",
  "rolls",
] as const;
export type BoardShelf = (typeof BOARD_SHELVES)[number];

/** One material, price or roll, on this board, on the shop's shelf, or on both. */
export interface ShelfRow {
  readonly shelf: BoardShelf;
  readonly id: string;
  /** As its maker calls it; its id where it has no name. */
  readonly name: string;
  readonly onBoard: unknown;
  readonly onShelf: Pick<ShelfRecord, "record" | "revision"> | null;
  readonly state: "on-shelf" | "on-board" | "same" | "different";
}

interface Listed {
  readonly file: BoardFile;
  readonly records: readonly ShelfRecord[];
  /** What the board's cost asks for: other materials' prices say nothing here. */
  readonly priced: readonly string[];
}

/** What this board and the shop's shelves hold of each other's, by shelf and name. */
export function listShelfRows({ file, records, priced }: Listed): readonly ShelfRow[] {
  return BOARD_SHELVES.flatMap((shelf) => {
    const own = recordsOf(file, shelf);
    const isPrice = shelf === "prices" || shelf === "rolls";
    const shelved = new Map(
      records
        .filter((each) => each.shelf === shelf && (!isPrice || priced.includes(each.id) || each.id in own))
        .map((each) => [each.id, each]),
    );
    const ids = [...new Set([...Object.keys(own), ...shelved.keys()])].sort();
    return ids.map((id) => rowOf(shelf, id, own[id], shelved.get(id) ?? null));
  });
}

function rowOf(shelf: BoardShelf, id: string, onBoard: unknown, onShelf: ShelfRecord | null): ShelfRow {
  const name = nameOf(onBoard) ?? nameOf(onShelf?.record) ?? id;
  const state =
    onShelf === null
      ? "on-board"
      : onBoard === undefined
        ? "on-shelf"
        : isSame(onBoard, onShelf.record)
          ? "same"
          : "different";
  return { shelf, id, name, onBoard, onShelf, state };
}

/** Where a record of a shelf stands in a board file. */
export function placeOnBoard(shelf: BoardShelf, id: string): readonly string[] {
  return shelf === "prices" || shelf === "rolls" ? ["shop", shelf, id] : ["materials", shelf, id];
}

function recordsOf(file: BoardFile, shelf: BoardShelf): Readonly<Record<string, unknown>> {
  return (shelf === "prices" || shelf === "rolls" ? file.shop?.[shelf] : file.materials?.[shelf]) ?? {};
}

function nameOf(record: unknown): string | null {
  const name = typeof record === "object" && record !== null && "name" in record ? record.name : null;
  return typeof name === "string" && name !== "" ? name : null;
}
