<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es">
<context>
    <name>BlockWords</name>
    <message>
        <source>%1 a hectare</source>
        <translation>%1 por hectárea</translation>
    </message>
    <message>
        <source>%1 an acre</source>
        <translation>%1 por acre</translation>
    </message>
    <message>
        <source>%1 trees a hectare</source>
        <translation>%1 árboles por hectárea</translation>
    </message>
    <message>
        <source>%1 trees an acre</source>
        <translation>%1 árboles por acre</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <translation>%1 sobre %2</translation>
    </message>
    <message>
        <source>planting in %1</source>
        <translation>se planta en %1</translation>
    </message>
    <message>
        <source>planned for %1</source>
        <translation>previsto para %1</translation>
    </message>
    <message>
        <source>planted %1</source>
        <translation>plantado el %1</translation>
    </message>
    <message>
        <source>nothing planted yet</source>
        <translation>aún sin plantar</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1: %2 %3, %4 %5</source>
        <translation>%1: %2 %3, %4 %5</translation>
    </message>
    <message>
        <source>%1: your word</source>
        <translation>%1: según usted</translation>
    </message>
    <message>
        <source>%1: your word, %2</source>
        <translation>%1: según usted, %2</translation>
    </message>
    <message>
        <source>main planting</source>
        <translation>plantación principal</translation>
    </message>
    <message>
        <source>pollinizer</source>
        <translation>polinizador</translation>
    </message>
    <message>
        <source>replants</source>
        <translation>replantes</translation>
    </message>
    <message>
        <source>opens %1</source>
        <translation>abre el %1</translation>
    </message>
    <message>
        <source>open to %1</source>
        <translation>abierto hasta el %1</translation>
    </message>
    <message>
        <source>closes %1</source>
        <translation>cierra el %1</translation>
    </message>
</context>
<context>
    <name>Blocks</name>
    <message>
        <source>%1 row</source>
        <translation>%1 hilera</translation>
    </message>
    <message>
        <source>%1 rows</source>
        <translation>%1 hileras</translation>
    </message>
    <message>
        <source>%1 day late</source>
        <translation>%1 día de retraso</translation>
    </message>
    <message>
        <source>%1 days late</source>
        <translation>%1 días de retraso</translation>
    </message>
    <message>
        <source>%1 block</source>
        <translation>%1 cuadro</translation>
    </message>
    <message>
        <source>%1 blocks</source>
        <translation>%1 cuadros</translation>
    </message>
    <message>
        <source>%1 crew</source>
        <translation>%1 cuadrilla</translation>
    </message>
    <message>
        <source>%1 crews</source>
        <translation>%1 cuadrillas</translation>
    </message>
    <message>
        <source>%1 tree</source>
        <translation>%1 árbol</translation>
    </message>
    <message>
        <source>%1 trees</source>
        <translation>%1 árboles</translation>
    </message>
    <message>
        <source>, %1 replant</source>
        <translation>, %1 replante</translation>
    </message>
    <message>
        <source>, %1 replants</source>
        <translation>, %1 replantes</translation>
    </message>
</context>
<context>
    <name>Calendar</name>
    <message>
        <source>%1 block</source>
        <translation>%1 cuadro</translation>
    </message>
    <message>
        <source>%1 blocks</source>
        <translation>%1 cuadros</translation>
    </message>
    <message>
        <source>%1, seen</source>
        <translation>%1, observada</translation>
    </message>
    <message>
        <source>%1 late</source>
        <translation>%1 con retraso</translation>
    </message>
    <message>
        <source>%1 closes within days</source>
        <translation>%1 cierra en pocos días</translation>
    </message>
    <message>
        <source>%1 close within days</source>
        <translation>%1 cierran en pocos días</translation>
    </message>
    <message>
        <source>week %1</source>
        <translation>semana %1</translation>
    </message>
    <message>
        <source>Print week %1, which holds %2</source>
        <translation>Imprimir la semana %1, que contiene %2</translation>
    </message>
    <message>
        <source>Undo: %1</source>
        <translation>Deshacer: %1</translation>
    </message>
</context>
<context>
    <name>Caution</name>
    <message>
        <source>About one flower bud in ten dies at %1 %3, nine in ten at %2 %3.</source>
        <translation>Muere cerca de una de cada diez yemas florales a %1 %3; nueve de cada diez a %2 %3.</translation>
    </message>
    <message>
        <source>Killing frost, down to %1 %2 at %3.</source>
        <translation>Helada mortal para las yemas, hasta %1 %2 en %3.</translation>
    </message>
    <message>
        <source>Frost, down to %1 %2 at %3.</source>
        <translation>Helada, hasta %1 %2 en %3.</translation>
    </message>
    <message>
        <source>Close to harmful frost, down to %1 %2 at %3.</source>
        <translation>Cerca de una helada dañina, hasta %1 %2 en %3.</translation>
    </message>
    <message>
        <source>Frosty morning, down to %1 %2.</source>
        <translation>Mañana de hielo, hasta %1 %2.</translation>
    </message>
    <message>
        <source>Buds and young wood are brittle until it has thawed.</source>
        <translation>Las yemas y la madera joven se quiebran hasta que se deshiela.</translation>
    </message>
    <message>
        <source>Hard cold, down to %1 %2 on %3.</source>
        <translation>Frío fuerte, hasta %1 %2 el %3.</translation>
    </message>
    <message>
        <source>Sharp drop, from %1 to %2 %3 by %4.</source>
        <translation>Descenso brusco, de %1 a %2 %3 para el %4.</translation>
    </message>
    <message>
        <source>Leave pruning cuts until it has passed, and take the youngest trees last.</source>
        <translation>Deje la poda para cuando haya pasado, y los árboles más jóvenes al último.</translation>
    </message>
    <message>
        <source>Warm and wet on this day and the next, %1 %2 on average, rain %3 %4.</source>
        <translation>Tibio y húmedo este día y el siguiente, %1 %2 en promedio, lluvia %3 %4.</translation>
    </message>
    <message>
        <source>Leave cuts for dry weather: fire blight enters fresh wounds. This is no measure of risk.</source>
        <translation>Deje los cortes para tiempo seco: el tizón de fuego entra por heridas frescas. Esto no mide el riesgo.</translation>
    </message>
    <message>
        <source>Rain, %1 %2.</source>
        <translation>Lluvia, %1 %2.</translation>
    </message>
    <message>
        <source>Disease spreads in wet trees, and rungs slip.</source>
        <translation>En árboles mojados se propagan las enfermedades, y los peldaños resbalan.</translation>
    </message>
    <message>
        <source>Rain the day before, %1 %2.</source>
        <translation>Lluvia el día anterior, %1 %2.</translation>
    </message>
    <message>
        <source>Begin no cuts until the trees are dry.</source>
        <translation>No empiece a cortar hasta que los árboles estén secos.</translation>
    </message>
    <message>
        <source>Rain the day after, %1 %2.</source>
        <translation>Lluvia al día siguiente, %1 %2.</translation>
    </message>
    <message>
        <source>Fresh cuts want a second dry day.</source>
        <translation>Los cortes frescos necesitan un segundo día seco.</translation>
    </message>
    <message>
        <source>Very hot, up to %1 %2.</source>
        <translation>Mucho calor, hasta %1 %2.</translation>
    </message>
    <message>
        <source>Hot, up to %1 %2.</source>
        <translation>Calor, hasta %1 %2.</translation>
    </message>
    <message>
        <source>Water, shade and a rest every hour: people fall ill, and bared fruit burns.</source>
        <translation>Agua, sombra y un descanso cada hora: la gente se enferma y la fruta destapada se quema.</translation>
    </message>
    <message>
        <source>Water, shade and rest; heavy work early in the day.</source>
        <translation>Agua, sombra y descanso; el trabajo pesado, temprano.</translation>
    </message>
    <message>
        <source>Cautions, not orders: thermometers, sites and trees differ. Look at your own, and let local advice and local rules come first.</source>
        <translation>Son avisos, no órdenes: cada termómetro, terreno y árbol es distinto. Mire los suyos; los consejos y las reglas locales van primero.</translation>
    </message>
    <message>
        <source>frost</source>
        <translation>helada</translation>
    </message>
    <message>
        <source>frosty</source>
        <translation>hielo</translation>
    </message>
    <message>
        <source>hard cold</source>
        <translation>frío fuerte</translation>
    </message>
    <message>
        <source>warm, wet</source>
        <translation>tibio, húmedo</translation>
    </message>
    <message>
        <source>rain</source>
        <translation>lluvia</translation>
    </message>
    <message>
        <source>damp</source>
        <translation>húmedo</translation>
    </message>
    <message>
        <source>heat</source>
        <translation>calor</translation>
    </message>
</context>
<context>
    <name>Console</name>
    <message>
        <source>&quot;%1&quot; is no day of the calendar, written like 2027-04-06</source>
        <translation>&quot;%1&quot; no es un día del calendario, escrito como 2027-04-06</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not rows, each named once, written like 1-4,7</source>
        <translation>&quot;%1&quot; no son hileras, cada una nombrada una sola vez, escritas como 1-4,7</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no ISO week, written like 2027-W14</source>
        <translation>&quot;%1&quot; no es una semana ISO, escrita como 2027-W14</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no state; it is waiting, open, closing, late, lapsed, done or set-aside</source>
        <translation>&quot;%1&quot; no es un estado; puede ser waiting, open, closing, late, lapsed, done o set-aside</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no language spoken here; it is en or es</source>
        <translation>&quot;%1&quot; no es un idioma que se hable aquí; puede ser en o es</translation>
    </message>
    <message>
        <source>Standard output did not take the whole result; free some space or send it elsewhere.</source>
        <translation>La salida estándar no recibió el resultado completo; libere espacio o envíelo a otro lugar.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; holds %2: blocks %3, plantings %4, tasks %5, ticks %6.</source>
        <translation>&quot;%1&quot; contiene %2: cuadros %3, plantaciones %4, trabajos %5, marcas %6.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is a whole copy of &quot;%2&quot;.</source>
        <translation>&quot;%1&quot; es una copia completa de &quot;%2&quot;.</translation>
    </message>
    <message>
        <source>Undone: %1</source>
        <translation>Deshecho: %1</translation>
    </message>
    <message>
        <source>Done again: %1</source>
        <translation>Rehecho: %1</translation>
    </message>
    <message>
        <source>&quot;%1&quot; holds the programme &quot;%2&quot; with %3 operations; nothing is to be mended.</source>
        <translation>&quot;%1&quot; contiene el programa &quot;%2&quot; con %3 operaciones; no hay nada que corregir.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; holds the sheet of week %2: jobs %3, pages %4.</source>
        <translation>&quot;%1&quot; contiene la hoja de la semana %2: trabajos %3, páginas %4.</translation>
    </message>
    <message>
        <source>There is no stage &quot;%1&quot;; `topwire-cli stages` lists those dated.</source>
        <translation>No existe la etapa &quot;%1&quot;; `topwire-cli stages` muestra las que tienen fecha.</translation>
    </message>
    <message>
        <source>There is no stage &quot;%1&quot;; the nearest is &quot;%2&quot;.</source>
        <translation>No existe la etapa &quot;%1&quot;; la más parecida es &quot;%2&quot;.</translation>
    </message>
    <message>
        <source>There is no block &quot;%1&quot;; there are: %2.</source>
        <translation>No existe el cuadro &quot;%1&quot;; existen: %2.</translation>
    </message>
    <message>
        <source>%1, %2: %3 to %4.</source>
        <translation>%1, %2: del %3 al %4.</translation>
    </message>
    <message>
        <source>It stands so already; nothing was changed.</source>
        <translation>Ya está así; no se cambió nada.</translation>
    </message>
    <message>
        <source>There is no planting &quot;%1&quot;; `topwire-cli blocks` lists them.</source>
        <translation>No existe la plantación &quot;%1&quot;; `topwire-cli blocks` las muestra.</translation>
    </message>
    <message>
        <source>There is no planting &quot;%1&quot;; the nearest is &quot;%2&quot;.</source>
        <translation>No existe la plantación &quot;%1&quot;; la más parecida es &quot;%2&quot;.</translation>
    </message>
    <message>
        <source>%1 is still to come on %2; give the day it was done or seen.</source>
        <translation>%1 aún está por venir el %2; indique el día en que se hizo o se observó.</translation>
    </message>
    <message>
        <source>The file &quot;%1&quot; cannot be read; look at its name and who may read it.</source>
        <translation>No se puede leer el archivo &quot;%1&quot;; revise su nombre y quién tiene permiso de leerlo.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no number, written like -3.5</source>
        <translation>&quot;%1&quot; no es un número, escrito como -3.5</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no unit of temperature; it is C, F or tenths</source>
        <translation>&quot;%1&quot; no es una unidad de temperatura; puede ser C, F o tenths</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no unit of rain; it is mm, in or tenths</source>
        <translation>&quot;%1&quot; no es una unidad de lluvia; puede ser mm, in o tenths</translation>
    </message>
    <message>
        <source>Winters at %1 are too warm for the published heat sums. Give your own dates of three past seasons, which take their place, and enter the stages you see, which move the later ones.</source>
        <translation>Los inviernos en %1 son demasiado cálidos para las sumas de calor publicadas. Dé sus propias fechas de tres temporadas pasadas, que toman su lugar, y registre las etapas que observe, que desplazan las posteriores.</translation>
    </message>
