/** The order of work, and what keeps a board from the water. */
export const STEPS: Readonly<Record<string, string>> = {
  "the order of work follows once the board file says how it is glassed":
    "die Reihenfolge der Arbeit folgt, sobald die Board-Datei sagt, wie laminiert wird",
  "nobody's own times are known yet": "eigene Zeiten sind noch nicht bekannt",
  "hands-on times by kind of work, face and practice": "Arbeitszeiten nach Art der Arbeit, Seite und Übung",
  "hands-on times need a size to go by": "Arbeitszeiten brauchen eine Größe als Maß",
  "faces of {1} and coats of {2} where the board's own are not known":
    "Seiten von {1} und Schichten von {2}, wo die eigenen nicht bekannt sind",
  "{1} shows on the {2} of the {3}, {4} from the tail: repair {5} is not done":
    "{1} liegt frei ({3}, {2}, {4} vom Tail): Reparatur {5} ist nicht gemacht",
  "{1}; the board is not for water until it is": "{1}; bis dahin darf das Board nicht ins Wasser",
  "the fins are not glassed on": "die Finnen sind nicht anlaminiert",
  "the fins' boxes are not sealed in": "die Finnenkästen sind nicht eingegossen",
  "{1} steps are still to do, next: {2}": "noch {1} Schritte, als Nächstes: {2}",
  "{1} is marked done, and this board has no such step":
    "{1} ist abgehakt, und dieses Board hat keinen solchen Schritt",
  "{1} is marked done before {2}: taken as it happened; {3}":
    "{1} ist vor {2} abgehakt: gilt, wie geschehen; {3}",
  "the fins are marked set before mark and verify said go: measure them where they stand and enter them as set, while a tack can still be broken":
    "die Finnen sind als gesetzt abgehakt, bevor Anreißen und Prüfen frei gaben: messen, wo sie stehen, und als gesetzt eintragen, solange sich eine Heftung noch lösen lässt",
  "the pockets are marked cut before mark and verify said go: measure what was cut and enter it as set, before resin holds the boxes":
    "die Taschen sind als gefräst abgehakt, bevor Anreißen und Prüfen frei gaben: messen, was gefräst ist, und als gesetzt eintragen, bevor Harz die Kästen hält",
  "{1} corrects {2}, and no earlier entry has that id: it stands as an entry of its own":
    "{1} berichtigt {2}, und kein früherer Eintrag heißt so: er gilt als eigener Eintrag",
  "the sand-through at {1} from the tail and {2} from the centreline, {3} across, is not on a board of {4}: measure it again; it is left out":
    "der Durchschliff {1} vom Tail und {2} von der Mittellinie, {3} groß, liegt nicht auf einem Board von {4}: noch einmal messen; er bleibt außer Acht",
  "the sand-through is not on a board of {1}: measure it again; it is left out":
    "der Durchschliff liegt nicht auf einem Board von {1}: noch einmal messen; er bleibt außer Acht",

  "keep it dry, and let the foam dry out": "trocken halten und den Schaum austrocknen lassen",
  "damp foam blisters under a patch": "feuchter Schaum wirft unter einem Patch Blasen",
  "feather the edge": "den Rand schräg auslaufen lassen",
  "a patch or coat needs a dull slope to hold on to, not a step":
    "Patch oder Schicht brauchen eine matte Schräge zum Haften, keine Stufe",
  "patch the glass, each layer larger than the one before":
    "das Glas flicken, jede Lage größer als die vorige",
  "cut fibres carry nothing until others lap over them":
    "durchtrennte Fasern tragen nichts, bis andere sie überlappen",
  "the patch holds on the feathered slope": "der Patch haftet auf der Schräge",
  "spot of fill coat, well past the edge": "Hotcoat-Fleck, weit über den Rand hinaus",
  "the sander needs a film here again": "der Schleifer braucht hier wieder einen Film",
  "the coat holds on the feathered slope": "die Schicht haftet auf der Schräge",
  "the coat bonds to a patch that has set and is still green":
    "die Schicht haftet auf einem Patch, der fest und noch nicht ausgehärtet ist",
  "a machine would be through again before it is felt": "eine Maschine wäre wieder durch, bevor man es spürt",
  "soft resin clogs the paper and tears": "weiches Harz setzt das Papier zu und reißt",
  "scratches and shine show through what follows": "Kratzer und Glanz scheinen durch, was folgt",
  "the water leaves the board from the bottom's edges, and they are made first":
    "das Wasser verlässt das Board an den Kanten der Unterseite, sie kommen zuerst",
  "the board lies on it now": "das Board liegt jetzt darauf",
  "resin about a box goes on shrinking until it is firm":
    "Harz um einen Kasten schrumpft weiter, bis es fest ist",
  "the glass about a fin tears while it is soft": "das Glas um eine Finne reißt, solange es weich ist",
  "Sand the deck and the rails": "Deck und Rails schleifen",
  "Sand the bottom, boxes flush": "Unterseite schleifen, Kästen bündig",
  "Last look: no foam, plug firm and pulled, weighed, wax and leash on":
    "Letzter Blick: kein Schaum, Plug fest und gezogen, gewogen, Wachs und Leash dran",
  "Last look: no foam, boxes and plug firm, plug pulled, fins tried, weighed, wax and leash on":
    "Letzter Blick: kein Schaum, Kästen und Plug fest, Plug gezogen, Finnen probiert, gewogen, Wachs und Leash dran",
  "Last look: no foam, fins and plug firm, plug pulled, weighed, wax and leash on":
    "Letzter Blick: kein Schaum, Finnen und Plug fest, Plug gezogen, gewogen, Wachs und Leash dran",
  "Last look: no foam, weighed, wax on": "Letzter Blick: kein Schaum, gewogen, Wachs drauf",
  "Last look: no foam, boxes firm, fins tried, weighed, wax on":
    "Letzter Blick: kein Schaum, Kästen fest, Finnen probiert, gewogen, Wachs drauf",
  "Last look: no foam, fins firm, weighed, wax on":
    "Letzter Blick: kein Schaum, Finnen fest, gewogen, Wachs drauf",
  "rails and laps carry the thinnest film and come last, with the lightest hand":
    "Rails und Überlappungen haben den dünnsten Film und kommen zuletzt, mit leichtester Hand",
  "resin about the plug goes on shrinking until it is firm":
    "Harz um den Plug schrumpft weiter, bis es fest ist",
  "the rails are blended from a finished bottom": "die Rails werden von der fertigen Unterseite her verzogen",
  "Gloss coat on the bottom": "Gloss auf die Unterseite",
  "one thin coat closes what the sander opened":
    "eine dünne Schicht schließt, was der Schleifer geöffnet hat",
  "Gloss coat on the deck": "Gloss aufs Deck",
  "Wet-sand, most carefully the bottom and the edges that the water leaves from":
    "Nass schleifen, am sorgfältigsten die Unterseite und die Kanten, an denen das Wasser abreißt",
  "each finer grit only takes out the scratches of the one before":
    "jede feinere Körnung nimmt nur die Kratzer der vorigen heraus",
  "Polish with compound": "Mit Paste polieren",
  "compound takes out what the finest paper leaves": "Paste nimmt heraus, was das feinste Papier lässt",
  "a deep scratch never polishes out": "ein tiefer Kratzer lässt sich nie wegpolieren",
  "Let it cure out": "Aushärten lassen",
  "resin that can be sanded is not yet as hard as it becomes: heels dent it, and wax and leash pull at it":
    "schleifbares Harz ist noch nicht so hart, wie es wird: Fersen drücken Dellen hinein, Wachs und Leash zerren daran",
  "nothing more is taken off or put on": "nichts wird mehr abgenommen oder aufgetragen",
  "what is found on the stand costs an hour, and in the water the board":
    "was am Ständer auffällt, kostet eine Stunde, im Wasser das Board",
  "the board must be cured out": "das Board muss ausgehärtet sein",
  "the pockets go into the finished foam": "die Taschen kommen in den fertigen Schaum",
  "a router tears a soft seal": "eine Oberfräse reißt ein weiches Siegel",
  "the pocket goes into the finished foam": "die Tasche kommt in den fertigen Schaum",
  "a cutter tears a soft seal": "eine Lochsäge reißt ein weiches Siegel",
  "a router tears a laminate that is still soft": "eine Oberfräse reißt ein noch weiches Laminat",
  "the board lies on its deck now": "das Board liegt jetzt auf dem Deck",
  "a cutter tears a laminate that is still soft": "eine Lochsäge reißt ein noch weiches Laminat",
  "a router tears a coat that is still soft": "eine Oberfräse reißt eine noch weiche Schicht",
  "a cutter tears a coat that is still soft": "eine Lochsäge reißt eine noch weiche Schicht",
  "Rout the pockets and try the boxes dry": "Taschen fräsen und die Kästen trocken probieren",
  "the marks are checked once more before anything is cut, and a box is tried before the resin is mixed":
    "die Marken werden vor dem Fräsen noch einmal geprüft, und ein Kasten wird probiert, bevor Harz gemischt ist",
  "the frame is set to the marks": "der Rahmen wird nach den Marken gesetzt",
  "Pour the boxes in": "Die Kästen eingießen",
  "a box that is not sealed all round lets water into the foam":
    "ein nicht rundum dichter Kasten lässt Wasser in den Schaum",
  "the boxes must fit before the resin is mixed": "die Kästen müssen passen, bevor Harz gemischt ist",
  "Cut the leash plug's hole and try it dry": "Das Loch für den Leashplug bohren und trocken probieren",
  "the plug is tried before the resin is mixed, clear of the boxes beneath":
    "der Plug wird probiert, bevor Harz gemischt ist, frei von den Kästen darunter",
  "the board is turned onto it, and the plug must clear what lies beneath":
    "das Board wird darauf gedreht, und der Plug muss frei von dem sein, was darunter liegt",
  "Pour the leash plug in": "Den Leashplug eingießen",
  "it takes the whole pull of a lost board": "er trägt den ganzen Zug eines verlorenen Boards",
  "the plug must fit before the resin is mixed": "der Plug muss passen, bevor Harz gemischt ist",
  "Stand the fins on their marks and tack them": "Die Finnen auf ihre Marken stellen und anheften",
  "toe and cant are set now and cannot be changed afterwards":
    "Vorspur und Cant werden jetzt eingestellt und sind danach fest",
  "the fins stand on the marks": "die Finnen stehen auf den Marken",
  "the tack bonds to a laminate that has set": "die Heftung haftet auf einem festen Laminat",
  "Glass the fins on: rope in the corners, patches over the sides":
    "Die Finnen anlaminieren: Roving in die Kehlen, Patches über die Seiten",
  "the fill coat then runs over fins and bottom in one":
    "der Hotcoat läuft dann über Finnen und Unterseite in einem",
  "the tacks hold the fins while they are glassed": "die Heftungen halten die Finnen beim Laminieren",
  "Cut the bottom's laps along the tape, and pull the tape":
    "Die Überlappung der Unterseite am Klebeband schneiden und das Band abziehen",
  "Trim strings and corners off the bottom's laps":
    "Fäden und Ecken von der Überlappung der Unterseite trimmen",
  "Cut the deck's laps along the tape, and pull the tape":
    "Die Überlappung des Decks am Klebeband schneiden und das Band abziehen",
  "Trim strings and corners off the deck's laps": "Fäden und Ecken von der Überlappung des Decks trimmen",
  "resin shows every tear, and a stringer that stands proud is sanded through first":
    "Harz zeigt jeden Riss, und ein vorstehender Stringer wird zuerst durchgeschliffen",
  "Seal the bottom's foam": "Den Schaum der Unterseite versiegeln",
  "open foam drinks the first laminate dry and breathes bubbles into it":
    "offener Schaum trinkt das erste Laminat trocken und bläst Blasen hinein",
  "dust under the seal lets go": "Staub unter dem Siegel löst sich",
  "Seal the deck's foam": "Den Schaum des Decks versiegeln",
  "Set out the fins and mark them": "Die Finnen ausmessen und anreißen",
  "marks pencilled on the foam show through the laminate":
    "Bleistiftmarken auf dem Schaum scheinen durchs Laminat",
  "marks go on the finished surface": "Marken kommen auf die fertige Oberfläche",
  "a pencil tears a wet seal": "ein Bleistift reißt ein nasses Siegel",
  "Laminate the bottom": "Die Unterseite laminieren",
  "the bottom goes first, so that the deck's laps cover its edge":
    "die Unterseite kommt zuerst, damit die Überlappung des Decks ihren Rand deckt",
  "dust lifts the cloth": "Staub hebt das Gewebe",
  "the marks must lie under the glass": "die Marken müssen unter dem Glas liegen",
  "dust stays under the coat": "Staub bleibt unter der Schicht",
  "the coat bonds to the seal while it is still green":
    "die Schicht haftet am Siegel, solange es nicht ausgehärtet ist",
  "the laminate bonds to the seal while it is still green":
    "das Laminat haftet am Siegel, solange es nicht ausgehärtet ist",
  "boxes are ground flush before cloth lies over them":
    "Kästen werden bündig geschliffen, bevor Gewebe darüber liegt",
  "cloth cuts clean while it is leathery: sooner it drags, later it must be ground":
    "lederartig schneidet sich Gewebe sauber: früher zieht es, später muss man schleifen",
  "wet cloth drags under the knife": "nasses Gewebe zieht unter dem Messer",
  "Level the bottom's laps": "Die Überlappung der Unterseite einebnen",
  "a proud lap edge bridges the deck's cloth and traps air beside it":
    "ein vorstehender Rand hebt das Gewebe des Decks und schließt daneben Luft ein",
  "untrimmed cloth cannot be levelled": "ungetrimmtes Gewebe lässt sich nicht einebnen",
  "the board is turned onto it": "das Board wird darauf gedreht",
  "Laminate the deck": "Das Deck laminieren",
  "its laps run over the bottom's, and the rails end up with both":
    "seine Überlappung läuft über die der Unterseite, die Rails bekommen beide",
  "the cloth must lie down over the laps": "das Gewebe muss sich über die Überlappung legen",
  "the plug is ground flush before cloth lies over it":
    "der Plug wird bündig geschliffen, bevor Gewebe darüber liegt",
  "Fill coat on the bottom, rails taped": "Hotcoat auf die Unterseite, Rails abgeklebt",
  "it fills the weave and gives the sander a film of its own, so that the glass stays whole":
    "er füllt die Gewebestruktur und gibt dem Schleifer einen eigenen Film, damit das Glas heil bleibt",
  "loose threads stand up in the coat": "lose Fäden stehen in der Schicht auf",
  "the coat bonds to a laminate that has set and is still green":
    "die Schicht haftet auf einem Laminat, das fest und noch nicht ausgehärtet ist",
  "boxes are ground flush before the coat": "Kästen werden vor der Schicht bündig geschliffen",
  "the glass about the fins is smoothed before the coat runs over it":
    "das Glas um die Finnen wird geglättet, bevor die Schicht darüber läuft",
  "Fill coat on the deck, rails taped": "Hotcoat aufs Deck, Rails abgeklebt",
  "the plug is ground flush before the coat": "der Plug wird vor der Schicht bündig geschliffen",
  "water and dirt stay under what closes over them": "Wasser und Schmutz bleiben unter dem, was sie zudeckt",
  "work and cautions of polystyrene foam": "Arbeit und Warnungen für Polystyrolschaum",
  "the foam is not known, and what is safe on polystyrene is safe on the others":
    "der Schaum ist nicht bekannt, und was auf Polystyrol sicher ist, ist es auf den anderen auch",
  "boxes set after the fill coat": "Kästen nach der Füllschicht gesetzt",
  "when the boxes go in was not given": "wann die Kästen gesetzt werden, war nicht angegeben",
  "leash plug set after the fill coat": "Leashplug nach der Füllschicht gesetzt",
  "glassed-on fins bring no boxes to set it with":
    "anlaminierte Finnen bringen keine Kästen mit, mit denen er gesetzt würde",
  "no vent": "kein Ventil",
  "none was asked for; a dark board in the sun, a hot car or a flight are what a vent is for":
    "keines verlangt; ein dunkles Board in der Sonne, ein heißes Auto oder ein Flug sind der Grund für ein Ventil",
  "the pinline gets a brushed coat of its own": "die Pinline bekommt eine eigene, gepinselte Schicht",
  "no gloss coat goes over it": "keine Glanzschicht liegt darüber",
  "Set the vent on the deck beside the stringer, ahead of the front foot, sealed round with epoxy; open in heat, in the car and in flight, closed before the water":
    "Ventil ins Deck setzen, neben dem Stringer vor dem vorderen Fuß, ringsum mit Epoxid gedichtet; offen in Hitze, im Auto und im Flug, geschlossen vor dem Wasser",
  "air in polystyrene foam swells with heat and height and lifts the glass off it":
    "Luft im Polystyrolschaum dehnt sich mit Hitze und Höhe und hebt das Laminat ab",
  "the hole goes into the finished deck": "das Loch kommt ins fertige Deck",
  "Tape and pull the pinline over the laps' edge, before the gloss coat covers it":
    "Pinline über der Kante der Überlappung abkleben und ziehen, bevor die Glanzschicht sie deckt",
  "Tape and pull the pinline over the laps' edge, and brush a thin coat over it":
    "Pinline über der Kante der Überlappung abkleben und ziehen, und eine dünne Schicht darüber pinseln",
  "it hides the edge of a tinted or cut lap":
    "sie verdeckt die Kante einer getönten oder geschnittenen Überlappung",
  "the gloss coat lies over it": "die Glanzschicht liegt darüber",
  "Prepare the blank: fill tears, blow off dust, stringer a hair low, no fingerprints":
    "Blank vorbereiten: Ausrisse füllen, Staub abblasen, Stringer eine Spur tiefer, keine Fingerabdrücke",
  "Prepare the blank: fill tears and open beads with epoxy and light filler, blow off dust, stringer a hair low; no acetone, no polyester":
    "Blank vorbereiten: Ausrisse und offene Perlen mit Epoxid und leichtem Füllstoff füllen, Staub abblasen, Stringer eine Spur tiefer; kein Aceton, kein Polyester",
  "Prepare the blank: scratch the whole skin open so that resin holds, fill tears with epoxy and light filler, blow off dust, stringer a hair low; no acetone, no polyester":
    "Blank vorbereiten: die ganze Haut anrauen, damit Harz hält, Ausrisse mit Epoxid und leichtem Füllstoff füllen, Staub abblasen, Stringer eine Spur tiefer; kein Aceton, kein Polyester",
  "Prepare the blank: find out what foam it is, fill tears, blow off dust, stringer a hair low":
    "Blank vorbereiten: herausfinden, welcher Schaum es ist, Ausrisse füllen, Staub abblasen, Stringer eine Spur tiefer",
  "Tape the bottom's cut-lap line on the deck, and hang a skirt below it":
    "Schnittlinie der Unterseiten-Überlappung auf dem Deck abkleben, eine Schürze darunter hängen",
  "Tape the deck's cut-lap line on the bottom, and hang a skirt below it":
    "Schnittlinie der Deck-Überlappung auf der Unterseite abkleben, eine Schürze darunter hängen",
  "a cut lap is only as clean as its tape":
    "eine geschnittene Überlappung wird nur so sauber wie ihr Klebeband",
  "tape does not hold on dust": "auf Staub hält kein Klebeband",
  "tape tears a wet seal": "Klebeband reißt eine nasse Versiegelung auf",
  "the line runs over the bottom's levelled laps":
    "die Linie läuft über die geebneten Überlappungen der Unterseite",
  "the cloth is cut along the tape": "das Gewebe wird am Band entlang geschnitten",
  "Lay the logos on the deck, face up, with a little resin, and smooth them down":
    "Logos mit der Schauseite nach oben mit etwas Harz aufs Deck legen und glatt streichen",
  "under the cloth they are sealed in and never sanded":
    "unter dem Gewebe sind sie versiegelt und werden nie geschliffen",
  "the board lies deck up from here": "von hier an liegt das Board mit dem Deck nach oben",
  "they lie under the cloth": "sie liegen unter dem Gewebe",
  "Have ready: {1}": "Bereitlegen: {1}",
  "a brush": "ein Pinsel",
  "a cup of the laminating resin": "ein Becher vom Laminierharz",
  "a drill bit of its size": "ein Bohrer in ihrer Größe",
  "a vent screw with its seal": "eine Ventilschraube mit Dichtung",
  "alcohol for wiping, never acetone": "Alkohol zum Abwischen, nie Aceton",
  "block plane for the stringer": "Einhandhobel für den Stringer",
  "clean gloves": "saubere Handschuhe",
  "coarse paper": "grobes Schleifpapier",
  "fine line tape": "feines Linienband",
  "glass rope, or filler for the corners": "Glasroving oder Füllstoff für die Kehlen",
  "light filler that the resin bonds to": "leichte Spachtelmasse, an der das Harz haftet",
  "light filler": "leichter Füllstoff",
  "logos printed on thin paper that resin wets clear":
    "Logos auf dünnem Papier, das im Harz durchsichtig wird",
  "paint pen, or resin with pigment and a fine brush":
    "Lackstift, oder Harz mit Pigment und ein feiner Pinsel",
  "paper or film for the skirt": "Papier oder Folie für die Schürze",
  "sharp-edged masking tape": "scharfkantiges Abklebeband",
  "repair {1} is of a sand-through struck before {2} is marked done: taken as it happened; mark what was laid, or correct the entry, if it was a slip":
    "Reparatur {1} ist von einem Durchschliff, bevor {2} als getan vermerkt ist: genommen, wie es geschah; vermerken, was laminiert wurde, oder den Eintrag richtigstellen, wenn er ein Versehen war",
};
