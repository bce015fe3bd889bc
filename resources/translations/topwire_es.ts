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
    <message>
        <source>&quot;%1&quot; is no season, written as the year it begins in: 2027</source>
        <translation>&quot;%1&quot; no es una temporada, escrita con el año en que empieza: 2027</translation>
    </message>
    <message>
        <source>&quot;%1&quot; was not written. Choose a folder that can be written to and has room.</source>
        <translation>&quot;%1&quot; no se escribió. Escoja una carpeta donde se pueda escribir y haya lugar.</translation>
    </message>
    <message>
        <source>There is no programme &quot;%1&quot;; see its id in its file.</source>
        <translation>No hay programa &quot;%1&quot;; vea su clave en su archivo.</translation>
    </message>
    <message>
        <source>%1: drawings written: %2.</source>
        <translation>%1: dibujos escritos: %2.</translation>
    </message>
    <message>
        <source>There is no programme &quot;%1&quot;; `topwire-cli programmes` lists them.</source>
        <translation>No hay programa &quot;%1&quot;; `topwire-cli programmes` los lista.</translation>
    </message>
    <message>
        <source>There is no programme &quot;%1&quot;; the nearest is &quot;%2&quot;.</source>
        <translation>No hay programa &quot;%1&quot;; el más parecido es &quot;%2&quot;.</translation>
    </message>
    <message>
        <source>No planting goes by the programme %1.</source>
        <translation>Ninguna plantación sigue el programa %1.</translation>
    </message>
    <message>
        <source>Season %1: %2</source>
        <translation>Temporada %1: %2</translation>
    </message>
    <message>
        <source>%1, leaf %2: %3</source>
        <translation>%1, hoja %2: %3</translation>
    </message>
    <message>
        <source>Still to measure: %1.</source>
        <translation>Falta medir: %1.</translation>
    </message>
    <message>
        <source>  %1: %2 (%3)</source>
        <translation>  %1: %2 (%3)</translation>
    </message>
    <message>
        <source>  %1: %2, %4 visits, rows %3</source>
        <translation>  %1: %2, %4 visitas, hileras %3</translation>
    </message>
    <message>
        <source>  %1: %2, rows %3</source>
        <translation>  %1: %2, hileras %3</translation>
    </message>
    <message>
        <source>There is no measure &quot;%1&quot;; `topwire-cli measure --help` lists them.</source>
        <translation>No hay medida &quot;%1&quot;; `topwire-cli measure --help` las lista.</translation>
    </message>
    <message>
        <source>There is no measure &quot;%1&quot;; the nearest is &quot;%2&quot;.</source>
        <translation>No hay medida &quot;%1&quot;; la más parecida es &quot;%2&quot;.</translation>
    </message>
    <message>
        <source>On %1 nothing of that is on record.</source>
        <translation>El %1 no hay nada de eso anotado.</translation>
    </message>
    <message>
        <source>There is no crew &quot;%1&quot;.</source>
        <translation>No hay ninguna cuadrilla «%1».</translation>
    </message>
    <message>
        <source>There is no crew &quot;%1&quot;; the nearest is &quot;%2&quot;.</source>
        <translation>No hay ninguna cuadrilla «%1»; la más parecida es «%2».</translation>
    </message>
    <message>
        <source>This task has no pin.</source>
        <translation>Este trabajo no está fijado.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no day and time; write them like 2027-04-09 06:00.</source>
        <translation>«%1» no es un día con hora; escríbalo como 2027-04-09 06:00.</translation>
    </message>
    <message>
        <source>This block is not closed on %1 or later.</source>
        <translation>Este cuadro no está cerrado el %1 ni después.</translation>
    </message>
