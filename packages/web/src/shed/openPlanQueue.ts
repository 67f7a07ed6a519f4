interface QueueParts<T> {
  /** Fetches a board file's text. */
  read(id: string): Promise<string>;
  /** Works it out, beside the page. */
  plan(text: string): Promise<T>;
  /** Null where the board could not be fetched or worked out. */
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

/** Works boards out one after the other, so that a board that comes into view among forty never waits for more than two. */
export function openPlanQueue<T>({ read, plan, told }: QueueParts<T>): PlanQueue {
  const taken = new Set<string>();
  let waiting: string[] = [];
  let running = 0;
  let stopped = false;
  const work = async (): Promise<void> => {
    for (let id = waiting.shift(); id !== undefined && !stopped; id = waiting.shift()) {
      const planned = await read(id)
        .then(plan)
        .catch(() => null);
      if (!stopped) told(id, planned);
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
