## Short prompts shared by many exercises.
common-work-out = Calcula.
common-box = ¿Qué número va en el cuadro?
common-sign = ¿Qué signo hace que sea cierto?
common-sign-1 = Estos son los largos de dos cintas en metros. ¿Qué signo hace que sea cierto?
common-sign-2 = Estas son las alturas de dos plantas en metros. ¿Qué signo hace que sea cierto?
common-sign-3 = Dos personas caminan. Estas son sus millas. ¿Qué signo hace que sea cierto?
common-sign-4 = Dos jarras tienen agua. Estos son los litros. ¿Qué signo hace que sea cierto?
common-sign-5 = Estas son las masas de dos bolsas en kilogramos. ¿Qué signo hace que sea cierto?
common-sign-6 = Estos son dos saltos de longitud en metros. ¿Qué signo hace que sea cierto?
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
answer-boxes = Por ejemplo: { $sentence }
half-day-am = de la mañana
half-day-pm = de la tarde o de la noche

answer-given-before = Ya diste esta respuesta, así que no cuenta otra vez. Prueba otra.

## A kind word about the form of an equal answer.
form-not-simplest = Es igual. Puedes escribirlo de una forma más simple.
form-not-mixed = Es igual. Prueba con un número mixto.
form-not-single-fraction = Es igual. Prueba con una sola fracción.
form-other-bottom = Es igual. La pregunta pide otro denominador.
form-not-whole = Es igual. Puedes escribirlo como número entero.
form-extra-zeros = Es igual. No hacen falta los últimos ceros.
form-not-expanded = Es igual. Escríbelo sin paréntesis y combina los términos semejantes.
form-not-factored = Es igual. Escríbelo como producto, con todo el factor común delante.
form-other-steps = Tiene el mismo valor. Escribe los pasos que pide la pregunta.
form-other-form = Es igual. Aquí está escrito de otra manera.
form-other-numbers = Eso es verdad. Usa solo los números que permite la pregunta.
form-first-part-only = Tu primera respuesta es correcta. Mira otra vez la segunda parte.

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
unit-cubic-ft = pies cúbicos
    .one = pie cúbico
    .part = de pie cúbico
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
mend-says-1 = { $name } responde esto:
mend-says-2 = Esta es la respuesta que da { $name }:
who-one-is-right = Solo una de las dos respuestas es correcta. ¿De quién es?
mend-ask = ¿Es correcta?
mend-right-answer = ¿Cuál es la respuesta correcta?
answer-sign-ask-1 = Llama A a la respuesta. ¿Qué signo hace que sea verdad?
answer-sign-ask-2 = ¿La respuesta es menor, igual o mayor? A es la respuesta.
answer-sign-step = Compara la respuesta con el otro número.
estimate-first = Primero, no lo calcules. ¿Qué número está más cerca de la respuesta?
estimate-then = Ahora calcúlalo. ¿Cuál es la respuesta?

## Cuadros que se llenan para que sea verdad.
boxes-ask = Llena los cuadros para que sea verdad. Hay más de una manera.
boxes-cards = Usa cada uno de estos números una sola vez: { $cards }
boxes-range = Usa números enteros del { $least } al { $greatest }.
boxes-area = Un rectángulo tiene un área de { $area ->
    [one] { $area } unidad cuadrada
   *[other] { $area } unidades cuadradas
}. Los cuadros son su largo y su ancho.
boxes-perimeter = Un rectángulo tiene un perímetro de { $perimeter ->
    [one] { $perimeter } unidad
   *[other] { $perimeter } unidades
}. Los cuadros son su largo y su ancho.
boxes-volume = Una caja tiene un volumen de { $volume ->
    [one] { $volume } unidad cúbica
   *[other] { $volume } unidades cúbicas
}. Los cuadros son su largo, su ancho y su altura.
boxes-mean = La media de cuatro números es { $mean }. Faltan dos de ellos.
boxes-percent = { $one } quiere decir { $part }. ¿Qué porcentaje de qué número es { $value }? El primer cuadro es el porcentaje.
boxes-hint-last-digits = Mira primero las últimas cifras. ¿Cuáles dos van juntas?
boxes-hint-numerators = Los denominadores ya están. Piensa en los numeradores.
boxes-hint-same-parts = Primero escribe las dos fracciones en partes del mismo tamaño.
boxes-hint-factor = Prueba un número en un cuadro. Luego halla lo que queda para los otros.
boxes-hint-quotient = Busca dos números donde uno cabe en el otro justo esas veces.
boxes-hint-order = ¿Qué parte se calcula primero? Prueba allí un número pequeño.
boxes-hint-equal-parts = Corta cada parte en el mismo número de partes más pequeñas.
boxes-hint-between = Halla una fracción un poco menor y otra un poco mayor.
boxes-hint-from-left = Piensa en la recta numérica. El número menor está más a la izquierda.
boxes-hint-order-least = Compara dos de los números, lugar por lugar desde la izquierda.
boxes-hint-half-way = El largo y el ancho juntos son la mitad del contorno.
boxes-hint-ratio = Multiplica los dos números de la razón por el mismo número.
boxes-hint-mean = Primero halla la suma de los cuatro números.
boxes-hint-percent = El doble del porcentaje de la mitad es la misma cantidad.
boxes-hint-places = ¿Cuántas centenas hay? ¿Qué queda para las decenas?
boxes-hint-try = Pon un número en un cuadro. Mira si el resto puede ser verdad.
boxes-step-one = Esta es una manera.
boxes-step-other = Esta es otra manera.

