import type { Shop } from "./Shop";
import type { StoreParts } from "./StoreParts";
import { StoreUnavailableError } from "./StoreUnavailableError";

interface WatchedWrite {
  readonly state: Shop["state"];
  readonly write: StoreParts["write"];
}

/** Remembers how the last write went, so that a page can say so before the next one. */
export function watchState(write: StoreParts["write"]): WatchedWrite {
  let last: ReturnType<Shop["state"]> = "ok";
  return {
    state: () => last,
    async write(device, work) {
      try {
        const result = await write(device, work);
        last = "ok";
        return result;
      } catch (error) {
        if (error instanceof StoreUnavailableError) last = error.reason;
        throw error;
      }
    },
  };
}
