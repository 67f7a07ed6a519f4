import type { Tell } from "@lapline/present";

/** Who kept something: a device by the name that it was given, or what is none and has a word of its own. */
export function deviceName(device: string, t: Tell): string {
  const others: Readonly<Record<string, string>> = {
    "this machine": t`this machine`,
    demo: t`demo`,
    "copy of a shop": t`copy of a shop`,
    "folder of files": t`folder of files`,
  };
  return others[device] ?? device;
}
