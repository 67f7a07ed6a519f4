/** The usual cautions: the harm, a colon or a stop, what to do against it. */
export const CAUTIONS: Readonly<Record<string, string>> = {
  "Filler dust harms the lungs and hangs in the air for hours, silica and hollow glass spheres most of all: respirator with particle filter on before the bag is opened, no fan, stir it under the resin at once, wipe up damp.":
    "Füllstoffstaub schadet der Lunge und hängt stundenlang in der Luft, Kieselsäure und Glashohlkugeln am meisten: Atemschutz mit Partikelfilter auf, bevor der Sack geöffnet wird, kein Gebläse, sofort unter das Harz rühren, feucht aufwischen.",
  "filler dust hangs in the air": "Füllstoffstaub hängt in der Luft",
  "Foam dust harms the lungs: particle filter on, extraction running, shop swept before any resin is opened.":
    "Schaumstaub schadet der Lunge: Partikelfilter auf, Absaugung an, Werkstatt gefegt, bevor Harz geöffnet wird.",
  "Glass and resin dust harms lungs and skin: particle filter, sleeves and goggles, extraction at the tool. A dust mask is not enough. Never sand resin that is still soft.":
    "Glas- und Harzstaub schadet Lunge und Haut: Partikelfilter, lange Ärmel, Schutzbrille, Absaugung am Gerät. Eine einfache Staubmaske reicht nicht. Nie noch weiches Harz schleifen.",
  "A knife slips on half-set glass: new blade, cut away from the other hand, gloves on.":
    "Ein Messer rutscht auf halbfestem Glas ab: neue Klinge, von der anderen Hand weg schneiden, Handschuhe an.",
  "A router grabs: clamp the frame, set the depth stop, both hands, goggles; pull the plug before the bit is touched.":
    "Eine Oberfräse hakt ein: Rahmen festspannen, Tiefenanschlag setzen, beide Hände, Schutzbrille; Netzstecker ziehen, bevor der Fräser berührt wird.",
  "A hole on the wrong side cannot be undone: bottom up, nose away, name left and right aloud, check string, both diagonals and depth before the first cut.":
    "Ein Loch auf der falschen Seite bleibt: Unterseite oben, Nose weg, links und rechts laut benennen, Schnur, beide Diagonalen und Tiefe prüfen, bevor gefräst wird.",
  "A fin glassed on out of line is ground off again: bottom up, nose away, name left and right aloud, check string, both diagonals and cant before the first tack.":
    "Eine schief anlaminierte Finne wird wieder abgeschliffen: Unterseite oben, Nose weg, links und rechts laut benennen, Schnur, beide Diagonalen und Cant prüfen, bevor geheftet wird.",
  "A board dropped at the flip is a day lost, or a foot hurt: two people, stands padded, floor clear.":
    "Ein beim Wenden gefallenes Board kostet einen Tag oder einen Fuß: zu zweit, Ständer gepolstert, Boden frei.",
  "Peroxide hardener blinds: goggles on before it is opened, poured below face height, 15 minutes of eyewash in reach. It explodes with bare promoter and burns with acetone: never let them meet.":
    "Peroxidhärter macht blind: Schutzbrille auf, bevor er geöffnet wird, unter Gesichtshöhe gießen, Augenspülung für 15 Minuten in Reichweite. Mit reinem Beschleuniger explodiert er, mit Aceton brennt er: nie zusammenbringen.",
  "Rags and spills with peroxide can catch fire hours later: into a lidded metal can outdoors. Store the hardener below 25 °C, away from resin and promoter.":
    "Lappen und Spritzer mit Peroxid können noch nach Stunden Feuer fangen: in eine Metalltonne mit Deckel im Freien. Härter unter 25 °C lagern, weg von Harz und Beschleuniger.",
  "Styrene vapour harms and burns, most of it about the time of the gel: organic-vapour cartridges, moving air, no flame, no glowing heater, no sparks. From a house garage it gets into the home.":
    "Styroldampf schadet und brennt, am meisten um die Gelzeit: Filter gegen organische Dämpfe, Luft in Bewegung, keine Flamme, kein glühender Heizer, keine Funken. Aus der Garage am Haus zieht er in die Wohnung.",
  "A full cup heats by itself, can smoke, melt foam and catch fire: spread it at once, leave what is over in a flat pan outdoors. No foam or glass cups.":
    "Ein voller Becher erhitzt sich selbst, kann rauchen, Schaum schmelzen und Feuer fangen: sofort verteilen, Reste in einer flachen Wanne im Freien lassen. Keine Becher aus Schaum oder Glas.",
  "Warming over a flame sets vapour alight: warm resin in a water bath before the hardener goes in, and never warm the peroxide.":
    "Wärmen über einer Flamme entzündet Dampf: Harz im Wasserbad wärmen, bevor der Härter hineinkommt, und nie das Peroxid wärmen.",
  "Epoxy and its hardener can make the skin allergic for life: gloves and sleeves, change them when they are wet, no solvent on skin, air moving.":
    "Epoxid und sein Härter können die Haut lebenslang allergisch machen: Handschuhe und lange Ärmel, nass gewordene wechseln, kein Lösemittel auf die Haut, Luft in Bewegung.",
  "A wrong ratio never cures: weigh both parts by the sheet's ratio, stir sides and floor of the cup; more hardener does not make it quicker.":
    "Ein falsches Verhältnis härtet nie aus: beide Teile nach dem Blatt wiegen, Rand und Boden des Bechers mitrühren; mehr Härter macht es nicht schneller.",
  "Daylight sets this resin within minutes, hot where it is thick: keep cup and board in the dark until it lies right, and eyes away from curing lamps.":
    "Tageslicht härtet dieses Harz in Minuten, heiß, wo es dick ist: Becher und Board dunkel halten, bis alles richtig liegt, nicht in Härtelampen sehen.",
  "Polystyrene foam softens from about 75 °C, and a deep pour of resin gets hotter than that: pour boxes and plugs in stages, each cooled before the next.":
    "Polystyrolschaum erweicht ab etwa 75 °C, und ein tiefer Verguss wird heißer: Kästen und Plugs in Stufen gießen, jede abgekühlt vor der nächsten.",
  "Water and mains tools kill: sand wet by hand or with an air tool, machines on a residual-current switch.":
    "Wasser und Netzgeräte töten: nass von Hand oder mit Druckluft schleifen, Maschinen an einem Fehlerstromschutzschalter.",
  "A polisher grabs at edges and fins and throws them: goggles, work off the edge, never onto it.":
    "Eine Poliermaschine hakt an Kanten und Finnen ein und schleudert: Schutzbrille, von der Kante weg arbeiten, nie auf sie zu.",
  "A plug that was never pulled is not ready: a lost board can drown somebody. Pull-test it once it is cured, before the first wave.":
    "Ein nie gezogener Plug ist nicht fertig: an einem verlorenen Board kann jemand ertrinken. Nach dem Aushärten zur Probe ziehen, vor der ersten Welle.",
  "Resin not yet cured out dents, and its vapour stays in the room: store the board in moving air, not where people sleep, and no dark board in the sun.":
    "Nicht ausgehärtetes Harz bekommt Dellen, und sein Dampf bleibt im Raum: das Board in bewegter Luft lagern, nicht wo Menschen schlafen, dunkle Boards nicht in die Sonne.",
  "Fin edges cut: round them over. First waves small, leash on, wax on, and look at fins, edges and leash afterwards.":
    "Finnenkanten schneiden: runden. Erste Wellen klein, Leash dran, Wachs drauf, danach Finnen, Kanten und Leash ansehen.",
  "The safety data sheet, local codes and licensed practice go before anything said here.":
    "Sicherheitsdatenblatt, örtliche Vorschriften und zugelassene Fachleute gehen allem hier Gesagten vor.",
};
