## The teacher's screens.
tab-board = Tablero
tab-files = Archivos
tab-class = Clase
tab-assign = Asignar

desk-class = Clase
desk-new-class = Clase nueva …
desk-screens = Pantallas
desk-settings = Ajustes
desk-language = Idioma
desk-theme = Colores
desk-leave = Salir
desk-promise = Los nombres se quedan en esta computadora. Surefoot no envía nada a ninguna parte; la carpeta de la clase la mueve tu escuela.
desk-names-cover = Tapar nombres
desk-names-show = Mostrar nombres
desk-cover-key = Pulsa N para tapar o mostrar los nombres
desk-lock = Cerrar
desk-lock-key = Pulsa L para cerrar el escritorio con su candado
desk-seat = Asiento { $seat }
desk-undone = Deshecho.
desk-age-none = sin informe aún
desk-age-today = hoy
desk-age-yesterday = ayer
desk-age-days = { $days ->
    [one] hace { $days } día
   *[other] hace { $days } días
}

## Board
board-title = Tablero
board-reporting = Han informado { $reporting } de { $seats } asientos. El informe más reciente: { $newest }; el típico: { $typical }.
board-reporting-none = { $seats ->
    [one] Aún no ha llegado nada del único asiento.
   *[other] Aún no ha llegado nada de los { $seats } asientos.
}
board-empty-title = Aquí verás a tu clase
board-empty-words = Los estudiantes valoran cada concepto después del repaso y entregan un archivo pequeño. Importa los archivos y cada concepto tendrá su línea: quién lo domina, con qué seguridad se sabe y si sube o baja.
board-empty-do = Importar entregas
board-empty-slips = Paquete de clase y papeles
board-filters = Lo que muestra el tablero
board-filter-strand = Área
board-filter-phase = Fase
board-filter-all = Todas
board-filter-today = Solo el día { $day }, hoy
board-shown = { $shown } de { $all } conceptos
board-show-all = Mostrar todos
board-none-title = Ningún concepto cumple estas condiciones
board-none-words = Los demás conceptos solo están ocultos.
board-own-view = Las valoraciones son la opinión de cada estudiante. No son una nota ni un diagnóstico.
board-caption = Conceptos de { $title }, primero los más débiles o en el orden que elegiste
board-col-rank = Puesto
board-col-concept = Concepto
board-col-has-it = Parte que lo domina
board-col-range = y su margen probable
board-col-reports = Informes
board-col-ratings = Última valoración de cada estudiante
board-col-results = Resultados marcados
board-col-practice = Respuestas en la práctica
board-col-practice-short = Práctica
board-col-trend = Tendencia
board-col-passes = Necesitan ayuda, por vuelta
board-columns = Columnas
board-order = El orden va por cuántos estudiantes necesitan el concepto con certeza. Una parte con pocos informes o antiguos cuenta menos, así que una parte más baja puede estar más abajo.
board-mistake = { $students ->
    [one] un estudiante
   *[other] { $students } estudiantes
}, { $times } veces; la última: { $last }
board-pass = Vuelta
board-place = { $strand } · día { $day } · { $phase ->
    [preview] adelanto
    [practice] práctica
   *[review] repaso
}
board-range = de { $low } a { $high }
board-ask-first = pocos informes: pregunta antes
board-no-report = sin informe aún
board-order-only = aún sin porcentaje
board-sure-and-wrong = con seguridad, pero mal
board-level-unknown = Por ahora hay muy pocos resultados y muy poca práctica. Las valoraciones muestran qué conceptos van peor que otros. No muestran cuántos estudiantes los saben, así que aún no se muestra ningún porcentaje.
board-of = { $part } de { $all }
board-right = { $count } bien
board-wrong = { $count } mal
board-alone = { $count } sin ayuda
board-with-help = { $count } con ayuda
board-help-wrong = { $help } con ayuda, { $wrong } mal
board-trend-rising = sube
board-trend-falling = baja
board-trend-maybe-rising = quizá sube
board-trend-maybe-falling = quizá baja
board-trend-no-clear-change = sin cambio claro
board-trend-too-soon = aún es pronto
board-pass-cell = { $needs } de { $rated } que valoraron necesitan ayuda, { $share }
board-pass-count = { $needs } de { $rated } que se valoraron necesitan ayuda
board-pass-last = Última valoración: { $date }.
board-unranked = Sin puesto: antes de la primera lección, o sin informe

