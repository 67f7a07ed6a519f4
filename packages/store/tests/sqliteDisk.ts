import Libsql from "libsql";

type Connection = Pick<Libsql.Database, "exec" | "pragma">;

/** The disk of the databases that are opened while this is held, as the database itself finds it: what it says of it is its own. */
export interface SqliteDisk {
  /** No page more than there is (SQLITE_FULL). */
  fill(): void;
  /** Nothing can be written (SQLITE_READONLY). */
  protect(): void;
  /** Another program writes and does not end (SQLITE_BUSY). */
  occupy(): void;
  /** As it was at first. */
  free(): void;
  letGo(): void;
}

const MOST_PAGES = 1_073_741_823;

/** Holds on to each connection that is opened from now on, so that its limits can be set from outside (SQLite's pragmas). */
export function holdSqliteDisk(): SqliteDisk {
  const { prototype } = Libsql;
  const { pragma } = prototype;
  const opened = new Map<Connection, string>();
  prototype.pragma = function (this: Connection, ...asked: Parameters<Connection["pragma"]>) {
    const given = pragma.apply(this, asked);
    const [list] = opened.has(this) ? [] : (pragma.call(this, "database_list") as { file: string }[]);
    if (list !== undefined) opened.set(this, list.file);
    return given;
  } as typeof pragma;
  const onEach = (text: string) => {
    // One that was closed meanwhile, as by a copy, takes nothing.
    for (const connection of opened.keys())
      try {
        pragma.call(connection, text);
      } catch {
        opened.delete(connection);
      }
  };
  let occupant: Libsql.Database | null = null;
  return {
    // Fewer than there are counts as those that there are.
    fill: () => onEach("max_page_count = 1"),
    protect: () => onEach("query_only = on"),
    occupy() {
      onEach("busy_timeout = 0");
      const [file = ""] = opened.values();
      occupant = new Libsql(file);
      occupant.exec("begin immediate");
    },
    free() {
      occupant?.close();
      occupant = null;
      for (const text of [`max_page_count = ${MOST_PAGES}`, "query_only = off", "busy_timeout = 5000"])
        onEach(text);
    },
    letGo() {
      prototype.pragma = pragma;
    },
  };
}
