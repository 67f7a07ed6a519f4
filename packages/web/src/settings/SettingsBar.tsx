import { LIGHTS, type Light, useSettings } from "./Settings";

const LIGHT_NAMES: Readonly<Record<Light, string>> = {
  auto: "auto light",
  paper: "paper",
  night: "night",
  sun: "sun",
};

/** Inch or millimetre, and the light; both stay on this device. */
export function SettingsBar() {
  const { units, light, setUnits, setLight } = useSettings();
  return (
    <div className="settings">
      <fieldset className="switch">
        <legend className="unseen">Lengths in</legend>
        {(["inch", "mm"] as const).map((each) => (
          <label key={each}>
            <input
              type="radio"
              name="units"
              value={each}
              checked={units === each}
              onChange={() => setUnits(each)}
            />
            <span>{each}</span>
          </label>
        ))}
      </fieldset>
      <label className="light">
        <span className="unseen">Light</span>
        <select
          value={light}
          onChange={(event) => setLight(LIGHTS.find((each) => each === event.target.value) ?? "auto")}
        >
          {LIGHTS.map((each) => (
            <option key={each} value={each}>
              {LIGHT_NAMES[each]}
            </option>
          ))}
        </select>
      </label>
    </div>
  );
}
