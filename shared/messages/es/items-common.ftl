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
form-not-simplest = Es igual. Puedes escribirlo de una forma más simple.
form-not-mixed = Es igual. Prueba con un número mixto.
form-not-single-fraction = Es igual. Prueba con una sola fracción.
form-other-bottom = Es igual. La pregunta pide otro número abajo.
form-not-whole = Es igual. Puedes escribirlo como número entero.
form-extra-zeros = Es igual. No hacen falta los últimos ceros.
form-not-expanded = Es igual. Escríbelo sin paréntesis y combina los términos semejantes.
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

## Units: of several, `.one` of one, `.part` of a part of one.
unit-mm = milímetros
    .one = milímetro
    .part = de milímetro
unit-cm = centímetros
    .one = centímetro
    .part = de centímetro
unit-m = metros
    .one = metro
    .part = de metro
unit-km = kilómetros
    .one = kilómetro
    .part = de kilómetro
unit-in = pulgadas
    .one = pulgada
    .part = de pulgada
unit-ft = pies
    .one = pie
    .part = de pie
unit-yd = yardas
    .one = yarda
    .part = de yarda
unit-mi = millas
    .one = milla
    .part = de milla
unit-g = gramos
    .one = gramo
    .part = de gramo
unit-kg = kilogramos
    .one = kilogramo
    .part = de kilogramo
unit-oz = onzas
    .one = onza
    .part = de onza
unit-lb = libras
    .one = libra
    .part = de libra
unit-ml = mililitros
    .one = mililitro
    .part = de mililitro
unit-l = litros
    .one = litro
    .part = de litro
unit-cup = tazas
    .one = taza
    .part = de taza
unit-pt = pintas
    .one = pinta
    .part = de pinta
unit-qt = cuartos de galón
    .one = cuarto de galón
    .part = de cuarto de galón
unit-gal = galones
    .one = galón
    .part = de galón
unit-s = segundos
    .one = segundo
    .part = de segundo
unit-min = minutos
    .one = minuto
    .part = de minuto
unit-h = horas
    .one = hora
    .part = de hora
unit-days = días
    .one = día
    .part = de día
unit-weeks = semanas
    .one = semana
    .part = de semana
unit-square-units = unidades cuadradas
    .one = unidad cuadrada
    .part = de unidad cuadrada
unit-square-cm = centímetros cuadrados
    .one = centímetro cuadrado
    .part = de centímetro cuadrado
unit-square-m = metros cuadrados
    .one = metro cuadrado
    .part = de metro cuadrado
unit-square-ft = pies cuadrados
    .one = pie cuadrado
    .part = de pie cuadrado
unit-square-in = pulgadas cuadradas
    .one = pulgada cuadrada
    .part = de pulgada cuadrada
unit-cubic-units = unidades cúbicas
    .one = unidad cúbica
    .part = de unidad cúbica
unit-cubic-cm = centímetros cúbicos
    .one = centímetro cúbico
    .part = de centímetro cúbico
unit-cubic-m = metros cúbicos
    .one = metro cúbico
    .part = de metro cúbico
unit-cubic-in = pulgadas cúbicas
    .one = pulgada cúbica
    .part = de pulgada cúbica
unit-units = unidades
    .one = unidad
    .part = de unidad
unit-dollars = dólares
    .one = dólar
    .part = de dólar
unit-cents = centavos
    .one = centavo
    .part = de centavo
unit-degrees = grados
    .one = grado
    .part = de grado
unit-times = veces
    .one = vez
    .part = de vez

## What a teacher wrote: shown as it stands.
own-words = { $words }
own-first = Primero
own-last = Último
who-says = { $first } dice que la respuesta es { $one }. { $second } dice que es { $two }. ¿Quién tiene razón?
who-name = { $name }
who-neither = Ninguno de los dos
who-hint = Primero halla tu respuesta. Luego compara.
estimate-ask = No lo calcules. ¿Qué número está más cerca de la respuesta?
estimate-hint-round = Redondea cada número a su primera cifra.
estimate-hint-size = Piensa qué tan grande es la respuesta: ¿decenas, centenas, millares?
estimate-step = La respuesta es más o menos { $about }.
