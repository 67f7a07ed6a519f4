const BOARD = "/api/boards/[^/]+";
const READING = new Set(["GET", "HEAD"]);
/** Who is let in, and how, is the keeper's to see, and the whole shop the keeper's to carry away. */
const KEEPERS = /^\/api\/(?:devices|pairing|archive)(?:\/|$)/;
/** What adds and takes nothing away: a board's next version keeps those before it. */
const ADDS: ReadonlyArray<readonly [string, RegExp]> = [
  ["POST", /^\/api\/plan$/],
  ["POST", /^\/api\/boards$/],
  ["PUT", new RegExp(`^${BOARD}$`)],
  ["POST", new RegExp(`^${BOARD}/journal$`)],
  ["POST", new RegExp(`^${BOARD}/photos$`)],
  ["POST", new RegExp(`^${BOARD}/sheets$`)],
];

/** Whether a device at the bench may ask this: read, and add. Whatever is not named here is the keeper's. */
export function mayBench(method: string, path: string): boolean {
  if (READING.has(method)) return !KEEPERS.test(path);
  return ADDS.some(([adds, form]) => adds === method && form.test(path));
}
