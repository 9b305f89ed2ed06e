## Las pantallas del estudiante.
student-tabs = Partes de tu registro
student-today = Hoy
student-practice = Práctica
student-path = Mi camino
student-handin = Entregar
student-settings = Ajustes
student-settings-of = { $name }: ajustes

today-title = Hoy
today-day = Día { $day } de { $days }
today-rate = ¿Qué tan bien sabes { $title }?
today-outcome = ¿Cómo te fue con { $title }?
today-preview = Adelanto
today-preview-note = Adelanto: tu clase todavía no lo aprendió. Todavía no está muy bien.
today-left = { $left ->
    [one] Falta { $left } por marcar
   *[other] Faltan { $left } por marcar
}
today-done = Todo marcado. Tu registro está guardado.
today-saved-note = Cada toque se guarda enseguida.
today-last = La última vez: { $rating }
today-no-school = Hoy no hay clases
today-no-school-next = Tu próximo día de clases es el { $date }.
today-no-school-over = No quedan días de clases. Puedes practicar igual.
today-to-practice = Practicar ahora
today-catch-up = Días que faltan
today-catch-up-note = Puedes completarlos o dejarlos.
today-other-day = Este es el { $date }.
today-back = Volver a hoy

practice-title = Práctica
practice-worked = Primero lee este
practice-now-you = Ahora te toca a ti
practice-sure = ¿Qué tan seguro es para ti?
practice-check = Revisar mi respuesta
practice-hint = { $left ->
    [one] Pista (queda { $left })
   *[other] Pista (quedan { $left })
}
practice-hint-label = Pista { $number }
practice-show-steps = Muéstrame los pasos
practice-right = Sí, es correcto.
practice-right-hand = Lo lograste.
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
practice-time-label = Esta noche: { $done } de { $planned } minutos
practice-ahead = Lo que sigue
practice-nothing = Todavía no hay práctica
practice-nothing-text = Primero marca tus conceptos en Hoy. Luego estará aquí la práctica para ti.
practice-to-today = Ir a Hoy
practice-over = Listo por esta noche
practice-over-text = { $finished ->
    [one] Terminaste { $finished } ejercicio en { $minutes } min.
   *[other] Terminaste { $finished } ejercicios en { $minutes } min.
}
practice-over-none = Puedes volver cuando quieras. No se pierde nada.
practice-alone = Por tu cuenta: { $count }
practice-with-help = Con una pista o un segundo intento: { $count }
practice-you-said = Marcaste
practice-you-thought = Pensaste
practice-you-did = Hiciste
practice-did = { $right } de { $count } por tu cuenta
practice-more = Practicar más
practice-finish = Terminar

answer-box = Tu respuesta
answer-top = Número de arriba
answer-bottom = Número de abajo
answer-whole = Número entero
answer-hour = Hora
answer-minute = Minutos
answer-hours = Horas
answer-amount = Cantidad en dólares
answer-x = A lo ancho
answer-y = Hacia arriba
answer-quotient = Parte entera
answer-remainder = Lo que sobra
answer-degrees = Grados
answer-expression = Tu expresión
answer-equation = Tu ecuación
answer-am = Antes del mediodía
answer-pm = Después del mediodía
answer-half-day = Parte del día
answer-pad = Teclado de números
answer-erase = Borrar
answer-clear = Borrar todo
answer-next-box = Otra casilla
answer-choose = Elige una
answer-choose-all = Elige todas las que van
answer-sign = Elige el signo
answer-choice = Opción { $number }
answer-order = Ponlos en orden
answer-earlier = Mover { $thing } antes
answer-later = Mover { $thing } después
answer-place = Lugar { $place } de { $places }
answer-line-less = Un paso a la izquierda
answer-line-more = Un paso a la derecha
answer-line-at = El punto está en { $at }
answer-line-none = Toca la recta para poner el punto
answer-ray-open = Círculo vacío: el punto no pertenece
answer-ray-closed = Círculo lleno: el punto pertenece
answer-ray-left = Hacia la izquierda
answer-ray-right = Hacia la derecha
answer-ray-end = Punto final
answer-ray-way = Dirección
answer-turn-less = Girar atrás
answer-turn-more = Girar más
answer-turn-at = { $degrees } grados
answer-shade = Toca las partes para sombrearlas
answer-part = Parte { $part }
answer-shaded-count = { $count } de { $parts } partes sombreadas
answer-taller = Más para { $column }
answer-shorter = Menos para { $column }
answer-height = { $column }: { $value }
answer-squares = Toca cuadros para marcarlos
answer-square = Fila { $row }, columna { $column }
answer-squares-count = { $count ->
    [one] { $count } cuadro marcado
   *[other] { $count } cuadros marcados
}
answer-grid = Toca la cuadrícula para poner el punto
answer-point = a lo ancho { $x }, hacia arriba { $y }

