import type { CalendarNeed, CalendarTask } from "./CalendarTask";

/** A step that waits for another, and for what. */
export interface Follower {
  readonly task: CalendarTask;
  readonly need: CalendarNeed;
}

/** By step, what waits for it, in the order of the work: asked thousands of times while the days are filled. */
export type Followers = ReadonlyMap<string, readonly Follower[]>;

export function listFollowers(tasks: readonly CalendarTask[]): Followers {
  const followers = new Map(tasks.map(({ id }): [string, Follower[]] => [id, []]));
  for (const task of tasks) for (const need of task.needs) followers.get(need.step)?.push({ task, need });
  return followers;
}

/** The step that cuts a coat's laps, where the board has one. */
export function findCut(followers: Followers, coat: string): CalendarTask | undefined {
  return followers.get(coat)?.find(({ need }) => need.until === "trim")?.task;
}