</context>
<context>
    <name>Deed</name>
    <message>
        <source>What this step would change has been changed since, so it was left as it is. Look at it as it stands now and decide again.</source>
        <translation>Lo que este paso cambiaría se modificó después, así que se dejó como está. Revíselo tal como está ahora y decida de nuevo.</translation>
    </message>
    <message>
        <source>Planting %1 has ticks on record, so it can&apos;t be taken out. Set its open tasks aside instead.</source>
        <translation>La plantación %1 tiene marcas registradas, así que no se puede quitar. Mejor deje de lado sus trabajos abiertos.</translation>
    </message>
    <message>
        <source>A tick of %1 is a record and stays; take it back with a new one.</source>
        <translation>Una marca de %1 es un registro y permanece; desmárquela con una nueva.</translation>
    </message>
    <message>
        <source>A change on record can&apos;t be read, so undo does not reach past it.</source>
        <translation>No se puede leer un cambio registrado, así que deshacer no llega más atrás.</translation>
    </message>
    <message>
        <source>This text is not in UTF-8, so its letters can&apos;t be read.</source>
        <translation>Este texto no está en UTF-8, así que no se pueden leer sus letras.</translation>
    </message>
    <message>
        <source>This text is too long; keep it under %1 letters.</source>
        <translation>Este texto es demasiado largo; use menos de %1 letras.</translation>
    </message>
    <message>
        <source>Keep this on one line, without control characters.</source>
        <translation>Escriba esto en una sola línea, sin caracteres de control.</translation>
    </message>
    <message>
        <source>A name is missing here; type one.</source>
        <translation>Aquí falta un nombre; escriba uno.</translation>
    </message>
    <message>
        <source>An elevation lies between -430 m and 5,000 m; check it.</source>
        <translation>La altitud debe estar entre -430 m y 5,000 m; revísela.</translation>
    </message>
    <message>
        <source>The monthly temperatures are missing; choose a station or type them in.</source>
        <translation>Faltan las temperaturas mensuales; elija una estación o escríbalas.</translation>
    </message>
    <message>
        <source>A temperature of %1 is not between -60 and 60 degrees Celsius; check it.</source>
        <translation>La temperatura %1 no está entre -60 y 60 grados Celsius; revísela.</translation>
    </message>
    <message>
        <source>In %1 the minimum (%2) is above the maximum (%3); swap or correct them.</source>
        <translation>En %1 la mínima (%2) está por encima de la máxima (%3); intercámbielas o corríjalas.</translation>
    </message>
    <message>
        <source>A latitude for apples lies between -66 and 66 degrees; south of the equator is negative.</source>
        <translation>La latitud para manzanos debe estar entre -66 y 66 grados; al sur del ecuador es negativa.</translation>
    </message>
    <message>
        <source>Work is ticked already, and its seasons would change across the equator; keep the sign of the latitude.</source>
        <translation>Ya hay trabajos marcados y sus temporadas cambiarían al cruzar el ecuador; conserve el signo de la latitud.</translation>
    </message>
    <message>
        <source>Records can&apos;t begin on %1; choose a day between 1900 and 2200.</source>
        <translation>Los registros no pueden empezar el %1; elija un día entre 1900 y 2200.</translation>
    </message>
    <message>
        <source>Rows stand between 0.5 and 20 m apart (1.7 and 65 ft); check the row spacing.</source>
        <translation>Entre hileras hay de 0.5 a 20 m (1.7 a 65 ft); revise la distancia entre hileras.</translation>
    </message>
    <message>
        <source>A row is between 1 and 3,000 m long (3 and 9,800 ft); check the row length.</source>
        <translation>Una hilera mide entre 1 y 3,000 m de largo (3 y 9,800 ft); revise el largo de la hilera.</translation>
    </message>
    <message>
        <source>There is a block called %1 already; choose another name.</source>
        <translation>Ya existe un cuadro llamado %1; elija otro nombre.</translation>
    </message>
    <message>
        <source>Row %1 holds trees of planting %2; keep it, or change the planting first.</source>
        <translation>La hilera %1 tiene árboles de la plantación %2; consérvela, o cambie primero la plantación.</translation>
    </message>
    <message>
        <source>Rows %1 hold trees of planting %2; keep them, or change the planting first.</source>
        <translation>Las hileras %1 tienen árboles de la plantación %2; consérvelas, o cambie primero la plantación.</translation>
    </message>
    <message>
        <source>A block needs at least one row; type them like 1-12, 15.</source>
        <translation>Un cuadro necesita al menos una hilera; escríbalas como 1-12, 15.</translation>
    </message>
    <message>
        <source>That block is no longer in the orchard.</source>
        <translation>Ese cuadro ya no está en el huerto.</translation>
    </message>
    <message>
        <source>%1 has ticks on record and stays, so that they keep their place. Set its open tasks aside instead.</source>
        <translation>%1 tiene marcas registradas y permanece, para que conserven su lugar. Mejor deje de lado sus trabajos abiertos.</translation>
    </message>
    <message>
        <source>Planting %1 is a replant in these rows; delete it first.</source>
        <translation>La plantación %1 es un replante en estas hileras; elimínela primero.</translation>
    </message>
    <message>
        <source>Orchard settings changed</source>
        <translation>Ajustes del huerto cambiados</translation>
    </message>
    <message>
        <source>Block %1 added</source>
        <translation>Cuadro %1 agregado</translation>
    </message>
    <message>
        <source>Block %1 changed</source>
        <translation>Cuadro %1 cambiado</translation>
    </message>
    <message>
        <source>Block %1 deleted</source>
        <translation>Cuadro %1 eliminado</translation>
    </message>
    <message>
        <source>That planting is no longer in the orchard.</source>
        <translation>Esa plantación ya no está en el huerto.</translation>
    </message>
    <message>
        <source>Planting %1 deleted</source>
        <translation>Plantación %1 eliminada</translation>
    </message>
    <message>
        <source>Nothing is chosen here; choose a name.</source>
        <translation>Aquí no se ha elegido nada; elija un nombre.</translation>
    </message>
    <message>
        <source>%1 is not in the table; choose a name from the list.</source>
        <translation>%1 no está en la tabla; elija un nombre de la lista.</translation>
    </message>
    <message>
        <source>%1 is not in the table. Is it %2?</source>
        <translation>%1 no está en la tabla. ¿Será %2?</translation>
    </message>
    <message>
        <source>A short code is missing, such as creek-1-gala.</source>
        <translation>Falta un código corto, como creek-1-gala.</translation>
    </message>
    <message>
        <source>A code has lower-case letters a to z, digits and hyphens only.</source>
        <translation>Un código lleva solo minúsculas de la a a la z, dígitos y guiones.</translation>
    </message>
    <message>
        <source>The code %1 is taken; choose another.</source>
        <translation>El código %1 ya está en uso; elija otro.</translation>
    </message>
    <message>
        <source>Planted on %1 can&apos;t be right; choose a day from 1900 to %2.</source>
        <translation>No es posible que se haya plantado el %1; elija un día desde 1900 hasta %2.</translation>
    </message>
    <message>
        <source>Row %1 belongs to planting %2 already; choose other rows, or enter this as a replant.</source>
        <translation>La hilera %1 ya pertenece a la plantación %2; elija otras hileras, o registre esta como replante.</translation>
    </message>
    <message>
        <source>Rows %1 belong to planting %2 already; choose other rows, or enter this as a replant.</source>
        <translation>Las hileras %1 ya pertenecen a la plantación %2; elija otras hileras, o registre esta como replante.</translation>
    </message>
    <message>
        <source>Row %1 holds no older planting, which a replant fills up; rows that do: %2.</source>
        <translation>La hilera %1 no tiene una plantación anterior que el replante complete; hileras que sí la tienen: %2.</translation>
    </message>
    <message>
        <source>Rows %1 hold no older planting, which a replant fills up; rows that do: %2.</source>
        <translation>Las hileras %1 no tienen una plantación anterior que el replante complete; hileras que sí la tienen: %2.</translation>
    </message>
    <message>
        <source>Its block is no longer in the orchard.</source>
        <translation>Su cuadro ya no está en el huerto.</translation>
    </message>
    <message>
        <source>A planting needs at least one row; type them like 1-12, 15.</source>
        <translation>Una plantación necesita al menos una hilera; escríbalas como 1-12, 15.</translation>
    </message>
    <message>
        <source>Row %1 is not in this block. It has rows %2.</source>
        <translation>La hilera %1 no está en este cuadro. Tiene las hileras %2.</translation>
    </message>
    <message>
        <source>Rows %1 are not in this block. It has rows %2.</source>
        <translation>Las hileras %1 no están en este cuadro. Tiene las hileras %2.</translation>
    </message>
    <message>
        <source>A count of trees lies between 1 and %1; check it.</source>
        <translation>El número de árboles debe estar entre 1 y %1; revíselo.</translation>
    </message>
    <message>
        <source>Trees stand between 0.1 and 20 m apart (0.3 and 65 ft); check the tree spacing.</source>
        <translation>Entre árboles hay de 0.1 a 20 m (0.3 a 65 ft); revise la distancia entre árboles.</translation>
    </message>
    <message>
        <source>Its trees can&apos;t be counted; give the trees in a row, or the row length of the block.</source>
        <translation>No se pueden contar sus árboles; indique los árboles por hilera, o el largo de hilera del cuadro.</translation>
    </message>
    <message>
        <source>A row is shorter than the tree spacing, which leaves no tree; check both.</source>
        <translation>Una hilera es más corta que la distancia entre árboles, así que no cabe ningún árbol; revise ambas medidas.</translation>
    </message>
    <message>
        <source>Row %1 has ticks of this planting; keep it.</source>
        <translation>La hilera %1 tiene marcas de esta plantación; consérvela.</translation>
    </message>
    <message>
        <source>Rows %1 have ticks of this planting; keep them.</source>
        <translation>Las hileras %1 tienen marcas de esta plantación; consérvelas.</translation>
    </message>
    <message>
        <source>Planting %1 is a replant in rows %2; keep those here.</source>
        <translation>La plantación %1 es un replante en las hileras %2; consérvelas aquí.</translation>
    </message>
    <message>
        <source>%1 has ticks on record and can&apos;t move to another block.</source>
        <translation>%1 tiene marcas registradas y no se puede mover a otro cuadro.</translation>
    </message>
    <message>
        <source>There is a crew called %1 already; choose another name.</source>
        <translation>Ya existe una cuadrilla llamada %1; elija otro nombre.</translation>
    </message>
    <message>
        <source>A crew has between 1 and 200 workers.</source>
        <translation>Una cuadrilla tiene entre 1 y 200 trabajadores.</translation>
    </message>
    <message>
        <source>A working day has between half an hour and 24 hours.</source>
        <translation>Una jornada tiene entre media hora y 24 horas.</translation>
    </message>
    <message>
        <source>Planting %1 added</source>
        <translation>Plantación %1 agregada</translation>
    </message>
    <message>
        <source>Planting %1 changed</source>
        <translation>Plantación %1 cambiada</translation>
    </message>
    <message>
        <source>Crew %1 added</source>
        <translation>Cuadrilla %1 agregada</translation>
    </message>
    <message>
        <source>%1 is not seen on %2; it falls between %3 and %4. Check the day.</source>
        <translation>%1 no se observa el %2; ocurre entre el %3 y el %4. Revise el día.</translation>
    </message>
    <message>
        <source>%1 comes before %3, which was seen here on %4, so it can&apos;t be seen on %2; correct one of the two.</source>
        <translation>%1 va antes de %3, que se observó aquí el %4, así que no se puede observar el %2; corrija una de las dos.</translation>
    </message>
    <message>
        <source>%1 comes after %3, which was seen here on %4, so it can&apos;t be seen on %2; correct one of the two.</source>
        <translation>%1 va después de %3, que se observó aquí el %4, así que no se puede observar el %2; corrija una de las dos.</translation>
    </message>
    <message>
        <source>The window ends on %1, before it opens on %2; swap them.</source>
        <translation>El plazo termina el %1, antes de abrir el %2; intercámbielos.</translation>
    </message>
    <message>
        <source>A window lasts a year at most; shorten it.</source>
        <translation>Un plazo dura un año como máximo; acórtelo.</translation>
    </message>
    <message>
        <source>BBCH %1 is not a stage that is followed here; choose one from the list.</source>
        <translation>BBCH %1 no es una etapa que se siga aquí; elija una de la lista.</translation>
    </message>
    <message>
        <source>These trees were planted on %1, after %2; check the day.</source>
        <translation>Estos árboles se plantaron el %1, después del %2; revise el día.</translation>
    </message>
    <message>
        <source>Seen in %2: %1</source>
        <translation>Visto en %2: %1</translation>
    </message>
    <message>
        <source>Say why it is set aside, for whoever looks next.</source>
        <translation>Indique por qué se deja de lado, para quien lo consulte después.</translation>
    </message>
    <message>
        <source>%1 set aside in %2</source>
        <translation>Se dejó de lado %1 en %2</translation>
    </message>
    <message>
        <source>%1 lies more than a year from where the task stands, %2; check the day.</source>
        <translation>El %1 queda a más de un año de donde está el trabajo, el %2; revise el día.</translation>
    </message>
    <message>
        <source>%1 moved in %2</source>
        <translation>Se movió %1 en %2</translation>
    </message>
    <message>
        <source>This task stands as planned; nothing to restore.</source>
        <translation>Este trabajo está como se planeó; no hay nada que restaurar.</translation>
    </message>
    <message>
        <source>This work has ticks on record and stays; set it aside instead.</source>
        <translation>Este trabajo tiene marcas registradas y permanece; mejor déjelo de lado.</translation>
    </message>
    <message>
        <source>%1 restored in %2</source>
        <translation>Se restauró %1 en %2</translation>
    </message>
    <message>
        <source>%1 deleted in %2</source>
        <translation>Se eliminó %1 en %2</translation>
    </message>
    <message>
        <source>Work on %1 can&apos;t be right; check the day.</source>
        <translation>No es posible un trabajo el %1; revise el día.</translation>
    </message>
    <message>
        <source>Time per tree lies between 0 seconds and ten hours.</source>
        <translation>El tiempo por árbol debe estar entre 0 segundos y diez horas.</translation>
    </message>
    <message>
        <source>%1 added in %2</source>
        <translation>Se agregó %1 en %2</translation>
    </message>
    <message>
        <source>%1 row ticked in %2: %3</source>
        <translation>%1 hilera marcada en %2: %3</translation>
    </message>
    <message>
        <source>%1 rows ticked in %2: %3</source>
        <translation>%1 hileras marcadas en %2: %3</translation>
    </message>
    <message>
        <source>%1 row ticked to %4 % in %2: %3</source>
        <translation>%1 hilera marcada al %4 % en %2: %3</translation>
    </message>
    <message>
        <source>%1 rows ticked to %4 % in %2: %3</source>
        <translation>%1 hileras marcadas al %4 % en %2: %3</translation>
    </message>
    <message>
        <source>No rows are named; type them like 1-4, 7.</source>
        <translation>No se indicaron hileras; escríbalas como 1-4, 7.</translation>
    </message>
    <message>
        <source>Row %1 is not in this task. It has rows %2.</source>
        <translation>La hilera %1 no está en este trabajo. Tiene las hileras %2.</translation>
    </message>
    <message>
        <source>Rows %1 are not in this task. It has rows %2.</source>
        <translation>Las hileras %1 no están en este trabajo. Tiene las hileras %2.</translation>
    </message>
    <message>
        <source>%1 lies more than a year from this task&apos;s window, %2 to %3; check the day.</source>
        <translation>El %1 queda a más de un año del plazo de este trabajo, del %2 al %3; revise el día.</translation>
    </message>
    <message>
        <source>How much is done lies between 1 and 100 percent.</source>
        <translation>El avance debe estar entre 1 y 100 por ciento.</translation>
    </message>
    <message>
        <source>Worker-minutes lie between 0 and %1, a day&apos;s work of 200 people round the clock; check them.</source>
        <translation>Los minutos-trabajador deben estar entre 0 y %1, el trabajo de 200 personas durante un día entero, de día y de noche; revíselos.</translation>
    </message>
    <message>
        <source>Say who did the work, a crew or a person.</source>
        <translation>Indique quién hizo el trabajo, una cuadrilla o una persona.</translation>
    </message>
    <message>
        <source>There is no such tick on record.</source>
        <translation>No hay tal marca registrada.</translation>
    </message>
    <message>
        <source>That tick is taken back already.</source>
        <translation>Esa marca ya se desmarcó.</translation>
    </message>
    <message>
        <source>Tick of rows %1 in %2 taken back</source>
        <translation>Hileras %1 desmarcadas en %2</translation>
    </message>
    <message>
        <source>Nothing is ticked in rows %1, so there is nothing to take back.</source>
        <translation>No hay nada marcado en las hileras %1, así que no hay nada que desmarcar.</translation>
    </message>
    <message>
        <source>%1 row unticked in %2: %3</source>
        <translation>%1 hilera desmarcada en %2: %3</translation>
    </message>
    <message>
        <source>%1 rows unticked in %2: %3</source>
        <translation>%1 hileras desmarcadas en %2: %3</translation>
    </message>
    <message>
        <source>There is nothing to undo.</source>
        <translation>No hay nada que deshacer.</translation>
    </message>
    <message>
        <source>There is nothing to redo.</source>
        <translation>No hay nada que rehacer.</translation>
    </message>
    <message>
        <source>A correction is 10 degrees Celsius (18 Fahrenheit) at most, up or down; check it.</source>
        <translation>Una corrección es de 10 grados Celsius (18 Fahrenheit) como máximo, hacia arriba o hacia abajo; revísela.</translation>
    </message>
    <message>
        <source>Trees in their first leaf bloom 0 to 60 days after the others; check the days.</source>
        <translation>Los árboles de primera hoja florecen de 0 a 60 días después que los demás; revise los días.</translation>
    </message>
    <message>
        <source>%1 is still to come; a past date is one that was seen.</source>
        <translation>El %1 aún está por venir; una fecha pasada es la que ya se observó.</translation>
    </message>
    <message>
        <source>A date in the year %1 can&apos;t be right; check it.</source>
        <translation>No es posible una fecha del año %1; revísela.</translation>
    </message>
    <message>
        <source>No new dates in %1</source>
        <translation>No hay fechas nuevas en %1</translation>
    </message>
    <message>
        <source>%1 past date from %2 brought in</source>
        <translation>%1 fecha pasada importada de %2</translation>
    </message>
    <message>
        <source>%1 past dates from %2 brought in</source>
        <translation>%1 fechas pasadas importadas de %2</translation>
    </message>
    <message>
        <source>Past date noted: %1 of %2 on %3</source>
        <translation>Fecha pasada anotada: %1 de %2 el %3</translation>
    </message>
    <message>
        <source>That date is no longer in the orchard.</source>
        <translation>Esa fecha ya no está en el huerto.</translation>
    </message>
    <message>
        <source>Past date removed: %1 of %2 on %3</source>
        <translation>Fecha pasada quitada: %1 de %2 el %3</translation>
    </message>
    <message>
        <source>There is no date in this file.</source>
        <translation>No hay ninguna fecha en este archivo.</translation>
    </message>
    <message>
        <source>No new weather in %1</source>
        <translation>No hay datos de clima nuevos en %1</translation>
    </message>
    <message>
        <source>Forecast of %1 day from %2 brought in</source>
        <translation>Pronóstico de %1 día importado de %2</translation>
    </message>
    <message>
        <source>Forecast of %1 days from %2 brought in</source>
        <translation>Pronóstico de %1 días importado de %2</translation>
    </message>
    <message>
        <source>Weather of %1 day from %2 brought in</source>
        <translation>Clima de %1 día importado de %2</translation>
    </message>
    <message>
        <source>Weather of %1 days from %2 brought in</source>
        <translation>Clima de %1 días importado de %2</translation>
    </message>
    <message>
        <source>A temperature lies between -60 and 60 degrees Celsius (-76 and 140 Fahrenheit); check it.</source>
        <translation>Una temperatura debe estar entre -60 y 60 grados Celsius (-76 y 140 Fahrenheit); revísela.</translation>
    </message>
    <message>
        <source>Both temperatures are missing; type at least one.</source>
        <translation>Faltan las dos temperaturas; escriba al menos una.</translation>
    </message>
    <message>
        <source>The minimum is above the maximum; swap or correct them.</source>
        <translation>La mínima está por encima de la máxima; intercámbielas o corríjalas.</translation>
    </message>
    <message>
        <source>Rain of one day lies between 0 and 2,000 mm (79 inches); check it.</source>
        <translation>La lluvia de un día debe estar entre 0 y 2,000 mm (79 pulgadas); revísela.</translation>
    </message>
    <message>
        <source>Weather of %1 can&apos;t be right; check the day.</source>
        <translation>No es posible tener datos de clima del %1; revise el día.</translation>
    </message>
    <message>
        <source>%1 is still to come, so its weather can only be a forecast.</source>
        <translation>El %1 aún está por venir, así que sus datos solo pueden ser un pronóstico.</translation>
    </message>
    <message>
        <source>%1 is not ahead any more, so it can&apos;t be forecast.</source>
        <translation>El %1 ya no está por venir, así que no admite pronóstico.</translation>
    </message>
    <message>
        <source>Forecast for %1 typed in</source>
        <translation>Pronóstico para el %1 escrito a mano</translation>
    </message>
    <message>
        <source>Weather of %1 typed in</source>
        <translation>Clima del %1 escrito a mano</translation>
    </message>
    <message>
        <source>Weather of %1 removed</source>
        <translation>Clima del %1 quitado</translation>
    </message>
    <message>
        <source>Weather from %1 to %2 removed</source>
        <translation>Clima del %1 al %2 quitado</translation>
    </message>
    <message>
        <source>There is no day of weather in this file.</source>
        <translation>No hay ningún día con datos de clima en este archivo.</translation>
    </message>
    <message>
        <source>The figures of %1 can&apos;t be; correct that day and bring the file in again.</source>
        <translation>Los datos del %1 no son posibles; corrija ese día y vuelva a importar el archivo.</translation>
    </message>
    <message>
        <source>Figures measured on %1 are on record and weigh more; remove them first if they are wrong.</source>
        <translation>Hay datos medidos el %1 en el registro, que pesan más; quítelos primero si están mal.</translation>
    </message>
    <message>
        <source>No weather is on record for these days.</source>
        <translation>No hay datos de clima registrados para estos días.</translation>
    </message>
</context>
<context>
    <name>Desktop</name>
    <message>
        <source>%1 could not be written. Name another file.</source>
        <translation>No se pudo escribir %1. Indique otro archivo.</translation>
    </message>
    <message>
        <source>--%1 takes %2, not “%3”.</source>
        <translation>--%1 admite %2, no “%3”.</translation>
    </message>
