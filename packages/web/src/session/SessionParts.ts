import type { Planner } from "../plan/Planner";
import type { DeviceStore } from "./DeviceStore";
import type { Outbox } from "./openOutbox";
import type { ShopCalls } from "./ShopCalls";

/** What a session stands on. */
export interface SessionParts {
  readonly shop: ShopCalls;
  readonly planner: Pick<Planner, "plan" | "understand">;
  readonly device: DeviceStore;
  readonly outbox: Outbox;
  now(): Date;
  newId(): string;
  /** Whether the reader's keys go into a field of text. */
  isTyping(): boolean;
  /** Calls back once after that time; a later call takes its place. */
  timer(): { set(ms: number, run: () => void): void };
}
