/** What is typed as the id that a board file takes. */
export function ownId(typed: string): string {
  return typed.trim().toLowerCase().replaceAll(/\s+/g, "-");
}