## One concept and the students behind it
concept-back = Tablero
concept-grade = grado { $grade }
concept-rank = puesto { $rank } entre los conceptos débiles
concept-sure-and-wrong = La clase se siente segura de este concepto, pero la mayoría de las respuestas están mal.
concept-ask-first = { $count ->
    [0] Nadie ha informado aún sobre este concepto. Pregunta a la clase antes de planear con él.
    [one] Solo { $count } estudiante ha informado sobre este concepto. Pregunta a la clase antes de planear con él.
   *[other] Solo { $count } estudiantes han informado sobre este concepto. Pregunta a la clase antes de planear con él.
}
concept-misconceptions = Errores comunes en la práctica
concept-misconception-other = Otro error
concept-times = { $count } ×
concept-students = Estudiantes, primero quien más lo necesita
concept-assign = { $count ->
    [0] Asignar práctica
    [one] Asignar práctica a { $count } estudiante
   *[other] Asignar práctica a { $count } estudiantes
}
concept-no-exercises = No hay ejercicios para este concepto; solo se valora.
concept-col-choose = Para práctica
concept-col-student = Estudiante
concept-col-has-it = Quizá lo domina
concept-col-history = Valoraciones y resultados, del más antiguo al más nuevo
concept-col-age = Último informe
concept-col-assigned = Asignado
concept-choose = Elegir a { $name } para práctica
concept-earlier = { $count } anteriores
concept-practice-none = ninguna
concept-assigned = { $done } de { $of }

