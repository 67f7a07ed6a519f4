/** Was an den übrigen Quellen zu beschreiben ist; der Titel der Schrift bleibt in ihrer Sprache. */
export const WHY_SOURCES: Readonly<Record<string, string>> = {
  "NIST SP 811, exact unit factors (from memory)":
    "NIST SP 811, genaue Umrechnungsfaktoren (aus dem Gedächtnis)",
  "three published polyester data sheets: dose 1 to 2 or 2.5 %, never above 4 %, no cure below 15 °C":
    "drei veröffentlichte Datenblätter von Polyester: Dosis 1 bis 2 oder 2,5 %, nie über 4 %, keine Härtung unter 15 °C",
  "redox cure of polyester, 40 to 60 kJ/mol: J. Appl. Polym. Sci. 102:1870":
    "Redoxhärtung von Polyester, 40 bis 60 kJ/mol: J. Appl. Polym. Sci. 102:1870",
  "40 CFR 63 subpart VVVV, table 3: kg of styrene per Mg of resin = 0.014 (percent)^2.275":
    "40 CFR 63 subpart VVVV, Tabelle 3: kg Styrol je Mg Harz = 0,014 (Prozent)^2,275",
  "NIOSH Pocket Guide to Chemical Hazards, styrene": "NIOSH Pocket Guide to Chemical Hazards, Styrol",
  "OSHA, 29 CFR 1910.1000 table Z-2, styrene": "OSHA, 29 CFR 1910.1000 Tabelle Z-2, Styrol",
  "published bending test of extruded polystyrene at 26, 32 and 49 kg/m³: 13 to 16, 19 to 20, 34 to 35 MPa":
    "veröffentlichter Biegeversuch an extrudiertem Polystyrol von 26, 32 und 49 kg/m³: 13 bis 16, 19 bis 20, 34 bis 35 MPa",
  "classical lamination theory: Kaw, Mechanics of Composite Materials, ch. 4 (from memory)":
    "klassische Laminattheorie: Kaw, Mechanics of Composite Materials, Kap. 4 (aus dem Gedächtnis)",
  "rule of mixtures: Kaw, Mechanics of Composite Materials, ch. 3 (from memory)":
    "Mischungsregel: Kaw, Mechanics of Composite Materials, Kap. 3 (aus dem Gedächtnis)",
  "published tables of seasoned wood: basswood 26 lb/ft³, balsa 170, spruce 450, red cedar 380 kg/m³":
    "veröffentlichte Tabellen trockenen Holzes: Linde 26 lb/ft³, Balsa 170, Fichte 450, Rotzeder 380 kg/m³",
  "GUM (JCGM 100), clause F.2.2.1: a digital reading lies anywhere within half a step (from memory)":
    "GUM (JCGM 100), F.2.2.1: eine Ablesung in Schritten liegt irgendwo in einem halben Schritt (aus dem Gedächtnis)",
  "CODATA 2018, exact molar gas constant (from memory)":
    "CODATA 2018, genaue molare Gaskonstante (aus dem Gedächtnis)",
  "Alduchov and Eskridge 1996, improved Magnus form: a 17.625, b 243.04 °C":
    "Alduchov und Eskridge 1996, verbesserte Magnus-Formel: a 17,625, b 243,04 °C",
  "Arrhenius law with a power of the dose, fitted to the sheet's points by least squares in ln(time)":
    "Gesetz von Arrhenius mit einer Potenz der Dosis, den Punkten des Blatts nach kleinsten Quadraten in ln(Zeit) angepasst",
  "peroxide makers' sheets: store below 25 °C, never with promoter or acetone, spills and rags can ignite":
    "Blätter von Peroxidherstellern: unter 25 °C lagern, nie mit Beschleuniger oder Aceton, Verschüttetes und Lappen können sich entzünden",
  "Schlichting, Boundary-Layer Theory, ch. 21: admissible roughness 100 ν/U (from memory)":
    "Schlichting, Boundary-Layer Theory, Kap. 21: zulässige Rauheit 100 ν/U (aus dem Gedächtnis)",
  "ITTC 7.5-02-01-03, water of 15 °C: salt 1.18831e-6 m²/s (second-hand)":
    "ITTC 7.5-02-01-03, Wasser von 15 °C: salzig 1,18831e-6 m²/s (aus zweiter Hand)",
  "Schultz 2002, measured plates: even 600-grit paint lay above polished":
    "Schultz 2002, gemessene Platten: auch mit Korn 600 geschliffene Farbe lag über polierter",
  "Coffman, Garey, Johnson and Tarjan, SIAM Journal on Computing 9 (1980): level-oriented packing (from memory)":
    "Coffman, Garey, Johnson und Tarjan, SIAM Journal on Computing 9 (1980): Packen in Lagen (aus dem Gedächtnis)",
  "Kulfan and Bussoletti, class and shape functions (Kulfan, AIAA 2007-62; from memory)":
    "Kulfan und Bussoletti, Klassen- und Formfunktionen (Kulfan, AIAA 2007-62; aus dem Gedächtnis)",
  "Hoff and Mautner 1945, wrinkling of a skin on foam: k 0.91 in theory, 0.5 as a knock-down (from memory)":
    "Hoff und Mautner 1945, Knittern einer Haut auf Schaum: k 0,91 in der Theorie, 0,5 als Abschlag (aus dem Gedächtnis)",
};
