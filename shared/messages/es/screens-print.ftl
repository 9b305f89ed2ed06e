## La pantalla Imprimir del maestro.
tab-print = Imprimir
print-title = Imprimir
print-words = Todo se guarda como PDF en blanco y negro, para mirarlo e imprimirlo.
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
print-fault-count = Elige de 1 a 20 ejercicios.
