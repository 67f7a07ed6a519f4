/** Formeln vom Gewebe bis zu den Tagen, mit Worten darin. */
export const WHY_MORE_FORMULAS: Readonly<Record<string, string>> = {
  "as given": "wie angegeben",
  "as given, ± {1} %; without: {2}, band {3} to {4}": "wie angegeben, ± {1} %; ohne: {2}, Band {3} bis {4}",
  "{1}; each input alone at its ends, moves summed in squares":
    "{1}; jede Eingabe allein an ihren Enden, Änderungen quadratisch summiert",
  "pattern's length (+ 2 overhang)": "Länge des Schnittmusters (+ 2 Überhang)",
  "pattern's width": "Breite des Schnittmusters",
  "A = A_face + lap × rail line + seam, or Σ girth × Δs":
    "A = A_Seite + Überlappung × Raillinie + Naht, oder Σ Umfang × Δs",
  "overlap × pattern's length; nought where the piece fits its roll":
    "Überlappung × Länge des Schnittmusters; null, wo das Stück auf die Rolle passt",
  "lap × rail line": "Überlappung × Raillinie",
  "m = areal mass × area": "m = Flächengewicht × Fläche",
  "m = ratio × cloth": "m = Verhältnis × Gewebe",
  "as given; within a millimetre of the nose it ends at the nose":
    "wie angegeben; bis auf einen Millimeter an der Nose endet er an der Nose",
  "along: ∫ √(1 + z′²) dx of the face's centreline; across: the section's arc from the centreline to the widest line; then out by the lap, square to the edge":
    "längs: ∫ √(1 + z′²) dx der Mittellinie der Seite; quer: der Bogen des Querschnitts von der Mittellinie zur breitesten Linie; dann um die Überlappung hinaus, rechtwinklig zur Kante",
  "max along − min along": "Größtes längs − Kleinstes längs",
  "max across − min across": "Größtes quer − Kleinstes quer",
  "Σ √(Δalong² + Δacross²)": "Σ √(Δlängs² + Δquer²)",
  "0 and 180°; for a patch of plain cloth without an angle of its own 90 and 270° too":
    "0 und 180°; bei einem Patch aus Leinwandgewebe ohne eigenen Winkel auch 90 und 270°",
  "equal shares of the lap's edge round a stretch where 2 × lap × turn for each metre is more than cloth gathers":
    "gleiche Anteile der Kante der Überlappung um einen Abschnitt, wo 2 × Überlappung × Drehung je Meter mehr ist, als Gewebe sich staucht",
  "edge + short × normal": "Kante + Abstand × Normale",
  "edge + lap × normal": "Kante + Überlappung × Normale",
  "2 × lap × turn ÷ number of notches, at most the widest in a curve; nought for a slit":
    "2 × Überlappung × Drehung ÷ Zahl der Kerben, höchstens die breiteste in einer Kurve; null bei einem Schlitz",
  "sum of the coat's terms": "Summe der Anteile der Schicht",
  "in glass + in laps + in corners + into foam + around boxes + film + weave":
    "im Glas + in Überlappungen + in Ecken + in den Schaum + um Kästen + Film + Gewebestruktur",
  "A_face (+ lap × rail line), or Σ length × width":
    "A_Seite (+ Überlappung × Raillinie), oder Σ Länge × Breite",
  "share × mixed resin": "Anteil × gemischtes Harz",
  "share × kept resin": "Anteil × behaltenes Harz",
  "named with the inputs": "bei den Eingaben genannt",
  "Σ areal mass": "Σ Flächengewicht",
  "Σ areal mass × (1 + r)": "Σ Flächengewicht × (1 + r)",
  "place share × (poured − run-off − styrene − weave) / cured density; where the face's fill coat was weighed, as in weighins.zones":
    "Anteil der Stelle × (gegossen − Ablauf − Styrol − Gewebestruktur) / ausgehärtete Dichte; wo der Hotcoat der Seite gewogen ist, wie in weighins.zones",
  "place share × (poured − run-off − styrene) / cured density":
    "Anteil der Stelle × (gegossen − Ablauf − Styrol) / ausgehärtete Dichte",
  "length × width × depth, or π/4 × diameter² × depth":
    "Länge × Breite × Tiefe, oder π/4 × Durchmesser² × Tiefe",
  "(length + 2 g)(width + 2 g)(depth + g), or π/4 (diameter + 2 g)² (depth + g)":
    "(Länge + 2 g)(Breite + 2 g)(Tiefe + g), oder π/4 (Durchmesser + 2 g)² (Tiefe + g)",
  "Σ areal mass × (face + lap × rail line) × (1 + r)":
    "Σ Flächengewicht × (Seite + Überlappung × Raillinie) × (1 + r)",
  "EI = Σ E t Δs (z − z̄)² + foam + stringer; ratio = EI / EI_own":
    "EI = Σ E t Δs (z − z̄)² + Schaum + Stringer; Verhältnis = EI / EI_eigen",
  "N = k (E_skin E_foam G_foam)^⅓ t; ratio = N / N_own":
    "N = k (E_Haut E_Schaum G_Schaum)^⅓ t; Verhältnis = N / N_eigen",
  "Σ length of the cuts": "Σ Länge der Schnitte",
  "Σ flat area of the pieces ÷ (width × length)": "Σ flache Fläche der Stücke ÷ (Breite × Länge)",
  "price of a metre × length": "Preis eines Meters × Länge",
  "Σ length of the cuts before it": "Σ Länge der Schnitte davor",
  "length of the piece it is cut for": "Länge des Stücks, für das geschnitten wird",
  "first cut, and first place in it, with room for the piece's box; else a new cut":
    "erster Schnitt, und erster Platz darin, mit Raum für den Umriss des Stücks; sonst ein neuer Schnitt",
  "turned flat piece along the roll + 2 × what hangs over":
    "gedrehtes flaches Stück längs der Rolle + 2 × Überhang",
  "turned flat piece across the roll": "gedrehtes flaches Stück quer zur Rolle",
  "of the ways it may lie, the first that fits an offcut, or the shortest off the roll":
    "von den erlaubten Lagen die erste, die in einen Rest passt, oder die kürzeste von der Rolle",
  "as usual": "wie üblich",
  "width of the flat piece, turned as it may be": "Breite des flachen Stücks, gedreht wie erlaubt",
  "day's temperature; of a list the air at the calendar's hour, or in the first working hour warm enough for the resin":
    "Temperatur des Tages; aus einer Liste die Luft zur Stunde des Kalenders, oder in der ersten Arbeitsstunde, die für das Harz warm genug ist",
  "as given, else the shop's air at that hour":
    "wie angegeben, sonst die Luft der Werkstatt zu dieser Stunde",
  "c so that t_gel,low(c, T) × (1 − margin) = t_spread, c_least ≤ c ≤ c_most; none where that cannot be":
    "c so, dass t_gel,früh(c, T) × (1 − Reserve) = t_verteilen, c_min ≤ c ≤ c_max; keines, wo das nicht geht",
  "n of t = t_ref (c/c_ref)^−n exp[(E/R)(1/T − 1/T_ref)], least squares in ln(t); the kind's own where the points do not settle it":
    "n aus t = t_ref (c/c_ref)^−n exp[(E/R)(1/T − 1/T_ref)], kleinste Quadrate in ln(t); das der Art, wo die Punkte es nicht klären",
  "E of t = t_ref (c/c_ref)^−n exp[(E/R)(1/T − 1/T_ref)], least squares in ln(t); the kind's own where the points do not settle it":
    "E aus t = t_ref (c/c_ref)^−n exp[(E/R)(1/T − 1/T_ref)], kleinste Quadrate in ln(t); das der Art, wo die Punkte es nicht klären",
  "as the sheet or the builder's own cup gives it": "wie Datenblatt oder eigener Becher es gibt",
  "dull day 1, spring noon 3, summer noon 6, strong sun 9":
    "trüber Tag 1, Frühlingsmittag 3, Sommermittag 6, starke Sonne 9",
  "Bayes on ln(pace): the model's band before, each test as past one stage and not yet past the next":
    "Bayes auf ln(Tempo): davor das Band des Modells, jede Probe als über eine Stufe hinaus und noch nicht über die nächste",
  "peroxide: t_ref (c/c_ref)^−n exp[(E/R)(1/T − 1/T_ref)]; two-part: t_ref (m/m_ref)^−p exp[(E/R)(1/T − 1/T_ref)]; ends: t e^±h":
    "Peroxid: t_ref (c/c_ref)^−n exp[(E/R)(1/T − 1/T_ref)]; Zweikomponenten: t_ref (m/m_ref)^−p exp[(E/R)(1/T − 1/T_ref)]; Enden: t e^±h",
  "t_spread-by = t_gel,low × (1 − margin)": "t_verteilt-bis = t_gel,früh × (1 − Reserve)",
  "∫ dt / [t_gel(T_air(t)) × film over cup × gel times] = 1; the ends with each factor's range, in squares":
    "∫ dt / [t_gel(T_Luft(t)) × Film zu Becher × Gelzeiten] = 1; die Enden mit dem Bereich jedes Faktors, quadratisch",
  "∫ exp[(E/R)(1/T_ref − 1/T_air(t))] dt = window at T_ref, with the gel's own E; it goes on closing in the cold":
    "∫ exp[(E/R)(1/T_ref − 1/T_Luft(t))] dt = Fenster bei T_ref, mit dem E des Gelierens; es schließt sich auch in der Kälte",
  "m = coat / number of cups": "m = Schicht / Zahl der Becher",
  "base = mixed / (1 + ratio)": "Harz = gemischt / (1 + Verhältnis)",
  "hardener = mixed − base = ratio × base": "Härter = gemischt − Harz = Verhältnis × Harz",
  "V = hardener / ρ": "V = Härter / ρ",
  "V = share × base / ρ_resin; nought for laminates, boxes and epoxy":
    "V = Anteil × Harz / ρ_Harz; null bei Laminaten, Kästen und Epoxid",
  "t = number of cups before × time to spread one": "t = Zahl der Becher davor × Zeit, einen zu verteilen",
  "t = practice × (cup + per kg × mass / hands)": "t = Übung × (Becher + je kg × Masse / Hände)",
  "drops = V × drops in a millilitre": "Tropfen = V × Tropfen je Milliliter",
  "tint = share × base; nought without": "Farbe = Anteil × Harz; null ohne",
  "base + tint": "Harz + Farbe",
  "base of one cup × number of cups": "Harz eines Bechers × Zahl der Becher",
  "share × base of the master batch": "Anteil × Harz des Hauptansatzes",
  "∫ width dx over the stretch = face / number of cups":
    "∫ Breite dx über den Abschnitt = Seite / Zahl der Becher",
  "τ = ρ c V / (h A), a cylinder as tall as wide, cooled by wall and top; ends with h's range":
    "τ = ρ c V / (h A), ein Zylinder so hoch wie breit, durch Wand und oben gekühlt; Enden mit dem Bereich von h",
  "resin × 0.014 (percent of styrene)^2.275 / 1000": "Harz × 0,014 (Prozent Styrol)^2,275 / 1000",
  "last cup's hardener + gel of the film": "Härter des letzten Bechers + Gelieren des Films",
  "as published": "wie veröffentlicht",
  "Q = V_mol × ER × K / (M × C), the same as 24.04 SG ER 1e6 K / (MW C)":
    "Q = V_mol × ER × K / (M × C), dasselbe wie 24,04 SG ER 1e6 K / (MW C)",
  "as the chart has it": "wie die Tafel es hat",
  "scratch share × grain of the paper before; the first of a coat: levelling":
    "Kratzeranteil × Korn des vorigen Papiers; das erste einer Schicht: Ebnen",
  "scratch share × grain": "Kratzeranteil × Korn",
  "practice × Σ (area × passes / (pad × (1 − overlap) × feed), or area × strokes / (pad × speed) wet, + rails + a look after each paper + boxes)":
    "Übung × Σ (Fläche × Durchgänge / (Teller × (1 − Überdeckung) × Vorschub), oder nass Fläche × Striche / (Klotz × Tempo), + Rails + ein Blick nach jedem Papier + Kästen)",
  "practice × rail line × lanes × strokes / speed": "Übung × Raillinie × Bahnen × Striche / Tempo",
  "area × passes / life of a disc, rounded up":
    "Fläche × Durchgänge / Standfläche einer Scheibe, aufgerundet",
  "area / life of a sheet, rounded up": "Fläche / Standfläche eines Bogens, aufgerundet",
  "fill of the lay-up's zone + gloss; on a rail × (R / R at half length)^0.25 at its sharpest place; gauged: reading + what the papers before it took":
    "Hotcoat der Zone + Gloss; auf einer Rail × (R / R auf halber Länge)^0,25 an ihrer schärfsten Stelle; gemessen: Ablesung + was die Papiere davor nahmen",
  "Σ removed × (1 + lean × bearing), times what weighed dust says over the model; bearing = a / √(2 R δ), at least 1":
    "Σ Abtrag × (1 + Druck × Anlage), mal was gewogener Staub gegen das Modell sagt; Anlage = a / √(2 R δ), mindestens 1",
  "film − taken": "Film − genommen",
  "least of fill − taken before the gloss coat, and film − taken":
    "Kleinstes von Hotcoat − genommen vor dem Gloss, und Film − genommen",
  "place of the least R": "Platz des kleinsten R",
  "R = (h²/4 + w²) / 2w, chord h of deck and bottom a few millimetres w in from the edge":
    "R = (h²/4 + w²) / 2w, Sehne h von Deck und Unterseite wenige Millimeter w innerhalb der Kante",
  "Φ(−least / ((least − low end) / 1.645))": "Φ(−Kleinstes / ((Kleinstes − unteres Ende) / 1,645))",
  "order of chance, then of the least film": "Reihe nach der Gefahr, dann nach dem dünnsten Film",
  "removed × (1 + lean × bearing)": "Abtrag × (1 + Druck × Anlage)",
  "film − Σ taken so far": "Film − Σ genommen bisher",
  "i × length / 20": "i × Länge / 20",
  "film of that rail × (R / R at half length)^0.25, no more than on the flat":
    "Film jener Rail × (R / R auf halber Länge)^0,25, nicht mehr als auf der Fläche",
  "place of the least of film − taken": "Platz des Kleinsten von Film − genommen",
  "least of film − taken": "Kleinstes von Film − genommen",
  "m = shaped mass − stringer, or (V − V_stringer) × ρ":
    "m = Masse des Blanks − Stringer, oder (V − V_Stringer) × ρ",
  "Σ cloth of the pieces": "Σ Gewebe der Stücke",
  "Σ kept mass of the coats": "Σ behaltene Masse der Schichten",
  "Σ body × solid share × ρ_plastic − Σ pocket × ρ_foam + Σ filler":
    "Σ Körper × fester Anteil × ρ_Kunststoff − Σ Tasche × ρ_Schaum + Σ Füllstoff",
  "foam + stringer + cloth + resin + fittings": "Schaum + Stringer + Gewebe + Harz + Einbauten",
  "blank + Σ cloth + Σ kept resin + Σ fittings less their pockets, up to this coat":
    "Blank + Σ Gewebe + Σ behaltenes Harz + Σ Einbauten weniger ihre Taschen, bis zu dieser Schicht",
  "salinity 35, 20 °C": "Salzgehalt 35, 20 °C",
  "ρ V − finished board": "ρ V − fertiges Board",
  "ρ V − finished board − rider": "ρ V − fertiges Board − Surfer",
  "V = thickness × Σ thickness of the board × Δx": "V = Dicke × Σ Dicke des Boards × Δx",
  "as given, or usual": "wie angegeben, oder üblich",
  "as the scale shows it": "wie die Waage es zeigt",
  "planned − planned before": "geplant − geplant davor",
  "Σ kept of the coats": "Σ Behaltenes der Schichten",
  "Σ base + hardener": "Σ Harz + Härter",
  "m − m before": "m − m davor",
  "gained − cloth": "zugenommen − Gewebe",
  "kept ÷ planned kept": "behalten ÷ geplant behalten",
  "mixed − kept": "gemischt − behalten",
  "(kept − what the foam drinks by plan) ÷ cloth": "(behalten − was der Schaum nach Plan schluckt) ÷ Gewebe",
  "(kept − what fills the weave by plan) ÷ (area × ρ)":
    "(behalten − was nach Plan die Gewebestruktur füllt) ÷ (Fläche × ρ)",
  "planned mix + planned kept × (kept ratio − 1)":
    "geplante Mischung + geplant behalten × (Verhältnis behalten − 1)",
  "share of the place × (kept − weave by plan) ÷ (area × ρ)":
    "Anteil der Stelle × (behalten − Gewebestruktur nach Plan) ÷ (Fläche × ρ)",
  "Σ cost": "Σ Kosten",
  "Σ outlay": "Σ Ausgaben",
  "what it takes ÷ pack, up to the next whole one": "was gebraucht wird ÷ Packung, auf die nächste ganze",
  "price × (on the board + wasted) ÷ pack": "Preis × (auf dem Board + Abfall) ÷ Packung",
  "price × packs": "Preis × Packungen",
  "cut plan, coats and cups": "Zuschnitt, Schichten und Becher",
  "taken − on the board": "genommen − auf dem Board",
  "packs × pack": "Packungen × Packung",
  "bought − on the board − wasted": "gekauft − auf dem Board − Abfall",
  "Σ time to spread the cups, or the papers' time as in sanding.work, or practice × (fixed + per m² × area)":
    "Σ Zeit, die Becher zu verteilen, oder die Zeit der Papiere wie in sanding.work, oder Übung × (fest + je m² × Fläche)",
  "least of the waits that the steps which need this one ask; cure-out: longest (coat's end + full, or no load) − longest way here":
    "Kleinstes der Wartezeiten, die die davon abhängigen Schritte verlangen; Aushärten: längstes (Ende der Schicht + voll, oder ohne Last) − längster Weg hierher",
  "later of the usual day and the resin's full cure":
    "das Spätere aus üblichem Tag und voller Aushärtung des Harzes",
  "trim, flip, recoat or sandable of that step's coat from the mix; {1} for bare foam to dry; else nought":
    "Trimmen, Wenden, neue Schicht oder Schleifbarkeit der Schicht jenes Schritts aus der Mischung; {1}, bis blanker Schaum trocken ist; sonst null",
  "as the record has it": "wie das Protokoll es hat",
  "(last patch − size) / 2, or the fill coat's lap":
    "(letzter Flicken − Größe) / 2, oder die Überlappung des Hotcoats",
  "a day where foam shows, else nought": "ein Tag, wo Schaum frei liegt, sonst null",
  "last patch or size + 2 × lap": "letzter Flicken oder Größe + 2 × Überlappung",
  "size + 2 (lap + layer × step)": "Größe + 2 (Überlappung + Lage × Stufe)",
  "π across² / 4": "π quer² / 4",
  "area × areal mass": "Fläche × Flächengewicht",
  "cloth × resin to glass": "Gewebe × Harz zu Glas",
  "patch: (Σ of its layers + hollow + foam's uptake × π size² / 4) / (1 − styrene's share); fill: poured × π (last patch + 2 laps)² / 4":
    "Flicken: (Σ seiner Lagen + Mulde + Aufnahme des Schaums × π Größe² / 4) / (1 − Anteil des Styrols); Hotcoat: gegossen × π (letzter Flicken + 2 Überlappungen)² / 4",
  "greater of (taken + kept by brush) / (1 − kept by cup) and the least in a cup":
    "das Größere aus (gebraucht + was der Pinsel behält) / (1 − was der Becher behält) und dem Wenigsten in einem Becher",
  "film of the fill coat + skin, of it the outermost cloth alone where glass is cut":
    "Film des Hotcoats + Haut, von ihr nur das äußerste Gewebe, wo Glas angeschliffen ist",
  "depth − √(Σ each part's fall²)": "Tiefe − √(Σ Abfall jedes Teils²)",
  "depth + √(Σ each part's rise²)": "Tiefe + √(Σ Anstieg jedes Teils²)",
  "depth × π size² / 4": "Tiefe × π Größe² / 4",
  "least depth × π size² / 4": "kleinste Tiefe × π Größe² / 4",
  "most depth × π size² / 4": "größte Tiefe × π Größe² / 4",
  "volume × density of the cured resin": "Volumen × Dichte des ausgehärteten Harzes",
  "least volume × density": "kleinstes Volumen × Dichte",
  "most volume × density": "größtes Volumen × Dichte",
  "resin / (1 + dose)": "Harz / (1 + Dosis)",
  "resin − base": "Harz − Harzkomponente",
  "Σ length of the cuts, each patch in a square": "Σ Länge der Schnitte, jeder Flicken in einem Quadrat",
  "Σ π across² / 4 ÷ (width × length)": "Σ π Breite² / 4 ÷ (Breite der Rolle × Länge)",
  "price × length": "Preis × Länge",
  "one where it is no wider than the roll, else (across − overlap) / (width − overlap), up to the next whole one":
    "einer, wo er nicht breiter als die Rolle ist, sonst (Breite − Überlappung) / (Rollenbreite − Überlappung), auf den nächsten ganzen",
  "mixed / (1 + dose)": "gemischt / (1 + Dosis)",
  "mixed − base": "gemischt − Harz",
  "mass / density, as in mix.coats": "Masse / Dichte, wie in mix.coats",
  "latest begin, by a pass from the last step backwards, − begin; as time passes":
    "spätester Beginn, rückwärts vom letzten Schritt gerechnet, − Beginn; wie die Zeit vergeht",
  "begin after the recoat window closes: the usual time; else nought":
    "Beginn nachdem sich das Fenster für die neue Schicht schließt: die übliche Zeit; sonst null",
};
