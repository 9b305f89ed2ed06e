fraction-hint-multiply = Multiplica el numerador y el denominador por el mismo número.
fraction-hint-divide = Divide el numerador y el denominador entre el mismo número.
fraction-hint-same = El tamaño no cambia. Solo cambian las partes.
fraction-ask-which-equal = ¿Cuáles de estas fracciones son iguales a { $fraction }? Elige todas.
fraction-shown = { $fraction }
fraction-hint-shaded = Dibuja una barra así para cada fracción. ¿Cuáles tienen sombreado el mismo largo?
fraction-step-bars = Las dos barras están sombreadas hasta el mismo largo. Por eso las fracciones son iguales.
fraction-hint-bottoms = Mira los denominadores: { $work }.
fraction-step-multiply = El denominador se multiplica por { $factor }. El numerador también se multiplica por { $factor }.
fraction-step-divide = El denominador se divide entre { $factor }. El numerador también se divide entre { $factor }.
fraction-step-simplest = Escríbelo de la forma más simple.

mixed-hint-apart = Trabaja por separado con los enteros y las fracciones.
mixed-hint-over = Si las fracciones llegan a un entero o más, cambia por un entero.
mixed-hint-trade = Si la primera fracción no alcanza, cambia un entero por partes: { $one }.
mixed-step-wholes = Enteros: { $work }.
mixed-step-parts = Fracciones: { $work }.
mixed-step-trade = Es más de un entero: { $work }.
mixed-step-open = La primera fracción no alcanza. Cambia un entero por partes. Quedan { $whole } y { $work }.

unlike-hint-same = Solo puedes sumar o restar partes del mismo tamaño.
unlike-hint-common = Corta las dos en { $bottom } partes.
unlike-step-common = Usa { $bottom } como denominador en las dos.
unlike-step-add = Suma las partes: { $work }.
unlike-step-subtract = Resta las partes: { $work }.

scaling-less = Menor
scaling-equal = Igual
scaling-more = Mayor

g3-fraction-name-ask = ¿Qué fracción está sombreada?
g3-fraction-name-ask-wholes = Cada barra es un entero. ¿Qué fracción está sombreada en total?
g3-fraction-name-ask-shade = Sombrea { $fraction } del entero.
g3-fraction-name-hint-bottom = El denominador cuenta las partes iguales de un entero.
g3-fraction-name-hint-top = El numerador cuenta las partes sombreadas.
g3-fraction-name-step-bottom = Un entero tiene { $parts } partes iguales.
g3-fraction-name-step-top = { $shaded ->
    [one] { $shaded } parte está sombreada.
   *[other] { $shaded } partes están sombreadas.
}
g3-fraction-name-step-shade = { $shaded ->
    [one] Sombrea { $shaded } parte.
   *[other] Sombrea { $shaded } partes.
}
g3-fraction-name-step-name = Así que la fracción es { $fraction }.
g3-fraction-name-story-1-bar = { $name } pintó la parte sombreada de una pared. ¿Qué fracción de la pared es?
g3-fraction-name-story-2-bar = La barra es una jardinera. { $name } plantó flores en la parte sombreada. ¿Qué fracción tiene flores?
g3-fraction-name-story-3-bar = La barra es un libro. { $name } ya leyó la parte sombreada. ¿Qué fracción es?
g3-fraction-name-story-1-round = { $name } comió la parte sombreada de un pastel. ¿Qué fracción del pastel es?
g3-fraction-name-story-2-round = El círculo es un parque. { $name } planta árboles en la parte sombreada. ¿Qué fracción del parque es?
g3-fraction-name-story-3-round = { $name } coloreó la parte sombreada de una rueda. ¿Qué fracción de la rueda es?
g3-fraction-name-ask-wholes-1 = Cada barra es una pared. { $name } pintó las partes sombreadas. ¿Qué fracción de una pared es en total?
g3-fraction-name-ask-wholes-2 = Cada barra es una página. { $name } escribió en las partes sombreadas. ¿Qué fracción de una página es en total?
g3-fraction-name-ask-wholes-3 = Cada barra es una milla. { $name } caminó las partes sombreadas. ¿Qué fracción de una milla es en total?

