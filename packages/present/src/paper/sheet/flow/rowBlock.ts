import type { Item } from "../../../drawing/Drawing";
import type { PaperBlock } from "../../pdf/PaperDocument";

/** A row of a tagged table: a block for each cell, and its rules apart as what no reader aloud says. */
export function rowBlock(
  tag: "TH" | "TD",
  cells: ReadonlyArray<readonly Item[]>,
  rules: readonly Item[],
): PaperBlock {
  return {
    tag: "TR",
    blocks: [...cells.map((items): PaperBlock => ({ tag, items })), { tag: "Artifact", items: rules }],
  };
}