</context>
<context>
    <name>File</name>
    <message>
        <source>%1 is missing from the program. Install it again.</source>
        <translation>Falta %1 en el programa. Vuelva a instalarlo.</translation>
    </message>
    <message>
        <source>No backup of %1 could be made in %2. Check that there is room and that you may write there.</source>
        <translation>No se pudo hacer una copia de respaldo de %1 en %2. Revise que haya espacio y que usted pueda escribir ahí.</translation>
    </message>
    <message>
        <source>The disk is full, so nothing was written to %1. Free some space and do it again.</source>
        <translation>El disco está lleno, así que no se escribió nada en %1. Libere espacio e inténtelo de nuevo.</translation>
    </message>
    <message>
        <source>Another program is writing to %1, so nothing was written. Do it again in a moment.</source>
        <translation>Otro programa está escribiendo en %1, así que no se escribió nada. Inténtelo de nuevo en un momento.</translation>
    </message>
    <message>
        <source>%1 or its folder is read-only, so nothing was written. Move the file to a folder of your own.</source>
        <translation>%1 o su carpeta es de solo lectura, así que no se escribió nada. Mueva el archivo a una carpeta suya.</translation>
    </message>
    <message>
        <source>%1 can&apos;t be opened. Check that the folder is there and that you may read and write in it.</source>
        <translation>No se puede abrir %1. Revise que la carpeta exista y que usted pueda leer y escribir en ella.</translation>
    </message>
    <message>
        <source>%1 is not an orchard file. Choose another file; this one was left as it is.</source>
        <translation>%1 no es un archivo de huerto. Elija otro archivo; este se dejó como está.</translation>
    </message>
    <message>
        <source>The disk did not take or give the data of %1, so nothing was written. Check the disk, then do it again.</source>
        <translation>El disco no aceptó o no entregó los datos de %1, así que no se escribió nada. Revise el disco e inténtelo de nuevo.</translation>
    </message>
    <message>
        <source>%1 did not take the change, because it breaks a rule of the file. Nothing was written.</source>
        <translation>%1 no aceptó el cambio porque rompe una regla del archivo. No se escribió nada.</translation>
    </message>
    <message>
        <source>%1 is damaged and was left as it is. Open the newest copy from its backups folder instead.</source>
        <translation>%1 está dañado y se dejó como está. Abra en su lugar la copia más reciente de su carpeta de respaldos.</translation>
    </message>
    <message>
        <source>There is a file %1 already. Choose another name.</source>
        <translation>Ya hay un archivo %1. Elija otro nombre.</translation>
    </message>
    <message>
        <source>The folder for %1 is not there. Make it first, or choose another one.</source>
        <translation>La carpeta para %1 no existe. Créela primero o elija otra.</translation>
    </message>
    <message>
        <source>In %1, table %2, row %3, the value of %4 can&apos;t be read: &quot;%5&quot;. Open the newest copy from its backups folder instead.</source>
        <translation>En %1, tabla %2, fila %3, no se puede leer el valor de %4: &quot;%5&quot;. Abra en su lugar la copia más reciente de su carpeta de respaldos.</translation>
    </message>
    <message>
        <source>%1 was changed by another program since it was opened, so nothing was written. Close it and open it again.</source>
        <translation>Otro programa cambió %1 desde que se abrió, así que no se escribió nada. Ciérrelo y ábralo de nuevo.</translation>
    </message>
    <message>
        <source>There is no file %1. Check its name and folder.</source>
        <translation>No hay ningún archivo %1. Revise su nombre y su carpeta.</translation>
    </message>
    <message>
        <source>%1 is not a file. Choose an orchard file.</source>
        <translation>%1 no es un archivo. Elija un archivo de huerto.</translation>
    </message>
    <message>
        <source>You may not read %1. Ask whoever owns it for access.</source>
        <translation>Usted no tiene permiso para leer %1. Pida acceso a su dueño.</translation>
    </message>
    <message>
        <source>%1 or its folder is read-only. Open it to look at only, or move it to a folder of your own.</source>
        <translation>%1 o su carpeta es de solo lectura. Ábralo solo para verlo o muévalo a una carpeta suya.</translation>
    </message>
    <message>
        <source>%1 is open in another window or program. You can look at it, not change it.</source>
        <translation>%1 está abierto en otra ventana o en otro programa. Puede verlo, pero no cambiarlo.</translation>
    </message>
    <message>
        <source>%1 was written by a newer Topwire (file version %2; this one knows up to %3). Install the newer one to open it.</source>
        <translation>%1 se escribió con un Topwire más nuevo (versión de archivo %2; este conoce hasta la %3). Instale el más nuevo para abrirlo.</translation>
    </message>
    <message>
        <source>%1 comes from an earlier version. Open it once for writing, which brings it up to date.</source>
        <translation>%1 viene de una versión anterior. Ábralo una vez para escritura y quedará actualizado.</translation>
    </message>
    <message>
        <source>The file was opened to look at only, so nothing was changed.</source>
        <translation>El archivo se abrió solo para verlo, así que no se cambió nada.</translation>
    </message>
    <message>
        <source>%1 came from an earlier version and was brought up to date. A copy as it was is kept in %2.</source>
        <translation>%1 venía de una versión anterior y se actualizó. En %2 se guarda una copia de como estaba.</translation>
    </message>
    <message>
        <source>%1 is no longer there. Open another file.</source>
        <translation>%1 ya no está ahí. Abra otro archivo.</translation>
    </message>
</context>
<context>
    <name>Form</name>
    <message>
        <source>A length is wanted here, such as 3 ft or 0.9 m.</source>
        <translation>Aquí va una longitud, como 3 ft o 0.9 m.</translation>
    </message>
    <message>
        <source>%1 is not a length. Write it as 3 ft or 0.9 m.</source>
        <translation>%1 no es una longitud. Escríbala como 3 ft o 0.9 m.</translation>
    </message>
    <message>
        <source>%1 is not a count. Write a whole number above zero.</source>
        <translation>%1 no es una cantidad. Escriba un número entero mayor que cero.</translation>
    </message>
    <message>
        <source>%1 is not a number. Write it as 46.5 or -33.4.</source>
        <translation>%1 no es un número. Escríbalo como 46.5 o -33.4.</translation>
    </message>
    <message>
        <source>%1 is not a temperature. Write it as 4.5.</source>
        <translation>%1 no es una temperatura. Escríbala como 4.5.</translation>
    </message>
    <message>
        <source>Write a whole number of days here, such as 10.</source>
        <translation>Escriba aquí un número entero de días, como 10.</translation>
    </message>
    <message>
        <source>%1 is not a difference in degrees. Write it as -1.5 °C or -3 °F.</source>
        <translation>%1 no es una diferencia en grados. Escríbala como -1.5 °C o -3 °F.</translation>
    </message>
</context>
<context>
    <name>HeatChart</name>
    <message>
        <source>The band is of an average year, from monthly averages.</source>
        <translation>La banda es de un año promedio, según promedios mensuales.</translation>
    </message>
    <message>
        <source>The band is of %1 past year.</source>
        <translation>La banda es de %1 año anterior.</translation>
    </message>
    <message>
        <source>The band is of %1 past years.</source>
        <translation>La banda es de %1 años anteriores.</translation>
    </message>
    <message>
        <source>%1: seen on %2.</source>
        <translation>%1: se observó el %2.</translation>
    </message>
    <message>
        <source>%1: expected on %2, eight years in ten %3.</source>
        <translation>%1: se espera el %2; ocho de cada diez años, %3.</translation>
    </message>
    <message>
        <source>level with an average year</source>
        <translation>igual que un año promedio</translation>
    </message>
    <message>
        <source>level with the middle year</source>
        <translation>igual que el año mediano</translation>
    </message>
    <message>
        <source>%1 day ahead of an average year</source>
        <translation>%1 día antes que un año promedio</translation>
    </message>
    <message>
        <source>%1 day behind an average year</source>
        <translation>%1 día después que un año promedio</translation>
    </message>
    <message>
        <source>%1 day ahead of the middle year</source>
        <translation>%1 día antes que el año mediano</translation>
    </message>
    <message>
        <source>%1 day behind the middle year</source>
        <translation>%1 día después que el año mediano</translation>
    </message>
    <message>
        <source>%1 days ahead of an average year</source>
        <translation>%1 días antes que un año promedio</translation>
    </message>
    <message>
        <source>%1 days behind an average year</source>
        <translation>%1 días después que un año promedio</translation>
    </message>
    <message>
        <source>%1 days ahead of the middle year</source>
        <translation>%1 días antes que el año mediano</translation>
    </message>
    <message>
        <source>%1 days behind the middle year</source>
        <translation>%1 días después que el año mediano</translation>
    </message>
    <message>
        <source>%1 %2 so far, %3.</source>
        <translation>Van %1 %2, %3.</translation>
    </message>
    <message>
        <source>No weather yet: the line is an average year.</source>
        <translation>Aún no hay datos de clima: la línea es un año promedio.</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>medido</translation>
    </message>
    <message>
        <source>forecast, %1 day</source>
        <translation>pronóstico, %1 día</translation>
    </message>
    <message>
        <source>forecast, %1 days</source>
        <translation>pronóstico, %1 días</translation>
    </message>
    <message>
        <source>an average year</source>
        <translation>un año promedio</translation>
    </message>
    <message>
        <source>then as on average</source>
        <translation>luego, como el promedio</translation>
    </message>
    <message>
        <source>then as past years</source>
        <translation>luego, como años anteriores</translation>
    </message>
    <message>
        <source>middle of %1 past years</source>
        <translation>mediana de %1 años anteriores</translation>
    </message>
    <message>
        <source>half of all years, estimated</source>
        <translation>la mitad de los años, estimado</translation>
    </message>
    <message>
        <source>half of the years</source>
        <translation>la mitad de los años</translation>
    </message>
    <message>
        <source>eight in ten</source>
        <translation>ocho de cada diez</translation>
    </message>
    <message>
        <source>When each stage comes</source>
        <translation>Cuándo llega cada etapa</translation>
    </message>
    <message>
        <source>diamond: likeliest day, filled once seen</source>
        <translation>rombo: día más probable; lleno si ya se observó</translation>
    </message>
    <message>
        <source>line: eight years in ten</source>
        <translation>línea: ocho de cada diez años</translation>
    </message>
    <message>
        <source>No weather yet</source>
        <translation>Aún no hay datos de clima</translation>
    </message>
    <message>
        <source>The line is an average year.</source>
        <translation>La línea es un año promedio.</translation>
    </message>
    <message>
        <source>Bring in a file, or type daily figures.</source>
        <translation>Importe un archivo o escriba datos diarios.</translation>
    </message>
    <message>
        <source>%1 so far,</source>
        <translation>%1 hasta hoy,</translation>
    </message>
    <message>
        <source>%1 day missing</source>
        <translation>falta %1 día</translation>
    </message>
    <message>
        <source>%1 days missing</source>
        <translation>faltan %1 días</translation>
    </message>
    <message>
        <source>%1 %2, measured</source>
        <translation>%1 %2, por medición</translation>
    </message>
    <message>
        <source>%1 %2, by the forecast</source>
        <translation>%1 %2, por pronóstico</translation>
    </message>
    <message>
        <source>%1 %2, most likely</source>
        <translation>%1 %2, lo más probable</translation>
    </message>
    <message>
        <source>half of the years %1 to %2</source>
        <translation>la mitad de los años: %1 a %2</translation>
    </message>
    <message>
        <source>eight in ten %1 to %2</source>
        <translation>ocho de cada diez: %1 a %2</translation>
    </message>
    <message>
        <source>weather known to %1</source>
        <translation>clima conocido hasta el %1</translation>
    </message>
</context>
<context>
    <name>Leaf</name>
    <message>
        <source>first leaf</source>
        <translation>primera hoja</translation>
    </message>
    <message>
        <source>second leaf</source>
        <translation>segunda hoja</translation>
    </message>
    <message>
        <source>third leaf</source>
        <translation>tercera hoja</translation>
    </message>
    <message>
        <source>fourth leaf</source>
        <translation>cuarta hoja</translation>
    </message>
    <message>
        <source>fifth leaf</source>
        <translation>quinta hoja</translation>
    </message>
    <message>
        <source>sixth leaf</source>
        <translation>sexta hoja</translation>
    </message>
    <message>
        <source>seventh leaf</source>
        <translation>séptima hoja</translation>
    </message>
    <message>
        <source>eighth leaf</source>
        <translation>octava hoja</translation>
    </message>
    <message>
        <source>ninth leaf</source>
        <translation>novena hoja</translation>
    </message>
    <message>
        <source>tenth leaf</source>
        <translation>décima hoja</translation>
    </message>
    <message>
        <source>eleventh leaf</source>
        <translation>undécima hoja</translation>
    </message>
    <message>
        <source>twelfth leaf</source>
        <translation>duodécima hoja</translation>
    </message>
    <message>
        <source>before planting</source>
        <translation>antes de plantar</translation>
    </message>
    <message>
        <source>%1st leaf</source>
        <translation>hoja %1</translation>
    </message>
    <message>
        <source>%1nd leaf</source>
        <translation>hoja %1</translation>
    </message>
    <message>
        <source>%1rd leaf</source>
        <translation>hoja %1</translation>
    </message>
    <message>
        <source>%1th leaf</source>
        <translation>hoja %1</translation>
    </message>
</context>
<context>
    <name>Length</name>
    <message>
        <source>%1 m</source>
        <translation>%1 m</translation>
    </message>
    <message>
        <source>%1 ft</source>
        <translation>%1 pies</translation>
    </message>
</context>
<context>
    <name>Orchard file</name>
    <message>
        <source>This planting is both &quot;planted&quot; and &quot;planned&quot;; keep the one that is so.</source>
        <translation>Esta plantación tiene &quot;planted&quot; y &quot;planned&quot; a la vez; deje el que corresponda.</translation>
    </message>
    <message>
        <source>There is no stage &quot;%1&quot;; write its BBCH code, such as 53, or its name, such as &quot;green tip&quot;.</source>
        <translation>No hay ninguna etapa &quot;%1&quot;; escriba su código BBCH, como 53, o su nombre, como &quot;green tip&quot;.</translation>
    </message>
    <message>
        <source>There is no stage &quot;%1&quot;; write &quot;%2&quot;.</source>
        <translation>No hay ninguna etapa &quot;%1&quot;; escriba &quot;%2&quot;.</translation>
    </message>
    <message>
        <source>The file has no table [orchard]; add one with the orchard&apos;s name, latitude, elevation and station.</source>
        <translation>El archivo no tiene la tabla [orchard]; agregue una con el nombre, la latitud, la altitud y la estación del huerto.</translation>
    </message>
    <message>
        <source>There is no station &quot;%1&quot;; name a shipped one, or give its monthly normals in [orchard.normals].</source>
        <translation>No hay ninguna estación &quot;%1&quot;; indique una de las incluidas o dé sus normales mensuales en [orchard.normals].</translation>
    </message>
    <message>
        <source>There is no station &quot;%1&quot;; &quot;%2&quot; is the nearest name, or give its monthly normals in [orchard.normals].</source>
        <translation>No hay ninguna estación &quot;%1&quot;; &quot;%2&quot; es el nombre más parecido, o dé sus normales mensuales en [orchard.normals].</translation>
    </message>
    <message>
        <source>&quot;%1&quot; takes twelve numbers, January first, in degrees Celsius.</source>
        <translation>&quot;%1&quot; lleva doce números, enero primero, en grados Celsius.</translation>
    </message>
    <message>
        <source>There is no programme &quot;%1&quot;; there is: %2.</source>
        <translation>No hay ningún programa &quot;%1&quot;; hay: %2.</translation>
    </message>
    <message>
        <source>No planting above has the code &quot;%1&quot;; name one that has its block in this file.</source>
        <translation>Ninguna plantación de arriba tiene el código &quot;%1&quot;; indique una cuyo cuadro esté en este archivo.</translation>
    </message>
    <message>
        <source>No planting above has the code &quot;%1&quot;; write &quot;%2&quot;.</source>
        <translation>Ninguna plantación de arriba tiene el código &quot;%1&quot;; escriba &quot;%2&quot;.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has the rows &quot;%2&quot; backwards; write the lower one first.</source>
        <translation>&quot;%1&quot; tiene las hileras &quot;%2&quot; al revés; escriba primero la menor.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has the rows &quot;%2&quot;; row numbers go from 1 to 9999.</source>
        <translation>&quot;%1&quot; tiene las hileras &quot;%2&quot;; los números de hilera van de 1 a 9999.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; names rows of &quot;%2&quot; twice; name each row once.</source>
        <translation>&quot;%1&quot; nombra dos veces hileras de &quot;%2&quot;; nombre cada hilera una sola vez.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has &quot;%2&quot; where rows belong; write them like &quot;1-12, 15&quot;.</source>
        <translation>&quot;%1&quot; tiene &quot;%2&quot; donde van las hileras; escríbalas como &quot;1-12, 15&quot;.</translation>
    </message>
    <message>
        <source>This line is not TOML (%1); mend it and read the file again.</source>
        <translation>Esta línea no es TOML (%1); corríjala y vuelva a leer el archivo.</translation>
    </message>
    <message>
        <source>This %1 has no &quot;%2&quot;; add a line such as %2 = %3.</source>
        <translation>Aquí, en %1, falta &quot;%2&quot;; agregue una línea como %2 = %3.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; takes text; put what it says in quotes.</source>
        <translation>&quot;%1&quot; lleva texto; ponga lo que dice entre comillas.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; takes a whole number from %2 to %3.</source>
        <translation>&quot;%1&quot; lleva un número entero de %2 a %3.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; takes a number, without quotes.</source>
        <translation>&quot;%1&quot; lleva un número, sin comillas.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is &quot;%2&quot;, which is no day of the calendar; write one that is, like 2027-04-14.</source>
        <translation>&quot;%1&quot; es &quot;%2&quot;, que no es un día del calendario; escriba uno que lo sea, como 2027-04-14.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; takes a day, written like 2027-04-14.</source>
        <translation>&quot;%1&quot; lleva un día, escrito como 2027-04-14.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; takes a length, such as &quot;11 ft&quot;, &quot;36 in&quot; or &quot;0.9 m&quot;.</source>
        <translation>&quot;%1&quot; lleva una longitud, como &quot;11 ft&quot;, &quot;36 in&quot; o &quot;0.9 m&quot;.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is &quot;%2&quot;; it takes one of: %3.</source>
        <translation>&quot;%1&quot; es &quot;%2&quot;; lleva uno de estos: %3.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; takes numbers in square brackets.</source>
        <translation>&quot;%1&quot; lleva números entre corchetes.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is a list of tables; head each with [[%1]], in two brackets.</source>
        <translation>&quot;%1&quot; es una lista de tablas; encabece cada una con [[%1]], con doble corchete.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is one table; head it with [%1].</source>
        <translation>&quot;%1&quot; es una sola tabla; encabécela con [%1].</translation>
    </message>
    <message>
        <source>&quot;%2&quot; is no field of this %1; take the line out.</source>
        <translation>&quot;%2&quot; no es un campo de %1; quite la línea.</translation>
    </message>
    <message>
        <source>&quot;%2&quot; is no field of this %1; write &quot;%3&quot;.</source>
        <translation>&quot;%2&quot; no es un campo de %1; escriba &quot;%3&quot;.</translation>
    </message>