g3-fraction-unit-on-line-ask-first = ¿Qué fracción está en el punto?
g3-fraction-unit-on-line-ask-mark = Pon un punto en { $fraction }.
g3-fraction-unit-on-line-hint-equal = Las partes de 0 a 1 son todas del mismo tamaño.
g3-fraction-unit-on-line-hint-count = Cuenta los espacios, no las marcas.
g3-fraction-unit-on-line-step-parts = Hay { $parts } espacios iguales de 0 a 1.
g3-fraction-unit-on-line-step-first = Un espacio desde 0 es { $fraction }.
g3-fraction-unit-on-line-step-share = Reparte los { $marks } espacios en { $parts } grupos iguales. Cada grupo tiene { $each }.
g3-fraction-unit-on-line-line = Una recta numérica de 0 a 1 en { $parts } partes iguales. { $steps ->
    [one] Hay un punto { $steps } parte después de 0.
   *[other] Hay un punto { $steps } partes después de 0.
}
g3-fraction-unit-on-line-ask-first-1 = La recta es un camino de una milla. { $name } caminó hasta el punto. ¿Qué fracción del camino es?
g3-fraction-unit-on-line-ask-first-2 = La recta es una cuerda. { $name } la corta en el punto. ¿Qué fracción de la cuerda está a la izquierda del corte?
g3-fraction-unit-on-line-ask-first-3 = La recta es una hora. { $name } se detiene en el punto. ¿Qué fracción de la hora es?
g3-fraction-unit-on-line-ask-mark-1 = La recta es un camino de una milla. { $name } está en { $fraction } del camino. Pon un punto allí.
g3-fraction-unit-on-line-ask-mark-2 = La recta es una cuerda. { $name } corta { $fraction } de ella desde el extremo izquierdo. Pon un punto allí.
g3-fraction-unit-on-line-ask-mark-3 = La recta es una hora. { $name } se detiene después de { $fraction } de ella. Pon un punto allí.

g3-fraction-on-line-ask-name = ¿Qué fracción está en el punto?
g3-fraction-on-line-ask-mark = Pon un punto en { $fraction }.
g3-fraction-on-line-ask-steps = Empieza en 0. Da { $steps } pasos de { $step }. ¿En qué número estás?
g3-fraction-on-line-line = Una recta numérica de 0 a { $to }. Cada entero está en { $parts } partes iguales. Hay un punto { $steps ->
    [one] { $steps } parte
   *[other] { $steps } partes
} después de 0.
g3-fraction-on-line-hint-part = Cada entero está en { $parts } partes iguales.
g3-fraction-on-line-hint-jump = Empieza en 0 y cuenta los saltos.
g3-fraction-on-line-step-part = Un salto es { $step }.
g3-fraction-on-line-step-jumps = { $steps } saltos desde 0 son { $fraction }.
g3-fraction-on-line-ask-name-1 = La recta muestra millas. { $name } está en el punto. ¿Qué fracción es?
g3-fraction-on-line-ask-name-2 = La recta muestra horas. { $name } se detiene en el punto. ¿Qué fracción es?
g3-fraction-on-line-ask-name-3 = La recta muestra yardas de cuerda. { $name } corta en el punto. ¿Qué fracción es?
g3-fraction-on-line-ask-mark-1 = La recta muestra millas. { $name } está en { $fraction }. Pon un punto allí.
g3-fraction-on-line-ask-mark-2 = La recta muestra horas. { $name } se detiene en { $fraction }. Pon un punto allí.
g3-fraction-on-line-ask-mark-3 = La recta muestra yardas de cuerda. { $name } corta en { $fraction }. Pon un punto allí.

g3-fraction-same-size-ask = ¿Qué fracción es del mismo tamaño que { $fraction }?
g3-fraction-same-size-ask-1 = { $name } come { $fraction } de una barra. ¿Qué fracción de una barra igual es lo mismo?
g3-fraction-same-size-ask-2 = { $name } camina { $fraction } de un camino. ¿Qué fracción del camino es la misma distancia?
g3-fraction-same-size-hint-length = Busca el mismo largo.
g3-fraction-same-size-hint-cut = Corta una barra del mismo largo en { $parts } partes.
g3-fraction-same-size-step-cut = Corta la segunda barra en { $parts } partes y sombrea el mismo largo.
g3-fraction-same-size-step-same = { $one } y { $two } son del mismo tamaño.

