/** Words and notes on the drawings of the board. */
export const DRAWINGS: Readonly<Record<string, string>> = {
  "LEFT is here": "HIER IST LINKS",
  inches: "Zoll",
  millimetres: "Millimetern",
  "{1} straight, {2} by tape": "{1} gerade, {2} mit Maßband",
  "On the straightedge that touches at half length; the line inside is the widest of the rail.":
    "Auf dem Richtlineal, das in halber Länge anliegt; die Linie innen ist die breiteste des Rails.",
  "Heights drawn {1} times larger than lengths.": "Höhen {1}-mal größer gezeichnet als Längen.",
  "{1} from tips": "{1} ab Spitzen",
  "Bottom up, nose away: LEFT is on your right hand.":
    "Unterseite oben, Nose weg: LINKS ist an deiner rechten Hand.",
  "In {1}: up from the {2} by tape along the bottom, out from the line, in from the rail.":
    "In {1}: hinauf mit Maßband an der Unterseite ab {2}, hinaus von der Linie, hinein vom Rail.",
  "Over each string stands where it crosses, beside the nose tip.":
    "Über jeder Schnur steht, wie weit neben der Nosespitze sie vorbeiläuft.",
  "Only the left half is drawn; the right half is its mirror image.":
    "Nur die linke Hälfte ist gezeichnet; die rechte ist ihr Spiegelbild.",
  "Figures without room here stand in the table.": "Zahlen ohne Platz hier stehen in der Tabelle.",
  "past centre": "über der Mitte",
  "beside nose": "neben Nose",
  "hardener in": "Härter drin",
  "Thin: as planned; thick: as measured, errors drawn true to size; a circle is the tolerance, {1}.":
    "Dünn: wie geplant; dick: wie gemessen, Fehler in wahrer Größe; ein Kreis ist die Toleranz, {1}.",
  "Thin: as planned; thick: as measured, errors drawn {1} times; a circle is the tolerance, {2}.":
    "Dünn: wie geplant; dick: wie gemessen, Fehler {1}-mal gezeichnet; ein Kreis ist die Toleranz, {2}.",
  "Faint: the other side mirrored; ruled: where this side is fuller; differences true to size.":
    "Blass: die andere Seite gespiegelt; schraffiert: wo diese Seite voller ist; Unterschiede in wahrer Größe.",
  "Faint: the other side mirrored; ruled: where this side is fuller; differences drawn {1} times.":
    "Blass: die andere Seite gespiegelt; schraffiert: wo diese Seite voller ist; Unterschiede {1}-mal gezeichnet.",
  "Deck up, nose away. Readings in {1}.": "Deck oben, Nose weg. Ablesungen in {1}.",
  "Deck up, nose to the right. Readings in {1}.": "Deck oben, Nose rechts. Ablesungen in {1}.",
  "Bottom up, nose away: LEFT is on your right hand. Readings in {1}.":
    "Unterseite oben, Nose weg: LINKS ist an deiner rechten Hand. Ablesungen in {1}.",
  "Bottom up, nose to the right: LEFT is below. Readings in {1}.":
    "Unterseite oben, Nose rechts: LINKS ist unten. Ablesungen in {1}.",
  "Bottom up, nose to the right: LEFT is below.": "Unterseite oben, Nose rechts: LINKS ist unten.",
  "Strings: how far beside the nose tip each crosses the square there. Thin: diagonals by taut tape along the bottom, from the nose tip and from the tail's middle to the trailing marks.":
    "Schnüre: wie weit neben der Nosespitze jede die Rechtwinklige dort kreuzt. Dünn: Diagonalen mit straffem Maßband an der Unterseite, von der Nosespitze und der Tailmitte zu den hinteren Marken.",
  "Strings: how far beside the nose tip each crosses the square there. Thin: diagonals by taut tape along the bottom, from the nose tip and from the crotch to the trailing marks.":
    "Schnüre: wie weit neben der Nosespitze jede die Rechtwinklige dort kreuzt. Dünn: Diagonalen mit straffem Maßband an der Unterseite, von der Nosespitze und der Kerbe zu den hinteren Marken.",
  "Foam dotted, glass woven, coats plain; thickness drawn {1} times.":
    "Schaum gepunktet, Glas gewebt, Schichten glatt; Dicke {1}-mal gezeichnet.",
  "Time upwards in even factors, temperature to the right; thin lines are the fit.":
    "Zeit nach oben in gleichen Faktoren, Temperatur nach rechts; dünne Linien sind die Kurve.",
  "spread by {1}": "verteilt bis {1}",
  "gloss {1}": "Gloss {1}",
  "fill {1}": "Hotcoat {1}",
  "glass {1}": "Glas {1}",
  "trim until": "trimmen bis",

  "in the glass of this face": "im Glas dieser Seite",
  "in its laps, over the other face's glass": "in ihren Überlappungen, über dem Glas der anderen Seite",
  "into the foam": "in den Schaum",
  "around boxes and plug": "um Kästen und Plug",
  "film that stays": "Film, der bleibt",
  "fills the weave": "füllt die Gewebestruktur",
  "runs off the rails": "läuft von den Rails",
  "lost as styrene": "als Styrol verloren",
  "drips from the laps": "tropft von den Überlappungen",
  "left on squeegee or brush": "bleibt an Rakel oder Pinsel",
  "left in the cups": "bleibt in den Bechern",
};
