import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Job, Shop } from "./Bench";
import type { Films } from "./buildFilms";
import { buildWallClock } from "./buildWallClock";
import type { CalendarTask } from "./CalendarTask";
import type { Film, HandsOn, Moment } from "./Film";
import { fillCalendar } from "./fillCalendar";
import { listFollowers } from "./listFollowers";
import { buildWorkHours } from "./workHours";

const HOUR_S = 3600;
const DAY_S = 86_400;
const SLOT_S = HOUR_S / 4;
const HOURS = { fromS: 9 * HOUR_S, toS: 15 * HOUR_S };

/** Coats of a simple kind: each stage after so many quarters of an hour, nights counted half. */
interface Cure {
  readonly trimSlots: number;
  readonly trimForSlots: number;
  readonly flipSlots: number;
  readonly recoatForSlots: number;
}

/** Warm hours since midnight of day nought; a night's hour counts half. */
function warmS(atS: number): number {
  const day = Math.floor(atS / DAY_S);
  const inDayS = atS - day * DAY_S;
  const workedS = Math.min(Math.max(inDayS - HOURS.fromS, 0), HOURS.toS - HOURS.fromS);
  const dayWarmS = (DAY_S + (HOURS.toS - HOURS.fromS)) / 2;
  return day * dayWarmS + (inDayS + workedS) / 2;
}

/** The quarter of an hour at which so much warmth has been had. */
function readyS(fromS: number, slots: number): number {
  let atS = fromS;
  while (warmS(atS) - warmS(fromS) < slots * SLOT_S) atS += SLOT_S;
  return atS;
}

function filmsOf(cure: Cure): Films {
  const moment = (atS: number): Moment => ({ atS, lowS: null, highS: null });
  const at = ({ cures }: CalendarTask, { endS }: HandsOn): Film | null => {
    if (cures === null) return null;
    return {
      trim: moment(readyS(endS, cure.trimSlots)),
      trimUntil: moment(readyS(endS, cure.trimSlots + cure.trimForSlots)),
      tape: null,
      tapeUntil: null,
      flip: moment(readyS(endS, cure.flipSlots)),
      recoat: moment(readyS(endS, cure.trimSlots)),
      recoatUntil: moment(readyS(endS, cure.flipSlots + cure.recoatForSlots)),
      sandable: moment(readyS(endS, 2 * cure.flipSlots)),
      full: null,
    };
  };
  return { at, withBands: at, asRecorded: () => null, warmFromS: (_, atS) => atS };
}

interface Small {
  readonly tasks: readonly CalendarTask[];
  readonly cure: Cure;
}

type Rule = readonly [step: number, until: CalendarTask["needs"][number]["until"]];

function task(id: number, cures: boolean, slots: number, needs: readonly Rule[]): CalendarTask {
  return {
    id: `${id}`,
    needs: needs.map(([step, until]) => ({ step: `${step}`, until, waitS: null })),
    handsOnS: slots * SLOT_S,
    cures: cures ? `${id}` : null,
    coat: cures ? `${id}` : null,
    noLoadS: null,
    done: false,
    doneAt: null,
  };
}

/** A coat and the cutting of its laps, a coat of the other face, and works that wait for one of them or for nothing. */
const smalls: fc.Arbitrary<Small> = fc
  .record({
    cure: fc.record({
      trimSlots: fc.integer({ min: 1, max: 4 }),
      trimForSlots: fc.integer({ min: 1, max: 4 }),
      flipSlots: fc.integer({ min: 5, max: 12 }),
      recoatForSlots: fc.integer({ min: 8, max: 60 }),
    }),
    slots: fc.array(fc.integer({ min: 1, max: 8 }), { minLength: 5, maxLength: 5 }),
    second: fc.constantFrom("flip" as const, "recoat" as const, "sandable" as const),
    third: fc.constantFrom("hands-off" as const, "flip" as const, "sandable" as const),
    fourth: fc.constantFrom(0, 1, 2, 3),
  })
  .map(({ cure, slots, second, third, fourth }) => ({
    cure,
    tasks: [
      task(0, false, slots[0]!, []),
      task(1, true, slots[1]!, []),
      task(2, false, 1, [[1, "trim"]]),
      task(3, true, slots[2]!, [
        [1, second],
        [2, "hands-off"],
      ]),
      task(4, false, slots[3]!, [
        [fourth, fourth === 3 ? third : "hands-off"],
        [0, "hands-off"],
      ]),
    ],
  }));

