import { gzipSync } from "node:zlib";
import { DEMO_BOARDS } from "@lapline/contract";
import fc from "fast-check";
import { mutatedText } from "./mutatedText";

export interface Asked {
  readonly method: string;
  readonly path: string;
  readonly headers: Record<string, string>;
  readonly body: string | Uint8Array;
}

/** Stands for the revision that a board had in the answer before. */
export const CURRENT = "current";

const BOARDS = DEMO_BOARDS.map(({ text }) => text);
const IDS = DEMO_BOARDS.map(({ id }) => id);
const ENTRIES = [
  { id: "r1", kind: "done", step: "prep", at: "2026-04-11T11:20" },
  { id: "r2", kind: "weighed", after: "prep", mass: "3 kg", at: "2026-04-11T11:20" },
  { id: "r3", kind: "mixed", coat: "laminate-bottom", base: "300 g", hardener: "6 g" },
  { id: "r4", kind: "struck", corrects: "r1" },
].map((entry) => JSON.stringify(entry));
const ARCHIVE = `{"format":"lapline-shop/1","schema":1}\n["boards","a",1,"r","{}",null]\n{"end":1,"sha256":"0"}\n`;
const PHOTOS = [
  "ffd8ffe000104a46494600010100000100010000ffc0000b080015002501011100",
  "89504e470d0a1a0a0000000d49484452ffffffffffffffff08",
  "524946460000000057454250",
];

const word = fc.oneof(
  fc.constantFrom(
    "none",
    "..%2f..%2fetc%2fpasswd",
    "%00",
    "%ff",
    "__proto__",
    "constructor",
    "a".repeat(3000),
  ),
  fc.string().map(encodeURIComponent),
);
const id = fc.oneof({ weight: 9, arbitrary: fc.constantFrom(...IDS) }, { weight: 1, arbitrary: word });

const whole = fc.constantFrom<string | Uint8Array>(
  "[".repeat(200_000),
  '{"a":'.repeat(10_000),
  `[${"0,".repeat(900_000)}0]`,
  `{${Array.from({ length: 29_000 }, (_, i) => `"k${i}":0`).join()}}`,
  " ".repeat(2_100_000),
  gzipSync(Buffer.alloc(20_000_000)),
  Buffer.concat([Buffer.from("ffd8ffe0", "hex"), Buffer.alloc(1_000_000)]),
  '<svg xmlns="http://www.w3.org/2000/svg" onload="alert(1)"/>',
);
const odd = fc.oneof<fc.Arbitrary<string | Uint8Array>[]>(
  fc.json(),
  fc.uint8Array({ maxLength: 300 }),
  whole,
);
const bodyFrom = (texts: readonly string[]) =>
  fc.oneof<fc.MaybeWeightedArbitrary<string | Uint8Array>[]>(
    { weight: 12, arbitrary: mutatedText(texts) },
    { weight: 1, arbitrary: odd },
  );
const photo = fc
  .tuple(fc.constantFrom(...PHOTOS), fc.uint8Array({ maxLength: 400 }))
  .map(([head, rest]): Uint8Array => Buffer.concat([Buffer.from(head, "hex"), rest]));

/** Mostly what is right for a call, sometimes what is not. */
const headersOf = (type: string) =>
  fc
    .record({
      "content-type": fc.oneof(
        { weight: 15, arbitrary: fc.constant(type) },
        {
          weight: 1,
          arbitrary: fc.constantFrom("text/plain", "image/svg+xml", "application/json; charset=utf-16"),
        },
      ),
      "content-encoding": fc.oneof(
        { weight: 15, arbitrary: fc.constant("identity") },
        { weight: 1, arbitrary: fc.constantFrom("gzip", "br") },
      ),
      "if-match": fc.oneof(
        { weight: 6, arbitrary: fc.constant(CURRENT) },
        { weight: 2, arbitrary: fc.constantFrom('"0"', "*", 'W/"1"', "") },
      ),
      "last-event-id": fc.constantFrom("1", "-1", "99999999999", "a"),
    })
    .map(
      ({ "if-match": match, ...rest }): Record<string, string> =>
        match === "" ? rest : { ...rest, "if-match": match },
    );

interface Call {
  readonly weight: number;
  readonly method: string;
  readonly path: fc.Arbitrary<string>;
  readonly body: fc.Arbitrary<string | Uint8Array>;
  readonly type?: string;
}

const nothing = fc.constant("");
const shelfItems = [
  '{"kind":"polyester","name":"mine"}',
  '{"name":"thruster","fins":{}}',
  '{"price":"20 / kg"}',
];
const CALLS: readonly Call[] = [
  { weight: 120, method: "PUT", path: id.map((each) => `/api/boards/${each}`), body: bodyFrom(BOARDS) },
  { weight: 30, method: "POST", path: fc.constant("/api/boards"), body: bodyFrom(BOARDS) },
  { weight: 40, method: "POST", path: fc.constant("/api/plan"), body: bodyFrom(BOARDS) },
  {
    weight: 16,
    method: "POST",
    path: id.map((each) => `/api/boards/${each}/journal`),
    body: bodyFrom(ENTRIES),
  },
  {
    weight: 6,
    method: "POST",
    path: id.map((each) => `/api/boards/${each}/photos`),
    body: fc.oneof(photo, odd),
  },
  {
    weight: 1,
    method: "POST",
    path: id.map((each) => `/api/boards/${each}/sheets`),
    body: mutatedText(['{"paper":"a4","units":"mm","language":"de"}']),
  },
  {
    weight: 30,
    method: "PUT",
    path: fc
      .tuple(
        fc.constantFrom("foams", "resins", "cloths", "prices", "house-sets", "rolls"),
        fc.oneof(fc.constant("mine"), word),
      )
      .map(([shelf, each]) => `/api/shelf/${shelf}/${each}`),
    body: bodyFrom(shelfItems),
  },
  {
    weight: 2,
    method: "POST",
    path: fc.constant("/api/archive"),
    body: mutatedText([ARCHIVE]),
    type: "application/jsonl",
  },
  {
    weight: 40,
    method: "GET",
    path: fc.oneof(
      fc.constantFrom("/api/boards", "/api/shelf", "/api/archive", "/api/changes", "/api/openapi.json"),
      fc
        .tuple(
          id,
          fc.constantFrom("journal", "photos", "sheets", "versions"),
          fc.oneof(fc.constantFrom("1", "2"), word),
        )
        .map(([each, what, which]) => `/api/boards/${each}/${what}/${which}`),
      fc.webPath().map((any) => `/api${any}`),
      word,
    ),
    body: nothing,
  },
  { weight: 10, method: "DELETE", path: word.map((each) => `/api/boards/${each}`), body: nothing },
  { weight: 10, method: "PATCH", path: id.map((each) => `/api/boards/${each}`), body: odd },
];

/** A request as a page makes it, with something in it that no page sends. */
export const anyRequest: fc.Arbitrary<Asked> = fc.oneof(
  ...CALLS.map(({ weight, method, path, body, type = "application/json" }) => ({
    weight,
    arbitrary: fc.record({ method: fc.constant(method), path, headers: headersOf(type), body }),
  })),
);
