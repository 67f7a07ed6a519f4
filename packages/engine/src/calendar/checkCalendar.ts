import { listPhrases } from "../foundation/listPhrases";
import { type Phrase, say } from "../foundation/phrase";
import { duration } from "../foundation/quantity";
import { type Finding, finding } from "../foundation/stage";
import type { Job } from "./Bench";
import type { Films } from "./buildFilms";
import type { CalendarTask } from "./CalendarTask";
import { computeOpening } from "./computeOpening";
import type { Placed } from "./Placed";
import type { ShopTime } from "./ShopTime";
import type { WorkHours } from "./workHours";

/** What the builder must know of the days: windows that fall out of the hours, and where the calendar ends. */
export function checkCalendar(job: Job, time: ShopTime): Finding[] {
  const placed = [...job.placed.values()];
  const late = placed.flatMap((step) => [...checkWindow(job, step, time), ...checkTape(step, time)]);
  return [...joinSandFirst(late, placed), ...checkUnplaced(job, time)];
}

/** So many coats too old for the next are one matter, the hours', and told as one. */
const JOINED_FROM = 3;

function joinSandFirst(findings: readonly Finding[], placed: readonly Placed[]): Finding[] {
  const old = placed.filter(({ isLate, isCoat }) => isLate && isCoat);
  if (old.length < JOINED_FROM) return [...findings];
  const sandFirstS = old.reduce((sumS, step) => sumS + step.sandFirstS, 0);
  const names = listPhrases(
    old.map(({ id }) => say`${id}`),
    "comma",
  );
  const says = say`${old.length} coats begin when the coat below has stopped bonding: ${names}. Sand each dull first, ${duration(sandFirstS)} in all are planned for it; longer hours or a slower resin would spare it`;
  const one = finding("warning", "calendar.sand-first", "calendar", says);
  return [one, ...findings.filter(({ code }) => code !== "calendar.sand-first")];
}

function checkWindow(job: Job, placed: Placed, { format }: ShopTime): Finding[] {
  if (!placed.isLate || placed.closesS === null) return [];
  const path = `calendar[${placed.id}]`;
  if (!placed.isCoat) return [finding("warning", "calendar.window", path, sayWhyLate(job, placed, format))];
  const closes = format(placed.closesS);
  const says = say`${placed.id} begins after ${closes}, when the coat below has stopped bonding: sand that dull first, ${duration(placed.sandFirstS)} are planned for it`;
  return [finding("warning", "calendar.sand-first", path, says)];
}

/** Of laps that are cut too late: the air is too cold, it has happened, or the shop is shut. */
function sayWhyLate(job: Job, { id, closesS }: Placed, format: ShopTime["format"]): Phrase {
  const need = job.tasks.find((task) => task.id === id)?.needs.find(({ until }) => until === "trim");
  const film = job.placed.get(need?.step ?? "")?.film;
  const [opensS, untilS] = [film?.trim?.atS ?? job.resumeS, closesS ?? job.resumeS];
  if (untilS < opensS)
    return say`${id} is due in air too cold for the cloth to be cut while it is leathery: warm the shop`;
  const [opens, closes] = [format(opensS), format(untilS)];
  if (untilS < job.resumeS)
    return say`${id} was due from ${opens} to ${closes}: past that the cloth must be ground off`;
  return say`${id} is due from ${opens} to ${closes}, and the shop is shut: stay for it, open longer or warm the shop; past that the cloth must be ground off`;
}

function checkTape({ id, tape, film }: Placed, { format }: ShopTime): Finding[] {
  if (tape?.isLate !== true || film?.tape == null) return [];
  const says = say`the tape of ${id} is due at ${format(film.tape.atS)}, and the shop is shut: stay for it, open longer or warm the shop; a hard coat breaks along the tape`;
  return [finding("warning", "calendar.tape", `calendar[${id}]`, says)];
}

/** The first that could not be placed, and how many wait for it. */
function checkUnplaced(job: Job, { hours }: ShopTime): Finding[] {
  const out = job.tasks.filter(({ id }) => !job.placed.has(id));
  const first = out[0];
  if (first === undefined) return [];
  const opening = first.needs.every(({ step }) => job.placed.has(step)) ? computeOpening(job, first) : null;
  const isTooLong = opening !== null && hasWarmHour(job.films, first, { hours, fromS: opening.opensS });
  if (opening !== null && !isTooLong) {
    const says = say`from ${first.id} on no days are planned: as far as the shop's air is known, no working hour is warm enough for its resin; warm the shop, or list the days that follow`;
    return [finding("warning", "calendar.too-cold", `calendar[${first.id}]`, says)];
  }
  const says = isTooLong
    ? say`${first.id} takes ${duration(first.handsOnS)} in one go, and no day has hours for it: from there on no days are planned`
    : say`from ${first.id} on no days are planned: how far the coat before it has come is not known`;
  const code = isTooLong ? "calendar.hours-short" : "calendar.unknown";
  return [finding("warning", code, `calendar[${first.id}]`, says)];
}

/** Whether any working hour is warm enough for a coat to go on; work that is no coat waits for no warmth. */
function hasWarmHour(
  films: Films,
  task: CalendarTask,
  { hours, fromS }: { readonly hours: WorkHours; readonly fromS: number },
): boolean {
  if (task.cures === null) return true;
  for (let day = hours.dayAt(fromS); ; day = hours.dayAt(day.toS)) {
    const warmS = films.warmFromS(task, Math.max(day.fromS, fromS));
    if (warmS === null) return false;
    if (warmS < day.toS) return true;
  }
}
