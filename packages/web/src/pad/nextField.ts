/** The field after this one among those that the pad can fill, in the order in which they stand; null after the last. */
export function nextField(id: string): HTMLElement | null {
  const fields = [...document.querySelectorAll<HTMLElement>("input[data-pad]")];
  const at = fields.findIndex((field) => field.id === id);
  return at === -1 ? null : (fields[at + 1] ?? null);
}

/** The cursor into a field, and the field above the pad that then stands at the foot of the screen. */
export function goToField(field: HTMLElement): void {
  field.focus({ preventScroll: true });
  field.scrollIntoView({ block: "start" });
}
