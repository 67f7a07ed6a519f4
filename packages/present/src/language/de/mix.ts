/** Cups, doses, clocks and the shop's air. */
export const MIX: Readonly<Record<string, string>> = {
  "{1} takes {2} of tint over its resin; its sheet allows {3} at most":
    "{1} bekommt {2} Farbe auf das Harz; ihr Datenblatt erlaubt höchstens {3}",
  "cups, dose and clocks follow once the coats are known":
    "Becher, Dosis und Zeiten folgen, sobald die Schichten feststehen",
  "no resin {1} is known for {2}": "kein Harz {1} bekannt für {2}",
  "nobody's own times are known yet; they decide how many cups, and how strong a dose":
    "eigene Zeiten sind noch nicht bekannt; sie entscheiden über Zahl der Becher und Stärke der Dosis",
  "spreading times by kind of coat, mass and practice": "Verteilzeiten nach Art der Schicht, Menge und Übung",
  "a sheet times a cup, not a film: a fingertip on the board is better than any of these times":
    "ein Datenblatt misst im Becher, nicht im Film: eine Fingerspitze am Board ist besser als jede dieser Zeiten",
  "film stages as multiples of the film's gel time": "Stufen des Films als Vielfache seiner Gelzeit",
  "one cup at a time stands open": "nur ein Becher steht offen",
  "the next cup is mixed when the one before lies spread":
    "der nächste Becher wird gemischt, wenn der vorige verteilt ist",
  "no calendar is planned here": "hier wird kein Kalender geplant",
  "each coat goes on at the start of the working hours; its film's times count from the last cup":
    "jede Schicht beginnt mit der Arbeitszeit; die Zeiten des Films zählen ab dem letzten Becher",
  "another polyester may take half or twice the time: your own sheet, or one cup timed in your shop, narrows it":
    "ein anderes Polyester kann halb oder doppelt so lange brauchen: das eigene Datenblatt oder ein gestoppter Becher in der eigenen Werkstatt grenzt es ein",
  "gel times of one published polyester sheet, with the spread between sheets in the band":
    "Gelzeiten aus einem veröffentlichten Polyester-Datenblatt, die Streuung zwischen Blättern in der Spanne",
  "the film then sets as soon as the work allows":
    "der Film zieht dann so bald an, wie die Arbeit es zulässt",
  "the strongest dose in the range that leaves the time to spread":
    "die stärkste Dosis im Bereich, die Zeit zum Verteilen lässt",
  "wax lets the top dry sandable, and keeps the next coat from bonding":
    "Paraffin lässt die Oberfläche schleifbar trocknen und hindert die nächste Schicht am Haften",
  "wax solution in fill and gloss coats only, on top of the mixed mass":
    "Paraffinlösung nur in Hotcoat und Gloss, zusätzlich zur gemischten Menge",
  "only the sheet of your own resin gives its ratio: weigh by that, and never turn it to change the pace":
    "nur das Blatt des eigenen Harzes gibt sein Verhältnis: danach wiegen und es nie ändern, um schneller oder langsamer zu sein",
  "ratio and pot life of a middling laminating epoxy":
    "Verhältnis und Topfzeit eines mittleren Laminierepoxids",
  "no resin temperature is given; the resin is taken to have stood in the shop":
    "keine Harztemperatur angegeben; das Harz gilt als in der Werkstatt gelagert",
  "nobody says how many hands there are; one pair is the careful choice":
    "wie viele anpacken, ist nicht angegeben; ein Paar Hände ist die vorsichtige Wahl",
  "nobody says how practised the hands are; a first board needs the longest working time":
    "wie geübt die Hände sind, ist nicht angegeben; ein erstes Board braucht die längste Verarbeitungszeit",
  "humidity lies above 0 and up to 100 %": "Luftfeuchte liegt über 0 und bis 100 %",
  "humidity lies above 0 and up to 100 %; {1} was read":
    "Luftfeuchte liegt über 0 und bis 100 %; gelesen wurde {1}",
  "resin is used between {1} and {2}": "Harz wird zwischen {1} und {2} verarbeitet",
  "{1}; {2} was read": "{1}; gelesen wurde {2}",
  "{1}; what was read is no number": "{1}; gelesen wurde keine Zahl",
  "there must be at least one whole person to glass":
    "zum Laminieren braucht es mindestens einen ganzen Menschen",
  "the dew point is {1}, too near the shop's {2}: damp foam gives blisters, and epoxy blushes; warm or dry the air first":
    "der Taupunkt ist {1}, zu nah an den {2} der Werkstatt: feuchter Schaum gibt Blasen, und Epoxid läuft an; die Luft erst erwärmen oder trocknen",
  "the dew point is {1}, and the night falls to {2}: damp foam gives blisters, and epoxy blushes; keep the heat on until it is hard":
    "der Taupunkt ist {1}, und nachts fällt es auf {2}: feuchter Schaum gibt Blasen, und Epoxid läuft an; heizen, bis es hart ist",
  "the dew point is {1}; the board stays dry above it":
    "der Taupunkt ist {1}; darüber bleibt das Board trocken",
  "the air warms over the {1} after the start of work: warming foam breathes out and blows pinholes; laminate when it is steady or falls slowly":
    "die Luft wird in den {1} nach Arbeitsbeginn wärmer: warm werdender Schaum gast aus und bläst feine Löcher; laminieren, wenn es gleich bleibt oder langsam kühler wird",
  "the blank comes out of a night at {1}: let it warm through to {2} before resin goes on, or it breathes out and blows pinholes":
    "der Blank kommt aus einer Nacht mit {1}: vor dem Harz auf {2} durchwärmen lassen, sonst gast er aus und bläst feine Löcher",
  "{1} sets by light, not by the clock: its sheet gives the exposure for the sun of the day; keep cup and board in the dark until it lies as you want it":
    "{1} härtet durch Licht, nicht nach der Uhr: das Datenblatt gibt die Belichtung für die Sonne des Tages; Becher und Board dunkel halten, bis alles liegt",
  "the {1} itself is at {2}: warm it in a water bath to {3} before the hardener goes in, never over a flame":
    "das Harz selbst ({1}) hat {2}: vor dem Härter im Wasserbad auf {3} wärmen, nie über einer Flamme",
  "{1} after the start of work the shop falls below {2}, where {3} stands still":
    "{1} nach Arbeitsbeginn fällt die Werkstatt unter {2}, dort steht {3} still",
  "{1}; nothing is credited until it warms again": "{1}; bis es wieder warm wird, wird nichts angerechnet",
  "{1}: {2} may not have set by then; heat on, or an earlier start, or it stays soft until it warms":
    "{1}: {2} ist bis dahin vielleicht nicht fest; heizen oder früher anfangen, sonst bleibt es weich, bis es warm wird",
  "in air of {1} humidity {2} may blush, a greasy film that the next coat slides on: wash it off with water and a pad and let it dry before you sand or coat":
    "bei {1} Luftfeuchte kann {2} anlaufen, ein schmieriger Film, auf dem die nächste Schicht rutscht: mit Wasser und Vlies abwaschen und trocknen lassen, bevor geschliffen oder beschichtet wird",
  "{1} takes its promoter apart: stir it into the resin first and all through, put the bottle away, and only then bring the peroxide; the two meeting bare explode":
    "{1} bekommt seinen Beschleuniger einzeln: zuerst ganz ins Harz einrühren, die Flasche wegstellen und erst dann das Peroxid holen; treffen sich beide unverdünnt, explodieren sie",
  "the cups of {1} held {2} of hardener, and its sheet has {3}: it may stay soft; test it with a fingertip and go by the sheet before the next coat":
    "in den Bechern von {1} waren {2} Härter, das Datenblatt hat {3}: es kann weich bleiben; mit der Fingerspitze prüfen und vor der nächsten Schicht nach dem Datenblatt gehen",
  "the cups of {1} held {2} of peroxide, its sheet has {3}, and no sheet allows more than {4}: it runs hot, can smoke and catch fire. Get cup, rags and what is left outdoors at once, thin in a flat pan away from anything that burns, and stay out of the smoke; put nothing over this coat before the resin's maker has said what it is still worth. Was the entry a slip, correct it":
    "in den Bechern von {1} waren {2} Peroxid, das Datenblatt hat {3}, und kein Blatt erlaubt mehr als {4}: es wird heiß, kann rauchen und brennen. Becher, Lappen und Reste sofort ins Freie, dünn in eine flache Wanne, weg von allem, was brennt, und nicht in den Rauch stellen; nichts auf diese Schicht, bevor der Hersteller des Harzes gesagt hat, was sie noch taugt. War es ein Schreibfehler, den Eintrag berichtigen",
  "the cups of {1} held {2} of peroxide, and its sheet has {3}: it runs hot and gels early, and what stands in the cup can smoke and catch fire. Get the cup outdoors, poured thin into a flat pan, and watch it until it is cold; such a film can stay weak: test it before the next coat":
    "in den Bechern von {1} waren {2} Peroxid, das Datenblatt hat {3}: es wird heiß und geliert früh, und was im Becher steht, kann rauchen und brennen. Den Becher ins Freie, dünn in eine flache Wanne gegossen, und dabeibleiben, bis er kalt ist; so ein Film kann schwach bleiben: vor der nächsten Schicht prüfen",
  "the shop is at {1}": "die Werkstatt hat {1}",
  "no working hour of the list is warmer than {1}": "keine Arbeitsstunde der Liste ist wärmer als {1}",
  "{1} does not cure below {2}, and {3}: nothing is credited and no dose is given; warm shop, blank and resin, or choose another resin":
    "{1} härtet unter {2} nicht, und {3}: nichts wird angerechnet, keine Dosis gegeben; Werkstatt, Blank und Harz wärmen oder ein anderes Harz wählen",
  "{1} after {2} goes on the shop falls below {3}, where {4} stands still":
    "{1} nach dem Auftragen von {2} fällt die Werkstatt unter {3}, dort steht {4} still",
  "as warm as the air when its coat goes on": "so warm wie die Luft, wenn die Schicht aufgetragen wird",
  "each coat goes on in the air of its own hour in the calendar, or in the first working hour that is warm enough; its film's times count from the last cup":
    "jede Schicht wird in der Luft ihrer Stunde im Kalender aufgetragen oder in der ersten Arbeitsstunde, die warm genug ist; die Zeiten des Films zählen ab dem letzten Becher",
  "the dose is for that hour: laid in warmer air the cup goes off sooner":
    "die Dosis gilt für diese Stunde: in wärmerer Luft geliert der Becher früher",
  "in a cup of {1}": "in einem Becher von {1}",
  "at {1} of hardener": "bei {1} Härter",
  "at a temperature of {1}": "bei einer Temperatur von {1}",
  "the times of {1} {2} are carried far beyond its sheet's points: time a small cup in the shop before you trust them":
    "die Zeiten von {1} {2} liegen weit außerhalb der Punkte seines Datenblatts: einen kleinen Becher in der Werkstatt stoppen, bevor man ihnen traut",
  "the record names the coat {1}, and this board has no such coat: the entry moves no clock":
    "das Protokoll nennt die Schicht {1}, und dieses Board hat keine solche: der Eintrag stellt keine Uhr",
  "the record names the coat {1}, and this board has no such coat: the entry moves no clock; was it {2}?":
    "das Protokoll nennt die Schicht {1}, und dieses Board hat keine solche: der Eintrag stellt keine Uhr; gemeint war {2}?",
  "two fingertip tests of {1} contradict each other, for a film only gets harder: {2} and {3}; the one entered later counts, and the other moves no clock; correct whichever is wrong":
    "zwei Fingerproben an {1} widersprechen sich, denn ein Film wird nur härter: {2} und {3}; die später eingetragene gilt, die andere stellt keine Uhr; die falsche berichtigen",
  "the fingertip test of {1} lies {2} before its last cup was mixed, so it moves no clock: correct its time or the cup's":
    "die Fingerprobe an {1} liegt {2} vor dem Mischen des letzten Bechers und stellt keine Uhr: ihre Zeit oder die des Bechers berichtigen",
  "the resin's record leaves it out, so the generic resin of its kind gives it: read it off your own sheet":
    "der Eintrag des Harzes lässt es weg, also gilt das allgemeine Harz seiner Art: im eigenen Datenblatt nachlesen",
  "bonds without sanding for {1} at {2}": "haftet ohne Anschleifen {1} bei {2}",
  "it blushes in damp or cold air": "in feuchter oder kalter Luft schwitzt es aus",
  "it does not blush": "es schwitzt nicht aus",
  "sets in {1} in the sun of UV index {2}": "härtet in {1} in der Sonne bei UV-Index {2}",
  "promoter in the resin": "Beschleuniger im Harz",
  "read them off its sheet again": "noch einmal vom Datenblatt ablesen",
  "the gel points of {1} contradict the law that warmer or stronger gels sooner, so no time can be given: {2}":
    "die Gelpunkte von {1} widersprechen dem Gesetz, dass es wärmer oder stärker früher geliert, also gibt es keine Zeit: {2}",
  "two gel points of {1} contradict each other: {2}": "zwei Gelpunkte von {1} widersprechen sich: {2}",
  "{1}, and {2}; read both again": "{1}, und {2}; beide noch einmal ablesen",
  "{1} and {2} gel in {3}": "{1} und {2} gelieren in {3}",
  "the fingertip test of {1} moves no clock: the record needs the cup of that coat with its time, and the shop's air of that time":
    "die Fingerprobe an {1} stellt keine Uhr: das Protokoll braucht den Becher dieser Schicht mit seiner Zeit und die Luft der Werkstatt zu dieser Zeit",
  "a cup of {1} left standing keeps its heat: by its own heat it cannot get hotter than {2}, a bound and no forecast, and it loses heat in {3}, later than it gels. Pour it out at once; what is over goes into a flat pan outdoors":
    "ein Becher von {1}, der stehen bleibt, behält seine Wärme: aus eigener Wärme wird er nicht heißer als {2}, eine Grenze und keine Vorhersage, und er verliert Wärme in {3}, später als er geliert. Sofort ausgießen; Reste in eine flache Wanne im Freien",
  "{1} gives off about {2} of styrene in {3} about the gel: {4} of fresh air for {5} ppm ({6}); published limits run from {7} to {8} ppm, differ by country and change. It burns from {9} of the air on. This is not a compliance calculation: the safety data sheet, local codes and licensed practice decide":
    "{1} gibt in {3} um das Gelieren etwa {2} Styrol ab: {4} Frischluft für {5} ppm ({6}); veröffentlichte Grenzwerte reichen von {7} bis {8} ppm, sind von Land zu Land verschieden und ändern sich. Ab {9} der Luft brennt es. Das ist kein Nachweis: Sicherheitsdatenblatt, örtliche Vorschriften und Fachleute entscheiden",
  "{1} is coloured: stir {2} of tint into {3} of resin as one master batch, weigh the {4} cups from it, and only then dose each cup; coloured cup by cup they never match":
    "{1} ist gefärbt: {2} Farbe in {3} Harz als einen Stammansatz einrühren, die {4} Becher daraus abwiegen und erst dann jeden Becher dosieren; einzeln gefärbt passen sie nie zusammen",
  "the list of temperatures ends before every film is hard: times behind its end are not told; add the days that follow":
    "die Liste der Temperaturen endet, bevor jeder Film hart ist: Zeiten dahinter werden nicht genannt; die folgenden Tage ergänzen",
  "the fingertips say that {1} takes {2} of the model's time, further off than resins differ: look at the dose that was weighed, the shop's temperature and the times in the record":
    "nach den Fingerproben braucht {1} {2} der Zeit des Modells, weiter weg, als Harze sich unterscheiden: gewogene Dosis, Temperatur der Werkstatt und Zeiten im Protokoll prüfen",
  "recoat until": "neue Schicht bis",
  full: "ganz hart",
  "{1} at {2}": "{1} bei {2}",
  "{1} at {2}: read it again": "{1} bei {2}: noch einmal ablesen",
  "No cup can be mixed as things are.": "So kann kein Becher gemischt werden.",
  "no cup was measured": "kein Becher wurde gemessen",
  "a cup left standing as a cylinder as tall as it is wide, cooled by still air":
    "ein stehender Becher als Zylinder, so hoch wie breit, von ruhender Luft gekühlt",
  "one wet edge walks along the board": "eine nasse Kante wandert am Board entlang",
  "cups go on from the nose to the tail, each on an equal share of the face":
    "Becher gehen von der Nose zum Tail, jeder auf einen gleichen Teil der Fläche",
  "no air was measured; in a dead corner it is worse":
    "die Luft wurde nicht gemessen; in einer toten Ecke ist es schlimmer",
  "fresh air as a room needs it that mixes {1} times worse than a perfect stir":
    "Frischluft für einen Raum, der {1}-mal schlechter mischt als vollkommen",
  "no lamp or sky was measured: try a scrap in the light of the day":
    "weder Lampe noch Himmel wurde gemessen: ein Reststück im Licht des Tages probieren",
  "the same dose of light sets it, whatever the day":
    "dieselbe Lichtmenge härtet es, an welchem Tag auch immer",
  "{1} is one batch of {2}: so much runs hot in the cup, so pour all of it out at once and leave none standing":
    "{1} ist ein Ansatz von {2}: so viel wird im Becher heiß, also alles sofort ausgießen und nichts stehen lassen",
  "{1}: the first cup's cloth is hard before the last one's is leathery, because there are {2} between them; trim in the order it was laid, or bring a second person":
    "{1}: das Gewebe des ersten Bechers ist hart, bevor das des letzten lederartig ist, denn dazwischen liegen {2}; in der Reihenfolge des Legens trimmen oder zu zweit arbeiten",
  "no working hours are given; coats go on at their start, and the day's temperature holds for them":
    "keine Arbeitszeit angegeben; Schichten beginnen mit ihr, und für sie gilt die Tagestemperatur",
  "{1} to {2}": "{1} bis {2}",
  "no shop temperature is given; this one is held day and night, and every time of the mix hangs on it":
    "keine Werkstatttemperatur angegeben; diese gilt Tag und Nacht, und jede Zeit beim Mischen hängt daran",
  "a shop's air lies between {1} and {2}": "die Luft einer Werkstatt liegt zwischen {1} und {2}",
  "the hours from {1} to {2} end before they begin": "die Stunden von {1} bis {2} enden, bevor sie beginnen",
  '"{1}" is not a time like 2026-04-11T09:00': "„{1}“ ist keine Zeit wie 2026-04-11T09:00",
  "the list needs a reading before the start of work and one after it":
    "die Liste braucht eine Ablesung vor Arbeitsbeginn und eine danach",
  "{1} What would fit: {2}.": "{1} Was passen würde: {2}.",
  "{1}, and {2}.": "{1}, und {2}.",
  "{1}: even a cup of {2} takes {3} to spread": "{1}: selbst ein Becher von {2} braucht {3} zum Verteilen",
  "{1}, and {2}. It is poured at once to a wet edge and not split.":
    "{1}, und {2}. Er wird auf einmal nass in nass gegossen und nicht geteilt.",
  "a slower resin or hardener": "ein langsameres Harz oder langsamerer Härter",
  "{1}: one batch of {2} takes {3} to spread": "{1}: ein Ansatz von {2} braucht {3} zum Verteilen",
  "at {1} even the least dose of {2} may gel in {3}":
    "bei {1} kann selbst die kleinste Dosis von {2} in {3} gelieren",
  "at {1} it may gel in {2}": "bei {1} kann er in {2} gelieren",
  "a second person": "ein zweiter Mensch",
  "two or three small cups timed in this shop, to narrow the band":
    "zwei oder drei kleine Becher in dieser Werkstatt stoppen, um die Spanne zu verengen",
  "resin and shop at {1}, {2} after the start of work": "Harz und Werkstatt bei {1}, {2} nach Arbeitsbeginn",
  "resin at {1} or cooler in a shop no warmer": "Harz bei {1} oder kühler in einer nicht wärmeren Werkstatt",
  "{1}: the scale is too coarse for a cup of {2}, whose hardener must lie between {3} and {4}: mix more, and let what is left set outdoors":
    "{1}: die Waage ist zu grob für einen Becher von {2}, dessen Härter zwischen {3} und {4} liegen muss: mehr anmischen, und den Rest draußen fest werden lassen",
};
