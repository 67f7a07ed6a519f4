export type Unavailable = "full" | "read-only" | "away";

const WORDS: Readonly<Record<Unavailable, string>> = {
  full: "The disk is full: nothing new can be kept until there is room. What was saved before is safe.",
  "read-only":
    "The disk can only be read: nothing new can be kept until it can be written. What was saved before is safe.",
  away: "The database cannot be reached just now. What was saved before is safe; try again in a moment.",
};

/** Nothing of the write was kept, because of the disk or the database, not because of what was sent. */
export class StoreUnavailableError extends Error {
  readonly reason: Unavailable;

  constructor(reason: Unavailable, cause?: unknown) {
    super(WORDS[reason], { cause });
    this.reason = reason;
  }
}

const REASONS: ReadonlyArray<readonly [Unavailable, RegExp]> = [
  ["full", /^(?:SQLITE_FULL|ENOSPC|EDQUOT|53100)$/],
  ["read-only", /^(?:SQLITE_READONLY.*|EROFS|EACCES|EPERM|25006)$/],
  // PostgreSQL: classes 08 (connection), 53 (resources) and 57P (shut down).
  [
    "away",
    /^(?:SQLITE_(?:BUSY|IOERR|CANTOPEN|LOCKED).*|E(?:CONNREFUSED|CONNRESET|PIPE|NOENT|NOTFOUND|TIMEDOUT|IO)|08.{3}|53.{3}|57P.{2})$/,
  ],
];
const CUT_OFF =
  /connection terminated|client has encountered a connection error|server closed the connection/i;

/** The error as it concerns a person: the disk or the database named where it is that, and itself otherwise. */
export function toldError(error: unknown): unknown {
  if (!(error instanceof Error) || error instanceof StoreUnavailableError) return error;
  const code = "code" in error ? String(error.code) : "";
  const reason =
    REASONS.find(([, codes]) => codes.test(code))?.[0] ?? (CUT_OFF.test(error.message) ? "away" : undefined);
  return reason === undefined ? error : new StoreUnavailableError(reason, error);
}
