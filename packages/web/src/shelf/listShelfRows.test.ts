import { type BoardFile, DEMO_BOARDS, readBoardFile } from "@lapline/contract";
import { expect, test } from "vitest";
import { withField } from "../board/withField";
import { listShelfRows, placeOnBoard } from "./listShelfRows";

const DEMO = DEMO_BOARDS[0]?.file;
if (DEMO === undefined) throw new Error("there is no demo board");
const FILLER = { density: "150 kg/m3", share: "8 %", name: "light bubbles" };
const TINT = { most: "5 %" };
const bare: BoardFile = { ...DEMO, materials: {}, shop: { ...DEMO.shop, prices: {}, rolls: {} } };
const file: BoardFile = { ...bare, materials: { fillers: { bubbles: FILLER }, tints: { blue: TINT } } };
const shelved = (shelf: string, id: string, record: unknown) => ({ shelf, id, record, revision: "r" });
const rows = (records: ReturnType<typeof shelved>[], priced: string[] = [], of = file) =>
  listShelfRows({ file: of, records, priced }).map(({ shelf, id, name, state }) => [shelf, id, name, state]);

test("what is here, there, in both, and not the same in both", () => {
  expect(
    rows([
      shelved("tints", "blue", { most: "4 %" }),
      shelved("fillers", "bubbles", { ...FILLER }),
      shelved("foams", "white-22", { kind: "eps", density: "22 kg/m3" }),
      shelved("house-sets", "quad", { name: "quad", fins: {} }),
    ]),
  ).toEqual([
    ["foams", "white-22", "white-22", "on-shelf"],
    ["fillers", "bubbles", "light bubbles", "same"],
    ["tints", "blue", "blue", "different"],
  ]);
  expect(rows([])).toEqual([
    ["fillers", "bubbles", "light bubbles", "on-board"],
    ["tints", "blue", "blue", "on-board"],
  ]);
});

test("of prices only those that this board's cost asks for, or that it has", () => {
  const records = [shelved("prices", "polyester", { price: 9 }), shelved("rolls", "e-136", { price: 4 })];
  expect(rows(records, ["e-136"], bare)).toEqual([["rolls", "e-136", "e-136", "on-shelf"]]);
  const own = { ...bare, shop: { prices: { polyester: { price: 8 } } } };
  expect(rows(records, [], own)).toEqual([["prices", "polyester", "polyester", "different"]]);
});

test("what is taken from the shelf stands where a board file has it", () => {
  const taken = [
    ["fillers", "bubbles", FILLER],
    ["tints", "blue", TINT],
    ["foams", "white-22", { kind: "eps", density: "22 kg/m3" }],
    ["prices", "polyester", { price: 9, pack: "20 kg" }],
    ["rolls", "e-136", { width: "27 in", price: 4 }],
  ] as const;
  const whole = taken.reduce(
    (board, [shelf, id, record]) => withField(board, placeOnBoard(shelf, id), record),
    bare,
  );
  const read = readBoardFile(JSON.stringify(whole));
  expect(read.ok ? [] : read.problems).toEqual([]);
  const records = taken.map(([shelf, id, record]) => shelved(shelf, id, record));
  expect(rows(records, [], whole).map(([, , , state]) => state)).toEqual(Array(5).fill("same"));
});
