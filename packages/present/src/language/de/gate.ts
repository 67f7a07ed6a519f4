/** The checks before the router. */
export const GATE: Readonly<Record<string, string>> = {
  "the cant block of the {1} fins leans {2}, for {3}: lean it {4} {5}":
    "der Cant-Block der Finnen {1} neigt {2} statt {3}: um {4} {5} neigen",
  "{1}; as it stands {2} of foam is left over it": "{1}; so bleiben {2} Schaum darüber",
  "the depth stop for the {1} fin's box stands at {2} from {3}, for {4}: set it {5} {6}":
    "der Tiefenanschlag für den Kasten der Finne {1} steht auf {2} ab {3} statt {4}: {5} {6} einstellen",
  "the {1} fin's box stands {2} {3} {4}, for {5} above it: set the depth stop {6} {7}":
    "der Kasten der Finne {1} steht {2} {3} {4} statt {5} darüber: den Tiefenanschlag {6} {7} einstellen",
  "it is not said what figures it was made for, so it does not count: make it again for these":
    "für welche Werte sie gemacht wurde, fehlt, also zählt sie nicht: mit diesen Werten noch einmal machen",
  "it was made for {1}: make it again": "sie galt für {1}: noch einmal machen",
  "{1}, now {2}": "{1}, jetzt {2}",
  "a pocket {1} long, now {2}": "eine Tasche {1} lang, jetzt {2}",
  "a pocket {1} wide, now {2}": "eine Tasche {1} breit, jetzt {2}",
  "a pocket {1} deep, now {2}": "eine Tasche {1} tief, jetzt {2}",
  "a base of {1}, now {2}": "eine Basis von {1}, jetzt {2}",
  "a cant of {1}, now {2}": "einen Cant von {1}, jetzt {2}",
  "Bottom up": "Unterseite oben",
  "Nose away": "Nose von dir weg",
  "LEFT named": "LINKS benannt",
  String: "Schnur",
  Diagonals: "Diagonalen",
  "Both marks": "Beide Marken",
  "Both sides alike": "Beide Seiten gleich",
  "Cant block": "Cant-Block",
  "Box tried on scrap": "Kasten am Reststück probiert",
  "Depth stop": "Tiefenanschlag",
  "Proud height": "Überstand",
  "Slots taped": "Schlitze abgeklebt",
  "Base fits": "Basis passt",
  "this reading is no number, so it is left aside": "diese Ablesung ist keine Zahl und bleibt außer Acht",
  "there is no mark for a fin named {1} to hold this reading against":
    "für eine Finne {1} gibt es keine Marke zum Vergleich",
  "the {1} fin stands on the centreline, and this is read of a fin beside it":
    "Finne {1} steht auf der Mittellinie, und dies wird an einer Finne daneben gelesen",
  "the {1} fin is glassed on, so there is no box to read this of":
    "Finne {1} ist anlaminiert, es gibt also keinen Kasten, an dem man das lesen kann",
  "no size is given for the {1} fin's box, so there is nothing to hold this reading against":
    "für den Kasten der Finne {1} ist keine Größe angegeben, also nichts zum Vergleich",
  "from {1} to the {2} marks of the {3} fins the left diagonal is {4} too {5} against the right: measure both marks again from the tail and from the centreline, since one of them has slipped":
    "von {1}: die linke Diagonale (Finnen {3}, {2} Marke) ist {4} zu {5} gegen die rechte: beide Marken noch einmal von Tail und Mittellinie messen, eine ist verrutscht",
  "the string of the {1} fin crosses {2} too far {3} beside the nose, which is {4} too {5} toe: move its leading mark {6} {7}":
    "die Schnur der Finne {1} kreuzt neben der Nose {2} zu weit {3}, das sind {4} zu {5} Vorspur: die vordere Marke {6} {7} versetzen",
  'the depth stops are set from the {1}, and with "boxes": "{2}" the router stands on the {3}: set them from the surface that will be there':
    'die Tiefenanschläge sind ab {1} eingestellt, und bei "boxes": {2} steht die Fräse auf {3}: von der Oberfläche aus einstellen, die dann da ist',
  "{1} is confirmed, and this set has no such check":
    "{1} ist bestätigt, und dieser Satz hat keine solche Prüfung",
  "{1} is read, not confirmed: give its figure": "{1} wird abgelesen, nicht bestätigt: den Wert angeben",
  "no cut yet": "noch nicht fräsen",
  "no glass yet": "noch nicht laminieren",
  "before the router": "vor der Oberfräse",
  "before the fins are glassed on": "vor dem Anlaminieren der Finnen",
  "every check {1} is good: go": "alle Prüfungen {1} sind gut: los",
  "{1}: the blockers of the fins come first": "{1}: zuerst, was die Finnen aufhält",
  "{1}: {2} of the checks {3} {4} out, first {5}": "{1}: von den Prüfungen {3} {4} {2} daneben, zuerst {5}",
  "{1}: {2} of the checks {3} {4} still to be made, first {5}":
    "{1}: von den Prüfungen {3} {4} {2} noch zu machen, zuerst {5}",
  "Measure both marks from the tail and from the centreline, and enter them as set.":
    "Beide Marken vom Tail und von der Mittellinie messen und als gesetzt eintragen.",
  "Hold the two sides as measured against each other: left less right of what each is out.":
    "Beide Seiten wie gemessen vergleichen: Abweichung links minus rechts.",
  "Stretch a string over the middle of both marks to the square at the nose tip, and read how far from the centreline it crosses.":
    "Eine Schnur über die Mitte beider Marken bis zum Winkel an der Nosespitze spannen und ablesen, wie weit von der Mittellinie sie kreuzt.",
  "Cut the pocket in scrap foam with the frame, bit and stop that will be used, and try the box in it.":
    "Die Tasche mit Rahmen, Fräser und Anschlag, die dann gebraucht werden, in ein Reststück Schaum fräsen und den Kasten darin probieren.",
  "Stand the fin on its marks against the cant block: its base lies on the bottom all along, or is scribed to it.":
    "Die Finne auf ihren Marken an den Cant-Block stellen: die Basis liegt überall auf der Unterseite auf oder wird angepasst.",
  "Hold the tape taut from the nose tip to the trailing mark on the left, then on the right. It tells a mark that slipped along the board, and hardly one that slipped across it.":
    "Das Maßband straff von der Nosespitze zur hinteren Marke links halten, dann rechts. Das zeigt eine längs verrutschte Marke und kaum eine quer verrutschte.",
  "Hold the tape taut from the nose tip to the leading mark on the left, then on the right. It tells a mark that slipped along the board, and hardly one that slipped across it.":
    "Das Maßband straff von der Nosespitze zur vorderen Marke links halten, dann rechts. Das zeigt eine längs verrutschte Marke und kaum eine quer verrutschte.",
  "Hold the tape taut from the tail's middle to the trailing mark on the left, then on the right. It tells a mark that slipped along the board or across it.":
    "Das Maßband straff von der Tailmitte zur hinteren Marke links halten, dann rechts. Das zeigt eine längs oder quer verrutschte Marke.",
  "Hold the tape taut from the tail's middle to the leading mark on the left, then on the right. It tells a mark that slipped along the board or across it.":
    "Das Maßband straff von der Tailmitte zur vorderen Marke links halten, dann rechts. Das zeigt eine längs oder quer verrutschte Marke.",
  "Hold the tape taut from the crotch to the trailing mark on the left, then on the right. It tells a mark that slipped along the board or across it.":
    "Das Maßband straff von der Kerbe zur hinteren Marke links halten, dann rechts. Das zeigt eine längs oder quer verrutschte Marke.",
  "Hold the tape taut from the crotch to the leading mark on the left, then on the right. It tells a mark that slipped along the board or across it.":
    "Das Maßband straff von der Kerbe zur vorderen Marke links halten, dann rechts. Das zeigt eine längs oder quer verrutschte Marke.",
  "Lay the board on its deck.": "Das Board aufs Deck legen.",
  "Stand at the tail with the nose pointing away from you.": "Ans Tail stellen, die Nose zeigt von dir weg.",
  "Say LEFT and RIGHT aloud and write them on the board: bottom up and nose away, the surfer's left is on your right hand.":
    "LINKS und RECHTS laut sagen und aufs Board schreiben: Unterseite oben und Nose weg, liegt das Links des Surfers an deiner rechten Hand.",
  "Set the stop with the router standing on the foam, and read from that surface to the bit's end.":
    "Den Anschlag mit der Fräse auf dem Schaum einstellen und von dieser Oberfläche bis zur Fräserspitze messen.",
  "Set the stop with the router standing on the laminate, and read from that surface to the bit's end.":
    "Den Anschlag mit der Fräse auf dem Laminat einstellen und von dieser Oberfläche bis zur Fräserspitze messen.",
  "Set the stop with the router standing on the fill coat, and read from that surface to the bit's end.":
    "Den Anschlag mit der Fräse auf dem Hotcoat einstellen und von dieser Oberfläche bis zur Fräserspitze messen.",
  "In the trial pocket, read how far the box stands above the foam; it is sanded flush later, and one below the surface cannot be.":
    "In der Probetasche ablesen, wie weit der Kasten über dem Schaum steht; er wird später bündig geschliffen, ein versenkter kann das nicht.",
  "In the trial pocket, read how far the box stands above the laminate; it is sanded flush later, and one below the surface cannot be.":
    "In der Probetasche ablesen, wie weit der Kasten über dem Laminat steht; er wird später bündig geschliffen, ein versenkter kann das nicht.",
  "In the trial pocket, read how far the box stands above the fill coat; it is sanded flush later, and one below the surface cannot be.":
    "In der Probetasche ablesen, wie weit der Kasten über dem Hotcoat steht; er wird später bündig geschliffen, ein versenkter kann das nicht.",
  "Set a bevel gauge on the cant block: it leans the router, or the fin, from the square to the bottom.":
    "Eine Schmiege an den Cant-Block legen: er neigt die Fräse oder die Finne aus der Senkrechten zur Unterseite.",
  "Tape the slots and screw holes of every box, so that no resin runs in.":
    "Schlitze und Schraublöcher jedes Kastens abkleben, damit kein Harz hineinläuft.",
};
