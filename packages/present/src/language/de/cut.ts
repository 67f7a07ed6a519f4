/** Rolls of cloth: what to buy, how it is cut, and the search for the shortest lay. */
export const CUT: Readonly<Record<string, string>> = {
  "what to buy and cut waits for the glass: there are no pieces yet":
    "was zu kaufen und zu schneiden ist, wartet auf das Laminat: es gibt noch keine Stücke",
  "no layer and no patch is planned: there is no cloth to buy":
    "keine Lage und kein Patch ist geplant: es ist kein Gewebe zu kaufen",
  "the width of the roll was not given; the usual one of this cloth was taken":
    "die Breite der Rolle ist nicht angegeben; genommen ist die übliche dieses Gewebes",
  "a roll of {1} {2} wide": "eine Rolle {1} mit {2} Breite",
  "shears cut both clean; the roll's woven edges are used":
    "die Schere schneidet beide sauber; die Webkanten der Rolle werden genutzt",
  "{1} between pieces": "{1} zwischen den Stücken",
  "the stringer is a straight line to lay the edge by, and both halves stay alike":
    "der Stringer ist eine gerade Linie zum Anlegen der Kante, und beide Hälften bleiben gleich",
  "seams on the stringer with {1} of overlap, counted as cloth and resin; skin and film there are not shown thicker":
    "Nähte auf dem Stringer mit {1} Überlappung, als Gewebe und Harz gezählt; Haut und Film sind dort nicht dicker dargestellt",
  "{1} is {2} wide and the roll of {3} {4}: lay it in two strips that overlap by {5} on the stringer, or take a roll at least {6} wide":
    "{1} ist {2} breit und die Rolle {3} {4}: in zwei Bahnen legen, die auf dem Stringer um {5} überlappen, oder eine Rolle von mindestens {6} Breite nehmen",
  "{1} does not fit the roll of {2}, which is {3} wide: it needs a roll at least {4} wide":
    "{1} passt nicht auf die Rolle {2}, die {3} breit ist: nötig ist eine Rolle von mindestens {4} Breite",
  "{1}: buy {2} of a roll {3} wide; {4} of it is used.":
    "{1}: {2} von einer {3} breiten Rolle kaufen; {4} davon werden genutzt.",
  "By their boxes one after another the pieces take {1}; no lay can be shorter than {2}.":
    "Nach ihren Hüllrechtecken hintereinander brauchen die Stücke {1}; kürzer als {2} geht es nicht.",
  "patch {1}": "Patch {1}",
  "fin {1}, patch {2}": "Finne {1}, Patch {2}",
  "{1}, left strip": "{1}, linke Bahn",
  "{1}, right strip": "{1}, rechte Bahn",
  lies: "liegt",
  "begins at": "beginnt bei",
  "ends at": "endet bei",
  "from the edge": "von der Kante",
  "Cut to the flat shapes (lapline template FILE --of cloth), warp along the roll; begins and ends count from the roll's free end.":
    "Nach den flachen Schnitten zuschneiden (lapline template FILE --of cloth), Kette längs der Rolle; Beginn und Ende zählen vom freien Ende der Rolle.",
  "tail first": "Tail voran",
  "nose first": "Nose voran",
  across: "quer",
  "at {1}": "unter {1}",
  "The warp runs along the roll, as the arrows do.": "Die Kette läuft längs der Rolle, wie die Pfeile.",
  "Under each name stands how far from the roll's free end it begins; pieces that pass each other's ends are drawn thin in the other's row.":
    "Unter jedem Namen steht, wie weit vom freien Ende der Rolle das Stück beginnt; Stücke, deren Enden aneinander vorbeireichen, stehen dünn in der Zeile des anderen.",
  "Each length is one cut straight across.": "Jede Länge ist ein gerader Schnitt quer über die Rolle.",
  "Cloth to cut: {1}": "Gewebe zum Zuschneiden: {1}",
  "How the pieces of cloth lie on their rolls.": "Wie die Gewebestücke auf ihren Rollen liegen.",
  "{1} on its roll": "{1} auf der Rolle",
  '{1} is planned with its cloth rolled out and cut on the board, which takes more than this: buy by the plan\'s own cut list, or name glass.cutting "pattern" and cut by these shapes.':
    '{1} ist so geplant, dass das Gewebe ausgerollt und auf dem Board geschnitten wird, und braucht mehr als das: nach der Schnittliste des Plans kaufen, oder glass.cutting "pattern" angeben und nach diesen Formen schneiden.',
  "There is no cloth to cut for {1} while these stand in the way; nothing was written.":
    "Für {1} ist kein Gewebe zuzuschneiden, solange dies im Weg steht; nichts wurde geschrieben.",
  "{1} does not fit the roll of {2}, which is {3} wide: it needs a roll at least {4} wide.":
    "{1} passt nicht auf die Rolle {2}, die {3} breit ist: nötig ist eine Rolle von mindestens {4} Breite.",
  "A roll of {1} is wider than nought.": "Eine Rolle {1} ist breiter als null.",
  "No piece is cut from {1}.": "Aus {1} wird kein Stück geschnitten.",
  "{1} has no area to cut.": "{1} hat keine Fläche zum Zuschneiden.",
  "No layer and no patch is planned: there is no cloth to cut.":
    "Keine Lage und kein Patch ist geplant: es ist kein Gewebe zuzuschneiden.",
  "{1}: {2} looked through, shortest so far {3}": "{1}: {2} durchsucht, bisher am kürzesten {3}",
  buy: "kaufen",
  "roll's width": "Breite der Rolle",
  "ends up on the board": "kommt aufs Board",
  "cloth for": "Gewebe für",
  "cut {1}": "Schnitt {1}",
  "Search of {1}": "Suche für {1}",
  Beginning: "Beginnt",
  "{1} looked through, shortest so far {2}": "{1} durchsucht, bisher am kürzesten {2}",
  Stop: "Anhalten",
  "Look for the shortest roll of {1}": "Kürzeste Rolle {1} suchen",
  "The search broke off. The cuts above hold.": "Die Suche ist abgebrochen. Die Schnitte oben gelten.",
  "Stopped early: the best so far.": "Vorzeitig angehalten: das bisher Beste.",
  "For pieces cut to their flat shapes; nothing hangs over to trim.":
    "Für Stücke nach dem flachen Schnitt; nichts hängt zum Abschneiden über.",
  "Shortest lay of {1}": "Kürzeste Auslage von {1}",
};
