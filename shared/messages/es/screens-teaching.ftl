## The screens a teacher works with in class: talk, groups, entering a day,
## ratings beside results.
tab-talk = Charla
tab-groups = Grupos
tab-enter = Anotar

## The board for a group, and its second part
board-parts = Partes del tablero
board-part-board = Conceptos
board-part-compare = Valoraciones y resultados
board-group-all = Toda la clase · elegir un grupo …
board-group-some = { $count ->
    [one] Solo { $count } estudiante: { $who }
   *[other] Solo { $count } estudiantes: { $who }
}
board-group-kept = { $date }: { $concept }
board-group-clear = Toda la clase
concept-pass = { $count ->
    [0] Vuelta { $pass }: nadie valoró
    [one] Vuelta { $pass }: valoró { $count } estudiante
   *[other] Vuelta { $pass }: valoraron { $count } estudiantes
}
concept-pass-all = Cerrar esta vuelta
concept-seen = viste:

## Ratings beside results
compare-title = Valoraciones y resultados
compare-lead = Donde las valoraciones y los resultados de un estudiante no encajan, una charla corta ayuda.
compare-empty-title = Aquí se compararán valoraciones y resultados
compare-empty-words = Cuando los estudiantes hayan valorado conceptos y los hayan marcado o practicado, aquí se ve dónde los resultados contradicen las valoraciones.
compare-contradicted = Valoraciones que los resultados contradicen
compare-by = Orden de la lista
compare-by-concept = Por concepto
compare-by-student = Por estudiante
compare-since-words = Contado desde la última valoración, si un tipo de respuesta va por delante y se dio al menos dos veces. Con ayuda cuenta como incorrecto.
compare-none = Por ahora no hay valoraciones contradichas.
compare-concept-sure = { $count ->
    [one] Un estudiante dice que lo sabe y le sale mal
   *[other] { $count } estudiantes dicen que lo saben y les sale mal
}
compare-concept-unsure = { $count ->
    [one] Un estudiante puede hacerlo y no se fía
   *[other] { $count } estudiantes pueden hacerlo y no se fían
}
compare-student-sure = Dice que lo sabe y le sale mal: { $concepts }.
compare-student-unsure = Puede hacerlo y no se fía: { $concepts }.
compare-student-over = En todas las respuestas del año: dice que lo sabe más veces de las que acierta.
compare-student-under = En todas las respuestas del año: puede más de lo que dicen las valoraciones.
compare-statistics = Las estadísticas y lo que significan
compare-means-bias = Pronóstico menos resultado dice cuántas respuestas de cada 100 prometen las valoraciones de más. Cerca de 0 es lo mejor.
compare-means-gamma = Gamma dice si las respuestas más seguras fueron correctas más a menudo: 1 siempre, 0 no más que por azar.
compare-means-brier = El índice de Brier dice a qué distancia están las valoraciones de lo que salió: 0 es perfecto, { $half } no es mejor que decir siempre la mitad.
compare-since = { $right } bien, { $wrong } mal
compare-more = Mostrar los { $count }
compare-fewer = Mostrar menos
compare-misconceptions-left-out = { $count ->
    [one] Un error más raro no está en la lista.
   *[other] { $count } errores más raros no están en la lista.
}
compare-misconceptions = Errores frecuentes
compare-misconceptions-none = Aún no se ha reconocido ningún error en la práctica.
compare-students = Cuánto encajan las valoraciones de cada estudiante con los resultados
compare-students-words = Cada valoración se lee como un pronóstico de aciertos de 100: Todavía no 10, Con ayuda 40, Por mi cuenta 80, Podría enseñarlo 95. Desde 20 respuestas, pronóstico menos resultado se muestra con su margen del 95%. Desde 60 se muestra el índice de Brier: 0 con pronósticos perfectos, 1 con los peores. Es fiabilidad menos resolución más incertidumbre.
compare-col-verdict = En breve
compare-col-bias = Pronóstico menos resultado, de 100
compare-col-gamma = Cuanto más seguro, más aciertos (gamma)
compare-col-brier = Índice de Brier
compare-brier-parts = fiabilidad { $reliability }, resolución { $resolution }, incertidumbre { $uncertainty }
compare-col-answers = Respuestas
compare-bias = { $bias } (de { $low } a { $high })
compare-verdict-over = Más seguro de lo que muestran los resultados
compare-verdict-under = Menos seguro de lo que muestran los resultados
compare-verdict-near = Su seguridad encaja con los resultados
compare-verdict-unclear = Aún no está claro
compare-verdict-too-little = Muy poco para decir algo
compare-agreement = Tus observaciones junto a las valoraciones
compare-agreement-none = Ninguna de tus observaciones tiene aún una valoración de la misma vuelta.
compare-agreement-caption = Filas: la valoración del estudiante. Columnas: lo que viste en la misma vuelta.
compare-kappa = Kappa ponderada { $kappa } (error estándar { $error }) con { $pairs } pares: 0 es acuerdo por azar, 1 es acuerdo total.
compare-kappa-little = { $pairs ->
    [one] { $pairs } par hasta ahora. La kappa ponderada se muestra desde 10.
   *[other] { $pairs } pares hasta ahora. La kappa ponderada se muestra desde 10, y solo si hay diferencias.
}
compare-observe = Anotar observaciones
student-assign = { $count ->
    [0] Nada que asignar
    [one] Asignar práctica de { $count } concepto
   *[other] Asignar práctica de { $count } conceptos
}
student-back-concept = Concepto
student-bias = pronóstico menos resultado: { $bias } de 100 (de { $low } a { $high }), con { $answers } respuestas
student-answers = { $answers ->
    [one] { $answers } respuesta con valoración previa
   *[other] { $answers } respuestas con valoración previa
}
student-col-rating = Última valoración
student-col-result = Último resultado
student-col-seen = Viste
student-without = { $count ->
    [one] No hay informe de { $count } concepto más.
   *[other] No hay informe de { $count } conceptos más.
}

