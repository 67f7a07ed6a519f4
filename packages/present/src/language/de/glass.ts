/** Cloth, coats and what they are laid on. */
export const GLASS: Readonly<Record<string, string>> = {
  "add a glass part to the board file (resin, and layers for bottom and deck) to get cloth, resin and weight":
    "für Gewebe, Harz und Gewicht den Teil glass in die Board-Datei aufnehmen (Harz, Lagen für Unterseite und Deck)",
  "the glass waits for the shape: cloth and resin are reckoned from its surface":
    "das Laminat wartet auf den Shape: Gewebe und Harz folgen aus seiner Fläche",
  "the strip overlaps itself by a few per cent at nose and tail, and cloth is counted where it overlaps":
    "der Streifen überlappt sich an Nose und Tail um einige Prozent, und Gewebe zählt, wo es überlappt",
  "lap strips are lap times the rail's line; notches are not taken off":
    "Überlappung mal Raillinie ergibt den Streifen; Einschnitte sind nicht abgezogen",
  "the widest line runs about half-way up the end":
    "die breiteste Linie läuft etwa auf halber Höhe des Endes",
  "half of the tail's flat end to each face": "je die Hälfte des flachen Tailendes zu jeder Seite",
  "poured mass, run-off, weave and loss are common practice; weigh the board after the coat to know your own":
    "Gussmenge, Ablauf, Gewebe und Verlust sind übliche Werte; das Board nach der Schicht wiegen, um die eigenen zu kennen",
  "fill coats poured down to the rail's widest line on each face, wax not counted":
    "Hotcoats auf jeder Seite bis zur breitesten Linie der Rail gegossen, Paraffin nicht gezählt",
  "a poured coat runs off a curved edge; how far is common practice":
    "eine gegossene Schicht läuft von der Rundung ab; wie weit, ist üblicher Wert",
  "film thinner on laps and rails than on the flat":
    "Film auf Überlappung und Rails dünner als auf der Fläche",
  "light fillers weigh a few grams a square metre": "leichte Füllstoffe wiegen wenige Gramm je Quadratmeter",
  "A notch that takes a whole corner out leaves it to the other face's lap: lay a scrap of the same cloth over what stays bare. Where flaps still overlap, press one over the other.":
    "Eine Kerbe, die eine ganze Ecke wegnimmt, überlässt sie der Überlappung der anderen Seite: über das, was frei bleibt, einen Rest desselben Gewebes legen. Wo Lappen noch übereinander liegen, einen über den anderen drücken.",
  "no filler {1} is known; the nearest are {2}": "kein Füllstoff {1} bekannt; am nächsten sind {2}",
  "no tint {1} is known: add it to the file's own tints, or leave its name away":
    "keine Farbe {1} bekannt: unter den eigenen Farben eintragen oder den Namen weglassen",
  "the resin around boxes and plug goes in without a filler":
    "das Harz um Kästen und Plug kommt ohne Füllstoff hinein",
  "none was named; many builders stir milled glass fibre into it":
    "keiner ist genannt; viele rühren gemahlene Glasfaser hinein",
  "filler in the seal coat not counted": "Füllstoff in der Siegelschicht nicht gezählt",
  "{1} of cured resin to one of glass by mass":
    "{1} Teile ausgehärtetes Harz auf einen Teil Glas, nach Gewicht",
  "squeegeed by hand, {1} to {2}; weigh the board after a laminate and put your own in":
    "von Hand gerakelt {1} bis {2}; das Board nach einem Laminat wiegen und den eigenen Wert eintragen",
  "resin to glass by mass lies between {1} and {2}; by hand it is about {3}":
    "Harz zu Glas nach Gewicht liegt zwischen {1} und {2}; von Hand etwa {3}",
  "every full layer laps the rail": "jede volle Lage überlappt die Rail",
  "which layers lap was not given": "welche Lagen überlappen, ist nicht angegeben",
  "how the laps are ended was not given": "wie die Überlappung endet, ist nicht angegeben",
  "rolled out, trimmed on the board and notched": "ausgerollt, am Board zugeschnitten und eingeschnitten",
  "how the cloth is cut was not given": "wie das Gewebe zugeschnitten wird, ist nicht angegeben",
  "no finish was given": "keine Oberfläche angegeben",
  "no cloth {1} is known; the nearest are {2}": "kein Gewebe {1} bekannt; am nächsten sind {2}",
  "no cloth on the {1}: the foam has only the fill coat over it":
    "{1} ohne Gewebe: über dem Schaum liegt nur der Hotcoat",
  "no lap was given": "keine Überlappung angegeben",
  "{1} layers and {2} laps: give one lap for each layer, innermost first":
    "{1} Lagen und {2} Überlappungen: je Lage eine Überlappung angeben, die innerste zuerst",
  "a lap is a width of nought or more": "eine Überlappung ist eine Breite von null oder mehr",
  "a lap of {1} is wider than half the board, {2}: it is measured from the rail's widest line, usually {3} to {4}":
    "eine Überlappung von {1} ist breiter als das halbe Board, {2}: sie zählt ab der breitesten Linie der Rail, üblich sind {3} bis {4}",
  "say what the blank is made of (for example {1}): which resin may touch it hangs on that":
    "angeben, woraus der Blank ist (zum Beispiel {1}): davon hängt ab, welches Harz ihn berühren darf",
  "no foam {1} is known: write pu, eps or xps and its density in kg/m³, for example {2}":
    "kein Schaum {1} bekannt: pu, eps oder xps und die Dichte in kg/m³ schreiben, zum Beispiel {2}",
  "sealed before the glass": "vor dem Laminieren versiegelt",
  "not sealed before the glass": "vor dem Laminieren nicht versiegelt",
  "{1} drinks much resin and is usually sealed": "{1} schluckt viel Harz und wird meist versiegelt",
  "{1} is usually glassed bare": "{1} wird meist ohne Siegel laminiert",
  "unsealed {1} drinks about {2} of resin from the first laminate, and breathes bubbles into it while it warms: seal it first, or have the resin ready":
    "unversiegelt schluckt {1} etwa {2} Harz aus dem ersten Laminat und bläst beim Erwärmen Blasen hinein: vorher versiegeln oder das Harz bereithalten",
  "how patches were measured was not given": "wie Patches gemessen sind, ist nicht angegeben",
  "extents along the bottom; patches end at the rail's widest line":
    "Maße entlang der Unterseite; Patches enden an der breitesten Linie der Rail",
  "warp and weft of plain cloth weigh alike": "Kette und Schuss von Leinwandgewebe wiegen gleich viel",
  "a patch of plain cloth without an angle may be cut along or across the roll":
    "ein Patch aus Leinwandgewebe ohne Winkel darf längs oder quer zur Rolle geschnitten werden",
  "a patch runs from nearer the tail to farther from it: fromTail below to":
    "ein Patch läuft von näher am Tail nach weiter weg: fromTail kleiner als to",
  "the patch ends {1} from the tail; the bottom is {2} long":
    "der Patch endet {1} vom Tail; die Unterseite ist {2} lang",
  "a patch's width is above nought": "die Breite eines Patches ist größer als null",
  "a patch's angle is a number of degrees": "der Winkel eines Patches ist eine Zahl in Grad",
  "say which resin: {1}": "angeben, welches Harz: {1}",
  "the laminating resin, as no other was named": "das Laminierharz, weil kein anderes genannt ist",
  "no resin {1} is known; known are {2}": "kein Harz {1} bekannt; bekannt sind {2}",
  "the styrene in {1} dissolves {2}, and so does acetone: not in laminate, fill, box or repair. Choose epoxy, and go by its data sheet":
    "das Styrol in {1} löst {2} auf, Aceton ebenso: nicht im Laminat, Hotcoat, Kasten oder bei der Reparatur. Epoxid wählen und nach dessen Datenblatt gehen",
  "{1} cures and bonds poorly over epoxy: use epoxy here too, or try it on a scrap first":
    "{1} härtet und haftet auf Epoxid schlecht: auch hier Epoxid nehmen oder zuerst an einem Rest probieren",
  "two resins are named for the boxes: {1} is taken, {2} is not":
    "für die Kästen sind zwei Harze genannt: {1} zählt, {2} nicht",
  "the board file has no fins part": "die Board-Datei hat keinen Teil fins",
  "no boxes, no plug": "keine Kästen, kein Plug",
  "no box size was given": "keine Kastengröße angegeben",
  "a box {1} long, {2} wide and {3} deep": "ein Kasten, {1} lang, {2} breit und {3} tief",
  "a plug {1} across and {2} deep": "ein Plug, {1} im Durchmesser und {2} tief",
  "not all of the plug's size was given": "die Größe des Plugs ist nicht ganz angegeben",
  "a box or plug needs a length, width and depth above nought":
    "Kasten oder Plug brauchen Länge, Breite und Tiefe größer als null",
  "{1} is too light in kg/m³; if that was pounds for each cubic foot, write {2}":
    "{1} ist in kg/m³ zu leicht; falls Pfund je Kubikfuß gemeint waren, {2} schreiben",
  "{1} ({2} to {3})": "{1} ({2} bis {3})",
  "say where the patch lies: fromTail and to, or over: tail, deck, nose, fins or strip":
    "angeben, wo der Patch liegt: fromTail und to, oder over: tail, deck, nose, fins oder strip",
  "a patch under the fins follows their marks: set the fins first, or measure the patch":
    "ein Patch unter den Finnen folgt ihren Marken: zuerst die Finnen setzen oder den Patch messen",
  "from {1} to {2} off the tail, by tape": "von {1} bis {2} ab Tail, mit dem Maßband",
  "the patch names its part of the board": "der Patch nennt seinen Teil des Boards",
  "there is no cloth in the lay-up to glass the fins on with: their cloth and resin are left out":
    "im Aufbau ist kein Gewebe zum Anlaminieren der Finnen: ihr Gewebe und Harz fehlen",
  "{1} from base to tip": "{1} von Basis bis Spitze",
  "no depth was given": "keine Tiefe angegeben",
  "how the fins are glassed was not given; rope in the corner is counted as resin":
    "wie die Finnen anlaminiert werden, ist nicht angegeben; Roving in der Kehle zählt als Harz",
  "glassed-on fins: {1} layers of {2} a side, {3} out onto the bottom, corners filled to a radius of {4}, the fins' own weight left out":
    "anlaminierte Finnen: je Seite {1} Lagen {2}, {3} auf die Unterseite hinaus, Kehlen mit {4} Radius gefüllt, Eigengewicht der Finnen nicht dabei",
  "stays on": "bleibt drauf",
  fibre: "Faser",
  "schedule, bottom / deck": "Aufbau, Unterseite / Deck",
  skin: "Haut",
  stiff: "steif",
  "deck waves": "Deck wellt",
  "bottom waves": "Unterseite wellt",
  "Cut to the flat pattern before anything is wet, laps and notches with it. Cloth is taken not to stretch: lay it from the middle outwards.":
    "Vor dem ersten Harz nach dem flachen Schnitt zuschneiden, mit Überlappungen und Kerben. Gewebe gilt als nicht dehnbar: von der Mitte nach außen legen.",
  "Roll out to the cut length, smooth it from the middle, trim it on the board all round at the lap, and notch it. Cloth is taken not to stretch.":
    "Auf die Schnittlänge ausrollen, von der Mitte glatt streichen, auf dem Board ringsum an der Überlappung abschneiden und einkerben. Gewebe gilt als nicht dehnbar.",
  "{1}: trim {2} round; notch {3}": "{1}: {2} ringsum schneiden; einkerben {3}",
  "at the nose": "an der Nose",
  "at the tail": "am Tail",
  "along the rails": "an den Rails",
  "{1} one wedge, {2} wide at the edge": "{1} ein Keil, {2} breit am Rand",
  "{1} {2} wedges, {3} wide at the edge": "{1} {2} Keile, {3} breit am Rand",
  "one slit up to the crotch": "ein Schlitz bis zum Schritt",
  "as planned": "wie geplant",
  "one deck layer less": "eine Decklage weniger",
  "bottom one step lighter": "Unterseite eine Stufe leichter",
  "one deck layer more": "eine Decklage mehr",
  "bottom one step heavier": "Unterseite eine Stufe schwerer",
  "stronger glass": "festeres Glas",
  "Shares of the board as planned, from generic moduli: bending where it is thickest (laminate theory; foam and stringer with it) and the load that folds a flat skin into waves (Hoff's formula). Left out: shear, twist, blows, heel dents, voids, heat, age, and how well it was laid. Nothing here says that a board is strong enough.":
    "Anteile vom geplanten Board, mit allgemeinen Moduln: Biegung an der dicksten Stelle (Laminattheorie; mit Schaum und Stringer) und die Last, die eine ebene Haut in Wellen legt (Formel von Hoff). Nicht darin: Schub, Verdrehung, Schläge, Fersendellen, Luft, Hitze, Alter, und wie gut laminiert wurde. Nichts hier sagt, dass ein Board fest genug ist.",
  "Skin by zone": "Haut nach Zonen",
  "Lighter or stronger": "Leichter oder fester",
  "Where the resin goes": "Wo das Harz bleibt",
  "{1} takes {2} of tint over its resin; above about {3} (common practice) the cure slows and stays soft: the most that the sheets of tint and resin allow goes before this, and a test cup before the board":
    "{1} bekommt {2} Farbe auf sein Harz; über etwa {3} (übliche Praxis) härtet es langsamer und bleibt weich: vor diesem Wert gilt das Höchste, was die Datenblätter von Farbe und Harz erlauben, und ein Probebecher kommt vor dem Board",
};
