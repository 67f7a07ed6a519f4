/** Schleifen: was vom Film bleibt, die Papiere und ihre Zeit. */
export const SANDING: Readonly<Record<string, string>> = {
  "the film budget waits for the shape, the glass and its papers":
    "das Filmbudget wartet auf Form, Laminat und seine Papiere",
  "sanding time from area, passes and the speed of pad and block":
    "Schleifzeit aus Fläche, Durchgängen und Tempo von Teller und Klotz",
  "each paper takes off as much as the scratches of the one before are deep, a tenth of the grain":
    "jedes Papier nimmt so viel ab, wie die Riefen des vorigen tief sind, ein Zehntel des Korns",
  "for resin no table was found; a film gauge or weighed dust replaces it":
    "für Harz fand sich keine Tabelle; Schichtdickenmesser oder gewogener Staub ersetzen sie",
  "the coarsest paper stays off rails, laps and ends, which are sanded by hand with soft pads":
    "das gröbste Papier bleibt von Rails, Laps und Enden weg; sie werden mit weichem Pad von Hand geschliffen",
  "the film is thinnest there": "dort ist der Film am dünnsten",
  "a stringer level with the foam": "ein Stringer bündig mit dem Schaum",
  "how far it stands up was not given; a proud stringer is sanded through first":
    "sein Überstand wurde nicht angegeben; ein überstehender Stringer ist zuerst durchgeschliffen",
  "the reading {1} stands after {2}, and no such paper is on this ladder: it is left out":
    "die Ablesung {1} steht nach {2}, und so ein Papier gibt es in dieser Folge nicht: sie bleibt weg",
  "the dust {1} is no mass above nought: it is left out":
    "der Staub {1} ist keine Masse über null: er bleibt weg",
  "the film {1} is of {2}, and this board has no such zone: it is left out":
    "der Film {1} gilt für {2}, und dieses Board hat keine solche Zone: er bleibt weg",
  "a film of {1} cannot be: it is nought or more; the reading is left out":
    "einen Film von {1} gibt es nicht: er ist null oder mehr; die Ablesung bleibt weg",
  "a film is a length of nought or more: the reading is left out":
    "ein Film ist eine Länge von null oder mehr: die Ablesung bleibt weg",
  "box {1}": "Kasten {1}",
  "{1} goes through first: {2} of film, {3} taken by the papers, gone in {4} of boards like this one":
    "{1} ist zuerst durch: {2} Film, {3} nehmen die Papiere, weg bei {4} solcher Boards",
  "{1}; lay a second fill coat there, or begin with a finer paper and stop while shine is left in the low spots":
    "{1}; dort einen zweiten Hotcoat legen, oder mit feinerem Papier beginnen und aufhören, solange in den Senken noch Glanz steht",
  "{1}; go over it last, by hand, and stop while shine is left in the low spots":
    "{1}; zuletzt und von Hand darüber, und aufhören, solange in den Senken noch Glanz steht",
  "the {1} rail, {2} from the tail, has {3} less film than the papers take":
    "die Rail {1}, {2} vom Tail, hat {3} weniger Film, als die Papiere nehmen",
  "papers finer than {1} gain no speed by the book (roughness of {2} in salt water); measured plates still found fine sanding above polished, so nothing here says that sanding beats polish":
    "feinere Papiere als {1} bringen nach dem Lehrbuch kein Tempo (Rauheit {2} in Salzwasser); gemessene Platten lagen fein geschliffen dennoch über polierten, also sagt hier nichts, dass Schliff besser sei als Politur",
  "dull the low spot by hand with a pad, and leave the sander off it":
    "die Senke mit dem Pad von Hand mattieren, die Maschine bleibt weg",
  "whoever chases the shine is through beside it first": "wer dem Glanz nachjagt, ist daneben zuerst durch",
  "Thinnest: left rail, {1} from the tail: {2}.": "Am dünnsten: linke Rail, {1} vom Tail: {2}.",
  "Thinnest: right rail, {1} from the tail: {2}.": "Am dünnsten: rechte Rail, {1} vom Tail: {2}.",
  "Thinnest: left rail, {1} from the tail: through, {2} short.":
    "Am dünnsten: linke Rail, {1} vom Tail: durch, {2} fehlen.",
  "Thinnest: right rail, {1} from the tail: through, {2} short.":
    "Am dünnsten: rechte Rail, {1} vom Tail: durch, {2} fehlen.",
  "Shine left in a low spot is not chased: stop, dull it by hand, spot-fill it.":
    "Glanz in einer Senke wird nicht gejagt: aufhören, von Hand mattieren, Fleck nachfüllen.",
  "Tail edge and the bottom's edge aft stay sharp: flat block, along the edge, never over it. Rails and nose stay round: soft pad, last, by hand.":
    "Tailkante und hintere Kante des Bottoms bleiben scharf: harter Klotz, an der Kante entlang, nie darüber. Rails und Nose bleiben rund: weiches Pad, zuletzt, von Hand.",
  "Each paper until the scratches of the one before are gone, and no longer. Pencil the face over before each; where the pencil is gone, go on.":
    "Jedes Papier, bis die Riefen des vorigen weg sind, nicht länger. Vor jedem die Fläche mit Bleistift überziehen; wo der Strich weg ist, weiter.",
  "The films are planned, not measured: a gauge or weighed dust in the record replaces the model.":
    "Die Filme sind geplant, nicht gemessen: Messgerät oder gewogener Staub im Protokoll ersetzen das Modell.",
  film: "Film",
  taken: "ab",
  remains: "bleibt",
  "gone in": "durch bei",
  through: "durch",
  zone: "Zone",
  US: "US",
  time: "Zeit",
  thin: "dünn",
  enough: "genug",
  paper: "Papier",
  takes: "nimmt",
  where: "wo",
  discs: "Teller",
  sheets: "Bögen",
  "wet, all over": "nass, überall",
  "dry, rails too": "trocken, auch Rails",
  "dry, flats only": "trocken, nur Flächen",
  shine: "Glanz",
  "the pockets are cut and the boxes are not sealed in: the board is not for water, and damp stays away from it":
    "die Taschen sind gefräst und die Kästen nicht eingegossen: das Board darf nicht ins Wasser, und Feuchte bleibt weg davon",
  "Not before the wax is on and the leash, its plug cured and pulled. No dark board lies in the sun; a vent is closed before the water.":
    "Nicht, bevor Wachs und Leash dran sind, der Plug ausgehärtet und gezogen. Kein dunkles Board liegt in der Sonne; ein Ventil ist vor dem Wasser zu.",
  "After the first surf: look for dings, along the edges of the boxes and about the leash plug; what shows foam dries before it is closed.":
    "Nach dem ersten Surf: nach Dellen sehen, an den Rändern der Kästen und um den Leashplug; was Schaum zeigt, trocknet, bevor es geschlossen wird.",
  "Deck up. Film left after the last paper, in micrometres; between rail and flat it is drawn evenly over the lap's width.":
    "Deck oben. Film nach dem letzten Papier, in Mikrometern; zwischen Rail und Fläche gleichmäßig über die Breite des Laps gezeichnet.",
  "Ruled aslant: through.": "Schräg schraffiert: durch.",
  Papers: "Papiere",
  "Sanded through": "Durchgeschliffen",
  "{1}, film left": "{1}, Film, der bleibt",
  "The deck with the film that the papers leave; the figures by zone stand in the table below.":
    "Das Deck mit dem Film, den die Papiere lassen; die Zahlen je Zone stehen in der Tabelle darunter.",
  "Hands on, all papers:": "Handarbeit, alle Papiere:",
  "as US {1}": "wie US {1}",
  "discs: {1} ": "Teller: {1} ",
  "sheets: {1}": "Bögen: {1}",
  Face: "Seite des Boards",
  Side: "Hälfte",
  "From the tail": "Vom Tail",
  "From the centreline": "Von der Mittellinie",
  Shows: "Zu sehen",
  "Size across": "Größe",
  "grain, µm": "Korn, µm",
  "under the back foot": "unterm hinteren Fuß",
  "left rail": "linke Rail",
  "right rail": "rechte Rail",
  "lap on the deck": "Lap auf dem Deck",
  "lap on the bottom": "Lap auf der Unterseite",
  "tail edge": "Tailkante",
  "nose edge": "Nosekante",
  "over the boxes": "über den Kästen",
  "patches lap {1} over sound glass, each next one {2} farther, fill coat {3} past them":
    "Flicken liegen {1} auf heilem Glas, jeder nächste {2} weiter, Hotcoat {3} darüber hinaus",
  "how far they lap was not given": "wie weit sie überlappen, wurde nicht angegeben",
  "Repair {1}: {2} on the {3} of the {4}, {5} from the tail, {6} across":
    "Reparatur {1}: {2}, Seite {3}, {4}, {5} vom Tail, {6} groß",
  "{1}, {2} across": "{1}, {2} Durchmesser",
  "Done.": "Fertig.",
  "Keep water off. Let the foam dry {1} in moving air, the spot upwards and open.":
    "Kein Wasser dran. Den Schaum {1} in bewegter Luft trocknen lassen, die Stelle nach oben und offen.",
  "Feather the edge {1} out by hand, no step left; wipe the dust off dry.":
    "Den Rand von Hand {1} nach außen ausschleifen, ohne Stufe; Staub trocken abwischen.",
  "Stop sanding: the low spot is dulled by hand with a pad, and not chased.":
    "Schleifen beenden: die Senke wird von Hand mit dem Pad mattiert und nicht gejagt.",
  "Sand it level by hand once it is hard; the board is not for water until then.":
    "Von Hand ebenschleifen, wenn es hart ist; bis dahin darf das Board nicht ins Wasser.",
  "Patch resin": "Harz für die Flicken",
  "Fill coat": "Hotcoat",
  "{1}, {2}: mix {3}; the dose is not known.": "{1}, {2}: {3} anmischen; die Dosis ist nicht bekannt.",
  "{1}, {2}: mix {3} and {4} ({5}) of hardener; the place takes {6}.":
    "{1}, {2}: {3} und {4} ({5}) Härter mischen; die Stelle braucht {6}.",
};
