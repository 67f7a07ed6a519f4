import type { BoardOnDevice, DeviceStore } from "./DeviceStore";

/** Keeps the newest state on this device, one writing at a time; what could not be kept is on the page all the same. */
export function keepNewest(device: DeviceStore) {
  let next: BoardOnDevice | null = null;
  let isWriting = false;
  const write = async () => {
    isWriting = true;
    while (next !== null) {
      const now = next;
      next = null;
      await device.keepBoard(now).catch(() => undefined);
    }
    isWriting = false;
  };
  return (board: BoardOnDevice) => {
    next = board;
    if (!isWriting) void write();
  };
}
