import { ACCESS } from "./access";
import { ASSUMED } from "./assumed";
import { BENCH } from "./bench";
import { BOARD_FORMS } from "./boardForms";
import { CALENDAR } from "./calendar";
import { CAUTIONS } from "./cautions";
import { CHARTS } from "./charts";
import { CLOTH } from "./cloth";
import { COMMAND } from "./command";
import { CUT } from "./cut";
import { DRAWINGS } from "./drawings";
import { FINS } from "./fins";
import { FIN_TABLES } from "./finTables";
import { GATE } from "./gate";
import { GLASS } from "./glass";
import { GLASS_FORM } from "./glassForm";
import { JOBSHEET } from "./jobsheet";
import { MIX } from "./mix";
import { NEW_BOARD } from "./newBoard";
import { PAGE } from "./page";
import { SANDING } from "./sanding";
import { SEAL } from "./seal";
import { SHED } from "./shed";
import { SLIPS } from "./slips";
import { SLIPS_IN_FILES } from "./slipsInFiles";
import { SOLID } from "./solid";
import { SOURCES } from "./sources";
import { STEPS } from "./steps";
import { SURVEY } from "./survey";
import { TABLES } from "./tables";
import { TEMPLATES } from "./templates";
import { TOOLS } from "./tools";
import { WEB } from "./web";
import { WEB_FINS } from "./webFins";
import { WEIGHT } from "./weight";
import { WHY } from "./why";
import { WORDS } from "./words";

/** German, by subject; a text stands in one file only. */
export const DE: Readonly<Record<string, string>> = {
  ...ASSUMED,
  ...WORDS,
  ...SURVEY,
  ...FINS,
  ...GATE,
  ...GLASS,
  ...GLASS_FORM,
  ...MIX,
  ...CUT,
  ...CLOTH,
  ...WEIGHT,
  ...SANDING,
  ...SEAL,
  ...SLIPS,
  ...SLIPS_IN_FILES,
  ...SOLID,
  ...CHARTS,
  ...SOURCES,
  ...STEPS,
  ...CALENDAR,
  ...TOOLS,
  ...CAUTIONS,
  ...PAGE,
  ...TABLES,
  ...FIN_TABLES,
  ...JOBSHEET,
  ...DRAWINGS,
  ...TEMPLATES,
  ...COMMAND,
  ...WEB,
  ...ACCESS,
  ...WEB_FINS,
  ...SHED,
  ...NEW_BOARD,
  ...BOARD_FORMS,
  ...BENCH,
  ...WHY,
};
