/** Charts: what is looked at rather than read. */
export const CHARTS: Readonly<Record<string, string>> = {
  "Crosses are the readings; heights have a scale of their own.":
    "Kreuze sind die Ablesungen; die Höhen haben einen eigenen Maßstab.",
  "Crosses are the readings, how far each lies off the curve drawn {1} times; heights have a scale of their own.":
    "Kreuze sind die Ablesungen, ihr Abstand von der Kurve {1}-fach gezeichnet; die Höhen haben einen eigenen Maßstab.",
  "read it again": "noch einmal ablesen",
  "Each bar is the film before any paper; amber is what is left, with its band as a line, then what each paper takes. The long line is nought.":
    "Jeder Balken ist der Film vor dem ersten Papier; bernsteinfarben ist, was bleibt, mit seiner Spanne als Linie, dann was jedes Papier nimmt. Die lange Linie ist null.",
  "{1}: {2} µm left, {3}": "{1}: {2} µm übrig, {3}",
  "Thickness and rocker against their readings": "Dicke und Rocker gegen ihre Ablesungen",
  "Thickness along the board": "Dicke entlang des Boards",
  "Rocker along the board": "Rocker entlang des Boards",
  "The fitted curve with the readings; the figures stand in the table below.":
    "Die ausgeglichene Kurve mit den Ablesungen; die Zahlen stehen unten in der Tabelle.",
  "place from the tail": "Ort ab Tail",
  "as read": "wie gelesen",
  curve: "Kurve",
  "off by": "daneben",
  "{1}: read it again": "{1}: noch einmal ablesen",
  "{1} less": "{1} weniger",
  "{1} more": "{1} mehr",
  "{1}, film budget by zone": "{1}, Filmbudget nach Zonen",
  "Film, what each paper takes and what is left; the figures stand in the table above.":
    "Film, was jedes Papier nimmt und was bleibt; die Zahlen stehen oben in der Tabelle.",
};
