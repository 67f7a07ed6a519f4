/** What the command refuses, and why. Its help, and the faults of a board file, stay English. */
export const COMMAND: Readonly<Record<string, string>> = {
  "--paper {1}: {2}.": "--paper {1}: {2}.",
  "--part is one of {1}; {2} was given.": "--part ist eines von {1}; angegeben war {2}.",
  "--roll names {1}, which no board is made with; they take {2}.":
    "--roll nennt {1}, womit kein Board gebaut wird; gebraucht wird {2}.",
  "--roll {1}: {2}.": "--roll {1}: {2}.",
  "--ruler-reads makes up for a printer, and {1} files are not made for one.":
    "--ruler-reads gleicht einen Drucker aus, und {1}-Dateien sind für keinen gemacht.",
  "--ruler-reads {1}: {2}": "--ruler-reads {1}: {2}",
  "--units is for writing a CSV file; one that is read says its units itself.":
    "--units gilt beim Schreiben einer CSV-Datei; eine gelesene nennt ihre Einheiten selbst.",
  "--url has {1} letters; a code that can be read has {2} at most.":
    "--url hat {1} Zeichen; ein lesbarer Code hat höchstens {2}.",
  "--url is a web address that begins with http:// or https://; {1} was given.":
    "--url ist eine Webadresse, die mit http:// oder https:// beginnt; angegeben war {1}.",
  "-o is a file that ends in {1}; {2} was given.": "-o ist eine Datei mit der Endung {1}; angegeben war {2}.",
  "-o names a file that is read, {1}; it would be lost. Name another.":
    "-o nennt eine Datei, die gelesen wird, {1}; sie ginge verloren. Eine andere angeben.",
  "Cannot read {1}: {2}.": "{1} kann nicht gelesen werden: {2}.",
  "Cannot write {1}: {2}.": "{1} kann nicht geschrieben werden: {2}.",
  "FILE and --from cannot both be standard input: name one of them.":
    "FILE und --from können nicht beide die Standardeingabe sein: eine davon benennen.",
  "There are no labels: no cup is planned for this board. Nothing was written.":
    "Es gibt keine Etiketten: für dieses Board ist kein Becher geplant. Nichts wurde geschrieben.",
  "There are no marks of this board: it has no fins. Nothing was written.":
    "Dieses Board hat keine Marken: es hat keine Finnen. Nichts wurde geschrieben.",
  "There is no {1} template for this board: {2}. Nothing was written.":
    "Die Schablone {1} gibt es für dieses Board nicht: {2}. Nichts wurde geschrieben.",
  "it has no fins": "es hat keine Finnen",
  "it has no shape": "es hat keinen Shape",
  "it has no cloth": "es hat kein Gewebe",
  "lapline has no command {1}.{2} See lapline --help.":
    "lapline hat keinen Befehl {1}.{2} Siehe lapline --help.",
  "lapline {1} has no option {2}.{3}": "lapline {1} hat keine Option {2}.{3}",
  "lapline {1} needs {2}. {3}": "lapline {1} braucht {2}. {3}",
  "lapline {1} needs {2}: {3}.": "lapline {1} braucht {2}: {3}.",
  "{1} cannot be read as a board:\n{2}": "{1} kann nicht als Board gelesen werden:\n{2}",
  "{1} cannot be read as {2}; nothing was written:\n{3}":
    "{1} kann nicht als {2} gelesen werden; nichts wurde geschrieben:\n{3}",
  "{1} is a switch and takes no value; {2} was given.":
    "{1} ist ein Schalter und nimmt keinen Wert; angegeben war {2}.",
  "{1} is not text. {2}": "{1} ist kein Text. {2}",
  "{1} is one word too many. {2}": "{1} ist ein Wort zu viel. {2}",
  "{1} is too large: what is read has at most {2} MB.": "{1} ist zu groß: gelesen werden höchstens {2} MB.",
  "{1} is {2}; {3} was given.": "{1} ist {2}; angegeben war {3}.",
  "{1} needs a value: {2} {3}.": "{1} braucht einen Wert: {2} {3}.",
  "standard input": "die Standardeingabe",
  "there is no such file": "es gibt keine solche Datei",
  "there is no such file or folder": "es gibt keine solche Datei und keinen solchen Ordner",
  "it is a folder; name the file in it": "es ist ein Ordner; die Datei darin angeben",
  "this user may not read it": "dieser Benutzer darf es nicht lesen",
  "a file stands where a folder is named": "wo ein Ordner genannt ist, steht eine Datei",
  "it is a folder": "es ist ein Ordner",
  "this user has no right to it": "dieser Benutzer hat kein Recht daran",
  "it can only be read": "es kann nur gelesen werden",
  "the disk is full": "der Datenträger ist voll",
  "A board file is JSON in UTF-8.": "Eine Boarddatei ist JSON in UTF-8.",
};
