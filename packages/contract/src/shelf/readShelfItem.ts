import { say } from "@lapline/engine";
import { type Problem, problemOf } from "../Problem";
import { readBoardFile } from "../readBoardFile";
import { issueSays } from "../reading/issueSays";
import { readJson } from "../reading/readJson";
import { BOARD_FORMAT } from "../schema/boardFileSchema";
import { plainText } from "../schema/words";

/**
 * What the shop has for all its boards. A record of a shelf is written as in a board file, under the same id: `resins` to `tints` as in
 * `materials`, `prices` and `rolls` as in `shop`. A house set is a name and the `fins` of a board, without what was read on one board.
 */
export const SHELVES = [
  "resins",
  "cloths",
  "foams",
  "woods",
  "fillers",
  "tints",
  "prices",
  "rolls",
  "house-sets",
] as const;
export type Shelf = (typeof SHELVES)[number];

export const isShelf = (word: string): word is Shelf => (SHELVES as readonly string[]).includes(word);

type Fields = Readonly<Record<string, unknown>>;

/** Everything that is wrong with a record of a shelf, as in a board file; empty where it can be kept. Never throws. */
export function readShelfItem(shelf: Shelf, text: string): readonly Problem[] {
  const json = readJson(text);
  // The reader of board files tells what is wrong with the text, and whether a field stands twice.
  if (!json.ok || json.faults.length > 0) return problemsOf(text);
  const before = shelf === "house-sets" ? problemsOfHouseSet(json.value) : [];
  if (before.length > 0) return before;
  const { place, board } = placeOf(shelf, json.value);
  return problemsOf(JSON.stringify(board)).map(({ path, read, message, says }) => {
    const inside = path.startsWith(place) ? path.slice(place.length).replace(/^\./, "") : path;
    return { path: inside || "(record)", read, message, says };
  });
}

function problemsOf(text: string): readonly Problem[] {
  const read = readBoardFile(text);
  return read.ok ? [] : read.problems;
}

const FRAME = {
  format: BOARD_FORMAT,
  name: "shelf",
  survey: { length: "5 m", nose: { kind: "pointed" }, tail: { kind: "pin" }, stations: [] },
};

/** A board with nothing in it but the record, and where it stands there. */
function placeOf(shelf: Shelf, value: unknown): { readonly place: string; readonly board: Fields } {
  switch (shelf) {
    case "house-sets":
      return { place: "fins", board: { ...FRAME, fins: (value as Fields).fins } };
    // Whether a material of its id is there shows only in a board; under this one a price can always stand.
    case "prices":
      return { place: "shop.prices.polyester", board: { ...FRAME, shop: { prices: { polyester: value } } } };
    case "rolls":
      return { place: "shop.rolls.own", board: { ...FRAME, shop: { rolls: { own: value } } } };
    default:
      return {
        place: `materials.${shelf}.own`,
        board: { ...FRAME, materials: { [shelf]: { own: value } } },
      };
  }
}

const NAME = plainText(say`the set's name`);

const NEED = say`a house set has "name" and "fins"`;

function problemsOfHouseSet(value: unknown): readonly Problem[] {
  if (typeof value !== "object" || value === null || Array.isArray(value))
    return [problemOf("(record)", "no object", NEED)];
  const { name, fins, ...others } = value as Fields;
  const named = NAME.safeParse(name);
  const wrong = named.success ? undefined : named.error.issues[0]?.message;
  const ofOneBoard = ["asSet", "verify"].filter((field) => isField(fins, field));
  const says = say`what was read on one board does not belong to a set for others`;
  return [
    ...(wrong === undefined ? [] : [problemOf("name", "no name", issueSays(wrong))]),
    ...(fins === undefined ? [problemOf("fins", "nothing", say`write the set's fins`)] : []),
    ...Object.keys(others).map((path) => problemOf(path, "a field", NEED)),
    ...ofOneBoard.map((field) => problemOf(`fins.${field}`, "readings", says)),
  ];
}

const isField = (value: unknown, field: string) =>
  typeof value === "object" && value !== null && field in value;
