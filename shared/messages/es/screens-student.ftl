## Las pantallas del estudiante.
student-tabs = Tus pantallas
student-today = Hoy
student-practice = Práctica
student-path = Mi camino
student-handin = Entregar
student-settings = Ajustes
student-settings-of = { $name }: ajustes

today-title = Hoy
today-day = Día { $day } de { $days }
today-day-said = Día { $day } de { $days }, como dijiste
today-day-counted = Día { $day } de { $days }, contado desde el día que dijiste
today-day-short = Día { $day }
today-say-day = ¿No es el día { $day }?
today-say-school = Sí hay clase
today-which-day = ¿En qué día va tu clase?
today-which-day-words = Mira al frente de la clase o pregunta a tu maestro. Tus marcas no se pierden.
today-day-pack = Usar el día del paquete de clase
today-others = También marcado este día
today-others-note = Estas marcas también están guardadas.
today-rate = ¿Qué tan bien sabes { $title }?
today-outcome = ¿Cómo te fue con { $title }?
today-preview = Adelanto
today-preview-note = Adelanto: aún no se vio en clase. «Todavía no» está bien.
today-left = { $left ->
    [one] Falta { $left } por valorar
   *[other] Faltan { $left } por valorar
}
today-done = Todo valorado. Tu registro está guardado.
today-saved-note = Cada toque se guarda enseguida.
today-no-school = Hoy no hay clases
today-no-school-next = Tu próximo día de clases es el { $date }.
today-no-school-over = No quedan días de clases. Puedes practicar igual.
today-to-practice = Practicar ahora
today-catch-up = Días sin marcar
today-catch-up-note = Puedes marcarlos o dejarlos así.
today-other-day = Este es el { $date }.
today-back = Volver a hoy

practice-title = Práctica
practice-worked = Primero lee este
practice-now-you = Ahora te toca a ti
practice-sure = ¿Cuánta seguridad tienes?
practice-check = Revisar mi respuesta
practice-hint = { $left ->
    [one] Pista (queda { $left })
   *[other] Pista (quedan { $left })
}
practice-hint-label = Pista { $number }
practice-show-steps = Muéstrame los pasos
practice-right = Sí, es correcto.
practice-wrong-more = Casi. Tienes un intento más.
practice-wrong = Esta vez no. Se hace así.
practice-shown = Se hace así.
practice-answer = Respuesta
practice-steps = Pasos
practice-see-steps = Ver los pasos
practice-next = El siguiente
practice-stop = Parar por ahora
practice-fill = Primero escribe tu respuesta.
practice-time = { $done } de { $planned } min
practice-count = { $done } de { $planned } hechos
practice-count-over = { $done } hechos
practice-count-over-label = Esta noche: { $done } ejercicios; eran { $planned }
practice-count-label = Esta noche: { $done } de { $planned } ejercicios
practice-time-label = Esta noche: { $done } de { $planned } minutos
practice-nothing = Todavía no hay práctica
practice-nothing-text = Primero marca tus conceptos en Hoy. Luego verás aquí la práctica para ti.
practice-to-today = Ir a Hoy
practice-over = Listo por esta noche
practice-over-text = { $finished ->
    [one] Terminaste { $finished } ejercicio en { $minutes } min.
   *[other] Terminaste { $finished } ejercicios en { $minutes } min.
}
practice-over-none = Puedes volver cuando quieras. No se pierde nada.
practice-week = Esta semana: { $done } de { $planned } noches
practice-week-done = Ya practicaste todas las noches que planeaste esta semana. Hoy tienes la noche libre.
practice-alone = Por tu cuenta: { $count }
practice-with-help = Con una pista o un segundo intento: { $count }
practice-you-said = Marcaste
practice-you-thought = Pensaste
practice-you-did = Hiciste
practice-did = { $right } de { $count } por tu cuenta
practice-tried = { $count } de práctica
practice-right-count = Acertaste { $right } de { $finished }.
practice-right-none = { $finished ->
    [one] Trabajaste en un ejercicio difícil. Así se aprende.
   *[other] Trabajaste en { $finished } ejercicios difíciles. Así se aprende.
}
practice-went-right = Esto salió bien
practice-right-of = { $right } de { $finished }
practice-again = Pronto verás más de esto: { $concepts }.
practice-how-sure = Cuánta seguridad tenías, y qué hiciste
practice-more = Practicar más
practice-finish = Terminar

