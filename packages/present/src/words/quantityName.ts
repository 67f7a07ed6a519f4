import type { Reader } from "../language/Reader";
import { type Tell, tell } from "../language/tell";
import { fieldWords } from "./fieldWords";
import { readingName } from "./readingName";

const STATION = "survey.stations[";
const ROLL = /^shop\.rolls\.(.+)\.(width|price)$/;
const FIN = /^fins\.set\[(\d+)\]/;

/** A quantity of the board file as a builder calls it: `station 3, left`, or `length of the box, fin 2 of the set`. */
export function quantityName(path: string, reader: Reader): string {
  if (path.startsWith(STATION)) return readingName(path, reader);
  const t = tell(reader);
  const [, cloth, of] = ROLL.exec(path) ?? [];
  if (cloth !== undefined)
    return of === "width" ? t`width of the roll, ${cloth}` : t`price of the roll, ${cloth}`;
  const name = namesOf(t)[path.replace(/\[\d+\]/g, "[]")] ?? wordsOf(path, reader);
  const [, fin] = FIN.exec(path) ?? [];
  if (fin !== undefined) return t`${name}, fin ${Number(fin) + 1} of the set`;
  const [, entry] = /\[(\d+)\]/.exec(path) ?? [];
  return entry === undefined ? name : t`${name}, entry ${Number(entry) + 1}`;
}

const namesOf = (t: Tell): Readonly<Record<string, string>> => ({
  "order.riderMass": t`weight of the rider`,
  "survey.sections[].apex": t`apex`,
  "survey.sections[].deckFullness": t`deck fullness`,
  "survey.sections[].bottomFullness": t`bottom fullness`,
  "survey.bottoms[].fromTail": t`place of the concave or vee`,
  "survey.bottoms[].depth": t`depth of the concave or vee`,
  "blank.shapedMass": t`weight of the shaped blank`,
  "blank.stringer.thickness": t`thickness of the stringer`,
  "glass.bottom.lap": t`lap on the bottom`,
  "glass.deck.lap": t`lap on the deck`,
  "glass.patches[].fromTail": t`start of the patch`,
  "glass.patches[].to": t`end of the patch`,
  "fins.set[].fromTail": t`distance from the tail`,
  "fins.set[].fromRail": t`distance from the rail`,
  "fins.set[].toe.angle": t`toe`,
  "fins.set[].toe.over": t`toe over base`,
  "fins.set[].toe.offset": t`string beside the nose`,
  "fins.set[].foil.thickness": t`thickness of the foil`,
  "fins.set[].box.length": t`length of the box`,
  "fins.set[].box.width": t`width of the box`,
  "fins.set[].box.depth": t`depth of the box`,
  "fins.set[].box.behindTrailing": t`box behind the mark`,
  "fins.leashPlug.fromTail": t`leash plug from the tail`,
  "fins.leashPlug.fromCentreline": t`leash plug from the centreline`,
  "fins.leashPlug.diameter": t`diameter of the leash plug`,
  "fins.leashPlug.depth": t`depth of the leash plug`,
  "shop.temperature.day": t`temperature by day`,
  "shop.temperature.night": t`temperature by night`,
  "shop.temperature[].air": t`temperature of the shop`,
  "shop.resinTemperature": t`temperature of the resin`,
  "record[].mass": t`reading of the scale`,
  "record[].base": t`resin in the cup`,
  "record[].hardener": t`hardener in the cup`,
  "record[].resinTemperature": t`temperature of the resin`,
});

/** A place without a name of its own by its words; a material's id such as `e-136` stays as it is. */
function wordsOf(path: string, reader: Reader): string {
  const [first = "", ...rest] = path
    .replace(FIN, "fin")
    .replace(/\[\d+\]/g, "")
    .split(".");
  return (rest.length === 0 ? [first] : rest).map((step) => fieldWords(step, reader)).join(", ");
}
