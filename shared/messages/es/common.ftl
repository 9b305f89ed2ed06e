## Palabras que comparten varias pantallas.
one-moment = Un momento …

action-back = Atrás
action-next = Siguiente
action-close = Cerrar
action-cancel = Cancelar
action-stop = Parar
action-undo = Deshacer
action-try-again = Intentar otra vez
action-save = Guardar
action-print = Imprimir
action-change = Cambiar

confidence-0 = Todavía no
confidence-1 = Con ayuda
confidence-2 = Por mi cuenta
confidence-3 = Podría enseñarlo
confidence-none = Sin marcar

outcome-right = Bien
outcome-wrong = Mal
outcome-not-done = Sin hacer

phase-preview = Adelanto
phase-practice = Práctica
phase-review = Repaso

## A text that is missing in the language of the screens.
only-in = solo en { $language }

theme-system = Como el dispositivo
theme-light = Claro
theme-dark = Oscuro
theme-contrast = Alto contraste
theme-contrast-dark = Alto contraste oscuro
theme-device = Como el dispositivo

## Matemáticas leídas en voz alta.
math-blank = espacio vacío
math-plus = más
math-minus = menos
math-times = por
math-divided-by = entre
math-fraction = { $top } sobre { $bottom }
math-mixed = { $whole } y { $top } sobre { $bottom }
math-group = abre paréntesis { $inner } cierra paréntesis
math-power = { $base } elevado a { $exponent }
math-absolute = valor absoluto de { $inner }
math-ratio = { $left } a { $right }
math-percent = { $inner } por ciento
math-pair = abre paréntesis { $x }, { $y } cierra paréntesis
math-degrees = { $inner } grados
math-sign-less = es menor que
math-sign-equal = es igual a
math-sign-greater = es mayor que
math-sign-at-most = es menor o igual que
math-sign-at-least = es mayor o igual que
math-sign-not-equal = no es igual a
math-sign-about = es más o menos
math-sign-blank = falta un signo

## Read aloud.
aloud-read = Leer en voz alta
aloud-stop = Dejar de leer
aloud-hint = Leer la pista { $number } en voz alta
aloud-feedback = Leer la respuesta en voz alta
aloud-none = No se puede leer en voz alta
aloud-choice = Opción { $number }: { $words }
aloud-point = { $whole } punto { $digits }
aloud-comma = { $whole } coma { $digits }
aloud-dollars = { $dollars ->
    [one] { $dollars } dólar
   *[other] { $dollars } dólares
}
aloud-money = { $dollars ->
    [one] { $dollars } dólar
   *[other] { $dollars } dólares
} con { $cents ->
    [one] { $cents } centavo
   *[other] { $cents } centavos
}
slips-how = Abre el paquete de clase en Surefoot y escribe este código.
slips-pin = Tus signos del PIN: no se los muestres a nadie. Con ellos pones un PIN o lo quitas si lo olvidas.
unsaved-title = Todavía no está guardado
unsaved-text = Lo que escribiste aquí no está guardado. Si vuelves ahora, se pierde.
unsaved-stay = Quedarme aquí
unsaved-leave = Volver sin guardar

## Words that lists of teachers use, in small letters, with commas between them.
reading-weekdays = lun, mié, mie, jue, vie, sáb, sab, dom, lunes, martes, miércoles, miercoles, jueves, viernes, sábado, sabado, domingo
reading-week = semana, sem, semanas
reading-last-year = año pasado, el año pasado, visto el año pasado, enseñado el año pasado, ya enseñado, ya visto
reading-date-words = de, del, el, al
reading-until = a, hasta
reading-pacing-headings = concepto, conceptos, tema, temas, título, fecha, fechas, semana, semanas, día, días, estándar, estándares, código, unidad, lección, habilidad, inicio, primera, lista, ritmo, plan
