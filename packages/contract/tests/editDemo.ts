import { DEMO_BOARDS } from "../src/demoBoards";

type Place = readonly (string | number)[];

/** The demo quad as plain data, changed in one place (none for the quad as it is); null takes a field out. */
export function editDemo(at: Place, set: unknown): unknown {
  const document: unknown = JSON.parse(DEMO_BOARDS[0]?.text ?? "");
  if (at.length > 0) editPlace(document, at, set);
  return document;
}

/** Changes plain data in one place; null takes a field out, or an element out of its list. */
export function editPlace(document: unknown, at: Place, set: unknown): void {
  const last = at.at(-1);
  let holder: unknown = document;
  for (const step of at.slice(0, -1)) holder = Reflect.get(Object(holder), step);
  if (last === undefined || typeof holder !== "object" || holder === null)
    throw new Error(`no place ${at.join(".")}`);
  if (set !== null) Reflect.set(holder, last, set);
  else if (Array.isArray(holder)) holder.splice(Number(last), 1);
  else Reflect.deleteProperty(holder, last);
}
