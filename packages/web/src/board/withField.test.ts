import { describe, expect, test } from "vitest";
import { formatFieldPath, parseFieldPath, withField } from "./withField";

const file = { name: "a", survey: { stations: [{ left: "1 in" }, { left: "2 in" }] } };

describe("withField", () => {
  test("sets one field and leaves the document as it was", () => {
    const changed = withField(file, ["survey", "stations", 1, "left"], "3 in");
    expect(changed.survey.stations).toEqual([{ left: "1 in" }, { left: "3 in" }]);
    expect(file.survey.stations[1]).toEqual({ left: "2 in" });
    expect(changed.survey.stations[0]).toBe(file.survey.stations[0]);
  });

  test("takes a field away, and an item out of a list", () => {
    expect(withField(file, ["survey", "stations", 0, "left"], undefined).survey.stations[0]).toEqual({});
    expect(withField(file, ["survey", "stations", 0], undefined).survey.stations).toEqual([{ left: "2 in" }]);
  });

  test("adds behind the end of a list, and makes what is missing on the way", () => {
    expect(withField(file, ["survey", "stations", 2], { left: "9 in" }).survey.stations).toHaveLength(3);
    expect(withField<object>({}, ["shop", "humidity"], "60 %")).toEqual({ shop: { humidity: "60 %" } });
  });

  test("its path is written as the contract writes it", () => {
    expect(formatFieldPath(["survey", "stations", 2, "left"])).toBe("survey.stations[2].left");
    expect(formatFieldPath(["shop", "rolls", "e-136", "price"])).toBe("shop.rolls[e-136].price");
    expect(parseFieldPath("shop.rolls[e-136].price")).toEqual(["shop", "rolls", "e-136", "price"]);
  });
});
