/** Woher eine Zahl kommt, wo keine Schrift mit einem eigenen Titel gemeint ist. */
export const SOURCES: Readonly<Record<string, string>> = {
  "declared convention of this program": "erklärte Vereinbarung dieses Programms",
  "plane geometry and trigonometry": "ebene Geometrie und Trigonometrie",
  "densities of seasoned wood, from memory": "Dichten von trockenem Holz, aus dem Gedächtnis",
  "supplier's note: wax in styrene, 1.6 to 3.1 % by volume":
    "Hinweis eines Lieferanten: Paraffin in Styrol, 1,6 bis 3,1 % nach Volumen",
  "data sheets of sunlight-cured polyester, from memory":
    "Datenblätter von lichthärtendem Polyester, aus dem Gedächtnis",
  "standard table of Student's t (from memory)":
    "übliche Tafel der t-Verteilung nach Student (aus dem Gedächtnis)",
  "property sheets of high-strength glass fibre, from memory":
    "Datenblätter hochfester Glasfaser, aus dem Gedächtnis",
  "data sheets of orthophthalic polyester, from memory":
    "Datenblätter von Orthophthal-Polyester, aus dem Gedächtnis",
  "densities of engineering plastics, from memory": "Dichten technischer Kunststoffe, aus dem Gedächtnis",
  "data sheets of ketone peroxide solutions, from memory":
    "Datenblätter von Ketonperoxid-Lösungen, aus dem Gedächtnis",
  "your own data sheet or cups, as the board file gives them":
    "das eigene Datenblatt oder eigene Becher, wie die Board-Datei sie angibt",
  "arithmetic: mass = density × volume, areal mass × area":
    "Rechnung: Masse = Dichte × Volumen, Flächengewicht × Fläche",
  "published limits for styrene in air, from memory":
    "veröffentlichte Grenzwerte für Styrol in der Luft, aus dem Gedächtnis",
  "area of a Lamé curve by the gamma function (standard integral)":
    "Fläche einer Lamé-Kurve über die Gammafunktion (bekanntes Integral)",
  "property sheets of carbon and basalt fibre, from memory":
    "Datenblätter von Kohle- und Basaltfaser, aus dem Gedächtnis",
  "EPS makers' sheets: softens from about 75 °C": "Blätter von EPS-Herstellern: erweicht ab etwa 75 °C",
  "published data sheets of laminating epoxies": "veröffentlichte Datenblätter von Laminierepoxiden",
  "data sheets of laminating epoxies, from memory": "Datenblätter von Laminierepoxiden, aus dem Gedächtnis",
  "workshop chart of resin to glass by mass, hand lay-up 0.75 to 1.1 (a weak source)":
    "Werkstatt-Tafel Harz zu Glas nach Gewicht, von Hand 0,75 bis 1,1 (eine schwache Quelle)",
  "weak chart for metal: Ra 1/60 to 1/100 of the grain; for resin your own readings go before it":
    "schwache Tafel für Metall: Ra 1/60 bis 1/100 des Korns; für Harz gehen eigene Messungen vor",
  "textbook values of the stiffness of resins, fibres, foams and woods, from memory":
    "Lehrbuchwerte der Steifigkeit von Harzen, Fasern, Schäumen und Hölzern, aus dem Gedächtnis",
  "makers' notes on exotherm: small cups, spread early, outdoors, no foam or glass cups":
    "Hinweise von Herstellern zur Eigenwärme: kleine Becher, früh verteilen, im Freien, keine Becher aus Schaum oder Glas",
  "heat-transfer textbooks, free convection in gases 2 to 25 W/(m² K), from memory":
    "Lehrbücher der Wärmeübertragung, freie Konvektion in Gasen 2 bis 25 W/(m² K), aus dem Gedächtnis",
  "grain charts after FEPA 43-1 and ISO 6344, and of US (CAMI) grades; the standards not seen":
    "Korntafeln nach FEPA 43-1 und ISO 6344 und der US-Körnungen (CAMI); die Normen nicht gesehen",
  "generic data sheets of orthophthalic polyester (test methods ISO 1675 and ISO 3521)":
    "allgemeine Datenblätter von Orthophthal-Polyester (Prüfverfahren ISO 1675 und ISO 3521)",
  "gel-time table in a published data sheet of an ortho polyester with cobalt promoter (sheet 115NT)":
    "Gelzeit-Tafel im veröffentlichten Datenblatt eines Ortho-Polyesters mit Kobaltbeschleuniger (Blatt 115NT)",
  "exponents and scatter worked out from two published gel-time tables (sheets 115NT and 2-446PA)":
    "Exponenten und Streuung aus zwei veröffentlichten Gelzeit-Tafeln errechnet (Blätter 115NT und 2-446PA)",
  "equation of state of sea water (UNESCO EOS-80): 1025 kg/m³ at salinity 35 and 20 °C, from memory":
    "Zustandsgleichung des Meerwassers (UNESCO EOS-80): 1025 kg/m³ bei Salzgehalt 35 und 20 °C, aus dem Gedächtnis",
  "dilution air for a solvent, as ACGIH's form stands in two teaching notes":
    "Frischluft gegen ein Lösemittel, wie die Formel der ACGIH in zwei Lehrunterlagen steht",
  "data sheets of fillers: density of hollow glass spheres and of fumed silica, from memory":
    "Datenblätter von Füllstoffen: Dichte von Glashohlkugeln und pyrogener Kieselsäure, aus dem Gedächtnis",
  "an epoxy maker's rule that pot life halves for each 18 °F, worked out as 51 kJ/mol":
    "Regel eines Epoxidherstellers, nach der die Topfzeit sich je 18 °F halbiert, umgerechnet 51 kJ/mol",
  "Archimedes' principle: lift = density of the water × volume under it":
    "Archimedisches Prinzip: Auftrieb = Dichte des Wassers × Volumen darunter",
  "E-glass fibre property sheet, density by ASTM C693, 2550 to 2580 kg/m³":
    "Datenblatt von E-Glas-Faser, Dichte nach ASTM C693, 2550 bis 2580 kg/m³",
};