</context>
<context>
    <name>Crew plan</name>
    <message>
        <source>No crew is noted as able to do &quot;%1&quot; work, so %2 is in no plan; give a crew that skill.</source>
        <translation>Ninguna cuadrilla consta como capaz de hacer trabajo de «%1», así que %2 no está en ningún plan; dé esa destreza a una cuadrilla.</translation>
    </message>
    <message>
        <source>%1 in %2 has ticks on rows that are not its own (%3); they are not counted.</source>
        <translation>%1 en %2 tiene marcas en hileras que no son suyas (%3); no se cuentan.</translation>
    </message>
    <message>
        <source>%1 in %2 was of use until %3 and is not planned any more; set it aside with a reason, or tick what was done.</source>
        <translation>%1 en %2 servía hasta el %3 y ya no se planea; apártela con un motivo, o marque lo que se hizo.</translation>
    </message>
    <message>
        <source>%1 is pinned to work on %2 that is done, over or not open; take the pin out.</source>
        <translation>%1 está fijada el %2 a un trabajo hecho, vencido o no abierto; quite la fijación.</translation>
    </message>
    <message>
        <source>%1 is pinned on %2 to work that is not open then; take the pin out or move it.</source>
        <translation>%1 está fijada el %2 a un trabajo que entonces no está abierto; quite la fijación o muévala.</translation>
    </message>
    <message>
        <source>%1 is pinned on %2 but has nobody there that day, or not the skill; take the pin out.</source>
        <translation>%1 está fijada el %2 pero ese día no tiene a nadie, o no tiene la destreza; quite la fijación.</translation>
    </message>
    <message>
        <source>There are no crews yet; add one under Settings.</source>
        <translation>Aún no hay cuadrillas; agregue una en Ajustes.</translation>
    </message>
    <message>
        <source>It closed on %1; each further day costs %2 hours for every hour of it.</source>
        <translation>Cerró el %1; cada día más cuesta %2 horas por cada hora de este trabajo.</translation>
    </message>
    <message>
        <source>It closes on %1; this is its last working day.</source>
        <translation>Cierra el %1; este es su último día de trabajo.</translation>
    </message>
    <message>
        <source>It closes on %1; with this one it has %2 working days.</source>
        <translation>Cierra el %1; con este le quedan %2 días de trabajo.</translation>
    </message>
    <message>
        <source>There are hands for it on this day.</source>
        <translation>Este día hay manos para hacerlo.</translation>
    </message>
    <message>
        <source>An hour is worth %1 on this day; it gets cheaper on %2, but not all of it can wait until then.</source>
        <translation>Una hora vale %1 este día; el %2 sale más barata, pero no todo puede esperar hasta entonces.</translation>
    </message>
    <message>
        <source>No later day before its closing is cheaper: an hour is worth %1 on this day.</source>
        <translation>Ningún día posterior antes de su cierre sale más barato: una hora vale %1 este día.</translation>
    </message>
    <message>
        <source>No hands are left for it before it is over, on %1.</source>
        <translation>No quedan manos para hacerlo antes de que venza, el %1.</translation>
    </message>
    <message>
        <source>Planned for %1; it can wait, for it closes on %2.</source>
        <translation>Planeado para el %1; puede esperar, pues cierra el %2.</translation>
    </message>
    <message>
        <source>Planned for %1, %2 days past its closing.</source>
        <translation>Planeado para el %1, %2 días después de su cierre.</translation>
    </message>
    <message>
        <source>The day&apos;s weather is a reason to let it wait.</source>
        <translation>El tiempo del día es motivo para dejarlo esperar.</translation>
    </message>
    <message>
        <source>Its block is closed on this day.</source>
        <translation>Su cuadro está cerrado este día.</translation>
    </message>
    <message>
        <source>It waits for %1.</source>
        <translation>Espera a %1.</translation>
    </message>
    <message>
        <source>It is pinned to this crew on this day.</source>
        <translation>Está fijado a esta cuadrilla este día.</translation>
    </message>
    <message>
        <source>The crew stands in the block already.</source>
        <translation>La cuadrilla ya está en el cuadro.</translation>
    </message>
    <message>
        <source>%1 waits for it.</source>
        <translation>%1 lo está esperando.</translation>
    </message>
    <message>
        <source>%1 of %2 turned out.</source>
        <translation>Llegaron %1 de %2.</translation>
    </message>
    <message>
        <source>%1 worker is expected.</source>
        <translation>Se espera a %1 trabajador.</translation>
    </message>
    <message>
        <source>All %1 workers are expected.</source>
        <translation>Se espera a los %1 trabajadores.</translation>
    </message>
    <message>
        <source>%1 of %2 workers are expected.</source>
        <translation>Se espera a %1 de %2 trabajadores.</translation>
    </message>
    <message>
        <source>No work on this day: %1.</source>
        <translation>Este día no se trabaja: %1.</translation>
    </message>
    <message>
        <source>No work on this day.</source>
        <translation>Este día no se trabaja.</translation>
    </message>
    <message>
        <source>%1 worker-hours, all placed.</source>
        <translation>%1 horas de trabajo, todas repartidas.</translation>
    </message>
    <message>
        <source>%1 worker-hours, %2 of them without a job.</source>
        <translation>%1 horas de trabajo, %2 de ellas sin tarea.</translation>
    </message>
    <message>
        <source>%1: %2 worker-hours will not be done while they are of use, the first by %3.</source>
        <translation>%1: %2 horas de trabajo no se harán mientras sirven, las primeras antes del %3.</translation>
    </message>
    <message>
        <source>%1: %2 worker-hours will be late, the first closing on %3.</source>
        <translation>%1: %2 horas de trabajo se harán tarde; el primer cierre es el %3.</translation>
    </message>
    <message>
        <source>There is %3 working day for it, %1.</source>
        <translation>Hay %3 día de trabajo para hacerlo, el %1.</translation>
    </message>
    <message>
        <source>The days that are too few: %1 to %2, %3 of work.</source>
        <translation>Los días que no alcanzan: del %1 al %2, %3 de trabajo.</translation>
    </message>
    <message>
        <source>%1 more worker on these days would save all of it.</source>
        <translation>%1 trabajador más en estos días lo salvaría todo.</translation>
    </message>
    <message>
        <source>%1 more workers on these days would save all of it.</source>
        <translation>%1 trabajadores más en estos días lo salvarían todo.</translation>
    </message>
    <message>
        <source>%1 more worker on these days would save all but %2 hours.</source>
        <translation>%1 trabajador más en estos días salvaría todo menos %2 horas.</translation>
    </message>
    <message>
        <source>%1 more workers on these days would save all but %2 hours.</source>
        <translation>%1 trabajadores más en estos días salvarían todo menos %2 horas.</translation>
    </message>
    <message>
        <source>No hiring saves %1 hours: the window is too short for as many as the block holds. Begin earlier, or let more people in.</source>
        <translation>Contratar no salva %1 horas: el plazo es demasiado corto para cuantos caben en el cuadro. Empiece antes, o deje entrar a más gente.</translation>
    </message>
    <message>
        <source>%1: keep out until %3 on %2.</source>
        <translation>%1: no entrar hasta las %3 del %2.</translation>
    </message>
    <message>
        <source>%1: keep out until %3 on %2, %4.</source>
        <translation>%1: no entrar hasta las %3 del %2, %4.</translation>
    </message>
    <message>
        <source>%1 hours short by %2.</source>
        <translation>Faltan %1 horas para el %2.</translation>
    </message>
    <message>
        <source>%1 hours late after %2.</source>
        <translation>%1 horas tarde después del %2.</translation>
    </message>
    <message>
        <source>Nothing is lost: every window can be met.</source>
        <translation>No se pierde nada: todos los plazos se pueden cumplir.</translation>
    </message>
    <message>
        <source>Lateness costs what %1 hours of work would. No plan can do with less than %2; of the difference, %3 goes with moves between blocks.</source>
        <translation>El retraso cuesta lo que %1 horas de trabajo. Ningún plan baja de %2; de la diferencia, %3 se va en traslados entre cuadros.</translation>
    </message>
    <message>
        <source>%1: no work.</source>
        <translation>%1: no se trabaja.</translation>
    </message>
    <message>
        <source>%1: time in hand.</source>
        <translation>%1: sobra tiempo.</translation>
    </message>
    <message>
        <source>%1: one more worker-hour saves what %2 hours would cost.</source>
        <translation>%1: una hora de trabajo más ahorra lo que costarían %2 horas.</translation>
    </message>
    <message>
        <source>Waits: %1, %2 hours.</source>
        <translation>Espera: %1, %2 horas.</translation>
    </message>
    <message>
        <source>%1: not done in time in %2 of the last %3 years&apos; weather.</source>
        <translation>%1: no se hace a tiempo con el clima de %2 de los últimos %3 años.</translation>
    </message>
    <message>
        <source>It is in no plan: done, over, or not open yet.</source>
        <translation>No está en ningún plan: hecho, vencido o aún no abierto.</translation>
    </message>
    <message>
        <source>Lateness costs what %1 hours of work would. No plan can do with less than %2.</source>
        <translation>El retraso cuesta lo que %1 horas de trabajo. Ningún plan baja de %2.</translation>
    </message>
    <message>
        <source>%1 minutes short by %2.</source>
        <translation>Faltan %1 minutos para el %2.</translation>
    </message>
    <message>
        <source>%1 minutes late after %2.</source>
        <translation>%1 minutos con retraso después del %2.</translation>
    </message>
    <message>
        <source>Planned for %1, %2 day past its closing.</source>
        <translation>Planeado para el %1, %2 día después de su cierre.</translation>
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
    <message>
        <source>Season %1 closed</source>
        <translation>Temporada %1 cerrada</translation>
    </message>
    <message>
        <source>Season %1 was closed on %2 already.</source>
        <translation>La temporada %1 ya se cerró el %2.</translation>
    </message>
    <message>
        <source>Season %1 can be closed from %2 on; until then its work goes on.</source>
        <translation>La temporada %1 se puede cerrar desde el %2; hasta entonces su trabajo sigue.</translation>
    </message>
    <message>
        <source>Season %1 was over before the records began on %2, so there is nothing to close.</source>
        <translation>La temporada %1 terminó antes de que empezaran los registros el %2; no hay nada que cerrar.</translation>
    </message>
    <message>
        <source>Fruit to keep on a tree lies between 0 and %1.</source>
        <translation>La fruta que se deja en un árbol va de 0 a %1.</translation>
    </message>
    <message>
        <source>%1 fruit at least and %2 at most; swap them.</source>
        <translation>%1 frutos como mínimo y %2 como máximo; cámbielos de lugar.</translation>
    </message>
    <message>
        <source>%1 trees can&apos;t be missing of %2; check the count.</source>
        <translation>No pueden faltar %1 árboles de %2; revise la cuenta.</translation>
    </message>
    <message>
        <source>Replants stand in the planting&apos;s own rows: %1.</source>
        <translation>Los replantes van en las hileras de la misma plantación: %1.</translation>
    </message>
    <message>
        <source>Replants for season %1 are planted between %2 and %3; choose another day.</source>
        <translation>Los replantes para la temporada %1 se plantan entre el %2 y el %3; escoja otro día.</translation>
    </message>
    <message>
        <source>A programme&apos;s id has small letters a to z, digits and hyphens only, such as my-spindle.</source>
        <translation>La clave de un programa sólo lleva letras minúsculas de la a a la z, números y guiones, como mi-eje.</translation>
    </message>
    <message>
        <source>%1 is the id of a programme that came with Topwire; choose another.</source>
        <translation>%1 es la clave de un programa que vino con Topwire; escoja otra.</translation>
    </message>
    <message>
        <source>There is a programme %1 already; choose another id.</source>
        <translation>Ya hay un programa %1; escoja otra clave.</translation>
    </message>
    <message>
        <source>That programme is no longer in the orchard.</source>
        <translation>Ese programa ya no está en la huerta.</translation>
    </message>
    <message>
        <source>Programme %1 added</source>
        <translation>Programa %1 agregado</translation>
    </message>
    <message>
        <source>The text names itself %1, and this programme is %2; its id can&apos;t change, since ticks hang on it.</source>
        <translation>El texto dice ser %1 y este programa es %2; la clave no puede cambiar, porque las marcas dependen de ella.</translation>
    </message>
    <message>
        <source>Programme %1 changed</source>
        <translation>Programa %1 cambiado</translation>
    </message>
    <message>
        <source>%1 is used by %2; choose another programme for them first.</source>
        <translation>%1 lo usan %2; primero escoja otro programa para ellas.</translation>
    </message>
    <message>
        <source>Programme %1 removed</source>
        <translation>Programa %1 quitado</translation>
    </message>
    <message>
        <source>Programme %1 brought in</source>
        <translation>Programa %1 traído de un archivo</translation>
    </message>
    <message>
        <source>There is no programme %1 here; choose another.</source>
        <translation>Aquí no hay programa %1; escoja otro.</translation>
    </message>
    <message>
        <source>%1 goes by the programme %2 now</source>
        <translation>%1 sigue ahora el programa %2</translation>
    </message>
    <message>
        <source>No value is typed; type one for each sample tree.</source>
        <translation>No hay ningún valor; escriba uno por cada árbol de muestra.</translation>
    </message>
    <message>
        <source>That is more than %1 values; type them in parts.</source>
        <translation>Son más de %1 valores; escríbalos por partes.</translation>
    </message>
    <message>
        <source>Missing trees are counted over the whole planting; type one number.</source>
        <translation>Los árboles faltantes se cuentan en toda la plantación; escriba un solo número.</translation>
    </message>
    <message>
        <source>%2 is not likely for %1, which lies between %3 and %4; check it and its unit.</source>
        <translation>%2 no es probable para %1, que va de %3 a %4; revise el número y la unidad.</translation>
    </message>
    <message>
        <source>The planting has %1 trees, and more are missing; check it.</source>
        <translation>La plantación tiene %1 árboles y faltan más que eso; revíselo.</translation>
    </message>
    <message>
        <source>On %2 these trees, planted on %1, would be older than any such planting; check the day.</source>
        <translation>El %2 estos árboles, plantados el %1, serían más viejos que cualquier plantación así; revise el día.</translation>
    </message>
    <message>
        <source>For %2 there is %1 on record already; remove that first, and type all trees of the day together.</source>
        <translation>Del %2 ya hay %1 anotado; quítelo primero y escriba juntos todos los árboles del día.</translation>
    </message>
    <message>
        <source>Fruit to keep is a range; give its lower and its upper end.</source>
        <translation>La fruta que se deja es un rango; dé el mínimo y el máximo.</translation>
    </message>
    <message>
        <source>Fruit to keep lies between 0 and %1 a tree; check it.</source>
        <translation>La fruta que se deja va de 0 a %1 por árbol; revísela.</translation>
    </message>
    <message>
        <source>The range runs from %1 down to %2; swap the two.</source>
        <translation>El rango va de %1 hacia abajo a %2; cámbielos de lugar.</translation>
    </message>
    <message>
        <source>Say why the class is set by hand, for whoever looks next.</source>
        <translation>Diga por qué fija la clase a mano, para quien lo vea después.</translation>
    </message>
    <message>
        <source>In season %1 these trees are not standing; choose one from %2 on.</source>
        <translation>En la temporada %1 estos árboles no están plantados; escoja una desde %2.</translation>
    </message>
    <message>
        <source>Measured in %3 on %2: %1</source>
        <translation>Medido en %3 el %2: %1</translation>
    </message>
    <message>
        <source>That measurement is no longer there.</source>
        <translation>Esa medición ya no está.</translation>
    </message>
    <message>
        <source>Measurement of %2 removed in %3: %1</source>
        <translation>Medición del %2 quitada en %3: %1</translation>
    </message>
    <message>
        <source>Targets of season %1 taken away in %2</source>
        <translation>Metas de la temporada %1 quitadas en %2</translation>
    </message>
    <message>
        <source>Targets of season %1 settled in %2</source>
        <translation>Metas de la temporada %1 fijadas en %2</translation>
    </message>
    <message>
        <source>%1 lies outside the years 1900 to 2200; check the day.</source>
        <translation>%1 queda fuera de los años 1900 a 2200; revise el día.</translation>
    </message>
    <message>
        <source>Work is done on one day of the week at least; choose it.</source>
        <translation>Se trabaja al menos un día de la semana; elíjalo.</translation>
    </message>
    <message>
        <source>Work begins between 00:00 and 23:59.</source>
        <translation>El trabajo empieza entre las 00:00 y las 23:59.</translation>
    </message>
    <message>
        <source>Going to another block takes %1 to %2 minutes; check it.</source>
        <translation>Ir a otro cuadro toma de %1 a %2 minutos; revíselo.</translation>
    </message>
    <message>
        <source>A kilometre takes %1 to %2 minutes; check it.</source>
        <translation>Un kilómetro toma de %1 a %2 minutos; revíselo.</translation>
    </message>
    <message>
        <source>How much crews are kept together is %1 to %2 percent.</source>
        <translation>Cuánto se mantienen juntas las cuadrillas va de %1 a %2 por ciento.</translation>
    </message>
    <message>
        <source>People who move together are %1 to %2; check it.</source>
        <translation>La gente que se mueve junta es de %1 a %2; revíselo.</translation>
    </message>
    <message>
        <source>A place on the map takes latitude and longitude; give both or neither.</source>
        <translation>Un lugar en el mapa lleva latitud y longitud; dé las dos o ninguna.</translation>
    </message>
    <message>
        <source>A block lies within one degree of the orchard&apos;s latitude, %1; check it, and its sign.</source>
        <translation>Un cuadro queda a menos de un grado de la latitud del huerto, %1; revísela, y su signo.</translation>
    </message>
    <message>
        <source>A longitude lies between -180 and 180 degrees; west of Greenwich is negative.</source>
        <translation>Una longitud va de -180 a 180 grados; al oeste de Greenwich es negativa.</translation>
    </message>
    <message>
        <source>Between %1 and %2 people can work in a block at a time.</source>
        <translation>En un cuadro pueden trabajar de %1 a %2 personas a la vez.</translation>
    </message>
    <message>
        <source>That crew is no longer in the orchard.</source>
        <translation>Esa cuadrilla ya no está en el huerto.</translation>
    </message>
    <message>
        <source>%1 people are named, and the crew has %2 workers; correct one of the two.</source>
        <translation>Se nombran %1 personas y la cuadrilla tiene %2 trabajadores; corrija uno de los dos.</translation>
    </message>
    <message>
        <source>Hours kept for young trees lie between none and the crew&apos;s %1 worker-hours of a day.</source>
        <translation>Las horas reservadas para árboles jóvenes van de ninguna a las %1 horas de trabajo de la cuadrilla en un día.</translation>
    </message>
    <message>
        <source>Write one name between commas; %1 holds a comma itself.</source>
        <translation>Escriba un nombre entre comas; %1 contiene una coma.</translation>
    </message>
    <message>
        <source>%1 is named twice; name it once.</source>
        <translation>%1 se nombra dos veces; nómbrelo una.</translation>
    </message>
    <message>
        <source>The days off run from %1 back to %2; swap the two.</source>
        <translation>Los días libres van del %1 hacia atrás al %2; intercámbielos.</translation>
    </message>
    <message>
        <source>Crew %1 changed</source>
        <translation>Cuadrilla %1 cambiada</translation>
    </message>
    <message>
        <source>Crew %1 deleted</source>
        <translation>Cuadrilla %1 eliminada</translation>
    </message>
    <message>
        <source>How much of a day can be worked lies between 0 and 100 percent.</source>
        <translation>Lo que se puede trabajar de un día va de 0 a 100 por ciento.</translation>
    </message>
    <message>
        <source>%1: %2 % of the usual hours can be worked</source>
        <translation>%1: se puede trabajar el %2 % de las horas de costumbre</translation>
    </message>
    <message>
        <source>Nothing is said of %1; it is worked as its weekday is.</source>
        <translation>Nada se ha dicho del %1; se trabaja como ese día de la semana.</translation>
    </message>
    <message>
        <source>%1: worked as its weekday is again</source>
        <translation>%1: se trabaja otra vez como ese día de la semana</translation>
    </message>
    <message>
        <source>Between 0 and %1 workers can turn out; check the number.</source>
        <translation>Pueden llegar de 0 a %1 trabajadores; revise el número.</translation>
    </message>
    <message>
        <source>%1: %2 of %3 turned out on %4</source>
        <translation>%1: llegaron %2 de %3 el %4</translation>
    </message>
    <message>
        <source>No work is done on %1 (%2); choose another day, or say that it is worked.</source>
        <translation>El %1 no se trabaja (%2); elija otro día, o indique que se trabaja.</translation>
    </message>
    <message>
        <source>No work is done on %1; choose another day, or say that it is worked.</source>
        <translation>El %1 no se trabaja; elija otro día, o indique que se trabaja.</translation>
    </message>
    <message>
        <source>%1 is off on %2; choose another crew or day.</source>
        <translation>%1 está libre el %2; elija otra cuadrilla u otro día.</translation>
    </message>
    <message>
        <source>Nobody of %1 turned out on %2; choose another crew.</source>
        <translation>De %1 no llegó nadie el %2; elija otra cuadrilla.</translation>
    </message>
    <message>
        <source>The work asks for %2, which %1 is not down for; choose another crew, or add the skill to this one.</source>
        <translation>El trabajo pide %2, y %1 no lo tiene; elija otra cuadrilla, o agregue esa destreza a esta.</translation>
    </message>
    <message>
        <source>%1 is closed until %3 on %2; choose a later day.</source>
        <translation>%1 está cerrado hasta las %3 del %2; elija un día posterior.</translation>
    </message>
    <message>
        <source>The crew is pinned to this work on %1 already.</source>
        <translation>La cuadrilla ya está fijada a este trabajo el %1.</translation>
    </message>
    <message>
        <source>This work is not to be begun before %1; choose a later day, or take that pin away.</source>
        <translation>Este trabajo no debe empezar antes del %1; elija un día posterior, o quite esa fijación.</translation>
    </message>
    <message>
        <source>A crew is pinned to this work on %1, before %2; take that pin away, or choose an earlier day.</source>
        <translation>Una cuadrilla está fijada a este trabajo el %1, antes del %2; quite esa fijación, o elija un día anterior.</translation>
    </message>
    <message>
        <source>Choose a crew for this work.</source>
        <translation>Elija una cuadrilla para este trabajo.</translation>
    </message>
    <message>
        <source>Work in %1 not before %2</source>
        <translation>Trabajo en %1 no antes del %2</translation>
    </message>
    <message>
        <source>%3 pinned to work in %1 on %2</source>
        <translation>%3 fijada a un trabajo en %1 el %2</translation>
    </message>
    <message>
        <source>The block is closed from %1 back to %2; swap the two.</source>
        <translation>El cuadro se cierra del %1 hacia atrás al %2; intercámbielos.</translation>
    </message>
    <message>
        <source>A block is closed for a year at most; check the days.</source>
        <translation>Un cuadro se cierra un año como máximo; revise los días.</translation>
    </message>
    <message>
        <source>A time of day lies between 00:00 and 24:00.</source>
        <translation>Una hora del día va de 00:00 a 24:00.</translation>
    </message>
    <message>
        <source>The block would open as soon as it is closed; give a later hour or day.</source>
        <translation>El cuadro se abriría en cuanto se cierra; dé una hora o un día posterior.</translation>
    </message>
    <message>
        <source>A job of %2 stands in the plan of %1; plan again.</source>
        <translation>En el plan del %1 hay un trabajo del %2; planee de nuevo.</translation>
    </message>
    <message>
        <source>The rows %1 are not all in %2; plan again.</source>
        <translation>No todas las hileras %1 están en %2; planee de nuevo.</translation>
    </message>
    <message>
        <source>A job of the plan has no start, workers or hours that can be; plan again.</source>
        <translation>Un trabajo del plan no tiene inicio, trabajadores u horas posibles; planee de nuevo.</translation>
    </message>
    <message>
        <source>Two jobs of the plan stand in one place; plan again.</source>
        <translation>Dos trabajos del plan ocupan un mismo lugar; planee de nuevo.</translation>
    </message>
    <message>
        <source>That pin is no longer there.</source>
        <translation>Esa fijación ya no existe.</translation>
    </message>
    <message>
        <source>Pin of work in %1 on %2 taken away</source>
        <translation>Fijación del trabajo en %1 el %2 quitada</translation>
    </message>
    <message>
        <source>%1 closed until %3 on %2</source>
        <translation>%1 cerrado hasta las %3 del %2</translation>
    </message>
    <message>
        <source>That closing is no longer there.</source>
        <translation>Ese cierre ya no existe.</translation>
    </message>
    <message>
        <source>%1 opened again</source>
        <translation>%1 abierto de nuevo</translation>
    </message>
    <message>
        <source>The plan of %1 has no job, so there is none to accept.</source>
        <translation>El plan del %1 no tiene trabajos, así que no hay nada que aceptar.</translation>
    </message>
    <message>
        <source>Plan of %1 accepted: %2 job</source>
        <translation>Plan del %1 aceptado: %2 trabajo</translation>
    </message>
    <message>
        <source>Plan of %1 accepted: %2 jobs</source>
        <translation>Plan del %1 aceptado: %2 trabajos</translation>
    </message>
    <message>
        <source>No work is named to note hours for.</source>
        <translation>No se nombra ningún trabajo para anotar horas.</translation>
    </message>
    <message>
        <source>Rows %1 of this work are noted twice; note them once.</source>
        <translation>Las hileras %1 de este trabajo se anotan dos veces; anótelas una.</translation>
    </message>
    <message>
        <source>Hours of %1 noted: %2 job</source>
        <translation>Horas del %1 anotadas: %2 trabajo</translation>
    </message>
    <message>
        <source>Hours of %1 noted: %2 jobs</source>
        <translation>Horas del %1 anotadas: %2 trabajos</translation>
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
    <name>EffectPanel</name>
    <message>
        <source>%1 day</source>
        <translation>%1 día</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 días</translation>
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
    <message>
        <source>%1 could not be written; choose another folder.</source>
        <translation>%1 no se pudo escribir; escoja otra carpeta.</translation>
    </message>
    <message>
        <source>%1 can&apos;t be read as a programme; look at its name and size.</source>
        <translation>%1 no se puede leer como programa; vea su nombre y tamaño.</translation>
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
    <message>
        <source>%1 names no leaves; write 2, 1-3 or 4+.</source>
        <translation>%1 no dice hojas; escriba 2, 1-3 o 4+.</translation>
    </message>
    <message>
        <source>Sheets are printed in English and in Spanish, so fill in both or neither.</source>
        <translation>Las hojas se imprimen en inglés y en español; llene los dos o ninguno.</translation>
    </message>
    <message>
        <source>One language names more tools than the other; name each in both.</source>
        <translation>Un idioma nombra más herramientas que el otro; nombre cada una en los dos.</translation>
    </message>
    <message>
        <source>%1 is no count of days; write 14, or three of them: 28, 21, 14.</source>
        <translation>%1 no es un número de días; escriba 14, o tres: 28, 21, 14.</translation>
    </message>
    <message>
        <source>%1 is no count of seconds; write 24, or 1: 24, 3: 30.</source>
        <translation>%1 no es un número de segundos; escriba 24, o 1: 24, 3: 30.</translation>
    </message>
    <message>
        <source>Write a whole number here, such as 20.</source>
        <translation>Escriba aquí un número entero, como 20.</translation>
    </message>
    <message>
        <source>Write a time of day here, such as 06:30.</source>
        <translation>Escriba aquí una hora del día, como 06:30.</translation>
    </message>
    <message>
        <source>%1 is no day. Write 2027-05-03, or 2027-07-05 – 2027-07-17 for a span.</source>
        <translation>%1 no es un día. Escriba 2027-05-03, o 2027-07-05 – 2027-07-17 para varios seguidos.</translation>
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
    <name>Labour</name>
    <message>
        <source>%1 job will not be finished while it is of use.</source>
        <translation>%1 trabajo no se terminará mientras sirve.</translation>
    </message>
    <message>
        <source>%1 jobs will not be finished while they are of use.</source>
        <translation>%1 trabajos no se terminarán mientras sirven.</translation>
    </message>
    <message>
        <source>%1 job will be late.</source>
        <translation>%1 trabajo se hará tarde.</translation>
    </message>
    <message>
        <source>%1 jobs will be late.</source>
        <translation>%1 trabajos se harán tarde.</translation>
    </message>
    <message>
        <source>%1 job may be late.</source>
        <translation>%1 trabajo quizá se haga tarde.</translation>
    </message>
    <message>
        <source>%1 jobs may be late.</source>
        <translation>%1 trabajos quizá se hagan tarde.</translation>
    </message>
    <message>
        <source>No job begins in this time.</source>
        <translation>Ningún trabajo comienza en este tiempo.</translation>
    </message>
    <message>
        <source>The one job will be done in time.</source>
        <translation>El único trabajo se hará a tiempo.</translation>
    </message>
    <message>
        <source>All %1 jobs will be done in time.</source>
        <translation>Los %1 trabajos se harán a tiempo.</translation>
    </message>
    <message>
        <source>%1 h</source>
        <translation>%1 h</translation>
    </message>
    <message>
        <source>%1 of work and %2 of hands in %3 weeks.</source>
        <translation>%1 de trabajo y %2 de gente en %3 semanas.</translation>
    </message>
    <message>
        <source>Every window can be met.</source>
        <translation>Todos los plazos se pueden cumplir.</translation>
    </message>
    <message>
        <source>Hands are shortest in the week of %1: %2 go past their closing.</source>
        <translation>Más falta la gente en la semana del %1: %2 pasan de su cierre.</translation>
    </message>
    <message>
        <source>%1 are not done while they are of use.</source>
        <translation>%1 quedan sin hacer mientras sirven.</translation>
    </message>
    <message>
        <source>none of it</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>%1 of it undone</source>
        <translation>%1 sin hacer</translation>
    </message>
    <message>
        <source>of use to %1</source>
        <translation>sirve hasta el %1</translation>
    </message>
    <message>
        <source>%1 day late</source>
        <translation>%1 día tarde</translation>
    </message>
    <message>
        <source>%1 days late</source>
        <translation>%1 días tarde</translation>
    </message>
    <message>
        <source>may be late</source>
        <translation>quizá tarde</translation>
    </message>
    <message>
        <source>in time</source>
        <translation>a tiempo</translation>
    </message>
    <message>
        <source>goes on after this</source>
        <translation>sigue después</translation>
    </message>
    <message>
        <source>%1: %2, done %3; window closes %4; %5.</source>
        <translation>%1: %2, hecho %3; el plazo cierra el %4; %5.</translation>
    </message>
    <message>
        <source>%1: %2, %3; window closes %4; %5.</source>
        <translation>%1: %2, %3; el plazo cierra el %4; %5.</translation>
    </message>
    <message>
        <source>%1 and older</source>
        <translation>%1 y mayores</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>%1 s</source>
        <translation>%1 s</translation>
    </message>
    <message>
        <source>no crew noted</source>
        <translation>sin cuadrilla anotada</translation>
    </message>
    <message>
        <source>%1, %2: %3 a tree in the programme; nothing learned yet.</source>
        <translation>%1, %2: %3 por árbol en el programa; aún no se ha aprendido nada.</translation>
    </message>
    <message>
        <source>%1, %2: %3 a tree in the programme, %4 learned from %5. %6.</source>
        <translation>%1, %2: %3 por árbol en el programa, %4 aprendidos de %5. %6.</translation>
    </message>
    <message>
        <source>No planting has work counted by the tree yet.</source>
        <translation>Ninguna plantación tiene aún trabajo que se cuente por árbol.</translation>
    </message>
    <message>
        <source>Nothing is learned yet: the plan goes by the programme&apos;s figures. Tick rows with the hours they took, and your crews&apos; own pace stands here.</source>
        <translation>Aún no se ha aprendido nada: el plan sigue las cifras del programa. Marque hileras con las horas que llevaron, y aquí estará el ritmo de sus cuadrillas.</translation>
    </message>
    <message>
        <source>%1 of %2 kinds of work has hours noted.</source>
        <translation>%1 de %2 clases de trabajo tiene horas anotadas.</translation>
    </message>
    <message>
        <source>%1 of %2 kinds of work have hours noted.</source>
        <translation>%1 de %2 clases de trabajo tienen horas anotadas.</translation>
    </message>
    <message>
        <source>nothing yet</source>
        <translation>aún nada</translation>
    </message>
    <message>
        <source>%1 window is missed, wholly or in part.</source>
        <translation>%1 plazo no se cumple, del todo o en parte.</translation>
    </message>
    <message>
        <source>%1 windows are missed, wholly or in part.</source>
        <translation>%1 plazos no se cumplen, del todo o en parte.</translation>
    </message>
    <message>
        <source>any leaf</source>
        <translation>cualquier hoja</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 %2, from %3</source>
        <translation>%1 %2, de %3</translation>
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
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
</context>
<context>
    <name>Material</name>
    <message>
        <source>Trees or row length of %1 are not said, so not all of its material is counted.</source>
        <translation>No se dicen los árboles o el largo de hilera de %1, así que no se cuenta todo su material.</translation>
    </message>
    <message>
        <source>%1 kg</source>
        <translation>%1 kg</translation>
    </message>
    <message>
        <source>%1 lb</source>
        <translation>%1 lb</translation>
    </message>
    <message>
        <source>%1 L</source>
        <translation>%1 L</translation>
    </message>
    <message>
        <source>%1 gal</source>
        <translation>%1 gal</translation>
    </message>
    <message>
        <source>%1 m</source>
        <translation>%1 m</translation>
    </message>
    <message>
        <source>%1 ft</source>
        <translation>%1 pies</translation>
    </message>
    <message>
        <source>%1</source>
        <translation>%1</translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>Nothing is to be picked up.</source>
        <translation>No hay nada que recoger.</translation>
    </message>
    <message>
        <source>To pick up: %1</source>
        <translation>Para recoger: %1</translation>
    </message>
    <message>
        <source>Item</source>
        <translation>Artículo</translation>
    </message>
    <message>
        <source>Needed</source>
        <translation>Se necesita</translation>
    </message>
    <message>
        <source>Buy</source>
        <translation>Comprar</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Para</translation>
    </message>
    <message>
        <source>Made on %1. Pack sizes are for planning.</source>
        <translation>Hecho el %1. Los empaques son para planear.</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Página %1 de %2</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>Week %1: %2</source>
        <translation>Semana %1: %2</translation>
    </message>
    <message>
        <source>Season %1</source>
        <translation>Temporada %1</translation>
    </message>
    <message>
        <source>%1, to the end of the first leaf</source>
        <translation>%1, hasta el final de la primera hoja</translation>
    </message>
