import { expect, it } from "vitest";
import { tellText } from "../src/language/tellText";

it("a repair's coats and steps are called by words and number, not by their id", () => {
  expect(tellText("repair-2-patch", { language: "en", units: "mm" })).toBe("repair 2, patch");
  expect(tellText("repair-12-fill", { language: "de", units: "mm" })).toBe("Reparatur 12, Hotcoat");
  expect(tellText("repair-kit", { language: "en", units: "mm" })).toBe("repair-kit");
});
