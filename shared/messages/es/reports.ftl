## Palabras en las páginas impresas.
report-page = Página { $page } de { $pages }
report-practice = Práctica
report-name = Nombre
report-date = Fecha
report-number = N.º
report-answer = Respuesta
report-key = Respuestas: { $title }
report-remainder = residuo
report-fill-boxes = Escribe los números en los cuadros.
report-write-sign = Escribe <, = o > en el círculo.
report-order = Numéralos del 1 al { $count }. El 1 es para: { $first }. El { $count } es para: { $last }.
report-mark-line = Marca el punto en la recta numérica.
report-draw-line = Dibújalo en la recta numérica.
report-mark-grid = Marca el punto en la cuadrícula.
report-draw-side = Dibuja el otro lado del ángulo.
report-shade = Sombrea las partes.
report-draw-graph = Dibuja la gráfica.
report-draw-squares = Sombrea los cuadrados.

## El calentamiento.
report-warm-up = Calentamiento

## Tablas de autoevaluación.
report-day-chart = Tabla de la clase: día { $day }
report-day-chart-how = Para cada concepto, escriba cuánta seguridad tiene el estudiante, del 0 al 3. Una palomita quiere decir bien; una cruz, mal. Los estudiantes están en el orden de la pantalla de anotar.
report-day-chart-summary = Estudiantes y conceptos del día
report-chart = Mis autoevaluaciones
report-chart-how = Después del repaso, escribe cuánta seguridad tienes.
report-chart-more = Las vueltas { $from } a { $to } siguen en hojas aparte.
report-chart-summary = Autoevaluaciones por vuelta: { $day }
report-own-view = Es tu propia opinión. No es una calificación.
report-day = Día { $day }
report-concept = Concepto

## Fechas y frases en los informes.
report-on = { $day } de { $month } de { $year }
report-month-1 = enero
report-month-2 = febrero
report-month-3 = marzo
report-month-4 = abril
report-month-5 = mayo
report-month-6 = junio
report-month-7 = julio
report-month-8 = agosto
report-month-9 = septiembre
report-month-10 = octubre
report-month-11 = noviembre
report-month-12 = diciembre
report-seat = Asiento { $seat }
report-slips = Papeles para unirse
report-total = Total
report-withheld = reservado
report-whole-class = Toda la clase
report-has-it = Lo domina
report-needs-more = Necesita más
report-misconceptions = Errores frecuentes
report-misconception-other = Otro error
report-answers = { $count ->
    [one] { $count } respuesta
   *[other] { $count } respuestas
}
report-exercises = Ejercicios
report-no-reports = Todavía no hay ningún informe.
report-caution = Una valoración es la opinión del propio estudiante. No es una calificación ni un diagnóstico.
report-trend-rising = sube
report-trend-falling = baja
report-trend-maybe-rising = quizá sube
report-trend-maybe-falling = quizá baja
report-trend-no-clear-change = sin cambio claro
report-trend-too-soon = aún es pronto
report-calibration-over = Más seguro de lo que muestran los resultados.
report-calibration-under = Menos seguro de lo que muestran los resultados.
report-calibration-near = Su seguridad encaja con los resultados.
report-calibration-unclear = Todavía no está claro.
report-calibration-too-little = Muy poco para saber.
report-col-rating = Última valoración
report-col-result = Resultado
report-col-practice = Solo / con ayuda / mal
report-col-seen = Vio el docente
report-col-likely = Quizá lo domina
report-col-days = Hace días
report-col-share = Parte que lo domina
report-col-trend = Tendencia
report-col-strand = Área
report-col-class = Clase
report-col-phase = Fase
report-col-raters = Estudiantes que valoran
report-col-low = Todavía no o con ayuda
report-col-high = Por mi cuenta o Podría enseñarlo

