import type { Units } from "@lapline/engine";
import { type Language, loadLanguage } from "@lapline/present";
import { type ReactNode, useLayoutEffect, useMemo, useState } from "react";
import { keep, LANGUAGE_KEY, recall } from "./kept";
import { LIGHTS, type Light, type Settings, SettingsContext } from "./Settings";

const UNITS_KEY = "lapline.units";
const LIGHT_KEY = "lapline.light";

interface SettingsProviderProps {
  /** Its texts are at hand. */
  readonly first: Language;
  readonly children: ReactNode;
}

/** Keeps units, light and language on this device; the board file knows nothing of them. */
export function SettingsProvider({ first, children }: SettingsProviderProps) {
  const [language, setLanguage] = useState(first);
  const [units, setUnits] = useState<Units>(() => (recall(UNITS_KEY) === "mm" ? "mm" : "inch"));
  const [light, setLight] = useState<Light>(
    () => LIGHTS.find((each) => each === recall(LIGHT_KEY)) ?? "auto",
  );

  useLayoutEffect(() => {
    document.documentElement.dataset.light = light;
  }, [light]);
  useLayoutEffect(() => {
    document.documentElement.lang = language;
  }, [language]);

  const settings = useMemo<Settings>(
    () => ({
      units,
      light,
      reader: { units, language },
      setUnits(next) {
        setUnits(next);
        keep(UNITS_KEY, next);
      },
      setLight(next) {
        setLight(next);
        keep(LIGHT_KEY, next);
      },
      setLanguage(next) {
        // Where its texts cannot be fetched the page stays as it is.
        loadLanguage(next).then(
          () => {
            setLanguage(next);
            keep(LANGUAGE_KEY, next);
          },
          () => undefined,
        );
      },
    }),
    [units, light, language],
  );
  return <SettingsContext value={settings}>{children}</SettingsContext>;
}
