parity-even = Par
parity-odd = Impar
parity-unknown = No se puede saber
number-prime = Primo
number-composite = Compuesto
ordinal-4 = cuarto
ordinal-5 = quinto
ordinal-6 = sexto
ordinal-7 = séptimo
written-hint-split = Separa un número en sus lugares: { $work }.
written-hint-area = Halla cada parte. Luego suma las partes.
written-step-add = Suma las partes.
written-step-divide = { $rest } ÷ { $by }: escribe { $quotient }. { $times }. { $left }.

g3-multiply-equal-groups-ask-1 = Hay { $groups } bolsas. Cada bolsa tiene { $each } canicas. ¿Cuántas canicas hay?
g3-multiply-equal-groups-ask-2 = Hay { $groups } botes. Cada bote tiene { $each } asientos. ¿Cuántos asientos hay?
g3-multiply-equal-groups-ask-3 = Hay { $groups } platos. Cada plato tiene { $each } ciruelas. ¿Cuántas ciruelas hay?
g3-multiply-equal-groups-ask-4 = Hay { $groups } cajas. Cada caja tiene { $each } plumas. ¿Cuántas plumas hay?
g3-multiply-equal-groups-hint-groups = Hay { $groups } grupos de { $each }.
g3-multiply-equal-groups-hint-count = Cuenta de { $each } en { $each }.
g3-multiply-equal-groups-ask-mark = Muestra { $work } con filas iguales. Marca los cuadrados.
g3-multiply-equal-groups-ask-5 = Hay { $groups } floreros. Cada florero tiene { $each } rosas. ¿Cuántas rosas hay?
g3-multiply-equal-groups-ask-6 = Hay { $groups } estantes. Cada estante tiene { $each } libros. ¿Cuántos libros hay?
g3-multiply-equal-groups-hint-rows = Son { $groups } filas de { $each }.
g3-multiply-equal-groups-hint-under = Marca { $each } cuadrados en una fila. Pon la fila siguiente justo debajo.
g3-multiply-equal-groups-step-rows = Haz { $groups } filas.

g3-missing-factor-hint-family = Multiplicar y dividir van juntos. Usa lo que ya sabes.
g3-missing-factor-hint-figure = ¿Qué multiplicación tiene estos números?
g3-missing-factor-step-family = La operación es { $fact }.
g3-missing-factor-story-1 = { $name } llena { $a } bolsas. Todas tienen la misma cantidad de canicas. En total hay { $c } canicas: { $equation }. ¿Qué número va en el cuadro?
g3-missing-factor-story-2 = { $a } camionetas llevan a { $c } pasajeros. Cada camioneta lleva la misma cantidad: { $equation }. ¿Qué número va en el cuadro?
g3-missing-factor-story-3 = { $name } lee { $a } días, la misma cantidad de páginas cada día. Son { $c } páginas: { $equation }. ¿Qué número va en el cuadro?
g3-missing-factor-story-1-groups = { $name } tiene { $c } canicas y pone { $a } en cada bolsa. Halla cuántas bolsas son: { $equation }. ¿Qué número va en el cuadro?
g3-missing-factor-story-2-groups = { $c } pasajeros viajan en camionetas. Cada camioneta lleva a { $a }. Halla cuántas camionetas son: { $equation }. ¿Qué número va en el cuadro?
g3-missing-factor-story-3-groups = { $name } lee { $a } páginas cada día hasta la página { $c }. Halla cuántos días tarda: { $equation }. ¿Qué número va en el cuadro?

g3-multiply-properties-hint-split = Parte en dos cada una de las { $rows } filas.
g3-multiply-properties-hint-cut = El corte está después de { $first } en cada fila. ¿Cuántos quedan en cada fila?
g3-multiply-properties-step-split = Las dos partes forman la fila completa: { $work }.
g3-multiply-properties-hint-any-order = Puedes multiplicar en cualquier orden.
g3-multiply-properties-hint-first-two = Multiplica primero los dos primeros números.
g3-multiply-properties-hint-turned = Mira los factores de la multiplicación que sabes. ¿Qué es igual?
g3-multiply-properties-step-first-two = Primero: { $work }.
g3-multiply-properties-ask-turned = Sabes que { $known }. ¿Cuánto es { $asked }?
g3-multiply-properties-ask-turned-box = Sabes que { $known }. ¿Qué número va en el cuadro? { $asked }

