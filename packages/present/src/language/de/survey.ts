/** Readings and the shape fitted to them. */
export const SURVEY: Readonly<Record<string, string>> = {
  "no rocker was read: the bottom is taken as flat, so tape and straight distances are the same; read the gap to a straightedge at {1} from each end":
    "kein Rocker abgelesen: die Unterseite gilt als eben, Maßband und gerade Strecke sind also gleich; den Spalt zum Richtscheit {1} von jedem Ende ablesen",
  tape: "Maßband",
  "a length is read along the bottom unless the file says straight":
    "eine Länge wird entlang der Unterseite gelesen, wenn die Datei nicht straight sagt",
  "stations are read along the bottom unless the file says straight":
    "Stationen werden entlang der Unterseite gelesen, wenn die Datei nicht straight sagt",
  "standard uncertainty of one reading with a tape": "Standardunsicherheit einer Ablesung mit dem Maßband",
  apex: "breiteste Stelle der Rail",
  "half-widths are read at the rail's widest point":
    "halbe Breiten werden an der breitesten Stelle der Rail gelesen",
  "no winding sticks were read, so the board is taken as untwisted":
    "keine Richtleisten abgelesen, das Board gilt also als unverdreht",
  "apex {1}, deck fullness {2}, bottom fullness {3}":
    "breiteste Stelle {1}, Fülle Deck {2}, Fülle Unterseite {3}",
  "the rail's section was not described; the volume band is wider for it":
    "der Querschnitt der Rail ist nicht beschrieben; das Volumen ist dadurch unsicherer",
  flat: "eben",
  "no concave or vee was given": "weder Concave noch Vee angegeben",
  "{1} stations with half-widths are too few for an outline; read left and right next at {2}":
    "{1} Stationen mit halben Breiten sind zu wenig für eine Outline; als Nächstes links und rechts ablesen: {2}",
  "no thickness was read: read it at half length first, then near the ends":
    "keine Dicke abgelesen: zuerst auf halber Länge messen, dann nahe den Enden",
  "this station lies {1} from the {2}, off a board of {3}":
    "diese Station liegt {1} vom Ende ({2}), außerhalb eines Boards von {3}",
  "two stations stand at {1} from the tail (stations {2} and {3}): keep one, or correct where the other was taken":
    "zwei Stationen liegen {1} vom Tail (Stationen {2} und {3}): eine behalten oder den Ort der anderen berichtigen",
  "{1} from the tail": "{1} vom Tail",
  "{1} from the nose": "{1} von der Nose",
  "the middle": "die Mitte",
  "no curve fits the thickness readings": "keine Kurve passt zu den Dicken",
  "no outline fits the half-widths": "keine Outline passt zu den halben Breiten",
  "the thickness readings run out to nothing at {1} from the tail: read the thickness near that end":
    "die Dicken laufen {1} vom Tail auf null aus: die Dicke nahe diesem Ende messen",
  "the half-widths run out to nothing at {1} from the tail: look at the readings there":
    "die halben Breiten laufen {1} vom Tail auf null aus: die Ablesungen dort prüfen",
  "the section family cannot draw a tucked edge":
    "die Querschnittskurven können keine eingezogene Kante zeichnen",
  "Lamé curves above and below the rail's widest line":
    "Lamé-Kurven über und unter der breitesten Linie der Rail",
  "the tail's width is read between the corners as if they were square; their rounding takes next to nothing":
    "die Tailbreite wird zwischen den Ecken gelesen, als wären sie scharf; ihre Rundung nimmt fast nichts weg",
  "corners left square": "Ecken scharf gelassen",
  "half-widths were read at the bottom's edge and are carried out to the rail's widest line":
    "halbe Breiten wurden an der Kante der Unterseite gelesen und bis zur breitesten Linie der Rail weitergeführt",
  "the edge lies where the lower rail stands at 45°":
    "die Kante liegt dort, wo die untere Rail unter 45° steht",
  "re-measure: {1} would fit the others, {2} was read; it is left out until it is read again":
    "nachmessen: {1} passt zu den anderen, {2} wurde abgelesen; zählt nicht, bis neu gemessen ist",
  "{1} side {2} fuller at {3} from the tail ({4} rms over the board)":
    "{1} {2} voller, {3} vom Tail ({4} im quadratischen Mittel über das Board)",
  "the middle between the rails lies {1} to the {2} of the stringer at half length, its nose end going {3} by {4} ({5} from end to end); a bowed stringer looks the same as a lopsided outline":
    "die Mitte zwischen den Rails liegt auf halber Länge {1} {2} vom Stringer, ihr Ende an der Nose läuft um {4} nach {3} ({5} von Ende zu Ende); ein krummer Stringer sieht genauso aus wie eine schiefe Outline",
  "only the whole width was read at {1}: whether the sides are alike there is not known; read left and right from the stringer":
    "nur die ganze Breite abgelesen ({1}): ob die Seiten dort gleich sind, ist nicht bekannt; links und rechts vom Stringer aus messen",
  "every station": "an jeder Station",
  "{1} of {2} stations": "an {1} von {2} Stationen",
  "the fitted thickness is only {1} at {2} from the tail: check the thickness readings around it":
    "die errechnete Dicke ist nur {1}, {2} vom Tail: die Dicken dort nachmessen",
  "one more station at {1} from the tail would tighten the outline most (its half-width there is known to {2})":
    "eine weitere Station {1} vom Tail macht die Outline am meisten genauer (halbe Breite dort auf {2} bekannt)",
  "one more station at {1} from the tail and at {2} would tighten the outline most (its half-width there is known to {3})":
    "eine weitere Station {1} und eine {2} vom Tail machen die Outline am meisten genauer (halbe Breite dort auf {3} bekannt)",
};