g3-fraction-whole-numbers-hint-one = Un entero es { $one }.
g3-fraction-whole-numbers-hint-many = Piensa en { $whole } enteros.
g3-fraction-whole-numbers-hint-how-many = Tienes { $whole } partes. ¿Cuántos enteros forman?
g3-fraction-whole-numbers-step-one = { $parts ->
    [one] Cada entero tiene { $parts } parte.
   *[other] Cada entero tiene { $parts } partes.
}
g3-fraction-whole-numbers-step-many = { $whole } enteros tienen { $parts } partes.
g3-fraction-whole-numbers-story-1 = { $name } corta { $whole } pasteles. Cada pedazo es { $part } de un pastel. ¿Cuántos pedazos hay?
g3-fraction-whole-numbers-story-2 = { $name } corta { $whole } hojas de papel. Cada parte es { $part } de una hoja. ¿Cuántas partes hay?
g3-fraction-whole-numbers-story-3 = { $name } corta { $whole } yardas de cuerda. Cada pedazo es { $part } de una yarda. ¿Cuántos pedazos hay?
g3-fraction-whole-numbers-story-1-back = { $name } junta pedazos de pastel. Forman { $fraction } de un pastel. ¿Cuántos pasteles enteros son?
g3-fraction-whole-numbers-story-2-back = { $name } camina { $fraction } de una milla en vueltas cortas. ¿Cuántas millas son?

g3-fraction-compare-hint-same-top = Las dos tienen la misma cantidad de partes. ¿Cuáles partes son más grandes?
g3-fraction-compare-hint-same-bottom = Las partes son del mismo tamaño. ¿Cuál tiene más partes?
g3-fraction-compare-hint-figure = Compara las barras.
g3-fraction-compare-step-same-top = Con un denominador mayor, las partes son más pequeñas.
g3-fraction-compare-step-same-bottom = Más partes del mismo tamaño hacen más.
g3-fraction-compare-step-count = Los dos lados son { $parts } partes del mismo tamaño.
g3-fraction-equivalent-hint-cut = Corta cada parte de la barra en partes iguales más pequeñas.
g3-fraction-equivalent-hint-join = Junta partes pequeñas de la barra en partes iguales más grandes.
g3-fraction-equivalent-step-cut = Corta cada parte en { $factor }. Ahora hay { $factor } partes por cada una de antes.
g3-fraction-equivalent-step-join = Junta { $factor } partes en cada parte más grande. El largo no cambia.
g3-fraction-equivalent-step-bars = Las dos barras están sombreadas hasta el mismo largo.
g3-fraction-equivalent-story-1 = { $name } come { $fraction } de una barra. Una barra del mismo tamaño tiene { $given } partes iguales. ¿Cuántas de esas partes son lo mismo?
g3-fraction-equivalent-story-2 = { $name } sombrea { $fraction } de una tira. El otro lado tiene { $given } partes iguales. ¿Cuántas de esas partes son lo mismo?
g3-fraction-equivalent-story-3 = { $name } camina { $fraction } de un camino. El camino tiene { $given } partes iguales. ¿Cuántas partes son?

g4-fraction-compare-hint-half = ¿Es cada una mayor o menor que un medio?
g4-fraction-compare-hint-common = Escribe las dos con el denominador { $bottom }.
g4-fraction-compare-step-common = Usa { $bottom } como denominador en las dos.
g4-fraction-compare-step-left = Izquierda: { $work }.
g4-fraction-compare-step-right = Derecha: { $work }.
g4-fraction-equivalent-ask-why = ¿Por qué son iguales las fracciones?
g4-fraction-equivalent-why-times = Las partes y las partes tomadas se multiplican por { $k }
g4-fraction-equivalent-why-added = A los dos números se les suma el mismo número, { $n }
g4-fraction-equivalent-why-parts = Solo cambia el número de partes, que ahora es { $n }
g4-fraction-equivalent-hint-cut = Corta otra vez cada parte. ¿Cuántas partes hay ahora?
g4-fraction-equivalent-step-same = { $one } y { $two } son del mismo tamaño.
g4-fraction-compare-ask-picture = Cada barra es un entero. ¿Qué dibujo muestra esto?
g4-fraction-compare-picture = Dibujo { $n }
g4-fraction-compare-hint-parts = El denominador dice cuántas partes iguales tiene una barra.
g4-fraction-compare-hint-shaded = El numerador dice cuántas partes están sombreadas.
g4-fraction-compare-step-picture = El dibujo { $n } muestra las dos fracciones.