</context>
<context>
    <name>Measure</name>
    <message>
        <source>&quot;%1&quot; can&apos;t be read as lengths; type them like 38 36 41 mm, or like 1 1/2, 1 5/8 in.</source>
        <translation>&quot;%1&quot; no se puede leer como medidas; escríbalas como 38 36 41 mm, o como 1 1/2, 1 5/8 in.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; can&apos;t be read as whole numbers; type them like 28 31 25.</source>
        <translation>&quot;%1&quot; no se puede leer como números enteros; escríbalos como 28 31 25.</translation>
    </message>
</context>
<context>
    <name>MeasureChart</name>
    <message>
        <source>leaf %1</source>
        <translation>hoja %1</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>medido</translation>
    </message>
    <message>
        <source>wanted</source>
        <translation>meta</translation>
    </message>
    <message>
        <source>wanted span</source>
        <translation>rango de la meta</translation>
    </message>
    <message>
        <source>No %1 measured yet.</source>
        <translation>Todavía no se ha medido: %1.</translation>
    </message>
    <message>
        <source>Measured once: %2 %3 on %4.</source>
        <translation>Medido una vez: %2 %3 el %4.</translation>
    </message>
    <message>
        <source>Measured %1 times: %2, last %3 on %4.</source>
        <translation>Medido %1 veces: %2, la última %3 el %4.</translation>
    </message>
</context>
<context>
    <name>MeasurementsPanel</name>
    <message>
        <source>One number for the whole planting</source>
        <translation>Un solo número para toda la plantación</translation>
    </message>
    <message>
        <source>One a tree, such as 28 31 25</source>
        <translation>Uno por árbol, como 28 31 25</translation>
    </message>
    <message>
        <source>One a tree, in %1 unless you type the unit</source>
        <translation>Uno por árbol, en %1 si no escribe la unidad</translation>
    </message>
    <message>
        <source>One a tree, in %1 unless you type the unit; 1 5/8 will do</source>
        <translation>Uno por árbol, en %1 si no escribe la unidad; vale 1 5/8</translation>
    </message>
    <message>
        <source>%1 tree, %2</source>
        <translation>%1 árbol, %2</translation>
    </message>
    <message>
        <source>%1 trees, mean %2</source>
        <translation>%1 árboles, promedio %2</translation>
    </message>
    <message>
        <source>%1 is still to come.</source>
        <translation>El %1 todavía no llega.</translation>
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
    <message>
        <source>&quot;%1&quot; has &quot;%2&quot; where days belong; write &quot;2027-05-03&quot; or &quot;2027-05-03 to 2027-05-09&quot;.</source>
        <translation>«%1» tiene «%2» donde van días; escriba «2027-05-03» o «2027-05-03 to 2027-05-09».</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has &quot;%2&quot;, which is no day of the week; write &quot;monday&quot;, &quot;tuesday&quot; and so on.</source>
        <translation>«%1» tiene «%2», que no es un día de la semana; escriba «monday», «tuesday», etc.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is &quot;%2&quot;; write a time of day like &quot;06:30&quot;.</source>
        <translation>«%1» es «%2»; escriba una hora como «06:30».</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is &quot;%2&quot;, and nothing in this file is called so.</source>
        <translation>«%1» es «%2», y nada en este archivo se llama así.</translation>
    </message>
    <message>
        <source>Nothing above is called &quot;%2&quot;; the nearest is &quot;%3&quot;.</source>
        <translation>Nada de lo anterior se llama «%2»; lo más cercano es «%3».</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is &quot;%2&quot;; write a day and a time like &quot;2027-04-09 06:00&quot;.</source>
        <translation>«%1» es «%2»; escriba un día y una hora como «2027-04-09 06:00».</translation>
    </message>
    <message>
        <source>A pin has either &quot;crew&quot; and &quot;day&quot; or &quot;not-before&quot;; keep the one that is meant.</source>
        <translation>Una fijación lleva «crew» y «day» o bien «not-before»; deje la que corresponda.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; takes texts in square brackets, each in quotes.</source>
        <translation>«%1» lleva textos entre corchetes, cada uno entre comillas.</translation>
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
    <name>Past day</name>
    <message>
        <source>%1, %2 from %3</source>
        <translation>%1, %2 desde las %3</translation>
    </message>
    <message>
        <source>%1, hours not entered</source>
        <translation>%1, horas sin anotar</translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <translation>%1 en %2</translation>
    </message>
    <message>
        <source>done as planned</source>
        <translation>hecho según el plan</translation>
    </message>
    <message>
        <source>begun, no row whole</source>
        <translation>empezado, ninguna hilera completa</translation>
    </message>
    <message>
        <source>nothing ticked</source>
        <translation>nada marcado</translation>
    </message>
    <message>
        <source>%1 of %2 rows ticked</source>
        <translation>%1 de %2 hileras marcadas</translation>
    </message>
    <message>
        <source>No plan was accepted for this day.</source>
        <translation>Para este día no se aceptó ningún plan.</translation>
    </message>
    <message>
        <source>All %1 rows planned were ticked.</source>
        <translation>Se marcaron las %1 hileras planeadas.</translation>
    </message>
    <message>
        <source>%1 of %2 rows planned were ticked.</source>
        <translation>Se marcaron %1 de %2 hileras planeadas.</translation>
    </message>
    <message>
        <source>No hours for %1 job.</source>
        <translation>Faltan las horas de %1 trabajo.</translation>
    </message>
    <message>
        <source>No hours for %1 jobs.</source>
        <translation>Faltan las horas de %1 trabajos.</translation>
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
    <message>
        <source>%1 task moves</source>
        <translation>%1 tarea se mueve</translation>
    </message>
    <message>
        <source>%1 tasks move</source>
        <translation>%1 tareas se mueven</translation>
    </message>
    <message>
        <source>%1 task comes</source>
        <translation>%1 tarea se agrega</translation>
    </message>
    <message>
        <source>%1 tasks come</source>
        <translation>%1 tareas se agregan</translation>
    </message>
    <message>
        <source>%1 task goes</source>
        <translation>%1 tarea se va</translation>
    </message>
    <message>
        <source>%1 tasks go</source>
        <translation>%1 tareas se van</translation>
    </message>
    <message>
        <source>%1 task stays for its ticks alone</source>
        <translation>%1 tarea se queda sólo por sus marcas</translation>
    </message>
    <message>
        <source>%1 tasks stay for their ticks alone</source>
        <translation>%1 tareas se quedan sólo por sus marcas</translation>
    </message>
    <message>
        <source>%1 worker-hour more this season</source>
        <translation>%1 hora de trabajador más esta temporada</translation>
    </message>
    <message>
        <source>%1 worker-hours more this season</source>
        <translation>%1 horas de trabajador más esta temporada</translation>
    </message>
    <message>
        <source>%1 worker-hour fewer this season</source>
        <translation>%1 hora de trabajador menos esta temporada</translation>
    </message>
    <message>
        <source>%1 worker-hours fewer this season</source>
        <translation>%1 horas de trabajador menos esta temporada</translation>
    </message>
    <message>
        <source>Nothing changes in the plan</source>
        <translation>Nada cambia en el plan</translation>
    </message>
    <message>
        <source>The programme %1 of this orchard does not read and is left out: %2</source>
        <translation>El programa %1 de esta huerta no se puede leer y queda fuera: %2</translation>
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
    <message>
        <source>In %1, needs names the operation itself; name the work that has to be done before it.</source>
        <translation>En %1, needs nombra la misma operación; nombre el trabajo que va antes.</translation>
    </message>
    <message>
        <source>In %1, needs names “%2”, which no operation has as its id; name one that is there.</source>
        <translation>En %1, needs nombra “%2”, que no es la clave de ninguna operación; nombre una que exista.</translation>
    </message>
    <message>
        <source>In %1, needs names “%2”, which no operation has as its id; did you mean “%3”?</source>
        <translation>En %1, needs nombra “%2”, que no es la clave de ninguna operación; ¿quiso decir “%3”?</translation>
    </message>
    <message>
        <source>In %1, repeat.until ends the visits by what when asks for, so none would be left; change one of the two.</source>
        <translation>En %1, repeat.until termina las visitas con lo mismo que pide when, así que no quedaría ninguna; cambie uno de los dos.</translation>
    </message>
    <message>
        <source>In %1, the work waits in a circle (%2), so none of it could begin; take a name out of needs.</source>
        <translation>En %1, los trabajos se esperan en círculo (%2) y ninguno podría empezar; quite un nombre de needs.</translation>
    </message>
    <message>
        <source>In %1, %2 names no bound; add at-least or below, such as: at-least = &quot;1.5 in&quot;</source>
        <translation>En %1, %2 no pone límite; agregue at-least o below, por ejemplo: at-least = &quot;1.5 in&quot;</translation>
    </message>
    <message>
        <source>In %1, %2 has both at-least and below; write two conditions, one with each.</source>
        <translation>En %1, %2 tiene at-least y below; escriba dos condiciones, una con cada uno.</translation>
    </message>
    <message>
        <source>In %1, %2 would end the visits before the first one, since trees only grow; write at-least.</source>
        <translation>En %1, %2 terminaría las visitas antes de la primera, porque los árboles sólo crecen; escriba at-least.</translation>
    </message>
    <message>
        <source>In %1, %2 holds two conditions that no tree can meet at once; change one of them.</source>
        <translation>En %1, %2 tiene dos condiciones que ningún árbol cumple a la vez; cambie una.</translation>
    </message>
    <message>
        <source>In %1, %2 stands beside %3; a material is counted by one of them, so keep one.</source>
        <translation>En %1, %2 está junto a %3; un material se cuenta por uno solo, deje uno.</translation>
    </message>
    <message>
        <source>In %1, %2 says “%3”, which is no length with its unit; write it like &quot;15 in&quot;, &quot;10 ft&quot; or &quot;38 cm&quot;.</source>
        <translation>En %1, %2 dice “%3”, que no es una medida con su unidad; escríbala como &quot;15 in&quot;, &quot;10 ft&quot; o &quot;38 cm&quot;.</translation>
    </message>
    <message>
        <source>This can&apos;t be written into the text of %1 without touching other fields; change it in the text by hand.</source>
        <translation>Esto no se puede escribir en el texto de %1 sin tocar otros campos; cámbielo a mano en el texto.</translation>
    </message>
    <message>
        <source>There is no operation %1 in %2; choose another.</source>
        <translation>No hay operación %1 en %2; escoja otra.</translation>
    </message>
    <message>
        <source>In %1, %2 names a skill in small letters, such as pruning; leave it out where anyone can do the work.</source>
        <translation>En %1, %2 nombra una destreza en minúsculas, como pruning; déjela fuera donde cualquiera puede hacer el trabajo.</translation>
    </message>
