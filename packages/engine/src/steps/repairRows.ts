import { FACES, type Face } from "../layup/LayupPlan";
import { coat, work } from "./labour";
import type { SandThrough } from "./Standing";
import type { StepRow } from "./StepRow";

/** Where it happened and how deep it goes, as its steps are named. */
const DEPTHS = { shine: 0, weave: 0, glass: 1, foam: 2 } as const;

/** The steps that close one sand-through: how many of them hangs on how deep it goes. */
export function repairRows(through: SandThrough): readonly StepRow[] {
  const { face, shows } = through.entry;
  const name = (part: string) => `repair-${through.number}-${part}`;
  const depth = DEPTHS[shows];
  const rows = [
    ...(depth >= DEPTHS.foam ? [dryRow(name)] : []),
    shows === "shine" ? dullRow(name) : featherRow(name),
    ...(depth >= DEPTHS.glass ? [patchRow(name)] : []),
    fillRow(name),
    sandRow(name, face),
  ];
  return rows.map((row) => ({ ...row, title: `Repair ${through.number}: ${row.title}` }));
}

/** The step that the rest of the work waits for. */
export function repairEnd(through: SandThrough): string {
  return `repair-${through.number}-sand`;
}

const LEVEL: Readonly<Record<Face, string>> = {
  deck: "sand the spot level with the deck, by hand",
  bottom: "sand the spot level with the bottom, by hand",
};

type Name = (part: string) => string;

/** Both faces: the board is turned for the other one, and its dust falls here too. */
const afterSanding: StepRow["needs"] = FACES.map((face) => ({
  step: `sand-${face}`,
  until: "hands-off",
  because: "the rest is sanded first, clear of it: nothing is sanded beside a wet patch",
}));

function dryRow(name: Name): StepRow {
  return {
    id: name("dry"),
    title: "keep it dry, and let the foam dry out",
    when: () => true,
    because: "damp foam blisters under a patch",
    needs: afterSanding,
    labour: work("repairDry"),
    cautions: [],
  };
}

function featherRow(name: Name): StepRow {
  return {
    id: name("feather"),
    title: "feather the edge",
    when: () => true,
    because: "a patch or coat needs a dull slope to hold on to, not a step",
    needs: [
      ...afterSanding,
      { step: name("dry"), until: "dry", because: "damp foam blisters under a patch" },
    ],
    labour: work("repairFeather"),
    cautions: ["glass-dust"],
  };
}

function dullRow(name: Name): StepRow {
  return {
    ...featherRow(name),
    title: "dull the low spot by hand with a pad, and leave the sander off it",
    because: "whoever chases the shine is through beside it first",
  };
}

function patchRow(name: Name): StepRow {
  return {
    id: name("patch"),
    title: "patch the glass, each layer larger than the one before",
    when: () => true,
    because: "cut fibres carry nothing until others lap over them",
    needs: [{ step: name("feather"), until: "hands-off", because: "the patch holds on the feathered slope" }],
    labour: coat(name("patch"), "repair"),
    cautions: ["knife"],
  };
}

function fillRow(name: Name): StepRow {
  return {
    id: name("fill"),
    title: "spot of fill coat, well past the edge",
    when: () => true,
    because: "the sander needs a film here again",
    needs: [
      { step: name("feather"), until: "hands-off", because: "the coat holds on the feathered slope" },
      {
        step: name("patch"),
        until: "recoat",
        because: "the coat bonds to a patch that has set and is still green",
      },
    ],
    labour: coat(name("fill"), "repair-fill"),
    cautions: [],
  };
}

function sandRow(name: Name, face: Face): StepRow {
  return {
    id: name("sand"),
    title: LEVEL[face],
    when: () => true,
    because: "a machine would be through again before it is felt",
    needs: [{ step: name("fill"), until: "sandable", because: "soft resin clogs the paper and tears" }],
    labour: work("repairSand"),
    cautions: ["glass-dust"],
  };
}