g4-fraction-join-parts-hint-same = Todas las partes son del mismo tamaño: { $part }.
g4-fraction-join-parts-hint-count-on = { $parts ->
    [one] Cuenta { $parts } parte más.
   *[other] Cuenta { $parts } partes más.
}
g4-fraction-join-parts-hint-take = { $parts ->
    [one] Quita { $parts } parte.
   *[other] Quita { $parts } partes.
}
g4-fraction-join-parts-step-one = Un entero es { $one }.
g4-fraction-join-parts-step-tops = Solo cambian los numeradores: { $work }.

g4-fraction-decompose-hint-parts = Cuenta partes de tamaño { $part }.
g4-fraction-decompose-hint-whole = Esta es la cantidad completa.
g4-fraction-decompose-step-total = Hay { $total } partes de { $part } en total.
g4-fraction-decompose-step-known = { $known ->
    [one] Tienes { $known } de ellas. Halla las demás.
   *[other] Tienes { $known } de ellas. Halla las demás.
}
g4-fraction-decompose-story-1 = { $name } tiene { $total } de un pastel y come { $known } del pastel. Cada pedazo es { $part } del pastel. ¿Cuántos pedazos quedan?
g4-fraction-decompose-story-2 = { $name } camina { $total } de una milla en dos partes. La primera parte es { $known } de una milla. ¿Cuántos tramos de { $part } de una milla hay en la segunda parte?
g4-fraction-decompose-story-3 = { $name } llena { $total } de un frasco con arena roja y azul. { $known } del frasco es arena roja. ¿Cuántas capas de { $part } del frasco son azules?

g4-fraction-copies-hint-copies = Una fracción está hecha de copias de una parte.
g4-fraction-copies-hint-figure = Cuenta las partes sombreadas.
g4-fraction-copies-hint-whole = ¿Cuántas copias de { $unit } forman un entero?
g4-fraction-copies-step-part = Un entero tiene { $parts } partes iguales. Una parte es una copia.
g4-fraction-copies-step-count = Hay { $copies } copias.
g4-fraction-copies-step-whole = { $whole } son { $copies } copias de { $unit }.
g4-fraction-copies-ask-more = Tienes { $fraction }. ¿Cuántas copias más de { $unit } forman { $whole }?
g4-fraction-copies-story-1 = { $name } come { $fraction } de un pastel. Cada pedazo es { $unit } del pastel. ¿Cuántos pedazos come?
g4-fraction-copies-story-2 = { $name } tiene { $fraction } de una yarda de cinta y la corta. Cada pedazo es { $unit } de una yarda. ¿Cuántos pedazos hay?
g4-fraction-copies-story-3 = { $name } camina { $fraction } de una milla. Cada vuelta es { $unit } de una milla. ¿Cuántas vueltas son?

g4-fraction-times-whole-hint-groups = Piensa en { $n } grupos de { $fraction }.
g4-fraction-times-whole-hint-figure = Toma esta cantidad { $n } veces.
g4-fraction-times-whole-step-tops = Multiplica el número de partes: { $work }.
g4-fraction-times-whole-step-bottom = Las partes no cambian de tamaño. El denominador sigue siendo { $bottom }.

