/** A number with so many decimals, never `-0`. */
export function formatDecimal(value: number, decimals: number): string {
  const text = value.toFixed(decimals);
  return Number(text) === 0 ? text.replace("-", "") : text;
}
