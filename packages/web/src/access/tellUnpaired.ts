export const UNPAIRED = "lapline:unpaired";

/** The shop's computer did not know this device just now: the gate asks whether it is still let in. */
export function tellUnpaired(): void {
  window.dispatchEvent(new Event(UNPAIRED));
}