g4-fraction-add-like-ask-1 = { $name } caminó { $one } de milla. Luego caminó { $two } de milla más. ¿Cuántas millas son en total?
g4-fraction-add-like-ask-2 = { $name } usó { $one } de yarda de cinta roja y { $two } de yarda de cinta azul. ¿Cuántas yardas son en total?
g4-fraction-add-like-ask-3 = { $name } leyó { $one } de hora en la mañana y { $two } de hora en la noche. ¿Cuántas horas son en total?
g4-fraction-add-like-ask-4 = { $name } comió { $one } de un pastel. Después comió { $two } del mismo pastel. ¿Qué parte del pastel es en total?
g4-fraction-add-like-ask-5 = { $name } pintó { $one } de una cerca. Después pintó { $two } de la misma cerca. ¿Qué parte de la cerca está pintada?
g4-fraction-add-like-ask-6 = { $name } leyó { $one } de un libro. Después leyó { $two } del mismo libro. ¿Qué parte del libro leyó?
g4-fraction-add-like-ask-7 = { $name } tenía { $one } de yarda de cinta. Usó { $two } de yarda. ¿Cuántas yardas quedan?
g4-fraction-add-like-ask-8 = Un tanque está lleno hasta { $one }. { $name } saca { $two } del tanque. ¿Qué parte del tanque sigue llena?
g4-fraction-add-like-ask-9 = { $name } tiene { $one } de una bandeja de pan de maíz. Sus amigos comen { $two } de la bandeja. ¿Qué parte de la bandeja queda?
g4-fraction-add-like-ask-10 = { $name } vive a { $one } de milla de la escuela. Ya caminó { $two } de milla. ¿Cuántas millas faltan?
g4-fraction-add-like-ask-11 = Un programa dura { $one } de hora. { $name } ya vio { $two } de hora. ¿Cuántas horas faltan?
g4-fraction-add-like-ask-12 = Una bolsa tiene { $one } de libra de nueces. { $name } saca { $two } de libra. ¿Cuántas libras quedan?
g4-fraction-add-like-hint-join = Junta las dos cantidades.
g4-fraction-add-like-hint-take = Quita la segunda cantidad de la primera.
g4-fraction-add-like-hint-parts = Las dos cuentan partes de tamaño { $part }.

g4-fraction-times-stories-ask-1 = { $name } llena { $n } vasos. En cada vaso cabe { $each } de pinta. ¿Cuántas pintas son?
g4-fraction-times-stories-ask-2 = { $name } corre { $each } de milla cada día. ¿Cuántas millas son en { $n } días?
g4-fraction-times-stories-ask-3 = Cada pan lleva { $each } de libra de harina. ¿Cuántas libras necesita { $name } para { $n } panes?
g4-fraction-times-stories-ask-4 = { $name } pinta { $n } tablas. Cada tabla lleva { $each } de hora. ¿Cuántas horas son?
g4-fraction-times-stories-ask-5 = { $name } corta { $n } trozos de cinta adhesiva. Cada trozo mide { $each } de pie. ¿Cuántos pies de cinta son?
g4-fraction-times-stories-ask-6 = { $n } plantas necesitan { $each } de galón de agua cada una. ¿Cuántos galones de agua necesitan?
g4-fraction-times-stories-hint-each = Cada vez se usa { $each }.
g4-fraction-times-stories-hint-times = Multiplica la fracción por el número de grupos.
g4-fraction-times-stories-step-between = La respuesta está entre { $low } y { $high }.