</context>
<context>
    <name>Past dates</name>
    <message>
        <source>There is no stage &quot;%1&quot;; write its BBCH code, such as 65, or its name, such as &quot;full bloom&quot;.</source>
        <translation>No hay ninguna etapa &quot;%1&quot;; escriba su código BBCH, como 65, o su nombre, como &quot;plena floración&quot;.</translation>
    </message>
    <message>
        <source>There is no stage &quot;%1&quot;; write &quot;%2&quot;.</source>
        <translation>No hay ninguna etapa &quot;%1&quot;; escriba &quot;%2&quot;.</translation>
    </message>
    <message>
        <source>This line names no cultivar.</source>
        <translation>Esta línea no indica ninguna variedad.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no day of the calendar; write it like 2019-05-02.</source>
        <translation>&quot;%1&quot; no es un día del calendario; escríbalo como 2019-05-02.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no year; write it like 2019.</source>
        <translation>&quot;%1&quot; no es un año; escríbalo como 2019.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no day of the year %2; write its number, counted from 1 January as 1.</source>
        <translation>&quot;%1&quot; no es un día del año %2; escriba su número, contando el 1 de enero como 1.</translation>
    </message>
    <message>
        <source>The first line must name the columns: cultivar, stage, and date, or year and day of year in its place.</source>
        <translation>La primera línea debe nombrar las columnas: variedad, etapa y fecha, o en su lugar año y día del año.</translation>
    </message>
</context>
<context>
    <name>Plan</name>
    <message>
        <source>%1 in %2, %3: the window would close before it opens; it is held to one day. Look at the stages&apos; dates.</source>
        <translation>%1 en %2, %3: el plazo cerraría antes de abrir; se limita a un día. Revise las fechas de las etapas.</translation>
    </message>
    <message>
        <source>%1 asks for the programme %2, which is not here. Choose another one for it.</source>
        <translation>%1 pide el programa %2, que no está aquí. Elija otro.</translation>
    </message>
    <message>
        <source>%1 window moved</source>
        <translation>%1 plazo cambió de fecha</translation>
    </message>
    <message>
        <source>%1 windows moved</source>
        <translation>%1 plazos cambiaron de fecha</translation>
    </message>
    <message>
        <source>%1 job appeared</source>
        <translation>Apareció %1 trabajo</translation>
    </message>
    <message>
        <source>%1 jobs appeared</source>
        <translation>Aparecieron %1 trabajos</translation>
    </message>
    <message>
        <source>%1 job is no longer asked for</source>
        <translation>%1 trabajo ya no se pide</translation>
    </message>
    <message>
        <source>%1 jobs are no longer asked for</source>
        <translation>%1 trabajos ya no se piden</translation>
    </message>
    <message>
        <source>%1 job is no longer asked for but kept for its ticks</source>
        <translation>%1 trabajo ya no se pide, pero se conserva por sus marcas</translation>
    </message>
    <message>
        <source>%1 jobs are no longer asked for but kept for their ticks</source>
        <translation>%1 trabajos ya no se piden, pero se conservan por sus marcas</translation>
    </message>
</context>
<context>
    <name>Print</name>
    <message>
        <source>The sheet was not printed: the printer did not take it. Check that it is switched on and has paper, then print again.</source>
        <translation>La hoja no se imprimió: la impresora no la aceptó. Revise que esté encendida y tenga papel, y vuelva a imprimir.</translation>
    </message>
    <message>
        <source>The sheet was not written to %1. Choose a folder that can be written to and has room.</source>
        <translation>La hoja no se guardó en %1. Elija una carpeta en la que se pueda escribir y que tenga espacio.</translation>
    </message>
    <message>
        <source>The chart was not printed: the printer did not take it. Check that it is switched on and has paper, then print again.</source>
        <translation>El gráfico no se imprimió: la impresora no lo aceptó. Revise que esté encendida y tenga papel, y vuelva a imprimir.</translation>
    </message>
    <message>
        <source>The chart was not written to %1. Choose a folder that can be written to and has room.</source>
        <translation>El gráfico no se guardó en %1. Elija una carpeta en la que se pueda escribir y que tenga espacio.</translation>
    </message>
</context>
<context>
    <name>PrintWindow</name>
    <message>
        <source>Week %1: %2 to %3</source>
        <translation>Semana %1: del %2 al %3</translation>
    </message>
    <message>
        <source>%1 job, %2 left to do.</source>
        <translation>%1 trabajo, %2 por hacer.</translation>
    </message>
    <message>
        <source>%1 jobs, %2 left to do.</source>
        <translation>%1 trabajos, %2 por hacer.</translation>
    </message>
    <message>
        <source>&amp;Print %1 page…</source>
        <translation>&amp;Imprimir %1 página…</translation>
    </message>
    <message>
        <source>&amp;Print %1 pages…</source>
        <translation>&amp;Imprimir %1 páginas…</translation>
    </message>
</context>
<context>
    <name>Programme</name>
    <message>
        <source>In %1, %2 is %3, a code Topwire does not date; use one of: %4.</source>
        <translation>En %1, %2 es %3, un código al que Topwire no le pone fecha; use uno de estos: %4.</translation>
    </message>
    <message>
        <source>In %1, %2 can only be true; to hang the day on something else, name a stage, a month or another operation.</source>
        <translation>En %1, %2 solo puede ser true; para que el día dependa de otra cosa, indique una etapa, un mes u otra operación.</translation>
    </message>
    <message>
        <source>In %1, %2 hangs on nothing; name a stage, planting = true, a month or the operation it comes after.</source>
        <translation>En %1, %2 no depende de nada; indique una etapa, planting = true, un mes o la operación a la que sigue.</translation>
    </message>
    <message>
        <source>In %1, %2 hangs on both %3 and %4; keep one of them.</source>
        <translation>En %1, %2 depende a la vez de %3 y de %4; deje uno de los dos.</translation>
    </message>
    <message>
        <source>In %1, the id is the same as in line %2; give each operation an id of its own.</source>
        <translation>En %1, el id es igual al de la línea %2; dé a cada operación un id propio.</translation>
    </message>
    <message>
        <source>In %1, leaves is missing; only work that opens on the planting day may leave it out, so add a line such as: leaves = &quot;1-3&quot;</source>
        <translation>En %1, falta leaves; solo puede omitirlo un trabajo que abre el día de la plantación, así que agregue una línea como: leaves = &quot;1-3&quot;</translation>
    </message>
    <message>
        <source>In %1, %2 hangs on the operation itself; name another one, a stage or a month.</source>
        <translation>En %1, %2 depende de la misma operación; indique otra, una etapa o un mes.</translation>
    </message>
    <message>
        <source>In %1, %2 hangs on “%3”, which no operation has as its id; name one that is there.</source>
        <translation>En %1, %2 depende de “%3”, que no es el id de ninguna operación; indique una que exista.</translation>
    </message>
    <message>
        <source>In %1, %2 hangs on “%3”, which no operation has as its id; did you mean “%4”?</source>
        <translation>En %1, %2 depende de “%3”, que no es el id de ninguna operación; ¿quiso decir “%4”?</translation>
    </message>
    <message>
        <source>In %1, %2 hangs on %3, which is not done on %4; leave them out here or add them there.</source>
        <translation>En %1, %2 depende de %3, que no se hace en %4; quítelos aquí o agréguelos allá.</translation>
    </message>
    <message>
        <source>In %1, %2 hangs on %3, which is first done in leaf %4, after leaf %5 of this one; change the leaves of one of them.</source>
        <translation>En %1, %2 depende de %3, que se hace por primera vez en la hoja %4, después de la hoja %5 de esta; cambie las hojas de una de las dos.</translation>
    </message>
    <message>
        <source>In %1, %2 comes before %3; move one of the two.</source>
        <translation>En %1, %2 va antes que %3; mueva uno de los dos.</translation>
    </message>
    <message>
        <source>In %1, the anchors go round in a circle (%2); hang one of these on a stage, a month or the planting day.</source>
        <translation>En %1, las anclas forman un círculo (%2); haga que una de ellas dependa de una etapa, un mes o el día de plantación.</translation>
    </message>
    <message>
        <source>In %1, %2 holds “%3”, which names no leaves; write 2, &quot;1-3&quot;, &quot;-3 to -1&quot; or &quot;4+&quot;.</source>
        <translation>En %1, %2 contiene “%3”, que no indica hojas; escriba 2, &quot;1-3&quot;, &quot;-3 to -1&quot; o &quot;4+&quot;.</translation>
    </message>
    <message>
        <source>In %1, %2 holds “%3”, which runs backwards; put the lower leaf first.</source>
        <translation>En %1, %2 contiene “%3”, que va al revés; ponga primero la hoja menor.</translation>
    </message>
    <message>
        <source>In %1, %2 may hold small letters a to z, digits and hyphens only; write it like leader-tie.</source>
        <translation>En %1, %2 solo puede llevar letras minúsculas de la a a la z, dígitos y guiones; escríbalo como leader-tie.</translation>
    </message>
    <message>
        <source>In %1, %2 names no leaf; write 1, 2, 3 ...</source>
        <translation>En %1, %2 no indica ninguna hoja; escriba 1, 2, 3 ...</translation>
    </message>
    <message>
        <source>In %1, %2 has %3 lines; the sheet has room for three, so shorten it.</source>
        <translation>En %1, %2 tiene %3 líneas; en la hoja de trabajo caben tres, así que acórtelo.</translation>
    </message>
    <message>
        <source>In %1, %2 is not text; put it in quotes.</source>
        <translation>En %1, %2 no es texto; póngalo entre comillas.</translation>
    </message>
    <message>
        <source>In %1, %2 is empty; fill it in or take it out.</source>
        <translation>En %1, %2 está vacío; llénelo o quítelo.</translation>
    </message>
    <message>
        <source>In %1, %2 is not a whole number; write it without quotes or a point.</source>
        <translation>En %1, %2 no es un número entero; escríbalo sin comillas ni punto.</translation>
    </message>
    <message>
        <source>In %1, %2 is %3; write a number from %4 to %5.</source>
        <translation>En %1, %2 es %3; escriba un número de %4 a %5.</translation>
    </message>
    <message>
        <source>In %1, %2 is not a number above zero; write it without quotes, such as 0.5.</source>
        <translation>En %1, %2 no es un número mayor que cero; escríbalo sin comillas, como 0.5.</translation>
    </message>
    <message>
        <source>In %1, %2 is not a list of texts; write each in quotes, all of them in square brackets.</source>
        <translation>En %1, %2 no es una lista de textos; escriba cada uno entre comillas y todos entre corchetes.</translation>
    </message>
    <message>
        <source>In %1, %2 has no words; sheets are printed in English and in Spanish, so write both.</source>
        <translation>En %1, %2 no tiene palabras; las hojas se imprimen en inglés y en español, así que escriba ambos.</translation>
    </message>
    <message>
        <source>In %1, %2 is not given by language; write %2.en and %2.es.</source>
        <translation>En %1, %2 no está dado por idioma; escriba %2.en y %2.es.</translation>
    </message>
    <message>
        <source>In %1, %2 has %3 lines in English and %4 in Spanish; give each line in both.</source>
        <translation>En %1, %2 tiene %3 líneas en inglés y %4 en español; dé cada línea en ambos.</translation>
    </message>
    <message>
        <source>In %1, %2 is not a set of fields; write it in braces, such as { name = value }.</source>
        <translation>En %1, %2 no es un conjunto de campos; escríbalo entre llaves, como { nombre = valor }.</translation>
    </message>
    <message>
        <source>In %1, %2 is not a list of sets of fields; write each in braces, all of them in square brackets.</source>
        <translation>En %1, %2 no es una lista de conjuntos de campos; escriba cada uno entre llaves y todos entre corchetes.</translation>
    </message>
    <message>
        <source>In %1, %2 is missing; add a line such as: %3</source>
        <translation>En %1, falta %2; agregue una línea como esta: %3</translation>
    </message>
    <message>
        <source>In %1, %2 says “%3”; write one of: %4.</source>
        <translation>En %1, %2 dice “%3”; escriba uno de estos: %4.</translation>
    </message>
    <message>
        <source>In %1, %2 says “%3”; did you mean “%4”?</source>
        <translation>En %1, %2 dice “%3”; ¿quiso decir “%4”?</translation>
    </message>
    <message>
        <source>In %1, there is no field %2; take it out or use one of: %3.</source>
        <translation>En %1, no existe el campo %2; quítelo o use uno de estos: %3.</translation>
    </message>
    <message>
        <source>In %1, there is no field %2; did you mean %3?</source>
        <translation>En %1, no existe el campo %2; ¿quiso decir %3?</translation>
    </message>
    <message>
        <source>From here on the text is not TOML (%1); correct this line, then read the file again.</source>
        <translation>Desde aquí el texto no es TOML (%1); corrija esta línea y vuelva a leer el archivo.</translation>
    </message>
    <message>
        <source>In %1, %2 is %3, and this Topwire reads format 1; use a newer Topwire or a programme of format 1.</source>
        <translation>En %1, %2 es %3, y este Topwire lee el formato 1; use un Topwire más reciente o un programa de formato 1.</translation>
    </message>
    <message>
        <source>In %1, there is no %2; begin each one with a line that says [[operation]].</source>
        <translation>En %1, no hay ningún %2; empiece cada uno con una línea que diga [[operation]].</translation>
    </message>
    <message>
        <source>In %1, %2 is neither true nor false; write one of them without quotes.</source>
        <translation>En %1, %2 no es true ni false; escriba uno de los dos sin comillas.</translation>
    </message>
</context>
<context>
    <name>Questions</name>
    <message>
        <source>Orchard files (*.topwire)</source>
        <translation>Archivos de huerto (*.topwire)</translation>
    </message>
    <message>
        <source>&amp;Leave it as it is</source>
        <translation>&amp;Dejarlo como está</translation>
    </message>
    <message>
        <source>Open an orchard</source>
        <translation>Abrir un huerto</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Cerrar</translation>
    </message>
    <message>
        <source>Bring in daily weather</source>
        <translation>Importar clima diario</translation>
    </message>
    <message>
        <source>Daily weather (*.csv *.dly *.txt);;All files (*)</source>
        <translation>Clima diario (*.csv *.dly *.txt);;Todos los archivos (*)</translation>
    </message>
</context>
<context>
    <name>Rows</name>
    <message>
        <source>%1 runs backwards. Write the lower row first, as in 1-12.</source>
        <translation>%1 va al revés. Escriba primero la hilera menor, como en 1-12.</translation>
    </message>
    <message>
        <source>%1 is out of bounds. Rows are numbered from 1 to 9999.</source>
        <translation>%1 está fuera de los límites. Las hileras se numeran de 1 a 9999.</translation>
    </message>
    <message>
        <source>%1 names a row twice. Name each row once.</source>
        <translation>%1 nombra una hilera dos veces. Nombre cada hilera una sola vez.</translation>
    </message>
    <message>
        <source>“%1” is not a row or a span of rows. Write 1-12, 15.</source>
        <translation>“%1” no es una hilera ni un tramo de hileras. Escriba 1-12, 15.</translation>
    </message>
</context>
<context>
    <name>Sheet</name>
    <message>
        <source>Week %1, %2</source>
        <translation>Semana %1, %2</translation>
    </message>
    <message>
        <source>%1 job</source>
        <translation>%1 trabajo</translation>
    </message>
    <message>
        <source>%1 jobs</source>
        <translation>%1 trabajos</translation>
    </message>
    <message>
        <source>%1 block</source>
        <translation>%1 cuadro</translation>
    </message>
    <message>
        <source>%1 blocks</source>
        <translation>%1 cuadros</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Trabajo</translation>
    </message>
    <message>
        <source>Rows done</source>
        <translation>Hileras hechas</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Inicio</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Fin</translation>
    </message>
    <message>
        <source>Workers</source>
        <translation>Trabajadores</translation>
    </message>
    <message>
        <source>Hours</source>
        <translation>Horas</translation>
    </message>
    <message>
        <source>made %1</source>
        <translation>hecha el %1</translation>
    </message>
    <message>
        <source>No work is open this week.</source>
        <translation>No hay trabajo abierto esta semana.</translation>
    </message>
    <message>
        <source>The calendar shows which weeks have work; print one of those.</source>
        <translation>El calendario muestra qué semanas tienen trabajo; imprima una de ellas.</translation>
    </message>
    <message>
        <source>Crew leader</source>
        <translation>Mayordomo</translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation>página %1 de %2</translation>
    </message>
    <message>
        <source>Black with a tick: done. Lower half black: partly done. A dash: not in this job.</source>
        <translation>Negro con palomita: hecha. Medio negro: a medias. Raya: no entra en este trabajo.</translation>
    </message>
    <message>
        <source>pollinizer</source>
        <translation>polinizador</translation>
    </message>
    <message>
        <source>replants</source>
        <translation>replantes</translation>
    </message>
    <message>
        <source>late, was to be done by %1</source>
        <translation>atrasado, era para el %1</translation>
    </message>
    <message>
        <source>to %1</source>
        <translation>hasta el %1</translation>
    </message>
    <message>
        <source>%1 tree</source>
        <translation>%1 árbol</translation>
    </message>
    <message>
        <source>%1 trees</source>
        <translation>%1 árboles</translation>
    </message>
    <message>
        <source>it rains or the trees are wet</source>
        <translation>llueve o los árboles están mojados</translation>
    </message>
    <message>
        <source>there is frost</source>
        <translation>hay helada</translation>
    </message>
    <message>
        <source>it is very hot</source>
        <translation>hace mucho calor</translation>
    </message>
    <message>
        <source>the wind is strong</source>
        <translation>sopla viento fuerte</translation>
    </message>
    <message>
        <source>Done when</source>
        <translation>Listo cuando</translation>
    </message>
    <message>
        <source>Take</source>
        <translation>Lleve</translation>
    </message>
    <message>
        <source>Stop if</source>
        <translation>Pare si</translation>
    </message>
    <message>
        <source>Care</source>
        <translation>Cuidado</translation>
    </message>
    <message>
        <source>Last day</source>
        <translation>Último día</translation>
    </message>
    <message>
        <source>Job %1 in %2, continued</source>
        <translation>Trabajo %1 en %2, continuación</translation>
    </message>
    <message>
        <source>%1, continued</source>
        <translation>%1, continuación</translation>
    </message>
    <message>
        <source>As job %1.</source>
        <translation>Como el trabajo %1.</translation>
    </message>
    <message>
        <source>Water, rest, shade. Eye protection near wires and with every cut.</source>
        <translation>Agua, descanso, sombra. Lentes de seguridad cerca del alambre y en cada corte.</translation>
    </message>
    <message>
        <source>Ladders and platforms by local rules. Labels, local rules and your supervisor come first.</source>
        <translation>Escaleras y plataformas según las reglas locales. Primero la etiqueta, la ley local y su supervisor.</translation>
    </message>
    <message>
        <source>Stop and tell the crew leader if anything is not safe.</source>
        <translation>Pare y avise al mayordomo si algo no es seguro.</translation>
    </message>
    <message>
        <source>%1 row</source>
        <translation>%1 hilera</translation>
    </message>
    <message>
        <source>%1 rows</source>
        <translation>%1 hileras</translation>
    </message>
    <message>
        <source>To do</source>
        <translation>Por hacer</translation>
    </message>
    <message>
        <source>Job %1 should wait.</source>
        <translation>El trabajo %1 debe esperar.</translation>
    </message>
    <message>
        <source>Jobs %1 should wait.</source>
        <translation>Los trabajos %1 deben esperar.</translation>
    </message>
