round-ask = Redondea { $n } { $place }.
round-rule = Si está justo en la mitad, sube.
round-line = Una recta numérica de { $down } a { $up } con un punto en { $n }.
round-hint-between = El número está entre { $down } y { $up }.
round-hint-line = ¿Qué extremo está más cerca?
round-hint-ends = ¿Entre qué dos números redondos está? Uno es menor y el otro es mayor. Piensa: { $place }.
round-hint-half = Busca la mitad hasta el número redondo de abajo y hasta el de arriba.
round-step-half = La mitad es { $half }.
round-step-up = { $n } está en la mitad o más. Sube a { $right }.
round-step-down = { $n } está antes de la mitad. Baja a { $right }.
round-step-low = { $n } está en la mitad. Sube, así que sirve.
round-step-high = { $n } también está en la mitad. Sube y se pasa, así que no sirve.
round-place-10 = a la decena más cercana
round-place-100 = a la centena más cercana
round-place-1000 = al millar más cercano
round-place-10000 = a la decena de millar más cercana
round-place-100000 = a la centena de millar más cercana
round-ask-which = ¿Cuáles de estos números dan { $to } al redondearlos { $place }? Elige todos.

g4-place-value-tens-ask-factor = ¿Cuántas veces cabe { $small } en { $large }?
g4-place-value-tens-ask-value = ¿Qué número es { $factor } veces { $small }?
g4-place-value-tens-hint-left = Un lugar más a la izquierda vale diez veces lo que vale este.
g4-place-value-tens-hint-count = { $gap ->
    [one] La cifra se mueve { $gap } lugar.
   *[other] La cifra se mueve { $gap } lugares.
}
g4-place-value-tens-step-moved = { $gap ->
    [one] La cifra se mueve { $gap } lugar a la izquierda. Ahora vale { $factor } veces lo que valía.
   *[other] La cifra se mueve { $gap } lugares a la izquierda. Ahora vale { $factor } veces lo que valía.
}
g4-place-value-tens-ask-factor-1 = { $name } tiene { $small } puntos. Un equipo tiene { $large } puntos. ¿Cuántas veces cabe la primera cantidad en la segunda?
g4-place-value-tens-ask-factor-2 = { $name } llena una caja pequeña con { $small } cuentas y una grande con { $large } cuentas. ¿Cuántas veces cabe la primera cantidad en la segunda?
g4-place-value-tens-ask-factor-3 = { $name } escribe { $small } y luego { $large }. ¿Cuántas veces cabe el primer número en el segundo?
g4-place-value-tens-ask-value-1 = { $name } tiene { $small } puntos. Un equipo tiene { $factor } veces esa cantidad. ¿Cuántos puntos son?
g4-place-value-tens-ask-value-2 = { $name } llena una caja pequeña con { $small } cuentas. En una grande caben { $factor } veces esa cantidad. ¿Cuántas son?
g4-place-value-tens-ask-value-3 = { $name } escribe { $small } y luego un número que vale { $factor } veces eso. ¿Cuál es el segundo número?

g4-read-write-numbers-ask-words = Escribe este número con cifras: { $words }.
g4-read-write-numbers-ask-parts = Escríbelo como un solo número.
g4-read-write-numbers-ask-name = ¿Cómo se lee { $n }?
g4-read-write-numbers-hint-places = Pon cada parte en su lugar.
g4-read-write-numbers-hint-zero = Un lugar sin parte lleva un 0.
g4-read-write-numbers-hint-groups = Lee primero los millares. Luego lee lo demás.
g4-read-write-numbers-step-parts = Halla el valor de cada parte.
g4-read-write-numbers-step-zeros = Los lugares vacíos llevan ceros: { $n }.

g4-compare-numbers-hint-digits = Primero cuenta las cifras.
g4-compare-numbers-hint-left = Si tienen la misma cantidad de cifras, mira desde la izquierda. Busca el primer lugar distinto.
g4-compare-numbers-hint-parts = Un lado es una suma de partes. Escríbela como un solo número.
g4-compare-numbers-step-more-digits = El número de la izquierda tiene { $left } cifras. El de la derecha tiene { $right }. Con más cifras, el número es mayor.
g4-compare-numbers-step-first-different = En el primer lugar distinto, el número de la izquierda tiene { $left } y el de la derecha tiene { $right }.

g5-place-value-powers-ask-factor = ¿Cuántas veces cabe { $small } en { $large }?
g5-place-value-powers-ask-tenth = ¿Cuánto es { $part } de { $large }?
g5-place-value-powers-ask-factor-1 = { $name } escribe { $small } y luego { $large }. ¿Cuántas veces cabe el primer número en el segundo?
g5-place-value-powers-ask-factor-2 = { $name } mueve una cifra a la izquierda. Su valor era { $small } y ahora es { $large }. ¿Cuántas veces cabe el primero en el segundo?
g5-place-value-powers-ask-tenth-1 = { $name } escribe { $large }. El siguiente número es { $part } de él. ¿Cuál es?
g5-place-value-powers-ask-tenth-2 = { $name } mueve una cifra a la derecha. Su valor era { $large }. Ahora es { $part } de eso. ¿Cuánto es ahora?
g5-place-value-powers-hint-left = Un lugar más a la izquierda vale diez veces lo que vale este.
g5-place-value-powers-hint-right = Un lugar más a la derecha vale la décima parte.
g5-place-value-powers-hint-count = { $gap ->
    [one] La cifra se mueve { $gap } lugar.
   *[other] La cifra se mueve { $gap } lugares.
}
g5-place-value-powers-step-moved = { $gap ->
    [one] La cifra se mueve { $gap } lugar a la izquierda. Ahora vale { $factor } veces lo que valía.
   *[other] La cifra se mueve { $gap } lugares a la izquierda. Ahora vale { $factor } veces lo que valía.
}
g5-place-value-powers-step-right = { $gap ->
    [one] La cifra se mueve { $gap } lugar a la derecha.
   *[other] La cifra se mueve { $gap } lugares a la derecha.
}

g5-powers-of-ten-hint-power = { $exponent ->
    [one] La potencia tiene un solo factor 10. Es { $ten }.
   *[other] La potencia tiene { $exponent } factores 10. Es { $ten }.
}
g5-powers-of-ten-hint-left = { $exponent ->
    [one] El número crece. Cada cifra se mueve { $exponent } lugar a la izquierda.
   *[other] El número crece. Cada cifra se mueve { $exponent } lugares a la izquierda.
}
g5-powers-of-ten-hint-right = { $exponent ->
    [one] El número baja. Cada cifra se mueve { $exponent } lugar a la derecha.
   *[other] El número baja. Cada cifra se mueve { $exponent } lugares a la derecha.
}
number-in-words = { $words }
