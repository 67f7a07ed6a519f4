import type { Reader } from "../language/Reader";
import { type Tell, tell } from "../language/tell";
import { fieldWords } from "./fieldWords";

/** What an assumption is about, as a builder calls it: `glass.bottom.lap` is the lap on the bottom. */
export function assumedName(path: string, reader: Reader): string {
  const t = tell(reader);
  const [, number] = /^fins\.set\[(\d+)\]/.exec(path) ?? [];
  const name = namesOf(t)[path.replace(/\[[^\]]*\]/g, "[]")] ?? wordsOf(path, reader);
  return number === undefined ? name : t`${name}, fin ${Number(number) + 1} of the set`;
}

/** Places of the board file and of the plan that the stages take something for. */
const namesOf = (t: Tell): Readonly<Record<string, string>> => ({
  "blank.stringer": t`stringer`,
  "blank.stringer.proud": t`stringer over the foam`,
  "blank.vent": t`vent`,
  calendar: t`days`,
  cost: t`cost`,
  "cutplan.rolls": t`cutting off the roll`,
  fins: t`fins`,
  "fins.boxes": t`when the boxes go in`,
  "fins.fromTailOf": t`where the tail's distances start`,
  "fins.leashPlug": t`leash plug`,
  "fins.leashPlug.side": t`side of the leash plug`,
  "fins.set[].depth": t`depth of the fin`,
  "fins.set[].fromRailBy": t`distance from the rail`,
  "fins.set[].toe": t`toe`,
  "finset.leashPlug.cureBeforeLoadS": t`cure of the leash plug`,
  "finset.leashPlug.patchDiameterM": t`cloth over the leash plug`,
  "finset.leashPlug.pullTestN": t`pull on the leash plug`,
  "finset.marks[].bottomTiltRad": t`slope of the bottom at the fins`,
  "finset.marks[].trueCantRad": t`true cant`,
  "finset.verify.boxes[].cureBeforeLoadS": t`cure of the boxes`,
  "finset.verify.boxes[].cutOut": t`size of the pockets`,
  "finset.verify.boxes[].patch": t`cloth over the boxes`,
  "finset.verify.boxes[].proudM": t`height of the boxes`,
  "finset.verify.checks[].angles": t`tolerance of the angles`,
  "finset.verify.checks[].lengths": t`tolerance of the depths`,
  glass: t`layers`,
  "glass.bottom.lap": t`lap on the bottom`,
  "glass.cutting": t`cutting the cloth`,
  "glass.deck.lap": t`lap on the deck`,
  "glass.finish": t`finish`,
  "glass.lapKind": t`kind of lap`,
  "glass.patches": t`patches`,
  "glass.resin": t`resin`,
  "glass.resinRatio": t`resin to glass`,
  "glass.seal": t`sealing the foam`,
  "layup.coats": t`coats`,
  "layup.faces": t`area of the faces`,
  "layup.pieces": t`area of the cloth`,
  "layup.zones": t`film by zone`,
  "mix.coats": t`mixing`,
  record: t`record`,
  sanding: t`sanding`,
  "shop.experience": t`practice`,
  "shop.hours": t`working hours`,
  "shop.people": t`people`,
  "shop.resinTemperature": t`temperature of the resin`,
  "shop.scale": t`scale`,
  "shop.temperature": t`temperature of the shop`,
  steps: t`working times`,
  "survey.halfWidthsAt": t`where half-widths are read`,
  "survey.section": t`section`,
  "survey.tail": t`tail`,
  "survey.twist": t`twist`,
  weighins: t`weigh-in`,
  "weight.fittingsKg": t`weight of boxes and plug`,
  "weight.float": t`float`,
  "weight.foamKg": t`weight of the foam`,
  "weight.resinKg": t`weight of the resin`,
});

/** A place without a name of its own by its last word: `materials.resins.mine.potLife` is about the pot life. */
function wordsOf(path: string, reader: Reader): string {
  const last =
    path
      .replace(/\[[^\]]*\]/g, "")
      .split(".")
      .at(-1) ?? path;
  return fieldWords(last, reader);
}
