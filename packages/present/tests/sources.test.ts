import { describe, expect, test } from "vitest";
import { SOURCES } from "../../engine/src/sources/sources";
import { tellText } from "../src";
import { loadWorkings } from "../src/language/allCatalogues";

const reader = { units: "mm", language: "de" } as const;

describe("where a number is from, in German", () => {
  test.each(Object.entries(SOURCES))("%s", async (_, { title }) => {
    await loadWorkings("de");
    expect(tellText(title, reader)).not.toBe(title);
  });
});
