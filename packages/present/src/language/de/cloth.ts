/** The cloth's full-size template. */
export const CLOTH: Readonly<Record<string, string>> = {
  "One to one.": "Maßstab eins zu eins.",
  Cloth: "Gewebe",
  Pieces: "Stücke",
  face: "Seite",
  "along the warp": "längs der Kette",
  warp: "Kette",
  "tail end": "Tailende",
  "nose end": "Noseende",
  "stringer line": "Stringerlinie",
  "stringer line: fold here": "Stringerlinie: hier falten",
  "cut {1} of {2}": "{1} aus {2} schneiden",
  "lap {1} all round": "Überlappung {1} ringsum",
  "over the fin and its foot, warp along the base": "über die Finne und ihren Fuß, Kette längs der Basis",
  "lies {1} to {2} from the tail, by tape": "liegt {1} bis {2} ab Tail, mit dem Maßband",
  "Nose end up; deck pieces deck up, bottom pieces bottom up.":
    "Noseende oben; Stücke fürs Deck mit dem Deck nach oben, für die Unterseite mit der Unterseite nach oben.",
  "Full layers are drawn as they come off the roll. The dashed line is where the flat pattern lies in them, about where they are trimmed on the board; marking them by their sizes needs no paper.":
    "Ganze Lagen sind so gezeichnet, wie sie von der Rolle kommen. Die gestrichelte Linie zeigt, wo der flache Schnitt darin liegt, etwa dort, wo auf dem Board abgeschnitten wird; nach ihren Maßen angezeichnet brauchen sie kein Papier.",
  "Patches are drawn to their own edge: they have no lap and end at the rail's widest line.":
    "Patches sind bis zu ihrem eigenen Rand gezeichnet: Sie haben keine Überlappung und enden an der breitesten Linie der Rail.",
  "Lay the warp along the arrow, on clean paper or card, never on the floor.":
    "Die Kette längs des Pfeils legen, auf sauberes Papier oder Karton, nie auf den Boden.",
  "Mark the stringer line at both ends of each layer before the paper is lifted: it is the fold, and goes on the stringer. Cut the thick line, then the notches; stop each at its root.":
    "Die Stringerlinie an beiden Enden jeder Lage anzeichnen, bevor das Papier abgenommen wird: Sie ist der Falz und kommt auf den Stringer. Die dicke Linie schneiden, dann die Kerben, jede nur bis zu ihrem Grund.",
  "Mark the stringer line at both ends of each layer: it is the fold, and goes on the stringer. Notch the lap on the board.":
    "Die Stringerlinie an beiden Enden jeder Lage anzeichnen: Sie ist der Falz und kommt auf den Stringer. Die Überlappung auf dem Board einkerben.",
  "Write each piece's name on tape at its nose end, and which side is up, and keep them flat or rolled, in the order they are laid.":
    "Den Namen jedes Stücks auf Klebeband an sein Noseende schreiben, dazu, welche Seite oben liegt; flach oder gerollt aufbewahren, in der Reihenfolge des Legens.",
  "Cut glass pricks and sheds fibres: sleeves and gloves, a particle filter, the floor wiped, not swept dry. Shears and wheels cut: other hand out of the way.":
    "Geschnittenes Glas sticht und verliert Fasern: lange Ärmel und Handschuhe, Partikelfilter, den Boden wischen, nicht trocken fegen. Scheren und Rollmesser schneiden: die andere Hand aus dem Weg.",
};