</context>
<context>
    <name>Shift</name>
    <message>
        <source>%1 %2 expected %3: %4.</source>
        <translation>%1 %2 se espera %3: %4.</translation>
    </message>
    <message>
        <source>%1 %2 seen %5, %3 than expected: %4.</source>
        <translation>%1 %2 se observó el %5, %3 de lo esperado: %4.</translation>
    </message>
</context>
<context>
    <name>State</name>
    <message>
        <source>waiting</source>
        <translation>en espera</translation>
    </message>
    <message>
        <source>open</source>
        <translation>abierto</translation>
    </message>
    <message>
        <source>closing</source>
        <translation>por cerrar</translation>
    </message>
    <message>
        <source>late</source>
        <translation>atrasado</translation>
    </message>
    <message>
        <source>lapsed</source>
        <translation>vencido</translation>
    </message>
    <message>
        <source>done</source>
        <translation>hecho</translation>
    </message>
    <message>
        <source>set aside</source>
        <translation>apartado</translation>
    </message>
</context>
<context>
    <name>Tables</name>
    <message>
        <source>In %1 %2 the field %3 is not text between quotation marks; write it like: %4</source>
        <translation>En %1 %2 el campo %3 no es texto entre comillas; escríbalo así: %4</translation>
    </message>
    <message>
        <source>In %1 %2 the field %3 is neither true nor false; write it like: %4</source>
        <translation>En %1 %2 el campo %3 no es true ni false; escríbalo así: %4</translation>
    </message>
    <message>
        <source>In %1 %2 the field %3 is not a list of twelve numbers, January first; write it like: %4</source>
        <translation>En %1 %2 el campo %3 no es una lista de doce números, enero primero; escríbalo así: %4</translation>
    </message>
    <message>
        <source>In %1 %2 the field %3 is none of: %4. Write one of them.</source>
        <translation>En %1 %2 el campo %3 no es ninguno de estos: %4. Escriba uno de ellos.</translation>
    </message>
    <message>
        <source>In %1 %2 there is no field %3; take it out or use one of: %4.</source>
        <translation>En %1 %2 no existe el campo %3; quítelo o use uno de estos: %4.</translation>
    </message>
    <message>
        <source>In %1 %2 the field %3 is missing; add a line like: %4</source>
        <translation>En %1 %2 falta el campo %3; agregue una línea así: %4</translation>
    </message>
    <message>
        <source>In %1 %2 the field %3 is not a number; write it like: %4</source>
        <translation>En %1 %2 el campo %3 no es un número; escríbalo así: %4</translation>
    </message>
    <message>
        <source>In %1 %2 the field %3 lies outside anything likely; check it and write it like: %4</source>
        <translation>En %1 %2 el campo %3 está fuera de lo probable; revíselo y escríbalo así: %4</translation>
    </message>
    <message>
        <source>The file stops being TOML here (%1); mend this line.</source>
        <translation>El archivo deja de ser TOML aquí (%1); corrija esta línea.</translation>
    </message>
    <message>
        <source>%1 does not belong in this file; take it out, or name it [[%2]] if it is one of its rows.</source>
        <translation>%1 no corresponde a este archivo; quítelo, o póngale el nombre [[%2]] si es una de sus filas.</translation>
    </message>
    <message>
        <source>The file has no rows; begin each with [[%1]].</source>
        <translation>El archivo no tiene filas; empiece cada una con [[%1]].</translation>
    </message>
    <message>
        <source>In %1 %2 the field %3 repeats that of line %4; name it otherwise or take one row out.</source>
        <translation>En %1 %2 el campo %3 repite el de la línea %4; póngale otro nombre o quite una fila.</translation>
    </message>
    <message>
        <source>In %1 %2 the field %3 lies above the maximum in month %4; check the two lists.</source>
        <translation>En %1 %2 el campo %3 está por encima de la máxima en el mes %4; revise las dos listas.</translation>
    </message>
    <message>
        <source>In %1 %2 the field %3 lies above kills_one_in_ten; check the two.</source>
        <translation>En %1 %2 el campo %3 está por encima de kills_one_in_ten; revise los dos.</translation>
    </message>
</context>
<context>
    <name>Task</name>
    <message>
        <source>There is no task &quot;%1&quot;; a task is written as planting, operation, season and pass, with colons between.</source>
        <translation>No hay ningún trabajo &quot;%1&quot;; un trabajo se escribe como plantación, operación, temporada y pasada, separadas por dos puntos.</translation>
    </message>
    <message>
        <source>There is no task &quot;%1&quot;; the nearest is &quot;%2&quot;.</source>
        <translation>No hay ningún trabajo &quot;%1&quot;; el más parecido es &quot;%2&quot;.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>closes today</source>
        <translation>cierra hoy</translation>
    </message>
    <message>
        <source>closes %1</source>
        <translation>cierra el %1</translation>
    </message>
    <message>
        <source>%1 day late</source>
        <translation>%1 día de atraso</translation>
    </message>
    <message>
        <source>%1 days late</source>
        <translation>%1 días de atraso</translation>
    </message>
    <message>
        <source>to %1</source>
        <translation>hasta el %1</translation>
    </message>
    <message>
        <source>from %1</source>
        <translation>desde el %1</translation>
    </message>
    <message>
        <source>%1 of %2 rows</source>
        <translation>%1 de %2 hileras</translation>
    </message>
    <message>
        <source>%1 of %2 rows · %3 h left</source>
        <translation>%1 de %2 hileras · faltan %3 h</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <translation>%1 sobre %2</translation>
    </message>
    <message>
        <source>%1: %2 to %3</source>
        <translation>%1: %2 a %3</translation>
    </message>
    <message>
        <source>worth doing until %1</source>
        <translation>vale la pena hasta el %1</translation>
    </message>
    <message>
        <source>cut off after %1</source>
        <translation>cortado después del %1</translation>
    </message>
    <message>
        <source>%1 row</source>
        <translation>%1 hilera</translation>
    </message>
    <message>
        <source>%1 rows</source>
        <translation>%1 hileras</translation>
    </message>
    <message>
        <source>nothing left to do</source>
        <translation>no queda nada por hacer</translation>
    </message>
    <message>
        <source>%1 job</source>
        <translation>%1 trabajo</translation>
    </message>
    <message>
        <source>%1 jobs</source>
        <translation>%1 trabajos</translation>
    </message>
    <message>
        <source>%1 block</source>
        <translation>%1 cuadro</translation>
    </message>
    <message>
        <source>%1 blocks</source>
        <translation>%1 cuadros</translation>
    </message>
    <message>
        <source>%1 in %2 · %3 hour left</source>
        <translation>%1 en %2 · falta %3 hora</translation>
    </message>
    <message>
        <source>%1 in %2 · %3 hours left</source>
        <translation>%1 en %2 · faltan %3 horas</translation>
    </message>
</context>
<context>
    <name>TickPanel</name>
    <message>
        <source>Tick: %1</source>
        <translation>Marcar: %1</translation>
    </message>
    <message>
        <source>· done on %1</source>
        <translation>· hecho el %1</translation>
    </message>
    <message>
        <source>Row %1 is not in this task. It has rows %2.</source>
        <translation>La hilera %1 no está en este trabajo. Tiene las hileras %2.</translation>
    </message>
    <message>
        <source>Rows %1 are not in this task. It has rows %2.</source>
        <translation>Las hileras %1 no están en este trabajo. Tiene las hileras %2.</translation>
    </message>
    <message>
        <source>Tick %1 row</source>
        <translation>Marcar %1 hilera</translation>
    </message>
    <message>
        <source>Tick %1 rows</source>
        <translation>Marcar %1 hileras</translation>
    </message>
    <message>
        <source>Take back %1 row</source>
        <translation>Desmarcar %1 hilera</translation>
    </message>
    <message>
        <source>Take back %1 rows</source>
        <translation>Desmarcar %1 hileras</translation>
    </message>
</context>
<context>
    <name>Vigour</name>
    <message>
        <source>weak</source>
        <translation>débil</translation>
    </message>
    <message>
        <source>moderate</source>
        <translation>moderado</translation>
    </message>
    <message>
        <source>strong</source>
        <translation>fuerte</translation>
    </message>
</context>
<context>
    <name>Weather</name>
    <message>
        <source>nothing known yet</source>
        <translation>aún sin datos</translation>
    </message>
    <message>
        <source>as in %1</source>
        <translation>igual que en %1</translation>
    </message>
    <message>
        <source>%1 day earlier than in %2</source>
        <translation>%1 día antes que en %2</translation>
    </message>
    <message>
        <source>%1 days earlier than in %2</source>
        <translation>%1 días antes que en %2</translation>
    </message>
    <message>
        <source>%1 day later than in %2</source>
        <translation>%1 día después que en %2</translation>
    </message>
    <message>
        <source>%1 days later than in %2</source>
        <translation>%1 días después que en %2</translation>
    </message>
    <message>
        <source>by days from bloom</source>
        <translation>a días fijos de la floración</translation>
    </message>
    <message>
        <source>%1, at %2</source>
        <translation>%1, con %2</translation>
    </message>
    <message>
        <source>station %1, %2</source>
        <translation>estación %1, %2</translation>
    </message>
    <message>
        <source>seen %1</source>
        <translation>observada el %1</translation>
    </message>
    <message>
        <source>Heat units, which the dates come from; %1</source>
        <translation>Unidades de calor, de donde salen las fechas; %1</translation>
    </message>
    <message>
        <source>Degree days above %1 °C; %2</source>
        <translation>Grados día por encima de %1 °C; %2</translation>
    </message>
    <message>
        <source>Degree days above %1 °F; %2</source>
        <translation>Grados día por encima de %1 °F; %2</translation>
    </message>
    <message>
        <source>No measured days this season.</source>
        <translation>Sin días medidos esta temporada.</translation>
    </message>
    <message>
        <source>Measured to %2, no days missing.</source>
        <translation>Medido hasta el %2, no falta ningún día.</translation>
    </message>
    <message>
        <source>Measured to %2, %1 day missing.</source>
        <translation>Medido hasta el %2, falta %1 día.</translation>
    </message>
    <message>
        <source>Measured to %2, %1 days missing.</source>
        <translation>Medido hasta el %2, faltan %1 días.</translation>
    </message>
    <message>
        <source>Forecast to %1.</source>
        <translation>Pronóstico hasta el %1.</translation>
    </message>
    <message>
        <source>forecast</source>
        <translation>pronóstico</translation>
    </message>
    <message>
        <source>typed</source>
        <translation>a mano</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>medido</translation>
    </message>
    <message>
        <source>%1 can&apos;t be read. Choose a file you may open.</source>
        <translation>No se puede leer %1. Elija un archivo que usted pueda abrir.</translation>
    </message>
    <message>
        <source>%1 is larger than any record of daily weather. Choose another file.</source>
        <translation>%1 es más grande que cualquier registro de clima diario. Elija otro archivo.</translation>
    </message>
    <message>
        <source>Heat since %1</source>
        <translation>Calor desde el %1</translation>
    </message>
    <message>
        <source>%1 further line like these.</source>
        <translation>%1 línea más como estas.</translation>
    </message>
    <message>
        <source>%1 further lines like these.</source>
        <translation>%1 líneas más como estas.</translation>
    </message>
    <message>
        <source>%1 day comes in.</source>
        <translation>Entra %1 día.</translation>
    </message>
    <message>
        <source>%1 days come in.</source>
        <translation>Entran %1 días.</translation>
    </message>
    <message>
        <source>%1 day gets other figures.</source>
        <translation>%1 día cambia de datos.</translation>
    </message>
    <message>
        <source>%1 days get other figures.</source>
        <translation>%1 días cambian de datos.</translation>
    </message>
    <message>
        <source>%1 day of the earlier forecast goes.</source>
        <translation>Se quita %1 día del pronóstico anterior.</translation>
    </message>
    <message>
        <source>%1 days of the earlier forecast go.</source>
        <translation>Se quitan %1 días del pronóstico anterior.</translation>
    </message>
    <message>
        <source>%1 day stands already.</source>
        <translation>%1 día ya estaba.</translation>
    </message>
    <message>
        <source>%1 days stand already.</source>
        <translation>%1 días ya estaban.</translation>
    </message>
    <message>
        <source>%1 day stays as it is: what is known of it weighs more.</source>
        <translation>%1 día queda como está: lo que ya se sabe pesa más.</translation>
    </message>
    <message>
        <source>%1 days stay as they are: what is known of them weighs more.</source>
        <translation>%1 días quedan como están: lo que ya se sabe pesa más.</translation>
    </message>
    <message>
        <source>Nothing: it tells nothing new.</source>
        <translation>Nada: no trae nada nuevo.</translation>
    </message>
    <message>
        <source>&amp;Keep %1 day</source>
        <translation>Gua&amp;rdar %1 día</translation>
    </message>
    <message>
        <source>&amp;Keep %1 days</source>
        <translation>Gua&amp;rdar %1 días</translation>
    </message>
    <message>
        <source>Heat since %1, %2</source>
        <translation>Calor desde el %1, %2</translation>
    </message>
    <message>
        <source>%1 As of %2. %3</source>
        <translation>%1 Al %2. %3</translation>
    </message>