## Files
files-title = Archivos
files-lead = Indica la carpeta donde llegan las entregas. Un archivo más nuevo reemplaza al anterior del mismo dispositivo, así nada cuenta dos veces. Los archivos se quedan donde están.
files-take-sample = Importar la carpeta de la clase de ejemplo
files-take-folder = Importar una carpeta
files-take-files = Elegir archivos sueltos
files-running = Leyendo los archivos
files-progress = { $total ->
    [0] Buscando archivos …
   *[other] { $done } de { $total } archivos
}
files-stop = Detener
files-empty-title = Cada archivo tendrá aquí su línea
files-empty-words = Después de una importación, esta lista muestra el resultado de cada archivo: nuevo, actualizado, más antiguo que lo que hay, o no importado, y por qué.
files-report = { $date }:
files-report-none = no había ninguna entrega
files-to-check = { $count } por revisar
files-more = Mostrar más (quedan { $count })
files-cancelled = detenido antes del final
files-was-undone = deshecho
files-undone = La importación se deshizo. Los archivos siguen donde estaban: impórtalos a mano para tenerlos otra vez.
files-tally-new = { $count ->
    [one] { $count } nuevo
   *[other] { $count } nuevos
}
files-tally-updated = { $count ->
    [one] { $count } actualizado
   *[other] { $count } actualizados
}
files-tally-known = { $count ->
    [one] { $count } ya estaba
   *[other] { $count } ya estaban
}
files-tally-older = { $count ->
    [one] { $count } más antiguo
   *[other] { $count } más antiguos
}
files-tally-quarantined = { $count ->
    [one] { $count } espera tu decisión
   *[other] { $count } esperan tu decisión
}
files-tally-refused = { $count ->
    [one] { $count } no importado
   *[other] { $count } no importados
}
files-col-verdict = Resultado
files-col-who = De
files-col-what = Detalles
files-col-file = Archivo
files-verdict-new = Nuevo
files-verdict-updated = Actualizado
files-verdict-known = Ya estaba
files-verdict-known-words = Esto mismo se importó antes. No cambió nada.
files-verdict-older = Más antiguo
files-verdict-older-words = Ya hay una entrega más nueva de este dispositivo. No cambió nada.
files-verdict-quarantined = En espera
files-verdict-quarantined-words = Viene de otro dispositivo para este asiento. Se guarda, y cuenta cuando aceptes el dispositivo arriba.
files-verdict-refused = No importado
files-new-entries = { $count ->
    [one] { $count } entrada nueva
   *[other] { $count } entradas nuevas
}
flag-future-date = { $entries ->
    [one] { $entries } entrada tiene fecha futura, hasta el { $date }. Se guarda y se muestra cuando llegue su día. Revisa la fecha del dispositivo.
   *[other] { $entries } entradas tienen fecha futura, hasta el { $date }. Se guardan y se muestran cuando llegue su día. Revisa la fecha del dispositivo.
}
flag-outside-year = { $entries ->
    [one] { $entries } entrada queda fuera del año escolar ({ $date }). Se guarda pero no cuenta.
   *[other] { $entries } entradas quedan fuera del año escolar (hasta el { $date }). Se guardan pero no cuentan.
}
flag-unknown-concept = { $concepts ->
    [one] { $concepts } concepto no es de esta clase. Se guarda pero no se muestra.
   *[other] { $concepts } conceptos no son de esta clase. Se guardan pero no se muestran.
}
devices-title = Dispositivos de los asientos
devices-words = Un dispositivo espera cuando un estudiante entró en otro, o cuando alguien escribió el código de otra persona. Compara los signos con los que muestra Ajustes en la tableta del estudiante. Nada de un dispositivo en espera cuenta hasta que decidas. Puedes cambiar de opinión en cualquier momento.
devices-state-accepted = cuenta
devices-state-quarantined = espera tu decisión
devices-state-rejected = rechazado
devices-brought = desde el { $date }: { $handins ->
    [one] { $handins } entrega
   *[other] { $handins } entregas
}, { $entries ->
    [one] { $entries } entrada en la más nueva
   *[other] { $entries } entradas en la más nueva
}
devices-show-all = Mostrar los dispositivos de todos los asientos
devices-show-waiting = Mostrar solo los que esperan
devices-other = Es de otro estudiante …
quarantine-accept = Aceptar
quarantine-reject = Rechazar
quarantine-discard = Descartar
quarantine-accept-title = ¿Aceptar este dispositivo?
quarantine-accept-words = Desde ahora, lo que entregó cuenta para { $name }, junto con lo que ya hay.
quarantine-reject-title = ¿Rechazar este dispositivo?
quarantine-reject-words = Lo que entregó no contará para { $name }. Más tarde puedes aceptarlo.
quarantine-discard-title = ¿Descartar lo que entregó este dispositivo?
quarantine-discard-words = Se olvida el dispositivo y lo que entregó para { $name }. Los archivos se quedan donde están.
quarantine-accepted = Desde ahora el dispositivo cuenta para { $name }.
quarantine-rejected = El dispositivo de { $name } se rechazó.
quarantine-discarded = Se descartó lo que el dispositivo entregó para { $name }.
journal-title = Importaciones
journal-older = Mostrar anteriores
journal-undo = Deshacer la última importación
journal-undo-title = ¿Deshacer la última importación?
journal-undo-words = { $count ->
    [one] Esto retira { $count } archivo importado el { $date }. El tablero quedará como antes. Puedes importar el archivo otra vez.
   *[other] Esto retira { $count } archivos importados el { $date }. El tablero quedará como antes. Puedes importar los archivos otra vez.
}

