<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
    <context>
        <name>Action</name>
        <message>
            <source>Undo</source>
            <translation>Rückgängig</translation>
        </message>
        <message>
            <source>Do again</source>
            <translation>Wiederholen</translation>
        </message>
        <message>
            <source>Start my own book...</source>
            <translation>Eigenes Buch beginnen...</translation>
        </message>
        <message>
            <source>Open a book...</source>
            <translation>Buch öffnen...</translation>
        </message>
        <message>
            <source>Open a packed book...</source>
            <translation>Gepacktes Buch öffnen...</translation>
        </message>
        <message>
            <source>Open the demonstration</source>
            <translation>Vorführung öffnen</translation>
        </message>
        <message>
            <source>Add a tray...</source>
            <translation>Schale hinzufügen...</translation>
        </message>
        <message>
            <source>Print tags and station cards...</source>
            <translation>Schilder und Stationskarten drucken...</translation>
        </message>
        <message>
            <source>Tray types...</source>
            <translation>Schalentypen...</translation>
        </message>
        <message>
            <source>Check the station...</source>
            <translation>Station prüfen...</translation>
        </message>
        <message>
            <source>Report...</source>
            <translation>Bericht...</translation>
        </message>
        <message>
            <source>Bring in photos...</source>
            <translation>Fotos einlesen...</translation>
        </message>
        <message>
            <source>Bring in a log...</source>
            <translation>Logger-Datei einlesen...</translation>
        </message>
        <message>
            <source>Bring in old notes...</source>
            <translation>Alte Aufzeichnungen einlesen...</translation>
        </message>
        <message>
            <source>Bring in another book...</source>
            <translation>Anderes Buch einlesen...</translation>
        </message>
        <message>
            <source>Export as open files...</source>
            <translation>Als offene Dateien exportieren...</translation>
        </message>
        <message>
            <source>Pack this book...</source>
            <translation>Dieses Buch packen...</translation>
        </message>
        <message>
            <source>Back to the place before</source>
            <translation>Zurück zum vorigen Bereich</translation>
        </message>
        <message>
            <source>Larger text</source>
            <translation>Größere Schrift</translation>
        </message>
        <message>
            <source>Smaller text</source>
            <translation>Kleinere Schrift</translation>
        </message>
        <message>
            <source>Help</source>
            <translation>Hilfe</translation>
        </message>
        <message>
            <source>Keys</source>
            <translation>Tasten</translation>
        </message>
        <message>
            <source>Close the window</source>
            <translation>Fenster schließen</translation>
        </message>
    </context>
    <context>
        <name>AfterTheEnd</name>
        <message>
            <source>After the cut: minutes of cleaning, days that it keeps, taste, sweepings, what was forgotten. Type the code of the tray first.</source>
            <translation>Nach dem Schnitt: Minuten zum Reinigen, Tage der Haltbarkeit, Geschmack, Kehricht, Vergessenes. Zuerst den Code der Schale tippen.</translation>
        </message>
    </context>
    <context>
        <name>AgainBand</name>
        <message>
            <source>Scoring photos again</source>
            <translation>Fotos werden neu ausgewertet</translation>
        </message>
        <message>
            <source>In the background; what you have said of a photo stays, and so does its old score</source>
            <translation>Im Hintergrund; was von einem Foto gesagt wurde, bleibt, und seine alte Auswertung auch</translation>
        </message>
        <message>
            <source>Not today</source>
            <translation>Heute nicht</translation>
        </message>
        <message>
            <source>Ask again after the next start</source>
            <translation>Nach dem nächsten Start wieder fragen</translation>
        </message>
        <message>
            <source>Cancel</source>
            <translation>Abbrechen</translation>
        </message>
        <message>
            <source>Stop; what is done stays</source>
            <translation>Anhalten; was fertig ist, bleibt</translation>
        </message>
        <message>
            <source>{count} photos can be scored again</source>
            <translation>{count} Fotos lassen sich neu auswerten</translation>
        </message>
        <message>
            <source>1 photo can be scored again</source>
            <translation>1 Foto lässt sich neu auswerten</translation>
        </message>
        <message>
            <source>An older version of the program has scored them, or they lack numbers that it measures now. Scores of two versions are never compared; the old ones are kept beside the new ones.</source>
            <translation>Eine ältere Version des Programms hat sie ausgewertet, oder ihnen fehlen Zahlen, die es jetzt misst. Auswertungen zweier Versionen werden nie verglichen; die alten bleiben neben den neuen erhalten.</translation>
        </message>
        <message>
            <source>That takes {time} on this machine.</source>
            <translation>Das dauert auf diesem Rechner {time}.</translation>
        </message>
        <message>
            <source>Score them again</source>
            <translation>Neu auswerten</translation>
        </message>
        <message>
            <source>Photos are scored again</source>
            <translation>Fotos werden neu ausgewertet</translation>
        </message>
    </context>
    <context>
        <name>Age</name>
        <message>
            <source>before sowing</source>
            <translation>vor der Aussaat</translation>
        </message>
        <message>
            <source>day {day}</source>
            <translation>Tag {day}</translation>
        </message>
    </context>
    <context>
        <name>Became</name>
        <message>
            <source>new</source>
            <translation>neu</translation>
        </message>
        <message>
            <source>larger</source>
            <translation>größer</translation>
        </message>
        <message>
            <source>as large</source>
            <translation>gleich groß</translation>
        </message>
        <message>
            <source>smaller</source>
            <translation>kleiner</translation>
        </message>
        <message>
            <source>gone</source>
            <translation>verschwunden</translation>
        </message>
    </context>
    <context>
        <name>Bench</name>
        <message>
            <source>Find a tray, a crop or a medium</source>
            <translation>Schale, Kultur oder Substrat suchen</translation>
        </message>
        <message>
            <source>Note a weight, a watering or something else</source>
            <translation>Ein Gewicht, eine Wassergabe oder etwas anderes notieren</translation>
        </message>
        <message>
            <source>From what needs a look to the rack, and back</source>
            <translation>Von dem, was einen Blick braucht, zum Regal und zurück</translation>
        </message>
        <message>
            <source>In the look list: seen, put it away until it gets worse</source>
            <translation>In der Blickliste: gesehen, weglegen, bis es schlimmer wird</translation>
        </message>
        <message>
            <source>In the look list: until tomorrow</source>
            <translation>In der Blickliste: bis morgen</translation>
        </message>
        <message>
            <source>On the rack: choose several trays</source>
            <translation>Im Regal: mehrere Schalen wählen</translation>
        </message>
        <message>
            <source>Add a tray</source>
            <translation>Schale hinzufügen</translation>
        </message>
        <message>
            <source>Plan a trial</source>
            <translation>Versuch planen</translation>
        </message>
        <message>
            <source>Go to Plan (Ctrl+4)</source>
            <translation>Zum Plan (Strg+4)</translation>
        </message>
        <message>
            <source>Add a tray (Ctrl+T)</source>
            <translation>Schale hinzufügen (Strg+T)</translation>
        </message>
        <message>
            <source>Go to the plan</source>
            <translation>Zum Plan</translation>
        </message>
        <message>
            <source>{code} is put away until tomorrow. Ctrl+Z takes it back.</source>
            <translation>{code} ist bis morgen weggelegt. Strg+Z nimmt es zurück.</translation>
        </message>
        <message>
            <source>{code} is put away until it gets worse. Ctrl+Z takes it back.</source>
            <translation>{code} ist weggelegt, bis es schlimmer wird. Strg+Z nimmt es zurück.</translation>
        </message>
        <message>
            <source>The kind of {medium} is kept; Ctrl+Z takes it back.</source>
            <translation>Die Art von {medium} ist gespeichert; Strg+Z nimmt es zurück.</translation>
        </message>
        <message>
            <source>{shown} of {count} trays</source>
            <translation>{shown} von {count} Schalen</translation>
        </message>
        <message>
            <source>1 tray</source>
            <translation>1 Schale</translation>
        </message>
        <message>
            <source>{count} trays</source>
            <translation>{count} Schalen</translation>
        </message>
        <message>
            <source>{trays}, no photo yet</source>
            <translation>{trays}, noch kein Foto</translation>
        </message>
        <message>
            <source>{trays}, {done} of {wanted} photographed today</source>
            <translation>{trays}, {done} von {wanted} heute fotografiert</translation>
        </message>
        <message>
            <source>{said}; missing: {codes} and {more} more</source>
            <translation>{said}; es fehlen: {codes} und {more} weitere</translation>
        </message>
        <message>
            <source>{said}; missing: {codes}</source>
            <translation>{said}; es fehlen: {codes}</translation>
        </message>
        <message>
            <source>No book is open</source>
            <translation>Kein Buch ist geöffnet</translation>
        </message>
        <message>
            <source>A book keeps your trays, their photos and all numbers in one folder of yours.</source>
            <translation>Ein Buch bewahrt die Schalen, ihre Fotos und alle Zahlen in einem eigenen Ordner auf.</translation>
        </message>
        <message>
            <source>{n} trays wait to be sown</source>
            <translation>{n} Schalen warten auf die Aussaat</translation>
        </message>
        <message>
            <source>Their places are drawn. Once they are sown, say so in Plan on the page Sow: then they stand here, and photos find them by their tags.</source>
            <translation>Ihre Plätze sind ausgelost. Sobald sie gesät sind, es im Plan auf der Seite Säen angeben: dann stehen sie hier, und Fotos finden sie an ihren Schildern.</translation>
        </message>
        <message>
            <source>No tray grows now</source>
            <translation>Zurzeit wächst keine Schale</translation>
        </message>
        <message>
            <source>Trays that have ended stay in the book with all photos and numbers: {n} of them. The Tray sheet opens them, what they tell stands in Verdict. Plan the next trial, or add a tray.</source>
            <translation>Beendete Schalen bleiben mit allen Fotos und Zahlen im Buch: {n}. Das Schalenblatt öffnet sie, was sie sagen, steht im Urteil. Den nächsten Versuch planen oder eine Schale hinzufügen.</translation>
        </message>
        <message>
            <source>Here your rack will stand, shelf by shelf</source>
            <translation>Hier wird das Regal stehen, Etage für Etage</translation>
        </message>
        <message>
            <source>To compare media, plan a trial: it says how many trays that takes, draws their places and puts them here once they are sown. To watch trays that grow already, add them one by one. Then photograph each from above, every day, and bring the photos in: the trays that need a look are named on top. Help (F1) leads through a first trial in five steps.</source>
            <translation>Um Substrate zu vergleichen, einen Versuch planen: er sagt, wie viele Schalen das braucht, lost ihre Plätze aus und stellt sie hierher, sobald sie gesät sind. Um Schalen zu beobachten, die schon wachsen, sie einzeln aufnehmen. Dann jede täglich von oben fotografieren und die Fotos einlesen: oben stehen die Schalen, die einen Blick brauchen. Die Hilfe (F1) führt in fünf Schritten durch einen ersten Versuch.</translation>
        </message>
    </context>
    <context>
        <name>BenchAssistant</name>
        <message>
            <source>Wetting test: {medium}</source>
            <translation>Benetzungsprobe: {medium}</translation>
        </message>
        <message>
            <source>Cooling test: {medium}</source>
            <translation>Abkühlprobe: {medium}</translation>
        </message>
        <message>
            <source>Break-down: {medium}</source>
            <translation>Abbau: {medium}</translation>
        </message>
        <message>
            <source>What was read</source>
            <translation>Was gemessen wurde</translation>
        </message>
        <message>
            <source>How it looks</source>
            <translation>Wie es aussieht</translation>
        </message>
        <message>
            <source>not looked at</source>
            <translation>nicht angesehen</translation>
        </message>
        <message>
            <source>When it was</source>
            <translation>Wann es war</translation>
        </message>
        <message>
            <source>By eye</source>
            <translation>Nach Augenmaß</translation>
        </message>
        <message>
            <source>When</source>
            <translation>Wann</translation>
        </message>
        <message>
            <source>Photos of the heap...</source>
            <translation>Fotos vom Haufen...</translation>
        </message>
        <message>
            <source>Delete this test</source>
            <translation>Diese Probe löschen</translation>
        </message>
        <message>
            <source>Close</source>
            <translation>Schließen</translation>
        </message>
        <message>
            <source>Keep</source>
            <translation>Speichern</translation>
        </message>
        <message>
            <source>This test is complete.</source>
            <translation>Diese Probe ist vollständig.</translation>
        </message>
        <message>
            <source>The table has its numbers.</source>
            <translation>Die Tabelle hat ihre Zahlen.</translation>
        </message>
        <message>
            <source>Type a number such as 812 g.</source>
            <translation>Eine Zahl wie 812 g eingeben.</translation>
        </message>
        <message>
            <source>It was {value}</source>
            <translation>Es war {value}</translation>
        </message>
        <message>
            <source>Photos of the heap</source>
            <translation>Fotos vom Haufen</translation>
        </message>
        <message>
            <source>○ {step}</source>
            <translation>○ {step}</translation>
        </message>
        <message>
            <source>● {step}: {told}</source>
            <translation>● {step}: {told}</translation>
        </message>
        <message>
            <source>It is due now.</source>
            <translation>Es ist jetzt fällig.</translation>
        </message>
        <message>
            <source>Due at {at}. Close this: the table reminds you.</source>
            <translation>Fällig um {at}. Schließen: die Tabelle erinnert daran.</translation>
        </message>
        <message>
            <source>Due on {day} at {at}. Close this: the table reminds you.</source>
            <translation>Fällig am {day} um {at}. Schließen: die Tabelle erinnert daran.</translation>
        </message>
        <message>
            <source>Weight, {unit} or with its unit</source>
            <translation>Gewicht, {unit} oder mit Einheit</translation>
        </message>
        <message>
            <source>Medium, {unit} or with its unit</source>
            <translation>Substrat, {unit} oder mit Einheit</translation>
        </message>
        <message>
            <source>Air, {unit} or with its unit</source>
            <translation>Luft, {unit} oder mit Einheit</translation>
        </message>
    </context>
    <context>
        <name>BenchConditions</name>
        <message>
            <source>in the tray</source>
            <translation>in der Schale</translation>
        </message>
        <message>
            <source>on an upturned tray</source>
            <translation>auf umgedrehter Schale</translation>
        </message>
        <message>
            <source>watered from top</source>
            <translation>von oben gegossen</translation>
        </message>
        <message>
            <source>watered from below</source>
            <translation>von unten gegossen</translation>
        </message>
        <message>
            <source>watered from both sides</source>
            <translation>von beiden Seiten gegossen</translation>
        </message>
        <message>
            <source>garden, compost, pile</source>
            <translation>Garten, Kompost, Haufen</translation>
        </message>
        <message>
            <source>Where it breaks down</source>
            <translation>Wo es sich abbaut</translation>
        </message>
        <message>
            <source>Seating</source>
            <translation>Lage</translation>
        </message>
        <message>
            <source>Watering</source>
            <translation>Bewässerung</translation>
        </message>
        <message>
            <source>Tray type</source>
            <translation>Schalentyp</translation>
        </message>
        <message>
            <source>Where</source>
            <translation>Wo</translation>
        </message>
    </context>
    <context>
        <name>BenchPage</name>
        <message>
            <source>The rack</source>
            <translation>Das Regal</translation>
        </message>
        <message>
            <source>Bring in photos</source>
            <translation>Fotos einlesen</translation>
        </message>
        <message>
            <source>Go to Intake (Ctrl+2)</source>
            <translation>Zum Eingang (Strg+2)</translation>
        </message>
    </context>
    <context>
        <name>BenchSwitch</name>
        <message>
            <source>The window has no room for both; F6 turns to the other</source>
            <translation>Das Fenster hat nicht für beides Platz; F6 wechselt</translation>
        </message>
        <message>
            <source>Needs a look ({count})</source>
            <translation>Braucht einen Blick ({count})</translation>
        </message>
        <message>
            <source>The rack ({count})</source>
            <translation>Das Regal ({count})</translation>
        </message>
    </context>
    <context>
        <name>Blind</name>
        <message>
            <source>The picture is lost. Give no score: go on with Next, and it is left out.</source>
            <translation>Das Bild fehlt. Keine Note geben: mit „Weiter“ fortfahren, dann wird es weggelassen.</translation>
        </message>
    </context>
    <context>
        <name>BlindStart</name>
        <message>
            <source>Score by eye</source>
            <translation>Nach Augenmaß werten</translation>
        </message>
        <message>
            <source>Score {crop} by eye</source>
            <translation>{crop} nach Augenmaß werten</translation>
        </message>
        <message>
            <source>You see {photos} trays from above, one after the other, with names hidden, in drawn order and equally bright. Some come twice, to see how well you agree with yourself. Give each a number from 0 to 100. You can leave at any time and go on later.</source>
            <translation>Gezeigt werden {photos} Schalen von oben, eine nach der anderen, ohne Namen, in ausgeloster Folge und gleich hell. Einige kommen zweimal, damit sich zeigt, wie gut die Noten mit sich selbst übereinstimmen. Jede bekommt eine Zahl von 0 bis 100. Unterbrechen und später weitermachen geht jederzeit.</translation>
        </message>
        <message>
            <source>&amp;Who scores</source>
            <translation>&amp;Wer wertet</translation>
        </message>
        <message>
            <source>Leave</source>
            <translation>Verlassen</translation>
        </message>
        <message>
            <source>Begin a round</source>
            <translation>Runde beginnen</translation>
        </message>
        <message>
            <source>Go on: {done} of {total} scored</source>
            <translation>Weiter: {done} von {total} gewertet</translation>
        </message>
        <message>
            <source>Photos are being scored. A round holds all photos of the day, so it can begin once they are in.</source>
            <translation>Fotos werden ausgewertet. Eine Runde enthält alle Fotos des Tages, sie kann also beginnen, sobald sie da sind.</translation>
        </message>
    </context>
    <context>
        <name>BlindWindow</name>
        <message>
            <source>Score by eye</source>
            <translation>Nach Augenmaß werten</translation>
        </message>
    </context>
    <context>
        <name>BlockChart</name>
        <message>
            <source>Trays of each block</source>
            <translation>Schalen jedes Blocks</translation>
        </message>
        <message>
            <source>{block}: {numbers}</source>
            <translation>{block}: {numbers}</translation>
        </message>
        <message>
            <source>{unit}; bars are means</source>
            <translation>{unit}; Balken sind Mittelwerte</translation>
        </message>
    </context>
    <context>
        <name>BlocksPage</name>
        <message>
            <source>On which shelves?</source>
            <translation>Auf welchen Etagen?</translation>
        </message>
        <message>
            <source>Trays that stand on one shelf and are sown on one day make a block. Every block holds every treatment, so that light and warmth of a shelf favour none.</source>
            <translation>Schalen, die auf einer Etage stehen und am selben Tag gesät werden, bilden einen Block. Jeder Block enthält jede Variante, damit Licht und Wärme einer Etage keine bevorzugen.</translation>
        </message>
        <message>
            <source>Shelf</source>
            <translation>Etage</translation>
        </message>
        <message>
            <source>Places for trays</source>
            <translation>Plätze für Schalen</translation>
        </message>
        <message>
            <source>Window or draught</source>
            <translation>Fenster oder Zugluft</translation>
        </message>
        <message>
            <source>Another shelf</source>
            <translation>Weitere Etage</translation>
        </message>
        <message>
            <source>When?</source>
            <translation>Wann?</translation>
        </message>
        <message>
            <source>First day of sowing</source>
            <translation>Erster Tag der Aussaat</translation>
        </message>
        <message>
            <source>Days from one sowing to the next</source>
            <translation>Tage von einer Aussaat zur nächsten</translation>
        </message>
        <message>
            <source>days</source>
            <translation>Tage</translation>
        </message>
        <message>
            <source>Next round after</source>
            <translation>Nächste Runde nach</translation>
        </message>
        <message>
            <source>First sowing</source>
            <translation>Erste Aussaat</translation>
        </message>
        <message>
            <source>What it takes</source>
            <translation>Was es braucht</translation>
        </message>
        <message>
            <source>This stands here once nothing is lacking.</source>
            <translation>Das steht hier, sobald nichts mehr fehlt.</translation>
        </message>
        <message>
            <source>{block}: {day}</source>
            <translation>{block}: {day}</translation>
        </message>
        <message>
            <source>and {n} more</source>
            <translation>und {n} weitere</translation>
        </message>
        <message>
            <source>Name of shelf {n}</source>
            <translation>Name von Etage {n}</translation>
        </message>
        <message>
            <source>Places on shelf {n}</source>
            <translation>Plätze auf Etage {n}</translation>
        </message>
        <message>
            <source>Window of shelf {n}</source>
            <translation>Fenster von Etage {n}</translation>
        </message>
        <message>
            <source>at place 1</source>
            <translation>an Platz 1</translation>
        </message>
        <message>
            <source>at the last place</source>
            <translation>am letzten Platz</translation>
        </message>
        <message>
            <source>at neither end</source>
            <translation>an keinem Ende</translation>
        </message>
        <message>
            <source>Leave out</source>
            <translation>Weglassen</translation>
        </message>
        <message>
            <source>Leave out shelf {n}</source>
            <translation>Etage {n} weglassen</translation>
        </message>
    </context>
    <context>
        <name>BookDesk</name>
        <message>
            <source>Bringing the book up to date</source>
            <translation>Das Buch wird auf den neuesten Stand gebracht</translation>
        </message>
    </context>
    <context>
        <name>BookDialogs</name>
        <message>
            <source>Bring in the file of a logger or a scale</source>
            <translation>Die Datei eines Loggers oder einer Waage einlesen</translation>
        </message>
        <message>
            <source>Bring in old notes of trays</source>
            <translation>Alte Aufzeichnungen über Schalen einlesen</translation>
        </message>
    </context>
    <context>
        <name>BookMenu</name>
        <message>
            <source>Opened of late</source>
            <translation>Zuletzt geöffnet</translation>
        </message>
        <message>
            <source>Bring in more</source>
            <translation>Mehr einlesen</translation>
        </message>
    </context>
    <context>
        <name>Bringing</name>
        <message>
            <source>Scoring photos</source>
            <translation>Fotos werden ausgewertet</translation>
        </message>
        <message>
            <source>There is no picture in {folders}.</source>
            <translation>In {folders} liegt kein Bild.</translation>
        </message>
        <message>
            <source>Stopped. What was stored by then stays; bring the rest in whenever you like.</source>
            <translation>Angehalten. Was bis dahin gespeichert war, bleibt; den Rest jederzeit nachholen.</translation>
        </message>
    </context>
    <context>
        <name>BrushTools</name>
        <message>
            <source>Brush</source>
            <translation>Pinsel</translation>
        </message>
        <message>
            <source>Paint canopy where it is (B)</source>
            <translation>Bestand malen, wo er ist (B)</translation>
        </message>
        <message>
            <source>Eraser</source>
            <translation>Radierer</translation>
        </message>
        <message>
            <source>Take canopy away where none is (E)</source>
            <translation>Bestand wegnehmen, wo keiner ist (E)</translation>
        </message>
        <message>
            <source>A smaller brush ([)</source>
            <translation>Kleinerer Pinsel ([)</translation>
        </message>
        <message>
            <source>Smaller brush</source>
            <translation>Kleinerer Pinsel</translation>
        </message>
        <message>
            <source>A larger brush (])</source>
            <translation>Größerer Pinsel (])</translation>
        </message>
        <message>
            <source>Larger brush</source>
            <translation>Größerer Pinsel</translation>
        </message>
        <message>
            <source>Take the last stroke back (Ctrl+Z)</source>
            <translation>Letzten Strich zurücknehmen (Strg+Z)</translation>
        </message>
        <message>
            <source>Do it again (Ctrl+Shift+Z)</source>
            <translation>Noch einmal tun (Strg+Umschalt+Z)</translation>
        </message>
        <message>
            <source>Back</source>
            <translation>Zurück</translation>
        </message>
        <message>
            <source>Stroke back</source>
            <translation>Strich zurück</translation>
        </message>
        <message>
            <source>Again</source>
            <translation>Wieder</translation>
        </message>
        <message>
            <source>Stroke again</source>
            <translation>Strich wieder</translation>
        </message>
        <message>
            <source>{width:g} mm wide</source>
            <translation>{width:g} mm breit</translation>
        </message>
    </context>
    <context>
        <name>BrushView</name>
        <message>
            <source>Canopy of the tray, to be mended with the brush</source>
            <translation>Bestand der Schale, mit dem Pinsel nachzubessern</translation>
        </message>
    </context>
    <context>
        <name>ChartPanel</name>
        <message>
            <source>Save...</source>
            <translation>Speichern...</translation>
        </message>
        <message>
            <source>Save this chart as SVG or PNG (Ctrl+S)</source>
            <translation>Diagramm als SVG oder PNG speichern (Strg+S)</translation>
        </message>
        <message>
            <source>Save the chart: {title}</source>
            <translation>Diagramm speichern: {title}</translation>
        </message>
    </context>
    <context>
        <name>ClockBand</name>
        <message>
            <source>The clock was right</source>
            <translation>Die Uhr ging richtig</translation>
        </message>
        <message>
            <source>Leave the times as they are, and do not ask again; Ctrl+Z takes it back</source>
            <translation>Die Zeiten lassen, wie sie sind, und nicht wieder fragen; Strg+Z nimmt es zurück</translation>
        </message>
        <message>
            <source>Show only these photos</source>
            <translation>Nur diese Fotos zeigen</translation>
        </message>
        <message>
            <source>Move all these photos by as much; those with a tag find their tray anew (undo: Ctrl+Z)</source>
            <translation>Alle diese Fotos um ebenso viel verschieben; die mit Schild finden ihre Schale neu (zurück: Strg+Z)</translation>
        </message>
        <message>
            <source>Last photo</source>
            <translation>Letztes Foto</translation>
        </message>
        <message>
            <source>When the first photo was really taken: change it if you know better, the others follow</source>
            <translation>Wann das erste Foto wirklich entstand: ändern, wenn es besser bekannt ist; die anderen folgen</translation>
        </message>
        <message>
            <source>What time was it really?</source>
            <translation>Wie spät war es wirklich?</translation>
        </message>
        <message>
            <source>What time was it really? ({n} more clocks after this one)</source>
            <translation>Wie spät war es wirklich? (danach noch {n} weitere Uhren)</translation>
        </message>
        <message>
            <source>The time of day is a guess: set it if you know better.</source>
            <translation>Die Uhrzeit ist geraten: einstellen, wenn sie besser bekannt ist.</translation>
        </message>
        <message>
            <source>First photo</source>
            <translation>Erstes Foto</translation>
        </message>
        <message>
            <source>The photo</source>
            <translation>Das Foto</translation>
        </message>
        <message>
            <source>First photo: the camera says {before}. Really taken at</source>
            <translation>Erstes Foto: die Kamera sagt {before}. Wirklich aufgenommen am</translation>
        </message>
        <message>
            <source>Last photo: {before} becomes {after}</source>
            <translation>Letztes Foto: aus {before} wird {after}</translation>
        </message>
        <message>
            <source>That would be after the photos came in.</source>
            <translation>Da waren die Fotos schon eingelesen.</translation>
        </message>
        <message>
            <source>Mend the photo</source>
            <translation>Das Foto berichtigen</translation>
        </message>
        <message>
            <source>Mend {count} photos</source>
            <translation>{count} Fotos berichtigen</translation>
        </message>
        <message>
            <source>1 day</source>
            <translation>1 Tag</translation>
        </message>
        <message>
            <source>{n} days</source>
            <translation>{n} Tage</translation>
        </message>
        <message>
            <source>{n} h</source>
            <translation>{n} h</translation>
        </message>
        <message>
            <source>{n} min</source>
            <translation>{n} min</translation>
        </message>
        <message>
            <source>{time} later than the camera says</source>
            <translation>{time} später, als die Kamera sagt</translation>
        </message>
        <message>
            <source>{time} earlier than the camera says</source>
            <translation>{time} früher, als die Kamera sagt</translation>
        </message>
    </context>
    <context>
        <name>ClockFault</name>
        <message>
            <source>time zone or summer time</source>
            <translation>Zeitzone oder Sommerzeit</translation>
        </message>
        <message>
            <source>wrong year</source>
            <translation>falsches Jahr</translation>
        </message>
        <message>
            <source>reset to a default date</source>
            <translation>auf ein Anfangsdatum zurückgesetzt</translation>
        </message>
        <message>
            <source>runs wrong</source>
            <translation>geht falsch</translation>
        </message>
    </context>
    <context>
        <name>ComparePage</name>
        <message>
            <source>Held against</source>
            <translation>Verglichen mit</translation>
        </message>
        <message>
            <source>The day it is held against</source>
            <translation>Der Tag, mit dem verglichen wird</translation>
        </message>
        <message>
            <source>The other day of this tray; the strip below chooses the first one</source>
            <translation>Der andere Tag dieser Schale; der Streifen unten wählt den ersten</translation>
        </message>
        <message>
            <source>Where</source>
            <translation>Wo</translation>
        </message>
        <message>
            <source>Outline where canopy grew and where it vanished (W)</source>
            <translation>Umrisse, wo Bestand hinzukam und wo er verschwand (W)</translation>
        </message>
        <message>
            <source>This day has no top view: choose another one in the strip.</source>
            <translation>Dieser Tag hat keine Draufsicht: im Streifen einen anderen wählen.</translation>
        </message>
        <message>
            <source>Two photos with a score are needed to see what changed between them.</source>
            <translation>Zwei ausgewertete Fotos sind nötig, um zu sehen, was sich dazwischen verändert hat.</translation>
        </message>
        <message>
            <source>Looking for what grew and what vanished ...</source>
            <translation>Gesucht wird, was hinzukam und was verschwand ...</translation>
        </message>
        <message>
            <source>What grew and what vanished cannot be told from these two photos.</source>
            <translation>Was hinzukam und was verschwand, ist aus diesen beiden Fotos nicht zu erkennen.</translation>
        </message>
        <message>
            <source>Left of the line {earlier}, right of it {later}.</source>
            <translation>Links der Linie {earlier}, rechts {later}.</translation>
        </message>
    </context>
    <context>
        <name>ConditionsPage</name>
        <message>
            <source>Fill in what is usual</source>
            <translation>Übliches einsetzen</translation>
        </message>
        <message>
            <source>Fill the empty fields as for the last tray of this crop and medium, or as you said of them</source>
            <translation>Leere Felder wie bei der letzten Schale dieser Kultur und dieses Substrats füllen, oder wie dort angegeben</translation>
        </message>
        <message>
            <source>For more trays...</source>
            <translation>Für mehr Schalen...</translation>
        </message>
        <message>
            <source>Give blackout, watering and the like to all trays of the trial, of a medium or of a shelf</source>
            <translation>Dunkelphase, Bewässerung und Ähnliches allen Schalen des Versuchs, eines Substrats oder einer Etage geben</translation>
        </message>
        <message>
            <source>Leave as it was</source>
            <translation>Verwerfen</translation>
        </message>
        <message>
            <source>Forget what was typed (Esc)</source>
            <translation>Eingegebenes vergessen (Esc)</translation>
        </message>
        <message>
            <source>Keep</source>
            <translation>Speichern</translation>
        </message>
        <message>
            <source>Keep these conditions (Ctrl+Enter); Ctrl+Z takes it back</source>
            <translation>Diese Bedingungen speichern (Strg+Eingabe); Strg+Z nimmt es zurück</translation>
        </message>
        <message>
            <source>Conditions of {code} kept.</source>
            <translation>Bedingungen von {code} gespeichert.</translation>
        </message>
        <message>
            <source>There is no other tray in its trial or on the rack.</source>
            <translation>Weder in ihrem Versuch noch im Regal gibt es eine andere Schale.</translation>
        </message>
        <message>
            <source>Conditions of {n} trays kept; Ctrl+Z takes it back.</source>
            <translation>Bedingungen von {n} Schalen gespeichert; Strg+Z nimmt es zurück.</translation>
        </message>
        <message>
            <source>Nothing changed: all have that already.</source>
            <translation>Nichts geändert: alle haben das schon.</translation>
        </message>
        <message>
            <source>Stopped; the conditions of all trays are as they were.</source>
            <translation>Abgebrochen; die Bedingungen aller Schalen sind, wie sie waren.</translation>
        </message>
    </context>
    <context>
        <name>CornerDesk</name>
        <message>
            <source>Scoring the photo again</source>
            <translation>Das Foto wird erneut ausgewertet</translation>
        </message>
    </context>
    <context>
        <name>CornerPage</name>
        <message>
            <source>Drag each ring so that its cross lies on the inner edge of the tray's rim, at the height of the rim. The lens beside your finger shows the place enlarged. A corner that the photo cuts off goes where it would be, beyond the photo's edge.</source>
            <translation>Jeden Ring so ziehen, dass sein Kreuz auf der Innenkante des Schalenrands liegt, auf Höhe des Rands. Die Lupe neben dem Finger zeigt die Stelle vergrößert. Eine Ecke, die das Foto abschneidet, gehört dorthin, wo sie läge: jenseits der Fotokante.</translation>
        </message>
        <message>
            <source>The tray from above, with these corners</source>
            <translation>Die Schale von oben, mit diesen Ecken</translation>
        </message>
        <message>
            <source>It is right when the rim is just gone on all four sides and rows run straight.</source>
            <translation>Richtig ist es, wenn der Rand auf allen vier Seiten gerade weg ist und Reihen gerade laufen.</translation>
        </message>
        <message>
            <source>Tab: next corner. Arrows: 1 pixel, with Shift 10. + and -: closer and back.</source>
            <translation>Tab: nächste Ecke. Pfeile: 1 Pixel, mit Umschalt 10. + und -: näher und zurück.</translation>
        </message>
        <message>
            <source>Take back</source>
            <translation>Zurücknehmen</translation>
        </message>
        <message>
            <source>Take the last move of a corner back (Ctrl+Z)</source>
            <translation>Die letzte Bewegung einer Ecke zurücknehmen (Strg+Z)</translation>
        </message>
        <message>
            <source>Again</source>
            <translation>Wieder</translation>
        </message>
        <message>
            <source>Do the move again (Ctrl+Shift+Z)</source>
            <translation>Den Zug noch einmal machen (Strg+Umschalt+Z)</translation>
        </message>
        <message>
            <source>Leave</source>
            <translation>Verlassen</translation>
        </message>
        <message>
            <source>Leave the photo as it is (Esc)</source>
            <translation>Foto lassen, wie es ist (Esc)</translation>
        </message>
        <message>
            <source>Use these corners</source>
            <translation>Diese Ecken nehmen</translation>
        </message>
        <message>
            <source>Corners of {name}</source>
            <translation>Ecken von {name}</translation>
        </message>
        <message>
            <source>Score the photo with these corners (Enter)</source>
            <translation>Foto mit diesen Ecken auswerten (Eingabe)</translation>
        </message>
        <message>
            <source>These four points cannot be a tray: put them on its corners, one after the other</source>
            <translation>Diese vier Punkte können keine Schale sein: nacheinander auf ihre Ecken setzen</translation>
        </message>
        <message>
            <source>{share} % of the tray lies outside the photo. It will not be scored, since what is not seen would count as bare: photograph the tray again with its whole rim in the picture.</source>
            <translation>{share} % der Schale liegen außerhalb des Fotos. Es wird nicht ausgewertet, denn was nicht zu sehen ist, zählte als kahl: die Schale noch einmal mit ihrem ganzen Rand im Bild fotografieren.</translation>
        </message>
    </context>
    <context>
        <name>CornerView</name>
        <message>
            <source>Photo with the four corners of the tray</source>
            <translation>Foto mit den vier Ecken der Schale</translation>
        </message>
        <message>
            <source>{corner} at {x} px from the left, {y} px from the top, outside the photo</source>
            <translation>{corner}: {x} px von links, {y} px von oben, außerhalb des Fotos</translation>
        </message>
        <message>
            <source>{corner} at {x} px from the left, {y} px from the top</source>
            <translation>{corner} bei {x} px von links, {y} px von oben</translation>
        </message>
        <message>
            <source>Corner {number} of 4</source>
            <translation>Ecke {number} von 4</translation>
        </message>
    </context>
    <context>
        <name>CornersFrom</name>
        <message>
            <source>station</source>
            <translation>Station</translation>
        </message>
        <message>
            <source>frame</source>
            <translation>Rand</translation>
        </message>
        <message>
            <source>hand</source>
            <translation>Hand</translation>
        </message>
        <message>
            <source>whole</source>
            <translation>ganz</translation>
        </message>
    </context>
    <context>
        <name>CropRow</name>
        <message>
            <source>{crop}, read on day</source>
            <translation>{crop}, abgelesen an Tag</translation>
        </message>
        <message>
            <source>{crop}, dry seed a tray</source>
            <translation>{crop}, trockenes Saatgut je Schale</translation>
        </message>
        <message>
            <source>g</source>
            <translation>g</translation>
        </message>
        <message>
            <source>{crop}, days of blackout</source>
            <translation>{crop}, Tage Dunkelphase</translation>
        </message>
    </context>
    <context>
        <name>Curve</name>
        <message>
            <source>logistic</source>
            <translation>logistisch</translation>
        </message>
        <message>
            <source>Gompertz</source>
            <translation>Gompertz</translation>
        </message>
    </context>
    <context>
        <name>Date</name>
        <message>
            <source>d MMMM</source>
            <translation>d. MMMM</translation>
        </message>
        <message>
            <source>d MMMM yyyy</source>
            <translation>d. MMMM yyyy</translation>
        </message>
        <message>
            <source>d MMM</source>
            <translation>d. MMM</translation>
        </message>
        <message>
            <source>d MMM yyyy</source>
            <translation>d. MMM yyyy</translation>
        </message>
        <message>
            <source>d MMM yyyy, HH:mm</source>
            <translation>d. MMM yyyy, HH:mm</translation>
        </message>
        <message>
            <source>d MMM, HH:mm</source>
            <translation>d. MMM, HH:mm</translation>
        </message>
        <message>
            <source>d MMMM, HH:mm</source>
            <translation>d. MMMM, HH:mm</translation>
        </message>
        <message>
            <source>d MMM yyyy HH:mm</source>
            <translation>d. MMM yyyy HH:mm</translation>
        </message>
    </context>
    <context>
        <name>DateOrder</name>
        <message>
            <source>year, month, day</source>
            <translation>Jahr, Monat, Tag</translation>
        </message>
        <message>
            <source>day, month, year</source>
            <translation>Tag, Monat, Jahr</translation>
        </message>
        <message>
            <source>month, day, year</source>
            <translation>Monat, Tag, Jahr</translation>
        </message>
    </context>
    <context>
        <name>DayModel</name>
        <message>
            <source>today, no photo yet</source>
            <translation>heute, noch kein Foto</translation>
        </message>
        <message>
            <source>today</source>
            <translation>heute</translation>
        </message>
        <message>
            <source>not used</source>
            <translation>nicht verwendet</translation>
        </message>
    </context>
    <context>
        <name>DayStrip</name>
        <message>
            <source>Days of the tray</source>
            <translation>Tage der Schale</translation>
        </message>
    </context>
    <context>
        <name>DemoBand</name>
        <message>
            <source>Start my own book</source>
            <translation>Eigenes Buch beginnen</translation>
        </message>
        <message>
            <source>This is the demonstration: an invented trial of {count} trays with drawn photos, scored on this computer. It stands still on {day}.</source>
            <translation>Vorführung: ein erfundener Versuch mit {count} Schalen und gezeichneten Fotos, hier ausgewertet. Sie steht still am {day}.</translation>
        </message>
    </context>
    <context>
        <name>DoneBand</name>
        <message>
            <source>Open the folder</source>
            <translation>Ordner öffnen</translation>
        </message>
        <message>
            <source>I have read it</source>
            <translation>Gelesen</translation>
        </message>
    </context>
    <context>
        <name>DropArea</name>
        <message>
            <source>Drop photos or a folder anywhere in this window</source>
            <translation>Fotos oder einen Ordner irgendwo in dieses Fenster ziehen</translation>
        </message>
        <message>
            <source>Choose photos</source>
            <translation>Fotos wählen</translation>
        </message>
        <message>
            <source>Choose photo files (Ctrl+I)</source>
            <translation>Fotodateien wählen (Strg+I)</translation>
        </message>
        <message>
            <source>Choose a folder</source>
            <translation>Ordner wählen</translation>
        </message>
        <message>
            <source>Bring in all photos of a folder and the folders in it</source>
            <translation>Alle Fotos eines Ordners und seiner Unterordner einlesen</translation>
        </message>
        <message>
            <source>Watch a folder</source>
            <translation>Ordner beobachten</translation>
        </message>
        <message>
            <source>Drop photos or a folder anywhere, or</source>
            <translation>Fotos oder einen Ordner irgendwohin ziehen, oder</translation>
        </message>
        <message>
            <source>This book has no trays yet. Add them on the Bench first, or plan a trial and sow it: then photos find their trays.</source>
            <translation>In diesem Buch ist noch keine Schale. Erst Schalen im Regal hinzufügen, oder einen Versuch planen und säen: dann finden Fotos ihre Schalen.</translation>
        </message>
        <message>
            <source>Each photo gets a row here that says what became of it: matched to a tray by its tag or by the order of your walk, or what it still needs from you. A photo shows one tray from above, with its whole rim. Photos are copied into the book; your files stay as they are.</source>
            <translation>Jedes Foto bekommt hier eine Zeile, die sagt, was aus ihm wurde: einer Schale zugeordnet durch ihr Schild oder die Reihenfolge des Rundgangs, oder was es noch braucht. Ein Foto zeigt eine Schale von oben, mit ihrem ganzen Rand. Fotos werden in das Buch kopiert; die Dateien selbst bleiben, wie sie sind.</translation>
        </message>
        <message>
            <source>Bring in photos as your phone puts them into a folder</source>
            <translation>Fotos einlesen, sobald das Telefon sie in einen Ordner legt</translation>
        </message>
        <message>
            <source>Stop watching {name}</source>
            <translation>{name} nicht mehr beobachten</translation>
        </message>
        <message>
            <source>Photos that arrive in {folder} come in by themselves</source>
            <translation>Fotos, die in {folder} eintreffen, werden von selbst eingelesen</translation>
        </message>
    </context>
    <context>
        <name>DryFrom</name>
        <message>
            <source>the tray's own first weighings</source>
            <translation>die ersten Wägungen der Schale selbst</translation>
        </message>
        <message>
            <source>the tray's own first weighing and the wetting test of its medium</source>
            <translation>die erste Wägung der Schale selbst und die Benetzungsprobe ihres Substrats</translation>
        </message>
    </context>
    <context>
        <name>DryingForm</name>
        <message>
            <source>steady</source>
            <translation>gleichmäßig</translation>
        </message>
        <message>
            <source>exponential</source>
            <translation>exponentiell</translation>
        </message>
        <message>
            <source>two stages</source>
            <translation>zwei Abschnitte</translation>
        </message>
    </context>
    <context>
        <name>EndedTrays</name>
        <message>
            <source>Trays that have ended</source>
            <translation>Beendete Schalen</translation>
        </message>
        <message>
            <source>Trays that were cut or thrown away</source>
            <translation>Schalen, die geschnitten oder weggeworfen wurden</translation>
        </message>
        <message>
            <source>Open its sheet</source>
            <translation>Blatt öffnen</translation>
        </message>
        <message>
            <source>Close</source>
            <translation>Schließen</translation>
        </message>
        <message>
            <source>Part of a code, a crop, a medium, a month ...</source>
            <translation>Teil von Code, Kultur, Substrat, Monat ...</translation>
        </message>
        <message>
            <source>Find an ended tray</source>
            <translation>Beendete Schale suchen</translation>
        </message>
        <message>
            <source>Trays that have ended, last ended first</source>
            <translation>Beendete Schalen, zuletzt beendete zuerst</translation>
        </message>
        <message>
            <source>No ended tray is called that.</source>
            <translation>Keine beendete Schale heißt so.</translation>
        </message>
        <message>
            <source>No tray has ended yet. When one is cut or thrown away, it stands here with all its days.</source>
            <translation>Noch ist keine Schale beendet. Wird eine geschnitten oder weggeworfen, steht sie hier mit allen ihren Tagen.</translation>
        </message>
        <message>
            <source>{code}  {crop} on {medium}, sown {sown}, {how} {day}</source>
            <translation>{code}  {crop} auf {medium}, gesät {sown}, {how} {day}</translation>
        </message>
    </context>
    <context>
        <name>Errand</name>
        <message>
            <source>This did not work, and nothing of it was left. What happened is in the log.</source>
            <translation>Das ist nicht gelungen, und nichts davon ist liegen geblieben. Was geschah, steht im Protokoll.</translation>
        </message>
        <message>
            <source>Stopped; nothing of it was left.</source>
            <translation>Angehalten; nichts davon ist liegen geblieben.</translation>
        </message>
    </context>
    <context>
        <name>ErrorFrom</name>
        <message>
            <source>all media together</source>
            <translation>alle Substrate zusammen</translation>
        </message>
        <message>
            <source>each medium's own trays</source>
            <translation>die eigenen Schalen jedes Substrats</translation>
        </message>
        <message>
            <source>whole shelves</source>
            <translation>ganze Etagen</translation>
        </message>
    </context>
    <context>
        <name>EventKind</name>
        <message>
            <source>sowed</source>
            <translation>gesät</translation>
        </message>
        <message>
            <source>uncovered</source>
            <translation>Abdeckung ab</translation>
        </message>
        <message>
            <source>watered</source>
            <translation>gegossen</translation>
        </message>
        <message>
            <source>fed</source>
            <translation>gedüngt</translation>
        </message>
        <message>
            <source>turned</source>
            <translation>gedreht</translation>
        </message>
        <message>
            <source>moved</source>
            <translation>umgestellt</translation>
        </message>
        <message>
            <source>mold taken out</source>
            <translation>Schimmel entfernt</translation>
        </message>
        <message>
            <source>thrown away</source>
            <translation>weggeworfen</translation>
        </message>
        <message>
            <source>cut</source>
            <translation>geschnitten</translation>
        </message>
        <message>
            <source>set up</source>
            <translation>aufgestellt</translation>
        </message>
        <message>
            <source>cleaned</source>
            <translation>gereinigt</translation>
        </message>
        <message>
            <source>note</source>
            <translation>Notiz</translation>
        </message>
    </context>
    <context>
        <name>ExportPlace</name>
        <message>
            <source>All numbers as tables that a spreadsheet or a statistician's program opens, with a description of every column and a page on how to read them. The photos themselves, and where they were taken, are not among them.</source>
            <translation>Alle Zahlen als Tabellen, die eine Tabellenkalkulation oder ein Statistikprogramm öffnet, mit einer Beschreibung jeder Spalte und einer Seite, wie sie zu lesen sind. Die Fotos selbst und ihr Aufnahmeort sind nicht dabei.</translation>
        </message>
        <message>
            <source>Export as open files</source>
            <translation>Als offene Dateien exportieren</translation>
        </message>
        <message>
            <source>Export</source>
            <translation>Exportieren</translation>
        </message>
        <message>
            <source>Top views too, as JPEG without place and camera</source>
            <translation>Auch Draufsichten, als JPEG ohne Ort und Kamera</translation>
        </message>
    </context>
    <context>
        <name>FactorDialog</name>
        <message>
            <source>Numbers about {medium}</source>
            <translation>Zahlen zu {medium}</translation>
        </message>
        <message>
            <source>Numbers</source>
            <translation>Zahlen</translation>
        </message>
        <message>
            <source>Most likely</source>
            <translation>Wahrscheinlichster Wert</translation>
        </message>
        <message>
            <source>Lowest it could be</source>
            <translation>Kleinster möglicher</translation>
        </message>
        <message>
            <source>Highest it could be</source>
            <translation>Größter möglicher</translation>
        </message>
        <message>
            <source>Where from</source>
            <translation>Woher</translation>
        </message>
        <message>
            <source>Year</source>
            <translation>Jahr</translation>
        </message>
        <message>
            <source>Who entered it</source>
            <translation>Wer es eingab</translation>
        </message>
        <message>
            <source>Put back</source>
            <translation>Zurücksetzen</translation>
        </message>
        <message>
            <source>Close</source>
            <translation>Schließen</translation>
        </message>
        <message>
            <source>Keep</source>
            <translation>Speichern</translation>
        </message>
        <message>
            <source>(changed)</source>
            <translation>(geändert)</translation>
        </message>
        <message>
            <source>Typed and not kept yet: {names}. Keep it, or close once more to let it go.</source>
            <translation>Getippt und noch nicht gespeichert: {names}. Speichern, oder noch einmal schließen, um es zu verwerfen.</translation>
        </message>
        <message>
            <source>It is the same for all media.</source>
            <translation>Gilt für alle Substrate gleich.</translation>
        </message>
        <message>
            <source>Typed, and not kept yet.</source>
            <translation>Getippt, noch nicht gespeichert.</translation>
        </message>
        <message>
            <source>Nobody has said it yet.</source>
            <translation>Noch nicht angegeben.</translation>
        </message>
        <message>
            <source>A default. Type your own over it. From: {source}.</source>
            <translation>Eine Vorgabe. Den eigenen Wert darüber eingeben. Aus: {source}.</translation>
        </message>
        <message>
            <source>Changed; the default is {value} ({low} to {high}): {source}</source>
            <translation>Geändert; vorgegeben ist {value} ({low} bis {high}): {source}</translation>
        </message>
        <message>
            <source>Typed in.</source>
            <translation>Eingegeben.</translation>
        </message>
        <message>
            <source>Type the year in four digits, or leave it empty.</source>
            <translation>Das Jahr mit vier Ziffern tippen oder leer lassen.</translation>
        </message>
        <message>
            <source>{value} {unit} is unusual; in another unit it would be {other}. Keep it again if it is right.</source>
            <translation>{value} {unit} ist ungewöhnlich; in einer anderen Einheit wären es {other}. Noch einmal speichern, wenn es stimmt.</translation>
        </message>
    </context>
    <context>
        <name>FactorGroup</name>
        <message>
            <source>what goes into a tray</source>
            <translation>was in eine Schale kommt</translation>
        </message>
        <message>
            <source>the way to you</source>
            <translation>der Weg hierher</translation>
        </message>
        <message>
            <source>measures</source>
            <translation>Maße</translation>
        </message>
        <message>
            <source>money</source>
            <translation>Geld</translation>
        </message>
        <message>
            <source>feed</source>
            <translation>Düngung</translation>
        </message>
        <message>
            <source>climate factors</source>
            <translation>Klimafaktoren</translation>
        </message>
    </context>
    <context>
        <name>FeedDialog</name>
        <message>
            <source>Feed of {medium}</source>
            <translation>Düngung von {medium}</translation>
        </message>
        <message>
            <source>Leave</source>
            <translation>Abbrechen</translation>
        </message>
        <message>
            <source>Keep</source>
            <translation>Speichern</translation>
        </message>
        <message>
            <source>none, or what it is</source>
            <translation>keine, oder was es ist</translation>
        </message>
        <message>
            <source>Feed</source>
            <translation>Düngung</translation>
        </message>
        <message>
            <source>Note on the smell</source>
            <translation>Notiz zum Geruch</translation>
        </message>
        <message>
            <source>{what}: type a number, or leave it empty.</source>
            <translation>{what}: eine Zahl eingeben, oder leer lassen.</translation>
        </message>
        <message>
            <source>the grower</source>
            <translation>Gärtner</translation>
        </message>
    </context>
    <context>
        <name>Field</name>
        <message>
            <source>tray</source>
            <translation>Schale</translation>
        </message>
        <message>
            <source>crop</source>
            <translation>Kultur</translation>
        </message>
        <message>
            <source>medium</source>
            <translation>Substrat</translation>
        </message>
        <message>
            <source>sown</source>
            <translation>gesät</translation>
        </message>
        <message>
            <source>cut</source>
            <translation>geschnitten</translation>
        </message>
        <message>
            <source>trial</source>
            <translation>Versuch</translation>
        </message>
        <message>
            <source>block</source>
            <translation>Block</translation>
        </message>
        <message>
            <source>shelf</source>
            <translation>Etage</translation>
        </message>
        <message>
            <source>seed lot</source>
            <translation>Saatgutpartie</translation>
        </message>
        <message>
            <source>dry seed</source>
            <translation>trockenes Saatgut</translation>
        </message>
        <message>
            <source>soak hours</source>
            <translation>Einweichstunden</translation>
        </message>
        <message>
            <source>feed</source>
            <translation>Düngung</translation>
        </message>
        <message>
            <source>fresh mass</source>
            <translation>Frischmasse</translation>
        </message>
        <message>
            <source>height</source>
            <translation>Höhe</translation>
        </message>
        <message>
            <source>eye score</source>
            <translation>Note nach Augenmaß</translation>
        </message>
        <message>
            <source>note</source>
            <translation>Notiz</translation>
        </message>
    </context>
    <context>
        <name>FileForm</name>
        <message>
            <source>At work on the file</source>
            <translation>Die Datei ist in Arbeit</translation>
        </message>
        <message>
            <source>Leave</source>
            <translation>Abbrechen</translation>
        </message>
        <message>
            <source>Keep</source>
            <translation>Speichern</translation>
        </message>
        <message>
            <source>... and {n} more</source>
            <translation>... und {n} weitere</translation>
        </message>
    </context>
    <context>
        <name>Following</name>
        <message>
            <source>Taken back: {what}</source>
            <translation>Zurückgenommen: {what}</translation>
        </message>
        <message>
            <source>Taking back</source>
            <translation>Wird zurückgenommen</translation>
        </message>
        <message>
            <source>This could not be taken back; the book is as it was.</source>
            <translation>Das ließ sich nicht zurücknehmen; das Buch ist, wie es war.</translation>
        </message>
        <message>
            <source>Nothing was taken back; the book is as it was.</source>
            <translation>Nichts wurde zurückgenommen; das Buch ist, wie es war.</translation>
        </message>
        <message>
            <source>Done again: {what}</source>
            <translation>Wieder getan: {what}</translation>
        </message>
    </context>
    <context>
        <name>Group</name>
        <message>
            <source>What it is</source>
            <translation>Was es ist</translation>
        </message>
        <message>
            <source>Water</source>
            <translation>Wasser</translation>
        </message>
        <message>
            <source>Warmth</source>
            <translation>Wärme</translation>
        </message>
        <message>
            <source>After use</source>
            <translation>Nach dem Gebrauch</translation>
        </message>
        <message>
            <source>Climate</source>
            <translation>Klima</translation>
        </message>
        <message>
            <source>Cost and room</source>
            <translation>Kosten und Raum</translation>
        </message>
        <message>
            <source>Work and cut</source>
            <translation>Arbeit und Schnitt</translation>
        </message>
        <message>
            <source>Feed</source>
            <translation>Düngung</translation>
        </message>
    </context>
    <context>
        <name>GrowthChart</name>
        <message>
            <source>Growth of coverage</source>
            <translation>Wachstum der Deckung</translation>
        </message>
        <message>
            <source>Coverage in % over days since sowing. Thin lines are trays of the same crop beside it.</source>
            <translation>Deckung in % über den Tagen seit der Aussaat. Dünne Linien sind Schalen derselben Kultur daneben.</translation>
        </message>
        <message>
            <source>day {day} {coverage} %</source>
            <translation>Tag {day} {coverage} %</translation>
        </message>
        <message>
            <source>No coverage yet</source>
            <translation>Noch keine Deckung</translation>
        </message>
        <message>
            <source>day</source>
            <translation>Tag</translation>
        </message>
        <message>
            <source>Coverage, %</source>
            <translation>Deckung, %</translation>
        </message>
        <message>
            <source>cut</source>
            <translation>Schnitt</translation>
        </message>
    </context>
    <context>
        <name>GrowthPage</name>
        <message>
            <source>Dots are photos; the line is the curve through them; the band holds it in 19 of 20 cases.</source>
            <translation>Punkte sind Fotos; die Linie ist die Kurve durch sie; das Band enthält sie in 19 von 20 Fällen.</translation>
        </message>
        <message>
            <source>Block mates on other media are drawn too. Coverage counts the whole inner area: a mat that lies deep comes out some points lower than a loose mix. The look list and the verdict count the growing bed.</source>
            <translation>Auch Schalen des Blocks auf anderen Substraten sind gezeichnet. Die Deckung zählt die ganze Innenfläche: Eine Matte, die tief liegt, kommt einige Punkte niedriger heraus als loses Substrat. Blickliste und Urteil zählen die Substratfläche.</translation>
        </message>
        <message>
            <source>{count} of a kind that this program does not know, as of a newer Evenstand: kept, not shown.</source>
            <translation>{count} von einer Art, die dieses Programm nicht kennt, etwa von einem neueren Evenstand: gespeichert, hier aber nicht angezeigt.</translation>
        </message>
        <message>
            <source>{count} readings of loggers are drawn above and not listed here.</source>
            <translation>{count} Messwerte von Loggern sind oben gezeichnet und hier nicht aufgeführt.</translation>
        </message>
        <message>
            <source>Nothing is noted of this tray yet. Type its weight, a watering or what you did into the row below.</source>
            <translation>Zu dieser Schale ist noch nichts notiert. In der Zeile unten ihr Gewicht, eine Wassergabe oder eine Arbeit eintragen.</translation>
        </message>
        <message>
            <source>Kept. {doubt}</source>
            <translation>Gespeichert. {doubt}</translation>
        </message>
        <message>
            <source>{code} has left the rack; its photos stay in the book.</source>
            <translation>{code} hat das Regal verlassen; die Fotos bleiben im Buch.</translation>
        </message>
        <message>
            <source>That was before the tray was sown. Is the date right?</source>
            <translation>Das war vor der Aussaat der Schale. Stimmt das Datum?</translation>
        </message>
        <message>
            <source>That is still to come. Is the date right?</source>
            <translation>Das liegt noch vor uns. Stimmt das Datum?</translation>
        </message>
    </context>
    <context>
        <name>GuestDialog</name>
        <message>
            <source>Bring in {name}</source>
            <translation>{name} einlesen</translation>
        </message>
        <message>
            <source>Leave</source>
            <translation>Abbrechen</translation>
        </message>
        <message>
            <source>Bring in</source>
            <translation>Einlesen</translation>
        </message>
        <message>
            <source>{name} is being opened.</source>
            <translation>{name} wird geöffnet.</translation>
        </message>
        <message>
            <source>Before anything is added, the book as it is now is copied into its folder backups. Undo takes all of it back, as long as nothing kept later rests on it.</source>
            <translation>Bevor etwas dazukommt, wird das Buch, wie es jetzt ist, in seinen Ordner backups kopiert. Rückgängig nimmt alles zurück, solange nichts später Gespeichertes darauf beruht.</translation>
        </message>
        <message>
            <source>Bringing in the book</source>
            <translation>Buch wird eingelesen</translation>
        </message>
        <message>
            <source>Cancel</source>
            <translation>Abbrechen</translation>
        </message>
        <message>
            <source>This did not work, and nothing was added. What happened is in the log.</source>
            <translation>Das ist nicht gelungen, und nichts ist dazugekommen. Was geschah, steht im Protokoll.</translation>
        </message>
        <message>
            <source>Stopped; nothing was added.</source>
            <translation>Angehalten; nichts ist dazugekommen.</translation>
        </message>
    </context>
    <context>
        <name>GuestOpening</name>
        <message>
            <source>Opening the book</source>
            <translation>Buch wird geöffnet</translation>
        </message>
    </context>
    <context>
        <name>GuestSource</name>
        <message>
            <source>Bring in another book</source>
            <translation>Anderes Buch einlesen</translation>
        </message>
        <message>
            <source>Its trays, photos and notes are added to the book that is open, and nothing here is overwritten. First you see what is in it, and say what names mean that both books have.</source>
            <translation>Seine Schalen, Fotos und Notizen kommen in das offene Buch, und nichts hier wird überschrieben. Zuerst ist zu sehen, was darin steht, und zu sagen, was Namen bedeuten, die beide Bücher haben.</translation>
        </message>
        <message>
            <source>A packed book...</source>
            <translation>Gepacktes Buch...</translation>
        </message>
        <message>
            <source>The folder of a book or of an export...</source>
            <translation>Ordner eines Buchs oder eines Exports...</translation>
        </message>
        <message>
            <source>Leave</source>
            <translation>Abbrechen</translation>
        </message>
        <message>
            <source>Choose a packed book</source>
            <translation>Gepacktes Buch wählen</translation>
        </message>
        <message>
            <source>Choose the folder of a book or of an export</source>
            <translation>Ordner eines Buchs oder eines Exports wählen</translation>
        </message>
    </context>
    <context>
        <name>GuestTable</name>
        <message>
            <source>Tray</source>
            <translation>Schale</translation>
        </message>
        <message>
            <source>Crop</source>
            <translation>Kultur</translation>
        </message>
        <message>
            <source>Medium</source>
            <translation>Substrat</translation>
        </message>
        <message>
            <source>Sown</source>
            <translation>Gesät</translation>
        </message>
        <message>
            <source>Photos</source>
            <translation>Fotos</translation>
        </message>
        <message>
            <source>In this book</source>
            <translation>In diesem Buch</translation>
        </message>
        <message>
            <source>Trays of the other book</source>
            <translation>Schalen des anderen Buchs</translation>
        </message>
        <message>
            <source>known already</source>
            <translation>schon bekannt</translation>
        </message>
        <message>
            <source>new</source>
            <translation>neu</translation>
        </message>
        <message>
            <source>... and {n} more</source>
            <translation>... und {n} weitere</translation>
        </message>
    </context>
    <context>
        <name>HandPlacesDialog</name>
        <message>
            <source>Places drawn on paper</source>
            <translation>Auf Papier ausgeloste Plätze</translation>
        </message>
        <message>
            <source>Type for each tray where it stands: the number of its place along the shelf, as the lot said. A whole column can be pasted. Keep to the lots: trays put where they look best make a trial that proves nothing.</source>
            <translation>Für jede Schale eintippen, wo sie steht: die Nummer ihres Platzes entlang der Etage, wie das Los es sagte. Eine ganze Spalte lässt sich einfügen. Bitte beim Los bleiben: Schalen, die dort stehen, wo sie am besten aussehen, ergeben einen Versuch, der nichts zeigt.</translation>
        </message>
        <message>
            <source>Paste a column</source>
            <translation>Spalte einfügen</translation>
        </message>
        <message>
            <source>One place a line, in the order of this list, from the top</source>
            <translation>Ein Platz je Zeile, in der Reihenfolge dieser Liste, von oben an</translation>
        </message>
        <message>
            <source>lots drawn from a hat</source>
            <translation>Lose aus einem Hut gezogen</translation>
        </message>
        <message>
            <source>How were they drawn?</source>
            <translation>Wie wurde gelost?</translation>
        </message>
        <message>
            <source>Keep these places</source>
            <translation>Diese Plätze speichern</translation>
        </message>
        <message>
            <source>Place of {tray}</source>
            <translation>Platz von {tray}</translation>
        </message>
        <message>
            <source>Leave</source>
            <translation>Abbrechen</translation>
        </message>
        <message>
            <source>One place has to be mended.</source>
            <translation>Ein Platz ist zu berichtigen.</translation>
        </message>
        <message>
            <source>{n} places have to be mended.</source>
            <translation>{n} Plätze sind zu berichtigen.</translation>
        </message>
        <message>
            <source>One tray has no place yet.</source>
            <translation>Eine Schale hat noch keinen Platz.</translation>
        </message>
        <message>
            <source>{n} trays have no place yet.</source>
            <translation>{n} Schalen haben noch keinen Platz.</translation>
        </message>
        <message>
            <source>Say how they were drawn: the drawing before is kept beside this one.</source>
            <translation>Bitte sagen, wie gelost wurde: die vorige Auslosung bleibt neben dieser erhalten.</translation>
        </message>
        <message>
            <source>Every tray has its place.</source>
            <translation>Jede Schale hat ihren Platz.</translation>
        </message>
        <message>
            <source>{block}: {crop}, {treatment}</source>
            <translation>{block}: {crop}, {treatment}</translation>
        </message>
    </context>
    <context>
        <name>HeapPictures</name>
        <message>
            <source>Photo of the heap, {day}</source>
            <translation>Foto vom Haufen, {day}</translation>
        </message>
    </context>
    <context>
        <name>HelpWindow</name>
        <message>
            <source>Help</source>
            <translation>Hilfe</translation>
        </message>
        <message>
            <source>Search the help</source>
            <translation>Hilfe durchsuchen</translation>
        </message>
        <message>
            <source>Pages</source>
            <translation>Seiten</translation>
        </message>
        <message>
            <source>Page</source>
            <translation>Seite</translation>
        </message>
        <message>
            <source>Nothing is said about that.</source>
            <translation>Dazu steht hier nichts.</translation>
        </message>
    </context>
    <context>
        <name>Intake</name>
        <message>
            <source>Photos ({patterns})</source>
            <translation>Fotos ({patterns})</translation>
        </message>
        <message>
            <source>Go to the next photo that needs you</source>
            <translation>Zum nächsten Foto, das eine Entscheidung braucht</translation>
        </message>
        <message>
            <source>Go to the question above the photos</source>
            <translation>Zur Frage über den Fotos gehen</translation>
        </message>
        <message>
            <source>That did not work, and nothing was changed. Try it once more.</source>
            <translation>Das hat nicht geklappt, und nichts wurde geändert. Noch einmal versuchen.</translation>
        </message>
        <message>
            <source>1 photo needs you</source>
            <translation>1 Foto braucht eine Entscheidung</translation>
        </message>
        <message>
            <source>{count} photos need you</source>
            <translation>{count} Fotos brauchen eine Entscheidung</translation>
        </message>
        <message>
            <source>Photos are being scored</source>
            <translation>Fotos werden gerade ausgewertet</translation>
        </message>
        <message>
            <source>No photo needs you</source>
            <translation>Kein Foto braucht eine Entscheidung</translation>
        </message>
        <message>
            <source>1 photo</source>
            <translation>1 Foto</translation>
        </message>
        <message>
            <source>{count} photos</source>
            <translation>{count} Fotos</translation>
        </message>
        <message>
            <source>{count} matched</source>
            <translation>{count} zugeordnet</translation>
        </message>
        <message>
            <source>{count} already in the book</source>
            <translation>{count} schon im Buch</translation>
        </message>
        <message>
            <source>{count} not used</source>
            <translation>{count} nicht verwendet</translation>
        </message>
        <message>
            <source>{count} not brought in</source>
            <translation>{count} nicht eingelesen</translation>
        </message>
        <message>
            <source>{count} waiting</source>
            <translation>{count} warten</translation>
        </message>
        <message>
            <source>not brought in: the work broke off before it was this file's turn</source>
            <translation>nicht eingelesen: die Arbeit brach ab, bevor diese Datei an der Reihe war</translation>
        </message>
        <message>
            <source>waiting</source>
            <translation>wartet</translation>
        </message>
        <message>
            <source>already in the book: {fate}</source>
            <translation>schon im Buch: {fate}</translation>
        </message>
        <message>
            <source>the same photo as {name}, already in the book: {fate}</source>
            <translation>dasselbe Foto wie {name}, schon im Buch: {fate}</translation>
        </message>
        <message>
            <source>{sentence} (this {code} ended on {day})</source>
            <translation>{sentence} (diese {code} endete am {day})</translation>
        </message>
    </context>
    <context>
        <name>IntakeDesk</name>
        <message>
            <source>The time of the photo is mended. Ctrl+Z takes it back.</source>
            <translation>Die Zeit des Fotos ist berichtigt. Strg+Z nimmt es zurück.</translation>
        </message>
        <message>
            <source>The times of {count} photos are mended. Ctrl+Z takes it back.</source>
            <translation>Die Zeiten von {count} Fotos sind berichtigt. Strg+Z nimmt es zurück.</translation>
        </message>
        <message>
            <source>The times stay as they are, and nobody asks again. Ctrl+Z takes it back.</source>
            <translation>Die Zeiten bleiben, wie sie sind, und niemand fragt wieder. Strg+Z nimmt es zurück.</translation>
        </message>
    </context>
    <context>
        <name>IntervalChart</name>
        <message>
            <source>margin</source>
            <translation>Spielraum</translation>
        </message>
        <message>
            <source>less good</source>
            <translation>weniger gut</translation>
        </message>
        <message>
            <source>better</source>
            <translation>besser</translation>
        </message>
        <message>
            <source>Difference from the trusted medium</source>
            <translation>Unterschied zum bewährten Substrat</translation>
        </message>
    </context>
    <context>
        <name>Kept</name>
        <message>
            <source>photo matched to {code}</source>
            <translation>Foto {code} zugeordnet</translation>
        </message>
        <message>
            <source>{count} photos matched</source>
            <translation>{count} Fotos zugeordnet</translation>
        </message>
        <message>
            <source>{code} and {other} swapped</source>
            <translation>{code} und {other} getauscht</translation>
        </message>
        <message>
            <source>{what} left out</source>
            <translation>{what} weggelassen</translation>
        </message>
        <message>
            <source>clock of 1 photo {how}</source>
            <translation>Uhr von 1 Foto {how}</translation>
        </message>
        <message>
            <source>clock of {count} photos {how}</source>
            <translation>Uhr von {count} Fotos {how}</translation>
        </message>
        <message>
            <source>mended</source>
            <translation>berichtigt</translation>
        </message>
        <message>
            <source>believed</source>
            <translation>geglaubt</translation>
        </message>
        <message>
            <source>mold on {what}</source>
            <translation>Schimmel auf {what}</translation>
        </message>
        <message>
            <source>not mold on {what}</source>
            <translation>kein Schimmel auf {what}</translation>
        </message>
        <message>
            <source>suspect open again on {what}</source>
            <translation>Verdacht auf {what} wieder offen</translation>
        </message>
        <message>
            <source>a photo</source>
            <translation>einem Foto</translation>
        </message>
        <message>
            <source>corners of {what}</source>
            <translation>Ecken von {what}</translation>
        </message>
        <message>
            <source>canopy of {what}</source>
            <translation>Bestand von {what}</translation>
        </message>
        <message>
            <source>{count} readings</source>
            <translation>{count} Messwerte</translation>
        </message>
        <message>
            <source>readings of {what}</source>
            <translation>Messwerte von {what}</translation>
        </message>
        <message>
            <source>{count} trays</source>
            <translation>{count} Schalen</translation>
        </message>
        <message>
            <source>a bench test</source>
            <translation>eine Laborprobe</translation>
        </message>
        <message>
            <source>weight of {what}</source>
            <translation>Gewicht von {what}</translation>
        </message>
        <message>
            <source>medium temperature of {what}</source>
            <translation>Substrattemperatur von {what}</translation>
        </message>
        <message>
            <source>air temperature of {what}</source>
            <translation>Lufttemperatur von {what}</translation>
        </message>
        <message>
            <source>humidity of {what}</source>
            <translation>Luftfeuchte von {what}</translation>
        </message>
        <message>
            <source>water given of {what}</source>
            <translation>Wassergabe von {what}</translation>
        </message>
        <message>
            <source>feed given of {what}</source>
            <translation>Düngergabe von {what}</translation>
        </message>
        <message>
            <source>height of {what}</source>
            <translation>Höhe von {what}</translation>
        </message>
        <message>
            <source>fresh mass of {what}</source>
            <translation>Frischmasse von {what}</translation>
        </message>
        <message>
            <source>cut quality of {what}</source>
            <translation>Schnittqualität von {what}</translation>
        </message>
        <message>
            <source>slid at the cut of {what}</source>
            <translation>Verrutscht beim Schnitt bei {what}</translation>
        </message>
        <message>
            <source>shelf life of {what}</source>
            <translation>Haltbarkeit von {what}</translation>
        </message>
        <message>
            <source>taste of {what}</source>
            <translation>Geschmack von {what}</translation>
        </message>
        <message>
            <source>labour of {what}</source>
            <translation>Arbeitszeit von {what}</translation>
        </message>
        <message>
            <source>sweepings of {what}</source>
            <translation>Kehricht von {what}</translation>
        </message>
        <message>
            <source>sweepings by eye of {what}</source>
            <translation>Kehricht nach Augenmaß von {what}</translation>
        </message>
        <message>
            <source>break-down by eye of {what}</source>
            <translation>Abbau nach Augenmaß von {what}</translation>
        </message>
        <message>
            <source>{kind} of {what} changed</source>
            <translation>{kind} von {what} geändert</translation>
        </message>
        <message>
            <source>{kind} of {what} deleted</source>
            <translation>{kind} von {what} gelöscht</translation>
        </message>
        <message>
            <source>mold taken out: {what}</source>
            <translation>Schimmel entfernt: {what}</translation>
        </message>
        <message>
            <source>thrown away: {what}</source>
            <translation>weggeworfen: {what}</translation>
        </message>
        <message>
            <source>uncovered: {what}</source>
            <translation>Abdeckung ab: {what}</translation>
        </message>
        <message>
            <source>watered: {what}</source>
            <translation>gegossen: {what}</translation>
        </message>
        <message>
            <source>set up: {what}</source>
            <translation>aufgestellt: {what}</translation>
        </message>
        <message>
            <source>cleaned: {what}</source>
            <translation>gereinigt: {what}</translation>
        </message>
        <message>
            <source>note: {what}</source>
            <translation>Notiz: {what}</translation>
        </message>
        <message>
            <source>sowed: {what}</source>
            <translation>gesät: {what}</translation>
        </message>
        <message>
            <source>fed: {what}</source>
            <translation>gedüngt: {what}</translation>
        </message>
        <message>
            <source>turned: {what}</source>
            <translation>gedreht: {what}</translation>
        </message>
        <message>
            <source>moved: {what}</source>
            <translation>umgestellt: {what}</translation>
        </message>
        <message>
            <source>cut: {what}</source>
            <translation>geschnitten: {what}</translation>
        </message>
        <message>
            <source>wetting test of {medium} begun</source>
            <translation>Benetzungsprobe von {medium} begonnen</translation>
        </message>
        <message>
            <source>cooling test of {medium} begun</source>
            <translation>Abkühlprobe von {medium} begonnen</translation>
        </message>
        <message>
            <source>breakdown test of {medium} begun</source>
            <translation>Abbauprobe von {medium} begonnen</translation>
        </message>
        <message>
            <source>wetting test of {medium} deleted</source>
            <translation>Benetzungsprobe von {medium} gelöscht</translation>
        </message>
        <message>
            <source>cooling test of {medium} deleted</source>
            <translation>Abkühlprobe von {medium} gelöscht</translation>
        </message>
        <message>
            <source>breakdown test of {medium} deleted</source>
            <translation>Abbauprobe von {medium} gelöscht</translation>
        </message>
        <message>
            <source>{count} photos of the heap</source>
            <translation>{count} Fotos vom Haufen</translation>
        </message>
        <message>
            <source>tray {code} added</source>
            <translation>Schale {code} hinzugefügt</translation>
        </message>
        <message>
            <source>{count} trays added</source>
            <translation>{count} Schalen hinzugefügt</translation>
        </message>
        <message>
            <source>{count} trays from {name}</source>
            <translation>{count} Schalen aus {name}</translation>
        </message>
        <message>
            <source>book {name} brought in</source>
            <translation>Buch {name} eingelesen</translation>
        </message>
        <message>
            <source>conditions of {what}</source>
            <translation>Bedingungen von {what}</translation>
        </message>
        <message>
            <source>{what} marked as done</source>
            <translation>{what} als beendet vermerkt</translation>
        </message>
        <message>
            <source>{what} grows again</source>
            <translation>{what} wächst wieder</translation>
        </message>
        <message>
            <source>trusted medium: {name}</source>
            <translation>bewährtes Substrat: {name}</translation>
        </message>
        <message>
            <source>none</source>
            <translation>ohne</translation>
        </message>
        <message>
            <source>weekly</source>
            <translation>wöchentlich</translation>
        </message>
        <message>
            <source>{what} described</source>
            <translation>{what} beschrieben</translation>
        </message>
        <message>
            <source>limits of media</source>
            <translation>Grenzen der Substrate</translation>
        </message>
        <message>
            <source>trays a week</source>
            <translation>Schalen je Woche</translation>
        </message>
        <message>
            <source>number of {what}: {about}</source>
            <translation>Zahl von {what}: {about}</translation>
        </message>
        <message>
            <source>number of {what} put back: {about}</source>
            <translation>Zahl von {what} zurückgestellt: {about}</translation>
        </message>
        <message>
            <source>all media</source>
            <translation>allen Substraten</translation>
        </message>
        <message>
            <source>station cards of {name}</source>
            <translation>Stationskarten von {name}</translation>
        </message>
        <message>
            <source>{what} seen</source>
            <translation>{what} gesehen</translation>
        </message>
        <message>
            <source>{what} put off until tomorrow</source>
            <translation>{what} auf morgen verschoben</translation>
        </message>
        <message>
            <source>plan of {what}</source>
            <translation>Plan von {what}</translation>
        </message>
        <message>
            <source>limits and weights of {what}</source>
            <translation>Grenzen und Gewichte von {what}</translation>
        </message>
        <message>
            <source>margin of {what}: {number} points</source>
            <translation>Spielraum von {what}: {number} Punkte</translation>
        </message>
        <message>
            <source>places of {what} drawn</source>
            <translation>Plätze von {what} ausgelost</translation>
        </message>
        <message>
            <source>places of {what} entered by hand</source>
            <translation>Plätze von {what} von Hand eingetragen</translation>
        </message>
        <message>
            <source>round of scoring {what} by eye</source>
            <translation>Runde von {what} nach Augenmaß</translation>
        </message>
        <message>
            <source>score by eye {place} of {total}</source>
            <translation>Note nach Augenmaß {place} von {total}</translation>
        </message>
        <message>
            <source>{code}, matched by its tag</source>
            <translation>{code}, zugeordnet durch ihr Schild</translation>
        </message>
        <message>
            <source>{code}, matched by its tag, coverage {number} %</source>
            <translation>{code}, zugeordnet durch ihr Schild, Deckung {number} %</translation>
        </message>
        <message>
            <source>{code}, matched by the order of the walk</source>
            <translation>{code}, zugeordnet durch die Reihenfolge des Rundgangs</translation>
        </message>
        <message>
            <source>{code}, matched by the order of the walk, coverage {number} %</source>
            <translation>{code}, zugeordnet durch die Reihenfolge des Rundgangs, Deckung {number} %</translation>
        </message>
        <message>
            <source>{code}, matched by you</source>
            <translation>{code}, von Hand zugeordnet</translation>
        </message>
        <message>
            <source>{code}, matched by you, coverage {number} %</source>
            <translation>{code}, von Hand zugeordnet, Deckung {number} %</translation>
        </message>
        <message>
            <source>probably {code}, by the order of the walk: confirm it or choose the tray</source>
            <translation>wahrscheinlich {code}, nach der Reihenfolge des Rundgangs: bestätigen oder die Schale wählen</translation>
        </message>
        <message>
            <source>no tag read: choose the tray</source>
            <translation>kein Schild gelesen: die Schale wählen</translation>
        </message>
        <message>
            <source>more than one tag hangs on this tray: choose the tray, and leave only its own tag there</source>
            <translation>mehr als ein Schild hängt an dieser Schale: die Schale wählen und nur ihr eigenes Schild hängen lassen</translation>
        </message>
        <message>
            <source>tag {number} belongs to no tray that grew at that time: choose the tray</source>
            <translation>Schild {number} gehört zu keiner Schale, die damals wuchs: die Schale wählen</translation>
        </message>
        <message>
            <source>not used: {reason}</source>
            <translation>nicht verwendet: {reason}</translation>
        </message>
        <message>
            <source>{code}: not used: {reason}</source>
            <translation>{code}: nicht verwendet: {reason}</translation>
        </message>
        <message>
            <source>{code}: the tray's rim is not sure: drag the four corners onto the inner edge</source>
            <translation>{code}: der Schalenrand ist unsicher: die vier Ecken auf die Innenkante ziehen</translation>
        </message>
        <message>
            <source>already in the book</source>
            <translation>schon im Buch</translation>
        </message>
        <message>
            <source>already in the book: {was}</source>
            <translation>schon im Buch: {was}</translation>
        </message>
        <message>
            <source>left out by you</source>
            <translation>von Hand weggelassen</translation>
        </message>
        <message>
            <source>white web {width} mm wide on the bare medium</source>
            <translation>weißes Geflecht, {width} mm breit, auf dem bloßen Substrat</translation>
        </message>
        <message>
            <source>white web {width} mm wide across hulls</source>
            <translation>weißes Geflecht, {width} mm breit, über Samenschalen</translation>
        </message>
        <message>
            <source>white web {width} mm wide between leaves</source>
            <translation>weißes Geflecht, {width} mm breit, zwischen Blättern</translation>
        </message>
        <message>
            <source>grey web {width} mm wide on the bare medium</source>
            <translation>graues Geflecht, {width} mm breit, auf dem bloßen Substrat</translation>
        </message>
        <message>
            <source>grey web {width} mm wide across hulls</source>
            <translation>graues Geflecht, {width} mm breit, über Samenschalen</translation>
        </message>
        <message>
            <source>grey web {width} mm wide between leaves</source>
            <translation>graues Geflecht, {width} mm breit, zwischen Blättern</translation>
        </message>
        <message>
            <source>white web {width} mm wide</source>
            <translation>weißes Geflecht, {width} mm breit</translation>
        </message>
        <message>
            <source>grey web {width} mm wide</source>
            <translation>graues Geflecht, {width} mm breit</translation>
        </message>
        <message>
            <source>white web {width} mm wide on the bare {medium}</source>
            <translation>weißes Geflecht, {width} mm breit, auf bloßem Substrat ({medium})</translation>
        </message>
        <message>
            <source>grey web {width} mm wide on the bare {medium}</source>
            <translation>graues Geflecht, {width} mm breit, auf bloßem Substrat ({medium})</translation>
        </message>
        <message>
            <source>no bare medium beside it to compare with</source>
            <translation>kein bloßes Substrat zum Vergleich daneben</translation>
        </message>
        <message>
            <source>no bare {medium} beside it to compare with</source>
            <translation>kein bloßes Substrat ({medium}) zum Vergleich daneben</translation>
        </message>
        <message>
            <source>lighter than the {medium} around</source>
            <translation>heller als das Substrat ringsum ({medium})</translation>
        </message>
        <message>
            <source>darker than the {medium} around</source>
            <translation>dunkler als das Substrat ringsum ({medium})</translation>
        </message>
        <message>
            <source>as light as the {medium} around</source>
            <translation>so hell wie das Substrat ringsum ({medium})</translation>
        </message>
        <message>
            <source>greyer and lighter than the {medium} around</source>
            <translation>grauer und heller als das Substrat ringsum ({medium})</translation>
        </message>
        <message>
            <source>greyer and darker than the {medium} around</source>
            <translation>grauer und dunkler als das Substrat ringsum ({medium})</translation>
        </message>
        <message>
            <source>greyer and as light as the {medium} around</source>
            <translation>grauer als das Substrat ringsum und so hell ({medium})</translation>
        </message>
        <message>
            <source>not white fans along roots</source>
            <translation>keine weißen Fächer entlang von Wurzeln</translation>
        </message>
        <message>
            <source>bright white, so it may be root hairs</source>
            <translation>leuchtend weiß, also vielleicht Wurzelhaare</translation>
        </message>
        <message>
            <source>bright white, before root hairs stand</source>
            <translation>leuchtend weiß, bevor Wurzelhaare stehen</translation>
        </message>
        <message>
            <source>bright white on day {day}, when root hairs stand in fans: look again tomorrow</source>
            <translation>leuchtend weiß an Tag {day}, wenn Wurzelhaare in Fächern stehen: morgen noch einmal ansehen</translation>
        </message>
        <message>
            <source>bright white, yet on day {day} root hairs have mostly faded</source>
            <translation>leuchtend weiß, doch an Tag {day} sind Wurzelhaare meist vergangen</translation>
        </message>
        <message>
            <source>beside the tray's wall, so it may be the wall</source>
            <translation>an der Schalenwand, also vielleicht die Wand selbst</translation>
        </message>
        <message>
            <source>in the glare of a lamp, so it may be that</source>
            <translation>wo eine Lampe spiegelt, also vielleicht nur das Licht</translation>
        </message>
        <message>
            <source>smooth as a glove, a tool or a drop on the lens, so it may be that</source>
            <translation>glatt wie ein Handschuh, ein Werkzeug oder ein Tropfen auf der Linse, also vielleicht so etwas</translation>
        </message>
        <message>
            <source>it glitters a little, as wet ground does</source>
            <translation>es glitzert ein wenig, wie nasser Boden</translation>
        </message>
        <message>
            <source>No longer seen on {day}, {was} cm² before. Root hairs fade, mold seldom does.</source>
            <translation>Seit {day} nicht mehr zu sehen, vorher {was} cm². Wurzelhaare vergehen, Schimmel selten.</translation>
        </message>
        <message>
            <source>You said mold on the photo of {day}; the tray still stands on the rack.</source>
            <translation>Auf dem Foto vom {day} wurde Schimmel bestätigt; die Schale steht noch im Regal.</translation>
        </message>
        <message>
            <source>Take the tray away from the others, closed, and note on its sheet that it was thrown away.</source>
            <translation>Die Schale geschlossen von den anderen wegbringen und auf ihrem Blatt vermerken, dass sie weggeworfen wurde.</translation>
        </message>
        <message>
            <source>{count} patches that may be mold, the largest {area} cm²</source>
            <translation>{count} Stellen, die Schimmel sein können, die größte {area} cm²</translation>
        </message>
        <message>
            <source>1 patch that may be mold, the largest {area} cm²</source>
            <translation>1 Stelle, die Schimmel sein kann, {area} cm²</translation>
        </message>
        <message>
            <source>{count} patches that may be mold, the largest {area} cm², {x} cm from the left and {y} cm from the far side</source>
            <translation>{count} Stellen, die Schimmel sein können, die größte {area} cm², {x} cm von links und {y} cm von hinten</translation>
        </message>
        <message>
            <source>1 patch that may be mold, the largest {area} cm², {x} cm from the left and {y} cm from the far side</source>
            <translation>1 Stelle, die Schimmel sein kann, {area} cm², {x} cm von links und {y} cm von hinten</translation>
        </message>
        <message>
            <source>grown from {then} to {now} cm² since {day}</source>
            <translation>gewachsen von {then} auf {now} cm² seit {day}</translation>
        </message>
        <message>
            <source>smaller than on {day} ({area} cm²)</source>
            <translation>kleiner als am {day} ({area} cm²)</translation>
        </message>
        <message>
            <source>as large as on {day} ({area} cm²)</source>
            <translation>so groß wie am {day} ({area} cm²)</translation>
        </message>
        <message>
            <source>not grown for {days} days</source>
            <translation>seit {days} Tagen nicht gewachsen</translation>
        </message>
        <message>
            <source>last seen on {day}, leaves may hide it now</source>
            <translation>zuletzt gesehen am {day}, jetzt vielleicht von Blättern verdeckt</translation>
        </message>
        <message>
            <source>last seen on {day}</source>
            <translation>zuletzt gesehen am {day}</translation>
        </message>
        <message>
            <source>the newest photo, which is in doubt, does not tell whether it is gone</source>
            <translation>ob sie weg ist, sagt das neueste Foto nicht, denn es ist zweifelhaft</translation>
        </message>
        <message>
            <source>on an earlier photo of {day}, not on the newest</source>
            <translation>auf einem früheren Foto vom {day}, nicht auf dem neuesten</translation>
        </message>
        <message>
            <source>Lift the leaves at the place without touching what is under them: a grey web over stems and hulls speaks for mold, a white fan at each root that lies flat when misted for root hairs. Then say which it is.</source>
            <translation>Die Blätter an der Stelle anheben, ohne zu berühren, was darunter ist: ein graues Geflecht über Stängeln und Samenschalen spricht für Schimmel, ein weißer Fächer an jeder Wurzel, der sich beim Besprühen anlegt, für Wurzelhaare. Dann sagen, was es ist.</translation>
        </message>
        <message>
            <source>confidence {number}</source>
            <translation>Sicherheit {number}</translation>
        </message>
        <message>
            <source>Look at the place without touching it: a grey web over stems and hulls speaks for mold, a white fan at each root that lies flat when misted for root hairs. Then say which it is.</source>
            <translation>Die Stelle ansehen, ohne sie zu berühren: ein graues Geflecht über Stängeln und Samenschalen spricht für Schimmel; ein weißer Fächer an jeder Wurzel, der sich beim Besprühen anlegt, für Wurzelhaare. Danach angeben, was es ist.</translation>
        </message>
        <message>
            <source>A flag is a reason to look, no finding; no flag is no proof that a tray is safe. Do not taste, sell or give away from a tray with mold. Open it away from others, with gloves and a suitable respirator; keep people with asthma or weak immunity away. Clean tray and tools afterwards.</source>
            <translation>Ein Hinweis ist ein Grund nachzusehen, kein Befund; kein Hinweis ist kein Beweis, dass eine Schale unbedenklich ist. Von einer Schale mit Schimmel nichts kosten, verkaufen oder weitergeben. Abseits von anderen öffnen, mit Handschuhen und geeigneter Atemschutzmaske; Menschen mit Asthma oder schwacher Abwehr fernhalten. Schale und Werkzeug danach reinigen.</translation>
        </message>
        <message>
            <source>in the tray</source>
            <translation>in der Schale</translation>
        </message>
        <message>
            <source>on an upturned tray</source>
            <translation>auf umgedrehter Schale</translation>
        </message>
        <message>
            <source>top</source>
            <translation>von oben</translation>
        </message>
        <message>
            <source>bottom</source>
            <translation>von unten</translation>
        </message>
        <message>
            <source>both</source>
            <translation>beides</translation>
        </message>
        <message>
            <source>as now</source>
            <translation>wie jetzt</translation>
        </message>
        <message>
            <source>brighter</source>
            <translation>heller</translation>
        </message>
        <message>
            <source>with heat mat</source>
            <translation>mit Heizmatte</translation>
        </message>
        <message>
            <source>without heat mat</source>
            <translation>ohne Heizmatte</translation>
        </message>
        <message>
            <source>stacked</source>
            <translation>gestapelt</translation>
        </message>
        <message>
            <source>not stacked</source>
            <translation>nicht gestapelt</translation>
        </message>
        <message>
            <source>heat mat</source>
            <translation>Heizmatte</translation>
        </message>
        <message>
            <source>medium</source>
            <translation>Substrat</translation>
        </message>
        <message>
            <source>stacking</source>
            <translation>Stapeln</translation>
        </message>
        <message>
            <source>seating</source>
            <translation>Lage</translation>
        </message>
        <message>
            <source>watering</source>
            <translation>Bewässerung</translation>
        </message>
        <message>
            <source>feed</source>
            <translation>Düngung</translation>
        </message>
        <message>
            <source>light</source>
            <translation>Licht</translation>
        </message>
        <message>
            <source>/tray</source>
            <translation>/Schale</translation>
        </message>
        <message>
            <source>a tray</source>
            <translation>je Schale</translation>
        </message>
        <message>
            <source>days</source>
            <translation>Tage</translation>
        </message>
        <message>
            <source>g/tray</source>
            <translation>g/Schale</translation>
        </message>
        <message>
            <source>kWh/tray</source>
            <translation>kWh/Schale</translation>
        </message>
        <message>
            <source>kg/tray</source>
            <translation>kg/Schale</translation>
        </message>
        <message>
            <source>l/tray</source>
            <translation>l/Schale</translation>
        </message>
        <message>
            <source>marks</source>
            <translation>Noten</translation>
        </message>
        <message>
            <source>share</source>
            <translation>Anteil</translation>
        </message>
        <message>
            <source>times</source>
            <translation>Mal</translation>
        </message>
        <message>
            <source>weeks</source>
            <translation>Wochen</translation>
        </message>
        <message>
            <source>shelf {name}</source>
            <translation>Etage {name}</translation>
        </message>
        <message>
            <source>shelves {one} and {other}</source>
            <translation>Etagen {one} und {other}</translation>
        </message>
        <message>
            <source>shelves {one} and {other}, round {turn}</source>
            <translation>Etagen {one} und {other}, Runde {turn}</translation>
        </message>
        <message>
            <source>a guess, no trays of yours yet</source>
            <translation>eine Schätzung, noch ohne eigene Schalen</translation>
        </message>
        <message>
            <source>shelf {name}, part {part}</source>
            <translation>Etage {name}, Teil {part}</translation>
        </message>
        <message>
            <source>shelf {name}, round {turn}</source>
            <translation>Etage {name}, Runde {turn}</translation>
        </message>
        <message>
            <source>shelf {name}, part {part}, round {turn}</source>
            <translation>Etage {name}, Teil {part}, Runde {turn}</translation>
        </message>
        <message>
            <source>scoring on a farm needs one more library: install Evenstand with its extra 'farm'</source>
            <translation>Auswerten auf einem Rechnerverbund braucht eine weitere Bibliothek: Evenstand mit dem Zusatz „farm“ installieren</translation>
        </message>
        <message>
            <source>nobody answers at {address}: look whether the farm's scheduler runs there, and whether this machine reaches it</source>
            <translation>Unter {address} antwortet niemand: nachsehen, ob der Verteiler des Rechnerverbunds dort läuft und ob dieser Rechner ihn erreicht</translation>
        </message>
        <message>
            <source>the farm at {address} has no workers: start some there, then try again</source>
            <translation>Der Rechnerverbund unter {address} hat keine Arbeiter: dort welche starten, dann noch einmal versuchen</translation>
        </message>
        <message>
            <source>the worker {worker} has no Evenstand, or an older one: install this version there</source>
            <translation>Der Arbeiter {worker} hat kein Evenstand oder ein älteres: dort diese Version installieren</translation>
        </message>
        <message>
            <source>the worker {worker} scores by another version ({theirs}), and scores would be mixed: bring that machine or this one up to date</source>
            <translation>Der Arbeiter {worker} wertet mit einer anderen Version aus ({theirs}), und Wertungen würden vermischt: jenen oder diesen Rechner auf den neuesten Stand bringen</translation>
        </message>
        <message>
            <source>the farm at {address} does not answer any more; all photos stored so far are safe: run the same again when it is back, and it goes on from there</source>
            <translation>Der Rechnerverbund unter {address} antwortet nicht mehr; alle bisher gespeicherten Fotos sind sicher: dasselbe noch einmal starten, wenn er wieder da ist, dann geht es von dort weiter</translation>
        </message>
        <message>
            <source>the day before</source>
            <translation>Tag davor</translation>
        </message>
        <message>
            <source>Coverage of the growing bed {now} % on day {age}; earlier trays of {crop} had {middle} % at that age, and the day before it was behind them too.</source>
            <translation>Deckung der Substratfläche {now} % an Tag {age}; frühere Schalen mit {crop} hatten in diesem Alter {middle} %, und auch am Tag davor lag sie zurück.</translation>
        </message>
        <message>
            <source>Coverage {now} % on day {age}; earlier trays of {crop} had {middle} % at that age, and the day before it was behind them too.</source>
            <translation>Deckung {now} % an Tag {age}; frühere Schalen mit {crop} hatten in diesem Alter {middle} %, und auch am Tag davor lag sie zurück.</translation>
        </message>
    </context>
    <context>
        <name>KeySheet</name>
        <message>
            <source>On to the next; with Shift back</source>
            <translation>Weiter zum Nächsten; mit Umschalt zurück</translation>
        </message>
        <message>
            <source>Open, or do the main thing</source>
            <translation>Öffnen, oder das Wichtigste tun</translation>
        </message>
        <message>
            <source>Leave</source>
            <translation>Verlassen</translation>
        </message>
        <message>
            <source>Places</source>
            <translation>Bereiche</translation>
        </message>
        <message>
            <source>From everywhere</source>
            <translation>Von überall</translation>
        </message>
        <message>
            <source>Keys</source>
            <translation>Tasten</translation>
        </message>
    </context>
    <context>
        <name>KindDialog</name>
        <message>
            <source>Which kind of medium is {medium}?</source>
            <translation>Welche Art Substrat ist {medium}?</translation>
        </message>
        <message>
            <source>Kind of medium</source>
            <translation>Art des Substrats</translation>
        </message>
        <message>
            <source>Leave</source>
            <translation>Abbrechen</translation>
        </message>
        <message>
            <source>Keep</source>
            <translation>Speichern</translation>
        </message>
    </context>
    <context>
        <name>LayerBar</name>
        <message>
            <source>Photo</source>
            <translation>Foto</translation>
        </message>
        <message>
            <source>The photo as it was taken, instead of the view from straight above (V)</source>
            <translation>Das Foto, wie es aufgenommen wurde, statt der Sicht von oben (V)</translation>
        </message>
        <message>
            <source>Canopy</source>
            <translation>Bestand</translation>
        </message>
        <message>
            <source>Outline of the canopy</source>
            <translation>Umriss des Bestands</translation>
        </message>
        <message>
            <source>Gaps</source>
            <translation>Lücken</translation>
        </message>
        <message>
            <source>Bare pieces of at least 4 cm², hatched</source>
            <translation>Kahle Stücke von mindestens 4 cm², schraffiert</translation>
        </message>
        <message>
            <source>Cells</source>
            <translation>Zellen</translation>
        </message>
        <message>
            <source>Coverage of each cell in %</source>
            <translation>Deckung jeder Zelle in %</translation>
        </message>
        <message>
            <source>Suspects</source>
            <translation>Verdacht</translation>
        </message>
        <message>
            <source>Rings around what may be mold</source>
            <translation>Ringe um das, was Schimmel sein kann</translation>
        </message>
        <message>
            <source>{what} ({key}; Space: all)</source>
            <translation>{what} ({key}; Leertaste: alle)</translation>
        </message>
    </context>
    <context>
        <name>Layers</name>
        <message>
            <source>{number} {word}</source>
            <translation>{number} {word}</translation>
        </message>
    </context>
    <context>
        <name>Leaving</name>
        <message>
            <source>{lost} Open another book once more to give it up.</source>
            <translation>{lost} Noch einmal ein anderes Buch öffnen, um es aufzugeben.</translation>
        </message>
        <message>
            <source>{lost} Close the window again to give it up.</source>
            <translation>{lost} Das Fenster noch einmal schließen, um es aufzugeben.</translation>
        </message>
    </context>
    <context>
        <name>LimitsDialog</name>
        <message>
            <source>What a medium must keep</source>
            <translation>Was ein Substrat einhalten muss</translation>
        </message>
        <message>
            <source>Type a limit where one matters to you: the table then says which media keep all of them. A field left empty asks nothing.</source>
            <translation>Eine Grenze eintragen, wo sie wichtig ist: Die Tabelle sagt dann, welche Substrate alle einhalten. Ein leeres Feld verlangt nichts.</translation>
        </message>
        <message>
            <source>at least</source>
            <translation>mindestens</translation>
        </message>
        <message>
            <source>at most</source>
            <translation>höchstens</translation>
        </message>
        <message>
            <source>Leave</source>
            <translation>Abbrechen</translation>
        </message>
        <message>
            <source>Keep</source>
            <translation>Speichern</translation>
        </message>
        <message>
            <source>{row}: type a number, or leave it empty.</source>
            <translation>{row}: eine Zahl eingeben, oder leer lassen.</translation>
        </message>
        <message>
            <source>{row}: the least is above the most.</source>
            <translation>{row}: das Mindeste liegt über dem Höchsten.</translation>
        </message>
    </context>
    <context>
        <name>LogAssistant</name>
        <message>
            <source>Files of readings (*.csv *.txt *.tsv)</source>
            <translation>Dateien mit Messwerten (*.csv *.txt *.tsv)</translation>
        </message>
        <message>
            <source>Bring in {file}</source>
            <translation>{file} einlesen</translation>
        </message>
        <message>
            <source>Reading {file}.</source>
            <translation>{file} wird gelesen.</translation>
        </message>
        <message>
            <source>Line {line}: {why} ({text})</source>
            <translation>Zeile {line}: {why} ({text})</translation>
        </message>
        <message>
            <source>Rows that are not kept: {n}</source>
            <translation>Zeilen, die nicht gespeichert werden: {n}</translation>
        </message>
        <message>
            <source>Keeping the readings.</source>
            <translation>Die Messwerte werden gespeichert.</translation>
        </message>
        <message>
            <source>Keeping the readings: {count}.</source>
            <translation>Messwerte werden gespeichert: {count}.</translation>
        </message>
        <message>
            <source>Reading: {count}.</source>
            <translation>Wird gelesen: {count}.</translation>
        </message>
        <message>
            <source>Stopped; nothing of the file was kept.</source>
            <translation>Angehalten; aus der Datei wurde nichts gespeichert.</translation>
        </message>
        <message>
            <source>{file} cannot be opened, or is too large.</source>
            <translation>{file} lässt sich nicht öffnen oder ist zu groß.</translation>
        </message>
        <message>
            <source>This did not work; nothing was kept.</source>
            <translation>Das ging nicht; nichts wurde gespeichert.</translation>
        </message>
        <message>
            <source>Stopping; nothing of the file is kept.</source>
            <translation>Wird angehalten; aus der Datei wird nichts gespeichert.</translation>
        </message>
    </context>
    <context>
        <name>LogForm</name>
        <message>
            <source>point, 20.5</source>
            <translation>Punkt, 20.5</translation>
        </message>
        <message>
            <source>comma, 20,5</source>
            <translation>Komma, 20,5</translation>
        </message>
        <message>
            <source>not known yet</source>
            <translation>noch nicht bekannt</translation>
        </message>
        <message>
            <source>the rack's own</source>
            <translation>die des Regals</translation>
        </message>
        <message>
            <source>Rows that are not kept, and why</source>
            <translation>Zeilen, die nicht gespeichert werden, und warum</translation>
        </message>
        <message>
            <source>as the columns say</source>
            <translation>wie die Spalten sagen</translation>
        </message>
        <message>
            <source>shelf {name}</source>
            <translation>Etage {name}</translation>
        </message>
        <message>
            <source>tray {code}</source>
            <translation>Schale {code}</translation>
        </message>
        <message>
            <source>Between columns</source>
            <translation>Zwischen Spalten</translation>
        </message>
        <message>
            <source>Decimals</source>
            <translation>Dezimalzeichen</translation>
        </message>
        <message>
            <source>Dates</source>
            <translation>Datum</translation>
        </message>
        <message>
            <source>Time zone of its clock</source>
            <translation>Zeitzone der Uhr</translation>
        </message>
        <message>
            <source>Readings are of</source>
            <translation>Messwerte von</translation>
        </message>
        <message>
            <source>Cancel</source>
            <translation>Abbrechen</translation>
        </message>
        <message>
            <source>Leave</source>
            <translation>Abbrechen</translation>
        </message>
    </context>
    <context>
        <name>LogPreview</name>
        <message>
            <source>First rows of the file, and what each column is</source>
            <translation>Erste Zeilen der Datei und was jede Spalte ist</translation>
        </message>
        <message>
            <source>column {n}</source>
            <translation>Spalte {n}</translation>
        </message>
        <message>
            <source>Will be stored</source>
            <translation>Wird gespeichert</translation>
        </message>
        <message>
            <source>What the column {heading} is</source>
            <translation>Was die Spalte {heading} ist</translation>
        </message>
    </context>
    <context>
        <name>LogView</name>
        <message>
            <source>comma</source>
            <translation>Komma</translation>
        </message>
        <message>
            <source>semicolon</source>
            <translation>Semikolon</translation>
        </message>
        <message>
            <source>tab</source>
            <translation>Tabulator</translation>
        </message>
        <message>
            <source>bar |</source>
            <translation>Strich |</translation>
        </message>
        <message>
            <source>a decimal comma</source>
            <translation>Dezimalkomma</translation>
        </message>
        <message>
            <source>a decimal point</source>
            <translation>Dezimalpunkt</translation>
        </message>
        <message>
            <source>{columns} columns with a {delimiter} between them, {decimal}, dates as {order}; the first row is line {line}.</source>
            <translation>{columns} Spalten mit {delimiter} dazwischen, {decimal}, Datum als {order}; die erste Zeile ist Zeile {line}.</translation>
        </message>
        <message>
            <source>This very file is in the book already: there is nothing to keep.</source>
            <translation>Genau diese Datei steht schon im Buch: Es gibt nichts zu speichern.</translation>
        </message>
        <message>
            <source>Answer what is asked above, then the readings can be kept.</source>
            <translation>Erst beantworten, was oben gefragt ist, dann können die Messwerte gespeichert werden.</translation>
        </message>
        <message>
            <source>Readings that will be kept: {count}.</source>
            <translation>Messwerte, die gespeichert werden: {count}.</translation>
        </message>
        <message>
            <source>Readings that will be kept: {count}. Known already: {known}.</source>
            <translation>Messwerte, die gespeichert werden: {count}. Schon bekannt: {known}.</translation>
        </message>
        <message>
            <source>{code} until {day}</source>
            <translation>{code} bis {day}</translation>
        </message>
        <message>
            <source>Of trays that have ended: {count} ({trays}).</source>
            <translation>Von beendeten Schalen: {count} ({trays}).</translation>
        </message>
    </context>
    <context>
        <name>Look</name>
        <message>
            <source>First: {what}</source>
            <translation>Zuerst: {what}</translation>
        </message>
        <message>
            <source>Click or Enter: go to Intake</source>
            <translation>Klick oder Eingabe: zum Eingang</translation>
        </message>
        <message>
            <source>Click or Enter: open the tray sheet</source>
            <translation>Klick oder Eingabe: Schalenblatt öffnen</translation>
        </message>
        <message>
            <source>Since {day}</source>
            <translation>Seit {day}</translation>
        </message>
    </context>
    <context>
        <name>LookDetail</name>
        <message>
            <source>Mat or mix?</source>
            <translation>Matte oder lose?</translation>
        </message>
        <message>
            <source>What to do first depends on which kind of medium it is: say it</source>
            <translation>Was zuerst zu tun ist, hängt von der Art des Substrats ab: angeben</translation>
        </message>
        <message>
            <source>Until tomorrow</source>
            <translation>Bis morgen</translation>
        </message>
        <message>
            <source>Put this line away for today (T in the list)</source>
            <translation>Diese Zeile für heute weglegen (T in der Liste)</translation>
        </message>
        <message>
            <source>Seen</source>
            <translation>Gesehen</translation>
        </message>
        <message>
            <source>Put this line away until it gets worse (S in the list)</source>
            <translation>Diese Zeile weglegen, bis es schlimmer wird (S in der Liste)</translation>
        </message>
        <message>
            <source>What went away</source>
            <translation>Was verschwand</translation>
        </message>
        <message>
            <source>What stood here before, and why it went away</source>
            <translation>Was vorher hier stand, und warum es verschwand</translation>
        </message>
        <message>
            <source>Also: {signs}.</source>
            <translation>Außerdem: {signs}.</translation>
        </message>
        <message>
            <source>Also: {sign}. {sentence}</source>
            <translation>Außerdem: {sign}. {sentence}</translation>
        </message>
    </context>
    <context>
        <name>LookHistory</name>
        <message>
            <source>What stood on the look list</source>
            <translation>Was auf der Blickliste stand</translation>
        </message>
        <message>
            <source>Nothing has stood on the look list of this book yet.</source>
            <translation>Auf der Blickliste dieses Buchs stand noch nichts.</translation>
        </message>
        <message>
            <source>Nothing has gone away from the look list yet. Still there: {still}.</source>
            <translation>Von der Blickliste ist noch nichts verschwunden. Noch da: {still}.</translation>
        </message>
        <message>
            <source>Went away: {gone}. Still there, below: {still}.</source>
            <translation>Verschwunden: {gone}. Noch da, darunter: {still}.</translation>
        </message>
        <message>
            <source>Tray</source>
            <translation>Schale</translation>
        </message>
        <message>
            <source>What</source>
            <translation>Was</translation>
        </message>
        <message>
            <source>From</source>
            <translation>Von</translation>
        </message>
        <message>
            <source>To</source>
            <translation>Bis</translation>
        </message>
        <message>
            <source>The numbers</source>
            <translation>Die Zahlen</translation>
        </message>
        <message>
            <source>Why it went away</source>
            <translation>Warum es verschwand</translation>
        </message>
        <message>
            <source>still there</source>
            <translation>noch da</translation>
        </message>
        <message>
            <source>You said: seen</source>
            <translation>Gesagt: gesehen</translation>
        </message>
        <message>
            <source>You said: tomorrow</source>
            <translation>Gesagt: morgen</translation>
        </message>
    </context>
    <context>
        <name>LookKind</name>
        <message>
            <source>mold</source>
            <translation>Schimmel</translation>
        </message>
        <message>
            <source>possible mold</source>
            <translation>möglicher Schimmel</translation>
        </message>
        <message>
            <source>canopy vanishes</source>
            <translation>Bestand verschwindet</translation>
        </message>
        <message>
            <source>drying out</source>
            <translation>trocknet aus</translation>
        </message>
        <message>
            <source>warm and wet under the stack</source>
            <translation>warm und nass unter dem Stapel</translation>
        </message>
        <message>
            <source>thin edge</source>
            <translation>dünner Rand</translation>
        </message>
        <message>
            <source>comes up patchy</source>
            <translation>läuft fleckig auf</translation>
        </message>
        <message>
            <source>gaps stay</source>
            <translation>Lücken bleiben</translation>
        </message>
        <message>
            <source>late to come up</source>
            <translation>läuft spät auf</translation>
        </message>
        <message>
            <source>lags behind</source>
            <translation>bleibt zurück</translation>
        </message>
        <message>
            <source>uneven</source>
            <translation>ungleichmäßig</translation>
        </message>
        <message>
            <source>turns pale</source>
            <translation>wird blass</translation>
        </message>
        <message>
            <source>photo to confirm</source>
            <translation>Foto zu bestätigen</translation>
        </message>
        <message>
            <source>no photo today</source>
            <translation>heute kein Foto</translation>
        </message>
        <message>
            <source>photo not used</source>
            <translation>Foto nicht verwendet</translation>
        </message>
        <message>
            <source>photo in doubt</source>
            <translation>Foto zweifelhaft</translation>
        </message>
        <message>
            <source>ready to cut</source>
            <translation>schnittreif</translation>
        </message>
    </context>
    <context>
        <name>LookKindShort</name>
        <message>
            <source>mold?</source>
            <translation>Schimmel?</translation>
        </message>
        <message>
            <source>vanishes</source>
            <translation>verschwindet</translation>
        </message>
        <message>
            <source>warm and wet</source>
            <translation>warm und nass</translation>
        </message>
        <message>
            <source>patchy</source>
            <translation>fleckig</translation>
        </message>
        <message>
            <source>confirm photo</source>
            <translation>Foto bestätigen</translation>
        </message>
        <message>
            <source>photo unused</source>
            <translation>Foto ungenutzt</translation>
        </message>
    </context>
    <context>
        <name>LookPanel</name>
        <message>
            <source>What needs a look</source>
            <translation>Was einen Blick braucht</translation>
        </message>
        <message>
            <source>What went away</source>
            <translation>Was verschwand</translation>
        </message>
        <message>
            <source>What stood here before, and why it went away</source>
            <translation>Was vorher hier stand, und warum es verschwand</translation>
        </message>
        <message>
            <source>most urgent first</source>
            <translation>Dringendstes zuerst</translation>
        </message>
        <message>
            <source>Show all {count}</source>
            <translation>Alle {count} zeigen</translation>
        </message>
        <message>
            <source>Show fewer</source>
            <translation>Weniger zeigen</translation>
        </message>
        <message>
            <source>1 tray needs a look</source>
            <translation>1 Schale braucht einen Blick</translation>
        </message>
        <message>
            <source>{count} trays need a look</source>
            <translation>{count} Schalen brauchen einen Blick</translation>
        </message>
        <message>
            <source>Nothing needs a look</source>
            <translation>Nichts braucht einen Blick</translation>
        </message>
        <message>
            <source>Photos are being scored; what needs a look comes up here as soon as it is known.</source>
            <translation>Fotos werden ausgewertet; was einen Blick braucht, erscheint hier, sobald es bekannt ist.</translation>
        </message>
        <message>
            <source>Photograph your trays from above and bring the photos in. Trays that lag, grow unevenly or may carry mold are then named here, with the numbers behind it and what to do first.</source>
            <translation>Die Schalen von oben fotografieren und die Fotos einlesen. Schalen, die zurückbleiben, ungleichmäßig wachsen oder Schimmel haben können, werden dann hier genannt, mit den Zahlen dahinter und was zuerst zu tun ist.</translation>
        </message>
        <message>
            <source>No tray lags, has lasting gaps or shows a patch that may be mold in its newest photo. Still walk along the rack: no flag is no proof that a tray is safe.</source>
            <translation>Keine Schale bleibt zurück, hat bleibende Lücken oder zeigt auf ihrem neuesten Foto eine Stelle, die Schimmel sein kann. Trotzdem am Regal entlanggehen: kein Hinweis ist kein Beweis, dass eine Schale unbedenklich ist.</translation>
        </message>
    </context>
    <context>
        <name>LostPictures</name>
        <message>
            <source>Making pictures again</source>
            <translation>Bilder werden neu gemacht</translation>
        </message>
    </context>
    <context>
        <name>MarginAsk</name>
        <message>
            <source>Margin</source>
            <translation>Spielraum</translation>
        </message>
        <message>
            <source>How much less would you still call as good?</source>
            <translation>Wie viel weniger soll noch gleich gut heißen?</translation>
        </message>
        <message>
            <source>The margin of the canopy score of {trial}, for all its crops. It is kept with its date, and the verdict says whether it was set before sowing, before the photos that are compared, or after them. What is set after looking at the answer proves nothing. Yield and score by eye keep the usual margin unless the trial is planned.</source>
            <translation>Der Spielraum der Bestandswertung von {trial}, für alle Kulturen. Er wird mit Datum festgehalten, und das Urteil sagt, ob das vor der Aussaat geschah, vor den verglichenen Fotos oder danach. Was nach einem Blick auf die Antwort festgelegt wird, beweist nichts. Ertrag und Note nach Augenmaß behalten den üblichen Spielraum, solange der Versuch nicht geplant ist.</translation>
        </message>
        <message>
            <source>points</source>
            <translation>Punkte</translation>
        </message>
        <message>
            <source>&amp;Margin</source>
            <translation>&amp;Spielraum</translation>
        </message>
        <message>
            <source>Leave</source>
            <translation>Abbrechen</translation>
        </message>
        <message>
            <source>Keep</source>
            <translation>Speichern</translation>
        </message>
    </context>
    <context>
        <name>MaterialDesk</name>
        <message>
            <source>Copying photos of the heap</source>
            <translation>Fotos vom Haufen werden kopiert</translation>
        </message>
    </context>
    <context>
        <name>MaterialDialogs</name>
        <message>
            <source>This test was deleted or taken back meanwhile.</source>
            <translation>Diese Probe wurde inzwischen gelöscht oder rückgängig gemacht.</translation>
        </message>
    </context>
    <context>
        <name>MaterialHead</name>
        <message>
            <source>Test</source>
            <translation>Prüfen</translation>
        </message>
        <message>
            <source>Numbers...</source>
            <translation>Zahlen...</translation>
        </message>
        <message>
            <source>Feed...</source>
            <translation>Düngung...</translation>
        </message>
        <message>
            <source>Call it trusted</source>
            <translation>Als bewährt benennen</translation>
        </message>
        <message>
            <source>Limits...</source>
            <translation>Grenzen...</translation>
        </message>
        <message>
            <source>What a medium must keep</source>
            <translation>Was ein Substrat einhalten muss</translation>
        </message>
        <message>
            <source>Trays a week</source>
            <translation>Schalen je Woche</translation>
        </message>
        <message>
            <source>trays a week</source>
            <translation>Schalen je Woche</translation>
        </message>
        <message>
            <source>Another medium</source>
            <translation>Weiteres Substrat</translation>
        </message>
        <message>
            <source>Wetting test...</source>
            <translation>Benetzungsprobe...</translation>
        </message>
        <message>
            <source>Cooling test...</source>
            <translation>Abkühlprobe...</translation>
        </message>
        <message>
            <source>Break-down...</source>
            <translation>Abbau...</translation>
        </message>
        <message>
            <source>Test {medium}</source>
            <translation>{medium} prüfen</translation>
        </message>
        <message>
            <source>Numbers about {medium}</source>
            <translation>Zahlen zu {medium}</translation>
        </message>
        <message>
            <source>Feed of {medium}</source>
            <translation>Düngung von {medium}</translation>
        </message>
        <message>
            <source>Hold the others against {medium}: here, and in trials without a plan</source>
            <translation>Die anderen an {medium} messen: hier und in Versuchen ohne Plan</translation>
        </message>
        <message>
            <source>{medium} is the trusted one: the others are held against it</source>
            <translation>{medium} ist das bewährte: die anderen werden daran gemessen</translation>
        </message>
    </context>
    <context>
        <name>MaterialPanel</name>
        <message>
            <source>The chosen cell</source>
            <translation>Die gewählte Zelle</translation>
        </message>
        <message>
            <source>Plan a trial with and without feed</source>
            <translation>Versuch mit und ohne Düngung planen</translation>
        </message>
        <message>
            <source>Type it in...</source>
            <translation>Eingeben...</translation>
        </message>
        <message>
            <source>Look at its numbers...</source>
            <translation>Zahlen ansehen...</translation>
        </message>
        <message>
            <source>Wetting test...</source>
            <translation>Benetzungsprobe...</translation>
        </message>
        <message>
            <source>Cooling test...</source>
            <translation>Abkühlprobe...</translation>
        </message>
        <message>
            <source>Break-down...</source>
            <translation>Abbau...</translation>
        </message>
        <message>
            <source>Say what it is fed...</source>
            <translation>Düngung angeben...</translation>
        </message>
        <message>
            <source>Say which kind it is...</source>
            <translation>Art angeben...</translation>
        </message>
        <message>
            <source>Go to a tray sheet</source>
            <translation>Zu einem Schalenblatt</translation>
        </message>
        <message>
            <source>Bring in a logger's file</source>
            <translation>Datei eines Loggers einlesen</translation>
        </message>
    </context>
    <context>
        <name>MaterialTable</name>
        <message>
            <source>Media side by side</source>
            <translation>Substrate nebeneinander</translation>
        </message>
        <message>
            <source>{medium}
trusted</source>
            <translation>{medium}
bewährt</translation>
        </message>
    </context>
    <context>
        <name>Materials</name>
        <message>
            <source>Go to the Bench</source>
            <translation>Zum Regal</translation>
        </message>
        <message>
            <source>No media yet</source>
            <translation>Noch keine Substrate</translation>
        </message>
        <message>
            <source>Add a tray on the Bench: its medium then stands here, with all that a photograph cannot see. A medium that is only to be tested, without seed, is named below.</source>
            <translation>Im Regal eine Schale hinzufügen: ihr Substrat steht dann hier, mit allem, was ein Foto nicht sehen kann. Ein Substrat, das nur ohne Saatgut geprüft werden soll, unten nennen.</translation>
        </message>
        <message>
            <source>Name of a medium</source>
            <translation>Name eines Substrats</translation>
        </message>
        <message>
            <source>CO2e is a screening estimate: no certified assessment. There is no grand total.</source>
            <translation>CO2e ist eine grobe Schätzung: keine geprüfte Bilanz. Eine Gesamtnote gibt es nicht.</translation>
        </message>
        <message>
            <source>exact</source>
            <translation>genau</translation>
        </message>
        <message>
            <source>{low} to {high}</source>
            <translation>{low} bis {high}</translation>
        </message>
        <message>
            <source>1 tray</source>
            <translation>1 Schale</translation>
        </message>
        <message>
            <source>{n} trays</source>
            <translation>{n} Schalen</translation>
        </message>
        <message>
            <source>1 test</source>
            <translation>1 Probe</translation>
        </message>
        <message>
            <source>{n} tests</source>
            <translation>{n} Proben</translation>
        </message>
        <message>
            <source>1 weighing</source>
            <translation>1 Wägung</translation>
        </message>
        <message>
            <source>{n} weighings</source>
            <translation>{n} Wägungen</translation>
        </message>
        <message>
            <source>1 night</source>
            <translation>1 Nacht</translation>
        </message>
        <message>
            <source>{n} nights</source>
            <translation>{n} Nächte</translation>
        </message>
        <message>
            <source>1 input</source>
            <translation>1 Eingabe</translation>
        </message>
        <message>
            <source>{n} inputs</source>
            <translation>{n} Eingaben</translation>
        </message>
        <message>
            <source>measured here</source>
            <translation>hier gemessen</translation>
        </message>
        <message>
            <source>typed in</source>
            <translation>eingegeben</translation>
        </message>
        <message>
            <source>default from literature</source>
            <translation>Literatur</translation>
        </message>
        <message>
            <source>guess</source>
            <translation>Schätzung</translation>
        </message>
        <message>
            <source>keeps all limits</source>
            <translation>hält alle Grenzen ein</translation>
        </message>
        <message>
            <source>limits: cannot be told</source>
            <translation>Grenzen: nicht zu sagen</translation>
        </message>
        <message>
            <source>misses a limit</source>
            <translation>verfehlt eine Grenze</translation>
        </message>
        <message>
            <source>limits: not known yet</source>
            <translation>Grenzen: noch nicht bekannt</translation>
        </message>
        <message>
            <source>{difference} {unit} against {trusted}; no interval can be had.</source>
            <translation>{difference} {unit} gegenüber {trusted}; ein Intervall ist nicht zu haben.</translation>
        </message>
        <message>
            <source>{difference} {unit} against {trusted}, interval {low} to {high}.</source>
            <translation>{difference} {unit} gegenüber {trusted}, Intervall {low} bis {high}.</translation>
        </message>
        <message>
            <source>Which one has more cannot be told.</source>
            <translation>Welches mehr hat, ist nicht zu sagen.</translation>
        </message>
        <message>
            <source>no interval can be had</source>
            <translation>ein Intervall gibt es nicht</translation>
        </message>
        <message>
            <source>{difference}, {low} to {high}</source>
            <translation>{difference}, {low} bis {high}</translation>
        </message>
        <message>
            <source>marks</source>
            <translation>Noten</translation>
        </message>
        <message>
            <source>points</source>
            <translation>Punkte</translation>
        </message>
        <message>
            <source>Sources:</source>
            <translation>Quellen:</translation>
        </message>
        <message>
            <source>dry</source>
            <translation>trocken</translation>
        </message>
        <message>
            <source>soaked</source>
            <translation>eingeweicht</translation>
        </message>
        <message>
            <source>drained</source>
            <translation>abgetropft</translation>
        </message>
        <message>
            <source>after 6 h</source>
            <translation>nach 6 h</translation>
        </message>
        <message>
            <source>after 12 h</source>
            <translation>nach 12 h</translation>
        </message>
        <message>
            <source>after 24 h</source>
            <translation>nach 24 h</translation>
        </message>
        <message>
            <source>after 48 h</source>
            <translation>nach 48 h</translation>
        </message>
        <message>
            <source>rewetted</source>
            <translation>wieder benetzt</translation>
        </message>
        <message>
            <source>air of the shelf</source>
            <translation>Luft der Etage</translation>
        </message>
        <message>
            <source>over the heat mat</source>
            <translation>über der Heizmatte</translation>
        </message>
        <message>
            <source>heat mat off</source>
            <translation>Heizmatte aus</translation>
        </message>
        <message>
            <source>cooling</source>
            <translation>kühlt ab</translation>
        </message>
        <message>
            <source>laid out</source>
            <translation>ausgelegt</translation>
        </message>
        <message>
            <source>what is left</source>
            <translation>was übrig ist</translation>
        </message>
        <message>
            <source>wetting test</source>
            <translation>Benetzungsprobe</translation>
        </message>
        <message>
            <source>cooling test</source>
            <translation>Abkühlprobe</translation>
        </message>
        <message>
            <source>break-down</source>
            <translation>Abbau</translation>
        </message>
        <message>
            <source>At {at}: {medium}, {test}</source>
            <translation>Um {at}: {medium}, {test}</translation>
        </message>
        <message>
            <source>Now: {medium}, {test}</source>
            <translation>Jetzt: {medium}, {test}</translation>
        </message>
        <message>
            <source>In {n} days: {medium}, {test}</source>
            <translation>In {n} Tagen: {medium}, {test}</translation>
        </message>
    </context>
    <context>
        <name>MeasureKind</name>
        <message>
            <source>canopy score</source>
            <translation>Bestandswertung</translation>
        </message>
        <message>
            <source>yield</source>
            <translation>Ertrag</translation>
        </message>
        <message>
            <source>eye score</source>
            <translation>Note nach Augenmaß</translation>
        </message>
    </context>
    <context>
        <name>MediaChart</name>
        <message>
            <source>mean coverage of the growing bed, %</source>
            <translation>mittlere Deckung der Substratfläche, %</translation>
        </message>
        <message>
            <source>mean coverage of the inner area, %</source>
            <translation>mittlere Deckung der Innenfläche, %</translation>
        </message>
        <message>
            <source>days since sowing</source>
            <translation>Tage seit der Aussaat</translation>
        </message>
        <message>
            <source>days since sowing; day {day} is read</source>
            <translation>Tage seit der Aussaat; Tag {day} wird abgelesen</translation>
        </message>
        <message>
            <source>Growth by medium</source>
            <translation>Wachstum nach Substrat</translation>
        </message>
        <message>
            <source>{medium}: {days}</source>
            <translation>{medium}: {days}</translation>
        </message>
        <message>
            <source>day {day} {coverage} % ({trays} trays)</source>
            <translation>Tag {day} {coverage} % ({trays} Schalen)</translation>
        </message>
    </context>
    <context>
        <name>MediumRow</name>
        <message>
            <source>{medium} is the one I trust</source>
            <translation>{medium} ist das bewährte</translation>
        </message>
        <message>
            <source>Kind of {medium}</source>
            <translation>Art von {medium}</translation>
        </message>
    </context>
    <context>
        <name>MendDesk</name>
        <message>
            <source>Leave as it was</source>
            <translation>Verwerfen</translation>
        </message>
        <message>
            <source>Forget the strokes; the canopy stays as it is (Esc). Ctrl+Z brings them back</source>
            <translation>Die Striche verwerfen; der Bestand bleibt, wie er ist (Esc). Strg+Z holt sie zurück</translation>
        </message>
        <message>
            <source>Keep this canopy</source>
            <translation>Speichern</translation>
        </message>
        <message>
            <source>Measure the tray again with this canopy (Ctrl+Enter); Ctrl+Z takes it back</source>
            <translation>Schale mit diesem Bestand neu messen (Strg+Eingabe); Strg+Z nimmt es zurück</translation>
        </message>
        <message>
            <source>Measuring the tray again ...</source>
            <translation>Die Schale wird neu gemessen ...</translation>
        </message>
        <message>
            <source>Coverage {before:.1f} % before, {now:.1f} % with your strokes</source>
            <translation>Deckung vorher {before:.1f} %, mit diesen Strichen {now:.1f} %</translation>
        </message>
        <message>
            <source>Coverage {before:.1f} %. Striped is what counts as bare.</source>
            <translation>Deckung {before:.1f} %. Gestreift: zählt als kahl.</translation>
        </message>
    </context>
    <context>
        <name>MendPage</name>
        <message>
            <source>Score this book's photos again</source>
            <translation>Fotos dieses Buchs neu auswerten</translation>
        </message>
        <message>
            <source>By the present version of the program, in the background; what you have said stays</source>
            <translation>Mit der jetzigen Version des Programms, im Hintergrund; eigene Angaben bleiben</translation>
        </message>
        <message>
            <source>This day has no canopy to mend: its photo was not used.</source>
            <translation>Dieser Tag hat keinen Bestand zum Nachbessern: sein Foto wurde nicht verwendet.</translation>
        </message>
        <message>
            <source>This photo was scored by an older version of the program. A mended canopy is measured by the present one, and the two are never mixed: let the photos be scored again first.</source>
            <translation>Dieses Foto wurde mit einer älteren Version des Programms ausgewertet. Ein nachgebesserter Bestand wird mit der jetzigen gemessen, und beide werden nie vermischt: erst die Fotos neu auswerten lassen.</translation>
        </message>
        <message>
            <source>Canopy of {code} kept: coverage {coverage:.0f} %, mended by hand.</source>
            <translation>Bestand von {code} gespeichert: Deckung {coverage:.0f} %, von Hand nachgebessert.</translation>
        </message>
    </context>
    <context>
        <name>Mishap</name>
        <message>
            <source>Something in the program went wrong. Your book is as it was after your last step; you may go on. What happened is written down in {file}.</source>
            <translation>Im Programm ist etwas schiefgegangen. Das Buch ist auf dem Stand des letzten Schritts; weitermachen ist möglich. Was geschehen ist, steht in {file}.</translation>
        </message>
    </context>
    <context>
        <name>MoreTrays</name>
        <message>
            <source>Conditions for more trays</source>
            <translation>Bedingungen für weitere Schalen</translation>
        </message>
    </context>
    <context>
        <name>NameField</name>
        <message>
            <source>Add</source>
            <translation>Hinzufügen</translation>
        </message>
        <message>
            <source>Add: {what}</source>
            <translation>Hinzufügen: {what}</translation>
        </message>
    </context>
    <context>
        <name>NewBook</name>
        <message>
            <source>Start my own book</source>
            <translation>Eigenes Buch beginnen</translation>
        </message>
        <message>
            <source>A book is one folder that keeps your trays, your photos as they were taken and all numbers. Nothing leaves this computer.</source>
            <translation>Ein Buch ist ein Ordner, der die Schalen, die Fotos, wie sie aufgenommen wurden, und alle Zahlen aufbewahrt. Nichts verlässt diesen Rechner.</translation>
        </message>
        <message>
            <source>Start this book</source>
            <translation>Dieses Buch beginnen</translation>
        </message>
        <message>
            <source>My trays</source>
            <translation>Meine Schalen</translation>
        </message>
    </context>
    <context>
        <name>NewTrayDialog</name>
        <message>
            <source>Add trays</source>
            <translation>Schalen hinzufügen</translation>
        </message>
        <message>
            <source>Done</source>
            <translation>Fertig</translation>
        </message>
        <message>
            <source>&amp;Like</source>
            <translation>&amp;Wie</translation>
        </message>
        <message>
            <source>&amp;Code on the tray</source>
            <translation>&amp;Code auf der Schale</translation>
        </message>
        <message>
            <source>&amp;How many</source>
            <translation>An&amp;zahl</translation>
        </message>
        <message>
            <source>C&amp;rop</source>
            <translation>&amp;Kultur</translation>
        </message>
        <message>
            <source>&amp;Medium</source>
            <translation>&amp;Substrat</translation>
        </message>
        <message>
            <source>Kind of medium</source>
            <translation>Art des Substrats</translation>
        </message>
        <message>
            <source>&amp;Sown on</source>
            <translation>&amp;Gesät am</translation>
        </message>
        <message>
            <source>Sh&amp;elf</source>
            <translation>&amp;Etage</translation>
        </message>
        <message>
            <source>&amp;Tag number</source>
            <translation>Schil&amp;dnummer</translation>
        </message>
        <message>
            <source>Tray type</source>
            <translation>Schalentyp</translation>
        </message>
        <message>
            <source>Taken over</source>
            <translation>Übernommen</translation>
        </message>
        <message>
            <source>the last one of its kind</source>
            <translation>die letzte ihrer Art</translation>
        </message>
        <message>
            <source>{code}: {crop} on {medium}</source>
            <translation>{code}: {crop} auf {medium}</translation>
        </message>
        <message>
            <source>How many trays</source>
            <translation>Wie viele Schalen</translation>
        </message>
        <message>
            <source>as the one before</source>
            <translation>wie die vorige</translation>
        </message>
        <message>
            <source>10 to 586; leave empty without a tag</source>
            <translation>10 bis 586; ohne Schild leer lassen</translation>
        </message>
        <message>
            <source>Add this tray</source>
            <translation>Diese Schale hinzufügen</translation>
        </message>
        <message>
            <source>Add {count} trays</source>
            <translation>{count} Schalen hinzufügen</translation>
        </message>
        <message>
            <source>Name the crop and the medium: the last of its kind is copied.</source>
            <translation>Kultur und Substrat nennen: die letzte ihrer Art wird kopiert.</translation>
        </message>
        <message>
            <source>Nothing: no tray of this kind has been noted yet.</source>
            <translation>Nichts: von dieser Art ist noch keine Schale notiert.</translation>
        </message>
        <message>
            <source>Nothing: how the one before it grows has not been noted.</source>
            <translation>Nichts: wie die vorige wächst, ist nicht notiert.</translation>
        </message>
        <message>
            <source>{codes} is on the rack.</source>
            <translation>{codes} steht im Regal.</translation>
        </message>
        <message>
            <source>{codes} are on the rack.</source>
            <translation>{codes} stehen im Regal.</translation>
        </message>
        <message>
            <source>On the rack: {codes}, grown as {model}; what differs is told on the tray sheet.</source>
            <translation>Im Regal: {codes}, angebaut wie {model}; was anders ist, wird auf dem Schalenblatt gesagt.</translation>
        </message>
        <message>
            <source>On the rack: {codes}, grown as the last one of its kind; what differs is told on the tray sheet.</source>
            <translation>Im Regal: {codes}, angebaut wie die letzte ihrer Art; was anders ist, wird auf dem Schalenblatt gesagt.</translation>
        </message>
        <message>
            <source>Give the tray a code, as it stands on the tray.</source>
            <translation>Der Schale einen Code geben, wie er auf ihr steht.</translation>
        </message>
        <message>
            <source>Say which crop grows in it.</source>
            <translation>Angeben, welche Kultur darin wächst.</translation>
        </message>
        <message>
            <source>Say on which medium it grows.</source>
            <translation>Angeben, auf welchem Substrat sie wächst.</translation>
        </message>
        <message>
            <source>A tag is a whole number from 10 to 586; leave the field empty without a tag.</source>
            <translation>Ein Schild ist eine ganze Zahl von 10 bis 586; ohne Schild das Feld leer lassen.</translation>
        </message>
    </context>
    <context>
        <name>NoNumber</name>
        <message>
            <source>no usable photo of the day that is read</source>
            <translation>kein brauchbares Foto von dem Tag, der abgelesen wird</translation>
        </message>
        <message>
            <source>its day is still to come</source>
            <translation>ihr Tag kommt noch</translation>
        </message>
        <message>
            <source>scored by another version of the method only</source>
            <translation>nur mit einer anderen Version der Methode ausgewertet</translation>
        </message>
        <message>
            <source>its canopy could not be told</source>
            <translation>ihr Bestand war nicht zu erkennen</translation>
        </message>
        <message>
            <source>lost to mold, and apart as decided beforehand</source>
            <translation>durch Schimmel verloren und gesondert gezählt, wie vorher festgelegt</translation>
        </message>
        <message>
            <source>thrown away before it could be read</source>
            <translation>weggeworfen, bevor sie abgelesen werden konnte</translation>
        </message>
        <message>
            <source>cut before the day that is read</source>
            <translation>geschnitten vor dem Tag, der abgelesen wird</translation>
        </message>
        <message>
            <source>not weighed</source>
            <translation>nicht gewogen</translation>
        </message>
        <message>
            <source>not scored by eye</source>
            <translation>nicht nach Augenmaß gewertet</translation>
        </message>
    </context>
    <context>
        <name>NoteEntry</name>
        <message>
            <source>How much</source>
            <translation>Wie viel</translation>
        </message>
        <message>
            <source>When it was</source>
            <translation>Wann es war</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Notiz</translation>
        </message>
        <message>
            <source>Note it</source>
            <translation>Notieren</translation>
        </message>
        <message>
            <source>Keep it in the book (Enter); Ctrl+Z takes it back</source>
            <translation>Im Buch speichern (Eingabe); Strg+Z nimmt es zurück</translation>
        </message>
        <message>
            <source>What is noted</source>
            <translation>Was notiert wird</translation>
        </message>
        <message>
            <source>Why?</source>
            <translation>Warum?</translation>
        </message>
        <message>
            <source>What you saw</source>
            <translation>Was zu sehen war</translation>
        </message>
        <message>
            <source>A number {scale}</source>
            <translation>Eine Zahl {scale}</translation>
        </message>
        <message>
            <source>A number in {unit}</source>
            <translation>Eine Zahl in {unit}</translation>
        </message>
        <message>
            <source>Say why it was thrown away: it stays in its trial, and the reason counts.</source>
            <translation>Angeben, warum sie weggeworfen wurde: sie bleibt in ihrem Versuch, und der Grund zählt.</translation>
        </message>
        <message>
            <source>Type what you saw.</source>
            <translation>Eingeben, was zu sehen war.</translation>
        </message>
        <message>
            <source>Type a number {scale}, for example {example}.</source>
            <translation>Eine Zahl {scale} eingeben, zum Beispiel {example}.</translation>
        </message>
        <message>
            <source>Type a number in {unit}, for example {example}.</source>
            <translation>Eine Zahl in {unit} eingeben, zum Beispiel {example}.</translation>
        </message>
    </context>
    <context>
        <name>NoteModel</name>
        <message>
            <source>When</source>
            <translation>Wann</translation>
        </message>
        <message>
            <source>What</source>
            <translation>Was</translation>
        </message>
        <message>
            <source>How much</source>
            <translation>Wie viel</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Notiz</translation>
        </message>
    </context>
    <context>
        <name>NoteTable</name>
        <message>
            <source>What was measured and done</source>
            <translation>Was gemessen und getan wurde</translation>
        </message>
        <message>
            <source>Enter or F2 corrects a number, a time or a note, Delete takes a row out</source>
            <translation>Eingabe oder F2 berichtigt Zahl, Zeit oder Notiz, Entf nimmt eine Zeile heraus</translation>
        </message>
    </context>
    <context>
        <name>NoteView</name>
        <message>
            <source>of 5</source>
            <translation>von 5</translation>
        </message>
        <message>
            <source>(1 yes, 0 no)</source>
            <translation>(1 ja, 0 nein)</translation>
        </message>
        <message>
            <source>days</source>
            <translation>Tage</translation>
        </message>
        <message>
            <source>from 1 (torn, slipped, full of medium) to 5 (clean)</source>
            <translation>von 1 (zerrissen, verrutscht, voll Substrat) bis 5 (sauber)</translation>
        </message>
        <message>
            <source>1 (the medium slid under the blade) or 0 (it held)</source>
            <translation>1 (das Substrat ist unter der Klinge verrutscht) oder 0 (es hat gehalten)</translation>
        </message>
        <message>
            <source>from 1 (off) to 5 (as it should be)</source>
            <translation>von 1 (schlecht) bis 5 (wie er sein soll)</translation>
        </message>
        <message>
            <source>from 1 (a wipe) to 5 (a shovel)</source>
            <translation>von 1 (einmal wischen) bis 5 (eine Schaufel)</translation>
        </message>
        <message>
            <source>from 5 (whole) to 1 (gone)</source>
            <translation>von 5 (ganz) bis 1 (verschwunden)</translation>
        </message>
        <message>
            <source>Never taste where mold is or may be; no flag is no proof that a tray is safe.</source>
            <translation>Nie kosten, wo Schimmel ist oder sein kann; kein Hinweis ist kein Beweis, dass eine Schale unbedenklich ist.</translation>
        </message>
        <message>
            <source>Days from the cut until look or smell is no longer good. How long food may be sold is ruled by local law.</source>
            <translation>Tage vom Schnitt, bis Aussehen oder Geruch nicht mehr gut ist. Wie lange Lebensmittel verkauft werden dürfen, regelt örtliches Recht.</translation>
        </message>
        <message>
            <source>Was it mold? Name it here: the verdict then counts the tray as lost to mold.</source>
            <translation>War es Schimmel? Dann hier nennen: das Urteil zählt die Schale dann als an Schimmel verloren.</translation>
        </message>
        <message>
            <source>Its blackout in Conditions ends then.</source>
            <translation>Ihre Dunkelphase unter „Anbau“ endet dann.</translation>
        </message>
        <message>
            <source>The verdict counts it as mold that you found on this tray, with or without a photo.</source>
            <translation>Das Urteil zählt es als Schimmel, der auf dieser Schale gefunden wurde, mit oder ohne Foto.</translation>
        </message>
        <message>
            <source>Weight, g</source>
            <translation>Gewicht, g</translation>
        </message>
        <message>
            <source>Given, ml</source>
            <translation>Gegeben, ml</translation>
        </message>
        <message>
            <source>Temperature, °C</source>
            <translation>Temperatur, °C</translation>
        </message>
        <message>
            <source>Humidity, %</source>
            <translation>Feuchte, %</translation>
        </message>
        <message>
            <source>Height, mm</source>
            <translation>Höhe, mm</translation>
        </message>
        <message>
            <source>weight</source>
            <translation>Gewicht</translation>
        </message>
        <message>
            <source>temperature of the medium</source>
            <translation>Temperatur des Substrats</translation>
        </message>
        <message>
            <source>temperature of the air</source>
            <translation>Temperatur der Luft</translation>
        </message>
        <message>
            <source>humidity of the air</source>
            <translation>Feuchte der Luft</translation>
        </message>
        <message>
            <source>water given</source>
            <translation>Wassergabe</translation>
        </message>
        <message>
            <source>feed given</source>
            <translation>Düngergabe</translation>
        </message>
        <message>
            <source>height of the shoots</source>
            <translation>Höhe der Triebe</translation>
        </message>
        <message>
            <source>fresh mass at the cut</source>
            <translation>Frischmasse beim Schnitt</translation>
        </message>
        <message>
            <source>cut quality</source>
            <translation>Schnittqualität</translation>
        </message>
        <message>
            <source>slid at the cut</source>
            <translation>verrutscht beim Schnitt</translation>
        </message>
        <message>
            <source>shelf life</source>
            <translation>Haltbarkeit</translation>
        </message>
        <message>
            <source>taste</source>
            <translation>Geschmack</translation>
        </message>
        <message>
            <source>labour</source>
            <translation>Arbeitszeit</translation>
        </message>
        <message>
            <source>sweepings</source>
            <translation>Kehricht</translation>
        </message>
        <message>
            <source>sweepings by eye</source>
            <translation>Kehricht nach Augenmaß</translation>
        </message>
        <message>
            <source>break-down by eye</source>
            <translation>Abbau nach Augenmaß</translation>
        </message>
        <message>
            <source>sowed</source>
            <translation>gesät</translation>
        </message>
        <message>
            <source>uncovered</source>
            <translation>Abdeckung ab</translation>
        </message>
        <message>
            <source>watered</source>
            <translation>gegossen</translation>
        </message>
        <message>
            <source>fed</source>
            <translation>gedüngt</translation>
        </message>
        <message>
            <source>turned</source>
            <translation>gedreht</translation>
        </message>
        <message>
            <source>moved</source>
            <translation>umgestellt</translation>
        </message>
        <message>
            <source>mold taken out</source>
            <translation>Schimmel entfernt</translation>
        </message>
        <message>
            <source>thrown away</source>
            <translation>weggeworfen</translation>
        </message>
        <message>
            <source>cut</source>
            <translation>geschnitten</translation>
        </message>
        <message>
            <source>set up</source>
            <translation>aufgestellt</translation>
        </message>
        <message>
            <source>cleaned</source>
            <translation>gereinigt</translation>
        </message>
        <message>
            <source>note</source>
            <translation>Notiz</translation>
        </message>
    </context>
    <context>
        <name>NumberField</name>
        <message>
            <source>{what}, less</source>
            <translation>{what}, weniger</translation>
        </message>
        <message>
            <source>{what}, more</source>
            <translation>{what}, mehr</translation>
        </message>
    </context>
    <context>
        <name>OldNotes</name>
        <message>
            <source>Each line is one tray. A column that is nothing of the list goes into the tray's note, with its heading. A tray without a day of cut counts as ended 30 days after sowing; one that was weighed, by today.</source>
            <translation>Jede Zeile ist eine Schale. Eine Spalte, die nichts aus der Liste ist, kommt mit ihrer Überschrift in die Notiz der Schale. Eine Schale ohne Tag des Schnitts gilt 30 Tage nach der Saat als beendet; eine gewogene spätestens heute.</translation>
        </message>
        <message>
            <source>Crops that the book does not know yet: {names}.</source>
            <translation>Kulturen, die das Buch noch nicht kennt: {names}.</translation>
        </message>
        <message>
            <source>Media that the book does not know yet: {names}.</source>
            <translation>Substrate, die das Buch noch nicht kennt: {names}.</translation>
        </message>
        <message>
            <source>No column names a trial: they are kept as the trial {name}, so that Verdict compares them, trays of one crop that were sown on one day side by side.</source>
            <translation>Keine Spalte nennt einen Versuch: sie werden als Versuch {name} gespeichert, damit Urteil sie vergleicht, Schalen einer Kultur vom selben Saattag nebeneinander.</translation>
        </message>
        <message>
            <source>{names} and {n} more</source>
            <translation>{names} und {n} weitere</translation>
        </message>
        <message>
            <source>This very file is in the book already: there is nothing to keep.</source>
            <translation>Genau diese Datei steht schon im Buch: Es gibt nichts zu speichern.</translation>
        </message>
        <message>
            <source>Say over the columns what each of them is.</source>
            <translation>Über den Spalten sagen, was jede ist.</translation>
        </message>
        <message>
            <source>Answer what is asked above, then the trays can be kept.</source>
            <translation>Die Frage oben beantworten, dann lassen sich die Schalen speichern.</translation>
        </message>
        <message>
            <source>Trays that will be kept: {n}.</source>
            <translation>Schalen, die gespeichert werden: {n}.</translation>
        </message>
        <message>
            <source>Trays that will be kept: {n}; in the book already: {there}.</source>
            <translation>Schalen, die gespeichert werden: {n}; schon im Buch: {there}.</translation>
        </message>
        <message>
            <source>Into the note</source>
            <translation>In die Notiz</translation>
        </message>
        <message>
            <source>The first trays as they will be kept:</source>
            <translation>Die ersten Schalen, wie sie gespeichert werden:</translation>
        </message>
        <message>
            <source>{crop} on {medium}</source>
            <translation>{crop} auf {medium}</translation>
        </message>
        <message>
            <source>sown {day}</source>
            <translation>gesät {day}</translation>
        </message>
        <message>
            <source>cut {day}</source>
            <translation>geschnitten {day}</translation>
        </message>
        <message>
            <source>{value:.0f} g fresh</source>
            <translation>{value:.0f} g frisch</translation>
        </message>
        <message>
            <source>{value:.0f} mm high</source>
            <translation>{value:.0f} mm hoch</translation>
        </message>
        <message>
            <source>{value:.0f} by eye</source>
            <translation>{value:.0f} nach Augenmaß</translation>
        </message>
        <message>
            <source>{value:g} g seed</source>
            <translation>{value:g} g Saatgut</translation>
        </message>
        <message>
            <source>{value:g} h soaked</source>
            <translation>{value:g} h eingeweicht</translation>
        </message>
        <message>
            <source>trial {name}</source>
            <translation>Versuch {name}</translation>
        </message>
        <message>
            <source>block {name}</source>
            <translation>Block {name}</translation>
        </message>
        <message>
            <source>shelf {name}</source>
            <translation>Etage {name}</translation>
        </message>
        <message>
            <source>lot {name}</source>
            <translation>Partie {name}</translation>
        </message>
        <message>
            <source>feed {name}</source>
            <translation>Dünger {name}</translation>
        </message>
    </context>
    <context>
        <name>OldNotesAssistant</name>
        <message>
            <source>Bring in {file}</source>
            <translation>{file} einlesen</translation>
        </message>
        <message>
            <source>Reading {file}.</source>
            <translation>{file} wird gelesen.</translation>
        </message>
        <message>
            <source>Keeping the trays.</source>
            <translation>Die Schalen werden gespeichert.</translation>
        </message>
        <message>
            <source>Trays kept: {n}. Undo takes them back.</source>
            <translation>Schalen gespeichert: {n}. Rückgängig nimmt sie zurück.</translation>
        </message>
        <message>
            <source>{file} cannot be opened, or is too large.</source>
            <translation>{file} lässt sich nicht öffnen oder ist zu groß.</translation>
        </message>
        <message>
            <source>This did not work; nothing was kept.</source>
            <translation>Das ging nicht; nichts wurde gespeichert.</translation>
        </message>
    </context>
    <context>
        <name>OldNotesForm</name>
        <message>
            <source>Lines that are not kept, and why</source>
            <translation>Zeilen, die nicht gespeichert werden, und warum</translation>
        </message>
        <message>
            <source>Lines that are not kept: {n}</source>
            <translation>Zeilen, die nicht gespeichert werden: {n}</translation>
        </message>
    </context>
    <context>
        <name>OldNotesPreview</name>
        <message>
            <source>First lines of the file, and what each column is</source>
            <translation>Erste Zeilen der Datei, und was jede Spalte ist</translation>
        </message>
        <message>
            <source>column {n}</source>
            <translation>Spalte {n}</translation>
        </message>
        <message>
            <source>What the column {heading} is</source>
            <translation>Was die Spalte {heading} ist</translation>
        </message>
    </context>
    <context>
        <name>OtherBooks</name>
        <message>
            <source>Your book stands in {folder}.</source>
            <translation>Das Buch steht in {folder}.</translation>
        </message>
        <message>
            <source>Open the folder of a book</source>
            <translation>Ordner eines Buchs öffnen</translation>
        </message>
    </context>
    <context>
        <name>PackPlace</name>
        <message>
            <source>Everything in one file, to be kept safe or opened on another computer: trays, numbers, notes and the photos as they were taken, with the time and the place that the camera wrote into them. Your book stays as it is.</source>
            <translation>Alles in einer Datei, zum Aufbewahren oder zum Öffnen auf einem anderen Rechner: Schalen, Zahlen, Notizen und die Fotos, wie sie aufgenommen wurden, mit Zeit und Ort, die die Kamera hineingeschrieben hat. Das Buch bleibt, wie es ist.</translation>
        </message>
        <message>
            <source>Pack this book</source>
            <translation>Dieses Buch packen</translation>
        </message>
        <message>
            <source>Pack</source>
            <translation>Packen</translation>
        </message>
        <message>
            <source>Size</source>
            <translation>Größe</translation>
        </message>
        <message>
            <source>about {size}</source>
            <translation>etwa {size}</translation>
        </message>
    </context>
    <context>
        <name>PackWays</name>
        <message>
            <source>What shall become of {name}?</source>
            <translation>Was soll mit {name} geschehen?</translation>
        </message>
        <message>
            <source>It is a whole book. Opened, it stands beside yours in a folder of its own. Brought in, its trays are added to the book that is open, after you have seen them.</source>
            <translation>Es ist ein ganzes Buch. Geöffnet steht es in einem eigenen Ordner neben dem jetzigen. Eingelesen kommen seine Schalen in das offene Buch, nachdem sie gezeigt wurden.</translation>
        </message>
        <message>
            <source>Leave</source>
            <translation>Abbrechen</translation>
        </message>
        <message>
            <source>Bring it in...</source>
            <translation>Einlesen...</translation>
        </message>
        <message>
            <source>Open it...</source>
            <translation>Öffnen...</translation>
        </message>
    </context>
    <context>
        <name>PagePreview</name>
        <message>
            <source>Preview of the pages</source>
            <translation>Vorschau der Seiten</translation>
        </message>
    </context>
    <context>
        <name>Paper</name>
        <message>
            <source>Print at 100 %. Measure this bar: it must be 100 mm long, or nothing on this page is right.</source>
            <translation>Mit 100 % drucken. Diesen Balken messen: er muss 100 mm lang sein, sonst stimmt auf dieser Seite nichts.</translation>
        </message>
    </context>
    <context>
        <name>PartName</name>
        <message>
            <source>coverage</source>
            <translation>Deckung</translation>
        </message>
        <message>
            <source>uniformity</source>
            <translation>Gleichmäßigkeit</translation>
        </message>
        <message>
            <source>colour</source>
            <translation>Farbe</translation>
        </message>
        <message>
            <source>mold</source>
            <translation>Schimmel</translation>
        </message>
    </context>
    <context>
        <name>PhotoList</name>
        <message>
            <source>Show only these</source>
            <translation>Nur diese zeigen</translation>
        </message>
        <message>
            <source>Show only photos that need you</source>
            <translation>Nur Fotos zeigen, die eine Entscheidung brauchen</translation>
        </message>
        <message>
            <source>Photos and what became of them</source>
            <translation>Fotos und was aus ihnen wurde</translation>
        </message>
        <message>
            <source>Above the list: {question} The key Q leads there.</source>
            <translation>Über der Liste: {question} Die Taste Q führt dorthin.</translation>
        </message>
        <message>
            <source>Bring in what is missing: {n}</source>
            <translation>Fehlende einlesen: {n}</translation>
        </message>
        <message>
            <source>Try again with the files that were not brought in</source>
            <translation>Die nicht eingelesenen Dateien noch einmal versuchen</translation>
        </message>
        <message>
            <source>Confirm all {count} proposals</source>
            <translation>Alle {count} Vorschläge bestätigen</translation>
        </message>
        <message>
            <source>Match these photos by the order of your walk; undo takes it back</source>
            <translation>Diese Fotos nach der Reihenfolge des Rundgangs zuordnen; Rückgängig nimmt es zurück</translation>
        </message>
        <message>
            <source>Next that needs you</source>
            <translation>Nächstes offenes Foto</translation>
        </message>
        <message>
            <source>Go to the next photo that needs you (N)</source>
            <translation>Zum nächsten Foto, das eine Entscheidung braucht (N)</translation>
        </message>
        <message>
            <source>Choose photos</source>
            <translation>Fotos wählen</translation>
        </message>
        <message>
            <source>Choose photo files (Ctrl+I)</source>
            <translation>Fotodateien wählen (Strg+I)</translation>
        </message>
    </context>
    <context>
        <name>PhotoPanel</name>
        <message>
            <source>The photo</source>
            <translation>Das Foto</translation>
        </message>
        <message>
            <source>What became of the photo</source>
            <translation>Was aus dem Foto wurde</translation>
        </message>
        <message>
            <source>Set the corners</source>
            <translation>Ecken setzen</translation>
        </message>
        <message>
            <source>Choose the tray</source>
            <translation>Schale wählen</translation>
        </message>
        <message>
            <source>Copy the sentence</source>
            <translation>Satz kopieren</translation>
        </message>
        <message>
            <source>Leave out</source>
            <translation>Weglassen</translation>
        </message>
        <message>
            <source>Count this photo for no tray; it stays in the book, and undo brings it back</source>
            <translation>Dieses Foto für keine Schale zählen; es bleibt im Buch, und Rückgängig holt es zurück</translation>
        </message>
        <message>
            <source>Choose a row to see its photo.</source>
            <translation>Eine Zeile wählen, um ihr Foto zu sehen.</translation>
        </message>
        <message>
            <source>Yes, {code}</source>
            <translation>Ja, {code}</translation>
        </message>
        <message>
            <source>The photo shows tray {code}</source>
            <translation>Das Foto zeigt Schale {code}</translation>
        </message>
        <message>
            <source>Open {code}</source>
            <translation>{code} öffnen</translation>
        </message>
        <message>
            <source>Open the sheet of tray {code}</source>
            <translation>Blatt von Schale {code} öffnen</translation>
        </message>
        <message>
            <source>Another tray</source>
            <translation>Andere Schale</translation>
        </message>
        <message>
            <source>Nothing of this file can be shown.</source>
            <translation>Von dieser Datei lässt sich nichts zeigen.</translation>
        </message>
    </context>
    <context>
        <name>PhotoSource</name>
        <message>
            <source>Choose photos</source>
            <translation>Fotos wählen</translation>
        </message>
        <message>
            <source>Choose a folder with photos</source>
            <translation>Ordner mit Fotos wählen</translation>
        </message>
        <message>
            <source>Choose the folder that your phone copies to</source>
            <translation>Ordner wählen, in den das Telefon kopiert</translation>
        </message>
        <message>
            <source>{folder} is not there, so no photo comes in from it: connect it again, then choose it with Watch a folder.</source>
            <translation>{folder} ist nicht da, also kommt von dort kein Foto: wieder anschließen, dann mit „Ordner beobachten“ wählen.</translation>
        </message>
        <message>
            <source>{folder} does not answer, so no photo comes in from it: look at the drive or the network it lies on. Once it answers, photos come in again.</source>
            <translation>{folder} antwortet nicht, also kommt von dort kein Foto: nach dem Laufwerk oder dem Netz sehen, in dem der Ordner liegt. Sobald er antwortet, kommen wieder Fotos.</translation>
        </message>
    </context>
    <context>
        <name>PhotoTable</name>
        <message>
            <source>Photo</source>
            <translation>Foto</translation>
        </message>
        <message>
            <source>What became of it</source>
            <translation>Was daraus wurde</translation>
        </message>
    </context>
    <context>
        <name>PicturePage</name>
        <message>
            <source>No photo of this tray yet. Bring photos in at Intake.</source>
            <translation>Noch kein Foto dieser Schale. Fotos im Eingang einlesen.</translation>
        </message>
        <message>
            <source>The picture is coming.</source>
            <translation>Das Bild kommt gleich.</translation>
        </message>
    </context>
    <context>
        <name>PictureView</name>
        <message>
            <source>Picture of the tray</source>
            <translation>Bild der Schale</translation>
        </message>
    </context>
    <context>
        <name>Place</name>
        <message>
            <source>Bench</source>
            <translation>Regal</translation>
        </message>
        <message>
            <source>The rack as it stands, and what needs a look</source>
            <translation>Das Regal, wie es steht, und was einen Blick braucht</translation>
        </message>
        <message>
            <source>Intake</source>
            <translation>Eingang</translation>
        </message>
        <message>
            <source>Bring photos in, and see what became of each</source>
            <translation>Fotos einlesen und sehen, was aus jedem wurde</translation>
        </message>
        <message>
            <source>Tray sheet</source>
            <translation>Schalenblatt</translation>
        </message>
        <message>
            <source>One tray: its picture, its days, its numbers</source>
            <translation>Eine Schale: ihr Bild, ihre Tage, ihre Zahlen</translation>
        </message>
        <message>
            <source>Plan</source>
            <translation>Plan</translation>
        </message>
        <message>
            <source>Plan a fair trial, draw its places, print tags</source>
            <translation>Einen fairen Versuch planen, Plätze auslosen, Schilder drucken</translation>
        </message>
        <message>
            <source>Verdict</source>
            <translation>Urteil</translation>
        </message>
        <message>
            <source>What the trial says of each medium, and how sure it is</source>
            <translation>Was der Versuch über jedes Substrat sagt, und wie sicher es ist</translation>
        </message>
        <message>
            <source>Materials</source>
            <translation>Material</translation>
        </message>
        <message>
            <source>Media side by side: water, warmth, climate, cost, work</source>
            <translation>Substrate nebeneinander: Wasser, Wärme, Klima, Kosten, Arbeit</translation>
        </message>
    </context>
    <context>
        <name>PlaceDialog</name>
        <message>
            <source>Name</source>
            <translation>Name</translation>
        </message>
        <message>
            <source>Choose...</source>
            <translation>Wählen...</translation>
        </message>
        <message>
            <source>Choose the folder</source>
            <translation>Ordner wählen</translation>
        </message>
        <message>
            <source>Leave</source>
            <translation>Abbrechen</translation>
        </message>
        <message>
            <source>&amp;Name</source>
            <translation>&amp;Name</translation>
        </message>
        <message>
            <source>Where</source>
            <translation>Wo</translation>
        </message>
        <message>
            <source>{path} is there already and stays as it is. Choose another name.</source>
            <translation>{path} ist schon da und bleibt, wie es ist. Einen anderen Namen wählen.</translation>
        </message>
        <message>
            <source>Give it a name.</source>
            <translation>Einen Namen geben.</translation>
        </message>
        <message>
            <source>Where shall it stand?</source>
            <translation>Wo soll es stehen?</translation>
        </message>
    </context>
    <context>
        <name>PlacesPage</name>
        <message>
            <source>Which tray stands where?</source>
            <translation>Welche Schale steht wo?</translation>
        </message>
        <message>
            <source>Reason</source>
            <translation>Grund</translation>
        </message>
        <message>
            <source>Draw again</source>
            <translation>Neu auslosen</translation>
        </message>
        <message>
            <source>Enter places drawn on paper...</source>
            <translation>Auf Papier ausgeloste Plätze eintragen...</translation>
        </message>
        <message>
            <source>Lots from a hat, say: type or paste the place of each tray</source>
            <translation>Etwa Lose aus einem Hut: den Platz jeder Schale eintippen oder einfügen</translation>
        </message>
        <message>
            <source>Why is the plan changed?</source>
            <translation>Warum wird der Plan geändert?</translation>
        </message>
        <message>
            <source>Why are the places drawn again?</source>
            <translation>Warum werden die Plätze neu ausgelost?</translation>
        </message>
        <message>
            <source>All {n} trays are sown.</source>
            <translation>Alle {n} Schalen sind gesät.</translation>
        </message>
        <message>
            <source>Sown so far: {sown} of {all} trays. Next: {next} trays.</source>
            <translation>Bisher gesät: {sown} von {all} Schalen. Als Nächstes: {next} Schalen.</translation>
        </message>
        <message>
            <source>The plan is kept with today's date, then places are drawn by lot within each block: no treatment stands at the window more often than its share. The number that the lot began with is kept, so the drawing can be checked.</source>
            <translation>Der Plan wird mit dem heutigen Datum festgehalten, dann werden die Plätze in jedem Block ausgelost: keine Variante steht öfter am Fenster, als ihr zukommt. Die Startzahl wird gespeichert, damit die Auslosung nachgeprüft werden kann.</translation>
        </message>
        <message>
            <source>This trial was kept before. What you changed becomes a new version with its date and your reason; the old one stays, and the verdict tells of both.</source>
            <translation>Dieser Versuch ist schon festgehalten. Änderungen werden eine neue Version mit Datum und Grund; die alte bleibt, und das Urteil nennt beide.</translation>
        </message>
    </context>
    <context>
        <name>Plan</name>
        <message>
            <source>Next step</source>
            <translation>Nächster Schritt</translation>
        </message>
        <message>
            <source>Step before</source>
            <translation>Voriger Schritt</translation>
        </message>
        <message>
            <source>The kind of {medium} is kept; Ctrl+Z takes it back.</source>
            <translation>Die Art von {medium} ist gespeichert; Strg+Z nimmt es zurück.</translation>
        </message>
        <message>
            <source>Another plan is being made here: keep it or give it up first.</source>
            <translation>Hier entsteht gerade ein anderer Plan: erst festhalten oder aufgeben.</translation>
        </message>
        <message>
            <source>A copy of {trial} with {n} trays of each; change in it what you like.</source>
            <translation>Eine Kopie von {trial} mit {n} Schalen von jedem; nach Belieben ändern.</translation>
        </message>
    </context>
    <context>
        <name>PlanEmpty</name>
        <message>
            <source>Plan a trial</source>
            <translation>Versuch planen</translation>
        </message>
        <message>
            <source>No trial is planned yet</source>
            <translation>Noch ist kein Versuch geplant</translation>
        </message>
        <message>
            <source>Here you say what you want to know, which media you compare and on which crops. The program says how many trays that takes, draws which tray stands where, and prints tags and sheets.</source>
            <translation>Hier wird festgelegt, was die Frage ist, welche Substrate verglichen werden und mit welchen Kulturen. Das Programm sagt, wie viele Schalen das braucht, lost aus, welche Schale wo steht, und druckt Schilder und Bögen.</translation>
        </message>
    </context>
    <context>
        <name>PlanFoot</name>
        <message>
            <source>Back</source>
            <translation>Zurück</translation>
        </message>
        <message>
            <source>Step before (Alt+Up)</source>
            <translation>Voriger Schritt (Alt+Auf)</translation>
        </message>
        <message>
            <source>Next step (Alt+Right)</source>
            <translation>Nächster Schritt (Alt+Rechts)</translation>
        </message>
    </context>
    <context>
        <name>PlanKeeper</name>
        <message>
            <source>{trial}: the plan is kept, the places are drawn.</source>
            <translation>{trial}: der Plan ist festgehalten, die Plätze sind ausgelost.</translation>
        </message>
        <message>
            <source>The places are drawn.</source>
            <translation>Die Plätze sind ausgelost.</translation>
        </message>
        <message>
            <source>The places are drawn again; the drawing before is kept.</source>
            <translation>Die Plätze sind neu ausgelost; die vorige Auslosung bleibt erhalten.</translation>
        </message>
        <message>
            <source>The places are kept as they were drawn on paper.</source>
            <translation>Die Plätze sind gespeichert, wie sie auf Papier ausgelost wurden.</translation>
        </message>
        <message>
            <source>{n} trays stand on the bench.</source>
            <translation>{n} Schalen stehen im Regal.</translation>
        </message>
    </context>
    <context>
        <name>PlanRow</name>
        <message>
            <source>Trial</source>
            <translation>Versuch</translation>
        </message>
        <message>
            <source>Change the plan</source>
            <translation>Plan ändern</translation>
        </message>
        <message>
            <source>Copy with one change</source>
            <translation>Abwandeln</translation>
        </message>
        <message>
            <source>New trial</source>
            <translation>Neuer Versuch</translation>
        </message>
        <message>
            <source>Give up this draft</source>
            <translation>Entwurf aufgeben</translation>
        </message>
        <message>
            <source>Draft: {trial}</source>
            <translation>Entwurf: {trial}</translation>
        </message>
        <message>
            <source>A new trial</source>
            <translation>Ein neuer Versuch</translation>
        </message>
    </context>
    <context>
        <name>PlanSummary</name>
        <message>
            <source>Kept</source>
            <translation>Festgehalten</translation>
        </message>
        <message>
            <source>Versions</source>
            <translation>Versionen</translation>
        </message>
        <message>
            <source>Question</source>
            <translation>Frage</translation>
        </message>
        <message>
            <source>Varies</source>
            <translation>Verändert</translation>
        </message>
        <message>
            <source>Trusted</source>
            <translation>Bewährt</translation>
        </message>
        <message>
            <source>Crops</source>
            <translation>Kulturen</translation>
        </message>
        <message>
            <source>Compared</source>
            <translation>Verglichen</translation>
        </message>
        <message>
            <source>Canopy score</source>
            <translation>Bestandswertung</translation>
        </message>
        <message>
            <source>Trays</source>
            <translation>Schalen</translation>
        </message>
        <message>
            <source>The same</source>
            <translation>Gleich</translation>
        </message>
        <message>
            <source>Takes</source>
            <translation>Braucht</translation>
        </message>
        <message>
            <source>Repeats</source>
            <translation>Wiederholungen</translation>
        </message>
        <message>
            <source>Which of these is best?</source>
            <translation>Welches davon ist das beste?</translation>
        </message>
        <message>
            <source>Does the change close the gap to the trusted one?</source>
            <translation>Schließt die Änderung den Abstand zum bewährten?</translation>
        </message>
        <message>
            <source>Is the new one as good as the trusted one?</source>
            <translation>Ist das neue so gut wie das bewährte?</translation>
        </message>
        <message>
            <source>{crop} (read on day {day})</source>
            <translation>{crop} (abgelesen an Tag {day})</translation>
        </message>
        <message>
            <source>{crop} (without blackout, read on day {day})</source>
            <translation>{crop} (ohne Dunkelphase, abgelesen an Tag {day})</translation>
        </message>
        <message>
            <source>{crop} (blackout in days: {dark}, read on day {day})</source>
            <translation>{crop} (Dunkelphase in Tagen: {dark}, abgelesen an Tag {day})</translation>
        </message>
        <message>
            <source>{measure}, margin {margin:g} {unit}, one-sided 95 %</source>
            <translation>{measure}, Spielraum {margin:g} {unit}, einseitig 95 %</translation>
        </message>
        <message>
            <source>{first}; beside it {others}</source>
            <translation>{first}; daneben {others}</translation>
        </message>
        <message>
            <source>a tray with confirmed mold scores nothing</source>
            <translation>eine Schale mit bestätigtem Schimmel zählt null</translation>
        </message>
        <message>
            <source>a tray with confirmed mold loses points by its area</source>
            <translation>eine Schale mit bestätigtem Schimmel verliert Punkte nach seiner Fläche</translation>
        </message>
        <message>
            <source>a tray with confirmed mold gets no score and is counted apart</source>
            <translation>eine Schale mit bestätigtem Schimmel bekommt keine Wertung und wird gesondert gezählt</translation>
        </message>
        <message>
            <source>weights: {weights}; coverage and uniformity of the growing bed; {mold}</source>
            <translation>Gewichte: {weights}; Deckung und Gleichmäßigkeit der Substratfläche; {mold}</translation>
        </message>
        <message>
            <source>{each} of each treatment on each crop, {all} in all, in blocks: {names}</source>
            <translation>{each} je Variante und Kultur, {all} insgesamt, in Blöcken: {names}</translation>
        </message>
        <message>
            <source>{each} of each medium on each crop, {all} in all, in blocks: {names}</source>
            <translation>{each} je Substrat und Kultur, {all} insgesamt, in Blöcken: {names}</translation>
        </message>
        <message>
            <source>first plan</source>
            <translation>erster Plan</translation>
        </message>
        <message>
            <source>{n}: {day}, {why}</source>
            <translation>{n}: {day}, {why}</translation>
        </message>
        <message>
            <source>by lot (begun with number {seed})</source>
            <translation>durch das Los (Startzahl {seed})</translation>
        </message>
        <message>
            <source>on paper, entered by hand</source>
            <translation>auf Papier und von Hand eingetragen</translation>
        </message>
        <message>
            <source>Drawn {how} on {day}. At the window end: {ends}.</source>
            <translation>Ausgelost {how} am {day}. Am Fensterende: {ends}.</translation>
        </message>
    </context>
    <context>
        <name>PlanView</name>
        <message>
            <source>Next: sow</source>
            <translation>Weiter: säen</translation>
        </message>
        <message>
            <source>Nothing is changed yet.</source>
            <translation>Noch ist nichts geändert.</translation>
        </message>
        <message>
            <source>Say why the plan is changed.</source>
            <translation>Angeben, warum der Plan geändert wird.</translation>
        </message>
        <message>
            <source>Keep the plan and draw the places</source>
            <translation>Plan festhalten und Plätze auslosen</translation>
        </message>
        <message>
            <source>Next</source>
            <translation>Weiter</translation>
        </message>
        <message>
            <source>Save as PDF...</source>
            <translation>Als PDF speichern...</translation>
        </message>
        <message>
            <source>Next: print</source>
            <translation>Weiter: Drucken</translation>
        </message>
        <message>
            <source>Draw the places</source>
            <translation>Plätze auslosen</translation>
        </message>
        <message>
            <source>Next: places</source>
            <translation>Weiter: Plätze</translation>
        </message>
        <message>
            <source>Go to the Bench</source>
            <translation>Zum Regal</translation>
        </message>
        <message>
            <source>They are sown: add {n} trays</source>
            <translation>Sie sind gesät: {n} Schalen aufnehmen</translation>
        </message>
        <message>
            <source>Other trays grow there today ({held}): they must be gone before these are sown.</source>
            <translation>Dort wachsen heute andere Schalen ({held}): sie müssen weg sein, bevor diese gesät werden.</translation>
        </message>
        <message>
            <source>{trial}, once more</source>
            <translation>{trial}, noch einmal</translation>
        </message>
    </context>
    <context>
        <name>PrintPage</name>
        <message>
            <source>Sowing sheet: what goes into which tray</source>
            <translation>Aussaatbogen: was in welche Schale kommt</translation>
        </message>
        <message>
            <source>Bench map: where each tray stands</source>
            <translation>Regalplan: wo jede Schale steht</translation>
        </message>
        <message>
            <source>Station cards: once, for the place where you take photos</source>
            <translation>Stationskarten: einmal, für den Platz, an dem fotografiert wird</translation>
        </message>
        <message>
            <source>Tags: one for each tray, so that photos find their tray</source>
            <translation>Schilder: eines je Schale, damit Fotos ihre Schale finden</translation>
        </message>
        <message>
            <source>Reading sheets: blank, without the media</source>
            <translation>Messbögen: leer, ohne die Substrate</translation>
        </message>
        <message>
            <source>What do you want to print?</source>
            <translation>Was soll gedruckt werden?</translation>
        </message>
        <message>
            <source>Paper</source>
            <translation>Papier</translation>
        </message>
        <message>
            <source>1 page.</source>
            <translation>1 Seite.</translation>
        </message>
        <message>
            <source>{n} pages.</source>
            <translation>{n} Seiten.</translation>
        </message>
        <message>
            <source>Print at 100 % (no fitting to the page), and measure the bar at the foot of a page.</source>
            <translation>Mit 100 % drucken (nicht an die Seite anpassen) und den Balken am Fuß einer Seite messen.</translation>
        </message>
    </context>
    <context>
        <name>ProgressLine</name>
        <message>
            <source>Cancel</source>
            <translation>Abbrechen</translation>
        </message>
        <message>
            <source>Cancel: {work}</source>
            <translation>Abbrechen: {work}</translation>
        </message>
        <message>
            <source>Stopping; all stays as it was</source>
            <translation>Hält an; alles bleibt, wie es war</translation>
        </message>
        <message>
            <source>Stopping; what is done stays</source>
            <translation>Hält an; was fertig ist, bleibt</translation>
        </message>
        <message>
            <source>Beginning</source>
            <translation>Beginnt</translation>
        </message>
        <message>
            <source>{done} of {total}</source>
            <translation>{done} von {total}</translation>
        </message>
        <message>
            <source>{count}, about {seconds} s left</source>
            <translation>{count}, noch etwa {seconds} s</translation>
        </message>
        <message>
            <source>{count}, about {minutes:g} min left</source>
            <translation>{count}, noch etwa {minutes:g} min</translation>
        </message>
    </context>
    <context>
        <name>QuestionBand</name>
        <message>
            <source>The key Q leads to the answers</source>
            <translation>Die Taste Q führt zu den Antworten</translation>
        </message>
    </context>
    <context>
        <name>QuestionPage</name>
        <message>
            <source>What do you want to know?</source>
            <translation>Was ist die Frage?</translation>
        </message>
        <message>
            <source>Is a new medium as good as the one I trust?</source>
            <translation>Ist ein neues Substrat so gut wie das bewährte?</translation>
        </message>
        <message>
            <source>Which of several is best?</source>
            <translation>Welches von mehreren ist das beste?</translation>
        </message>
        <message>
            <source>Does feed, watering or seating close the gap to the one I trust?</source>
            <translation>Schließt Düngung, Bewässerung oder Lage den Abstand zum bewährten?</translation>
        </message>
        <message>
            <source>for example: Fibre mat in spring</source>
            <translation>zum Beispiel: Fasermatte im Frühling</translation>
        </message>
        <message>
            <source>for example: Can I leave peat without losing quality?</source>
            <translation>zum Beispiel: Geht es ohne Torf bei gleicher Qualität?</translation>
        </message>
        <message>
            <source>Name of the trial</source>
            <translation>Name des Versuchs</translation>
        </message>
        <message>
            <source>In your own words</source>
            <translation>In eigenen Worten</translation>
        </message>
        <message>
            <source>What is compared?</source>
            <translation>Was wird verglichen?</translation>
        </message>
        <message>
            <source>Canopy score of the photo, 0 to 100</source>
            <translation>Bestandswertung des Fotos, 0 bis 100</translation>
        </message>
        <message>
            <source>Yield: fresh mass of each tray</source>
            <translation>Ertrag: Frischmasse jeder Schale</translation>
        </message>
        <message>
            <source>Eye score, given without knowing the medium</source>
            <translation>Note nach Augenmaß, ohne das Substrat zu kennen</translation>
        </message>
        <message>
            <source>A tray with mold that you have confirmed:</source>
            <translation>Eine Schale mit bestätigtem Schimmel:</translation>
        </message>
        <message>
            <source>A tray with mold that you have confirmed</source>
            <translation>Eine Schale mit bestätigtem Schimmel</translation>
        </message>
        <message>
            <source>scores nothing</source>
            <translation>zählt null</translation>
        </message>
        <message>
            <source>loses points by the area of mold</source>
            <translation>verliert Punkte nach der Schimmelfläche</translation>
        </message>
        <message>
            <source>gets no score, is counted apart</source>
            <translation>ohne Wertung, wird gesondert gezählt</translation>
        </message>
        <message>
            <source>How much worse is still as good?</source>
            <translation>Wie viel schlechter ist noch gleich gut?</translation>
        </message>
        <message>
            <source>Margin</source>
            <translation>Spielraum</translation>
        </message>
        <message>
            <source>This margin is fixed with the plan, before sowing. If it is changed later, the verdict says so. A narrow margin takes many more trays.</source>
            <translation>Dieser Spielraum wird mit dem Plan festgelegt, vor der Aussaat. Wird er später geändert, sagt es das Urteil. Ein enger Spielraum braucht viel mehr Schalen.</translation>
        </message>
        <message>
            <source>% of the trusted one's yield</source>
            <translation>% vom Ertrag des bewährten</translation>
        </message>
        <message>
            <source>points of 100</source>
            <translation>von 100 Punkten</translation>
        </message>
    </context>
    <context>
        <name>QuickLine</name>
        <message>
            <source>Noted: {what}</source>
            <translation>Notiert: {what}</translation>
        </message>
        <message>
            <source>Not kept, since a question stood open: {what}</source>
            <translation>Nicht gespeichert, weil eine Frage offen blieb: {what}</translation>
        </message>
        <message>
            <source>Not kept, since a question stood open: {what} and {n} more</source>
            <translation>Nicht gespeichert, weil eine Frage offen blieb: {what} und {n} weitere</translation>
        </message>
        <message>
            <source>{what} not kept</source>
            <translation>{what} nicht notiert</translation>
        </message>
        <message>
            <source>{count} trays</source>
            <translation>{count} Schalen</translation>
        </message>
        <message>
            <source>Tray and number</source>
            <translation>Schale und Zahl</translation>
        </message>
        <message>
            <source>Note it</source>
            <translation>Notieren</translation>
        </message>
        <message>
            <source>Keep it in the book (Enter); Ctrl+Z takes it back</source>
            <translation>Im Buch speichern (Eingabe); Strg+Z nimmt es zurück</translation>
        </message>
        <message>
            <source>for {code}, where no tray is typed</source>
            <translation>für {code}, wenn keine Schale genannt ist</translation>
        </message>
        <message>
            <source>for the {count} chosen trays, where no tray is typed</source>
            <translation>für die {count} gewählten Schalen, wenn keine Schale genannt ist</translation>
        </message>
        <message>
            <source>Keep {number}</source>
            <translation>{number} behalten</translation>
        </message>
        <message>
            <source>Type it again</source>
            <translation>Noch einmal eingeben</translation>
        </message>
        <message>
            <source>It was {number}</source>
            <translation>Es war {number}</translation>
        </message>
        <message>
            <source>{where}: {what}. Ctrl+Z takes it back.</source>
            <translation>{where}: {what}. Strg+Z nimmt es zurück.</translation>
        </message>
        <message>
            <source>What is noted</source>
            <translation>Was notiert wird</translation>
        </message>
        <message>
            <source>What is noted; in the line * is the next, / the one before</source>
            <translation>Was notiert wird; in der Zeile ist * das nächste, / das vorige</translation>
        </message>
        <message>
            <source>Tray and why</source>
            <translation>Schale und Grund</translation>
        </message>
        <message>
            <source>Tray and what you saw</source>
            <translation>Schale und was zu sehen war</translation>
        </message>
        <message>
            <source>Tray, and a note if you like</source>
            <translation>Schale, und wenn gewünscht eine Notiz</translation>
        </message>
        <message>
            <source>Type a number behind the tray, for example {example}.</source>
            <translation>Eine Zahl hinter die Schale schreiben, zum Beispiel {example}.</translation>
        </message>
        <message>
            <source>{word} is the code of one tray and the tag of another: choose the tray on the rack, then type the number alone.</source>
            <translation>{word} ist der Code einer Schale und das Schild einer anderen: die Schale im Regal wählen, dann nur die Zahl tippen.</translation>
        </message>
        <message>
            <source>{count} growing trays are called {word}: choose one on the rack, then type the number alone.</source>
            <translation>{count} wachsende Schalen heißen {word}: eine im Regal wählen, dann nur die Zahl tippen.</translation>
        </message>
        <message>
            <source>{count} trays called {word} ended of late: note it on the Tray sheet of the one you mean.</source>
            <translation>{count} Schalen mit dem Code {word} haben kürzlich geendet: auf dem Schalenblatt der gemeinten eintragen.</translation>
        </message>
        <message>
            <source>No growing tray is called {code}.</source>
            <translation>Keine wachsende Schale heißt {code}.</translation>
        </message>
        <message>
            <source>Type the tray first, for example A1 812, or choose trays on the rack.</source>
            <translation>Zuerst die Schale eingeben, zum Beispiel A1 812, oder Schalen im Regal wählen.</translation>
        </message>
        <message>
            <source>Say why behind the tray: it stays in its trial, and the reason counts.</source>
            <translation>Den Grund hinter die Schale schreiben: sie bleibt in ihrem Versuch, und der Grund zählt.</translation>
        </message>
        <message>
            <source>Type the note behind the tray, for example {example}.</source>
            <translation>Die Notiz hinter der Schale eingeben, zum Beispiel {example}.</translation>
        </message>
        <message>
            <source>thin at the door</source>
            <translation>dünn an der Türseite</translation>
        </message>
        <message>
            <source>Tray and number from 1 to 5</source>
            <translation>Schale und Zahl von 1 bis 5</translation>
        </message>
        <message>
            <source>Tray and number in {unit}</source>
            <translation>Schale und Zahl in {unit}</translation>
        </message>
    </context>
    <context>
        <name>RackFilters</name>
        <message>
            <source>Crop</source>
            <translation>Kultur</translation>
        </message>
        <message>
            <source>Medium</source>
            <translation>Substrat</translation>
        </message>
        <message>
            <source>Trial</source>
            <translation>Versuch</translation>
        </message>
        <message>
            <source>Day since sowing</source>
            <translation>Tag seit der Aussaat</translation>
        </message>
        <message>
            <source>Not photographed today</source>
            <translation>Heute nicht fotografiert</translation>
        </message>
        <message>
            <source>Trays that have ended...</source>
            <translation>Beendete Schalen...</translation>
        </message>
        <message>
            <source>Find a tray that was cut or thrown away, and open its sheet</source>
            <translation>Eine geschnittene oder weggeworfene Schale suchen und ihr Blatt öffnen</translation>
        </message>
        <message>
            <source>All crops</source>
            <translation>Alle Kulturen</translation>
        </message>
        <message>
            <source>All media</source>
            <translation>Alle Substrate</translation>
        </message>
        <message>
            <source>All trials</source>
            <translation>Alle Versuche</translation>
        </message>
        <message>
            <source>All days</source>
            <translation>Alle Tage</translation>
        </message>
    </context>
    <context>
        <name>RackHead</name>
        <message>
            <source>The rack</source>
            <translation>Das Regal</translation>
        </message>
        <message>
            <source>Filters</source>
            <translation>Filter</translation>
        </message>
        <message>
            <source>Crop, medium, trial, day, photo missing; trays that have ended</source>
            <translation>Kultur, Substrat, Versuch, Tag, fehlendes Foto; beendete Schalen</translation>
        </message>
        <message>
            <source>Find a tray, crop or medium</source>
            <translation>Schale, Kultur oder Substrat suchen</translation>
        </message>
        <message>
            <source>Show only trays that have these words (Ctrl+F); Enter goes to the first, Esc shows all</source>
            <translation>Nur Schalen mit diesen Wörtern zeigen (Strg+F); Eingabe geht zur ersten, Esc zeigt alle</translation>
        </message>
        <message>
            <source>Filters: {count} on</source>
            <translation>Filter: {count} an</translation>
        </message>
    </context>
    <context>
        <name>RackView</name>
        <message>
            <source>Click or Enter: open the tray. Space, Ctrl or Shift: choose several to note something of</source>
            <translation>Klick oder Eingabe: Schale öffnen. Leertaste, Strg oder Umschalt: mehrere wählen, um etwas zu notieren</translation>
        </message>
        <message>
            <source>Without a shelf</source>
            <translation>Ohne Etage</translation>
        </message>
        <message>
            <source>Shelf {name}</source>
            <translation>Etage {name}</translation>
        </message>
        <message>
            <source>{count} trays</source>
            <translation>{count} Schalen</translation>
        </message>
        <message>
            <source>1 tray</source>
            <translation>1 Schale</translation>
        </message>
    </context>
    <context>
        <name>RankChart</name>
        <message>
            <source>Ranks that the trial leaves open</source>
            <translation>Ränge, die der Versuch offen lässt</translation>
        </message>
        <message>
            <source>rank, 1 is best</source>
            <translation>Rang, 1 ist der beste</translation>
        </message>
    </context>
    <context>
        <name>ReadingKind</name>
        <message>
            <source>weight</source>
            <translation>Gewicht</translation>
        </message>
        <message>
            <source>medium temperature</source>
            <translation>Substrattemperatur</translation>
        </message>
        <message>
            <source>air temperature</source>
            <translation>Lufttemperatur</translation>
        </message>
        <message>
            <source>humidity</source>
            <translation>Luftfeuchte</translation>
        </message>
        <message>
            <source>water given</source>
            <translation>Wassergabe</translation>
        </message>
        <message>
            <source>feed given</source>
            <translation>Düngergabe</translation>
        </message>
        <message>
            <source>height</source>
            <translation>Höhe</translation>
        </message>
        <message>
            <source>fresh mass</source>
            <translation>Frischmasse</translation>
        </message>
        <message>
            <source>cut quality</source>
            <translation>Schnittqualität</translation>
        </message>
        <message>
            <source>slid at the cut</source>
            <translation>verrutscht beim Schnitt</translation>
        </message>
        <message>
            <source>shelf life</source>
            <translation>Haltbarkeit</translation>
        </message>
        <message>
            <source>taste</source>
            <translation>Geschmack</translation>
        </message>
        <message>
            <source>labour</source>
            <translation>Arbeitszeit</translation>
        </message>
        <message>
            <source>sweepings</source>
            <translation>Kehricht</translation>
        </message>
        <message>
            <source>sweepings by eye</source>
            <translation>Kehricht nach Augenmaß</translation>
        </message>
        <message>
            <source>break-down by eye</source>
            <translation>Abbau nach Augenmaß</translation>
        </message>
    </context>
    <context>
        <name>Reason</name>
        <message>
            <source>the file is empty: copy it from the phone again</source>
            <translation>die Datei ist leer: noch einmal vom Telefon kopieren</translation>
        </message>
        <message>
            <source>the file is cut short or damaged: copy it from the phone again</source>
            <translation>die Datei ist abgeschnitten oder beschädigt: noch einmal vom Telefon kopieren</translation>
        </message>
        <message>
            <source>this is not a picture: leave the file out, or copy the photo from the phone again</source>
            <translation>das ist kein Bild: die Datei weglassen oder das Foto noch einmal vom Telefon kopieren</translation>
        </message>
        <message>
            <source>this kind of picture is not read: use JPEG, PNG, TIFF, WebP or HEIC</source>
            <translation>diese Art von Bild wird nicht gelesen: JPEG, PNG, TIFF, WebP oder HEIC verwenden</translation>
        </message>
        <message>
            <source>the picture has more than 100 million pixels: save it smaller</source>
            <translation>das Bild hat mehr als 100 Millionen Pixel: kleiner speichern</translation>
        </message>
        <message>
            <source>the file has more than 150 MB: save the picture smaller, as JPEG</source>
            <translation>die Datei hat mehr als 150 MB: das Bild kleiner speichern, als JPEG</translation>
        </message>
        <message>
            <source>the picture is too small to score: use the phone's full size</source>
            <translation>das Bild ist zu klein zum Auswerten: die volle Größe des Telefons verwenden</translation>
        </message>
        <message>
            <source>the file cannot be opened: look whether it is still there and may be read</source>
            <translation>die Datei lässt sich nicht öffnen: nachsehen, ob sie noch da ist und gelesen werden darf</translation>
        </message>
        <message>
            <source>reading this file stopped the worker: save the picture again as JPEG and bring that in</source>
            <translation>das Lesen dieser Datei hat den Arbeitsprozess beendet: das Bild noch einmal als JPEG speichern und dieses einlesen</translation>
        </message>
        <message>
            <source>this photo could not be scored, and that is a mistake in the program: the file is as it was</source>
            <translation>dieses Foto konnte nicht ausgewertet werden, und das ist ein Fehler im Programm: die Datei ist, wie sie war</translation>
        </message>
        <message>
            <source>the file changed while it was read: bring it in again when it is whole</source>
            <translation>die Datei hat sich beim Lesen verändert: noch einmal einlesen, wenn sie vollständig ist</translation>
        </message>
        <message>
            <source>another program has changed the photo in the book, so it was not measured again: bring the camera's own file in once more</source>
            <translation>ein anderes Programm hat das Foto im Buch verändert, also wurde es nicht neu gemessen: die Datei der Kamera noch einmal einlesen</translation>
        </message>
        <message>
            <source>there is no picture in this folder: name the folder that the photos lie in</source>
            <translation>in diesem Ordner ist kein Bild: den Ordner nennen, in dem die Fotos liegen</translation>
        </message>
        <message>
            <source>the picture has no colour: photograph in colour</source>
            <translation>das Bild hat keine Farbe: in Farbe fotografieren</translation>
        </message>
        <message>
            <source>the picture was saved in printing inks, so its colours are only near: send the camera's own file</source>
            <translation>das Bild wurde in Druckfarben gespeichert, die Farben stimmen also nur ungefähr: die Datei der Kamera selbst schicken</translation>
        </message>
        <message>
            <source>too blurred to tell shoots from medium: hold the phone still, or add light</source>
            <translation>zu unscharf, um Triebe von Substrat zu unterscheiden: das Telefon ruhig halten oder mehr Licht machen</translation>
        </message>
        <message>
            <source>too dark: add light, or hold the phone still for a longer exposure</source>
            <translation>zu dunkel: mehr Licht machen, oder das Telefon für eine längere Belichtung ruhig halten</translation>
        </message>
        <message>
            <source>burnt out: turn the light down or step out of direct sun</source>
            <translation>überbelichtet: das Licht verringern oder aus der direkten Sonne gehen</translation>
        </message>
        <message>
            <source>purple, red or blue light: switch the grow light to white for the photo</source>
            <translation>violettes, rotes oder blaues Licht: die Pflanzenlampe für das Foto auf Weiß stellen</translation>
        </message>
        <message>
            <source>light of one colour, more than the grey patch can set right: photograph in white light</source>
            <translation>Licht von einer Farbe, mehr als das graue Feld ausgleichen kann: bei weißem Licht fotografieren</translation>
        </message>
        <message>
            <source>faded colours: switch off the camera's filters, wipe its lens, take off a lid or a dome, and photograph in full colour</source>
            <translation>blasse Farben: die Filter der Kamera ausschalten, ihre Linse abwischen, Deckel oder Haube abnehmen und in voller Farbe fotografieren</translation>
        </message>
        <message>
            <source>glare, or something white, hides part of the tray: look what it is, switch the flash off, and move the lamp or the phone</source>
            <translation>spiegelndes Licht oder etwas Weißes verdeckt einen Teil der Schale: nachsehen, was es ist, den Blitz ausschalten und die Lampe oder das Telefon anders halten</translation>
        </message>
        <message>
            <source>part of the tray is blurred, or something smooth hides it, a hand, a tool or a drop on the lens: look what it is, switch portrait mode off, and photograph again without it</source>
            <translation>ein Teil der Schale ist unscharf oder von etwas Glattem verdeckt, einer Hand, einem Werkzeug oder einem Tropfen auf der Linse: nachsehen, was es ist, den Porträtmodus ausschalten und ohne das noch einmal fotografieren</translation>
        </message>
        <message>
            <source>no tray seen: photograph it from above with its whole rim in the picture</source>
            <translation>keine Schale zu sehen: von oben fotografieren, mit dem ganzen Rand im Bild</translation>
        </message>
        <message>
            <source>part of the tray lies outside the picture: photograph it again with its whole rim in the picture</source>
            <translation>ein Teil der Schale liegt außerhalb des Bildes: noch einmal fotografieren, mit dem ganzen Rand im Bild</translation>
        </message>
        <message>
            <source>the tray is too small in the picture: go nearer, or send the photo in the phone's full size</source>
            <translation>die Schale ist zu klein im Bild: näher herangehen oder das Foto in voller Größe des Telefons schicken</translation>
        </message>
        <message>
            <source>the tray's rim is not sure: drag the four corners onto the inner edge</source>
            <translation>der Schalenrand ist unsicher: die vier Ecken auf die Innenkante ziehen</translation>
        </message>
        <message>
            <source>the learned model is missing or damaged, so the plain method was used: install the program again</source>
            <translation>das gelernte Modell fehlt oder ist beschädigt, darum wurde die einfache Methode verwendet: das Programm neu installieren</translation>
        </message>
        <message>
            <source>coverage is doubtful here: compare the canopy outline with the photo before you rely on it</source>
            <translation>die Deckung ist hier zweifelhaft: den Umriss des Bestands mit dem Foto vergleichen, bevor man sich darauf verlässt</translation>
        </message>
        <message>
            <source>two ways to tell canopy from medium disagree here: compare the canopy outline with the photo</source>
            <translation>zwei Verfahren, Bestand von Substrat zu unterscheiden, sind hier uneins: den Umriss des Bestands mit dem Foto vergleichen</translation>
        </message>
        <message>
            <source>too much changed between the two photos to lay them on each other: compare them by eye, side by side</source>
            <translation>zwischen den beiden Fotos hat sich zu viel verändert, um sie aufeinanderzulegen: nebeneinander nach Augenmaß vergleichen</translation>
        </message>
        <message>
            <source>no earlier photo of this tray that counts</source>
            <translation>kein früheres Foto dieser Schale, das zählt</translation>
        </message>
        <message>
            <source>the grey patch was seen in only one of the two photos, so their colours are not compared</source>
            <translation>das graue Feld war nur auf einem der beiden Fotos zu sehen, deshalb werden ihre Farben nicht verglichen</translation>
        </message>
        <message>
            <source>the two photos were scored by different methods: compare them by eye, side by side</source>
            <translation>die beiden Fotos wurden mit verschiedenen Methoden ausgewertet: nebeneinander nach Augenmaß vergleichen</translation>
        </message>
        <message>
            <source>the scale is not known, so nothing can be measured in mm</source>
            <translation>der Maßstab ist nicht bekannt, also lässt sich nichts in mm messen</translation>
        </message>
        <message>
            <source>no canopy yet</source>
            <translation>noch kein Bestand</translation>
        </message>
        <message>
            <source>under 10 % coverage: evenness is not yet meaningful</source>
            <translation>unter 10 % Deckung: Gleichmäßigkeit sagt noch nichts aus</translation>
        </message>
        <message>
            <source>under 10 % coverage: the crop is not up yet, so nothing counts as a gap</source>
            <translation>unter 10 % Deckung: die Kultur ist noch nicht aufgelaufen, also zählt nichts als Lücke</translation>
        </message>
        <message>
            <source>the tray is too small for a middle to hold its outer 25 mm against</source>
            <translation>die Schale ist zu klein für eine Mitte, mit der ihre äußeren 25 mm zu vergleichen wären</translation>
        </message>
        <message>
            <source>no growing bed shows, so canopy is no share of it: look whether the corners are right</source>
            <translation>keine Substratfläche zu sehen, darum ist der Bestand kein Anteil von ihr: nachsehen, ob die Ecken stimmen</translation>
        </message>
        <message>
            <source>too little of the growing bed shows there to tell a share of it</source>
            <translation>dort ist zu wenig von der Substratfläche zu sehen, um einen Anteil zu nennen</translation>
        </message>
        <message>
            <source>scored before the share of the growing bed was measured: score this photo again</source>
            <translation>ausgewertet, bevor der Anteil an der Substratfläche gemessen wurde: dieses Foto neu auswerten</translation>
        </message>
        <message>
            <source>all cells are alike, so there is no pattern to measure</source>
            <translation>alle Zellen sind gleich, also gibt es kein Muster zu messen</translation>
        </message>
        <message>
            <source>too little colour for a hue</source>
            <translation>zu wenig Farbe für einen Farbton</translation>
        </message>
        <message>
            <source>mostly pale or red: the dark green index is for green canopy only</source>
            <translation>überwiegend blass oder rot: der Dunkelgrün-Index gilt nur für grünen Bestand</translation>
        </message>
        <message>
            <source>the file does not say when it was taken: set the clock of the camera</source>
            <translation>die Datei sagt nicht, wann sie aufgenommen wurde: die Uhr der Kamera stellen</translation>
        </message>
        <message>
            <source>no tag read</source>
            <translation>kein Schild gelesen</translation>
        </message>
        <message>
            <source>more than one tag hangs on this tray: leave only its own there</source>
            <translation>mehr als ein Schild hängt an dieser Schale: nur ihr eigenes hängen lassen</translation>
        </message>
        <message>
            <source>no grey patch seen, so the colour is as the camera gave it</source>
            <translation>kein graues Feld zu sehen, die Farbe ist also, wie die Kamera sie lieferte</translation>
        </message>
        <message>
            <source>the camera's focal length is not known and the photo is too straight to tell it</source>
            <translation>die Brennweite der Kamera ist nicht bekannt, und das Foto ist zu gerade, um sie zu erkennen</translation>
        </message>
        <message>
            <source>no sharp edge to measure on</source>
            <translation>keine scharfe Kante zum Messen</translation>
        </message>
        <message>
            <source>a person has mended the canopy, so how far coverage may be off is not known</source>
            <translation>der Bestand wurde von Hand nachgebessert, darum ist nicht bekannt, wie weit die Deckung abweichen kann</translation>
        </message>
        <message>
            <source>how far coverage may be off is told only by the learned model, on a tray of known scale</source>
            <translation>wie weit die Deckung abweichen kann, sagt nur das gelernte Modell, bei einer Schale mit bekanntem Maßstab</translation>
        </message>
    </context>
    <context>
        <name>Report</name>
        <message>
            <source>The picture is gone.</source>
            <translation>Das Bild fehlt.</translation>
        </message>
        <message>
            <source>en</source>
            <translation>de</translation>
        </message>
        <message>
            <source>page {n} of {all}</source>
            <translation>Seite {n} von {all}</translation>
        </message>
        <message>
            <source>Media against the trusted one</source>
            <translation>Substrate gegen das bewährte</translation>
        </message>
        <message>
            <source>Medium</source>
            <translation>Substrat</translation>
        </message>
        <message>
            <source>Trays</source>
            <translation>Schalen</translation>
        </message>
        <message>
            <source>Mean, {unit}</source>
            <translation>Mittel, {unit}</translation>
        </message>
        <message>
            <source>Difference</source>
            <translation>Unterschied</translation>
        </message>
        <message>
            <source>Interval</source>
            <translation>Intervall</translation>
        </message>
        <message>
            <source>Answer</source>
            <translation>Antwort</translation>
        </message>
        <message>
            <source>Rank</source>
            <translation>Rang</translation>
        </message>
        <message>
            <source>Held against {trusted}</source>
            <translation>Gehalten gegen {trusted}</translation>
        </message>
        <message>
            <source>Property</source>
            <translation>Eigenschaft</translation>
        </message>
        <message>
            <source>Media as materials</source>
            <translation>Substrate als Material</translation>
        </message>
    </context>
    <context>
        <name>ReportDesk</name>
        <message>
            <source>The report was not saved: {why}. Choose another folder.</source>
            <translation>Der Bericht wurde nicht gespeichert: {why}. Einen anderen Ordner wählen.</translation>
        </message>
        <message>
            <source>The report could not be made. The book is as it was.</source>
            <translation>Der Bericht konnte nicht gemacht werden. Das Buch ist, wie es war.</translation>
        </message>
    </context>
    <context>
        <name>ReportDialog</name>
        <message>
            <source>Report</source>
            <translation>Bericht</translation>
        </message>
        <message>
            <source>Trial</source>
            <translation>Versuch</translation>
        </message>
        <message>
            <source>Version</source>
            <translation>Fassung</translation>
        </message>
        <message>
            <source>Full, for an inspector</source>
            <translation>Vollständig, für eine Prüfung</translation>
        </message>
        <message>
            <source>Two pages, for a customer</source>
            <translation>Zwei Seiten, für Kunden</translation>
        </message>
        <message>
            <source>Paper</source>
            <translation>Papier</translation>
        </message>
        <message>
            <source>Preview of the pages</source>
            <translation>Vorschau der Seiten</translation>
        </message>
        <message>
            <source>Progress</source>
            <translation>Fortschritt</translation>
        </message>
        <message>
            <source>Close</source>
            <translation>Schließen</translation>
        </message>
        <message>
            <source>Save as PDF or HTML...</source>
            <translation>Als PDF oder HTML speichern...</translation>
        </message>
        <message>
            <source>The pages are being laid out.</source>
            <translation>Die Seiten werden gesetzt.</translation>
        </message>
        <message>
            <source>Cancel</source>
            <translation>Abbrechen</translation>
        </message>
        <message>
            <source>{doing} About {seconds} s left.</source>
            <translation>{doing} Noch etwa {seconds} s.</translation>
        </message>
        <message>
            <source>One page.</source>
            <translation>Eine Seite.</translation>
        </message>
        <message>
            <source>{n} pages.</source>
            <translation>{n} Seiten.</translation>
        </message>
        <message>
            <source>Page {n}</source>
            <translation>Seite {n}</translation>
        </message>
        <message>
            <source>report</source>
            <translation>Bericht</translation>
        </message>
        <message>
            <source>Save the report</source>
            <translation>Bericht speichern</translation>
        </message>
        <message>
            <source>The report is being written.</source>
            <translation>Der Bericht wird geschrieben.</translation>
        </message>
        <message>
            <source>Saved: {file}</source>
            <translation>Gespeichert: {file}</translation>
        </message>
    </context>
    <context>
        <name>RestsOn</name>
        <message>
            <source>the tray's own growth and earlier trays of the crop</source>
            <translation>das eigene Wachstum der Schale und frühere Schalen der Kultur</translation>
        </message>
        <message>
            <source>earlier trays of the crop</source>
            <translation>frühere Schalen der Kultur</translation>
        </message>
        <message>
            <source>what is usual for the crop</source>
            <translation>was für die Kultur üblich ist</translation>
        </message>
    </context>
    <context>
        <name>ResultPage</name>
        <message>
            <source>All pictures are scored</source>
            <translation>Alle Bilder sind gewertet</translation>
        </message>
        <message>
            <source>To the verdict</source>
            <translation>Zum Urteil</translation>
        </message>
        <message>
            <source>Back to the pictures</source>
            <translation>Zurück zu den Bildern</translation>
        </message>
    </context>
    <context>
        <name>Role</name>
        <message>
            <source>not used</source>
            <translation>nicht verwendet</translation>
        </message>
        <message>
            <source>date and time</source>
            <translation>Datum und Uhrzeit</translation>
        </message>
        <message>
            <source>date</source>
            <translation>Datum</translation>
        </message>
        <message>
            <source>time of day</source>
            <translation>Uhrzeit</translation>
        </message>
        <message>
            <source>tray</source>
            <translation>Schale</translation>
        </message>
        <message>
            <source>shelf</source>
            <translation>Etage</translation>
        </message>
        <message>
            <source>reading</source>
            <translation>Messwert</translation>
        </message>
    </context>
    <context>
        <name>RulePage</name>
        <message>
            <source>Limits and weights</source>
            <translation>Grenzen und Gewichte</translation>
        </message>
        <message>
            <source>Each part is worth 0 at its lower limit and 1 at its upper one. The score is their geometric mean by weight, so no part makes up for one that is worthless.</source>
            <translation>Jeder Teil zählt 0 an seiner unteren Grenze und 1 an der oberen. Die Wertung ist ihr gewichtetes geometrisches Mittel, also gleicht kein Teil einen wertlosen aus.</translation>
        </message>
        <message>
            <source>Mold that a person has confirmed</source>
            <translation>Bestätigter Schimmel</translation>
        </message>
        <message>
            <source>As usual</source>
            <translation>Wie üblich</translation>
        </message>
        <message>
            <source>The limits and weights that hold where nobody has set any</source>
            <translation>Die Grenzen und Gewichte, die gelten, wenn niemand welche festgelegt hat</translation>
        </message>
        <message>
            <source>worthless at, %</source>
            <translation>wertlos bei, %</translation>
        </message>
        <message>
            <source>best at, %</source>
            <translation>am besten bei, %</translation>
        </message>
        <message>
            <source>weight</source>
            <translation>Gewicht</translation>
        </message>
        <message>
            <source>Your trays</source>
            <translation>Eigene Schalen</translation>
        </message>
        <message>
            <source>Medium</source>
            <translation>Substrat</translation>
        </message>
        <message>
            <source>Tray</source>
            <translation>Schale</translation>
        </message>
        <message>
            <source>Score</source>
            <translation>Wertung</translation>
        </message>
        <message>
            <source>Tried</source>
            <translation>Probe</translation>
        </message>
        <message>
            <source>Why limits and weights are changed</source>
            <translation>Warum Grenzen und Gewichte geändert werden</translation>
        </message>
        <message>
            <source>Why? The reason is kept with the plan.</source>
            <translation>Warum? Der Grund wird mit dem Plan gespeichert.</translation>
        </message>
        <message>
            <source>Back</source>
            <translation>Zurück</translation>
        </message>
        <message>
            <source>Back to the verdict; nothing is kept (Esc)</source>
            <translation>Zurück zum Urteil; nichts wird gespeichert (Esc)</translation>
        </message>
        <message>
            <source>Keep</source>
            <translation>Speichern</translation>
        </message>
        <message>
            <source>Tried on your {crop} trays, day {day}</source>
            <translation>Probe an den eigenen Schalen mit {crop}, Tag {day}</translation>
        </message>
        <message>
            <source>No photo of the day that is read, so nothing can be tried</source>
            <translation>Kein Foto von dem Tag, der abgelesen wird, also lässt sich nichts ausprobieren</translation>
        </message>
        <message>
            <source>This trial has no plan, so the usual limits and weights hold; here you can only try others.</source>
            <translation>Dieser Versuch hat keinen Plan, also gelten die üblichen Grenzen und Gewichte; hier lassen sich andere nur ausprobieren.</translation>
        </message>
        <message>
            <source>Trays are sown already: the verdict will say that this was changed afterwards.</source>
            <translation>Schalen sind schon gesät: das Urteil wird sagen, dass dies nachträglich geändert wurde.</translation>
        </message>
    </context>
    <context>
        <name>SameForAll</name>
        <message>
            <source>Feed</source>
            <translation>Düngung</translation>
        </message>
        <message>
            <source>Watering</source>
            <translation>Bewässerung</translation>
        </message>
        <message>
            <source>In blackout</source>
            <translation>In der Dunkelphase</translation>
        </message>
        <message>
            <source>Heat mat</source>
            <translation>Heizmatte</translation>
        </message>
        <message>
            <source>Light</source>
            <translation>Licht</translation>
        </message>
        <message>
            <source>as usual</source>
            <translation>wie üblich</translation>
        </message>
    </context>
    <context>
        <name>SameNames</name>
        <message>
            <source>Both books have these names. Do they mean the same?</source>
            <translation>Beide Bücher haben diese Namen. Bedeuten sie dasselbe?</translation>
        </message>
        <message>
            <source>All others mean the same</source>
            <translation>Alle übrigen bedeuten dasselbe</translation>
        </message>
        <message>
            <source>In brackets behind names of theirs that mean another</source>
            <translation>In Klammern hinter Namen, die dort etwas anderes bedeuten</translation>
        </message>
        <message>
            <source>the same</source>
            <translation>gleich</translation>
        </message>
        <message>
            <source>another</source>
            <translation>etwas anderes</translation>
        </message>
        <message>
            <source>Where theirs is another, it is called so here: {name}</source>
            <translation>Was dort etwas anderes ist, heißt hier so: {name}</translation>
        </message>
    </context>
    <context>
        <name>ScoreRule</name>
        <message>
            <source>mean</source>
            <translation>Mittel</translation>
        </message>
        <message>
            <source>{value} % → {worth}</source>
            <translation>{value} % → {worth}</translation>
        </message>
        <message>
            <source>Coverage and uniformity count the growing bed: what is neither rim nor wall of the tray. Limits of coverage mean what is seen from straight above; leaves over the wall make the bed look fuller, so 30 % of it stands at 47 % of the bed.</source>
            <translation>Deckung und Gleichmäßigkeit zählen die Substratfläche: was weder Rand noch Wand der Schale ist. Grenzen der Deckung meinen, was genau von oben zu sehen ist; Blätter über der Wand lassen die Fläche voller aussehen, darum stehen 30 % davon bei 47 % der Fläche.</translation>
        </message>
        <message>
            <source>Coverage and uniformity count the inner area, for not every photo of these trays tells its growing bed.</source>
            <translation>Deckung und Gleichmäßigkeit zählen die Innenfläche, denn nicht jedes Foto dieser Schalen nennt seine Substratfläche.</translation>
        </message>
        <message>
            <source>a tray with mold scores 0</source>
            <translation>eine Schale mit Schimmel zählt 0</translation>
        </message>
        <message>
            <source>mold counts by its area</source>
            <translation>Schimmel zählt nach seiner Fläche</translation>
        </message>
        <message>
            <source>a tray with mold gets no score and is counted apart</source>
            <translation>eine Schale mit Schimmel bekommt keine Wertung und wird gesondert gezählt</translation>
        </message>
        <message>
            <source>{part}: what is best must lie above what is worthless.</source>
            <translation>{part}: was am besten ist, muss über dem liegen, was wertlos ist.</translation>
        </message>
        <message>
            <source>Give at least one part a weight.</source>
            <translation>Mindestens einem Teil ein Gewicht geben.</translation>
        </message>
    </context>
    <context>
        <name>ScoringAgain</name>
        <message>
            <source>Scoring photos again</source>
            <translation>Fotos werden neu ausgewertet</translation>
        </message>
        <message>
            <source>The learned model is missing or damaged, so nothing was scored again: install the program again.</source>
            <translation>Das gelernte Modell fehlt oder ist beschädigt, darum wurde nichts neu ausgewertet: das Programm neu installieren.</translation>
        </message>
        <message>
            <source>{scored} of {total} photos scored again; the old scores are kept beside the new ones.</source>
            <translation>{scored} von {total} Fotos neu ausgewertet; die alten Auswertungen bleiben neben den neuen erhalten.</translation>
        </message>
        <message>
            <source>Stopped after {done} of {total} photos; what is done stays, the rest keeps its score.</source>
            <translation>Angehalten nach {done} von {total} Fotos; was fertig ist, bleibt, die übrigen behalten ihre Auswertung.</translation>
        </message>
        <message>
            <source>about {n} seconds</source>
            <translation>etwa {n} Sekunden</translation>
        </message>
        <message>
            <source>about a minute</source>
            <translation>etwa eine Minute</translation>
        </message>
        <message>
            <source>about {n} minutes</source>
            <translation>etwa {n} Minuten</translation>
        </message>
        <message>
            <source>about {n} hours</source>
            <translation>etwa {n} Stunden</translation>
        </message>
    </context>
    <context>
        <name>ScoringPage</name>
        <message>
            <source>Pictures scored</source>
            <translation>Gewertete Bilder</translation>
        </message>
        <message>
            <source>Leave, go on later</source>
            <translation>Verlassen, später weiter</translation>
        </message>
        <message>
            <source>What you have scored is kept (Esc)</source>
            <translation>Was gewertet ist, bleibt (Esc)</translation>
        </message>
        <message>
            <source>Score from 0 to 100</source>
            <translation>Note von 0 bis 100</translation>
        </message>
        <message>
            <source>0: worth nothing</source>
            <translation>0: nichts wert</translation>
        </message>
        <message>
            <source>100: as good as a tray can be</source>
            <translation>100: so gut, wie eine Schale sein kann</translation>
        </message>
        <message>
            <source>0-9 tens, arrows by one, Enter next, Backspace back, Esc leave</source>
            <translation>0-9 Zehner, Pfeile um eins, Eingabe weiter, Rücktaste zurück, Esc verlassen</translation>
        </message>
        <message>
            <source>Back</source>
            <translation>Zurück</translation>
        </message>
        <message>
            <source>The picture before (Backspace)</source>
            <translation>Das Bild davor (Rücktaste)</translation>
        </message>
        <message>
            <source>Next</source>
            <translation>Weiter</translation>
        </message>
        <message>
            <source>Keep this score and go on (Enter)</source>
            <translation>Diese Note speichern und weiter (Eingabe)</translation>
        </message>
        <message>
            <source>Picture {place} of {total}</source>
            <translation>Bild {place} von {total}</translation>
        </message>
    </context>
    <context>
        <name>Sentence</name>
        <message>
            <source>This book has no trial with trays, so there is nothing to compare.</source>
            <translation>Dieses Buch hat keinen Versuch mit Schalen, also gibt es nichts zu vergleichen.</translation>
        </message>
        <message>
            <source>Some tables and pictures found no room on two pages; they are in the full report.</source>
            <translation>Einige Tabellen und Bilder fanden auf zwei Seiten keinen Platz; sie stehen im vollständigen Bericht.</translation>
        </message>
        <message>
            <source>whole: looks and tears as on the first day</source>
            <translation>ganz: sieht aus und reißt wie am ersten Tag</translation>
        </message>
        <message>
            <source>soft: whole, but tears with little force</source>
            <translation>weich: ganz, reißt aber mit wenig Kraft</translation>
        </message>
        <message>
            <source>falling apart: holes, edges gone, fibres still seen</source>
            <translation>zerfallend: Löcher, Ränder weg, Fasern noch zu sehen</translation>
        </message>
        <message>
            <source>crumbs: pieces smaller than a thumbnail</source>
            <translation>Krümel: Stücke kleiner als ein Daumennagel</translation>
        </message>
        <message>
            <source>gone: not to be told from the soil around it</source>
            <translation>weg: von der Erde ringsum nicht zu unterscheiden</translation>
        </message>
        <message>
            <source>It does not get lighter: cannot tell yet. Weigh it dry.</source>
            <translation>Es wird nicht leichter: noch nicht zu sagen. Trocken wiegen.</translation>
        </message>
        <message>
            <source>A mass is below zero: mend it.</source>
            <translation>Eine Masse liegt unter null: berichtigen.</translation>
        </message>
        <message>
            <source>Two weighings bear the same time: mend one of them.</source>
            <translation>Zwei Wägungen haben dieselbe Zeit: eine davon berichtigen.</translation>
        </message>
        <message>
            <source>It weighs more than at first: was it dried in the same way before?</source>
            <translation>Es wiegt mehr als am Anfang: wurde es vorher genauso getrocknet?</translation>
        </message>
        <message>
            <source>Cannot tell yet: weigh it dry once more, weeks after the last time.</source>
            <translation>Noch nicht zu sagen: noch einmal trocken wiegen, Wochen nach dem letzten Mal.</translation>
        </message>
        <message>
            <source>Cannot tell yet: weigh it dry on {n} more dates, weeks apart.</source>
            <translation>Noch nicht zu sagen: an {n} weiteren Tagen trocken wiegen, im Abstand von Wochen.</translation>
        </message>
        <message>
            <source>Cannot tell yet: less than a tenth is gone. Weigh it again in some weeks.</source>
            <translation>Noch nicht zu sagen: weniger als ein Zehntel ist weg. In einigen Wochen wieder wiegen.</translation>
        </message>
        <message>
            <source>Reckoned beyond what was seen ({weeks:.0f} weeks): the last part often goes more slowly.</source>
            <translation>Über das Beobachtete ({weeks:.0f} Wochen) hinaus gerechnet: der letzte Teil geht oft langsamer.</translation>
        </message>
        <message>
            <source>Cannot tell yet: {weeks:.0f} weeks were seen, and it takes more than twice as long. Weigh it again.</source>
            <translation>Noch nicht zu sagen: {weeks:.0f} Wochen wurden beobachtet, und es dauert mehr als doppelt so lange. Wieder wiegen.</translation>
        </message>
        <message>
            <source>Look at it every two weeks, and give it a mark from 5 to 1.</source>
            <translation>Alle zwei Wochen ansehen und eine Note von 5 bis 1 geben.</translation>
        </message>
        <message>
            <source>Cannot tell yet: it has not fallen to crumbs. Look again in two weeks.</source>
            <translation>Noch nicht zu sagen: es ist nicht zu Krümeln zerfallen. In zwei Wochen wieder ansehen.</translation>
        </message>
        <message>
            <source>The tray stood the other way round; the comparison allows for it.</source>
            <translation>Die Schale stand andersherum; der Vergleich berücksichtigt es.</translation>
        </message>
        <message>
            <source>The earlier photo is in doubt, so what seems to have changed may be that: {why}.</source>
            <translation>Das frühere Foto ist zweifelhaft, und was sich geändert zu haben scheint, kann daran liegen: {why}.</translation>
        </message>
        <message>
            <source>The later photo is in doubt, so what seems to have changed may be that: {why}.</source>
            <translation>Das spätere Foto ist zweifelhaft, und was sich geändert zu haben scheint, kann daran liegen: {why}.</translation>
        </message>
        <message>
            <source>Too little stayed in place to lay the photos on each other, so single places are not compared.</source>
            <translation>Es blieb zu wenig an seinem Ort, um die Fotos aufeinanderzulegen; einzelne Stellen werden darum nicht verglichen.</translation>
        </message>
        <message>
            <source>Leaves have moved unlike each other: single places are told to within {error:.0f} mm.</source>
            <translation>Blätter haben sich ungleich bewegt: Einzelne Stellen sind auf {error:.0f} mm genau angegeben.</translation>
        </message>
        <message>
            <source>Away from the canopy that stood before, by 3 mm and more, {appeared:.0f} % of the tray was newly covered.</source>
            <translation>Mindestens 3 mm neben dem bisherigen Bestand sind {appeared:.0f} % der Schale neu bedeckt.</translation>
        </message>
        <message>
            <source>Canopy vanished from {vanished:.0f} % of the tray.</source>
            <translation>Auf {vanished:.0f} % der Schale verschwand Bestand.</translation>
        </message>
        <message>
            <source>The largest place that lost its canopy has {area:.0f} cm², {x:.0f} cm from the left and {y:.0f} cm from the far side.</source>
            <translation>Die größte Stelle, die ihren Bestand verlor, hat {area:.0f} cm², {x:.0f} cm von links und {y:.0f} cm von hinten.</translation>
        </message>
        <message>
            <source>The photos were scored by different methods, so their canopy is not compared.</source>
            <translation>Die Fotos wurden mit verschiedenen Methoden ausgewertet, darum wird ihr Bestand nicht verglichen.</translation>
        </message>
        <message>
            <source>Coverage stayed within a point.</source>
            <translation>Die Deckung änderte sich um weniger als einen Punkt.</translation>
        </message>
        <message>
            <source>Coverage rose by {points:.1f} points.</source>
            <translation>Die Deckung stieg um {points:.1f} Punkte.</translation>
        </message>
        <message>
            <source>Coverage fell by {points:.1f} points.</source>
            <translation>Die Deckung fiel um {points:.1f} Punkte.</translation>
        </message>
        <message>
            <source>A patch of {now:.1f} cm² is new: the earlier photo does not show it.</source>
            <translation>Eine Stelle von {now:.1f} cm² ist neu: das frühere Foto zeigt sie nicht.</translation>
        </message>
        <message>
            <source>A patch grew from {was:.1f} to {now:.1f} cm². Mold grows: look at it now.</source>
            <translation>Eine Stelle wuchs von {was:.1f} auf {now:.1f} cm². Schimmel wächst: jetzt ansehen.</translation>
        </message>
        <message>
            <source>A patch is as large as before: {was:.1f} and {now:.1f} cm².</source>
            <translation>Eine Stelle ist so groß wie vorher: {was:.1f} und {now:.1f} cm².</translation>
        </message>
        <message>
            <source>Less is seen of a patch: {was:.1f} cm² before, {now:.1f} cm² now. Root hairs fade, mold seldom does; leaves may hide part of it.</source>
            <translation>Von einer Stelle ist weniger zu sehen: vorher {was:.1f} cm², jetzt {now:.1f} cm². Wurzelhaare vergehen, Schimmel selten; Blätter können einen Teil verdecken.</translation>
        </message>
        <message>
            <source>Leaves have grown over a patch of {was:.1f} cm². It may still be there: lift the leaves and look.</source>
            <translation>Blätter sind über eine Stelle von {was:.1f} cm² gewachsen. Sie kann noch da sein: die Blätter anheben und nachsehen.</translation>
        </message>
        <message>
            <source>A patch of {was:.1f} cm² is no longer seen. Root hairs fade, mold seldom does.</source>
            <translation>Eine Stelle von {was:.1f} cm² ist nicht mehr zu sehen. Wurzelhaare vergehen, Schimmel selten.</translation>
        </message>
        <message>
            <source>No longer seen on {day:%d %B}, {was:.1f} cm² before. Root hairs fade, mold seldom does.</source>
            <translation>Seit {day:%d %B} nicht mehr zu sehen, vorher {was:.1f} cm². Wurzelhaare vergehen, Schimmel selten.</translation>
        </message>
        <message>
            <source>These trays were scored by different versions of the method, so they are not compared: score their photos again.</source>
            <translation>Diese Schalen wurden mit verschiedenen Versionen der Methode ausgewertet, darum werden sie nicht verglichen: ihre Fotos neu auswerten.</translation>
        </message>
        <message>
            <source>{left_out} of {photos} photos were scored by another version of the method and are left out of this comparison: score them again to have them in it.</source>
            <translation>{left_out} von {photos} Fotos wurden mit einer anderen Version der Methode ausgewertet und fehlen in diesem Vergleich: neu auswerten, um sie aufzunehmen.</translation>
        </message>
        <message>
            <source>{given} is far from what is usual; read in {meant} it would be {instead}. Which one is it?</source>
            <translation>{given} liegt weit vom Üblichen; in {meant} gelesen wären es {instead}. Was stimmt?</translation>
        </message>
        <message>
            <source>{given} is far from what it was before; read in {meant} it would be {instead}. Which one is it?</source>
            <translation>{given} liegt weit von dem, was vorher war; in {meant} gelesen wären es {instead}. Was stimmt?</translation>
        </message>
        <message>
            <source>“{text}” can be {one} or {two}. Which one is it?</source>
            <translation>„{text}“ kann {one} oder {two} sein. Was stimmt?</translation>
        </message>
        <message>
            <source>“{text}” is no number: type one such as 812 g.</source>
            <translation>„{text}“ ist keine Zahl: eine wie 812 g eingeben.</translation>
        </message>
        <message>
            <source>“{unit}” is no unit of {quantity}: use {units}.</source>
            <translation>„{unit}“ ist keine Einheit für {quantity}: {units} verwenden.</translation>
        </message>
        <message>
            <source>the book in {folder} cannot be used</source>
            <translation>das Buch in {folder} kann nicht benutzt werden</translation>
        </message>
        <message>
            <source>there is no trial book in {folder}: choose the folder that holds book.sqlite, or start a new book</source>
            <translation>in {folder} ist kein Versuchsbuch: den Ordner wählen, in dem book.sqlite liegt, oder ein neues Buch beginnen</translation>
        </message>
        <message>
            <source>book.sqlite in {folder} is damaged, or is no trial book, and no backup stands beside it; it was left as it is: delete book.sqlite-wal and book.sqlite-shm if they are there and copy a backup of yours over it, or choose another folder</source>
            <translation>book.sqlite in {folder} ist beschädigt oder kein Versuchsbuch, und keine Sicherung liegt daneben; es blieb, wie es war: book.sqlite-wal und book.sqlite-shm löschen, falls sie da sind, und eine eigene Sicherung darüberkopieren oder einen anderen Ordner wählen</translation>
        </message>
        <message>
            <source>there is a trial book in {folder} already, left as it is: open it, or choose another folder</source>
            <translation>in {folder} ist schon ein Versuchsbuch, es blieb, wie es war: dieses öffnen oder einen anderen Ordner wählen</translation>
        </message>
        <message>
            <source>the book in {folder} was written by a newer Evenstand and was left as it is: bring this program up to date</source>
            <translation>das Buch in {folder} wurde von einem neueren Evenstand geschrieben und blieb, wie es war: dieses Programm auf den neuesten Stand bringen</translation>
        </message>
        <message>
            <source>the book in {folder} is being written by another window or program, and nothing was changed: wait until that is done, or close it, and try again</source>
            <translation>in das Buch in {folder} schreibt gerade ein anderes Fenster oder Programm, und nichts wurde geändert: warten, bis das fertig ist, oder es schließen, und noch einmal versuchen</translation>
        </message>
        <message>
            <source>the book in {folder} may only be read, and nothing was changed: allow writing in that folder, or copy the whole folder to a place where you may write</source>
            <translation>das Buch in {folder} darf nur gelesen werden, und nichts wurde geändert: in diesem Ordner das Schreiben erlauben, oder den ganzen Ordner dorthin kopieren, wo geschrieben werden darf</translation>
        </message>
        <message>
            <source>the disk that holds {folder} is full; everything kept so far is safe: make room (the folder cache in it may be deleted) and try again</source>
            <translation>die Platte mit {folder} ist voll; alles bisher Gespeicherte ist sicher: Platz schaffen (der Ordner cache darin darf gelöscht werden) und noch einmal versuchen</translation>
        </message>
        <message>
            <source>the book in {folder} is damaged and was left as it is: close the program, delete book.sqlite-wal and book.sqlite-shm if they are there, and copy the newest file from its folder backups over book.sqlite; your photos in it are untouched</source>
            <translation>das Buch in {folder} ist beschädigt und blieb, wie es war: das Programm schließen, book.sqlite-wal und book.sqlite-shm löschen, falls sie da sind, und die neueste Datei aus dem Ordner backups darin über book.sqlite kopieren; die Fotos darin sind unversehrt</translation>
        </message>
        <message>
            <source>the book in {folder} cannot be reached: look whether the disk or network folder is there, then try again</source>
            <translation>das Buch in {folder} ist nicht zu erreichen: nachsehen, ob Platte oder Netzordner da ist, dann noch einmal versuchen</translation>
        </message>
        <message>
            <source>the book in {folder} was closed meanwhile; what was kept in it is safe: open it again</source>
            <translation>das Buch in {folder} wurde inzwischen geschlossen; was darin gespeichert wurde, ist sicher: wieder öffnen</translation>
        </message>
        <message>
            <source>tag {tag} is on {code}, which still grows: take another tag, or first note on the sheet of {code} that it was cut or thrown away</source>
            <translation>Schild {tag} ist an {code}, die noch wächst: ein anderes Schild nehmen, oder erst auf dem Blatt von {code} vermerken, dass sie geschnitten oder weggeworfen wurde</translation>
        </message>
        <message>
            <source>nothing was changed, since what this was about is no longer in the book in {folder}: it was taken back, deleted or scored again meanwhile, here or in another window; look again</source>
            <translation>nichts wurde geändert, denn worum es ging, steht nicht mehr im Buch in {folder}: es wurde inzwischen rückgängig gemacht, gelöscht oder neu ausgewertet, hier oder in einem anderen Fenster; bitte neu nachsehen</translation>
        </message>
        <message>
            <source>nothing was kept, since a number cannot be right: {why}</source>
            <translation>nichts wurde gespeichert, denn eine Zahl kann nicht stimmen: {why}</translation>
        </message>
        <message>
            <source>the photograph {folder} cannot be read, and none of those chosen with it were kept: look whether it is still there, then choose them once more</source>
            <translation>das Foto {folder} kann nicht gelesen werden, und keines der mit ihm gewählten wurde gespeichert: nachsehen, ob es noch da ist, und sie dann noch einmal wählen</translation>
        </message>
        <message>
            <source>nothing was kept, since a number about a medium cannot be right: {why}</source>
            <translation>nichts wurde gespeichert, denn eine Zahl zu einem Substrat kann nicht stimmen: {why}</translation>
        </message>
        <message>
            <source>"{what}" was kept before, and nothing was changed: say why it is changed, the reason is kept with it</source>
            <translation>„{what}“ wurde schon festgehalten, und nichts wurde geändert: angeben, warum es geändert wird; der Grund wird mit gespeichert</translation>
        </message>
        <message>
            <source>{trial} has a plan, so its margin was not set here: change it in the plan, with a reason</source>
            <translation>{trial} hat einen Plan, darum wurde der Spielraum hier nicht festgelegt: im Plan ändern, mit einer Begründung</translation>
        </message>
        <message>
            <source>{trial} is watered by "{watering}", and a tray can only be noted as watered from the bottom, from the top or both: change the plan, and note how much and how often with each tray as water given</source>
            <translation>{trial} wird „{watering}“ bewässert, und eine Schale lässt sich nur als von unten, von oben oder beides bewässert notieren: den Plan ändern, und wie viel und wie oft bei jeder Schale als Wassergabe notieren</translation>
        </message>
        <message>
            <source>verdicts of this program hold with a confidence of {fixed:.0%}, and a plan with {level:.1%} was not kept: leave its level at {fixed:.2f}</source>
            <translation>Urteile dieses Programms gelten mit einer Sicherheit von {fixed:.0%}, und ein Plan mit {level:.1%} wurde nicht festgehalten: die Sicherheit bei {fixed:.2f} lassen</translation>
        </message>
        <message>
            <source>there are not enough free tags (10 to 586) for all trays that stand at the same time: note which trays were cut or thrown away, or plan fewer trays a round</source>
            <translation>für alle Schalen, die zugleich stehen, gibt es nicht genug freie Schilder (10 bis 586): vermerken, welche Schalen geschnitten oder weggeworfen wurden, oder weniger Schalen je Runde planen</translation>
        </message>
        <message>
            <source>"{change}" cannot be taken back, since photos or notes kept later rest on it</source>
            <translation>„{change}“ lässt sich nicht zurücknehmen, weil später gespeicherte Fotos oder Notizen darauf beruhen</translation>
        </message>
        <message>
            <source>A screening estimate from your inputs: no certified assessment, and not for labels. Medium, ways, tray and the electricity that you enter are in it. Seed, light and heating are not unless you enter them, and often outweigh the medium. Carbon that plant fibre took up and gives back counts as nought; peat's counts.</source>
            <translation>Eine grobe Schätzung aus den eigenen Angaben: keine geprüfte Bilanz, und nicht für Etiketten. Enthalten sind Substrat, Wege, Schale und der angegebene Strom. Saatgut, Licht und Heizung nur, wenn sie angegeben sind; oft wiegen sie schwerer als das Substrat. Kohlenstoff, den Pflanzenfasern aufnahmen und wieder abgeben, zählt null; der von Torf zählt.</translation>
        </message>
        <message>
            <source>Weigh the cut of a tray: then it can be reckoned by the kg.</source>
            <translation>Den Schnitt einer Schale wiegen: dann lässt es sich je kg rechnen.</translation>
        </message>
        <message>
            <source>The yield is zero: nothing can be reckoned by the kg of cut.</source>
            <translation>Der Ertrag ist null: je kg Schnitt lässt sich nichts rechnen.</translation>
        </message>
        <message>
            <source>The newest photo shows no open patch there any more.</source>
            <translation>Das neueste Foto zeigt dort keine offene Stelle mehr.</translation>
        </message>
        <message>
            <source>The canopy is back to what it was.</source>
            <translation>Der Bestand ist wieder, wie er war.</translation>
        </message>
        <message>
            <source>It was watered, or the newest weight is above what it wants.</source>
            <translation>Sie wurde gegossen, oder das neueste Gewicht liegt über dem nötigen.</translation>
        </message>
        <message>
            <source>The air is drier, or the stack was opened.</source>
            <translation>Die Luft ist trockener, oder der Stapel wurde geöffnet.</translation>
        </message>
        <message>
            <source>It has come up, in line with the others.</source>
            <translation>Sie ist aufgelaufen, wie die anderen.</translation>
        </message>
        <message>
            <source>It is in line with its block mates again.</source>
            <translation>Sie ist wieder gleichauf mit den anderen ihres Blocks.</translation>
        </message>
        <message>
            <source>The edge has closed, or is in line with that of its block mates.</source>
            <translation>Der Rand hat sich geschlossen oder ist wie bei den anderen ihres Blocks.</translation>
        </message>
        <message>
            <source>The bare parts have come up.</source>
            <translation>Die kahlen Teile sind aufgelaufen.</translation>
        </message>
        <message>
            <source>The gaps have closed, or are in line with those of its block mates.</source>
            <translation>Die Lücken haben sich geschlossen oder sind wie bei den anderen ihres Blocks.</translation>
        </message>
        <message>
            <source>It is as even as its block mates.</source>
            <translation>Sie ist so gleichmäßig wie die anderen ihres Blocks.</translation>
        </message>
        <message>
            <source>The colour is back.</source>
            <translation>Die Farbe ist wieder da.</translation>
        </message>
        <message>
            <source>The photo has its tray, or another one was taken.</source>
            <translation>Das Foto hat seine Schale, oder ein anderes wurde gemacht.</translation>
        </message>
        <message>
            <source>It was photographed, or the day is over.</source>
            <translation>Sie wurde fotografiert, oder der Tag ist vorbei.</translation>
        </message>
        <message>
            <source>Another photo was used, or the day is over.</source>
            <translation>Ein anderes Foto wurde verwendet, oder der Tag ist vorbei.</translation>
        </message>
        <message>
            <source>Another photo was taken, or the day is over.</source>
            <translation>Ein anderes Foto wurde aufgenommen, oder der Tag ist vorbei.</translation>
        </message>
        <message>
            <source>It still gains, or the days of cutting were changed.</source>
            <translation>Sie legt noch zu, oder die Tage des Schnitts wurden geändert.</translation>
        </message>
        <message>
            <source>The word mold was taken back.</source>
            <translation>Die Angabe „Schimmel“ wurde zurückgenommen.</translation>
        </message>
        <message>
            <source>What the newest photo shows there is faint and has not grown; the tray sheet shows it.</source>
            <translation>Was das neueste Foto dort zeigt, ist schwach und nicht gewachsen; das Schalenblatt zeigt es.</translation>
        </message>
        <message>
            <source>The newest photo does not show the patch, nor that it is gone: look under the leaves there.</source>
            <translation>Das neueste Foto zeigt die Stelle nicht, aber auch nicht, dass sie weg ist: dort unter den Blättern nachsehen.</translation>
        </message>
        <message>
            <source>The tray was cut.</source>
            <translation>Die Schale wurde geschnitten.</translation>
        </message>
        <message>
            <source>The tray was thrown away.</source>
            <translation>Die Schale wurde weggeworfen.</translation>
        </message>
        <message>
            <source>The tray was marked as done.</source>
            <translation>Die Schale wurde als beendet vermerkt.</translation>
        </message>
        <message>
            <source>You said mold.</source>
            <translation>Als Schimmel bestätigt.</translation>
        </message>
        <message>
            <source>You said not mold.</source>
            <translation>Als kein Schimmel angegeben.</translation>
        </message>
        <message>
            <source>No photo of today or yesterday says how it stands now.</source>
            <translation>Kein Foto von heute oder gestern sagt, wie es jetzt steht.</translation>
        </message>
        <message>
            <source>Leaves were likely wet for {wet:.0f} of {known:.0f} logged hours.</source>
            <translation>Blätter waren in {wet:.0f} von {known:.0f} aufgezeichneten Stunden wahrscheinlich nass.</translation>
        </message>
        <message>
            <source>Leaves were likely wet for {wet:.0f} of {known:.0f} logged hours, {hot:.0f} of them warm.</source>
            <translation>Blätter waren in {wet:.0f} von {known:.0f} aufgezeichneten Stunden wahrscheinlich nass, in {hot:.0f} davon war es warm.</translation>
        </message>
        <message>
            <source>No temperature and humidity were logged in this time.</source>
            <translation>In dieser Zeit wurden weder Temperatur noch Feuchte aufgezeichnet.</translation>
        </message>
        <message>
            <source>Air since it was moved to this shelf: {mean:.1f} °C on average, {total:.0f} degree days above {base:g} °C; logged for {known:.0f} of {whole:.0f} hours.</source>
            <translation>Luft seit dem Umstellen auf diese Etage: im Mittel {mean:.1f} °C, {total:.0f} Gradtage über {base:g} °C; aufgezeichnet in {known:.0f} von {whole:.0f} Stunden.</translation>
        </message>
        <message>
            <source>Air from sowing on: {mean:.1f} °C on average, {total:.0f} degree days above {base:g} °C; logged for {known:.0f} of {whole:.0f} hours.</source>
            <translation>Luft seit der Saat: im Mittel {mean:.1f} °C, {total:.0f} Gradtage über {base:g} °C; aufgezeichnet in {known:.0f} von {whole:.0f} Stunden.</translation>
        </message>
        <message>
            <source>Its humidity: {humidity:.0f} % on average, vapour pressure deficit {deficit:.2f} kPa.</source>
            <translation>Ihre Feuchte: im Mittel {humidity:.0f} %, Sättigungsdefizit {deficit:.2f} kPa.</translation>
        </message>
        <message>
            <source>{value:.0f} g of dry seed is unusual for {crop} on this tray: {low:.0f} to {high:.0f} g is common. Look whether the number and its unit are right.</source>
            <translation>{value:.0f} g trockenes Saatgut ist für {crop} auf dieser Schale ungewöhnlich: üblich sind {low:.0f} bis {high:.0f} g. Nachsehen, ob Zahl und Einheit stimmen.</translation>
        </message>
        <message>
            <source>{days:.1f} days covered is unusual for {crop}: {low:.0f} to {high:.0f} days is common.</source>
            <translation>{days:.1f} Tage abgedeckt ist für {crop} ungewöhnlich: üblich sind {low:.0f} bis {high:.0f} Tage.</translation>
        </message>
        <message>
            <source>{crop} is commonly sown dry; {hours:.0f} hours of soaking were noted.</source>
            <translation>{crop} wird meist trocken gesät; notiert sind {hours:.0f} Stunden Einweichen.</translation>
        </message>
        <message>
            <source>A soak of {hours:.0f} h is unusual for {crop}: {low:.0f} to {high:.0f} h is common.</source>
            <translation>{hours:.0f} h Einweichen ist für {crop} ungewöhnlich: üblich sind {low:.0f} bis {high:.0f} h.</translation>
        </message>
        <message>
            <source>The blackout ends before it begins: look at its two times.</source>
            <translation>Die Dunkelphase endet, bevor sie beginnt: die beiden Zeiten prüfen.</translation>
        </message>
        <message>
            <source>The sowing lies a day ahead: look at the date.</source>
            <translation>Die Aussaat liegt einen Tag in der Zukunft: das Datum prüfen.</translation>
        </message>
        <message>
            <source>The sowing lies {days} days ahead: look at the date.</source>
            <translation>Die Aussaat liegt {days} Tage in der Zukunft: das Datum prüfen.</translation>
        </message>
        <message>
            <source>{value:.0f} g stands against {last:.0f} g before: look whether a digit or the unit has slipped.</source>
            <translation>{value:.0f} g stehen {last:.0f} g vorher gegenüber: nachsehen, ob eine Ziffer oder die Einheit verrutscht ist.</translation>
        </message>
        <message>
            <source>{kind} of {value:g} {unit} is unusual: {low:g} to {high:g} {unit} is common. Look whether the number and its unit are right.</source>
            <translation>{kind} von {value:g} {unit} ist ungewöhnlich: üblich sind {low:g} bis {high:g} {unit}. Nachsehen, ob Zahl und Einheit stimmen.</translation>
        </message>
        <message>
            <source>The inner area of this tray is {times:.2f} times as long as wide, and pictures show it 2 times as long: shares, areas and places are right, while the outer band of 25 mm is up to {off:.0f} % off, and the rim is found by the station alone.</source>
            <translation>Die Innenfläche dieser Schale ist {times:.2f}-mal so lang wie breit, und Bilder zeigen sie 2-mal so lang: Anteile, Flächen und Orte stimmen, der äußere Streifen von 25 mm weicht bis zu {off:.0f} % ab, und den Rand findet nur die Station.</translation>
        </message>
        <message>
            <source>A cut on day {day:.0f} is unusual for {crop}: day {low:.0f} to {high:.0f} is common.</source>
            <translation>Ein Schnitt an Tag {day:.0f} ist für {crop} ungewöhnlich: üblich ist Tag {low:.0f} bis {high:.0f}.</translation>
        </message>
        <message>
            <source>From its own growth and the {trays} trays of the crop cut before.</source>
            <translation>Nach ihrem eigenen Wachstum und den {trays} früher geschnittenen Schalen der Kultur.</translation>
        </message>
        <message>
            <source>From the {trays} trays of the crop cut before.</source>
            <translation>Nach den {trays} früher geschnittenen Schalen der Kultur.</translation>
        </message>
        <message>
            <source>Usual for the crop is day {low:.0f} to {high:.0f}; your own trays do not tell it yet.</source>
            <translation>Üblich ist für die Kultur Tag {low:.0f} bis {high:.0f}; die eigenen Schalen sagen es noch nicht.</translation>
        </message>
        <message>
            <source>The day of the cut can be told once {trays} trays of the crop were cut.</source>
            <translation>Der Tag des Schnitts lässt sich sagen, sobald {trays} Schalen der Kultur geschnitten wurden.</translation>
        </message>
        <message>
            <source>not said yet</source>
            <translation>noch nicht angegeben</translation>
        </message>
        <message>
            <source>mat</source>
            <translation>Matte</translation>
        </message>
        <message>
            <source>loose mix</source>
            <translation>loses Substrat</translation>
        </message>
        <message>
            <source>something else</source>
            <translation>etwas anderes</translation>
        </message>
        <message>
            <source>A mat: one piece of felt, fibre, paper or foam</source>
            <translation>Eine Matte: ein Stück aus Filz, Fasern, Papier oder Schaum</translation>
        </message>
        <message>
            <source>A loose mix that is filled in: peat, coir, soil, perlite</source>
            <translation>Loses Substrat, das eingefüllt wird: Torf, Kokos, Erde, Perlit</translation>
        </message>
        <message>
            <source>Something else, such as a grid over water</source>
            <translation>Etwas anderes, etwa ein Gitter über Wasser</translation>
        </message>
        <message>
            <source>Not said yet</source>
            <translation>Noch nicht angegeben</translation>
        </message>
        <message>
            <source>At a thin edge the look list says: a mat that has dried does not rewet by itself, so wet it from above.</source>
            <translation>Bei dünnem Rand sagt die Blickliste: Eine getrocknete Matte saugt sich nicht von selbst wieder voll, also von oben befeuchten.</translation>
        </message>
        <message>
            <source>At a thin edge the look list says: loose mix that has dried shrinks from the wall and water runs past it, so wet it slowly from above.</source>
            <translation>Bei dünnem Rand sagt die Blickliste: Getrocknetes loses Substrat schrumpft von der Wand weg und Wasser läuft daran vorbei, also langsam von oben befeuchten.</translation>
        </message>
        <message>
            <source>At a thin edge the look list gives the advice that holds for any medium.</source>
            <translation>Bei dünnem Rand gibt die Blickliste den Rat, der für jedes Substrat gilt.</translation>
        </message>
        <message>
            <source>A verdict takes two media to lie at one height where both are mats or both are loose mixes, seated alike; all others it takes to lie at different heights.</source>
            <translation>Ein Urteil nimmt zwei Substrate als gleich hoch liegend an, wenn beide Matten oder beide lose sind und gleich liegen; bei allen anderen nimmt es verschiedene Höhen an.</translation>
        </message>
        <message>
            <source>The coverage follows no growth curve so far.</source>
            <translation>Die Deckung folgt bisher keiner Wachstumskurve.</translation>
        </message>
        <message>
            <source>Photos of one day are there; a growth curve needs {needed}.</source>
            <translation>Fotos von einem Tag sind da; eine Wachstumskurve braucht {needed}.</translation>
        </message>
        <message>
            <source>Photos of {seen} days are there; a growth curve needs {needed}.</source>
            <translation>Fotos von {seen} Tagen sind da; eine Wachstumskurve braucht {needed}.</translation>
        </message>
        <message>
            <source>The crop is not up yet: at most {most:.0f} % coverage so far.</source>
            <translation>Die Kultur ist noch nicht aufgelaufen: bisher höchstens {most:.0f} % Deckung.</translation>
        </message>
        <message>
            <source>The photos do not tell the curve yet: more days are needed.</source>
            <translation>Die Fotos lassen die Kurve noch nicht erkennen: es braucht mehr Tage.</translation>
        </message>
        <message>
            <source>The tray is not at half of its growth yet: the curve cannot be told.</source>
            <translation>Die Schale hat die Hälfte ihres Wachstums noch nicht erreicht: die Kurve ist nicht zu erkennen.</translation>
        </message>
        <message>
            <source>The first photo came after half of the growth: the curve cannot be told.</source>
            <translation>Das erste Foto kam nach der Hälfte des Wachstums: die Kurve ist nicht zu erkennen.</translation>
        </message>
        <message>
            <source>The photos do not tell yet at which coverage the growth will end.</source>
            <translation>Die Fotos lassen noch nicht erkennen, bei welcher Deckung das Wachstum endet.</translation>
        </message>
        <message>
            <source>The coverage does not follow one growth curve: look at the photos of single days.</source>
            <translation>Die Deckung folgt nicht einer Wachstumskurve: die Fotos einzelner Tage ansehen.</translation>
        </message>
        <message>
            <source>The growth ends at {upper:.0f} % coverage: 50 % is never reached.</source>
            <translation>Das Wachstum endet bei {upper:.0f} % Deckung: 50 % werden nie erreicht.</translation>
        </message>
        <message>
            <source>Electric heat and water together: use a mat made for wet places, a residual-current (ground-fault) protected outlet, cables that drip away from it, and follow the maker's and local electrical rules.</source>
            <translation>Heizstrom und Wasser zusammen: eine für Nassräume gebaute Matte verwenden, eine Steckdose mit Fehlerstromschutz (FI), Kabel so führen, dass Wasser von der Dose weg abtropft, und die Angaben des Herstellers sowie die örtlichen Vorschriften für Elektroanlagen einhalten.</translation>
        </message>
        <message>
            <source>Read the air beside the tray, too: the medium falls to it.</source>
            <translation>Auch die Luft neben der Schale messen: das Substrat kühlt bis auf sie ab.</translation>
        </message>
        <message>
            <source>Two temperatures bear the same time: mend one of them.</source>
            <translation>Zwei Temperaturen haben dieselbe Zeit: eine davon berichtigen.</translation>
        </message>
        <message>
            <source>Read the medium twice, an hour apart, with the heat mat off.</source>
            <translation>Das Substrat zweimal messen, im Abstand von einer Stunde bei ausgeschalteter Heizmatte.</translation>
        </message>
        <message>
            <source>It did not cool: was the heat mat still on?</source>
            <translation>Es kühlte nicht ab: war die Heizmatte noch an?</translation>
        </message>
        <message>
            <source>It fell too little, or too unevenly, to tell how fast: read it for longer.</source>
            <translation>Es fiel zu wenig oder zu ungleichmäßig, um zu sagen, wie schnell: länger ablesen.</translation>
        </message>
        <message>
            <source>Warm it at least 4 K above the air first: so near to it nothing can be told.</source>
            <translation>Erst mindestens 4 K über die Luft erwärmen: so nah an ihr lässt sich nichts sagen.</translation>
        </message>
        <message>
            <source>It had fallen to the air's warmth before the second reading, as thin media do: warm it again, and read it after a quarter and half an hour.</source>
            <translation>Es war vor dem zweiten Messwert schon auf Lufttemperatur gefallen, wie bei dünnen Substraten: noch einmal erwärmen und nach einer Viertel- und einer halben Stunde messen.</translation>
        </message>
        <message>
            <source>Read the air beside the tray as well.</source>
            <translation>Auch die Luft neben der Schale messen.</translation>
        </message>
        <message>
            <source>Read the medium over the heat mat after it has been on for half a day.</source>
            <translation>Das Substrat über der Heizmatte messen, nachdem sie einen halben Tag an war.</translation>
        </message>
        <message>
            <source>It is still getting warmer: read it again in three hours.</source>
            <translation>Es wird noch wärmer: in drei Stunden wieder messen.</translation>
        </message>
        <message>
            <source>The clocks were set back, {when:%H:%M} came twice: the first is taken, in line {line}.</source>
            <translation>Die Uhren wurden zurückgestellt, {when:%H:%M} kam zweimal: die erste wird genommen, in Zeile {line}.</translation>
        </message>
        <message>
            <source>There is a reading of the same time already, in line {line}: the first is taken.</source>
            <translation>Einen Messwert derselben Zeit gibt es schon, in Zeile {line}: der erste wird genommen.</translation>
        </message>
        <message>
            <source>The row has no time.</source>
            <translation>Die Zeile hat keine Zeit.</translation>
        </message>
        <message>
            <source>“{text}” is no date and time.</source>
            <translation>„{text}“ ist kein Datum mit Uhrzeit.</translation>
        </message>
        <message>
            <source>“{text}” is no day of the calendar.</source>
            <translation>„{text}“ ist kein Tag im Kalender.</translation>
        </message>
        <message>
            <source>The clocks were set forward, there was no {text}: in which zone does the logger live?</source>
            <translation>Die Uhren wurden vorgestellt, {text} gab es nicht: in welcher Zeitzone läuft der Logger?</translation>
        </message>
        <message>
            <source>“{text}” is no number.</source>
            <translation>„{text}“ ist keine Zahl.</translation>
        </message>
        <message>
            <source>The first line names no column for {what}. A line is one tray, with at least crop, medium and the day of sowing.</source>
            <translation>Die erste Zeile nennt keine Spalte für {what}. Eine Zeile ist eine Schale, mindestens mit Kultur, Substrat und Tag der Aussaat.</translation>
        </message>
        <message>
            <source>No day of sowing could be read: write days like 2026-03-02.</source>
            <translation>Kein Tag der Aussaat war zu lesen: Tage wie 2026-03-02 schreiben.</translation>
        </message>
        <message>
            <source>Is {written} the day {days}?</source>
            <translation>Ist {written} der {days}?</translation>
        </message>
        <message>
            <source>Is {written} the day {first:%Y-%m-%d} or {second:%Y-%m-%d}?</source>
            <translation>Ist {written} der {first:%d. %B %Y} oder der {second:%d. %B %Y}?</translation>
        </message>
        <message>
            <source>Line {line}: {why}; it was left out.</source>
            <translation>Zeile {line}: {why}; sie wurde weggelassen.</translation>
        </message>
        <message>
            <source>no {what} is named</source>
            <translation>{what} fehlt</translation>
        </message>
        <message>
            <source>“{day}” is no day after the sowing</source>
            <translation>„{day}“ ist kein Tag nach der Aussaat</translation>
        </message>
        <message>
            <source>“{day}” is no day</source>
            <translation>„{day}“ ist kein Tag</translation>
        </message>
        <message>
            <source>“{day}” has not come yet</source>
            <translation>„{day}“ ist noch nicht gekommen</translation>
        </message>
        <message>
            <source>“{text}” cannot be {what}</source>
            <translation>„{text}“ kann nicht {what} sein</translation>
        </message>
        <message>
            <source>The file is too large to be a table of trays.</source>
            <translation>Die Datei ist zu groß für eine Tabelle von Schalen.</translation>
        </message>
        <message>
            <source>The file is empty.</source>
            <translation>Die Datei ist leer.</translation>
        </message>
        <message>
            <source>The file has more than {most} lines: cut it into parts.</source>
            <translation>Die Datei hat mehr als {most} Zeilen: sie in Teile schneiden.</translation>
        </message>
        <message>
            <source>Which column holds the date and time?</source>
            <translation>Welche Spalte enthält Datum und Uhrzeit?</translation>
        </message>
        <message>
            <source>Which column holds the readings, and what was measured?</source>
            <translation>Welche Spalte enthält die Messwerte, und was wurde gemessen?</translation>
        </message>
        <message>
            <source>Of which tray or shelf are these readings?</source>
            <translation>Von welcher Schale oder Etage sind diese Messwerte?</translation>
        </message>
        <message>
            <source>Columns {columns} are all {kind} of one place: which one is it?</source>
            <translation>Die Spalten {columns} sind alle {kind} von einem Ort: welche ist es?</translation>
        </message>
        <message>
            <source>column {number}</source>
            <translation>Spalte {number}</translation>
        </message>
        <message>
            <source>Which day is {written}?</source>
            <translation>Welcher Tag ist {written}?</translation>
        </message>
        <message>
            <source>{day:%d %B %Y}</source>
            <translation>{day:%d. %B %Y}</translation>
        </message>
        <message>
            <source>In which unit is column {number}, {kind}? Its middle value is {middle:g}.</source>
            <translation>In welcher Einheit ist Spalte {number}, {kind}? Ihr mittlerer Wert ist {middle:g}.</translation>
        </message>
        <message>
            <source>{unit}</source>
            <translation>{unit}</translation>
        </message>
        <message>
            <source>There is no time zone “{zone}”: type one such as Europe/Paris.</source>
            <translation>Eine Zeitzone „{zone}“ gibt es nicht: eine wie Europe/Paris eingeben.</translation>
        </message>
        <message>
            <source>Dates are read as {order}: so the days follow each other, and none lies ahead.</source>
            <translation>Die Daten werden als {order} gelesen: so folgen die Tage aufeinander, und keiner liegt in der Zukunft.</translation>
        </message>
        <message>
            <source>Readings go on until {last:%d %B %Y}: is the clock of the logger right?</source>
            <translation>Die Messwerte gehen bis {last:%d. %B %Y}: geht die Uhr des Loggers richtig?</translation>
        </message>
        <message>
            <source>Each time says its zone; it is kept as the rack's clock shows it.</source>
            <translation>Jede Zeit nennt ihre Zone; gespeichert wird sie, wie die Uhr am Regal sie zeigt.</translation>
        </message>
        <message>
            <source>Times are those of {zone}; they are kept as the rack's clock shows them.</source>
            <translation>Die Zeiten sind die von {zone}; gespeichert werden sie, wie die Uhr am Regal sie zeigt.</translation>
        </message>
        <message>
            <source>Times are taken as the rack's own clock shows them.</source>
            <translation>Die Zeiten werden genommen, wie die Uhr am Regal sie zeigt.</translation>
        </message>
        <message>
            <source>There is no time of day: noon is taken.</source>
            <translation>Eine Uhrzeit fehlt: 12 Uhr mittags wird genommen.</translation>
        </message>
        <message>
            <source>1 reading lies in the hour that came twice when the clocks were set back.</source>
            <translation>1 Messwert liegt in der Stunde, die es beim Zurückstellen der Uhren zweimal gab.</translation>
        </message>
        <message>
            <source>{count} readings lie in the hour that came twice when the clocks were set back.</source>
            <translation>{count} Messwerte liegen in der Stunde, die beim Zurückstellen der Uhren zweimal kam.</translation>
        </message>
        <message>
            <source>The file is larger than 200 MB: cut it into parts.</source>
            <translation>Die Datei ist größer als 200 MB: in Teile zerlegen.</translation>
        </message>
        <message>
            <source>There is no table in the file: no line has a time and a number.</source>
            <translation>In der Datei ist keine Tabelle: keine Zeile hat eine Zeit und eine Zahl.</translation>
        </message>
        <message>
            <source>No line of the file begins with a date or time that can be read.</source>
            <translation>Keine Zeile der Datei beginnt mit einem lesbaren Datum oder einer Uhrzeit.</translation>
        </message>
        <message>
            <source>The letters of the file cannot be read as {encoding}.</source>
            <translation>Die Zeichen der Datei lassen sich nicht als {encoding} lesen.</translation>
        </message>
        <message>
            <source>This is no text file: choose the CSV or text file of the logger.</source>
            <translation>Das ist keine Textdatei: die CSV- oder Textdatei des Loggers wählen.</translation>
        </message>
        <message>
            <source>There is no table in the file: a line is too long.</source>
            <translation>In der Datei ist keine Tabelle: eine Zeile ist zu lang.</translation>
        </message>
        <message>
            <source>January</source>
            <translation>Januar</translation>
        </message>
        <message>
            <source>February</source>
            <translation>Februar</translation>
        </message>
        <message>
            <source>March</source>
            <translation>März</translation>
        </message>
        <message>
            <source>April</source>
            <translation>April</translation>
        </message>
        <message>
            <source>May</source>
            <translation>Mai</translation>
        </message>
        <message>
            <source>June</source>
            <translation>Juni</translation>
        </message>
        <message>
            <source>July</source>
            <translation>Juli</translation>
        </message>
        <message>
            <source>August</source>
            <translation>August</translation>
        </message>
        <message>
            <source>September</source>
            <translation>September</translation>
        </message>
        <message>
            <source>October</source>
            <translation>Oktober</translation>
        </message>
        <message>
            <source>November</source>
            <translation>November</translation>
        </message>
        <message>
            <source>December</source>
            <translation>Dezember</translation>
        </message>
        <message>
            <source>{day} {month}</source>
            <translation>{day}. {month}</translation>
        </message>
        <message>
            <source>{codes}: {what}</source>
            <translation>{codes}: {what}</translation>
        </message>
        <message>
            <source>{codes} and {more} more: {what}</source>
            <translation>{codes} und {more} weitere: {what}</translation>
        </message>
        <message>
            <source>Photograph the tray again; what the list says of it rests on this photo until then.</source>
            <translation>Die Schale noch einmal fotografieren; bis dahin beruht auf diesem Foto, was die Liste von ihr sagt.</translation>
        </message>
        <message>
            <source>Today's photo is in doubt: {why}.</source>
            <translation>Das heutige Foto ist zweifelhaft: {why}.</translation>
        </message>
        <message>
            <source>{one}; {other}</source>
            <translation>{one}; {other}</translation>
        </message>
        <message>
            <source>Lift the cover and look at the seed: is it moist, has it split, is the tray colder than its mates?</source>
            <translation>Die Abdeckung anheben und das Saatgut ansehen: ist es feucht, ist es aufgeplatzt, ist die Schale kälter als die anderen?</translation>
        </message>
        <message>
            <source>Lift the tray: is it lighter than its mates, is the medium dry, is its place darker or colder?</source>
            <translation>Die Schale anheben: ist sie leichter als die anderen, ist das Substrat trocken, ist ihr Platz dunkler oder kälter?</translation>
        </message>
        <message>
            <source>Coverage of the growing bed {now:.0f} %, {lag:.0f} points below the middle of its block mates ({middle:.0f} %); {change}.</source>
            <translation>Deckung der Substratfläche {now:.0f} %, {lag:.0f} Punkte unter der Mitte der Schalen ihres Blocks ({middle:.0f} %); {change}.</translation>
        </message>
        <message>
            <source>Coverage {now:.0f} %, {lag:.0f} points below the middle of its block mates ({middle:.0f} %); more than on {day} ({before:.0f} points).</source>
            <translation>Deckung {now:.0f} %, {lag:.0f} Punkte unter der Mitte der Schalen ihres Blocks ({middle:.0f} %); mehr als am {day} ({before:.0f} Punkte).</translation>
        </message>
        <message>
            <source>Coverage {now:.0f} %, {lag:.0f} points below the middle of its block mates ({middle:.0f} %); less than on {day} ({before:.0f} points).</source>
            <translation>Deckung {now:.0f} %, {lag:.0f} Punkte unter der Mitte der Schalen ihres Blocks ({middle:.0f} %); weniger als am {day} ({before:.0f} Punkte).</translation>
        </message>
        <message>
            <source>Coverage {now:.0f} %, {lag:.0f} points below the middle of its block mates ({middle:.0f} %); as much as on {day} ({before:.0f} points).</source>
            <translation>Deckung {now:.0f} %, {lag:.0f} Punkte unter der Mitte der Schalen ihres Blocks ({middle:.0f} %); so viel wie am {day} ({before:.0f} Punkte).</translation>
        </message>
        <message>
            <source>more than on {day} ({before:.0f} points)</source>
            <translation>mehr als am {day} ({before:.0f} Punkte)</translation>
        </message>
        <message>
            <source>less than on {day} ({before:.0f} points)</source>
            <translation>weniger als am {day} ({before:.0f} Punkte)</translation>
        </message>
        <message>
            <source>as much as on {day} ({before:.0f} points)</source>
            <translation>so viel wie am {day} ({before:.0f} Punkte)</translation>
        </message>
        <message>
            <source>Lift the cover and look at the seed: is it moist, has it split? Where all trays of a sowing are late, think of the cold and of the seed lot.</source>
            <translation>Die Abdeckung anheben und das Saatgut ansehen: ist es feucht, ist es aufgeplatzt? Wenn alle Schalen einer Aussaat spät sind, an Kälte und an die Saatgutpartie denken.</translation>
        </message>
        <message>
            <source>Coverage of the growing bed {now:.0f} % on day {age}; earlier trays of {crop} had {middle:.0f} % at that age, and on {day} it was behind them too.</source>
            <translation>Deckung der Substratfläche {now:.0f} % an Tag {age}; frühere Schalen mit {crop} hatten in diesem Alter {middle:.0f} %, und auch am {day} lag sie zurück.</translation>
        </message>
        <message>
            <source>Coverage {now:.0f} % on day {age}; earlier trays of {crop} had {middle:.0f} % at that age, and on {day} it was behind them too.</source>
            <translation>Deckung {now:.0f} % an Tag {age}; frühere Schalen mit {crop} hatten in diesem Alter {middle:.0f} %, und auch am {day} lag sie zurück.</translation>
        </message>
        <message>
            <source>{bare:.0f} % of the tray is bare or nearly so, while the rest has come up: {now:.0f} % coverage.</source>
            <translation>{bare:.0f} % der Schale sind ganz oder fast kahl, während der Rest aufgelaufen ist: Deckung {now:.0f} %.</translation>
        </message>
        <message>
            <source>Look into the bare parts: is there seed, is it moist, does the medium lie flat on the bottom? Seed that was sown unevenly cannot be mended; a dry part can be wetted from above once.</source>
            <translation>In die kahlen Teile sehen: liegt dort Saatgut, ist es feucht, liegt das Substrat flach auf dem Boden? Ungleich gesätes Saatgut ist nicht zu retten; ein trockener Teil kann einmal von oben befeuchtet werden.</translation>
        </message>
        <message>
            <source>The far side</source>
            <translation>Die hintere Seite</translation>
        </message>
        <message>
            <source>The near side</source>
            <translation>Die vordere Seite</translation>
        </message>
        <message>
            <source>The left side</source>
            <translation>Die linke Seite</translation>
        </message>
        <message>
            <source>The right side</source>
            <translation>Die rechte Seite</translation>
        </message>
        <message>
            <source>The far left corner</source>
            <translation>Die hintere linke Ecke</translation>
        </message>
        <message>
            <source>The far right corner</source>
            <translation>Die hintere rechte Ecke</translation>
        </message>
        <message>
            <source>The near left corner</source>
            <translation>Die vordere linke Ecke</translation>
        </message>
        <message>
            <source>The near right corner</source>
            <translation>Die vordere rechte Ecke</translation>
        </message>
        <message>
            <source>Feel the medium at the edge: where it is dry, wet it slowly from above once.</source>
            <translation>Das Substrat am Rand befühlen: wo es trocken ist, einmal langsam von oben befeuchten.</translation>
        </message>
        <message>
            <source>Feel the mat at the edge: where it has dried it does not rewet by itself, so wet it from above once.</source>
            <translation>Die Matte am Rand befühlen: wo sie ausgetrocknet ist, wird sie nicht von selbst wieder nass, also einmal von oben befeuchten.</translation>
        </message>
        <message>
            <source>Feel the medium at the edge: where it has dried and shrunk from the wall, water runs past it, so wet it slowly from above once.</source>
            <translation>Das Substrat am Rand befühlen: wo es ausgetrocknet und von der Wand weggeschrumpft ist, läuft Wasser daran vorbei, also einmal langsam von oben befeuchten.</translation>
        </message>
        <message>
            <source>The edge is {now:.0f} points thinner than the middle ({before:.0f} on {day}).</source>
            <translation>Der Rand ist {now:.0f} Punkte dünner als die Mitte (am {day} {before:.0f}).</translation>
        </message>
        <message>
            <source>The edge is {now:.0f} points thinner than the middle ({before:.0f} on {day}); its block mates have {mates:.0f} points.</source>
            <translation>Der Rand ist {now:.0f} Punkte dünner als die Mitte (am {day} {before:.0f}); die anderen ihres Blocks haben {mates:.0f} Punkte.</translation>
        </message>
        <message>
            <source>{place} is {now:.0f} points thinner than the middle, and was {begun:.0f} on {day}: it grows.</source>
            <translation>{place} ist {now:.0f} Punkte dünner als die Mitte, am {day} waren es {begun:.0f}: es nimmt zu.</translation>
        </message>
        <message>
            <source>{place} is {now:.0f} points thinner than the middle ({before:.0f} on {day}).</source>
            <translation>{place} ist {now:.0f} Punkte dünner als die Mitte (am {day} {before:.0f}).</translation>
        </message>
        <message>
            <source>Look into the gaps: bare medium, seed that did not sprout, or shoots that fell over.</source>
            <translation>In die Lücken sehen: kahles Substrat, nicht gekeimtes Saatgut oder umgefallene Triebe.</translation>
        </message>
        <message>
            <source>Without the wall that is seen, gaps take {now:.0f} % of the tray ({before:.0f} % on {day}), though the crop is up: {coverage:.0f} % coverage.</source>
            <translation>Ohne die sichtbare Wand nehmen Lücken {now:.0f} % der Schale ein (am {day} {before:.0f} %), obwohl die Kultur aufgelaufen ist: Deckung {coverage:.0f} %.</translation>
        </message>
        <message>
            <source>Gaps take {now:.0f} % of the tray ({before:.0f} % on {day}), though the crop is up: {coverage:.0f} % coverage.</source>
            <translation>Lücken nehmen {now:.0f} % der Schale ein (am {day} {before:.0f} %), obwohl die Kultur aufgelaufen ist: Deckung {coverage:.0f} %.</translation>
        </message>
        <message>
            <source>Uniformity {now:.0f} % at {coverage:.0f} % coverage.</source>
            <translation>Gleichmäßigkeit {now:.0f} % bei {coverage:.0f} % Deckung.</translation>
        </message>
        <message>
            <source>Uniformity {now:.0f} % at {coverage:.0f} % coverage; its block mates have {mates:.0f} %.</source>
            <translation>Gleichmäßigkeit {now:.0f} % bei {coverage:.0f} % Deckung; die anderen ihres Blocks haben {mates:.0f} %.</translation>
        </message>
        <message>
            <source>Look where the thin cells lie: along one side it is water or light, scattered it is seed or sowing.</source>
            <translation>Sehen, wo die dünnen Zellen liegen: entlang einer Seite ist es Wasser oder Licht, verstreut ist es Saatgut oder Aussaat.</translation>
        </message>
        <message>
            <source>Soon: its last one is older than yesterday, and most trays have none of today yet.</source>
            <translation>Bald: das letzte ist älter als von gestern, und von den meisten Schalen fehlt das von heute noch.</translation>
        </message>
        <message>
            <source>Today's photo is not used: {why}.</source>
            <translation>Das heutige Foto wird nicht verwendet: {why}.</translation>
        </message>
        <message>
            <source>Set the four corners in Intake.</source>
            <translation>Im Eingang die vier Ecken setzen.</translation>
        </message>
        <message>
            <source>Photograph the tray again.</source>
            <translation>Die Schale noch einmal fotografieren.</translation>
        </message>
        <message>
            <source>No photo yet.</source>
            <translation>Noch kein Foto.</translation>
        </message>
        <message>
            <source>No photo since {day}.</source>
            <translation>Kein Foto seit {day}.</translation>
        </message>
        <message>
            <source>Photograph the tray, with its tag in the picture.</source>
            <translation>Die Schale fotografieren, mit ihrem Schild im Bild.</translation>
        </message>
        <message>
            <source>No tag was read on what is probably today's photo, by the order of the walk.</source>
            <translation>Das Foto von heute ist nach der Reihenfolge des Rundgangs wahrscheinlich da, aber ohne gelesenes Schild.</translation>
        </message>
        <message>
            <source>Confirm the photo in Intake, and free the tag from leaves.</source>
            <translation>Das Foto im Eingang bestätigen und das Schild von Blättern befreien.</translation>
        </message>
        <message>
            <source>Compare with a tray of the same crop in good light: pale all over after the first week means hungry, pale and long means too dark, pale at the tips means too wet or too hot.</source>
            <translation>Mit einer Schale derselben Kultur bei gutem Licht vergleichen: nach der ersten Woche überall blass heißt hungrig, blass und lang heißt zu dunkel, blasse Spitzen heißt zu nass oder zu warm.</translation>
        </message>
        <message>
            <source>The dark green colour index fell from {was:.2f} around {day} to {now:.2f}, {fall:.2f} more than that of its block mates.</source>
            <translation>Der Dunkelgrün-Index fiel von {was:.2f} um den {day} auf {now:.2f}, {fall:.2f} mehr als bei den anderen ihres Blocks.</translation>
        </message>
        <message>
            <source>The dark green colour index fell from {was:.2f} around {day} to {now:.2f}; no mates tell whether the light changed.</source>
            <translation>Der Dunkelgrün-Index fiel von {was:.2f} um den {day} auf {now:.2f}; keine andere Schale sagt, ob sich das Licht geändert hat.</translation>
        </message>
        <message>
            <source>The canopy grew lighter, from L* {was:.0f} around {day} to {now:.0f}, {fall:.0f} more than its block mates.</source>
            <translation>Der Bestand wurde heller, von L* {was:.0f} um den {day} auf {now:.0f}, {fall:.0f} mehr als die anderen ihres Blocks.</translation>
        </message>
        <message>
            <source>The canopy grew lighter, from L* {was:.0f} around {day} to {now:.0f}; no mates tell whether the light changed.</source>
            <translation>Der Bestand wurde heller, von L* {was:.0f} um den {day} auf {now:.0f}; keine andere Schale sagt, ob sich das Licht geändert hat.</translation>
        </message>
        <message>
            <source>Cut it, weigh what you cut, and note the cut on the tray's sheet.</source>
            <translation>Schneiden, den Schnitt wiegen und ihn auf dem Blatt der Schale vermerken.</translation>
        </message>
        <message>
            <source>{crop} on day {age}, {now} % coverage; usually cut from day {from_day:.0f} on.</source>
            <translation>{crop} an Tag {age}, {now} % Deckung; meist ab Tag {from_day:.0f} geschnitten.</translation>
        </message>
        <message>
            <source>{crop} on day {age}, {now} % coverage; usually cut on day {from_day:.0f}.</source>
            <translation>{crop} an Tag {age}, {now} % Deckung; meist an Tag {from_day:.0f} geschnitten.</translation>
        </message>
        <message>
            <source>{crop} on day {age}, {now} % coverage; usually cut on day {from_day:.0f} to {to_day:.0f}.</source>
            <translation>{crop} an Tag {age}, {now} % Deckung; meist an Tag {from_day:.0f} bis {to_day:.0f} geschnitten.</translation>
        </message>
        <message>
            <source>Warm and wet for {hot:.0f} of the last {known:.0f} logged hours on shelf {shelf}, while it stands under others.</source>
            <translation>Warm und nass in {hot:.0f} der letzten {known:.0f} aufgezeichneten Stunden auf Etage {shelf}, während sie unter anderen steht.</translation>
        </message>
        <message>
            <source>Take the stack apart, look at each tray, let it breathe for an hour, and stack again cooler or not at all.</source>
            <translation>Den Stapel auseinandernehmen, jede Schale ansehen, eine Stunde lüften lassen und kühler oder gar nicht wieder stapeln.</translation>
        </message>
        <message>
            <source>Water it from below until it is back to its full weight, and weigh it again after it drained.</source>
            <translation>Von unten gießen, bis sie wieder ihr volles Gewicht hat, und nach dem Abtropfen wieder wiegen.</translation>
        </message>
        <message>
            <source>{last:.0f} g on {day} at {time}, {under:.0f} g under the weight at which it is dry ({dry:.0f} g).</source>
            <translation>{last:.0f} g am {day} um {time}, {under:.0f} g unter dem Gewicht, bei dem sie trocken ist ({dry:.0f} g).</translation>
        </message>
        <message>
            <source>{last:.0f} g on {day} at {time}, {pace:.0f} g less each hour: below its dry weight of {dry:.0f} g by {when} on {then}.</source>
            <translation>{last:.0f} g am {day} um {time}, jede Stunde {pace:.0f} g weniger: unter ihrem Trockengewicht von {dry:.0f} g um {when} am {then}.</translation>
        </message>
        <message>
            <source>Now: spores spread to the other trays while it stands there.</source>
            <translation>Jetzt: Sporen verbreiten sich auf die anderen Schalen, solange sie dort steht.</translation>
        </message>
        <message>
            <source>Now: it has grown, and what grows may be mold.</source>
            <translation>Jetzt: es ist gewachsen, und was wächst, kann Schimmel sein.</translation>
        </message>
        <message>
            <source>Today: if it is mold, it is larger tomorrow.</source>
            <translation>Heute: ist es Schimmel, ist er morgen größer.</translation>
        </message>
        <message>
            <source>Soon: it is faint and new; the next photo tells whether it grows.</source>
            <translation>Bald: es ist schwach und neu; das nächste Foto sagt, ob es wächst.</translation>
        </message>
        <message>
            <source>Now: wilting kills within hours, and damping off spreads.</source>
            <translation>Jetzt: Welken tötet in Stunden, und Umfallkrankheit breitet sich aus.</translation>
        </message>
        <message>
            <source>Now: it is past the weight at which it wants water.</source>
            <translation>Jetzt: das Gewicht, bei dem sie Wasser braucht, ist unterschritten.</translation>
        </message>
        <message>
            <source>Today: by tonight it is past the weight at which it wants water.</source>
            <translation>Heute: bis heute Nacht ist das Gewicht unterschritten, bei dem sie Wasser braucht.</translation>
        </message>
        <message>
            <source>Soon: it wants water tomorrow.</source>
            <translation>Bald: morgen braucht sie Wasser.</translation>
        </message>
        <message>
            <source>Today: mold begins where it stays warm and wet for hours.</source>
            <translation>Heute: Schimmel beginnt, wo es stundenlang warm und nass bleibt.</translation>
        </message>
        <message>
            <source>Today: it is far behind, and seed that lies dry or cold is soon lost.</source>
            <translation>Heute: sie liegt weit zurück, und trocken oder kalt liegendes Saatgut ist bald verloren.</translation>
        </message>
        <message>
            <source>Soon: it is behind, and may still catch up.</source>
            <translation>Bald: sie liegt zurück und kann noch aufholen.</translation>
        </message>
        <message>
            <source>Today: it is far behind on two days running.</source>
            <translation>Heute: sie liegt an zwei Tagen nacheinander weit zurück.</translation>
        </message>
        <message>
            <source>Soon: it is behind on two days running, by less than 20 points.</source>
            <translation>Bald: sie liegt an zwei Tagen nacheinander zurück, um weniger als 20 Punkte.</translation>
        </message>
        <message>
            <source>Today: it grows from day to day, and what has dried out comes back slowly.</source>
            <translation>Heute: es nimmt von Tag zu Tag zu, und Ausgetrocknetes erholt sich langsam.</translation>
        </message>
        <message>
            <source>Soon: it stays as it is.</source>
            <translation>Bald: es bleibt, wie es ist.</translation>
        </message>
        <message>
            <source>Soon: what is bare stays bare unless it is merely dry.</source>
            <translation>Bald: was kahl ist, bleibt kahl, wenn es nicht bloß trocken ist.</translation>
        </message>
        <message>
            <source>Soon: the gaps are there on two days, and hardly change.</source>
            <translation>Bald: die Lücken sind an zwei Tagen da und ändern sich kaum.</translation>
        </message>
        <message>
            <source>Soon: it is uneven on two days, and hardly changes.</source>
            <translation>Bald: sie ist an zwei Tagen ungleichmäßig, und das ändert sich kaum.</translation>
        </message>
        <message>
            <source>Soon: colour changes over days, and light or feed takes days to act.</source>
            <translation>Bald: Farbe ändert sich über Tage, und Licht oder Düngung wirkt erst nach Tagen.</translation>
        </message>
        <message>
            <source>Today: a photo can be taken again only today.</source>
            <translation>Heute: ein Foto kann nur heute noch einmal gemacht werden.</translation>
        </message>
        <message>
            <source>Today: nobody has looked at it for more than a day.</source>
            <translation>Heute: seit mehr als einem Tag hat niemand nachgesehen.</translation>
        </message>
        <message>
            <source>Soon: only today's photo is missing.</source>
            <translation>Bald: nur das heutige Foto fehlt.</translation>
        </message>
        <message>
            <source>Soon: the photo is there, and only waits for your word.</source>
            <translation>Bald: das Foto ist da und wartet nur auf eine Angabe.</translation>
        </message>
        <message>
            <source>Today: the last day of its time to cut has come.</source>
            <translation>Heute: der letzte Tag ihrer Schnittzeit ist gekommen.</translation>
        </message>
        <message>
            <source>Soon: it gains little now, and can be cut on any of the next days.</source>
            <translation>Bald: sie legt jetzt wenig zu und kann an einem der nächsten Tage geschnitten werden.</translation>
        </message>
        <message>
            <source>Now: it may spread or die within the day.</source>
            <translation>Jetzt: es kann sich noch heute ausbreiten, oder sie kann eingehen.</translation>
        </message>
        <message>
            <source>Today: it gets worse from day to day.</source>
            <translation>Heute: es wird von Tag zu Tag schlimmer.</translation>
        </message>
        <message>
            <source>Soon: it will still be there tomorrow.</source>
            <translation>Bald: morgen ist es noch da.</translation>
        </message>
        <message>
            <source>Now: possible mold together with canopy that goes, or with warm and wet air, may spread by tomorrow.</source>
            <translation>Jetzt: möglicher Schimmel zusammen mit schwindendem Bestand oder mit warmer, nasser Luft kann sich bis morgen ausbreiten.</translation>
        </message>
        <message>
            <source>Today: each sign alone could wait, two of them on one tray should not.</source>
            <translation>Heute: jedes Zeichen allein könnte warten, zwei an einer Schale nicht.</translation>
        </message>
        <message>
            <source>Feel the medium: dry means wilting, water it from below; wet and slimy means damping off, so keep the tray away from the others.</source>
            <translation>Das Substrat befühlen: trocken heißt Welke, dann von unten gießen; nass und schleimig heißt Umfallkrankheit, dann die Schale von den anderen fernhalten.</translation>
        </message>
        <message>
            <source>Coverage fell from {before:.0f} % on {day} to {now:.0f} %; two days running below what it was.</source>
            <translation>Die Deckung fiel von {before:.0f} % am {day} auf {now:.0f} %; an zwei Tagen nacheinander unter dem, was sie war.</translation>
        </message>
        <message>
            <source>A patch of {share:.0f} % of the tray lost its canopy after {day}, and lacks it on two days.</source>
            <translation>Eine Stelle von {share:.0f} % der Schale verlor nach dem {day} ihren Bestand und ist an zwei Tagen kahl.</translation>
        </message>
        <message>
            <source>Weigh what goes into a tray, dry, and type it in with its range: 5 minutes.</source>
            <translation>Wiegen, was in eine Schale kommt, trocken, und mit seiner Spanne eingeben: 5 Minuten.</translation>
        </message>
        <message>
            <source>No way to you is entered: transport is not in it.</source>
            <translation>Kein Transportweg ist angegeben: Transport ist nicht enthalten.</translation>
        </message>
        <message>
            <source>No plastic tray is entered: it is not in it.</source>
            <translation>Keine Kunststoffschale ist angegeben: sie ist nicht enthalten.</translation>
        </message>
        <message>
            <source>No electricity is entered: light and heat are not in it.</source>
            <translation>Kein Strom ist angegeben: Licht und Wärme sind nicht enthalten.</translation>
        </message>
        <message>
            <source>Electricity is entered, but not what your grid gives off: type its kg CO2e/kWh in.</source>
            <translation>Strom ist angegeben, aber nicht, was das Netz ausstößt: seine kg CO2e/kWh eingeben.</translation>
        </message>
        <message>
            <source>Green of the canopy (dark green index x 100; less is paler)</source>
            <translation>Grün des Bestands (Dunkelgrün-Index x 100; weniger ist blasser)</translation>
        </message>
        <message>
            <source>Lightness of the canopy (L*; more is paler)</source>
            <translation>Helligkeit des Bestands (L*; mehr ist blasser)</translation>
        </message>
        <message>
            <source>Of the trays of which it was noted, 1 or 0; of the others nobody knows.</source>
            <translation>Von den Schalen, bei denen es notiert wurde, 1 oder 0; von den anderen weiß es niemand.</translation>
        </message>
        <message>
            <source>Type in what the medium for a tray costs: 1 minute.</source>
            <translation>Eingeben, was das Substrat für eine Schale kostet: 1 Minute.</translation>
        </message>
        <message>
            <source>Say whether it is a mat or a loose mix: 1 minute.</source>
            <translation>Angeben, ob es eine Matte oder loses Substrat ist: 1 Minute.</translation>
        </message>
        <message>
            <source>Read the medium twice, an hour apart, with the heat mat off: 4 minutes.</source>
            <translation>Das Substrat zweimal messen, im Abstand von einer Stunde bei ausgeschalteter Heizmatte: 4 Minuten.</translation>
        </message>
        <message>
            <source>Wetted from the tap at {tap:.0f} °C in air of {air:.0f} °C it stands at {soon:.0f} °C after {hours:.0f} hours and at {later:.0f} °C after {night:.0f}; what dries off keeps it somewhat colder.</source>
            <translation>Aus dem Hahn mit {tap:.0f} °C gegossen, in Luft von {air:.0f} °C, steht es nach {hours:.0f} Stunden bei {soon:.0f} °C und nach {night:.0f} bei {later:.0f} °C; was verdunstet, hält es etwas kälter.</translation>
        </message>
        <message>
            <source>Read the medium on a heat mat after half a day, and the air: 2 minutes.</source>
            <translation>Das Substrat nach einem halben Tag auf der Heizmatte messen, und die Luft: 2 Minuten.</translation>
        </message>
        <message>
            <source>Put a logger into the medium of one tray for a night, and bring its file in: 5 minutes.</source>
            <translation>Für eine Nacht einen Logger in das Substrat einer Schale stecken und seine Datei einlesen: 5 Minuten.</translation>
        </message>
        <message>
            <source>From 20:00 to 8:00, logged in it.</source>
            <translation>Von 20:00 bis 8:00, darin aufgezeichnet.</translation>
        </message>
        <message>
            <source>Read a probe in the medium of 3 trays, each morning at the same hour: 2 minutes.</source>
            <translation>Einen Fühler im Substrat von 3 Schalen ablesen, jeden Morgen zur selben Stunde: 2 Minuten.</translation>
        </message>
        <message>
            <source>As noted, at any hour: media tell something only where they were read together.</source>
            <translation>Wie notiert, zu beliebiger Stunde: Substrate sagen nur dort etwas, wo sie zugleich abgelesen wurden.</translation>
        </message>
        <message>
            <source>Bury or compost a weighed piece in a net bag, and weigh it after weeks: 5 minutes each.</source>
            <translation>Ein gewogenes Stück im Netzbeutel vergraben oder kompostieren und nach Wochen wiegen: je 5 Minuten.</translation>
        </message>
        <message>
            <source>{place}; weighings: {n}.</source>
            <translation>{place}; Wägungen: {n}.</translation>
        </message>
        <message>
            <source>Late weighings flatten: {share:.0f} % seem to stay.</source>
            <translation>Späte Wägungen flachen ab: {share:.0f} % scheinen zu bleiben.</translation>
        </message>
        <message>
            <source>By eye it fell to crumbs between week {low:.0f} and week {high:.0f}.</source>
            <translation>Nach Augenmaß zerfiel es zwischen Woche {low:.0f} und Woche {high:.0f} zu Krümeln.</translation>
        </message>
        <message>
            <source>Measure the room that the medium of a tray takes on the shelf: 2 minutes.</source>
            <translation>Den Raum messen, den das Substrat einer Schale im Lager braucht: 2 Minuten.</translation>
        </message>
        <message>
            <source>Measure the room that a used one takes on the heap: 2 minutes.</source>
            <translation>Den Raum messen, den ein gebrauchtes auf dem Haufen braucht: 2 Minuten.</translation>
        </message>
        <message>
            <source>Weigh what is left of a tray after the cut: 1 minute.</source>
            <translation>Wiegen, was nach dem Schnitt von einer Schale übrig ist: 1 Minute.</translation>
        </message>
        <message>
            <source>Note the minutes of watering and moving on the tray sheet, as labour: 1 minute a day.</source>
            <translation>Die Minuten des Gießens und Umstellens auf dem Schalenblatt als Arbeitszeit notieren: 1 Minute am Tag.</translation>
        </message>
        <message>
            <source>Note the minutes of setting up on the tray sheet, as labour: 1 minute.</source>
            <translation>Die Minuten des Aufstellens auf dem Schalenblatt als Arbeitszeit notieren: 1 Minute.</translation>
        </message>
        <message>
            <source>Note the minutes of cleaning and disposal, as labour, once a tray is done: 1 minute.</source>
            <translation>Die Minuten des Reinigens und Entsorgens als Arbeitszeit notieren, sobald eine Schale beendet ist: 1 Minute.</translation>
        </message>
        <message>
            <source>Give the cut of 3 trays a mark from 1 to 5 on their tray sheets: 2 minutes.</source>
            <translation>Dem Schnitt von 3 Schalen auf ihren Blättern eine Note von 1 bis 5 geben: 2 Minuten.</translation>
        </message>
        <message>
            <source>Note of every tray at the cut whether the medium slid, 1 or 0: 1 second a tray.</source>
            <translation>Beim Schnitt jeder Schale notieren, ob das Substrat verrutscht ist, 1 oder 0: 1 Sekunde je Schale.</translation>
        </message>
        <message>
            <source>Weigh what is swept up after 3 trays, or give it a mark: 3 minutes.</source>
            <translation>Wiegen, was nach 3 Schalen zusammengekehrt wird, oder eine Note geben: 3 Minuten.</translation>
        </message>
        <message>
            <source>Note how many days the cut of 3 trays keeps, on their tray sheets: 1 minute a day.</source>
            <translation>Auf den Schalenblättern notieren, wie viele Tage der Schnitt von 3 Schalen hält: 1 Minute am Tag.</translation>
        </message>
        <message>
            <source>Give the taste of 3 trays without mold a mark from 1 to 5 on their tray sheets: 2 minutes.</source>
            <translation>Den Geschmack von 3 Schalen ohne Schimmel auf ihren Schalenblättern von 1 bis 5 bewerten: 2 Minuten.</translation>
        </message>
        <message>
            <source>Standard deviation from tray to tray: how far a cut can be counted on.</source>
            <translation>Standardabweichung von Schale zu Schale: wie weit auf einen Schnitt Verlass ist.</translation>
        </message>
        <message>
            <source>Say what you feed it with, or that you do not: 1 minute.</source>
            <translation>Angeben, womit gedüngt wird, oder dass nicht: 1 Minute.</translation>
        </message>
        <message>
            <source>{about}: {value:g} {unit}. {source}</source>
            <translation>{about}: {value:g} {unit}. {source}</translation>
        </message>
        <message>
            <source>From what is known of one tray of each, for {trays:g} trays a week.</source>
            <translation>Nach dem, was von je einer Schale bekannt ist, bei {trays:g} Schalen die Woche.</translation>
        </message>
        <message>
            <source>Weigh the dry medium of one tray, and type it in: 2 minutes.</source>
            <translation>Das trockene Substrat einer Schale wiegen und eingeben: 2 Minuten.</translation>
        </message>
        <message>
            <source>One of {of}: an interval needs two.</source>
            <translation>Eine von {of}: ein Intervall braucht zwei.</translation>
        </message>
        <message>
            <source>All alike: how sure the mean is cannot be told from that.</source>
            <translation>Alle gleich: wie sicher der Mittelwert ist, lässt sich daran nicht ablesen.</translation>
        </message>
        <message>
            <source>marks</source>
            <translation>Noten</translation>
        </message>
        <message>
            <source>points</source>
            <translation>Punkte</translation>
        </message>
        <message>
            <source>days</source>
            <translation>Tage</translation>
        </message>
        <message>
            <source>{what}, {medium}: {beside}</source>
            <translation>{what}, {medium}: {beside}</translation>
        </message>
        <message>
            <source>{what}: {medium} {difference:+.1f} {unit} against {trusted}; no interval can be had. {beside}</source>
            <translation>{what}: {medium} {difference:+.1f} {unit} gegenüber {trusted}; ein Intervall gibt es nicht. {beside}</translation>
        </message>
        <message>
            <source>{what}: {medium} {difference:+.1f} {unit} against {trusted}, interval {low:+.1f} to {high:+.1f}: which one has more cannot be told. {beside}</source>
            <translation>{what}: {medium} {difference:+.1f} {unit} gegenüber {trusted}, Intervall {low:+.1f} bis {high:+.1f}: welches mehr hat, ist nicht zu sagen. {beside}</translation>
        </message>
        <message>
            <source>{what}: {medium} {difference:+.1f} {unit} against {trusted}, interval {low:+.1f} to {high:+.1f}. {beside}</source>
            <translation>{what}: {medium} {difference:+.1f} {unit} gegenüber {trusted}, Intervall {low:+.1f} bis {high:+.1f}. {beside}</translation>
        </message>
        <message>
            <source>The weighed trays are of other crops than those of {trusted}: a kg of one is no kg of the other.</source>
            <translation>Gewogen sind Schalen anderer Kulturen als bei {trusted}: ein kg der einen ist kein kg der anderen.</translation>
        </message>
        <message>
            <source>Peat's own carbon is {peat:.0f} % of it, electricity from the grid {grid:.0f} %.</source>
            <translation>Davon sind {peat:.0f} % der Kohlenstoff des Torfs selbst, {grid:.0f} % Strom aus dem Netz.</translation>
        </message>
        <message>
            <source>What makes it most unsure: {name}, {share:.0f} % of the variance.</source>
            <translation>Was es am unsichersten macht: {name}, {share:.0f} % der Varianz.</translation>
        </message>
        <message>
            <source>{medium} gives off {less:.2f} kg CO2e a tray less than {trusted} ({low:.2f} to {high:.2f}).</source>
            <translation>{medium} verursacht je Schale {less:.2f} kg CO2e weniger als {trusted} ({low:.2f} bis {high:.2f}).</translation>
        </message>
        <message>
            <source>{medium} gives off {more:.2f} kg CO2e a tray more than {trusted} ({low:.2f} to {high:.2f}).</source>
            <translation>{medium} verursacht je Schale {more:.2f} kg CO2e mehr als {trusted} ({low:.2f} bis {high:.2f}).</translation>
        </message>
        <message>
            <source>Whether {medium} gives off less than {trusted} cannot be told: {low:+.2f} to {high:+.2f} kg CO2e a tray.</source>
            <translation>Ob {medium} weniger verursacht als {trusted}, ist nicht zu sagen: {low:+.2f} bis {high:+.2f} kg CO2e je Schale.</translation>
        </message>
        <message>
            <source>To know it better, find out “{name}”: {share:.0f} % of what is unsure in it.</source>
            <translation>Um es besser zu wissen, „{name}“ herausfinden: {share:.0f} % der Unsicherheit darin.</translation>
        </message>
        <message>
            <source>No tray of this medium grew the same crop, sown on the same day, as one of {trusted}: how far the two differ cannot be told.</source>
            <translation>Keine Schale dieses Substrats trug dieselbe Kultur, am selben Tag gesät, wie eine mit {trusted}: wie weit die beiden auseinanderliegen, ist nicht zu sagen.</translation>
        </message>
        <message>
            <source>Trays side by side, the same crop in the same block: {n}, and {m} of {trusted}.</source>
            <translation>Schalen nebeneinander, dieselbe Kultur im selben Block: {n}, und {m} mit {trusted}.</translation>
        </message>
        <message>
            <source>Trays side by side, the same crop sown on the same day: {n}, and {m} of {trusted}.</source>
            <translation>Schalen nebeneinander, dieselbe Kultur am selben Tag gesät: {n}, und {m} mit {trusted}.</translation>
        </message>
        <message>
            <source>Kind of medium</source>
            <translation>Art des Substrats</translation>
        </message>
        <message>
            <source>Water held</source>
            <translation>Gehaltenes Wasser</translation>
        </message>
        <message>
            <source>Water by volume</source>
            <translation>Wasser nach Volumen</translation>
        </message>
        <message>
            <source>Air when drained</source>
            <translation>Luft, abgetropft</translation>
        </message>
        <message>
            <source>Dries in</source>
            <translation>Trocknet in</translation>
        </message>
        <message>
            <source>Takes up again</source>
            <translation>Nimmt wieder auf</translation>
        </message>
        <message>
            <source>Heat stored</source>
            <translation>Gespeicherte Wärme</translation>
        </message>
        <message>
            <source>Follows the shelf in</source>
            <translation>Folgt der Etage in</translation>
        </message>
        <message>
            <source>Over a heat mat</source>
            <translation>Über der Heizmatte</translation>
        </message>
        <message>
            <source>Below 18 °C at night</source>
            <translation>Unter 18 °C bei Nacht</translation>
        </message>
        <message>
            <source>In the medium, noted</source>
            <translation>Im Substrat, notiert</translation>
        </message>
        <message>
            <source>Half gone</source>
            <translation>Halb abgebaut</translation>
        </message>
        <message>
            <source>5 % left</source>
            <translation>5 % übrig</translation>
        </message>
        <message>
            <source>CO2e a tray</source>
            <translation>CO2e je Schale</translation>
        </message>
        <message>
            <source>CO2e a kg of cut</source>
            <translation>CO2e je kg Schnitt</translation>
        </message>
        <message>
            <source>Price</source>
            <translation>Preis</translation>
        </message>
        <message>
            <source>Room before, a week</source>
            <translation>Lagerraum davor je Woche</translation>
        </message>
        <message>
            <source>Room after, a week</source>
            <translation>Lagerraum danach je Woche</translation>
        </message>
        <message>
            <source>To carry in, a week</source>
            <translation>Hineinzutragen je Woche</translation>
        </message>
        <message>
            <source>To carry away, a week</source>
            <translation>Hinauszutragen je Woche</translation>
        </message>
        <message>
            <source>Set-up</source>
            <translation>Aufstellen</translation>
        </message>
        <message>
            <source>Watering and care</source>
            <translation>Gießen und Pflege</translation>
        </message>
        <message>
            <source>Cleaning, disposal</source>
            <translation>Reinigen, Entsorgen</translation>
        </message>
        <message>
            <source>Cut quality</source>
            <translation>Schnittqualität</translation>
        </message>
        <message>
            <source>Slid at the cut</source>
            <translation>Verrutscht beim Schnitt</translation>
        </message>
        <message>
            <source>Cut varies by</source>
            <translation>Schnitt schwankt um</translation>
        </message>
        <message>
            <source>Keeps after the cut</source>
            <translation>Hält nach dem Schnitt</translation>
        </message>
        <message>
            <source>Taste</source>
            <translation>Geschmack</translation>
        </message>
        <message>
            <source>Sweepings</source>
            <translation>Kehricht</translation>
        </message>
        <message>
            <source>Sweepings by eye</source>
            <translation>Kehricht nach Augenmaß</translation>
        </message>
        <message>
            <source>Feed</source>
            <translation>Düngung</translation>
        </message>
        <message>
            <source>Wetting tests {conditions}.</source>
            <translation>Benetzungsproben {conditions}.</translation>
        </message>
        <message>
            <source>{n} tests under other conditions are kept apart and not in this number.</source>
            <translation>{n} Proben unter anderen Bedingungen stehen für sich und sind nicht in dieser Zahl.</translation>
        </message>
        <message>
            <source>Weigh 3 trays dry and again after soaking, or do the wetting test: 5 minutes.</source>
            <translation>3 Schalen trocken und nach dem Einweichen wiegen, oder die Benetzungsprobe machen: 5 Minuten.</translation>
        </message>
        <message>
            <source>From the trays' own first weighings, dry and soaked.</source>
            <translation>Aus den ersten Wägungen der Schalen selbst, trocken und eingeweicht.</translation>
        </message>
        <message>
            <source>Measure how thick it lies in the tray, and type it in: 1 minute.</source>
            <translation>Messen, wie dick es in der Schale liegt, und eingeben: 1 Minute.</translation>
        </message>
        <message>
            <source>There is more water than medium: look at the thickness.</source>
            <translation>Es ist mehr Wasser als Substrat: die Dicke prüfen.</translation>
        </message>
        <message>
            <source>There is more water than pores: look at the thickness and the dry mass.</source>
            <translation>Es ist mehr Wasser als Poren: Dicke und Trockenmasse prüfen.</translation>
        </message>
        <message>
            <source>Porosity less water; solids of {density:g} g/cm³.</source>
            <translation>Porenraum weniger Wasser; feste Substanz mit {density:g} g/cm³.</translation>
        </message>
        <message>
            <source>Without a crop; shoots drink and make it shorter.</source>
            <translation>Ohne Kultur; Triebe trinken und machen es kürzer.</translation>
        </message>
        <message>
            <source>From the weighings of trays with a crop, after one watering.</source>
            <translation>Aus den Wägungen von Schalen mit Kultur, nach einer Wassergabe.</translation>
        </message>
        <message>
            <source>Do the wetting test and weigh after 6, 12, 24 and 48 hours: 5 minutes in all.</source>
            <translation>Die Benetzungsprobe machen und nach 6, 12, 24 und 48 Stunden wiegen: zusammen 5 Minuten.</translation>
        </message>
        <message>
            <source>Let the medium of the wetting test dry, wet it again and weigh it: 3 minutes.</source>
            <translation>Das Substrat der Benetzungsprobe trocknen lassen, wieder benetzen und wiegen: 3 Minuten.</translation>
        </message>
        <message>
            <source>Measure how thick it lies, and type it in: 1 minute.</source>
            <translation>Messen, wie dick es liegt, und eingeben: 1 Minute.</translation>
        </message>
        <message>
            <source>Water and solids need more room than there is: look at the thickness.</source>
            <translation>Wasser und feste Substanz brauchen mehr Raum, als da ist: die Dicke prüfen.</translation>
        </message>
        <message>
            <source>Drained; from its water and solids, after de Vries (1963).</source>
            <translation>Abgetropft; aus Wasser und fester Substanz, nach de Vries (1963).</translation>
        </message>
        <message>
            <source>In still air it should follow the shelf in {low:.1f} to {high:.1f} h (if its faces lose {least:.0f} to {most:.0f} W/m²K, from memory); the cooling test measures that.</source>
            <translation>In ruhender Luft folgt es der Etage wohl in {low:.1f} bis {high:.1f} h (wenn seine Flächen {least:.0f} bis {most:.0f} W/m²K verlieren, aus dem Gedächtnis); die Abkühlprobe misst das.</translation>
        </message>
        <message>
            <source>Weigh it {hours} hours after it drained; let it stand where trays stand.</source>
            <translation>{hours} Stunden nach dem Abtropfen wiegen; es dort stehen lassen, wo Schalen stehen.</translation>
        </message>
        <message>
            <source>Lay the dry medium in its tray and weigh both.</source>
            <translation>Das trockene Substrat in seine Schale legen und beides wiegen.</translation>
        </message>
        <message>
            <source>Wet it through, from where you water, until it takes no more. Weigh it at once.</source>
            <translation>Ganz durchnässen, von der Seite, von der gegossen wird, bis es nichts mehr aufnimmt. Sofort wiegen.</translation>
        </message>
        <message>
            <source>Let it drain for half an hour, at the slope it stands at, and weigh it.</source>
            <translation>Eine halbe Stunde abtropfen lassen, in der Neigung, in der es steht, und wiegen.</translation>
        </message>
        <message>
            <source>Wet it once more as before, drain it for half an hour and weigh it.</source>
            <translation>Noch einmal wie vorher benetzen, eine halbe Stunde abtropfen lassen und wiegen.</translation>
        </message>
        <message>
            <source>Read the air of the shelf, beside the tray.</source>
            <translation>Die Luft der Etage messen, neben der Schale.</translation>
        </message>
        <message>
            <source>With the heat mat on for half a day, read the middle of the wet medium.</source>
            <translation>Wenn die Heizmatte einen halben Tag an ist, die Mitte des nassen Substrats messen.</translation>
        </message>
        <message>
            <source>Switch the heat mat off, take the tray from it and read the medium at once.</source>
            <translation>Die Heizmatte ausschalten, die Schale herunternehmen und das Substrat sofort messen.</translation>
        </message>
        <message>
            <source>Read the medium again, an hour later, a thin mat after a quarter of an hour; every further reading makes it surer.</source>
            <translation>Das Substrat noch einmal messen, eine Stunde später, eine dünne Matte nach einer Viertelstunde; jeder weitere Messwert macht es sicherer.</translation>
        </message>
        <message>
            <source>Dry a piece of used medium, weigh it in its net bag, and bury or compost it.</source>
            <translation>Ein Stück gebrauchtes Substrat trocknen, in seinem Netzbeutel wiegen und vergraben oder kompostieren.</translation>
        </message>
        <message>
            <source>Dig it out, shake it clean, dry it as at first, weigh it and put it back.</source>
            <translation>Ausgraben, sauber schütteln, wie am Anfang trocknen, wiegen und zurücklegen.</translation>
        </message>
        <message>
            <source>A mass is above zero; {value:g} g was given.</source>
            <translation>Eine Masse liegt über null; angegeben wurden {value:g} g.</translation>
        </message>
        <message>
            <source>There is a reading at {at:%H:%M} already: give this one its own time.</source>
            <translation>Einen Messwert um {at:%H:%M} gibt es schon: diesem eine eigene Zeit geben.</translation>
        </message>
        <message>
            <source>Wet it weighs {wet:.0f} g and dry {dry:.0f} g: one of the two is wrong.</source>
            <translation>Nass wiegt es {wet:.0f} g und trocken {dry:.0f} g: eines von beiden ist falsch.</translation>
        </message>
        <message>
            <source>Weigh it 6, 12, 24 and 48 hours after it drained.</source>
            <translation>6, 12, 24 und 48 Stunden nach dem Abtropfen wiegen.</translation>
        </message>
        <message>
            <source>It hardly dried: go on weighing it.</source>
            <translation>Es trocknete kaum: weiter wiegen.</translation>
        </message>
        <message>
            <source>dry peat in a tray</source>
            <translation>trockener Torf in einer Schale</translation>
        </message>
        <message>
            <source>perlite in a tray</source>
            <translation>Perlit in einer Schale</translation>
        </message>
        <message>
            <source>dry coir in a tray</source>
            <translation>trockene Kokosfaser in einer Schale</translation>
        </message>
        <message>
            <source>dry wood fibre in a tray</source>
            <translation>trockene Holzfaser in einer Schale</translation>
        </message>
        <message>
            <source>dry hemp, flax, jute or kenaf</source>
            <translation>trockener Hanf, Flachs, Jute oder Kenaf</translation>
        </message>
        <message>
            <source>of that, needled into a mat</source>
            <translation>davon zu einer Matte vernadelt</translation>
        </message>
        <message>
            <source>mass of the plastic tray</source>
            <translation>Masse der Kunststoffschale</translation>
        </message>
        <message>
            <source>how often a plastic tray is used</source>
            <translation>wie oft eine Kunststoffschale benutzt wird</translation>
        </message>
        <message>
            <source>electricity that you count for a tray</source>
            <translation>Strom, der für eine Schale gerechnet wird</translation>
        </message>
        <message>
            <source>by truck</source>
            <translation>mit dem Lastwagen</translation>
        </message>
        <message>
            <source>by van</source>
            <translation>mit dem Lieferwagen</translation>
        </message>
        <message>
            <source>by rail</source>
            <translation>mit der Bahn</translation>
        </message>
        <message>
            <source>by ship</source>
            <translation>mit dem Schiff</translation>
        </message>
        <message>
            <source>thickness of the medium in the tray</source>
            <translation>Dicke des Substrats in der Schale</translation>
        </message>
        <message>
            <source>dry mass of the medium in a tray</source>
            <translation>Trockenmasse des Substrats in einer Schale</translation>
        </message>
        <message>
            <source>density of its solids</source>
            <translation>Dichte seiner festen Substanz</translation>
        </message>
        <message>
            <source>share of minerals in its solids, by volume</source>
            <translation>Anteil der Minerale an seiner festen Substanz, nach Volumen</translation>
        </message>
        <message>
            <source>room on the shelf before use</source>
            <translation>Raum im Lager vor dem Gebrauch</translation>
        </message>
        <message>
            <source>room on the heap after use</source>
            <translation>Raum auf dem Haufen nach dem Gebrauch</translation>
        </message>
        <message>
            <source>mass to carry away after a cut</source>
            <translation>Masse, die nach dem Schnitt wegzutragen ist</translation>
        </message>
        <message>
            <source>price of the medium for a tray</source>
            <translation>Preis des Substrats für eine Schale</translation>
        </message>
        <message>
            <source>feed in a litre of water</source>
            <translation>Dünger in einem Liter Wasser</translation>
        </message>
        <message>
            <source>days from one feed to the next</source>
            <translation>Tage von einer Düngung zur nächsten</translation>
        </message>
        <message>
            <source>smell at the rack, 1 none to 5 not bearable</source>
            <translation>Geruch am Regal, 1 keiner bis 5 nicht auszuhalten</translation>
        </message>
        <message>
            <source>peat's own carbon, fully oxidised</source>
            <translation>eigener Kohlenstoff des Torfs, vollständig oxidiert</translation>
        </message>
        <message>
            <source>peat: land, haul, on top of its carbon</source>
            <translation>Torf: Land, Wege, zusätzlich zu seinem Kohlenstoff</translation>
        </message>
        <message>
            <source>expanded perlite</source>
            <translation>Blähperlit</translation>
        </message>
        <message>
            <source>coir, washed and pressed, to the port</source>
            <translation>Kokosfaser, gewaschen und gepresst, bis zum Hafen</translation>
        </message>
        <message>
            <source>wood fibre, steamed and ground</source>
            <translation>Holzfaser, gedämpft und gemahlen</translation>
        </message>
        <message>
            <source>plant fibre, to the factory</source>
            <translation>Pflanzenfaser, bis zum Werk</translation>
        </message>
        <message>
            <source>needling fibre into a mat</source>
            <translation>Vernadeln der Faser zu einer Matte</translation>
        </message>
        <message>
            <source>plastic, formed</source>
            <translation>Kunststoff, geformt</translation>
        </message>
        <message>
            <source>truck</source>
            <translation>Lastwagen</translation>
        </message>
        <message>
            <source>van, diesel</source>
            <translation>Lieferwagen, Diesel</translation>
        </message>
        <message>
            <source>rail</source>
            <translation>Bahn</translation>
        </message>
        <message>
            <source>container ship</source>
            <translation>Containerschiff</translation>
        </message>
        <message>
            <source>your electricity</source>
            <translation>eigener Strom</translation>
        </message>
        <message>
            <source>“{name}” is no factor of this program.</source>
            <translation>„{name}“ ist keine Größe dieses Programms.</translation>
        </message>
        <message>
            <source>{about}: a number below zero cannot be.</source>
            <translation>{about}: eine Zahl unter null kann nicht sein.</translation>
        </message>
        <message>
            <source>{about}: type the most likely value.</source>
            <translation>{about}: den wahrscheinlichsten Wert eingeben.</translation>
        </message>
        <message>
            <source>{about}: say how low and how high it can be. A number without a range looks surer than it is; type it three times if it is exact.</source>
            <translation>{about}: angeben, wie klein und wie groß sie sein kann. Eine Zahl ohne Spanne sieht sicherer aus, als sie ist; ist sie genau, sie dreimal eingeben.</translation>
        </message>
        <message>
            <source>{about}: {value:g} does not lie between {low:g} and {high:g}.</source>
            <translation>{about}: {value:g} liegt nicht zwischen {low:g} und {high:g}.</translation>
        </message>
        <message>
            <source>{about}: {high:g} {unit} is more than can be. Look at the unit.</source>
            <translation>{about}: {high:g} {unit} ist mehr, als sein kann. Die Einheit prüfen.</translation>
        </message>
        <message>
            <source>A tray is used once at least.</source>
            <translation>Eine Schale wird mindestens einmal benutzt.</translation>
        </message>
        <message>
            <source>{about}: say where the number comes from, your own scale for instance.</source>
            <translation>{about}: angeben, woher die Zahl kommt, zum Beispiel von der eigenen Waage.</translation>
        </message>
        <message>
            <source>What a feed for food may be made of is ruled by local law; ask your local food authority before you sell.</source>
            <translation>Woraus ein Dünger für Lebensmittel bestehen darf, regelt örtliches Recht; vor dem Verkauf die örtliche Lebensmittelbehörde fragen.</translation>
        </message>
        <message>
            <source>A plain medium and a fed one are two treatments: let the feed be what varies in a trial, then the table and the verdict tell them apart.</source>
            <translation>Ein ungedüngtes und ein gedüngtes Substrat sind zwei Varianten: die Düngung in einem Versuch verändern, dann halten Tabelle und Urteil sie auseinander.</translation>
        </message>
        <message>
            <source>{feed}: feeds from manure, urine or waste can carry germs to what is eaten raw. They are not for food that is sold unless local rules allow it: ask your local food authority first. Keep them off leaves, wear gloves, wash your hands.</source>
            <translation>{feed}: Dünger aus Mist, Urin oder Abfall kann Keime auf das bringen, was roh gegessen wird. Für verkaufte Lebensmittel ist er nicht gedacht, wenn örtliche Vorschriften ihn nicht erlauben: vorher die örtliche Lebensmittelbehörde fragen. Von Blättern fernhalten, Handschuhe tragen, Hände waschen.</translation>
        </message>
        <message>
            <source>A suspect is a reason to look, no finding, and no flag is no proof that a tray is safe. Food that is sold is ruled by local food-safety law. Factors of climate and break-down make screening estimates, no certified assessment, and are not for labels.</source>
            <translation>Ein Verdacht ist ein Grund nachzusehen, kein Befund, und keine Markierung ist kein Beweis, dass eine Schale unbedenklich ist. Für Lebensmittel, die verkauft werden, gilt das örtliche Lebensmittelrecht. Klima- und Abbauwerte ergeben grobe Schätzungen, keine geprüfte Bilanz, und sind nicht für Etiketten.</translation>
        </message>
        <message>
            <source>1 photo</source>
            <translation>1 Foto</translation>
        </message>
        <message>
            <source>{n} photos</source>
            <translation>{n} Fotos</translation>
        </message>
        <message>
            <source>1 photo by {camera}</source>
            <translation>1 Foto der Kamera {camera}</translation>
        </message>
        <message>
            <source>{n} photos by {camera}</source>
            <translation>{n} Fotos der Kamera {camera}</translation>
        </message>
        <message>
            <source>{photos}: the camera says another year. The first one says {wrong}, that would be {right}.</source>
            <translation>{photos}: Die Kamera sagt ein anderes Jahr. Das erste sagt {wrong}, das wäre der {right}.</translation>
        </message>
        <message>
            <source>{photos}: the camera's clock is wrong. The first one says {wrong}, its file {right}.</source>
            <translation>{photos}: Die Uhr der Kamera geht falsch. Das erste sagt {wrong}, seine Datei {right}.</translation>
        </message>
        <message>
            <source>{photos}: from days to come, says the camera; its clock is wrong. The first one says {wrong}; by the time of coming in it is about {right}.</source>
            <translation>{photos}: aus künftigen Tagen, sagt die Kamera; ihre Uhr geht falsch. Das erste sagt {wrong}; nach der Zeit des Einlesens ist es etwa der {right}.</translation>
        </message>
        <message>
            <source>{photos}: from before the first sowing, says the camera; its clock was probably reset. The first one says {wrong}; by the time of coming in it is about {right}.</source>
            <translation>{photos}: aus der Zeit vor der ersten Aussaat, sagt die Kamera; ihre Uhr wurde wohl zurückgesetzt. Das erste sagt {wrong}; nach der Zeit des Einlesens ist es etwa der {right}.</translation>
        </message>
        <message>
            <source>{photos}: the camera's clock must go {hours:+g} h to agree with the files: it has another time zone, or missed the change to summer time. The first one says {wrong}, its file {right}.</source>
            <translation>{photos}: Die Uhr der Kamera muss um {hours:+g} h verstellt werden, um zu den Dateien zu passen: Sie steht in einer anderen Zeitzone oder hat die Umstellung auf Sommerzeit versäumt. Das erste sagt {wrong}, seine Datei {right}.</translation>
        </message>
        <message>
            <source>{photos}: taken in the night, says the camera, at {wrong}; the walks of other days were by day. Moved by whole hours that would be {right}.</source>
            <translation>{photos}: in der Nacht aufgenommen, sagt die Kamera, am {wrong}; die Rundgänge anderer Tage waren am Tag. Um ganze Stunden verschoben wäre das der {right}.</translation>
        </message>
        <message>
            <source>{photos}: taken after coming in, says the camera; its clock is ahead by {hours:.0f} h or more. The first one says {wrong}, that would be {right}.</source>
            <translation>{photos}: nach dem Einlesen aufgenommen, sagt die Kamera; ihre Uhr geht um {hours:.0f} h oder mehr vor. Das erste sagt {wrong}, das wäre der {right}.</translation>
        </message>
        <message>
            <source>{day} {year}, {time}</source>
            <translation>{day} {year}, {time}</translation>
        </message>
        <message>
            <source>far left</source>
            <translation>hinten links</translation>
        </message>
        <message>
            <source>far right</source>
            <translation>hinten rechts</translation>
        </message>
        <message>
            <source>near right</source>
            <translation>vorn rechts</translation>
        </message>
        <message>
            <source>near left</source>
            <translation>vorn links</translation>
        </message>
        <message>
            <source>Photos are scored with the cards where they were measured: the {card} card lies {off:.1f} mm from its drawn place, the others less.</source>
            <translation>Fotos werden mit den Karten dort ausgewertet, wo sie gemessen wurden: Die Karte {card} liegt {off:.1f} mm neben ihrem gezeichneten Platz, die anderen weniger.</translation>
        </message>
        <message>
            <source>The station is true: every card lies within {worst:.1f} mm of its place.</source>
            <translation>Die Station stimmt: jede Karte liegt höchstens {worst:.1f} mm neben ihrem Platz.</translation>
        </message>
        <message>
            <source>No card of the station is seen: photograph it from above with all four cards in the picture.</source>
            <translation>Keine Karte der Station ist zu sehen: von oben fotografieren, mit allen vier Karten im Bild.</translation>
        </message>
        <message>
            <source>The cards are too small in this photo to measure mm: use the phone's full size and fill the picture with the station.</source>
            <translation>Die Karten sind auf diesem Foto zu klein, um mm zu messen: die volle Größe des Telefons verwenden und das Bild mit der Station füllen.</translation>
        </message>
        <message>
            <source>Something is out of true, and it cannot be told which card: keep leaves and shadows off the cards and the tag and bring another photo. If it says the same, measure the distances of the drawing.</source>
            <translation>Etwas liegt falsch, und welche Karte es ist, ist nicht zu sagen: Blätter und Schatten von Karten und Schild fernhalten und ein anderes Foto einlesen. Sagt es dasselbe, die Abstände der Zeichnung nachmessen.</translation>
        </message>
        <message>
            <source>The {card} card is not seen, so it cannot be told how the others lie: wipe it, keep leaves off it, and photograph all four.</source>
            <translation>Die Karte {card} ist nicht zu sehen, also ist nicht zu sagen, wie die anderen liegen: abwischen, Blätter fernhalten und alle vier fotografieren.</translation>
        </message>
        <message>
            <source>Only {seen} of 4 cards are seen, so it cannot be told how they lie: photograph all four.</source>
            <translation>Nur {seen} von 4 Karten sind zu sehen, also ist nicht zu sagen, wie sie liegen: alle vier fotografieren.</translation>
        </message>
        <message>
            <source>The station is {off:.0f} mm out of true at the {card} card: move it {way}.</source>
            <translation>Die Station liegt an der Karte {card} um {off:.0f} mm falsch: die Karte {way} schieben.</translation>
        </message>
        <message>
            <source>{first} and {second}</source>
            <translation>{first} und {second}</translation>
        </message>
        <message>
            <source>{mm:.0f} mm to the left</source>
            <translation>{mm:.0f} mm nach links</translation>
        </message>
        <message>
            <source>{mm:.0f} mm to the right</source>
            <translation>{mm:.0f} mm nach rechts</translation>
        </message>
        <message>
            <source>{mm:.0f} mm towards you</source>
            <translation>{mm:.0f} mm nach vorn</translation>
        </message>
        <message>
            <source>{mm:.0f} mm away from you</source>
            <translation>{mm:.0f} mm nach hinten</translation>
        </message>
        <message>
            <source>This photo could not be scored: {why}.</source>
            <translation>Dieses Foto konnte nicht ausgewertet werden: {why}.</translation>
        </message>
        <message>
            <source>The phone was held {tilt:.0f} degrees askew: hold it level above the middle of the tray.</source>
            <translation>Das Telefon war um {tilt:.0f} Grad geneigt: waagrecht über die Mitte der Schale halten.</translation>
        </message>
        <message>
            <source>No tag was read: with a tray and its tag on the station the check is surer.</source>
            <translation>Kein Schild wurde gelesen: mit einer Schale samt Schild auf der Station ist die Prüfung sicherer.</translation>
        </message>
        <message>
            <source>Plan at least two trays of each: with one, nothing can be told from chance.</source>
            <translation>Mindestens zwei Schalen von jedem planen: mit einer ist nichts vom Zufall zu unterscheiden.</translation>
        </message>
        <message>
            <source>Give the trial a name.</source>
            <translation>Dem Versuch einen Namen geben.</translation>
        </message>
        <message>
            <source>The margin must be more than nothing: no trial can show that two are equal.</source>
            <translation>Der Spielraum muss größer als null sein: kein Versuch kann zeigen, dass zwei genau gleich sind.</translation>
        </message>
        <message>
            <source>Choose at least one crop.</source>
            <translation>Mindestens eine Kultur wählen.</translation>
        </message>
        <message>
            <source>Choose the media.</source>
            <translation>Die Substrate wählen.</translation>
        </message>
        <message>
            <source>Choose a second medium, or something else that varies.</source>
            <translation>Ein zweites Substrat wählen, oder etwas anderes, das verändert wird.</translation>
        </message>
        <message>
            <source>Say which medium you trust: the others are held against it.</source>
            <translation>Angeben, welches das bewährte Substrat ist: mit ihm werden die anderen verglichen.</translation>
        </message>
        <message>
            <source>Say what shall close the gap: feed, watering, another seating.</source>
            <translation>Angeben, was den Abstand schließen soll: Düngung, Bewässerung, eine andere Lage.</translation>
        </message>
        <message>
            <source>Give {what} two different settings.</source>
            <translation>Zwei verschiedene Einstellungen angeben: {what}.</translation>
        </message>
        <message>
            <source>Watering can vary between bottom, top and both; “{level}” is none of them. How much and how often is noted with each tray as water given.</source>
            <translation>Für die Bewässerung gibt es „von unten“, „von oben“ und „beides“; „{level}“ ist nichts davon. Wie viel und wie oft, wird bei jeder Schale als Wassergabe notiert.</translation>
        </message>
        <message>
            <source>Say which shelves the trial may use.</source>
            <translation>Angeben, welche Etagen der Versuch nutzen darf.</translation>
        </message>
        <message>
            <source>A block holds {n} trays, and no shelf has so many places: use a longer shelf, or plan fewer crops or media.</source>
            <translation>Ein Block umfasst {n} Schalen, und keine Etage hat so viele Plätze: eine längere Etage nehmen oder weniger Kulturen oder Substrate planen.</translation>
        </message>
        <message>
            <source>{what} is set for whole shelves: that cannot be tested with one shelf. It takes {n} shelves at the same time, one for each setting, and at least two such sets or rounds.</source>
            <translation>{what} gilt für ganze Etagen: das lässt sich mit einer Etage nicht prüfen. Es braucht {n} Etagen zur selben Zeit, eine je Einstellung, und mindestens zwei solche Sätze oder Runden.</translation>
        </message>
        <message>
            <source>This is no place: type its number along the shelf.</source>
            <translation>Das ist kein Platz: bitte die Nummer entlang der Etage eintippen.</translation>
        </message>
        <message>
            <source>This block stands on several shelves: type shelf and place, as {example}.</source>
            <translation>Dieser Block steht auf mehreren Etagen: bitte Etage und Platz eintippen, etwa {example}.</translation>
        </message>
        <message>
            <source>There is no place {typed} in this block: it has {first} to {last} on shelf {shelves}.</source>
            <translation>Einen Platz {typed} gibt es in diesem Block nicht: er hat {first} bis {last} auf Etage {shelves}.</translation>
        </message>
        <message>
            <source>Place {place} is given to two trays.</source>
            <translation>Platz {place} ist an zwei Schalen vergeben.</translation>
        </message>
        <message>
            <source>Shelf {shelf} is {level} already, and a whole shelf gets one setting.</source>
            <translation>Etage {shelf} ist schon {level}, und eine ganze Etage bekommt eine Einstellung.</translation>
        </message>
        <message>
            <source>One tray of each: you will see numbers, and no verdict.</source>
            <translation>Eine Schale von jedem: es gibt Zahlen, aber kein Urteil.</translation>
        </message>
        <message>
            <source>medium</source>
            <translation>Substrat</translation>
        </message>
        <message>
            <source>treatment</source>
            <translation>Variante</translation>
        </message>
        <message>
            <source>{n} trays of each {what} on each crop: if two differ by {margin} {unit}, the chance to tell which is better is {likely} ({worst} to {best}, as your trays spread more or less than assumed).</source>
            <translation>{n} Schalen je {what} und Kultur: Unterscheiden sich zwei um {margin} {unit}, ist die Wahrscheinlichkeit, das Bessere zu erkennen, {likely} ({worst} bis {best}, je nachdem, ob die Schalen mehr oder weniger streuen als angenommen).</translation>
        </message>
        <message>
            <source>{n} trays of each {what} on each crop: if a new one truly is as good, the chance to show it within {margin} {unit} is {likely} ({worst} to {best}, as your trays spread more or less than assumed).</source>
            <translation>{n} Schalen je {what} und Kultur: Ist etwas Neues wirklich gleich gut, ist die Wahrscheinlichkeit, das im Spielraum ({margin} {unit}) zu zeigen, {likely} ({worst} bis {best}, je nachdem, ob die Schalen mehr oder weniger streuen als angenommen).</translation>
        </message>
        <message>
            <source>More than 60 trays of each would be needed for 80 %: choose a wider margin, or make your trays more alike.</source>
            <translation>Für 80 % wären mehr als 60 Schalen von jedem nötig: einen weiteren Spielraum wählen oder die Schalen gleichmäßiger machen.</translation>
        </message>
        <message>
            <source>{likely} trays of each are enough for 80 % ({low} if your trays lie closer together, more than 60 if they spread more).</source>
            <translation>{likely} Schalen von jedem genügen für 80 % ({low}, wenn die Schalen enger beieinanderliegen, mehr als 60, wenn sie mehr streuen).</translation>
        </message>
        <message>
            <source>{likely} trays of each are enough for 80 % ({low} if your trays lie closer together, {high} if they spread more).</source>
            <translation>{likely} Schalen von jedem genügen für 80 % ({low}, wenn die Schalen enger beieinanderliegen, {high}, wenn sie mehr streuen).</translation>
        </message>
        <message>
            <source>Six trays of each can tell apart what differs by {least} {unit} or more.</source>
            <translation>Sechs Schalen von jedem können unterscheiden, was {least} {unit} oder mehr auseinanderliegt.</translation>
        </message>
        <message>
            <source>Six trays of each show that a medium is as good only within {least} {unit}. For your margin of {margin} they are too few: the answer would most likely be: not shown.</source>
            <translation>Sechs Schalen von jedem zeigen nur im Rahmen von {least} {unit}, dass ein Substrat gleich gut ist. Für den Spielraum von {margin} sind es zu wenige: die Antwort wäre höchstwahrscheinlich: nicht belegt.</translation>
        </message>
        <message>
            <source>Six trays of each show that a medium is as good within {least} {unit}: enough for your margin of {margin}.</source>
            <translation>Sechs Schalen von jedem zeigen im Rahmen von {least} {unit}, dass ein Substrat gleich gut ist: genug für den Spielraum von {margin}.</translation>
        </message>
        <message>
            <source>Assumed: trays of one kind, side by side, lie about {sd} {unit} apart (standard deviation). This is {source}. Look at the three curves: they stand for 0.7, 1 and 1.4 times as much.</source>
            <translation>Angenommen: Schalen derselben Art, nebeneinander, liegen etwa {sd} {unit} auseinander (Standardabweichung). Das ist {source}. Die drei Kurven stehen für das 0,7-, 1- und 1,4-Fache.</translation>
        </message>
        <message>
            <source>Learned from {source}: trays of one kind, side by side, lie {sd} {unit} apart (standard deviation; the true one between {low} and {high} with 95 %). The three curves stand for 0.7, 1 and 1.4 times as much.</source>
            <translation>Gelernt ({source}): Schalen derselben Art, nebeneinander, liegen {sd} {unit} auseinander (Standardabweichung; die wahre mit 95 % zwischen {low} und {high}). Die drei Kurven stehen für das 0,7-, 1- und 1,4-Fache.</translation>
        </message>
        <message>
            <source>Reckoned in: the camera may see two media {sd} points apart that are covered alike; more trays do not help against that.</source>
            <translation>Mitgerechnet: die Kamera kann zwei gleich bedeckte Substrate {sd} Punkte auseinander sehen; dagegen helfen mehr Schalen nicht.</translation>
        </message>
        <message>
            <source>The {what} is set for whole shelves, so shelves are what is compared, not trays. With one set of shelves it cannot be tested.</source>
            <translation>Gilt für ganze Etagen: {what}. Darum werden Etagen verglichen, nicht Schalen. Mit einem Satz Etagen lässt es sich nicht prüfen.</translation>
        </message>
        <message>
            <source>The {what} is set for whole shelves, so shelves are what is compared, not trays. Your {n} sets of shelves show it with a chance of {chance}; 60 sets would not be enough for 80 %.</source>
            <translation>Gilt für ganze Etagen: {what}. Darum werden Etagen verglichen, nicht Schalen. {n} Sätze Etagen zeigen es mit einer Wahrscheinlichkeit von {chance}; 60 Sätze wären nicht genug für 80 %.</translation>
        </message>
        <message>
            <source>The {what} is set for whole shelves, so shelves are what is compared, not trays. Your {n} sets of {settings} shelves show it with a chance of {chance}; {needed} sets are enough for 80 %, if shelves spread as much as trays do.</source>
            <translation>Gilt für ganze Etagen: {what}. Darum werden Etagen verglichen, nicht Schalen. {n} Sätze von {settings} Etagen zeigen es mit einer Wahrscheinlichkeit von {chance}; {needed} Sätze genügen für 80 %, wenn Etagen so viel streuen wie Schalen.</translation>
        </message>
        <message>
            <source>The media stand side by side on every shelf and are compared there, set by set: for them the chance is {chance}.</source>
            <translation>Die Substrate stehen auf jeder Etage nebeneinander und werden dort verglichen, Satz für Satz: für sie ist die Wahrscheinlichkeit {chance}.</translation>
        </message>
        <message>
            <source>{grams:.0f} g of {crop} seed.</source>
            <translation>{grams:.0f} g Saatgut von {crop}.</translation>
        </message>
        <message>
            <source>Seed of {crop}: nobody has said how much goes on a tray.</source>
            <translation>Saatgut von {crop}: wie viel auf eine Schale kommt, ist nicht angegeben.</translation>
        </message>
        <message>
            <source>From {begins} to {ends}, {days} days.</source>
            <translation>Von {begins} bis {ends}, {days} Tage.</translation>
        </message>
        <message>
            <source>{trays} trays in {rounds} rounds of sowing; {most} places on the shelves at the same time.</source>
            <translation>{trays} Schalen in {rounds} Runden der Aussaat; {most} Plätze auf den Etagen zur selben Zeit.</translation>
        </message>
        <message>
            <source>{trays} trays, sown on one day, each on its own place.</source>
            <translation>{trays} Schalen, an einem Tag gesät, jede auf eigenem Platz.</translation>
        </message>
        <message>
            <source>Kept on {day}, nothing is sown yet.</source>
            <translation>Festgehalten am {day}, noch ist nichts gesät.</translation>
        </message>
        <message>
            <source>Kept on {day}, before the first tray was sown.</source>
            <translation>Festgehalten am {day}, bevor die erste Schale gesät war.</translation>
        </message>
        <message>
            <source>Kept on {day}, after the first tray was sown: the verdict says so. Reason: {why}</source>
            <translation>Festgehalten am {day}, nachdem die erste Schale gesät war: das Urteil sagt es. Grund: {why}</translation>
        </message>
        <message>
            <source>none given</source>
            <translation>keiner angegeben</translation>
        </message>
        <message>
            <source>{kind} can be 1 (yes) or 0 (no); {value:g} was given.</source>
            <translation>{kind} kann 1 (ja) oder 0 (nein) sein; angegeben wurde {value:g}.</translation>
        </message>
        <message>
            <source>{kind} can be {low:g} to {high:g}; {value:g} was given.</source>
            <translation>{kind} kann {low:g} bis {high:g} sein; angegeben wurde {value:g}.</translation>
        </message>
        <message>
            <source>{kind} can be {low:g} to {high:g} {unit}; {value:g} was given.</source>
            <translation>{kind} kann {low:g} bis {high:g} {unit} sein; angegeben wurde {value:g}.</translation>
        </message>
        <message>
            <source>This file is in the book already; nothing was added.</source>
            <translation>Diese Datei ist schon im Buch; nichts wurde hinzugefügt.</translation>
        </message>
        <message>
            <source>Readings added: {added}; in the book already: {known}.</source>
            <translation>Messwerte hinzugefügt: {added}; schon im Buch: {known}.</translation>
        </message>
        <message>
            <source>1 reading added.</source>
            <translation>1 Messwert hinzugefügt.</translation>
        </message>
        <message>
            <source>{added} readings added.</source>
            <translation>{added} Messwerte hinzugefügt.</translation>
        </message>
        <message>
            <source>Said: seen.</source>
            <translation>Gesagt: gesehen.</translation>
        </message>
        <message>
            <source>Said: until tomorrow.</source>
            <translation>Gesagt: bis morgen.</translation>
        </message>
        <message>
            <source>The media as materials</source>
            <translation>Die Substrate als Material</translation>
        </message>
        <message>
            <source>What a photograph cannot see, with how each number was had. Media differ in many ways at once, so there is no grand total.</source>
            <translation>Was ein Foto nicht sehen kann, und woher jede Zahl kommt. Substrate unterscheiden sich in vielem zugleich, darum gibt es keine Gesamtnote.</translation>
        </message>
        <message>
            <source>Properties of which nothing is known yet for any of these media are left out here: {n}. Materials says what would fill them.</source>
            <translation>Eigenschaften, von denen bei keinem dieser Substrate etwas bekannt ist, sind hier weggelassen: {n}. Was sie füllt, steht unter Material.</translation>
        </message>
        <message>
            <source>What else tells them apart</source>
            <translation>Was sie sonst unterscheidet</translation>
        </message>
        <message>
            <source>Of all crops of the trial. None of this moves the answers.</source>
            <translation>Über alle Kulturen des Versuchs. Nichts davon bewegt die Antworten.</translation>
        </message>
        <message>
            <source>What went wrong</source>
            <translation>Was schiefging</translation>
        </message>
        <message>
            <source>No tray was thrown away, no mold was taken out, and no photo of its trays was refused.</source>
            <translation>Keine Schale wurde weggeworfen, kein Schimmel entfernt und kein Foto ihrer Schalen abgewiesen.</translation>
        </message>
        <message>
            <source>What else went wrong is named in the full report: {n}.</source>
            <translation>Was sonst schiefging, steht im vollständigen Bericht: {n}.</translation>
        </message>
        <message>
            <source>Tray {code} ({crop}, {medium}) was thrown away on {day}: {why}.</source>
            <translation>Schale {code} ({crop}, {medium}) wurde am {day} weggeworfen: {why}.</translation>
        </message>
        <message>
            <source>no reason was noted</source>
            <translation>kein Grund notiert</translation>
        </message>
        <message>
            <source>nothing else was noted</source>
            <translation>sonst wurde nichts notiert</translation>
        </message>
        <message>
            <source>Mold was taken out of tray {code} ({crop}, {medium}) on {day}: {what}.</source>
            <translation>Aus Schale {code} ({crop}, {medium}) wurde am {day} Schimmel entfernt: {what}.</translation>
        </message>
        <message>
            <source>Tray {code} ({crop}, {medium}) was moved on {day}: {what}.</source>
            <translation>Schale {code} ({crop}, {medium}) wurde am {day} umgestellt: {what}.</translation>
        </message>
        <message>
            <source>Tray {code}, {when}: a photo does not count, {state}: {reason}.</source>
            <translation>Schale {code}, {when}: ein Foto zählt nicht, {state}: {reason}.</translation>
        </message>
        <message>
            <source>day {day}</source>
            <translation>Tag {day}</translation>
        </message>
        <message>
            <source>before sowing</source>
            <translation>vor der Aussaat</translation>
        </message>
        <message>
            <source>What needed a look</source>
            <translation>Was einen Blick brauchte</translation>
        </message>
        <message>
            <source>No line of the look list was noted for this trial; lines are noted on days on which the list is looked at.</source>
            <translation>Von diesem Versuch ist keine Zeile der Blickliste vermerkt; vermerkt wird an Tagen, an denen die Liste angesehen wird.</translation>
        </message>
        <message>
            <source>Look list</source>
            <translation>Blickliste</translation>
        </message>
        <message>
            <source>Tray</source>
            <translation>Schale</translation>
        </message>
        <message>
            <source>First</source>
            <translation>Zuerst</translation>
        </message>
        <message>
            <source>Last</source>
            <translation>Zuletzt</translation>
        </message>
        <message>
            <source>What</source>
            <translation>Was</translation>
        </message>
        <message>
            <source>Then</source>
            <translation>Danach</translation>
        </message>
        <message>
            <source>Older ones are kept in the book: {n}.</source>
            <translation>Ältere bleiben im Buch: {n}.</translation>
        </message>
        <message>
            <source>temperature of the air</source>
            <translation>Temperatur der Luft</translation>
        </message>
        <message>
            <source>humidity of the air</source>
            <translation>Feuchte der Luft</translation>
        </message>
        <message>
            <source>temperature of the medium</source>
            <translation>Temperatur des Substrats</translation>
        </message>
        <message>
            <source>water given to a tray</source>
            <translation>Wassergabe je Schale</translation>
        </message>
        <message>
            <source>feed given to a tray</source>
            <translation>Düngergabe je Schale</translation>
        </message>
        <message>
            <source>Alike for all that is compared</source>
            <translation>Gleich für alles, was verglichen wird</translation>
        </message>
        <message>
            <source>What all trays had</source>
            <translation>Was alle Schalen hatten</translation>
        </message>
        <message>
            <source>How the trays were grown</source>
            <translation>Wie die Schalen gezogen wurden</translation>
        </message>
        <message>
            <source>No tray got a treatment of the plan.</source>
            <translation>Keine Schale bekam eine Variante des Plans.</translation>
        </message>
        <message>
            <source>As noted of 1 tray</source>
            <translation>Wie von 1 Schale notiert</translation>
        </message>
        <message>
            <source>As noted of {n} trays</source>
            <translation>Wie von {n} Schalen notiert</translation>
        </message>
        <message>
            <source>{what} – {conditions}.</source>
            <translation>{what} – {conditions}.</translation>
        </message>
        <message>
            <source>Not alike</source>
            <translation>Nicht gleich</translation>
        </message>
        <message>
            <source>Not alike (in brackets: how many trays)</source>
            <translation>Nicht gleich (in Klammern: wie viele Schalen)</translation>
        </message>
        <message>
            <source>Noted of some trays only: {conditions}. Whether the others were grown so cannot be told.</source>
            <translation>Nur von einigen Schalen notiert: {conditions}. Ob die anderen ebenso gezogen wurden, lässt sich nicht sagen.</translation>
        </message>
        <message>
            <source>Planned for all trays: {setting}. These had something else: {codes}.</source>
            <translation>Für alle Schalen geplant: {setting}. Etwas anderes hatten: {codes}.</translation>
        </message>
        <message>
            <source>Told of the trays that have a number, for only these are compared; without one: {codes}.</source>
            <translation>Das gilt für die Schalen, die eine Zahl haben, denn nur diese werden verglichen; ohne Zahl: {codes}.</translation>
        </message>
        <message>
            <source>{codes} and {n} more</source>
            <translation>{codes} und {n} weitere</translation>
        </message>
        <message>
            <source>Air, medium and water</source>
            <translation>Luft, Substrat und Wasser</translation>
        </message>
        <message>
            <source>Mean until the day that is read (least to most)</source>
            <translation>Mittel bis zum abgelesenen Tag (kleinster bis größter Wert)</translation>
        </message>
        <message>
            <source>{condition}, {unit}</source>
            <translation>{condition}, {unit}</translation>
        </message>
        <message>
            <source>not noted</source>
            <translation>nicht notiert</translation>
        </message>
        <message>
            <source>{mean} ({least} to {most})</source>
            <translation>{mean} ({least} bis {most})</translation>
        </message>
        <message>
            <source>{mean} ({least} to {most}), {known} of {trays} trays</source>
            <translation>{mean} ({least} bis {most}), {known} von {trays} Schalen</translation>
        </message>
        <message>
            <source>Not noted of any tray: {conditions}. Whether all had the same of it cannot be told from this report.</source>
            <translation>Von keiner Schale notiert: {conditions}. Ob darin alle gleich waren, lässt sich aus diesem Bericht nicht sagen.</translation>
        </message>
        <message>
            <source>Mold: a flag is a reason to look, no finding, and no flag is no proof that a tray is safe. Do not taste, sell or give away from a tray with mold; open it away from others, with gloves and a suitable respirator, keep people with asthma or weak immunity away, and clean trays and tools.</source>
            <translation>Schimmel: ein Hinweis ist ein Grund nachzusehen, kein Befund, und kein Hinweis ist kein Beweis, dass eine Schale unbedenklich ist. Von einer Schale mit Schimmel nichts kosten, verkaufen oder weitergeben; abseits von anderen öffnen, mit Handschuhen und geeigneter Atemschutzmaske, Menschen mit Asthma oder schwacher Abwehr fernhalten, Schalen und Werkzeug reinigen.</translation>
        </message>
        <message>
            <source>Food that is sold is ruled by local food-safety law and its inspectors, and so are feeds from manure or waste. This report is no certificate and no legal judgement.</source>
            <translation>Verkaufte Lebensmittel unterliegen dem örtlichen Lebensmittelrecht und seiner Überwachung, ebenso Dünger aus Mist oder Abfall. Dieser Bericht ist keine Bescheinigung und kein rechtliches Urteil.</translation>
        </message>
        <message>
            <source>Electric heat and water together: follow the maker's and local electrical rules.</source>
            <translation>Heizstrom und Wasser zusammen: die Angaben des Herstellers und die örtlichen Vorschriften für Elektroanlagen einhalten.</translation>
        </message>
        <message>
            <source>Footprint figures are screening estimates, no certified assessment.</source>
            <translation>Zahlen zur Klimawirkung sind grobe Schätzungen, keine geprüfte Bilanz.</translation>
        </message>
        <message>
            <source>The answers hold for the crops, seed lots, rack and season of this trial; elsewhere they are a reason to try, no proof.</source>
            <translation>Die Antworten gelten für Kulturen, Saatgutpartien, Regal und Jahreszeit dieses Versuchs; anderswo sind sie ein Grund zum Probieren, kein Beweis.</translation>
        </message>
        <message>
            <source>Each photo was turned into a top view of the tray with 2 pixels a millimetre, and every pixel was told to be canopy or not by the method {versions}.</source>
            <translation>Jedes Foto wurde zu einer Draufsicht der Schale mit 2 Pixeln je Millimeter, und jedes Pixel wurde mit der Methode {versions} dem Bestand zugeordnet oder nicht.</translation>
        </message>
        <message>
            <source>No photo of the day that is read was scored.</source>
            <translation>Kein Foto von dem Tag, der abgelesen wird, wurde ausgewertet.</translation>
        </message>
        <message>
            <source>Coverage is the share of the inner area that is canopy. Uniformity is read from the coverage of 72 cells of the tray. The canopy score joins coverage, uniformity, colour and mold as desirabilities by their weighted geometric mean (Derringer &amp; Suich 1980). In it coverage and uniformity are counted as a share of the growing bed, without rim and wall of the tray, where every photo that is compared tells it; otherwise as a share of the inner area. For the limits of coverage a share of the bed is set on the scale of what is seen from straight above: 47 % of the bed stand for 30 %.</source>
            <translation>Deckung ist der Anteil der Innenfläche, der Bestand ist. Gleichmäßigkeit wird aus der Deckung von 72 Zellen der Schale gelesen. Die Bestandswertung verbindet Deckung, Gleichmäßigkeit, Farbe und Schimmel als Erwünschtheiten durch ihr gewichtetes geometrisches Mittel (Derringer &amp; Suich 1980). Deckung und Gleichmäßigkeit zählen darin als Anteil an der Substratfläche, ohne Rand und Wand der Schale, wo jedes verglichene Foto ihn nennt; sonst als Anteil an der Innenfläche. Für die Grenzen der Deckung kommt ein Anteil an der Substratfläche auf den Maßstab dessen, was genau von oben zu sehen ist: 47 % der Fläche stehen für 30 %.</translation>
        </message>
        <message>
            <source>The tray is the unit. Its number is read on the day that was fixed; a tray without a usable photo of that day has no number and none is put in its place. Scores of two versions of a method are never mixed.</source>
            <translation>Die Schale ist die Einheit. Ihre Zahl wird an dem festgelegten Tag abgelesen; eine Schale ohne brauchbares Foto von diesem Tag hat keine Zahl, und keine tritt an ihre Stelle. Wertungen zweier Versionen einer Methode werden nie vermischt.</translation>
        </message>
        <message>
            <source>Colours in charts are those of Okabe &amp; Ito (2008); each medium has its own marker and dash as well.</source>
            <translation>Die Farben in Diagrammen sind die von Okabe &amp; Ito (2008); jedes Substrat hat auch eigene Zeichen und Striche.</translation>
        </message>
        <message>
            <source>What the trays look like</source>
            <translation>Wie die Schalen aussehen</translation>
        </message>
        <message>
            <source>There is no scored photo of the day that is read.</source>
            <translation>Es gibt kein ausgewertetes Foto von dem Tag, der abgelesen wird.</translation>
        </message>
        <message>
            <source>{crop} on day {day}</source>
            <translation>{crop} an Tag {day}</translation>
        </message>
        <message>
            <source>{medium}, {tray}</source>
            <translation>{medium}, {tray}</translation>
        </message>
        <message>
            <source>typical: {code}, score {value}</source>
            <translation>typisch: {code}, Wertung {value}</translation>
        </message>
        <message>
            <source>highest: {code}, score {value}</source>
            <translation>höchste: {code}, Wertung {value}</translation>
        </message>
        <message>
            <source>lowest: {code}, score {value}</source>
            <translation>niedrigste: {code}, Wertung {value}</translation>
        </message>
        <message>
            <source>Growth by medium</source>
            <translation>Wachstum nach Substrat</translation>
        </message>
        <message>
            <source>No photo of this trial has a coverage that is sure.</source>
            <translation>Kein Foto dieses Versuchs hat eine sichere Deckung.</translation>
        </message>
        <message>
            <source>What was asked</source>
            <translation>Was gefragt wurde</translation>
        </message>
        <message>
            <source>This book has no trial. Plan one, and its report will stand here.</source>
            <translation>Dieses Buch hat keinen Versuch. Einen planen, dann steht sein Bericht hier.</translation>
        </message>
        <message>
            <source>No plan was kept for this trial: nothing was fixed beforehand.</source>
            <translation>Für diesen Versuch ist kein Plan festgehalten: vorher wurde nichts festgelegt.</translation>
        </message>
        <message>
            <source>No plan was kept for this trial. A margin was set; the answers say when. Nothing else was fixed beforehand.</source>
            <translation>Für diesen Versuch wurde kein Plan festgehalten. Ein Spielraum wurde festgelegt; die Antworten sagen, wann. Sonst war vorher nichts festgelegt.</translation>
        </message>
        <message>
            <source>The plan was changed later. {when} Version {version}: {why}.</source>
            <translation>Der Plan wurde später geändert. {when} Version {version}: {why}.</translation>
        </message>
        <message>
            <source>Fixed only after sowing</source>
            <translation>Erst nach der Aussaat festgelegt</translation>
        </message>
        <message>
            <source>Fixed beforehand</source>
            <translation>Vorher festgelegt</translation>
        </message>
        <message>
            <source>What was fixed</source>
            <translation>Was festgelegt wurde</translation>
        </message>
        <message>
            <source>As planned</source>
            <translation>Wie geplant</translation>
        </message>
        <message>
            <source>Trusted</source>
            <translation>Bewährt</translation>
        </message>
        <message>
            <source>Against it</source>
            <translation>Dagegen</translation>
        </message>
        <message>
            <source>{crop}, read on day {day}</source>
            <translation>{crop}, abgelesen an Tag {day}</translation>
        </message>
        <message>
            <source>Crop</source>
            <translation>Kultur</translation>
        </message>
        <message>
            <source>Measure that decides</source>
            <translation>Maß, das entscheidet</translation>
        </message>
        <message>
            <source>Beside it</source>
            <translation>Daneben</translation>
        </message>
        <message>
            <source>{measure}, margin {margin:g} {unit}</source>
            <translation>{measure}, Spielraum {margin:g} {unit}</translation>
        </message>
        <message>
            <source>The same for all</source>
            <translation>Für alle gleich</translation>
        </message>
        <message>
            <source>Trays</source>
            <translation>Schalen</translation>
        </message>
        <message>
            <source>{trays} of each treatment and crop, in blocks: {blocks}</source>
            <translation>{trays} je Variante und Kultur, in Blöcken: {blocks}</translation>
        </message>
        <message>
            <source>No trial yet</source>
            <translation>Noch kein Versuch</translation>
        </message>
        <message>
            <source>Report of a trial of growing media, made on {day}.</source>
            <translation>Bericht über einen Versuch mit Substraten, erstellt am {day}.</translation>
        </message>
        <message>
            <source>Answers</source>
            <translation>Antworten</translation>
        </message>
        <message>
            <source>No tray of this trial is sown yet, so there is nothing to compare.</source>
            <translation>Noch keine Schale dieses Versuchs ist gesät, also gibt es nichts zu vergleichen.</translation>
        </message>
        <message>
            <source>{crop}: {measure} on day {day}</source>
            <translation>{crop}: {measure} an Tag {day}</translation>
        </message>
        <message>
            <source>{crop}: {measure}</source>
            <translation>{crop}: {measure}</translation>
        </message>
        <message>
            <source>How this was worked out</source>
            <translation>Wie das gerechnet wurde</translation>
        </message>
        <message>
            <source>All steps, with their sources, are in the full report.</source>
            <translation>Alle Schritte, mit ihren Quellen, stehen im vollständigen Bericht.</translation>
        </message>
        <message>
            <source>{crop}, {measure}:</source>
            <translation>{crop}, {measure}:</translation>
        </message>
        <message>
            <source>Cautions</source>
            <translation>Vorsicht</translation>
        </message>
        <message>
            <source>Pictures were chosen by a rule: of each medium the tray with the median score on the day that is read (typical; of an even count the lower of the two in the middle), the one with the highest and the one with the lowest.</source>
            <translation>Die Bilder wurden nach einer Regel gewählt: von jedem Substrat die Schale mit der mittleren Wertung an dem Tag, der abgelesen wird (typisch; bei gerader Zahl die niedrigere der beiden mittleren), die mit der höchsten und die mit der niedrigsten.</translation>
        </message>
        <message>
            <source>Pictures were chosen by a rule: of each medium the tray with the median score on the day that is read, of an even count the lower of the two in the middle.</source>
            <translation>Die Bilder wurden nach einer Regel gewählt: von jedem Substrat die Schale mit der mittleren Wertung an dem Tag, der abgelesen wird, bei gerader Zahl die niedrigere der beiden mittleren.</translation>
        </message>
        <message>
            <source>there are files in {folder} already, left as they are: choose an empty folder for the export</source>
            <translation>in {folder} liegen schon Dateien, sie blieben, wie sie waren: für den Export einen leeren Ordner wählen</translation>
        </message>
        <message>
            <source>{folder} is no export that can be brought in, and nothing of it was kept: {what}</source>
            <translation>{folder} ist kein Export, der sich einlesen lässt, und nichts davon wurde gespeichert: {what}</translation>
        </message>
        <message>
            <source>{folder} is no packed book, or it was damaged on its way: nothing was unpacked; have it packed and sent once more</source>
            <translation>{folder} ist kein gepacktes Buch, oder es wurde unterwegs beschädigt: nichts wurde ausgepackt; noch einmal packen und schicken lassen</translation>
        </message>
        <message>
            <source>there is no file {folder}: look at its name; that of a packed book ends in .evenstand</source>
            <translation>es gibt keine Datei {folder}: ihren Namen prüfen; der eines gepackten Buches endet auf .evenstand</translation>
        </message>
        <message>
            <source>{folder} is this very book, and nothing was changed: choose another grower's book to bring in</source>
            <translation>{folder} ist ebendieses Buch, und nichts wurde geändert: das Buch eines anderen Anbauers wählen, um es einzulesen</translation>
        </message>
        <message>
            <source>there is a file {folder} already, left as it is: choose another name for the pack</source>
            <translation>es gibt schon eine Datei {folder}, sie blieb, wie sie ist: einen anderen Namen für das gepackte Buch wählen</translation>
        </message>
        <message>
            <source>nothing can be written in {folder}, and nothing half written is left there: choose another folder</source>
            <translation>in {folder} lässt sich nichts schreiben, und nichts halb Geschriebenes blieb dort: einen anderen Ordner wählen</translation>
        </message>
        <message>
            <source>The row names no tray and no shelf.</source>
            <translation>Die Zeile nennt keine Schale und keine Etage.</translation>
        </message>
        <message>
            <source>{count} trays were called {code} then, so nobody knows which is meant: rename one, or note when the old one ended.</source>
            <translation>{count} Schalen hießen damals {code}, also weiß niemand, welche gemeint ist: eine umbenennen oder notieren, wann die alte endete.</translation>
        </message>
        <message>
            <source>No tray {code} was growing then.</source>
            <translation>Damals wuchs keine Schale {code}.</translation>
        </message>
        <message>
            <source>The book has no tray {code}.</source>
            <translation>Das Buch hat keine Schale {code}.</translation>
        </message>
        <message>
            <source>Not alike, though the plan does not vary it: {conditions}. A difference can come from that as well as from what was to be compared.</source>
            <translation>Nicht gleich, obwohl der Plan es nicht variiert: {conditions}. Ein Unterschied kann davon ebenso kommen wie von dem, was verglichen werden sollte.</translation>
        </message>
        <message>
            <source>Not alike, though no plan was made to vary it: {conditions}. A difference can come from that as well as from the medium.</source>
            <translation>Nicht gleich, obwohl kein Plan es variieren sollte: {conditions}. Ein Unterschied kann davon ebenso kommen wie vom Substrat.</translation>
        </message>
        <message>
            <source>The report of the trial tells what each had of it.</source>
            <translation>Der Bericht des Versuchs sagt, was jedes davon hatte.</translation>
        </message>
        <message>
            <source>Something else was drawn for the place of: {trays}. Sown so by a slip it does little harm; a medium that was named otherwise once photos were seen makes an answer worthless.</source>
            <translation>Für ihren Platz war etwas anderes ausgelost: {trays}. Aus Versehen so gesät, schadet es wenig; ein Substrat, das erst umbenannt wurde, als Fotos schon gesehen waren, macht eine Antwort wertlos.</translation>
        </message>
        <message>
            <source>No day was fixed before sowing; day {day} was taken, on which most trays have a photo.</source>
            <translation>Vor der Aussaat wurde kein Tag festgelegt; genommen wurde Tag {day}, von dem die meisten Schalen ein Foto haben.</translation>
        </message>
        <message>
            <source>No medium is named as the trusted one: name it on Materials, or plan the trial. Then the others are held against it.</source>
            <translation>Kein Substrat ist als bewährtes benannt: es unter Material benennen oder den Versuch planen. Daran werden die anderen dann gemessen.</translation>
        </message>
        <message>
            <source>No plan was kept before sowing: {trusted} is the one that was named among the media.</source>
            <translation>Vor der Saat wurde kein Plan festgehalten: {trusted} ist das unter den Substraten benannte.</translation>
        </message>
        <message>
            <source>No margin was set before sowing; the usual {margin} was taken.</source>
            <translation>Vor der Aussaat wurde kein Spielraum festgelegt; genommen wurde der übliche ({margin}).</translation>
        </message>
        <message>
            <source>The margin of {share:g} % of the mean of {trusted} is {margin:.1f} g in this trial.</source>
            <translation>Der Spielraum von {share:g} % des Mittels von {trusted} ist in diesem Versuch {margin:.1f} g.</translation>
        </message>
        <message>
            <source>The limits and weights of the canopy score that this plan keeps cannot be read; the usual ones were taken. Set them anew beside the verdict.</source>
            <translation>Die Grenzen und Gewichte der Bestandswertung, die dieser Plan festhält, lassen sich nicht lesen; die üblichen wurden genommen. Sie lassen sich neben dem Urteil neu setzen.</translation>
        </message>
        <message>
            <source>The plan names a confidence of {level:.1f} %; the intervals here are made for {fixed:.0f} %.</source>
            <translation>Der Plan nennt eine Sicherheit von {level:.1f} %; die Intervalle hier sind für {fixed:.0f} % gerechnet.</translation>
        </message>
        <message>
            <source>A margin of {margin} was set, and nobody knows when: read this verdict with care.</source>
            <translation>Ein Spielraum ({margin}) wurde festgelegt, und niemand weiß, wann: dieses Urteil mit Vorsicht lesen.</translation>
        </message>
        <message>
            <source>The margin of {margin} was set on {day}, before the first tray was sown.</source>
            <translation>Der Spielraum ({margin}) wurde am {day} festgelegt, vor der Aussaat der ersten Schale.</translation>
        </message>
        <message>
            <source>The margin of {margin} was set on {day}, after the first tray was sown, but before any photo that is compared was taken.</source>
            <translation>Der Spielraum ({margin}) wurde am {day} festgelegt, nach der Aussaat der ersten Schale, aber vor jedem Foto, das verglichen wird.</translation>
        </message>
        <message>
            <source>The margin of {margin} was set on {day}, when photos that are compared had been taken already: read this verdict with care.</source>
            <translation>Der Spielraum ({margin}) wurde am {day} festgelegt, als schon Fotos da waren, die verglichen werden: dieses Urteil mit Vorsicht lesen.</translation>
        </message>
        <message>
            <source>The plan was kept on {day}, after the first tray was sown: nothing was fixed before sowing.</source>
            <translation>Der Plan wurde am {day} festgehalten, nachdem die erste Schale gesät war: vor der Aussaat wurde nichts festgelegt.</translation>
        </message>
        <message>
            <source>The margin was changed after sowing, on {day}, from {old} to {new} ({why}): read this verdict with care.</source>
            <translation>Der Spielraum wurde nach der Aussaat geändert, am {day}, von {old} auf {new} ({why}): dieses Urteil mit Vorsicht lesen.</translation>
        </message>
        <message>
            <source>The margin was changed before sowing, on {day}, from {old} to {new} ({why}).</source>
            <translation>Der Spielraum wurde vor der Aussaat geändert, am {day}, von {old} auf {new} ({why}).</translation>
        </message>
        <message>
            <source>Limits and weights of the canopy score were changed after sowing, on {day} ({why}): read this verdict with care.</source>
            <translation>Grenzen und Gewichte der Bestandswertung wurden nach der Aussaat geändert, am {day} ({why}): dieses Urteil mit Vorsicht lesen.</translation>
        </message>
        <message>
            <source>The day on which {crop} is read was changed after sowing, on {on}, from day {old} to day {new} ({why}): read this verdict with care.</source>
            <translation>Der Tag, an dem {crop} abgelesen wird, wurde nach der Aussaat geändert, am {on}, von Tag {old} auf Tag {new} ({why}): dieses Urteil mit Vorsicht lesen.</translation>
        </message>
        <message>
            <source>What the others are held against was changed after sowing, on {on}, from {old} to {new} ({why}): read this verdict with care.</source>
            <translation>Woran die anderen gemessen werden, wurde nach der Aussaat geändert, am {on}, von {old} zu {new} ({why}): dieses Urteil mit Vorsicht lesen.</translation>
        </message>
        <message>
            <source>The measure that decides was changed after sowing, on {on}, from {old} to {new} ({why}): read this verdict with care.</source>
            <translation>Das entscheidende Maß wurde nach der Aussaat geändert, am {on}, von {old} zu {new} ({why}): dieses Urteil mit Vorsicht lesen.</translation>
        </message>
        <message>
            <source>How many trays of each are planned was changed after sowing, on {on}, from {old} to {new} ({why}): read this verdict with care.</source>
            <translation>Wie viele Schalen von jedem geplant sind, wurde nach der Aussaat geändert, am {on}, von {old} auf {new} ({why}): dieses Urteil mit Vorsicht lesen.</translation>
        </message>
        <message>
            <source>{margin:g} %</source>
            <translation>{margin:g} %</translation>
        </message>
        <message>
            <source>{margin:g} points</source>
            <translation>{margin:g} Punkte</translation>
        </message>
        <message>
            <source>On {trays} trays the eye gave {mean:+.1f} points against the photo, in 95 of 100 trays between {low:+.1f} and {high:+.1f}; agreement {icc:.2f} (ICC(2,1), 1 is perfect).</source>
            <translation>Bei {trays} Schalen gab das Auge {mean:+.1f} Punkte gegenüber dem Foto, bei 95 von 100 Schalen zwischen {low:+.1f} und {high:+.1f}; Übereinstimmung {icc:.2f} (ICC(2,1), 1 ist vollkommen).</translation>
        </message>
        <message>
            <source>In five grades of 20 points eye and photo put {same} of {trays} trays into the same one; weighted kappa {kappa:.2f} (1 is perfect, 0 is what chance alone would give).</source>
            <translation>In fünf Stufen zu 20 Punkten setzten Auge und Foto {same} von {trays} Schalen in dieselbe; gewichtetes Kappa {kappa:.2f} (1 ist vollkommen, 0 ergäbe der Zufall allein).</translation>
        </message>
        <message>
            <source>Of {again} trays seen twice the eye missed its own number by {sd:.1f} points (standard deviation of one score).</source>
            <translation>Bei {again} zweimal gezeigten Schalen verfehlte das Auge seine eigene Zahl um {sd:.1f} Punkte (Standardabweichung einer Note).</translation>
        </message>
        <message>
            <source>Too few trays were scored by eye and by photo to say whose numbers to trust.</source>
            <translation>Zu wenige Schalen wurden nach Augenmaß und nach Foto gewertet, um zu sagen, welchen Zahlen zu trauen ist.</translation>
        </message>
        <message>
            <source>Eye and photo say much the same: either may be trusted.</source>
            <translation>Auge und Foto sagen fast dasselbe: beiden ist zu trauen.</translation>
        </message>
        <message>
            <source>The eye does not agree with itself from one look to the next: trust the photo.</source>
            <translation>Das Auge stimmt von einem Blick zum nächsten nicht mit sich überein: dem Foto trauen.</translation>
        </message>
        <message>
            <source>Whether eye and photo say much the same cannot be told from so few trays: score more before you trust either alone.</source>
            <translation>Ob Auge und Foto etwa dasselbe sagen, lässt sich an so wenigen Schalen nicht erkennen: mehr werten, bevor einem davon allein zu trauen ist.</translation>
        </message>
        <message>
            <source>Eye and photo differ, and too few trays were seen twice to say how sure the eye is of itself: trust neither alone.</source>
            <translation>Auge und Foto weichen voneinander ab, und zu wenige Schalen wurden zweimal gezeigt, um zu sagen, wie sicher das Auge ist: keinem allein trauen.</translation>
        </message>
        <message>
            <source>The eye agrees with itself but not with the photo, so the two see different things: look at the trays on which they differ most before you trust either.</source>
            <translation>Das Auge stimmt mit sich überein, aber nicht mit dem Foto; beide sehen also Verschiedenes: erst die Schalen ansehen, bei denen sie am meisten abweichen.</translation>
        </message>
        <message>
            <source>Photographed more than once on the day that is read, and the last photo counts, one in doubt only where there is no other: {trays}.</source>
            <translation>An dem Tag, der abgelesen wird, mehr als einmal fotografiert, und das letzte Foto zählt, ein zweifelhaftes nur, wo es kein anderes gibt: {trays}.</translation>
        </message>
        <message>
            <source>Photographed more than once on the day that is read, and the last photo counts: {trays}.</source>
            <translation>An dem Tag, der abgelesen wird, mehr als einmal fotografiert, und das letzte Foto zählt: {trays}.</translation>
        </message>
        <message>
            <source>In doubt is the photo that counts of {trays}, for glare, something that hides part of the tray, faded colours or coloured light: their coverage may be far off.</source>
            <translation>Zweifelhaft ist das Foto, das zählt, bei {trays}, weil Licht spiegelt, etwas einen Teil der Schale verdeckt, Farben blass sind oder das Licht farbig ist: ihre Deckung kann weit danebenliegen.</translation>
        </message>
        <message>
            <source>Canopy mended by hand on the photo that counts: {trays}. Who knows the medium may see what was hoped for; what was measured is kept.</source>
            <translation>Bestand auf dem Foto, das zählt, von Hand nachgebessert: {trays}. Wer das Substrat kennt, sieht vielleicht, was erhofft war; das Gemessene ist aufbewahrt.</translation>
        </message>
        <message>
            <source>sown on</source>
            <translation>gesät am</translation>
        </message>
        <message>
            <source>tray type</source>
            <translation>Schalentyp</translation>
        </message>
        <message>
            <source>seed lot</source>
            <translation>Saatgutpartie</translation>
        </message>
        <message>
            <source>dry seed a tray</source>
            <translation>trockenes Saatgut je Schale</translation>
        </message>
        <message>
            <source>seed soaked</source>
            <translation>Saatgut eingeweicht</translation>
        </message>
        <message>
            <source>seating</source>
            <translation>Lage</translation>
        </message>
        <message>
            <source>blackout</source>
            <translation>Dunkelphase</translation>
        </message>
        <message>
            <source>stacked</source>
            <translation>gestapelt</translation>
        </message>
        <message>
            <source>watering</source>
            <translation>Bewässerung</translation>
        </message>
        <message>
            <source>feed</source>
            <translation>Düngung</translation>
        </message>
        <message>
            <source>heat mat</source>
            <translation>Heizmatte</translation>
        </message>
        <message>
            <source>light</source>
            <translation>Licht</translation>
        </message>
        <message>
            <source>shelf</source>
            <translation>Etage</translation>
        </message>
        <message>
            <source>{first}, {next}</source>
            <translation>{first}, {next}</translation>
        </message>
        <message>
            <source>{condition}: {value}</source>
            <translation>{condition}: {value}</translation>
        </message>
        <message>
            <source>{first}; {next}</source>
            <translation>{first}; {next}</translation>
        </message>
        <message>
            <source>{condition}: {crop}</source>
            <translation>{condition}: {crop}</translation>
        </message>
        <message>
            <source>{value} ({trays})</source>
            <translation>{value} ({trays})</translation>
        </message>
        <message>
            <source>{values}, {n} others ({trays})</source>
            <translation>{values}, {n} andere ({trays})</translation>
        </message>
        <message>
            <source>{crop} {value}</source>
            <translation>{crop} {value}</translation>
        </message>
        <message>
            <source>{first} / {next}</source>
            <translation>{first} / {next}</translation>
        </message>
        <message>
            <source>{values} and {n} others</source>
            <translation>{values} und {n} andere</translation>
        </message>
        <message>
            <source>{values} (as many trays of each)</source>
            <translation>{values} (von allem gleich viele Schalen)</translation>
        </message>
        <message>
            <source>yes</source>
            <translation>ja</translation>
        </message>
        <message>
            <source>no</source>
            <translation>nein</translation>
        </message>
        <message>
            <source>1 day</source>
            <translation>1 Tag</translation>
        </message>
        <message>
            <source>{days:g} days</source>
            <translation>{days:g} Tage</translation>
        </message>
        <message>
            <source>Coverage and uniformity are counted here as a share of the growing bed, which is fairer to media at different heights in the tray; the coverage shown elsewhere is the share of the inner area.</source>
            <translation>Deckung und Gleichmäßigkeit zählen hier als Anteil an der Substratfläche, was Substraten in verschiedener Höhe der Schale eher gerecht wird; die sonst gezeigte Deckung ist der Anteil an der Innenfläche.</translation>
        </message>
        <message>
            <source>Coverage and uniformity are counted here as a share of the inner area, for the share of the growing bed is not known of: {trays}. A medium that lies deep in the tray looks thinner so. Score their photos again.</source>
            <translation>Deckung und Gleichmäßigkeit zählen hier als Anteil an der Innenfläche, denn der Anteil an der Substratfläche fehlt von: {trays}. Ein Substrat, das tief in der Schale liegt, sieht so dünner aus. Diese Fotos neu auswerten.</translation>
        </message>
        <message>
            <source>{n} of {all} trays</source>
            <translation>{n} von {all} Schalen</translation>
        </message>
        <message>
            <source>Canopy score</source>
            <translation>Bestandswertung</translation>
        </message>
        <message>
            <source>Yield</source>
            <translation>Ertrag</translation>
        </message>
        <message>
            <source>Score by eye</source>
            <translation>Note nach Augenmaß</translation>
        </message>
        <message>
            <source>Apart from mold, for which trays score nothing here, what moves the score of {medium} most is {part}, {value:.1f} against {trusted:.1f} %: worth {points:+.1f} points.</source>
            <translation>Abgesehen von Schimmel, für den Schalen hier null Punkte bekommen, bewegt die Wertung von {medium} am meisten: {part}, {value:.1f} gegen {trusted:.1f} %; das macht {points:+.1f} Punkte.</translation>
        </message>
        <message>
            <source>What moves the score of {medium} most is {part}, {value:.1f} against {trusted:.1f} %: worth {points:+.1f} points.</source>
            <translation>Die Wertung von {medium} bewegt am meisten: {part}, {value:.1f} gegen {trusted:.1f} %; das macht {points:+.1f} Punkte.</translation>
        </message>
        <message>
            <source>coverage of the growing bed</source>
            <translation>Deckung der Substratfläche</translation>
        </message>
        <message>
            <source>uniformity on the growing bed</source>
            <translation>Gleichmäßigkeit auf der Substratfläche</translation>
        </message>
        <message>
            <source>coverage</source>
            <translation>Deckung</translation>
        </message>
        <message>
            <source>uniformity</source>
            <translation>Gleichmäßigkeit</translation>
        </message>
        <message>
            <source>colour (canopy that is not pale)</source>
            <translation>Farbe (Bestand, der nicht blass ist)</translation>
        </message>
        <message>
            <source>mold</source>
            <translation>Schimmel</translation>
        </message>
        <message>
            <source>The margin is zero: then no medium can be shown to be as good, only better or worse. Set how much less you would still call as good.</source>
            <translation>Der Spielraum ist null: dann kann kein Substrat als gleich gut belegt werden, nur als besser oder schlechter. Angeben, wie viel weniger noch gleich gut heißen soll.</translation>
        </message>
        <message>
            <source>A setting belongs to whole shelves, so shelves were compared, not trays: the number of shelves counts.</source>
            <translation>Eine Einstellung gilt für ganze Etagen, darum wurden Etagen verglichen, nicht Schalen: es zählt die Zahl der Etagen.</translation>
        </message>
        <message>
            <source>Of some media there are twice as many trays as of others, so each difference rests on its own two media's trays, block by block, not on one common spread.</source>
            <translation>Von manchen Substraten gibt es doppelt so viele Schalen wie von anderen; darum beruht jeder Unterschied auf den Schalen seiner eigenen zwei Substrate, Block für Block, nicht auf einer gemeinsamen Streuung.</translation>
        </message>
        <message>
            <source>Spreads differ clearly between media, so each difference rests on its own two media's trays, block by block, not on one common spread.</source>
            <translation>Die Streuungen der Substrate unterscheiden sich deutlich, darum beruht jeder Unterschied auf den Schalen seiner beiden Substrate, Block für Block, nicht auf einer gemeinsamen Streuung.</translation>
        </message>
        <message>
            <source>The trusted medium may have been renamed half way: {one} and {other} never stand in one block, and together they stand in every block. They were taken as two.</source>
            <translation>Das bewährte Substrat wurde vielleicht unterwegs umbenannt: {one} und {other} stehen nie in einem Block, und zusammen stehen sie in jedem Block. Sie wurden als zwei genommen.</translation>
        </message>
        <message>
            <source>{one} and {other} never stand in one block, and together they stand in every block: is it one medium under two names? They were taken as two.</source>
            <translation>{one} und {other} stehen nie in einem Block, und zusammen stehen sie in jedem Block: ist es ein Substrat unter zwei Namen? Sie wurden als zwei genommen.</translation>
        </message>
        <message>
            <source>One number a tray; value = block + medium + chance, least squares with fixed blocks (Fisher 1935); means are adjusted as if each medium stood in every block.</source>
            <translation>Eine Zahl je Schale; Wert = Block + Substrat + Zufall, kleinste Quadrate mit festen Blöcken (Fisher 1935); die Mittel sind bereinigt, als stünde jedes Substrat in jedem Block.</translation>
        </message>
        <message>
            <source>That holds for this crop and measure alone: each further one is a question of its own, with its own chance to err. Of many answers let those count that were asked for beforehand.</source>
            <translation>Das gilt für diese Kultur und dieses Maß allein: jedes weitere ist eine eigene Frage, mit eigener Wahrscheinlichkeit, sich zu irren. Von vielen Antworten sollen die zählen, nach denen vorher gefragt war.</translation>
        </message>
        <message>
            <source>Better: the whole interval lies on the good side of zero. As good: it ends on the good side of the margin. Worse: it lies beyond the margin. Otherwise nothing is shown (Piaggio et al. 2012).</source>
            <translation>Besser: das ganze Intervall liegt auf der guten Seite von null. Gleich gut: es endet auf der guten Seite des Spielraums. Schlechter: es liegt jenseits des Spielraums. Sonst ist nichts belegt (Piaggio u. a. 2012).</translation>
        </message>
        <message>
            <source>How many trays would settle it is reckoned as if difference and spread were really those seen here, for a chance of {chance:.0f} %, in a trial that is read by itself.</source>
            <translation>Wie viele Schalen es klären würden, ist so gerechnet, als wären Unterschied und Streuung wirklich die hier gesehenen, für eine Aussicht von {chance:.0f} %, in einem Versuch, der für sich gelesen wird.</translation>
        </message>
        <message>
            <source>Standard errors hold {sd:.2f} for the way the camera sees media differently, on top of the trays' own spread (added as squares; JCGM 100:2008).</source>
            <translation>Die Standardfehler enthalten {sd:.2f} dafür, dass die Kamera Substrate verschieden sieht, zusätzlich zur Streuung der Schalen selbst (als Quadrate addiert; JCGM 100:2008).</translation>
        </message>
        <message>
            <source>Error variance {mse:.6g} on {df} degrees of freedom from {trays} trays in {blocks} blocks.</source>
            <translation>Fehlervarianz {mse:.6g} mit {df} Freiheitsgraden aus {trays} Schalen in {blocks} Blöcken.</translation>
        </message>
        <message>
            <source>Interval = difference -+ q x standard error with q = {q:.4f}, Student's t, one-sided 95 %: the lower limit holds with about 95 %, and so does the upper one; both at once hold with about 90 %.</source>
            <translation>Intervall = Unterschied -+ q x Standardfehler mit q = {q:.4f}, Students t, einseitig 95 %: die untere Grenze gilt mit etwa 95 %, die obere ebenso; beide zugleich gelten mit etwa 90 %.</translation>
        </message>
        <message>
            <source>Interval = difference -+ q x standard error with q = {q:.4f}, Student's t, one-sided 95 %: the lower limit holds with 95 %, and so does the upper one; both at once hold with 90 %.</source>
            <translation>Intervall = Unterschied -+ q x Standardfehler mit q = {q:.4f}, Students t, einseitig 95 %: die untere Grenze gilt mit 95 %, die obere ebenso; beide zugleich gelten mit 90 %.</translation>
        </message>
        <message>
            <source>Interval = difference -+ q x standard error with q = {q:.4f}, one-sided 95 % for all {media} media together (Dunnett 1955): all lower limits hold with 95 %, and so do all upper ones; both sides at once hold with at least 90 %.</source>
            <translation>Intervall = Unterschied -+ q x Standardfehler mit q = {q:.4f}, einseitig 95 % für alle {media} Substrate zusammen (Dunnett 1955): alle unteren Grenzen gelten mit 95 %, alle oberen ebenso; beide Seiten zugleich gelten mit mindestens 90 %.</translation>
        </message>
        <message>
            <source>Interval = difference -+ q x standard error, each difference with an error and degrees of freedom of its own; q is Student's t, one-sided at {level:.2f} %, so that for all {media} media together the lower limits hold with at least 95 %, and so do the upper ones (Sidak 1967).</source>
            <translation>Intervall = Unterschied -+ q x Standardfehler, jeder Unterschied mit eigenem Fehler und eigenen Freiheitsgraden; q ist Students t, einseitig bei {level:.2f} %, so dass für alle {media} Substrate zusammen die unteren Grenzen mit mindestens 95 % gelten, ebenso die oberen (Sidak 1967).</translation>
        </message>
        <message>
            <source>Interval = difference -+ q x standard error, each difference with an error and degrees of freedom of its own; q is Student's t, one-sided at {level:.2f} %, so that for all {media} media together the lower limits hold with about 95 %, and so do the upper ones (Sidak 1967).</source>
            <translation>Intervall = Unterschied -+ q x Standardfehler, jeder Unterschied mit eigenem Fehler und eigenen Freiheitsgraden; q ist Students t, einseitig bei {level:.2f} %, so dass für alle {media} Substrate zusammen die unteren Grenzen mit etwa 95 % gelten, ebenso die oberen (Sidak 1967).</translation>
        </message>
        <message>
            <source>Ranks: those that 95 % intervals of all pairs leave open, each pair with an error of its own (Sidak 1967; Mogstad et al. 2024).</source>
            <translation>Ränge: die, welche die 95-%-Intervalle aller Paare offen lassen, jedes Paar mit eigenem Fehler (Sidak 1967; Mogstad u. a. 2024).</translation>
        </message>
        <message>
            <source>Ranks: those that Tukey's 95 % intervals of all pairs leave open (Tukey 1953, Kramer 1956; Mogstad et al. 2024).</source>
            <translation>Ränge: jene, die Tukeys 95-%-Intervalle aller Paare offen lassen (Tukey 1953, Kramer 1956; Mogstad u. a. 2024).</translation>
        </message>
        <message>
            <source>Without blocks each difference rests on its own two media's trays, not on one common spread (Welch 1938, Satterthwaite 1946; of two or three trays beside more, Mickey and Brown 1966). Where spreads differ up to five to one, a lower limit fails in up to 6 of 100 drawn trials of two media, in up to 9 of eight.</source>
            <translation>Ohne Blöcke beruht jeder Unterschied auf den Schalen seiner eigenen zwei Substrate, nicht auf einer gemeinsamen Streuung (Welch 1938, Satterthwaite 1946; bei zwei oder drei Schalen neben mehr Mickey und Brown 1966). Wo Streuungen sich bis zu fünf zu eins unterscheiden, trügt eine untere Grenze in bis zu 6 von 100 gezogenen Versuchen mit zwei Substraten, in bis zu 9 mit acht.</translation>
        </message>
        <message>
            <source>Too few trays to tell whether some media scatter more than others; one spread was used.</source>
            <translation>Zu wenige Schalen, um zu sagen, ob manche Substrate mehr streuen als andere; eine Streuung wurde genommen.</translation>
        </message>
        <message>
            <source>Spreads so unequal come up by chance in {chance:.1f} % of trials with one spread (Levene 1960); up to {limit:.0f} % each medium's own trays are used, block by block.</source>
            <translation>So ungleiche Streuungen kommen durch Zufall in {chance:.1f} % der Versuche mit einer Streuung vor (Levene 1960); bis zu {limit:.0f} % werden die eigenen Schalen jedes Substrats genommen, Block für Block.</translation>
        </message>
        <message>
            <source>Should the trusted medium, or one with fewer trays, scatter two or three times as much as the others and this not show, a lower limit fails in up to 11 of 100 trials instead of 5, with eight media in up to 15, and in up to 20 where trays of the trusted medium are missing: see what the own trays alone say.</source>
            <translation>Sollte das bewährte Substrat oder eines mit weniger Schalen zwei- oder dreimal so stark streuen wie die anderen und sich das nicht zeigen, trügt eine untere Grenze in bis zu 11 von 100 Versuchen statt in 5, bei acht Substraten in bis zu 15, und in bis zu 20, wo Schalen des bewährten Substrats fehlen: nachsehen, was die eigenen Schalen allein sagen.</translation>
        </message>
        <message>
            <source>no verdict</source>
            <translation>kein Urteil</translation>
        </message>
        <message>
            <source>{medium}: without trays lost to mold nothing is left to compare.</source>
            <translation>{medium}: ohne durch Schimmel verlorene Schalen bleibt nichts zu vergleichen.</translation>
        </message>
        <message>
            <source>{medium}: without trays with an open suspect nothing is left to compare: say what they are.</source>
            <translation>{medium}: ohne Schalen mit offenem Verdacht bleibt nichts zu vergleichen: sagen, was es ist.</translation>
        </message>
        <message>
            <source>{medium}: with any one block left out the difference lies between {least} and {most}, and the answer stays.</source>
            <translation>{medium}: lässt man irgendeinen Block weg, liegt der Unterschied zwischen {least} und {most}, und die Antwort bleibt.</translation>
        </message>
        <message>
            <source>{medium}: with any one block left out the difference lies between {least} and {most}; without block {under} the answer would be: {answer}.</source>
            <translation>{medium}: lässt man irgendeinen Block weg, liegt der Unterschied zwischen {least} und {most}; ohne Block {under} wäre die Antwort: {answer}.</translation>
        </message>
        <message>
            <source>{medium}: with the spread of its own and the trusted trays alone the answer stays.</source>
            <translation>{medium}: allein mit der Streuung der eigenen und der bewährten Schalen bleibt die Antwort.</translation>
        </message>
        <message>
            <source>{medium}: with the spread of its own and the trusted trays alone the answer would be: {answer}.</source>
            <translation>{medium}: allein mit der Streuung der eigenen und der bewährten Schalen wäre die Antwort: {answer}.</translation>
        </message>
        <message>
            <source>{medium}: media at different heights in the tray look denser or thinner to the camera; by that the difference may lie between {least} and {most}, and the answer stays.</source>
            <translation>{medium}: Substrate in verschiedener Höhe der Schale sehen für die Kamera dichter oder dünner aus; dadurch kann der Unterschied zwischen {least} und {most} liegen, und die Antwort bleibt.</translation>
        </message>
        <message>
            <source>{medium}: media at different heights in the tray look denser or thinner to the camera; by that the difference may lie between {least} and {most}, and then the answer could be: {answer}.</source>
            <translation>{medium}: Substrate in verschiedener Höhe der Schale sehen für die Kamera dichter oder dünner aus; dadurch kann der Unterschied zwischen {least} und {most} liegen, und dann könnte die Antwort sein: {answer}.</translation>
        </message>
        <message>
            <source>{medium}: counted as a share of the inner area, which favours media that lie high in the tray, the difference is {least}, and the answer stays.</source>
            <translation>{medium}: als Anteil an der Innenfläche gezählt, was hoch liegende Substrate begünstigt, ist der Unterschied {least}, und die Antwort bleibt.</translation>
        </message>
        <message>
            <source>{medium}: counted as a share of the inner area, which favours media that lie high in the tray, the difference is {least}, and the answer would be: {answer}.</source>
            <translation>{medium}: als Anteil an der Innenfläche gezählt, was hoch liegende Substrate begünstigt, ist der Unterschied {least}, und die Antwort wäre: {answer}.</translation>
        </message>
        <message>
            <source>{medium}: without trays with an open suspect the difference is {least}, and the answer stays.</source>
            <translation>{medium}: ohne Schalen mit offenem Verdacht ist der Unterschied {least}, und die Antwort bleibt.</translation>
        </message>
        <message>
            <source>{medium}: without trays with an open suspect the difference is {least}, and the answer would be: {answer}.</source>
            <translation>{medium}: ohne Schalen mit offenem Verdacht ist der Unterschied {least}, und die Antwort wäre: {answer}.</translation>
        </message>
        <message>
            <source>{medium}: without trays lost to mold the difference is {least}, and the answer stays.</source>
            <translation>{medium}: ohne durch Schimmel verlorene Schalen ist der Unterschied {least}, und die Antwort bleibt.</translation>
        </message>
        <message>
            <source>{medium}: without trays lost to mold the difference is {least}, and the answer would be: {answer}.</source>
            <translation>{medium}: ohne durch Schimmel verlorene Schalen ist der Unterschied {least}, und die Antwort wäre: {answer}.</translation>
        </message>
        <message>
            <source>{medium}: by the scores of the other version of the method the difference is {least}, and the answer stays.</source>
            <translation>{medium}: nach den Wertungen der anderen Version der Methode ist der Unterschied {least}, und die Antwort bleibt.</translation>
        </message>
        <message>
            <source>{medium}: by the scores of the other version of the method the difference is {least}, and the answer would be: {answer}.</source>
            <translation>{medium}: nach den Wertungen der anderen Version der Methode ist der Unterschied {least}, und die Antwort wäre: {answer}.</translation>
        </message>
        <message>
            <source>The camera sees media differently by about {sd} (standard deviation); beside the trays' own spread that is little.</source>
            <translation>Die Kamera sieht Substrate um etwa {sd} verschieden (Standardabweichung); neben der Streuung der Schalen selbst ist das wenig.</translation>
        </message>
        <message>
            <source>The camera sees media differently by about {sd} (standard deviation), which no number of trays averages out; the intervals are widened by it.</source>
            <translation>Die Kamera sieht Substrate um etwa {sd} verschieden (Standardabweichung), was keine Zahl von Schalen ausmittelt; die Intervalle sind darum breiter.</translation>
        </message>
        <message>
            <source>{file} cannot be read: {why}.</source>
            <translation>{file} lässt sich nicht lesen: {why}.</translation>
        </message>
        <message>
            <source>{file} is too large to be a table of trays.</source>
            <translation>{file} ist zu groß für eine Tabelle von Schalen.</translation>
        </message>
        <message>
            <source>{file} is no text file. Save the table as CSV and name that file.</source>
            <translation>{file} ist keine Textdatei. Die Tabelle als CSV speichern und diese Datei nennen.</translation>
        </message>
        <message>
            <source>{file} is empty.</source>
            <translation>{file} ist leer.</translation>
        </message>
        <message>
            <source>{file} is no table that can be read.</source>
            <translation>{file} ist keine lesbare Tabelle.</translation>
        </message>
        <message>
            <source>{file} has two columns named {column}.</source>
            <translation>{file} hat zwei Spalten namens {column}.</translation>
        </message>
        <message>
            <source>{file} has no column named {column}. Its first line has to name the columns block, medium and value.</source>
            <translation>{file} hat keine Spalte namens {column}. Die erste Zeile muss die Spalten block, medium und value nennen.</translation>
        </message>
        <message>
            <source>line {line}: it has more columns than the heading; it was left out.</source>
            <translation>Zeile {line}: sie hat mehr Spalten als die Überschrift; sie wurde weggelassen.</translation>
        </message>
        <message>
            <source>line {line}: no medium is named; it was left out.</source>
            <translation>Zeile {line}: kein Substrat genannt; sie wurde weggelassen.</translation>
        </message>
        <message>
            <source>line {line}: no block is named ({medium}); it was left out.</source>
            <translation>Zeile {line}: kein Block genannt ({medium}); sie wurde weggelassen.</translation>
        </message>
        <message>
            <source>line {line}: "{written}" is no number, or could be two ({medium}); it was left out.</source>
            <translation>Zeile {line}: „{written}“ ist keine Zahl oder könnte zwei sein ({medium}); sie wurde weggelassen.</translation>
        </message>
        <message>
            <source>There is no column named block, so all trays were taken as one block.</source>
            <translation>Keine Spalte heißt block, darum wurden alle Schalen als ein Block genommen.</translation>
        </message>
        <message>
            <source>{others} was taken for {first}.</source>
            <translation>{others} wurde als {first} genommen.</translation>
        </message>
        <message>
            <source>{one} and {other}: rank correlation {rho:+.2f} over {trays} trays (1 the same order, 0 unrelated, -1 the other way round).</source>
            <translation>{one} und {other}: Rangkorrelation {rho:+.2f} über {trays} Schalen (1 gleiche Reihenfolge, 0 ohne Zusammenhang, -1 umgekehrt).</translation>
        </message>
        <message>
            <source>{one} and {other} say different things of {medium}: {first} and {second}. The one that was named beforehand decides.</source>
            <translation>{one} und {other} sagen Verschiedenes über {medium}: {first} und {second}. Es gilt, was vorher festgelegt wurde.</translation>
        </message>
        <message>
            <source>{one} and {other} say different things of {medium}: {first} and {second}. None was named beforehand as the one that decides.</source>
            <translation>{one} und {other} sagen Verschiedenes über {medium}: {first} und {second}. Vorher wurde keines als entscheidend benannt.</translation>
        </message>
        <message>
            <source>No usable photo of the day that is read: {trays}.</source>
            <translation>Kein brauchbares Foto von dem Tag, der abgelesen wird: {trays}.</translation>
        </message>
        <message>
            <source>No photo yet of the day that is read: {trays}.</source>
            <translation>Noch kein Foto von dem Tag, der abgelesen wird: {trays}.</translation>
        </message>
        <message>
            <source>Scored by another version of the method only, and scores of two versions are never mixed; score again: {trays}.</source>
            <translation>Nur mit einer anderen Version der Methode ausgewertet, und Wertungen zweier Versionen werden nie vermischt; neu auswerten: {trays}.</translation>
        </message>
        <message>
            <source>Canopy could not be told on the day that is read: {trays}.</source>
            <translation>Der Bestand war an dem Tag, der abgelesen wird, nicht zu erkennen: {trays}.</translation>
        </message>
        <message>
            <source>Lost to mold, and apart as decided beforehand: {trays}.</source>
            <translation>Durch Schimmel verloren und gesondert gezählt, wie vorher festgelegt: {trays}.</translation>
        </message>
        <message>
            <source>Thrown away before it could be read, and so without a number: {trays}. Where the medium was the reason, it looks better here than it is.</source>
            <translation>Weggeworfen, bevor sie abgelesen werden konnten, und deshalb ohne Zahl: {trays}. Wo das Substrat der Grund war, steht es hier besser da, als es ist.</translation>
        </message>
        <message>
            <source>Cut before the day that is read, and so without a number: {trays}.</source>
            <translation>Vor dem Tag, der abgelesen wird, geschnitten und deshalb ohne Zahl: {trays}.</translation>
        </message>
        <message>
            <source>Not weighed: {trays}.</source>
            <translation>Nicht gewogen: {trays}.</translation>
        </message>
        <message>
            <source>Not scored by eye: {trays}.</source>
            <translation>Nicht nach Augenmaß gewertet: {trays}.</translation>
        </message>
        <message>
            <source>A usable photo of the day that is read was left out by hand: {trays}. The report names the photos.</source>
            <translation>Ein brauchbares Foto von dem Tag, der abgelesen wird, wurde von Hand weggelassen: {trays}. Der Bericht nennt die Fotos.</translation>
        </message>
        <message>
            <source>{trays} got none of the plan's treatments and were left out.</source>
            <translation>{trays} bekamen keine der Varianten des Plans und wurden weggelassen.</translation>
        </message>
        <message>
            <source>These scores by eye were not given blind: who knows the medium may see what was hoped for. Score the photos blind to be sure.</source>
            <translation>Diese Noten nach Augenmaß wurden nicht blind gegeben: wer das Substrat kennt, sieht vielleicht, was erhofft war. Zur Sicherheit die Fotos blind benoten.</translation>
        </message>
        <message>
            <source>No block is noted of these trays, so all were taken as one: what differs between places and days of sowing counts as chance, and can look like a difference of media.</source>
            <translation>Von diesen Schalen ist kein Block notiert, also wurden alle als einer genommen: was sich zwischen Plätzen und Saattagen unterscheidet, zählt als Zufall und kann wie ein Unterschied der Substrate aussehen.</translation>
        </message>
        <message>
            <source>No block is noted of {trays}: they were taken together as a block of their own.</source>
            <translation>Kein Block ist notiert von {trays}: sie wurden zusammen als eigener Block genommen.</translation>
        </message>
        <message>
            <source>Lost to mold, of the trays sown: {counts}.</source>
            <translation>Durch Schimmel verloren, von den gesäten Schalen: {counts}.</translation>
        </message>
        <message>
            <source>Of mold so few trays tell little, whatever the intervals say: where a medium loses one tray in ten to it, {trays} trays show none in {unseen:.0f} of 100 trials.</source>
            <translation>Über Schimmel sagen so wenige Schalen wenig, was auch immer die Intervalle sagen: Wo ein Substrat eine von zehn Schalen daran verliert, zeigen {trays} Schalen in {unseen:.0f} von 100 Versuchen keinen.</translation>
        </message>
        <message>
            <source>{n} trays of yours</source>
            <translation>{n} eigene Schalen</translation>
        </message>
        <message>
            <source>{number} points</source>
            <translation>{number} Punkte</translation>
        </message>
        <message>
            <source>{number} g</source>
            <translation>{number} g</translation>
        </message>
        <message>
            <source>{number}</source>
            <translation>{number}</translation>
        </message>
        <message>
            <source>So far {medium} differs from {trusted} by {difference} (interval {low} to {high}). The trial still runs: nothing is shown before the planned trays are in.</source>
            <translation>Bisher unterscheidet sich {medium} von {trusted} um {difference} (Intervall {low} bis {high}). Der Versuch läuft noch: belegt ist nichts, bevor die geplanten Schalen da sind.</translation>
        </message>
        <message>
            <source>{medium} is better than {trusted}: the difference is {difference} (interval {low} to {high}).</source>
            <translation>{medium} ist besser als {trusted}: der Unterschied ist {difference} (Intervall {low} bis {high}).</translation>
        </message>
        <message>
            <source>{medium} is as good as {trusted}, within the margin of {margin}: the difference is {difference} (interval {low} to {high}).</source>
            <translation>{medium} ist so gut wie {trusted}, im Spielraum ({margin}): der Unterschied ist {difference} (Intervall {low} bis {high}).</translation>
        </message>
        <message>
            <source>{medium} is within the margin of {margin}, yet surely somewhat less good than {trusted}: the difference is {difference} (interval {low} to {high}).</source>
            <translation>{medium} liegt im Spielraum ({margin}), ist aber sicher etwas weniger gut als {trusted}: der Unterschied ist {difference} (Intervall {low} bis {high}).</translation>
        </message>
        <message>
            <source>{medium} is worse than {trusted} by more than the margin of {margin} allows: the difference is {difference} (interval {low} to {high}).</source>
            <translation>{medium} ist schlechter als {trusted}, um mehr, als der Spielraum ({margin}) erlaubt: der Unterschied ist {difference} (Intervall {low} bis {high}).</translation>
        </message>
        <message>
            <source>Not shown: {what}; the difference is {difference} (interval {low} to {high}). {settled}</source>
            <translation>Nicht belegt: {what}; der Unterschied ist {difference} (Intervall {low} bis {high}). {settled}</translation>
        </message>
        <message>
            <source>{medium} is surely less good than {trusted}, but the trial cannot tell whether by less than the margin of {margin}</source>
            <translation>{medium} ist sicher weniger gut als {trusted}, doch ob um weniger als den Spielraum ({margin}), kann der Versuch nicht sagen</translation>
        </message>
        <message>
            <source>the trial cannot tell whether {medium} is as good as {trusted} within the margin of {margin}</source>
            <translation>der Versuch kann nicht sagen, ob {medium} im Spielraum ({margin}) so gut ist wie {trusted}</translation>
        </message>
        <message>
            <source>Held against how trays and camera scatter it lies so near the margin that no reasonable number of further trays would settle it.</source>
            <translation>Gemessen daran, wie Schalen und Kamera streuen, liegt er so nah am Spielraum, dass keine vernünftige Zahl weiterer Schalen es klären würde.</translation>
        </message>
        <message>
            <source>{enough} trays of each medium on {shelves} shelves, {further} trays more than here, would probably settle it.</source>
            <translation>{enough} Schalen jedes Substrats auf {shelves} Etagen, {further} Schalen mehr als hier, würden es wahrscheinlich klären.</translation>
        </message>
        <message>
            <source>{enough} trays of each medium, 1 more than here, would probably settle it.</source>
            <translation>{enough} Schalen jedes Substrats, 1 mehr als hier, würden es wahrscheinlich klären.</translation>
        </message>
        <message>
            <source>{enough} trays of each medium, {further} more than here, would probably settle it.</source>
            <translation>{enough} Schalen jedes Substrats, {further} mehr als hier, würden es wahrscheinlich klären.</translation>
        </message>
        <message>
            <source>{medium} is the trusted medium; it has no number.</source>
            <translation>{medium} ist das bewährte Substrat; es hat keine Zahl.</translation>
        </message>
        <message>
            <source>{medium} is the trusted medium, mean {mean}; the others are held against it.</source>
            <translation>{medium} ist das bewährte Substrat, Mittel {mean}; mit ihm werden die anderen verglichen.</translation>
        </message>
        <message>
            <source>{medium}: no verdict. {why}</source>
            <translation>{medium}: kein Urteil. {why}</translation>
        </message>
        <message>
            <source>{medium}: numbers, no verdict. Its mean is {mean}, {difference} against {trusted}. {why}</source>
            <translation>{medium}: Zahlen, kein Urteil. Sein Mittel ist {mean}, {difference} gegenüber {trusted}. {why}</translation>
        </message>
        <message>
            <source>There is no number to compare: no tray has one.</source>
            <translation>Es gibt keine Zahl zum Vergleichen: keine Schale hat eine.</translation>
        </message>
        <message>
            <source>No medium is named as the trusted one, so there is nothing to compare with.</source>
            <translation>Kein Substrat ist als bewährtes benannt, also gibt es nichts zum Vergleichen.</translation>
        </message>
        <message>
            <source>No tray of the trusted medium {trusted} has a number, so there is nothing to compare with.</source>
            <translation>Keine Schale des bewährten Substrats {trusted} hat eine Zahl, also gibt es nichts, womit zu vergleichen wäre.</translation>
        </message>
        <message>
            <source>Only the trusted medium has numbers, so there is nothing to compare it with.</source>
            <translation>Nur das bewährte Substrat hat Zahlen, also gibt es nichts, womit es zu vergleichen wäre.</translation>
        </message>
        <message>
            <source>With one tray of each medium nobody can tell the medium from the luck of the tray; grow at least two blocks with all media in each.</source>
            <translation>Mit einer Schale je Substrat kann niemand das Substrat vom Glück der Schale unterscheiden; mindestens zwei Blöcke mit allen Substraten in jedem anbauen.</translation>
        </message>
        <message>
            <source>One tray alone says nothing beyond itself; grow more than one of each medium.</source>
            <translation>Eine Schale allein sagt nichts über sich hinaus; mehr als eine von jedem Substrat anbauen.</translation>
        </message>
        <message>
            <source>No tray is left over to tell chance from difference; grow more blocks.</source>
            <translation>Keine Schale bleibt übrig, um Zufall von Unterschied zu trennen; mehr Blöcke anbauen.</translation>
        </message>
        <message>
            <source>The trays of a medium do not differ at all, or two media lie equally far apart in every block. Real trays are not so alike, unless a score can tell no more of them: look whether all stand at its limit, or whether numbers were copied.</source>
            <translation>Die Schalen eines Substrats unterscheiden sich gar nicht, oder zwei Substrate liegen in jedem Block gleich weit auseinander. So gleich sind echte Schalen nicht, außer wo die Wertung an ihre Grenze stößt: nachsehen, ob alle dort stehen oder ob Zahlen kopiert wurden.</translation>
        </message>
        <message>
            <source>{medium} and {trusted} share no block, nor does a chain of other media join them.</source>
            <translation>{medium} und {trusted} teilen keinen Block, und auch keine Kette anderer Substrate verbindet sie.</translation>
        </message>
        <message>
            <source>Shelf and medium cannot be told apart: what is set for a whole shelf is tested between shelves, and each medium needs at least two.</source>
            <translation>Etage und Substrat sind nicht zu trennen: was für eine ganze Etage gilt, wird zwischen Etagen geprüft, und jedes Substrat braucht mindestens zwei.</translation>
        </message>
        <message>
            <source>This is the trusted medium.</source>
            <translation>Das ist das bewährte Substrat.</translation>
        </message>
        <message>
            <source>so far</source>
            <translation>bisher</translation>
        </message>
        <message>
            <source>better</source>
            <translation>besser</translation>
        </message>
        <message>
            <source>as good</source>
            <translation>gleich gut</translation>
        </message>
        <message>
            <source>within margin, less good</source>
            <translation>im Spielraum, weniger gut</translation>
        </message>
        <message>
            <source>worse</source>
            <translation>schlechter</translation>
        </message>
        <message>
            <source>not shown</source>
            <translation>nicht belegt</translation>
        </message>
        <message>
            <source>Weigh it again half an hour after soaking, drained.</source>
            <translation>Eine halbe Stunde nach dem Einweichen noch einmal wiegen, abgetropft.</translation>
        </message>
        <message>
            <source>Dry it weighs {dry:.0f} g and wet {wet:.0f} g: one of the two is wrong.</source>
            <translation>Trocken wiegt es {dry:.0f} g und nass {wet:.0f} g: eines von beiden ist falsch.</translation>
        </message>
        <message>
            <source>Drained it weighs more than soaked: one of the two is wrong.</source>
            <translation>Abgetropft wiegt es mehr als eingeweicht: eines von beiden ist falsch.</translation>
        </message>
        <message>
            <source>It drained for {minutes:.0f} minutes only; {least:.0f} are needed.</source>
            <translation>Es tropfte nur {minutes:.0f} Minuten ab; nötig sind {least:.0f}.</translation>
        </message>
        <message>
            <source>Let it dry, wet it again the same way, drain it and weigh it.</source>
            <translation>Trocknen lassen, auf dieselbe Weise wieder benetzen, abtropfen lassen und wiegen.</translation>
        </message>
        <message>
            <source>Wetted again it weighs less than dry: one of the two is wrong.</source>
            <translation>Wieder benetzt wiegt es weniger als trocken: eines von beiden ist falsch.</translation>
        </message>
        <message>
            <source>Weigh a tray dry and again after wetting, or do the wetting test with its medium: 5 minutes.</source>
            <translation>Eine Schale trocken und nach dem Benetzen wiegen, oder die Benetzungsprobe mit ihrem Substrat machen: 5 Minuten.</translation>
        </message>
        <message>
            <source>The tray was never weighed: weigh it dry, then soaked and drained.</source>
            <translation>Die Schale wurde nie gewogen: trocken wiegen, dann eingeweicht und abgetropft.</translation>
        </message>
        <message>
            <source>The first weight, {first:.0f} g, is far below the second, {second:.0f} g: mend one of them.</source>
            <translation>Das erste Gewicht, {first:.0f} g, liegt weit unter dem zweiten, {second:.0f} g: eines berichtigen.</translation>
        </message>
        <message>
            <source>Full it weighs {full:.0f} g, of which {water:.0f} g would be water: look at the weighings.</source>
            <translation>Voll wiegt sie {full:.0f} g, davon wären {water:.0f} g Wasser: die Wägungen prüfen.</translation>
        </message>
        <message>
            <source>{share:.0f} % of the {held:.0f} g of water that it holds are left at {grams:.0f} g.</source>
            <translation>Bei {grams:.0f} g sind {share:.0f} % der {held:.0f} g Wasser übrig, die sie hält.</translation>
        </message>
    </context>
    <context>
        <name>ShareDialog</name>
        <message>
            <source>For more trays</source>
            <translation>Für mehr Schalen</translation>
        </message>
        <message>
            <source>Which conditions of {code}, for which trays?</source>
            <translation>Welche Bedingungen von {code}, für welche Schalen?</translation>
        </message>
        <message>
            <source>Blackout counts from the sowing of each tray. All of it is one step of Undo.</source>
            <translation>Die Dunkelphase zählt ab der Saat jeder Schale. Alles zusammen ist ein Schritt für Rückgängig.</translation>
        </message>
        <message>
            <source>&amp;For</source>
            <translation>&amp;Für</translation>
        </message>
        <message>
            <source>Leave</source>
            <translation>Abbrechen</translation>
        </message>
        <message>
            <source>Keep for {n} trays</source>
            <translation>Für {n} Schalen speichern</translation>
        </message>
    </context>
    <context>
        <name>Sharing</name>
        <message>
            <source>Seed lot</source>
            <translation>Saatgutpartie</translation>
        </message>
        <message>
            <source>Sowing rate</source>
            <translation>Saatmenge</translation>
        </message>
        <message>
            <source>Soaked</source>
            <translation>Eingeweicht</translation>
        </message>
        <message>
            <source>Seating</source>
            <translation>Lage</translation>
        </message>
        <message>
            <source>Blackout</source>
            <translation>Dunkelphase</translation>
        </message>
        <message>
            <source>Stacked</source>
            <translation>Gestapelt</translation>
        </message>
        <message>
            <source>Watering</source>
            <translation>Bewässerung</translation>
        </message>
        <message>
            <source>Feed</source>
            <translation>Düngung</translation>
        </message>
        <message>
            <source>Heat mat</source>
            <translation>Heizmatte</translation>
        </message>
        <message>
            <source>Light</source>
            <translation>Licht</translation>
        </message>
        <message>
            <source>not noted</source>
            <translation>nicht notiert</translation>
        </message>
        <message>
            <source>yes</source>
            <translation>ja</translation>
        </message>
        <message>
            <source>no</source>
            <translation>nein</translation>
        </message>
        <message>
            <source>none noted</source>
            <translation>keine notiert</translation>
        </message>
        <message>
            <source>1 day</source>
            <translation>1 Tag</translation>
        </message>
        <message>
            <source>{days} days</source>
            <translation>{days} Tage</translation>
        </message>
        <message>
            <source>{dark} from sowing on</source>
            <translation>{dark} ab der Saat</translation>
        </message>
        <message>
            <source>{dark}, beginning {hours} h after sowing</source>
            <translation>{dark}, beginnend {hours} h nach der Saat</translation>
        </message>
        <message>
            <source>all {n} trays of its trial</source>
            <translation>alle {n} Schalen ihres Versuchs</translation>
        </message>
        <message>
            <source>the {n} trays of its trial on {medium}</source>
            <translation>die {n} Schalen ihres Versuchs auf {medium}</translation>
        </message>
        <message>
            <source>the {n} trays of its trial with {crop}</source>
            <translation>die {n} Schalen ihres Versuchs mit {crop}</translation>
        </message>
        <message>
            <source>the {n} trays of its trial with {crop} on {medium}</source>
            <translation>die {n} Schalen ihres Versuchs mit {crop} auf {medium}</translation>
        </message>
        <message>
            <source>all {n} growing trays</source>
            <translation>alle {n} wachsenden Schalen</translation>
        </message>
        <message>
            <source>the {n} growing trays on {medium}</source>
            <translation>die {n} wachsenden Schalen auf {medium}</translation>
        </message>
        <message>
            <source>the {n} growing trays with {crop}</source>
            <translation>die {n} wachsenden Schalen mit {crop}</translation>
        </message>
        <message>
            <source>the {n} growing trays on shelf {shelf}</source>
            <translation>die {n} wachsenden Schalen auf Etage {shelf}</translation>
        </message>
        <message>
            <source>Tick what the other trays shall have.</source>
            <translation>Ankreuzen, was die anderen Schalen bekommen sollen.</translation>
        </message>
        <message>
            <source>All of them have that already.</source>
            <translation>Alle haben das schon.</translation>
        </message>
        <message>
            <source>{n} of {all} trays change.</source>
            <translation>{n} von {all} Schalen ändern sich.</translation>
        </message>
        <message>
            <source>{n} of {all} trays changes.</source>
            <translation>{n} von {all} Schalen ändert sich.</translation>
        </message>
        <message>
            <source>{conditions}: only on trays with {crop}.</source>
            <translation>{conditions}: nur auf Schalen mit {crop}.</translation>
        </message>
        <message>
            <source>A plan varies this on purpose: {conditions}. Trays that get it here leave the treatment that they were planned for.</source>
            <translation>Ein Plan variiert dies mit Absicht: {conditions}. Schalen, die es hier bekommen, verlassen die Variante, für die sie geplant waren.</translation>
        </message>
        <message>
            <source>{values}, {n} other values ({trays} trays)</source>
            <translation>{values}, {n} andere Werte ({trays} Schalen)</translation>
        </message>
        <message>
            <source>{condition} is noted otherwise and replaced: {values}.</source>
            <translation>{condition} ist anders notiert und wird ersetzt: {values}.</translation>
        </message>
        <message>
            <source>{n} trays</source>
            <translation>{n} Schalen</translation>
        </message>
    </context>
    <context>
        <name>SheetBody</name>
        <message>
            <source>Tray before</source>
            <translation>Vorige Schale</translation>
        </message>
        <message>
            <source>Next tray</source>
            <translation>Nächste Schale</translation>
        </message>
        <message>
            <source>The tray before it on the rack (PgUp)</source>
            <translation>Die vorige Schale im Regal (Bild auf)</translation>
        </message>
        <message>
            <source>The next tray on the rack (PgDown)</source>
            <translation>Die nächste Schale im Regal (Bild ab)</translation>
        </message>
        <message>
            <source>tray {place} of {count}, to be sown</source>
            <translation>Schale {place} von {count}, noch zu säen</translation>
        </message>
        <message>
            <source>tray {place} of {count}, today day {day}</source>
            <translation>Schale {place} von {count}, heute Tag {day}</translation>
        </message>
    </context>
    <context>
        <name>SheetEmpty</name>
        <message>
            <source>Go to the Bench</source>
            <translation>Zum Regal</translation>
        </message>
        <message>
            <source>Go to the Bench (Ctrl+1)</source>
            <translation>Zum Regal (Strg+1)</translation>
        </message>
        <message>
            <source>Trays that have ended</source>
            <translation>Beendete Schalen</translation>
        </message>
        <message>
            <source>Find a tray that was cut or thrown away (T)</source>
            <translation>Eine geschnittene oder weggeworfene Schale suchen (T)</translation>
        </message>
        <message>
            <source>Here one tray is shown at a time</source>
            <translation>Hier wird immer eine Schale gezeigt</translation>
        </message>
        <message>
            <source>Its picture with everything that was found in it, its days side by side, its numbers, and how it grew beside its mates. Choose a tray on the Bench.</source>
            <translation>Ihr Bild mit allem, was darin gefunden wurde, ihre Tage nebeneinander, ihre Zahlen, und wie sie neben den anderen wuchs. Im Regal eine Schale wählen.</translation>
        </message>
    </context>
    <context>
        <name>SheetKind</name>
        <message>
            <source>sowing sheet</source>
            <translation>Aussaatbogen</translation>
        </message>
        <message>
            <source>bench map</source>
            <translation>Regalplan</translation>
        </message>
        <message>
            <source>station cards</source>
            <translation>Stationskarten</translation>
        </message>
        <message>
            <source>tags</source>
            <translation>Schilder</translation>
        </message>
        <message>
            <source>reading sheets</source>
            <translation>Messbögen</translation>
        </message>
    </context>
    <context>
        <name>SheetSaving</name>
        <message>
            <source>Choose something to print first.</source>
            <translation>Erst etwas zum Drucken wählen.</translation>
        </message>
        <message>
            <source>sheets</source>
            <translation>Bögen</translation>
        </message>
        <message>
            <source>Save the sheets</source>
            <translation>Bögen speichern</translation>
        </message>
        <message>
            <source>The sheets are being written.</source>
            <translation>Die Bögen werden geschrieben.</translation>
        </message>
        <message>
            <source>Saved: {file}. Print at 100 %.</source>
            <translation>Gespeichert: {file}. Mit 100 % drucken.</translation>
        </message>
        <message>
            <source>The sheets were not saved: {why}. Choose another folder.</source>
            <translation>Die Bögen wurden nicht gespeichert: {why}. Einen anderen Ordner wählen.</translation>
        </message>
    </context>
    <context>
        <name>SheetSide</name>
        <message>
            <source>Numbers of this day</source>
            <translation>Zahlen dieses Tages</translation>
        </message>
        <message>
            <source>The photo</source>
            <translation>Das Foto</translation>
        </message>
        <message>
            <source>Change</source>
            <translation>Ändern</translation>
        </message>
        <message>
            <source>Correct how it grows (C)</source>
            <translation>Anbau berichtigen (C)</translation>
        </message>
        <message>
            <source>Change the conditions</source>
            <translation>Bedingungen ändern</translation>
        </message>
        <message>
            <source>Swapped</source>
            <translation>Vertauscht</translation>
        </message>
        <message>
            <source>It stood in another tray's place or carried its tag: photos and notes change over</source>
            <translation>Sie stand am Platz einer anderen Schale oder trug deren Schild: Fotos und Notizen wechseln hinüber</translation>
        </message>
        <message>
            <source>Swapped with another tray</source>
            <translation>Mit einer anderen Schale vertauscht</translation>
        </message>
        <message>
            <source>Cut</source>
            <translation>Schnitt</translation>
        </message>
        <message>
            <source>It was cut: the tray leaves the rack, its photos stay (Ctrl+Z takes it back)</source>
            <translation>Sie wurde geschnitten: die Schale verlässt das Regal, ihre Fotos bleiben (Strg+Z nimmt es zurück)</translation>
        </message>
        <message>
            <source>Thrown away</source>
            <translation>Wegwerfen</translation>
        </message>
        <message>
            <source>Say why it was thrown away: the tray leaves the rack and stays in its trial</source>
            <translation>Angeben, warum sie weggeworfen wurde: die Schale verlässt das Regal und bleibt in ihrem Versuch</translation>
        </message>
        <message>
            <source>It grows again</source>
            <translation>Sie wächst wieder</translation>
        </message>
        <message>
            <source>Put the tray back on the rack (Ctrl+Z takes it back)</source>
            <translation>Die Schale wieder ins Regal stellen (Strg+Z nimmt es zurück)</translation>
        </message>
        <message>
            <source>Ended trays</source>
            <translation>Beendete</translation>
        </message>
        <message>
            <source>Find a tray that was cut or thrown away (T)</source>
            <translation>Eine geschnittene oder weggeworfene Schale suchen (T)</translation>
        </message>
        <message>
            <source>Growth beside its mates</source>
            <translation>Wachstum im Vergleich</translation>
        </message>
        <message>
            <source>How it grows</source>
            <translation>Wie sie wächst</translation>
        </message>
        <message>
            <source>coverage; no photo yet</source>
            <translation>Deckung; noch kein Foto</translation>
        </message>
        <message>
            <source>coverage, {date}</source>
            <translation>Deckung, {date}</translation>
        </message>
        <message>
            <source>coverage on day {day}, {date}</source>
            <translation>Deckung an Tag {day}, {date}</translation>
        </message>
        <message>
            <source>Not used: {why}</source>
            <translation>Nicht verwendet: {why}</translation>
        </message>
    </context>
    <context>
        <name>SheetTable</name>
        <message>
            <source>page {n} of {total}</source>
            <translation>Seite {n} von {total}</translation>
        </message>
    </context>
    <context>
        <name>SheetViews</name>
        <message>
            <source>What was painted on a photo is not kept.</source>
            <translation>Was auf einem Foto gemalt wurde, ist noch nicht gespeichert.</translation>
        </message>
        <message>
            <source>Conditions that were typed are not kept.</source>
            <translation>Eingetippte Bedingungen sind noch nicht gespeichert.</translation>
        </message>
    </context>
    <context>
        <name>SowPage</name>
        <message>
            <source>Sown on</source>
            <translation>Gesät am</translation>
        </message>
        <message>
            <source>From then on each tray stands on the Bench, and a photo finds its tray by the tag. If you add them too early, Undo takes them off again.</source>
            <translation>Von da an steht jede Schale im Regal, und ein Foto findet seine Schale am Schild. War es zu früh, nimmt „Rückgängig“ sie wieder heraus.</translation>
        </message>
        <message>
            <source>All {n} trays are sown</source>
            <translation>Alle {n} Schalen sind gesät</translation>
        </message>
        <message>
            <source>Photograph each of them every day, its tag in the picture, and bring the photos in. What needs a look then stands on the Bench.</source>
            <translation>Jede davon täglich fotografieren, das Schild im Bild, und die Fotos einlesen. Was einen Blick braucht, steht dann im Regal.</translation>
        </message>
        <message>
            <source>When are they sown?</source>
            <translation>Wann wird gesät?</translation>
        </message>
        <message>
            <source>{n} trays, planned for {day}. Sow them by the sowing sheet, tag each one.</source>
            <translation>{n} Schalen, geplant für {day}. Nach dem Aussaatbogen säen, an jede ihr Schild hängen.</translation>
        </message>
        <message>
            <source>{sown} of {all} trays are sown. The next {n} are planned for {day}.</source>
            <translation>{sown} von {all} Schalen sind gesät. Die nächsten {n} sind für {day} geplant.</translation>
        </message>
    </context>
    <context>
        <name>Sowing</name>
        <message>
            <source>{first} to {last}</source>
            <translation>{first} bis {last}</translation>
        </message>
        <message>
            <source>{codes}, tag {tag}</source>
            <translation>{codes}, Schild {tag}</translation>
        </message>
        <message>
            <source>{codes}, tags {first} to {last}</source>
            <translation>{codes}, Schilder {first} bis {last}</translation>
        </message>
        <message>
            <source>{grams} g of seed</source>
            <translation>{grams} g Saatgut</translation>
        </message>
        <message>
            <source>sown dry</source>
            <translation>trocken gesät</translation>
        </message>
        <message>
            <source>soaked {hours} h</source>
            <translation>{hours} h eingeweicht</translation>
        </message>
        <message>
            <source>1 day in the dark</source>
            <translation>1 Tag im Dunkeln</translation>
        </message>
        <message>
            <source>{days} days in the dark</source>
            <translation>{days} Tage im Dunkeln</translation>
        </message>
        <message>
            <source>stacked</source>
            <translation>gestapelt</translation>
        </message>
        <message>
            <source>watered: {how}</source>
            <translation>gegossen: {how}</translation>
        </message>
        <message>
            <source>feed: {what}</source>
            <translation>Düngung: {what}</translation>
        </message>
        <message>
            <source>light: {what}</source>
            <translation>Licht: {what}</translation>
        </message>
        <message>
            <source>seed lot {lot}</source>
            <translation>Saatgutpartie {lot}</translation>
        </message>
        <message>
            <source>A growing tray is called {code} already; two are hard to tell apart.</source>
            <translation>Eine wachsende Schale heißt schon {code}; zwei sind schwer auseinanderzuhalten.</translation>
        </message>
        <message>
            <source>Tag {tag} is on a tray that still grows: choose another one.</source>
            <translation>Schild {tag} ist an einer Schale, die noch wächst: ein anderes wählen.</translation>
        </message>
        <message>
            <source>There are not enough tags: the last trays come without one.</source>
            <translation>Es sind nicht genug Schilder da: die letzten Schalen kommen ohne.</translation>
        </message>
    </context>
    <context>
        <name>Start</name>
        <message>
            <source>Making the demonstration</source>
            <translation>Die Vorführung wird angelegt</translation>
        </message>
    </context>
    <context>
        <name>StationDistances</name>
        <message>
            <source>Measured distances</source>
            <translation>Gemessene Abstände</translation>
        </message>
        <message>
            <source>Measure from the middle of one mark to the middle of the other, to half a millimetre. Photos that come in from now on are scored with the cards where they lie.</source>
            <translation>Von der Mitte einer Marke zur Mitte der anderen messen, auf einen halben Millimeter. Fotos, die ab jetzt dazukommen, werden mit den Karten dort ausgewertet, wo sie liegen.</translation>
        </message>
        <message>
            <source>mm</source>
            <translation>mm</translation>
        </message>
        <message>
            <source>Leave</source>
            <translation>Abbrechen</translation>
        </message>
        <message>
            <source>All as drawn</source>
            <translation>Alle wie gezeichnet</translation>
        </message>
        <message>
            <source>Forget what was measured: the cards lie as the drawing shows</source>
            <translation>Das Gemessene vergessen: Die Karten liegen, wie die Zeichnung zeigt</translation>
        </message>
        <message>
            <source>Keep these distances</source>
            <translation>Diese Abstände speichern</translation>
        </message>
        <message>
            <source>{one} to {two}</source>
            <translation>{one} bis {two}</translation>
        </message>
        <message>
            <source>{way} does not fit the other distances by {mm} mm: measure it again.</source>
            <translation>{way} passt um {mm} mm nicht zu den anderen Abständen: noch einmal messen.</translation>
        </message>
    </context>
    <context>
        <name>StationDrawing</name>
        <message>
            <source>Drawing of the station with its distances</source>
            <translation>Zeichnung der Station mit ihren Abständen</translation>
        </message>
        <message>
            <source>near side: you stand here (in mm)</source>
            <translation>vordere Seite: hier steht man (in mm)</translation>
        </message>
    </context>
    <context>
        <name>StationSetup</name>
        <message>
            <source>Check the station</source>
            <translation>Station prüfen</translation>
        </message>
        <message>
            <source>Tray type</source>
            <translation>Schalentyp</translation>
        </message>
        <message>
            <source>Measured distances...</source>
            <translation>Gemessene Abstände...</translation>
        </message>
        <message>
            <source>Say where the cards lie, if they cannot be moved to their places</source>
            <translation>Sagen, wo die Karten liegen, wenn sie nicht an ihren Platz gerückt werden können</translation>
        </message>
        <message>
            <source>Leave it there and score with it</source>
            <translation>Dort lassen und damit auswerten</translation>
        </message>
        <message>
            <source>Photos that come in from now on are scored with the card where it lies</source>
            <translation>Fotos, die ab jetzt dazukommen, werden mit der Karte dort ausgewertet, wo sie liegt</translation>
        </message>
        <message>
            <source>Looking at the photo</source>
            <translation>Das Foto wird angesehen</translation>
        </message>
        <message>
            <source>Close</source>
            <translation>Schließen</translation>
        </message>
        <message>
            <source>Bring a photo of the station...</source>
            <translation>Foto der Station einlesen...</translation>
        </message>
        <message>
            <source>The middle of each card's mark lies {inset} mm in from the end of the tray and {outset} mm out from its long side. From middle to middle it is {across} mm across and {deep} mm from far to near. Both ways from corner to corner are {diagonal} mm.</source>
            <translation>Die Mitte der Marke jeder Karte liegt {inset} mm vom Ende der Schale nach innen und {outset} mm von ihrer langen Seite nach außen. Von Mitte zu Mitte sind es {across} mm in der Breite und {deep} mm von hinten nach vorn. Beide Wege von Ecke zu Ecke sind {diagonal} mm lang.</translation>
        </message>
        <message>
            <source>Put a tray with its tag on the station, keep leaves off the cards, and photograph it from above at the phone's full size, with all four cards in the picture.</source>
            <translation>Eine Schale mit ihrem Schild auf die Station stellen, Blätter von den Karten fernhalten und von oben in voller Größe des Telefons fotografieren, mit allen vier Karten im Bild.</translation>
        </message>
        <message>
            <source>Photos are scored with the cards as drawn.</source>
            <translation>Fotos werden mit den Karten wie gezeichnet ausgewertet.</translation>
        </message>
        <message>
            <source>A photo of the station</source>
            <translation>Ein Foto der Station</translation>
        </message>
        <message>
            <source>Looking at {photo}.</source>
            <translation>{photo} wird angesehen.</translation>
        </message>
        <message>
            <source>{photo} is not used: {why}.</source>
            <translation>{photo} wird nicht verwendet: {why}.</translation>
        </message>
        <message>
            <source>This photo could not be looked at. Bring another one.</source>
            <translation>Dieses Foto konnte nicht angesehen werden. Ein anderes einlesen.</translation>
        </message>
    </context>
    <context>
        <name>StationSheet</name>
        <message>
            <source>far left</source>
            <translation>hinten links</translation>
        </message>
        <message>
            <source>far right</source>
            <translation>hinten rechts</translation>
        </message>
        <message>
            <source>near right</source>
            <translation>vorn rechts</translation>
        </message>
        <message>
            <source>near left</source>
            <translation>vorn links</translation>
        </message>
        <message>
            <source>No station cards</source>
            <translation>Keine Stationskarten</translation>
        </message>
        <message>
            <source>Station cards, far side</source>
            <translation>Stationskarten, hintere Seite</translation>
        </message>
        <message>
            <source>Station cards, near side</source>
            <translation>Stationskarten, vordere Seite</translation>
        </message>
        <message>
            <source>The tray type {tray} is too short for a station: below {shortest} mm the cards would lie on each other. Its trays are found by their rim, or by the corners that you drag; tags help all the same.</source>
            <translation>Der Schalentyp {tray} ist zu kurz für eine Station: unter {shortest} mm lägen die Karten aufeinander. Solche Schalen werden am Rand gefunden oder an von Hand gezogenen Ecken; Schilder helfen trotzdem.</translation>
        </message>
        <message>
            <source>corner of the rim</source>
            <translation>Schalenecke</translation>
        </message>
        <message>
            <source>Print on plain matt paper at 100 %, do not laminate. Cut along the thin outer line.</source>
            <translation>Auf einfaches mattes Papier mit 100 % drucken, nicht laminieren. Entlang der dünnen äußeren Linie schneiden.</translation>
        </message>
        <message>
            <source>Lay a tray where it will be photographed. Push each card under the tray's corner until the corner of the rim stands right above the printed corner. All names are as you stand before the tray. Fix the cards flat with tape: from then on a tray goes where the printed corners are.</source>
            <translation>Eine Schale dorthin legen, wo sie fotografiert wird. Jede Karte unter die Ecke der Schale schieben, bis die Ecke des Schalenrands genau über der gedruckten Ecke steht. Alle Namen gelten, wie man vor der Schale steht. Die Karten flach mit Klebeband befestigen: von da an kommt jede Schale dorthin, wo die gedruckten Ecken sind.</translation>
        </message>
        <message>
            <source>For the tray type {tray} the middles of the marks then lie {across} mm apart along the long side and {deep} mm apart from far to near. Measure both if you can. Take photos from above.</source>
            <translation>Für den Schalentyp {tray} liegen die Mitten der Marken dann {across} mm auseinander entlang der langen Seite und {deep} mm von hinten nach vorn. Wenn möglich beides messen. Von oben fotografieren.</translation>
        </message>
        <message>
            <source>Keep the white rim around each mark free. A card that leaves hide does no harm.</source>
            <translation>Den weißen Rand um jede Marke frei halten. Eine von Blättern verdeckte Karte schadet nicht.</translation>
        </message>
    </context>
    <context>
        <name>StepRow</name>
        <message>
            <source>1 Question</source>
            <translation>1 Frage</translation>
        </message>
        <message>
            <source>2 What varies</source>
            <translation>2 Was sich ändert</translation>
        </message>
        <message>
            <source>3 How many</source>
            <translation>3 Wie viele</translation>
        </message>
        <message>
            <source>4 Shelves</source>
            <translation>4 Etagen</translation>
        </message>
        <message>
            <source>5 Keep and draw</source>
            <translation>5 Auslosen</translation>
        </message>
        <message>
            <source>The plan</source>
            <translation>Der Plan</translation>
        </message>
        <message>
            <source>Places</source>
            <translation>Plätze</translation>
        </message>
        <message>
            <source>Print</source>
            <translation>Drucken</translation>
        </message>
        <message>
            <source>Sow</source>
            <translation>Säen</translation>
        </message>
    </context>
    <context>
        <name>SuspectCard</name>
        <message>
            <source>{number}  {word}</source>
            <translation>{number}  {word}</translation>
        </message>
        <message>
            <source>Mold</source>
            <translation>Schimmel</translation>
        </message>
        <message>
            <source>Not mold</source>
            <translation>Kein Schimmel</translation>
        </message>
        <message>
            <source>Show it</source>
            <translation>Zeigen</translation>
        </message>
        <message>
            <source>Say that this is mold; press again to take it back (Ctrl+Z)</source>
            <translation>Angeben, dass dies Schimmel ist; noch einmal drücken nimmt es zurück (Strg+Z)</translation>
        </message>
        <message>
            <source>Say that this is no mold; press again to take it back (Ctrl+Z)</source>
            <translation>Angeben, dass dies kein Schimmel ist; noch einmal drücken nimmt es zurück (Strg+Z)</translation>
        </message>
        <message>
            <source>Show this place enlarged in the picture</source>
            <translation>Diese Stelle im Bild vergrößert zeigen</translation>
        </message>
        <message>
            <source>Suspect {number}: {what}</source>
            <translation>Verdacht {number}: {what}</translation>
        </message>
    </context>
    <context>
        <name>SuspectList</name>
        <message>
            <source>No suspects</source>
            <translation>Kein Verdacht</translation>
        </message>
        <message>
            <source>Nothing in this photo looks like mold to the program. No flag is no proof that a tray is safe: look yourself. What may be mold gets a dashed yellow ring with a number: look at the tray there, then say here whether it is.</source>
            <translation>Nichts auf diesem Foto sieht für das Programm nach Schimmel aus. Kein Hinweis ist kein Beweis, dass eine Schale unbedenklich ist: selbst nachsehen. Was Schimmel sein kann, bekommt einen gestrichelten gelben Ring mit Nummer: die Schale dort ansehen, dann hier angeben, ob es Schimmel ist.</translation>
        </message>
        <message>
            <source>Suspects</source>
            <translation>Verdacht</translation>
        </message>
        <message>
            <source>No flag is no proof that a tray is safe.</source>
            <translation>Kein Hinweis ist kein Beweis, dass eine Schale unbedenklich ist.</translation>
        </message>
    </context>
    <context>
        <name>SwapDialog</name>
        <message>
            <source>Two trays swapped</source>
            <translation>Zwei vertauschte Schalen</translation>
        </message>
        <message>
            <source>Leave</source>
            <translation>Abbrechen</translation>
        </message>
        <message>
            <source>Swap them back</source>
            <translation>Zurücktauschen</translation>
        </message>
        <message>
            <source>The other tray</source>
            <translation>Die andere Schale</translation>
        </message>
        <message>
            <source>Since</source>
            <translation>Seit</translation>
        </message>
        <message>
            <source>Wrong are</source>
            <translation>Falsch sind</translation>
        </message>
        <message>
            <source>{code} was taken for another tray</source>
            <translation>{code} wurde für eine andere Schale gehalten</translation>
        </message>
        <message>
            <source>Where two trays stood in each other's places, or carried each other's tags, what belongs to one was kept with the other. From the day that you choose it changes over, both ways.</source>
            <translation>Standen zwei Schalen am Platz der jeweils anderen oder trugen sie deren Schild, so wurde bei der einen gespeichert, was zur anderen gehört. Vom gewählten Tag an wechselt es hinüber, in beide Richtungen.</translation>
        </message>
        <message>
            <source>Choose the tray</source>
            <translation>Schale wählen</translation>
        </message>
        <message>
            <source>{code}   {crop} on {medium}</source>
            <translation>{code}   {crop} auf {medium}</translation>
        </message>
        <message>
            <source>the photos alone: notes were kept with the right tray</source>
            <translation>nur die Fotos: Notizen stehen bei der richtigen Schale</translation>
        </message>
        <message>
            <source>photos and notes, and how the trays ended</source>
            <translation>Fotos und Notizen, und wie die Schalen endeten</translation>
        </message>
        <message>
            <source>{code} and {other} have changed over; Ctrl+Z takes it back.</source>
            <translation>{code} und {other} sind getauscht; Strg+Z nimmt es zurück.</translation>
        </message>
        <message>
            <source>Choose the other tray, and what was kept with the wrong one.</source>
            <translation>Die andere Schale wählen, und was bei der falschen gespeichert wurde.</translation>
        </message>
        <message>
            <source>Nothing was kept with either of them since that day.</source>
            <translation>Seit diesem Tag wurde bei keiner der beiden etwas gespeichert.</translation>
        </message>
        <message>
            <source>Change over: photos {photos}, notes {notes}. Sowing, uncovering and moves stay. If the trays still stand wrong or carry each other's tags, put that right before the next photos; Undo takes this back.</source>
            <translation>Es wechseln hinüber: Fotos {photos}, Notizen {notes}. Aussaat, Aufdecken und Umstellen bleiben. Stehen die Schalen noch falsch oder tragen sie noch das Schild der anderen, das vor den nächsten Fotos in Ordnung bringen; Rückgängig nimmt dies zurück.</translation>
        </message>
    </context>
    <context>
        <name>TagSheet</name>
        <message>
            <source>Tags</source>
            <translation>Schilder</translation>
        </message>
        <message>
            <source>page {n} of {total}</source>
            <translation>Seite {n} von {total}</translation>
        </message>
        <message>
            <source>Cut out card and strip in one piece, fold at the dashed line and hook it over a long side of the rim: the card lies outside, face up, and stays with its tray. Stiff matt paper, not laminated.</source>
            <translation>Karte und Streifen in einem Stück ausschneiden, an der gestrichelten Linie falten und über eine lange Seite des Schalenrands hängen: die Karte liegt außen, Schrift nach oben, und bleibt bei ihrer Schale. Steifes mattes Papier, nicht laminiert.</translation>
        </message>
        <message>
            <source>tag {n}</source>
            <translation>Schild {n}</translation>
        </message>
    </context>
    <context>
        <name>TagsDialog</name>
        <message>
            <source>Tags and station cards</source>
            <translation>Schilder und Stationskarten</translation>
        </message>
        <message>
            <source>Close</source>
            <translation>Schließen</translation>
        </message>
        <message>
            <source>Save as PDF...</source>
            <translation>Als PDF speichern...</translation>
        </message>
        <message>
            <source>Choose something to print first.</source>
            <translation>Erst etwas zum Drucken wählen.</translation>
        </message>
        <message>
            <source>Save the sheets</source>
            <translation>Bögen speichern</translation>
        </message>
        <message>
            <source>tags and station cards</source>
            <translation>Schilder und Stationskarten</translation>
        </message>
    </context>
    <context>
        <name>Tile</name>
        <message>
            <source>{coverage:.0f} %</source>
            <translation>{coverage:.0f} %</translation>
        </message>
        <message>
            <source>no photo yet</source>
            <translation>noch kein Foto</translation>
        </message>
        <message>
            <source>coverage {coverage:.0f} %</source>
            <translation>Deckung {coverage:.0f} %</translation>
        </message>
        <message>
            <source>Coverage: canopy share of the inner area, from the photo of {day}</source>
            <translation>Deckung: Anteil des Bestands an der Innenfläche, nach dem Foto vom {day}</translation>
        </message>
        <message>
            <source>Click or Enter: open the tray sheet</source>
            <translation>Klick oder Eingabe: Schalenblatt öffnen</translation>
        </message>
    </context>
    <context>
        <name>TimeChart</name>
        <message>
            <source>Growth, readings and events over the days</source>
            <translation>Wachstum, Messwerte und Ereignisse über den Tagen</translation>
        </message>
        <message>
            <source>{kind}: {count} readings, the last one {value:g} on day {day:.0f}</source>
            <translation>{kind}: {count} Messwerte, der letzte {value:g} an Tag {day:.0f}</translation>
        </message>
        <message>
            <source>{words} on day {day:.0f}</source>
            <translation>{words} an Tag {day:.0f}</translation>
        </message>
        <message>
            <source>dark</source>
            <translation>dunkel</translation>
        </message>
    </context>
    <context>
        <name>TopRow</name>
        <message>
            <source>Book</source>
            <translation>Buch</translation>
        </message>
        <message>
            <source>Open or start a book</source>
            <translation>Ein Buch öffnen oder beginnen</translation>
        </message>
        <message>
            <source>View</source>
            <translation>Ansicht</translation>
        </message>
        <message>
            <source>Light or dark, size of letters, language</source>
            <translation>Hell oder dunkel, Schriftgröße, Sprache</translation>
        </message>
        <message>
            <source>{do}: {what}</source>
            <translation>{do}: {what}</translation>
        </message>
    </context>
    <context>
        <name>TopViewPreview</name>
        <message>
            <source>Top view with these corners</source>
            <translation>Draufsicht mit diesen Ecken</translation>
        </message>
    </context>
    <context>
        <name>Travel</name>
        <message>
            <source>Packed books (*.evenstand)</source>
            <translation>Gepackte Bücher (*.evenstand)</translation>
        </message>
        <message>
            <source>Tables (*.csv *.txt *.tsv)</source>
            <translation>Tabellen (*.csv *.txt *.tsv)</translation>
        </message>
        <message>
            <source>Packing the book</source>
            <translation>Buch wird gepackt</translation>
        </message>
        <message>
            <source>Exporting the book</source>
            <translation>Buch wird exportiert</translation>
        </message>
        <message>
            <source>Exported to {folder}; README.md there says how to read the files.</source>
            <translation>Exportiert nach {folder}; wie die Dateien zu lesen sind, steht dort in README.md.</translation>
        </message>
        <message>
            <source>Open a packed book</source>
            <translation>Gepacktes Buch öffnen</translation>
        </message>
        <message>
            <source>Unpacking the book</source>
            <translation>Buch wird entpackt</translation>
        </message>
        <message>
            <source>Unpacked: {folder}. Open it with Open a book.</source>
            <translation>Entpackt: {folder}. Mit „Buch öffnen“ öffnen.</translation>
        </message>
        <message>
            <source>Unpacked and opened: {folder}</source>
            <translation>Entpackt und geöffnet: {folder}</translation>
        </message>
        <message>
            <source>Crop</source>
            <translation>Kultur</translation>
        </message>
        <message>
            <source>Medium</source>
            <translation>Substrat</translation>
        </message>
        <message>
            <source>Tray type</source>
            <translation>Schalentyp</translation>
        </message>
        <message>
            <source>Trial</source>
            <translation>Versuch</translation>
        </message>
        <message>
            <source>Shelf</source>
            <translation>Etage</translation>
        </message>
        <message>
            <source>Packed: {file}, {size}. Open it elsewhere with Open a packed book.</source>
            <translation>Gepackt: {file}, {size}. Anderswo öffnen mit „Gepacktes Buch öffnen“.</translation>
        </message>
        <message>
            <source>Of these only the numbers are in it, for the photo itself is missing or damaged here: {photos}.</source>
            <translation>Von diesen sind nur die Zahlen darin, denn das Foto selbst fehlt hier oder ist beschädigt: {photos}.</translation>
        </message>
        <message>
            <source>What is in it: trays {trays}, photos {photos}, readings {readings}.</source>
            <translation>Was darin steht: Schalen {trays}, Fotos {photos}, Messwerte {readings}.</translation>
        </message>
        <message>
            <source>{kind} {name} (trays here {here}, there {there})</source>
            <translation>{kind} {name} (Schalen hier {here}, dort {there})</translation>
        </message>
        <message>
            <source>One name still waits for an answer.</source>
            <translation>Ein Name wartet noch auf eine Antwort.</translation>
        </message>
        <message>
            <source>{n} names still wait for an answer.</source>
            <translation>{n} Namen warten noch auf eine Antwort.</translation>
        </message>
        <message>
            <source>There is no tray in it.</source>
            <translation>Es steht keine Schale darin.</translation>
        </message>
        <message>
            <source>Trays that will be added: {new}. Known already: {known}.</source>
            <translation>Schalen, die dazukommen: {new}. Schon bekannt: {known}.</translation>
        </message>
        <message>
            <source>All of it was here already; nothing was added.</source>
            <translation>Alles war schon hier; nichts ist dazugekommen.</translation>
        </message>
        <message>
            <source>Added: trays {trays}, photos {photos}, readings {readings}.</source>
            <translation>Dazugekommen: Schalen {trays}, Fotos {photos}, Messwerte {readings}.</translation>
        </message>
        <message>
            <source>Without a tag, since a growing tray here carries it: {trays}. Give them other tags on their tray sheets.</source>
            <translation>Ohne Schild, da es hier eine wachsende Schale trägt: {trays}. Ihnen auf ihrem Schalenblatt andere Schilder geben.</translation>
        </message>
        <message>
            <source>Only numbers came, for the photo itself is missing there: {photos}.</source>
            <translation>Nur Zahlen kamen, denn das Foto selbst fehlt dort: {photos}.</translation>
        </message>
        <message>
            <source>Undo takes it back; the book as it was lies in {file}.</source>
            <translation>Rückgängig nimmt es zurück; das Buch, wie es war, liegt in {file}.</translation>
        </message>
        <message>
            <source>{names} and {n} more</source>
            <translation>{names} und {n} weitere</translation>
        </message>
    </context>
    <context>
        <name>TrayDrawing</name>
        <message>
            <source>Drawing of the tray with its measures</source>
            <translation>Zeichnung der Schale mit ihren Maßen</translation>
        </message>
    </context>
    <context>
        <name>TrayForm</name>
        <message>
            <source>in the tray</source>
            <translation>in der Schale</translation>
        </message>
        <message>
            <source>on an upturned tray</source>
            <translation>auf umgedrehter Schale</translation>
        </message>
        <message>
            <source>not noted</source>
            <translation>nicht notiert</translation>
        </message>
        <message>
            <source>was kept dark</source>
            <translation>stand dunkel</translation>
        </message>
        <message>
            <source>Code on the tray</source>
            <translation>Code auf der Schale</translation>
        </message>
        <message>
            <source>Crop</source>
            <translation>Kultur</translation>
        </message>
        <message>
            <source>Medium</source>
            <translation>Substrat</translation>
        </message>
        <message>
            <source>Sown</source>
            <translation>Gesät</translation>
        </message>
        <message>
            <source>Seed lot</source>
            <translation>Saatgutpartie</translation>
        </message>
        <message>
            <source>Sowing rate, g of dry seed</source>
            <translation>Saatmenge, g trocken</translation>
        </message>
        <message>
            <source>Soaked, hours</source>
            <translation>Eingeweicht, Stunden</translation>
        </message>
        <message>
            <source>Seating</source>
            <translation>Lage</translation>
        </message>
        <message>
            <source>After sowing</source>
            <translation>Nach der Aussaat</translation>
        </message>
        <message>
            <source>Dark from</source>
            <translation>Dunkel ab</translation>
        </message>
        <message>
            <source>Dark to</source>
            <translation>Dunkel bis</translation>
        </message>
        <message>
            <source>Stacked</source>
            <translation>Gestapelt</translation>
        </message>
        <message>
            <source>Watering</source>
            <translation>Bewässerung</translation>
        </message>
        <message>
            <source>Feed</source>
            <translation>Düngung</translation>
        </message>
        <message>
            <source>Heat mat</source>
            <translation>Heizmatte</translation>
        </message>
        <message>
            <source>Light</source>
            <translation>Licht</translation>
        </message>
        <message>
            <source>Shelf</source>
            <translation>Etage</translation>
        </message>
        <message>
            <source>Place on the shelf</source>
            <translation>Platz auf der Etage</translation>
        </message>
        <message>
            <source>Tray type</source>
            <translation>Schalentyp</translation>
        </message>
        <message>
            <source>Tag number</source>
            <translation>Schildnummer</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Notiz</translation>
        </message>
        <message>
            <source>no</source>
            <translation>nein</translation>
        </message>
        <message>
            <source>yes</source>
            <translation>ja</translation>
        </message>
        <message>
            <source>Give the tray a code, as it stands on the tray.</source>
            <translation>Der Schale einen Code geben, wie er auf ihr steht.</translation>
        </message>
        <message>
            <source>Say which crop grows in it.</source>
            <translation>Angeben, welche Kultur darin wächst.</translation>
        </message>
        <message>
            <source>Say on which medium it grows.</source>
            <translation>Angeben, auf welchem Substrat sie wächst.</translation>
        </message>
        <message>
            <source>A tag is a whole number from 10 to 586; leave the field empty without a tag.</source>
            <translation>Ein Schild ist eine ganze Zahl von 10 bis 586; ohne Schild das Feld leer lassen.</translation>
        </message>
        <message>
            <source>Count the places along the shelf: 1, 2, 3 ...</source>
            <translation>Die Plätze entlang der Etage zählen: 1, 2, 3 ...</translation>
        </message>
        <message>
            <source>Type a number, or leave the field empty.</source>
            <translation>Eine Zahl eingeben, oder das Feld leer lassen.</translation>
        </message>
    </context>
    <context>
        <name>TrayPicker</name>
        <message>
            <source>Find a tray, crop or medium</source>
            <translation>Schale, Kultur oder Substrat suchen</translation>
        </message>
        <message>
            <source>Trays</source>
            <translation>Schalen</translation>
        </message>
        <message>
            <source>There is no tray to choose. Add it first (Ctrl+T); photos then find it by its tag.</source>
            <translation>Es ist keine Schale zum Wählen da. Zuerst eine hinzufügen (Strg+T); Fotos finden sie dann an ihrem Schild.</translation>
        </message>
    </context>
    <context>
        <name>TrayPicture</name>
        <message>
            <source>A tray from above, its name hidden</source>
            <translation>Eine Schale von oben, ihr Name verborgen</translation>
        </message>
        <message>
            <source>The picture is coming.</source>
            <translation>Das Bild kommt gleich.</translation>
        </message>
    </context>
    <context>
        <name>TraySheet</name>
        <message>
            <source>It is being worked out.</source>
            <translation>Es wird gerade ausgerechnet.</translation>
        </message>
        <message>
            <source>Colour against mates on {medium}</source>
            <translation>Farbe gegen Schalen auf {medium}</translation>
        </message>
        <message>
            <source>How far it is from the canopy's mean colour on the photo of {moment}.</source>
            <translation>Wie weit sie von der mittleren Farbe des Bestands auf dem Foto vom {moment} entfernt ist.</translation>
        </message>
        <message>
            <source>How far it is from the mean of its block mates on the trusted medium that day ({codes}).</source>
            <translation>Wie weit sie vom Mittel der Schalen ihres Blocks auf dem bewährten Substrat an diesem Tag entfernt ist ({codes}).</translation>
        </message>
        <message>
            <source>Colour against the photo before</source>
            <translation>Farbe gegen das Foto davor</translation>
        </message>
        <message>
            <source>Under 1 it is not seen, from 2 on it is seen side by side, from 3.5 on plainly (CIEDE2000).</source>
            <translation>Unter 1 sieht man nichts, ab 2 sieht man es nebeneinander, ab 3,5 deutlich (CIEDE2000).</translation>
        </message>
        <message>
            <source>With both photos equally light it would be {even}: exposure makes a canopy lighter, too.</source>
            <translation>Wären beide Fotos gleich hell, wären es {even}: auch die Belichtung macht einen Bestand heller.</translation>
        </message>
        <message>
            <source>not seen</source>
            <translation>nicht zu sehen</translation>
        </message>
        <message>
            <source>hardly seen</source>
            <translation>kaum zu sehen</translation>
        </message>
        <message>
            <source>seen side by side</source>
            <translation>nebeneinander zu sehen</translation>
        </message>
        <message>
            <source>plainly seen</source>
            <translation>deutlich zu sehen</translation>
        </message>
        <message>
            <source>mostly lighter</source>
            <translation>vor allem heller</translation>
        </message>
        <message>
            <source>mostly darker</source>
            <translation>vor allem dunkler</translation>
        </message>
        <message>
            <source>Coverage</source>
            <translation>Deckung</translation>
        </message>
        <message>
            <source>Share of the inner area under green, red or pale shoots, from above.</source>
            <translation>Anteil der Innenfläche unter grünen, roten oder blassen Trieben, von oben.</translation>
        </message>
        <message>
            <source>Share of the bed</source>
            <translation>Anteil an der Fläche</translation>
        </message>
        <message>
            <source>Share under shoots of what is neither rim nor wall of the tray. Media at different heights are compared by it.</source>
            <translation>Anteil unter Trieben an dem, was weder Rand noch Wand der Schale ist. Substrate in verschiedener Höhe werden danach verglichen.</translation>
        </message>
        <message>
            <source>Uniformity</source>
            <translation>Gleichmäßigkeit</translation>
        </message>
        <message>
            <source>How alike the 72 cells are (Christiansen): 100 is all alike.</source>
            <translation>Wie ähnlich sich die 72 Zellen sind (Christiansen): 100 heißt alle gleich.</translation>
        </message>
        <message>
            <source>Uniformity on the bed</source>
            <translation>Gleichmäßigkeit auf der Fläche</translation>
        </message>
        <message>
            <source>How alike the cells are, each as a share of its growing bed.</source>
            <translation>Wie gleich die Zellen sind, jede als Anteil an ihrer Substratfläche.</translation>
        </message>
        <message>
            <source>Thinnest quarter</source>
            <translation>Dünnstes Viertel</translation>
        </message>
        <message>
            <source>Mean of the 18 thinnest cells, in % of the mean of all.</source>
            <translation>Mittel der 18 dünnsten Zellen, in % des Mittels aller.</translation>
        </message>
        <message>
            <source>Gaps</source>
            <translation>Lücken</translation>
        </message>
        <message>
            <source>Share of the inner area in bare pieces of at least 4 cm².</source>
            <translation>Anteil der Innenfläche in kahlen Stücken von mindestens 4 cm².</translation>
        </message>
        <message>
            <source>Edge thinner by</source>
            <translation>Rand dünner um</translation>
        </message>
        <message>
            <source>points</source>
            <translation>Punkte</translation>
        </message>
        <message>
            <source>Coverage of the middle minus that of the outer 25 mm.</source>
            <translation>Deckung der Mitte minus jene der äußeren 25 mm.</translation>
        </message>
        <message>
            <source>Left to right</source>
            <translation>Links nach rechts</translation>
        </message>
        <message>
            <source>points / 100 mm</source>
            <translation>Punkte / 100 mm</translation>
        </message>
        <message>
            <source>Rise of coverage along the long side (−: fall).</source>
            <translation>Anstieg der Deckung entlang der langen Seite (−: Abfall).</translation>
        </message>
        <message>
            <source>Far to near</source>
            <translation>Hinten nach vorn</translation>
        </message>
        <message>
            <source>Rise of coverage along the short side (−: fall).</source>
            <translation>Anstieg der Deckung entlang der kurzen Seite (−: Abfall).</translation>
        </message>
        <message>
            <source>Clumping</source>
            <translation>Klumpung</translation>
        </message>
        <message>
            <source>Moran's I of the cells: above 0, thick cells lie beside thick ones.</source>
            <translation>Morans I der Zellen: über 0 liegen dichte Zellen neben dichten.</translation>
        </message>
        <message>
            <source>Green</source>
            <translation>Grün</translation>
        </message>
        <message>
            <source>Share of the inner area that is green canopy.</source>
            <translation>Anteil der Innenfläche mit grünem Bestand.</translation>
        </message>
        <message>
            <source>Pale</source>
            <translation>Blass</translation>
        </message>
        <message>
            <source>Share of the inner area that is pale shoots.</source>
            <translation>Anteil der Innenfläche mit blassen Trieben.</translation>
        </message>
        <message>
            <source>Red</source>
            <translation>Rot</translation>
        </message>
        <message>
            <source>Share of the inner area that is red canopy.</source>
            <translation>Anteil der Innenfläche mit rotem Bestand.</translation>
        </message>
        <message>
            <source>Hue</source>
            <translation>Farbton</translation>
        </message>
        <message>
            <source>Mean hue angle of the canopy in CIELAB: 90 is yellow, 180 is green.</source>
            <translation>Mittlerer Farbtonwinkel des Bestands in CIELAB: 90 ist Gelb, 180 ist Grün.</translation>
        </message>
        <message>
            <source>Chroma</source>
            <translation>Buntheit</translation>
        </message>
        <message>
            <source>How colourful the canopy is (CIELAB).</source>
            <translation>Wie farbig der Bestand ist (CIELAB).</translation>
        </message>
        <message>
            <source>Lightness</source>
            <translation>Helligkeit</translation>
        </message>
        <message>
            <source>of 100</source>
            <translation>von 100</translation>
        </message>
        <message>
            <source>How light the canopy is (CIELAB L*, 0 black to 100 white).</source>
            <translation>Wie hell der Bestand ist (CIELAB L*, 0 Schwarz bis 100 Weiß).</translation>
        </message>
        <message>
            <source>Dark green index</source>
            <translation>Dunkelgrün-Index</translation>
        </message>
        <message>
            <source>From hue, saturation and brightness: higher is darker green.</source>
            <translation>Aus Farbton, Sättigung und Helligkeit: höher ist dunkleres Grün.</translation>
        </message>
        <message>
            <source>Scale</source>
            <translation>Maßstab</translation>
        </message>
        <message>
            <source>Pixels of the photo for each mm of the tray, where it is least.</source>
            <translation>Pixel des Fotos je mm der Schale, wo es am wenigsten sind.</translation>
        </message>
        <message>
            <source>Tilt</source>
            <translation>Neigung</translation>
        </message>
        <message>
            <source>How far the camera was from looking straight down.</source>
            <translation>Wie weit die Kamera von der senkrechten Sicht abwich.</translation>
        </message>
        <message>
            <source>Blur</source>
            <translation>Unschärfe</translation>
        </message>
        <message>
            <source>Width of the softest sharp edge that can be told, on the tray.</source>
            <translation>Breite der weichsten erkennbaren scharfen Kante, auf der Schale.</translation>
        </message>
        <message>
            <source>Brightness</source>
            <translation>Belichtung</translation>
        </message>
        <message>
            <source>Mean lightness of the top view (CIELAB L*).</source>
            <translation>Mittlere Helligkeit der Draufsicht (CIELAB L*).</translation>
        </message>
        <message>
            <source>Burnt out</source>
            <translation>Überbelichtet</translation>
        </message>
        <message>
            <source>Share of the top view without detail in the lights.</source>
            <translation>Anteil der Draufsicht ohne Zeichnung in den Lichtern.</translation>
        </message>
        <message>
            <source>Black</source>
            <translation>Schwarz</translation>
        </message>
        <message>
            <source>Share of the top view without detail in the shadows.</source>
            <translation>Anteil der Draufsicht ohne Zeichnung in den Schatten.</translation>
        </message>
        <message>
            <source>Glare</source>
            <translation>Glanz</translation>
        </message>
        <message>
            <source>Share of the top view under shine from wet leaves or lamps.</source>
            <translation>Anteil der Draufsicht unter dem Glanz nasser Blätter oder Lampen.</translation>
        </message>
        <message>
            <source>Scored in</source>
            <translation>Ausgewertet in</translation>
        </message>
        <message>
            <source>Time that this computer took.</source>
            <translation>Zeit, die dieser Rechner brauchte.</translation>
        </message>
        <message>
            <source>1 gap of {largest} cm²</source>
            <translation>1 Lücke von {largest} cm²</translation>
        </message>
        <message>
            <source>{count} gaps, largest {largest} cm²</source>
            <translation>{count} Lücken, größte {largest} cm²</translation>
        </message>
        <message>
            <source>not told by this photo</source>
            <translation>von diesem Foto nicht zu sagen</translation>
        </message>
        <message>
            <source>by the station's marks</source>
            <translation>durch die Marken der Station</translation>
        </message>
        <message>
            <source>by the tray's rim</source>
            <translation>durch den Schalenrand</translation>
        </message>
        <message>
            <source>set by you</source>
            <translation>von Hand gesetzt</translation>
        </message>
        <message>
            <source>the picture is the tray</source>
            <translation>das Bild ist die Schale</translation>
        </message>
        <message>
            <source>Method</source>
            <translation>Methode</translation>
        </message>
        <message>
            <source>Scores of different methods are never compared.</source>
            <translation>Wertungen verschiedener Methoden werden nie verglichen.</translation>
        </message>
        <message>
            <source>Taken</source>
            <translation>Aufgenommen</translation>
        </message>
        <message>
            <source>Told by the camera's clock.</source>
            <translation>Nach der Uhr der Kamera.</translation>
        </message>
        <message>
            <source>Told by the file's time, for the camera gave none.</source>
            <translation>Nach der Zeit der Datei, denn die Kamera nannte keine.</translation>
        </message>
        <message>
            <source>Canopy</source>
            <translation>Bestand</translation>
        </message>
        <message>
            <source>mended by hand</source>
            <translation>von Hand nachgebessert</translation>
        </message>
        <message>
            <source>A person has drawn where the canopy is; all numbers follow it. What the program had found is kept in the book.</source>
            <translation>Der Bestand wurde von Hand gezeichnet; alle Zahlen folgen ihm. Was das Programm gefunden hatte, bleibt im Buch.</translation>
        </message>
        <message>
            <source>Colour</source>
            <translation>Farbe</translation>
        </message>
        <message>
            <source>balanced</source>
            <translation>abgeglichen</translation>
        </message>
        <message>
            <source>as photographed</source>
            <translation>wie fotografiert</translation>
        </message>
        <message>
            <source>White balance from the grey patch of the tag.</source>
            <translation>Weißabgleich nach dem grauen Feld des Schilds.</translation>
        </message>
        <message>
            <source>No grey patch was seen, so colours are as the camera gave them.</source>
            <translation>Kein graues Feld war zu sehen, die Farben sind also, wie die Kamera sie lieferte.</translation>
        </message>
        <message>
            <source>The program is {percent} % sure of the four corners.</source>
            <translation>Das Programm ist zu {percent} % sicher bei den vier Ecken.</translation>
        </message>
        <message>
            <source>The four corners of the inner area.</source>
            <translation>Die vier Ecken der Innenfläche.</translation>
        </message>
        <message>
            <source>Tray found</source>
            <translation>Schale gefunden</translation>
        </message>
        <message>
            <source>The pictures of this day were made by an older version of the program and cannot be made again.</source>
            <translation>Die Bilder dieses Tages stammen von einer älteren Version des Programms und lassen sich nicht neu machen.</translation>
        </message>
        <message>
            <source>It closed fastest on day {day:.1f}, by {rate:.0f} points a day.</source>
            <translation>Am schnellsten schloss sie sich an Tag {day:.1f}, um {rate:.0f} Punkte am Tag.</translation>
        </message>
        <message>
            <source>Half of the tray was covered on day {day:.1f}.</source>
            <translation>Die Hälfte der Schale war an Tag {day:.1f} bedeckt.</translation>
        </message>
        <message>
            <source>Half of the tray was covered on day {day:.1f} (about 95 %: {low:.1f} to {high:.1f}).</source>
            <translation>Die Hälfte der Schale war an Tag {day:.1f} bedeckt (etwa 95 %: {low:.1f} bis {high:.1f}).</translation>
        </message>
        <message>
            <source>Expected cut: day {day} ({date}).</source>
            <translation>Erwarteter Schnitt: Tag {day} ({date}).</translation>
        </message>
        <message>
            <source>Expected cut: day {day} ({date}), between day {low} and day {high}.</source>
            <translation>Erwarteter Schnitt: Tag {day} ({date}), zwischen Tag {low} und Tag {high}.</translation>
        </message>
        <message>
            <source>The day before, the day after</source>
            <translation>Der Tag davor, der Tag danach</translation>
        </message>
        <message>
            <source>The tray before, the next tray</source>
            <translation>Die vorige Schale, die nächste Schale</translation>
        </message>
        <message>
            <source>Picture, two days, mend the canopy</source>
            <translation>Bild, zwei Tage, Bestand nachbessern</translation>
        </message>
        <message>
            <source>Growth and notes, conditions</source>
            <translation>Wachstum und Notizen, Bedingungen</translation>
        </message>
        <message>
            <source>Note a reading or what was done</source>
            <translation>Messwert oder Arbeit notieren</translation>
        </message>
        <message>
            <source>Trays that have ended</source>
            <translation>Beendete Schalen</translation>
        </message>
        <message>
            <source>All layers off and on; between two days: the other one</source>
            <translation>Alle Ebenen aus und ein; zwischen zwei Tagen: der andere</translation>
        </message>
        <message>
            <source>Two days: where canopy grew and vanished, off and on</source>
            <translation>Zwei Tage: hinzugekommener und verschwundener Bestand, aus und ein</translation>
        </message>
        <message>
            <source>Canopy, gaps, cells, suspects off and on</source>
            <translation>Bestand, Lücken, Zellen, Verdacht aus und ein</translation>
        </message>
        <message>
            <source>Top view or photo</source>
            <translation>Draufsicht oder Foto</translation>
        </message>
        <message>
            <source>Look closer, from further away, at all of it</source>
            <translation>Näher, weiter weg, ganz ansehen</translation>
        </message>
        <message>
            <source>Mending: brush, eraser, smaller, larger</source>
            <translation>Nachbessern: Pinsel, Radierer, kleiner, größer</translation>
        </message>
        <message>
            <source>Mending: move the brush, paint on the way, dab</source>
            <translation>Nachbessern: Pinsel bewegen, dabei malen, tupfen</translation>
        </message>
        <message>
            <source>{code} has left the rack; its photos stay in the book.</source>
            <translation>{code} hat das Regal verlassen; die Fotos bleiben im Buch.</translation>
        </message>
        <message>
            <source>mold</source>
            <translation>Schimmel</translation>
        </message>
        <message>
            <source>not mold</source>
            <translation>kein Schimmel</translation>
        </message>
        <message>
            <source>no longer seen</source>
            <translation>nicht mehr zu sehen</translation>
        </message>
        <message>
            <source>possible mold</source>
            <translation>möglicher Schimmel</translation>
        </message>
        <message>
            <source>give or take 1 point</source>
            <translation>auf 1 Punkt genau</translation>
        </message>
        <message>
            <source>give or take {points} points</source>
            <translation>auf {points} Punkte genau</translation>
        </message>
        <message>
            <source>This photo is older than the sowing of this tray ({sown}): the camera's clock, the day of sowing or the tray of the photo is wrong.</source>
            <translation>Dieses Foto ist älter als die Aussaat dieser Schale ({sown}): die Uhr der Kamera, der Tag der Aussaat oder die Schale des Fotos ist falsch.</translation>
        </message>
        <message>
            <source>{code}: {crop} on {medium}</source>
            <translation>{code}: {crop} auf {medium}</translation>
        </message>
        <message>
            <source>{how} on {day}</source>
            <translation>{how} am {day}</translation>
        </message>
        <message>
            <source>No photo of tray {code} yet.</source>
            <translation>Noch kein Foto von Schale {code}.</translation>
        </message>
        <message>
            <source>Tray {code}, {age}</source>
            <translation>Schale {code}, {age}</translation>
        </message>
        <message>
            <source>cut</source>
            <translation>geschnitten</translation>
        </message>
        <message>
            <source>thrown away</source>
            <translation>weggeworfen</translation>
        </message>
        <message>
            <source>done</source>
            <translation>beendet</translation>
        </message>
        <message>
            <source>size not known</source>
            <translation>Größe nicht bekannt</translation>
        </message>
        <message>
            <source>{size}, {confidence} % sure</source>
            <translation>{size}, zu {confidence} % sicher</translation>
        </message>
        <message>
            <source>Crop</source>
            <translation>Kultur</translation>
        </message>
        <message>
            <source>Medium</source>
            <translation>Substrat</translation>
        </message>
        <message>
            <source>Seating</source>
            <translation>Lage</translation>
        </message>
        <message>
            <source>Seed lot</source>
            <translation>Saatgutpartie</translation>
        </message>
        <message>
            <source>Sowing rate</source>
            <translation>Saatmenge</translation>
        </message>
        <message>
            <source>Soaked</source>
            <translation>Eingeweicht</translation>
        </message>
        <message>
            <source>Sown</source>
            <translation>Gesät</translation>
        </message>
        <message>
            <source>Dark</source>
            <translation>Dunkel</translation>
        </message>
        <message>
            <source>Stacked</source>
            <translation>Gestapelt</translation>
        </message>
        <message>
            <source>Watering</source>
            <translation>Bewässerung</translation>
        </message>
        <message>
            <source>Feed</source>
            <translation>Düngung</translation>
        </message>
        <message>
            <source>Heat mat</source>
            <translation>Heizmatte</translation>
        </message>
        <message>
            <source>Light</source>
            <translation>Licht</translation>
        </message>
        <message>
            <source>Done</source>
            <translation>Beendet</translation>
        </message>
        <message>
            <source>Place</source>
            <translation>Platz</translation>
        </message>
        <message>
            <source>Block</source>
            <translation>Block</translation>
        </message>
        <message>
            <source>Tray</source>
            <translation>Schale</translation>
        </message>
        <message>
            <source>Tag</source>
            <translation>Schild</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Notiz</translation>
        </message>
        <message>
            <source>{begin} to {end}</source>
            <translation>{begin} bis {end}</translation>
        </message>
        <message>
            <source>shelf {shelf}, place {place}</source>
            <translation>Etage {shelf}, Platz {place}</translation>
        </message>
        <message>
            <source>place {place}, without a shelf</source>
            <translation>Platz {place}, ohne Etage</translation>
        </message>
        <message>
            <source>yes</source>
            <translation>ja</translation>
        </message>
        <message>
            <source>no</source>
            <translation>nein</translation>
        </message>
    </context>
    <context>
        <name>TrayTypes</name>
        <message>
            <source>Tray types</source>
            <translation>Schalentypen</translation>
        </message>
        <message>
            <source>New tray type</source>
            <translation>Neuer Schalentyp</translation>
        </message>
        <message>
            <source>Name</source>
            <translation>Name</translation>
        </message>
        <message>
            <source>Outer length</source>
            <translation>Äußere Länge</translation>
        </message>
        <message>
            <source>Outer width</source>
            <translation>Äußere Breite</translation>
        </message>
        <message>
            <source>Inner length</source>
            <translation>Innere Länge</translation>
        </message>
        <message>
            <source>Inner width</source>
            <translation>Innere Breite</translation>
        </message>
        <message>
            <source>Height of the rim</source>
            <translation>Höhe des Schalenrands</translation>
        </message>
        <message>
            <source>Close</source>
            <translation>Schließen</translation>
        </message>
        <message>
            <source>Keep</source>
            <translation>Speichern</translation>
        </message>
        <message>
            <source>mm</source>
            <translation>mm</translation>
        </message>
        <message>
            <source>Measure each tray type once, in mm: over the rim, inside the rim, and from the bench to the top of the rim. The camera finds a tray and its scale by these measures.</source>
            <translation>Jeden Schalentyp einmal messen, in mm: über den Rand, innerhalb des Rands und von der Unterlage bis zur Oberkante des Rands. Nach diesen Maßen findet die Kamera eine Schale und ihren Maßstab.</translation>
        </message>
        <message>
            <source>What you had typed for {name} was not kept.</source>
            <translation>Was für {name} eingegeben war, wurde nicht gespeichert.</translation>
        </message>
        <message>
            <source>Give the new tray type a name, measure it, and keep it.</source>
            <translation>Dem neuen Schalentyp einen Namen geben, ihn messen und speichern.</translation>
        </message>
        <message>
            <source>{what} must be more than 0 mm.</source>
            <translation>{what} muss größer als 0 mm sein.</translation>
        </message>
        <message>
            <source>The inner length cannot be more than the outer length.</source>
            <translation>Die innere Länge kann nicht größer als die äußere sein.</translation>
        </message>
        <message>
            <source>The inner width cannot be more than the outer width.</source>
            <translation>Die innere Breite kann nicht größer als die äußere sein.</translation>
        </message>
        <message>
            <source>{name} is kept with these measures already.</source>
            <translation>{name} ist mit diesen Maßen schon festgehalten.</translation>
        </message>
        <message>
            <source>{name} is kept. Photos that come in from now on are measured by it; older scores stay as they are.</source>
            <translation>{name} ist gespeichert. Fotos, die ab jetzt kommen, werden danach gemessen; ältere Wertungen bleiben, wie sie sind.</translation>
        </message>
        <message>
            <source>Give the tray type a name.</source>
            <translation>Dem Schalentyp einen Namen geben.</translation>
        </message>
        <message>
            <source>There is a tray type of that name: {name}. Give another one.</source>
            <translation>Es gibt schon einen Schalentyp dieses Namens: {name}. Einen anderen Namen geben.</translation>
        </message>
    </context>
    <context>
        <name>TraysPage</name>
        <message>
            <source>How many trays of each, on each crop?</source>
            <translation>Wie viele Schalen von jedem, je Kultur?</translation>
        </message>
        <message>
            <source>Trays of each</source>
            <translation>Schalen von jedem</translation>
        </message>
        <message>
            <source>trays</source>
            <translation>Schalen</translation>
        </message>
        <message>
            <source>Spread</source>
            <translation>Streuung</translation>
        </message>
        <message>
            <source>Take it from my trays</source>
            <translation>Aus den eigenen Schalen nehmen</translation>
        </message>
        <message>
            <source>Chance to show it; 80 % is usual</source>
            <translation>Wahrscheinlichkeit, es zu zeigen; 80 % sind üblich</translation>
        </message>
        <message>
            <source>Chance by number of trays</source>
            <translation>Wahrscheinlichkeit nach Zahl der Schalen</translation>
        </message>
        <message>
            <source>Trays of one kind lie apart by</source>
            <translation>Streuung gleicher Schalen</translation>
        </message>
        <message>
            <source>Choose crops and media first: then the chances stand here.</source>
            <translation>Erst Kulturen und Substrate wählen: dann stehen die Wahrscheinlichkeiten hier.</translation>
        </message>
        <message>
            <source>closer together</source>
            <translation>enger beieinander</translation>
        </message>
        <message>
            <source>as assumed</source>
            <translation>wie angenommen</translation>
        </message>
        <message>
            <source>further apart</source>
            <translation>weiter auseinander</translation>
        </message>
        <message>
            <source>Sets of shelves</source>
            <translation>Sätze von Etagen</translation>
        </message>
        <message>
            <source>Trays of each, on each crop</source>
            <translation>Schalen von jedem, je Kultur</translation>
        </message>
    </context>
    <context>
        <name>TreatmentsPage</name>
        <message>
            <source>On which crops?</source>
            <translation>Mit welchen Kulturen?</translation>
        </message>
        <message>
            <source>Crop</source>
            <translation>Kultur</translation>
        </message>
        <message>
            <source>Read on day</source>
            <translation>Abgelesen an Tag</translation>
        </message>
        <message>
            <source>Dry seed a tray</source>
            <translation>Trockenes Saatgut je Schale</translation>
        </message>
        <message>
            <source>Blackout, days</source>
            <translation>Dunkelphase, Tage</translation>
        </message>
        <message>
            <source>Read on day: so many days after sowing the photos are compared. The day is fixed with the plan. Blackout left open is as with the last tray of its kind; 0 days is never covered.</source>
            <translation>Abgelesen an Tag: so viele Tage nach der Aussaat werden die Fotos verglichen. Der Tag wird mit dem Plan festgelegt. Eine offen gelassene Dunkelphase ist wie bei der letzten Schale dieser Art; 0 Tage heißt: nie abgedeckt.</translation>
        </message>
        <message>
            <source>Another crop</source>
            <translation>Weitere Kultur</translation>
        </message>
        <message>
            <source>Which media?</source>
            <translation>Welche Substrate?</translation>
        </message>
        <message>
            <source>In the trial</source>
            <translation>Im Versuch</translation>
        </message>
        <message>
            <source>The one I trust</source>
            <translation>Das bewährte</translation>
        </message>
        <message>
            <source>Kind</source>
            <translation>Art</translation>
        </message>
        <message>
            <source>Another medium</source>
            <translation>Weiteres Substrat</translation>
        </message>
        <message>
            <source>Does anything else vary?</source>
            <translation>Ändert sich sonst noch etwas?</translation>
        </message>
        <message>
            <source>What else varies</source>
            <translation>Was sich sonst ändert</translation>
        </message>
        <message>
            <source>nothing else</source>
            <translation>sonst nichts</translation>
        </message>
        <message>
            <source>As usual</source>
            <translation>Wie üblich</translation>
        </message>
        <message>
            <source>The change</source>
            <translation>Die Änderung</translation>
        </message>
        <message>
            <source>as usual:</source>
            <translation>wie üblich:</translation>
        </message>
        <message>
            <source>the change:</source>
            <translation>die Änderung:</translation>
        </message>
        <message>
            <source>A whole shelf gets one setting (a heat mat, a lamp)</source>
            <translation>Eine ganze Etage bekommt eine Einstellung (Heizmatte, Lampe)</translation>
        </message>
        <message>
            <source>Then shelves are what is compared, not trays, and it takes several of each.</source>
            <translation>Dann werden Etagen verglichen, nicht Schalen, und es braucht mehrere von jeder.</translation>
        </message>
        <message>
            <source>What is the same for all trays?</source>
            <translation>Was ist für alle Schalen gleich?</translation>
        </message>
    </context>
    <context>
        <name>TrialSheets</name>
        <message>
            <source>done</source>
            <translation>fertig</translation>
        </message>
        <message>
            <source>code</source>
            <translation>Code</translation>
        </message>
        <message>
            <source>tag</source>
            <translation>Schild</translation>
        </message>
        <message>
            <source>place</source>
            <translation>Platz</translation>
        </message>
        <message>
            <source>crop</source>
            <translation>Kultur</translation>
        </message>
        <message>
            <source>treatment</source>
            <translation>Variante</translation>
        </message>
        <message>
            <source>dry seed</source>
            <translation>trockenes Saatgut</translation>
        </message>
        <message>
            <source>{block}, sow on {day}</source>
            <translation>{block}, säen am {day}</translation>
        </message>
        <message>
            <source>The same for all trays: {what}.</source>
            <translation>Für alle Schalen gleich: {what}.</translation>
        </message>
        <message>
            <source>Sowing sheet</source>
            <translation>Aussaatbogen</translation>
        </message>
        <message>
            <source>seed lot {lot}</source>
            <translation>Saatgutpartie {lot}</translation>
        </message>
        <message>
            <source>sown dry</source>
            <translation>trocken gesät</translation>
        </message>
        <message>
            <source>soaked {hours} h</source>
            <translation>{hours} h eingeweicht</translation>
        </message>
        <message>
            <source>never covered</source>
            <translation>nie abgedeckt</translation>
        </message>
        <message>
            <source>days covered after sowing: {days}</source>
            <translation>Tage abgedeckt nach der Saat: {days}</translation>
        </message>
        <message>
            <source>Bench map</source>
            <translation>Regalplan</translation>
        </message>
        <message>
            <source>window end</source>
            <translation>Fensterende</translation>
        </message>
        <message>
            <source>tray</source>
            <translation>Schale</translation>
        </message>
        <message>
            <source>weight (g)</source>
            <translation>Gewicht (g)</translation>
        </message>
        <message>
            <source>water given (ml)</source>
            <translation>Wassergabe (ml)</translation>
        </message>
        <message>
            <source>height (mm)</source>
            <translation>Höhe (mm)</translation>
        </message>
        <message>
            <source>fresh mass (g)</source>
            <translation>Frischmasse (g)</translation>
        </message>
        <message>
            <source>cut (1-5)</source>
            <translation>Schnitt (1-5)</translation>
        </message>
        <message>
            <source>slid (0/1)</source>
            <translation>verrutscht (0/1)</translation>
        </message>
        <message>
            <source>eye score (0-100)</source>
            <translation>Note (0-100)</translation>
        </message>
        <message>
            <source>what you saw</source>
            <translation>Beobachtungen</translation>
        </message>
        <message>
            <source>Day and time: ____________________     Who: ____________________</source>
            <translation>Tag und Uhrzeit: ____________________     Wer: ____________________</translation>
        </message>
        <message>
            <source>Readings, {block}</source>
            <translation>Messwerte, {block}</translation>
        </message>
    </context>
    <context>
        <name>TroubleBand</name>
        <message>
            <source>I have read it</source>
            <translation>Gelesen</translation>
        </message>
    </context>
    <context>
        <name>Unit</name>
        <message>
            <source>points</source>
            <translation>Punkte</translation>
        </message>
        <message>
            <source>g</source>
            <translation>g</translation>
        </message>
    </context>
    <context>
        <name>UnpackPlace</name>
        <message>
            <source>The book in {file} is laid out in a folder of its own and opened. To add its trays to the book that is open now, leave, and choose Bring in another book.</source>
            <translation>Das Buch in {file} wird in einen eigenen Ordner gelegt und geöffnet. Sollen seine Schalen stattdessen in das offene Buch: verlassen und „Anderes Buch einlesen“ wählen.</translation>
        </message>
        <message>
            <source>Open a packed book</source>
            <translation>Gepacktes Buch öffnen</translation>
        </message>
        <message>
            <source>Open it</source>
            <translation>Öffnen</translation>
        </message>
    </context>
    <context>
        <name>Urgency</name>
        <message>
            <source>now</source>
            <translation>jetzt</translation>
        </message>
        <message>
            <source>today</source>
            <translation>heute</translation>
        </message>
        <message>
            <source>soon</source>
            <translation>bald</translation>
        </message>
    </context>
    <context>
        <name>Verdict</name>
        <message>
            <source>{measure} on day {day}</source>
            <translation>{measure} an Tag {day}</translation>
        </message>
        <message>
            <source>; another measure was named as the one that decides</source>
            <translation>; als entscheidend war ein anderes Maß genannt</translation>
        </message>
        <message>
            <source>{measure}; no medium is named as the trusted one</source>
            <translation>{measure}; kein Substrat ist als bewährtes benannt</translation>
        </message>
        <message>
            <source>{measure}, against {trusted}</source>
            <translation>{measure}, gegen {trusted}</translation>
        </message>
        <message>
            <source>{measure}, against {trusted}, margin {margin}</source>
            <translation>{measure}, gegen {trusted}, Spielraum {margin}</translation>
        </message>
        <message>
            <source>{low} to {high}</source>
            <translation>{low} bis {high}</translation>
        </message>
        <message>
            <source>trusted</source>
            <translation>bewährt</translation>
        </message>
        <message>
            <source>no verdict</source>
            <translation>kein Urteil</translation>
        </message>
        <message>
            <source>{answer}, takes {n} of each</source>
            <translation>{answer}, braucht je {n}</translation>
        </message>
        <message>
            <source>{rank} of {media}</source>
            <translation>{rank} von {media}</translation>
        </message>
        <message>
            <source>{low}-{high} of {media}</source>
            <translation>{low}-{high} von {media}</translation>
        </message>
        <message>
            <source>{medium}: {difference}, interval {interval}</source>
            <translation>{medium}: {difference}, Intervall {interval}</translation>
        </message>
        <message>
            <source>no block</source>
            <translation>kein Block</translation>
        </message>
        <message>
            <source>Which one has more cannot be told.</source>
            <translation>Welches mehr hat, ist nicht zu sagen.</translation>
        </message>
        <message>
            <source>Read with care, for this was not alike either: {conditions}.</source>
            <translation>Mit Vorsicht zu lesen, denn auch dies war nicht gleich: {conditions}.</translation>
        </message>
        <message>
            <source>However it is read, each answer stays as it is.</source>
            <translation>Wie man es auch liest, jede Antwort bleibt, wie sie ist.</translation>
        </message>
        <message>
            <source>Photos were scored by the method {method}.</source>
            <translation>Die Fotos wurden mit der Methode {method} ausgewertet.</translation>
        </message>
        <message>
            <source>Next crop</source>
            <translation>Nächste Kultur</translation>
        </message>
        <message>
            <source>Crop before</source>
            <translation>Vorige Kultur</translation>
        </message>
        <message>
            <source>Save the chart that has the focus</source>
            <translation>Ausgewähltes Diagramm speichern</translation>
        </message>
        <message>
            <source>Limits and weights are kept with the plan of {trial}.</source>
            <translation>Grenzen und Gewichte sind mit dem Plan von {trial} gespeichert.</translation>
        </message>
        <message>
            <source>The margin of {trial} is {points} points; its date is kept.</source>
            <translation>Der Spielraum von {trial} beträgt {points} Punkte; das Datum ist festgehalten.</translation>
        </message>
        <message>
            <source>Save the chart</source>
            <translation>Diagramm speichern</translation>
        </message>
        <message>
            <source>The chart was not saved: {why}. Choose another folder.</source>
            <translation>Das Diagramm wurde nicht gespeichert: {why}. Einen anderen Ordner wählen.</translation>
        </message>
        <message>
            <source>Saved: {file}</source>
            <translation>Gespeichert: {file}</translation>
        </message>
    </context>
    <context>
        <name>VerdictEmpty</name>
        <message>
            <source>Plan a trial</source>
            <translation>Versuch planen</translation>
        </message>
        <message>
            <source>The verdict is being read</source>
            <translation>Das Urteil wird gelesen</translation>
        </message>
        <message>
            <source>No trial yet, so there is no verdict</source>
            <translation>Noch kein Versuch, also kein Urteil</translation>
        </message>
        <message>
            <source>Here stands one sentence for each new medium: better than the one you trust, as good within your margin, worse, or not shown, and what would settle it. It takes a trial with at least two trays of each medium, photographed on the same day after sowing.</source>
            <translation>Hier steht ein Satz zu jedem neuen Substrat: besser als das bewährte, gleich gut im Spielraum, schlechter oder nicht belegt, und was es klären würde. Es braucht einen Versuch mit mindestens zwei Schalen jedes Substrats, am selben Tag nach der Aussaat fotografiert.</translation>
        </message>
        <message>
            <source>No tray of {trial} is sown yet</source>
            <translation>Noch keine Schale von {trial} ist gesät</translation>
        </message>
        <message>
            <source>Sow its trays in Plan and photograph them on the day that the plan names; the answer comes here.</source>
            <translation>Die Schalen im Plan säen und an dem Tag fotografieren, den der Plan nennt; die Antwort kommt hierher.</translation>
        </message>
        <message>
            <source>Go to the plan</source>
            <translation>Zum Plan</translation>
        </message>
    </context>
    <context>
        <name>VerdictFoot</name>
        <message>
            <source>A copy of this trial, read by itself: with so many trays of each it would probably settle what is not shown. Where crops take different numbers, that of the crop that takes most</source>
            <translation>Eine Kopie dieses Versuchs, für sich gelesen: mit so vielen Schalen von jedem würde er wahrscheinlich klären, was nicht belegt ist. Wo Kulturen verschieden viele brauchen, die Zahl der Kultur, die am meisten braucht</translation>
        </message>
        <message>
            <source>Report...</source>
            <translation>Bericht...</translation>
        </message>
        <message>
            <source>Look at the report of this trial and save it as PDF or for mail</source>
            <translation>Den Bericht dieses Versuchs ansehen und als PDF oder für die E-Mail speichern</translation>
        </message>
        <message>
            <source>Score blind by eye</source>
            <translation>Blind werten</translation>
        </message>
        <message>
            <source>Score the photos of the day with names hidden, and see whether eye and photo agree</source>
            <translation>Die Fotos des Tages mit verborgenen Namen werten und sehen, ob Auge und Foto übereinstimmen</translation>
        </message>
        <message>
            <source>Plan the next trial: {n} trays of each</source>
            <translation>Nächsten Versuch planen: {n} Schalen von jedem</translation>
        </message>
        <message>
            <source>Plan the next trial: {n} trays of each, for {crop}</source>
            <translation>Nächsten Versuch planen: {n} Schalen von jedem, für {crop}</translation>
        </message>
    </context>
    <context>
        <name>VerdictHead</name>
        <message>
            <source>Trial</source>
            <translation>Versuch</translation>
        </message>
        <message>
            <source>Crop</source>
            <translation>Kultur</translation>
        </message>
        <message>
            <source>Limits and weights</source>
            <translation>Grenzen und Gewichte</translation>
        </message>
        <message>
            <source>What the canopy score is made of, tried on your own trays</source>
            <translation>Woraus die Bestandswertung besteht, ausprobiert an den eigenen Schalen</translation>
        </message>
        <message>
            <source>Margin...</source>
            <translation>Spielraum...</translation>
        </message>
        <message>
            <source>This trial has no plan: say here how much less you would still call as good</source>
            <translation>Dieser Versuch hat keinen Plan: hier angeben, wie viel weniger noch gleich gut heißen soll</translation>
        </message>
    </context>
    <context>
        <name>VerdictPage</name>
        <message>
            <source>Media</source>
            <translation>Substrate</translation>
        </message>
        <message>
            <source>Medium</source>
            <translation>Substrat</translation>
        </message>
        <message>
            <source>Trays</source>
            <translation>Schalen</translation>
        </message>
        <message>
            <source>Mean</source>
            <translation>Mittel</translation>
        </message>
        <message>
            <source>Difference</source>
            <translation>Unterschied</translation>
        </message>
        <message>
            <source>Interval</source>
            <translation>Intervall</translation>
        </message>
        <message>
            <source>Answer</source>
            <translation>Antwort</translation>
        </message>
        <message>
            <source>Rank</source>
            <translation>Rang</translation>
        </message>
        <message>
            <source>What moves it</source>
            <translation>Was es bewegt</translation>
        </message>
        <message>
            <source>Parts of the score</source>
            <translation>Teile der Wertung</translation>
        </message>
        <message>
            <source>Part</source>
            <translation>Teil</translation>
        </message>
        <message>
            <source>Its mean</source>
            <translation>Sein Mittel</translation>
        </message>
        <message>
            <source>Trusted</source>
            <translation>Bewährt</translation>
        </message>
        <message>
            <source>Worth, points</source>
            <translation>Wert, Punkte</translation>
        </message>
        <message>
            <source>How sure it is</source>
            <translation>Wie sicher es ist</translation>
        </message>
        <message>
            <source>Read otherwise, the answer stays</source>
            <translation>Anders gelesen, bleibt die Antwort</translation>
        </message>
        <message>
            <source>What else tells them apart</source>
            <translation>Was sie sonst unterscheidet</translation>
        </message>
        <message>
            <source>What</source>
            <translation>Was</translation>
        </message>
        <message>
            <source>What tells it</source>
            <translation>Woher man es weiß</translation>
        </message>
        <message>
            <source>How this was worked out</source>
            <translation>Wie das gerechnet wurde</translation>
        </message>
        <message>
            <source>There is nothing to compare yet: no tray has a photo that can be used. Bring photos in at Intake.</source>
            <translation>Noch gibt es nichts zu vergleichen: keine Schale hat ein brauchbares Foto. Im Eingang Fotos einlesen.</translation>
        </message>
        <message>
            <source>There is nothing to compare yet: the photos of day {day} were scored by different versions of the method, and these are never mixed. Let Intake score the photos again.</source>
            <translation>Noch ist nichts zu vergleichen: die Fotos von Tag {day} wurden mit verschiedenen Versionen der Methode ausgewertet, und die werden nie vermischt. Die Fotos im Eingang neu auswerten lassen.</translation>
        </message>
        <message>
            <source>There is nothing to compare: day {day} has passed without a photo that can be used. If there are photos of another day, name that day in the plan; the verdict says then that it was changed.</source>
            <translation>Es ist nichts zu vergleichen: Tag {day} ist ohne ein brauchbares Foto vergangen. Gibt es Fotos eines anderen Tages, diesen Tag im Plan nennen; das Urteil sagt dann, dass er geändert wurde.</translation>
        </message>
        <message>
            <source>There is nothing to compare yet: no tray has a photo of day {day} that can be used. Photograph all trays on that day after sowing, and bring the photos in at Intake.</source>
            <translation>Noch gibt es nichts zu vergleichen: keine Schale hat ein brauchbares Foto von Tag {day}. An diesem Tag nach der Aussaat alle Schalen fotografieren und die Fotos im Eingang einlesen.</translation>
        </message>
        <message>
            <source>Means of {trays} trays in {blocks} blocks, {unit}</source>
            <translation>Mittel von {trays} Schalen in {blocks} Blöcken, {unit}</translation>
        </message>
        <message>
            <source>Means of {trays} trays in one block, {unit}</source>
            <translation>Mittel von {trays} Schalen in einem Block, {unit}</translation>
        </message>
        <message>
            <source>One tray, {unit}</source>
            <translation>Eine Schale, {unit}</translation>
        </message>
        <message>
            <source>Differences are from the trusted medium, over all crops of the trial. None of this moves the answer above. What is known of the media besides stands in Materials.</source>
            <translation>Unterschiede zum bewährten Substrat, über alle Kulturen des Versuchs. Nichts davon ändert die Antwort oben. Was man sonst über die Substrate weiß, steht unter Material.</translation>
        </message>
    </context>
    <context>
        <name>ViewBar</name>
        <message>
            <source>Picture</source>
            <translation>Bild</translation>
        </message>
        <message>
            <source>The picture of the day with its layers (P)</source>
            <translation>Das Bild des Tages mit seinen Ebenen (P)</translation>
        </message>
        <message>
            <source>Two days</source>
            <translation>Zwei Tage</translation>
        </message>
        <message>
            <source>Two days, and a line that wipes between them (D)</source>
            <translation>Zwei Tage, und eine Linie, die zwischen ihnen wischt (D)</translation>
        </message>
        <message>
            <source>Mend</source>
            <translation>Korrektur</translation>
        </message>
        <message>
            <source>Mend the canopy with a brush (M)</source>
            <translation>Den Bestand mit einem Pinsel korrigieren (M)</translation>
        </message>
        <message>
            <source>Growth</source>
            <translation>Wachstum</translation>
        </message>
        <message>
            <source>Growth, readings and events; note something (G)</source>
            <translation>Wachstum, Messwerte und Ereignisse; etwas notieren (G)</translation>
        </message>
        <message>
            <source>Conditions</source>
            <translation>Anbau</translation>
        </message>
        <message>
            <source>How it grows, to be corrected (C)</source>
            <translation>Wie sie wächst, zum Berichtigen (C)</translation>
        </message>
    </context>
    <context>
        <name>ViewChoices</name>
        <message>
            <source>Text {n} %</source>
            <translation>Schrift {n} %</translation>
        </message>
        <message>
            <source>The language changes at the next start.</source>
            <translation>Die Sprache wechselt beim nächsten Start.</translation>
        </message>
    </context>
    <context>
        <name>ViewMenu</name>
        <message>
            <source>As the system</source>
            <translation>Wie das System</translation>
        </message>
        <message>
            <source>Light</source>
            <translation>Hell</translation>
        </message>
        <message>
            <source>Dark</source>
            <translation>Dunkel</translation>
        </message>
        <message>
            <source>Text {n} %</source>
            <translation>Schrift {n} %</translation>
        </message>
        <message>
            <source>Type g, °C, ml, mm</source>
            <translation>g, °C, ml, mm eingeben</translation>
        </message>
        <message>
            <source>Type oz, °F, fl oz, in</source>
            <translation>oz, °F, fl oz, in eingeben</translation>
        </message>
        <message>
            <source>Language as the system</source>
            <translation>Sprache wie das System</translation>
        </message>
    </context>
    <context>
        <name>WalkBand</name>
        <message>
            <source>Match these photos by the order of your walk; undo takes it back</source>
            <translation>Diese Fotos nach der Reihenfolge des Rundgangs zuordnen; Rückgängig nimmt es zurück</translation>
        </message>
        <message>
            <source>Show only this shelf</source>
            <translation>Nur diese Etage zeigen</translation>
        </message>
        <message>
            <source>Next shelf</source>
            <translation>Nächste Etage</translation>
        </message>
        <message>
            <source>Leave this shelf for later; it comes again</source>
            <translation>Diese Etage für später lassen; sie kommt wieder</translation>
        </message>
        <message>
            <source>{shelf} ({n} of {count})</source>
            <translation>{shelf} ({n} von {count})</translation>
        </message>
        <message>
            <source>No tag was read. By the order of your walk: {what}</source>
            <translation>Es wurde kein Schild gelesen. Nach der Reihenfolge des Rundgangs: {what}</translation>
        </message>
        <message>
            <source>Yes, {shelf}</source>
            <translation>Ja, {shelf}</translation>
        </message>
        <message>
            <source>trays without a shelf</source>
            <translation>Schalen ohne Etage</translation>
        </message>
        <message>
            <source>shelf {name}</source>
            <translation>Etage {name}</translation>
        </message>
        <message>
            <source>{first} to {last}</source>
            <translation>{first} bis {last}</translation>
        </message>
        <message>
            <source>{count} photos of {day} show {codes}.</source>
            <translation>{count} Fotos vom {day} zeigen {codes}.</translation>
        </message>
        <message>
            <source>1 photo of {day} shows {codes}.</source>
            <translation>1 Foto vom {day} zeigt {codes}.</translation>
        </message>
        <message>
            <source>{code} (until {day})</source>
            <translation>{code} (bis {day})</translation>
        </message>
    </context>
    <context>
        <name>What</name>
        <message>
            <source>any one block left out</source>
            <translation>irgendein Block weggelassen</translation>
        </message>
        <message>
            <source>error from each medium's own trays</source>
            <translation>Fehler aus den eigenen Schalen jedes Substrats</translation>
        </message>
        <message>
            <source>without trays with an open suspect</source>
            <translation>ohne Schalen mit offenem Verdacht</translation>
        </message>
        <message>
            <source>without trays lost to mold</source>
            <translation>ohne durch Schimmel verlorene Schalen</translation>
        </message>
        <message>
            <source>as media at different heights may look</source>
            <translation>wie Substrate in verschiedener Höhe aussehen können</translation>
        </message>
        <message>
            <source>counted as a share of the inner area</source>
            <translation>als Anteil an der Innenfläche gezählt</translation>
        </message>
        <message>
            <source>scores of the other version of the method</source>
            <translation>Wertungen der anderen Version der Methode</translation>
        </message>
    </context>
    <context>
        <name>Why</name>
        <message>
            <source>no numbers</source>
            <translation>keine Zahlen</translation>
        </message>
        <message>
            <source>no tray of the trusted medium has a number</source>
            <translation>keine Schale des bewährten Substrats hat eine Zahl</translation>
        </message>
        <message>
            <source>no other medium has a number</source>
            <translation>kein anderes Substrat hat eine Zahl</translation>
        </message>
        <message>
            <source>one tray of each medium</source>
            <translation>eine Schale je Substrat</translation>
        </message>
        <message>
            <source>one tray of this medium, or of the trusted one</source>
            <translation>eine Schale dieses Substrats oder des bewährten</translation>
        </message>
        <message>
            <source>no tray is left over to tell chance from difference</source>
            <translation>keine Schale bleibt übrig, um Zufall von Unterschied zu trennen</translation>
        </message>
        <message>
            <source>the numbers have no spread at all</source>
            <translation>die Zahlen streuen gar nicht</translation>
        </message>
        <message>
            <source>no block holds both</source>
            <translation>kein Block enthält beide</translation>
        </message>
        <message>
            <source>each medium stands on one shelf only</source>
            <translation>jedes Substrat steht nur auf einer Etage</translation>
        </message>
        <message>
            <source>this is the trusted medium</source>
            <translation>das ist das bewährte Substrat</translation>
        </message>
    </context>
    <context>
        <name>WhyNoBlocks</name>
        <message>
            <source>no shelf has room for a whole block</source>
            <translation>keine Etage hat Platz für einen ganzen Block</translation>
        </message>
        <message>
            <source>there are fewer shelves than settings</source>
            <translation>es gibt weniger Etagen als Einstellungen</translation>
        </message>
    </context>
    <context>
        <name>Window</name>
        <message>
            <source>The demonstration</source>
            <translation>Die Vorführung</translation>
        </message>
    </context>
    <context>
        <name>WipeView</name>
        <message>
            <source>Two days of the tray, with a line that wipes between them</source>
            <translation>Zwei Tage der Schale, mit einer Linie, die zwischen ihnen wischt</translation>
        </message>
        <message>
            <source>grew</source>
            <translation>hinzugekommen</translation>
        </message>
        <message>
            <source>vanished</source>
            <translation>verschwunden</translation>
        </message>
    </context>
    <context>
        <name>ZoomBar</name>
        <message>
            <source>Look closer</source>
            <translation>Näher ansehen</translation>
        </message>
        <message>
            <source>Look from further away</source>
            <translation>Von weiter weg ansehen</translation>
        </message>
        <message>
            <source>Show the whole picture</source>
            <translation>Das ganze Bild zeigen</translation>
        </message>
    </context>
    <context>
        <name>_Trays</name>
        <message>
            <source>{code}   {crop} on {medium}, shelf {shelf}</source>
            <translation>{code}   {crop} auf {medium}, Etage {shelf}</translation>
        </message>
        <message>
            <source>{code}   {crop} on {medium}</source>
            <translation>{code}   {crop} auf {medium}</translation>
        </message>
        <message>
            <source>{tray}, until {day}</source>
            <translation>{tray}, bis {day}</translation>
        </message>
        <message>
            <source>{tray}, sown only on {day}</source>
            <translation>{tray}, erst am {day} gesät</translation>
        </message>
    </context>
    <context>
        <name>_WhenDelegate</name>
        <message>
            <source>When it was</source>
            <translation>Wann es war</translation>
        </message>
    </context>
</TS>
