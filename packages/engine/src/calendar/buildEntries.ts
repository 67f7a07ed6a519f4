import type { Job } from "./Bench";
import type { CalendarEntry, CalendarMoment, MomentKind } from "./CalendarPlan";
import type { CalendarTask } from "./CalendarTask";
import type { Film, Moment } from "./Film";
import { computeOpensS } from "./needTimes";
import type { Placed } from "./Placed";

type Format = (passedS: number) => string;

/** The calendar as it is told: what stands in it in order of time, then what could not be placed. */
export function buildEntries(
  job: Job,
  latest: ReadonlyMap<string, number>,
  format: Format,
): readonly CalendarEntry[] {
  const placed = [...job.placed.values()].toSorted((a, b) => a.beginS - b.beginS || a.endS - b.endS);
  const entries = placed.map((step) => entryOf(job, step, { latestS: latest.get(step.id), format }));
  const unplaced = job.tasks.filter(({ id }) => !job.placed.has(id));
  return [...entries, ...unplaced.map(emptyEntry)];
}

function entryOf(
  job: Job,
  placed: Placed,
  { latestS, format }: { readonly latestS: number | undefined; readonly format: Format },
): CalendarEntry {
  const film = bandsOf(job, placed);
  const ready = readyOf(job, { ...placed, film });
  const told = (timeS: number | null | undefined) => (timeS == null ? null : format(timeS));
  return {
    step: placed.id,
    startsAt: format(placed.beginS),
    endsAt: format(placed.endS),
    readyAt: told(ready?.atS),
    readyLowAt: told(ready?.lowS),
    readyHighAt: told(ready?.highS),
    opensAt: placed.isFact ? null : format(placed.opensS),
    closesAt: told(placed.closesS),
    latestStartAt: told(latestS),
    slackS: latestS === undefined ? null : latestS - placed.beginS,
    because: { cause: placed.cause, step: placed.opener },
    sittings: placed.sittings.map(({ beginS, endS }) => ({ startsAt: format(beginS), endsAt: format(endS) })),
    moments: film === null ? [] : listMoments(film, format),
    sandFirstS: placed.sandFirstS,
    late: placed.isLate,
    done: placed.isFact,
  };
}

function bandsOf(job: Job, { id, film, beginS, endS, sandFirstS, isFact }: Placed): Film | null {
  const task = job.tasks.find((each) => each.id === id);
  if (film === null || task === undefined) return null;
  const recorded = isFact ? job.films.asRecorded(task) : null;
  return recorded ?? job.films.withBands(task, { beginS: beginS + sandFirstS, endS });
}

/** When the first step that follows may begin, with its band where a coat decides it. */
function readyOf(job: Job, placed: Placed): Moment | null {
  const moments = (job.followers.get(placed.id) ?? []).flatMap(({ need }): Moment[] => {
    const atS = computeOpensS(placed, need);
    if (atS === null) return [];
    const { until } = need;
    const film = until === "dry" || until === "hands-off" ? null : placed.film?.[until];
    return [film ?? { atS, lowS: null, highS: null }];
  });
  if (moments.length === 0) {
    return placed.readyS === null ? null : { atS: placed.readyS, lowS: null, highS: null };
  }
  return moments.reduce((first, moment) => (moment.atS < first.atS ? moment : first));
}

function listMoments(film: Film, format: Format): CalendarMoment[] {
  const told = (timeS: number | null | undefined) => (timeS == null ? null : format(timeS));
  const kinds: ReadonlyArray<readonly [MomentKind, Moment | null, Moment | null]> = [
    ["trim", film.trim, film.trimUntil],
    ["tape", film.tape, film.tapeUntil],
    ["flip", film.flip, null],
    ["recoat", film.recoat, film.recoatUntil],
    ["sand", film.sandable, null],
    ["full", film.full, null],
  ];
  return kinds.flatMap(([kind, moment, until]) =>
    moment === null
      ? []
      : [
          {
            kind,
            at: format(moment.atS),
            lowAt: told(moment.lowS),
            highAt: told(moment.highS),
            untilAt: told(until?.atS),
          },
        ],
  );
}

function emptyEntry({ id }: CalendarTask): CalendarEntry {
  return {
    step: id,
    startsAt: null,
    endsAt: null,
    readyAt: null,
    readyLowAt: null,
    readyHighAt: null,
    opensAt: null,
    closesAt: null,
    latestStartAt: null,
    slackS: null,
    because: { cause: "unknown", step: null },
    sittings: [],
    moments: [],
    sandFirstS: 0,
    late: false,
    done: false,
  };
}