## Class
class-parts = Partes de la configuración
class-part-seats = Asientos
class-part-calendar = Calendario
class-part-rotation = Rotación
class-part-pack = Paquete y papeles
class-change = Renombrar o borrar …
class-change-title = Esta clase
class-name-hint = Los estudiantes lo ven cuando abren el próximo paquete de clase.
class-renamed = La clase tiene un nombre nuevo.
class-delete = Borrar esta clase …
class-delete-title = ¿Borrar { $title }?
class-delete-words = { $seats ->
    [one] Su único asiento se borra de esta computadora, con cada informe, cada observación y las llaves que abren sus entregas.
   *[other] Sus { $seats } asientos se borran de esta computadora, con cada informe, cada observación y las llaves que abren sus entregas.
} { $joined ->
    [0] Nadie ha entregado aún.
    [one] Ha entregado un estudiante.
   *[other] Han entregado { $joined } estudiantes.
}
class-delete-type = Para seguir, escribe el nombre de la clase: { $title }
class-delete-do = Borrar
class-deleted = Se borró { $title }.
seats-lead = Los nombres son opcionales y se quedan en esta computadora. Las entregas solo llevan el asiento.
seats-col-seat = Asiento
seats-col-name = Nombre
seats-col-code = Código
seats-col-devices = Dispositivos
seats-col-newest = Último informe
seats-no-name = sin nombre
seats-name-of = Nombre del asiento { $seat }
seats-named = Se cambió el nombre del asiento { $seat }.
seats-devices = { $count ->
    [0] aún no ha entrado
    [one] { $count } dispositivo
   *[other] { $count } dispositivos
}
seats-quarantined = { $count } en espera
seats-assign-to = Asignar práctica a { $name }
seats-remove = Quitar
seats-remove-of = Quitar: { $name }
seats-remove-title = ¿Quitar de la clase? ({ $name })
seats-remove-nothing = Aún no ha llegado nada de este asiento.
seats-remove-what = Con él se borra de esta computadora:
seats-remove-hand-ins = { $count ->
    [one] { $count } entrega
   *[other] { $count } entregas
}
seats-remove-reports = Valoraciones y resultados: { $count }
seats-remove-answers = Respuestas de práctica: { $count }
seats-remove-observations = Tus observaciones: { $count }
seats-remove-slip = El código de su papel ya no sirve. Los demás asientos conservan número y código.
seats-remove-do = Quitar
seats-removed = Ya no está en la clase: { $name }.
seats-add = Agregar asientos
seats-add-hint = Un estudiante por línea, o una tabla. Déjalo vacío para un asiento sin nombre.
seats-add-do = Agregar
seats-added = { $count ->
    [one] Se agregó { $count } asiento. Necesita un papel.
   *[other] Se agregaron { $count } asientos. Necesitan papeles.
}
move-do = Mover
move-of = Mover a { $name }
move-title = Mover a { $name }
move-class = A otra de tus clases
move-class-words = Todo lo que tienes de este estudiante pasa a un asiento nuevo allí. Los grupos, los deseos, las ausencias y las tareas se quedan. Imprime el papel nuevo: hasta que el estudiante escriba su código, el dispositivo sigue entregando, y eso cuenta en la clase nueva. El dispositivo pide también el papel de antes. Si se perdió, imprímelo otra vez antes de mover al estudiante.
move-class-to = Clase
move-class-none = No tienes otra clase aquí.
move-done = { $name } tiene ahora el asiento { $seat } en { $title }. Imprime allí el papel nuevo y guarda un paquete de clase nuevo.
move-done-folder = { $name } tiene ahora el asiento { $seat } en { $title }. Imprime allí el papel nuevo.
move-device = Trabajo de otro estudiante
move-device-words = Si alguien entró con el papel de este estudiante, da el trabajo de ese dispositivo a su dueño. Compara los signos con los que muestra Ajustes en el dispositivo.
move-device-none = Ningún dispositivo ha entregado para este asiento.
move-device-to = El dispositivo { $signs } es de
move-device-do = Dar el trabajo
move-device-done = El trabajo de este dispositivo cuenta ahora para { $name }.
move-seat-of = { $seat }: { $name }
transfer-title = A un colega
transfer-words = Guardas un archivo que tu colega abre. El estudiante sigue aquí hasta que quites el asiento.
transfer-open = Ver qué contiene el archivo
transfer-for = Archivo sobre { $name }
transfer-holds = El archivo contendrá:
transfer-check-ins = Confianza y resultados de dispositivos: { $count }
transfer-practice = Práctica por día y concepto: { $count }
transfer-paper = Entradas de papel: { $count }
transfer-dates = Del { $first } al { $last }
transfer-not = No contendrá tus observaciones, grupos ni tareas, ni nada de otro estudiante.
transfer-name = Incluir el nombre: { $name }
transfer-warning = Un archivo que diste no se puede recuperar. Di la frase secreta a tu colega en persona.
transfer-save = Guardar el archivo
transfer-made = { $file } está guardado. Dalo a tu colega y después quita a { $name } aquí.
transfer-take = Abrir el archivo de un colega
transfer-take-words = ¿Viene un estudiante de un colega? Abre el archivo que tu colega guardó.
transfer-taken = { $name } tiene el asiento { $seat }. Llegaron { $count } entradas.
transfer-outside = { $count } de ellas están fuera de este año escolar y no cuentan.
transfer-other-concepts = { $count ->
    [one] Un concepto de ellas no está en esta clase.
   *[other] { $count } conceptos de ellas no están en esta clase.
}
calendar-lead = Del { $first } al { $last }: { $days } días de clase, { $passes } vueltas de { $rotation } días. Toca un día para dejarlo sin clase, o para que vuelva a ser de clase.
calendar-closures = Días sin clase
calendar-from = Desde
calendar-to = Hasta (si es más de un día)
calendar-close = Sin clase
calendar-open = Con clase
calendar-open-of = Con clase otra vez: { $what }
calendar-none = Ninguno aún. Cada día de la semana elegido cuenta como día de clase.
calendar-range = { $days ->
    [one] del { $first } al { $last }, { $days } día de clase
   *[other] del { $first } al { $last }, { $days } días de clase
}
calendar-day = Sin clase el { $date }
calendar-changed = El calendario cambió. Los días de la rotación se mueven con él.
calendar-year-change = Cambiar fechas o días de la semana
calendar-year-words = Los cierres, las primeras lecciones y los informes conservan sus fechas. Los días de la rotación se cuentan de nuevo; los informes fuera del año se guardan pero no cuentan.
calendar-year-effect = Así son { $days } días de clase y { $passes } vueltas (ahora { $before_days } y { $before_passes }).
calendar-year-changed = El año escolar cambió. Los días de la rotación se mueven con él.
calendar-lessons-outside = { $count ->
    [one] Una primera lección queda fuera del año escolar.
   *[other] { $count } primeras lecciones quedan fuera del año escolar.
}
calendar-fault-none = Elige el primer día sin clase.
calendar-fault-order = El último día va antes del primero.
calendar-fault-outside = Estos días quedan fuera del año escolar.
calendar-fault-no-school = Esos días no hay clase de todos modos.
practice-rules = Práctica en casa
practice-rules-lead = Cada estudiante elige sus minutos y sus noches dentro de estos límites. Quien prefiera contar ejercicios elige una cantidad que suela caber en esos minutos. La práctica prepara para el examen que anuncies y, después, para el fin del año. Todo llega con el próximo paquete de clase.
practice-rules-minutes-least = Mínimo de minutos por noche
practice-rules-minutes-most = Máximo de minutos por noche
practice-rules-evenings-least = Mínimo de noches por semana
practice-rules-evenings-most = Máximo de noches por semana
practice-rules-test = Próximo examen (si hay uno)
practice-rules-changed = Los límites de la práctica cambiaron.
rotation-lead = Arrastra un concepto a otro día, usa sus flechas o pulsa Alt con la flecha izquierda o derecha. Tócalo para ver cómo le va a cada estudiante.
rotation-by-day = Día por día
rotation-lessons = Primeras lecciones
rotation-day = { $count ->
    [one] Día { $day } · { $count } concepto
   *[other] Día { $day } · { $count } conceptos
}
rotation-earlier = { $title }: un día antes
rotation-later = { $title }: un día después
rotation-moved = { $title } está ahora en el día { $day }.
rotation-concepts = Agregar o quitar conceptos
rotation-add = Agregar del catálogo
rotation-add-hint = Van a los días más ligeros. Los conceptos de un grado anterior cuentan como enseñados; pon después las primeras lecciones de los demás.
rotation-add-do = { $count ->
    [0] Agregar conceptos
    [one] Agregar el concepto
   *[other] Agregar { $count } conceptos
}
rotation-added = { $title } se agregó al día { $day }.
rotation-added-many = Se agregaron { $count } conceptos a los días más ligeros.
rotation-take-out = Quitar de la rotación
rotation-take-out-hint = Sus registros se conservan y vuelven con ellos.
rotation-take-out-do = { $count ->
    [0] Quitar conceptos
    [one] Quitar el concepto
   *[other] Quitar { $count } conceptos
}
rotation-taken-out = { $title } ya no está en la rotación.
rotation-taken-out-many = { $count } conceptos ya no están en la rotación.
rotation-whole-grade = Todo el grado { $grade } ({ $count })
rotation-uneven = Los días son desiguales: hasta { $most } conceptos en uno, { $least } en otro. El repaso dura más en los días llenos.
lessons-lead = La primera lección decide cuándo un concepto pasa de adelanto a práctica y luego a repaso. Sin fecha significa: este año no.
lessons-col-first = Primera lección
lessons-col-day = Día
lessons-col-phase = Hoy
lessons-date-of = Primera lección de { $title }
lessons-not-this-year = este año no
lessons-changed = Se cambió la primera lección de { $title }.

