/** Wie Mischung und Zeiten zustande kommen. */
export const WHY_MIX: Readonly<Record<string, string>> = {
  "where the shop's damp settles on anything colder":
    "wo sich die Feuchte der Werkstatt auf allem Kälteren niederschlägt",
  "the shop's air at the hour the coat goes on":
    "die Luft der Werkstatt zu der Stunde, in der die Schicht kommt",
  "the resin before the hardener goes in": "das Harz, bevor der Härter hineinkommt",
  "peroxide: the strongest dose in the range whose early gel still leaves the time to spread a cup; two-part: the sheet's ratio":
    "Peroxid: die stärkste Dosis im Bereich, deren frühes Gelieren noch die Zeit lässt, einen Becher zu verteilen; Zweikomponenten: das Verhältnis des Datenblatts",
  "how much a stronger dose quickens the gel; nought where the ratio is fixed":
    "wie sehr eine stärkere Dosis das Gelieren beschleunigt; null, wo das Verhältnis fest ist",
  "how much each kelvin quickens gel and cure, J/mol":
    "wie sehr jedes Kelvin Gelieren und Härten beschleunigt, J/mol",
  "a gel point's temperature": "die Temperatur eines Gelpunkts",
  "a gel point's dose, hardener over base by mass": "die Dosis eines Gelpunkts, Härter zu Harz nach Masse",
  "a gel point's time": "die Zeit eines Gelpunkts",
  "what the fit gives at this point": "was der Ausgleich an diesem Punkt gibt",
  "a UV index as a forecast gives it": "ein UV-Index, wie ihn die Vorhersage gibt",
  "how long a laminate lies in such a sun until it is hard: the same dose of light":
    "wie lange ein Laminat in solcher Sonne liegt, bis es hart ist: dieselbe Menge Licht",
  "a temperature of the resin, colder or warmer than planned, at which the cup's gel is told":
    "eine Temperatur des Harzes, kälter oder wärmer als geplant, bei der das Gelieren des Bechers genannt wird",
  "even steps over all that the shop's air comes to, and at least 4 K to each side of the cup's own; none where the resin does not set or the fit reaches too far":
    "gleiche Schritte über alles, worauf die Luft der Werkstatt kommt, und mindestens 4 K nach jeder Seite der eigenen des Bechers; keine, wo das Harz nicht härtet oder der Ausgleich zu weit reicht",
  "when a cup of this dose and mass gels with the resin at that temperature":
    "wann ein Becher dieser Dosis und Masse geliert, wenn das Harz diese Temperatur hat",
  "the coldest that the shop's air comes to, as far as it is known":
    "das Kälteste, worauf die Luft der Werkstatt kommt, soweit bekannt",
  "the warmest that the shop's air comes to, as far as it is known":
    "das Wärmste, worauf die Luft der Werkstatt kommt, soweit bekannt",
  "least and most of the shop's temperatures, as given":
    "kleinste und größte der Temperaturen der Werkstatt, wie angegeben",
  "shop's air by day": "Luft der Werkstatt am Tag",
  "shop's air by night": "Luft der Werkstatt in der Nacht",
  "early end of a band": "frühes Ende eines Bands",
  "late end of a band": "spätes Ende eines Bands",
  "how many times as long as the model says this film takes, by fingertip tests after the cups that the record has":
    "wie viel mal so lange wie im Modell dieser Film braucht, nach Fingerproben zu den Bechern im Protokoll",
  "the cup gels; the band is the fit's own with the spread between sheets, of thermometer and of scale, never under 20 %":
    "der Becher geliert; das Band ist das des Ausgleichs mit der Streuung zwischen Datenblättern, von Thermometer und Waage, nie unter 20 %",
  "all of the cup lies spread by then: the early end of its gel, less a margin for the last of it":
    "bis dahin ist der ganze Becher verteilt: das frühe Ende seines Gelierens, weniger eine Reserve für den Rest",
  "the film has gelled and is still soft: pull the rail tape":
    "der Film ist geliert und noch weich: das Klebeband der Rail abziehen",
  "the film is leathery: trim from now": "der Film ist lederartig: ab jetzt trimmen",
  "the first cup's cloth is too hard to cut: trim until then":
    "das Gewebe des ersten Bechers ist zu hart zum Schneiden: bis dahin trimmen",
  "the film bears the board's weight: turn it": "der Film trägt das Gewicht des Boards: wenden",
  "the next coat no longer disturbs this one": "die nächste Schicht stört diese nicht mehr",
  "hard enough to sand; firm all through for boxes and plug":
    "hart genug zum Schleifen; durch und durch fest für Kästen und Plug",
  "as hard as it becomes: ready for the water": "so hart, wie es wird: bereit fürs Wasser",
  "after that the next coat only bonds to a sanded surface":
    "danach haftet die nächste Schicht nur auf geschliffener Oberfläche",
  "the coat's resin in equal cups: a laminate in as few as can each be spread in time, any other coat in one":
    "das Harz der Schicht in gleichen Bechern: ein Laminat in so wenigen, wie sich je rechtzeitig verteilen lassen, jede andere Schicht in einem",
  "resin to weigh into the cup": "Harz, das in den Becher gewogen wird",
  "hardener to weigh in": "Härter, der dazu gewogen wird",
  "the same hardener by volume; weigh it where you can": "derselbe Härter nach Volumen; wo es geht, wiegen",
  "wax solution on top, for a coat that is to be sanded; the middle of the supplier's range":
    "Paraffinlösung obenauf, für eine Schicht, die geschliffen wird; die Mitte des Bereichs des Lieferanten",
  "when this cup's hardener goes in, from the first cup's: once the one before lies spread":
    "wann der Härter dieses Bechers hineinkommt, ab dem des ersten: sobald der vorige verteilt ist",
  "mixing, pouring and spreading one cup": "einen Becher mischen, gießen und verteilen",
  "the same hardener in drops of your own bottle; a drop is your own count, and a scale is better":
    "derselbe Härter in Tropfen der eigenen Flasche; ein Tropfen ist selbst gezählt, und eine Waage ist besser",
  "tint that is in the cup's resin, from the master batch":
    "Farbe, die im Harz des Bechers ist, aus dem Hauptansatz",
  "what is weighed into the cup from the master batch: its resin with the tint in it":
    "was aus dem Hauptansatz in den Becher gewogen wird: sein Harz mit der Farbe darin",
  "resin of all the cups, coloured at once so that they match":
    "Harz aller Becher, auf einmal gefärbt, damit sie gleich sind",
  "tint stirred into the master batch before any cup is dosed":
    "Farbe, die in den Hauptansatz gerührt wird, bevor ein Becher seinen Härter bekommt",
  "the stretch of the board that this cup covers, along the outline: equal shares of the face, the nose first":
    "der Abschnitt des Boards, den dieser Becher deckt, entlang der Outline: gleiche Anteile der Seite, die Nose zuerst",
  "a cup left standing cannot get hotter than that by its own heat: all of it kept in; a bound and no forecast":
    "ein stehen gelassener Becher kann durch die eigene Wärme nicht heißer werden: alle darin behalten; eine Grenze, keine Vorhersage",
  "time in which such a cup loses all but a third of what it is warmer than the shop; longer than the gel, and heat cannot leave as fast as it comes":
    "Zeit, in der ein solcher Becher alles bis auf ein Drittel dessen abgibt, was er wärmer ist als die Werkstatt; länger als das Gelieren, und Wärme kann nicht so schnell hinaus, wie sie entsteht",
  "styrene that leaves the open coat; an estimate, not a compliance calculation":
    "Styrol, das die offene Schicht verlässt; eine Schätzung, kein Nachweis für Vorschriften",
  "nearly all of it leaves between the first cup's hardener and the film's gel: then the air need peaks":
    "fast alles davon entweicht zwischen dem Härter des ersten Bechers und dem Gelieren des Films: dann ist der Bedarf an Luft am größten",
  "a published limit for styrene in air, parts per million; limits differ by country and change":
    "ein veröffentlichter Grenzwert für Styrol in der Luft, Teile je Million; Grenzwerte sind je Land verschieden und ändern sich",
  "fresh air that keeps the shop at that limit over those hours, in a room that mixes badly; not a compliance calculation: the safety data sheet, local codes and licensed practice decide":
    "Frischluft, die die Werkstatt über diese Stunden an diesem Grenzwert hält, in einem schlecht durchmischten Raum; kein Nachweis für Vorschriften: Sicherheitsdatenblatt, örtliche Vorschriften und Fachleute entscheiden",
};
