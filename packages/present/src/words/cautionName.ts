import { CAUTIONS } from "@lapline/engine";
import type { Tell } from "../language/tell";

/** A caution in two or three words, for a step after the one that has it in full; null where none of ours begins like that. */
export function cautionName(beginning: string, t: Tell): string | null {
  const names: Readonly<Record<keyof typeof CAUTIONS, string>> = {
    "foam-dust": t`foam dust`,
    "glass-dust": t`dust harms lungs and skin`,
    "filler-dust": t`filler dust hangs in the air`,
    knife: t`the knife slips`,
    router: t`the router grabs`,
    "mark-and-verify": t`right side, right place`,
    "mark-and-stand": t`stand and line checked`,
    flip: t`two people at the flip`,
    peroxide: t`peroxide blinds`,
    "peroxide-rags": t`rags catch fire`,
    styrene: t`styrene vapour harms and burns`,
    exotherm: t`a full cup heats itself`,
    "warm-resin": t`no flame near resin`,
    epoxy: t`epoxy: lifelong allergy`,
    "epoxy-ratio": t`weigh the exact ratio`,
    sunlight: t`daylight sets it`,
    "eps-pour": t`pour in stages, cooled between`,
    "wet-tools": t`water and mains kill`,
    polisher: t`the polisher grabs`,
    "leash-plug": t`pull-test the plug`,
    "soft-cure": t`still curing: moving air`,
    water: t`fin edges cut`,
    sheet: t`data sheet first`,
  };
  const ids = Object.keys(CAUTIONS) as Array<keyof typeof CAUTIONS>;
  const id = ids.find((each) => CAUTIONS[each].text.startsWith(beginning));
  return id === undefined ? null : names[id];
}
