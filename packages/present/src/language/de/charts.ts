/** Charts: what is looked at rather than read. */
export const CHARTS: Readonly<Record<string, string>> = {
  "Crosses are the readings; heights have a scale of their own.":
    "Kreuze sind die Ablesungen; die Höhen haben einen eigenen Maßstab.",
  "Crosses are the readings, how far each lies off the curve drawn {1} times; heights have a scale of their own.":
    "Kreuze sind die Ablesungen, ihr Abstand von der Kurve {1}-fach gezeichnet; die Höhen haben einen eigenen Maßstab.",
  "Of a cup of the planned dose and mass. Time upwards in even factors; amber is the band, the thick line its middle.":
    "Für einen Becher von geplanter Dosis und Masse. Zeit nach oben in gleichen Faktoren; bernsteinfarben ist das Band, die dicke Linie seine Mitte.",
  "this shop: {1}": "diese Werkstatt: {1}",
  "this shop: {1} to {2}": "diese Werkstatt: {1} bis {2}",
  "this cup: {1}": "dieser Becher: {1}",
  "this cup, {1}: {2}": "dieser Becher, {1}: {2}",
  "{1}: the cup's gel over the temperature": "{1}: das Gelieren des Bechers über der Temperatur",
  "The band in which the cup gels, over the resin's temperature; the figures stand in the table below.":
    "Das Band, in dem der Becher geliert, über der Temperatur des Harzes; die Zahlen stehen unten in der Tabelle.",
  "Colder or warmer": "Kälter oder wärmer",
  "gels at the earliest": "geliert frühestens",
  "resin colder or warmer": "Harz kälter oder wärmer",
  "a cup gels in": "Becher geliert in",
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
