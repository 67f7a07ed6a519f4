import { lameCurve, lameHeight } from "../geometry/lameCurve";
import type { SectionNumbers } from "../survey/SectionProfile";

/** Share of the half-width over which a concave runs. Contract: d (1 − (y / 0.8 b)²). */
const CONCAVE_SHARE = 0.8;
/** Gauss-Legendre places and weights on [0, 1] for what concave and vee cut away (standard table, eight points). */
const GAUSS: ReadonlyArray<readonly [place: number, weight: number]> = [
  [0.0198550718, 0.0506142681],
  [0.1016667613, 0.1111905172],
  [0.237233795, 0.1568533229],
  [0.4082826788, 0.1813418917],
  [0.5917173212, 0.1813418917],
  [0.762766205, 0.1568533229],
  [0.8983332387, 0.1111905172],
  [0.9801449282, 0.0506142681],
];
/** Halvings that find where concave or vee meets the rail; an error there counts only squared. */
const HALVINGS = 10;
const AREA_INTERVALS = 1;

/**
 * One side's half section at one place: Lamé curves above and below the rail's widest line, with concave or vee.
 * Heights are over the rails' lowest plane, y from the centreline. Contract, "Section family".
 */
export class HalfSection {
  /** Height of the envelope: the thickness read at the centre, and a concave's depth where there is one. */
  readonly heightM: number;
  readonly apexM: number;

  constructor(
    readonly halfWidthM: number,
    readonly thicknessM: number,
    readonly numbers: SectionNumbers,
  ) {
    this.heightM = thicknessM + numbers.concaveM;
    this.apexM = numbers.apex * this.heightM;
  }

  deckM(yM: number): number {
    const share = this.halfWidthM > 0 ? yM / this.halfWidthM : 1;
    return this.apexM + (this.heightM - this.apexM) * lameHeight(share, this.numbers.deckFullness);
  }

  bottomM(yM: number): number {
    return Math.max(this.envelopeBottomM(yM), this.cutM(yM));
  }

  /** How much of the block over the rail the deck's curve fills. */
  deckShare(): number {
    return lameCurve(this.numbers.deckFullness, AREA_INTERVALS).area;
  }

  /** Area of this half, in m². Closed form of the envelope, less what concave or vee takes. */
  areaM2(): number {
    const { apex, bottomFullness, concaveM, veeM } = this.numbers;
    const envelope =
      this.halfWidthM *
      this.heightM *
      ((1 - apex) * this.deckShare() + apex * lameCurve(bottomFullness, AREA_INTERVALS).area);
    if (concaveM === 0 && veeM === 0) return envelope;
    const edgeM = this.cutEdgeM();
    let cut = 0;
    for (const [place, weight] of GAUSS) {
      const yM = place * edgeM;
      cut += Math.max(this.cutM(yM) - this.envelopeBottomM(yM), 0) * weight * edgeM;
    }
    return envelope - cut;
  }

  /** Out to here concave or vee lie over the envelope's bottom. */
  private cutEdgeM(): number {
    let [inside, outside] = [0, this.halfWidthM];
    for (let i = 0; i < HALVINGS; i++) {
      const middle = (inside + outside) / 2;
      if (this.cutM(middle) > this.envelopeBottomM(middle)) inside = middle;
      else outside = middle;
    }
    return outside;
  }

  /** Points of one face from the rail's widest line to the centreline. */
  profile(
    face: "deck" | "bottom",
    intervals: number,
  ): { readonly yM: readonly number[]; readonly zM: readonly number[] } {
    const { deckFullness, bottomFullness, concaveM, veeM } = this.numbers;
    const curve = lameCurve(face === "deck" ? deckFullness : bottomFullness, intervals);
    const flat = face === "deck" || (concaveM === 0 && veeM === 0);
    const overRailM = this.heightM - this.apexM;
    // Plain arrays: a typed one of this size costs more to make than to fill.
    const yM: number[] = [];
    const zM: number[] = [];
    for (let i = 0; i <= intervals; i++) {
      const z = curve.z[i]!;
      const outM = curve.y[i]! * this.halfWidthM;
      const envelope = face === "deck" ? this.apexM + overRailM * z : this.apexM * (1 - z);
      yM.push(outM);
      zM.push(flat ? envelope : Math.max(envelope, this.cutM(outM)));
    }
    return { yM, zM };
  }

  /** Along the skin of one face from the rail's widest line to the centreline, as a sum of chords. */
  girthM(face: "deck" | "bottom", intervals: number): number {
    const { deckFullness, bottomFullness, concaveM, veeM } = this.numbers;
    const isDeck = face === "deck";
    const isCut = !isDeck && (concaveM !== 0 || veeM !== 0);
    const { y, z } = lameCurve(isDeck ? deckFullness : bottomFullness, intervals);
    const overRailM = this.heightM - this.apexM;
    let girthM = 0;
    let [beforeYM, beforeZM] = [0, 0];
    // Thousands of chords make a plan: no arrays of points are kept for them.
    for (let i = 0; i <= intervals; i++) {
      const yM = y[i]! * this.halfWidthM;
      let zM = isDeck ? this.apexM + overRailM * z[i]! : this.apexM * (1 - z[i]!);
      if (isCut) zM = Math.max(zM, this.cutM(yM));
      if (i > 0) girthM += Math.sqrt((yM - beforeYM) ** 2 + (zM - beforeZM) ** 2);
      beforeYM = yM;
      beforeZM = zM;
    }
    return girthM;
  }

  private envelopeBottomM(yM: number): number {
    const share = this.halfWidthM > 0 ? yM / this.halfWidthM : 1;
    return this.apexM * (1 - lameHeight(share, this.numbers.bottomFullness));
  }

  private cutM(yM: number): number {
    const { concaveM, veeM } = this.numbers;
    if (!(this.halfWidthM > 0)) return 0;
    const concave = concaveM * (1 - (yM / (CONCAVE_SHARE * this.halfWidthM)) ** 2);
    const vee = (veeM * yM) / this.halfWidthM;
    return Math.max(concave, vee, 0);
  }
}
