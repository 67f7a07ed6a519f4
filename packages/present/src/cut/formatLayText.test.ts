import { expect, test } from "vitest";
import { formatLayText } from "./formatLayText";

const reader = { units: "mm", language: "en" } as const;

test("a board whose cloth is cut on it is named, since it takes more than its flat shapes", () => {
  const words = formatLayText([], { reader, rolled: ["glider"] }).replace(/\s+/g, " ");
  expect(words).toContain("glider is planned with its cloth rolled out");
  expect(words).toContain("buy by the plan's own cut list");
  expect(formatLayText([], { reader, rolled: [] })).not.toContain("rolled out");
});
