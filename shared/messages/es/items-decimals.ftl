decimal-hint-places = Compara primero las unidades. Luego los décimos y después los centésimos.
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
decimal-place-whole = número entero
decimal-place-tenth = décimo
decimal-place-hundredth = centésimo

g4-tenths-hundredths-hint-one = Un décimo son diez centésimos.
g4-tenths-hundredths-hint-rods = Una barra es un décimo. Está hecha de diez cubos pequeños.
g4-tenths-hundredths-hint-blocks = Estos son los décimos. Cada barra son diez centésimos.
g4-tenths-hundredths-step-ten = { $tenths ->
    [one] { $tenths } décimo tiene diez veces esa cantidad de centésimos.
   *[other] { $tenths } décimos tienen diez veces esa cantidad de centésimos.
}

g4-decimal-write-ask = Escríbelo como decimal.
g4-decimal-write-hint-tenths = Los décimos van en el primer lugar después del punto.
g4-decimal-write-hint-hundredths = Los centésimos van en el segundo lugar después del punto.
g4-decimal-write-hint-blocks = Una placa es 1. Una barra es un décimo. Un cubo pequeño es un centésimo.
g4-decimal-write-step-tenths = { $tenths ->
    [one] { $tenths } décimo va justo después del punto.
   *[other] { $tenths } décimos van justo después del punto.
}
g4-decimal-write-step-hundredths = Lugar de los décimos: { $tenths }. Lugar de los centésimos: { $hundredths }.

g4-decimal-on-line-ask-name = La recta está cortada en { $parts } partes iguales. ¿Qué decimal está en el punto?
g4-decimal-on-line-ask-mark = Pon un punto en { $value }.
g4-decimal-on-line-line = Una recta numérica de { $from } a { $to } en { $parts } partes iguales.
g4-decimal-on-line-line-point = Una recta numérica de { $from } a { $to } en { $parts } partes iguales. Hay un punto { $marks } partes después del extremo izquierdo.
g4-decimal-on-line-hint-parts = ¿Cuánto vale una de las { $parts } partes?
g4-decimal-on-line-hint-jump = Cuenta los saltos desde el extremo izquierdo.
g4-decimal-on-line-step-size = Cada parte vale { $step }.
g4-decimal-on-line-step-count = { $marks ->
    [one] Avanza { $marks } parte desde { $from } para llegar a { $value }.
   *[other] Avanza { $marks } partes desde { $from } para llegar a { $value }.
}

g5-decimal-read-write-ask = Escríbelo como decimal.
g5-decimal-read-write-hint-places = Después del punto van décimos, centésimos y milésimos.
g5-decimal-read-write-hint-zero = Un lugar sin parte lleva un 0.
g5-decimal-read-write-step-digits = Décimos: { $tenths }. Centésimos: { $hundredths }. Milésimos: { $thousandths }.

g5-decimal-round-ask = Redondea { $n } al { $place } más cercano ({ $unit }).
