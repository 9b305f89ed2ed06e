## La pantalla Imprimir del maestro.
tab-print = Imprimir
print-title = Imprimir
print-words = Las hojas, las tablas y los informes son PDF en blanco y negro que guardas e imprimes. En una hoja, tus ejercicios se alternan con otros nuevos.
print-what = Qué imprimir
print-sheet = Hoja de práctica
print-chart = Tabla de autoevaluación
print-slips = Papeles para unirse
print-slips-words = Los papeles con el código de cada estudiante están junto al paquete de clase.
print-slips-open = Ir al paquete de clase
print-chart-words = Todos los conceptos de la rotación, con lugar para un número del 0 al 3 en cada vuelta. Para estudiantes sin dispositivo; los números se anotan en la pantalla de anotar.
print-level = Nivel
print-level-1 = Primeros pasos
print-level-2 = Lo que pide el grado
print-level-3 = Un reto
print-count = Ejercicios de cada uno
print-key = Con las respuestas, en una página aparte
print-language = Idioma de la hoja
print-room = Espacio
print-roomy = Con lugar para trabajar
print-compact = Compacto, para ahorrar papel
print-will-sheet = { $concepts ->
    [one] { $concepts } concepto
   *[other] { $concepts } conceptos
}, { $exercises ->
    [one] { $exercises } ejercicio
   *[other] { $exercises } ejercicios
} con números nuevos. { $paper }, { $language }.
print-will-chart = Una tabla por cada día de la rotación. { $paper }, { $language }.
print-save = Guardar como PDF
print-saved = Se guardó { $file }. { $place }
print-not-saved = No se guardó nada.
print-fault-concepts = Elige al menos un concepto.
print-fault-count = Elige de 1 a { $most } ejercicios.
print-seat-sheet = Hoja para un estudiante
print-seat-sheet-words = Hasta seis conceptos para un estudiante: primero lo que asignaste, luego lo que más falta según los informes. Para quien no tiene dispositivo o prefiere escribir.
print-student = Estudiante
print-other-numbers = Otros números
print-exercise = Ejercicio { $number }
print-answer = Respuesta:
print-everyone = Todos los que han informado, una página cada uno
print-reports = Informes
print-tables = Tablas
print-tables-words = Para hojas de cálculo, sin nombres. Los números pequeños pueden señalar a un estudiante: para la escuela, usa la tabla de la clase en Informes.
print-table-workbook = Libro (XLSX)
print-table-board-csv = Tablero (CSV)
print-table-summary-csv = Resumen de la clase (CSV)
print-report = Informe
print-report-family = Página para la familia
print-report-family-words = Una página con palabras sencillas para la familia de un estudiante. No aparece ningún otro estudiante.
print-report-conference = Página para hablar con un estudiante
print-report-conference-words = Valoraciones, resultados, práctica y lo que viste, con espacio para lo que acuerden.
print-report-group = Grupo pequeño
print-report-group-words = Una página para un grupo pequeño: quiénes, qué sale mal, ejercicios y qué resultó.
print-report-talk = La charla de hoy
print-report-talk-words = Los conceptos que merecen los pocos minutos, cada uno con un ejercicio y el error frecuente. Sin nombres.
print-report-class-summary = Resumen de la clase
print-report-class-summary-words = Cada concepto con su estimación, las valoraciones y la práctica. Para los docentes de esta clase.
print-report-share-safe = Tabla de la clase para la escuela
print-report-share-safe-words = Partes sin nombres, con los grupos pequeños reservados y comprobados. Se anota cada tabla guardada, porque dos tablas de casi la misma clase pueden revelar lo que dijo un estudiante.
print-group = Grupo
print-group-line = { $slot }: { $concept }
print-group-none = Todavía no se ha guardado ningún grupo. Fórmalos en Grupos y guárdalos.
print-will-seat-sheet = Hasta { $concepts } conceptos, { $exercises ->
    [one] { $exercises } ejercicio
   *[other] { $exercises } ejercicios
} de cada uno con números nuevos. { $paper }, { $language }.
print-will-report = Como se ve abajo. { $paper }, { $language }.
print-will-table = Las palabras: { $language }.
print-save-table = Guardar la tabla
