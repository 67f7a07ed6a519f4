import fc from "fast-check";

/** Values as JSON, put where others belong. */
const VALUES = [
  "null",
  "true",
  "[]",
  "{}",
  '""',
  "-1",
  "1e308",
  "1e999",
  "-0",
  "9007199254740993",
  `"${"9".repeat(70)} mm"`,
  '"NaN"',
  '"NaN mm"',
  '"Infinity in"',
  '"1/0 in"',
  '"-5 mm"',
  '"\\ud800"',
  '"\\u0000"',
  '"\\u202e"',
  '"../../etc/passwd"',
  '"<script>alert(1)</script>"',
  '"__proto__"',
  '{"__proto__":{"ok":true}}',
  '{"constructor":{"prototype":{"ok":true}}}',
  `"${"a".repeat(100_000)}"`,
  `${"[".repeat(10_000)}${"]".repeat(10_000)}`,
  `[${"{},".repeat(5_000)}{}]`,
  `[${'"1 in",'.repeat(500)}"1 in"]`,
];
const HERE = '"value to put in"';

type Holder = Record<string, unknown>;

/** One of these texts of JSON, as it is now and then, mostly with one thing wrong: a value, a field twice or gone, or bytes. */
export function mutatedText(texts: readonly string[]): fc.Arbitrary<string> {
  const text = fc.constantFrom(...texts);
  const value = fc.oneof(
    fc.constantFrom(...VALUES),
    fc.jsonValue({ maxDepth: 3 }).map((any) => JSON.stringify(any)),
  );
  return fc.oneof(
    { weight: 2, arbitrary: text },
    {
      weight: 8,
      arbitrary: fc.tuple(text, fc.nat(), value).map(([whole, at, put]) => confuse(whole, at, put)),
    },
    { weight: 1, arbitrary: fc.tuple(text, fc.nat()).map(([whole, at]) => leaveOut(whole, at)) },
    { weight: 1, arbitrary: text.map((whole) => whole.replace(/"(\w+)":/g, '"$1":0,"$1":')) },
    {
      weight: 4,
      arbitrary: fc
        .tuple(text, fc.nat(), fc.nat(300), fc.string({ maxLength: 20, unit: "binary" }))
        .map(([whole, at, size, put]) => {
          const place = at % whole.length;
          return whole.slice(0, place) + put + whole.slice(place + size);
        }),
    },
  );
}

function confuse(text: string, at: number, put: string): string {
  return change(text, at, (holder, key) => {
    holder[key] = JSON.parse(HERE);
  }).replace(HERE, () => put);
}

function leaveOut(text: string, at: number): string {
  return change(text, at, (holder, key) => {
    delete holder[key];
  });
}

/** The text itself where it is not one value of JSON. */
function change(text: string, at: number, make: (holder: Holder, key: string) => void): string {
  let whole: Holder;
  try {
    whole = JSON.parse(text) as Holder;
  } catch {
    return text;
  }
  const places = placesOf(whole);
  const place = places[at % places.length];
  if (place !== undefined) make(...place);
  return JSON.stringify(whole);
}

function placesOf(value: Holder): [Holder, string][] {
  return Object.entries(value).flatMap(([key, inner]) => [
    [value, key] as [Holder, string],
    ...(typeof inner === "object" && inner !== null ? placesOf(inner as Holder) : []),
  ]);
}
