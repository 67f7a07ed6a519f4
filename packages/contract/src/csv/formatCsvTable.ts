import type { Units } from "@lapline/engine";
import Papa from "papaparse";
import { bareNumber } from "./bareNumber";
import type { CsvColumn } from "./CsvColumn";
import { siOf } from "./siOf";

/** What a cell may hold: words or a quantity with its unit, a number of the plan in SI, or nothing. */
export type CsvCell = string | number | undefined;

/** A spreadsheet takes a cell that begins so for a formula. */
const FORMULA = /^[=+\-@\t\r]/;
const LENGTH_UNITS: Readonly<Record<Units, string>> = { inch: "in", mm: "mm" };

/** Of a plan's number: finer than it can be marked. */
const DECIMALS: Readonly<Record<string, number>> = { in: 3, mm: 2, deg: 2 };

/**
 * A table as CSV (RFC 4180): the first row names the columns and their units, quantities are bare numbers with a decimal point
 * wherever that is exact, and stand with their own unit otherwise. Text that a spreadsheet would run as a formula has a quote
 * mark in front.
 */
export function formatCsvTable(
  columns: readonly CsvColumn[],
  rows: ReadonlyArray<readonly CsvCell[]>,
  units: Units,
): string {
  const unitOf = ({ holds }: CsvColumn) => (holds === "angle" ? "deg" : LENGTH_UNITS[units]);
  const names = columns.map((column) => headerOf(column, unitOf(column)));
  const cells = rows.map((row) =>
    columns.map((column, i) => {
      const cell = row[i];
      if (cell === undefined || column.holds === "words") return cell ?? "";
      if (typeof cell === "number") return roundTo(unitOf(column), cell, column.holds);
      return bareNumber(cell, column.holds, unitOf(column)) ?? cell;
    }),
  );
  return `${Papa.unparse([names, ...cells], { newline: "\r\n", escapeFormulae: FORMULA })}\r\n`;
}

function roundTo(unit: string, si: number, dimension: "length" | "angle"): number {
  return Number((si / (siOf(`1 ${unit}`, dimension) ?? Number.NaN)).toFixed(DECIMALS[unit] ?? 0));
}

/** `thickness (in)`; words have no unit. */
function headerOf({ name, holds }: CsvColumn, unit: string): string {
  return holds === "words" ? name : `${name} (${unit})`;
}
