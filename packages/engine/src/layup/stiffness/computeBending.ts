import { WOOD_MODULUS_PA } from "../../constants/elasticity";
import type { MidSection, SkinStrip } from "./measureMidSection";

export interface BeamInputs {
  /** Pull of a strip's skin per metre of width and unit strain, N/m. */
  readonly stretchOf: (strip: SkinStrip) => number;
  readonly section: MidSection;
  readonly foam: { readonly modulusPa: number; readonly shearPa: number };
  readonly stringerM: number;
}

/** What resists bending: N per unit strain at a height, and its own bending stiffness in N m². */
interface Member {
  readonly pull: number;
  readonly heightM: number;
  readonly own: number;
}

/**
 * Bending stiffness of the thickest section about its own middle, N m²: skins by their stretch stiffness, foam, stringer; sections taken to stay
 * flat (Euler and Bernoulli), shear left out.
 */
export function computeBending(inputs: BeamInputs): number {
  const members = [...listSkins(inputs), ...listCore(inputs)];
  const pull = members.reduce((sum, member) => sum + member.pull, 0);
  const middleM = members.reduce((sum, member) => sum + member.pull * member.heightM, 0) / pull;
  return members.reduce(
    (sum, { pull: each, heightM, own }) => sum + own + each * (heightM - middleM) ** 2,
    0,
  );
}

function listSkins({ stretchOf, section }: BeamInputs): Member[] {
  return section.strips.map((strip) => ({
    pull: stretchOf(strip) * strip.acrossM,
    heightM: strip.heightM,
    own: 0,
  }));
}

function listCore({ section, foam, stringerM }: BeamInputs): Member[] {
  const slices = section.foam.map(({ acrossM, lowM, highM }) =>
    block(foam.modulusPa, acrossM, [lowM, highM]),
  );
  const stringer = block(WOOD_MODULUS_PA.value, stringerM, [0, section.thicknessM]);
  return stringerM > 0 ? [...slices, stringer] : slices;
}

function block(modulusPa: number, acrossM: number, [lowM, highM]: readonly [number, number]): Member {
  const tallM = Math.max(highM - lowM, 0);
  return {
    pull: modulusPa * acrossM * tallM,
    heightM: (lowM + highM) / 2,
    own: (modulusPa * acrossM * tallM ** 3) / 12,
  };
}
