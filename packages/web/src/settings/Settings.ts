import type { Units } from "@lapline/engine";
import type { Language, Reader } from "@lapline/present";
import { createContext, useContext } from "react";

/** Light to see by: as the device has it, paper by day, the shed at night, or black on white in the sun. */
export const LIGHTS = ["auto", "paper", "night", "sun"] as const;
export type Light = (typeof LIGHTS)[number];

export interface Settings {
  readonly units: Units;
  readonly light: Light;
  /** Who texts are made for. */
  readonly reader: Reader;
  setUnits(units: Units): void;
  setLight(light: Light): void;
  setLanguage(language: Language): void;
}

export const SettingsContext = createContext<Settings | null>(null);

/** How this reader wants to see the plan. */
export function useSettings(): Settings {
  const settings = useContext(SettingsContext);
  if (settings === null) throw new Error("useSettings needs a SettingsProvider around it");
  return settings;
}