## La página para la familia.
report-family-title = Cómo le va a { $name } en matemáticas
report-family-title-no-name = Cómo le va a su hijo o hija en matemáticas
report-family-what = Cada clase de matemáticas empieza con un repaso corto. Después, los estudiantes dicen qué tan seguros se sienten. Esta página muestra la última respuesta que eligió su hijo o hija.
report-family-well = Lo que va bien
report-family-well-none = Todavía no hay nada en esta lista. Hacen falta unas semanas.
report-family-time = Lo que necesita más tiempo
report-family-time-none = Últimamente no marcó nada como «Todavía no» o «Con ayuda».
report-family-practice = Práctica en casa
report-family-practice-none = Todavía no se ha entregado práctica.
report-family-help = Cómo puede ayudar
report-family-help-1 = Pregunte: «¿Qué me puedes mostrar hoy?». Deje que hable su hijo o hija.
report-family-help-2 = Bastan de cinco a quince minutos, algunas noches.
report-family-help-3 = Cuando algo cuesta, «todavía no» es una buena respuesta. Cuénteselo al docente.
report-family-try = Algo para probar en casa
report-family-try-place-value = Busquen un número largo en un recibo o en una caja. Pida a su hijo o hija que lo lea en voz alta. ¿Qué cifra vale más?
report-family-try-addition-subtraction = Elijan dos cosas en una tienda. ¿Cuánto cuestan juntas, más o menos? Primero adivinen; después sumen los precios.
report-family-try-multiplication = Pongan cucharas, frijoles o monedas en filas iguales. ¿Cuántas hay? ¿Se pueden hacer otras filas iguales?
report-family-try-fractions = Doblen una hoja en partes iguales, o corten pan. ¿Qué fracción es una parte? ¿Y tres partes?
report-family-try-decimals = Comparen dos precios. ¿Cuál es mayor, y por cuánto? Deje que su hijo o hija explique cómo se sabe.
report-family-try-measurement = Adivinen cuánto mide una mesa, o cuánto se tarda en lavar los platos. Después midan. ¿Estuvieron cerca?
report-family-try-geometry = Busquen figuras en un cuarto. ¿Qué lados son paralelos? ¿Dónde hay ángulos rectos? Deje que su hijo o hija los muestre.
report-family-try-data = Cuenten algo juntos unos días: pájaros, autos. Deje que su hijo o hija dibuje una gráfica y diga qué muestra.
report-family-try-statistics = Pregunten a cinco personas cuántos libros leyeron el mes pasado. ¿Qué es lo común, y qué tan distintas son las respuestas?
report-family-try-expressions = Piense un número, multiplíquelo por dos, sume tres y diga el resultado. ¿Puede su hijo o hija encontrar el número? Después, al revés.
report-family-try-number-system = Busquen el lugar más frío y el más cálido de hoy. ¿Cuántos grados hay entre los dos?
report-family-try-ratio = Tomen una receta para dos. ¿Cuánto de cada cosa hace falta para cuatro, o para seis? Si pueden, cocínenla.
report-family-note = Del docente
report-family-caution = Después del repaso, su hijo o hija elige una de cuatro respuestas con un toque. Es su propia opinión. No es una calificación ni un diagnóstico. Si tiene preguntas, hable con el docente.

## La página de lo enseñado de nuevo.
report-taught-title = Lo enseñado de nuevo
report-taught-title-of = Lo que se intentó con { $name }
report-taught-none = No hay nada anotado como enseñado de nuevo.
report-taught-date = Día
report-taught-whom = Con quién
report-taught-did = Qué se hizo
report-taught-came = Qué resultó

## La página para la charla.
report-conference-title = Charla con { $name }
report-conference-title-seat = Charla con el asiento { $seat }
report-conference-what = Cómo leer los números:
report-conference-practice = Práctica { $shown } es: { $alone } bien sin ayuda, { $helped } bien con ayuda, { $wrong } mal.
report-conference-likely = Quizá lo domina, { $shown }: de 100 estudiantes con informes como estos, unos { $count } pueden hacerlo sin ayuda. Es una estimación, no una nota.
report-conference-days = «Hace días» cuenta desde el último informe hasta hoy.
report-conference-needed = Lo más necesario
report-conference-no-need = Nada destaca: ningún concepto necesita más trabajo ahora.
report-conference-best = Lo que mejor está
report-conference-believe = Cuánto encajan las valoraciones con los resultados
report-conference-agreed = En qué quedamos

## El resumen de la clase.
report-summary-title = Resumen de la clase
report-summary-range = La parte que lo domina es una estimación; entre paréntesis, el intervalo probable. Primero lo más débil.
report-summary-caution = Para los docentes de esta clase. Los números pequeños pueden señalar a un estudiante: la escuela recibe «Tabla de la clase para la escuela». Una valoración es la opinión del estudiante, no una calificación ni un diagnóstico.

## La tabla segura para compartir.
report-share-title = Tabla de la clase para la escuela
report-share-what = De los estudiantes que valoraron, cuántos marcaron por última vez «Todavía no» o «Con ayuda». Solo conceptos ya enseñados.
report-share-nothing = No se puede mostrar nada: valoraron menos de { $least } estudiantes, o quedarían muy pocos números posibles.
report-share-rules = Cómo se hizo
report-share-rule-group = Se reservan los grupos de menos de { $least } estudiantes. En esta tabla no hay nombres ni asientos.
report-share-rule-further = Se reservan más números, para que los totales no revelen los pequeños.
report-share-rule-bands = Cada parte se muestra como un intervalo, para que ninguna parte pueda querer decir nadie o todos.

## La página del grupo.
report-group-title = Grupo pequeño: { $concept }
report-group-members = Estudiantes del grupo
report-group-who = Estudiante
report-group-first = Mirar primero
report-group-noticed = Lo que notamos

