import { CALENDAR } from "../constants/calendarDefaults";
import { say } from "../foundation/phrase";
import { duration } from "../foundation/quantity";
import type { WorkingInput, WorkingTable } from "../foundation/stage";
import type { CalendarEntry } from "./CalendarPlan";

/** What `why` hands the calendar's working: the plan, and the hours of the board file. */
export interface CalendarContext {
  readonly plan: { readonly calendar: readonly CalendarEntry[] | null };
  readonly board: { readonly shop?: { readonly hours?: { readonly from: string; readonly to: string } } };
}

function times(
  { plan, board }: CalendarContext,
  step: string | undefined,
  list: ReadonlyArray<readonly [name: string, key: "startsAt" | "latestStartAt" | "closesAt"]>,
): WorkingInput[] {
  const entry = plan.calendar?.find((each) => each.step === step);
  const { from, to } = board.shop?.hours ?? {};
  const hours =
    from === undefined || to === undefined ? [] : [{ name: "hours", value: say`${from} to ${to}` }];
  return [
    ...list.flatMap(([name, key]) => {
      const value = entry?.[key] ?? null;
      return value === null ? [] : [{ name, value }];
    }),
    ...hours,
  ];
}

/** How each number of the calendar comes about, keyed by its path in the plan. */
export const calendarWorking: WorkingTable<CalendarContext> = {
  "calendar[].slackS": {
    words: "how much later it may begin without moving the day of the first surf",
    formula: "latest begin, by a pass from the last step backwards, − begin; as time passes",
    sources: ["convention"],
    inputs: (context, [step]) =>
      times(context, step, [
        ["begins", "startsAt"],
        ["latest begin", "latestStartAt"],
      ]),
  },
  "calendar[].sandFirstS": {
    words: "sanding the coat below dull, where it has grown too old for the next to bond to it",
    formula: "begin after the recoat window closes: the usual time; else nought",
    sources: ["common-practice"],
    inputs: (context, [step]) => [
      { name: "usual time", value: duration(CALENDAR.dullS.value) },
      ...times(context, step, [
        ["begins", "startsAt"],
        ["window closes", "closesAt"],
      ]),
    ],
  },
};