</context>
<context>
    <name>ProgrammeWords</name>
    <message>
        <source>the planting day</source>
        <translation>la plantación</translation>
    </message>
    <message>
        <source>“%1” is done</source>
        <translation>se termina “%1”</translation>
    </message>
    <message>
        <source>%1 of the season before</source>
        <translation>%1 de la temporada anterior</translation>
    </message>
    <message>
        <source>%1 of the season after</source>
        <translation>%1 de la temporada siguiente</translation>
    </message>
    <message>
        <source>%1 week</source>
        <translation>%1 semana</translation>
    </message>
    <message>
        <source>%1 weeks</source>
        <translation>%1 semanas</translation>
    </message>
    <message>
        <source>%1 day</source>
        <translation>%1 día</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 días</translation>
    </message>
    <message>
        <source>%1 month</source>
        <translation>%1 mes</translation>
    </message>
    <message>
        <source>%1 months</source>
        <translation>%1 meses</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation>%1 y %2</translation>
    </message>
    <message>
        <source>%1, %2 months and %3 days on</source>
        <translation>%1, %2 meses y %3 días después</translation>
    </message>
    <message>
        <source>once %1</source>
        <translation>cuando %1</translation>
    </message>
    <message>
        <source>%1 after %2</source>
        <translation>%1 después de %2</translation>
    </message>
    <message>
        <source>%1 before %2</source>
        <translation>%1 antes de %2</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>the trunk&apos;s diameter</source>
        <translation>el diámetro del tronco</translation>
    </message>
    <message>
        <source>the trunk&apos;s girth</source>
        <translation>el contorno del tronco</translation>
    </message>
    <message>
        <source>the leader&apos;s height</source>
        <translation>la altura de la guía</translation>
    </message>
    <message>
        <source>the leader&apos;s growth</source>
        <translation>el crecimiento de la guía</translation>
    </message>
    <message>
        <source>the shoots&apos; growth</source>
        <translation>el crecimiento de los brotes</translation>
    </message>
    <message>
        <source>the fruit per tree</source>
        <translation>la fruta por árbol</translation>
    </message>
    <message>
        <source>the space filled</source>
        <translation>el espacio lleno</translation>
    </message>
    <message>
        <source>the missing trees</source>
        <translation>los árboles faltantes</translation>
    </message>
    <message>
        <source>the top wire</source>
        <translation>el último alambre</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>leaf %1</source>
        <translation>hoja %1</translation>
    </message>
    <message>
        <source>from leaf %1 on</source>
        <translation>desde la hoja %1</translation>
    </message>
    <message>
        <source>leaf %1 to %2</source>
        <translation>hoja %1 a %2</translation>
    </message>
    <message>
        <source>a tree</source>
        <translation>por árbol</translation>
    </message>
    <message>
        <source>a post</source>
        <translation>por poste</translation>
    </message>
    <message>
        <source>a row&apos;s end</source>
        <translation>por cabecera de hilera</translation>
    </message>
    <message>
        <source>a metre of row</source>
        <translation>por metro de hilera</translation>
    </message>
    <message>
        <source>a metre of wire</source>
        <translation>por metro de alambre</translation>
    </message>
    <message>
        <source>From %1 to %2</source>
        <translation>Desde %1 hasta %2</translation>
    </message>
    <message>
        <source>once per planting</source>
        <translation>una vez por plantación</translation>
    </message>
    <message>
        <source>on %1 trees</source>
        <translation>en árboles de vigor %1</translation>
    </message>
    <message>
        <source>only for: %1</source>
        <translation>sólo para: %1</translation>
    </message>
    <message>
        <source>every %1 days</source>
        <translation>cada %1 días</translation>
    </message>
    <message>
        <source>every %1 days on weak trees, %2 on moderate, %3 on strong</source>
        <translation>cada %1 días en árboles débiles, %2 en medios, %3 en vigorosos</translation>
    </message>
    <message>
        <source>%1; sooner after %2 of growth</source>
        <translation>%1; antes si crece %2</translation>
    </message>
    <message>
        <source>%1; until %2</source>
        <translation>%1; hasta que %2</translation>
    </message>
    <message>
        <source>%1 is at least %2</source>
        <translation>%1 es de %2 o más</translation>
    </message>
    <message>
        <source>%1 is below %2</source>
        <translation>%1 es menos de %2</translation>
    </message>
    <message>
        <source>%1 in</source>
        <translation>%1 pulg</translation>
    </message>
    <message>
        <source>%1 ft</source>
        <translation>%1 pies</translation>
    </message>
    <message>
        <source>%1 mm</source>
        <translation>%1 mm</translation>
    </message>
    <message>
        <source>%1 cm</source>
        <translation>%1 cm</translation>
    </message>
    <message>
        <source>%1 m</source>
        <translation>%1 m</translation>
    </message>
    <message>
        <source>not counted by the tree</source>
        <translation>no se cuenta por árbol</translation>
    </message>
    <message>
        <source>%1 s a tree</source>
        <translation>%1 s por árbol</translation>
    </message>
    <message>
        <source>%1 s from leaf %2 on</source>
        <translation>%1 s desde la hoja %2</translation>
    </message>
    <message>
        <source>%1 %2 %3</source>
        <translation>%1 %2 %3</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>wet</source>
        <translation>mojado</translation>
    </message>
    <message>
        <source>frost</source>
        <translation>helada</translation>
    </message>
    <message>
        <source>heat</source>
        <translation>calor</translation>
    </message>
    <message>
        <source>wind</source>
        <translation>viento</translation>
    </message>
    <message>
        <source>closed after a spray</source>
        <translation>cerrado por una aplicación</translation>
    </message>
    <message>
        <source>low</source>
        <translation>bajo</translation>
    </message>
    <message>
        <source>medium</source>
        <translation>medio</translation>
    </message>
    <message>
        <source>high</source>
        <translation>alto</translation>
    </message>
    <message>
        <source>very high</source>
        <translation>muy alto</translation>
    </message>
    <message>
        <source>Before planting</source>
        <translation>Antes de plantar</translation>
    </message>
    <message>
        <source>At planting</source>
        <translation>Al plantar</translation>
    </message>
    <message>
        <source>From the first leaf</source>
        <translation>Desde la primera hoja</translation>
    </message>
    <message>
        <source>From the second leaf</source>
        <translation>Desde la segunda hoja</translation>
    </message>
    <message>
        <source>From the third leaf</source>
        <translation>Desde la tercera hoja</translation>
    </message>
    <message>
        <source>From the fourth leaf</source>
        <translation>Desde la cuarta hoja</translation>
    </message>
    <message>
        <source>Later</source>
        <translation>Después</translation>
    </message>
    <message>
        <source>no planting goes by it</source>
        <translation>ninguna plantación lo sigue</translation>
    </message>
    <message>
        <source>%1 planting goes by it</source>
        <translation>%1 plantación lo sigue</translation>
    </message>
    <message>
        <source>%1 plantings go by it</source>
        <translation>%1 plantaciones lo siguen</translation>
    </message>
    <message>
        <source>Your own, %1</source>
        <translation>Propio, %1</translation>
    </message>
    <message>
        <source>Shipped, %1</source>
        <translation>De fábrica, %1</translation>
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
    <message>
        <source>Programmes (*.toml)</source>
        <translation>Programas (*.toml)</translation>
    </message>
    <message>
        <source>Bring in a programme</source>
        <translation>Traer un programa</translation>
    </message>
    <message>
        <source>Save the programme as a file</source>
        <translation>Guardar el programa en un archivo</translation>
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
    <name>Season</name>
    <message>
        <source>%1 done, %2 part done, %3 missed, %4 set aside, %5 still ahead.</source>
        <translation>%1 hechas, %2 a medias, %3 perdidas, %4 apartadas, %5 por venir.</translation>
    </message>
    <message>
        <source>Classes and fruit for %1 stay as they are.</source>
        <translation>Las clases y la fruta para %1 quedan como están.</translation>
    </message>
    <message>
        <source>Class and fruit are settled for %1 in %2 planting.</source>
        <translation>Se fijan clase y fruta para %1 en %2 plantación.</translation>
    </message>
    <message>
        <source>Class and fruit are settled for %1 in %2 plantings.</source>
        <translation>Se fijan clase y fruta para %1 en %2 plantaciones.</translation>
    </message>
    <message>
        <source>done</source>
        <translation>hecho</translation>
    </message>
    <message>
        <source>part done</source>
        <translation>a medias</translation>
    </message>
    <message>
        <source>missed</source>
        <translation>perdido</translation>
    </message>
    <message>
        <source>set aside</source>
        <translation>apartado</translation>
    </message>
    <message>
        <source>still ahead</source>
        <translation>por venir</translation>
    </message>
    <message>
        <source>Planned %1 h; done of it %2 h; noted with ticks %3 h.</source>
        <translation>Planeadas %1 h; de ellas hechas %2 h; anotadas con marcas %3 h.</translation>
    </message>
    <message>
        <source>%1 tree is replanted in %2 on %3.</source>
        <translation>Se replanta %1 árbol en %2 el %3.</translation>
    </message>
    <message>
        <source>%1 trees are replanted in %2 on %3.</source>
        <translation>Se replantan %1 árboles en %2 el %3.</translation>
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
    <message>
        <source>the block is closed after a spray</source>
        <translation>el cuadro está cerrado por una aplicación</translation>
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
    <message>
        <source>In %1 %2 the field %3 does not rise; put the lowest first.</source>
        <translation>En %1 %2 el campo %3 no va de menor a mayor; ponga primero el menor.</translation>
    </message>
    <message>
        <source>In %1 %2 the field %3 is not a list of numbers; write it like: %4</source>
        <translation>En %1 %2 el campo %3 no es una lista de números; escríbalo así: %4</translation>
    </message>
    <message>
        <source>In %1 %2 the field %3 lies below the figure it should end at or above; swap the two.</source>
        <translation>En %1 %2 el campo %3 queda por debajo del valor que debe alcanzar; cámbielos de lugar.</translation>
    </message>
    <message>
        <source>The cost &quot;%1&quot; has no row; add one.</source>
        <translation>El costo «%1» no tiene fila; agregue una.</translation>
    </message>
