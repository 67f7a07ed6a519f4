import type { FocusEvent } from "react";

/** Whether the cursor goes to where the pad has nothing to do: not to a key of it, and not to another of its fields. */
export function leavesPad({ relatedTarget }: FocusEvent): boolean {
  return !(relatedTarget instanceof Element && relatedTarget.closest(".pad, [data-pad]") !== null);
}
