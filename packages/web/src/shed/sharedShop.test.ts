import { DEMO_BOARDS, readBoardFile } from "@lapline/contract";
import { buildShopCalendar, planBuild } from "@lapline/engine";
import ICAL from "ical.js";
import { describe, expect, it } from "vitest";
import { shopIcs } from "./saveShopIcs";
import { canShare, nameApart, plansInShop, surfIn } from "./sharedShop";

const THROUGH = {
  id: "r1",
  kind: "sand-through",
  face: "deck",
  side: "left",
  fromTail: "600 mm",
  fromCentreline: "150 mm",
  size: "30 mm",
  shows: "foam",
};

function boardOf(id: string, record: readonly object[] = []) {
  const { text } = DEMO_BOARDS.find((demo) => demo.id === id)!;
  const read = readBoardFile(JSON.stringify({ ...JSON.parse(text), record }));
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return { id, board: read.board, file: read.file, plan: planBuild(read.board) };
}

const BOARDS = [boardOf("five-ten-quad", [THROUGH]), boardOf("nine-two-long")];

describe("two demo boards on one pair of stands", () => {
  const shop = buildShopCalendar(BOARDS, 1).value!;

  it("never lie on it at once, and the one that is mended has every step of its repair placed", () => {
    const stays = shop.stands.toSorted((a, b) => a.fromAt.localeCompare(b.fromAt));
    for (const [i, stay] of stays.entries()) if (i > 0) expect(stays[i - 1]!.toAt <= stay.fromAt).toBe(true);
    const own = shop.boards[0]!.calendar;
    expect(own.filter(({ step }) => step.startsWith("repair-1-"))).toHaveLength(5);
    expect(own.filter(({ startsAt }) => startsAt === null)).toEqual([]);
  });

  it("have plans with the shop's days, no board sooner in the water than alone", () => {
    const plans = plansInShop(new Map(BOARDS.map(({ id, plan }) => [id, plan])), shop);
    expect(plans.map(({ name }) => name)).toEqual(BOARDS.map(({ id }) => id));
    for (const [i, plan] of plans.entries()) {
      expect(plan.water.firstSurfAt).toBe(surfIn(shop.boards[i]!.calendar));
      expect(plan.water.firstSurfAt! >= BOARDS[i]!.plan.water.firstSurfAt!).toBe(true);
      expect(canShare(plan)).toBe(true);
    }
    expect(canShare({ ...plans[0]!, calendar: null })).toBe(false);
  });

  it("are told apart where two have one name", () => {
    const twice = nameApart([BOARDS[0]!, BOARDS[1]!, BOARDS[0]!]);
    const { name } = BOARDS[0]!.file;
    expect(twice.map(({ id }) => id)).toEqual([name, BOARDS[1]!.file.name, `${name} #2`]);
  });

  it("have one calendar file, in which another reader finds each step at the shop's hour", async () => {
    const reader = { units: "mm", language: "en" } as const;
    const text = await shopIcs({ boards: BOARDS, shop, reader, stamp: new Date(0) });
    const events = new ICAL.Component(ICAL.parse(text!)).getAllSubcomponents("vevent");
    const starts = new Set(
      events.map((event) => String(event.getFirstPropertyValue("dtstart")).slice(0, 16)),
    );
    const wanted = shop.boards.flatMap(({ calendar }) =>
      calendar.flatMap(({ step, sittings }) =>
        step === "water" ? [] : sittings.map(({ startsAt }) => startsAt),
      ),
    );
    expect(wanted.length).toBeGreaterThan(30);
    expect(wanted.filter((at) => !starts.has(at))).toEqual([]);
  });
});
