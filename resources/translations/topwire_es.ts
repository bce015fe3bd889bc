<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es">
<context>
    <name>File</name>
    <message>
        <source>%1 is missing from the program. Install it again.</source>
        <translation>Falta %1 en el programa. Vuelva a instalarlo.</translation>
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
    <name>Print</name>
    <message>
        <source>The sheet was not printed: the printer did not take it. Check that it is switched on and has paper, then print again.</source>
        <translation>La hoja no se imprimió: la impresora no la aceptó. Revise que esté encendida y tenga papel, y vuelva a imprimir.</translation>
    </message>
    <message>
        <source>The sheet was not written to %1. Choose a folder that can be written to and has room.</source>
        <translation>La hoja no se guardó en %1. Elija una carpeta en la que se pueda escribir y que tenga espacio.</translation>
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
</TS>
