import { Kysely, PostgresDialect, sql } from "kysely";
import type { Database } from "./Database";
import { groupWrites } from "./groupWrites";
import { CHANGES_CHANNEL, openEar } from "./openEar";
import { runIn } from "./runIn";
import type { Tables } from "./Tables";

/** One number for every Lapline on this database: writes wait for each other, so that changes are numbered in their order. */
const WRITE_LOCK = 4_160_815;
const CONNECTIONS = 8;
const CONNECT_MS = 5000;

/** Opens a PostgreSQL database; the tables are made by the migrations. */
export async function openPostgres(url: string, report: (message: string) => void): Promise<Database> {
  const { default: pg } = await import("pg");
  const pool = new pg.Pool({
    connectionString: url,
    max: CONNECTIONS,
    connectionTimeoutMillis: CONNECT_MS,
    options: "-c synchronous_commit=on",
  });
  // A server that goes away tells every open connection; without a listener that would end the program.
  pool.on("connect", (client) => client.on("error", () => undefined));
  pool.on("error", (error) => report(`PostgreSQL: ${error.message}`));
  const db = new Kysely<Tables>({ dialect: new PostgresDialect({ pool }) });
  const ear = openEar(pool, report);
  return {
    kind: "postgres",
    db,
    write: groupWrites((work) =>
      runIn(db, ["begin", `select pg_advisory_xact_lock(${WRITE_LOCK})`], async (tx) => {
        const result = await work(tx);
        await sql.raw(`notify ${CHANGES_CHANNEL}`).execute(tx);
        return result;
      }),
    ),
    snapshot: (work) => runIn(db, ["begin isolation level repeatable read read only"], work),
    async check() {
      const { rows } = await sql<{ answer: number }>`select 1 as answer`.execute(db);
      return rows.length === 1 ? [] : ["the database does not answer"];
    },
    listen: ear.listen,
    async close() {
      // The pool waits for every connection that is out.
      ear.close();
      await db.destroy();
    },
  };
}