g3-divide-as-missing-factor-ask = ¿Cuánto es { $divide }? Piensa: { $times }.
g3-divide-as-missing-factor-story-1 = Hay { $total } sillas en { $by } filas iguales. Piensa: { $times }. ¿Cuántas sillas hay en cada fila?
g3-divide-as-missing-factor-story-2 = { $name } pone { $total } calcomanías en { $by } páginas, la misma cantidad en cada una. Piensa: { $times }. ¿Cuántas calcomanías hay en cada página?
g3-divide-as-missing-factor-story-3 = Con { $total } jugadores se forman { $by } equipos iguales. Piensa: { $times }. ¿Cuántos jugadores hay en cada equipo?
g3-divide-as-missing-factor-ask-same = ¿En qué ecuación falta el mismo número? { $divide }
g3-divide-as-missing-factor-hint-same = Una división pregunta cuántas veces cabe un número en otro.
g3-divide-as-missing-factor-hint-think = Busca el número que hace cierto { $times }.
g3-divide-as-missing-factor-hint-rows = Pon { $total } puntos en { $rows } filas. ¿Cuántos hay en cada fila?
g3-divide-as-missing-factor-step-fact = Sabes que { $fact }.

g3-facts-multiply-hint-groups = { $groups ->
    [one] Piensa en { $groups } grupo de { $each }.
   *[other] Piensa en { $groups } grupos de { $each }.
}
g3-facts-multiply-hint-zero = Cero grupos, o grupos de cero, son 0 en total.
g3-facts-multiply-hint-one = Un grupo de un número es ese número.
g3-facts-multiply-hint-near = Empieza con una multiplicación que sabes. Luego suma lo que falta.
g3-facts-multiply-hint-rows = { $rows } filas de { $each }, cortadas en dos partes.
g3-facts-multiply-hint-rows-turned = Cambia el orden: { $rows } filas de { $each } son la misma cantidad. Están cortadas en dos partes.
g3-facts-multiply-step-near = Primera parte: { $work }.
g3-facts-multiply-step-rest = Segunda parte: { $work }.

g3-facts-divide-hint-times = Piensa en la multiplicación.
g3-facts-divide-hint-fact = Halla el número que falta: { $fact }.
g3-facts-divide-step-fact = Sabes que { $fact }.

g3-multiply-by-tens-hint-tens = { $n } es { $tens ->
    [one] { $tens } decena
   *[other] { $tens } decenas
}.
g3-multiply-by-tens-hint-fact = Primero calcula { $fact }.
g3-multiply-by-tens-story-1 = En una caja caben { $n } crayones. ¿Cuántos crayones hay en { $a } cajas?
g3-multiply-by-tens-story-2 = Un autobús tiene { $n } asientos. ¿Cuántos asientos tienen { $a } autobuses iguales?
g3-multiply-by-tens-story-3 = { $name } lee { $n } páginas cada semana. ¿Cuántas páginas son en { $a } semanas?
g3-multiply-by-tens-story-4 = { $name } pone { $a } tablas una tras otra. Cada tabla mide { $n } pulgadas. ¿Cuántas pulgadas son en total?
g3-multiply-by-tens-story-1-missing = En { $a } cajas hay { $total } crayones. Todas tienen la misma cantidad. ¿Cuántos crayones hay en cada caja?
g3-multiply-by-tens-story-2-missing = { $name } lee { $total } páginas en { $a } semanas, la misma cantidad cada semana. ¿Cuántas páginas son cada semana?
g3-multiply-by-tens-hint-missing = Piensa en decenas: el producto es { $total } decenas.
g3-multiply-by-tens-hint-missing-fact = Primero halla cuántas decenas son: { $fact }.
g3-multiply-by-tens-step-fact = La multiplicación es { $fact }.
g3-multiply-by-tens-step-tens = { $tens } decenas son { $n }.