## El plan de la charla.
report-talk-title = La charla de hoy
report-talk-none = Hoy ningún concepto necesita los pocos minutos.
report-talk-teach-again = Enseñarlo de nuevo
report-talk-pair-talk = Explicarlo en parejas
report-talk-short-look = Mirarlo juntos un momento
report-talk-other = También en el repaso de hoy
report-substitute-title = Para quien sustituye
report-substitute-day = Día { $day } de la rotación. Después del repaso, estos conceptos son los del día. Los que llevan minutos merecen unas palabras con toda la clase.
report-substitute-no-day = No hay ningún día de clase en el plan.
report-substitute-groups = Grupos pequeños
report-substitute-no-groups = No hay grupos previstos. Toda la clase puede trabajar junta.
report-substitute-kept = Como se guardaron el { $date }:
report-substitute-group = { $slot }. { $concept }: { $who }
report-substitute-tablets = Tabletas y computadoras
report-substitute-rate = Después del repaso, cada estudiante abre Surefoot y toca, en cada concepto, su confianza y cómo le fue.
report-substitute-practise = Quien termina puede abrir Práctica. El programa elige los ejercicios y se detiene solo.
report-substitute-hand-in = Al final, Entregar hace un archivo. Va adonde va todos los días. Nadie tiene que abrirlo hoy.
report-substitute-folder = Al final no hay que entregar nada. Las tabletas lo hacen solas.
report-substitute-pin = Si alguien olvidó el PIN o el código, vale el papel. Por favor, no cambie los ajustes.
report-substitute-none = Sin tableta: escriba en una hoja el nombre o el número de asiento de cada estudiante y, en cada concepto, la respuesta de 0 (Todavía no) a 3 (Podría enseñarlo).
report-substitute-projector = En la computadora de la maestra o del maestro: Mostrar el repaso de hoy, debajo de la frase secreta, pone los ejercicios del día en el proyector.
report-substitute-caution = Lo que los estudiantes dicen de sí mismos es su propia opinión y no una nota. Esta página lleva nombres: déjela en el cajón de la maestra o del maestro.
report-substitute-caution-seats = Lo que los estudiantes dicen de sí mismos es su propia opinión y no una nota. En esta página no hay nombres.
report-substitute-next = El siguiente día de clase, { $date }
report-substitute-noticed = Lo que conviene saber después:

## Mi camino.
report-path = Mi camino
report-path-how = Una columna por cada vuelta. Práctica: bien sin ayuda, de todas las respuestas.
report-path-practice = Práctica
report-path-goals = Mis metas
report-path-goal = · { $goal }
report-path-goal-reached = · Lograda: { $goal }

## Tablas para otros programas.
report-grid-board = Tablero
report-grid-summary = Resumen de la clase
report-grid-id = Id del concepto
report-grid-grade = Grado
report-grid-day = Día de la rotación
report-grid-rank = Puesto
report-grid-share = Parte que lo domina
report-grid-low = Intervalo probable, mínimo
report-grid-high = Intervalo probable, máximo
report-grid-alone = Práctica: sin ayuda
report-grid-helped = Práctica: con ayuda
report-grid-wrong = Práctica: mal
report-grid-rated = Vuelta { $pass }: valoraron
report-grid-needs = Vuelta { $pass }: necesitan ayuda

report-family-practised = { $count ->
    [one] { $count } ejercicio hasta hoy: { $alone } bien sin ayuda, { $helped } bien con ayuda, { $wrong } todavía no.
   *[other] { $count } ejercicios hasta hoy: { $alone } bien sin ayuda, { $helped } bien con ayuda, { $wrong } todavía no.
}
report-conference-answers = { $count ->
    [one] { $verdict } ({ $count } respuesta con una valoración antes)
   *[other] { $verdict } ({ $count } respuestas con una valoración antes)
}
report-summary-what = { $reporting } de { $seats } estudiantes han entregado.
report-summary-other = { $count ->
    [one] { $count } concepto todavía no se ha enseñado o no tiene informes.
   *[other] { $count } conceptos todavía no se han enseñado o no tienen informes.
}
report-share-audit = { $withheld ->
    [0] No se reserva nada. De un número protegido quedan al menos { $possible } valores posibles.
    [one] Se reserva { $withheld } dato. Comprobado: de un número protegido quedan al menos { $possible } valores posibles para quien lea toda esta tabla.
   *[other] Se reservan { $withheld } datos. Comprobado: de un número protegido quedan al menos { $possible } valores posibles para quien lea toda esta tabla.
}
report-talk-way = { $minutes ->
    [one] { $way }: { $minutes } minuto.
   *[other] { $way }: { $minutes } minutos.
}
report-path-counts = { $rated ->
    [one] { $rated } valoración
   *[other] { $rated } valoraciones
} y { $practised ->
    [one] { $practised } ejercicio
   *[other] { $practised } ejercicios
} este año.
report-share-too-few-changed = { $rows ->
    [one] Esta tabla no se puede entregar. Desde una tabla anterior, menos de { $least } estudiantes valoraron de nuevo en su { $rows } fila, o casi todos cambiaron igual. Las dos tablas juntas podrían revelar lo que valoraron. Espera a que al menos { $least } estudiantes la hayan valorado otro día.
   *[other] Esta tabla no se puede entregar. Desde una tabla anterior, menos de { $least } estudiantes valoraron de nuevo en cada una de { $rows } filas, o casi todos cambiaron igual. Las tablas juntas podrían revelar lo que valoraron. Espera a que al menos { $least } estudiantes hayan valorado el concepto otro día.
}
report-share-unchanged = { $rows ->
    [one] Se retiene { $rows } fila: desde una tabla anterior menos de { $least } estudiantes la valoraron de nuevo, o casi todos cambiaron igual. Vuelve cuando más la hayan valorado otro día.
   *[other] Se retienen { $rows } filas: desde una tabla anterior menos de { $least } estudiantes las valoraron de nuevo, o casi todos cambiaron igual. Vuelven cuando más las hayan valorado otro día.
}