</context>
<context>
    <name>Targets</name>
    <message>
        <source>No growth of last season was measured in dormancy, so nothing speaks for another class than %1. Measure leaders and shoots on ten to twenty ordinary trees.</source>
        <translation>No se midió en reposo el crecimiento de la temporada pasada, así que nada pide otra clase que %1. Mida guías y brotes en diez a veinte árboles comunes.</translation>
    </message>
    <message>
        <source>Growth speaks for the class as it is: %1.</source>
        <translation>El crecimiento confirma la clase: %1.</translation>
    </message>
    <message>
        <source>Leaders and shoots say different things, so the class stays %1.</source>
        <translation>Guías y brotes dicen cosas distintas; la clase sigue %1.</translation>
    </message>
    <message>
        <source>One winter outside the class is not enough to leave %1; a second one would be.</source>
        <translation>Un invierno fuera de la clase no basta para dejar %1; dos sí.</translation>
    </message>
    <message>
        <source>Two winters running say so: from %1 to %2. You have the last word.</source>
        <translation>Dos inviernos seguidos lo dicen: de %1 a %2. Usted tiene la última palabra.</translation>
    </message>
    <message>
        <source>More than half outside the class: from %1 to %2. You have the last word.</source>
        <translation>Más de la mitad fuera de la clase: de %1 a %2. Usted tiene la última palabra.</translation>
    </message>
    <message>
        <source>Season %1, %2: %3; a moderate tree makes %4 to %5.</source>
        <translation>Temporada %1, %2: %3; un árbol de vigor medio hace de %4 a %5.</translation>
    </message>
    <message>
        <source>Your own figure for this season goes before all others.</source>
        <translation>Su propia cifra para esta temporada va antes que las demás.</translation>
    </message>
    <message>
        <source>Your note: %1</source>
        <translation>Su nota: %1</translation>
    </message>
    <message>
        <source>No fruit in the first leaf: it would take from the leader what the leader needs to reach the wire.</source>
        <translation>Sin fruta en la primera hoja: le quitaría a la guía lo que necesita para llegar al alambre.</translation>
    </message>
    <message>
        <source>In leaf %1 such trees lose their flower buds before they open.</source>
        <translation>En la hoja %1 a esos árboles se les quita la flor antes de que abra.</translation>
    </message>
    <message>
        <source>Leaf %1, %2 trees: %3 to %4 fruit on a trunk of %5, as is usual then.</source>
        <translation>Hoja %1, árboles de vigor %2: de %3 a %4 frutos con un tronco de %5, lo normal entonces.</translation>
    </message>
    <message>
        <source>%1 is prone to crop every other year, so it keeps fewer.</source>
        <translation>%1 tiende a cargar un año sí y otro no, así que se le deja menos.</translation>
    </message>
    <message>
        <source>Weak trees keep fewer, so that they grow.</source>
        <translation>A los árboles débiles se les deja menos, para que crezcan.</translation>
    </message>
    <message>
        <source>On the lower branches only.</source>
        <translation>Sólo en las ramas bajas.</translation>
    </message>
    <message>
        <source>None that competes with the leader.</source>
        <translation>Ninguna que compita con la guía.</translation>
    </message>
    <message>
        <source>From the eighth leaf on the space is full, and the yield aimed at decides, not the trunk.</source>
        <translation>Desde la octava hoja el espacio está lleno y decide el rendimiento que se busca, no el tronco.</translation>
    </message>
    <message>
        <source>No trunk was measured in this season or the last; measure ten to twenty trees just below the first laterals.</source>
        <translation>No se midió ningún tronco en esta temporada ni en la pasada; mida de diez a veinte árboles justo debajo de los primeros laterales.</translation>
    </message>
    <message>
        <source>The trunk was %1 across on %2, %3 cm² of wood: thinner than usual, so the range goes down with it.</source>
        <translation>El tronco medía %1 de grueso el %2, %3 cm² de madera: más delgado de lo normal, así que el rango baja con él.</translation>
    </message>
    <message>
        <source>The trunk was %1 across on %2, %3 cm² of wood: as thick as is usual or thicker.</source>
        <translation>El tronco medía %1 de grueso el %2, %3 cm² de madera: lo normal o más grueso.</translation>
    </message>
    <message>
        <source>At %1 fruit for each cm² it carries %2 at most, which limits the range.</source>
        <translation>A %1 frutos por cm² aguanta %2 cuando mucho, y eso limita el rango.</translation>
    </message>
    <message>
        <source>At %1 fruit for each cm² it carries %2 at most.</source>
        <translation>A %1 frutos por cm² aguanta %2 cuando mucho.</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>Fuente: %1</translation>
    </message>
    <message>
        <source>The leader should be at the top wire, %1, by %2, when shoots set their buds.</source>
        <translation>La guía debe estar en el último alambre, %1, para el %2, cuando los brotes cierran la yema.</translation>
    </message>
    <message>
        <source>The leader keeps the height the block is to have, %1: nine tenths of the row spacing, so that no row shades the next.</source>
        <translation>La guía conserva la altura que tendrá el cuadro, %1: nueve décimos de la distancia entre hileras, para que una no sombree a la otra.</translation>
    </message>
    <message>
        <source>The leader should be at %1 by %2, when shoots set their buds.</source>
        <translation>La guía debe estar a %1 para el %2, cuando los brotes cierran la yema.</translation>
    </message>
    <message>
        <source>From %1 on %2 it rises evenly with the days, which makes %3 on %4.</source>
        <translation>Desde %1 el %2 sube parejo con los días, lo que da %3 el %4.</translation>
    </message>
    <message>
        <source>Measured %1 on %2, behind the %3 wanted then.</source>
        <translation>Medía %1 el %2, menos que los %3 de la meta de ese día.</translation>
    </message>
    <message>
        <source>Measured %1 on %2, ahead of the %3 wanted then.</source>
        <translation>Medía %1 el %2, más que los %3 de la meta de ese día.</translation>
    </message>
    <message>
        <source>Measured %1 on %2, as wanted then (%3).</source>
        <translation>Medía %1 el %2, según la meta de ese día (%3).</translation>
    </message>
    <message>
        <source>As nutrient, not as fertilizer, for a tree and season. A soil or leaf test goes before this figure, and so do local rules.</source>
        <translation>Como nutriente, no como fertilizante, por árbol y temporada. El análisis de suelo o de hoja va antes que esta cifra, y también las reglas locales.</translation>
    </message>
    <message>
        <source>%1</source>
        <translation>%1</translation>
    </message>
    <message>
        <source>Fruit to keep per tree: %1 to %2.</source>
        <translation>Fruta que se deja por árbol: de %1 a %2.</translation>
    </message>
    <message>
        <source>Nitrogen per tree: %1.</source>
        <translation>Nitrógeno por árbol: %1.</translation>
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
        <translation>%1 día de retraso</translation>
    </message>
    <message>
        <source>%1 days late</source>
        <translation>%1 días de retraso</translation>
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
    <message>
        <source>“%1” is no number of hours. Write it like %2.</source>
        <translation>“%1” no es un número de horas. Escríbalo así: %2.</translation>
    </message>
</context>
<context>
    <name>Today</name>
    <message>
        <source>%1, week %2</source>
        <translation>%1, semana %2</translation>
    </message>
    <message>
        <source>today</source>
        <translation>hoy</translation>
    </message>
    <message>
        <source>tomorrow</source>
        <translation>mañana</translation>
    </message>
    <message>
        <source>in %1 days, as planned now</source>
        <translation>en %1 días, según el plan de ahora</translation>
    </message>
    <message>
        <source>%1 hour short</source>
        <translation>Falta %1 hora</translation>
    </message>
    <message>
        <source>%1 hours short</source>
        <translation>Faltan %1 horas</translation>
    </message>
    <message>
        <source>%1 hour late</source>
        <translation>%1 hora tarde</translation>
    </message>
    <message>
        <source>%1 hours late</source>
        <translation>%1 horas tarde</translation>
    </message>
    <message>
        <source>Every window can be met.</source>
        <translation>Todos los plazos se pueden cumplir.</translation>
    </message>
    <message>
        <source>No block is closed.</source>
        <translation>Ningún cuadro está cerrado.</translation>
    </message>
    <message>
        <source>Reopen %1</source>
        <translation>Reabrir %1</translation>
    </message>
    <message>
        <source>Close a &amp;block…</source>
        <translation>Cerrar un &amp;cuadro…</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>%1 worker</source>
        <translation>%1 trabajador</translation>
    </message>
    <message>
        <source>%1 workers</source>
        <translation>%1 trabajadores</translation>
    </message>
    <message>
        <source>nobody works</source>
        <translation>nadie trabaja</translation>
    </message>
    <message>
        <source>all %1, %2 hours</source>
        <translation>los %1, %2 horas</translation>
    </message>
    <message>
        <source>of %1, %2 hours</source>
        <translation>de %1, %2 horas</translation>
    </message>
    <message>
        <source>%1 of them free</source>
        <translation>%1 de ellas libres</translation>
    </message>
    <message>
        <source>all %1 rows</source>
        <translation>las %1 hileras</translation>
    </message>
    <message>
        <source>row %1</source>
        <translation>hilera %1</translation>
    </message>
    <message>
        <source>rows %1</source>
        <translation>hileras %1</translation>
    </message>
    <message>
        <source>%1: %2 row planned, none ticked.</source>
        <translation>%1: %2 hilera planeada, ninguna marcada.</translation>
    </message>
    <message>
        <source>%1: %2 rows planned, none ticked.</source>
        <translation>%1: %2 hileras planeadas, ninguna marcada.</translation>
    </message>
    <message>
        <source>%1: %2 of %3 rows ticked, hours not entered.</source>
        <translation>%1: %2 de %3 hileras marcadas, sin horas anotadas.</translation>
    </message>
    <message>
        <source>%1: %2 of %3 rows ticked in %4 hours.</source>
        <translation>%1: %2 de %3 hileras marcadas en %4 horas.</translation>
    </message>
    <message>
        <source>Enter hour&amp;s…</source>
        <translation>Anotar hora&amp;s…</translation>
    </message>
    <message>
        <source>Let it be planned again</source>
        <translation>Dejar que se planee de nuevo</translation>
    </message>
    <message>
        <source>Not before %1.</source>
        <translation>No antes del %1.</translation>
    </message>
    <message>
        <source>gone by: planned and done</source>
        <translation>ya pasado: lo planeado y lo hecho</translation>
    </message>
    <message>
        <source>Missed in all %1 past years&apos; weather: the plan lets it slip.</source>
        <translation>Con el tiempo de los %1 años pasados no se cumple: el plan lo deja pasar.</translation>
    </message>
    <message>
        <source>Missed in %1 of %2 past years&apos; weather.</source>
        <translation>Con el tiempo de %2 años pasados, no se cumple en %1.</translation>
    </message>
    <message>
        <source>Why, or give it to a crew…</source>
        <translation>Por qué, o dárselo a una cuadrilla…</translation>
    </message>
    <message>
        <source>Time in hand on each of the next %1 days: it would save nothing.</source>
        <translation>Hay tiempo de sobra en cada uno de los próximos %1 días: no ahorraría nada.</translation>
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
    <message>
        <source>It is held to %1, since %2 opens no earlier.</source>
        <translation>Se detiene hasta el %1, porque %2 no abre antes.</translation>
    </message>
    <message>
        <source>The programme says %1 seconds a tree, your %2 hours of ticks say %3; the ticks count for %4 % of the figure.</source>
        <translation>El programa dice %1 segundos por árbol, sus %2 horas de marcas dicen %3; las marcas pesan %4 % en la cifra.</translation>
    </message>
    <message>
        <source>Asked for where %1 reaches the top wire, at %2 %3.</source>
        <translation>Se pide donde %1 llega al último alambre, a %2 %3.</translation>
    </message>
    <message>
        <source>Asked for where %1 is at least %2 %3.</source>
        <translation>Se pide donde %1 es de %2 %3 o más.</translation>
    </message>
    <message>
        <source>Asked for where %1 is below the top wire, at %2 %3.</source>
        <translation>Se pide donde %1 está debajo del último alambre, a %2 %3.</translation>
    </message>
    <message>
        <source>Asked for where %1 is below %2 %3.</source>
        <translation>Se pide donde %1 es menos de %2 %3.</translation>
    </message>
    <message>
        <source>The visits end once %1 reaches the top wire, at %2 %3.</source>
        <translation>Las visitas terminan cuando %1 llega al último alambre, a %2 %3.</translation>
    </message>
    <message>
        <source>The visits end once %1 is at least %2 %3.</source>
        <translation>Las visitas terminan cuando %1 es de %2 %3 o más.</translation>
    </message>
    <message>
        <source>The visits end once %1 is below %2 %3.</source>
        <translation>Las visitas terminan cuando %1 es menos de %2 %3.</translation>
    </message>
    <message>
        <source>It was not measured, so the job is asked for; measure some trees to be sure.</source>
        <translation>No se ha medido, así que el trabajo se pide; mida unos árboles para estar seguro.</translation>
    </message>
    <message>
        <source>It was not measured, so they go on to their closing.</source>
        <translation>No se ha medido, así que siguen hasta su cierre.</translation>
    </message>
    <message>
        <source>So no further visit follows.</source>
        <translation>Por eso ya no sigue otra visita.</translation>
    </message>
    <message>
        <source>The block&apos;s wires are not written down; that height is the usual one.</source>
        <translation>Los alambres del cuadro no están anotados; esa altura es la usual.</translation>
    </message>
    <message>
        <source>Measured on %1: %2 %3.</source>
        <translation>Medido el %1: %2 %3.</translation>
    </message>
    <message>
        <source>Waits for: %1, %2 of %3 rows done.</source>
        <translation>Espera a: %1, %2 de %3 hileras hechas.</translation>
    </message>
    <message>
        <source>It may begin in rows %1.</source>
        <translation>Puede empezar en las hileras %1.</translation>
    </message>
    <message>
        <source>From %1 to %2 the leader grew %3 %5; a visit is due every %4 %5, at that pace and a week apart at the least, so this one comes after %6 days.</source>
        <translation>Del %1 al %2 la guía creció %3 %5; toca una visita cada %4 %5, a ese paso y con una semana entre ellas por lo menos, así que ésta viene a los %6 días.</translation>
    </message>
    <message>
        <source>If late: %1. %2.</source>
        <translation>Si se atrasa: %1. %2.</translation>
    </message>
    <message>
        <source>If late: %1.</source>
        <translation>Si se atrasa: %1.</translation>
    </message>
</context>
<context>
    <name>topwire::AnchorField</name>
    <message>
        <source>What it hangs on</source>
        <translation>De qué depende</translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>Etapa</translation>
    </message>
    <message>
        <source>Month</source>
        <translation>Mes</translation>
    </message>
    <message>
        <source>Season</source>
        <translation>Temporada</translation>
    </message>
    <message>
        <source>Other work</source>
        <translation>Otro trabajo</translation>
    </message>
    <message>
        <source> months</source>
        <translation> meses</translation>
    </message>
    <message>
        <source>Months later</source>
        <translation>Meses después</translation>
    </message>
    <message>
        <source> days</source>
        <translation> días</translation>
    </message>
    <message>
        <source>Days later</source>
        <translation>Días después</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>a stage</source>
        <translation>una etapa</translation>
    </message>
    <message>
        <source>the planting day</source>
        <translation>el día de plantar</translation>
    </message>
    <message>
        <source>a day of the year</source>
        <translation>un día del año</translation>
    </message>
    <message>
        <source>other work done</source>
        <translation>otro trabajo terminado</translation>
    </message>
    <message>
        <source>Day of the month</source>
        <translation>Día del mes</translation>
    </message>
    <message>
        <source>of the season</source>
        <translation>de la temporada</translation>
    </message>
    <message>
        <source>of the season before</source>
        <translation>de la temporada anterior</translation>
    </message>
    <message>
        <source>of the season after</source>
        <translation>de la temporada siguiente</translation>
    </message>
    <message>
        <source>and</source>
        <translation>y</translation>
    </message>
    <message>
        <source>later</source>
        <translation>después</translation>
    </message>
    <message>
        <source>%1 seasons later</source>
        <translation>%1 temporadas después</translation>
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
    <message>
        <source>&amp;Workers at a time</source>
        <translation>&amp;Trabajadores a la vez</translation>
    </message>
    <message>
        <source>At most; one a row where empty</source>
        <translation>Como máximo; uno por hilera si está vacío</translation>
    </message>
    <message>
        <source>L&amp;atitude, degrees</source>
        <translation>L&amp;atitud, grados</translation>
    </message>
    <message>
        <source>With the longitude, for the way between blocks</source>
        <translation>Con la longitud, para el camino entre cuadros</translation>
    </message>
    <message>
        <source>Lon&amp;gitude, degrees</source>
        <translation>Lon&amp;gitud, grados</translation>
    </message>
    <message>
        <source>Negative west of Greenwich</source>
        <translation>Negativa al oeste de Greenwich</translation>
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
    <message>
        <source>&amp;Close the season</source>
        <translation>&amp;Cerrar la temporada</translation>
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
    <message>
        <source>planned</source>
        <translation>planeada</translation>
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
    <name>topwire::CloseBlockForm</name>
    <message>
        <source>Close a block</source>
        <translation>Cerrar un cuadro</translation>
    </message>
    <message>
        <source>&amp;Reason</source>
        <translation>Mo&amp;tivo</translation>
    </message>
    <message>
        <source>How long people stay out after a spray is on its label and in local law; that is what to enter here. Topwire only keeps work out of the block until then.</source>
        <translation>Cuánto tiempo no se entra después de una aplicación lo dicen la etiqueta y la ley local; eso es lo que se anota aquí. Topwire solo deja el trabajo fuera del cuadro hasta entonces.</translation>
    </message>
    <message>
        <source>B&amp;lock</source>
        <translation>C&amp;uadro</translation>
    </message>
    <message>
        <source>Un&amp;til</source>
        <translation>Hast&amp;a</translation>
    </message>
    <message>
        <source>Close the bloc&amp;k</source>
        <translation>Cerrar e&amp;l cuadro</translation>
    </message>
    <message>
        <source>at &amp;hour</source>
        <translation>a la &amp;hora</translation>
    </message>
    <message>
        <source>choose a day</source>
        <translation>elija un día</translation>
    </message>
    <message>
        <source>Choose the day on which people may go in again.</source>
        <translation>Elija el día en que se puede volver a entrar.</translation>
    </message>
    <message>
        <source>Type the hour at which people may go in again, as 14:30.</source>
        <translation>Escriba la hora a la que se puede volver a entrar, como 14:30.</translation>
    </message>