## Talk
talk-title = Charla
talk-today = Hoy es el día { $day } de la rotación.
talk-next = Hoy no hay clase. Esto es para el { $date }, día { $day }.
talk-second = Esto es para el { $date }, día { $day }.
talk-over = El año escolar terminó.
talk-days = Qué día de clase
talk-have = Minutos disponibles
talk-minutes = { $minutes } min
talk-chosen = { $count ->
    [one] Este merece los minutos ({ $minutes } min)
   *[other] Estos merecen los minutos ({ $minutes } min)
}
talk-none = Ningún concepto de hoy necesita los minutos más que el propio repaso.
talk-unknown = Aún no se puede decir nada: ningún concepto de este día se ha enseñado y tiene informes.
talk-others = Los demás conceptos del día
talk-empty-title = No hay conceptos en este día
talk-empty-words = El plan de charla toma los conceptos del repaso del día. Este día no tiene ninguno.
talk-way-teach-again = Enseñarlo de nuevo
talk-way-pair-talk = Explicarlo en parejas
talk-way-short-look = Un vistazo juntos
talk-why-wrong = { $count ->
    [0] Casi todos los presentes acertarían.
    [1] Fallaría más o menos 1 de los presentes.
   *[other] Fallarían más o menos { $count } de los presentes.
}
talk-why-sure = { $count ->
    [1] Más o menos 1 de ellos se siente seguro. Un error que sorprende se recuerda.
   *[other] Más o menos { $count } de ellos se sienten seguros. Un error que sorprende se recuerda.
}
talk-why-falling = Las valoraciones bajan.
talk-why-dependants = { $count ->
    [one] { $concepts } se apoya en él en los próximos diez días de clase.
   *[other] { $concepts } se apoyan en él en los próximos diez días de clase.
}
talk-why-misconception = Error más frecuente: { $misconception }.
talk-why-lately = Se habló de él en esta vuelta o en la anterior; por eso cuenta la mitad.
talk-why-preview = Aún no se ha enseñado: "Todavía no" es lo esperable.
talk-why-order = Aquí solo cuenta el orden según las valoraciones. Aún no se sabe cuántos lo dominan: deja que lo expliquen en parejas y escucha.
talk-why-no-report = Sin informe aún: pregunta antes a la clase.
talk-show = Mostrar en el proyector
talk-talked = Ya se habló
talk-foot = Supuesto: enseñar de nuevo corrige 45 de 100 errores, explicar en parejas 50, un vistazo 30. Con estos números, ninguna otra elección de dos conceptos como máximo logra más. El proyector no muestra nombres.
talk-foot-order = Hay muy pocos resultados y muy poca práctica para decir cuántos estudiantes dominan un concepto. El plan sigue solo el orden de los conceptos: primero los más flojos, dos minutos cada uno. El proyector no muestra ningún nombre.
talk-misconception = Alguien respondió
talk-misconception-ask = ¿Cómo podría alguien llegar a esta respuesta?
talk-answer = La respuesta
talk-steps = Paso a paso
talk-next-misconception = Un error frecuente
talk-next-answer = La respuesta
talk-next-steps = Paso a paso
talk-next-concept = Concepto siguiente
talk-place = { $at } de { $of }
talk-no-exercise = No hay ejercicio de este concepto. Toma uno del repaso.

