## La pantalla Imprimir del maestro.
tab-print = Imprimir
print-title = Imprimir
print-words = Las hojas, las tablas y los informes son PDF en blanco y negro que guardas e imprimes. En una hoja, tus ejercicios se alternan con otros nuevos.
print-what = Qué imprimir
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
print-save = Guardar como PDF
print-saved = Se guardó { $file }. { $place }
print-not-saved = No se guardó nada.
print-fault-concepts = Elige al menos un concepto.
print-fault-count = Elige de 1 a { $most } ejercicios.
print-student = Estudiante
print-day = Para
print-day-today = Hoy
print-day-next = El siguiente día de clase
print-day-other = Otro día
print-day-date = Día
print-other-numbers = Otros números
print-exercise = Ejercicio { $number }
print-answer = Respuesta:
print-section-sheet = Hoja de práctica
print-section-seat-sheet = Hoja para un estudiante
print-section-warm-up = Calentamiento
print-halves = Dos medias hojas por página, para cortar
print-section-chart = Tabla de autoevaluación
print-section-report = Informes
print-section-table = Tablas
print-preview-language = Aquí los ejercicios se muestran en { $shown }. El archivo los tiene en { $file }.
print-all-students = Todos los estudiantes
print-without-font = Ninguna fuente de esta computadora tiene algunos signos de { $words }: { $signs }. Se imprimen como signos de interrogación.
print-section-slips = Papeles para unirse
print-report = Informe
print-group = Grupo
print-group-line = { $slot }: { $concept }
print-group-none = Todavía no se ha guardado ningún grupo. Fórmalos en Grupos y guárdalos.
print-will-seat-sheet = Hasta { $concepts } conceptos, { $exercises ->
    [one] { $exercises } ejercicio
   *[other] { $exercises } ejercicios
} de cada uno con números nuevos. { $paper }, { $language }.
print-will-report = Como se ve abajo. { $paper }, { $language }.
print-will-file = Un solo archivo. { $paper }, { $language }.
print-will-table = Las palabras: { $language }.
print-save-table = Guardar la tabla