## What can be printed: names and uses, in the order of the table of reports.
report-name-sheet = Hoja de práctica
report-about-sheet = Ejercicios con números nuevos de los conceptos que elijas.
report-name-seat-sheet = Hoja para un estudiante
report-about-seat-sheet = Hasta seis conceptos para un estudiante: primero lo que asignaste, luego lo que más falta según los informes. Para quien no tiene dispositivo o prefiere escribir.
report-name-warm-up = Calentamiento
report-about-warm-up = Un ejercicio nuevo de cada concepto de un día, para una clase sin repaso propio o un día en que falló. Los mismos ejercicios que en el proyector. Se cambian en Charla.
report-name-day-chart = Tabla de la clase de un día
report-about-day-chart = Todos los estudiantes con los conceptos de un día, en el orden de la pantalla de anotar, para escribir en ella y anotarla después rápido.
report-name-chart = Tabla de autoevaluación
report-about-chart = Todos los conceptos de la rotación, con lugar para un número del 0 al 3 en cada vuelta. Para estudiantes sin dispositivo; los números se anotan en la pantalla de anotar.
report-name-family = Página para la familia
report-about-family = Una página con palabras sencillas para la familia de un estudiante. No aparece ningún otro estudiante.
report-name-family-pages = Páginas para todas las familias
report-about-family-pages = Una página en palabras sencillas para la familia de cada estudiante que haya informado, en un solo archivo.
report-name-conference = Página para hablar con un estudiante
report-about-conference = Valoraciones, resultados, práctica y lo que viste, con espacio para lo que acuerden.
report-name-taught-again = Lo enseñado de nuevo
report-about-taught-again = Qué se intentó, con quién y qué resultó: de la clase, por concepto, o de un estudiante, para una charla.
report-name-group = Grupo pequeño
report-about-group = Una página para un grupo pequeño: quiénes, qué sale mal, ejercicios y qué resultó.
report-name-talk = La charla de hoy
report-about-talk = Los conceptos que merecen los pocos minutos, cada uno con un ejercicio y el error frecuente. Sin nombres.
report-name-substitute = Página para quien sustituye
report-about-substitute = Una hoja para quien sustituye: el día, sus conceptos, los últimos grupos guardados y qué hacer con las tabletas.
report-name-class-summary = Resumen de la clase
report-about-class-summary = Cada concepto con su estimación, las valoraciones y la práctica. Para los docentes de esta clase.
report-name-share-safe = Tabla de la clase para la escuela
report-about-share-safe = Partes sin nombres, con los grupos pequeños reservados y comprobados. Se anota cada tabla guardada. Una tabla posterior retiene cada fila en la que cambió muy poco, porque dos tablas juntas pueden revelar lo que dijo un estudiante.
report-name-workbook = Libro (XLSX)
report-about-workbook = Para hojas de cálculo, sin nombres. Los números pequeños pueden señalar a un estudiante: para la escuela, usa la tabla de la clase en Informes.
report-name-board-csv = Tablero (CSV)
report-about-board-csv = Para hojas de cálculo, sin nombres. Los números pequeños pueden señalar a un estudiante: para la escuela, usa la tabla de la clase en Informes.
report-name-summary-csv = Resumen de la clase (CSV)
report-about-summary-csv = Para hojas de cálculo, sin nombres. Los números pequeños pueden señalar a un estudiante: para la escuela, usa la tabla de la clase en Informes.
report-name-slips = Papeles para unirse
report-about-slips = Un papel con un código para cada estudiante, para recortar. Con el paquete de la clase, sirve para unirse.
