import { expect, test } from "vitest";
import { matchesSearch } from "./matchesSearch";

const board = { name: '5’10" Quad, São pin', rider: "rider A" };

test.each(["", "quad", "QUAD rider", "5'10", "sao", "pin a"])("finds the board by %j", (search) => {
  expect(matchesSearch(board, search)).toBe(true);
});

test.each(["tri", "quad rider b"])("does not find it by %j", (search) => {
  expect(matchesSearch(board, search)).toBe(false);
});