const clock = buildWallClock([]);
const EMPTY: Shop = {
  hours: buildWorkHours(clock, HOURS.fromS, HOURS.toS),
  busy: [],
  stands: 1,
  holdings: [],
};

function finishOf({ tasks, cure }: Small): number | null {
  const job: Job = {
    number: 0,
    tasks,
    followers: listFollowers(tasks),
    films: filmsOf(cure),
    resumeS: HOURS.fromS,
    placed: new Map(),
  };
  const placed = [...fillCalendar(EMPTY, [job]).jobs[0]!.placed.values()];
  // A missed window costs sanding or grinding, which the search below does not know.
  if (placed.length < tasks.length || placed.some(({ isLate }) => isLate)) return null;
  return Math.max(...placed.map(({ endS }) => endS));
}

/** When a film comes to a stage that its coat must reach. */
function reached(film: Film | null, stage: "trim" | "flip" | "recoatUntil"): number {
  const atS = film?.[stage]?.atS;
  if (atS === undefined) throw new Error(`the film never comes to ${stage}`);
  return atS;
}

/** Whether the steps can be put on the quarters of the first days so that all is done before `byS`, by trying them all. */
function canEndBefore({ tasks, cure }: Small, byS: number): boolean {
  const films = filmsOf(cure);
  const placed = new Map<string, HandsOn & { readonly film: Film | null }>();
  const isFree = (beginS: number, endS: number) =>
    [...placed.values()].every((other) => endS <= other.beginS || beginS >= other.endS);
  const isAllowed = (each: CalendarTask, beginS: number) =>
    each.needs.every(({ step, until }) => {
      const needed = placed.get(step)!;
      if (until === "hands-off" || until === "dry") return beginS >= needed.endS;
      const { film } = needed;
      // Laps are cut as soon as they can be: nothing else is begun that would be in the way.
      const closesS =
        until === "trim" ? reached(film, "trim") : until === "recoat" ? reached(film, "recoatUntil") : byS;
      return beginS >= (film?.[until]?.atS ?? needed.endS) && beginS <= closesS;
    });
  const tryNext = (i: number): boolean => {
    const each = tasks[i];
    if (each === undefined) return true;
    for (let beginS = HOURS.fromS; beginS + each.handsOnS < byS; beginS += SLOT_S) {
      const endS = beginS + each.handsOnS;
      const inDayS = beginS % DAY_S;
      if (inDayS < HOURS.fromS || inDayS + each.handsOnS > HOURS.toS) continue;
      if (!isAllowed(each, beginS) || !isFree(beginS, endS)) continue;
      placed.set(each.id, { beginS, endS, film: films.at(each, { beginS, endS }) });
      if (tryNext(i + 1)) return true;
      placed.delete(each.id);
    }
    return false;
  };
  return tryNext(0);
}

describe("fillCalendar", () => {
  it("ends as soon as trying every quarter of an hour for every step does, in 300 small cases", () => {
    let compared = 0;
    for (const small of fc.sample(smalls, { numRuns: 300, seed: 20260411 })) {
      const finishS = finishOf(small);
      if (finishS === null) continue;
      compared++;
      expect(canEndBefore(small, finishS)).toBe(false);
      expect(canEndBefore(small, finishS + 1)).toBe(true);
    }
    expect(compared).toBeGreaterThan(200);
  });
});

