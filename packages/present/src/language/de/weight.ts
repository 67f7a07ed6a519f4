/** What the board weighs. */
export const WEIGHT: Readonly<Record<string, string>> = {
  "the weight waits for {1}": "fürs Gewicht fehlt noch: {1}",
  "the shaped blank must weigh more than its stringer, about {1}":
    "der geshapte Blank muss mehr wiegen als sein Stringer, etwa {1}",
  "how much goes off hangs on the hand; a sanded board comes out lighter by part of its fill coat":
    "wie viel abgeht, hängt an der Hand; geschliffen wird das Board um einen Teil des Hotcoats leichter",
  "what sanding takes off is left in": "was das Schleifen abnimmt, ist noch dabei",
  "the weighed blank less its stringer": "der gewogene Blank ohne Stringer",
  "the scale is nearer than volume times density; it may be {1} off":
    "die Waage ist genauer als Volumen mal Dichte; sie kann um {1} daneben liegen",
  "boxes are described by footprint and depth only":
    "Kästen sind nur durch Grundfläche und Tiefe beschrieben",
  "about half of a box's block is plastic": "etwa die Hälfte des Kastenblocks ist Kunststoff",
  "no deck fullness would make the two agree: look at the scale, the foam's density or the readings":
    "keine Fülle des Decks bringt beide überein: Waage, Schaumdichte oder Ablesungen prüfen",
  "a deck fullness of {1} would make the two agree; it is not applied":
    "eine Fülle des Decks von {1} brächte beide überein; sie wird nicht angewendet",
  "by the scale the blank holds {1} ({2} to {3}), by its shape {4}; {5}":
    "nach der Waage fasst der Blank {1} ({2} bis {3}), nach dem Shape {4}; {5}",
  "the board file names none": "die Board-Datei nennt keinen",
  "no stringer": "kein Stringer",
  "no wood {1} is known; the nearest are {2}": "kein Holz {1} bekannt; am nächsten sind {2}",
  "a stringer's thickness lies between nought and {1}; it is usually {2} to {3}":
    "die Dicke eines Stringers liegt zwischen null und {1}; üblich sind {2} bis {3}",
  "no wood was named": "kein Holz genannt",
  "sea water of {1}, the volume of the shaped blank": "Meerwasser mit {1}, das Volumen des geshapten Blanks",
  "left out: the skin's own thickness, fins, wax and leash, the wetsuit's mass and lift, the part of the rider that is under water, and the lift of a moving board":
    "nicht gerechnet: Dicke der Haut, Finnen, Wachs und Leash, Masse und Auftrieb des Neoprens, der Teil des Fahrers unter Wasser und der Auftrieb in Fahrt",
  part: "Teil",
  "board after": "Board nach",
  "Just under still sea water it pushes {1} of water aside, weighs {2} of that itself and carries {3} ({4} to {5}).":
    "Knapp unter stillem Meerwasser verdrängt es {1} Wasser, wiegt davon selbst {2} und trägt {3} ({4} bis {5}).",
  "A rider of {1} is {2} more than that: standing still, board and rider sink until so much of the rider is under water.":
    "Ein Fahrer von {1} ist {2} schwerer als das: im Stand sinken Board und Fahrer, bis so viel vom Fahrer unter Wasser ist.",
  "A rider of {1} leaves {2} in hand.": "Bei einem Fahrer von {1} bleiben {2} übrig.",
  "Skin, fins, wetsuit and the lift of a moving board are left out.":
    "Haut, Finnen, Neopren und der Auftrieb in Fahrt sind nicht gerechnet.",
  "the weighing {1} stands after {2}, and this board has no such step: it is left out":
    "die Wägung {1} steht nach {2}, und dieses Board hat keinen solchen Schritt: sie bleibt weg",
  "the weighing {1} is no mass above nought: it is left out":
    "die Wägung {1} ist keine Masse über null: sie bleibt weg",
  "weighed twice after {1}: the later counts, not {2}":
    "zweimal gewogen nach {1}: die spätere Wägung zählt, nicht {2}",
  "{1} heavier after {2}, and no coat was laid since {3}: one of the two weighings is wrong, or stands at the wrong step":
    "{1} schwerer nach {2}, und seit {3} kam keine Schicht dazu: eine der beiden Wägungen stimmt nicht oder steht beim falschen Schritt",
  "{1} lighter after {2}, with {3} laid since {4}: one of the two weighings is wrong, or much was sanded or cut off":
    "{1} leichter nach {2}, obwohl {3} seit {4} dazukam: eine der beiden Wägungen stimmt nicht, oder es wurde viel abgeschliffen oder abgeschnitten",
  "{1} gained by {2}, less than its cloth alone weighs, {3}: one of the two weighings is wrong, or something was cut off":
    "{1} mehr bis {2}, weniger als das Gewebe allein wiegt, {3}: eine der beiden Wägungen stimmt nicht, oder es wurde etwas abgeschnitten",
  "{1} of resin on the board after {2}, and only {3} in the record's cups: a cup is missing from the record, or a weighing is wrong":
    "{1} Harz auf dem Board nach {2}, und nur {3} in den notierten Bechern: ein Becher fehlt, oder eine Wägung stimmt nicht",
  "{1} coats in one difference, up to {2}: weigh after each to tell them apart":
    "{1} Schichten in einer Differenz, bis {2}: nach jeder wiegen, um sie zu trennen",
  "weighed before the cloth of {1} was trimmed: what hangs over is in it; weigh again after the trimming":
    "gewogen, bevor das Gewebe von {1} beschnitten war: der Überhang ist dabei; nach dem Beschneiden noch einmal wiegen",
  "between the weighings stands {1} too: what that took off or put on is in the difference":
    "zwischen den Wägungen steht auch {1}: was dabei ab oder dazu kam, ist in der Differenz",
  "{1} of resin stayed on by {2}, {3} of the plan's {4} ({5} to {6}): the coats to come are reckoned beside it, the plan is left as it is":
    "{1} Harz blieb bis {2}, {3} der geplanten {4} ({5} bis {6}): die nächsten Schichten stehen daneben gerechnet, der Plan bleibt, wie er ist",
  "the weighings wait for the glass and the weight by plan":
    "die Wägungen warten auf Laminat und Gewicht nach Plan",
  "a scale that shows steps of {1}": "eine Waage mit Schritten von {1}",
  "the scale's smallest step was not given": "der kleinste Schritt der Waage ist nicht angegeben",
  "cloth, what the foam drinks and what fills the weave by plan; nothing else taken off or put on between two weighings":
    "Gewebe, was der Schaum schluckt und was das Gewebe füllt nach Plan; sonst zwischen zwei Wägungen nichts ab oder dazu",
  "the scale knows only the whole board; weigh after trimming, before sanding":
    "die Waage kennt nur das ganze Board; nach dem Beschneiden wiegen, vor dem Schleifen",
  "WEIGH-IN": "WÄGUNG",
  gained: "mehr",
  "resin kept": "Harz geblieben",
  "{1}: {2} of resin stayed on ({3} to {4}), {5} of the plan.":
    "{1}: {2} Harz blieb ({3} bis {4}), {5} des Plans.",
  "That is {1} of resin to one of glass.": "Das sind {1} Teile Harz auf einen Teil Glas.",
  "The film is {1} ({2} to {3}), even over the face.":
    "Der Film ist {1} ({2} bis {3}), gleichmäßig über die Seite.",
  "Of {1} mixed, {2} went elsewhere.": "Von {1} gemischt ging {2} anderswohin.",
  "At this rate {1} takes {2} mixed ({3} to {4}); the plan has {5}.":
    "So gerechnet braucht {1} {2} gemischt ({3} bis {4}); der Plan hat {5}.",
  "the cost waits for the glass": "die Kosten warten auf das Laminat",
  "a price is nought or more, and a pack, its pieces and what is used are above nought":
    "ein Preis ist null oder mehr; Packung, Stückzahl und Verbrauch sind größer als null",
  "no prices are given: put them into shop.prices, in your own money":
    "keine Preise angegeben: unter shop.prices eintragen, in der eigenen Währung",
  "{1} on the scale after {2}, where the plan has {3} ({4} to {5}): look at scale, unit and step, or weigh the shaped blank and write it down":
    "{1} auf der Waage nach {2}, wo der Plan {3} hat ({4} bis {5}): Waage, Einheit und Schritt ansehen, oder den geshapten Rohling wiegen und eintragen",
  "the cloth is in no line and no total: it cannot be cut as planned, see what stops the cut plan":
    "das Gewebe steht in keiner Zeile und keiner Summe: so wie geplant lässt es sich nicht schneiden, siehe, was den Schnittplan aufhält",
  "the total leaves out what has no price: {1}": "in der Summe fehlt, was keinen Preis hat: {1}",
  "the price of {1} needs its pack: resin, hardener and tint by mass or volume, wax by volume":
    "zum Preis von {1} gehört die Packung: Harz, Härter und Farbe nach Masse oder Volumen, Paraffin nach Volumen",
  "what this board takes of a pack at the pack's price; nothing in stock":
    "was dieses Board von einer Packung nimmt, zum Preis der Packung; nichts auf Lager",
  "work, rent, power, fins and shipping are left out; a tin that is not emptied is counted by what was taken":
    "Arbeit, Miete, Strom, Finnen und Versand sind nicht gerechnet; eine nicht geleerte Dose zählt mit dem, was entnommen wurde",
  COST: "KOSTEN",
  material: "Material",
  "this board takes": "braucht das Board",
  "in whole packs": "in ganzen Packungen",
  wasted: "davon Abfall",
  "to buy": "kaufen",
  "left over": "bleibt übrig",
  cost: "Kosten",
  "no price": "kein Preis",
  "{1} cut to length": "{1} vom Stück",
  "{1} of {2}": "{1} zu {2}",
  "{1} for this board, waste with it; {2} in whole packs, in your own money.":
    "{1} für dieses Board, Abfall dabei; {2} in ganzen Packungen, in der eigenen Währung.",
  "Left out, without a price: {1}.": "Nicht dabei, ohne Preis: {1}.",
  tint: "Farbe",
  box: "Kasten",
  "box-centre": "Kasten Mitte",
  "{1} hardener": "{1} Härter",
};
