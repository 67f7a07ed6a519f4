import { LAP_DRIP_KG_M, OWN_RATIO_SPREAD_SHARE, RATIO_RANGE, RESIN_RATIO } from "../constants/handling";
import type { Sourced } from "../constants/Sourced";
import { say } from "../foundation/phrase";
import { type Assumption, finding, type Stage } from "../foundation/stage";
import { listResins } from "../materials/listResins";
import { assume } from "../sources/assume";
import type { GlassInput } from "./GlassInput";
import type { ResolvedBoard } from "./LayupInput";
import { resolveFaces } from "./resolveFaces";
import { resolveFillers } from "./resolveFillers";
import { resolveFoam } from "./resolveFoam";
import { resolvePatches } from "./resolvePatches";
import { resolveResins } from "./resolveResins";
import type { Schedule } from "./Schedule";
import type { Skin } from "./Skin";

/** The glass part with ids looked up, defaults taken and said, and everything impossible refused, all faults at once. */
export function buildSchedule(board: ResolvedBoard, skin: Skin | null): Stage<Schedule> {
  const { glass, materials } = board;
  const foam = resolveFoam(board);
  const resins = resolveResins(glass, foam.value?.foam ?? null, listResins(materials));
  const faces = resolveFaces(glass, skin, materials);
  const rollWidthM: Schedule["rollWidthM"] = ({ id, rollWidthM }) =>
    board.shop?.rolls?.[id]?.widthM ?? rollWidthM.value;
  const patches = resolvePatches(glass, { skin, materials, fins: board.fins, rollWidthM });
  const ratio = resolveRatio(glass);
  const fillers = resolveFillers(glass, materials);
  const stages = [foam, resins, faces, patches, ratio, fillers];
  const isWhole =
    foam.value !== null &&
    resins.value !== null &&
    faces.value !== null &&
    patches.value !== null &&
    ratio.value !== null &&
    fillers.value !== null;
  return {
    value: isWhole
      ? {
          ...foam.value,
          resins: resins.value,
          ratio: ratio.value,
          fillers: fillers.value,
          lapKind: glass.lapKind ?? "free",
          cutting: glass.cutting ?? "rolled",
          faces: faces.value,
          patches: patches.value,
          finish: glass.finish ?? "sanded",
          rollWidthM,
        }
      : null,
    findings: stages.flatMap((stage) => stage.findings),
    assumptions: [...stages.flatMap((stage) => stage.assumptions), ...listPlainDefaults(glass)],
  };
}

function resolveRatio(glass: GlassInput): Stage<Sourced> {
  const own = glass.resinRatio;
  if (own === undefined) {
    const taken = say`${RESIN_RATIO.value} of cured resin to one of glass by mass`;
    const why = say`squeegeed by hand, ${RESIN_RATIO.low} to ${RESIN_RATIO.high}; weigh the board after a laminate and put your own in`;
    return {
      value: RESIN_RATIO,
      findings: [],
      assumptions: [assume("glass.resinRatio", taken, why, RESIN_RATIO.source)],
    };
  }
  if (!(own >= RATIO_RANGE.least && own <= RATIO_RANGE.most)) {
    const says = say`resin to glass by mass lies between ${RATIO_RANGE.least} and ${RATIO_RANGE.most}; by hand it is about ${RESIN_RATIO.value}`;
    return {
      value: null,
      findings: [finding("blocker", "layup.ratio", "glass.resinRatio", says)],
      assumptions: [],
    };
  }
  const { value: share, source } = OWN_RATIO_SPREAD_SHARE;
  return {
    value: { value: own, low: (1 - share) * own, high: (1 + share) * own, source },
    findings: [],
    assumptions: [],
  };
}

function listPlainDefaults(glass: GlassInput): Assumption[] {
  const list: Assumption[] = [];
  if (glass.bottom?.lapsM === undefined && glass.deck?.lapsM === undefined) {
    const taken = say`every full layer laps the rail`;
    list.push(assume("glass", taken, "which layers lap was not given", "common-practice"));
  }
  if (glass.lapKind === undefined) {
    list.push(
      assume("glass.lapKind", say`free`, "how the laps are ended was not given", LAP_DRIP_KG_M.free.source),
    );
  }
  if (glass.cutting === undefined) {
    const taken = say`rolled out, trimmed on the board and notched`;
    list.push(assume("glass.cutting", taken, "how the cloth is cut was not given", "common-practice"));
  }
  if (glass.finish === undefined) {
    list.push(assume("glass.finish", say`sanded`, "no finish was given", "common-practice"));
  }
  return list;
}