g3-divide-share-ask-1 = { $name } reparte { $total } calcomanías entre { $n } amigos. A todos les toca igual. ¿Cuántas le tocan a cada uno?
g3-divide-share-ask-2 = Se ponen { $total } lápices en { $n } vasos. Cada vaso lleva lo mismo. ¿Cuántos hay en cada vaso?
g3-divide-share-ask-3 = Hay { $total } sillas en { $n } filas iguales. ¿Cuántas sillas hay en una fila?
g3-divide-share-ask-4 = { $name } tiene { $total } cuentas y pone { $n } en cada hilo. ¿Cuántos hilos puede llenar?
g3-divide-share-ask-5 = { $total } huevos van en cajas de { $n }. ¿Cuántas cajas se llenan?
g3-divide-share-ask-6 = { $total } jugadores forman equipos de { $n }. ¿Cuántos equipos hay?
g3-divide-share-ask-7 = Se ponen { $total } manzanas en { $n } canastas. Cada canasta lleva lo mismo. ¿Cuántas manzanas hay en cada canasta?
g3-divide-share-ask-8 = { $name } siembra { $total } semillas en { $n } filas iguales. ¿Cuántas semillas hay en cada fila?
g3-divide-share-ask-9 = { $n } niños se reparten { $total } crayones. A todos les toca igual. ¿Cuántos crayones le tocan a cada niño?
g3-divide-share-ask-10 = { $name } tiene { $total } fotos y pone { $n } en cada página. ¿Cuántas páginas llena?
g3-divide-share-ask-11 = { $total } estudiantes se sientan en mesas de { $n }. ¿Cuántas mesas se llenan?
g3-divide-share-ask-12 = Una cinta mide { $total } pulgadas. { $name } la corta en trozos de { $n } pulgadas. ¿Cuántos trozos hay?
g3-divide-share-hint-share = Reparte entre { $n }. ¿Cuánto le toca a cada uno?
g3-divide-share-hint-group = Haz grupos de { $n }. ¿Cuántos grupos hay?
g3-divide-share-hint-fact = Usa una multiplicación: { $fact }.

g3-multiply-divide-stories-ask-1 = Hay { $a } filas de sillas con { $b } sillas en cada fila. ¿Cuántas sillas hay?
g3-multiply-divide-stories-ask-2 = { $name } compra { $a } paquetes de papel. Cada paquete tiene { $b } hojas. ¿Cuántas hojas son?
g3-multiply-divide-stories-ask-3 = { $name } pone { $a } bloques en fila. Cada bloque mide { $b } pulgadas. ¿Cuántas pulgadas mide la fila?
g3-multiply-divide-stories-ask-4 = { $name } siembra { $a } filas de frijol con { $b } plantas en cada fila. ¿Cuántas plantas hay?
g3-multiply-divide-stories-ask-5 = Un autobús hace { $a } viajes. Lleva { $b } estudiantes en cada viaje. ¿Cuántos estudiantes lleva en total?
g3-multiply-divide-stories-ask-6 = { $name } lee { $b } páginas cada día durante { $a } días. ¿Cuántas páginas son?
g3-multiply-divide-stories-ask-7 = Hay { $total } plantas en { $a } filas iguales. ¿Cuántas plantas hay en cada fila?
g3-multiply-divide-stories-ask-8 = { $name } corta { $total } pulgadas de hilo en { $a } trozos iguales. ¿Cuántas pulgadas mide cada trozo?
g3-multiply-divide-stories-ask-9 = { $a } amigos se reparten { $total } conchas. A todos les toca igual. ¿Cuántas conchas le tocan a cada uno?
g3-multiply-divide-stories-ask-10 = { $name } pone { $total } libros en { $a } estantes. Cada estante lleva lo mismo. ¿Cuántos libros hay en cada estante?
g3-multiply-divide-stories-ask-11 = Se hornean { $total } panecillos en { $a } moldes iguales. ¿Cuántos panecillos hay en cada molde?
g3-multiply-divide-stories-ask-12 = { $name } ahorra lo mismo cada semana. En { $a } semanas son { $total } dólares. ¿Cuántos dólares ahorra cada semana?
g3-multiply-divide-stories-hint-times = Hay { $a } grupos de { $b }.
g3-multiply-divide-stories-hint-divide = Haz { $a } grupos iguales.
g3-multiply-divide-stories-hint-figure = Piensa en filas.
g3-multiply-divide-stories-hint-fact = Usa una multiplicación: { $fact }.

