/** Full-size templates: their words, and the furniture of the pages they are printed on. */
export const TEMPLATES: Readonly<Record<string, string>> = {
  Fins: "Finnen",
  Outline: "Outline",
  "{1}: {2}, full size": "{1}: {2}, in voller Größe",
  "Full-size template, to print at 100 %. {1}": "Schablone in voller Größe, mit 100 % zu drucken. {1}",
  "One to one. Along the board the sheet is by tape along the bottom.":
    "Eins zu eins. Längs des Boards gilt das Maßband an der Unterseite.",
  "Distances from the tail are by tape along the bottom, from a straightedge across the tail tips; the paper is drawn so too, and lies down true. Across, it is true on a flat bottom.":
    "Abstände vom Tail gelten mit Maßband an der Unterseite, ab einem Richtlineal über die Tailspitzen; so ist auch das Papier gezeichnet, und es liegt richtig auf. Quer stimmt es auf flacher Unterseite.",
  "Boxes (dashed) and their cut-outs are drawn at their own size, around the middle of where the plan has them.":
    "Kästen (gestrichelt) und ihre Taschen sind in eigener Größe gezeichnet, um die Mitte ihres Platzes im Plan.",
  "Board bottom up, nose away. Lay the stringer line on the stringer and the straightedge line across the tail tips; LEFT is on your right hand. Let the paper hang over the rails. Tape it down.":
    "Board mit der Unterseite nach oben, Nose weg. Die Stringerlinie auf den Stringer legen und die Linie des Richtlineals über die Tailspitzen; LINKS ist an deiner rechten Hand. Das Papier über die Rails hängen lassen. Festkleben.",
  "Prick through each cross: trailing and leading marks. Take the paper off and join them: these are the base lines.":
    "Durch jedes Kreuz stechen: hintere und vordere Marken. Papier abnehmen und sie verbinden: das sind die Basislinien.",
  "Mark and verify, before anything is cut: each string past the nose, both diagonals of a pair alike, each mark from the tail by tape and from the line. Say left and right aloud.":
    "Anreißen und prüfen, bevor geschnitten wird: jede Schnur an der Nose vorbei, beide Diagonalen eines Paars gleich, jede Marke mit Maßband vom Tail und von der Linie. Links und rechts laut sagen.",
  "Marks, in {1}": "Marken, in {1}",
  mark: "Marke",
  "trailing from {1}": "hinten ab {1}",
  "leading from {1}": "vorn ab {1}",
  "{1} over": "{1} drüber",
  "Cut-outs, in {1}, deep from {2}": "Taschen, in {1}, tief ab {2}",
  "Check diagonals, by taut tape along the bottom": "Prüfdiagonalen, mit straffem Maßband an der Unterseite",
  pair: "Paar",
  "from and to": "von und bis",
  "1 mm across is worth": "1 mm quer macht",
  "nose tip to trailing": "Nosespitze bis hintere",
  "nose tip to leading": "Nosespitze bis vordere",
  "tail's middle to trailing": "Tailmitte bis hintere",
  "tail's middle to leading": "Tailmitte bis vordere",
  "crotch to trailing": "Kerbe bis hintere",
  "crotch to leading": "Kerbe bis vordere",
  "bottom up, nose away": "Unterseite oben, Nose weg",
  "cant {1}": "Cant {1}",
  "toe {1}, cant {2}": "Toe {1}, Cant {2}",
  "cut {1} × {2}, {3} deep": "Tasche {1} × {2}, {3} tief",
  "{1} from the line": "{1} von der Linie",
  "{1} from the {2}": "{1} ab {2}",
  "string: {1} beside the nose, over the line": "Schnur: {1} neben der Nose, über der Linie",
  "string: {1} beside the nose": "Schnur: {1} neben der Nose",
  "leash plug, in the deck": "Leashplug, im Deck",
  "best-fit line": "beste Mittellinie",
  "straightedge across the tail tips: all distances from the tail start here":
    "Richtlineal über die Tailspitzen: alle Abstände vom Tail beginnen hier",
  "half-width {1}": "halbe Breite {1}",
  "half length": "halbe Länge",
  "LEFT half": "LINKE Hälfte",
  "RIGHT half": "RECHTE Hälfte",
  "Left half": "Linke Hälfte",
  "Right half": "Rechte Hälfte",
  "deck up, nose away · {1}": "Deck oben, Nose weg · {1}",
  "Deck up, nose away: left is on your left hand.": "Deck oben, Nose weg: links ist an deiner linken Hand.",
  "Each half is this board as it was measured, from the stringer line to the rail's widest line, so the two differ as the board does. For a board alike on both sides choose one half and turn it over.":
    "Jede Hälfte ist dieses Board wie gemessen, von der Stringerlinie bis zur breitesten Linie des Rails; die beiden unterscheiden sich wie das Board. Für ein Board mit gleichen Seiten eine Hälfte wählen und umdrehen.",
  "Along the board it is by tape along the bottom: laid along the bottom of a blank with the same rocker it comes out the same.":
    "Längs gilt das Maßband an der Unterseite: auf der Unterseite eines Blanks mit demselben Rocker kommt es gleich heraus.",
  "Join the pages of a half and cut along the thick line; for use again, glue it on thin board first.":
    "Die Seiten einer Hälfte zusammenfügen und an der dicken Linie schneiden; zum Wiederverwenden vorher auf dünne Platte kleben.",
  "Lay the straight edge on the blank's stringer, tail to tail, deck up and nose away, and draw round it. Mark the stations.":
    "Die gerade Kante auf den Stringer des Blanks legen, Tail auf Tail, Deck oben und Nose weg, und umfahren. Die Stationen anreißen.",
  "Measure across at each station before the blank is cut.":
    "An jeder Station quer nachmessen, bevor der Blank geschnitten wird.",
  "Half-widths at the stations": "Halbe Breiten an den Stationen",
  "from the tail, by tape": "vom Tail, mit Maßband",

  'Print at 100 %, never fitted to the page. On every page measure both rulers, 100 mm and 4 in, along and up, and the square: 100 mm from 60 on one to 80 on the other. If a ruler is off, give what the 100 mm one measures, for example --ruler-reads "99.2 mm", or across and up "99.2 mm x 99.6 mm", and print again.':
    'Mit 100 % drucken, nie auf die Seite eingepasst. Auf jeder Seite beide Lineale messen, 100 mm und 4 in, quer und hoch, und den Winkel: 100 mm von 60 auf dem einen bis 80 auf dem anderen. Stimmt ein Lineal nicht, angeben, was das zu 100 mm misst, etwa --ruler-reads "99,2 mm", oder quer und hoch "99,2 mm x 99,6 mm", und neu drucken.',
  "Cut each page along its dashed lines, at the right and at the top, and lay it over its neighbour: cut edge to the thin line, cross on cross, lines running on. Tape from the middle outwards.":
    "Jede Seite an den gestrichelten Linien rechts und oben schneiden und über die Nachbarseite legen: Schnittkante an die dünne Linie, Kreuz auf Kreuz, Linien laufen weiter. Von der Mitte nach außen kleben.",
  "{1} at full size. {2}": "{1} in voller Größe. {2}",
  "STOP: {1}": "HALT: {1}",
  Cautions: "Vorsicht",
  "What to do": "Was zu tun ist",
  "How the pages lie": "Wie die Seiten liegen",
  "STOP: a blocker stands against this plan, see the first page.":
    "HALT: gegen diesen Plan steht eine Sperre, siehe erste Seite.",
  "{1} · page {2} of {3} · Lapline {4}, {5}": "{1} · Seite {2} von {3} · Lapline {4}, {5}",
  "Print at 100 %. Both rulers 100 mm and 4 in; from 60 to 80, across the corner, 100 mm.":
    "Mit 100 % drucken. Beide Lineale 100 mm und 4 in; von 60 bis 80, über die Ecke, 100 mm.",
  "Made up for a printer that printed 100 mm as {1} mm across, {2} mm up.":
    "Ausgeglichen für einen Drucker, der 100 mm als {1} mm quer und {2} mm hoch druckte.",
  "cut here, lay over {1}": "hier schneiden, über {1} legen",
  "edge of {1} to this line": "Kante von {1} an diese Linie",
  "{1}, page {2}, at full size. {3}": "{1}, Seite {2}, in voller Größe. {3}",
  "{1}: {2} by {3} pages, {4}; the others would be empty.":
    "{1}: {2} mal {3} Seiten, {4}; die anderen wären leer.",
  "{1}, nose to the right": "{1}, Nose rechts",
  "STOP: a blocker stands against this plan: cut nothing by it.":
    "STOPP: diesem Plan steht etwas im Weg: nichts danach schneiden.",
};
