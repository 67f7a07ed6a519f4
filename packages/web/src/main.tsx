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
import { StrictMode } from "react";
import { createRoot } from "react-dom/client";
import { App } from "./App";
import { SettingsProvider } from "./settings/SettingsProvider";

const root = document.getElementById("root");
if (root === null) throw new Error("the page has no root element");
createRoot(root).render(
  <StrictMode>
    <SettingsProvider>
      <App />
    </SettingsProvider>
  </StrictMode>,
);