entry-box = Tu respuesta
entry-top = Número de arriba
entry-bottom = Número de abajo
entry-whole = Número entero
entry-hour = Hora
entry-minute = Minutos
entry-hours = Horas
entry-amount = Cantidad en dólares
entry-x = A lo ancho
entry-y = Hacia arriba
entry-box-number = Cuadro { $number }
entry-second-later = Después viene otra pregunta.
entry-quotient = Parte entera
entry-remainder = Lo que sobra
entry-degrees = Grados
entry-expression = Tu expresión
entry-equation = Tu ecuación
entry-am = Antes del mediodía
entry-pm = Después del mediodía
entry-half-day = Parte del día
entry-pad = Teclado de números
entry-point-sign = Punto decimal
entry-comma-sign = Coma decimal
entry-erase = Borrar
entry-next-box = Otra casilla
entry-choose = Elige una
entry-choose-all = Elige todas las que van
entry-sign = Elige el signo
entry-order = Ponlos en orden
entry-earlier = Mover { $thing } antes
entry-later = Mover { $thing } después
entry-place = Lugar { $place } de { $places }
entry-line-less = Un paso a la izquierda
entry-line-more = Un paso a la derecha
entry-line-at = El punto está en { $at }
entry-line-none = Toca la recta para poner el punto
entry-ray-open = Círculo vacío: el punto no pertenece
entry-ray-closed = Círculo lleno: el punto pertenece
entry-ray-left = Hacia la izquierda
entry-ray-right = Hacia la derecha
entry-ray-end = Punto final
entry-ray-way = Dirección
entry-turn-less = Girar atrás
entry-turn-more = Girar más
entry-turn-at = { $degrees } grados
entry-shade = Toca las partes para sombrearlas
entry-part = Parte { $part }
entry-shaded-count = { $count } de { $parts } partes sombreadas
entry-taller = Más para { $column }
entry-shorter = Menos para { $column }
entry-squares = Toca cuadros para marcarlos
entry-square = Fila { $row }, columna { $column }
entry-squares-count = { $count ->
    [one] { $count } cuadro marcado
   *[other] { $count } cuadros marcados
}
entry-grid = Toca la cuadrícula para poner el punto
entry-point = a lo ancho { $x }, hacia arriba { $y }

path-title = Mi camino
path-lead = Tu año hasta ahora. Son tus propias valoraciones, no calificaciones.
path-counts = { $rated ->
    [one] { $rated } valoración
   *[other] { $rated } valoraciones
} · { $practised ->
    [one] { $practised } ejercicio
   *[other] { $practised } ejercicios
}
path-pass = Vuelta { $pass }
path-legend = Cada montón de piedras es una vuelta. La línea marca esta vuelta.
path-passes = Tus valoraciones, vuelta por vuelta
path-focus = Mi enfoque
path-focus-text = Elige hasta tres conceptos para trabajarlos.
path-focus-add = Trabajar { $title }
path-focus-remove = Dejar de trabajar { $title }
path-focus-full = Ya tienes tres. Primero quita uno.

## Goals in the student's own words.
goals = Mis metas
goals-empty = Una meta dice lo que quieres lograr. Escríbela con tus palabras. Se queda en este dispositivo.
goals-example = Así: el viernes ya me sé la tabla del siete.
goals-new = Una meta tuya
goals-left = Quedan { $left } de { $most } por escribir
goals-full = Ya tienes tres metas. Quita una para escribir otra.
goals-add = Agregar esta meta
goals-reached = Lograda: { $goal }
goals-change = Cambiar “{ $goal }”
goals-change-label = Cambia tu meta
goals-remove = Quitar “{ $goal }”
goals-removed = Se quitó “{ $goal }”.
goals-print = Poner mis metas en la hoja

path-practice-of = Practicar { $title }
path-results = { $alone } de { $answered } por tu cuenta
path-no-results = Sin práctica todavía
path-print = Imprimir mi camino
path-empty = Tu camino empieza con tu primer registro
path-empty-text = Marca los conceptos de un día de clases. Luego los verás aquí.