g3-two-step-stories-ask-1 = { $name } tiene { $have } centavos y compra { $n } plumas. Cada pluma cuesta { $each } centavos. ¿Cuántos centavos quedan?
g3-two-step-stories-ask-2 = { $name } llena { $n } páginas con { $each } calcomanías cada una. Hay { $more } calcomanías más en una caja. ¿Cuántas calcomanías hay en total?
g3-two-step-stories-ask-3 = { $name } recoge { $one } manzanas rojas y { $two } manzanas verdes. Van en { $n } bolsas. Cada bolsa lleva lo mismo. ¿Cuántas manzanas hay en una bolsa?
g3-two-step-stories-ask-4 = { $name } pone { $total } tarjetas en { $n } montones iguales. Luego quita { $used ->
    [one] { $used } tarjeta
   *[other] { $used } tarjetas
} de un montón. ¿Cuántas tarjetas quedan en ese montón?
g3-two-step-stories-hint-cost = Primero halla cuánto cuestan las plumas.
g3-two-step-stories-hint-letter-left = Sea m los centavos que quedan: { $equation }.
g3-two-step-stories-step-left = Luego réstalo del dinero.
g3-two-step-stories-hint-groups = Primero halla cuántas hay en los grupos.
g3-two-step-stories-hint-letter-all = Sea m el total: { $equation }.
g3-two-step-stories-step-more = Luego suma las demás.
g3-two-step-stories-hint-join = Primero junta las dos cantidades.
g3-two-step-stories-hint-share = Reparte en { $n } partes iguales.
g3-two-step-stories-hint-use = { $used ->
    [one] Luego quita { $used }.
   *[other] Luego quita { $used }.
}

g4-times-as-many-ask-1 = ¿Cuántas veces cabe { $small } en { $large }?
g4-times-as-many-ask-2 = ¿Qué número es { $n } veces { $small }?
g4-times-as-many-ask-3 = { $large } es { $n } veces un número. ¿Cuál es el número?
g4-times-as-many-hint-times = Comparar por veces es multiplicar.
g4-times-as-many-hint-bars = La barra larga está hecha de barras cortas.
g4-times-as-many-hint-fact = Halla el número que falta.
g4-times-as-many-bars = Una barra corta. Debajo, una barra de { $n } partes como esa.
g4-times-as-many-step-fact = La multiplicación es { $fact }.
g4-times-as-many-step-answer = Así que { $large } es { $n } veces { $small }.

g4-comparison-stories-ask-1 = Una cinta mide { $small } centímetros. Una cuerda mide { $n } veces lo que mide la cinta. ¿Cuántos centímetros mide la cuerda?
g4-comparison-stories-ask-2 = { $name } tiene { $small } sellos. { $other } tiene { $n } veces esa cantidad. ¿Cuántos sellos tiene { $other }?
g4-comparison-stories-ask-3 = { $name } leyó { $large } páginas. Eso es { $n } veces lo que leyó { $other }. ¿Cuántas páginas leyó { $other }?
g4-comparison-stories-ask-4 = Un estante tiene { $large } libros. Otro estante tiene { $small } libros. ¿Cuántas veces la cantidad del segundo tiene el primero?
g4-comparison-stories-ask-5 = { $name } tiene { $large } conchas. { $other } tiene { $small } conchas. ¿Cuántas conchas más tiene { $name }?
g4-comparison-stories-hint-times = Las cantidades se comparan por veces. Piensa en partes iguales.
g4-comparison-stories-hint-more = La pregunta es cuántas más. Halla la diferencia.
g4-comparison-stories-hint-bars = La barra larga está hecha de barras cortas.
g4-comparison-stories-hint-fact = Halla el número que falta.
g4-comparison-stories-hint-gap = ¿Cuánto hay de uno al otro?
g4-comparison-stories-bars = Una barra corta. Debajo, una barra de { $n } partes como esa.
g4-comparison-stories-step-times = Las cantidades se comparan por veces.
g4-comparison-stories-step-more = Las cantidades se comparan por cuántas más.

