import type { LayupPlan } from "../layup/LayupPlan";
import type { MaterialsInput } from "../materials/MaterialsInput";
import type { MixPlan } from "../mix/MixPlan";
import type { ShopInput } from "../mix/ShopInput";
import type { Job } from "./Bench";
import { buildFilms, type FilmsBasis } from "./buildFilms";
import type { CalendarTask } from "./CalendarTask";
import { listFollowers } from "./listFollowers";
import { placeFacts } from "./placeFacts";
import { readShopTime, type ShopTime } from "./ShopTime";

/** What the calendar needs of a board. */
export interface CalendarInput {
  readonly shop?: ShopInput;
  readonly materials?: MaterialsInput;
  /** Only for the times at which things happened: nothing that is still to do lies before. */
  readonly record?: ReadonlyArray<{ readonly at?: string }>;
}

/** What the calendar needs of the rest of the plan. */
export interface CalendarParts {
  readonly steps: readonly CalendarTask[] | null;
  readonly layup: LayupPlan | null;
  readonly mix: MixPlan | null;
  /** Where the lay-up leaves their coats out, as the one of a whole plan does. */
  readonly repairs?: ReadonlyArray<Pick<FilmsBasis, "coats">> | null;
}

/**
 * One board with what has happened to it placed, and its shop's days.
 * @returns null where the order of work, the mix or the shop's hours are not known
 */
export function openJob(
  board: CalendarInput,
  { steps, layup, mix, repairs }: CalendarParts,
  number: number,
): { readonly job: Job; readonly time: ShopTime } | null {
  if (steps === null || layup === null || mix === null) return null;
  const recorded = (board.record ?? []).flatMap(({ at }) => at ?? []);
  const time = readShopTime(board.shop ?? {}, recorded);
  if (time === null) return null;
  const resumeS = Math.max(time.startS, ...recorded.flatMap((text) => time.parse(text) ?? []));
  const { materials } = board;
  const coats = [...layup.coats, ...(repairs ?? []).flatMap((repair) => repair.coats)];
  const films = buildFilms({ mix, coats, materials, air: time.air, parse: time.parse });
  const timeOf = (task: CalendarTask) => (task.doneAt === null ? null : time.parse(task.doneAt)) ?? resumeS;
  const placed = placeFacts(steps, films, timeOf);
  return { job: { number, tasks: steps, followers: listFollowers(steps), films, resumeS, placed }, time };
}