</context>
<context>
    <name>Weather file</name>
    <message>
        <source>The line ends after %1 letters, within its month; the days after that are missing.</source>
        <translation>La línea termina después de %1 letras, dentro de su mes; faltan los días siguientes.</translation>
    </message>
    <message>
        <source>The value of day %1 is &quot;%2&quot;, which is no whole number; it is left out.</source>
        <translation>El valor del día %1 es &quot;%2&quot;, que no es un número entero; se omite.</translation>
    </message>
    <message>
        <source>There is a value for day %1, which the month does not have; it is left out.</source>
        <translation>Hay un valor para el día %1, que el mes no tiene; se omite.</translation>
    </message>
    <message>
        <source>The line &quot;%1&quot; does not have the shape of the others; it is left out.</source>
        <translation>La línea &quot;%1&quot; no tiene la forma de las demás; se omite.</translation>
    </message>
    <message>
        <source>The file is empty.</source>
        <translation>El archivo está vacío.</translation>
    </message>
    <message>
        <source>This is a spreadsheet or an archive, not text; save the table as CSV and import that.</source>
        <translation>Esto es una hoja de cálculo o un archivo comprimido, no texto; guarde la tabla como CSV e impórtela.</translation>
    </message>
    <message>
        <source>The file is compressed; unpack it and import what comes out.</source>
        <translation>El archivo está comprimido; descomprímalo e importe lo que salga.</translation>
    </message>
    <message>
        <source>The file is in UTF-16; save it again as UTF-8.</source>
        <translation>El archivo está en UTF-16; vuelva a guardarlo como UTF-8.</translation>
    </message>
    <message>
        <source>The file is not text; weather is read from text files such as CSV.</source>
        <translation>El archivo no es texto; los datos de clima se leen de archivos de texto, como CSV.</translation>
    </message>
    <message>
        <source>The file does not name its station, so &quot;%1&quot; cannot be looked for; leave the station open.</source>
        <translation>El archivo no nombra su estación, así que no se puede buscar &quot;%1&quot;; deje la estación sin indicar.</translation>
    </message>
    <message>
        <source>The file has no station &quot;%1&quot;; it has %2.</source>
        <translation>El archivo no tiene la estación &quot;%1&quot;; tiene %2.</translation>
    </message>
    <message>
        <source>The file holds several stations; say which one to read: %1.</source>
        <translation>El archivo tiene varias estaciones; indique cuál leer: %1.</translation>
    </message>
    <message>
        <source>This is none of the weather files that can be read: GHCN-Daily of fixed width or by station, daily summaries, or a CSV with headings for a date, a minimum and a maximum, such as &quot;date,tmin,tmax&quot;.</source>
        <translation>Este no es ninguno de los archivos de clima que se pueden leer: GHCN-Daily de ancho fijo o por estación, resúmenes diarios, o un CSV con encabezados para fecha, mínima y máxima, como &quot;date,tmin,tmax&quot;.</translation>
    </message>
    <message>
        <source>No heading names the date; call that column &quot;date&quot; or &quot;fecha&quot;.</source>
        <translation>Ningún encabezado indica la fecha; llame a esa columna &quot;date&quot; o &quot;fecha&quot;.</translation>
    </message>
    <message>
        <source>No heading names the maximum temperature; call that column &quot;tmax&quot;.</source>
        <translation>Ningún encabezado indica la temperatura máxima; llame a esa columna &quot;tmax&quot;.</translation>
    </message>
    <message>
        <source>No heading names the minimum temperature; call that column &quot;tmin&quot;.</source>
        <translation>Ningún encabezado indica la temperatura mínima; llame a esa columna &quot;tmin&quot;.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; does not say whether the day is a forecast; it was taken for one.</source>
        <translation>&quot;%1&quot; no dice si el día es un pronóstico; se tomó como tal.</translation>
    </message>
    <message>
        <source>The headings &quot;%1&quot; and &quot;%2&quot; name different units; say the unit, or give both the same.</source>
        <translation>Los encabezados &quot;%1&quot; y &quot;%2&quot; indican unidades distintas; indique la unidad, o ponga la misma en ambos.</translation>
    </message>
    <message>
        <source>The dates do not say whether the day or the month stands first; write them like 2027-04-03.</source>
        <translation>Las fechas no dejan ver si va primero el día o el mes; escríbalas como 2027-04-03.</translation>
    </message>
    <message>
        <source>The value %1 is none that an instrument shows; it is left out.</source>
        <translation>Ningún instrumento marca el valor %1; se omite.</translation>
    </message>
    <message>
        <source>These few days could be degrees Fahrenheit of a cool month as well as degrees Celsius of a warm one; look at them, and say the unit if it is the other.</source>
        <translation>Estos pocos días podrían ser tanto grados Fahrenheit de un mes fresco como grados Celsius de uno cálido; mírelos e indique la unidad si es la otra.</translation>
    </message>
    <message>
        <source>Of %1 lines %2 cannot be read, so nothing was taken from the file.</source>
        <translation>De %1 líneas, %2 no se pueden leer, así que no se tomó nada del archivo.</translation>
    </message>
    <message>
        <source>Taken as %1, %2 of %3 temperatures are none that a thermometer shows; the unit must be another.</source>
        <translation>Tomadas como %1, %2 de %3 temperaturas no las marca ningún termómetro; la unidad debe ser otra.</translation>
    </message>
    <message>
        <source>The file holds no day with both a minimum and a maximum temperature.</source>
        <translation>El archivo no tiene ningún día con temperatura mínima y máxima a la vez.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no day of the calendar that can be read; the line is left out.</source>
        <translation>&quot;%1&quot; no es un día del calendario que se pueda leer; la línea se omite.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no number; it is left out.</source>
        <translation>&quot;%1&quot; no es un número; se omite.</translation>
    </message>
    <message>
        <source>Read as GHCN-Daily of fixed width.</source>
        <translation>Se leyó como GHCN-Daily de ancho fijo.</translation>
    </message>
    <message>
        <source>Read as GHCN-Daily by station.</source>
        <translation>Se leyó como GHCN-Daily por estación.</translation>
    </message>
    <message>
        <source>Read as daily summaries.</source>
        <translation>Se leyó como resúmenes diarios.</translation>
    </message>
    <message>
        <source>Read as a table: the minimum from &quot;%1&quot;, the maximum from &quot;%2&quot;.</source>
        <translation>Se leyó como tabla: la mínima de &quot;%1&quot;, la máxima de &quot;%2&quot;.</translation>
    </message>
    <message>
        <source>Read as a table: the minimum from &quot;%1&quot;, the maximum from &quot;%2&quot;, rain from &quot;%3&quot;.</source>
        <translation>Se leyó como tabla: la mínima de &quot;%1&quot;, la máxima de &quot;%2&quot;, la lluvia de &quot;%3&quot;.</translation>
    </message>
    <message>
        <source>Station %1.</source>
        <translation>Estación %1.</translation>
    </message>
    <message>
        <source>Station %1, %2.</source>
        <translation>Estación %1, %2.</translation>
    </message>
    <message>
        <source>One day with both temperatures was read, %2.</source>
        <translation>Se leyó un día con las dos temperaturas, el %2.</translation>
    </message>
    <message>
        <source>%1 days with both temperatures were read, from %2 to %3.</source>
        <translation>Se leyeron %1 días con las dos temperaturas, del %2 al %3.</translation>
    </message>
    <message>
        <source>One more day lacks a temperature.</source>
        <translation>A un día más le falta una temperatura.</translation>
    </message>
    <message>
        <source>%1 more days lack a temperature.</source>
        <translation>A otros %1 días les falta una temperatura.</translation>
    </message>
    <message>
        <source>One of the days is a forecast.</source>
        <translation>Uno de los días es un pronóstico.</translation>
    </message>
    <message>
        <source>%1 of the days are a forecast.</source>
        <translation>%1 de los días son un pronóstico.</translation>
    </message>
    <message>
        <source>One day lies after today and was taken for a forecast, though the file does not say so.</source>
        <translation>Un día es posterior a hoy y se tomó como pronóstico, aunque el archivo no lo dice.</translation>
    </message>
    <message>
        <source>%1 days lie after today and were taken for a forecast, though the file does not say so.</source>
        <translation>%1 días son posteriores a hoy y se tomaron como pronóstico, aunque el archivo no lo dice.</translation>
    </message>
    <message>
        <source>The file does not tell its unit: temperatures were taken for %1, because then they run from %2 to %3 degrees Celsius.</source>
        <translation>El archivo no dice su unidad: las temperaturas se tomaron como %1, porque así van de %2 a %3 grados Celsius.</translation>
    </message>
    <message>
        <source>Temperatures were taken for %1, as the headings say: from %2 to %3 degrees Celsius.</source>
        <translation>Las temperaturas se tomaron como %1, según los encabezados: de %2 a %3 grados Celsius.</translation>
    </message>
    <message>
        <source>Temperatures were taken for %1, as you said: from %2 to %3 degrees Celsius.</source>
        <translation>Las temperaturas se tomaron como %1, como usted indicó: de %2 a %3 grados Celsius.</translation>
    </message>
    <message>
        <source>Temperatures run from %2 to %3 degrees Celsius.</source>
        <translation>Las temperaturas van de %2 a %3 grados Celsius.</translation>
    </message>
    <message>
        <source>The file does not tell the unit of rain either: it was taken for %1.</source>
        <translation>El archivo tampoco dice la unidad de la lluvia: se tomó como %1.</translation>
    </message>
    <message>
        <source>Its dates were read with the day before the month, which only then makes days that follow each other.</source>
        <translation>Sus fechas se leyeron con el día antes del mes, pues solo así los días son seguidos.</translation>
    </message>
    <message>
        <source>Its dates were read with the month before the day, which only then makes days that follow each other.</source>
        <translation>Sus fechas se leyeron con el mes antes del día, pues solo así los días son seguidos.</translation>
    </message>
    <message>
        <source>One day is missing: %2.</source>
        <translation>Falta un día: el %2.</translation>
    </message>
    <message>
        <source>%1 days are missing, none of them next to another; the first is %2.</source>
        <translation>Faltan %1 días, ninguno junto a otro; el primero es el %2.</translation>
    </message>
    <message>
        <source>Days are missing once, from %3 to %4 (%2 days).</source>
        <translation>Faltan días una vez, del %3 al %4 (%2 días).</translation>
    </message>
    <message>
        <source>Days are missing %1 times, the longest from %3 to %4 (%2 days).</source>
        <translation>Faltan días %1 veces; el hueco más largo va del %3 al %4 (%2 días).</translation>
    </message>
    <message>
        <source>One value was dropped because its source flags it %2: %3.</source>
        <translation>Se descartó un valor porque su fuente lo señala con %2: %3.</translation>
    </message>
    <message>
        <source>%1 values were dropped because their source flags them %2: %3.</source>
        <translation>Se descartaron %1 valores porque su fuente los señala con %2: %3.</translation>
    </message>
    <message>
        <source>One value was dropped because no instrument shows it.</source>
        <translation>Se descartó un valor porque ningún instrumento lo marca.</translation>
    </message>
    <message>
        <source>%1 values were dropped because no instrument shows them.</source>
        <translation>Se descartaron %1 valores porque ningún instrumento los marca.</translation>
    </message>
    <message>
        <source>One day had its minimum above its maximum, %2; the two were swapped.</source>
        <translation>Un día tenía la mínima por encima de la máxima, el %2; se intercambiaron las dos.</translation>
    </message>
    <message>
        <source>%1 days had their minimum above their maximum, the first on %2; the two were swapped.</source>
        <translation>%1 días tenían la mínima por encima de la máxima, el primero el %2; se intercambiaron las dos.</translation>
    </message>
    <message>
        <source>One day stands in the file more than once; the later line was taken, but a measurement before a forecast.</source>
        <translation>Un día está más de una vez en el archivo; se tomó la última línea, pero una medición antes que un pronóstico.</translation>
    </message>
    <message>
        <source>%1 days stand in the file more than once; the later line was taken, but a measurement before a forecast.</source>
        <translation>%1 días están más de una vez en el archivo; se tomó la última línea, pero una medición antes que un pronóstico.</translation>
    </message>
    <message>
        <source>One line could not be read.</source>
        <translation>No se pudo leer una línea.</translation>
    </message>
    <message>
        <source>%1 lines could not be read.</source>
        <translation>No se pudieron leer %1 líneas.</translation>
    </message>
    <message>
        <source>One fault more is not shown beside the first.</source>
        <translation>Además de los primeros hay un error más que no se muestra.</translation>
    </message>
    <message>
        <source>%1 faults more are not shown beside the first.</source>
        <translation>Además de los primeros hay %1 errores más que no se muestran.</translation>
    </message>
    <message>
        <source>Taken as %1 the warmest days reach %2 degrees Celsius; that is no orchard&apos;s weather, so say the unit and import again.</source>
        <translation>Tomadas como %1, las temperaturas de los días más cálidos llegan a %2 grados Celsius; ese no es clima de ningún huerto, así que indique la unidad y vuelva a importar.</translation>
    </message>
    <message>
        <source>Taken as %1 the warmest days reach only %2 degrees Celsius; if that cannot be, say the unit and import again.</source>
        <translation>Tomadas como %1, las temperaturas de los días más cálidos llegan solo a %2 grados Celsius; si no puede ser, indique la unidad y vuelva a importar.</translation>
    </message>
</context>
<context>
    <name>Why</name>
    <message>
        <source>Opens %1: at %2.</source>
        <translation>Abre el %1: en %2.</translation>
    </message>
    <message>
        <source>Opens %1: %3 after %2.</source>
        <translation>Abre el %1: %3 después de %2.</translation>
    </message>
    <message>
        <source>Opens %1: %3 before %2.</source>
        <translation>Abre el %1: %3 antes de %2.</translation>
    </message>
    <message>
        <source>Closes %1: at %2.</source>
        <translation>Cierra el %1: en %2.</translation>
    </message>
    <message>
        <source>Closes %1: %3 after %2.</source>
        <translation>Cierra el %1: %3 después de %2.</translation>
    </message>
    <message>
        <source>Closes %1: %3 before %2.</source>
        <translation>Cierra el %1: %3 antes de %2.</translation>
    </message>
    <message>
        <source>No longer worth doing after %1: at %2.</source>
        <translation>Ya no vale la pena después del %1: en %2.</translation>
    </message>
    <message>
        <source>No longer worth doing after %1: %3 after %2.</source>
        <translation>Ya no vale la pena después del %1: %3 después de %2.</translation>
    </message>
    <message>
        <source>No longer worth doing after %1: %3 before %2.</source>
        <translation>Ya no vale la pena después del %1: %3 antes de %2.</translation>
    </message>
    <message>
        <source>Opens %1: a person moved it there by hand.</source>
        <translation>Abre el %1: alguien lo movió ahí a mano.</translation>
    </message>
    <message>
        <source>Closes %1: a person moved it there by hand.</source>
        <translation>Cierra el %1: alguien lo movió ahí a mano.</translation>
    </message>
    <message>
        <source>Seen on %2: %1.</source>
        <translation>Visto el %2: %1.</translation>
    </message>
    <message>
        <source>Expected on %2: %1; eight years in ten between %3 and %4.</source>
        <translation>Se espera el %2: %1; ocho años de cada diez entre el %3 y el %4.</translation>
    </message>
    <message>
        <source>It is counted in days from another stage or from the calendar; no heat sum is published for it.</source>
        <translation>Se cuenta en días desde otra etapa o por el calendario; no hay suma de calor publicada para ella.</translation>
    </message>
    <message>
        <source>New trees wake late: %1 days are added in the first leaf.</source>
        <translation>Los árboles nuevos brotan tarde: se agregan %1 días en la primera hoja.</translation>
    </message>
    <message>
        <source>It follows from %1, which was seen.</source>
        <translation>Se deduce de %1, que se observó.</translation>
    </message>
    <message>
        <source>The block&apos;s elevation changes the station&apos;s temperatures by %1 °C.</source>
        <translation>La altitud del cuadro cambia las temperaturas de la estación en %1 °C.</translation>
    </message>
    <message>
        <source>This cultivar comes %1 days after Golden Delicious.</source>
        <translation>Esta variedad viene %1 días después de Golden Delicious.</translation>
    </message>
    <message>
        <source>This cultivar comes %1 days before Golden Delicious.</source>
        <translation>Esta variedad viene %1 días antes de Golden Delicious.</translation>
    </message>
    <message>
        <source>That job was finished on %1.</source>
        <translation>Ese trabajo se terminó el %1.</translation>
    </message>
    <message>
        <source>That job is not finished; its closing, %1, is taken until it is.</source>
        <translation>Ese trabajo no está terminado; mientras tanto se toma su cierre, el %1.</translation>
    </message>
    <message>
        <source>The programme no longer asks for this job; it stays for its ticks or for what a person said of it.</source>
        <translation>El programa ya no pide este trabajo; se conserva por sus marcas o por lo que alguien dijo de él.</translation>
    </message>
    <message>
        <source>After %1 the next visit takes its place.</source>
        <translation>Después del %1, la siguiente visita toma su lugar.</translation>
    </message>
    <message>
        <source>%1</source>
        <translation>%1</translation>
    </message>
    <message>
        <source>It waits for the planting day: before it there is no tree.</source>
        <translation>Espera el día de plantación: antes de él no hay árbol.</translation>
    </message>
    <message>
        <source>Visit %1 of one every %2 days.</source>
        <translation>Visita %1, con una cada %2 días.</translation>
    </message>
    <message>
        <source>Opens %1.</source>
        <translation>Abre el %1.</translation>
    </message>
    <message>
        <source>Closes %1, when the next visit is due.</source>
        <translation>Cierra el %1, cuando toca la siguiente visita.</translation>
    </message>
    <message>
        <source>Vigour class: %1, by the grower&apos;s word.</source>
        <translation>Clase de vigor: %1, según el productor.</translation>
    </message>
    <message>
        <source>Vigour class: %1, from %2 (%3) on %4 (%5).</source>
        <translation>Clase de vigor: %1, por %2 (%3) sobre %4 (%5).</translation>
    </message>
    <message>
        <source>Labour: %1 trees at %2 seconds each, %3 worker-hours.</source>
        <translation>Mano de obra: %1 árboles a %2 segundos cada uno, %3 horas de trabajo.</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>Fuente: %1</translation>
    </message>
    <message>
        <source>Opens %1: ahead of %2.</source>
        <translation>Abre el %1: antes de %2.</translation>
    </message>
    <message>
        <source>Closes %1: ahead of %2.</source>
        <translation>Cierra el %1: antes de %2.</translation>
    </message>
    <message>
        <source>No longer worth doing after %1: ahead of %2.</source>
        <translation>Ya no vale la pena después del %1: antes de %2.</translation>
    </message>
    <message>
        <source>What is still to come is taken from the monthly averages.</source>
        <translation>Lo que falta se toma de los promedios mensuales.</translation>
    </message>
    <message>
        <source>What is still to come is taken from %1 past seasons in turn.</source>
        <translation>Lo que falta se toma de %1 temporadas pasadas, una por una.</translation>
    </message>
    <message>
        <source>What is needed is corrected by your own dates of %1 season.</source>
        <translation>Lo necesario se corrige con sus propias fechas de %1 temporada.</translation>
    </message>
    <message>
        <source>What is needed is corrected by your own dates of %1 seasons.</source>
        <translation>Lo necesario se corrige con sus propias fechas de %1 temporadas.</translation>
    </message>
    <message>
        <source>The block&apos;s own correction adds %1 °C.</source>
        <translation>La corrección propia del cuadro suma %1 °C.</translation>
    </message>
    <message>
        <source>Bloom may come early, but the early edge of the span from %1 to %2 lies before the middle of the window, so it is held to the middle, %3.</source>
        <translation>La floración puede adelantarse, pero el inicio del lapso del %1 al %2 cae antes de la mitad del plazo, así que se deja en la mitad, el %3.</translation>
    </message>
    <message>
        <source>Bloom may come early: of the span from %1 to %2 the early edge is taken, so that it is done before the first flowers open in nine seasons of ten.</source>
        <translation>La floración puede adelantarse: del lapso del %1 al %2 se toma el inicio, para terminar antes de que abran las primeras flores en nueve de cada diez temporadas.</translation>
    </message>
    <message>
        <source>Bloom may come early: of the span from %1 to %2 the early edge is taken, so that it is done before %3 in nine seasons of ten.</source>
        <translation>La floración puede adelantarse: del lapso del %1 al %2 se toma el inicio, para terminar antes de %3 en nueve de cada diez temporadas.</translation>
    </message>
    <message>
        <source>Heat: %1 of %2 heat units are in since %4 (degree days above %3 °C).</source>
        <translation>Calor: van %1 de %2 unidades de calor desde el %4 (grados día por encima de %3 °C).</translation>
    </message>
    <message>
        <source>Heat: %1 of %2 heat units are in since %4 (degree days above %3 °C, before %5 in part).</source>
        <translation>Calor: van %1 de %2 unidades de calor desde el %4 (grados día por encima de %3 °C, antes de %5 solo en parte).</translation>
    </message>
</context>
<context>
    <name>topwire::BesidePanel</name>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Cerrar</translation>
    </message>
</context>
<context>
    <name>topwire::BlockForm</name>
    <message>
        <source>&amp;Save block</source>
        <translation>&amp;Guardar cuadro</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nombre</translation>
    </message>
    <message>
        <source>As it is called in the field</source>
        <translation>Como se le llama en el campo</translation>
    </message>
    <message>
        <source>&amp;Rows</source>
        <translation>&amp;Hileras</translation>
    </message>
    <message>
        <source>As you number them: 1-24, or 1-12, 15</source>
        <translation>Según las numere usted: 1-24, o 1-12, 15</translation>
    </message>
    <message>
        <source>Between r&amp;ows</source>
        <translation>&amp;Entre hileras</translation>
    </message>
    <message>
        <source>&amp;Length of a row</source>
        <translation>&amp;Largo de la hilera</translation>
    </message>
    <message>
        <source>May stay empty where you count the trees</source>
        <translation>Puede quedar vacío si usted cuenta los árboles</translation>
    </message>
    <message>
        <source>Ele&amp;vation</source>
        <translation>Al&amp;titud</translation>
    </message>
    <message>
        <source>No&amp;tes</source>
        <translation>N&amp;otas</translation>
    </message>
    <message>
        <source>&amp;Close without saving</source>
        <translation>&amp;Cerrar sin guardar</translation>
    </message>
    <message>
        <source>A new block</source>
        <translation>Un cuadro nuevo</translation>
    </message>
    <message>
        <source>Edit %1</source>
        <translation>Editar %1</translation>
    </message>
    <message>
        <source>Such as 3.6 m</source>
        <translation>Por ejemplo, 3.6 m</translation>
    </message>
    <message>
        <source>Such as 11 ft</source>
        <translation>Por ejemplo, 11 ft</translation>
    </message>
    <message>
        <source>The orchard&apos;s, %1, where empty</source>
        <translation>La del huerto, %1, si queda vacío</translation>
    </message>
    <message>
        <source>Correct the &amp;minimum by</source>
        <translation>Corregir la &amp;mínima en</translation>
    </message>
    <message>
        <source>Correct the ma&amp;ximum by</source>
        <translation>Corregir la má&amp;xima en</translation>
    </message>
    <message>
        <source>On top of what elevation makes of it</source>
        <translation>Además de lo que cambia por la altitud</translation>
    </message>
    <message>
        <source>Against the station: -1.5 °C in a frost hollow</source>
        <translation>Frente a la estación: -1.5 °C en una hondonada de heladas</translation>
    </message>
    <message>
        <source>Against the station: -3 °F in a frost hollow</source>
        <translation>Frente a la estación: -3 °F en una hondonada de heladas</translation>
    </message>
</context>
<context>
    <name>topwire::BlockList</name>
    <message>
        <source>Blocks</source>
        <translation>Cuadros</translation>
    </message>
