import type { Plan, Units } from "@lapline/engine";
import type { BoardFile } from "../file/BoardFile";
import type { AsSetFile, FinsFile } from "../file/FinsFile";
import { chooseUnits } from "./chooseUnits";
import { type CsvCell, formatCsvTable } from "./formatCsvTable";
import { MARKS_COLUMNS, SET_COLUMNS } from "./marksColumns";

type Finset = NonNullable<Plan["finset"]>;
type Mark = Finset["marks"][number];

/**
 * The fin marks as CSV, a row for each fin: as planned, measured as this board file measures (by tape or straight, from the tips or
 * the crotch), and as set, empty where nothing was measured yet. Null where the plan has no fins.
 */
export function formatMarksCsv({ fins, survey }: BoardFile, { finset }: Plan, units?: Units): string | null {
  if (fins === undefined || finset === null) return null;
  const left = [...(fins.asSet ?? [])];
  const rows = finset.marks.flatMap((mark) => {
    const own = left.filter(
      ({ fin, side }) => fin === mark.fin && (mark.side === "centre" || side === mark.side),
    );
    for (const each of own) left.splice(left.indexOf(each), 1);
    return (own.length > 0 ? own : [null]).map((asSet) => rowOf(asSet, planned(mark, fins, finset), mark));
  });
  const unplaced = left.map((asSet) => rowOf(asSet, Array<undefined>(PLANNED), null));
  const readings = [
    ...(fins.asSet ?? []).flatMap(lengthsOf),
    ...survey.stations.flatMap((station) => Object.values(station)),
  ];
  return formatCsvTable(MARKS_COLUMNS, [...rows, ...unplaced], units ?? chooseUnits(readings));
}

const PLANNED = MARKS_COLUMNS.filter(({ onlyOut }) => onlyOut).length;

function rowOf(asSet: AsSetFile | null, plan: readonly CsvCell[], mark: Mark | null): CsvCell[] {
  const side = asSet?.side ?? (asSet === null || mark?.side === "centre" ? mark?.side : undefined);
  const set = SET_COLUMNS.map(({ read }) => (asSet === null ? undefined : read(asSet)));
  return [asSet?.fin ?? mark?.fin, side, ...plan, ...set, asSet?.on];
}

function planned(mark: Mark, fins: FinsFile, { line }: Finset): CsvCell[] {
  const isCrotch = fins.fromTailOf === "crotch";
  const along = (point: Mark["trailing"]): number | undefined => {
    if (fins.fromTailBy === "straight") return point.fromTailM - (isCrotch ? (line.crotchFromTailM ?? 0) : 0);
    return isCrotch ? (point.fromCrotchTapeM ?? undefined) : point.fromTailTapeM;
  };
  const { trailing, leading } = mark;
  return [
    along(trailing),
    trailing.fromCentrelineM,
    along(leading),
    leading.fromCentrelineM,
    trailing.fromRailM,
    mark.toeRad,
    mark.cantRad,
  ];
}

const lengthsOf = (asSet: AsSetFile): string[] =>
  SET_COLUMNS.flatMap(({ holds, read }) => (holds === "length" ? (read(asSet) ?? []) : []));
