import type { Units } from "@lapline/engine";
import { LANGUAGES, type Language } from "@lapline/present";
import { memo } from "react";
import { LIGHTS, type Light, useSettings } from "./Settings";
import { useTell } from "./useTell";

/** Each in its own words, so that a reader finds it in any language. */
const LANGUAGE_NAMES: Readonly<Record<Language, string>> = { en: "English", de: "Deutsch" };

/** Inch or millimetre, language, and the light; all stay on this device. */
export const SettingsBar = memo(function SettingsBar() {
  const { units, light, reader, setUnits, setLight, setLanguage } = useSettings();
  const t = useTell();
  const lightNames: Readonly<Record<Light, string>> = {
    auto: t`auto light`,
    paper: t`paper`,
    night: t`night`,
    sun: t`sun`,
  };
  const unitNames: Readonly<Record<Units, string>> = { inch: t`inch`, mm: "mm" };
  return (
    <div className="settings">
      <fieldset className="switch">
        <legend className="unseen">{t`Lengths in`}</legend>
        {(["inch", "mm"] as const).map((each) => (
          <label key={each}>
            <input
              type="radio"
              name="units"
              value={each}
              checked={units === each}
              onChange={() => setUnits(each)}
            />
            <span>{unitNames[each]}</span>
          </label>
        ))}
      </fieldset>
      <label className="light">
        <span className="unseen">{t`Language`}</span>
        <select
          value={reader.language}
          onChange={(event) => setLanguage(LANGUAGES.find((each) => each === event.target.value) ?? "en")}
        >
          {LANGUAGES.map((each) => (
            <option key={each} value={each} lang={each}>
              {LANGUAGE_NAMES[each]}
            </option>
          ))}
        </select>
      </label>
      <label className="light">
        <span className="unseen">{t`Light`}</span>
        <select
          value={light}
          onChange={(event) => setLight(LIGHTS.find((each) => each === event.target.value) ?? "auto")}
        >
          {LIGHTS.map((each) => (
            <option key={each} value={each}>
              {lightNames[each]}
            </option>
          ))}
        </select>
      </label>
    </div>
  );
});
