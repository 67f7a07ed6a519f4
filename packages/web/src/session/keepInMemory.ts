import type { BoardOnDevice, DeviceStore, WaitingEntry } from "./DeviceStore";

/** Keeps as long as the page: where the browser forbids a database of its own. */
export function keepInMemory(): DeviceStore {
  const boards = new Map<string, BoardOnDevice>();
  let entries: readonly WaitingEntry[] = [];
  let last = 0;
  return {
    readBoard: async (id) => boards.get(id),
    keepBoard: async (board) => void boards.set(board.id, board),
    listUnsent: async () => [...boards.values()].filter((each) => each.isUnsent).map(({ id }) => id),
    async addEntry(boardId, entry) {
      last += 1;
      entries = [...entries, { key: last, boardId, entry }];
    },
    firstEntry: async () => entries[0],
    async dropEntry(key) {
      entries = entries.filter((each) => each.key !== key);
    },
    countEntries: async (boardId) => entries.filter((each) => each.boardId === boardId).length,
  };
}
