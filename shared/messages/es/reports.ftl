## Palabras en las páginas impresas.
report-page = Página { $page } de { $pages }
report-practice = Práctica
report-name = Nombre
report-date = Fecha
report-number = N.º
report-answer = Respuesta
report-key = Respuestas: { $title }
report-remainder = residuo
report-write-sign = Escribe <, = o > en el círculo.
report-order = Numéralos del 1 al { $count }. El 1 es para: { $first }. El { $count } es para: { $last }.
report-mark-line = Marca el punto en la recta numérica.
report-draw-line = Dibújalo en la recta numérica.
report-mark-grid = Marca el punto en la cuadrícula.
report-draw-side = Dibuja el otro lado del ángulo.
report-shade = Sombrea las partes.
report-draw-graph = Dibuja la gráfica.
report-draw-squares = Sombrea los cuadrados.

## Tablas de autoevaluación.
report-chart = Mis autoevaluaciones
report-chart-how = Después del repaso, escribe qué tan seguro te sientes.
report-chart-summary = Autoevaluaciones por vuelta: { $day }
report-own-view = Es tu propia opinión. No es una calificación.
report-day = Día { $day }
report-concept = Concepto