path-title = Mi camino
path-lead = Tu año hasta ahora. Son tus propias marcas, no calificaciones.
path-counts = { $rated } marcas · { $practised } ejercicios
path-pass = Vuelta { $pass }
path-passes = Tus marcas, vuelta por vuelta
path-focus = Mi enfoque
path-focus-text = Elige hasta tres conceptos para trabajarlos.
path-focus-add = Trabajar { $title }
path-focus-remove = Dejar de trabajar { $title }
path-focus-full = Ya tienes tres. Primero quita uno.
path-practice = Practicar
path-practice-of = Practicar { $title }
path-results = { $alone } de { $answered } por tu cuenta
path-no-results = Sin práctica todavía
path-concept = Concepto
path-print = Imprimir mi camino
path-last = Ahora
path-empty = Tu camino empieza con tu primer registro
path-empty-text = Marca los conceptos de un día de clases. Aquí estarán.

handin-title = Entregar
handin-lead = Haz un archivo sellado para tu maestra o maestro. Nadie más puede abrirlo.
handin-class = Para { $class }
handin-holds = Lo que lleva
handin-holds-check-ins = { $check_ins ->
    [one] { $check_ins } marca de { $days } días
   *[other] { $check_ins } marcas de { $days } días
}
handin-holds-answers = { $answers ->
    [one] La cuenta de { $answers } ejercicio
   *[other] La cuenta de { $answers } ejercicios
}
handin-holds-seat = El código de tu lugar
handin-not = Lo que no lleva
handin-not-name = Tu nombre, tu apodo o tu dibujo
handin-not-answers = Lo que escribiste como respuesta
handin-not-time = La hora del día
handin-make = Hacer mi archivo
handin-made = Tu archivo está hecho
handin-made-place = Está aquí: { $place }
handin-made-file = Archivo: { $file }
handin-not-saved = Volviste atrás. No se hizo ningún archivo. No se perdió nada.
handin-last = Hiciste el último el { $date }.
handin-new = { $new ->
    [0] Nada nuevo desde entonces.
    [one] { $new } entrada nueva desde entonces.
   *[other] { $new } entradas nuevas desde entonces.
}
handin-never = Todavía no hiciste ninguno.
handin-again-note = Puedes entregar cuando quieras. Nada cuenta dos veces.
handin-take = Paquete nuevo de la clase
handin-take-text = ¿Te dieron un paquete nuevo de la clase? Ábrelo aquí.
handin-take-button = Abrir un paquete
handin-taken = { $open ->
    [0] Tienes el paquete nuevo de la clase.
    [one] Tienes el paquete nuevo de la clase. Hay { $open } tarea abierta.
   *[other] Tienes el paquete nuevo de la clase. Hay { $open } tareas abiertas.
}

settings-minutes = ¿Cuánto dura una noche?
settings-minutes-of = { $minutes } min
settings-language = Idioma
settings-theme = Colores
settings-saved = Guardado.
settings-other-student = Otro estudiante
settings-stays = Tu apodo y tu dibujo se quedan en este dispositivo.
