import { expect, test } from "vitest";
import { idsFromName } from "./idsFromName";
import { isBoardId } from "./isBoardId";

test.each([
  ["5'10\" quad, squash tail", "5-10-quad-squash-tail"],
  ["  Großer Fähr-Kutter  ", "grosser-fahr-kutter"],
  ["…", "board"],
  ["Доска", "board"],
  ["../../etc", "etc"],
  [`${"a".repeat(59)} b`, "a".repeat(59)],
])("a board named %j is kept as %s", (name, id) => {
  expect(idsFromName(name).next().value).toBe(id);
});

test("the next of a name are numbered, and every one can be kept", () => {
  const ids = idsFromName("x".repeat(200));
  const first = Array.from({ length: 120 }, () => ids.next().value);
  expect(first[1]).toMatch(/^x+-2$/);
  expect(new Set(first).size).toBe(120);
  expect(first.filter((id) => !isBoardId(id))).toEqual([]);
});