g4-multi-step-stories-ask-1-two = { $one } niñas y { $two } niños viajan en camionetas. En cada camioneta caben { $by } pasajeros. ¿Cuántas camionetas necesitan?
g4-multi-step-stories-ask-2-two = { $name } tiene { $one } mosaicos azules y { $two } mosaicos blancos. Cada cuadro lleva { $by } mosaicos de cualquier color. ¿Cuántos cuadros completos puede hacer?
g4-multi-step-stories-ask-3-two = { $name } recoge { $one } peras y luego { $two } más. Van en cajas de { $by }. Todas las cajas quedan llenas. ¿Cuántas peras sobran?
g4-multi-step-stories-hint-divide = Divide entre { $by }. Mira lo que sobra.
g4-multi-step-stories-hint-rest-1 = Todos necesitan lugar. ¿Y los que sobran?
g4-multi-step-stories-hint-rest-2 = Solo cuentan los completos.
g4-multi-step-stories-hint-rest-3 = La pregunta pide lo que sobra.
g4-multi-step-stories-step-join = Primero junta las dos cantidades.
g4-multi-step-stories-step-divide = { $work } es { $quotient } con residuo { $rest }.
g4-multi-step-stories-step-rest-1 = { $rest ->
    [one] El último necesita una camioneta más. La respuesta es { $answer }.
   *[other] Los últimos { $rest } necesitan una camioneta más. La respuesta es { $answer }.
}
g4-multi-step-stories-step-rest-2 = Los que sobran no forman uno completo. La respuesta es { $answer }.
g4-multi-step-stories-step-rest-3 = La respuesta es lo que sobra: { $answer }.
g4-multi-step-stories-ask-share-1 = { $name } tiene { $n } cajas con { $each } plumas cada una y regala { $used } plumas. Las demás se reparten por igual entre { $shares } salones. ¿Cuántas plumas recibe cada salón?
g4-multi-step-stories-ask-share-2 = En un jardín crecen { $n } filas de { $each } plantas. Se venden { $used } plantas. Las demás se reparten por igual en { $shares } jardineras. ¿Cuántas plantas hay en cada jardinera?
g4-multi-step-stories-ask-share-3 = Una granja empaca { $n } cajas con { $each } melones cada una. Se comen { $used } melones. Los demás se reparten por igual en { $shares } camiones. ¿Cuántos melones lleva cada camión?
g4-multi-step-stories-ask-earn-1 = { $name } tiene { $start } dólares, recibe { $each } dólares en cada una de { $n } semanas y gasta { $spent } dólares. ¿Cuántos dólares quedan?
g4-multi-step-stories-ask-earn-2 = Una biblioteca tiene { $start } libros. Recibe { $each } libros nuevos en cada uno de { $n } meses y regala { $spent } libros. ¿Cuántos libros tiene ahora?
g4-multi-step-stories-ask-earn-3 = En un tren van { $start } personas. En cada una de { $n } paradas suben { $each } más. Luego bajan { $spent }. ¿Cuántas personas van ahora en el tren?
g4-multi-step-stories-hint-all = Primero halla cuántos hay en total.
g4-multi-step-stories-hint-then-share = Quita lo que ya no está. Luego reparte el resto entre { $shares }.
g4-multi-step-stories-hint-more = ¿Cuántos llegan en total? Súmalos.
g4-multi-step-stories-hint-then-less = Al final se van algunos. Réstalos.

g3-number-patterns-ask-next = ¿Qué número sigue? { $terms }
g3-number-patterns-ask-rule = ¿Cuál es la regla? { $terms }
g3-number-patterns-hint-each-gap = Revisa cada paso, no solo el primero. ¿Crecen los números?
g3-number-patterns-ask-parity = ¿Es { $work } par o impar?
g3-number-patterns-ask-parity-box = Hay un número en el cuadro. ¿Es { $work } par o impar?
g3-number-patterns-hint-gap = ¿Cuánto hay de un número al siguiente?
g3-number-patterns-hint-up = La regla es: suma { $step }.
g3-number-patterns-hint-down = La regla es: resta { $step }.
g3-number-patterns-hint-pairs = Un número par se puede poner en parejas.
g3-number-patterns-hint-last-digit = Mira solo las últimas cifras.
g3-number-patterns-hint-try-both = Pon un número par en el cuadro. Luego pon uno impar.
g3-number-patterns-rule-odd-times-odd = Impar por impar es impar.
g3-number-patterns-rule-even-times = Par por cualquier número es par.
g3-number-patterns-rule-same-plus = Dos pares, o dos impares, suman un par.
g3-number-patterns-rule-even-plus-odd = Par más impar es impar.
g3-number-patterns-step-check = Comprueba: { $work }.
g3-number-patterns-step-unknown = Uno da par y el otro da impar. Así que no se puede saber.

