import type { Item, Point } from "../../../drawing/Drawing";
import { QR_QUIET, qrRuns } from "../../../qr/qrRuns";

/** A web address as a QR code: areas of the drawing model, each run of dark modules one rectangle. */
export function qrItems(url: string, corner: Point, sizeMm: number): readonly Item[] {
  const { rows, size } = qrRuns(url);
  const moduleMm = sizeMm / (size + 2 * QR_QUIET);
  return rows.flatMap((runs, r) =>
    runs.map(({ from, to }): Item => {
      const x = corner.x + (QR_QUIET + from) * moduleMm;
      const y = corner.y + (QR_QUIET + r) * moduleMm;
      const [right, foot] = [corner.x + (QR_QUIET + to) * moduleMm, y + moduleMm];
      return {
        kind: "hatch",
        hatch: "solid",
        points: [
          { x, y },
          { x: right, y },
          { x: right, y: foot },
          { x, y: foot },
        ],
      };
    }),
  );
}
