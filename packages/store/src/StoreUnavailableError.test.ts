import { expect, test } from "vitest";
import { StoreUnavailableError, toldError } from "./StoreUnavailableError";

// Codes: SQLite's result codes, POSIX errno, PostgreSQL's SQLSTATE (appendix A of its manual).
test.each([
  ["SQLITE_FULL", "full"],
  ["ENOSPC", "full"],
  ["53100", "full"],
  ["SQLITE_READONLY", "read-only"],
  ["SQLITE_READONLY_DBMOVED", "read-only"],
  ["EROFS", "read-only"],
  ["25006", "read-only"],
  ["SQLITE_BUSY", "away"],
  ["SQLITE_IOERR_WRITE", "away"],
  ["ECONNREFUSED", "away"],
  ["57P01", "away"],
  ["08006", "away"],
])("%s is told as %s", (code, reason) => {
  const told = toldError(Object.assign(new Error("x"), { code }));
  expect(told).toBeInstanceOf(StoreUnavailableError);
  expect(told).toMatchObject({ reason });
});

test.each(["23505", "SQLITE_CONSTRAINT", "22P05", ""])("%s is a fault of ours and stays itself", (code) => {
  const error = Object.assign(new Error("x"), { code });
  expect(toldError(error)).toBe(error);
});