g4-factor-pairs-ask-which = ¿Cuáles de estos son factores de { $n }? Elige todos.
g4-factor-pairs-ask-count = ¿Cuántos pares de factores tiene { $n }?
g4-factor-pairs-hint-rows = Pon { $n } puntos en filas iguales. ¿Con cuántas filas se puede?
g4-factor-pairs-hint-try = Prueba los números en orden, desde el 1. Escribe los pares.
g4-factor-pairs-step-all = { $pairs ->
    [one] Hay { $pairs } par en total.
   *[other] Hay { $pairs } pares en total.
}

g4-multiples-ask = ¿Cuáles de estos son múltiplos de { $n }? Elige todos.
g4-multiples-hint-count = Cuenta de { $n } en { $n }: { $count }, y así.
g4-multiples-hint-divide = Un múltiplo se puede dividir entre { $n } sin que sobre nada.

g4-prime-composite-ask-one = ¿Es { $n } primo o compuesto?
g4-prime-composite-ask-one-1 = { $name } dice un número: { $n }. ¿Es primo o compuesto?
g4-prime-composite-ask-one-2 = { $name } pone { $n } mosaicos en filas iguales. Si solo se puede en una fila, el número es primo. ¿Es primo o compuesto?
g4-prime-composite-ask-which = ¿Cuáles de estos números son primos? Elige todos.
g4-prime-composite-hint-two = Un número primo tiene solo dos factores: 1 y él mismo.
g4-prime-composite-hint-rows = Un número compuesto se puede poner en filas iguales de dos o más.
g4-prime-composite-step-try = Ningún número de 2 hasta su mitad divide a { $n }.
g4-prime-composite-step-prime = Así que { $n } es primo.
g4-prime-composite-step-composite = Así que { $n } es compuesto.
g4-prime-composite-step-not = { $n } no es primo: { $work }.
g4-prime-composite-step-primes = Los números primos son { $primes }.

g4-pattern-rule-ask-add = Un patrón empieza en { $start }. La regla es: suma { $by }. ¿Cuál es el número { $place }, el { $ordinal }?
g4-pattern-rule-ask-times = Un patrón empieza en { $start }. La regla es: multiplica por { $by }. ¿Cuál es el número { $place }, el { $ordinal }?
g4-pattern-rule-hint-first = El primer número es { $start }.
g4-pattern-rule-hint-next = Sigue: { $work }.
g4-pattern-rule-step-list = Los números son { $terms }.
g4-pattern-rule-ask-feature = Un patrón empieza en { $start }. La regla es: suma { $by }. ¿Qué es cierto de sus números?
g4-pattern-rule-hint-write = Escribe los primeros cinco números.
g4-pattern-rule-hint-digit = Mira la última cifra de cada uno.
g4-pattern-rule-step-even = Par más par es par. Así, todos son pares.
g4-pattern-rule-step-odd = Impar más par es impar. Así, todos son impares.
g4-pattern-rule-step-turns = Cada vez se suma un número impar. Así, de par se pasa a impar, y de impar a par.
feature-even = Todos son pares
feature-odd = Todos son impares
feature-turns = Se alternan pares e impares

g4-divide-one-digit-ask = Divide. Escribe lo que sobra como residuo.
g4-divide-one-digit-hint-left = Empieza por la izquierda. Divide un lugar a la vez.
g4-divide-one-digit-hint-smaller = El residuo debe ser menor que { $by }.
g4-divide-one-digit-step-check = Comprueba: { $work }.

g5-divide-two-digit-hint-round = Redondea el divisor a { $round } para estimar cada cifra.
g5-divide-two-digit-hint-tens = ¿Cuántas decenas del divisor caben? { $ten }.
g5-divide-two-digit-step-left = Empieza por la izquierda. Divide un lugar a la vez.
g5-divide-two-digit-step-check = Comprueba: { $work }.
