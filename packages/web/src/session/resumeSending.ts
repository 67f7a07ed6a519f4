import { openDeviceStore } from "./openDeviceStore";

/** Opens each board of which something waits on this device, so that it goes out, whatever page is looked at. */
export async function resumeSending(): Promise<void> {
  const unsent = await openDeviceStore().listUnsent();
  if (unsent.length === 0) return;
  const { sessionOf } = await import("./sessions");
  for (const id of unsent) sessionOf(id);
}