</context>
<context>
    <name>topwire::ClosingPage</name>
    <message>
        <source>Something above is out of range; it is named there.</source>
        <translation>Algo de arriba está fuera de rango; ahí se dice qué.</translation>
    </message>
    <message>
        <source>Back to the &amp;blocks</source>
        <translation>Volver a los c&amp;uadros</translation>
    </message>
    <message>
        <source>Next season&apos;s work by month</source>
        <translation>Trabajo de la próxima temporada por mes</translation>
    </message>
    <message>
        <source>Worker-hours planned, against those of the season that ends: the outline is what was planned, the filling what was noted.</source>
        <translation>Horas de trabajador planeadas, frente a las de la temporada que termina: el contorno es lo planeado, el relleno lo anotado.</translation>
    </message>
    <message>
        <source>Closed b&amp;y</source>
        <translation>C&amp;errada por</translation>
    </message>
    <message>
        <source>Close season %1</source>
        <translation>Cerrar la temporada %1</translation>
    </message>
    <message>
        <source>&amp;Close %1</source>
        <translation>&amp;Cerrar %1</translation>
    </message>
    <message>
        <source>Undo takes all of it back.</source>
        <translation>Deshacer lo regresa todo.</translation>
    </message>
</context>
<context>
    <name>topwire::ComingJobsCard</name>
    <message>
        <source>Job</source>
        <translation>Trabajo</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Hecho</translation>
    </message>
    <message>
        <source>Window closes</source>
        <translation>Cierra el plazo</translation>
    </message>
    <message>
        <source>How it ends</source>
        <translation>Cómo termina</translation>
    </message>
    <message>
        <source>When each job will be done</source>
        <translation>Cuándo se hará cada trabajo</translation>
    </message>
    <message>
        <source>When the jobs of the next eight weeks are done</source>
        <translation>Cuándo se hacen los trabajos de las próximas ocho semanas</translation>
    </message>
    <message>
        <source>Between the two days in eight cases of ten, as far as the pace of such work is known.</source>
        <translation>Entre esos dos días en ocho casos de diez, según lo que se sabe del ritmo de cada trabajo.</translation>
    </message>
    <message>
        <source>Show the first %1</source>
        <translation>Ver los primeros %1</translation>
    </message>
    <message>
        <source>Sho&amp;w all %1 jobs</source>
        <translation>Ver los %1 tra&amp;bajos</translation>
    </message>
    <message>
        <source>Hours</source>
        <translation>Horas</translation>
    </message>
</context>
<context>
    <name>topwire::CrewForm</name>
    <message>
        <source>Sa&amp;ve crew</source>
        <translation>&amp;Guardar la cuadrilla</translation>
    </message>
    <message>
        <source>Crew&apos;s na&amp;me</source>
        <translation>No&amp;mbre de la cuadrilla</translation>
    </message>
    <message>
        <source>&amp;Workers</source>
        <translation>&amp;Trabajadores</translation>
    </message>
    <message>
        <source>As a rule; who turned out is said on the day</source>
        <translation>Por lo general; quiénes vinieron se dice cada día</translation>
    </message>
    <message>
        <source>&amp;Hours a day</source>
        <translation>&amp;Horas por día</translation>
    </message>
    <message>
        <source>Hours kept for &amp;young trees</source>
        <translation>Horas reservadas para árboles &amp;jóvenes</translation>
    </message>
    <message>
        <source>Worker-hours a day for first and second leaf, while fruit is picked</source>
        <translation>Horas de trabajo por día para primera y segunda hoja, mientras se cosecha</translation>
    </message>
    <message>
        <source>S&amp;kills</source>
        <translation>Ha&amp;bilidades</translation>
    </message>
    <message>
        <source>Mem&amp;bers</source>
        <translation>&amp;Integrantes</translation>
    </message>
    <message>
        <source>Names with commas between; may stay empty</source>
        <translation>Nombres separados por comas; puede quedar vacío</translation>
    </message>
    <message>
        <source>Days o&amp;ff</source>
        <translation>Días l&amp;ibres</translation>
    </message>
    <message>
        <source>With commas between: 2027-05-03, 2027-07-05 – 2027-07-17</source>
        <translation>Separados por comas: 2027-05-03, 2027-07-05 – 2027-07-17</translation>
    </message>
    <message>
        <source>Close w&amp;ithout saving</source>
        <translation>Cerrar &amp;sin guardar</translation>
    </message>
    <message>
        <source>A new crew</source>
        <translation>Una cuadrilla nueva</translation>
    </message>
    <message>
        <source>Edit %1</source>
        <translation>Editar %1</translation>
    </message>
    <message>
        <source>Beside general work; empty: whatever is asked</source>
        <translation>Además del trabajo general; vacío: lo que se pida</translation>
    </message>
    <message>
        <source>Beside general work; empty: whatever is asked. Programmes ask for: %1</source>
        <translation>Además del trabajo general; vacío: lo que se pida. Los programas piden: %1</translation>
    </message>
</context>
<context>
    <name>topwire::CrewHead</name>
    <message>
        <source>%1 turned out, %2</source>
        <translation>llegaron %1, %2</translation>
    </message>
    <message>
        <source>One fewer in %1</source>
        <translation>Uno menos en %1</translation>
    </message>
    <message>
        <source>One more in %1</source>
        <translation>Uno más en %1</translation>
    </message>
</context>
<context>
    <name>topwire::CrewLanes</name>
    <message>
        <source>Nobody works in this crew.</source>
        <translation>Nadie trabaja en esta cuadrilla.</translation>
    </message>
    <message>
        <source>No work for this crew.</source>
        <translation>Sin trabajo para esta cuadrilla.</translation>
    </message>
</context>
<context>
    <name>topwire::CrewsCard</name>
    <message>
        <source>No crew yet; work cannot be placed without one.</source>
        <translation>Todavía no hay cuadrillas; sin una no se puede repartir el trabajo.</translation>
    </message>
    <message>
        <source>&amp;Add crew</source>
        <translation>&amp;Agregar cuadrilla</translation>
    </message>
    <message>
        <source>Crews</source>
        <translation>Cuadrillas</translation>
    </message>
    <message>
        <source>1 worker</source>
        <translation>1 trabajador</translation>
    </message>
    <message>
        <source>%1 workers</source>
        <translation>%1 trabajadores</translation>
    </message>
    <message>
        <source>all-round</source>
        <translation>para todo</translation>
    </message>
    <message>
        <source>%1, %2 h a day · %3</source>
        <translation>%1, %2 h por día · %3</translation>
    </message>
    <message>
        <source>Edit</source>
        <translation>Editar</translation>
    </message>
    <message>
        <source>Edit %1</source>
        <translation>Editar %1</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Eliminar</translation>
    </message>
    <message>
        <source>Delete %1</source>
        <translation>Eliminar %1</translation>
    </message>
    <message>
        <source>Delete crew %1, with its turnouts, pins and planned jobs? What it ticked stays.</source>
        <translation>¿Eliminar la cuadrilla %1, con su asistencia, lo fijado y lo planeado? Lo que marcó se queda.</translation>
    </message>
    <message>
        <source>&amp;Delete %1</source>
        <translation>E&amp;liminar %1</translation>
    </message>
    <message>
        <source>%1 · off %2</source>
        <translation>%1 · libre %2</translation>
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
    <name>topwire::DayForm</name>
    <message>
        <source>Close without chan&amp;ging</source>
        <translation>Cerrar sin ca&amp;mbiar</translation>
    </message>
</context>
<context>
    <name>topwire::DayRibbon</name>
    <message>
        <source>as forecast</source>
        <translation>según el pronóstico</translation>
    </message>
    <message>
        <source>as typed in</source>
        <translation>según lo anotado</translation>
    </message>
    <message>
        <source>as measured</source>
        <translation>según lo medido</translation>
    </message>
    <message>
        <source>What the day allows</source>
        <translation>Qué permite el día</translation>
    </message>
    <message>
        <source>A day lost to weather, a holiday, half a day, or work on a day of rest.</source>
        <translation>Un día perdido por el tiempo, un feriado, medio día, o trabajo en un día de descanso.</translation>
    </message>
    <message>
        <source>%1 % of the usual hours</source>
        <translation>%1 % de las horas de costumbre</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Nothing in it speaks against the day&apos;s work.</source>
        <translation>Nada en él se opone al trabajo del día.</translation>
    </message>
    <message>
        <source>Nothing is known of the day&apos;s weather yet.</source>
        <translation>Aún no se sabe nada del tiempo de ese día.</translation>
    </message>
    <message>
        <source>&amp;Change its hours…</source>
        <translation>&amp;Cambiar sus horas…</translation>
    </message>
    <message>
        <source>How the day was</source>
        <translation>Cómo fue el día</translation>
    </message>
    <message>
        <source>Nothing is known of the day&apos;s weather.</source>
        <translation>No se sabe nada del tiempo de ese día.</translation>
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
    <name>topwire::DoneCard</name>
    <message>
        <source>none of rows %1</source>
        <translation>ninguna de las hileras %1</translation>
    </message>
    <message>
        <source>rows %1 left</source>
        <translation>faltan las hileras %1</translation>
    </message>
    <message>
        <source>to %1</source>
        <translation>hasta el %1</translation>
    </message>
    <message>
        <source>%1 noted</source>
        <translation>%1 anotadas</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Lo que se hizo</translation>
    </message>
    <message>
        <source>Work that was missed, done in part or set aside, by planting.</source>
        <translation>Trabajo perdido, a medias o apartado, por plantación.</translation>
    </message>
    <message>
        <source>Show what was &amp;done and lies ahead, too</source>
        <translation>Mostrar también lo &amp;hecho y lo que viene</translation>
    </message>
    <message>
        <source>%1 · %2 visits</source>
        <translation>%1 · %2 visitas</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>Show the work</source>
        <translation>Mostrar el trabajo</translation>
    </message>
    <message>
        <source>Show the work of %1</source>
        <translation>Mostrar el trabajo de %1</translation>
    </message>
</context>
<context>
    <name>topwire::EffectPanel</name>
    <message>
        <source>%1 later</source>
        <translation>%1 después</translation>
    </message>
    <message>
        <source>%1 earlier</source>
        <translation>%1 antes</translation>
    </message>
    <message>
        <source>moves, %1</source>
        <translation>se mueve, %1</translation>
    </message>
    <message>
        <source>opens %1</source>
        <translation>abre %1</translation>
    </message>
    <message>
        <source>closes %1</source>
        <translation>cierra %1</translation>
    </message>
    <message>
        <source>opens %1, closes %2</source>
        <translation>abre %1, cierra %2</translation>
    </message>
    <message>
        <source>comes</source>
        <translation>se agrega</translation>
    </message>
    <message>
        <source>goes</source>
        <translation>se va</translation>
    </message>
    <message>
        <source>stays for its ticks alone</source>
        <translation>se queda sólo por sus marcas</translation>
    </message>
    <message>
        <source>Leave it as it &amp;was</source>
        <translation>De&amp;jarlo como estaba</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1, %2 times: %3</source>
        <translation>%1, %2 veces: %3</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation>y %1 más</translation>
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
    <name>topwire::HoursForm</name>
    <message>
        <source>Hours for %1</source>
        <translation>Horas de %1</translation>
    </message>
    <message>
        <source>Worker-hours, all workers together; the plan learns its pace from them.</source>
        <translation>Horas de trabajo, todos los trabajadores juntos; con ellas el plan aprende el ritmo.</translation>
    </message>
    <message>
        <source>E&amp;nter rows and hours</source>
        <translation>A&amp;notar hileras y horas</translation>
    </message>
    <message>
        <source>Done on %1</source>
        <translation>Hecho el %1</translation>
    </message>
    <message>
        <source>Rows done of %1</source>
        <translation>Hileras hechas de %1</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Rows</source>
        <translation>Hileras</translation>
    </message>
    <message>
        <source>Hours</source>
        <translation>Horas</translation>
    </message>
</context>
<context>
    <name>topwire::JobBar</name>
    <message>
        <source>Wh&amp;y</source>
        <translation>&amp;Por qué</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>&amp;Pin to %1</source>
        <translation>&amp;Fijar a %1</translation>
    </message>
    <message>
        <source>&amp;Not today</source>
        <translation>Hoy &amp;no</translation>
    </message>
    <message>
        <source>Not before %1.</source>
        <translation>No antes del %1.</translation>
    </message>
    <message>
        <source>Un&amp;pin from %1</source>
        <translation>Sol&amp;tar de %1</translation>
    </message>
    <message>
        <source>&amp;Give it to</source>
        <translation>&amp;Dárselo a</translation>
    </message>
</context>
<context>
    <name>topwire::JobCard</name>
    <message>
        <source>pinned to this crew</source>
        <translation>fijado a esta cuadrilla</translation>
    </message>
    <message>
        <source>should wait: %1</source>
        <translation>debe esperar: %1</translation>
    </message>
    <message>
        <source>Enter opens it, Ctrl+Up and Ctrl+Down give it to another crew, W says why, Delete unpins it, the menu key has more.</source>
        <translation>Intro lo abre, Ctrl+Arriba y Ctrl+Abajo lo dan a otra cuadrilla, W dice por qué, Supr lo suelta, la tecla de menú tiene más.</translation>
    </message>
    <message>
        <source>&amp;Tick rows	Enter</source>
        <translation>&amp;Marcar hileras	Intro</translation>
    </message>
    <message>
        <source>&amp;Why	W</source>
        <translation>Por &amp;qué	W</translation>
    </message>
    <message>
        <source>To the crew a&amp;bove	Ctrl+Up</source>
        <translation>A la cuadrilla de a&amp;rriba	Ctrl+Arriba</translation>
    </message>
    <message>
        <source>To the crew be&amp;low	Ctrl+Down</source>
        <translation>A la cuadrilla de a&amp;bajo	Ctrl+Abajo</translation>
    </message>
    <message>
        <source>&amp;Unpin	Delete</source>
        <translation>&amp;Soltar	Supr</translation>
    </message>
    <message>
        <source>&amp;Not today	N</source>
        <translation>Hoy &amp;no	N</translation>
    </message>
    <message>
        <source>pinned</source>
        <translation>fijado</translation>
    </message>
</context>
<context>
    <name>topwire::LabourBars</name>
    <message>
        <source>%1: %2 planned and %3 noted in %4, %5 planned in %6</source>
        <translation>%1: %2 planeadas y %3 anotadas en %4, %5 planeadas en %6</translation>
    </message>
    <message>
        <source>Worker-hours by month</source>
        <translation>Horas de trabajador por mes</translation>
    </message>
    <message>
        <source>%1: %2 planned, %3 noted</source>
        <translation>%1: %2 planeadas, %3 anotadas</translation>
    </message>
    <message>
        <source>%1: %2 planned</source>
        <translation>%1: %2 planeadas</translation>
    </message>
</context>
<context>
    <name>topwire::LabourPage</name>
    <message>
        <source>As it is known</source>
        <translation>Según lo que se sabe</translation>
    </message>
    <message>
        <source>Filled: planned. Dashed: wanted, each job spread over its window. Line: what the crews can work. Hatched: past its closing at the week&apos;s end.</source>
        <translation>Lleno: planeado. Guiones: lo que se pide, cada trabajo repartido en su plazo. Línea: lo que las cuadrillas pueden trabajar. Rayado: pasado de su cierre al fin de la semana.</translation>
    </message>
    <message>
        <source>Labour</source>
        <translation>Mano de obra</translation>
    </message>
    <message>
        <source>%1 weeks ahead</source>
        <translation>%1 semanas por delante</translation>
    </message>
    <message>
        <source>No crews yet.</source>
        <translation>Aún no hay cuadrillas.</translation>
    </message>
    <message>
        <source>Once there is one, its hours stand here against the work that is coming.</source>
        <translation>En cuanto haya una, aquí estarán sus horas frente al trabajo que viene.</translation>
    </message>
    <message>
        <source>Open the &amp;settings</source>
        <translation>Abrir los a&amp;justes</translation>
    </message>
    <message>
        <source>Planning the season…</source>
        <translation>Planeando la temporada…</translation>
    </message>
    <message>
        <source>%1 · planning…</source>
        <translation>%1 · planeando…</translation>
    </message>