## El calentamiento, en Charla.
warm-up-title = Calentamiento
warm-up-lead = Para una clase sin repaso propio, o un día en que falló: un ejercicio nuevo de cada concepto del día. En el proyector y en el papel son los mismos. La vuelta siguiente trae números nuevos.
warm-up-day = Día de clase
warm-up-today = Hoy
warm-up-show-one = Mostrar uno a uno
warm-up-show-all = Mostrar todos a la vez
warm-up-print = Imprimir
warm-up-enter = Anotar los resultados
warm-up-none = Este día no tiene conceptos.
warm-up-all-out = Todos los conceptos están fuera. Vuelve a poner uno para mostrarlo o imprimirlo.
warm-up-is-out = Fuera de este calentamiento.
warm-up-swap = Otro ejercicio
warm-up-swap-of = Otro ejercicio: { $title }
warm-up-out = Dejar fuera
warm-up-out-of = Dejar fuera: { $title }
warm-up-in = Volver a poner
warm-up-in-of = Volver a poner: { $title }
warm-up-which = Ejercicio
warm-up-usual = Uno del programa
warm-up-changed = El ejercicio cambió: { $title }
warm-up-left-out = Fuera del calentamiento: { $title }
warm-up-back = De nuevo en el calentamiento: { $title }
warm-up-show-answers = Mostrar las respuestas
warm-up-hide-answers = Ocultar las respuestas

