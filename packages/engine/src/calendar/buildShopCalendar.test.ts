import { describe, expect, it } from "vitest";
import { makeShopBoard } from "../../tests/fixtures/calendarShops";
import { kelvin } from "../../tests/fixtures/mixLayup";
import type { StepsInput } from "../steps/StepsInput";
import { buildCalendar } from "./buildCalendar";
import { buildShopCalendar, type ShopBoard } from "./buildShopCalendar";

function make(id: string, resin: string, more: NonNullable<StepsInput["shop"]> = {}): ShopBoard {
  const { board, parts } = makeShopBoard(
    {
      survey: { lengthM: 1.83 },
      blank: { foam: resin === "epoxy" ? "eps-20" : "pu-48" },
      glass: { resin },
      fins: { arrangement: "tri", set: [] },
      shop: {
        temperature: { dayK: kelvin(20), nightK: kelvin(16) },
        hours: { from: "09:00", to: "18:00" },
        start: "2026-04-11T09:00",
        experience: "some",
        ...more,
      },
    },
    resin,
  );
  return { id, board, plan: parts };
}

const TWO = [make("first", "polyester"), make("second", "epoxy")];

describe.each([1, 2])("two boards on %i pair(s) of stands", (stands) => {
  const { value } = buildShopCalendar(TWO, stands);
  const uses = value!.stands;

  it("never lie on one pair at once, and each pair is there", () => {
    expect(new Set(uses.map(({ stand }) => stand)).size).toBeLessThanOrEqual(stands);
    for (const [i, a] of uses.entries()) {
      for (const b of uses.slice(i + 1)) {
        expect(
          a.stand !== b.stand || a.toAt <= b.fromAt || b.toAt <= a.fromAt,
          `${a.fromAt} ${b.fromAt}`,
        ).toBe(true);
      }
    }
    expect(new Set(uses.map(({ board }) => board))).toEqual(new Set(["first", "second"]));
  });

  it("never ask for two pairs of hands", () => {
    const sittings = value!.boards
      .flatMap(({ calendar }) => calendar.flatMap((entry) => entry.sittings))
      .toSorted((a, b) => a.startsAt.localeCompare(b.startsAt));
    expect(sittings.length).toBeGreaterThan(20);
    for (const [i, { startsAt }] of sittings.entries())
      expect(i === 0 || sittings[i - 1]!.endsAt <= startsAt).toBe(true);
  });

  it("come to the water both, neither sooner than alone", () => {
    for (const { id, calendar } of value!.boards) {
      const alone = TWO.find((each) => each.id === id)!;
      const waterAt = calendar.find(({ step }) => step === "water")!.endsAt!;
      const aloneAt = buildCalendar(alone.board, alone.plan).value!.find(({ step }) => step === "water")!
        .endsAt!;
      expect(waterAt >= aloneAt).toBe(true);
    }
  });
});

describe("a shop that cannot be planned", () => {
  const codes = (boards: readonly ShopBoard[], stands: number) =>
    buildShopCalendar(boards, stands).findings.map(({ severity, code }) => `${severity} ${code}`);

  it("has no stands, no boards or a board without an order of work", () => {
    expect(codes(TWO, 0)).toEqual(["blocker calendar.shop"]);
    expect(codes([], 1)).toEqual(["blocker calendar.shop"]);
    const bare = { ...TWO[0]!, plan: { steps: null, layup: null, mix: null } };
    expect(codes([bare, TWO[1]!], 1)).toEqual(["blocker calendar.shop"]);
  });

  it("has dates for some boards only", () => {
    const { start: _, ...shop } = TWO[0]!.board.shop!;
    expect(codes([{ ...TWO[0]!, board: { shop } }, TWO[1]!], 1)).toEqual(["blocker calendar.shop"]);
  });
});