/** Two boards: on each a coat and the cutting of its laps, and a work that waits for the coat. */
const pairs = fc
  .record({
    cure: fc.record({
      trimSlots: fc.integer({ min: 1, max: 3 }),
      trimForSlots: fc.integer({ min: 1, max: 4 }),
      flipSlots: fc.integer({ min: 4, max: 10 }),
      recoatForSlots: fc.constant(60),
    }),
    slots: fc.array(fc.integer({ min: 1, max: 8 }), { minLength: 4, maxLength: 4 }),
    until: fc.constantFrom("flip" as const, "hands-off" as const),
    stands: fc.integer({ min: 1, max: 2 }),
  })
  .map(({ cure, slots, until, stands }) => {
    const board = (first: number) => [
      task(0, true, slots[first]!, []),
      task(1, false, 1, [[0, "trim"]]),
      task(2, false, slots[first + 1]!, [
        [0, until],
        [1, "hands-off"],
      ]),
    ];
    return { cure, stands, boards: [board(0), board(2)] };
  });

type Pair = typeof pairs extends fc.Arbitrary<infer Value> ? Value : never;

function fillPair({ boards, cure, stands }: Pair) {
  const jobs = boards.map((tasks, number): Job => {
    return {
      number,
      tasks,
      followers: listFollowers(tasks),
      films: filmsOf(cure),
      resumeS: HOURS.fromS,
      placed: new Map(),
    };
  });
  return fillCalendar({ ...EMPTY, stands }, jobs);
}

/** The same search for two boards: one crew, and a board keeps its stands until its coat can be turned. */
function canPairEndBefore({ boards, cure, stands }: Pair, byS: number): boolean {
  const films = filmsOf(cure);
  const all = boards.flatMap((tasks, job) => tasks.map((each) => ({ job, each })));
  const placed: Array<HandsOn & { job: number; id: string; film: Film | null }> = [];
  const heldUntilS = (step: (typeof placed)[number]) => Math.max(step.endS, step.film?.flip?.atS ?? 0);
  const tryNext = (i: number): boolean => {
    const next = all[i];
    if (next === undefined) return true;
    const { job, each } = next;
    for (let beginS = HOURS.fromS; beginS + each.handsOnS < byS; beginS += SLOT_S) {
      const endS = beginS + each.handsOnS;
      const inDayS = beginS % DAY_S;
      if (inDayS < HOURS.fromS || inDayS + each.handsOnS > HOURS.toS) continue;
      const step = { job, id: each.id, beginS, endS, film: films.at(each, { beginS, endS }) };
      const isOpen = each.needs.every(({ step: id, until }) => {
        const needed = placed.find((other) => other.job === job && other.id === id)!;
        if (until === "trim") return beginS === reached(needed.film, "trim");
        return beginS >= (until === "flip" ? reached(needed.film, "flip") : needed.endS);
      });
      const isFree = placed.every((other) => endS <= other.beginS || beginS >= other.endS);
      const hasStand =
        stands > 1 ||
        placed.every(
          (other) => other.job === job || heldUntilS(step) <= other.beginS || beginS >= heldUntilS(other),
        );
      if (!isOpen || !isFree || !hasStand) continue;
      placed.push(step);
      if (tryNext(i + 1)) return true;
      placed.pop();
    }
    return false;
  };
  return tryNext(0);
}

describe("two boards", () => {
  it("on one or two pairs of stands end as soon as any way to place their steps, in 150 small cases", () => {
    let compared = 0;
    for (const pair of fc.sample(pairs, { numRuns: 150, seed: 20260411 })) {
      const steps = fillPair(pair).jobs.flatMap(({ placed }) => [...placed.values()]);
      if (steps.some(({ isLate }) => isLate)) continue;
      const finishS = Math.max(...steps.map(({ endS }) => endS));
      compared++;
      expect(canPairEndBefore(pair, finishS)).toBe(false);
    }
    expect(compared).toBeGreaterThan(100);
  });
});
