import type { Reader } from "@lapline/present";
import type { CommandOption, CommandWords } from "../Command";
import { chooseWord } from "./chooseWord";

const UNITS = ["inch", "mm"] as const;
const LANGUAGES = ["en", "de"] as const;

/** The options of every command that says something of a plan. */
export const READER_OPTIONS: Readonly<Record<"units" | "language", CommandOption>> = {
  units: { value: "inch|mm", says: "lengths in inches or millimetres; inch if left out" },
  language: { value: "en|de", says: "English or German; English if left out" },
};

/** Who the text is made for. Throws RefusedError. */
export function readReader({ options }: CommandWords): Reader {
  return {
    units: chooseWord("--units", options.units, { words: UNITS, usual: "inch" }),
    language: chooseWord("--language", options.language, { words: LANGUAGES, usual: "en" }),
  };
}
