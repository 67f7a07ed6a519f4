/** What was to be taken in is no whole copy of a shop, or there is no room for it here. Nothing was changed. */
export class ArchiveRefusedError extends Error {
  readonly why: "broken" | "not-empty";

  constructor(message: string, why: "broken" | "not-empty" = "broken") {
    super(message);
    this.why = why;
  }
}
