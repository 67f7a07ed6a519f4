import { describeKey, type Phrase, type Plan, type Quantity, readPlanPath } from "@lapline/engine";
import type { Reader } from "../../language/Reader";
import { showNumbers } from "../../language/showNumbers";
import { showQuantity } from "../../language/showQuantity";
import { tellPhrase } from "../../language/tellPhrase";
import { tellText } from "../../language/tellText";
import { formatTapeLength } from "../../words/formatTapeLength";

/** One text on the paper with the place of the plan that it came from. */
export interface Entry {
  readonly path: string;
  readonly text: string;
}

/** Stands for a path where a text tells of a drawing and not of the plan. */
export const DRAWN = "how it is drawn";

/** How a number is shown where not to the grain that its kind usually is. */
export type Grain = NonNullable<Quantity["grain"]> | "tape";

/**
 * Reads the plan's numbers and words for the Sheet, by path and in no other way, and keeps which text came from where: nothing
 * with a number in it can be printed that the plan does not hold.
 */
export class Ledger {
  readonly entries: Entry[] = [];

  constructor(
    readonly plan: Plan,
    readonly reader: Reader,
  ) {}

  /**
   * The number at a path as its reader writes it, with its unit; without its sign where `size` is asked for.
   * @throws RangeError where no number stands there
   */
  show(path: string, grain: Grain = "normal", size = false): string {
    return this.keep(path, this.format(path, grain, size));
  }

  /** The same without the unit of length, for a drawing or a table that states it once; feet keep their marks. */
  bare(path: string, grain: Grain = "normal", size = false): string {
    return this.keep(path, this.format(path, grain, size).replace(/ (in|mm)$/, ""));
  }

  /** A mass as the shop's scale shows it, without pounds beside it. */
  onScale(path: string): string {
    return this.keep(path, this.format(path, "normal", false).replace(/ \([^)]*\)$/, ""));
  }

  /** A name or a sentence that the plan holds as plain text. */
  words(path: string): string {
    const value = this.read(path);
    if (typeof value !== "string") throw new RangeError(`${path}: no text stands there`);
    return this.keep(path, tellText(value, this.reader));
  }

  /** A sentence that the plan holds with its quantities. */
  sentence(path: string, phrase: Phrase): string {
    return this.keep(path, tellPhrase(phrase, this.reader));
  }

  /** A text that is told from the numbers below a path. */
  told(path: string, text: string): string {
    return this.keep(path, text);
  }

  /** How something is drawn: a scale or an exaggeration, which is no figure of the board. */
  drawn(notes: readonly string[]): string {
    return this.keep(DRAWN, notes.join(" "));
  }

  private format(path: string, grain: Grain, size: boolean): string {
    const signed = this.read(path);
    if (typeof signed !== "number") throw new RangeError(`${path}: no number stands there`);
    const value = size ? Math.abs(signed) : signed;
    if (grain === "tape") return formatTapeLength(value, this.reader);
    const described = describeKey(keyOf(path), value);
    if (typeof described === "string") return showNumbers(described, this.reader.language);
    if (!("dimension" in described)) return tellPhrase(described, this.reader);
    return showQuantity({ ...described, grain }, this.reader);
  }

  private read(path: string): unknown {
    const place = readPlanPath(this.plan, path);
    if ("message" in place) throw new RangeError(place.message);
    return place.value;
  }

  private keep(path: string, text: string): string {
    this.entries.push({ path, text });
    return text;
  }
}

const keyOf = (path: string): string => /[^.\]]+$/.exec(path)?.[0] ?? "";
