import { FOAM_EXAMPLES, FOAM_KINDS, type Foam, type FoamKind } from "../constants/foams";
import { listNearest } from "../foundation/findNearest";
import { formatDecimal } from "../foundation/formatDecimal";
import { type Phrase, say } from "../foundation/phrase";
import { arealMass } from "../foundation/quantity";
import { quoteText } from "../foundation/quoteText";
import { finding, type Stage } from "../foundation/stage";
import { KG_M3_PER_POUND_FT3 } from "../foundation/units";
import { findFoamIn, listFoamIds } from "../materials/listBlanks";
import { assume } from "../sources/assume";
import type { ResolvedBoard } from "./LayupInput";

export interface FoamChoice {
  readonly foam: Foam;
  readonly isSealed: boolean;
}

/**
 * The foam, and whether it is sealed before the glass. Which resin may touch it hangs on the kind, so no foam is taken by default.
 */
export function resolveFoam({ glass, blank, materials }: ResolvedBoard): Stage<FoamChoice> {
  if (blank === undefined) {
    const says = say`say what the blank is made of (for example ${FOAM_EXAMPLES[1]!}): which resin may touch it hangs on that`;
    return {
      value: null,
      findings: [finding("blocker", "layup.no-blank", "blank.foam", says)],
      assumptions: [],
    };
  }
  const foam = findFoamIn(materials, blank.foam);
  if (foam === null) {
    const near = listNearest(blank.foam, listFoamIds(materials)).join(", ");
    const says = say`no foam ${quoteText(blank.foam)} is known: write pu, eps or xps and its density in kg/m³, for example ${near}`;
    return {
      value: null,
      findings: [finding("blocker", "layup.unknown-foam", "blank.foam", sayPounds(blank.foam) ?? says)],
      assumptions: [],
    };
  }
  const kind = FOAM_KINDS[foam.kind];
  const isSealed = glass.seal ?? kind.isSealedFirst;
  const taken = isSealed ? say`sealed before the glass` : say`not sealed before the glass`;
  const why = kind.isSealedFirst
    ? say`${kind.name} drinks much resin and is usually sealed`
    : say`${kind.name} is usually glassed bare`;
  const unsealed = say`unsealed ${kind.name} drinks about ${arealMass(foam.uptakeKgM2.value)} of resin from the first laminate, and breathes bubbles into it while it warms: seal it first, or have the resin ready`;
  return {
    value: { foam, isSealed },
    findings:
      foam.kind === "eps" && !isSealed ? [finding("note", "layup.eps-unsealed", "glass.seal", unsealed)] : [],
    assumptions: glass.seal === undefined ? [assume("glass.seal", taken, why, "common-practice")] : [],
  };
}

/** A density in pounds for each cubic foot, as blanks are sold in some places, where kilograms for each cubic metre belong. */
function sayPounds(id: string): Phrase | null {
  const [, kind, number] = /^(pu|eps|xps)-(\d+(?:\.\d+)?)$/.exec(id) ?? [];
  if (kind === undefined || number === undefined) return null;
  const { leastKgM3, mostKgM3 } = FOAM_KINDS[kind as FoamKind].sold;
  const readKgM3 = Number(number) * KG_M3_PER_POUND_FT3;
  if (Number(number) >= leastKgM3 || readKgM3 < leastKgM3 || readKgM3 > mostKgM3) return null;
  return say`${quoteText(id)} is too light in kg/m³; if that was pounds for each cubic foot, write ${`${kind}-${formatDecimal(readKgM3, 0)}`}`;
}
