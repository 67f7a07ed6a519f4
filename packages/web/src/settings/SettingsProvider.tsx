import type { Units } from "@lapline/engine";
import { type ReactNode, useLayoutEffect, useMemo, useState } from "react";
import { LIGHTS, type Light, type Settings, SettingsContext } from "./Settings";

const UNITS_KEY = "lapline.units";
const LIGHT_KEY = "lapline.light";

/** Keeps units and light on this device; the board file knows nothing of them. */
export function SettingsProvider({ children }: { children: ReactNode }) {
  const [units, setUnits] = useState<Units>(() => (recall(UNITS_KEY) === "mm" ? "mm" : "inch"));
  const [light, setLight] = useState<Light>(
    () => LIGHTS.find((each) => each === recall(LIGHT_KEY)) ?? "auto",
  );

  useLayoutEffect(() => {
    document.documentElement.dataset.light = light;
  }, [light]);

  const settings = useMemo<Settings>(
    () => ({
      units,
      light,
      reader: { units, language: "en" },
      setUnits(next) {
        setUnits(next);
        keep(UNITS_KEY, next);
      },
      setLight(next) {
        setLight(next);
        keep(LIGHT_KEY, next);
      },
    }),
    [units, light],
  );
  return <SettingsContext value={settings}>{children}</SettingsContext>;
}

/** A browser may forbid storage; then the setting lasts as long as the page. */
function recall(key: string): string | null {
  try {
    return window.localStorage.getItem(key);
  } catch {
    return null;
  }
}

function keep(key: string, value: string): void {
  try {
    window.localStorage.setItem(key, value);
  } catch {
    return;
  }
}
