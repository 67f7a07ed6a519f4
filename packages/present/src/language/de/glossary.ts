/** Die Wörter des Fachs, je in einer Zeile. */
export const GLOSSARY: Readonly<Record<string, string>> = {
  "The board": "Das Board",
  "Glass and resin": "Glas und Harz",
  Finish: "Finish",
  "The program's own words": "Die eigenen Wörter des Programms",
  "the widest point of the rail, seen in a section across the board":
    "die breiteste Stelle der Rail, im Querschnitt des Boards gesehen",
  "the block of foam that the board is shaped from; shaped, it is ready for the glass":
    "der Schaumblock, aus dem das Board geshapt wird; fertig geshapt ist er bereit fürs Laminieren",
  "the face in the water": "die Seite im Wasser",
  concave: "Concave",
  "a bottom hollowed along the middle": "eine Unterseite, die in der Mitte hohl ist",
  "the face that the surfer stands on": "die Seite, auf der der Surfer steht",
  "how the thickness runs from tail to nose; of a fin, its section":
    "wie die Dicke vom Tail zur Nose verläuft; bei einer Finne ihr Querschnitt",
  "the way around the skin, from the stringer to the rail": "der Weg um die Haut, vom Stringer zur Rail",
  "the front end": "das vordere Ende",
  outline: "Outline",
  "the board's edge seen from above": "der Rand des Boards von oben gesehen",
  "pin, round, squash, square, swallow, diamond": "Pin, Round, Squash, Square, Swallow, Diamond",
  "kinds of tail, by how the outline ends": "Arten von Tails, danach, wie die Outline endet",
  "the side of the board, where deck meets bottom":
    "die Seite des Boards, wo Deck und Unterseite sich treffen",
  "how far the bottom lifts off a straightedge that touches it at half length":
    "wie weit sich die Unterseite von einem Richtscheit hebt, das auf halber Länge anliegt",
  "the board cut across": "das Board quer geschnitten",
  station: "Station",
  "a place along the board where readings are taken": "eine Stelle am Board, an der abgelesen wird",
  straightedge: "Richtscheit",
  "a straight bar laid on the board, to measure from":
    "eine gerade Latte, die aufs Board gelegt wird, um von ihr zu messen",
  "the strip of wood glued into the blank along its middle":
    "die Holzleiste, die der Länge nach in die Mitte des Blanks geleimt ist",
  survey: "Aufmaß",
  "the readings taken off the shaped blank": "die Ablesungen am geshapten Blank",
  swallow: "Swallowtail",
  "a tail with a notch; its crotch is the notch's inner end":
    "ein Tail mit Kerbe; ihr inneres Ende ist die Kerbe, von der gemessen wird",
  "the back end": "das hintere Ende",
  "the tail lying over to one side against the nose; winding sticks show it":
    "das Tail liegt gegen die Nose zu einer Seite verdreht; Richtlatten zeigen es",
  vee: "Vee",
  "a bottom that lies lower at the stringer than at the rails":
    "eine Unterseite, die am Stringer tiefer liegt als an den Rails",
  "wide point": "breiteste Stelle",
  "where the outline is widest": "wo die Outline am breitesten ist",
  "winding sticks": "Richtlatten",
  "two straight bars laid across, one at each end; sighting over both shows a twist":
    "zwei gerade Latten quer aufgelegt, an jedem Ende eine; über beide gepeilt zeigt sich eine Verwindung",
  "where a string along the fin's base crosses the line square to the stringer at the nose tip":
    "wo eine Schnur entlang der Finnenbasis die Linie kreuzt, die an der Nosespitze rechtwinklig zum Stringer steht",
  "the fin's length where it meets the board": "die Länge der Finne, wo sie auf das Board trifft",
  "a socket let into the board that a fin is fixed in":
    "eine ins Board gelassene Fassung, in der eine Finne befestigt wird",
  "how far a fin leans outwards, from square to the bottom":
    "wie weit sich eine Finne aus dem rechten Winkel zur Unterseite nach außen neigt",
  "cant block": "Cant-Block",
  "a wedge that leans the router, or a glassed-on fin, by the cant":
    "ein Keil, der die Fräse oder eine anlaminierte Finne um den Cant neigt",
  "how far a fin reaches from the board": "wie weit eine Finne vom Board absteht",
  "depth stop": "Tiefenanschlag",
  "what holds a router's bit at its depth; set from the surface that is there":
    "was den Fräser auf seiner Tiefe hält; eingestellt ab der Oberfläche, die da ist",
  "from the nose tip or the tail's middle to the same mark on both sides: equal on a pair set about the stringer":
    "von der Nosespitze oder der Mitte des Tails zur gleichen Marke auf beiden Seiten: gleich bei einem Paar, das vom Stringer aus angerissen ist",
  fillet: "Kehle",
  "resin or rope that rounds the corner between a glassed-on fin and the bottom":
    "Harz oder Roving, das die Ecke zwischen anlaminierter Finne und Unterseite ausrundet",
  "boxes for a tri and a quad on one board": "Kästen für einen Tri und einen Quad an einem Board",
  "glassed-on": "anlaminiert",
  "a fin held by cloth and resin, without a box": "eine Finne, die Gewebe und Harz halten, ohne Kasten",
  "leading, trailing": "vorn, hinten",
  "the front and back end of a fin's base; the trailing end is the mark":
    "das vordere und hintere Ende einer Finnenbasis; das hintere ist die Marke",
  "the cup in the deck that the leash is tied to": "der Becher im Deck, an den die Leash gebunden wird",
  "mark and verify": "Anreißen und prüfen",
  "the stop before the router: how the board lies, string, diagonals, marks, cant block, box on scrap, depth stop":
    "der Halt vor der Fräse: wie das Board liegt, Schnur, Diagonalen, Marken, Cant-Block, Kasten im Reststück, Tiefenanschlag",
  "standing above the surface; a box is set a little proud and sanded flush":
    "über die Oberfläche stehend; ein Kasten wird mit etwas Überstand gesetzt und bündig geschliffen",
  pocket: "Tasche",
  "the hole that is cut for a box or plug": "das Loch, das für einen Kasten oder Plug gefräst wird",
  "quad, tri, twin, single, twin with trailer": "Quad, Tri, Twin, Single, Twin mit Trailer",
  "arrangements, by the number and place of fins": "Anordnungen, nach Zahl und Platz der Finnen",
  "string line": "Schnur",
  "a string laid along the fin's base towards the nose, to set the toe by":
    "eine Schnur entlang der Finnenbasis zur Nose, um die Vorspur danach zu setzen",
  "how far a fin rakes back": "wie weit sich eine Finne nach hinten neigt",
  "toe, toe-in": "Vorspur",
  "the fin's front pointing in towards the stringer": "die Finne zeigt vorn nach innen zum Stringer",
  "adiabatic bound": "adiabatische Grenze",
  "as hot as a cup could get by its own heat if none left it; a bound, no forecast":
    "so heiß, wie ein Becher durch die eigene Wärme werden könnte, wenn keine hinausginge; eine Grenze, keine Vorhersage",
  "base (of a resin)": "Harz ohne Härter",
  "the resin before the hardener is in": "das Harz, bevor der Härter darin ist",
  blush: "Aminschleier",
  "a greasy film on epoxy that cured in damp or cold air; it is washed off before the next coat":
    "ein schmieriger Film auf Epoxid, das in feuchter oder kalter Luft gehärtet ist; er wird vor der nächsten Schicht abgewaschen",
  "catalyst, peroxide": "Peroxid",
  "the hardener of a polyester: a small dose starts the cure":
    "der Härter eines Polyesters: eine kleine Dosis setzt das Härten in Gang",
  "woven glass, named here by its kind and grams per square metre":
    "gewebtes Glas, hier nach Art und Gramm je Quadratmeter benannt",
  "one layer of resin put on at one time": "eine Lage Harz, auf einmal aufgetragen",
  "one mix, small enough to be spread before it goes off":
    "eine Mischung, klein genug, um verteilt zu sein, bevor sie anzieht",
  "cut (of the roll)": "Schnitt (von der Rolle)",
  "one straight cut across the roll, and what comes off it":
    "ein gerader Schnitt quer über die Rolle, und was er abtrennt",
  "cut lap": "geschnittene Überlappung",
  "a lap cut along a tape line, for a clean edge":
    "eine Überlappung, an einer Klebebandlinie geschnitten, für einen sauberen Rand",
  "dew point": "Taupunkt",
  "the temperature below which damp from the air settles on a board":
    "die Temperatur, unter der sich Feuchte aus der Luft auf einem Board niederschlägt",
  "hardener over resin, by mass": "Härter zu Harz, nach Masse",
  "a resin with a hardener in a fixed ratio; the one that does not dissolve EPS":
    "ein Harz mit Härter in festem Verhältnis; das einzige, das EPS nicht auflöst",
  exotherm: "Härtungswärme",
  "the heat of the cure; a full cup can smoke, melt foam or catch fire":
    "die Wärme beim Härten; ein voller Becher kann rauchen, Schaum schmelzen oder Feuer fangen",
  "fill coat, hot coat": "Hotcoat",
  "the coat after the laminate that fills the weave and is sanded":
    "die Schicht nach dem Laminat, die die Gewebestruktur füllt und geschliffen wird",
  filler: "Füllstoff",
  "a powder stirred into resin: milled fibre for strength, hollow spheres for lightness, silica to keep it from running; its dust harms the lungs":
    "ein ins Harz gerührtes Pulver: gemahlene Faser für Festigkeit, Hohlkugeln für geringes Gewicht, Kieselsäure gegen das Ablaufen; sein Staub schadet der Lunge",
  "the resin that lies over the weave": "das Harz, das über der Gewebestruktur liegt",
  "free lap": "freie Überlappung",
  "a lap whose edge is left as it falls": "eine Überlappung, deren Rand bleibt, wie er fällt",
  "gel point": "Gelpunkt",
  "one line of a gel table: at this temperature and dose a cup gels after this long":
    "eine Zeile einer Geltabelle: bei dieser Temperatur und Dosis geliert ein Becher nach so langer Zeit",
  "gel time": "Gelzeit",
  "from the hardener going in to the resin setting to a jelly": "vom Härter bis das Harz zu Gelee wird",
  "a last thin coat, polished": "eine letzte dünne Schicht, poliert",
  green: "grün",
  "set, but not yet cured through: the next coat still bonds without sanding":
    "angezogen, aber noch nicht durchgehärtet: die nächste Schicht haftet noch ohne Schleifen",
  "what makes the resin set": "was das Harz fest werden lässt",
  "cloth and resin on the foam; also the coat that wets the cloth":
    "Gewebe und Harz auf dem Schaum; auch die Schicht, die das Gewebe tränkt",
  "the cloth turned around the rail onto the other face":
    "das um die Rail auf die andere Seite gelegte Gewebe",
  lay: "Lage auf der Rolle",
  "how pieces lie on a roll": "wie Stücke auf einer Rolle liegen",
  "set but still soft: the time to trim": "angezogen, aber noch weich: die Zeit zum Trimmen",
  "master batch": "Hauptansatz",
  "all the resin of a coat coloured at once, so that its cups match; each is dosed by itself":
    "das ganze Harz einer Schicht auf einmal gefärbt, damit die Becher gleich sind; jeder wird für sich dosiert",
  "a wedge cut out of a lap, or a slit into it, so that it lies down round a corner":
    "ein aus einer Überlappung geschnittener Keil, oder ein Schlitz darin, damit sie um eine Ecke glatt liegt",
  offcut: "Rest",
  "what is left of a cut beside its piece": "was von einem Schnitt neben seinem Stück übrig ist",
  overhang: "Überhang",
  "what rolled-out cloth hangs past nose and tail, beyond the lap, until it is trimmed":
    "was ausgerolltes Gewebe über Nose und Tail hängt, jenseits der Überlappung, bis es getrimmt wird",
  pace: "Tempo",
  "how many times as long as the model says a film takes, by fingertip tests":
    "wie viel mal so lange wie im Modell ein Film braucht, nach Fingerproben",
  "a smaller piece of cloth where more strength is wanted":
    "ein kleineres Stück Gewebe, wo mehr Festigkeit gewollt ist",
  "the flat shape of a piece of cloth: the face rolled out, with its laps":
    "die flache Form eines Stücks Gewebe: die ausgerollte Seite mit ihren Überlappungen",
  "pigment, tint": "Pigment, Tönung",
  "colour in the resin: solid, or see-through": "Farbe im Harz: deckend oder durchsichtig",
  "a thin line of colour over the lap's edge": "eine dünne farbige Linie über dem Rand der Überlappung",
  "a resin that sets with a dose of peroxide; its styrene dissolves EPS and XPS":
    "ein Harz, das durch eine Dosis Peroxid hart wird; sein Styrol löst EPS und XPS auf",
  "pot life, working time": "Topfzeit, Verarbeitungszeit",
  "how long a mix stays fit to spread": "wie lange sich eine Mischung verteilen lässt",
  "what lets peroxide work in the cold; never in touch with the peroxide itself":
    "was Peroxid in der Kälte wirken lässt; nie mit dem Peroxid selbst in Berührung bringen",
  "taking the tape off a coat's edge while the coat is soft, so that it does not break along it":
    "das Klebeband vom Rand einer Schicht abnehmen, solange sie weich ist, damit sie nicht daran bricht",
  "recoat window": "Fenster für die neue Schicht",
  "when the next coat still grips without sanding": "wann die nächste Schicht noch ohne Schleifen haftet",
  roll: "Rolle",
  "cloth as it is bought; the warp runs along it": "Gewebe, wie man es kauft; die Kette läuft der Länge nach",
  schedule: "Aufbau",
  "which cloths go on which face": "welche Gewebe auf welche Seite kommen",
  "seal coat": "Siegelschicht",
  "a first coat that closes open foam": "eine erste Schicht, die offenen Schaum schließt",
  "between wet and leathery: the film draws threads to the fingertip":
    "zwischen nass und lederartig: der Film zieht Fäden zur Fingerspitze",
  "the solvent in polyester; harmful to breathe": "das Lösemittel im Polyester; schädlich einzuatmen",
  "how strong the sun is, as forecasts give it; a sunlight resin sets by it":
    "wie stark die Sonne ist, wie ihn die Vorhersage gibt; ein Sonnenlichtharz härtet danach",
  "a screw in the deck of a polystyrene board: open in heat and flight, closed in water":
    "eine Schraube im Deck eines Polystyrolboards: offen bei Hitze und im Flug, zu im Wasser",
  "warp, weft": "Kette, Schuss",
  "the threads along the roll, and across it": "die Fäden längs der Rolle und quer dazu",
  "in a fill coat it rises and lets the surface dry; the next coat does not grip on it":
    "in einem Hotcoat steigt es auf und lässt die Oberfläche trocken werden; die nächste Schicht haftet nicht darauf",
  "the cloth's texture": "die Textur des Gewebes",
  wrinkling: "Hautwellen",
  "a skin folding into short waves on soft foam, under the feet or at a blow":
    "eine Haut legt sich auf weichem Schaum in kurze Wellen, unter den Füßen oder bei einem Schlag",
};
