/** Wie Gewebe, Schichten und Rollen zustande kommen. */
export const WHY_GLASS: Readonly<Record<string, string>> = {
  "true surface of the face down to the rail's widest line, rocker included, and half of the tail's flat end":
    "wahre Oberfläche der Seite bis zur breitesten Linie der Rail, mit Rocker und der Hälfte des flachen Tailendes",
  "length of the face on the centreline from tail to nose, its curve followed":
    "Länge der Seite auf der Mittellinie vom Tail zur Nose, ihrer Kurve nach",
  "across the face along the skin where it is widest, from widest line to widest line":
    "quer über die Seite entlang der Haut an der breitesten Stelle, von breitester Linie zu breitester Linie",
  "from the rail's widest line around to the cloth's edge, as the board file or the default has it":
    "von der breitesten Linie der Rail herum bis zur Kante des Gewebes, wie die Board-Datei oder die Vorgabe es hat",
  "length of the rail's widest line all the way round: both rails, flat ends and a swallow's notch":
    "Länge der breitesten Linie der Rail ringsum: beide Rails, flache Enden und die Kerbe eines Swallowtails",
  "cured resin to one of glass by mass: your own, or what cloth squeegeed by hand holds":
    "ausgehärtetes Harz auf einen Teil Glas nach Masse: das eigene, oder was von Hand abgezogenes Gewebe hält",
  "{1} of about 90 %: {2}": "{1} von etwa 90 %: {2}",
  "low end of a band": "unteres Ende eines Bands",
  "high end of a band": "oberes Ende eines Bands",
  "cut length along the warp: the face's arc, its share of a flat end and a lap at both ends, and what hangs over where the cloth is rolled out; for a patch that of its flat shape":
    "Zuschnittlänge entlang der Kette: der Bogen der Seite, ihr Anteil am flachen Ende und die Überlappung an beiden Enden, und was beim Ausrollen überhängt; beim Patch die seiner flachen Form",
  "cut width across the warp: the face's widest girth and both laps; for a patch that of its flat shape":
    "Zuschnittbreite quer zur Kette: der größte Umfang der Seite und beide Überlappungen; beim Patch die seiner flachen Form",
  "surface that the cloth lies on: its face, the lap strip around the rail and what lies double at a seam; for a patch girth times arc":
    "Oberfläche, auf der das Gewebe liegt: ihre Seite, der Überlappungsstreifen um die Rail und was an einer Naht doppelt liegt; beim Patch Umfang mal Bogen",
  "what lies double along the stringer where the roll is narrower than the piece":
    "was entlang des Stringers doppelt liegt, wo die Rolle schmaler ist als das Stück",
  "the strip beyond the rail's widest line; its overlap with itself at nose and tail is counted as cloth":
    "der Streifen jenseits der breitesten Linie der Rail; wo er sich an Nose und Tail selbst überlappt, zählt er als Gewebe",
  "dry cloth of this piece": "trockenes Gewebe dieses Stücks",
  "resin that this piece holds once cured; foam, cup and squeegee stand with the coat":
    "Harz, das dieses Stück ausgehärtet hält; Schaum, Becher und Rakel stehen bei der Schicht",
  "where the patch begins, along the bottom from the tail":
    "wo der Patch beginnt, entlang der Unterseite ab Tail",
  "where the patch ends, along the bottom from the tail":
    "wo der Patch endet, entlang der Unterseite ab Tail",
  "the warp against the stringer; nought where not given":
    "die Kette gegen den Stringer; null, wo nichts angegeben ist",
  "a point of the flat piece, along the warp": "ein Punkt des flachen Stücks, entlang der Kette",
  "a point of the flat piece, across the warp": "ein Punkt des flachen Stücks, quer zur Kette",
  "length of the flat piece along the warp": "Länge des flachen Stücks entlang der Kette",
  "width of the flat piece across the warp": "Breite des flachen Stücks quer zur Kette",
  "area of the flat piece, notches not taken off; it differs from the surface it covers by what the cloth must shear on round rails and by the lap's corners":
    "Fläche des flachen Stücks, Einschnitte nicht abgezogen; von der bedeckten Oberfläche weicht sie um das ab, was sich Gewebe auf runden Rails verziehen muss, und um die Ecken der Überlappung",
  "once round the flat piece: what is cut, or trimmed on the board":
    "einmal um das flache Stück: was geschnitten oder am Board getrimmt wird",
  "how the piece may be turned on the roll without its warp leaving its line":
    "wie das Stück auf der Rolle gedreht werden darf, ohne dass seine Kette aus ihrer Richtung kommt",
  "where the notch meets the rail, along the bottom from the tail":
    "wo der Einschnitt auf die Rail trifft, entlang der Unterseite ab Tail",
  "the notch's root, along the warp": "der Grund des Einschnitts, entlang der Kette",
  "the notch's root, across the warp": "der Grund des Einschnitts, quer zur Kette",
  "the notch's mouth, along the warp": "die Öffnung des Einschnitts, entlang der Kette",
  "the notch's mouth, across the warp": "die Öffnung des Einschnitts, quer zur Kette",
  "width of the wedge at its mouth": "Breite des Keils an seiner Öffnung",
  "mixed resin to have in the cups for this coat":
    "gemischtes Harz, das für diese Schicht in den Bechern sein muss",
  "what stays on the board once the coat is hard, before sanding":
    "was auf dem Board bleibt, wenn die Schicht hart ist, vor dem Schleifen",
  "surface under the coat: a laminate has its lap strip with it, a poured coat ends at the widest line, boxes count their mouths":
    "Oberfläche unter der Schicht: ein Laminat hat seinen Überlappungsstreifen dabei, eine gegossene Schicht endet an der breitesten Linie, Kästen zählen ihre Öffnungen",
  "filler to have ready for the whole mix": "Füllstoff, der für die ganze Mischung bereitstehen muss",
  "filler that stays on the board": "Füllstoff, der auf dem Board bleibt",
  "one part of the coat's resin": "ein Teil des Harzes der Schicht",
  "glass over one square metre here: the face's layers, laps of the other face where they lie, patches that cover the spot":
    "Glas über einem Quadratmeter hier: die Lagen der Seite, Überlappungen der anderen, wo sie liegen, Patches, die die Stelle decken",
  "skin over one square metre here, cured: glass and the resin it holds, the poured coats left out":
    "Haut über einem Quadratmeter hier, ausgehärtet: Glas und das Harz, das es hält, ohne die gegossenen Schichten",
  "thickness of the cured laminate without voids; resin soaked into the foam lies beneath it":
    "Dicke des ausgehärteten Laminats ohne Poren; in den Schaum gezogenes Harz liegt darunter",
  "share of the laminate's volume that is glass": "Anteil des Glases am Volumen des Laminats",
  "film of the fill coat before sanding; thinner on laps and rails, where it runs off":
    "Film des Hotcoats vor dem Schleifen; dünner auf Überlappungen und Rails, wo er abläuft",
  "film of the gloss coat; nought where none is planned": "Film des Gloss; null, wo keiner geplant ist",
  "the box's outer block, or the plug's cylinder":
    "der äußere Block des Kastens, oder der Zylinder des Plugs",
  "what is cut out of the board: the body with a gap for resin beside and beneath it":
    "was aus dem Board geschnitten wird: der Körper mit einem Spalt für Harz daneben und darunter",
  "cloth of the full layers and the resin it holds once cured; patches and poured coats are the same in all":
    "Gewebe der vollen Lagen und das Harz, das es ausgehärtet hält; Patches und gegossene Schichten sind in allen gleich",
  "how stiff the board is in bending where it is thickest, over the own schedule: skins, laps, patches there, foam and stringer; shear, twist and the rest of the length left out":
    "wie biegesteif das Board an der dicksten Stelle ist, gegen den eigenen Aufbau: Häute, Überlappungen, Patches dort, Schaum und Stringer; Schub, Verdrehung und die übrige Länge bleiben weg",
  "load along the board at which the {1}'s skin folds into waves, over that of the own schedule; dents, voids and a skin that is not flat are in k alone, which falls out of the ratio":
    "Last längs des Boards, bei der sich die Haut ({1}) in Wellen legt, gegen die des eigenen Aufbaus; Dellen, Poren und eine unebene Haut stecken allein in k, das aus dem Verhältnis fällt",
  "width of the roll, as given in the shop's part of the board file or as it is usually sold":
    "Breite der Rolle, wie im Werkstattteil der Board-Datei angegeben oder wie sie meist verkauft wird",
  "what to buy: all cuts one after another; {1}": "was zu kaufen ist: alle Schnitte hintereinander; {1}",
  "longest piece first, each straight off the roll; a shorter one beside those already cut, where its box clears their edges":
    "längstes Stück zuerst, jedes gerade von der Rolle; ein kürzeres neben schon geschnittene, wo sein Kasten deren Kanten freilässt",
  "share of the bought cloth that ends up on the board":
    "Anteil des gekauften Gewebes, der auf das Board kommt",
  "price of a metre off the roll, in the shop's own money":
    "Preis eines Meters von der Rolle, im Geld der Werkstatt",
  "what the length to buy costs, in the shop's own money":
    "was die zu kaufende Länge kostet, im Geld der Werkstatt",
  "where the cut begins, from the roll's free end": "wo der Schnitt beginnt, ab dem freien Ende der Rolle",
  "how much comes off the roll: as long as the longest piece on it":
    "wie viel von der Rolle kommt: so lang wie das längste Stück darauf",
  "where the piece begins along the roll": "wo das Stück längs der Rolle beginnt",
  "how far the piece lies from the roll's edge": "wie weit das Stück von der Kante der Rolle liegt",
  "the piece's box along the roll, what hangs over for trimming with it":
    "der Umriss des Stücks längs der Rolle, mit dem, was zum Trimmen überhängt",
  "the piece's box across the roll": "der Umriss des Stücks quer zur Rolle",
  "how the flat piece is turned on the roll, the warp along it":
    "wie das flache Stück auf der Rolle gedreht ist, die Kette längs",
  "where the two strips meet, from the stringer": "wo die zwei Streifen zusammentreffen, ab Stringer",
  "how far the two strips lie over each other": "wie weit die zwei Streifen übereinander liegen",
  "the width of roll on which the piece goes without a seam":
    "die Breite der Rolle, auf die das Stück ohne Naht passt",
};