## Class pack and join slips
pack-none-yet = Aún no hay paquete de clase. Los estudiantes lo necesitan para entrar.
pack-outdated = Algo cambió desde el paquete de clase { $version }. Los estudiantes verán el cambio cuando abran uno nuevo.
pack-save = Guardar el paquete de clase
pack-not-saved = No se escribió ningún archivo. No se perdió nada; guárdalo cuando quieras.
pack-saved = Se guardó { $file }. { $place }
pack-version = Paquete de clase { $version }
pack-version-none = Aún sin paquete de clase
pack-changed = cambió
pack-up-to-date = al día
pack-step-pack = Reparte el paquete de clase
pack-step-pack-words = Un archivo para toda la clase. Ponlo donde los estudiantes puedan abrirlo: una carpeta compartida, una memoria USB, la página de la clase. No lleva nombres.
pack-folder-words = Está en la carpeta de la clase, y los dispositivos lo toman solos. Quien no tiene la carpeta necesita el archivo.
pack-step-slips = Imprime los papeles
pack-step-slips-words = { $count ->
    [one] Un papel con el código y los signos del PIN del asiento. El estudiante escribe el código una vez y guarda el papel.
   *[other] { $count } papeles, uno por asiento, cada uno con su código y sus signos del PIN. El estudiante escribe el código una vez y guarda el papel.
}
pack-step-hand-ins = Importa las entregas
pack-step-hand-ins-do = Abrir Archivos
pack-step-hand-ins-words = Los estudiantes hacen la entrega con un toque. Tú indicas a Surefoot la carpeta donde llegan.
pack-hand-ins-folder = Las entregas llegan solas por la carpeta de la clase, mientras el escritorio está abierto.
slips-open = Mostrar los papeles
slips-words = Corta por las líneas discontinuas. Cada papel es para un solo estudiante.
slips-paper = Papel
slips-letter = Carta
slips-a4 = A4
slips-names = Con nombres
slips-one = Guardar este papel
slips-one-of = Guardar este papel de { $name }

