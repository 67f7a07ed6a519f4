export { calendarIcs } from "./calendarIcs";
