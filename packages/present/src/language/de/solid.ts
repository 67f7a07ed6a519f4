/** The board as a solid in colour. */
export const SOLID: Readonly<Record<string, string>> = {
  "The solid: left against right in colour": "Der Körper: links gegen rechts in Farbe",
  "The solid: thickness of the skin in colour": "Der Körper: Dicke der Haut in Farbe",
  "The solid: film left in colour": "Der Körper: verbleibender Film in Farbe",
  "Close the solid": "Den Körper schließen",
  "In colour": "In Farbe",
  "left against right": "links gegen rechts",
  "film left": "verbleibender Film",
  "thickness of the skin": "Dicke der Haut",
  "This browser draws no solids (WebGL is missing or turned off): the table has every value.":
    "Dieser Browser zeichnet keine Körper (WebGL fehlt oder ist aus): Die Tabelle hat jeden Wert.",
  "Touch the board for the number there.": "Das Board berühren: Die Zahl dort steht dann hier.",
  "whole board": "ganzes Board",
  larger: "größer",
  smaller: "kleiner",
  "The board as a solid. Arrow keys turn it, with Shift they move it, plus and minus make it larger and smaller; the number is of the middle. A table stands below.":
    "Das Board als Körper. Pfeiltasten drehen es, mit der Umschalttaste verschieben sie es, Plus und Minus machen es größer und kleiner; die Zahl gilt für die Mitte. Darunter steht eine Tabelle.",
  "{1}, {2} from the tail: both sides are alike.": "{1}, {2} vom Tail: Beide Seiten sind gleich.",
  "{1}, {2} from the tail: {3} fuller than the other side.":
    "{1}, {2} vom Tail: {3} voller als die andere Seite.",
  "{1}, {2} from the tail: {3} narrower than the other side.":
    "{1}, {2} vom Tail: {3} schmaler als die andere Seite.",
  "{1}, {2} from the tail: through, {3} short.": "{1}, {2} vom Tail: durch, {3} zu wenig.",
  "{1}, {2} from the tail: {3} of film left.": "{1}, {2} vom Tail: {3} Film übrig.",
  "{1}, {2} from the tail: skin {3}, {4} of it laminate.": "{1}, {2} vom Tail: Haut {3}, davon {4} Laminat.",
  "deck, left": "Deck, links",
  "deck, right": "Deck, rechts",
  "bottom, left": "Unterseite, links",
  "bottom, right": "Unterseite, rechts",
  "through: no film left": "durch: kein Film übrig",
  "{1} to {2} µm": "{1} bis {2} µm",
  "{1} to {2} mm": "{1} bis {2} mm",
  "more than {1} mm narrower": "mehr als {1} mm schmaler",
  "more than {1} mm fuller": "mehr als {1} mm voller",
  "alike, within {1} mm": "gleich, innerhalb {1} mm",
  "{1} to {2} mm narrower": "{1} bis {2} mm schmaler",
  "{1} to {2} mm fuller": "{1} bis {2} mm voller",
  "Each half is coloured by how much fuller or narrower it is than the other half at the same distance from the tail, stringer to rail.":
    "Jede Hälfte hat die Farbe danach, wie viel voller oder schmaler sie ist als die andere im selben Abstand vom Tail, vom Stringer bis zur Rail.",
  "Film after the last paper: the plan's numbers at the rails and on the flats, drawn evenly between over the lap's width. The boxes' own stand in the table by zone.":
    "Film nach dem letzten Papier: die Zahlen des Plans an den Rails und auf den Flächen, dazwischen über die Breite des Laps gleichmäßig gezeichnet. Die der Boxen stehen in der Tabelle nach Zonen.",
  "Laminate, fill and gloss together. Each zone's number stands for all of it: the rail is drawn as the outer quarter of the lap.":
    "Laminat, Hotcoat und Gloss zusammen. Die Zahl jeder Zone steht für die ganze Zone: Die Rail ist als äußeres Viertel des Laps gezeichnet.",
  "The same as a table": "Dasselbe als Tabelle",
  "Film left at the rails": "Verbleibender Film an den Rails",
  "Each side against the other": "Jede Seite gegen die andere",
  "{1} narrower": "{1} schmaler",
  "{1} fuller": "{1} voller",
  "through, {1} short": "durch, {1} zu wenig",
  "Thickness of the skin": "Dicke der Haut",
};
