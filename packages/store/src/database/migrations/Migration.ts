import type { Database, Tx } from "../Database";

/** One step of the tables from one version to the next. What it did is never changed once it is out; another step follows. */
export interface Migration {
  readonly version: number;
  readonly up: (tx: Tx, kind: Database["kind"]) => Promise<void>;
}