</context>
<context>
    <name>topwire::BlockRowsModel</name>
    <message>
        <source>%1, %2, %3</source>
        <translation>%1, %2, %3</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>topwire::BlocksPage</name>
    <message>
        <source>&amp;Edit block</source>
        <translation>&amp;Editar cuadro</translation>
    </message>
    <message>
        <source>&amp;Delete block</source>
        <translation>E&amp;liminar cuadro</translation>
    </message>
    <message>
        <source>&amp;Add a block</source>
        <translation>&amp;Agregar un cuadro</translation>
    </message>
    <message>
        <source>No blocks yet.</source>
        <translation>Aún no hay cuadros.</translation>
    </message>
    <message>
        <source>A block is a piece of ground with rows.</source>
        <translation>Un cuadro es un terreno con hileras.</translation>
    </message>
    <message>
        <source>Blocks</source>
        <translation>Cuadros</translation>
    </message>
    <message>
        <source>Delete %1 with its plantings and what was seen in them? Undo brings it back.</source>
        <translation>¿Eliminar %1 con sus plantaciones y lo que se observó en ellas? Deshacer lo recupera.</translation>
    </message>
    <message>
        <source>&amp;Delete %1</source>
        <translation>E&amp;liminar %1</translation>
    </message>
    <message>
        <source>Delete %1? Undo brings it back.</source>
        <translation>¿Eliminar %1? Deshacer lo recupera.</translation>
    </message>
</context>
<context>
    <name>topwire::CalendarPage</name>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Deshacer</translation>
    </message>
    <message>
        <source>Nothing to undo yet.</source>
        <translation>Aún no hay nada que deshacer.</translation>
    </message>
    <message>
        <source>&amp;Show: all work</source>
        <translation>Mos&amp;trar: todos los trabajos</translation>
    </message>
    <message>
        <source>&amp;Show: some work</source>
        <translation>Mos&amp;trar: algunos trabajos</translation>
    </message>
    <message>
        <source>&amp;Show: %1</source>
        <translation>Mos&amp;trar: %1</translation>
    </message>
    <message>
        <source>Earlier</source>
        <translation>Antes</translation>
    </message>
    <message>
        <source>Earlier (Page Up)</source>
        <translation>Antes (Re Pág)</translation>
    </message>
    <message>
        <source>&amp;Today</source>
        <translation>&amp;Hoy</translation>
    </message>
    <message>
        <source>Go to today (Home)</source>
        <translation>Ir a hoy (Inicio)</translation>
    </message>
    <message>
        <source>Later</source>
        <translation>Después</translation>
    </message>
    <message>
        <source>Later (Page Down)</source>
        <translation>Después (Av Pág)</translation>
    </message>
    <message>
        <source>&amp;Month</source>
        <translation>&amp;Mes</translation>
    </message>
    <message>
        <source>Wee&amp;k</source>
        <translation>&amp;Semana</translation>
    </message>
    <message>
        <source>&amp;Print the week</source>
        <translation>&amp;Imprimir la semana</translation>
    </message>
    <message>
        <source>The calendar fills once a block is planted.</source>
        <translation>El calendario se llena en cuanto haya un cuadro plantado.</translation>
    </message>
    <message>
        <source>Add a block and say what grows in it; its work then stands here with dates.</source>
        <translation>Agregue un cuadro e indique qué crece en él; sus trabajos aparecerán aquí con fechas.</translation>
    </message>
    <message>
        <source>&amp;Add a block</source>
        <translation>&amp;Agregar un cuadro</translation>
    </message>
    <message>
        <source>&amp;All work</source>
        <translation>&amp;Todos los trabajos</translation>
    </message>
</context>
<context>
    <name>topwire::CellLegend</name>
    <message>
        <source>chosen</source>
        <translation>elegido</translation>
    </message>
    <message>
        <source>to do</source>
        <translation>por hacer</translation>
    </message>
    <message>
        <source>partly</source>
        <translation>en parte</translation>
    </message>
    <message>
        <source>done</source>
        <translation>hecho</translation>
    </message>
</context>
<context>
    <name>topwire::Checklist</name>
    <message>
        <source>&amp;Add work</source>
        <translation>&amp;Agregar trabajo</translation>
    </message>
    <message>
        <source>No window is open on this day. Choose another day, or add work of your own.</source>
        <translation>No hay ningún plazo abierto este día. Elija otro día o agregue un trabajo propio.</translation>
    </message>
</context>
<context>
    <name>topwire::DailyFiguresPanel</name>
    <message>
        <source>Daily figures</source>
        <translation>Datos diarios</translation>
    </message>
    <message>
        <source>The lowest and highest temperature of a day, midnight to midnight, at the station.</source>
        <translation>La temperatura mínima y la máxima de un día, de medianoche a medianoche, en la estación.</translation>
    </message>
    <message>
        <source>Da&amp;y</source>
        <translation>&amp;Fecha</translation>
    </message>
    <message>
        <source>&amp;Rain</source>
        <translation>&amp;Lluvia</translation>
    </message>
    <message>
        <source>&amp;Lowest</source>
        <translation>&amp;Mínima</translation>
    </message>
    <message>
        <source>Highes&amp;t</source>
        <translation>Má&amp;xima</translation>
    </message>
    <message>
        <source>&amp;Keep this day</source>
        <translation>Gua&amp;rdar este día</translation>
    </message>
    <message>
        <source>F&amp;orget it</source>
        <translation>&amp;Quitarlo</translation>
    </message>
    <message>
        <source>Takes this day&apos;s figures away</source>
        <translation>Quita los datos de este día</translation>
    </message>
    <message>
        <source>Days and their figures</source>
        <translation>Días y sus datos</translation>
    </message>
    <message>
        <source>%1; may stay empty</source>
        <translation>%1; puede quedar vacía</translation>
    </message>
</context>
<context>
    <name>topwire::DaysAheadStrip</name>
    <message>
        <source>Coming days</source>
        <translation>Próximos días</translation>
    </message>
</context>
<context>
    <name>topwire::HeatCard</name>
    <message>
        <source>Heat &amp;units</source>
        <translation>U&amp;nidades de calor</translation>
    </message>
    <message>
        <source>De&amp;gree days</source>
        <translation>&amp;Grados día</translation>
    </message>
    <message>
        <source>&amp;Print</source>
        <translation>Im&amp;primir</translation>
    </message>
    <message>
        <source>&amp;Print the chart…</source>
        <translation>Im&amp;primir el gráfico…</translation>
    </message>
    <message>
        <source>&amp;Save it as PDF…</source>
        <translation>&amp;Guardarlo como PDF…</translation>
    </message>
</context>
<context>
    <name>topwire::HeatView</name>
    <message>
        <source>Heat of the season</source>
        <translation>Calor de la temporada</translation>
    </message>
</context>
<context>
    <name>topwire::MainWindow</name>
    <message>
        <source>The file is open in another window. You can look, not change.</source>
        <translation>El archivo está abierto en otra ventana. Puede verlo, pero no cambiarlo.</translation>
    </message>
    <message>
        <source>Calendar</source>
        <translation>Calendario</translation>
    </message>
    <message>
        <source>Blocks</source>
        <translation>Cuadros</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Configuración</translation>
    </message>
    <message>
        <source>&amp;Undo: %1</source>
        <translation>&amp;Deshacer: %1</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Deshacer</translation>
    </message>
    <message>
        <source>&amp;Redo: %1</source>
        <translation>&amp;Rehacer: %1</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>&amp;Rehacer</translation>
    </message>
    <message>
        <source>%1 - Topwire</source>
        <translation>%1 - Topwire</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>Today is taken as %1</source>
        <translation>Se toma como hoy el %1</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>Undone: %1</source>
        <translation>Deshecho: %1</translation>
    </message>
    <message>
        <source>Done again: %1</source>
        <translation>Rehecho: %1</translation>
    </message>
    <message>
        <source>Our orchard</source>
        <translation>Nuestro huerto</translation>
    </message>
    <message>
        <source>%1 You can look at it, not change it.</source>
        <translation>%1 Puede verlo, pero no cambiarlo.</translation>
    </message>
    <message>
        <source>&amp;Look at it</source>
        <translation>&amp;Solo verlo</translation>
    </message>
    <message>
        <source>Make a new orchard</source>
        <translation>Crear un huerto nuevo</translation>
    </message>
    <message>
        <source>New orchard</source>
        <translation>Huerto nuevo</translation>
    </message>
    <message>
        <source>%1, copy of %2</source>
        <translation>%1, copia %2</translation>
    </message>
    <message>
        <source>Save a copy</source>
        <translation>Guardar una copia</translation>
    </message>
    <message>
        <source>A copy stands in %1.</source>
        <translation>Hay una copia en %1.</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1, no longer in %2</source>
        <translation>%1, ya no está en %2</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Archivo</translation>
    </message>
    <message>
        <source>&amp;New orchard...</source>
        <translation>&amp;Nuevo huerto...</translation>
    </message>
    <message>
        <source>&amp;Open...</source>
        <translation>&amp;Abrir...</translation>
    </message>
    <message>
        <source>Open &amp;recent</source>
        <translation>Abrir &amp;reciente</translation>
    </message>
    <message>
        <source>Save a &amp;copy...</source>
        <translation>Guardar una &amp;copia...</translation>
    </message>
    <message>
        <source>&amp;Print this week...</source>
        <translation>&amp;Imprimir esta semana...</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Salir</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Editar</translation>
    </message>
    <message>
        <source>&amp;Add a block</source>
        <translation>A&amp;gregar un cuadro</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Ver</translation>
    </message>
    <message>
        <source>&amp;Calendar</source>
        <translation>&amp;Calendario</translation>
    </message>
    <message>
        <source>&amp;Blocks</source>
        <translation>C&amp;uadros</translation>
    </message>
    <message>
        <source>&amp;Settings</source>
        <translation>Con&amp;figuración</translation>
    </message>
    <message>
        <source>C&amp;olours</source>
        <translation>Co&amp;lores</translation>
    </message>
    <message>
        <source>As the &amp;desktop is</source>
        <translation>Como el &amp;escritorio</translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation>&amp;Claro</translation>
    </message>
    <message>
        <source>D&amp;ark</source>
        <translation>&amp;Oscuro</translation>
    </message>
    <message>
        <source>&amp;Language</source>
        <translation>&amp;Idioma</translation>
    </message>
    <message>
        <source>As the &amp;system is</source>
        <translation>Como el &amp;sistema</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>Ay&amp;uda</translation>
    </message>
    <message>
        <source>&amp;Keys</source>
        <translation>&amp;Teclas</translation>
    </message>
    <message>
        <source>&amp;About Topwire</source>
        <translation>&amp;Acerca de Topwire</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Tab, Shift+Tab: from field to field</source>
        <translation>Tab, Mayús+Tab: de un campo a otro</translation>
    </message>
    <message>
        <source>Alt and an underlined letter: that button</source>
        <translation>Alt y una letra subrayada: ese botón</translation>
    </message>
    <message>
        <source>Arrows: between days, bars, rows and blocks</source>
        <translation>Flechas: entre días, barras, hileras y cuadros</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Teclas</translation>
    </message>
    <message>
        <source>Topwire %1

Dated field tasks for high-density apple blocks.

Free software under the MIT licence.

Dates and figures are estimates to plan by. Labels, local rules and licensed advice go before anything said here; walk the block before you act.</source>
        <translation>Topwire %1

Trabajos de campo con fecha para cuadros de manzano en alta densidad.

Software libre con licencia MIT.

Las fechas y las cifras son estimaciones para planear. Las etiquetas, las normas locales y los consejos de asesores con licencia van antes que lo que se dice aquí; recorra el cuadro antes de actuar.</translation>
    </message>
    <message>
        <source>About Topwire</source>
        <translation>Acerca de Topwire</translation>
    </message>
    <message>
        <source>Weather</source>
        <translation>Clima</translation>
    </message>
    <message>
        <source>&amp;Weather</source>
        <translation>Cli&amp;ma</translation>
    </message>
</context>
<context>
    <name>topwire::MonthView</name>
    <message>
        <source>Calendar</source>
        <translation>Calendario</translation>
    </message>
    <message>
        <source>%1
more</source>
        <translation>%1
más</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: most likely %2, in eight cases of ten from %3 to %4</source>
        <translation>%1: lo más probable, %2; en ocho de cada diez casos, de %3 a %4</translation>
    </message>
</context>
<context>
    <name>topwire::NormalsTable</name>
    <message>
        <source>Monthly normals</source>
        <translation>Normales mensuales</translation>
    </message>
    <message>
        <source>lowest, °C</source>
        <translation>mínima, °C</translation>
    </message>
    <message>
        <source>lowest, °F</source>
        <translation>mínima, °F</translation>
    </message>
    <message>
        <source>highest, °C</source>
        <translation>máxima, °C</translation>
    </message>
    <message>
        <source>highest, °F</source>
        <translation>máxima, °F</translation>
    </message>
</context>
<context>
    <name>topwire::NoticeBar</name>
    <message>
        <source>Put &amp;away</source>
        <translation>&amp;Ocultar</translation>
    </message>
</context>
<context>
    <name>topwire::PagePreview</name>
    <message>
        <source>Preview</source>
        <translation>Vista previa</translation>
    </message>
</context>
<context>
    <name>topwire::PastSeasonsModel</name>
    <message>
        <source>%1, from your book</source>
        <translation>%1, de su libreta</translation>
    </message>
    <message>
        <source>%1, seen in %2</source>
        <translation>%1, observada en %2</translation>
    </message>
    <message>
        <source>Season</source>
        <translation>Temporada</translation>
    </message>
    <message>
        <source>Cultivar</source>
        <translation>Variedad</translation>
    </message>
</context>
<context>
    <name>topwire::PastSeasonsPanel</name>
    <message>
        <source>Past seasons</source>
        <translation>Temporadas pasadas</translation>
    </message>
    <message>
        <source>When each cultivar reached its stages here. The more seasons a cultivar has, the closer its dates follow them.</source>
        <translation>Cuándo llegó aquí cada variedad a sus etapas. Cuantas más temporadas tenga una variedad, más se ajustan sus fechas a ellas.</translation>
    </message>
    <message>
        <source>Dates of past seasons</source>
        <translation>Fechas de temporadas pasadas</translation>
    </message>
    <message>
        <source>C&amp;ultivar</source>
        <translation>Va&amp;riedad</translation>
    </message>
    <message>
        <source>S&amp;tage</source>
        <translation>E&amp;tapa</translation>
    </message>
    <message>
        <source>Da&amp;y</source>
        <translation>&amp;Fecha</translation>
    </message>
    <message>
        <source>A date of the same cultivar, stage and season is replaced</source>
        <translation>Se reemplaza la fecha de la misma variedad, etapa y temporada</translation>
    </message>
    <message>
        <source>&amp;Add the date</source>
        <translation>Agregar la fec&amp;ha</translation>
    </message>
    <message>
        <source>Ta&amp;ke the chosen one away</source>
        <translation>&amp;Quitar la elegida</translation>
    </message>
    <message>
        <source>No dates yet. Add those of your own book; what you note this season joins them next year.</source>
        <translation>Aún no hay fechas. Agregue las de su propia libreta; lo que anote esta temporada se suma el próximo año.</translation>
    </message>
</context>
<context>
    <name>topwire::PlantingForm</name>
    <message>
        <source>&amp;Save planting</source>
        <translation>&amp;Guardar plantación</translation>
    </message>
    <message>
        <source>&amp;Close without saving</source>
        <translation>&amp;Cerrar sin guardar</translation>
    </message>
    <message>
        <source>C&amp;ultivar</source>
        <translation>&amp;Variedad</translation>
    </message>
    <message>
        <source>Root&amp;stock</source>
        <translation>Porta&amp;injerto</translation>
    </message>
    <message>
        <source>&amp;Planted on, or planned for</source>
        <translation>&amp;Plantada el, o prevista para el</translation>
    </message>
    <message>
        <source>&amp;Rows</source>
        <translation>&amp;Hileras</translation>
    </message>
    <message>
        <source>Between &amp;trees</source>
        <translation>Entre ár&amp;boles</translation>
    </message>
    <message>
        <source>&amp;Kind</source>
        <translation>&amp;Tipo</translation>
    </message>
    <message>
        <source>Trees in a ro&amp;w</source>
        <translation>Á&amp;rboles por hilera</translation>
    </message>
    <message>
        <source>May stay empty: row length over tree spacing</source>
        <translation>Puede quedar vacío: largo de la hilera entre distancia de los árboles</translation>
    </message>
    <message>
        <source>Trees in &amp;all</source>
        <translation>Árboles en tota&amp;l</translation>
    </message>
    <message>
        <source>Where you have counted them</source>
        <translation>Si ya los contó</translation>
    </message>
    <message>
        <source>&amp;Vigour</source>
        <translation>Vig&amp;or</translation>
    </message>
    <message>
        <source>Why &amp;not as the tables say</source>
        <translation>Por &amp;qué no como dicen las tablas</translation>
    </message>
    <message>
        <source>Such as shoots over 40 cm two winters running</source>
        <translation>Por ejemplo, brotes de más de 40 cm dos inviernos seguidos</translation>
    </message>
    <message>
        <source>Pro&amp;gramme</source>
        <translation>Progra&amp;ma</translation>
    </message>
    <message>
        <source>S&amp;hort name</source>
        <translation>&amp;Nombre corto</translation>
    </message>
    <message>
        <source>For lists and the command line; made for you where empty</source>
        <translation>Para listas y la línea de comandos; si queda vacío, se crea solo</translation>
    </message>
    <message>
        <source>as the tables say</source>
        <translation>como dicen las tablas</translation>
    </message>
    <message>
        <source>A new planting in %1</source>
        <translation>Una plantación nueva en %1</translation>
    </message>
    <message>
        <source>Edit %1</source>
        <translation>Editar %1</translation>
    </message>
</context>
<context>
    <name>topwire::PlantingsCard</name>
    <message>
        <source>Add a &amp;planting</source>
        <translation>Agregar una &amp;plantación</translation>
    </message>
    <message>
        <source>Plantings</source>
        <translation>Plantaciones</translation>
    </message>
    <message>
        <source>Nothing planted yet. A planting is one cultivar on one rootstock, set on one day.</source>
        <translation>Aún no hay nada plantado. Una plantación es una variedad sobre un portainjerto, plantada en un mismo día.</translation>
    </message>
    <message>
        <source>rows %1</source>
        <translation>hileras %1</translation>
    </message>
    <message>
        <source>%1 trees</source>
        <translation>%1 árboles</translation>
    </message>
    <message>
        <source>%1 by %2</source>
        <translation>%1 por %2</translation>
    </message>
    <message>
        <source>Edit</source>
        <translation>Editar</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Eliminar</translation>
    </message>
    <message>
        <source>Edit %1</source>
        <translation>Editar %1</translation>
    </message>
    <message>
        <source>Delete %1</source>
        <translation>Eliminar %1</translation>
    </message>
