import type { Plan } from "@lapline/engine";
import { frameOf, sheetSize } from "../../../board/Lay";
import type { Drawing } from "../../../drawing/Drawing";
import type { Reader } from "../../../language/Reader";
import { tell } from "../../../language/tell";
import { setOutWords } from "../../../words/setOutWords";
import { cautionsAt } from "../cautionsAt";
import { stopsOf } from "../stopsOf";
import type { Template } from "../Template";
import { boxItems, cutOutItems } from "./boxItems";
import { type FinSheet, type Finset, layOutFinSheet, placeMark, type Shape } from "./FinSheet";
import { figureItems } from "./figureItems";
import { finTables } from "./finTables";
import { bestFitItems, edgeItems, stringerItems, tailTipItems } from "./lineItems";
import { baseItems, markItems } from "./markItems";
import { diagonalItems, squareItems, stringItems } from "./measureItems";
import { plugItems } from "./plugItems";
import { wordItems } from "./wordItems";

/** The tail at full size with every mark, box, string and check: laid on the board's bottom, and pricked through. */
export function finsTemplate(plan: Plan, built: { shape: Shape; finset: Finset }, reader: Reader): Template {
  const { finset } = built;
  const t = tell(reader);
  const sheet = layOutFinSheet(built.shape, finset, reader);
  return {
    kind: "fins",
    title: t`Fins`,
    boardName: plan.name,
    engine: plan.engine,
    orientation: t`Bottom up, nose away: LEFT is on your right hand.`,
    stops: stopsOf(plan, reader),
    notes: [
      setOutWords(finset, reader),
      t`Distances from the tail are by tape along the bottom, from a straightedge across the tail tips; the paper is drawn so too, and lies down true. Across, it is true on a flat bottom.`,
      ...(finset.marks.some(({ box }) => box !== null)
        ? [
            t`Boxes (dashed) and their cut-outs are drawn at their own size, around the middle of where the plan has them.`,
          ]
        : []),
    ],
    steps: [
      t`Board bottom up, nose away. Lay the stringer line on the stringer and the straightedge line across the tail tips; LEFT is on your right hand. Let the paper hang over the rails. Tape it down.`,
      t`Prick through each cross: trailing and leading marks. Take the paper off and join them: these are the base lines.`,
      t`Mark and verify, before anything is cut: each string past the nose, both diagonals of a pair alike, each mark from the tail by tape and from the line. Say left and right aloud.`,
    ],
    cautions: cautionsAt(plan, ["mark-fins", "set-boxes"]),
    tables: finTables(finset, reader),
    parts: [{ id: "fins", title: t`Fins`, drawing: drawingOf(sheet), keepWhole: keepWholeOf(sheet) }],
  };
}

function drawingOf(sheet: FinSheet): Drawing {
  return {
    ...sheetSize(sheet.lay),
    frame: frameOf(sheet.lay),
    notes: [tell(sheet.reader)`One to one. Along the board the sheet is by tape along the bottom.`],
    layers: [
      { id: "diagonals", items: diagonalItems(sheet) },
      { id: "squares", items: squareItems(sheet) },
      { id: "strings", items: stringItems(sheet) },
      { id: "tail-tips", items: tailTipItems(sheet) },
      { id: "leash-plug", items: plugItems(sheet) },
      { id: "figures", items: figureItems(sheet) },
      { id: "words", items: wordItems(sheet) },
      { id: "stringer", items: stringerItems(sheet) },
      { id: "best-fit", items: bestFitItems(sheet) },
      { id: "boxes", items: boxItems(sheet) },
      { id: "cut-outs", items: cutOutItems(sheet) },
      { id: "bases", items: baseItems(sheet) },
      { id: "marks", items: markItems(sheet) },
      { id: "outline", items: edgeItems(sheet) },
    ],
  };
}

function keepWholeOf(sheet: FinSheet) {
  const marks = sheet.finset.marks.flatMap((mark) => [
    placeMark(sheet, mark, "trailing"),
    placeMark(sheet, mark, "leading"),
  ]);
  const { lay } = sheet;
  return {
    x: [...marks.map(({ x }) => x), lay.vStringerMm],
    y: [...marks.map(({ y }) => y), lay.uTotalMm - lay.uTailMm],
  };
}
