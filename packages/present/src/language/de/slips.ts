/** Slips at a field: quantities, numbers and names that are not understood or cannot be, and what would be right. */
export const SLIPS: Readonly<Record<string, string>> = {
  "an area": "eine Fläche",
  "a volume": "ein Volumen",
  "a mass": "ein Gewicht",
  "a cloth's mass by area": "ein Flächengewicht",
  "a density": "eine Dichte",
  "a temperature": "eine Temperatur",
  "an angle": "einen Winkel",
  "a time": "eine Dauer",
  "an air flow": "einen Luftstrom",
  "a share": "einen Anteil",
  "a count": "eine Anzahl",
  "{1} characters are too many; {2} are enough for {3}": "{1} Zeichen sind zu viele; {2} reichen für {3}",
  "nothing was read; write {1}": "nichts gelesen; {1} schreiben",
  "character {1}: {2}; write {3}": "Zeichen {1}: {2}; {3} schreiben",
  "{1} such as {2}": "{1}, etwa {2}",
  '{1} with its unit, such as "{2}"': "{1} mit Einheit, etwa „{2}“",
  "{1} cannot be negative": "ein Minus geht nicht für {1}",
  "nothing was read": "nichts gelesen",
  "the number is too large": "die Zahl ist zu groß",
  "{1} follows the number": "hinter der Zahl steht {1}",
  "a number was expected": "hier gehört eine Zahl hin",
  "a number was expected and {1} was read": "hier gehört eine Zahl hin, gelesen wurde {1}",
  "a unit is missing before {1}": "vor {1} fehlt eine Einheit",
  "{1} or {2}": "{1} oder {2}",
  "{1} is not a unit known here, and {2} would fit": "{1} ist hier keine bekannte Einheit, {2} würde passen",
  "{1} is the unit of {2}, and {3} would fit": "{1} ist eine Einheit für {2}, hier würde {3} passen",
  "nothing can follow {1}": "hinter {1} kann nichts mehr stehen",
  "no unit: {1}?": "ohne Einheit: {1}?",
  "{1} cannot follow {2}": "{1} kann nicht hinter {2} stehen",
  "{1} should be whole where {2} follows": "{1} muss ganz sein, wo {2} folgt",
  "{1} is not less than one {2}": "{1} ist nicht weniger als 1 {2}",
  "a digit is missing behind {1}": "hinter {1} fehlt eine Ziffer",
  "{1} could be {2} or {3}: write it one of these ways": "{1} könnte {2} oder {3} sein: so oder so schreiben",
  "a number is missing under {1}": "unter {1} fehlt eine Zahl",
  "{1} has nought below the bar": "in {1} steht null unter dem Strich",
  "{1} is not less than one, so it cannot follow {2}":
    "{1} ist nicht kleiner als eins und kann darum nicht hinter {2} stehen",
  "missing: {1}": "fehlt: {1}",
  'write {1} with its unit, such as "{2}"': "{1} mit Einheit schreiben, etwa „{2}“",
  'write {1} with its unit, in quotes, such as "{2}"':
    'in Anführungszeichen {1} mit Einheit schreiben, etwa "{2}"',
  '{1} Write it in quotes, such as "{2}"': '{1} In Anführungszeichen schreiben, etwa "{2}"',
  "leave the field out where nothing was read": "das Feld weglassen, wo nichts gemessen wurde",
  'less than {1}, the least taken here: a share is written in per cent, such as "8 %"':
    "weniger als {1}, weniger geht hier nicht: ein Anteil steht in Prozent, etwa „8 %“",
  "a negative reading; {1} is the least taken here":
    "ein Messwert unter null; weniger als {1} geht hier nicht",
  "less than {1}, the least taken here: is the unit right?":
    "weniger als {1}, weniger geht hier nicht: stimmt die Einheit?",
  "more than {1}, the most taken here: is the unit right?":
    "mehr als {1}, mehr geht hier nicht: stimmt die Einheit?",
  "{1} is a number without a unit, {2} to {3}": "{1}: eine Zahl ohne Einheit, {2} bis {3}",
  "{1} is a whole number, {2} to {3}": "{1}: eine ganze Zahl, {2} bis {3}",
  price: "Preis",
  use: "Verbrauch",
  "drops in a millilitre": "Tropfen je Milliliter",
  'write what is in the pack with its unit, such as "5 kg", "1 L" or "50 m"':
    "den Inhalt der Packung mit Einheit schreiben, etwa „5 kg“, „1 L“ oder „50 m“",
  'write base to hardener by mass as on the sheet, such as "100:45"':
    "Basis zu Härter nach Gewicht wie auf dem Datenblatt schreiben, etwa „100:45“",
  'write base to hardener by volume as on the sheet, such as "100:45"':
    "Basis zu Härter nach Volumen wie auf dem Datenblatt schreiben, etwa „100:45“",
  'more hardener than base: base stands first, so was "{1}" meant?':
    "mehr Härter als Basis: die Basis steht zuerst, war „{1}“ gemeint?",
  "so little hardener sets no two-part resin; {1}":
    "mit so wenig Härter wird kein Zweikomponentenharz fest; {1}",
  'write wax solution by volume, such as "2 %", or "none" where the resin has its wax or needs none':
    "Wachslösung nach Volumen schreiben, etwa „2 %“, oder „none“, wo das Harz sein Wachs hat oder keines braucht",
  "write at least one line of the sheet's gel table, or one cup timed in the shop":
    "mindestens eine Zeile der Geltabelle vom Datenblatt schreiben, oder einen in der Werkstatt gestoppten Becher",
  "write {1}, or leave the field out": "{1} schreiben, oder das Feld weglassen",
  "write {1} as text in quotes": "{1} als Text in Anführungszeichen schreiben",
  "{1} has at most {2} characters": "höchstens {2} Zeichen für {1}",
  "{1} is one line of plain text": "für {1}: eine Zeile einfacher Text",
  "the board's name": "den Namen des Boards",
  "the rider": "den Fahrer",
  "the serial": "die Seriennummer",
  "the cloth's name": "den Namen des Gewebes",
  "the foam's name": "den Namen des Schaums",
  "the wood's name": "den Namen des Holzes",
  "the filler's name": "den Namen des Füllstoffs",
  "the tint's name": "den Namen der Farbe",
  "the resin's name": "den Namen des Harzes",
  "the set's name": "den Namen des Satzes",
  'write {1}, small letters, digits and hyphens, such as "{2}"':
    "{1} in Kleinbuchstaben, Ziffern und Bindestrichen schreiben, etwa „{2}“",
  "a fin's name": "den Namen einer Finne",
  "a cloth's id": "die Kennung eines Gewebes",
  "a filler's id": "die Kennung eines Füllstoffs",
  "a resin's id": "die Kennung eines Harzes",
  "a foam's id": "die Kennung eines Schaums",
  "a wood's id": "die Kennung eines Holzes",
  "a tint's id": "die Kennung einer Farbe",
  "a coat's id": "die Kennung einer Schicht",
  "a step's id": "die Kennung eines Arbeitsschritts",
  "a zone's id": "die Kennung einer Zone",
  "a material's id": "die Kennung eines Materials",
  "the id of a check": "die Kennung einer Prüfung",
  'write a day and a time, such as "2026-04-11T09:00"':
    "einen Tag mit Uhrzeit schreiben, etwa „2026-04-11T09:00“",
  "there is no such day or time": "diesen Tag oder diese Uhrzeit gibt es nicht",
  'write a time zone by its IANA name, such as "Europe/Dublin"':
    "eine Zeitzone mit ihrem IANA-Namen schreiben, etwa „Europe/Dublin“",
  "no zone of that name is known; {1}": "keine Zone dieses Namens ist bekannt; {1}",
  'write a time of day, such as "09:00"': "eine Uhrzeit schreiben, etwa „09:00“",
  "this fin stands twice in the set: give each fin one name of its own":
    "diese Finne steht zweimal im Satz: jeder Finne einen eigenen Namen geben",
  "another fin of the set": "eine andere Finne des Satzes",
  "a fin of the set": "eine Finne des Satzes",
  "name {1}: was {2} meant?": "{1} nennen: war {2} gemeint?",
  "there is none yet": "es gibt noch keine",
  "name {1}: {2}": "{1} nennen: {2}",
  "the same place twice: give one of them, or another place":
    "dieselbe Stelle zweimal: eine davon angeben, oder eine andere Stelle",
  "outside the board, which is {1} long: is the unit right?":
    "außerhalb des Boards, das {1} lang ist: stimmt die Einheit?",
  'a patch runs from "fromTail" towards the nose: "to" is the larger of the two':
    "ein Patch läuft vom Tail zur Nose: sein Ende ist das größere der beiden Maße",
  'the working day ends after it begins: "to" is later than "from"':
    "der Arbeitstag endet nach seinem Anfang: „bis“ ist später als „von“",
  "the most is not above the least: are they swapped?":
    "das Höchste liegt nicht über dem Geringsten: sind sie vertauscht?",
  'missing: write "ratioByMass" or "ratioByVolume", base to hardener, such as "100:45"':
    "fehlt: das Verhältnis nach Gewicht oder nach Volumen schreiben, Basis zu Härter, etwa „100:45“",
  "the ratios by mass and by volume do not belong together: read both off the sheet again, base first":
    "die Verhältnisse nach Gewicht und nach Volumen passen nicht zusammen: beide noch einmal vom Datenblatt ablesen, Basis zuerst",
  "more hardener than base: are the two swapped?": "mehr Härter als Basis: sind die beiden vertauscht?",
  'say where the station is: "fromTail" or "fromNose"':
    "sagen, wo die Messstelle liegt: vom Tail oder von der Nose",
  "say where the station is once: keep one of the two":
    "einmal sagen, wo die Messstelle liegt: eines der beiden behalten",
  "outside the board, which is {1} long: is the unit right, or was it read from the other end?":
    "außerhalb des Boards, das {1} lang ist: stimmt die Einheit, oder wurde vom anderen Ende gemessen?",
  'leave "width" out where "left" and "right" are given':
    "die ganze Breite weglassen, wo links und rechts angegeben sind",
  '"{1}" was read without "{2}": read both from the stringer, or give "width" alone':
    "„{1}“ wurde ohne „{2}“ gemessen: beide vom Stringer aus messen, oder nur die ganze Breite angeben",
  "thicker than the board is wide there, {1}: were two readings swapped?":
    "dicker, als das Board dort breit ist, {1}: wurden zwei Messwerte vertauscht?",
  "state toe in one way: one of {1}": "die Vorspur auf eine Weise angeben: eines von {1}",
};
