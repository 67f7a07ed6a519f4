/** Die Wörter vom Schliff und die des Programms, je in einer Zeile. */
export const GLOSSARY_PROGRAM: Readonly<Record<string, string>> = {
  "cure out": "Aushärten",
  "the days a finished board is left to harden before the water":
    "die Tage, die ein fertiges Board vor dem Wasser zum Härten liegt",
  grit: "Körnung",
  "how coarse an abrasive is, in the P scale: a higher number is finer":
    "wie grob ein Schleifmittel ist, auf der P-Skala: eine höhere Zahl ist feiner",
  ladder: "Leiter",
  "the papers from coarse to fine, each taking out the scratches of the one before":
    "die Papiere von grob bis fein, jedes nimmt die Kratzer des vorigen heraus",
  "foam shows, or a box or the plug is not sealed in: said on every page, sheet and command until it is closed":
    "Schaum liegt frei, oder ein Kasten oder der Plug ist nicht dicht gesetzt: auf jeder Seite, jedem Blatt und Befehl gesagt, bis es geschlossen ist",
  "sand-through": "Durchschliff",
  "sanding through the film to the weave, the glass or the foam":
    "durch den Film bis auf Gewebestruktur, Glas oder Schaum schleifen",
  "wet and dry": "Nassschleifpapier",
  "abrasive paper used with water": "Schleifpapier, das mit Wasser benutzt wird",
  assumption: "Annahme",
  "a value nobody gave and the plan took, with the reason":
    "ein Wert, den niemand angab und der Plan nahm, mit dem Grund",
  backup: "Sicherung",
  "a copy of the whole shop in one file, from which it can be restored":
    "eine Kopie der ganzen Werkstatt in einer Datei, aus der sie wiederherzustellen ist",
  "the low and the high between which a predicted number lies about nine times in ten":
    "das Untere und das Obere, zwischen denen eine vorhergesagte Zahl in etwa neun von zehn Fällen liegt",
  Bench: "Bench",
  "the page for working with gloves on: one step on one screen, big numbers, the wet clock":
    "die Seite zum Arbeiten mit Handschuhen: ein Schritt auf einem Schirm, große Zahlen, die nasse Uhr",
  "bench (role)": "Bench (Rolle)",
  "a device that may read and add, not take away":
    "ein Gerät, das lesen und hinzufügen darf, nicht wegnehmen",
  "a finding that stops the build until it is dealt with":
    "ein Befund, der den Bau anhält, bis er erledigt ist",
  "board file": "Board-Datei",
  "the JSON document with one board's input": "das JSON-Dokument mit den Eingaben eines Boards",
  calendar: "Kalender",
  "the days: when each step begins, its hands are off, and the next may begin":
    "die Tage: wann jeder Schritt beginnt, die Arbeit daran fertig ist und der nächste beginnen darf",
  "cut plan": "Zuschnitt",
  "which pieces are cut from which roll, in what order, and how much of it to buy":
    "welche Stücke aus welcher Rolle geschnitten werden, in welcher Reihenfolge, und wie viel davon zu kaufen ist",
  finding: "Befund",
  "something the builder should know: a note, a warning or a blocker":
    "etwas, das der Bauende wissen soll: ein Hinweis, eine Warnung oder ein Stopp",
  "flat pattern": "flaches Schnittmuster",
  "the shape that a piece of cloth has before it is laid over the rails, with its notches":
    "die Form, die ein Stück Gewebe hat, bevor es über die Rails gelegt wird, mit seinen Einschnitten",
  "house set": "Hausmaß",
  "a set of fin numbers that a maker trusts": "ein Satz Finnenmaße, dem ein Shaper traut",
  journal: "Journal",
  "entries from the bench, each kept once, however often a device sends it; they stand in the board's record too":
    "Einträge von der Bench, jeder einmal aufbewahrt, so oft ein Gerät ihn auch sendet",
  "who may do everything: whoever sits at the shop's computer, and devices that were given the role":
    "wer alles darf: wer am Rechner der Werkstatt sitzt, und Geräte, denen die Rolle gegeben wurde",
  "the stop before the router: string, both diagonals, depth, left and right named":
    "der Halt vor der Fräse: Schnur, beide Diagonalen, Tiefe, links und rechts benannt",
  "marking-out": "Anriss",
  "the drawing with fin marks and the dimensions to mark them by":
    "die Zeichnung mit den Finnenmarken und den Maßen, nach denen sie gesetzt werden",
  mesh: "Netz",
  "the skin of the solid as triangles that close without a gap, for other programs":
    "die Haut des Körpers als Dreiecke, die ohne Lücke schließen, für andere Programme",
  "north shed": "north shed",
  "the invented shop that the demo boards belong to":
    "die erfundene Werkstatt, der die Beispielboards gehören",
  "pairing code": "Kopplungscode",
  "eight digits that let one device in over the local network, within five minutes":
    "acht Ziffern, die ein Gerät binnen fünf Minuten über das örtliche Netz hereinlassen",
  Plan: "Plan",
  "what the engine makes of a board file": "was die Engine aus einer Board-Datei macht",
  "put away": "weggestellt",
  "of a board: out of the Shed, with all of it kept; it can be brought back":
    "von einem Board: aus dem Shed heraus, alles davon aufbewahrt; es lässt sich zurückholen",
  "reading pad": "Ablesefeld",
  "digits, units and a tape's fractions as big keys, for readings and for what was poured or weighed":
    "Ziffern, Einheiten und die Brüche eines Maßbands als große Tasten, für Ablesungen und für das, was gegossen oder gewogen wurde",
  "what happened at the bench, oldest first, as the board file keeps it":
    "was an der Werkbank geschah, das Älteste zuerst, wie die Board-Datei es aufbewahrt",
  struck: "gestrichen",
  "of an entry of the record: it was a slip, as a later entry says":
    "von einem Eintrag des Protokolls: er war ein Versehen, wie ein späterer Eintrag sagt",
  "slack, to spare": "Luft, übrig",
  "how much later a step may begin without moving the first surf":
    "wie viel später ein Schritt beginnen darf, ohne den ersten Surf zu verschieben",
  Shed: "Shed",
  "all boards in the shop": "alle Boards in der Werkstatt",
  "Sheet, issued": "ausgegebenes Blatt",
  "a Sheet as it was handed out: the plan and the PDF of one version, never changed after":
    "ein Blatt, wie es ausgehändigt wurde: Plan und PDF einer Fassung, danach nie geändert",
  shelf: "Regal",
  "what the shop has for all its boards: resins, cloths, foams, woods, prices, rolls, house sets":
    "was die Werkstatt für alle ihre Boards hat: Harze, Gewebe, Schäume, Hölzer, Preise, Rollen, Hausmaße",
  "skin strip": "Hautstreifen",
  "the drawing of glass and film on the foam, to scale in thickness":
    "die Zeichnung von Glas und Film auf dem Schaum, in der Dicke maßstäblich",
  solid: "Körper",
  "the surveyed board as a body in space, as a file holds it":
    "das vermessene Board als Körper im Raum, wie eine Datei ihn enthält",
  stage: "Stufe",
  "one part of the plan: shape, finset, layup, cutplan, mix, sanding, weight, weighins, cost, steps, calendar":
    "ein Teil des Plans: shape, finset, layup, cutplan, mix, sanding, weight, weighins, cost, steps, calendar",
  suspect: "verdächtig",
  "a reading that does not fit the others": "eine Ablesung, die nicht zu den anderen passt",
  "the Sheet": "das Blatt",
  "the printed job sheet of a board: two to four pages to tape to the wall and to hand on with it":
    "das gedruckte Arbeitsblatt eines Boards: zwei bis vier Seiten, um sie an die Wand zu kleben und mitzugeben",
  label: "Etikett",
  "what is cut out and taped to a cup or a can: coat, dose, time, cautions":
    "was ausgeschnitten und auf Becher oder Dose geklebt wird: Schicht, Dosis, Zeit, Warnungen",
  template: "Schablone",
  "a drawing at full size, to lie on the board or the cloth: fins, outline halves, pieces":
    "eine Zeichnung in voller Größe, zum Auflegen auf Board oder Gewebe: Finnen, halbe Outlines, Stücke",
  "trim mark": "Passmarke",
  "the cross that two pages of a template are joined by":
    "das Kreuz, an dem zwei Seiten einer Schablone zusammengefügt werden",
  "wet clock": "nasse Uhr",
  "a coat's times on the wall, from its last cup's hardener on: spread, trim, tape, flip, recoat, sand; moved by fingertip tests":
    "die Zeiten einer Schicht an der Wand, ab dem Härter ihres letzten Bechers: verteilen, trimmen, Klebeband, wenden, neue Schicht, schleifen; durch Fingerproben verschoben",
  "the board weighed after a coat: resin kept, film and the ratio against plan follow at once":
    "das Board nach einer Schicht gewogen: behaltenes Harz, Film und das Verhältnis gegen den Plan folgen sofort",
  "how a number came about: formula, inputs, sources, what was assumed":
    "wie eine Zahl zustande kam: Formel, Eingaben, Quellen, Annahmen",
  working: "Herleitung",
  "the record behind a Why": "was hinter einem Warum steht",
  "a part of the board that has one skin: deck, rail, lap, box":
    "ein Teil des Boards mit einer Haut: Deck, Rail, Überlappung, Kasten",
};
