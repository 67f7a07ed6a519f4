interface QueueParts<T> {
  /** Fetches a board file's text. */
  read(id: string): Promise<string>;
  plan(text: string): T;
  /** Comes when the page has nothing better to do. */
  whenIdle(): Promise<void>;
  /** Null where the board could not be fetched. */
  told(id: string, planned: T | null): void;
}

export interface PlanQueue {
  /** Boards to be worked out, behind those that wait already. */
  add(ids: readonly string[]): void;
  /** A board that came into view goes to the front. */
  hurry(id: string): void;
  stop(): void;
}

/** So that one is fetched while another is worked out. */
const AT_ONCE = 2;

/** Works boards out one after the other, each in an idle slice of its own, so that forty of them never hold up the page. */
export function openPlanQueue<T>({ read, plan, whenIdle, told }: QueueParts<T>): PlanQueue {
  const taken = new Set<string>();
  let waiting: string[] = [];
  let running = 0;
  let stopped = false;
  const work = async (): Promise<void> => {
    for (let id = waiting.shift(); id !== undefined && !stopped; id = waiting.shift()) {
      const text = await read(id).catch(() => null);
      await whenIdle();
      if (!stopped) told(id, text === null ? null : plan(text));
    }
    running -= 1;
  };
  const start = (): void => {
    while (running < AT_ONCE && running < waiting.length) {
      running += 1;
      void work();
    }
  };
  return {
    add(ids) {
      const fresh = ids.filter((id) => !taken.has(id));
      for (const id of fresh) taken.add(id);
      waiting.push(...fresh);
      start();
    },
    hurry(id) {
      if (taken.has(id) && !waiting.includes(id)) return;
      taken.add(id);
      waiting = [id, ...waiting.filter((each) => each !== id)];
      start();
    },
    stop() {
      stopped = true;
      waiting = [];
    },
  };
}
