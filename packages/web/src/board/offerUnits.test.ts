import { parseQuantity } from "@lapline/engine";
import { expect, test } from "vitest";
import { offerUnits } from "./offerUnits";

test.each(["6", "6 1/16", "1/4", "63.5", "-3"])(
  "%s is offered with every unit, each of which can be read",
  (text) => {
    const offers = offerUnits(text, "length");
    expect(offers).toEqual([`${text} in`, `${text} mm`]);
    for (const offer of offers) expect(parseQuantity(offer, "length").ok).toBe(true);
    expect(offerUnits(text, "angle")).toEqual([`${text} deg`]);
  },
);

test.each(["", "6 in", "6'", "about 6", "6 1/", "1 2 3"])("%s is offered nothing", (text) => {
  expect(offerUnits(text, "length")).toEqual([]);
});
