/** Whether a caution is of all work and names no harm of its own; the others read "harm: what to do". */
export function isGeneral(caution: string): boolean {
  return !caution.includes(":");
}