</context>
<context>
    <name>topwire::LabourStrip</name>
    <message>
        <source>Week of %1: %2 worker-hours there, %3 wanted, %4 planned</source>
        <translation>Semana del %1: hay %2 horas-trabajador, se piden %3, planeadas %4</translation>
    </message>
    <message>
        <source>%1; %2 carried past their closing</source>
        <translation>%1; %2 pasan de su cierre</translation>
    </message>
    <message>
        <source>Labour by week</source>
        <translation>Mano de obra por semana</translation>
    </message>
    <message>
        <source>under 1</source>
        <translation>menos de 1</translation>
    </message>
</context>
<context>
    <name>topwire::LostDayForm</name>
    <message>
        <source>&amp;Reason</source>
        <translation>Mo&amp;tivo</translation>
    </message>
    <message>
        <source>0 % on a holiday or a day lost to weather, 100 % to work on a day of rest.</source>
        <translation>0 % en un feriado o un día perdido por el tiempo, 100 % para trabajar en un día de descanso.</translation>
    </message>
    <message>
        <source>The hours of %1</source>
        <translation>Las horas del %1</translation>
    </message>
    <message>
        <source>Of the usual hours</source>
        <translation>De las horas de costumbre</translation>
    </message>
    <message>
        <source>Se&amp;t the hours</source>
        <translation>&amp;Poner las horas</translation>
    </message>
    <message>
        <source>A usua&amp;l day again</source>
        <translation>Otra vez un día norma&amp;l</translation>
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
        <translation>Ajustes</translation>
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
    <message>
        <source>Material</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>Programme</source>
        <translation>Programa</translation>
    </message>
    <message>
        <source>&amp;Close the season...</source>
        <translation>&amp;Cerrar la temporada...</translation>
    </message>
    <message>
        <source>&amp;Material</source>
        <translation>&amp;Material</translation>
    </message>
    <message>
        <source>&amp;Programme</source>
        <translation>&amp;Programa</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Hoy</translation>
    </message>
    <message>
        <source>&amp;Today</source>
        <translation>&amp;Hoy</translation>
    </message>
    <message>
        <source>Labour</source>
        <translation>Mano de obra</translation>
    </message>
    <message>
        <source>&amp;Labour</source>
        <translation>Ma&amp;no de obra</translation>
    </message>
</context>
<context>
    <name>topwire::MaterialPage</name>
    <message>
        <source>What to pick up</source>
        <translation>Qué recoger</translation>
    </message>
    <message>
        <source>Item</source>
        <translation>Artículo</translation>
    </message>
    <message>
        <source>Needed</source>
        <translation>Se necesita</translation>
    </message>
    <message>
        <source>Buy</source>
        <translation>Comprar</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Para</translation>
    </message>
    <message>
        <source>For how long to pick up</source>
        <translation>Para cuánto tiempo recoger</translation>
    </message>
    <message>
        <source>for a week</source>
        <translation>para una semana</translation>
    </message>
    <message>
        <source>for a season</source>
        <translation>para una temporada</translation>
    </message>
    <message>
        <source>for a new planting</source>
        <translation>para una plantación nueva</translation>
    </message>
    <message>
        <source>New planting</source>
        <translation>Plantación nueva</translation>
    </message>
    <message>
        <source>Ea&amp;rlier</source>
        <translation>&amp;Antes</translation>
    </message>
    <message>
        <source>La&amp;ter</source>
        <translation>Des&amp;pués</translation>
    </message>
    <message>
        <source>C&amp;opy as CSV</source>
        <translation>C&amp;opiar como CSV</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation>&amp;Imprimir…</translation>
    </message>
    <message>
        <source>&amp;Save as PDF…</source>
        <translation>&amp;Guardar como PDF…</translation>
    </message>
    <message>
        <source>Material</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>Nothing is to be planted. A planting whose day lies ahead has its material here.</source>
        <translation>No hay nada por plantar. Una plantación cuyo día está por venir tiene aquí su material.</translation>
    </message>
    <message>
        <source>Nothing is to be picked up.</source>
        <translation>No hay nada que recoger.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>material-%1.pdf</source>
        <translation>material-%1.pdf</translation>
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
    <name>topwire::MeasureView</name>
    <message>
        <source>Measurements over the seasons</source>
        <translation>Mediciones a lo largo de las temporadas</translation>
    </message>
</context>
<context>
    <name>topwire::MeasurementsPanel</name>
    <message>
        <source>Measurements</source>
        <translation>Mediciones</translation>
    </message>
    <message>
        <source>Ten to twenty ordinary trees, spread over the rows; trunks just below the first laterals, growth once it has ended.</source>
        <translation>De diez a veinte árboles comunes, repartidos por las hileras; el tronco justo debajo de los primeros laterales, el crecimiento cuando ya terminó.</translation>
    </message>
    <message>
        <source>What is meas&amp;ured</source>
        <translation>Qué se m&amp;ide</translation>
    </message>
    <message>
        <source>Da&amp;y</source>
        <translation>&amp;Día</translation>
    </message>
    <message>
        <source>&amp;Values</source>
        <translation>&amp;Valores</translation>
    </message>
    <message>
        <source>Whe&amp;re</source>
        <translation>Dón&amp;de</translation>
    </message>
    <message>
        <source>May stay empty</source>
        <translation>Puede quedar vacío</translation>
    </message>
    <message>
        <source>Keep &amp;this measurement</source>
        <translation>Gua&amp;rdar esta medición</translation>
    </message>
    <message>
        <source>Earlier ones</source>
        <translation>Anteriores</translation>
    </message>
    <message>
        <source>Nothing measured yet.</source>
        <translation>Todavía no se ha medido nada.</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>Remove %1 of %2</source>
        <translation>Quitar %1 del %2</translation>
    </message>
</context>
<context>
    <name>topwire::MeasuresCard</name>
    <message>
        <source>What is still to be measured</source>
        <translation>Lo que falta medir</translation>
    </message>
    <message>
        <source>Trees measured in dormancy tell next season&apos;s class and fruit. Closing doesn&apos;t wait for them.</source>
        <translation>Los árboles medidos en reposo dicen la clase y la fruta de la próxima temporada. El cierre no espera por ellos.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Measure</source>
        <translation>Medir</translation>
    </message>
    <message>
        <source>Measure %1</source>
        <translation>Medir %1</translation>
    </message>
    <message>
        <source>Everything was measured.</source>
        <translation>Todo está medido.</translation>
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
    <name>topwire::NextLeafCard</name>
    <message>
        <source>Class and fruit for the next leaf</source>
        <translation>Clase y fruta para la próxima hoja</translation>
    </message>
    <message>
        <source>Proposed from what was measured; you have the last word.</source>
        <translation>Propuesto por lo que se midió; usted tiene la última palabra.</translation>
    </message>
    <message>
        <source>Planting</source>
        <translation>Plantación</translation>
    </message>
    <message>
        <source>Class</source>
        <translation>Clase</translation>
    </message>
    <message>
        <source>Fruit a tree, from</source>
        <translation>Fruta por árbol, de</translation>
    </message>
    <message>
        <source>to</source>
        <translation>a</translation>
    </message>
    <message>
        <source>Class of %1</source>
        <translation>Clase de %1</translation>
    </message>
    <message>
        <source>Least fruit a tree to keep, %1</source>
        <translation>Mínimo de fruta por árbol que se deja, %1</translation>
    </message>
    <message>
        <source>Most fruit a tree to keep, %1</source>
        <translation>Máximo de fruta por árbol que se deja, %1</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>settled when the season was closed</source>
        <translation>fijado al cerrar la temporada</translation>
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
    <name>topwire::OperationForm</name>
    <message>
        <source>It cuts living wood</source>
        <translation>Corta madera viva</translation>
    </message>
    <message>
        <source>A day of the year is the one in the north; south of the equator it is six months later</source>
        <translation>El día del año es el del norte; al sur del ecuador es seis meses después</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Short name</source>
        <translation>Nombre corto</translation>
    </message>
    <message>
        <source>For a narrow bar; the name where empty</source>
        <translation>Para una barra angosta; el nombre si está vacío</translation>
    </message>
    <message>
        <source>Opens</source>
        <translation>Abre</translation>
    </message>
    <message>
        <source>Closes</source>
        <translation>Cierra</translation>
    </message>
    <message>
        <source>Its last day; a figure below zero is that much earlier</source>
        <translation>Su último día; un número negativo es tanto antes</translation>
    </message>
    <message>
        <source>No use after</source>
        <translation>Ya no sirve después de</translation>
    </message>
    <message>
        <source>Nothing, where late is better than never</source>
        <translation>Nada, donde vale más tarde que nunca</translation>
    </message>
    <message>
        <source>Why no use after</source>
        <translation>Por qué ya no sirve</translation>
    </message>
    <message>
        <source>Leaves</source>
        <translation>Hojas</translation>
    </message>
    <message>
        <source>2, 1-3, 4+, -3 to -1, or several of them; empty: once per planting</source>
        <translation>2, 1-3, 4+, -3 to -1, o varias; vacío: una vez por plantación</translation>
    </message>
    <message>
        <source>Again every, days</source>
        <translation>Se repite cada, días</translation>
    </message>
    <message>
        <source>14, or for weak, moderate and strong trees: 28, 21, 14</source>
        <translation>14, o para árboles débiles, medios y vigorosos: 28, 21, 14</translation>
    </message>
    <message>
        <source>On trees that are</source>
        <translation>En árboles de vigor</translation>
    </message>
    <message>
        <source>In plantings that are</source>
        <translation>En plantaciones de tipo</translation>
    </message>
    <message>
        <source>Seconds per tree</source>
        <translation>Segundos por árbol</translation>
    </message>
    <message>
        <source>24, or from a leaf on: 1: 24, 3: 30; 0: not counted by the tree</source>
        <translation>24, o desde una hoja: 1: 24, 3: 30; 0: no se cuenta por árbol</translation>
    </message>
    <message>
        <source>Needs first</source>
        <translation>Primero necesita</translation>
    </message>
    <message>
        <source>Ids of work to be done before, such as raise-trellis</source>
        <translation>Claves del trabajo que va antes, como raise-trellis</translation>
    </message>
    <message>
        <source>Not when it is</source>
        <translation>No cuando hay</translation>
    </message>
    <message>
        <source>Wounds</source>
        <translation>Heridas</translation>
    </message>
    <message>
        <source>Cost of delay</source>
        <translation>Costo del retraso</translation>
    </message>
    <message>
        <source>Why delay costs</source>
        <translation>Por qué cuesta el retraso</translation>
    </message>
    <message>
        <source>How, line 1</source>
        <translation>Cómo, línea 1</translation>
    </message>
    <message>
        <source>How, line 2</source>
        <translation>Cómo, línea 2</translation>
    </message>
    <message>
        <source>How, line 3</source>
        <translation>Cómo, línea 3</translation>
    </message>
    <message>
        <source>Done when</source>
        <translation>Terminado cuando</translation>
    </message>
    <message>
        <source>Tools</source>
        <translation>Herramientas</translation>
    </message>
    <message>
        <source>With commas between, in the same order in both languages</source>
        <translation>Con comas entre ellas, en el mismo orden en los dos idiomas</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Cuidado</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Fuente</translation>
    </message>
    <message>
        <source>Where window and figures come from; your own trials count</source>
        <translation>De dónde vienen el plazo y las cifras; valen sus propias pruebas</translation>
    </message>
    <message>
        <source>Skill it asks for</source>
        <translation>Habilidad que pide</translation>
    </message>
    <message>
        <source>Such as pruning; empty: anyone can do it</source>
        <translation>Como pruning; vacío: cualquiera puede hacerlo</translation>
    </message>
</context>
<context>
    <name>topwire::OperationView</name>
    <message>
        <source>Done when: %1</source>
        <translation>Terminado cuando: %1</translation>
    </message>
    <message>
        <source>Window</source>
        <translation>Plazo</translation>
    </message>
    <message>
        <source>No use after</source>
        <translation>Ya no sirve después de</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Again</source>
        <translation>Se repite</translation>
    </message>
    <message>
        <source>Needs first</source>
        <translation>Primero necesita</translation>
    </message>
    <message>
        <source>Only where</source>
        <translation>Sólo donde</translation>
    </message>
    <message>
        <source> and </source>
        <translation> y </translation>
    </message>
    <message>
        <source>Not when</source>
        <translation>No cuando hay</translation>
    </message>
    <message>
        <source>Wounds</source>
        <translation>Heridas</translation>
    </message>
    <message>
        <source>It cuts living wood, so it waits for fit weather</source>
        <translation>Corta madera viva, así que espera buen tiempo</translation>
    </message>
    <message>
        <source>Cost of delay</source>
        <translation>Costo del retraso</translation>
    </message>
    <message>
        <source>Labour</source>
        <translation>Mano de obra</translation>
    </message>
    <message>
        <source>Tools</source>
        <translation>Herramientas</translation>
    </message>
    <message>
        <source>Material</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Cuidado</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Fuente</translation>
    </message>
    <message>
        <source>Skill</source>
        <translation>Habilidad</translation>
    </message>
</context>
<context>
    <name>topwire::PacesCard</name>
    <message>
        <source>Work</source>
        <translation>Trabajo</translation>
    </message>
    <message>
        <source>Trees</source>
        <translation>Árboles</translation>
    </message>
    <message>
        <source>Programme</source>
        <translation>Programa</translation>
    </message>
    <message>
        <source>Learned</source>
        <translation>Aprendido</translation>
    </message>
    <message>
        <source>From hours</source>
        <translation>De horas</translation>
    </message>
    <message>
        <source>By crew</source>
        <translation>Por cuadrilla</translation>
    </message>
    <message>
        <source>Time a tree takes</source>
        <translation>Tiempo que lleva un árbol</translation>
    </message>
    <message>
        <source>Seconds of one worker. The programme&apos;s figure counts as much as %1 hours of ticks; a crew&apos;s own is drawn toward that of all.</source>
        <translation>Segundos de un trabajador. La cifra del programa pesa lo que %1 horas de marcas; la de cada cuadrilla se acerca a la de todas.</translation>
    </message>
    <message>
        <source>Show what was learned alone</source>
        <translation>Ver sólo lo aprendido</translation>
    </message>
    <message>
        <source>Show all %1 fi&amp;gures</source>
        <translation>Ver las %1 ci&amp;fras</translation>
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
    <name>topwire::PastDayView</name>
    <message>
        <source>Job</source>
        <translation>Trabajo</translation>
    </message>
    <message>
        <source>Planned</source>
        <translation>Planeado</translation>
    </message>
    <message>
        <source>Ticked</source>
        <translation>Marcado</translation>
    </message>
    <message>
        <source>Ticked besides</source>
        <translation>Marcado aparte</translation>
    </message>
    <message>
        <source>in no plan of that day</source>
        <translation>en ningún plan de ese día</translation>
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
    <name>topwire::ProgrammeCopyPanel</name>
    <message>
        <source>Its &amp;name</source>
        <translation>Su &amp;nombre</translation>
    </message>
    <message>
        <source>The Spanish one may stay empty where they are the same</source>
        <translation>El español puede quedar vacío si son iguales</translation>
    </message>
    <message>
        <source>&amp;Make the copy</source>
        <translation>&amp;Hacer la copia</translation>
    </message>
    <message>
        <source>&amp;Close without copying</source>
        <translation>&amp;Cerrar sin copiar</translation>
    </message>
    <message>
        <source>The copy is this orchard&apos;s own: change it as you like. What came with Topwire stays as it is.</source>
        <translation>La copia es de esta huerta: cámbiela como quiera. Lo que vino con Topwire queda como está.</translation>
    </message>
    <message>
        <source>A copy of %1</source>
        <translation>Copia de %1</translation>
    </message>
