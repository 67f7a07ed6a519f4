/** Wie Film, Gewicht, Kosten und Tage zustande kommen. */
export const WHY_FINISH: Readonly<Record<string, string>> = {
  "mean grain of the grade": "mittleres Korn der Körnung",
  "goes off a flat under an even hand: the scratches of the paper before, or what levels the coat":
    "geht bei gleichmäßiger Hand von einer Fläche ab: die Kratzer des vorigen Papiers, oder was die Schicht ebnet",
  "depth of the scratches that it leaves": "Tiefe der Kratzer, die es hinterlässt",
  "how often it goes over the whole face: along and across; wet once, in strokes":
    "wie oft es über die ganze Seite geht: längs und quer; nass einmal, in Strichen",
  "time for the hands with this paper on both faces and the rails, boxes left out":
    "Handarbeit mit diesem Papier auf beiden Seiten und den Rails, ohne Kästen",
  "of that time along rails, laps and ends, by hand; the rest is the flats and a look after each":
    "davon entlang Rails, Überlappungen und Enden, von Hand; der Rest sind die Flächen und ein Blick nach jedem",
  "discs to buy for the machine": "Scheiben, die für die Maschine zu kaufen sind",
  "sheets to buy for the hand: along the rails, or wet over all":
    "Bögen, die für die Hand zu kaufen sind: entlang der Rails, oder nass überall",
  "time for the hands at this step, all its papers and the boxes":
    "Handarbeit bei diesem Schritt, alle Papiere und die Kästen",
  "a smoother surface gains no speed by the book; measured plates found fine sanding still above polished":
    "eine glattere Oberfläche bringt nach dem Lehrbuch kein Tempo; gemessene Platten zeigten feines Schleifen noch vor polierten",
  "fill and gloss film before any paper, as planned, as the scale tells, or as gauged":
    "Film von Hotcoat und Gloss vor jedem Papier, wie geplant, wie die Waage sagt, oder wie gemessen",
  "what all papers take here, more where the hand leans, most on a sharp edge":
    "was alle Papiere hier nehmen, mehr, wo die Hand drückt, am meisten an einer scharfen Kante",
  "film that is left at the end; below nought the glass is cut":
    "Film, der am Ende bleibt; unter null ist das Glas angeschliffen",
  "the thinnest that the film gets on the way: before the gloss coat, or at the end":
    "das Dünnste, was der Film unterwegs wird: vor dem Gloss oder am Ende",
  "where the rail is sharpest, straight from the tail": "wo die Rail am schärfsten ist, gerade ab Tail",
  "how round the edge is: a circle through its outermost point":
    "wie rund die Kante ist: ein Kreis durch ihren äußersten Punkt",
  "in how many such boards the film is gone here, by its band":
    "bei wie vielen solchen Boards der Film hier weg ist, nach seinem Band",
  "place in the row, the one that goes through first in front":
    "Platz in der Reihe, vorn, was zuerst durchgeht",
  "what this paper takes here": "was dieses Papier hier nimmt",
  "film left after this paper; a gloss coat comes on top before its first":
    "Film, der nach diesem Papier bleibt; vor dem ersten des Gloss kommt dieser obenauf",
  "straight from the tail, evenly along the board": "gerade ab Tail, gleichmäßig entlang des Boards",
  "how round the rail is here": "wie rund die Rail hier ist",
  "film on the rail here: less than at half length where the edge is sharper, because more drains off it":
    "Film hier auf der Rail: weniger als auf halber Länge, wo die Kante schärfer ist, weil mehr abläuft",
  "what all papers take here": "was alle Papiere hier nehmen",
  "film that is left here at the end": "Film, der hier am Ende bleibt",
  "where along the rails the least film is left": "wo entlang der Rails am wenigsten Film bleibt",
  "the least film along the rails": "der dünnste Film entlang der Rails",
  "the volume that the weighed blank holds at its foam's density, and the deck fullness at which the shape would hold as much":
    "das Volumen, das der gewogene Blank bei der Dichte seines Schaums fasst, und die Fülle des Decks, bei der die Form ebenso viel fasste",
  "foam: the weighed blank less its stringer, or volume times density":
    "Schaum: der gewogene Blank ohne seinen Stringer, oder Volumen mal Dichte",
  "wood of the stringer": "Holz des Stringers",
  "all pieces of cloth, laps and overlaps with them; a weave may be {1} % off what it is sold as":
    "alle Stücke Gewebe mit Überlappungen; ein Gewebe kann {1} % von dem abweichen, als was es verkauft wird",
  "cured resin that stays on the board; what sanding takes off is left in":
    "ausgehärtetes Harz, das auf dem Board bleibt; was das Schleifen nimmt, ist noch darin",
  "plastic of boxes and plug, less the foam routed out for them; fillers in the resin with it":
    "Kunststoff von Kästen und Plug, weniger der dafür ausgefräste Schaum; mit den Füllstoffen im Harz",
  "the board without fins, wax and leash, before sanding takes its share":
    "das Board ohne Finnen, Wachs und Leash, bevor das Schleifen seinen Teil nimmt",
  "the board after this coat, cured: blank, and the cloth, resin and fittings on it by then":
    "das Board nach dieser Schicht, ausgehärtet: Blank und Gewebe, Harz und Einbauten, die bis dahin darauf sind",
  "density of sea water": "Dichte von Meerwasser",
  "sea water that the shaped volume pushes aside when it is just under":
    "Meerwasser, das das Volumen nach Form verdrängt, wenn es gerade untergetaucht ist",
  "what the board carries beside itself before it goes under":
    "was das Board außer sich selbst trägt, bevor es untergeht",
  "the rider, as the order gives it": "der Surfer, wie der Auftrag ihn angibt",
  "what the board still carries under the rider; below nought the rider's own body must float the rest":
    "was das Board unter dem Surfer noch trägt; unter null muss der eigene Körper den Rest tragen",
  "volume of the stringer: its thickness times the board's side area on the centreline":
    "Volumen des Stringers: seine Dicke mal die Seitenfläche des Boards auf der Mittellinie",
  "the smallest step that the scale shows": "der kleinste Schritt, den die Waage zeigt",
  "the board on the scale": "das Board auf der Waage",
  "the board at this place in the work by the plan": "das Board an dieser Stelle der Arbeit nach Plan",
  "what the plan has it gain since the weighing before": "was es nach Plan seit dem vorigen Wiegen zunimmt",
  "resin that the plan has these coats keep": "Harz, das diese Schichten nach Plan behalten",
  "resin in the record's cups of these coats": "Harz in den Bechern dieser Schichten nach Protokoll",
  "heavier than at the weighing before": "schwerer als beim vorigen Wiegen",
  "resin that stayed on": "Harz, das darauf geblieben ist",
  "resin that stayed on over what the plan has stay": "Harz, das darauf geblieben ist, gegen das nach Plan",
  "mixed and not on the board: cup, squeegee, floor and vapour":
    "gemischt und nicht auf dem Board: Becher, Rakel, Boden und Dampf",
  "cured resin to one of glass by mass": "ausgehärtetes Harz auf einen Teil Glas nach Masse",
  "net film of the coat, even over its face": "Nettofilm der Schicht, gleichmäßig über ihre Seite",
  "resin to mix by the plan": "Harz, das nach Plan zu mischen ist",
  "resin to mix, if this coat keeps as much against the plan as the one that was weighed; not applied":
    "Harz zum Mischen, wenn diese Schicht gegen den Plan so viel behält wie die gewogene; nicht angewandt",
  "net film of the fill coat here by the scale, before sanding":
    "Nettofilm des Hotcoats hier nach der Waage, vor dem Schleifen",
  "{1}, in the shop's own money": "{1}, im Geld der Werkstatt",
  "what this board takes, waste with it, of every line with a price":
    "was dieses Board braucht, mit Abfall, aus jeder Zeile mit Preis",
  "whole packs of every line with a price": "ganze Packungen aus jeder Zeile mit Preis",
  "price of a pack, or of a metre off the roll, in the shop's own money":
    "Preis einer Packung oder eines Meters von der Rolle, im Geld der Werkstatt",
  "whole packs to buy": "ganze Packungen, die zu kaufen sind",
  "price of what this board takes, waste with it": "Preis dessen, was dieses Board braucht, mit Abfall",
  "price of the whole packs": "Preis der ganzen Packungen",
  "what stays on the board, or is used up": "was auf dem Board bleibt oder verbraucht wird",
  "cloth cut away, resin left in cup and on tools, run off, dripped or evaporated":
    "abgeschnittenes Gewebe, Harz, das in Becher und an Werkzeug bleibt, abläuft, tropft oder verdunstet",
  "what is in a pack; a volume of liquid by its density":
    "was in einer Packung ist; ein Volumen Flüssigkeit nach seiner Dichte",
  "whole packs, or the length that is cut": "ganze Packungen, oder die Länge, die geschnitten wird",
  "left over for another board": "übrig für ein anderes Board",
  "time for the hands: a coat's cups mixed and spread one after the other, sanding by its papers, other work by kind, faces and practice":
    "Handarbeit: die Becher einer Schicht nacheinander gemischt und verteilt, Schleifen nach seinen Papieren, andere Arbeit nach Art, Seiten und Übung",
  "after the hands are off, until the first of the steps that follow may begin; at the cure-out what the slowest coat still lacks":
    "nach der Handarbeit, bis der erste der folgenden Schritte beginnen darf; beim Aushärten, was der langsamsten Schicht noch fehlt",
  "how long a box, a fin's base or the leash plug bears no load once the hands are off it; the resin's sheet goes before it where that asks for longer":
    "wie lange ein Kasten, eine Finnenbasis oder der Leashplug nach der Handarbeit keine Last trägt; das Datenblatt des Harzes geht vor, wo es mehr verlangt",
  "how long after that step's hands are off this one may begin":
    "wie lange nach der Handarbeit jenes Schritts dieser beginnen darf",
  "where it is, from the tail": "wo es ist, ab Tail",
  "where it is, from the centreline": "wo es ist, von der Mittellinie",
  "how large it is across": "wie groß es quer ist",
  "how far out the edge is feathered": "wie weit der Rand ausläuft",
  "how long bare foam lies in dry air": "wie lange blanker Schaum in trockener Luft liegt",
  "the spot of fill coat from edge to edge": "der Fleck Hotcoat von Rand zu Rand",
  "the patch from edge to edge": "der Flicken von Rand zu Rand",
  "the round patch's area": "die Fläche des runden Flickens",
  "cloth of the patch": "Gewebe des Flickens",
  "resin that the patch holds": "Harz, das der Flicken hält",
  "resin that must reach the place": "Harz, das an die Stelle kommen muss",
  "resin to mix, what brush and cup keep with it: a smaller cup cannot be dosed":
    "Harz zum Mischen, mit dem, was Pinsel und Becher behalten: ein kleinerer Becher lässt sich nicht dosieren",
  "how deep the spot lies under the face": "wie tief die Stelle unter der Fläche liegt",
  "the least of it": "das Wenigste davon",
  "the most of it": "das Meiste davon",
  "what was sanded away over the spot": "was über der Stelle weggeschliffen ist",
  "resin that makes it level": "Harz, das sie eben macht",
  "base in it, out of the patches' cup": "Harz darin, aus dem Becher der Flicken",
  "hardener in it, out of the patches' cup": "Härter darin, aus dem Becher der Flicken",
  "width of the roll, as for the order's own cuts": "Breite der Rolle, wie für die Schnitte des Auftrags",
  "cloth for the repairs' patches, besides the order: {1}":
    "Gewebe für die Flicken der Reparaturen, außer dem Auftrag: {1}",
  "share of that strip that ends up on the board": "Anteil dieses Streifens, der auf das Board kommt",
  "for a metre off the roll, in the shop's own money": "für einen Meter von der Rolle, im Geld der Werkstatt",
  "that strip at the roll's price": "dieser Streifen zum Preis der Rolle",
  "the patch from edge to edge, as in its repair": "der Flicken von Rand zu Rand, wie in seiner Reparatur",
  "strips that it is laid in": "Streifen, in denen er gelegt wird",
  "dose of its own cup, by the mix": "Dosis seines eigenen Bechers, nach der Mischung",
  "base in the cup": "Harz im Becher",
  "hardener in the cup": "Härter im Becher",
  "hardener in the cup by volume": "Härter im Becher nach Volumen",
  "how much later it may begin without moving the day of the first surf":
    "wie viel später er beginnen darf, ohne den Tag des ersten Surfs zu verschieben",
  "sanding the coat below dull, where it has grown too old for the next to bond to it":
    "die Schicht darunter matt schleifen, wo sie zu alt geworden ist, als dass die nächste haftet",
  size: "Größe",
  "lap of the first": "Überlappung des ersten",
  "each next farther by": "jeder nächste weiter um",
  "fill coat past it by": "Hotcoat darüber hinaus um",
  "taken by the place": "von der Stelle genommen",
  "in the cup": "im Becher",
  "least in a cup": "das Wenigste in einem Becher",
  "poured, fill coat": "gegossen, Hotcoat",
  "depth, least": "Tiefe, mindestens",
  "depth, most": "Tiefe, höchstens",
  "kept by brush": "vom Pinsel behalten",
  "kept by cup": "vom Becher behalten",
  "in the patches' glass": "im Glas der Flicken",
  "levels what was sanded away": "macht eben, was weggeschliffen ist",
};
