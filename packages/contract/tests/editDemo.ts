import { DEMO_BOARDS } from "../src/demoBoards";

/** The demo quad as plain data, changed in one place; null takes a field out. */
export function editDemo(at: readonly (string | number)[], set: unknown): unknown {
  const document: unknown = JSON.parse(DEMO_BOARDS[0]?.text ?? "");
  const last = at.at(-1);
  let holder: unknown = document;
  for (const step of at.slice(0, -1)) holder = Reflect.get(Object(holder), step);
  if (last === undefined || typeof holder !== "object" || holder === null)
    throw new Error(`no place ${at.join(".")}`);
  if (set === null) Reflect.deleteProperty(holder, last);
  else Reflect.set(holder, last, set);
  return document;
}
