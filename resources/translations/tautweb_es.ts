<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
<context>
    <name>Badge</name>
    <message>
        <source>With its PIN this code signs in this person's name. Keep it like a key; when it is lost, tell a supervisor at once.</source>
        <translation>Con su PIN, este código firma en nombre de esta persona. Guárdelo como una llave; si se pierde, avise enseguida a un supervisor.</translation>
    </message>
</context>
<context>
    <name>RunActs</name>
    <message>
        <source>&amp;Correct</source>
        <translation>&amp;Corregir</translation>
    </message>
    <message>
        <source>&amp;Withdraw the press</source>
        <translation>Retirar la má&amp;quina del servicio</translation>
    </message>
    <message>
        <source>A break, or something else to do</source>
        <translation>Una pausa, u otra cosa que hacer</translation>
    </message>
    <message>
        <source>A held stop is its holder's alone: %1 says with their PIN that they are out. If they are away, a supervisor who has seen that nobody is in says so, and why.</source>
        <translation>Un paro mantenido es solo de quien lo mantiene: %1 dice con su PIN que está fuera. Si no está, lo dice, y por qué, un supervisor que ha visto que no hay nadie dentro.</translation>
    </message>
    <message>
        <source>Abandon and seal the run</source>
        <translation>Abandonar y sellar la preparación</translation>
    </message>
    <message>
        <source>Abandon the run</source>
        <translation>Abandonar la preparación</translation>
    </message>
    <message>
        <source>Another stop held</source>
        <translation>Otro paro mantenido</translation>
    </message>
    <message>
        <source>Before the run goes on, the press is made safe first.</source>
        <translation>Antes de que siga la preparación, se asegura la máquina.</translation>
    </message>
    <message>
        <source>Change ro&amp;ll</source>
        <translation>Cambiar &amp;la bobina</translation>
    </message>
    <message>
        <source>Dia&amp;meter</source>
        <translation>Diá&amp;metro</translation>
    </message>
    <message>
        <source>Diameter of the roll, measured now</source>
        <translation>Diámetro de la bobina, medido ahora</translation>
    </message>
    <message>
        <source>Do a stage again</source>
        <translation>Repetir una etapa</translation>
    </message>
    <message>
        <source>Do this stage again</source>
        <translation>Repetir esta etapa</translation>
    </message>
    <message>
        <source>Does not a&amp;pply</source>
        <translation>No &amp;procede</translation>
    </message>
    <message>
        <source>Every target that depends on the diameter is computed anew; answers that it touches are asked again.</source>
        <translation>Cada valor objetivo que depende del diámetro se calcula de nuevo; las respuestas afectadas se preguntan otra vez.</translation>
    </message>
    <message>
        <source>Everybody with hands in the press holds a stop of their own, and gives it up themselves.</source>
        <translation>Todo el que tiene las manos en la máquina mantiene un paro propio, y lo levanta él mismo.</translation>
    </message>
    <message>
        <source>Give up a held stop</source>
        <translation>Levantar un paro mantenido</translation>
    </message>
    <message>
        <source>Give up this stop</source>
        <translation>Levantar este paro</translation>
    </message>
    <message>
        <source>Hand over to somebody else</source>
        <translation>Entregar a otra persona</translation>
    </message>
    <message>
        <source>If it is a supervisor: why not the holder</source>
        <translation>Si es un supervisor: por qué no quien lo mantiene</translation>
    </message>
    <message>
        <source>If it was something else</source>
        <translation>Si fue otra cosa</translation>
    </message>
    <message>
        <source>In a few words</source>
        <translation>En pocas palabras</translation>
    </message>
    <message>
        <source>Interrupt the run</source>
        <translation>Interrumpir la preparación</translation>
    </message>
    <message>
        <source>It stands in the record beside this step, with your name and the time.</source>
        <translation>Queda en el registro junto a este paso, con su nombre y la hora.</translation>
    </message>
    <message>
        <source>Its steps open again, and those of later stages that rest on what it undoes; what was answered before stays in the record.</source>
        <translation>Sus pasos se abren de nuevo, y los de etapas posteriores que se apoyan en lo que deshace; lo respondido antes queda en el registro.</translation>
    </message>
    <message>
        <source>Leave this page, keep the run open</source>
        <translation>Salir de esta página, dejar abierta la preparación</translation>
    </message>
    <message>
        <source>Look through and sign</source>
        <translation>Revisar y firmar</translation>
    </message>
    <message>
        <source>N&amp;ote</source>
        <translation>N&amp;ota</translation>
    </message>
    <message>
        <source>Not known</source>
        <translation>Se desconoce</translation>
    </message>
    <message>
        <source>Now it says “%1”, by %2, %3.</source>
        <translation>Ahora consta «%1», por %2, %3.</translation>
    </message>
    <message>
        <source>Pass the step by</source>
        <translation>Pasar por alto el paso</translation>
    </message>
    <message>
        <source>Pictures and files</source>
        <translation>Imágenes y archivos</translation>
    </message>
    <message>
        <source>Power or air is gone</source>
        <translation>Se fue la corriente o el aire</translation>
    </message>
    <message>
        <source>Sheet of the run as it stands</source>
        <translation>Hoja de la preparación como está</translation>
    </message>
    <message>
        <source>Somebody else stopped the press</source>
        <translation>Otra persona detuvo la máquina</translation>
    </message>
    <message>
        <source>Something else</source>
        <translation>Otra cosa</translation>
    </message>
    <message>
        <source>Take over the run</source>
        <translation>Asumir la preparación</translation>
    </message>
    <message>
        <source>The first answer stays in the record; this one stands beside it.</source>
        <translation>La primera respuesta queda en el registro; esta queda a su lado.</translation>
    </message>
    <message>
        <source>The press is out of use from now on, and every open run on it holds. Only a supervisor other than you gives it back.</source>
        <translation>La máquina queda fuera de uso desde ahora, y toda preparación abierta en ella se detiene. Solo un supervisor que no sea usted la devuelve al servicio.</translation>
    </message>
    <message>
        <source>The right answer</source>
        <translation>La respuesta correcta</translation>
    </message>
    <message>
        <source>The run ends here and is sealed as abandoned. It cannot be taken up again.</source>
        <translation>La preparación termina aquí y se sella como abandonada. No se puede retomar.</translation>
    </message>
    <message>
        <source>The step is passed by, with your reason beside it.</source>
        <translation>El paso se pasa por alto, con su motivo al lado.</translation>
    </message>
    <message>
        <source>The stop of %1</source>
        <translation>El paro de %1</translation>
    </message>
    <message>
        <source>This person holds the stop</source>
        <translation>Esta persona mantiene el paro</translation>
    </message>
    <message>
        <source>This step is vital: a supervisor looks at it here and gives their PIN.</source>
        <translation>Este paso es vital: un supervisor lo mira aquí y da su PIN.</translation>
    </message>
    <message>
        <source>Use this diameter</source>
        <translation>Usar este diámetro</translation>
    </message>
    <message>
        <source>What helped</source>
        <translation>Qué ayudó</translation>
    </message>
    <message>
        <source>What interrupts it</source>
        <translation>Qué la interrumpe</translation>
    </message>
    <message>
        <source>What is to be noted</source>
        <translation>Qué hay que anotar</translation>
    </message>
    <message>
        <source>What is wrong with the press</source>
        <translation>Qué le pasa a la máquina</translation>
    </message>
    <message>
        <source>What was wrong</source>
        <translation>Qué estaba mal</translation>
    </message>
    <message>
        <source>Which stage</source>
        <translation>Qué etapa</translation>
    </message>
    <message>
        <source>Which stop</source>
        <translation>Qué paro</translation>
    </message>
    <message>
        <source>Who holds it</source>
        <translation>Quién lo mantiene</translation>
    </message>
    <message>
        <source>Whoever goes home gives up theirs first.</source>
        <translation>Quien se va a casa levanta antes el suyo.</translation>
    </message>
    <message>
        <source>Whoever takes over says the vital steps of this stage again.</source>
        <translation>Quien la asume declara de nuevo los pasos vitales de esta etapa.</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Por qué</translation>
    </message>
    <message>
        <source>Why it does not apply</source>
        <translation>Por qué no procede</translation>
    </message>
    <message>
        <source>Why it is abandoned</source>
        <translation>Por qué se abandona</translation>
    </message>
    <message>
        <source>With its unit, if it has one</source>
        <translation>Con su unidad, si la tiene</translation>
    </message>
    <message>
        <source>With its unit: 18 3/4 in</source>
        <translation>Con su unidad: 18 3/4 in</translation>
    </message>
    <message>
        <source>With its unit: 480 mm</source>
        <translation>Con su unidad: 480 mm</translation>
    </message>
    <message>
        <source>Withdraw the press from use</source>
        <translation>Retirar la máquina del servicio</translation>
    </message>
    <message>
        <source>Write the correction</source>
        <translation>Escribir la corrección</translation>
    </message>
    <message>
        <source>Write the note</source>
        <translation>Escribir la nota</translation>
    </message>
    <message>
        <source>Write what helped</source>
        <translation>Anotar lo que ayudó</translation>
    </message>
    <message>
        <source>Yes, it is so</source>
        <translation>Sí, es así</translation>
    </message>
    <message>
        <source>“%1” is right again. Whoever comes next is glad to know why.</source>
        <translation>«%1» vuelve a estar bien. Quien venga después agradece saber por qué.</translation>
    </message>
</context>
<context>
    <name>RunPage</name>
    <message>
        <source>%1 answers given so far are asked again, the first: %2.</source>
        <translation>%1 respuestas dadas hasta ahora se preguntan otra vez; la primera: %2.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Before that “%1” stood, by %2, %3. It was corrected: %4</source>
        <translation>Antes constaba «%1», por %2, %3. Se corrigió: %4</translation>
    </message>
    <message>
        <source>English</source>
        <translation>inglés</translation>
    </message>
    <message>
        <source>Files: %1</source>
        <translation>Archivos: %1</translation>
    </message>
    <message>
        <source>German</source>
        <translation>alemán</translation>
    </message>
    <message>
        <source>No answer given so far is asked again.</source>
        <translation>Ninguna respuesta dada hasta ahora se pregunta otra vez.</translation>
    </message>
    <message>
        <source>Notes: %1</source>
        <translation>Notas: %1</translation>
    </message>
    <message>
        <source>One answer given so far is asked again: %1.</source>
        <translation>Una respuesta dada hasta ahora se pregunta otra vez: %1.</translation>
    </message>
    <message>
        <source>Roll %1</source>
        <translation>Bobina %1</translation>
    </message>
    <message>
        <source>Spanish</source>
        <translation>español</translation>
    </message>
    <message>
        <source>Stops held: %1</source>
        <translation>Paros mantenidos: %1</translation>
    </message>
    <message>
        <source>The roll</source>
        <translation>La bobina</translation>
    </message>
    <message>
        <source>The roll's measured diameter</source>
        <translation>El diámetro medido de la bobina</translation>
    </message>
    <message>
        <source>This run is read in %1</source>
        <translation>Esta preparación se lee en %1</translation>
    </message>
    <message>
        <source>What the roll's tag says</source>
        <translation>Lo que dice la tarjeta de la bobina</translation>
    </message>
    <message>
        <source>What was found of the roll</source>
        <translation>Lo que se encontró en la bobina</translation>
    </message>
</context>
<context>
    <name>TagTable</name>
    <message>
        <source>%1, the day is not said</source>
        <translation>%1, sin decir el día</translation>
    </message>
    <message>
        <source>Something else is entered, and stays.</source>
        <translation>Otra cosa está introducida, y queda.</translation>
    </message>
    <message>
        <source>The same is entered.</source>
        <translation>Está introducido lo mismo.</translation>
    </message>
    <message>
        <source>Width, core, winding and length have to fit %1.</source>
        <translation>Ancho, núcleo, bobinado y longitud tienen que concordar con %1.</translation>
    </message>
    <message>
        <source>Will be entered: %1.</source>
        <translation>Se introducirá: %1.</translation>
    </message>
</context>
<context>
    <name>core</name>
    <message>
        <source>"%1" and "%2" are not of one kind.</source>
        <translation>«%1» y «%2» no son de la misma clase.</translation>
    </message>
    <message>
        <source>"%1" can be read in two ways: as %2 or as %3.</source>
        <translation>«%1» puede leerse de dos maneras: como %2 o como %3.</translation>
    </message>
    <message>
        <source>"%1" cannot be right here: between %2 and %3 can be believed.</source>
        <translation>«%1» no puede ser correcto aquí: se admite entre %2 y %3.</translation>
    </message>
    <message>
        <source>"%1" cannot be used as a name that others refer to.</source>
        <translation>«%1» no puede usarse como nombre al que otros hagan referencia.</translation>
    </message>
    <message>
        <source>"%1" could be %2 or %3, and a held stop belongs to one person.</source>
        <translation>«%1» podría ser %2 o %3, y un paro mantenido pertenece a una sola persona.</translation>
    </message>
    <message>
        <source>"%1" does not begin with a number that can be read.</source>
        <translation>«%1» no empieza con un número legible.</translation>
    </message>
    <message>
        <source>"%1" has figures in it: a roll, a tag or a reading holds no stop.</source>
        <translation>«%1» lleva cifras: una bobina, una tarjeta o una lectura no mantiene ningún paro.</translation>
    </message>
    <message>
        <source>"%1" has no unit that is read here.</source>
        <translation>«%1» no tiene ninguna unidad que se admita aquí.</translation>
    </message>
    <message>
        <source>"%1" has no unit; %2 is wanted.</source>
        <translation>«%1» no tiene unidad; se requiere %2.</translation>
    </message>
    <message>
        <source>"%1" in "%2" is not a unit that is read here; %3 is wanted.</source>
        <translation>«%1» en «%2» no es una unidad que se admita aquí; se requiere %3.</translation>
    </message>
    <message>
        <source>"%1" is %2; %3 is wanted: %4.</source>
        <translation>«%1» es %2; se requiere %3: %4.</translation>
    </message>
    <message>
        <source>"%1" is below nought, which cannot be here.</source>
        <translation>«%1» es menor que cero, y eso no puede ser aquí.</translation>
    </message>
    <message>
        <source>"%1" is in no unit that this program knows.</source>
        <translation>«%1» no está en ninguna unidad que este programa conozca.</translation>
    </message>
    <message>
        <source>"%1" is more than a number.</source>
        <translation>«%1» es más que un número.</translation>
    </message>
    <message>
        <source>"%1" is no day of the calendar.</source>
        <translation>«%1» no es un día del calendario.</translation>
    </message>
    <message>
        <source>"%1" is no kind of run.</source>
        <translation>«%1» no es una clase de preparación.</translation>
    </message>
    <message>
        <source>"%1" is not a length in feet and inches.</source>
        <translation>«%1» no es una longitud en pies y pulgadas.</translation>
    </message>
    <message>
        <source>"%1" is not a time in UTC.</source>
        <translation>«%1» no es una hora en UTC.</translation>
    </message>
    <message>
        <source>"%1" is not a unit of force.</source>
        <translation>«%1» no es una unidad de fuerza.</translation>
    </message>
    <message>
        <source>"%1" is not a whole number, and these are counted one by one.</source>
        <translation>«%1» no es un número entero, y esto se cuenta uno por uno.</translation>
    </message>
    <message>
        <source>"%1" is not a word that can stand here.</source>
        <translation>«%1» no es una palabra que pueda estar aquí.</translation>
    </message>
    <message>
        <source>"%1" is not of a kind that can stand here; expected is one of: %2.</source>
        <translation>«%1» no es de una clase que pueda estar aquí; se espera una de estas: %2.</translation>
    </message>
    <message>
        <source>"%1" is not one of the answers to this step.</source>
        <translation>«%1» no es una de las respuestas de este paso.</translation>
    </message>
    <message>
        <source>"%1" is not one value as a file writes it.</source>
        <translation>«%1» no es un valor tal como lo escribe un archivo.</translation>
    </message>
    <message>
        <source>"%1" is not the way to a step.</source>
        <translation>«%1» no es el camino a un paso.</translation>
    </message>
    <message>
        <source>"%1" is still empty.</source>
        <translation>«%1» está todavía vacío.</translation>
    </message>
    <message>
        <source>"%1" is the name of the unwind, not of a rewind.</source>
        <translation>«%1» es el nombre del desbobinador, no de un rebobinador.</translation>
    </message>
    <message>
        <source>"%1" is too large to compute with.</source>
        <translation>«%1» es demasiado grande para calcular con ello.</translation>
    </message>
    <message>
        <source>"%1" is too little of a name. Is %2 meant?</source>
        <translation>«%1» es muy poco para un nombre. ¿Se refiere a %2?</translation>
    </message>
    <message>
        <source>"%1" is too long to be a value.</source>
        <translation>«%1» es demasiado largo para ser un valor.</translation>
    </message>
    <message>
        <source>"%1" may stand only between quotes or in a comment.</source>
        <translation>«%1» solo puede estar entre comillas o en un comentario.</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 (%2 of %3)</source>
        <translation>%1 (%2 de %3)</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1 (process %2) is writing in the logbook %3, and only one can.</source>
        <translation>%1 (proceso %2) está escribiendo en el libro de registro %3, y solo puede uno.</translation>
    </message>
    <message>
        <source>%1 = "%2" is not a word that is known here.</source>
        <translation>%1 = "%2" no es una palabra conocida aquí.</translation>
    </message>
    <message>
        <source>%1 across on %2 would be labels of %3 with their gap.</source>
        <translation>%1 a lo ancho en %2 serían etiquetas de %3 con su separación.</translation>
    </message>
    <message>
        <source>%1 across, %2 around</source>
        <translation>%1 a lo ancho, %2 en el desarrollo</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation>%1 y %2</translation>
    </message>
    <message>
        <source>%1 answers in less than %2 s</source>
        <translation>%1 respuestas en menos de %2 s</translation>
    </message>
    <message>
        <source>%1 around in a repeat of %2 would be labels of %3 with their gap.</source>
        <translation>%1 a lo largo de un desarrollo de %2 serían etiquetas de %3 con su separación.</translation>
    </message>
    <message>
        <source>%1 at a diameter of %2, %3 at %4.</source>
        <translation>%1 con un diámetro de %2, %3 con %4.</translation>
    </message>
    <message>
        <source>%1 at the joint and each splice inside</source>
        <translation>%1 en la unión y en cada empalme interior</translation>
    </message>
    <message>
        <source>%1 cannot be %2.</source>
        <translation>%1 no puede ser %2.</translation>
    </message>
    <message>
        <source>%1 cannot be made: its folder may not be written in.</source>
        <translation>No se puede crear %1: no se permite escribir en su carpeta.</translation>
    </message>
    <message>
        <source>%1 cannot be opened; the system says: %2.</source>
        <translation>No se puede abrir %1; el sistema dice: %2.</translation>
    </message>
    <message>
        <source>%1 cannot be restored from itself.</source>
        <translation>%1 no puede restaurarse a partir de sí mismo.</translation>
    </message>
    <message>
        <source>%1 cannot be right here: between %2 and %3 can be believed.</source>
        <translation>%1 no puede ser correcto aquí: se admite entre %2 y %3.</translation>
    </message>
    <message>
        <source>%1 cannot be right here; a whole number from %2 to %3 is expected.</source>
        <translation>%1 no puede ser correcto aquí; se espera un número entero de %2 a %3.</translation>
    </message>
    <message>
        <source>%1 cannot be written, nor made again what it was. What lay there is whole as %2.</source>
        <translation>No se puede escribir %1 ni devolverlo a como estaba. Lo que había allí está completo en %2.</translation>
    </message>
    <message>
        <source>%1 cannot be written: it is a link into the folder %2, which does not exist.</source>
        <translation>No se puede escribir %1: es un enlace a la carpeta %2, que no existe.</translation>
    </message>
    <message>
        <source>%1 cannot be written: its folder does not exist.</source>
        <translation>No se puede escribir %1: su carpeta no existe.</translation>
    </message>
    <message>
        <source>%1 cannot be written: its folder takes no files. Nothing was changed.</source>
        <translation>No se puede escribir %1: su carpeta no admite archivos. No se cambió nada.</translation>
    </message>
    <message>
        <source>%1 cannot be written; the system says: %2. Nothing was changed.</source>
        <translation>No se puede escribir %1; el sistema dice: %2. No se cambió nada.</translation>
    </message>
    <message>
        <source>%1 cannot say this of themselves.</source>
        <translation>%1 no puede decir esto de sí mismo.</translation>
    </message>
    <message>
        <source>%1 cannot sign for an attempt of their own.</source>
        <translation>%1 no puede firmar por un intento propio.</translation>
    </message>
    <message>
        <source>%1 could not be brought to the layout of this program (first difference: %2). Nothing was changed.</source>
        <translation>No se pudo llevar %1 a la estructura de este programa (primera diferencia: %2). No se cambió nada.</translation>
    </message>
    <message>
        <source>%1 could not be written.</source>
        <translation>No se pudo escribir %1.</translation>
    </message>
    <message>
        <source>%1 does not sign a set-up of this press alone: %2</source>
        <translation>%1 no firma a solas una preparación de esta máquina: %2</translation>
    </message>
    <message>
        <source>%1 does not stand in this file.</source>
        <translation>%1 no está en este archivo.</translation>
    </message>
    <message>
        <source>%1 from the %2</source>
        <translation>%1 desde el %2</translation>
    </message>
    <message>
        <source>%1 gives their PIN here. If they are away, a supervisor looks and says so.</source>
        <translation>%1 introduce su PIN aquí. Si está ausente, un supervisor lo comprueba y lo declara.</translation>
    </message>
    <message>
        <source>%1 had run %2 in hand or sealed it.</source>
        <translation>%1 tuvo a su cargo la preparación %2 o la selló.</translation>
    </message>
    <message>
        <source>%1 has %2 MB; at most %3 MB are kept with a run.</source>
        <translation>%1 tiene %2 MB; con una preparación se guardan %3 MB como máximo.</translation>
    </message>
    <message>
        <source>%1 has a minus sign. %2: how much it is counts, whichever way, and that has no sign.</source>
        <translation>%1 lleva signo menos. %2: cuenta cuánto es, en cualquier sentido, y eso no lleva signo.</translation>
    </message>
    <message>
        <source>%1 has corrected run %2 themselves.</source>
        <translation>%1 ha corregido la preparación %2 personalmente.</translation>
    </message>
    <message>
        <source>%1 has no lane to wind: the job has %2 across, and the rewinds listed before it take them.</source>
        <translation>%1 no tiene ninguna pista que enrollar: el trabajo tiene %2 a lo ancho, y los rebobinadores que van antes en la lista las toman todas.</translation>
    </message>
    <message>
        <source>%1 has no role that is known: "%2".</source>
        <translation>%1 no tiene un rol conocido: «%2».</translation>
    </message>
    <message>
        <source>%1 has no zone %2 whose setting makes a torque.</source>
        <translation>%1 no tiene ninguna zona %2 cuyo ajuste dé un par.</translation>
    </message>
    <message>
        <source>%1 has not set up the press %2 for %3 days.</source>
        <translation>%1 no ha preparado la máquina %2 desde hace %3 días.</translation>
    </message>
    <message>
        <source>%1 has runs in it already, and only an empty logbook is filled.</source>
        <translation>%1 ya contiene preparaciones, y solo se llena un libro de registro vacío.</translation>
    </message>
    <message>
        <source>%1 has to wind %2 for this job, not as it does first.</source>
        <translation>%1 debe enrollar %2 para este trabajo, no como lo hace por defecto.</translation>
    </message>
    <message>
        <source>%1 has withdrawn the press %2 already: %3</source>
        <translation>%1 ya ha retirado del servicio la máquina %2: %3</translation>
    </message>
    <message>
        <source>%1 has withdrawn the press %2 from use: %3</source>
        <translation>%1 ha retirado del servicio la máquina %2: %3</translation>
    </message>
    <message>
        <source>%1 holds no press, job, substrate or procedure.</source>
        <translation>%1 no contiene ninguna máquina, trabajo, sustrato ni procedimiento.</translation>
    </message>
    <message>
        <source>%1 holds this stop, and nobody else gives it up.</source>
        <translation>%1 mantiene este paro, y nadie más lo levanta.</translation>
    </message>
    <message>
        <source>%1 holds this stop. For %1 only a supervisor speaks who does not have the run in hand.</source>
        <translation>%1 mantiene este paro. Por %1 solo responde un supervisor que no tenga la preparación a su cargo.</translation>
    </message>
    <message>
        <source>%1 in %2 runs</source>
        <translation>%1 en %2 preparaciones</translation>
    </message>
    <message>
        <source>%1 in force</source>
        <translation>%1 en vigor</translation>
    </message>
    <message>
        <source>%1 in force, %2 no longer in force</source>
        <translation>%1 en vigor, %2 ya no en vigor</translation>
    </message>
    <message>
        <source>%1 in the exported file is missing or no count.</source>
        <translation>En el archivo exportado, %1 falta o no es una cantidad.</translation>
    </message>
    <message>
        <source>%1 in the exported file is missing or no list.</source>
        <translation>En el archivo exportado, %1 falta o no es una lista.</translation>
    </message>
    <message>
        <source>%1 in the exported file is missing or no text.</source>
        <translation>En el archivo exportado, %1 falta o no es un texto.</translation>
    </message>
    <message>
        <source>%1 in the exported file is missing or no time.</source>
        <translation>En el archivo exportado, %1 falta o no es una hora.</translation>
    </message>
    <message>
        <source>%1 in the exported file is missing or not written as it should be.</source>
        <translation>%1 falta en el archivo exportado o no está escrito como debe.</translation>
    </message>
    <message>
        <source>%1 in the exported file is no object.</source>
        <translation>En el archivo exportado, %1 no es un objeto.</translation>
    </message>
    <message>
        <source>%1 in the exported file says another kind than its document.</source>
        <translation>En el archivo exportado, %1 indica otra clase que su documento.</translation>
    </message>
    <message>
        <source>%1 is %2; expected is %3.</source>
        <translation>%1 es %2; se espera %3.</translation>
    </message>
    <message>
        <source>%1 is a folder of another machine: a good place for what is kept twice.</source>
        <translation>%1 es una carpeta de otro equipo: un buen lugar para lo que se guarda por duplicado.</translation>
    </message>
    <message>
        <source>%1 is a folder or a device, not a file.</source>
        <translation>%1 es una carpeta o un dispositivo, no un archivo.</translation>
    </message>
    <message>
        <source>%1 is a folder, not a file.</source>
        <translation>%1 es una carpeta, no un archivo.</translation>
    </message>
    <message>
        <source>%1 is a folder, so no file of that name can be written.</source>
        <translation>%1 es una carpeta, así que no se puede escribir un archivo con ese nombre.</translation>
    </message>
    <message>
        <source>%1 is a pipe or a device, not a file.</source>
        <translation>%1 es una tubería o un dispositivo, no un archivo.</translation>
    </message>
    <message>
        <source>%1 is a practice logbook, and %2 is the shop's own.</source>
        <translation>%1 es un libro de prácticas, y %2 es el del propio taller.</translation>
    </message>
    <message>
        <source>%1 is a practice logbook: what stands in it never happened on a press.</source>
        <translation>%1 es un libro de prácticas: lo que consta en él nunca ocurrió en una máquina.</translation>
    </message>
    <message>
        <source>%1 is empty.</source>
        <translation>%1 está vacío.</translation>
    </message>
    <message>
        <source>%1 is enrolled as %2, which does not allow sealing a run.</source>
        <translation>%1 está de alta como %2, lo que no permite sellar una preparación.</translation>
    </message>
    <message>
        <source>%1 is enrolled as %2, which does not allow this.</source>
        <translation>%1 está de alta como %2, lo que no permite esto.</translation>
    </message>
    <message>
        <source>%1 is latched.</source>
        <translation>%1 está enclavado.</translation>
    </message>
    <message>
        <source>%1 is less than nothing: this cannot be.</source>
        <translation>%1 es menos que nada: eso no puede ser.</translation>
    </message>
    <message>
        <source>%1 is more than anything on a press would show.</source>
        <translation>%1 es más de lo que mostraría cualquier cosa en una máquina.</translation>
    </message>
    <message>
        <source>%1 is more than can be read here. %2: it goes to %3 at most.</source>
        <translation>%1 es más de lo que puede leerse aquí. %2: llega a %3 como máximo.</translation>
    </message>
    <message>
        <source>%1 is more than this roll was before, %2 at most: a roll only gets smaller.</source>
        <translation>%1 es más de lo que medía antes esta bobina, %2 como máximo: una bobina solo se hace menor.</translation>
    </message>
    <message>
        <source>%1 is no longer there: it was moved, renamed or deleted while it was open. Nothing was recorded.</source>
        <translation>%1 ya no está: se movió, se renombró o se borró mientras estaba abierto. No se registró nada.</translation>
    </message>
    <message>
        <source>%1 is no mirror of this logbook.</source>
        <translation>%1 no es un espejo de este libro de registro.</translation>
    </message>
    <message>
        <source>%1 is no more than this roll's core of %2.</source>
        <translation>%1 no supera el núcleo de esta bobina, de %2.</translation>
    </message>
    <message>
        <source>%1 is no time: nothing happens at once.</source>
        <translation>%1 no es un tiempo: nada ocurre al instante.</translation>
    </message>
    <message>
        <source>%1 is not a date.</source>
        <translation>%1 no es una fecha.</translation>
    </message>
    <message>
        <source>%1 is not a logbook: it is a database of another program.</source>
        <translation>%1 no es un libro de registro: es una base de datos de otro programa.</translation>
    </message>
    <message>
        <source>%1 is not a logbook: it is a file of another kind.</source>
        <translation>%1 no es un libro de registro: es un archivo de otra clase.</translation>
    </message>
    <message>
        <source>%1 is not a logbook: it is a folder.</source>
        <translation>%1 no es un libro de registro: es una carpeta.</translation>
    </message>
    <message>
        <source>%1 is not a logbook: it is empty.</source>
        <translation>%1 no es un libro de registro: está vacío.</translation>
    </message>
    <message>
        <source>%1 is not a usual inside diameter, but a core of %2 with a wall of %3 measures that outside.</source>
        <translation>%1 no es un diámetro interior usual, pero un núcleo de %2 con una pared de %3 mide eso por fuera.</translation>
    </message>
    <message>
        <source>%1 is not an anchor: it is the number of seals, a colon, and at least the first %2 of the %3 characters of the link (digits and a to f).</source>
        <translation>%1 no es un ancla: es el número de sellos, dos puntos y al menos los primeros %2 de los %3 caracteres del enlace (cifras y de la a a la f).</translation>
    </message>
    <message>
        <source>%1 is not said: the practice press takes %2.</source>
        <translation>%1 no consta: la máquina de prácticas toma %2.</translation>
    </message>
    <message>
        <source>%1 is not the one with which this was practised.</source>
        <translation>%1 no es aquello con lo que se practicó.</translation>
    </message>
    <message>
        <source>%1 is of an older layout, and it is not in order (%2, %3), so it was left as it is.</source>
        <translation>%1 es de una estructura anterior y no está en orden (%2, %3), así que se dejó como está.</translation>
    </message>
    <message>
        <source>%1 is of an older layout, and nothing is written in it as it is.</source>
        <translation>%1 es de una estructura anterior, y tal como está no se escribe nada en él.</translation>
    </message>
    <message>
        <source>%1 is of the shop's own logbook, and %2 is a practice logbook.</source>
        <translation>%1 es del libro de registro propio del taller, y %2 es un libro de prácticas.</translation>
    </message>
    <message>
        <source>%1 is out of service and signs nothing.</source>
        <translation>%1 está fuera de servicio y no firma nada.</translation>
    </message>
    <message>
        <source>%1 is said to be left of a roll that was %2 across: a roll only gets smaller.</source>
        <translation>Se declara que queda %1 de una bobina que medía %2 de diámetro: una bobina solo se hace menor.</translation>
    </message>
    <message>
        <source>%1 is said to be left of the roll, no more than its core, %2 outside.</source>
        <translation>Se declara que queda %1 de la bobina, no más que su núcleo, %2 por fuera.</translation>
    </message>
    <message>
        <source>%1 is set to a value, and none was said.</source>
        <translation>%1 se ajusta a un valor, y no se dijo ninguno.</translation>
    </message>
    <message>
        <source>%1 is stated; the diameters give %2.</source>
        <translation>Se indica %1; los diámetros dan %2.</translation>
    </message>
    <message>
        <source>%1 is the mirror of a logbook: it is there to be read, and only that logbook writes in it.</source>
        <translation>%1 es el espejo de un libro de registro: está para leerse, y solo ese libro escribe en él.</translation>
    </message>
    <message>
        <source>%1 is the mirror of another PC's logbook.</source>
        <translation>%1 es el espejo del libro de registro de otro PC.</translation>
    </message>
    <message>
        <source>%1 is the name of %2 already.</source>
        <translation>%1 ya es el nombre de %2.</translation>
    </message>
    <message>
        <source>%1 is the name of a core rather than its size; such cores measure %2 inside.</source>
        <translation>%1 es el nombre de un núcleo más que su medida; esos núcleos miden %2 por dentro.</translation>
    </message>
    <message>
        <source>%1 is the shop's own logbook, and practice never writes in it.</source>
        <translation>%1 es el libro de registro propio del taller, y en prácticas nunca se escribe en él.</translation>
    </message>
    <message>
        <source>%1 is what this roll measures round: its file says %2 across.</source>
        <translation>%1 es lo que mide esta bobina alrededor: su archivo indica %2 de diámetro.</translation>
    </message>
    <message>
        <source>%1 jobs do not say how long they run: quantity, pieces across and around, gear and speed are needed.</source>
        <translation>%1 trabajos no dicen cuánto corren: hacen falta cantidad, piezas a lo ancho y en la vuelta, engranaje y velocidad.</translation>
    </message>
    <message>
        <source>%1 lanes go to %2 rewinds in turn: those listed first in the press profile wind one more.</source>
        <translation>%1 pistas se reparten por turno entre %2 rebobinadores: los que van primero en el perfil de la máquina enrollan una más.</translation>
    </message>
    <message>
        <source>%1 lies in a folder of another machine. Two PCs could write in it at once, and what is on disk there nobody here can know.</source>
        <translation>%1 está en una carpeta de otro equipo. Dos PC podrían escribir en él a la vez, y aquí nadie puede saber qué hay en aquel disco.</translation>
    </message>
    <message>
        <source>%1 lies on a medium that can only be read, and a logbook that is written in needs another.</source>
        <translation>%1 está en un soporte de solo lectura, y un libro de registro en el que se escribe necesita otro.</translation>
    </message>
    <message>
        <source>%1 lies on a medium that can only be read.</source>
        <translation>%1 está en un soporte de solo lectura.</translation>
    </message>
    <message>
        <source>%1 lies on a stick or card: a good place for what is kept twice, as long as it is in.</source>
        <translation>%1 está en una memoria USB o tarjeta: un buen lugar para lo que se guarda por duplicado, mientras esté conectada.</translation>
    </message>
    <message>
        <source>%1 lies on a stick or card: pulled out at the wrong moment, or worn, it loses what was recorded.</source>
        <translation>%1 está en una memoria USB o tarjeta: si se retira en mal momento o se desgasta, pierde lo registrado.</translation>
    </message>
    <message>
        <source>%1 lies on the same disk as the logbook: that helps against mistakes, not against a dead disk.</source>
        <translation>%1 está en el mismo disco que el libro de registro: eso protege de errores, no de un disco averiado.</translation>
    </message>
    <message>
        <source>%1 may be read but not written.</source>
        <translation>%1 se puede leer, pero no escribir.</translation>
    </message>
    <message>
        <source>%1 may not be read by this user, so nobody here can say whose mirror it is.</source>
        <translation>Este usuario no puede leer %1, así que nadie puede decir aquí de quién es este espejo.</translation>
    </message>
    <message>
        <source>%1 may not be written: its folder is closed to this user. Nothing was changed.</source>
        <translation>No se puede escribir %1: su carpeta está cerrada para este usuario. No se cambió nada.</translation>
    </message>
    <message>
        <source>%1 more torque for each unit of the setting, from %2 runs.</source>
        <translation>%1 más de par por cada unidad del ajuste, según %2 preparaciones.</translation>
    </message>
    <message>
        <source>%1 not given: none</source>
        <translation>%1 no indicado: ninguno</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>%1 of %2 (%3 %)</source>
        <translation>%1 de %2 (%3 %)</translation>
    </message>
    <message>
        <source>%1 of %2 overdue on %3</source>
        <translation>%1 de %2 vencidos el %3</translation>
    </message>
    <message>
        <source>%1 of %2 people can sign in at the restored logbook; the others have changed what they sign in with since that copy.</source>
        <translation>%1 de %2 personas pueden iniciar sesión en el libro de registro restaurado; las demás han cambiado sus datos de acceso después de esa copia.</translation>
    </message>
    <message>
        <source>%1 of %2, %3 (%4 to %5 with 95 % confidence)</source>
        <translation>%1 de %2, %3 (%4 a %5 con una confianza del 95 %)</translation>
    </message>
    <message>
        <source>%1 of %2, %3 in vain</source>
        <translation>%1 de %2, %3 en vano</translation>
    </message>
    <message>
        <source>%1 of guide %2</source>
        <translation>%1 del guiador %2</translation>
    </message>
    <message>
        <source>%1 of the guide</source>
        <translation>%1 del guiador</translation>
    </message>
    <message>
        <source>%1 open before this run can be signed, first of all: %2</source>
        <translation>Quedan %1 por responder antes de firmar esta preparación; primero: %2</translation>
    </message>
    <message>
        <source>%1 open before this stage is done, first of all: %2</source>
        <translation>Quedan %1 por responder antes de terminar esta etapa; primero: %2</translation>
    </message>
    <message>
        <source>%1 over the width</source>
        <translation>%1 a todo el ancho</translation>
    </message>
    <message>
        <source>%1 readings are too few for this curve.</source>
        <translation>%1 lecturas son muy pocas para esta curva.</translation>
    </message>
    <message>
        <source>%1 s of %2 s</source>
        <translation>%1 s de %2 s</translation>
    </message>
    <message>
        <source>%1 set-ups of this press are named, and this shop wants %2 that somebody watched.</source>
        <translation>Se nombran %1 preparaciones de esta máquina, y este taller exige %2 que alguien observara.</translation>
    </message>
    <message>
        <source>%1 short: have the next roll stand by, and a splice ready.</source>
        <translation>Faltan %1: tenga preparada la bobina siguiente y un empalme listo.</translation>
    </message>
    <message>
        <source>%1 stands open.</source>
        <translation>%1 está abierto.</translation>
    </message>
    <message>
        <source>%1 steps are written in one place; the most is %2.</source>
        <translation>Hay %1 pasos escritos en un mismo lugar; el máximo es %2.</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>%1 to %2 (%3)</source>
        <translation>%1 a %2 (%3)</translation>
    </message>
    <message>
        <source>%1 values are too few to speak of capability.</source>
        <translation>%1 valores son muy pocos para hablar de capacidad.</translation>
    </message>
    <message>
        <source>%1 was brought to the layout of this program and is not in order since (%2). As it was, it is kept as %3.</source>
        <translation>%1 se llevó a la estructura de este programa y desde entonces no está en orden (%2). Como estaba, se conserva como %3.</translation>
    </message>
    <message>
        <source>%1 was brought to the layout of this program. As it was, it is kept as %2.</source>
        <translation>%1 se llevó a la estructura de este programa. Como estaba, se conserva como %2.</translation>
    </message>
    <message>
        <source>%1 was measured across; the roll's file says %2, and a roll only gets smaller.</source>
        <translation>Se midió %1 de diámetro; el archivo de la bobina indica %2, y una bobina solo se hace menor.</translation>
    </message>
    <message>
        <source>%1 was said, and the press shows %2.</source>
        <translation>Se dijo %1, y la máquina muestra %2.</translation>
    </message>
    <message>
        <source>%1 was written to while it was restored.</source>
        <translation>Se escribió en %1 mientras se restauraba.</translation>
    </message>
    <message>
        <source>%1 was written, but the disk does not confirm that it will last; the system says: %2.</source>
        <translation>%1 se escribió, pero el disco no confirma que se conserve; el sistema dice: %2.</translation>
    </message>
    <message>
        <source>%1 winds the finished roll face in; the job asks for face out.</source>
        <translation>%1 enrolla la bobina terminada cara hacia dentro; el trabajo pide cara hacia fuera.</translation>
    </message>
    <message>
        <source>%1 winds the finished roll face out; the job asks for face in.</source>
        <translation>%1 enrolla la bobina terminada cara hacia fuera; el trabajo pide cara hacia dentro.</translation>
    </message>
    <message>
        <source>%1 would have to be set to %2; it begins at %3.</source>
        <translation>%1 tendría que ajustarse a %2; empieza en %3.</translation>
    </message>
    <message>
        <source>%1 would have to be set to %2; it ends at %3.</source>
        <translation>%1 tendría que ajustarse a %2; termina en %3.</translation>
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
        <translation>%1, distancia a su objetivo</translation>
    </message>
    <message>
        <source>%1, before it %2</source>
        <translation>%1, antes %2</translation>
    </message>
    <message>
        <source>%1, by its signed runs</source>
        <translation>%1, según sus preparaciones firmadas</translation>
    </message>
    <message>
        <source>%1, edition %2</source>
        <translation>%1, edición %2</translation>
    </message>
    <message>
        <source>%1, edition %2, read in %3</source>
        <translation>%1, edición %2, leído en %3</translation>
    </message>
    <message>
        <source>%1, of what was left</source>
        <translation>%1, de lo que quedaba</translation>
    </message>
    <message>
        <source>%1, said by %2 of %3 runs</source>
        <translation>%1, dicho por %2 de %3 preparaciones</translation>
    </message>
    <message>
        <source>%1, stripped %2</source>
        <translation>%1, sin vueltas exteriores %2</translation>
    </message>
    <message>
        <source>%1, the clock was set back</source>
        <translation>%1, se atrasó el reloj</translation>
    </message>
    <message>
        <source>%1, the last of them: %2</source>
        <translation>%1, la última de ellas: %2</translation>
    </message>
    <message>
        <source>%1, together %2</source>
        <translation>%1, acumulado %2</translation>
    </message>
    <message>
        <source>%1, under the taper</source>
        <translation>%1, por debajo de la disminución (taper)</translation>
    </message>
    <message>
        <source>%1, with 95 % between %2 and %3</source>
        <translation>%1, con el 95 % entre %2 y %3</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: %2 is over this press's own limit of %3.</source>
        <translation>%1: %2 supera el límite propio de esta máquina, %3.</translation>
    </message>
    <message>
        <source>%1: %2 is under this press's own limit of %3.</source>
        <translation>%1: %2 está por debajo del límite propio de esta máquina, %3.</translation>
    </message>
    <message>
        <source>%1: %2, policy row %3</source>
        <translation>%1: %2, fila de normas %3</translation>
    </message>
    <message>
        <source>%1: %2: %3</source>
        <translation>%1: %2: %3</translation>
    </message>
    <message>
        <source>%1: above a diameter of %2 it would have to be set to less than %3, where it begins; %4 at %5.</source>
        <translation>%1: por encima de un diámetro de %2 tendría que ajustarse a menos de %3, donde empieza; %4 con %5.</translation>
    </message>
    <message>
        <source>%1: above a diameter of %2 it would have to be set to more than %3, where it ends; %4 at %5.</source>
        <translation>%1: por encima de un diámetro de %2 tendría que ajustarse a más de %3, donde termina; %4 con %5.</translation>
    </message>
    <message>
        <source>%1: above a diameter of %2 the loop would have to drive its brake or drive below %3, where it begins; %4 at %5.</source>
        <translation>%1: por encima de un diámetro de %2 el lazo tendría que llevar su freno o accionamiento por debajo de %3, donde empieza; %4 con %5.</translation>
    </message>
    <message>
        <source>%1: above a diameter of %2 the loop would have to drive its brake or drive beyond %3, where it ends; %4 at %5.</source>
        <translation>%1: por encima de un diámetro de %2 el lazo tendría que llevar su freno o accionamiento más allá de %3, donde termina; %4 con %5.</translation>
    </message>
    <message>
        <source>%1: air in its shaft</source>
        <translation>%1: aire en su eje</translation>
    </message>
    <message>
        <source>%1: below a diameter of %2 even the least that can be set, %3, pulls more than the highest of the window, %4; %5 at the core of %6.</source>
        <translation>%1: por debajo de un diámetro de %2 incluso el mínimo ajustable, %3, tira más que el máximo del margen, %4; %5 en el núcleo de %6.</translation>
    </message>
    <message>
        <source>%1: below a diameter of %2 it would have to be set to less than %3, where it begins; %4 at %5.</source>
        <translation>%1: por debajo de un diámetro de %2 tendría que ajustarse a menos de %3, donde empieza; %4 con %5.</translation>
    </message>
    <message>
        <source>%1: below a diameter of %2 it would have to be set to more than %3, where it ends; %4 at %5.</source>
        <translation>%1: por debajo de un diámetro de %2 tendría que ajustarse a más de %3, donde termina; %4 con %5.</translation>
    </message>
    <message>
        <source>%1: below a diameter of %2 the loop would have to drive its brake or drive below %3, where it begins; %4 at %5.</source>
        <translation>%1: por debajo de un diámetro de %2 el lazo tendría que llevar su freno o accionamiento por debajo de %3, donde empieza; %4 con %5.</translation>
    </message>
    <message>
        <source>%1: below a diameter of %2 the loop would have to drive its brake or drive beyond %3, where it ends; %4 at %5.</source>
        <translation>%1: por debajo de un diámetro de %2 el lazo tendría que llevar su freno o accionamiento más allá de %3, donde termina; %4 con %5.</translation>
    </message>
    <message>
        <source>%1: dancer at rest, share of its travel</source>
        <translation>%1: bailarín en reposo, parte de su recorrido</translation>
    </message>
    <message>
        <source>%1: diameter at which the setting must have been lowered</source>
        <translation>%1: diámetro en el que el ajuste ya debe haberse bajado</translation>
    </message>
    <message>
        <source>%1: diameter at which the setting must have been raised</source>
        <translation>%1: diámetro en el que el ajuste ya debe haberse subido</translation>
    </message>
    <message>
        <source>%1: diameter the drive works with</source>
        <translation>%1: diámetro con el que trabaja el accionamiento</translation>
    </message>
    <message>
        <source>%1: diameter where the setting leaves its range</source>
        <translation>%1: diámetro en el que el ajuste sale de su rango</translation>
    </message>
    <message>
        <source>%1: for the middle of the window the loop would have to drive its brake or drive to %2; it begins at %3.</source>
        <translation>%1: para el centro del margen el lazo tendría que llevar su freno o accionamiento a %2; empieza en %3.</translation>
    </message>
    <message>
        <source>%1: for the middle of the window the loop would have to drive its brake or drive to %2; it ends at %3.</source>
        <translation>%1: para el centro del margen el lazo tendría que llevar su freno o accionamiento a %2; termina en %3.</translation>
    </message>
    <message>
        <source>%1: heat in the brake</source>
        <translation>%1: calor en el freno</translation>
    </message>
    <message>
        <source>%1: heat in the clutch, finished roll</source>
        <translation>%1: calor en el embrague, bobina terminada</translation>
    </message>
    <message>
        <source>%1: its window at %2 is narrower than the last place that is usually shown, so that its ends are shown with more places than an instrument may have.</source>
        <translation>%1: su margen con %2 es más estrecho que la última cifra que suele mostrarse, así que sus extremos se muestran con más cifras de las que puede tener un instrumento.</translation>
    </message>
    <message>
        <source>%1: job %2, roll %3</source>
        <translation>%1: trabajo %2, bobina %3</translation>
    </message>
    <message>
        <source>%1: load cell with the web slack</source>
        <translation>%1: célula de carga con la banda floja</translation>
    </message>
    <message>
        <source>%1: no zone comes before this draw, and a draw only adds to the tension that its web brings.</source>
        <translation>%1: ninguna zona precede a este estirado, y un estirado solo añade a la tensión que trae su banda.</translation>
    </message>
    <message>
        <source>%1: set %2 to</source>
        <translation>%1: ajuste %2 a</translation>
    </message>
    <message>
        <source>%1: set it again at these diameters at the latest</source>
        <translation>%1: ajústelo de nuevo a más tardar en estos diámetros</translation>
    </message>
    <message>
        <source>%1: set to %2</source>
        <translation>%1: se pone en %2</translation>
    </message>
    <message>
        <source>%1: setting</source>
        <translation>%1: ajuste</translation>
    </message>
    <message>
        <source>%1: strain of the web</source>
        <translation>%1: alargamiento de la banda</translation>
    </message>
    <message>
        <source>%1: swing of the dancer at steady speed, share of its travel</source>
        <translation>%1: oscilación del bailarín a velocidad constante, parte de su recorrido</translation>
    </message>
    <message>
        <source>%1: swing of the shown tension while the speed changes, share of its mean</source>
        <translation>%1: oscilación de la tensión indicada mientras cambia la velocidad, parte de su media</translation>
    </message>
    <message>
        <source>%1: swing of the shown tension, share of its mean</source>
        <translation>%1: oscilación de la tensión indicada, parte de su media</translation>
    </message>
    <message>
        <source>%1: tension</source>
        <translation>%1: tensión</translation>
    </message>
    <message>
        <source>%1: tension at the core if the setting is left alone</source>
        <translation>%1: tensión en el núcleo si no se toca el ajuste</translation>
    </message>
    <message>
        <source>%1: tension on the full roll if the setting is left alone</source>
        <translation>%1: tensión con la bobina llena si no se toca el ajuste</translation>
    </message>
    <message>
        <source>%1: tension per width</source>
        <translation>%1: tensión por ancho</translation>
    </message>
    <message>
        <source>%1: tension per width that strain allows</source>
        <translation>%1: tensión por ancho que permite el alargamiento</translation>
    </message>
    <message>
        <source>%1: tension per width that strength allows</source>
        <translation>%1: tensión por ancho que permite la resistencia</translation>
    </message>
    <message>
        <source>%1: tension per width that the draw leaves open, by how well it is known</source>
        <translation>%1: tensión por ancho que el estirado deja abierta, según lo bien que se conoce</translation>
    </message>
    <message>
        <source>%1: tension with taper</source>
        <translation>%1: tensión con disminución (taper)</translation>
    </message>
    <message>
        <source>%1: the draw for the middle of the window, %2, is beyond what can be set; %3 is the nearest.</source>
        <translation>%1: el estirado para el centro del margen, %2, está fuera de lo ajustable; lo más cercano es %3.</translation>
    </message>
    <message>
        <source>%1: the middle of the window, %2, is beyond what can be set; %3 is the nearest that can.</source>
        <translation>%1: el centro del margen, %2, está fuera de lo ajustable; lo más cercano posible es %3.</translation>
    </message>
    <message>
        <source>%1: the setting never has to be changed for this roll: it is done at %2, and until then the tension stays inside its window, or as near to its taper as it may swing.</source>
        <translation>%1: el ajuste no tiene que cambiarse nunca con esta bobina: la bobina se acaba en %2, y hasta entonces la tensión sigue dentro de su margen, o tan cerca de su disminución (taper) como puede oscilar.</translation>
    </message>
    <message>
        <source>%1: the setting never leaves its range: without any torque it stands at %2, and it can be set down to %3.</source>
        <translation>%1: el ajuste no sale nunca de su rango: sin ningún par está en %2, y puede bajarse hasta %3.</translation>
    </message>
    <message>
        <source>%1: the setting stands at %2 already, the least that can be set, and cannot be lowered where the tension leaves its window, at %3.</source>
        <translation>%1: el ajuste ya está en %2, el mínimo ajustable, y no puede bajarse donde la tensión sale de su margen, en %3.</translation>
    </message>
    <message>
        <source>%1: the setting stays in its range down to the core of %2.</source>
        <translation>%1: el ajuste sigue en su rango hasta el núcleo de %2.</translation>
    </message>
    <message>
        <source>%1: the taper leaves %2 on the finished roll, less than the %3 at which the window of the tension begins.</source>
        <translation>%1: la disminución (taper) deja %2 en la bobina terminada, menos que %3, donde empieza el margen de la tensión.</translation>
    </message>
    <message>
        <source>%1: the taper leaves %2 on the finished roll, less than the %3 at which the window of the tension begins. The changes listed let it fall %4 under the taper from where that leads out of the window.</source>
        <translation>%1: la disminución (taper) deja %2 en la bobina terminada, menos que %3, donde empieza el margen de la tensión. Los cambios de la lista la dejan caer %4 por debajo de la disminución desde donde esta sale del margen.</translation>
    </message>
    <message>
        <source>%1: the window wants smaller steps than the %2 that the gauge shows, so that the tension leaves it between the changes listed, with the tension there: %3.</source>
        <translation>%1: el margen pide pasos menores que los %2 que muestra el indicador, así que la tensión sale de él entre los cambios de la lista, con esta tensión allí: %3.</translation>
    </message>
    <message>
        <source>%1: the window wants smaller steps than the %2 that the gauge shows, so that the tension leaves it between the changes listed; the worst stretches and the last, with the tension there: %3.</source>
        <translation>%1: el margen pide pasos menores que los %2 que muestra el indicador, así que la tensión sale de él entre los cambios de la lista; los peores tramos y el último, con la tensión en ellos: %3.</translation>
    </message>
    <message>
        <source>%1: this press's policy row %2</source>
        <translation>%1: fila de normas %2 de esta máquina</translation>
    </message>
    <message>
        <source>%1: torque on the roll</source>
        <translation>%1: par en la bobina</translation>
    </message>
    <message>
        <source>%1: web tension</source>
        <translation>%1: tensión de la banda</translation>
    </message>
    <message>
        <source>%1: web tension on the finished roll</source>
        <translation>%1: tensión de la banda en la bobina terminada</translation>
    </message>
    <message>
        <source>%1: what the wraps hold, as a multiple of the tail's pull</source>
        <translation>%1: lo que sujetan las vueltas, como múltiplo del tiro de la cola</translation>
    </message>
    <message>
        <source>%1: what to set as the diameter changes</source>
        <translation>%1: qué ajustar según cambia el diámetro</translation>
    </message>
    <message>
        <source>%1: wraps round its core</source>
        <translation>%1: vueltas sobre su núcleo</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translation>%1; %2</translation>
    </message>
    <message>
        <source>%1; narrower by %2</source>
        <translation>%1; más estrecha en %2</translation>
    </message>
    <message>
        <source>%1; no nearer than without a guide: %2</source>
        <translation>%1; no más cerca que sin guiador: %2</translation>
    </message>
    <message>
        <source>%1; remark: %2</source>
        <translation>%1; observación: %2</translation>
    </message>
    <message>
        <source>%1; shorter besides by what tension may stretch it: %2</source>
        <translation>%1; además más corta en lo que la tensión puede estirarla: %2</translation>
    </message>
    <message>
        <source>%1; steps to be done again: %2</source>
        <translation>%1; pasos por repetir: %2</translation>
    </message>
    <message>
        <source>%2 (%3) of formula %1 cannot be %4.</source>
        <translation>%2 (%3) de la fórmula %1 no puede ser %4.</translation>
    </message>
    <message>
        <source>%2 is given twice for formula %1.</source>
        <translation>%2 se ha indicado dos veces para la fórmula %1.</translation>
    </message>
    <message>
        <source>(low + high) / 2, from the table</source>
        <translation>(mínimo + máximo) / 2, de la tabla</translation>
    </message>
    <message>
        <source>-1 the nearer edge, +1 the farther</source>
        <translation>-1 el borde más cercano, +1 el más lejano</translation>
    </message>
    <message>
        <source>0.5 is the median.</source>
        <translation>0,5 es la mediana.</translation>
    </message>
    <message>
        <source>0.95 is usual.</source>
        <translation>0.95 es lo usual.</translation>
    </message>
    <message>
        <source>1 atm = 1.01325 bar</source>
        <translation>1 atm = 1.01325 bar</translation>
    </message>
    <message>
        <source>1 cpi = 1 lines/in</source>
        <translation>1 cpi = 1 línea/in</translation>
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
        <translation>1 lpi = 1 línea/in</translation>
    </message>
    <message>
        <source>1 mpm = 1 m/min</source>
        <translation>1 mpm = 1 m/min</translation>
    </message>
    <message>
        <source>1 permille = 0.1 %</source>
        <translation>1 por mil = 0.1 %</translation>
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
        <translation>1 semana = 7 d</translation>
    </message>
    <message>
        <source>A bare date or time is not read here.</source>
        <translation>Una fecha u hora sin comillas no se lee aquí.</translation>
    </message>
    <message>
        <source>A ceiling only: it never raises a window. A rule of thumb on the weakest layer that may carry alone.</source>
        <translation>Solo un tope: nunca sube un margen. Regla práctica sobre la capa más débil que puede soportar la carga sola.</translation>
    </message>
    <message>
        <source>A ceiling only: it never raises a window. Print may be stretched no further.</source>
        <translation>Solo un tope: nunca sube un margen. La impresión no puede estirarse más.</translation>
    </message>
    <message>
        <source>A choice needs at least two words to choose from.</source>
        <translation>Una elección necesita al menos dos palabras entre las que elegir.</translation>
    </message>
    <message>
        <source>A cold or damp roll changes its length and its tension on the press. Wait, or note it.</source>
        <translation>Una bobina fría o húmeda cambia de longitud y de tensión en la máquina. Espere, o anótelo.</translation>
    </message>
    <message>
        <source>A confidence lies between 0 and 1.</source>
        <translation>Una confianza está entre 0 y 1.</translation>
    </message>
    <message>
        <source>A control character stands here, which no text editor shows and no such file may hold.</source>
        <translation>Aquí hay un carácter de control, que ningún editor de texto muestra y que un archivo así no puede contener.</translation>
    </message>
    <message>
        <source>A copy of this logbook is being made just now.</source>
        <translation>Se está haciendo una copia de este libro de registro en este momento.</translation>
    </message>
    <message>
        <source>A core of %1 is neither held by the mandrel nor is there an adapter for it.</source>
        <translation>Un núcleo de %1 no lo sujeta el eje ni hay adaptador para él.</translation>
    </message>
    <message>
        <source>A corner of the joint caught in the dryer of station %1.</source>
        <translation>Una esquina del empalme se enganchó en el secador de la estación %1.</translation>
    </message>
    <message>
        <source>A corner of the joint was caught and held the web.</source>
        <translation>Una esquina del empalme se enganchó y retuvo la banda.</translation>
    </message>
    <message>
        <source>A correction needs a reason.</source>
        <translation>Una corrección necesita un motivo.</translation>
    </message>
    <message>
        <source>A definition of a %1 needs an id and a text.</source>
        <translation>Una definición de %1 necesita un id y un texto.</translation>
    </message>
    <message>
        <source>A deviation needs a reason.</source>
        <translation>Una desviación necesita un motivo.</translation>
    </message>
    <message>
        <source>A die or a finisher that works on the slack web meets the shorter repeat.</source>
        <translation>Un troquel o un equipo de acabado que trabaja con la banda floja encuentra el desarrollo más corto.</translation>
    </message>
    <message>
        <source>A finished roll of %1 is no more than its core, %2 outside.</source>
        <translation>Una bobina terminada de %1 no supera su núcleo, %2 por fuera.</translation>
    </message>
    <message>
        <source>A free sheet's caliper is not the wound caliper; a roll of known length teaches it.</source>
        <translation>El espesor de una hoja suelta no es el espesor enrollado; una bobina de longitud conocida lo enseña.</translation>
    </message>
    <message>
        <source>A gauge study takes two or three people, two to ten parts and two or three trials.</source>
        <translation>Un estudio de instrumento pide dos o tres personas, de dos a diez piezas y dos o tres repeticiones.</translation>
    </message>
    <message>
        <source>A held stop belongs to somebody, and no name was given.</source>
        <translation>Un paro mantenido pertenece a alguien, y no se indicó ningún nombre.</translation>
    </message>
    <message>
        <source>A lesson is begun in a practice logbook alone.</source>
        <translation>Un ejercicio solo se empieza en un libro de prácticas.</translation>
    </message>
    <message>
        <source>A line needs two pulls or more, at settings well apart.</source>
        <translation>Una recta necesita dos tirones o más, con ajustes bien separados.</translation>
    </message>
    <message>
        <source>A linear taper of 100 % leaves no tension at all on the finished roll.</source>
        <translation>Una disminución lineal (taper) del 100 % no deja tensión alguna en la bobina terminada.</translation>
    </message>
    <message>
        <source>A list of runs has no column %1.</source>
        <translation>Una lista de preparaciones no tiene ninguna columna %1.</translation>
    </message>
    <message>
        <source>A logbook keeps no definitions of the kind %1.</source>
        <translation>Un libro de registro no guarda definiciones de la clase %1.</translation>
    </message>
    <message>
        <source>A mirror holds no PINs and no private keys, so nobody can sign in at the restored logbook: it can be read, printed and verified.</source>
        <translation>Un espejo no contiene PIN ni claves privadas, así que nadie puede iniciar sesión en el libro restaurado: se puede leer, imprimir y verificar.</translation>
    </message>
    <message>
        <source>A movement is answered when it is done.</source>
        <translation>Un movimiento se responde cuando está hecho.</translation>
    </message>
    <message>
        <source>A movement needs guards_closed, stops_released and people_clear, each asked again.</source>
        <translation>Un movimiento necesita guards_closed, stops_released y people_clear, preguntados de nuevo cada vez.</translation>
    </message>
    <message>
        <source>A movement or a held stop happened as it happened: it cannot be corrected.</source>
        <translation>Un movimiento o un paro mantenido ocurrió como ocurrió: no se puede corregir.</translation>
    </message>
    <message>
        <source>A new phase begins where the profile of the press changed. Since when a reading has moved is found by cumulative sums (6.3.2.3) and told where chance alone would seldom do it. A pattern may come by chance, about once in a hundred readings.</source>
        <translation>Una fase nueva empieza donde cambió el perfil de la máquina. Desde cuándo se ha desplazado una lectura se halla con sumas acumuladas (6.3.2.3), y se indica donde el azar por sí solo rara vez lo causaría. Un patrón puede darse por azar, más o menos una vez cada cien lecturas.</translation>
    </message>
    <message>
        <source>A nick in the outer wraps was left on the roll.</source>
        <translation>En la bobina quedó una mella en las vueltas exteriores.</translation>
    </message>
    <message>
        <source>A person has no id.</source>
        <translation>Una persona no tiene id.</translation>
    </message>
    <message>
        <source>A person needs a name.</source>
        <translation>Una persona necesita un nombre.</translation>
    </message>
    <message>
        <source>A picture or file (SHA-256 %1...) is kept that no run names: it was added from outside, or the run that named it was changed.</source>
        <translation>Se guarda una imagen o archivo (SHA-256 %1...) que ninguna preparación nombra: se añadió desde fuera, o se cambió la preparación que lo nombraba.</translation>
    </message>
    <message>
        <source>A picture or file needs a short name without a folder in it.</source>
        <translation>Una imagen o archivo necesita un nombre corto, sin carpeta.</translation>
    </message>
    <message>
        <source>A pull needs a force and a diameter above nought.</source>
        <translation>Un tirón necesita una fuerza y un diámetro mayores que cero.</translation>
    </message>
    <message>
        <source>A quotation mark stands right behind a word or a number.</source>
        <translation>Hay una comilla justo detrás de una palabra o un número.</translation>
    </message>
    <message>
        <source>A rag, on the dryer of station %1</source>
        <translation>Un trapo, sobre el secador de la estación %1</translation>
    </message>
    <message>
        <source>A reading without a target cannot be judged.</source>
        <translation>Una lectura sin valor objetivo no puede juzgarse.</translation>
    </message>
    <message>
        <source>A roll %1 across would hold far more than the %2 stated, but a roll %1 round holds just that.</source>
        <translation>Una bobina de %1 de diámetro tendría mucho más que los %2 indicados, pero una bobina de %1 alrededor tiene justo eso.</translation>
    </message>
    <message>
        <source>A roll cannot measure %1 across: between %2 and %3 can be believed.</source>
        <translation>Una bobina no puede medir %1 de diámetro: se admite entre %2 y %3.</translation>
    </message>
    <message>
        <source>A roll hangs on the shaft already.</source>
        <translation>Ya cuelga una bobina en el eje.</translation>
    </message>
    <message>
        <source>A roll hangs raised on the lift.</source>
        <translation>En el elevador hay una bobina levantada.</translation>
    </message>
    <message>
        <source>A roll hangs so that its web leaves over or under.</source>
        <translation>Una bobina cuelga de modo que su banda sale por arriba o por abajo.</translation>
    </message>
    <message>
        <source>A roll is lifted and nothing holds it on the shaft yet.</source>
        <translation>Hay una bobina levantada y nada la sujeta aún en el eje.</translation>
    </message>
    <message>
        <source>A roll needs its number and its material.</source>
        <translation>Una bobina necesita su número y su material.</translation>
    </message>
    <message>
        <source>A roll's diameter is larger than nothing.</source>
        <translation>El diámetro de una bobina es mayor que nada.</translation>
    </message>
    <message>
        <source>A run of this job needs %1, which it does not say.</source>
        <translation>Una preparación de este trabajo necesita %1, que no indica.</translation>
    </message>
    <message>
        <source>A run that was open in what lay there before is not, or not as far, in what was restored. It was kept as %1.</source>
        <translation>Una preparación que estaba abierta en lo que había antes no está, o no tan avanzada, en lo restaurado. Se guardó como %1.</translation>
    </message>
    <message>
        <source>A set-up sheet is made from the record of a run; this is another kind of record.</source>
        <translation>Una hoja de ajuste se hace a partir del registro de una preparación; este es otro tipo de registro.</translation>
    </message>
    <message>
        <source>A share lies between 0 and 1.</source>
        <translation>Una proporción está entre 0 y 1.</translation>
    </message>
    <message>
        <source>A sheet of no size has no basis weight.</source>
        <translation>Una hoja sin medida no tiene gramaje.</translation>
    </message>
    <message>
        <source>A sheet was printed when there were %1 seals; this logbook ends after %2: the newest were cut off.</source>
        <translation>Se imprimió una hoja cuando había %1 sellos; este libro de registro termina tras %2: se cortaron los más nuevos.</translation>
    </message>
    <message>
        <source>A slip clutch's heat is its torque times its slip, most at the finished roll; not tension times speed.</source>
        <translation>El calor de un embrague deslizante es su par por su deslizamiento, máximo en la bobina terminada; no tensión por velocidad.</translation>
    </message>
    <message>
        <source>A starting range: the right tension is the least that still keeps the web in hand.</source>
        <translation>Un rango de partida: la tensión correcta es la mínima que aún mantiene la banda controlada.</translation>
    </message>
    <message>
        <source>A starting value for laminates, to compare the windows with: what the tables say of each ply, and a tenth of lbf/in.</source>
        <translation>Valor de partida para laminados, con el que comparar los márgenes: lo que dicen las tablas de cada capa, y una décima de lbf/in.</translation>
    </message>
    <message>
        <source>A step runs through the guide as a jump.</source>
        <translation>Un escalón pasa por el guiador como un salto.</translation>
    </message>
    <message>
        <source>A step that does not apply needs a reason.</source>
        <translation>Un paso que no procede necesita un motivo.</translation>
    </message>
    <message>
        <source>A stop is held</source>
        <translation>Hay un paro mantenido</translation>
    </message>
    <message>
        <source>A stop is still held by %1.</source>
        <translation>%1 mantiene todavía un paro.</translation>
    </message>
    <message>
        <source>A stop that you hold</source>
        <translation>Un paro que usted mantiene</translation>
    </message>
    <message>
        <source>A stored event is no JSON object.</source>
        <translation>Un suceso guardado no es un objeto JSON.</translation>
    </message>
    <message>
        <source>A supervisor gives each of the others a first-use code.</source>
        <translation>Un supervisor da a cada uno de los demás un código de primer uso.</translation>
    </message>
    <message>
        <source>A supervisor gives them a new first-use code, and they choose a new PIN and passphrase.</source>
        <translation>Un supervisor les da un nuevo código de primer uso, y eligen un nuevo PIN y una nueva frase de contraseña.</translation>
    </message>
    <message>
        <source>A supervisor other than the person who withdrew it gives it back when it is put right.</source>
        <translation>Un supervisor distinto de quien la retiró la devuelve al servicio cuando está arreglada.</translation>
    </message>
    <message>
        <source>A supervisor says so anew when it was shown again, or signs beside them until then.</source>
        <translation>Un supervisor lo declara de nuevo cuando se haya demostrado otra vez, o firma junto a la persona hasta entonces.</translation>
    </message>
    <message>
        <source>A table's starting value; the maker's range is better.</source>
        <translation>Valor de partida de una tabla; el rango del fabricante es mejor.</translation>
    </message>
    <message>
        <source>A tag was read, and nobody has said yet that it is right.</source>
        <translation>Se leyó una etiqueta, y nadie ha dicho aún que es correcta.</translation>
    </message>
    <message>
        <source>A tail caught in the dryer of station %1.</source>
        <translation>Un cabo se enganchó en el secador de la estación %1.</translation>
    </message>
    <message>
        <source>A tail that stood over was caught and held the web.</source>
        <translation>Un cabo que sobresalía se enganchó y retuvo la banda.</translation>
    </message>
    <message>
        <source>A target set or a plan does not follow from its words.</source>
        <translation>Un conjunto de valores objetivo o un plan no se deduce de sus palabras.</translation>
    </message>
    <message>
        <source>A target set or a plan of the document does not follow from those before it.</source>
        <translation>Un conjunto de valores objetivo o un plan del documento no se deduce de los anteriores.</translation>
    </message>
    <message>
        <source>A tension of %1 was entered; the material bears at most %2: %3.</source>
        <translation>Se introdujo una tensión de %1; el material soporta como máximo %2: %3.</translation>
    </message>
    <message>
        <source>A tenth of it would fit.</source>
        <translation>Encajaría una décima parte.</translation>
    </message>
    <message>
        <source>A thousand times as much would fit.</source>
        <translation>Encajaría mil veces más.</translation>
    </message>
    <message>
        <source>A thousandth of it would fit.</source>
        <translation>Encajaría una milésima parte.</translation>
    </message>
    <message>
        <source>A value of the series is not a number.</source>
        <translation>Un valor de la serie no es un número.</translation>
    </message>
    <message>
        <source>A vital step is passed by only with a supervisor.</source>
        <translation>Un paso vital solo se pasa por alto con un supervisor.</translation>
    </message>
    <message>
        <source>A vital step stands in the second half of its stage, where an interruption is likelier.</source>
        <translation>Hay un paso vital en la segunda mitad de su etapa, donde una interrupción es más probable.</translation>
    </message>
    <message>
        <source>A vital step that does not say why is passed by one day.</source>
        <translation>Un paso vital que no dice por qué acaba pasándose por alto algún día.</translation>
    </message>
    <message>
        <source>A web of %1 about a centreline at %2 would run into the frame: %3 lie between the faces.</source>
        <translation>Una banda de %1 en torno a una línea central en %2 chocaría con el bastidor: hay %3 entre las caras.</translation>
    </message>
    <message>
        <source>A web path needs at least two rollers.</source>
        <translation>Un recorrido de banda necesita al menos dos rodillos.</translation>
    </message>
    <message>
        <source>A wider range entered with job or material helps.</source>
        <translation>Ayuda un rango más amplio, introducido con el trabajo o el material.</translation>
    </message>
    <message>
        <source>ABANDONED: this set-up was not finished</source>
        <translation>ABANDONADA: esta preparación no se terminó</translation>
    </message>
    <message>
        <source>Abandoned</source>
        <translation>Abandonadas</translation>
    </message>
    <message>
        <source>Abandoned by</source>
        <translation>Abandonada por</translation>
    </message>
    <message>
        <source>Abandoning a run needs a reason.</source>
        <translation>Abandonar una preparación necesita un motivo.</translation>
    </message>
    <message>
        <source>Across its face. Of unwind and rewind the roll's own counts.</source>
        <translation>A lo ancho de su cara. Del desbobinador y el rebobinador cuenta el de la bobina.</translation>
    </message>
    <message>
        <source>Adapters between core and shaft</source>
        <translation>Adaptadores entre núcleo y eje</translation>
    </message>
    <message>
        <source>Add a [[person]] with id, name, role, pin and passphrase for everybody.</source>
        <translation>Añada un [[person]] con id, name, role, pin y passphrase para cada persona.</translation>
    </message>
    <message>
        <source>Add what the crew tells them apart by. Whoever only forgot gets a new first-use code instead.</source>
        <translation>Añada aquello con lo que el equipo los distingue. A quien solo olvidó sus datos se le da un nuevo código de primer uso.</translation>
    </message>
    <message>
        <source>After several wrong tries nothing is looked at for another %1 seconds.</source>
        <translation>Tras varios intentos fallidos no se comprueba nada durante otros %1 segundos.</translation>
    </message>
    <message>
        <source>Aimed at</source>
        <translation>Objetivos</translation>
    </message>
    <message>
        <source>Air in the unwind shaft</source>
        <translation>Aire en el eje del desbobinador</translation>
    </message>
    <message>
        <source>Air of the roll lift</source>
        <translation>Aire del elevador de bobinas</translation>
    </message>
    <message>
        <source>Air of the shaft: %1</source>
        <translation>Aire del eje: %1</translation>
    </message>
    <message>
        <source>Air of the unwind's shaft</source>
        <translation>Aire del eje del desbobinador</translation>
    </message>
    <message>
        <source>Air supply at the press</source>
        <translation>Suministro de aire en la máquina</translation>
    </message>
    <message>
        <source>Air under the web at job speed</source>
        <translation>Aire bajo la banda a la velocidad del trabajo</translation>
    </message>
    <message>
        <source>Air under the web at job speed, on roller %1</source>
        <translation>Aire bajo la banda a la velocidad del trabajo, en el rodillo %1</translation>
    </message>
    <message>
        <source>Air wound into the finished roll on %1</source>
        <translation>Aire enrollado en la bobina terminada en %1</translation>
    </message>
    <message>
        <source>All of the web across its width.</source>
        <translation>Toda la banda en todo su ancho.</translation>
    </message>
    <message>
        <source>All pulls were at one setting, which tells no line.</source>
        <translation>Todos los tirones fueron con un ajuste, y eso no da una recta.</translation>
    </message>
    <message>
        <source>All that the lift has to raise.</source>
        <translation>Todo lo que el elevador tiene que levantar.</translation>
    </message>
    <message>
        <source>All values are equal: there is no spread to reckon with.</source>
        <translation>Todos los valores son iguales: no hay dispersión con que calcular.</translation>
    </message>
    <message>
        <source>Also computed for this press, job, substrate and roll</source>
        <translation>También calculado para esta máquina, trabajo, sustrato y bobina</translation>
    </message>
    <message>
        <source>An amount is below zero or not a number.</source>
        <translation>Una cantidad es menor que cero o no es un número.</translation>
    </message>
    <message>
        <source>An arm that keeps swinging says that the loop hunts or the roll is out of round.</source>
        <translation>Un brazo que no deja de oscilar indica que el lazo oscila o que la bobina está ovalada.</translation>
    </message>
    <message>
        <source>An attempt at the practice press</source>
        <translation>Un intento en la máquina de prácticas</translation>
    </message>
    <message>
        <source>An emergency stop pulls hardest where the web winds up.</source>
        <translation>Un paro de emergencia tira con más fuerza donde la banda se enrolla.</translation>
    </message>
    <message>
        <source>An interruption needs its cause.</source>
        <translation>Una interrupción necesita su causa.</translation>
    </message>
    <message>
        <source>An uncertainty is never below nought.</source>
        <translation>Una incertidumbre nunca es menor que cero.</translation>
    </message>
    <message>
        <source>Angle of the guide at which the web begins to hang slack</source>
        <translation>Ángulo del guiador con el que la banda empieza a colgar floja</translation>
    </message>
    <message>
        <source>Another program has kept %1 busy for %2 s.</source>
        <translation>Otro programa ha tenido ocupado %1 durante %2 s.</translation>
    </message>
    <message>
        <source>Answer done after the press has moved and stands again, or leave the step open.</source>
        <translation>Responda done después de que la máquina se haya movido y esté de nuevo parada, o deje el paso abierto.</translation>
    </message>
    <message>
        <source>Answer the step.</source>
        <translation>Responda el paso.</translation>
    </message>
    <message>
        <source>Answer what is open, or abandon the run with a reason.</source>
        <translation>Responda lo que está pendiente, o abandone la preparación con un motivo.</translation>
    </message>
    <message>
        <source>Answer what is open, then call the stage done.</source>
        <translation>Responda lo que está pendiente, y después declare terminada la etapa.</translation>
    </message>
    <message>
        <source>Answered: %1: %2</source>
        <translation>Respondido: %1: %2</translation>
    </message>
    <message>
        <source>As drawn, the web goes %2 round roller %1.</source>
        <translation>Según el dibujo, la banda abraza %2 del rodillo %1.</translation>
    </message>
    <message>
        <source>As it was measured: brake, running time and what is enough for the job go by it.</source>
        <translation>Como se midió: el freno, el tiempo de marcha y lo que basta para el trabajo se rigen por él.</translation>
    </message>
    <message>
        <source>As near to the guide's last roller as it will go: further on it sees too late, and the guide hunts.</source>
        <translation>Tan cerca del último rodillo del guiador como se pueda: más allá ve demasiado tarde, y el guiador oscila.</translation>
    </message>
    <message>
        <source>As ordered.</source>
        <translation>Según el pedido.</translation>
    </message>
    <message>
        <source>As the roll's label says; compare it with the length by diameters.</source>
        <translation>Como dice la etiqueta de la bobina; compárela con la longitud por diámetros.</translation>
    </message>
    <message>
        <source>As weighed, which is the most of all ways: it hangs on the lift.</source>
        <translation>Según el peso, la mayor de todas las formas: cuelga del elevador.</translation>
    </message>
    <message>
        <source>Ask a supervisor to look at it here and sign in beside you.</source>
        <translation>Pida a un supervisor que lo compruebe aquí e inicie sesión junto a usted.</translation>
    </message>
    <message>
        <source>Ask another supervisor for a first-use code.</source>
        <translation>Pida a otro supervisor un código de primer uso.</translation>
    </message>
    <message>
        <source>Ask another supervisor to look at it and give it back.</source>
        <translation>Pida a otro supervisor que la compruebe y la devuelva al servicio.</translation>
    </message>
    <message>
        <source>Ask another supervisor to look at it here and sign in beside you.</source>
        <translation>Pida a otro supervisor que lo compruebe aquí e inicie sesión junto a usted.</translation>
    </message>
    <message>
        <source>Ask another supervisor, or let somebody else read it again.</source>
        <translation>Pida ayuda a otro supervisor, o deje que otra persona lo lea de nuevo.</translation>
    </message>
    <message>
        <source>Ask each of them by name. Everybody out; then each gives up their own stop.</source>
        <translation>Pregunte a cada uno por su nombre. Todos fuera; después cada uno levanta su propio paro.</translation>
    </message>
    <message>
        <source>Ask each of them by name. Whoever holds a stop gives it up; then sign.</source>
        <translation>Pregunte a cada uno por su nombre. Quien mantenga un paro lo levanta; después firme.</translation>
    </message>
    <message>
        <source>Ask for the list from its beginning.</source>
        <translation>Pida la lista desde el principio.</translation>
    </message>
    <message>
        <source>Ask them, or a supervisor who has looked that nobody is in.</source>
        <translation>Pregúntele, o pregunte a un supervisor que haya comprobado que no hay nadie dentro.</translation>
    </message>
    <message>
        <source>Ask whoever answers for the material whether this roll may still be run.</source>
        <translation>Preguntar a quien responde del material si esta bobina aún puede usarse.</translation>
    </message>
    <message>
        <source>Asked for help: %1</source>
        <translation>Ayuda pedida: %1</translation>
    </message>
    <message>
        <source>At %1 across this part-used roll would hold %2; full it held %3.</source>
        <translation>Con %1 de diámetro, esta bobina empezada tendría %2; llena tenía %3.</translation>
    </message>
    <message>
        <source>At %1 now %2.</source>
        <translation>En %1 ahora %2.</translation>
    </message>
    <message>
        <source>At 1 the usual scatter just fills the window, below 1 it does not fit; 1.33 and more is what is commonly asked for. Cpk and Ppk are smaller where the centre is not in the middle.</source>
        <translation>Con 1 la dispersión habitual llena justo el margen, por debajo de 1 no cabe; lo que suele pedirse es 1.33 o más. Cpk y Ppk son menores cuando el centro no está en el medio.</translation>
    </message>
    <message>
        <source>At a diameter of %1 it crosses %2, the end of what can be set.</source>
        <translation>Con un diámetro de %1 pasa de %2, el extremo de lo ajustable.</translation>
    </message>
    <message>
        <source>At byte %1 lists and objects stand more than 200 deep in each other.</source>
        <translation>En el byte %1 las listas y objetos están anidados más de 200 niveles.</translation>
    </message>
    <message>
        <source>At byte %1 stands a number that is too large to hold.</source>
        <translation>En el byte %1 hay un número demasiado grande para guardarlo.</translation>
    </message>
    <message>
        <source>At crawl it takes far longer: wait before you judge.</source>
        <translation>En marcha lenta tarda mucho más: espere antes de juzgar.</translation>
    </message>
    <message>
        <source>At crawl, of those that are driven or whose inertia is known. At job speed air may make another one the first.</source>
        <translation>En marcha lenta, de los que son accionados o cuya inercia se conoce. A la velocidad del trabajo el aire puede hacer que otro sea el primero.</translation>
    </message>
    <message>
        <source>At crawl. What air takes of it at job speed is not reckoned without %1.</source>
        <translation>En marcha lenta. Lo que el aire le quita a la velocidad del trabajo no se calcula sin %1.</translation>
    </message>
    <message>
        <source>At crawl. What air takes of it at job speed is not reckoned.</source>
        <translation>En marcha lenta. Lo que el aire le quita a la velocidad del trabajo no se calcula.</translation>
    </message>
    <message>
        <source>At crawl: what air takes at job speed is not known.</source>
        <translation>En marcha lenta: lo que quita el aire a la velocidad del trabajo no se conoce.</translation>
    </message>
    <message>
        <source>At job speed air may carry the web clear of this roller. A narrow web keeps more than is reckoned: look for scuffs and wander, and run slower if you see them.</source>
        <translation>A la velocidad del trabajo el aire puede separar la banda de este rodillo. Una banda estrecha conserva más de lo calculado: busque rozaduras y deriva lateral, y corra más despacio si las ve.</translation>
    </message>
    <message>
        <source>At job speed the air under the web is three times the roughness or more on: %1. There the web may float.</source>
        <translation>A la velocidad del trabajo el aire bajo la banda es tres veces la rugosidad o más en: %1. Allí la banda puede flotar.</translation>
    </message>
    <message>
        <source>At job speed the air under the web takes nothing of it.</source>
        <translation>A la velocidad del trabajo el aire bajo la banda no le quita nada.</translation>
    </message>
    <message>
        <source>At job speed the brake takes %1, it may take %2.</source>
        <translation>A la velocidad del trabajo el freno absorbe %1, puede absorber %2.</translation>
    </message>
    <message>
        <source>At job speed, before anything presses it out. Where it is thicker than the web is rough, wraps slide on one another: lay the roller on, or run slower as the roll grows.</source>
        <translation>A la velocidad del trabajo, antes de que algo lo expulse. Donde es más grueso que la rugosidad de la banda, las vueltas resbalan unas sobre otras: apoye el rodillo, o corra más despacio según crece la bobina.</translation>
    </message>
    <message>
        <source>At job speed, less what the air under the web takes. A narrow web keeps more.</source>
        <translation>A la velocidad del trabajo, menos lo que quita el aire bajo la banda. Una banda estrecha conserva más.</translation>
    </message>
    <message>
        <source>At job speed, the outer wraps off, until the automatic stop leaves its reserve.</source>
        <translation>A la velocidad del trabajo, sin las vueltas exteriores, hasta que el paro automático deja su reserva.</translation>
    </message>
    <message>
        <source>At steady speed. More says: roll out of round, sticking brake, hunting loop.</source>
        <translation>A velocidad constante. Más indica: bobina ovalada, freno que se agarra, lazo que oscila.</translation>
    </message>
    <message>
        <source>At the diameter the roll has now.</source>
        <translation>Con el diámetro que tiene ahora la bobina.</translation>
    </message>
    <message>
        <source>At the empty core; it grows with the roll.</source>
        <translation>Con el núcleo vacío; crece con la bobina.</translation>
    </message>
    <message>
        <source>At the first go</source>
        <translation>A la primera</translation>
    </message>
    <message>
        <source>At the standing press, and beside the running one</source>
        <translation>Con la máquina parada, y con la máquina en marcha</translation>
    </message>
    <message>
        <source>At this place the steps are done one after the other: do that one first.</source>
        <translation>En este puesto los pasos se hacen uno tras otro: haga primero ese.</translation>
    </message>
    <message>
        <source>Attempt</source>
        <translation>Intento</translation>
    </message>
    <message>
        <source>Attempts</source>
        <translation>Intentos</translation>
    </message>
    <message>
        <source>Away</source>
        <translation>Ausencia</translation>
    </message>
    <message>
        <source>Away or interrupted, upper quartile</source>
        <translation>Ausencia o interrupción, cuartil superior</translation>
    </message>
    <message>
        <source>Away, mean of a run</source>
        <translation>Ausencia media</translation>
    </message>
    <message>
        <source>Because</source>
        <translation>Porque</translation>
    </message>
    <message>
        <source>Before the run goes on, not yet said: %1.</source>
        <translation>Antes de que la preparación continúe, aún sin declarar: %1.</translation>
    </message>
    <message>
        <source>Begin a full set-up for this job.</source>
        <translation>Empiece una preparación completa para este trabajo.</translation>
    </message>
    <message>
        <source>Begin a full set-up on this press.</source>
        <translation>Empiece una preparación completa en esta máquina.</translation>
    </message>
    <message>
        <source>Begin a full set-up, which asks it.</source>
        <translation>Empiece una preparación completa, que lo pregunta.</translation>
    </message>
    <message>
        <source>Begin a new run if the press is to be set up again.</source>
        <translation>Empiece una nueva preparación si hay que preparar de nuevo la máquina.</translation>
    </message>
    <message>
        <source>Begin a new run on this press.</source>
        <translation>Empiece una nueva preparación en esta máquina.</translation>
    </message>
    <message>
        <source>Begin a new run that continues it.</source>
        <translation>Empiece una nueva preparación que la continúe.</translation>
    </message>
    <message>
        <source>Begin one, or go on with an open one.</source>
        <translation>Empiece una, o siga con una abierta.</translation>
    </message>
    <message>
        <source>Begin that run again from making the press safe.</source>
        <translation>Empiece de nuevo esa preparación desde el momento de asegurar la máquina.</translation>
    </message>
    <message>
        <source>Begins to hold at</source>
        <translation>El par empieza en</translation>
    </message>
    <message>
        <source>Begun</source>
        <translation>Empezada</translation>
    </message>
    <message>
        <source>Below this diameter the control cannot be set low enough.</source>
        <translation>Por debajo de este diámetro el mando no puede ajustarse lo bastante bajo.</translation>
    </message>
    <message>
        <source>Beside the running press</source>
        <translation>Con la máquina en marcha</translation>
    </message>
    <message>
        <source>Between the rolls and inside each of them; tell whoever takes the finished rolls.</source>
        <translation>Entre las bobinas y dentro de cada una; dígaselo a quien recibe las bobinas terminadas.</translation>
    </message>
    <message>
        <source>Between these two stand other tables.</source>
        <translation>Entre estas dos hay otras tablas.</translation>
    </message>
    <message>
        <source>Between web and roller, where the roller does not say.</source>
        <translation>Entre banda y rodillo, si el rodillo no lo dice.</translation>
    </message>
    <message>
        <source>Between, with 95 %</source>
        <translation>Entre, con el 95 %</translation>
    </message>
    <message>
        <source>Blades and knives are covered</source>
        <translation>Hojas y cuchillas están cubiertas</translation>
    </message>
    <message>
        <source>Blank set-up sheet: write the readings in, type them in afterwards as a transcription</source>
        <translation>Hoja de ajuste en blanco: escriba las lecturas e introdúzcalas después como transcripción</translation>
    </message>
    <message>
        <source>Both ends</source>
        <translation>Los dos extremos</translation>
    </message>
    <message>
        <source>Both ends are not cut together.</source>
        <translation>Los dos extremos no están cortados juntos.</translation>
    </message>
    <message>
        <source>Both judges always said the same one thing: chance alone gives that.</source>
        <translation>Ambos jueces dijeron siempre lo mismo: eso lo da el azar solo.</translation>
    </message>
    <message>
        <source>Both webs are clamped</source>
        <translation>Ambas bandas están sujetas con las prensas</translation>
    </message>
    <message>
        <source>Brake or clutch of %1 is worn.</source>
        <translation>El freno o embrague de %1 está gastado.</translation>
    </message>
    <message>
        <source>Bring it to the shaft</source>
        <translation>Llevarla al eje</translation>
    </message>
    <message>
        <source>By net mass, length and width on its tag the roll is of %1; the material has %2.</source>
        <translation>Por la masa neta, la longitud y el ancho de su tarjeta, la bobina es de %1; el material tiene %2.</translation>
    </message>
    <message>
        <source>By the diameters before and after: so much of the roll is gone.</source>
        <translation>Por los diámetros de antes y después: es lo que se ha gastado de la bobina.</translation>
    </message>
    <message>
        <source>By the diameters, which give the most of all ways: it hangs on the lift.</source>
        <translation>Por los diámetros, que dan lo máximo de todas las formas: cuelga del elevador.</translation>
    </message>
    <message>
        <source>By the label's length, which gives the most of all ways: it hangs on the lift.</source>
        <translation>Por la longitud de la etiqueta, que da lo máximo de todas las formas: cuelga del elevador.</translation>
    </message>
    <message>
        <source>By the share of the cells that this shop has found to reach the web, for film and mass alike; pan and hoses come on top.</source>
        <translation>Por la parte de las celdas que este taller ha visto llegar a la banda, igual para película y masa; la cubeta y las mangueras van aparte.</translation>
    </message>
    <message>
        <source>By these pulls the roll would hold back with nothing set at all.</source>
        <translation>Según estos tirones, la bobina frenaría sin ajuste alguno.</translation>
    </message>
    <message>
        <source>By these pulls the torque is known worse than by half.</source>
        <translation>Según estos tirones, el par se conoce con un error de más de la mitad.</translation>
    </message>
    <message>
        <source>By what a repeat is shorter when the web is let go</source>
        <translation>Cuánto más corto es el desarrollo al soltar la banda</translation>
    </message>
    <message>
        <source>By what share it falls.</source>
        <translation>En qué proporción disminuye.</translation>
    </message>
    <message>
        <source>Byte %1 is not UTF-8 text.</source>
        <translation>El byte %1 no es texto UTF-8.</translation>
    </message>
    <message>
        <source>C1, least of the rollers that are driven or heavy</source>
        <translation>C1, mínimo de los rodillos accionados o pesados</translation>
    </message>
    <message>
        <source>Caliper as wound</source>
        <translation>Espesor enrollado</translation>
    </message>
    <message>
        <source>Calipers of the brake: %1</source>
        <translation>Pinzas del freno: %1</translation>
    </message>
    <message>
        <source>Caution: %1</source>
        <translation>Atención: %1</translation>
    </message>
    <message>
        <source>Cells along a length.</source>
        <translation>Celdas por longitud.</translation>
    </message>
    <message>
        <source>Centre</source>
        <translation>Centro</translation>
    </message>
    <message>
        <source>Centre mark from the web's edge</source>
        <translation>Marca central desde el borde de la banda</translation>
    </message>
    <message>
        <source>Change what it follows from, or have whoever set this limit look at it.</source>
        <translation>Cambie aquello de lo que se deduce, o haga que quien fijó este límite lo compruebe.</translation>
    </message>
    <message>
        <source>Character %1: field %2 belongs into the path of the address, before the question mark.</source>
        <translation>Carácter %1: el campo %2 va en la ruta de la dirección, antes del signo de interrogación.</translation>
    </message>
    <message>
        <source>Character %1: field %2 cannot stand here in the address: item, lot and serial number follow each other, the rest comes behind the question mark.</source>
        <translation>Carácter %1: el campo %2 no puede estar aquí en la dirección: artículo, lote y número de serie van seguidos, lo demás va tras el signo de interrogación.</translation>
    </message>
    <message>
        <source>Character %1: field %2 describes a roll without saying of which item.</source>
        <translation>Carácter %1: el campo %2 describe una bobina sin decir de qué artículo.</translation>
    </message>
    <message>
        <source>Character %1: field %2 of the tag does not describe a roll: "%3" cannot be nought.</source>
        <translation>Carácter %1: el campo %2 de la tarjeta no describe una bobina: «%3» no puede ser cero.</translation>
    </message>
    <message>
        <source>Character %1: field %2 of the tag does not describe a roll: a winding "%3" there is not, only 0 (face out), 1 (face in) and 9 (not known).</source>
        <translation>Carácter %1: el campo %2 de la tarjeta no describe una bobina: no existe el bobinado «%3», solo 0 (cara hacia fuera), 1 (cara hacia dentro) y 9 (desconocido).</translation>
    </message>
    <message>
        <source>Character %1: field %2 of the tag has a % without its two figures: "%3".</source>
        <translation>Carácter %1: el campo %2 de la tarjeta tiene un % sin sus dos cifras: «%3».</translation>
    </message>
    <message>
        <source>Character %1: field %2 of the tag has a sign that cannot be there: "%3".</source>
        <translation>Carácter %1: el campo %2 de la tarjeta tiene un signo que no puede estar ahí: «%3».</translation>
    </message>
    <message>
        <source>Character %1: field %2 of the tag is cut off: "%3".</source>
        <translation>Carácter %1: el campo %2 de la tarjeta está cortado: «%3».</translation>
    </message>
    <message>
        <source>Character %1: field %2 of the tag is no date: "%3".</source>
        <translation>Carácter %1: el campo %2 de la tarjeta no es una fecha: «%3».</translation>
    </message>
    <message>
        <source>Character %1: field %2 of the tag is too long: "%3".</source>
        <translation>Carácter %1: el campo %2 de la tarjeta es demasiado largo: «%3».</translation>
    </message>
    <message>
        <source>Character %1: field %2 of the tag says nothing without one of: %3.</source>
        <translation>Carácter %1: el campo %2 de la tarjeta no dice nada sin uno de estos: %3.</translation>
    </message>
    <message>
        <source>Character %1: field %2 of the tag should be a number and two letters of its unit: "%3".</source>
        <translation>Carácter %1: el campo %2 de la tarjeta debe ser un número y dos letras de su unidad: «%3».</translation>
    </message>
    <message>
        <source>Character %1: field %2 of the tag should be figures: "%3".</source>
        <translation>Carácter %1: el campo %2 de la tarjeta deben ser cifras: «%3».</translation>
    </message>
    <message>
        <source>Character %1: field %2 stands on the tag twice and says two things.</source>
        <translation>Carácter %1: el campo %2 está dos veces en la tarjeta y dice dos cosas.</translation>
    </message>
    <message>
        <source>Character %1: nothing stands on the tag.</source>
        <translation>Carácter %1: la tarjeta no contiene nada.</translation>
    </message>
    <message>
        <source>Character %1: something stands behind the end of the message: "%2".</source>
        <translation>Carácter %1: hay algo detrás del fin del mensaje: «%2».</translation>
    </message>
    <message>
        <source>Character %1: the check digit of field %2 is %4, and "%3" needs %5. A figure was read wrongly.</source>
        <translation>Carácter %1: la cifra de control del campo %2 es %4, y «%3» necesita %5. Se leyó mal alguna cifra.</translation>
    </message>
    <message>
        <source>Character %1: the item's number should begin with 9 where rolls of it differ: "%2".</source>
        <translation>Carácter %1: el número de artículo debe empezar por 9 cuando sus bobinas difieren: «%2».</translation>
    </message>
    <message>
        <source>Character %1: the message on the tag has a form that is not known: "%2".</source>
        <translation>Carácter %1: el mensaje de la tarjeta tiene una forma desconocida: «%2».</translation>
    </message>
    <message>
        <source>Character %1: the message on the tag is cut off: a separator or its end is missing.</source>
        <translation>Carácter %1: el mensaje de la tarjeta está cortado: falta un separador o su final.</translation>
    </message>
    <message>
        <source>Character %1: the scanner says that this is another kind of code: "%2".</source>
        <translation>Carácter %1: el escáner dice que es otra clase de código: «%2».</translation>
    </message>
    <message>
        <source>Character %1: the separator after field %2 of the tag is missing.</source>
        <translation>Carácter %1: falta el separador tras el campo %2 de la tarjeta.</translation>
    </message>
    <message>
        <source>Character %1: the tag has a field that is not known: "%2".</source>
        <translation>Carácter %1: la tarjeta tiene un campo desconocido: «%2».</translation>
    </message>
    <message>
        <source>Character %1: the tag names one item and the content of a pallet at once.</source>
        <translation>Carácter %1: la tarjeta nombra a la vez un artículo y el contenido de un palé.</translation>
    </message>
    <message>
        <source>Character %1: the tag says %2 here and %3 before.</source>
        <translation>Carácter %1: la tarjeta dice %2 aquí y %3 antes.</translation>
    </message>
    <message>
        <source>Character %1: this is a web address that names no item.</source>
        <translation>Carácter %1: es una dirección web que no nombra ningún artículo.</translation>
    </message>
    <message>
        <source>Check</source>
        <translation>Control</translation>
    </message>
    <message>
        <source>Check both ends; neither is used until then.</source>
        <translation>Compruebe ambos extremos; hasta entonces no se usa ninguno.</translation>
    </message>
    <message>
        <source>Check both rows; the usual values hold until then.</source>
        <translation>Compruebe ambas filas; hasta entonces valen los valores usuales.</translation>
    </message>
    <message>
        <source>Check that it is the right file.</source>
        <translation>Compruebe que es el archivo correcto.</translation>
    </message>
    <message>
        <source>Check that the file and its folder may be read by this user.</source>
        <translation>Compruebe que este usuario puede leer el archivo y su carpeta.</translation>
    </message>
    <message>
        <source>Check that the record was written by this program and is whole.</source>
        <translation>Compruebe que el registro fue escrito por este programa y está completo.</translation>
    </message>
    <message>
        <source>Check that this is the file you meant.</source>
        <translation>Compruebe que es el archivo deseado.</translation>
    </message>
    <message>
        <source>Check the decimal point, and type the value again.</source>
        <translation>Compruebe el punto decimal, y escriba el valor de nuevo.</translation>
    </message>
    <message>
        <source>Check the disk or the network drive, then try again.</source>
        <translation>Compruebe el disco o la unidad de red, y reinténtelo.</translation>
    </message>
    <message>
        <source>Check the exponent.</source>
        <translation>Compruebe el exponente.</translation>
    </message>
    <message>
        <source>Check the figure, and that guides and nips hold so narrow a web.</source>
        <translation>Compruebe la cifra, y que guiadores y nips sujetan una banda tan estrecha.</translation>
    </message>
    <message>
        <source>Check the greatest width, the centreline and the distance between the frames.</source>
        <translation>Compruebe el ancho máximo, la línea central y la distancia entre los bastidores.</translation>
    </message>
    <message>
        <source>Check the number and its unit.</source>
        <translation>Compruebe el número y su unidad.</translation>
    </message>
    <message>
        <source>Check the number.</source>
        <translation>Compruebe el número.</translation>
    </message>
    <message>
        <source>Check the number; the largest is about 1.8e308.</source>
        <translation>Compruebe el número; el mayor es aproximadamente 1.8e308.</translation>
    </message>
    <message>
        <source>Check the places and diameters of %1 and %2.</source>
        <translation>Compruebe las posiciones y los diámetros de %1 y %2.</translation>
    </message>
    <message>
        <source>Check the places and turns of %1, %2 and %3, and the order of the rollers.</source>
        <translation>Compruebe las posiciones y los giros de %1, %2 y %3, y el orden de los rodillos.</translation>
    </message>
    <message>
        <source>Check the places, diameters and turns of %1 and %2.</source>
        <translation>Compruebe las posiciones, los diámetros y los giros de %1 y %2.</translation>
    </message>
    <message>
        <source>Check the printer, or write a PDF to another folder.</source>
        <translation>Compruebe la impresora, o escriba un PDF en otra carpeta.</translation>
    </message>
    <message>
        <source>Check the spelling and the folder, or choose another file.</source>
        <translation>Compruebe la escritura y la carpeta, o elija otro archivo.</translation>
    </message>
    <message>
        <source>Check the typed anchor once more; if it is right, do not trust this file.</source>
        <translation>Compruebe otra vez el ancla escrita; si es correcta, no confíe en este archivo.</translation>
    </message>
    <message>
        <source>Check the typed anchor once more; if it is right, restore the logbook from a backup.</source>
        <translation>Compruebe otra vez el ancla escrita; si es correcta, restaure el libro de registro desde una copia de seguridad.</translation>
    </message>
    <message>
        <source>Check the unit and the decimal mark.</source>
        <translation>Compruebe la unidad y el signo decimal.</translation>
    </message>
    <message>
        <source>Check the values against this rule, and their units.</source>
        <translation>Compruebe los valores con esta regla, y sus unidades.</translation>
    </message>
    <message>
        <source>Check this roller's place, diameter and turn in the press profile.</source>
        <translation>Compruebe la posición, el diámetro y el giro de este rodillo en el perfil de la máquina.</translation>
    </message>
    <message>
        <source>Check which way roller %1 turns, seen from the operator's side, and where it and its neighbours stand.</source>
        <translation>Compruebe hacia dónde gira el rodillo %1, visto desde el lado operador, y dónde están él y sus vecinos.</translation>
    </message>
    <message>
        <source>Checks of this press that were not plainly inside</source>
        <translation>Comprobaciones de esta máquina que no quedaron claramente dentro</translation>
    </message>
    <message>
        <source>Checks that are the same in every run of this press</source>
        <translation>Comprobaciones iguales en toda preparación de esta máquina</translation>
    </message>
    <message>
        <source>Choose 15 characters or more: four words that have nothing to do with each other are easy to keep in mind.</source>
        <translation>Elija 15 caracteres o más: cuatro palabras sin relación entre sí son fáciles de recordar.</translation>
    </message>
    <message>
        <source>Choose 4 to 64 characters that nobody guesses first: no repeated digit, no run like 1234.</source>
        <translation>Elija de 4 a 64 caracteres que nadie adivine a la primera: sin cifras repetidas, sin series como 1234.</translation>
    </message>
    <message>
        <source>Choose a copy or the mirror to restore from.</source>
        <translation>Elija una copia o el espejo desde donde restaurar.</translation>
    </message>
    <message>
        <source>Choose a day to come.</source>
        <translation>Elija un día futuro.</translation>
    </message>
    <message>
        <source>Choose a file inside it.</source>
        <translation>Elija un archivo que esté dentro.</translation>
    </message>
    <message>
        <source>Choose a file that begins with format = 1 and [procedure].</source>
        <translation>Elija un archivo que empiece con format = 1 y [procedure].</translation>
    </message>
    <message>
        <source>Choose a file that begins with format = 1 and [translation].</source>
        <translation>Elegir un archivo que empiece con format = 1 y [translation].</translation>
    </message>
    <message>
        <source>Choose a file that has [press], [job], [[substrate]] or [procedure] in it.</source>
        <translation>Elija un archivo que contenga [press], [job], [[substrate]] o [procedure].</translation>
    </message>
    <message>
        <source>Choose a file that tautweb export has written with --as json, without --bare.</source>
        <translation>Elija un archivo que tautweb export haya escrito con --as json, sin --bare.</translation>
    </message>
    <message>
        <source>Choose a folder in which you may write.</source>
        <translation>Elija una carpeta en la que pueda escribir.</translation>
    </message>
    <message>
        <source>Choose a folder on another disk, a stick or another machine as well.</source>
        <translation>Elija además una carpeta en otro disco, en una memoria USB o en otro equipo.</translation>
    </message>
    <message>
        <source>Choose a folder that can be written in.</source>
        <translation>Elija una carpeta en la que se pueda escribir.</translation>
    </message>
    <message>
        <source>Choose a folder that you may write in, or have its owner allow writing.</source>
        <translation>Elija una carpeta en la que usted pueda escribir, o haga que su propietario lo permita.</translation>
    </message>
    <message>
        <source>Choose a folder that you may write in, or have its owner allow writing. It can still be read from there.</source>
        <translation>Elija una carpeta en la que usted pueda escribir, o haga que su propietario lo permita. Desde allí aún puede leerse.</translation>
    </message>
    <message>
        <source>Choose a folder that you may write in, with room for the whole logbook.</source>
        <translation>Elija una carpeta en la que usted pueda escribir, con espacio para todo el libro de registro.</translation>
    </message>
    <message>
        <source>Choose a longer one: with the badge it opens what you sign with.</source>
        <translation>Elija una más larga: junto con la credencial abre aquello con lo que usted firma.</translation>
    </message>
    <message>
        <source>Choose a longer time.</source>
        <translation>Elija un periodo más largo.</translation>
    </message>
    <message>
        <source>Choose a practice logbook, or a new name to begin one.</source>
        <translation>Elija un libro de prácticas, o un nombre nuevo para empezar uno.</translation>
    </message>
    <message>
        <source>Choose a reading that is judged.</source>
        <translation>Elija una lectura que se juzgue.</translation>
    </message>
    <message>
        <source>Choose a run.</source>
        <translation>Elija una preparación.</translation>
    </message>
    <message>
        <source>Choose a scenario and begin.</source>
        <translation>Elija un escenario y empiece.</translation>
    </message>
    <message>
        <source>Choose a stage of this run.</source>
        <translation>Elija una etapa de esta preparación.</translation>
    </message>
    <message>
        <source>Choose a step of this run's plan.</source>
        <translation>Elija un paso del plan de esta preparación.</translation>
    </message>
    <message>
        <source>Choose a substrate of the file, or write this one into it.</source>
        <translation>Elija un sustrato del archivo, o escriba este en él.</translation>
    </message>
    <message>
        <source>Choose a zone of this press.</source>
        <translation>Elegir una zona de esta máquina.</translation>
    </message>
    <message>
        <source>Choose a zone with a torque per setting.</source>
        <translation>Elija una zona con par por ajuste.</translation>
    </message>
    <message>
        <source>Choose among: %1.</source>
        <translation>Elija entre: %1.</translation>
    </message>
    <message>
        <source>Choose an id that nobody has had.</source>
        <translation>Elija un id que nadie haya tenido.</translation>
    </message>
    <message>
        <source>Choose another copy, or restore it under another name. Nothing was changed.</source>
        <translation>Elija otra copia, o restáurela con otro nombre. No se cambió nada.</translation>
    </message>
    <message>
        <source>Choose another file, or a new name to begin a new logbook. Nothing was changed.</source>
        <translation>Elija otro archivo, o un nombre nuevo para empezar un libro de registro nuevo. No se cambió nada.</translation>
    </message>
    <message>
        <source>Choose another file.</source>
        <translation>Elegir otro archivo.</translation>
    </message>
    <message>
        <source>Choose another folder, or have its owner allow writing.</source>
        <translation>Elija otra carpeta, o haga que su propietario permita escribir.</translation>
    </message>
    <message>
        <source>Choose another folder.</source>
        <translation>Elija otra carpeta.</translation>
    </message>
    <message>
        <source>Choose another name.</source>
        <translation>Elija otro nombre.</translation>
    </message>
    <message>
        <source>Choose another reading, or a longer time.</source>
        <translation>Elija otra lectura, o un periodo más largo.</translation>
    </message>
    <message>
        <source>Choose another, or leave it empty to keep it.</source>
        <translation>Elija otro, o déjelo vacío para conservarlo.</translation>
    </message>
    <message>
        <source>Choose full, next_roll, re_web or restart.</source>
        <translation>Elija full, next_roll, re_web o restart.</translation>
    </message>
    <message>
        <source>Choose it as well.</source>
        <translation>Elíjala también.</translation>
    </message>
    <message>
        <source>Choose one at hand, or choose to type what its label says.</source>
        <translation>Elija una que esté a mano, o elija escribir lo que dice su etiqueta.</translation>
    </message>
    <message>
        <source>Choose one from the list of runs.</source>
        <translation>Elija una de la lista de preparaciones.</translation>
    </message>
    <message>
        <source>Choose one job or one substrate, or the distance from the target.</source>
        <translation>Elija un solo trabajo o un solo sustrato, o la distancia al objetivo.</translation>
    </message>
    <message>
        <source>Choose one of the presses that are kept here.</source>
        <translation>Elija una de las máquinas guardadas aquí.</translation>
    </message>
    <message>
        <source>Choose one of the training record.</source>
        <translation>Elija uno del registro de formación.</translation>
    </message>
    <message>
        <source>Choose one of: %1.</source>
        <translation>Elija una de estas: %1.</translation>
    </message>
    <message>
        <source>Choose one that stands at the step, or say it in words.</source>
        <translation>Elegir uno de los que están en el paso, o decirlo con palabras.</translation>
    </message>
    <message>
        <source>Choose somebody from the list.</source>
        <translation>Elija a alguien de la lista.</translation>
    </message>
    <message>
        <source>Choose something that does.</source>
        <translation>Elegir algo que sí lo haga.</translation>
    </message>
    <message>
        <source>Choose the job's material, or the job that belongs to this one.</source>
        <translation>Elija el material del trabajo, o el trabajo que corresponde a este.</translation>
    </message>
    <message>
        <source>Choose the name of a file.</source>
        <translation>Elija el nombre de un archivo.</translation>
    </message>
    <message>
        <source>Choose the right file.</source>
        <translation>Elija el archivo correcto.</translation>
    </message>
    <message>
        <source>Choose the shop's own logbook, or open this one from practice.</source>
        <translation>Elija el libro de registro propio del taller, o abra este desde las prácticas.</translation>
    </message>
    <message>
        <source>Choose them in the list of runs.</source>
        <translation>Elíjalas en la lista de preparaciones.</translation>
    </message>
    <message>
        <source>Choose your name and type your PIN.</source>
        <translation>Elija su nombre y escriba su PIN.</translation>
    </message>
    <message>
        <source>Clamp both webs</source>
        <translation>Sujetar las dos bandas</translation>
    </message>
    <message>
        <source>Clamps of the splice table</source>
        <translation>Mordazas de la mesa de empalme</translation>
    </message>
    <message>
        <source>Class of the crawl movement</source>
        <translation>Clase del movimiento en marcha lenta</translation>
    </message>
    <message>
        <source>Class of the inch movement</source>
        <translation>Clase del movimiento a impulsos</translation>
    </message>
    <message>
        <source>Clear of both stops, moving freely, resting about the middle.</source>
        <translation>Separado de ambos topes, con movimiento libre, en reposo más o menos en el centro.</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Close it, with nobody inside.</source>
        <translation>Ciérrelo, sin nadie dentro.</translation>
    </message>
    <message>
        <source>Close other programs that have the logbook open, then do the last thing again.</source>
        <translation>Cierre otros programas que tengan abierto el libro de registro, y repita lo último.</translation>
    </message>
    <message>
        <source>Close the nips and watch the gauge: a supply that falls further feeds a leak or a choked line.</source>
        <translation>Cierre los nips y observe el manómetro: si la presión de entrada cae más, hay una fuga o una línea obstruida.</translation>
    </message>
    <message>
        <source>Colour to colour</source>
        <translation>Color a color</translation>
    </message>
    <message>
        <source>Come up to it slowly from below, beside the roll, never under it. If nothing has moved at %1, stop: something is stuck. Never raise the pressure with anybody near the roll.</source>
        <translation>Acérquese despacio desde abajo, al lado de la bobina, nunca debajo de ella. Si nada se ha movido en %1, deténgase: algo está atascado. No suba nunca la presión con alguien cerca de la bobina.</translation>
    </message>
    <message>
        <source>Compare it with the label and take it over, or put it away.</source>
        <translation>Compararla con la etiqueta y tomar sus datos, o quitarla.</translation>
    </message>
    <message>
        <source>Compare it with the running strain: above that an edge goes slack.</source>
        <translation>Compárelo con el alargamiento en marcha: por encima de él, un borde se afloja.</translation>
    </message>
    <message>
        <source>Compare the newest printed sheet with what was restored: its anchor says how many seals there were.</source>
        <translation>Compare la hoja impresa más reciente con lo restaurado: su ancla dice cuántos sellos había.</translation>
    </message>
    <message>
        <source>Compressed air</source>
        <translation>Aire comprimido</translation>
    </message>
    <message>
        <source>Control limits stand three sigma from the centre. Centre and sigma are reckoned from all readings of a phase: sigma is their mean difference to the one before, over 1.128 (NIST/SEMATECH handbook, 6.3.2.2).</source>
        <translation>Los límites de control están a tres sigmas del centro. Centro y sigma se calculan con todas las lecturas de una fase: sigma es su diferencia media con la anterior, entre 1,128 (manual NIST/SEMATECH, 6.3.2.2).</translation>
    </message>
    <message>
        <source>Control limits stand three sigma from the centre. Centre and sigma are reckoned from the first %1 readings of a phase: sigma is their mean difference to the one before, over 1.128 (NIST/SEMATECH handbook, 6.3.2.2).</source>
        <translation>Los límites de control están a tres sigmas del centro. Centro y sigma se calculan con las primeras %1 lecturas de una fase: sigma es su diferencia media con la anterior, entre 1,128 (manual NIST/SEMATECH, 6.3.2.2).</translation>
    </message>
    <message>
        <source>Copy it again from the foot of the sheet, or scan the sheet's code.</source>
        <translation>Cópielo otra vez del pie de la hoja, o escanee el código de la hoja.</translation>
    </message>
    <message>
        <source>Copy it from the printed record, or from tautweb practice --record.</source>
        <translation>Cópielo del registro impreso, o de tautweb practice --record.</translation>
    </message>
    <message>
        <source>Core</source>
        <translation>Núcleo</translation>
    </message>
    <message>
        <source>Core adapter needed</source>
        <translation>Adaptador de núcleo necesario</translation>
    </message>
    <message>
        <source>Correct its kind, or name another roller there.</source>
        <translation>Corrija su clase, o nombre otro rodillo ahí.</translation>
    </message>
    <message>
        <source>Correct splice_table.after in the press's profile.</source>
        <translation>Corrija splice_table.after en el perfil de la máquina.</translation>
    </message>
    <message>
        <source>Corrected after it was sealed</source>
        <translation>Corregido después de sellarse</translation>
    </message>
    <message>
        <source>Corrected since it was sealed. The settings and steps below are as they were sealed; what stood and what it should be stands under "Corrected after it was sealed".</source>
        <translation>Corregida después de sellarse. Los ajustes y pasos de abajo están como se sellaron; lo que decía y lo que debe ser está en «Corregido después de sellarse».</translation>
    </message>
    <message>
        <source>Corrections, by step</source>
        <translation>Correcciones, por paso</translation>
    </message>
    <message>
        <source>Count as many columns as rows.</source>
        <translation>Cuente tantas columnas como filas.</translation>
    </message>
    <message>
        <source>Count each thing once.</source>
        <translation>Cuente cada cosa una vez.</translation>
    </message>
    <message>
        <source>Count on more: the splice is watched through every station.</source>
        <translation>Cuente con más: el empalme se vigila por cada estación.</translation>
    </message>
    <message>
        <source>Count the lanes across the web, and the labels in one turn of the plate cylinder.</source>
        <translation>Cuente las pistas a lo ancho de la banda, y las etiquetas en una vuelta del cilindro portaplanchas.</translation>
    </message>
    <message>
        <source>Count the same runs.</source>
        <translation>Contar las mismas preparaciones.</translation>
    </message>
    <message>
        <source>Count the wraps that are turned onto the core before the web pulls, three as a rule, and look at core_friction, 0.2 for paper on a core.</source>
        <translation>Cuente las vueltas que se dan sobre el núcleo antes de que la banda tire, tres por regla general, y mire core_friction, 0.2 para papel sobre un núcleo.</translation>
    </message>
    <message>
        <source>Cp (spread from run to run)</source>
        <translation>Cp (dispersión entre preparaciones)</translation>
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
        <translation>Cpk (el límite más cercano)</translation>
    </message>
    <message>
        <source>Cut along a rule</source>
        <translation>Cortar con regla</translation>
    </message>
    <message>
        <source>Cut by eye</source>
        <translation>Cortar a ojo</translation>
    </message>
    <message>
        <source>Cut out of square across the web</source>
        <translation>Corte fuera de escuadra a lo ancho de la banda</translation>
    </message>
    <message>
        <source>D2, as near as can be set</source>
        <translation>D2, lo más cercano ajustable</translation>
    </message>
    <message>
        <source>DRAFT: ended, but not sealed yet</source>
        <translation>BORRADOR: terminada, pero aún sin sellar</translation>
    </message>
    <message>
        <source>DRAFT: this run is still open and nobody has signed it</source>
        <translation>BORRADOR: esta preparación sigue abierta y nadie la ha firmado</translation>
    </message>
    <message>
        <source>Danger: %1</source>
        <translation>Peligro: %1</translation>
    </message>
    <message>
        <source>Date and time</source>
        <translation>Fecha y hora</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Día</translation>
    </message>
    <message>
        <source>Days</source>
        <translation>Días</translation>
    </message>
    <message>
        <source>Decision rule, guarded acceptance (w = U): a reading is judged against the limits as they stand, with guard bands as wide as the expanded uncertainty U (k = 2) of the instrument that was read. Inside: U or more away from both limits. Near: within the limits, less than U from one. Outside: beyond a limit; doubtful while less than U beyond it. A gap has no guard band at nought. Limits are rounded inward and never widened.</source>
        <translation>Regla de decisión, aceptación con banda de guarda (w = U): una lectura se juzga con los límites tal como están, con bandas de guarda tan anchas como la incertidumbre expandida U (k = 2) del instrumento leído. Dentro: a U o más de ambos límites. Cerca del límite: dentro de los límites, a menos de U de uno. Fuera: más allá de un límite; dudoso mientras lo supere en menos de U. Una separación no tiene banda de guarda en cero. Los límites se redondean hacia dentro y nunca se amplían.</translation>
    </message>
    <message>
        <source>Deviations</source>
        <translation>Desviaciones</translation>
    </message>
    <message>
        <source>Deviations, by step</source>
        <translation>Desviaciones, por paso</translation>
    </message>
    <message>
        <source>Diameter</source>
        <translation>Diámetro</translation>
    </message>
    <message>
        <source>Diameter after the outer wraps</source>
        <translation>Diámetro sin las vueltas exteriores</translation>
    </message>
    <message>
        <source>Diameter at which the automatic stop acts</source>
        <translation>Diámetro en el que actúa el paro automático</translation>
    </message>
    <message>
        <source>Diameter that the drive works with: %1</source>
        <translation>Diámetro con el que trabaja el accionamiento: %1</translation>
    </message>
    <message>
        <source>Did not apply, by step</source>
        <translation>No procede, por paso</translation>
    </message>
    <message>
        <source>Did you mean %1?</source>
        <translation>¿Quiso decir %1?</translation>
    </message>
    <message>
        <source>Did you mean %1? Else take it out.</source>
        <translation>¿Quiso decir %1? Si no, quítelo.</translation>
    </message>
    <message>
        <source>Die to print</source>
        <translation>Troquel a impresión</translation>
    </message>
    <message>
        <source>Difference to the one before, %1</source>
        <translation>Diferencia con la anterior, %1</translation>
    </message>
    <message>
        <source>Differences beyond their limit: %1.</source>
        <translation>Diferencias fuera de su límite: %1.</translation>
    </message>
    <message>
        <source>Distance between the two sensors</source>
        <translation>Distancia entre los dos sensores</translation>
    </message>
    <message>
        <source>Do it and answer it. If it cannot be done, withdraw the press or abandon the run.</source>
        <translation>Hágalo y respóndalo. Si no puede hacerse, retire la máquina del servicio o abandone la preparación.</translation>
    </message>
    <message>
        <source>Do it for the first time.</source>
        <translation>Hágalo por primera vez.</translation>
    </message>
    <message>
        <source>Do not go by it. Restore the logbook from a copy.</source>
        <translation>No fiarse de él. Restaurar el libro de registro desde una copia.</translation>
    </message>
    <message>
        <source>Do not trust it. Ask who wrote in this file, and with which program.</source>
        <translation>No se fíe de él. Pregunte quién escribió en este archivo y con qué programa.</translation>
    </message>
    <message>
        <source>Do not trust this file. Ask for the run to be exported once more, or look at the logbook itself.</source>
        <translation>No confíe en este archivo. Pida que se exporte de nuevo la preparación, o mire el propio libro de registro.</translation>
    </message>
    <message>
        <source>Do not trust this record. Compare it with the printed sheets and restore the logbook from a backup.</source>
        <translation>No confíe en este registro. Compárelo con las hojas impresas y restaure el libro de registro desde una copia de seguridad.</translation>
    </message>
    <message>
        <source>Do not trust this record. Restore the logbook from a backup and compare it with the printed sheets.</source>
        <translation>No confíe en este registro. Restaure el libro de registro desde una copia de seguridad y compárelo con las hojas impresas.</translation>
    </message>
    <message>
        <source>Do not trust this record. Restore the logbook from a backup, or export the run once more.</source>
        <translation>No confíe en este registro. Restaure el libro de registro desde una copia de seguridad, o exporte de nuevo la preparación.</translation>
    </message>
    <message>
        <source>Do that first.</source>
        <translation>Haga eso primero.</translation>
    </message>
    <message>
        <source>Does it fit its window?</source>
        <translation>¿Cabe en su margen?</translation>
    </message>
    <message>
        <source>Done beside the running press</source>
        <translation>Hecho con la máquina en marcha</translation>
    </message>
    <message>
        <source>Draft of a set-up sheet: what each setting should be here, and what has been read so far</source>
        <translation>Borrador de una hoja de ajuste: lo que debe ser cada ajuste aquí, y lo leído hasta ahora</translation>
    </message>
    <message>
        <source>Drawn across with test ink; the ink maker's figure comes first. Ink beads on film that has lost it.</source>
        <translation>Trazado a lo ancho con tinta de prueba; la cifra del fabricante de la tinta va primero. La tinta forma gotas sobre película que lo ha perdido.</translation>
    </message>
    <message>
        <source>Drive-side edge from the frame</source>
        <translation>Borde del lado transmisión desde el bastidor</translation>
    </message>
    <message>
        <source>Drive-side sensor from the frame</source>
        <translation>Sensor del lado transmisión desde el bastidor</translation>
    </message>
    <message>
        <source>Dryer of station %1</source>
        <translation>Secador de la estación %1</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>Vence</translation>
    </message>
    <message>
        <source>Edge to edge, or one over the other.</source>
        <translation>De borde a borde, o uno sobre otro.</translation>
    </message>
    <message>
        <source>Edition %2 of the %3 %1 is not kept in this logbook, so a run cannot name it.</source>
        <translation>La edición %2 de %3 %1 no se guarda en este libro de registro, así que una preparación no puede nombrarla.</translation>
    </message>
    <message>
        <source>Eight points in a row are more than 1 sigma out, on both sides.</source>
        <translation>Ocho puntos seguidos están a más de 1 sigma, a ambos lados.</translation>
    </message>
    <message>
        <source>Eight points in a row are on one side of the centre.</source>
        <translation>Ocho puntos seguidos están a un lado del centro.</translation>
    </message>
    <message>
        <source>End it and seal it first; until then it is changed by its own steps.</source>
        <translation>Termínela y séllela primero; hasta entonces se cambia con sus propios pasos.</translation>
    </message>
    <message>
        <source>End it with the same full stop, question mark or colon, or with none.</source>
        <translation>Terminarlo con el mismo punto, signo de interrogación o dos puntos, o sin nada.</translation>
    </message>
    <message>
        <source>Ended</source>
        <translation>Terminada</translation>
    </message>
    <message>
        <source>Engage all of them</source>
        <translation>Acoplarlas todas</translation>
    </message>
    <message>
        <source>Engage more of the clutch.</source>
        <translation>Active más parte del embrague.</translation>
    </message>
    <message>
        <source>English</source>
        <translation>inglés</translation>
    </message>
    <message>
        <source>Enrol a second supervisor first.</source>
        <translation>Dé de alta primero a un segundo supervisor.</translation>
    </message>
    <message>
        <source>Enrol a supervisor first.</source>
        <translation>Dé de alta primero a un supervisor.</translation>
    </message>
    <message>
        <source>Enter %1.</source>
        <translation>Introduzca %1.</translation>
    </message>
    <message>
        <source>Enter by what share of the tension it falls, less than all of it.</source>
        <translation>Introduzca en qué parte de la tensión disminuye, menos que toda ella.</translation>
    </message>
    <message>
        <source>Enter how rough the rollers and the material are.</source>
        <translation>Introduzca la rugosidad de los rodillos y del material.</translation>
    </message>
    <message>
        <source>Enter that speed beside it, as at. Measured from less, the press takes more web to stop than is reckoned.</source>
        <translation>Introduzca al lado esa velocidad, como at. Medida desde menos, la máquina necesita más banda para parar de lo calculado.</translation>
    </message>
    <message>
        <source>Enter the largest diameter that the customer takes, core included.</source>
        <translation>Introduzca el diámetro máximo que admite el cliente, núcleo incluido.</translation>
    </message>
    <message>
        <source>Enter the range with the job or the material, and take them out here.</source>
        <translation>Introduzca el rango con el trabajo o el material, y quítelos de aquí.</translation>
    </message>
    <message>
        <source>Enter the zone that ends at %1 in the press profile, before this one.</source>
        <translation>Introduzca en el perfil de la máquina la zona que termina en %1, antes de esta.</translation>
    </message>
    <message>
        <source>Enter them as the panel shows them, all in one kind of unit.</source>
        <translation>Introducirlos como los muestra el panel, todos en el mismo tipo de unidad.</translation>
    </message>
    <message>
        <source>Enter what its gauge or panel showed, or mend the range in the press profile first.</source>
        <translation>Introduzca lo que mostraba su manómetro o panel, o corrija antes el margen en el perfil de la máquina.</translation>
    </message>
    <message>
        <source>Enter where the torque begins, and the most that can be set, each by its own figure.</source>
        <translation>Introduzca dónde empieza el par, y lo máximo ajustable, cada uno con su propia cifra.</translation>
    </message>
    <message>
        <source>Enter with the job or the material what is to hold, and take them out here.</source>
        <translation>Introduzca con el trabajo o el material lo que ha de valer, y quítelos de aquí.</translation>
    </message>
    <message>
        <source>Entered is %1; the tag says %2.</source>
        <translation>Se introdujo %1; la tarjeta dice %2.</translation>
    </message>
    <message>
        <source>Event %1 of run %2 stands out of its order.</source>
        <translation>El suceso %1 de la preparación %2 está fuera de su orden.</translation>
    </message>
    <message>
        <source>Event %1 of the document names a target set, a plan or a target that is not in it.</source>
        <translation>El suceso %1 del documento nombra un conjunto de valores objetivo, un plan o un valor objetivo que no está en él.</translation>
    </message>
    <message>
        <source>Event %1 of the document stands out of its order.</source>
        <translation>El suceso %1 del documento está fuera de su orden.</translation>
    </message>
    <message>
        <source>Every</source>
        <translation>Cada</translation>
    </message>
    <message>
        <source>Every emergency stop is released</source>
        <translation>Todos los paros de emergencia están desenclavados</translation>
    </message>
    <message>
        <source>Every guard is closed</source>
        <translation>Todos los resguardos están cerrados</translation>
    </message>
    <message>
        <source>Every part was read the same by everybody, each time.</source>
        <translation>Todos leyeron cada pieza igual todas las veces.</translation>
    </message>
    <message>
        <source>Every reading in the order in which it was taken</source>
        <translation>Todas las lecturas en el orden en que se tomaron</translation>
    </message>
    <message>
        <source>Every step, to be ticked by hand and typed in afterwards as a transcription</source>
        <translation>Todos los pasos, para marcarlos a mano e introducirlos después como transcripción</translation>
    </message>
    <message>
        <source>Every step, what was answered, by whom and when</source>
        <translation>Todos los pasos, qué se respondió, quién y cuándo</translation>
    </message>
    <message>
        <source>Everybody is clear of the press</source>
        <translation>Todos están apartados de la máquina</translation>
    </message>
    <message>
        <source>Everything is reckoned with the material's own caliper, and this lies beyond its tolerance: run a roll off by a counter, and enter the caliper that its length gives.</source>
        <translation>Todo se calcula con el espesor propio del material, y este queda fuera de su tolerancia: pase una bobina con un contador, e introduzca el espesor que da su longitud.</translation>
    </message>
    <message>
        <source>Everything is reckoned with the material's own caliper: the two agree within its tolerance, and a label's length is no measurement.</source>
        <translation>Todo se calcula con el espesor propio del material: ambos coinciden dentro de su tolerancia, y la longitud de una etiqueta no es una medición.</translation>
    </message>
    <message>
        <source>Expect it to move as soon as air is on: stand clear and let the air in slowly. Check the bore, the pistons and the least pressure in the press profile: the heaviest roll would rise so too.</source>
        <translation>Espere que se mueva en cuanto haya aire: apártese y deje entrar el aire despacio. Compruebe el diámetro interior, los pistones y la presión mínima en el perfil de la máquina: la bobina más pesada también subiría así.</translation>
    </message>
    <message>
        <source>Export the run once more.</source>
        <translation>Exporte de nuevo la preparación.</translation>
    </message>
    <message>
        <source>Fall of the air supply while nips close</source>
        <translation>Caída de la presión de aire al cerrar los nips</translation>
    </message>
    <message>
        <source>Falling tension keeps the inner turns from being crushed and the outer from sliding.</source>
        <translation>La tensión decreciente evita que las vueltas interiores se aplasten y que las exteriores resbalen.</translation>
    </message>
    <message>
        <source>Fed</source>
        <translation>Alimentada</translation>
    </message>
    <message>
        <source>Fetch the text again from where it came, or mend it at that place.</source>
        <translation>Traiga de nuevo el texto de donde vino, o corríjalo en ese lugar.</translation>
    </message>
    <message>
        <source>Fifteen points in a row are within 1 sigma of the centre.</source>
        <translation>Quince puntos seguidos están a menos de 1 sigma del centro.</translation>
    </message>
    <message>
        <source>Fill it in, or go back.</source>
        <translation>Complételo, o vuelva atrás.</translation>
    </message>
    <message>
        <source>Find out why it was, release it, and reset.</source>
        <translation>Averigüe por qué lo estaba, suéltelo y rearme.</translation>
    </message>
    <message>
        <source>Finish it or abandon it first: what is open here goes on only in the file that is set aside.</source>
        <translation>Termínela o abandónela primero: lo que está abierto aquí solo sigue en el archivo que se aparta.</translation>
    </message>
    <message>
        <source>Finish it, or leave it.</source>
        <translation>Terminarlo, o dejarlo.</translation>
    </message>
    <message>
        <source>Finished rolls are said to be %1 across, no more than the core on %3, %2 outside.</source>
        <translation>Las bobinas terminadas se indican con %1 de diámetro, no más que el núcleo en %3, %2 por fuera.</translation>
    </message>
    <message>
        <source>Finished rolls may be %1 across; %2 winds %3 at most.</source>
        <translation>Las bobinas terminadas pueden medir %1 de diámetro; %2 enrolla %3 como máximo.</translation>
    </message>
    <message>
        <source>First day</source>
        <translation>Primer día</translation>
    </message>
    <message>
        <source>First run of it</source>
        <translation>Primera preparación</translation>
    </message>
    <message>
        <source>Fit an ultrasonic sensor, or guide on a printed line.</source>
        <translation>Monte un sensor ultrasónico, o guíe por una línea impresa.</translation>
    </message>
    <message>
        <source>Fit them</source>
        <translation>Montarlos</translation>
    </message>
    <message>
        <source>Formula %1 has no answer for these values. It holds for: %2.</source>
        <translation>La fórmula %1 no tiene respuesta para estos valores. Vale para: %2.</translation>
    </message>
    <message>
        <source>Formula %1 has no argument %2.</source>
        <translation>La fórmula %1 no tiene el argumento %2.</translation>
    </message>
    <message>
        <source>Formula %1 needs %2 (%3).</source>
        <translation>La fórmula %1 necesita %2 (%3).</translation>
    </message>
    <message>
        <source>Found</source>
        <translation>Hallado</translation>
    </message>
    <message>
        <source>Four of five points are more than 1 sigma out on one side.</source>
        <translation>Cuatro de cinco puntos están a más de 1 sigma a un lado.</translation>
    </message>
    <message>
        <source>Fourteen points in a row go up and down in turn.</source>
        <translation>Catorce puntos seguidos suben y bajan por turnos.</translation>
    </message>
    <message>
        <source>Free some room on this disk, or choose a folder on another one.</source>
        <translation>Libere espacio en este disco, o elija una carpeta en otro.</translation>
    </message>
    <message>
        <source>Free some room on this disk, or choose another disk, then try again.</source>
        <translation>Libere espacio en este disco, o elija otro disco, y reinténtelo.</translation>
    </message>
    <message>
        <source>Free some room on this disk, then do the last thing again.</source>
        <translation>Libere espacio en este disco, y repita lo último.</translation>
    </message>
    <message>
        <source>Free some room there, and the mirror catches up by itself; or choose a folder on another disk.</source>
        <translation>Libere espacio allí, y el espejo se pondrá al día solo; o elija una carpeta en otro disco.</translation>
    </message>
    <message>
        <source>Free some room there, or choose a folder on another disk.</source>
        <translation>Libere espacio allí, o elija una carpeta en otro disco.</translation>
    </message>
    <message>
        <source>Free web before the guide.</source>
        <translation>Banda libre antes del guiador.</translation>
    </message>
    <message>
        <source>Free web behind it.</source>
        <translation>Banda libre detrás de él.</translation>
    </message>
    <message>
        <source>Friction of the web on the core and on itself.</source>
        <translation>Rozamiento de la banda sobre el núcleo y sobre sí misma.</translation>
    </message>
    <message>
        <source>From %1 (run %2) it was %3 higher for a time: %4 times its usual scatter.</source>
        <translation>Desde %1 (preparación %2) estuvo un tiempo %3 por encima: %4 veces su dispersión habitual.</translation>
    </message>
    <message>
        <source>From %1 (run %2) it was %3 lower for a time: %4 times its usual scatter.</source>
        <translation>Desde %1 (preparación %2) estuvo un tiempo %3 por debajo: %4 veces su dispersión habitual.</translation>
    </message>
    <message>
        <source>From a quarter (a public rule, S79) to a half (an ink maker's chart, S80) of the cells reaches the web: the middle, for film and mass alike; pan and hoses come on top.</source>
        <translation>De un cuarto (una regla pública, S79) a la mitad (la tabla de un fabricante de tinta, S80) de las celdas llega a la banda: el valor medio, igual para película y masa; la cubeta y las mangueras van aparte.</translation>
    </message>
    <message>
        <source>From its pivot to the cylinder.</source>
        <translation>De su pivote al cilindro.</translation>
    </message>
    <message>
        <source>From its pivot to the roller.</source>
        <translation>De su pivote al rodillo.</translation>
    </message>
    <message>
        <source>From job speed the press takes %1 of web to stop; the automatic stop's reserve is %2: the end of the web would run off the roll.</source>
        <translation>Desde la velocidad del trabajo la máquina necesita %1 de banda para parar; la reserva del paro automático es %2: el final de la banda se saldría de la bobina.</translation>
    </message>
    <message>
        <source>From one end to the other of what the draw is known to. Where that is wider than the window of tension per width, draw does not set this web.</source>
        <translation>De un extremo al otro de lo que se conoce el estirado. Donde eso es más ancho que el margen de la tensión por ancho, el estirado no fija esta banda.</translation>
    </message>
    <message>
        <source>From one reading to the next</source>
        <translation>De una lectura a la siguiente</translation>
    </message>
    <message>
        <source>From running to standstill by the emergency stop.</source>
        <translation>De la marcha a la parada por el paro de emergencia.</translation>
    </message>
    <message>
        <source>From running to standstill by the ordinary stop.</source>
        <translation>De la marcha a la parada por el paro normal.</translation>
    </message>
    <message>
        <source>From standstill to running.</source>
        <translation>De la parada a la marcha.</translation>
    </message>
    <message>
        <source>From that face to the middle of the web.</source>
        <translation>De esa cara al centro de la banda.</translation>
    </message>
    <message>
        <source>From the diameters measured now.</source>
        <translation>A partir de los diámetros medidos ahora.</translation>
    </message>
    <message>
        <source>From the inner face of one frame to that of the other.</source>
        <translation>De la cara interior de un bastidor a la del otro.</translation>
    </message>
    <message>
        <source>From the mass, since a diameter is missing.</source>
        <translation>A partir de la masa, ya que falta un diámetro.</translation>
    </message>
    <message>
        <source>From the middle it can follow the print to both sides; across goes by the same share.</source>
        <translation>Desde el centro puede seguir la impresión hacia ambos lados; a lo ancho va por la misma parte.</translation>
    </message>
    <message>
        <source>From the middle of one sensor's window to the middle of the other's.</source>
        <translation>Desde el centro de la ventana de un sensor hasta el centro de la del otro.</translation>
    </message>
    <message>
        <source>From the roll to the rewind along the drawn path; a leader wants a metre more at each end.</source>
        <translation>De la bobina al rebobinador por el recorrido dibujado; un tramo guía pide un metro más en cada extremo.</translation>
    </message>
    <message>
        <source>From what speed %1 was measured is not said: it is taken for that from the job's, %2.</source>
        <translation>No se indica a qué velocidad se midió %1: se toma desde la del trabajo, %2.</translation>
    </message>
    <message>
        <source>Full set-ups</source>
        <translation>Completas</translation>
    </message>
    <message>
        <source>Gap between the butted edges</source>
        <translation>Separación entre los bordes a tope</translation>
    </message>
    <message>
        <source>German</source>
        <translation>alemán</translation>
    </message>
    <message>
        <source>Give %1 as a plain number.</source>
        <translation>Indique %1 como un número sin más.</translation>
    </message>
    <message>
        <source>Give %1 in %2 or another unit of the same kind.</source>
        <translation>Indique %1 en %2 o en otra unidad de la misma clase.</translation>
    </message>
    <message>
        <source>Give a lower or an upper limit, or both.</source>
        <translation>Dar un límite inferior, uno superior o ambos.</translation>
    </message>
    <message>
        <source>Give an id, and a role: operator, supervisor, trainer or trainee.</source>
        <translation>Indique un id y un rol: operator, supervisor, trainer o trainee.</translation>
    </message>
    <message>
        <source>Give both, or take the index of that side.</source>
        <translation>Dar ambos o tomar el índice de ese lado.</translation>
    </message>
    <message>
        <source>Give each its own id: answers and records are kept under it.</source>
        <translation>Dé a cada uno su propio id: respuestas y registros se guardan con él.</translation>
    </message>
    <message>
        <source>Give each its own word.</source>
        <translation>Dé a cada uno su propia palabra.</translation>
    </message>
    <message>
        <source>Give each person an id of their own.</source>
        <translation>Dé a cada persona un id propio.</translation>
    </message>
    <message>
        <source>Give every argument once: %1.</source>
        <translation>Indique cada argumento una vez: %1.</translation>
    </message>
    <message>
        <source>Give it the number after that of the last edition.</source>
        <translation>Dele el número que sigue al de la última edición.</translation>
    </message>
    <message>
        <source>Give it up</source>
        <translation>Levantarlo</translation>
    </message>
    <message>
        <source>Give roller %1 a diameter above zero. The unwind and the rewinds take theirs from the roll.</source>
        <translation>Dé al rodillo %1 un diámetro mayor que cero. El desbobinador y los rebobinadores toman el suyo de la bobina.</translation>
    </message>
    <message>
        <source>Give the file a name of at most 120 letters and attach it again.</source>
        <translation>Dar al archivo un nombre de 120 letras como máximo y adjuntarlo de nuevo.</translation>
    </message>
    <message>
        <source>Give the file its id and try again.</source>
        <translation>Dé al archivo su id e inténtelo de nuevo.</translation>
    </message>
    <message>
        <source>Give the ink a station of this press, or take another press.</source>
        <translation>Dé a la tinta una estación de esta máquina, o elija otra máquina.</translation>
    </message>
    <message>
        <source>Give the name as it stands in the list of held stops.</source>
        <translation>Indique el nombre como está en la lista de paros mantenidos.</translation>
    </message>
    <message>
        <source>Give the sigma of the chart.</source>
        <translation>Indique la sigma del gráfico.</translation>
    </message>
    <message>
        <source>Give the web that leaves the drawn plane after %1 as a length, or leave it out.</source>
        <translation>Indique como longitud la banda que deja el plano del dibujo después de %1, o no la indique.</translation>
    </message>
    <message>
        <source>Give them the other way round.</source>
        <translation>Darlos al revés.</translation>
    </message>
    <message>
        <source>Give this deck another station; it is left out until then.</source>
        <translation>Dé a este cuerpo impresor otra estación; hasta entonces no se tiene en cuenta.</translation>
    </message>
    <message>
        <source>Give this one an id of its own.</source>
        <translation>Dele a este un id propio.</translation>
    </message>
    <message>
        <source>Give this one another name; it is left out until then.</source>
        <translation>Dé a este otro nombre; hasta entonces no se tiene en cuenta.</translation>
    </message>
    <message>
        <source>Give this one another number; it is left out until then.</source>
        <translation>Dé a este otro número; hasta entonces no se tiene en cuenta.</translation>
    </message>
    <message>
        <source>Give this rewind another name; it is left out until then.</source>
        <translation>Dé a este rebobinador otro nombre; hasta entonces no se tiene en cuenta.</translation>
    </message>
    <message>
        <source>Give torque_per_setting, zero_setting and the range in the same kind of unit.</source>
        <translation>Indique torque_per_setting, zero_setting y el rango en la misma clase de unidad.</translation>
    </message>
    <message>
        <source>Give where they begin in rising order.</source>
        <translation>Indicar dónde empiezan en orden creciente.</translation>
    </message>
    <message>
        <source>Go back to it, do it, and answer it.</source>
        <translation>Vuelva a él, hágalo y respóndalo.</translation>
    </message>
    <message>
        <source>Go on there, or close the program there; this one can then take over at once.</source>
        <translation>Siga allí, o cierre el programa allí; entonces este puede continuar enseguida.</translation>
    </message>
    <message>
        <source>Go on with it, sign it off, or abandon it with a reason.</source>
        <translation>Siga con ella, fírmela y ciérrela, o abandónela con un motivo.</translation>
    </message>
    <message>
        <source>Go to the press, make it safe, look at each of these, and say it.</source>
        <translation>Vaya a la máquina, asegúrela, mire cada uno de estos puntos, y declárelo.</translation>
    </message>
    <message>
        <source>Good pieces ordered.</source>
        <translation>Piezas buenas pedidas.</translation>
    </message>
    <message>
        <source>Good when the roll was weighed; the core's mass must be taken off.</source>
        <translation>Bueno si la bobina se pesó; hay que descontar la masa del núcleo.</translation>
    </message>
    <message>
        <source>Guidance for older presses: your manual and risk assessment prevail. Measure both; wear makes them grow.</source>
        <translation>Guía para máquinas antiguas: prevalecen su manual y su evaluación de riesgos. Mida ambos; el desgaste los hace crecer.</translation>
    </message>
    <message>
        <source>Guide %1 does not stand in the middle of its stroke.</source>
        <translation>El guiador %1 no está en el centro de su carrera.</translation>
    </message>
    <message>
        <source>Guide %1 stands at its end, and the web goes on.</source>
        <translation>El guiador %1 está en su extremo, y la banda sigue yéndose.</translation>
    </message>
    <message>
        <source>Guide %1 swings to and fro.</source>
        <translation>El guiador %1 oscila de un lado a otro.</translation>
    </message>
    <message>
        <source>Guide at rest, from its middle</source>
        <translation>Guiador en reposo, desde su centro</translation>
    </message>
    <message>
        <source>Guides and sensors follow the width that is there, not the one ordered.</source>
        <translation>Guiadores y sensores siguen el ancho que hay, no el pedido.</translation>
    </message>
    <message>
        <source>Half covered, half open: then it sees both ways equally far.</source>
        <translation>Medio cubierto, medio abierto: así ve igual de lejos hacia ambos lados.</translation>
    </message>
    <message>
        <source>Hand it over to somebody else, or go on.</source>
        <translation>Entréguela a otra persona, o siga.</translation>
    </message>
    <message>
        <source>Hands are in the press while this step moves it.</source>
        <translation>Hay manos dentro de la máquina mientras este paso la mueve.</translation>
    </message>
    <message>
        <source>Hands go into the press here and no stop is held.</source>
        <translation>Aquí se meten las manos en la máquina y no hay ningún paro mantenido.</translation>
    </message>
    <message>
        <source>Hands go into the press here, and no stop is held.</source>
        <translation>Aquí se meten las manos en la máquina, y no hay ningún paro mantenido.</translation>
    </message>
    <message>
        <source>Hands were in the way of the web while it moved.</source>
        <translation>Había manos en el camino de la banda mientras se movía.</translation>
    </message>
    <message>
        <source>Hang it as the feed direction says, and look at the face before joining.</source>
        <translation>Cuélguela según el sentido de alimentación, y mire la cara antes de unir.</translation>
    </message>
    <message>
        <source>Hang it so that the web leaves the roll's top: then its face meets the plates.</source>
        <translation>Cuélguela de modo que la banda salga por arriba de la bobina: así su cara da con las planchas.</translation>
    </message>
    <message>
        <source>Hang it so that the web leaves the roll's underside: then its face meets the plates.</source>
        <translation>Cuélguela de modo que la banda salga por abajo de la bobina: así su cara da con las planchas.</translation>
    </message>
    <message>
        <source>Happened</source>
        <translation>Sucesos</translation>
    </message>
    <message>
        <source>Have a larger cylinder or a longer lever fitted to the dancer.</source>
        <translation>Haga montar en el bailarín un cilindro mayor o una palanca más larga.</translation>
    </message>
    <message>
        <source>Have a load cell of a larger range fitted.</source>
        <translation>Haga montar una célula de carga de mayor rango.</translation>
    </message>
    <message>
        <source>Have a load cell of a smaller range fitted.</source>
        <translation>Haga montar una célula de carga de menor rango.</translation>
    </message>
    <message>
        <source>Have a smaller cylinder or a shorter lever fitted to the dancer.</source>
        <translation>Haga montar en el bailarín un cilindro menor o una palanca más corta.</translation>
    </message>
    <message>
        <source>Have a stronger drive fitted.</source>
        <translation>Haga montar un accionamiento más fuerte.</translation>
    </message>
    <message>
        <source>Have a supervisor do it who had no part in this run.</source>
        <translation>Que lo haga un supervisor que no haya participado en esta preparación.</translation>
    </message>
    <message>
        <source>Have a supervisor do it.</source>
        <translation>Que lo haga un supervisor.</translation>
    </message>
    <message>
        <source>Have a supervisor keep the file in the logbook first.</source>
        <translation>Que un supervisor guarde primero el archivo en el libro de registro.</translation>
    </message>
    <message>
        <source>Have a supervisor keep this file in the logbook first.</source>
        <translation>Que un supervisor guarde primero este archivo en el libro de registro.</translation>
    </message>
    <message>
        <source>Have a supervisor look at it here and sign beside you.</source>
        <translation>Que un supervisor lo compruebe aquí y firme junto a usted.</translation>
    </message>
    <message>
        <source>Have a supervisor look at it, sign in here and seal it themselves.</source>
        <translation>Que un supervisor lo compruebe, inicie sesión aquí y lo selle por sí mismo.</translation>
    </message>
    <message>
        <source>Have a supervisor sign in and do it.</source>
        <translation>Que un supervisor inicie sesión y lo haga.</translation>
    </message>
    <message>
        <source>Have a supervisor sign in first.</source>
        <translation>Que un supervisor inicie sesión primero.</translation>
    </message>
    <message>
        <source>Have a trainer or a supervisor look at it.</source>
        <translation>Que lo mire un instructor o un supervisor.</translation>
    </message>
    <message>
        <source>Have a weaker drive fitted.</source>
        <translation>Haga montar un accionamiento más débil.</translation>
    </message>
    <message>
        <source>Have another supervisor look at it.</source>
        <translation>Que lo mire otro supervisor.</translation>
    </message>
    <message>
        <source>Have another supervisor review it.</source>
        <translation>Que la revise otro supervisor.</translation>
    </message>
    <message>
        <source>Have another trainer look at it.</source>
        <translation>Que lo mire otro instructor.</translation>
    </message>
    <message>
        <source>Have both judge the same things first.</source>
        <translation>Haga que ambos juzguen primero las mismas cosas.</translation>
    </message>
    <message>
        <source>Have both judge things of which some are not as the others.</source>
        <translation>Haga que ambos juzguen cosas de las que algunas sean distintas.</translation>
    </message>
    <message>
        <source>Have it corrected first; where nothing was wrong, a correction by a remark says so.</source>
        <translation>Haga que se corrija primero; si no había nada mal, una corrección con una observación lo dice.</translation>
    </message>
    <message>
        <source>Have its owner allow reading, or copy it to a place of your own.</source>
        <translation>Haga que su propietario permita leerlo, o cópielo a un lugar propio.</translation>
    </message>
    <message>
        <source>Have its owner allow writing, or open it for reading.</source>
        <translation>Haga que su propietario permita escribir, o ábralo para lectura.</translation>
    </message>
    <message>
        <source>Have nobody write in it, then restore once more. Nothing was changed.</source>
        <translation>Procure que nadie escriba en él, y restaure de nuevo. No se cambió nada.</translation>
    </message>
    <message>
        <source>Have the adapter for this core ready, both ends of it.</source>
        <translation>Tenga listo el adaptador para este núcleo, para ambos extremos.</translation>
    </message>
    <message>
        <source>Have the disk checked and restore the logbook from a backup.</source>
        <translation>Haga comprobar el disco y restaure el libro de registro desde una copia de seguridad.</translation>
    </message>
    <message>
        <source>Have the disk checked, then restore from that file or from the copy.</source>
        <translation>Haga comprobar el disco, y restaure desde ese archivo o desde la copia.</translation>
    </message>
    <message>
        <source>Have the disk checked, then restore the logbook from that copy.</source>
        <translation>Hacer revisar el disco y restaurar el libro de registro desde esa copia.</translation>
    </message>
    <message>
        <source>Have the disk or the network drive checked; keep a copy of the file elsewhere.</source>
        <translation>Haga comprobar el disco o la unidad de red; guarde una copia del archivo en otro lugar.</translation>
    </message>
    <message>
        <source>Have the next roll ready, and plan with that one.</source>
        <translation>Tenga lista la bobina siguiente, y planifique con ella.</translation>
    </message>
    <message>
        <source>Have them do more set-ups with a trainer beside them. Practice does not count.</source>
        <translation>Que haga más preparaciones con un instructor al lado. La práctica no cuenta.</translation>
    </message>
    <message>
        <source>Have them lying ready before the first one is hung.</source>
        <translation>Téngalas listas antes de colgar la primera.</translation>
    </message>
    <message>
        <source>Held down all the way; let go and it stops.</source>
        <translation>Pulsado todo el recorrido; al soltarlo se para.</translation>
    </message>
    <message>
        <source>Held down to a tenth of what the weakest carrying layer breaks at, or the share that this shop allows: a rule of thumb.</source>
        <translation>Limitada a una décima parte de la carga a la que se rompe la capa portante más débil, o a la parte que permite este taller: regla práctica.</translation>
    </message>
    <message>
        <source>Held down to the strain that print may be made under: beyond it the labels come out short.</source>
        <translation>Limitada al alargamiento con el que se puede imprimir: más allá las etiquetas salen cortas.</translation>
    </message>
    <message>
        <source>Help asked for</source>
        <translation>Ayuda pedida</translation>
    </message>
    <message>
        <source>Here and below stand more keys that are not known.</source>
        <translation>Aquí y más abajo hay más campos desconocidos.</translation>
    </message>
    <message>
        <source>Here stands %1, which cannot be read as this key.</source>
        <translation>Aquí está %1, que no se puede leer como este campo.</translation>
    </message>
    <message>
        <source>Here the tension leaves its window if nobody touches the setting; see the schedule.</source>
        <translation>Aquí la tensión sale de su margen si nadie toca el ajuste; vea la tabla de ajustes.</translation>
    </message>
    <message>
        <source>Hold it</source>
        <translation>Mantenerlo</translation>
    </message>
    <message>
        <source>Hold it against the torque on the roll: what is missing comes out as slack.</source>
        <translation>Compárelo con el par en la bobina: lo que falta sale como banda floja.</translation>
    </message>
    <message>
        <source>Hold the sheet against the logbook itself.</source>
        <translation>Compare la hoja con el propio libro de registro.</translation>
    </message>
    <message>
        <source>Hold this stop, each person their own, and say who holds it: %1</source>
        <translation>Mantenga este paro, cada persona el suyo, y diga quién lo mantiene: %1</translation>
    </message>
    <message>
        <source>How</source>
        <translation>Cómo</translation>
    </message>
    <message>
        <source>How %1 winds</source>
        <translation>Cómo enrolla %1</translation>
    </message>
    <message>
        <source>How a roll may be hung: over, the web leaves its top; under, its bottom.</source>
        <translation>Cómo puede colgarse una bobina: over, la banda sale por arriba; under, por abajo.</translation>
    </message>
    <message>
        <source>How far</source>
        <translation>Cuánto</translation>
    </message>
    <message>
        <source>How far behind the guide the sensor stands.</source>
        <translation>A qué distancia detrás del guiador está el sensor.</translation>
    </message>
    <message>
        <source>How far it moves in all.</source>
        <translation>Cuánto se mueve en total.</translation>
    </message>
    <message>
        <source>How far its reading may be off, either way.</source>
        <translation>Cuánto puede errar su lectura, en ambos sentidos.</translation>
    </message>
    <message>
        <source>How far register can be moved across the web, each way.</source>
        <translation>Cuánto puede moverse el registro a lo ancho de la banda, en cada sentido.</translation>
    </message>
    <message>
        <source>How far register can be moved along the web, each way.</source>
        <translation>Cuánto puede moverse el registro a lo largo de la banda, en cada sentido.</translation>
    </message>
    <message>
        <source>How far the caliper may lie from it, as a share.</source>
        <translation>Cuánto puede apartarse de él el espesor, como proporción.</translation>
    </message>
    <message>
        <source>How far the lengths of this roll lie apart</source>
        <translation>Diferencia entre las longitudes de esta bobina</translation>
    </message>
    <message>
        <source>How far the plate cylinder lies under its pitch line; plate and tape fill it.</source>
        <translation>Cuánto queda el cilindro portaplancha bajo su línea primitiva; plancha y cinta lo rellenan.</translation>
    </message>
    <message>
        <source>How far the roll moves for each length that the piston moves.</source>
        <translation>Cuánto se mueve la bobina por cada longitud que se mueve el pistón.</translation>
    </message>
    <message>
        <source>How far the web moves at one touch of the inch control.</source>
        <translation>Cuánto se mueve la banda con un toque del mando de impulsos.</translation>
    </message>
    <message>
        <source>How fast it moves.</source>
        <translation>A qué velocidad se mueve.</translation>
    </message>
    <message>
        <source>How it can wind, first what it does as a rule: over or under its core.</source>
        <translation>Cómo puede bobinar, primero lo habitual: over o under de su núcleo.</translation>
    </message>
    <message>
        <source>How it moves the web.</source>
        <translation>Cómo mueve la banda.</translation>
    </message>
    <message>
        <source>How it turns in forward running, seen from the operator's side: cw with the clock.</source>
        <translation>Cómo gira hacia delante, vista desde el lado operador: cw como el reloj.</translation>
    </message>
    <message>
        <source>How large the finished rolls may be.</source>
        <translation>Qué tamaño pueden tener las bobinas terminadas.</translation>
    </message>
    <message>
        <source>How long the web takes to follow the guide</source>
        <translation>Cuánto tarda la banda en seguir al guiador</translation>
    </message>
    <message>
        <source>How many clamps hold the web there.</source>
        <translation>Cuántas mordazas sujetan allí la banda.</translation>
    </message>
    <message>
        <source>How many cylinders load it.</source>
        <translation>Cuántos cilindros lo cargan.</translation>
    </message>
    <message>
        <source>How many pistons lift together.</source>
        <translation>Cuántos pistones levantan juntos.</translation>
    </message>
    <message>
        <source>How much faster the second nip runs than the first.</source>
        <translation>Cuánto más rápido gira el segundo nip que el primero.</translation>
    </message>
    <message>
        <source>How much stronger the joint is than the hardest pull.</source>
        <translation>Cuánto más resiste la unión que el tirón más fuerte.</translation>
    </message>
    <message>
        <source>How much stronger the joint is than the pull on it.</source>
        <translation>Cuánto más resiste la unión que el tirón que recibe.</translation>
    </message>
    <message>
        <source>How much web lies on it.</source>
        <translation>Cuánta banda hay en ella.</translation>
    </message>
    <message>
        <source>How often it is due: "30 d".</source>
        <translation>Cada cuánto toca: «30 d».</translation>
    </message>
    <message>
        <source>How surely this roll is enough for the job</source>
        <translation>Con qué seguridad basta esta bobina para el trabajo</translation>
    </message>
    <message>
        <source>How tension falls while the finished roll grows.</source>
        <translation>Cómo baja la tensión mientras crece la bobina terminada.</translation>
    </message>
    <message>
        <source>How the customer calls it.</source>
        <translation>Cómo lo llama el cliente.</translation>
    </message>
    <message>
        <source>How the people of this press say quantities.</source>
        <translation>Cómo dicen las cantidades quienes trabajan en esta máquina.</translation>
    </message>
    <message>
        <source>How the roll hangs</source>
        <translation>Cómo cuelga la bobina</translation>
    </message>
    <message>
        <source>How this press shows the middle of a register adjuster.</source>
        <translation>Cómo muestra esta máquina el centro de un ajustador de registro.</translation>
    </message>
    <message>
        <source>How this record came to stand as it does</source>
        <translation>Cómo llegó este registro a estar como está</translation>
    </message>
    <message>
        <source>How well it was told from the rest (d')</source>
        <translation>Lo bien que se distinguió del resto (d')</translation>
    </message>
    <message>
        <source>How well the torque is known, plus or minus, as a share.</source>
        <translation>Con qué exactitud se conoce el par, más o menos, como proporción.</translation>
    </message>
    <message>
        <source>IMPORTED, for reading only: the record is in the logbook that it came from</source>
        <translation>IMPORTADO, solo para lectura: el registro está en el libro del que vino</translation>
    </message>
    <message>
        <source>If %1 is meant, write %1.</source>
        <translation>Si quiere decir %1, escriba %1.</translation>
    </message>
    <message>
        <source>If it never held a run, since the program ended while it was being made, remove it and begin again. If it did, restore it from the mirror or a copy. Nothing was changed.</source>
        <translation>Si nunca contuvo una preparación, porque el programa terminó mientras se creaba, quítelo y empiece de nuevo. Si la contuvo, restáurelo desde el espejo o una copia. No se cambió nada.</translation>
    </message>
    <message>
        <source>If it rests to one side, move the roll, not the sensor.</source>
        <translation>Si descansa hacia un lado, mueva la bobina, no el sensor.</translation>
    </message>
    <message>
        <source>If the clutch keeps its torque. A weak splice parts here.</source>
        <translation>Si el embrague mantiene su par. Un empalme débil se abre aquí.</translation>
    </message>
    <message>
        <source>In an emergency stop from job speed the unwind goes slack: its brake lets go.</source>
        <translation>En un paro de emergencia desde la velocidad del trabajo el desbobinador queda flojo: su freno se suelta.</translation>
    </message>
    <message>
        <source>In an emergency stop from job speed the unwind goes slack: the brake as set does not hold this roll.</source>
        <translation>En un paro de emergencia desde la velocidad del trabajo el desbobinador queda flojo: el freno, como está ajustado, no sujeta esta bobina.</translation>
    </message>
    <message>
        <source>In seal %1 a value outside its window was not accepted as it stands there.</source>
        <translation>En el sello %1 un valor fuera de su margen no se aceptó como consta allí.</translation>
    </message>
    <message>
        <source>In seal %1 a value was accepted by somebody who was no supervisor then.</source>
        <translation>En el sello %1 un valor fue aceptado por alguien que entonces no era supervisor.</translation>
    </message>
    <message>
        <source>In the kind of run %1 this stage does not end with a call.</source>
        <translation>En la clase de preparación %1 esta etapa no termina con una declaración de cierre.</translation>
    </message>
    <message>
        <source>In what the panel takes the tension: a unit of force, or %.</source>
        <translation>En qué toma el panel la tensión: una unidad de fuerza, o %.</translation>
    </message>
    <message>
        <source>Index</source>
        <translation>Índice</translation>
    </message>
    <message>
        <source>Inertia of the roll</source>
        <translation>Inercia de la bobina</translation>
    </message>
    <message>
        <source>Inflate</source>
        <translation>Inflar</translation>
    </message>
    <message>
        <source>Inner diameter of the finished rolls' cores.</source>
        <translation>Diámetro interior de los núcleos de las bobinas terminadas.</translation>
    </message>
    <message>
        <source>Install the package fonts-dejavu-core.</source>
        <translation>Instale el paquete fonts-dejavu-core.</translation>
    </message>
    <message>
        <source>Interruptions, by cause</source>
        <translation>Interrupciones, por causa</translation>
    </message>
    <message>
        <source>Is %1 meant?</source>
        <translation>¿Quiere decir %1?</translation>
    </message>
    <message>
        <source>It begins to rise at %1, less than the %2 at which this lift's pressure begins.</source>
        <translation>Empieza a subir con %1, menos que %2, donde empieza la presión de este elevador.</translation>
    </message>
    <message>
        <source>It can be read there. To go on with it, restore it to a disk of this PC.</source>
        <translation>Allí se puede leer. Para seguir con él, restáurelo en un disco de este PC.</translation>
    </message>
    <message>
        <source>It does not go on this mandrel: take a roll on another core.</source>
        <translation>No entra en este eje: tome una bobina con otro núcleo.</translation>
    </message>
    <message>
        <source>It does not reset: a stop is latched.</source>
        <translation>No se rearma: hay una parada enclavada.</translation>
    </message>
    <message>
        <source>It follows at the next seal.</source>
        <translation>Sigue con el próximo sello.</translation>
    </message>
    <message>
        <source>It has stayed where it began under the present profile.</source>
        <translation>Con el perfil actual sigue donde empezó.</translation>
    </message>
    <message>
        <source>It has stayed where it began.</source>
        <translation>Sigue donde empezó.</translation>
    </message>
    <message>
        <source>It is a light roll. Expect it to move as soon as air is on: stand clear and let the air in slowly.</source>
        <translation>Es una bobina ligera. Espere que se mueva en cuanto haya aire: apártese y deje entrar el aire despacio.</translation>
    </message>
    <message>
        <source>It is computed as soon as what is missing has been entered; until then do not guess it.</source>
        <translation>Se calcula en cuanto se introduzca lo que falta; hasta entonces no lo adivine.</translation>
    </message>
    <message>
        <source>It is enough by less than the roll's length is known to: have the next roll ready, and watch the diameter.</source>
        <translation>Basta por menos de lo que se conoce la longitud de la bobina: tenga lista la siguiente, y vigile el diámetro.</translation>
    </message>
    <message>
        <source>It is ignored.</source>
        <translation>Se ignora.</translation>
    </message>
    <message>
        <source>It is nearly used up: have a full roll ready, and plan with that one.</source>
        <translation>Está casi gastada: tenga lista una bobina llena, y planifique con ella.</translation>
    </message>
    <message>
        <source>It is not said which way the roll is wound, so the feed cannot be told.</source>
        <translation>No se indica cómo está enrollada la bobina, así que no se puede decir su alimentación.</translation>
    </message>
    <message>
        <source>It is shown for reading only, as far as this version understands it: runs still open, and records of a kind that is new, are not. Update the program on this PC to write in it.</source>
        <translation>Se muestra solo para lectura, hasta donde lo entiende esta versión: no las preparaciones aún abiertas ni los registros de una clase nueva. Actualice el programa en este PC para escribir en él.</translation>
    </message>
    <message>
        <source>It is tried again at the next seal; else choose another folder.</source>
        <translation>Se intenta de nuevo con el próximo sello; si no, elija otra carpeta.</translation>
    </message>
    <message>
        <source>It smokes at the dryer of station %1.</source>
        <translation>Sale humo en el secador de la estación %1.</translation>
    </message>
    <message>
        <source>It takes at least %1.</source>
        <translation>Hacen falta al menos %1.</translation>
    </message>
    <message>
        <source>It was left as it is, and a mirror of this logbook was begun beside it.</source>
        <translation>Se dejó como estaba, y se empezó a su lado un espejo de este libro de registro.</translation>
    </message>
    <message>
        <source>It was left as it is, and another mirror was begun beside it.</source>
        <translation>Se dejó como estaba, y se empezó otro espejo a su lado.</translation>
    </message>
    <message>
        <source>It was left as it is, and another was begun beside it. Keep both until somebody has looked at what happened.</source>
        <translation>Se dejó como estaba, y se empezó otro a su lado. Conserve ambos hasta que alguien haya mirado qué pasó.</translation>
    </message>
    <message>
        <source>It was not said what helped.</source>
        <translation>No se dijo qué ayudó.</translation>
    </message>
    <message>
        <source>It was not said what this step should be.</source>
        <translation>No se dijo qué debe ser este paso.</translation>
    </message>
    <message>
        <source>It was not said what was put right.</source>
        <translation>No se dijo qué se arregló.</translation>
    </message>
    <message>
        <source>It was not said what was seen.</source>
        <translation>No se dijo qué se vio.</translation>
    </message>
    <message>
        <source>It was not said where the stop is held.</source>
        <translation>No se dijo dónde se mantiene el paro.</translation>
    </message>
    <message>
        <source>It was not said whose attempt this is.</source>
        <translation>No se dijo de quién es este intento.</translation>
    </message>
    <message>
        <source>It was not said why %1 does not give it up.</source>
        <translation>No se dijo por qué %1 no lo levanta.</translation>
    </message>
    <message>
        <source>It was not said why the stage is done again.</source>
        <translation>No se dijo por qué se repite la etapa.</translation>
    </message>
    <message>
        <source>It was not said why this competence ends.</source>
        <translation>No se dijo por qué termina esta competencia.</translation>
    </message>
    <message>
        <source>It was so and has ended since. Do this stage again, with its cause: %1</source>
        <translation>Fue así y ya ha terminado. Repita esta etapa, con su causa: %1</translation>
    </message>
    <message>
        <source>Its arguments are: %1. Capitals count.</source>
        <translation>Sus argumentos son: %1. Las mayúsculas cuentan.</translation>
    </message>
    <message>
        <source>Its arguments are: %1. Give every one of them.</source>
        <translation>Sus argumentos son: %1. Indíquelos todos.</translation>
    </message>
    <message>
        <source>Its mass for each area.</source>
        <translation>Su masa por superficie.</translation>
    </message>
    <message>
        <source>Its middle along the press, to the right, seen from the operator's side.</source>
        <translation>Su centro a lo largo de la máquina, hacia la derecha, visto desde el lado operador.</translation>
    </message>
    <message>
        <source>Its middle, upwards.</source>
        <translation>Su centro, hacia arriba.</translation>
    </message>
    <message>
        <source>Its number on the press.</source>
        <translation>Su número en la máquina.</translation>
    </message>
    <message>
        <source>Its stiffness: stress over strain.</source>
        <translation>Su rigidez: esfuerzo entre deformación.</translation>
    </message>
    <message>
        <source>Its thickness.</source>
        <translation>Su espesor.</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Trabajo</translation>
    </message>
    <message>
        <source>Keep a copy elsewhere and have the disk checked.</source>
        <translation>Guarde una copia en otro lugar y haga comprobar el disco.</translation>
    </message>
    <message>
        <source>Keep it where only those get at it who may read the record.</source>
        <translation>Guárdelo donde solo lleguen a él quienes pueden leer el registro.</translation>
    </message>
    <message>
        <source>Keep one of circular_pitch, module and diametral_pitch.</source>
        <translation>Deje uno de circular_pitch, module y diametral_pitch.</translation>
    </message>
    <message>
        <source>Keep one of the two.</source>
        <translation>Dejar uno de los dos.</translation>
    </message>
    <message>
        <source>Keep one of them: external = true means that it may be done while the press still runs.</source>
        <translation>Deje uno de ellos: external = true significa que puede hacerse con la máquina aún en marcha.</translation>
    </message>
    <message>
        <source>Keep that copy until the next weekly copy is made.</source>
        <translation>Conservar esa copia hasta que se haga la próxima copia semanal.</translation>
    </message>
    <message>
        <source>Keep the entry that the answer tells; ask for the others in steps of their own.</source>
        <translation>Deje la entrada que dice la respuesta; pregunte las demás en pasos propios.</translation>
    </message>
    <message>
        <source>Keep the file with the version that made it, and begin a new logbook. Nothing was changed.</source>
        <translation>Conserve el archivo con la versión que lo creó, y empiece un libro de registro nuevo. No se cambió nada.</translation>
    </message>
    <message>
        <source>Keep the likeliest, in the order in which to try them.</source>
        <translation>Deje los más probables, en el orden en que se deben probar.</translation>
    </message>
    <message>
        <source>Keep the logbook on a disk of this PC, and its mirror or copies in that folder.</source>
        <translation>Tenga el libro de registro en un disco de este PC, y su espejo o copias en esa carpeta.</translation>
    </message>
    <message>
        <source>Keep the logbook on a disk of this PC.</source>
        <translation>Tenga el libro de registro en un disco de este PC.</translation>
    </message>
    <message>
        <source>Keep the logbook on the disk of this PC, and its mirror or copies on the stick.</source>
        <translation>Tenga el libro de registro en el disco de este PC, y su espejo o copias en la memoria USB.</translation>
    </message>
    <message>
        <source>Keep the sheet and the logbook as they are, and have a supervisor verify the logbook against this sheet.</source>
        <translation>Dejar la hoja y el libro de registro como están y hacer que un supervisor verifique el libro con esta hoja.</translation>
    </message>
    <message>
        <source>Keep this file as it is and open a backup of the logbook.</source>
        <translation>Conserve este archivo como está y abra una copia de seguridad del libro de registro.</translation>
    </message>
    <message>
        <source>Keys that are not known here are ignored.</source>
        <translation>Los campos desconocidos aquí se ignoran.</translation>
    </message>
    <message>
        <source>Kind of run</source>
        <translation>Clase de preparación</translation>
    </message>
    <message>
        <source>Known here: %1.</source>
        <translation>Se conocen aquí: %1.</translation>
    </message>
    <message>
        <source>L = Q R / (across around (1 - waste))</source>
        <translation>L = Q R / (across around (1 - waste))</translation>
    </message>
    <message>
        <source>L = integral of sqrt(1 + (2 pi r / t)^2) dr from d/2 to D/2</source>
        <translation>L = integral de sqrt(1 + (2 pi r / t)^2) dr de d/2 a D/2</translation>
    </message>
    <message>
        <source>L = sum of s and b</source>
        <translation>L = suma de s y b</translation>
    </message>
    <message>
        <source>Labels</source>
        <translation>Etiquetas</translation>
    </message>
    <message>
        <source>Largest tension ratio across the roller before the web slips</source>
        <translation>Relación máxima de tensiones en el rodillo antes de que la banda resbale</translation>
    </message>
    <message>
        <source>Last day</source>
        <translation>Último día</translation>
    </message>
    <message>
        <source>Last done</source>
        <translation>Último hecho</translation>
    </message>
    <message>
        <source>Lay it there</source>
        <translation>Dejarlo allí</translation>
    </message>
    <message>
        <source>Lead it to the table</source>
        <translation>Llevarla a la mesa</translation>
    </message>
    <message>
        <source>Lead the web %1: %2.</source>
        <translation>Lleve la banda %1: %2.</translation>
    </message>
    <message>
        <source>Least grip of the web on a roller, as a tension ratio</source>
        <translation>Agarre mínimo de la banda en un rodillo, como relación de tensiones</translation>
    </message>
    <message>
        <source>Least grip of the web on a roller, as a tension ratio, at crawl only</source>
        <translation>Agarre mínimo de la banda en un rodillo, como relación de tensiones, solo en marcha lenta</translation>
    </message>
    <message>
        <source>Least of tape, bond and web, at the top of the tension's window. Heat in a dryer lowers it.</source>
        <translation>El mínimo de cinta, adherencia y banda, en lo alto del margen de la tensión. El calor de un secador lo baja.</translation>
    </message>
    <message>
        <source>Leave it off. If it winds one, list its rewind first in the press profile.</source>
        <translation>No lo use. Si enrolla una, ponga su rebobinador el primero en la lista del perfil de la máquina.</translation>
    </message>
    <message>
        <source>Leave it open and put it right, note what you found, or withdraw the press.</source>
        <translation>Déjelo abierto y arréglelo, anote lo que encontró, o retire la máquina del servicio.</translation>
    </message>
    <message>
        <source>Leave it out or read it again.</source>
        <translation>Omítalo o léalo de nuevo.</translation>
    </message>
    <message>
        <source>Leave it out.</source>
        <translation>Omitirlo.</translation>
    </message>
    <message>
        <source>Leave out a setting at which nothing held, and measure the roll where the web leaves it.</source>
        <translation>Omitir un ajuste con el que nada frenó, y medir la bobina donde la deja la banda.</translation>
    </message>
    <message>
        <source>Leave the file as it is, have the disk checked, and restore the logbook from a backup.</source>
        <translation>Deje el archivo como está, haga comprobar el disco, y restaure el libro de registro desde una copia de seguridad.</translation>
    </message>
    <message>
        <source>Leave the step out, or say what it should be.</source>
        <translation>Omita el paso, o diga qué debe ser.</translation>
    </message>
    <message>
        <source>Leave this fault out.</source>
        <translation>Omita este fallo.</translation>
    </message>
    <message>
        <source>Left open in abandoned runs, by step</source>
        <translation>Abiertos en preparaciones abandonadas, por paso</translation>
    </message>
    <message>
        <source>Less hurts no web; see that it stays in hand.</source>
        <translation>Menos no daña ninguna banda; vigile que siga controlada.</translation>
    </message>
    <message>
        <source>Less than its stroke says that the angle ends first.</source>
        <translation>Menos que su recorrido indica que el ángulo termina antes.</translation>
    </message>
    <message>
        <source>Less than the %1 at which this lift's pressure begins: it moves as soon as air is on. Let the air in slowly, beside the roll, never under it. If nothing has moved at %2, stop: something is stuck.</source>
        <translation>Menos que %1, donde empieza la presión de este elevador: se mueve en cuanto hay aire. Deje entrar el aire despacio, al lado de la bobina, nunca debajo de ella. Si nada se ha movido en %2, deténgase: algo está atascado.</translation>
    </message>
    <message>
        <source>Lesson</source>
        <translation>Ejercicio</translation>
    </message>
    <message>
        <source>Let an operator seal it.</source>
        <translation>Que lo selle un operador.</translation>
    </message>
    <message>
        <source>Let go</source>
        <translation>Soltar</translation>
    </message>
    <message>
        <source>Let it lie in the press room as long as the sheet says. If it has to run, watch tension and register, and set them again when it is warm.</source>
        <translation>Déjela en la sala de máquinas el tiempo que dice la hoja. Si tiene que correr, vigile tensión y registro, y ajústelos de nuevo cuando esté templada.</translation>
    </message>
    <message>
        <source>Let its last step be of kind call, in every kind of run that the stage has steps in, always asked.</source>
        <translation>Haga que su último paso sea de la clase call, en toda clase de preparación en la que la etapa tiene pasos, y que se pregunte siempre.</translation>
    </message>
    <message>
        <source>Let somebody begin it whose role allows it.</source>
        <translation>Que la empiece alguien cuyo rol lo permita.</translation>
    </message>
    <message>
        <source>Let somebody do it who is in service.</source>
        <translation>Que lo haga alguien que esté de servicio.</translation>
    </message>
    <message>
        <source>Let somebody do it whose role allows it.</source>
        <translation>Que lo haga alguien cuyo rol lo permita.</translation>
    </message>
    <message>
        <source>Let the air out</source>
        <translation>Soltar el aire</translation>
    </message>
    <message>
        <source>Let them change places in the text of the file.</source>
        <translation>Cambiarlas de sitio en el texto del archivo.</translation>
    </message>
    <message>
        <source>Lift pressure at which it begins to rise</source>
        <translation>Presión del elevador con la que empieza a subir</translation>
    </message>
    <message>
        <source>Lifting this roll would take %1; this lift ends at %2.</source>
        <translation>Elevar esta bobina necesitaría %1; este elevador termina en %2.</translation>
    </message>
    <message>
        <source>Light passes through this web: an infrared edge sensor does not see it.</source>
        <translation>La luz atraviesa esta banda: un sensor de borde infrarrojo no la ve.</translation>
    </message>
    <message>
        <source>Limits are set for %1, and nothing of this press bears that name: they never hold.</source>
        <translation>Hay límites fijados para %1, y nada de esta máquina lleva ese nombre: nunca valen.</translation>
    </message>
    <message>
        <source>Limits are set for %1, which is never judged: it proves nothing.</source>
        <translation>Hay límites fijados para %1, que nunca se juzga: no prueba nada.</translation>
    </message>
    <message>
        <source>Limits are set for %1, whose window comes from the range of tension of job, material or table: they do not hold.</source>
        <translation>Hay límites fijados para %1, cuyo margen viene del rango de tensión de trabajo, material o tabla: no valen.</translation>
    </message>
    <message>
        <source>Limits cannot be reckoned from fewer than two points.</source>
        <translation>Con menos de dos puntos no se pueden calcular límites.</translation>
    </message>
    <message>
        <source>List the rollers in web order, from the unwind to the rewind.</source>
        <translation>Liste los rodillos en el orden de la banda, del desbobinador al rebobinador.</translation>
    </message>
    <message>
        <source>Load cell with the web slack</source>
        <translation>Célula de carga con la banda floja</translation>
    </message>
    <message>
        <source>Load cells at nought, web slack: %1</source>
        <translation>Células de carga a cero, banda floja: %1</translation>
    </message>
    <message>
        <source>Load on the lift</source>
        <translation>Carga en el elevador</translation>
    </message>
    <message>
        <source>Load the roll so that the guide has little to do, and look for a slack edge when it stands far out.</source>
        <translation>Cargue la bobina de modo que el guiador tenga poco que hacer, y busque un borde flojo cuando esté muy desplazado.</translation>
    </message>
    <message>
        <source>Lock pin of the dancer: %1</source>
        <translation>Pasador del bailarín: %1</translation>
    </message>
    <message>
        <source>Longer than this: withdraw the press and have it looked at. Shorter: it was another speed, or the watch was started late.</source>
        <translation>Más largo que esto: retire la máquina del servicio y haga que la revisen. Más corto: era otra velocidad, o el cronómetro arrancó tarde.</translation>
    </message>
    <message>
        <source>Longer than this: withdraw the press and have it looked at. Time it from the speed at which it was measured, and enter that speed beside it: until then it is taken for that from job speed.</source>
        <translation>Más largo que esto: retire la máquina del servicio y haga que la revisen. Cronométrelo desde la velocidad a la que se midió, e introduzca esa velocidad al lado: hasta entonces se toma como medido desde la velocidad del trabajo.</translation>
    </message>
    <message>
        <source>Longer than this: withdraw the press and have it looked at. Timed from another speed it is longer or shorter as the speed is: see the time from job speed.</source>
        <translation>Más largo que esto: retire la máquina del servicio y haga que la revisen. Cronometrado desde otra velocidad es más largo o más corto según la velocidad: vea el tiempo desde la velocidad del trabajo.</translation>
    </message>
    <message>
        <source>Look at both speeds and their units, and correct the one that is wrong.</source>
        <translation>Mire ambas velocidades y sus unidades, y corrija la que esté mal.</translation>
    </message>
    <message>
        <source>Look at brake, lining, air and gauge first: a worn brake is mended, not entered.</source>
        <translation>Mire antes freno, forro, aire y manómetro: un freno gastado se repara, no se anota.</translation>
    </message>
    <message>
        <source>Look at each of these now, at the press, and say it before anything moves.</source>
        <translation>Mire ahora cada uno de estos puntos, en la máquina, y declárelo antes de que se mueva nada.</translation>
    </message>
    <message>
        <source>Look at it in the text of the file.</source>
        <translation>Verlo en el texto del archivo.</translation>
    </message>
    <message>
        <source>Look at the PC on which this person practised.</source>
        <translation>Mire en el PC en que practicó esta persona.</translation>
    </message>
    <message>
        <source>Look at the code again, or ask the supervisor for a new one.</source>
        <translation>Mire otra vez el código, o pida al supervisor uno nuevo.</translation>
    </message>
    <message>
        <source>Look at the job's tension and its unit, and at the material's, and mend the one that is wrong.</source>
        <translation>Mire la tensión del trabajo y su unidad, y la del material, y corrija la que esté mal.</translation>
    </message>
    <message>
        <source>Look at the last step before going on. Whoever looks after this program wants the log %1: it holds no names and no readings.</source>
        <translation>Mire el último paso antes de seguir. Quien cuida de este programa quiere el registro técnico %1: no contiene nombres ni lecturas.</translation>
    </message>
    <message>
        <source>Look at the newest printed sheets of both before anybody goes on; if it was the wrong copy, restore what was set aside.</source>
        <translation>Mire las hojas impresas más recientes de ambos antes de que nadie siga; si era la copia equivocada, restaure lo que se apartó.</translation>
    </message>
    <message>
        <source>Look at the plate and at the supply: a shaft short of air lets its core turn.</source>
        <translation>Mire la placa y el suministro: un eje con poco aire deja girar su núcleo.</translation>
    </message>
    <message>
        <source>Look at the run again, and say what the step should be.</source>
        <translation>Mire otra vez la preparación, y diga qué debe ser el paso.</translation>
    </message>
    <message>
        <source>Look at the signals, find their cause and begin a new phase after it.</source>
        <translation>Mirar las señales, hallar su causa y empezar una fase nueva después.</translation>
    </message>
    <message>
        <source>Look at the tension and its unit, and at the strength and modulus of the material.</source>
        <translation>Mire la tensión y su unidad, y la resistencia y el módulo del material.</translation>
    </message>
    <message>
        <source>Look at the tension that was entered, and at the strength and modulus of the material.</source>
        <translation>Mire la tensión introducida, y la resistencia y el módulo del material.</translation>
    </message>
    <message>
        <source>Look at the unit and at the decimal mark.</source>
        <translation>Mire la unidad y el signo decimal.</translation>
    </message>
    <message>
        <source>Look at the unit and the decimal mark, and read it again.</source>
        <translation>Mire la unidad y el signo decimal, y léalo de nuevo.</translation>
    </message>
    <message>
        <source>Look at the unit and the decimal mark, and read it again. If it does show this, the press's profile is wrong: note it, and have it put right.</source>
        <translation>Mire la unidad y el signo decimal, y léalo de nuevo. Si de verdad muestra eso, el perfil de la máquina está mal: anótelo, y haga que se corrija.</translation>
    </message>
    <message>
        <source>Look at the whole and at each layer, and correct the figure that is wrong.</source>
        <translation>Mire el conjunto y cada capa, y corrija la cifra que esté mal.</translation>
    </message>
    <message>
        <source>Look at what happened, then go on.</source>
        <translation>Mire qué ha pasado y siga.</translation>
    </message>
    <message>
        <source>Look at what was measured, at the unit and at the decimal point, and type the value again.</source>
        <translation>Mire qué se midió, la unidad y el punto decimal, y escriba el valor de nuevo.</translation>
    </message>
    <message>
        <source>Look at which ring or unit was read, and type the value again.</source>
        <translation>Mire qué escala o unidad se leyó, y escriba el valor de nuevo.</translation>
    </message>
    <message>
        <source>Look for a brake that drags or a gauge that does not stand at nought, and pull again.</source>
        <translation>Buscar un freno que roza o un manómetro que no está a cero, y tirar otra vez.</translation>
    </message>
    <message>
        <source>Look for a newer copy of the logbook; restore it from a backup.</source>
        <translation>Busque una copia más reciente del libro de registro; restáurela desde una copia de seguridad.</translation>
    </message>
    <message>
        <source>Look for a newer copy or the mirror before anybody goes on in the restored one, and keep what was set aside.</source>
        <translation>Busque una copia más reciente o el espejo antes de que nadie siga en el restaurado, y conserve lo que se apartó.</translation>
    </message>
    <message>
        <source>Look for a slack web before starting again. A smaller roll runs on less; running slower changes nothing, since the press slows no more gently from it.</source>
        <translation>Busque banda floja antes de arrancar de nuevo. Una bobina menor sigue girando menos; correr más despacio no cambia nada, pues la máquina no frena más suavemente desde ahí.</translation>
    </message>
    <message>
        <source>Look for it in the logbook of the PC at the press where it was printed.</source>
        <translation>Buscarla en el libro de registro del PC de la máquina donde se imprimió.</translation>
    </message>
    <message>
        <source>Look for them in the logbook where the run was sealed, or restore that from a backup.</source>
        <translation>Búsquelas en el libro de registro donde se selló la preparación, o restáurelo desde una copia de seguridad.</translation>
    </message>
    <message>
        <source>Look it up in the list of runs; a run has a seal only once it has ended and was signed off.</source>
        <translation>Búsquela en la lista de preparaciones; una preparación solo tiene sello cuando ha terminado y se ha firmado.</translation>
    </message>
    <message>
        <source>Look round the press, then reset.</source>
        <translation>Mire alrededor de la máquina y rearme.</translation>
    </message>
    <message>
        <source>Look that it is meant. The maker's range, entered with the material, would be better.</source>
        <translation>Compruebe que es a propósito. El rango del fabricante, introducido con el material, sería mejor.</translation>
    </message>
    <message>
        <source>Look that the slitter is threaded so: each rewind's tension goes by the lanes that it winds.</source>
        <translation>Compruebe que la cortadora longitudinal está enhebrada así: la tensión de cada rebobinador va según las pistas que enrolla.</translation>
    </message>
    <message>
        <source>Look there for scuffs and wander, and run slower if you see them. A narrow web keeps more than is reckoned.</source>
        <translation>Busque allí rozaduras y deriva lateral, y corra más despacio si las ve. Una banda estrecha conserva más de lo calculado.</translation>
    </message>
    <message>
        <source>Look up the id of whoever practised.</source>
        <translation>Consulte el identificador de quien practicó.</translation>
    </message>
    <message>
        <source>Look whether settings and forces stand in the right rows, and whether the brake is worn, oiled or stuck.</source>
        <translation>Ver si ajustes y fuerzas están en su fila, y si el freno está gastado, engrasado o pegado.</translation>
    </message>
    <message>
        <source>Look whether the core still goes on the shaft and the roll runs round; else take another.</source>
        <translation>Compruebe si el núcleo aún entra en el eje y la bobina gira redonda; si no, tome otra.</translation>
    </message>
    <message>
        <source>Look whether the label has a second bar code, and scan that too.</source>
        <translation>Mire si la etiqueta tiene un segundo código de barras, y escanéelo también.</translation>
    </message>
    <message>
        <source>Look which side of the web is printed where it arrives.</source>
        <translation>Mire qué lado de la banda está impreso donde llega.</translation>
    </message>
    <message>
        <source>Look which side of the web lies outside on the roll, and enter it.</source>
        <translation>Mire qué lado de la banda queda por fuera en la bobina, e introdúzcalo.</translation>
    </message>
    <message>
        <source>Look which way this roller turns when the web runs forward, and correct its turn.</source>
        <translation>Mire hacia dónde gira este rodillo cuando la banda avanza, y corrija su giro.</translation>
    </message>
    <message>
        <source>Low air lets brakes, nips and shafts go when you need them.</source>
        <translation>Con poco aire, frenos, nips y ejes se sueltan cuando los necesita.</translation>
    </message>
    <message>
        <source>Lower it clear</source>
        <translation>Bajarlo hasta librar</translation>
    </message>
    <message>
        <source>Lower quartile</source>
        <translation>Cuartil inferior</translation>
    </message>
    <message>
        <source>Main disconnect</source>
        <translation>Seccionador principal</translation>
    </message>
    <message>
        <source>Make it two steps: hands out and the stop given up, then the movement.</source>
        <translation>Haga dos pasos: manos fuera y paro levantado, y después el movimiento.</translation>
    </message>
    <message>
        <source>Make that folder first or put its disk in, or choose another name.</source>
        <translation>Cree antes esa carpeta o conecte su disco, o elija otro nombre.</translation>
    </message>
    <message>
        <source>Make the folder first, or choose another one.</source>
        <translation>Cree antes la carpeta, o elija otra.</translation>
    </message>
    <message>
        <source>Make the picture smaller, or attach the part that matters.</source>
        <translation>Reducir la imagen, o adjuntar la parte que importa.</translation>
    </message>
    <message>
        <source>Make the press safe, say so, and resume the run.</source>
        <translation>Asegure la máquina, declárelo, y reanude la preparación.</translation>
    </message>
    <message>
        <source>Make two places of it, each where one stands for its steps.</source>
        <translation>Haga dos puestos, cada uno donde se está para sus pasos.</translation>
    </message>
    <message>
        <source>Mark the middle of the lead edge; it makes centring quick.</source>
        <translation>Marque el centro del borde delantero; así se centra rápido.</translation>
    </message>
    <message>
        <source>Mass of the roll with its core</source>
        <translation>Masa de la bobina con su núcleo</translation>
    </message>
    <message>
        <source>Mass of the web</source>
        <translation>Masa de la banda</translation>
    </message>
    <message>
        <source>Measure from mark to mark, and type the unit with it.</source>
        <translation>Medir de marca a marca y escribir la unidad.</translation>
    </message>
    <message>
        <source>Measure from the inner face that measure_from names to the middle of the web.</source>
        <translation>Mida desde la cara interior que nombra measure_from hasta el centro de la banda.</translation>
    </message>
    <message>
        <source>Measure it against the web's edge with a square.</source>
        <translation>Mídalo contra el borde de la banda con una escuadra.</translation>
    </message>
    <message>
        <source>Measure straight across and type the diameter.</source>
        <translation>Mida recto a través y escriba el diámetro.</translation>
    </message>
    <message>
        <source>Measure straight across the roll and type it with its unit.</source>
        <translation>Mida recto a través de la bobina y escríbalo con su unidad.</translation>
    </message>
    <message>
        <source>Measure straight across the roll's face, and type the figure with its unit.</source>
        <translation>Mida recto a través de la cara lateral de la bobina, y escriba la cifra con su unidad.</translation>
    </message>
    <message>
        <source>Measure straight across the roll's face, not round it. If that is right, look whether label and material are this roll's.</source>
        <translation>Mida recto a través de la cara lateral de la bobina, no alrededor. Si es correcto, mire si etiqueta y material son de esta bobina.</translation>
    </message>
    <message>
        <source>Measure straight across the roll's face. If %1 is the way round, the diameter is %2.</source>
        <translation>Mida recto a través de la cara lateral de la bobina. Si %1 es la medida alrededor, el diámetro es %2.</translation>
    </message>
    <message>
        <source>Measure straight across the roll's face: if %1 is the way round, the diameter is %2. If %1 is right, correct the roll's file.</source>
        <translation>Mida recto a través de la cara lateral de la bobina: si %1 es la medida alrededor, el diámetro es %2. Si %1 es correcto, corrija el archivo de la bobina.</translation>
    </message>
    <message>
        <source>Measure straight across the roll, not round it, and enter both anew.</source>
        <translation>Mida recto a través de la bobina, no alrededor, e introduzca ambos de nuevo.</translation>
    </message>
    <message>
        <source>Measure straight across the roll, not round it. If it is right, correct what was measured first.</source>
        <translation>Mida recto a través de la bobina, no alrededor. Si es correcto, corrija lo que se midió primero.</translation>
    </message>
    <message>
        <source>Measure straight across what is left. Where nothing is, take another roll.</source>
        <translation>Mida recto a través de lo que queda. Donde no queda nada, tome otra bobina.</translation>
    </message>
    <message>
        <source>Measure the diameter again, and check core, wall and material.</source>
        <translation>Mida otra vez el diámetro, y compruebe núcleo, pared y material.</translation>
    </message>
    <message>
        <source>Measure the hole once; enter %1 if that is what it measures.</source>
        <translation>Mida una vez el agujero; introduzca %1 si es eso lo que mide.</translation>
    </message>
    <message>
        <source>Measure the hole, the part that goes on the shaft; enter %1 if that is it.</source>
        <translation>Mida el agujero, la parte que va en el eje; introduzca %1 si es eso.</translation>
    </message>
    <message>
        <source>Measure the roll and its core again.</source>
        <translation>Mida otra vez la bobina y su núcleo.</translation>
    </message>
    <message>
        <source>Measure the roll, and enter what you measured.</source>
        <translation>Mida la bobina, e introduzca lo que midió.</translation>
    </message>
    <message>
        <source>Measure the roll. If the figure is right, place guides and sensors by the roll's width.</source>
        <translation>Mida la bobina. Si la cifra es correcta, coloque guiadores y sensores según el ancho de la bobina.</translation>
    </message>
    <message>
        <source>Measure the wall once for each supplier and enter it as core_wall.</source>
        <translation>Mida la pared una vez por proveedor e introdúzcala como core_wall.</translation>
    </message>
    <message>
        <source>Measure to the middle of the roll.</source>
        <translation>Mida hasta el centro de la bobina.</translation>
    </message>
    <message>
        <source>Measure to the web's edge; both edges together prove the centre.</source>
        <translation>Mida hasta el borde de la banda; ambos bordes juntos prueban el centro.</translation>
    </message>
    <message>
        <source>Measure twice at right angles and take the mean; a tape round the roll gives the circumference, not this.</source>
        <translation>Mida dos veces en ángulo recto y tome la media; una cinta alrededor de la bobina da la circunferencia, no esto.</translation>
    </message>
    <message>
        <source>Measured after the roll is retained: that moves it.</source>
        <translation>Medido después de sujetar la bobina: eso la mueve.</translation>
    </message>
    <message>
        <source>Measured from the inner face of the %1, after the roll is retained: that moves it.</source>
        <translation>Medido desde la cara interior del %1, después de sujetar la bobina: eso la mueve.</translation>
    </message>
    <message>
        <source>Measured over ten on the web let go, which is shorter by what the tension stretched it. Off this says undercut, tape or another tension than set.</source>
        <translation>Medido sobre diez con la banda suelta, que es más corta en lo que la tensión la estiró. Si difiere: rebaje, cinta u otra tensión que la ajustada.</translation>
    </message>
    <message>
        <source>Measured over ten on the web let go. How far this web stretches is not known: it may be shorter by that. Off this says undercut, tape or too much tension.</source>
        <translation>Medido sobre diez con la banda suelta. No se sabe cuánto se estira esta banda: puede ser más corta en eso. Si difiere: rebaje, cinta o demasiada tensión.</translation>
    </message>
    <message>
        <source>Median</source>
        <translation>Mediana</translation>
    </message>
    <message>
        <source>Mend the job's tension, or the material's if the maker says more.</source>
        <translation>Corrija la tensión del trabajo, o la del material si el fabricante indica más.</translation>
    </message>
    <message>
        <source>Mend their unit, or the name.</source>
        <translation>Corrija su unidad, o el nombre.</translation>
    </message>
    <message>
        <source>Mend them, or the figure of the plate or the policy row.</source>
        <translation>Corríjalos, o corrija la cifra de la placa o la fila de normas.</translation>
    </message>
    <message>
        <source>Mend this line; text stands between quotes, a table's name between brackets.</source>
        <translation>Corrija esta línea; el texto va entre comillas, el nombre de una tabla entre corchetes.</translation>
    </message>
    <message>
        <source>Minutes, without what was away</source>
        <translation>Minutos, sin las ausencias</translation>
    </message>
    <message>
        <source>Minutes: half of the runs lie within the bar, the line is the median</source>
        <translation>Minutos: la mitad de las preparaciones está dentro de la barra, la línea es la mediana</translation>
    </message>
    <message>
        <source>More than this: look upstream before you touch the guide.</source>
        <translation>Si es más: mire aguas arriba antes de tocar el guiador.</translation>
    </message>
    <message>
        <source>More was named than there was.</source>
        <translation>Se nombró más de lo que había.</translation>
    </message>
    <message>
        <source>More were counted than there are.</source>
        <translation>Se han contado más de los que hay.</translation>
    </message>
    <message>
        <source>Mount and hold it first, or let it down and repeat the stage. Then hand over.</source>
        <translation>Móntela y sujétela primero, o bájela y repita la etapa. Después, entregue.</translation>
    </message>
    <message>
        <source>Move a little</source>
        <translation>Mover un poco</translation>
    </message>
    <message>
        <source>Move a short way and stand</source>
        <translation>Mover un corto tramo y parar</translation>
    </message>
    <message>
        <source>Move it forward, or write in late why it can only be done there.</source>
        <translation>Adelántelo, o escriba en late por qué solo puede hacerse ahí.</translation>
    </message>
    <message>
        <source>Move it into the first third of the span, as near to the guide as it will go.</source>
        <translation>Muévalo al primer tercio del tramo, tan cerca del guiador como se pueda.</translation>
    </message>
    <message>
        <source>Move it slowly, as long as it is held.</source>
        <translation>Muévala despacio, mientras se mantenga pulsado.</translation>
    </message>
    <message>
        <source>Move slowly</source>
        <translation>Mover despacio</translation>
    </message>
    <message>
        <source>Move slowly, as long as it is held</source>
        <translation>Mover despacio mientras se mantiene</translation>
    </message>
    <message>
        <source>Move the call to the end of its stage.</source>
        <translation>Mueva la declaración de cierre al final de su etapa.</translation>
    </message>
    <message>
        <source>N = s / i, rounded up to whole presses</source>
        <translation>N = s / i, redondeado hacia arriba a pulsaciones enteras</translation>
    </message>
    <message>
        <source>NEWER RECORDS ARE NOT IN WHAT WAS RESTORED: it holds %1 seals, and what lay there before holds %2. It was kept as %3.</source>
        <translation>NO ESTÁN LOS REGISTROS MÁS NUEVOS EN LO RESTAURADO: contiene %1 sellos, y lo que había antes contiene %2. Se guardó como %3.</translation>
    </message>
    <message>
        <source>Name a file that is not there yet.</source>
        <translation>Indique un archivo que aún no exista.</translation>
    </message>
    <message>
        <source>Name a finished set-up of this press.</source>
        <translation>Nombre una preparación terminada de esta máquina.</translation>
    </message>
    <message>
        <source>Name a stage, or a stage and a place of it: splice, threading.lift.</source>
        <translation>Nombre una etapa, o una etapa y un puesto suyo: splice, threading.lift.</translation>
    </message>
    <message>
        <source>Name a station whose file says how far it goes.</source>
        <translation>Nombre una estación cuyo archivo diga hasta dónde llega.</translation>
    </message>
    <message>
        <source>Name a step and what it should be, or write what is to be put right.</source>
        <translation>Nombre un paso y qué debe ser, o escriba qué hay que corregir.</translation>
    </message>
    <message>
        <source>Name a step as stage.place.step, and its item.</source>
        <translation>Nombre un paso como etapa.puesto.paso, y su elemento.</translation>
    </message>
    <message>
        <source>Name a zone with one.</source>
        <translation>Nombre una zona que tenga una.</translation>
    </message>
    <message>
        <source>Name at least one in its key in: full, next_roll, re_web or restart.</source>
        <translation>Nombre al menos una en su campo in: full, next_roll, re_web o restart.</translation>
    </message>
    <message>
        <source>Name every observed set-up once.</source>
        <translation>Nombre cada preparación observada una vez.</translation>
    </message>
    <message>
        <source>Name one of its file.</source>
        <translation>Nombre una de su archivo.</translation>
    </message>
    <message>
        <source>Name one that it knows, or take that substrate in first.</source>
        <translation>Indique uno que conozca, o incorpore antes ese sustrato.</translation>
    </message>
    <message>
        <source>Name the roller where this zone's tension ends.</source>
        <translation>Nombre el rodillo donde termina la tensión de esta zona.</translation>
    </message>
    <message>
        <source>Name the roller where this zone's tension ends; the zone is left out until then.</source>
        <translation>Nombre el rodillo donde termina la tensión de esta zona; hasta entonces la zona no se tiene en cuenta.</translation>
    </message>
    <message>
        <source>Name the sheet too, like %1, or write it in one of: %2.</source>
        <translation>Nombre también la hoja, como %1, o escríbala en una de estas: %2.</translation>
    </message>
    <message>
        <source>Name the target it is judged against, or make it a step that is confirmed.</source>
        <translation>Nombre el valor objetivo con el que se juzga, o haga de él un paso que se confirma.</translation>
    </message>
    <message>
        <source>Neither another PIN nor another passphrase was chosen.</source>
        <translation>No se eligió ni otro PIN ni otra frase de contraseña.</translation>
    </message>
    <message>
        <source>Newest</source>
        <translation>Última</translation>
    </message>
    <message>
        <source>Nine points in a row are on one side of the centre.</source>
        <translation>Nueve puntos seguidos están a un lado del centro.</translation>
    </message>
    <message>
        <source>Nip on %1</source>
        <translation>Nip en %1</translation>
    </message>
    <message>
        <source>No adapter that fits this core was used.</source>
        <translation>No se usó ningún adaptador que sirva a este núcleo.</translation>
    </message>
    <message>
        <source>No control of this press has the role %1: its label is never shown.</source>
        <translation>Ningún mando de esta máquina tiene el rol %1: su rótulo no se muestra nunca.</translation>
    </message>
    <message>
        <source>No copy could be made; the system says: %1.</source>
        <translation>No se pudo hacer ninguna copia; el sistema dice: %1.</translation>
    </message>
    <message>
        <source>No copy of %1 can be kept in %2: the folder takes no files, or not from this user.</source>
        <translation>No se puede guardar ninguna copia de %1 en %2: la carpeta no admite archivos, o no de este usuario.</translation>
    </message>
    <message>
        <source>No copy of %1 could be made in %2: %3</source>
        <translation>No se pudo hacer ninguna copia de %1 en %2: %3</translation>
    </message>
    <message>
        <source>No copy of %1 was kept, because it is not in order (%2, %3).</source>
        <translation>No se guardó ninguna copia de %1, porque no está en orden (%2, %3).</translation>
    </message>
    <message>
        <source>No edition of press, job, substrate or procedure was sealed around then: look at the press itself.</source>
        <translation>Por entonces no se selló ninguna edición de máquina, trabajo, sustrato ni procedimiento: mire la propia máquina.</translation>
    </message>
    <message>
        <source>No emergency stop was pressed while the press moved.</source>
        <translation>No se pulsó ninguna parada de emergencia mientras la máquina se movía.</translation>
    </message>
    <message>
        <source>No lesson is going on.</source>
        <translation>No hay ningún ejercicio en curso.</translation>
    </message>
    <message>
        <source>No logbook can be kept where %1 would lie: two programs could write in it at once. The system says: %2.</source>
        <translation>No se puede tener un libro de registro donde estaría %1: dos programas podrían escribir en él a la vez. El sistema dice: %2.</translation>
    </message>
    <message>
        <source>No logbook is open.</source>
        <translation>No hay ningún libro de registro abierto.</translation>
    </message>
    <message>
        <source>No longer in force. %1</source>
        <translation>Ya no en vigor. %1</translation>
    </message>
    <message>
        <source>No maintained stop is named for this place: lock the isolator by your site's procedure and say so before any hand goes in.</source>
        <translation>No hay nombrado ningún paro con enclavamiento para este puesto: bloquee el seccionador según el procedimiento de su planta y declárelo antes de meter ninguna mano.</translation>
    </message>
    <message>
        <source>No nip is closed, so nothing draws the web.</source>
        <translation>No hay ningún par de rodillos cerrado, así que nada tira de la banda.</translation>
    </message>
    <message>
        <source>No outer wraps were taken off the roll.</source>
        <translation>No se quitó ninguna vuelta exterior de la bobina.</translation>
    </message>
    <message>
        <source>No pattern that chance seldom makes.</source>
        <translation>Ningún patrón que el azar rara vez produzca.</translation>
    </message>
    <message>
        <source>No reading has moved away and stayed there.</source>
        <translation>Ninguna lectura se ha desplazado de forma duradera.</translation>
    </message>
    <message>
        <source>No register adjuster of station %1 is known.</source>
        <translation>No se conoce ningún ajuste de registro de la estación %1.</translation>
    </message>
    <message>
        <source>No roll hangs on the shaft.</source>
        <translation>No cuelga ninguna bobina en el eje.</translation>
    </message>
    <message>
        <source>No roll is chosen yet.</source>
        <translation>Aún no se ha elegido ninguna bobina.</translation>
    </message>
    <message>
        <source>No roll lies on the lift.</source>
        <translation>No hay ninguna bobina en el elevador.</translation>
    </message>
    <message>
        <source>No run is open here.</source>
        <translation>Aquí no hay ninguna preparación abierta.</translation>
    </message>
    <message>
        <source>No run was opened yet.</source>
        <translation>Aún no se abrió ninguna.</translation>
    </message>
    <message>
        <source>No screen is so far from what it says.</source>
        <translation>Ninguna pantalla se aleja tanto de lo que dice.</translation>
    </message>
    <message>
        <source>No sealed run was chosen.</source>
        <translation>Ninguna preparación sellada elegida.</translation>
    </message>
    <message>
        <source>No step of this kind of run gives it. Abandon this run and begin a full set-up.</source>
        <translation>Ningún paso de esta clase de preparación lo da. Abandone esta preparación y empiece una preparación completa.</translation>
    </message>
    <message>
        <source>No stop is held.</source>
        <translation>No hay ningún paro mantenido.</translation>
    </message>
    <message>
        <source>No stop was held while somebody worked at the web.</source>
        <translation>No se retuvo ninguna parada mientras alguien trabajaba en la banda.</translation>
    </message>
    <message>
        <source>No straight web joins roller %1 to roller %2.</source>
        <translation>Ninguna banda recta une el rodillo %1 con el rodillo %2.</translation>
    </message>
    <message>
        <source>No substrate with the id "%1" stands in this file.</source>
        <translation>No hay ningún sustrato con el id «%1» en este archivo.</translation>
    </message>
    <message>
        <source>No taper is set: the tension stays as it began.</source>
        <translation>No hay disminución (taper) fijada: la tensión sigue como empezó.</translation>
    </message>
    <message>
        <source>Nobody accepts a value outside its window that they read themselves.</source>
        <translation>Nadie acepta un valor fuera de su margen que haya leído él mismo.</translation>
    </message>
    <message>
        <source>Nobody can have set %1: this control begins at %2.</source>
        <translation>Nadie puede haber ajustado %1: este mando empieza en %2.</translation>
    </message>
    <message>
        <source>Nobody can have set %1: this control goes up to %2.</source>
        <translation>Nadie puede haber ajustado %1: este mando llega hasta %2.</translation>
    </message>
    <message>
        <source>Nobody countersigns a run that they sign themselves.</source>
        <translation>Nadie refrenda una preparación que firma él mismo.</translation>
    </message>
    <message>
        <source>Nobody gives back a press that they withdrew themselves.</source>
        <translation>Nadie devuelve al servicio una máquina que retiró él mismo.</translation>
    </message>
    <message>
        <source>Nobody has entered the wall of this roll's core: it is taken to be %1 to %2 thick. Length and mass are known so much the less, and the automatic stop is set for the thickest.</source>
        <translation>Nadie ha introducido la pared del núcleo de esta bobina: se supone de %1 a %2 de grueso. Longitud y masa se conocen tanto peor, y el paro automático se ajusta para la más gruesa.</translation>
    </message>
    <message>
        <source>Nobody has said that %1 may sign alone at the press %2.</source>
        <translation>Nadie ha dicho que %1 pueda firmar a solas en la máquina %2.</translation>
    </message>
    <message>
        <source>Nobody has said that blades and knives are covered.</source>
        <translation>Nadie ha declarado que hojas y cuchillas están cubiertas.</translation>
    </message>
    <message>
        <source>Nobody has said that every emergency stop is released.</source>
        <translation>Nadie ha declarado que todos los paros de emergencia están desenclavados.</translation>
    </message>
    <message>
        <source>Nobody has said that every guard is closed.</source>
        <translation>Nadie ha declarado que todos los resguardos están cerrados.</translation>
    </message>
    <message>
        <source>Nobody has said that everybody is clear of the press.</source>
        <translation>Nadie ha declarado que todos están apartados de la máquina.</translation>
    </message>
    <message>
        <source>Nobody has said that stored energy is let off or held.</source>
        <translation>Nadie ha declarado que la energía acumulada está descargada o retenida.</translation>
    </message>
    <message>
        <source>Nobody has said that the isolator is locked by your site's procedure.</source>
        <translation>Nadie ha declarado que el seccionador está bloqueado según el procedimiento de su planta.</translation>
    </message>
    <message>
        <source>Nobody has said that the lamps are parked.</source>
        <translation>Nadie ha declarado que las lámparas están en reposo.</translation>
    </message>
    <message>
        <source>Nobody has said that the stations are off impression.</source>
        <translation>Nadie ha declarado que las estaciones están fuera de impresión.</translation>
    </message>
    <message>
        <source>Nobody here has the id %1.</source>
        <translation>Nadie aquí tiene el id %1.</translation>
    </message>
    <message>
        <source>Nobody holds the press stopped.</source>
        <translation>Nadie retiene parada la máquina.</translation>
    </message>
    <message>
        <source>Nobody in service here has the id %1.</source>
        <translation>Nadie en servicio tiene aquí el identificador %1.</translation>
    </message>
    <message>
        <source>Nobody is in the press</source>
        <translation>No hay nadie dentro de la máquina</translation>
    </message>
    <message>
        <source>Nobody is signed in.</source>
        <translation>Nadie ha iniciado sesión.</translation>
    </message>
    <message>
        <source>Nobody may pass this step by.</source>
        <translation>Nadie puede pasar por alto este paso.</translation>
    </message>
    <message>
        <source>Nobody of this name holds a stop: "%1".</source>
        <translation>Nadie con este nombre mantiene un paro: «%1».</translation>
    </message>
    <message>
        <source>Nobody opens their own door again: it takes two.</source>
        <translation>Nadie vuelve a abrir su propia puerta: hacen falta dos.</translation>
    </message>
    <message>
        <source>Nobody with the id %1 is competent at the press %2.</source>
        <translation>Nadie con el identificador %1 es competente en la máquina %2.</translation>
    </message>
    <message>
        <source>None needed; the diameters are used: no label says a length.</source>
        <translation>No hace falta ninguna; se usan los diámetros: ninguna etiqueta indica una longitud.</translation>
    </message>
    <message>
        <source>None needed; the label is used: nobody has opened the roll.</source>
        <translation>No hace falta ninguna; se usa la etiqueta: nadie ha abierto la bobina.</translation>
    </message>
    <message>
        <source>None of the other copies in %1 that would stay is in order, so no older one was removed.</source>
        <translation>Ninguna de las otras copias en %1 que quedarían está en orden, así que no se quitó ninguna más antigua.</translation>
    </message>
    <message>
        <source>Not a record until it has been typed in and sealed.</source>
        <translation>No es un registro hasta que se haya introducido y sellado.</translation>
    </message>
    <message>
        <source>Not all the calipers of the brake of %1 are engaged.</source>
        <translation>No todas las pinzas del freno de %1 están acopladas.</translation>
    </message>
    <message>
        <source>Not everybody read every part as often.</source>
        <translation>No todos leyeron cada pieza las mismas veces.</translation>
    </message>
    <message>
        <source>Not reviewed</source>
        <translation>Sin revisar</translation>
    </message>
    <message>
        <source>Not said for this movement: %1.</source>
        <translation>Sin declarar para este movimiento: %1.</translation>
    </message>
    <message>
        <source>Not said: %1</source>
        <translation>No se indica: %1</translation>
    </message>
    <message>
        <source>Not sealed: this is a working copy of a run that is still open.</source>
        <translation>Sin sellar: esto es una copia de trabajo de una preparación aún abierta.</translation>
    </message>
    <message>
        <source>Not yet: a vital step was missed, and no sum makes up for that.</source>
        <translation>Todavía no: se omitió un paso vital, y ninguna suma lo compensa.</translation>
    </message>
    <message>
        <source>Not yet: less than nine tenths are there. How long it took counts nothing.</source>
        <translation>Todavía no: hay menos de nueve décimos. Lo que se tardó no cuenta.</translation>
    </message>
    <message>
        <source>Nothing at this press can be wrong like that: %1.</source>
        <translation>Nada en esta máquina puede fallar así: %1.</translation>
    </message>
    <message>
        <source>Nothing before this step gives %1.</source>
        <translation>Nada antes de este paso da %1.</translation>
    </message>
    <message>
        <source>Nothing can be put in the place of {%1} here.</source>
        <translation>Aquí no se puede poner nada en lugar de {%1}.</translation>
    </message>
    <message>
        <source>Nothing clamps the webs on the table.</source>
        <translation>Nada sujeta las bandas sobre la mesa.</translation>
    </message>
    <message>
        <source>Nothing happened that should not have.</source>
        <translation>No pasó nada que no debiera.</translation>
    </message>
    <message>
        <source>Nothing has to be done; send it back if you found something wrong.</source>
        <translation>No hay que hacer nada; devuélvala si encontró algo mal.</translation>
    </message>
    <message>
        <source>Nothing has to be ended.</source>
        <translation>No hay nada que terminar.</translation>
    </message>
    <message>
        <source>Nothing has to be given back.</source>
        <translation>No hay nada que devolver.</translation>
    </message>
    <message>
        <source>Nothing holds the two webs.</source>
        <translation>Nada sujeta las dos bandas.</translation>
    </message>
    <message>
        <source>Nothing in this file is called "%1".</source>
        <translation>Nada en este archivo se llama «%1».</translation>
    </message>
    <message>
        <source>Nothing may hang on the cell while it is read.</source>
        <translation>Nada puede colgar de la célula mientras se lee.</translation>
    </message>
    <message>
        <source>Nothing of this procedure is called %1 on this press with this job and roll.</source>
        <translation>Nada de este procedimiento se llama %1 en esta máquina con este trabajo y esta bobina.</translation>
    </message>
    <message>
        <source>Nothing of this roll can be run: it has %1 wraps, and %2 outer ones are to come off.</source>
        <translation>Nada de esta bobina se puede correr: tiene %1 vueltas, y hay que quitar %2 exteriores.</translation>
    </message>
    <message>
        <source>Nothing of this roll can be run: of its %1 the outer wraps and the reserve of the automatic stop take all.</source>
        <translation>Nada de esta bobina se puede correr: de sus %1, las vueltas exteriores y la reserva del paro automático se llevan todo.</translation>
    </message>
    <message>
        <source>Nothing sets the tension there.</source>
        <translation>Nada ajusta ahí la tensión.</translation>
    </message>
    <message>
        <source>Nothing stirs: the press has no power.</source>
        <translation>Nada se mueve: la máquina no tiene corriente.</translation>
    </message>
    <message>
        <source>Nothing stopped the press before the end of the roll.</source>
        <translation>Nada paró la máquina antes del final de la bobina.</translation>
    </message>
    <message>
        <source>Nothing to do.</source>
        <translation>Nada que hacer.</translation>
    </message>
    <message>
        <source>Nothing was entered.</source>
        <translation>No se introdujo nada.</translation>
    </message>
    <message>
        <source>Nothing was judged by both.</source>
        <translation>Nada fue juzgado por ambos.</translation>
    </message>
    <message>
        <source>Nothing was recorded. Start the program again; if it comes back, report it.</source>
        <translation>No se registró nada. Inicie de nuevo el programa; si vuelve a ocurrir, infórmelo.</translation>
    </message>
    <message>
        <source>Nothing was restored and nothing was changed. Choose another copy, or the mirror; tautweb verify says all that is wrong with this one.</source>
        <translation>No se restauró ni se cambió nada. Elija otra copia, o el espejo; tautweb verify dice todo lo que está mal en esta.</translation>
    </message>
    <message>
        <source>Nothing was scanned or typed.</source>
        <translation>No se escaneó ni se escribió nada.</translation>
    </message>
    <message>
        <source>Notice: %1</source>
        <translation>Aviso: %1</translation>
    </message>
    <message>
        <source>Now %1.</source>
        <translation>Ahora %1.</translation>
    </message>
    <message>
        <source>Number of the chances</source>
        <translation>Número de los azares</translation>
    </message>
    <message>
        <source>Of a slip clutch: how much faster its input is than the empty core, as a share.</source>
        <translation>De un embrague deslizante: cuánto más rápida es su entrada que el núcleo vacío, como proporción.</translation>
    </message>
    <message>
        <source>Of its base alone.</source>
        <translation>Solo de su base.</translation>
    </message>
    <message>
        <source>Of its cells, for each area.</source>
        <translation>De sus celdas, por superficie.</translation>
    </message>
    <message>
        <source>Of its surface, where it meets rollers.</source>
        <translation>De su superficie, donde toca los rodillos.</translation>
    </message>
    <message>
        <source>Of its surface: more of it lets air out, so that it grips at speed.</source>
        <translation>De su superficie: más deja salir el aire, y así agarra a velocidad.</translation>
    </message>
    <message>
        <source>Of the ink as it is used.</source>
        <translation>De la tinta tal como se usa.</translation>
    </message>
    <message>
        <source>Of the last phase</source>
        <translation>De la última fase</translation>
    </message>
    <message>
        <source>Of the others</source>
        <translation>De las demás</translation>
    </message>
    <message>
        <source>Of the slowest tenth</source>
        <translation>Del 10 % más lento</translation>
    </message>
    <message>
        <source>Of the whole plate.</source>
        <translation>De toda la plancha.</translation>
    </message>
    <message>
        <source>Of those that are driven or whose inertia is known; a light idler has nothing to slip against.</source>
        <translation>De los que son accionados o cuya inercia se conoce; un rodillo loco ligero no tiene contra qué resbalar.</translation>
    </message>
    <message>
        <source>Of web on roller, where it is not the substrate's.</source>
        <translation>De la banda sobre el rodillo, si no es el del sustrato.</translation>
    </message>
    <message>
        <source>Of what turns with the roll: shaft, chucks, disc.</source>
        <translation>De lo que gira con la bobina: eje, platos, disco.</translation>
    </message>
    <message>
        <source>Off the line by</source>
        <translation>Desvío de la recta</translation>
    </message>
    <message>
        <source>Off this, the print is longer or shorter than the gear says, and the pressure wrong.</source>
        <translation>Si difiere, la impresión es más larga o más corta de lo que dice el engranaje, y la presión no es correcta.</translation>
    </message>
    <message>
        <source>Older readings are not shown: choose a time to see them.</source>
        <translation>No se muestran lecturas anteriores: elija un periodo para verlas.</translation>
    </message>
    <message>
        <source>On a web this stiff draw does not set the tension. Set it by eye and by the neighbouring zones, from nothing upward until the web lies flat.</source>
        <translation>En una banda tan rígida el estirado no fija la tensión. Ajústelo a ojo y según las zonas vecinas, desde cero hacia arriba, hasta que la banda quede plana.</translation>
    </message>
    <message>
        <source>On the finished roll the clutch takes %1, it may take %2.</source>
        <translation>En la bobina terminada el embrague absorbe %1, puede absorber %2.</translation>
    </message>
    <message>
        <source>On the largest roller of the main path. Grip begins to go when it reaches the roughness of both.</source>
        <translation>En el rodillo mayor del recorrido principal. El agarre empieza a perderse cuando alcanza la rugosidad de ambos.</translation>
    </message>
    <message>
        <source>On the way to this: %1.</source>
        <translation>Por el camino: %1.</translation>
    </message>
    <message>
        <source>One answer cannot fill several entries.</source>
        <translation>Una respuesta no puede rellenar varias entradas.</translation>
    </message>
    <message>
        <source>One of the readings is not a number.</source>
        <translation>Una de las lecturas no es un número.</translation>
    </message>
    <message>
        <source>One of the values is not a number.</source>
        <translation>Uno de los valores no es un número.</translation>
    </message>
    <message>
        <source>One point is beyond the control limits.</source>
        <translation>Un punto está fuera de los límites de control.</translation>
    </message>
    <message>
        <source>One press of the inch control moves the web %1, more than the guidance for set-up.</source>
        <translation>Una pulsación del mando a impulsos mueve la banda %1, más que lo orientativo para el ajuste.</translation>
    </message>
    <message>
        <source>One roll does it, however the length is measured.</source>
        <translation>Basta una bobina, se mida como se mida la longitud.</translation>
    </message>
    <message>
        <source>One roll does it.</source>
        <translation>Basta una bobina.</translation>
    </message>
    <message>
        <source>One turn of the plate cylinder prints so much web.</source>
        <translation>Una vuelta del cilindro portaplanchas imprime esta longitud de banda.</translation>
    </message>
    <message>
        <source>Only %1 signed runs read both the setting and the tension of this zone; %2 are the least.</source>
        <translation>Solo %1 preparaciones firmadas leyeron tanto el ajuste como la tensión de esta zona; hacen falta %2 como mínimo.</translation>
    </message>
    <message>
        <source>Only a movement is said to be done in words of its own.</source>
        <translation>Solo de un movimiento se declara que está hecho con palabras propias.</translation>
    </message>
    <message>
        <source>Only a supervisor accepts a value outside its window.</source>
        <translation>Solo un supervisor acepta un valor fuera de su margen.</translation>
    </message>
    <message>
        <source>Only a supervisor countersigns a run.</source>
        <translation>Solo un supervisor refrenda una preparación.</translation>
    </message>
    <message>
        <source>Only one limit is given.</source>
        <translation>Solo se ha dado un límite.</translation>
    </message>
    <message>
        <source>Only the newest runs are counted here. Choose a time to see older ones.</source>
        <translation>Aquí se cuentan solo las preparaciones más recientes. Elija un tiempo para ver otras.</translation>
    </message>
    <message>
        <source>Only the reading of a process value can be accepted outside its window.</source>
        <translation>Solo la lectura de un valor de proceso puede aceptarse fuera de su margen.</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Abrir</translation>
    </message>
    <message>
        <source>Open each run and look through its sheet first.</source>
        <translation>Abra antes cada preparación y repase su hoja.</translation>
    </message>
    <message>
        <source>Open it</source>
        <translation>Abrirlo</translation>
    </message>
    <message>
        <source>Open it again; a supervisor can look up who is enrolled.</source>
        <translation>Ábralo de nuevo; un supervisor puede consultar quién está de alta.</translation>
    </message>
    <message>
        <source>Open it and look through its sheet; then accept it with the others.</source>
        <translation>Ábrala y repase su hoja; después acéptela con las demás.</translation>
    </message>
    <message>
        <source>Open it in the program, which keeps a copy of it and brings it up.</source>
        <translation>Abrirlo en el programa, que guarda una copia y lo actualiza.</translation>
    </message>
    <message>
        <source>Open it once as a user who may write there, or copy the file and its -journal to a folder of your own and open it there.</source>
        <translation>Ábralo una vez como usuario que pueda escribir allí, o copie el archivo y su -journal a una carpeta propia y ábralo allí.</translation>
    </message>
    <message>
        <source>Open one, or start the program again.</source>
        <translation>Abra uno, o inicie de nuevo el programa.</translation>
    </message>
    <message>
        <source>Open the file in a text editor and save it again as UTF-8.</source>
        <translation>Abra el archivo en un editor de texto y guárdelo de nuevo como UTF-8.</translation>
    </message>
    <message>
        <source>Open the logbook with the program that wrote it.</source>
        <translation>Abra el libro de registro con el programa que lo escribió.</translation>
    </message>
    <message>
        <source>Open the practice logbook.</source>
        <translation>Abra el libro de prácticas.</translation>
    </message>
    <message>
        <source>Open the practice press.</source>
        <translation>Abra la máquina de prácticas.</translation>
    </message>
    <message>
        <source>Open the shop's logbook.</source>
        <translation>Abra el libro de registro del taller.</translation>
    </message>
    <message>
        <source>Open them</source>
        <translation>Abrirlas</translation>
    </message>
    <message>
        <source>Operator</source>
        <translation>Operador</translation>
    </message>
    <message>
        <source>Operator-side edge from the frame</source>
        <translation>Borde del lado operador desde el bastidor</translation>
    </message>
    <message>
        <source>Operator-side sensor from the frame</source>
        <translation>Sensor del lado operador desde el bastidor</translation>
    </message>
    <message>
        <source>Operator: this is what I saw and did</source>
        <translation>Operador: esto es lo que vi e hice</translation>
    </message>
    <message>
        <source>Others begin mirrors in %1 all the time, and none could be begun for this logbook.</source>
        <translation>Otros empiezan espejos en %1 todo el tiempo, y no se pudo empezar ninguno para este libro de registro.</translation>
    </message>
    <message>
        <source>Out of order</source>
        <translation>Fuera de orden</translation>
    </message>
    <message>
        <source>Out of use since %1: %2</source>
        <translation>Fuera de servicio desde %1: %2</translation>
    </message>
    <message>
        <source>Outer diameter, measured</source>
        <translation>Diámetro exterior, medido</translation>
    </message>
    <message>
        <source>Outside</source>
        <translation>Fuera</translation>
    </message>
    <message>
        <source>Outside at first, by step</source>
        <translation>Fuera al principio, por paso</translation>
    </message>
    <message>
        <source>Over the top</source>
        <translation>Por encima</translation>
    </message>
    <message>
        <source>PRACTICE</source>
        <translation>PRÁCTICA</translation>
    </message>
    <message>
        <source>PRACTICE: nothing of this happened on a press</source>
        <translation>PRÁCTICA: nada de esto ocurrió en una máquina</translation>
    </message>
    <message>
        <source>PRESS WITHDRAWN: out of use until it is given back</source>
        <translation>MÁQUINA RETIRADA DEL SERVICIO: no se usa hasta que se devuelva al servicio</translation>
    </message>
    <message>
        <source>Park it</source>
        <translation>Aparcarlo</translation>
    </message>
    <message>
        <source>Part of the torque goes into the roll itself. Below the limit the wraps wind soft: speed up more slowly.</source>
        <translation>Parte del par va a la propia bobina. Por debajo del límite las vueltas se enrollan blandas: acelere más despacio.</translation>
    </message>
    <message>
        <source>Passed: nothing vital was missed, and nine tenths of the rest are there.</source>
        <translation>Aprobado: no se omitió nada vital, y están nueve décimos del resto.</translation>
    </message>
    <message>
        <source>Patterns that chance seldom makes: %1.</source>
        <translation>Patrones que el azar rara vez produce: %1.</translation>
    </message>
    <message>
        <source>Patterns, newest first</source>
        <translation>Patrones, de nuevo a antiguo</translation>
    </message>
    <message>
        <source>People are enrolled already, so the next one is enrolled by a supervisor.</source>
        <translation>Ya hay personas de alta, así que a la siguiente la da de alta un supervisor.</translation>
    </message>
    <message>
        <source>Periodic checks</source>
        <translation>Controles periódicos</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Persona</translation>
    </message>
    <message>
        <source>Pictures and files</source>
        <translation>Imágenes y archivos</translation>
    </message>
    <message>
        <source>Pieces beside each other.</source>
        <translation>Piezas una junto a otra.</translation>
    </message>
    <message>
        <source>Pieces on one turn of the cylinder.</source>
        <translation>Piezas en una vuelta del cilindro.</translation>
    </message>
    <message>
        <source>Pitch diameter for each tooth.</source>
        <translation>Diámetro primitivo por diente.</translation>
    </message>
    <message>
        <source>Place and calibrate</source>
        <translation>Colocar y calibrar</translation>
    </message>
    <message>
        <source>Plan %1 rolls, or take a longer one.</source>
        <translation>Prevea %1 bobinas, o tome una más larga.</translation>
    </message>
    <message>
        <source>Plan the job with the press's speed.</source>
        <translation>Planifique el trabajo con la velocidad de la máquina.</translation>
    </message>
    <message>
        <source>Pp (spread of all)</source>
        <translation>Pp (dispersión total)</translation>
    </message>
    <message>
        <source>Pp, Ppk</source>
        <translation>Pp, Ppk</translation>
    </message>
    <message>
        <source>Ppk (the nearer limit)</source>
        <translation>Ppk (el límite más cercano)</translation>
    </message>
    <message>
        <source>Practice alone qualifies nobody. Who may work a press alone is said by a supervisor in the shop's logbook, for one press and until a day, after set-ups at that press that somebody watched. Who may lock out energy is for the site's own procedure and local law.</source>
        <translation>La práctica sola no habilita a nadie. Quién puede trabajar a solas en una máquina lo dice un supervisor en el libro de registro del taller, para una máquina y hasta un día, tras preparaciones en esa máquina que alguien observó. Quién puede bloquear energías lo dicen el procedimiento del centro y la ley local.</translation>
    </message>
    <message>
        <source>Practice is kept in a logbook of its own, never in the shop's.</source>
        <translation>La práctica se guarda en un libro propio, nunca en el del taller.</translation>
    </message>
    <message>
        <source>Practice qualifies nobody: competence stands in the shop's logbook.</source>
        <translation>La práctica no habilita a nadie: la competencia consta en el libro del taller.</translation>
    </message>
    <message>
        <source>Press</source>
        <translation>Máquina</translation>
    </message>
    <message>
        <source>Presses of the inch control to draw it through</source>
        <translation>Pulsaciones del mando a impulsos para pasarla tirando</translation>
    </message>
    <message>
        <source>Pretend emergency stop: %1</source>
        <translation>Paro de emergencia simulado: %1</translation>
    </message>
    <message>
        <source>Pretend to press it</source>
        <translation>Simular pulsarlo</translation>
    </message>
    <message>
        <source>Pretend to stop</source>
        <translation>Simular parar</translation>
    </message>
    <message>
        <source>Procedure</source>
        <translation>Procedimiento</translation>
    </message>
    <message>
        <source>Pull at another setting and enter both.</source>
        <translation>Tirar con otro ajuste e introducir los dos.</translation>
    </message>
    <message>
        <source>Pull at another setting, well apart from the first.</source>
        <translation>Tirar con otro ajuste, bien separado del primero.</translation>
    </message>
    <message>
        <source>Pull at settings further apart, or more often, and read the scale while the roll just turns.</source>
        <translation>Tirar con ajustes más separados, o más veces, y leer la báscula mientras la bobina apenas gira.</translation>
    </message>
    <message>
        <source>Pulled hard by hand, the core turns on its shaft.</source>
        <translation>Al tirar fuerte con la mano, el núcleo gira sobre su eje.</translation>
    </message>
    <message>
        <source>Put a step of kind hold before it in its stage, in the kind of run %1 too, or need locked_out.</source>
        <translation>Ponga antes en su etapa un paso de clase hold, también en la clase de preparación %1, o requiera locked_out.</translation>
    </message>
    <message>
        <source>Put a step that gives %1 before it, in the kind of run %2 too.</source>
        <translation>Ponga antes un paso que dé %1, también en la clase de preparación %2.</translation>
    </message>
    <message>
        <source>Put a step with ends = ["stop_held"] before it: everybody out, each holder gives the stop up.</source>
        <translation>Ponga antes un paso con ends = ["stop_held"]: todos fuera, cada uno levanta el paro que mantiene.</translation>
    </message>
    <message>
        <source>Put it in</source>
        <translation>Meterlo</translation>
    </message>
    <message>
        <source>Put it right and answer again, or have a supervisor accept the value.</source>
        <translation>Arréglelo y responda de nuevo, o haga que un supervisor acepte el valor.</translation>
    </message>
    <message>
        <source>Put it right and answer the step. If it cannot be done, withdraw the press or abandon the run.</source>
        <translation>Arréglelo y responda el paso. Si no puede hacerse, retire la máquina del servicio o abandone la preparación.</translation>
    </message>
    <message>
        <source>Put the adapter on both ends, keyed and locked, before the roll goes on.</source>
        <translation>Ponga el adaptador en ambos extremos, enchavetado y bloqueado, antes de montar la bobina.</translation>
    </message>
    <message>
        <source>Put the same file back under this name, then do the last thing again.</source>
        <translation>Vuelva a poner el mismo archivo con este nombre, y repita lo último.</translation>
    </message>
    <message>
        <source>Put the stick in, connect to the other machine, or make the folder first.</source>
        <translation>Conecte la memoria USB, conéctese al otro equipo, o cree antes la carpeta.</translation>
    </message>
    <message>
        <source>Put the stick in, or connect to the other machine; the mirror then catches up by itself. Else choose another folder.</source>
        <translation>Conecte la memoria USB, o conéctese al otro equipo; entonces el espejo se pone al día solo. Si no, elija otra carpeta.</translation>
    </message>
    <message>
        <source>Put the whole of it between quotes, or take the mark out.</source>
        <translation>Póngalo todo entre comillas, o quite la comilla.</translation>
    </message>
    <message>
        <source>Put the word between quotes, or take the character out.</source>
        <translation>Ponga la palabra entre comillas, o quite el carácter.</translation>
    </message>
    <message>
        <source>Quantity</source>
        <translation>Cantidad</translation>
    </message>
    <message>
        <source>R5 of roll.stripped_diameter</source>
        <translation>R5 de roll.stripped_diameter</translation>
    </message>
    <message>
        <source>R6 of target:roll.length</source>
        <translation>R6 de target:roll.length</translation>
    </message>
    <message>
        <source>Raise it from below. It grows with the roll; see the schedule.</source>
        <translation>Súbalo desde abajo. Crece con la bobina; vea la tabla de ajustes.</translation>
    </message>
    <message>
        <source>Raise the roll</source>
        <translation>Subir la bobina</translation>
    </message>
    <message>
        <source>Ratio</source>
        <translation>Razón</translation>
    </message>
    <message>
        <source>Reached step by step: slack, swings and wrinkles show on the way.</source>
        <translation>Alcanzada paso a paso: banda floja, oscilaciones y arrugas se ven por el camino.</translation>
    </message>
    <message>
        <source>Read</source>
        <translation>Leído</translation>
    </message>
    <message>
        <source>Read at %1 settings or more, well apart.</source>
        <translation>Lea en %1 ajustes o más, bien separados.</translation>
    </message>
    <message>
        <source>Read it again, and type it without a minus sign.</source>
        <translation>Léalo de nuevo, y escríbalo sin signo menos.</translation>
    </message>
    <message>
        <source>Read it on a finer instrument, or one whose range fits this value better.</source>
        <translation>Léalo en un instrumento más fino, o en uno cuyo rango se adapte mejor a este valor.</translation>
    </message>
    <message>
        <source>Read it, verify it, and restore it from its mirror or a copy that is in order.</source>
        <translation>Leerlo, verificarlo y restaurarlo desde su espejo o una copia en orden.</translation>
    </message>
    <message>
        <source>Read one more decimal, or the gauge is too coarse to be studied so.</source>
        <translation>Lea un decimal más, o el instrumento es demasiado basto para estudiarlo así.</translation>
    </message>
    <message>
        <source>Read the instrument to finer steps.</source>
        <translation>Leer el instrumento con pasos más finos.</translation>
    </message>
    <message>
        <source>Read the value first.</source>
        <translation>Lea primero el valor.</translation>
    </message>
    <message>
        <source>Read what is missing, or leave out the part or the trial for all.</source>
        <translation>Lea lo que falta, o deje fuera la pieza o la repetición para todos.</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Lectura</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Lecturas</translation>
    </message>
    <message>
        <source>Readings below the window, and above it</source>
        <translation>Lecturas por debajo del margen, y por encima</translation>
    </message>
    <message>
        <source>Readings left out, since there was no target to hold them against: %1.</source>
        <translation>Lecturas omitidas, por no haber valor objetivo con que compararlas: %1.</translation>
    </message>
    <message>
        <source>Readings no further from those of the first run than their instrument can tell, and times within a quarter of each other or within a minute, count as the same.</source>
        <translation>Cuentan como iguales las lecturas que no se apartan de las de la primera preparación más de lo que distingue su instrumento, y los tiempos que difieren menos de una cuarta parte o de un minuto.</translation>
    </message>
    <message>
        <source>Readings outside that a supervisor accepted</source>
        <translation>Lecturas fuera de margen que aceptó un supervisor</translation>
    </message>
    <message>
        <source>Readings: %1. Phases: %2.</source>
        <translation>Lecturas: %1. Fases: %2.</translation>
    </message>
    <message>
        <source>Ready to be observed at a press</source>
        <translation>Lista para ser observada en una máquina</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Motivo</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>Registro</translation>
    </message>
    <message>
        <source>Reference</source>
        <translation>Referencia</translation>
    </message>
    <message>
        <source>Register across the web: station %1</source>
        <translation>Registro a lo ancho: estación %1</translation>
    </message>
    <message>
        <source>Register along the web: station %1</source>
        <translation>Registro a lo largo: estación %1</translation>
    </message>
    <message>
        <source>Release</source>
        <translation>Desenclavar</translation>
    </message>
    <message>
        <source>Repeat</source>
        <translation>Desarrollo</translation>
    </message>
    <message>
        <source>Reset</source>
        <translation>Rearmar</translation>
    </message>
    <message>
        <source>Reset after a stop</source>
        <translation>Rearme tras un paro</translation>
    </message>
    <message>
        <source>Restore once more and name a whole copy from which the people's PINs and keys are taken, or keep this one for reading and begin a new logbook.</source>
        <translation>Restaure una vez más e indique una copia completa de la que se toman los PIN y las claves de las personas, o conserve esta para lectura y empiece un libro de registro nuevo.</translation>
    </message>
    <message>
        <source>Restore the logbook from a backup and compare it with the printed sheets.</source>
        <translation>Restaure el libro de registro desde una copia de seguridad y compárelo con las hojas impresas.</translation>
    </message>
    <message>
        <source>Restore the logbook from a backup.</source>
        <translation>Restaure el libro de registro desde una copia de seguridad.</translation>
    </message>
    <message>
        <source>Restore the logbook from a backup; a document is never written like this.</source>
        <translation>Restaure el libro de registro desde una copia de seguridad; un documento nunca se escribe así.</translation>
    </message>
    <message>
        <source>Restore the logbook from a backup; a run's document is never written like this.</source>
        <translation>Restaure el libro de registro desde una copia de seguridad; el documento de una preparación nunca se escribe así.</translation>
    </message>
    <message>
        <source>Restore the practice logbook from a copy; a document is never written like this.</source>
        <translation>Restaure el libro de prácticas desde una copia; un documento nunca se escribe así.</translation>
    </message>
    <message>
        <source>Result</source>
        <translation>Resultado</translation>
    </message>
    <message>
        <source>Rewind the finished rolls the other way afterwards, or ask the customer.</source>
        <translation>Rebobine después las bobinas terminadas en el otro sentido, o pregunte al cliente.</translation>
    </message>
    <message>
        <source>Roll</source>
        <translation>Bobina</translation>
    </message>
    <message>
        <source>Roll centre</source>
        <translation>Centro de la bobina</translation>
    </message>
    <message>
        <source>Roll centre from the frame</source>
        <translation>Centro de la bobina desde el bastidor</translation>
    </message>
    <message>
        <source>Roll it onto the lift</source>
        <translation>Rodarla al elevador</translation>
    </message>
    <message>
        <source>Roller %1 has no diameter that a web could run over: %2.</source>
        <translation>El rodillo %1 no tiene un diámetro sobre el que pueda pasar una banda: %2.</translation>
    </message>
    <message>
        <source>Roller %1 is of the kind %2; where it is named, only %3 can stand.</source>
        <translation>El rodillo %1 es de la clase %2; donde se nombra, solo puede estar %3.</translation>
    </message>
    <message>
        <source>Roller %1: largest tension ratio before the web slips</source>
        <translation>Rodillo %1: relación máxima de tensiones antes de que la banda resbale</translation>
    </message>
    <message>
        <source>Roller %1: largest tension ratio before the web slips, at crawl only</source>
        <translation>Rodillo %1: relación máxima de tensiones antes de que la banda resbale, solo en marcha lenta</translation>
    </message>
    <message>
        <source>Roller that would slip first</source>
        <translation>Rodillo que resbalaría primero</translation>
    </message>
    <message>
        <source>Roller that would slip first, at crawl only</source>
        <translation>Rodillo que resbalaría primero, solo en marcha lenta</translation>
    </message>
    <message>
        <source>Rollers %1 and %2 overlap: their centres are %3 apart, their radii add up to %4.</source>
        <translation>Los rodillos %1 y %2 se solapan: sus centros distan %3, sus radios suman %4.</translation>
    </message>
    <message>
        <source>Rolls like this one</source>
        <translation>Bobinas como esta</translation>
    </message>
    <message>
        <source>Run</source>
        <translation>Preparación</translation>
    </message>
    <message>
        <source>Run %1 does not start with its beginning.</source>
        <translation>La preparación %1 no comienza por su principio.</translation>
    </message>
    <message>
        <source>Run %1 has not ended, so it cannot be sealed.</source>
        <translation>La preparación %1 no ha terminado, así que no se puede sellar.</translation>
    </message>
    <message>
        <source>Run %1 is named twice.</source>
        <translation>La preparación %1 se nombra dos veces.</translation>
    </message>
    <message>
        <source>Run %1 is not one of the press %2.</source>
        <translation>La preparación %1 no es de la máquina %2.</translation>
    </message>
    <message>
        <source>Run %1 is not sealed yet.</source>
        <translation>La preparación %1 aún no está sellada.</translation>
    </message>
    <message>
        <source>Run %1 is open in this logbook.</source>
        <translation>La preparación %1 está abierta en este libro de registro.</translation>
    </message>
    <message>
        <source>Run %1 is sealed: nothing can be added to it.</source>
        <translation>La preparación %1 está sellada: no se le puede añadir nada.</translation>
    </message>
    <message>
        <source>Run %1 is still open on the press %2.</source>
        <translation>La preparación %1 sigue abierta en la máquina %2.</translation>
    </message>
    <message>
        <source>Run %1 is void.</source>
        <translation>La preparación %1 está anulada.</translation>
    </message>
    <message>
        <source>Run %1 is void: nothing can be added to it.</source>
        <translation>La preparación %1 está anulada: no se le puede añadir nada.</translation>
    </message>
    <message>
        <source>Run %1 was not finished.</source>
        <translation>La preparación %1 no se terminó.</translation>
    </message>
    <message>
        <source>Run %1 was not opened as it stands now.</source>
        <translation>La preparación %1 no se abrió tal como está ahora.</translation>
    </message>
    <message>
        <source>Run %1 was reviewed by %2, and nothing was added since.</source>
        <translation>La preparación %1 fue revisada por %2, y no se añadió nada desde entonces.</translation>
    </message>
    <message>
        <source>Run %1 was sent back and has not been corrected since.</source>
        <translation>La preparación %1 fue devuelta y no se ha corregido desde entonces.</translation>
    </message>
    <message>
        <source>Run at %1 or slower, or lower in the tension window.</source>
        <translation>Corra a %1 o más despacio, o más abajo en el margen de tensión.</translation>
    </message>
    <message>
        <source>Run at %1 or slower: at job speed no tension inside the window is low enough.</source>
        <translation>Corra a %1 o más despacio: a la velocidad del trabajo ninguna tensión dentro del margen es lo bastante baja.</translation>
    </message>
    <message>
        <source>Run slower, wind a smaller roll, or lower the drive of the clutch.</source>
        <translation>Corra más despacio, enrolle una bobina menor, o baje el accionamiento del embrague.</translation>
    </message>
    <message>
        <source>Run the job on another press.</source>
        <translation>Haga el trabajo en otra máquina.</translation>
    </message>
    <message>
        <source>Run with</source>
        <translation>Hecha con</translation>
    </message>
    <message>
        <source>Running time to the reserve</source>
        <translation>Tiempo de marcha hasta la reserva</translation>
    </message>
    <message>
        <source>Running, planned</source>
        <translation>Marcha, prevista</translation>
    </message>
    <message>
        <source>Runs</source>
        <translation>Preparaciones</translation>
    </message>
    <message>
        <source>Runs beside each other</source>
        <translation>Preparaciones lado a lado</translation>
    </message>
    <message>
        <source>S18a, S20, T3, ream of 3000 ft2 assumed</source>
        <translation>S18a, S20, T3, se supone una resma de 3000 ft2</translation>
    </message>
    <message>
        <source>S18a, S20, T3, thickness in points</source>
        <translation>S18a, S20, T3, espesor en points</translation>
    </message>
    <message>
        <source>S41, policy</source>
        <translation>S41, normas</translation>
    </message>
    <message>
        <source>S43, solved for constant speeds</source>
        <translation>S43, resuelto para velocidades constantes</translation>
    </message>
    <message>
        <source>S47, S55, S56, line between from memory: Ducotey and Good 1999</source>
        <translation>S47, S55, S56, línea entre ellos de memoria: Ducotey y Good 1999</translation>
    </message>
    <message>
        <source>S53, S54, constant from memory: Knox and Sweeney 1971</source>
        <translation>S53, S54, constante de memoria: Knox y Sweeney 1971</translation>
    </message>
    <message>
        <source>S55, S56, line between from memory: Ducotey and Good 1999</source>
        <translation>S55, S56, línea entre ellos de memoria: Ducotey y Good 1999</translation>
    </message>
    <message>
        <source>S64, equations from memory: Shelton and Reid 1971</source>
        <translation>S64, ecuaciones de memoria: Shelton y Reid 1971</translation>
    </message>
    <message>
        <source>S69: within the first third of the span behind the guide</source>
        <translation>S69: dentro del primer tercio del tramo detrás del guiador</translation>
    </message>
    <message>
        <source>S78, base from memory: plate makers' charts</source>
        <translation>S78, soporte de memoria: tablas de fabricantes de planchas</translation>
    </message>
    <message>
        <source>S81, public guidance for older presses</source>
        <translation>S81, guía pública para máquinas antiguas</translation>
    </message>
    <message>
        <source>Said by</source>
        <translation>Dicho por</translation>
    </message>
    <message>
        <source>Said to be wrong: %1</source>
        <translation>Señalado como fallo: %1</translation>
    </message>
    <message>
        <source>Save what it holds as a file, and choose that.</source>
        <translation>Guarde como archivo lo que contiene, y elija ese.</translation>
    </message>
    <message>
        <source>Say in a few words what is wrong with it.</source>
        <translation>Diga en pocas palabras qué tiene mal.</translation>
    </message>
    <message>
        <source>Say it in a few words.</source>
        <translation>Dígalo en pocas palabras.</translation>
    </message>
    <message>
        <source>Say it in fewer words.</source>
        <translation>Decirlo con menos palabras.</translation>
    </message>
    <message>
        <source>Say once what the step should be.</source>
        <translation>Diga una sola vez qué debe ser el paso.</translation>
    </message>
    <message>
        <source>Say over or under.</source>
        <translation>Diga por arriba o por abajo.</translation>
    </message>
    <message>
        <source>Say rule or eye.</source>
        <translation>Diga rule o eye.</translation>
    </message>
    <message>
        <source>Say the whole name of whoever holds it.</source>
        <translation>Diga el nombre completo de quien lo mantiene.</translation>
    </message>
    <message>
        <source>Say three letters of the name at least; of a visitor, enough to tell them apart.</source>
        <translation>Diga al menos tres letras del nombre; de un visitante, lo suficiente para distinguirlos.</translation>
    </message>
    <message>
        <source>Say to what it is set.</source>
        <translation>Diga a qué se ajusta.</translation>
    </message>
    <message>
        <source>Say web_break, wrong_roll or other.</source>
        <translation>Indique web_break, wrong_roll u other.</translation>
    </message>
    <message>
        <source>Say what it should be; where no answer can be given, write a remark instead.</source>
        <translation>Diga qué debe ser; donde no se puede dar respuesta, escriba una observación.</translation>
    </message>
    <message>
        <source>Say what the trainer shows again, and how.</source>
        <translation>Diga qué muestra de nuevo el instructor, y cómo.</translation>
    </message>
    <message>
        <source>Say where they are, and that you have seen that nobody is in.</source>
        <translation>Diga dónde está, y que usted ha comprobado que no hay nadie dentro.</translation>
    </message>
    <message>
        <source>Say which stop is held.</source>
        <translation>Diga qué paro se mantiene.</translation>
    </message>
    <message>
        <source>Say who practised, by id and name.</source>
        <translation>Diga quién practicó, con identificador y nombre.</translation>
    </message>
    <message>
        <source>Scan it again. If it stays so, type in what the tag says in plain figures.</source>
        <translation>Escanéela de nuevo. Si sigue igual, escriba lo que la tarjeta dice en cifras legibles.</translation>
    </message>
    <message>
        <source>Scan the roll's tag, or type what it says.</source>
        <translation>Escanee la tarjeta de la bobina, o escriba lo que dice.</translation>
    </message>
    <message>
        <source>Score</source>
        <translation>Puntos</translation>
    </message>
    <message>
        <source>Seal %1 carries more signatures than its document tells of.</source>
        <translation>El sello %1 lleva más firmas de las que cita su documento.</translation>
    </message>
    <message>
        <source>Seal %1 carries no signature, and must carry one.</source>
        <translation>El sello %1 no lleva firma, y debe llevar una.</translation>
    </message>
    <message>
        <source>Seal %1 corrects the step %2 from "%3", and the run does not say that.</source>
        <translation>El sello %1 corrige el paso %2 desde «%3», y la preparación no dice eso.</translation>
    </message>
    <message>
        <source>Seal %1 does not continue the seal before it.</source>
        <translation>El sello %1 no continúa el sello anterior.</translation>
    </message>
    <message>
        <source>Seal %1 does not continue the seal before it: one was taken out, put in, moved or changed here.</source>
        <translation>El sello %1 no continúa el sello anterior: aquí se quitó, se añadió, se movió o se cambió uno.</translation>
    </message>
    <message>
        <source>Seal %1 enrols a first person who is no supervisor.</source>
        <translation>El sello %1 da de alta a una primera persona que no es supervisor.</translation>
    </message>
    <message>
        <source>Seal %1 is about a run that was not sealed then.</source>
        <translation>El sello %1 trata de una preparación que entonces no estaba sellada.</translation>
    </message>
    <message>
        <source>Seal %1 is about an attempt that was not sealed then.</source>
        <translation>El sello %1 trata de un intento que entonces no estaba sellado.</translation>
    </message>
    <message>
        <source>Seal %1 is broken: its document and its link do not belong together, so one of them was changed after sealing.</source>
        <translation>El sello %1 está roto: su documento y su enlace no se corresponden, así que uno de ellos se cambió después de sellar.</translation>
    </message>
    <message>
        <source>Seal %1 is missing: after seal %2 comes seal %3.</source>
        <translation>Falta el sello %1: tras el sello %2 viene el sello %3.</translation>
    </message>
    <message>
        <source>Seal %1 is not as it was sealed, or does not follow the one before it.</source>
        <translation>El sello %1 no está como se selló, o no sigue al anterior.</translation>
    </message>
    <message>
        <source>Seal %1 is of the practice press, and this is the logbook of a shop.</source>
        <translation>El sello %1 es de la máquina de prácticas, y este es el libro de un taller.</translation>
    </message>
    <message>
        <source>Seal %1 is signed by somebody who was not enrolled then.</source>
        <translation>El sello %1 está firmado por alguien que entonces no estaba de alta.</translation>
    </message>
    <message>
        <source>Seal %1 is signed by somebody whose role does not allow it.</source>
        <translation>El sello %1 está firmado por alguien cuyo rol no lo permite.</translation>
    </message>
    <message>
        <source>Seal %1 is signed with a key that was not this person's then.</source>
        <translation>El sello %1 está firmado con una clave que entonces no era de esta persona.</translation>
    </message>
    <message>
        <source>Seal %1 names a run of another press, or one that was void.</source>
        <translation>El sello %1 nombra una preparación de otra máquina, o una anulada.</translation>
    </message>
    <message>
        <source>Seal %1 names a run that was not sealed then.</source>
        <translation>El sello %1 nombra una preparación que entonces no estaba sellada.</translation>
    </message>
    <message>
        <source>Seal %1 names one run and is about the seal of another.</source>
        <translation>El sello %1 nombra una preparación y trata del sello de otra.</translation>
    </message>
    <message>
        <source>Seal %1 names words by the hash %2 that no definition before it has, so what was shown cannot be read again.</source>
        <translation>El sello %1 nombra textos por el hash %2, que ninguna definición anterior tiene, así que lo mostrado no se puede volver a leer.</translation>
    </message>
    <message>
        <source>Seal %1 of the logbook is not in order, so the mirror stays at seal %2.</source>
        <translation>El sello %1 del libro de registro no está en orden, así que el espejo se queda en el sello %2.</translation>
    </message>
    <message>
        <source>Seal %1 of this file is not the one that the sheet names.</source>
        <translation>El sello %1 de este archivo no es el que nombra la hoja.</translation>
    </message>
    <message>
        <source>Seal %1 of this logbook is no attempt.</source>
        <translation>El sello %1 de este libro no es un intento.</translation>
    </message>
    <message>
        <source>Seal %1 of this logbook is not the one that the sheet names: a record was changed, or the sheet is another logbook's.</source>
        <translation>El sello %1 de este libro no es el que nombra la hoja: se cambió un registro, o la hoja es de otro libro de registro.</translation>
    </message>
    <message>
        <source>Seal %1 puts a key that is not its own person's.</source>
        <translation>El sello %1 pone una clave que no es la de su propia persona.</translation>
    </message>
    <message>
        <source>Seal %1 says who is competent, and this is a practice logbook.</source>
        <translation>El sello %1 dice quién es competente, y este es un libro de prácticas.</translation>
    </message>
    <message>
        <source>Seal %1 seals a run that was sealed before.</source>
        <translation>El sello %1 sella una preparación que ya estaba sellada.</translation>
    </message>
    <message>
        <source>Seal %1 stands twice in the file or out of its order.</source>
        <translation>El sello %1 está dos veces en el archivo o fuera de su orden.</translation>
    </message>
    <message>
        <source>Seal %1 tells of another PIN, and changes more than its own person's.</source>
        <translation>El sello %1 informa de otro PIN, y cambia más que los de su propia persona.</translation>
    </message>
    <message>
        <source>Seal %1 was not to be given: %2</source>
        <translation>El sello %1 no debía darse: %2</translation>
    </message>
    <message>
        <source>Seal %3 names the picture or file %1 (SHA-256 %2...), and its bytes are not there.</source>
        <translation>El sello %3 nombra la imagen o archivo %1 (SHA-256 %2...), y sus bytes no están.</translation>
    </message>
    <message>
        <source>Sealed by</source>
        <translation>Sellada por</translation>
    </message>
    <message>
        <source>See whether tag and material belong to this roll: every tension goes by the material.</source>
        <translation>Mire si tarjeta y material son de esta bobina: toda tensión depende del material.</translation>
    </message>
    <message>
        <source>See whether the label names the right item, and tell the supplier.</source>
        <translation>Mire si la etiqueta nombra el artículo correcto, e informe al proveedor.</translation>
    </message>
    <message>
        <source>See whether the tag belongs to this roll; measure, and enter what you measured.</source>
        <translation>Mire si la tarjeta es de esta bobina; mida, e introduzca lo que midió.</translation>
    </message>
    <message>
        <source>See which roll hangs there, and take its own tag: two tags are easily swapped.</source>
        <translation>Mire qué bobina cuelga ahí, y tome su propia tarjeta: dos tarjetas se confunden fácilmente.</translation>
    </message>
    <message>
        <source>Sending a run back needs a reason.</source>
        <translation>Devolver una preparación necesita un motivo.</translation>
    </message>
    <message>
        <source>Sensor behind the guide's last roller</source>
        <translation>Sensor detrás del último rodillo del guiador</translation>
    </message>
    <message>
        <source>Sensor of the web guide</source>
        <translation>Sensor del guiador de banda</translation>
    </message>
    <message>
        <source>Sensor's reading with the edge where it belongs</source>
        <translation>Lectura del sensor con el borde donde debe estar</translation>
    </message>
    <message>
        <source>Sent back by %1, %2: %3</source>
        <translation>Devuelta por %1, %2: %3</translation>
    </message>
    <message>
        <source>Set</source>
        <translation>Ajustar</translation>
    </message>
    <message>
        <source>Set TAUTWEB_RESOURCES to that folder, or install the program again.</source>
        <translation>Ponga en TAUTWEB_RESOURCES esa carpeta, o instale de nuevo el programa.</translation>
    </message>
    <message>
        <source>Set it by eye and by the neighbouring zones.</source>
        <translation>Ajústelo a ojo y según las zonas vecinas.</translation>
    </message>
    <message>
        <source>Set it to what is shown, and hold the tension by the neighbouring zones.</source>
        <translation>Ajústelo a lo mostrado, y mantenga la tensión con las zonas vecinas.</translation>
    </message>
    <message>
        <source>Set it to what is shown, and no further out in the window shown.</source>
        <translation>Ajústelo a lo mostrado, y no más hacia fuera en el margen mostrado.</translation>
    </message>
    <message>
        <source>Set it to what is shown: the nearest to the middle of the window that it can hold.</source>
        <translation>Ajústelo a lo mostrado: lo más cercano al centro del margen que puede mantener.</translation>
    </message>
    <message>
        <source>Set narrower ones, or mend the figure of the plate or the policy row.</source>
        <translation>Ponga más estrechas, o corrija la cifra de la placa o la fila de normas.</translation>
    </message>
    <message>
        <source>Set the automatic stop to the diameter shown, which leaves %1 on the roll, and enter no less as the reserve; or run slower.</source>
        <translation>Ajuste el paro automático al diámetro mostrado, que deja %1 en la bobina, e introduzca al menos eso como reserva; o corra más despacio.</translation>
    </message>
    <message>
        <source>Set the roll over until its web runs in the middle, or take another.</source>
        <translation>Desplace la bobina hasta que su banda corra por el centro, o tome otra.</translation>
    </message>
    <message>
        <source>Set to nought</source>
        <translation>Poner a cero</translation>
    </message>
    <message>
        <source>Set-up sheet: what each setting should be here, what was read, by whom and when</source>
        <translation>Hoja de ajuste: qué debe ser aquí cada ajuste, qué se leyó, quién y cuándo</translation>
    </message>
    <message>
        <source>Setting</source>
        <translation>Ajuste</translation>
    </message>
    <message>
        <source>Setting up</source>
        <translation>Puesta a punto</translation>
    </message>
    <message>
        <source>Setting up against running: the median full set-up over the running time planned for the job</source>
        <translation>Puesta a punto y marcha: la mediana de las completas entre el tiempo de marcha previsto del trabajo</translation>
    </message>
    <message>
        <source>Settings of this job and roll</source>
        <translation>Ajustes de este trabajo y esta bobina</translation>
    </message>
    <message>
        <source>Shaft and chucks run on round so small a core: as the roll has just begun, this pulls hardest.</source>
        <translation>El eje y las mordazas siguen girando sobre un núcleo tan pequeño: con la bobina recién empezada, aquí el tirón es máximo.</translation>
    </message>
    <message>
        <source>Share of the load cell's range; zero it with the web slack first.</source>
        <translation>Parte del rango de la célula de carga; póngala primero a cero con la banda floja.</translation>
    </message>
    <message>
        <source>Share of the stroke that this roll's wander takes</source>
        <translation>Parte del recorrido que toma la deriva lateral de esta bobina</translation>
    </message>
    <message>
        <source>Share of what the guide can shift this web that this roll's wander takes</source>
        <translation>Parte de lo que el guiador puede desplazar esta banda que toma la deriva lateral de esta bobina</translation>
    </message>
    <message>
        <source>Shorten it, or make it two steps.</source>
        <translation>Acórtelo, o haga dos pasos.</translation>
    </message>
    <message>
        <source>Shut</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Sideways step at the joint</source>
        <translation>Escalón lateral en la unión</translation>
    </message>
    <message>
        <source>Sign in once more; a supervisor can look up how it stands.</source>
        <translation>Inicie sesión una vez más; un supervisor puede consultar cómo está.</translation>
    </message>
    <message>
        <source>Sign it off or abandon it first.</source>
        <translation>Fírmela y ciérrela o abandónela primero.</translation>
    </message>
    <message>
        <source>Sign it off, or abandon it with a reason.</source>
        <translation>Fírmela y ciérrela, o abandónela con un motivo.</translation>
    </message>
    <message>
        <source>Signed</source>
        <translation>Firmado</translation>
    </message>
    <message>
        <source>Signed in the logbook by %1 with their own key, %2: %3. Whoever doubts it checks the logbook against the count and link at the foot of this page.</source>
        <translation>Firmado en el libro de registro por %1 con su propia clave, %2: %3. Quien lo dude, coteje el libro con el número y el enlace al pie de esta página.</translation>
    </message>
    <message>
        <source>Since</source>
        <translation>Desde</translation>
    </message>
    <message>
        <source>Since %1 (run %2) it is %3 higher: %4 times its usual scatter.</source>
        <translation>Desde %1 (preparación %2) está %3 por encima: %4 veces su dispersión habitual.</translation>
    </message>
    <message>
        <source>Since %1 (run %2) it is %3 lower: %4 times its usual scatter.</source>
        <translation>Desde %1 (preparación %2) está %3 por debajo: %4 veces su dispersión habitual.</translation>
    </message>
    <message>
        <source>Single values</source>
        <translation>Valores individuales</translation>
    </message>
    <message>
        <source>Site</source>
        <translation>Planta</translation>
    </message>
    <message>
        <source>Six points in a row rise or fall.</source>
        <translation>Seis puntos seguidos suben o bajan.</translation>
    </message>
    <message>
        <source>Slack and decision have to be above nought.</source>
        <translation>La holgura y el umbral de decisión deben ser mayores que cero.</translation>
    </message>
    <message>
        <source>So long everything runs together for the first time, slow enough to be stopped by eye.</source>
        <translation>Durante ese tiempo todo corre junto por primera vez, lo bastante despacio para pararlo a ojo.</translation>
    </message>
    <message>
        <source>So many wraps are assumed; take off more until the web is clean and without nicks.</source>
        <translation>Se suponen esas vueltas; quite más hasta que la banda esté limpia y sin muescas.</translation>
    </message>
    <message>
        <source>So many wraps at so much friction would hold more than ten thousand times the pull on the tail.</source>
        <translation>Tantas vueltas con tanto rozamiento sujetarían más de diez mil veces el tirón de la cola.</translation>
    </message>
    <message>
        <source>So much web lies in the press when it is threaded.</source>
        <translation>Esta banda hay en la máquina cuando está enhebrada.</translation>
    </message>
    <message>
        <source>So much web passes before the splice reaches the rewind.</source>
        <translation>Esta banda pasa antes de que el empalme llegue al rebobinador.</translation>
    </message>
    <message>
        <source>So wound, the roll must be fed %1 to show its face to the plates, and this press cannot feed it so.</source>
        <translation>Enrollada así, la bobina debe alimentarse %1 para mostrar su cara a las planchas, y esta máquina no puede alimentarla así.</translation>
    </message>
    <message>
        <source>Somebody still holds the press stopped.</source>
        <translation>Alguien retiene aún parada la máquina.</translation>
    </message>
    <message>
        <source>Something still turns.</source>
        <translation>Algo gira todavía.</translation>
    </message>
    <message>
        <source>Something that comes first is still open: %1</source>
        <translation>Sigue abierto algo que va antes: %1</translation>
    </message>
    <message>
        <source>Something was left lying on the dryer.</source>
        <translation>Se dejó algo encima del secador.</translation>
    </message>
    <message>
        <source>Spanish</source>
        <translation>español</translation>
    </message>
    <message>
        <source>Speed</source>
        <translation>Velocidad</translation>
    </message>
    <message>
        <source>Speed of the proving run</source>
        <translation>Velocidad de la marcha de prueba</translation>
    </message>
    <message>
        <source>Splice tape beyond the web's edge</source>
        <translation>Cinta de empalme más allá del borde de la banda</translation>
    </message>
    <message>
        <source>Splice: how many times the highest running tension it holds</source>
        <translation>Empalme: cuántas veces aguanta la tensión en marcha más alta</translation>
    </message>
    <message>
        <source>Splice: how many times the worst tension in a stop it holds</source>
        <translation>Empalme: cuántas veces aguanta la peor tensión en un paro</translation>
    </message>
    <message>
        <source>Splices to expect</source>
        <translation>Empalmes previsibles</translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>Etapa</translation>
    </message>
    <message>
        <source>Stages done again, by cause</source>
        <translation>Etapas repetidas, por causa</translation>
    </message>
    <message>
        <source>Start the program again; if it comes back, report it.</source>
        <translation>Inicie de nuevo el programa; si vuelve a ocurrir, infórmelo.</translation>
    </message>
    <message>
        <source>Starting and stopping pull more than running; more than this parts a splice or leaves the web slack.</source>
        <translation>Arrancar y parar tiran más que la marcha; más que esto abre un empalme o deja la banda floja.</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Estado</translation>
    </message>
    <message>
        <source>Station %1 is given twice.</source>
        <translation>La estación %1 se indica dos veces.</translation>
    </message>
    <message>
        <source>Station %1: ink to have ready</source>
        <translation>Estación %1: tinta que tener preparada</translation>
    </message>
    <message>
        <source>Station %1: length of the film against the print</source>
        <translation>Estación %1: longitud del fotolito respecto a la impresión</translation>
    </message>
    <message>
        <source>Station %1: plate and tape over the undercut</source>
        <translation>Estación %1: plancha y cinta por encima del rebaje</translation>
    </message>
    <message>
        <source>Station %1: register adjuster from its mid mark</source>
        <translation>Estación %1: ajustador de registro desde su marca central</translation>
    </message>
    <message>
        <source>Station %1: register left across the web, each way</source>
        <translation>Estación %1: registro restante a lo ancho de la banda, en cada sentido</translation>
    </message>
    <message>
        <source>Station %1: register left along the web, each way</source>
        <translation>Estación %1: registro restante a lo largo de la banda, en cada sentido</translation>
    </message>
    <message>
        <source>Station %1: wet ink on the web</source>
        <translation>Estación %1: tinta húmeda en la banda</translation>
    </message>
    <message>
        <source>Stations</source>
        <translation>Estaciones</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Paso</translation>
    </message>
    <message>
        <source>Steps follow the call that closes this stage.</source>
        <translation>Hay pasos detrás de la declaración que cierra esta etapa.</translation>
    </message>
    <message>
        <source>Steps left open are told of the newest %1 abandoned runs.</source>
        <translation>Los pasos abiertos son de las %1 preparaciones abandonadas más recientes.</translation>
    </message>
    <message>
        <source>Still open</source>
        <translation>Aún abiertas</translation>
    </message>
    <message>
        <source>Stop from running</source>
        <translation>Parar desde la marcha</translation>
    </message>
    <message>
        <source>Stop raising</source>
        <translation>Dejar de subir</translation>
    </message>
    <message>
        <source>Stored energy is let off or held</source>
        <translation>La energía acumulada está descargada o retenida</translation>
    </message>
    <message>
        <source>Strain of the web's edge at the end of the stroke</source>
        <translation>Alargamiento del borde de la banda al final del recorrido</translation>
    </message>
    <message>
        <source>Strip outer wraps until the edge is whole, and say how many.</source>
        <translation>Quite vueltas exteriores hasta que el borde esté entero, y diga cuántas.</translation>
    </message>
    <message>
        <source>Strip outer wraps until the web is clean.</source>
        <translation>Quite vueltas exteriores hasta que la banda esté limpia.</translation>
    </message>
    <message>
        <source>Stroke that this roll's wander takes</source>
        <translation>Recorrido que toma la deriva lateral de esta bobina</translation>
    </message>
    <message>
        <source>Substrate</source>
        <translation>Sustrato</translation>
    </message>
    <message>
        <source>Supervisor: I accepted the deviations</source>
        <translation>Supervisor: acepté las desviaciones</translation>
    </message>
    <message>
        <source>Supervisor: I have reviewed this record</source>
        <translation>Supervisor: he revisado este registro</translation>
    </message>
    <message>
        <source>Supervisor: I have voided this record</source>
        <translation>Supervisor: he anulado este registro</translation>
    </message>
    <message>
        <source>Supervisor: I looked at this set-up and sign beside</source>
        <translation>Supervisor: he mirado esta preparación y firmo al lado</translation>
    </message>
    <message>
        <source>Switch it on.</source>
        <translation>Conéctela.</translation>
    </message>
    <message>
        <source>Switch off</source>
        <translation>Desconectar</translation>
    </message>
    <message>
        <source>Switch on</source>
        <translation>Conectar</translation>
    </message>
    <message>
        <source>T = 0 where M / R &lt; J a / R^2</source>
        <translation>T = 0 donde M / R &lt; J a / R^2</translation>
    </message>
    <message>
        <source>T2 = Tss + (T0 - Tss) e^(-v2 t / L), Tss = (K (v2 - v1) + v1 T1) / v2</source>
        <translation>T2 = Tss + (T0 - Tss) e^(-v2 t / L), Tss = (K (v2 - v1) + v1 T1) / v2</translation>
    </message>
    <message>
        <source>Take 20 or more.</source>
        <translation>Tomar 20 o más.</translation>
    </message>
    <message>
        <source>Take a longer one.</source>
        <translation>Tome una más larga.</translation>
    </message>
    <message>
        <source>Take a narrower web, or engage more of the brake.</source>
        <translation>Tome una banda más estrecha, o active más parte del freno.</translation>
    </message>
    <message>
        <source>Take a roll of at most %1 across, or a narrower web, or engage more of the brake.</source>
        <translation>Tome una bobina de %1 de diámetro como máximo, o una banda más estrecha, o active más parte del freno.</translation>
    </message>
    <message>
        <source>Take a roll of the job's material. Every tension would be wrong on this one.</source>
        <translation>Tome una bobina del material del trabajo. Con esta, todas las tensiones serían erróneas.</translation>
    </message>
    <message>
        <source>Take a roll of the job's width: on this one the outer lanes run off the web.</source>
        <translation>Tome una bobina del ancho del trabajo: en esta las pistas exteriores se salen de la banda.</translation>
    </message>
    <message>
        <source>Take a roll on a core that the mandrel holds; this press has no adapters.</source>
        <translation>Tome una bobina con un núcleo que sujete el eje; esta máquina no tiene adaptadores.</translation>
    </message>
    <message>
        <source>Take a roll on another core, or fetch an adapter and enter it in the press's profile.</source>
        <translation>Tome una bobina con otro núcleo, o traiga un adaptador e introdúzcalo en el perfil de la máquina.</translation>
    </message>
    <message>
        <source>Take a roll wound the other way, or have this one rewound.</source>
        <translation>Tome una bobina enrollada al revés, o haga rebobinar esta.</translation>
    </message>
    <message>
        <source>Take a smaller roll, or have this one rewound into two.</source>
        <translation>Tome una bobina menor, o haga rebobinar esta en dos.</translation>
    </message>
    <message>
        <source>Take a smaller roll. Do not hang this one here.</source>
        <translation>Tome una bobina menor. No cuelgue esta aquí.</translation>
    </message>
    <message>
        <source>Take a smaller roll. Do not lift this one here.</source>
        <translation>Tome una bobina menor. No eleve esta aquí.</translation>
    </message>
    <message>
        <source>Take air = false out, or correct what works with air.</source>
        <translation>Quite air = false, o corrija lo que funciona con aire.</translation>
    </message>
    <message>
        <source>Take another roll or another press. If the figure is a slip, correct it.</source>
        <translation>Tome otra bobina u otra máquina. Si la cifra es un error, corríjala.</translation>
    </message>
    <message>
        <source>Take another roll.</source>
        <translation>Tome otra bobina.</translation>
    </message>
    <message>
        <source>Take at least %1.</source>
        <translation>Tome al menos %1.</translation>
    </message>
    <message>
        <source>Take done away, or make it a motion step.</source>
        <translation>Quite done, o haga de él un paso motion.</translation>
    </message>
    <message>
        <source>Take it away</source>
        <translation>Quitarlo</translation>
    </message>
    <message>
        <source>Take it in behind the door Shop, or choose another scenario.</source>
        <translation>Incorpórelo tras la puerta Taller, o elija otro escenario.</translation>
    </message>
    <message>
        <source>Take it out</source>
        <translation>Sacarlo</translation>
    </message>
    <message>
        <source>Take it out, or look up the list of those that there are.</source>
        <translation>Quítelo, o consulte la lista de los que existen.</translation>
    </message>
    <message>
        <source>Take it out, or look up what it is called in the procedure.</source>
        <translation>Quitarlo, o buscar cómo se llama en el procedimiento.</translation>
    </message>
    <message>
        <source>Take it out, or look up what it is called.</source>
        <translation>Quítelo, o consulte cómo se llama.</translation>
    </message>
    <message>
        <source>Take it out, or name one of the roles that procedures use.</source>
        <translation>Quítelo, o nombre uno de los roles que usan los procedimientos.</translation>
    </message>
    <message>
        <source>Take it out.</source>
        <translation>Quitarlo.</translation>
    </message>
    <message>
        <source>Take it out. Known here: %1.</source>
        <translation>Quítelo. Se conocen aquí: %1.</translation>
    </message>
    <message>
        <source>Take it out: delete from the letter before it to the letter behind it, and type both anew.</source>
        <translation>Quítelo: borre desde la letra anterior hasta la letra posterior, y escriba ambas de nuevo.</translation>
    </message>
    <message>
        <source>Take it over, and say its vital steps again; or let %1 go on with it.</source>
        <translation>Asúmala, y declare de nuevo sus pasos vitales; o deje que %1 la continúe.</translation>
    </message>
    <message>
        <source>Take longer rolls, or correct what a splice loses.</source>
        <translation>Tome bobinas más largas, o corrija lo que pierde un empalme.</translation>
    </message>
    <message>
        <source>Take one of the two out.</source>
        <translation>Quite uno de los dos.</translation>
    </message>
    <message>
        <source>Take part of the brake out of use, or a roll of at least %1 across.</source>
        <translation>Desactive parte del freno, o tome una bobina de al menos %1 de diámetro.</translation>
    </message>
    <message>
        <source>Take part of the brake out of use, or a roll on a core of at least %1 outside.</source>
        <translation>Desactive parte del freno, o tome una bobina con un núcleo de al menos %1 por fuera.</translation>
    </message>
    <message>
        <source>Take part of the brake out of use, or run higher in the tension window.</source>
        <translation>Desactive parte del freno, o corra más arriba en el margen de tensión.</translation>
    </message>
    <message>
        <source>Take part of the brake out of use.</source>
        <translation>Desactive parte del freno.</translation>
    </message>
    <message>
        <source>Take part of the clutch out of use.</source>
        <translation>Desactive parte del embrague.</translation>
    </message>
    <message>
        <source>Take parts that differ as those do that the gauge is used for.</source>
        <translation>Tome piezas que difieran como aquellas para las que sirve el instrumento.</translation>
    </message>
    <message>
        <source>Take the edition that the attempt names.</source>
        <translation>Tome la edición que nombra el intento.</translation>
    </message>
    <message>
        <source>Take the minus sign out, or measure from the other side.</source>
        <translation>Quite el signo menos, o mida desde el otro lado.</translation>
    </message>
    <message>
        <source>Take the picture once more.</source>
        <translation>Tomar la imagen otra vez.</translation>
    </message>
    <message>
        <source>Take the roll off at %1, or take part of the brake out of use and enter its torque.</source>
        <translation>Quite la bobina en %1, o desactive parte del freno e introduzca su par.</translation>
    </message>
    <message>
        <source>Take the roll off at %1.</source>
        <translation>Quite la bobina en %1.</translation>
    </message>
    <message>
        <source>Take the rolls off earlier.</source>
        <translation>Quite antes las bobinas.</translation>
    </message>
    <message>
        <source>Take the translation of this edition.</source>
        <translation>Tomar la traducción de esta edición.</translation>
    </message>
    <message>
        <source>Take the word out: gloves are pulled into what turns. Say them where the press stands still.</source>
        <translation>Quite la palabra: lo que gira arrastra los guantes. Menciónelos donde la máquina está parada.</translation>
    </message>
    <message>
        <source>Take them off</source>
        <translation>Quitarlas</translation>
    </message>
    <message>
        <source>Take them out, or name a target as "tautweb targets" lists it.</source>
        <translation>Quítelos, o nombre un valor objetivo como lo lista "tautweb targets".</translation>
    </message>
    <message>
        <source>Take them out.</source>
        <translation>Quítelos.</translation>
    </message>
    <message>
        <source>Take together attempts with some of both.</source>
        <translation>Junte intentos que tengan de ambas cosas.</translation>
    </message>
    <message>
        <source>Taken over by the next shift</source>
        <translation>Asumida por el turno siguiente</translation>
    </message>
    <message>
        <source>Tape and web that stand over</source>
        <translation>Cinta y banda que sobresalen</translation>
    </message>
    <message>
        <source>Tape both faces, and enter both_faces in the substrate's splice tape.</source>
        <translation>Ponga cinta en ambas caras, e introduzca both_faces en la cinta de empalme del sustrato.</translation>
    </message>
    <message>
        <source>Tape it along an edge</source>
        <translation>Pegar contra un borde</translation>
    </message>
    <message>
        <source>Tape it and wrap it</source>
        <translation>Pegarla y dar vueltas</translation>
    </message>
    <message>
        <source>Tape it by eye</source>
        <translation>Pegar a ojo</translation>
    </message>
    <message>
        <source>Taped on one face only, the other ply hangs on a release layer that is made to let go.</source>
        <translation>Con cinta en una sola cara, la otra capa cuelga de una capa antiadherente hecha para soltarse.</translation>
    </message>
    <message>
        <source>Taper less, or begin with %1.</source>
        <translation>Disminuya menos, o empiece con %1.</translation>
    </message>
    <message>
        <source>Taper less, or run higher in the tension window.</source>
        <translation>Disminuya menos, o corra más arriba en el margen de tensión.</translation>
    </message>
    <message>
        <source>Taper less, or see that the outer wraps do not slide; wherever in the window it begins, this taper ends below it.</source>
        <translation>Disminuya menos, o vigile que las vueltas exteriores no resbalen; empiece donde empiece en el margen, esta disminución termina por debajo.</translation>
    </message>
    <message>
        <source>Taper less.</source>
        <translation>Disminuya menos.</translation>
    </message>
    <message>
        <source>Teeth for each inch of pitch diameter.</source>
        <translation>Dientes por pulgada de diámetro primitivo.</translation>
    </message>
    <message>
        <source>Teeth for the repeat wanted</source>
        <translation>Dientes para el desarrollo deseado</translation>
    </message>
    <message>
        <source>Teeth of the print cylinder's gear.</source>
        <translation>Dientes del engranaje del cilindro impresor.</translation>
    </message>
    <message>
        <source>Tell a supervisor what else you found.</source>
        <translation>Diga a un supervisor qué más encontró.</translation>
    </message>
    <message>
        <source>Ten printed repeats, longer than ten by the gear</source>
        <translation>Diez desarrollos impresos, cuánto más largos que diez según el engranaje</translation>
    </message>
    <message>
        <source>Ten times as much would fit.</source>
        <translation>Encajaría diez veces más.</translation>
    </message>
    <message>
        <source>Ten wrong tries in a row: this person is not let in any more.</source>
        <translation>Diez intentos fallidos seguidos: esta persona ya no puede entrar.</translation>
    </message>
    <message>
        <source>Tension</source>
        <translation>Tensión</translation>
    </message>
    <message>
        <source>Tension at the rewind during an emergency stop, empty core</source>
        <translation>Tensión en el rebobinador durante un paro de emergencia, núcleo vacío</translation>
    </message>
    <message>
        <source>Tension at the rewind during an emergency stop, finished roll</source>
        <translation>Tensión en el rebobinador durante un paro de emergencia, bobina terminada</translation>
    </message>
    <message>
        <source>Tension at the rewind while the press speeds up, finished roll</source>
        <translation>Tensión en el rebobinador mientras la máquina acelera, bobina terminada</translation>
    </message>
    <message>
        <source>Tension at the unwind during an emergency stop</source>
        <translation>Tensión en el desbobinador durante un paro de emergencia</translation>
    </message>
    <message>
        <source>Tension at the unwind while the press speeds up</source>
        <translation>Tensión en el desbobinador mientras la máquina acelera</translation>
    </message>
    <message>
        <source>Tension is not on yet.</source>
        <translation>La tensión aún no está puesta.</translation>
    </message>
    <message>
        <source>Tension is on</source>
        <translation>La tensión está puesta</translation>
    </message>
    <message>
        <source>Tension of the zone %1, the last minute</source>
        <translation>Tensión de la zona %1, el último minuto</translation>
    </message>
    <message>
        <source>Tension per width by the plies' own tables</source>
        <translation>Tensión por ancho según las tablas propias de las capas</translation>
    </message>
    <message>
        <source>Tension setting: %1</source>
        <translation>Ajuste de tensión: %1</translation>
    </message>
    <message>
        <source>Tension: %1</source>
        <translation>Tensión: %1</translation>
    </message>
    <message>
        <source>Tests passed in a row, with other faults each</source>
        <translation>Pruebas superadas seguidas, cada una con otros fallos</translation>
    </message>
    <message>
        <source>Tests that a trainer still has to look at</source>
        <translation>Pruebas que un instructor aún tiene que mirar</translation>
    </message>
    <message>
        <source>That is done along a rule, or by eye.</source>
        <translation>Eso se hace con regla o a ojo.</translation>
    </message>
    <message>
        <source>The PIN is a straight run like 1234.</source>
        <translation>El PIN es una serie seguida como 1234.</translation>
    </message>
    <message>
        <source>The PIN is longer than 64 characters.</source>
        <translation>El PIN tiene más de 64 caracteres.</translation>
    </message>
    <message>
        <source>The PIN is one character repeated.</source>
        <translation>El PIN es un solo carácter repetido.</translation>
    </message>
    <message>
        <source>The PIN is shorter than 4 characters.</source>
        <translation>El PIN tiene menos de 4 caracteres.</translation>
    </message>
    <message>
        <source>The PIN of a badge has six digits or more.</source>
        <translation>El PIN de una credencial tiene seis cifras o más.</translation>
    </message>
    <message>
        <source>The air is not on yet.</source>
        <translation>El aire aún no está abierto.</translation>
    </message>
    <message>
        <source>The air is off.</source>
        <translation>El aire está cortado.</translation>
    </message>
    <message>
        <source>The air is on</source>
        <translation>El aire está abierto</translation>
    </message>
    <message>
        <source>The air on the dancer. A dancer at rest shows balance, it does not prove tension.</source>
        <translation>El aire del bailarín. Un bailarín en reposo muestra equilibrio, no prueba la tensión.</translation>
    </message>
    <message>
        <source>The angle of its cutting guide, from the straight cross cut.</source>
        <translation>El ángulo de su guía de corte, respecto al corte recto.</translation>
    </message>
    <message>
        <source>The angle over which the web lies on it, where the rollers do not tell.</source>
        <translation>El ángulo en que la banda la abraza, si los rodillos no lo dicen.</translation>
    </message>
    <message>
        <source>The badge could not be printed.</source>
        <translation>La credencial no se pudo imprimir.</translation>
    </message>
    <message>
        <source>The bond gives way: a longer overlap, or a tape that holds better on this web, or run at less tension.</source>
        <translation>Cede la adherencia: un solape más largo, o una cinta que agarre mejor en esta banda, o correr con menos tensión.</translation>
    </message>
    <message>
        <source>The bond gives way: tape both faces, or a longer overlap, or a tape that holds better on this web, or run at less tension.</source>
        <translation>Cede la adherencia: ponga cinta en ambas caras, o un solape más largo, o una cinta que agarre mejor en esta banda, o corra con menos tensión.</translation>
    </message>
    <message>
        <source>The brake as set does not hold this roll: expect slack web and a run-on at an emergency stop.</source>
        <translation>El freno, como está ajustado, no sujeta esta bobina: cuente con banda floja y con que siga girando en un paro de emergencia.</translation>
    </message>
    <message>
        <source>The brake lets go in an emergency stop: the roll runs on and the web hangs slack.</source>
        <translation>El freno se suelta en un paro de emergencia: la bobina sigue girando y la banda cuelga floja.</translation>
    </message>
    <message>
        <source>The centreline is said to lie %1 from the frame face, but the other face is %2 away.</source>
        <translation>Se declara que la línea central está a %1 de la cara del bastidor, pero la otra cara está a %2.</translation>
    </message>
    <message>
        <source>The check %1 can never be told as done: it does not say %2.</source>
        <translation>El control %1 nunca podrá darse por hecho: no dice %2.</translation>
    </message>
    <message>
        <source>The choice %1 has no words.</source>
        <translation>La opción %1 no tiene texto.</translation>
    </message>
    <message>
        <source>The competence of %1 at the press %2 ended on %3.</source>
        <translation>La competencia de %1 en la máquina %2 terminó el %3.</translation>
    </message>
    <message>
        <source>The competence of %1 at the press %2 was ended: %3</source>
        <translation>La competencia de %1 en la máquina %2 se dio por terminada: %3</translation>
    </message>
    <message>
        <source>The compressed air is low.</source>
        <translation>El aire comprimido es escaso.</translation>
    </message>
    <message>
        <source>The constant of the profile is not the one that these runs measured.</source>
        <translation>La constante del perfil no es la que midieron estas preparaciones.</translation>
    </message>
    <message>
        <source>The constant of the profile still fits: these runs give no reason to change it.</source>
        <translation>La constante del perfil sigue valiendo: estas preparaciones no dan motivo para cambiarla.</translation>
    </message>
    <message>
        <source>The core is not of the size that the shaft holds.</source>
        <translation>El núcleo no es del tamaño que sujeta el eje.</translation>
    </message>
    <message>
        <source>The core is said to weigh %1, the whole roll %2.</source>
        <translation>Se declara que el núcleo pesa %1, y la bobina entera %2.</translation>
    </message>
    <message>
        <source>The core is said to weigh %1; of solid steel it would weigh %2.</source>
        <translation>Se declara que el núcleo pesa %1; de acero macizo pesaría %2.</translation>
    </message>
    <message>
        <source>The core measures %1 inside; the mandrel holds %2 to %3.</source>
        <translation>El núcleo mide %1 por dentro; el eje sujeta de %2 a %3.</translation>
    </message>
    <message>
        <source>The core slips on its shaft: the brake does not hold the roll.</source>
        <translation>El núcleo patina en su eje: el freno no sujeta la bobina.</translation>
    </message>
    <message>
        <source>The core's wall is not known: reckoned with one of %1, the thickest, so that the stop comes early and never too late. Measure the wall.</source>
        <translation>No se conoce la pared del núcleo: se calcula con una de %1, la más gruesa, para que el paro llegue pronto y nunca tarde. Mida la pared.</translation>
    </message>
    <message>
        <source>The dancer of %1 is still pinned.</source>
        <translation>El bailarín de %1 sigue bloqueado con su pasador.</translation>
    </message>
    <message>
        <source>The deceleration is the press's own: the time grows with the speed that it is stopped from.</source>
        <translation>La deceleración es la propia de la máquina: el tiempo crece con la velocidad desde la que se detiene.</translation>
    </message>
    <message>
        <source>The definition in seal %1 is not the text of its hash.</source>
        <translation>La definición del sello %1 no es el texto de su hash.</translation>
    </message>
    <message>
        <source>The diameter to work with once the outer wraps are off.</source>
        <translation>El diámetro con que se trabaja una vez quitadas las vueltas exteriores.</translation>
    </message>
    <message>
        <source>The diameters are used, since no label says a length. Measure and weigh again.</source>
        <translation>Se usan los diámetros, porque ninguna etiqueta dice una longitud. Mida y pese de nuevo.</translation>
    </message>
    <message>
        <source>The diameters are used, since the label seems to be that of the roll when it was full. Measure the diameter again, and ask whether the roll was opened.</source>
        <translation>Se usan los diámetros, porque la etiqueta parece ser la de la bobina cuando estaba llena. Mida otra vez el diámetro, y pregunte si la bobina se abrió.</translation>
    </message>
    <message>
        <source>The diameters are used, since this roll was opened or measured again.</source>
        <translation>Se usan los diámetros, porque esta bobina se abrió o se midió de nuevo.</translation>
    </message>
    <message>
        <source>The diameters count. Measure the roll's diameter as it is now.</source>
        <translation>Cuentan los diámetros. Mida el diámetro de la bobina como está ahora.</translation>
    </message>
    <message>
        <source>The diameters say %1, the mass says %2: %3 apart; up to %4 is usual.</source>
        <translation>Los diámetros dicen %1, la masa dice %2: difieren %3; hasta %4 es habitual.</translation>
    </message>
    <message>
        <source>The disk failed while %1 was read or written; the system says: %2.</source>
        <translation>El disco falló al leer o escribir %1; el sistema dice: %2.</translation>
    </message>
    <message>
        <source>The document does not say its format.</source>
        <translation>El documento no dice su formato.</translation>
    </message>
    <message>
        <source>The document has more target sets or plans than events that could name them.</source>
        <translation>El documento tiene más conjuntos de valores objetivo o planes que sucesos que podrían nombrarlos.</translation>
    </message>
    <message>
        <source>The document is not UTF-8 text.</source>
        <translation>El documento no es texto UTF-8.</translation>
    </message>
    <message>
        <source>The document is of an unknown kind: %1.</source>
        <translation>El documento es de una clase desconocida: %1.</translation>
    </message>
    <message>
        <source>The document names words by the hash %1, and they are not to be had here.</source>
        <translation>El documento nombra textos por el hash %1, y no se encuentran aquí.</translation>
    </message>
    <message>
        <source>The document of seal %1 cannot be read.</source>
        <translation>No se puede leer el documento del sello %1.</translation>
    </message>
    <message>
        <source>The document of seal %1 is not UTF-8 text.</source>
        <translation>El documento del sello %1 no es texto UTF-8.</translation>
    </message>
    <message>
        <source>The document's first event is not the beginning of its run.</source>
        <translation>El primer suceso del documento no es el comienzo de su preparación.</translation>
    </message>
    <message>
        <source>The drive no longer pulls; what is left is the finished roll that runs on.</source>
        <translation>El accionamiento ya no tira; lo que queda es la bobina terminada, que sigue girando.</translation>
    </message>
    <message>
        <source>The drive of %1 still works with the last roll's diameter.</source>
        <translation>El accionamiento de %1 trabaja aún con el diámetro de la última bobina.</translation>
    </message>
    <message>
        <source>The drive of %1 works with the diameter of another roll.</source>
        <translation>El accionamiento de %1 trabaja con el diámetro de otra bobina.</translation>
    </message>
    <message>
        <source>The dryer of station %1 stands open.</source>
        <translation>El secador de la estación %1 está abierto.</translation>
    </message>
    <message>
        <source>The edges beyond the middle, in the shorter of the spans before and behind the guide. At three times the running strain the middle hangs slack.</source>
        <translation>Los bordes más que el centro, en el más corto de los tramos antes y después del guiador. Al triple del alargamiento de marcha el centro cuelga flojo.</translation>
    </message>
    <message>
        <source>The edition is %1; editions are counted from 1.</source>
        <translation>La edición es %1; las ediciones se cuentan desde 1.</translation>
    </message>
    <message>
        <source>The emergency stops are not tested yet.</source>
        <translation>Los paros de emergencia aún no están probados.</translation>
    </message>
    <message>
        <source>The emergency stops are tested</source>
        <translation>Los paros de emergencia están probados</translation>
    </message>
    <message>
        <source>The end of the web has run into the press: it has to be led through anew.</source>
        <translation>El extremo de la banda entró en la máquina: hay que pasarla de nuevo.</translation>
    </message>
    <message>
        <source>The ends are not cut together.</source>
        <translation>Los extremos no están cortados juntos.</translation>
    </message>
    <message>
        <source>The exported file says %1, which no file of its format does.</source>
        <translation>El archivo exportado dice %1, cosa que no dice ningún archivo de su formato.</translation>
    </message>
    <message>
        <source>The extra web after roller %1 is not a length of zero or more.</source>
        <translation>La banda adicional tras el rodillo %1 no es una longitud de cero o más.</translation>
    </message>
    <message>
        <source>The fastest that the press may run.</source>
        <translation>Lo más rápido que puede ir la máquina.</translation>
    </message>
    <message>
        <source>The file %1 cannot be read; the system says: %2.</source>
        <translation>No se puede leer el archivo %1; el sistema dice: %2.</translation>
    </message>
    <message>
        <source>The file %1 is larger than %2 bytes, the most that is read here.</source>
        <translation>El archivo %1 tiene más de %2 bytes, lo máximo que se lee aquí.</translation>
    </message>
    <message>
        <source>The file %1 is larger than 1 MiB, the most that is read here.</source>
        <translation>El archivo %1 tiene más de 1 MiB, lo máximo que se lee aquí.</translation>
    </message>
    <message>
        <source>The file %1 may not be read by this user.</source>
        <translation>Este usuario no puede leer el archivo %1.</translation>
    </message>
    <message>
        <source>The file cannot be read on from here: %1.</source>
        <translation>No se puede seguir leyendo el archivo desde aquí: %1.</translation>
    </message>
    <message>
        <source>The file does not say which format it is written in.</source>
        <translation>El archivo no dice en qué formato está escrito.</translation>
    </message>
    <message>
        <source>The file holds %1 seals; one run never needs as many.</source>
        <translation>El archivo contiene %1 sellos; una sola preparación nunca necesita tantos.</translation>
    </message>
    <message>
        <source>The file is of format %1; this version knows %2.</source>
        <translation>El archivo es del formato %1; esta versión conoce %2.</translation>
    </message>
    <message>
        <source>The file was changed or cut off after it was exported. Export the run once more.</source>
        <translation>El archivo se cambió o se cortó después de exportarlo. Exporte otra vez la preparación.</translation>
    </message>
    <message>
        <source>The first person in a logbook must be a supervisor: only a supervisor can enrol the others.</source>
        <translation>La primera persona de un libro de registro debe ser un supervisor: solo un supervisor puede dar de alta a los demás.</translation>
    </message>
    <message>
        <source>The folder %1 may not be written in, and a logbook needs that.</source>
        <translation>No se puede escribir en la carpeta %1, y un libro de registro lo necesita.</translation>
    </message>
    <message>
        <source>The folder %1, where copies are kept, is not there.</source>
        <translation>La carpeta %1, donde se guardan las copias, no está.</translation>
    </message>
    <message>
        <source>The folder %1, where the logbook is mirrored, is not there.</source>
        <translation>La carpeta %1, donde está el espejo del libro de registro, no está.</translation>
    </message>
    <message>
        <source>The folder of %1 may not be written in.</source>
        <translation>No se puede escribir en la carpeta de %1.</translation>
    </message>
    <message>
        <source>The folder with presses, substrates and procedures is not where it was looked for: %1.</source>
        <translation>La carpeta con máquinas, sustratos y procedimientos no está donde se buscó: %1.</translation>
    </message>
    <message>
        <source>The font that sheets are set in is not installed; %1 would come out instead, and signs could be lost.</source>
        <translation>No está instalada la fuente en que se componen las hojas; en su lugar saldría %1, y podrían perderse signos.</translation>
    </message>
    <message>
        <source>The force at which it reads full.</source>
        <translation>La fuerza con la que marca el máximo.</translation>
    </message>
    <message>
        <source>The format is not a whole number from 1 up.</source>
        <translation>El formato no es un número entero desde 1.</translation>
    </message>
    <message>
        <source>The frame from whose inner face everything across is measured.</source>
        <translation>El bastidor desde cuya cara interior se mide todo a lo ancho.</translation>
    </message>
    <message>
        <source>The gauge of %1 does not go back to nought.</source>
        <translation>El manómetro de %1 no vuelve a cero.</translation>
    </message>
    <message>
        <source>The gear's pitch is given in more than one way.</source>
        <translation>El paso del engranaje se da de más de una manera.</translation>
    </message>
    <message>
        <source>The guards' switches were not tested one by one.</source>
        <translation>No se probaron los interruptores de los resguardos uno por uno.</translation>
    </message>
    <message>
        <source>The guide is at mid-stroke</source>
        <translation>El guiador está en el centro de su recorrido</translation>
    </message>
    <message>
        <source>The guide is not at mid-stroke yet.</source>
        <translation>El guiador aún no está en el centro de su recorrido.</translation>
    </message>
    <message>
        <source>The guide's sensor is dirty.</source>
        <translation>El sensor del guiador está sucio.</translation>
    </message>
    <message>
        <source>The guide's sensor was not calibrated on this web.</source>
        <translation>El sensor del guiador no se calibró con esta banda.</translation>
    </message>
    <message>
        <source>The hanging web got round %1 and tore.</source>
        <translation>La banda floja se enrolló en %1 y se rompió.</translation>
    </message>
    <message>
        <source>The heat that brake or clutch bears without end, from its maker.</source>
        <translation>El calor que freno o embrague aguantan sin fin, según su fabricante.</translation>
    </message>
    <message>
        <source>The heavier and larger the roll, the more it wants to run on.</source>
        <translation>Cuanto más pesada y grande es la bobina, más tiende a seguir girando.</translation>
    </message>
    <message>
        <source>The heaviest roll that it carries.</source>
        <translation>La bobina más pesada que lleva.</translation>
    </message>
    <message>
        <source>The id "%1" cannot be used.</source>
        <translation>No se puede usar el id «%1».</translation>
    </message>
    <message>
        <source>The id %1 belongs to somebody for ever, also when they have left.</source>
        <translation>El id %1 pertenece a alguien para siempre, también cuando se ha ido.</translation>
    </message>
    <message>
        <source>The id %1 is taken: sealed, this would stand in the place of what has it now.</source>
        <translation>El id %1 está ocupado: sellado así, esto ocuparía el lugar de lo que lo lleva ahora.</translation>
    </message>
    <message>
        <source>The id %1 stands here twice.</source>
        <translation>El id %1 está aquí dos veces.</translation>
    </message>
    <message>
        <source>The id of its substrate.</source>
        <translation>El id de su sustrato.</translation>
    </message>
    <message>
        <source>The inner diameter of a lifting cylinder.</source>
        <translation>El diámetro interior de un cilindro elevador.</translation>
    </message>
    <message>
        <source>The inner diameter of its cylinder.</source>
        <translation>El diámetro interior de su cilindro.</translation>
    </message>
    <message>
        <source>The inner diameter of the cores that this adapter fits.</source>
        <translation>El diámetro interior de los núcleos a los que sirve este adaptador.</translation>
    </message>
    <message>
        <source>The isolator is locked by your site's procedure</source>
        <translation>El seccionador está bloqueado según el procedimiento de su planta</translation>
    </message>
    <message>
        <source>The job has no title: lists show its id instead.</source>
        <translation>El trabajo no tiene título: las listas muestran su id en su lugar.</translation>
    </message>
    <message>
        <source>The job is %1 wide; this press takes %2 at most.</source>
        <translation>El trabajo tiene %1 de ancho; esta máquina admite %2 como máximo.</translation>
    </message>
    <message>
        <source>The job is for %1; chosen is %2.</source>
        <translation>El trabajo es para %1; lo elegido es %2.</translation>
    </message>
    <message>
        <source>The job is planned at %1; this press runs %2 at most.</source>
        <translation>El trabajo está previsto a %1; esta máquina corre a %2 como máximo.</translation>
    </message>
    <message>
        <source>The job is wound on cores of %1 inside; %2 holds %3 to %4.</source>
        <translation>El trabajo se bobina en núcleos de %1 por dentro; %2 sujeta de %3 a %4.</translation>
    </message>
    <message>
        <source>The job needs %1; of this roll %2 can be run, outer wraps and reserve taken off.</source>
        <translation>El trabajo necesita %1; de esta bobina se pueden correr %2, descontadas vueltas exteriores y reserva.</translation>
    </message>
    <message>
        <source>The job prints at station %1, which this press does not have.</source>
        <translation>El trabajo imprime en la estación %1, que esta máquina no tiene.</translation>
    </message>
    <message>
        <source>The job wants a tension of %1; the maker of the material allows at most %2.</source>
        <translation>El trabajo quiere una tensión de %1; el fabricante del material admite como máximo %2.</translation>
    </message>
    <message>
        <source>The job's range, held down to what the maker of the material allows.</source>
        <translation>El rango del trabajo, rebajado a lo que admite el fabricante del material.</translation>
    </message>
    <message>
        <source>The job's tension begins at %1, the maker of the material says at least %2.</source>
        <translation>La tensión del trabajo empieza en %1, el fabricante del material dice al menos %2.</translation>
    </message>
    <message>
        <source>The job's tension, %1, reaches beyond the starting range for this material, %2: %3.</source>
        <translation>La tensión del trabajo, %1, rebasa el rango de partida de este material, %2: %3.</translation>
    </message>
    <message>
        <source>The job's tension, %1, reaches beyond what the maker of the material allows: it is held down to %2.</source>
        <translation>La tensión del trabajo, %1, rebasa lo que admite el fabricante del material: se rebaja a %2.</translation>
    </message>
    <message>
        <source>The joint</source>
        <translation>El empalme</translation>
    </message>
    <message>
        <source>The joint bears less than the web.</source>
        <translation>El empalme aguanta menos que la banda.</translation>
    </message>
    <message>
        <source>The joint has not come to the rewind yet.</source>
        <translation>La unión aún no ha llegado al rebobinador.</translation>
    </message>
    <message>
        <source>The joint is crooked, and its short side bears the pull.</source>
        <translation>El empalme está torcido, y su lado corto soporta el tiro.</translation>
    </message>
    <message>
        <source>The joint lies on the table no more.</source>
        <translation>El empalme ya no está en la mesa.</translation>
    </message>
    <message>
        <source>The joint still lies on the table.</source>
        <translation>La unión sigue sobre la mesa.</translation>
    </message>
    <message>
        <source>The key %1 is missing here.</source>
        <translation>Aquí falta el campo %1.</translation>
    </message>
    <message>
        <source>The key %1 is missing, and nothing else can stand for it.</source>
        <translation>Falta el campo %1, y nada más puede sustituirlo.</translation>
    </message>
    <message>
        <source>The key %1 is not known here.</source>
        <translation>Aquí no se conoce el campo %1.</translation>
    </message>
    <message>
        <source>The key %1 is not known to this version.</source>
        <translation>Esta versión no conoce el campo %1.</translation>
    </message>
    <message>
        <source>The key that was opened for %1 does not stand in this logbook any more.</source>
        <translation>La clave que se abrió para %1 ya no está en este libro de registro.</translation>
    </message>
    <message>
        <source>The label is used, since nobody is said to have opened the roll. Measure the diameter and weigh again, and ask whether it was opened.</source>
        <translation>Se usa la etiqueta, porque nadie ha declarado que la bobina se abriera. Mida el diámetro y pese de nuevo, y pregunte si se abrió.</translation>
    </message>
    <message>
        <source>The label says %1, the diameters say %2: %3 apart; the caliper is known to %4.</source>
        <translation>La etiqueta dice %1, los diámetros dicen %2: difieren %3; el espesor se conoce con %4.</translation>
    </message>
    <message>
        <source>The label says %1, the mass says %2: %3 apart; up to %4 is usual.</source>
        <translation>La etiqueta dice %1, la masa dice %2: difieren %3; hasta %4 es habitual.</translation>
    </message>
    <message>
        <source>The lamps are parked</source>
        <translation>Las lámparas están en reposo</translation>
    </message>
    <message>
        <source>The lamps were not parked.</source>
        <translation>Las lámparas no estaban apartadas.</translation>
    </message>
    <message>
        <source>The largest core, by its inside, that it holds.</source>
        <translation>El núcleo mayor, por dentro, que sujeta.</translation>
    </message>
    <message>
        <source>The largest roll that finds room there.</source>
        <translation>La bobina mayor que cabe allí.</translation>
    </message>
    <message>
        <source>The last day is before the first.</source>
        <translation>El último día es anterior al primero.</translation>
    </message>
    <message>
        <source>The last shift left a tail at its joint.</source>
        <translation>El último turno dejó un cabo en su unión.</translation>
    </message>
    <message>
        <source>The last shift's joint is out of reach.</source>
        <translation>El empalme del turno anterior está fuera de alcance.</translation>
    </message>
    <message>
        <source>The last shift's joint, on the web that is in</source>
        <translation>El empalme del turno anterior, en la banda que está dentro</translation>
    </message>
    <message>
        <source>The layers add up to %1, more than the whole, %2.</source>
        <translation>Las capas suman %1, más que el total, %2.</translation>
    </message>
    <message>
        <source>The least air in its shaft, from its plate.</source>
        <translation>El aire mínimo en su eje, según su placa.</translation>
    </message>
    <message>
        <source>The least that it can be set to.</source>
        <translation>Lo mínimo a lo que puede ajustarse.</translation>
    </message>
    <message>
        <source>The least, reckoned on the outside of the core, at which the reserve is still on the roll. Aim between it and the largest: neither the setting nor the caliper is exact.</source>
        <translation>El mínimo, calculado en la cara exterior del núcleo, en que la reserva sigue en la bobina. Apunte entre él y el máximo: ni el ajuste ni el espesor son exactos.</translation>
    </message>
    <message>
        <source>The length seems to be that of the roll when it was full. Say that it was opened: then the diameters count.</source>
        <translation>La longitud parece ser la de la bobina cuando estaba llena. Diga que se abrió: entonces cuentan los diámetros.</translation>
    </message>
    <message>
        <source>The lift does not raise the roll: %1 is less than it weighs.</source>
        <translation>El elevador no levanta la bobina: %1 es menos de lo que pesa.</translation>
    </message>
    <message>
        <source>The lift is down</source>
        <translation>El elevador está abajo</translation>
    </message>
    <message>
        <source>The lift is not down yet.</source>
        <translation>El elevador aún no está abajo.</translation>
    </message>
    <message>
        <source>The lift is not down.</source>
        <translation>El elevador no está abajo.</translation>
    </message>
    <message>
        <source>The lift, downwards</source>
        <translation>El elevador, abajo</translation>
    </message>
    <message>
        <source>The lift, upwards</source>
        <translation>El elevador, arriba</translation>
    </message>
    <message>
        <source>The limits of %1 are not of its kind: they do not hold.</source>
        <translation>Los límites de %1 no son de su clase: no valen.</translation>
    </message>
    <message>
        <source>The limits of %1 in this press's profile are wider than what else holds there: %2. Where somebody or something could be hurt they may only be narrower.</source>
        <translation>Los límites de %1 en el perfil de esta máquina son más amplios que lo demás que vale ahí: %2. Donde alguien o algo podría sufrir daño solo se pueden estrechar.</translation>
    </message>
    <message>
        <source>The limits of %1 in this press's profile do not hold: its window comes from job or material, %2.</source>
        <translation>Los límites de %1 en el perfil de esta máquina no valen: su margen viene del trabajo o del material, %2.</translation>
    </message>
    <message>
        <source>The limits of %1 in this press's profile leave nothing of what else holds there: %2. They do not hold.</source>
        <translation>Los límites de %1 en el perfil de esta máquina no dejan nada de lo demás que vale ahí: %2. No valen.</translation>
    </message>
    <message>
        <source>The liner carries alone here: it is stretched more than the whole web at the same tension.</source>
        <translation>El soporte antiadherente aguanta solo aquí: se alarga más que la banda entera a la misma tensión.</translation>
    </message>
    <message>
        <source>The list cannot go on after "%1".</source>
        <translation>La lista no puede seguir después de «%1».</translation>
    </message>
    <message>
        <source>The load cell of %1 does not stand on its zero.</source>
        <translation>La célula de carga de %1 no está en su cero.</translation>
    </message>
    <message>
        <source>The logbook %1 is damaged: parts of the file are missing or scrambled.</source>
        <translation>El libro de registro %1 está dañado: faltan partes del archivo o están revueltas.</translation>
    </message>
    <message>
        <source>The logbook %1 is laid out otherwise than this program lays one out (first difference: %2): it was made by a version from before the first release, or changed by hand.</source>
        <translation>El libro de registro %1 está dispuesto de otro modo que como lo dispone este programa (primera diferencia: %2): lo hizo una versión anterior a la primera publicación, o se cambió a mano.</translation>
    </message>
    <message>
        <source>The logbook %1 may not be read by this user.</source>
        <translation>Este usuario no puede leer el libro de registro %1.</translation>
    </message>
    <message>
        <source>The logbook %1 refused: %2.</source>
        <translation>El libro de registro %1 se negó: %2.</translation>
    </message>
    <message>
        <source>The logbook %1 was made by a version from before the first release (layout %2, this one needs %3).</source>
        <translation>El libro de registro %1 lo hizo una versión anterior a la primera publicación (disposición %2, esta necesita %3).</translation>
    </message>
    <message>
        <source>The logbook %1 was written by a newer version of this program (layout %2, this one knows %3).</source>
        <translation>El libro de registro %1 lo escribió una versión más nueva de este programa (disposición %2, esta conoce %3).</translation>
    </message>
    <message>
        <source>The logbook is damaged: a row of %1 belongs to a row that is gone.</source>
        <translation>El libro de registro está dañado: una fila de %1 pertenece a una fila que ya no está.</translation>
    </message>
    <message>
        <source>The logbook is damaged; its engine says: %1.</source>
        <translation>El libro de registro está dañado; su motor dice: %1.</translation>
    </message>
    <message>
        <source>The logbook knows no substrate "%1": no run of this job can begin.</source>
        <translation>El libro de registro no conoce ningún sustrato "%1": ninguna preparación de este trabajo puede empezar.</translation>
    </message>
    <message>
        <source>The logbook's layout was changed: %1 is missing, added or other than this program makes it. Guards against changing sealed rows are part of it.</source>
        <translation>Se cambió la disposición del libro de registro: %1 falta, sobra o es distinto de como lo hace este programa. De ella forman parte las protecciones contra el cambio de filas selladas.</translation>
    </message>
    <message>
        <source>The lower end of the window.</source>
        <translation>El extremo inferior del margen.</translation>
    </message>
    <message>
        <source>The lower end, %1, lies above the upper end, %2.</source>
        <translation>El extremo inferior, %1, está por encima del superior, %2.</translation>
    </message>
    <message>
        <source>The lower limit is not below the upper one.</source>
        <translation>El límite inferior no está por debajo del superior.</translation>
    </message>
    <message>
        <source>The maintained stop within reach there.</source>
        <translation>El paro mantenido al alcance allí.</translation>
    </message>
    <message>
        <source>The maker's range, entered with the material, would be better.</source>
        <translation>Sería mejor el rango del fabricante, introducido con el material.</translation>
    </message>
    <message>
        <source>The mandrel grips this core as it is.</source>
        <translation>El eje agarra este núcleo tal cual.</translation>
    </message>
    <message>
        <source>The mass is used, since the roll was opened and a diameter is missing. Measure it.</source>
        <translation>Se usa la masa, porque la bobina se abrió y falta un diámetro. Mídalo.</translation>
    </message>
    <message>
        <source>The mass to hang on the dancer's arm.</source>
        <translation>La masa que se cuelga del brazo del bailarín.</translation>
    </message>
    <message>
        <source>The middle of the range cannot be set here: this is the nearest that can.</source>
        <translation>El centro del rango no se puede ajustar aquí: este es el más cercano que se puede.</translation>
    </message>
    <message>
        <source>The middle of the range; the least that keeps the web in hand is best.</source>
        <translation>El centro del rango; lo mejor es lo mínimo que mantiene dominada la banda.</translation>
    </message>
    <message>
        <source>The middle of the sensor's window stands over the edge of the web that is there.</source>
        <translation>El centro del campo del sensor queda sobre el borde de la banda que hay.</translation>
    </message>
    <message>
        <source>The mirror %1 cannot be restored from as it is. Move it away and keep it: another is begun then.</source>
        <translation>Desde el espejo %1, tal como está, no se puede restaurar. Apártelo y consérvelo: entonces se empieza otro.</translation>
    </message>
    <message>
        <source>The mirror %1 holds more seals than the logbook: the logbook was restored from an older copy, or its newest seals were cut off.</source>
        <translation>El espejo %1 contiene más sellos que el libro de registro: este se restauró de una copia más antigua, o se le cortaron sus sellos más nuevos.</translation>
    </message>
    <message>
        <source>The mirror %1 holds other seals than the logbook: one of them was changed, or they are of two logbooks.</source>
        <translation>El espejo %1 contiene otros sellos que el libro de registro: uno de ellos se cambió, o son de dos libros de registro.</translation>
    </message>
    <message>
        <source>The mirror %1 was not brought to its end.</source>
        <translation>El espejo %1 no se llevó hasta su final.</translation>
    </message>
    <message>
        <source>The mirror could not be written; the system says: %1.</source>
        <translation>No se pudo escribir el espejo; el sistema dice: %1.</translation>
    </message>
    <message>
        <source>The most air in its shaft, from its plate.</source>
        <translation>El aire máximo en su eje, según su placa.</translation>
    </message>
    <message>
        <source>The most that it can be set to.</source>
        <translation>Lo máximo a lo que puede ajustarse.</translation>
    </message>
    <message>
        <source>The most that it turns.</source>
        <translation>Lo máximo que gira.</translation>
    </message>
    <message>
        <source>The most that its plate allows.</source>
        <translation>Lo máximo que permite su placa.</translation>
    </message>
    <message>
        <source>The name "%1" stands twice in one object.</source>
        <translation>El nombre «%1» está dos veces en un objeto.</translation>
    </message>
    <message>
        <source>The name %1 is used twice.</source>
        <translation>El nombre %1 se usa dos veces.</translation>
    </message>
    <message>
        <source>The name by which jobs and rolls mean it.</source>
        <translation>El nombre con que lo citan trabajos y bobinas.</translation>
    </message>
    <message>
        <source>The name by which others in this file mean it.</source>
        <translation>El nombre con que otros de este archivo lo citan.</translation>
    </message>
    <message>
        <source>The name of a further path, a lane or the waste; nothing for the main one.</source>
        <translation>El nombre de otro recorrido, una pista o el desperdicio; nada para el principal.</translation>
    </message>
    <message>
        <source>The name that runs and targets of this press bear. Keep it in every edition.</source>
        <translation>El nombre que llevan preparaciones y valores de esta máquina. Mantenerlo en cada edición.</translation>
    </message>
    <message>
        <source>The name that runs of this job bear.</source>
        <translation>El nombre que llevan las preparaciones de este trabajo.</translation>
    </message>
    <message>
        <source>The narrowest web that it runs.</source>
        <translation>La banda más estrecha que admite.</translation>
    </message>
    <message>
        <source>The new roll</source>
        <translation>La bobina nueva</translation>
    </message>
    <message>
        <source>The new web</source>
        <translation>La banda nueva</translation>
    </message>
    <message>
        <source>The new web does not lie on the table.</source>
        <translation>La banda nueva no está sobre la mesa.</translation>
    </message>
    <message>
        <source>The new web is not joined to the old one.</source>
        <translation>La banda nueva no está unida a la vieja.</translation>
    </message>
    <message>
        <source>The newest of these readings has no window.</source>
        <translation>La última de estas lecturas no tiene margen.</translation>
    </message>
    <message>
        <source>The next whole tooth up; what is over is gap between the labels.</source>
        <translation>El siguiente diente entero hacia arriba; lo que sobra es separación entre las etiquetas.</translation>
    </message>
    <message>
        <source>The nips are closed</source>
        <translation>Los nips están cerrados</translation>
    </message>
    <message>
        <source>The nips are not closed yet.</source>
        <translation>Los nips aún no están cerrados.</translation>
    </message>
    <message>
        <source>The note is empty.</source>
        <translation>La nota está vacía.</translation>
    </message>
    <message>
        <source>The number in "%1" is too large or too small.</source>
        <translation>El número de «%1» es demasiado grande o demasiado pequeño.</translation>
    </message>
    <message>
        <source>The number of its print station.</source>
        <translation>El número de su estación de impresión.</translation>
    </message>
    <message>
        <source>The number of splices is not a whole number.</source>
        <translation>El número de empalmes no es un número entero.</translation>
    </message>
    <message>
        <source>The outer wraps</source>
        <translation>Las vueltas exteriores</translation>
    </message>
    <message>
        <source>The outer wraps of the roll are nicked.</source>
        <translation>Las vueltas exteriores de la bobina tienen mellas.</translation>
    </message>
    <message>
        <source>The parts are all alike, so nothing can be told apart.</source>
        <translation>Las piezas son todas iguales: no hay nada que distinguir.</translation>
    </message>
    <message>
        <source>The passphrase has more than one line.</source>
        <translation>La frase de contraseña tiene más de una línea.</translation>
    </message>
    <message>
        <source>The passphrase is a few characters over and over again.</source>
        <translation>La frase de contraseña son unos pocos caracteres repetidos una y otra vez.</translation>
    </message>
    <message>
        <source>The passphrase is a straight run like abcdef.</source>
        <translation>La frase de contraseña es una serie seguida como abcdef.</translation>
    </message>
    <message>
        <source>The passphrase is little more than the name or the PIN.</source>
        <translation>La frase de contraseña es poco más que el nombre o el PIN.</translation>
    </message>
    <message>
        <source>The passphrase is longer than 256 characters.</source>
        <translation>La frase de contraseña tiene más de 256 caracteres.</translation>
    </message>
    <message>
        <source>The passphrase is shorter than 15 characters.</source>
        <translation>La frase de contraseña tiene menos de 15 caracteres.</translation>
    </message>
    <message>
        <source>The phases do not follow each other.</source>
        <translation>Las fases no se siguen una a otra.</translation>
    </message>
    <message>
        <source>The picture or file %1 that seal %3 names (SHA-256 %2...) is not the one that was attached: its bytes were changed.</source>
        <translation>La imagen o archivo %1 que nombra el sello %3 (SHA-256 %2...) no es lo que se adjuntó: se cambiaron sus bytes.</translation>
    </message>
    <message>
        <source>The place where one stands for it.</source>
        <translation>El puesto en que se está para ello.</translation>
    </message>
    <message>
        <source>The plate is made this much shorter, and stretches to length on its cylinder.</source>
        <translation>La plancha se hace más corta en esta medida, y se estira hasta su largo en el cilindro.</translation>
    </message>
    <message>
        <source>The power is not on yet.</source>
        <translation>La corriente aún no está conectada.</translation>
    </message>
    <message>
        <source>The power is off.</source>
        <translation>No hay corriente.</translation>
    </message>
    <message>
        <source>The power is on</source>
        <translation>La corriente está conectada</translation>
    </message>
    <message>
        <source>The practice logbook of this PC has attempts of %1 under the id %2, not of %3.</source>
        <translation>El libro de prácticas de este PC tiene con el id %2 intentos de %1, no de %3.</translation>
    </message>
    <message>
        <source>The practice press needs %1.</source>
        <translation>La máquina de prácticas necesita %1.</translation>
    </message>
    <message>
        <source>The press</source>
        <translation>La máquina</translation>
    </message>
    <message>
        <source>The press %1 is not withdrawn from use.</source>
        <translation>La máquina %1 no está retirada del servicio.</translation>
    </message>
    <message>
        <source>The press does not start: %1 is latched.</source>
        <translation>La máquina no arranca: %1 está enclavada.</translation>
    </message>
    <message>
        <source>The press does not start: %1 is open.</source>
        <translation>La máquina no arranca: %1 está abierta.</translation>
    </message>
    <message>
        <source>The press does not start: a stop is held.</source>
        <translation>La máquina no arranca: alguien retiene una parada.</translation>
    </message>
    <message>
        <source>The press does not start: it was not reset.</source>
        <translation>La máquina no arranca: no se rearmó.</translation>
    </message>
    <message>
        <source>The press is withdrawn from use.</source>
        <translation>La máquina está retirada del servicio.</translation>
    </message>
    <message>
        <source>The press moves here while a stop may still be held.</source>
        <translation>Aquí la máquina se mueve mientras puede mantenerse aún un paro.</translation>
    </message>
    <message>
        <source>The press moves in this step, which does not ask for %1.</source>
        <translation>La máquina se mueve en este paso, que no exige %1.</translation>
    </message>
    <message>
        <source>The press moves though a guard is open: its switch sticks.</source>
        <translation>La máquina se mueve con un resguardo abierto: su interruptor está atascado.</translation>
    </message>
    <message>
        <source>The press must not move: a stop is held by %1.</source>
        <translation>La máquina no debe moverse: mantiene un paro %1.</translation>
    </message>
    <message>
        <source>The press was moved while nothing hung on its web.</source>
        <translation>Se movió la máquina sin nada unido a su banda.</translation>
    </message>
    <message>
        <source>The pressure of the lift was not that of this roll.</source>
        <translation>La presión del elevador no era la de esta bobina.</translation>
    </message>
    <message>
        <source>The procedure has %1 remedies here, the translation %2.</source>
        <translation>El procedimiento tiene aquí %1 remedios; la traducción, %2.</translation>
    </message>
    <message>
        <source>The procedure has nothing of this id.</source>
        <translation>El procedimiento no tiene nada con este id.</translation>
    </message>
    <message>
        <source>The procedure says something else by now: it is read in its own words here.</source>
        <translation>El procedimiento ya dice otra cosa: aquí se lee en sus propias palabras.</translation>
    </message>
    <message>
        <source>The program ended by itself the last time. What was answered and signed before that is kept.</source>
        <translation>El programa terminó por sí solo la última vez. Lo respondido y firmado antes se conserva.</translation>
    </message>
    <message>
        <source>The program ended while it was writing in %1, and the half-written part can only be taken back where the file may be written.</source>
        <translation>El programa terminó mientras escribía en %1, y la parte escrita a medias solo se puede deshacer donde se pueda escribir el archivo.</translation>
    </message>
    <message>
        <source>The range of tension, %1, is held down to %2: %3.</source>
        <translation>El rango de tensión, %1, se rebaja a %2: %3.</translation>
    </message>
    <message>
        <source>The readings are not in control: what they were says nothing of what they will be.</source>
        <translation>Las lecturas no están bajo control: lo que fueron no dice nada de lo que serán.</translation>
    </message>
    <message>
        <source>The readings were taken at too few different settings.</source>
        <translation>Las lecturas se tomaron con muy pocos ajustes distintos.</translation>
    </message>
    <message>
        <source>The record itself stands; do not go by this picture or file. Restore it from the mirror or a copy.</source>
        <translation>El registro en sí vale; no fiarse de esta imagen o archivo. Restaurarlo desde el espejo o una copia.</translation>
    </message>
    <message>
        <source>The repeat wished for, where teeth are still to be chosen.</source>
        <translation>El desarrollo deseado, si los dientes están por elegir.</translation>
    </message>
    <message>
        <source>The rewind core is locked</source>
        <translation>El núcleo del rebobinador está bloqueado</translation>
    </message>
    <message>
        <source>The rewind core is not locked yet.</source>
        <translation>El núcleo del rebobinador aún no está bloqueado.</translation>
    </message>
    <message>
        <source>The rewind's shaft does not hold a core.</source>
        <translation>El eje del rebobinador no sujeta ningún núcleo.</translation>
    </message>
    <message>
        <source>The role %1 does not allow a run to be begun.</source>
        <translation>El rol %1 no permite empezar una preparación.</translation>
    </message>
    <message>
        <source>The role %1 does not allow this.</source>
        <translation>El rol %1 no permite esto.</translation>
    </message>
    <message>
        <source>The roll hangs off the middle of the press.</source>
        <translation>La bobina cuelga fuera del centro de la máquina.</translation>
    </message>
    <message>
        <source>The roll hangs the wrong way round.</source>
        <translation>La bobina cuelga al revés.</translation>
    </message>
    <message>
        <source>The roll has run out, and its web left the core.</source>
        <translation>La bobina se acabó, y su banda dejó el núcleo.</translation>
    </message>
    <message>
        <source>The roll is %1 across; the unwind takes %2 at most.</source>
        <translation>La bobina tiene %1 de diámetro; el desbobinador admite %2 como máximo.</translation>
    </message>
    <message>
        <source>The roll is %1 wide; the job is made for %2.</source>
        <translation>La bobina tiene %1 de ancho; el trabajo es para %2.</translation>
    </message>
    <message>
        <source>The roll is %1 wide; this press is made for %2 and more.</source>
        <translation>La bobina tiene %1 de ancho; esta máquina es para %2 o más.</translation>
    </message>
    <message>
        <source>The roll is %1 wide; this press takes %2 at most.</source>
        <translation>La bobina tiene %1 de ancho; esta máquina admite %2 como máximo.</translation>
    </message>
    <message>
        <source>The roll is %1; the job is for %2.</source>
        <translation>La bobina es %1; el trabajo es para %2.</translation>
    </message>
    <message>
        <source>The roll is colder or damper than this room: it changes its length and its tension while it runs.</source>
        <translation>La bobina está más fría o más húmeda que esta sala: cambia su longitud y su tensión mientras corre.</translation>
    </message>
    <message>
        <source>The roll is dusty.</source>
        <translation>La bobina tiene polvo.</translation>
    </message>
    <message>
        <source>The roll is held by the lift, not by hands.</source>
        <translation>La bobina la sostiene el elevador, no las manos.</translation>
    </message>
    <message>
        <source>The roll is held on the shaft</source>
        <translation>La bobina está sujeta en el eje</translation>
    </message>
    <message>
        <source>The roll is lifted</source>
        <translation>La bobina está levantada</translation>
    </message>
    <message>
        <source>The roll is not held on the shaft yet.</source>
        <translation>La bobina aún no está sujeta en el eje.</translation>
    </message>
    <message>
        <source>The roll is not lifted yet.</source>
        <translation>La bobina todavía no está levantada.</translation>
    </message>
    <message>
        <source>The roll is not of the size that its label says.</source>
        <translation>La bobina no es del tamaño que dice su etiqueta.</translation>
    </message>
    <message>
        <source>The roll is not on the shaft yet.</source>
        <translation>La bobina aún no está en el eje.</translation>
    </message>
    <message>
        <source>The roll is not up at the shaft.</source>
        <translation>La bobina no está arriba, junto al eje.</translation>
    </message>
    <message>
        <source>The roll is on the shaft</source>
        <translation>La bobina está en el eje</translation>
    </message>
    <message>
        <source>The roll is out of round.</source>
        <translation>La bobina está ovalada.</translation>
    </message>
    <message>
        <source>The roll is said to be %1 across, no more than its core, %2 outside.</source>
        <translation>Se declara que la bobina tiene %1 de diámetro, no más que su núcleo, %2 por fuera.</translation>
    </message>
    <message>
        <source>The roll is supported</source>
        <translation>La bobina está sostenida</translation>
    </message>
    <message>
        <source>The roll is wound the other way than usual on this press: feed it %1.</source>
        <translation>La bobina está enrollada al revés de lo habitual en esta máquina: aliméntela %1.</translation>
    </message>
    <message>
        <source>The roll jumps up: %1 is far more than it weighs.</source>
        <translation>La bobina salta: %1 es mucho más de lo que pesa.</translation>
    </message>
    <message>
        <source>The roll on its shaft</source>
        <translation>La bobina en su eje</translation>
    </message>
    <message>
        <source>The roll or its core is crushed.</source>
        <translation>La bobina o su núcleo está aplastado.</translation>
    </message>
    <message>
        <source>The roll was not held by its shaft.</source>
        <translation>La bobina no estaba sujeta por su eje.</translation>
    </message>
    <message>
        <source>The roll was opened before; the %1 stated is of the full roll.</source>
        <translation>La bobina se abrió antes; lo indicado (%1) es de la bobina llena.</translation>
    </message>
    <message>
        <source>The roll weighs %1, this lift carries %2.</source>
        <translation>La bobina pesa %1, este elevador soporta %2.</translation>
    </message>
    <message>
        <source>The roll weighs %1, this press takes %2.</source>
        <translation>La bobina pesa %1, esta máquina admite %2.</translation>
    </message>
    <message>
        <source>The roll's edge is nicked: the web may tear there under tension.</source>
        <translation>El borde de la bobina tiene muescas: la banda puede rasgarse ahí bajo tensión.</translation>
    </message>
    <message>
        <source>The roller at which a further path leaves.</source>
        <translation>El rodillo en que se separa otro recorrido.</translation>
    </message>
    <message>
        <source>The roller at which it ends.</source>
        <translation>El rodillo en que termina.</translation>
    </message>
    <message>
        <source>The roller at which this stretch of even tension begins.</source>
        <translation>El rodillo en que empieza este tramo de tensión uniforme.</translation>
    </message>
    <message>
        <source>The roller behind which the table lies.</source>
        <translation>El rodillo tras el que está la mesa.</translation>
    </message>
    <message>
        <source>The roller next to it.</source>
        <translation>El rodillo contiguo.</translation>
    </message>
    <message>
        <source>The roller where it is.</source>
        <translation>El rodillo donde está.</translation>
    </message>
    <message>
        <source>The rollers that belong to it.</source>
        <translation>Los rodillos que le pertenecen.</translation>
    </message>
    <message>
        <source>The rollers that it moves, first and last.</source>
        <translation>Los rodillos que mueve, primero y último.</translation>
    </message>
    <message>
        <source>The row of seal %1 says something else than its document about what was sealed, when or by whom: the row was changed.</source>
        <translation>La fila del sello %1 dice otra cosa que su documento sobre qué se selló, cuándo o por quién: la fila se cambió.</translation>
    </message>
    <message>
        <source>The run %1, which this sheet is of, is not sealed in this logbook.</source>
        <translation>La preparación %1, de la que es esta hoja, no está sellada en este libro de registro.</translation>
    </message>
    <message>
        <source>The run is in this person's hands already.</source>
        <translation>La preparación ya está en manos de esta persona.</translation>
    </message>
    <message>
        <source>The run that this one continues has answered this for other figures, and it would not be asked again: %1.</source>
        <translation>La preparación que esta continúa respondió esto para otras cifras, y no se volvería a preguntar: %1.</translation>
    </message>
    <message>
        <source>The run that this one continues has not ended.</source>
        <translation>La preparación que esta continúa no ha terminado.</translation>
    </message>
    <message>
        <source>The run that this one continues was for job %1.</source>
        <translation>La preparación que esta continúa era para el trabajo %1.</translation>
    </message>
    <message>
        <source>The run that this one continues was on another press.</source>
        <translation>La preparación que esta continúa era en otra máquina.</translation>
    </message>
    <message>
        <source>The run to measure the others by is not one of them.</source>
        <translation>La preparación con la que medir las otras no está entre ellas.</translation>
    </message>
    <message>
        <source>The run was interrupted and has not been taken up again.</source>
        <translation>La preparación se interrumpió y no se ha retomado.</translation>
    </message>
    <message>
        <source>The runs</source>
        <translation>Las preparaciones</translation>
    </message>
    <message>
        <source>The same air on a smaller roll pulls harder: that is why it is turned down.</source>
        <translation>El mismo aire en una bobina más pequeña tira más: por eso se baja.</translation>
    </message>
    <message>
        <source>The same from full roll to core. A brake that runs hot grips less.</source>
        <translation>Lo mismo de bobina llena a núcleo. Un freno que se calienta agarra menos.</translation>
    </message>
    <message>
        <source>The same number with "%1" as its unit would fit.</source>
        <translation>Encajaría el mismo número con «%1» como unidad.</translation>
    </message>
    <message>
        <source>The same torque on a larger roll pulls less: that is why it is raised.</source>
        <translation>El mismo par en una bobina más grande tira menos: por eso se sube.</translation>
    </message>
    <message>
        <source>The scenario wants the %1 %2, which is known neither here nor among what comes with the program.</source>
        <translation>El escenario pide %1 %2, que no se conoce aquí ni entre lo que viene con el programa.</translation>
    </message>
    <message>
        <source>The seal of run %1 is gone.</source>
        <translation>Falta el sello de la preparación %1.</translation>
    </message>
    <message>
        <source>The seal of run %1 is not in this file.</source>
        <translation>El sello de la preparación %1 no está en este archivo.</translation>
    </message>
    <message>
        <source>The seals are checked all the same. Keep this file and restore a backup.</source>
        <translation>Aun así se comprueban los sellos. Conserve este archivo y restaure una copia de seguridad.</translation>
    </message>
    <message>
        <source>The search finds other words than those that stand beside it; the engine says: %1.</source>
        <translation>La búsqueda halla otras palabras que las registradas junto a ella; el motor dice: %1.</translation>
    </message>
    <message>
        <source>The sensor of guide %1 is dirty.</source>
        <translation>El sensor del guiador %1 está sucio.</translation>
    </message>
    <message>
        <source>The sensor of guide %1 is dirty: it hardly tells web from none.</source>
        <translation>El sensor del guiador %1 está sucio: apenas distingue si hay banda.</translation>
    </message>
    <message>
        <source>The sensor of guide %1 was not calibrated on this web.</source>
        <translation>El sensor del guiador %1 no se calibró con esta banda.</translation>
    </message>
    <message>
        <source>The sensor stands %1 behind the guide, in a span of %2: it sees the web too late.</source>
        <translation>El sensor está %1 detrás del guiador, en un tramo de %2: ve la banda demasiado tarde.</translation>
    </message>
    <message>
        <source>The sensor's window</source>
        <translation>La ventana del sensor</translation>
    </message>
    <message>
        <source>The sensors are calibrated</source>
        <translation>Los sensores están calibrados</translation>
    </message>
    <message>
        <source>The sensors are not calibrated yet.</source>
        <translation>Los sensores aún no están calibrados.</translation>
    </message>
    <message>
        <source>The set point of the control loop; zero the load cell with the web slack first.</source>
        <translation>La consigna del lazo de control; ponga antes a cero la célula de carga con la banda floja.</translation>
    </message>
    <message>
        <source>The setting from which on there is torque.</source>
        <translation>El ajuste a partir del cual hay par.</translation>
    </message>
    <message>
        <source>The settings are not all of one kind.</source>
        <translation>Los ajustes no son todos de un tipo.</translation>
    </message>
    <message>
        <source>The settings are not of the kind that is set here.</source>
        <translation>Los ajustes no son del tipo que se ajusta aquí.</translation>
    </message>
    <message>
        <source>The settings of these runs lie too near together to tell a line from.</source>
        <translation>Los ajustes de estas preparaciones están demasiado juntos para dar una recta.</translation>
    </message>
    <message>
        <source>The shaft holds the core as it is.</source>
        <translation>El eje sujeta el núcleo tal como está.</translation>
    </message>
    <message>
        <source>The shaft's plate wants at least %1; the air supply gives %2 at most.</source>
        <translation>La placa del eje pide al menos %1; la entrada de aire da %2 como máximo.</translation>
    </message>
    <message>
        <source>The share of the piston's force that arrives at the roll.</source>
        <translation>La parte de la fuerza del pistón que llega a la bobina.</translation>
    </message>
    <message>
        <source>The share of the web that it covers.</source>
        <translation>La parte de la banda que cubre.</translation>
    </message>
    <message>
        <source>The share that is lost while it runs.</source>
        <translation>La parte que se pierde en marcha.</translation>
    </message>
    <message>
        <source>The sheet could not be drawn: the printer or the PDF did not begin.</source>
        <translation>No se pudo dibujar la hoja: la impresora o el PDF no empezó.</translation>
    </message>
    <message>
        <source>The sheet names seal %1, which is not in this file, so the two cannot be compared.</source>
        <translation>La hoja nombra el sello %1, que no está en este archivo, así que no se pueden comparar.</translation>
    </message>
    <message>
        <source>The sheet was printed when the logbook held seal %1, and now it ends before that: newer records were cut off, or an older copy was restored.</source>
        <translation>La hoja se imprimió cuando el libro tenía el sello %1, y ahora acaba antes: se cortaron registros más nuevos, o se restauró una copia anterior.</translation>
    </message>
    <message>
        <source>The signature of seal %1 says something else than its document about who signed, when or what for.</source>
        <translation>La firma del sello %1 dice otra cosa que su documento sobre quién firmó, cuándo o para qué.</translation>
    </message>
    <message>
        <source>The signature of seal %1 was not given for this document.</source>
        <translation>La firma del sello %1 no se dio para este documento.</translation>
    </message>
    <message>
        <source>The slowest hold-to-run movement, %1, is faster than the guidance for set-up.</source>
        <translation>El movimiento más lento con mando mantenido, %1, es más rápido que lo recomendado para la preparación.</translation>
    </message>
    <message>
        <source>The slowest steady speed.</source>
        <translation>La velocidad constante más lenta.</translation>
    </message>
    <message>
        <source>The slowest tenth of the runs have nothing in common that the others have less often.</source>
        <translation>El 10 % más lento de las preparaciones no tiene en común nada que sea menos frecuente en las demás.</translation>
    </message>
    <message>
        <source>The smallest core, by its inside, that it holds.</source>
        <translation>El núcleo menor, por dentro, que sujeta.</translation>
    </message>
    <message>
        <source>The speed at which it is to run.</source>
        <translation>La velocidad a la que debe correr.</translation>
    </message>
    <message>
        <source>The speed at which that was measured.</source>
        <translation>La velocidad a la que eso se midió.</translation>
    </message>
    <message>
        <source>The speed of creeping.</source>
        <translation>La velocidad de la marcha lenta.</translation>
    </message>
    <message>
        <source>The splice has been watched through</source>
        <translation>Se vigiló el paso del empalme hasta el final</translation>
    </message>
    <message>
        <source>The splice has not been watched through yet.</source>
        <translation>Aún no se ha vigilado el paso del empalme hasta el final.</translation>
    </message>
    <message>
        <source>The splice holds %1 times the highest tension of the window; it is to hold %2 times.</source>
        <translation>El empalme aguanta %1 veces la mayor tensión del margen; debe aguantar %2 veces.</translation>
    </message>
    <message>
        <source>The splice holds %1 times the worst tension in a stop; it is to hold %2 times.</source>
        <translation>El empalme aguanta %1 veces la peor tensión en un paro; debe aguantar %2 veces.</translation>
    </message>
    <message>
        <source>The splice table follows roller %1, which is not on the main path.</source>
        <translation>La mesa de empalme sigue al rodillo %1, que no está en el camino principal.</translation>
    </message>
    <message>
        <source>The spread is not a number above nought.</source>
        <translation>La dispersión no es un número mayor que cero.</translation>
    </message>
    <message>
        <source>The station where this colour stands.</source>
        <translation>La estación donde está este color.</translation>
    </message>
    <message>
        <source>The stations are off impression</source>
        <translation>Las estaciones están fuera de impresión</translation>
    </message>
    <message>
        <source>The step of a procedure that shows that it was done: its stage, place and name, with dots between.</source>
        <translation>El paso de un procedimiento que muestra que se hizo: su etapa, lugar y nombre, con puntos entre ellos.</translation>
    </message>
    <message>
        <source>The step that guards against it</source>
        <translation>El paso que lo evita</translation>
    </message>
    <message>
        <source>The stored event's member "%1" is missing or not what it must be.</source>
        <translation>El campo «%1» del suceso guardado falta o no es lo que debe ser.</translation>
    </message>
    <message>
        <source>The supervisor for a vital step must be somebody other than the person at the run.</source>
        <translation>El supervisor de un paso vital debe ser alguien distinto de quien lleva la preparación.</translation>
    </message>
    <message>
        <source>The switch of %1 sticks.</source>
        <translation>El interruptor de %1 se atasca.</translation>
    </message>
    <message>
        <source>The table %1 has a row that no sealed document tells of: %2.</source>
        <translation>La tabla %1 tiene una fila de la que no habla ningún documento sellado: %2.</translation>
    </message>
    <message>
        <source>The table %1 has lost a row that a sealed document tells of: %2.</source>
        <translation>La tabla %1 ha perdido una fila de la que habla un documento sellado: %2.</translation>
    </message>
    <message>
        <source>The table %1 says something else than the sealed document: %2.</source>
        <translation>La tabla %1 dice otra cosa que el documento sellado: %2.</translation>
    </message>
    <message>
        <source>The tag is that of roll %1; entered is roll %2.</source>
        <translation>La tarjeta es de la bobina %1; la introducida es la bobina %2.</translation>
    </message>
    <message>
        <source>The tape itself gives way: take a stronger tape, or run at less tension. A longer overlap changes nothing.</source>
        <translation>Cede la propia cinta: tome una cinta más fuerte, o corra con menos tensión. Un solape más largo no cambia nada.</translation>
    </message>
    <message>
        <source>The tape itself gives way: tape both faces, or take a stronger tape, or run at less tension. A longer overlap changes nothing.</source>
        <translation>Cede la propia cinta: ponga cinta en ambas caras, o tome una cinta más fuerte, o corra con menos tensión. Un solape más largo no cambia nada.</translation>
    </message>
    <message>
        <source>The tape only has to hold the tail; the wraps hold the web.</source>
        <translation>La cinta solo tiene que sujetar la cola; las vueltas sujetan la banda.</translation>
    </message>
    <message>
        <source>The tension of %1 is not on.</source>
        <translation>La tensión de %1 no está puesta.</translation>
    </message>
    <message>
        <source>The tension of %1 was not set as this roll wants it.</source>
        <translation>La tensión de %1 no se ajustó como la pide esta bobina.</translation>
    </message>
    <message>
        <source>The tension of %1 was not set at all.</source>
        <translation>La tensión de %1 no se ajustó en absoluto.</translation>
    </message>
    <message>
        <source>The tension swings up and down once a turn of the roll.</source>
        <translation>La tensión sube y baja una vez por vuelta de la bobina.</translation>
    </message>
    <message>
        <source>The text of %1 ends otherwise than the procedure's.</source>
        <translation>El texto de %1 termina de otro modo que el del procedimiento.</translation>
    </message>
    <message>
        <source>The text of %1 has %2 characters; %3 fit on a card.</source>
        <translation>El texto de %1 tiene %2 caracteres; en una ficha caben %3.</translation>
    </message>
    <message>
        <source>The text of %1 has a space too many.</source>
        <translation>Al texto de %1 le sobra un espacio.</translation>
    </message>
    <message>
        <source>The text of %1 has not the same words in braces as the procedure's.</source>
        <translation>El texto de %1 no tiene entre llaves lo mismo que el del procedimiento.</translation>
    </message>
    <message>
        <source>The text of %1 is empty.</source>
        <translation>El texto de %1 está vacío.</translation>
    </message>
    <message>
        <source>The text of %1 is the procedure's own.</source>
        <translation>El texto de %1 es el mismo del procedimiento.</translation>
    </message>
    <message>
        <source>The torque does not rise with the setting.</source>
        <translation>El par no crece con el ajuste.</translation>
    </message>
    <message>
        <source>The torque is given per %1, which is not what the zone's setting is given in.</source>
        <translation>El par se da por %1, y el ajuste de la zona no se da en eso.</translation>
    </message>
    <message>
        <source>The torque is said to begin at %1, and no more than %2 can be set.</source>
        <translation>Se declara que el par empieza en %1, y no se puede ajustar más de %2.</translation>
    </message>
    <message>
        <source>The torque that each unit of the setting makes. "Find what a setting does" finds it.</source>
        <translation>El par que da cada unidad del ajuste. «Hallar qué hace un ajuste» lo halla.</translation>
    </message>
    <message>
        <source>The training record is not named by its SHA-256, 64 digits in hexadecimal.</source>
        <translation>El registro de formación no se nombra por su SHA-256, 64 cifras hexadecimales.</translation>
    </message>
    <message>
        <source>The translation has no words for it.</source>
        <translation>La traducción no tiene texto para ello.</translation>
    </message>
    <message>
        <source>The two PINs are not the same.</source>
        <translation>Los dos PIN no son iguales.</translation>
    </message>
    <message>
        <source>The two judges were not given the same answers to choose from.</source>
        <translation>Los dos jueces no tenían las mismas respuestas para elegir.</translation>
    </message>
    <message>
        <source>The two passphrases are not the same.</source>
        <translation>Las dos frases de contraseña no son iguales.</translation>
    </message>
    <message>
        <source>The upper end of the window.</source>
        <translation>El extremo superior del margen.</translation>
    </message>
    <message>
        <source>The wall of a core, where the roll does not say.</source>
        <translation>La pared de un núcleo, si la bobina no lo dice.</translation>
    </message>
    <message>
        <source>The wall of its cores.</source>
        <translation>La pared de sus núcleos.</translation>
    </message>
    <message>
        <source>The waste share included.</source>
        <translation>Incluida la parte de desperdicio.</translation>
    </message>
    <message>
        <source>The web bends in the span before the guide; a longer span reaches further. Less than its stroke says that the angle ends first.</source>
        <translation>La banda se flexiona en el tramo antes del guiador; un tramo más largo llega más lejos. Menos que su recorrido indica que el ángulo termina antes.</translation>
    </message>
    <message>
        <source>The web broke behind %1.</source>
        <translation>La banda se rompió detrás de %1.</translation>
    </message>
    <message>
        <source>The web from %1 to %2 would run through roller %3.</source>
        <translation>La banda de %1 a %2 pasaría a través del rodillo %3.</translation>
    </message>
    <message>
        <source>The web guide, by itself</source>
        <translation>El guiador de banda, por sí solo</translation>
    </message>
    <message>
        <source>The web guide, to its middle</source>
        <translation>El guiador de banda, al centro</translation>
    </message>
    <message>
        <source>The web hangs behind %1.</source>
        <translation>La banda cuelga detrás de %1.</translation>
    </message>
    <message>
        <source>The web has been moved</source>
        <translation>La banda se ha movido</translation>
    </message>
    <message>
        <source>The web has not been moved yet.</source>
        <translation>La banda aún no se ha movido.</translation>
    </message>
    <message>
        <source>The web has to drag the roll up to speed. Above the limit, speed up more slowly while it is large.</source>
        <translation>La banda tiene que arrastrar la bobina hasta la velocidad. Por encima del límite, acelere más despacio mientras es grande.</translation>
    </message>
    <message>
        <source>The web holds on this roller until one side pulls so many times as hard as the other.</source>
        <translation>La banda se mantiene en este rodillo hasta que un lado tira tantas veces más fuerte que el otro.</translation>
    </message>
    <message>
        <source>The web is joined</source>
        <translation>La banda está unida</translation>
    </message>
    <message>
        <source>The web is led away already.</source>
        <translation>La banda ya está pasada.</translation>
    </message>
    <message>
        <source>The web is not joined yet.</source>
        <translation>La banda aún no está unida.</translation>
    </message>
    <message>
        <source>The web is not led.</source>
        <translation>La banda no está pasada.</translation>
    </message>
    <message>
        <source>The web is not on the rewind core yet.</source>
        <translation>La banda aún no está en el núcleo del rebobinador.</translation>
    </message>
    <message>
        <source>The web is not on the rewind's core.</source>
        <translation>La banda no está en el núcleo del rebobinador.</translation>
    </message>
    <message>
        <source>The web is on the rewind core</source>
        <translation>La banda está en el núcleo del rebobinador</translation>
    </message>
    <message>
        <source>The web is secured</source>
        <translation>La banda está asegurada</translation>
    </message>
    <message>
        <source>The web itself gives way, whatever the tape: run at less tension, and enter that range with the job.</source>
        <translation>Cede la propia banda, con cualquier cinta: corra con menos tensión, e introduzca ese rango con el trabajo.</translation>
    </message>
    <message>
        <source>The web leaves the roll from its top.</source>
        <translation>La banda sale de la bobina por arriba.</translation>
    </message>
    <message>
        <source>The web leaves the roll from its underside.</source>
        <translation>La banda sale de la bobina por debajo.</translation>
    </message>
    <message>
        <source>The web lies wrong, and guide %1 does nothing.</source>
        <translation>La banda va mal puesta, y el guiador %1 no hace nada.</translation>
    </message>
    <message>
        <source>The web path cannot be drawn without %1.</source>
        <translation>No se puede dibujar el camino de la banda sin %1.</translation>
    </message>
    <message>
        <source>The web that must be left when the automatic stop acts.</source>
        <translation>La banda que debe quedar cuando actúa el paro automático.</translation>
    </message>
    <message>
        <source>The web would go %2 around roller %1: its turn is probably wrong.</source>
        <translation>La banda daría %2 alrededor del rodillo %1: su giro probablemente está mal.</translation>
    </message>
    <message>
        <source>The web, onto the rewind's core</source>
        <translation>La banda, al núcleo del rebobinador</translation>
    </message>
    <message>
        <source>The webs are not clamped.</source>
        <translation>Las bandas no están fijadas con las pinzas.</translation>
    </message>
    <message>
        <source>The webs are still clamped on the table.</source>
        <translation>Las bandas siguen sujetas sobre la mesa.</translation>
    </message>
    <message>
        <source>The webs were joined with a step to the side.</source>
        <translation>Las bandas se empalmaron con un escalón lateral.</translation>
    </message>
    <message>
        <source>The week of %1</source>
        <translation>La semana de %1</translation>
    </message>
    <message>
        <source>The whole run</source>
        <translation>Toda la preparación</translation>
    </message>
    <message>
        <source>The widest web that it runs.</source>
        <translation>La banda más ancha que admite.</translation>
    </message>
    <message>
        <source>The width that the sensor sees.</source>
        <translation>El ancho que ve el sensor.</translation>
    </message>
    <message>
        <source>The window goes from %1 to %2.</source>
        <translation>El margen va de %1 a %2.</translation>
    </message>
    <message>
        <source>The window is %1 to %2.</source>
        <translation>El margen es de %1 a %2.</translation>
    </message>
    <message>
        <source>The window speaks otherwise as soon as what is being entered here is done.</source>
        <translation>La ventana cambia de idioma o unidades en cuanto se termine lo que se está introduciendo.</translation>
    </message>
    <message>
        <source>The windows of these readings are not all the same.</source>
        <translation>Los márgenes de estas lecturas no son todos iguales.</translation>
    </message>
    <message>
        <source>The word %1 can be chosen twice.</source>
        <translation>La palabra %1 se puede elegir dos veces.</translation>
    </message>
    <message>
        <source>The wrong face of the web comes to the plates of station %1.</source>
        <translation>La cara equivocada de la banda llega a las planchas de la estación %1.</translation>
    </message>
    <message>
        <source>There are %1 remedies; nobody reads more than %2.</source>
        <translation>Hay %1 remedios; nadie lee más de %2.</translation>
    </message>
    <message>
        <source>There are too few readings to tell whether it has moved: %1 are wanted.</source>
        <translation>Hay muy pocas lecturas para saber si se ha desplazado: hacen falta %1.</translation>
    </message>
    <message>
        <source>There are two things called %1 here.</source>
        <translation>Aquí hay dos cosas llamadas %1.</translation>
    </message>
    <message>
        <source>There is no %1 on this press.</source>
        <translation>No hay %1 en esta máquina.</translation>
    </message>
    <message>
        <source>There is no [[person]] in this file.</source>
        <translation>No hay ningún [[person]] en este archivo.</translation>
    </message>
    <message>
        <source>There is no adapter for this core at the press. Get one, or take a roll on another core.</source>
        <translation>No hay adaptador para este núcleo en la máquina. Consiga uno, o tome una bobina con otro núcleo.</translation>
    </message>
    <message>
        <source>There is no air in the rewind's shaft.</source>
        <translation>No hay aire en el eje del rebobinador.</translation>
    </message>
    <message>
        <source>There is no air in the shaft that holds the roll.</source>
        <translation>No hay aire en el eje que sujeta la bobina.</translation>
    </message>
    <message>
        <source>There is no air.</source>
        <translation>No hay aire.</translation>
    </message>
    <message>
        <source>There is no brake with calipers of %1 on this press.</source>
        <translation>Esta máquina no tiene freno con pinzas de %1.</translation>
    </message>
    <message>
        <source>There is no condition called %1.</source>
        <translation>No hay ninguna condición llamada %1.</translation>
    </message>
    <message>
        <source>There is no control with the role %1.</source>
        <translation>No hay ningún mando con el rol %1.</translation>
    </message>
    <message>
        <source>There is no dancer of %1 on this press.</source>
        <translation>Esta máquina no tiene bailarín de %1.</translation>
    </message>
    <message>
        <source>There is no emergency stop %1 on this press.</source>
        <translation>No hay ninguna parada de emergencia %1 en esta máquina.</translation>
    </message>
    <message>
        <source>There is no entry called %1 that this answer could fill.</source>
        <translation>No hay ninguna entrada llamada %1 que esta respuesta pueda rellenar.</translation>
    </message>
    <message>
        <source>There is no fact called %1.</source>
        <translation>No hay ningún hecho llamado %1.</translation>
    </message>
    <message>
        <source>There is no fault %1 to practise with.</source>
        <translation>No hay ninguna avería %1 para practicar.</translation>
    </message>
    <message>
        <source>There is no file %1.</source>
        <translation>No hay ningún archivo %1.</translation>
    </message>
    <message>
        <source>There is no guard %1 on this press.</source>
        <translation>No hay ningún resguardo %1 en esta máquina.</translation>
    </message>
    <message>
        <source>There is no input called %1 that a step could use.</source>
        <translation>No hay ningún dato llamado %1 que un paso pueda usar.</translation>
    </message>
    <message>
        <source>There is no joint yet.</source>
        <translation>Aún no hay empalme.</translation>
    </message>
    <message>
        <source>There is no kind of run called %1.</source>
        <translation>No hay ninguna clase de preparación llamada %1.</translation>
    </message>
    <message>
        <source>There is no limit to hold the values against.</source>
        <translation>No hay ningún límite con que comparar los valores.</translation>
    </message>
    <message>
        <source>There is no load cell of %1 on this press.</source>
        <translation>No hay ninguna célula de carga de %1 en esta máquina.</translation>
    </message>
    <message>
        <source>There is no logbook %1.</source>
        <translation>No hay ningún libro de registro %1.</translation>
    </message>
    <message>
        <source>There is no place at the press called %1.</source>
        <translation>No hay ningún puesto de la máquina llamado %1.</translation>
    </message>
    <message>
        <source>There is no place for %1: what stands above it is no table and no list.</source>
        <translation>No hay sitio para %1: lo que está por encima no es tabla ni lista.</translation>
    </message>
    <message>
        <source>There is no reading outside its window to accept.</source>
        <translation>No hay ninguna lectura fuera de su margen que aceptar.</translation>
    </message>
    <message>
        <source>There is no reading to be charted.</source>
        <translation>No hay ninguna lectura que representar.</translation>
    </message>
    <message>
        <source>There is no room left for the mirror %1. The logbook has every record; the mirror is behind.</source>
        <translation>No queda espacio para el espejo %1. El libro de registro tiene todos los registros; el espejo va atrasado.</translation>
    </message>
    <message>
        <source>There is no room left in %1 for a copy of %2. No copy was kept; the logbook is as it was.</source>
        <translation>No queda espacio en %1 para una copia de %2. No se guardó ninguna copia; el libro de registro está como estaba.</translation>
    </message>
    <message>
        <source>There is no room left in the folder of %1. Nothing was recorded.</source>
        <translation>No queda espacio en la carpeta de %1. No se registró nada.</translation>
    </message>
    <message>
        <source>There is no room left to write %1. Nothing was changed.</source>
        <translation>No queda espacio para escribir %1. No se cambió nada.</translation>
    </message>
    <message>
        <source>There is no room left to write in %1. Nothing was recorded.</source>
        <translation>No queda espacio para escribir en %1. No se registró nada.</translation>
    </message>
    <message>
        <source>There is no standing answer to correct.</source>
        <translation>No hay ninguna respuesta vigente que corregir.</translation>
    </message>
    <message>
        <source>There is no step "%1" on this press with this job and roll.</source>
        <translation>No hay ningún paso «%1» en esta máquina con este trabajo y esta bobina.</translation>
    </message>
    <message>
        <source>There is no such reading in the sealed runs that were chosen.</source>
        <translation>No hay tal lectura en las preparaciones selladas que se eligieron.</translation>
    </message>
    <message>
        <source>There is no target called %1.</source>
        <translation>No hay ningún valor objetivo llamado %1.</translation>
    </message>
    <message>
        <source>There is no value.</source>
        <translation>No hay ningún valor.</translation>
    </message>
    <message>
        <source>There is no web guide %1 on this press.</source>
        <translation>No hay ningún guiador %1 en esta máquina.</translation>
    </message>
    <message>
        <source>There is nothing yet to take a share of.</source>
        <translation>Aún no hay nada de lo que tomar una proporción.</translation>
    </message>
    <message>
        <source>There was nothing to find, or nothing to leave alone.</source>
        <translation>No había nada que hallar, o nada que dejar en paz.</translation>
    </message>
    <message>
        <source>These are not the bytes that were attached: they were changed since.</source>
        <translation>Estos no son los bytes que se adjuntaron: se cambiaron desde entonces.</translation>
    </message>
    <message>
        <source>Thickness of the tape under the plate.</source>
        <translation>Espesor de la cinta bajo la plancha.</translation>
    </message>
    <message>
        <source>This PIN is one of those that are guessed first.</source>
        <translation>Este PIN es uno de los que se adivinan primero.</translation>
    </message>
    <message>
        <source>This adapter does not say which core it fits.</source>
        <translation>Este adaptador no dice para qué núcleo sirve.</translation>
    </message>
    <message>
        <source>This attempt was not passed, and it was not said what is taught again.</source>
        <translation>Este intento no se superó, y no se dijo qué se enseña de nuevo.</translation>
    </message>
    <message>
        <source>This badge and PIN do not open this person's key.</source>
        <translation>Esta credencial y este PIN no abren la clave de esta persona.</translation>
    </message>
    <message>
        <source>This competence would be over before it begins.</source>
        <translation>Esta competencia acabaría antes de empezar.</translation>
    </message>
    <message>
        <source>This correction names no step and remarks nothing.</source>
        <translation>Esta corrección no nombra ningún paso ni observa nada.</translation>
    </message>
    <message>
        <source>This correction names the same step more than once.</source>
        <translation>Esta corrección nombra el mismo paso más de una vez.</translation>
    </message>
    <message>
        <source>This day is past: %1.</source>
        <translation>Este día ya pasó: %1.</translation>
    </message>
    <message>
        <source>This deck does not say at which station it stands.</source>
        <translation>Este cuerpo impresor no dice en qué estación está.</translation>
    </message>
    <message>
        <source>This document is about something else than a run.</source>
        <translation>Este documento trata de algo que no es una preparación.</translation>
    </message>
    <message>
        <source>This document is no attempt at the practice press.</source>
        <translation>Este documento no es un intento en la máquina de prácticas.</translation>
    </message>
    <message>
        <source>This document is no competence at a press.</source>
        <translation>Este documento no es una competencia en una máquina.</translation>
    </message>
    <message>
        <source>This document is no observation of an attempt.</source>
        <translation>Este documento no es la observación de un intento.</translation>
    </message>
    <message>
        <source>This document is no review, correction or void of a run.</source>
        <translation>Este documento no es una revisión, corrección ni anulación de una preparación.</translation>
    </message>
    <message>
        <source>This document names another person than the one who sealed it.</source>
        <translation>Este documento nombra a otra persona que quien lo selló.</translation>
    </message>
    <message>
        <source>This exported run is of a format that was never written.</source>
        <translation>Esta preparación exportada es de un formato que nunca se escribió.</translation>
    </message>
    <message>
        <source>This file does not say which format it is written in.</source>
        <translation>Este archivo no dice en qué formato está escrito.</translation>
    </message>
    <message>
        <source>This file has no %1, so it is not a file of that kind.</source>
        <translation>Este archivo no tiene %1, así que no es un archivo de esa clase.</translation>
    </message>
    <message>
        <source>This file has no table [procedure].</source>
        <translation>Este archivo no tiene ninguna tabla [procedure].</translation>
    </message>
    <message>
        <source>This file is no translation of a procedure that this program can read.</source>
        <translation>Este archivo no es una traducción de procedimiento que este programa pueda leer.</translation>
    </message>
    <message>
        <source>This file is of another kind (%2): it has no %1.</source>
        <translation>Este archivo es de otra clase (%2): no tiene %1.</translation>
    </message>
    <message>
        <source>This file is written in format %1; this program knows format %2.</source>
        <translation>Este archivo está escrito en el formato %1; este programa conoce el formato %2.</translation>
    </message>
    <message>
        <source>This gauge reads to %1 either way, and the window at %2 is narrower than the last place that is shown: nothing can be sure to be inside.</source>
        <translation>Este instrumento lee con %1 en más o en menos, y el margen en %2 es más estrecho que la última cifra que muestra: nada puede estar dentro con seguridad.</translation>
    </message>
    <message>
        <source>This gauge reads to %1 either way: too coarse for the window from %2 to %3, in which nothing can be sure to be inside.</source>
        <translation>Este instrumento lee con %1 en más o en menos: demasiado basto para el margen de %2 a %3, en el que nada puede estar dentro con seguridad.</translation>
    </message>
    <message>
        <source>This is a translation of %1, edition %2; the procedure is %3, edition %4.</source>
        <translation>Esta es una traducción de %1, edición %2; el procedimiento es %3, edición %4.</translation>
    </message>
    <message>
        <source>This is attached to the step already, as %1.</source>
        <translation>Esto ya está adjunto al paso, como %1.</translation>
    </message>
    <message>
        <source>This is more than %1 times the limit.</source>
        <translation>Esto es más de %1 veces el límite.</translation>
    </message>
    <message>
        <source>This is no exported run.</source>
        <translation>Esto no es una preparación exportada.</translation>
    </message>
    <message>
        <source>This is not JSON: it cannot be read on from byte %1.</source>
        <translation>Esto no es JSON: no se puede seguir leyendo desde el byte %1.</translation>
    </message>
    <message>
        <source>This is not a plan of a procedure.</source>
        <translation>Esto no es un plan de un procedimiento.</translation>
    </message>
    <message>
        <source>This is not a target set: it has no list of targets.</source>
        <translation>Esto no es un conjunto de valores objetivo: no tiene lista de ellos.</translation>
    </message>
    <message>
        <source>This is not a target: it has no id or an unknown state.</source>
        <translation>Esto no es un valor objetivo: no tiene id o su estado es desconocido.</translation>
    </message>
    <message>
        <source>This is not answered with words.</source>
        <translation>Esto no se responde con palabras.</translation>
    </message>
    <message>
        <source>This is the only supervisor who can sign.</source>
        <translation>Este es el único supervisor que puede firmar.</translation>
    </message>
    <message>
        <source>This key has too many parts.</source>
        <translation>Este campo tiene demasiadas partes.</translation>
    </message>
    <message>
        <source>This logbook has no attempt of anybody with the id %1.</source>
        <translation>Este libro no tiene ningún intento de nadie con el identificador %1.</translation>
    </message>
    <message>
        <source>This logbook has no run %1.</source>
        <translation>Este libro de registro no tiene ninguna preparación %1.</translation>
    </message>
    <message>
        <source>This logbook has no seal %1.</source>
        <translation>Este libro de registro no tiene ningún sello %1.</translation>
    </message>
    <message>
        <source>This logbook has no sealed run %1.</source>
        <translation>Este libro de registro no tiene ninguna preparación sellada %1.</translation>
    </message>
    <message>
        <source>This logbook knows no press %1.</source>
        <translation>Este libro de registro no conoce ninguna máquina %1.</translation>
    </message>
    <message>
        <source>This may be the length round the roll: divided by 3.14 it would fit, a diameter of %1.</source>
        <translation>Esto puede ser la longitud alrededor de la bobina: dividida por 3.14 encajaría, un diámetro de %1.</translation>
    </message>
    <message>
        <source>This name and PIN do not belong together.</source>
        <translation>Este nombre y este PIN no se corresponden.</translation>
    </message>
    <message>
        <source>This name and first-use code do not belong together.</source>
        <translation>Este nombre y este código de primer uso no se corresponden.</translation>
    </message>
    <message>
        <source>This page was not finished: not all runs and readings were looked at.</source>
        <translation>Esta página no se terminó: no se miraron todas las preparaciones y lecturas.</translation>
    </message>
    <message>
        <source>This passphrase does not open this person's key.</source>
        <translation>Esta frase de contraseña no abre la clave de esta persona.</translation>
    </message>
    <message>
        <source>This phase has fewer than two points.</source>
        <translation>Esta fase tiene menos de dos puntos.</translation>
    </message>
    <message>
        <source>This place is not UTF-8 text.</source>
        <translation>Este lugar no es texto UTF-8.</translation>
    </message>
    <message>
        <source>This press does not inch.</source>
        <translation>Esta máquina no avanza por impulsos.</translation>
    </message>
    <message>
        <source>This press has no lift.</source>
        <translation>Esta máquina no tiene elevador.</translation>
    </message>
    <message>
        <source>This press has no zone %1.</source>
        <translation>Esta máquina no tiene zona %1.</translation>
    </message>
    <message>
        <source>This press has nothing called "%2" that the fault %1 could be of.</source>
        <translation>Esta máquina no tiene nada llamado «%2» que pueda tener el fallo %1.</translation>
    </message>
    <message>
        <source>This press is not withdrawn from use.</source>
        <translation>Esta máquina no está retirada del servicio.</translation>
    </message>
    <message>
        <source>This press is said to have no air, and %1 works with air.</source>
        <translation>Se declara que esta máquina no tiene aire, y %1 trabaja con aire.</translation>
    </message>
    <message>
        <source>This press is said to idle at %1 and to crawl faster, at %2.</source>
        <translation>Se declara que esta máquina va en vacío a %1 y en marcha lenta más deprisa, a %2.</translation>
    </message>
    <message>
        <source>This press is said to run %1 at most and to crawl faster, at %2.</source>
        <translation>Se declara que esta máquina corre a %1 como máximo y en marcha lenta más deprisa, a %2.</translation>
    </message>
    <message>
        <source>This press is said to run %1 at most and to idle faster, at %2.</source>
        <translation>Se declara que esta máquina corre a %1 como máximo y en vacío más deprisa, a %2.</translation>
    </message>
    <message>
        <source>This procedure has no stage: there is nothing to do in it.</source>
        <translation>Este procedimiento no tiene ninguna etapa: en él no hay nada que hacer.</translation>
    </message>
    <message>
        <source>This reading did not come out outside before, or it was said already what helped.</source>
        <translation>Esta lectura no había salido fuera antes, o ya se dijo qué ayudó.</translation>
    </message>
    <message>
        <source>This reading has no window to deviate from.</source>
        <translation>Esta lectura no tiene margen del que desviarse.</translation>
    </message>
    <message>
        <source>This record by its SHA-256: %1</source>
        <translation>Este registro por su SHA-256: %1</translation>
    </message>
    <message>
        <source>This roll is enough for the job</source>
        <translation>Esta bobina alcanza para el trabajo</translation>
    </message>
    <message>
        <source>This roll is nearly used up: %1 of it can be run. Rolls and splices are planned by full ones.</source>
        <translation>Esta bobina está casi gastada: se puede correr %1 de ella. Bobinas y empalmes se planifican con bobinas llenas.</translation>
    </message>
    <message>
        <source>This roll wanders %1, the guide reaches %2 each way.</source>
        <translation>Esta bobina deriva %1, el guiador alcanza %2 a cada lado.</translation>
    </message>
    <message>
        <source>This roll's wander takes %1 of the guide's stroke, at most %2 is meant to go there.</source>
        <translation>La deriva de esta bobina gasta %1 del recorrido del guiador; está previsto que sea %2 como máximo.</translation>
    </message>
    <message>
        <source>This roll's wander takes %1 of what the guide can shift this web, at most %2 is meant to go there.</source>
        <translation>La deriva de esta bobina gasta %1 de lo que el guiador puede desplazar esta banda; está previsto que sea %2 como máximo.</translation>
    </message>
    <message>
        <source>This run cannot be signed while a stop is held by %1.</source>
        <translation>Esta preparación no se puede firmar mientras mantiene un paro %1.</translation>
    </message>
    <message>
        <source>This run has %1 pictures and files, which is as many as one may have.</source>
        <translation>Esta preparación tiene %1 imágenes y archivos, el máximo que puede tener.</translation>
    </message>
    <message>
        <source>This run has ended.</source>
        <translation>Esta preparación ha terminado.</translation>
    </message>
    <message>
        <source>This run has no such stage.</source>
        <translation>Esta preparación no tiene esa etapa.</translation>
    </message>
    <message>
        <source>This run has no such step.</source>
        <translation>Esta preparación no tiene ese paso.</translation>
    </message>
    <message>
        <source>This run is going on: there is nothing to resume.</source>
        <translation>Esta preparación está en curso: no hay nada que retomar.</translation>
    </message>
    <message>
        <source>This run is in the hands of %1.</source>
        <translation>Esta preparación está en manos de %1.</translation>
    </message>
    <message>
        <source>This sheet tells what was computed and what people said they saw. The press manual, this site's procedures, local rules and the people authorised here come before it.</source>
        <translation>Esta hoja dice lo que se calculó y lo que la gente dijo haber visto. El manual de la máquina, los procedimientos de esta planta, las normas locales y las personas autorizadas aquí están por encima de ella.</translation>
    </message>
    <message>
        <source>This stage has not been begun yet.</source>
        <translation>Esta etapa aún no se ha empezado.</translation>
    </message>
    <message>
        <source>This station has no number.</source>
        <translation>Esta estación no tiene número.</translation>
    </message>
    <message>
        <source>This step asks who holds the stop, but does not give stop_held.</source>
        <translation>Este paso pregunta quién mantiene el paro, pero no da stop_held.</translation>
    </message>
    <message>
        <source>This step belongs to no kind of run, so nobody would ever see it.</source>
        <translation>Este paso no pertenece a ninguna clase de preparación, así que nadie lo vería nunca.</translation>
    </message>
    <message>
        <source>This step gives it, do it first: %1</source>
        <translation>Lo da este paso, hágalo primero: %1</translation>
    </message>
    <message>
        <source>This step has choices but is not a choice.</source>
        <translation>Este paso tiene opciones pero no es una elección.</translation>
    </message>
    <message>
        <source>This step has no such remedy.</source>
        <translation>Este paso no tiene ese remedio.</translation>
    </message>
    <message>
        <source>This step is answered already.</source>
        <translation>Este paso ya está respondido.</translation>
    </message>
    <message>
        <source>This step is answered with yes, and only when it is so.</source>
        <translation>Este paso se responde con sí, y solo cuando es así.</translation>
    </message>
    <message>
        <source>This step moves the press and speaks of gloves.</source>
        <translation>Este paso mueve la máquina y habla de guantes.</translation>
    </message>
    <message>
        <source>This step protects people, so nobody may pass it by.</source>
        <translation>Este paso protege a personas, así que nadie puede pasarlo por alto.</translation>
    </message>
    <message>
        <source>This step says %1, and the correction was written for %2.</source>
        <translation>Este paso dice %1, y la corrección se escribió para %2.</translation>
    </message>
    <message>
        <source>This step says so already: %1.</source>
        <translation>Este paso ya lo dice: %1.</translation>
    </message>
    <message>
        <source>This was answered, and came out outside: it cannot be passed by any more.</source>
        <translation>Esto se respondió, y resultó fuera: ya no se puede pasar por alto.</translation>
    </message>
    <message>
        <source>This web breathes: less air stays under it than computed.</source>
        <translation>Esta banda respira: queda debajo menos aire del calculado.</translation>
    </message>
    <message>
        <source>This web breathes: no air stays under it. It holds until one side pulls so many times as hard.</source>
        <translation>Esta banda respira: no queda aire debajo. Se mantiene hasta que un lado tira tantas veces más fuerte.</translation>
    </message>
    <message>
        <source>This zone does not say how its tension is controlled.</source>
        <translation>Esta zona no dice cómo se controla su tensión.</translation>
    </message>
    <message>
        <source>Thread at crawl or with the drives isolated, or have the inch set shorter.</source>
        <translation>Enhebre en marcha lenta o con los accionamientos aislados, o haga acortar el impulso.</translation>
    </message>
    <message>
        <source>Thread with the drives isolated, or have the press's crawl speed set down.</source>
        <translation>Enhebre con los accionamientos aislados, o haga bajar la velocidad de marcha lenta de la máquina.</translation>
    </message>
    <message>
        <source>Three people reading ten parts three times tell most.</source>
        <translation>Tres personas que leen diez piezas tres veces dicen lo más.</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Tiempo</translation>
    </message>
    <message>
        <source>Time a roll should lie in the press room</source>
        <translation>Tiempo que una bobina debe reposar en la sala de máquinas</translation>
    </message>
    <message>
        <source>Time and losses</source>
        <translation>Tiempos y pérdidas</translation>
    </message>
    <message>
        <source>Time at crawl to draw it through</source>
        <translation>Tiempo en marcha lenta para pasarla tirando</translation>
    </message>
    <message>
        <source>Time it again, with its tenths.</source>
        <translation>Mídalo otra vez, con sus décimas.</translation>
    </message>
    <message>
        <source>Time of a run, median</source>
        <translation>Tiempo por preparación, mediana</translation>
    </message>
    <message>
        <source>Time of the proving run at idle</source>
        <translation>Tiempo de la marcha de prueba en vacío</translation>
    </message>
    <message>
        <source>Time stands still: something happened.</source>
        <translation>El tiempo está detenido: ha pasado algo.</translation>
    </message>
    <message>
        <source>Time to standstill after an emergency stop</source>
        <translation>Tiempo hasta pararse tras un paro de emergencia</translation>
    </message>
    <message>
        <source>Time to standstill after an emergency stop from %1</source>
        <translation>Tiempo hasta pararse tras un paro de emergencia desde %1</translation>
    </message>
    <message>
        <source>Time to standstill after an emergency stop from job speed</source>
        <translation>Tiempo hasta pararse tras un paro de emergencia desde la velocidad del trabajo</translation>
    </message>
    <message>
        <source>Time to standstill, emergency stop on trial</source>
        <translation>Tiempo hasta pararse, paro de emergencia de prueba</translation>
    </message>
    <message>
        <source>Times its scatter</source>
        <translation>Veces su dispersión</translation>
    </message>
    <message>
        <source>Times lie between answers: they say how long a set-up took on this press, never how well somebody works, and are told by press, job, kind of run and shift, never by person. A run by people who learn is slower, and safer.</source>
        <translation>Los tiempos se miden entre respuestas: dicen cuánto duró una preparación en esta máquina, nunca lo bien que trabaja alguien, y se dan por máquina, trabajo, clase de preparación y turno, nunca por persona. Una preparación de quienes aprenden es más lenta, y más segura.</translation>
    </message>
    <message>
        <source>Times of answers</source>
        <translation>Tiempos de respuesta</translation>
    </message>
    <message>
        <source>Times, web and the first go are told of runs that were finished.</source>
        <translation>Los tiempos, la banda y «a la primera» son de preparaciones terminadas.</translation>
    </message>
    <message>
        <source>To be set again at these diameters at the latest: %1.</source>
        <translation>Por ajustar de nuevo a más tardar con estos diámetros: %1.</translation>
    </message>
    <message>
        <source>To change what was written down, correct it and say why.</source>
        <translation>Para cambiar lo escrito, corríjalo y diga por qué.</translation>
    </message>
    <message>
        <source>To go on from it, restore it under the name of the logbook that was lost.</source>
        <translation>Para seguir desde él, restáurelo con el nombre del libro de registro que se perdió.</translation>
    </message>
    <message>
        <source>To the middle</source>
        <translation>Al centro</translation>
    </message>
    <message>
        <source>Told from sealed runs</source>
        <translation>Según preparaciones selladas</translation>
    </message>
    <message>
        <source>Tooth to tooth along the pitch circle. One of the three pitches is enough.</source>
        <translation>De diente a diente por el círculo primitivo. Basta uno de los tres pasos.</translation>
    </message>
    <message>
        <source>Torque</source>
        <translation>Par</translation>
    </message>
    <message>
        <source>Torque against setting</source>
        <translation>Par según el ajuste</translation>
    </message>
    <message>
        <source>Torque per setting, profile</source>
        <translation>Par por ajuste, perfil</translation>
    </message>
    <message>
        <source>Torque per setting, these runs</source>
        <translation>Par por ajuste, estas preparaciones</translation>
    </message>
    <message>
        <source>Torque that would keep the unwind's tension in an emergency stop</source>
        <translation>Par que mantendría la tensión del desbobinador en un paro de emergencia</translation>
    </message>
    <message>
        <source>Touch or type the name of the person who holds the stop, as the crew knows it.</source>
        <translation>Toque o escriba el nombre de la persona que mantiene el paro, como lo conoce el equipo.</translation>
    </message>
    <message>
        <source>Touching, never over one another: an overlap strikes every nip.</source>
        <translation>Tocándose, nunca uno sobre otro: un solape golpea todos los nips.</translation>
    </message>
    <message>
        <source>Trainer</source>
        <translation>Instructor</translation>
    </message>
    <message>
        <source>Trainer: I looked at the attempt %1</source>
        <translation>Instructor: he mirado el intento %1</translation>
    </message>
    <message>
        <source>Trainer: I looked at these attempts</source>
        <translation>Instructor: he mirado estos intentos</translation>
    </message>
    <message>
        <source>Training record</source>
        <translation>Registro de práctica</translation>
    </message>
    <message>
        <source>Translate it anew, then write of = "%1".</source>
        <translation>Tradúzcalo de nuevo y escriba of = "%1".</translation>
    </message>
    <message>
        <source>Translate it.</source>
        <translation>Traducirlo.</translation>
    </message>
    <message>
        <source>Treatment of the film</source>
        <translation>Tratamiento de la película</translation>
    </message>
    <message>
        <source>Trim it</source>
        <translation>Recortarlo</translation>
    </message>
    <message>
        <source>Trim it flush: a tail sticks to the first roller it meets.</source>
        <translation>Recórtelo a ras: una cola se pega al primer rodillo que encuentra.</translation>
    </message>
    <message>
        <source>Trim them</source>
        <translation>Recortar</translation>
    </message>
    <message>
        <source>Trust the document, not the row. Restore the logbook from a backup.</source>
        <translation>Fíese del documento, no de la fila. Restaure el libro de registro desde una copia de seguridad.</translation>
    </message>
    <message>
        <source>Trust the run's own document; ask whoever signed the correction.</source>
        <translation>Fíese del documento propio de la preparación; pregunte a quien firmó la corrección.</translation>
    </message>
    <message>
        <source>Trust the sealed documents, not the search. Restore the logbook from a backup.</source>
        <translation>Fíese de los documentos sellados, no de la búsqueda. Restaure el libro de registro desde una copia de seguridad.</translation>
    </message>
    <message>
        <source>Trust the sealed documents, not this table. Restore the logbook from a backup.</source>
        <translation>Fíese de los documentos sellados, no de esta tabla. Restaure el libro de registro desde una copia de seguridad.</translation>
    </message>
    <message>
        <source>Try again, or ask a supervisor whether you are enrolled on this press.</source>
        <translation>Intente de nuevo, o pregunte a un supervisor si está dado de alta en esta máquina.</translation>
    </message>
    <message>
        <source>Try again, or save it as PDF.</source>
        <translation>Intente de nuevo, o guárdela como PDF.</translation>
    </message>
    <message>
        <source>Try again. It is the passphrase, not the PIN, that signs. Whoever has lost it has a supervisor let them choose anew.</source>
        <translation>Intente de nuevo. Firma la frase de contraseña, no el PIN. Quien la haya perdido pide a un supervisor que le deje elegir de nuevo.</translation>
    </message>
    <message>
        <source>Turn it down as the roll shrinks, or the web tightens; see the schedule.</source>
        <translation>Bájelo según se reduce la bobina, o la banda se tensa; vea la tabla de ajustes.</translation>
    </message>
    <message>
        <source>Turned beyond %1, one edge of this web hangs slack. The guide can turn %2; until then it shifts the web %3.</source>
        <translation>Girado más de %1, un borde de esta banda cuelga flojo. El guiador puede girar %2; hasta entonces desplaza la banda %3.</translation>
    </message>
    <message>
        <source>Turned by hand with the stop held, %1; three are common practice, no source.</source>
        <translation>Giradas a mano con el paro mantenido, %1; tres son práctica habitual, sin fuente.</translation>
    </message>
    <message>
        <source>Turned by hand with the stop held.</source>
        <translation>Giradas a mano con el paro mantenido.</translation>
    </message>
    <message>
        <source>Turned by hand with the stop held; three are common practice, no source.</source>
        <translation>Giradas a mano con el paro mantenido; tres son práctica habitual, sin fuente.</translation>
    </message>
    <message>
        <source>Turned further, one edge of the web carries nothing.</source>
        <translation>Girado más, un borde de la banda no lleva nada.</translation>
    </message>
    <message>
        <source>Turns of web on the core.</source>
        <translation>Vueltas de banda en el núcleo.</translation>
    </message>
    <message>
        <source>Turns on the core before the web pulls.</source>
        <translation>Vueltas en el núcleo antes de que la banda tire.</translation>
    </message>
    <message>
        <source>Tw = (low + high) / 2</source>
        <translation>Tw = (bajo + alto) / 2</translation>
    </message>
    <message>
        <source>Twisted beyond %1, the middle of this web hangs slack. The guide can turn %2; until then it shifts the web %3.</source>
        <translation>Torcida más de %1, el centro de esta banda cuelga flojo. El guiador puede girar %2; hasta entonces desplaza la banda %3.</translation>
    </message>
    <message>
        <source>Twisted further, the middle of the web carries nothing and the edges all.</source>
        <translation>Torcida más, el centro de la banda no lleva nada y los bordes todo.</translation>
    </message>
    <message>
        <source>Two of three points are more than 2 sigma out on one side.</source>
        <translation>Dos de tres puntos están a más de 2 sigma a un lado.</translation>
    </message>
    <message>
        <source>Two to four different runs can stand beside each other.</source>
        <translation>Se pueden poner lado a lado de dos a cuatro preparaciones distintas.</translation>
    </message>
    <message>
        <source>Type a number like 2, or leave it empty when it is not known.</source>
        <translation>Escriba un número como 2, o déjelo vacío si no se conoce.</translation>
    </message>
    <message>
        <source>Type both as they stand on the label.</source>
        <translation>Escriba ambos como están en la etiqueta.</translation>
    </message>
    <message>
        <source>Type it once more.</source>
        <translation>Escríbalo otra vez.</translation>
    </message>
    <message>
        <source>Type it without the minus sign.</source>
        <translation>Escríbalo sin el signo menos.</translation>
    </message>
    <message>
        <source>Type the measured diameter into the drive and read it back: half the diameter is half the tension.</source>
        <translation>Escriba en el accionamiento el diámetro medido y vuelva a leerlo: la mitad de diámetro es la mitad de tensión.</translation>
    </message>
    <message>
        <source>Type the name as the crew knows it.</source>
        <translation>Escriba el nombre como lo conoce el equipo.</translation>
    </message>
    <message>
        <source>Type what is to be another; what is left empty stays as it is.</source>
        <translation>Escriba lo que debe ser otro; lo que se deja vacío queda como está.</translation>
    </message>
    <message>
        <source>Under</source>
        <translation>Por debajo</translation>
    </message>
    <message>
        <source>Up to seal %1 this logbook is not the one that the sheet was printed from.</source>
        <translation>Hasta el sello %1 este libro de registro no es aquel del que se imprimió la hoja.</translation>
    </message>
    <message>
        <source>Update the program on this PC to write in it. Until then its sealed runs can be read: tautweb runs, sheet and export. Nothing was changed.</source>
        <translation>Actualice el programa en este PC para escribir en él. Hasta entonces se pueden leer sus preparaciones selladas: tautweb runs, sheet y export. No se cambió nada.</translation>
    </message>
    <message>
        <source>Upper quartile</source>
        <translation>Cuartil superior</translation>
    </message>
    <message>
        <source>Use a control that its file names, or one of the works of hands.</source>
        <translation>Use un mando que su archivo nombre, o uno de los trabajos de manos.</translation>
    </message>
    <message>
        <source>Use a hoist.</source>
        <translation>Use un polipasto.</translation>
    </message>
    <message>
        <source>Use a role of the list; what this shop calls the control belongs in the press profile.</source>
        <translation>Use un rol de la lista; cómo llama este taller al mando va en el perfil de la máquina.</translation>
    </message>
    <message>
        <source>Use a short text on one line that is not empty and has no dot in it.</source>
        <translation>Use un texto corto en una línea, que no esté vacío ni tenga punto.</translation>
    </message>
    <message>
        <source>Use its own page.</source>
        <translation>Use su propia página.</translation>
    </message>
    <message>
        <source>Use lower case letters, digits and _ only.</source>
        <translation>Use solo minúsculas, cifras y _.</translation>
    </message>
    <message>
        <source>Use one of: %1.</source>
        <translation>Use uno de estos: %1.</translation>
    </message>
    <message>
        <source>Use press, job, substrate or procedure.</source>
        <translation>Use press, job, substrate o procedure.</translation>
    </message>
    <message>
        <source>Use small letters, digits and the underscore only: answers and records name steps by it.</source>
        <translation>Use solo minúsculas, cifras y el guion bajo: respuestas y registros nombran los pasos con ello.</translation>
    </message>
    <message>
        <source>Use the id of a target that this program computes.</source>
        <translation>Use el id de un valor objetivo que calcula este programa.</translation>
    </message>
    <message>
        <source>Use the words that the roll's file knows.</source>
        <translation>Use las palabras que conoce el archivo de la bobina.</translation>
    </message>
    <message>
        <source>Use {target} where the step has a target, {control} where it has a control, {frame} where it reads a target across the press, {register_mark} where that is a register adjuster, the word of for_each, and {= 0.5 mm} for a quantity.</source>
        <translation>Use {target} donde el paso tiene un valor objetivo, {control} donde tiene un mando, {frame} donde lee un valor objetivo a lo ancho de la máquina, {register_mark} donde ese es un ajustador de registro, la palabra de for_each, y {= 0.5 mm} para una cantidad.</translation>
    </message>
    <message>
        <source>Usual are 0.5 and 5 sigma.</source>
        <translation>Lo usual es 0.5 y 5 sigma.</translation>
    </message>
    <message>
        <source>Usual scatter (sigma)</source>
        <translation>Dispersión habitual (sigma)</translation>
    </message>
    <message>
        <source>V1.distance of job.speed and press.speeds.stop_time</source>
        <translation>V1.distance de job.speed y press.speeds.stop_time</translation>
    </message>
    <message>
        <source>V3, sum of spans and arcs</source>
        <translation>V3, suma de tramos y arcos</translation>
    </message>
    <message>
        <source>V4 of the finished roll</source>
        <translation>V4 de la bobina terminada</translation>
    </message>
    <message>
        <source>V6 gives less than nothing</source>
        <translation>V6 da menos que nada</translation>
    </message>
    <message>
        <source>VOID: %1</source>
        <translation>ANULADO: %1</translation>
    </message>
    <message>
        <source>VOID: %1 has voided this run, %2: %3. Nothing on this sheet counts as the record of a set-up.</source>
        <translation>ANULADA: %1 anuló esta preparación, %2: %3. Nada de esta hoja cuenta como registro de una preparación.</translation>
    </message>
    <message>
        <source>Verify both against the newest printed sheet before anybody goes on.</source>
        <translation>Verifique ambos con la hoja impresa más reciente antes de que nadie siga.</translation>
    </message>
    <message>
        <source>Verify it, keep the file, and begin a new logbook. Nothing was changed.</source>
        <translation>Verifíquelo, conserve el archivo, y empiece un libro de registro nuevo. No se cambió nada.</translation>
    </message>
    <message>
        <source>Verify the copies, have the disk checked, and choose another folder.</source>
        <translation>Verifique las copias, haga revisar el disco, y elija otra carpeta.</translation>
    </message>
    <message>
        <source>Verify the logbook and restore it from a backup.</source>
        <translation>Verifique el libro de registro y restáurelo desde una copia de seguridad.</translation>
    </message>
    <message>
        <source>Verify the logbook and restore it from a copy.</source>
        <translation>Verifique el libro de registro y restáurelo desde una copia.</translation>
    </message>
    <message>
        <source>Verify the logbook and restore it from this mirror or a copy.</source>
        <translation>Verifique el libro de registro y restáurelo desde este espejo o una copia.</translation>
    </message>
    <message>
        <source>Verify the logbook, and restore it from the mirror or a copy.</source>
        <translation>Verificar el libro de registro y restaurarlo desde el espejo o una copia.</translation>
    </message>
    <message>
        <source>Verify the logbook; if it is not in order itself, restore it from an older copy or its mirror. Older copies were left alone.</source>
        <translation>Verifique el libro de registro; si él mismo no está en orden, restáurelo desde una copia más antigua o su espejo. Las copias más antiguas no se tocaron.</translation>
    </message>
    <message>
        <source>Verify the logbook; keep it, and restore a copy.</source>
        <translation>Verificar el libro de registro; conservarlo y restaurar una copia.</translation>
    </message>
    <message>
        <source>Verify the whole logbook, and restore it from the mirror or a copy.</source>
        <translation>Verifique todo el libro de registro, y restáurelo desde el espejo o una copia.</translation>
    </message>
    <message>
        <source>Vital missed</source>
        <translation>Vitales omitidos</translation>
    </message>
    <message>
        <source>Vital steps that were missed: one is enough</source>
        <translation>Pasos vitales omitidos: basta uno</translation>
    </message>
    <message>
        <source>Voiding a run needs a reason.</source>
        <translation>Anular una preparación necesita un motivo.</translation>
    </message>
    <message>
        <source>Wait for more runs, or find the constant with a spring scale.</source>
        <translation>Espere a más preparaciones, o halle la constante con una báscula de resorte.</translation>
    </message>
    <message>
        <source>Wait for more runs.</source>
        <translation>Espere a más preparaciones.</translation>
    </message>
    <message>
        <source>Wait for runs with other rolls or materials, or find the constant with a spring scale.</source>
        <translation>Espere a preparaciones con otras bobinas o materiales, o halle la constante con una báscula de resorte.</translation>
    </message>
    <message>
        <source>Wait until it was made, then restore.</source>
        <translation>Espere a que esté hecha, y luego restaure.</translation>
    </message>
    <message>
        <source>Wait until there is one.</source>
        <translation>Esperar a que haya alguno.</translation>
    </message>
    <message>
        <source>Wait, then try again.</source>
        <translation>Espere, y luego intente de nuevo.</translation>
    </message>
    <message>
        <source>Wander of the web behind the guide at steady speed</source>
        <translation>Deriva de la banda tras el guiador a velocidad constante</translation>
    </message>
    <message>
        <source>Warning: %1</source>
        <translation>Advertencia: %1</translation>
    </message>
    <message>
        <source>Was "%1" meant?</source>
        <translation>¿Quería decir «%1»?</translation>
    </message>
    <message>
        <source>Was %1 meant? Else take it out.</source>
        <translation>¿Quería decir %1? Si no, quítelo.</translation>
    </message>
    <message>
        <source>Was %1 meant? Else take them out.</source>
        <translation>¿Quería decir %1? Si no, quítelos.</translation>
    </message>
    <message>
        <source>Watch it for a minute: a leaking shaft lets the roll go.</source>
        <translation>Obsérvelo un minuto: un eje con fuga suelta la bobina.</translation>
    </message>
    <message>
        <source>Watch the web there, or use a finer gauge.</source>
        <translation>Vigile ahí la banda, o use un instrumento más fino.</translation>
    </message>
    <message>
        <source>Web along the path</source>
        <translation>Banda a lo largo del camino</translation>
    </message>
    <message>
        <source>Web between the guide's two rollers.</source>
        <translation>Banda entre los dos rodillos del guiador.</translation>
    </message>
    <message>
        <source>Web from the splice table to the rewind.</source>
        <translation>Banda de la mesa de empalme al rebobinador.</translation>
    </message>
    <message>
        <source>Web from unwind to rewind, measured, where no rollers are given.</source>
        <translation>Banda del desbobinador al rebobinador, medida, si no hay rodillos dados.</translation>
    </message>
    <message>
        <source>Web in the outer wraps taken off</source>
        <translation>Banda de las vueltas exteriores quitadas</translation>
    </message>
    <message>
        <source>Web lost at each splice.</source>
        <translation>Banda perdida en cada empalme.</translation>
    </message>
    <message>
        <source>Web of a set-up, median</source>
        <translation>Banda por puesta a punto, mediana</translation>
    </message>
    <message>
        <source>Web of this roll that can be run</source>
        <translation>Banda de esta bobina que se puede correr</translation>
    </message>
    <message>
        <source>Web on the roll</source>
        <translation>Banda en la bobina</translation>
    </message>
    <message>
        <source>Web on the roll, by its diameters</source>
        <translation>Banda en la bobina, por sus diámetros</translation>
    </message>
    <message>
        <source>Web on the roll, by its mass</source>
        <translation>Banda en la bobina, por su masa</translation>
    </message>
    <message>
        <source>Web or tape stands over at a joint.</source>
        <translation>En una unión sobresale banda o cinta.</translation>
    </message>
    <message>
        <source>Web or tape stood over at a joint.</source>
        <translation>En un empalme sobresalía banda o cinta.</translation>
    </message>
    <message>
        <source>Web that leaves the drawn plane behind it, over turn bars.</source>
        <translation>Banda que deja el plano dibujado detrás de él, por barras de volteo.</translation>
    </message>
    <message>
        <source>Web that passes while the press stops</source>
        <translation>Banda que pasa mientras la máquina se para</translation>
    </message>
    <message>
        <source>Web that setting up takes.</source>
        <translation>Banda que consume la puesta a punto.</translation>
    </message>
    <message>
        <source>Web that still passes after a stop; not for placing guards or light curtains.</source>
        <translation>Banda que aún pasa tras un paro; no sirve para situar resguardos ni barreras de luz.</translation>
    </message>
    <message>
        <source>Web the job needs</source>
        <translation>Banda que necesita el trabajo</translation>
    </message>
    <message>
        <source>Web the job needs, set-up included</source>
        <translation>Banda que necesita el trabajo, preparación incluida</translation>
    </message>
    <message>
        <source>Web to draw from the roll to the rewind</source>
        <translation>Banda que hay que pasar de la bobina al rebobinador</translation>
    </message>
    <message>
        <source>Web to draw from the splice table to the rewind</source>
        <translation>Banda que hay que pasar de la mesa de empalme al rebobinador</translation>
    </message>
    <message>
        <source>Web used in setting up</source>
        <translation>Banda de la puesta a punto</translation>
    </message>
    <message>
        <source>Web used in setting up, median</source>
        <translation>Banda de la puesta a punto, mediana</translation>
    </message>
    <message>
        <source>Weigh an empty core, or leave it out.</source>
        <translation>Pese un núcleo vacío, u omítalo.</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>What a label says of the length is of the roll before anything was taken off: it tells no caliper of what is left.</source>
        <translation>Lo que una etiqueta dice de la longitud es de la bobina antes de quitarle nada: no indica ningún espesor de lo que queda.</translation>
    </message>
    <message>
        <source>What a roll of known length says of its thickness, air and pressure included.</source>
        <translation>Lo que una bobina de longitud conocida dice de su espesor, aire y presión incluidos.</translation>
    </message>
    <message>
        <source>What an idler has to be turned up with.</source>
        <translation>Con qué hay que poner en giro un rodillo libre.</translation>
    </message>
    <message>
        <source>What can be seen from there.</source>
        <translation>Lo que se ve desde allí.</translation>
    </message>
    <message>
        <source>What changed then</source>
        <translation>Qué cambió entonces</translation>
    </message>
    <message>
        <source>What comes off outside and what stays on the core print nothing.</source>
        <translation>Lo que se quita por fuera y lo que queda en el núcleo no imprimen nada.</translation>
    </message>
    <message>
        <source>What differs</source>
        <translation>Qué difiere</translation>
    </message>
    <message>
        <source>What dries or cures behind it.</source>
        <translation>Qué seca o cura detrás de ella.</translation>
    </message>
    <message>
        <source>What every roller holds at job speed is not known without %1: at speed air takes some of what is said "at crawl only".</source>
        <translation>Lo que sujeta cada rodillo a la velocidad del trabajo no se conoce sin %1: a velocidad el aire quita parte de lo dicho «solo en marcha lenta».</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>Qué ha pasado</translation>
    </message>
    <message>
        <source>What happened under way</source>
        <translation>Lo que pasó por el camino</translation>
    </message>
    <message>
        <source>What has moved away from where it began, and stays there</source>
        <translation>Qué se ha alejado de donde empezó, y sigue allí</translation>
    </message>
    <message>
        <source>What helped</source>
        <translation>Qué ayudó</translation>
    </message>
    <message>
        <source>What holds it on the press.</source>
        <translation>Qué lo sujeta en la máquina.</translation>
    </message>
    <message>
        <source>What holds the core.</source>
        <translation>Qué sujeta el núcleo.</translation>
    </message>
    <message>
        <source>What is looked after, and how often, stands in the profile of the press: a step of its procedure that was answered well in a signed run shows that it was done. What the press manual, this site's procedures or local law ask for besides is not told here. Who does the work has to be authorised for it.</source>
        <translation>Qué se controla y cada cuánto está en el perfil de la máquina: un paso de su procedimiento bien respondido en una preparación firmada muestra que se hizo. Lo que además pidan el manual de la máquina, los procedimientos de la planta o la ley local no se dice aquí. Quien hace el trabajo debe estar autorizado.</translation>
    </message>
    <message>
        <source>What is lost at the splices, %1 a roll, is as much as a roll like this one has.</source>
        <translation>Lo que se pierde en los empalmes, %1 por bobina, es tanto como tiene una bobina como esta.</translation>
    </message>
    <message>
        <source>What is moved with the roll.</source>
        <translation>Qué se mueve con la bobina.</translation>
    </message>
    <message>
        <source>What is printed here.</source>
        <translation>Qué se imprime aquí.</translation>
    </message>
    <message>
        <source>What is taught again</source>
        <translation>Qué se enseña de nuevo</translation>
    </message>
    <message>
        <source>What is the same</source>
        <translation>Qué es igual</translation>
    </message>
    <message>
        <source>What it bears for each width before it breaks.</source>
        <translation>Lo que aguanta por ancho antes de romperse.</translation>
    </message>
    <message>
        <source>What it did use is read and recorded as it is. The job's make_ready plans it.</source>
        <translation>Lo que gastó se lee y se registra tal cual. Lo planifica make_ready en el trabajo.</translation>
    </message>
    <message>
        <source>What it does in an emergency stop.</source>
        <translation>Qué hace en un paro de emergencia.</translation>
    </message>
    <message>
        <source>What it does not know is ignored; a newer version reads all of it.</source>
        <translation>Lo que no conoce se pasa por alto; una versión más nueva lo lee todo.</translation>
    </message>
    <message>
        <source>What it does when the air fails.</source>
        <translation>Qué hace cuando falla el aire.</translation>
    </message>
    <message>
        <source>What it is: rows stand in web order, the main path first.</source>
        <translation>Qué es: las filas van en el orden de la banda, primero el recorrido principal.</translation>
    </message>
    <message>
        <source>What it keeps in place: the middle or one edge.</source>
        <translation>Qué mantiene en su sitio: el centro o un borde.</translation>
    </message>
    <message>
        <source>What it weighs.</source>
        <translation>Cuánto pesa.</translation>
    </message>
    <message>
        <source>What its glue holds for each width before it slides.</source>
        <translation>Lo que aguanta su adhesivo por ancho antes de deslizar.</translation>
    </message>
    <message>
        <source>What its sensor sees by.</source>
        <translation>Con qué ve su sensor.</translation>
    </message>
    <message>
        <source>What keeps the tension: a setting alone, a dancer, a load cell, or a draw between two speeds.</source>
        <translation>Qué mantiene la tensión: solo un ajuste, un bailarín, una célula de carga o una diferencia de velocidades.</translation>
    </message>
    <message>
        <source>What lay there before cannot be read, so nobody can say whether it held newer records. It was kept as %1.</source>
        <translation>Lo que había antes no se puede leer, así que nadie puede decir si contenía registros más nuevos. Se guardó como %1.</translation>
    </message>
    <message>
        <source>What lay there before holds other seals than what was restored: a record was changed, or they are two logbooks. It was kept as %1.</source>
        <translation>Lo que había antes contiene otros sellos que lo restaurado: se cambió un registro, o son dos libros de registro. Se guardó como %1.</translation>
    </message>
    <message>
        <source>What lifts the roll.</source>
        <translation>Qué levanta la bobina.</translation>
    </message>
    <message>
        <source>What loads the dancer.</source>
        <translation>Qué carga el bailarín.</translation>
    </message>
    <message>
        <source>What makes the torque.</source>
        <translation>Qué produce el par.</translation>
    </message>
    <message>
        <source>What people call it.</source>
        <translation>Cómo lo llama la gente.</translation>
    </message>
    <message>
        <source>What protects people at the press %2 was changed since %1 was shown to be competent there.</source>
        <translation>Lo que protege a las personas en la máquina %2 cambió desde que %1 se mostró competente allí.</translation>
    </message>
    <message>
        <source>What pulls the web while it is threaded.</source>
        <translation>Qué tira de la banda al enhebrar.</translation>
    </message>
    <message>
        <source>What sort of material it is.</source>
        <translation>Qué tipo de material es.</translation>
    </message>
    <message>
        <source>What stands here of %1 was changed meanwhile, so nothing was chosen.</source>
        <translation>Lo que aquí consta de %1 se cambió entretanto, así que no se eligió nada.</translation>
    </message>
    <message>
        <source>What the guide must make good for this roll, to one side.</source>
        <translation>Lo que el guiador debe compensar para esta bobina, a un lado.</translation>
    </message>
    <message>
        <source>What the guide shifts the web at its largest angle</source>
        <translation>Lo que el guiador desplaza la banda en su mayor ángulo</translation>
    </message>
    <message>
        <source>What the guide shifts the web before it hangs slack</source>
        <translation>Lo que el guiador desplaza la banda antes de que cuelgue floja</translation>
    </message>
    <message>
        <source>What the next person must know: %1</source>
        <translation>Lo que debe saber la siguiente persona: %1</translation>
    </message>
    <message>
        <source>What the print shortens by when the web is let go.</source>
        <translation>Lo que se acorta la impresión al soltar la banda.</translation>
    </message>
    <message>
        <source>What the roll takes the guide no longer has for the web.</source>
        <translation>Lo que gasta la bobina ya no lo tiene el guiador para la banda.</translation>
    </message>
    <message>
        <source>What the setting of %1 makes now</source>
        <translation>Qué hace ahora el ajuste de %1</translation>
    </message>
    <message>
        <source>What the slowest tenth have in common</source>
        <translation>Qué tiene en común el 10 % más lento</translation>
    </message>
    <message>
        <source>What the tape holds for each width before it tears.</source>
        <translation>Lo que aguanta la cinta por ancho antes de rasgarse.</translation>
    </message>
    <message>
        <source>What the web alone weighs, without its core.</source>
        <translation>Lo que pesa la banda sola, sin su núcleo.</translation>
    </message>
    <message>
        <source>What this shop calls this control.</source>
        <translation>Cómo llama este taller a este mando.</translation>
    </message>
    <message>
        <source>What trainers saw and signed for</source>
        <translation>Lo que los instructores vieron y firmaron</translation>
    </message>
    <message>
        <source>What trainers say of attempts stands in a practice logbook alone.</source>
        <translation>Lo que los instructores dicen de los intentos consta solo en un libro de prácticas.</translation>
    </message>
    <message>
        <source>What was chosen is what it was before.</source>
        <translation>Lo elegido es lo que había antes.</translation>
    </message>
    <message>
        <source>What was done at the practice press. It qualifies nobody alone.</source>
        <translation>Lo que se hizo en la máquina de prácticas. Por sí solo no habilita a nadie.</translation>
    </message>
    <message>
        <source>What was entered by hand counts. Scan the tag again if it should be readable.</source>
        <translation>Cuenta lo introducido a mano. Escanee otra vez la tarjeta si debería ser legible.</translation>
    </message>
    <message>
        <source>What was not as it should be</source>
        <translation>Lo que no estaba como debía</translation>
    </message>
    <message>
        <source>What was not right, found in tests</source>
        <translation>Lo que no estaba bien, hallado en pruebas</translation>
    </message>
    <message>
        <source>What was restored is the logbook of another PC than what lay there before, which was kept as %1.</source>
        <translation>Lo restaurado es el libro de registro de otro PC que lo que había antes, que se guardó como %1.</translation>
    </message>
    <message>
        <source>What was said no longer holds. Say it again: %1</source>
        <translation>Lo dicho ya no vale. Declárelo de nuevo: %1</translation>
    </message>
    <message>
        <source>What was seen</source>
        <translation>Qué se vio</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Cuándo</translation>
    </message>
    <message>
        <source>When its adjuster stands at its mid mark.</source>
        <translation>Cuando su ajustador está en su marca central.</translation>
    </message>
    <message>
        <source>When this run was abandoned a stop was still held by %1.</source>
        <translation>Cuando se abandonó esta preparación, aún mantenía un paro %1.</translation>
    </message>
    <message>
        <source>Whence the torque is known: its maker's sheet, or the runs that measured it.</source>
        <translation>De dónde se conoce el par: la hoja de su fabricante, o las preparaciones que lo midieron.</translation>
    </message>
    <message>
        <source>Where it stands: firm, hall.</source>
        <translation>Dónde está: empresa, nave.</translation>
    </message>
    <message>
        <source>Where the face of the finished roll is to be.</source>
        <translation>Dónde debe quedar la cara de la bobina terminada.</translation>
    </message>
    <message>
        <source>Where the job says nothing closer.</source>
        <translation>Donde el trabajo no dice nada más preciso.</translation>
    </message>
    <message>
        <source>Where the press said otherwise</source>
        <translation>Donde la máquina decía otra cosa</translation>
    </message>
    <message>
        <source>Whether air goes through it: none is drawn in between web and roller.</source>
        <translation>Si deja pasar el aire: entonces no entra ninguno entre banda y rodillo.</translation>
    </message>
    <message>
        <source>Whether both faces are taped.</source>
        <translation>Si se pegan las dos caras.</translation>
    </message>
    <message>
        <source>Whether finished rolls or waste are wound here.</source>
        <translation>Si aquí se bobinan bobinas terminadas o desperdicio.</translation>
    </message>
    <message>
        <source>Whether it needs compressed air.</source>
        <translation>Si necesita aire comprimido.</translation>
    </message>
    <message>
        <source>Whether its emergency stop is latched when power comes on.</source>
        <translation>Si su paro de emergencia está enclavado al dar corriente.</translation>
    </message>
    <message>
        <source>Whether light goes through it: optical sensors may not see it.</source>
        <translation>Si deja pasar la luz: los sensores ópticos quizá no lo vean.</translation>
    </message>
    <message>
        <source>Whether the roll's diameter is typed into the drive.</source>
        <translation>Si el diámetro de la bobina se introduce en el accionamiento.</translation>
    </message>
    <message>
        <source>Whether this layer bears the tension behind the die by itself.</source>
        <translation>Si esta capa soporta por sí sola la tensión tras el troquel.</translation>
    </message>
    <message>
        <source>Whether trip bars stop the press.</source>
        <translation>Si barras de disparo paran la máquina.</translation>
    </message>
    <message>
        <source>Which layers bear this tension: all, or the liner alone behind the die.</source>
        <translation>Qué capas soportan esta tensión: todas, o solo el soporte tras el troquel.</translation>
    </message>
    <message>
        <source>Which way</source>
        <translation>Hacia dónde</translation>
    </message>
    <message>
        <source>Which way %1 must wind is not told by the rollers as they are drawn.</source>
        <translation>Los rodillos, tal como están dibujados, no dicen hacia dónde debe bobinar %1.</translation>
    </message>
    <message>
        <source>Who says so, or when it was measured.</source>
        <translation>Quién lo dice, o cuándo se midió.</translation>
    </message>
    <message>
        <source>Whoever holds it gives it up, in person.</source>
        <translation>Quien la retiene la suelta, en persona.</translation>
    </message>
    <message>
        <source>Whoever may read that folder can read the record.</source>
        <translation>Quien puede leer esa carpeta puede leer el registro.</translation>
    </message>
    <message>
        <source>Why it was abandoned</source>
        <translation>Por qué se abandonó</translation>
    </message>
    <message>
        <source>Why the press was withdrawn</source>
        <translation>Por qué se retiró la máquina del servicio</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Ancho</translation>
    </message>
    <message>
        <source>Width of the web, measured</source>
        <translation>Ancho de la banda, medido</translation>
    </message>
    <message>
        <source>Wind a smaller roll, or run lower in the tension window.</source>
        <translation>Haga una bobina más pequeña, o corra más abajo en el margen de tensión.</translation>
    </message>
    <message>
        <source>Wind a smaller roll.</source>
        <translation>Haga una bobina más pequeña.</translation>
    </message>
    <message>
        <source>Wind on a core that the shaft holds, and rewind the finished rolls elsewhere.</source>
        <translation>Bobine en un núcleo que sujete el eje, y rebobine las bobinas terminadas en otro sitio.</translation>
    </message>
    <message>
        <source>Wind on a larger core, or have a weaker drive fitted.</source>
        <translation>Bobine en un núcleo más grande, o haga montar un accionamiento más débil.</translation>
    </message>
    <message>
        <source>Wind on a larger core, or take part of the clutch out of use.</source>
        <translation>Bobine en un núcleo más grande, o ponga parte del embrague fuera de uso.</translation>
    </message>
    <message>
        <source>Wind on a smaller core, or engage more of the clutch.</source>
        <translation>Bobine en un núcleo más pequeño, o active más parte del embrague.</translation>
    </message>
    <message>
        <source>Wind on a smaller core, or have a stronger drive fitted.</source>
        <translation>Bobine en un núcleo más pequeño, o haga montar un accionamiento más fuerte.</translation>
    </message>
    <message>
        <source>Wipe it</source>
        <translation>Limpiarla</translation>
    </message>
    <message>
        <source>With all that the brake has, as it bites in an emergency stop.</source>
        <translation>Con todo lo que tiene el freno, tal como muerde en un paro de emergencia.</translation>
    </message>
    <message>
        <source>With its adapter the roll weighs %1, this lift carries %2.</source>
        <translation>Con su adaptador la bobina pesa %1, este elevador soporta %2.</translation>
    </message>
    <message>
        <source>With its adapter the roll weighs %1, this press takes %2.</source>
        <translation>Con su adaptador la bobina pesa %1, esta máquina admite %2.</translation>
    </message>
    <message>
        <source>With the brake left as it is set.</source>
        <translation>Con el freno dejado como está ajustado.</translation>
    </message>
    <message>
        <source>With the setting left alone it would be %1 at %2.</source>
        <translation>Sin tocar el ajuste sería %1 a %2.</translation>
    </message>
    <message>
        <source>With this feed and winding a roll shows its face to the plates: how it is hung.</source>
        <translation>Con esta alimentación y este bobinado la bobina muestra su cara a las planchas: cómo se cuelga.</translation>
    </message>
    <message>
        <source>With this feed and winding a roll shows its face to the plates: how it is wound.</source>
        <translation>Con esta alimentación y este bobinado la bobina muestra su cara a las planchas: cómo está bobinada.</translation>
    </message>
    <message>
        <source>With this row %1 lies above %2.</source>
        <translation>Con esta fila %1 queda por encima de %2.</translation>
    </message>
    <message>
        <source>With what make-ready and splices take; short runs are mostly that.</source>
        <translation>Con lo que consumen la puesta a punto y los empalmes; las tiradas cortas son sobre todo eso.</translation>
    </message>
    <message>
        <source>Withdrawing the press needs a sentence.</source>
        <translation>Retirar la máquina del servicio necesita una frase que diga por qué.</translation>
    </message>
    <message>
        <source>Wound</source>
        <translation>Enrollado</translation>
    </message>
    <message>
        <source>Wound like this, the roll would print on its back: this unwind cannot be fed %1.</source>
        <translation>Enrollada así, la bobina se imprimiría por el dorso: este desbobinador no se puede alimentar %1.</translation>
    </message>
    <message>
        <source>Wraps on the roll</source>
        <translation>Vueltas en la bobina</translation>
    </message>
    <message>
        <source>Write %1 (%2).</source>
        <translation>Escriba %1 (%2).</translation>
    </message>
    <message>
        <source>Write %1 = "..."; what stands beside it is left out until then.</source>
        <translation>Escriba %1 = "..."; hasta entonces se omite lo que está al lado.</translation>
    </message>
    <message>
        <source>Write %1 = with %2.</source>
        <translation>Escriba %1 = con %2.</translation>
    </message>
    <message>
        <source>Write %1 as a text with its unit, like "%2".</source>
        <translation>Escriba %1 como texto con su unidad, como "%2".</translation>
    </message>
    <message>
        <source>Write %1 or %2: one decimal mark at most, and nothing between thousands.</source>
        <translation>Escriba %1 o %2: como máximo un signo decimal, y nada entre los millares.</translation>
    </message>
    <message>
        <source>Write %1.</source>
        <translation>Escriba %1.</translation>
    </message>
    <message>
        <source>Write a key of a few parts, joined by dots.</source>
        <translation>Escriba un campo de unas pocas partes, unidas por puntos.</translation>
    </message>
    <message>
        <source>Write a list of tables: [[%1]] with its keys below, once for each.</source>
        <translation>Escriba una lista de tablas: [[%1]] con sus campos debajo, una vez por cada una.</translation>
    </message>
    <message>
        <source>Write a list of texts, like ["one", "two"].</source>
        <translation>Escriba una lista de textos, como ["one", "two"].</translation>
    </message>
    <message>
        <source>Write a note beside it, or give up the stop and hold it anew.</source>
        <translation>Escriba una nota al lado, o levante el paro y manténgalo de nuevo.</translation>
    </message>
    <message>
        <source>Write a note beside the step instead.</source>
        <translation>Escribir en su lugar una nota junto al paso.</translation>
    </message>
    <message>
        <source>Write a note instead that says where it is kept.</source>
        <translation>Escribir en su lugar una nota que diga dónde se guarda.</translation>
    </message>
    <message>
        <source>Write a number and its unit, like %1 or %2.</source>
        <translation>Escriba un número y su unidad, como %1 o %2.</translation>
    </message>
    <message>
        <source>Write a number and its unit, like %1.</source>
        <translation>Escriba un número y su unidad, como %1.</translation>
    </message>
    <message>
        <source>Write a number with s or min between quotes.</source>
        <translation>Escriba un número con s o min entre comillas.</translation>
    </message>
    <message>
        <source>Write a number, or a share like "500 %".</source>
        <translation>Escriba un número, o una parte como "500 %".</translation>
    </message>
    <message>
        <source>Write a number, without a unit.</source>
        <translation>Escriba un número, sin unidad.</translation>
    </message>
    <message>
        <source>Write a number, without quotes and without a unit.</source>
        <translation>Escriba un número, sin comillas y sin unidad.</translation>
    </message>
    <message>
        <source>Write a number.</source>
        <translation>Escriba un número.</translation>
    </message>
    <message>
        <source>Write a table with this id, its words, and of = "%1".</source>
        <translation>Escriba una tabla con este id, sus palabras y of = "%1".</translation>
    </message>
    <message>
        <source>Write a table: [%1] with its keys below, or %1 = { key = value }.</source>
        <translation>Escriba una tabla: [%1] con sus campos debajo, o %1 = { key = value }.</translation>
    </message>
    <message>
        <source>Write a table: { key = value }.</source>
        <translation>Escriba una tabla: { key = value }.</translation>
    </message>
    <message>
        <source>Write a text between quotes, a number, true or false, or a list between brackets.</source>
        <translation>Escribir un texto entre comillas, un número, true o false, o una lista entre corchetes.</translation>
    </message>
    <message>
        <source>Write a text between quotes.</source>
        <translation>Escriba un texto entre comillas.</translation>
    </message>
    <message>
        <source>Write a whole number, without quotes and without a unit.</source>
        <translation>Escriba un número entero, sin comillas y sin unidad.</translation>
    </message>
    <message>
        <source>Write a whole number; the usual value holds until then.</source>
        <translation>Escriba un número entero; hasta entonces vale el valor habitual.</translation>
    </message>
    <message>
        <source>Write as many, in the same order.</source>
        <translation>Escribir el mismo número, en el mismo orden.</translation>
    </message>
    <message>
        <source>Write at least one [[stage]] with a place and its steps.</source>
        <translation>Escriba al menos un [[stage]] con un puesto y sus pasos.</translation>
    </message>
    <message>
        <source>Write choices = [{ word = "...", say = "..." }, ...].</source>
        <translation>Escriba choices = [{ word = "...", say = "..." }, ...].</translation>
    </message>
    <message>
        <source>Write control = "open_loop", "dancer", "load_cell" or "draw"; the zone is left out until then.</source>
        <translation>Escriba control = "open_loop", "dancer", "load_cell" o "draw"; hasta entonces se omite la zona.</translation>
    </message>
    <message>
        <source>Write core = with the core's inner diameter; it is left out until then.</source>
        <translation>Escriba core = con el diámetro interior del núcleo; hasta entonces se omite.</translation>
    </message>
    <message>
        <source>Write each of them once for each time that the procedure has it, letter for letter.</source>
        <translation>Escribir cada uno tantas veces como el procedimiento, letra por letra.</translation>
    </message>
    <message>
        <source>Write format = %1 in its first line; it is read as that.</source>
        <translation>Escriba format = %1 en su primera línea; se lee como eso.</translation>
    </message>
    <message>
        <source>Write format = %1.</source>
        <translation>Escriba format = %1.</translation>
    </message>
    <message>
        <source>Write format = 1 as its first line.</source>
        <translation>Escriba format = 1 como su primera línea.</translation>
    </message>
    <message>
        <source>Write gives = ["stop_held"].</source>
        <translation>Escriba gives = ["stop_held"].</translation>
    </message>
    <message>
        <source>Write how far the reading may be off, without a sign.</source>
        <translation>Escriba cuánto puede errar la lectura, sin signo.</translation>
    </message>
    <message>
        <source>Write it as 2026-11-25.</source>
        <translation>Escríbala así: 2026-11-25.</translation>
    </message>
    <message>
        <source>Write it as text in quotes.</source>
        <translation>Escríbalo como texto entre comillas.</translation>
    </message>
    <message>
        <source>Write it in its file, and practice goes by it.</source>
        <translation>Escríbalo en su archivo, y la práctica se guía por ello.</translation>
    </message>
    <message>
        <source>Write it in one of these units.</source>
        <translation>Escríbalo en una de estas unidades.</translation>
    </message>
    <message>
        <source>Write it in one of: %1.</source>
        <translation>Escríbalo en una de estas: %1.</translation>
    </message>
    <message>
        <source>Write it in the file that it belongs to.</source>
        <translation>Escríbalo en el archivo al que pertenece.</translation>
    </message>
    <message>
        <source>Write it like 13.25, 13,25 or 13 1/4.</source>
        <translation>Escríbalo como 13.25, 13,25 o 13 1/4.</translation>
    </message>
    <message>
        <source>Write it like 2026-11-25T06:41:03.120Z.</source>
        <translation>Escríbalo como 2026-11-25T06:41:03.120Z.</translation>
    </message>
    <message>
        <source>Write it like 5 ft 3 1/4 in: whole feet, and fewer than 12 inches.</source>
        <translation>Escríbalo como 5 ft 3 1/4 in: pies enteros, y menos de 12 pulgadas.</translation>
    </message>
    <message>
        <source>Write it like 60 lb 25x38 in.</source>
        <translation>Escríbalo como 60 lb 25x38 in.</translation>
    </message>
    <message>
        <source>Write kind = "choice", or take the choices out.</source>
        <translation>Escriba kind = "choice", o quite las opciones.</translation>
    </message>
    <message>
        <source>Write number = 1 (or its number); it is left out until then.</source>
        <translation>Escriba number = 1 (o su número); hasta entonces se omite.</translation>
    </message>
    <message>
        <source>Write one of: %1.</source>
        <translation>Escriba uno de estos: %1.</translation>
    </message>
    <message>
        <source>Write stage, place and step of the procedure with dots between, as in power_up.tests.stop_test.</source>
        <translation>Escriba etapa, lugar y paso del procedimiento con puntos entre ellos, como en power_up.tests.stop_test.</translation>
    </message>
    <message>
        <source>Write station = 1 (or its number); the deck is left out until then.</source>
        <translation>Escriba station = 1 (o su número); hasta entonces se omite el cuerpo impresor.</translation>
    </message>
    <message>
        <source>Write the day of the last change as year, month and day: 2026-11-25.</source>
        <translation>Escriba el día del último cambio como año, mes y día: 2026-11-25.</translation>
    </message>
    <message>
        <source>Write the earlier day first.</source>
        <translation>Escriba primero el día anterior.</translation>
    </message>
    <message>
        <source>Write the number alone, without a unit.</source>
        <translation>Escriba solo el número, sin unidad.</translation>
    </message>
    <message>
        <source>Write the number with its unit.</source>
        <translation>Escriba el número con su unidad.</translation>
    </message>
    <message>
        <source>Write the unit in which the panel takes the tension, such as N or lbf, or %.</source>
        <translation>Escriba la unidad en que el panel recibe la tensión, como N o lbf, o %.</translation>
    </message>
    <message>
        <source>Write true or false, without quotes.</source>
        <translation>Escriba true o false, sin comillas.</translation>
    </message>
    <message>
        <source>Write two lengths, along and up, like ["650 mm", "400 mm"].</source>
        <translation>Escriba dos longitudes, a lo largo y hacia arriba, como ["650 mm", "400 mm"].</translation>
    </message>
    <message>
        <source>Write waivable = false: the step ends done, or the press is withdrawn.</source>
        <translation>Escriba waivable = false: el paso termina hecho, o la máquina se retira del servicio.</translation>
    </message>
    <message>
        <source>Write what is to be put right as a remark.</source>
        <translation>Escriba lo que hay que corregir como observación.</translation>
    </message>
    <message>
        <source>Write why: what happens to a hand, an eye or the roll without it.</source>
        <translation>Escriba por qué: qué le pasa sin ello a una mano, un ojo o la bobina.</translation>
    </message>
    <message>
        <source>Write { word = "...", say = "..." } for each choice of the step.</source>
        <translation>Escribir { word = "...", say = "..." } para cada opción del paso.</translation>
    </message>
    <message>
        <source>Z = R / (pi m), rounded up to whole teeth</source>
        <translation>Z = R / (pi m), redondeado hacia arriba a dientes enteros</translation>
    </message>
    <message>
        <source>Z = R / p, rounded up to whole teeth</source>
        <translation>Z = R / p, redondeado hacia arriba a dientes enteros</translation>
    </message>
    <message>
        <source>Z = R P / pi, rounded up to whole teeth</source>
        <translation>Z = R P / pi, redondeado hacia arriba a dientes enteros</translation>
    </message>
    <message>
        <source>Zone %1 begins and ends at roller %2: no web lies between.</source>
        <translation>La zona %1 empieza y termina en el rodillo %2: no hay banda en medio.</translation>
    </message>
    <message>
        <source>Zone %1 ends at rewind %2, where zone %3 ends already.</source>
        <translation>La zona %1 termina en el rebobinador %2, donde ya termina la zona %3.</translation>
    </message>
    <message>
        <source>a count</source>
        <translation>un recuento</translation>
    </message>
    <message>
        <source>a count per length</source>
        <translation>un recuento por longitud</translation>
    </message>
    <message>
        <source>a current</source>
        <translation>una corriente</translation>
    </message>
    <message>
        <source>a density</source>
        <translation>una densidad</translation>
    </message>
    <message>
        <source>a force</source>
        <translation>una fuerza</translation>
    </message>
    <message>
        <source>a force per width</source>
        <translation>una fuerza por ancho</translation>
    </message>
    <message>
        <source>a length</source>
        <translation>una longitud</translation>
    </message>
    <message>
        <source>a list</source>
        <translation>una lista</translation>
    </message>
    <message>
        <source>a list of tables</source>
        <translation>una lista de tablas</translation>
    </message>
    <message>
        <source>a list of texts</source>
        <translation>una lista de textos</translation>
    </message>
    <message>
        <source>a mass</source>
        <translation>una masa</translation>
    </message>
    <message>
        <source>a mass per area</source>
        <translation>una masa por superficie</translation>
    </message>
    <message>
        <source>a moment of inertia</source>
        <translation>un momento de inercia</translation>
    </message>
    <message>
        <source>a number</source>
        <translation>un número</translation>
    </message>
    <message>
        <source>a number of turns per time</source>
        <translation>un número de vueltas por tiempo</translation>
    </message>
    <message>
        <source>a power</source>
        <translation>una potencia</translation>
    </message>
    <message>
        <source>a pressure</source>
        <translation>una presión</translation>
    </message>
    <message>
        <source>a reading was corrected</source>
        <translation>se corrigió una lectura</translation>
    </message>
    <message>
        <source>a reading was outside</source>
        <translation>una lectura quedó fuera</translation>
    </message>
    <message>
        <source>a roll in the press room before use</source>
        <translation>una bobina en la sala de máquinas antes de su uso</translation>
    </message>
    <message>
        <source>a run</source>
        <translation>una preparación</translation>
    </message>
    <message>
        <source>a share</source>
        <translation>una parte</translation>
    </message>
    <message>
        <source>a speed</source>
        <translation>una velocidad</translation>
    </message>
    <message>
        <source>a stage was done again</source>
        <translation>se repitió una etapa</translation>
    </message>
    <message>
        <source>a supervisor accepted a reading outside</source>
        <translation>un supervisor aceptó una lectura fuera de margen</translation>
    </message>
    <message>
        <source>a table</source>
        <translation>una tabla</translation>
    </message>
    <message>
        <source>a table's single starting value, either way</source>
        <translation>el único valor de partida de una tabla, a cada lado</translation>
    </message>
    <message>
        <source>a text</source>
        <translation>un texto</translation>
    </message>
    <message>
        <source>a text between quotes</source>
        <translation>un texto entre comillas</translation>
    </message>
    <message>
        <source>a time</source>
        <translation>un tiempo</translation>
    </message>
    <message>
        <source>a torque</source>
        <translation>un par de giro</translation>
    </message>
    <message>
        <source>a torque per current</source>
        <translation>un par de giro por corriente</translation>
    </message>
    <message>
        <source>a torque per pressure</source>
        <translation>un par de giro por presión</translation>
    </message>
    <message>
        <source>a torque per share</source>
        <translation>un par de giro por parte</translation>
    </message>
    <message>
        <source>a viscosity</source>
        <translation>una viscosidad</translation>
    </message>
    <message>
        <source>a volume per area</source>
        <translation>un volumen por superficie</translation>
    </message>
    <message>
        <source>a whole number</source>
        <translation>un número entero</translation>
    </message>
    <message>
        <source>abandoned</source>
        <translation>abandonada</translation>
    </message>
    <message>
        <source>abandoned, not reviewed</source>
        <translation>abandonada, sin revisar</translation>
    </message>
    <message>
        <source>abandoned, reviewed</source>
        <translation>abandonada, revisada</translation>
    </message>
    <message>
        <source>acceleration</source>
        <translation>aceleración</translation>
    </message>
    <message>
        <source>accepted</source>
        <translation>aceptado</translation>
    </message>
    <message>
        <source>accepted by</source>
        <translation>aceptado por</translation>
    </message>
    <message>
        <source>air film</source>
        <translation>película de aire</translation>
    </message>
    <message>
        <source>air in a shaft without a plate, at least</source>
        <translation>aire en un eje sin placa, como mínimo</translation>
    </message>
    <message>
        <source>air in a shaft without a plate, at most</source>
        <translation>aire en un eje sin placa, como máximo</translation>
    </message>
    <message>
        <source>air pressure</source>
        <translation>presión de aire</translation>
    </message>
    <message>
        <source>air supply at the press, at least</source>
        <translation>suministro de aire en la máquina, como mínimo</translation>
    </message>
    <message>
        <source>air supply at the press, at most</source>
        <translation>suministro de aire en la máquina, como máximo</translation>
    </message>
    <message>
        <source>all presses</source>
        <translation>todas las máquinas</translation>
    </message>
    <message>
        <source>an acceleration</source>
        <translation>una aceleración</translation>
    </message>
    <message>
        <source>an angle</source>
        <translation>un ángulo</translation>
    </message>
    <message>
        <source>an area</source>
        <translation>una superficie</translation>
    </message>
    <message>
        <source>an area per mass</source>
        <translation>una superficie por masa</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation>y %1 más</translation>
    </message>
    <message>
        <source>angle from the straight cross cut</source>
        <translation>ángulo respecto al corte transversal recto</translation>
    </message>
    <message>
        <source>angle of the guide</source>
        <translation>ángulo del guiador</translation>
    </message>
    <message>
        <source>angle out of square</source>
        <translation>ángulo fuera de escuadra</translation>
    </message>
    <message>
        <source>anilox volume</source>
        <translation>volumen del anilox</translation>
    </message>
    <message>
        <source>another cause</source>
        <translation>otra causa</translation>
    </message>
    <message>
        <source>answered fast</source>
        <translation>respondido rápido</translation>
    </message>
    <message>
        <source>answers by: %1</source>
        <translation>respuestas de: %1</translation>
    </message>
    <message>
        <source>are closed</source>
        <translation>están cerradas</translation>
    </message>
    <message>
        <source>are cut</source>
        <translation>están cortados</translation>
    </message>
    <message>
        <source>are engaged</source>
        <translation>están acopladas</translation>
    </message>
    <message>
        <source>are fitted</source>
        <translation>están montados</translation>
    </message>
    <message>
        <source>are not cut together</source>
        <translation>no están cortados juntos</translation>
    </message>
    <message>
        <source>are not fitted</source>
        <translation>no están montados</translation>
    </message>
    <message>
        <source>are not trimmed</source>
        <translation>no están recortados</translation>
    </message>
    <message>
        <source>are off</source>
        <translation>están quitadas</translation>
    </message>
    <message>
        <source>are on the roll</source>
        <translation>están en la bobina</translation>
    </message>
    <message>
        <source>are open</source>
        <translation>están abiertas</translation>
    </message>
    <message>
        <source>are trimmed</source>
        <translation>están recortados</translation>
    </message>
    <message>
        <source>area of one piston</source>
        <translation>superficie de un pistón</translation>
    </message>
    <message>
        <source>area of one sheet</source>
        <translation>superficie de una hoja</translation>
    </message>
    <message>
        <source>area of web</source>
        <translation>superficie de banda</translation>
    </message>
    <message>
        <source>arm of the cylinder</source>
        <translation>brazo del cilindro</translation>
    </message>
    <message>
        <source>arm of the dancer roller</source>
        <translation>brazo del rodillo bailarín</translation>
    </message>
    <message>
        <source>arm of the weight</source>
        <translation>brazo del peso</translation>
    </message>
    <message>
        <source>as entered</source>
        <translation>como se introdujo</translation>
    </message>
    <message>
        <source>as set</source>
        <translation>como está ajustado</translation>
    </message>
    <message>
        <source>at</source>
        <translation>cuándo</translation>
    </message>
    <message>
        <source>attached</source>
        <translation>adjuntado</translation>
    </message>
    <message>
        <source>before %1</source>
        <translation>antes de %1</translation>
    </message>
    <message>
        <source>beside</source>
        <translation>junto a</translation>
    </message>
    <message>
        <source>best before</source>
        <translation>usar preferiblemente antes de</translation>
    </message>
    <message>
        <source>bore</source>
        <translation>diámetro interior</translation>
    </message>
    <message>
        <source>bore of %1</source>
        <translation>diámetro interior de %1</translation>
    </message>
    <message>
        <source>brake torque</source>
        <translation>par del freno</translation>
    </message>
    <message>
        <source>breaking strength per width</source>
        <translation>resistencia a la rotura por ancho</translation>
    </message>
    <message>
        <source>broken</source>
        <translation>incumplido</translation>
    </message>
    <message>
        <source>by</source>
        <translation>por</translation>
    </message>
    <message>
        <source>by %1</source>
        <translation>por %1</translation>
    </message>
    <message>
        <source>by %1 min; what follows stands in the order in which it happened</source>
        <translation>en %1 min; lo que sigue está en el orden en que ocurrió</translation>
    </message>
    <message>
        <source>by %1, %2</source>
        <translation>por %1, %2</translation>
    </message>
    <message>
        <source>by %1; what follows stands in the order in which it happened</source>
        <translation>en %1; lo que sigue está en el orden en que ocurrió</translation>
    </message>
    <message>
        <source>by the diameters</source>
        <translation>por los diámetros</translation>
    </message>
    <message>
        <source>by the label</source>
        <translation>por la etiqueta</translation>
    </message>
    <message>
        <source>by the mass</source>
        <translation>por la masa</translation>
    </message>
    <message>
        <source>by the published limits of i</source>
        <translation>por los límites publicados de i</translation>
    </message>
    <message>
        <source>by the published limits of v</source>
        <translation>por los límites publicados de v</translation>
    </message>
    <message>
        <source>by what a repeat is shorter when the web is let go</source>
        <translation>cuánto más corto es el desarrollo al soltar la banda</translation>
    </message>
    <message>
        <source>by winding, side and the way from unwind to rewind</source>
        <translation>por bobinado, lado y recorrido del desbobinador al rebobinador</translation>
    </message>
    <message>
        <source>caliper</source>
        <translation>espesor</translation>
    </message>
    <message>
        <source>calipers in use</source>
        <translation>espesores en uso</translation>
    </message>
    <message>
        <source>cannot</source>
        <translation>no es posible</translation>
    </message>
    <message>
        <source>cells</source>
        <translation>celdas</translation>
    </message>
    <message>
        <source>centre mark on the lead edge, either way</source>
        <translation>marca central en el borde delantero, en cada sentido</translation>
    </message>
    <message>
        <source>change of speed</source>
        <translation>cambio de velocidad</translation>
    </message>
    <message>
        <source>circular pitch</source>
        <translation>paso circular</translation>
    </message>
    <message>
        <source>clamp %1</source>
        <translation>prensa %1</translation>
    </message>
    <message>
        <source>clamp on the press's side</source>
        <translation>prensa del lado de la máquina</translation>
    </message>
    <message>
        <source>clamp on the roll's side</source>
        <translation>prensa del lado de la bobina</translation>
    </message>
    <message>
        <source>clock set back</source>
        <translation>reloj atrasado</translation>
    </message>
    <message>
        <source>clock set forward</source>
        <translation>reloj adelantado</translation>
    </message>
    <message>
        <source>colour to colour, either way</source>
        <translation>color a color, en cada sentido</translation>
    </message>
    <message>
        <source>combined roughness</source>
        <translation>rugosidad combinada</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>práctica habitual, sin fuente</translation>
    </message>
    <message>
        <source>completed</source>
        <translation>terminada</translation>
    </message>
    <message>
        <source>completed, with deviations</source>
        <translation>terminada, con desviaciones</translation>
    </message>
    <message>
        <source>conforms</source>
        <translation>conforme</translation>
    </message>
    <message>
        <source>continues run %1</source>
        <translation>continúa la preparación %1</translation>
    </message>
    <message>
        <source>core</source>
        <translation>núcleo</translation>
    </message>
    <message>
        <source>core adapter</source>
        <translation>adaptador de núcleo</translation>
    </message>
    <message>
        <source>core inner diameter</source>
        <translation>diámetro interior del núcleo</translation>
    </message>
    <message>
        <source>core, inner diameter</source>
        <translation>núcleo, diámetro interior</translation>
    </message>
    <message>
        <source>corrected</source>
        <translation>corregido</translation>
    </message>
    <message>
        <source>corrected by %1, to be reviewed</source>
        <translation>corregida por %1, por revisar</translation>
    </message>
    <message>
        <source>corrected: %1</source>
        <translation>corregido: %1</translation>
    </message>
    <message>
        <source>count</source>
        <translation>cantidad</translation>
    </message>
    <message>
        <source>count inside</source>
        <translation>cantidad contenida</translation>
    </message>
    <message>
        <source>countersigned by %1</source>
        <translation>refrendada por %1</translation>
    </message>
    <message>
        <source>coverage</source>
        <translation>cobertura</translation>
    </message>
    <message>
        <source>crawl speed</source>
        <translation>velocidad de marcha lenta</translation>
    </message>
    <message>
        <source>customer's item</source>
        <translation>artículo del cliente</translation>
    </message>
    <message>
        <source>cut out of square across the web</source>
        <translation>corte fuera de escuadra a lo ancho de la banda</translation>
    </message>
    <message>
        <source>cylinders</source>
        <translation>cilindros</translation>
    </message>
    <message>
        <source>dancer at rest, share of its travel at least</source>
        <translation>bailarín en reposo, parte de su recorrido como mínimo</translation>
    </message>
    <message>
        <source>dancer at rest, share of its travel at most</source>
        <translation>bailarín en reposo, parte de su recorrido como máximo</translation>
    </message>
    <message>
        <source>date</source>
        <translation>fecha</translation>
    </message>
    <message>
        <source>deceleration</source>
        <translation>deceleración</translation>
    </message>
    <message>
        <source>definition</source>
        <translation>definición</translation>
    </message>
    <message>
        <source>density</source>
        <translation>densidad</translation>
    </message>
    <message>
        <source>density of the ink</source>
        <translation>densidad de la tinta</translation>
    </message>
    <message>
        <source>deviation accepted</source>
        <translation>desviación aceptada</translation>
    </message>
    <message>
        <source>diameter</source>
        <translation>diámetro</translation>
    </message>
    <message>
        <source>diameter after</source>
        <translation>diámetro después</translation>
    </message>
    <message>
        <source>diameter at the start</source>
        <translation>diámetro al inicio</translation>
    </message>
    <message>
        <source>diameter before</source>
        <translation>diámetro antes</translation>
    </message>
    <message>
        <source>diameter measured</source>
        <translation>diámetro medido</translation>
    </message>
    <message>
        <source>diameter measured, or told to a drive, against the one computed with, either way</source>
        <translation>diámetro medido, o indicado a un accionamiento, frente al usado en el cálculo, en cada sentido</translation>
    </message>
    <message>
        <source>diameter of one roller</source>
        <translation>diámetro de un rodillo</translation>
    </message>
    <message>
        <source>diameter of the other</source>
        <translation>diámetro del otro</translation>
    </message>
    <message>
        <source>diametral pitch</source>
        <translation>paso diametral</translation>
    </message>
    <message>
        <source>die to print, either way</source>
        <translation>troquel a impresión, en cada sentido</translation>
    </message>
    <message>
        <source>distance between centres</source>
        <translation>distancia entre centros</translation>
    </message>
    <message>
        <source>do it</source>
        <translation>hacerlo</translation>
    </message>
    <message>
        <source>does not apply</source>
        <translation>no procede</translation>
    </message>
    <message>
        <source>does not belong</source>
        <translation>no encaja</translation>
    </message>
    <message>
        <source>done</source>
        <translation>hecho</translation>
    </message>
    <message>
        <source>done or read</source>
        <translation>hecho o leído</translation>
    </message>
    <message>
        <source>downwards</source>
        <translation>hacia abajo</translation>
    </message>
    <message>
        <source>draw = (e2 - e1) / (1 + e1)</source>
        <translation>estirado = (e2 - e1) / (1 + e1)</translation>
    </message>
    <message>
        <source>drive-side frame</source>
        <translation>bastidor del lado transmisión</translation>
    </message>
    <message>
        <source>drive-side sensor</source>
        <translation>sensor del lado transmisión</translation>
    </message>
    <message>
        <source>drive-side sensor of guide %1</source>
        <translation>sensor del lado transmisión del guiador %1</translation>
    </message>
    <message>
        <source>drive-side sensor of the guide</source>
        <translation>sensor del lado transmisión del guiador</translation>
    </message>
    <message>
        <source>dryer</source>
        <translation>secador</translation>
    </message>
    <message>
        <source>early shift (6 to 14)</source>
        <translation>turno de mañana (6 a 14)</translation>
    </message>
    <message>
        <source>efficiency</source>
        <translation>rendimiento</translation>
    </message>
    <message>
        <source>emergency stop over the measured time</source>
        <translation>paro de emergencia por encima del tiempo medido</translation>
    </message>
    <message>
        <source>emergency stop under the measured time</source>
        <translation>paro de emergencia por debajo del tiempo medido</translation>
    </message>
    <message>
        <source>employee</source>
        <translation>empleado</translation>
    </message>
    <message>
        <source>empty core</source>
        <translation>núcleo vacío</translation>
    </message>
    <message>
        <source>enough</source>
        <translation>basta</translation>
    </message>
    <message>
        <source>enough when U - u &gt;= N, probably when U &gt;= N, else no</source>
        <translation>basta si U - u &gt;= N, probable si U &gt;= N, si no, no</translation>
    </message>
    <message>
        <source>entered</source>
        <translation>introducido</translation>
    </message>
    <message>
        <source>equal spans</source>
        <translation>tramos iguales</translation>
    </message>
    <message>
        <source>every press</source>
        <translation>todas las máquinas</translation>
    </message>
    <message>
        <source>external and set_up say two different things.</source>
        <translation>external y set_up dicen dos cosas distintas.</translation>
    </message>
    <message>
        <source>face in</source>
        <translation>cara hacia dentro</translation>
    </message>
    <message>
        <source>face out</source>
        <translation>cara hacia fuera</translation>
    </message>
    <message>
        <source>fall of the air supply while nips close, at most</source>
        <translation>caída de la presión de aire al cerrar los nips, como máximo</translation>
    </message>
    <message>
        <source>film label stock without a maker's range, at least</source>
        <translation>material de etiquetas de película sin rango del fabricante, como mínimo</translation>
    </message>
    <message>
        <source>film label stock without a maker's range, at most</source>
        <translation>material de etiquetas de película sin rango del fabricante, como máximo</translation>
    </message>
    <message>
        <source>finds this run</source>
        <translation>lleva a esta preparación</translation>
    </message>
    <message>
        <source>finished diameter</source>
        <translation>diámetro terminado</translation>
    </message>
    <message>
        <source>first run of the job %1</source>
        <translation>primera preparación del trabajo %1</translation>
    </message>
    <message>
        <source>first run with the substrate %1</source>
        <translation>primera preparación con el sustrato %1</translation>
    </message>
    <message>
        <source>follows from B1</source>
        <translation>se deduce de B1</translation>
    </message>
    <message>
        <source>follows from B1 and V5</source>
        <translation>se deduce de B1 y V5</translation>
    </message>
    <message>
        <source>follows from D2</source>
        <translation>se deduce de D2</translation>
    </message>
    <message>
        <source>follows from G3</source>
        <translation>se deduce de G3</translation>
    </message>
    <message>
        <source>follows from G5</source>
        <translation>se deduce de G5</translation>
    </message>
    <message>
        <source>follows from G8, mean over the width</source>
        <translation>se deduce de G8, media en todo el ancho</translation>
    </message>
    <message>
        <source>found</source>
        <translation>encontrado</translation>
    </message>
    <message>
        <source>found at the roll</source>
        <translation>hallado en la bobina</translation>
    </message>
    <message>
        <source>four fifths of the highest, or what the starting range keeps: policy</source>
        <translation>cuatro quintos del máximo, o lo que mantiene el rango de partida: normas</translation>
    </message>
    <message>
        <source>frame from which this press is measured</source>
        <translation>bastidor desde el que se mide esta máquina</translation>
    </message>
    <message>
        <source>free practice</source>
        <translation>práctica libre</translation>
    </message>
    <message>
        <source>friction</source>
        <translation>rozamiento</translation>
    </message>
    <message>
        <source>friction of the lining</source>
        <translation>rozamiento del forro</translation>
    </message>
    <message>
        <source>from %1</source>
        <translation>de %1</translation>
    </message>
    <message>
        <source>from %1 to %2</source>
        <translation>de %1 a %2</translation>
    </message>
    <message>
        <source>from %1 to %2: %3</source>
        <translation>de %1 a %2: %3</translation>
    </message>
    <message>
        <source>from UTC%1 to UTC%2; what follows stands in the order in which it happened</source>
        <translation>de UTC%1 a UTC%2; lo que sigue está en el orden en que ocurrió</translation>
    </message>
    <message>
        <source>from memory: Lee, Kang, Kim, Shin 2009, S35</source>
        <translation>de memoria: Lee, Kang, Kim, Shin 2009, S35</translation>
    </message>
    <message>
        <source>from underneath</source>
        <translation>por abajo</translation>
    </message>
    <message>
        <source>full set-up</source>
        <translation>preparación completa</translation>
    </message>
    <message>
        <source>gap between butted edges</source>
        <translation>separación entre bordes a tope</translation>
    </message>
    <message>
        <source>geometry</source>
        <translation>geometría</translation>
    </message>
    <message>
        <source>geometry, S67</source>
        <translation>geometría, S67</translation>
    </message>
    <message>
        <source>grammage</source>
        <translation>gramaje</translation>
    </message>
    <message>
        <source>guarded acceptance, ILAC-G8:09/2019 4.2.3, guard band U (k = 2): inside, near, outside; limits are never widened, and how well a target is known moves none</source>
        <translation>aceptación con banda de guarda, ILAC-G8:09/2019 4.2.3, banda de guarda U (k = 2): dentro, cerca del límite, fuera; los límites nunca se amplían, y lo bien que se conoce un valor objetivo no mueve ninguno</translation>
    </message>
    <message>
        <source>guide</source>
        <translation>guiador</translation>
    </message>
    <message>
        <source>guide %1</source>
        <translation>guiador %1</translation>
    </message>
    <message>
        <source>guide at rest after a proving run, share of its stroke either way</source>
        <translation>guiador en reposo tras una marcha de prueba, parte de su recorrido en cada sentido</translation>
    </message>
    <message>
        <source>half of %1</source>
        <translation>mitad de %1</translation>
    </message>
    <message>
        <source>half of roll.core</source>
        <translation>mitad de roll.core</translation>
    </message>
    <message>
        <source>half of roll.stripped_diameter</source>
        <translation>mitad de roll.stripped_diameter</translation>
    </message>
    <message>
        <source>half of the core</source>
        <translation>mitad del núcleo</translation>
    </message>
    <message>
        <source>half of the core's outside</source>
        <translation>mitad del exterior del núcleo</translation>
    </message>
    <message>
        <source>half of the diameter</source>
        <translation>mitad del diámetro</translation>
    </message>
    <message>
        <source>half of the width</source>
        <translation>mitad del ancho</translation>
    </message>
    <message>
        <source>half the window: common practice, no source</source>
        <translation>mitad del margen: práctica habitual, sin fuente</translation>
    </message>
    <message>
        <source>handed over</source>
        <translation>entregada a otro</translation>
    </message>
    <message>
        <source>has no air</source>
        <translation>no tiene aire</translation>
    </message>
    <message>
        <source>has tape or web that stands over</source>
        <translation>tiene cinta o banda que sobresale</translation>
    </message>
    <message>
        <source>held by %1</source>
        <translation>mantenido por %1</translation>
    </message>
    <message>
        <source>highest tension per width</source>
        <translation>tensión máxima por ancho</translation>
    </message>
    <message>
        <source>how far a slit width may lie from its label</source>
        <translation>cuánto puede diferir un ancho de corte de su etiqueta</translation>
    </message>
    <message>
        <source>how far the wound caliper may lie from the data</source>
        <translation>cuánto puede diferir el espesor enrollado del dato</translation>
    </message>
    <message>
        <source>how the finished roll is wound</source>
        <translation>cómo está enrollada la bobina terminada</translation>
    </message>
    <message>
        <source>how the job's finished roll is wound</source>
        <translation>cómo se enrolla la bobina terminada del trabajo</translation>
    </message>
    <message>
        <source>how the roll is wound</source>
        <translation>cómo está enrollada la bobina</translation>
    </message>
    <message>
        <source>how this press has its rolls, face in</source>
        <translation>cómo tiene esta máquina sus bobinas, cara dentro</translation>
    </message>
    <message>
        <source>how this press has its rolls, face out</source>
        <translation>cómo tiene esta máquina sus bobinas, cara fuera</translation>
    </message>
    <message>
        <source>how well a brake's torque per setting is known until it was fitted</source>
        <translation>con qué certeza se conoce el par de un freno por ajuste hasta que se determinó</translation>
    </message>
    <message>
        <source>how well a friction is known</source>
        <translation>con qué certeza se conoce un rozamiento</translation>
    </message>
    <message>
        <source>how well a grammage is known</source>
        <translation>con qué certeza se conoce un gramaje</translation>
    </message>
    <message>
        <source>how well a length on a label is known</source>
        <translation>con qué certeza se conoce la longitud de una etiqueta</translation>
    </message>
    <message>
        <source>how well a modulus is known</source>
        <translation>con qué certeza se conoce un módulo</translation>
    </message>
    <message>
        <source>how well a roll is weighed</source>
        <translation>con qué certeza se pesa una bobina</translation>
    </message>
    <message>
        <source>how well a roll's diameter is measured</source>
        <translation>con qué certeza se mide el diámetro de una bobina</translation>
    </message>
    <message>
        <source>how well the two lengths are known</source>
        <translation>con qué certeza se conocen las dos longitudes</translation>
    </message>
    <message>
        <source>idle speed</source>
        <translation>velocidad en vacío</translation>
    </message>
    <message>
        <source>in</source>
        <translation>in</translation>
    </message>
    <message>
        <source>in time</source>
        <translation>a tiempo</translation>
    </message>
    <message>
        <source>ink</source>
        <translation>tinta</translation>
    </message>
    <message>
        <source>inner radius</source>
        <translation>radio interior</translation>
    </message>
    <message>
        <source>inside</source>
        <translation>dentro</translation>
    </message>
    <message>
        <source>inside of the core</source>
        <translation>interior del núcleo</translation>
    </message>
    <message>
        <source>interrupted</source>
        <translation>interrumpida</translation>
    </message>
    <message>
        <source>interrupted, not ended</source>
        <translation>interrumpida, sin terminar</translation>
    </message>
    <message>
        <source>is at the press</source>
        <translation>está en la máquina</translation>
    </message>
    <message>
        <source>is calibrated</source>
        <translation>está calibrado</translation>
    </message>
    <message>
        <source>is clean</source>
        <translation>está limpio</translation>
    </message>
    <message>
        <source>is closed</source>
        <translation>está cerrado</translation>
    </message>
    <message>
        <source>is held</source>
        <translation>se mantiene</translation>
    </message>
    <message>
        <source>is hung</source>
        <translation>está colgada</translation>
    </message>
    <message>
        <source>is inflated</source>
        <translation>está inflado</translation>
    </message>
    <message>
        <source>is latched</source>
        <translation>está enclavado</translation>
    </message>
    <message>
        <source>is let go</source>
        <translation>está suelto</translation>
    </message>
    <message>
        <source>is not calibrated</source>
        <translation>no está calibrado</translation>
    </message>
    <message>
        <source>is not held</source>
        <translation>no se mantiene</translation>
    </message>
    <message>
        <source>is not hung</source>
        <translation>no está colgada</translation>
    </message>
    <message>
        <source>is not on the core</source>
        <translation>no está en el núcleo</translation>
    </message>
    <message>
        <source>is not reset</source>
        <translation>no está rearmado</translation>
    </message>
    <message>
        <source>is not taped</source>
        <translation>no está pegado</translation>
    </message>
    <message>
        <source>is not there</source>
        <translation>no está</translation>
    </message>
    <message>
        <source>is off</source>
        <translation>está desconectado</translation>
    </message>
    <message>
        <source>is on</source>
        <translation>está conectado</translation>
    </message>
    <message>
        <source>is on the core</source>
        <translation>está en el núcleo</translation>
    </message>
    <message>
        <source>is on the floor</source>
        <translation>está en el suelo</translation>
    </message>
    <message>
        <source>is on the roll</source>
        <translation>está en la bobina</translation>
    </message>
    <message>
        <source>is open</source>
        <translation>está abierto</translation>
    </message>
    <message>
        <source>is open over the web</source>
        <translation>está abierto sobre la banda</translation>
    </message>
    <message>
        <source>is out</source>
        <translation>está fuera</translation>
    </message>
    <message>
        <source>is parked</source>
        <translation>está aparcado</translation>
    </message>
    <message>
        <source>is released</source>
        <translation>está desenclavado</translation>
    </message>
    <message>
        <source>is rising</source>
        <translation>está subiendo</translation>
    </message>
    <message>
        <source>is shut</source>
        <translation>está cerrado</translation>
    </message>
    <message>
        <source>is taped</source>
        <translation>está pegado</translation>
    </message>
    <message>
        <source>it can be read to %1 either way, and the limit is closer than that</source>
        <translation>puede leerse con %1 en cada sentido, y el límite está más cerca que eso</translation>
    </message>
    <message>
        <source>it can be read to %1 either way, more than half of the window</source>
        <translation>puede leerse con %1 en cada sentido, más de la mitad del margen</translation>
    </message>
    <message>
        <source>it was interrupted</source>
        <translation>se interrumpió</translation>
    </message>
    <message>
        <source>item</source>
        <translation>artículo</translation>
    </message>
    <message>
        <source>item inside</source>
        <translation>artículo contenido</translation>
    </message>
    <message>
        <source>its first nip</source>
        <translation>su primer nip</translation>
    </message>
    <message>
        <source>job %1, edition %2</source>
        <translation>trabajo %1, edición %2</translation>
    </message>
    <message>
        <source>job.length times the width</source>
        <translation>job.length por el ancho</translation>
    </message>
    <message>
        <source>k v, at least vi, at most vm</source>
        <translation>k v, como mínimo vi, como máximo vm</translation>
    </message>
    <message>
        <source>labels across the web</source>
        <translation>etiquetas a lo ancho de la banda</translation>
    </message>
    <message>
        <source>labels around the repeat</source>
        <translation>etiquetas en el desarrollo</translation>
    </message>
    <message>
        <source>labels wanted</source>
        <translation>etiquetas pedidas</translation>
    </message>
    <message>
        <source>largest core held</source>
        <translation>núcleo máximo sujeto</translation>
    </message>
    <message>
        <source>largest speed</source>
        <translation>velocidad máxima</translation>
    </message>
    <message>
        <source>largest strain</source>
        <translation>alargamiento máximo</translation>
    </message>
    <message>
        <source>late shift (14 to 22)</source>
        <translation>turno de tarde (14 a 22)</translation>
    </message>
    <message>
        <source>least</source>
        <translation>mínimo</translation>
    </message>
    <message>
        <source>leaves its range</source>
        <translation>sale de su rango</translation>
    </message>
    <message>
        <source>left alone</source>
        <translation>sin tocar</translation>
    </message>
    <message>
        <source>length</source>
        <translation>longitud</translation>
    </message>
    <message>
        <source>length of the path</source>
        <translation>longitud del recorrido</translation>
    </message>
    <message>
        <source>length of the roll</source>
        <translation>longitud de la bobina</translation>
    </message>
    <message>
        <source>length of the span</source>
        <translation>longitud del tramo</translation>
    </message>
    <message>
        <source>length of web</source>
        <translation>longitud de banda</translation>
    </message>
    <message>
        <source>length on the roll</source>
        <translation>longitud en la bobina</translation>
    </message>
    <message>
        <source>lies on the table</source>
        <translation>está en la mesa</translation>
    </message>
    <message>
        <source>lies there</source>
        <translation>está allí</translation>
    </message>
    <message>
        <source>lift pressure over the figure at which it should have moved, at most</source>
        <translation>presión del elevador por encima de la cifra en la que debió moverse, como máximo</translation>
    </message>
    <message>
        <source>limits of this press's profile</source>
        <translation>límites del perfil de esta máquina</translation>
    </message>
    <message>
        <source>limits provisional</source>
        <translation>límites provisionales</translation>
    </message>
    <message>
        <source>load cell with the web slack, share of its range either way</source>
        <translation>célula de carga con la banda floja, parte de su rango en cada sentido</translation>
    </message>
    <message>
        <source>local time changed</source>
        <translation>hora local cambiada</translation>
    </message>
    <message>
        <source>lookup</source>
        <translation>tabla</translation>
    </message>
    <message>
        <source>lot</source>
        <translation>lote</translation>
    </message>
    <message>
        <source>lowest tension per width</source>
        <translation>tensión mínima por ancho</translation>
    </message>
    <message>
        <source>lowest: %1; highest: %2</source>
        <translation>mínimo: %1; máximo: %2</translation>
    </message>
    <message>
        <source>m = roll + adapter + carriage</source>
        <translation>m = bobina + adaptador + carro</translation>
    </message>
    <message>
        <source>m = the largest of web + core, label + core and stated</source>
        <translation>m = el mayor de banda + núcleo, etiqueta + núcleo e indicado</translation>
    </message>
    <message>
        <source>made on</source>
        <translation>fabricado el</translation>
    </message>
    <message>
        <source>made safe first; steps to be said again: %1</source>
        <translation>asegurada primero; pasos por declarar de nuevo: %1</translation>
    </message>
    <message>
        <source>mass</source>
        <translation>masa</translation>
    </message>
    <message>
        <source>mass moved</source>
        <translation>masa movida</translation>
    </message>
    <message>
        <source>mass of a ream of 500 sheets</source>
        <translation>masa de una resma de 500 hojas</translation>
    </message>
    <message>
        <source>mass of the core</source>
        <translation>masa del núcleo</translation>
    </message>
    <message>
        <source>mass of the finished roll</source>
        <translation>masa de la bobina terminada</translation>
    </message>
    <message>
        <source>mass of the web</source>
        <translation>masa de la banda</translation>
    </message>
    <message>
        <source>mass of the web on the roll</source>
        <translation>masa de la banda en la bobina</translation>
    </message>
    <message>
        <source>measured again</source>
        <translation>medido de nuevo</translation>
    </message>
    <message>
        <source>measured by the run %1</source>
        <translation>medidas con la preparación %1</translation>
    </message>
    <message>
        <source>metric</source>
        <translation>métrico</translation>
    </message>
    <message>
        <source>middle of %1</source>
        <translation>centro de %1</translation>
    </message>
    <message>
        <source>module</source>
        <translation>módulo</translation>
    </message>
    <message>
        <source>modulus</source>
        <translation>módulo</translation>
    </message>
    <message>
        <source>moment of inertia</source>
        <translation>momento de inercia</translation>
    </message>
    <message>
        <source>more</source>
        <translation>más</translation>
    </message>
    <message>
        <source>most</source>
        <translation>máximo</translation>
    </message>
    <message>
        <source>mounting tape</source>
        <translation>cinta de montaje</translation>
    </message>
    <message>
        <source>n = (N - w) / (U - w), rounded up, at least 1</source>
        <translation>n = (N - w) / (U - w), redondeado hacia arriba, al menos 1</translation>
    </message>
    <message>
        <source>n equal lags of D5</source>
        <translation>n retardos iguales de D5</translation>
    </message>
    <message>
        <source>name</source>
        <translation>nombre</translation>
    </message>
    <message>
        <source>name of a party</source>
        <translation>nombre de una parte</translation>
    </message>
    <message>
        <source>near</source>
        <translation>cerca del límite</translation>
    </message>
    <message>
        <source>nearest that can be set</source>
        <translation>lo más cercano ajustable</translation>
    </message>
    <message>
        <source>nearest web tension that can be set</source>
        <translation>tensión de banda más cercana ajustable</translation>
    </message>
    <message>
        <source>net mass</source>
        <translation>masa neta</translation>
    </message>
    <message>
        <source>never</source>
        <translation>nunca</translation>
    </message>
    <message>
        <source>never below: the web would run off; 10 mm above at most: policy</source>
        <translation>nunca por debajo: la banda se saldría; 10 mm por encima como máximo: normas</translation>
    </message>
    <message>
        <source>next roll of the same job</source>
        <translation>bobina siguiente del mismo trabajo</translation>
    </message>
    <message>
        <source>night shift (22 to 6)</source>
        <translation>turno de noche (22 a 6)</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
    </message>
    <message>
        <source>no larger than before, and more than the core; %1</source>
        <translation>no mayor que antes, y más que el núcleo; %1</translation>
    </message>
    <message>
        <source>no limits: a figure to know, not to meet</source>
        <translation>sin límites: una cifra que conocer, no que cumplir</translation>
    </message>
    <message>
        <source>no procedure here has its step</source>
        <translation>ningún procedimiento de aquí tiene su paso</translation>
    </message>
    <message>
        <source>no.</source>
        <translation>núm.</translation>
    </message>
    <message>
        <source>nobody was at the screen</source>
        <translation>no había nadie ante la pantalla</translation>
    </message>
    <message>
        <source>none negative</source>
        <translation>ninguno negativo</translation>
    </message>
    <message>
        <source>not ended</source>
        <translation>sin terminar</translation>
    </message>
    <message>
        <source>not found</source>
        <translation>no encontrado</translation>
    </message>
    <message>
        <source>not in the newest runs</source>
        <translation>no en las preparaciones más recientes</translation>
    </message>
    <message>
        <source>not judged: what this draw is known to moves the tension through its whole window</source>
        <translation>no se juzga: lo que se conoce este estirado mueve la tensión por todo su margen</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>se desconoce</translation>
    </message>
    <message>
        <source>not known here</source>
        <translation>desconocido aquí</translation>
    </message>
    <message>
        <source>not known: %1</source>
        <translation>se desconoce: %1</translation>
    </message>
    <message>
        <source>not reviewed</source>
        <translation>sin revisar</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>todavía no</translation>
    </message>
    <message>
        <source>note</source>
        <translation>nota</translation>
    </message>
    <message>
        <source>now</source>
        <translation>ahora</translation>
    </message>
    <message>
        <source>now %1; steps to be done again: %2</source>
        <translation>ahora %1; pasos por repetir: %2</translation>
    </message>
    <message>
        <source>observed set-ups at this press that a competence wants, at least</source>
        <translation>preparaciones observadas en esta máquina que exige una competencia, como mínimo</translation>
    </message>
    <message>
        <source>of %1, by %2: %3</source>
        <translation>de %1, por %2: %3</translation>
    </message>
    <message>
        <source>off impression</source>
        <translation>fuera de impresión</translation>
    </message>
    <message>
        <source>only %1</source>
        <translation>solo %1</translation>
    </message>
    <message>
        <source>onto the core's top</source>
        <translation>sobre la parte de arriba del núcleo</translation>
    </message>
    <message>
        <source>onto the core's underside</source>
        <translation>sobre la parte de abajo del núcleo</translation>
    </message>
    <message>
        <source>open</source>
        <translation>abierto</translation>
    </message>
    <message>
        <source>operator</source>
        <translation>operador</translation>
    </message>
    <message>
        <source>operator-side frame</source>
        <translation>bastidor del lado operador</translation>
    </message>
    <message>
        <source>operator-side sensor</source>
        <translation>sensor del lado operador</translation>
    </message>
    <message>
        <source>operator-side sensor of guide %1</source>
        <translation>sensor del lado operador del guiador %1</translation>
    </message>
    <message>
        <source>operator-side sensor of the guide</source>
        <translation>sensor del lado operador del guiador</translation>
    </message>
    <message>
        <source>order</source>
        <translation>pedido</translation>
    </message>
    <message>
        <source>ordered width; policy rows job_width_under and job_width_over</source>
        <translation>ancho pedido; filas de normas job_width_under y job_width_over</translation>
    </message>
    <message>
        <source>other</source>
        <translation>otras</translation>
    </message>
    <message>
        <source>outer diameter</source>
        <translation>diámetro exterior</translation>
    </message>
    <message>
        <source>outer diameter of the core</source>
        <translation>diámetro exterior del núcleo</translation>
    </message>
    <message>
        <source>outer radius</source>
        <translation>radio exterior</translation>
    </message>
    <message>
        <source>outer radius of the core</source>
        <translation>radio exterior del núcleo</translation>
    </message>
    <message>
        <source>outer wraps taken off</source>
        <translation>vueltas exteriores quitadas</translation>
    </message>
    <message>
        <source>outer wraps to take off</source>
        <translation>vueltas exteriores por quitar</translation>
    </message>
    <message>
        <source>outside</source>
        <translation>fuera</translation>
    </message>
    <message>
        <source>outside of the core</source>
        <translation>exterior del núcleo</translation>
    </message>
    <message>
        <source>outside, doubtful</source>
        <translation>fuera, dudoso</translation>
    </message>
    <message>
        <source>over</source>
        <translation>por arriba</translation>
    </message>
    <message>
        <source>over, under</source>
        <translation>por arriba, por abajo</translation>
    </message>
    <message>
        <source>overdue</source>
        <translation>vencido</translation>
    </message>
    <message>
        <source>package</source>
        <translation>bulto</translation>
    </message>
    <message>
        <source>packed on</source>
        <translation>envasado el</translation>
    </message>
    <message>
        <source>paper label stock without a maker's range, at least</source>
        <translation>material de etiquetas de papel sin rango del fabricante, como mínimo</translation>
    </message>
    <message>
        <source>paper label stock without a maker's range, at most</source>
        <translation>material de etiquetas de papel sin rango del fabricante, como máximo</translation>
    </message>
    <message>
        <source>passed</source>
        <translation>superado</translation>
    </message>
    <message>
        <source>phase %1</source>
        <translation>fase %1</translation>
    </message>
    <message>
        <source>phase %1, limits provisional</source>
        <translation>fase %1, límites provisionales</translation>
    </message>
    <message>
        <source>phase %1: one reading</source>
        <translation>fase %1: una lectura</translation>
    </message>
    <message>
        <source>pistons</source>
        <translation>pistones</translation>
    </message>
    <message>
        <source>plate</source>
        <translation>plancha</translation>
    </message>
    <message>
        <source>plate and tape against the cylinder's undercut, either way</source>
        <translation>plancha y cinta frente al rebaje del cilindro, en cada sentido</translation>
    </message>
    <message>
        <source>plate and tape less the undercut</source>
        <translation>plancha y cinta menos el rebaje</translation>
    </message>
    <message>
        <source>plate thickness</source>
        <translation>espesor de la plancha</translation>
    </message>
    <message>
        <source>policy</source>
        <translation>normas</translation>
    </message>
    <message>
        <source>policy, from memory</source>
        <translation>normas, de memoria</translation>
    </message>
    <message>
        <source>policy, the web's own factor of S26</source>
        <translation>normas, el factor propio de la banda de S26</translation>
    </message>
    <message>
        <source>policy; 0.05 % typical, S92</source>
        <translation>normas; 0.05 % típico, S92</translation>
    </message>
    <message>
        <source>power cut</source>
        <translation>corte de corriente</translation>
    </message>
    <message>
        <source>present diameter</source>
        <translation>diámetro actual</translation>
    </message>
    <message>
        <source>press profile</source>
        <translation>perfil de la máquina</translation>
    </message>
    <message>
        <source>press returned</source>
        <translation>máquina devuelta al servicio</translation>
    </message>
    <message>
        <source>press withdrawn</source>
        <translation>máquina retirada del servicio</translation>
    </message>
    <message>
        <source>press withdrawn, not ended</source>
        <translation>máquina retirada del servicio, sin terminar</translation>
    </message>
    <message>
        <source>pressure above the one where torque begins</source>
        <translation>presión por encima de aquella en que empieza el par</translation>
    </message>
    <message>
        <source>printed repeat over ten against the gear's, either way</source>
        <translation>desarrollo impreso sobre diez frente al del engranaje, en cada sentido</translation>
    </message>
    <message>
        <source>probably</source>
        <translation>probable</translation>
    </message>
    <message>
        <source>procedure %1, edition %2</source>
        <translation>procedimiento %1, edición %2</translation>
    </message>
    <message>
        <source>profile of the press %1, edition %2</source>
        <translation>perfil de la máquina %1, edición %2</translation>
    </message>
    <message>
        <source>public tension tables for board, T3, at least the policy row table_spread either way of their middle</source>
        <translation>tablas públicas de tensiones para cartón, T3, al menos la fila de normas table_spread en cada sentido de su centro</translation>
    </message>
    <message>
        <source>public tension tables for paper, T3, at least the policy row table_spread either way of their middle</source>
        <translation>tablas públicas de tensiones para papel, T3, al menos la fila de normas table_spread en cada sentido de su centro</translation>
    </message>
    <message>
        <source>public tension tables, T2</source>
        <translation>tablas públicas de tensiones, T2</translation>
    </message>
    <message>
        <source>public tension tables, T2, the policy row table_spread either way</source>
        <translation>tablas públicas de tensiones, T2, la fila de normas table_spread en cada sentido</translation>
    </message>
    <message>
        <source>quantity</source>
        <translation>cantidad</translation>
    </message>
    <message>
        <source>r = P(n, v t / L), regularised lower incomplete gamma</source>
        <translation>r = P(n, v t / L), gamma incompleta inferior regularizada</translation>
    </message>
    <message>
        <source>r = T / range</source>
        <translation>r = T / rango</translation>
    </message>
    <message>
        <source>radius of one roller</source>
        <translation>radio de un rodillo</translation>
    </message>
    <message>
        <source>radius of the core's bore</source>
        <translation>radio del agujero del núcleo</translation>
    </message>
    <message>
        <source>radius of the lining</source>
        <translation>radio del forro</translation>
    </message>
    <message>
        <source>radius of the other</source>
        <translation>radio del otro</translation>
    </message>
    <message>
        <source>radius of the roll</source>
        <translation>radio de la bobina</translation>
    </message>
    <message>
        <source>radius of the roller</source>
        <translation>radio del rodillo</translation>
    </message>
    <message>
        <source>range of the load cell</source>
        <translation>rango de la célula de carga</translation>
    </message>
    <message>
        <source>re-web after a break</source>
        <translation>volver a enhebrar tras una rotura</translation>
    </message>
    <message>
        <source>read</source>
        <translation>leído</translation>
    </message>
    <message>
        <source>read again</source>
        <translation>leído de nuevo</translation>
    </message>
    <message>
        <source>read outside</source>
        <translation>leído fuera</translation>
    </message>
    <message>
        <source>read outside at first: %1</source>
        <translation>leído primero fuera: %1</translation>
    </message>
    <message>
        <source>reading of the sensor</source>
        <translation>lectura del sensor</translation>
    </message>
    <message>
        <source>reading with the web in view</source>
        <translation>lectura con la banda a la vista</translation>
    </message>
    <message>
        <source>reading with the web out of view</source>
        <translation>lectura con la banda fuera de la vista</translation>
    </message>
    <message>
        <source>reason</source>
        <translation>motivo</translation>
    </message>
    <message>
        <source>recorded</source>
        <translation>registrado</translation>
    </message>
    <message>
        <source>register adjuster from its mid mark at set-up, share of its reach either way</source>
        <translation>ajustador de registro desde su marca central al preparar, parte de su alcance en cada sentido</translation>
    </message>
    <message>
        <source>remark</source>
        <translation>observación</translation>
    </message>
    <message>
        <source>repeat</source>
        <translation>desarrollo</translation>
    </message>
    <message>
        <source>repeat by the gear</source>
        <translation>desarrollo según el engranaje</translation>
    </message>
    <message>
        <source>reserve at which the automatic stop acts</source>
        <translation>reserva en la que actúa el paro automático</translation>
    </message>
    <message>
        <source>reserve left on the core</source>
        <translation>reserva que queda en el núcleo</translation>
    </message>
    <message>
        <source>restart after a stand</source>
        <translation>reanudación tras una parada</translation>
    </message>
    <message>
        <source>result</source>
        <translation>resultado</translation>
    </message>
    <message>
        <source>resumed</source>
        <translation>reanudada</translation>
    </message>
    <message>
        <source>resumed, taken over</source>
        <translation>reanudada, asumida</translation>
    </message>
    <message>
        <source>reviewed</source>
        <translation>revisada</translation>
    </message>
    <message>
        <source>reviewed and accepted</source>
        <translation>revisada y aceptada</translation>
    </message>
    <message>
        <source>reviewed and sent back</source>
        <translation>revisada y devuelta</translation>
    </message>
    <message>
        <source>reviewed by %1</source>
        <translation>revisada por %1</translation>
    </message>
    <message>
        <source>roll as weighed</source>
        <translation>bobina según el peso</translation>
    </message>
    <message>
        <source>roll centre to the centreline where a guide follows, either way</source>
        <translation>centro de la bobina a la línea central donde sigue un guiador, en cada sentido</translation>
    </message>
    <message>
        <source>roll centre to the centreline where no guide follows, either way</source>
        <translation>centro de la bobina a la línea central donde no sigue ningún guiador, en cada sentido</translation>
    </message>
    <message>
        <source>roll changed</source>
        <translation>bobina cambiada</translation>
    </message>
    <message>
        <source>roll tag or delivery note</source>
        <translation>tarjeta de la bobina o nota de entrega</translation>
    </message>
    <message>
        <source>roll with its core</source>
        <translation>bobina con su núcleo</translation>
    </message>
    <message>
        <source>roll, adapter and carriage</source>
        <translation>bobina, adaptador y carro</translation>
    </message>
    <message>
        <source>roll, core and carriage</source>
        <translation>bobina, núcleo y carro</translation>
    </message>
    <message>
        <source>roll.length times width and grammage</source>
        <translation>roll.length por ancho y gramaje</translation>
    </message>
    <message>
        <source>roll.length times width and grammage, + core</source>
        <translation>roll.length por ancho y gramaje, + núcleo</translation>
    </message>
    <message>
        <source>roll.mass - roll.core_mass</source>
        <translation>roll.mass - roll.core_mass</translation>
    </message>
    <message>
        <source>roll.splices not given: none</source>
        <translation>roll.splices no indicado: ninguno</translation>
    </message>
    <message>
        <source>roll.width by the lanes of job.across that this rewind takes</source>
        <translation>roll.width entre las pistas de job.across que toma este rebobinador</translation>
    </message>
    <message>
        <source>roll.width over the product rewinds</source>
        <translation>roll.width entre los rebobinadores de producto</translation>
    </message>
    <message>
        <source>rolling friction</source>
        <translation>rozamiento de rodadura</translation>
    </message>
    <message>
        <source>rolls planned</source>
        <translation>bobinas previstas</translation>
    </message>
    <message>
        <source>roughness and substrate.roughness</source>
        <translation>roughness y substrate.roughness</translation>
    </message>
    <message>
        <source>round %1</source>
        <translation>alrededor de %1</translation>
    </message>
    <message>
        <source>rule</source>
        <translation>regla</translation>
    </message>
    <message>
        <source>run abandoned</source>
        <translation>preparación abandonada</translation>
    </message>
    <message>
        <source>run begun</source>
        <translation>preparación empezada</translation>
    </message>
    <message>
        <source>run completed</source>
        <translation>preparación terminada</translation>
    </message>
    <message>
        <source>running strain</source>
        <translation>alargamiento en marcha</translation>
    </message>
    <message>
        <source>running tension</source>
        <translation>tensión en marcha</translation>
    </message>
    <message>
        <source>safety factor</source>
        <translation>factor de seguridad</translation>
    </message>
    <message>
        <source>said</source>
        <translation>declarado</translation>
    </message>
    <message>
        <source>said in vain</source>
        <translation>dicho en vano</translation>
    </message>
    <message>
        <source>screen</source>
        <translation>lineatura</translation>
    </message>
    <message>
        <source>seal</source>
        <translation>sello</translation>
    </message>
    <message>
        <source>sealed</source>
        <translation>sellada</translation>
    </message>
    <message>
        <source>sensor over the web's edge, either way</source>
        <translation>sensor sobre el borde de la banda, en cada sentido</translation>
    </message>
    <message>
        <source>sensor's reading from the middle of its window, either way</source>
        <translation>lectura del sensor desde el centro de su ventana, en cada sentido</translation>
    </message>
    <message>
        <source>sent back</source>
        <translation>devuelta</translation>
    </message>
    <message>
        <source>sent back by %1, to be corrected</source>
        <translation>devuelta por %1, por corregir</translation>
    </message>
    <message>
        <source>serial number</source>
        <translation>número de serie</translation>
    </message>
    <message>
        <source>set again</source>
        <translation>ajustado de nuevo</translation>
    </message>
    <message>
        <source>setting</source>
        <translation>ajuste</translation>
    </message>
    <message>
        <source>setting where torque begins</source>
        <translation>ajuste en el que empieza el par</translation>
    </message>
    <message>
        <source>share of a guide's stroke that an off-centre roll may take</source>
        <translation>parte del recorrido de un guiador que puede tomar una bobina descentrada</translation>
    </message>
    <message>
        <source>share of the anilox volume that reaches the web, at least</source>
        <translation>parte del volumen del anilox que llega a la banda, como mínimo</translation>
    </message>
    <message>
        <source>share of the anilox volume that reaches the web, at most</source>
        <translation>parte del volumen del anilox que llega a la banda, como máximo</translation>
    </message>
    <message>
        <source>share of the breaking strength that caps a tension</source>
        <translation>parte de la resistencia a la rotura que limita una tensión</translation>
    </message>
    <message>
        <source>share of the job's speed</source>
        <translation>parte de la velocidad del trabajo</translation>
    </message>
    <message>
        <source>share of the strength</source>
        <translation>parte de la resistencia</translation>
    </message>
    <message>
        <source>share that reaches the web</source>
        <translation>parte que llega a la banda</translation>
    </message>
    <message>
        <source>shift along the web</source>
        <translation>desplazamiento a lo largo de la banda</translation>
    </message>
    <message>
        <source>shipping unit</source>
        <translation>unidad de envío</translation>
    </message>
    <message>
        <source>should be</source>
        <translation>debe ser</translation>
    </message>
    <message>
        <source>sideways step at the joint</source>
        <translation>escalón lateral en la unión</translation>
    </message>
    <message>
        <source>signed as</source>
        <translation>firmado como</translation>
    </message>
    <message>
        <source>slit width</source>
        <translation>ancho de corte</translation>
    </message>
    <message>
        <source>smallest core held</source>
        <translation>núcleo mínimo sujeto</translation>
    </message>
    <message>
        <source>somebody else stopped the press</source>
        <translation>otra persona paró la máquina</translation>
    </message>
    <message>
        <source>span behind the guide</source>
        <translation>tramo detrás del guiador</translation>
    </message>
    <message>
        <source>span of the guide</source>
        <translation>tramo del guiador</translation>
    </message>
    <message>
        <source>speed after</source>
        <translation>velocidad después</translation>
    </message>
    <message>
        <source>speed before</source>
        <translation>velocidad antes</translation>
    </message>
    <message>
        <source>speed error</source>
        <translation>error de velocidad</translation>
    </message>
    <message>
        <source>speed of the job</source>
        <translation>velocidad del trabajo</translation>
    </message>
    <message>
        <source>speed of the proving run, share of the job's</source>
        <translation>velocidad de la marcha de prueba, parte de la del trabajo</translation>
    </message>
    <message>
        <source>speed of the web plus speed of the roller</source>
        <translation>velocidad de la banda más velocidad del rodillo</translation>
    </message>
    <message>
        <source>splice over running tension, at least</source>
        <translation>empalme frente a la tensión en marcha, como mínimo</translation>
    </message>
    <message>
        <source>splice over the worst tension in a stop, at least</source>
        <translation>empalme frente a la peor tensión en un paro, como mínimo</translation>
    </message>
    <message>
        <source>splice tape beyond the web's edge</source>
        <translation>cinta de empalme más allá del borde de la banda</translation>
    </message>
    <message>
        <source>splices</source>
        <translation>empalmes</translation>
    </message>
    <message>
        <source>splices inside</source>
        <translation>empalmes dentro</translation>
    </message>
    <message>
        <source>splices inside each</source>
        <translation>empalmes dentro de cada una</translation>
    </message>
    <message>
        <source>stage done again</source>
        <translation>etapa repetida</translation>
    </message>
    <message>
        <source>stands still</source>
        <translation>está quieto</translation>
    </message>
    <message>
        <source>stated</source>
        <translation>declarado</translation>
    </message>
    <message>
        <source>station %1</source>
        <translation>estación %1</translation>
    </message>
    <message>
        <source>steady swing of a dancer, share of its travel</source>
        <translation>oscilación constante de un bailarín, parte de su recorrido</translation>
    </message>
    <message>
        <source>step</source>
        <translation>paso</translation>
    </message>
    <message>
        <source>step response of y'' + f2 (v/L) y' + f1 (v/L)^2 y = f1 (v/L)^2</source>
        <translation>respuesta al escalón de y'' + f2 (v/L) y' + f1 (v/L)^2 y = f1 (v/L)^2</translation>
    </message>
    <message>
        <source>steps to be done again: %1</source>
        <translation>pasos por repetir: %1</translation>
    </message>
    <message>
        <source>stiffness number K L</source>
        <translation>número de rigidez K L</translation>
    </message>
    <message>
        <source>stiffness of the web, E w t</source>
        <translation>rigidez de la banda, E w t</translation>
    </message>
    <message>
        <source>stood</source>
        <translation>decía</translation>
    </message>
    <message>
        <source>stop given up</source>
        <translation>paro levantado</translation>
    </message>
    <message>
        <source>stop held</source>
        <translation>paro mantenido</translation>
    </message>
    <message>
        <source>stop still held by %1</source>
        <translation>paro aún mantenido por %1</translation>
    </message>
    <message>
        <source>strain after</source>
        <translation>alargamiento después</translation>
    </message>
    <message>
        <source>strain before</source>
        <translation>alargamiento antes</translation>
    </message>
    <message>
        <source>strain before the draw</source>
        <translation>alargamiento antes del estirado</translation>
    </message>
    <message>
        <source>strain of the web</source>
        <translation>alargamiento de la banda</translation>
    </message>
    <message>
        <source>strain that print may be made under</source>
        <translation>alargamiento con el que se puede imprimir</translation>
    </message>
    <message>
        <source>strain that print on polyethylene may be made under</source>
        <translation>alargamiento con el que se puede imprimir sobre polietileno</translation>
    </message>
    <message>
        <source>strain wanted</source>
        <translation>alargamiento deseado</translation>
    </message>
    <message>
        <source>strength per width</source>
        <translation>resistencia por ancho</translation>
    </message>
    <message>
        <source>stress along the web</source>
        <translation>tensión mecánica a lo largo de la banda</translation>
    </message>
    <message>
        <source>stroke each way</source>
        <translation>recorrido en cada sentido</translation>
    </message>
    <message>
        <source>substrate %1, edition %2</source>
        <translation>sustrato %1, edición %2</translation>
    </message>
    <message>
        <source>supervisor</source>
        <translation>supervisor</translation>
    </message>
    <message>
        <source>supplier</source>
        <translation>proveedor</translation>
    </message>
    <message>
        <source>supplier's item</source>
        <translation>artículo del proveedor</translation>
    </message>
    <message>
        <source>supplier's lot</source>
        <translation>lote del proveedor</translation>
    </message>
    <message>
        <source>swing of the displayed tension at steady speed, share of its mean</source>
        <translation>oscilación de la tensión mostrada a velocidad constante, parte de su media</translation>
    </message>
    <message>
        <source>swing of the displayed tension while speed changes, share of its mean</source>
        <translation>oscilación de la tensión mostrada mientras cambia la velocidad, parte de su media</translation>
    </message>
    <message>
        <source>table:T2, T3</source>
        <translation>table:T2, T3</translation>
    </message>
    <message>
        <source>tape</source>
        <translation>cinta</translation>
    </message>
    <message>
        <source>taper fraction</source>
        <translation>fracción de disminución (taper)</translation>
    </message>
    <message>
        <source>target</source>
        <translation>valor objetivo</translation>
    </message>
    <message>
        <source>target:roll.length - target:strip.length</source>
        <translation>target:roll.length - target:strip.length</translation>
    </message>
    <message>
        <source>target:roll.mass - core</source>
        <translation>target:roll.mass - núcleo</translation>
    </message>
    <message>
        <source>target:roll.usable uncertainty</source>
        <translation>incertidumbre de target:roll.usable</translation>
    </message>
    <message>
        <source>target:roll.web_mass + core</source>
        <translation>target:roll.web_mass + núcleo</translation>
    </message>
    <message>
        <source>teeth</source>
        <translation>dientes</translation>
    </message>
    <message>
        <source>tell the key points</source>
        <translation>decir los puntos clave</translation>
    </message>
    <message>
        <source>tell the reasons</source>
        <translation>decir los motivos</translation>
    </message>
    <message>
        <source>tell the steps</source>
        <translation>decir los pasos</translation>
    </message>
    <message>
        <source>tension</source>
        <translation>tensión</translation>
    </message>
    <message>
        <source>tension at the start</source>
        <translation>tensión al inicio</translation>
    </message>
    <message>
        <source>tension before</source>
        <translation>tensión antes</translation>
    </message>
    <message>
        <source>tension in the span at the start</source>
        <translation>tensión en el tramo al inicio</translation>
    </message>
    <message>
        <source>tension of the zone</source>
        <translation>tensión de la zona</translation>
    </message>
    <message>
        <source>tension per width</source>
        <translation>tensión por ancho</translation>
    </message>
    <message>
        <source>tension per width and thickness</source>
        <translation>tensión por ancho y espesor</translation>
    </message>
    <message>
        <source>tension to keep</source>
        <translation>tensión que mantener</translation>
    </message>
    <message>
        <source>test</source>
        <translation>prueba</translation>
    </message>
    <message>
        <source>the %1 setting</source>
        <translation>el ajuste: %1</translation>
    </message>
    <message>
        <source>the adjuster for register across the web</source>
        <translation>el ajustador de registro a lo ancho de la banda</translation>
    </message>
    <message>
        <source>the adjuster for register along the web</source>
        <translation>el ajustador de registro a lo largo de la banda</translation>
    </message>
    <message>
        <source>the air of the unwind shaft</source>
        <translation>el aire del eje del desbobinador</translation>
    </message>
    <message>
        <source>the air supply valve</source>
        <translation>la válvula de suministro de aire</translation>
    </message>
    <message>
        <source>the automatic stop at the end of the roll</source>
        <translation>el paro automático al final de la bobina</translation>
    </message>
    <message>
        <source>the control that calibrates the guide's sensors</source>
        <translation>el mando que calibra los sensores del guiador</translation>
    </message>
    <message>
        <source>the control that parks the lamps</source>
        <translation>el mando que pone las lámparas en reposo</translation>
    </message>
    <message>
        <source>the control that sets the guide to automatic</source>
        <translation>el mando que pone el guiador en automático</translation>
    </message>
    <message>
        <source>the control that sets the guide to its middle</source>
        <translation>el mando que pone el guiador en su centro</translation>
    </message>
    <message>
        <source>the copy was held up</source>
        <translation>la copia se retrasó</translation>
    </message>
    <message>
        <source>the feed that shows a face-out roll's face to the plates</source>
        <translation>la alimentación que muestra a las planchas la cara de una bobina cara hacia fuera</translation>
    </message>
    <message>
        <source>the finished roll then has its face inside, as the job wants it</source>
        <translation>la bobina terminada tiene así su cara por dentro, como pide el trabajo</translation>
    </message>
    <message>
        <source>the finished roll then has its face outside, as the job wants it</source>
        <translation>la bobina terminada tiene así su cara por fuera, como pide el trabajo</translation>
    </message>
    <message>
        <source>the guide's stroke each way</source>
        <translation>el recorrido del guiador en cada sentido</translation>
    </message>
    <message>
        <source>the hold-to-run button</source>
        <translation>el botón de mando sostenido</translation>
    </message>
    <message>
        <source>the infeed nip</source>
        <translation>el nip de entrada</translation>
    </message>
    <message>
        <source>the isolator, locked by your site's procedure</source>
        <translation>el seccionador, bloqueado según el procedimiento de su planta</translation>
    </message>
    <message>
        <source>the job's data</source>
        <translation>los datos del trabajo</translation>
    </message>
    <message>
        <source>the job's lanes</source>
        <translation>las pistas del trabajo</translation>
    </message>
    <message>
        <source>the job's width, %1</source>
        <translation>el ancho del trabajo, %1</translation>
    </message>
    <message>
        <source>the lift's down control</source>
        <translation>el mando de bajar del elevador</translation>
    </message>
    <message>
        <source>the lift's pressure regulator</source>
        <translation>el regulador de presión del elevador</translation>
    </message>
    <message>
        <source>the lift's up control</source>
        <translation>el mando de subir del elevador</translation>
    </message>
    <message>
        <source>the main disconnect</source>
        <translation>el seccionador principal</translation>
    </message>
    <message>
        <source>the material of this job, %1</source>
        <translation>el material de este trabajo, %1</translation>
    </message>
    <message>
        <source>the material's grammage, %1</source>
        <translation>el gramaje del material, %1</translation>
    </message>
    <message>
        <source>the middle of its travel</source>
        <translation>el centro de su recorrido</translation>
    </message>
    <message>
        <source>the ordinary stop button</source>
        <translation>el botón de paro normal</translation>
    </message>
    <message>
        <source>the outer diameter, once it is entered</source>
        <translation>el diámetro exterior, cuando esté introducido</translation>
    </message>
    <message>
        <source>the outfeed nip</source>
        <translation>el nip de salida</translation>
    </message>
    <message>
        <source>the page was left, the run kept open</source>
        <translation>se dejó la página, la preparación quedó abierta</translation>
    </message>
    <message>
        <source>the press's print side</source>
        <translation>el lado de impresión de la máquina</translation>
    </message>
    <message>
        <source>the profile does not say how often, or by which step</source>
        <translation>el perfil no dice cada cuánto, o con qué paso</translation>
    </message>
    <message>
        <source>the program ended</source>
        <translation>el programa terminó</translation>
    </message>
    <message>
        <source>the program ended, some time after what stands before; found now</source>
        <translation>el programa terminó, algún tiempo después de lo que consta antes; hallado ahora</translation>
    </message>
    <message>
        <source>the reset for the emergency stops</source>
        <translation>el rearme de los paros de emergencia</translation>
    </message>
    <message>
        <source>the roll's data</source>
        <translation>los datos de la bobina</translation>
    </message>
    <message>
        <source>the roller of the least r</source>
        <translation>el rodillo de menor r</translation>
    </message>
    <message>
        <source>the run</source>
        <translation>la preparación</translation>
    </message>
    <message>
        <source>the run button at idle speed</source>
        <translation>el botón de marcha a velocidad en vacío</translation>
    </message>
    <message>
        <source>the shaft's plate</source>
        <translation>la placa del eje</translation>
    </message>
    <message>
        <source>the system gives no random bytes</source>
        <translation>el sistema no da bytes aleatorios</translation>
    </message>
    <message>
        <source>the tolerance of the caliper</source>
        <translation>la tolerancia del espesor</translation>
    </message>
    <message>
        <source>the value on the sheet</source>
        <translation>el valor de la hoja</translation>
    </message>
    <message>
        <source>the web that fills the path stays in it</source>
        <translation>la banda que llena el recorrido se queda en él</translation>
    </message>
    <message>
        <source>the window of tension per width, times the width</source>
        <translation>el margen de la tensión por ancho, por el ancho</translation>
    </message>
    <message>
        <source>the window of the tension, through the same formula</source>
        <translation>el margen de la tensión, con la misma fórmula</translation>
    </message>
    <message>
        <source>the window of the tension, through the same formula, from where this control begins</source>
        <translation>el margen de la tensión, con la misma fórmula, desde donde empieza este mando</translation>
    </message>
    <message>
        <source>the window of the tension, through the same formula, to where this control ends</source>
        <translation>el margen de la tensión, con la misma fórmula, hasta donde termina este mando</translation>
    </message>
    <message>
        <source>the zone's tension</source>
        <translation>la tensión de la zona</translation>
    </message>
    <message>
        <source>these runs</source>
        <translation>estas preparaciones</translation>
    </message>
    <message>
        <source>thickness of the plate's base</source>
        <translation>espesor del soporte de la plancha</translation>
    </message>
    <message>
        <source>time</source>
        <translation>tiempo</translation>
    </message>
    <message>
        <source>time before it slows</source>
        <translation>tiempo hasta que empieza a frenar</translation>
    </message>
    <message>
        <source>time without setting this press up after which a competence ends</source>
        <translation>tiempo sin preparar esta máquina tras el que termina una competencia</translation>
    </message>
    <message>
        <source>to %1; steps to be said again: %2</source>
        <translation>a %1; pasos por declarar de nuevo: %2</translation>
    </message>
    <message>
        <source>to be done again</source>
        <translation>por repetir</translation>
    </message>
    <message>
        <source>to be looked at: %1</source>
        <translation>por mirar: %1</translation>
    </message>
    <message>
        <source>to be said again</source>
        <translation>por declarar de nuevo</translation>
    </message>
    <message>
        <source>torque</source>
        <translation>par</translation>
    </message>
    <message>
        <source>torque on the finished roll</source>
        <translation>par en la bobina terminada</translation>
    </message>
    <message>
        <source>torque on the roll</source>
        <translation>par en la bobina</translation>
    </message>
    <message>
        <source>torque per setting</source>
        <translation>par por ajuste</translation>
    </message>
    <message>
        <source>trainee</source>
        <translation>aprendiz</translation>
    </message>
    <message>
        <source>trainer</source>
        <translation>instructor</translation>
    </message>
    <message>
        <source>transport unit</source>
        <translation>unidad de transporte</translation>
    </message>
    <message>
        <source>travel of one press</source>
        <translation>avance por pulsación</translation>
    </message>
    <message>
        <source>travel ratio</source>
        <translation>relación de recorrido</translation>
    </message>
    <message>
        <source>treatment of film, at least</source>
        <translation>tratamiento de la película, como mínimo</translation>
    </message>
    <message>
        <source>true or false</source>
        <translation>true o false</translation>
    </message>
    <message>
        <source>turns of the finished roll at job speed</source>
        <translation>vueltas de la bobina terminada a la velocidad del trabajo</translation>
    </message>
    <message>
        <source>turns per time of the input</source>
        <translation>vueltas por tiempo de la entrada</translation>
    </message>
    <message>
        <source>turns per time of the roll</source>
        <translation>vueltas por tiempo de la bobina</translation>
    </message>
    <message>
        <source>twice job.speed</source>
        <translation>el doble de job.speed</translation>
    </message>
    <message>
        <source>twice substrate.splice_tape.shear</source>
        <translation>el doble de substrate.splice_tape.shear</translation>
    </message>
    <message>
        <source>twice substrate.splice_tape.strength</source>
        <translation>el doble de substrate.splice_tape.strength</translation>
    </message>
    <message>
        <source>u, where (e2 - e1) / (1 + e1) cannot be set</source>
        <translation>u, donde no se puede ajustar (e2 - e1) / (1 + e1)</translation>
    </message>
    <message>
        <source>under</source>
        <translation>por debajo</translation>
    </message>
    <message>
        <source>undercut</source>
        <translation>rebaje</translation>
    </message>
    <message>
        <source>upwards</source>
        <translation>hacia arriba</translation>
    </message>
    <message>
        <source>use by</source>
        <translation>usar antes de</translation>
    </message>
    <message>
        <source>value</source>
        <translation>valor</translation>
    </message>
    <message>
        <source>variant</source>
        <translation>variante</translation>
    </message>
    <message>
        <source>verdict</source>
        <translation>dictamen</translation>
    </message>
    <message>
        <source>viscosity of air</source>
        <translation>viscosidad del aire</translation>
    </message>
    <message>
        <source>vital</source>
        <translation>vital</translation>
    </message>
    <message>
        <source>void</source>
        <translation>anulada</translation>
    </message>
    <message>
        <source>void, by %1</source>
        <translation>anulada por %1</translation>
    </message>
    <message>
        <source>voided</source>
        <translation>anulada</translation>
    </message>
    <message>
        <source>wait = "%1" is not a time.</source>
        <translation>wait = "%1" no es un tiempo.</translation>
    </message>
    <message>
        <source>wall of a core that nobody has measured, at least</source>
        <translation>pared de un núcleo que nadie ha medido, como mínimo</translation>
    </message>
    <message>
        <source>wall of a core that nobody has measured, at most</source>
        <translation>pared de un núcleo que nadie ha medido, como máximo</translation>
    </message>
    <message>
        <source>was not started</source>
        <translation>no se ha puesto en marcha</translation>
    </message>
    <message>
        <source>was not wiped</source>
        <translation>no se limpió</translation>
    </message>
    <message>
        <source>was reset</source>
        <translation>está rearmado</translation>
    </message>
    <message>
        <source>was started</source>
        <translation>está en marcha</translation>
    </message>
    <message>
        <source>was wiped</source>
        <translation>se limpió</translation>
    </message>
    <message>
        <source>waste</source>
        <translation>desperdicio</translation>
    </message>
    <message>
        <source>watched too short</source>
        <translation>observado muy poco tiempo</translation>
    </message>
    <message>
        <source>web break</source>
        <translation>rotura de banda</translation>
    </message>
    <message>
        <source>web centreline from the frame face</source>
        <translation>línea central de la banda desde la cara del bastidor</translation>
    </message>
    <message>
        <source>web drawn at idle</source>
        <translation>banda pasada en vacío</translation>
    </message>
    <message>
        <source>web for the labels, waste included</source>
        <translation>banda para las etiquetas, desperdicio incluido</translation>
    </message>
    <message>
        <source>web lost at a splice</source>
        <translation>banda perdida en un empalme</translation>
    </message>
    <message>
        <source>web lost at the joint to the next roll and inside it</source>
        <translation>banda perdida en la unión con la bobina siguiente y dentro de ella</translation>
    </message>
    <message>
        <source>web narrower than ordered, at most</source>
        <translation>banda más estrecha que la pedida, como máximo</translation>
    </message>
    <message>
        <source>web of this roll that can be run</source>
        <translation>banda de esta bobina que se puede correr</translation>
    </message>
    <message>
        <source>web on the roll</source>
        <translation>banda en la bobina</translation>
    </message>
    <message>
        <source>web on the roll, by the diameters</source>
        <translation>banda en la bobina, por los diámetros</translation>
    </message>
    <message>
        <source>web on the roll, by the label's length</source>
        <translation>banda en la bobina, por la longitud de la etiqueta</translation>
    </message>
    <message>
        <source>web speed</source>
        <translation>velocidad de la banda</translation>
    </message>
    <message>
        <source>web that a set-up is taken to use where the job says nothing</source>
        <translation>banda que se supone que gasta una puesta a punto si el trabajo no dice nada</translation>
    </message>
    <message>
        <source>web that fills the path</source>
        <translation>banda que llena el recorrido</translation>
    </message>
    <message>
        <source>web that make-ready takes</source>
        <translation>banda que consume la puesta a punto</translation>
    </message>
    <message>
        <source>web that the proving run at idle draws</source>
        <translation>banda que pasa la marcha de prueba en vacío</translation>
    </message>
    <message>
        <source>web the job needs</source>
        <translation>banda que necesita el trabajo</translation>
    </message>
    <message>
        <source>web wander at steady speed, either way</source>
        <translation>deriva lateral de la banda a velocidad constante, en cada sentido</translation>
    </message>
    <message>
        <source>web wider than ordered, at most</source>
        <translation>banda más ancha que la pedida, como máximo</translation>
    </message>
    <message>
        <source>web width</source>
        <translation>ancho de banda</translation>
    </message>
    <message>
        <source>were not looked at</source>
        <translation>no se han revisado</translation>
    </message>
    <message>
        <source>were not set</source>
        <translation>no se pusieron a cero</translation>
    </message>
    <message>
        <source>were set</source>
        <translation>se pusieron a cero</translation>
    </message>
    <message>
        <source>what</source>
        <translation>qué</translation>
    </message>
    <message>
        <source>what a laminate wants besides</source>
        <translation>lo que pide además un laminado</translation>
    </message>
    <message>
        <source>what helped</source>
        <translation>qué ayudó</translation>
    </message>
    <message>
        <source>what the brake may turn into heat</source>
        <translation>lo que el freno puede convertir en calor</translation>
    </message>
    <message>
        <source>what the clutch may turn into heat</source>
        <translation>lo que el embrague puede convertir en calor</translation>
    </message>
    <message>
        <source>what the guide can shift this web each way</source>
        <translation>lo que el guiador puede desplazar esta banda en cada sentido</translation>
    </message>
    <message>
        <source>what the guide has to make good</source>
        <translation>lo que el guiador tiene que corregir</translation>
    </message>
    <message>
        <source>what the lift moves with the roll</source>
        <translation>lo que el elevador mueve con la bobina</translation>
    </message>
    <message>
        <source>what the lift or unwind is rated for</source>
        <translation>carga nominal del elevador o desbobinador</translation>
    </message>
    <message>
        <source>what the mandrel grips</source>
        <translation>lo que sujeta el eje</translation>
    </message>
    <message>
        <source>what the outer diameter of %1 gives</source>
        <translation>lo que da el diámetro exterior de %1</translation>
    </message>
    <message>
        <source>what the press takes, %1 to %2</source>
        <translation>lo que admite la máquina, %1 a %2</translation>
    </message>
    <message>
        <source>what the unwind holds, %1 to %2</source>
        <translation>lo que sujeta el desbobinador, %1 a %2</translation>
    </message>
    <message>
        <source>where</source>
        <translation>dónde</translation>
    </message>
    <message>
        <source>whether only who is competent at this press signs a set-up alone: 1 asks it, 0 does not</source>
        <translation>si solo firma a solas quien es competente en esta máquina: 1 lo exige, 0 no</translation>
    </message>
    <message>
        <source>width</source>
        <translation>ancho</translation>
    </message>
    <message>
        <source>winding</source>
        <translation>bobinado</translation>
    </message>
    <message>
        <source>winding and side equal: over, else under</source>
        <translation>bobinado y lado iguales: por arriba, si no, por abajo</translation>
    </message>
    <message>
        <source>winding not known</source>
        <translation>bobinado desconocido</translation>
    </message>
    <message>
        <source>window</source>
        <translation>margen</translation>
    </message>
    <message>
        <source>window of the sensor</source>
        <translation>ventana del sensor</translation>
    </message>
    <message>
        <source>with taper</source>
        <translation>con disminución (taper)</translation>
    </message>
    <message>
        <source>wrap angle</source>
        <translation>ángulo de abrazo</translation>
    </message>
    <message>
        <source>wrap angle on the dancer roller</source>
        <translation>ángulo de abrazo en el rodillo bailarín</translation>
    </message>
    <message>
        <source>wraps on the core</source>
        <translation>vueltas en el núcleo</translation>
    </message>
    <message>
        <source>wraps taken off</source>
        <translation>vueltas quitadas</translation>
    </message>
    <message>
        <source>wraps that this press wants on the core</source>
        <translation>vueltas que esta máquina pide en el núcleo</translation>
    </message>
    <message>
        <source>wrong roll</source>
        <translation>bobina equivocada</translation>
    </message>
    <message>
        <source>x = (longest - shortest) / longest</source>
        <translation>x = (máxima - mínima) / máxima</translation>
    </message>
    <message>
        <source>x = P - 10 R, P measured</source>
        <translation>x = P - 10 R, P medido</translation>
    </message>
    <message>
        <source>x = P - 10 R, P measured; it should be -10 s</source>
        <translation>x = P - 10 R, P medido; debe ser -10 s</translation>
    </message>
    <message>
        <source>x = c + side w / 2</source>
        <translation>x = c + lado w / 2</translation>
    </message>
    <message>
        <source>x = plate + tape - u</source>
        <translation>x = plancha + cinta - u</translation>
    </message>
    <message>
        <source>x, at most L / 3</source>
        <translation>x, como máximo L / 3</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
    <message>
        <source>yes when U &gt;= N</source>
        <translation>sí si U &gt;= N</translation>
    </message>
    <message>
        <source>yes when c is outside a to b and an adapter fits</source>
        <translation>sí si c está fuera de a a b y encaja un adaptador</translation>
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
        <translation>Lado operador: la banda corre a la derecha →</translation>
    </message>
    <message>
        <source>From the operator's side, ← the web runs left</source>
        <translation>Lado operador: ← la banda corre a la izquierda</translation>
    </message>
    <message>
        <source>Guards stand open at: %1.</source>
        <translation>Resguardos abiertos en: %1.</translation>
    </message>
    <message>
        <source>The profile has no roller positions to draw.</source>
        <translation>El perfil no tiene posiciones de rodillos que dibujar.</translation>
    </message>
    <message>
        <source>The web has an end behind: %1.</source>
        <translation>La banda tiene un cabo tras: %1.</translation>
    </message>
    <message>
        <source>The web is slack behind: %1.</source>
        <translation>La banda está floja tras: %1.</translation>
    </message>
    <message>
        <source>here</source>
        <translation>aquí</translation>
    </message>
    <message>
        <source>not hung yet</source>
        <translation>aún no colgada</translation>
    </message>
    <message>
        <source>on the lift</source>
        <translation>en el elevador</translation>
    </message>
    <message>
        <source>open</source>
        <translation>abierto</translation>
    </message>
    <message>
        <source>parted</source>
        <translation>partida</translation>
    </message>
    <message>
        <source>slack</source>
        <translation>floja</translation>
    </message>
</context>
<context>
    <name>families</name>
    <message>
        <source>Alignment</source>
        <translation>Alineación</translation>
    </message>
    <message>
        <source>Core and lift</source>
        <translation>Núcleo y elevador</translation>
    </message>
    <message>
        <source>Hand-over to inking</source>
        <translation>Entrega para entintar</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Trabajo</translation>
    </message>
    <message>
        <source>Other</source>
        <translation>Otros</translation>
    </message>
    <message>
        <source>Roll</source>
        <translation>Bobina</translation>
    </message>
    <message>
        <source>Splice</source>
        <translation>Empalme</translation>
    </message>
    <message>
        <source>Stops</source>
        <translation>Paros</translation>
    </message>
    <message>
        <source>Tension</source>
        <translation>Tensión</translation>
    </message>
    <message>
        <source>Threading</source>
        <translation>Enhebrado</translation>
    </message>
    <message>
        <source>Web guide</source>
        <translation>Guiador de banda</translation>
    </message>
</context>
<context>
    <name>help</name>
    <message>
        <source>What could hurt, and what went before</source>
        <translation>Qué puede hacer daño, y qué hubo antes</translation>
    </message>
    <message>
        <source>What to do</source>
        <translation>Qué hacer</translation>
    </message>
    <message>
        <source>Where to stand</source>
        <translation>Dónde ponerse</translation>
    </message>
    <message>
        <source>Your answer</source>
        <translation>Su respuesta</translation>
    </message>
    <message>
        <source>accepted with a deviation</source>
        <translation>aceptado con una desviación</translation>
    </message>
    <message>
        <source>does not apply</source>
        <translation>no procede</translation>
    </message>
    <message>
        <source>done, or inside</source>
        <translation>hecho, o dentro</translation>
    </message>
    <message>
        <source>near a limit</source>
        <translation>cerca de un límite</translation>
    </message>
    <message>
        <source>not done yet</source>
        <translation>aún no hecho</translation>
    </message>
    <message>
        <source>outside</source>
        <translation>fuera</translation>
    </message>
    <message>
        <source>recorded, nothing to judge</source>
        <translation>anotado, nada que juzgar</translation>
    </message>
    <message>
        <source>to be done or said again</source>
        <translation>por hacer o decir otra vez</translation>
    </message>
</context>
<context>
    <name>language</name>
    <message>
        <source>As the press says</source>
        <translation>Como dice la máquina</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Idioma</translation>
    </message>
    <message>
        <source>Metric (mm, N, bar)</source>
        <translation>Métrico (mm, N, bar)</translation>
    </message>
    <message>
        <source>US (in, lbf, psi)</source>
        <translation>EE. UU. (in, lbf, psi)</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Unidades</translation>
    </message>
</context>
<context>
    <name>names</name>
    <message>
        <source>Another cause</source>
        <translation>Otra causa</translation>
    </message>
    <message>
        <source>Around the press</source>
        <translation>Alrededor de la máquina</translation>
    </message>
    <message>
        <source>At %1</source>
        <translation>En %1</translation>
    </message>
    <message>
        <source>At the control panel</source>
        <translation>En el panel de mando</translation>
    </message>
    <message>
        <source>At the main disconnect</source>
        <translation>En el seccionador principal</translation>
    </message>
    <message>
        <source>At the rewind</source>
        <translation>En el rebobinador</translation>
    </message>
    <message>
        <source>At the roll lift</source>
        <translation>En el elevador de bobinas</translation>
    </message>
    <message>
        <source>At the splice table</source>
        <translation>En la mesa de empalme</translation>
    </message>
    <message>
        <source>At the unwind</source>
        <translation>En el desbobinador</translation>
    </message>
    <message>
        <source>CAUTION</source>
        <translation>ATENCIÓN</translation>
    </message>
    <message>
        <source>DANGER</source>
        <translation>PELIGRO</translation>
    </message>
    <message>
        <source>Full set-up</source>
        <translation>Preparación completa</translation>
    </message>
    <message>
        <source>It was the wrong roll</source>
        <translation>Era la bobina equivocada</translation>
    </message>
    <message>
        <source>N/A</source>
        <translation>N/A</translation>
    </message>
    <message>
        <source>NOTICE</source>
        <translation>AVISO</translation>
    </message>
    <message>
        <source>Next roll of the same job</source>
        <translation>Siguiente bobina del mismo trabajo</translation>
    </message>
    <message>
        <source>Re-web after a break</source>
        <translation>Volver a enhebrar tras una rotura</translation>
    </message>
    <message>
        <source>Restart after a stand</source>
        <translation>Rearranque tras una parada</translation>
    </message>
    <message>
        <source>The web broke</source>
        <translation>Se rompió la banda</translation>
    </message>
    <message>
        <source>WARNING</source>
        <translation>ADVERTENCIA</translation>
    </message>
    <message>
        <source>a published table</source>
        <translation>una tabla publicada</translation>
    </message>
    <message>
        <source>an alarm limit: within it nothing is proved</source>
        <translation>un límite de alarma: dentro de él nada está probado</translation>
    </message>
    <message>
        <source>blocked</source>
        <translation>bloqueado</translation>
    </message>
    <message>
        <source>cannot</source>
        <translation>no es posible</translation>
    </message>
    <message>
        <source>continuous slow crawl</source>
        <translation>marcha muy lenta continua</translation>
    </message>
    <message>
        <source>deviation</source>
        <translation>desviación</translation>
    </message>
    <message>
        <source>done</source>
        <translation>hecho</translation>
    </message>
    <message>
        <source>done, deviation</source>
        <translation>hecho, con desviación</translation>
    </message>
    <message>
        <source>face inside</source>
        <translation>cara hacia dentro</translation>
    </message>
    <message>
        <source>face outside</source>
        <translation>cara hacia fuera</translation>
    </message>
    <message>
        <source>fast crawl</source>
        <translation>marcha lenta rápida</translation>
    </message>
    <message>
        <source>from underneath</source>
        <translation>por abajo</translation>
    </message>
    <message>
        <source>in work</source>
        <translation>en curso</translation>
    </message>
    <message>
        <source>inside</source>
        <translation>dentro</translation>
    </message>
    <message>
        <source>limited inch</source>
        <translation>impulso limitado</translation>
    </message>
    <message>
        <source>missing</source>
        <translation>falta</translation>
    </message>
    <message>
        <source>near a limit</source>
        <translation>cerca de un límite</translation>
    </message>
    <message>
        <source>needs %1</source>
        <translation>necesita %1</translation>
    </message>
    <message>
        <source>never</source>
        <translation>nunca</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
    </message>
    <message>
        <source>no limits</source>
        <translation>sin límites</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguno</translation>
    </message>
    <message>
        <source>not begun</source>
        <translation>sin empezar</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>se desconoce</translation>
    </message>
    <message>
        <source>operator</source>
        <translation>operador</translation>
    </message>
    <message>
        <source>outside</source>
        <translation>fuera</translation>
    </message>
    <message>
        <source>outside every class</source>
        <translation>fuera de toda clase</translation>
    </message>
    <message>
        <source>outside, in doubt</source>
        <translation>fuera, en duda</translation>
    </message>
    <message>
        <source>over the top</source>
        <translation>por arriba</translation>
    </message>
    <message>
        <source>recorded</source>
        <translation>registrado</translation>
    </message>
    <message>
        <source>say again</source>
        <translation>por declarar de nuevo</translation>
    </message>
    <message>
        <source>slow crawl</source>
        <translation>marcha muy lenta</translation>
    </message>
    <message>
        <source>stale, do again</source>
        <translation>caducado, repetir</translation>
    </message>
    <message>
        <source>supervisor</source>
        <translation>supervisor</translation>
    </message>
    <message>
        <source>the job</source>
        <translation>el trabajo</translation>
    </message>
    <message>
        <source>the maker of the material</source>
        <translation>el fabricante del material</translation>
    </message>
    <message>
        <source>the policy of this shop</source>
        <translation>las normas de este taller</translation>
    </message>
    <message>
        <source>this press</source>
        <translation>esta máquina</translation>
    </message>
    <message>
        <source>to do</source>
        <translation>por hacer</translation>
    </message>
    <message>
        <source>trainee</source>
        <translation>aprendiz</translation>
    </message>
    <message>
        <source>trainer</source>
        <translation>instructor</translation>
    </message>
    <message>
        <source>true inch</source>
        <translation>impulso verdadero</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
</context>
<context>
    <name>print</name>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>blank sheet</source>
        <translation>hoja en blanco</translation>
    </message>
    <message>
        <source>name, date and time</source>
        <translation>nombre, fecha y hora</translation>
    </message>
    <message>
        <source>not sealed</source>
        <translation>sin sellar</translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation>página %1 de %2</translation>
    </message>
    <message>
        <source>run %1</source>
        <translation>preparación %1</translation>
    </message>
</context>
<context>
    <name>taut::app::AfterLesson</name>
    <message>
        <source>Back to the training record</source>
        <translation>Volver al registro de práctica</translation>
    </message>
    <message>
        <source>Back to what it came to</source>
        <translation>Volver al resultado</translation>
    </message>
    <message>
        <source>Begin again, the same</source>
        <translation>Empezar de nuevo, igual</translation>
    </message>
    <message>
        <source>Begin again, with other chances</source>
        <translation>Empezar de nuevo, con otros azares</translation>
    </message>
    <message>
        <source>It is being played anew…</source>
        <translation>Se está reproduciendo…</translation>
    </message>
    <message>
        <source>Look at the press again</source>
        <translation>Ver otra vez la máquina</translation>
    </message>
    <message>
        <source>Play</source>
        <translation>Reproducir</translation>
    </message>
    <message>
        <source>Played anew from its seed: the same, to the last figure.</source>
        <translation>Reproducido desde su número de azares: igual, hasta la última cifra.</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Detener</translation>
    </message>
    <message>
        <source>This version of the program reckons otherwise than the one that it was practised with: what is seen may differ.</source>
        <translation>Esta versión del programa calcula de otro modo que aquella con la que se practicó: lo que se ve puede diferir.</translation>
    </message>
    <message>
        <source>Time in the lesson</source>
        <translation>Tiempo en el ejercicio</translation>
    </message>
    <message>
        <source>To the scenarios</source>
        <translation>A los escenarios</translation>
    </message>
    <message>
        <source>What it went by cannot be read any more.</source>
        <translation>Ya no se puede leer aquello en que se basó.</translation>
    </message>
    <message>
        <source>What was done and what came of it, in the order of time</source>
        <translation>Lo que se hizo y lo que resultó, en orden de tiempo</translation>
    </message>
    <message>
        <source>practice</source>
        <translation>practica</translation>
    </message>
    <message>
        <source>refused: %1</source>
        <translation>rechazado: %1</translation>
    </message>
</context>
<context>
    <name>taut::app::AnswerArea</name>
    <message>
        <source>&amp;Enter the tag</source>
        <translation>Introducir la tarj&amp;eta</translation>
    </message>
    <message>
        <source>&amp;Yes, I have seen it</source>
        <translation>Sí, &amp;ya lo he visto</translation>
    </message>
    <message>
        <source>&amp;Yes, this stage is done</source>
        <translation>Sí, esta etapa &amp;ya está hecha</translation>
    </message>
    <message>
        <source>Everybody out. Then each gives up their own stop:</source>
        <translation>Todos fuera. Luego cada uno levanta su propio paro:</translation>
    </message>
    <message>
        <source>Hold down the answer that is so.</source>
        <translation>Mantener pulsada la respuesta que es cierta.</translation>
    </message>
    <message>
        <source>Hold to confirm: I have seen it</source>
        <translation>Mantener pulsado para confirmar: lo he visto</translation>
    </message>
    <message>
        <source>It belongs to the person named, and only that person gives it up.</source>
        <translation>Pertenece a la persona nombrada, y solo ella lo levanta.</translation>
    </message>
    <message>
        <source>Scan, or type what it says</source>
        <translation>Escanear, o escribir lo que dice</translation>
    </message>
    <message>
        <source>Tag of the roll, scanned or typed</source>
        <translation>Tarjeta de la bobina, escaneada o escrita</translation>
    </message>
    <message>
        <source>The stop within reach here: %1. %2</source>
        <translation>El paro al alcance aquí: %1. %2</translation>
    </message>
    <message>
        <source>This person &amp;holds the stop</source>
        <translation>Esta perso&amp;na mantiene el paro</translation>
    </message>
    <message>
        <source>Watch it: %1 s to go (less is watched too short)</source>
        <translation>Obsérvelo: faltan %1 s (menos es muy poco tiempo)</translation>
    </message>
    <message>
        <source>Watched for %1 s: answer now.</source>
        <translation>Observado %1 s: responda ahora.</translation>
    </message>
    <message>
        <source>Who holds it?</source>
        <translation>¿Quién lo mantiene?</translation>
    </message>
    <message>
        <source>Who holds the stop</source>
        <translation>Quién mantiene el paro</translation>
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
        <translation>Re&amp;gresar</translation>
    </message>
    <message>
        <source>Choose</source>
        <translation>Elegir</translation>
    </message>
    <message>
        <source>P&amp;IN</source>
        <translation>P&amp;IN</translation>
    </message>
    <message>
        <source>P&amp;erson</source>
        <translation>P&amp;ersona</translation>
    </message>
    <message>
        <source>PIN</source>
        <translation>PIN</translation>
    </message>
    <message>
        <source>Passp&amp;hrase, or scan the badge</source>
        <translation>&amp;Frase de contraseña, o escanee la credencial</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Persona</translation>
    </message>
    <message>
        <source>Show what I type</source>
        <translation>Mostrar lo que escribo</translation>
    </message>
    <message>
        <source>Who?</source>
        <translation>¿Quién?</translation>
    </message>
    <message>
        <source>Writing…</source>
        <translation>Escribiendo…</translation>
    </message>
</context>
<context>
    <name>taut::app::AttachmentPanel</name>
    <message>
        <source>%1 cannot be written. Choose another folder.</source>
        <translation>No se puede escribir %1. Elegir otra carpeta.</translation>
    </message>
    <message>
        <source>%1 · %2 · %3</source>
        <translation>%1 · %2 · %3</translation>
    </message>
    <message>
        <source>&amp;Attach a picture or file…</source>
        <translation>&amp;Adjuntar imagen o archivo…</translation>
    </message>
    <message>
        <source>&amp;Back</source>
        <translation>&amp;Volver</translation>
    </message>
    <message>
        <source>&amp;Save a copy…</source>
        <translation>&amp;Guardar una copia…</translation>
    </message>
    <message>
        <source>Attach a picture or file</source>
        <translation>Adjuntar imagen o archivo</translation>
    </message>
    <message>
        <source>Nothing is attached to this run.</source>
        <translation>Nada está adjunto a esta preparación.</translation>
    </message>
    <message>
        <source>Pictures and files</source>
        <translation>Imágenes y archivos</translation>
    </message>
    <message>
        <source>Pictures and files of this run</source>
        <translation>Imágenes y archivos de esta preparación</translation>
    </message>
    <message>
        <source>Save a copy</source>
        <translation>Guardar una copia</translation>
    </message>
    <message>
        <source>Saved: %1</source>
        <translation>Guardado: %1</translation>
    </message>
    <message>
        <source>The record names it, and this logbook does not hold it. Verify the logbook.</source>
        <translation>El registro lo nombra y este libro no lo contiene. Verificar el libro de registro.</translation>
    </message>
    <message>
        <source>The text of the chosen file</source>
        <translation>El texto del archivo elegido</translation>
    </message>
    <message>
        <source>This cannot be shown here. Save a copy and open it with a program that you trust.</source>
        <translation>Esto no puede mostrarse aquí. Guardar una copia y abrirla con un programa de confianza.</translation>
    </message>
    <message>
        <source>Understood: the file</source>
        <translation>Entendido: el archivo</translation>
    </message>
    <message>
        <source>What you attach stands in the record beside the step that is open, with your name and the time, and cannot be taken out again. Show no faces.</source>
        <translation>Lo que adjunte queda en el registro junto al paso abierto, con su nombre y la hora, y no puede quitarse. Que no se vean caras.</translation>
    </message>
    <message>
        <source>the run as a whole</source>
        <translation>la preparación entera</translation>
    </message>
</context>
<context>
    <name>taut::app::ChangedTargets</name>
    <message>
        <source>%1, the largest</source>
        <translation>%1, la mayor</translation>
    </message>
    <message>
        <source>By less than is shown: %1.</source>
        <translation>En menos de lo que se muestra: %1.</translation>
    </message>
    <message>
        <source>No target changes.</source>
        <translation>Ningún valor objetivo cambia.</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>Valor objetivo</translation>
    </message>
    <message>
        <source>Targets need a press, a job and its substrate that can be read.</source>
        <translation>Los valores objetivo necesitan una máquina, un trabajo y su sustrato legibles.</translation>
    </message>
    <message>
        <source>Targets that change</source>
        <translation>Valores objetivo que cambian</translation>
    </message>
    <message>
        <source>Targets that change: %1.</source>
        <translation>Valores objetivo que cambian: %1.</translation>
    </message>
    <message>
        <source>There is no edition before it to hold it against.</source>
        <translation>No hay edición anterior con que compararla.</translation>
    </message>
    <message>
        <source>after</source>
        <translation>después</translation>
    </message>
    <message>
        <source>before</source>
        <translation>antes</translation>
    </message>
    <message>
        <source>for a roll of</source>
        <translation>para una bobina de</translation>
    </message>
    <message>
        <source>on the press</source>
        <translation>en la máquina</translation>
    </message>
    <message>
        <source>with the job</source>
        <translation>con el trabajo</translation>
    </message>
</context>
<context>
    <name>taut::app::ChoicePanel</name>
    <message>
        <source>480 mm or 18 3/4 in</source>
        <translation>480 mm o 18 3/4 in</translation>
    </message>
    <message>
        <source>A roll's file</source>
        <translation>Archivo de una bobina</translation>
    </message>
    <message>
        <source>A web is in the press</source>
        <translation>Hay una banda en la máquina</translation>
    </message>
    <message>
        <source>Another roll, from a file</source>
        <translation>Otra bobina, de un archivo</translation>
    </message>
    <message>
        <source>Another roll, scanned or typed</source>
        <translation>Otra bobina, escaneada o escrita</translation>
    </message>
    <message>
        <source>Choose a press, a job, a substrate and a roll.</source>
        <translation>Elija máquina, trabajo, sustrato y bobina.</translation>
    </message>
    <message>
        <source>It goes on from</source>
        <translation>Continúa desde</translation>
    </message>
    <message>
        <source>Its diameter, if measured</source>
        <translation>Su diámetro, si se midió</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Trabajo</translation>
    </message>
    <message>
        <source>Kind of run</source>
        <translation>Clase de preparación</translation>
    </message>
    <message>
        <source>Look at the press and say whether a web is in it.</source>
        <translation>Mire la máquina y diga si hay una banda en ella.</translation>
    </message>
    <message>
        <source>Press</source>
        <translation>Máquina</translation>
    </message>
    <message>
        <source>Roll</source>
        <translation>Bobina</translation>
    </message>
    <message>
        <source>Roll files (*.toml)</source>
        <translation>Archivos de bobina (*.toml)</translation>
    </message>
    <message>
        <source>Substrate</source>
        <translation>Sustrato</translation>
    </message>
    <message>
        <source>The press is empty</source>
        <translation>La máquina está vacía</translation>
    </message>
    <message>
        <source>This kind of run goes on from a run that was signed on this press: there is none yet.</source>
        <translation>Esta clase de preparación continúa desde una que se firmó en esta máquina: aún no hay ninguna.</translation>
    </message>
    <message>
        <source>This logbook knows no press, job or substrate yet: a supervisor takes their files in, on the page "Shop".</source>
        <translation>Este libro de registro no conoce aún máquina, trabajo ni sustrato: un supervisor carga sus archivos en la página «Taller».</translation>
    </message>
    <message>
        <source>Try other values</source>
        <translation>Probar otros valores</translation>
    </message>
</context>
<context>
    <name>taut::app::ChooseLesson</name>
    <message>
        <source>%1 · job %2, %3 · roll %4</source>
        <translation>%1 · trabajo %2, %3 · bobina %4</translation>
    </message>
    <message>
        <source>&amp;Begin to practise</source>
        <translation>&amp;Empezar a practicar</translation>
    </message>
    <message>
        <source>&amp;How it is gone through</source>
        <translation>Cómo se &amp;recorre</translation>
    </message>
    <message>
        <source>A press that answers as a real one does. It may not be as its papers say: look, as you would there.</source>
        <translation>Una máquina que responde como una real. Quizá no sea como dicen sus papeles: mire, como lo haría allí.</translation>
    </message>
    <message>
        <source>Another &amp;file…</source>
        <translation>Otro &amp;archivo…</translation>
    </message>
    <message>
        <source>Another scenario</source>
        <translation>Otro escenario</translation>
    </message>
    <message>
        <source>B&amp;uild a scenario</source>
        <translation>&amp;Crear un escenario</translation>
    </message>
    <message>
        <source>How it is gone through</source>
        <translation>Cómo se recorre</translation>
    </message>
    <message>
        <source>Number of the &amp;chances: the same number, the same chances</source>
        <translation>Número de los a&amp;zares: el mismo número, los mismos azares</translation>
    </message>
    <message>
        <source>Number of the chances</source>
        <translation>Número de los azares</translation>
    </message>
    <message>
        <source>Scenarios</source>
        <translation>Escenarios</translation>
    </message>
    <message>
        <source>Scenarios (*.toml)</source>
        <translation>Escenarios (*.toml)</translation>
    </message>
    <message>
        <source>Sign in first: a lesson belongs to somebody.</source>
        <translation>Inicie sesión primero: un ejercicio es de alguien.</translation>
    </message>
    <message>
        <source>There is no scenario here: open a file that holds one.</source>
        <translation>Aquí no hay ningún escenario: abra un archivo que tenga uno.</translation>
    </message>
    <message>
        <source>This scenario is about the press at which this PC stands. Nothing on this page is that press: what you do here does nothing there.</source>
        <translation>Este escenario trata de la máquina junto a la que está este PC. Nada de esta página es esa máquina: lo que haga aquí no hace nada allí.</translation>
    </message>
    <message>
        <source>Training &amp;record</source>
        <translation>Re&amp;gistro de práctica</translation>
    </message>
    <message>
        <source>What do you want to practise?</source>
        <translation>¿Qué quiere practicar?</translation>
    </message>
</context>
<context>
    <name>taut::app::ChoosePage</name>
    <message>
        <source>%1 chooses PIN and passphrase</source>
        <translation>%1 elige PIN y frase de contraseña</translation>
    </message>
    <message>
        <source>15 characters or more, to sign</source>
        <translation>15 caracteres o más, para firmar</translation>
    </message>
    <message>
        <source>4 characters or more, for the steps at this PC</source>
        <translation>4 caracteres o más, para los pasos en este PC</translation>
    </message>
    <message>
        <source>Begin the logbook as its supervisor</source>
        <translation>Empezar el libro de registro como su supervisor</translation>
    </message>
    <message>
        <source>Choose, and sign in</source>
        <translation>Elegir, e iniciar sesión</translation>
    </message>
    <message>
        <source>First-use code</source>
        <translation>Código de primer uso</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>PIN</source>
        <translation>PIN</translation>
    </message>
    <message>
        <source>PIN, once more</source>
        <translation>PIN, otra vez</translation>
    </message>
    <message>
        <source>Passphrase</source>
        <translation>Frase de contraseña</translation>
    </message>
    <message>
        <source>Passphrase, once more</source>
        <translation>Frase de contraseña, otra vez</translation>
    </message>
    <message>
        <source>The first person is a supervisor, who enrols the others. Nobody else learns what you choose here, and nobody can read it out of the logbook: whoever forgets it needs a second supervisor.</source>
        <translation>La primera persona es un supervisor, que da de alta a los demás. Nadie más sabe lo que elige aquí, y nadie puede leerlo en el libro de registro: quien lo olvida necesita un segundo supervisor.</translation>
    </message>
    <message>
        <source>This logbook knows nobody yet: who looks after it?</source>
        <translation>Este libro de registro no conoce aún a nadie: ¿quién se ocupa de él?</translation>
    </message>
    <message>
        <source>With the code that a supervisor gave you. Nobody else learns what you choose here; whoever forgets it gets a new code from a supervisor.</source>
        <translation>Con el código que le dio un supervisor. Nadie más sabe lo que elige aquí; quien lo olvida recibe un código nuevo de un supervisor.</translation>
    </message>
    <message>
        <source>as the crew knows you</source>
        <translation>como le conoce el equipo</translation>
    </message>
    <message>
        <source>eight letters and digits</source>
        <translation>ocho letras y cifras</translation>
    </message>
</context>
<context>
    <name>taut::app::CompetenceCard</name>
    <message>
        <source>%1 may work alone at</source>
        <translation>%1 puede trabajar a solas en</translation>
    </message>
    <message>
        <source>%1 may work alone at %2</source>
        <translation>%1 puede trabajar a solas en %2</translation>
    </message>
    <message>
        <source>%1 months, to %2</source>
        <translation>%1 meses, hasta %2</translation>
    </message>
    <message>
        <source>%1 works alone at %2 no longer</source>
        <translation>%1 ya no trabaja a solas en %2</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>An accident or a near miss, what an inspection showed, another task: from now on a supervisor signs beside them, where this press asks it.</source>
        <translation>Un accidente o un casi accidente, lo que mostró una inspección, otra tarea: desde ahora un supervisor firma a su lado, donde esta máquina lo pide.</translation>
    </message>
    <message>
        <source>End it now</source>
        <translation>Terminarla ahora</translation>
    </message>
    <message>
        <source>It ends now</source>
        <translation>Termina ahora</translation>
    </message>
    <message>
        <source>May work alone</source>
        <translation>Puede trabajar a solas</translation>
    </message>
    <message>
        <source>No press is kept in this logbook.</source>
        <translation>En este libro no hay ninguna máquina.</translation>
    </message>
    <message>
        <source>Practice alone qualifies nobody. Competence is for one press, wants set-ups there that somebody watched, and ends. Who may lock out energy is for the site's own procedure and local law, and is not said here.</source>
        <translation>La práctica sola no habilita a nadie. La habilitación vale para una máquina, pide preparaciones en ella que alguien haya observado, y termina. Quién puede bloquear energías lo deciden el procedimiento de la planta y la ley local, y aquí no se dice.</translation>
    </message>
    <message>
        <source>Presses</source>
        <translation>Máquinas</translation>
    </message>
    <message>
        <source>Reading the practice logbook of this PC…</source>
        <translation>Leyendo el libro de prácticas de este PC…</translation>
    </message>
    <message>
        <source>Run %1, %2, job %3 %4</source>
        <translation>Preparación %1, %2, trabajo %3 %4</translation>
    </message>
    <message>
        <source>Set-ups that were watched: %1. Training record: SHA-256 %2. Your name, the time and your signature stand in the logbook for good. It ends on its day, when what protects people at this press is changed, when they are long away from it, or when a supervisor ends it.</source>
        <translation>Preparaciones observadas: %1. Registro de práctica: SHA-256 %2. Su nombre, la hora y su firma quedan en el libro para siempre. Termina en su día, cuando se cambia lo que protege a las personas en esta máquina, tras mucho tiempo sin usarla, o cuando un supervisor la termina.</translation>
    </message>
    <message>
        <source>Sign that they may</source>
        <translation>Firmar que puede</translation>
    </message>
    <message>
        <source>The practice logbook of this PC has no attempt of theirs.</source>
        <translation>El libro de prácticas de este PC no tiene ningún intento suyo.</translation>
    </message>
    <message>
        <source>They finished no set-up of this press yet</source>
        <translation>Aún no ha terminado ninguna preparación de esta máquina</translation>
    </message>
    <message>
        <source>Tick the set-ups that were watched: %1 of at least %2.</source>
        <translation>Marque las preparaciones observadas: %1 de al menos %2.</translation>
    </message>
    <message>
        <source>Training record of %1 at this PC: %2 attempts, SHA-256 %3</source>
        <translation>Registro de práctica de %1 en este PC: %2 intentos, SHA-256 %3</translation>
    </message>
    <message>
        <source>Valid until</source>
        <translation>Válida hasta</translation>
    </message>
    <message>
        <source>Which of these set-ups did somebody watch?</source>
        <translation>¿Cuáles de estas preparaciones observó alguien?</translation>
    </message>
    <message>
        <source>Why it ends</source>
        <translation>Por qué termina</translation>
    </message>
    <message>
        <source>Without a training record nobody is said to be competent: see what stands above.</source>
        <translation>Sin registro de práctica no se habilita a nadie: vea lo que dice arriba.</translation>
    </message>
    <message>
        <source>not alone</source>
        <translation>no a solas</translation>
    </message>
    <message>
        <source>said by %1, %2</source>
        <translation>lo dijo %1, %2</translation>
    </message>
    <message>
        <source>this press asks it</source>
        <translation>esta máquina lo pide</translation>
    </message>
    <message>
        <source>this press does not ask it</source>
        <translation>esta máquina no lo pide</translation>
    </message>
    <message>
        <source>until %1</source>
        <translation>hasta %1</translation>
    </message>
</context>
<context>
    <name>taut::app::ConstantCard</name>
    <message>
        <source>%1, plus or minus %2, beginning at %3 (plus or minus %4). %5</source>
        <translation>%1, más o menos %2, empieza en %3 (más o menos %4). %5</translation>
    </message>
    <message>
        <source>1. Let only the brake's air or current on. 2. Clamp the web's end to a spring scale, in line with the web. 3. Put on a setting and pull slowly, hands off the roll. 4. Read the scale while the roll just turns, and enter both. Then another setting, well apart.</source>
        <translation>1. Dar solo el aire o la corriente del freno. 2. Sujetar el extremo de la banda a una báscula de resorte, alineada con la banda. 3. Poner un ajuste y tirar despacio, con las manos fuera de la bobina. 4. Leer la báscula mientras la bobina apenas gira e introducir ambos. Luego otro ajuste, bien separado.</translation>
    </message>
    <message>
        <source>A drive that starts draws in whoever pulls at the web. Isolate the drives and lock them by your site's procedure, and tell everybody at the press. Where your site's rules say otherwise, they hold.</source>
        <translation>Un accionamiento que arranca arrastra a quien tira de la banda. Aislar los accionamientos y bloquearlos según el procedimiento del centro, y avisar a todos en la máquina. Si las reglas del centro dicen otra cosa, valen esas.</translation>
    </message>
    <message>
        <source>As well as scale and gauge can be read.</source>
        <translation>Tan bien como pueden leerse báscula y manómetro.</translation>
    </message>
    <message>
        <source>Back to the list</source>
        <translation>Volver a la lista</translation>
    </message>
    <message>
        <source>Diameter of the roll</source>
        <translation>Diámetro de la bobina</translation>
    </message>
    <message>
        <source>Diameter of the roll, measured now</source>
        <translation>Diámetro de la bobina, medido ahora</translation>
    </message>
    <message>
        <source>Enter it in the press profile, and look</source>
        <translation>Anotarlo en el perfil de la máquina y mirar</translation>
    </message>
    <message>
        <source>Enter the diameter, how well the scale reads, and at least two settings with what it read at each.</source>
        <translation>Introducir el diámetro, la exactitud de la báscula y al menos dos ajustes con lo que marcó en cada uno.</translation>
    </message>
    <message>
        <source>Force %1</source>
        <translation>Fuerza %1</translation>
    </message>
    <message>
        <source>Set to</source>
        <translation>Ajustado a</translation>
    </message>
    <message>
        <source>Setting %1</source>
        <translation>Ajuste %1</translation>
    </message>
    <message>
        <source>The readings scatter by more than scale and gauge explain.</source>
        <translation>Las lecturas se dispersan más de lo que explican báscula y manómetro.</translation>
    </message>
    <message>
        <source>The scale reads</source>
        <translation>La báscula marca</translation>
    </message>
    <message>
        <source>The scale reads within</source>
        <translation>La báscula acierta en</translation>
    </message>
    <message>
        <source>The scale reads within, plus or minus</source>
        <translation>La báscula acierta en, más o menos</translation>
    </message>
    <message>
        <source>This press has no zone with a brake, a clutch or a drive.</source>
        <translation>Esta máquina no tiene zona con freno, embrague o accionamiento.</translation>
    </message>
    <message>
        <source>What does this setting do?</source>
        <translation>¿Qué hace este ajuste?</translation>
    </message>
    <message>
        <source>What was found</source>
        <translation>Lo que se halló</translation>
    </message>
    <message>
        <source>Which setting</source>
        <translation>Qué ajuste</translation>
    </message>
    <message>
        <source>like %1</source>
        <translation>como %1</translation>
    </message>
</context>
<context>
    <name>taut::app::ControlView</name>
    <message>
        <source>Chart of the readings</source>
        <translation>Gráfico de las lecturas</translation>
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
        <translation>Un supervisor contrafirma: mira aquí la preparación, elige su nombre y escribe su PIN. Después firme usted otra vez con su propia frase de contraseña.</translation>
    </message>
    <message>
        <source>No other supervisor is enrolled here who could.</source>
        <translation>Aquí no hay inscrito otro supervisor que pueda hacerlo.</translation>
    </message>
    <message>
        <source>PIN of the supervisor</source>
        <translation>PIN del supervisor</translation>
    </message>
    <message>
        <source>Supervisor who countersigns</source>
        <translation>Supervisor que contrafirma</translation>
    </message>
    <message>
        <source>Which supervisor?</source>
        <translation>¿Qué supervisor?</translation>
    </message>
</context>
<context>
    <name>taut::app::DefinitionEditor</name>
    <message>
        <source>%1, edition %2</source>
        <translation>%1, edición %2</translation>
    </message>
    <message>
        <source>%1, edition %2 of %3</source>
        <translation>%1, edición %2 de %3</translation>
    </message>
    <message>
        <source>%1, not sealed</source>
        <translation>%1, sin sellar</translation>
    </message>
    <message>
        <source>&amp;Back to the list</source>
        <translation>Volver a la &amp;lista</translation>
    </message>
    <message>
        <source>&amp;Seal</source>
        <translation>&amp;Sellar</translation>
    </message>
    <message>
        <source>&amp;Seal as a new one</source>
        <translation>&amp;Sellar como nuevo</translation>
    </message>
    <message>
        <source>&amp;Seal as edition %1</source>
        <translation>&amp;Sellar como edición %1</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Deshacer</translation>
    </message>
    <message>
        <source>A supervisor seals editions.</source>
        <translation>Las ediciones las sella un supervisor.</translation>
    </message>
    <message>
        <source>Add a row</source>
        <translation>Añadir una fila</translation>
    </message>
    <message>
        <source>Add this table</source>
        <translation>Añadir esta tabla</translation>
    </message>
    <message>
        <source>As te&amp;xt</source>
        <translation>Como te&amp;xto</translation>
    </message>
    <message>
        <source>Earlier</source>
        <translation>Más arriba</translation>
    </message>
    <message>
        <source>First mend what the reader finds.</source>
        <translation>Corregir primero lo que halla el lector.</translation>
    </message>
    <message>
        <source>Keys and what they say</source>
        <translation>Claves y lo que dicen</translation>
    </message>
    <message>
        <source>Later</source>
        <translation>Más abajo</translation>
    </message>
    <message>
        <source>Let the changes go</source>
        <translation>Descartar los cambios</translation>
    </message>
    <message>
        <source>Nothing is wrong with it.</source>
        <translation>Nada está mal en él.</translation>
    </message>
    <message>
        <source>Sealed as edition %1.</source>
        <translation>Sellado como edición %1.</translation>
    </message>
    <message>
        <source>Stay</source>
        <translation>Quedarse</translation>
    </message>
    <message>
        <source>Steps of the procedure</source>
        <translation>Pasos del procedimiento</translation>
    </message>
    <message>
        <source>Tables of the file</source>
        <translation>Tablas del archivo</translation>
    </message>
    <message>
        <source>Take the row out</source>
        <translation>Quitar la fila</translation>
    </message>
    <message>
        <source>Take the table out</source>
        <translation>Quitar la tabla</translation>
    </message>
    <message>
        <source>The text of the file</source>
        <translation>El texto del archivo</translation>
    </message>
    <message>
        <source>This text stands as an earlier edition; the newest stays edition %1. Change something in it, if only a comment, to make it the newest.</source>
        <translation>Este texto existe como edición anterior; la más nueva sigue siendo la edición %1. Cambiar algo en él, aunque sea un comentario, para que sea la más nueva.</translation>
    </message>
    <message>
        <source>What is wrong with the path</source>
        <translation>Qué está mal en el recorrido</translation>
    </message>
    <message>
        <source>What its reader finds</source>
        <translation>Lo que halla su lector</translation>
    </message>
    <message>
        <source>What the key means</source>
        <translation>Qué significa la clave</translation>
    </message>
    <message>
        <source>What was changed here is sealed nowhere yet.</source>
        <translation>Lo que se cambió aquí aún no está sellado.</translation>
    </message>
    <message>
        <source>Which tar&amp;gets change</source>
        <translation>Qué &amp;valores objetivo cambian</translation>
    </message>
    <message>
        <source>line %1</source>
        <translation>línea %1</translation>
    </message>
    <message>
        <source>no name yet</source>
        <translation>aún sin nombre</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>no dicho</translation>
    </message>
    <message>
        <source>rows: %1</source>
        <translation>filas: %1</translation>
    </message>
</context>
<context>
    <name>taut::app::DefinitionsPage</name>
    <message>
        <source>%1 (copy %2)</source>
        <translation>%1 (copia %2)</translation>
    </message>
    <message>
        <source>%1 (copy)</source>
        <translation>%1 (copia)</translation>
    </message>
    <message>
        <source>A supervisor seals editions; anybody may look.</source>
        <translation>Las ediciones las sella un supervisor; mirar puede cualquiera.</translation>
    </message>
    <message>
        <source>Back to the people</source>
        <translation>Volver a las personas</translation>
    </message>
    <message>
        <source>Begin anew:</source>
        <translation>Empezar de nuevo:</translation>
    </message>
    <message>
        <source>Copy it, and adapt the copy</source>
        <translation>Copiarlo y adaptar la copia</translation>
    </message>
    <message>
        <source>Edition %1</source>
        <translation>Edición %1</translation>
    </message>
    <message>
        <source>Editions</source>
        <translation>Ediciones</translation>
    </message>
    <message>
        <source>Find what a setting does</source>
        <translation>Hallar qué hace un ajuste</translation>
    </message>
    <message>
        <source>Jobs</source>
        <translation>Trabajos</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Abrir</translation>
    </message>
    <message>
        <source>Open edition %1</source>
        <translation>Abrir la edición %1</translation>
    </message>
    <message>
        <source>Presses</source>
        <translation>Máquinas</translation>
    </message>
    <message>
        <source>Procedures</source>
        <translation>Procedimientos</translation>
    </message>
    <message>
        <source>Sign in to change something here.</source>
        <translation>Para cambiar algo aquí, identificarse.</translation>
    </message>
    <message>
        <source>Substrates</source>
        <translation>Sustratos</translation>
    </message>
    <message>
        <source>TOML files (*.toml)</source>
        <translation>Archivos TOML (*.toml)</translation>
    </message>
    <message>
        <source>Take in files…</source>
        <translation>Incorporar archivos…</translation>
    </message>
    <message>
        <source>Take in what a run is begun from</source>
        <translation>Incorporar con qué empieza una preparación</translation>
    </message>
    <message>
        <source>Taken in: %1, edition %2.</source>
        <translation>Incorporado: %1, edición %2.</translation>
    </message>
    <message>
        <source>This logbook knows no press, job, substrate or procedure yet.</source>
        <translation>Este libro de registro aún no conoce máquina, trabajo, sustrato ni procedimiento.</translation>
    </message>
    <message>
        <source>Was there already: %1, edition %2.</source>
        <translation>Ya estaba: %1, edición %2.</translation>
    </message>
    <message>
        <source>What is begun anew</source>
        <translation>Qué se empieza de nuevo</translation>
    </message>
    <message>
        <source>What runs are begun from</source>
        <translation>Con qué empiezan las preparaciones</translation>
    </message>
    <message>
        <source>Write it out to a file</source>
        <translation>Escribirlo en un archivo</translation>
    </message>
    <message>
        <source>Write it out to a file…</source>
        <translation>Escribirlo en un archivo…</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <translation>Escrito: %1</translation>
    </message>
    <message>
        <source>a job</source>
        <translation>un trabajo</translation>
    </message>
    <message>
        <source>a press</source>
        <translation>una máquina</translation>
    </message>
    <message>
        <source>a procedure</source>
        <translation>un procedimiento</translation>
    </message>
    <message>
        <source>a substrate</source>
        <translation>un sustrato</translation>
    </message>
    <message>
        <source>edition %1</source>
        <translation>edición %1</translation>
    </message>
    <message>
        <source>line %1</source>
        <translation>línea %1</translation>
    </message>
    <message>
        <source>sealed by %1</source>
        <translation>sellado por %1</translation>
    </message>
</context>
<context>
    <name>taut::app::DemoNote</name>
    <message>
        <source>Demo shop, all invented. %1 signs in with the PIN %2, and signs with the passphrase "%3".</source>
        <translation>Taller de muestra, todo inventado. %1 inicia sesión con el PIN %2 y firma con la frase de contraseña «%3».</translation>
    </message>
</context>
<context>
    <name>taut::app::DriftPage</name>
    <message>
        <source>%1 higher</source>
        <translation>%1 más</translation>
    </message>
    <message>
        <source>%1 lower</source>
        <translation>%1 menos</translation>
    </message>
    <message>
        <source>%1 readings</source>
        <translation>%1 lecturas</translation>
    </message>
    <message>
        <source>All eight</source>
        <translation>Los ocho</translation>
    </message>
    <message>
        <source>All that is told of it</source>
        <translation>Todo lo que se sabe</translation>
    </message>
    <message>
        <source>As the list has it</source>
        <translation>Como en la lista</translation>
    </message>
    <message>
        <source>Back to the chart</source>
        <translation>Volver al gráfico</translation>
    </message>
    <message>
        <source>Back to the list</source>
        <translation>Volver a la lista</translation>
    </message>
    <message>
        <source>Choose what is followed</source>
        <translation>Elegir qué se sigue</translation>
    </message>
    <message>
        <source>How far from its target</source>
        <translation>Distancia a su objetivo</translation>
    </message>
    <message>
        <source>Looking through the readings…</source>
        <translation>Repasando las lecturas…</translation>
    </message>
    <message>
        <source>Only %1</source>
        <translation>Solo %1</translation>
    </message>
    <message>
        <source>Open this run</source>
        <translation>Abrir preparación</translation>
    </message>
    <message>
        <source>Patterns looked for</source>
        <translation>Patrones buscados</translation>
    </message>
    <message>
        <source>Pictures (*.png)</source>
        <translation>Imágenes (*.png)</translation>
    </message>
    <message>
        <source>Readings, what moved most first</source>
        <translation>Lecturas, primero la más desplazada</translation>
    </message>
    <message>
        <source>Roll %1</source>
        <translation>Bobina %1</translation>
    </message>
    <message>
        <source>Save as picture</source>
        <translation>Guardar como imagen</translation>
    </message>
    <message>
        <source>Save the chart</source>
        <translation>Guardar el gráfico</translation>
    </message>
    <message>
        <source>Saved: %1</source>
        <translation>Guardado: %1</translation>
    </message>
    <message>
        <source>Six, warns earlier</source>
        <translation>Seis, avisan antes</translation>
    </message>
    <message>
        <source>The logbook is not open in this window.</source>
        <translation>El libro de registro no está abierto en esta ventana.</translation>
    </message>
    <message>
        <source>The older four (1956)</source>
        <translation>Los cuatro antiguos (1956)</translation>
    </message>
    <message>
        <source>The picture could not be written to %1. Choose another folder.</source>
        <translation>La imagen no se pudo escribir en %1. Elija otra carpeta.</translation>
    </message>
    <message>
        <source>The sheet of this reading</source>
        <translation>La hoja de esta lectura</translation>
    </message>
    <message>
        <source>The usual four</source>
        <translation>Los cuatro usuales</translation>
    </message>
    <message>
        <source>There is no reading in the sealed runs that were chosen.</source>
        <translation>No hay ninguna lectura en las preparaciones selladas que se han elegido.</translation>
    </message>
    <message>
        <source>What is followed</source>
        <translation>Qué se sigue</translation>
    </message>
    <message>
        <source>What was read</source>
        <translation>Lo leído</translation>
    </message>
    <message>
        <source>only %1</source>
        <translation>solo %1</translation>
    </message>
    <message>
        <source>outside at first</source>
        <translation>fuera al principio</translation>
    </message>
    <message>
        <source>since %1</source>
        <translation>desde %1</translation>
    </message>
    <message>
        <source>steady</source>
        <translation>estable</translation>
    </message>
    <message>
        <source>steady, %1 of %2 outside at first</source>
        <translation>estable, %1 de %2 fuera al principio</translation>
    </message>
    <message>
        <source>too few to tell</source>
        <translation>muy pocas para decirlo</translation>
    </message>
</context>
<context>
    <name>taut::app::ElevationWidget</name>
    <message>
        <source>Drawing of the press</source>
        <translation>Dibujo de la máquina</translation>
    </message>
</context>
<context>
    <name>taut::app::FindingStrip</name>
    <message>
        <source>&amp;Understood</source>
        <translation>Enten&amp;dido</translation>
    </message>
</context>
<context>
    <name>taut::app::FoundPanel</name>
    <message>
        <source>Said: %1</source>
        <translation>Dicho: %1</translation>
    </message>
    <message>
        <source>Say what you found that is not as it should be. What is said stays said: what is in order counts against you.</source>
        <translation>Diga qué encontró que no está como debe. Lo dicho, dicho queda: lo que está en orden cuenta en su contra.</translation>
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
        <translation>Aire</translation>
    </message>
    <message>
        <source>Air supply</source>
        <translation>Presión</translation>
    </message>
    <message>
        <source>Guard open</source>
        <translation>Resguardo</translation>
    </message>
    <message>
        <source>Lit: %1.</source>
        <translation>Encendidas: %1.</translation>
    </message>
    <message>
        <source>Moves</source>
        <translation>Se mueve</translation>
    </message>
    <message>
        <source>No lamp is lit.</source>
        <translation>Ninguna lámpara está encendida.</translation>
    </message>
    <message>
        <source>Power</source>
        <translation>Corriente</translation>
    </message>
    <message>
        <source>Reads: %1</source>
        <translation>Indica: %1</translation>
    </message>
    <message>
        <source>Reset</source>
        <translation>Rearmado</translation>
    </message>
    <message>
        <source>Rewind roll</source>
        <translation>Rebobinada</translation>
    </message>
    <message>
        <source>Set: %1</source>
        <translation>Ajuste: %1</translation>
    </message>
    <message>
        <source>Speed</source>
        <translation>Velocidad</translation>
    </message>
    <message>
        <source>Stop held</source>
        <translation>Paro</translation>
    </message>
    <message>
        <source>Stop latched</source>
        <translation>Emergencia</translation>
    </message>
    <message>
        <source>Unwind roll</source>
        <translation>Bobina</translation>
    </message>
    <message>
        <source>not hung</source>
        <translation>sin colgar</translation>
    </message>
    <message>
        <source>not set</source>
        <translation>sin ajustar</translation>
    </message>
</context>
<context>
    <name>taut::app::HandPanel</name>
    <message>
        <source>Panel</source>
        <translation>Pupitre</translation>
    </message>
    <message>
        <source>Rewind</source>
        <translation>Rebobinador</translation>
    </message>
    <message>
        <source>Splice table</source>
        <translation>Empalme</translation>
    </message>
    <message>
        <source>Stations</source>
        <translation>Estaciones</translation>
    </message>
    <message>
        <source>Unwind</source>
        <translation>Desbobinador</translation>
    </message>
    <message>
        <source>Web guide</source>
        <translation>Guiador</translation>
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
        <translation>%1: a cuánto</translation>
    </message>
    <message>
        <source>Once more: the pretend press moves</source>
        <translation>Otra vez: la máquina simulada se mueve</translation>
    </message>
    <message>
        <source>is set to %1</source>
        <translation>está en %1</translation>
    </message>
</context>
<context>
    <name>taut::app::HeldStops</name>
    <message>
        <source>%1 holds: %2</source>
        <translation>%1 mantiene: %2</translation>
    </message>
    <message>
        <source>Hold: I, %1, am out and give it up</source>
        <translation>Mantener pulsado: yo, %1, estoy fuera y lo levanto</translation>
    </message>
</context>
<context>
    <name>taut::app::HelpView</name>
    <message>
        <source>Back (Esc)</source>
        <translation>Volver (Esc)</translation>
    </message>
    <message>
        <source>Find in the help</source>
        <translation>Buscar en la ayuda</translation>
    </message>
    <message>
        <source>No page has that in it</source>
        <translation>Ninguna página lo contiene</translation>
    </message>
    <message>
        <source>Pages of the help</source>
        <translation>Páginas de la ayuda</translation>
    </message>
    <message>
        <source>The chosen page of the help</source>
        <translation>La página elegida de la ayuda</translation>
    </message>
    <message>
        <source>Two minutes to look round</source>
        <translation>Dos minutos para orientarse</translation>
    </message>
</context>
<context>
    <name>taut::app::HistoryDesk</name>
    <message>
        <source>Drift</source>
        <translation>Deriva</translation>
    </message>
    <message>
        <source>Runs</source>
        <translation>Preparaciones</translation>
    </message>
    <message>
        <source>Time and losses</source>
        <translation>Tiempos y pérdidas</translation>
    </message>
    <message>
        <source>Waiting</source>
        <translation>Pendiente</translation>
    </message>
    <message>
        <source>Week</source>
        <translation>Semana</translation>
    </message>
</context>
<context>
    <name>taut::app::HistoryPage</name>
    <message>
        <source>%1 runs</source>
        <translation>%1 preparaciones</translation>
    </message>
    <message>
        <source>%1 · Roll %2</source>
        <translation>%1 · Bobina %2</translation>
    </message>
    <message>
        <source>%1, %2 deviations</source>
        <translation>%1, %2 desviaciones</translation>
    </message>
    <message>
        <source>%1, 1 deviation</source>
        <translation>%1, 1 desviación</translation>
    </message>
    <message>
        <source>1 run</source>
        <translation>1 preparación</translation>
    </message>
    <message>
        <source>Abandoned</source>
        <translation>Abandonadas</translation>
    </message>
    <message>
        <source>Back to the list</source>
        <translation>Volver a la lista</translation>
    </message>
    <message>
        <source>Beside the best</source>
        <translation>Junto a la mejor</translation>
    </message>
    <message>
        <source>Checked just now: its %1 seals are as they were sealed, each in its place.</source>
        <translation>Comprobado ahora mismo: sus %1 sellos están como se sellaron, cada uno en su sitio.</translation>
    </message>
    <message>
        <source>Checked just now: its seal is as it was sealed, in its place.</source>
        <translation>Comprobado ahora mismo: su sello está como se selló, en su sitio.</translation>
    </message>
    <message>
        <source>Choose the run in the list to see its own sheet again.</source>
        <translation>Elija la preparación en la lista para volver a ver su propia hoja.</translation>
    </message>
    <message>
        <source>Compare</source>
        <translation>Comparar</translation>
    </message>
    <message>
        <source>Compare %1</source>
        <translation>Comparar %1</translation>
    </message>
    <message>
        <source>Every run</source>
        <translation>Todas las preparaciones</translation>
    </message>
    <message>
        <source>Every run again</source>
        <translation>Otra vez todas</translation>
    </message>
    <message>
        <source>Find</source>
        <translation>Buscar</translation>
    </message>
    <message>
        <source>Find runs by job, roll or run</source>
        <translation>Buscar preparaciones por trabajo, bobina o preparación</translation>
    </message>
    <message>
        <source>Job, roll or run</source>
        <translation>Trabajo, bobina o preparación</translation>
    </message>
    <message>
        <source>Keep to compare</source>
        <translation>Apartar para comparar</translation>
    </message>
    <message>
        <source>Kept on this PC: %1 stands above the list.</source>
        <translation>Guardada en este PC: %1 queda encima de la lista.</translation>
    </message>
    <message>
        <source>Kept searches</source>
        <translation>Búsquedas guardadas</translation>
    </message>
    <message>
        <source>No run has been begun in this logbook yet.</source>
        <translation>En este libro de registro aún no se ha empezado ninguna preparación.</translation>
    </message>
    <message>
        <source>No run of this logbook has that in it.</source>
        <translation>Ninguna preparación de este libro de registro contiene eso.</translation>
    </message>
    <message>
        <source>No run of this logbook stands so just now.</source>
        <translation>Ninguna preparación de este libro de registro está así ahora.</translation>
    </message>
    <message>
        <source>Older runs</source>
        <translation>Preparaciones anteriores</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Abiertas</translation>
    </message>
    <message>
        <source>Or scan the code of a printed sheet</source>
        <translation>O escanear el código de una hoja impresa</translation>
    </message>
    <message>
        <source>Pictures and files</source>
        <translation>Imágenes y archivos</translation>
    </message>
    <message>
        <source>Run %1: %2.</source>
        <translation>Preparación %1: %2.</translation>
    </message>
    <message>
        <source>Runs</source>
        <translation>Preparaciones</translation>
    </message>
    <message>
        <source>Save the list of runs</source>
        <translation>Guardar la lista de preparaciones</translation>
    </message>
    <message>
        <source>Saved: %1</source>
        <translation>Guardada: %1</translation>
    </message>
    <message>
        <source>Sent back</source>
        <translation>Devuelta</translation>
    </message>
    <message>
        <source>Set up the list</source>
        <translation>Ajustar la lista</translation>
    </message>
    <message>
        <source>Tables (*.csv);;Data (*.json)</source>
        <translation>Tablas (*.csv);;Datos (*.json)</translation>
    </message>
    <message>
        <source>The list could not be written to %1: %2</source>
        <translation>La lista no se pudo escribir en %1: %2</translation>
    </message>
    <message>
        <source>The logbook is not open in this window.</source>
        <translation>El libro de registro no está abierto en esta ventana.</translation>
    </message>
    <message>
        <source>The search %1 is forgotten.</source>
        <translation>La búsqueda %1 está borrada.</translation>
    </message>
    <message>
        <source>The sheet is of this logbook: seal %1 is the one that it names.</source>
        <translation>La hoja es de este libro de registro: el sello %1 es el que nombra.</translation>
    </message>
    <message>
        <source>The sheet of the chosen run</source>
        <translation>La hoja de la preparación elegida</translation>
    </message>
    <message>
        <source>There is no other completed run of this job and kind on this press yet.</source>
        <translation>Aún no hay en esta máquina otra preparación terminada de este trabajo y clase.</translation>
    </message>
    <message>
        <source>This run beside the best one so far of its job, press and kind</source>
        <translation>Esta preparación junto a la mejor hasta ahora de su trabajo, máquina y clase</translation>
    </message>
    <message>
        <source>To be reviewed: %1</source>
        <translation>Por revisar: %1</translation>
    </message>
    <message>
        <source>Void</source>
        <translation>Anulada</translation>
    </message>
    <message>
        <source>Which runs</source>
        <translation>Qué preparaciones</translation>
    </message>
    <message>
        <source>abandoned</source>
        <translation>abandonada</translation>
    </message>
    <message>
        <source>comparison</source>
        <translation>comparación</translation>
    </message>
    <message>
        <source>more than %1 runs</source>
        <translation>más de %1 preparaciones</translation>
    </message>
    <message>
        <source>open</source>
        <translation>abierta</translation>
    </message>
    <message>
        <source>runs</source>
        <translation>preparaciones</translation>
    </message>
    <message>
        <source>signed</source>
        <translation>firmada</translation>
    </message>
    <message>
        <source>void</source>
        <translation>anulada</translation>
    </message>
</context>
<context>
    <name>taut::app::HoldButton</name>
    <message>
        <source>Hold for a moment, or press twice with assistive technology.</source>
        <translation>Mantenga pulsado un momento, o pulse dos veces con ayudas de accesibilidad.</translation>
    </message>
    <message>
        <source>Hold until the bar is full</source>
        <translation>Mantener pulsado hasta llenar la barra</translation>
    </message>
</context>
<context>
    <name>taut::app::KeyTable</name>
    <message>
        <source>a name</source>
        <translation>un nombre</translation>
    </message>
    <message>
        <source>a number</source>
        <translation>un número</translation>
    </message>
    <message>
        <source>a table of its own</source>
        <translation>una tabla propia</translation>
    </message>
    <message>
        <source>a text</source>
        <translation>un texto</translation>
    </message>
    <message>
        <source>a whole number</source>
        <translation>un número entero</translation>
    </message>
    <message>
        <source>make this table</source>
        <translation>hacer esta tabla</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>no dicho</translation>
    </message>
    <message>
        <source>one of a list</source>
        <translation>uno de una lista</translation>
    </message>
    <message>
        <source>row %1</source>
        <translation>fila %1</translation>
    </message>
    <message>
        <source>says</source>
        <translation>dice</translation>
    </message>
    <message>
        <source>true or false</source>
        <translation>verdadero o falso</translation>
    </message>
    <message>
        <source>words, with commas</source>
        <translation>palabras, con comas</translation>
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
        <translation>S&amp;alir</translation>
    </message>
    <message>
        <source>Run %1 stays open in the logbook: it goes on from the start page, after somebody has signed in and said that the press is safe.</source>
        <translation>La preparación %1 queda abierta en el libro de registro: sigue desde la página de inicio, cuando alguien haya iniciado sesión y dicho que la máquina está asegurada.</translation>
    </message>
    <message>
        <source>Stay</source>
        <translation>Quedarse</translation>
    </message>
    <message>
        <source>What was changed in %1 is sealed nowhere yet: it is lost when the program ends.</source>
        <translation>Lo que se cambió en %1 no está sellado aún en ninguna parte: se pierde al cerrar el programa.</translation>
    </message>
</context>
<context>
    <name>taut::app::LimitBarWidget</name>
    <message>
        <source>At least %1.</source>
        <translation>Al menos %1.</translation>
    </message>
    <message>
        <source>At most %1.</source>
        <translation>Como máximo %1.</translation>
    </message>
    <message>
        <source>Limit bar</source>
        <translation>Barra de límites</translation>
    </message>
    <message>
        <source>Limits %1 and %2.</source>
        <translation>Límites %1 y %2.</translation>
    </message>
    <message>
        <source>Reading %1, %2.</source>
        <translation>Lectura %1, %2.</translation>
    </message>
    <message>
        <source>Reading %1, %2: %3.</source>
        <translation>Lectura %1, %2: %3.</translation>
    </message>
</context>
<context>
    <name>taut::app::ListSetup</name>
    <message>
        <source>Every run that fits, with what each line says</source>
        <translation>Cada preparación que cumple, con lo que dice cada línea</translation>
    </message>
    <message>
        <source>Everybody</source>
        <translation>Todos</translation>
    </message>
    <message>
        <source>Forget it</source>
        <translation>Borrarla</translation>
    </message>
    <message>
        <source>Keep this search</source>
        <translation>Guardar esta búsqueda</translation>
    </message>
    <message>
        <source>Keep under this name</source>
        <translation>Guardar con este nombre</translation>
    </message>
    <message>
        <source>Name of the search</source>
        <translation>Nombre de la búsqueda</translation>
    </message>
    <message>
        <source>Not kept. %1</source>
        <translation>No se ha guardado. %1</translation>
    </message>
    <message>
        <source>Only runs in which something outside was accepted</source>
        <translation>Solo preparaciones con algo aceptado fuera de margen</translation>
    </message>
    <message>
        <source>Save this list</source>
        <translation>Guardar esta lista</translation>
    </message>
    <message>
        <source>What each line says</source>
        <translation>Qué dice cada línea</translation>
    </message>
    <message>
        <source>Which runs</source>
        <translation>Qué preparaciones</translation>
    </message>
    <message>
        <source>Whose run</source>
        <translation>De quién</translation>
    </message>
</context>
<context>
    <name>taut::app::LivePage</name>
    <message>
        <source>A quarter of real time</source>
        <translation>Un cuarto del tiempo real</translation>
    </message>
    <message>
        <source>As fast as it goes</source>
        <translation>Tan rápido como se pueda</translation>
    </message>
    <message>
        <source>At the practice press: %1</source>
        <translation>En la máquina de prácticas: %1</translation>
    </message>
    <message>
        <source>Charts</source>
        <translation>Gráficos</translation>
    </message>
    <message>
        <source>End the lesson</source>
        <translation>Terminar el ejercicio</translation>
    </message>
    <message>
        <source>Fastest</source>
        <translation>Máximo</translation>
    </message>
    <message>
        <source>Four times as fast</source>
        <translation>Cuatro veces más rápido</translation>
    </message>
    <message>
        <source>Help with this step: it then counts half</source>
        <translation>Ayuda con este paso: entonces cuenta la mitad</translation>
    </message>
    <message>
        <source>I have looked</source>
        <translation>Ya lo he mirado</translation>
    </message>
    <message>
        <source>In practice everybody signs with the passphrase "%1" and the PIN %2.</source>
        <translation>En las prácticas todos firman con la frase de contraseña «%1» y el PIN %2.</translation>
    </message>
    <message>
        <source>Not right?</source>
        <translation>¿Algo mal?</translation>
    </message>
    <message>
        <source>Real time</source>
        <translation>Tiempo real</translation>
    </message>
    <message>
        <source>Stopped</source>
        <translation>Detenido</translation>
    </message>
    <message>
        <source>Tell what is done here. Then do it at the press, and answer.</source>
        <translation>Diga qué se hace aquí. Después hágalo en la máquina, y responda.</translation>
    </message>
    <message>
        <source>Tell why.</source>
        <translation>Diga por qué.</translation>
    </message>
    <message>
        <source>The press says otherwise: %1</source>
        <translation>La máquina dice otra cosa: %1</translation>
    </message>
    <message>
        <source>This PC does not keep up: time goes more slowly.</source>
        <translation>Este PC no da abasto: el tiempo va más despacio.</translation>
    </message>
    <message>
        <source>This practice run is over. The press goes on until you end the lesson.</source>
        <translation>Esta preparación de práctica ha terminado. La máquina sigue hasta que termine el ejercicio.</translation>
    </message>
    <message>
        <source>Time stands still</source>
        <translation>El tiempo está detenido</translation>
    </message>
    <message>
        <source>To the pr&amp;ocedure</source>
        <translation>Al procedimient&amp;o</translation>
    </message>
    <message>
        <source>To the practice press</source>
        <translation>A la máquina de prácticas</translation>
    </message>
</context>
<context>
    <name>taut::app::LogbookCard</name>
    <message>
        <source>%1 holds every seal of the logbook: %2.</source>
        <translation>%1 tiene todos los sellos del libro de registro: %2.</translation>
    </message>
    <message>
        <source>%1 is behind: it lacks %2 seals.</source>
        <translation>%1 va atrasado: le faltan %2 sellos.</translation>
    </message>
    <message>
        <source>%1 seals made since are then no longer in the logbook, only in the file that is kept.</source>
        <translation>%1 sellos hechos desde entonces ya no estarán en el libro de registro, solo en el archivo que se conserva.</translation>
    </message>
    <message>
        <source>A copy is the whole logbook, with open runs and with what people sign in with. It is read again and verified before it gets its name; the newest %1 of this logbook stay.</source>
        <translation>Una copia es el libro de registro entero, con las preparaciones abiertas y con lo que la gente usa para iniciar sesión. Se vuelve a leer y se verifica antes de recibir su nombre; quedan las %1 más recientes de este libro.</translation>
    </message>
    <message>
        <source>A supervisor who has signed in looks after this.</source>
        <translation>De esto se ocupa un supervisor que ha iniciado sesión.</translation>
    </message>
    <message>
        <source>An older copy gave way: %1.</source>
        <translation>Una copia antigua dejó su sitio: %1.</translation>
    </message>
    <message>
        <source>At work…</source>
        <translation>Trabajando…</translation>
    </message>
    <message>
        <source>Choose the mirror's folder…</source>
        <translation>Elegir la carpeta del espejo…</translation>
    </message>
    <message>
        <source>Copied to %1: read again and in order, %2 seals.</source>
        <translation>Copiado en %1: releído y en orden, %2 sellos.</translation>
    </message>
    <message>
        <source>Copies</source>
        <translation>Copias</translation>
    </message>
    <message>
        <source>Copy every week, to a folder…</source>
        <translation>Copiar cada semana, en una carpeta…</translation>
    </message>
    <message>
        <source>Copy now, to a folder or a stick…</source>
        <translation>Copiar ahora, en una carpeta o memoria USB…</translation>
    </message>
    <message>
        <source>Every week into %1.</source>
        <translation>Cada semana en %1.</translation>
    </message>
    <message>
        <source>From a copy everything comes back, from a mirror every sealed record. What will happen is said before it does, and what lies here now is kept.</source>
        <translation>De una copia vuelve todo; de un espejo, cada registro sellado. Lo que va a pasar se dice antes, y lo que está aquí ahora se conserva.</translation>
    </message>
    <message>
        <source>It holds %1 seals; the logbook here holds %2.</source>
        <translation>Tiene %1 sellos; el libro de registro de aquí tiene %2.</translation>
    </message>
    <message>
        <source>Logbooks (*.logbook)</source>
        <translation>Libros de registro (*.logbook)</translation>
    </message>
    <message>
        <source>Mirror</source>
        <translation>Espejo</translation>
    </message>
    <message>
        <source>No copy is made by itself. Choose a folder, and one is made there every week, beside whatever is done here.</source>
        <translation>Ninguna copia se hace sola. Elija una carpeta, y allí se hará una cada semana, además de lo que se haga aquí.</translation>
    </message>
    <message>
        <source>No mirror is kept. A mirror is a second file in a folder of your choice: another disk, a stick, another machine. Every seal goes there as soon as it is made; no PIN, no key and no open run does.</source>
        <translation>No se lleva ningún espejo. Un espejo es un segundo archivo en una carpeta que usted elige: otro disco, una memoria USB, otro equipo. Cada sello va allí en cuanto se hace; no van ningún PIN, ninguna clave ni ninguna preparación abierta.</translation>
    </message>
    <message>
        <source>None has been made there yet.</source>
        <translation>Allí aún no se ha hecho ninguna.</translation>
    </message>
    <message>
        <source>One is being made…</source>
        <translation>Se está haciendo una…</translation>
    </message>
    <message>
        <source>One is due, and could not be made.</source>
        <translation>Toca hacer una, y no se pudo.</translation>
    </message>
    <message>
        <source>Restore from a copy…</source>
        <translation>Restaurar desde una copia…</translation>
    </message>
    <message>
        <source>Restore the logbook</source>
        <translation>Restaurar el libro de registro</translation>
    </message>
    <message>
        <source>Restore the logbook from %1</source>
        <translation>Restaurar el libro de registro desde %1</translation>
    </message>
    <message>
        <source>Restored and in order: %1 seals. %2 of %3 people can sign in.</source>
        <translation>Restaurado y en orden: %1 sellos. Pueden iniciar sesión %2 de %3 personas.</translation>
    </message>
    <message>
        <source>Stop the mirror</source>
        <translation>Dejar de llevar el espejo</translation>
    </message>
    <message>
        <source>Stop the weekly copies</source>
        <translation>Dejar las copias semanales</translation>
    </message>
    <message>
        <source>The copy is verified first, and refused by the first thing wrong. What lies here now is kept beside it under a name with the date. Then everybody signs in again; of a mirror, with what they sign in with here.</source>
        <translation>La copia se verifica antes, y se rechaza por lo primero que esté mal. Lo que está aquí ahora se conserva al lado con un nombre con la fecha. Luego todos inician sesión otra vez; de un espejo, con lo que usan aquí.</translation>
    </message>
    <message>
        <source>The folder %1 is being looked at…</source>
        <translation>Se está mirando la carpeta %1…</translation>
    </message>
    <message>
        <source>The folder is being looked at…</source>
        <translation>Se está mirando la carpeta…</translation>
    </message>
    <message>
        <source>The last was made on %1, and verified then.</source>
        <translation>La última se hizo el %1, y se verificó entonces.</translation>
    </message>
    <message>
        <source>The last was made on %1, read again and in order: %2 seals.</source>
        <translation>La última se hizo el %1, releída y en orden: %2 sellos.</translation>
    </message>
    <message>
        <source>The logbook, kept twice</source>
        <translation>El libro de registro, por duplicado</translation>
    </message>
    <message>
        <source>The way back</source>
        <translation>El camino de vuelta</translation>
    </message>
    <message>
        <source>There is no mirror in %1 now. The logbook goes on without it.</source>
        <translation>Ahora no hay espejo en %1. El libro de registro sigue sin él.</translation>
    </message>
    <message>
        <source>This logbook: %1</source>
        <translation>Este libro de registro: %1</translation>
    </message>
    <message>
        <source>What lay here before is kept: %1.</source>
        <translation>Lo que había aquí antes se conserva: %1.</translation>
    </message>
    <message>
        <source>Where are the weekly copies to lie?</source>
        <translation>¿Dónde van a estar las copias semanales?</translation>
    </message>
    <message>
        <source>Where is the copy to lie?</source>
        <translation>¿Dónde va a estar la copia?</translation>
    </message>
    <message>
        <source>Where is the mirror to be kept?</source>
        <translation>¿Dónde se va a llevar el espejo?</translation>
    </message>
    <message>
        <source>Which copy or mirror?</source>
        <translation>¿Qué copia o espejo?</translation>
    </message>
</context>
<context>
    <name>taut::app::MainWindow</name>
    <message>
        <source>&amp;As the system</source>
        <translation>&amp;Como el sistema</translation>
    </message>
    <message>
        <source>&amp;Dark</source>
        <translation>&amp;Oscuro</translation>
    </message>
    <message>
        <source>&amp;High contrast</source>
        <translation>Con&amp;traste alto</translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation>C&amp;laro</translation>
    </message>
    <message>
        <source>&amp;Nothing moves by itself</source>
        <translation>&amp;Nada se mueve solo</translation>
    </message>
    <message>
        <source>A card is one step: where to stand, what to do, and one answer. A reading is judged while you type.</source>
        <translation>Una ficha es un paso: dónde ponerse, qué hacer y una respuesta. Una lectura se juzga mientras se escribe.</translation>
    </message>
    <message>
        <source>Begin a new logbook</source>
        <translation>Empezar un libro de registro nuevo</translation>
    </message>
    <message>
        <source>Help</source>
        <translation>Ayuda</translation>
    </message>
    <message>
        <source>Help for this page (F1)</source>
        <translation>Ayuda de esta página (F1)</translation>
    </message>
    <message>
        <source>Help, or F1, tells about the page you are on. This look round is there, too.</source>
        <translation>Ayuda, o F1, explica la página en que se está. Allí está también esta vuelta.</translation>
    </message>
    <message>
        <source>History</source>
        <translation>Historial</translation>
    </message>
    <message>
        <source>History: what was set, read and signed, each with its sheet to print.</source>
        <translation>Historial: qué se ajustó, leyó y firmó, cada uno con su hoja para imprimir.</translation>
    </message>
    <message>
        <source>How the screen looks: light or dark, size of the text, whether anything moves</source>
        <translation>Aspecto de la pantalla: clara u oscura, tamaño del texto, si algo se mueve</translation>
    </message>
    <message>
        <source>I have read it</source>
        <translation>Lo he leído</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Teclas</translation>
    </message>
    <message>
        <source>Keys on the screen</source>
        <translation>Teclas en la pantalla</translation>
    </message>
    <message>
        <source>Open another logbook</source>
        <translation>Abrir otro libro de registro</translation>
    </message>
    <message>
        <source>Practice</source>
        <translation>Prácticas</translation>
    </message>
    <message>
        <source>Practice: a press that answers as a real one does, and nothing of it counts.</source>
        <translation>Prácticas: una máquina que responde como una real, y nada de ello cuenta.</translation>
    </message>
    <message>
        <source>Run</source>
        <translation>Preparación</translation>
    </message>
    <message>
        <source>Run: choose what is to run, see what follows from it, and go from step to step.</source>
        <translation>Preparación: elegir qué va a correr, ver qué se deduce e ir de paso en paso.</translation>
    </message>
    <message>
        <source>Screen…</source>
        <translation>Pantalla…</translation>
    </message>
    <message>
        <source>Seen</source>
        <translation>Visto</translation>
    </message>
    <message>
        <source>Shop</source>
        <translation>Taller</translation>
    </message>
    <message>
        <source>Shop: people, presses and jobs, and the copies of the logbook.</source>
        <translation>Taller: personas, máquinas y trabajos, y las copias del libro de registro.</translation>
    </message>
    <message>
        <source>Sign in here: every answer is somebody's. Lock the screen when you walk away.</source>
        <translation>Identificarse aquí: cada respuesta es de alguien. Bloquear la pantalla al marcharse.</translation>
    </message>
    <message>
        <source>Tautweb</source>
        <translation>Tautweb</translation>
    </message>
    <message>
        <source>Tautweb leads you from a cold press to the point where ink can go on. It moves nothing and stops nothing: the press manual and local rules come first.</source>
        <translation>Tautweb lleva de una máquina fría hasta el punto en que puede entrar la tinta. No mueve ni para nada: el manual de la máquina y las reglas locales van primero.</translation>
    </message>
    <message>
        <source>Text %1 %</source>
        <translation>Texto %1 %</translation>
    </message>
    <message>
        <source>The sheet</source>
        <translation>La hoja</translation>
    </message>
    <message>
        <source>The taut line is the run at a glance: slack is not begun, drawn tight is done, parted is held up.</source>
        <translation>La línea tensa es la preparación de un vistazo: floja, sin empezar; tensa, hecha; partida, detenida.</translation>
    </message>
    <message>
        <source>The training record</source>
        <translation>El registro de práctica</translation>
    </message>
    <message>
        <source>What the lesson came to</source>
        <translation>Resultado del ejercicio</translation>
    </message>
</context>
<context>
    <name>taut::app::MakeSafeCard</name>
    <message>
        <source>&amp;Go on with the run</source>
        <translation>Se&amp;guir con la preparación</translation>
    </message>
    <message>
        <source>A break, or something else to do</source>
        <translation>Una pausa, u otra cosa que hacer</translation>
    </message>
    <message>
        <source>First make the press safe</source>
        <translation>Primero asegure la máquina</translation>
    </message>
    <message>
        <source>Go to the press, look at each of these now, and say it:</source>
        <translation>Vaya a la máquina, mire ahora cada una de estas cosas, y dígalo:</translation>
    </message>
    <message>
        <source>Nobody was at the screen</source>
        <translation>No había nadie ante la pantalla</translation>
    </message>
    <message>
        <source>Power or air was gone</source>
        <translation>Se fue la corriente o el aire</translation>
    </message>
    <message>
        <source>Somebody else stopped the press</source>
        <translation>Otra persona detuvo la máquina</translation>
    </message>
    <message>
        <source>Take over and &amp;go on with the run</source>
        <translation>Asumir la preparación y se&amp;guir</translation>
    </message>
    <message>
        <source>The page was left, the run kept open</source>
        <translation>Se salió de la página, la preparación quedó abierta</translation>
    </message>
    <message>
        <source>The press was given back to use at %1. Where you were is kept.</source>
        <translation>La máquina se devolvió al servicio (%1). Se conserva el punto donde estaba.</translation>
    </message>
    <message>
        <source>The program ended under the run</source>
        <translation>El programa se cerró durante la preparación</translation>
    </message>
    <message>
        <source>The program ended under the run, some time after %1. Where you were is kept.</source>
        <translation>El programa se cerró durante la preparación, algo después de %1. Se conserva el punto donde estaba.</translation>
    </message>
    <message>
        <source>The run was in the hands of %1. If you go on it is yours, and the vital steps of this stage are asked again.</source>
        <translation>La preparación estaba en manos de %1. Si sigue, pasa a ser suya, y los pasos vitales de esta etapa se preguntan otra vez.</translation>
    </message>
    <message>
        <source>The run was interrupted at %1: %2. Where you were is kept.</source>
        <translation>La preparación se interrumpió (%1): %2. Se conserva el punto donde estaba.</translation>
    </message>
    <message>
        <source>This screen moves nothing and stops nothing.</source>
        <translation>Esta pantalla no mueve ni detiene nada.</translation>
    </message>
    <message>
        <source>Writing…</source>
        <translation>Escribiendo…</translation>
    </message>
</context>
<context>
    <name>taut::app::MotionArea</name>
    <message>
        <source>&amp;Back</source>
        <translation>Re&amp;gresar</translation>
    </message>
    <message>
        <source>&amp;Done: %1</source>
        <translation>&amp;Hecho: %1</translation>
    </message>
    <message>
        <source>&amp;Done: it moved as expected</source>
        <translation>&amp;Hecho: se movió como se esperaba</translation>
    </message>
    <message>
        <source>&amp;Everyone is clear and I am at the control</source>
        <translation>Todos &amp;están apartados y yo estoy en el mando</translation>
    </message>
    <message>
        <source>This screen moves nothing and stops nothing.</source>
        <translation>Esta pantalla no mueve ni detiene nada.</translation>
    </message>
</context>
<context>
    <name>taut::app::Narrowing</name>
    <message>
        <source>Between two days</source>
        <translation>Entre dos días</translation>
    </message>
    <message>
        <source>Every job</source>
        <translation>Todos los trabajos</translation>
    </message>
    <message>
        <source>Every press</source>
        <translation>Todas las máquinas</translation>
    </message>
    <message>
        <source>Every substrate</source>
        <translation>Todos los sustratos</translation>
    </message>
    <message>
        <source>First day</source>
        <translation>Primer día</translation>
    </message>
    <message>
        <source>From the beginning</source>
        <translation>Desde el principio</translation>
    </message>
    <message>
        <source>How far back</source>
        <translation>Desde cuándo</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Trabajo</translation>
    </message>
    <message>
        <source>Last day</source>
        <translation>Último día</translation>
    </message>
    <message>
        <source>One month</source>
        <translation>Un mes</translation>
    </message>
    <message>
        <source>One year</source>
        <translation>Un año</translation>
    </message>
    <message>
        <source>Press</source>
        <translation>Máquina</translation>
    </message>
    <message>
        <source>Substrate</source>
        <translation>Sustrato</translation>
    </message>
    <message>
        <source>Three months</source>
        <translation>Tres meses</translation>
    </message>
    <message>
        <source>Two years</source>
        <translation>Dos años</translation>
    </message>
</context>
<context>
    <name>taut::app::NoLogbookPage</name>
    <message>
        <source>&amp;Try again</source>
        <translation>In&amp;tentar de nuevo</translation>
    </message>
    <message>
        <source>Begin a &amp;new logbook</source>
        <translation>Empezar un libro de registro &amp;nuevo</translation>
    </message>
    <message>
        <source>Begin a &amp;new logbook here</source>
        <translation>Empezar aquí un libro de registro &amp;nuevo</translation>
    </message>
    <message>
        <source>Begin a &amp;new logbook…</source>
        <translation>Empezar un libro de registro &amp;nuevo…</translation>
    </message>
    <message>
        <source>Look round in the &amp;demo shop</source>
        <translation>Mirar el taller de &amp;muestra</translation>
    </message>
    <message>
        <source>No logbook is open</source>
        <translation>No hay ningún libro de registro abierto</translation>
    </message>
    <message>
        <source>Open &amp;another logbook…</source>
        <translation>&amp;Abrir otro libro de registro…</translation>
    </message>
    <message>
        <source>Open to &amp;read only</source>
        <translation>Abrir solo para lee&amp;r</translation>
    </message>
    <message>
        <source>The logbook holds your presses, your people and every signed run. Begin it here, or open the one that you have. Language and size of the text are chosen under "Screen" above.</source>
        <translation>El libro de registro guarda sus máquinas, su gente y cada preparación firmada. Empiécelo aquí o abra el que ya tiene. El idioma y el tamaño del texto se eligen arriba, en «Pantalla».</translation>
    </message>
    <message>
        <source>There is no logbook here yet</source>
        <translation>Aquí aún no hay libro de registro</translation>
    </message>
    <message>
        <source>Welcome: this PC keeps no logbook yet</source>
        <translation>Bienvenida: este PC aún no lleva ningún libro de registro</translation>
    </message>
</context>
<context>
    <name>taut::app::NumberPad</name>
    <message>
        <source>Delete the last character</source>
        <translation>Borrar el último carácter</translation>
    </message>
    <message>
        <source>Key %1</source>
        <translation>Tecla %1</translation>
    </message>
    <message>
        <source>Space</source>
        <translation>Espacio</translation>
    </message>
    <message>
        <source>delete</source>
        <translation>borrar</translation>
    </message>
    <message>
        <source>space</source>
        <translation>espacio</translation>
    </message>
</context>
<context>
    <name>taut::app::OnceCard</name>
    <message>
        <source>Done: take it off the screen</source>
        <translation>Listo: quitarlo de la pantalla</translation>
    </message>
    <message>
        <source>Give it to them, and to nobody else: it is shown only now. They choose their name at the top of this window, type the code, and choose a PIN and a passphrase. It is good once.</source>
        <translation>Déselo a la persona, y a nadie más: se muestra solo ahora. Ella elige su nombre en lo alto de esta ventana, escribe el código, y elige un PIN y una frase de contraseña. Sirve una vez.</translation>
    </message>
    <message>
        <source>No printer is set up on this PC. Save the badge as PDF and print it elsewhere.</source>
        <translation>No hay impresora configurada en este PC. Guarde la credencial como PDF e imprímala en otro sitio.</translation>
    </message>
    <message>
        <source>PDF files (*.pdf)</source>
        <translation>Archivos PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Print it now: its code is kept nowhere and cannot be shown again. With its PIN it signs in your name. Where a passphrase is asked for, scan it, then type its PIN. A badge made before this one no longer works.</source>
        <translation>Imprímala ahora: su código no se guarda en ningún sitio y no se puede mostrar otra vez. Con su PIN firma en nombre de usted. Donde se pida una frase de contraseña, escanéela y luego escriba su PIN. Una credencial hecha antes que esta ya no sirve.</translation>
    </message>
    <message>
        <source>Print the badge</source>
        <translation>Imprimir la credencial</translation>
    </message>
    <message>
        <source>Save it as PDF</source>
        <translation>Guardarla como PDF</translation>
    </message>
    <message>
        <source>Save the badge</source>
        <translation>Guardar la credencial</translation>
    </message>
    <message>
        <source>Saved: %1. Whoever can read this file has the badge: delete it when it is printed.</source>
        <translation>Guardada: %1. Quien pueda leer este archivo tiene la credencial: bórrelo cuando esté impresa.</translation>
    </message>
    <message>
        <source>Sent to the printer.</source>
        <translation>Enviada a la impresora.</translation>
    </message>
    <message>
        <source>The badge as a scanner reads it</source>
        <translation>La credencial tal como la lee un escáner</translation>
    </message>
    <message>
        <source>The badge of %1</source>
        <translation>La credencial de %1</translation>
    </message>
    <message>
        <source>The first-use code of %1</source>
        <translation>El código de primer uso de %1</translation>
    </message>
</context>
<context>
    <name>taut::app::OtherHandsCard</name>
    <message>
        <source>%1 signs in here and goes on with it. Steps, targets and the sheet may be looked at meanwhile.</source>
        <translation>%1 inicia sesión aquí y sigue con ella. Entretanto se pueden mirar pasos, valores objetivo y la hoja.</translation>
    </message>
    <message>
        <source>Speak with %1 first: where the work stands, who is at the press, which stops are held. Then take it over: the vital steps of this stage are asked again, and a stop that was held is held anew.

If it goes on with %1: lock the screen, and let %1 sign in. Steps, targets and the sheet may be looked at meanwhile.</source>
        <translation>Hable antes con %1: cómo va el trabajo, quién está en la máquina, qué paros se mantienen. Luego asúmala: los pasos vitales de esta etapa se preguntan otra vez, y un paro que se mantenía se vuelve a mantener.

Si sigue con %1: bloquee la pantalla, y que %1 inicie sesión. Entretanto se pueden mirar pasos, valores objetivo y la hoja.</translation>
    </message>
    <message>
        <source>Ta&amp;ke over the run</source>
        <translation>As&amp;umir la preparación</translation>
    </message>
    <message>
        <source>This run is in the hands of %1</source>
        <translation>Esta preparación está en manos de %1</translation>
    </message>
    <message>
        <source>This screen moves nothing and stops nothing.</source>
        <translation>Esta pantalla no mueve ni detiene nada.</translation>
    </message>
</context>
<context>
    <name>taut::app::PracticeBand</name>
    <message>
        <source>Nothing here moves or stops a machine. In an emergency use the press.</source>
        <translation>Aquí nada mueve ni detiene una máquina. En una emergencia use la máquina.</translation>
    </message>
    <message>
        <source>PRACTICE</source>
        <translation>PRÁCTICA</translation>
    </message>
</context>
<context>
    <name>taut::app::PracticePage</name>
    <message>
        <source>&amp;Back to the lesson</source>
        <translation>&amp;Volver al ejercicio</translation>
    </message>
    <message>
        <source>Run %1 is open at this PC, on a real press, and nobody is to mistake one for the other. Sign it off or abandon it; then the practice press opens.</source>
        <translation>La preparación %1 está abierta en este PC, en una máquina real, y nadie debe confundir una con otra. Fírmela o abandónela; entonces se abre la máquina de prácticas.</translation>
    </message>
    <message>
        <source>The practice press is closed</source>
        <translation>La máquina de prácticas está cerrada</translation>
    </message>
    <message>
        <source>To the &amp;run</source>
        <translation>A la &amp;preparación</translation>
    </message>
</context>
<context>
    <name>taut::app::PressPicture</name>
    <message>
        <source>The practice press</source>
        <translation>La máquina de prácticas</translation>
    </message>
</context>
<context>
    <name>taut::app::ReadOnlyStrip</name>
    <message>
        <source>&amp;Another logbook…</source>
        <translation>&amp;Abrir otro libro de registro…</translation>
    </message>
    <message>
        <source>&amp;Try to open it</source>
        <translation>In&amp;tentar abrirlo</translation>
    </message>
    <message>
        <source>Open to read only: nothing can be entered, changed or signed here.</source>
        <translation>Abierto solo para leer: aquí no se puede introducir, cambiar ni firmar nada.</translation>
    </message>
</context>
<context>
    <name>taut::app::ReadingArea</name>
    <message>
        <source>&amp;Enter it again</source>
        <translation>Introducirla d&amp;e nuevo</translation>
    </message>
    <message>
        <source>&amp;Enter the reading</source>
        <translation>Introducir la l&amp;ectura</translation>
    </message>
    <message>
        <source>&amp;Number pad</source>
        <translation>Teclado &amp;numérico</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Lectura</translation>
    </message>
    <message>
        <source>Type the value with its unit.</source>
        <translation>Escriba el valor con su unidad.</translation>
    </message>
    <message>
        <source>Unit %1</source>
        <translation>Unidad %1</translation>
    </message>
</context>
<context>
    <name>taut::app::RecordActs</name>
    <message>
        <source>%1 — stands: %2</source>
        <translation>%1 — dice: %2</translation>
    </message>
    <message>
        <source>A supervisor reviews a run and makes it void.</source>
        <translation>Un supervisor revisa una preparación y la anula.</translation>
    </message>
    <message>
        <source>Correct</source>
        <translation>Corregir</translation>
    </message>
    <message>
        <source>Correct run %1</source>
        <translation>Corregir la preparación %1</translation>
    </message>
    <message>
        <source>It stays in the record, marked void on every page, and nothing can be said of it afterwards. There is no way back.</source>
        <translation>Queda en el registro, marcada como anulada en cada página, y después no se puede decir nada de ella. No hay vuelta atrás.</translation>
    </message>
    <message>
        <source>Look through its sheet first. Your name, the time and your signature stand beside it for good.</source>
        <translation>Repase antes su hoja. Su nombre, la hora y su firma quedan a su lado para siempre.</translation>
    </message>
    <message>
        <source>Make it void</source>
        <translation>Anularla</translation>
    </message>
    <message>
        <source>Make run %1 void</source>
        <translation>Anular la preparación %1</translation>
    </message>
    <message>
        <source>Make void</source>
        <translation>Anular</translation>
    </message>
    <message>
        <source>No single step: see the remark</source>
        <translation>Ningún paso concreto: vea la observación</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Observación</translation>
    </message>
    <message>
        <source>Review</source>
        <translation>Revisar</translation>
    </message>
    <message>
        <source>Review run %1</source>
        <translation>Revisar la preparación %1</translation>
    </message>
    <message>
        <source>Seen, and accepted as it stands</source>
        <translation>Vista, y aceptada como está</translation>
    </message>
    <message>
        <source>Sent back: something is to be put right</source>
        <translation>Devuelta: hay algo que corregir</translation>
    </message>
    <message>
        <source>Sign in to review or correct this run.</source>
        <translation>Inicie sesión para revisar o corregir esta preparación.</translation>
    </message>
    <message>
        <source>Sign the correction</source>
        <translation>Firmar la corrección</translation>
    </message>
    <message>
        <source>Sign the review</source>
        <translation>Firmar la revisión</translation>
    </message>
    <message>
        <source>The logbook is open to read only.</source>
        <translation>El libro de registro está abierto solo para leer.</translation>
    </message>
    <message>
        <source>What is wrong</source>
        <translation>Qué está mal</translation>
    </message>
    <message>
        <source>What it should be</source>
        <translation>Cómo debe ser</translation>
    </message>
    <message>
        <source>What was signed stays as it is; the correction stands beside it, with what stood, and is reviewed anew.</source>
        <translation>Lo firmado queda como está; la corrección queda a su lado, con lo que decía, y se revisa de nuevo.</translation>
    </message>
    <message>
        <source>What you say of it</source>
        <translation>Qué dice usted de ella</translation>
    </message>
    <message>
        <source>Why it is corrected</source>
        <translation>Por qué se corrige</translation>
    </message>
    <message>
        <source>Why it is void</source>
        <translation>Por qué se anula</translation>
    </message>
    <message>
        <source>must be there when it is sent back</source>
        <translation>obligatorio cuando se devuelve</translation>
    </message>
    <message>
        <source>with its unit, if it has one</source>
        <translation>con su unidad, si la tiene</translation>
    </message>
</context>
<context>
    <name>taut::app::ReportPane</name>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>No printer is set up on this PC. Save the sheet as PDF and print it elsewhere.</source>
        <translation>No hay impresora configurada en este PC. Guarde la hoja como PDF e imprímala en otro sitio.</translation>
    </message>
    <message>
        <source>PDF files (*.pdf)</source>
        <translation>Archivos PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Page 1 alone</source>
        <translation>Solo la página 1</translation>
    </message>
    <message>
        <source>Page back</source>
        <translation>Pág. anterior</translation>
    </message>
    <message>
        <source>Page on</source>
        <translation>Pág. siguiente</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Imprimir</translation>
    </message>
    <message>
        <source>Save as PDF</source>
        <translation>Guardar en PDF</translation>
    </message>
    <message>
        <source>Save the sheet</source>
        <translation>Guardar la hoja</translation>
    </message>
    <message>
        <source>Saved: %1</source>
        <translation>Guardado: %1</translation>
    </message>
    <message>
        <source>Sent to the printer.</source>
        <translation>Enviada a la impresora.</translation>
    </message>
</context>
<context>
    <name>taut::app::ReturnPanel</name>
    <message>
        <source>%1 less now</source>
        <translation>ahora %1 menos</translation>
    </message>
    <message>
        <source>%1 more now</source>
        <translation>ahora %1 más</translation>
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
        <translation>%1, aceptado por %2</translation>
    </message>
    <message>
        <source>%1, signed by %2</source>
        <translation>%1, firmado por %2</translation>
    </message>
    <message>
        <source>At the hand-over</source>
        <translation>En el relevo</translation>
    </message>
    <message>
        <source>Back to what is to run</source>
        <translation>Volver a lo que va a correr</translation>
    </message>
    <message>
        <source>Difference</source>
        <translation>Diferencia</translation>
    </message>
    <message>
        <source>For comparison only: what counts is what is computed now, for this roll.</source>
        <translation>Solo para comparar: cuenta lo que se calcula ahora, para esta bobina.</translation>
    </message>
    <message>
        <source>Job %1 ran here: %2</source>
        <translation>El trabajo %1 se hizo aquí: %2</translation>
    </message>
    <message>
        <source>Last time</source>
        <translation>La última vez</translation>
    </message>
    <message>
        <source>Nothing that can be compared was read in that run.</source>
        <translation>En aquella preparación no se leyó nada comparable.</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Ahora</translation>
    </message>
    <message>
        <source>Read by, at</source>
        <translation>Leído por, a las</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>What helped: %1</source>
        <translation>Qué ayudó: %1</translation>
    </message>
    <message>
        <source>What was set the last time, beside what is computed now</source>
        <translation>Qué se ajustó la última vez, junto a lo que se calcula ahora</translation>
    </message>
    <message>
        <source>Written down then</source>
        <translation>Anotado entonces</translation>
    </message>
    <message>
        <source>not known this time</source>
        <translation>no se sabe esta vez</translation>
    </message>
    <message>
        <source>outside then, accepted</source>
        <translation>fuera entonces, aceptado</translation>
    </message>
    <message>
        <source>outside today's window</source>
        <translation>fuera del margen de hoy</translation>
    </message>
    <message>
        <source>the same</source>
        <translation>igual</translation>
    </message>
</context>
<context>
    <name>taut::app::ReviewCard</name>
    <message>
        <source>%1 Answers given too fast, or before the time was over: %2. The sheet says which.</source>
        <translation>%1 Respuestas dadas demasiado deprisa, o antes de acabar el tiempo: %2. La hoja dice cuáles.</translation>
    </message>
    <message>
        <source>%1 Steps that were corrected: %2.</source>
        <translation>%1 Pasos corregidos: %2.</translation>
    </message>
    <message>
        <source>%1 steps are open: the run cannot be signed yet.</source>
        <translation>%1 pasos están abiertos: la preparación aún no se puede firmar.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>&amp;Seal it as it stands here</source>
        <translation>&amp;Sellar tal como está aquí</translation>
    </message>
    <message>
        <source>&amp;Sign</source>
        <translation>&amp;Firmar</translation>
    </message>
    <message>
        <source>&amp;Sign: done as it stands here</source>
        <translation>&amp;Firmar: hecho como está aquí</translation>
    </message>
    <message>
        <source>A stop is still held: the run can be signed when whoever holds it has given it up.</source>
        <translation>Aún se mantiene un paro: la preparación se puede firmar cuando quien lo mantiene lo haya levantado.</translation>
    </message>
    <message>
        <source>Answer</source>
        <translation>Respuesta</translation>
    </message>
    <message>
        <source>By, at</source>
        <translation>Por, a las</translation>
    </message>
    <message>
        <source>Look through the run, then sign</source>
        <translation>Revise la preparación, luego firme</translation>
    </message>
    <message>
        <source>Nothing is open, and nothing deviates.</source>
        <translation>No hay nada abierto, y nada se desvía.</translation>
    </message>
    <message>
        <source>Nothing is open. Deviations: %1.</source>
        <translation>No hay nada abierto. Desviaciones: %1.</translation>
    </message>
    <message>
        <source>Passphrase</source>
        <translation>Frase de contraseña</translation>
    </message>
    <message>
        <source>Passphrase, or scan your badge</source>
        <translation>Frase de contraseña, o escanee su credencial</translation>
    </message>
    <message>
        <source>R&amp;emarks, for whoever comes next</source>
        <translation>Obs&amp;ervaciones, para quien venga después</translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation>Observaciones</translation>
    </message>
    <message>
        <source>Sealing…</source>
        <translation>Sellando…</translation>
    </message>
    <message>
        <source>Signing says: abandoned. Your name, the time and your signature, made with your own key, stand in the record for good.</source>
        <translation>Firmar dice: abandonado. Su nombre, la hora y su firma, hecha con su propia clave, quedan en el registro para siempre.</translation>
    </message>
    <message>
        <source>Signing says: performed. Your name, the time and your signature, made with your own key, stand in the record for good.</source>
        <translation>Firmar dice: realizado. Su nombre, la hora y su firma, hecha con su propia clave, quedan en el registro para siempre.</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Estado</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Paso</translation>
    </message>
    <message>
        <source>Steps of this run</source>
        <translation>Pasos de esta preparación</translation>
    </message>
    <message>
        <source>This run is done and not sealed yet. Whoever seals it signs for it.</source>
        <translation>Esta preparación está hecha y aún no está sellada. Quien la sella firma por ella.</translation>
    </message>
    <message>
        <source>This run is in the hands of %1, who signs it. Esc leads back to where it can be taken over.</source>
        <translation>Esta preparación está en manos de %1, que la firma. Esc lleva de vuelta a donde se puede asumir.</translation>
    </message>
    <message>
        <source>This run was abandoned and is not sealed yet. Whoever seals it signs for it.</source>
        <translation>Esta preparación se abandonó y aún no está sellada. Quien la sella firma por ella.</translation>
    </message>
    <message>
        <source>Whoever signs must be signed in, and their role must allow it.</source>
        <translation>Quien firma debe haber iniciado sesión, y su rol debe permitirlo.</translation>
    </message>
    <message>
        <source>accepted by %1: %2</source>
        <translation>aceptada por %1: %2</translation>
    </message>
    <message>
        <source>before its time was over: %1</source>
        <translation>antes de acabar su tiempo: %1</translation>
    </message>
</context>
<context>
    <name>taut::app::RollForm</name>
    <message>
        <source>&amp;Back</source>
        <translation>Re&amp;gresar</translation>
    </message>
    <message>
        <source>A roll at &amp;hand</source>
        <translation>Una &amp;bobina a mano</translation>
    </message>
    <message>
        <source>A roll at hand</source>
        <translation>Una bobina a mano</translation>
    </message>
    <message>
        <source>Choose</source>
        <translation>Elegir</translation>
    </message>
    <message>
        <source>Core, inner diameter</source>
        <translation>Núcleo, diámetro interior</translation>
    </message>
    <message>
        <source>Its tag, if you type it</source>
        <translation>Su etiqueta, si se escribe</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Longitud</translation>
    </message>
    <message>
        <source>Mass</source>
        <translation>Masa</translation>
    </message>
    <message>
        <source>Material</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>None of these: I type what its label says</source>
        <translation>Ninguna de estas: escribo lo que dice su etiqueta</translation>
    </message>
    <message>
        <source>Not known</source>
        <translation>Se desconoce</translation>
    </message>
    <message>
        <source>Number on its label</source>
        <translation>Número de su etiqueta</translation>
    </message>
    <message>
        <source>Of another material, which this job does not take:</source>
        <translation>De otro material, que este trabajo no admite:</translation>
    </message>
    <message>
        <source>Outer diameter</source>
        <translation>Diámetro exterior</translation>
    </message>
    <message>
        <source>Splices inside</source>
        <translation>Empalmes dentro</translation>
    </message>
    <message>
        <source>Use th&amp;is roll</source>
        <translation>Usar esta bob&amp;ina</translation>
    </message>
    <message>
        <source>Wall of the core</source>
        <translation>Pared del núcleo</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Ancho</translation>
    </message>
    <message>
        <source>Winding</source>
        <translation>Bobinado</translation>
    </message>
    <message>
        <source>a number, if known</source>
        <translation>un número, si se conoce</translation>
    </message>
    <message>
        <source>face inside</source>
        <translation>cara hacia dentro</translation>
    </message>
    <message>
        <source>face outside</source>
        <translation>cara hacia fuera</translation>
    </message>
    <message>
        <source>if known</source>
        <translation>si se conoce</translation>
    </message>
    <message>
        <source>if measured</source>
        <translation>si se midió</translation>
    </message>
    <message>
        <source>if weighed</source>
        <translation>si se pesó</translation>
    </message>
    <message>
        <source>or scan it</source>
        <translation>o escanearla</translation>
    </message>
    <message>
        <source>straight across</source>
        <translation>de lado a lado</translation>
    </message>
    <message>
        <source>with its unit</source>
        <translation>con su unidad</translation>
    </message>
</context>
<context>
    <name>taut::app::RulerCheck</name>
    <message>
        <source>&amp;Set the screen by it</source>
        <translation>&amp;Ajustar la pantalla con ello</translation>
    </message>
    <message>
        <source>A bar of 100 mm on this screen</source>
        <translation>Una barra de 100 mm en esta pantalla</translation>
    </message>
    <message>
        <source>A bar of 4 in on this screen</source>
        <translation>Una barra de 4 in en esta pantalla</translation>
    </message>
    <message>
        <source>For example 3 15/16 in</source>
        <translation>Por ejemplo 3 15/16 in</translation>
    </message>
    <message>
        <source>For example 97 mm</source>
        <translation>Por ejemplo 97 mm</translation>
    </message>
    <message>
        <source>Hold a ruler to this bar. It should be 100 mm long from mark to mark. How long is it?</source>
        <translation>Poner una regla sobre esta barra. Debería medir 100 mm de marca a marca. ¿Cuánto mide?</translation>
    </message>
    <message>
        <source>Hold a ruler to this bar. It should be 4 in long from mark to mark. How long is it?</source>
        <translation>Poner una regla sobre esta barra. Debería medir 4 in de marca a marca. ¿Cuánto mide?</translation>
    </message>
    <message>
        <source>The screen is taken to be as large as it says.</source>
        <translation>Se toma la pantalla por tan grande como dice.</translation>
    </message>
    <message>
        <source>The screen was set by a ruler: %1 of what it says.</source>
        <translation>La pantalla se ajustó con una regla: %1 de lo que dice.</translation>
    </message>
    <message>
        <source>Understood: the ruler</source>
        <translation>Entendido: la regla</translation>
    </message>
    <message>
        <source>What the ruler says</source>
        <translation>Lo que dice la regla</translation>
    </message>
</context>
<context>
    <name>taut::app::RunLine</name>
    <message>
        <source>%1 of web used up</source>
        <translation>%1 de banda gastados</translation>
    </message>
    <message>
        <source>%1 readings outside at first</source>
        <translation>%1 lecturas fuera al principio</translation>
    </message>
    <message>
        <source>1 reading outside at first</source>
        <translation>1 lectura fuera al principio</translation>
    </message>
    <message>
        <source>Customer</source>
        <translation>Cliente</translation>
    </message>
    <message>
        <source>How long it took</source>
        <translation>Cuánto duró</translation>
    </message>
    <message>
        <source>Kind of run</source>
        <translation>Clase de preparación</translation>
    </message>
    <message>
        <source>Number of the run</source>
        <translation>Número</translation>
    </message>
    <message>
        <source>Press</source>
        <translation>Máquina</translation>
    </message>
    <message>
        <source>Readings outside</source>
        <translation>Lecturas fuera</translation>
    </message>
    <message>
        <source>Substrate</source>
        <translation>Sustrato</translation>
    </message>
    <message>
        <source>Title of the job</source>
        <translation>Título del trabajo</translation>
    </message>
    <message>
        <source>VOID</source>
        <translation>ANULADA</translation>
    </message>
    <message>
        <source>Web used up</source>
        <translation>Banda gastada</translation>
    </message>
    <message>
        <source>What became of it</source>
        <translation>Qué fue de ella</translation>
    </message>
    <message>
        <source>When it began</source>
        <translation>Cuándo empezó</translation>
    </message>
    <message>
        <source>Whose run</source>
        <translation>De quién</translation>
    </message>
    <message>
        <source>accepted by %1</source>
        <translation>aceptada por %1</translation>
    </message>
    <message>
        <source>corrected, to be reviewed</source>
        <translation>corregida, por revisar</translation>
    </message>
    <message>
        <source>sent back</source>
        <translation>devuelta</translation>
    </message>
    <message>
        <source>took %1 min</source>
        <translation>duró %1 min</translation>
    </message>
</context>
<context>
    <name>taut::app::RunView</name>
    <message>
        <source>&amp;View of the press</source>
        <translation>&amp;Vista de la máquina</translation>
    </message>
    <message>
        <source>Change the roll</source>
        <translation>Cambiar la bobina</translation>
    </message>
    <message>
        <source>Every target is computed anew for the new roll; answers that it touches are asked again.</source>
        <translation>Cada valor objetivo se calcula de nuevo para la bobina nueva; las respuestas afectadas se preguntan otra vez.</translation>
    </message>
    <message>
        <source>Mo&amp;re…</source>
        <translation>Má&amp;s…</translation>
    </message>
    <message>
        <source>S&amp;teps</source>
        <translation>Lis&amp;ta de pasos</translation>
    </message>
    <message>
        <source>The run</source>
        <translation>La preparación</translation>
    </message>
    <message>
        <source>Why (F2)</source>
        <translation>Por qué (F2)</translation>
    </message>
</context>
<context>
    <name>taut::app::ScenarioForm</name>
    <message>
        <source>1. Do it, with everything shown</source>
        <translation>1. Hacerlo, con todo a la vista</translation>
    </message>
    <message>
        <source>2. Again, telling the steps</source>
        <translation>2. Otra vez, diciendo los pasos</translation>
    </message>
    <message>
        <source>3. Again, telling the key points</source>
        <translation>3. Otra vez, diciendo los puntos clave</translation>
    </message>
    <message>
        <source>4. Again, telling the reasons</source>
        <translation>4. Otra vez, diciendo los motivos</translation>
    </message>
    <message>
        <source>A scenario of your own</source>
        <translation>Un escenario propio</translation>
    </message>
    <message>
        <source>Afterwards</source>
        <translation>Después</translation>
    </message>
    <message>
        <source>And so many more, by chance</source>
        <translation>Y este número más, al azar</translation>
    </message>
    <message>
        <source>At once</source>
        <translation>Enseguida</translation>
    </message>
    <message>
        <source>Free practice</source>
        <translation>Práctica libre</translation>
    </message>
    <message>
        <source>How it is gone through</source>
        <translation>Cómo se recorre</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Trabajo</translation>
    </message>
    <message>
        <source>Number of the chances</source>
        <translation>Número de los azares</translation>
    </message>
    <message>
        <source>Practise it</source>
        <translation>Practicarlo</translation>
    </message>
    <message>
        <source>Press</source>
        <translation>Máquina</translation>
    </message>
    <message>
        <source>Roll</source>
        <translation>Bobina</translation>
    </message>
    <message>
        <source>Save it as a file…</source>
        <translation>Guardarlo como archivo…</translation>
    </message>
    <message>
        <source>Save the scenario</source>
        <translation>Guardar el escenario</translation>
    </message>
    <message>
        <source>Scenarios (*.toml)</source>
        <translation>Escenarios (*.toml)</translation>
    </message>
    <message>
        <source>Test: nothing is shown, and it counts</source>
        <translation>Prueba: no se muestra nada, y cuenta</translation>
    </message>
    <message>
        <source>To the scenarios</source>
        <translation>A los escenarios</translation>
    </message>
    <message>
        <source>What is not as it should be</source>
        <translation>Lo que no está como debe</translation>
    </message>
    <message>
        <source>What it is called</source>
        <translation>Cómo se llama</translation>
    </message>
    <message>
        <source>What the press says otherwise is shown</source>
        <translation>Lo que contradice la máquina se muestra</translation>
    </message>
    <message>
        <source>scenario</source>
        <translation>escenario</translation>
    </message>
</context>
<context>
    <name>taut::app::ScreenKeys</name>
    <message>
        <source>Capital letters</source>
        <translation>Mayúsculas</translation>
    </message>
    <message>
        <source>Delete the last character</source>
        <translation>Borrar el último carácter</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Entrar</translation>
    </message>
    <message>
        <source>Key %1</source>
        <translation>Tecla %1</translation>
    </message>
    <message>
        <source>Keys on the screen</source>
        <translation>Teclas en la pantalla</translation>
    </message>
    <message>
        <source>Put the keys away</source>
        <translation>Quitar las teclas</translation>
    </message>
    <message>
        <source>Space</source>
        <translation>Espacio</translation>
    </message>
    <message>
        <source>capitals</source>
        <translation>mayúsculas</translation>
    </message>
    <message>
        <source>delete</source>
        <translation>borrar</translation>
    </message>
    <message>
        <source>put away</source>
        <translation>quitar</translation>
    </message>
    <message>
        <source>space</source>
        <translation>espacio</translation>
    </message>
</context>
<context>
    <name>taut::app::SecretLine</name>
    <message>
        <source>PIN of this badge</source>
        <translation>PIN de esta credencial</translation>
    </message>
    <message>
        <source>Passphrase, or badge</source>
        <translation>Frase de contraseña, o credencial</translation>
    </message>
</context>
<context>
    <name>taut::app::Session</name>
    <message>
        <source>Supervisor of the practice press</source>
        <translation>Supervisión de la máquina de prácticas</translation>
    </message>
</context>
<context>
    <name>taut::app::SetupPage</name>
    <message>
        <source>%1 minutes</source>
        <translation>%1 minutos</translation>
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
        <translation>Una credencial para firmar</translation>
    </message>
    <message>
        <source>A new first-use code for %1</source>
        <translation>Un nuevo código de primer uso para %1</translation>
    </message>
    <message>
        <source>A supervisor changes roles and lets people choose anew.</source>
        <translation>Un supervisor cambia roles y permite elegir de nuevo.</translation>
    </message>
    <message>
        <source>Another PIN or passphrase</source>
        <translation>Otro PIN u otra frase de contraseña</translation>
    </message>
    <message>
        <source>Another role for %1</source>
        <translation>Otro rol para %1</translation>
    </message>
    <message>
        <source>Back into service</source>
        <translation>Volver a dar de alta</translation>
    </message>
    <message>
        <source>Change it</source>
        <translation>Cambiarlo</translation>
    </message>
    <message>
        <source>Change my PIN or passphrase</source>
        <translation>Cambiar mi PIN o frase de contraseña</translation>
    </message>
    <message>
        <source>Change the role</source>
        <translation>Cambiar el rol</translation>
    </message>
    <message>
        <source>Changed.</source>
        <translation>Cambiado.</translation>
    </message>
    <message>
        <source>Changed. The badge of before no longer works: make another.</source>
        <translation>Cambiado. La credencial de antes ya no sirve: haga otra.</translation>
    </message>
    <message>
        <source>Enrol somebody</source>
        <translation>Dar de alta a alguien</translation>
    </message>
    <message>
        <source>Enrol them</source>
        <translation>Dar de alta</translation>
    </message>
    <message>
        <source>For whoever was shut out, or forgot. What they chose before no longer works; what they signed stays theirs.</source>
        <translation>Para quien se quedó sin acceso, o lo olvidó. Lo que eligió antes ya no sirve; lo que firmó sigue siendo suyo.</translation>
    </message>
    <message>
        <source>Give a new code</source>
        <translation>Dar un código nuevo</translation>
    </message>
    <message>
        <source>Give a new first-use code</source>
        <translation>Dar un nuevo código de primer uso</translation>
    </message>
    <message>
        <source>Its code is printed once. It opens your key together with a PIN of its own, of six digits or more: the badge alone is worth nothing to a finder.</source>
        <translation>Su código se imprime una vez. Abre su clave junto con un PIN propio, de seis cifras o más: la credencial sola no le sirve a quien la encuentre.</translation>
    </message>
    <message>
        <source>Keep the logbook twice</source>
        <translation>Llevar el libro por duplicado</translation>
    </message>
    <message>
        <source>Make me a badge</source>
        <translation>Hacerme una credencial</translation>
    </message>
    <message>
        <source>Make the badge</source>
        <translation>Hacer la credencial</translation>
    </message>
    <message>
        <source>May work alone at…</source>
        <translation>Puede trabajar a solas en…</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>New PIN</source>
        <translation>PIN nuevo</translation>
    </message>
    <message>
        <source>New PIN, once more</source>
        <translation>PIN nuevo, otra vez</translation>
    </message>
    <message>
        <source>New passphrase</source>
        <translation>Nueva frase de contraseña</translation>
    </message>
    <message>
        <source>New passphrase, once more</source>
        <translation>Nueva frase de contraseña, otra vez</translation>
    </message>
    <message>
        <source>PIN of the badge</source>
        <translation>PIN de la credencial</translation>
    </message>
    <message>
        <source>PIN of the badge, once more</source>
        <translation>PIN de la credencial, otra vez</translation>
    </message>
    <message>
        <source>PIN until now</source>
        <translation>PIN actual</translation>
    </message>
    <message>
        <source>Passp&amp;hrase until now, or scan the badge</source>
        <translation>&amp;Frase de contraseña actual, o escanee la credencial</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personas</translation>
    </message>
    <message>
        <source>Presses, jobs, substrates, procedures</source>
        <translation>Máquinas, trabajos, sustratos, procedimientos</translation>
    </message>
    <message>
        <source>Role</source>
        <translation>Rol</translation>
    </message>
    <message>
        <source>Sign in to change something here.</source>
        <translation>Inicie sesión para cambiar algo aquí.</translation>
    </message>
    <message>
        <source>Take %1 back into service</source>
        <translation>Volver a dar de alta a %1</translation>
    </message>
    <message>
        <source>Take %1 out of service</source>
        <translation>Dar de baja a %1</translation>
    </message>
    <message>
        <source>Take out of service</source>
        <translation>Dar de baja</translation>
    </message>
    <message>
        <source>They can no longer sign in. Nothing that they signed goes away, and their number is never given to anybody else.</source>
        <translation>Ya no puede iniciar sesión. Nada de lo que firmó desaparece, y su número nunca se da a otra persona.</translation>
    </message>
    <message>
        <source>They get a code, with which they choose a PIN and a passphrase that nobody else knows. The name and the number stay theirs for ever.</source>
        <translation>Recibe un código, con el que elige un PIN y una frase de contraseña que nadie más conoce. El nombre y el número son suyos para siempre.</translation>
    </message>
    <message>
        <source>This PC</source>
        <translation>Este PC</translation>
    </message>
    <message>
        <source>This PC locks itself after</source>
        <translation>Este PC se bloquea solo tras</translation>
    </message>
    <message>
        <source>Who works here</source>
        <translation>Quién trabaja aquí</translation>
    </message>
    <message>
        <source>You show that you know the old ones, and nobody else has to be there. With another passphrase you get another key to sign with, and a badge of before no longer works; what you signed stays yours.</source>
        <translation>Usted demuestra que conoce los antiguos, y nadie más tiene que estar presente. Con otra frase de contraseña recibe otra clave para firmar, y una credencial de antes ya no sirve; lo que firmó sigue siendo suyo.</translation>
    </message>
    <message>
        <source>as the crew knows them</source>
        <translation>como le conoce el equipo</translation>
    </message>
    <message>
        <source>cannot sign in</source>
        <translation>no puede iniciar sesión</translation>
    </message>
    <message>
        <source>has not chosen PIN and passphrase yet</source>
        <translation>aún no ha elegido PIN ni frase de contraseña</translation>
    </message>
    <message>
        <source>left empty, it stays as it is</source>
        <translation>si se deja vacío, queda como está</translation>
    </message>
    <message>
        <source>out of service</source>
        <translation>de baja</translation>
    </message>
    <message>
        <source>shut out after %1 wrong tries</source>
        <translation>sin acceso tras %1 intentos erróneos</translation>
    </message>
    <message>
        <source>signs with a passphrase</source>
        <translation>firma con frase de contraseña</translation>
    </message>
    <message>
        <source>signs with passphrase or badge</source>
        <translation>firma con frase de contraseña o credencial</translation>
    </message>
    <message>
        <source>six digits or more</source>
        <translation>seis cifras o más</translation>
    </message>
    <message>
        <source>wrong tries just now: %1</source>
        <translation>intentos erróneos ahora: %1</translation>
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
        <translation>Elegir PIN y frase de contraseña</translation>
    </message>
    <message>
        <source>Lock</source>
        <translation>Bloquear</translation>
    </message>
    <message>
        <source>PIN</source>
        <translation>PIN</translation>
    </message>
    <message>
        <source>Sign in</source>
        <translation>Iniciar sesión</translation>
    </message>
    <message>
        <source>Who are you?</source>
        <translation>¿Quién es usted?</translation>
    </message>
    <message>
        <source>Your PIN</source>
        <translation>Su PIN</translation>
    </message>
</context>
<context>
    <name>taut::app::StartPage</name>
    <message>
        <source>%1 is withdrawn from use since %2 by %3: %4</source>
        <translation>%1 está fuera de servicio desde %2, retirada por %3: %4</translation>
    </message>
    <message>
        <source>%1 sent run %2 (job %3) back and asks: %4</source>
        <translation>%1 devolvió la preparación %2 (trabajo %3) y pide: %4</translation>
    </message>
    <message>
        <source>%1, job %2: the run of %3 has begun and is not signed (%4).</source>
        <translation>%1, trabajo %2: la preparación de %3 ha empezado y no está firmada (%4).</translation>
    </message>
    <message>
        <source>And %1 more that were asked before: they stand in the history, under "Sent back".</source>
        <translation>Y %1 más que se preguntaron antes: están en el historial, en «Devueltas».</translation>
    </message>
    <message>
        <source>Begin the run</source>
        <translation>Empezar la preparación</translation>
    </message>
    <message>
        <source>Give it back to use</source>
        <translation>Devolverla al servicio</translation>
    </message>
    <message>
        <source>Go on with it</source>
        <translation>Seguir con ella</translation>
    </message>
    <message>
        <source>Look at it</source>
        <translation>Verla</translation>
    </message>
    <message>
        <source>Nothing is chosen yet.</source>
        <translation>Aún no se ha elegido nada.</translation>
    </message>
    <message>
        <source>Press %1</source>
        <translation>Máquina %1</translation>
    </message>
    <message>
        <source>Run %1 has begun and is not signed.</source>
        <translation>La preparación %1 ha empezado y no está firmada.</translation>
    </message>
    <message>
        <source>Sign in first: a run belongs to somebody.</source>
        <translation>Inicie sesión antes: una preparación pertenece a alguien.</translation>
    </message>
    <message>
        <source>The logbook is not open yet.</source>
        <translation>El libro de registro aún no está abierto.</translation>
    </message>
    <message>
        <source>The roll that is to run</source>
        <translation>La bobina que va a correr</translation>
    </message>
    <message>
        <source>This job ran here: %1. See what was set</source>
        <translation>Este trabajo se hizo aquí: %1. Ver qué se ajustó</translation>
    </message>
    <message>
        <source>This logbook knows nobody yet: its first supervisor is enrolled first.</source>
        <translation>Este libro de registro no conoce aún a nadie: antes se da de alta a su primer supervisor.</translation>
    </message>
    <message>
        <source>This press is withdrawn from use.</source>
        <translation>Esta máquina está retirada del servicio.</translation>
    </message>
    <message>
        <source>Two minutes to look round</source>
        <translation>Dos minutos para orientarse</translation>
    </message>
    <message>
        <source>What is shown is a trial: go back to the real roll first.</source>
        <translation>Lo que se muestra es un ensayo: vuelva antes a la bobina real.</translation>
    </message>
    <message>
        <source>What is to run, and on which press</source>
        <translation>Qué va a correr, y en qué máquina</translation>
    </message>
    <message>
        <source>What stands at the top of the list on the right cannot work: change it first.</source>
        <translation>Lo que está arriba en la lista de la derecha no puede funcionar: cámbielo antes.</translation>
    </message>
    <message>
        <source>What was put right</source>
        <translation>Qué se corrigió</translation>
    </message>
    <message>
        <source>Why a run cannot begin yet</source>
        <translation>Por qué aún no puede empezar una preparación</translation>
    </message>
    <message>
        <source>Writing to the logbook.</source>
        <translation>Escribiendo en el libro de registro.</translation>
    </message>
    <message>
        <source>Your role does not begin runs here; practise on the practice press.</source>
        <translation>Su rol no empieza preparaciones aquí; practique en la máquina de prácticas.</translation>
    </message>
</context>
<context>
    <name>taut::app::StepCard</name>
    <message>
        <source>%1 above the upper limit.</source>
        <translation>%1 por encima del límite superior.</translation>
    </message>
    <message>
        <source>%1 below the lower limit.</source>
        <translation>%1 por debajo del límite inferior.</translation>
    </message>
    <message>
        <source>%1 changed after this was answered. Answer it again.</source>
        <translation>%1 cambió después de esta respuesta. Respóndalo de nuevo.</translation>
    </message>
    <message>
        <source>%1, %2. For this step, this value and this window only. It is printed on the sheet.</source>
        <translation>%1, %2. Solo para este paso, este valor y este margen. Se imprime en la hoja.</translation>
    </message>
    <message>
        <source>%1, vital</source>
        <translation>%1, vital</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>&amp;Accept the deviation</source>
        <translation>&amp;Aceptar la desviación</translation>
    </message>
    <message>
        <source>&amp;Find what this setting does</source>
        <translation>Ave&amp;riguar qué hace este ajuste</translation>
    </message>
    <message>
        <source>Accept this value as a deviation</source>
        <translation>Aceptar este valor como desviación</translation>
    </message>
    <message>
        <source>Accepted as a deviation by %1: %2</source>
        <translation>Aceptado como desviación por %1: %2</translation>
    </message>
    <message>
        <source>An input changed after this was answered. Answer it again.</source>
        <translation>Un dato cambió después de esta respuesta. Respóndalo de nuevo.</translation>
    </message>
    <message>
        <source>Answered before its time was over: %1. The sheet says so.</source>
        <translation>Respondido antes de acabar su tiempo: %1. La hoja lo dice.</translation>
    </message>
    <message>
        <source>Answered “%1” by %2, %3.</source>
        <translation>Respondido «%1» por %2, %3.</translation>
    </message>
    <message>
        <source>Ask a &amp;supervisor</source>
        <translation>Pedirlo a un s&amp;upervisor</translation>
    </message>
    <message>
        <source>Asked again because its stage is done again. Look, and answer anew.</source>
        <translation>Se pregunta otra vez porque su etapa se repite. Mire, y responda de nuevo.</translation>
    </message>
    <message>
        <source>Back to what is to be &amp;done</source>
        <translation>&amp;Volver a lo que hay que hacer</translation>
    </message>
    <message>
        <source>Does not apply: %1</source>
        <translation>No procede: %1</translation>
    </message>
    <message>
        <source>Hands go in here: only while a stop is held.</source>
        <translation>Aquí se meten las manos: solo mientras se mantiene un paro.</translation>
    </message>
    <message>
        <source>It has been given up since.</source>
        <translation>Se ha levantado desde entonces.</translation>
    </message>
    <message>
        <source>It is %1.</source>
        <translation>Es %1.</translation>
    </message>
    <message>
        <source>It is %1: %2.</source>
        <translation>Es %1: %2.</translation>
    </message>
    <message>
        <source>Look and say it again: interrupted or handed over since.</source>
        <translation>Mire y declárelo de nuevo: desde entonces se interrumpió o se entregó.</translation>
    </message>
    <message>
        <source>Not yet.</source>
        <translation>Todavía no.</translation>
    </message>
    <message>
        <source>Show what comes &amp;first</source>
        <translation>Mostrar lo que ha&amp;y que hacer antes</translation>
    </message>
    <message>
        <source>Step %1 of %2</source>
        <translation>Paso %1 de %2</translation>
    </message>
    <message>
        <source>That is less than the instrument can tell: read it again.</source>
        <translation>Eso es menos de lo que distingue el instrumento: léalo de nuevo.</translation>
    </message>
    <message>
        <source>That is not what this step wants. Put it right and answer again.</source>
        <translation>Eso no es lo que pide este paso. Corríjalo y responda de nuevo.</translation>
    </message>
    <message>
        <source>The stop was put on by %1, %2.</source>
        <translation>El paro lo puso %1, %2.</translation>
    </message>
    <message>
        <source>The stop was put on by %1; %2 said so, %3.</source>
        <translation>El paro lo puso %1; lo dijo %2, %3.</translation>
    </message>
    <message>
        <source>This is not the tag of roll %1, for which the run was begun. Bring that roll, or change the roll of this run below.</source>
        <translation>Esta no es la tarjeta de la bobina %1, para la que se empezó la preparación. Traiga esa bobina, o cambie abajo la bobina de esta preparación.</translation>
    </message>
    <message>
        <source>Try, in this order:</source>
        <translation>Pruebe, en este orden:</translation>
    </message>
    <message>
        <source>Why it may &amp;stay as it is</source>
        <translation>Po&amp;r qué puede quedar así</translation>
    </message>
    <message>
        <source>Writing…</source>
        <translation>Escribiendo…</translation>
    </message>
</context>
<context>
    <name>taut::app::StepList</name>
    <message>
        <source>%1 of %2 to do</source>
        <translation>%1 de %2 por hacer</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1, vital</source>
        <translation>%1, vital</translation>
    </message>
    <message>
        <source>Place %1, %2</source>
        <translation>Puesto %1, %2</translation>
    </message>
    <message>
        <source>Steps of this place</source>
        <translation>Pasos de este puesto</translation>
    </message>
    <message>
        <source>done</source>
        <translation>hecho</translation>
    </message>
</context>
<context>
    <name>taut::app::StripCharts</name>
    <message>
        <source>The press itself does not show all of this.</source>
        <translation>La máquina misma no muestra todo esto.</translation>
    </message>
</context>
<context>
    <name>taut::app::TagPanel</name>
    <message>
        <source>&amp;Take these over</source>
        <translation>&amp;Tomar estos datos</translation>
    </message>
    <message>
        <source>A second bar code of this label, lines added: %1.</source>
        <translation>Un segundo código de barras de esta etiqueta, líneas añadidas: %1.</translation>
    </message>
    <message>
        <source>Another roll: take the tag over anew.</source>
        <translation>Otra bobina: tomar de nuevo los datos de la etiqueta.</translation>
    </message>
    <message>
        <source>Compare each line with the label: where a separator was lost, two lines become one.</source>
        <translation>Comparar cada línea con la etiqueta: donde se perdió un separador, dos líneas se hacen una.</translation>
    </message>
    <message>
        <source>P&amp;ut the tag away</source>
        <translation>&amp;Quitar la etiqueta</translation>
    </message>
    <message>
        <source>Scan the roll's tag now, whatever has the keyboard.</source>
        <translation>Escanear ahora la etiqueta de la bobina, tenga quien tenga el teclado.</translation>
    </message>
    <message>
        <source>Taken over. What was entered by hand is as it was.</source>
        <translation>Datos tomados. Lo introducido a mano queda como estaba.</translation>
    </message>
    <message>
        <source>That was somebody's badge, not the tag of a roll. It was not kept.</source>
        <translation>Eso era la tarjeta de alguien, no la etiqueta de una bobina. No se guardó.</translation>
    </message>
    <message>
        <source>The tag read before stays.</source>
        <translation>La etiqueta leída antes queda.</translation>
    </message>
    <message>
        <source>This bar code was read before and says nothing new.</source>
        <translation>Este código de barras ya se leyó y no dice nada nuevo.</translation>
    </message>
    <message>
        <source>This is another tag. What the one before had filled is out again.</source>
        <translation>Esta es otra etiqueta. Lo que había rellenado la anterior se ha quitado.</translation>
    </message>
    <message>
        <source>This is another tag: it takes the place of the one before.</source>
        <translation>Esta es otra etiqueta: ocupa el lugar de la anterior.</translation>
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
        <translation>Lo que dice la etiqueta</translation>
    </message>
</context>
<context>
    <name>taut::app::TagText</name>
    <message>
        <source>Character %1 of %2. %3</source>
        <translation>Carácter %1 de %2. %3</translation>
    </message>
    <message>
        <source>It ends too early, after character %1. %2</source>
        <translation>Termina demasiado pronto, tras el carácter %1. %2</translation>
    </message>
    <message>
        <source>The tag as it was scanned</source>
        <translation>La etiqueta tal como se escaneó</translation>
    </message>
</context>
<context>
    <name>taut::app::TargetList</name>
    <message>
        <source>Choose a line to see why it is what it is.</source>
        <translation>Elija una línea para ver por qué es como es.</translation>
    </message>
    <message>
        <source>To be set on the press</source>
        <translation>Por ajustar en la máquina</translation>
    </message>
    <message>
        <source>What cannot work</source>
        <translation>Lo que no puede funcionar</translation>
    </message>
    <message>
        <source>What does not fit</source>
        <translation>Lo que no encaja</translation>
    </message>
    <message>
        <source>What follows from this</source>
        <translation>Lo que se deduce de esto</translation>
    </message>
</context>
<context>
    <name>taut::app::TautLineWidget</name>
    <message>
        <source>Stage %1, %2</source>
        <translation>Etapa %1, %2</translation>
    </message>
    <message>
        <source>Stages of this run</source>
        <translation>Etapas de esta preparación</translation>
    </message>
</context>
<context>
    <name>taut::app::ThisPcPage</name>
    <message>
        <source>&amp;Back</source>
        <translation>Re&amp;gresar</translation>
    </message>
    <message>
        <source>&amp;Go on</source>
        <translation>Se&amp;guir</translation>
    </message>
    <message>
        <source>&amp;Look round in the demo shop</source>
        <translation>&amp;Mirar el taller de muestra</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>As each press says</source>
        <translation>Como diga cada máquina</translation>
    </message>
    <message>
        <source>As the press's units say</source>
        <translation>Según las unidades de la máquina</translation>
    </message>
    <message>
        <source>Everybody can choose their own language and units later. In the demo shop nothing counts: it has a logbook of its own.</source>
        <translation>Cada persona puede elegir después su idioma y sus unidades. En el taller de muestra nada cuenta: tiene su propio libro de registro.</translation>
    </message>
    <message>
        <source>Is the screen as large as it says?</source>
        <translation>¿Es la pantalla tan grande como dice?</translation>
    </message>
    <message>
        <source>Kept on this PC alone; nothing of it is in the record.</source>
        <translation>Se guarda solo en este PC; nada de ello está en el registro.</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Idioma</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Carta</translation>
    </message>
    <message>
        <source>Metric (mm, N, bar)</source>
        <translation>Métricas (mm, N, bar)</translation>
    </message>
    <message>
        <source>Paper of the sheets</source>
        <translation>Papel de las hojas</translation>
    </message>
    <message>
        <source>This PC</source>
        <translation>Este PC</translation>
    </message>
    <message>
        <source>This PC, before you begin</source>
        <translation>Este PC, antes de empezar</translation>
    </message>
    <message>
        <source>US (in, lbf, psi)</source>
        <translation>EE. UU. (in, lbf, psi)</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Unidades</translation>
    </message>
</context>
<context>
    <name>taut::app::TimePage</name>
    <message>
        <source>It is being worked out.</source>
        <translation>Se está calculando.</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Trabajo</translation>
    </message>
    <message>
        <source>Kind of run</source>
        <translation>Clase de preparación</translation>
    </message>
    <message>
        <source>Press</source>
        <translation>Máquina</translation>
    </message>
    <message>
        <source>Put together by</source>
        <translation>Agrupar por</translation>
    </message>
    <message>
        <source>Shift</source>
        <translation>Turno</translation>
    </message>
    <message>
        <source>Substrate</source>
        <translation>Sustrato</translation>
    </message>
    <message>
        <source>The logbook is not open in this window.</source>
        <translation>El libro de registro no está abierto en esta ventana.</translation>
    </message>
    <message>
        <source>The sheet of times and losses</source>
        <translation>La hoja de tiempos y pérdidas</translation>
    </message>
    <message>
        <source>times</source>
        <translation>tiempos</translation>
    </message>
</context>
<context>
    <name>taut::app::Told</name>
    <message>
        <source>%1 And %2 more.</source>
        <translation>%1 Y %2 más.</translation>
    </message>
    <message>
        <source>%1 signed: %2 %3</source>
        <translation>%1 firmó: %2 %3</translation>
    </message>
    <message>
        <source>%1, %2: %3 of %4 points, %5.</source>
        <translation>%1, %2: %3 de %4 puntos, %5.</translation>
    </message>
    <message>
        <source>It happened: %1</source>
        <translation>Ocurrió: %1</translation>
    </message>
    <message>
        <source>Not right and found: %1. Missed: %2. Named in vain: %3.</source>
        <translation>Mal y hallado: %1. Pasado por alto: %2. Nombrado en vano: %3.</translation>
    </message>
    <message>
        <source>Vital steps missed: %1.</source>
        <translation>Pasos vitales omitidos: %1.</translation>
    </message>
    <message>
        <source>Vital steps missed: %1; and %2 more, which the sheet of the attempt names.</source>
        <translation>Pasos vitales omitidos: %1; y %2 más, que la hoja del intento nombra.</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>todavía no</translation>
    </message>
    <message>
        <source>passed</source>
        <translation>superado</translation>
    </message>
</context>
<context>
    <name>taut::app::Tour</name>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>On</source>
        <translation>Seguir</translation>
    </message>
    <message>
        <source>That is enough</source>
        <translation>Es suficiente</translation>
    </message>
    <message>
        <source>To work</source>
        <translation>A trabajar</translation>
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
        <translation>%1 · firmó %2</translation>
    </message>
    <message>
        <source>%1 · to be taught again</source>
        <translation>%1 · por enseñar de nuevo</translation>
    </message>
    <message>
        <source>&amp;Back to the scenarios</source>
        <translation>&amp;Volver a los escenarios</translation>
    </message>
    <message>
        <source>An attempt of %1</source>
        <translation>Un intento de %1</translation>
    </message>
    <message>
        <source>Attempts</source>
        <translation>Intentos</translation>
    </message>
    <message>
        <source>Attempts: what still has to be taught again comes first</source>
        <translation>Intentos: primero lo que aún hay que enseñar de nuevo</translation>
    </message>
    <message>
        <source>Look at it and si&amp;gn</source>
        <translation>Mirarlo y &amp;firmar</translation>
    </message>
    <message>
        <source>Nobody whose record you may see has finished a lesson at this PC.</source>
        <translation>Nadie cuyo registro usted pueda ver ha terminado un ejercicio en este PC.</translation>
    </message>
    <message>
        <source>See the attempt</source>
        <translation>Ver el intento</translation>
    </message>
    <message>
        <source>Sign for it</source>
        <translation>Firmarlo</translation>
    </message>
    <message>
        <source>Sign in first: a record is shown to whose it is, and to trainers.</source>
        <translation>Primero identifíquese: un registro lo ven su dueño y los instructores.</translation>
    </message>
    <message>
        <source>Training record</source>
        <translation>Registro de práctica</translation>
    </message>
    <message>
        <source>What you saw</source>
        <translation>Lo que vio</translation>
    </message>
    <message>
        <source>What you teach again, and how</source>
        <translation>Qué enseña de nuevo, y cómo</translation>
    </message>
    <message>
        <source>Who practised</source>
        <translation>Quién practicó</translation>
    </message>
    <message>
        <source>must be there: it was not passed</source>
        <translation>obligatorio: no fue superado</translation>
    </message>
    <message>
        <source>practised</source>
        <translation>practicado</translation>
    </message>
</context>
<context>
    <name>taut::app::TrialPanel</name>
    <message>
        <source>%1 (real: %2)</source>
        <translation>%1 (real: %2)</translation>
    </message>
    <message>
        <source>%1 to try</source>
        <translation>%1 de ensayo</translation>
    </message>
    <message>
        <source>%1, job %2, roll %3</source>
        <translation>%1, trabajo %2, bobina %3</translation>
    </message>
    <message>
        <source>Back to the real roll</source>
        <translation>Volver a la bobina real</translation>
    </message>
    <message>
        <source>Charts as a picture</source>
        <translation>Gráficos como imagen</translation>
    </message>
    <message>
        <source>Diameter of the roll</source>
        <translation>Diámetro de la bobina</translation>
    </message>
    <message>
        <source>Nothing here is set by the diameter of a roll.</source>
        <translation>Aquí nada se ajusta por el diámetro de una bobina.</translation>
    </message>
    <message>
        <source>Nothing is stored, and no run begins from here.</source>
        <translation>No se guarda nada, y desde aquí no empieza ninguna preparación.</translation>
    </message>
    <message>
        <source>Pictures (*.png)</source>
        <translation>Imágenes (*.png)</translation>
    </message>
    <message>
        <source>Real values again</source>
        <translation>Otra vez los valores reales</translation>
    </message>
    <message>
        <source>Speed of the job</source>
        <translation>Velocidad del trabajo</translation>
    </message>
    <message>
        <source>Substrate</source>
        <translation>Sustrato</translation>
    </message>
    <message>
        <source>Substrate to try</source>
        <translation>Sustrato de ensayo</translation>
    </message>
    <message>
        <source>TRIAL: not the real roll</source>
        <translation>ENSAYO: no es la bobina real</translation>
    </message>
    <message>
        <source>Until then the real value is shown.</source>
        <translation>Hasta entonces se muestra el valor real.</translation>
    </message>
    <message>
        <source>What does not fit</source>
        <translation>Lo que no encaja</translation>
    </message>
    <message>
        <source>What else moves</source>
        <translation>Qué más cambia</translation>
    </message>
    <message>
        <source>What is set, in this trial</source>
        <translation>Qué se ajusta, en este ensayo</translation>
    </message>
    <message>
        <source>What is shown is a trial</source>
        <translation>Lo que se muestra es un ensayo</translation>
    </message>
    <message>
        <source>What would follow from the values tried</source>
        <translation>Qué se deduciría de los valores de ensayo</translation>
    </message>
    <message>
        <source>Width of the web</source>
        <translation>Ancho de la banda</translation>
    </message>
    <message>
        <source>as on the real roll</source>
        <translation>como en la bobina real</translation>
    </message>
    <message>
        <source>not on the real roll</source>
        <translation>no en la bobina real</translation>
    </message>
    <message>
        <source>real roll: %1</source>
        <translation>bobina real: %1</translation>
    </message>
</context>
<context>
    <name>taut::app::WaitingPage</name>
    <message>
        <source>%1 deviations</source>
        <translation>%1 desviaciones</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>%1 · Roll %2</source>
        <translation>%1 · Bobina %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>1 deviation</source>
        <translation>1 desviación</translation>
    </message>
    <message>
        <source>Accept %1 runs</source>
        <translation>Aceptar %1 preparaciones</translation>
    </message>
    <message>
        <source>Accept the %1 looked through</source>
        <translation>Aceptar las %1 revisadas</translation>
    </message>
    <message>
        <source>Accept the one looked through</source>
        <translation>Aceptar la revisada</translation>
    </message>
    <message>
        <source>Accept those looked through</source>
        <translation>Aceptar las revisadas</translation>
    </message>
    <message>
        <source>Constants that drift</source>
        <translation>Constantes con deriva</translation>
    </message>
    <message>
        <source>I have looked it through</source>
        <translation>La he revisado entera</translation>
    </message>
    <message>
        <source>Look at the new edition</source>
        <translation>Ver la nueva edición</translation>
    </message>
    <message>
        <source>Nothing waits.</source>
        <translation>Nada pendiente.</translation>
    </message>
    <message>
        <source>Overdue checks</source>
        <translation>Controles vencidos</translation>
    </message>
    <message>
        <source>Presses out of use</source>
        <translation>Máquinas fuera de servicio</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Observación</translation>
    </message>
    <message>
        <source>Sent back, not corrected yet</source>
        <translation>Devueltas, aún sin corregir</translation>
    </message>
    <message>
        <source>Sign the reviews</source>
        <translation>Firmar las revisiones</translation>
    </message>
    <message>
        <source>The logbook is not open in this window.</source>
        <translation>El libro de registro no está abierto en esta ventana.</translation>
    </message>
    <message>
        <source>The sheet of the chosen run</source>
        <translation>La hoja de la preparación elegida</translation>
    </message>
    <message>
        <source>This is looked after in the shop.</source>
        <translation>Esto se atiende en el taller.</translation>
    </message>
    <message>
        <source>To be reviewed</source>
        <translation>Por revisar</translation>
    </message>
    <message>
        <source>To be reviewed: %1. Each is looked through before it is accepted.</source>
        <translation>Por revisar: %1. Cada una se revisa entera antes de aceptarla.</translation>
    </message>
    <message>
        <source>To be reviewed: something outside was accepted</source>
        <translation>Por revisar: se aceptó algo fuera de margen</translation>
    </message>
    <message>
        <source>To the shop</source>
        <translation>Al taller</translation>
    </message>
    <message>
        <source>What waits</source>
        <translation>Lo pendiente</translation>
    </message>
    <message>
        <source>Wrong tries at the door</source>
        <translation>Intentos erróneos de acceso</translation>
    </message>
    <message>
        <source>Your name, the time and your signature stand beside each of them for good: %1</source>
        <translation>Su nombre, la hora y su firma quedan para siempre junto a cada una de ellas: %1</translation>
    </message>
    <message>
        <source>by %1 signed runs</source>
        <translation>según %1 preparaciones firmadas</translation>
    </message>
    <message>
        <source>checks</source>
        <translation>controles</translation>
    </message>
    <message>
        <source>last in the run %1</source>
        <translation>la última vez en %1</translation>
    </message>
    <message>
        <source>looked through</source>
        <translation>revisada</translation>
    </message>
    <message>
        <source>not seen done</source>
        <translation>no se vio hecho</translation>
    </message>
    <message>
        <source>since %1</source>
        <translation>desde %1</translation>
    </message>
    <message>
        <source>wrong tries: %1</source>
        <translation>intentos erróneos: %1</translation>
    </message>
</context>
<context>
    <name>taut::app::WeekPage</name>
    <message>
        <source>Press</source>
        <translation>Máquina</translation>
    </message>
    <message>
        <source>The logbook is not open in this window.</source>
        <translation>El libro de registro no está abierto en esta ventana.</translation>
    </message>
    <message>
        <source>The week on one page</source>
        <translation>La semana en una página</translation>
    </message>
    <message>
        <source>This logbook has no press yet.</source>
        <translation>El libro de registro aún no tiene máquinas.</translation>
    </message>
    <message>
        <source>Weeks</source>
        <translation>Semanas</translation>
    </message>
    <message>
        <source>this week</source>
        <translation>esta semana</translation>
    </message>
    <message>
        <source>to %1</source>
        <translation>hasta %1</translation>
    </message>
</context>
<context>
    <name>taut::app::WhatHappened</name>
    <message>
        <source>Begin again, the same</source>
        <translation>Empezar de nuevo, igual</translation>
    </message>
    <message>
        <source>Begin again, with other chances</source>
        <translation>Empezar de nuevo, con otros azares</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Seguir</translation>
    </message>
    <message>
        <source>It came to that because:</source>
        <translation>Se llegó a eso porque:</translation>
    </message>
    <message>
        <source>The step that guards against it: %1</source>
        <translation>El paso que lo evita: %1</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>Qué ha pasado</translation>
    </message>
</context>
<context>
    <name>taut::app::WhyPanel</name>
    <message>
        <source>%1, from %2</source>
        <translation>%1, de %2</translation>
    </message>
    <message>
        <source>Advice</source>
        <translation>Consejo</translation>
    </message>
    <message>
        <source>How it is computed, formula %1</source>
        <translation>Cómo se calcula, fórmula %1</translation>
    </message>
    <message>
        <source>It cannot be computed. Missing from the files:</source>
        <translation>No se puede calcular. Falta en los archivos:</translation>
    </message>
    <message>
        <source>Not with this roll:</source>
        <translation>No con esta bobina:</translation>
    </message>
    <message>
        <source>See</source>
        <translation>Véase</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Fuente</translation>
    </message>
    <message>
        <source>This cannot be:</source>
        <translation>Esto no puede ser:</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Por qué</translation>
    </message>
    <message>
        <source>Window, by %1</source>
        <translation>Margen, por %1</translation>
    </message>
    <message>
        <source>Window, lowest by %1, highest by %2</source>
        <translation>Margen, mínimo por %1, máximo por %2</translation>
    </message>
    <message>
        <source>the drawn path, %1</source>
        <translation>el camino dibujado, %1</translation>
    </message>
    <message>
        <source>the reading %1</source>
        <translation>la lectura %1</translation>
    </message>
    <message>
        <source>the table %1</source>
        <translation>la tabla %1</translation>
    </message>
    <message>
        <source>the target %1</source>
        <translation>el valor objetivo %1</translation>
    </message>
    <message>
        <source>this shop's policy %1</source>
        <translation>las normas de este taller, %1</translation>
    </message>
</context>
<context>
    <name>taut::app::WithdrawnCard</name>
    <message>
        <source>%1, by %2, %3</source>
        <translation>%1, por %2, %3</translation>
    </message>
    <message>
        <source>&amp;Give the press back</source>
        <translation>&amp;Devolver la máquina al servicio</translation>
    </message>
    <message>
        <source>A supervisor other than %1 signs in here and gives it back.</source>
        <translation>Un supervisor que no sea %1 inicia sesión aquí y la devuelve al servicio.</translation>
    </message>
    <message>
        <source>Look at it, and say what was done before you give it back.</source>
        <translation>Mírela, y diga qué se hizo antes de devolverla al servicio.</translation>
    </message>
    <message>
        <source>This press is withdrawn from use</source>
        <translation>Esta máquina está retirada del servicio</translation>
    </message>
    <message>
        <source>What was &amp;done to put it right</source>
        <translation>Qué se hi&amp;zo para arreglarla</translation>
    </message>
    <message>
        <source>What was done to put it right</source>
        <translation>Qué se hizo para arreglarla</translation>
    </message>
</context>
<context>
    <name>text</name>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>al menos %1</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>como máximo %1</translation>
    </message>
</context>
</TS>
