/** What the glass and the weight need of the `fins` part: where resin is poured around a body. The finset's input has it all. */
export interface FittingsInput {
  readonly arrangement: string;
  readonly boxes?: "before-glass" | "after-laminate" | "after-fill" | "glassed-on";
  readonly fromTailBy?: "tape" | "straight";
  readonly fromTailOf?: "tips" | "crotch";
  readonly set: ReadonlyArray<{
    readonly fin: string;
    readonly fromTailM: number;
    readonly baseM?: number;
    /** From the base to the tip. */
    readonly depthM?: number;
    /** Absent for a fin on the centreline. */
    readonly fromRailM?: number;
    readonly box?: { readonly lengthM: number; readonly widthM: number; readonly depthM: number };
  }>;
  readonly leashPlug?: { readonly diameterM?: number; readonly depthM?: number };
}
