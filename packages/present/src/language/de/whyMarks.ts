/** Wie Form und Marken zustande kommen. */
export const WHY_MARKS: Readonly<Record<string, string>> = {
  "the straight length between the tail's straightedge and the nose tip: the tape's length less what the rocker adds":
    "die gerade Länge zwischen dem Richtscheit am Tail und der Nosespitze: die Länge am Maßband ohne das, was der Rocker hinzutut",
  "the largest sum of both sides' fitted half-widths, and where it lies":
    "die größte Summe der ausgeglichenen halben Breiten beider Seiten, und wo sie liegt",
  "the fitted half-width: each side by its own readings, weighed by the tape's uncertainty, without waves between stations":
    "die ausgeglichene halbe Breite: jede Seite nach eigenen Ablesungen, gewichtet nach der Unsicherheit des Maßbands, ohne Wellen zwischen den Stationen",
  "the swallow's notch as it was read": "die Kerbe des Swallowtails, wie abgelesen",
  "the thickness fitted to its readings along the centreline":
    "die Dicke, ausgeglichen nach ihren Ablesungen entlang der Mittellinie",
  "the gap to a straightedge touching at half length, fitted to the gaps read":
    "der Spalt zu einem Richtscheit, das auf halber Länge anliegt, ausgeglichen nach den gelesenen Spalten",
  "the areas of all cross-sections, added up along the board":
    "die Flächen aller Querschnitte, entlang des Boards aufsummiert",
  "about nine times in ten the volume lies in here, if the board is made of such sections: thickness readings and the section's fullness move it":
    "in etwa neun von zehn Fällen liegt das Volumen hier drin, wenn das Board aus solchen Querschnitten besteht: Dickenablesungen und Fülle des Querschnitts verschieben es",
  "the outline's area seen from above, a swallow's notch taken out":
    "die Fläche der Outline von oben gesehen, ohne die Kerbe eines Swallowtails",
  "the true surface, rocker and rails included, divided at the rails' widest line":
    "die wahre Oberfläche mit Rocker und Rails, an der breitesten Linie der Rails geteilt",
  "where the solid would balance if it were all one stuff":
    "wo der Körper im Gleichgewicht läge, wäre er durchweg aus einem Stoff",
  "the fitted curves at one place along the centreline":
    "die ausgeglichenen Kurven an einer Stelle der Mittellinie",
  "left minus right half-width where they differ most, between the outermost stations":
    "linke minus rechte halbe Breite, wo sie am meisten abweichen, zwischen den äußersten Stationen",
  "the usual size of the difference between the sides":
    "die übliche Größe des Unterschieds zwischen den Seiten",
  "the straight line that fits the middle between the rails best, against the stringer; low and high hold nine times in ten":
    "die Gerade, die die Mitte zwischen den Rails am besten trifft, gegen den Stringer; die Grenzen halten neun von zehn Fällen",
  "one reading held against the curve that the readings make":
    "eine Ablesung gegen die Kurve, die die Ablesungen ergeben",
  "where the outline is least certain, and its standard deviation there":
    "wo die Outline am unsichersten ist, und ihre Standardabweichung dort",
  "Length of the fin's base along the bottom.": "Länge der Finnenbasis entlang der Unterseite.",
  "How far the fin's front points in. Every way of stating it is turned into this angle.":
    "Wie weit die Finne vorn nach innen zeigt. Jede Art der Angabe wird in diesen Winkel umgerechnet.",
  "How much nearer the front of the base stands to the centreline than its trailing end.":
    "Wie viel näher das vordere Ende der Basis an der Mittellinie steht als das hintere.",
  "Where a string along the base crosses the square at the nose tip, out from the centreline on the fin's side.":
    "Wo eine Schnur entlang der Basis den rechten Winkel an der Nosespitze kreuzt, auf der Seite der Finne von der Mittellinie nach außen.",
  "How far beyond the nose tip a string along the base meets the centreline; none for a fin that points along it or out.":
    "Wie weit vor der Nosespitze eine Schnur entlang der Basis die Mittellinie trifft; keiner bei einer Finne, die gerade oder nach außen zeigt.",
  "Lean of the fin outwards, by a gauge that sits on the bottom at the mark.":
    "Neigung der Finne nach außen, mit einer Lehre, die an der Marke auf der Unterseite sitzt.",
  "Slope of the surveyed bottom under the gauge, square to the stringer.":
    "Schräge der vermessenen Unterseite unter der Lehre, rechtwinklig zum Stringer.",
  "Twist of the board at the mark against half length, spread evenly between tail and nose.":
    "Verwindung des Boards an der Marke gegen die halbe Länge, gleichmäßig zwischen Tail und Nose verteilt.",
  "How far the fin leans against the board's level at half length; the gauge cannot see slope and twist.":
    "Wie weit sich die Finne gegen die Waagerechte des Boards auf halber Länge neigt; Schräge und Verwindung sieht die Lehre nicht.",
  "Depth of the fin.": "Tiefe der Finne.",
  "Sweep of the fin.": "Pfeilung der Finne.",
  "Thickness of the foil as a share of its chord.": "Dicke des Profils als Anteil seiner Sehne.",
  "The trailing mark up from the tail tips, straight.": "Die hintere Marke ab den Tailspitzen, gerade.",
  "The {1} mark as a tape along the bottom reads it from the tail tips.":
    "Die {1} Marke, wie ein Maßband entlang der Unterseite sie ab den Tailspitzen liest.",
  "The {1} mark as a tape from the crotch of the swallow tail reads it.":
    "Die {1} Marke, wie ein Maßband ab der Kerbe des Swallowtails sie liest.",
  "How far the trailing mark stands from the line, by the rule for the two sides.":
    "Wie weit die hintere Marke von der Linie steht, nach der Regel für die beiden Seiten.",
  "The {1} mark out from the stringer, square to it: the same as from the line unless the set is laid out about the best-fit centreline.":
    "Die {1} Marke vom Stringer nach außen, rechtwinklig dazu: gleich wie von der Linie, außer der Satz wird von der besten Mittellinie aus angerissen.",
  "The {1} mark in from the outline on the fin's own side, square to the line.":
    "Die {1} Marke von der Outline auf der Seite der Finne nach innen, rechtwinklig zur Linie.",
  "Shortest distance from the {1} mark to the outline, as a tape swung about the mark finds it.":
    "Kürzester Abstand von der Outline, den die {1} Marke hat, wie ihn ein um die Marke geschwenktes Maßband findet.",
  "The {1} mark along the stringer from the tail tips, for drawings.":
    "Die {1} Marke entlang des Stringers ab den Tailspitzen, für Zeichnungen.",
  "The {1} mark to the left of the stringer, for drawings.":
    "Die {1} Marke links vom Stringer, für Zeichnungen.",
  "The front end of the base up from the tail tips, straight.":
    "Das vordere Ende der Basis ab den Tailspitzen, gerade.",
  "How far the front end of the base stands from the line.":
    "Wie weit das vordere Ende der Basis von der Linie steht.",
  "Toe gained for each metre that one end of the base is off, the other held.":
    "Vorspur, die je Meter hinzukommt, den ein Ende der Basis daneben liegt, das andere festgehalten.",
  "Toe gained for each metre that the trailing mark is too far out, the string's nose end held.":
    "Vorspur, die je Meter hinzukommt, den die hintere Marke zu weit außen liegt, das Ende der Schnur an der Nose festgehalten.",
  "Toe gained for each metre that the trailing mark is too far up the board, the string's nose end held.":
    "Vorspur, die je Meter hinzukommt, den die hintere Marke zu weit zur Nose liegt, das Ende der Schnur an der Nose festgehalten.",
  "Toe lost for each metre that the string's nose end is too far out.":
    "Vorspur, die je Meter verloren geht, den das Ende der Schnur an der Nose zu weit außen liegt.",
  "The finest mark of the tape that the dimensions are rounded to.":
    "Der feinste Strich des Maßbands, auf den die Maße gerundet sind.",
  "The most that rounding can turn the fin: {1}, each off by half a step, in opposite directions.":
    "Wie viel Runden die Finne höchstens drehen kann: {1}, jede um einen halben Schritt daneben, in Gegenrichtung.",
  "both marks set from the centreline": "beide Marken von der Mittellinie aus gesetzt",
  "trailing mark and string's nose end": "hintere Marke und Ende der Schnur an der Nose",
  "Least foam between the box's floor and the deck; without a box, the foam over the base.":
    "Kleinste Schaumdicke zwischen Kastenboden und Deck; ohne Kasten der Schaum über der Basis.",
  "Length of the box.": "Länge des Kastens.",
  "Width of the box.": "Breite des Kastens.",
  "Depth of the box.": "Tiefe des Kastens.",
  "How far the box reaches behind the trailing mark; where that is not given the base stands in its middle.":
    "Wie weit der Kasten hinter die hintere Marke reicht; wo das nicht angegeben ist, steht die Basis in seiner Mitte.",
  "How far the fin could be slid back in its box.":
    "Wie weit die Finne in ihrem Kasten nach hinten rücken kann.",
  "How far the fin could be slid forward in its box.":
    "Wie weit die Finne in ihrem Kasten nach vorn rücken kann.",
  "Rear end of the box up from the tail tips, straight.":
    "Hinteres Ende des Kastens ab den Tailspitzen, gerade.",
  "Rear end of the box by tape along the bottom.":
    "Hinteres Ende des Kastens mit dem Maßband entlang der Unterseite.",
  "Front end of the box up from the tail tips, straight.":
    "Vorderes Ende des Kastens ab den Tailspitzen, gerade.",
  "Front end of the box by tape along the bottom.":
    "Vorderes Ende des Kastens mit dem Maßband entlang der Unterseite.",
  "Corner of the cut-out along the stringer from the tail tips, for drawings.":
    "Ecke des Ausschnitts entlang des Stringers ab den Tailspitzen, für Zeichnungen.",
  "Corner of the cut-out to the left of the stringer, for drawings.":
    "Ecke des Ausschnitts links vom Stringer, für Zeichnungen.",
  "Least foam beside the box, level out to the skin, at half its depth and at its floor.":
    "Kleinste Schaumdicke neben dem Kasten, waagerecht bis zur Haut, auf halber Tiefe und am Boden.",
  "From the corner of the box, floor included, to the nearest point of the outline.":
    "Von der Ecke des Kastens, Boden eingeschlossen, zum nächsten Punkt der Outline.",
  "From the inner edge of the box, floor included, to the middle of the stringer.":
    "Von der inneren Kante des Kastens, Boden eingeschlossen, zur Mitte des Stringers.",
  "Gap in plan to the nearest other box or base, floors included.":
    "Abstand im Grundriss zum nächsten anderen Kasten oder zur nächsten Basis, Böden eingeschlossen.",
  "How far the bottom is from a straightedge along the base: positive hollow, negative rounded.":
    "Wie weit die Unterseite von einem Richtscheit entlang der Basis abweicht: positiv hohl, negativ rund.",
  "How far apart the two fins of a pair would stand from the line if each followed its own rail, for the worst pair.":
    "Wie weit die beiden Finnen des schlechtesten Paars zur Linie auseinander stünden, folgte jede ihrer eigenen Rail.",
  "How far a mark may be off.": "Wie weit eine Marke daneben liegen darf.",
  "Where the line the set is laid out about stands at the tail tips, left of the stringer: nought unless it is the best-fit centreline.":
    "Wo die Linie, von der aus angerissen wird, an den Tailspitzen links vom Stringer steht: null, außer es ist die beste Mittellinie.",
  "Where that line stands at the nose tip, left of the stringer.":
    "Wo diese Linie an der Nosespitze links vom Stringer steht.",
  "How far that line turns to the left of the stringer.":
    "Wie weit sich diese Linie links vom Stringer wegdreht.",
  "Where the square from the nose tip meets the line, from the tail tips.":
    "Wo der rechte Winkel von der Nosespitze die Linie trifft, ab den Tailspitzen.",
  "How deep the notch of the swallow tail is, straight.": "Wie tief die Kerbe des Swallowtails ist, gerade.",
  "Left less right: how far apart the marks would stand from the line if each followed its own rail.":
    "Links minus rechts: wie weit die Marken zur Linie auseinander stünden, folgte jede ihrer eigenen Rail.",
  "What the {1} trailing mark reads from its own rail.":
    "Was die hintere Marke {1} von der eigenen Rail liest.",
  "How far the {1} trailing mark stands from the line.":
    "Wie weit die hintere Marke {1} von der Linie steht.",
  "Straight in plan {1} on the left.": "Gerade im Grundriss {1} links.",
  "from the nose tip, or the tail's middle (the crotch of a swallow), to the mark":
    "von der Nosespitze oder der Mitte des Tails (der Kerbe eines Swallowtails) zur Marke",
  "Straight in plan {1} on the right.": "Gerade im Grundriss {1} rechts.",
  "With a taut tape along the bottom {1} on the left. A rockered bottom that is flat across unrolls.":
    "Mit straffem Maßband entlang der Unterseite {1} links. Eine quer ebene Unterseite mit Rocker rollt sich ab.",
  "With a taut tape along the bottom {1} on the right. A rockered bottom that is flat across unrolls.":
    "Mit straffem Maßband entlang der Unterseite {1} rechts. Eine quer ebene Unterseite mit Rocker rollt sich ab.",
};
