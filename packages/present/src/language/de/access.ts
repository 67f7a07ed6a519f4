/** Letting devices in over the local network: the page for the code, and the list of devices. */
export const ACCESS: Readonly<Record<string, string>> = {
  "Let this device in": "Dieses Gerät einlassen",
  "This is the shop's computer: it needs no code.":
    "Das ist der Rechner der Werkstatt: er braucht keinen Code.",
  Devices: "Geräte",
  "This device is let in; the others know it as {1}.":
    "Dieses Gerät ist eingelassen; die anderen kennen es als {1}.",
  "The code stands at the shop's computer: in its terminal, and on its page Devices.":
    "Der Code steht am Rechner der Werkstatt: in seinem Terminal und auf seiner Seite „Geräte“.",
  "Code, eight digits": "Code, acht Ziffern",
  "What the others know it by, such as “phone, glassing bay”":
    "Wie die anderen es nennen, etwa „Telefon, Laminierraum“",
  "Let it in": "Einlassen",
  "This is plain HTTP: whoever is on the same network can listen to it, and take a device's place with what was heard. Use it in the shop's own network only.":
    "Das ist einfaches HTTP: Wer im selben Netz ist, kann mithören und mit dem Gehörten an die Stelle eines Geräts treten. Nur im eigenen Netz der Werkstatt benutzen.",
  "That is not the code. Wrong guesses left before it is locked: {1}.":
    "Das ist nicht der Code. Fehlversuche, bis er gesperrt ist: {1}.",
  "Five wrong codes: this one is locked. Make a new one at the shop's computer.":
    "Fünf falsche Codes: Dieser ist gesperrt. Am Rechner der Werkstatt einen neuen machen.",
  "There is no code just now: it has run out or was used. Make a new one at the shop's computer.":
    "Gerade gilt kein Code: Er ist abgelaufen oder verbraucht. Am Rechner der Werkstatt einen neuen machen.",
  "Too many wrong codes from this device. Wait {1} min.":
    "Zu viele falsche Codes von diesem Gerät. {1} min warten.",
  "A name is one line of 1 to 40 characters.": "Ein Name ist eine Zeile von 1 bis 40 Zeichen.",
  "Only a keeper sees the devices.": "Die Geräte sieht nur, wer die Werkstatt verwaltet.",
  "The code for another device is made at the shop's computer itself.":
    "Den Code für ein weiteres Gerät macht man am Rechner der Werkstatt selbst.",
  "Let in": "Eingelassen",
  "No device yet: only the shop's computer itself.": "Noch kein Gerät: nur der Rechner der Werkstatt selbst.",
  keeper: "verwaltet",
  "at the bench": "an der Werkbank",
  "this device": "dieses Gerät",
  "last here {1}": "zuletzt da {1}",
  "Rename {1}": "{1} umbenennen",
  Rename: "Umbenennen",
  "Put out {1}": "{1} aussperren",
  "Put out": "Aussperren",
  "It is out at once, and needs a new code to come back. What it wrote stays.":
    "Es ist sofort draußen und braucht einen neuen Code, um wiederzukommen. Was es geschrieben hat, bleibt.",
  "Put it out": "Ja, aussperren",
  "Leave it in": "Nein, drinlassen",
  "New name of {1}": "Neuer Name von {1}",
  "Keep the name": "Name übernehmen",
  "Leave the name": "Name lassen",
  "take back": "zurück",
  "Another device has this name, or had it.": "Ein anderes Gerät hat diesen Namen oder hatte ihn.",
  "at the bench: reads and adds, takes nothing away":
    "an der Werkbank: liest und fügt hinzu, nimmt nichts weg",
  "keeper: does everything, puts devices out too": "verwaltet: darf alles, sperrt auch Geräte aus",
  "Only this machine is answered. To let the shop's devices in, stop the app and start it with":
    "Nur dieser Rechner bekommt Antwort. Um die Geräte der Werkstatt einzulassen, die App anhalten und so starten:",
  "Let a device in": "Ein Gerät einlassen",
  "What it may do": "Was es darf",
  "Make a code": "Code machen",
  "This is plain HTTP: whoever is on the same network can listen to it, and take a device's place with what was heard. Share it in a network of your own only, or start with a certificate of your own (--cert, --key).":
    "Das ist einfaches HTTP: Wer im selben Netz ist, kann mithören und mit dem Gehörten an die Stelle eines Geräts treten. Nur im eigenen Netz teilen, oder mit eigenem Zertifikat starten (--cert, --key).",
  "The code was used. Each lets one device in: make another for the next.":
    "Der Code ist verbraucht. Jeder lässt ein Gerät ein: für das nächste einen neuen machen.",
  "The code has run out after five minutes.": "Der Code ist nach fünf Minuten abgelaufen.",
  "Five wrong codes were typed in: this one is locked. If it was nobody of yours, look who is on the network.":
    "Fünf falsche Codes wurden eingegeben: Dieser ist gesperrt. War es niemand von euch, dann nachsehen, wer im Netz ist.",
  "This machine has no address on a local network just now.":
    "Dieser Rechner hat gerade keine Adresse in einem lokalen Netz.",
  "The address with the code, to scan": "Die Adresse mit dem Code, zum Scannen",
  "lets one keeper's device in, until {1}.": "lässt ein verwaltendes Gerät ein, bis {1}.",
  "lets one device in at the bench, until {1}.": "lässt ein Gerät an der Werkbank ein, bis {1}.",
  "Scan it, or open one of these on the device and type the code in:":
    "Scannen, oder eine davon am Gerät öffnen und den Code eintippen:",
  "The shop's computer cannot be reached.": "Der Rechner der Werkstatt ist nicht erreichbar.",
  "The disk of the shop's computer is full.": "Die Platte des Rechners der Werkstatt ist voll.",
  "The disk of the shop's computer can only be read.":
    "Die Platte des Rechners der Werkstatt lässt sich nur lesen.",
  "The shop's database cannot be reached just now.":
    "Die Datenbank der Werkstatt ist gerade nicht erreichbar.",
  "This device is not paired with the shop's computer.":
    "Dieses Gerät ist nicht mit dem Rechner der Werkstatt gekoppelt.",
  "It answers: {1}": "Er antwortet auf Englisch: {1}",
  "There is no such board on the shop's computer.":
    "Dieses Board gibt es auf dem Rechner der Werkstatt nicht.",
  "There is no such version on the shop's computer.":
    "Diese Fassung gibt es auf dem Rechner der Werkstatt nicht.",
  "That is not on the shelf any more.": "Das liegt nicht mehr im Regal.",
  "This is no board file that can be read: {1}": "Das ist keine Board-Datei, die gelesen werden kann: {1}",
  "The shelf does not take it so: {1}": "So nimmt das Regal es nicht: {1}",
  "This board was put away. Nothing of it is lost: a keeper can bring it back into the Shed.":
    "Dieses Board wurde weggestellt. Nichts davon ist verloren: wer die Werkstatt verwaltet, kann es in den Schuppen zurückholen.",
  "This is too large: a board file has at most 2 MB, a photo 20 MB.":
    "Das ist zu groß: eine Board-Datei hat höchstens 2 MB, ein Foto 20 MB.",
  "This photo has {1} x {2} pixels: more than 50 million, or a side over 16,384.":
    "Dieses Foto hat {1} x {2} Bildpunkte: mehr als 50 Millionen oder eine Seite über 16.384.",
  "This is no photo as JPEG, PNG or WebP.": "Das ist kein Foto als JPEG, PNG oder WebP.",
  "This board has as many photos as devices at the bench may add. A keeper may add more.":
    "Dieses Board hat so viele Fotos, wie Geräte an der Werkbank hinzufügen dürfen. Wer die Werkstatt verwaltet, darf mehr.",
  "Many Sheets are being made just now. Ask again in a moment.":
    "Gerade werden viele Blätter gemacht. Bitte gleich noch einmal.",
  "The Sheet took too long and was given up. Ask again when the shop's computer has less to do.":
    "Das Blatt dauerte zu lange und wurde aufgegeben. Noch einmal, wenn der Rechner der Werkstatt weniger zu tun hat.",
  "No Sheet can be made of this board: it cannot be read, or has more on it than a Sheet has room for.":
    "Von diesem Board kann kein Blatt gemacht werden: es ist nicht lesbar, oder es steht mehr darin, als auf ein Blatt passt.",
  "A device at the bench may read and add. Ask a keeper, or do it at the shop's computer.":
    "Ein Gerät an der Werkbank darf lesen und hinzufügen. Das andere macht, wer die Werkstatt verwaltet, oder der Rechner der Werkstatt.",
  "That can only be done at the shop's computer.": "Das geht nur am Rechner der Werkstatt.",
  "It was changed on another device meanwhile. Nothing was kept: look at it and do it again.":
    "Es wurde inzwischen an einem anderen Gerät geändert. Nichts wurde behalten: ansehen und noch einmal machen.",
  "There is one already: look at it and do it again.": "Es gibt schon eines: ansehen und noch einmal machen.",
  "Another entry is kept under this id already.":
    "Unter dieser Kennung ist schon ein anderer Eintrag behalten.",
  "Something failed at the shop's computer. The terminal where Lapline runs says more.":
    "Am Rechner der Werkstatt ging etwas schief. Das Terminal, in dem Lapline läuft, sagt mehr.",
};
