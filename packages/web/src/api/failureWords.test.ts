import { tell } from "@lapline/present";
import { expect, test } from "vitest";
import { readSourceFiles } from "../../../../tests/sourceFiles";
import { failureWords, SENTENCES } from "./failureWords";
import { failureOf } from "./ShopFailure";
import { ShopFailureError } from "./ShopFailureError";

const german = tell({ units: "mm", language: "de" });
const english = tell({ units: "mm", language: "en" });
const told = (status: number, answer: unknown, t = german) =>
  failureWords(new ShopFailureError(failureOf(status, answer)), t);

/** What the page never asks for, or has words for at the place where it asks (pairing, devices, copies of the shop). */
const NOT_OF_BOARDS = [
  "Cannot be kept",
  "Let in already",
  "No such call",
  "No such page",
  "No such role",
  "Not JSON",
  "Not a copy of a shop",
  "Not a name for a board",
  "Not a name for a record",
  "Not a name",
  "Not a way to make a Sheet",
  "Not addressed to this machine",
  "Not let in",
  "Not paired",
  "Not shared",
  "Not taken in",
  "Not text",
  "Packed",
  "Sent from another page",
  "Taken",
];

test("every answer of the server has a sentence on the page", () => {
  const titles = readSourceFiles("packages/server/src", /\.ts$/).flatMap(({ text }) =>
    [...text.matchAll(/title: "([^"]+)"|"(Busy|Took too long)"/g)].map(
      ([, one, other]) => one ?? other ?? "",
    ),
  );
  expect(titles.length).toBeGreaterThan(30);
  const known = new Set([...Object.keys(SENTENCES), ...NOT_OF_BOARDS]);
  expect(titles.filter((title) => !known.has(title))).toEqual([]);
});

test("each sentence has its German", () => {
  for (const sentence of Object.values(SENTENCES)) {
    const fields = { problems: [{ path: "name", message: "write a name" }], wide: 9000, high: 8000 };
    expect(sentence(german, fields)).not.toBe(sentence(english, fields));
  }
});

test("an answer is told by its title and fields, not by its English detail", () => {
  const put = { title: "Put away", detail: "This board was put away.", status: 410 };
  expect(told(410, put)).toMatch(/^Dieses Board wurde weggestellt/);
  const photo = {
    title: "Too many pixels",
    detail: "This photo has 9000 x 8000 pixels.",
    wide: 9000,
    high: 8000,
  };
  expect(told(422, photo)).toContain("9000 x 8000 Bildpunkte");
  const file = {
    title: "Not a board file",
    detail: "x",
    problems: [
      { path: "name", message: "write a name", says: [{ phrase: ["nothing was read"] }] },
      { path: "order", message: "no order" },
    ],
  };
  expect(told(422, file)).toBe(
    "Das ist keine Board-Datei, die gelesen werden kann: name: nichts gelesen; order: no order",
  );
  expect(told(418, { title: "A teapot", detail: "I am a teapot." })).toBe(
    "Er antwortet auf Englisch: I am a teapot.",
  );
  expect(told(507, { state: "full" })).toBe("Die Platte des Rechners der Werkstatt ist voll.");
});

test("a Sheet that has no turn just now is not the shop's computer away", () => {
  for (const title of ["Busy", "Took too long"])
    expect(failureOf(503, { title, detail: "x" })).toMatchObject({ kind: "refused", title });
  expect(failureOf(503, null)).toEqual({ kind: "away" });
});