## Groups
groups-title = Grupos
groups-lead = Quién ganaría más al sentarse junto a quién y con qué, entre los conceptos más débiles ya enseñados.
groups-empty-title = Aquí se propondrán grupos
groups-empty-words = Cuando haya entregas y un concepto se haya enseñado, Surefoot propone quién se sienta con quién y con qué.
groups-wishes = { $slots ->
    [one] { $slots } turno
   *[other] { $slots } turnos
}, hasta { $at_once } grupos a la vez, de { $least } a { $most } estudiantes, { $absent ->
    [0] nadie ausente
    [one] { $absent } ausente
   *[other] { $absent } ausentes
}
groups-slots = Turnos
groups-at-once = Grupos a la vez
groups-size-least = Mínimo por grupo
groups-size-most = Máximo por grupo
groups-fault-slots = Elige de 1 a 6 turnos.
groups-fault-at-once = Elige de 1 a 12 grupos a la vez.
groups-fault-size = Elige de 1 a 12 estudiantes, el mínimo no mayor que el máximo.
groups-absent = Ausentes hoy
groups-apart = Separar
groups-together = Juntar
groups-pair-first = Primer estudiante
groups-pair-second = Segundo estudiante
groups-pair-choose = Elige …
groups-pair-add = Agregar
groups-pair = { $first } y { $second }
groups-pair-remove = Quitar: { $pair }
groups-suggest = Proponer grupos
groups-suggest-anew = Proponer de nuevo
groups-first = Primero van los grupos de «{ $concept }».
groups-first-drop = Planear igual todos los conceptos
groups-shares = Mostrar qué tan probable es que cada uno lo domine
groups-shares-hide = Ocultar qué tan probable es
groups-keep = Guardar para hoy
groups-drop = Descartar la propuesta
groups-dropped = La propuesta se descartó.
groups-anew = Se propusieron grupos nuevos. Tus cambios a mano ya no están.
groups-pair-kept = { $pair }: anotado.
groups-pair-gone = { $pair }: ya no está anotado.
groups-kept = Los grupos quedan guardados para hoy. Después, anota quién lo domina.
groups-reached = { $placed } de { $need } estudiantes que necesitan un grupo tienen lugar.
groups-reached-order = { $placed } de los { $need } estudiantes con las valoraciones más bajas tienen lugar. Hay muy pocos resultados y muy poca práctica para decir quién necesita un grupo.
groups-best = Ningún otro plan con estos deseos es mejor: está demostrado.
groups-gap = A lo sumo a { $gap }% del mejor plan posible.
groups-rough = No se ha demostrado qué tan bueno es.
groups-proving = Comprobando hasta dónde se puede mejorar …
groups-breaks = { $count ->
    [one] Rompe una regla:
   *[other] Rompe { $count } reglas:
}
groups-none = Nadie necesita un grupo con estos deseos, o no se puede formar ninguno.
groups-slot = Turno { $slot }
groups-idle = { $count ->
    [one] { $count } estudiante sin grupo en este turno
   *[other] { $count } estudiantes sin grupo en este turno
}
groups-wants = necesita un grupo
groups-wants-order = entre las valoraciones más bajas
groups-unplaced = { $count ->
    [one] No se halló lugar para { $who }.
   *[other] No se halló lugar para { $who }.
}
groups-concept = Concepto del grupo
groups-page = Plan de una página
groups-move = Mover …
groups-move-of = Mover: { $name }
groups-move-to = Turno { $slot }: { $concept }
groups-move-out = Fuera del grupo
groups-move-new = Grupo nuevo en este turno sobre
groups-moved = Cambió de lugar: { $name }.
groups-worth-less = El plan ayuda { $percent }% menos que antes.
groups-worth-more = El plan ayuda { $percent }% más que antes.
groups-worth-same = El plan ayuda tanto como antes.
groups-concept-changed = Un grupo del turno { $slot } tiene otro concepto.
groups-broken-size = Turno { $slot }, { $concept }: { $count } estudiantes; se desean de { $least } a { $most }.
groups-broken-not-needed = { $who } no necesita { $concept }.
groups-broken-absent = { $who } está ausente hoy.
groups-broken-twice-in-slot = { $who } está en dos grupos en el turno { $slot }.
groups-broken-twice-on-concept = { $who } está dos veces en { $concept }.
groups-broken-apart = Deben estar separados: { $who }.
groups-broken-split = Deben estar juntos: { $who } (turno { $slot }).
groups-broken-too-many-groups = El turno { $slot } tiene más de { $at_once } grupos.
groups-broken-too-many-copies = El turno { $slot } tiene más de dos grupos sobre { $concept }.
groups-broken-no-such-slot = No hay turno { $slot } en los deseos.
groups-today = Grupos de hoy
groups-earlier = Grupos anteriores
groups-recorded = · { $done } de { $of } anotados
groups-record-words = Un toque por estudiante. La estimación lo cuenta como cuatro respuestas y anota el concepto como enseñado de nuevo. Otro toque quita lo anotado.
groups-record-of = Lo que resultó para { $name }
groups-has-it = Lo domina
groups-needs-more = Necesita más
groups-remove = Quitar estos grupos
groups-removed = Se quitaron los grupos. Lo anotado se conserva.
groups-page-members = Quién
groups-page-chance = · lo domina: { $share }
groups-page-first = Mirar esto primero
groups-page-lacking = { $count ->
    [one] Quizá le falta a { $who }.
   *[other] Quizá les falta a { $who }.
}
groups-page-look = En qué fijarse
groups-page-no-misconceptions = Aún no se ha reconocido ningún error de estos estudiantes en este concepto. Pídeles que expliquen sus pasos.
groups-page-exercises = Ejercicios, de los primeros pasos a un reto
groups-page-answer = Respuesta:
groups-page-misconception = Un error ({ $misconception }):

