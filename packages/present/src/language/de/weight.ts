/** What the board weighs. */
export const WEIGHT: Readonly<Record<string, string>> = {
  "the weight waits for {1}": "fürs Gewicht fehlt noch: {1}",
  "the shaped blank must weigh more than its stringer, about {1}":
    "der geshapte Blank muss mehr wiegen als sein Stringer, etwa {1}",
  "the sanding plan is not built yet; a sanded board comes out lighter by part of its fill coat":
    "der Schleifplan ist noch nicht gebaut; geschliffen wird das Board um einen Teil des Hotcoats leichter",
  "what sanding takes off is left in": "was das Schleifen abnimmt, ist noch dabei",
  "the weighed blank less its stringer": "der gewogene Blank ohne Stringer",
  "the scale is nearer than volume times density; it may be {1} off":
    "die Waage ist genauer als Volumen mal Dichte; sie kann um {1} daneben liegen",
  "boxes are described by footprint and depth only":
    "Kästen sind nur durch Grundfläche und Tiefe beschrieben",
  "about half of a box's block is plastic": "etwa die Hälfte des Kastenblocks ist Kunststoff",
  "no deck fullness would make the two agree: look at the scale, the foam's density or the readings":
    "keine Fülle des Decks bringt beide überein: Waage, Schaumdichte oder Ablesungen prüfen",
  "a deck fullness of {1} would make the two agree; it is not applied":
    "eine Fülle des Decks von {1} brächte beide überein; sie wird nicht angewendet",
  "by the scale the blank holds {1} ({2} to {3}), by its shape {4}; {5}":
    "nach der Waage fasst der Blank {1} ({2} bis {3}), nach dem Shape {4}; {5}",
  "the board file names none": "die Board-Datei nennt keinen",
  "no stringer": "kein Stringer",
  "no wood {1} is known; the nearest are {2}": "kein Holz {1} bekannt; am nächsten sind {2}",
  "a stringer's thickness lies between nought and {1}; it is usually {2} to {3}":
    "die Dicke eines Stringers liegt zwischen null und {1}; üblich sind {2} bis {3}",
  "no wood was named": "kein Holz genannt",
  "sea water of {1}, the volume of the shaped blank": "Meerwasser mit {1}, das Volumen des geshapten Blanks",
  "left out: the skin's own thickness, fins, wax and leash, the wetsuit's mass and lift, the part of the rider that is under water, and the lift of a moving board":
    "nicht gerechnet: Dicke der Haut, Finnen, Wachs und Leash, Masse und Auftrieb des Neoprens, der Teil des Fahrers unter Wasser und der Auftrieb in Fahrt",
  part: "Teil",
  "board after": "Board nach",
  "Just under still sea water it pushes {1} of water aside, weighs {2} of that itself and carries {3} ({4} to {5}).":
    "Knapp unter stillem Meerwasser verdrängt es {1} Wasser, wiegt davon selbst {2} und trägt {3} ({4} bis {5}).",
  "A rider of {1} is {2} more than that: standing still, board and rider sink until so much of the rider is under water.":
    "Ein Fahrer von {1} ist {2} schwerer als das: im Stand sinken Board und Fahrer, bis so viel vom Fahrer unter Wasser ist.",
  "A rider of {1} leaves {2} in hand.": "Bei einem Fahrer von {1} bleiben {2} übrig.",
  "Skin, fins, wetsuit and the lift of a moving board are left out.":
    "Haut, Finnen, Neopren und der Auftrieb in Fahrt sind nicht gerechnet.",
};
