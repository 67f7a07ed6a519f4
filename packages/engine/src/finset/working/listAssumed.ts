import type { FinsetContext } from "./FinsetContext";

/** How the survey is read, which every place on the board hangs on. */
const BOARD = ["survey.lengthBy", "survey.stationsBy", "survey.halfWidthsAt"];
const SECTION = ["survey.section", "shape.section"];
const ALONG = ["fins.fromTailBy", "fins.fromTailOf"];

/** What each part of a fin's working reads of the set beside its own line in it; `#` stands for that line. */
const PLACE = ["fins.sides", ...ALONG, "#.fromRailBy", ...BOARD];
const TURN = [...PLACE, "#.toe"];
const LEAN = ["#.cant"];
const TRUE_LEAN = [...LEAN, "finset.marks[].bottomTiltRad", "finset.marks[].trueCantRad", ...SECTION];
const BOX = ["#.box.behindTrailing"];

const TAKEN_OF_POCKETS = ["cutOut", "proudM", "patch"].map((key) => `finset.verify.boxes[].${key}`);

/** By the start of the plan's path, the nearest first. */
const READS: ReadonlyArray<readonly [RegExp, readonly string[]]> = [
  [/^finset\.toleranceM$/, ["fins.tolerance"]],
  [/^finset\.line\./, ["fins.sides", ...BOARD]],
  [/^finset\.marks\[\]\.(baseM|depthM|sweepRad|foil)/, []],
  [/^finset\.marks\[\]\.cantRad$/, LEAN],
  [/^finset\.marks\[\]\.(bottomTiltRad|twistRad|trueCantRad)$/, [...TRUE_LEAN, ...PLACE]],
  [/^finset\.marks\[\]\.trailing\./, PLACE],
  [/^finset\.marks\[\]\.box\.(lengthM|widthM|depthM)$/, []],
  [/^finset\.marks\[\]\.box\.(behind|slide)/, BOX],
  [/^finset\.marks\[\]\.(box|foamUnderM)/, [...TURN, ...LEAN, ...BOX, ...SECTION]],
  [/^finset\.marks\[\]\./, TURN],
  [/^finset\.clearances/, [...TURN, ...LEAN, ...BOX, ...SECTION]],
  [/^finset\.pairs\[\]\.diagonals/, TURN],
  [/^finset\.(pairs|asymmetryM|sidesCompared\[\]\.asymmetryM)/, PLACE],
  [/^finset\.sidesCompared/, TURN],
  [/^finset\.(asSet|asSetPairs)/, [...TURN, ...LEAN, "fins.tolerance", "finset.verify.checks[].angles"]],
  [/^finset\.leashPlug\.(cure|pull|patch)/, ["fins.leashPlug.diameter"]],
  [/^finset\.leashPlug/, ["fins.sides", ...ALONG, "fins.leashPlug", ...BOARD, ...SECTION]],
  [
    /^finset\.verify\.checks\[\]\.lengths\[\]\.toleranceM/,
    ["fins.tolerance", "finset.verify.checks[].lengths"],
  ],
  [/^finset\.verify\.checks\[\]\.angles/, [...LEAN, "finset.verify.checks[].angles"]],
  [/^finset\.verify\.checks/, [...TURN, ...LEAN, "finset.verify.boxes[]", "fins.boxes"]],
  [/^finset\.verify\.(boxes|glassedOn)/, ["fins.boxes"]],
];

/**
 * Lists the places of the assumptions that one number of the fins hangs on, so that its working shows those and no others.
 * @param pattern the plan's path with emptied brackets
 * @param ids what stood between them
 */
export function listAssumed(
  pattern: string,
  { plan, board }: FinsetContext,
  ids: readonly string[],
): readonly string[] {
  const [, reads = []] = READS.find(([start]) => start.test(pattern)) ?? [];
  const check = plan.finset?.verify.checks.find(({ id }) => id === ids[0]);
  const names = [check?.fin, ...ids].flatMap((id) => (id ? [id, id.replace(/-(?:left|right)$/, "")] : []));
  const set = board.fins?.set ?? [];
  const lines = set.flatMap(({ fin }, i) => (names.includes(fin) || isMet(set, names, fin) ? [i] : []));
  // What is taken for a number of the plan stands at that number's own place.
  return [
    ...reads.flatMap((path) =>
      path.startsWith("#") ? lines.map((i) => `fins.set[${i}]${path.slice(1)}`) : [path],
    ),
    pattern,
    ...(/\.cutOut\.|\.patch\.|\.mostBitM|\.fillVolume|\.foamOverCutM/.test(pattern) ? TAKEN_OF_POCKETS : []),
    ...(pattern.startsWith("finset.verify.glassedOn[]") ? ["finset.verify.glassedOn[]"] : []),
  ];
}

/** Whether the line of a fin is the one that a fin asked for has to meet. */
function isMet(
  set: NonNullable<FinsetContext["board"]["fins"]>["set"],
  names: readonly string[],
  fin: string,
): boolean {
  return set.some(({ fin: name, toe }) => names.includes(name) && toe?.kind === "meets" && toe.fin === fin);
}