g5-fraction-stories-ask-1 = { $name } caminó { $one } de milla. Luego corrió { $two } de milla. ¿Cuántas millas son en total?
g5-fraction-stories-ask-2 = { $name } usó { $one } de taza de leche. { $other } usó { $two } de taza. ¿Cuántas tazas usaron en total?
g5-fraction-stories-ask-3 = { $name } leyó { $one } de hora. Después leyó { $two } de hora. ¿Cuántas horas son en total?
g5-fraction-stories-ask-4 = { $name } pone { $one } de libra de uvas y { $two } de libra de ciruelas en una bolsa. ¿Cuántas libras de fruta hay en la bolsa?
g5-fraction-stories-ask-5 = Un estante tiene una tabla de { $one } de yarda y otra de { $two } de yarda. ¿Cuántas yardas miden una tras otra?
g5-fraction-stories-ask-6 = { $name } echó { $one } de galón de agua en un tanque. { $other } echó { $two } de galón. ¿Cuántos galones son en total?
g5-fraction-stories-ask-7 = { $name } tiene { $one } de yarda de cuerda y corta { $two } de yarda. ¿Cuántas yardas quedan?
g5-fraction-stories-ask-8 = Una planta mide { $one } de pie. Otra planta mide { $two } de pie. ¿Cuántos pies más mide la primera planta?
g5-fraction-stories-ask-9 = Una botella está llena hasta { $one }. { $name } bebe { $two } de la botella. ¿Qué parte de la botella queda?
g5-fraction-stories-ask-10 = { $name } vive a { $one } de milla de la biblioteca. { $other } vive a { $two } de milla. ¿Cuántas millas más lejos vive { $name }?
g5-fraction-stories-ask-11 = Una bolsa tiene { $one } de libra de semillas. { $name } siembra { $two } de libra. ¿Cuántas libras quedan?
g5-fraction-stories-ask-12 = { $name } trabajó { $one } de hora y { $other } trabajó { $two } de hora. ¿Cuántas horas más trabajó { $name }?
g5-fraction-stories-ask-closest = No lo calcules. ¿A qué número se acerca más { $work }?
g5-fraction-stories-hint-join = Junta las dos cantidades.
g5-fraction-stories-hint-take = Quita la segunda cantidad de la primera.
g5-fraction-stories-hint-closest = ¿Cada fracción está cerca de 0, de un medio o de 1?
g5-fraction-stories-hint-bars = Mira cuánto está sombreado en cada barra.

g5-fraction-as-division-ask-1 = { $amount ->
    [one] { $amount } pan se reparte entre { $shares } personas. A todas les toca igual. ¿Cuántos panes le tocan a cada una?
   *[other] { $amount } panes se reparten entre { $shares } personas. A todas les toca igual. ¿Cuántos panes le tocan a cada una?
}
g5-fraction-as-division-ask-2 = { $amount ->
    [one] { $amount } litro de jugo llena { $shares } recipientes iguales. ¿Cuántos litros hay en cada recipiente?
   *[other] { $amount } litros de jugo llenan { $shares } recipientes iguales. ¿Cuántos litros hay en cada recipiente?
}
g5-fraction-as-division-ask-3 = { $amount ->
    [one] { $amount } yarda de hilo se corta en { $shares } trozos iguales. ¿Cuántas yardas mide cada trozo?
   *[other] { $amount } yardas de hilo se cortan en { $shares } trozos iguales. ¿Cuántas yardas mide cada trozo?
}
g5-fraction-as-division-ask-4 = { $amount ->
    [one] { $amount } libra de barro se separa en { $shares } bolas iguales. ¿Cuántas libras pesa cada bola?
   *[other] { $amount } libras de barro se separan en { $shares } bolas iguales. ¿Cuántas libras pesa cada bola?
}
g5-fraction-as-division-ask-5 = { $amount ->
    [one] { $amount } galón de pintura se reparte en { $shares } cubetas iguales. ¿Cuántos galones hay en cada cubeta?
   *[other] { $amount } galones de pintura se reparten en { $shares } cubetas iguales. ¿Cuántos galones hay en cada cubeta?
}
g5-fraction-as-division-ask-6 = { $amount ->
    [one] { $amount } milla de camino se reparte entre { $shares } equipos. A todos les toca igual. ¿Cuántas millas le tocan a cada equipo?
   *[other] { $amount } millas de camino se reparten entre { $shares } equipos. A todos les toca igual. ¿Cuántas millas le tocan a cada equipo?
}
g5-fraction-as-division-ask-between = ¿Entre qué dos números enteros está la respuesta?
g5-fraction-as-division-hint-divide = Repartir es dividir. Escríbelo como fracción.
g5-fraction-as-division-hint-one = Primero reparte un entero. A cada parte le toca { $part }.
g5-fraction-as-division-hint-whole = ¿Cuántos enteros le tocan a cada uno?
g5-fraction-as-division-step-each = { $amount ->
    [one] A cada parte le toca { $part } de { $amount } entero.
   *[other] A cada parte le toca { $part } de cada uno de los { $amount } enteros.
}
g5-fraction-as-division-step-between = Así que está entre { $low } y { $high }.
g5-fraction-as-division-field-low = Más de
g5-fraction-as-division-field-high = Menos de
g5-fraction-subtract-unlike-story-1 = { $name } tiene { $left } de una yarda de cinta y corta { $right } de una yarda. ¿Qué parte de una yarda queda?
g5-fraction-subtract-unlike-story-2 = Una jarra está llena hasta { $left } de ella. { $name } saca { $right } de la jarra. ¿Qué parte de la jarra queda?
g5-fraction-subtract-unlike-story-3 = { $name } quiere caminar { $left } de una milla y ya caminó { $right } de una milla. ¿Qué parte de una milla falta?

