decimal-hint-places = Compara primero las unidades. Luego las décimas y después las centésimas.
decimal-hint-even = Escribe la misma cantidad de lugares en los dos: { $left } y { $right }.
decimal-hint-line-up = Alinea los puntos decimales.
decimal-hint-zeros = Llena con ceros los lugares vacíos: { $work }.
decimal-hint-columns = Calcula desde la derecha, un lugar a la vez. Pon el punto en línea con los otros.
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
g4-tenths-hundredths-step-ten = Cada décima son 10 centésimas: { $work }.
g4-tenths-hundredths-story-1 = { $name } tiene { $fraction } de un metro de cinta. Un metro tiene { $given } centímetros. ¿Cuántos centímetros son?
g4-tenths-hundredths-story-2 = { $name } tiene { $fraction } de un dólar. Un dólar tiene { $given } centavos. ¿Cuántos centavos son?
g4-tenths-hundredths-story-3 = { $name } sombrea { $fraction } de un cuadrado. El cuadrado tiene { $given } partes iguales. ¿Cuántas partes son?
g4-tenths-hundredths-story-4 = { $name } llena { $fraction } de una página de casillas. La página tiene { $given } casillas. ¿Cuántas casillas son?

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
g4-decimal-on-line-story-1 = La recta muestra metros en { $parts } partes iguales. { $name } salta hasta el punto. ¿Qué decimal es?
g4-decimal-on-line-story-2 = La recta muestra millas en { $parts } partes iguales. { $name } está en el punto. ¿Qué decimal es?
g4-decimal-on-line-story-3 = La recta muestra litros en { $parts } partes iguales. { $name } llena un frasco hasta el punto. ¿Qué decimal es?
g4-decimal-on-line-story-1-mark = La recta muestra metros. { $name } salta hasta { $value }. Pon un punto allí.
g4-decimal-on-line-story-2-mark = La recta muestra millas. { $name } está en { $value }. Pon un punto allí.
g4-decimal-on-line-story-3-mark = La recta muestra litros. { $name } llena un frasco hasta { $value }. Pon un punto allí.

g5-decimal-read-write-ask = Escríbelo como decimal.
g5-decimal-read-write-hint-places = Después del punto van décimas, centésimas y milésimas.
g5-decimal-read-write-hint-zero = Un lugar sin parte lleva un 0.
g5-decimal-read-write-step-digits = Décimas: { $tenths }. Centésimas: { $hundredths }. Milésimas: { $thousandths }.
g5-decimal-read-write-ask-words = ¿Qué decimal es este?
g5-decimal-read-write-words-hundredths = { $ones } enteros y { $part } centésimas
g5-decimal-read-write-words-thousandths = { $ones } enteros y { $part } milésimas
g5-decimal-read-write-hint-and = Los enteros van antes del punto.
g5-decimal-read-write-hint-two-places = Las centésimas ocupan dos lugares después del punto.
g5-decimal-read-write-hint-three-places = Las milésimas ocupan tres lugares después del punto.

g5-decimal-round-ask = Redondea { $n } { $place }.
g5-decimal-round-hint-ends = ¿Entre qué dos números está? Piensa: { $place }.

decimal-hint-empty-place = Un lugar vacío al final vale 0.
misconception-rounded-to-larger-place = Mira el lugar al que redondeas. Usaste un lugar mayor.
    .name = Redondeó a un lugar mayor
misconception-not-rounded = Dejaste el número igual. Redondéalo al lugar que se pide.
    .name = No redondeó