## Entering a day
enter-title = Anotar un día
enter-day = Día { $day } de la rotación
enter-no-school = Ese día no hay clase
enter-date = Ir a una fecha
enter-earlier = Día anterior
enter-later = Día siguiente
enter-empty-title = No hay conceptos en este día
enter-empty-words = Las hojas y las observaciones son de un día del repaso. Ve a un día de clase.
enter-modes = Qué se anota
enter-mode-rating = Valoraciones en papel
enter-mode-outcome = Resultados en papel
enter-mode-seen = Lo que vi
enter-tally = { $done } de { $all } casillas
enter-saving = · guardando …
enter-keys-rating = Las teclas 0 a 3 llenan una casilla y avanzan; las flechas mueven; Intro va al siguiente estudiante; Supr borra.
enter-keys-outcome = La tecla 1 es bien, 0 es mal, 2 es sin hacer; las flechas mueven; Intro va al siguiente estudiante; Supr borra.
enter-keys-seen = Las teclas 0 a 3 anotan lo que viste, en la escala de los estudiantes. Al lado está su valoración.
enter-foot-rating = Lo que está en cursiva viene de un dispositivo. El papel lo reemplaza; borra una casilla para verlo otra vez.
enter-foot-outcome = Lo que está en cursiva viene de un dispositivo. El papel lo reemplaza; borra una casilla para verlo otra vez.
enter-foot-seen = Las observaciones cuentan como resultados en la estimación: Por mi cuenta y Podría enseñarlo como bien, las demás como mal. "Valoraciones y resultados", en Tablero, muestra cómo coinciden con las valoraciones.
enter-grid = Estudiantes por conceptos
enter-pad = Llenar la casilla elegida
enter-clear = Borrar
enter-cell-empty = vacía
enter-cell-device = { $what }, del dispositivo
enter-cell-both = { $seen }; estudiante: { $own }
talk-marked = Anotado: ya se habló de { $title }.
talk-unmarked = Ya no está anotado que se habló de { $title }.
groups-record-kept = La anotación se guardó y cuenta desde ahora.
rotation-check-once = { $concepts } conceptos, cada uno en un solo día.
rotation-check-load = Carga: de { $least } a { $most } conceptos por día.
rotation-check-strands = Áreas: cada una está repartida por los días lo mejor posible.
rotation-check-strands-uneven = Áreas que se juntan en algunos días: { $strands }.
rotation-check-strand = { $strand } (de { $least } a { $most } por día)
rotation-balance = Repartir de nuevo por igual
rotation-balanced = Los conceptos están repartidos por igual en { $days } días.
pacing-title = Pegar una lista de ritmo
pacing-label = Lista de ritmo
pacing-hint = En cada línea un concepto y cuándo se enseña por primera vez. El concepto es su título o el código de un estándar; el momento es una fecha como 9/8, 8 sep o 14 de septiembre, una semana como Semana 3, o "el año pasado". Una fecha sola en una línea vale para las líneas de abajo. Ves lo que se entendió antes de tomarlo.
pacing-read = Revisar la lista
pacing-found = { $count ->
    [0] No se encontró ninguna primera lección.
    [one] Se encontró una primera lección. Aún no se cambia nada.
   *[other] Se encontraron { $count } primeras lecciones. Aún no se cambia nada.
}
pacing-missed = { $count ->
    [one] Una línea no se puede usar:
   *[other] { $count } líneas no se pueden usar:
}
pacing-before = (ahora { $date })
pacing-day-first = El día va primero: 9/8 es el nueve de agosto
pacing-last-year = (se enseñó el año pasado; cuenta desde el primer día)
pacing-near = { $count ->
    [one] Una línea se parece a un título. Elige qué significa:
   *[other] { $count } líneas se parecen a un título. Elige qué significa cada una:
}
pacing-near-none = Dejar fuera esta línea
pacing-no-such-concept = Ningún concepto se llama así ni de forma parecida.
pacing-not-in-rotation = Este concepto no está en la rotación. Agrégalo primero.
pacing-no-date = No hay fecha en la línea ni arriba.
pacing-outside-year = La fecha está fuera del año escolar.
pacing-twice = El concepto ya está más arriba.
pacing-set = { $count ->
    [one] Poner esta primera lección
   *[other] Poner estas { $count } primeras lecciones
}
pacing-done = { $count ->
    [one] Se puso una primera lección.
   *[other] Se pusieron { $count } primeras lecciones.
}
concept-trend-test = { $slope ->
    [0] Sin cambio
   *[other] { $slope } de un paso de valoración
} por vuelta (margen del 95%: de { $low } a { $high }), en { $passes } vueltas; p = { $p }. Cada estudiante se compara consigo mismo. Se probaron { $concepts } conceptos. Cerca de uno de cada diez de los que se dicen en subida o bajada se dice así por azar.
concept-trend-few = { $passes } vueltas con al menos tres valoraciones hasta ahora; hacen falta seis.
enter-keys-row = Mayúsculas con una tecla llena el resto de la línea del estudiante.

