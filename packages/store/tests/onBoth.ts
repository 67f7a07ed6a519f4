import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, afterEach, beforeAll, beforeEach, describe } from "vitest";
import { openShop, type Shop } from "../src/index";
import type { ShopOptions } from "../src/openShop";
import { type Postgres, startPostgres } from "./startPostgres";

export interface ShopUnderTest {
  readonly folder: string;
  /** The shop, opened at 9 o'clock by the test's clock. */
  readonly shop: Shop;
  readonly options: ShopOptions;
  /** Closes it and opens what is there. */
  reopen(options?: Partial<ShopOptions>): Promise<Shop>;
  /** Another shop, empty, on the same kind of database. */
  openOther(): Promise<Shop>;
}

/** Runs one suite on SQLite and on PostgreSQL, with an empty shop for each test. */
export function onBoth(name: string, suite: (shop: () => ShopUnderTest) => void): void {
  describe.each(["SQLite", "PostgreSQL"])(`${name}, %s`, (kind) => {
    let postgres: Postgres | null = null;
    let folder = "";
    let made = 0;
    const open: Shop[] = [];
    let under: ShopUnderTest | null = null;

    beforeAll(async () => {
      if (kind === "PostgreSQL") postgres = await startPostgres();
    });
    afterAll(() => postgres?.stop());
    const freshOptions = (): ShopOptions => ({
      folder: join(folder, `shop-${++made}`),
      ...(postgres === null ? {} : { databaseUrl: postgres.makeShop(`shop-${made}`) }),
      engine: "1.2.3",
      now: () => new Date("2026-04-11T09:00:00Z"),
      report: () => undefined,
    });
    const openOne = async (options: ShopOptions) => {
      const shop = await openShop(options);
      open.push(shop);
      return shop;
    };
    beforeEach(async () => {
      folder = await mkdtemp(join(tmpdir(), "lapline-shop-"));
      const options = freshOptions();
      under = {
        folder: options.folder,
        options,
        shop: await openOne(options),
        async reopen(other = {}) {
          await Promise.all(open.splice(0).map((shop) => shop.close()));
          return openOne({ ...options, ...other });
        },
        openOther: () => openOne(freshOptions()),
      };
    });
    afterEach(async () => {
      await Promise.all(open.splice(0).map((shop) => shop.close()));
      await rm(folder, { recursive: true });
    });
    suite(() => {
      if (under === null) throw new Error("the shop is opened before each test");
      return under;
    });
  });
}
