decimal-hint-places = Compara primero las unidades. Luego las décimas y después las centésimas.
decimal-hint-even = Escribe los mismos lugares en los dos: { $left } y { $right }.
decimal-hint-line-up = Alinea los puntos decimales.
decimal-hint-zeros = Llena con ceros los lugares vacíos: { $work }.
decimal-hint-as-wholes = Multiplica como si no hubiera puntos: { $work }.
decimal-hint-places-together = { $places ->
    [one] Los factores tienen { $places } lugar decimal en total. El producto también.
   *[other] Los factores tienen { $places } lugares decimales en total. El producto también.
}
decimal-hint-whole-divisor = Haz entero el divisor. Haz lo mismo con los dos números.
decimal-hint-point-up = El punto de la respuesta va arriba del punto del número que divides.
decimal-hint-check = Piensa en una multiplicación: { $work }.
decimal-step-both = Multiplica los dos por { $factor }: { $work }.
decimal-place-whole = al número entero más cercano
decimal-place-tenth = a la décima más cercana
decimal-place-hundredth = a la centésima más cercana

g4-tenths-hundredths-hint-one = Una décima son diez centésimas.
g4-tenths-hundredths-hint-rods = Una barra es una décima. Está hecha de diez cubos pequeños.
g4-tenths-hundredths-hint-blocks = Estas son las décimas. Cada barra son diez centésimas.
g4-tenths-hundredths-step-ten = { $tenths ->
    [one] { $tenths } décima tiene diez veces esa cantidad de centésimas.
   *[other] { $tenths } décimas tienen diez veces esa cantidad de centésimas.
}

g4-decimal-write-ask = Escríbelo como decimal.
g4-decimal-write-hint-tenths = Las décimas van en el primer lugar después del punto.
g4-decimal-write-hint-hundredths = Las centésimas van en el segundo lugar después del punto.
g4-decimal-write-hint-blocks = Una placa es 1. Una barra es una décima. Un cubo pequeño es una centésima.
g4-decimal-write-step-tenths = { $tenths ->
    [one] { $tenths } décima va justo después del punto.
   *[other] { $tenths } décimas van justo después del punto.
}
g4-decimal-write-step-hundredths = Lugar de las décimas: { $tenths }. Lugar de las centésimas: { $hundredths }.

g4-decimal-on-line-ask-name = La recta está cortada en { $parts } partes iguales. ¿Qué decimal está en el punto?
g4-decimal-on-line-ask-mark = Pon un punto en { $value }.
g4-decimal-on-line-line = Una recta numérica de { $from } a { $to } en { $parts } partes iguales.
g4-decimal-on-line-line-point = Una recta numérica de { $from } a { $to } en { $parts } partes iguales. Hay un punto { $marks ->
    [one] { $marks } parte
   *[other] { $marks } partes
} después del extremo izquierdo.
g4-decimal-on-line-hint-parts = ¿Cuánto vale una de las { $parts } partes?
g4-decimal-on-line-hint-jump = Cuenta los saltos desde el extremo izquierdo.
g4-decimal-on-line-step-size = Cada parte vale { $step }.
g4-decimal-on-line-step-count = { $marks ->
    [one] Avanza { $marks } parte desde { $from } para llegar a { $value }.
   *[other] Avanza { $marks } partes desde { $from } para llegar a { $value }.
}

g5-decimal-read-write-ask = Escríbelo como decimal.
g5-decimal-read-write-hint-places = Después del punto van décimas, centésimas y milésimas.
g5-decimal-read-write-hint-zero = Un lugar sin parte lleva un 0.
g5-decimal-read-write-step-digits = Décimas: { $tenths }. Centésimas: { $hundredths }. Milésimas: { $thousandths }.

g5-decimal-round-ask = Redondea { $n } { $place }.
g5-decimal-round-hint-ends = ¿Entre qué dos números está? Piensa: { $place }.