## Assign
assign-title = Asignar
assign-new = Asignación nueva
assign-made = La asignación está hecha. Reparte un paquete de clase nuevo para que llegue a los estudiantes.
assign-made-folder = La asignación está hecha. Llega a los estudiantes por la carpeta de la clase.
assign-withdrawn = La asignación se retiró. La práctica hecha se queda.
assign-empty-title = Aquí estará la lista de práctica asignada
assign-empty-words = Abre un concepto débil en el tablero, elige quién lo necesita y asigna. Viaja en el próximo paquete de clase; aquí verás quién la hizo.
assign-empty-do = Abrir el tablero
assign-each = { $count ->
    [one] { $count } ejercicio de cada concepto
   *[other] { $count } ejercicios de cada concepto
}
assign-dates = del { $from } al { $due }
assign-whole-class = Toda la clase
assign-some = { $count ->
    [one] { $count } estudiante
   *[other] Estudiantes elegidos ({ $count })
}
assign-finished = { $done } de { $of } terminaron
assign-over = terminada
assign-not-in-pack = aún no está en el paquete
assign-waiting = { $count ->
    [one] { $seats } aún no ha entrado o entregado; se puede sellar para ese asiento tras la primera entrega.
   *[other] Aún no han entrado o entregado: { $seats }. Se puede sellar para ellos tras su primera entrega.
}
assign-withdraw = Retirar
assign-withdrawn-list = { $count ->
    [one] Una asignación retirada
   *[other] { $count } asignaciones retiradas
}
assign-restore = Recuperarla
assign-withdraw-title = ¿Retirar esta asignación?
assign-withdraw-words = Sale de la práctica de los estudiantes con el próximo paquete de clase. La práctica hecha se queda y cuenta.
assign-concepts = Conceptos
assign-concepts-hint = De uno a seis. Solo se ofrecen conceptos con ejercicios.
assign-concepts-add = Agregar un concepto …
assign-concepts-remove = Quitar { $title }
assign-amount = Ejercicios de cada uno
assign-from = Primera noche
assign-due = Última noche
assign-who = Para quién
assign-travels = Llega a los estudiantes en el próximo paquete de clase, sellado para cada uno.
assign-give = Asignar
assign-fault-concepts-none = Elige al menos un concepto.
assign-fault-concepts-many = Elige seis conceptos como máximo.
assign-fault-amount = Elige de 1 a 20 ejercicios.
assign-fault-dates = La última noche no puede ir antes de la primera.
assign-fault-seats = Elige al menos un estudiante.

