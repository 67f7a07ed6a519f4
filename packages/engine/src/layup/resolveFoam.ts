import { FOAM_EXAMPLES, FOAM_KINDS, type Foam, findFoam } from "../constants/foams";
import { listNearest } from "../foundation/findNearest";
import { say } from "../foundation/phrase";
import { arealMass } from "../foundation/quantity";
import { quoteText } from "../foundation/quoteText";
import { finding, type Stage } from "../foundation/stage";
import { assume } from "../sources/assume";
import type { BlankInput, GlassInput } from "./GlassInput";

export interface FoamChoice {
  readonly foam: Foam;
  readonly isSealed: boolean;
}

/**
 * The foam, and whether it is sealed before the glass. Which resin may touch it hangs on the kind, so no foam is taken by default.
 */
export function resolveFoam(blank: BlankInput | undefined, glass: GlassInput): Stage<FoamChoice> {
  if (blank === undefined) {
    const says = say`say what the blank is made of (for example ${FOAM_EXAMPLES[1]!}): which resin may touch it hangs on that`;
    return {
      value: null,
      findings: [finding("blocker", "layup.no-blank", "blank.foam", says)],
      assumptions: [],
    };
  }
  const foam = findFoam(blank.foam);
  if (foam === null) {
    const near = listNearest(blank.foam, FOAM_EXAMPLES).join(", ");
    const says = say`no foam ${quoteText(blank.foam)} is known: write pu, eps or xps and its density in kg/m³, for example ${near}`;
    return {
      value: null,
      findings: [finding("blocker", "layup.unknown-foam", "blank.foam", says)],
      assumptions: [],
    };
  }
  const kind = FOAM_KINDS[foam.kind];
  const isSealed = glass.seal ?? kind.isSealedFirst;
  const taken = isSealed ? say`sealed before the glass` : say`not sealed before the glass`;
  const why = `${kind.name} ${kind.isSealedFirst ? "drinks much resin and is usually sealed" : "is usually glassed bare"}`;
  const unsealed = say`unsealed ${kind.name} drinks about ${arealMass(kind.uptakeKgM2.value)} of resin from the first laminate, and breathes bubbles into it while it warms: seal it first, or have the resin ready`;
  return {
    value: { foam, isSealed },
    findings:
      foam.kind === "eps" && !isSealed ? [finding("note", "layup.eps-unsealed", "glass.seal", unsealed)] : [],
    assumptions: glass.seal === undefined ? [assume("glass.seal", taken, why, "common-practice")] : [],
  };
}
