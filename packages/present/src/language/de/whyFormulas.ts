/** Formeln der Form und der Finnen, mit Worten darin. */
export const WHY_FORMULAS: Readonly<Record<string, string>> = {
  "L = tape − ∫ (√(1 + z'²) − 1) dx": "L = Maßband − ∫ (√(1 + z'²) − 1) dx",
  "max over x of y_left + y_right": "Größtes über x von y_links + y_rechts",
  "y = C(ξ) S(t) ± d(t); C closes the ends, S smooth (penalty on S'''), d the sides' half difference":
    "y = C(ξ) S(t) ± d(t); C schließt die Enden, S glatt (Strafe auf S'''), d der halbe Unterschied der Seiten",
  "between the tips; from the tips to the crotch": "zwischen den Spitzen; von den Spitzen zur Kerbe",
  "t(x) smooth; least squares with a penalty on t'''": "t(x) glatt; kleinste Quadrate mit Strafe auf t'''",
  "z(x) = (x − L/2)² R(t), R smooth; least squares with a penalty on R''":
    "z(x) = (x − L/2)² R(t), R glatt; kleinste Quadrate mit Strafe auf R''",
  "V = ∫ Σ sides b h ((1 − apex) k(nd) + apex k(nb)) dx − concave, vee and notch; k(n) = Γ(1 + 1/n)² / Γ(1 + 2/n)":
    "V = ∫ Σ Seiten b h ((1 − apex) k(nd) + apex k(nb)) dx − Concave, Vee und Kerbe; k(n) = Γ(1 + 1/n)² / Γ(1 + 2/n)",
  "V ± 1.645 √((∂V/∂t · s_t)² + (section share · V)²)":
    "V ± 1,645 √((∂V/∂t · s_t)² + (Anteil des Querschnitts · V)²)",
  "Σ quadrilaterals of the skin between 61 sections": "Σ Vierecke der Haut zwischen 61 Querschnitten",
  "∫ x dV / V, the same for y and z": "∫ x dV / V, ebenso für y und z",
  "z(x), t(x) and tape s(x) = ∫ √(1 + z'²) dx": "z(x), t(x) und Maßband s(x) = ∫ √(1 + z'²) dx",
  "least squares of (y_left − y_right) / 2 over the length: shift at half length, slope":
    "kleinste Quadrate von (y_links − y_rechts) / 2 über die Länge: Versatz auf halber Länge, Neigung",
  "read − fitted; would fit: the curve without this reading":
    "gelesen − ausgeglichen; passen würde: die Kurve ohne diese Ablesung",
  "√ (φ' A⁻¹ φ) from the fit's covariance": "√ (φ' A⁻¹ φ) aus der Kovarianz des Ausgleichs",
  "as stated in the board file": "wie in der Board-Datei angegeben",
  "beside the nose: τ = atan((v − o)/(N − u)); beyond it: τ = atan(v/(N + e − u)); over the base: τ = asin(a/b)":
    "neben der Nose: τ = atan((v − o)/(N − u)); vor ihr: τ = atan(v/(N + e − u)); über die Basis: τ = asin(a/b)",
  "β = atan(rise/run), over 10 mm to each side of the mark":
    "β = atan(Höhe/Länge), über 10 mm zu jeder Seite der Marke",
  "from survey.twist": "aus survey.twist",
  "left: c + β + t; right: c + β − t; centre: c + t, to the left":
    "links: c + β + t; rechts: c + β − t; Mitte: c + t, nach links",
  "stated distance; by tape turned straight along the bottom's curve, from a crotch the crotch added":
    "angegebener Abstand; mit Maßband entlang der Kurve der Unterseite gerade gerechnet, ab einer Kerbe die Kerbe dazu",
  "length of the bottom's curve: ∫ √(1 + (dz/dx)²) dx":
    "Länge der Kurve der Unterseite: ∫ √(1 + (dz/dx)²) dx",
  "tape to the mark − tape to the crotch": "Maßband zur Marke − Maßband zur Kerbe",
  "rail: own half-width − r; average and centreline: the mean of left and right of that":
    "Rail: eigene halbe Breite − r; gemittelt und Mittellinie: das Mittel aus links und rechts davon",
  "|c + u sin ψ ± v cos ψ|, the line c left of the stringer at the tail and turned by ψ":
    "|c + u sin ψ ± v cos ψ|, die Linie c links vom Stringer am Tail und um ψ gedreht",
  "w(u) − v, w the half-width from the line on the fin's own side":
    "w(u) − v, w die halbe Breite ab der Linie auf der Seite der Finne",
  "least of √((x − x₀)² + (w(x) − y₀)²) over x": "Kleinstes von √((x − x₀)² + (w(x) − y₀)²) über x",
  "deck − (bottom + D cos γ + (w/2) sin γ), least over the box, γ the lean against the bottom's section":
    "Deck − (Unterseite + D cos γ + (w/2) sin γ), Kleinstes über dem Kasten, γ die Neigung gegen den Querschnitt der Unterseite",
  "as stated, or (l − b)/2": "wie angegeben, oder (l − b)/2",
  "l − h − base": "l − h − Basis",
  "tape(u − h cos τ)": "Maßband(u − h cos τ)",
  "tape(u + (l − h) cos τ)": "Maßband(u + (l − h) cos τ)",
  "along the base line by the box's ends, square to it by half its width times cos γ":
    "entlang der Basis um die Enden des Kastens, rechtwinklig dazu um die halbe Breite mal cos γ",
  "distance outwards to where deck or bottom has the wall's height":
    "Abstand nach außen bis dahin, wo Deck oder Unterseite die Höhe der Wand hat",
  "least of √((x − x₀)² + (w(x) − y₀)²); negative over the edge":
    "Kleinstes von √((x − x₀)² + (w(x) − y₀)²); negativ über der Kante",
  "least |y| of the corners, the floor D sin γ farther in than the mouth":
    "kleinstes |y| der Ecken, der Boden D sin γ weiter innen als die Öffnung",
  "least distance between the two outlines on the bottom":
    "kleinster Abstand der beiden Umrisse auf der Unterseite",
  "largest z(s) − chord(s) along the base": "Größtes z(s) − Sehne(s) entlang der Basis",
  "largest |left − right| of half-width − r": "größtes |links − rechts| von halber Breite − r",
  "as stated, or 1 mm": "wie angegeben, oder 1 mm",
  "shift − tan(skew) · L/2": "Versatz − tan(Schräglage) · L/2",
  "shift + tan(skew) · L/2": "Versatz + tan(Schräglage) · L/2",
  "skew of the best-fit centreline": "Schräglage der besten Mittellinie",
  "where the notch closes on the stringer": "wo sich die Kerbe am Stringer schließt",
  "(left half-width − r) − (right half-width − r)": "(halbe Breite links − r) − (halbe Breite rechts − r)",
  "half-width − distance from the line": "halbe Breite − Abstand von der Linie",
  "by the rule for the two sides": "nach der Regel für die beiden Seiten",
  "√(Δtape² + y²)": "√(ΔMaßband² + y²)",
  "left − right": "links − rechts",
  "half-width − v": "halbe Breite − v",
  "as finset.marks[].toeRad": "wie finset.marks[].toeRad",
  "|y| by this rule − |y| by the rule in force": "|y| nach dieser Regel − |y| nach der geltenden Regel",
  "stated distance, turned straight": "angegebener Abstand, gerade gerechnet",
  "length of the bottom's curve": "Länge der Kurve der Unterseite",
  "tape to the plug − tape to the crotch": "Maßband zum Plug − Maßband zur Kerbe",
  "shortest distance from its middle − half its diameter":
    "kürzester Abstand ab seiner Mitte − halber Durchmesser",
  "|y| − half its diameter": "|y| − halber Durchmesser",
  "deck − bottom − depth, least over the middle and the rim":
    "Deck − Unterseite − Tiefe, Kleinstes über Mitte und Rand",
  "distance in plan − half the diameter; beneath: thickness − plug depth − box depth":
    "Abstand im Grundriss − halber Durchmesser; darunter: Dicke − Tiefe des Plugs − Tiefe des Kastens",
  "deck − bottom − plug depth − box depth": "Deck − Unterseite − Tiefe des Plugs − Tiefe des Kastens",
  "least of: deck − bottom − usual foam; deck − bottom − box depth − usual gap":
    "Kleinstes von: Deck − Unterseite − üblicher Schaum; Deck − Unterseite − Tiefe des Kastens − üblicher Abstand",
  "diameter + 2 × overlap": "Durchmesser + 2 × Überlappung",
  "a day": "ein Tag",
  "as declared": "wie festgelegt",
  "√(along² + across²)": "√(längs² + quer²)",
  "measured − planned, both straight": "gemessen − geplant, beide gerade",
  "measured − planned": "gemessen − geplant",
  "atan(Δacross/Δalong) − τ, or asin(Δacross/b) − τ where a distance from the tail is missing":
    "atan(Δquer/Δlängs) − τ, oder asin(Δquer/b) − τ, wo ein Abstand ab Tail fehlt",
  "−mean of the errors along": "−Mittel der Fehler längs",
  "−error across": "−Fehler quer",
  "−error of cant": "−Fehler des Cants",
  "string: aim beside the nose; diagonals: taut tape to each mark and how the two differ; marks: as planned; depth: D + g − p; proud: p":
    "Schnur: Zielpunkt neben der Nose; Diagonalen: straffes Maßband zu jeder Marke und ihr Unterschied; Marken: wie geplant; Tiefe: D + g − p; Überstand: p",
  "marks, sides, diagonals: the set-out's t; string: t (N − u)/(b cos τ); depth and proud: half a millimetre":
    "Marken, Seiten, Diagonalen: das t des Anrisses; Schnur: t (N − u)/(b cos τ); Tiefe und Überstand: ein halber Millimeter",
  "as given in the board file; of a pair left − right":
    "wie in der Board-Datei angegeben; bei einem Paar links − rechts",
  "read − target": "gelesen − Soll",
  "cant as stated": "Cant wie angegeben",
  "one degree": "ein Grad",
  "as given in the board file": "wie in der Board-Datei angegeben",
  "as in the plan where the check is made": "wie im Plan, wo die Prüfung gemacht wird",
  "marks: −error across; string: b (sin τ read − sin τ)":
    "Marken: −Fehler quer; Schnur: b (sin τ gelesen − sin τ)",
  "−error": "−Fehler",
  "depth stop: −error; proud height: error": "Tiefenanschlag: −Fehler; Überstand: Fehler",
  "2 g (2 + √2), from (r − g)√2 ≤ r; no wider than the pocket":
    "2 g (2 + √2), aus (r − g)√2 ≤ r; nicht breiter als die Tasche",
  "largest of the sizes sold, not above the thickest that fits":
    "die größte der verkauften Größen, nicht über der dicksten, die passt",
  "by the surface that is there": "nach der Oberfläche, die da ist",
  "foam over the box − (g − p)": "Schaum über dem Kasten − (g − p)",
  "g as taken": "g wie angenommen",
  "the least usual g": "das kleinste übliche g",
  "the most usual g": "das größte übliche g",
  "l + 2 × overlap": "l + 2 × Überlappung",
  "w + 2 × overlap": "w + 2 × Überlappung",
  "as taken": "wie angenommen",
  "b + 2 × overlap": "b + 2 × Überlappung",
  "2 × overlap": "2 × Überlappung",
  "Σ √(Δx² + Δz²) over 96 steps": "Σ √(Δx² + Δz²) über 96 Schritte",
  "max over x of (girth left + girth right)": "Größtes über x von (Umfang links + Umfang rechts)",
};
