/** Wie Kästen, Plug und Prüfungen zustande kommen. */
export const WHY_FINS: Readonly<Record<string, string>> = {
  "Left less right by tape: nought proves the pair symmetric about the line through the two points, and no more.":
    "Links minus rechts am Maßband: null beweist, dass das Paar zur Linie durch die zwei Punkte symmetrisch ist, und mehr nicht.",
  "How much one side's diagonal changes for each millimetre that its mark is off across the board.":
    "Wie viel sich die Diagonale einer Seite je Millimeter ändert, den ihre Marke quer zum Board daneben liegt.",
  "How much one side's diagonal changes for each millimetre that its mark is off along the board.":
    "Wie viel sich die Diagonale einer Seite je Millimeter ändert, den ihre Marke längs des Boards daneben liegt.",
  "How far apart the two fins of the worst pair would stand from this rule's line if each followed its own rail.":
    "Wie weit die beiden Finnen des schlechtesten Paars zur Linie dieser Regel auseinander stünden, folgte jede ihrer eigenen Rail.",
  "From the left rail, by this rule.": "Von der linken Rail, nach dieser Regel.",
  "From the right rail, by this rule.": "Von der rechten Rail, nach dieser Regel.",
  "Left mark from the stringer, by this rule.": "Linke Marke vom Stringer, nach dieser Regel.",
  "Right mark from the stringer, by this rule.": "Rechte Marke vom Stringer, nach dieser Regel.",
  "Toe of the left fin, by this rule.": "Vorspur der linken Finne, nach dieser Regel.",
  "Toe of the right fin, by this rule.": "Vorspur der rechten Finne, nach dieser Regel.",
  "How far the left mark would move away from the stringer against the rule in force.":
    "Wie weit die linke Marke gegenüber der geltenden Regel vom Stringer weg wandern würde.",
  "How far the right mark would move away from the stringer against the rule in force.":
    "Wie weit die rechte Marke gegenüber der geltenden Regel vom Stringer weg wandern würde.",
  "Left less right from the stringer.": "Links minus rechts vom Stringer.",
  "Left less right from their own rails.": "Links minus rechts von der jeweils eigenen Rail.",
  "The leash plug up from the tail tips, straight, read as the fins' distances are.":
    "Der Leashplug ab den Tailspitzen, gerade, gelesen wie die Abstände der Finnen.",
  "The leash plug by tape.": "Der Leashplug mit dem Maßband.",
  "The leash plug as a tape from the crotch of the swallow tail reads it.":
    "Der Leashplug, wie ein Maßband ab der Kerbe des Swallowtails ihn liest.",
  "The leash plug out from the line the set is laid out about.":
    "Der Leashplug von der Linie nach außen, von der aus angerissen wird.",
  "From the plug's edge to the nearest point of the outline.":
    "Vom Rand des Plugs zum nächsten Punkt der Outline.",
  "From the plug's edge to the middle of the stringer.": "Vom Rand des Plugs zur Mitte des Stringers.",
  "Diameter of the plug.": "Durchmesser des Plugs.",
  "Depth of the plug.": "Tiefe des Plugs.",
  "Least foam between the plug's floor and the bottom.":
    "Kleinste Schaumdicke zwischen dem Boden des Plugs und der Unterseite.",
  "Gap to the nearest fin box: in plan, or through the foam where it lies beneath the plug.":
    "Abstand zum nächsten Finnenkasten: im Grundriss, oder durch den Schaum, wo er unter dem Plug liegt.",
  "Foam between the plug's floor and the floor of the box beneath it.":
    "Schaum zwischen dem Boden des Plugs und dem Boden des Kastens darunter.",
  "The deepest plug that still leaves the usual foam to the bottom and to a box beneath.":
    "Der tiefste Plug, der noch den üblichen Schaum zur Unterseite und zu einem Kasten darunter lässt.",
  "Across the cloth over the plug.": "Quer über das Gewebe auf dem Plug.",
  "How long the plug is left alone; the resin's sheet goes before it where that asks for longer.":
    "Wie lange der Plug in Ruhe bleibt; das Datenblatt des Harzes geht vor, wo es mehr verlangt.",
  "The pull of the plug's test, straight up, once it is cured: if the plug moves, it is set again. In newtons; a declared convention, no published figure behind it.":
    "Der Zug der Prüfung am Plug, senkrecht nach oben, sobald er ausgehärtet ist: bewegt er sich, wird er neu gesetzt. In Newton; eine eigene Festlegung, kein veröffentlichter Wert.",
  "The mass whose weight the test's pull is, as a hanging scale shows it. A declared convention: about what one person pulls with both hands; no published figure behind it.":
    "Die Masse, deren Gewicht der Zug der Prüfung ist, wie eine Hängewaage ihn zeigt. Eine eigene Festlegung: etwa, was einer mit beiden Händen zieht; kein veröffentlichter Wert.",
  "How far the {1} mark is from where it belongs, in whatever was measured of it.":
    "Wie weit die {1} Marke von ihrem Platz liegt, in allem, was an ihr gemessen ist.",
  "How far the {1} mark is too far towards the nose.": "Wie weit die {1} Marke zu nah an der Nose liegt.",
  "How far the {1} mark is too far out from the centreline.": "Wie weit die {1} Marke zu weit außen liegt.",
  "Toe as set less toe as planned, from both ends as measured.":
    "Vorspur wie gesetzt minus wie geplant, aus beiden Enden wie gemessen.",
  "Cant as set less cant as planned.": "Cant wie gesetzt minus wie geplant.",
  "Slide of the whole fin, taken off first where the mean error along is over the tolerance.":
    "Verschieben der ganzen Finne, zuerst abgezogen, wo der mittlere Fehler längs über der Toleranz liegt.",
  "Move of the trailing end across; nought where it is within the tolerance.":
    "Versetzen des hinteren Endes quer; null, wo es in der Toleranz liegt.",
  "Move of the leading end across; nought where it is within the tolerance.":
    "Versetzen des vorderen Endes quer; null, wo es in der Toleranz liegt.",
  "Change of the lean; nought within a degree.": "Ändern der Neigung; null innerhalb eines Grads.",
  "Left less right of the trailing marks' errors across.":
    "Links minus rechts der Fehler quer an den hinteren Marken.",
  "Left less right of the leading marks' errors across.":
    "Links minus rechts der Fehler quer an den vorderen Marken.",
  "Left less right of the trailing marks' errors along.":
    "Links minus rechts der Fehler längs an den hinteren Marken.",
  "Left less right of the errors of toe.": "Links minus rechts der Fehler der Vorspur.",
  "What this reading should be.": "Was diese Ablesung sein soll.",
  "What this reading is held to; none where it is shown and not judged by itself.":
    "Woran diese Ablesung gehalten wird; an nichts, wo sie nur gezeigt und nicht für sich beurteilt wird.",
  "What was read.": "Was abgelesen wurde.",
  "How far the reading is from what it should be.":
    "Wie weit die Ablesung von dem abweicht, was sie sein soll.",
  "Lean that the cant block, or the fin as set, should show.":
    "Neigung, die der Cant-Block oder die gesetzte Finne zeigen soll.",
  "What the lean is held to.": "Woran die Neigung gehalten wird.",
  "What the gauge read.": "Was die Lehre zeigt.",
  "How far the lean is from what it should be, positive when it leans too far out.":
    "Wie weit die Neigung von dem abweicht, was sie sein soll; positiv zu weit nach außen.",
  "{1}: the check is made for it, and has to be made again where it changes.":
    "{1}: dafür ist die Prüfung gemacht, und sie ist neu zu machen, wo es sich ändert.",
  "Length of the pocket": "Länge der Tasche",
  "Width of the pocket": "Breite der Tasche",
  "Depth of the pocket": "Tiefe der Tasche",
  "Cant of the fin": "Cant der Finne",
  "Base of the fin": "Basis der Finne",
  "Slide of the whole fin, positive towards the nose.": "Verschieben der ganzen Finne, positiv zur Nose.",
  "Move of the trailing mark, positive away from the centreline.":
    "Versetzen der hinteren Marke, positiv von der Mittellinie weg.",
  "Move of the leading mark, positive away from the centreline; by the string the trailing one is held.":
    "Versetzen der vorderen Marke, positiv von der Mittellinie weg; an der Schnur bleibt die hintere fest.",
  "Change of the lean, positive outwards.": "Ändern der Neigung, positiv nach außen.",
  "Change of the depth stop, positive deeper.": "Ändern des Tiefenanschlags, positiv tiefer.",
  "Length of the pocket, and of the frame's opening.": "Länge der Tasche und der Öffnung des Rahmens.",
  "Width of the pocket, and of the frame's opening.": "Breite der Tasche und der Öffnung des Rahmens.",
  "Depth of the pocket from the surface that is there.": "Tiefe der Tasche ab der Oberfläche, die da ist.",
  "Thickest bit that lets a box with square corners into a pocket with round ones.":
    "Dickster Fräser, mit dem ein Kasten mit scharfen Ecken in eine Tasche mit runden passt.",
  "Bit to use: the thickest of the common ones that still fits.":
    "Fräser: der dickste der üblichen, der noch passt.",
  "How far the box stands above the surface, to be sanded flush.":
    "Wie weit der Kasten über die Oberfläche steht, um bündig geschliffen zu werden.",
  "Least foam over the pocket's floor; the glass under the router is not counted, so there is rather more.":
    "Kleinste Schaumdicke über dem Boden der Tasche; das Glas unter der Fräse zählt nicht, es ist also eher mehr.",
  "Resin with its filler around one box.": "Harz mit Füllstoff um einen Kasten.",
  "The least of it.": "Mindestens so viel davon.",
  "The most of it.": "Höchstens so viel davon.",
  "Length of the cloth over the box.": "Länge des Gewebes über dem Kasten.",
  "Width of the cloth over the box.": "Breite des Gewebes über dem Kasten.",
  "How long the box is left alone; the resin's sheet goes before it where that asks for longer.":
    "Wie lange der Kasten in Ruhe bleibt; das Datenblatt des Harzes geht vor, wo es mehr verlangt.",
  "Radius of the fillet in the corner.": "Radius der Kehle in der Ecke.",
  "Rope or thickened resin in the corners of both sides of the base.":
    "Roving oder eingedicktes Harz in den Ecken beider Seiten der Basis.",
  "Length of the tack at each end of the base.": "Länge der Heftstelle an jedem Ende der Basis.",
  "Length of the cloth for each side.": "Länge des Gewebes je Seite.",
  "Width of the cloth for each side, half on the fin and half on the bottom.":
    "Breite des Gewebes je Seite, halb auf der Finne und halb auf der Unterseite.",
  "How long the fin is left alone; the resin's sheet goes before it where that asks for longer.":
    "Wie lange die Finne in Ruhe bleibt; das Datenblatt des Harzes geht vor, wo es mehr verlangt.",
};
