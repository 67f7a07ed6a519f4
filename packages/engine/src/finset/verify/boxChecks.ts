import { SET_OUT_TOLERANCE } from "../../constants/finClearances";
import { DEPTH_TOLERANCE_M, PROUD_M, type Surface } from "../../constants/finSetting";
import { say } from "../../foundation/phrase";
import { angle, length } from "../../foundation/quantity";
import type { FinMark } from "../FinMark";
import type { MadeFor } from "./MadeFor";
import { buildReading, buildSeen, type CheckOf, takeReading, type VerifyCheck } from "./VerifyCheck";
import type { BoxSettingPlan } from "./VerifyPlan";
import { buildAngle, buildLength } from "./VerifyReading";
import { findLatest, listFins, type VerifyRequest } from "./VerifyRequest";

/** The block that leans the router, or the fin, against the square; one for each fin, for both sides. */
export function buildCantChecks({ marks, read }: VerifyRequest): readonly VerifyCheck[] {
  return listFins(marks).map(({ fin, cantRad }) => {
    const reading = buildAngle({
      id: "block",
      targetRad: cantRad,
      toleranceRad: SET_OUT_TOLERANCE.cantRad,
      readRad: findLatest(read.cantBlocks, (block) => block.fin === fin)?.cantRad,
    });
    const how =
      "Set a bevel gauge on the cant block: it leans the router, or the fin, from the square to the bottom.";
    return buildReading(
      { id: `cant-${fin}`, matter: "cant", how, fin },
      {
        angles: [reading],
        cure: () => {
          const errorRad = reading.errorRad ?? 0;
          return {
            correction: { cantRad: -errorRad },
            says: say`the cant block of the ${fin} fins leans ${angle(reading.readRad ?? 0)}, for ${angle(cantRad)}: lean it ${angle(Math.abs(errorRad))} ${errorRad > 0 ? "less" : "more"}`,
          };
        },
      },
    );
  });
}

/** The box tried on scrap, the depth stop, and how proud the box then stands. */
export function buildBoxChecks(
  request: VerifyRequest,
  surface: Surface,
  settings: readonly BoxSettingPlan[],
): readonly VerifyCheck[] {
  const { confirmed = [] } = request.read;
  const fins = listFins(request.marks);
  const settingOf = (mark: FinMark) => settings.find(({ id }) => id === mark.id);
  return [
    ...fins.map((mark) =>
      buildSeen(
        {
          id: `dry-fit-${mark.fin}`,
          matter: "dry-fit",
          how: "Cut the pocket in scrap foam with the frame, bit and stop that will be used, and try the box in it.",
          fin: mark.fin,
          madeFor: { ...pocketOf(surface, settingOf(mark)), cantRad: mark.cantRad },
        },
        confirmed,
      ),
    ),
    ...fins.map((mark) => buildDepthCheck(request, { mark, surface, setting: settingOf(mark) })),
    ...fins.map((mark) => buildProudCheck(request, { mark, surface, setting: settingOf(mark) })),
  ];
}

/** What a trial pocket is cut by. */
function pocketOf(surface: Surface, setting: BoxSettingPlan | undefined): MadeFor {
  return { on: surface, ...setting?.cutOut };
}

const SURFACES: Readonly<Record<Surface, string>> = {
  foam: "the foam",
  laminate: "the laminate",
  fill: "the fill coat",
};

const HOW_FROM: Readonly<Record<Surface, string>> = {
  foam: "Set the stop with the router standing on the foam, and read from that surface to the bit's end.",
  laminate:
    "Set the stop with the router standing on the laminate, and read from that surface to the bit's end.",
  fill: "Set the stop with the router standing on the fill coat, and read from that surface to the bit's end.",
};

const HOW_PROUD: Readonly<Record<Surface, string>> = {
  foam: "In the trial pocket, read how far the box stands above the foam; it is sanded flush later, and one below the surface cannot be.",
  laminate:
    "In the trial pocket, read how far the box stands above the laminate; it is sanded flush later, and one below the surface cannot be.",
  fill: "In the trial pocket, read how far the box stands above the fill coat; it is sanded flush later, and one below the surface cannot be.",
};

interface DepthOf {
  readonly mark: FinMark;
  readonly surface: Surface;
  readonly setting: BoxSettingPlan | undefined;
}

function buildDepthCheck({ read }: VerifyRequest, { mark, surface, setting }: DepthOf): VerifyCheck {
  const { fin } = mark;
  const what: CheckOf = {
    id: `depth-stop-${fin}`,
    matter: "depth-stop",
    how: HOW_FROM[surface],
    fin,
    madeFor: { on: surface },
  };
  // Without a box there is no figure to hold it to, and it can only be seen.
  if (setting === undefined) return buildSeen(what, read.confirmed ?? []);
  const { counts, stale } = takeReading(
    what,
    findLatest(read.depthStops, (stop) => stop.fin === fin),
  );
  const reading = buildLength({
    id: "depth",
    targetM: setting.cutOut.depthM,
    toleranceM: DEPTH_TOLERANCE_M.value,
    readM: counts?.depthM,
  });
  return buildReading(what, {
    lengths: [reading],
    stale,
    cure: () => {
      const errorM = reading.errorM ?? 0;
      const foamM = setting.foamOverCutM;
      const stands = say`the depth stop for the ${fin} fin's box stands at ${length(reading.readM ?? 0, "fine")} from ${SURFACES[surface]}, for ${length(reading.targetM, "fine")}: set it ${length(Math.abs(errorM), "fine")} ${errorM > 0 ? "shallower" : "deeper"}`;
      return {
        correction: { deeperM: -errorM },
        says:
          errorM > 0 && foamM !== null
            ? say`${stands}; as it stands ${length(foamM - errorM)} of foam is left over it`
            : stands,
      };
    },
  });
}

function buildProudCheck({ read }: VerifyRequest, { mark, surface, setting }: DepthOf): VerifyCheck {
  const { fin } = mark;
  const what: CheckOf = {
    id: `proud-${fin}`,
    matter: "proud",
    how: HOW_PROUD[surface],
    fin,
    madeFor: pocketOf(surface, setting),
  };
  const { counts, stale } = takeReading(
    what,
    findLatest(read.proud, (height) => height.fin === fin),
  );
  const reading = buildLength({
    id: "proud",
    targetM: PROUD_M[surface].value,
    toleranceM: DEPTH_TOLERANCE_M.value,
    readM: counts?.heightM,
  });
  return buildReading(what, {
    lengths: [reading],
    stale,
    cure: () => {
      const errorM = reading.errorM ?? 0;
      const readM = reading.readM ?? 0;
      return {
        correction: { deeperM: errorM },
        says: say`the ${fin} fin's box stands ${length(Math.abs(readM), "fine")} ${readM < 0 ? "below" : "above"} ${SURFACES[surface]}, for ${length(reading.targetM, "fine")} above it: set the depth stop ${length(Math.abs(errorM), "fine")} ${errorM > 0 ? "deeper" : "shallower"}`,
      };
    },
  });
}

/** Without a box the base itself has to lie on the bottom. */
export function buildBaseChecks({ marks, read }: VerifyRequest): readonly VerifyCheck[] {
  return listFins(marks).map(({ fin, baseM, cantRad }) =>
    buildSeen(
      {
        id: `base-fits-${fin}`,
        matter: "base-fits",
        how: "Stand the fin on its marks against the cant block: its base lies on the bottom all along, or is scribed to it.",
        fin,
        madeFor: { baseM, cantRad },
      },
      read.confirmed ?? [],
    ),
  );
}