## A new class
new-class-title = Preparar una clase
new-class-lead = Con su calendario, su lista de ritmo y sus papeles para unirse, una clase lleva unos diez minutos. Todo se puede cambiar después.
new-class-name = Nombre de la clase
new-class-name-hint = Como la conocen los estudiantes, por ejemplo Salón 12 o Matemáticas 4.º.
new-class-seats = Asientos
new-class-seats-hint = Un asiento por estudiante. Los nombres se quedan en esta computadora; sin nombres, los asientos solo llevan número.
new-class-by-names = Pegar una lista de nombres
new-class-by-count = Solo un número de asientos
new-class-roster = Nombres, un estudiante por línea
new-class-roster-hint = "Anika Patel", "Patel, Anika", códigos propios o una tabla copiada de una hoja de cálculo. Ves lo que se entendió antes de tomarlo.
new-class-names-read = { $count ->
    [one] { $count } estudiante.
   *[other] { $count } estudiantes.
}
new-class-seat-count = Número de asientos
new-class-year = Año escolar
new-class-first-day = Primer día
new-class-last-day = Último día
new-class-weekdays = Hay clase los
new-class-closures = { $count ->
    [0] Agregar días sin clase (puede esperar)
    [one] Días sin clase: { $count }
   *[other] Días sin clase: { $count }
}
roster-file = De un archivo …
roster-file-hint = Un CSV con nombres, o los CSV de una exportación OneRoster (elige juntos users, enrollments y classes). Solo se leen nombres o códigos.
roster-kept-hint = Solo se guarda el nombre de la columna "Se muestra como".
roster-swap = Intercambiar nombres y apellidos
roster-take = Tomar
roster-take-line = Tomar la línea { $line }: { $words }
roster-first = Nombre
roster-last = Apellido
roster-kept = Se muestra como
roster-kept-of = Nombre que se muestra para la línea { $line }
roster-reading-heading = Un encabezado, no un estudiante.
roster-reading-no-name = Aquí no se encontró ningún nombre.
roster-reading-full = Una clase tiene 60 asientos como máximo.
roster-too-long = Este nombre tiene { $count } letras y caben { $most }. Escríbelo más corto.
roster-empty = Escribe un nombre o deja fuera esta línea.
roster-told-apart = Nombre repetido.
roster-twice = { $name } está en las líneas { $lines }. ¿Es un solo estudiante o son varios?
roster-twice-different = Son estudiantes distintos
roster-twice-one = Es el mismo estudiante
roster-file-classes = ¿Qué clase?
roster-file-class = { $count ->
    [one] { $title } ({ $count } estudiante)
   *[other] { $title } ({ $count } estudiantes)
}
new-class-copy = Rotación y primeras lecciones
new-class-copy-hint = Surefoot propone una rotación nueva según los grados, o copia la de una clase que ya tienes. Las primeras lecciones conservan entonces su lugar en el año. Si el año de esa clase sigue en curso, también se copia su calendario con los días sin clase.
new-class-copy-none = Proponer una rotación nueva
new-class-grades = Grados
new-class-grades-hint = Primero van los conceptos del grado más alto que quepan. Los grados anteriores llenan lo que queda, para repasar sus conceptos.
new-class-grade = Grado { $grade } ({ $count } conceptos)
new-class-rotation = Rotación
new-class-rotation-hint = Cada concepto aparece una vez en la rotación. Surefoot propone qué concepto va en qué día; puedes moverlos.
new-class-rotation-days = Días de la rotación
new-class-a-day = Conceptos por día
new-class-sum = Resultado
new-class-sum-seats = asientos
new-class-sum-days = días de clase
new-class-sum-passes = vueltas
new-class-sum-concepts = conceptos
new-class-left-out = { $count ->
    [one] { $count } concepto de estos grados no cabe. Con más días o más conceptos por día entra.
   *[other] { $count } conceptos de estos grados no caben. Con más días o más conceptos por día entran.
}
new-class-create = Crear la clase
new-class-later = Nombres, asientos, fechas, días sin clase, conceptos y sus días se pueden cambiar en cualquier momento.
new-class-done = { $title } está lista. Faltan dos cosas: repartir el paquete de clase e imprimir los papeles.
new-class-faults = { $count ->
    [one] Falta algo o algo no encaja. Está marcado.
   *[other] { $count } cosas faltan o no encajan. Están marcadas.
}
new-class-fault-title-empty = Pon un nombre a la clase.
new-class-fault-title-long = Usa 60 caracteres o menos.
new-class-fault-names-open = Responde primero las preguntas de la tabla de nombres.
new-class-fault-names-none = Pega al menos un nombre o elige un número de asientos.
new-class-fault-seats-none = Elige al menos un asiento.
new-class-fault-seats-many = Elige de 1 a 60 asientos.
new-class-fault-dates-none = Elige el primer y el último día.
new-class-fault-dates-order = El último día va antes del primero.
new-class-fault-dates-long = Un año escolar tiene 400 días como máximo, del primero al último.
new-class-fault-no-day = Con estos días no queda ningún día de clase.
new-class-fault-weekdays = Elige al menos un día de la semana.
new-class-fault-grades = Elige al menos un grado.
new-class-fault-rotation = Elige de 1 a 20 días y de 1 a 12 conceptos por día.
