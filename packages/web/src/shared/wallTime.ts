/** The shop's wall clock as a board file has it: `2026-04-11T09:00`. */
export function wallTime(now: Date): string {
  const two = (part: number) => String(part).padStart(2, "0");
  const day = [now.getFullYear(), two(now.getMonth() + 1), two(now.getDate())].join("-");
  return `${day}T${two(now.getHours())}:${two(now.getMinutes())}`;
}
