const NAME = "lapline.send";

/** Runs one sender at a time, in whichever tab; where the browser has no locks, ids alone see to it that each is kept once. */
export async function runAlone<T>(work: () => Promise<T>): Promise<T> {
  // Browsers keep locks from a page that came over the shop's network without a certificate.
  const locks = (navigator as Partial<Pick<Navigator, "locks">>).locks;
  return locks === undefined ? work() : locks.request(NAME, work);
}
