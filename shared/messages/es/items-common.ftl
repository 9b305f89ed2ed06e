## Short prompts shared by many exercises.
common-work-out = Calcula.
common-box = ¿Qué número va en el cuadro?
common-sign = ¿Qué signo hace que sea cierto?
common-choose-one = Elige una respuesta.
common-choose-all = Elige todas las que sirven.
common-answer = La respuesta es { $answer }.
common-check = Comprueba: { $work }.
common-yes = Sí
common-no = No
common-least = Menor
common-greatest = Mayor

## How a given answer is told back.
answer-minutes = { $minutes ->
    [one] { $minutes } minuto
   *[other] { $minutes } minutos
}
answer-hours-minutes = { $hours ->
    [one] { $hours } hora
   *[other] { $hours } horas
} { $minutes ->
    [one] { $minutes } minuto
   *[other] { $minutes } minutos
}
answer-sign = { $sign }
answer-typed = { $text }
answer-ray-greater = Todos los números mayores que { $from }. { $from } no entra.
answer-ray-less = Todos los números menores que { $from }. { $from } no entra.
answer-ray-at-least = { $from } y todos los números mayores.
answer-ray-at-most = { $from } y todos los números menores.
answer-shaded = { $count ->
    [one] { $count } parte
   *[other] { $count } partes
}
answer-heights = { $heights }
answer-rectangle = { $rows } por { $columns }
answer-remainder = { $quotient } con residuo { $remainder }
answer-several = { $numbers }
half-day-am = de la mañana
half-day-pm = después del mediodía

answer-given-before = Ya diste esta respuesta, así que no cuenta otra vez. Prueba otra.

## A kind word about the form of an equal answer.
form-not-simplest = Es igual. Puedes hacerla más simple.
form-not-mixed = Es igual. Prueba con un número mixto.
form-not-single-fraction = Es igual. Prueba con una sola fracción.
form-other-bottom = Es igual. La pregunta pide otro número abajo.
form-not-whole = Es igual. Puedes escribirlo como número entero.
form-extra-zeros = Es igual. No hacen falta los últimos ceros.
form-not-expanded = Es igual. Escríbelo sin paréntesis y junta los términos semejantes.
form-not-factored = Es igual. Escríbelo como producto, con todo el factor común delante.
form-other-steps = Tiene el mismo valor. Escribe los pasos que pide la pregunta.
form-other-form = Es igual. Aquí está escrito de otra manera.

## Places of a number.
place-ones = Unidades
place-tens = Decenas
place-hundreds = Centenas
place-thousands = Millares
place-ten-thousands = Decenas de millar
place-hundred-thousands = Centenas de millar
place-millions = Millones

## Signs of units.
unit-mm = mm
unit-cm = cm
unit-m = m
unit-km = km
unit-in = pulg
unit-ft = pies
unit-yd = yd
unit-mi = mi
unit-g = g
unit-kg = kg
unit-oz = oz
unit-lb = lb
unit-ml = mL
unit-l = L
unit-cup = tazas
unit-pt = pt
unit-qt = ct
unit-gal = gal
unit-s = s
unit-min = min
unit-h = h
unit-days = días
unit-weeks = semanas
unit-square-units = unidades cuadradas
unit-square-cm = cm cuadrados
unit-square-m = m cuadrados
unit-square-ft = pies cuadrados
unit-square-in = pulg cuadradas
unit-cubic-units = unidades cúbicas
unit-cubic-cm = cm cúbicos
unit-cubic-m = m cúbicos
unit-cubic-in = pulg cúbicas
unit-units = unidades
unit-dollars = dólares
unit-cents = centavos
unit-degrees = grados
unit-times = veces

## What a teacher wrote: shown as it stands.
own-words = { $words }
own-first = Primero
own-last = Último