handin-title = Entregar
handin-lead = Haz un archivo sellado para tu maestra o maestro. Nadie más puede abrirlo.
handin-class = Para { $class }
handin-holds = Lo que lleva
handin-holds-check-ins = { $check_ins ->
    [one] { $check_ins } registro
   *[other] { $check_ins } registros
} de { $days ->
    [one] { $days } día
   *[other] { $days } días
}
handin-holds-answers = { $answers ->
    [one] La cuenta de { $answers } ejercicio
   *[other] La cuenta de { $answers } ejercicios
}
handin-holds-seat = Cuál es tu asiento
handin-not = Lo que no lleva
handin-not-name = Tu nombre, tu apodo o tu dibujo
handin-not-answers = Lo que escribiste como respuesta
handin-not-time = La hora del día
handin-make = Hacer mi archivo
handin-share = Enviar mi archivo
handin-save = Guardar mi archivo
handin-made = Tu archivo está hecho
handin-made-place = Está aquí: { $place }
handin-made-sample = Está en la carpeta de la clase de ejemplo. El escritorio docente puede importarlo.
handin-made-shared = Pasó a la aplicación que elegiste. ¿Ya lo enviaste ahí? Si no, puedes enviarlo otra vez.
handin-made-file = Archivo: { $file }
handin-not-saved = Volviste atrás. No se hizo ningún archivo. No se perdió nada.
handin-last = Hiciste el último el { $date }.
handin-new = { $new ->
    [0] Nada nuevo desde entonces.
    [one] { $new } entrada nueva desde entonces.
   *[other] { $new } entradas nuevas desde entonces.
}
handin-never = Todavía no hiciste ninguno.
handin-by-itself = Tu archivo llega solo a la carpeta de la clase. No hace falta que lo hagas tú.
handin-again-note = Puedes entregar cuando quieras. Nada cuenta dos veces.
folder-student-text = Tu clase tiene una carpeta compartida. Elígela aquí una vez. Después tu archivo llega allí solo.
folder-student-show = Elegir la carpeta
folder-student-other = Elegir otra carpeta
folder-student-ready = Tu archivo llegará allí solo.
folder-student-waiting = Tu trabajo más nuevo llegará allí enseguida.
folder-student-left = Tu archivo está allí. Se hizo el { $date }.
folder-student-nothing-lost = No se pierde nada. También puedes entregar tú.
folder-student-others = Otros archivos de allí
folder-student-others-text = { $packs ->
    [one] { $packs } paquete de allí no es de tu clase. Se quedó como estaba.
   *[other] { $packs } paquetes de allí no son de tu clase. Se quedaron como estaban.
}
folder-student-late = Tu trabajo no llega a la carpeta de la clase desde hace unos días. No se pierde nada. Puedes entregarlo tú.
folder-student-stop = ¿Dejar de usar la carpeta de la clase?
folder-student-stop-text = Tu archivo ya no llega allí solo. Los demás de este dispositivo la siguen usando.
folder-student-stopped = No usas la carpeta de la clase.
folder-student-again = Usarla otra vez
handin-take = Paquete nuevo de la clase
handin-take-text = ¿Te dieron un paquete nuevo de la clase? Ábrelo aquí.
handin-take-button = Abrir un paquete
handin-taken = { $open ->
    [0] Tienes el paquete nuevo de la clase.
    [one] Tienes el paquete nuevo de la clase. Hay { $open } tarea abierta.
   *[other] Tienes el paquete nuevo de la clase. Hay { $open } tareas abiertas.
}

settings-ends = ¿Cuándo termina la práctica de cada noche?
settings-ends-minutes = Cuando se acaba el tiempo
settings-ends-exercises = Cuando se acaban los ejercicios
settings-exercises = ¿Cuántos ejercicios cada noche?
settings-exercises-note = { $minutes ->
    [one] También termina al cabo de { $minutes } minuto.
   *[other] También termina al cabo de { $minutes } minutos.
}
settings-minutes = ¿Cuánto practicas cada noche?
settings-minutes-of = { $minutes } min
settings-evenings = ¿Cuántas noches por semana?
settings-evenings-of = { $evenings }
settings-test = Tu maestra o maestro anunció un examen: { $date }. La práctica te prepara para él.
settings-language = Idioma
settings-theme = Colores
settings-text = Tamaño del texto
settings-decimal = Signo de los decimales
settings-decimal-language = Según el idioma: { $example }
settings-decimal-comma = Coma: { $example }
settings-decimal-point = Punto: { $example }
settings-motion = Movimiento
settings-motion-system = Como el dispositivo
settings-motion-less = Menos movimiento
settings-aloud = Leer en voz alta
settings-aloud-off = Cuando lo pido
settings-aloud-on = Al abrir un ejercicio
settings-appearance-note = Solo cambian tus pantallas. Cuando sales, vuelven a ser como antes.
settings-saved = Guardado.
settings-other-student = Otro estudiante
settings-fingerprint = Huella de este dispositivo
settings-fingerprint-text = Tu maestra o maestro ve los mismos signos si tus archivos vienen de este dispositivo.
settings-stays = Tu apodo y tu dibujo se quedan en este dispositivo.

## Una impresión del propio estudiante.
practice-print = Practicar en papel
own-print-path = Esto hace un PDF de tu año para tu carpeta. No lleva tu nombre. Escríbelo a mano.
own-print-practice = Esto hace un PDF con la práctica de hoy. Las respuestas van en una página aparte.
own-print-paper = Papel
own-print-letter = Carta
own-print-a4 = A4
own-print-save = Guardar como PDF
own-print-saved = { $file } se guardó.
own-print-not-saved = No se guardó nada.
