/** Fin marks, boxes, leash plug, the fins as set, and the checks before the router. */
export const FINS: Readonly<Record<string, string>> = {
  "a reading of the {1} fin as set is no number, so it is left aside":
    "eine Ablesung der gesetzten Finne {1} ist keine Zahl und bleibt außer Acht",
  "the {1} fin as set is given twice: the first is used":
    "die gesetzte Finne {1} ist zweimal angegeben: die erste zählt",
  'which {1} fin was measured is not said: add "side": "left" or "right", as the surfer stands':
    'welche Finne ({1}) gemessen wurde, fehlt: "side": "left" oder "right" ergänzen, wie der Surfer steht',
  'there is no mark for a fin named "{1}" to hold the measured one against':
    "für eine Finne „{1}“ gibt es keine Marke zum Vergleich",
  "the {1} fin has no verdict yet: its {2} mark has not been measured":
    "Finne {1}: noch kein Urteil, die {2} Marke ist nicht gemessen",
  "the {1} fin is within {2}: trailing mark {3} out, leading mark {4} out":
    "Finne {1} liegt innerhalb von {2}: hintere Marke {3} daneben, vordere Marke {4} daneben",
  "the {1} fin is out: {2}": "Finne {1} steht falsch: {2}",
  "move it {1} {2}": "{1} {2} versetzen",
  "move its trailing end {1} {2}": "hinteres Ende {1} {2} versetzen",
  "move its leading end {1} {2}": "vorderes Ende {1} {2} versetzen",
  "lean it {1} {2}": "{1} {2} neigen",
  "{1} (its toe is {2} too {3})": "{1} (die Vorspur ist {2} zu {3})",
  "each {1} fin is within {2}, but the two sides differ by more: move the {3} end of the {4} fin {5} {6}":
    "jede der Finnen {1} liegt innerhalb von {2}, die beiden Seiten weichen aber mehr voneinander ab: das {3} Ende der Finne {4} {5} {6} versetzen",
  "add a fins part to the board file to get marks, boxes and the checks before the router":
    "für Marken, Kästen und die Prüfungen vor der Oberfräse den Teil fins in die Board-Datei aufnehmen",
  "fins are set out from the outline, and there is no outline yet":
    "Finnen werden von der Outline aus angerissen, und es gibt noch keine",
  "no fin is given": "keine Finne angegeben",
  "the leash plug, {1} from the tail and {2} from the centreline, is not on the deck":
    "der Leashplug, {1} vom Tail und {2} von der Mittellinie, liegt nicht auf dem Deck",
  "set both nearer to their rails": "beide näher an ihre Rails setzen",
  "move one of them {1} along the board": "eine davon {1} längs versetzen",
  "two {1}": "{1} links und rechts",
  "{1} and {2}": "{1} und {2}",
  "the {1} fin's box reaches {2} over the rail: move the fin {3} inward, or farther up the board":
    "der Kasten der Finne {1} ragt {2} über die Rail: die Finne {3} nach innen oder weiter zur Nose setzen",
  "the {1} fin's box reaches over the end of the board: move the fin up the board, or use a box that reaches less far behind its mark":
    "der Kasten der Finne {1} ragt über das Ende des Boards: die Finne weiter zur Nose setzen oder einen Kasten nehmen, der weniger weit hinter die Marke reicht",
  "the {1} fin's box is {2} deep and would come out of the deck by {3}: use a box at most {4} deep, or a place where the board is thicker":
    "der Kasten der Finne {1} ist {2} tief und käme {3} aus dem Deck: einen höchstens {4} tiefen Kasten nehmen oder eine Stelle, wo das Board dicker ist",
  "only {1} of foam is left over the {2} fin's box, where {3} is common practice: a box {4} shallower, or a move up the board, would leave it":
    "über dem Kasten der Finne {2} bleiben nur {1} Schaum, üblich sind {3}: ein {4} flacherer Kasten oder ein Platz weiter zur Nose lässt genug",
  "only {1} of foam is left beside the {2} fin's box at its floor, where {3} is common practice: {4} farther from the rail would leave it":
    "neben dem Boden des Kastens der Finne {2} bleiben nur {1} Schaum, üblich sind {3}: {4} weiter von der Rail lässt genug",
  "the {1} fin's box comes within {2} of the rail, where {3} is common practice: move the fin {4} inward":
    "der Kasten der Finne {1} kommt auf {2} an die Rail, üblich sind {3}: die Finne {4} nach innen setzen",
  "the {1} fin's box comes within {2} of the middle of the stringer: move the fin {3} outward, or rout the stringer on purpose":
    "der Kasten der Finne {1} kommt auf {2} an die Mitte des Stringers: die Finne {3} nach außen setzen oder den Stringer bewusst anfräsen",
  "the {1} fins are in one place: {2}": "die Finnen {1} liegen am selben Platz: {2}",
  "only {1} is left between the {2} fins, where {3} is common practice: {4}":
    "zwischen den Finnen {2} bleiben nur {1}, üblich sind {3}: {4}",
  "the bottom is {1} by {2} under the {3} fin's base: set the box by its ends and sand it in, or scribe the base":
    "die Unterseite ist unter der Basis der Finne {3} um {2} {1}: den Kasten nach seinen Enden setzen und einschleifen oder die Basis anpassen",
  hollow: "hohl",
  round: "rund",
  "the tolerance of the set-out has to be more than nought; 1 mm is common practice":
    "die Toleranz beim Anreißen muss mehr als null sein; üblich ist 1 mm",
  "a {1} has a {2} fin, and none is given": "zu „{1}“ gehört eine Finne {2}, und es ist keine angegeben",
  "the {1} fin is given twice: one line of the set stands for both sides":
    "Finne {1} ist zweimal angegeben: eine Zeile des Satzes gilt für beide Seiten",
  "a {1} has no {2} fin: it is set out all the same, so see that it is meant":
    "zu „{1}“ gehört keine Finne {2}: sie wird trotzdem angerissen; prüfen, ob sie gemeint ist",
  "no number": "keine Zahl",
  "the {1} fin's {2} reads {3}: it has to be {4}": "Finne {1}: {2} ist {3}, muss aber sein: {4}",
  "the {1} fins need their distance from the rail": "den Finnen {1} fehlt der Abstand von der Rail",
  "a centre fin stands on the centreline and takes no distance from the rail: leave it out, or give the fin another name":
    "eine Mittelfinne steht auf der Mittellinie und hat keinen Abstand von der Rail: weglassen oder die Finne anders nennen",
  "the {1} fins are to lean {2} outwards; common practice is {3} to {4}":
    "die Finnen {1} sollen {2} nach außen geneigt sein; üblich sind {3} bis {4}",
  "the {1} fins are to lean {2} inwards; common practice is {3} to {4} outwards":
    "die Finnen {1} sollen {2} nach innen geneigt sein; üblich sind {3} bis {4} nach außen",
  "the {1} fin stands on the centreline and is to lean {2} to the {3}: common practice is none, since one that leans pulls the board to one side":
    "Finne {1} steht auf der Mittellinie und soll {2} nach {3} geneigt sein: üblich ist gar nicht, denn geneigt zieht sie das Board zur Seite",
  "the {1} fin points out by {2}: common practice is {3} to {4} in, so look at its aim, its unit and its sign":
    "Finne {1} zeigt {2} nach außen: üblich sind {3} bis {4} nach innen; Zielpunkt, Einheit und Vorzeichen prüfen",
  "the {1} fin points in by {2}: common practice is {3} to {4}, so look at its aim, its unit and its distance from the rail":
    "Finne {1} zeigt {2} nach innen: üblich sind {3} bis {4}; Zielpunkt, Einheit und Abstand von der Rail prüfen",
  "the set-out is held to {1}: common practice is {2}, and past {3} the checks let through what can be felt":
    "beim Anreißen gelten {1}: üblich ist {2}, und über {3} lassen die Prüfungen durch, was man spürt",
  "the fins are glassed on, so the boxes given for them are left aside":
    "die Finnen werden anlaminiert, ihre angegebenen Kästen zählen also nicht",
  "the {1} fin's box reaches into the tail's notch: move the fin up past the crotch, or use a box that reaches less far behind its mark":
    "der Kasten der Finne {1} ragt in die Kerbe des Tails: die Finne vor die Kerbe setzen oder einen Kasten nehmen, der weniger weit hinter die Marke reicht",
  "a gauge {1} wide": "eine Lehre, {1} breit",
  "how wide the cant gauge sits on the bottom is not in the board file":
    "wie breit die Cant-Lehre auf der Unterseite sitzt, steht nicht in der Board-Datei",
  "a cant block, and a fin as set, are held to about a degree":
    "ein Cant-Block und eine gesetzte Finne werden auf etwa ein Grad gehalten",
  "a depth stop, and a box's height over the surface, are held to about half a millimetre":
    "ein Tiefenanschlag und der Überstand eines Kastens werden auf etwa einen halben Millimeter gehalten",
  "the leash plug's diameter is not given, so its room is reckoned for a common one":
    "der Durchmesser des Leashplugs ist nicht angegeben; sein Platz ist für einen üblichen gerechnet",
  "the {1} fin's toe is no number": "die Vorspur der Finne {1} ist keine Zahl",
  "the {1} fin stands on the centreline and is set along it; the toe given is left aside":
    "Finne {1} steht auf der Mittellinie und wird längs gesetzt; die angegebene Vorspur zählt nicht",
  "the leash plug is {1} deep and would come out of the bottom by {2}: use a shallower one, or set it farther up the board":
    "der Leashplug ist {1} tief und käme {2} aus der Unterseite: einen flacheren nehmen oder ihn weiter zur Nose setzen",
  "only {1} of foam is left under the leash plug, where {2} is common practice: set it farther up the board, or use a shallower one":
    "unter dem Leashplug bleiben nur {1} Schaum, üblich sind {2}: weiter zur Nose setzen oder einen flacheren nehmen",
  "the leash plug runs into the {1} fin's box beneath it: move the plug along the board or to the other side":
    "der Leashplug stößt auf den Kasten der Finne {1} darunter: den Plug längs oder auf die andere Seite versetzen",
  "only {1} is left between the leash plug and the {2} fin's box, where {3} is common practice: move the plug {4} away":
    "zwischen Leashplug und Kasten der Finne {2} bleiben nur {1}, üblich sind {3}: den Plug {4} weiter weg setzen",
  "the leash plug comes within {1} of the rail, where {2} is common practice: move it {3} inward":
    "der Leashplug kommt auf {1} an die Rail, üblich sind {2}: {3} nach innen setzen",
  "the leash plug comes within {1} of the middle of the stringer: its hole would cut the stringer, so move it {2} out":
    "der Leashplug kommt auf {1} an die Mitte des Stringers: sein Loch würde ihn anschneiden, also {2} nach außen setzen",
  "the {1} fin's base of {2} is longer than the {3} from its mark to the nose":
    "die Basis der Finne {1} ist mit {2} länger als die {3} von der Marke zur Nose",
  "the {1} fin's mark lies {2} over the centreline: the rail is only {3} from it there":
    "die Marke der Finne {1} liegt {2} jenseits der Mittellinie: bis zur Rail sind es dort nur {3}",
  "the {1} fin's {2} mark, {3} from the tail, is not on the board":
    "die {2} Marke der Finne {1}, {3} vom Tail, liegt nicht auf dem Board",
  "the {1} fin's {2} mark lies {3} over the centreline: give it less toe, or set it nearer to the rail":
    "die {2} Marke der Finne {1} liegt {3} jenseits der Mittellinie: weniger Vorspur geben oder näher an die Rail setzen",
  "the {1} fin's {2} mark lies {3} outside the outline, which is {4} from the centreline there: move it in, or farther up the board":
    "die {2} Marke der Finne {1} liegt {3} außerhalb der Outline, die dort {4} von der Mittellinie liegt: nach innen oder weiter zur Nose setzen",
  "the {1} fin's {2} mark lies in the tail's notch, which is {3} wide to each side there: move it out, or up past the crotch":
    "die {2} Marke der Finne {1} liegt in der Kerbe des Tails, die dort nach jeder Seite {3} breit ist: nach außen setzen oder vor die Kerbe",
  "the bottom slopes {1} under the left {2} fin and {3} under the right one: set by the gauge to {4}, the left one leans {5} and the right one {6} against the board at half length; share the difference out by setting one {7} more and the other as much less":
    "der Boden ist unter der linken Finne ({2}) um {1} geneigt und unter der rechten um {3}: mit der Lehre auf {4} gesetzt, neigt sich die linke {5} und die rechte {6} gegen das Board auf halber Länge; den Unterschied teilen: eine {7} mehr, die andere so viel weniger",
  "the board is twisted by {1} at the {2} fins: set by the gauge to {3}, the left one leans {4} and the right one {5} against the board at half length; share the difference out by setting one {6} more and the other as much less":
    "das Board ist bei den Finnen {2} um {1} verdreht: mit der Lehre auf {3} gesetzt, neigt sich die linke {4} und die rechte {5} gegen die Boardmitte; den Unterschied teilen: eine um {6} mehr, die andere um ebenso viel weniger",
  "the fins are measured from the crotch, and this tail has none: measure from the tips, or survey the tail as a swallow with its depth":
    "die Finnen sind von der Kerbe aus gemessen, und dieses Tail hat keine: von den Tailspitzen messen oder das Tail als Swallow mit Tiefe aufnehmen",
  "the {1} fin's mark, {2} from the tail, is not on the board":
    "die Marke der Finne {1}, {2} vom Tail, liegt nicht auf dem Board",
  "the two sides agree within {1} at the fins, so all three rules come to the same; average keeps both fins equally far from the stringer":
    "die Seiten stimmen bei den Finnen auf {1} überein, alle drei Regeln führen also zum Gleichen; gemittelt bleiben beide Finnen gleich weit vom Stringer",
  "the sides differ by {1} at the fins about the stringer, but only by {2} about the best-fit centreline: the stringer is off, or bowed, so set the fins out about the best-fit line":
    "die Seiten weichen bei den Finnen um {1} zum Stringer ab, aber nur um {2} zur besten Mittellinie: der Stringer liegt schief oder ist krumm, die Finnen also von der besten Mittellinie aus anreißen",
  "the sides differ by {1} at the fins, and by {2} about the best-fit centreline, but the readings cannot tell that line from the stringer: average shares the difference out; more stations on both sides would tell":
    "die Seiten weichen bei den Finnen um {1} ab und um {2} zur besten Mittellinie, die Ablesungen können diese aber nicht vom Stringer unterscheiden: gemittelt verteilt den Unterschied; mehr Stationen auf beiden Seiten brächten Klarheit",
  "the sides differ by {1} at the fins, and by {2} about the best-fit centreline: the outline is fuller on one side, so average shares it out and keeps both fins true to the stringer; by its own rail each fin would stand and point differently":
    "die Seiten weichen bei den Finnen um {1} ab und um {2} zur besten Mittellinie: die Outline ist auf einer Seite voller; gemittelt verteilt das und hält beide Finnen zum Stringer gerade; nach der eigenen Rail stünde jede Finne anders",
  "the toe of the {1} fin comes to {2}: a fin stands within a few degrees of the centreline, so look at its aim, its unit and its distance from the rail":
    "die Vorspur der Finne {1} kommt auf {2}: eine Finne steht nur wenige Grad zur Mittellinie; Zielpunkt, Einheit und Abstand von der Rail prüfen",
  "the aim of the {1} fin lies {2} short of the nose tip, which is not ahead of the fin's own front: its line must meet the centreline more than {3} from the nose tip":
    "der Zielpunkt der Finne {1} liegt {2} vor der Nosespitze und damit nicht vor der Finne selbst: ihre Linie muss die Mittellinie mehr als {3} von der Nosespitze treffen",
  "the {1} fin is to toe {2} over a base of {3}: the front cannot come in by as much as the base is long":
    "Finne {1} soll {2} Vorspur auf einer Basis von {3} haben: vorn kann sie nicht so weit nach innen, wie die Basis lang ist",
  'the {1} fin\'s line is to meet that of "{2}", and there is no such fin on that side':
    "die Linie der Finne {1} soll die von „{2}“ treffen, und auf dieser Seite gibt es keine solche Finne",
  'the {1} fin\'s line is to meet that of "{2}", which goes round in a circle: state the toe of one of them in another way':
    "die Linie der Finne {1} soll die von „{2}“ treffen, das dreht sich im Kreis: die Vorspur einer der beiden anders angeben",
  "both sides are measured from their own rail and both fins stand at the mean, so that a board out of true does not turn one fin against the other":
    "beide Seiten werden von ihrer Rail gemessen und beide Finnen stehen im Mittel, damit ein schiefes Board nicht eine Finne gegen die andere dreht",
  "the boxes are set after the fill coat": "die Kästen kommen nach dem Hotcoat hinein",
  "distances from the tail are read with a tape along the bottom":
    "Abstände vom Tail werden mit dem Maßband entlang der Unterseite gelesen",
  "and from a straightedge across the tail tips": "und von einem Richtscheit quer über die Tailspitzen",
  "a careful set-out is held to about a millimetre": "sorgfältig angerissen hält man etwa einen Millimeter",
  "the bottom's slope under the cant gauge is that of the section's curve, which cannot draw a tucked edge: near the rail it slopes more than a bottom that is flat to its edge, and the true cant with it":
    "die Schräge der Unterseite unter der Cant-Lehre ist die der Querschnittskurve, die keine eingezogene Kante zeichnen kann: nahe der Rail fällt sie stärker als eine bis zur Kante ebene Unterseite, und der wahre Cant mit ihr",
  "the section curve": "die Querschnittskurve",
  "the distance from the rail is read square to the centreline":
    "der Abstand von der Rail wird rechtwinklig zur Mittellinie gelesen",
  "no toe is given, so the fin stands along the centreline":
    "keine Vorspur angegeben, die Finne steht also längs der Mittellinie",
  "no cant is given, so the fin stands square to the bottom":
    "kein Cant angegeben, die Finne steht also rechtwinklig zur Unterseite",
  "how far the box reaches behind the mark is not given, so the base stands in its middle":
    "wie weit der Kasten hinter die Marke reicht, ist nicht angegeben; die Basis steht also in seiner Mitte",
  "the leash plug's side is not given": "die Seite des Leashplugs ist nicht angegeben",
  "{1}, or what the resin's sheet asks for where that is longer":
    "{1}, oder was das Harzblatt verlangt, wenn das länger ist",
  "a box is set a little proud and sanded flush; the glass under the router is not counted, so the stop is set from the surface that is there":
    "ein Kasten steht ein wenig vor und wird bündig geschliffen; das Glas unter der Fräse zählt nicht, der Anschlag wird also von der vorhandenen Oberfläche aus eingestellt",
  "{1} above {2}": "{1} über {2}",
  "room for resin on every side": "Platz für Harz auf jeder Seite",
  "{1} around and beneath the box, its corners square":
    "{1} rings um den Kasten und darunter, Ecken rechtwinklig",
  "a box that is loaded or sanded early moves":
    "ein zu früh belasteter oder geschliffener Kasten verschiebt sich",
  "cloth over the box ties it to the laminate": "Gewebe über dem Kasten bindet ihn ans Laminat",
  "{1} beyond the box all round": "{1} rundum über den Kasten hinaus",
  "how a fin is glassed on is not in the board file":
    "wie eine Finne anlaminiert wird, steht nicht in der Board-Datei",
  "fillets of {1} radius, tacks {2} long at both ends, cloth {3} up the fin and out on the bottom":
    "Kehlen mit {1} Radius, Heftpunkte {2} lang an beiden Enden, Gewebe {3} an der Finne hoch und auf der Unterseite hinaus",
  "a base that is loaded early cracks its fillet": "eine zu früh belastete Basis reißt ihre Kehle auf",
  "a plug that is pulled early comes loose later": "ein zu früh belasteter Plug löst sich später",
  "a plug that was never pulled is not ready; how hard is a declared convention, about what one person pulls, with no published figure behind it":
    "ein nie gezogener Plug ist nicht fertig; wie fest, ist eine erklärte Festlegung, etwa was ein Mensch zieht, ohne veröffentlichten Wert dahinter",
  "the weight of {1}, straight up": "das Gewicht von {1}, senkrecht nach oben",
  "cloth over the plug spreads its pull": "Gewebe über dem Plug verteilt den Zug",
  "{1} beyond the plug all round": "{1} rundum über den Plug hinaus",
  "the {1} fin's cant reads {2}: a fin leans a few degrees outwards, and one past {3} is taken for a slip of the pen":
    "der Cant der Finne {1} ist {2}: eine Finne neigt sich wenige Grad nach außen, mehr als {3} gilt als Schreibfehler",
};
