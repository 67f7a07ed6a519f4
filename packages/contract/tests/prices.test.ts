import { describe, expect, it } from "vitest";
import { readBoardFile } from "../src";
import { editDemo } from "./editDemo";

const read = (prices: unknown) => readBoardFile(JSON.stringify(editDemo(["shop", "prices"], prices)));
const messages = (prices: unknown): readonly string[] => {
  const result = read(prices);
  return result.ok ? [] : result.problems.map(({ path, message }) => `${path}: ${message}`);
};

describe("prices in a board file", () => {
  it("are read with their packs by mass, volume, length or piece", () => {
    const result = read({
      polyester: { price: 62, pack: "5 kg" },
      "polyester-hardener": { price: 9, pack: "200 mL" },
      "e-203": { price: 240, pack: "50 m" },
      box: { price: 15, pieces: 4 },
      discs: { price: 24, pieces: 10, use: 4 },
    });
    if (!result.ok) throw new Error("these prices are right");
    const prices = result.board.shop?.prices ?? {};
    expect(prices.polyester).toEqual({ price: 62, packKg: 5 });
    expect(prices["polyester-hardener"]?.packM3).toBeCloseTo(0.0002, 12);
    expect(prices["e-203"]).toEqual({ price: 240, packM: 50 });
    expect(prices.discs).toEqual({ price: 24, pieces: 10, use: 4 });
  });

  it.each([
    [{ polyester: { price: -3, pack: "5 kg" } }, "price is a number without a unit, 0 to 1000000"],
    [{ polyester: { price: 3, pack: "5" } }, "with its unit"],
    [{ polyestre: { price: 3, pack: "5 kg" } }, 'was "polyester" meant?'],
    [{ unobtainium: { price: 3 } }, 'write "use"'],
    [{ "e-136": { price: 3 } }, "keep one of the two"],
  ])("are refused with what would be right: %j", (prices, words) => {
    expect(messages(prices).join("\n")).toContain(words);
  });
});
