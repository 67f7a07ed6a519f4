/** Whether text of the form `2026-04-11T09:00` names a day of the calendar and a time of the clock. */
export function isWallTime(text: string): boolean {
  const parts = /^(\d{4})-(\d\d)-(\d\d)T(\d\d):(\d\d)(?::(\d\d))?$/.exec(text);
  if (parts === null) return false;
  const [year = 0, month = 0, day = 0, hour = 0, minute = 0, second = 0] = parts
    .slice(1)
    .map((part) => Number(part ?? 0));
  const isOfClock = hour <= 23 && minute <= 59 && second <= 59;
  return isOfClock && month >= 1 && month <= 12 && day >= 1 && day <= daysIn(year, month);
}

function daysIn(year: number, month: number): number {
  const isLeap = (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
  if (month === 2) return isLeap ? 29 : 28;
  return [4, 6, 9, 11].includes(month) ? 30 : 31;
}
