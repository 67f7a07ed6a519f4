import type { Kysely } from "kysely";
import type { Tables } from "./Tables";

export type Tx = Kysely<Tables>;

/** One of the two databases, with what differs between them behind these few calls. */
export interface Database {
  readonly kind: "sqlite" | "postgres";
  readonly db: Kysely<Tables>;
  /** Everything in it lands or nothing does, one writer after the other, on the disk when it resolves. */
  write<T>(work: (tx: Tx) => Promise<T>): Promise<T>;
  /** Sees one moment of the database, however long it reads, and holds no writer up. */
  snapshot<T>(work: (tx: Tx) => Promise<T>): Promise<T>;
  /** What the database's own check finds wrong; empty where it is whole. */
  check(): Promise<readonly string[]>;
  /** Calls back after writes of other programs on the same database, until it is closed. */
  listen(heard: () => void): Promise<void>;
  close(): Promise<void>;
}