</context>
<context>
    <name>topwire::PrintWindow</name>
    <message>
        <source>Print the week</source>
        <translation>Imprimir la semana</translation>
    </message>
    <message>
        <source>Preview</source>
        <translation>Vista previa</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Carta</translation>
    </message>
    <message>
        <source>Pap&amp;er</source>
        <translation>Pap&amp;el</translation>
    </message>
    <message>
        <source>&amp;Language of the sheet</source>
        <translation>I&amp;dioma de la hoja</translation>
    </message>
    <message>
        <source>Ea&amp;rlier</source>
        <translation>&amp;Antes</translation>
    </message>
    <message>
        <source>La&amp;ter</source>
        <translation>De&amp;spués</translation>
    </message>
    <message>
        <source>&amp;Save as PDF…</source>
        <translation>&amp;Guardar como PDF…</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Cerrar</translation>
    </message>
    <message>
        <source>Save as PDF</source>
        <translation>Guardar como PDF</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
</context>
<context>
    <name>topwire::RecordsCard</name>
    <message>
        <source>%1 (%2 %)</source>
        <translation>%1 (%2 %)</translation>
    </message>
    <message>
        <source>%1, rows %2</source>
        <translation>%1, hileras %2</translation>
    </message>
    <message>
        <source>%1 seen</source>
        <translation>%1, observada</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>Lo que pasó</translation>
    </message>
    <message>
        <source>Nothing ticked or seen yet.</source>
        <translation>Todavía no hay nada marcado ni observado.</translation>
    </message>
</context>
<context>
    <name>topwire::RowGrid</name>
    <message>
        <source>Rows</source>
        <translation>Hileras</translation>
    </message>
    <message>
        <source>Click or drag over rows. Arrows move, Space chooses, Shift extends, Ctrl+A takes all that are left.</source>
        <translation>Haga clic o arrastre sobre las hileras. Las flechas mueven, Espacio elige, Mayús extiende, Ctrl+A toma todas las que faltan.</translation>
    </message>
    <message>
        <source>not in this task</source>
        <translation>no está en este trabajo</translation>
    </message>
    <message>
        <source>Row %1, %2</source>
        <translation>Hilera %1, %2</translation>
    </message>
</context>
<context>
    <name>topwire::RowLegend</name>
    <message>
        <source>done</source>
        <translation>hecha</translation>
    </message>
    <message>
        <source>partly</source>
        <translation>en parte</translation>
    </message>
    <message>
        <source>to do</source>
        <translation>pendiente</translation>
    </message>
    <message>
        <source>nothing planted</source>
        <translation>sin plantar</translation>
    </message>
    <message>
        <source>replants: rows %1</source>
        <translation>replantes: hileras %1</translation>
    </message>
    <message>
        <source>pollinizer: rows %1</source>
        <translation>polinizador: hileras %1</translation>
    </message>
</context>
<context>
    <name>topwire::RowPicture</name>
    <message>
        <source>P</source>
        <comment>a pollinizer&apos;s row</comment>
        <translation>P</translation>
    </message>
    <message>
        <source>%1 rows, %2 of %3 done</source>
        <translation>%1 hileras, %2 de %3 hechas</translation>
    </message>
    <message>
        <source>Row %1</source>
        <translation>Hilera %1</translation>
    </message>
    <message>
        <source>: nothing planted</source>
        <translation>: sin plantar</translation>
    </message>
    <message>
        <source>: done</source>
        <translation>: hecha</translation>
    </message>
    <message>
        <source>: %1 % done</source>
        <translation>: %1 % hecho</translation>
    </message>
    <message>
        <source>: to do</source>
        <translation>: pendiente</translation>
    </message>
    <message>
        <source>: not in this task</source>
        <translation>: no está en este trabajo</translation>
    </message>
    <message>
        <source>, pollinizer</source>
        <translation>, polinizador</translation>
    </message>
</context>
<context>
    <name>topwire::RowsCard</name>
    <message>
        <source>Show on the ca&amp;lendar</source>
        <translation>Mostrar en el calen&amp;dario</translation>
    </message>
    <message>
        <source>Task shown in the rows</source>
        <translation>Trabajo que se muestra en las hileras</translation>
    </message>
    <message>
        <source>%1, pass %2</source>
        <translation>%1, pasada %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>No work is planned here this season.</source>
        <translation>No hay trabajo planeado aquí esta temporada.</translation>
    </message>
    <message>
        <source>· %1 of %2 rows, %3 left</source>
        <translation>· %1 de %2 hileras, faltan %3</translation>
    </message>
</context>
<context>
    <name>topwire::SettingsPage</name>
    <message>
        <source>&amp;Save settings</source>
        <translation>&amp;Guardar ajustes</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Ajustes</translation>
    </message>
    <message>
        <source>Where the orchard lies, and how it is shown here</source>
        <translation>Dónde está el huerto y cómo se muestra aquí</translation>
    </message>
    <message>
        <source>Orchard&apos;s &amp;name</source>
        <translation>&amp;Nombre del huerto</translation>
    </message>
    <message>
        <source>&amp;Units</source>
        <translation>&amp;Unidades</translation>
    </message>
    <message>
        <source>&amp;Latitude, degrees</source>
        <translation>&amp;Latitud, grados</translation>
    </message>
    <message>
        <source>Negative south of the equator</source>
        <translation>Negativa al sur del ecuador</translation>
    </message>
    <message>
        <source>&amp;Elevation</source>
        <translation>&amp;Altitud</translation>
    </message>
    <message>
        <source>Weather s&amp;tation</source>
        <translation>&amp;Estación meteorológica</translation>
    </message>
    <message>
        <source>Ele&amp;vation of the station</source>
        <translation>Altitud de la es&amp;tación</translation>
    </message>
    <message>
        <source>&amp;Records begin on</source>
        <translation>Los re&amp;gistros empiezan el</translation>
    </message>
    <message>
        <source>Work that closed before this day is not asked for</source>
        <translation>No se pide el trabajo que cerró antes de este día</translation>
    </message>
    <message>
        <source>metric</source>
        <translation>métrico</translation>
    </message>
    <message>
        <source>US customary</source>
        <translation>usual de EE. UU.</translation>
    </message>
    <message>
        <source>The orchard</source>
        <translation>El huerto</translation>
    </message>
    <message>
        <source>Monthly normals at the station</source>
        <translation>Normales mensuales en la estación</translation>
    </message>
    <message>
        <source>as the desktop is</source>
        <translation>como el escritorio</translation>
    </message>
    <message>
        <source>light</source>
        <translation>claro</translation>
    </message>
    <message>
        <source>dark</source>
        <translation>oscuro</translation>
    </message>
    <message>
        <source>as the system is</source>
        <translation>como el sistema</translation>
    </message>
    <message>
        <source>&amp;Colours</source>
        <translation>&amp;Colores</translation>
    </message>
    <message>
        <source>Lan&amp;guage</source>
        <translation>&amp;Idioma</translation>
    </message>
    <message>
        <source>On this machine</source>
        <translation>En este equipo</translation>
    </message>
    <message>
        <source>Normals of your own</source>
        <translation>Normales propias</translation>
    </message>
    <message>
        <source>%1. Source: %2</source>
        <translation>%1. Fuente: %2</translation>
    </message>
    <message>
        <source>First leaf &amp;blooms later by, days</source>
        <translation>Días que la &amp;primera hoja florece después</translation>
    </message>
    <message>
        <source>Trees just planted wake after the others, by one to two weeks</source>
        <translation>Los árboles recién plantados brotan una o dos semanas después que los demás</translation>
    </message>
</context>
<context>
    <name>topwire::StageRow</name>
    <message>
        <source>Enter: seen today. D: seen on another day.</source>
        <translation>Intro: observada hoy. D: observada otro día.</translation>
    </message>
    <message>
        <source>Seen today</source>
        <translation>Observada hoy</translation>
    </message>
    <message>
        <source>Another day</source>
        <translation>Otro día</translation>
    </message>
    <message>
        <source>Day it was seen</source>
        <translation>Día en que se observó</translation>
    </message>
    <message>
        <source>Seen then</source>
        <translation>Observada ese día</translation>
    </message>
</context>
<context>
    <name>topwire::StagesCard</name>
    <message>
        <source>seen</source>
        <translation>observada</translation>
    </message>
    <message>
        <source>a set number of days from bloom</source>
        <translation>un número fijo de días desde la floración</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>Planting whose stages are shown</source>
        <translation>Plantación cuyas etapas se muestran</translation>
    </message>
    <message>
        <source>Stage seen</source>
        <translation>Etapa observada</translation>
    </message>
    <message>
        <source>Day it was seen</source>
        <translation>Día en que se observó</translation>
    </message>
    <message>
        <source>We saw &amp;it</source>
        <translation>&amp;La observamos</translation>
    </message>
    <message>
        <source>Stages this season</source>
        <translation>Etapas de esta temporada</translation>
    </message>
    <message>
        <source>Stages come with a planting.</source>
        <translation>Las etapas vienen con una plantación.</translation>
    </message>
    <message>
        <source>The winters at this station are warmer than those the heat sums were measured in. Give your own dates of three past seasons on the Weather page: they take the place of these.</source>
        <translation>Los inviernos en esta estación son más cálidos que los del lugar donde se midieron las sumas de calor. Dé sus propias fechas de tres temporadas pasadas en la página Clima: toman el lugar de estas.</translation>
    </message>
</context>
<context>
    <name>topwire::StagesPanel</name>
    <message>
        <source>Stages</source>
        <translation>Etapas</translation>
    </message>
    <message>
        <source>Show them</source>
        <translation>Mostrar</translation>
    </message>
    <message>
        <source>%1. Winters here are warmer than those the heat sums were measured in: note the dates you see, they go before these.</source>
        <translation>%1. Los inviernos aquí son más cálidos que los del lugar donde se midieron las sumas de calor: anote las fechas que observe, tienen prioridad sobre estas.</translation>
    </message>
</context>
<context>
    <name>topwire::TaskForm</name>
    <message>
        <source> s a tree</source>
        <translation> s por árbol</translation>
    </message>
    <message>
        <source>&amp;Where</source>
        <translation>&amp;Dónde</translation>
    </message>
    <message>
        <source>&amp;From</source>
        <translation>D&amp;esde</translation>
    </message>
    <message>
        <source>&amp;To</source>
        <translation>&amp;Hasta</translation>
    </message>
    <message>
        <source>&amp;Labour</source>
        <translation>&amp;Mano de obra</translation>
    </message>
    <message>
        <source>&amp;Close without changing</source>
        <translation>&amp;Cerrar sin cambiar</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nombre</translation>
    </message>
    <message>
        <source>&amp;Reason</source>
        <translation>Mo&amp;tivo</translation>
    </message>
    <message>
        <source>Set aside: %1</source>
        <translation>Dejar de lado: %1</translation>
    </message>
    <message>
        <source>&amp;Set aside</source>
        <translation>Dejar de &amp;lado</translation>
    </message>
    <message>
        <source>Move the window: %1</source>
        <translation>Mover el plazo: %1</translation>
    </message>
    <message>
        <source>&amp;Move the window</source>
        <translation>Mover el &amp;plazo</translation>
    </message>
    <message>
        <source>Add work</source>
        <translation>Agregar trabajo</translation>
    </message>
    <message>
        <source>&amp;Add work</source>
        <translation>&amp;Agregar trabajo</translation>
    </message>
</context>
<context>
    <name>topwire::TaskRow</name>
    <message>
        <source>Space ticks all rows left, Enter opens the rows, W says why this date, the menu key has more.</source>
        <translation>Espacio marca todas las hileras que faltan, Intro abre las hileras, W dice por qué esta fecha, la tecla de menú ofrece más.</translation>
    </message>
    <message>
        <source>Tick the whole task</source>
        <translation>Marcar todo el trabajo</translation>
    </message>
    <message>
        <source>Why this date</source>
        <translation>Por qué esta fecha</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Más</translation>
    </message>
    <message>
        <source>More for this task</source>
        <translation>Más para este trabajo</translation>
    </message>
    <message>
        <source>Hide why</source>
        <translation>Ocultar el porqué</translation>
    </message>
    <message>
        <source>&amp;Take back all rows	Space</source>
        <translation>&amp;Desmarcar todas las hileras	Space</translation>
    </message>
    <message>
        <source>&amp;Tick all rows left	Space</source>
        <translation>&amp;Marcar todas las hileras que faltan	Space</translation>
    </message>
    <message>
        <source>Tick some &amp;rows	Enter</source>
        <translation>Marcar algunas &amp;hileras	Enter</translation>
    </message>
    <message>
        <source>&amp;Why this date	W</source>
        <translation>&amp;Por qué esta fecha	W</translation>
    </message>
    <message>
        <source>Set &amp;aside with a reason</source>
        <translation>Dejar de &amp;lado con un motivo</translation>
    </message>
    <message>
        <source>&amp;Move its window</source>
        <translation>Mo&amp;ver su plazo</translation>
    </message>
    <message>
        <source>Back to the &amp;plan</source>
        <translation>&amp;Volver al plan</translation>
    </message>
    <message>
        <source>should wait: %1</source>
        <translation>debe esperar: %1</translation>
    </message>
</context>
<context>
    <name>topwire::TickPanel</name>
    <message>
        <source>Worker-hours it took, all workers together.</source>
        <translation>Horas de trabajo que llevó, sumando a todos los trabajadores.</translation>
    </message>
    <message>
        <source>&amp;Only part of each row</source>
        <translation>&amp;Solo una parte de cada hilera</translation>
    </message>
    <message>
        <source>How much of each row is done</source>
        <translation>Cuánto de cada hilera está hecho</translation>
    </message>
    <message>
        <source>&amp;Rows</source>
        <translation>Hi&amp;leras</translation>
    </message>
    <message>
        <source>&amp;Who</source>
        <translation>&amp;Quién</translation>
    </message>
    <message>
        <source>&amp;Hours</source>
        <translation>&amp;Horas</translation>
    </message>
    <message>
        <source>&amp;Close without ticking</source>
        <translation>&amp;Cerrar sin marcar</translation>
    </message>
    <message>
        <source>“%1” is no number of hours. Write it like %2.</source>
        <translation>“%1” no es un número de horas. Escríbalo así: %2.</translation>
    </message>
</context>
<context>
    <name>topwire::WaitWord</name>
    <message>
        <source>should wait</source>
        <translation>debe esperar</translation>
    </message>
</context>
<context>
    <name>topwire::WeatherDaysModel</name>
    <message>
        <source>missing</source>
        <translation>falta</translation>
    </message>
    <message>
        <source>%1, missing</source>
        <translation>%1, falta</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Día</translation>
    </message>
    <message>
        <source>Lowest</source>
        <translation>Mínima</translation>
    </message>
    <message>
        <source>Highest</source>
        <translation>Máxima</translation>
    </message>
    <message>
        <source>Rain</source>
        <translation>Lluvia</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Origen</translation>
    </message>
</context>
<context>
    <name>topwire::WeatherFilePanel</name>
    <message>
        <source>&amp;Keep it</source>
        <translation>Gua&amp;rdarlo</translation>
    </message>
    <message>
        <source>Bring in a file</source>
        <translation>Importar un archivo</translation>
    </message>
    <message>
        <source>Daily weather: GHCN-Daily, daily summaries, or any table with a date, a lowest and a highest temperature.</source>
        <translation>Clima diario: GHCN-Daily, resúmenes diarios o cualquier tabla con fecha, temperatura mínima y máxima.</translation>
    </message>
    <message>
        <source>Choose a f&amp;ile…</source>
        <translation>Elegir un arc&amp;hivo…</translation>
    </message>
    <message>
        <source>measured at the station</source>
        <translation>medidos en la estación</translation>
    </message>
    <message>
        <source>a forecast</source>
        <translation>un pronóstico</translation>
    </message>
    <message>
        <source>as found in the file</source>
        <translation>según el archivo</translation>
    </message>
    <message>
        <source>The days &amp;are</source>
        <translation>L&amp;os días son</translation>
    </message>
    <message>
        <source>Temperatures are i&amp;n</source>
        <translation>Te&amp;mperaturas en</translation>
    </message>
    <message>
        <source>&amp;Rain is in</source>
        <translation>&amp;Lluvia en</translation>
    </message>
    <message>
        <source>Station, where there are se&amp;veral</source>
        <translation>Estación, si ha&amp;y varias</translation>
    </message>
    <message>
        <source>Share of the file read</source>
        <translation>Parte leída del archivo</translation>
    </message>
    <message>
        <source>Cance&amp;l</source>
        <translation>Cancela&amp;r</translation>
    </message>
    <message>
        <source>Found in it</source>
        <translation>Lo que contiene</translation>
    </message>
    <message>
        <source>What it changes</source>
        <translation>Lo que cambia</translation>
    </message>
    <message>
        <source>&amp;Leave it</source>
        <translation>Descar&amp;tarlo</translation>
    </message>
    <message>
        <source>Reading %1</source>
        <translation>Leyendo %1</translation>
    </message>
    <message>
        <source>as found: %1</source>
        <translation>según el archivo: %1</translation>
    </message>
</context>
<context>
    <name>topwire::WeatherPage</name>
    <message>
        <source>Planting whose season is shown</source>
        <translation>Plantación cuya temporada se muestra</translation>
    </message>
    <message>
        <source>&amp;Daily figures</source>
        <translation>&amp;Datos diarios</translation>
    </message>
    <message>
        <source>&amp;Bring in a file</source>
        <translation>&amp;Importar un archivo</translation>
    </message>
    <message>
        <source>Past &amp;seasons</source>
        <translation>Temporadas pa&amp;sadas</translation>
    </message>
    <message>
        <source>&amp;Add a block</source>
        <translation>A&amp;gregar un cuadro</translation>
    </message>
    <message>
        <source>The season&apos;s heat stands here once a block is planted.</source>
        <translation>El calor de la temporada aparece aquí en cuanto haya un cuadro plantado.</translation>
    </message>
    <message>
        <source>Each planting&apos;s stages are dated from the weather; add a block first.</source>
        <translation>Las etapas de cada plantación se fechan según el clima; primero agregue un cuadro.</translation>
    </message>
    <message>
        <source>Weather</source>
        <translation>Clima</translation>
    </message>
    <message>
        <source>Save the chart as PDF</source>
        <translation>Guardar el gráfico como PDF</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
</context>
</TS>