</context>
<context>
    <name>topwire::ProgrammeFaultsPanel</name>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Cerrar</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation>y %1 más</translation>
    </message>
</context>
<context>
    <name>topwire::ProgrammePage</name>
    <message>
        <source>&amp;Keep the change</source>
        <translation>&amp;Guardar el cambio</translation>
    </message>
    <message>
        <source>Copy to &amp;change it</source>
        <translation>Copiar para &amp;cambiarlo</translation>
    </message>
    <message>
        <source>Choose &amp;plantings</source>
        <translation>Escoger p&amp;lantaciones</translation>
    </message>
    <message>
        <source>&amp;Save as a file</source>
        <translation>Guardar en &amp;archivo</translation>
    </message>
    <message>
        <source>&amp;Bring in</source>
        <translation>&amp;Traer</translation>
    </message>
    <message>
        <source>Re&amp;move</source>
        <translation>&amp;Quitar</translation>
    </message>
    <message>
        <source>Programmes</source>
        <translation>Programas</translation>
    </message>
    <message>
        <source>Work of the programme</source>
        <translation>Trabajos del programa</translation>
    </message>
    <message>
        <source>C&amp;opy this work</source>
        <translation>C&amp;opiar este trabajo</translation>
    </message>
    <message>
        <source>&amp;Take this work out</source>
        <translation>Qui&amp;tar este trabajo</translation>
    </message>
    <message>
        <source>Change a field, and what it does to the plan stands here.</source>
        <translation>Cambie un campo y aquí verá qué le hace al plan.</translation>
    </message>
    <message>
        <source>%1 was not brought in</source>
        <translation>%1 no se trajo</translation>
    </message>
    <message>
        <source>Remove %1? Undo brings it back.</source>
        <translation>¿Quitar %1? Deshacer lo regresa.</translation>
    </message>
    <message>
        <source>&amp;Remove it</source>
        <translation>&amp;Quitarlo</translation>
    </message>
</context>
<context>
    <name>topwire::ProgrammePlantingsPanel</name>
    <message>
        <source>&amp;Have them go by it</source>
        <translation>&amp;Que lo sigan</translation>
    </message>
    <message>
        <source>Plantings</source>
        <translation>Plantaciones</translation>
    </message>
    <message>
        <source>Tick those that should. To take one away, give it another programme.</source>
        <translation>Marque las que deban seguirlo. Para quitar una, dele otro programa.</translation>
    </message>
    <message>
        <source>Plantings that go by %1</source>
        <translation>Plantaciones que siguen %1</translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <translation>%1: %2, %3</translation>
    </message>
    <message>
        <source>Tick a planting, and what it does to the plan stands here.</source>
        <translation>Marque una plantación y aquí verá qué le hace al plan.</translation>
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
    <name>topwire::ReplantsCard</name>
    <message>
        <source>Missing trees</source>
        <translation>Árboles faltantes</translation>
    </message>
    <message>
        <source>Where trees are missing, replants of the same kind are planned for the coming spring. Say how many; none is planned for 0.</source>
        <translation>Donde faltan árboles se planean replantes iguales para la próxima primavera. Diga cuántos; con 0 no se planea ninguno.</translation>
    </message>
    <message>
        <source>Planting</source>
        <translation>Plantación</translation>
    </message>
    <message>
        <source>In rows</source>
        <translation>En hileras</translation>
    </message>
    <message>
        <source>Planted on</source>
        <translation>Se plantan el</translation>
    </message>
    <message>
        <source>Missing trees in %1</source>
        <translation>Árboles faltantes en %1</translation>
    </message>
    <message>
        <source>Rows of the replants in %1</source>
        <translation>Hileras de los replantes en %1</translation>
    </message>
    <message>
        <source>Day of replanting in %1</source>
        <translation>Día de replante en %1</translation>
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
    <message>
        <source>Where the orchard lies, who works in it, and how it is shown here</source>
        <translation>Dónde está el huerto, quién trabaja en él y cómo se muestra aquí</translation>
    </message>
</context>
<context>
    <name>topwire::SideSection</name>
    <message>
        <source>Show fewer</source>
        <translation>Mostrar menos</translation>
    </message>
    <message>
        <source>Show %1 more</source>
        <translation>Mostrar %1 más</translation>
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
    <name>topwire::StepCard</name>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
</context>
<context>
    <name>topwire::TargetsCard</name>
    <message>
        <source>none</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>a tree; your own figure</source>
        <translation>por árbol; su propia cifra</translation>
    </message>
    <message>
        <source>in the %1</source>
        <translation>en la %1</translation>
    </message>
    <message>
        <source>a tree, by leaf and class</source>
        <translation>por árbol, según hoja y clase</translation>
    </message>
    <message>
        <source>a tree, with a trunk of %1</source>
        <translation>por árbol, con un tronco de %1</translation>
    </message>
    <message>
        <source>&amp;Measurements</source>
        <translation>&amp;Mediciones</translation>
    </message>
    <message>
        <source>Why these fi&amp;gures</source>
        <translation>Por qué es&amp;tas cifras</translation>
    </message>
    <message>
        <source>Planting whose targets are shown</source>
        <translation>Plantación cuyas metas se muestran</translation>
    </message>
    <message>
        <source>Targets this season</source>
        <translation>Metas de esta temporada</translation>
    </message>
    <message>
        <source>Targets come with a planting.</source>
        <translation>Las metas vienen con una plantación.</translation>
    </message>
    <message>
        <source>Targets begin with the first leaf, once the trees are planted.</source>
        <translation>Las metas empiezan con la primera hoja, ya plantados los árboles.</translation>
    </message>
    <message>
        <source>Fruit to keep</source>
        <translation>Fruta que se deja</translation>
    </message>
    <message>
        <source>Leader wanted today</source>
        <translation>Meta de la guía hoy</translation>
    </message>
    <message>
        <source>Not measured yet.</source>
        <translation>Todavía sin medir.</translation>
    </message>
    <message>
        <source>Trunk</source>
        <translation>Tronco</translation>
    </message>
    <message>
        <source>%1 cm² of wood, measured on %2</source>
        <translation>%1 cm² de madera, medido el %2</translation>
    </message>
    <message>
        <source>Nitrogen, as nutrient</source>
        <translation>Nitrógeno, como nutriente</translation>
    </message>
    <message>
        <source>a tree; a soil or leaf test goes first</source>
        <translation>por árbol; antes va el análisis de suelo o de hoja</translation>
    </message>
    <message>
        <source>Height once grown</source>
        <translation>Altura ya formado</translation>
    </message>
    <message>
        <source>nine tenths of the row spacing</source>
        <translation>nueve décimos de la distancia entre hileras</translation>
    </message>
    <message>
        <source>Trees</source>
        <translation>Árboles</translation>
    </message>
    <message>
        <source>by row and tree spacing</source>
        <translation>por distancia de hilera y de árbol</translation>
    </message>
    <message>
        <source>&amp;Keep %1</source>
        <translation>&amp;Dejar %1</translation>
    </message>
    <message>
        <source>C&amp;hange to %1</source>
        <translation>Ca&amp;mbiar a %1</translation>
    </message>
    <message>
        <source>Leader</source>
        <translation>Guía</translation>
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
</context>
<context>
    <name>topwire::TodayPage</name>
    <message>
        <source>This plan is accepted.</source>
        <translation>Este plan está aceptado.</translation>
    </message>
    <message>
        <source>The plan has changed since it was accepted.</source>
        <translation>El plan cambió desde que se aceptó.</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Deshacer</translation>
    </message>
    <message>
        <source>Nothing to undo yet.</source>
        <translation>Aún no hay nada que deshacer.</translation>
    </message>
    <message>
        <source>T&amp;oday</source>
        <translation>H&amp;oy</translation>
    </message>
    <message>
        <source>The next working day</source>
        <translation>El día de trabajo siguiente</translation>
    </message>
    <message>
        <source>The next working day (Alt+Page Down)</source>
        <translation>El día de trabajo siguiente (Alt+Av Pág)</translation>
    </message>
    <message>
        <source>Print the &amp;week</source>
        <translation>&amp;Imprimir la semana</translation>
    </message>
    <message>
        <source>The plan is being made.</source>
        <translation>Se está haciendo el plan.</translation>
    </message>
    <message>
        <source>Enter opens a job, the arrows go from job to job. Ctrl+Up and Ctrl+Down give it to another crew, as dragging it there does.</source>
        <translation>Intro abre un trabajo, las flechas van de uno a otro. Ctrl+Arriba y Ctrl+Abajo lo dan a otra cuadrilla, igual que arrastrarlo allí.</translation>
    </message>
    <message>
        <source>No crews yet. A crew is people who go to a job together.</source>
        <translation>Aún no hay cuadrillas. Una cuadrilla es gente que va junta a un trabajo.</translation>
    </message>
    <message>
        <source>With their names and numbers, the day&apos;s work is shared out here each morning.</source>
        <translation>Con sus nombres y su número, aquí se reparte el trabajo cada mañana.</translation>
    </message>
    <message>
        <source>Open the &amp;settings</source>
        <translation>Abrir los a&amp;justes</translation>
    </message>
    <message>
        <source>Enter hour&amp;s…</source>
        <translation>Anotar hora&amp;s…</translation>
    </message>
    <message>
        <source>Accep&amp;t the change</source>
        <translation>&amp;Aceptar el cambio</translation>
    </message>
    <message>
        <source>Accep&amp;t this plan</source>
        <translation>&amp;Aceptar este plan</translation>
    </message>
    <message>
        <source>The day before</source>
        <translation>El día anterior</translation>
    </message>
    <message>
        <source>The working day before; before today, what was planned and done (Alt+Page Up)</source>
        <translation>El día de trabajo anterior; antes de hoy, lo planeado y lo hecho (Alt+Re Pág)</translation>
    </message>
    <message>
        <source>Accept the morning&apos;s plan (Ctrl+Enter)</source>
        <translation>Aceptar el plan de la mañana (Ctrl+Intro)</translation>
    </message>
</context>
<context>
    <name>topwire::TodaySide</name>
    <message>
        <source>At risk</source>
        <translation>En riesgo</translation>
    </message>
    <message>
        <source>Keep out</source>
        <translation>No entrar</translation>
    </message>
    <message>
        <source>As it was planned last</source>
        <translation>Lo planeado la última vez</translation>
    </message>
    <message>
        <source>The whole plan</source>
        <translation>El plan entero</translation>
    </message>
    <message>
        <source>Not in the plan</source>
        <translation>Fuera del plan</translation>
    </message>
    <message>
        <source>One more worker-hour, day by day</source>
        <translation>Una hora de trabajo más, día a día</translation>
    </message>
    <message>
        <source>What waits</source>
        <translation>Lo que espera</translation>
    </message>
    <message>
        <source>In past years&apos; weather</source>
        <translation>Con el tiempo de años pasados</translation>
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
<context>
    <name>topwire::WhatIfCard</name>
    <message>
        <source>Done past its closing</source>
        <translation>Hecho después de su cierre</translation>
    </message>
    <message>
        <source>Never done while of use</source>
        <translation>Sin hacer mientras servía</translation>
    </message>
    <message>
        <source>Windows missed, wholly or in part</source>
        <translation>Plazos no cumplidos, del todo o en parte</translation>
    </message>
    <message>
        <source>Cost of lateness, in hours of work</source>
        <translation>Costo del retraso, en horas de trabajo</translation>
    </message>
    <message>
        <source>As it is &amp;known</source>
        <translation>&amp;Como se sabe</translation>
    </message>
    <message>
        <source>No&amp;body can work</source>
        <translation>&amp;Nadie puede trabajar</translation>
    </message>
    <message>
        <source>What if</source>
        <translation>Qué pasaría</translation>
    </message>
    <message>
        <source>&amp;Two more people</source>
        <translation>&amp;Dos personas más</translation>
    </message>
    <message>
        <source>A rainy f&amp;ortnight</source>
        <translation>Dos semanas de &amp;lluvia</translation>
    </message>
    <message>
        <source>A &amp;late spring</source>
        <translation>Primavera &amp;tardía</translation>
    </message>
    <message>
        <source>&amp;More people, for any work</source>
        <translation>&amp;Más gente, para cualquier trabajo</translation>
    </message>
    <message>
        <source>&amp;Stages not seen yet: days later</source>
        <translation>Eta&amp;pas aún no vistas: días después</translation>
    </message>
    <message>
        <source>F&amp;rom</source>
        <translation>De&amp;sde</translation>
    </message>
    <message>
        <source>&amp;Until</source>
        <translation>&amp;Hasta</translation>
    </message>
    <message>
        <source>as known</source>
        <translation>según se sabe</translation>
    </message>
    <message>
        <source>as supposed</source>
        <translation>según se supone</translation>
    </message>
    <message>
        <source>As supposed · planning…</source>
        <translation>Según se supone · planeando…</translation>
    </message>
    <message>
        <source>As supposed</source>
        <translation>Según se supone</translation>
    </message>
    <message>
        <source>Planning…</source>
        <translation>Planeando…</translation>
    </message>
    <message>
        <source>Choose more people, days lost or a later spring, and the two stand here side by side.</source>
        <translation>Elija más gente, días perdidos o una primavera más tardía, y los dos estarán aquí lado a lado.</translation>
    </message>
</context>
<context>
    <name>topwire::WordsField</name>
    <message>
        <source>in English</source>
        <translation>en inglés</translation>
    </message>
    <message>
        <source>in Spanish</source>
        <translation>en español</translation>
    </message>
</context>
<context>
    <name>topwire::WorkingDayCard</name>
    <message>
        <source>Save w&amp;orking day</source>
        <translation>Guardar la j&amp;ornada</translation>
    </message>
    <message>
        <source>The working day</source>
        <translation>La jornada</translation>
    </message>
    <message>
        <source>&amp;Days worked</source>
        <translation>&amp;Días de trabajo</translation>
    </message>
    <message>
        <source>Holidays and days lost to weather are said on the day</source>
        <translation>Los feriados y los días perdidos por el tiempo se dicen cada día</translation>
    </message>
    <message>
        <source>Wor&amp;k begins at</source>
        <translation>El trabajo &amp;empieza a las</translation>
    </message>
    <message>
        <source>Such as 06:30</source>
        <translation>Por ejemplo 06:30</translation>
    </message>
    <message>
        <source>Workers in a group, at most</source>
        <translation>Trabajadores por grupo, como máximo</translation>
    </message>
    <message>
        <source>Larger crews are split for planning</source>
        <translation>Las cuadrillas más grandes se dividen al planear</translation>
    </message>
    <message>
        <source>&amp;Minutes to another block</source>
        <translation>&amp;Minutos hasta otro cuadro</translation>
    </message>
    <message>
        <source>To go there and set up</source>
        <translation>Para ir y prepararse</translation>
    </message>
    <message>
        <source>And for each kilometre</source>
        <translation>Y por cada kilómetro</translation>
    </message>
    <message>
        <source>Where both blocks have coordinates</source>
        <translation>Si los dos cuadros tienen coordenadas</translation>
    </message>
    <message>
        <source>Keep crews toget&amp;her, percent</source>
        <translation>Mantener jun&amp;tas las cuadrillas, por ciento</translation>
    </message>
    <message>
        <source>Higher: they finish a block before they move on</source>
        <translation>Más alto: terminan un cuadro antes de pasar a otro</translation>
    </message>
</context>
<context>
    <name>topwire::WorthStrip</name>
    <message>
        <source>What one more worker-hour is worth, day by day</source>
        <translation>Lo que vale una hora de trabajo más, día a día</translation>
    </message>
</context>
</TS>