## The day of the class
day-title = El día de la clase
day-number = Día { $day }
day-of = de { $days }, vuelta { $pass } de { $passes }
day-none = No hay clase
day-next = Sigue: { $date }, día { $day }
day-over = Ya no quedan días de clase.
day-close = Hoy no hay clase
day-open = Hoy sí hay clase
day-closed = { $date }: no hay clase. La rotación espera un día. Lo que ya llegó se queda.
day-opened = { $date }: otra vez hay clase. La rotación está como antes.
day-tell-folder = Los dispositivos lo saben por la carpeta de la clase.
day-tell-elsewhere = Se queda en esta computadora: otra guarda los paquetes. Avisa a su maestra o maestro, o guarda los paquetes aquí.
day-other = Otra fecha
day-other-date = Fecha
day-other-open = Otra vez hay clase en esta fecha
day-half = Si en medio día no hay repaso, cierra también el día. Así la rotación espera.
day-unaware = { $count ->
    [one] Según su última entrega, el dispositivo de un estudiante no conoce estos días: { $names }.
   *[other] Según sus últimas entregas, los dispositivos de { $count } estudiantes no conocen estos días: { $names }.
}
day-unheard = { $count ->
    [one] Un asiento no ha entregado nada, así que aquí no cuenta.
   *[other] { $count } asientos no han entregado nada, así que aquí no cuentan.
}
day-unaware-file = Estos dispositivos necesitan el nuevo paquete de clase. Hasta entonces, cada estudiante puede decir el día en Hoy.
day-unaware-folder = Los dispositivos toman el nuevo paquete de la carpeta de la clase cuando se abren, y entonces avisan al escritorio. Hasta entonces, cada estudiante puede decir el día en Hoy.
day-unaware-elsewhere = Otra computadora guarda los paquetes de esta clase: avisa a su maestra o maestro, o guarda los paquetes aquí. Hasta entonces, cada estudiante puede decir el día en Hoy.
day-more = { $count } más

## Who has not
who-title = A quién le falta
who-days = Incluir los asientos sin entrega desde hace
who-days-option = { $days ->
    [one] un día de clase
   *[other] { $days } días de clase
}
who-copy-all = Copiar la lista
who-copy = Copiar el aviso
who-copied = Copiado.
who-not-copied = El sistema no dejó copiar. Marca las palabras y cópialas.
who-no-pack = Todavía no se espera a nadie. Primero guarda y reparte un paquete de clase.
who-no-pack-folder = Todavía no se espera a nadie. El primer paquete de clase llega solo a la carpeta de la clase.
who-none = No falta nada.
who-read-out = Para leer en voz alta:
who-please = Por favor, entreguen hoy: { $names }.
who-nobody = No se sabe quién
who-quarantined = Otro dispositivo espera tu decisión: { $signs }. Llegó el { $date } y trajo { $handins ->
    [one] una entrega.
   *[other] { $handins } entregas.
}
who-damaged-known = El archivo { $file } no se pudo leer el { $date }. Antes llegó de este asiento un archivo con ese nombre. Pide una nueva entrega.
who-damaged = { $files ->
    [one] Un archivo no se pudo leer el { $date }: { $file }. Pregunta a quién le falta y pide una nueva entrega.
   *[other] { $files } archivos no se pudieron leer, el último el { $date }: { $file }. Pregunta a quién le falta y pide nuevas entregas.
}
who-not-joined = { $count ->
    [one] Un asiento nunca ha entregado: { $names }. Quizás el estudiante todavía no ha entrado.
   *[other] { $count } asientos nunca han entregado: { $names }. Quizás estos estudiantes todavía no han entrado.
}
who-late = Entregó por última vez el { $date }, hace { $days ->
    [one] un día de clase.
   *[other] { $days } días de clase.
} Pide una nueva entrega.
who-old-pack = Tiene el paquete de clase { $version }, según la entrega del { $date }. El más nuevo es el { $newest }.
who-old-pack-none = Todavía no tiene un paquete de esta clase, según la entrega del { $date }. El más nuevo es el { $newest }.
who-old-pack-days = Tiene el paquete de clase { $version }, según la entrega del { $date }. Sus días no son los de la clase. El más nuevo es el { $newest }.
who-everybody = Todos los dispositivos
who-pack-with-nobody = El paquete de clase { $newest } aún no lo tiene nadie.
who-give-out = Repártelo.
who-give-file = Repártelo otra vez.
who-give-folder = El dispositivo lo toma de la carpeta de la clase cuando se abre.
who-give-elsewhere = Lo reparte la computadora que guarda los paquetes.
who-show-device = Mostrar el dispositivo
who-slips = { $count ->
    [one] Imprimir el papel
   *[other] Imprimir sus papeles
}
who-all = Mostrar los { $count }
who-fewer = Mostrar menos