g5-fraction-multiply-hint-parts = { $take ->
    [one] Corta la cantidad en { $parts } partes iguales. Toma { $take } de ellas.
   *[other] Corta la cantidad en { $parts } partes iguales. Toma { $take } de ellas.
}
g5-fraction-multiply-hint-bar = La barra es toda la cantidad.
g5-fraction-multiply-hint-square = Cuenta los cuadros sombreados de los dos modos.
g5-fraction-multiply-step-tops = Multiplica los numeradores: { $work }.
g5-fraction-multiply-step-bottoms = Multiplica los denominadores: { $work }.

g5-fraction-area-ask = Un rectángulo mide { $width } por { $height }. ¿Cuál es su área?
g5-fraction-area-rectangle = Un rectángulo con lados { $width } y { $height }.
g5-fraction-area-hint-multiply = El área es lado por lado.
g5-fraction-area-hint-product = Calcula { $work }.
g5-fraction-area-step-single = Escribe el número mixto como una fracción: { $work }.
g5-fraction-area-ask-tiles = Un rectángulo mide { $width } por { $height }. Se cubre con mosaicos de { $one } por { $two }. ¿Cuántos mosaicos lo cubren?
g5-fraction-area-ask-one-tile = Un mosaico mide { $one } por { $two }. ¿Qué fracción de una unidad cuadrada cubre?
g5-fraction-area-step-square = { $tiles } mosaicos cubren una unidad cuadrada.
g5-fraction-area-step-rows = Caben { $rows } a lo largo de un lado y { $columns } a lo largo del otro.
g5-fraction-area-hint-square = ¿Cuántos mosaicos cubren una unidad cuadrada?
g5-fraction-area-hint-rows = Caben { $rows } a lo largo de un lado y { $columns } a lo largo del otro.
g5-fraction-area-hint-along = ¿Cuántas veces cabe { $one } en { $width }?
g5-fraction-area-hint-picture = Mira la parte sombreada en los dos sentidos.

g5-scaling-compare-ask = No lo calcules. ¿Es { $work } menor, igual o mayor que { $number }?
g5-scaling-compare-hint-look = Mira el otro factor: { $factor }.
g5-scaling-compare-hint-one = ¿Es menor que 1, igual a 1 o mayor que 1?
g5-scaling-compare-step-less = { $factor } es menor que 1.
g5-scaling-compare-step-equal = { $factor } es igual a 1.
g5-scaling-compare-step-more = { $factor } es mayor que 1.
g5-scaling-compare-step-shrinks = Así que tomas solo una parte de { $number }. El producto es menor.
g5-scaling-compare-step-stays = Así que tomas todo { $number }. El producto es igual.
g5-scaling-compare-step-grows = Así que tomas { $number } y algo más. El producto es mayor.

g5-scaling-reason-ask = Piensa en { $work }. ¿Qué es cierto?
g5-scaling-reason-more-above = Es mayor que { $number }, porque { $factor } es mayor que 1.
g5-scaling-reason-less-below = Es menor que { $number }, porque { $factor } es menor que 1.
g5-scaling-reason-less-above = Es menor que { $number }, porque { $factor } es mayor que 1.
g5-scaling-reason-more-below = Es mayor que { $number }, porque { $factor } es menor que 1.
g5-scaling-reason-hint-one = ¿Es { $factor } mayor o menor que 1?
g5-scaling-reason-hint-bar = Esta es la fracción. Una barra es 1.
g5-scaling-reason-step-above = { $factor } es mayor que 1.
g5-scaling-reason-step-below = { $factor } es menor que 1.
g5-scaling-reason-step-grows = Tomas { $number } una vez y algo más. Por eso el producto es mayor.
g5-scaling-reason-step-shrinks = Tomas solo una parte de { $number }. Por eso el producto es menor.

