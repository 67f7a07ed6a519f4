import { findNearest, PRICED_IDS, quoteText, say } from "@lapline/engine";
import { valueAt } from "../reading/describeRead";
import type { Fault, Step } from "../reading/Fault";
import { isGiven } from "./readings";

const FOAM = /^(?:pu|eps|xps)-\d/;

/** Each price belongs to a material that a plan can take, or says how many of it this board uses. */
export function checkPrices(document: unknown): Fault[] {
  const at: Step[] = ["shop", "prices"];
  const own = ["cloths", "resins", "foams", "fillers", "tints"].map((list) =>
    keysAt(document, ["materials", list]),
  );
  const [cloths = [], resins = [], ...others] = own;
  const known = [
    ...PRICED_IDS,
    ...cloths,
    ...resins,
    ...resins.map((id) => `${id}-hardener`),
    ...others.flat(),
  ];
  const strange = keysAt(document, at).filter(
    (id) => !known.includes(id) && !FOAM.test(id) && !isGiven(document, [...at, id, "use"]),
  );
  const twice = keysAt(document, at).filter((id) => isGiven(document, ["shop", "rolls", id, "price"]));
  return [
    ...strange.map((id) => {
      const near = findNearest(id, known);
      const says =
        near === null
          ? say`no material of that id is known: for something of your own write "use", how many of it this board takes`
          : say`no material of that id is known: was ${quoteText(near)} meant? For something of your own write "use", how many of it this board takes`;
      return { steps: [...at, id], says };
    }),
    ...twice.map((id) => ({
      steps: [...at, id],
      says: say`its roll in "rolls" has a price too: keep one of the two`,
    })),
  ];
}

function keysAt(document: unknown, steps: readonly Step[]): string[] {
  const value = valueAt(document, steps);
  return typeof value === "object" && value !== null && !Array.isArray(value) ? Object.keys(value) : [];
}
