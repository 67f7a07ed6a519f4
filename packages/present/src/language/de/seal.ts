/** From papers of the builder's own over the record and repairs to the days of the first surf. */
export const SEAL: Readonly<Record<string, string>> = {
  "no dry paper is named: the fill coat is sanded with at least one":
    "kein trockenes Papier genannt: der Hotcoat wird mit wenigstens einem geschliffen",
  "{1} comes after {2}, and papers go from coarse to fine: put them in order, each once":
    "{1} kommt nach {2}, und Papiere gehen von grob nach fein: in diese Folge bringen, jedes einmal",
  "from {1} straight to {2} the scratches of {3} stay: the grain falls to less than half; put {4} between them":
    "von {1} gleich zu {2} bleiben die Riefen von {3}: das Korn fällt auf weniger als die Hälfte; {4} dazwischen nehmen",
  "wet papers are for a wet-sanded or a gloss finish, and this board is only sanded: they are left out":
    "nasse Papiere sind für nass geschliffenes Finish oder Glanz, und dieses Board wird nur geschliffen: sie bleiben weg",
  "it begins with {1}: levelling the coat with so fine a paper takes several times as long, which the times here do not count":
    "es beginnt mit {1}: den Coat mit so feinem Papier zu ebnen dauert mehrfach so lange, was die Zeiten hier nicht zählen",
  "it ends with {1}: a sanded board usually ends at {2} or finer, and coarser scratches drag and hold dirt":
    "es endet mit {1}: ein geschliffenes Board endet meist bei {2} oder feiner, und gröbere Riefen bremsen und halten Schmutz",
  "the order of work is not known yet, so nothing can be called sealed":
    "die Reihenfolge der Arbeit ist noch nicht bekannt, also kann nichts dicht heißen",
  "{1}; the board is not finished until it is": "{1}; bis dahin ist das Board nicht fertig",
  "foam shows: neither face is glassed yet": "Schaum liegt offen: keine Seite ist laminiert",
  "foam shows: the bottom is not glassed yet": "Schaum liegt offen: die Unterseite ist nicht laminiert",
  "foam shows: the deck is not glassed yet": "Schaum liegt offen: das Deck ist nicht laminiert",
  "the leash plug is not sealed in": "der Leashplug ist nicht eingegossen",
  "the rest is sanded first, clear of it: nothing is sanded beside a wet patch":
    "der Rest wird zuerst geschliffen, mit Abstand davon: neben einem nassen Flicken wird nicht geschliffen",
  "Ink: hands on. Amber: curing or resting until the next step may begin. Bracket beneath: the window in which it must begin. Broken line: how far it can slip. Shaded: the shop is shut.":
    "Tinte: Handarbeit. Bernstein: härtet oder ruht, bis der nächste Schritt beginnen darf. Klammer darunter: das Fenster, in dem er beginnen muss. Gestrichelt: so weit kann er rutschen. Schattiert: die Werkstatt ist zu.",
  "Grey: done.": "Grau: fertig.",
  "Red lead: its window has closed before.": "Mennige: sein Fenster ist vorher zu.",
  ", {1} to spare": ", {1} Luft",
  "Rings on the board: where, with the repair's number, tail at the left. Beneath: the spot, and round it each patch from edge to edge.":
    "Ringe auf dem Board: wo, mit der Nummer der Reparatur, Tail links. Darunter: die Stelle und um sie jeder Flicken von Rand zu Rand.",
  "{1} shows, {2}": "{1} zu sehen, {2}",
  "feathered, {1}": "ausgeschliffen, {1}",
  "fill coat, {1}": "Hotcoat, {1}",
  "Repair {1}, drawn 1 : {2}": "Reparatur {1}, gezeichnet 1 : {2}",
  "Not for water · {1}": "Nicht ins Wasser · {1}",
  "Not for water": "Nicht ins Wasser",
  "Not ready for water": "Noch nicht fertig fürs Wasser",
  "µm of film": "µm Film",
  "takes, µm": "nimmt, µm",
  "leaves, µm": "Riefen, µm",
  'After "{1}": {2}.': "Nach „{1}“: {2}.",
  'After "{1}", once it has come so far: {2}.': "Nach „{1}“, sobald es so weit ist: {2}.",
  '{1} after "{2}": {3}.': "{1} nach „{2}“: {3}.",
  "Make it level first: what was sanded away is {1} deep ({2} to {3}) and takes {4} ({5} to {6}) of the patch resin, counted in its cup; thicken that much until it stays put.":
    "Zuerst eben machen: was weggeschliffen ist, ist {1} tief ({2} bis {3}) und nimmt {4} ({5} bis {6}) des Flickenharzes, in dessen Becher mitgezählt; so viel davon andicken, bis es stehen bleibt.",
  "It has the cup's dose, {1}.": "Dosiert ist es wie der Becher, {1}.",
  "A hollow deeper than a coat is filled with a cup of its own first, thickened, and left to set.":
    "Eine Mulde, tiefer als eine Schicht, wird zuerst mit einem eigenen, angedickten Becher gefüllt und fest werden gelassen.",
  "Patch, the smallest first, into the wet resin: {1}. The cut list has them apart from the order, for the repairs.":
    "Flicken ins nasse Harz, der kleinste zuerst: {1}. Die Schnittliste führt sie getrennt vom Auftrag, für die Reparaturen.",
  "For the repairs, {1}: {2} more of a roll {3} wide, or what is left of it where that is large enough.":
    "Für die Reparaturen, {1}: {2} mehr von einer {3} breiten Rolle, oder was davon übrig ist, wenn es groß genug ist.",
  "Round, from edge to edge: {1}.": "Rund, von Kante zu Kante: {1}.",
  "{1} is wider than the roll: lay it in {2} strips.":
    "{1} ist breiter als die Rolle: in {2} Streifen legen.",
  "{1} more of {2} for round patches ({3})": "{1} mehr von {2} für runde Flicken ({3})",
  "{1} it is {2} deep and takes {3}": "{1} ist sie {2} tief und nimmt {3}",
  "Make the spot level before its patches, out of their cup and thickened until it stays put: {1}.":
    "Die Stelle vor ihren Flicken eben machen, aus deren Becher und so weit eingedickt, dass es stehen bleibt: {1}.",
  "For the repairs: {1}.": "Für die Reparaturen: {1}.",
  "For the repairs": "Für die Reparaturen",
  "repair {1}, patch {2}": "Reparatur {1}, Flicken {2}",
  "a spot is as deep as film and skin are in the middle of its face; the thickener in it is not counted":
    "eine Stelle ist so tief, wie Film und Haut in der Mitte ihrer Seite dick sind; das Verdickungsmittel darin ist nicht gezählt",
  "how deep the paper went was not measured, and a few grams of resin take a pinch of powder":
    "wie tief das Papier ging, wurde nicht gemessen, und ein paar Gramm Harz brauchen eine Prise Pulver",
  "Sand it level by hand once it is hard.": "Von Hand ebenschleifen, wenn es hart ist.",
  "Days: {1} to {2}.": "Tage: {1} bis {2}.",
  "Not for water: {1}.": "Nicht ins Wasser: {1}.",
  "Ready for water: every step is marked done and nothing is open.":
    "Fertig fürs Wasser: jeder Schritt ist abgehakt und nichts ist offen.",
  "Not for water.": "Nicht ins Wasser.",
  "Go by the days: a step's waits are those of a coat that goes on at the hour its cups are dosed for, counted from hands off; the days take each coat from the hour it goes on there, and what is laid late cures through the cooler night and takes longer.":
    "Es gelten die Tage: die Wartezeiten eines Schritts sind die eines Coats zu der Stunde, für die seine Becher dosiert sind, ab Hände weg; die Tage nehmen jeden Coat ab der Stunde, zu der er dort aufkommt, und was spät gelegt wird, härtet durch die kühlere Nacht und braucht länger.",
  Record: "Protokoll",
  "corrected by {1}": "berichtigt durch {1}",
  "{1}: it was a slip": "{1}: war ein Versehen",
  "It was a slip": "War ein Versehen",
  "Weighed after {1}: {2}": "Gewogen nach {1}: {2}",
  "Mixed for {1}: {2} and {3}": "Gemischt für {1}: {2} und {3}",
  "Touched {1}: {2}": "Getastet, {1}: {2}",
  "{1} shows: {2}, {3}, {4} from the tail, {5} across": "{1} zu sehen: {2}, {3}, {4} vom Tail, {5} groß",
  "Film gauged, {1}: {2}, before any paper": "Film gemessen, {1}: {2}, vor jedem Papier",
  "Film gauged, {1}: {2}, after {3}": "Film gemessen, {1}: {2}, nach {3}",
  "Dust weighed, {1}: {2}, after {3}": "Staub gewogen, {1}: {2}, nach {3}",
  "Struck {1}: it was a slip": "{1} gestrichen: war ein Versehen",
  "Dust weighed": "Staub gewogen",
  "After the paper": "Nach dem Papier",
  "All its dust so far weighs": "All ihr Staub bisher wiegt",
  "Film gauged": "Film gemessen",
  Zone: "Zone",
  Deck: "Deck",
  "Bottom, bottom up": "Unterseite, Unterseite oben",
  "Done: {1}.": "Fertig: {1}.",
  "Leave it": "Lassen",
  "none yet": "noch keines",
  "The gauge reads": "Das Messgerät zeigt",
  "a film is nought or more": "ein Film ist null oder mehr",
  "Film by zone in µm, first where it goes through first":
    "Film je Zone in µm, zuerst, wo er zuerst durch ist",
  "Still open": "Noch offen",
  "To the step": "Zum Schritt",
  Repairs: "Reparaturen",
  "{1}, repairs": "{1}, Reparaturen",
  "Where the repairs are on the board, and each spot with its patches; the figures stand below in words.":
    "Wo die Reparaturen auf dem Board liegen, und jede Stelle mit ihren Flicken; die Zahlen stehen darunter in Worten.",
  "Mark done": "Abhaken",
  "Change the mark": "Haken ändern",
  "Hands off at": "Hände weg um",
  "The board weighs, if it was on the scale": "Das Board wiegt, falls es auf der Waage war",
  "After what, and why": "Nach was, und warum",
  "In reach: {1}.": "In Reichweite: {1}.",
  Days: "Tage",
  "{1}, days to the first surf": "{1}, Tage bis zum ersten Surf",
  "A bar for each step in order of time; the same stands below in words.":
    "Ein Balken je Schritt in der Folge der Zeit; dasselbe steht darunter in Worten.",
  "The days of all boards": "Die Tage aller Boards",
  "A row for each board; its first surf stands below in words.":
    "Eine Zeile je Board; sein erster Surf steht darunter in Worten.",
  "{1}: first surf {2}": "{1}: erster Surf {2}",
  "not for water": "nicht ins Wasser",
  "Ink: hands on. Amber: curing. Each board as if it had stands and hands to itself; the command lapline calendar with several files shares them out.":
    "Tinte: Handarbeit. Bernstein: härtet. Jedes Board, als hätte es Böcke und Hände für sich; der Befehl lapline calendar mit mehreren Dateien teilt sie auf.",
  "FIRST SURF": "ERSTER SURF",
  STANDS: "BÖCKE",
  "WHAT SLIPS": "WAS RUTSCHEN DARF",
  "So late each step may begin with every board's first surf where it is; what is left out has no room at all.":
    "So spät darf jeder Schritt beginnen, ohne dass ein erster Surf sich verschiebt; was fehlt, hat gar keine Luft.",
  alone: "allein",
  here: "hier",
  "later by": "später um",
  "steps that wait for stands": "Schritte, die auf Böcke warten",
  "for hands": "auf Hände",
  stands: "Böcke",
  step: "Schritt",
  planned: "geplant",
  "at the latest": "spätestens",
  room: "Luft",
  "--stands is for several boards: name more than one file.":
    "--stands gilt für mehrere Boards: mehr als eine Datei angeben.",
  "--stands is a whole number from 1 to {1}; {2} was given.":
    "--stands ist eine ganze Zahl von 1 bis {1}; angegeben war {2}.",
  "There is no calendar of the shop: {1}. Nothing was written.":
    "Es gibt keinen Kalender der Werkstatt: {1}. Nichts wurde geschrieben.",
  "{1} coats begin when the coat below has stopped bonding: {2}. Sand each dull first, {3} in all are planned for it; longer hours or a slower resin would spare it":
    "{1} Coats beginnen, wenn der Coat darunter nicht mehr bindet: {2}. Jeden erst mattschleifen, zusammen {3} sind dafür geplant; längere Stunden oder ein langsameres Harz würden es sparen",
  rails: "Rails",
  "a scale": "eine Waage",
  "wax for the water's temperature": "Wachs für die Wassertemperatur",
  "the leash": "die Leash",
  "the fins and what holds them": "die Finnen und was sie hält",
  "the vent's screw, closed now and tried": "die Schraube des Ventils, jetzt zu und geprüft",
  "sand the spot level with the deck, by hand": "die Stelle von Hand bündig mit dem Deck schleifen",
  "sand the spot level with the bottom, by hand": "die Stelle von Hand bündig mit der Unterseite schleifen",
  "The days in words": "Die Tage in Worten",
};
