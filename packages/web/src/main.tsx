import "@fontsource-variable/archivo/wdth.css";
import "./tokens.css";
import "./base.css";
import "./tape.css";
import "./tables.css";
import "./drawing.css";
import "./shed.css";
import "./build-line.css";
import "./survey.css";
import "./board.css";
import "./fins.css";
import "./glass.css";
import "./gate.css";
import "./cut.css";
import "./mix.css";
import "./sand.css";
import "./water.css";
import "./weight.css";
import "./print.css";
import { LANGUAGES, type Language, loadLanguage } from "@lapline/present";
import { StrictMode } from "react";
import { createRoot } from "react-dom/client";
import { App } from "./App";
import { AccessGate } from "./access/AccessGate";
import { startOffline } from "./session/startOffline";
import { LANGUAGE_KEY, recall } from "./settings/kept";
import { SettingsProvider } from "./settings/SettingsProvider";
import { followPresses } from "./shared/afterPress";

const root = document.getElementById("root");
if (root === null) throw new Error("the page has no root element");
followPresses(window);
const first = await openLanguage();
createRoot(root).render(
  <StrictMode>
    <SettingsProvider first={first}>
      <AccessGate>
        <App />
      </AccessGate>
    </SettingsProvider>
  </StrictMode>,
);

startOffline();

/** The language of the last visit, or English where its texts cannot be fetched. */
async function openLanguage(): Promise<Language> {
  const kept = LANGUAGES.find((each) => each === recall(LANGUAGE_KEY)) ?? "en";
  try {
    await loadLanguage(kept);
    return kept;
  } catch {
    return "en";
  }
}
