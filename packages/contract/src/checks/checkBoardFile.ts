import type { Fault } from "../reading/Fault";
import { checkNames } from "./checkNames";
import { checkPlaces } from "./checkPlaces";
import { checkPrices } from "./checkPrices";
import { checkResins } from "./checkResins";
import { checkStations } from "./checkStations";

/**
 * What must hold between fields. Looks at the document as it was read, so that all of it is said at once, beside what the
 * schema says about single fields; a field that cannot be read takes no part.
 */
export function checkBoardFile(document: unknown): readonly Fault[] {
  return [
    ...checkStations(document),
    ...checkPlaces(document),
    ...checkNames(document),
    ...checkResins(document),
    ...checkPrices(document),
  ];
}
