/** The days: findings and assumptions of the calendar, and its lines on paper and in a calendar file. */
export const CALENDAR: Readonly<Record<string, string>> = {
  "the days follow once the order of work, the mix and the shop's hours are known":
    "die Tage folgen, sobald Reihenfolge, Mischung und Arbeitszeiten bekannt sind",
  "no start is given, so the days are only counted: with shop.start they become dates":
    "kein Beginn ist angegeben, die Tage sind nur gezählt: mit shop.start werden es Daten",
  "each step as early as it can be, on a full five minutes, in the order that ends soonest":
    "jeder Schritt so früh wie möglich, auf volle fünf Minuten, in der Reihenfolge, die am ehesten fertig wird",
  "every day has the same hours, and one board's hands do one thing at a time":
    "jeder Tag hat dieselben Stunden, und an einem Board geschieht eins nach dem anderen",
  "five minutes to pull a coat's tape, twenty to dull a coat that is too old to bond":
    "fünf Minuten zum Abziehen des Bands, zwanzig zum Mattschleifen einer Schicht, die nicht mehr bindet",
  "the record names no time for some steps that are done; taken late, nothing is begun too soon":
    "manche erledigten Schritte haben keine Zeit; spät angenommen, beginnt nichts zu früh",
  "done when the rest of the work goes on": "erledigt, wenn die übrige Arbeit weitergeht",
  "the list of temperatures ends there, and the cure goes on":
    "die Temperaturliste endet dort, und das Aushärten geht weiter",
  "the mean of the list's last day, from {1} on": "das Mittel des letzten Tages der Liste, ab {1}",
  "{1} begins after {2}, when the coat below has stopped bonding: sand that dull first, {3} are planned for it":
    "{1} beginnt nach {2}, wenn die Schicht darunter nicht mehr bindet: sie erst mattschleifen, {3} sind dafür eingeplant",
  "{1} is due from {2} to {3}, and the shop is shut: stay for it, open longer or warm the shop; past that the cloth must be ground off":
    "{1} ist von {2} bis {3} fällig, und die Werkstatt ist zu: dableiben, länger öffnen oder heizen; danach muss das Gewebe abgeschliffen werden",
  "{1} was due from {2} to {3}: past that the cloth must be ground off":
    "{1} war von {2} bis {3} fällig: danach muss das Gewebe abgeschliffen werden",
  "{1} is due in air too cold for the cloth to be cut while it is leathery: warm the shop":
    "{1} ist fällig, wenn die Luft zu kalt ist, um das Gewebe lederartig zu schneiden: heizen",
  "the tape of {1} is due at {2}, and the shop is shut: stay for it, open longer or warm the shop; a hard coat breaks along the tape":
    "das Band von {1} ist um {2} fällig, und die Werkstatt ist zu: dableiben, länger öffnen oder heizen; eine harte Schicht bricht am Band",
  "{1} takes {2} in one go, and no day has hours for it: from there on no days are planned":
    "{1} dauert {2} am Stück, und kein Tag hat so viele Stunden: von da an sind keine Tage geplant",
  "from {1} on no days are planned: as far as the shop's air is known, no working hour is warm enough for its resin; warm the shop, or list the days that follow":
    "von {1} an sind keine Tage geplant: soweit die Luft der Werkstatt bekannt ist, ist keine Arbeitsstunde warm genug für das Harz; heizen oder die folgenden Tage in die Liste setzen",
  "{1} is dosed for the air of {2}, and with that dose the days put it at {3}: read the thermometer before you mix, and go by its sheet where it is warmer":
    "{1} ist für die Luft um {2} dosiert, und mit dieser Dosis liegt es im Kalender bei {3}: vor dem Mischen das Thermometer ablesen und, wo es wärmer ist, nach dem Datenblatt gehen",
  "from {1} on no days are planned: how far the coat before it has come is not known":
    "von {1} an sind keine Tage geplant: wie weit die Schicht davor ist, ist nicht bekannt",
  "the days of the shop follow once each board's own days can be planned":
    "die Tage der Werkstatt folgen, sobald die Tage jedes Boards geplant werden können",
  "some boards have a start and some have none: give each one, shop.start":
    "manche Boards haben einen Beginn und manche keinen: jedem einen geben, shop.start",
  "a shop has at least one pair of stands": "eine Werkstatt hat mindestens ein Paar Ständer",
  CALENDAR: "KALENDER",
  "Day {1}": "Tag {1}",
  "{1} {2} {3}": "{1} {2}. {3}",
  "{1} on {2}": "{1} am {2}",
  "{1}, go on": "{1}, weiter",
  "recoat from {1} until {2}": "nächste Schicht ab {1} bis {2}",
  "sand the coat below dull first": "erst die Schicht darunter mattschleifen",
  "begin by {1}": "beginnen bis {1}",
  "cured by {1}": "ausgehärtet {1}",
  "{1} to spare": "{1} Luft",
  "by {1}": "bis {1}",
  "Pull the tape of {1}": "Band abziehen: {1}",
  "Sand the coat below dull first.": "Erst die Schicht darunter mattschleifen.",
  "Done: {1}": "Erledigt: {1}",
  "Pull the tape: {1}": "Band abziehen: {1}",
  "The board can be flipped: {1}": "Das Board kann gewendet werden: {1}",
  "The next coat can go on: {1}": "Die nächste Schicht kann drauf: {1}",
  "Nine times in ten between {1} and {2}; a fingertip is better.":
    "Neun von zehn Malen zwischen {1} und {2}; eine Fingerspitze ist besser.",
  "By {1} at the latest.": "Spätestens {1}.",
  "There are no dates to write: name the start, shop.start, in the board file. Nothing was written.":
    "Es gibt keine Daten zu schreiben: den Beginn, shop.start, in der Board-Datei angeben. Nichts wurde geschrieben.",
  "There is no calendar": "Es gibt keinen Kalender",
  "There is no calendar: without cloth and resin no steps are planned. Name them, glass, in the board file. Nothing was written.":
    "Es gibt keinen Kalender: ohne Gewebe und Harz sind keine Schritte geplant. Beides unter glass in der Board-Datei angeben. Nichts wurde geschrieben.",
  "There is no calendar: no steps are planned for this board. Nothing was written.":
    "Es gibt keinen Kalender: für dieses Board sind keine Schritte geplant. Nichts wurde geschrieben.",
  Sun: "So",
  Mon: "Mo",
  Tue: "Di",
  Wed: "Mi",
  Thu: "Do",
  Fri: "Fr",
  Sat: "Sa",
  Mar: "März",
  May: "Mai",
  Jan: "Jan.",
  Feb: "Feb.",
  Apr: "Apr.",
  Aug: "Aug.",
  Sep: "Sep.",
  Nov: "Nov.",
  Oct: "Okt.",
  Dec: "Dez.",
};