## Una comparación y el hecho que decide.
reason-ask = ¿Cuál de estos hechos es verdad y te ayuda a decidir?
reason-same-parts = Las dos tienen partes del mismo tamaño.
reason-same-count = Las dos toman el mismo número de partes.
reason-half-between = Una es menor que un medio y la otra es mayor.
reason-one-between = Una es menor que 1 y la otra es mayor que 1.
reason-one-part-missing = A cada una le falta solo una parte para llegar a 1.
reason-same-point = Las dos están en el mismo punto de la recta numérica.
reason-zero-between = Uno es menor que 0 y el otro es mayor que 0.
reason-both-below-zero = Los dos son menores que 0. Así, el más cercano a 0 es mayor.
reason-both-above-zero = Los dos son mayores que 0. Así, el más cercano a 0 es menor.
reason-same-distance = Están a la misma distancia de 0, uno a cada lado.
reason-differ-hundred-thousands = Desde la izquierda, la primera diferencia está en las centenas de millar.
reason-differ-ten-thousands = Desde la izquierda, la primera diferencia está en las decenas de millar.
reason-differ-thousands = Desde la izquierda, la primera diferencia está en los millares.
reason-differ-hundreds = Desde la izquierda, la primera diferencia está en las centenas.
reason-differ-tens = Desde la izquierda, la primera diferencia está en las decenas.
reason-differ-ones = Desde la izquierda, la primera diferencia está en las unidades.
reason-differ-tenths = Desde la izquierda, la primera diferencia está en las décimas.
reason-differ-hundredths = Desde la izquierda, la primera diferencia está en las centésimas.
reason-same-in-each-place = Ningún lugar es diferente.

## Líneas de trabajo con un error.
lines-ask = { $name } calcula { $work }. Una línea tiene un error. Las siguientes continúan con él. ¿Qué línea es?
lines-line = Línea { $line }
lines-mend = ¿Cuál es el número correcto al final de esa línea?
lines-hint-check = Revisa cada línea sola. ¿Su lado izquierdo es igual a su lado derecho?
lines-hint-first = Empieza por la primera línea. Calcúlala y luego sigue con la próxima.
lines-step-line = La línea { $line } no es verdad. Esto es lo correcto:

## Dos maneras de calcular algo.
ways-ask = { $first } y { $second } calculan { $work }. Cada persona tiene su manera. ¿Qué manera da la respuesta correcta?
ways-says = { $name }: { $way }
ways-first = Solo la de { $first }
ways-second = Solo la de { $second }
ways-both = Las dos
ways-neither = Ninguna de las dos
ways-compute = ¿Cuánto es { $work }?
ways-hint-picture = Cada manera cambia los números. Pregúntate si ese cambio se compensa.
ways-hint-small = Prueba cada manera con números pequeños. ¿Todavía funciona?
ways-step = { $name } obtiene esto:

## La ecuación de una historia, y luego su respuesta.
equation-ask = Primero: ¿qué ecuación corresponde? La letra n es el número que buscas.
equation-solve = Ahora resuélvela. ¿Cuánto vale n?
equation-hint-story = Léelo otra vez. ¿Qué pasa primero y qué pasa después?
## El error en una respuesta, entre qué números está, un número que falta.
misconception-ask = ¿Qué error cometió { $name }?
misconception-none = Ninguno. Es correcta
between-ask = Primero, no lo calcules. ¿Entre qué dos números está la respuesta?
between-choice = { $low } y { $high }
between-step = La respuesta está entre { $low } y { $high }.
between-hint = Piensa en números fáciles cerca de estos.
missing-hint-undo = Regresa desde el resultado. ¿Qué operación te lleva de vuelta?
missing-hint-try = Pon tu número en el cuadro. ¿Da el resultado?
missing-step-check = Compruébalo:
