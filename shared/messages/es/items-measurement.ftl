g3-time-tell-ask = ¿Qué hora marca el reloj?
g3-time-tell-story-1 = { $name } mira este reloj. ¿Qué hora es?
g3-time-tell-story-2 = { $name } sube al autobús cuando el reloj muestra esto. ¿Qué hora es?
g3-time-tell-story-3 = Este reloj está en un salón. { $name } lo lee. ¿Qué hora muestra?
g3-time-tell-story-4 = Una película empieza cuando el reloj muestra esto. { $name } llega justo entonces. ¿Qué hora es?
g3-time-tell-story-5 = { $name } vuelve a casa a la hora de este reloj. ¿Qué hora es?
g3-time-tell-hint-short = La aguja corta dice la hora que ya pasó.
g3-time-tell-hint-long = La aguja larga dice los minutos. Cada número son 5 minutos. Cada marca pequeña es 1 minuto.
g3-time-tell-step-hour = La aguja corta pasó de { $hour } y no llega a { $next }.
g3-time-tell-step-fives = { $fives ->
    [one] La aguja larga está en { $fives }: cuenta 5. Son { $minute } minutos.
   *[other] La aguja larga está en { $fives }: cuenta de 5 en 5 esas veces. Son { $minute } minutos.
}
g3-time-tell-step-few = { $minute ->
    [one] Cuenta { $minute } marca pequeña desde 12. Es { $minute } minuto.
   *[other] Cuenta { $minute } marcas pequeñas desde 12. Son { $minute } minutos.
}
g3-time-tell-step-minutes = Cuenta de 5 en 5 hasta { $low }. Luego cuenta { $rest } más. { $minute ->
    [one] Es { $minute } minuto.
   *[other] Son { $minute } minutos.
}

g3-time-elapsed-ask-1 = { $name } empieza a leer { $start } { $from } y termina { $end } { $to }. ¿Cuántos minutos lee?
g3-time-elapsed-ask-2 = Un paseo empieza { $start } { $from } y termina { $end } { $to }. ¿Cuántos minutos camina { $name }?
g3-time-elapsed-ask-end = { $name } empieza a jugar { $hour } { $at } y juega { $minutes } minutos. ¿A qué hora termina?
g3-time-elapsed-ask-start = { $name } termina { $hour } { $at }. Tardó { $minutes } minutos. ¿A qué hora empezó?
g3-time-elapsed-line = Una línea de tiempo de { $from } a { $to }. Cada marca vale 10 minutos.
g3-time-elapsed-hint-hour = ¿Hay una hora en punto en medio? Para ahí primero.
g3-time-elapsed-hint-line = Usa una línea de tiempo.
g3-time-elapsed-hint-on = Avanza { $minutes } minutos.
g3-time-elapsed-hint-back = Retrocede { $minutes } minutos.
g3-time-elapsed-step-same-hour = Los dos momentos están en la misma hora.
g3-time-elapsed-step-to-hour = { $minutes ->
    [one] Hasta la siguiente hora en punto hay { $minutes } minuto.
   *[other] Hasta la siguiente hora en punto hay { $minutes } minutos.
}
g3-time-elapsed-step-past = { $minutes ->
    [one] Después de la hora hay { $minutes } minuto más.
   *[other] Después de la hora hay { $minutes } minutos más.
}
g3-time-elapsed-step-rest = { $minutes ->
    [one] Luego { $minutes } minuto más. Termina { $hour } { $at }.
   *[other] Luego { $minutes } minutos más. Termina { $hour } { $at }.
}
g3-time-elapsed-step-back-hour = { $minutes ->
    [one] Hacia atrás hasta la hora en punto hay { $minutes } minuto.
   *[other] Hacia atrás hasta la hora en punto hay { $minutes } minutos.
}
g3-time-elapsed-step-back-rest = { $minutes ->
    [one] Luego { $minutes } minuto más hacia atrás. Empezó { $hour } { $at }.
   *[other] Luego { $minutes } minutos más hacia atrás. Empezó { $hour } { $at }.
}

g3-mass-volume-ask-jug = ¿Cuánta agua hay en la jarra?
g3-mass-volume-ask-dial = ¿Qué marca la balanza?
g3-mass-volume-ask-times-1 = { $n } latas pesan { $each } gramos cada una. ¿Cuántos gramos son en total?
g3-mass-volume-ask-times-2 = Hay { $n } vasos. En cada vaso caben { $each } mililitros. ¿Cuántos mililitros son en total?
g3-mass-volume-ask-less-1 = { $name } tiene { $a } gramos de harina y usa { $b } gramos. ¿Cuántos gramos quedan?
g3-mass-volume-ask-less-2 = { $name } tiene { $a } mililitros de jugo y bebe { $b } mililitros. ¿Cuántos mililitros quedan?
g3-mass-volume-ask-share-1 = { $total } gramos de arroz van en { $n } bolsas. Todas llevan lo mismo. ¿Cuántos gramos hay en cada bolsa?
g3-mass-volume-ask-share-2 = Se reparten { $total } mililitros de leche en { $n } vasos. Todos llevan lo mismo. ¿Cuántos mililitros hay en cada vaso?
g3-mass-volume-ask-large-1 = { $n } bolsas de tierra pesan { $each } kilogramos cada una. ¿Cuántos kilogramos son en total?
g3-mass-volume-ask-large-2 = Hay { $n } cubetas. En cada cubeta caben { $each } litros de agua. ¿Cuántos litros son en total?
g3-mass-volume-ask-room-1 = Un carrito puede llevar { $most } kilogramos. Lleva { $n } cajas de { $each } kilogramos cada una. ¿Cuántos kilogramos más puede llevar?
g3-mass-volume-ask-room-2 = En un tanque caben { $most } litros. Se echan { $n } cubetas de { $each } litros cada una. ¿Cuántos litros más caben?
g3-mass-volume-ask-mass = ¿Más o menos cuánto pesa { $thing }?
g3-mass-volume-ask-holds = ¿Más o menos cuánto cabe en { $thing }?
g3-mass-volume-hint-between = Está entre { $low } y { $high }.
g3-mass-volume-hint-mark = Hay { $parts } partes pequeñas de un número al siguiente. ¿Cuánto vale una?
g3-mass-volume-hint-times = Cada vez es la misma cantidad. Multiplica.
g3-mass-volume-hint-less = Se quita algo. Halla lo que queda.
g3-mass-volume-hint-share = Se reparte por igual. Divide.
g3-mass-volume-hint-work = Calcula { $work }.
g3-mass-volume-hint-first = Primero halla cuánto hay ya.
g3-mass-volume-hint-gram = Un clip pesa más o menos 1 gramo. Un litro de agua pesa 1 kilogramo.
g3-mass-volume-hint-liter = Unas gotas son más o menos 1 mililitro. En una botella grande de leche caben unos 2 litros.
g3-mass-volume-hint-compare = Compara con esas dos cosas.
g3-mass-volume-step-mark = Cada parte pequeña vale { $step }.
g3-mass-volume-step-count = { $marks ->
    [one] Sube { $marks } parte desde { $low }. Es { $value }.
   *[other] Sube { $marks } partes desde { $low }. Es { $value }.
}
g3-mass-volume-step-fits = Es razonable: { $amount }.

g3-area-unit-square-ask-one = Un cuadrado tiene lados de { $side }. ¿Cuál es su área?
g3-area-unit-square-ask-row = Hay { $n } cuadrados en fila. Cada uno tiene lados de { $side }. ¿Cuál es el área de la fila?
g3-area-unit-square-ask-halves = Una figura está hecha de { $n } cuadrados con lados de { $side } y { $halves } mitades de un cuadrado igual. ¿Cuál es su área?
g3-area-unit-square-ask-larger = Hay { $n } cuadrados en fila. Cada uno tiene lados de { $side }. ¿Cuál es el área de la fila?
g3-area-unit-square-hint-unit = Un cuadrado con lados de 1 unidad es una unidad cuadrada.
g3-area-unit-square-hint-count = El área cuenta cuadrados.
g3-area-unit-square-hint-fit = ¿Cuántos cuadrados unidad caben en ella?
g3-area-unit-square-step-count = Cuenta los cuadrados: { $area }.
g3-area-unit-square-step-halves = Dos mitades forman un cuadrado unidad: { $halves } mitades forman { $wholes }.
g3-area-unit-square-step-larger = Cada cuadrado tiene { $side } filas de { $side } cuadrados unidad: { $work }.

g3-area-cover-ask-gaps = { $name } pone { $a } cuadrados unidad sobre una figura. Todavía caben { $b } más. ¿Cuál es el área de la figura?
g3-area-cover-ask-overlaps = { $name } pone { $a } cuadrados unidad sobre una figura, pero { $b } de ellos están encima de otros. La figura queda cubierta. ¿Cuál es su área?
g3-area-cover-ask-both = { $name } pone { $a } cuadrados unidad sobre una figura. { $b } de ellos están encima de otros y todavía caben { $c } más. ¿Cuál es el área de la figura?
g3-area-cover-hint-rule = Los cuadrados deben cubrir la figura sin huecos y sin estar unos sobre otros.
g3-area-cover-hint-gaps = Los huecos son parte de la figura. Llénalos.
g3-area-cover-hint-overlaps = Un cuadrado encima de otros no cubre nada nuevo. No lo cuentes.
g3-area-cover-hint-both = No cuentes los cuadrados de encima. Luego llena los huecos.

g3-area-count-ask = ¿Cuál es el área de la figura?
g3-area-count-shape = Una figura sobre cuadrados unidad. Cuadrados en sus filas desde arriba: { $rows }.
g3-area-count-hint-count = Cuenta los cuadrados de adentro.
g3-area-count-hint-rows = Cuenta cada fila. Luego suma.
g3-area-count-step-rows = Las filas tienen { $rows } cuadrados.

g3-area-tile-ask-tiles-1 = Un piso tiene { $rows } filas de mosaicos con { $each } en cada fila. Cada mosaico es una unidad cuadrada. ¿Cuál es el área?
g3-area-tile-ask-tiles-2 = Una pared tiene { $rows } filas de mosaicos con { $each } en cada fila. Cada mosaico es una unidad cuadrada. ¿Cuál es el área?
g3-area-tile-ask-tiles-3 = Una cobija tiene { $rows } filas de retazos con { $each } en cada fila. Cada retazo es una unidad cuadrada. ¿Cuál es el área?
g3-area-tile-ask-tiles-4 = Un tablero de juego tiene { $rows } filas con { $each } casillas en cada fila. Cada casilla es una unidad cuadrada. ¿Cuál es el área?
g3-area-tile-ask-mark = Marca un rectángulo con { $rows } filas y un área de { $area } cuadrados.
g3-area-tile-ask-missing = Un rectángulo de { $area } cuadrados unidad tiene { $rows } filas iguales. ¿Cuántos cuadrados hay en cada fila?
g3-area-tile-hint-rows = Todas las filas son iguales.
g3-area-tile-hint-fact = Usa una multiplicación: { $fact }.
g3-area-tile-step-rows = Hay { $rows } filas de { $each }.

g3-area-rectangle-ask-1 = Una alfombra mide { $width } por { $height }. ¿Cuál es su área?
g3-area-rectangle-ask-2 = Un jardín mide { $width } por { $height }. ¿Cuál es su área?
g3-area-rectangle-ask-3 = Un cuarto mide { $width } por { $height }. ¿Cuál es su área?
g3-area-rectangle-ask-4 = Una foto mide { $width } por { $height }. ¿Cuál es su área?
g3-area-rectangle-ask-5 = Una tarjeta mide { $width } por { $height }. ¿Cuál es su área?
g3-area-rectangle-ask-6 = Un escenario mide { $width } por { $height }. ¿Cuál es su área?
g3-area-rectangle-shape = Un rectángulo con lados { $width } y { $height }.
g3-area-rectangle-hint-rows = Piensa en { $height } filas de { $width } cuadrados.
g3-area-rectangle-step-multiply = Multiplica los dos lados.

g3-area-split-ask = Un rectángulo tiene { $height } filas. Está cortado en una parte de { $a } de ancho y otra de { $b } de ancho. ¿Cuál es el área total?
g3-area-split-hint-parts = Halla el área de cada parte. Luego suma.
g3-area-split-hint-first = Empieza con { $work }.

g3-area-l-shape-ask = ¿Cuál es el área de la figura?
g3-area-l-shape-shape = Una figura en L. Abajo mide { $w }. El lado derecho mide { $h }. Luego sube { $up }. Arriba mide { $top }.
g3-area-l-shape-shape-left = Una figura en L. Abajo mide { $w }. El lado derecho mide { $h }. El lado izquierdo mide { $left }. Arriba mide { $top }.
g3-area-l-shape-hint-cut = Corta la figura en dos rectángulos.
g3-area-l-shape-hint-low = El rectángulo de abajo es { $work }.
g3-area-l-shape-step-low = Parte de abajo: { $work }.
g3-area-l-shape-step-high = Parte de arriba: { $work }.

g3-perimeter-ask-around = Los lados se miden en { $unit }. ¿Cuál es el perímetro?
g3-perimeter-ask-side = Un rectángulo tiene un perímetro de { $perimeter }. Un lado mide { $side }. ¿Cuánto mide el otro lado?
g3-perimeter-ask-missing = Una figura de cuatro lados tiene un perímetro de { $perimeter }. Tres lados miden { $a }, { $b } y { $c }. ¿Cuánto mide el cuarto lado?
g3-perimeter-ask-same = Un rectángulo mide { $w } por { $h }. Otro rectángulo tiene el mismo perímetro y un lado de { $side }. ¿Cuál es el área del segundo rectángulo?
g3-perimeter-rectangle = Un rectángulo con lados { $width } y { $height }.
g3-perimeter-hint-around = El perímetro es el contorno de la figura. Suma todos los lados.
g3-perimeter-hint-opposite = En un rectángulo, los lados opuestos son iguales.
g3-perimeter-hint-half = Dos lados se conocen. Los otros dos son iguales entre sí.
g3-perimeter-hint-known = Primero suma los lados que conoces: { $work }.
g3-perimeter-hint-same = Primero halla el otro lado del segundo rectángulo.
g3-perimeter-step-two = Los dos lados conocidos: { $work }.

g4-area-perimeter-rules-ask-area = Un rectángulo tiene un área de { $area }. Un lado mide { $side }. ¿Cuánto mide el otro lado?
g4-area-perimeter-rules-ask-perimeter = Un rectángulo tiene un perímetro de { $perimeter }. Un lado mide { $side }. ¿Cuánto mide el otro lado?
g4-area-perimeter-rules-ask-both = Un rectángulo tiene un área de { $area }. Un lado mide { $side }. ¿Cuál es su perímetro?
g4-area-perimeter-rules-hint-area = El área es lado por lado.
g4-area-perimeter-rules-hint-perimeter = El perímetro tiene cada lado dos veces.
g4-area-perimeter-rules-hint-work = Halla el número que falta: { $work }.
g4-area-perimeter-rules-hint-then = Primero halla el otro lado. Luego recorre el contorno.

g4-units-convert-hint-one = { $one }
g4-units-convert-table-short = Una tabla. Primero { $one } y { $small }. Luego { $asked } y un cuadro.
g4-units-convert-table = Una tabla. Primero { $one } y { $small }, luego { $two } y { $double }, luego { $asked } y un cuadro.

g5-units-convert-hint-one = { $one }
g5-units-convert-hint-divide = Para una unidad mayor, divide.
g5-units-convert-hint-multiply = Para una unidad menor, multiplica.
g5-units-convert-ask-left-1 = { $name } tiene { $large ->
    [one] { $large } metro
   *[other] { $large } metros
} de cuerda y corta { $n } pedazos de { $small } centímetros cada uno. ¿Cuántos centímetros quedan?
g5-units-convert-ask-left-2 = Un camino mide { $large ->
    [one] { $large } kilómetro
   *[other] { $large } kilómetros
}. { $name } ya corrió { $n } partes de { $small } metros cada una. ¿Cuántos metros faltan?
g5-units-convert-ask-left-3 = Una jarra tiene { $large ->
    [one] { $large } litro
   *[other] { $large } litros
} de jugo. { $name } llena { $n } vasos con { $small } mililitros cada uno. ¿Cuántos mililitros quedan?
g5-units-convert-ask-all-1 = { $name } lleva { $n } bolsas de { $small } gramos cada una. ¿Cuántos kilogramos son en total?
g5-units-convert-ask-all-2 = { $name } corre { $n } vueltas de { $small } metros cada una. ¿Cuántos kilómetros son en total?
g5-units-convert-ask-all-3 = { $name } vacía { $n } frascos de { $small } mililitros cada uno en un tanque. ¿Cuántos litros son en total?
g5-units-convert-hint-same-unit = Primero escribe la cantidad grande en la unidad pequeña.
g5-units-convert-hint-all-parts = ¿Cuánto suman las { $n } partes?
g5-units-convert-hint-first-all = Primero halla cuánto es en la unidad pequeña.

g4-measure-stories-ask-1 = { $name } tiene { $n } metros de cuerda y corta { $b } centímetros. ¿Cuántos centímetros quedan?
g4-measure-stories-ask-2 = { $name } pone { $n } kilogramos de harina en { $k } bolsas iguales. ¿Cuántos gramos hay en cada bolsa?
g4-measure-stories-ask-3 = { $name } trabaja { $n } horas y { $b } minutos. ¿Cuántos minutos son?
g4-measure-stories-ask-4 = { $n } litros de jugo llenan { $k } frascos iguales. ¿Cuántos mililitros hay en cada frasco?
g4-measure-stories-hint-same = Primero escribe los dos en la misma unidad pequeña.
g4-measure-stories-hint-small = Primero escribe la cantidad en la unidad pequeña.
g4-measure-stories-hint-one = { $one }

g4-money-stories-ask-total = { $name } compra un libro de { $a } y un mapa de { $b }. ¿Cuál es el total?
g4-money-stories-ask-change = { $name } compra una pelota de { $price } y paga con { $paid }. ¿Cuánto es el cambio?
g4-money-stories-ask-each = { $name } compra { $n } macetas. Cada una cuesta { $price }. ¿Cuál es el total?
g4-money-stories-hint-line-up = Alinea dólares con dólares y centavos con centavos.
g4-money-stories-hint-estimate = Es más o menos { $about }.
g4-money-stories-hint-count-up = Cuenta desde el precio hasta lo que se pagó.
g4-money-stories-hint-next = Primero cuenta hasta { $next }.
g4-money-stories-hint-times = Todas cuestan lo mismo. Multiplica.
g4-money-stories-hint-apart = Separa dólares y centavos: { $dollars } y { $cents }.
g4-money-stories-step-up = Hasta { $next } hay { $gap }.
g4-money-stories-step-dollars = Dólares: { $work }.
g4-money-stories-step-cents = Centavos: { $work }.

g5-volume-unit-cube-ask-one = Un cubo tiene aristas de { $side }. ¿Cuál es su volumen?
g5-volume-unit-cube-ask-row = Hay { $n } cubos en fila. Cada uno tiene aristas de { $side }. ¿Cuál es el volumen de la fila?
g5-volume-unit-cube-ask-larger = Hay { $n } cubos en fila. Cada uno tiene aristas de { $edge }. ¿Cuál es el volumen de la fila?
g5-volume-unit-cube-ask-larger-tower = Hay { $n } cubos uno encima de otro. Cada uno tiene aristas de { $edge }. ¿Cuál es el volumen de la torre?
g5-volume-unit-cube-hint-unit = Un cubo con aristas de 1 unidad es una unidad cúbica.
g5-volume-unit-cube-hint-count = El volumen cuenta cubos.
g5-volume-unit-cube-hint-fit = ¿Cuántos cubos unidad caben en uno de ellos?
g5-volume-unit-cube-step-count = Cuenta los cubos: { $volume }.
g5-volume-unit-cube-step-larger = Cada cubo tiene { $edge } capas de cubos unidad: { $work }.
g5-volume-unit-cube-ask-tower = Hay { $n } cubos uno encima de otro. Cada uno tiene aristas de { $side }. ¿Cuál es el volumen de la torre?

g5-volume-pack-ask-gaps = { $name } pone { $a } cubos unidad en una caja. Todavía caben { $b } más. ¿Cuál es el volumen de la caja?
g5-volume-pack-ask-out = Una caja está llena con { $a } cubos unidad. { $name } corta una parte de la caja donde caben { $b } de ellos. ¿Cuál es el volumen del resto?
g5-volume-pack-ask-both = { $name } pone { $a } cubos unidad en una caja. { $b } de ellos quedan fuera por arriba y adentro todavía caben { $c } más. ¿Cuál es el volumen de la caja?
g5-volume-pack-hint-rule = Los cubos deben llenar el cuerpo sin huecos.
g5-volume-pack-hint-gaps = El espacio que falta es parte de la caja. Llénalo.
g5-volume-pack-hint-out = La parte cortada ya no está. No la cuentes.
g5-volume-pack-hint-both = Los cubos de afuera no cuentan. El espacio de adentro sí.

g5-volume-count-ask = ¿Cuántos cubos unidad llenan la caja?
g5-volume-count-ask-1 = { $name } construye esta caja con cubos unidad. ¿Cuántos cubos se necesitan?
g5-volume-count-ask-2 = { $name } mete cubos unidad hasta llenar esta caja. ¿Cuántos cubos hay en ella?
g5-volume-count-hint-layer = Cuenta los cubos de la capa de abajo.
g5-volume-count-hint-layers = Hay { $layers } capas. Algunos cubos no se ven.
g5-volume-count-step-layer = Una capa: { $work }.
g5-volume-count-step-layers = Todas las capas: { $work }.

g5-volume-box-ask = ¿Cuál es el volumen de la caja?
g5-volume-box-hint-base = Primero halla el área de la base. Luego multiplica por la altura.
g5-volume-box-hint-work = Calcula { $work }.
g5-volume-box-step-base = Base: { $work }.
g5-volume-box-step-height = Por la altura: { $work }.

g5-volume-rules-ask-volume = Una caja tiene una base de { $base } centímetros cuadrados y mide { $height } centímetros de alto. ¿Cuál es su volumen?
g5-volume-rules-ask-height = Una caja tiene un volumen de { $volume } centímetros cúbicos. Su base mide { $base } centímetros cuadrados. ¿Cuánto mide de alto?
g5-volume-rules-ask-edge = Una caja tiene un volumen de { $volume } centímetros cúbicos. Mide { $width } centímetros de largo y { $depth } centímetros de ancho. ¿Cuánto mide de alto?
g5-volume-rules-hint-base = El volumen es área de la base por altura.
g5-volume-rules-hint-work = Calcula { $work }.
g5-volume-rules-step-divide = Divide el volumen entre el área de la base.

g5-volume-add-ask = Dos cajas forman un cuerpo. ¿Cuál es su volumen?
g5-volume-add-solid = Una caja de { $w } de largo, { $d } de fondo y { $h } de alto. Encima hay una caja de { $w2 } de largo, del mismo fondo, y { $h2 } de alto.
g5-volume-add-hint-two = Halla el volumen de cada caja. Luego suma.
g5-volume-add-hint-lower = La caja de abajo: { $work }.
g5-volume-add-step-lower = Caja de abajo: { $work }.
g5-volume-add-step-upper = Caja de arriba: { $work }.
clock-one = a la
clock-many = a las
thing-apple = una manzana
thing-pencil = un lápiz
thing-cat = un gato
thing-bike = una bicicleta
thing-melon = una sandía
thing-letter = una carta
thing-spoon = una cuchara
thing-glass = un vaso
thing-bucket = una cubeta
thing-tub = una tina