g5-fraction-multiply-stories-ask-1 = { $name } tiene { $two } de nueces y come { $one } de esa cantidad. ¿Cuántas libras come?
g5-fraction-multiply-stories-ask-2 = Un camino mide { $two }. { $name } ya caminó { $one } del camino. ¿Cuántas millas son?
g5-fraction-multiply-stories-ask-3 = Una cinta mide { $two }. { $name } usa { $one } de la cinta. ¿Cuántas yardas son?
g5-fraction-multiply-stories-ask-4 = Un tanque tiene { $two } de agua. { $name } usa { $one } del agua. ¿Cuántos galones son?
g5-fraction-multiply-stories-ask-5 = Una bolsa trae { $two } de semillas. { $name } compra { $one } bolsas. ¿Cuántos kilogramos son?
g5-fraction-multiply-stories-ask-6 = Una receta lleva { $two } de avena. { $name } hace { $one } recetas. ¿Cuántas tazas son?
g5-fraction-multiply-stories-ask-7 = Una tabla mide { $two }. { $name } pone { $one } tablas una tras otra. ¿Cuántos pies son?
g5-fraction-multiply-stories-ask-8 = Un viaje dura { $two }. { $name } hace { $one } viajes. ¿Cuántas horas son?
g5-fraction-multiply-stories-hint-work = Calcula { $work }.
g5-fraction-multiply-stories-hint-part = Una parte de una cantidad: multiplica.
g5-fraction-multiply-stories-hint-several = La misma cantidad varias veces: multiplica.

g5-unit-fraction-divided-hint-cut = La parte pequeña se corta en partes aún más pequeñas.
g5-unit-fraction-divided-hint-share = Reparte { $part } entre { $n }.
g5-unit-fraction-divided-hint-how-many = ¿Cuántos { $small } caben en { $large }?
g5-unit-fraction-divided-step-each = Corta en { $n } cada una de las { $parts } partes del entero.
g5-unit-fraction-divided-step-times = Ahora cuenta las partes del entero: { $work }.

g5-divide-by-unit-fraction-hint-how-many = Pregunta: ¿cuántas veces cabe { $part }?
g5-divide-by-unit-fraction-hint-one = En un entero caben { $parts } partes.
g5-divide-by-unit-fraction-step-one = En un entero caben { $parts } partes de { $part }.
g5-divide-by-unit-fraction-step-all = En todos los enteros: { $work }.

g5-unit-fraction-stories-ask-1 = { $name } tiene { $n } tazas de arroz. Una medida es { $part } de taza. ¿Cuántas medidas son?
g5-unit-fraction-stories-ask-2 = { $name } tiene { $n } yardas de cinta. Cada moño lleva { $part } de yarda. ¿Cuántos moños puede hacer?
g5-unit-fraction-stories-ask-3 = Un sendero mide { $n } millas. Hay un letrero cada { $part } de milla y uno al final. ¿Cuántos letreros hay después del inicio?
g5-unit-fraction-stories-ask-4 = { $name } tiene { $part } de una bandeja de pan de maíz. { $n } amigos la comparten. A todos les toca igual. ¿Qué parte de una bandeja le toca a cada uno?
g5-unit-fraction-stories-ask-5 = { $n } plantas comparten { $part } de galón de agua. A todas les toca igual. ¿Cuántos galones le tocan a cada una?
g5-unit-fraction-stories-ask-6 = { $name } corta { $part } de yarda de cuerda en { $n } trozos iguales. ¿Cuántas yardas mide cada trozo?
g5-unit-fraction-stories-hint-share = Divide la parte entre el número de partes iguales.
g5-unit-fraction-stories-hint-cut = Corta en { $n } la parte sombreada.
g5-unit-fraction-stories-hint-fit = Pregunta cuántas partes caben.
g5-unit-fraction-stories-hint-one = ¿Cuántas veces cabe { $part } en un entero?
g5-unit-fraction-stories-step-one = En un entero caben { $parts } partes.

g5-fraction-as-division-hint-cut = Corta el entero en { $shares } partes iguales.
misconception-fraction-kept-from-whole = El primer número no tiene fracción. Cambia primero un entero por partes.
    .name = No cambió un entero por partes
