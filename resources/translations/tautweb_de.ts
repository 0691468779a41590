<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>Badge</name>
    <message>
        <source>With its PIN this code signs in this person's name. Keep it like a key; when it is lost, tell a supervisor at once.</source>
        <translation>Mit seiner PIN zeichnet dieser Code im Namen dieser Person ab. Wie einen Schlüssel hüten; bei Verlust sofort der Aufsicht melden.</translation>
    </message>
</context>
<context>
    <name>RunActs</name>
    <message>
        <source>&amp;Correct</source>
        <translation>Beri&amp;chtigen</translation>
    </message>
    <message>
        <source>&amp;Withdraw the press</source>
        <translation>Maschine außer Betrieb mel&amp;den</translation>
    </message>
    <message>
        <source>A break, or something else to do</source>
        <translation>Eine Pause oder etwas anderes zu tun</translation>
    </message>
    <message>
        <source>A held stop is its holder's alone: %1 says with their PIN that they are out. If they are away, a supervisor who has seen that nobody is in says so, and why.</source>
        <translation>Ein gehaltener Halt gehört nur dem, der ihn hält: %1 sagt mit der eigenen PIN, draußen zu sein. Bei Abwesenheit sagt es eine Aufsicht, die gesehen hat, dass niemand drin ist, und warum.</translation>
    </message>
    <message>
        <source>Abandon and seal the run</source>
        <translation>Durchgang abbrechen und versiegeln</translation>
    </message>
    <message>
        <source>Abandon the run</source>
        <translation>Durchgang abbrechen</translation>
    </message>
    <message>
        <source>Another stop held</source>
        <translation>Noch ein Halt gehalten</translation>
    </message>
    <message>
        <source>Before the run goes on, the press is made safe first.</source>
        <translation>Bevor der Durchgang weitergeht, wird die Maschine sicher gemacht.</translation>
    </message>
    <message>
        <source>Change ro&amp;ll</source>
        <translation>Ro&amp;lle wechseln</translation>
    </message>
    <message>
        <source>Dia&amp;meter</source>
        <translation>Durch&amp;messer</translation>
    </message>
    <message>
        <source>Diameter of the roll, measured now</source>
        <translation>Durchmesser der Rolle, jetzt gemessen</translation>
    </message>
    <message>
        <source>Do a stage again</source>
        <translation>Einen Abschnitt wiederholen</translation>
    </message>
    <message>
        <source>Do this stage again</source>
        <translation>Diesen Abschnitt wiederholen</translation>
    </message>
    <message>
        <source>Does not a&amp;pply</source>
        <translation>Trifft nicht &amp;zu</translation>
    </message>
    <message>
        <source>Every target that depends on the diameter is computed anew; answers that it touches are asked again.</source>
        <translation>Jeder Sollwert, der vom Durchmesser abhängt, wird neu berechnet; betroffene Antworten werden neu verlangt.</translation>
    </message>
    <message>
        <source>Everybody with hands in the press holds a stop of their own, and gives it up themselves.</source>
        <translation>Jede Person mit Händen in der Maschine hält einen eigenen Halt und hebt ihn selbst auf.</translation>
    </message>
    <message>
        <source>Give up a held stop</source>
        <translation>Gehaltenen Halt aufheben</translation>
    </message>
    <message>
        <source>Give up this stop</source>
        <translation>Diesen Halt aufheben</translation>
    </message>
    <message>
        <source>Hand over to somebody else</source>
        <translation>An jemand anderen übergeben</translation>
    </message>
    <message>
        <source>If it is a supervisor: why not the holder</source>
        <translation>Falls Aufsicht: warum nicht, wer ihn hält</translation>
    </message>
    <message>
        <source>If it was something else</source>
        <translation>Wenn es etwas anderes war</translation>
    </message>
    <message>
        <source>In a few words</source>
        <translation>In wenigen Worten</translation>
    </message>
    <message>
        <source>Interrupt the run</source>
        <translation>Durchgang unterbrechen</translation>
    </message>
    <message>
        <source>It stands in the record beside this step, with your name and the time.</source>
        <translation>Es steht im Protokoll neben diesem Schritt, mit Ihrem Namen und der Zeit.</translation>
    </message>
    <message>
        <source>Its steps open again, and those of later stages that rest on what it undoes; what was answered before stays in the record.</source>
        <translation>Seine Schritte öffnen sich wieder, ebenso die späterer Abschnitte, die auf dem beruhen, was er aufhebt; frühere Antworten bleiben im Protokoll.</translation>
    </message>
    <message>
        <source>Leave this page, keep the run open</source>
        <translation>Diese Seite verlassen, Durchgang offen lassen</translation>
    </message>
    <message>
        <source>Look through and sign</source>
        <translation>Durchsehen und abzeichnen</translation>
    </message>
    <message>
        <source>N&amp;ote</source>
        <translation>N&amp;otiz</translation>
    </message>
    <message>
        <source>Not known</source>
        <translation>Unbekannt</translation>
    </message>
    <message>
        <source>Now it says “%1”, by %2, %3.</source>
        <translation>Jetzt steht da „%1“ von %2, %3.</translation>
    </message>
    <message>
        <source>Pass the step by</source>
        <translation>Schritt übergehen</translation>
    </message>
    <message>
        <source>Pictures and files</source>
        <translation>Bilder und Dateien</translation>
    </message>
    <message>
        <source>Power or air is gone</source>
        <translation>Strom oder Luft ist weg</translation>
    </message>
    <message>
        <source>Sheet of the run as it stands</source>
        <translation>Einrichteblatt des Durchgangs, wie er steht</translation>
    </message>
    <message>
        <source>Somebody else stopped the press</source>
        <translation>Jemand anderes hat die Maschine angehalten</translation>
    </message>
    <message>
        <source>Something else</source>
        <translation>Etwas anderes</translation>
    </message>
    <message>
        <source>Take over the run</source>
        <translation>Durchgang übernehmen</translation>
    </message>
    <message>
        <source>The first answer stays in the record; this one stands beside it.</source>
        <translation>Die erste Antwort bleibt im Protokoll; diese steht daneben.</translation>
    </message>
    <message>
        <source>The press is out of use from now on, and every open run on it holds. Only a supervisor other than you gives it back.</source>
        <translation>Die Maschine ist ab jetzt gesperrt, und jeder offene Durchgang an ihr ruht. Nur eine andere Aufsicht als Sie gibt sie wieder frei.</translation>
    </message>
    <message>
        <source>The right answer</source>
        <translation>Die richtige Antwort</translation>
    </message>
    <message>
        <source>The run ends here and is sealed as abandoned. It cannot be taken up again.</source>
        <translation>Der Durchgang endet hier und wird als abgebrochen versiegelt. Er kann nicht wieder aufgenommen werden.</translation>
    </message>
    <message>
        <source>The step is passed by, with your reason beside it.</source>
        <translation>Der Schritt wird übergangen, mit Ihrem Grund daneben.</translation>
    </message>
    <message>
        <source>The stop of %1</source>
        <translation>Der Halt von %1</translation>
    </message>
    <message>
        <source>This person holds the stop</source>
        <translation>Diese Person hält den Halt</translation>
    </message>
    <message>
        <source>This step is vital: a supervisor looks at it here and gives their PIN.</source>
        <translation>Dieser Schritt ist kritisch: Eine Aufsicht sieht ihn sich hier an und gibt ihre PIN ein.</translation>
    </message>
    <message>
        <source>Use this diameter</source>
        <translation>Diesen Durchmesser verwenden</translation>
    </message>
    <message>
        <source>What helped</source>
        <translation>Was geholfen hat</translation>
    </message>
    <message>
        <source>What interrupts it</source>
        <translation>Was ihn unterbricht</translation>
    </message>
    <message>
        <source>What is to be noted</source>
        <translation>Was zu notieren ist</translation>
    </message>
    <message>
        <source>What is wrong with the press</source>
        <translation>Was mit der Maschine nicht stimmt</translation>
    </message>
    <message>
        <source>What was wrong</source>
        <translation>Was nicht stimmte</translation>
    </message>
    <message>
        <source>Which stage</source>
        <translation>Welcher Abschnitt</translation>
    </message>
    <message>
        <source>Which stop</source>
        <translation>Welcher Halt</translation>
    </message>
    <message>
        <source>Who holds it</source>
        <translation>Wer ihn hält</translation>
    </message>
    <message>
        <source>Whoever goes home gives up theirs first.</source>
        <translation>Wer nach Hause geht, hebt zuerst den eigenen auf.</translation>
    </message>
    <message>
        <source>Whoever takes over says the vital steps of this stage again.</source>
        <translation>Wer übernimmt, sagt die kritischen Schritte dieses Abschnitts noch einmal.</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>Why it does not apply</source>
        <translation>Warum er nicht zutrifft</translation>
    </message>
    <message>
        <source>Why it is abandoned</source>
        <translation>Warum er abgebrochen wird</translation>
    </message>
    <message>
        <source>With its unit, if it has one</source>
        <translation>Mit Einheit, wenn sie eine hat</translation>
    </message>
    <message>
        <source>With its unit: 18 3/4 in</source>
        <translation>Mit Einheit: 18 3/4 in</translation>
    </message>
    <message>
        <source>With its unit: 480 mm</source>
        <translation>Mit Einheit: 480 mm</translation>
    </message>
    <message>
        <source>Withdraw the press from use</source>
        <translation>Maschine außer Betrieb melden</translation>
    </message>
    <message>
        <source>Write the correction</source>
        <translation>Berichtigung schreiben</translation>
    </message>
    <message>
        <source>Write the note</source>
        <translation>Notiz schreiben</translation>
    </message>
    <message>
        <source>Write what helped</source>
        <translation>Aufschreiben, was geholfen hat</translation>
    </message>
    <message>
        <source>Yes, it is so</source>
        <translation>Ja, so ist es</translation>
    </message>
    <message>
        <source>“%1” is right again. Whoever comes next is glad to know why.</source>
        <translation>„%1“ stimmt wieder. Wer danach kommt, wüsste gern, warum.</translation>
    </message>
</context>
<context>
    <name>RunPage</name>
    <message>
        <source>%1 answers given so far are asked again, the first: %2.</source>
        <translation>%1 bisherige Antworten werden neu verlangt, als erste: %2.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Before that “%1” stood, by %2, %3. It was corrected: %4</source>
        <translation>Davor stand „%1“ von %2, %3. Es wurde berichtigt: %4</translation>
    </message>
    <message>
        <source>English</source>
        <translation>Englisch</translation>
    </message>
    <message>
        <source>Files: %1</source>
        <translation>Dateien: %1</translation>
    </message>
    <message>
        <source>German</source>
        <translation>Deutsch</translation>
    </message>
    <message>
        <source>No answer given so far is asked again.</source>
        <translation>Keine bisherige Antwort wird neu verlangt.</translation>
    </message>
    <message>
        <source>Notes: %1</source>
        <translation>Notizen: %1</translation>
    </message>
    <message>
        <source>One answer given so far is asked again: %1.</source>
        <translation>Eine bisherige Antwort wird neu verlangt: %1.</translation>
    </message>
    <message>
        <source>Roll %1</source>
        <translation>Rolle %1</translation>
    </message>
    <message>
        <source>Spanish</source>
        <translation>Spanisch</translation>
    </message>
    <message>
        <source>Stops held: %1</source>
        <translation>Gehaltene Halte: %1</translation>
    </message>
    <message>
        <source>The roll</source>
        <translation>Die Rolle</translation>
    </message>
    <message>
        <source>The roll's measured diameter</source>
        <translation>Der gemessene Durchmesser der Rolle</translation>
    </message>
    <message>
        <source>This run is read in %1</source>
        <translation>Dieser Durchgang wird auf %1 gelesen</translation>
    </message>
    <message>
        <source>What the roll's tag says</source>
        <translation>Was auf dem Rollenzettel steht</translation>
    </message>
    <message>
        <source>What was found of the roll</source>
        <translation>Was an der Rolle gefunden wurde</translation>
    </message>
</context>
<context>
    <name>TagTable</name>
    <message>
        <source>%1, the day is not said</source>
        <translation>%1, Tag nicht gesagt</translation>
    </message>
    <message>
        <source>Something else is entered, and stays.</source>
        <translation>Etwas anderes ist eingetragen und bleibt.</translation>
    </message>
    <message>
        <source>The same is entered.</source>
        <translation>Dasselbe ist eingetragen.</translation>
    </message>
    <message>
        <source>Width, core, winding and length have to fit %1.</source>
        <translation>Breite, Hülse, Wicklung und Länge müssen passen zu: %1.</translation>
    </message>
    <message>
        <source>Will be entered: %1.</source>
        <translation>Wird eingetragen: %1.</translation>
    </message>
</context>
<context>
    <name>core</name>
    <message>
        <source>"%1" and "%2" are not of one kind.</source>
        <translation>„%1“ und „%2“ sind nicht von einer Art.</translation>
    </message>
    <message>
        <source>"%1" can be read in two ways: as %2 or as %3.</source>
        <translation>„%1“ lässt sich auf zwei Arten lesen: als %2 oder als %3.</translation>
    </message>
    <message>
        <source>"%1" cannot be right here: between %2 and %3 can be believed.</source>
        <translation>„%1“ kann hier nicht stimmen: Glaubhaft ist zwischen %2 und %3.</translation>
    </message>
    <message>
        <source>"%1" cannot be used as a name that others refer to.</source>
        <translation>„%1“ taugt nicht als Name, auf den sich andere beziehen.</translation>
    </message>
    <message>
        <source>"%1" could be %2 or %3, and a held stop belongs to one person.</source>
        <translation>„%1“ kann %2 oder %3 sein, und ein gehaltener Halt gehört einer Person.</translation>
    </message>
    <message>
        <source>"%1" does not begin with a number that can be read.</source>
        <translation>„%1“ beginnt nicht mit einer lesbaren Zahl.</translation>
    </message>
    <message>
        <source>"%1" has figures in it: a roll, a tag or a reading holds no stop.</source>
        <translation>„%1“ enthält Ziffern: Eine Rolle, ein Rollenzettel oder eine Ablesung hält keinen Halt.</translation>
    </message>
    <message>
        <source>"%1" has no unit that is read here.</source>
        <translation>„%1“ hat keine Einheit, die hier gelesen wird.</translation>
    </message>
    <message>
        <source>"%1" has no unit; %2 is wanted.</source>
        <translation>„%1“ hat keine Einheit; verlangt ist %2.</translation>
    </message>
    <message>
        <source>"%1" in "%2" is not a unit that is read here; %3 is wanted.</source>
        <translation>„%1“ in „%2“ ist keine Einheit, die hier gelesen wird; verlangt ist %3.</translation>
    </message>
    <message>
        <source>"%1" is %2; %3 is wanted: %4.</source>
        <translation>„%1“ ist %2; verlangt ist %3: %4.</translation>
    </message>
    <message>
        <source>"%1" is below nought, which cannot be here.</source>
        <translation>„%1“ liegt unter null, das kann hier nicht sein.</translation>
    </message>
    <message>
        <source>"%1" is in no unit that this program knows.</source>
        <translation>„%1“ hat keine Einheit, die dieses Programm kennt.</translation>
    </message>
    <message>
        <source>"%1" is more than a number.</source>
        <translation>„%1“ ist mehr als eine Zahl.</translation>
    </message>
    <message>
        <source>"%1" is no day of the calendar.</source>
        <translation>„%1“ ist kein Tag des Kalenders.</translation>
    </message>
    <message>
        <source>"%1" is no kind of run.</source>
        <translation>„%1“ ist keine Art von Durchgang.</translation>
    </message>
    <message>
        <source>"%1" is not a length in feet and inches.</source>
        <translation>„%1“ ist keine Länge in Fuß und Zoll.</translation>
    </message>
    <message>
        <source>"%1" is not a time in UTC.</source>
        <translation>„%1“ ist keine Zeit in UTC.</translation>
    </message>
    <message>
        <source>"%1" is not a unit of force.</source>
        <translation>„%1“ ist keine Einheit der Kraft.</translation>
    </message>
    <message>
        <source>"%1" is not a whole number, and these are counted one by one.</source>
        <translation>„%1“ ist keine ganze Zahl, und hier wird stückweise gezählt.</translation>
    </message>
    <message>
        <source>"%1" is not a word that can stand here.</source>
        <translation>„%1“ ist kein Wort, das hier stehen kann.</translation>
    </message>
    <message>
        <source>"%1" is not of a kind that can stand here; expected is one of: %2.</source>
        <translation>„%1“ ist von keiner Art, die hier stehen kann; erwartet ist eine von: %2.</translation>
    </message>
    <message>
        <source>"%1" is not one of the answers to this step.</source>
        <translation>„%1“ ist keine der Antworten auf diesen Schritt.</translation>
    </message>
    <message>
        <source>"%1" is not one value as a file writes it.</source>
        <translation>„%1“ ist kein Wert, wie eine Datei ihn schreibt.</translation>
    </message>
    <message>
        <source>"%1" is not the way to a step.</source>
        <translation>„%1“ ist nicht der Weg zu einem Schritt.</translation>
    </message>
    <message>
        <source>"%1" is still empty.</source>
        <translation>„%1“ ist noch leer.</translation>
    </message>
    <message>
        <source>"%1" is the name of the unwind, not of a rewind.</source>
        <translation>„%1“ ist der Name der Abwicklung, nicht der einer Aufwicklung.</translation>
    </message>
    <message>
        <source>"%1" is too large to compute with.</source>
        <translation>„%1“ ist zu groß, um damit zu rechnen.</translation>
    </message>
    <message>
        <source>"%1" is too little of a name. Is %2 meant?</source>
        <translation>„%1“ ist zu wenig von einem Namen. Ist %2 gemeint?</translation>
    </message>
    <message>
        <source>"%1" is too long to be a value.</source>
        <translation>„%1“ ist zu lang für einen Wert.</translation>
    </message>
    <message>
        <source>"%1" may stand only between quotes or in a comment.</source>
        <translation>„%1“ darf nur zwischen Anführungszeichen oder in einem Kommentar stehen.</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 (%2 of %3)</source>
        <translation>%1 (%2 von %3)</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1 (process %2) is writing in the logbook %3, and only one can.</source>
        <translation>%1 (Prozess %2) schreibt im Protokollbuch %3, und das kann nur einer.</translation>
    </message>
    <message>
        <source>%1 = "%2" is not a word that is known here.</source>
        <translation>%1 = "%2" ist kein Wort, das hier bekannt ist.</translation>
    </message>
    <message>
        <source>%1 across on %2 would be labels of %3 with their gap.</source>
        <translation>%1 Nutzen quer auf %2 ergäben Etiketten von %3 samt Abstand.</translation>
    </message>
    <message>
        <source>%1 across, %2 around</source>
        <translation>%1 quer, %2 im Umfang</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation>%1 und %2</translation>
    </message>
    <message>
        <source>%1 answers in less than %2 s</source>
        <translation>%1 Antworten in weniger als %2 s</translation>
    </message>
    <message>
        <source>%1 around in a repeat of %2 would be labels of %3 with their gap.</source>
        <translation>%1 Nutzen im Umfang bei Rapport %2 ergäben Etiketten von %3 samt Abstand.</translation>
    </message>
    <message>
        <source>%1 at a diameter of %2, %3 at %4.</source>
        <translation>%1 bei einem Durchmesser von %2, %3 bei %4.</translation>
    </message>
    <message>
        <source>%1 at the joint and each splice inside</source>
        <translation>%1 an der Klebestelle und an jeder in der Rolle</translation>
    </message>
    <message>
        <source>%1 cannot be %2.</source>
        <translation>%1 kann nicht %2 sein.</translation>
    </message>
    <message>
        <source>%1 cannot be made: its folder may not be written in.</source>
        <translation>%1 kann nicht angelegt werden: In seinen Ordner darf nicht geschrieben werden.</translation>
    </message>
    <message>
        <source>%1 cannot be opened; the system says: %2.</source>
        <translation>%1 kann nicht geöffnet werden; das System meldet: %2.</translation>
    </message>
    <message>
        <source>%1 cannot be restored from itself.</source>
        <translation>%1 kann nicht aus sich selbst wiederhergestellt werden.</translation>
    </message>
    <message>
        <source>%1 cannot be right here: between %2 and %3 can be believed.</source>
        <translation>%1 kann hier nicht stimmen: Glaubhaft ist zwischen %2 und %3.</translation>
    </message>
    <message>
        <source>%1 cannot be right here; a whole number from %2 to %3 is expected.</source>
        <translation>%1 kann hier nicht stimmen; erwartet ist eine ganze Zahl von %2 bis %3.</translation>
    </message>
    <message>
        <source>%1 cannot be written, nor made again what it was. What lay there is whole as %2.</source>
        <translation>%1 lässt sich weder schreiben noch in den alten Stand bringen. Was dort lag, ist als %2 unversehrt.</translation>
    </message>
    <message>
        <source>%1 cannot be written: it is a link into the folder %2, which does not exist.</source>
        <translation>%1 kann nicht geschrieben werden: Es ist ein Verweis in den Ordner %2, den es nicht gibt.</translation>
    </message>
    <message>
        <source>%1 cannot be written: its folder does not exist.</source>
        <translation>%1 kann nicht geschrieben werden: Den Ordner dafür gibt es nicht.</translation>
    </message>
    <message>
        <source>%1 cannot be written: its folder takes no files. Nothing was changed.</source>
        <translation>%1 kann nicht geschrieben werden: Der Ordner nimmt keine Dateien auf. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>%1 cannot be written; the system says: %2. Nothing was changed.</source>
        <translation>%1 kann nicht geschrieben werden; das System meldet: %2. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>%1 cannot say this of themselves.</source>
        <translation>%1 kann das nicht von sich selbst sagen.</translation>
    </message>
    <message>
        <source>%1 cannot sign for an attempt of their own.</source>
        <translation>%1 kann nicht für einen eigenen Versuch unterschreiben.</translation>
    </message>
    <message>
        <source>%1 could not be brought to the layout of this program (first difference: %2). Nothing was changed.</source>
        <translation>%1 ließ sich nicht auf den Aufbau dieses Programms bringen (erster Unterschied: %2). Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>%1 could not be written.</source>
        <translation>%1 konnte nicht geschrieben werden.</translation>
    </message>
    <message>
        <source>%1 does not sign a set-up of this press alone: %2</source>
        <translation>%1 unterschreibt ein Einrichten dieser Maschine nicht allein: %2</translation>
    </message>
    <message>
        <source>%1 does not stand in this file.</source>
        <translation>%1 steht nicht in dieser Datei.</translation>
    </message>
    <message>
        <source>%1 from the %2</source>
        <translation>%1 ab %2</translation>
    </message>
    <message>
        <source>%1 gives their PIN here. If they are away, a supervisor looks and says so.</source>
        <translation>%1 gibt hier die eigene PIN ein. Bei Abwesenheit sieht eine Aufsicht nach und sagt es.</translation>
    </message>
    <message>
        <source>%1 had run %2 in hand or sealed it.</source>
        <translation>%1 hatte Durchgang %2 in der Hand oder hat ihn versiegelt.</translation>
    </message>
    <message>
        <source>%1 has %2 MB; at most %3 MB are kept with a run.</source>
        <translation>%1 hat %2 MB; höchstens %3 MB werden mit einem Durchgang aufbewahrt.</translation>
    </message>
    <message>
        <source>%1 has a minus sign. %2: how much it is counts, whichever way, and that has no sign.</source>
        <translation>%1 hat ein Minuszeichen. %2: Es zählt der Betrag, gleich in welche Richtung, und der hat kein Vorzeichen.</translation>
    </message>
    <message>
        <source>%1 has corrected run %2 themselves.</source>
        <translation>%1 hat Durchgang %2 selbst berichtigt.</translation>
    </message>
    <message>
        <source>%1 has no lane to wind: the job has %2 across, and the rewinds listed before it take them.</source>
        <translation>%1 hat keinen Streifen aufzuwickeln: Der Auftrag hat %2 Nutzen quer, und die davor aufgeführten Aufwicklungen nehmen sie auf.</translation>
    </message>
    <message>
        <source>%1 has no role that is known: "%2".</source>
        <translation>%1 hat keine bekannte Funktion: „%2“.</translation>
    </message>
    <message>
        <source>%1 has no zone %2 whose setting makes a torque.</source>
        <translation>%1 hat keine Zone %2, deren Einstellung ein Drehmoment ergibt.</translation>
    </message>
    <message>
        <source>%1 has not set up the press %2 for %3 days.</source>
        <translation>%1 hat die Maschine %2 seit %3 Tagen nicht eingerichtet.</translation>
    </message>
    <message>
        <source>%1 has runs in it already, and only an empty logbook is filled.</source>
        <translation>%1 enthält schon Durchgänge, und gefüllt wird nur ein leeres Protokollbuch.</translation>
    </message>
    <message>
        <source>%1 has to wind %2 for this job, not as it does first.</source>
        <translation>%1 muss für diesen Auftrag %2 wickeln, nicht so, wie es zuerst vorgesehen ist.</translation>
    </message>
    <message>
        <source>%1 has withdrawn the press %2 already: %3</source>
        <translation>%1 hat die Maschine %2 bereits gesperrt: %3</translation>
    </message>
    <message>
        <source>%1 has withdrawn the press %2 from use: %3</source>
        <translation>%1 hat die Maschine %2 gesperrt: %3</translation>
    </message>
    <message>
        <source>%1 holds no press, job, substrate or procedure.</source>
        <translation>%1 enthält weder Maschine noch Auftrag, Bedruckstoff oder Ablauf.</translation>
    </message>
    <message>
        <source>%1 holds this stop, and nobody else gives it up.</source>
        <translation>%1 hält diesen Halt, und niemand sonst hebt ihn auf.</translation>
    </message>
    <message>
        <source>%1 holds this stop. For %1 only a supervisor speaks who does not have the run in hand.</source>
        <translation>%1 hält diesen Halt. Für %1 spricht nur eine Aufsicht, die den Durchgang nicht in der Hand hat.</translation>
    </message>
    <message>
        <source>%1 in %2 runs</source>
        <translation>%1 in %2 Durchgängen</translation>
    </message>
    <message>
        <source>%1 in force</source>
        <translation>%1 gültig</translation>
    </message>
    <message>
        <source>%1 in force, %2 no longer in force</source>
        <translation>%1 gültig, %2 nicht mehr gültig</translation>
    </message>
    <message>
        <source>%1 in the exported file is missing or no count.</source>
        <translation>%1 in der exportierten Datei fehlt oder ist keine Anzahl.</translation>
    </message>
    <message>
        <source>%1 in the exported file is missing or no list.</source>
        <translation>%1 in der exportierten Datei fehlt oder ist keine Liste.</translation>
    </message>
    <message>
        <source>%1 in the exported file is missing or no text.</source>
        <translation>%1 in der exportierten Datei fehlt oder ist kein Text.</translation>
    </message>
    <message>
        <source>%1 in the exported file is missing or no time.</source>
        <translation>%1 in der exportierten Datei fehlt oder ist keine Zeit.</translation>
    </message>
    <message>
        <source>%1 in the exported file is missing or not written as it should be.</source>
        <translation>%1 fehlt in der exportierten Datei oder steht nicht so da, wie es sollte.</translation>
    </message>
    <message>
        <source>%1 in the exported file is no object.</source>
        <translation>%1 in der exportierten Datei ist kein Objekt.</translation>
    </message>
    <message>
        <source>%1 in the exported file says another kind than its document.</source>
        <translation>%1 in der exportierten Datei nennt eine andere Art als das Dokument dazu.</translation>
    </message>
    <message>
        <source>%1 is %2; expected is %3.</source>
        <translation>%1 ist %2; erwartet ist %3.</translation>
    </message>
    <message>
        <source>%1 is a folder of another machine: a good place for what is kept twice.</source>
        <translation>%1 ist ein Ordner eines anderen Rechners: ein guter Ort für das, was doppelt aufbewahrt wird.</translation>
    </message>
    <message>
        <source>%1 is a folder or a device, not a file.</source>
        <translation>%1 ist ein Ordner oder ein Gerät, keine Datei.</translation>
    </message>
    <message>
        <source>%1 is a folder, not a file.</source>
        <translation>%1 ist ein Ordner, keine Datei.</translation>
    </message>
    <message>
        <source>%1 is a folder, so no file of that name can be written.</source>
        <translation>%1 ist ein Ordner, also kann keine Datei dieses Namens geschrieben werden.</translation>
    </message>
    <message>
        <source>%1 is a pipe or a device, not a file.</source>
        <translation>%1 ist eine Pipe oder ein Gerät, keine Datei.</translation>
    </message>
    <message>
        <source>%1 is a practice logbook, and %2 is the shop's own.</source>
        <translation>%1 ist ein Übungs-Protokollbuch, und %2 ist das des Betriebs.</translation>
    </message>
    <message>
        <source>%1 is a practice logbook: what stands in it never happened on a press.</source>
        <translation>%1 ist ein Übungs-Protokollbuch: Was darin steht, ist nie an einer Maschine geschehen.</translation>
    </message>
    <message>
        <source>%1 is empty.</source>
        <translation>%1 ist leer.</translation>
    </message>
    <message>
        <source>%1 is enrolled as %2, which does not allow sealing a run.</source>
        <translation>%1 ist als %2 eingetragen; das erlaubt nicht, einen Durchgang zu versiegeln.</translation>
    </message>
    <message>
        <source>%1 is enrolled as %2, which does not allow this.</source>
        <translation>%1 ist als %2 eingetragen; das erlaubt dies nicht.</translation>
    </message>
    <message>
        <source>%1 is latched.</source>
        <translation>%1 ist eingerastet.</translation>
    </message>
    <message>
        <source>%1 is less than nothing: this cannot be.</source>
        <translation>%1 ist weniger als nichts: Das kann nicht sein.</translation>
    </message>
    <message>
        <source>%1 is more than anything on a press would show.</source>
        <translation>%1 ist mehr, als an einer Maschine je angezeigt würde.</translation>
    </message>
    <message>
        <source>%1 is more than can be read here. %2: it goes to %3 at most.</source>
        <translation>%1 ist mehr, als hier abgelesen werden kann. %2: Die Anzeige reicht höchstens bis %3.</translation>
    </message>
    <message>
        <source>%1 is more than this roll was before, %2 at most: a roll only gets smaller.</source>
        <translation>%1 ist mehr, als diese Rolle vorher hatte, höchstens %2: Eine Rolle wird nur kleiner.</translation>
    </message>
    <message>
        <source>%1 is no longer there: it was moved, renamed or deleted while it was open. Nothing was recorded.</source>
        <translation>%1 ist nicht mehr da: Es wurde verschoben, umbenannt oder gelöscht, während es offen war. Nichts wurde aufgezeichnet.</translation>
    </message>
    <message>
        <source>%1 is no mirror of this logbook.</source>
        <translation>%1 ist kein Spiegel dieses Protokollbuchs.</translation>
    </message>
    <message>
        <source>%1 is no more than this roll's core of %2.</source>
        <translation>%1 ist nicht mehr als die Hülse dieser Rolle mit %2.</translation>
    </message>
    <message>
        <source>%1 is no time: nothing happens at once.</source>
        <translation>%1 ist keine Dauer: Nichts geschieht augenblicklich.</translation>
    </message>
    <message>
        <source>%1 is not a date.</source>
        <translation>%1 ist kein Datum.</translation>
    </message>
    <message>
        <source>%1 is not a logbook: it is a database of another program.</source>
        <translation>%1 ist kein Protokollbuch: Es ist die Datenbank eines anderen Programms.</translation>
    </message>
    <message>
        <source>%1 is not a logbook: it is a file of another kind.</source>
        <translation>%1 ist kein Protokollbuch: Es ist eine Datei anderer Art.</translation>
    </message>
    <message>
        <source>%1 is not a logbook: it is a folder.</source>
        <translation>%1 ist kein Protokollbuch: Es ist ein Ordner.</translation>
    </message>
    <message>
        <source>%1 is not a logbook: it is empty.</source>
        <translation>%1 ist kein Protokollbuch: Es ist leer.</translation>
    </message>
    <message>
        <source>%1 is not a usual inside diameter, but a core of %2 with a wall of %3 measures that outside.</source>
        <translation>%1 ist kein üblicher Innendurchmesser, aber eine Hülse von %2 mit einer Wand von %3 misst außen so viel.</translation>
    </message>
    <message>
        <source>%1 is not an anchor: it is the number of seals, a colon, and at least the first %2 of the %3 characters of the link (digits and a to f).</source>
        <translation>%1 ist kein Anker: Der besteht aus der Zahl der Siegel, einem Doppelpunkt und mindestens den ersten %2 der %3 Zeichen des Kettenwerts (Ziffern und a bis f).</translation>
    </message>
    <message>
        <source>%1 is not said: the practice press takes %2.</source>
        <translation>%1 ist nicht angegeben: Die Übungsmaschine nimmt %2.</translation>
    </message>
    <message>
        <source>%1 is not the one with which this was practised.</source>
        <translation>Mit %1 wurde hier nicht geübt.</translation>
    </message>
    <message>
        <source>%1 is of an older layout, and it is not in order (%2, %3), so it was left as it is.</source>
        <translation>%1 hat einen älteren Aufbau und ist nicht in Ordnung (%2, %3); es blieb darum, wie es ist.</translation>
    </message>
    <message>
        <source>%1 is of an older layout, and nothing is written in it as it is.</source>
        <translation>%1 hat einen älteren Aufbau, und so wie es ist, wird nichts hineingeschrieben.</translation>
    </message>
    <message>
        <source>%1 is of the shop's own logbook, and %2 is a practice logbook.</source>
        <translation>%1 gehört zum Protokollbuch des Betriebs, und %2 ist ein Übungs-Protokollbuch.</translation>
    </message>
    <message>
        <source>%1 is out of service and signs nothing.</source>
        <translation>%1 ist außer Dienst und zeichnet nichts ab.</translation>
    </message>
    <message>
        <source>%1 is said to be left of a roll that was %2 across: a roll only gets smaller.</source>
        <translation>%1 sollen von einer Rolle übrig sein, die %2 Durchmesser hatte: Eine Rolle wird nur kleiner.</translation>
    </message>
    <message>
        <source>%1 is said to be left of the roll, no more than its core, %2 outside.</source>
        <translation>%1 sollen von der Rolle übrig sein, nicht mehr als ihre Hülse, außen %2.</translation>
    </message>
    <message>
        <source>%1 is set to a value, and none was said.</source>
        <translation>%1 wird auf einen Wert gestellt, und es wurde keiner genannt.</translation>
    </message>
    <message>
        <source>%1 is stated; the diameters give %2.</source>
        <translation>%1 ist angegeben; die Durchmesser ergeben %2.</translation>
    </message>
    <message>
        <source>%1 is the mirror of a logbook: it is there to be read, and only that logbook writes in it.</source>
        <translation>%1 ist der Spiegel eines Protokollbuchs: Er ist zum Lesen da, und nur dieses Protokollbuch schreibt darin.</translation>
    </message>
    <message>
        <source>%1 is the mirror of another PC's logbook.</source>
        <translation>%1 ist der Spiegel des Protokollbuchs eines anderen PCs.</translation>
    </message>
    <message>
        <source>%1 is the name of %2 already.</source>
        <translation>%1 ist schon der Name von %2.</translation>
    </message>
    <message>
        <source>%1 is the name of a core rather than its size; such cores measure %2 inside.</source>
        <translation>%1 ist eher die Bezeichnung einer Hülse als ihr Maß; solche Hülsen messen innen %2.</translation>
    </message>
    <message>
        <source>%1 is the shop's own logbook, and practice never writes in it.</source>
        <translation>%1 ist das Protokollbuch des Betriebs, und eine Übung schreibt nie darin.</translation>
    </message>
    <message>
        <source>%1 is what this roll measures round: its file says %2 across.</source>
        <translation>%1 misst diese Rolle rundherum: Ihre Datei nennt %2 Durchmesser.</translation>
    </message>
    <message>
        <source>%1 jobs do not say how long they run: quantity, pieces across and around, gear and speed are needed.</source>
        <translation>%1 Aufträge sagen nicht, wie lange sie laufen: Es fehlen Menge, Nutzen quer und am Umfang, Zahnrad oder Geschwindigkeit.</translation>
    </message>
    <message>
        <source>%1 lanes go to %2 rewinds in turn: those listed first in the press profile wind one more.</source>
        <translation>%1 Streifen gehen reihum auf %2 Aufwicklungen: Die zuerst im Maschinenprofil aufgeführten wickeln einen mehr.</translation>
    </message>
    <message>
        <source>%1 lies in a folder of another machine. Two PCs could write in it at once, and what is on disk there nobody here can know.</source>
        <translation>%1 liegt in einem Ordner eines anderen Rechners. Zwei PCs könnten zugleich darin schreiben, und was dort auf der Platte steht, kann hier niemand wissen.</translation>
    </message>
    <message>
        <source>%1 lies on a medium that can only be read, and a logbook that is written in needs another.</source>
        <translation>%1 liegt auf einem Medium, das sich nur lesen lässt; ein Protokollbuch, in das geschrieben wird, braucht ein anderes.</translation>
    </message>
    <message>
        <source>%1 lies on a medium that can only be read.</source>
        <translation>%1 liegt auf einem Medium, das sich nur lesen lässt.</translation>
    </message>
    <message>
        <source>%1 lies on a stick or card: a good place for what is kept twice, as long as it is in.</source>
        <translation>%1 liegt auf einem Stick oder einer Karte: ein guter Ort für das, was doppelt aufbewahrt wird, solange das Medium steckt.</translation>
    </message>
    <message>
        <source>%1 lies on a stick or card: pulled out at the wrong moment, or worn, it loses what was recorded.</source>
        <translation>%1 liegt auf einem Stick oder einer Karte: Im falschen Augenblick abgezogen oder verschlissen, verliert das Medium, was aufgezeichnet wurde.</translation>
    </message>
    <message>
        <source>%1 lies on the same disk as the logbook: that helps against mistakes, not against a dead disk.</source>
        <translation>%1 liegt auf derselben Platte wie das Protokollbuch: Das hilft gegen Irrtümer, nicht gegen eine defekte Platte.</translation>
    </message>
    <message>
        <source>%1 may be read but not written.</source>
        <translation>%1 darf gelesen, aber nicht geschrieben werden.</translation>
    </message>
    <message>
        <source>%1 may not be read by this user, so nobody here can say whose mirror it is.</source>
        <translation>%1 darf von diesem Benutzer nicht gelesen werden; also kann hier niemand sagen, wessen Spiegel es ist.</translation>
    </message>
    <message>
        <source>%1 may not be written: its folder is closed to this user. Nothing was changed.</source>
        <translation>%1 darf nicht geschrieben werden: Der Ordner ist für diesen Benutzer gesperrt. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>%1 more torque for each unit of the setting, from %2 runs.</source>
        <translation>%1 mehr Drehmoment je Einheit der Einstellung, aus %2 Durchgängen.</translation>
    </message>
    <message>
        <source>%1 not given: none</source>
        <translation>%1 nicht angegeben: keine</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>%1 of %2 (%3 %)</source>
        <translation>%1 von %2 (%3 %)</translation>
    </message>
    <message>
        <source>%1 of %2 overdue on %3</source>
        <translation>%1 von %2 überfällig am %3</translation>
    </message>
    <message>
        <source>%1 of %2 people can sign in at the restored logbook; the others have changed what they sign in with since that copy.</source>
        <translation>%1 von %2 Personen können sich am wiederhergestellten Protokollbuch anmelden; die anderen haben seit jener Kopie geändert, womit sie sich anmelden.</translation>
    </message>
    <message>
        <source>%1 of %2, %3 (%4 to %5 with 95 % confidence)</source>
        <translation>%1 von %2, %3 (%4 bis %5 mit 95 % Sicherheit)</translation>
    </message>
    <message>
        <source>%1 of %2, %3 in vain</source>
        <translation>%1 von %2, %3 umsonst</translation>
    </message>
    <message>
        <source>%1 of guide %2</source>
        <translation>%1 an Bahnlaufregler %2</translation>
    </message>
    <message>
        <source>%1 of the guide</source>
        <translation>%1 am Bahnlaufregler</translation>
    </message>
    <message>
        <source>%1 open before this run can be signed, first of all: %2</source>
        <translation>%1 offen, bevor dieser Durchgang abgezeichnet werden kann, als Erstes: %2</translation>
    </message>
    <message>
        <source>%1 open before this stage is done, first of all: %2</source>
        <translation>%1 offen, bevor dieser Abschnitt erledigt ist, als Erstes: %2</translation>
    </message>
    <message>
        <source>%1 over the width</source>
        <translation>%1 geteilt durch die Breite</translation>
    </message>
    <message>
        <source>%1 readings are too few for this curve.</source>
        <translation>%1 Ablesungen sind zu wenige für diese Kurve.</translation>
    </message>
    <message>
        <source>%1 s of %2 s</source>
        <translation>%1 s von %2 s</translation>
    </message>
    <message>
        <source>%1 set-ups of this press are named, and this shop wants %2 that somebody watched.</source>
        <translation>%1 Einrichtungen dieser Maschine sind genannt, und dieser Betrieb verlangt %2, denen jemand zusah.</translation>
    </message>
    <message>
        <source>%1 short: have the next roll stand by, and a splice ready.</source>
        <translation>%1 fehlen: nächste Rolle bereithalten und Klebestelle vorbereiten.</translation>
    </message>
    <message>
        <source>%1 stands open.</source>
        <translation>%1 steht offen.</translation>
    </message>
    <message>
        <source>%1 steps are written in one place; the most is %2.</source>
        <translation>%1 Schritte stehen an einem Standort; höchstens %2 sind zulässig.</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>%1 to %2 (%3)</source>
        <translation>%1 bis %2 (%3)</translation>
    </message>
    <message>
        <source>%1 values are too few to speak of capability.</source>
        <translation>%1 Werte sind zu wenige, um von Fähigkeit zu sprechen.</translation>
    </message>
    <message>
        <source>%1 was brought to the layout of this program and is not in order since (%2). As it was, it is kept as %3.</source>
        <translation>%1 wurde auf den Aufbau dieses Programms gebracht und ist seither nicht in Ordnung (%2). Wie es war, liegt es als %3.</translation>
    </message>
    <message>
        <source>%1 was brought to the layout of this program. As it was, it is kept as %2.</source>
        <translation>%1 wurde auf den Aufbau dieses Programms gebracht. Wie es war, liegt es als %2.</translation>
    </message>
    <message>
        <source>%1 was measured across; the roll's file says %2, and a roll only gets smaller.</source>
        <translation>%1 wurden als Durchmesser gemessen; die Datei der Rolle nennt %2, und eine Rolle wird nur kleiner.</translation>
    </message>
    <message>
        <source>%1 was said, and the press shows %2.</source>
        <translation>%1 wurde gesagt, und die Maschine zeigt %2.</translation>
    </message>
    <message>
        <source>%1 was written to while it was restored.</source>
        <translation>In %1 wurde geschrieben, während es wiederhergestellt wurde.</translation>
    </message>
    <message>
        <source>%1 was written, but the disk does not confirm that it will last; the system says: %2.</source>
        <translation>%1 wurde geschrieben, aber die Platte bestätigt nicht, dass es Bestand hat; das System meldet: %2.</translation>
    </message>
    <message>
        <source>%1 winds the finished roll face in; the job asks for face out.</source>
        <translation>%1 wickelt die fertige Rolle mit der Druckseite innen; der Auftrag verlangt Druckseite außen.</translation>
    </message>
    <message>
        <source>%1 winds the finished roll face out; the job asks for face in.</source>
        <translation>%1 wickelt die fertige Rolle mit der Druckseite außen; der Auftrag verlangt Druckseite innen.</translation>
    </message>
    <message>
        <source>%1 would have to be set to %2; it begins at %3.</source>
        <translation>%1 müsste auf %2 eingestellt werden; der Bereich beginnt bei %3.</translation>
    </message>
    <message>
        <source>%1 would have to be set to %2; it ends at %3.</source>
        <translation>%1 müsste auf %2 eingestellt werden; der Bereich endet bei %3.</translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1, away from its target</source>
        <translation>%1, Abstand zum Sollwert</translation>
    </message>
    <message>
        <source>%1, before it %2</source>
        <translation>%1, davor %2</translation>
    </message>
    <message>
        <source>%1, by its signed runs</source>
        <translation>%1, nach abgezeichneten Durchgängen</translation>
    </message>
    <message>
        <source>%1, edition %2</source>
        <translation>%1, Ausgabe %2</translation>
    </message>
    <message>
        <source>%1, edition %2, read in %3</source>
        <translation>%1, Ausgabe %2, gelesen auf %3</translation>
    </message>
    <message>
        <source>%1, of what was left</source>
        <translation>%1, vom Rest der Rolle</translation>
    </message>
    <message>
        <source>%1, said by %2 of %3 runs</source>
        <translation>%1, von %2 der %3 Durchgänge gesagt</translation>
    </message>
    <message>
        <source>%1, stripped %2</source>
        <translation>%1, ohne Außenlagen %2</translation>
    </message>
    <message>
        <source>%1, the clock was set back</source>
        <translation>%1, die Uhr wurde zurückgestellt</translation>
    </message>
    <message>
        <source>%1, the last of them: %2</source>
        <translation>%1, als Letzter davon: %2</translation>
    </message>
    <message>
        <source>%1, together %2</source>
        <translation>%1, zusammen %2</translation>
    </message>
    <message>
        <source>%1, under the taper</source>
        <translation>%1, unter dem Zugabfall</translation>
    </message>
    <message>
        <source>%1, with 95 % between %2 and %3</source>
        <translation>%1, mit 95 % zwischen %2 und %3</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: %2 is over this press's own limit of %3.</source>
        <translation>%1: %2 liegt über der eigenen Grenze dieser Maschine von %3.</translation>
    </message>
    <message>
        <source>%1: %2 is under this press's own limit of %3.</source>
        <translation>%1: %2 liegt unter der eigenen Grenze dieser Maschine von %3.</translation>
    </message>
    <message>
        <source>%1: %2, policy row %3</source>
        <translation>%1: %2, Vorgabezeile %3</translation>
    </message>
    <message>
        <source>%1: %2: %3</source>
        <translation>%1: %2: %3</translation>
    </message>
    <message>
        <source>%1: above a diameter of %2 it would have to be set to less than %3, where it begins; %4 at %5.</source>
        <translation>%1: Über einem Durchmesser von %2 müsste auf weniger als %3 eingestellt werden, wo der Bereich beginnt; %4 bei %5.</translation>
    </message>
    <message>
        <source>%1: above a diameter of %2 it would have to be set to more than %3, where it ends; %4 at %5.</source>
        <translation>%1: Über einem Durchmesser von %2 müsste auf mehr als %3 eingestellt werden, wo der Bereich endet; %4 bei %5.</translation>
    </message>
    <message>
        <source>%1: above a diameter of %2 the loop would have to drive its brake or drive below %3, where it begins; %4 at %5.</source>
        <translation>%1: Über einem Durchmesser von %2 müsste der Regelkreis Bremse oder Antrieb unter %3 aussteuern, wo der Bereich beginnt; %4 bei %5.</translation>
    </message>
    <message>
        <source>%1: above a diameter of %2 the loop would have to drive its brake or drive beyond %3, where it ends; %4 at %5.</source>
        <translation>%1: Über einem Durchmesser von %2 müsste der Regelkreis Bremse oder Antrieb über %3 aussteuern, wo der Bereich endet; %4 bei %5.</translation>
    </message>
    <message>
        <source>%1: air in its shaft</source>
        <translation>%1: Luft in der Welle</translation>
    </message>
    <message>
        <source>%1: below a diameter of %2 even the least that can be set, %3, pulls more than the highest of the window, %4; %5 at the core of %6.</source>
        <translation>%1: Unter einem Durchmesser von %2 zieht selbst die kleinste Einstellung, %3, mehr als das Höchste des Fensters, %4; %5 an der Hülse von %6.</translation>
    </message>
    <message>
        <source>%1: below a diameter of %2 it would have to be set to less than %3, where it begins; %4 at %5.</source>
        <translation>%1: Unter einem Durchmesser von %2 müsste auf weniger als %3 eingestellt werden, wo der Bereich beginnt; %4 bei %5.</translation>
    </message>
    <message>
        <source>%1: below a diameter of %2 it would have to be set to more than %3, where it ends; %4 at %5.</source>
        <translation>%1: Unter einem Durchmesser von %2 müsste auf mehr als %3 eingestellt werden, wo der Bereich endet; %4 bei %5.</translation>
    </message>
    <message>
        <source>%1: below a diameter of %2 the loop would have to drive its brake or drive below %3, where it begins; %4 at %5.</source>
        <translation>%1: Unter einem Durchmesser von %2 müsste der Regelkreis Bremse oder Antrieb unter %3 aussteuern, wo der Bereich beginnt; %4 bei %5.</translation>
    </message>
    <message>
        <source>%1: below a diameter of %2 the loop would have to drive its brake or drive beyond %3, where it ends; %4 at %5.</source>
        <translation>%1: Unter einem Durchmesser von %2 müsste der Regelkreis Bremse oder Antrieb über %3 aussteuern, wo der Bereich endet; %4 bei %5.</translation>
    </message>
    <message>
        <source>%1: dancer at rest, share of its travel</source>
        <translation>%1: Tänzer in Ruhe, Anteil am Weg</translation>
    </message>
    <message>
        <source>%1: diameter at which the setting must have been lowered</source>
        <translation>%1: Durchmesser, bei dem die Einstellung gesenkt sein muss</translation>
    </message>
    <message>
        <source>%1: diameter at which the setting must have been raised</source>
        <translation>%1: Durchmesser, bei dem die Einstellung erhöht sein muss</translation>
    </message>
    <message>
        <source>%1: diameter the drive works with</source>
        <translation>%1: Durchmesser, mit dem der Antrieb rechnet</translation>
    </message>
    <message>
        <source>%1: diameter where the setting leaves its range</source>
        <translation>%1: Durchmesser, bei dem die Einstellung ihren Bereich verlässt</translation>
    </message>
    <message>
        <source>%1: for the middle of the window the loop would have to drive its brake or drive to %2; it begins at %3.</source>
        <translation>%1: Für die Mitte des Fensters müsste der Regelkreis Bremse oder Antrieb auf %2 aussteuern; der Bereich beginnt bei %3.</translation>
    </message>
    <message>
        <source>%1: for the middle of the window the loop would have to drive its brake or drive to %2; it ends at %3.</source>
        <translation>%1: Für die Mitte des Fensters müsste der Regelkreis Bremse oder Antrieb auf %2 aussteuern; der Bereich endet bei %3.</translation>
    </message>
    <message>
        <source>%1: heat in the brake</source>
        <translation>%1: Wärme in der Bremse</translation>
    </message>
    <message>
        <source>%1: heat in the clutch, finished roll</source>
        <translation>%1: Wärme in der Kupplung, fertige Rolle</translation>
    </message>
    <message>
        <source>%1: its window at %2 is narrower than the last place that is usually shown, so that its ends are shown with more places than an instrument may have.</source>
        <translation>%1: Das Fenster bei %2 ist schmaler als die letzte üblicherweise gezeigte Stelle; seine Enden stehen daher mit mehr Stellen da, als ein Messgerät haben mag.</translation>
    </message>
    <message>
        <source>%1: job %2, roll %3</source>
        <translation>%1: Auftrag %2, Rolle %3</translation>
    </message>
    <message>
        <source>%1: load cell with the web slack</source>
        <translation>%1: Kraftmessdose bei loser Bahn</translation>
    </message>
    <message>
        <source>%1: no zone comes before this draw, and a draw only adds to the tension that its web brings.</source>
        <translation>%1: Vor dieser Voreilung liegt keine Zone, und eine Voreilung erhöht nur den Zug, den ihre Bahn mitbringt.</translation>
    </message>
    <message>
        <source>%1: set %2 to</source>
        <translation>%1: %2 einstellen auf</translation>
    </message>
    <message>
        <source>%1: set it again at these diameters at the latest</source>
        <translation>%1: spätestens bei diesen Durchmessern neu einstellen</translation>
    </message>
    <message>
        <source>%1: set to %2</source>
        <translation>%1: auf %2 gestellt</translation>
    </message>
    <message>
        <source>%1: setting</source>
        <translation>%1: Einstellung</translation>
    </message>
    <message>
        <source>%1: strain of the web</source>
        <translation>%1: Dehnung der Bahn</translation>
    </message>
    <message>
        <source>%1: swing of the dancer at steady speed, share of its travel</source>
        <translation>%1: Schwankung des Tänzers bei gleichbleibender Geschwindigkeit, Anteil am Weg</translation>
    </message>
    <message>
        <source>%1: swing of the shown tension while the speed changes, share of its mean</source>
        <translation>%1: Schwankung des angezeigten Zugs bei Geschwindigkeitsänderung, Anteil am Mittelwert</translation>
    </message>
    <message>
        <source>%1: swing of the shown tension, share of its mean</source>
        <translation>%1: Schwankung des angezeigten Zugs, Anteil am Mittelwert</translation>
    </message>
    <message>
        <source>%1: tension</source>
        <translation>%1: Zug</translation>
    </message>
    <message>
        <source>%1: tension at the core if the setting is left alone</source>
        <translation>%1: Zug an der Hülse, wenn die Einstellung bleibt</translation>
    </message>
    <message>
        <source>%1: tension on the full roll if the setting is left alone</source>
        <translation>%1: Zug an der vollen Rolle, wenn die Einstellung bleibt</translation>
    </message>
    <message>
        <source>%1: tension per width</source>
        <translation>%1: Zug je Breite</translation>
    </message>
    <message>
        <source>%1: tension per width that strain allows</source>
        <translation>%1: Zug je Breite, den die Dehnung erlaubt</translation>
    </message>
    <message>
        <source>%1: tension per width that strength allows</source>
        <translation>%1: Zug je Breite, den die Festigkeit erlaubt</translation>
    </message>
    <message>
        <source>%1: tension per width that the draw leaves open, by how well it is known</source>
        <translation>%1: Zug je Breite, den die Voreilung offen lässt, je nachdem, wie genau sie bekannt ist</translation>
    </message>
    <message>
        <source>%1: tension with taper</source>
        <translation>%1: Zug mit Zugabfall</translation>
    </message>
    <message>
        <source>%1: the draw for the middle of the window, %2, is beyond what can be set; %3 is the nearest.</source>
        <translation>%1: Die Voreilung für die Mitte des Fensters, %2, liegt außerhalb des Einstellbaren; %3 ist am nächsten.</translation>
    </message>
    <message>
        <source>%1: the middle of the window, %2, is beyond what can be set; %3 is the nearest that can.</source>
        <translation>%1: Die Mitte des Fensters, %2, liegt außerhalb des Einstellbaren; %3 ist der nächste einstellbare Wert.</translation>
    </message>
    <message>
        <source>%1: the setting never has to be changed for this roll: it is done at %2, and until then the tension stays inside its window, or as near to its taper as it may swing.</source>
        <translation>%1: Die Einstellung muss für diese Rolle nie geändert werden: Die Rolle ist bei %2 fertig, und bis dahin bleibt der Zug in seinem Fenster oder so nah an seinem Zugabfall, wie er schwanken darf.</translation>
    </message>
    <message>
        <source>%1: the setting never leaves its range: without any torque it stands at %2, and it can be set down to %3.</source>
        <translation>%1: Die Einstellung verlässt ihren Bereich nie: Ohne Drehmoment steht sie auf %2, und sie lässt sich bis %3 herunterstellen.</translation>
    </message>
    <message>
        <source>%1: the setting stands at %2 already, the least that can be set, and cannot be lowered where the tension leaves its window, at %3.</source>
        <translation>%1: Die Einstellung steht schon auf %2, dem kleinsten einstellbaren Wert, und kann nicht gesenkt werden, wo der Zug sein Fenster verlässt, bei %3.</translation>
    </message>
    <message>
        <source>%1: the setting stays in its range down to the core of %2.</source>
        <translation>%1: Die Einstellung bleibt bis zur Hülse von %2 in ihrem Bereich.</translation>
    </message>
    <message>
        <source>%1: the taper leaves %2 on the finished roll, less than the %3 at which the window of the tension begins.</source>
        <translation>%1: Der Zugabfall lässt der fertigen Rolle %2, weniger als die %3, bei denen das Fenster des Zugs beginnt.</translation>
    </message>
    <message>
        <source>%1: the taper leaves %2 on the finished roll, less than the %3 at which the window of the tension begins. The changes listed let it fall %4 under the taper from where that leads out of the window.</source>
        <translation>%1: Der Zugabfall lässt der fertigen Rolle %2, weniger als die %3, bei denen das Fenster des Zugs beginnt. Die aufgeführten Änderungen lassen den Zug um %4 unter den Zugabfall sinken, ab der Stelle, wo dieser aus dem Fenster führt.</translation>
    </message>
    <message>
        <source>%1: the window wants smaller steps than the %2 that the gauge shows, so that the tension leaves it between the changes listed, with the tension there: %3.</source>
        <translation>%1: Das Fenster verlangt kleinere Stufen als die %2, die das Messgerät zeigt; der Zug verlässt es daher zwischen den aufgeführten Änderungen, mit dem Zug dort: %3.</translation>
    </message>
    <message>
        <source>%1: the window wants smaller steps than the %2 that the gauge shows, so that the tension leaves it between the changes listed; the worst stretches and the last, with the tension there: %3.</source>
        <translation>%1: Das Fenster verlangt kleinere Stufen als die %2, die das Messgerät zeigt; der Zug verlässt es daher zwischen den aufgeführten Änderungen; die schlimmsten Strecken und die letzte, mit dem Zug dort: %3.</translation>
    </message>
    <message>
        <source>%1: this press's policy row %2</source>
        <translation>%1: Vorgabezeile %2 dieser Maschine</translation>
    </message>
    <message>
        <source>%1: torque on the roll</source>
        <translation>%1: Drehmoment an der Rolle</translation>
    </message>
    <message>
        <source>%1: web tension</source>
        <translation>%1: Bahnzug</translation>
    </message>
    <message>
        <source>%1: web tension on the finished roll</source>
        <translation>%1: Bahnzug an der fertigen Rolle</translation>
    </message>
    <message>
        <source>%1: what the wraps hold, as a multiple of the tail's pull</source>
        <translation>%1: was die Windungen halten, als Vielfaches des Zugs am Bahnende</translation>
    </message>
    <message>
        <source>%1: what to set as the diameter changes</source>
        <translation>%1: was bei welchem Durchmesser einzustellen ist</translation>
    </message>
    <message>
        <source>%1: wraps round its core</source>
        <translation>%1: Windungen um die Hülse</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translation>%1; %2</translation>
    </message>
    <message>
        <source>%1; narrower by %2</source>
        <translation>%1; enger wegen %2</translation>
    </message>
    <message>
        <source>%1; no nearer than without a guide: %2</source>
        <translation>%1; nicht enger als ohne Bahnlaufregler: %2</translation>
    </message>
    <message>
        <source>%1; remark: %2</source>
        <translation>%1; Bemerkung: %2</translation>
    </message>
    <message>
        <source>%1; shorter besides by what tension may stretch it: %2</source>
        <translation>%1; außerdem kürzer um das, was der Zug dehnen darf: %2</translation>
    </message>
    <message>
        <source>%1; steps to be done again: %2</source>
        <translation>%1; Schritte, die neu zu machen sind: %2</translation>
    </message>
    <message>
        <source>%2 (%3) of formula %1 cannot be %4.</source>
        <translation>%2 (%3) der Formel %1 kann nicht %4 sein.</translation>
    </message>
    <message>
        <source>%2 is given twice for formula %1.</source>
        <translation>%2 ist für Formel %1 zweimal angegeben.</translation>
    </message>
    <message>
        <source>(low + high) / 2, from the table</source>
        <translation>(low + high) / 2, aus der Tabelle</translation>
    </message>
    <message>
        <source>-1 the nearer edge, +1 the farther</source>
        <translation>-1 die nähere Kante, +1 die fernere</translation>
    </message>
    <message>
        <source>0.5 is the median.</source>
        <translation>0,5 ist der Median.</translation>
    </message>
    <message>
        <source>0.95 is usual.</source>
        <translation>0,95 ist üblich.</translation>
    </message>
    <message>
        <source>1 atm = 1.01325 bar</source>
        <translation>1 atm = 1,01325 bar</translation>
    </message>
    <message>
        <source>1 cpi = 1 lines/in</source>
        <translation>1 cpi = 1 lines/in</translation>
    </message>
    <message>
        <source>1 dyn/cm = 1 mN/m</source>
        <translation>1 dyn/cm = 1 mN/m</translation>
    </message>
    <message>
        <source>1 fpm = 1 ft/min</source>
        <translation>1 fpm = 1 ft/min</translation>
    </message>
    <message>
        <source>1 hPa = 1 mbar</source>
        <translation>1 hPa = 1 mbar</translation>
    </message>
    <message>
        <source>1 ips = 1 in/s</source>
        <translation>1 ips = 1 in/s</translation>
    </message>
    <message>
        <source>1 ksi = 1 kpsi</source>
        <translation>1 ksi = 1 kpsi</translation>
    </message>
    <message>
        <source>1 lpi = 1 lines/in</source>
        <translation>1 lpi = 1 lines/in</translation>
    </message>
    <message>
        <source>1 mpm = 1 m/min</source>
        <translation>1 mpm = 1 m/min</translation>
    </message>
    <message>
        <source>1 permille = 0.1 %</source>
        <translation>1 permille = 0,1 %</translation>
    </message>
    <message>
        <source>1 point = 1 mil</source>
        <translation>1 point = 1 mil</translation>
    </message>
    <message>
        <source>1 thou = 1 mil</source>
        <translation>1 thou = 1 mil</translation>
    </message>
    <message>
        <source>1 week = 7 d</source>
        <translation>1 Woche = 7 d</translation>
    </message>
    <message>
        <source>A bare date or time is not read here.</source>
        <translation>Ein bloßes Datum oder eine bloße Uhrzeit wird hier nicht gelesen.</translation>
    </message>
    <message>
        <source>A ceiling only: it never raises a window. A rule of thumb on the weakest layer that may carry alone.</source>
        <translation>Nur eine Obergrenze: Sie hebt ein Fenster nie an. Eine Faustregel für die schwächste Schicht, die allein tragen könnte.</translation>
    </message>
    <message>
        <source>A ceiling only: it never raises a window. Print may be stretched no further.</source>
        <translation>Nur eine Obergrenze: Sie hebt ein Fenster nie an. Druck darf nicht stärker gedehnt werden.</translation>
    </message>
    <message>
        <source>A choice needs at least two words to choose from.</source>
        <translation>Eine Auswahl braucht mindestens zwei Wörter, aus denen gewählt wird.</translation>
    </message>
    <message>
        <source>A cold or damp roll changes its length and its tension on the press. Wait, or note it.</source>
        <translation>Eine kalte oder feuchte Rolle ändert auf der Maschine ihre Länge und ihren Zug. Warten oder als Notiz festhalten.</translation>
    </message>
    <message>
        <source>A confidence lies between 0 and 1.</source>
        <translation>Ein Konfidenzniveau liegt zwischen 0 und 1.</translation>
    </message>
    <message>
        <source>A control character stands here, which no text editor shows and no such file may hold.</source>
        <translation>Hier steht ein Steuerzeichen, das kein Texteditor zeigt und das in keiner solchen Datei stehen darf.</translation>
    </message>
    <message>
        <source>A copy of this logbook is being made just now.</source>
        <translation>Gerade wird eine Kopie dieses Protokollbuchs gemacht.</translation>
    </message>
    <message>
        <source>A core of %1 is neither held by the mandrel nor is there an adapter for it.</source>
        <translation>Eine Hülse von %1 hält der Spanndorn nicht, und ein Adapter ist dafür auch nicht da.</translation>
    </message>
    <message>
        <source>A corner of the joint caught in the dryer of station %1.</source>
        <translation>Eine Ecke der Klebestelle verfing sich im Trockner von Station %1.</translation>
    </message>
    <message>
        <source>A corner of the joint was caught and held the web.</source>
        <translation>Eine Ecke der Klebestelle verfing sich und hielt die Bahn fest.</translation>
    </message>
    <message>
        <source>A correction needs a reason.</source>
        <translation>Eine Berichtigung braucht einen Grund.</translation>
    </message>
    <message>
        <source>A definition of a %1 needs an id and a text.</source>
        <translation>Eine Definition der Art %1 braucht eine Kennung und einen Text.</translation>
    </message>
    <message>
        <source>A deviation needs a reason.</source>
        <translation>Eine Abweichung braucht einen Grund.</translation>
    </message>
    <message>
        <source>A die or a finisher that works on the slack web meets the shorter repeat.</source>
        <translation>Eine Stanze oder Weiterverarbeitung, die an der losen Bahn arbeitet, trifft auf die kürzere Drucklänge.</translation>
    </message>
    <message>
        <source>A finished roll of %1 is no more than its core, %2 outside.</source>
        <translation>Eine fertige Rolle von %1 ist nicht mehr als ihre Hülse, außen %2.</translation>
    </message>
    <message>
        <source>A free sheet's caliper is not the wound caliper; a roll of known length teaches it.</source>
        <translation>Die Dicke eines freien Bogens ist nicht die Dicke im Wickel; eine Rolle bekannter Länge lehrt sie.</translation>
    </message>
    <message>
        <source>A gauge study takes two or three people, two to ten parts and two or three trials.</source>
        <translation>Eine Messgerätstudie braucht zwei oder drei Personen, zwei bis zehn Teile und zwei oder drei Wiederholungen.</translation>
    </message>
    <message>
        <source>A held stop belongs to somebody, and no name was given.</source>
        <translation>Ein gehaltener Halt gehört jemandem, und es wurde kein Name genannt.</translation>
    </message>
    <message>
        <source>A lesson is begun in a practice logbook alone.</source>
        <translation>Eine Übung beginnt nur in einem Übungs-Protokollbuch.</translation>
    </message>
    <message>
        <source>A line needs two pulls or more, at settings well apart.</source>
        <translation>Eine Gerade braucht zwei oder mehr Züge bei weit auseinanderliegenden Einstellungen.</translation>
    </message>
    <message>
        <source>A linear taper of 100 % leaves no tension at all on the finished roll.</source>
        <translation>Ein linearer Zugabfall von 100 % lässt an der fertigen Rolle gar keinen Zug.</translation>
    </message>
    <message>
        <source>A list of runs has no column %1.</source>
        <translation>Eine Liste von Durchgängen hat keine Spalte %1.</translation>
    </message>
    <message>
        <source>A logbook keeps no definitions of the kind %1.</source>
        <translation>Ein Protokollbuch bewahrt keine Definitionen der Art %1 auf.</translation>
    </message>
    <message>
        <source>A mirror holds no PINs and no private keys, so nobody can sign in at the restored logbook: it can be read, printed and verified.</source>
        <translation>Ein Spiegel enthält keine PINs und keine privaten Schlüssel; am wiederhergestellten Protokollbuch kann sich also niemand anmelden: Es kann gelesen, gedruckt und verifiziert werden.</translation>
    </message>
    <message>
        <source>A movement is answered when it is done.</source>
        <translation>Eine Bewegung wird beantwortet, wenn sie gemacht ist.</translation>
    </message>
    <message>
        <source>A movement needs guards_closed, stops_released and people_clear, each asked again.</source>
        <translation>Eine Bewegung braucht guards_closed, stops_released und people_clear, jedes neu gefragt.</translation>
    </message>
    <message>
        <source>A movement or a held stop happened as it happened: it cannot be corrected.</source>
        <translation>Eine Bewegung oder ein gehaltener Halt geschah, wie es geschah: Das lässt sich nicht berichtigen.</translation>
    </message>
    <message>
        <source>A new phase begins where the profile of the press changed. Since when a reading has moved is found by cumulative sums (6.3.2.3) and told where chance alone would seldom do it. A pattern may come by chance, about once in a hundred readings.</source>
        <translation>Eine neue Phase beginnt, wo sich das Profil der Maschine geändert hat. Seit wann sich eine Ablesung verschoben hat, wird mit kumulierten Summen (6.3.2.3) gefunden und dort genannt, wo Zufall allein es selten täte. Ein Muster kann zufällig entstehen, etwa einmal in hundert Ablesungen.</translation>
    </message>
    <message>
        <source>A nick in the outer wraps was left on the roll.</source>
        <translation>Auf der Rolle blieb eine Kerbe in den äußeren Lagen.</translation>
    </message>
    <message>
        <source>A person has no id.</source>
        <translation>Eine Person hat keine Kennung.</translation>
    </message>
    <message>
        <source>A person needs a name.</source>
        <translation>Eine Person braucht einen Namen.</translation>
    </message>
    <message>
        <source>A picture or file (SHA-256 %1...) is kept that no run names: it was added from outside, or the run that named it was changed.</source>
        <translation>Ein Bild oder eine Datei (SHA-256 %1...) liegt hier, die kein Durchgang nennt: von außen hinzugefügt, oder der Durchgang, der sie nannte, wurde geändert.</translation>
    </message>
    <message>
        <source>A picture or file needs a short name without a folder in it.</source>
        <translation>Ein Bild oder eine Datei braucht einen kurzen Namen ohne Ordner darin.</translation>
    </message>
    <message>
        <source>A pull needs a force and a diameter above nought.</source>
        <translation>Ein Zug braucht eine Kraft und einen Durchmesser über null.</translation>
    </message>
    <message>
        <source>A quotation mark stands right behind a word or a number.</source>
        <translation>Direkt hinter einem Wort oder einer Zahl steht ein Anführungszeichen.</translation>
    </message>
    <message>
        <source>A rag, on the dryer of station %1</source>
        <translation>Ein Lappen, auf dem Trockner von Druckwerk %1</translation>
    </message>
    <message>
        <source>A reading without a target cannot be judged.</source>
        <translation>Eine Ablesung ohne Sollwert lässt sich nicht beurteilen.</translation>
    </message>
    <message>
        <source>A roll %1 across would hold far more than the %2 stated, but a roll %1 round holds just that.</source>
        <translation>Eine Rolle mit Durchmesser %1 enthielte weit mehr als die angegebenen %2, eine mit Umfang %1 dagegen genau so viel.</translation>
    </message>
    <message>
        <source>A roll cannot measure %1 across: between %2 and %3 can be believed.</source>
        <translation>Eine Rolle kann nicht %1 Durchmesser haben: Glaubhaft ist zwischen %2 und %3.</translation>
    </message>
    <message>
        <source>A roll hangs on the shaft already.</source>
        <translation>Auf der Welle hängt schon eine Rolle.</translation>
    </message>
    <message>
        <source>A roll hangs raised on the lift.</source>
        <translation>Auf der Hebevorrichtung hängt eine gehobene Rolle.</translation>
    </message>
    <message>
        <source>A roll hangs so that its web leaves over or under.</source>
        <translation>Eine Rolle hängt so, dass ihre Bahn oben oder unten abläuft.</translation>
    </message>
    <message>
        <source>A roll is lifted and nothing holds it on the shaft yet.</source>
        <translation>Eine Rolle ist angehoben, und noch hält sie nichts auf der Welle.</translation>
    </message>
    <message>
        <source>A roll needs its number and its material.</source>
        <translation>Eine Rolle braucht ihre Nummer und ihr Material.</translation>
    </message>
    <message>
        <source>A roll's diameter is larger than nothing.</source>
        <translation>Der Durchmesser einer Rolle ist größer als nichts.</translation>
    </message>
    <message>
        <source>A run of this job needs %1, which it does not say.</source>
        <translation>Ein Durchgang dieses Auftrags braucht %1, was er nicht sagt.</translation>
    </message>
    <message>
        <source>A run that was open in what lay there before is not, or not as far, in what was restored. It was kept as %1.</source>
        <translation>Ein Durchgang, der im alten Stand dort offen war, fehlt im wiederhergestellten oder ist darin weniger weit. Der alte Stand wurde als %1 aufbewahrt.</translation>
    </message>
    <message>
        <source>A set-up sheet is made from the record of a run; this is another kind of record.</source>
        <translation>Ein Einrichteblatt wird aus der Aufzeichnung eines Durchgangs gemacht; dies ist eine Aufzeichnung anderer Art.</translation>
    </message>
    <message>
        <source>A share lies between 0 and 1.</source>
        <translation>Ein Anteil liegt zwischen 0 und 1.</translation>
    </message>
    <message>
        <source>A sheet of no size has no basis weight.</source>
        <translation>Ein Bogen ohne Größe hat kein Flächengewicht.</translation>
    </message>
    <message>
        <source>A sheet was printed when there were %1 seals; this logbook ends after %2: the newest were cut off.</source>
        <translation>Als ein Einrichteblatt gedruckt wurde, gab es %1 Siegel; dieses Protokollbuch endet nach %2: Die neuesten wurden abgeschnitten.</translation>
    </message>
    <message>
        <source>A slip clutch's heat is its torque times its slip, most at the finished roll; not tension times speed.</source>
        <translation>Die Wärme einer Rutschkupplung ist ihr Drehmoment mal ihrem Schlupf, am meisten an der fertigen Rolle; nicht Zug mal Geschwindigkeit.</translation>
    </message>
    <message>
        <source>A starting range: the right tension is the least that still keeps the web in hand.</source>
        <translation>Ein Startbereich: Der richtige Zug ist der kleinste, bei dem die Bahn noch sicher geführt ist.</translation>
    </message>
    <message>
        <source>A starting value for laminates, to compare the windows with: what the tables say of each ply, and a tenth of lbf/in.</source>
        <translation>Ein Startwert für Verbunde, zum Vergleich mit den Fenstern: was die Tabellen für jede Schicht sagen, und ein Zehntel lbf/in.</translation>
    </message>
    <message>
        <source>A step runs through the guide as a jump.</source>
        <translation>Ein Versatz läuft als Sprung durch den Bahnlaufregler.</translation>
    </message>
    <message>
        <source>A step that does not apply needs a reason.</source>
        <translation>Ein Schritt, der nicht zutrifft, braucht einen Grund.</translation>
    </message>
    <message>
        <source>A stop is held</source>
        <translation>Ein Halt wird gehalten</translation>
    </message>
    <message>
        <source>A stop is still held by %1.</source>
        <translation>Ein Halt wird noch gehalten von %1.</translation>
    </message>
    <message>
        <source>A stop that you hold</source>
        <translation>Ein Halt, den man selbst hält</translation>
    </message>
    <message>
        <source>A stored event is no JSON object.</source>
        <translation>Ein gespeichertes Ereignis ist kein JSON-Objekt.</translation>
    </message>
    <message>
        <source>A supervisor gives each of the others a first-use code.</source>
        <translation>Eine Aufsicht gibt jedem der anderen einen Erstcode.</translation>
    </message>
    <message>
        <source>A supervisor gives them a new first-use code, and they choose a new PIN and passphrase.</source>
        <translation>Eine Aufsicht gibt ihnen einen neuen Erstcode, und sie wählen eine neue PIN und Passphrase.</translation>
    </message>
    <message>
        <source>A supervisor other than the person who withdrew it gives it back when it is put right.</source>
        <translation>Eine andere Aufsicht als die Person, die sie gesperrt hat, gibt sie wieder frei, wenn alles in Ordnung gebracht ist.</translation>
    </message>
    <message>
        <source>A supervisor says so anew when it was shown again, or signs beside them until then.</source>
        <translation>Eine Aufsicht sagt es neu, wenn es wieder gezeigt wurde, oder unterschreibt bis dahin mit.</translation>
    </message>
    <message>
        <source>A table's starting value; the maker's range is better.</source>
        <translation>Startwert einer Tabelle; der Bereich des Herstellers ist besser.</translation>
    </message>
    <message>
        <source>A tag was read, and nobody has said yet that it is right.</source>
        <translation>Ein Rollenzettel wurde gelesen, und noch niemand hat gesagt, dass er stimmt.</translation>
    </message>
    <message>
        <source>A tail caught in the dryer of station %1.</source>
        <translation>Ein Überstand blieb im Trockner von Druckwerk %1 hängen.</translation>
    </message>
    <message>
        <source>A tail that stood over was caught and held the web.</source>
        <translation>Ein Überstand blieb hängen und hielt die Bahn fest.</translation>
    </message>
    <message>
        <source>A target set or a plan does not follow from its words.</source>
        <translation>Ein Sollwertsatz oder ein Plan folgt nicht aus seinem Wortlaut.</translation>
    </message>
    <message>
        <source>A target set or a plan of the document does not follow from those before it.</source>
        <translation>Ein Sollwertsatz oder ein Plan des Dokuments folgt nicht aus denen davor.</translation>
    </message>
    <message>
        <source>A tension of %1 was entered; the material bears at most %2: %3.</source>
        <translation>Ein Zug von %1 wurde eingegeben; das Material verträgt höchstens %2: %3.</translation>
    </message>
    <message>
        <source>A tenth of it would fit.</source>
        <translation>Ein Zehntel davon würde passen.</translation>
    </message>
    <message>
        <source>A thousand times as much would fit.</source>
        <translation>Das Tausendfache würde passen.</translation>
    </message>
    <message>
        <source>A thousandth of it would fit.</source>
        <translation>Ein Tausendstel davon würde passen.</translation>
    </message>
    <message>
        <source>A value of the series is not a number.</source>
        <translation>Ein Wert der Reihe ist keine Zahl.</translation>
    </message>
    <message>
        <source>A vital step is passed by only with a supervisor.</source>
        <translation>Ein kritischer Schritt wird nur mit einer Aufsicht übergangen.</translation>
    </message>
    <message>
        <source>A vital step stands in the second half of its stage, where an interruption is likelier.</source>
        <translation>Ein kritischer Schritt steht in der zweiten Hälfte seines Abschnitts, wo eine Unterbrechung wahrscheinlicher ist.</translation>
    </message>
    <message>
        <source>A vital step that does not say why is passed by one day.</source>
        <translation>Ein kritischer Schritt, der nicht sagt, warum, wird eines Tages übergangen.</translation>
    </message>
    <message>
        <source>A web of %1 about a centreline at %2 would run into the frame: %3 lie between the faces.</source>
        <translation>Eine Bahn von %1 um eine Mittellinie bei %2 liefe in die Seitenwand: Zwischen den Innenseiten liegen %3.</translation>
    </message>
    <message>
        <source>A web path needs at least two rollers.</source>
        <translation>Ein Bahnweg braucht mindestens zwei Walzen.</translation>
    </message>
    <message>
        <source>A wider range entered with job or material helps.</source>
        <translation>Ein weiterer Bereich, bei Auftrag oder Material eingegeben, hilft.</translation>
    </message>
    <message>
        <source>ABANDONED: this set-up was not finished</source>
        <translation>ABGEBROCHEN: Dieses Einrichten wurde nicht beendet</translation>
    </message>
    <message>
        <source>Abandoned</source>
        <translation>Abgebrochen</translation>
    </message>
    <message>
        <source>Abandoned by</source>
        <translation>Abgebrochen von</translation>
    </message>
    <message>
        <source>Abandoning a run needs a reason.</source>
        <translation>Das Abbrechen eines Durchgangs braucht einen Grund.</translation>
    </message>
    <message>
        <source>Across its face. Of unwind and rewind the roll's own counts.</source>
        <translation>Quer über ihre Fläche. An Abwicklung und Aufwicklung zählt der der Rolle.</translation>
    </message>
    <message>
        <source>Adapters between core and shaft</source>
        <translation>Adapter zwischen Hülse und Welle</translation>
    </message>
    <message>
        <source>Add a [[person]] with id, name, role, pin and passphrase for everybody.</source>
        <translation>Für alle je ein [[person]] mit id, name, role, pin und passphrase anlegen.</translation>
    </message>
    <message>
        <source>Add what the crew tells them apart by. Whoever only forgot gets a new first-use code instead.</source>
        <translation>Hinzufügen, woran die Mannschaft sie unterscheidet. Wer nur etwas vergessen hat, bekommt einen neuen Erstcode.</translation>
    </message>
    <message>
        <source>After several wrong tries nothing is looked at for another %1 seconds.</source>
        <translation>Nach mehreren falschen Versuchen wird noch %1 Sekunden lang nichts geprüft.</translation>
    </message>
    <message>
        <source>Aimed at</source>
        <translation>Sollwerte</translation>
    </message>
    <message>
        <source>Air in the unwind shaft</source>
        <translation>Luft in der Abwickelwelle</translation>
    </message>
    <message>
        <source>Air of the roll lift</source>
        <translation>Luft des Rollenlifts</translation>
    </message>
    <message>
        <source>Air of the shaft: %1</source>
        <translation>Luft der Welle: %1</translation>
    </message>
    <message>
        <source>Air of the unwind's shaft</source>
        <translation>Luft der Abwickelwelle</translation>
    </message>
    <message>
        <source>Air supply at the press</source>
        <translation>Luftversorgung an der Maschine</translation>
    </message>
    <message>
        <source>Air under the web at job speed</source>
        <translation>Luft unter der Bahn bei Auftragsgeschwindigkeit</translation>
    </message>
    <message>
        <source>Air under the web at job speed, on roller %1</source>
        <translation>Luft unter der Bahn bei Auftragsgeschwindigkeit, an Walze %1</translation>
    </message>
    <message>
        <source>Air wound into the finished roll on %1</source>
        <translation>In die fertige Rolle eingewickelte Luft an %1</translation>
    </message>
    <message>
        <source>All of the web across its width.</source>
        <translation>Die ganze Bahn über ihre Breite.</translation>
    </message>
    <message>
        <source>All pulls were at one setting, which tells no line.</source>
        <translation>Alle Züge waren bei einer Einstellung; das ergibt keine Gerade.</translation>
    </message>
    <message>
        <source>All that the lift has to raise.</source>
        <translation>Alles, was der Lift zu heben hat.</translation>
    </message>
    <message>
        <source>All values are equal: there is no spread to reckon with.</source>
        <translation>Alle Werte sind gleich: Es gibt keine Streuung, mit der sich rechnen lässt.</translation>
    </message>
    <message>
        <source>Also computed for this press, job, substrate and roll</source>
        <translation>Für diese Maschine, diesen Auftrag, Bedruckstoff und diese Rolle auch berechnet</translation>
    </message>
    <message>
        <source>An amount is below zero or not a number.</source>
        <translation>Eine Menge ist kleiner als null oder keine Zahl.</translation>
    </message>
    <message>
        <source>An arm that keeps swinging says that the loop hunts or the roll is out of round.</source>
        <translation>Ein Arm, der weiter schwingt, sagt: Der Regelkreis pendelt oder die Rolle ist unrund.</translation>
    </message>
    <message>
        <source>An attempt at the practice press</source>
        <translation>Ein Versuch an der Übungsmaschine</translation>
    </message>
    <message>
        <source>An emergency stop pulls hardest where the web winds up.</source>
        <translation>Ein Not-Halt zieht dort am stärksten, wo die Bahn aufgewickelt wird.</translation>
    </message>
    <message>
        <source>An interruption needs its cause.</source>
        <translation>Eine Unterbrechung braucht ihre Ursache.</translation>
    </message>
    <message>
        <source>An uncertainty is never below nought.</source>
        <translation>Eine Unsicherheit liegt nie unter null.</translation>
    </message>
    <message>
        <source>Angle of the guide at which the web begins to hang slack</source>
        <translation>Winkel des Bahnlaufreglers, bei dem die Bahn anfängt, lose zu hängen</translation>
    </message>
    <message>
        <source>Another program has kept %1 busy for %2 s.</source>
        <translation>Ein anderes Programm hat %1 seit %2 s belegt.</translation>
    </message>
    <message>
        <source>Answer done after the press has moved and stands again, or leave the step open.</source>
        <translation>Erst mit „erledigt“ antworten, wenn die Maschine sich bewegt hat und wieder steht, sonst den Schritt offen lassen.</translation>
    </message>
    <message>
        <source>Answer the step.</source>
        <translation>Den Schritt beantworten.</translation>
    </message>
    <message>
        <source>Answer what is open, or abandon the run with a reason.</source>
        <translation>Offenes beantworten oder den Durchgang mit einem Grund abbrechen.</translation>
    </message>
    <message>
        <source>Answer what is open, then call the stage done.</source>
        <translation>Offenes beantworten, dann den Abschnitt als erledigt melden.</translation>
    </message>
    <message>
        <source>Answered: %1: %2</source>
        <translation>Beantwortet: %1: %2</translation>
    </message>
    <message>
        <source>As drawn, the web goes %2 round roller %1.</source>
        <translation>Laut Zeichnung umschlingt die Bahn Walze %1 um %2.</translation>
    </message>
    <message>
        <source>As it was measured: brake, running time and what is enough for the job go by it.</source>
        <translation>Wie gemessen: Bremse, Laufzeit und was für den Auftrag reicht, richten sich danach.</translation>
    </message>
    <message>
        <source>As near to the guide's last roller as it will go: further on it sees too late, and the guide hunts.</source>
        <translation>So nah wie möglich an der letzten Walze des Bahnlaufreglers: Weiter weg sieht der Sensor zu spät, und der Regler pendelt.</translation>
    </message>
    <message>
        <source>As ordered.</source>
        <translation>Wie bestellt.</translation>
    </message>
    <message>
        <source>As the roll's label says; compare it with the length by diameters.</source>
        <translation>Wie das Rollenetikett sagt; mit der Länge aus den Durchmessern vergleichen.</translation>
    </message>
    <message>
        <source>As weighed, which is the most of all ways: it hangs on the lift.</source>
        <translation>Wie gewogen, das ist der höchste Wert aller Wege: Die Rolle hängt am Lift.</translation>
    </message>
    <message>
        <source>Ask a supervisor to look at it here and sign in beside you.</source>
        <translation>Eine Aufsicht bitten, es hier anzusehen und sich neben Ihnen anzumelden.</translation>
    </message>
    <message>
        <source>Ask another supervisor for a first-use code.</source>
        <translation>Eine andere Aufsicht um einen Erstcode bitten.</translation>
    </message>
    <message>
        <source>Ask another supervisor to look at it and give it back.</source>
        <translation>Eine andere Aufsicht bitten, die Maschine anzusehen und wieder freizugeben.</translation>
    </message>
    <message>
        <source>Ask another supervisor to look at it here and sign in beside you.</source>
        <translation>Eine andere Aufsicht bitten, es hier anzusehen und sich neben Ihnen anzumelden.</translation>
    </message>
    <message>
        <source>Ask another supervisor, or let somebody else read it again.</source>
        <translation>Eine andere Aufsicht bitten oder jemand anderen neu ablesen lassen.</translation>
    </message>
    <message>
        <source>Ask each of them by name. Everybody out; then each gives up their own stop.</source>
        <translation>Jeden von ihnen mit Namen fragen. Alle heraus; dann hebt jeder den eigenen Halt auf.</translation>
    </message>
    <message>
        <source>Ask each of them by name. Whoever holds a stop gives it up; then sign.</source>
        <translation>Jeden von ihnen mit Namen fragen. Wer einen Halt hält, hebt ihn auf; dann abzeichnen.</translation>
    </message>
    <message>
        <source>Ask for the list from its beginning.</source>
        <translation>Die Liste von ihrem Anfang an anfordern.</translation>
    </message>
    <message>
        <source>Ask them, or a supervisor who has looked that nobody is in.</source>
        <translation>Die Person fragen oder eine Aufsicht, die nachgesehen hat, dass niemand in der Maschine ist.</translation>
    </message>
    <message>
        <source>Ask whoever answers for the material whether this roll may still be run.</source>
        <translation>Wer das Material verantwortet, sagt, ob diese Rolle noch laufen darf.</translation>
    </message>
    <message>
        <source>Asked for help: %1</source>
        <translation>Um Hilfe gebeten: %1</translation>
    </message>
    <message>
        <source>At %1 across this part-used roll would hold %2; full it held %3.</source>
        <translation>Bei Durchmesser %1 enthielte diese angebrochene Rolle %2; voll enthielt sie %3.</translation>
    </message>
    <message>
        <source>At %1 now %2.</source>
        <translation>An %1 jetzt %2.</translation>
    </message>
    <message>
        <source>At 1 the usual scatter just fills the window, below 1 it does not fit; 1.33 and more is what is commonly asked for. Cpk and Ppk are smaller where the centre is not in the middle.</source>
        <translation>Bei 1 füllt die übliche Streuung das Fenster gerade aus, unter 1 passt sie nicht hinein; üblicherweise verlangt werden 1,33 und mehr. Cpk und Ppk sind kleiner, wo die Mitte der Ablesungen nicht in der Fenstermitte liegt.</translation>
    </message>
    <message>
        <source>At a diameter of %1 it crosses %2, the end of what can be set.</source>
        <translation>Bei einem Durchmesser von %1 überschreitet es %2, das Ende des Einstellbaren.</translation>
    </message>
    <message>
        <source>At byte %1 lists and objects stand more than 200 deep in each other.</source>
        <translation>Bei Byte %1 stehen Listen und Objekte mehr als 200-fach ineinander.</translation>
    </message>
    <message>
        <source>At byte %1 stands a number that is too large to hold.</source>
        <translation>Bei Byte %1 steht eine Zahl, die zu groß ist, um sie aufzunehmen.</translation>
    </message>
    <message>
        <source>At crawl it takes far longer: wait before you judge.</source>
        <translation>Im Kriechgang dauert es viel länger: abwarten, bevor man urteilt.</translation>
    </message>
    <message>
        <source>At crawl, of those that are driven or whose inertia is known. At job speed air may make another one the first.</source>
        <translation>Im Kriechgang, von den Walzen, die angetrieben sind oder deren Trägheit bekannt ist. Bei Auftragsgeschwindigkeit kann durch Luft eine andere die erste sein.</translation>
    </message>
    <message>
        <source>At crawl. What air takes of it at job speed is not reckoned without %1.</source>
        <translation>Im Kriechgang. Was Luft bei Auftragsgeschwindigkeit davon nimmt, ist ohne %1 nicht berechnet.</translation>
    </message>
    <message>
        <source>At crawl. What air takes of it at job speed is not reckoned.</source>
        <translation>Im Kriechgang. Was Luft bei Auftragsgeschwindigkeit davon nimmt, ist nicht berechnet.</translation>
    </message>
    <message>
        <source>At crawl: what air takes at job speed is not known.</source>
        <translation>Im Kriechgang: Was Luft bei Auftragsgeschwindigkeit nimmt, ist nicht bekannt.</translation>
    </message>
    <message>
        <source>At job speed air may carry the web clear of this roller. A narrow web keeps more than is reckoned: look for scuffs and wander, and run slower if you see them.</source>
        <translation>Bei Auftragsgeschwindigkeit kann Luft die Bahn von dieser Walze abheben. Eine schmale Bahn behält mehr Haftung als berechnet: auf Scheuerstellen und Verlaufen achten und bei deren Auftreten langsamer fahren.</translation>
    </message>
    <message>
        <source>At job speed the air under the web is three times the roughness or more on: %1. There the web may float.</source>
        <translation>An diesen Walzen ist die Luft unter der Bahn bei Auftragsgeschwindigkeit mindestens dreimal so dick wie die Rauheit: %1. Dort kann die Bahn schwimmen.</translation>
    </message>
    <message>
        <source>At job speed the air under the web takes nothing of it.</source>
        <translation>Bei Auftragsgeschwindigkeit nimmt die Luft unter der Bahn nichts davon.</translation>
    </message>
    <message>
        <source>At job speed the brake takes %1, it may take %2.</source>
        <translation>Bei Auftragsgeschwindigkeit nimmt die Bremse %1 auf, zulässig sind %2.</translation>
    </message>
    <message>
        <source>At job speed, before anything presses it out. Where it is thicker than the web is rough, wraps slide on one another: lay the roller on, or run slower as the roll grows.</source>
        <translation>Bei Auftragsgeschwindigkeit, bevor etwas sie hinausdrückt. Wo sie dicker ist, als die Bahn rau ist, gleiten Lagen aufeinander: Andrückwalze anlegen oder langsamer fahren, wenn die Rolle wächst.</translation>
    </message>
    <message>
        <source>At job speed, less what the air under the web takes. A narrow web keeps more.</source>
        <translation>Bei Auftragsgeschwindigkeit, abzüglich dessen, was die Luft unter der Bahn nimmt. Eine schmale Bahn behält mehr.</translation>
    </message>
    <message>
        <source>At job speed, the outer wraps off, until the automatic stop leaves its reserve.</source>
        <translation>Bei Auftragsgeschwindigkeit, ohne Außenlagen, bis der automatische Halt seine Reserve übrig lässt.</translation>
    </message>
    <message>
        <source>At steady speed. More says: roll out of round, sticking brake, hunting loop.</source>
        <translation>Bei gleichbleibender Geschwindigkeit. Mehr heißt: Rolle unrund, Bremse klebt, Regelkreis pendelt.</translation>
    </message>
    <message>
        <source>At the diameter the roll has now.</source>
        <translation>Beim Durchmesser, den die Rolle jetzt hat.</translation>
    </message>
    <message>
        <source>At the empty core; it grows with the roll.</source>
        <translation>An der leeren Hülse; der Wert wächst mit der Rolle.</translation>
    </message>
    <message>
        <source>At the first go</source>
        <translation>Auf Anhieb</translation>
    </message>
    <message>
        <source>At the standing press, and beside the running one</source>
        <translation>Bei stehender und bei laufender Maschine</translation>
    </message>
    <message>
        <source>At this place the steps are done one after the other: do that one first.</source>
        <translation>An diesem Standort werden die Schritte nacheinander gemacht: diesen zuerst machen.</translation>
    </message>
    <message>
        <source>Attempt</source>
        <translation>Versuch</translation>
    </message>
    <message>
        <source>Attempts</source>
        <translation>Versuche</translation>
    </message>
    <message>
        <source>Away</source>
        <translation>Abwesend</translation>
    </message>
    <message>
        <source>Away or interrupted, upper quartile</source>
        <translation>Abwesend oder unterbrochen, oberes Quartil</translation>
    </message>
    <message>
        <source>Away, mean of a run</source>
        <translation>Abwesend, im Mittel</translation>
    </message>
    <message>
        <source>Because</source>
        <translation>Weil</translation>
    </message>
    <message>
        <source>Before the run goes on, not yet said: %1.</source>
        <translation>Bevor der Durchgang weitergeht, noch nicht gesagt: %1.</translation>
    </message>
    <message>
        <source>Begin a full set-up for this job.</source>
        <translation>Für diesen Auftrag eine volle Einrichtung beginnen.</translation>
    </message>
    <message>
        <source>Begin a full set-up on this press.</source>
        <translation>An dieser Maschine eine volle Einrichtung beginnen.</translation>
    </message>
    <message>
        <source>Begin a full set-up, which asks it.</source>
        <translation>Eine volle Einrichtung beginnen, die danach fragt.</translation>
    </message>
    <message>
        <source>Begin a new run if the press is to be set up again.</source>
        <translation>Einen neuen Durchgang beginnen, wenn die Maschine wieder eingerichtet werden soll.</translation>
    </message>
    <message>
        <source>Begin a new run on this press.</source>
        <translation>An dieser Maschine einen neuen Durchgang beginnen.</translation>
    </message>
    <message>
        <source>Begin a new run that continues it.</source>
        <translation>Einen neuen Durchgang beginnen, der ihn fortsetzt.</translation>
    </message>
    <message>
        <source>Begin one, or go on with an open one.</source>
        <translation>Einen beginnen oder einen offenen fortsetzen.</translation>
    </message>
    <message>
        <source>Begin that run again from making the press safe.</source>
        <translation>Diesen Durchgang neu beginnen, ab dem Sichermachen der Maschine.</translation>
    </message>
    <message>
        <source>Begins to hold at</source>
        <translation>Beginnt zu halten bei</translation>
    </message>
    <message>
        <source>Begun</source>
        <translation>Begonnen</translation>
    </message>
    <message>
        <source>Below this diameter the control cannot be set low enough.</source>
        <translation>Unter diesem Durchmesser lässt sich das Stellteil nicht niedrig genug einstellen.</translation>
    </message>
    <message>
        <source>Beside the running press</source>
        <translation>Bei laufender Maschine</translation>
    </message>
    <message>
        <source>Between the rolls and inside each of them; tell whoever takes the finished rolls.</source>
        <translation>Zwischen den Rollen und in jeder von ihnen; es denen sagen, die die fertigen Rollen bekommen.</translation>
    </message>
    <message>
        <source>Between these two stand other tables.</source>
        <translation>Zwischen diesen beiden stehen andere Tabellen.</translation>
    </message>
    <message>
        <source>Between web and roller, where the roller does not say.</source>
        <translation>Zwischen Bahn und Walze, wo die Walze es nicht sagt.</translation>
    </message>
    <message>
        <source>Between, with 95 %</source>
        <translation>Mit 95 % zwischen</translation>
    </message>
    <message>
        <source>Blades and knives are covered</source>
        <translation>Klingen und Messer sind abgedeckt</translation>
    </message>
    <message>
        <source>Blank set-up sheet: write the readings in, type them in afterwards as a transcription</source>
        <translation>Leeres Einrichteblatt: Ablesungen eintragen, danach als Abschrift eintippen</translation>
    </message>
    <message>
        <source>Both ends</source>
        <translation>Beide Enden</translation>
    </message>
    <message>
        <source>Both ends are not cut together.</source>
        <translation>Beide Enden sind nicht zusammen geschnitten.</translation>
    </message>
    <message>
        <source>Both judges always said the same one thing: chance alone gives that.</source>
        <translation>Beide Urteilenden sagten immer ein und dasselbe: Das gibt schon der Zufall.</translation>
    </message>
    <message>
        <source>Both webs are clamped</source>
        <translation>Beide Bahnen sind geklemmt</translation>
    </message>
    <message>
        <source>Brake or clutch of %1 is worn.</source>
        <translation>Bremse oder Kupplung von %1 ist abgenutzt.</translation>
    </message>
    <message>
        <source>Bring it to the shaft</source>
        <translation>An die Welle bringen</translation>
    </message>
    <message>
        <source>By net mass, length and width on its tag the roll is of %1; the material has %2.</source>
        <translation>Nach Nettomasse, Länge und Breite auf dem Rollenzettel hat die Rolle %1; das Material hat %2.</translation>
    </message>
    <message>
        <source>By the diameters before and after: so much of the roll is gone.</source>
        <translation>Nach den Durchmessern vorher und nachher: So viel von der Rolle ist weg.</translation>
    </message>
    <message>
        <source>By the diameters, which give the most of all ways: it hangs on the lift.</source>
        <translation>Nach den Durchmessern, die den höchsten Wert aller Wege ergeben: Die Rolle hängt am Lift.</translation>
    </message>
    <message>
        <source>By the label's length, which gives the most of all ways: it hangs on the lift.</source>
        <translation>Nach der Länge auf dem Etikett, die den höchsten Wert aller Wege ergibt: Die Rolle hängt am Lift.</translation>
    </message>
    <message>
        <source>By the share of the cells that this shop has found to reach the web, for film and mass alike; pan and hoses come on top.</source>
        <translation>Nach dem Anteil des Näpfchenvolumens, der nach Erfahrung dieses Betriebs die Bahn erreicht, für Film und Masse gleich; Wanne und Schläuche kommen hinzu.</translation>
    </message>
    <message>
        <source>By these pulls the roll would hold back with nothing set at all.</source>
        <translation>Nach diesen Zügen würde die Rolle ganz ohne Einstellung bremsen.</translation>
    </message>
    <message>
        <source>By these pulls the torque is known worse than by half.</source>
        <translation>Nach diesen Zügen ist das Drehmoment schlechter als zur Hälfte bekannt.</translation>
    </message>
    <message>
        <source>By what a repeat is shorter when the web is let go</source>
        <translation>Um wie viel eine Drucklänge kürzer ist, wenn die Bahn entlastet ist</translation>
    </message>
    <message>
        <source>By what share it falls.</source>
        <translation>Um welchen Anteil er abfällt.</translation>
    </message>
    <message>
        <source>Byte %1 is not UTF-8 text.</source>
        <translation>Byte %1 ist kein UTF-8-Text.</translation>
    </message>
    <message>
        <source>C1, least of the rollers that are driven or heavy</source>
        <translation>C1, kleinster Wert der angetriebenen oder schweren Walzen</translation>
    </message>
    <message>
        <source>Caliper as wound</source>
        <translation>Dicke im Wickel</translation>
    </message>
    <message>
        <source>Calipers of the brake: %1</source>
        <translation>Bremszangen: %1</translation>
    </message>
    <message>
        <source>Caution: %1</source>
        <translation>Vorsicht: %1</translation>
    </message>
    <message>
        <source>Cells along a length.</source>
        <translation>Näpfchen je Länge.</translation>
    </message>
    <message>
        <source>Centre</source>
        <translation>Mitte</translation>
    </message>
    <message>
        <source>Centre mark from the web's edge</source>
        <translation>Mittenmarke ab Bahnkante</translation>
    </message>
    <message>
        <source>Change what it follows from, or have whoever set this limit look at it.</source>
        <translation>Ändern, woraus es folgt, oder es dem zeigen, der diese Grenze gesetzt hat.</translation>
    </message>
    <message>
        <source>Character %1: field %2 belongs into the path of the address, before the question mark.</source>
        <translation>Zeichen %1: Feld %2 gehört in den Pfad der Adresse, vor das Fragezeichen.</translation>
    </message>
    <message>
        <source>Character %1: field %2 cannot stand here in the address: item, lot and serial number follow each other, the rest comes behind the question mark.</source>
        <translation>Zeichen %1: Feld %2 kann hier in der Adresse nicht stehen: Artikel, Charge und Seriennummer folgen aufeinander, der Rest kommt hinter das Fragezeichen.</translation>
    </message>
    <message>
        <source>Character %1: field %2 describes a roll without saying of which item.</source>
        <translation>Zeichen %1: Feld %2 beschreibt eine Rolle, ohne zu sagen, von welchem Artikel.</translation>
    </message>
    <message>
        <source>Character %1: field %2 of the tag does not describe a roll: "%3" cannot be nought.</source>
        <translation>Zeichen %1: Feld %2 des Rollenzettels beschreibt keine Rolle: „%3“ kann nicht null sein.</translation>
    </message>
    <message>
        <source>Character %1: field %2 of the tag does not describe a roll: a winding "%3" there is not, only 0 (face out), 1 (face in) and 9 (not known).</source>
        <translation>Zeichen %1: Feld %2 des Rollenzettels beschreibt keine Rolle: Eine Wicklung „%3“ gibt es nicht, nur 0 (Druckseite außen), 1 (Druckseite innen) und 9 (nicht bekannt).</translation>
    </message>
    <message>
        <source>Character %1: field %2 of the tag has a % without its two figures: "%3".</source>
        <translation>Zeichen %1: Feld %2 des Rollenzettels hat ein % ohne die zwei Ziffern dazu: „%3“.</translation>
    </message>
    <message>
        <source>Character %1: field %2 of the tag has a sign that cannot be there: "%3".</source>
        <translation>Zeichen %1: Feld %2 des Rollenzettels hat ein Zeichen, das dort nicht stehen kann: „%3“.</translation>
    </message>
    <message>
        <source>Character %1: field %2 of the tag is cut off: "%3".</source>
        <translation>Zeichen %1: Feld %2 des Rollenzettels ist abgeschnitten: „%3“.</translation>
    </message>
    <message>
        <source>Character %1: field %2 of the tag is no date: "%3".</source>
        <translation>Zeichen %1: Feld %2 des Rollenzettels ist kein Datum: „%3“.</translation>
    </message>
    <message>
        <source>Character %1: field %2 of the tag is too long: "%3".</source>
        <translation>Zeichen %1: Feld %2 des Rollenzettels ist zu lang: „%3“.</translation>
    </message>
    <message>
        <source>Character %1: field %2 of the tag says nothing without one of: %3.</source>
        <translation>Zeichen %1: Feld %2 des Rollenzettels sagt nichts ohne eines von: %3.</translation>
    </message>
    <message>
        <source>Character %1: field %2 of the tag should be a number and two letters of its unit: "%3".</source>
        <translation>Zeichen %1: Feld %2 des Rollenzettels sollte eine Zahl und zwei Buchstaben für ihre Einheit sein: „%3“.</translation>
    </message>
    <message>
        <source>Character %1: field %2 of the tag should be figures: "%3".</source>
        <translation>Zeichen %1: Feld %2 des Rollenzettels sollte aus Ziffern bestehen: „%3“.</translation>
    </message>
    <message>
        <source>Character %1: field %2 stands on the tag twice and says two things.</source>
        <translation>Zeichen %1: Feld %2 steht zweimal auf dem Rollenzettel und sagt zweierlei.</translation>
    </message>
    <message>
        <source>Character %1: nothing stands on the tag.</source>
        <translation>Zeichen %1: Auf dem Rollenzettel steht nichts.</translation>
    </message>
    <message>
        <source>Character %1: something stands behind the end of the message: "%2".</source>
        <translation>Zeichen %1: Hinter dem Ende der Meldung steht noch etwas: „%2“.</translation>
    </message>
    <message>
        <source>Character %1: the check digit of field %2 is %4, and "%3" needs %5. A figure was read wrongly.</source>
        <translation>Zeichen %1: Die Prüfziffer von Feld %2 ist %4, und „%3“ verlangt %5. Eine Ziffer wurde falsch gelesen.</translation>
    </message>
    <message>
        <source>Character %1: the item's number should begin with 9 where rolls of it differ: "%2".</source>
        <translation>Zeichen %1: Die Artikelnummer sollte mit 9 beginnen, wo sich Rollen des Artikels unterscheiden: „%2“.</translation>
    </message>
    <message>
        <source>Character %1: the message on the tag has a form that is not known: "%2".</source>
        <translation>Zeichen %1: Die Meldung auf dem Rollenzettel hat eine unbekannte Form: „%2“.</translation>
    </message>
    <message>
        <source>Character %1: the message on the tag is cut off: a separator or its end is missing.</source>
        <translation>Zeichen %1: Die Meldung auf dem Rollenzettel ist abgeschnitten: Ein Trennzeichen oder ihr Ende fehlt.</translation>
    </message>
    <message>
        <source>Character %1: the scanner says that this is another kind of code: "%2".</source>
        <translation>Zeichen %1: Der Scanner meldet, dass dies ein Code anderer Art ist: „%2“.</translation>
    </message>
    <message>
        <source>Character %1: the separator after field %2 of the tag is missing.</source>
        <translation>Zeichen %1: Das Trennzeichen nach Feld %2 des Rollenzettels fehlt.</translation>
    </message>
    <message>
        <source>Character %1: the tag has a field that is not known: "%2".</source>
        <translation>Zeichen %1: Der Rollenzettel hat ein unbekanntes Feld: „%2“.</translation>
    </message>
    <message>
        <source>Character %1: the tag names one item and the content of a pallet at once.</source>
        <translation>Zeichen %1: Der Rollenzettel nennt einen Artikel und zugleich den Inhalt einer Palette.</translation>
    </message>
    <message>
        <source>Character %1: the tag says %2 here and %3 before.</source>
        <translation>Zeichen %1: Der Rollenzettel sagt hier %2 und vorher %3.</translation>
    </message>
    <message>
        <source>Character %1: this is a web address that names no item.</source>
        <translation>Zeichen %1: Dies ist eine Webadresse, die keinen Artikel nennt.</translation>
    </message>
    <message>
        <source>Check</source>
        <translation>Prüfung</translation>
    </message>
    <message>
        <source>Check both ends; neither is used until then.</source>
        <translation>Beide Enden prüfen; bis dahin wird keines verwendet.</translation>
    </message>
    <message>
        <source>Check both rows; the usual values hold until then.</source>
        <translation>Beide Zeilen prüfen; bis dahin gelten die üblichen Werte.</translation>
    </message>
    <message>
        <source>Check that it is the right file.</source>
        <translation>Prüfen, ob es die richtige Datei ist.</translation>
    </message>
    <message>
        <source>Check that the file and its folder may be read by this user.</source>
        <translation>Prüfen, ob die Datei und ihr Ordner von diesem Benutzer gelesen werden dürfen.</translation>
    </message>
    <message>
        <source>Check that the record was written by this program and is whole.</source>
        <translation>Prüfen, ob die Aufzeichnung von diesem Programm geschrieben wurde und vollständig ist.</translation>
    </message>
    <message>
        <source>Check that this is the file you meant.</source>
        <translation>Prüfen, ob dies die gemeinte Datei ist.</translation>
    </message>
    <message>
        <source>Check the decimal point, and type the value again.</source>
        <translation>Das Dezimalzeichen prüfen und den Wert neu eintippen.</translation>
    </message>
    <message>
        <source>Check the disk or the network drive, then try again.</source>
        <translation>Die Platte oder das Netzlaufwerk prüfen, dann neu versuchen.</translation>
    </message>
    <message>
        <source>Check the exponent.</source>
        <translation>Den Exponenten prüfen.</translation>
    </message>
    <message>
        <source>Check the figure, and that guides and nips hold so narrow a web.</source>
        <translation>Die Zahl prüfen, und ob Bahnlaufregler und Klemmwalzen eine so schmale Bahn halten.</translation>
    </message>
    <message>
        <source>Check the greatest width, the centreline and the distance between the frames.</source>
        <translation>Die größte Breite, die Mittellinie und den Abstand der Seitenwände prüfen.</translation>
    </message>
    <message>
        <source>Check the number and its unit.</source>
        <translation>Die Zahl und ihre Einheit prüfen.</translation>
    </message>
    <message>
        <source>Check the number.</source>
        <translation>Die Zahl prüfen.</translation>
    </message>
    <message>
        <source>Check the number; the largest is about 1.8e308.</source>
        <translation>Die Zahl prüfen; die größte ist etwa 1,8e308.</translation>
    </message>
    <message>
        <source>Check the places and diameters of %1 and %2.</source>
        <translation>Lage und Durchmesser von %1 und %2 prüfen.</translation>
    </message>
    <message>
        <source>Check the places and turns of %1, %2 and %3, and the order of the rollers.</source>
        <translation>Lage und Drehrichtung von %1, %2 und %3 und die Reihenfolge der Walzen prüfen.</translation>
    </message>
    <message>
        <source>Check the places, diameters and turns of %1 and %2.</source>
        <translation>Lage, Durchmesser und Drehrichtung von %1 und %2 prüfen.</translation>
    </message>
    <message>
        <source>Check the printer, or write a PDF to another folder.</source>
        <translation>Den Drucker prüfen oder eine PDF in einen anderen Ordner schreiben.</translation>
    </message>
    <message>
        <source>Check the spelling and the folder, or choose another file.</source>
        <translation>Schreibweise und Ordner prüfen oder eine andere Datei wählen.</translation>
    </message>
    <message>
        <source>Check the typed anchor once more; if it is right, do not trust this file.</source>
        <translation>Den eingetippten Anker noch einmal prüfen; stimmt er, dieser Datei nicht trauen.</translation>
    </message>
    <message>
        <source>Check the typed anchor once more; if it is right, restore the logbook from a backup.</source>
        <translation>Den eingetippten Anker noch einmal prüfen; stimmt er, das Protokollbuch aus einer Sicherung wiederherstellen.</translation>
    </message>
    <message>
        <source>Check the unit and the decimal mark.</source>
        <translation>Die Einheit und das Dezimalzeichen prüfen.</translation>
    </message>
    <message>
        <source>Check the values against this rule, and their units.</source>
        <translation>Die Werte gegen diese Regel prüfen, auch ihre Einheiten.</translation>
    </message>
    <message>
        <source>Check this roller's place, diameter and turn in the press profile.</source>
        <translation>Lage, Durchmesser und Drehrichtung dieser Walze im Maschinenprofil prüfen.</translation>
    </message>
    <message>
        <source>Check which way roller %1 turns, seen from the operator's side, and where it and its neighbours stand.</source>
        <translation>Prüfen, wie herum Walze %1 von der Bedienseite gesehen dreht und wo sie und ihre Nachbarn stehen.</translation>
    </message>
    <message>
        <source>Checks of this press that were not plainly inside</source>
        <translation>Kontrollen dieser Maschine, die nicht klar innerhalb lagen</translation>
    </message>
    <message>
        <source>Checks that are the same in every run of this press</source>
        <translation>Kontrollen, die in jedem Durchgang dieser Maschine gleich sind</translation>
    </message>
    <message>
        <source>Choose 15 characters or more: four words that have nothing to do with each other are easy to keep in mind.</source>
        <translation>15 Zeichen oder mehr wählen: Vier Wörter, die nichts miteinander zu tun haben, merken sich leicht.</translation>
    </message>
    <message>
        <source>Choose 4 to 64 characters that nobody guesses first: no repeated digit, no run like 1234.</source>
        <translation>4 bis 64 Zeichen wählen, die niemand als Erstes rät: keine wiederholte Ziffer, keine Folge wie 1234.</translation>
    </message>
    <message>
        <source>Choose a copy or the mirror to restore from.</source>
        <translation>Eine Kopie oder den Spiegel zum Wiederherstellen wählen.</translation>
    </message>
    <message>
        <source>Choose a day to come.</source>
        <translation>Einen künftigen Tag wählen.</translation>
    </message>
    <message>
        <source>Choose a file inside it.</source>
        <translation>Eine Datei darin wählen.</translation>
    </message>
    <message>
        <source>Choose a file that begins with format = 1 and [procedure].</source>
        <translation>Eine Datei wählen, die mit format = 1 und [procedure] beginnt.</translation>
    </message>
    <message>
        <source>Choose a file that begins with format = 1 and [translation].</source>
        <translation>Datei wählen, die mit format = 1 und [translation] beginnt.</translation>
    </message>
    <message>
        <source>Choose a file that has [press], [job], [[substrate]] or [procedure] in it.</source>
        <translation>Eine Datei wählen, in der [press], [job], [[substrate]] oder [procedure] steht.</translation>
    </message>
    <message>
        <source>Choose a file that tautweb export has written with --as json, without --bare.</source>
        <translation>Eine Datei wählen, die tautweb export mit --as json und ohne --bare geschrieben hat.</translation>
    </message>
    <message>
        <source>Choose a folder in which you may write.</source>
        <translation>Einen Ordner wählen, in den geschrieben werden darf.</translation>
    </message>
    <message>
        <source>Choose a folder on another disk, a stick or another machine as well.</source>
        <translation>Auch einen Ordner auf einer anderen Platte, einem Stick oder einem anderen Rechner wählen.</translation>
    </message>
    <message>
        <source>Choose a folder that can be written in.</source>
        <translation>Einen Ordner wählen, in den geschrieben werden kann.</translation>
    </message>
    <message>
        <source>Choose a folder that you may write in, or have its owner allow writing.</source>
        <translation>Einen Ordner wählen, in den Sie schreiben dürfen, oder den Besitzer das Schreiben erlauben lassen.</translation>
    </message>
    <message>
        <source>Choose a folder that you may write in, or have its owner allow writing. It can still be read from there.</source>
        <translation>Einen Ordner wählen, in den Sie schreiben dürfen, oder den Besitzer das Schreiben erlauben lassen. Von dort kann es weiterhin gelesen werden.</translation>
    </message>
    <message>
        <source>Choose a folder that you may write in, with room for the whole logbook.</source>
        <translation>Einen Ordner wählen, in den Sie schreiben dürfen und der Platz für das ganze Protokollbuch hat.</translation>
    </message>
    <message>
        <source>Choose a longer one: with the badge it opens what you sign with.</source>
        <translation>Eine längere wählen: Mit dem Ausweis öffnet sie, womit Sie abzeichnen.</translation>
    </message>
    <message>
        <source>Choose a longer time.</source>
        <translation>Längeren Zeitraum wählen.</translation>
    </message>
    <message>
        <source>Choose a practice logbook, or a new name to begin one.</source>
        <translation>Ein Übungs-Protokollbuch wählen oder einen neuen Namen, um eines zu beginnen.</translation>
    </message>
    <message>
        <source>Choose a reading that is judged.</source>
        <translation>Eine Ablesung wählen, die beurteilt wird.</translation>
    </message>
    <message>
        <source>Choose a run.</source>
        <translation>Einen Durchgang wählen.</translation>
    </message>
    <message>
        <source>Choose a scenario and begin.</source>
        <translation>Eine Aufgabe auswählen und beginnen.</translation>
    </message>
    <message>
        <source>Choose a stage of this run.</source>
        <translation>Einen Abschnitt dieses Durchgangs wählen.</translation>
    </message>
    <message>
        <source>Choose a step of this run's plan.</source>
        <translation>Einen Schritt aus dem Plan dieses Durchgangs wählen.</translation>
    </message>
    <message>
        <source>Choose a substrate of the file, or write this one into it.</source>
        <translation>Einen Bedruckstoff der Datei wählen oder diesen hineinschreiben.</translation>
    </message>
    <message>
        <source>Choose a zone of this press.</source>
        <translation>Zone dieser Maschine wählen.</translation>
    </message>
    <message>
        <source>Choose a zone with a torque per setting.</source>
        <translation>Eine Zone mit Drehmoment je Einstellung wählen.</translation>
    </message>
    <message>
        <source>Choose among: %1.</source>
        <translation>Es gibt: %1.</translation>
    </message>
    <message>
        <source>Choose an id that nobody has had.</source>
        <translation>Eine Kennung wählen, die noch niemand hatte.</translation>
    </message>
    <message>
        <source>Choose another copy, or restore it under another name. Nothing was changed.</source>
        <translation>Eine andere Kopie wählen oder unter einem anderen Namen wiederherstellen. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>Choose another file, or a new name to begin a new logbook. Nothing was changed.</source>
        <translation>Eine andere Datei wählen oder einen neuen Namen, um ein neues Protokollbuch zu beginnen. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>Choose another file.</source>
        <translation>Andere Datei wählen.</translation>
    </message>
    <message>
        <source>Choose another folder, or have its owner allow writing.</source>
        <translation>Einen anderen Ordner wählen oder den Besitzer das Schreiben erlauben lassen.</translation>
    </message>
    <message>
        <source>Choose another folder.</source>
        <translation>Einen anderen Ordner wählen.</translation>
    </message>
    <message>
        <source>Choose another name.</source>
        <translation>Einen anderen Namen wählen.</translation>
    </message>
    <message>
        <source>Choose another reading, or a longer time.</source>
        <translation>Andere Ablesung oder längeren Zeitraum wählen.</translation>
    </message>
    <message>
        <source>Choose another, or leave it empty to keep it.</source>
        <translation>Eine andere wählen oder leer lassen, um sie zu behalten.</translation>
    </message>
    <message>
        <source>Choose full, next_roll, re_web or restart.</source>
        <translation>full, next_roll, re_web oder restart wählen.</translation>
    </message>
    <message>
        <source>Choose it as well.</source>
        <translation>Auch diesen wählen.</translation>
    </message>
    <message>
        <source>Choose one at hand, or choose to type what its label says.</source>
        <translation>Eine vorhandene wählen oder wählen, dass die Angaben vom Etikett eingetippt werden.</translation>
    </message>
    <message>
        <source>Choose one from the list of runs.</source>
        <translation>Einen aus der Liste der Durchgänge wählen.</translation>
    </message>
    <message>
        <source>Choose one job or one substrate, or the distance from the target.</source>
        <translation>Einen Auftrag oder Bedruckstoff wählen, oder den Abstand zum Sollwert.</translation>
    </message>
    <message>
        <source>Choose one of the presses that are kept here.</source>
        <translation>Eine der Maschinen wählen, die hier geführt werden.</translation>
    </message>
    <message>
        <source>Choose one of the training record.</source>
        <translation>Einen aus dem Übungsnachweis wählen.</translation>
    </message>
    <message>
        <source>Choose one of: %1.</source>
        <translation>Eines wählen von: %1.</translation>
    </message>
    <message>
        <source>Choose one that stands at the step, or say it in words.</source>
        <translation>Eine wählen, die beim Schritt steht, oder es in Worten sagen.</translation>
    </message>
    <message>
        <source>Choose somebody from the list.</source>
        <translation>Jemanden aus der Liste wählen.</translation>
    </message>
    <message>
        <source>Choose something that does.</source>
        <translation>Etwas wählen, das es tut.</translation>
    </message>
    <message>
        <source>Choose the job's material, or the job that belongs to this one.</source>
        <translation>Das Material des Auftrags wählen oder den Auftrag, der zu diesem gehört.</translation>
    </message>
    <message>
        <source>Choose the name of a file.</source>
        <translation>Den Namen einer Datei wählen.</translation>
    </message>
    <message>
        <source>Choose the right file.</source>
        <translation>Die richtige Datei wählen.</translation>
    </message>
    <message>
        <source>Choose the shop's own logbook, or open this one from practice.</source>
        <translation>Das Protokollbuch des Betriebs wählen oder dieses in der Übung öffnen.</translation>
    </message>
    <message>
        <source>Choose them in the list of runs.</source>
        <translation>Sie in der Liste der Durchgänge wählen.</translation>
    </message>
    <message>
        <source>Choose your name and type your PIN.</source>
        <translation>Ihren Namen wählen und Ihre PIN eintippen.</translation>
    </message>
    <message>
        <source>Clamp both webs</source>
        <translation>Beide Bahnen klemmen</translation>
    </message>
    <message>
        <source>Clamps of the splice table</source>
        <translation>Klemmen des Klebetischs</translation>
    </message>
    <message>
        <source>Class of the crawl movement</source>
        <translation>Klasse der Bewegung im Kriechgang</translation>
    </message>
    <message>
        <source>Class of the inch movement</source>
        <translation>Klasse der Bewegung beim Tippen</translation>
    </message>
    <message>
        <source>Clear of both stops, moving freely, resting about the middle.</source>
        <translation>Frei von beiden Anschlägen, leicht beweglich, etwa in der Mitte ruhend.</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Close it, with nobody inside.</source>
        <translation>Schließen, wenn niemand darin ist.</translation>
    </message>
    <message>
        <source>Close other programs that have the logbook open, then do the last thing again.</source>
        <translation>Andere Programme schließen, die das Protokollbuch offen haben, dann das Letzte noch einmal tun.</translation>
    </message>
    <message>
        <source>Close the nips and watch the gauge: a supply that falls further feeds a leak or a choked line.</source>
        <translation>Klemmwalzen schließen und das Manometer beobachten: Fällt die Versorgung weiter ab, speist sie ein Leck oder eine verstopfte Leitung.</translation>
    </message>
    <message>
        <source>Colour to colour</source>
        <translation>Farbe zu Farbe</translation>
    </message>
    <message>
        <source>Come up to it slowly from below, beside the roll, never under it. If nothing has moved at %1, stop: something is stuck. Never raise the pressure with anybody near the roll.</source>
        <translation>Langsam von unten herangehen, neben der Rolle stehen, nie darunter. Hat sich bei %1 nichts bewegt, aufhören: Etwas klemmt. Den Druck nie erhöhen, wenn jemand nahe der Rolle ist.</translation>
    </message>
    <message>
        <source>Compare it with the label and take it over, or put it away.</source>
        <translation>Mit dem Etikett vergleichen und übernehmen, oder weglegen.</translation>
    </message>
    <message>
        <source>Compare it with the running strain: above that an edge goes slack.</source>
        <translation>Mit der Dehnung im Lauf vergleichen: Darüber wird eine Kante lose.</translation>
    </message>
    <message>
        <source>Compare the newest printed sheet with what was restored: its anchor says how many seals there were.</source>
        <translation>Das neueste gedruckte Einrichteblatt mit dem Wiederhergestellten vergleichen: Sein Anker sagt, wie viele Siegel es gab.</translation>
    </message>
    <message>
        <source>Compressed air</source>
        <translation>Druckluft</translation>
    </message>
    <message>
        <source>Control limits stand three sigma from the centre. Centre and sigma are reckoned from all readings of a phase: sigma is their mean difference to the one before, over 1.128 (NIST/SEMATECH handbook, 6.3.2.2).</source>
        <translation>Die Eingriffsgrenzen liegen drei Sigma von der Mitte. Mitte und Sigma folgen aus allen Werten eines Abschnitts: Sigma ist ihr mittlerer Unterschied zum vorigen, geteilt durch 1,128 (Handbuch NIST/SEMATECH, 6.3.2.2).</translation>
    </message>
    <message>
        <source>Control limits stand three sigma from the centre. Centre and sigma are reckoned from the first %1 readings of a phase: sigma is their mean difference to the one before, over 1.128 (NIST/SEMATECH handbook, 6.3.2.2).</source>
        <translation>Die Eingriffsgrenzen liegen drei Sigma von der Mitte. Mitte und Sigma folgen aus den ersten %1 Werten eines Abschnitts: Sigma ist ihr mittlerer Unterschied zum vorigen, geteilt durch 1,128 (Handbuch NIST/SEMATECH, 6.3.2.2).</translation>
    </message>
    <message>
        <source>Copy it again from the foot of the sheet, or scan the sheet's code.</source>
        <translation>Noch einmal vom Fuß des Einrichteblatts abschreiben oder den Code des Blatts scannen.</translation>
    </message>
    <message>
        <source>Copy it from the printed record, or from tautweb practice --record.</source>
        <translation>Vom gedruckten Nachweis abschreiben, oder aus tautweb practice --record.</translation>
    </message>
    <message>
        <source>Core</source>
        <translation>Hülse</translation>
    </message>
    <message>
        <source>Core adapter needed</source>
        <translation>Hülsenadapter nötig</translation>
    </message>
    <message>
        <source>Correct its kind, or name another roller there.</source>
        <translation>Die Art berichtigen oder dort eine andere Walze nennen.</translation>
    </message>
    <message>
        <source>Correct splice_table.after in the press's profile.</source>
        <translation>splice_table.after im Profil der Maschine berichtigen.</translation>
    </message>
    <message>
        <source>Corrected after it was sealed</source>
        <translation>Nach dem Versiegeln berichtigt</translation>
    </message>
    <message>
        <source>Corrected since it was sealed. The settings and steps below are as they were sealed; what stood and what it should be stands under "Corrected after it was sealed".</source>
        <translation>Seit dem Versiegeln berichtigt. Die Einstellungen und Schritte unten stehen so, wie sie versiegelt wurden; was stand und was es sein soll, steht unter „Nach dem Versiegeln berichtigt“.</translation>
    </message>
    <message>
        <source>Corrections, by step</source>
        <translation>Berichtigungen, je Schritt</translation>
    </message>
    <message>
        <source>Count as many columns as rows.</source>
        <translation>So viele Spalten wie Zeilen zählen.</translation>
    </message>
    <message>
        <source>Count each thing once.</source>
        <translation>Jedes Ding einmal zählen.</translation>
    </message>
    <message>
        <source>Count on more: the splice is watched through every station.</source>
        <translation>Mit mehr rechnen: Die Klebestelle wird durch jedes Druckwerk beobachtet.</translation>
    </message>
    <message>
        <source>Count the lanes across the web, and the labels in one turn of the plate cylinder.</source>
        <translation>Die Streifen quer über die Bahn zählen, und die Etiketten auf einer Umdrehung des Plattenzylinders.</translation>
    </message>
    <message>
        <source>Count the same runs.</source>
        <translation>Dieselben Durchgänge zählen.</translation>
    </message>
    <message>
        <source>Count the wraps that are turned onto the core before the web pulls, three as a rule, and look at core_friction, 0.2 for paper on a core.</source>
        <translation>Die Windungen zählen, die auf die Hülse gedreht werden, bevor die Bahn zieht, in der Regel drei, und core_friction ansehen, 0,2 für Papier auf einer Hülse.</translation>
    </message>
    <message>
        <source>Cp (spread from run to run)</source>
        <translation>Cp (Streuung zwischen Durchgängen)</translation>
    </message>
    <message>
        <source>Cp, Cpk</source>
        <translation>Cp, Cpk</translation>
    </message>
    <message>
        <source>Cp, Cpk, Pp, Ppk</source>
        <translation>Cp, Cpk, Pp, Ppk</translation>
    </message>
    <message>
        <source>Cpk (the nearer limit)</source>
        <translation>Cpk (nähere Grenze)</translation>
    </message>
    <message>
        <source>Cut along a rule</source>
        <translation>Am Lineal schneiden</translation>
    </message>
    <message>
        <source>Cut by eye</source>
        <translation>Nach Augenmaß schneiden</translation>
    </message>
    <message>
        <source>Cut out of square across the web</source>
        <translation>Schnitt quer zur Bahn nicht rechtwinklig</translation>
    </message>
    <message>
        <source>D2, as near as can be set</source>
        <translation>D2, so nah wie einstellbar</translation>
    </message>
    <message>
        <source>DRAFT: ended, but not sealed yet</source>
        <translation>ENTWURF: beendet, aber noch nicht versiegelt</translation>
    </message>
    <message>
        <source>DRAFT: this run is still open and nobody has signed it</source>
        <translation>ENTWURF: Dieser Durchgang ist noch offen, und niemand hat ihn abgezeichnet</translation>
    </message>
    <message>
        <source>Danger: %1</source>
        <translation>Gefahr: %1</translation>
    </message>
    <message>
        <source>Date and time</source>
        <translation>Datum und Uhrzeit</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Days</source>
        <translation>Tage</translation>
    </message>
    <message>
        <source>Decision rule, guarded acceptance (w = U): a reading is judged against the limits as they stand, with guard bands as wide as the expanded uncertainty U (k = 2) of the instrument that was read. Inside: U or more away from both limits. Near: within the limits, less than U from one. Outside: beyond a limit; doubtful while less than U beyond it. A gap has no guard band at nought. Limits are rounded inward and never widened.</source>
        <translation>Entscheidungsregel, Annahme mit Sicherheitsband (w = U): Eine Ablesung wird an den Grenzen beurteilt, wie sie dastehen, mit Sicherheitsbändern so breit wie die erweiterte Unsicherheit U (k = 2) des abgelesenen Messgeräts. Innerhalb: U oder mehr von beiden Grenzen entfernt. Nahe: innerhalb der Grenzen, weniger als U von einer entfernt. Außerhalb: jenseits einer Grenze; zweifelhaft, solange es weniger als U darüber hinaus ist. Ein Spalt hat bei null kein Sicherheitsband. Grenzen werden nach innen gerundet und nie erweitert.</translation>
    </message>
    <message>
        <source>Deviations</source>
        <translation>Abweichungen</translation>
    </message>
    <message>
        <source>Deviations, by step</source>
        <translation>Abweichungen, je Schritt</translation>
    </message>
    <message>
        <source>Diameter</source>
        <translation>Durchmesser</translation>
    </message>
    <message>
        <source>Diameter after the outer wraps</source>
        <translation>Durchmesser ohne die Außenlagen</translation>
    </message>
    <message>
        <source>Diameter at which the automatic stop acts</source>
        <translation>Durchmesser, bei dem der automatische Halt wirkt</translation>
    </message>
    <message>
        <source>Diameter that the drive works with: %1</source>
        <translation>Durchmesser, mit dem der Antrieb arbeitet: %1</translation>
    </message>
    <message>
        <source>Did not apply, by step</source>
        <translation>Traf nicht zu, je Schritt</translation>
    </message>
    <message>
        <source>Did you mean %1?</source>
        <translation>War %1 gemeint?</translation>
    </message>
    <message>
        <source>Did you mean %1? Else take it out.</source>
        <translation>War %1 gemeint? Sonst herausnehmen.</translation>
    </message>
    <message>
        <source>Die to print</source>
        <translation>Stanzung zu Druck</translation>
    </message>
    <message>
        <source>Difference to the one before, %1</source>
        <translation>Differenz zur vorigen, %1</translation>
    </message>
    <message>
        <source>Differences beyond their limit: %1.</source>
        <translation>Differenzen jenseits ihrer Grenze: %1.</translation>
    </message>
    <message>
        <source>Distance between the two sensors</source>
        <translation>Abstand der beiden Sensoren</translation>
    </message>
    <message>
        <source>Do it and answer it. If it cannot be done, withdraw the press or abandon the run.</source>
        <translation>Machen und beantworten. Geht es nicht, die Maschine sperren oder den Durchgang abbrechen.</translation>
    </message>
    <message>
        <source>Do it for the first time.</source>
        <translation>Zum ersten Mal machen.</translation>
    </message>
    <message>
        <source>Do not go by it. Restore the logbook from a copy.</source>
        <translation>Nicht danach richten. Protokollbuch aus einer Kopie wiederherstellen.</translation>
    </message>
    <message>
        <source>Do not trust it. Ask who wrote in this file, and with which program.</source>
        <translation>Ihm nicht trauen. Fragen, wer in diese Datei schrieb und mit welchem Programm.</translation>
    </message>
    <message>
        <source>Do not trust this file. Ask for the run to be exported once more, or look at the logbook itself.</source>
        <translation>Dieser Datei nicht trauen. Den Durchgang noch einmal exportieren lassen oder im Protokollbuch selbst nachsehen.</translation>
    </message>
    <message>
        <source>Do not trust this record. Compare it with the printed sheets and restore the logbook from a backup.</source>
        <translation>Dieser Aufzeichnung nicht trauen. Mit den gedruckten Einrichteblättern vergleichen und das Protokollbuch aus einer Sicherung wiederherstellen.</translation>
    </message>
    <message>
        <source>Do not trust this record. Restore the logbook from a backup and compare it with the printed sheets.</source>
        <translation>Dieser Aufzeichnung nicht trauen. Das Protokollbuch aus einer Sicherung wiederherstellen und mit den gedruckten Einrichteblättern vergleichen.</translation>
    </message>
    <message>
        <source>Do not trust this record. Restore the logbook from a backup, or export the run once more.</source>
        <translation>Dieser Aufzeichnung nicht trauen. Das Protokollbuch aus einer Sicherung wiederherstellen oder den Durchgang noch einmal exportieren.</translation>
    </message>
    <message>
        <source>Do that first.</source>
        <translation>Das zuerst tun.</translation>
    </message>
    <message>
        <source>Does it fit its window?</source>
        <translation>Passt es in sein Fenster?</translation>
    </message>
    <message>
        <source>Done beside the running press</source>
        <translation>Bei laufender Maschine erledigt</translation>
    </message>
    <message>
        <source>Draft of a set-up sheet: what each setting should be here, and what has been read so far</source>
        <translation>Entwurf eines Einrichteblatts: was jede Einstellung hier sein soll und was bisher abgelesen wurde</translation>
    </message>
    <message>
        <source>Drawn across with test ink; the ink maker's figure comes first. Ink beads on film that has lost it.</source>
        <translation>Mit Testtinte quer gestrichen; die Angabe des Farbherstellers geht vor. Farbe perlt auf Folie ab, die ihre Vorbehandlung verloren hat.</translation>
    </message>
    <message>
        <source>Drive-side edge from the frame</source>
        <translation>Kante Antriebsseite ab Seitenwand</translation>
    </message>
    <message>
        <source>Drive-side sensor from the frame</source>
        <translation>Sensor Antriebsseite ab Seitenwand</translation>
    </message>
    <message>
        <source>Dryer of station %1</source>
        <translation>Trockner von Druckwerk %1</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>Fällig</translation>
    </message>
    <message>
        <source>Edge to edge, or one over the other.</source>
        <translation>Kante an Kante, oder eine über der anderen.</translation>
    </message>
    <message>
        <source>Edition %2 of the %3 %1 is not kept in this logbook, so a run cannot name it.</source>
        <translation>%3 %1: Ausgabe %2 ist nicht in diesem Protokollbuch; ein Durchgang kann sie also nicht nennen.</translation>
    </message>
    <message>
        <source>Eight points in a row are more than 1 sigma out, on both sides.</source>
        <translation>Acht Punkte in Folge liegen mehr als 1 Sigma entfernt, auf beiden Seiten.</translation>
    </message>
    <message>
        <source>Eight points in a row are on one side of the centre.</source>
        <translation>Acht Punkte in Folge liegen auf einer Seite der Mitte.</translation>
    </message>
    <message>
        <source>End it and seal it first; until then it is changed by its own steps.</source>
        <translation>Zuerst beenden und versiegeln; bis dahin wird er durch seine eigenen Schritte geändert.</translation>
    </message>
    <message>
        <source>End it with the same full stop, question mark or colon, or with none.</source>
        <translation>Mit demselben Punkt, Fragezeichen oder Doppelpunkt enden lassen, oder ohne.</translation>
    </message>
    <message>
        <source>Ended</source>
        <translation>Beendet</translation>
    </message>
    <message>
        <source>Engage all of them</source>
        <translation>Alle zuschalten</translation>
    </message>
    <message>
        <source>Engage more of the clutch.</source>
        <translation>Mehr von der Kupplung zuschalten.</translation>
    </message>
    <message>
        <source>English</source>
        <translation>Englisch</translation>
    </message>
    <message>
        <source>Enrol a second supervisor first.</source>
        <translation>Zuerst eine zweite Aufsicht eintragen.</translation>
    </message>
    <message>
        <source>Enrol a supervisor first.</source>
        <translation>Zuerst eine Aufsicht eintragen.</translation>
    </message>
    <message>
        <source>Enter %1.</source>
        <translation>%1 eingeben.</translation>
    </message>
    <message>
        <source>Enter by what share of the tension it falls, less than all of it.</source>
        <translation>Eingeben, um welchen Anteil der Zug abfällt, weniger als der ganze.</translation>
    </message>
    <message>
        <source>Enter how rough the rollers and the material are.</source>
        <translation>Eingeben, wie rau die Walzen und das Material sind.</translation>
    </message>
    <message>
        <source>Enter that speed beside it, as at. Measured from less, the press takes more web to stop than is reckoned.</source>
        <translation>Diese Geschwindigkeit daneben eingeben, als at. Aus geringerer gemessen, braucht die Maschine zum Anhalten mehr Bahn als berechnet.</translation>
    </message>
    <message>
        <source>Enter the largest diameter that the customer takes, core included.</source>
        <translation>Den größten Durchmesser eingeben, den der Kunde annimmt, Hülse eingeschlossen.</translation>
    </message>
    <message>
        <source>Enter the range with the job or the material, and take them out here.</source>
        <translation>Den Bereich beim Auftrag oder Material eingeben und die Grenzen hier herausnehmen.</translation>
    </message>
    <message>
        <source>Enter the zone that ends at %1 in the press profile, before this one.</source>
        <translation>Im Maschinenprofil vor dieser die Zone eingeben, die bei %1 endet.</translation>
    </message>
    <message>
        <source>Enter them as the panel shows them, all in one kind of unit.</source>
        <translation>So eingeben, wie die Anzeige sie zeigt, alle in einer Art von Einheit.</translation>
    </message>
    <message>
        <source>Enter what its gauge or panel showed, or mend the range in the press profile first.</source>
        <translation>Eingeben, was Manometer oder Anzeige zeigte, oder zuerst den Bereich im Maschinenprofil berichtigen.</translation>
    </message>
    <message>
        <source>Enter where the torque begins, and the most that can be set, each by its own figure.</source>
        <translation>Eingeben, wo das Drehmoment beginnt und was höchstens einstellbar ist, jedes mit seiner eigenen Zahl.</translation>
    </message>
    <message>
        <source>Enter with the job or the material what is to hold, and take them out here.</source>
        <translation>Beim Auftrag oder Material eingeben, was gelten soll, und die Grenzen hier herausnehmen.</translation>
    </message>
    <message>
        <source>Entered is %1; the tag says %2.</source>
        <translation>Eingegeben ist %1; der Rollenzettel sagt %2.</translation>
    </message>
    <message>
        <source>Event %1 of run %2 stands out of its order.</source>
        <translation>Ereignis %1 des Durchgangs %2 steht nicht in seiner Reihenfolge.</translation>
    </message>
    <message>
        <source>Event %1 of the document names a target set, a plan or a target that is not in it.</source>
        <translation>Ereignis %1 des Dokuments nennt einen Sollwertsatz, einen Plan oder einen Sollwert, der nicht darin ist.</translation>
    </message>
    <message>
        <source>Event %1 of the document stands out of its order.</source>
        <translation>Ereignis %1 des Dokuments steht nicht in seiner Reihenfolge.</translation>
    </message>
    <message>
        <source>Every</source>
        <translation>Alle</translation>
    </message>
    <message>
        <source>Every emergency stop is released</source>
        <translation>Jeder Not-Halt ist entriegelt</translation>
    </message>
    <message>
        <source>Every guard is closed</source>
        <translation>Jede Schutzeinrichtung ist geschlossen</translation>
    </message>
    <message>
        <source>Every part was read the same by everybody, each time.</source>
        <translation>Jedes Teil wurde von allen jedes Mal gleich abgelesen.</translation>
    </message>
    <message>
        <source>Every reading in the order in which it was taken</source>
        <translation>Jede Ablesung in der Reihenfolge, in der sie genommen wurde</translation>
    </message>
    <message>
        <source>Every step, to be ticked by hand and typed in afterwards as a transcription</source>
        <translation>Jeder Schritt, von Hand abzuhaken und danach als Abschrift einzutippen</translation>
    </message>
    <message>
        <source>Every step, what was answered, by whom and when</source>
        <translation>Jeder Schritt, was geantwortet wurde, von wem und wann</translation>
    </message>
    <message>
        <source>Everybody is clear of the press</source>
        <translation>Alle sind außer Reichweite der Maschine</translation>
    </message>
    <message>
        <source>Everything is reckoned with the material's own caliper, and this lies beyond its tolerance: run a roll off by a counter, and enter the caliper that its length gives.</source>
        <translation>Alles ist mit der eigenen Dicke des Materials gerechnet, und dies liegt außerhalb ihrer Toleranz: eine Rolle über einen Zähler ablaufen lassen und die Dicke eingeben, die ihre Länge ergibt.</translation>
    </message>
    <message>
        <source>Everything is reckoned with the material's own caliper: the two agree within its tolerance, and a label's length is no measurement.</source>
        <translation>Alles ist mit der eigenen Dicke des Materials gerechnet: Beide stimmen innerhalb ihrer Toleranz überein, und die Länge auf einem Etikett ist keine Messung.</translation>
    </message>
    <message>
        <source>Expect it to move as soon as air is on: stand clear and let the air in slowly. Check the bore, the pistons and the least pressure in the press profile: the heaviest roll would rise so too.</source>
        <translation>Mit einer Bewegung rechnen, sobald Luft ansteht: Abstand halten und die Luft langsam einlassen. Bohrung, Kolben und kleinsten Druck im Maschinenprofil prüfen: So höbe sich auch die schwerste Rolle.</translation>
    </message>
    <message>
        <source>Export the run once more.</source>
        <translation>Den Durchgang noch einmal exportieren.</translation>
    </message>
    <message>
        <source>Fall of the air supply while nips close</source>
        <translation>Abfall der Luftversorgung beim Schließen der Klemmwalzen</translation>
    </message>
    <message>
        <source>Falling tension keeps the inner turns from being crushed and the outer from sliding.</source>
        <translation>Abfallender Zug verhindert, dass die inneren Lagen gequetscht werden und die äußeren rutschen.</translation>
    </message>
    <message>
        <source>Fed</source>
        <translation>Zuführung</translation>
    </message>
    <message>
        <source>Fetch the text again from where it came, or mend it at that place.</source>
        <translation>Den Text noch einmal von seinem Ursprung holen oder an dieser Stelle berichtigen.</translation>
    </message>
    <message>
        <source>Fifteen points in a row are within 1 sigma of the centre.</source>
        <translation>Fünfzehn Punkte in Folge liegen höchstens 1 Sigma von der Mitte.</translation>
    </message>
    <message>
        <source>Fill it in, or go back.</source>
        <translation>Ausfüllen oder zurückgehen.</translation>
    </message>
    <message>
        <source>Find out why it was, release it, and reset.</source>
        <translation>Herausfinden, warum, dann lösen und zurücksetzen.</translation>
    </message>
    <message>
        <source>Finish it or abandon it first: what is open here goes on only in the file that is set aside.</source>
        <translation>Zuerst beenden oder abbrechen: Was hier offen ist, geht nur in der beiseitegelegten Datei weiter.</translation>
    </message>
    <message>
        <source>Finish it, or leave it.</source>
        <translation>Beenden oder verlassen.</translation>
    </message>
    <message>
        <source>Finished rolls are said to be %1 across, no more than the core on %3, %2 outside.</source>
        <translation>Fertige Rollen sollen %1 Durchmesser haben, nicht mehr als die Hülse an %3, außen %2.</translation>
    </message>
    <message>
        <source>Finished rolls may be %1 across; %2 winds %3 at most.</source>
        <translation>Fertige Rollen dürfen %1 Durchmesser haben; %2 wickelt höchstens %3.</translation>
    </message>
    <message>
        <source>First day</source>
        <translation>Erster Tag</translation>
    </message>
    <message>
        <source>First run of it</source>
        <translation>Erster Durchgang</translation>
    </message>
    <message>
        <source>Fit an ultrasonic sensor, or guide on a printed line.</source>
        <translation>Einen Ultraschallsensor einbauen oder auf einer gedruckten Linie führen.</translation>
    </message>
    <message>
        <source>Fit them</source>
        <translation>Einsetzen</translation>
    </message>
    <message>
        <source>Formula %1 has no answer for these values. It holds for: %2.</source>
        <translation>Formel %1 hat für diese Werte kein Ergebnis. Sie gilt für: %2.</translation>
    </message>
    <message>
        <source>Formula %1 has no argument %2.</source>
        <translation>Formel %1 hat kein Argument %2.</translation>
    </message>
    <message>
        <source>Formula %1 needs %2 (%3).</source>
        <translation>Formel %1 braucht %2 (%3).</translation>
    </message>
    <message>
        <source>Found</source>
        <translation>Gefunden</translation>
    </message>
    <message>
        <source>Four of five points are more than 1 sigma out on one side.</source>
        <translation>Vier von fünf Punkten liegen mehr als 1 Sigma auf einer Seite.</translation>
    </message>
    <message>
        <source>Fourteen points in a row go up and down in turn.</source>
        <translation>Vierzehn Punkte in Folge gehen abwechselnd auf und ab.</translation>
    </message>
    <message>
        <source>Free some room on this disk, or choose a folder on another one.</source>
        <translation>Auf dieser Platte Platz schaffen oder einen Ordner auf einer anderen wählen.</translation>
    </message>
    <message>
        <source>Free some room on this disk, or choose another disk, then try again.</source>
        <translation>Auf dieser Platte Platz schaffen oder eine andere Platte wählen, dann neu versuchen.</translation>
    </message>
    <message>
        <source>Free some room on this disk, then do the last thing again.</source>
        <translation>Auf dieser Platte Platz schaffen, dann das Letzte noch einmal tun.</translation>
    </message>
    <message>
        <source>Free some room there, and the mirror catches up by itself; or choose a folder on another disk.</source>
        <translation>Dort Platz schaffen, dann holt der Spiegel von selbst auf; oder einen Ordner auf einer anderen Platte wählen.</translation>
    </message>
    <message>
        <source>Free some room there, or choose a folder on another disk.</source>
        <translation>Dort Platz schaffen oder einen Ordner auf einer anderen Platte wählen.</translation>
    </message>
    <message>
        <source>Free web before the guide.</source>
        <translation>Freie Bahn vor dem Bahnlaufregler.</translation>
    </message>
    <message>
        <source>Free web behind it.</source>
        <translation>Freie Bahn dahinter.</translation>
    </message>
    <message>
        <source>Friction of the web on the core and on itself.</source>
        <translation>Reibung der Bahn auf der Hülse und auf sich selbst.</translation>
    </message>
    <message>
        <source>From %1 (run %2) it was %3 higher for a time: %4 times its usual scatter.</source>
        <translation>Ab %1 (Durchgang %2) lag der Wert zeitweise %3 höher: das %4-Fache der üblichen Streuung.</translation>
    </message>
    <message>
        <source>From %1 (run %2) it was %3 lower for a time: %4 times its usual scatter.</source>
        <translation>Ab %1 (Durchgang %2) lag der Wert zeitweise %3 tiefer: das %4-Fache der üblichen Streuung.</translation>
    </message>
    <message>
        <source>From a quarter (a public rule, S79) to a half (an ink maker's chart, S80) of the cells reaches the web: the middle, for film and mass alike; pan and hoses come on top.</source>
        <translation>Von einem Viertel (öffentliche Regel, S79) bis zur Hälfte (Tafel eines Farbherstellers, S80) des Näpfchenvolumens erreicht die Bahn: die Mitte, für Film und Masse gleich; Wanne und Schläuche kommen hinzu.</translation>
    </message>
    <message>
        <source>From its pivot to the cylinder.</source>
        <translation>Von seinem Drehpunkt zum Zylinder.</translation>
    </message>
    <message>
        <source>From its pivot to the roller.</source>
        <translation>Von seinem Drehpunkt zur Walze.</translation>
    </message>
    <message>
        <source>From job speed the press takes %1 of web to stop; the automatic stop's reserve is %2: the end of the web would run off the roll.</source>
        <translation>Aus Auftragsgeschwindigkeit braucht die Maschine %1 Bahn zum Anhalten; die Reserve des automatischen Halts ist %2: Das Ende der Bahn liefe von der Rolle ab.</translation>
    </message>
    <message>
        <source>From one end to the other of what the draw is known to. Where that is wider than the window of tension per width, draw does not set this web.</source>
        <translation>Von einem Ende zum anderen dessen, wie genau die Voreilung bekannt ist. Wo das breiter ist als das Fenster des Zugs je Breite, lässt sich diese Bahn nicht über die Voreilung einstellen.</translation>
    </message>
    <message>
        <source>From one reading to the next</source>
        <translation>Von einer Ablesung zur nächsten</translation>
    </message>
    <message>
        <source>From running to standstill by the emergency stop.</source>
        <translation>Vom Lauf bis zum Stillstand durch den Not-Halt.</translation>
    </message>
    <message>
        <source>From running to standstill by the ordinary stop.</source>
        <translation>Vom Lauf bis zum Stillstand durch den normalen Halt.</translation>
    </message>
    <message>
        <source>From standstill to running.</source>
        <translation>Vom Stillstand bis zum Lauf.</translation>
    </message>
    <message>
        <source>From that face to the middle of the web.</source>
        <translation>Von dieser Fläche bis zur Mitte der Bahn.</translation>
    </message>
    <message>
        <source>From the diameters measured now.</source>
        <translation>Aus den jetzt gemessenen Durchmessern.</translation>
    </message>
    <message>
        <source>From the inner face of one frame to that of the other.</source>
        <translation>Von der Innenfläche einer Seitenwand bis zu der der anderen.</translation>
    </message>
    <message>
        <source>From the mass, since a diameter is missing.</source>
        <translation>Aus der Masse, weil ein Durchmesser fehlt.</translation>
    </message>
    <message>
        <source>From the middle it can follow the print to both sides; across goes by the same share.</source>
        <translation>Aus der Mitte kann er dem Druck nach beiden Seiten folgen; quer gilt derselbe Anteil.</translation>
    </message>
    <message>
        <source>From the middle of one sensor's window to the middle of the other's.</source>
        <translation>Von der Mitte des einen Sensorfensters bis zur Mitte des anderen.</translation>
    </message>
    <message>
        <source>From the roll to the rewind along the drawn path; a leader wants a metre more at each end.</source>
        <translation>Von der Rolle bis zur Aufwicklung entlang des gezeichneten Bahnwegs; eine Vorlaufbahn braucht an jedem Ende einen Meter mehr.</translation>
    </message>
    <message>
        <source>From what speed %1 was measured is not said: it is taken for that from the job's, %2.</source>
        <translation>Aus welcher Geschwindigkeit %1 gemessen wurde, ist nicht gesagt: Angenommen wird die des Auftrags, %2.</translation>
    </message>
    <message>
        <source>Full set-ups</source>
        <translation>Volle Einrichtungen</translation>
    </message>
    <message>
        <source>Gap between the butted edges</source>
        <translation>Spalt zwischen den gestoßenen Kanten</translation>
    </message>
    <message>
        <source>German</source>
        <translation>Deutsch</translation>
    </message>
    <message>
        <source>Give %1 as a plain number.</source>
        <translation>%1 als bloße Zahl angeben.</translation>
    </message>
    <message>
        <source>Give %1 in %2 or another unit of the same kind.</source>
        <translation>%1 in %2 oder einer anderen Einheit derselben Art angeben.</translation>
    </message>
    <message>
        <source>Give a lower or an upper limit, or both.</source>
        <translation>Eine untere oder obere Grenze angeben, oder beide.</translation>
    </message>
    <message>
        <source>Give an id, and a role: operator, supervisor, trainer or trainee.</source>
        <translation>Eine Kennung und eine Funktion angeben: operator, supervisor, trainer oder trainee.</translation>
    </message>
    <message>
        <source>Give both, or take the index of that side.</source>
        <translation>Beide angeben oder den Index dieser Seite nehmen.</translation>
    </message>
    <message>
        <source>Give each its own id: answers and records are kept under it.</source>
        <translation>Jedem eine eigene Kennung geben: Antworten und Aufzeichnungen werden darunter geführt.</translation>
    </message>
    <message>
        <source>Give each its own word.</source>
        <translation>Jedem ein eigenes Wort geben.</translation>
    </message>
    <message>
        <source>Give each person an id of their own.</source>
        <translation>Jeder Person eine eigene Kennung geben.</translation>
    </message>
    <message>
        <source>Give every argument once: %1.</source>
        <translation>Jedes Argument einmal angeben: %1.</translation>
    </message>
    <message>
        <source>Give it the number after that of the last edition.</source>
        <translation>Die Nummer nach der letzten Ausgabe geben.</translation>
    </message>
    <message>
        <source>Give it up</source>
        <translation>Aufheben</translation>
    </message>
    <message>
        <source>Give roller %1 a diameter above zero. The unwind and the rewinds take theirs from the roll.</source>
        <translation>Walze %1 einen Durchmesser über null geben. Abwicklung und Aufwicklungen haben ihren von der Rolle.</translation>
    </message>
    <message>
        <source>Give the file a name of at most 120 letters and attach it again.</source>
        <translation>Der Datei einen Namen von höchstens 120 Buchstaben geben und sie neu anhängen.</translation>
    </message>
    <message>
        <source>Give the file its id and try again.</source>
        <translation>Der Datei ihre Kennung geben und neu versuchen.</translation>
    </message>
    <message>
        <source>Give the ink a station of this press, or take another press.</source>
        <translation>Der Farbe ein Druckwerk dieser Maschine geben oder eine andere Maschine nehmen.</translation>
    </message>
    <message>
        <source>Give the name as it stands in the list of held stops.</source>
        <translation>Den Namen so angeben, wie er in der Liste der gehaltenen Halte steht.</translation>
    </message>
    <message>
        <source>Give the sigma of the chart.</source>
        <translation>Das Sigma der Regelkarte angeben.</translation>
    </message>
    <message>
        <source>Give the web that leaves the drawn plane after %1 as a length, or leave it out.</source>
        <translation>Die Bahn, die nach %1 die gezeichnete Ebene verlässt, als Länge angeben oder weglassen.</translation>
    </message>
    <message>
        <source>Give them the other way round.</source>
        <translation>Sie umgekehrt angeben.</translation>
    </message>
    <message>
        <source>Give this deck another station; it is left out until then.</source>
        <translation>Dieser Belegung ein anderes Druckwerk geben; bis dahin bleibt sie weg.</translation>
    </message>
    <message>
        <source>Give this one an id of its own.</source>
        <translation>Diesem eine eigene Kennung geben.</translation>
    </message>
    <message>
        <source>Give this one another name; it is left out until then.</source>
        <translation>Diesem einen anderen Namen geben; bis dahin bleibt es weg.</translation>
    </message>
    <message>
        <source>Give this one another number; it is left out until then.</source>
        <translation>Diesem eine andere Nummer geben; bis dahin bleibt es weg.</translation>
    </message>
    <message>
        <source>Give this rewind another name; it is left out until then.</source>
        <translation>Dieser Aufwicklung einen anderen Namen geben; bis dahin bleibt sie weg.</translation>
    </message>
    <message>
        <source>Give torque_per_setting, zero_setting and the range in the same kind of unit.</source>
        <translation>torque_per_setting, zero_setting und den Bereich in derselben Art von Einheit angeben.</translation>
    </message>
    <message>
        <source>Give where they begin in rising order.</source>
        <translation>In steigender Reihenfolge angeben, wo sie beginnen.</translation>
    </message>
    <message>
        <source>Go back to it, do it, and answer it.</source>
        <translation>Dorthin zurückgehen, es machen und beantworten.</translation>
    </message>
    <message>
        <source>Go on there, or close the program there; this one can then take over at once.</source>
        <translation>Dort fortsetzen oder das Programm dort schließen; dieses kann dann sofort übernehmen.</translation>
    </message>
    <message>
        <source>Go on with it, sign it off, or abandon it with a reason.</source>
        <translation>Ihn fortsetzen, abzeichnen oder mit einem Grund abbrechen.</translation>
    </message>
    <message>
        <source>Go to the press, make it safe, look at each of these, and say it.</source>
        <translation>Zur Maschine gehen, sie sicher machen, jedes davon ansehen und es sagen.</translation>
    </message>
    <message>
        <source>Good pieces ordered.</source>
        <translation>Bestellte gute Stücke.</translation>
    </message>
    <message>
        <source>Good when the roll was weighed; the core's mass must be taken off.</source>
        <translation>Gut, wenn die Rolle gewogen wurde; die Masse der Hülse muss abgezogen werden.</translation>
    </message>
    <message>
        <source>Guidance for older presses: your manual and risk assessment prevail. Measure both; wear makes them grow.</source>
        <translation>Leitlinie für ältere Maschinen: Ihr Handbuch und Ihre Risikobeurteilung gehen vor. Beide messen; Verschleiß lässt sie wachsen.</translation>
    </message>
    <message>
        <source>Guide %1 does not stand in the middle of its stroke.</source>
        <translation>Der Bahnlaufregler %1 steht nicht in der Mitte seines Hubs.</translation>
    </message>
    <message>
        <source>Guide %1 stands at its end, and the web goes on.</source>
        <translation>Der Bahnlaufregler %1 steht am Ende, und die Bahn läuft weiter weg.</translation>
    </message>
    <message>
        <source>Guide %1 swings to and fro.</source>
        <translation>Der Bahnlaufregler %1 pendelt hin und her.</translation>
    </message>
    <message>
        <source>Guide at rest, from its middle</source>
        <translation>Bahnlaufregler in Ruhe, ab seiner Mitte</translation>
    </message>
    <message>
        <source>Guides and sensors follow the width that is there, not the one ordered.</source>
        <translation>Bahnlaufregler und Sensoren richten sich nach der vorhandenen Breite, nicht nach der bestellten.</translation>
    </message>
    <message>
        <source>Half covered, half open: then it sees both ways equally far.</source>
        <translation>Halb bedeckt, halb offen: Dann sieht er nach beiden Seiten gleich weit.</translation>
    </message>
    <message>
        <source>Hand it over to somebody else, or go on.</source>
        <translation>An jemand anderen übergeben oder fortsetzen.</translation>
    </message>
    <message>
        <source>Hands are in the press while this step moves it.</source>
        <translation>Hände sind in der Maschine, während dieser Schritt sie bewegt.</translation>
    </message>
    <message>
        <source>Hands go into the press here and no stop is held.</source>
        <translation>Hier greifen Hände in die Maschine und kein Halt wird gehalten.</translation>
    </message>
    <message>
        <source>Hands go into the press here, and no stop is held.</source>
        <translation>Hier greifen Hände in die Maschine, und kein Halt wird gehalten.</translation>
    </message>
    <message>
        <source>Hands were in the way of the web while it moved.</source>
        <translation>Hände waren im Weg der Bahn, während sie lief.</translation>
    </message>
    <message>
        <source>Hang it as the feed direction says, and look at the face before joining.</source>
        <translation>Einhängen, wie die Zuführung sagt, und vor dem Kleben die Druckseite ansehen.</translation>
    </message>
    <message>
        <source>Hang it so that the web leaves the roll's top: then its face meets the plates.</source>
        <translation>So einhängen, dass die Bahn oben von der Rolle abläuft: Dann trifft ihre Druckseite auf die Druckplatten.</translation>
    </message>
    <message>
        <source>Hang it so that the web leaves the roll's underside: then its face meets the plates.</source>
        <translation>So einhängen, dass die Bahn unten von der Rolle abläuft: Dann trifft ihre Druckseite auf die Druckplatten.</translation>
    </message>
    <message>
        <source>Happened</source>
        <translation>Geschehen</translation>
    </message>
    <message>
        <source>Have a larger cylinder or a longer lever fitted to the dancer.</source>
        <translation>Am Tänzer einen größeren Zylinder oder längeren Hebel einbauen lassen.</translation>
    </message>
    <message>
        <source>Have a load cell of a larger range fitted.</source>
        <translation>Eine Kraftmessdose mit größerem Bereich einbauen lassen.</translation>
    </message>
    <message>
        <source>Have a load cell of a smaller range fitted.</source>
        <translation>Eine Kraftmessdose mit kleinerem Bereich einbauen lassen.</translation>
    </message>
    <message>
        <source>Have a smaller cylinder or a shorter lever fitted to the dancer.</source>
        <translation>Am Tänzer einen kleineren Zylinder oder kürzeren Hebel einbauen lassen.</translation>
    </message>
    <message>
        <source>Have a stronger drive fitted.</source>
        <translation>Einen stärkeren Antrieb einbauen lassen.</translation>
    </message>
    <message>
        <source>Have a supervisor do it who had no part in this run.</source>
        <translation>Von einer Aufsicht machen lassen, die an diesem Durchgang nicht beteiligt war.</translation>
    </message>
    <message>
        <source>Have a supervisor do it.</source>
        <translation>Von einer Aufsicht machen lassen.</translation>
    </message>
    <message>
        <source>Have a supervisor keep the file in the logbook first.</source>
        <translation>Die Datei zuerst von einer Aufsicht ins Protokollbuch aufnehmen lassen.</translation>
    </message>
    <message>
        <source>Have a supervisor keep this file in the logbook first.</source>
        <translation>Diese Datei zuerst von einer Aufsicht ins Protokollbuch aufnehmen lassen.</translation>
    </message>
    <message>
        <source>Have a supervisor look at it here and sign beside you.</source>
        <translation>Eine Aufsicht es hier ansehen und mitunterschreiben lassen.</translation>
    </message>
    <message>
        <source>Have a supervisor look at it, sign in here and seal it themselves.</source>
        <translation>Eine Aufsicht es ansehen, sich hier anmelden und es selbst siegeln lassen.</translation>
    </message>
    <message>
        <source>Have a supervisor sign in and do it.</source>
        <translation>Eine Aufsicht soll sich anmelden und es machen.</translation>
    </message>
    <message>
        <source>Have a supervisor sign in first.</source>
        <translation>Zuerst soll sich eine Aufsicht anmelden.</translation>
    </message>
    <message>
        <source>Have a trainer or a supervisor look at it.</source>
        <translation>Eine Ausbildungsperson oder Aufsicht darauf sehen lassen.</translation>
    </message>
    <message>
        <source>Have a weaker drive fitted.</source>
        <translation>Einen schwächeren Antrieb einbauen lassen.</translation>
    </message>
    <message>
        <source>Have another supervisor look at it.</source>
        <translation>Eine andere Aufsicht darauf sehen lassen.</translation>
    </message>
    <message>
        <source>Have another supervisor review it.</source>
        <translation>Von einer anderen Aufsicht prüfen lassen.</translation>
    </message>
    <message>
        <source>Have another trainer look at it.</source>
        <translation>Eine andere Ausbildungsperson darauf sehen lassen.</translation>
    </message>
    <message>
        <source>Have both judge the same things first.</source>
        <translation>Zuerst beide dieselben Dinge beurteilen lassen.</translation>
    </message>
    <message>
        <source>Have both judge things of which some are not as the others.</source>
        <translation>Beide Dinge beurteilen lassen, von denen manche anders sind.</translation>
    </message>
    <message>
        <source>Have it corrected first; where nothing was wrong, a correction by a remark says so.</source>
        <translation>Zuerst berichtigen lassen; wo nichts falsch war, sagt das eine Berichtigung durch eine Bemerkung.</translation>
    </message>
    <message>
        <source>Have its owner allow reading, or copy it to a place of your own.</source>
        <translation>Den Besitzer das Lesen erlauben lassen oder an einen eigenen Ort kopieren.</translation>
    </message>
    <message>
        <source>Have its owner allow writing, or open it for reading.</source>
        <translation>Den Besitzer das Schreiben erlauben lassen oder zum Lesen öffnen.</translation>
    </message>
    <message>
        <source>Have nobody write in it, then restore once more. Nothing was changed.</source>
        <translation>Niemanden darin schreiben lassen, dann noch einmal wiederherstellen. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>Have the adapter for this core ready, both ends of it.</source>
        <translation>Den Adapter für diese Hülse bereithalten, beide Enden davon.</translation>
    </message>
    <message>
        <source>Have the disk checked and restore the logbook from a backup.</source>
        <translation>Die Platte prüfen lassen und das Protokollbuch aus einer Sicherung wiederherstellen.</translation>
    </message>
    <message>
        <source>Have the disk checked, then restore from that file or from the copy.</source>
        <translation>Die Platte prüfen lassen, dann aus jener Datei oder aus der Kopie wiederherstellen.</translation>
    </message>
    <message>
        <source>Have the disk checked, then restore the logbook from that copy.</source>
        <translation>Datenträger prüfen lassen, dann das Protokollbuch aus dieser Kopie wiederherstellen.</translation>
    </message>
    <message>
        <source>Have the disk or the network drive checked; keep a copy of the file elsewhere.</source>
        <translation>Die Platte oder das Netzlaufwerk prüfen lassen; eine Kopie der Datei anderswo aufbewahren.</translation>
    </message>
    <message>
        <source>Have the next roll ready, and plan with that one.</source>
        <translation>Die nächste Rolle bereithalten und mit ihr planen.</translation>
    </message>
    <message>
        <source>Have them do more set-ups with a trainer beside them. Practice does not count.</source>
        <translation>Mehr Einrichtungen unter Aufsicht der Ausbildung machen lassen. Übung zählt nicht.</translation>
    </message>
    <message>
        <source>Have them lying ready before the first one is hung.</source>
        <translation>Sie bereitlegen, bevor die erste eingehängt wird.</translation>
    </message>
    <message>
        <source>Held down all the way; let go and it stops.</source>
        <translation>Durchgehend gedrückt halten; beim Loslassen hält sie an.</translation>
    </message>
    <message>
        <source>Held down to a tenth of what the weakest carrying layer breaks at, or the share that this shop allows: a rule of thumb.</source>
        <translation>Begrenzt auf ein Zehntel dessen, wobei die schwächste tragende Schicht reißt, oder auf den Anteil, den dieser Betrieb erlaubt: eine Faustregel.</translation>
    </message>
    <message>
        <source>Held down to the strain that print may be made under: beyond it the labels come out short.</source>
        <translation>Begrenzt auf die Dehnung, unter der gedruckt werden darf: Darüber werden die Etiketten zu kurz.</translation>
    </message>
    <message>
        <source>Help asked for</source>
        <translation>Hilfe erbeten</translation>
    </message>
    <message>
        <source>Here and below stand more keys that are not known.</source>
        <translation>Hier und darunter stehen weitere Schlüssel, die nicht bekannt sind.</translation>
    </message>
    <message>
        <source>Here stands %1, which cannot be read as this key.</source>
        <translation>Hier steht %1; das lässt sich als dieser Schlüssel nicht lesen.</translation>
    </message>
    <message>
        <source>Here the tension leaves its window if nobody touches the setting; see the schedule.</source>
        <translation>Hier verlässt der Zug sein Fenster, wenn niemand die Einstellung ändert; siehe die Tabelle der Änderungen.</translation>
    </message>
    <message>
        <source>Hold it</source>
        <translation>Halten</translation>
    </message>
    <message>
        <source>Hold it against the torque on the roll: what is missing comes out as slack.</source>
        <translation>Mit dem Drehmoment an der Rolle vergleichen: Was fehlt, zeigt sich als lose Bahn.</translation>
    </message>
    <message>
        <source>Hold the sheet against the logbook itself.</source>
        <translation>Das Einrichteblatt mit dem Protokollbuch selbst vergleichen.</translation>
    </message>
    <message>
        <source>Hold this stop, each person their own, and say who holds it: %1</source>
        <translation>Diesen Halt halten, jede Person den eigenen, und sagen, wer ihn hält: %1</translation>
    </message>
    <message>
        <source>How</source>
        <translation>Wie</translation>
    </message>
    <message>
        <source>How %1 winds</source>
        <translation>Wie %1 wickelt</translation>
    </message>
    <message>
        <source>How a roll may be hung: over, the web leaves its top; under, its bottom.</source>
        <translation>Wie eine Rolle hängen darf: over, Bahn läuft oben ab; under, unten.</translation>
    </message>
    <message>
        <source>How far</source>
        <translation>Wie weit</translation>
    </message>
    <message>
        <source>How far behind the guide the sensor stands.</source>
        <translation>Wie weit hinter dem Bahnlaufregler der Sensor steht.</translation>
    </message>
    <message>
        <source>How far it moves in all.</source>
        <translation>Wie weit er sich insgesamt bewegt.</translation>
    </message>
    <message>
        <source>How far its reading may be off, either way.</source>
        <translation>Wie weit seine Anzeige abweichen darf, nach beiden Seiten.</translation>
    </message>
    <message>
        <source>How far register can be moved across the web, each way.</source>
        <translation>Wie weit sich das Register quer zur Bahn verstellen lässt, je Richtung.</translation>
    </message>
    <message>
        <source>How far register can be moved along the web, each way.</source>
        <translation>Wie weit sich das Register längs der Bahn verstellen lässt, je Richtung.</translation>
    </message>
    <message>
        <source>How far the caliper may lie from it, as a share.</source>
        <translation>Wie weit die Dicke davon abweichen darf, als Anteil.</translation>
    </message>
    <message>
        <source>How far the lengths of this roll lie apart</source>
        <translation>Wie weit die Längen dieser Rolle auseinanderliegen</translation>
    </message>
    <message>
        <source>How far the plate cylinder lies under its pitch line; plate and tape fill it.</source>
        <translation>Wie weit der Plattenzylinder unter seinem Teilkreis liegt; Platte und Klebeband füllen es aus.</translation>
    </message>
    <message>
        <source>How far the roll moves for each length that the piston moves.</source>
        <translation>Wie weit sich die Rolle je Länge des Kolbenwegs bewegt.</translation>
    </message>
    <message>
        <source>How far the web moves at one touch of the inch control.</source>
        <translation>Wie weit sich die Bahn bei einmal Tippen bewegt.</translation>
    </message>
    <message>
        <source>How fast it moves.</source>
        <translation>Wie schnell er sich bewegt.</translation>
    </message>
    <message>
        <source>How it can wind, first what it does as a rule: over or under its core.</source>
        <translation>Wie sie wickeln kann, zuerst das Übliche: over oder under um ihre Hülse.</translation>
    </message>
    <message>
        <source>How it moves the web.</source>
        <translation>Wie er die Bahn bewegt.</translation>
    </message>
    <message>
        <source>How it turns in forward running, seen from the operator's side: cw with the clock.</source>
        <translation>Wie sie vorwärts dreht, von der Bedienseite gesehen: cw mit der Uhr.</translation>
    </message>
    <message>
        <source>How large the finished rolls may be.</source>
        <translation>Wie groß die fertigen Rollen sein dürfen.</translation>
    </message>
    <message>
        <source>How long the web takes to follow the guide</source>
        <translation>Wie lange die Bahn braucht, um dem Bahnlaufregler zu folgen</translation>
    </message>
    <message>
        <source>How many clamps hold the web there.</source>
        <translation>Wie viele Klemmen dort die Bahn halten.</translation>
    </message>
    <message>
        <source>How many cylinders load it.</source>
        <translation>Wie viele Zylinder ihn belasten.</translation>
    </message>
    <message>
        <source>How many pistons lift together.</source>
        <translation>Wie viele Kolben zusammen heben.</translation>
    </message>
    <message>
        <source>How much faster the second nip runs than the first.</source>
        <translation>Um wie viel die zweiten Klemmwalzen schneller laufen als die ersten.</translation>
    </message>
    <message>
        <source>How much stronger the joint is than the hardest pull.</source>
        <translation>Wie viel fester die Klebestelle ist als der stärkste Zug.</translation>
    </message>
    <message>
        <source>How much stronger the joint is than the pull on it.</source>
        <translation>Wie viel fester die Klebestelle ist als der Zug an ihr.</translation>
    </message>
    <message>
        <source>How much web lies on it.</source>
        <translation>Wie viel Bahn darauf ist.</translation>
    </message>
    <message>
        <source>How often it is due: "30 d".</source>
        <translation>Wie oft sie fällig ist: „30 d“.</translation>
    </message>
    <message>
        <source>How surely this roll is enough for the job</source>
        <translation>Wie sicher diese Rolle für den Auftrag reicht</translation>
    </message>
    <message>
        <source>How tension falls while the finished roll grows.</source>
        <translation>Wie der Bahnzug abfällt, während die fertige Rolle wächst.</translation>
    </message>
    <message>
        <source>How the customer calls it.</source>
        <translation>Wie der Kunde es nennt.</translation>
    </message>
    <message>
        <source>How the people of this press say quantities.</source>
        <translation>Wie die Leute an dieser Maschine Größen angeben.</translation>
    </message>
    <message>
        <source>How the roll hangs</source>
        <translation>Wie die Rolle hängt</translation>
    </message>
    <message>
        <source>How this press shows the middle of a register adjuster.</source>
        <translation>Wie diese Maschine die Mitte eines Registerstellers zeigt.</translation>
    </message>
    <message>
        <source>How this record came to stand as it does</source>
        <translation>Wie diese Aufzeichnung zu ihrem Stand kam</translation>
    </message>
    <message>
        <source>How well it was told from the rest (d')</source>
        <translation>Wie gut es vom Übrigen unterschieden wurde (d')</translation>
    </message>
    <message>
        <source>How well the torque is known, plus or minus, as a share.</source>
        <translation>Wie gut das Drehmoment bekannt ist, plus oder minus, als Anteil.</translation>
    </message>
    <message>
        <source>IMPORTED, for reading only: the record is in the logbook that it came from</source>
        <translation>IMPORTIERT, nur zum Lesen: Die Aufzeichnung steht im Protokollbuch, aus dem sie stammt</translation>
    </message>
    <message>
        <source>If %1 is meant, write %1.</source>
        <translation>Ist %1 gemeint, dann %1 schreiben.</translation>
    </message>
    <message>
        <source>If it never held a run, since the program ended while it was being made, remove it and begin again. If it did, restore it from the mirror or a copy. Nothing was changed.</source>
        <translation>Enthielt es nie einen Durchgang, weil das Programm beim Anlegen endete, es entfernen und neu beginnen. Enthielt es einen, aus dem Spiegel oder einer Kopie wiederherstellen. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>If it rests to one side, move the roll, not the sensor.</source>
        <translation>Ruht er auf einer Seite, die Rolle versetzen, nicht den Sensor.</translation>
    </message>
    <message>
        <source>If the clutch keeps its torque. A weak splice parts here.</source>
        <translation>Wenn die Kupplung ihr Drehmoment hält. Eine schwache Klebestelle reißt hier.</translation>
    </message>
    <message>
        <source>In an emergency stop from job speed the unwind goes slack: its brake lets go.</source>
        <translation>Bei einem Not-Halt aus Auftragsgeschwindigkeit wird die Abwicklung lose: Ihre Bremse löst.</translation>
    </message>
    <message>
        <source>In an emergency stop from job speed the unwind goes slack: the brake as set does not hold this roll.</source>
        <translation>Bei einem Not-Halt aus Auftragsgeschwindigkeit wird die Abwicklung lose: Die Bremse, wie eingestellt, hält diese Rolle nicht.</translation>
    </message>
    <message>
        <source>In seal %1 a value outside its window was not accepted as it stands there.</source>
        <translation>In Siegel %1 wurde ein Wert außerhalb seines Fensters nicht so angenommen, wie er dort steht.</translation>
    </message>
    <message>
        <source>In seal %1 a value was accepted by somebody who was no supervisor then.</source>
        <translation>In Siegel %1 wurde ein Wert von jemandem angenommen, der damals keine Aufsicht war.</translation>
    </message>
    <message>
        <source>In the kind of run %1 this stage does not end with a call.</source>
        <translation>Bei der Art von Durchgang %1 endet dieser Abschnitt nicht mit einer Meldung.</translation>
    </message>
    <message>
        <source>In what the panel takes the tension: a unit of force, or %.</source>
        <translation>Worin die Anzeige den Bahnzug nimmt: eine Krafteinheit, oder %.</translation>
    </message>
    <message>
        <source>Index</source>
        <translation>Index</translation>
    </message>
    <message>
        <source>Inertia of the roll</source>
        <translation>Trägheit der Rolle</translation>
    </message>
    <message>
        <source>Inflate</source>
        <translation>Aufblasen</translation>
    </message>
    <message>
        <source>Inner diameter of the finished rolls' cores.</source>
        <translation>Innendurchmesser der Hülsen der fertigen Rollen.</translation>
    </message>
    <message>
        <source>Install the package fonts-dejavu-core.</source>
        <translation>Das Paket fonts-dejavu-core installieren.</translation>
    </message>
    <message>
        <source>Interruptions, by cause</source>
        <translation>Unterbrechungen, je Ursache</translation>
    </message>
    <message>
        <source>Is %1 meant?</source>
        <translation>Ist %1 gemeint?</translation>
    </message>
    <message>
        <source>It begins to rise at %1, less than the %2 at which this lift's pressure begins.</source>
        <translation>Das Heben beginnt bei %1, weniger als die %2, bei denen der Druck dieses Lifts beginnt.</translation>
    </message>
    <message>
        <source>It can be read there. To go on with it, restore it to a disk of this PC.</source>
        <translation>Dort kann es gelesen werden. Zum Fortsetzen auf einer Platte dieses PCs wiederherstellen.</translation>
    </message>
    <message>
        <source>It does not go on this mandrel: take a roll on another core.</source>
        <translation>Sie passt nicht auf diesen Spanndorn: eine Rolle auf einer anderen Hülse nehmen.</translation>
    </message>
    <message>
        <source>It does not reset: a stop is latched.</source>
        <translation>Es setzt nicht zurück: Ein Halt ist eingerastet.</translation>
    </message>
    <message>
        <source>It follows at the next seal.</source>
        <translation>Es folgt beim nächsten Siegel.</translation>
    </message>
    <message>
        <source>It has stayed where it began under the present profile.</source>
        <translation>Unter dem jetzigen Profil ist der Wert geblieben, wo er begann.</translation>
    </message>
    <message>
        <source>It has stayed where it began.</source>
        <translation>Der Wert ist geblieben, wo er begann.</translation>
    </message>
    <message>
        <source>It is a light roll. Expect it to move as soon as air is on: stand clear and let the air in slowly.</source>
        <translation>Es ist eine leichte Rolle. Mit einer Bewegung rechnen, sobald Luft ansteht: Abstand halten und die Luft langsam einlassen.</translation>
    </message>
    <message>
        <source>It is computed as soon as what is missing has been entered; until then do not guess it.</source>
        <translation>Es wird berechnet, sobald eingegeben ist, was fehlt; bis dahin nicht raten.</translation>
    </message>
    <message>
        <source>It is enough by less than the roll's length is known to: have the next roll ready, and watch the diameter.</source>
        <translation>Sie reicht um weniger, als die Länge der Rolle genau bekannt ist: die nächste Rolle bereithalten und den Durchmesser beobachten.</translation>
    </message>
    <message>
        <source>It is ignored.</source>
        <translation>Es wird nicht beachtet.</translation>
    </message>
    <message>
        <source>It is nearly used up: have a full roll ready, and plan with that one.</source>
        <translation>Sie ist fast verbraucht: eine volle Rolle bereithalten und mit ihr planen.</translation>
    </message>
    <message>
        <source>It is not said which way the roll is wound, so the feed cannot be told.</source>
        <translation>Es ist nicht gesagt, wie herum die Rolle gewickelt ist, also ist die Zuführung nicht bekannt.</translation>
    </message>
    <message>
        <source>It is shown for reading only, as far as this version understands it: runs still open, and records of a kind that is new, are not. Update the program on this PC to write in it.</source>
        <translation>Es wird nur zum Lesen gezeigt, soweit diese Version es versteht: Noch offene Durchgänge und Aufzeichnungen neuer Art fehlen. Zum Schreiben darin das Programm auf diesem PC aktualisieren.</translation>
    </message>
    <message>
        <source>It is tried again at the next seal; else choose another folder.</source>
        <translation>Beim nächsten Siegel wird es neu versucht; sonst einen anderen Ordner wählen.</translation>
    </message>
    <message>
        <source>It smokes at the dryer of station %1.</source>
        <translation>Am Trockner von Druckwerk %1 raucht es.</translation>
    </message>
    <message>
        <source>It takes at least %1.</source>
        <translation>Es braucht mindestens %1.</translation>
    </message>
    <message>
        <source>It was left as it is, and a mirror of this logbook was begun beside it.</source>
        <translation>Es blieb, wie es ist, und daneben wurde ein Spiegel dieses Protokollbuchs begonnen.</translation>
    </message>
    <message>
        <source>It was left as it is, and another mirror was begun beside it.</source>
        <translation>Er blieb, wie er ist, und daneben wurde ein anderer Spiegel begonnen.</translation>
    </message>
    <message>
        <source>It was left as it is, and another was begun beside it. Keep both until somebody has looked at what happened.</source>
        <translation>Er blieb, wie er ist, und daneben wurde ein anderer begonnen. Beide aufbewahren, bis jemand nachgesehen hat, was geschehen ist.</translation>
    </message>
    <message>
        <source>It was not said what helped.</source>
        <translation>Es wurde nicht gesagt, was geholfen hat.</translation>
    </message>
    <message>
        <source>It was not said what this step should be.</source>
        <translation>Es wurde nicht gesagt, was dieser Schritt sein soll.</translation>
    </message>
    <message>
        <source>It was not said what was put right.</source>
        <translation>Es wurde nicht gesagt, was in Ordnung gebracht wurde.</translation>
    </message>
    <message>
        <source>It was not said what was seen.</source>
        <translation>Es wurde nicht gesagt, was gesehen wurde.</translation>
    </message>
    <message>
        <source>It was not said where the stop is held.</source>
        <translation>Es wurde nicht gesagt, wo der Halt gehalten wird.</translation>
    </message>
    <message>
        <source>It was not said whose attempt this is.</source>
        <translation>Es wurde nicht gesagt, wessen Versuch das ist.</translation>
    </message>
    <message>
        <source>It was not said why %1 does not give it up.</source>
        <translation>Es wurde nicht gesagt, warum %1 ihn nicht aufhebt.</translation>
    </message>
    <message>
        <source>It was not said why the stage is done again.</source>
        <translation>Es wurde nicht gesagt, warum der Abschnitt neu gemacht wird.</translation>
    </message>
    <message>
        <source>It was not said why this competence ends.</source>
        <translation>Es wurde nicht gesagt, warum diese Befähigung endet.</translation>
    </message>
    <message>
        <source>It was so and has ended since. Do this stage again, with its cause: %1</source>
        <translation>Es war so und gilt seither nicht mehr. Diesen Abschnitt neu machen, mit der Ursache: %1</translation>
    </message>
    <message>
        <source>Its arguments are: %1. Capitals count.</source>
        <translation>Die Argumente sind: %1. Großbuchstaben zählen.</translation>
    </message>
    <message>
        <source>Its arguments are: %1. Give every one of them.</source>
        <translation>Die Argumente sind: %1. Jedes davon angeben.</translation>
    </message>
    <message>
        <source>Its mass for each area.</source>
        <translation>Seine Masse je Fläche.</translation>
    </message>
    <message>
        <source>Its middle along the press, to the right, seen from the operator's side.</source>
        <translation>Ihre Mitte längs der Maschine, nach rechts, von der Bedienseite gesehen.</translation>
    </message>
    <message>
        <source>Its middle, upwards.</source>
        <translation>Ihre Mitte, nach oben.</translation>
    </message>
    <message>
        <source>Its number on the press.</source>
        <translation>Seine Nummer an der Maschine.</translation>
    </message>
    <message>
        <source>Its stiffness: stress over strain.</source>
        <translation>Seine Steifigkeit: Spannung durch Dehnung.</translation>
    </message>
    <message>
        <source>Its thickness.</source>
        <translation>Seine Dicke.</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Auftrag</translation>
    </message>
    <message>
        <source>Keep a copy elsewhere and have the disk checked.</source>
        <translation>Eine Kopie anderswo aufbewahren und die Platte prüfen lassen.</translation>
    </message>
    <message>
        <source>Keep it where only those get at it who may read the record.</source>
        <translation>Dort aufbewahren, wo nur herankommt, wer die Aufzeichnung lesen darf.</translation>
    </message>
    <message>
        <source>Keep one of circular_pitch, module and diametral_pitch.</source>
        <translation>Eines von circular_pitch, module und diametral_pitch behalten.</translation>
    </message>
    <message>
        <source>Keep one of the two.</source>
        <translation>Eines von beiden behalten.</translation>
    </message>
    <message>
        <source>Keep one of them: external = true means that it may be done while the press still runs.</source>
        <translation>Eines davon behalten: external = true heißt, dass es gemacht werden darf, solange die Maschine noch läuft.</translation>
    </message>
    <message>
        <source>Keep that copy until the next weekly copy is made.</source>
        <translation>Diese Kopie behalten, bis die nächste wöchentliche Kopie gemacht ist.</translation>
    </message>
    <message>
        <source>Keep the entry that the answer tells; ask for the others in steps of their own.</source>
        <translation>Den Eintrag behalten, den die Antwort sagt; die anderen in eigenen Schritten erfragen.</translation>
    </message>
    <message>
        <source>Keep the file with the version that made it, and begin a new logbook. Nothing was changed.</source>
        <translation>Die Datei mit der Version behalten, die sie gemacht hat, und ein neues Protokollbuch beginnen. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>Keep the likeliest, in the order in which to try them.</source>
        <translation>Die wahrscheinlichsten behalten, in der Reihenfolge, in der sie zu versuchen sind.</translation>
    </message>
    <message>
        <source>Keep the logbook on a disk of this PC, and its mirror or copies in that folder.</source>
        <translation>Das Protokollbuch auf einer Platte dieses PCs behalten, Spiegel oder Kopien in jenem Ordner.</translation>
    </message>
    <message>
        <source>Keep the logbook on a disk of this PC.</source>
        <translation>Das Protokollbuch auf einer Platte dieses PCs behalten.</translation>
    </message>
    <message>
        <source>Keep the logbook on the disk of this PC, and its mirror or copies on the stick.</source>
        <translation>Das Protokollbuch auf der Platte dieses PCs behalten, Spiegel oder Kopien auf dem Stick.</translation>
    </message>
    <message>
        <source>Keep the sheet and the logbook as they are, and have a supervisor verify the logbook against this sheet.</source>
        <translation>Blatt und Protokollbuch lassen, wie sie sind, und das Protokollbuch von der Aufsicht gegen dieses Blatt verifizieren lassen.</translation>
    </message>
    <message>
        <source>Keep this file as it is and open a backup of the logbook.</source>
        <translation>Diese Datei lassen, wie sie ist, und eine Sicherung des Protokollbuchs öffnen.</translation>
    </message>
    <message>
        <source>Keys that are not known here are ignored.</source>
        <translation>Hier unbekannte Schlüssel werden nicht beachtet.</translation>
    </message>
    <message>
        <source>Kind of run</source>
        <translation>Art des Durchgangs</translation>
    </message>
    <message>
        <source>Known here: %1.</source>
        <translation>Hier bekannt: %1.</translation>
    </message>
    <message>
        <source>L = Q R / (across around (1 - waste))</source>
        <translation>L = Q R / (across around (1 - waste))</translation>
    </message>
    <message>
        <source>L = integral of sqrt(1 + (2 pi r / t)^2) dr from d/2 to D/2</source>
        <translation>L = Integral von sqrt(1 + (2 pi r / t)^2) dr von d/2 bis D/2</translation>
    </message>
    <message>
        <source>L = sum of s and b</source>
        <translation>L = Summe aus s und b</translation>
    </message>
    <message>
        <source>Labels</source>
        <translation>Etiketten</translation>
    </message>
    <message>
        <source>Largest tension ratio across the roller before the web slips</source>
        <translation>Größtes Zugverhältnis an der Walze, bevor die Bahn rutscht</translation>
    </message>
    <message>
        <source>Last day</source>
        <translation>Letzter Tag</translation>
    </message>
    <message>
        <source>Last done</source>
        <translation>Zuletzt getan</translation>
    </message>
    <message>
        <source>Lay it there</source>
        <translation>Hinlegen</translation>
    </message>
    <message>
        <source>Lead it to the table</source>
        <translation>Zum Tisch führen</translation>
    </message>
    <message>
        <source>Lead the web %1: %2.</source>
        <translation>Bahn %1 führen: %2.</translation>
    </message>
    <message>
        <source>Least grip of the web on a roller, as a tension ratio</source>
        <translation>Kleinste Haftung der Bahn an einer Walze, als Zugverhältnis</translation>
    </message>
    <message>
        <source>Least grip of the web on a roller, as a tension ratio, at crawl only</source>
        <translation>Kleinste Haftung der Bahn an einer Walze, als Zugverhältnis, nur im Kriechgang</translation>
    </message>
    <message>
        <source>Least of tape, bond and web, at the top of the tension's window. Heat in a dryer lowers it.</source>
        <translation>Das Kleinste aus Klebeband, Verklebung und Bahn, am oberen Ende des Zugfensters. Hitze in einem Trockner senkt es.</translation>
    </message>
    <message>
        <source>Leave it off. If it winds one, list its rewind first in the press profile.</source>
        <translation>Außer Betrieb lassen. Wickelt sie doch einen, ihre Aufwicklung im Maschinenprofil zuerst aufführen.</translation>
    </message>
    <message>
        <source>Leave it open and put it right, note what you found, or withdraw the press.</source>
        <translation>Offen lassen und in Ordnung bringen, den Befund notieren oder die Maschine sperren.</translation>
    </message>
    <message>
        <source>Leave it out or read it again.</source>
        <translation>Weglassen oder neu ablesen.</translation>
    </message>
    <message>
        <source>Leave it out.</source>
        <translation>Weglassen.</translation>
    </message>
    <message>
        <source>Leave out a setting at which nothing held, and measure the roll where the web leaves it.</source>
        <translation>Einstellung, bei der nichts hielt, weglassen, und die Rolle messen, wo die Bahn abläuft.</translation>
    </message>
    <message>
        <source>Leave the file as it is, have the disk checked, and restore the logbook from a backup.</source>
        <translation>Die Datei lassen, wie sie ist, die Platte prüfen lassen und das Protokollbuch aus einer Sicherung wiederherstellen.</translation>
    </message>
    <message>
        <source>Leave the step out, or say what it should be.</source>
        <translation>Den Schritt weglassen oder sagen, was er sein soll.</translation>
    </message>
    <message>
        <source>Leave this fault out.</source>
        <translation>Diesen Fehler weglassen.</translation>
    </message>
    <message>
        <source>Left open in abandoned runs, by step</source>
        <translation>Offen in abgebrochenen Durchgängen, je Schritt</translation>
    </message>
    <message>
        <source>Less hurts no web; see that it stays in hand.</source>
        <translation>Weniger schadet keiner Bahn; darauf achten, dass sie sicher geführt bleibt.</translation>
    </message>
    <message>
        <source>Less than its stroke says that the angle ends first.</source>
        <translation>Weniger als der Stellweg heißt: Der Winkel endet zuerst.</translation>
    </message>
    <message>
        <source>Less than the %1 at which this lift's pressure begins: it moves as soon as air is on. Let the air in slowly, beside the roll, never under it. If nothing has moved at %2, stop: something is stuck.</source>
        <translation>Weniger als die %1, bei denen der Druck dieses Lifts beginnt: Er bewegt sich, sobald Luft ansteht. Luft langsam einlassen, neben der Rolle stehen, nie darunter. Hat sich bei %2 nichts bewegt, aufhören: Etwas klemmt.</translation>
    </message>
    <message>
        <source>Lesson</source>
        <translation>Übung</translation>
    </message>
    <message>
        <source>Let an operator seal it.</source>
        <translation>Von einem Bediener versiegeln lassen.</translation>
    </message>
    <message>
        <source>Let go</source>
        <translation>Loslassen</translation>
    </message>
    <message>
        <source>Let it lie in the press room as long as the sheet says. If it has to run, watch tension and register, and set them again when it is warm.</source>
        <translation>Im Maschinenraum liegen lassen, so lange das Einrichteblatt sagt. Muss sie laufen, Zug und Register beobachten und neu einstellen, wenn sie warm ist.</translation>
    </message>
    <message>
        <source>Let its last step be of kind call, in every kind of run that the stage has steps in, always asked.</source>
        <translation>Ihr letzter Schritt soll von der Art call sein, in jeder Art von Durchgang, in der der Abschnitt Schritte hat, immer gefragt.</translation>
    </message>
    <message>
        <source>Let somebody begin it whose role allows it.</source>
        <translation>Von jemandem beginnen lassen, dessen Funktion es erlaubt.</translation>
    </message>
    <message>
        <source>Let somebody do it who is in service.</source>
        <translation>Von jemandem machen lassen, der im Dienst ist.</translation>
    </message>
    <message>
        <source>Let somebody do it whose role allows it.</source>
        <translation>Von jemandem machen lassen, dessen Funktion es erlaubt.</translation>
    </message>
    <message>
        <source>Let the air out</source>
        <translation>Luft ablassen</translation>
    </message>
    <message>
        <source>Let them change places in the text of the file.</source>
        <translation>Im Text der Datei die Plätze tauschen.</translation>
    </message>
    <message>
        <source>Lift pressure at which it begins to rise</source>
        <translation>Liftdruck, bei dem das Heben beginnt</translation>
    </message>
    <message>
        <source>Lifting this roll would take %1; this lift ends at %2.</source>
        <translation>Das Heben dieser Rolle bräuchte %1; dieser Lift endet bei %2.</translation>
    </message>
    <message>
        <source>Light passes through this web: an infrared edge sensor does not see it.</source>
        <translation>Licht geht durch diese Bahn: Ein Infrarot-Kantensensor sieht sie nicht.</translation>
    </message>
    <message>
        <source>Limits are set for %1, and nothing of this press bears that name: they never hold.</source>
        <translation>Grenzen sind gesetzt für %1, und nichts an dieser Maschine heißt so: Sie gelten nie.</translation>
    </message>
    <message>
        <source>Limits are set for %1, which is never judged: it proves nothing.</source>
        <translation>Grenzen sind gesetzt für %1; das wird nie beurteilt: Es beweist nichts.</translation>
    </message>
    <message>
        <source>Limits are set for %1, whose window comes from the range of tension of job, material or table: they do not hold.</source>
        <translation>Grenzen sind gesetzt für %1; dessen Fenster kommt aus dem Zugbereich von Auftrag, Material oder Tabelle: Sie gelten nicht.</translation>
    </message>
    <message>
        <source>Limits cannot be reckoned from fewer than two points.</source>
        <translation>Aus weniger als zwei Punkten lassen sich keine Grenzen errechnen.</translation>
    </message>
    <message>
        <source>List the rollers in web order, from the unwind to the rewind.</source>
        <translation>Die Walzen in der Reihenfolge der Bahn aufführen, von der Abwicklung bis zur Aufwicklung.</translation>
    </message>
    <message>
        <source>Load cell with the web slack</source>
        <translation>Kraftmessdose bei loser Bahn</translation>
    </message>
    <message>
        <source>Load cells at nought, web slack: %1</source>
        <translation>Kraftmessdosen auf null, Bahn lose: %1</translation>
    </message>
    <message>
        <source>Load on the lift</source>
        <translation>Last am Lift</translation>
    </message>
    <message>
        <source>Load the roll so that the guide has little to do, and look for a slack edge when it stands far out.</source>
        <translation>Die Rolle so einsetzen, dass der Bahnlaufregler wenig zu tun hat, und nach einer losen Kante sehen, wenn er weit außen steht.</translation>
    </message>
    <message>
        <source>Lock pin of the dancer: %1</source>
        <translation>Sperrstift des Tänzers: %1</translation>
    </message>
    <message>
        <source>Longer than this: withdraw the press and have it looked at. Shorter: it was another speed, or the watch was started late.</source>
        <translation>Länger als dies: die Maschine sperren und ansehen lassen. Kürzer: Es war eine andere Geschwindigkeit, oder die Stoppuhr wurde spät gestartet.</translation>
    </message>
    <message>
        <source>Longer than this: withdraw the press and have it looked at. Time it from the speed at which it was measured, and enter that speed beside it: until then it is taken for that from job speed.</source>
        <translation>Länger als dies: die Maschine sperren und ansehen lassen. Ab der Geschwindigkeit stoppen, bei der gemessen wurde, und diese daneben eingeben: Bis dahin gilt die Zeit als die ab Auftragsgeschwindigkeit.</translation>
    </message>
    <message>
        <source>Longer than this: withdraw the press and have it looked at. Timed from another speed it is longer or shorter as the speed is: see the time from job speed.</source>
        <translation>Länger als dies: die Maschine sperren und ansehen lassen. Ab einer anderen Geschwindigkeit gestoppt, ist die Zeit mit dieser länger oder kürzer: siehe die Zeit ab Auftragsgeschwindigkeit.</translation>
    </message>
    <message>
        <source>Look at both speeds and their units, and correct the one that is wrong.</source>
        <translation>Beide Geschwindigkeiten und ihre Einheiten ansehen und die falsche berichtigen.</translation>
    </message>
    <message>
        <source>Look at brake, lining, air and gauge first: a worn brake is mended, not entered.</source>
        <translation>Zuerst Bremse, Belag, Luft und Anzeige ansehen: Eine verschlissene Bremse wird instand gesetzt, nicht eingegeben.</translation>
    </message>
    <message>
        <source>Look at each of these now, at the press, and say it before anything moves.</source>
        <translation>Jedes davon jetzt ansehen, an der Maschine, und es sagen, bevor sich etwas bewegt.</translation>
    </message>
    <message>
        <source>Look at it in the text of the file.</source>
        <translation>Im Text der Datei ansehen.</translation>
    </message>
    <message>
        <source>Look at the PC on which this person practised.</source>
        <translation>Sehen Sie am PC nach, an dem diese Person geübt hat.</translation>
    </message>
    <message>
        <source>Look at the code again, or ask the supervisor for a new one.</source>
        <translation>Den Code noch einmal ansehen oder die Aufsicht um einen neuen bitten.</translation>
    </message>
    <message>
        <source>Look at the job's tension and its unit, and at the material's, and mend the one that is wrong.</source>
        <translation>Den Zug des Auftrags und den des Materials mit ihren Einheiten ansehen und den falschen berichtigen.</translation>
    </message>
    <message>
        <source>Look at the last step before going on. Whoever looks after this program wants the log %1: it holds no names and no readings.</source>
        <translation>Vor dem Fortsetzen den letzten Schritt ansehen. Wer dieses Programm betreut, braucht das Protokoll %1: Es enthält keine Namen und keine Ablesungen.</translation>
    </message>
    <message>
        <source>Look at the newest printed sheets of both before anybody goes on; if it was the wrong copy, restore what was set aside.</source>
        <translation>Die neuesten gedruckten Einrichteblätter von beiden ansehen, bevor jemand fortsetzt; war es die falsche Kopie, das Beiseitegelegte wiederherstellen.</translation>
    </message>
    <message>
        <source>Look at the plate and at the supply: a shaft short of air lets its core turn.</source>
        <translation>Schild und Versorgung ansehen: Eine Welle mit zu wenig Luft lässt ihre Hülse durchdrehen.</translation>
    </message>
    <message>
        <source>Look at the run again, and say what the step should be.</source>
        <translation>Den Durchgang noch einmal ansehen und sagen, was der Schritt sein soll.</translation>
    </message>
    <message>
        <source>Look at the signals, find their cause and begin a new phase after it.</source>
        <translation>Die Signale ansehen, ihre Ursache finden und danach eine neue Phase beginnen.</translation>
    </message>
    <message>
        <source>Look at the tension and its unit, and at the strength and modulus of the material.</source>
        <translation>Den Zug und seine Einheit ansehen, und Festigkeit und E-Modul des Materials.</translation>
    </message>
    <message>
        <source>Look at the tension that was entered, and at the strength and modulus of the material.</source>
        <translation>Den eingegebenen Zug ansehen, und Festigkeit und E-Modul des Materials.</translation>
    </message>
    <message>
        <source>Look at the unit and at the decimal mark.</source>
        <translation>Die Einheit und das Dezimalzeichen ansehen.</translation>
    </message>
    <message>
        <source>Look at the unit and the decimal mark, and read it again.</source>
        <translation>Die Einheit und das Dezimalzeichen ansehen und neu ablesen.</translation>
    </message>
    <message>
        <source>Look at the unit and the decimal mark, and read it again. If it does show this, the press's profile is wrong: note it, and have it put right.</source>
        <translation>Die Einheit und das Dezimalzeichen ansehen und neu ablesen. Zeigt es das wirklich an, ist das Profil der Maschine falsch: notieren und berichtigen lassen.</translation>
    </message>
    <message>
        <source>Look at the whole and at each layer, and correct the figure that is wrong.</source>
        <translation>Das Ganze und jede Schicht ansehen und die falsche Zahl berichtigen.</translation>
    </message>
    <message>
        <source>Look at what happened, then go on.</source>
        <translation>Ansehen, was geschehen ist, dann weitermachen.</translation>
    </message>
    <message>
        <source>Look at what was measured, at the unit and at the decimal point, and type the value again.</source>
        <translation>Ansehen, was gemessen wurde, dazu Einheit und Dezimalzeichen, und den Wert neu eintippen.</translation>
    </message>
    <message>
        <source>Look at which ring or unit was read, and type the value again.</source>
        <translation>Ansehen, welcher Skalenring oder welche Einheit abgelesen wurde, und den Wert neu eintippen.</translation>
    </message>
    <message>
        <source>Look for a brake that drags or a gauge that does not stand at nought, and pull again.</source>
        <translation>Nach schleifender Bremse oder einer Anzeige sehen, die nicht auf null steht, und neu ziehen.</translation>
    </message>
    <message>
        <source>Look for a newer copy of the logbook; restore it from a backup.</source>
        <translation>Nach einer neueren Kopie des Protokollbuchs suchen; es aus einer Sicherung wiederherstellen.</translation>
    </message>
    <message>
        <source>Look for a newer copy or the mirror before anybody goes on in the restored one, and keep what was set aside.</source>
        <translation>Nach einer neueren Kopie oder dem Spiegel suchen, bevor jemand im Wiederhergestellten fortsetzt, und das Beiseitegelegte aufbewahren.</translation>
    </message>
    <message>
        <source>Look for a slack web before starting again. A smaller roll runs on less; running slower changes nothing, since the press slows no more gently from it.</source>
        <translation>Vor dem Wiederanlauf nach loser Bahn sehen. Eine kleinere Rolle läuft weniger nach; langsamer fahren ändert nichts, denn die Maschine bremst daraus nicht sanfter.</translation>
    </message>
    <message>
        <source>Look for it in the logbook of the PC at the press where it was printed.</source>
        <translation>Im Protokollbuch des PCs an der Maschine suchen, an der es gedruckt wurde.</translation>
    </message>
    <message>
        <source>Look for them in the logbook where the run was sealed, or restore that from a backup.</source>
        <translation>Im Protokollbuch suchen, in dem der Durchgang versiegelt wurde, oder dieses aus einer Sicherung wiederherstellen.</translation>
    </message>
    <message>
        <source>Look it up in the list of runs; a run has a seal only once it has ended and was signed off.</source>
        <translation>In der Liste der Durchgänge nachsehen; ein Durchgang hat erst ein Siegel, wenn er beendet ist und abgezeichnet wurde.</translation>
    </message>
    <message>
        <source>Look round the press, then reset.</source>
        <translation>Um die Maschine herum sehen, dann zurücksetzen.</translation>
    </message>
    <message>
        <source>Look that it is meant. The maker's range, entered with the material, would be better.</source>
        <translation>Prüfen, ob es so gemeint ist. Der Bereich des Herstellers, beim Material eingegeben, wäre besser.</translation>
    </message>
    <message>
        <source>Look that the slitter is threaded so: each rewind's tension goes by the lanes that it winds.</source>
        <translation>Prüfen, ob der Längsschneider so eingezogen ist: Der Zug jeder Aufwicklung richtet sich nach den Streifen, die sie wickelt.</translation>
    </message>
    <message>
        <source>Look there for scuffs and wander, and run slower if you see them. A narrow web keeps more than is reckoned.</source>
        <translation>Dort auf Scheuerstellen und Verlaufen achten und bei deren Auftreten langsamer fahren. Eine schmale Bahn behält mehr als berechnet.</translation>
    </message>
    <message>
        <source>Look up the id of whoever practised.</source>
        <translation>Die Kennung dessen nachsehen, der geübt hat.</translation>
    </message>
    <message>
        <source>Look whether settings and forces stand in the right rows, and whether the brake is worn, oiled or stuck.</source>
        <translation>Sehen, ob Einstellungen und Kräfte in den richtigen Zeilen stehen und ob die Bremse verschlissen, verölt oder fest ist.</translation>
    </message>
    <message>
        <source>Look whether the core still goes on the shaft and the roll runs round; else take another.</source>
        <translation>Prüfen, ob die Hülse noch auf die Welle geht und die Rolle rund läuft; sonst eine andere nehmen.</translation>
    </message>
    <message>
        <source>Look whether the label has a second bar code, and scan that too.</source>
        <translation>Prüfen, ob das Etikett einen zweiten Strichcode hat, und diesen auch scannen.</translation>
    </message>
    <message>
        <source>Look which side of the web is printed where it arrives.</source>
        <translation>Ansehen, welche Seite der Bahn bedruckt ist, wo sie ankommt.</translation>
    </message>
    <message>
        <source>Look which side of the web lies outside on the roll, and enter it.</source>
        <translation>Ansehen, welche Seite der Bahn auf der Rolle außen liegt, und sie eingeben.</translation>
    </message>
    <message>
        <source>Look which way this roller turns when the web runs forward, and correct its turn.</source>
        <translation>Ansehen, wie herum diese Walze dreht, wenn die Bahn vorwärts läuft, und ihre Drehrichtung berichtigen.</translation>
    </message>
    <message>
        <source>Low air lets brakes, nips and shafts go when you need them.</source>
        <translation>Zu wenig Luft lässt Bremsen, Klemmwalzen und Wellen los, wenn Sie sie brauchen.</translation>
    </message>
    <message>
        <source>Lower it clear</source>
        <translation>Freifahren nach unten</translation>
    </message>
    <message>
        <source>Lower quartile</source>
        <translation>Unteres Quartil</translation>
    </message>
    <message>
        <source>Main disconnect</source>
        <translation>Hauptschalter</translation>
    </message>
    <message>
        <source>Make it two steps: hands out and the stop given up, then the movement.</source>
        <translation>Zwei Schritte daraus machen: Hände heraus und Halt aufgehoben, dann die Bewegung.</translation>
    </message>
    <message>
        <source>Make that folder first or put its disk in, or choose another name.</source>
        <translation>Zuerst jenen Ordner anlegen oder seine Platte einstecken, oder einen anderen Namen wählen.</translation>
    </message>
    <message>
        <source>Make the folder first, or choose another one.</source>
        <translation>Zuerst den Ordner anlegen oder einen anderen wählen.</translation>
    </message>
    <message>
        <source>Make the picture smaller, or attach the part that matters.</source>
        <translation>Bild verkleinern, oder den Teil anhängen, auf den es ankommt.</translation>
    </message>
    <message>
        <source>Make the press safe, say so, and resume the run.</source>
        <translation>Die Maschine sicher machen, es sagen und den Durchgang wieder aufnehmen.</translation>
    </message>
    <message>
        <source>Make two places of it, each where one stands for its steps.</source>
        <translation>Zwei Standorte daraus machen, jeden dort, wo man für seine Schritte steht.</translation>
    </message>
    <message>
        <source>Mark the middle of the lead edge; it makes centring quick.</source>
        <translation>Die Mitte der Bahnvorderkante markieren; dann geht das Zentrieren schnell.</translation>
    </message>
    <message>
        <source>Mass of the roll with its core</source>
        <translation>Masse der Rolle mit ihrer Hülse</translation>
    </message>
    <message>
        <source>Mass of the web</source>
        <translation>Masse der Bahn</translation>
    </message>
    <message>
        <source>Measure from mark to mark, and type the unit with it.</source>
        <translation>Von Marke zu Marke messen und die Einheit mit eingeben.</translation>
    </message>
    <message>
        <source>Measure from the inner face that measure_from names to the middle of the web.</source>
        <translation>Von der Innenseite, die measure_from nennt, bis zur Mitte der Bahn messen.</translation>
    </message>
    <message>
        <source>Measure it against the web's edge with a square.</source>
        <translation>Mit einem Anschlagwinkel gegen die Bahnkante messen.</translation>
    </message>
    <message>
        <source>Measure straight across and type the diameter.</source>
        <translation>Gerade hinüber messen und den Durchmesser eintippen.</translation>
    </message>
    <message>
        <source>Measure straight across the roll and type it with its unit.</source>
        <translation>Gerade über die Rolle messen und das Maß mit seiner Einheit eintippen.</translation>
    </message>
    <message>
        <source>Measure straight across the roll's face, and type the figure with its unit.</source>
        <translation>Gerade über die Stirnseite der Rolle messen und die Zahl mit ihrer Einheit eintippen.</translation>
    </message>
    <message>
        <source>Measure straight across the roll's face, not round it. If that is right, look whether label and material are this roll's.</source>
        <translation>Gerade über die Stirnseite der Rolle messen, nicht rundherum. Stimmt das Maß, prüfen, ob Etikett und Material zu dieser Rolle gehören.</translation>
    </message>
    <message>
        <source>Measure straight across the roll's face. If %1 is the way round, the diameter is %2.</source>
        <translation>Gerade über die Stirnseite der Rolle messen. Ist %1 der Umfang, so ist der Durchmesser %2.</translation>
    </message>
    <message>
        <source>Measure straight across the roll's face: if %1 is the way round, the diameter is %2. If %1 is right, correct the roll's file.</source>
        <translation>Gerade über die Stirnseite der Rolle messen: Ist %1 der Umfang, so ist der Durchmesser %2. Stimmt %1, die Datei der Rolle berichtigen.</translation>
    </message>
    <message>
        <source>Measure straight across the roll, not round it, and enter both anew.</source>
        <translation>Gerade über die Rolle messen, nicht rundherum, und beides neu eingeben.</translation>
    </message>
    <message>
        <source>Measure straight across the roll, not round it. If it is right, correct what was measured first.</source>
        <translation>Gerade über die Rolle messen, nicht rundherum. Stimmt es, die frühere Messung berichtigen.</translation>
    </message>
    <message>
        <source>Measure straight across what is left. Where nothing is, take another roll.</source>
        <translation>Gerade über das messen, was übrig ist. Wo nichts ist, eine andere Rolle nehmen.</translation>
    </message>
    <message>
        <source>Measure the diameter again, and check core, wall and material.</source>
        <translation>Den Durchmesser neu messen, und Hülse, Wandung und Material prüfen.</translation>
    </message>
    <message>
        <source>Measure the hole once; enter %1 if that is what it measures.</source>
        <translation>Das Loch einmal messen; %1 eingeben, wenn es so viel misst.</translation>
    </message>
    <message>
        <source>Measure the hole, the part that goes on the shaft; enter %1 if that is it.</source>
        <translation>Das Loch messen, den Teil, der auf die Welle geht; %1 eingeben, wenn es das ist.</translation>
    </message>
    <message>
        <source>Measure the roll and its core again.</source>
        <translation>Die Rolle und ihre Hülse neu messen.</translation>
    </message>
    <message>
        <source>Measure the roll, and enter what you measured.</source>
        <translation>Die Rolle messen und eingeben, was gemessen wurde.</translation>
    </message>
    <message>
        <source>Measure the roll. If the figure is right, place guides and sensors by the roll's width.</source>
        <translation>Die Rolle messen. Stimmt die Zahl, Bahnlaufregler und Sensoren nach der Breite der Rolle stellen.</translation>
    </message>
    <message>
        <source>Measure the wall once for each supplier and enter it as core_wall.</source>
        <translation>Die Wandung für jeden Lieferanten einmal messen und als core_wall eingeben.</translation>
    </message>
    <message>
        <source>Measure to the middle of the roll.</source>
        <translation>Bis zur Mitte der Rolle messen.</translation>
    </message>
    <message>
        <source>Measure to the web's edge; both edges together prove the centre.</source>
        <translation>Bis zur Bahnkante messen; beide Kanten zusammen beweisen die Mitte.</translation>
    </message>
    <message>
        <source>Measure twice at right angles and take the mean; a tape round the roll gives the circumference, not this.</source>
        <translation>Zweimal im rechten Winkel messen und den Mittelwert nehmen; ein Band um die Rolle ergibt den Umfang, nicht dies.</translation>
    </message>
    <message>
        <source>Measured after the roll is retained: that moves it.</source>
        <translation>Gemessen, nachdem die Rolle gesichert ist: Das Sichern verschiebt sie.</translation>
    </message>
    <message>
        <source>Measured from the inner face of the %1, after the roll is retained: that moves it.</source>
        <translation>Gemessen von der Innenseite der %1, nachdem die Rolle gesichert ist: Das Sichern verschiebt sie.</translation>
    </message>
    <message>
        <source>Measured over ten on the web let go, which is shorter by what the tension stretched it. Off this says undercut, tape or another tension than set.</source>
        <translation>Über zehn an der entlasteten Bahn gemessen, die um das kürzer ist, was der Zug sie gedehnt hat. Eine Abweichung weist auf Unterschnitt, Klebeband oder einen anderen als den eingestellten Zug hin.</translation>
    </message>
    <message>
        <source>Measured over ten on the web let go. How far this web stretches is not known: it may be shorter by that. Off this says undercut, tape or too much tension.</source>
        <translation>Über zehn an der entlasteten Bahn gemessen. Wie weit sich diese Bahn dehnt, ist nicht bekannt: Sie kann um so viel kürzer sein. Eine Abweichung weist auf Unterschnitt, Klebeband oder zu viel Zug hin.</translation>
    </message>
    <message>
        <source>Median</source>
        <translation>Median</translation>
    </message>
    <message>
        <source>Mend the job's tension, or the material's if the maker says more.</source>
        <translation>Den Zug des Auftrags berichtigen, oder den des Materials, wenn der Hersteller mehr angibt.</translation>
    </message>
    <message>
        <source>Mend their unit, or the name.</source>
        <translation>Ihre Einheit oder den Namen berichtigen.</translation>
    </message>
    <message>
        <source>Mend them, or the figure of the plate or the policy row.</source>
        <translation>Sie berichtigen, oder die Zahl des Typenschilds oder der Vorgabezeile.</translation>
    </message>
    <message>
        <source>Mend this line; text stands between quotes, a table's name between brackets.</source>
        <translation>Diese Zeile berichtigen; Text steht zwischen Anführungszeichen, der Name einer Tabelle in Klammern.</translation>
    </message>
    <message>
        <source>Minutes, without what was away</source>
        <translation>Minuten, ohne Abwesenheit</translation>
    </message>
    <message>
        <source>Minutes: half of the runs lie within the bar, the line is the median</source>
        <translation>Minuten: Die Hälfte der Durchgänge liegt im Balken, der Strich ist der Median</translation>
    </message>
    <message>
        <source>More than this: look upstream before you touch the guide.</source>
        <translation>Mehr als dies: weiter vorn im Bahnweg nachsehen, bevor der Bahnlaufregler angerührt wird.</translation>
    </message>
    <message>
        <source>More was named than there was.</source>
        <translation>Es wurde mehr genannt, als da war.</translation>
    </message>
    <message>
        <source>More were counted than there are.</source>
        <translation>Es wurden mehr gezählt, als es gibt.</translation>
    </message>
    <message>
        <source>Mount and hold it first, or let it down and repeat the stage. Then hand over.</source>
        <translation>Erst aufsetzen und halten, oder ablassen und den Abschnitt wiederholen. Dann übergeben.</translation>
    </message>
    <message>
        <source>Move a little</source>
        <translation>Ein wenig bewegen</translation>
    </message>
    <message>
        <source>Move a short way and stand</source>
        <translation>Ein kurzes Stück bewegen und stehen bleiben</translation>
    </message>
    <message>
        <source>Move it forward, or write in late why it can only be done there.</source>
        <translation>Nach vorn verschieben oder in late schreiben, warum es erst dort gemacht werden kann.</translation>
    </message>
    <message>
        <source>Move it into the first third of the span, as near to the guide as it will go.</source>
        <translation>In das erste Drittel der freien Bahnlänge versetzen, so nah wie möglich an den Bahnlaufregler.</translation>
    </message>
    <message>
        <source>Move it slowly, as long as it is held.</source>
        <translation>Langsam bewegen, solange gehalten wird.</translation>
    </message>
    <message>
        <source>Move slowly</source>
        <translation>Langsam bewegen</translation>
    </message>
    <message>
        <source>Move slowly, as long as it is held</source>
        <translation>Langsam bewegen, solange gehalten</translation>
    </message>
    <message>
        <source>Move the call to the end of its stage.</source>
        <translation>Die Meldung ans Ende ihres Abschnitts verschieben.</translation>
    </message>
    <message>
        <source>N = s / i, rounded up to whole presses</source>
        <translation>N = s / i, auf ganze Tastendrücke aufgerundet</translation>
    </message>
    <message>
        <source>NEWER RECORDS ARE NOT IN WHAT WAS RESTORED: it holds %1 seals, and what lay there before holds %2. It was kept as %3.</source>
        <translation>NEUERE AUFZEICHNUNGEN WAREN NICHT IM WIEDERHERGESTELLTEN: Es enthält %1 Siegel, und was vorher dort lag, enthält %2. Es wurde als %3 aufbewahrt.</translation>
    </message>
    <message>
        <source>Name a file that is not there yet.</source>
        <translation>Eine Datei nennen, die es noch nicht gibt.</translation>
    </message>
    <message>
        <source>Name a finished set-up of this press.</source>
        <translation>Ein beendetes Einrichten dieser Maschine nennen.</translation>
    </message>
    <message>
        <source>Name a stage, or a stage and a place of it: splice, threading.lift.</source>
        <translation>Einen Abschnitt nennen, oder Abschnitt und Platz: splice, threading.lift.</translation>
    </message>
    <message>
        <source>Name a station whose file says how far it goes.</source>
        <translation>Eine Station nennen, deren Datei sagt, wie weit er geht.</translation>
    </message>
    <message>
        <source>Name a step and what it should be, or write what is to be put right.</source>
        <translation>Einen Schritt nennen und was er sein soll, oder schreiben, was in Ordnung zu bringen ist.</translation>
    </message>
    <message>
        <source>Name a step as stage.place.step, and its item.</source>
        <translation>Einen Schritt als Abschnitt.Platz.Schritt nennen, und sein Teil.</translation>
    </message>
    <message>
        <source>Name a zone with one.</source>
        <translation>Eine Zone nennen, die eine hat.</translation>
    </message>
    <message>
        <source>Name at least one in its key in: full, next_roll, re_web or restart.</source>
        <translation>Mindestens eines in seinem Schlüssel in nennen: full, next_roll, re_web oder restart.</translation>
    </message>
    <message>
        <source>Name every observed set-up once.</source>
        <translation>Jedes beobachtete Einrichten einmal nennen.</translation>
    </message>
    <message>
        <source>Name one of its file.</source>
        <translation>Einen aus ihrer Datei nennen.</translation>
    </message>
    <message>
        <source>Name one that it knows, or take that substrate in first.</source>
        <translation>Einen nennen, den es kennt, oder diesen Bedruckstoff zuerst einlesen.</translation>
    </message>
    <message>
        <source>Name the roller where this zone's tension ends.</source>
        <translation>Die Walze nennen, an der der Zug dieser Zone endet.</translation>
    </message>
    <message>
        <source>Name the roller where this zone's tension ends; the zone is left out until then.</source>
        <translation>Die Walze nennen, an der der Zug dieser Zone endet; bis dahin bleibt die Zone weg.</translation>
    </message>
    <message>
        <source>Name the sheet too, like %1, or write it in one of: %2.</source>
        <translation>Auch den Bogen nennen, wie %1, oder in einer dieser Einheiten schreiben: %2.</translation>
    </message>
    <message>
        <source>Name the target it is judged against, or make it a step that is confirmed.</source>
        <translation>Den Sollwert nennen, an dem sie beurteilt wird, oder einen Schritt daraus machen, der bestätigt wird.</translation>
    </message>
    <message>
        <source>Neither another PIN nor another passphrase was chosen.</source>
        <translation>Weder eine andere PIN noch eine andere Passphrase wurde gewählt.</translation>
    </message>
    <message>
        <source>Newest</source>
        <translation>Neueste</translation>
    </message>
    <message>
        <source>Nine points in a row are on one side of the centre.</source>
        <translation>Neun Punkte in Folge liegen auf einer Seite der Mitte.</translation>
    </message>
    <message>
        <source>Nip on %1</source>
        <translation>Klemmwalze auf %1</translation>
    </message>
    <message>
        <source>No adapter that fits this core was used.</source>
        <translation>Es wurde kein Adapter benutzt, der zu dieser Hülse passt.</translation>
    </message>
    <message>
        <source>No control of this press has the role %1: its label is never shown.</source>
        <translation>Kein Bedienteil dieser Maschine hat die Funktion %1: Seine Beschriftung wird nie gezeigt.</translation>
    </message>
    <message>
        <source>No copy could be made; the system says: %1.</source>
        <translation>Es konnte keine Kopie gemacht werden; das System meldet: %1.</translation>
    </message>
    <message>
        <source>No copy of %1 can be kept in %2: the folder takes no files, or not from this user.</source>
        <translation>Von %1 kann in %2 keine Kopie aufbewahrt werden: Der Ordner nimmt keine Dateien auf, oder nicht von diesem Benutzer.</translation>
    </message>
    <message>
        <source>No copy of %1 could be made in %2: %3</source>
        <translation>Von %1 konnte in %2 keine Kopie gemacht werden: %3</translation>
    </message>
    <message>
        <source>No copy of %1 was kept, because it is not in order (%2, %3).</source>
        <translation>Von %1 wurde keine Kopie aufbewahrt, weil es nicht in Ordnung ist (%2, %3).</translation>
    </message>
    <message>
        <source>No edition of press, job, substrate or procedure was sealed around then: look at the press itself.</source>
        <translation>Um diese Zeit wurde keine Ausgabe von Maschine, Auftrag, Bedruckstoff oder Ablauf versiegelt: die Maschine selbst ansehen.</translation>
    </message>
    <message>
        <source>No emergency stop was pressed while the press moved.</source>
        <translation>Es wurde kein Not-Halt gedrückt, während die Maschine lief.</translation>
    </message>
    <message>
        <source>No lesson is going on.</source>
        <translation>Es läuft keine Übung.</translation>
    </message>
    <message>
        <source>No logbook can be kept where %1 would lie: two programs could write in it at once. The system says: %2.</source>
        <translation>Kein Protokollbuch kann dort liegen, wo %1 wäre: Zwei Programme könnten zugleich darin schreiben. Das System meldet: %2.</translation>
    </message>
    <message>
        <source>No logbook is open.</source>
        <translation>Kein Protokollbuch ist offen.</translation>
    </message>
    <message>
        <source>No longer in force. %1</source>
        <translation>Nicht mehr gültig. %1</translation>
    </message>
    <message>
        <source>No maintained stop is named for this place: lock the isolator by your site's procedure and say so before any hand goes in.</source>
        <translation>Für diesen Standort ist kein bleibender Halt benannt: den Trennschalter nach Betriebsanweisung abschließen und das sagen, bevor eine Hand hineingreift.</translation>
    </message>
    <message>
        <source>No nip is closed, so nothing draws the web.</source>
        <translation>Kein Einzugsspalt ist geschlossen, also zieht nichts die Bahn.</translation>
    </message>
    <message>
        <source>No outer wraps were taken off the roll.</source>
        <translation>Von der Rolle wurden keine Außenlagen abgenommen.</translation>
    </message>
    <message>
        <source>No pattern that chance seldom makes.</source>
        <translation>Kein Muster, das der Zufall selten macht.</translation>
    </message>
    <message>
        <source>No reading has moved away and stayed there.</source>
        <translation>Keine Ablesung hat sich auf Dauer verschoben.</translation>
    </message>
    <message>
        <source>No register adjuster of station %1 is known.</source>
        <translation>Von Station %1 ist keine Registerverstellung bekannt.</translation>
    </message>
    <message>
        <source>No roll hangs on the shaft.</source>
        <translation>Auf der Welle hängt keine Rolle.</translation>
    </message>
    <message>
        <source>No roll is chosen yet.</source>
        <translation>Noch keine Rolle ist gewählt.</translation>
    </message>
    <message>
        <source>No roll lies on the lift.</source>
        <translation>Auf dem Lift liegt keine Rolle.</translation>
    </message>
    <message>
        <source>No run is open here.</source>
        <translation>Hier ist kein Durchgang offen.</translation>
    </message>
    <message>
        <source>No run was opened yet.</source>
        <translation>Noch wurde kein Durchgang geöffnet.</translation>
    </message>
    <message>
        <source>No screen is so far from what it says.</source>
        <translation>Kein Bildschirm liegt so weit neben seiner Angabe.</translation>
    </message>
    <message>
        <source>No sealed run was chosen.</source>
        <translation>Kein versiegelter Durchgang gewählt.</translation>
    </message>
    <message>
        <source>No step of this kind of run gives it. Abandon this run and begin a full set-up.</source>
        <translation>Kein Schritt dieser Art von Durchgang ergibt es. Diesen Durchgang abbrechen und eine volle Einrichtung beginnen.</translation>
    </message>
    <message>
        <source>No stop is held.</source>
        <translation>Kein Halt wird gehalten.</translation>
    </message>
    <message>
        <source>No stop was held while somebody worked at the web.</source>
        <translation>Es wurde kein Halt gehalten, während jemand an der Bahn arbeitete.</translation>
    </message>
    <message>
        <source>No straight web joins roller %1 to roller %2.</source>
        <translation>Keine gerade Bahn verbindet Walze %1 mit Walze %2.</translation>
    </message>
    <message>
        <source>No substrate with the id "%1" stands in this file.</source>
        <translation>In dieser Datei steht kein Bedruckstoff mit der Kennung „%1“.</translation>
    </message>
    <message>
        <source>No taper is set: the tension stays as it began.</source>
        <translation>Kein Zugabfall ist eingestellt: Der Zug bleibt, wie er begann.</translation>
    </message>
    <message>
        <source>Nobody accepts a value outside its window that they read themselves.</source>
        <translation>Niemand nimmt einen Wert außerhalb seines Fensters an, den er selbst abgelesen hat.</translation>
    </message>
    <message>
        <source>Nobody can have set %1: this control begins at %2.</source>
        <translation>Niemand kann %1 eingestellt haben: Dieses Bedienteil beginnt bei %2.</translation>
    </message>
    <message>
        <source>Nobody can have set %1: this control goes up to %2.</source>
        <translation>Niemand kann %1 eingestellt haben: Dieses Bedienteil reicht bis %2.</translation>
    </message>
    <message>
        <source>Nobody countersigns a run that they sign themselves.</source>
        <translation>Niemand unterschreibt einen Durchgang mit, den er selbst unterschreibt.</translation>
    </message>
    <message>
        <source>Nobody gives back a press that they withdrew themselves.</source>
        <translation>Niemand gibt eine Maschine wieder frei, die er selbst gesperrt hat.</translation>
    </message>
    <message>
        <source>Nobody has entered the wall of this roll's core: it is taken to be %1 to %2 thick. Length and mass are known so much the less, and the automatic stop is set for the thickest.</source>
        <translation>Niemand hat die Wandung der Hülse dieser Rolle eingegeben: Sie wird mit %1 bis %2 Dicke angenommen. Länge und Masse sind um so viel weniger genau bekannt, und der automatische Halt ist für die dickste eingestellt.</translation>
    </message>
    <message>
        <source>Nobody has said that %1 may sign alone at the press %2.</source>
        <translation>Niemand hat gesagt, dass %1 an der Maschine %2 allein unterschreiben darf.</translation>
    </message>
    <message>
        <source>Nobody has said that blades and knives are covered.</source>
        <translation>Niemand hat gesagt, dass Klingen und Messer abgedeckt sind.</translation>
    </message>
    <message>
        <source>Nobody has said that every emergency stop is released.</source>
        <translation>Niemand hat gesagt, dass jeder Not-Halt entriegelt ist.</translation>
    </message>
    <message>
        <source>Nobody has said that every guard is closed.</source>
        <translation>Niemand hat gesagt, dass jede Schutzeinrichtung geschlossen ist.</translation>
    </message>
    <message>
        <source>Nobody has said that everybody is clear of the press.</source>
        <translation>Niemand hat gesagt, dass alle außer Reichweite der Maschine sind.</translation>
    </message>
    <message>
        <source>Nobody has said that stored energy is let off or held.</source>
        <translation>Niemand hat gesagt, dass gespeicherte Energie abgelassen oder gesichert ist.</translation>
    </message>
    <message>
        <source>Nobody has said that the isolator is locked by your site's procedure.</source>
        <translation>Niemand hat gesagt, dass der Trennschalter nach Betriebsanweisung abgeschlossen ist.</translation>
    </message>
    <message>
        <source>Nobody has said that the lamps are parked.</source>
        <translation>Niemand hat gesagt, dass die Lampen geparkt sind.</translation>
    </message>
    <message>
        <source>Nobody has said that the stations are off impression.</source>
        <translation>Niemand hat gesagt, dass die Druckwerke abgestellt sind.</translation>
    </message>
    <message>
        <source>Nobody here has the id %1.</source>
        <translation>Niemand hier hat die Kennung %1.</translation>
    </message>
    <message>
        <source>Nobody holds the press stopped.</source>
        <translation>Niemand hält die Maschine im Halt.</translation>
    </message>
    <message>
        <source>Nobody in service here has the id %1.</source>
        <translation>Niemand im Dienst hat hier die Kennung %1.</translation>
    </message>
    <message>
        <source>Nobody is in the press</source>
        <translation>Niemand ist in der Maschine</translation>
    </message>
    <message>
        <source>Nobody is signed in.</source>
        <translation>Niemand ist angemeldet.</translation>
    </message>
    <message>
        <source>Nobody may pass this step by.</source>
        <translation>Niemand darf diesen Schritt übergehen.</translation>
    </message>
    <message>
        <source>Nobody of this name holds a stop: "%1".</source>
        <translation>Niemand dieses Namens hält einen Halt: „%1“.</translation>
    </message>
    <message>
        <source>Nobody opens their own door again: it takes two.</source>
        <translation>Niemand öffnet sich selbst wieder die Tür: Dazu braucht es zwei.</translation>
    </message>
    <message>
        <source>Nobody with the id %1 is competent at the press %2.</source>
        <translation>Niemand mit der Kennung %1 ist an der Maschine %2 befähigt.</translation>
    </message>
    <message>
        <source>None needed; the diameters are used: no label says a length.</source>
        <translation>Keine nötig; die Durchmesser werden verwendet: Kein Etikett nennt eine Länge.</translation>
    </message>
    <message>
        <source>None needed; the label is used: nobody has opened the roll.</source>
        <translation>Keine nötig; das Etikett wird verwendet: Niemand hat die Rolle geöffnet.</translation>
    </message>
    <message>
        <source>None of the other copies in %1 that would stay is in order, so no older one was removed.</source>
        <translation>Keine der anderen Kopien in %1, die bleiben würden, ist in Ordnung; also wurde keine ältere entfernt.</translation>
    </message>
    <message>
        <source>Not a record until it has been typed in and sealed.</source>
        <translation>Keine Aufzeichnung, bis es eingetippt und versiegelt ist.</translation>
    </message>
    <message>
        <source>Not all the calipers of the brake of %1 are engaged.</source>
        <translation>Nicht alle Bremszangen von %1 sind zugeschaltet.</translation>
    </message>
    <message>
        <source>Not everybody read every part as often.</source>
        <translation>Nicht jeder hat jedes Teil gleich oft abgelesen.</translation>
    </message>
    <message>
        <source>Not reviewed</source>
        <translation>Nicht geprüft</translation>
    </message>
    <message>
        <source>Not said for this movement: %1.</source>
        <translation>Für diese Bewegung nicht gesagt: %1.</translation>
    </message>
    <message>
        <source>Not said: %1</source>
        <translation>Ohne Angabe: %1</translation>
    </message>
    <message>
        <source>Not sealed: this is a working copy of a run that is still open.</source>
        <translation>Nicht versiegelt: Dies ist eine Arbeitskopie eines Durchgangs, der noch offen ist.</translation>
    </message>
    <message>
        <source>Not yet: a vital step was missed, and no sum makes up for that.</source>
        <translation>Noch nicht: Ein kritischer Schritt wurde versäumt, und das gleicht keine Summe aus.</translation>
    </message>
    <message>
        <source>Not yet: less than nine tenths are there. How long it took counts nothing.</source>
        <translation>Noch nicht: Es sind weniger als neun Zehntel da. Wie lange es dauerte, zählt nicht.</translation>
    </message>
    <message>
        <source>Nothing at this press can be wrong like that: %1.</source>
        <translation>An dieser Maschine kann nichts so falsch sein: %1.</translation>
    </message>
    <message>
        <source>Nothing before this step gives %1.</source>
        <translation>Nichts vor diesem Schritt ergibt %1.</translation>
    </message>
    <message>
        <source>Nothing can be put in the place of {%1} here.</source>
        <translation>Nichts kann hier an die Stelle von {%1} treten.</translation>
    </message>
    <message>
        <source>Nothing clamps the webs on the table.</source>
        <translation>Nichts klemmt die Bahnen auf dem Tisch fest.</translation>
    </message>
    <message>
        <source>Nothing happened that should not have.</source>
        <translation>Es geschah nichts, was nicht hätte geschehen sollen.</translation>
    </message>
    <message>
        <source>Nothing has to be done; send it back if you found something wrong.</source>
        <translation>Es muss nichts getan werden; zurückgeben, wenn etwas nicht stimmt.</translation>
    </message>
    <message>
        <source>Nothing has to be ended.</source>
        <translation>Es ist nichts zu beenden.</translation>
    </message>
    <message>
        <source>Nothing has to be given back.</source>
        <translation>Es muss nichts wieder freigegeben werden.</translation>
    </message>
    <message>
        <source>Nothing holds the two webs.</source>
        <translation>Nichts hält die beiden Bahnen.</translation>
    </message>
    <message>
        <source>Nothing in this file is called "%1".</source>
        <translation>In dieser Datei heißt nichts „%1“.</translation>
    </message>
    <message>
        <source>Nothing may hang on the cell while it is read.</source>
        <translation>Während des Ablesens darf nichts an der Kraftmessdose hängen.</translation>
    </message>
    <message>
        <source>Nothing of this procedure is called %1 on this press with this job and roll.</source>
        <translation>An dieser Maschine heißt mit diesem Auftrag und dieser Rolle nichts von diesem Ablauf %1.</translation>
    </message>
    <message>
        <source>Nothing of this roll can be run: it has %1 wraps, and %2 outer ones are to come off.</source>
        <translation>Nichts von dieser Rolle kann laufen: Sie hat %1 Lagen, und %2 Außenlagen sollen abgenommen werden.</translation>
    </message>
    <message>
        <source>Nothing of this roll can be run: of its %1 the outer wraps and the reserve of the automatic stop take all.</source>
        <translation>Nichts von dieser Rolle kann laufen: Von ihren %1 nehmen die Außenlagen und die Reserve des automatischen Halts alles.</translation>
    </message>
    <message>
        <source>Nothing sets the tension there.</source>
        <translation>Dort stellt nichts die Spannung ein.</translation>
    </message>
    <message>
        <source>Nothing stirs: the press has no power.</source>
        <translation>Nichts rührt sich: Die Maschine hat keinen Strom.</translation>
    </message>
    <message>
        <source>Nothing stopped the press before the end of the roll.</source>
        <translation>Nichts hielt die Maschine vor dem Ende der Rolle an.</translation>
    </message>
    <message>
        <source>Nothing to do.</source>
        <translation>Nichts zu tun.</translation>
    </message>
    <message>
        <source>Nothing was entered.</source>
        <translation>Es wurde nichts eingegeben.</translation>
    </message>
    <message>
        <source>Nothing was judged by both.</source>
        <translation>Beide haben nichts gemeinsam beurteilt.</translation>
    </message>
    <message>
        <source>Nothing was recorded. Start the program again; if it comes back, report it.</source>
        <translation>Es wurde nichts aufgezeichnet. Das Programm neu starten; kommt es wieder, melden.</translation>
    </message>
    <message>
        <source>Nothing was restored and nothing was changed. Choose another copy, or the mirror; tautweb verify says all that is wrong with this one.</source>
        <translation>Es wurde nichts wiederhergestellt und nichts geändert. Eine andere Kopie oder den Spiegel wählen; tautweb verify sagt alles, was an dieser falsch ist.</translation>
    </message>
    <message>
        <source>Nothing was scanned or typed.</source>
        <translation>Es wurde nichts gescannt oder eingetippt.</translation>
    </message>
    <message>
        <source>Notice: %1</source>
        <translation>Hinweis: %1</translation>
    </message>
    <message>
        <source>Now %1.</source>
        <translation>Jetzt %1.</translation>
    </message>
    <message>
        <source>Number of the chances</source>
        <translation>Nummer der Zufälle</translation>
    </message>
    <message>
        <source>Of a slip clutch: how much faster its input is than the empty core, as a share.</source>
        <translation>Einer Rutschkupplung: um wie viel schneller ihr Antrieb ist als die leere Hülse, als Anteil.</translation>
    </message>
    <message>
        <source>Of its base alone.</source>
        <translation>Nur ihres Trägers.</translation>
    </message>
    <message>
        <source>Of its cells, for each area.</source>
        <translation>Ihrer Näpfchen, je Fläche.</translation>
    </message>
    <message>
        <source>Of its surface, where it meets rollers.</source>
        <translation>Seiner Oberfläche, wo sie Walzen berührt.</translation>
    </message>
    <message>
        <source>Of its surface: more of it lets air out, so that it grips at speed.</source>
        <translation>Ihrer Oberfläche: Mehr lässt Luft entweichen, sodass sie auch schnell greift.</translation>
    </message>
    <message>
        <source>Of the ink as it is used.</source>
        <translation>Der Farbe, wie sie verwendet wird.</translation>
    </message>
    <message>
        <source>Of the last phase</source>
        <translation>In der letzten Phase</translation>
    </message>
    <message>
        <source>Of the others</source>
        <translation>Von den übrigen</translation>
    </message>
    <message>
        <source>Of the slowest tenth</source>
        <translation>Vom langsamsten Zehntel</translation>
    </message>
    <message>
        <source>Of the whole plate.</source>
        <translation>Der ganzen Platte.</translation>
    </message>
    <message>
        <source>Of those that are driven or whose inertia is known; a light idler has nothing to slip against.</source>
        <translation>Von den Walzen, die angetrieben sind oder deren Trägheit bekannt ist; an einer leichten Leitwalze kann die Bahn gegen nichts rutschen.</translation>
    </message>
    <message>
        <source>Of web on roller, where it is not the substrate's.</source>
        <translation>Der Bahn auf der Walze, wo es nicht die des Bedruckstoffs ist.</translation>
    </message>
    <message>
        <source>Of what turns with the roll: shaft, chucks, disc.</source>
        <translation>Dessen, was mit der Rolle dreht: Welle, Spannköpfe, Scheibe.</translation>
    </message>
    <message>
        <source>Off the line by</source>
        <translation>Abstand zur Geraden</translation>
    </message>
    <message>
        <source>Off this, the print is longer or shorter than the gear says, and the pressure wrong.</source>
        <translation>Weicht es ab, ist der Druck länger oder kürzer, als das Zahnrad sagt, und die Anpressung falsch.</translation>
    </message>
    <message>
        <source>Older readings are not shown: choose a time to see them.</source>
        <translation>Ältere Ablesungen sind nicht gezeigt: Zeitraum wählen, um sie zu sehen.</translation>
    </message>
    <message>
        <source>On a web this stiff draw does not set the tension. Set it by eye and by the neighbouring zones, from nothing upward until the web lies flat.</source>
        <translation>An einer so steifen Bahn bestimmt die Voreilung den Zug nicht. Nach Augenschein und nach den Nachbarzonen einstellen, von nichts aufwärts, bis die Bahn flach liegt.</translation>
    </message>
    <message>
        <source>On the finished roll the clutch takes %1, it may take %2.</source>
        <translation>An der fertigen Rolle nimmt die Kupplung %1 auf, zulässig sind %2.</translation>
    </message>
    <message>
        <source>On the largest roller of the main path. Grip begins to go when it reaches the roughness of both.</source>
        <translation>An der größten Walze des Hauptwegs. Die Haftung lässt nach, wenn sie die Rauheit beider erreicht.</translation>
    </message>
    <message>
        <source>On the way to this: %1.</source>
        <translation>Auf dem Weg dahin: %1.</translation>
    </message>
    <message>
        <source>One answer cannot fill several entries.</source>
        <translation>Eine Antwort kann nicht mehrere Einträge füllen.</translation>
    </message>
    <message>
        <source>One of the readings is not a number.</source>
        <translation>Eine der Ablesungen ist keine Zahl.</translation>
    </message>
    <message>
        <source>One of the values is not a number.</source>
        <translation>Einer der Werte ist keine Zahl.</translation>
    </message>
    <message>
        <source>One point is beyond the control limits.</source>
        <translation>Ein Punkt liegt außerhalb der Eingriffsgrenzen.</translation>
    </message>
    <message>
        <source>One press of the inch control moves the web %1, more than the guidance for set-up.</source>
        <translation>Ein Druck auf das Tipp-Bedienteil bewegt die Bahn um %1, mehr als die Leitlinie für das Einrichten.</translation>
    </message>
    <message>
        <source>One roll does it, however the length is measured.</source>
        <translation>Eine Rolle reicht, gleich wie die Länge gemessen wird.</translation>
    </message>
    <message>
        <source>One roll does it.</source>
        <translation>Eine Rolle reicht.</translation>
    </message>
    <message>
        <source>One turn of the plate cylinder prints so much web.</source>
        <translation>Eine Umdrehung des Plattenzylinders druckt so viel Bahn.</translation>
    </message>
    <message>
        <source>Only %1 signed runs read both the setting and the tension of this zone; %2 are the least.</source>
        <translation>Nur %1 abgezeichnete Durchgänge enthalten Einstellung und Bahnzug dieser Zone; mindestens %2 sind nötig.</translation>
    </message>
    <message>
        <source>Only a movement is said to be done in words of its own.</source>
        <translation>Nur eine Bewegung wird mit eigenen Worten als erledigt gesagt.</translation>
    </message>
    <message>
        <source>Only a supervisor accepts a value outside its window.</source>
        <translation>Nur eine Aufsicht nimmt einen Wert außerhalb seines Fensters an.</translation>
    </message>
    <message>
        <source>Only a supervisor countersigns a run.</source>
        <translation>Nur eine Aufsicht unterschreibt einen Durchgang mit.</translation>
    </message>
    <message>
        <source>Only one limit is given.</source>
        <translation>Nur eine Grenze ist angegeben.</translation>
    </message>
    <message>
        <source>Only the newest runs are counted here. Choose a time to see older ones.</source>
        <translation>Hier zählen nur die neuesten Durchgänge. Für ältere einen Zeitraum wählen.</translation>
    </message>
    <message>
        <source>Only the reading of a process value can be accepted outside its window.</source>
        <translation>Nur die Ablesung eines Prozesswerts kann außerhalb ihres Fensters angenommen werden.</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Öffnen</translation>
    </message>
    <message>
        <source>Open each run and look through its sheet first.</source>
        <translation>Zuerst jeden Durchgang öffnen und sein Einrichteblatt durchsehen.</translation>
    </message>
    <message>
        <source>Open it</source>
        <translation>Öffnen</translation>
    </message>
    <message>
        <source>Open it again; a supervisor can look up who is enrolled.</source>
        <translation>Noch einmal öffnen; eine Aufsicht kann nachsehen, wer eingetragen ist.</translation>
    </message>
    <message>
        <source>Open it and look through its sheet; then accept it with the others.</source>
        <translation>Ihn öffnen und sein Einrichteblatt durchsehen; dann mit den anderen annehmen.</translation>
    </message>
    <message>
        <source>Open it in the program, which keeps a copy of it and brings it up.</source>
        <translation>Im Programm öffnen; es behält eine Kopie und bringt es auf den neuen Aufbau.</translation>
    </message>
    <message>
        <source>Open it once as a user who may write there, or copy the file and its -journal to a folder of your own and open it there.</source>
        <translation>Einmal als Benutzer öffnen, der dort schreiben darf, oder die Datei und ihr -journal in einen eigenen Ordner kopieren und dort öffnen.</translation>
    </message>
    <message>
        <source>Open one, or start the program again.</source>
        <translation>Eines öffnen oder das Programm neu starten.</translation>
    </message>
    <message>
        <source>Open the file in a text editor and save it again as UTF-8.</source>
        <translation>Die Datei in einem Texteditor öffnen und als UTF-8 neu speichern.</translation>
    </message>
    <message>
        <source>Open the logbook with the program that wrote it.</source>
        <translation>Das Protokollbuch mit dem Programm öffnen, das es geschrieben hat.</translation>
    </message>
    <message>
        <source>Open the practice logbook.</source>
        <translation>Das Übungsbuch öffnen.</translation>
    </message>
    <message>
        <source>Open the practice press.</source>
        <translation>Die Übungsmaschine öffnen.</translation>
    </message>
    <message>
        <source>Open the shop's logbook.</source>
        <translation>Das Protokollbuch des Betriebs öffnen.</translation>
    </message>
    <message>
        <source>Open them</source>
        <translation>Öffnen</translation>
    </message>
    <message>
        <source>Operator</source>
        <translation>Bediener</translation>
    </message>
    <message>
        <source>Operator-side edge from the frame</source>
        <translation>Kante Bedienseite ab Seitenwand</translation>
    </message>
    <message>
        <source>Operator-side sensor from the frame</source>
        <translation>Sensor Bedienseite ab Seitenwand</translation>
    </message>
    <message>
        <source>Operator: this is what I saw and did</source>
        <translation>Bediener: Dies habe ich gesehen und getan</translation>
    </message>
    <message>
        <source>Others begin mirrors in %1 all the time, and none could be begun for this logbook.</source>
        <translation>In %1 beginnen ständig andere Spiegel, und für dieses Protokollbuch ließ sich keiner beginnen.</translation>
    </message>
    <message>
        <source>Out of order</source>
        <translation>In falscher Reihenfolge</translation>
    </message>
    <message>
        <source>Out of use since %1: %2</source>
        <translation>Gesperrt seit %1: %2</translation>
    </message>
    <message>
        <source>Outer diameter, measured</source>
        <translation>Außendurchmesser, gemessen</translation>
    </message>
    <message>
        <source>Outside</source>
        <translation>Außerhalb</translation>
    </message>
    <message>
        <source>Outside at first, by step</source>
        <translation>Zuerst außerhalb, je Schritt</translation>
    </message>
    <message>
        <source>Over the top</source>
        <translation>Von oben</translation>
    </message>
    <message>
        <source>PRACTICE</source>
        <translation>ÜBUNG</translation>
    </message>
    <message>
        <source>PRACTICE: nothing of this happened on a press</source>
        <translation>ÜBUNG: Nichts davon geschah an einer Maschine</translation>
    </message>
    <message>
        <source>PRESS WITHDRAWN: out of use until it is given back</source>
        <translation>MASCHINE GESPERRT: außer Betrieb, bis sie wieder freigegeben wird</translation>
    </message>
    <message>
        <source>Park it</source>
        <translation>Parken</translation>
    </message>
    <message>
        <source>Part of the torque goes into the roll itself. Below the limit the wraps wind soft: speed up more slowly.</source>
        <translation>Ein Teil des Drehmoments geht in die Rolle selbst. Unter der Grenze werden die Lagen weich gewickelt: langsamer beschleunigen.</translation>
    </message>
    <message>
        <source>Passed: nothing vital was missed, and nine tenths of the rest are there.</source>
        <translation>Bestanden: Nichts Kritisches wurde versäumt, und neun Zehntel des Übrigen sind da.</translation>
    </message>
    <message>
        <source>Patterns that chance seldom makes: %1.</source>
        <translation>Muster, die der Zufall selten macht: %1.</translation>
    </message>
    <message>
        <source>Patterns, newest first</source>
        <translation>Muster, neueste zuerst</translation>
    </message>
    <message>
        <source>People are enrolled already, so the next one is enrolled by a supervisor.</source>
        <translation>Es sind bereits Personen eingetragen; die nächste wird also von einer Aufsicht eingetragen.</translation>
    </message>
    <message>
        <source>Periodic checks</source>
        <translation>Wiederkehrende Prüfungen</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Person</translation>
    </message>
    <message>
        <source>Pictures and files</source>
        <translation>Bilder und Dateien</translation>
    </message>
    <message>
        <source>Pieces beside each other.</source>
        <translation>Stücke nebeneinander.</translation>
    </message>
    <message>
        <source>Pieces on one turn of the cylinder.</source>
        <translation>Stücke auf einer Umdrehung des Zylinders.</translation>
    </message>
    <message>
        <source>Pitch diameter for each tooth.</source>
        <translation>Teilkreisdurchmesser je Zahn.</translation>
    </message>
    <message>
        <source>Place and calibrate</source>
        <translation>Setzen und kalibrieren</translation>
    </message>
    <message>
        <source>Plan %1 rolls, or take a longer one.</source>
        <translation>%1 Rollen einplanen oder eine längere nehmen.</translation>
    </message>
    <message>
        <source>Plan the job with the press's speed.</source>
        <translation>Den Auftrag mit der Geschwindigkeit der Maschine planen.</translation>
    </message>
    <message>
        <source>Pp (spread of all)</source>
        <translation>Pp (Gesamtstreuung)</translation>
    </message>
    <message>
        <source>Pp, Ppk</source>
        <translation>Pp, Ppk</translation>
    </message>
    <message>
        <source>Ppk (the nearer limit)</source>
        <translation>Ppk (nähere Grenze)</translation>
    </message>
    <message>
        <source>Practice alone qualifies nobody. Who may work a press alone is said by a supervisor in the shop's logbook, for one press and until a day, after set-ups at that press that somebody watched. Who may lock out energy is for the site's own procedure and local law.</source>
        <translation>Übung allein befähigt niemanden. Wer allein an einer Maschine arbeiten darf, sagt eine Aufsicht im Protokollbuch des Betriebs, für eine Maschine und bis zu einem Tag, nach Einrichtungen an dieser Maschine, denen jemand zusah. Wer Energie wegschalten und sichern darf, sagen die Regeln des Betriebs und das örtliche Recht.</translation>
    </message>
    <message>
        <source>Practice is kept in a logbook of its own, never in the shop's.</source>
        <translation>Übung steht in einem eigenen Buch, nie in dem des Betriebs.</translation>
    </message>
    <message>
        <source>Practice qualifies nobody: competence stands in the shop's logbook.</source>
        <translation>Übung befähigt niemanden: Befähigung steht im Protokollbuch des Betriebs.</translation>
    </message>
    <message>
        <source>Press</source>
        <translation>Maschine</translation>
    </message>
    <message>
        <source>Presses of the inch control to draw it through</source>
        <translation>Tippdrücke, um sie durchzuziehen</translation>
    </message>
    <message>
        <source>Pretend emergency stop: %1</source>
        <translation>Not-Halt zum Schein: %1</translation>
    </message>
    <message>
        <source>Pretend to press it</source>
        <translation>Zum Schein drücken</translation>
    </message>
    <message>
        <source>Pretend to stop</source>
        <translation>Zum Schein anhalten</translation>
    </message>
    <message>
        <source>Procedure</source>
        <translation>Ablauf</translation>
    </message>
    <message>
        <source>Pull at another setting and enter both.</source>
        <translation>Bei einer anderen Einstellung ziehen und beide eingeben.</translation>
    </message>
    <message>
        <source>Pull at another setting, well apart from the first.</source>
        <translation>Bei einer anderen Einstellung ziehen, weit von der ersten entfernt.</translation>
    </message>
    <message>
        <source>Pull at settings further apart, or more often, and read the scale while the roll just turns.</source>
        <translation>Bei weiter auseinanderliegenden Einstellungen oder öfter ziehen und die Waage ablesen, während die Rolle gerade dreht.</translation>
    </message>
    <message>
        <source>Pulled hard by hand, the core turns on its shaft.</source>
        <translation>Mit der Hand fest gezogen, dreht sich die Hülse auf ihrer Welle.</translation>
    </message>
    <message>
        <source>Put a step of kind hold before it in its stage, in the kind of run %1 too, or need locked_out.</source>
        <translation>Davor in seinem Abschnitt einen Schritt der Art hold einfügen, auch bei der Art von Durchgang %1, oder locked_out verlangen.</translation>
    </message>
    <message>
        <source>Put a step that gives %1 before it, in the kind of run %2 too.</source>
        <translation>Davor einen Schritt einfügen, der %1 ergibt, auch bei der Art von Durchgang %2.</translation>
    </message>
    <message>
        <source>Put a step with ends = ["stop_held"] before it: everybody out, each holder gives the stop up.</source>
        <translation>Davor einen Schritt mit ends = ["stop_held"] einfügen: alle heraus, jeder hebt den eigenen Halt auf.</translation>
    </message>
    <message>
        <source>Put it in</source>
        <translation>Einstecken</translation>
    </message>
    <message>
        <source>Put it right and answer again, or have a supervisor accept the value.</source>
        <translation>In Ordnung bringen und neu antworten oder eine Aufsicht den Wert annehmen lassen.</translation>
    </message>
    <message>
        <source>Put it right and answer the step. If it cannot be done, withdraw the press or abandon the run.</source>
        <translation>In Ordnung bringen und den Schritt beantworten. Geht es nicht, die Maschine sperren oder den Durchgang abbrechen.</translation>
    </message>
    <message>
        <source>Put the adapter on both ends, keyed and locked, before the roll goes on.</source>
        <translation>Den Adapter an beiden Enden aufsetzen, formschlüssig und verriegelt, bevor die Rolle aufgesetzt wird.</translation>
    </message>
    <message>
        <source>Put the same file back under this name, then do the last thing again.</source>
        <translation>Dieselbe Datei unter diesem Namen zurücklegen, dann das Letzte noch einmal tun.</translation>
    </message>
    <message>
        <source>Put the stick in, connect to the other machine, or make the folder first.</source>
        <translation>Den Stick einstecken, mit dem anderen Rechner verbinden oder zuerst den Ordner anlegen.</translation>
    </message>
    <message>
        <source>Put the stick in, or connect to the other machine; the mirror then catches up by itself. Else choose another folder.</source>
        <translation>Den Stick einstecken oder mit dem anderen Rechner verbinden; dann holt der Spiegel von selbst auf. Sonst einen anderen Ordner wählen.</translation>
    </message>
    <message>
        <source>Put the whole of it between quotes, or take the mark out.</source>
        <translation>Das Ganze zwischen Anführungszeichen setzen oder das Zeichen herausnehmen.</translation>
    </message>
    <message>
        <source>Put the word between quotes, or take the character out.</source>
        <translation>Das Wort zwischen Anführungszeichen setzen oder das Zeichen herausnehmen.</translation>
    </message>
    <message>
        <source>Quantity</source>
        <translation>Menge</translation>
    </message>
    <message>
        <source>R5 of roll.stripped_diameter</source>
        <translation>R5 von roll.stripped_diameter</translation>
    </message>
    <message>
        <source>R6 of target:roll.length</source>
        <translation>R6 von target:roll.length</translation>
    </message>
    <message>
        <source>Raise it from below. It grows with the roll; see the schedule.</source>
        <translation>Von unten anheben. Der Wert wächst mit der Rolle; siehe die Tabelle der Änderungen.</translation>
    </message>
    <message>
        <source>Raise the roll</source>
        <translation>Rolle heben</translation>
    </message>
    <message>
        <source>Ratio</source>
        <translation>Verhältnis</translation>
    </message>
    <message>
        <source>Reached step by step: slack, swings and wrinkles show on the way.</source>
        <translation>Schrittweise erreicht: Durchhang, Schwankungen und Falten zeigen sich unterwegs.</translation>
    </message>
    <message>
        <source>Read</source>
        <translation>Abgelesen</translation>
    </message>
    <message>
        <source>Read at %1 settings or more, well apart.</source>
        <translation>Bei %1 oder mehr Einstellungen ablesen, weit auseinander.</translation>
    </message>
    <message>
        <source>Read it again, and type it without a minus sign.</source>
        <translation>Neu ablesen und ohne Minuszeichen eintippen.</translation>
    </message>
    <message>
        <source>Read it on a finer instrument, or one whose range fits this value better.</source>
        <translation>An einem feineren Messgerät ablesen oder an einem, dessen Bereich besser zu diesem Wert passt.</translation>
    </message>
    <message>
        <source>Read it, verify it, and restore it from its mirror or a copy that is in order.</source>
        <translation>Lesen, verifizieren und aus dem Spiegel oder einer Kopie wiederherstellen, die in Ordnung ist.</translation>
    </message>
    <message>
        <source>Read one more decimal, or the gauge is too coarse to be studied so.</source>
        <translation>Eine Stelle mehr ablesen, sonst ist das Messgerät für eine solche Studie zu grob.</translation>
    </message>
    <message>
        <source>Read the instrument to finer steps.</source>
        <translation>Das Gerät in feineren Schritten ablesen.</translation>
    </message>
    <message>
        <source>Read the value first.</source>
        <translation>Zuerst den Wert ablesen.</translation>
    </message>
    <message>
        <source>Read what is missing, or leave out the part or the trial for all.</source>
        <translation>Ablesen, was fehlt, oder das Teil oder die Wiederholung für alle weglassen.</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Ablesung</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Ablesungen</translation>
    </message>
    <message>
        <source>Readings below the window, and above it</source>
        <translation>Ablesungen unter dem Fenster und darüber</translation>
    </message>
    <message>
        <source>Readings left out, since there was no target to hold them against: %1.</source>
        <translation>Ausgelassene Ablesungen, weil ein Sollwert zum Vergleich fehlte: %1.</translation>
    </message>
    <message>
        <source>Readings no further from those of the first run than their instrument can tell, and times within a quarter of each other or within a minute, count as the same.</source>
        <translation>Als gleich gelten Werte, die von denen des ersten Durchgangs nicht weiter abweichen, als ihr Gerät unterscheidet, und Zeiten, die um weniger als ein Viertel oder eine Minute auseinanderliegen.</translation>
    </message>
    <message>
        <source>Readings outside that a supervisor accepted</source>
        <translation>Ablesungen außerhalb, von einer Aufsicht angenommen</translation>
    </message>
    <message>
        <source>Readings: %1. Phases: %2.</source>
        <translation>Ablesungen: %1. Phasen: %2.</translation>
    </message>
    <message>
        <source>Ready to be observed at a press</source>
        <translation>Bereit, an einer Maschine beobachtet zu werden</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>Aufzeichnung</translation>
    </message>
    <message>
        <source>Reference</source>
        <translation>Kundenreferenz</translation>
    </message>
    <message>
        <source>Register across the web: station %1</source>
        <translation>Register quer: Station %1</translation>
    </message>
    <message>
        <source>Register along the web: station %1</source>
        <translation>Register längs: Station %1</translation>
    </message>
    <message>
        <source>Release</source>
        <translation>Entriegeln</translation>
    </message>
    <message>
        <source>Repeat</source>
        <translation>Drucklänge</translation>
    </message>
    <message>
        <source>Reset</source>
        <translation>Rücksetzen</translation>
    </message>
    <message>
        <source>Reset after a stop</source>
        <translation>Rücksetzen nach einem Halt</translation>
    </message>
    <message>
        <source>Restore once more and name a whole copy from which the people's PINs and keys are taken, or keep this one for reading and begin a new logbook.</source>
        <translation>Noch einmal wiederherstellen und eine vollständige Kopie nennen, aus der PINs und Schlüssel der Personen genommen werden, oder dieses zum Lesen behalten und ein neues Protokollbuch beginnen.</translation>
    </message>
    <message>
        <source>Restore the logbook from a backup and compare it with the printed sheets.</source>
        <translation>Das Protokollbuch aus einer Sicherung wiederherstellen und mit den gedruckten Einrichteblättern vergleichen.</translation>
    </message>
    <message>
        <source>Restore the logbook from a backup.</source>
        <translation>Das Protokollbuch aus einer Sicherung wiederherstellen.</translation>
    </message>
    <message>
        <source>Restore the logbook from a backup; a document is never written like this.</source>
        <translation>Das Protokollbuch aus einer Sicherung wiederherstellen; so wird ein Dokument nie geschrieben.</translation>
    </message>
    <message>
        <source>Restore the logbook from a backup; a run's document is never written like this.</source>
        <translation>Das Protokollbuch aus einer Sicherung wiederherstellen; so wird das Dokument eines Durchgangs nie geschrieben.</translation>
    </message>
    <message>
        <source>Restore the practice logbook from a copy; a document is never written like this.</source>
        <translation>Das Übungsbuch aus einer Kopie wiederherstellen; so wird ein Dokument nie geschrieben.</translation>
    </message>
    <message>
        <source>Result</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>Rewind the finished rolls the other way afterwards, or ask the customer.</source>
        <translation>Die fertigen Rollen danach andersherum umwickeln oder den Kunden fragen.</translation>
    </message>
    <message>
        <source>Roll</source>
        <translation>Rolle</translation>
    </message>
    <message>
        <source>Roll centre</source>
        <translation>Rollenmitte</translation>
    </message>
    <message>
        <source>Roll centre from the frame</source>
        <translation>Rollenmitte ab Seitenwand</translation>
    </message>
    <message>
        <source>Roll it onto the lift</source>
        <translation>Auf den Lift rollen</translation>
    </message>
    <message>
        <source>Roller %1 has no diameter that a web could run over: %2.</source>
        <translation>Walze %1 hat keinen Durchmesser, über den eine Bahn laufen könnte: %2.</translation>
    </message>
    <message>
        <source>Roller %1 is of the kind %2; where it is named, only %3 can stand.</source>
        <translation>Walze %1 ist von der Art %2; wo sie genannt ist, kann nur %3 stehen.</translation>
    </message>
    <message>
        <source>Roller %1: largest tension ratio before the web slips</source>
        <translation>Walze %1: größtes Zugverhältnis, bevor die Bahn rutscht</translation>
    </message>
    <message>
        <source>Roller %1: largest tension ratio before the web slips, at crawl only</source>
        <translation>Walze %1: größtes Zugverhältnis, bevor die Bahn rutscht, nur im Kriechgang</translation>
    </message>
    <message>
        <source>Roller that would slip first</source>
        <translation>Walze, an der die Bahn zuerst rutscht</translation>
    </message>
    <message>
        <source>Roller that would slip first, at crawl only</source>
        <translation>Walze, an der die Bahn zuerst rutscht, nur im Kriechgang</translation>
    </message>
    <message>
        <source>Rollers %1 and %2 overlap: their centres are %3 apart, their radii add up to %4.</source>
        <translation>Walzen %1 und %2 überschneiden sich: Ihre Mitten sind %3 auseinander, ihre Radien ergeben zusammen %4.</translation>
    </message>
    <message>
        <source>Rolls like this one</source>
        <translation>Rollen wie diese</translation>
    </message>
    <message>
        <source>Run</source>
        <translation>Durchgang</translation>
    </message>
    <message>
        <source>Run %1 does not start with its beginning.</source>
        <translation>Durchgang %1 fängt nicht mit seinem Beginn an.</translation>
    </message>
    <message>
        <source>Run %1 has not ended, so it cannot be sealed.</source>
        <translation>Durchgang %1 ist nicht beendet und kann daher nicht versiegelt werden.</translation>
    </message>
    <message>
        <source>Run %1 is named twice.</source>
        <translation>Der Durchgang %1 ist zweimal genannt.</translation>
    </message>
    <message>
        <source>Run %1 is not one of the press %2.</source>
        <translation>Der Durchgang %1 ist keiner der Maschine %2.</translation>
    </message>
    <message>
        <source>Run %1 is not sealed yet.</source>
        <translation>Durchgang %1 ist noch nicht versiegelt.</translation>
    </message>
    <message>
        <source>Run %1 is open in this logbook.</source>
        <translation>Durchgang %1 ist in diesem Protokollbuch offen.</translation>
    </message>
    <message>
        <source>Run %1 is sealed: nothing can be added to it.</source>
        <translation>Durchgang %1 ist versiegelt: Es kann nichts hinzugefügt werden.</translation>
    </message>
    <message>
        <source>Run %1 is still open on the press %2.</source>
        <translation>Durchgang %1 ist noch offen an der Maschine %2.</translation>
    </message>
    <message>
        <source>Run %1 is void.</source>
        <translation>Der Durchgang %1 ist ungültig.</translation>
    </message>
    <message>
        <source>Run %1 is void: nothing can be added to it.</source>
        <translation>Durchgang %1 ist ungültig: Es kann nichts hinzugefügt werden.</translation>
    </message>
    <message>
        <source>Run %1 was not finished.</source>
        <translation>Der Durchgang %1 wurde nicht beendet.</translation>
    </message>
    <message>
        <source>Run %1 was not opened as it stands now.</source>
        <translation>Durchgang %1 wurde in seinem jetzigen Stand nicht geöffnet.</translation>
    </message>
    <message>
        <source>Run %1 was reviewed by %2, and nothing was added since.</source>
        <translation>Durchgang %1 wurde von %2 geprüft, und seither wurde nichts hinzugefügt.</translation>
    </message>
    <message>
        <source>Run %1 was sent back and has not been corrected since.</source>
        <translation>Durchgang %1 wurde zurückgegeben und seither nicht berichtigt.</translation>
    </message>
    <message>
        <source>Run at %1 or slower, or lower in the tension window.</source>
        <translation>Mit %1 oder langsamer fahren, oder tiefer im Fenster des Zugs.</translation>
    </message>
    <message>
        <source>Run at %1 or slower: at job speed no tension inside the window is low enough.</source>
        <translation>Mit %1 oder langsamer fahren: Bei Auftragsgeschwindigkeit ist kein Zug im Fenster niedrig genug.</translation>
    </message>
    <message>
        <source>Run slower, wind a smaller roll, or lower the drive of the clutch.</source>
        <translation>Langsamer fahren, eine kleinere Rolle wickeln oder den Antrieb der Kupplung langsamer stellen.</translation>
    </message>
    <message>
        <source>Run the job on another press.</source>
        <translation>Den Auftrag auf einer anderen Maschine fahren.</translation>
    </message>
    <message>
        <source>Run with</source>
        <translation>Gefahren mit</translation>
    </message>
    <message>
        <source>Running time to the reserve</source>
        <translation>Laufzeit bis zur Reserve</translation>
    </message>
    <message>
        <source>Running, planned</source>
        <translation>Lauf, geplant</translation>
    </message>
    <message>
        <source>Runs</source>
        <translation>Durchgänge</translation>
    </message>
    <message>
        <source>Runs beside each other</source>
        <translation>Durchgänge nebeneinander</translation>
    </message>
    <message>
        <source>S18a, S20, T3, ream of 3000 ft2 assumed</source>
        <translation>S18a, S20, T3, Ries von 3000 ft2 angenommen</translation>
    </message>
    <message>
        <source>S18a, S20, T3, thickness in points</source>
        <translation>S18a, S20, T3, Dicke in points</translation>
    </message>
    <message>
        <source>S41, policy</source>
        <translation>S41, Vorgabe</translation>
    </message>
    <message>
        <source>S43, solved for constant speeds</source>
        <translation>S43, gelöst für konstante Geschwindigkeiten</translation>
    </message>
    <message>
        <source>S47, S55, S56, line between from memory: Ducotey and Good 1999</source>
        <translation>S47, S55, S56, Linie dazwischen aus dem Gedächtnis: Ducotey und Good 1999</translation>
    </message>
    <message>
        <source>S53, S54, constant from memory: Knox and Sweeney 1971</source>
        <translation>S53, S54, Konstante aus dem Gedächtnis: Knox und Sweeney 1971</translation>
    </message>
    <message>
        <source>S55, S56, line between from memory: Ducotey and Good 1999</source>
        <translation>S55, S56, Linie dazwischen aus dem Gedächtnis: Ducotey und Good 1999</translation>
    </message>
    <message>
        <source>S64, equations from memory: Shelton and Reid 1971</source>
        <translation>S64, Gleichungen aus dem Gedächtnis: Shelton und Reid 1971</translation>
    </message>
    <message>
        <source>S69: within the first third of the span behind the guide</source>
        <translation>S69: im ersten Drittel der freien Bahnlänge hinter dem Bahnlaufregler</translation>
    </message>
    <message>
        <source>S78, base from memory: plate makers' charts</source>
        <translation>S78, Träger aus dem Gedächtnis: Tafeln der Plattenhersteller</translation>
    </message>
    <message>
        <source>S81, public guidance for older presses</source>
        <translation>S81, öffentliche Leitlinie für ältere Maschinen</translation>
    </message>
    <message>
        <source>Said by</source>
        <translation>Gesagt von</translation>
    </message>
    <message>
        <source>Said to be wrong: %1</source>
        <translation>Als Fehler gemeldet: %1</translation>
    </message>
    <message>
        <source>Save what it holds as a file, and choose that.</source>
        <translation>Was darin steht, als Datei speichern und diese wählen.</translation>
    </message>
    <message>
        <source>Say in a few words what is wrong with it.</source>
        <translation>In wenigen Worten sagen, was daran falsch ist.</translation>
    </message>
    <message>
        <source>Say it in a few words.</source>
        <translation>Es in wenigen Worten sagen.</translation>
    </message>
    <message>
        <source>Say it in fewer words.</source>
        <translation>Mit weniger Worten sagen.</translation>
    </message>
    <message>
        <source>Say once what the step should be.</source>
        <translation>Einmal sagen, was der Schritt sein soll.</translation>
    </message>
    <message>
        <source>Say over or under.</source>
        <translation>Oben oder unten sagen.</translation>
    </message>
    <message>
        <source>Say rule or eye.</source>
        <translation>rule oder eye sagen.</translation>
    </message>
    <message>
        <source>Say the whole name of whoever holds it.</source>
        <translation>Den ganzen Namen dessen sagen, der ihn hält.</translation>
    </message>
    <message>
        <source>Say three letters of the name at least; of a visitor, enough to tell them apart.</source>
        <translation>Mindestens drei Buchstaben des Namens sagen; bei Besuchern genug, um sie zu unterscheiden.</translation>
    </message>
    <message>
        <source>Say to what it is set.</source>
        <translation>Sagen, worauf gestellt wird.</translation>
    </message>
    <message>
        <source>Say web_break, wrong_roll or other.</source>
        <translation>web_break, wrong_roll oder other sagen.</translation>
    </message>
    <message>
        <source>Say what it should be; where no answer can be given, write a remark instead.</source>
        <translation>Sagen, was es sein soll; wo keine Antwort möglich ist, stattdessen eine Bemerkung schreiben.</translation>
    </message>
    <message>
        <source>Say what the trainer shows again, and how.</source>
        <translation>Sagen, was noch einmal gezeigt wird, und wie.</translation>
    </message>
    <message>
        <source>Say where they are, and that you have seen that nobody is in.</source>
        <translation>Sagen, wo die Person ist und dass Sie gesehen haben, dass niemand in der Maschine ist.</translation>
    </message>
    <message>
        <source>Say which stop is held.</source>
        <translation>Sagen, welcher Halt gehalten wird.</translation>
    </message>
    <message>
        <source>Say who practised, by id and name.</source>
        <translation>Sagen, wer geübt hat, mit Kennung und Namen.</translation>
    </message>
    <message>
        <source>Scan it again. If it stays so, type in what the tag says in plain figures.</source>
        <translation>Noch einmal scannen. Bleibt es so, eintippen, was der Rollenzettel in Klarschrift sagt.</translation>
    </message>
    <message>
        <source>Scan the roll's tag, or type what it says.</source>
        <translation>Den Rollenzettel scannen oder eintippen, was darauf steht.</translation>
    </message>
    <message>
        <source>Score</source>
        <translation>Punkte</translation>
    </message>
    <message>
        <source>Seal %1 carries more signatures than its document tells of.</source>
        <translation>Siegel %1 trägt mehr Signaturen, als sein Dokument nennt.</translation>
    </message>
    <message>
        <source>Seal %1 carries no signature, and must carry one.</source>
        <translation>Siegel %1 trägt keine Signatur und muss eine tragen.</translation>
    </message>
    <message>
        <source>Seal %1 corrects the step %2 from "%3", and the run does not say that.</source>
        <translation>Siegel %1 berichtigt den Schritt %2 von „%3“, und der Durchgang sagt das nicht.</translation>
    </message>
    <message>
        <source>Seal %1 does not continue the seal before it.</source>
        <translation>Siegel %1 setzt das Siegel davor nicht fort.</translation>
    </message>
    <message>
        <source>Seal %1 does not continue the seal before it: one was taken out, put in, moved or changed here.</source>
        <translation>Siegel %1 setzt das Siegel davor nicht fort: Hier wurde eines entfernt, eingefügt, verschoben oder geändert.</translation>
    </message>
    <message>
        <source>Seal %1 enrols a first person who is no supervisor.</source>
        <translation>Siegel %1 trägt eine erste Person ein, die keine Aufsicht ist.</translation>
    </message>
    <message>
        <source>Seal %1 is about a run that was not sealed then.</source>
        <translation>Siegel %1 betrifft einen Durchgang, der damals nicht versiegelt war.</translation>
    </message>
    <message>
        <source>Seal %1 is about an attempt that was not sealed then.</source>
        <translation>Siegel %1 betrifft einen Versuch, der damals nicht versiegelt war.</translation>
    </message>
    <message>
        <source>Seal %1 is broken: its document and its link do not belong together, so one of them was changed after sealing.</source>
        <translation>Siegel %1 ist gebrochen: Sein Dokument und sein Kettenwert gehören nicht zusammen; eines davon wurde also nach dem Versiegeln geändert.</translation>
    </message>
    <message>
        <source>Seal %1 is missing: after seal %2 comes seal %3.</source>
        <translation>Siegel %1 fehlt: Nach Siegel %2 kommt Siegel %3.</translation>
    </message>
    <message>
        <source>Seal %1 is not as it was sealed, or does not follow the one before it.</source>
        <translation>Siegel %1 ist nicht, wie es versiegelt wurde, oder folgt nicht auf das davor.</translation>
    </message>
    <message>
        <source>Seal %1 is of the practice press, and this is the logbook of a shop.</source>
        <translation>Siegel %1 ist von der Übungsmaschine, und das ist das Protokollbuch eines Betriebs.</translation>
    </message>
    <message>
        <source>Seal %1 is signed by somebody who was not enrolled then.</source>
        <translation>Siegel %1 ist von jemandem signiert, der damals nicht eingetragen war.</translation>
    </message>
    <message>
        <source>Seal %1 is signed by somebody whose role does not allow it.</source>
        <translation>Siegel %1 ist von jemandem signiert, dessen Funktion das nicht erlaubt.</translation>
    </message>
    <message>
        <source>Seal %1 is signed with a key that was not this person's then.</source>
        <translation>Siegel %1 ist mit einem Schlüssel signiert, der damals nicht der dieser Person war.</translation>
    </message>
    <message>
        <source>Seal %1 names a run of another press, or one that was void.</source>
        <translation>Siegel %1 nennt einen Durchgang einer anderen Maschine oder einen ungültigen.</translation>
    </message>
    <message>
        <source>Seal %1 names a run that was not sealed then.</source>
        <translation>Siegel %1 nennt einen Durchgang, der damals nicht versiegelt war.</translation>
    </message>
    <message>
        <source>Seal %1 names one run and is about the seal of another.</source>
        <translation>Siegel %1 nennt einen Durchgang und betrifft das Siegel eines anderen.</translation>
    </message>
    <message>
        <source>Seal %1 names words by the hash %2 that no definition before it has, so what was shown cannot be read again.</source>
        <translation>Siegel %1 nennt Wortlaut unter dem Hashwert %2, den keine Definition davor hat; was gezeigt wurde, lässt sich also nicht mehr lesen.</translation>
    </message>
    <message>
        <source>Seal %1 of the logbook is not in order, so the mirror stays at seal %2.</source>
        <translation>Siegel %1 des Protokollbuchs ist nicht in Ordnung; der Spiegel bleibt daher bei Siegel %2.</translation>
    </message>
    <message>
        <source>Seal %1 of this file is not the one that the sheet names.</source>
        <translation>Siegel %1 dieser Datei ist nicht das, das auf dem Einrichteblatt steht.</translation>
    </message>
    <message>
        <source>Seal %1 of this logbook is no attempt.</source>
        <translation>Siegel %1 dieses Buchs ist kein Versuch.</translation>
    </message>
    <message>
        <source>Seal %1 of this logbook is not the one that the sheet names: a record was changed, or the sheet is another logbook's.</source>
        <translation>Siegel %1 dieses Protokollbuchs ist nicht das, welches das Blatt nennt: Ein Protokoll wurde geändert, oder das Blatt gehört zu einem anderen Protokollbuch.</translation>
    </message>
    <message>
        <source>Seal %1 puts a key that is not its own person's.</source>
        <translation>Siegel %1 setzt einen Schlüssel ein, der nicht der der eigenen Person ist.</translation>
    </message>
    <message>
        <source>Seal %1 says who is competent, and this is a practice logbook.</source>
        <translation>Siegel %1 sagt, wer befähigt ist, und das ist ein Übungsbuch.</translation>
    </message>
    <message>
        <source>Seal %1 seals a run that was sealed before.</source>
        <translation>Siegel %1 versiegelt einen Durchgang, der schon versiegelt war.</translation>
    </message>
    <message>
        <source>Seal %1 stands twice in the file or out of its order.</source>
        <translation>Siegel %1 steht zweimal in der Datei oder nicht in seiner Reihenfolge.</translation>
    </message>
    <message>
        <source>Seal %1 tells of another PIN, and changes more than its own person's.</source>
        <translation>Siegel %1 meldet eine andere PIN und ändert mehr als die der eigenen Person.</translation>
    </message>
    <message>
        <source>Seal %1 was not to be given: %2</source>
        <translation>Siegel %1 durfte nicht gegeben werden: %2</translation>
    </message>
    <message>
        <source>Seal %3 names the picture or file %1 (SHA-256 %2...), and its bytes are not there.</source>
        <translation>Siegel %3 nennt das Bild oder die Datei %1 (SHA-256 %2...), und ihre Bytes fehlen.</translation>
    </message>
    <message>
        <source>Sealed by</source>
        <translation>Versiegelt von</translation>
    </message>
    <message>
        <source>See whether tag and material belong to this roll: every tension goes by the material.</source>
        <translation>Prüfen, ob Rollenzettel und Material zu dieser Rolle gehören: Jeder Zug richtet sich nach dem Material.</translation>
    </message>
    <message>
        <source>See whether the label names the right item, and tell the supplier.</source>
        <translation>Prüfen, ob das Etikett den richtigen Artikel nennt, und es dem Lieferanten sagen.</translation>
    </message>
    <message>
        <source>See whether the tag belongs to this roll; measure, and enter what you measured.</source>
        <translation>Prüfen, ob der Rollenzettel zu dieser Rolle gehört; messen und eingeben, was gemessen wurde.</translation>
    </message>
    <message>
        <source>See which roll hangs there, and take its own tag: two tags are easily swapped.</source>
        <translation>Nachsehen, welche Rolle dort hängt, und ihren eigenen Rollenzettel nehmen: Zwei Zettel sind leicht vertauscht.</translation>
    </message>
    <message>
        <source>Sending a run back needs a reason.</source>
        <translation>Das Zurückgeben eines Durchgangs braucht einen Grund.</translation>
    </message>
    <message>
        <source>Sensor behind the guide's last roller</source>
        <translation>Sensor hinter der letzten Walze des Bahnlaufreglers</translation>
    </message>
    <message>
        <source>Sensor of the web guide</source>
        <translation>Sensor des Bahnlaufreglers</translation>
    </message>
    <message>
        <source>Sensor's reading with the edge where it belongs</source>
        <translation>Sensoranzeige mit der Kante am richtigen Ort</translation>
    </message>
    <message>
        <source>Sent back by %1, %2: %3</source>
        <translation>Zurückgegeben von %1, %2: %3</translation>
    </message>
    <message>
        <source>Set</source>
        <translation>Einstellen</translation>
    </message>
    <message>
        <source>Set TAUTWEB_RESOURCES to that folder, or install the program again.</source>
        <translation>TAUTWEB_RESOURCES auf diesen Ordner setzen oder das Programm neu installieren.</translation>
    </message>
    <message>
        <source>Set it by eye and by the neighbouring zones.</source>
        <translation>Nach Augenschein und nach den Nachbarzonen einstellen.</translation>
    </message>
    <message>
        <source>Set it to what is shown, and hold the tension by the neighbouring zones.</source>
        <translation>Auf das Gezeigte einstellen und den Zug über die Nachbarzonen halten.</translation>
    </message>
    <message>
        <source>Set it to what is shown, and no further out in the window shown.</source>
        <translation>Auf das Gezeigte einstellen und im gezeigten Fenster nicht weiter nach außen.</translation>
    </message>
    <message>
        <source>Set it to what is shown: the nearest to the middle of the window that it can hold.</source>
        <translation>Auf das Gezeigte einstellen: der Wert, der sich halten lässt und der Mitte des Fensters am nächsten ist.</translation>
    </message>
    <message>
        <source>Set narrower ones, or mend the figure of the plate or the policy row.</source>
        <translation>Engere setzen oder die Zahl des Typenschilds oder der Vorgabezeile berichtigen.</translation>
    </message>
    <message>
        <source>Set the automatic stop to the diameter shown, which leaves %1 on the roll, and enter no less as the reserve; or run slower.</source>
        <translation>Den automatischen Halt auf den gezeigten Durchmesser einstellen, der %1 auf der Rolle lässt, und als Reserve nicht weniger eingeben; oder langsamer fahren.</translation>
    </message>
    <message>
        <source>Set the roll over until its web runs in the middle, or take another.</source>
        <translation>Die Rolle versetzen, bis ihre Bahn in der Mitte läuft, oder eine andere nehmen.</translation>
    </message>
    <message>
        <source>Set to nought</source>
        <translation>Auf null setzen</translation>
    </message>
    <message>
        <source>Set-up sheet: what each setting should be here, what was read, by whom and when</source>
        <translation>Einrichteblatt: was jede Einstellung hier sein soll, was abgelesen wurde, von wem und wann</translation>
    </message>
    <message>
        <source>Setting</source>
        <translation>Einstellung</translation>
    </message>
    <message>
        <source>Setting up</source>
        <translation>Einrichten</translation>
    </message>
    <message>
        <source>Setting up against running: the median full set-up over the running time planned for the job</source>
        <translation>Einrichten gegen Lauf: die mittlere volle Einrichtung (Median) zur geplanten Laufzeit des Auftrags</translation>
    </message>
    <message>
        <source>Settings of this job and roll</source>
        <translation>Einstellungen dieses Auftrags und dieser Rolle</translation>
    </message>
    <message>
        <source>Shaft and chucks run on round so small a core: as the roll has just begun, this pulls hardest.</source>
        <translation>Welle und Spannköpfe laufen um eine so kleine Hülse nach: Wenn die Rolle gerade begonnen hat, zieht dies am stärksten.</translation>
    </message>
    <message>
        <source>Share of the load cell's range; zero it with the web slack first.</source>
        <translation>Anteil am Bereich der Kraftmessdose; sie zuerst bei loser Bahn auf null stellen.</translation>
    </message>
    <message>
        <source>Share of the stroke that this roll's wander takes</source>
        <translation>Anteil am Stellweg, den das Verlaufen dieser Rolle braucht</translation>
    </message>
    <message>
        <source>Share of what the guide can shift this web that this roll's wander takes</source>
        <translation>Anteil dessen, was der Bahnlaufregler diese Bahn versetzen kann, den das Verlaufen dieser Rolle braucht</translation>
    </message>
    <message>
        <source>Shorten it, or make it two steps.</source>
        <translation>Kürzen oder zwei Schritte daraus machen.</translation>
    </message>
    <message>
        <source>Shut</source>
        <translation>Absperren</translation>
    </message>
    <message>
        <source>Sideways step at the joint</source>
        <translation>Seitlicher Versatz an der Klebestelle</translation>
    </message>
    <message>
        <source>Sign in once more; a supervisor can look up how it stands.</source>
        <translation>Noch einmal anmelden; eine Aufsicht kann nachsehen, wie es steht.</translation>
    </message>
    <message>
        <source>Sign it off or abandon it first.</source>
        <translation>Ihn zuerst abzeichnen oder abbrechen.</translation>
    </message>
    <message>
        <source>Sign it off, or abandon it with a reason.</source>
        <translation>Ihn abzeichnen oder mit einem Grund abbrechen.</translation>
    </message>
    <message>
        <source>Signed</source>
        <translation>Unterschrieben</translation>
    </message>
    <message>
        <source>Signed in the logbook by %1 with their own key, %2: %3. Whoever doubts it checks the logbook against the count and link at the foot of this page.</source>
        <translation>Im Protokollbuch von %1 mit eigenem Schlüssel abgezeichnet, %2: %3. Wer daran zweifelt, prüft das Protokollbuch gegen Zahl und Kettenwert am Fuß dieser Seite.</translation>
    </message>
    <message>
        <source>Since</source>
        <translation>Seit</translation>
    </message>
    <message>
        <source>Since %1 (run %2) it is %3 higher: %4 times its usual scatter.</source>
        <translation>Seit %1 (Durchgang %2) liegt der Wert %3 höher: das %4-Fache der üblichen Streuung.</translation>
    </message>
    <message>
        <source>Since %1 (run %2) it is %3 lower: %4 times its usual scatter.</source>
        <translation>Seit %1 (Durchgang %2) liegt der Wert %3 tiefer: das %4-Fache der üblichen Streuung.</translation>
    </message>
    <message>
        <source>Single values</source>
        <translation>Einzelwerte</translation>
    </message>
    <message>
        <source>Site</source>
        <translation>Betrieb</translation>
    </message>
    <message>
        <source>Six points in a row rise or fall.</source>
        <translation>Sechs Punkte in Folge steigen oder fallen.</translation>
    </message>
    <message>
        <source>Slack and decision have to be above nought.</source>
        <translation>Referenzwert und Entscheidungsgrenze müssen über null liegen.</translation>
    </message>
    <message>
        <source>So long everything runs together for the first time, slow enough to be stopped by eye.</source>
        <translation>So lange läuft alles zum ersten Mal zusammen, langsam genug, um nach Augenschein anzuhalten.</translation>
    </message>
    <message>
        <source>So many wraps are assumed; take off more until the web is clean and without nicks.</source>
        <translation>So viele Lagen sind angenommen; mehr abnehmen, bis die Bahn sauber und ohne Kerben ist.</translation>
    </message>
    <message>
        <source>So many wraps at so much friction would hold more than ten thousand times the pull on the tail.</source>
        <translation>So viele Windungen bei so viel Reibung hielten mehr als das Zehntausendfache des Zugs am Bahnende.</translation>
    </message>
    <message>
        <source>So much web lies in the press when it is threaded.</source>
        <translation>So viel Bahn liegt in der Maschine, wenn sie eingezogen ist.</translation>
    </message>
    <message>
        <source>So much web passes before the splice reaches the rewind.</source>
        <translation>So viel Bahn läuft durch, bevor die Klebestelle die Aufwicklung erreicht.</translation>
    </message>
    <message>
        <source>So wound, the roll must be fed %1 to show its face to the plates, and this press cannot feed it so.</source>
        <translation>So gewickelt muss die Rolle %1 zugeführt werden, damit ihre Druckseite zu den Druckplatten zeigt, und so kann diese Maschine sie nicht zuführen.</translation>
    </message>
    <message>
        <source>Somebody still holds the press stopped.</source>
        <translation>Jemand hält die Maschine noch im Halt.</translation>
    </message>
    <message>
        <source>Something still turns.</source>
        <translation>Etwas dreht sich noch.</translation>
    </message>
    <message>
        <source>Something that comes first is still open: %1</source>
        <translation>Etwas, das zuerst kommt, ist noch offen: %1</translation>
    </message>
    <message>
        <source>Something was left lying on the dryer.</source>
        <translation>Auf dem Trockner blieb etwas liegen.</translation>
    </message>
    <message>
        <source>Spanish</source>
        <translation>Spanisch</translation>
    </message>
    <message>
        <source>Speed</source>
        <translation>Geschwindigkeit</translation>
    </message>
    <message>
        <source>Speed of the proving run</source>
        <translation>Geschwindigkeit des Probelaufs</translation>
    </message>
    <message>
        <source>Splice tape beyond the web's edge</source>
        <translation>Klebeband über die Bahnkante hinaus</translation>
    </message>
    <message>
        <source>Splice: how many times the highest running tension it holds</source>
        <translation>Klebestelle: das Wievielfache des höchsten Laufzugs sie hält</translation>
    </message>
    <message>
        <source>Splice: how many times the worst tension in a stop it holds</source>
        <translation>Klebestelle: das Wievielfache des schlimmsten Zugs beim Anhalten sie hält</translation>
    </message>
    <message>
        <source>Splices to expect</source>
        <translation>Zu erwartende Klebestellen</translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>Abschnitt</translation>
    </message>
    <message>
        <source>Stages done again, by cause</source>
        <translation>Wiederholte Abschnitte, je Ursache</translation>
    </message>
    <message>
        <source>Start the program again; if it comes back, report it.</source>
        <translation>Das Programm neu starten; kommt es wieder, melden.</translation>
    </message>
    <message>
        <source>Starting and stopping pull more than running; more than this parts a splice or leaves the web slack.</source>
        <translation>Anfahren und Anhalten ziehen stärker als der Lauf; mehr als dies zerreißt eine Klebestelle oder lässt die Bahn lose.</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>Station %1 is given twice.</source>
        <translation>Druckwerk %1 ist zweimal angegeben.</translation>
    </message>
    <message>
        <source>Station %1: ink to have ready</source>
        <translation>Druckwerk %1: bereitzuhaltende Farbe</translation>
    </message>
    <message>
        <source>Station %1: length of the film against the print</source>
        <translation>Druckwerk %1: Länge des Films gegenüber dem Druck</translation>
    </message>
    <message>
        <source>Station %1: plate and tape over the undercut</source>
        <translation>Druckwerk %1: Druckplatte und Klebeband über dem Unterschnitt</translation>
    </message>
    <message>
        <source>Station %1: register adjuster from its mid mark</source>
        <translation>Druckwerk %1: Registerversteller ab seiner Mittelmarke</translation>
    </message>
    <message>
        <source>Station %1: register left across the web, each way</source>
        <translation>Druckwerk %1: übriger Registerweg quer zur Bahn, je Richtung</translation>
    </message>
    <message>
        <source>Station %1: register left along the web, each way</source>
        <translation>Druckwerk %1: übriger Registerweg längs der Bahn, je Richtung</translation>
    </message>
    <message>
        <source>Station %1: wet ink on the web</source>
        <translation>Druckwerk %1: nasse Farbe auf der Bahn</translation>
    </message>
    <message>
        <source>Stations</source>
        <translation>Druckwerke</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Schritt</translation>
    </message>
    <message>
        <source>Steps follow the call that closes this stage.</source>
        <translation>Auf die Meldung, die diesen Abschnitt schließt, folgen Schritte.</translation>
    </message>
    <message>
        <source>Steps left open are told of the newest %1 abandoned runs.</source>
        <translation>Offene Schritte sind von den neuesten %1 abgebrochenen Durchgängen gesagt.</translation>
    </message>
    <message>
        <source>Still open</source>
        <translation>Noch offen</translation>
    </message>
    <message>
        <source>Stop from running</source>
        <translation>Anhalten aus dem Lauf</translation>
    </message>
    <message>
        <source>Stop raising</source>
        <translation>Nicht weiter heben</translation>
    </message>
    <message>
        <source>Stored energy is let off or held</source>
        <translation>Gespeicherte Energie ist abgelassen oder gesichert</translation>
    </message>
    <message>
        <source>Strain of the web's edge at the end of the stroke</source>
        <translation>Dehnung der Bahnkante am Ende des Stellwegs</translation>
    </message>
    <message>
        <source>Strip outer wraps until the edge is whole, and say how many.</source>
        <translation>Außenlagen abnehmen, bis die Kante heil ist, und sagen, wie viele.</translation>
    </message>
    <message>
        <source>Strip outer wraps until the web is clean.</source>
        <translation>Außenlagen abnehmen, bis die Bahn sauber ist.</translation>
    </message>
    <message>
        <source>Stroke that this roll's wander takes</source>
        <translation>Stellweg, den das Verlaufen dieser Rolle braucht</translation>
    </message>
    <message>
        <source>Substrate</source>
        <translation>Bedruckstoff</translation>
    </message>
    <message>
        <source>Supervisor: I accepted the deviations</source>
        <translation>Aufsicht: Ich habe die Abweichungen angenommen</translation>
    </message>
    <message>
        <source>Supervisor: I have reviewed this record</source>
        <translation>Aufsicht: Ich habe diese Aufzeichnung geprüft</translation>
    </message>
    <message>
        <source>Supervisor: I have voided this record</source>
        <translation>Aufsicht: Ich habe diese Aufzeichnung für ungültig erklärt</translation>
    </message>
    <message>
        <source>Supervisor: I looked at this set-up and sign beside</source>
        <translation>Aufsicht: Ich habe dieses Einrichten angesehen und unterschreibe mit</translation>
    </message>
    <message>
        <source>Switch it on.</source>
        <translation>Einschalten.</translation>
    </message>
    <message>
        <source>Switch off</source>
        <translation>Ausschalten</translation>
    </message>
    <message>
        <source>Switch on</source>
        <translation>Einschalten</translation>
    </message>
    <message>
        <source>T = 0 where M / R &lt; J a / R^2</source>
        <translation>T = 0, wo M / R &lt; J a / R^2</translation>
    </message>
    <message>
        <source>T2 = Tss + (T0 - Tss) e^(-v2 t / L), Tss = (K (v2 - v1) + v1 T1) / v2</source>
        <translation>T2 = Tss + (T0 - Tss) e^(-v2 t / L), Tss = (K (v2 - v1) + v1 T1) / v2</translation>
    </message>
    <message>
        <source>Take 20 or more.</source>
        <translation>20 oder mehr nehmen.</translation>
    </message>
    <message>
        <source>Take a longer one.</source>
        <translation>Eine längere nehmen.</translation>
    </message>
    <message>
        <source>Take a narrower web, or engage more of the brake.</source>
        <translation>Eine schmalere Bahn nehmen oder mehr von der Bremse zuschalten.</translation>
    </message>
    <message>
        <source>Take a roll of at most %1 across, or a narrower web, or engage more of the brake.</source>
        <translation>Eine Rolle mit höchstens %1 Durchmesser oder eine schmalere Bahn nehmen, oder mehr von der Bremse zuschalten.</translation>
    </message>
    <message>
        <source>Take a roll of the job's material. Every tension would be wrong on this one.</source>
        <translation>Eine Rolle aus dem Material des Auftrags nehmen. Bei dieser wäre jeder Zug falsch.</translation>
    </message>
    <message>
        <source>Take a roll of the job's width: on this one the outer lanes run off the web.</source>
        <translation>Eine Rolle mit der Breite des Auftrags nehmen: Bei dieser laufen die äußeren Streifen von der Bahn.</translation>
    </message>
    <message>
        <source>Take a roll on a core that the mandrel holds; this press has no adapters.</source>
        <translation>Eine Rolle auf einer Hülse nehmen, die der Spanndorn hält; diese Maschine hat keine Adapter.</translation>
    </message>
    <message>
        <source>Take a roll on another core, or fetch an adapter and enter it in the press's profile.</source>
        <translation>Eine Rolle auf einer anderen Hülse nehmen oder einen Adapter holen und ihn im Profil der Maschine eingeben.</translation>
    </message>
    <message>
        <source>Take a roll wound the other way, or have this one rewound.</source>
        <translation>Eine andersherum gewickelte Rolle nehmen oder diese umwickeln lassen.</translation>
    </message>
    <message>
        <source>Take a smaller roll, or have this one rewound into two.</source>
        <translation>Eine kleinere Rolle nehmen oder diese in zwei umwickeln lassen.</translation>
    </message>
    <message>
        <source>Take a smaller roll. Do not hang this one here.</source>
        <translation>Eine kleinere Rolle nehmen. Diese hier nicht einhängen.</translation>
    </message>
    <message>
        <source>Take a smaller roll. Do not lift this one here.</source>
        <translation>Eine kleinere Rolle nehmen. Diese hier nicht heben.</translation>
    </message>
    <message>
        <source>Take air = false out, or correct what works with air.</source>
        <translation>air = false herausnehmen oder berichtigen, was mit Luft arbeitet.</translation>
    </message>
    <message>
        <source>Take another roll or another press. If the figure is a slip, correct it.</source>
        <translation>Eine andere Rolle oder eine andere Maschine nehmen. Ist die Zahl ein Versehen, sie berichtigen.</translation>
    </message>
    <message>
        <source>Take another roll.</source>
        <translation>Eine andere Rolle nehmen.</translation>
    </message>
    <message>
        <source>Take at least %1.</source>
        <translation>Mindestens %1 nehmen.</translation>
    </message>
    <message>
        <source>Take done away, or make it a motion step.</source>
        <translation>done weglassen oder einen Bewegungsschritt daraus machen.</translation>
    </message>
    <message>
        <source>Take it away</source>
        <translation>Wegnehmen</translation>
    </message>
    <message>
        <source>Take it in behind the door Shop, or choose another scenario.</source>
        <translation>Hinter der Tür Betrieb aufnehmen oder eine andere Aufgabe wählen.</translation>
    </message>
    <message>
        <source>Take it out</source>
        <translation>Herausziehen</translation>
    </message>
    <message>
        <source>Take it out, or look up the list of those that there are.</source>
        <translation>Herausnehmen oder in der Liste der vorhandenen nachsehen.</translation>
    </message>
    <message>
        <source>Take it out, or look up what it is called in the procedure.</source>
        <translation>Herausnehmen, oder nachsehen, wie es im Ablauf heißt.</translation>
    </message>
    <message>
        <source>Take it out, or look up what it is called.</source>
        <translation>Herausnehmen oder nachsehen, wie es heißt.</translation>
    </message>
    <message>
        <source>Take it out, or name one of the roles that procedures use.</source>
        <translation>Herausnehmen oder eine der Funktionen nennen, die Abläufe verwenden.</translation>
    </message>
    <message>
        <source>Take it out.</source>
        <translation>Herausnehmen.</translation>
    </message>
    <message>
        <source>Take it out. Known here: %1.</source>
        <translation>Herausnehmen. Hier bekannt: %1.</translation>
    </message>
    <message>
        <source>Take it out: delete from the letter before it to the letter behind it, and type both anew.</source>
        <translation>Herausnehmen: vom Buchstaben davor bis zum Buchstaben danach löschen und beide neu eintippen.</translation>
    </message>
    <message>
        <source>Take it over, and say its vital steps again; or let %1 go on with it.</source>
        <translation>Ihn übernehmen und seine kritischen Schritte neu sagen; oder %1 damit fortfahren lassen.</translation>
    </message>
    <message>
        <source>Take longer rolls, or correct what a splice loses.</source>
        <translation>Längere Rollen nehmen oder berichtigen, was eine Klebestelle kostet.</translation>
    </message>
    <message>
        <source>Take one of the two out.</source>
        <translation>Eines der beiden herausnehmen.</translation>
    </message>
    <message>
        <source>Take part of the brake out of use, or a roll of at least %1 across.</source>
        <translation>Einen Teil der Bremse außer Betrieb nehmen, oder eine Rolle mit mindestens %1 Durchmesser nehmen.</translation>
    </message>
    <message>
        <source>Take part of the brake out of use, or a roll on a core of at least %1 outside.</source>
        <translation>Einen Teil der Bremse außer Betrieb nehmen, oder eine Rolle auf einer Hülse von außen mindestens %1 nehmen.</translation>
    </message>
    <message>
        <source>Take part of the brake out of use, or run higher in the tension window.</source>
        <translation>Einen Teil der Bremse außer Betrieb nehmen oder höher im Fenster des Zugs fahren.</translation>
    </message>
    <message>
        <source>Take part of the brake out of use.</source>
        <translation>Einen Teil der Bremse außer Betrieb nehmen.</translation>
    </message>
    <message>
        <source>Take part of the clutch out of use.</source>
        <translation>Einen Teil der Kupplung außer Betrieb nehmen.</translation>
    </message>
    <message>
        <source>Take parts that differ as those do that the gauge is used for.</source>
        <translation>Teile nehmen, die sich unterscheiden wie jene, für die das Messgerät da ist.</translation>
    </message>
    <message>
        <source>Take the edition that the attempt names.</source>
        <translation>Die Ausgabe nehmen, die der Versuch nennt.</translation>
    </message>
    <message>
        <source>Take the minus sign out, or measure from the other side.</source>
        <translation>Das Minuszeichen herausnehmen oder von der anderen Seite messen.</translation>
    </message>
    <message>
        <source>Take the picture once more.</source>
        <translation>Bild noch einmal aufnehmen.</translation>
    </message>
    <message>
        <source>Take the roll off at %1, or take part of the brake out of use and enter its torque.</source>
        <translation>Die Rolle bei %1 abnehmen, oder einen Teil der Bremse außer Betrieb nehmen und ihr Drehmoment eingeben.</translation>
    </message>
    <message>
        <source>Take the roll off at %1.</source>
        <translation>Die Rolle bei %1 abnehmen.</translation>
    </message>
    <message>
        <source>Take the rolls off earlier.</source>
        <translation>Die Rollen früher abnehmen.</translation>
    </message>
    <message>
        <source>Take the translation of this edition.</source>
        <translation>Übersetzung dieser Ausgabe nehmen.</translation>
    </message>
    <message>
        <source>Take the word out: gloves are pulled into what turns. Say them where the press stands still.</source>
        <translation>Das Wort herausnehmen: Handschuhe werden in alles hineingezogen, was dreht. Dort von ihnen sprechen, wo die Maschine steht.</translation>
    </message>
    <message>
        <source>Take them off</source>
        <translation>Abnehmen</translation>
    </message>
    <message>
        <source>Take them out, or name a target as "tautweb targets" lists it.</source>
        <translation>Herausnehmen oder einen Sollwert nennen, wie "tautweb targets" ihn auflistet.</translation>
    </message>
    <message>
        <source>Take them out.</source>
        <translation>Sie herausnehmen.</translation>
    </message>
    <message>
        <source>Take together attempts with some of both.</source>
        <translation>Versuche zusammennehmen, die von beidem etwas haben.</translation>
    </message>
    <message>
        <source>Taken over by the next shift</source>
        <translation>Von der nächsten Schicht übernommen</translation>
    </message>
    <message>
        <source>Tape and web that stand over</source>
        <translation>Überstand von Band und Bahn</translation>
    </message>
    <message>
        <source>Tape both faces, and enter both_faces in the substrate's splice tape.</source>
        <translation>Beide Seiten kleben und both_faces beim Klebeband des Bedruckstoffs eingeben.</translation>
    </message>
    <message>
        <source>Tape it along an edge</source>
        <translation>An einer Kante kleben</translation>
    </message>
    <message>
        <source>Tape it and wrap it</source>
        <translation>Ankleben und umwickeln</translation>
    </message>
    <message>
        <source>Tape it by eye</source>
        <translation>Nach Augenmaß kleben</translation>
    </message>
    <message>
        <source>Taped on one face only, the other ply hangs on a release layer that is made to let go.</source>
        <translation>Nur auf einer Seite geklebt, hängt die andere Schicht an einer Trennschicht, die zum Ablösen gemacht ist.</translation>
    </message>
    <message>
        <source>Taper less, or begin with %1.</source>
        <translation>Weniger Zugabfall einstellen oder mit %1 beginnen.</translation>
    </message>
    <message>
        <source>Taper less, or run higher in the tension window.</source>
        <translation>Weniger Zugabfall einstellen oder höher im Fenster des Zugs fahren.</translation>
    </message>
    <message>
        <source>Taper less, or see that the outer wraps do not slide; wherever in the window it begins, this taper ends below it.</source>
        <translation>Weniger Zugabfall einstellen oder darauf achten, dass die Außenlagen nicht rutschen; wo im Fenster er auch beginnt, dieser Zugabfall endet darunter.</translation>
    </message>
    <message>
        <source>Taper less.</source>
        <translation>Weniger Zugabfall.</translation>
    </message>
    <message>
        <source>Teeth for each inch of pitch diameter.</source>
        <translation>Zähne je Zoll Teilkreisdurchmesser.</translation>
    </message>
    <message>
        <source>Teeth for the repeat wanted</source>
        <translation>Zähne für die gewünschte Drucklänge</translation>
    </message>
    <message>
        <source>Teeth of the print cylinder's gear.</source>
        <translation>Zähne des Zahnrads am Druckzylinder.</translation>
    </message>
    <message>
        <source>Tell a supervisor what else you found.</source>
        <translation>Einer Aufsicht sagen, was Sie sonst noch gefunden haben.</translation>
    </message>
    <message>
        <source>Ten printed repeats, longer than ten by the gear</source>
        <translation>Zehn gedruckte Drucklängen, länger als zehn laut Zahnrad</translation>
    </message>
    <message>
        <source>Ten times as much would fit.</source>
        <translation>Das Zehnfache würde passen.</translation>
    </message>
    <message>
        <source>Ten wrong tries in a row: this person is not let in any more.</source>
        <translation>Zehn falsche Versuche in Folge: Diese Person wird nicht mehr eingelassen.</translation>
    </message>
    <message>
        <source>Tension</source>
        <translation>Bahnzug</translation>
    </message>
    <message>
        <source>Tension at the rewind during an emergency stop, empty core</source>
        <translation>Zug an der Aufwicklung bei einem Not-Halt, leere Hülse</translation>
    </message>
    <message>
        <source>Tension at the rewind during an emergency stop, finished roll</source>
        <translation>Zug an der Aufwicklung bei einem Not-Halt, fertige Rolle</translation>
    </message>
    <message>
        <source>Tension at the rewind while the press speeds up, finished roll</source>
        <translation>Zug an der Aufwicklung beim Beschleunigen der Maschine, fertige Rolle</translation>
    </message>
    <message>
        <source>Tension at the unwind during an emergency stop</source>
        <translation>Zug an der Abwicklung bei einem Not-Halt</translation>
    </message>
    <message>
        <source>Tension at the unwind while the press speeds up</source>
        <translation>Zug an der Abwicklung beim Beschleunigen der Maschine</translation>
    </message>
    <message>
        <source>Tension is not on yet.</source>
        <translation>Der Zug ist noch nicht an.</translation>
    </message>
    <message>
        <source>Tension is on</source>
        <translation>Der Zug ist an</translation>
    </message>
    <message>
        <source>Tension of the zone %1, the last minute</source>
        <translation>Zug der Zone %1, die letzte Minute</translation>
    </message>
    <message>
        <source>Tension per width by the plies' own tables</source>
        <translation>Zug je Breite nach den Tabellen der einzelnen Schichten</translation>
    </message>
    <message>
        <source>Tension setting: %1</source>
        <translation>Zugeinstellung: %1</translation>
    </message>
    <message>
        <source>Tension: %1</source>
        <translation>Zug: %1</translation>
    </message>
    <message>
        <source>Tests passed in a row, with other faults each</source>
        <translation>Prüfungen in Folge bestanden, jede mit anderen Fehlern</translation>
    </message>
    <message>
        <source>Tests that a trainer still has to look at</source>
        <translation>Prüfungen, die noch jemand aus der Ausbildung ansehen muss</translation>
    </message>
    <message>
        <source>That is done along a rule, or by eye.</source>
        <translation>Das geschieht am Lineal oder nach Augenmaß.</translation>
    </message>
    <message>
        <source>The PIN is a straight run like 1234.</source>
        <translation>Die PIN ist eine gerade Folge wie 1234.</translation>
    </message>
    <message>
        <source>The PIN is longer than 64 characters.</source>
        <translation>Die PIN ist länger als 64 Zeichen.</translation>
    </message>
    <message>
        <source>The PIN is one character repeated.</source>
        <translation>Die PIN ist ein wiederholtes Zeichen.</translation>
    </message>
    <message>
        <source>The PIN is shorter than 4 characters.</source>
        <translation>Die PIN ist kürzer als 4 Zeichen.</translation>
    </message>
    <message>
        <source>The PIN of a badge has six digits or more.</source>
        <translation>Die PIN eines Ausweises hat sechs oder mehr Ziffern.</translation>
    </message>
    <message>
        <source>The air is not on yet.</source>
        <translation>Die Luft ist noch nicht an.</translation>
    </message>
    <message>
        <source>The air is off.</source>
        <translation>Die Druckluft ist aus.</translation>
    </message>
    <message>
        <source>The air is on</source>
        <translation>Die Luft ist an</translation>
    </message>
    <message>
        <source>The air on the dancer. A dancer at rest shows balance, it does not prove tension.</source>
        <translation>Die Luft auf dem Tänzer. Ein ruhender Tänzer zeigt Gleichgewicht, er beweist keinen Zug.</translation>
    </message>
    <message>
        <source>The angle of its cutting guide, from the straight cross cut.</source>
        <translation>Winkel ihrer Schneidführung gegen den geraden Querschnitt.</translation>
    </message>
    <message>
        <source>The angle over which the web lies on it, where the rollers do not tell.</source>
        <translation>Winkel, über den die Bahn aufliegt, wo die Walzen es nicht sagen.</translation>
    </message>
    <message>
        <source>The badge could not be printed.</source>
        <translation>Der Ausweis konnte nicht gedruckt werden.</translation>
    </message>
    <message>
        <source>The bond gives way: a longer overlap, or a tape that holds better on this web, or run at less tension.</source>
        <translation>Die Klebung gibt nach: längere Überlappung, oder ein Klebeband, das auf dieser Bahn besser hält, oder mit weniger Zug fahren.</translation>
    </message>
    <message>
        <source>The bond gives way: tape both faces, or a longer overlap, or a tape that holds better on this web, or run at less tension.</source>
        <translation>Die Klebung gibt nach: beidseitig kleben, oder längere Überlappung, oder ein Klebeband, das auf dieser Bahn besser hält, oder mit weniger Zug fahren.</translation>
    </message>
    <message>
        <source>The brake as set does not hold this roll: expect slack web and a run-on at an emergency stop.</source>
        <translation>Die Bremse in ihrer Einstellung hält diese Rolle nicht: bei Not-Halt mit loser Bahn und Nachlaufen rechnen.</translation>
    </message>
    <message>
        <source>The brake lets go in an emergency stop: the roll runs on and the web hangs slack.</source>
        <translation>Die Bremse lässt bei Not-Halt los: Die Rolle läuft nach, und die Bahn hängt durch.</translation>
    </message>
    <message>
        <source>The centreline is said to lie %1 from the frame face, but the other face is %2 away.</source>
        <translation>Die Mittellinie soll %1 von der Innenfläche der Seitenwand liegen, aber die andere Fläche ist %2 entfernt.</translation>
    </message>
    <message>
        <source>The check %1 can never be told as done: it does not say %2.</source>
        <translation>Die Prüfung %1 kann nie als getan gelten: Sie sagt %2 nicht.</translation>
    </message>
    <message>
        <source>The choice %1 has no words.</source>
        <translation>Die Auswahl %1 hat keinen Text.</translation>
    </message>
    <message>
        <source>The competence of %1 at the press %2 ended on %3.</source>
        <translation>Die Befähigung von %1 an der Maschine %2 endete am %3.</translation>
    </message>
    <message>
        <source>The competence of %1 at the press %2 was ended: %3</source>
        <translation>Die Befähigung von %1 an der Maschine %2 wurde beendet: %3</translation>
    </message>
    <message>
        <source>The compressed air is low.</source>
        <translation>Die Druckluft ist schwach.</translation>
    </message>
    <message>
        <source>The constant of the profile is not the one that these runs measured.</source>
        <translation>Die Konstante des Profils ist nicht die, die diese Durchgänge gemessen haben.</translation>
    </message>
    <message>
        <source>The constant of the profile still fits: these runs give no reason to change it.</source>
        <translation>Die Konstante des Profils passt noch: Diese Durchgänge geben keinen Grund, sie zu ändern.</translation>
    </message>
    <message>
        <source>The core is not of the size that the shaft holds.</source>
        <translation>Die Hülse hat nicht die Größe, die die Welle hält.</translation>
    </message>
    <message>
        <source>The core is said to weigh %1, the whole roll %2.</source>
        <translation>Die Hülse soll %1 wiegen, die ganze Rolle %2.</translation>
    </message>
    <message>
        <source>The core is said to weigh %1; of solid steel it would weigh %2.</source>
        <translation>Die Hülse soll %1 wiegen; aus massivem Stahl wöge sie %2.</translation>
    </message>
    <message>
        <source>The core measures %1 inside; the mandrel holds %2 to %3.</source>
        <translation>Die Hülse misst innen %1; der Spanndorn hält %2 bis %3.</translation>
    </message>
    <message>
        <source>The core slips on its shaft: the brake does not hold the roll.</source>
        <translation>Die Hülse rutscht auf ihrer Welle: Die Bremse hält die Rolle nicht.</translation>
    </message>
    <message>
        <source>The core's wall is not known: reckoned with one of %1, the thickest, so that the stop comes early and never too late. Measure the wall.</source>
        <translation>Die Wandung der Hülse ist unbekannt: gerechnet mit %1, der dicksten, damit der Halt früh und nie zu spät kommt. Wandung messen.</translation>
    </message>
    <message>
        <source>The dancer of %1 is still pinned.</source>
        <translation>Der Tänzer von %1 ist noch gesperrt.</translation>
    </message>
    <message>
        <source>The deceleration is the press's own: the time grows with the speed that it is stopped from.</source>
        <translation>Die Verzögerung ist die eigene der Maschine: Die Zeit wächst mit der Geschwindigkeit, aus der angehalten wird.</translation>
    </message>
    <message>
        <source>The definition in seal %1 is not the text of its hash.</source>
        <translation>Die Definition in Siegel %1 ist nicht der Text zu ihrem Hashwert.</translation>
    </message>
    <message>
        <source>The diameter to work with once the outer wraps are off.</source>
        <translation>Der Durchmesser, mit dem gearbeitet wird, wenn die Außenlagen ab sind.</translation>
    </message>
    <message>
        <source>The diameters are used, since no label says a length. Measure and weigh again.</source>
        <translation>Die Durchmesser gelten, da kein Etikett eine Länge nennt. Noch einmal messen und wiegen.</translation>
    </message>
    <message>
        <source>The diameters are used, since the label seems to be that of the roll when it was full. Measure the diameter again, and ask whether the roll was opened.</source>
        <translation>Die Durchmesser gelten, da das Etikett wohl von der vollen Rolle stammt. Durchmesser noch einmal messen und fragen, ob die Rolle angebrochen wurde.</translation>
    </message>
    <message>
        <source>The diameters are used, since this roll was opened or measured again.</source>
        <translation>Die Durchmesser gelten, da diese Rolle angebrochen oder neu gemessen wurde.</translation>
    </message>
    <message>
        <source>The diameters count. Measure the roll's diameter as it is now.</source>
        <translation>Die Durchmesser zählen. Durchmesser der Rolle messen, wie sie jetzt ist.</translation>
    </message>
    <message>
        <source>The diameters say %1, the mass says %2: %3 apart; up to %4 is usual.</source>
        <translation>Die Durchmesser sagen %1, die Masse sagt %2: %3 auseinander; bis zu %4 ist üblich.</translation>
    </message>
    <message>
        <source>The disk failed while %1 was read or written; the system says: %2.</source>
        <translation>Die Platte versagte, während %1 gelesen oder geschrieben wurde; das System meldet: %2.</translation>
    </message>
    <message>
        <source>The document does not say its format.</source>
        <translation>Das Dokument nennt sein Format nicht.</translation>
    </message>
    <message>
        <source>The document has more target sets or plans than events that could name them.</source>
        <translation>Das Dokument hat mehr Sollwertsätze oder Pläne als Ereignisse, die sie nennen könnten.</translation>
    </message>
    <message>
        <source>The document is not UTF-8 text.</source>
        <translation>Das Dokument ist kein UTF-8-Text.</translation>
    </message>
    <message>
        <source>The document is of an unknown kind: %1.</source>
        <translation>Das Dokument ist von unbekannter Art: %1.</translation>
    </message>
    <message>
        <source>The document names words by the hash %1, and they are not to be had here.</source>
        <translation>Das Dokument nennt Texte mit dem Hashwert %1, und sie sind hier nicht zu bekommen.</translation>
    </message>
    <message>
        <source>The document of seal %1 cannot be read.</source>
        <translation>Das Dokument von Siegel %1 kann nicht gelesen werden.</translation>
    </message>
    <message>
        <source>The document of seal %1 is not UTF-8 text.</source>
        <translation>Das Dokument von Siegel %1 ist kein UTF-8-Text.</translation>
    </message>
    <message>
        <source>The document's first event is not the beginning of its run.</source>
        <translation>Das erste Ereignis des Dokuments ist nicht der Beginn seines Durchgangs.</translation>
    </message>
    <message>
        <source>The drive no longer pulls; what is left is the finished roll that runs on.</source>
        <translation>Der Antrieb zieht nicht mehr; übrig bleibt die fertige Rolle, die nachläuft.</translation>
    </message>
    <message>
        <source>The drive of %1 still works with the last roll's diameter.</source>
        <translation>Der Antrieb von %1 rechnet noch mit dem Durchmesser der letzten Rolle.</translation>
    </message>
    <message>
        <source>The drive of %1 works with the diameter of another roll.</source>
        <translation>Der Antrieb von %1 rechnet mit dem Durchmesser einer anderen Rolle.</translation>
    </message>
    <message>
        <source>The dryer of station %1 stands open.</source>
        <translation>Der Trockner von Station %1 steht offen.</translation>
    </message>
    <message>
        <source>The edges beyond the middle, in the shorter of the spans before and behind the guide. At three times the running strain the middle hangs slack.</source>
        <translation>Dehnung der Kanten über die der Mitte hinaus, in der kürzeren freien Bahnlänge vor und hinter dem Bahnlaufregler. Beim Dreifachen der Laufdehnung hängt die Mitte durch.</translation>
    </message>
    <message>
        <source>The edition is %1; editions are counted from 1.</source>
        <translation>Die Ausgabe ist %1; Ausgaben werden ab 1 gezählt.</translation>
    </message>
    <message>
        <source>The emergency stops are not tested yet.</source>
        <translation>Die Not-Halt-Geräte sind noch nicht geprüft.</translation>
    </message>
    <message>
        <source>The emergency stops are tested</source>
        <translation>Die Not-Halt-Geräte sind geprüft</translation>
    </message>
    <message>
        <source>The end of the web has run into the press: it has to be led through anew.</source>
        <translation>Das Ende der Bahn ist in die Maschine gelaufen: Sie muss neu eingezogen werden.</translation>
    </message>
    <message>
        <source>The ends are not cut together.</source>
        <translation>Die Enden sind nicht zusammen geschnitten.</translation>
    </message>
    <message>
        <source>The exported file says %1, which no file of its format does.</source>
        <translation>Die exportierte Datei sagt %1, was keine Datei ihres Formats tut.</translation>
    </message>
    <message>
        <source>The extra web after roller %1 is not a length of zero or more.</source>
        <translation>Die zusätzliche Bahn nach Walze %1 ist keine Länge von null oder mehr.</translation>
    </message>
    <message>
        <source>The fastest that the press may run.</source>
        <translation>Das Schnellste, was die Maschine laufen darf.</translation>
    </message>
    <message>
        <source>The file %1 cannot be read; the system says: %2.</source>
        <translation>Die Datei %1 kann nicht gelesen werden; das System meldet: %2.</translation>
    </message>
    <message>
        <source>The file %1 is larger than %2 bytes, the most that is read here.</source>
        <translation>Die Datei %1 ist größer als %2 Bytes, mehr wird hier nicht gelesen.</translation>
    </message>
    <message>
        <source>The file %1 is larger than 1 MiB, the most that is read here.</source>
        <translation>Die Datei %1 ist größer als 1 MiB, mehr wird hier nicht gelesen.</translation>
    </message>
    <message>
        <source>The file %1 may not be read by this user.</source>
        <translation>Die Datei %1 darf von diesem Benutzer nicht gelesen werden.</translation>
    </message>
    <message>
        <source>The file cannot be read on from here: %1.</source>
        <translation>Die Datei kann ab hier nicht weitergelesen werden: %1.</translation>
    </message>
    <message>
        <source>The file does not say which format it is written in.</source>
        <translation>Die Datei sagt nicht, in welchem Format sie geschrieben ist.</translation>
    </message>
    <message>
        <source>The file holds %1 seals; one run never needs as many.</source>
        <translation>Die Datei enthält %1 Siegel; so viele braucht ein Durchgang nie.</translation>
    </message>
    <message>
        <source>The file is of format %1; this version knows %2.</source>
        <translation>Die Datei hat Format %1; diese Version kennt %2.</translation>
    </message>
    <message>
        <source>The file was changed or cut off after it was exported. Export the run once more.</source>
        <translation>Die Datei wurde nach dem Export geändert oder abgeschnitten. Den Durchgang noch einmal exportieren.</translation>
    </message>
    <message>
        <source>The first person in a logbook must be a supervisor: only a supervisor can enrol the others.</source>
        <translation>Die erste Person in einem Protokollbuch muss eine Aufsicht sein: Nur eine Aufsicht kann die anderen eintragen.</translation>
    </message>
    <message>
        <source>The folder %1 may not be written in, and a logbook needs that.</source>
        <translation>In den Ordner %1 darf nicht geschrieben werden, und ein Protokollbuch braucht das.</translation>
    </message>
    <message>
        <source>The folder %1, where copies are kept, is not there.</source>
        <translation>Der Ordner %1, in dem Kopien liegen, ist nicht da.</translation>
    </message>
    <message>
        <source>The folder %1, where the logbook is mirrored, is not there.</source>
        <translation>Der Ordner %1, in dem das Protokollbuch gespiegelt wird, ist nicht da.</translation>
    </message>
    <message>
        <source>The folder of %1 may not be written in.</source>
        <translation>In den Ordner von %1 darf nicht geschrieben werden.</translation>
    </message>
    <message>
        <source>The folder with presses, substrates and procedures is not where it was looked for: %1.</source>
        <translation>Der Ordner mit Maschinen, Bedruckstoffen und Abläufen ist nicht, wo er gesucht wurde: %1.</translation>
    </message>
    <message>
        <source>The font that sheets are set in is not installed; %1 would come out instead, and signs could be lost.</source>
        <translation>Die Schrift, in der Blätter gesetzt werden, ist nicht installiert; %1 käme stattdessen heraus, und Zeichen könnten fehlen.</translation>
    </message>
    <message>
        <source>The force at which it reads full.</source>
        <translation>Die Kraft, bei der sie voll anzeigt.</translation>
    </message>
    <message>
        <source>The format is not a whole number from 1 up.</source>
        <translation>Das Format ist keine ganze Zahl ab 1.</translation>
    </message>
    <message>
        <source>The frame from whose inner face everything across is measured.</source>
        <translation>Die Seitenwand, von deren Innenfläche alles quer gemessen wird.</translation>
    </message>
    <message>
        <source>The gauge of %1 does not go back to nought.</source>
        <translation>Das Manometer von %1 geht nicht auf null zurück.</translation>
    </message>
    <message>
        <source>The gear's pitch is given in more than one way.</source>
        <translation>Die Teilung des Zahnrads ist auf mehr als eine Weise angegeben.</translation>
    </message>
    <message>
        <source>The guards' switches were not tested one by one.</source>
        <translation>Die Schalter der Schutzeinrichtungen wurden nicht einzeln geprüft.</translation>
    </message>
    <message>
        <source>The guide is at mid-stroke</source>
        <translation>Der Bahnlaufregler steht in Mittelstellung</translation>
    </message>
    <message>
        <source>The guide is not at mid-stroke yet.</source>
        <translation>Der Bahnlaufregler steht noch nicht in Mittelstellung.</translation>
    </message>
    <message>
        <source>The guide's sensor is dirty.</source>
        <translation>Der Sensor des Bahnlaufreglers ist schmutzig.</translation>
    </message>
    <message>
        <source>The guide's sensor was not calibrated on this web.</source>
        <translation>Der Sensor des Bahnlaufreglers wurde nicht auf diese Bahn abgeglichen.</translation>
    </message>
    <message>
        <source>The hanging web got round %1 and tore.</source>
        <translation>Die lose Bahn wickelte sich um %1 und riss.</translation>
    </message>
    <message>
        <source>The heat that brake or clutch bears without end, from its maker.</source>
        <translation>Die Wärme, die Bremse oder Kupplung dauernd erträgt, laut Hersteller.</translation>
    </message>
    <message>
        <source>The heavier and larger the roll, the more it wants to run on.</source>
        <translation>Je schwerer und größer die Rolle, desto mehr will sie nachlaufen.</translation>
    </message>
    <message>
        <source>The heaviest roll that it carries.</source>
        <translation>Die schwerste Rolle, die sie trägt.</translation>
    </message>
    <message>
        <source>The id "%1" cannot be used.</source>
        <translation>Die Kennung „%1“ kann nicht verwendet werden.</translation>
    </message>
    <message>
        <source>The id %1 belongs to somebody for ever, also when they have left.</source>
        <translation>Die Kennung %1 gehört jemandem für immer, auch nach dessen Ausscheiden.</translation>
    </message>
    <message>
        <source>The id %1 is taken: sealed, this would stand in the place of what has it now.</source>
        <translation>Die Kennung %1 ist vergeben: Versiegelt stünde dies an der Stelle dessen, was sie jetzt trägt.</translation>
    </message>
    <message>
        <source>The id %1 stands here twice.</source>
        <translation>Die Kennung %1 steht hier zweimal.</translation>
    </message>
    <message>
        <source>The id of its substrate.</source>
        <translation>Die Kennung seines Bedruckstoffs.</translation>
    </message>
    <message>
        <source>The inner diameter of a lifting cylinder.</source>
        <translation>Innendurchmesser eines Hubzylinders.</translation>
    </message>
    <message>
        <source>The inner diameter of its cylinder.</source>
        <translation>Innendurchmesser seines Zylinders.</translation>
    </message>
    <message>
        <source>The inner diameter of the cores that this adapter fits.</source>
        <translation>Innendurchmesser der Hülsen, zu denen dieser Adapter passt.</translation>
    </message>
    <message>
        <source>The isolator is locked by your site's procedure</source>
        <translation>Der Trennschalter ist nach Betriebsanweisung abgeschlossen</translation>
    </message>
    <message>
        <source>The job has no title: lists show its id instead.</source>
        <translation>Der Auftrag hat keinen Titel: Listen zeigen stattdessen seine Kennung.</translation>
    </message>
    <message>
        <source>The job is %1 wide; this press takes %2 at most.</source>
        <translation>Der Auftrag ist %1 breit; diese Maschine nimmt höchstens %2.</translation>
    </message>
    <message>
        <source>The job is for %1; chosen is %2.</source>
        <translation>Der Auftrag ist für %1; gewählt ist %2.</translation>
    </message>
    <message>
        <source>The job is planned at %1; this press runs %2 at most.</source>
        <translation>Der Auftrag ist mit %1 geplant; diese Maschine läuft höchstens %2.</translation>
    </message>
    <message>
        <source>The job is wound on cores of %1 inside; %2 holds %3 to %4.</source>
        <translation>Der Auftrag wird auf Hülsen von %1 innen gewickelt; %2 hält %3 bis %4.</translation>
    </message>
    <message>
        <source>The job needs %1; of this roll %2 can be run, outer wraps and reserve taken off.</source>
        <translation>Der Auftrag braucht %1; von dieser Rolle können %2 laufen, Außenlagen und Reserve abgezogen.</translation>
    </message>
    <message>
        <source>The job prints at station %1, which this press does not have.</source>
        <translation>Der Auftrag druckt an Druckwerk %1, das diese Maschine nicht hat.</translation>
    </message>
    <message>
        <source>The job wants a tension of %1; the maker of the material allows at most %2.</source>
        <translation>Der Auftrag will einen Zug von %1; der Materialhersteller erlaubt höchstens %2.</translation>
    </message>
    <message>
        <source>The job's range, held down to what the maker of the material allows.</source>
        <translation>Der Bereich des Auftrags, begrenzt auf das, was der Materialhersteller erlaubt.</translation>
    </message>
    <message>
        <source>The job's tension begins at %1, the maker of the material says at least %2.</source>
        <translation>Der Zug des Auftrags beginnt bei %1, der Materialhersteller sagt mindestens %2.</translation>
    </message>
    <message>
        <source>The job's tension, %1, reaches beyond the starting range for this material, %2: %3.</source>
        <translation>Der Zug des Auftrags, %1, reicht über den Startbereich für dieses Material, %2, hinaus: %3.</translation>
    </message>
    <message>
        <source>The job's tension, %1, reaches beyond what the maker of the material allows: it is held down to %2.</source>
        <translation>Der Zug des Auftrags, %1, reicht über das hinaus, was der Materialhersteller erlaubt: Er ist auf %2 begrenzt.</translation>
    </message>
    <message>
        <source>The joint</source>
        <translation>Die Klebestelle</translation>
    </message>
    <message>
        <source>The joint bears less than the web.</source>
        <translation>Die Klebestelle trägt weniger als die Bahn.</translation>
    </message>
    <message>
        <source>The joint has not come to the rewind yet.</source>
        <translation>Die Verbindung ist noch nicht an der Aufwicklung.</translation>
    </message>
    <message>
        <source>The joint is crooked, and its short side bears the pull.</source>
        <translation>Die Klebestelle ist schief, und ihre kurze Seite trägt den Zug.</translation>
    </message>
    <message>
        <source>The joint lies on the table no more.</source>
        <translation>Die Klebestelle liegt nicht mehr auf dem Tisch.</translation>
    </message>
    <message>
        <source>The joint still lies on the table.</source>
        <translation>Die Verbindung liegt noch auf dem Tisch.</translation>
    </message>
    <message>
        <source>The key %1 is missing here.</source>
        <translation>Der Schlüssel %1 fehlt hier.</translation>
    </message>
    <message>
        <source>The key %1 is missing, and nothing else can stand for it.</source>
        <translation>Der Schlüssel %1 fehlt, und nichts anderes kann ihn ersetzen.</translation>
    </message>
    <message>
        <source>The key %1 is not known here.</source>
        <translation>Der Schlüssel %1 ist hier nicht bekannt.</translation>
    </message>
    <message>
        <source>The key %1 is not known to this version.</source>
        <translation>Der Schlüssel %1 ist dieser Version nicht bekannt.</translation>
    </message>
    <message>
        <source>The key that was opened for %1 does not stand in this logbook any more.</source>
        <translation>Der für %1 geöffnete Schlüssel steht nicht mehr in diesem Protokollbuch.</translation>
    </message>
    <message>
        <source>The label is used, since nobody is said to have opened the roll. Measure the diameter and weigh again, and ask whether it was opened.</source>
        <translation>Das Etikett gilt, da niemand die Rolle angebrochen haben soll. Durchmesser messen und noch einmal wiegen, und fragen, ob sie angebrochen wurde.</translation>
    </message>
    <message>
        <source>The label says %1, the diameters say %2: %3 apart; the caliper is known to %4.</source>
        <translation>Das Etikett sagt %1, die Durchmesser sagen %2: %3 auseinander; die Dicke ist auf %4 bekannt.</translation>
    </message>
    <message>
        <source>The label says %1, the mass says %2: %3 apart; up to %4 is usual.</source>
        <translation>Das Etikett sagt %1, die Masse sagt %2: %3 auseinander; bis zu %4 ist üblich.</translation>
    </message>
    <message>
        <source>The lamps are parked</source>
        <translation>Die Lampen sind geparkt</translation>
    </message>
    <message>
        <source>The lamps were not parked.</source>
        <translation>Die Lampen waren nicht geparkt.</translation>
    </message>
    <message>
        <source>The largest core, by its inside, that it holds.</source>
        <translation>Die größte Hülse, innen gemessen, die er hält.</translation>
    </message>
    <message>
        <source>The largest roll that finds room there.</source>
        <translation>Die größte Rolle, die dort Platz findet.</translation>
    </message>
    <message>
        <source>The last day is before the first.</source>
        <translation>Der letzte Tag liegt vor dem ersten.</translation>
    </message>
    <message>
        <source>The last shift left a tail at its joint.</source>
        <translation>Die letzte Schicht ließ an ihrer Verbindung einen Überstand.</translation>
    </message>
    <message>
        <source>The last shift's joint is out of reach.</source>
        <translation>Die Klebestelle der letzten Schicht ist außer Reichweite.</translation>
    </message>
    <message>
        <source>The last shift's joint, on the web that is in</source>
        <translation>Die Klebestelle der letzten Schicht, in der eingezogenen Bahn</translation>
    </message>
    <message>
        <source>The layers add up to %1, more than the whole, %2.</source>
        <translation>Die Schichten ergeben zusammen %1, mehr als das Ganze, %2.</translation>
    </message>
    <message>
        <source>The least air in its shaft, from its plate.</source>
        <translation>Mindestluft in ihrer Welle, laut Typenschild.</translation>
    </message>
    <message>
        <source>The least that it can be set to.</source>
        <translation>Das Kleinste, worauf es sich einstellen lässt.</translation>
    </message>
    <message>
        <source>The least, reckoned on the outside of the core, at which the reserve is still on the roll. Aim between it and the largest: neither the setting nor the caliper is exact.</source>
        <translation>Das Kleinste, an der Außenseite der Hülse gerechnet, bei dem die Reserve noch auf der Rolle ist. Zwischen ihm und dem Größten einstellen: Weder Einstellung noch Dicke ist genau.</translation>
    </message>
    <message>
        <source>The length seems to be that of the roll when it was full. Say that it was opened: then the diameters count.</source>
        <translation>Die Länge scheint die der vollen Rolle zu sein. Sagen, dass sie angebrochen wurde: Dann zählen die Durchmesser.</translation>
    </message>
    <message>
        <source>The lift does not raise the roll: %1 is less than it weighs.</source>
        <translation>Der Lift hebt die Rolle nicht: %1 ist weniger, als sie wiegt.</translation>
    </message>
    <message>
        <source>The lift is down</source>
        <translation>Der Rollenlift ist unten</translation>
    </message>
    <message>
        <source>The lift is not down yet.</source>
        <translation>Der Rollenlift ist noch nicht unten.</translation>
    </message>
    <message>
        <source>The lift is not down.</source>
        <translation>Die Hebevorrichtung ist nicht unten.</translation>
    </message>
    <message>
        <source>The lift, downwards</source>
        <translation>Der Lift, abwärts</translation>
    </message>
    <message>
        <source>The lift, upwards</source>
        <translation>Der Lift, aufwärts</translation>
    </message>
    <message>
        <source>The limits of %1 are not of its kind: they do not hold.</source>
        <translation>Die Grenzen von %1 sind nicht von seiner Art: Sie gelten nicht.</translation>
    </message>
    <message>
        <source>The limits of %1 in this press's profile are wider than what else holds there: %2. Where somebody or something could be hurt they may only be narrower.</source>
        <translation>Die Grenzen von %1 im Profil dieser Maschine sind weiter als das, was dort sonst gilt: %2. Wo jemand verletzt oder etwas beschädigt werden könnte, dürfen sie nur enger sein.</translation>
    </message>
    <message>
        <source>The limits of %1 in this press's profile do not hold: its window comes from job or material, %2.</source>
        <translation>Die Grenzen von %1 im Profil dieser Maschine gelten nicht: Sein Fenster kommt aus Auftrag oder Material, %2.</translation>
    </message>
    <message>
        <source>The limits of %1 in this press's profile leave nothing of what else holds there: %2. They do not hold.</source>
        <translation>Die Grenzen von %1 im Profil dieser Maschine lassen nichts von dem übrig, was dort sonst gilt: %2. Sie gelten nicht.</translation>
    </message>
    <message>
        <source>The liner carries alone here: it is stretched more than the whole web at the same tension.</source>
        <translation>Die Trägerbahn trägt hier allein: Sie wird bei gleichem Zug stärker gedehnt als die ganze Bahn.</translation>
    </message>
    <message>
        <source>The list cannot go on after "%1".</source>
        <translation>Die Liste kann nach „%1“ nicht weitergehen.</translation>
    </message>
    <message>
        <source>The load cell of %1 does not stand on its zero.</source>
        <translation>Die Kraftmessdose von %1 steht nicht auf ihrer Null.</translation>
    </message>
    <message>
        <source>The logbook %1 is damaged: parts of the file are missing or scrambled.</source>
        <translation>Das Protokollbuch %1 ist beschädigt: Teile der Datei fehlen oder sind verstümmelt.</translation>
    </message>
    <message>
        <source>The logbook %1 is laid out otherwise than this program lays one out (first difference: %2): it was made by a version from before the first release, or changed by hand.</source>
        <translation>Das Protokollbuch %1 ist anders aufgebaut, als dieses Programm es anlegt (erster Unterschied: %2): Es entstand mit einer Version vor der ersten Freigabe oder wurde von Hand geändert.</translation>
    </message>
    <message>
        <source>The logbook %1 may not be read by this user.</source>
        <translation>Das Protokollbuch %1 darf von diesem Benutzer nicht gelesen werden.</translation>
    </message>
    <message>
        <source>The logbook %1 refused: %2.</source>
        <translation>Das Protokollbuch %1 hat abgelehnt: %2.</translation>
    </message>
    <message>
        <source>The logbook %1 was made by a version from before the first release (layout %2, this one needs %3).</source>
        <translation>Das Protokollbuch %1 entstand mit einer Version vor der ersten Freigabe (Aufbau %2, diese braucht %3).</translation>
    </message>
    <message>
        <source>The logbook %1 was written by a newer version of this program (layout %2, this one knows %3).</source>
        <translation>Das Protokollbuch %1 wurde mit einer neueren Version dieses Programms geschrieben (Aufbau %2, diese kennt %3).</translation>
    </message>
    <message>
        <source>The logbook is damaged: a row of %1 belongs to a row that is gone.</source>
        <translation>Das Protokollbuch ist beschädigt: Eine Zeile von %1 gehört zu einer Zeile, die fehlt.</translation>
    </message>
    <message>
        <source>The logbook is damaged; its engine says: %1.</source>
        <translation>Das Protokollbuch ist beschädigt; seine Datenbank meldet: %1.</translation>
    </message>
    <message>
        <source>The logbook knows no substrate "%1": no run of this job can begin.</source>
        <translation>Das Protokollbuch kennt keinen Bedruckstoff „%1“: Kein Durchgang dieses Auftrags kann beginnen.</translation>
    </message>
    <message>
        <source>The logbook's layout was changed: %1 is missing, added or other than this program makes it. Guards against changing sealed rows are part of it.</source>
        <translation>Der Aufbau des Protokollbuchs wurde geändert: %1 fehlt, kam hinzu oder ist anders, als dieses Programm es anlegt. Dazu gehört der Schutz vor Änderung versiegelter Zeilen.</translation>
    </message>
    <message>
        <source>The lower end of the window.</source>
        <translation>Das untere Ende des Fensters.</translation>
    </message>
    <message>
        <source>The lower end, %1, lies above the upper end, %2.</source>
        <translation>Das untere Ende, %1, liegt über dem oberen Ende, %2.</translation>
    </message>
    <message>
        <source>The lower limit is not below the upper one.</source>
        <translation>Die untere Grenze liegt nicht unter der oberen.</translation>
    </message>
    <message>
        <source>The maintained stop within reach there.</source>
        <translation>Der gehaltene Halt, der dort in Reichweite ist.</translation>
    </message>
    <message>
        <source>The maker's range, entered with the material, would be better.</source>
        <translation>Der Bereich des Herstellers, mit dem Material eingegeben, wäre besser.</translation>
    </message>
    <message>
        <source>The mandrel grips this core as it is.</source>
        <translation>Der Spanndorn spannt diese Hülse, wie sie ist.</translation>
    </message>
    <message>
        <source>The mass is used, since the roll was opened and a diameter is missing. Measure it.</source>
        <translation>Die Masse gilt, da die Rolle angebrochen wurde und ein Durchmesser fehlt. Diesen messen.</translation>
    </message>
    <message>
        <source>The mass to hang on the dancer's arm.</source>
        <translation>Die Masse, die an den Tänzerarm zu hängen ist.</translation>
    </message>
    <message>
        <source>The middle of the range cannot be set here: this is the nearest that can.</source>
        <translation>Die Mitte des Bereichs kann hier nicht eingestellt werden: Dies ist der nächste mögliche Wert.</translation>
    </message>
    <message>
        <source>The middle of the range; the least that keeps the web in hand is best.</source>
        <translation>Die Mitte des Bereichs; am besten ist der kleinste Zug, der die Bahn noch führt.</translation>
    </message>
    <message>
        <source>The middle of the sensor's window stands over the edge of the web that is there.</source>
        <translation>Die Mitte des Sensorfensters steht über der Kante der Bahn, die da ist.</translation>
    </message>
    <message>
        <source>The mirror %1 cannot be restored from as it is. Move it away and keep it: another is begun then.</source>
        <translation>Aus dem Spiegel %1 kann so nicht wiederhergestellt werden. Verschieben und aufbewahren: Dann wird ein neuer begonnen.</translation>
    </message>
    <message>
        <source>The mirror %1 holds more seals than the logbook: the logbook was restored from an older copy, or its newest seals were cut off.</source>
        <translation>Der Spiegel %1 enthält mehr Siegel als das Protokollbuch: Es wurde aus einer älteren Kopie wiederhergestellt, oder seine neuesten Siegel wurden abgeschnitten.</translation>
    </message>
    <message>
        <source>The mirror %1 holds other seals than the logbook: one of them was changed, or they are of two logbooks.</source>
        <translation>Der Spiegel %1 enthält andere Siegel als das Protokollbuch: Eines von beiden wurde geändert, oder sie gehören zu zwei Protokollbüchern.</translation>
    </message>
    <message>
        <source>The mirror %1 was not brought to its end.</source>
        <translation>Der Spiegel %1 wurde nicht zu Ende gebracht.</translation>
    </message>
    <message>
        <source>The mirror could not be written; the system says: %1.</source>
        <translation>Der Spiegel konnte nicht geschrieben werden; das System meldet: %1.</translation>
    </message>
    <message>
        <source>The most air in its shaft, from its plate.</source>
        <translation>Höchste Luft in ihrer Welle, laut Typenschild.</translation>
    </message>
    <message>
        <source>The most that it can be set to.</source>
        <translation>Das Größte, worauf es sich einstellen lässt.</translation>
    </message>
    <message>
        <source>The most that it turns.</source>
        <translation>Wie weit er höchstens dreht.</translation>
    </message>
    <message>
        <source>The most that its plate allows.</source>
        <translation>Das Höchste, was sein Typenschild erlaubt.</translation>
    </message>
    <message>
        <source>The name "%1" stands twice in one object.</source>
        <translation>Der Name „%1“ steht zweimal in einem Objekt.</translation>
    </message>
    <message>
        <source>The name %1 is used twice.</source>
        <translation>Der Name %1 ist zweimal verwendet.</translation>
    </message>
    <message>
        <source>The name by which jobs and rolls mean it.</source>
        <translation>Der Name, mit dem Aufträge und Rollen ihn meinen.</translation>
    </message>
    <message>
        <source>The name by which others in this file mean it.</source>
        <translation>Der Name, mit dem andere in dieser Datei es meinen.</translation>
    </message>
    <message>
        <source>The name of a further path, a lane or the waste; nothing for the main one.</source>
        <translation>Der Name eines weiteren Wegs, eines Streifens oder des Abfalls; nichts für den Hauptweg.</translation>
    </message>
    <message>
        <source>The name that runs and targets of this press bear. Keep it in every edition.</source>
        <translation>Der Name, den Durchgänge und Sollwerte dieser Maschine tragen. In jeder Ausgabe behalten.</translation>
    </message>
    <message>
        <source>The name that runs of this job bear.</source>
        <translation>Der Name, den Durchgänge dieses Auftrags tragen.</translation>
    </message>
    <message>
        <source>The narrowest web that it runs.</source>
        <translation>Die schmalste Bahn, die sie fährt.</translation>
    </message>
    <message>
        <source>The new roll</source>
        <translation>Die neue Rolle</translation>
    </message>
    <message>
        <source>The new web</source>
        <translation>Die neue Bahn</translation>
    </message>
    <message>
        <source>The new web does not lie on the table.</source>
        <translation>Die neue Bahn liegt nicht auf dem Tisch.</translation>
    </message>
    <message>
        <source>The new web is not joined to the old one.</source>
        <translation>Die neue Bahn ist nicht mit der alten verbunden.</translation>
    </message>
    <message>
        <source>The newest of these readings has no window.</source>
        <translation>Die neueste dieser Ablesungen hat kein Fenster.</translation>
    </message>
    <message>
        <source>The next whole tooth up; what is over is gap between the labels.</source>
        <translation>Der nächste ganze Zahn nach oben; was übrig ist, wird Lücke zwischen den Etiketten.</translation>
    </message>
    <message>
        <source>The nips are closed</source>
        <translation>Die Klemmwalzen sind geschlossen</translation>
    </message>
    <message>
        <source>The nips are not closed yet.</source>
        <translation>Die Klemmwalzen sind noch nicht geschlossen.</translation>
    </message>
    <message>
        <source>The note is empty.</source>
        <translation>Die Notiz ist leer.</translation>
    </message>
    <message>
        <source>The number in "%1" is too large or too small.</source>
        <translation>Die Zahl in „%1“ ist zu groß oder zu klein.</translation>
    </message>
    <message>
        <source>The number of its print station.</source>
        <translation>Die Nummer ihres Druckwerks.</translation>
    </message>
    <message>
        <source>The number of splices is not a whole number.</source>
        <translation>Die Anzahl der Klebestellen ist keine ganze Zahl.</translation>
    </message>
    <message>
        <source>The outer wraps</source>
        <translation>Die Außenlagen</translation>
    </message>
    <message>
        <source>The outer wraps of the roll are nicked.</source>
        <translation>Die Außenlagen der Rolle haben Kerben.</translation>
    </message>
    <message>
        <source>The parts are all alike, so nothing can be told apart.</source>
        <translation>Die Teile sind alle gleich; so lässt sich nichts unterscheiden.</translation>
    </message>
    <message>
        <source>The passphrase has more than one line.</source>
        <translation>Die Passphrase hat mehr als eine Zeile.</translation>
    </message>
    <message>
        <source>The passphrase is a few characters over and over again.</source>
        <translation>Die Passphrase besteht aus wenigen, immer wiederholten Zeichen.</translation>
    </message>
    <message>
        <source>The passphrase is a straight run like abcdef.</source>
        <translation>Die Passphrase ist eine gerade Folge wie abcdef.</translation>
    </message>
    <message>
        <source>The passphrase is little more than the name or the PIN.</source>
        <translation>Die Passphrase ist kaum mehr als der Name oder die PIN.</translation>
    </message>
    <message>
        <source>The passphrase is longer than 256 characters.</source>
        <translation>Die Passphrase ist länger als 256 Zeichen.</translation>
    </message>
    <message>
        <source>The passphrase is shorter than 15 characters.</source>
        <translation>Die Passphrase ist kürzer als 15 Zeichen.</translation>
    </message>
    <message>
        <source>The phases do not follow each other.</source>
        <translation>Die Phasen folgen nicht aufeinander.</translation>
    </message>
    <message>
        <source>The picture or file %1 that seal %3 names (SHA-256 %2...) is not the one that was attached: its bytes were changed.</source>
        <translation>Das Bild oder die Datei %1, die Siegel %3 nennt (SHA-256 %2...), ist nicht das Angehängte: Die Bytes wurden geändert.</translation>
    </message>
    <message>
        <source>The place where one stands for it.</source>
        <translation>Der Standort, an dem man dafür steht.</translation>
    </message>
    <message>
        <source>The plate is made this much shorter, and stretches to length on its cylinder.</source>
        <translation>Um so viel kürzer wird die Druckplatte gemacht; auf ihrem Zylinder dehnt sie sich auf Länge.</translation>
    </message>
    <message>
        <source>The power is not on yet.</source>
        <translation>Der Strom ist noch nicht an.</translation>
    </message>
    <message>
        <source>The power is off.</source>
        <translation>Der Strom ist aus.</translation>
    </message>
    <message>
        <source>The power is on</source>
        <translation>Der Strom ist an</translation>
    </message>
    <message>
        <source>The practice logbook of this PC has attempts of %1 under the id %2, not of %3.</source>
        <translation>Das Übungs-Protokollbuch dieses PCs hat unter der Nummer %2 Versuche von %1, nicht von %3.</translation>
    </message>
    <message>
        <source>The practice press needs %1.</source>
        <translation>Die Übungsmaschine braucht %1.</translation>
    </message>
    <message>
        <source>The press</source>
        <translation>Die Maschine</translation>
    </message>
    <message>
        <source>The press %1 is not withdrawn from use.</source>
        <translation>Die Maschine %1 ist nicht gesperrt.</translation>
    </message>
    <message>
        <source>The press does not start: %1 is latched.</source>
        <translation>Die Maschine läuft nicht an: %1 ist eingerastet.</translation>
    </message>
    <message>
        <source>The press does not start: %1 is open.</source>
        <translation>Die Maschine läuft nicht an: %1 ist offen.</translation>
    </message>
    <message>
        <source>The press does not start: a stop is held.</source>
        <translation>Die Maschine läuft nicht an: Ein Halt wird gehalten.</translation>
    </message>
    <message>
        <source>The press does not start: it was not reset.</source>
        <translation>Die Maschine läuft nicht an: Sie wurde nicht zurückgesetzt.</translation>
    </message>
    <message>
        <source>The press is withdrawn from use.</source>
        <translation>Die Maschine ist gesperrt.</translation>
    </message>
    <message>
        <source>The press moves here while a stop may still be held.</source>
        <translation>Die Maschine bewegt sich hier, während noch ein Halt gehalten werden kann.</translation>
    </message>
    <message>
        <source>The press moves in this step, which does not ask for %1.</source>
        <translation>Die Maschine bewegt sich in diesem Schritt, der nicht nach %1 fragt.</translation>
    </message>
    <message>
        <source>The press moves though a guard is open: its switch sticks.</source>
        <translation>Die Maschine läuft, obwohl eine Schutzeinrichtung offen ist: Ihr Schalter klemmt.</translation>
    </message>
    <message>
        <source>The press must not move: a stop is held by %1.</source>
        <translation>Die Maschine darf sich nicht bewegen: Ein Halt wird gehalten von %1.</translation>
    </message>
    <message>
        <source>The press was moved while nothing hung on its web.</source>
        <translation>Die Maschine wurde bewegt, während nichts an ihrer Bahn hing.</translation>
    </message>
    <message>
        <source>The pressure of the lift was not that of this roll.</source>
        <translation>Der Druck des Lifts war nicht der dieser Rolle.</translation>
    </message>
    <message>
        <source>The procedure has %1 remedies here, the translation %2.</source>
        <translation>Der Ablauf hat hier %1 Abhilfen, die Übersetzung %2.</translation>
    </message>
    <message>
        <source>The procedure has nothing of this id.</source>
        <translation>Der Ablauf hat nichts mit dieser Kennung.</translation>
    </message>
    <message>
        <source>The procedure says something else by now: it is read in its own words here.</source>
        <translation>Der Ablauf sagt inzwischen etwas anderes: Hier wird er in seinen eigenen Worten gelesen.</translation>
    </message>
    <message>
        <source>The program ended by itself the last time. What was answered and signed before that is kept.</source>
        <translation>Das Programm endete beim letzten Mal von selbst. Was davor beantwortet und abgezeichnet wurde, ist erhalten.</translation>
    </message>
    <message>
        <source>The program ended while it was writing in %1, and the half-written part can only be taken back where the file may be written.</source>
        <translation>Das Programm endete, während es in %1 schrieb, und der halb geschriebene Teil kann nur dort zurückgenommen werden, wo die Datei geschrieben werden darf.</translation>
    </message>
    <message>
        <source>The range of tension, %1, is held down to %2: %3.</source>
        <translation>Der Zugbereich, %1, ist auf %2 begrenzt: %3.</translation>
    </message>
    <message>
        <source>The readings are not in control: what they were says nothing of what they will be.</source>
        <translation>Die Ablesungen sind nicht beherrscht: Was sie waren, sagt nichts darüber, was sie sein werden.</translation>
    </message>
    <message>
        <source>The readings were taken at too few different settings.</source>
        <translation>Die Ablesungen wurden bei zu wenigen verschiedenen Einstellungen gemacht.</translation>
    </message>
    <message>
        <source>The record itself stands; do not go by this picture or file. Restore it from the mirror or a copy.</source>
        <translation>Das Protokoll selbst gilt; nicht nach diesem Bild oder dieser Datei richten. Aus Spiegel oder Kopie wiederherstellen.</translation>
    </message>
    <message>
        <source>The repeat wished for, where teeth are still to be chosen.</source>
        <translation>Die gewünschte Drucklänge, wo Zähne noch zu wählen sind.</translation>
    </message>
    <message>
        <source>The rewind core is locked</source>
        <translation>Die Hülse der Aufwicklung ist verriegelt</translation>
    </message>
    <message>
        <source>The rewind core is not locked yet.</source>
        <translation>Die Hülse der Aufwicklung ist noch nicht verriegelt.</translation>
    </message>
    <message>
        <source>The rewind's shaft does not hold a core.</source>
        <translation>Die Welle der Aufwicklung hält keine Hülse.</translation>
    </message>
    <message>
        <source>The role %1 does not allow a run to be begun.</source>
        <translation>Die Funktion %1 erlaubt nicht, einen Durchgang zu beginnen.</translation>
    </message>
    <message>
        <source>The role %1 does not allow this.</source>
        <translation>Die Funktion %1 erlaubt dies nicht.</translation>
    </message>
    <message>
        <source>The roll hangs off the middle of the press.</source>
        <translation>Die Rolle hängt neben der Mitte der Maschine.</translation>
    </message>
    <message>
        <source>The roll hangs the wrong way round.</source>
        <translation>Die Rolle hängt verkehrt herum.</translation>
    </message>
    <message>
        <source>The roll has run out, and its web left the core.</source>
        <translation>Die Rolle ist abgelaufen, und ihre Bahn hat die Hülse verlassen.</translation>
    </message>
    <message>
        <source>The roll is %1 across; the unwind takes %2 at most.</source>
        <translation>Die Rolle hat %1 Durchmesser; die Abwicklung nimmt höchstens %2.</translation>
    </message>
    <message>
        <source>The roll is %1 wide; the job is made for %2.</source>
        <translation>Die Rolle ist %1 breit; der Auftrag ist für %2 gemacht.</translation>
    </message>
    <message>
        <source>The roll is %1 wide; this press is made for %2 and more.</source>
        <translation>Die Rolle ist %1 breit; diese Maschine ist für %2 und mehr gemacht.</translation>
    </message>
    <message>
        <source>The roll is %1 wide; this press takes %2 at most.</source>
        <translation>Die Rolle ist %1 breit; diese Maschine nimmt höchstens %2.</translation>
    </message>
    <message>
        <source>The roll is %1; the job is for %2.</source>
        <translation>Die Rolle ist %1; der Auftrag ist für %2.</translation>
    </message>
    <message>
        <source>The roll is colder or damper than this room: it changes its length and its tension while it runs.</source>
        <translation>Die Rolle ist kälter oder feuchter als dieser Raum: Sie ändert beim Laufen ihre Länge und ihren Zug.</translation>
    </message>
    <message>
        <source>The roll is dusty.</source>
        <translation>Die Rolle ist staubig.</translation>
    </message>
    <message>
        <source>The roll is held by the lift, not by hands.</source>
        <translation>Die Rolle wird vom Rollenlift gehalten, nicht von Händen.</translation>
    </message>
    <message>
        <source>The roll is held on the shaft</source>
        <translation>Die Rolle ist auf der Welle gehalten</translation>
    </message>
    <message>
        <source>The roll is lifted</source>
        <translation>Die Rolle ist angehoben</translation>
    </message>
    <message>
        <source>The roll is not held on the shaft yet.</source>
        <translation>Die Rolle ist noch nicht auf der Welle gehalten.</translation>
    </message>
    <message>
        <source>The roll is not lifted yet.</source>
        <translation>Die Rolle ist noch nicht angehoben.</translation>
    </message>
    <message>
        <source>The roll is not of the size that its label says.</source>
        <translation>Die Rolle hat nicht die Größe, die ihr Etikett sagt.</translation>
    </message>
    <message>
        <source>The roll is not on the shaft yet.</source>
        <translation>Die Rolle ist noch nicht auf der Welle.</translation>
    </message>
    <message>
        <source>The roll is not up at the shaft.</source>
        <translation>Die Rolle ist nicht oben an der Welle.</translation>
    </message>
    <message>
        <source>The roll is on the shaft</source>
        <translation>Die Rolle ist auf der Welle</translation>
    </message>
    <message>
        <source>The roll is out of round.</source>
        <translation>Die Rolle ist unrund.</translation>
    </message>
    <message>
        <source>The roll is said to be %1 across, no more than its core, %2 outside.</source>
        <translation>Die Rolle soll %1 Durchmesser haben, nicht mehr als ihre Hülse, außen %2.</translation>
    </message>
    <message>
        <source>The roll is supported</source>
        <translation>Die Rolle ist getragen</translation>
    </message>
    <message>
        <source>The roll is wound the other way than usual on this press: feed it %1.</source>
        <translation>Die Rolle ist anders herum gewickelt, als an dieser Maschine üblich: Zuführung %1.</translation>
    </message>
    <message>
        <source>The roll jumps up: %1 is far more than it weighs.</source>
        <translation>Die Rolle springt hoch: %1 ist viel mehr, als sie wiegt.</translation>
    </message>
    <message>
        <source>The roll on its shaft</source>
        <translation>Die Rolle auf ihrer Welle</translation>
    </message>
    <message>
        <source>The roll or its core is crushed.</source>
        <translation>Die Rolle oder ihre Hülse ist gequetscht.</translation>
    </message>
    <message>
        <source>The roll was not held by its shaft.</source>
        <translation>Die Rolle wurde von ihrer Welle nicht gehalten.</translation>
    </message>
    <message>
        <source>The roll was opened before; the %1 stated is of the full roll.</source>
        <translation>Die Rolle wurde schon angebrochen; die Angabe %1 gilt für die volle Rolle.</translation>
    </message>
    <message>
        <source>The roll weighs %1, this lift carries %2.</source>
        <translation>Die Rolle wiegt %1, dieser Rollenlift trägt %2.</translation>
    </message>
    <message>
        <source>The roll weighs %1, this press takes %2.</source>
        <translation>Die Rolle wiegt %1, diese Maschine nimmt %2.</translation>
    </message>
    <message>
        <source>The roll's edge is nicked: the web may tear there under tension.</source>
        <translation>Die Kante der Rolle hat eine Kerbe: Unter Zug kann die Bahn dort reißen.</translation>
    </message>
    <message>
        <source>The roller at which a further path leaves.</source>
        <translation>Die Walze, an der ein weiterer Weg abgeht.</translation>
    </message>
    <message>
        <source>The roller at which it ends.</source>
        <translation>Die Walze, an der sie endet.</translation>
    </message>
    <message>
        <source>The roller at which this stretch of even tension begins.</source>
        <translation>Die Walze, an der dieser Abschnitt gleichen Bahnzugs beginnt.</translation>
    </message>
    <message>
        <source>The roller behind which the table lies.</source>
        <translation>Die Walze, hinter der der Tisch liegt.</translation>
    </message>
    <message>
        <source>The roller next to it.</source>
        <translation>Die Walze daneben.</translation>
    </message>
    <message>
        <source>The roller where it is.</source>
        <translation>Die Walze, wo es ist.</translation>
    </message>
    <message>
        <source>The rollers that belong to it.</source>
        <translation>Die Walzen, die dazugehören.</translation>
    </message>
    <message>
        <source>The rollers that it moves, first and last.</source>
        <translation>Die Walzen, die er bewegt, erste und letzte.</translation>
    </message>
    <message>
        <source>The row of seal %1 says something else than its document about what was sealed, when or by whom: the row was changed.</source>
        <translation>Die Zeile von Siegel %1 sagt etwas anderes als ihr Dokument darüber, was, wann oder von wem versiegelt wurde: Die Zeile wurde geändert.</translation>
    </message>
    <message>
        <source>The run %1, which this sheet is of, is not sealed in this logbook.</source>
        <translation>Der Durchgang %1, von dem dieses Blatt ist, ist in diesem Protokollbuch nicht versiegelt.</translation>
    </message>
    <message>
        <source>The run is in this person's hands already.</source>
        <translation>Der Durchgang ist schon in den Händen dieser Person.</translation>
    </message>
    <message>
        <source>The run that this one continues has answered this for other figures, and it would not be asked again: %1.</source>
        <translation>Der Durchgang, den dieser fortsetzt, hat dies für andere Zahlen beantwortet, und es würde nicht neu gefragt: %1.</translation>
    </message>
    <message>
        <source>The run that this one continues has not ended.</source>
        <translation>Der Durchgang, den dieser fortsetzt, ist nicht beendet.</translation>
    </message>
    <message>
        <source>The run that this one continues was for job %1.</source>
        <translation>Der Durchgang, den dieser fortsetzt, war für Auftrag %1.</translation>
    </message>
    <message>
        <source>The run that this one continues was on another press.</source>
        <translation>Der Durchgang, den dieser fortsetzt, war an einer anderen Maschine.</translation>
    </message>
    <message>
        <source>The run to measure the others by is not one of them.</source>
        <translation>Der Durchgang, an dem gemessen wird, ist nicht dabei.</translation>
    </message>
    <message>
        <source>The run was interrupted and has not been taken up again.</source>
        <translation>Der Durchgang wurde unterbrochen und nicht wieder aufgenommen.</translation>
    </message>
    <message>
        <source>The runs</source>
        <translation>Die Durchgänge</translation>
    </message>
    <message>
        <source>The same air on a smaller roll pulls harder: that is why it is turned down.</source>
        <translation>Dieselbe Luft zieht an einer kleineren Rolle stärker: Darum wird sie heruntergedreht.</translation>
    </message>
    <message>
        <source>The same from full roll to core. A brake that runs hot grips less.</source>
        <translation>Gleich von der vollen Rolle bis zur Hülse. Eine heiß laufende Bremse greift weniger.</translation>
    </message>
    <message>
        <source>The same number with "%1" as its unit would fit.</source>
        <translation>Dieselbe Zahl mit der Einheit „%1“ würde passen.</translation>
    </message>
    <message>
        <source>The same torque on a larger roll pulls less: that is why it is raised.</source>
        <translation>Dasselbe Drehmoment zieht an einer größeren Rolle weniger: Darum wird es erhöht.</translation>
    </message>
    <message>
        <source>The scenario wants the %1 %2, which is known neither here nor among what comes with the program.</source>
        <translation>Die Aufgabe braucht %1 %2; das ist weder hier bekannt noch bei dem, was mit dem Programm kommt.</translation>
    </message>
    <message>
        <source>The seal of run %1 is gone.</source>
        <translation>Das Siegel von Durchgang %1 fehlt.</translation>
    </message>
    <message>
        <source>The seal of run %1 is not in this file.</source>
        <translation>Das Siegel von Durchgang %1 ist nicht in dieser Datei.</translation>
    </message>
    <message>
        <source>The seals are checked all the same. Keep this file and restore a backup.</source>
        <translation>Die Siegel werden trotzdem geprüft. Diese Datei aufbewahren und eine Sicherung wiederherstellen.</translation>
    </message>
    <message>
        <source>The search finds other words than those that stand beside it; the engine says: %1.</source>
        <translation>Die Suche findet andere Wörter als die, die daneben stehen; die Datenbank meldet: %1.</translation>
    </message>
    <message>
        <source>The sensor of guide %1 is dirty.</source>
        <translation>Der Sensor des Bahnlaufreglers %1 ist schmutzig.</translation>
    </message>
    <message>
        <source>The sensor of guide %1 is dirty: it hardly tells web from none.</source>
        <translation>Der Sensor des Bahnlaufreglers %1 ist schmutzig: Er unterscheidet Bahn und keine kaum.</translation>
    </message>
    <message>
        <source>The sensor of guide %1 was not calibrated on this web.</source>
        <translation>Der Sensor des Bahnlaufreglers %1 wurde nicht auf diese Bahn abgeglichen.</translation>
    </message>
    <message>
        <source>The sensor stands %1 behind the guide, in a span of %2: it sees the web too late.</source>
        <translation>Der Sensor steht %1 hinter dem Bahnlaufregler, in einer freien Bahnlänge von %2: Er sieht die Bahn zu spät.</translation>
    </message>
    <message>
        <source>The sensor's window</source>
        <translation>Das Fenster des Sensors</translation>
    </message>
    <message>
        <source>The sensors are calibrated</source>
        <translation>Die Sensoren sind kalibriert</translation>
    </message>
    <message>
        <source>The sensors are not calibrated yet.</source>
        <translation>Die Sensoren sind noch nicht kalibriert.</translation>
    </message>
    <message>
        <source>The set point of the control loop; zero the load cell with the web slack first.</source>
        <translation>Der Sollwert des Regelkreises; zuerst die Kraftmessdose bei loser Bahn auf null stellen.</translation>
    </message>
    <message>
        <source>The setting from which on there is torque.</source>
        <translation>Die Einstellung, ab der Drehmoment da ist.</translation>
    </message>
    <message>
        <source>The settings are not all of one kind.</source>
        <translation>Die Einstellungen sind nicht alle von einer Art.</translation>
    </message>
    <message>
        <source>The settings are not of the kind that is set here.</source>
        <translation>Die Einstellungen sind nicht von der Art, die hier eingestellt wird.</translation>
    </message>
    <message>
        <source>The settings of these runs lie too near together to tell a line from.</source>
        <translation>Die Einstellungen dieser Durchgänge liegen für eine Gerade zu nah beieinander.</translation>
    </message>
    <message>
        <source>The shaft holds the core as it is.</source>
        <translation>Die Welle hält die Hülse, wie sie ist.</translation>
    </message>
    <message>
        <source>The shaft's plate wants at least %1; the air supply gives %2 at most.</source>
        <translation>Das Schild der Welle will mindestens %1; die Luftversorgung gibt höchstens %2.</translation>
    </message>
    <message>
        <source>The share of the piston's force that arrives at the roll.</source>
        <translation>Der Anteil der Kolbenkraft, der an der Rolle ankommt.</translation>
    </message>
    <message>
        <source>The share of the web that it covers.</source>
        <translation>Der Anteil der Bahn, den sie bedeckt.</translation>
    </message>
    <message>
        <source>The share that is lost while it runs.</source>
        <translation>Der Anteil, der im Lauf verloren geht.</translation>
    </message>
    <message>
        <source>The sheet could not be drawn: the printer or the PDF did not begin.</source>
        <translation>Das Blatt konnte nicht gezeichnet werden: Drucker oder PDF begannen nicht.</translation>
    </message>
    <message>
        <source>The sheet names seal %1, which is not in this file, so the two cannot be compared.</source>
        <translation>Das Einrichteblatt nennt Siegel %1, das nicht in dieser Datei ist; die beiden lassen sich nicht vergleichen.</translation>
    </message>
    <message>
        <source>The sheet was printed when the logbook held seal %1, and now it ends before that: newer records were cut off, or an older copy was restored.</source>
        <translation>Das Blatt wurde gedruckt, als das Protokollbuch Siegel %1 enthielt; nun endet es davor: Neuere Protokolle wurden abgeschnitten, oder eine ältere Kopie wurde wiederhergestellt.</translation>
    </message>
    <message>
        <source>The signature of seal %1 says something else than its document about who signed, when or what for.</source>
        <translation>Die Signatur von Siegel %1 sagt etwas anderes als ihr Dokument darüber, wer, wann oder wofür abgezeichnet hat.</translation>
    </message>
    <message>
        <source>The signature of seal %1 was not given for this document.</source>
        <translation>Die Signatur von Siegel %1 wurde nicht für dieses Dokument gegeben.</translation>
    </message>
    <message>
        <source>The slowest hold-to-run movement, %1, is faster than the guidance for set-up.</source>
        <translation>Die langsamste Bewegung mit Selbstrückstellung, %1, ist schneller als der Richtwert zum Einrichten.</translation>
    </message>
    <message>
        <source>The slowest steady speed.</source>
        <translation>Die langsamste gleichbleibende Geschwindigkeit.</translation>
    </message>
    <message>
        <source>The slowest tenth of the runs have nothing in common that the others have less often.</source>
        <translation>Das langsamste Zehntel der Durchgänge hat nichts gemeinsam, was die übrigen seltener haben.</translation>
    </message>
    <message>
        <source>The smallest core, by its inside, that it holds.</source>
        <translation>Die kleinste Hülse, innen gemessen, die er hält.</translation>
    </message>
    <message>
        <source>The speed at which it is to run.</source>
        <translation>Die Geschwindigkeit, mit der er laufen soll.</translation>
    </message>
    <message>
        <source>The speed at which that was measured.</source>
        <translation>Die Geschwindigkeit, bei der das gemessen wurde.</translation>
    </message>
    <message>
        <source>The speed of creeping.</source>
        <translation>Die Geschwindigkeit im Kriechgang.</translation>
    </message>
    <message>
        <source>The splice has been watched through</source>
        <translation>Die Klebestelle wurde bis hindurch beobachtet</translation>
    </message>
    <message>
        <source>The splice has not been watched through yet.</source>
        <translation>Die Klebestelle wurde noch nicht bis hindurch beobachtet.</translation>
    </message>
    <message>
        <source>The splice holds %1 times the highest tension of the window; it is to hold %2 times.</source>
        <translation>Die Klebestelle hält das %1-Fache des höchsten Zugs im Fenster; sie soll das %2-Fache halten.</translation>
    </message>
    <message>
        <source>The splice holds %1 times the worst tension in a stop; it is to hold %2 times.</source>
        <translation>Die Klebestelle hält das %1-Fache des größten Zugs bei einem Halt; sie soll das %2-Fache halten.</translation>
    </message>
    <message>
        <source>The splice table follows roller %1, which is not on the main path.</source>
        <translation>Der Klebetisch folgt auf Walze %1, die nicht auf dem Hauptbahnweg liegt.</translation>
    </message>
    <message>
        <source>The spread is not a number above nought.</source>
        <translation>Die Streuung ist keine Zahl über null.</translation>
    </message>
    <message>
        <source>The station where this colour stands.</source>
        <translation>Das Druckwerk, in dem diese Farbe steht.</translation>
    </message>
    <message>
        <source>The stations are off impression</source>
        <translation>Die Druckwerke sind abgestellt</translation>
    </message>
    <message>
        <source>The step of a procedure that shows that it was done: its stage, place and name, with dots between.</source>
        <translation>Der Schritt eines Ablaufs, der zeigt, dass sie getan ist: Abschnitt, Platz und Name, mit Punkten dazwischen.</translation>
    </message>
    <message>
        <source>The step that guards against it</source>
        <translation>Der Schritt, der davor schützt</translation>
    </message>
    <message>
        <source>The stored event's member "%1" is missing or not what it must be.</source>
        <translation>Der Teil „%1“ des gespeicherten Ereignisses fehlt oder ist nicht, was er sein muss.</translation>
    </message>
    <message>
        <source>The supervisor for a vital step must be somebody other than the person at the run.</source>
        <translation>Die Aufsicht für einen kritischen Schritt muss jemand anderes sein als die Person am Durchgang.</translation>
    </message>
    <message>
        <source>The switch of %1 sticks.</source>
        <translation>Der Schalter von %1 klemmt.</translation>
    </message>
    <message>
        <source>The table %1 has a row that no sealed document tells of: %2.</source>
        <translation>Die Tabelle %1 hat eine Zeile, von der kein versiegeltes Dokument berichtet: %2.</translation>
    </message>
    <message>
        <source>The table %1 has lost a row that a sealed document tells of: %2.</source>
        <translation>Die Tabelle %1 hat eine Zeile verloren, von der ein versiegeltes Dokument berichtet: %2.</translation>
    </message>
    <message>
        <source>The table %1 says something else than the sealed document: %2.</source>
        <translation>Die Tabelle %1 sagt etwas anderes als das versiegelte Dokument: %2.</translation>
    </message>
    <message>
        <source>The tag is that of roll %1; entered is roll %2.</source>
        <translation>Der Rollenzettel ist der von Rolle %1; eingegeben ist Rolle %2.</translation>
    </message>
    <message>
        <source>The tape itself gives way: take a stronger tape, or run at less tension. A longer overlap changes nothing.</source>
        <translation>Das Klebeband selbst gibt nach: stärkeres Klebeband nehmen oder mit weniger Zug fahren. Eine längere Überlappung ändert nichts.</translation>
    </message>
    <message>
        <source>The tape itself gives way: tape both faces, or take a stronger tape, or run at less tension. A longer overlap changes nothing.</source>
        <translation>Das Klebeband selbst gibt nach: beidseitig kleben, oder stärkeres Klebeband nehmen, oder mit weniger Zug fahren. Eine längere Überlappung ändert nichts.</translation>
    </message>
    <message>
        <source>The tape only has to hold the tail; the wraps hold the web.</source>
        <translation>Das Klebeband muss nur das Ende halten; die Bahn halten die Windungen.</translation>
    </message>
    <message>
        <source>The tension of %1 is not on.</source>
        <translation>Die Spannung von %1 ist nicht an.</translation>
    </message>
    <message>
        <source>The tension of %1 was not set as this roll wants it.</source>
        <translation>Die Spannung von %1 wurde nicht so eingestellt, wie diese Rolle sie braucht.</translation>
    </message>
    <message>
        <source>The tension of %1 was not set at all.</source>
        <translation>Die Spannung von %1 wurde gar nicht eingestellt.</translation>
    </message>
    <message>
        <source>The tension swings up and down once a turn of the roll.</source>
        <translation>Die Spannung schwankt einmal je Umdrehung der Rolle.</translation>
    </message>
    <message>
        <source>The text of %1 ends otherwise than the procedure's.</source>
        <translation>Der Text von %1 endet anders als der des Ablaufs.</translation>
    </message>
    <message>
        <source>The text of %1 has %2 characters; %3 fit on a card.</source>
        <translation>Der Text von %1 hat %2 Zeichen; auf eine Karte passen %3.</translation>
    </message>
    <message>
        <source>The text of %1 has a space too many.</source>
        <translation>Der Text von %1 hat ein Leerzeichen zu viel.</translation>
    </message>
    <message>
        <source>The text of %1 has not the same words in braces as the procedure's.</source>
        <translation>Der Text von %1 hat in geschweiften Klammern anderes als der des Ablaufs.</translation>
    </message>
    <message>
        <source>The text of %1 is empty.</source>
        <translation>Der Text von %1 ist leer.</translation>
    </message>
    <message>
        <source>The text of %1 is the procedure's own.</source>
        <translation>Der Text von %1 ist der des Ablaufs selbst.</translation>
    </message>
    <message>
        <source>The torque does not rise with the setting.</source>
        <translation>Das Drehmoment steigt nicht mit der Einstellung.</translation>
    </message>
    <message>
        <source>The torque is given per %1, which is not what the zone's setting is given in.</source>
        <translation>Angegeben ist ein Drehmoment je Größe der Art: %1. Die Einstellung der Zone ist nicht darin angegeben.</translation>
    </message>
    <message>
        <source>The torque is said to begin at %1, and no more than %2 can be set.</source>
        <translation>Das Drehmoment soll bei %1 beginnen, und mehr als %2 lässt sich nicht einstellen.</translation>
    </message>
    <message>
        <source>The torque that each unit of the setting makes. "Find what a setting does" finds it.</source>
        <translation>Das Drehmoment je Einheit der Einstellung. „Finden, was eine Einstellung tut“ findet es.</translation>
    </message>
    <message>
        <source>The training record is not named by its SHA-256, 64 digits in hexadecimal.</source>
        <translation>Der Übungsnachweis ist nicht mit seiner SHA-256 genannt, 64 hexadezimalen Ziffern.</translation>
    </message>
    <message>
        <source>The translation has no words for it.</source>
        <translation>Die Übersetzung hat keinen Text dafür.</translation>
    </message>
    <message>
        <source>The two PINs are not the same.</source>
        <translation>Die beiden PINs sind nicht gleich.</translation>
    </message>
    <message>
        <source>The two judges were not given the same answers to choose from.</source>
        <translation>Die beiden Urteilenden hatten nicht dieselben Antworten zur Wahl.</translation>
    </message>
    <message>
        <source>The two passphrases are not the same.</source>
        <translation>Die beiden Passphrasen sind nicht gleich.</translation>
    </message>
    <message>
        <source>The upper end of the window.</source>
        <translation>Das obere Ende des Fensters.</translation>
    </message>
    <message>
        <source>The wall of a core, where the roll does not say.</source>
        <translation>Die Wandung einer Hülse, wo die Rolle es nicht sagt.</translation>
    </message>
    <message>
        <source>The wall of its cores.</source>
        <translation>Die Wandung ihrer Hülsen.</translation>
    </message>
    <message>
        <source>The waste share included.</source>
        <translation>Der Anteil der Makulatur ist enthalten.</translation>
    </message>
    <message>
        <source>The web bends in the span before the guide; a longer span reaches further. Less than its stroke says that the angle ends first.</source>
        <translation>Die Bahn biegt sich in der freien Bahnlänge vor dem Bahnlaufregler; eine längere reicht weiter. Weniger als sein Stellweg heißt, dass der Winkel zuerst endet.</translation>
    </message>
    <message>
        <source>The web broke behind %1.</source>
        <translation>Die Bahn riss hinter %1.</translation>
    </message>
    <message>
        <source>The web from %1 to %2 would run through roller %3.</source>
        <translation>Die Bahn von %1 nach %2 würde durch Walze %3 laufen.</translation>
    </message>
    <message>
        <source>The web guide, by itself</source>
        <translation>Der Bahnlaufregler, von selbst</translation>
    </message>
    <message>
        <source>The web guide, to its middle</source>
        <translation>Der Bahnlaufregler, zur Mitte</translation>
    </message>
    <message>
        <source>The web hangs behind %1.</source>
        <translation>Die Bahn hängt hinter %1 durch.</translation>
    </message>
    <message>
        <source>The web has been moved</source>
        <translation>Die Bahn wurde bewegt</translation>
    </message>
    <message>
        <source>The web has not been moved yet.</source>
        <translation>Die Bahn wurde noch nicht bewegt.</translation>
    </message>
    <message>
        <source>The web has to drag the roll up to speed. Above the limit, speed up more slowly while it is large.</source>
        <translation>Die Bahn muss die Rolle auf Geschwindigkeit ziehen. Über der Grenze langsamer hochfahren, solange sie groß ist.</translation>
    </message>
    <message>
        <source>The web holds on this roller until one side pulls so many times as hard as the other.</source>
        <translation>Die Bahn haftet auf dieser Walze, bis eine Seite so viele Male so stark zieht wie die andere.</translation>
    </message>
    <message>
        <source>The web is joined</source>
        <translation>Die Bahn ist verbunden</translation>
    </message>
    <message>
        <source>The web is led away already.</source>
        <translation>Die Bahn ist schon weggeführt.</translation>
    </message>
    <message>
        <source>The web is not joined yet.</source>
        <translation>Die Bahn ist noch nicht verbunden.</translation>
    </message>
    <message>
        <source>The web is not led.</source>
        <translation>Die Bahn ist nicht geführt.</translation>
    </message>
    <message>
        <source>The web is not on the rewind core yet.</source>
        <translation>Die Bahn ist noch nicht auf der Hülse der Aufwicklung.</translation>
    </message>
    <message>
        <source>The web is not on the rewind's core.</source>
        <translation>Die Bahn ist nicht auf der Hülse der Aufwicklung.</translation>
    </message>
    <message>
        <source>The web is on the rewind core</source>
        <translation>Die Bahn ist auf der Hülse der Aufwicklung</translation>
    </message>
    <message>
        <source>The web is secured</source>
        <translation>Die Bahn ist gesichert</translation>
    </message>
    <message>
        <source>The web itself gives way, whatever the tape: run at less tension, and enter that range with the job.</source>
        <translation>Die Bahn selbst gibt nach, gleich mit welchem Klebeband: mit weniger Zug fahren und diesen Bereich beim Auftrag eingeben.</translation>
    </message>
    <message>
        <source>The web leaves the roll from its top.</source>
        <translation>Die Bahn läuft oben von der Rolle ab.</translation>
    </message>
    <message>
        <source>The web leaves the roll from its underside.</source>
        <translation>Die Bahn läuft unten von der Rolle ab.</translation>
    </message>
    <message>
        <source>The web lies wrong, and guide %1 does nothing.</source>
        <translation>Die Bahn liegt falsch, und der Bahnlaufregler %1 tut nichts.</translation>
    </message>
    <message>
        <source>The web path cannot be drawn without %1.</source>
        <translation>Der Bahnweg kann ohne %1 nicht gezeichnet werden.</translation>
    </message>
    <message>
        <source>The web that must be left when the automatic stop acts.</source>
        <translation>Die Bahn, die übrig sein muss, wenn der automatische Halt wirkt.</translation>
    </message>
    <message>
        <source>The web would go %2 around roller %1: its turn is probably wrong.</source>
        <translation>Die Bahn würde %2 um Walze %1 laufen: Deren Drehrichtung ist wohl falsch.</translation>
    </message>
    <message>
        <source>The web, onto the rewind's core</source>
        <translation>Die Bahn, auf die Hülse der Aufwicklung</translation>
    </message>
    <message>
        <source>The webs are not clamped.</source>
        <translation>Die Bahnen sind nicht geklemmt.</translation>
    </message>
    <message>
        <source>The webs are still clamped on the table.</source>
        <translation>Die Bahnen sind auf dem Tisch noch geklemmt.</translation>
    </message>
    <message>
        <source>The webs were joined with a step to the side.</source>
        <translation>Die Bahnen wurden seitlich versetzt verbunden.</translation>
    </message>
    <message>
        <source>The week of %1</source>
        <translation>Die Woche von %1</translation>
    </message>
    <message>
        <source>The whole run</source>
        <translation>Ganzer Durchgang</translation>
    </message>
    <message>
        <source>The widest web that it runs.</source>
        <translation>Die breiteste Bahn, die sie fährt.</translation>
    </message>
    <message>
        <source>The width that the sensor sees.</source>
        <translation>Die Breite, die der Sensor sieht.</translation>
    </message>
    <message>
        <source>The window goes from %1 to %2.</source>
        <translation>Das Fenster geht von %1 bis %2.</translation>
    </message>
    <message>
        <source>The window is %1 to %2.</source>
        <translation>Das Fenster ist %1 bis %2.</translation>
    </message>
    <message>
        <source>The window speaks otherwise as soon as what is being entered here is done.</source>
        <translation>Sprache oder Einheiten wechseln, sobald die Eingabe hier beendet ist.</translation>
    </message>
    <message>
        <source>The windows of these readings are not all the same.</source>
        <translation>Die Fenster dieser Ablesungen sind nicht alle gleich.</translation>
    </message>
    <message>
        <source>The word %1 can be chosen twice.</source>
        <translation>Das Wort %1 kann zweimal gewählt werden.</translation>
    </message>
    <message>
        <source>The wrong face of the web comes to the plates of station %1.</source>
        <translation>Die falsche Seite der Bahn kommt an die Platten von Druckwerk %1.</translation>
    </message>
    <message>
        <source>There are %1 remedies; nobody reads more than %2.</source>
        <translation>Es gibt %1 Abhilfen; niemand liest mehr als %2.</translation>
    </message>
    <message>
        <source>There are too few readings to tell whether it has moved: %1 are wanted.</source>
        <translation>Zu wenige Ablesungen, um eine Verschiebung zu erkennen: Verlangt sind %1.</translation>
    </message>
    <message>
        <source>There are two things called %1 here.</source>
        <translation>Hier heißen zwei Dinge %1.</translation>
    </message>
    <message>
        <source>There is no %1 on this press.</source>
        <translation>An dieser Maschine gibt es kein %1.</translation>
    </message>
    <message>
        <source>There is no [[person]] in this file.</source>
        <translation>In dieser Datei gibt es kein [[person]].</translation>
    </message>
    <message>
        <source>There is no adapter for this core at the press. Get one, or take a roll on another core.</source>
        <translation>An der Maschine ist kein Adapter für diese Hülse. Einen besorgen oder eine Rolle auf anderer Hülse nehmen.</translation>
    </message>
    <message>
        <source>There is no air in the rewind's shaft.</source>
        <translation>In der Welle der Aufwicklung ist keine Luft.</translation>
    </message>
    <message>
        <source>There is no air in the shaft that holds the roll.</source>
        <translation>In der Welle, die die Rolle hält, ist keine Luft.</translation>
    </message>
    <message>
        <source>There is no air.</source>
        <translation>Es ist keine Luft da.</translation>
    </message>
    <message>
        <source>There is no brake with calipers of %1 on this press.</source>
        <translation>An dieser Maschine gibt es keine Bremse mit Zangen von %1.</translation>
    </message>
    <message>
        <source>There is no condition called %1.</source>
        <translation>Es gibt keine Bedingung namens %1.</translation>
    </message>
    <message>
        <source>There is no control with the role %1.</source>
        <translation>Es gibt kein Bedienteil mit der Funktion %1.</translation>
    </message>
    <message>
        <source>There is no dancer of %1 on this press.</source>
        <translation>An dieser Maschine gibt es keinen Tänzer von %1.</translation>
    </message>
    <message>
        <source>There is no emergency stop %1 on this press.</source>
        <translation>An dieser Maschine gibt es keinen Not-Halt %1.</translation>
    </message>
    <message>
        <source>There is no entry called %1 that this answer could fill.</source>
        <translation>Es gibt keinen Eintrag namens %1, den diese Antwort füllen könnte.</translation>
    </message>
    <message>
        <source>There is no fact called %1.</source>
        <translation>Es gibt kein Merkmal namens %1.</translation>
    </message>
    <message>
        <source>There is no fault %1 to practise with.</source>
        <translation>Es gibt keinen Fehler %1 zum Üben.</translation>
    </message>
    <message>
        <source>There is no file %1.</source>
        <translation>Es gibt keine Datei %1.</translation>
    </message>
    <message>
        <source>There is no guard %1 on this press.</source>
        <translation>An dieser Maschine gibt es keine Schutzeinrichtung %1.</translation>
    </message>
    <message>
        <source>There is no input called %1 that a step could use.</source>
        <translation>Es gibt keine Eingabe namens %1, die ein Schritt verwenden könnte.</translation>
    </message>
    <message>
        <source>There is no joint yet.</source>
        <translation>Es gibt noch keine Klebestelle.</translation>
    </message>
    <message>
        <source>There is no kind of run called %1.</source>
        <translation>Es gibt keine Art des Durchgangs namens %1.</translation>
    </message>
    <message>
        <source>There is no limit to hold the values against.</source>
        <translation>Es gibt keine Grenze, an der die Werte zu messen sind.</translation>
    </message>
    <message>
        <source>There is no load cell of %1 on this press.</source>
        <translation>An dieser Maschine gibt es keine Kraftmessdose von %1.</translation>
    </message>
    <message>
        <source>There is no logbook %1.</source>
        <translation>Es gibt kein Protokollbuch %1.</translation>
    </message>
    <message>
        <source>There is no place at the press called %1.</source>
        <translation>Es gibt keinen Standort an der Maschine namens %1.</translation>
    </message>
    <message>
        <source>There is no place for %1: what stands above it is no table and no list.</source>
        <translation>Für %1 ist kein Platz: Was darüber steht, ist weder Tabelle noch Liste.</translation>
    </message>
    <message>
        <source>There is no reading outside its window to accept.</source>
        <translation>Es gibt keine Ablesung außerhalb ihres Fensters, die anzunehmen wäre.</translation>
    </message>
    <message>
        <source>There is no reading to be charted.</source>
        <translation>Es gibt keine Ablesung für die Regelkarte.</translation>
    </message>
    <message>
        <source>There is no room left for the mirror %1. The logbook has every record; the mirror is behind.</source>
        <translation>Für den Spiegel %1 ist kein Platz mehr. Das Protokollbuch hat jeden Eintrag; der Spiegel ist zurück.</translation>
    </message>
    <message>
        <source>There is no room left in %1 for a copy of %2. No copy was kept; the logbook is as it was.</source>
        <translation>In %1 ist kein Platz mehr für eine Kopie von %2. Keine Kopie blieb; das Protokollbuch ist, wie es war.</translation>
    </message>
    <message>
        <source>There is no room left in the folder of %1. Nothing was recorded.</source>
        <translation>Im Ordner von %1 ist kein Platz mehr. Nichts wurde aufgezeichnet.</translation>
    </message>
    <message>
        <source>There is no room left to write %1. Nothing was changed.</source>
        <translation>Zum Schreiben von %1 ist kein Platz mehr. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>There is no room left to write in %1. Nothing was recorded.</source>
        <translation>Zum Schreiben in %1 ist kein Platz mehr. Nichts wurde aufgezeichnet.</translation>
    </message>
    <message>
        <source>There is no standing answer to correct.</source>
        <translation>Es gibt keine geltende Antwort zum Berichtigen.</translation>
    </message>
    <message>
        <source>There is no step "%1" on this press with this job and roll.</source>
        <translation>An dieser Maschine gibt es mit diesem Auftrag und dieser Rolle keinen Schritt „%1“.</translation>
    </message>
    <message>
        <source>There is no such reading in the sealed runs that were chosen.</source>
        <translation>In den gewählten versiegelten Durchgängen gibt es keine solche Ablesung.</translation>
    </message>
    <message>
        <source>There is no target called %1.</source>
        <translation>Es gibt keinen Sollwert namens %1.</translation>
    </message>
    <message>
        <source>There is no value.</source>
        <translation>Es gibt keinen Wert.</translation>
    </message>
    <message>
        <source>There is no web guide %1 on this press.</source>
        <translation>An dieser Maschine gibt es keinen Bahnlaufregler %1.</translation>
    </message>
    <message>
        <source>There is nothing yet to take a share of.</source>
        <translation>Es gibt noch nichts, wovon ein Anteil zu nehmen wäre.</translation>
    </message>
    <message>
        <source>There was nothing to find, or nothing to leave alone.</source>
        <translation>Es gab nichts zu finden, oder nichts in Ruhe zu lassen.</translation>
    </message>
    <message>
        <source>These are not the bytes that were attached: they were changed since.</source>
        <translation>Das sind nicht die angehängten Bytes: Sie wurden seither geändert.</translation>
    </message>
    <message>
        <source>Thickness of the tape under the plate.</source>
        <translation>Dicke des Klebebands unter der Platte.</translation>
    </message>
    <message>
        <source>This PIN is one of those that are guessed first.</source>
        <translation>Diese PIN ist eine, die zuerst erraten wird.</translation>
    </message>
    <message>
        <source>This adapter does not say which core it fits.</source>
        <translation>Dieser Adapter sagt nicht, auf welche Hülse er passt.</translation>
    </message>
    <message>
        <source>This attempt was not passed, and it was not said what is taught again.</source>
        <translation>Dieser Versuch wurde nicht bestanden, und es wurde nicht gesagt, was neu gelehrt wird.</translation>
    </message>
    <message>
        <source>This badge and PIN do not open this person's key.</source>
        <translation>Dieser Ausweis und diese PIN öffnen den Schlüssel dieser Person nicht.</translation>
    </message>
    <message>
        <source>This competence would be over before it begins.</source>
        <translation>Diese Befähigung wäre vorbei, ehe sie beginnt.</translation>
    </message>
    <message>
        <source>This correction names no step and remarks nothing.</source>
        <translation>Diese Berichtigung nennt keinen Schritt und bemerkt nichts.</translation>
    </message>
    <message>
        <source>This correction names the same step more than once.</source>
        <translation>Diese Berichtigung nennt denselben Schritt mehr als einmal.</translation>
    </message>
    <message>
        <source>This day is past: %1.</source>
        <translation>Dieser Tag ist vorbei: %1.</translation>
    </message>
    <message>
        <source>This deck does not say at which station it stands.</source>
        <translation>Diese Belegung sagt nicht, an welchem Druckwerk sie steht.</translation>
    </message>
    <message>
        <source>This document is about something else than a run.</source>
        <translation>Dieses Dokument handelt von etwas anderem als einem Durchgang.</translation>
    </message>
    <message>
        <source>This document is no attempt at the practice press.</source>
        <translation>Dieses Dokument ist kein Versuch an der Übungsmaschine.</translation>
    </message>
    <message>
        <source>This document is no competence at a press.</source>
        <translation>Dieses Dokument ist keine Befähigung an einer Maschine.</translation>
    </message>
    <message>
        <source>This document is no observation of an attempt.</source>
        <translation>Dieses Dokument ist keine Beobachtung eines Versuchs.</translation>
    </message>
    <message>
        <source>This document is no review, correction or void of a run.</source>
        <translation>Dieses Dokument ist keine Prüfung, Berichtigung oder Ungültigkeitserklärung eines Durchgangs.</translation>
    </message>
    <message>
        <source>This document names another person than the one who sealed it.</source>
        <translation>Dieses Dokument nennt eine andere Person als die, die es versiegelt hat.</translation>
    </message>
    <message>
        <source>This exported run is of a format that was never written.</source>
        <translation>Dieser exportierte Durchgang hat ein Format, das nie geschrieben wurde.</translation>
    </message>
    <message>
        <source>This file does not say which format it is written in.</source>
        <translation>Diese Datei sagt nicht, in welchem Format sie geschrieben ist.</translation>
    </message>
    <message>
        <source>This file has no %1, so it is not a file of that kind.</source>
        <translation>Diese Datei hat kein %1, also ist sie keine Datei dieser Art.</translation>
    </message>
    <message>
        <source>This file has no table [procedure].</source>
        <translation>Diese Datei hat keine Tabelle [procedure].</translation>
    </message>
    <message>
        <source>This file is no translation of a procedure that this program can read.</source>
        <translation>Diese Datei ist keine Übersetzung eines Ablaufs, die dieses Programm lesen kann.</translation>
    </message>
    <message>
        <source>This file is of another kind (%2): it has no %1.</source>
        <translation>Diese Datei ist von anderer Art (%2): Sie hat kein %1.</translation>
    </message>
    <message>
        <source>This file is written in format %1; this program knows format %2.</source>
        <translation>Diese Datei ist im Format %1 geschrieben; dieses Programm kennt Format %2.</translation>
    </message>
    <message>
        <source>This gauge reads to %1 either way, and the window at %2 is narrower than the last place that is shown: nothing can be sure to be inside.</source>
        <translation>Dieses Messgerät zeigt auf ±%1 genau, und das Fenster bei %2 ist schmaler als die letzte angezeigte Stelle: Nichts kann sicher innerhalb sein.</translation>
    </message>
    <message>
        <source>This gauge reads to %1 either way: too coarse for the window from %2 to %3, in which nothing can be sure to be inside.</source>
        <translation>Dieses Messgerät zeigt auf ±%1 genau: zu grob für das Fenster von %2 bis %3, in dem nichts sicher innerhalb sein kann.</translation>
    </message>
    <message>
        <source>This is a translation of %1, edition %2; the procedure is %3, edition %4.</source>
        <translation>Dies ist eine Übersetzung von %1, Ausgabe %2; der Ablauf ist %3, Ausgabe %4.</translation>
    </message>
    <message>
        <source>This is attached to the step already, as %1.</source>
        <translation>Das hängt schon am Schritt, als %1.</translation>
    </message>
    <message>
        <source>This is more than %1 times the limit.</source>
        <translation>Das ist mehr als das %1-Fache der Grenze.</translation>
    </message>
    <message>
        <source>This is no exported run.</source>
        <translation>Das ist kein exportierter Durchgang.</translation>
    </message>
    <message>
        <source>This is not JSON: it cannot be read on from byte %1.</source>
        <translation>Das ist kein JSON: Ab Byte %1 kann nicht weitergelesen werden.</translation>
    </message>
    <message>
        <source>This is not a plan of a procedure.</source>
        <translation>Das ist kein Plan eines Ablaufs.</translation>
    </message>
    <message>
        <source>This is not a target set: it has no list of targets.</source>
        <translation>Das ist kein Sollwertsatz: Er hat keine Liste von Sollwerten.</translation>
    </message>
    <message>
        <source>This is not a target: it has no id or an unknown state.</source>
        <translation>Das ist kein Sollwert: Er hat keine Kennung oder einen unbekannten Stand.</translation>
    </message>
    <message>
        <source>This is not answered with words.</source>
        <translation>Das wird nicht mit Worten beantwortet.</translation>
    </message>
    <message>
        <source>This is the only supervisor who can sign.</source>
        <translation>Dies ist die einzige Aufsicht, die abzeichnen kann.</translation>
    </message>
    <message>
        <source>This key has too many parts.</source>
        <translation>Dieser Schlüssel hat zu viele Teile.</translation>
    </message>
    <message>
        <source>This logbook has no attempt of anybody with the id %1.</source>
        <translation>Dieses Buch hat keinen Versuch von jemandem mit der Kennung %1.</translation>
    </message>
    <message>
        <source>This logbook has no run %1.</source>
        <translation>Dieses Protokollbuch hat keinen Durchgang %1.</translation>
    </message>
    <message>
        <source>This logbook has no seal %1.</source>
        <translation>Dieses Protokollbuch hat kein Siegel %1.</translation>
    </message>
    <message>
        <source>This logbook has no sealed run %1.</source>
        <translation>Dieses Protokollbuch hat keinen versiegelten Durchgang %1.</translation>
    </message>
    <message>
        <source>This logbook knows no press %1.</source>
        <translation>Dieses Protokollbuch kennt keine Maschine %1.</translation>
    </message>
    <message>
        <source>This may be the length round the roll: divided by 3.14 it would fit, a diameter of %1.</source>
        <translation>Das könnte die Länge um die Rolle sein: Geteilt durch 3,14 würde es passen, ein Durchmesser von %1.</translation>
    </message>
    <message>
        <source>This name and PIN do not belong together.</source>
        <translation>Dieser Name und diese PIN gehören nicht zusammen.</translation>
    </message>
    <message>
        <source>This name and first-use code do not belong together.</source>
        <translation>Dieser Name und dieser Erstcode gehören nicht zusammen.</translation>
    </message>
    <message>
        <source>This page was not finished: not all runs and readings were looked at.</source>
        <translation>Diese Seite wurde nicht fertig: Nicht alle Durchgänge und Werte wurden angesehen.</translation>
    </message>
    <message>
        <source>This passphrase does not open this person's key.</source>
        <translation>Diese Passphrase öffnet den Schlüssel dieser Person nicht.</translation>
    </message>
    <message>
        <source>This phase has fewer than two points.</source>
        <translation>Diese Phase hat weniger als zwei Punkte.</translation>
    </message>
    <message>
        <source>This place is not UTF-8 text.</source>
        <translation>Diese Stelle ist kein UTF-8-Text.</translation>
    </message>
    <message>
        <source>This press does not inch.</source>
        <translation>Diese Maschine hat keinen Tippbetrieb.</translation>
    </message>
    <message>
        <source>This press has no lift.</source>
        <translation>Diese Maschine hat keinen Lift.</translation>
    </message>
    <message>
        <source>This press has no zone %1.</source>
        <translation>Diese Maschine hat keine Zone %1.</translation>
    </message>
    <message>
        <source>This press has nothing called "%2" that the fault %1 could be of.</source>
        <translation>An dieser Maschine heißt nichts „%2“, das den Fehler %1 haben könnte.</translation>
    </message>
    <message>
        <source>This press is not withdrawn from use.</source>
        <translation>Diese Maschine ist nicht gesperrt.</translation>
    </message>
    <message>
        <source>This press is said to have no air, and %1 works with air.</source>
        <translation>Diese Maschine soll keine Luft haben, und %1 arbeitet mit Luft.</translation>
    </message>
    <message>
        <source>This press is said to idle at %1 and to crawl faster, at %2.</source>
        <translation>Diese Maschine soll im Leerlauf mit %1 laufen und im Kriechgang schneller, mit %2.</translation>
    </message>
    <message>
        <source>This press is said to run %1 at most and to crawl faster, at %2.</source>
        <translation>Diese Maschine soll höchstens %1 laufen und im Kriechgang schneller, mit %2.</translation>
    </message>
    <message>
        <source>This press is said to run %1 at most and to idle faster, at %2.</source>
        <translation>Diese Maschine soll höchstens %1 laufen und im Leerlauf schneller, mit %2.</translation>
    </message>
    <message>
        <source>This procedure has no stage: there is nothing to do in it.</source>
        <translation>Dieser Ablauf hat keinen Abschnitt: Es gibt darin nichts zu tun.</translation>
    </message>
    <message>
        <source>This reading did not come out outside before, or it was said already what helped.</source>
        <translation>Diese Ablesung lag vorher nicht außerhalb, oder es wurde schon gesagt, was geholfen hat.</translation>
    </message>
    <message>
        <source>This reading has no window to deviate from.</source>
        <translation>Diese Ablesung hat kein Fenster, von dem sie abweichen könnte.</translation>
    </message>
    <message>
        <source>This record by its SHA-256: %1</source>
        <translation>Dieser Nachweis mit seiner SHA-256: %1</translation>
    </message>
    <message>
        <source>This roll is enough for the job</source>
        <translation>Diese Rolle reicht für den Auftrag</translation>
    </message>
    <message>
        <source>This roll is nearly used up: %1 of it can be run. Rolls and splices are planned by full ones.</source>
        <translation>Diese Rolle ist fast aufgebraucht: %1 davon können laufen. Rollen und Klebestellen werden mit vollen geplant.</translation>
    </message>
    <message>
        <source>This roll wanders %1, the guide reaches %2 each way.</source>
        <translation>Diese Rolle verläuft um %1, der Bahnlaufregler reicht nach jeder Seite %2.</translation>
    </message>
    <message>
        <source>This roll's wander takes %1 of the guide's stroke, at most %2 is meant to go there.</source>
        <translation>Das Verlaufen dieser Rolle nimmt %1 vom Stellweg des Bahnlaufreglers, höchstens %2 sind dafür gedacht.</translation>
    </message>
    <message>
        <source>This roll's wander takes %1 of what the guide can shift this web, at most %2 is meant to go there.</source>
        <translation>Das Verlaufen dieser Rolle nimmt %1 von dem, was der Bahnlaufregler diese Bahn verschieben kann, höchstens %2 sind dafür gedacht.</translation>
    </message>
    <message>
        <source>This run cannot be signed while a stop is held by %1.</source>
        <translation>Dieser Durchgang kann nicht abgezeichnet werden, solange ein Halt gehalten wird von %1.</translation>
    </message>
    <message>
        <source>This run has %1 pictures and files, which is as many as one may have.</source>
        <translation>Dieser Durchgang hat %1 Bilder und Dateien; mehr darf keiner haben.</translation>
    </message>
    <message>
        <source>This run has ended.</source>
        <translation>Dieser Durchgang ist beendet.</translation>
    </message>
    <message>
        <source>This run has no such stage.</source>
        <translation>Dieser Durchgang hat keinen solchen Abschnitt.</translation>
    </message>
    <message>
        <source>This run has no such step.</source>
        <translation>Dieser Durchgang hat keinen solchen Schritt.</translation>
    </message>
    <message>
        <source>This run is going on: there is nothing to resume.</source>
        <translation>Dieser Durchgang läuft: Es gibt nichts wieder aufzunehmen.</translation>
    </message>
    <message>
        <source>This run is in the hands of %1.</source>
        <translation>Dieser Durchgang ist in den Händen von %1.</translation>
    </message>
    <message>
        <source>This sheet tells what was computed and what people said they saw. The press manual, this site's procedures, local rules and the people authorised here come before it.</source>
        <translation>Dieses Blatt sagt, was berechnet wurde und was Personen gesehen zu haben angaben. Maschinenhandbuch, Betriebsanweisungen, örtliche Regeln und die hier befugten Personen gehen vor.</translation>
    </message>
    <message>
        <source>This stage has not been begun yet.</source>
        <translation>Dieser Abschnitt wurde noch nicht begonnen.</translation>
    </message>
    <message>
        <source>This station has no number.</source>
        <translation>Dieses Druckwerk hat keine Nummer.</translation>
    </message>
    <message>
        <source>This step asks who holds the stop, but does not give stop_held.</source>
        <translation>Dieser Schritt fragt, wer den Halt hält, gibt aber nicht stop_held.</translation>
    </message>
    <message>
        <source>This step belongs to no kind of run, so nobody would ever see it.</source>
        <translation>Dieser Schritt gehört zu keiner Art des Durchgangs, also sähe ihn nie jemand.</translation>
    </message>
    <message>
        <source>This step gives it, do it first: %1</source>
        <translation>Dieser Schritt liefert es, zuerst erledigen: %1</translation>
    </message>
    <message>
        <source>This step has choices but is not a choice.</source>
        <translation>Dieser Schritt hat Auswahlen, ist aber keine Auswahl.</translation>
    </message>
    <message>
        <source>This step has no such remedy.</source>
        <translation>Dieser Schritt hat keine solche Abhilfe.</translation>
    </message>
    <message>
        <source>This step is answered already.</source>
        <translation>Dieser Schritt ist schon beantwortet.</translation>
    </message>
    <message>
        <source>This step is answered with yes, and only when it is so.</source>
        <translation>Dieser Schritt wird mit Ja beantwortet, und nur, wenn es so ist.</translation>
    </message>
    <message>
        <source>This step moves the press and speaks of gloves.</source>
        <translation>Dieser Schritt bewegt die Maschine und spricht von Handschuhen.</translation>
    </message>
    <message>
        <source>This step protects people, so nobody may pass it by.</source>
        <translation>Dieser Schritt schützt Menschen, also darf ihn niemand übergehen.</translation>
    </message>
    <message>
        <source>This step says %1, and the correction was written for %2.</source>
        <translation>Dieser Schritt sagt %1, und die Berichtigung wurde für %2 geschrieben.</translation>
    </message>
    <message>
        <source>This step says so already: %1.</source>
        <translation>Dieser Schritt sagt das schon: %1.</translation>
    </message>
    <message>
        <source>This was answered, and came out outside: it cannot be passed by any more.</source>
        <translation>Dies wurde beantwortet und lag außerhalb: Es kann nicht mehr übergangen werden.</translation>
    </message>
    <message>
        <source>This web breathes: less air stays under it than computed.</source>
        <translation>Diese Bahn ist luftdurchlässig: Unter ihr bleibt weniger Luft als berechnet.</translation>
    </message>
    <message>
        <source>This web breathes: no air stays under it. It holds until one side pulls so many times as hard.</source>
        <translation>Diese Bahn ist luftdurchlässig: Unter ihr bleibt keine Luft. Sie haftet, bis eine Seite so viele Male so stark zieht.</translation>
    </message>
    <message>
        <source>This zone does not say how its tension is controlled.</source>
        <translation>Diese Zone sagt nicht, wie ihr Zug geregelt wird.</translation>
    </message>
    <message>
        <source>Thread at crawl or with the drives isolated, or have the inch set shorter.</source>
        <translation>Im Kriechgang oder mit abgeschalteten und gesicherten Antrieben einziehen, oder das Tippen kürzer einstellen lassen.</translation>
    </message>
    <message>
        <source>Thread with the drives isolated, or have the press's crawl speed set down.</source>
        <translation>Mit abgeschalteten und gesicherten Antrieben einziehen, oder den Kriechgang der Maschine langsamer einstellen lassen.</translation>
    </message>
    <message>
        <source>Three people reading ten parts three times tell most.</source>
        <translation>Drei Personen, die zehn Teile dreimal ablesen, sagen am meisten.</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Dauer</translation>
    </message>
    <message>
        <source>Time a roll should lie in the press room</source>
        <translation>Zeit, die eine Rolle im Drucksaal liegen soll</translation>
    </message>
    <message>
        <source>Time and losses</source>
        <translation>Zeit und Verluste</translation>
    </message>
    <message>
        <source>Time at crawl to draw it through</source>
        <translation>Zeit im Kriechgang zum Durchziehen</translation>
    </message>
    <message>
        <source>Time it again, with its tenths.</source>
        <translation>Zeit noch einmal nehmen, mit Zehnteln.</translation>
    </message>
    <message>
        <source>Time of a run, median</source>
        <translation>Dauer je Durchgang, Median</translation>
    </message>
    <message>
        <source>Time of the proving run at idle</source>
        <translation>Zeit des Probelaufs im Leerlauf</translation>
    </message>
    <message>
        <source>Time stands still: something happened.</source>
        <translation>Die Zeit steht still: Es ist etwas geschehen.</translation>
    </message>
    <message>
        <source>Time to standstill after an emergency stop</source>
        <translation>Zeit bis zum Stillstand nach einem Not-Halt</translation>
    </message>
    <message>
        <source>Time to standstill after an emergency stop from %1</source>
        <translation>Zeit bis zum Stillstand nach einem Not-Halt aus %1</translation>
    </message>
    <message>
        <source>Time to standstill after an emergency stop from job speed</source>
        <translation>Zeit bis zum Stillstand nach einem Not-Halt aus Auftragsgeschwindigkeit</translation>
    </message>
    <message>
        <source>Time to standstill, emergency stop on trial</source>
        <translation>Zeit bis zum Stillstand, Not-Halt zur Probe</translation>
    </message>
    <message>
        <source>Times its scatter</source>
        <translation>Mal die Streuung</translation>
    </message>
    <message>
        <source>Times lie between answers: they say how long a set-up took on this press, never how well somebody works, and are told by press, job, kind of run and shift, never by person. A run by people who learn is slower, and safer.</source>
        <translation>Zeiten liegen zwischen Antworten: Sie sagen, wie lange eine Einrichtung an dieser Maschine dauerte, nie, wie gut jemand arbeitet, und werden nach Maschine, Auftrag, Art des Durchgangs und Schicht genannt, nie nach Person. Ein Durchgang von Lernenden ist langsamer, und sicherer.</translation>
    </message>
    <message>
        <source>Times of answers</source>
        <translation>Zeiten der Antworten</translation>
    </message>
    <message>
        <source>Times, web and the first go are told of runs that were finished.</source>
        <translation>Zeiten, Bahnverbrauch und „auf Anhieb“ gelten für Durchgänge, die zu Ende geführt wurden.</translation>
    </message>
    <message>
        <source>To be set again at these diameters at the latest: %1.</source>
        <translation>Spätestens bei diesen Durchmessern neu einzustellen: %1.</translation>
    </message>
    <message>
        <source>To change what was written down, correct it and say why.</source>
        <translation>Um Aufgeschriebenes zu ändern, es berichtigen und sagen, warum.</translation>
    </message>
    <message>
        <source>To go on from it, restore it under the name of the logbook that was lost.</source>
        <translation>Um daraus fortzusetzen, unter dem Namen des verlorenen Protokollbuchs wiederherstellen.</translation>
    </message>
    <message>
        <source>To the middle</source>
        <translation>Zur Mitte</translation>
    </message>
    <message>
        <source>Told from sealed runs</source>
        <translation>Aus versiegelten Durchgängen</translation>
    </message>
    <message>
        <source>Tooth to tooth along the pitch circle. One of the three pitches is enough.</source>
        <translation>Zahn zu Zahn auf dem Teilkreis. Eine der drei Teilungen genügt.</translation>
    </message>
    <message>
        <source>Torque</source>
        <translation>Drehmoment</translation>
    </message>
    <message>
        <source>Torque against setting</source>
        <translation>Drehmoment über Einstellung</translation>
    </message>
    <message>
        <source>Torque per setting, profile</source>
        <translation>Drehmoment je Einstellung, Profil</translation>
    </message>
    <message>
        <source>Torque per setting, these runs</source>
        <translation>Drehmoment je Einstellung, Durchgänge</translation>
    </message>
    <message>
        <source>Torque that would keep the unwind's tension in an emergency stop</source>
        <translation>Drehmoment, das den Zug der Abwicklung bei einem Not-Halt hielte</translation>
    </message>
    <message>
        <source>Touch or type the name of the person who holds the stop, as the crew knows it.</source>
        <translation>Den Namen der Person antippen oder eintippen, die den Halt hält, wie die Mannschaft ihn kennt.</translation>
    </message>
    <message>
        <source>Touching, never over one another: an overlap strikes every nip.</source>
        <translation>Auf Stoß, nie übereinander: Eine Überlappung schlägt an jede Klemmstelle.</translation>
    </message>
    <message>
        <source>Trainer</source>
        <translation>Ausbildung</translation>
    </message>
    <message>
        <source>Trainer: I looked at the attempt %1</source>
        <translation>Ausbildung: Ich habe den Versuch %1 angesehen</translation>
    </message>
    <message>
        <source>Trainer: I looked at these attempts</source>
        <translation>Ausbildung: Ich habe diese Versuche angesehen</translation>
    </message>
    <message>
        <source>Training record</source>
        <translation>Übungsnachweis</translation>
    </message>
    <message>
        <source>Translate it anew, then write of = "%1".</source>
        <translation>Neu übersetzen, dann of = "%1" schreiben.</translation>
    </message>
    <message>
        <source>Translate it.</source>
        <translation>Übersetzen.</translation>
    </message>
    <message>
        <source>Treatment of the film</source>
        <translation>Vorbehandlung der Folie</translation>
    </message>
    <message>
        <source>Trim it</source>
        <translation>Abschneiden</translation>
    </message>
    <message>
        <source>Trim it flush: a tail sticks to the first roller it meets.</source>
        <translation>Bündig abschneiden: Ein überstehendes Ende klebt an der ersten Walze, auf die es trifft.</translation>
    </message>
    <message>
        <source>Trim them</source>
        <translation>Abschneiden</translation>
    </message>
    <message>
        <source>Trust the document, not the row. Restore the logbook from a backup.</source>
        <translation>Dem Dokument trauen, nicht der Zeile. Protokollbuch aus einer Sicherung wiederherstellen.</translation>
    </message>
    <message>
        <source>Trust the run's own document; ask whoever signed the correction.</source>
        <translation>Dem eigenen Dokument des Durchgangs trauen; fragen, wer die Berichtigung unterschrieben hat.</translation>
    </message>
    <message>
        <source>Trust the sealed documents, not the search. Restore the logbook from a backup.</source>
        <translation>Den versiegelten Dokumenten trauen, nicht der Suche. Das Protokollbuch aus einer Sicherung wiederherstellen.</translation>
    </message>
    <message>
        <source>Trust the sealed documents, not this table. Restore the logbook from a backup.</source>
        <translation>Den versiegelten Dokumenten trauen, nicht dieser Tabelle. Protokollbuch aus einer Sicherung wiederherstellen.</translation>
    </message>
    <message>
        <source>Try again, or ask a supervisor whether you are enrolled on this press.</source>
        <translation>Erneut versuchen, oder eine Aufsicht fragen, ob Sie an dieser Maschine eingetragen sind.</translation>
    </message>
    <message>
        <source>Try again, or save it as PDF.</source>
        <translation>Erneut versuchen, oder als PDF speichern.</translation>
    </message>
    <message>
        <source>Try again. It is the passphrase, not the PIN, that signs. Whoever has lost it has a supervisor let them choose anew.</source>
        <translation>Erneut versuchen. Abgezeichnet wird mit der Passphrase, nicht mit der PIN. Wer sie verloren hat, lässt sich von einer Aufsicht neu wählen lassen.</translation>
    </message>
    <message>
        <source>Turn it down as the roll shrinks, or the web tightens; see the schedule.</source>
        <translation>Herunterdrehen, wenn die Rolle kleiner wird, sonst wird die Bahn straffer; siehe die Tabelle der Änderungen.</translation>
    </message>
    <message>
        <source>Turned beyond %1, one edge of this web hangs slack. The guide can turn %2; until then it shifts the web %3.</source>
        <translation>Über %1 hinaus gedreht, hängt eine Kante dieser Bahn durch. Der Bahnlaufregler kann %2 drehen; bis dahin verschiebt er die Bahn um %3.</translation>
    </message>
    <message>
        <source>Turned by hand with the stop held, %1; three are common practice, no source.</source>
        <translation>Von Hand gedreht, bei gehaltenem Halt, %1; drei sind allgemeine Praxis, ohne Quelle.</translation>
    </message>
    <message>
        <source>Turned by hand with the stop held.</source>
        <translation>Von Hand gedreht, bei gehaltenem Halt.</translation>
    </message>
    <message>
        <source>Turned by hand with the stop held; three are common practice, no source.</source>
        <translation>Von Hand gedreht, bei gehaltenem Halt; drei sind allgemeine Praxis, ohne Quelle.</translation>
    </message>
    <message>
        <source>Turned further, one edge of the web carries nothing.</source>
        <translation>Weiter gedreht, trägt eine Kante der Bahn nichts.</translation>
    </message>
    <message>
        <source>Turns of web on the core.</source>
        <translation>Windungen der Bahn auf der Hülse.</translation>
    </message>
    <message>
        <source>Turns on the core before the web pulls.</source>
        <translation>Windungen auf der Hülse, bevor die Bahn zieht.</translation>
    </message>
    <message>
        <source>Tw = (low + high) / 2</source>
        <translation>Tw = (low + high) / 2</translation>
    </message>
    <message>
        <source>Twisted beyond %1, the middle of this web hangs slack. The guide can turn %2; until then it shifts the web %3.</source>
        <translation>Über %1 hinaus verdreht, hängt die Mitte dieser Bahn durch. Der Bahnlaufregler kann %2 drehen; bis dahin verschiebt er die Bahn um %3.</translation>
    </message>
    <message>
        <source>Twisted further, the middle of the web carries nothing and the edges all.</source>
        <translation>Weiter verdreht, trägt die Mitte der Bahn nichts und die Kanten alles.</translation>
    </message>
    <message>
        <source>Two of three points are more than 2 sigma out on one side.</source>
        <translation>Zwei von drei Punkten liegen mehr als 2 Sigma auf einer Seite.</translation>
    </message>
    <message>
        <source>Two to four different runs can stand beside each other.</source>
        <translation>Zwei bis vier verschiedene Durchgänge können nebeneinander stehen.</translation>
    </message>
    <message>
        <source>Type a number like 2, or leave it empty when it is not known.</source>
        <translation>Eine Zahl wie 2 eintippen, oder leer lassen, wenn sie nicht bekannt ist.</translation>
    </message>
    <message>
        <source>Type both as they stand on the label.</source>
        <translation>Beide eintippen, wie sie auf dem Etikett stehen.</translation>
    </message>
    <message>
        <source>Type it once more.</source>
        <translation>Noch einmal eintippen.</translation>
    </message>
    <message>
        <source>Type it without the minus sign.</source>
        <translation>Ohne Minuszeichen eintippen.</translation>
    </message>
    <message>
        <source>Type the measured diameter into the drive and read it back: half the diameter is half the tension.</source>
        <translation>Gemessenen Durchmesser in den Antrieb eingeben und zurücklesen: Halber Durchmesser ist halber Zug.</translation>
    </message>
    <message>
        <source>Type the name as the crew knows it.</source>
        <translation>Den Namen eintippen, wie die Mannschaft ihn kennt.</translation>
    </message>
    <message>
        <source>Type what is to be another; what is left empty stays as it is.</source>
        <translation>Eintippen, was anders sein soll; was leer bleibt, bleibt, wie es ist.</translation>
    </message>
    <message>
        <source>Under</source>
        <translation>Von unten</translation>
    </message>
    <message>
        <source>Up to seal %1 this logbook is not the one that the sheet was printed from.</source>
        <translation>Bis Siegel %1 ist dieses Protokollbuch nicht das, aus dem das Einrichteblatt gedruckt wurde.</translation>
    </message>
    <message>
        <source>Update the program on this PC to write in it. Until then its sealed runs can be read: tautweb runs, sheet and export. Nothing was changed.</source>
        <translation>Zum Schreiben das Programm an diesem PC aktualisieren. Bis dahin lassen sich seine versiegelten Durchgänge lesen: tautweb runs, sheet und export. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>Upper quartile</source>
        <translation>Oberes Quartil</translation>
    </message>
    <message>
        <source>Use a control that its file names, or one of the works of hands.</source>
        <translation>Ein Bedienteil nehmen, das ihre Datei nennt, oder eine Arbeit von Hand.</translation>
    </message>
    <message>
        <source>Use a hoist.</source>
        <translation>Ein Hebezeug nehmen.</translation>
    </message>
    <message>
        <source>Use a role of the list; what this shop calls the control belongs in the press profile.</source>
        <translation>Eine Funktion aus der Liste nehmen; wie dieser Betrieb das Bedienteil nennt, gehört ins Maschinenprofil.</translation>
    </message>
    <message>
        <source>Use a short text on one line that is not empty and has no dot in it.</source>
        <translation>Einen kurzen Text in einer Zeile nehmen, der nicht leer ist und keinen Punkt enthält.</translation>
    </message>
    <message>
        <source>Use its own page.</source>
        <translation>Dafür die eigene Seite nehmen.</translation>
    </message>
    <message>
        <source>Use lower case letters, digits and _ only.</source>
        <translation>Nur Kleinbuchstaben, Ziffern und _ verwenden.</translation>
    </message>
    <message>
        <source>Use one of: %1.</source>
        <translation>Eines davon verwenden: %1.</translation>
    </message>
    <message>
        <source>Use press, job, substrate or procedure.</source>
        <translation>press, job, substrate oder procedure verwenden.</translation>
    </message>
    <message>
        <source>Use small letters, digits and the underscore only: answers and records name steps by it.</source>
        <translation>Nur Kleinbuchstaben, Ziffern und den Unterstrich verwenden: Antworten und Aufzeichnungen nennen Schritte danach.</translation>
    </message>
    <message>
        <source>Use the id of a target that this program computes.</source>
        <translation>Die Kennung eines Sollwerts verwenden, den dieses Programm berechnet.</translation>
    </message>
    <message>
        <source>Use the words that the roll's file knows.</source>
        <translation>Die Wörter verwenden, die die Datei der Rolle kennt.</translation>
    </message>
    <message>
        <source>Use {target} where the step has a target, {control} where it has a control, {frame} where it reads a target across the press, {register_mark} where that is a register adjuster, the word of for_each, and {= 0.5 mm} for a quantity.</source>
        <translation>{target} verwenden, wo der Schritt einen Sollwert hat, {control}, wo er ein Bedienteil hat, {frame}, wo er einen Sollwert quer zur Maschine liest, {register_mark}, wo das ein Registersteller ist, das Wort von for_each, und {= 0.5 mm} für eine Größe.</translation>
    </message>
    <message>
        <source>Usual are 0.5 and 5 sigma.</source>
        <translation>Üblich sind 0,5 und 5 Sigma.</translation>
    </message>
    <message>
        <source>Usual scatter (sigma)</source>
        <translation>Übliche Streuung (Sigma)</translation>
    </message>
    <message>
        <source>V1.distance of job.speed and press.speeds.stop_time</source>
        <translation>V1.distance aus job.speed und press.speeds.stop_time</translation>
    </message>
    <message>
        <source>V3, sum of spans and arcs</source>
        <translation>V3, Summe der freien Längen und Bögen</translation>
    </message>
    <message>
        <source>V4 of the finished roll</source>
        <translation>V4 der fertigen Rolle</translation>
    </message>
    <message>
        <source>V6 gives less than nothing</source>
        <translation>V6 ergibt weniger als null</translation>
    </message>
    <message>
        <source>VOID: %1</source>
        <translation>UNGÜLTIG: %1</translation>
    </message>
    <message>
        <source>VOID: %1 has voided this run, %2: %3. Nothing on this sheet counts as the record of a set-up.</source>
        <translation>UNGÜLTIG: %1 hat diesen Durchgang für ungültig erklärt, %2: %3. Nichts auf diesem Blatt gilt als Protokoll einer Einrichtung.</translation>
    </message>
    <message>
        <source>Verify both against the newest printed sheet before anybody goes on.</source>
        <translation>Beide am neuesten gedruckten Einrichteblatt verifizieren, bevor jemand weitermacht.</translation>
    </message>
    <message>
        <source>Verify it, keep the file, and begin a new logbook. Nothing was changed.</source>
        <translation>Verifizieren, die Datei aufbewahren und ein neues Protokollbuch beginnen. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>Verify the copies, have the disk checked, and choose another folder.</source>
        <translation>Die Kopien verifizieren, die Platte prüfen lassen und einen anderen Ordner wählen.</translation>
    </message>
    <message>
        <source>Verify the logbook and restore it from a backup.</source>
        <translation>Protokollbuch verifizieren und aus einer Sicherung wiederherstellen.</translation>
    </message>
    <message>
        <source>Verify the logbook and restore it from a copy.</source>
        <translation>Protokollbuch verifizieren und aus einer Kopie wiederherstellen.</translation>
    </message>
    <message>
        <source>Verify the logbook and restore it from this mirror or a copy.</source>
        <translation>Protokollbuch verifizieren und aus diesem Spiegel oder einer Kopie wiederherstellen.</translation>
    </message>
    <message>
        <source>Verify the logbook, and restore it from the mirror or a copy.</source>
        <translation>Protokollbuch verifizieren und aus Spiegel oder Kopie wiederherstellen.</translation>
    </message>
    <message>
        <source>Verify the logbook; if it is not in order itself, restore it from an older copy or its mirror. Older copies were left alone.</source>
        <translation>Protokollbuch verifizieren; ist es selbst nicht in Ordnung, aus einer älteren Kopie oder seinem Spiegel wiederherstellen. Ältere Kopien blieben unberührt.</translation>
    </message>
    <message>
        <source>Verify the logbook; keep it, and restore a copy.</source>
        <translation>Protokollbuch verifizieren; behalten und eine Kopie wiederherstellen.</translation>
    </message>
    <message>
        <source>Verify the whole logbook, and restore it from the mirror or a copy.</source>
        <translation>Das ganze Protokollbuch verifizieren und aus dem Spiegel oder einer Kopie wiederherstellen.</translation>
    </message>
    <message>
        <source>Vital missed</source>
        <translation>Wichtiges verfehlt</translation>
    </message>
    <message>
        <source>Vital steps that were missed: one is enough</source>
        <translation>Versäumte kritische Schritte: Einer genügt</translation>
    </message>
    <message>
        <source>Voiding a run needs a reason.</source>
        <translation>Eine Ungültigkeitserklärung braucht einen Grund.</translation>
    </message>
    <message>
        <source>Wait for more runs, or find the constant with a spring scale.</source>
        <translation>Weitere Durchgänge abwarten oder die Konstante mit einer Federwaage bestimmen.</translation>
    </message>
    <message>
        <source>Wait for more runs.</source>
        <translation>Weitere Durchgänge abwarten.</translation>
    </message>
    <message>
        <source>Wait for runs with other rolls or materials, or find the constant with a spring scale.</source>
        <translation>Durchgänge mit anderen Rollen oder Materialien abwarten oder die Konstante mit einer Federwaage bestimmen.</translation>
    </message>
    <message>
        <source>Wait until it was made, then restore.</source>
        <translation>Warten, bis sie gemacht ist, dann wiederherstellen.</translation>
    </message>
    <message>
        <source>Wait until there is one.</source>
        <translation>Warten, bis es einen gibt.</translation>
    </message>
    <message>
        <source>Wait, then try again.</source>
        <translation>Warten, dann erneut versuchen.</translation>
    </message>
    <message>
        <source>Wander of the web behind the guide at steady speed</source>
        <translation>Verlaufen der Bahn hinter dem Bahnlaufregler bei gleichbleibender Geschwindigkeit</translation>
    </message>
    <message>
        <source>Warning: %1</source>
        <translation>Warnung: %1</translation>
    </message>
    <message>
        <source>Was "%1" meant?</source>
        <translation>War „%1“ gemeint?</translation>
    </message>
    <message>
        <source>Was %1 meant? Else take it out.</source>
        <translation>War %1 gemeint? Sonst herausnehmen.</translation>
    </message>
    <message>
        <source>Was %1 meant? Else take them out.</source>
        <translation>War %1 gemeint? Sonst alle herausnehmen.</translation>
    </message>
    <message>
        <source>Watch it for a minute: a leaking shaft lets the roll go.</source>
        <translation>Eine Minute beobachten: Eine undichte Welle lässt die Rolle los.</translation>
    </message>
    <message>
        <source>Watch the web there, or use a finer gauge.</source>
        <translation>Die Bahn dort beobachten, oder ein feineres Messgerät nehmen.</translation>
    </message>
    <message>
        <source>Web along the path</source>
        <translation>Bahn entlang des Bahnwegs</translation>
    </message>
    <message>
        <source>Web between the guide's two rollers.</source>
        <translation>Bahn zwischen den zwei Walzen des Bahnlaufreglers.</translation>
    </message>
    <message>
        <source>Web from the splice table to the rewind.</source>
        <translation>Bahn vom Klebetisch zur Aufwicklung.</translation>
    </message>
    <message>
        <source>Web from unwind to rewind, measured, where no rollers are given.</source>
        <translation>Bahn von Abwicklung zu Aufwicklung, gemessen, wo keine Walzen angegeben sind.</translation>
    </message>
    <message>
        <source>Web in the outer wraps taken off</source>
        <translation>Bahn in den abgenommenen Außenlagen</translation>
    </message>
    <message>
        <source>Web lost at each splice.</source>
        <translation>An jeder Klebestelle verlorene Bahn.</translation>
    </message>
    <message>
        <source>Web of a set-up, median</source>
        <translation>Bahn je Einrichten, Median</translation>
    </message>
    <message>
        <source>Web of this roll that can be run</source>
        <translation>Bahn dieser Rolle, die laufen kann</translation>
    </message>
    <message>
        <source>Web on the roll</source>
        <translation>Bahn auf der Rolle</translation>
    </message>
    <message>
        <source>Web on the roll, by its diameters</source>
        <translation>Bahn auf der Rolle, nach ihren Durchmessern</translation>
    </message>
    <message>
        <source>Web on the roll, by its mass</source>
        <translation>Bahn auf der Rolle, nach ihrer Masse</translation>
    </message>
    <message>
        <source>Web or tape stands over at a joint.</source>
        <translation>An einer Verbindung steht Bahn oder Band über.</translation>
    </message>
    <message>
        <source>Web or tape stood over at a joint.</source>
        <translation>An einer Klebestelle stand Bahn oder Band über.</translation>
    </message>
    <message>
        <source>Web that leaves the drawn plane behind it, over turn bars.</source>
        <translation>Bahn, die dahinter die gezeichnete Ebene verlässt, über Wendestangen.</translation>
    </message>
    <message>
        <source>Web that passes while the press stops</source>
        <translation>Bahn, die beim Anhalten der Maschine noch durchläuft</translation>
    </message>
    <message>
        <source>Web that setting up takes.</source>
        <translation>Bahn, die das Einrichten braucht.</translation>
    </message>
    <message>
        <source>Web that still passes after a stop; not for placing guards or light curtains.</source>
        <translation>Bahn, die nach einem Halt noch durchläuft; nicht zum Anordnen von Schutzeinrichtungen oder Lichtvorhängen.</translation>
    </message>
    <message>
        <source>Web the job needs</source>
        <translation>Bahn, die der Auftrag braucht</translation>
    </message>
    <message>
        <source>Web the job needs, set-up included</source>
        <translation>Bahn, die der Auftrag braucht, samt Einrichten</translation>
    </message>
    <message>
        <source>Web to draw from the roll to the rewind</source>
        <translation>Bahn, die von der Rolle zur Aufwicklung zu ziehen ist</translation>
    </message>
    <message>
        <source>Web to draw from the splice table to the rewind</source>
        <translation>Bahn, die vom Klebetisch zur Aufwicklung zu ziehen ist</translation>
    </message>
    <message>
        <source>Web used in setting up</source>
        <translation>Bahnverbrauch beim Einrichten</translation>
    </message>
    <message>
        <source>Web used in setting up, median</source>
        <translation>Bahnverbrauch beim Einrichten, Median</translation>
    </message>
    <message>
        <source>Weigh an empty core, or leave it out.</source>
        <translation>Eine leere Hülse wiegen, oder es weglassen.</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>What a label says of the length is of the roll before anything was taken off: it tells no caliper of what is left.</source>
        <translation>Was ein Etikett über die Länge sagt, gilt für die Rolle, bevor etwas abgenommen wurde: Über die Dicke des Rests sagt es nichts.</translation>
    </message>
    <message>
        <source>What a roll of known length says of its thickness, air and pressure included.</source>
        <translation>Was eine Rolle bekannter Länge über ihre Dicke sagt, Luft und Druck inbegriffen.</translation>
    </message>
    <message>
        <source>What an idler has to be turned up with.</source>
        <translation>Womit eine Leitwalze auf Drehzahl zu bringen ist.</translation>
    </message>
    <message>
        <source>What can be seen from there.</source>
        <translation>Was von dort zu sehen ist.</translation>
    </message>
    <message>
        <source>What changed then</source>
        <translation>Was sich damals änderte</translation>
    </message>
    <message>
        <source>What comes off outside and what stays on the core print nothing.</source>
        <translation>Was außen abgeht und was auf der Hülse bleibt, druckt nichts.</translation>
    </message>
    <message>
        <source>What differs</source>
        <translation>Unterschiede</translation>
    </message>
    <message>
        <source>What dries or cures behind it.</source>
        <translation>Was dahinter trocknet oder härtet.</translation>
    </message>
    <message>
        <source>What every roller holds at job speed is not known without %1: at speed air takes some of what is said "at crawl only".</source>
        <translation>Was jede Walze bei Auftragsgeschwindigkeit hält, ist ohne %1 nicht bekannt: Bei Geschwindigkeit nimmt Luft einen Teil von dem, was mit „nur im Kriechgang“ angegeben ist.</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>Was geschehen ist</translation>
    </message>
    <message>
        <source>What happened under way</source>
        <translation>Was unterwegs geschah</translation>
    </message>
    <message>
        <source>What has moved away from where it began, and stays there</source>
        <translation>Was sich von seinem Anfang entfernt hat und dort bleibt</translation>
    </message>
    <message>
        <source>What helped</source>
        <translation>Was geholfen hat</translation>
    </message>
    <message>
        <source>What holds it on the press.</source>
        <translation>Was sie an der Maschine hält.</translation>
    </message>
    <message>
        <source>What holds the core.</source>
        <translation>Was die Hülse hält.</translation>
    </message>
    <message>
        <source>What is looked after, and how often, stands in the profile of the press: a step of its procedure that was answered well in a signed run shows that it was done. What the press manual, this site's procedures or local law ask for besides is not told here. Who does the work has to be authorised for it.</source>
        <translation>Was wie oft geprüft wird, steht im Profil der Maschine: Ein Schritt ihres Ablaufs, der in einem signierten Durchgang gut beantwortet wurde, zeigt, dass es getan ist. Was Maschinenhandbuch, Betriebsanweisungen oder örtliches Recht außerdem verlangen, steht hier nicht. Wer die Arbeit tut, muss dazu befugt sein.</translation>
    </message>
    <message>
        <source>What is lost at the splices, %1 a roll, is as much as a roll like this one has.</source>
        <translation>An den Klebestellen geht %1 je Rolle verloren, so viel, wie eine solche Rolle hat.</translation>
    </message>
    <message>
        <source>What is moved with the roll.</source>
        <translation>Was mit der Rolle bewegt wird.</translation>
    </message>
    <message>
        <source>What is printed here.</source>
        <translation>Was hier gedruckt wird.</translation>
    </message>
    <message>
        <source>What is taught again</source>
        <translation>Was neu gelehrt wird</translation>
    </message>
    <message>
        <source>What is the same</source>
        <translation>Was gleich ist</translation>
    </message>
    <message>
        <source>What it bears for each width before it breaks.</source>
        <translation>Was er je Breite trägt, bevor er reißt.</translation>
    </message>
    <message>
        <source>What it did use is read and recorded as it is. The job's make_ready plans it.</source>
        <translation>Was verbraucht wurde, wird abgelesen und so festgehalten. Geplant wird es mit make_ready im Auftrag.</translation>
    </message>
    <message>
        <source>What it does in an emergency stop.</source>
        <translation>Was sie bei einem Not-Halt tut.</translation>
    </message>
    <message>
        <source>What it does not know is ignored; a newer version reads all of it.</source>
        <translation>Was diese Version nicht kennt, wird nicht beachtet; eine neuere liest alles.</translation>
    </message>
    <message>
        <source>What it does when the air fails.</source>
        <translation>Was sie tut, wenn die Luft ausfällt.</translation>
    </message>
    <message>
        <source>What it is: rows stand in web order, the main path first.</source>
        <translation>Was es ist: Zeilen stehen in Bahnrichtung, der Hauptweg zuerst.</translation>
    </message>
    <message>
        <source>What it keeps in place: the middle or one edge.</source>
        <translation>Was er an seinem Platz hält: die Mitte oder eine Kante.</translation>
    </message>
    <message>
        <source>What it weighs.</source>
        <translation>Was es wiegt.</translation>
    </message>
    <message>
        <source>What its glue holds for each width before it slides.</source>
        <translation>Was sein Kleber je Breite hält, bevor er gleitet.</translation>
    </message>
    <message>
        <source>What its sensor sees by.</source>
        <translation>Womit sein Sensor sieht.</translation>
    </message>
    <message>
        <source>What keeps the tension: a setting alone, a dancer, a load cell, or a draw between two speeds.</source>
        <translation>Was den Bahnzug hält: nur eine Einstellung, ein Tänzer, eine Kraftmessdose oder eine Voreilung.</translation>
    </message>
    <message>
        <source>What lay there before cannot be read, so nobody can say whether it held newer records. It was kept as %1.</source>
        <translation>Was vorher dort lag, ist nicht lesbar, also kann niemand sagen, ob es neuere Aufzeichnungen enthielt. Es wurde als %1 aufbewahrt.</translation>
    </message>
    <message>
        <source>What lay there before holds other seals than what was restored: a record was changed, or they are two logbooks. It was kept as %1.</source>
        <translation>Was vorher dort lag, enthält andere Siegel als das Wiederhergestellte: Eine Aufzeichnung wurde geändert, oder es sind zwei Protokollbücher. Es wurde als %1 aufbewahrt.</translation>
    </message>
    <message>
        <source>What lifts the roll.</source>
        <translation>Was die Rolle hebt.</translation>
    </message>
    <message>
        <source>What loads the dancer.</source>
        <translation>Was den Tänzer belastet.</translation>
    </message>
    <message>
        <source>What makes the torque.</source>
        <translation>Was das Drehmoment erzeugt.</translation>
    </message>
    <message>
        <source>What people call it.</source>
        <translation>Wie man es nennt.</translation>
    </message>
    <message>
        <source>What protects people at the press %2 was changed since %1 was shown to be competent there.</source>
        <translation>Was an der Maschine %2 Menschen schützt, wurde geändert, seit %1 dort als befähigt galt.</translation>
    </message>
    <message>
        <source>What pulls the web while it is threaded.</source>
        <translation>Was die Bahn beim Einziehen zieht.</translation>
    </message>
    <message>
        <source>What sort of material it is.</source>
        <translation>Welche Art Material es ist.</translation>
    </message>
    <message>
        <source>What stands here of %1 was changed meanwhile, so nothing was chosen.</source>
        <translation>Was hier von %1 steht, wurde inzwischen geändert, also wurde nichts gewählt.</translation>
    </message>
    <message>
        <source>What the guide must make good for this roll, to one side.</source>
        <translation>Was der Bahnlaufregler für diese Rolle ausgleichen muss, nach einer Seite.</translation>
    </message>
    <message>
        <source>What the guide shifts the web at its largest angle</source>
        <translation>Was der Bahnlaufregler die Bahn bei größtem Winkel verschiebt</translation>
    </message>
    <message>
        <source>What the guide shifts the web before it hangs slack</source>
        <translation>Was der Bahnlaufregler die Bahn verschiebt, bevor sie durchhängt</translation>
    </message>
    <message>
        <source>What the next person must know: %1</source>
        <translation>Was die nächste Person wissen muss: %1</translation>
    </message>
    <message>
        <source>What the print shortens by when the web is let go.</source>
        <translation>Um wie viel der Druck kürzer wird, wenn die Bahn entspannt ist.</translation>
    </message>
    <message>
        <source>What the roll takes the guide no longer has for the web.</source>
        <translation>Was die Rolle nimmt, fehlt dem Bahnlaufregler für die Bahn.</translation>
    </message>
    <message>
        <source>What the setting of %1 makes now</source>
        <translation>Was die Einstellung von %1 jetzt bewirkt</translation>
    </message>
    <message>
        <source>What the slowest tenth have in common</source>
        <translation>Was dem langsamsten Zehntel gemeinsam ist</translation>
    </message>
    <message>
        <source>What the tape holds for each width before it tears.</source>
        <translation>Was das Klebeband je Breite hält, bevor es reißt.</translation>
    </message>
    <message>
        <source>What the web alone weighs, without its core.</source>
        <translation>Was die Bahn allein wiegt, ohne ihre Hülse.</translation>
    </message>
    <message>
        <source>What this shop calls this control.</source>
        <translation>Wie dieser Betrieb dieses Bedienteil nennt.</translation>
    </message>
    <message>
        <source>What trainers saw and signed for</source>
        <translation>Was die Ausbildung sah und unterschrieb</translation>
    </message>
    <message>
        <source>What trainers say of attempts stands in a practice logbook alone.</source>
        <translation>Was Ausbilder von Versuchen sagen, steht nur in einem Übungs-Protokollbuch.</translation>
    </message>
    <message>
        <source>What was chosen is what it was before.</source>
        <translation>Gewählt wurde dasselbe wie vorher.</translation>
    </message>
    <message>
        <source>What was done at the practice press. It qualifies nobody alone.</source>
        <translation>Was an der Übungsmaschine getan wurde. Allein befähigt es niemanden.</translation>
    </message>
    <message>
        <source>What was entered by hand counts. Scan the tag again if it should be readable.</source>
        <translation>Das von Hand Eingegebene zählt. Den Rollenzettel noch einmal scannen, wenn er lesbar sein sollte.</translation>
    </message>
    <message>
        <source>What was not as it should be</source>
        <translation>Was nicht war, wie es sein soll</translation>
    </message>
    <message>
        <source>What was not right, found in tests</source>
        <translation>Was nicht stimmte, in Prüfungen gefunden</translation>
    </message>
    <message>
        <source>What was restored is the logbook of another PC than what lay there before, which was kept as %1.</source>
        <translation>Wiederhergestellt wurde das Protokollbuch eines anderen PCs als das, was vorher dort lag; dies wurde als %1 aufbewahrt.</translation>
    </message>
    <message>
        <source>What was said no longer holds. Say it again: %1</source>
        <translation>Was gesagt wurde, gilt nicht mehr. Neu sagen: %1</translation>
    </message>
    <message>
        <source>What was seen</source>
        <translation>Was gesehen wurde</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>When its adjuster stands at its mid mark.</source>
        <translation>Wenn sein Steller auf der Mittelmarke steht.</translation>
    </message>
    <message>
        <source>When this run was abandoned a stop was still held by %1.</source>
        <translation>Als dieser Durchgang abgebrochen wurde, wurde noch ein Halt gehalten von %1.</translation>
    </message>
    <message>
        <source>Whence the torque is known: its maker's sheet, or the runs that measured it.</source>
        <translation>Woher das Drehmoment bekannt ist: aus dem Herstellerblatt oder aus den Durchgängen, die es gemessen haben.</translation>
    </message>
    <message>
        <source>Where it stands: firm, hall.</source>
        <translation>Wo sie steht: Firma, Halle.</translation>
    </message>
    <message>
        <source>Where the face of the finished roll is to be.</source>
        <translation>Wo die Druckseite der fertigen Rolle sein soll.</translation>
    </message>
    <message>
        <source>Where the job says nothing closer.</source>
        <translation>Wo der Auftrag nichts Genaueres sagt.</translation>
    </message>
    <message>
        <source>Where the press said otherwise</source>
        <translation>Wo die Maschine anderes sagte</translation>
    </message>
    <message>
        <source>Whether air goes through it: none is drawn in between web and roller.</source>
        <translation>Ob Luft hindurchgeht: Dann wird keine zwischen Bahn und Walze gezogen.</translation>
    </message>
    <message>
        <source>Whether both faces are taped.</source>
        <translation>Ob beide Seiten geklebt werden.</translation>
    </message>
    <message>
        <source>Whether finished rolls or waste are wound here.</source>
        <translation>Ob hier fertige Rollen oder Abfall gewickelt werden.</translation>
    </message>
    <message>
        <source>Whether it needs compressed air.</source>
        <translation>Ob sie Druckluft braucht.</translation>
    </message>
    <message>
        <source>Whether its emergency stop is latched when power comes on.</source>
        <translation>Ob ihr Not-Halt beim Einschalten verrastet ist.</translation>
    </message>
    <message>
        <source>Whether light goes through it: optical sensors may not see it.</source>
        <translation>Ob Licht hindurchgeht: Optische Sensoren sehen ihn vielleicht nicht.</translation>
    </message>
    <message>
        <source>Whether the roll's diameter is typed into the drive.</source>
        <translation>Ob der Rollendurchmesser in den Antrieb eingegeben wird.</translation>
    </message>
    <message>
        <source>Whether this layer bears the tension behind the die by itself.</source>
        <translation>Ob diese Schicht den Bahnzug hinter der Stanze allein trägt.</translation>
    </message>
    <message>
        <source>Whether trip bars stop the press.</source>
        <translation>Ob Schaltleisten die Maschine halten.</translation>
    </message>
    <message>
        <source>Which layers bear this tension: all, or the liner alone behind the die.</source>
        <translation>Welche Schichten diesen Bahnzug tragen: alle, oder hinter der Stanze nur die Trägerbahn.</translation>
    </message>
    <message>
        <source>Which way</source>
        <translation>Wohin</translation>
    </message>
    <message>
        <source>Which way %1 must wind is not told by the rollers as they are drawn.</source>
        <translation>Wie herum %1 wickeln muss, lässt sich aus den gezeichneten Walzen nicht sagen.</translation>
    </message>
    <message>
        <source>Who says so, or when it was measured.</source>
        <translation>Wer das sagt, oder wann es gemessen wurde.</translation>
    </message>
    <message>
        <source>Whoever holds it gives it up, in person.</source>
        <translation>Wer ihn hält, gibt ihn selbst frei.</translation>
    </message>
    <message>
        <source>Whoever may read that folder can read the record.</source>
        <translation>Wer diesen Ordner lesen darf, kann die Aufzeichnung lesen.</translation>
    </message>
    <message>
        <source>Why it was abandoned</source>
        <translation>Warum er abgebrochen wurde</translation>
    </message>
    <message>
        <source>Why the press was withdrawn</source>
        <translation>Warum die Maschine gesperrt wurde</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>Width of the web, measured</source>
        <translation>Breite der Bahn, gemessen</translation>
    </message>
    <message>
        <source>Wind a smaller roll, or run lower in the tension window.</source>
        <translation>Eine kleinere Rolle wickeln, oder tiefer im Zugfenster fahren.</translation>
    </message>
    <message>
        <source>Wind a smaller roll.</source>
        <translation>Eine kleinere Rolle wickeln.</translation>
    </message>
    <message>
        <source>Wind on a core that the shaft holds, and rewind the finished rolls elsewhere.</source>
        <translation>Auf eine Hülse wickeln, die die Welle hält, und die fertigen Rollen anderswo umrollen.</translation>
    </message>
    <message>
        <source>Wind on a larger core, or have a weaker drive fitted.</source>
        <translation>Auf eine größere Hülse wickeln, oder einen schwächeren Antrieb einbauen lassen.</translation>
    </message>
    <message>
        <source>Wind on a larger core, or take part of the clutch out of use.</source>
        <translation>Auf eine größere Hülse wickeln, oder einen Teil der Kupplung außer Betrieb nehmen.</translation>
    </message>
    <message>
        <source>Wind on a smaller core, or engage more of the clutch.</source>
        <translation>Auf eine kleinere Hülse wickeln, oder mehr von der Kupplung einschalten.</translation>
    </message>
    <message>
        <source>Wind on a smaller core, or have a stronger drive fitted.</source>
        <translation>Auf eine kleinere Hülse wickeln, oder einen stärkeren Antrieb einbauen lassen.</translation>
    </message>
    <message>
        <source>Wipe it</source>
        <translation>Abwischen</translation>
    </message>
    <message>
        <source>With all that the brake has, as it bites in an emergency stop.</source>
        <translation>Mit allem, was die Bremse hat, wie sie bei einem Not-Halt zupackt.</translation>
    </message>
    <message>
        <source>With its adapter the roll weighs %1, this lift carries %2.</source>
        <translation>Mit ihrem Adapter wiegt die Rolle %1, dieser Rollenlift trägt %2.</translation>
    </message>
    <message>
        <source>With its adapter the roll weighs %1, this press takes %2.</source>
        <translation>Mit ihrem Adapter wiegt die Rolle %1, diese Maschine nimmt %2.</translation>
    </message>
    <message>
        <source>With the brake left as it is set.</source>
        <translation>Mit der Bremse, wie sie eingestellt ist.</translation>
    </message>
    <message>
        <source>With the setting left alone it would be %1 at %2.</source>
        <translation>Bei unveränderter Einstellung wären es %1 bei %2.</translation>
    </message>
    <message>
        <source>With this feed and winding a roll shows its face to the plates: how it is hung.</source>
        <translation>Mit dieser Zuführung und Wicklung zeigt eine Rolle den Platten ihre Druckseite: wie sie hängt.</translation>
    </message>
    <message>
        <source>With this feed and winding a roll shows its face to the plates: how it is wound.</source>
        <translation>Mit dieser Zuführung und Wicklung zeigt eine Rolle den Platten ihre Druckseite: wie sie gewickelt ist.</translation>
    </message>
    <message>
        <source>With this row %1 lies above %2.</source>
        <translation>Mit dieser Zeile liegt %1 über %2.</translation>
    </message>
    <message>
        <source>With what make-ready and splices take; short runs are mostly that.</source>
        <translation>Mit dem, was Einrichten und Klebestellen brauchen; kurze Aufträge sind größtenteils das.</translation>
    </message>
    <message>
        <source>Withdrawing the press needs a sentence.</source>
        <translation>Das Sperren der Maschine braucht einen Satz.</translation>
    </message>
    <message>
        <source>Wound</source>
        <translation>Gewickelt</translation>
    </message>
    <message>
        <source>Wound like this, the roll would print on its back: this unwind cannot be fed %1.</source>
        <translation>So gewickelt, würde die Rolle auf ihrer Rückseite bedruckt: An dieser Abwicklung gibt es keine Zuführung %1.</translation>
    </message>
    <message>
        <source>Wraps on the roll</source>
        <translation>Lagen auf der Rolle</translation>
    </message>
    <message>
        <source>Write %1 (%2).</source>
        <translation>%1 schreiben (%2).</translation>
    </message>
    <message>
        <source>Write %1 = "..."; what stands beside it is left out until then.</source>
        <translation>%1 = "..." schreiben; was daneben steht, bleibt bis dahin weg.</translation>
    </message>
    <message>
        <source>Write %1 = with %2.</source>
        <translation>%1 = mit %2 schreiben.</translation>
    </message>
    <message>
        <source>Write %1 as a text with its unit, like "%2".</source>
        <translation>Als Text mit Einheit schreiben, wie "%2": %1.</translation>
    </message>
    <message>
        <source>Write %1 or %2: one decimal mark at most, and nothing between thousands.</source>
        <translation>%1 oder %2 schreiben: höchstens ein Dezimalzeichen, und nichts zwischen Tausendern.</translation>
    </message>
    <message>
        <source>Write %1.</source>
        <translation>%1 schreiben.</translation>
    </message>
    <message>
        <source>Write a key of a few parts, joined by dots.</source>
        <translation>Einen Schlüssel aus wenigen Teilen schreiben, mit Punkten verbunden.</translation>
    </message>
    <message>
        <source>Write a list of tables: [[%1]] with its keys below, once for each.</source>
        <translation>Eine Liste von Tabellen schreiben: [[%1]] mit den Schlüsseln darunter, einmal für jede.</translation>
    </message>
    <message>
        <source>Write a list of texts, like ["one", "two"].</source>
        <translation>Eine Liste von Texten schreiben, wie ["one", "two"].</translation>
    </message>
    <message>
        <source>Write a note beside it, or give up the stop and hold it anew.</source>
        <translation>Eine Notiz daneben schreiben, oder den Halt aufheben und neu setzen.</translation>
    </message>
    <message>
        <source>Write a note beside the step instead.</source>
        <translation>Stattdessen eine Notiz zum Schritt schreiben.</translation>
    </message>
    <message>
        <source>Write a note instead that says where it is kept.</source>
        <translation>Stattdessen eine Notiz schreiben, die sagt, wo es liegt.</translation>
    </message>
    <message>
        <source>Write a number and its unit, like %1 or %2.</source>
        <translation>Eine Zahl und ihre Einheit schreiben, wie %1 oder %2.</translation>
    </message>
    <message>
        <source>Write a number and its unit, like %1.</source>
        <translation>Eine Zahl und ihre Einheit schreiben, wie %1.</translation>
    </message>
    <message>
        <source>Write a number with s or min between quotes.</source>
        <translation>Eine Zahl mit s oder min in Anführungszeichen schreiben.</translation>
    </message>
    <message>
        <source>Write a number, or a share like "500 %".</source>
        <translation>Eine Zahl schreiben, oder einen Anteil wie "500 %".</translation>
    </message>
    <message>
        <source>Write a number, without a unit.</source>
        <translation>Eine Zahl schreiben, ohne Einheit.</translation>
    </message>
    <message>
        <source>Write a number, without quotes and without a unit.</source>
        <translation>Eine Zahl schreiben, ohne Anführungszeichen und ohne Einheit.</translation>
    </message>
    <message>
        <source>Write a number.</source>
        <translation>Eine Zahl schreiben.</translation>
    </message>
    <message>
        <source>Write a table with this id, its words, and of = "%1".</source>
        <translation>Eine Tabelle mit dieser id, ihren Worten und of = "%1" schreiben.</translation>
    </message>
    <message>
        <source>Write a table: [%1] with its keys below, or %1 = { key = value }.</source>
        <translation>Eine Tabelle schreiben: [%1] mit den Schlüsseln darunter, oder %1 = { key = value }.</translation>
    </message>
    <message>
        <source>Write a table: { key = value }.</source>
        <translation>Eine Tabelle schreiben: { key = value }.</translation>
    </message>
    <message>
        <source>Write a text between quotes, a number, true or false, or a list between brackets.</source>
        <translation>Text in Anführungszeichen, Zahl, true oder false oder eine Liste in eckigen Klammern schreiben.</translation>
    </message>
    <message>
        <source>Write a text between quotes.</source>
        <translation>Einen Text in Anführungszeichen schreiben.</translation>
    </message>
    <message>
        <source>Write a whole number, without quotes and without a unit.</source>
        <translation>Eine ganze Zahl schreiben, ohne Anführungszeichen und ohne Einheit.</translation>
    </message>
    <message>
        <source>Write a whole number; the usual value holds until then.</source>
        <translation>Eine ganze Zahl schreiben; bis dahin gilt der übliche Wert.</translation>
    </message>
    <message>
        <source>Write as many, in the same order.</source>
        <translation>Ebenso viele schreiben, in derselben Reihenfolge.</translation>
    </message>
    <message>
        <source>Write at least one [[stage]] with a place and its steps.</source>
        <translation>Mindestens einen [[stage]] mit Standort und dessen Schritten schreiben.</translation>
    </message>
    <message>
        <source>Write choices = [{ word = "...", say = "..." }, ...].</source>
        <translation>choices = [{ word = "...", say = "..." }, ...] schreiben.</translation>
    </message>
    <message>
        <source>Write control = "open_loop", "dancer", "load_cell" or "draw"; the zone is left out until then.</source>
        <translation>control = "open_loop", "dancer", "load_cell" oder "draw" schreiben; bis dahin bleibt die Zone weg.</translation>
    </message>
    <message>
        <source>Write core = with the core's inner diameter; it is left out until then.</source>
        <translation>core = mit dem Innendurchmesser der Hülse schreiben; bis dahin bleibt er weg.</translation>
    </message>
    <message>
        <source>Write each of them once for each time that the procedure has it, letter for letter.</source>
        <translation>Jedes so oft schreiben wie der Ablauf, Buchstabe für Buchstabe.</translation>
    </message>
    <message>
        <source>Write format = %1 in its first line; it is read as that.</source>
        <translation>format = %1 in die erste Zeile schreiben; so wird sie gelesen.</translation>
    </message>
    <message>
        <source>Write format = %1.</source>
        <translation>format = %1 schreiben.</translation>
    </message>
    <message>
        <source>Write format = 1 as its first line.</source>
        <translation>format = 1 als erste Zeile schreiben.</translation>
    </message>
    <message>
        <source>Write gives = ["stop_held"].</source>
        <translation>gives = ["stop_held"] schreiben.</translation>
    </message>
    <message>
        <source>Write how far the reading may be off, without a sign.</source>
        <translation>Schreiben, um wie viel die Ablesung falsch sein darf, ohne Vorzeichen.</translation>
    </message>
    <message>
        <source>Write it as 2026-11-25.</source>
        <translation>So schreiben: 2026-11-25.</translation>
    </message>
    <message>
        <source>Write it as text in quotes.</source>
        <translation>Als Text in Anführungszeichen schreiben.</translation>
    </message>
    <message>
        <source>Write it in its file, and practice goes by it.</source>
        <translation>In seine Datei schreiben; dann richtet sich die Übung danach.</translation>
    </message>
    <message>
        <source>Write it in one of these units.</source>
        <translation>In einer dieser Einheiten schreiben.</translation>
    </message>
    <message>
        <source>Write it in one of: %1.</source>
        <translation>In einer davon schreiben: %1.</translation>
    </message>
    <message>
        <source>Write it in the file that it belongs to.</source>
        <translation>In die Datei schreiben, zu der es gehört.</translation>
    </message>
    <message>
        <source>Write it like 13.25, 13,25 or 13 1/4.</source>
        <translation>Schreiben wie 13.25, 13,25 oder 13 1/4.</translation>
    </message>
    <message>
        <source>Write it like 2026-11-25T06:41:03.120Z.</source>
        <translation>Schreiben wie 2026-11-25T06:41:03.120Z.</translation>
    </message>
    <message>
        <source>Write it like 5 ft 3 1/4 in: whole feet, and fewer than 12 inches.</source>
        <translation>Schreiben wie 5 ft 3 1/4 in: ganze Fuß, und weniger als 12 Zoll.</translation>
    </message>
    <message>
        <source>Write it like 60 lb 25x38 in.</source>
        <translation>Schreiben wie 60 lb 25x38 in.</translation>
    </message>
    <message>
        <source>Write kind = "choice", or take the choices out.</source>
        <translation>kind = "choice" schreiben, oder die Auswahlen herausnehmen.</translation>
    </message>
    <message>
        <source>Write number = 1 (or its number); it is left out until then.</source>
        <translation>number = 1 (oder die Nummer) schreiben; bis dahin bleibt es weg.</translation>
    </message>
    <message>
        <source>Write one of: %1.</source>
        <translation>Eines davon schreiben: %1.</translation>
    </message>
    <message>
        <source>Write stage, place and step of the procedure with dots between, as in power_up.tests.stop_test.</source>
        <translation>Abschnitt, Platz und Schritt des Ablaufs mit Punkten dazwischen schreiben, wie in power_up.tests.stop_test.</translation>
    </message>
    <message>
        <source>Write station = 1 (or its number); the deck is left out until then.</source>
        <translation>station = 1 (oder die Nummer) schreiben; bis dahin bleibt die Belegung weg.</translation>
    </message>
    <message>
        <source>Write the day of the last change as year, month and day: 2026-11-25.</source>
        <translation>Den Tag der letzten Änderung als Jahr, Monat und Tag schreiben: 2026-11-25.</translation>
    </message>
    <message>
        <source>Write the earlier day first.</source>
        <translation>Den früheren Tag zuerst schreiben.</translation>
    </message>
    <message>
        <source>Write the number alone, without a unit.</source>
        <translation>Nur die Zahl schreiben, ohne Einheit.</translation>
    </message>
    <message>
        <source>Write the number with its unit.</source>
        <translation>Die Zahl mit ihrer Einheit schreiben.</translation>
    </message>
    <message>
        <source>Write the unit in which the panel takes the tension, such as N or lbf, or %.</source>
        <translation>Die Einheit schreiben, in der das Bedienpult den Zug nimmt, etwa N oder lbf, oder %.</translation>
    </message>
    <message>
        <source>Write true or false, without quotes.</source>
        <translation>true oder false schreiben, ohne Anführungszeichen.</translation>
    </message>
    <message>
        <source>Write two lengths, along and up, like ["650 mm", "400 mm"].</source>
        <translation>Zwei Längen schreiben, entlang und hoch, wie ["650 mm", "400 mm"].</translation>
    </message>
    <message>
        <source>Write waivable = false: the step ends done, or the press is withdrawn.</source>
        <translation>waivable = false schreiben: Der Schritt endet erledigt, oder die Maschine wird gesperrt.</translation>
    </message>
    <message>
        <source>Write what is to be put right as a remark.</source>
        <translation>Was richtigzustellen ist, als Bemerkung schreiben.</translation>
    </message>
    <message>
        <source>Write why: what happens to a hand, an eye or the roll without it.</source>
        <translation>Schreiben, warum: was ohne es einer Hand, einem Auge oder der Rolle geschieht.</translation>
    </message>
    <message>
        <source>Write { word = "...", say = "..." } for each choice of the step.</source>
        <translation>Für jede Auswahl des Schritts { word = "...", say = "..." } schreiben.</translation>
    </message>
    <message>
        <source>Z = R / (pi m), rounded up to whole teeth</source>
        <translation>Z = R / (pi m), aufgerundet auf ganze Zähne</translation>
    </message>
    <message>
        <source>Z = R / p, rounded up to whole teeth</source>
        <translation>Z = R / p, aufgerundet auf ganze Zähne</translation>
    </message>
    <message>
        <source>Z = R P / pi, rounded up to whole teeth</source>
        <translation>Z = R P / pi, aufgerundet auf ganze Zähne</translation>
    </message>
    <message>
        <source>Zone %1 begins and ends at roller %2: no web lies between.</source>
        <translation>Zone %1 beginnt und endet an Walze %2: Dazwischen liegt keine Bahn.</translation>
    </message>
    <message>
        <source>Zone %1 ends at rewind %2, where zone %3 ends already.</source>
        <translation>Zone %1 endet an Aufwicklung %2, wo schon Zone %3 endet.</translation>
    </message>
    <message>
        <source>a count</source>
        <translation>eine Anzahl</translation>
    </message>
    <message>
        <source>a count per length</source>
        <translation>eine Anzahl je Länge</translation>
    </message>
    <message>
        <source>a current</source>
        <translation>ein Strom</translation>
    </message>
    <message>
        <source>a density</source>
        <translation>eine Dichte</translation>
    </message>
    <message>
        <source>a force</source>
        <translation>eine Kraft</translation>
    </message>
    <message>
        <source>a force per width</source>
        <translation>eine Kraft je Breite</translation>
    </message>
    <message>
        <source>a length</source>
        <translation>eine Länge</translation>
    </message>
    <message>
        <source>a list</source>
        <translation>eine Liste</translation>
    </message>
    <message>
        <source>a list of tables</source>
        <translation>eine Liste von Tabellen</translation>
    </message>
    <message>
        <source>a list of texts</source>
        <translation>eine Liste von Texten</translation>
    </message>
    <message>
        <source>a mass</source>
        <translation>eine Masse</translation>
    </message>
    <message>
        <source>a mass per area</source>
        <translation>eine Masse je Fläche</translation>
    </message>
    <message>
        <source>a moment of inertia</source>
        <translation>ein Trägheitsmoment</translation>
    </message>
    <message>
        <source>a number</source>
        <translation>eine Zahl</translation>
    </message>
    <message>
        <source>a number of turns per time</source>
        <translation>eine Drehzahl</translation>
    </message>
    <message>
        <source>a power</source>
        <translation>eine Leistung</translation>
    </message>
    <message>
        <source>a pressure</source>
        <translation>ein Druck</translation>
    </message>
    <message>
        <source>a reading was corrected</source>
        <translation>eine Ablesung wurde berichtigt</translation>
    </message>
    <message>
        <source>a reading was outside</source>
        <translation>eine Ablesung war außerhalb</translation>
    </message>
    <message>
        <source>a roll in the press room before use</source>
        <translation>eine Rolle im Drucksaal vor dem Einsatz</translation>
    </message>
    <message>
        <source>a run</source>
        <translation>ein Durchgang</translation>
    </message>
    <message>
        <source>a share</source>
        <translation>ein Anteil</translation>
    </message>
    <message>
        <source>a speed</source>
        <translation>eine Geschwindigkeit</translation>
    </message>
    <message>
        <source>a stage was done again</source>
        <translation>ein Abschnitt wurde wiederholt</translation>
    </message>
    <message>
        <source>a supervisor accepted a reading outside</source>
        <translation>eine Aufsicht nahm eine Ablesung außerhalb an</translation>
    </message>
    <message>
        <source>a table</source>
        <translation>eine Tabelle</translation>
    </message>
    <message>
        <source>a table's single starting value, either way</source>
        <translation>der einzelne Startwert einer Tabelle, nach jeder Seite</translation>
    </message>
    <message>
        <source>a text</source>
        <translation>ein Text</translation>
    </message>
    <message>
        <source>a text between quotes</source>
        <translation>ein Text in Anführungszeichen</translation>
    </message>
    <message>
        <source>a time</source>
        <translation>eine Zeit</translation>
    </message>
    <message>
        <source>a torque</source>
        <translation>ein Drehmoment</translation>
    </message>
    <message>
        <source>a torque per current</source>
        <translation>ein Drehmoment je Strom</translation>
    </message>
    <message>
        <source>a torque per pressure</source>
        <translation>ein Drehmoment je Druck</translation>
    </message>
    <message>
        <source>a torque per share</source>
        <translation>ein Drehmoment je Anteil</translation>
    </message>
    <message>
        <source>a viscosity</source>
        <translation>eine Viskosität</translation>
    </message>
    <message>
        <source>a volume per area</source>
        <translation>ein Volumen je Fläche</translation>
    </message>
    <message>
        <source>a whole number</source>
        <translation>eine ganze Zahl</translation>
    </message>
    <message>
        <source>abandoned</source>
        <translation>abgebrochen</translation>
    </message>
    <message>
        <source>abandoned, not reviewed</source>
        <translation>abgebrochen, nicht geprüft</translation>
    </message>
    <message>
        <source>abandoned, reviewed</source>
        <translation>abgebrochen, geprüft</translation>
    </message>
    <message>
        <source>acceleration</source>
        <translation>Beschleunigung</translation>
    </message>
    <message>
        <source>accepted</source>
        <translation>angenommen</translation>
    </message>
    <message>
        <source>accepted by</source>
        <translation>angenommen von</translation>
    </message>
    <message>
        <source>air film</source>
        <translation>Luftfilm</translation>
    </message>
    <message>
        <source>air in a shaft without a plate, at least</source>
        <translation>Luft in einer Welle ohne Schild, mindestens</translation>
    </message>
    <message>
        <source>air in a shaft without a plate, at most</source>
        <translation>Luft in einer Welle ohne Schild, höchstens</translation>
    </message>
    <message>
        <source>air pressure</source>
        <translation>Luftdruck</translation>
    </message>
    <message>
        <source>air supply at the press, at least</source>
        <translation>Luftversorgung an der Maschine, mindestens</translation>
    </message>
    <message>
        <source>air supply at the press, at most</source>
        <translation>Luftversorgung an der Maschine, höchstens</translation>
    </message>
    <message>
        <source>all presses</source>
        <translation>alle Maschinen</translation>
    </message>
    <message>
        <source>an acceleration</source>
        <translation>eine Beschleunigung</translation>
    </message>
    <message>
        <source>an angle</source>
        <translation>ein Winkel</translation>
    </message>
    <message>
        <source>an area</source>
        <translation>eine Fläche</translation>
    </message>
    <message>
        <source>an area per mass</source>
        <translation>eine Fläche je Masse</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation>und %1 weitere</translation>
    </message>
    <message>
        <source>angle from the straight cross cut</source>
        <translation>Winkel zum geraden Querschnitt</translation>
    </message>
    <message>
        <source>angle of the guide</source>
        <translation>Winkel des Bahnlaufreglers</translation>
    </message>
    <message>
        <source>angle out of square</source>
        <translation>Winkel aus dem rechten Winkel</translation>
    </message>
    <message>
        <source>anilox volume</source>
        <translation>Schöpfvolumen der Rasterwalze</translation>
    </message>
    <message>
        <source>another cause</source>
        <translation>andere Ursache</translation>
    </message>
    <message>
        <source>answered fast</source>
        <translation>schnell beantwortet</translation>
    </message>
    <message>
        <source>answers by: %1</source>
        <translation>Antworten von: %1</translation>
    </message>
    <message>
        <source>are closed</source>
        <translation>sind geschlossen</translation>
    </message>
    <message>
        <source>are cut</source>
        <translation>sind geschnitten</translation>
    </message>
    <message>
        <source>are engaged</source>
        <translation>sind zugeschaltet</translation>
    </message>
    <message>
        <source>are fitted</source>
        <translation>sind eingesetzt</translation>
    </message>
    <message>
        <source>are not cut together</source>
        <translation>sind nicht zusammen geschnitten</translation>
    </message>
    <message>
        <source>are not fitted</source>
        <translation>sind nicht eingesetzt</translation>
    </message>
    <message>
        <source>are not trimmed</source>
        <translation>sind nicht abgeschnitten</translation>
    </message>
    <message>
        <source>are off</source>
        <translation>sind ab</translation>
    </message>
    <message>
        <source>are on the roll</source>
        <translation>sind auf der Rolle</translation>
    </message>
    <message>
        <source>are open</source>
        <translation>sind offen</translation>
    </message>
    <message>
        <source>are trimmed</source>
        <translation>sind abgeschnitten</translation>
    </message>
    <message>
        <source>area of one piston</source>
        <translation>Fläche eines Kolbens</translation>
    </message>
    <message>
        <source>area of one sheet</source>
        <translation>Fläche eines Bogens</translation>
    </message>
    <message>
        <source>area of web</source>
        <translation>Fläche der Bahn</translation>
    </message>
    <message>
        <source>arm of the cylinder</source>
        <translation>Hebelarm des Zylinders</translation>
    </message>
    <message>
        <source>arm of the dancer roller</source>
        <translation>Hebelarm der Tänzerwalze</translation>
    </message>
    <message>
        <source>arm of the weight</source>
        <translation>Hebelarm des Gewichts</translation>
    </message>
    <message>
        <source>as entered</source>
        <translation>wie eingegeben</translation>
    </message>
    <message>
        <source>as set</source>
        <translation>wie eingestellt</translation>
    </message>
    <message>
        <source>at</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>attached</source>
        <translation>angehängt</translation>
    </message>
    <message>
        <source>before %1</source>
        <translation>vor %1</translation>
    </message>
    <message>
        <source>beside</source>
        <translation>bei</translation>
    </message>
    <message>
        <source>best before</source>
        <translation>mindestens haltbar bis</translation>
    </message>
    <message>
        <source>bore</source>
        <translation>Bohrung</translation>
    </message>
    <message>
        <source>bore of %1</source>
        <translation>Bohrung von %1</translation>
    </message>
    <message>
        <source>brake torque</source>
        <translation>Drehmoment der Bremse</translation>
    </message>
    <message>
        <source>breaking strength per width</source>
        <translation>Bruchkraft je Breite</translation>
    </message>
    <message>
        <source>broken</source>
        <translation>nicht eingehalten</translation>
    </message>
    <message>
        <source>by</source>
        <translation>von</translation>
    </message>
    <message>
        <source>by %1</source>
        <translation>von %1</translation>
    </message>
    <message>
        <source>by %1 min; what follows stands in the order in which it happened</source>
        <translation>um %1 min; was folgt, steht in der Reihenfolge, in der es geschah</translation>
    </message>
    <message>
        <source>by %1, %2</source>
        <translation>von %1, %2</translation>
    </message>
    <message>
        <source>by %1; what follows stands in the order in which it happened</source>
        <translation>um %1; was folgt, steht in der Reihenfolge, in der es geschah</translation>
    </message>
    <message>
        <source>by the diameters</source>
        <translation>nach den Durchmessern</translation>
    </message>
    <message>
        <source>by the label</source>
        <translation>nach dem Etikett</translation>
    </message>
    <message>
        <source>by the mass</source>
        <translation>nach der Masse</translation>
    </message>
    <message>
        <source>by the published limits of i</source>
        <translation>nach den veröffentlichten Grenzen von i</translation>
    </message>
    <message>
        <source>by the published limits of v</source>
        <translation>nach den veröffentlichten Grenzen von v</translation>
    </message>
    <message>
        <source>by what a repeat is shorter when the web is let go</source>
        <translation>um wie viel eine Drucklänge kürzer ist, wenn die Bahn entlastet ist</translation>
    </message>
    <message>
        <source>by winding, side and the way from unwind to rewind</source>
        <translation>nach Wicklung, Seite und dem Weg von der Abwicklung zur Aufwicklung</translation>
    </message>
    <message>
        <source>caliper</source>
        <translation>Dicke</translation>
    </message>
    <message>
        <source>calipers in use</source>
        <translation>Bremszangen im Einsatz</translation>
    </message>
    <message>
        <source>cannot</source>
        <translation>geht nicht</translation>
    </message>
    <message>
        <source>cells</source>
        <translation>Näpfchen</translation>
    </message>
    <message>
        <source>centre mark on the lead edge, either way</source>
        <translation>Mittenmarke an der Vorderkante, je Richtung</translation>
    </message>
    <message>
        <source>change of speed</source>
        <translation>Geschwindigkeitsänderung</translation>
    </message>
    <message>
        <source>circular pitch</source>
        <translation>Teilung am Teilkreis</translation>
    </message>
    <message>
        <source>clamp %1</source>
        <translation>Klemme %1</translation>
    </message>
    <message>
        <source>clamp on the press's side</source>
        <translation>Klemme auf der Maschinenseite</translation>
    </message>
    <message>
        <source>clamp on the roll's side</source>
        <translation>Klemme auf der Rollenseite</translation>
    </message>
    <message>
        <source>clock set back</source>
        <translation>Uhr zurückgestellt</translation>
    </message>
    <message>
        <source>clock set forward</source>
        <translation>Uhr vorgestellt</translation>
    </message>
    <message>
        <source>colour to colour, either way</source>
        <translation>Farbe zu Farbe, je Richtung</translation>
    </message>
    <message>
        <source>combined roughness</source>
        <translation>gemeinsame Rauheit</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>übliche Praxis, ohne Quelle</translation>
    </message>
    <message>
        <source>completed</source>
        <translation>abgeschlossen</translation>
    </message>
    <message>
        <source>completed, with deviations</source>
        <translation>abgeschlossen, mit Abweichungen</translation>
    </message>
    <message>
        <source>conforms</source>
        <translation>entspricht</translation>
    </message>
    <message>
        <source>continues run %1</source>
        <translation>setzt Durchgang %1 fort</translation>
    </message>
    <message>
        <source>core</source>
        <translation>Hülse</translation>
    </message>
    <message>
        <source>core adapter</source>
        <translation>Hülsenadapter</translation>
    </message>
    <message>
        <source>core inner diameter</source>
        <translation>Innendurchmesser der Hülse</translation>
    </message>
    <message>
        <source>core, inner diameter</source>
        <translation>Hülse, Innendurchmesser</translation>
    </message>
    <message>
        <source>corrected</source>
        <translation>berichtigt</translation>
    </message>
    <message>
        <source>corrected by %1, to be reviewed</source>
        <translation>berichtigt von %1, zu prüfen</translation>
    </message>
    <message>
        <source>corrected: %1</source>
        <translation>berichtigt: %1</translation>
    </message>
    <message>
        <source>count</source>
        <translation>Anzahl</translation>
    </message>
    <message>
        <source>count inside</source>
        <translation>Anzahl darin</translation>
    </message>
    <message>
        <source>countersigned by %1</source>
        <translation>mitunterschrieben von %1</translation>
    </message>
    <message>
        <source>coverage</source>
        <translation>Flächendeckung</translation>
    </message>
    <message>
        <source>crawl speed</source>
        <translation>Kriechgeschwindigkeit</translation>
    </message>
    <message>
        <source>customer's item</source>
        <translation>Artikel des Kunden</translation>
    </message>
    <message>
        <source>cut out of square across the web</source>
        <translation>Schnitt quer zur Bahn nicht rechtwinklig</translation>
    </message>
    <message>
        <source>cylinders</source>
        <translation>Zylinder</translation>
    </message>
    <message>
        <source>dancer at rest, share of its travel at least</source>
        <translation>Tänzer in Ruhe, Anteil am Weg mindestens</translation>
    </message>
    <message>
        <source>dancer at rest, share of its travel at most</source>
        <translation>Tänzer in Ruhe, Anteil am Weg höchstens</translation>
    </message>
    <message>
        <source>date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>deceleration</source>
        <translation>Verzögerung</translation>
    </message>
    <message>
        <source>definition</source>
        <translation>Definition</translation>
    </message>
    <message>
        <source>density</source>
        <translation>Dichte</translation>
    </message>
    <message>
        <source>density of the ink</source>
        <translation>Dichte der Farbe</translation>
    </message>
    <message>
        <source>deviation accepted</source>
        <translation>Abweichung angenommen</translation>
    </message>
    <message>
        <source>diameter</source>
        <translation>Durchmesser</translation>
    </message>
    <message>
        <source>diameter after</source>
        <translation>Durchmesser nachher</translation>
    </message>
    <message>
        <source>diameter at the start</source>
        <translation>Durchmesser am Anfang</translation>
    </message>
    <message>
        <source>diameter before</source>
        <translation>Durchmesser vorher</translation>
    </message>
    <message>
        <source>diameter measured</source>
        <translation>Durchmesser gemessen</translation>
    </message>
    <message>
        <source>diameter measured, or told to a drive, against the one computed with, either way</source>
        <translation>Durchmesser, gemessen oder einem Antrieb angegeben, gegen den gerechneten, je Richtung</translation>
    </message>
    <message>
        <source>diameter of one roller</source>
        <translation>Durchmesser der einen Walze</translation>
    </message>
    <message>
        <source>diameter of the other</source>
        <translation>Durchmesser der anderen</translation>
    </message>
    <message>
        <source>diametral pitch</source>
        <translation>Diametral Pitch</translation>
    </message>
    <message>
        <source>die to print, either way</source>
        <translation>Stanzung zu Druck, je Richtung</translation>
    </message>
    <message>
        <source>distance between centres</source>
        <translation>Abstand der Mitten</translation>
    </message>
    <message>
        <source>do it</source>
        <translation>es tun</translation>
    </message>
    <message>
        <source>does not apply</source>
        <translation>trifft nicht zu</translation>
    </message>
    <message>
        <source>does not belong</source>
        <translation>gehört nicht dazu</translation>
    </message>
    <message>
        <source>done</source>
        <translation>erledigt</translation>
    </message>
    <message>
        <source>done or read</source>
        <translation>erledigt oder abgelesen</translation>
    </message>
    <message>
        <source>downwards</source>
        <translation>abwärts</translation>
    </message>
    <message>
        <source>draw = (e2 - e1) / (1 + e1)</source>
        <translation>Voreilung = (e2 - e1) / (1 + e1)</translation>
    </message>
    <message>
        <source>drive-side frame</source>
        <translation>Seitenwand Antriebsseite</translation>
    </message>
    <message>
        <source>drive-side sensor</source>
        <translation>Sensor Antriebsseite</translation>
    </message>
    <message>
        <source>drive-side sensor of guide %1</source>
        <translation>Sensor Antriebsseite am Bahnlaufregler %1</translation>
    </message>
    <message>
        <source>drive-side sensor of the guide</source>
        <translation>Sensor Antriebsseite am Bahnlaufregler</translation>
    </message>
    <message>
        <source>dryer</source>
        <translation>Trockner</translation>
    </message>
    <message>
        <source>early shift (6 to 14)</source>
        <translation>Frühschicht (6 bis 14)</translation>
    </message>
    <message>
        <source>efficiency</source>
        <translation>Wirkungsgrad</translation>
    </message>
    <message>
        <source>emergency stop over the measured time</source>
        <translation>Not-Halt über der gemessenen Zeit</translation>
    </message>
    <message>
        <source>emergency stop under the measured time</source>
        <translation>Not-Halt unter der gemessenen Zeit</translation>
    </message>
    <message>
        <source>employee</source>
        <translation>Mitarbeiter</translation>
    </message>
    <message>
        <source>empty core</source>
        <translation>leere Hülse</translation>
    </message>
    <message>
        <source>enough</source>
        <translation>reicht</translation>
    </message>
    <message>
        <source>enough when U - u &gt;= N, probably when U &gt;= N, else no</source>
        <translation>reicht bei U - u &gt;= N, wahrscheinlich bei U &gt;= N, sonst nein</translation>
    </message>
    <message>
        <source>entered</source>
        <translation>eingegeben</translation>
    </message>
    <message>
        <source>equal spans</source>
        <translation>gleiche freie Bahnlängen</translation>
    </message>
    <message>
        <source>every press</source>
        <translation>alle Maschinen</translation>
    </message>
    <message>
        <source>external and set_up say two different things.</source>
        <translation>external und set_up sagen zweierlei.</translation>
    </message>
    <message>
        <source>face in</source>
        <translation>Druckseite innen</translation>
    </message>
    <message>
        <source>face out</source>
        <translation>Druckseite außen</translation>
    </message>
    <message>
        <source>fall of the air supply while nips close, at most</source>
        <translation>Abfall der Luftversorgung beim Schließen der Klemmwalzen, höchstens</translation>
    </message>
    <message>
        <source>film label stock without a maker's range, at least</source>
        <translation>Folien-Etikettenmaterial ohne Herstellerbereich, mindestens</translation>
    </message>
    <message>
        <source>film label stock without a maker's range, at most</source>
        <translation>Folien-Etikettenmaterial ohne Herstellerbereich, höchstens</translation>
    </message>
    <message>
        <source>finds this run</source>
        <translation>findet diesen Durchgang</translation>
    </message>
    <message>
        <source>finished diameter</source>
        <translation>Durchmesser der fertigen Rolle</translation>
    </message>
    <message>
        <source>first run of the job %1</source>
        <translation>erster Durchgang des Auftrags %1</translation>
    </message>
    <message>
        <source>first run with the substrate %1</source>
        <translation>erster Durchgang mit dem Bedruckstoff %1</translation>
    </message>
    <message>
        <source>follows from B1</source>
        <translation>folgt aus B1</translation>
    </message>
    <message>
        <source>follows from B1 and V5</source>
        <translation>folgt aus B1 und V5</translation>
    </message>
    <message>
        <source>follows from D2</source>
        <translation>folgt aus D2</translation>
    </message>
    <message>
        <source>follows from G3</source>
        <translation>folgt aus G3</translation>
    </message>
    <message>
        <source>follows from G5</source>
        <translation>folgt aus G5</translation>
    </message>
    <message>
        <source>follows from G8, mean over the width</source>
        <translation>folgt aus G8, Mittel über die Breite</translation>
    </message>
    <message>
        <source>found</source>
        <translation>gefunden</translation>
    </message>
    <message>
        <source>found at the roll</source>
        <translation>an der Rolle festgestellt</translation>
    </message>
    <message>
        <source>four fifths of the highest, or what the starting range keeps: policy</source>
        <translation>vier Fünftel des höchsten, oder was der Startbereich lässt: Vorgabe</translation>
    </message>
    <message>
        <source>frame from which this press is measured</source>
        <translation>Seitenwand, von der aus diese Maschine gemessen wird</translation>
    </message>
    <message>
        <source>free practice</source>
        <translation>freie Übung</translation>
    </message>
    <message>
        <source>friction</source>
        <translation>Reibung</translation>
    </message>
    <message>
        <source>friction of the lining</source>
        <translation>Reibung des Belags</translation>
    </message>
    <message>
        <source>from %1</source>
        <translation>von %1</translation>
    </message>
    <message>
        <source>from %1 to %2</source>
        <translation>von %1 bis %2</translation>
    </message>
    <message>
        <source>from %1 to %2: %3</source>
        <translation>von %1 bis %2: %3</translation>
    </message>
    <message>
        <source>from UTC%1 to UTC%2; what follows stands in the order in which it happened</source>
        <translation>von UTC%1 auf UTC%2; was folgt, steht in der Reihenfolge, in der es geschah</translation>
    </message>
    <message>
        <source>from memory: Lee, Kang, Kim, Shin 2009, S35</source>
        <translation>aus dem Gedächtnis: Lee, Kang, Kim, Shin 2009, S35</translation>
    </message>
    <message>
        <source>from underneath</source>
        <translation>von unten</translation>
    </message>
    <message>
        <source>full set-up</source>
        <translation>volle Einrichtung</translation>
    </message>
    <message>
        <source>gap between butted edges</source>
        <translation>Spalt zwischen gestoßenen Kanten</translation>
    </message>
    <message>
        <source>geometry</source>
        <translation>Geometrie</translation>
    </message>
    <message>
        <source>geometry, S67</source>
        <translation>Geometrie, S67</translation>
    </message>
    <message>
        <source>grammage</source>
        <translation>Flächengewicht</translation>
    </message>
    <message>
        <source>guarded acceptance, ILAC-G8:09/2019 4.2.3, guard band U (k = 2): inside, near, outside; limits are never widened, and how well a target is known moves none</source>
        <translation>Annahme mit Sicherheitsband, ILAC-G8:09/2019 4.2.3, Sicherheitsband U (k = 2): innerhalb, nahe, außerhalb; Grenzen werden nie erweitert, und wie genau ein Sollwert bekannt ist, verschiebt keine</translation>
    </message>
    <message>
        <source>guide</source>
        <translation>Bahnlaufregler</translation>
    </message>
    <message>
        <source>guide %1</source>
        <translation>Bahnlaufregler %1</translation>
    </message>
    <message>
        <source>guide at rest after a proving run, share of its stroke either way</source>
        <translation>Bahnlaufregler in Ruhe nach einem Probelauf, Anteil am Stellweg je Richtung</translation>
    </message>
    <message>
        <source>half of %1</source>
        <translation>Hälfte von %1</translation>
    </message>
    <message>
        <source>half of roll.core</source>
        <translation>Hälfte von roll.core</translation>
    </message>
    <message>
        <source>half of roll.stripped_diameter</source>
        <translation>Hälfte von roll.stripped_diameter</translation>
    </message>
    <message>
        <source>half of the core</source>
        <translation>Hälfte der Hülse</translation>
    </message>
    <message>
        <source>half of the core's outside</source>
        <translation>Hälfte des Hülsen-Außenmaßes</translation>
    </message>
    <message>
        <source>half of the diameter</source>
        <translation>Hälfte des Durchmessers</translation>
    </message>
    <message>
        <source>half of the width</source>
        <translation>Hälfte der Breite</translation>
    </message>
    <message>
        <source>half the window: common practice, no source</source>
        <translation>halbes Fenster: übliche Praxis, ohne Quelle</translation>
    </message>
    <message>
        <source>handed over</source>
        <translation>übergeben</translation>
    </message>
    <message>
        <source>has no air</source>
        <translation>hat keine Luft</translation>
    </message>
    <message>
        <source>has tape or web that stands over</source>
        <translation>hat Band oder Bahn, die übersteht</translation>
    </message>
    <message>
        <source>held by %1</source>
        <translation>gehalten von %1</translation>
    </message>
    <message>
        <source>highest tension per width</source>
        <translation>höchster Zug je Breite</translation>
    </message>
    <message>
        <source>how far a slit width may lie from its label</source>
        <translation>wie weit eine Schnittbreite von ihrem Etikett abweichen darf</translation>
    </message>
    <message>
        <source>how far the wound caliper may lie from the data</source>
        <translation>wie weit die Dicke im Wickel von den Daten abweichen darf</translation>
    </message>
    <message>
        <source>how the finished roll is wound</source>
        <translation>wie die fertige Rolle gewickelt ist</translation>
    </message>
    <message>
        <source>how the job's finished roll is wound</source>
        <translation>wie die fertige Rolle des Auftrags gewickelt ist</translation>
    </message>
    <message>
        <source>how the roll is wound</source>
        <translation>wie die Rolle gewickelt ist</translation>
    </message>
    <message>
        <source>how this press has its rolls, face in</source>
        <translation>wie diese Maschine ihre Rollen hat, Druckseite innen</translation>
    </message>
    <message>
        <source>how this press has its rolls, face out</source>
        <translation>wie diese Maschine ihre Rollen hat, Druckseite außen</translation>
    </message>
    <message>
        <source>how well a brake's torque per setting is known until it was fitted</source>
        <translation>wie genau das Drehmoment einer Bremse je Einstellung bekannt ist, bis es eingemessen wurde</translation>
    </message>
    <message>
        <source>how well a friction is known</source>
        <translation>wie genau eine Reibung bekannt ist</translation>
    </message>
    <message>
        <source>how well a grammage is known</source>
        <translation>wie genau ein Flächengewicht bekannt ist</translation>
    </message>
    <message>
        <source>how well a length on a label is known</source>
        <translation>wie genau eine Länge auf einem Etikett bekannt ist</translation>
    </message>
    <message>
        <source>how well a modulus is known</source>
        <translation>wie genau ein E-Modul bekannt ist</translation>
    </message>
    <message>
        <source>how well a roll is weighed</source>
        <translation>wie genau eine Rolle gewogen wird</translation>
    </message>
    <message>
        <source>how well a roll's diameter is measured</source>
        <translation>wie genau der Durchmesser einer Rolle gemessen wird</translation>
    </message>
    <message>
        <source>how well the two lengths are known</source>
        <translation>wie genau die beiden Längen bekannt sind</translation>
    </message>
    <message>
        <source>idle speed</source>
        <translation>Leerlaufgeschwindigkeit</translation>
    </message>
    <message>
        <source>in</source>
        <translation>in</translation>
    </message>
    <message>
        <source>in time</source>
        <translation>rechtzeitig</translation>
    </message>
    <message>
        <source>ink</source>
        <translation>Farbe</translation>
    </message>
    <message>
        <source>inner radius</source>
        <translation>Innenradius</translation>
    </message>
    <message>
        <source>inside</source>
        <translation>innerhalb</translation>
    </message>
    <message>
        <source>inside of the core</source>
        <translation>Innenmaß der Hülse</translation>
    </message>
    <message>
        <source>interrupted</source>
        <translation>unterbrochen</translation>
    </message>
    <message>
        <source>interrupted, not ended</source>
        <translation>unterbrochen, nicht beendet</translation>
    </message>
    <message>
        <source>is at the press</source>
        <translation>ist an der Maschine</translation>
    </message>
    <message>
        <source>is calibrated</source>
        <translation>ist kalibriert</translation>
    </message>
    <message>
        <source>is clean</source>
        <translation>ist sauber</translation>
    </message>
    <message>
        <source>is closed</source>
        <translation>ist geschlossen</translation>
    </message>
    <message>
        <source>is held</source>
        <translation>wird gehalten</translation>
    </message>
    <message>
        <source>is hung</source>
        <translation>hängt</translation>
    </message>
    <message>
        <source>is inflated</source>
        <translation>ist aufgeblasen</translation>
    </message>
    <message>
        <source>is latched</source>
        <translation>ist eingerastet</translation>
    </message>
    <message>
        <source>is let go</source>
        <translation>ist losgelassen</translation>
    </message>
    <message>
        <source>is not calibrated</source>
        <translation>ist nicht kalibriert</translation>
    </message>
    <message>
        <source>is not held</source>
        <translation>wird nicht gehalten</translation>
    </message>
    <message>
        <source>is not hung</source>
        <translation>hängt nicht</translation>
    </message>
    <message>
        <source>is not on the core</source>
        <translation>ist nicht auf der Hülse</translation>
    </message>
    <message>
        <source>is not reset</source>
        <translation>ist nicht rückgesetzt</translation>
    </message>
    <message>
        <source>is not taped</source>
        <translation>ist nicht geklebt</translation>
    </message>
    <message>
        <source>is not there</source>
        <translation>ist nicht da</translation>
    </message>
    <message>
        <source>is off</source>
        <translation>ist aus</translation>
    </message>
    <message>
        <source>is on</source>
        <translation>ist ein</translation>
    </message>
    <message>
        <source>is on the core</source>
        <translation>ist auf der Hülse</translation>
    </message>
    <message>
        <source>is on the floor</source>
        <translation>steht am Boden</translation>
    </message>
    <message>
        <source>is on the roll</source>
        <translation>ist auf der Rolle</translation>
    </message>
    <message>
        <source>is open</source>
        <translation>ist offen</translation>
    </message>
    <message>
        <source>is open over the web</source>
        <translation>ist offen über der Bahn</translation>
    </message>
    <message>
        <source>is out</source>
        <translation>ist draußen</translation>
    </message>
    <message>
        <source>is parked</source>
        <translation>ist geparkt</translation>
    </message>
    <message>
        <source>is released</source>
        <translation>ist entriegelt</translation>
    </message>
    <message>
        <source>is rising</source>
        <translation>steigt</translation>
    </message>
    <message>
        <source>is shut</source>
        <translation>ist abgesperrt</translation>
    </message>
    <message>
        <source>is taped</source>
        <translation>ist geklebt</translation>
    </message>
    <message>
        <source>it can be read to %1 either way, and the limit is closer than that</source>
        <translation>es lässt sich auf %1 je Richtung ablesen, und die Grenze ist näher</translation>
    </message>
    <message>
        <source>it can be read to %1 either way, more than half of the window</source>
        <translation>es lässt sich auf %1 je Richtung ablesen, mehr als das halbe Fenster</translation>
    </message>
    <message>
        <source>it was interrupted</source>
        <translation>wurde unterbrochen</translation>
    </message>
    <message>
        <source>item</source>
        <translation>Artikel</translation>
    </message>
    <message>
        <source>item inside</source>
        <translation>Artikel darin</translation>
    </message>
    <message>
        <source>its first nip</source>
        <translation>seine ersten Klemmwalzen</translation>
    </message>
    <message>
        <source>job %1, edition %2</source>
        <translation>Auftrag %1, Ausgabe %2</translation>
    </message>
    <message>
        <source>job.length times the width</source>
        <translation>job.length mal Breite</translation>
    </message>
    <message>
        <source>k v, at least vi, at most vm</source>
        <translation>k v, mindestens vi, höchstens vm</translation>
    </message>
    <message>
        <source>labels across the web</source>
        <translation>Etiketten quer zur Bahn</translation>
    </message>
    <message>
        <source>labels around the repeat</source>
        <translation>Etiketten im Umfang der Drucklänge</translation>
    </message>
    <message>
        <source>labels wanted</source>
        <translation>gewünschte Etiketten</translation>
    </message>
    <message>
        <source>largest core held</source>
        <translation>größte gehaltene Hülse</translation>
    </message>
    <message>
        <source>largest speed</source>
        <translation>größte Geschwindigkeit</translation>
    </message>
    <message>
        <source>largest strain</source>
        <translation>größte Dehnung</translation>
    </message>
    <message>
        <source>late shift (14 to 22)</source>
        <translation>Spätschicht (14 bis 22)</translation>
    </message>
    <message>
        <source>least</source>
        <translation>mindestens</translation>
    </message>
    <message>
        <source>leaves its range</source>
        <translation>verlässt den Bereich</translation>
    </message>
    <message>
        <source>left alone</source>
        <translation>unverändert gelassen</translation>
    </message>
    <message>
        <source>length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>length of the path</source>
        <translation>Länge des Bahnwegs</translation>
    </message>
    <message>
        <source>length of the roll</source>
        <translation>Länge der Rolle</translation>
    </message>
    <message>
        <source>length of the span</source>
        <translation>freie Bahnlänge</translation>
    </message>
    <message>
        <source>length of web</source>
        <translation>Länge der Bahn</translation>
    </message>
    <message>
        <source>length on the roll</source>
        <translation>Länge auf der Rolle</translation>
    </message>
    <message>
        <source>lies on the table</source>
        <translation>liegt auf dem Tisch</translation>
    </message>
    <message>
        <source>lies there</source>
        <translation>liegt dort</translation>
    </message>
    <message>
        <source>lift pressure over the figure at which it should have moved, at most</source>
        <translation>Liftdruck über dem Wert, bei dem er sich hätte bewegen sollen, höchstens</translation>
    </message>
    <message>
        <source>limits of this press's profile</source>
        <translation>Grenzen aus dem Profil dieser Maschine</translation>
    </message>
    <message>
        <source>limits provisional</source>
        <translation>Grenzen vorläufig</translation>
    </message>
    <message>
        <source>load cell with the web slack, share of its range either way</source>
        <translation>Kraftmessdose bei loser Bahn, Anteil am Bereich je Richtung</translation>
    </message>
    <message>
        <source>local time changed</source>
        <translation>Ortszeit geändert</translation>
    </message>
    <message>
        <source>lookup</source>
        <translation>Tabelle</translation>
    </message>
    <message>
        <source>lot</source>
        <translation>Charge</translation>
    </message>
    <message>
        <source>lowest tension per width</source>
        <translation>niedrigster Zug je Breite</translation>
    </message>
    <message>
        <source>lowest: %1; highest: %2</source>
        <translation>niedrigster: %1; höchster: %2</translation>
    </message>
    <message>
        <source>m = roll + adapter + carriage</source>
        <translation>m = roll + adapter + carriage</translation>
    </message>
    <message>
        <source>m = the largest of web + core, label + core and stated</source>
        <translation>m = der größte Wert aus web + Hülse, label + Hülse und stated</translation>
    </message>
    <message>
        <source>made on</source>
        <translation>hergestellt am</translation>
    </message>
    <message>
        <source>made safe first; steps to be said again: %1</source>
        <translation>zuerst sicher gemacht; neu zu sagende Schritte: %1</translation>
    </message>
    <message>
        <source>mass</source>
        <translation>Masse</translation>
    </message>
    <message>
        <source>mass moved</source>
        <translation>bewegte Masse</translation>
    </message>
    <message>
        <source>mass of a ream of 500 sheets</source>
        <translation>Masse eines Rieses von 500 Bogen</translation>
    </message>
    <message>
        <source>mass of the core</source>
        <translation>Masse der Hülse</translation>
    </message>
    <message>
        <source>mass of the finished roll</source>
        <translation>Masse der fertigen Rolle</translation>
    </message>
    <message>
        <source>mass of the web</source>
        <translation>Masse der Bahn</translation>
    </message>
    <message>
        <source>mass of the web on the roll</source>
        <translation>Masse der Bahn auf der Rolle</translation>
    </message>
    <message>
        <source>measured again</source>
        <translation>neu gemessen</translation>
    </message>
    <message>
        <source>measured by the run %1</source>
        <translation>gemessen am Durchgang %1</translation>
    </message>
    <message>
        <source>metric</source>
        <translation>metrisch</translation>
    </message>
    <message>
        <source>middle of %1</source>
        <translation>Mitte von %1</translation>
    </message>
    <message>
        <source>module</source>
        <translation>Modul</translation>
    </message>
    <message>
        <source>modulus</source>
        <translation>E-Modul</translation>
    </message>
    <message>
        <source>moment of inertia</source>
        <translation>Trägheitsmoment</translation>
    </message>
    <message>
        <source>more</source>
        <translation>weiteres</translation>
    </message>
    <message>
        <source>most</source>
        <translation>höchstens</translation>
    </message>
    <message>
        <source>mounting tape</source>
        <translation>Klischee-Klebeband</translation>
    </message>
    <message>
        <source>n = (N - w) / (U - w), rounded up, at least 1</source>
        <translation>n = (N - w) / (U - w), aufgerundet, mindestens 1</translation>
    </message>
    <message>
        <source>n equal lags of D5</source>
        <translation>n gleiche Verzögerungen aus D5</translation>
    </message>
    <message>
        <source>name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>name of a party</source>
        <translation>Name eines Beteiligten</translation>
    </message>
    <message>
        <source>near</source>
        <translation>nahe der Grenze</translation>
    </message>
    <message>
        <source>nearest that can be set</source>
        <translation>nächster einstellbarer Wert</translation>
    </message>
    <message>
        <source>nearest web tension that can be set</source>
        <translation>nächster einstellbarer Bahnzug</translation>
    </message>
    <message>
        <source>net mass</source>
        <translation>Nettomasse</translation>
    </message>
    <message>
        <source>never</source>
        <translation>nie</translation>
    </message>
    <message>
        <source>never below: the web would run off; 10 mm above at most: policy</source>
        <translation>nie darunter: Die Bahn liefe ab; höchstens 10 mm darüber: Vorgabe</translation>
    </message>
    <message>
        <source>next roll of the same job</source>
        <translation>nächste Rolle desselben Auftrags</translation>
    </message>
    <message>
        <source>night shift (22 to 6)</source>
        <translation>Nachtschicht (22 bis 6)</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>no larger than before, and more than the core; %1</source>
        <translation>nicht größer als vorher und mehr als die Hülse; %1</translation>
    </message>
    <message>
        <source>no limits: a figure to know, not to meet</source>
        <translation>keine Grenzen: eine Zahl zum Wissen, nicht zum Einhalten</translation>
    </message>
    <message>
        <source>no procedure here has its step</source>
        <translation>kein Ablauf hier hat ihren Schritt</translation>
    </message>
    <message>
        <source>no.</source>
        <translation>Nr.</translation>
    </message>
    <message>
        <source>nobody was at the screen</source>
        <translation>niemand war am Bildschirm</translation>
    </message>
    <message>
        <source>none negative</source>
        <translation>keines negativ</translation>
    </message>
    <message>
        <source>not ended</source>
        <translation>nicht beendet</translation>
    </message>
    <message>
        <source>not found</source>
        <translation>nicht gefunden</translation>
    </message>
    <message>
        <source>not in the newest runs</source>
        <translation>nicht in den neuesten Durchgängen</translation>
    </message>
    <message>
        <source>not judged: what this draw is known to moves the tension through its whole window</source>
        <translation>nicht beurteilt: So genau, wie diese Voreilung bekannt ist, verschiebt sie den Zug durch sein ganzes Fenster</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>not known here</source>
        <translation>hier nicht bekannt</translation>
    </message>
    <message>
        <source>not known: %1</source>
        <translation>unbekannt: %1</translation>
    </message>
    <message>
        <source>not reviewed</source>
        <translation>nicht geprüft</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>noch nicht</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>now</source>
        <translation>jetzt</translation>
    </message>
    <message>
        <source>now %1; steps to be done again: %2</source>
        <translation>jetzt %1; neu zu machende Schritte: %2</translation>
    </message>
    <message>
        <source>observed set-ups at this press that a competence wants, at least</source>
        <translation>beobachtete Einrichtungen an dieser Maschine, die eine Befähigung mindestens verlangt</translation>
    </message>
    <message>
        <source>of %1, by %2: %3</source>
        <translation>von %1, durch %2: %3</translation>
    </message>
    <message>
        <source>off impression</source>
        <translation>abgestellt</translation>
    </message>
    <message>
        <source>only %1</source>
        <translation>nur %1</translation>
    </message>
    <message>
        <source>onto the core's top</source>
        <translation>oben auf die Hülse</translation>
    </message>
    <message>
        <source>onto the core's underside</source>
        <translation>unten auf die Hülse</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>operator</source>
        <translation>Bediener</translation>
    </message>
    <message>
        <source>operator-side frame</source>
        <translation>Seitenwand Bedienseite</translation>
    </message>
    <message>
        <source>operator-side sensor</source>
        <translation>Sensor Bedienseite</translation>
    </message>
    <message>
        <source>operator-side sensor of guide %1</source>
        <translation>Sensor Bedienseite am Bahnlaufregler %1</translation>
    </message>
    <message>
        <source>operator-side sensor of the guide</source>
        <translation>Sensor Bedienseite am Bahnlaufregler</translation>
    </message>
    <message>
        <source>order</source>
        <translation>Bestellung</translation>
    </message>
    <message>
        <source>ordered width; policy rows job_width_under and job_width_over</source>
        <translation>bestellte Breite; Vorgabezeilen job_width_under und job_width_over</translation>
    </message>
    <message>
        <source>other</source>
        <translation>andere</translation>
    </message>
    <message>
        <source>outer diameter</source>
        <translation>Außendurchmesser</translation>
    </message>
    <message>
        <source>outer diameter of the core</source>
        <translation>Außendurchmesser der Hülse</translation>
    </message>
    <message>
        <source>outer radius</source>
        <translation>Außenradius</translation>
    </message>
    <message>
        <source>outer radius of the core</source>
        <translation>Außenradius der Hülse</translation>
    </message>
    <message>
        <source>outer wraps taken off</source>
        <translation>abgenommene Außenlagen</translation>
    </message>
    <message>
        <source>outer wraps to take off</source>
        <translation>abzunehmende Außenlagen</translation>
    </message>
    <message>
        <source>outside</source>
        <translation>außerhalb</translation>
    </message>
    <message>
        <source>outside of the core</source>
        <translation>Außenmaß der Hülse</translation>
    </message>
    <message>
        <source>outside, doubtful</source>
        <translation>außerhalb, zweifelhaft</translation>
    </message>
    <message>
        <source>over</source>
        <translation>von oben</translation>
    </message>
    <message>
        <source>over, under</source>
        <translation>over, under</translation>
    </message>
    <message>
        <source>overdue</source>
        <translation>überfällig</translation>
    </message>
    <message>
        <source>package</source>
        <translation>Packstück</translation>
    </message>
    <message>
        <source>packed on</source>
        <translation>verpackt am</translation>
    </message>
    <message>
        <source>paper label stock without a maker's range, at least</source>
        <translation>Papier-Etikettenmaterial ohne Herstellerbereich, mindestens</translation>
    </message>
    <message>
        <source>paper label stock without a maker's range, at most</source>
        <translation>Papier-Etikettenmaterial ohne Herstellerbereich, höchstens</translation>
    </message>
    <message>
        <source>passed</source>
        <translation>bestanden</translation>
    </message>
    <message>
        <source>phase %1</source>
        <translation>Phase %1</translation>
    </message>
    <message>
        <source>phase %1, limits provisional</source>
        <translation>Phase %1, Grenzen vorläufig</translation>
    </message>
    <message>
        <source>phase %1: one reading</source>
        <translation>Phase %1: eine Ablesung</translation>
    </message>
    <message>
        <source>pistons</source>
        <translation>Kolben</translation>
    </message>
    <message>
        <source>plate</source>
        <translation>Druckplatte</translation>
    </message>
    <message>
        <source>plate and tape against the cylinder's undercut, either way</source>
        <translation>Druckplatte und Klebeband gegen den Unterschnitt des Zylinders, je Richtung</translation>
    </message>
    <message>
        <source>plate and tape less the undercut</source>
        <translation>Druckplatte und Klebeband abzüglich Unterschnitt</translation>
    </message>
    <message>
        <source>plate thickness</source>
        <translation>Dicke der Druckplatte</translation>
    </message>
    <message>
        <source>policy</source>
        <translation>Vorgabe</translation>
    </message>
    <message>
        <source>policy, from memory</source>
        <translation>Vorgabe, aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>policy, the web's own factor of S26</source>
        <translation>Vorgabe, bahneigener Faktor aus S26</translation>
    </message>
    <message>
        <source>policy; 0.05 % typical, S92</source>
        <translation>Vorgabe; 0,05 % typisch, S92</translation>
    </message>
    <message>
        <source>power cut</source>
        <translation>Stromausfall</translation>
    </message>
    <message>
        <source>present diameter</source>
        <translation>gegenwärtiger Durchmesser</translation>
    </message>
    <message>
        <source>press profile</source>
        <translation>Maschinenprofil</translation>
    </message>
    <message>
        <source>press returned</source>
        <translation>Maschine wieder freigegeben</translation>
    </message>
    <message>
        <source>press withdrawn</source>
        <translation>Maschine gesperrt</translation>
    </message>
    <message>
        <source>press withdrawn, not ended</source>
        <translation>Maschine gesperrt, nicht beendet</translation>
    </message>
    <message>
        <source>pressure above the one where torque begins</source>
        <translation>Druck über dem, bei dem das Drehmoment beginnt</translation>
    </message>
    <message>
        <source>printed repeat over ten against the gear's, either way</source>
        <translation>gedruckte Drucklänge über zehn gegen die des Zahnrads, je Richtung</translation>
    </message>
    <message>
        <source>probably</source>
        <translation>wahrscheinlich</translation>
    </message>
    <message>
        <source>procedure %1, edition %2</source>
        <translation>Ablauf %1, Ausgabe %2</translation>
    </message>
    <message>
        <source>profile of the press %1, edition %2</source>
        <translation>Profil der Maschine %1, Ausgabe %2</translation>
    </message>
    <message>
        <source>public tension tables for board, T3, at least the policy row table_spread either way of their middle</source>
        <translation>öffentliche Zugtabellen für Karton, T3, mindestens die Vorgabezeile table_spread nach jeder Seite ihrer Mitte</translation>
    </message>
    <message>
        <source>public tension tables for paper, T3, at least the policy row table_spread either way of their middle</source>
        <translation>öffentliche Zugtabellen für Papier, T3, mindestens die Vorgabezeile table_spread nach jeder Seite ihrer Mitte</translation>
    </message>
    <message>
        <source>public tension tables, T2</source>
        <translation>öffentliche Zugtabellen, T2</translation>
    </message>
    <message>
        <source>public tension tables, T2, the policy row table_spread either way</source>
        <translation>öffentliche Zugtabellen, T2, die Vorgabezeile table_spread nach jeder Seite</translation>
    </message>
    <message>
        <source>quantity</source>
        <translation>Menge</translation>
    </message>
    <message>
        <source>r = P(n, v t / L), regularised lower incomplete gamma</source>
        <translation>r = P(n, v t / L), regularisierte untere unvollständige Gammafunktion</translation>
    </message>
    <message>
        <source>r = T / range</source>
        <translation>r = T / range</translation>
    </message>
    <message>
        <source>radius of one roller</source>
        <translation>Radius der einen Walze</translation>
    </message>
    <message>
        <source>radius of the core's bore</source>
        <translation>Radius der Hülsenbohrung</translation>
    </message>
    <message>
        <source>radius of the lining</source>
        <translation>Radius des Belags</translation>
    </message>
    <message>
        <source>radius of the other</source>
        <translation>Radius der anderen</translation>
    </message>
    <message>
        <source>radius of the roll</source>
        <translation>Radius der Rolle</translation>
    </message>
    <message>
        <source>radius of the roller</source>
        <translation>Radius der Walze</translation>
    </message>
    <message>
        <source>range of the load cell</source>
        <translation>Bereich der Kraftmessdose</translation>
    </message>
    <message>
        <source>re-web after a break</source>
        <translation>neu einziehen nach Bahnriss</translation>
    </message>
    <message>
        <source>read</source>
        <translation>abgelesen</translation>
    </message>
    <message>
        <source>read again</source>
        <translation>neu abgelesen</translation>
    </message>
    <message>
        <source>read outside</source>
        <translation>außerhalb abgelesen</translation>
    </message>
    <message>
        <source>read outside at first: %1</source>
        <translation>zuerst außerhalb gelesen: %1</translation>
    </message>
    <message>
        <source>reading of the sensor</source>
        <translation>Anzeige des Sensors</translation>
    </message>
    <message>
        <source>reading with the web in view</source>
        <translation>Anzeige mit der Bahn im Blickfeld</translation>
    </message>
    <message>
        <source>reading with the web out of view</source>
        <translation>Anzeige mit der Bahn außer Sicht</translation>
    </message>
    <message>
        <source>reason</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>recorded</source>
        <translation>erfasst</translation>
    </message>
    <message>
        <source>register adjuster from its mid mark at set-up, share of its reach either way</source>
        <translation>Registerversteller ab seiner Mittelmarke beim Einrichten, Anteil am Verstellweg je Richtung</translation>
    </message>
    <message>
        <source>remark</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <source>repeat</source>
        <translation>Drucklänge</translation>
    </message>
    <message>
        <source>repeat by the gear</source>
        <translation>Drucklänge laut Zahnrad</translation>
    </message>
    <message>
        <source>reserve at which the automatic stop acts</source>
        <translation>Reserve, bei der der automatische Halt wirkt</translation>
    </message>
    <message>
        <source>reserve left on the core</source>
        <translation>Reserve, die auf der Hülse bleibt</translation>
    </message>
    <message>
        <source>restart after a stand</source>
        <translation>Neustart nach Stillstand</translation>
    </message>
    <message>
        <source>result</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>resumed</source>
        <translation>wieder aufgenommen</translation>
    </message>
    <message>
        <source>resumed, taken over</source>
        <translation>wieder aufgenommen, übernommen</translation>
    </message>
    <message>
        <source>reviewed</source>
        <translation>geprüft</translation>
    </message>
    <message>
        <source>reviewed and accepted</source>
        <translation>geprüft und angenommen</translation>
    </message>
    <message>
        <source>reviewed and sent back</source>
        <translation>geprüft und zurückgegeben</translation>
    </message>
    <message>
        <source>reviewed by %1</source>
        <translation>geprüft von %1</translation>
    </message>
    <message>
        <source>roll as weighed</source>
        <translation>Rolle wie gewogen</translation>
    </message>
    <message>
        <source>roll centre to the centreline where a guide follows, either way</source>
        <translation>Rollenmitte zur Mittellinie, wo ein Bahnlaufregler folgt, je Richtung</translation>
    </message>
    <message>
        <source>roll centre to the centreline where no guide follows, either way</source>
        <translation>Rollenmitte zur Mittellinie, wo kein Bahnlaufregler folgt, je Richtung</translation>
    </message>
    <message>
        <source>roll changed</source>
        <translation>Rolle gewechselt</translation>
    </message>
    <message>
        <source>roll tag or delivery note</source>
        <translation>Rollenzettel oder Lieferschein</translation>
    </message>
    <message>
        <source>roll with its core</source>
        <translation>Rolle mit ihrer Hülse</translation>
    </message>
    <message>
        <source>roll, adapter and carriage</source>
        <translation>Rolle, Adapter und Schlitten</translation>
    </message>
    <message>
        <source>roll, core and carriage</source>
        <translation>Rolle, Hülse und Schlitten</translation>
    </message>
    <message>
        <source>roll.length times width and grammage</source>
        <translation>roll.length mal Breite und Flächengewicht</translation>
    </message>
    <message>
        <source>roll.length times width and grammage, + core</source>
        <translation>roll.length mal Breite und Flächengewicht, + Hülse</translation>
    </message>
    <message>
        <source>roll.mass - roll.core_mass</source>
        <translation>roll.mass - roll.core_mass</translation>
    </message>
    <message>
        <source>roll.splices not given: none</source>
        <translation>roll.splices nicht angegeben: keine</translation>
    </message>
    <message>
        <source>roll.width by the lanes of job.across that this rewind takes</source>
        <translation>roll.width nach den Streifen von job.across, die diese Aufwicklung nimmt</translation>
    </message>
    <message>
        <source>roll.width over the product rewinds</source>
        <translation>roll.width geteilt durch die Zahl der Produktaufwicklungen</translation>
    </message>
    <message>
        <source>rolling friction</source>
        <translation>Rollreibung</translation>
    </message>
    <message>
        <source>rolls planned</source>
        <translation>geplante Rollen</translation>
    </message>
    <message>
        <source>roughness and substrate.roughness</source>
        <translation>roughness und substrate.roughness</translation>
    </message>
    <message>
        <source>round %1</source>
        <translation>um %1</translation>
    </message>
    <message>
        <source>rule</source>
        <translation>Regel</translation>
    </message>
    <message>
        <source>run abandoned</source>
        <translation>Durchgang abgebrochen</translation>
    </message>
    <message>
        <source>run begun</source>
        <translation>Durchgang begonnen</translation>
    </message>
    <message>
        <source>run completed</source>
        <translation>Durchgang abgeschlossen</translation>
    </message>
    <message>
        <source>running strain</source>
        <translation>Dehnung im Lauf</translation>
    </message>
    <message>
        <source>running tension</source>
        <translation>Zug im Lauf</translation>
    </message>
    <message>
        <source>safety factor</source>
        <translation>Sicherheitsfaktor</translation>
    </message>
    <message>
        <source>said</source>
        <translation>gesagt</translation>
    </message>
    <message>
        <source>said in vain</source>
        <translation>umsonst gemeldet</translation>
    </message>
    <message>
        <source>screen</source>
        <translation>Raster</translation>
    </message>
    <message>
        <source>seal</source>
        <translation>Siegel</translation>
    </message>
    <message>
        <source>sealed</source>
        <translation>versiegelt</translation>
    </message>
    <message>
        <source>sensor over the web's edge, either way</source>
        <translation>Sensor über der Bahnkante, je Richtung</translation>
    </message>
    <message>
        <source>sensor's reading from the middle of its window, either way</source>
        <translation>Anzeige des Sensors ab der Mitte seines Fensters, je Richtung</translation>
    </message>
    <message>
        <source>sent back</source>
        <translation>zurückgegeben</translation>
    </message>
    <message>
        <source>sent back by %1, to be corrected</source>
        <translation>zurückgegeben von %1, zu berichtigen</translation>
    </message>
    <message>
        <source>serial number</source>
        <translation>Seriennummer</translation>
    </message>
    <message>
        <source>set again</source>
        <translation>neu eingestellt</translation>
    </message>
    <message>
        <source>setting</source>
        <translation>Einstellung</translation>
    </message>
    <message>
        <source>setting where torque begins</source>
        <translation>Einstellung, bei der das Drehmoment beginnt</translation>
    </message>
    <message>
        <source>share of a guide's stroke that an off-centre roll may take</source>
        <translation>Anteil am Stellweg eines Bahnlaufreglers, den eine außermittige Rolle brauchen darf</translation>
    </message>
    <message>
        <source>share of the anilox volume that reaches the web, at least</source>
        <translation>Anteil des Schöpfvolumens, der die Bahn erreicht, mindestens</translation>
    </message>
    <message>
        <source>share of the anilox volume that reaches the web, at most</source>
        <translation>Anteil des Schöpfvolumens, der die Bahn erreicht, höchstens</translation>
    </message>
    <message>
        <source>share of the breaking strength that caps a tension</source>
        <translation>Anteil der Bruchkraft, der einen Zug begrenzt</translation>
    </message>
    <message>
        <source>share of the job's speed</source>
        <translation>Anteil der Auftragsgeschwindigkeit</translation>
    </message>
    <message>
        <source>share of the strength</source>
        <translation>Anteil der Festigkeit</translation>
    </message>
    <message>
        <source>share that reaches the web</source>
        <translation>Anteil, der die Bahn erreicht</translation>
    </message>
    <message>
        <source>shift along the web</source>
        <translation>Verschiebung längs der Bahn</translation>
    </message>
    <message>
        <source>shipping unit</source>
        <translation>Versandeinheit</translation>
    </message>
    <message>
        <source>should be</source>
        <translation>soll sein</translation>
    </message>
    <message>
        <source>sideways step at the joint</source>
        <translation>seitlicher Versatz an der Klebestelle</translation>
    </message>
    <message>
        <source>signed as</source>
        <translation>abgezeichnet als</translation>
    </message>
    <message>
        <source>slit width</source>
        <translation>Schnittbreite</translation>
    </message>
    <message>
        <source>smallest core held</source>
        <translation>kleinste gehaltene Hülse</translation>
    </message>
    <message>
        <source>somebody else stopped the press</source>
        <translation>jemand anderes hat die Maschine angehalten</translation>
    </message>
    <message>
        <source>span behind the guide</source>
        <translation>freie Bahnlänge hinter dem Bahnlaufregler</translation>
    </message>
    <message>
        <source>span of the guide</source>
        <translation>freie Bahnlänge des Bahnlaufreglers</translation>
    </message>
    <message>
        <source>speed after</source>
        <translation>Geschwindigkeit nachher</translation>
    </message>
    <message>
        <source>speed before</source>
        <translation>Geschwindigkeit vorher</translation>
    </message>
    <message>
        <source>speed error</source>
        <translation>Geschwindigkeitsfehler</translation>
    </message>
    <message>
        <source>speed of the job</source>
        <translation>Geschwindigkeit des Auftrags</translation>
    </message>
    <message>
        <source>speed of the proving run, share of the job's</source>
        <translation>Geschwindigkeit des Probelaufs, Anteil an der des Auftrags</translation>
    </message>
    <message>
        <source>speed of the web plus speed of the roller</source>
        <translation>Geschwindigkeit der Bahn plus Geschwindigkeit der Walze</translation>
    </message>
    <message>
        <source>splice over running tension, at least</source>
        <translation>Klebestelle über dem Zug im Lauf, mindestens</translation>
    </message>
    <message>
        <source>splice over the worst tension in a stop, at least</source>
        <translation>Klebestelle über dem schlimmsten Zug beim Anhalten, mindestens</translation>
    </message>
    <message>
        <source>splice tape beyond the web's edge</source>
        <translation>Klebeband über die Bahnkante hinaus</translation>
    </message>
    <message>
        <source>splices</source>
        <translation>Klebestellen</translation>
    </message>
    <message>
        <source>splices inside</source>
        <translation>Klebestellen darin</translation>
    </message>
    <message>
        <source>splices inside each</source>
        <translation>Klebestellen in jeder Rolle</translation>
    </message>
    <message>
        <source>stage done again</source>
        <translation>Abschnitt neu gemacht</translation>
    </message>
    <message>
        <source>stands still</source>
        <translation>steht still</translation>
    </message>
    <message>
        <source>stated</source>
        <translation>angegeben</translation>
    </message>
    <message>
        <source>station %1</source>
        <translation>Druckwerk %1</translation>
    </message>
    <message>
        <source>steady swing of a dancer, share of its travel</source>
        <translation>ständige Schwankung eines Tänzers, Anteil am Weg</translation>
    </message>
    <message>
        <source>step</source>
        <translation>Schritt</translation>
    </message>
    <message>
        <source>step response of y'' + f2 (v/L) y' + f1 (v/L)^2 y = f1 (v/L)^2</source>
        <translation>Sprungantwort von y'' + f2 (v/L) y' + f1 (v/L)^2 y = f1 (v/L)^2</translation>
    </message>
    <message>
        <source>steps to be done again: %1</source>
        <translation>neu zu machende Schritte: %1</translation>
    </message>
    <message>
        <source>stiffness number K L</source>
        <translation>Steifigkeitszahl K L</translation>
    </message>
    <message>
        <source>stiffness of the web, E w t</source>
        <translation>Steifigkeit der Bahn, E w t</translation>
    </message>
    <message>
        <source>stood</source>
        <translation>stand</translation>
    </message>
    <message>
        <source>stop given up</source>
        <translation>Halt aufgehoben</translation>
    </message>
    <message>
        <source>stop held</source>
        <translation>Halt gehalten</translation>
    </message>
    <message>
        <source>stop still held by %1</source>
        <translation>Halt noch gehalten von %1</translation>
    </message>
    <message>
        <source>strain after</source>
        <translation>Dehnung nachher</translation>
    </message>
    <message>
        <source>strain before</source>
        <translation>Dehnung vorher</translation>
    </message>
    <message>
        <source>strain before the draw</source>
        <translation>Dehnung vor der Voreilung</translation>
    </message>
    <message>
        <source>strain of the web</source>
        <translation>Dehnung der Bahn</translation>
    </message>
    <message>
        <source>strain that print may be made under</source>
        <translation>Dehnung, unter der gedruckt werden darf</translation>
    </message>
    <message>
        <source>strain that print on polyethylene may be made under</source>
        <translation>Dehnung, unter der auf Polyethylen gedruckt werden darf</translation>
    </message>
    <message>
        <source>strain wanted</source>
        <translation>gewünschte Dehnung</translation>
    </message>
    <message>
        <source>strength per width</source>
        <translation>Festigkeit je Breite</translation>
    </message>
    <message>
        <source>stress along the web</source>
        <translation>Spannung längs der Bahn</translation>
    </message>
    <message>
        <source>stroke each way</source>
        <translation>Stellweg je Richtung</translation>
    </message>
    <message>
        <source>substrate %1, edition %2</source>
        <translation>Bedruckstoff %1, Ausgabe %2</translation>
    </message>
    <message>
        <source>supervisor</source>
        <translation>Aufsicht</translation>
    </message>
    <message>
        <source>supplier</source>
        <translation>Lieferant</translation>
    </message>
    <message>
        <source>supplier's item</source>
        <translation>Artikel des Lieferanten</translation>
    </message>
    <message>
        <source>supplier's lot</source>
        <translation>Charge des Lieferanten</translation>
    </message>
    <message>
        <source>swing of the displayed tension at steady speed, share of its mean</source>
        <translation>Schwankung des angezeigten Zugs bei gleichbleibender Geschwindigkeit, Anteil am Mittelwert</translation>
    </message>
    <message>
        <source>swing of the displayed tension while speed changes, share of its mean</source>
        <translation>Schwankung des angezeigten Zugs bei Geschwindigkeitsänderung, Anteil am Mittelwert</translation>
    </message>
    <message>
        <source>table:T2, T3</source>
        <translation>Tabelle:T2, T3</translation>
    </message>
    <message>
        <source>tape</source>
        <translation>Klebeband</translation>
    </message>
    <message>
        <source>taper fraction</source>
        <translation>Anteil des Zugabfalls</translation>
    </message>
    <message>
        <source>target</source>
        <translation>Sollwert</translation>
    </message>
    <message>
        <source>target:roll.length - target:strip.length</source>
        <translation>target:roll.length - target:strip.length</translation>
    </message>
    <message>
        <source>target:roll.mass - core</source>
        <translation>target:roll.mass - Hülse</translation>
    </message>
    <message>
        <source>target:roll.usable uncertainty</source>
        <translation>Unsicherheit von target:roll.usable</translation>
    </message>
    <message>
        <source>target:roll.web_mass + core</source>
        <translation>target:roll.web_mass + Hülse</translation>
    </message>
    <message>
        <source>teeth</source>
        <translation>Zähne</translation>
    </message>
    <message>
        <source>tell the key points</source>
        <translation>die Kernpunkte sagen</translation>
    </message>
    <message>
        <source>tell the reasons</source>
        <translation>die Gründe sagen</translation>
    </message>
    <message>
        <source>tell the steps</source>
        <translation>die Schritte sagen</translation>
    </message>
    <message>
        <source>tension</source>
        <translation>Zug</translation>
    </message>
    <message>
        <source>tension at the start</source>
        <translation>Zug am Anfang</translation>
    </message>
    <message>
        <source>tension before</source>
        <translation>Zug vorher</translation>
    </message>
    <message>
        <source>tension in the span at the start</source>
        <translation>Zug in der freien Bahnlänge am Anfang</translation>
    </message>
    <message>
        <source>tension of the zone</source>
        <translation>Zug der Zone</translation>
    </message>
    <message>
        <source>tension per width</source>
        <translation>Zug je Breite</translation>
    </message>
    <message>
        <source>tension per width and thickness</source>
        <translation>Zug je Breite und Dicke</translation>
    </message>
    <message>
        <source>tension to keep</source>
        <translation>zu haltender Zug</translation>
    </message>
    <message>
        <source>test</source>
        <translation>Prüfung</translation>
    </message>
    <message>
        <source>the %1 setting</source>
        <translation>Einstellung %1</translation>
    </message>
    <message>
        <source>the adjuster for register across the web</source>
        <translation>Registerversteller quer zur Bahn</translation>
    </message>
    <message>
        <source>the adjuster for register along the web</source>
        <translation>Registerversteller längs der Bahn</translation>
    </message>
    <message>
        <source>the air of the unwind shaft</source>
        <translation>Luft der Abwickelwelle</translation>
    </message>
    <message>
        <source>the air supply valve</source>
        <translation>Ventil der Luftversorgung</translation>
    </message>
    <message>
        <source>the automatic stop at the end of the roll</source>
        <translation>Automatikhalt am Rollenende</translation>
    </message>
    <message>
        <source>the control that calibrates the guide's sensors</source>
        <translation>Bedienteil zum Kalibrieren der Sensoren am Bahnlaufregler</translation>
    </message>
    <message>
        <source>the control that parks the lamps</source>
        <translation>Bedienteil zum Parken der Lampen</translation>
    </message>
    <message>
        <source>the control that sets the guide to automatic</source>
        <translation>Bedienteil für Automatik am Bahnlaufregler</translation>
    </message>
    <message>
        <source>the control that sets the guide to its middle</source>
        <translation>Bedienteil für Mittelstellung am Bahnlaufregler</translation>
    </message>
    <message>
        <source>the copy was held up</source>
        <translation>die Kopie wurde aufgehalten</translation>
    </message>
    <message>
        <source>the feed that shows a face-out roll's face to the plates</source>
        <translation>Zuführung, bei der eine Rolle mit Druckseite außen diese den Druckplatten zeigt</translation>
    </message>
    <message>
        <source>the finished roll then has its face inside, as the job wants it</source>
        <translation>die fertige Rolle hat dann die Druckseite innen, wie der Auftrag es will</translation>
    </message>
    <message>
        <source>the finished roll then has its face outside, as the job wants it</source>
        <translation>die fertige Rolle hat dann die Druckseite außen, wie der Auftrag es will</translation>
    </message>
    <message>
        <source>the guide's stroke each way</source>
        <translation>Stellweg des Bahnlaufreglers je Richtung</translation>
    </message>
    <message>
        <source>the hold-to-run button</source>
        <translation>Taster mit Selbstrückstellung</translation>
    </message>
    <message>
        <source>the infeed nip</source>
        <translation>Klemmwalzen am Einzug</translation>
    </message>
    <message>
        <source>the isolator, locked by your site's procedure</source>
        <translation>Trennschalter, nach Betriebsanweisung abgeschlossen</translation>
    </message>
    <message>
        <source>the job's data</source>
        <translation>Daten des Auftrags</translation>
    </message>
    <message>
        <source>the job's lanes</source>
        <translation>Streifen des Auftrags</translation>
    </message>
    <message>
        <source>the job's width, %1</source>
        <translation>Breite des Auftrags, %1</translation>
    </message>
    <message>
        <source>the lift's down control</source>
        <translation>Bedienteil Rollenlift ab</translation>
    </message>
    <message>
        <source>the lift's pressure regulator</source>
        <translation>Druckregler des Rollenlifts</translation>
    </message>
    <message>
        <source>the lift's up control</source>
        <translation>Bedienteil Rollenlift auf</translation>
    </message>
    <message>
        <source>the main disconnect</source>
        <translation>Hauptschalter</translation>
    </message>
    <message>
        <source>the material of this job, %1</source>
        <translation>Material dieses Auftrags, %1</translation>
    </message>
    <message>
        <source>the material's grammage, %1</source>
        <translation>Flächengewicht des Materials, %1</translation>
    </message>
    <message>
        <source>the middle of its travel</source>
        <translation>Mitte des Stellwegs</translation>
    </message>
    <message>
        <source>the ordinary stop button</source>
        <translation>Taster für normalen Halt</translation>
    </message>
    <message>
        <source>the outer diameter, once it is entered</source>
        <translation>der Außendurchmesser, sobald er eingegeben ist</translation>
    </message>
    <message>
        <source>the outfeed nip</source>
        <translation>Klemmwalzen am Auszug</translation>
    </message>
    <message>
        <source>the page was left, the run kept open</source>
        <translation>die Seite wurde verlassen, der Durchgang offen gelassen</translation>
    </message>
    <message>
        <source>the press's print side</source>
        <translation>Druckseite der Maschine</translation>
    </message>
    <message>
        <source>the profile does not say how often, or by which step</source>
        <translation>das Profil sagt nicht, wie oft oder durch welchen Schritt</translation>
    </message>
    <message>
        <source>the program ended</source>
        <translation>das Programm endete</translation>
    </message>
    <message>
        <source>the program ended, some time after what stands before; found now</source>
        <translation>das Programm endete, einige Zeit nach dem, was davor steht; jetzt festgestellt</translation>
    </message>
    <message>
        <source>the reset for the emergency stops</source>
        <translation>Rückstelltaster des Not-Halts</translation>
    </message>
    <message>
        <source>the roll's data</source>
        <translation>Daten der Rolle</translation>
    </message>
    <message>
        <source>the roller of the least r</source>
        <translation>Walze mit dem kleinsten r</translation>
    </message>
    <message>
        <source>the run</source>
        <translation>der Durchgang</translation>
    </message>
    <message>
        <source>the run button at idle speed</source>
        <translation>Lauftaster bei Leerlaufgeschwindigkeit</translation>
    </message>
    <message>
        <source>the shaft's plate</source>
        <translation>Schild der Welle</translation>
    </message>
    <message>
        <source>the system gives no random bytes</source>
        <translation>das System liefert keine Zufallsbytes</translation>
    </message>
    <message>
        <source>the tolerance of the caliper</source>
        <translation>Toleranz der Dicke</translation>
    </message>
    <message>
        <source>the value on the sheet</source>
        <translation>Wert auf dem Einrichteblatt</translation>
    </message>
    <message>
        <source>the web that fills the path stays in it</source>
        <translation>die Bahn, die den Bahnweg füllt, bleibt darin</translation>
    </message>
    <message>
        <source>the window of tension per width, times the width</source>
        <translation>Fenster des Zugs je Breite, mal Breite</translation>
    </message>
    <message>
        <source>the window of the tension, through the same formula</source>
        <translation>Fenster des Zugs, durch dieselbe Formel</translation>
    </message>
    <message>
        <source>the window of the tension, through the same formula, from where this control begins</source>
        <translation>Fenster des Zugs, durch dieselbe Formel, ab dem Anfang dieses Stellteils</translation>
    </message>
    <message>
        <source>the window of the tension, through the same formula, to where this control ends</source>
        <translation>Fenster des Zugs, durch dieselbe Formel, bis zum Ende dieses Stellteils</translation>
    </message>
    <message>
        <source>the zone's tension</source>
        <translation>Zug der Zone</translation>
    </message>
    <message>
        <source>these runs</source>
        <translation>diese Durchgänge</translation>
    </message>
    <message>
        <source>thickness of the plate's base</source>
        <translation>Dicke des Plattenträgers</translation>
    </message>
    <message>
        <source>time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>time before it slows</source>
        <translation>Zeit, bevor sie bremst</translation>
    </message>
    <message>
        <source>time without setting this press up after which a competence ends</source>
        <translation>Zeit ohne Einrichten dieser Maschine, nach der eine Befähigung endet</translation>
    </message>
    <message>
        <source>to %1; steps to be said again: %2</source>
        <translation>an %1; neu zu sagende Schritte: %2</translation>
    </message>
    <message>
        <source>to be done again</source>
        <translation>neu zu machen</translation>
    </message>
    <message>
        <source>to be looked at: %1</source>
        <translation>anzusehen: %1</translation>
    </message>
    <message>
        <source>to be said again</source>
        <translation>neu zu sagen</translation>
    </message>
    <message>
        <source>torque</source>
        <translation>Drehmoment</translation>
    </message>
    <message>
        <source>torque on the finished roll</source>
        <translation>Drehmoment an der fertigen Rolle</translation>
    </message>
    <message>
        <source>torque on the roll</source>
        <translation>Drehmoment an der Rolle</translation>
    </message>
    <message>
        <source>torque per setting</source>
        <translation>Drehmoment je Einstellung</translation>
    </message>
    <message>
        <source>trainee</source>
        <translation>Auszubildender</translation>
    </message>
    <message>
        <source>trainer</source>
        <translation>Ausbilder</translation>
    </message>
    <message>
        <source>transport unit</source>
        <translation>Transporteinheit</translation>
    </message>
    <message>
        <source>travel of one press</source>
        <translation>Weg eines Tastendrucks</translation>
    </message>
    <message>
        <source>travel ratio</source>
        <translation>Wegverhältnis</translation>
    </message>
    <message>
        <source>treatment of film, at least</source>
        <translation>Vorbehandlung der Folie, mindestens</translation>
    </message>
    <message>
        <source>true or false</source>
        <translation>true oder false</translation>
    </message>
    <message>
        <source>turns of the finished roll at job speed</source>
        <translation>Drehungen der fertigen Rolle bei Auftragsgeschwindigkeit</translation>
    </message>
    <message>
        <source>turns per time of the input</source>
        <translation>Drehungen je Zeit am Antrieb</translation>
    </message>
    <message>
        <source>turns per time of the roll</source>
        <translation>Drehungen je Zeit der Rolle</translation>
    </message>
    <message>
        <source>twice job.speed</source>
        <translation>zweimal job.speed</translation>
    </message>
    <message>
        <source>twice substrate.splice_tape.shear</source>
        <translation>zweimal substrate.splice_tape.shear</translation>
    </message>
    <message>
        <source>twice substrate.splice_tape.strength</source>
        <translation>zweimal substrate.splice_tape.strength</translation>
    </message>
    <message>
        <source>u, where (e2 - e1) / (1 + e1) cannot be set</source>
        <translation>u, wo (e2 - e1) / (1 + e1) nicht einstellbar ist</translation>
    </message>
    <message>
        <source>under</source>
        <translation>von unten</translation>
    </message>
    <message>
        <source>undercut</source>
        <translation>Unterschnitt</translation>
    </message>
    <message>
        <source>upwards</source>
        <translation>aufwärts</translation>
    </message>
    <message>
        <source>use by</source>
        <translation>zu verwenden bis</translation>
    </message>
    <message>
        <source>value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>variant</source>
        <translation>Variante</translation>
    </message>
    <message>
        <source>verdict</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <source>viscosity of air</source>
        <translation>Viskosität der Luft</translation>
    </message>
    <message>
        <source>vital</source>
        <translation>kritisch</translation>
    </message>
    <message>
        <source>void</source>
        <translation>ungültig</translation>
    </message>
    <message>
        <source>void, by %1</source>
        <translation>ungültig, durch %1</translation>
    </message>
    <message>
        <source>voided</source>
        <translation>für ungültig erklärt</translation>
    </message>
    <message>
        <source>wait = "%1" is not a time.</source>
        <translation>wait = "%1" ist keine Zeit.</translation>
    </message>
    <message>
        <source>wall of a core that nobody has measured, at least</source>
        <translation>Wandung einer Hülse, die niemand gemessen hat, mindestens</translation>
    </message>
    <message>
        <source>wall of a core that nobody has measured, at most</source>
        <translation>Wandung einer Hülse, die niemand gemessen hat, höchstens</translation>
    </message>
    <message>
        <source>was not started</source>
        <translation>wurde nicht gestartet</translation>
    </message>
    <message>
        <source>was not wiped</source>
        <translation>wurde nicht abgewischt</translation>
    </message>
    <message>
        <source>was reset</source>
        <translation>ist rückgesetzt</translation>
    </message>
    <message>
        <source>was started</source>
        <translation>wurde gestartet</translation>
    </message>
    <message>
        <source>was wiped</source>
        <translation>wurde abgewischt</translation>
    </message>
    <message>
        <source>waste</source>
        <translation>Abfall</translation>
    </message>
    <message>
        <source>watched too short</source>
        <translation>zu kurz beobachtet</translation>
    </message>
    <message>
        <source>web break</source>
        <translation>Bahnriss</translation>
    </message>
    <message>
        <source>web centreline from the frame face</source>
        <translation>Bahnmittellinie ab Innenseite der Seitenwand</translation>
    </message>
    <message>
        <source>web drawn at idle</source>
        <translation>im Leerlauf gezogene Bahn</translation>
    </message>
    <message>
        <source>web for the labels, waste included</source>
        <translation>Bahn für die Etiketten, Abfall eingeschlossen</translation>
    </message>
    <message>
        <source>web lost at a splice</source>
        <translation>Bahn, die eine Klebestelle kostet</translation>
    </message>
    <message>
        <source>web lost at the joint to the next roll and inside it</source>
        <translation>Bahn, die an der Klebestelle zur nächsten Rolle und in der Rolle verloren geht</translation>
    </message>
    <message>
        <source>web narrower than ordered, at most</source>
        <translation>Bahn schmaler als bestellt, höchstens</translation>
    </message>
    <message>
        <source>web of this roll that can be run</source>
        <translation>Bahn dieser Rolle, die laufen kann</translation>
    </message>
    <message>
        <source>web on the roll</source>
        <translation>Bahn auf der Rolle</translation>
    </message>
    <message>
        <source>web on the roll, by the diameters</source>
        <translation>Bahn auf der Rolle, nach den Durchmessern</translation>
    </message>
    <message>
        <source>web on the roll, by the label's length</source>
        <translation>Bahn auf der Rolle, nach der Länge auf dem Etikett</translation>
    </message>
    <message>
        <source>web speed</source>
        <translation>Bahngeschwindigkeit</translation>
    </message>
    <message>
        <source>web that a set-up is taken to use where the job says nothing</source>
        <translation>Bahn, die ein Einrichten braucht, wo der Auftrag nichts sagt</translation>
    </message>
    <message>
        <source>web that fills the path</source>
        <translation>Bahn, die den Bahnweg füllt</translation>
    </message>
    <message>
        <source>web that make-ready takes</source>
        <translation>Bahn, die das Einrichten braucht</translation>
    </message>
    <message>
        <source>web that the proving run at idle draws</source>
        <translation>Bahn, die der Probelauf im Leerlauf zieht</translation>
    </message>
    <message>
        <source>web the job needs</source>
        <translation>Bahn, die der Auftrag braucht</translation>
    </message>
    <message>
        <source>web wander at steady speed, either way</source>
        <translation>Verlaufen der Bahn bei gleichbleibender Geschwindigkeit, je Richtung</translation>
    </message>
    <message>
        <source>web wider than ordered, at most</source>
        <translation>Bahn breiter als bestellt, höchstens</translation>
    </message>
    <message>
        <source>web width</source>
        <translation>Bahnbreite</translation>
    </message>
    <message>
        <source>were not looked at</source>
        <translation>wurden nicht angesehen</translation>
    </message>
    <message>
        <source>were not set</source>
        <translation>wurden nicht auf null gesetzt</translation>
    </message>
    <message>
        <source>were set</source>
        <translation>wurden auf null gesetzt</translation>
    </message>
    <message>
        <source>what</source>
        <translation>was</translation>
    </message>
    <message>
        <source>what a laminate wants besides</source>
        <translation>was ein Verbund zusätzlich braucht</translation>
    </message>
    <message>
        <source>what helped</source>
        <translation>was geholfen hat</translation>
    </message>
    <message>
        <source>what the brake may turn into heat</source>
        <translation>was die Bremse in Wärme umsetzen darf</translation>
    </message>
    <message>
        <source>what the clutch may turn into heat</source>
        <translation>was die Kupplung in Wärme umsetzen darf</translation>
    </message>
    <message>
        <source>what the guide can shift this web each way</source>
        <translation>was der Bahnlaufregler diese Bahn je Richtung versetzen kann</translation>
    </message>
    <message>
        <source>what the guide has to make good</source>
        <translation>was der Bahnlaufregler auszugleichen hat</translation>
    </message>
    <message>
        <source>what the lift moves with the roll</source>
        <translation>was der Lift mit der Rolle bewegt</translation>
    </message>
    <message>
        <source>what the lift or unwind is rated for</source>
        <translation>wofür Lift oder Abwicklung ausgelegt sind</translation>
    </message>
    <message>
        <source>what the mandrel grips</source>
        <translation>was der Spanndorn greift</translation>
    </message>
    <message>
        <source>what the outer diameter of %1 gives</source>
        <translation>was der Außendurchmesser von %1 ergibt</translation>
    </message>
    <message>
        <source>what the press takes, %1 to %2</source>
        <translation>was die Maschine nimmt, %1 bis %2</translation>
    </message>
    <message>
        <source>what the unwind holds, %1 to %2</source>
        <translation>was die Abwicklung hält, %1 bis %2</translation>
    </message>
    <message>
        <source>where</source>
        <translation>wo</translation>
    </message>
    <message>
        <source>whether only who is competent at this press signs a set-up alone: 1 asks it, 0 does not</source>
        <translation>ob nur allein unterschreibt, wer an dieser Maschine befähigt ist: 1 verlangt es, 0 nicht</translation>
    </message>
    <message>
        <source>width</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>winding</source>
        <translation>Wicklung</translation>
    </message>
    <message>
        <source>winding and side equal: over, else under</source>
        <translation>Wicklung und Seite gleich: von oben, sonst von unten</translation>
    </message>
    <message>
        <source>winding not known</source>
        <translation>Wicklung nicht bekannt</translation>
    </message>
    <message>
        <source>window</source>
        <translation>Fenster</translation>
    </message>
    <message>
        <source>window of the sensor</source>
        <translation>Fenster des Sensors</translation>
    </message>
    <message>
        <source>with taper</source>
        <translation>mit Zugabfall</translation>
    </message>
    <message>
        <source>wrap angle</source>
        <translation>Umschlingungswinkel</translation>
    </message>
    <message>
        <source>wrap angle on the dancer roller</source>
        <translation>Umschlingungswinkel an der Tänzerwalze</translation>
    </message>
    <message>
        <source>wraps on the core</source>
        <translation>Windungen auf der Hülse</translation>
    </message>
    <message>
        <source>wraps taken off</source>
        <translation>abgenommene Lagen</translation>
    </message>
    <message>
        <source>wraps that this press wants on the core</source>
        <translation>Windungen, die diese Maschine auf der Hülse will</translation>
    </message>
    <message>
        <source>wrong roll</source>
        <translation>falsche Rolle</translation>
    </message>
    <message>
        <source>x = (longest - shortest) / longest</source>
        <translation>x = (längste - kürzeste) / längste</translation>
    </message>
    <message>
        <source>x = P - 10 R, P measured</source>
        <translation>x = P - 10 R, P gemessen</translation>
    </message>
    <message>
        <source>x = P - 10 R, P measured; it should be -10 s</source>
        <translation>x = P - 10 R, P gemessen; es soll -10 s sein</translation>
    </message>
    <message>
        <source>x = c + side w / 2</source>
        <translation>x = c + side w / 2</translation>
    </message>
    <message>
        <source>x = plate + tape - u</source>
        <translation>x = plate + tape - u</translation>
    </message>
    <message>
        <source>x, at most L / 3</source>
        <translation>x, höchstens L / 3</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>yes when U &gt;= N</source>
        <translation>ja bei U &gt;= N</translation>
    </message>
    <message>
        <source>yes when c is outside a to b and an adapter fits</source>
        <translation>ja, wenn c außerhalb a bis b liegt und ein Adapter passt</translation>
    </message>
</context>
<context>
    <name>drawing</name>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1 → %2</source>
        <translation>%1 → %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>From the operator's side, the web runs right →</source>
        <translation>Bedienseite: Bahn läuft nach rechts →</translation>
    </message>
    <message>
        <source>From the operator's side, ← the web runs left</source>
        <translation>Bedienseite: ← Bahn läuft nach links</translation>
    </message>
    <message>
        <source>Guards stand open at: %1.</source>
        <translation>Schutz ist offen an: %1.</translation>
    </message>
    <message>
        <source>The profile has no roller positions to draw.</source>
        <translation>Das Profil hat keine Walzenlagen zum Zeichnen.</translation>
    </message>
    <message>
        <source>The web has an end behind: %1.</source>
        <translation>Die Bahn hat ein Ende hinter: %1.</translation>
    </message>
    <message>
        <source>The web is slack behind: %1.</source>
        <translation>Die Bahn ist lose hinter: %1.</translation>
    </message>
    <message>
        <source>here</source>
        <translation>hier</translation>
    </message>
    <message>
        <source>not hung yet</source>
        <translation>hängt noch nicht</translation>
    </message>
    <message>
        <source>on the lift</source>
        <translation>auf dem Lift</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>parted</source>
        <translation>getrennt</translation>
    </message>
    <message>
        <source>slack</source>
        <translation>lose</translation>
    </message>
</context>
<context>
    <name>families</name>
    <message>
        <source>Alignment</source>
        <translation>Ausrichtung</translation>
    </message>
    <message>
        <source>Core and lift</source>
        <translation>Hülse und Rollenlift</translation>
    </message>
    <message>
        <source>Hand-over to inking</source>
        <translation>Übergabe zum Einfärben</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Auftrag</translation>
    </message>
    <message>
        <source>Other</source>
        <translation>Sonstiges</translation>
    </message>
    <message>
        <source>Roll</source>
        <translation>Rolle</translation>
    </message>
    <message>
        <source>Splice</source>
        <translation>Klebestelle</translation>
    </message>
    <message>
        <source>Stops</source>
        <translation>Halte</translation>
    </message>
    <message>
        <source>Tension</source>
        <translation>Bahnzug</translation>
    </message>
    <message>
        <source>Threading</source>
        <translation>Einziehen</translation>
    </message>
    <message>
        <source>Web guide</source>
        <translation>Bahnlaufregler</translation>
    </message>
</context>
<context>
    <name>help</name>
    <message>
        <source>What could hurt, and what went before</source>
        <translation>Was verletzen kann, und was vorausging</translation>
    </message>
    <message>
        <source>What to do</source>
        <translation>Was zu tun ist</translation>
    </message>
    <message>
        <source>Where to stand</source>
        <translation>Wo man steht</translation>
    </message>
    <message>
        <source>Your answer</source>
        <translation>Ihre Antwort</translation>
    </message>
    <message>
        <source>accepted with a deviation</source>
        <translation>mit Abweichung angenommen</translation>
    </message>
    <message>
        <source>does not apply</source>
        <translation>trifft nicht zu</translation>
    </message>
    <message>
        <source>done, or inside</source>
        <translation>erledigt, oder innerhalb</translation>
    </message>
    <message>
        <source>near a limit</source>
        <translation>nahe einer Grenze</translation>
    </message>
    <message>
        <source>not done yet</source>
        <translation>noch nicht erledigt</translation>
    </message>
    <message>
        <source>outside</source>
        <translation>außerhalb</translation>
    </message>
    <message>
        <source>recorded, nothing to judge</source>
        <translation>festgehalten, nichts zu beurteilen</translation>
    </message>
    <message>
        <source>to be done or said again</source>
        <translation>neu zu tun oder zu sagen</translation>
    </message>
</context>
<context>
    <name>language</name>
    <message>
        <source>As the press says</source>
        <translation>Wie die Maschine angibt</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Sprache</translation>
    </message>
    <message>
        <source>Metric (mm, N, bar)</source>
        <translation>Metrisch (mm, N, bar)</translation>
    </message>
    <message>
        <source>US (in, lbf, psi)</source>
        <translation>US-Einheiten (in, lbf, psi)</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Einheiten</translation>
    </message>
</context>
<context>
    <name>names</name>
    <message>
        <source>Another cause</source>
        <translation>Andere Ursache</translation>
    </message>
    <message>
        <source>Around the press</source>
        <translation>Rund um die Maschine</translation>
    </message>
    <message>
        <source>At %1</source>
        <translation>An %1</translation>
    </message>
    <message>
        <source>At the control panel</source>
        <translation>Am Bedienpult</translation>
    </message>
    <message>
        <source>At the main disconnect</source>
        <translation>Am Hauptschalter</translation>
    </message>
    <message>
        <source>At the rewind</source>
        <translation>An der Aufwicklung</translation>
    </message>
    <message>
        <source>At the roll lift</source>
        <translation>Am Rollenlift</translation>
    </message>
    <message>
        <source>At the splice table</source>
        <translation>Am Klebetisch</translation>
    </message>
    <message>
        <source>At the unwind</source>
        <translation>An der Abwicklung</translation>
    </message>
    <message>
        <source>CAUTION</source>
        <translation>VORSICHT</translation>
    </message>
    <message>
        <source>DANGER</source>
        <translation>GEFAHR</translation>
    </message>
    <message>
        <source>Full set-up</source>
        <translation>Volle Einrichtung</translation>
    </message>
    <message>
        <source>It was the wrong roll</source>
        <translation>Es war die falsche Rolle</translation>
    </message>
    <message>
        <source>N/A</source>
        <translation>N/A</translation>
    </message>
    <message>
        <source>NOTICE</source>
        <translation>HINWEIS</translation>
    </message>
    <message>
        <source>Next roll of the same job</source>
        <translation>Nächste Rolle desselben Auftrags</translation>
    </message>
    <message>
        <source>Re-web after a break</source>
        <translation>Neu einziehen nach Bahnriss</translation>
    </message>
    <message>
        <source>Restart after a stand</source>
        <translation>Neustart nach Stillstand</translation>
    </message>
    <message>
        <source>The web broke</source>
        <translation>Die Bahn ist gerissen</translation>
    </message>
    <message>
        <source>WARNING</source>
        <translation>WARNUNG</translation>
    </message>
    <message>
        <source>a published table</source>
        <translation>veröffentlichte Tabelle</translation>
    </message>
    <message>
        <source>an alarm limit: within it nothing is proved</source>
        <translation>Alarmgrenze: Innerhalb ist nichts bewiesen</translation>
    </message>
    <message>
        <source>blocked</source>
        <translation>blockiert</translation>
    </message>
    <message>
        <source>cannot</source>
        <translation>geht nicht</translation>
    </message>
    <message>
        <source>continuous slow crawl</source>
        <translation>dauernder langsamer Kriechgang</translation>
    </message>
    <message>
        <source>deviation</source>
        <translation>Abweichung</translation>
    </message>
    <message>
        <source>done</source>
        <translation>erledigt</translation>
    </message>
    <message>
        <source>done, deviation</source>
        <translation>erledigt, Abweichung</translation>
    </message>
    <message>
        <source>face inside</source>
        <translation>Druckseite innen</translation>
    </message>
    <message>
        <source>face outside</source>
        <translation>Druckseite außen</translation>
    </message>
    <message>
        <source>fast crawl</source>
        <translation>schneller Kriechgang</translation>
    </message>
    <message>
        <source>from underneath</source>
        <translation>von unten</translation>
    </message>
    <message>
        <source>in work</source>
        <translation>in Arbeit</translation>
    </message>
    <message>
        <source>inside</source>
        <translation>innerhalb</translation>
    </message>
    <message>
        <source>limited inch</source>
        <translation>begrenztes Tippen</translation>
    </message>
    <message>
        <source>missing</source>
        <translation>fehlt</translation>
    </message>
    <message>
        <source>near a limit</source>
        <translation>nahe einer Grenze</translation>
    </message>
    <message>
        <source>needs %1</source>
        <translation>braucht %1</translation>
    </message>
    <message>
        <source>never</source>
        <translation>nie</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>no limits</source>
        <translation>keine Grenzen</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>not begun</source>
        <translation>nicht begonnen</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>operator</source>
        <translation>Bediener</translation>
    </message>
    <message>
        <source>outside</source>
        <translation>außerhalb</translation>
    </message>
    <message>
        <source>outside every class</source>
        <translation>außerhalb jeder Klasse</translation>
    </message>
    <message>
        <source>outside, in doubt</source>
        <translation>außerhalb, im Zweifel</translation>
    </message>
    <message>
        <source>over the top</source>
        <translation>von oben</translation>
    </message>
    <message>
        <source>recorded</source>
        <translation>aufgezeichnet</translation>
    </message>
    <message>
        <source>say again</source>
        <translation>neu sagen</translation>
    </message>
    <message>
        <source>slow crawl</source>
        <translation>langsamer Kriechgang</translation>
    </message>
    <message>
        <source>stale, do again</source>
        <translation>veraltet, neu machen</translation>
    </message>
    <message>
        <source>supervisor</source>
        <translation>Aufsicht</translation>
    </message>
    <message>
        <source>the job</source>
        <translation>Auftrag</translation>
    </message>
    <message>
        <source>the maker of the material</source>
        <translation>Materialhersteller</translation>
    </message>
    <message>
        <source>the policy of this shop</source>
        <translation>Vorgabe dieses Betriebs</translation>
    </message>
    <message>
        <source>this press</source>
        <translation>diese Maschine</translation>
    </message>
    <message>
        <source>to do</source>
        <translation>zu tun</translation>
    </message>
    <message>
        <source>trainee</source>
        <translation>Auszubildender</translation>
    </message>
    <message>
        <source>trainer</source>
        <translation>Ausbilder</translation>
    </message>
    <message>
        <source>true inch</source>
        <translation>echtes Tippen</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
</context>
<context>
    <name>print</name>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>blank sheet</source>
        <translation>leeres Blatt</translation>
    </message>
    <message>
        <source>name, date and time</source>
        <translation>Name, Datum und Uhrzeit</translation>
    </message>
    <message>
        <source>not sealed</source>
        <translation>nicht versiegelt</translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>run %1</source>
        <translation>Durchgang %1</translation>
    </message>
</context>
<context>
    <name>taut::app::AfterLesson</name>
    <message>
        <source>Back to the training record</source>
        <translation>Zurück zum Übungsnachweis</translation>
    </message>
    <message>
        <source>Back to what it came to</source>
        <translation>Zurück zum Ergebnis</translation>
    </message>
    <message>
        <source>Begin again, the same</source>
        <translation>Noch einmal, ebenso</translation>
    </message>
    <message>
        <source>Begin again, with other chances</source>
        <translation>Noch einmal, mit anderen Zufällen</translation>
    </message>
    <message>
        <source>It is being played anew…</source>
        <translation>Es wird neu abgespielt…</translation>
    </message>
    <message>
        <source>Look at the press again</source>
        <translation>Maschine noch einmal ansehen</translation>
    </message>
    <message>
        <source>Play</source>
        <translation>Abspielen</translation>
    </message>
    <message>
        <source>Played anew from its seed: the same, to the last figure.</source>
        <translation>Aus der Nummer der Zufälle neu abgespielt: dasselbe, bis zur letzten Ziffer.</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Anhalten</translation>
    </message>
    <message>
        <source>This version of the program reckons otherwise than the one that it was practised with: what is seen may differ.</source>
        <translation>Diese Version des Programms rechnet anders als die, mit der geübt wurde: Was zu sehen ist, kann abweichen.</translation>
    </message>
    <message>
        <source>Time in the lesson</source>
        <translation>Zeit in der Übung</translation>
    </message>
    <message>
        <source>To the scenarios</source>
        <translation>Zu den Aufgaben</translation>
    </message>
    <message>
        <source>What it went by cannot be read any more.</source>
        <translation>Wonach es ging, lässt sich nicht mehr lesen.</translation>
    </message>
    <message>
        <source>What was done and what came of it, in the order of time</source>
        <translation>Was getan wurde und was daraus folgte, in zeitlicher Folge</translation>
    </message>
    <message>
        <source>practice</source>
        <translation>uebung</translation>
    </message>
    <message>
        <source>refused: %1</source>
        <translation>abgelehnt: %1</translation>
    </message>
</context>
<context>
    <name>taut::app::AnswerArea</name>
    <message>
        <source>&amp;Enter the tag</source>
        <translation>Rollenzettel &amp;eingeben</translation>
    </message>
    <message>
        <source>&amp;Yes, I have seen it</source>
        <translation>&amp;Ja, ich habe es gesehen</translation>
    </message>
    <message>
        <source>&amp;Yes, this stage is done</source>
        <translation>&amp;Ja, dieser Abschnitt ist erledigt</translation>
    </message>
    <message>
        <source>Everybody out. Then each gives up their own stop:</source>
        <translation>Alle draußen. Dann hebt jeder den eigenen Halt auf:</translation>
    </message>
    <message>
        <source>Hold down the answer that is so.</source>
        <translation>Die Antwort gedrückt halten, die zutrifft.</translation>
    </message>
    <message>
        <source>Hold to confirm: I have seen it</source>
        <translation>Zum Bestätigen gedrückt halten: Ich habe es gesehen</translation>
    </message>
    <message>
        <source>It belongs to the person named, and only that person gives it up.</source>
        <translation>Er gehört der genannten Person, und nur diese Person hebt ihn auf.</translation>
    </message>
    <message>
        <source>Scan, or type what it says</source>
        <translation>Scannen oder eintippen, was darauf steht</translation>
    </message>
    <message>
        <source>Tag of the roll, scanned or typed</source>
        <translation>Rollenzettel, gescannt oder getippt</translation>
    </message>
    <message>
        <source>The stop within reach here: %1. %2</source>
        <translation>Der Halt, der hier in Reichweite ist: %1. %2</translation>
    </message>
    <message>
        <source>This person &amp;holds the stop</source>
        <translation>Diese Person &amp;hält den Halt</translation>
    </message>
    <message>
        <source>Watch it: %1 s to go (less is watched too short)</source>
        <translation>Beobachten: noch %1 s (weniger ist zu kurz)</translation>
    </message>
    <message>
        <source>Watched for %1 s: answer now.</source>
        <translation>%1 s beobachtet: jetzt beantworten.</translation>
    </message>
    <message>
        <source>Who holds it?</source>
        <translation>Wer hält ihn?</translation>
    </message>
    <message>
        <source>Who holds the stop</source>
        <translation>Wer den Halt hält</translation>
    </message>
</context>
<context>
    <name>taut::app::AskPanel</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>&amp;Back</source>
        <translation>Zurüc&amp;k</translation>
    </message>
    <message>
        <source>Choose</source>
        <translation>Auswählen</translation>
    </message>
    <message>
        <source>P&amp;IN</source>
        <translation>P&amp;IN</translation>
    </message>
    <message>
        <source>P&amp;erson</source>
        <translation>P&amp;erson</translation>
    </message>
    <message>
        <source>PIN</source>
        <translation>PIN</translation>
    </message>
    <message>
        <source>Passp&amp;hrase, or scan the badge</source>
        <translation>Passp&amp;hrase, oder Ausweis scannen</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Person</translation>
    </message>
    <message>
        <source>Show what I type</source>
        <translation>Zeigen, was ich tippe</translation>
    </message>
    <message>
        <source>Who?</source>
        <translation>Wer?</translation>
    </message>
    <message>
        <source>Writing…</source>
        <translation>Wird geschrieben…</translation>
    </message>
</context>
<context>
    <name>taut::app::AttachmentPanel</name>
    <message>
        <source>%1 cannot be written. Choose another folder.</source>
        <translation>%1 lässt sich nicht schreiben. Anderen Ordner wählen.</translation>
    </message>
    <message>
        <source>%1 · %2 · %3</source>
        <translation>%1 · %2 · %3</translation>
    </message>
    <message>
        <source>&amp;Attach a picture or file…</source>
        <translation>Bild oder Datei &amp;anhängen…</translation>
    </message>
    <message>
        <source>&amp;Back</source>
        <translation>&amp;Zurück</translation>
    </message>
    <message>
        <source>&amp;Save a copy…</source>
        <translation>Kopie &amp;speichern…</translation>
    </message>
    <message>
        <source>Attach a picture or file</source>
        <translation>Bild oder Datei anhängen</translation>
    </message>
    <message>
        <source>Nothing is attached to this run.</source>
        <translation>An diesem Durchgang hängt nichts.</translation>
    </message>
    <message>
        <source>Pictures and files</source>
        <translation>Bilder und Dateien</translation>
    </message>
    <message>
        <source>Pictures and files of this run</source>
        <translation>Bilder und Dateien dieses Durchgangs</translation>
    </message>
    <message>
        <source>Save a copy</source>
        <translation>Kopie speichern</translation>
    </message>
    <message>
        <source>Saved: %1</source>
        <translation>Gespeichert: %1</translation>
    </message>
    <message>
        <source>The record names it, and this logbook does not hold it. Verify the logbook.</source>
        <translation>Das Protokoll nennt es, und dieses Protokollbuch enthält es nicht. Protokollbuch verifizieren.</translation>
    </message>
    <message>
        <source>The text of the chosen file</source>
        <translation>Text der gewählten Datei</translation>
    </message>
    <message>
        <source>This cannot be shown here. Save a copy and open it with a program that you trust.</source>
        <translation>Das lässt sich hier nicht zeigen. Kopie speichern und mit einem vertrauten Programm öffnen.</translation>
    </message>
    <message>
        <source>Understood: the file</source>
        <translation>Verstanden: die Datei</translation>
    </message>
    <message>
        <source>What you attach stands in the record beside the step that is open, with your name and the time, and cannot be taken out again. Show no faces.</source>
        <translation>Was Sie anhängen, steht im Protokoll bei dem offenen Schritt, mit Ihrem Namen und der Zeit, und lässt sich nicht mehr entfernen. Keine Gesichter zeigen.</translation>
    </message>
    <message>
        <source>the run as a whole</source>
        <translation>der ganze Durchgang</translation>
    </message>
</context>
<context>
    <name>taut::app::ChangedTargets</name>
    <message>
        <source>%1, the largest</source>
        <translation>%1, die größte</translation>
    </message>
    <message>
        <source>By less than is shown: %1.</source>
        <translation>Um weniger als gezeigt: %1.</translation>
    </message>
    <message>
        <source>No target changes.</source>
        <translation>Kein Sollwert ändert sich.</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>Sollwert</translation>
    </message>
    <message>
        <source>Targets need a press, a job and its substrate that can be read.</source>
        <translation>Sollwerte brauchen eine Maschine, einen Auftrag und dessen Bedruckstoff, die lesbar sind.</translation>
    </message>
    <message>
        <source>Targets that change</source>
        <translation>Sollwerte, die sich ändern</translation>
    </message>
    <message>
        <source>Targets that change: %1.</source>
        <translation>Sollwerte, die sich ändern: %1.</translation>
    </message>
    <message>
        <source>There is no edition before it to hold it against.</source>
        <translation>Es gibt keine Ausgabe davor zum Vergleichen.</translation>
    </message>
    <message>
        <source>after</source>
        <translation>nachher</translation>
    </message>
    <message>
        <source>before</source>
        <translation>vorher</translation>
    </message>
    <message>
        <source>for a roll of</source>
        <translation>für eine Rolle von</translation>
    </message>
    <message>
        <source>on the press</source>
        <translation>an der Maschine</translation>
    </message>
    <message>
        <source>with the job</source>
        <translation>mit dem Auftrag</translation>
    </message>
</context>
<context>
    <name>taut::app::ChoicePanel</name>
    <message>
        <source>480 mm or 18 3/4 in</source>
        <translation>480 mm oder 18 3/4 in</translation>
    </message>
    <message>
        <source>A roll's file</source>
        <translation>Datei einer Rolle</translation>
    </message>
    <message>
        <source>A web is in the press</source>
        <translation>Eine Bahn ist in der Maschine</translation>
    </message>
    <message>
        <source>Another roll, from a file</source>
        <translation>Andere Rolle, aus einer Datei</translation>
    </message>
    <message>
        <source>Another roll, scanned or typed</source>
        <translation>Andere Rolle, gescannt oder getippt</translation>
    </message>
    <message>
        <source>Choose a press, a job, a substrate and a roll.</source>
        <translation>Maschine, Auftrag, Bedruckstoff und Rolle auswählen.</translation>
    </message>
    <message>
        <source>It goes on from</source>
        <translation>Setzt fort</translation>
    </message>
    <message>
        <source>Its diameter, if measured</source>
        <translation>Ihr Durchmesser, wenn gemessen</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Auftrag</translation>
    </message>
    <message>
        <source>Kind of run</source>
        <translation>Art des Durchgangs</translation>
    </message>
    <message>
        <source>Look at the press and say whether a web is in it.</source>
        <translation>Maschine ansehen und sagen, ob eine Bahn darin ist.</translation>
    </message>
    <message>
        <source>Press</source>
        <translation>Maschine</translation>
    </message>
    <message>
        <source>Roll</source>
        <translation>Rolle</translation>
    </message>
    <message>
        <source>Roll files (*.toml)</source>
        <translation>Rollendateien (*.toml)</translation>
    </message>
    <message>
        <source>Substrate</source>
        <translation>Bedruckstoff</translation>
    </message>
    <message>
        <source>The press is empty</source>
        <translation>Die Maschine ist leer</translation>
    </message>
    <message>
        <source>This kind of run goes on from a run that was signed on this press: there is none yet.</source>
        <translation>Diese Art setzt einen auf dieser Maschine abgezeichneten Durchgang fort: Es gibt noch keinen.</translation>
    </message>
    <message>
        <source>This logbook knows no press, job or substrate yet: a supervisor takes their files in, on the page "Shop".</source>
        <translation>Dieses Protokollbuch kennt noch keine Maschine, keinen Auftrag oder Bedruckstoff: Eine Aufsicht liest deren Dateien ein, auf der Seite „Betrieb“.</translation>
    </message>
    <message>
        <source>Try other values</source>
        <translation>Andere Werte erproben</translation>
    </message>
</context>
<context>
    <name>taut::app::ChooseLesson</name>
    <message>
        <source>%1 · job %2, %3 · roll %4</source>
        <translation>%1 · Auftrag %2, %3 · Rolle %4</translation>
    </message>
    <message>
        <source>&amp;Begin to practise</source>
        <translation>Übung &amp;beginnen</translation>
    </message>
    <message>
        <source>&amp;How it is gone through</source>
        <translation>&amp;Wie sie durchgegangen wird</translation>
    </message>
    <message>
        <source>A press that answers as a real one does. It may not be as its papers say: look, as you would there.</source>
        <translation>Eine Maschine, die antwortet wie eine echte. Sie ist vielleicht nicht, wie ihre Papiere sagen: hinsehen wie dort.</translation>
    </message>
    <message>
        <source>Another &amp;file…</source>
        <translation>Andere &amp;Datei…</translation>
    </message>
    <message>
        <source>Another scenario</source>
        <translation>Andere Aufgabe</translation>
    </message>
    <message>
        <source>B&amp;uild a scenario</source>
        <translation>Aufgabe &amp;erstellen</translation>
    </message>
    <message>
        <source>How it is gone through</source>
        <translation>Wie sie durchgegangen wird</translation>
    </message>
    <message>
        <source>Number of the &amp;chances: the same number, the same chances</source>
        <translation>Nummer der &amp;Zufälle: dieselbe Nummer, dieselben Zufälle</translation>
    </message>
    <message>
        <source>Number of the chances</source>
        <translation>Nummer der Zufälle</translation>
    </message>
    <message>
        <source>Scenarios</source>
        <translation>Aufgaben</translation>
    </message>
    <message>
        <source>Scenarios (*.toml)</source>
        <translation>Aufgaben (*.toml)</translation>
    </message>
    <message>
        <source>Sign in first: a lesson belongs to somebody.</source>
        <translation>Erst anmelden: Eine Übung gehört jemandem.</translation>
    </message>
    <message>
        <source>There is no scenario here: open a file that holds one.</source>
        <translation>Hier ist keine Aufgabe: eine Datei öffnen, in der eine steht.</translation>
    </message>
    <message>
        <source>This scenario is about the press at which this PC stands. Nothing on this page is that press: what you do here does nothing there.</source>
        <translation>Diese Aufgabe handelt von der Maschine, an der dieser PC steht. Nichts auf dieser Seite ist diese Maschine: Was hier getan wird, tut dort nichts.</translation>
    </message>
    <message>
        <source>Training &amp;record</source>
        <translation>Übungs&amp;nachweis</translation>
    </message>
    <message>
        <source>What do you want to practise?</source>
        <translation>Was soll geübt werden?</translation>
    </message>
</context>
<context>
    <name>taut::app::ChoosePage</name>
    <message>
        <source>%1 chooses PIN and passphrase</source>
        <translation>%1 wählt PIN und Passphrase</translation>
    </message>
    <message>
        <source>15 characters or more, to sign</source>
        <translation>15 Zeichen oder mehr, zum Abzeichnen</translation>
    </message>
    <message>
        <source>4 characters or more, for the steps at this PC</source>
        <translation>4 Zeichen oder mehr, für die Schritte an diesem PC</translation>
    </message>
    <message>
        <source>Begin the logbook as its supervisor</source>
        <translation>Protokollbuch als seine Aufsicht beginnen</translation>
    </message>
    <message>
        <source>Choose, and sign in</source>
        <translation>Wählen und anmelden</translation>
    </message>
    <message>
        <source>First-use code</source>
        <translation>Erstcode</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>PIN</source>
        <translation>PIN</translation>
    </message>
    <message>
        <source>PIN, once more</source>
        <translation>PIN, noch einmal</translation>
    </message>
    <message>
        <source>Passphrase</source>
        <translation>Passphrase</translation>
    </message>
    <message>
        <source>Passphrase, once more</source>
        <translation>Passphrase, noch einmal</translation>
    </message>
    <message>
        <source>The first person is a supervisor, who enrols the others. Nobody else learns what you choose here, and nobody can read it out of the logbook: whoever forgets it needs a second supervisor.</source>
        <translation>Die erste Person ist eine Aufsicht, die die anderen einträgt. Niemand sonst erfährt, was Sie hier wählen, und niemand kann es aus dem Protokollbuch lesen: Wer es vergisst, braucht eine zweite Aufsicht.</translation>
    </message>
    <message>
        <source>This logbook knows nobody yet: who looks after it?</source>
        <translation>Dieses Protokollbuch kennt noch niemanden: Wer betreut es?</translation>
    </message>
    <message>
        <source>With the code that a supervisor gave you. Nobody else learns what you choose here; whoever forgets it gets a new code from a supervisor.</source>
        <translation>Mit dem Code, den eine Aufsicht Ihnen gab. Niemand sonst erfährt, was Sie hier wählen; wer es vergisst, bekommt von einer Aufsicht einen neuen Code.</translation>
    </message>
    <message>
        <source>as the crew knows you</source>
        <translation>wie die Mannschaft Sie kennt</translation>
    </message>
    <message>
        <source>eight letters and digits</source>
        <translation>acht Buchstaben und Ziffern</translation>
    </message>
</context>
<context>
    <name>taut::app::CompetenceCard</name>
    <message>
        <source>%1 may work alone at</source>
        <translation>%1 darf allein arbeiten an</translation>
    </message>
    <message>
        <source>%1 may work alone at %2</source>
        <translation>%1 darf allein arbeiten an %2</translation>
    </message>
    <message>
        <source>%1 months, to %2</source>
        <translation>%1 Monate, bis %2</translation>
    </message>
    <message>
        <source>%1 works alone at %2 no longer</source>
        <translation>%1 arbeitet nicht mehr allein an %2</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>An accident or a near miss, what an inspection showed, another task: from now on a supervisor signs beside them, where this press asks it.</source>
        <translation>Ein Unfall oder Beinahe-Unfall, was eine Begehung zeigte, eine andere Aufgabe: Von jetzt an unterschreibt eine Aufsicht mit, wo diese Maschine es verlangt.</translation>
    </message>
    <message>
        <source>End it now</source>
        <translation>Jetzt beenden</translation>
    </message>
    <message>
        <source>It ends now</source>
        <translation>Sie endet jetzt</translation>
    </message>
    <message>
        <source>May work alone</source>
        <translation>Darf allein arbeiten</translation>
    </message>
    <message>
        <source>No press is kept in this logbook.</source>
        <translation>In diesem Protokollbuch steht keine Maschine.</translation>
    </message>
    <message>
        <source>Practice alone qualifies nobody. Competence is for one press, wants set-ups there that somebody watched, and ends. Who may lock out energy is for the site's own procedure and local law, and is not said here.</source>
        <translation>Übung allein befähigt niemanden. Die Befugnis gilt für eine Maschine, verlangt dort Einrichtungen, bei denen jemand zusah, und endet. Wer Energien wegschließen darf, regeln das Verfahren des Betriebs und das örtliche Recht, nicht diese Seite.</translation>
    </message>
    <message>
        <source>Presses</source>
        <translation>Maschinen</translation>
    </message>
    <message>
        <source>Reading the practice logbook of this PC…</source>
        <translation>Das Übungs-Protokollbuch dieses PCs wird gelesen …</translation>
    </message>
    <message>
        <source>Run %1, %2, job %3 %4</source>
        <translation>Durchgang %1, %2, Auftrag %3 %4</translation>
    </message>
    <message>
        <source>Set-ups that were watched: %1. Training record: SHA-256 %2. Your name, the time and your signature stand in the logbook for good. It ends on its day, when what protects people at this press is changed, when they are long away from it, or when a supervisor ends it.</source>
        <translation>Einrichtungen, bei denen jemand zusah: %1. Übungsnachweis: SHA-256 %2. Ihr Name, die Zeit und Ihre Unterschrift bleiben für immer im Protokollbuch. Sie endet an ihrem Tag, wenn an dieser Maschine geändert wird, was Menschen schützt, nach langer Zeit ohne diese Maschine, oder wenn eine Aufsicht sie beendet.</translation>
    </message>
    <message>
        <source>Sign that they may</source>
        <translation>Unterschreiben, dass sie dürfen</translation>
    </message>
    <message>
        <source>The practice logbook of this PC has no attempt of theirs.</source>
        <translation>Das Übungs-Protokollbuch dieses PCs hat keinen Versuch von ihnen.</translation>
    </message>
    <message>
        <source>They finished no set-up of this press yet</source>
        <translation>Noch keine Einrichtung dieser Maschine abgeschlossen</translation>
    </message>
    <message>
        <source>Tick the set-ups that were watched: %1 of at least %2.</source>
        <translation>Kreuzen Sie an, bei welchen Einrichtungen jemand zusah: %1 von mindestens %2.</translation>
    </message>
    <message>
        <source>Training record of %1 at this PC: %2 attempts, SHA-256 %3</source>
        <translation>Übungsnachweis von %1 an diesem PC: %2 Versuche, SHA-256 %3</translation>
    </message>
    <message>
        <source>Valid until</source>
        <translation>Gültig bis</translation>
    </message>
    <message>
        <source>Which of these set-ups did somebody watch?</source>
        <translation>Bei welchen dieser Einrichtungen sah jemand zu?</translation>
    </message>
    <message>
        <source>Why it ends</source>
        <translation>Warum sie endet</translation>
    </message>
    <message>
        <source>Without a training record nobody is said to be competent: see what stands above.</source>
        <translation>Ohne Übungsnachweis wird niemand befugt: siehe oben.</translation>
    </message>
    <message>
        <source>not alone</source>
        <translation>nicht allein</translation>
    </message>
    <message>
        <source>said by %1, %2</source>
        <translation>gesagt von %1, %2</translation>
    </message>
    <message>
        <source>this press asks it</source>
        <translation>diese Maschine verlangt es</translation>
    </message>
    <message>
        <source>this press does not ask it</source>
        <translation>diese Maschine verlangt es nicht</translation>
    </message>
    <message>
        <source>until %1</source>
        <translation>bis %1</translation>
    </message>
</context>
<context>
    <name>taut::app::ConstantCard</name>
    <message>
        <source>%1, plus or minus %2, beginning at %3 (plus or minus %4). %5</source>
        <translation>%1, plus oder minus %2, beginnt bei %3 (plus oder minus %4). %5</translation>
    </message>
    <message>
        <source>1. Let only the brake's air or current on. 2. Clamp the web's end to a spring scale, in line with the web. 3. Put on a setting and pull slowly, hands off the roll. 4. Read the scale while the roll just turns, and enter both. Then another setting, well apart.</source>
        <translation>1. Nur Luft oder Strom der Bremse anstellen. 2. Bahnende an eine Federwaage klemmen, in Linie mit der Bahn. 3. Eine Einstellung setzen und langsam ziehen, Hände weg von der Rolle. 4. Waage ablesen, während die Rolle gerade dreht, und beides eingeben. Dann eine andere Einstellung, weit davon entfernt.</translation>
    </message>
    <message>
        <source>A drive that starts draws in whoever pulls at the web. Isolate the drives and lock them by your site's procedure, and tell everybody at the press. Where your site's rules say otherwise, they hold.</source>
        <translation>Ein Antrieb, der anläuft, zieht jeden hinein, der an der Bahn zieht. Antriebe trennen und nach Betriebsanweisung sichern und allen an der Maschine Bescheid sagen. Wo Betriebsregeln anderes sagen, gelten sie.</translation>
    </message>
    <message>
        <source>As well as scale and gauge can be read.</source>
        <translation>So gut, wie Waage und Anzeige abzulesen sind.</translation>
    </message>
    <message>
        <source>Back to the list</source>
        <translation>Zurück zur Liste</translation>
    </message>
    <message>
        <source>Diameter of the roll</source>
        <translation>Durchmesser der Rolle</translation>
    </message>
    <message>
        <source>Diameter of the roll, measured now</source>
        <translation>Durchmesser der Rolle, jetzt gemessen</translation>
    </message>
    <message>
        <source>Enter it in the press profile, and look</source>
        <translation>Ins Maschinenprofil eintragen und ansehen</translation>
    </message>
    <message>
        <source>Enter the diameter, how well the scale reads, and at least two settings with what it read at each.</source>
        <translation>Durchmesser, Genauigkeit der Waage und mindestens zwei Einstellungen mit ihrer Ablesung eingeben.</translation>
    </message>
    <message>
        <source>Force %1</source>
        <translation>Kraft %1</translation>
    </message>
    <message>
        <source>Set to</source>
        <translation>Eingestellt auf</translation>
    </message>
    <message>
        <source>Setting %1</source>
        <translation>Einstellung %1</translation>
    </message>
    <message>
        <source>The readings scatter by more than scale and gauge explain.</source>
        <translation>Die Ablesungen streuen mehr, als Waage und Anzeige erklären.</translation>
    </message>
    <message>
        <source>The scale reads</source>
        <translation>Waage zeigt</translation>
    </message>
    <message>
        <source>The scale reads within</source>
        <translation>Waage zeigt auf</translation>
    </message>
    <message>
        <source>The scale reads within, plus or minus</source>
        <translation>Waage zeigt auf, plus oder minus</translation>
    </message>
    <message>
        <source>This press has no zone with a brake, a clutch or a drive.</source>
        <translation>Diese Maschine hat keine Zone mit Bremse, Kupplung oder Antrieb.</translation>
    </message>
    <message>
        <source>What does this setting do?</source>
        <translation>Was tut diese Einstellung?</translation>
    </message>
    <message>
        <source>What was found</source>
        <translation>Was gefunden wurde</translation>
    </message>
    <message>
        <source>Which setting</source>
        <translation>Welche Einstellung</translation>
    </message>
    <message>
        <source>like %1</source>
        <translation>etwa %1</translation>
    </message>
</context>
<context>
    <name>taut::app::ControlView</name>
    <message>
        <source>Chart of the readings</source>
        <translation>Regelkarte der Ablesungen</translation>
    </message>
</context>
<context>
    <name>taut::app::Countersign</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>A supervisor countersigns: they look at the run here, choose their name and type their PIN. Then sign with your own passphrase, once more.</source>
        <translation>Eine Aufsicht zeichnet gegen: Sie sieht den Durchgang hier an, wählt ihren Namen und gibt ihre PIN ein. Dann unterschreiben Sie noch einmal mit Ihrer eigenen Passphrase.</translation>
    </message>
    <message>
        <source>No other supervisor is enrolled here who could.</source>
        <translation>Hier ist keine andere Aufsicht eingetragen, die es könnte.</translation>
    </message>
    <message>
        <source>PIN of the supervisor</source>
        <translation>PIN der Aufsicht</translation>
    </message>
    <message>
        <source>Supervisor who countersigns</source>
        <translation>Aufsicht, die gegenzeichnet</translation>
    </message>
    <message>
        <source>Which supervisor?</source>
        <translation>Welche Aufsicht?</translation>
    </message>
</context>
<context>
    <name>taut::app::DefinitionEditor</name>
    <message>
        <source>%1, edition %2</source>
        <translation>%1, Ausgabe %2</translation>
    </message>
    <message>
        <source>%1, edition %2 of %3</source>
        <translation>%1, Ausgabe %2 von %3</translation>
    </message>
    <message>
        <source>%1, not sealed</source>
        <translation>%1, nicht versiegelt</translation>
    </message>
    <message>
        <source>&amp;Back to the list</source>
        <translation>&amp;Zurück zur Liste</translation>
    </message>
    <message>
        <source>&amp;Seal</source>
        <translation>Ver&amp;siegeln</translation>
    </message>
    <message>
        <source>&amp;Seal as a new one</source>
        <translation>Als Neues ver&amp;siegeln</translation>
    </message>
    <message>
        <source>&amp;Seal as edition %1</source>
        <translation>Als Ausgabe %1 ver&amp;siegeln</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Rückgängig</translation>
    </message>
    <message>
        <source>A supervisor seals editions.</source>
        <translation>Ausgaben versiegelt die Aufsicht.</translation>
    </message>
    <message>
        <source>Add a row</source>
        <translation>Zeile hinzufügen</translation>
    </message>
    <message>
        <source>Add this table</source>
        <translation>Diese Tabelle hinzufügen</translation>
    </message>
    <message>
        <source>As te&amp;xt</source>
        <translation>Als Te&amp;xt</translation>
    </message>
    <message>
        <source>Earlier</source>
        <translation>Früher</translation>
    </message>
    <message>
        <source>First mend what the reader finds.</source>
        <translation>Erst beheben, was der Leser findet.</translation>
    </message>
    <message>
        <source>Keys and what they say</source>
        <translation>Schlüssel und was sie sagen</translation>
    </message>
    <message>
        <source>Later</source>
        <translation>Später</translation>
    </message>
    <message>
        <source>Let the changes go</source>
        <translation>Änderungen verwerfen</translation>
    </message>
    <message>
        <source>Nothing is wrong with it.</source>
        <translation>Nichts ist daran falsch.</translation>
    </message>
    <message>
        <source>Sealed as edition %1.</source>
        <translation>Als Ausgabe %1 versiegelt.</translation>
    </message>
    <message>
        <source>Stay</source>
        <translation>Bleiben</translation>
    </message>
    <message>
        <source>Steps of the procedure</source>
        <translation>Schritte des Ablaufs</translation>
    </message>
    <message>
        <source>Tables of the file</source>
        <translation>Tabellen der Datei</translation>
    </message>
    <message>
        <source>Take the row out</source>
        <translation>Zeile herausnehmen</translation>
    </message>
    <message>
        <source>Take the table out</source>
        <translation>Tabelle herausnehmen</translation>
    </message>
    <message>
        <source>The text of the file</source>
        <translation>Text der Datei</translation>
    </message>
    <message>
        <source>This text stands as an earlier edition; the newest stays edition %1. Change something in it, if only a comment, to make it the newest.</source>
        <translation>Dieser Text steht als frühere Ausgabe da; die neueste bleibt Ausgabe %1. Etwas darin ändern, und sei es ein Kommentar, damit er die neueste wird.</translation>
    </message>
    <message>
        <source>What is wrong with the path</source>
        <translation>Was am Bahnweg falsch ist</translation>
    </message>
    <message>
        <source>What its reader finds</source>
        <translation>Was sein Leser findet</translation>
    </message>
    <message>
        <source>What the key means</source>
        <translation>Was der Schlüssel bedeutet</translation>
    </message>
    <message>
        <source>What was changed here is sealed nowhere yet.</source>
        <translation>Was hier geändert wurde, ist noch nirgends versiegelt.</translation>
    </message>
    <message>
        <source>Which tar&amp;gets change</source>
        <translation>&amp;Welche Sollwerte sich ändern</translation>
    </message>
    <message>
        <source>line %1</source>
        <translation>Zeile %1</translation>
    </message>
    <message>
        <source>no name yet</source>
        <translation>noch ohne Namen</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>nicht gesagt</translation>
    </message>
    <message>
        <source>rows: %1</source>
        <translation>Zeilen: %1</translation>
    </message>
</context>
<context>
    <name>taut::app::DefinitionsPage</name>
    <message>
        <source>%1 (copy %2)</source>
        <translation>%1 (Kopie %2)</translation>
    </message>
    <message>
        <source>%1 (copy)</source>
        <translation>%1 (Kopie)</translation>
    </message>
    <message>
        <source>A supervisor seals editions; anybody may look.</source>
        <translation>Ausgaben versiegelt die Aufsicht; ansehen darf sie jeder.</translation>
    </message>
    <message>
        <source>Back to the people</source>
        <translation>Zurück zu den Personen</translation>
    </message>
    <message>
        <source>Begin anew:</source>
        <translation>Neu beginnen:</translation>
    </message>
    <message>
        <source>Copy it, and adapt the copy</source>
        <translation>Kopieren und die Kopie anpassen</translation>
    </message>
    <message>
        <source>Edition %1</source>
        <translation>Ausgabe %1</translation>
    </message>
    <message>
        <source>Editions</source>
        <translation>Ausgaben</translation>
    </message>
    <message>
        <source>Find what a setting does</source>
        <translation>Finden, was eine Einstellung tut</translation>
    </message>
    <message>
        <source>Jobs</source>
        <translation>Aufträge</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Öffnen</translation>
    </message>
    <message>
        <source>Open edition %1</source>
        <translation>Ausgabe %1 öffnen</translation>
    </message>
    <message>
        <source>Presses</source>
        <translation>Maschinen</translation>
    </message>
    <message>
        <source>Procedures</source>
        <translation>Abläufe</translation>
    </message>
    <message>
        <source>Sign in to change something here.</source>
        <translation>Anmelden, um hier etwas zu ändern.</translation>
    </message>
    <message>
        <source>Substrates</source>
        <translation>Bedruckstoffe</translation>
    </message>
    <message>
        <source>TOML files (*.toml)</source>
        <translation>TOML-Dateien (*.toml)</translation>
    </message>
    <message>
        <source>Take in files…</source>
        <translation>Dateien einlesen…</translation>
    </message>
    <message>
        <source>Take in what a run is begun from</source>
        <translation>Einlesen, womit ein Durchgang beginnt</translation>
    </message>
    <message>
        <source>Taken in: %1, edition %2.</source>
        <translation>Eingelesen: %1, Ausgabe %2.</translation>
    </message>
    <message>
        <source>This logbook knows no press, job, substrate or procedure yet.</source>
        <translation>Dieses Protokollbuch kennt noch keine Maschine, keinen Auftrag, Bedruckstoff oder Ablauf.</translation>
    </message>
    <message>
        <source>Was there already: %1, edition %2.</source>
        <translation>War schon da: %1, Ausgabe %2.</translation>
    </message>
    <message>
        <source>What is begun anew</source>
        <translation>Was neu begonnen wird</translation>
    </message>
    <message>
        <source>What runs are begun from</source>
        <translation>Womit Durchgänge beginnen</translation>
    </message>
    <message>
        <source>Write it out to a file</source>
        <translation>In eine Datei schreiben</translation>
    </message>
    <message>
        <source>Write it out to a file…</source>
        <translation>In eine Datei schreiben…</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <translation>Geschrieben: %1</translation>
    </message>
    <message>
        <source>a job</source>
        <translation>ein Auftrag</translation>
    </message>
    <message>
        <source>a press</source>
        <translation>eine Maschine</translation>
    </message>
    <message>
        <source>a procedure</source>
        <translation>ein Ablauf</translation>
    </message>
    <message>
        <source>a substrate</source>
        <translation>ein Bedruckstoff</translation>
    </message>
    <message>
        <source>edition %1</source>
        <translation>Ausgabe %1</translation>
    </message>
    <message>
        <source>line %1</source>
        <translation>Zeile %1</translation>
    </message>
    <message>
        <source>sealed by %1</source>
        <translation>versiegelt von %1</translation>
    </message>
</context>
<context>
    <name>taut::app::DemoNote</name>
    <message>
        <source>Demo shop, all invented. %1 signs in with the PIN %2, and signs with the passphrase "%3".</source>
        <translation>Vorführbetrieb, alles erfunden. %1 meldet sich mit der PIN %2 an und zeichnet mit der Passphrase „%3“ ab.</translation>
    </message>
</context>
<context>
    <name>taut::app::DriftPage</name>
    <message>
        <source>%1 higher</source>
        <translation>%1 höher</translation>
    </message>
    <message>
        <source>%1 lower</source>
        <translation>%1 tiefer</translation>
    </message>
    <message>
        <source>%1 readings</source>
        <translation>%1 Ablesungen</translation>
    </message>
    <message>
        <source>All eight</source>
        <translation>Alle acht</translation>
    </message>
    <message>
        <source>All that is told of it</source>
        <translation>Alles dazu anzeigen</translation>
    </message>
    <message>
        <source>As the list has it</source>
        <translation>Wie in der Liste</translation>
    </message>
    <message>
        <source>Back to the chart</source>
        <translation>Zurück zur Regelkarte</translation>
    </message>
    <message>
        <source>Back to the list</source>
        <translation>Zurück zur Liste</translation>
    </message>
    <message>
        <source>Choose what is followed</source>
        <translation>Wählen, was verfolgt wird</translation>
    </message>
    <message>
        <source>How far from its target</source>
        <translation>Abstand zum Sollwert</translation>
    </message>
    <message>
        <source>Looking through the readings…</source>
        <translation>Ablesungen werden durchgesehen…</translation>
    </message>
    <message>
        <source>Only %1</source>
        <translation>Nur %1</translation>
    </message>
    <message>
        <source>Open this run</source>
        <translation>Durchgang öffnen</translation>
    </message>
    <message>
        <source>Patterns looked for</source>
        <translation>Gesuchte Muster</translation>
    </message>
    <message>
        <source>Pictures (*.png)</source>
        <translation>Bilder (*.png)</translation>
    </message>
    <message>
        <source>Readings, what moved most first</source>
        <translation>Ablesungen, am stärksten verschobene zuerst</translation>
    </message>
    <message>
        <source>Roll %1</source>
        <translation>Rolle %1</translation>
    </message>
    <message>
        <source>Save as picture</source>
        <translation>Als Bild speichern</translation>
    </message>
    <message>
        <source>Save the chart</source>
        <translation>Regelkarte speichern</translation>
    </message>
    <message>
        <source>Saved: %1</source>
        <translation>Gespeichert: %1</translation>
    </message>
    <message>
        <source>Six, warns earlier</source>
        <translation>Sechs, warnt früher</translation>
    </message>
    <message>
        <source>The logbook is not open in this window.</source>
        <translation>Das Protokollbuch ist in diesem Fenster nicht offen.</translation>
    </message>
    <message>
        <source>The older four (1956)</source>
        <translation>Die älteren vier (1956)</translation>
    </message>
    <message>
        <source>The picture could not be written to %1. Choose another folder.</source>
        <translation>Das Bild konnte nicht nach %1 geschrieben werden. Einen anderen Ordner wählen.</translation>
    </message>
    <message>
        <source>The sheet of this reading</source>
        <translation>Das Blatt dieser Ablesung</translation>
    </message>
    <message>
        <source>The usual four</source>
        <translation>Die üblichen vier</translation>
    </message>
    <message>
        <source>There is no reading in the sealed runs that were chosen.</source>
        <translation>In den gewählten versiegelten Durchgängen gibt es keine Ablesung.</translation>
    </message>
    <message>
        <source>What is followed</source>
        <translation>Was verfolgt wird</translation>
    </message>
    <message>
        <source>What was read</source>
        <translation>Abgelesener Wert</translation>
    </message>
    <message>
        <source>only %1</source>
        <translation>nur %1</translation>
    </message>
    <message>
        <source>outside at first</source>
        <translation>zuerst außerhalb</translation>
    </message>
    <message>
        <source>since %1</source>
        <translation>seit %1</translation>
    </message>
    <message>
        <source>steady</source>
        <translation>stabil</translation>
    </message>
    <message>
        <source>steady, %1 of %2 outside at first</source>
        <translation>stabil, %1 von %2 zuerst außerhalb</translation>
    </message>
    <message>
        <source>too few to tell</source>
        <translation>zu wenige, um es zu sagen</translation>
    </message>
</context>
<context>
    <name>taut::app::ElevationWidget</name>
    <message>
        <source>Drawing of the press</source>
        <translation>Zeichnung der Maschine</translation>
    </message>
</context>
<context>
    <name>taut::app::FindingStrip</name>
    <message>
        <source>&amp;Understood</source>
        <translation>Z&amp;ur Kenntnis genommen</translation>
    </message>
</context>
<context>
    <name>taut::app::FoundPanel</name>
    <message>
        <source>Said: %1</source>
        <translation>Gesagt: %1</translation>
    </message>
    <message>
        <source>Say what you found that is not as it should be. What is said stays said: what is in order counts against you.</source>
        <translation>Sagen, was gefunden wurde und nicht ist, wie es sein soll. Gesagtes bleibt gesagt: Was in Ordnung ist, zählt dagegen.</translation>
    </message>
</context>
<context>
    <name>taut::app::Gauges</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>Luft</translation>
    </message>
    <message>
        <source>Air supply</source>
        <translation>Luftdruck</translation>
    </message>
    <message>
        <source>Guard open</source>
        <translation>Schutz offen</translation>
    </message>
    <message>
        <source>Lit: %1.</source>
        <translation>Leuchtet: %1.</translation>
    </message>
    <message>
        <source>Moves</source>
        <translation>Läuft</translation>
    </message>
    <message>
        <source>No lamp is lit.</source>
        <translation>Keine Lampe leuchtet.</translation>
    </message>
    <message>
        <source>Power</source>
        <translation>Strom</translation>
    </message>
    <message>
        <source>Reads: %1</source>
        <translation>Zeigt: %1</translation>
    </message>
    <message>
        <source>Reset</source>
        <translation>Rücksetzen</translation>
    </message>
    <message>
        <source>Rewind roll</source>
        <translation>Aufwickler</translation>
    </message>
    <message>
        <source>Set: %1</source>
        <translation>Ein: %1</translation>
    </message>
    <message>
        <source>Speed</source>
        <translation>Tempo</translation>
    </message>
    <message>
        <source>Stop held</source>
        <translation>Halt</translation>
    </message>
    <message>
        <source>Stop latched</source>
        <translation>Not-Halt</translation>
    </message>
    <message>
        <source>Unwind roll</source>
        <translation>Abwickler</translation>
    </message>
    <message>
        <source>not hung</source>
        <translation>hängt nicht</translation>
    </message>
    <message>
        <source>not set</source>
        <translation>nicht ein</translation>
    </message>
</context>
<context>
    <name>taut::app::HandPanel</name>
    <message>
        <source>Panel</source>
        <translation>Pult</translation>
    </message>
    <message>
        <source>Rewind</source>
        <translation>Aufwicklung</translation>
    </message>
    <message>
        <source>Splice table</source>
        <translation>Klebetisch</translation>
    </message>
    <message>
        <source>Stations</source>
        <translation>Druckwerke</translation>
    </message>
    <message>
        <source>Unwind</source>
        <translation>Abwicklung</translation>
    </message>
    <message>
        <source>Web guide</source>
        <translation>Bahnlauf</translation>
    </message>
</context>
<context>
    <name>taut::app::HandleRow</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: to what</source>
        <translation>%1: worauf</translation>
    </message>
    <message>
        <source>Once more: the pretend press moves</source>
        <translation>Noch einmal: Die Scheinmaschine läuft</translation>
    </message>
    <message>
        <source>is set to %1</source>
        <translation>steht auf %1</translation>
    </message>
</context>
<context>
    <name>taut::app::HeldStops</name>
    <message>
        <source>%1 holds: %2</source>
        <translation>%1 hält: %2</translation>
    </message>
    <message>
        <source>Hold: I, %1, am out and give it up</source>
        <translation>Gedrückt halten: Ich, %1, bin draußen und hebe ihn auf</translation>
    </message>
</context>
<context>
    <name>taut::app::HelpView</name>
    <message>
        <source>Back (Esc)</source>
        <translation>Zurück (Esc)</translation>
    </message>
    <message>
        <source>Find in the help</source>
        <translation>In der Hilfe suchen</translation>
    </message>
    <message>
        <source>No page has that in it</source>
        <translation>Keine Seite enthält das</translation>
    </message>
    <message>
        <source>Pages of the help</source>
        <translation>Seiten der Hilfe</translation>
    </message>
    <message>
        <source>The chosen page of the help</source>
        <translation>Die gewählte Seite der Hilfe</translation>
    </message>
    <message>
        <source>Two minutes to look round</source>
        <translation>Zwei Minuten zum Umsehen</translation>
    </message>
</context>
<context>
    <name>taut::app::HistoryDesk</name>
    <message>
        <source>Drift</source>
        <translation>Drift</translation>
    </message>
    <message>
        <source>Runs</source>
        <translation>Durchgänge</translation>
    </message>
    <message>
        <source>Time and losses</source>
        <translation>Zeit und Verluste</translation>
    </message>
    <message>
        <source>Waiting</source>
        <translation>Anstehend</translation>
    </message>
    <message>
        <source>Week</source>
        <translation>Woche</translation>
    </message>
</context>
<context>
    <name>taut::app::HistoryPage</name>
    <message>
        <source>%1 runs</source>
        <translation>%1 Durchgänge</translation>
    </message>
    <message>
        <source>%1 · Roll %2</source>
        <translation>%1 · Rolle %2</translation>
    </message>
    <message>
        <source>%1, %2 deviations</source>
        <translation>%1, %2 Abweichungen</translation>
    </message>
    <message>
        <source>%1, 1 deviation</source>
        <translation>%1, 1 Abweichung</translation>
    </message>
    <message>
        <source>1 run</source>
        <translation>1 Durchgang</translation>
    </message>
    <message>
        <source>Abandoned</source>
        <translation>Abgebrochene</translation>
    </message>
    <message>
        <source>Back to the list</source>
        <translation>Zurück zur Liste</translation>
    </message>
    <message>
        <source>Beside the best</source>
        <translation>Neben dem besten</translation>
    </message>
    <message>
        <source>Checked just now: its %1 seals are as they were sealed, each in its place.</source>
        <translation>Eben kontrolliert: Seine %1 Siegel sind unverändert, jedes an seinem Platz.</translation>
    </message>
    <message>
        <source>Checked just now: its seal is as it was sealed, in its place.</source>
        <translation>Eben kontrolliert: Sein Siegel ist unverändert und an seinem Platz.</translation>
    </message>
    <message>
        <source>Choose the run in the list to see its own sheet again.</source>
        <translation>Den Durchgang in der Liste wählen, um wieder sein eigenes Blatt zu sehen.</translation>
    </message>
    <message>
        <source>Compare</source>
        <translation>Vergleichen</translation>
    </message>
    <message>
        <source>Compare %1</source>
        <translation>%1 vergleichen</translation>
    </message>
    <message>
        <source>Every run</source>
        <translation>Alle Durchgänge</translation>
    </message>
    <message>
        <source>Every run again</source>
        <translation>Wieder alle Durchgänge</translation>
    </message>
    <message>
        <source>Find</source>
        <translation>Suchen</translation>
    </message>
    <message>
        <source>Find runs by job, roll or run</source>
        <translation>Durchgänge nach Auftrag, Rolle oder Nummer suchen</translation>
    </message>
    <message>
        <source>Job, roll or run</source>
        <translation>Auftrag, Rolle oder Durchgang</translation>
    </message>
    <message>
        <source>Keep to compare</source>
        <translation>Zum Vergleich merken</translation>
    </message>
    <message>
        <source>Kept on this PC: %1 stands above the list.</source>
        <translation>Auf diesem PC aufbewahrt: %1 steht über der Liste.</translation>
    </message>
    <message>
        <source>Kept searches</source>
        <translation>Gemerkte Suchen</translation>
    </message>
    <message>
        <source>No run has been begun in this logbook yet.</source>
        <translation>In diesem Protokollbuch wurde noch kein Durchgang begonnen.</translation>
    </message>
    <message>
        <source>No run of this logbook has that in it.</source>
        <translation>Kein Durchgang dieses Protokollbuchs enthält das.</translation>
    </message>
    <message>
        <source>No run of this logbook stands so just now.</source>
        <translation>Kein Durchgang dieses Protokollbuchs steht gerade so.</translation>
    </message>
    <message>
        <source>Older runs</source>
        <translation>Ältere Durchgänge</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Offene</translation>
    </message>
    <message>
        <source>Or scan the code of a printed sheet</source>
        <translation>Oder den Code eines gedruckten Blatts scannen</translation>
    </message>
    <message>
        <source>Pictures and files</source>
        <translation>Bilder und Dateien</translation>
    </message>
    <message>
        <source>Run %1: %2.</source>
        <translation>Durchgang %1: %2.</translation>
    </message>
    <message>
        <source>Runs</source>
        <translation>Durchgänge</translation>
    </message>
    <message>
        <source>Save the list of runs</source>
        <translation>Liste der Durchgänge speichern</translation>
    </message>
    <message>
        <source>Saved: %1</source>
        <translation>Gespeichert: %1</translation>
    </message>
    <message>
        <source>Sent back</source>
        <translation>Zurückgegeben</translation>
    </message>
    <message>
        <source>Set up the list</source>
        <translation>Liste einrichten</translation>
    </message>
    <message>
        <source>Tables (*.csv);;Data (*.json)</source>
        <translation>Tabellen (*.csv);;Daten (*.json)</translation>
    </message>
    <message>
        <source>The list could not be written to %1: %2</source>
        <translation>Die Liste konnte nicht nach %1 geschrieben werden: %2</translation>
    </message>
    <message>
        <source>The logbook is not open in this window.</source>
        <translation>Das Protokollbuch ist in diesem Fenster nicht offen.</translation>
    </message>
    <message>
        <source>The search %1 is forgotten.</source>
        <translation>Die Suche %1 ist vergessen.</translation>
    </message>
    <message>
        <source>The sheet is of this logbook: seal %1 is the one that it names.</source>
        <translation>Das Blatt gehört zu diesem Protokollbuch: Siegel %1 ist das, welches es nennt.</translation>
    </message>
    <message>
        <source>The sheet of the chosen run</source>
        <translation>Das Einrichteblatt des gewählten Durchgangs</translation>
    </message>
    <message>
        <source>There is no other completed run of this job and kind on this press yet.</source>
        <translation>An dieser Maschine gibt es noch keinen anderen abgeschlossenen Durchgang dieses Auftrags und dieser Art.</translation>
    </message>
    <message>
        <source>This run beside the best one so far of its job, press and kind</source>
        <translation>Dieser Durchgang neben dem bisher besten von Auftrag, Maschine und Art</translation>
    </message>
    <message>
        <source>To be reviewed: %1</source>
        <translation>Zu prüfen: %1</translation>
    </message>
    <message>
        <source>Void</source>
        <translation>Ungültig</translation>
    </message>
    <message>
        <source>Which runs</source>
        <translation>Welche Durchgänge</translation>
    </message>
    <message>
        <source>abandoned</source>
        <translation>abgebrochen</translation>
    </message>
    <message>
        <source>comparison</source>
        <translation>Vergleich</translation>
    </message>
    <message>
        <source>more than %1 runs</source>
        <translation>mehr als %1 Durchgänge</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>runs</source>
        <translation>Durchgänge</translation>
    </message>
    <message>
        <source>signed</source>
        <translation>abgezeichnet</translation>
    </message>
    <message>
        <source>void</source>
        <translation>ungültig</translation>
    </message>
</context>
<context>
    <name>taut::app::HoldButton</name>
    <message>
        <source>Hold for a moment, or press twice with assistive technology.</source>
        <translation>Einen Moment gedrückt halten, oder mit Bedienhilfe zweimal drücken.</translation>
    </message>
    <message>
        <source>Hold until the bar is full</source>
        <translation>Gedrückt halten, bis der Balken voll ist</translation>
    </message>
</context>
<context>
    <name>taut::app::KeyTable</name>
    <message>
        <source>a name</source>
        <translation>ein Name</translation>
    </message>
    <message>
        <source>a number</source>
        <translation>eine Zahl</translation>
    </message>
    <message>
        <source>a table of its own</source>
        <translation>eine eigene Tabelle</translation>
    </message>
    <message>
        <source>a text</source>
        <translation>ein Text</translation>
    </message>
    <message>
        <source>a whole number</source>
        <translation>eine ganze Zahl</translation>
    </message>
    <message>
        <source>make this table</source>
        <translation>diese Tabelle anlegen</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>nicht gesagt</translation>
    </message>
    <message>
        <source>one of a list</source>
        <translation>eines aus einer Liste</translation>
    </message>
    <message>
        <source>row %1</source>
        <translation>Zeile %1</translation>
    </message>
    <message>
        <source>says</source>
        <translation>sagt</translation>
    </message>
    <message>
        <source>true or false</source>
        <translation>wahr oder falsch</translation>
    </message>
    <message>
        <source>words, with commas</source>
        <translation>Wörter, mit Kommas</translation>
    </message>
    <message>
        <source>x</source>
        <translation>x</translation>
    </message>
    <message>
        <source>y</source>
        <translation>y</translation>
    </message>
</context>
<context>
    <name>taut::app::LeaveStrip</name>
    <message>
        <source>&amp;Quit</source>
        <translation>Programm &amp;verlassen</translation>
    </message>
    <message>
        <source>Run %1 stays open in the logbook: it goes on from the start page, after somebody has signed in and said that the press is safe.</source>
        <translation>Durchgang %1 bleibt im Protokollbuch offen: Er geht von der Startseite weiter, nachdem sich jemand angemeldet und gesagt hat, dass die Maschine sicher ist.</translation>
    </message>
    <message>
        <source>Stay</source>
        <translation>Bleiben</translation>
    </message>
    <message>
        <source>What was changed in %1 is sealed nowhere yet: it is lost when the program ends.</source>
        <translation>Was in %1 geändert wurde, ist noch nirgends versiegelt: Es geht verloren, wenn das Programm endet.</translation>
    </message>
</context>
<context>
    <name>taut::app::LimitBarWidget</name>
    <message>
        <source>At least %1.</source>
        <translation>Mindestens %1.</translation>
    </message>
    <message>
        <source>At most %1.</source>
        <translation>Höchstens %1.</translation>
    </message>
    <message>
        <source>Limit bar</source>
        <translation>Grenzbalken</translation>
    </message>
    <message>
        <source>Limits %1 and %2.</source>
        <translation>Grenzen %1 und %2.</translation>
    </message>
    <message>
        <source>Reading %1, %2.</source>
        <translation>Ablesung %1, %2.</translation>
    </message>
    <message>
        <source>Reading %1, %2: %3.</source>
        <translation>Ablesung %1, %2: %3.</translation>
    </message>
</context>
<context>
    <name>taut::app::ListSetup</name>
    <message>
        <source>Every run that fits, with what each line says</source>
        <translation>Jeder Durchgang, der passt, mit dem, was jede Zeile sagt</translation>
    </message>
    <message>
        <source>Everybody</source>
        <translation>Alle</translation>
    </message>
    <message>
        <source>Forget it</source>
        <translation>Vergessen</translation>
    </message>
    <message>
        <source>Keep this search</source>
        <translation>Diese Suche merken</translation>
    </message>
    <message>
        <source>Keep under this name</source>
        <translation>Unter diesem Namen merken</translation>
    </message>
    <message>
        <source>Name of the search</source>
        <translation>Name der Suche</translation>
    </message>
    <message>
        <source>Not kept. %1</source>
        <translation>Nicht behalten. %1</translation>
    </message>
    <message>
        <source>Only runs in which something outside was accepted</source>
        <translation>Nur Durchgänge, in denen ein Wert außerhalb angenommen wurde</translation>
    </message>
    <message>
        <source>Save this list</source>
        <translation>Liste speichern</translation>
    </message>
    <message>
        <source>What each line says</source>
        <translation>Was jede Zeile sagt</translation>
    </message>
    <message>
        <source>Which runs</source>
        <translation>Welche Durchgänge</translation>
    </message>
    <message>
        <source>Whose run</source>
        <translation>Wessen Durchgang</translation>
    </message>
</context>
<context>
    <name>taut::app::LivePage</name>
    <message>
        <source>A quarter of real time</source>
        <translation>Ein Viertel der echten Zeit</translation>
    </message>
    <message>
        <source>As fast as it goes</source>
        <translation>So schnell es geht</translation>
    </message>
    <message>
        <source>At the practice press: %1</source>
        <translation>An der Übungsmaschine: %1</translation>
    </message>
    <message>
        <source>Charts</source>
        <translation>Kurven</translation>
    </message>
    <message>
        <source>End the lesson</source>
        <translation>Übung beenden</translation>
    </message>
    <message>
        <source>Fastest</source>
        <translation>Schnell</translation>
    </message>
    <message>
        <source>Four times as fast</source>
        <translation>Viermal so schnell</translation>
    </message>
    <message>
        <source>Help with this step: it then counts half</source>
        <translation>Hilfe zu diesem Schritt: Er zählt dann halb</translation>
    </message>
    <message>
        <source>I have looked</source>
        <translation>Nachgesehen</translation>
    </message>
    <message>
        <source>In practice everybody signs with the passphrase "%1" and the PIN %2.</source>
        <translation>Beim Üben zeichnen alle mit der Passphrase „%1“ und der PIN %2.</translation>
    </message>
    <message>
        <source>Not right?</source>
        <translation>Nicht richtig?</translation>
    </message>
    <message>
        <source>Real time</source>
        <translation>Echte Zeit</translation>
    </message>
    <message>
        <source>Stopped</source>
        <translation>Steht</translation>
    </message>
    <message>
        <source>Tell what is done here. Then do it at the press, and answer.</source>
        <translation>Sagen, was hier getan wird. Dann an der Maschine tun und antworten.</translation>
    </message>
    <message>
        <source>Tell why.</source>
        <translation>Sagen, warum.</translation>
    </message>
    <message>
        <source>The press says otherwise: %1</source>
        <translation>Die Maschine sagt anderes: %1</translation>
    </message>
    <message>
        <source>This PC does not keep up: time goes more slowly.</source>
        <translation>Dieser PC kommt nicht nach: Die Zeit läuft langsamer.</translation>
    </message>
    <message>
        <source>This practice run is over. The press goes on until you end the lesson.</source>
        <translation>Dieser Übungsdurchgang ist zu Ende. Die Maschine läuft weiter, bis die Übung beendet wird.</translation>
    </message>
    <message>
        <source>Time stands still</source>
        <translation>Die Zeit steht still</translation>
    </message>
    <message>
        <source>To the pr&amp;ocedure</source>
        <translation>Zum Ab&amp;lauf</translation>
    </message>
    <message>
        <source>To the practice press</source>
        <translation>Zur Übungsmaschine</translation>
    </message>
</context>
<context>
    <name>taut::app::LogbookCard</name>
    <message>
        <source>%1 holds every seal of the logbook: %2.</source>
        <translation>%1 enthält jedes Siegel des Protokollbuchs: %2.</translation>
    </message>
    <message>
        <source>%1 is behind: it lacks %2 seals.</source>
        <translation>%1 ist zurück: %2 Siegel fehlen.</translation>
    </message>
    <message>
        <source>%1 seals made since are then no longer in the logbook, only in the file that is kept.</source>
        <translation>%1 seither entstandene Siegel sind dann nicht mehr im Protokollbuch, nur noch in der aufbewahrten Datei.</translation>
    </message>
    <message>
        <source>A copy is the whole logbook, with open runs and with what people sign in with. It is read again and verified before it gets its name; the newest %1 of this logbook stay.</source>
        <translation>Eine Kopie ist das ganze Protokollbuch, mit offenen Durchgängen und allem, womit man sich anmeldet. Sie wird zurückgelesen und verifiziert, bevor sie ihren Namen bekommt; die neuesten %1 dieses Protokollbuchs bleiben.</translation>
    </message>
    <message>
        <source>A supervisor who has signed in looks after this.</source>
        <translation>Darum kümmert sich eine angemeldete Aufsicht.</translation>
    </message>
    <message>
        <source>An older copy gave way: %1.</source>
        <translation>Eine ältere Kopie wurde ersetzt: %1.</translation>
    </message>
    <message>
        <source>At work…</source>
        <translation>In Arbeit…</translation>
    </message>
    <message>
        <source>Choose the mirror's folder…</source>
        <translation>Ordner des Spiegels auswählen…</translation>
    </message>
    <message>
        <source>Copied to %1: read again and in order, %2 seals.</source>
        <translation>Kopiert nach %1: zurückgelesen und in Ordnung, %2 Siegel.</translation>
    </message>
    <message>
        <source>Copies</source>
        <translation>Kopien</translation>
    </message>
    <message>
        <source>Copy every week, to a folder…</source>
        <translation>Jede Woche kopieren, in einen Ordner…</translation>
    </message>
    <message>
        <source>Copy now, to a folder or a stick…</source>
        <translation>Jetzt kopieren, in einen Ordner oder auf einen Stick…</translation>
    </message>
    <message>
        <source>Every week into %1.</source>
        <translation>Jede Woche nach %1.</translation>
    </message>
    <message>
        <source>From a copy everything comes back, from a mirror every sealed record. What will happen is said before it does, and what lies here now is kept.</source>
        <translation>Aus einer Kopie kommt alles zurück, aus einem Spiegel jeder versiegelte Eintrag. Was geschehen wird, steht vorher da, und was jetzt hier liegt, wird aufbewahrt.</translation>
    </message>
    <message>
        <source>It holds %1 seals; the logbook here holds %2.</source>
        <translation>Darin sind %1 Siegel; das Protokollbuch hier enthält %2.</translation>
    </message>
    <message>
        <source>Logbooks (*.logbook)</source>
        <translation>Protokollbücher (*.logbook)</translation>
    </message>
    <message>
        <source>Mirror</source>
        <translation>Spiegel</translation>
    </message>
    <message>
        <source>No copy is made by itself. Choose a folder, and one is made there every week, beside whatever is done here.</source>
        <translation>Keine Kopie entsteht von selbst. Einen Ordner auswählen, und jede Woche entsteht dort eine, neben allem, was hier gemacht wird.</translation>
    </message>
    <message>
        <source>No mirror is kept. A mirror is a second file in a folder of your choice: another disk, a stick, another machine. Every seal goes there as soon as it is made; no PIN, no key and no open run does.</source>
        <translation>Es gibt keinen Spiegel. Ein Spiegel ist eine zweite Datei in einem Ordner Ihrer Wahl: andere Platte, Stick, anderer Rechner. Jedes Siegel kommt sofort dorthin; keine PIN, kein Schlüssel und kein offener Durchgang.</translation>
    </message>
    <message>
        <source>None has been made there yet.</source>
        <translation>Dort ist noch keine entstanden.</translation>
    </message>
    <message>
        <source>One is being made…</source>
        <translation>Eine entsteht gerade…</translation>
    </message>
    <message>
        <source>One is due, and could not be made.</source>
        <translation>Eine ist fällig und konnte nicht entstehen.</translation>
    </message>
    <message>
        <source>Restore from a copy…</source>
        <translation>Aus Kopie wiederherstellen…</translation>
    </message>
    <message>
        <source>Restore the logbook</source>
        <translation>Protokollbuch wiederherstellen</translation>
    </message>
    <message>
        <source>Restore the logbook from %1</source>
        <translation>Protokollbuch aus %1 wiederherstellen</translation>
    </message>
    <message>
        <source>Restored and in order: %1 seals. %2 of %3 people can sign in.</source>
        <translation>Wiederhergestellt und in Ordnung: %1 Siegel. %2 von %3 Personen können sich anmelden.</translation>
    </message>
    <message>
        <source>Stop the mirror</source>
        <translation>Spiegel beenden</translation>
    </message>
    <message>
        <source>Stop the weekly copies</source>
        <translation>Wöchentliche Kopien beenden</translation>
    </message>
    <message>
        <source>The copy is verified first, and refused by the first thing wrong. What lies here now is kept beside it under a name with the date. Then everybody signs in again; of a mirror, with what they sign in with here.</source>
        <translation>Die Kopie wird zuerst verifiziert und beim ersten Fehler abgewiesen. Was jetzt hier liegt, bleibt daneben unter einem Namen mit Datum. Dann melden sich alle neu an; bei einem Spiegel mit dem, womit sie sich hier anmelden.</translation>
    </message>
    <message>
        <source>The folder %1 is being looked at…</source>
        <translation>Der Ordner %1 wird angesehen…</translation>
    </message>
    <message>
        <source>The folder is being looked at…</source>
        <translation>Der Ordner wird angesehen…</translation>
    </message>
    <message>
        <source>The last was made on %1, and verified then.</source>
        <translation>Die letzte entstand am %1 und wurde dabei verifiziert.</translation>
    </message>
    <message>
        <source>The last was made on %1, read again and in order: %2 seals.</source>
        <translation>Die letzte entstand am %1, zurückgelesen und in Ordnung: %2 Siegel.</translation>
    </message>
    <message>
        <source>The logbook, kept twice</source>
        <translation>Das Protokollbuch, zweifach geführt</translation>
    </message>
    <message>
        <source>The way back</source>
        <translation>Der Weg zurück</translation>
    </message>
    <message>
        <source>There is no mirror in %1 now. The logbook goes on without it.</source>
        <translation>In %1 ist jetzt kein Spiegel. Das Protokollbuch läuft ohne ihn weiter.</translation>
    </message>
    <message>
        <source>This logbook: %1</source>
        <translation>Dieses Protokollbuch: %1</translation>
    </message>
    <message>
        <source>What lay here before is kept: %1.</source>
        <translation>Was vorher hier lag, ist aufbewahrt: %1.</translation>
    </message>
    <message>
        <source>Where are the weekly copies to lie?</source>
        <translation>Wo sollen die wöchentlichen Kopien liegen?</translation>
    </message>
    <message>
        <source>Where is the copy to lie?</source>
        <translation>Wo soll die Kopie liegen?</translation>
    </message>
    <message>
        <source>Where is the mirror to be kept?</source>
        <translation>Wo soll der Spiegel geführt werden?</translation>
    </message>
    <message>
        <source>Which copy or mirror?</source>
        <translation>Welche Kopie oder welcher Spiegel?</translation>
    </message>
</context>
<context>
    <name>taut::app::MainWindow</name>
    <message>
        <source>&amp;As the system</source>
        <translation>&amp;Wie das System</translation>
    </message>
    <message>
        <source>&amp;Dark</source>
        <translation>&amp;Dunkel</translation>
    </message>
    <message>
        <source>&amp;High contrast</source>
        <translation>&amp;Hoher Kontrast</translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation>Hel&amp;l</translation>
    </message>
    <message>
        <source>&amp;Nothing moves by itself</source>
        <translation>&amp;Nichts bewegt sich von selbst</translation>
    </message>
    <message>
        <source>A card is one step: where to stand, what to do, and one answer. A reading is judged while you type.</source>
        <translation>Eine Karte ist ein Schritt: wo man steht, was zu tun ist, eine Antwort. Eine Ablesung wird beim Tippen beurteilt.</translation>
    </message>
    <message>
        <source>Begin a new logbook</source>
        <translation>Neues Protokollbuch beginnen</translation>
    </message>
    <message>
        <source>Help</source>
        <translation>Hilfe</translation>
    </message>
    <message>
        <source>Help for this page (F1)</source>
        <translation>Hilfe zu dieser Seite (F1)</translation>
    </message>
    <message>
        <source>Help, or F1, tells about the page you are on. This look round is there, too.</source>
        <translation>Hilfe, oder F1, erklärt die Seite, auf der Sie sind. Auch dieser Rundgang steht dort.</translation>
    </message>
    <message>
        <source>History</source>
        <translation>Verlauf</translation>
    </message>
    <message>
        <source>History: what was set, read and signed, each with its sheet to print.</source>
        <translation>Verlauf: was eingestellt, abgelesen und abgezeichnet wurde, je mit Blatt zum Drucken.</translation>
    </message>
    <message>
        <source>How the screen looks: light or dark, size of the text, whether anything moves</source>
        <translation>Wie der Bildschirm aussieht: hell oder dunkel, Textgröße, ob sich etwas bewegt</translation>
    </message>
    <message>
        <source>I have read it</source>
        <translation>Ich habe es gelesen</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Tasten</translation>
    </message>
    <message>
        <source>Keys on the screen</source>
        <translation>Bildschirmtasten</translation>
    </message>
    <message>
        <source>Open another logbook</source>
        <translation>Anderes Protokollbuch öffnen</translation>
    </message>
    <message>
        <source>Practice</source>
        <translation>Üben</translation>
    </message>
    <message>
        <source>Practice: a press that answers as a real one does, and nothing of it counts.</source>
        <translation>Üben: eine Maschine, die antwortet wie eine echte, und nichts davon zählt.</translation>
    </message>
    <message>
        <source>Run</source>
        <translation>Durchgang</translation>
    </message>
    <message>
        <source>Run: choose what is to run, see what follows from it, and go from step to step.</source>
        <translation>Durchgang: wählen, was laufen soll, sehen, was daraus folgt, und Schritt für Schritt gehen.</translation>
    </message>
    <message>
        <source>Screen…</source>
        <translation>Bildschirm…</translation>
    </message>
    <message>
        <source>Seen</source>
        <translation>Gesehen</translation>
    </message>
    <message>
        <source>Shop</source>
        <translation>Betrieb</translation>
    </message>
    <message>
        <source>Shop: people, presses and jobs, and the copies of the logbook.</source>
        <translation>Betrieb: Personen, Maschinen und Aufträge und die Kopien des Protokollbuchs.</translation>
    </message>
    <message>
        <source>Sign in here: every answer is somebody's. Lock the screen when you walk away.</source>
        <translation>Hier anmelden: Jede Antwort gehört jemandem. Beim Weggehen den Bildschirm sperren.</translation>
    </message>
    <message>
        <source>Tautweb</source>
        <translation>Tautweb</translation>
    </message>
    <message>
        <source>Tautweb leads you from a cold press to the point where ink can go on. It moves nothing and stops nothing: the press manual and local rules come first.</source>
        <translation>Tautweb führt von der kalten Maschine bis dorthin, wo Farbe einlaufen kann. Es bewegt und stoppt nichts: Maschinenhandbuch und örtliche Regeln gehen vor.</translation>
    </message>
    <message>
        <source>Text %1 %</source>
        <translation>Text %1 %</translation>
    </message>
    <message>
        <source>The sheet</source>
        <translation>Das Blatt</translation>
    </message>
    <message>
        <source>The taut line is the run at a glance: slack is not begun, drawn tight is done, parted is held up.</source>
        <translation>Die straffe Linie zeigt den Durchgang auf einen Blick: lose ist nicht begonnen, straff ist erledigt, gerissen ist aufgehalten.</translation>
    </message>
    <message>
        <source>The training record</source>
        <translation>Der Übungsnachweis</translation>
    </message>
    <message>
        <source>What the lesson came to</source>
        <translation>Ergebnis der Übung</translation>
    </message>
</context>
<context>
    <name>taut::app::MakeSafeCard</name>
    <message>
        <source>&amp;Go on with the run</source>
        <translation>Durch&amp;gang fortsetzen</translation>
    </message>
    <message>
        <source>A break, or something else to do</source>
        <translation>Eine Pause oder etwas anderes zu tun</translation>
    </message>
    <message>
        <source>First make the press safe</source>
        <translation>Zuerst die Maschine sicher machen</translation>
    </message>
    <message>
        <source>Go to the press, look at each of these now, and say it:</source>
        <translation>Zur Maschine gehen, jedes davon jetzt ansehen und sagen:</translation>
    </message>
    <message>
        <source>Nobody was at the screen</source>
        <translation>Niemand war am Bildschirm</translation>
    </message>
    <message>
        <source>Power or air was gone</source>
        <translation>Strom oder Luft war weg</translation>
    </message>
    <message>
        <source>Somebody else stopped the press</source>
        <translation>Jemand anderes hat die Maschine angehalten</translation>
    </message>
    <message>
        <source>Take over and &amp;go on with the run</source>
        <translation>Übernehmen und Durch&amp;gang fortsetzen</translation>
    </message>
    <message>
        <source>The page was left, the run kept open</source>
        <translation>Die Seite wurde verlassen, der Durchgang offen gelassen</translation>
    </message>
    <message>
        <source>The press was given back to use at %1. Where you were is kept.</source>
        <translation>Die Maschine wurde um %1 wieder freigegeben. Wo Sie waren, ist erhalten.</translation>
    </message>
    <message>
        <source>The program ended under the run</source>
        <translation>Das Programm endete während des Durchgangs</translation>
    </message>
    <message>
        <source>The program ended under the run, some time after %1. Where you were is kept.</source>
        <translation>Das Programm endete während des Durchgangs, einige Zeit nach %1. Wo Sie waren, ist erhalten.</translation>
    </message>
    <message>
        <source>The run was in the hands of %1. If you go on it is yours, and the vital steps of this stage are asked again.</source>
        <translation>Der Durchgang war in den Händen von %1. Setzen Sie ihn fort, ist er Ihrer, und die kritischen Schritte dieses Abschnitts werden neu verlangt.</translation>
    </message>
    <message>
        <source>The run was interrupted at %1: %2. Where you were is kept.</source>
        <translation>Der Durchgang wurde um %1 unterbrochen: %2. Wo Sie waren, ist erhalten.</translation>
    </message>
    <message>
        <source>This screen moves nothing and stops nothing.</source>
        <translation>Dieser Bildschirm bewegt nichts und stoppt nichts.</translation>
    </message>
    <message>
        <source>Writing…</source>
        <translation>Wird geschrieben…</translation>
    </message>
</context>
<context>
    <name>taut::app::MotionArea</name>
    <message>
        <source>&amp;Back</source>
        <translation>Zurüc&amp;k</translation>
    </message>
    <message>
        <source>&amp;Done: %1</source>
        <translation>Erle&amp;digt: %1</translation>
    </message>
    <message>
        <source>&amp;Done: it moved as expected</source>
        <translation>Erle&amp;digt: Es bewegte sich wie erwartet</translation>
    </message>
    <message>
        <source>&amp;Everyone is clear and I am at the control</source>
        <translation>All&amp;e sind außer Reichweite, ich bin am Bedienteil</translation>
    </message>
    <message>
        <source>This screen moves nothing and stops nothing.</source>
        <translation>Dieser Bildschirm bewegt nichts und stoppt nichts.</translation>
    </message>
</context>
<context>
    <name>taut::app::Narrowing</name>
    <message>
        <source>Between two days</source>
        <translation>Zwischen zwei Tagen</translation>
    </message>
    <message>
        <source>Every job</source>
        <translation>Alle Aufträge</translation>
    </message>
    <message>
        <source>Every press</source>
        <translation>Alle Maschinen</translation>
    </message>
    <message>
        <source>Every substrate</source>
        <translation>Alle Bedruckstoffe</translation>
    </message>
    <message>
        <source>First day</source>
        <translation>Erster Tag</translation>
    </message>
    <message>
        <source>From the beginning</source>
        <translation>Von Anfang an</translation>
    </message>
    <message>
        <source>How far back</source>
        <translation>Wie weit zurück</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Auftrag</translation>
    </message>
    <message>
        <source>Last day</source>
        <translation>Letzter Tag</translation>
    </message>
    <message>
        <source>One month</source>
        <translation>Ein Monat</translation>
    </message>
    <message>
        <source>One year</source>
        <translation>Ein Jahr</translation>
    </message>
    <message>
        <source>Press</source>
        <translation>Maschine</translation>
    </message>
    <message>
        <source>Substrate</source>
        <translation>Bedruckstoff</translation>
    </message>
    <message>
        <source>Three months</source>
        <translation>Drei Monate</translation>
    </message>
    <message>
        <source>Two years</source>
        <translation>Zwei Jahre</translation>
    </message>
</context>
<context>
    <name>taut::app::NoLogbookPage</name>
    <message>
        <source>&amp;Try again</source>
        <translation>Erneu&amp;t versuchen</translation>
    </message>
    <message>
        <source>Begin a &amp;new logbook</source>
        <translation>&amp;Neues Protokollbuch beginnen</translation>
    </message>
    <message>
        <source>Begin a &amp;new logbook here</source>
        <translation>Hier &amp;neues Protokollbuch beginnen</translation>
    </message>
    <message>
        <source>Begin a &amp;new logbook…</source>
        <translation>&amp;Neues Protokollbuch beginnen…</translation>
    </message>
    <message>
        <source>Look round in the &amp;demo shop</source>
        <translation>Im &amp;Vorführbetrieb umsehen</translation>
    </message>
    <message>
        <source>No logbook is open</source>
        <translation>Kein Protokollbuch ist offen</translation>
    </message>
    <message>
        <source>Open &amp;another logbook…</source>
        <translation>&amp;Anderes Protokollbuch öffnen…</translation>
    </message>
    <message>
        <source>Open to &amp;read only</source>
        <translation>Nu&amp;r zum Lesen öffnen</translation>
    </message>
    <message>
        <source>The logbook holds your presses, your people and every signed run. Begin it here, or open the one that you have. Language and size of the text are chosen under "Screen" above.</source>
        <translation>Das Protokollbuch hält Ihre Maschinen, Ihre Leute und jeden abgezeichneten Durchgang fest. Hier eines beginnen oder das vorhandene öffnen. Sprache und Textgröße werden oben unter „Bildschirm“ gewählt.</translation>
    </message>
    <message>
        <source>There is no logbook here yet</source>
        <translation>Hier gibt es noch kein Protokollbuch</translation>
    </message>
    <message>
        <source>Welcome: this PC keeps no logbook yet</source>
        <translation>Willkommen: Dieser PC führt noch kein Protokollbuch</translation>
    </message>
</context>
<context>
    <name>taut::app::NumberPad</name>
    <message>
        <source>Delete the last character</source>
        <translation>Letztes Zeichen löschen</translation>
    </message>
    <message>
        <source>Key %1</source>
        <translation>Taste %1</translation>
    </message>
    <message>
        <source>Space</source>
        <translation>Leerzeichen</translation>
    </message>
    <message>
        <source>delete</source>
        <translation>löschen</translation>
    </message>
    <message>
        <source>space</source>
        <translation>Leerzeichen</translation>
    </message>
</context>
<context>
    <name>taut::app::OnceCard</name>
    <message>
        <source>Done: take it off the screen</source>
        <translation>Erledigt: vom Bildschirm nehmen</translation>
    </message>
    <message>
        <source>Give it to them, and to nobody else: it is shown only now. They choose their name at the top of this window, type the code, and choose a PIN and a passphrase. It is good once.</source>
        <translation>Nur dieser Person geben und niemandem sonst: Er wird nur jetzt gezeigt. Sie wählt oben in diesem Fenster ihren Namen, tippt den Code und wählt PIN und Passphrase. Er gilt einmal.</translation>
    </message>
    <message>
        <source>No printer is set up on this PC. Save the badge as PDF and print it elsewhere.</source>
        <translation>An diesem PC ist kein Drucker eingerichtet. Ausweis als PDF speichern und anderswo drucken.</translation>
    </message>
    <message>
        <source>PDF files (*.pdf)</source>
        <translation>PDF-Dateien (*.pdf)</translation>
    </message>
    <message>
        <source>Print it now: its code is kept nowhere and cannot be shown again. With its PIN it signs in your name. Where a passphrase is asked for, scan it, then type its PIN. A badge made before this one no longer works.</source>
        <translation>Jetzt drucken: Sein Code wird nirgends aufbewahrt und kann nicht noch einmal gezeigt werden. Mit seiner PIN zeichnet er in Ihrem Namen ab. Wo eine Passphrase verlangt wird, ihn scannen, dann seine PIN tippen. Ein früherer Ausweis gilt nicht mehr.</translation>
    </message>
    <message>
        <source>Print the badge</source>
        <translation>Ausweis drucken</translation>
    </message>
    <message>
        <source>Save it as PDF</source>
        <translation>Als PDF speichern</translation>
    </message>
    <message>
        <source>Save the badge</source>
        <translation>Ausweis speichern</translation>
    </message>
    <message>
        <source>Saved: %1. Whoever can read this file has the badge: delete it when it is printed.</source>
        <translation>Gespeichert: %1. Wer diese Datei lesen kann, hat den Ausweis: nach dem Drucken löschen.</translation>
    </message>
    <message>
        <source>Sent to the printer.</source>
        <translation>An den Drucker geschickt.</translation>
    </message>
    <message>
        <source>The badge as a scanner reads it</source>
        <translation>Der Ausweis, wie ein Scanner ihn liest</translation>
    </message>
    <message>
        <source>The badge of %1</source>
        <translation>Der Ausweis von %1</translation>
    </message>
    <message>
        <source>The first-use code of %1</source>
        <translation>Der Erstcode von %1</translation>
    </message>
</context>
<context>
    <name>taut::app::OtherHandsCard</name>
    <message>
        <source>%1 signs in here and goes on with it. Steps, targets and the sheet may be looked at meanwhile.</source>
        <translation>%1 meldet sich hier an und setzt ihn fort. Schritte, Sollwerte und Einrichteblatt dürfen derweil angesehen werden.</translation>
    </message>
    <message>
        <source>Speak with %1 first: where the work stands, who is at the press, which stops are held. Then take it over: the vital steps of this stage are asked again, and a stop that was held is held anew.

If it goes on with %1: lock the screen, and let %1 sign in. Steps, targets and the sheet may be looked at meanwhile.</source>
        <translation>Zuerst mit %1 sprechen: wo die Arbeit steht, wer an der Maschine ist, welche Halte gehalten werden. Dann übernehmen: Die kritischen Schritte dieses Abschnitts werden neu verlangt, und ein gehaltener Halt wird neu gesetzt.

Wenn es mit %1 weitergeht: Bildschirm sperren, und %1 meldet sich an. Schritte, Sollwerte und Einrichteblatt dürfen derweil angesehen werden.</translation>
    </message>
    <message>
        <source>Ta&amp;ke over the run</source>
        <translation>Durchgang über&amp;nehmen</translation>
    </message>
    <message>
        <source>This run is in the hands of %1</source>
        <translation>Dieser Durchgang ist in den Händen von %1</translation>
    </message>
    <message>
        <source>This screen moves nothing and stops nothing.</source>
        <translation>Dieser Bildschirm bewegt nichts und stoppt nichts.</translation>
    </message>
</context>
<context>
    <name>taut::app::PracticeBand</name>
    <message>
        <source>Nothing here moves or stops a machine. In an emergency use the press.</source>
        <translation>Nichts hier bewegt oder stoppt eine Maschine. Im Notfall gilt die Maschine selbst.</translation>
    </message>
    <message>
        <source>PRACTICE</source>
        <translation>ÜBUNG</translation>
    </message>
</context>
<context>
    <name>taut::app::PracticePage</name>
    <message>
        <source>&amp;Back to the lesson</source>
        <translation>&amp;Zurück zur Übung</translation>
    </message>
    <message>
        <source>Run %1 is open at this PC, on a real press, and nobody is to mistake one for the other. Sign it off or abandon it; then the practice press opens.</source>
        <translation>Durchgang %1 ist an diesem PC offen, an einer echten Maschine, und niemand soll das eine für das andere halten. Abzeichnen oder abbrechen; dann öffnet die Übungsmaschine.</translation>
    </message>
    <message>
        <source>The practice press is closed</source>
        <translation>Die Übungsmaschine ist zu</translation>
    </message>
    <message>
        <source>To the &amp;run</source>
        <translation>Zum &amp;Durchgang</translation>
    </message>
</context>
<context>
    <name>taut::app::PressPicture</name>
    <message>
        <source>The practice press</source>
        <translation>Die Übungsmaschine</translation>
    </message>
</context>
<context>
    <name>taut::app::ReadOnlyStrip</name>
    <message>
        <source>&amp;Another logbook…</source>
        <translation>&amp;Anderes Protokollbuch…</translation>
    </message>
    <message>
        <source>&amp;Try to open it</source>
        <translation>Öffnen &amp;versuchen</translation>
    </message>
    <message>
        <source>Open to read only: nothing can be entered, changed or signed here.</source>
        <translation>Nur zum Lesen offen: Hier kann nichts eingegeben, geändert oder abgezeichnet werden.</translation>
    </message>
</context>
<context>
    <name>taut::app::ReadingArea</name>
    <message>
        <source>&amp;Enter it again</source>
        <translation>&amp;Erneut eingeben</translation>
    </message>
    <message>
        <source>&amp;Enter the reading</source>
        <translation>Ablesung &amp;eingeben</translation>
    </message>
    <message>
        <source>&amp;Number pad</source>
        <translation>Ziffer&amp;nblock</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Ablesung</translation>
    </message>
    <message>
        <source>Type the value with its unit.</source>
        <translation>Den Wert mit seiner Einheit eintippen.</translation>
    </message>
    <message>
        <source>Unit %1</source>
        <translation>Einheit %1</translation>
    </message>
</context>
<context>
    <name>taut::app::RecordActs</name>
    <message>
        <source>%1 — stands: %2</source>
        <translation>%1 — gilt: %2</translation>
    </message>
    <message>
        <source>A supervisor reviews a run and makes it void.</source>
        <translation>Eine Aufsicht prüft einen Durchgang und erklärt ihn für ungültig.</translation>
    </message>
    <message>
        <source>Correct</source>
        <translation>Berichtigen</translation>
    </message>
    <message>
        <source>Correct run %1</source>
        <translation>Durchgang %1 berichtigen</translation>
    </message>
    <message>
        <source>It stays in the record, marked void on every page, and nothing can be said of it afterwards. There is no way back.</source>
        <translation>Er bleibt im Protokoll, auf jeder Seite als ungültig gekennzeichnet, und danach kann nichts mehr dazu gesagt werden. Es gibt keinen Weg zurück.</translation>
    </message>
    <message>
        <source>Look through its sheet first. Your name, the time and your signature stand beside it for good.</source>
        <translation>Zuerst das Einrichteblatt durchsehen. Ihr Name, die Zeit und Ihre Unterschrift stehen für immer daneben.</translation>
    </message>
    <message>
        <source>Make it void</source>
        <translation>Für ungültig erklären</translation>
    </message>
    <message>
        <source>Make run %1 void</source>
        <translation>Durchgang %1 für ungültig erklären</translation>
    </message>
    <message>
        <source>Make void</source>
        <translation>Ungültig machen</translation>
    </message>
    <message>
        <source>No single step: see the remark</source>
        <translation>Kein einzelner Schritt: siehe Bemerkung</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <source>Review</source>
        <translation>Prüfung</translation>
    </message>
    <message>
        <source>Review run %1</source>
        <translation>Durchgang %1 prüfen</translation>
    </message>
    <message>
        <source>Seen, and accepted as it stands</source>
        <translation>Gesehen und angenommen, wie er steht</translation>
    </message>
    <message>
        <source>Sent back: something is to be put right</source>
        <translation>Zurückgegeben: etwas ist richtigzustellen</translation>
    </message>
    <message>
        <source>Sign in to review or correct this run.</source>
        <translation>Zum Prüfen oder Berichtigen dieses Durchgangs anmelden.</translation>
    </message>
    <message>
        <source>Sign the correction</source>
        <translation>Berichtigung unterschreiben</translation>
    </message>
    <message>
        <source>Sign the review</source>
        <translation>Prüfung unterschreiben</translation>
    </message>
    <message>
        <source>The logbook is open to read only.</source>
        <translation>Das Protokollbuch ist nur zum Lesen offen.</translation>
    </message>
    <message>
        <source>What is wrong</source>
        <translation>Was falsch ist</translation>
    </message>
    <message>
        <source>What it should be</source>
        <translation>Wie es sein soll</translation>
    </message>
    <message>
        <source>What was signed stays as it is; the correction stands beside it, with what stood, and is reviewed anew.</source>
        <translation>Was abgezeichnet wurde, bleibt, wie es ist; die Berichtigung steht daneben, mit dem, was galt, und wird neu geprüft.</translation>
    </message>
    <message>
        <source>What you say of it</source>
        <translation>Was Sie dazu sagen</translation>
    </message>
    <message>
        <source>Why it is corrected</source>
        <translation>Warum er berichtigt wird</translation>
    </message>
    <message>
        <source>Why it is void</source>
        <translation>Warum er ungültig ist</translation>
    </message>
    <message>
        <source>must be there when it is sent back</source>
        <translation>nötig, wenn er zurückgegeben wird</translation>
    </message>
    <message>
        <source>with its unit, if it has one</source>
        <translation>mit Einheit, wenn sie eine hat</translation>
    </message>
</context>
<context>
    <name>taut::app::ReportPane</name>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>No printer is set up on this PC. Save the sheet as PDF and print it elsewhere.</source>
        <translation>An diesem PC ist kein Drucker eingerichtet. Blatt als PDF speichern und anderswo drucken.</translation>
    </message>
    <message>
        <source>PDF files (*.pdf)</source>
        <translation>PDF-Dateien (*.pdf)</translation>
    </message>
    <message>
        <source>Page 1 alone</source>
        <translation>Nur Seite 1</translation>
    </message>
    <message>
        <source>Page back</source>
        <translation>Seite zurück</translation>
    </message>
    <message>
        <source>Page on</source>
        <translation>Seite vor</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Drucken</translation>
    </message>
    <message>
        <source>Save as PDF</source>
        <translation>Als PDF speichern</translation>
    </message>
    <message>
        <source>Save the sheet</source>
        <translation>Blatt speichern</translation>
    </message>
    <message>
        <source>Saved: %1</source>
        <translation>Gespeichert: %1</translation>
    </message>
    <message>
        <source>Sent to the printer.</source>
        <translation>An den Drucker geschickt.</translation>
    </message>
</context>
<context>
    <name>taut::app::ReturnPanel</name>
    <message>
        <source>%1 less now</source>
        <translation>jetzt %1 weniger</translation>
    </message>
    <message>
        <source>%1 more now</source>
        <translation>jetzt %1 mehr</translation>
    </message>
    <message>
        <source>%1 · %2, %3</source>
        <translation>%1 · %2, %3</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1, accepted by %2</source>
        <translation>%1, angenommen von %2</translation>
    </message>
    <message>
        <source>%1, signed by %2</source>
        <translation>%1, abgezeichnet von %2</translation>
    </message>
    <message>
        <source>At the hand-over</source>
        <translation>Bei der Übergabe</translation>
    </message>
    <message>
        <source>Back to what is to run</source>
        <translation>Zurück zu dem, was laufen soll</translation>
    </message>
    <message>
        <source>Difference</source>
        <translation>Unterschied</translation>
    </message>
    <message>
        <source>For comparison only: what counts is what is computed now, for this roll.</source>
        <translation>Nur zum Vergleich: Es zählt, was jetzt für diese Rolle berechnet wird.</translation>
    </message>
    <message>
        <source>Job %1 ran here: %2</source>
        <translation>Auftrag %1 lief hier: %2</translation>
    </message>
    <message>
        <source>Last time</source>
        <translation>Letztes Mal</translation>
    </message>
    <message>
        <source>Nothing that can be compared was read in that run.</source>
        <translation>In jenem Durchgang wurde nichts Vergleichbares abgelesen.</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Jetzt</translation>
    </message>
    <message>
        <source>Read by, at</source>
        <translation>Von, um</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>What helped: %1</source>
        <translation>Was geholfen hat: %1</translation>
    </message>
    <message>
        <source>What was set the last time, beside what is computed now</source>
        <translation>Was letztes Mal eingestellt war, neben dem, was jetzt berechnet wird</translation>
    </message>
    <message>
        <source>Written down then</source>
        <translation>Damals notiert</translation>
    </message>
    <message>
        <source>not known this time</source>
        <translation>diesmal nicht bekannt</translation>
    </message>
    <message>
        <source>outside then, accepted</source>
        <translation>damals außerhalb, angenommen</translation>
    </message>
    <message>
        <source>outside today's window</source>
        <translation>außerhalb des heutigen Fensters</translation>
    </message>
    <message>
        <source>the same</source>
        <translation>gleich</translation>
    </message>
</context>
<context>
    <name>taut::app::ReviewCard</name>
    <message>
        <source>%1 Answers given too fast, or before the time was over: %2. The sheet says which.</source>
        <translation>%1 Zu schnell oder vor Ablauf der Zeit gegebene Antworten: %2. Das Einrichteblatt sagt welche.</translation>
    </message>
    <message>
        <source>%1 Steps that were corrected: %2.</source>
        <translation>%1 Berichtigte Schritte: %2.</translation>
    </message>
    <message>
        <source>%1 steps are open: the run cannot be signed yet.</source>
        <translation>%1 Schritte sind offen: Der Durchgang kann noch nicht abgezeichnet werden.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>&amp;Seal it as it stands here</source>
        <translation>So &amp;siegeln, wie es hier steht</translation>
    </message>
    <message>
        <source>&amp;Sign</source>
        <translation>&amp;Abzeichnen</translation>
    </message>
    <message>
        <source>&amp;Sign: done as it stands here</source>
        <translation>&amp;Abzeichnen: erledigt, wie es hier steht</translation>
    </message>
    <message>
        <source>A stop is still held: the run can be signed when whoever holds it has given it up.</source>
        <translation>Ein Halt wird noch gehalten: Der Durchgang kann abgezeichnet werden, wenn er aufgehoben ist von dem, der ihn hält.</translation>
    </message>
    <message>
        <source>Answer</source>
        <translation>Antwort</translation>
    </message>
    <message>
        <source>By, at</source>
        <translation>Von, um</translation>
    </message>
    <message>
        <source>Look through the run, then sign</source>
        <translation>Durchgang durchsehen, dann abzeichnen</translation>
    </message>
    <message>
        <source>Nothing is open, and nothing deviates.</source>
        <translation>Nichts ist offen, und nichts weicht ab.</translation>
    </message>
    <message>
        <source>Nothing is open. Deviations: %1.</source>
        <translation>Nichts ist offen. Abweichungen: %1.</translation>
    </message>
    <message>
        <source>Passphrase</source>
        <translation>Passphrase</translation>
    </message>
    <message>
        <source>Passphrase, or scan your badge</source>
        <translation>Passphrase, oder Ihren Ausweis scannen</translation>
    </message>
    <message>
        <source>R&amp;emarks, for whoever comes next</source>
        <translation>B&amp;emerkungen, für die nächste Person</translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation>Bemerkungen</translation>
    </message>
    <message>
        <source>Sealing…</source>
        <translation>Wird versiegelt…</translation>
    </message>
    <message>
        <source>Signing says: abandoned. Your name, the time and your signature, made with your own key, stand in the record for good.</source>
        <translation>Abzeichnen heißt: abgebrochen. Ihr Name, die Zeit und Ihre Signatur, mit Ihrem eigenen Schlüssel, stehen für immer im Protokoll.</translation>
    </message>
    <message>
        <source>Signing says: performed. Your name, the time and your signature, made with your own key, stand in the record for good.</source>
        <translation>Abzeichnen heißt: durchgeführt. Ihr Name, die Zeit und Ihre Signatur, mit Ihrem eigenen Schlüssel, stehen für immer im Protokoll.</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Schritt</translation>
    </message>
    <message>
        <source>Steps of this run</source>
        <translation>Schritte dieses Durchgangs</translation>
    </message>
    <message>
        <source>This run is done and not sealed yet. Whoever seals it signs for it.</source>
        <translation>Diese Einrichtung ist fertig und noch nicht gesiegelt. Wer sie siegelt, unterschreibt dafür.</translation>
    </message>
    <message>
        <source>This run is in the hands of %1, who signs it. Esc leads back to where it can be taken over.</source>
        <translation>Dieser Durchgang ist in den Händen von %1, diese Person zeichnet ihn ab. Esc führt zurück zum Übernehmen.</translation>
    </message>
    <message>
        <source>This run was abandoned and is not sealed yet. Whoever seals it signs for it.</source>
        <translation>Diese Einrichtung wurde abgebrochen und ist noch nicht gesiegelt. Wer sie siegelt, unterschreibt dafür.</translation>
    </message>
    <message>
        <source>Whoever signs must be signed in, and their role must allow it.</source>
        <translation>Wer abzeichnet, muss angemeldet sein, und die Funktion muss es erlauben.</translation>
    </message>
    <message>
        <source>accepted by %1: %2</source>
        <translation>angenommen von %1: %2</translation>
    </message>
    <message>
        <source>before its time was over: %1</source>
        <translation>vor Ablauf der Zeit: %1</translation>
    </message>
</context>
<context>
    <name>taut::app::RollForm</name>
    <message>
        <source>&amp;Back</source>
        <translation>Zurüc&amp;k</translation>
    </message>
    <message>
        <source>A roll at &amp;hand</source>
        <translation>Vor&amp;handene Rolle</translation>
    </message>
    <message>
        <source>A roll at hand</source>
        <translation>Vorhandene Rolle</translation>
    </message>
    <message>
        <source>Choose</source>
        <translation>Auswählen</translation>
    </message>
    <message>
        <source>Core, inner diameter</source>
        <translation>Hülse, Innendurchmesser</translation>
    </message>
    <message>
        <source>Its tag, if you type it</source>
        <translation>Ihr Rollenzettel, wenn getippt</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>Mass</source>
        <translation>Masse</translation>
    </message>
    <message>
        <source>Material</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>None of these: I type what its label says</source>
        <translation>Keine davon: Ich tippe, was auf dem Rollenetikett steht</translation>
    </message>
    <message>
        <source>Not known</source>
        <translation>Unbekannt</translation>
    </message>
    <message>
        <source>Number on its label</source>
        <translation>Nummer auf dem Rollenetikett</translation>
    </message>
    <message>
        <source>Of another material, which this job does not take:</source>
        <translation>Aus anderem Material, das dieser Auftrag nicht nimmt:</translation>
    </message>
    <message>
        <source>Outer diameter</source>
        <translation>Außendurchmesser</translation>
    </message>
    <message>
        <source>Splices inside</source>
        <translation>Klebestellen in der Rolle</translation>
    </message>
    <message>
        <source>Use th&amp;is roll</source>
        <translation>D&amp;iese Rolle nehmen</translation>
    </message>
    <message>
        <source>Wall of the core</source>
        <translation>Wandung der Hülse</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>Winding</source>
        <translation>Wicklung</translation>
    </message>
    <message>
        <source>a number, if known</source>
        <translation>eine Zahl, wenn bekannt</translation>
    </message>
    <message>
        <source>face inside</source>
        <translation>Druckseite innen</translation>
    </message>
    <message>
        <source>face outside</source>
        <translation>Druckseite außen</translation>
    </message>
    <message>
        <source>if known</source>
        <translation>wenn bekannt</translation>
    </message>
    <message>
        <source>if measured</source>
        <translation>wenn gemessen</translation>
    </message>
    <message>
        <source>if weighed</source>
        <translation>wenn gewogen</translation>
    </message>
    <message>
        <source>or scan it</source>
        <translation>oder scannen</translation>
    </message>
    <message>
        <source>straight across</source>
        <translation>gerade darüber</translation>
    </message>
    <message>
        <source>with its unit</source>
        <translation>mit Einheit</translation>
    </message>
</context>
<context>
    <name>taut::app::RulerCheck</name>
    <message>
        <source>&amp;Set the screen by it</source>
        <translation>Bildschirm danach ein&amp;stellen</translation>
    </message>
    <message>
        <source>A bar of 100 mm on this screen</source>
        <translation>Ein Balken von 100 mm auf diesem Bildschirm</translation>
    </message>
    <message>
        <source>A bar of 4 in on this screen</source>
        <translation>Ein Balken von 4 in auf diesem Bildschirm</translation>
    </message>
    <message>
        <source>For example 3 15/16 in</source>
        <translation>Zum Beispiel 3 15/16 in</translation>
    </message>
    <message>
        <source>For example 97 mm</source>
        <translation>Zum Beispiel 97 mm</translation>
    </message>
    <message>
        <source>Hold a ruler to this bar. It should be 100 mm long from mark to mark. How long is it?</source>
        <translation>Ein Lineal an diesen Balken halten. Er sollte von Marke zu Marke 100 mm lang sein. Wie lang ist er?</translation>
    </message>
    <message>
        <source>Hold a ruler to this bar. It should be 4 in long from mark to mark. How long is it?</source>
        <translation>Ein Lineal an diesen Balken halten. Er sollte von Marke zu Marke 4 in lang sein. Wie lang ist er?</translation>
    </message>
    <message>
        <source>The screen is taken to be as large as it says.</source>
        <translation>Der Bildschirm gilt als so groß, wie er angibt.</translation>
    </message>
    <message>
        <source>The screen was set by a ruler: %1 of what it says.</source>
        <translation>Der Bildschirm wurde mit einem Lineal eingestellt: %1 seiner Angabe.</translation>
    </message>
    <message>
        <source>Understood: the ruler</source>
        <translation>Verstanden: das Lineal</translation>
    </message>
    <message>
        <source>What the ruler says</source>
        <translation>Was das Lineal zeigt</translation>
    </message>
</context>
<context>
    <name>taut::app::RunLine</name>
    <message>
        <source>%1 of web used up</source>
        <translation>%1 Bahn verbraucht</translation>
    </message>
    <message>
        <source>%1 readings outside at first</source>
        <translation>%1 Ablesungen zuerst außerhalb</translation>
    </message>
    <message>
        <source>1 reading outside at first</source>
        <translation>1 Ablesung zuerst außerhalb</translation>
    </message>
    <message>
        <source>Customer</source>
        <translation>Kunde</translation>
    </message>
    <message>
        <source>How long it took</source>
        <translation>Wie lange es dauerte</translation>
    </message>
    <message>
        <source>Kind of run</source>
        <translation>Art des Durchgangs</translation>
    </message>
    <message>
        <source>Number of the run</source>
        <translation>Nummer des Durchgangs</translation>
    </message>
    <message>
        <source>Press</source>
        <translation>Maschine</translation>
    </message>
    <message>
        <source>Readings outside</source>
        <translation>Ablesungen außerhalb</translation>
    </message>
    <message>
        <source>Substrate</source>
        <translation>Bedruckstoff</translation>
    </message>
    <message>
        <source>Title of the job</source>
        <translation>Titel des Auftrags</translation>
    </message>
    <message>
        <source>VOID</source>
        <translation>UNGÜLTIG</translation>
    </message>
    <message>
        <source>Web used up</source>
        <translation>Verbrauchte Bahn</translation>
    </message>
    <message>
        <source>What became of it</source>
        <translation>Was daraus wurde</translation>
    </message>
    <message>
        <source>When it began</source>
        <translation>Wann er begann</translation>
    </message>
    <message>
        <source>Whose run</source>
        <translation>Wessen Durchgang</translation>
    </message>
    <message>
        <source>accepted by %1</source>
        <translation>angenommen von %1</translation>
    </message>
    <message>
        <source>corrected, to be reviewed</source>
        <translation>berichtigt, zu prüfen</translation>
    </message>
    <message>
        <source>sent back</source>
        <translation>zurückgegeben</translation>
    </message>
    <message>
        <source>took %1 min</source>
        <translation>dauerte %1 min</translation>
    </message>
</context>
<context>
    <name>taut::app::RunView</name>
    <message>
        <source>&amp;View of the press</source>
        <translation>&amp;Bild der Maschine</translation>
    </message>
    <message>
        <source>Change the roll</source>
        <translation>Rolle wechseln</translation>
    </message>
    <message>
        <source>Every target is computed anew for the new roll; answers that it touches are asked again.</source>
        <translation>Jeder Sollwert wird für die neue Rolle neu berechnet; betroffene Antworten werden neu verlangt.</translation>
    </message>
    <message>
        <source>Mo&amp;re…</source>
        <translation>Meh&amp;r…</translation>
    </message>
    <message>
        <source>S&amp;teps</source>
        <translation>Schri&amp;tte</translation>
    </message>
    <message>
        <source>The run</source>
        <translation>Der Durchgang</translation>
    </message>
    <message>
        <source>Why (F2)</source>
        <translation>Warum (F2)</translation>
    </message>
</context>
<context>
    <name>taut::app::ScenarioForm</name>
    <message>
        <source>1. Do it, with everything shown</source>
        <translation>1. Tun, alles wird gezeigt</translation>
    </message>
    <message>
        <source>2. Again, telling the steps</source>
        <translation>2. Noch einmal, Schritte nennen</translation>
    </message>
    <message>
        <source>3. Again, telling the key points</source>
        <translation>3. Noch einmal, Kernpunkte nennen</translation>
    </message>
    <message>
        <source>4. Again, telling the reasons</source>
        <translation>4. Noch einmal, Gründe nennen</translation>
    </message>
    <message>
        <source>A scenario of your own</source>
        <translation>Eine eigene Aufgabe</translation>
    </message>
    <message>
        <source>Afterwards</source>
        <translation>Hinterher</translation>
    </message>
    <message>
        <source>And so many more, by chance</source>
        <translation>Und so viele weitere, zufällig</translation>
    </message>
    <message>
        <source>At once</source>
        <translation>Sofort</translation>
    </message>
    <message>
        <source>Free practice</source>
        <translation>Freies Üben</translation>
    </message>
    <message>
        <source>How it is gone through</source>
        <translation>Wie sie durchgegangen wird</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Auftrag</translation>
    </message>
    <message>
        <source>Number of the chances</source>
        <translation>Nummer der Zufälle</translation>
    </message>
    <message>
        <source>Practise it</source>
        <translation>Jetzt üben</translation>
    </message>
    <message>
        <source>Press</source>
        <translation>Maschine</translation>
    </message>
    <message>
        <source>Roll</source>
        <translation>Rolle</translation>
    </message>
    <message>
        <source>Save it as a file…</source>
        <translation>Als Datei speichern…</translation>
    </message>
    <message>
        <source>Save the scenario</source>
        <translation>Aufgabe speichern</translation>
    </message>
    <message>
        <source>Scenarios (*.toml)</source>
        <translation>Aufgaben (*.toml)</translation>
    </message>
    <message>
        <source>Test: nothing is shown, and it counts</source>
        <translation>Prüfung: Nichts wird gezeigt, und sie zählt</translation>
    </message>
    <message>
        <source>To the scenarios</source>
        <translation>Zu den Aufgaben</translation>
    </message>
    <message>
        <source>What is not as it should be</source>
        <translation>Was nicht ist, wie es sein soll</translation>
    </message>
    <message>
        <source>What it is called</source>
        <translation>Wie sie heißt</translation>
    </message>
    <message>
        <source>What the press says otherwise is shown</source>
        <translation>Was die Maschine anders sagt, wird gezeigt</translation>
    </message>
    <message>
        <source>scenario</source>
        <translation>aufgabe</translation>
    </message>
</context>
<context>
    <name>taut::app::ScreenKeys</name>
    <message>
        <source>Capital letters</source>
        <translation>Großbuchstaben</translation>
    </message>
    <message>
        <source>Delete the last character</source>
        <translation>Letztes Zeichen löschen</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Eingabe</translation>
    </message>
    <message>
        <source>Key %1</source>
        <translation>Taste %1</translation>
    </message>
    <message>
        <source>Keys on the screen</source>
        <translation>Bildschirmtasten</translation>
    </message>
    <message>
        <source>Put the keys away</source>
        <translation>Tasten ausblenden</translation>
    </message>
    <message>
        <source>Space</source>
        <translation>Leerzeichen</translation>
    </message>
    <message>
        <source>capitals</source>
        <translation>groß</translation>
    </message>
    <message>
        <source>delete</source>
        <translation>löschen</translation>
    </message>
    <message>
        <source>put away</source>
        <translation>ausblenden</translation>
    </message>
    <message>
        <source>space</source>
        <translation>leer</translation>
    </message>
</context>
<context>
    <name>taut::app::SecretLine</name>
    <message>
        <source>PIN of this badge</source>
        <translation>PIN dieses Ausweises</translation>
    </message>
    <message>
        <source>Passphrase, or badge</source>
        <translation>Passphrase oder Ausweis</translation>
    </message>
</context>
<context>
    <name>taut::app::Session</name>
    <message>
        <source>Supervisor of the practice press</source>
        <translation>Aufsicht der Übungsmaschine</translation>
    </message>
</context>
<context>
    <name>taut::app::SetupPage</name>
    <message>
        <source>%1 minutes</source>
        <translation>%1 Minuten</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>A badge to sign with</source>
        <translation>Ein Ausweis zum Abzeichnen</translation>
    </message>
    <message>
        <source>A new first-use code for %1</source>
        <translation>Ein neuer Erstcode für %1</translation>
    </message>
    <message>
        <source>A supervisor changes roles and lets people choose anew.</source>
        <translation>Eine Aufsicht ändert Funktionen und lässt Personen neu wählen.</translation>
    </message>
    <message>
        <source>Another PIN or passphrase</source>
        <translation>Andere PIN oder Passphrase</translation>
    </message>
    <message>
        <source>Another role for %1</source>
        <translation>Andere Funktion für %1</translation>
    </message>
    <message>
        <source>Back into service</source>
        <translation>Wieder in Dienst</translation>
    </message>
    <message>
        <source>Change it</source>
        <translation>Ändern</translation>
    </message>
    <message>
        <source>Change my PIN or passphrase</source>
        <translation>Meine PIN oder Passphrase ändern</translation>
    </message>
    <message>
        <source>Change the role</source>
        <translation>Funktion ändern</translation>
    </message>
    <message>
        <source>Changed.</source>
        <translation>Geändert.</translation>
    </message>
    <message>
        <source>Changed. The badge of before no longer works: make another.</source>
        <translation>Geändert. Der frühere Ausweis gilt nicht mehr: einen neuen machen.</translation>
    </message>
    <message>
        <source>Enrol somebody</source>
        <translation>Person eintragen</translation>
    </message>
    <message>
        <source>Enrol them</source>
        <translation>Eintragen</translation>
    </message>
    <message>
        <source>For whoever was shut out, or forgot. What they chose before no longer works; what they signed stays theirs.</source>
        <translation>Für alle, die ausgesperrt sind oder es vergessen haben. Was sie vorher wählten, gilt nicht mehr; was sie abgezeichnet haben, bleibt ihres.</translation>
    </message>
    <message>
        <source>Give a new code</source>
        <translation>Neuen Code geben</translation>
    </message>
    <message>
        <source>Give a new first-use code</source>
        <translation>Neuen Erstcode geben</translation>
    </message>
    <message>
        <source>Its code is printed once. It opens your key together with a PIN of its own, of six digits or more: the badge alone is worth nothing to a finder.</source>
        <translation>Sein Code wird einmal gedruckt. Er öffnet Ihren Schlüssel zusammen mit einer eigenen PIN aus sechs oder mehr Ziffern: Der Ausweis allein nützt einem Finder nichts.</translation>
    </message>
    <message>
        <source>Keep the logbook twice</source>
        <translation>Protokollbuch zweifach führen</translation>
    </message>
    <message>
        <source>Make me a badge</source>
        <translation>Mir einen Ausweis machen</translation>
    </message>
    <message>
        <source>Make the badge</source>
        <translation>Ausweis machen</translation>
    </message>
    <message>
        <source>May work alone at…</source>
        <translation>Darf allein arbeiten an …</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>New PIN</source>
        <translation>Neue PIN</translation>
    </message>
    <message>
        <source>New PIN, once more</source>
        <translation>Neue PIN, noch einmal</translation>
    </message>
    <message>
        <source>New passphrase</source>
        <translation>Neue Passphrase</translation>
    </message>
    <message>
        <source>New passphrase, once more</source>
        <translation>Neue Passphrase, noch einmal</translation>
    </message>
    <message>
        <source>PIN of the badge</source>
        <translation>PIN des Ausweises</translation>
    </message>
    <message>
        <source>PIN of the badge, once more</source>
        <translation>PIN des Ausweises, noch einmal</translation>
    </message>
    <message>
        <source>PIN until now</source>
        <translation>Bisherige PIN</translation>
    </message>
    <message>
        <source>Passp&amp;hrase until now, or scan the badge</source>
        <translation>Bisherige Passp&amp;hrase, oder Ausweis scannen</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personen</translation>
    </message>
    <message>
        <source>Presses, jobs, substrates, procedures</source>
        <translation>Maschinen, Aufträge, Bedruckstoffe, Abläufe</translation>
    </message>
    <message>
        <source>Role</source>
        <translation>Funktion</translation>
    </message>
    <message>
        <source>Sign in to change something here.</source>
        <translation>Anmelden, um hier etwas zu ändern.</translation>
    </message>
    <message>
        <source>Take %1 back into service</source>
        <translation>%1 wieder in Dienst nehmen</translation>
    </message>
    <message>
        <source>Take %1 out of service</source>
        <translation>%1 außer Dienst nehmen</translation>
    </message>
    <message>
        <source>Take out of service</source>
        <translation>Außer Dienst nehmen</translation>
    </message>
    <message>
        <source>They can no longer sign in. Nothing that they signed goes away, and their number is never given to anybody else.</source>
        <translation>Diese Person kann sich nicht mehr anmelden. Nichts, was sie abgezeichnet hat, geht verloren, und ihre Nummer bekommt nie jemand anders.</translation>
    </message>
    <message>
        <source>They get a code, with which they choose a PIN and a passphrase that nobody else knows. The name and the number stay theirs for ever.</source>
        <translation>Sie bekommt einen Code, mit dem sie PIN und Passphrase wählt, die niemand sonst kennt. Name und Nummer bleiben für immer ihre.</translation>
    </message>
    <message>
        <source>This PC</source>
        <translation>Dieser PC</translation>
    </message>
    <message>
        <source>This PC locks itself after</source>
        <translation>Dieser PC sperrt sich nach</translation>
    </message>
    <message>
        <source>Who works here</source>
        <translation>Wer hier arbeitet</translation>
    </message>
    <message>
        <source>You show that you know the old ones, and nobody else has to be there. With another passphrase you get another key to sign with, and a badge of before no longer works; what you signed stays yours.</source>
        <translation>Sie zeigen, dass Sie die alten kennen; niemand sonst muss dabei sein. Mit anderer Passphrase bekommen Sie einen anderen Schlüssel zum Abzeichnen, und ein früherer Ausweis gilt nicht mehr; was Sie abgezeichnet haben, bleibt Ihres.</translation>
    </message>
    <message>
        <source>as the crew knows them</source>
        <translation>wie die Mannschaft sie kennt</translation>
    </message>
    <message>
        <source>cannot sign in</source>
        <translation>kann sich nicht anmelden</translation>
    </message>
    <message>
        <source>has not chosen PIN and passphrase yet</source>
        <translation>hat PIN und Passphrase noch nicht gewählt</translation>
    </message>
    <message>
        <source>left empty, it stays as it is</source>
        <translation>leer gelassen bleibt es, wie es ist</translation>
    </message>
    <message>
        <source>out of service</source>
        <translation>außer Dienst</translation>
    </message>
    <message>
        <source>shut out after %1 wrong tries</source>
        <translation>ausgesperrt nach %1 Fehlversuchen</translation>
    </message>
    <message>
        <source>signs with a passphrase</source>
        <translation>zeichnet mit Passphrase ab</translation>
    </message>
    <message>
        <source>signs with passphrase or badge</source>
        <translation>zeichnet mit Passphrase oder Ausweis ab</translation>
    </message>
    <message>
        <source>six digits or more</source>
        <translation>sechs Ziffern oder mehr</translation>
    </message>
    <message>
        <source>wrong tries just now: %1</source>
        <translation>Fehlversuche gerade: %1</translation>
    </message>
</context>
<context>
    <name>taut::app::SignInStrip</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Choose PIN and passphrase</source>
        <translation>PIN und Passphrase wählen</translation>
    </message>
    <message>
        <source>Lock</source>
        <translation>Bildschirm sperren</translation>
    </message>
    <message>
        <source>PIN</source>
        <translation>PIN</translation>
    </message>
    <message>
        <source>Sign in</source>
        <translation>Anmelden</translation>
    </message>
    <message>
        <source>Who are you?</source>
        <translation>Wer sind Sie?</translation>
    </message>
    <message>
        <source>Your PIN</source>
        <translation>Ihre PIN</translation>
    </message>
</context>
<context>
    <name>taut::app::StartPage</name>
    <message>
        <source>%1 is withdrawn from use since %2 by %3: %4</source>
        <translation>%1 ist gesperrt seit %2 durch %3: %4</translation>
    </message>
    <message>
        <source>%1 sent run %2 (job %3) back and asks: %4</source>
        <translation>%1 hat Durchgang %2 (Auftrag %3) zurückgegeben und fragt: %4</translation>
    </message>
    <message>
        <source>%1, job %2: the run of %3 has begun and is not signed (%4).</source>
        <translation>%1, Auftrag %2: Der Durchgang von %3 ist begonnen und nicht abgezeichnet (%4).</translation>
    </message>
    <message>
        <source>And %1 more that were asked before: they stand in the history, under "Sent back".</source>
        <translation>Und %1 weitere von früher: sie stehen im Verlauf unter „Zurückgegeben“.</translation>
    </message>
    <message>
        <source>Begin the run</source>
        <translation>Durchgang beginnen</translation>
    </message>
    <message>
        <source>Give it back to use</source>
        <translation>Wieder freigeben</translation>
    </message>
    <message>
        <source>Go on with it</source>
        <translation>Fortsetzen</translation>
    </message>
    <message>
        <source>Look at it</source>
        <translation>Ansehen</translation>
    </message>
    <message>
        <source>Nothing is chosen yet.</source>
        <translation>Noch ist nichts ausgewählt.</translation>
    </message>
    <message>
        <source>Press %1</source>
        <translation>Maschine %1</translation>
    </message>
    <message>
        <source>Run %1 has begun and is not signed.</source>
        <translation>Durchgang %1 ist begonnen und nicht abgezeichnet.</translation>
    </message>
    <message>
        <source>Sign in first: a run belongs to somebody.</source>
        <translation>Zuerst anmelden: Ein Durchgang gehört jemandem.</translation>
    </message>
    <message>
        <source>The logbook is not open yet.</source>
        <translation>Das Protokollbuch ist noch nicht offen.</translation>
    </message>
    <message>
        <source>The roll that is to run</source>
        <translation>Die Rolle, die laufen soll</translation>
    </message>
    <message>
        <source>This job ran here: %1. See what was set</source>
        <translation>Dieser Auftrag lief hier: %1. Ansehen, was eingestellt war</translation>
    </message>
    <message>
        <source>This logbook knows nobody yet: its first supervisor is enrolled first.</source>
        <translation>Dieses Protokollbuch kennt noch niemanden: Zuerst wird seine erste Aufsicht eingetragen.</translation>
    </message>
    <message>
        <source>This press is withdrawn from use.</source>
        <translation>Diese Maschine ist gesperrt.</translation>
    </message>
    <message>
        <source>Two minutes to look round</source>
        <translation>Zwei Minuten zum Umsehen</translation>
    </message>
    <message>
        <source>What is shown is a trial: go back to the real roll first.</source>
        <translation>Gezeigt wird eine Probe: zuerst zur echten Rolle zurückgehen.</translation>
    </message>
    <message>
        <source>What is to run, and on which press</source>
        <translation>Was laufen soll, und auf welcher Maschine</translation>
    </message>
    <message>
        <source>What stands at the top of the list on the right cannot work: change it first.</source>
        <translation>Was oben in der Liste rechts steht, geht so nicht: zuerst das ändern.</translation>
    </message>
    <message>
        <source>What was put right</source>
        <translation>Was behoben wurde</translation>
    </message>
    <message>
        <source>Why a run cannot begin yet</source>
        <translation>Warum noch kein Durchgang beginnen kann</translation>
    </message>
    <message>
        <source>Writing to the logbook.</source>
        <translation>Das Protokollbuch wird geschrieben.</translation>
    </message>
    <message>
        <source>Your role does not begin runs here; practise on the practice press.</source>
        <translation>Ihre Funktion beginnt hier keine Durchgänge; an der Übungsmaschine üben.</translation>
    </message>
</context>
<context>
    <name>taut::app::StepCard</name>
    <message>
        <source>%1 above the upper limit.</source>
        <translation>%1 über der oberen Grenze.</translation>
    </message>
    <message>
        <source>%1 below the lower limit.</source>
        <translation>%1 unter der unteren Grenze.</translation>
    </message>
    <message>
        <source>%1 changed after this was answered. Answer it again.</source>
        <translation>%1 hat sich nach dieser Antwort geändert. Neu antworten.</translation>
    </message>
    <message>
        <source>%1, %2. For this step, this value and this window only. It is printed on the sheet.</source>
        <translation>%1, %2. Nur für diesen Schritt, diesen Wert und dieses Fenster. Es steht auf dem Einrichteblatt.</translation>
    </message>
    <message>
        <source>%1, vital</source>
        <translation>%1, kritisch</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>&amp;Accept the deviation</source>
        <translation>&amp;Abweichung annehmen</translation>
    </message>
    <message>
        <source>&amp;Find what this setting does</source>
        <translation>&amp;Finden, was diese Einstellung bewirkt</translation>
    </message>
    <message>
        <source>Accept this value as a deviation</source>
        <translation>Diesen Wert als Abweichung annehmen</translation>
    </message>
    <message>
        <source>Accepted as a deviation by %1: %2</source>
        <translation>Als Abweichung angenommen von %1: %2</translation>
    </message>
    <message>
        <source>An input changed after this was answered. Answer it again.</source>
        <translation>Eine Eingabe hat sich nach dieser Antwort geändert. Neu antworten.</translation>
    </message>
    <message>
        <source>Answered before its time was over: %1. The sheet says so.</source>
        <translation>Vor Ablauf der Zeit beantwortet: %1. Das Einrichteblatt sagt es.</translation>
    </message>
    <message>
        <source>Answered “%1” by %2, %3.</source>
        <translation>Beantwortet mit „%1“ von %2, %3.</translation>
    </message>
    <message>
        <source>Ask a &amp;supervisor</source>
        <translation>Auf&amp;sicht fragen</translation>
    </message>
    <message>
        <source>Asked again because its stage is done again. Look, and answer anew.</source>
        <translation>Neu gefragt, weil der Abschnitt wiederholt wird. Ansehen und neu antworten.</translation>
    </message>
    <message>
        <source>Back to what is to be &amp;done</source>
        <translation>Zurück zu dem, &amp;was zu tun ist</translation>
    </message>
    <message>
        <source>Does not apply: %1</source>
        <translation>Trifft nicht zu: %1</translation>
    </message>
    <message>
        <source>Hands go in here: only while a stop is held.</source>
        <translation>Hier greifen Hände hinein: nur bei gehaltenem Halt.</translation>
    </message>
    <message>
        <source>It has been given up since.</source>
        <translation>Er wurde seither aufgehoben.</translation>
    </message>
    <message>
        <source>It is %1.</source>
        <translation>Es ist %1.</translation>
    </message>
    <message>
        <source>It is %1: %2.</source>
        <translation>Es ist %1: %2.</translation>
    </message>
    <message>
        <source>Look and say it again: interrupted or handed over since.</source>
        <translation>Ansehen und neu sagen: seither unterbrochen oder übergeben.</translation>
    </message>
    <message>
        <source>Not yet.</source>
        <translation>Noch nicht.</translation>
    </message>
    <message>
        <source>Show what comes &amp;first</source>
        <translation>Zuerst Er&amp;forderliches zeigen</translation>
    </message>
    <message>
        <source>Step %1 of %2</source>
        <translation>Schritt %1 von %2</translation>
    </message>
    <message>
        <source>That is less than the instrument can tell: read it again.</source>
        <translation>Das ist weniger, als das Gerät unterscheiden kann: neu ablesen.</translation>
    </message>
    <message>
        <source>That is not what this step wants. Put it right and answer again.</source>
        <translation>Das ist nicht, was dieser Schritt verlangt. Richtigstellen und neu antworten.</translation>
    </message>
    <message>
        <source>The stop was put on by %1, %2.</source>
        <translation>Den Halt hat %1 gesetzt, %2.</translation>
    </message>
    <message>
        <source>The stop was put on by %1; %2 said so, %3.</source>
        <translation>Den Halt hat %1 gesetzt; gesagt hat es %2, %3.</translation>
    </message>
    <message>
        <source>This is not the tag of roll %1, for which the run was begun. Bring that roll, or change the roll of this run below.</source>
        <translation>Das ist nicht der Rollenzettel von Rolle %1, für die der Durchgang begonnen wurde. Jene Rolle bringen, oder unten die Rolle dieses Durchgangs wechseln.</translation>
    </message>
    <message>
        <source>Try, in this order:</source>
        <translation>Der Reihe nach versuchen:</translation>
    </message>
    <message>
        <source>Why it may &amp;stay as it is</source>
        <translation>Warum er &amp;so bleiben darf</translation>
    </message>
    <message>
        <source>Writing…</source>
        <translation>Wird geschrieben…</translation>
    </message>
</context>
<context>
    <name>taut::app::StepList</name>
    <message>
        <source>%1 of %2 to do</source>
        <translation>%1 von %2 zu tun</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1, vital</source>
        <translation>%1, kritisch</translation>
    </message>
    <message>
        <source>Place %1, %2</source>
        <translation>Standort %1, %2</translation>
    </message>
    <message>
        <source>Steps of this place</source>
        <translation>Schritte dieses Standorts</translation>
    </message>
    <message>
        <source>done</source>
        <translation>erledigt</translation>
    </message>
</context>
<context>
    <name>taut::app::StripCharts</name>
    <message>
        <source>The press itself does not show all of this.</source>
        <translation>Die Maschine selbst zeigt das nicht alles.</translation>
    </message>
</context>
<context>
    <name>taut::app::TagPanel</name>
    <message>
        <source>&amp;Take these over</source>
        <translation>Diese ü&amp;bernehmen</translation>
    </message>
    <message>
        <source>A second bar code of this label, lines added: %1.</source>
        <translation>Ein zweiter Strichcode dieses Etiketts, hinzugefügte Zeilen: %1.</translation>
    </message>
    <message>
        <source>Another roll: take the tag over anew.</source>
        <translation>Andere Rolle: Zettel neu übernehmen.</translation>
    </message>
    <message>
        <source>Compare each line with the label: where a separator was lost, two lines become one.</source>
        <translation>Jede Zeile mit dem Etikett vergleichen: Wo ein Trennzeichen verloren ging, werden zwei Zeilen eine.</translation>
    </message>
    <message>
        <source>P&amp;ut the tag away</source>
        <translation>Zettel w&amp;eglegen</translation>
    </message>
    <message>
        <source>Scan the roll's tag now, whatever has the keyboard.</source>
        <translation>Jetzt den Rollenzettel scannen, wo auch immer die Eingabe steht.</translation>
    </message>
    <message>
        <source>Taken over. What was entered by hand is as it was.</source>
        <translation>Übernommen. Von Hand Eingetragenes ist, wie es war.</translation>
    </message>
    <message>
        <source>That was somebody's badge, not the tag of a roll. It was not kept.</source>
        <translation>Das war ein Ausweis, nicht der Zettel einer Rolle. Er wurde nicht behalten.</translation>
    </message>
    <message>
        <source>The tag read before stays.</source>
        <translation>Der vorher gelesene Zettel bleibt.</translation>
    </message>
    <message>
        <source>This bar code was read before and says nothing new.</source>
        <translation>Dieser Strichcode wurde schon gelesen und sagt nichts Neues.</translation>
    </message>
    <message>
        <source>This is another tag. What the one before had filled is out again.</source>
        <translation>Das ist ein anderer Zettel. Was der davor ausgefüllt hatte, ist wieder heraus.</translation>
    </message>
    <message>
        <source>This is another tag: it takes the place of the one before.</source>
        <translation>Das ist ein anderer Zettel: Er tritt an die Stelle des vorigen.</translation>
    </message>
</context>
<context>
    <name>taut::app::TagTable</name>
    <message>
        <source>%1 %2</source>
        <comment>name and identifier of a line of a tag</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>What the tag says</source>
        <translation>Was der Zettel sagt</translation>
    </message>
</context>
<context>
    <name>taut::app::TagText</name>
    <message>
        <source>Character %1 of %2. %3</source>
        <translation>Zeichen %1 von %2. %3</translation>
    </message>
    <message>
        <source>It ends too early, after character %1. %2</source>
        <translation>Er endet zu früh, nach Zeichen %1. %2</translation>
    </message>
    <message>
        <source>The tag as it was scanned</source>
        <translation>Der Zettel, wie er gescannt wurde</translation>
    </message>
</context>
<context>
    <name>taut::app::TargetList</name>
    <message>
        <source>Choose a line to see why it is what it is.</source>
        <translation>Eine Zeile auswählen, um zu sehen, warum sie so ist.</translation>
    </message>
    <message>
        <source>To be set on the press</source>
        <translation>An der Maschine einzustellen</translation>
    </message>
    <message>
        <source>What cannot work</source>
        <translation>Was nicht geht</translation>
    </message>
    <message>
        <source>What does not fit</source>
        <translation>Was nicht passt</translation>
    </message>
    <message>
        <source>What follows from this</source>
        <translation>Was daraus folgt</translation>
    </message>
</context>
<context>
    <name>taut::app::TautLineWidget</name>
    <message>
        <source>Stage %1, %2</source>
        <translation>Abschnitt %1, %2</translation>
    </message>
    <message>
        <source>Stages of this run</source>
        <translation>Abschnitte dieses Durchgangs</translation>
    </message>
</context>
<context>
    <name>taut::app::ThisPcPage</name>
    <message>
        <source>&amp;Back</source>
        <translation>&amp;Zurück</translation>
    </message>
    <message>
        <source>&amp;Go on</source>
        <translation>&amp;Weiter</translation>
    </message>
    <message>
        <source>&amp;Look round in the demo shop</source>
        <translation>&amp;Im Vorführbetrieb umsehen</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>As each press says</source>
        <translation>Wie jede Maschine sagt</translation>
    </message>
    <message>
        <source>As the press's units say</source>
        <translation>Nach den Einheiten der Maschine</translation>
    </message>
    <message>
        <source>Everybody can choose their own language and units later. In the demo shop nothing counts: it has a logbook of its own.</source>
        <translation>Sprache und Einheiten kann später jeder für sich wählen. Im Vorführbetrieb zählt nichts: Er hat ein eigenes Protokollbuch.</translation>
    </message>
    <message>
        <source>Is the screen as large as it says?</source>
        <translation>Ist der Bildschirm so groß, wie er sagt?</translation>
    </message>
    <message>
        <source>Kept on this PC alone; nothing of it is in the record.</source>
        <translation>Nur auf diesem PC gespeichert; nichts davon steht im Protokoll.</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Sprache</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>US Letter</translation>
    </message>
    <message>
        <source>Metric (mm, N, bar)</source>
        <translation>Metrisch (mm, N, bar)</translation>
    </message>
    <message>
        <source>Paper of the sheets</source>
        <translation>Papier der Blätter</translation>
    </message>
    <message>
        <source>This PC</source>
        <translation>Dieser PC</translation>
    </message>
    <message>
        <source>This PC, before you begin</source>
        <translation>Dieser PC, bevor es losgeht</translation>
    </message>
    <message>
        <source>US (in, lbf, psi)</source>
        <translation>USA (in, lbf, psi)</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Einheiten</translation>
    </message>
</context>
<context>
    <name>taut::app::TimePage</name>
    <message>
        <source>It is being worked out.</source>
        <translation>Es wird gerechnet.</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Auftrag</translation>
    </message>
    <message>
        <source>Kind of run</source>
        <translation>Art des Durchgangs</translation>
    </message>
    <message>
        <source>Press</source>
        <translation>Maschine</translation>
    </message>
    <message>
        <source>Put together by</source>
        <translation>Gruppiert nach</translation>
    </message>
    <message>
        <source>Shift</source>
        <translation>Schicht</translation>
    </message>
    <message>
        <source>Substrate</source>
        <translation>Bedruckstoff</translation>
    </message>
    <message>
        <source>The logbook is not open in this window.</source>
        <translation>Das Protokollbuch ist in diesem Fenster nicht offen.</translation>
    </message>
    <message>
        <source>The sheet of times and losses</source>
        <translation>Das Blatt der Zeiten und Verluste</translation>
    </message>
    <message>
        <source>times</source>
        <translation>Zeiten</translation>
    </message>
</context>
<context>
    <name>taut::app::Told</name>
    <message>
        <source>%1 And %2 more.</source>
        <translation>%1 Und %2 mehr.</translation>
    </message>
    <message>
        <source>%1 signed: %2 %3</source>
        <translation>%1 unterschrieb: %2 %3</translation>
    </message>
    <message>
        <source>%1, %2: %3 of %4 points, %5.</source>
        <translation>%1, %2: %3 von %4 Punkten, %5.</translation>
    </message>
    <message>
        <source>It happened: %1</source>
        <translation>Es geschah: %1</translation>
    </message>
    <message>
        <source>Not right and found: %1. Missed: %2. Named in vain: %3.</source>
        <translation>Nicht in Ordnung und gefunden: %1. Übersehen: %2. Umsonst genannt: %3.</translation>
    </message>
    <message>
        <source>Vital steps missed: %1.</source>
        <translation>Kritische Schritte verfehlt: %1.</translation>
    </message>
    <message>
        <source>Vital steps missed: %1; and %2 more, which the sheet of the attempt names.</source>
        <translation>Kritische Schritte verfehlt: %1; und %2 weitere, die das Blatt des Versuchs nennt.</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>noch nicht</translation>
    </message>
    <message>
        <source>passed</source>
        <translation>bestanden</translation>
    </message>
</context>
<context>
    <name>taut::app::Tour</name>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>On</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>That is enough</source>
        <translation>Das genügt</translation>
    </message>
    <message>
        <source>To work</source>
        <translation>An die Arbeit</translation>
    </message>
</context>
<context>
    <name>taut::app::TrainingPage</name>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>%1 · %2 signed</source>
        <translation>%1 · %2 unterschrieb</translation>
    </message>
    <message>
        <source>%1 · to be taught again</source>
        <translation>%1 · noch einmal zu lehren</translation>
    </message>
    <message>
        <source>&amp;Back to the scenarios</source>
        <translation>&amp;Zurück zu den Aufgaben</translation>
    </message>
    <message>
        <source>An attempt of %1</source>
        <translation>Ein Versuch von %1</translation>
    </message>
    <message>
        <source>Attempts</source>
        <translation>Versuche</translation>
    </message>
    <message>
        <source>Attempts: what still has to be taught again comes first</source>
        <translation>Versuche: Was noch einmal zu lehren ist, steht vorn</translation>
    </message>
    <message>
        <source>Look at it and si&amp;gn</source>
        <translation>Ansehen und &amp;unterschreiben</translation>
    </message>
    <message>
        <source>Nobody whose record you may see has finished a lesson at this PC.</source>
        <translation>Niemand, dessen Nachweis Sie sehen dürfen, hat an diesem PC eine Übung beendet.</translation>
    </message>
    <message>
        <source>See the attempt</source>
        <translation>Den Versuch ansehen</translation>
    </message>
    <message>
        <source>Sign for it</source>
        <translation>Dafür unterschreiben</translation>
    </message>
    <message>
        <source>Sign in first: a record is shown to whose it is, and to trainers.</source>
        <translation>Erst anmelden: Einen Nachweis sieht, wessen er ist, und sehen Ausbilder.</translation>
    </message>
    <message>
        <source>Training record</source>
        <translation>Übungsnachweis</translation>
    </message>
    <message>
        <source>What you saw</source>
        <translation>Was Sie sahen</translation>
    </message>
    <message>
        <source>What you teach again, and how</source>
        <translation>Was Sie noch einmal lehren, und wie</translation>
    </message>
    <message>
        <source>Who practised</source>
        <translation>Wer geübt hat</translation>
    </message>
    <message>
        <source>must be there: it was not passed</source>
        <translation>muss da stehen: nicht bestanden</translation>
    </message>
    <message>
        <source>practised</source>
        <translation>geübt</translation>
    </message>
</context>
<context>
    <name>taut::app::TrialPanel</name>
    <message>
        <source>%1 (real: %2)</source>
        <translation>%1 (echt: %2)</translation>
    </message>
    <message>
        <source>%1 to try</source>
        <translation>%1 zur Probe</translation>
    </message>
    <message>
        <source>%1, job %2, roll %3</source>
        <translation>%1, Auftrag %2, Rolle %3</translation>
    </message>
    <message>
        <source>Back to the real roll</source>
        <translation>Zurück zur echten Rolle</translation>
    </message>
    <message>
        <source>Charts as a picture</source>
        <translation>Diagramme als Bild</translation>
    </message>
    <message>
        <source>Diameter of the roll</source>
        <translation>Durchmesser der Rolle</translation>
    </message>
    <message>
        <source>Nothing here is set by the diameter of a roll.</source>
        <translation>Nichts wird hier nach dem Durchmesser einer Rolle eingestellt.</translation>
    </message>
    <message>
        <source>Nothing is stored, and no run begins from here.</source>
        <translation>Nichts wird gespeichert, und kein Durchgang beginnt von hier.</translation>
    </message>
    <message>
        <source>Pictures (*.png)</source>
        <translation>Bilder (*.png)</translation>
    </message>
    <message>
        <source>Real values again</source>
        <translation>Wieder echte Werte</translation>
    </message>
    <message>
        <source>Speed of the job</source>
        <translation>Geschwindigkeit des Auftrags</translation>
    </message>
    <message>
        <source>Substrate</source>
        <translation>Bedruckstoff</translation>
    </message>
    <message>
        <source>Substrate to try</source>
        <translation>Bedruckstoff zur Probe</translation>
    </message>
    <message>
        <source>TRIAL: not the real roll</source>
        <translation>PROBE: nicht die echte Rolle</translation>
    </message>
    <message>
        <source>Until then the real value is shown.</source>
        <translation>Bis dahin wird der echte Wert gezeigt.</translation>
    </message>
    <message>
        <source>What does not fit</source>
        <translation>Was nicht passt</translation>
    </message>
    <message>
        <source>What else moves</source>
        <translation>Was sich sonst ändert</translation>
    </message>
    <message>
        <source>What is set, in this trial</source>
        <translation>Was in dieser Probe eingestellt wird</translation>
    </message>
    <message>
        <source>What is shown is a trial</source>
        <translation>Gezeigt wird eine Probe</translation>
    </message>
    <message>
        <source>What would follow from the values tried</source>
        <translation>Was aus den Probewerten folgen würde</translation>
    </message>
    <message>
        <source>Width of the web</source>
        <translation>Breite der Bahn</translation>
    </message>
    <message>
        <source>as on the real roll</source>
        <translation>wie bei der echten Rolle</translation>
    </message>
    <message>
        <source>not on the real roll</source>
        <translation>nicht bei der echten Rolle</translation>
    </message>
    <message>
        <source>real roll: %1</source>
        <translation>echte Rolle: %1</translation>
    </message>
</context>
<context>
    <name>taut::app::WaitingPage</name>
    <message>
        <source>%1 deviations</source>
        <translation>%1 Abweichungen</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>%1 · Roll %2</source>
        <translation>%1 · Rolle %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>1 deviation</source>
        <translation>1 Abweichung</translation>
    </message>
    <message>
        <source>Accept %1 runs</source>
        <translation>%1 Durchgänge annehmen</translation>
    </message>
    <message>
        <source>Accept the %1 looked through</source>
        <translation>Die %1 durchgesehenen annehmen</translation>
    </message>
    <message>
        <source>Accept the one looked through</source>
        <translation>Den durchgesehenen annehmen</translation>
    </message>
    <message>
        <source>Accept those looked through</source>
        <translation>Die durchgesehenen annehmen</translation>
    </message>
    <message>
        <source>Constants that drift</source>
        <translation>Driftende Konstanten</translation>
    </message>
    <message>
        <source>I have looked it through</source>
        <translation>Durchgesehen</translation>
    </message>
    <message>
        <source>Look at the new edition</source>
        <translation>Neue Ausgabe ansehen</translation>
    </message>
    <message>
        <source>Nothing waits.</source>
        <translation>Nichts steht an.</translation>
    </message>
    <message>
        <source>Overdue checks</source>
        <translation>Überfällige Prüfungen</translation>
    </message>
    <message>
        <source>Presses out of use</source>
        <translation>Gesperrte Maschinen</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <source>Sent back, not corrected yet</source>
        <translation>Zurückgegeben, noch nicht berichtigt</translation>
    </message>
    <message>
        <source>Sign the reviews</source>
        <translation>Prüfungen unterschreiben</translation>
    </message>
    <message>
        <source>The logbook is not open in this window.</source>
        <translation>Das Protokollbuch ist in diesem Fenster nicht offen.</translation>
    </message>
    <message>
        <source>The sheet of the chosen run</source>
        <translation>Das Blatt des gewählten Durchgangs</translation>
    </message>
    <message>
        <source>This is looked after in the shop.</source>
        <translation>Darum kümmert man sich im Betrieb.</translation>
    </message>
    <message>
        <source>To be reviewed</source>
        <translation>Zu prüfen</translation>
    </message>
    <message>
        <source>To be reviewed: %1. Each is looked through before it is accepted.</source>
        <translation>Zu prüfen: %1. Jeder wird durchgesehen, bevor er angenommen wird.</translation>
    </message>
    <message>
        <source>To be reviewed: something outside was accepted</source>
        <translation>Zu prüfen: ein Wert außerhalb wurde angenommen</translation>
    </message>
    <message>
        <source>To the shop</source>
        <translation>Zum Betrieb</translation>
    </message>
    <message>
        <source>What waits</source>
        <translation>Was ansteht</translation>
    </message>
    <message>
        <source>Wrong tries at the door</source>
        <translation>Fehlversuche beim Anmelden</translation>
    </message>
    <message>
        <source>Your name, the time and your signature stand beside each of them for good: %1</source>
        <translation>Ihr Name, die Zeit und Ihre Unterschrift stehen für immer neben jedem davon: %1</translation>
    </message>
    <message>
        <source>by %1 signed runs</source>
        <translation>aus %1 abgezeichneten Durchgängen</translation>
    </message>
    <message>
        <source>checks</source>
        <translation>pruefungen</translation>
    </message>
    <message>
        <source>last in the run %1</source>
        <translation>zuletzt im Durchgang %1</translation>
    </message>
    <message>
        <source>looked through</source>
        <translation>durchgesehen</translation>
    </message>
    <message>
        <source>not seen done</source>
        <translation>nicht als getan gesehen</translation>
    </message>
    <message>
        <source>since %1</source>
        <translation>seit %1</translation>
    </message>
    <message>
        <source>wrong tries: %1</source>
        <translation>Fehlversuche: %1</translation>
    </message>
</context>
<context>
    <name>taut::app::WeekPage</name>
    <message>
        <source>Press</source>
        <translation>Maschine</translation>
    </message>
    <message>
        <source>The logbook is not open in this window.</source>
        <translation>Das Protokollbuch ist in diesem Fenster nicht offen.</translation>
    </message>
    <message>
        <source>The week on one page</source>
        <translation>Die Woche auf einer Seite</translation>
    </message>
    <message>
        <source>This logbook has no press yet.</source>
        <translation>Dieses Protokollbuch hat noch keine Maschine.</translation>
    </message>
    <message>
        <source>Weeks</source>
        <translation>Wochen</translation>
    </message>
    <message>
        <source>this week</source>
        <translation>diese Woche</translation>
    </message>
    <message>
        <source>to %1</source>
        <translation>bis %1</translation>
    </message>
</context>
<context>
    <name>taut::app::WhatHappened</name>
    <message>
        <source>Begin again, the same</source>
        <translation>Noch einmal, ebenso</translation>
    </message>
    <message>
        <source>Begin again, with other chances</source>
        <translation>Noch einmal, mit anderen Zufällen</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>It came to that because:</source>
        <translation>Dazu kam es, weil:</translation>
    </message>
    <message>
        <source>The step that guards against it: %1</source>
        <translation>Der Schritt, der davor schützt: %1</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>Was geschehen ist</translation>
    </message>
</context>
<context>
    <name>taut::app::WhyPanel</name>
    <message>
        <source>%1, from %2</source>
        <translation>%1, aus: %2</translation>
    </message>
    <message>
        <source>Advice</source>
        <translation>Empfehlung</translation>
    </message>
    <message>
        <source>How it is computed, formula %1</source>
        <translation>Wie es berechnet wird, Formel %1</translation>
    </message>
    <message>
        <source>It cannot be computed. Missing from the files:</source>
        <translation>Es kann nicht berechnet werden. In den Dateien fehlt:</translation>
    </message>
    <message>
        <source>Not with this roll:</source>
        <translation>Nicht mit dieser Rolle:</translation>
    </message>
    <message>
        <source>See</source>
        <translation>Siehe</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <source>This cannot be:</source>
        <translation>Das kann nicht sein:</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>Window, by %1</source>
        <translation>Fenster nach: %1</translation>
    </message>
    <message>
        <source>Window, lowest by %1, highest by %2</source>
        <translation>Fenster, unten nach: %1, oben nach: %2</translation>
    </message>
    <message>
        <source>the drawn path, %1</source>
        <translation>gezeichneter Bahnweg, %1</translation>
    </message>
    <message>
        <source>the reading %1</source>
        <translation>Ablesung %1</translation>
    </message>
    <message>
        <source>the table %1</source>
        <translation>Tabelle %1</translation>
    </message>
    <message>
        <source>the target %1</source>
        <translation>Sollwert %1</translation>
    </message>
    <message>
        <source>this shop's policy %1</source>
        <translation>Vorgabe %1 dieses Betriebs</translation>
    </message>
</context>
<context>
    <name>taut::app::WithdrawnCard</name>
    <message>
        <source>%1, by %2, %3</source>
        <translation>%1, von %2, %3</translation>
    </message>
    <message>
        <source>&amp;Give the press back</source>
        <translation>Maschine wieder frei&amp;geben</translation>
    </message>
    <message>
        <source>A supervisor other than %1 signs in here and gives it back.</source>
        <translation>Eine andere Aufsicht als %1 meldet sich hier an und gibt sie wieder frei.</translation>
    </message>
    <message>
        <source>Look at it, and say what was done before you give it back.</source>
        <translation>Ansehen und sagen, was getan wurde, bevor Sie sie freigeben.</translation>
    </message>
    <message>
        <source>This press is withdrawn from use</source>
        <translation>Diese Maschine ist gesperrt</translation>
    </message>
    <message>
        <source>What was &amp;done to put it right</source>
        <translation>Was zur Behebung getan wur&amp;de</translation>
    </message>
    <message>
        <source>What was done to put it right</source>
        <translation>Was zur Behebung getan wurde</translation>
    </message>
</context>
<context>
    <name>text</name>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>mindestens %1</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>höchstens %1</translation>
    </message>
</context>
</TS>
