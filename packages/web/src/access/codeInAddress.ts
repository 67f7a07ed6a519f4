/** The code that a scanned address brings behind its #, where no browser sends it on; it is taken out of the address. */
export function takeCodeFromAddress(): string | null {
  const [, code] = /^#(\d{8})$/.exec(window.location.hash) ?? [];
  if (code === undefined) return null;
  window.history.replaceState(null, "", window.location.pathname);
  return code;
}
