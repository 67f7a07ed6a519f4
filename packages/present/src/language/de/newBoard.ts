/** A new board, and leading through its first readings. */
export const NEW_BOARD: Readonly<Record<string, string>> = {
  "From a file": "Aus einer Datei",
  "A board file (.json), or readings as a table (.csv): drop it here or choose it":
    "Eine Board-Datei (.json) oder Messwerte als Tabelle (.csv): hierher ziehen oder wählen",
  "A table goes into the board that the three questions describe.":
    "Eine Tabelle kommt in das Board, das die drei Fragen beschreiben.",
  "{1} is too large for a board.": "{1} ist zu groß für ein Board.",
  "{1}: {2} stations read. Answer the questions above, then put the board in the Shed.":
    "{1}: {2} Stationen gelesen. Beantworte die Fragen oben, dann stell das Board in den Schuppen.",
  "{1} cannot be read yet: one thing is to be put right.":
    "{1} ist noch nicht lesbar: eines ist zu berichtigen.",
  "{1} cannot be read yet: {2} things are to be put right.":
    "{1} ist noch nicht lesbar: {2} Dinge sind zu berichtigen.",
  "the file": "die Datei",
  "line {1}": "Zeile {1}",
  "Its name stands above: the three questions begin the board anew.":
    "Der Name steht oben: die drei Fragen beginnen das Board neu.",
  "{1}, another": "{1}, noch eines",
  "Like an old board": "Wie ein altes Board",
  "its readings": "seine Messwerte",
  "to be taken anew": "neu zu nehmen",
  "kept, for a blank shaped alike": "behalten, für einen gleich geshapten Blank",
  "Lay-up, fins and shop come along; its record, its rider, its weight and what was read of its fins do not.":
    "Laminataufbau, Finnen und Werkstatt kommen mit; Protokoll, Fahrer, Gewicht und was an den Finnen gemessen wurde, nicht.",
  "Begin a board like it": "Ein solches Board beginnen",
  "Left empty: {1}": "Bleibt es leer: {1}",
  "Three questions": "Drei Fragen",
  "How long is it?": "Wie lang ist es?",
  "{1} stations with their readings come from the table.":
    "{1} Stationen mit ihren Messwerten kommen aus der Tabelle.",
  "Which fins?": "Welche Finnen?",
  "decide later": "später entscheiden",
  "Their numbers come after the outline: from a set on the board's page, or your own.":
    "Ihre Zahlen kommen nach der Outline: aus einem Satz auf der Seite des Boards, oder deine eigenen.",
  "Which foam, and which resin?": "Welcher Schaum, und welches Harz?",
  "What is it called?": "Wie heißt es?",
  "Put it in the Shed": "In den Schuppen stellen",
  "The length comes first.": "Zuerst die Länge.",
  "By tape along the bottom, with its unit.": "Mit dem Bandmaß an der Unterseite, mit Einheit.",
  "{1} places to hold the tape are suggested; their readings stay empty until you take them.":
    "{1} Messstellen werden vorgeschlagen; ihre Messwerte bleiben leer, bis du sie nimmst.",
  "To be measured: {1} of {2} stations read.": "Noch zu messen: {1} von {2} Stationen gelesen.",
  "Say nose and tail as they are shaped, and the tail's width.":
    "Nose und Tail angeben, wie sie geshapt sind, und die Breite des Tails.",
  "Lay the tape along the bottom from the tail and mark each place square across.":
    "Das Bandmaß vom Tail aus an die Unterseite legen und jede Stelle rechtwinklig anzeichnen.",
  "At each place read left and right from the stringer to the rail, bottom up and nose away: the surfer's left is on your right hand. Then the thickness, and the gap to a straightedge along the stringer.":
    "An jeder Stelle links und rechts vom Stringer zur Rail messen, Unterseite oben und Nose weg: links vom Surfer liegt an deiner rechten Hand. Dann die Dicke und den Spalt zu einer Richtlatte am Stringer.",
  "The outline is drawn as soon as enough is read; places can be changed, added and removed. Until then the order of work below stands without its amounts.":
    "Die Outline wird gezeichnet, sobald genug gemessen ist; Stellen können geändert, ergänzt und entfernt werden. Bis dahin steht die Arbeitsfolge unten ohne ihre Mengen.",
};
