ratio-amount = Cantidad
ratio-for = Para
ratio-red = Cuentas rojas
ratio-blue = Cuentas azules
ratio-cups-rice = Tazas de arroz
ratio-cups-water = Tazas de agua
ratio-boats = Botes
ratio-people = Personas

g6-ratio-language-ask-simplest = Escríbela de la forma más simple.
g6-ratio-language-ask-1 = Hay { $a } gatos y { $b } perros. ¿Cuál es la razón de gatos a perros?
g6-ratio-language-ask-1-all = Hay { $a } gatos y { $b } perros. ¿Cuál es la razón de gatos a todos los animales?
g6-ratio-language-ask-2 = Una mezcla tiene { $a } tazas de pintura roja y { $b } tazas de pintura blanca. ¿Cuál es la razón de roja a blanca?
g6-ratio-language-ask-2-all = Una mezcla tiene { $a } tazas de pintura roja y { $b } tazas de pintura blanca. ¿Cuál es la razón de roja a toda la pintura?
g6-ratio-language-ask-3 = Una bolsa tiene { $a } nueces y { $b } dátiles. ¿Cuál es la razón de nueces a dátiles?
g6-ratio-language-ask-3-all = Una bolsa tiene { $a } nueces y { $b } dátiles. ¿Cuál es la razón de nueces a todas las piezas?
g6-ratio-language-ask-4 = Una mezcla tiene { $a } tazas de harina y { $b } tazas de azúcar. ¿Cuál es la razón de harina a azúcar?
g6-ratio-language-ask-4-all = Una mezcla tiene { $a } tazas de harina y { $b } tazas de azúcar. ¿Cuál es la razón de harina a toda la mezcla?
g6-ratio-language-ask-5 = Un equipo tiene { $a } partidos ganados y { $b } perdidos. ¿Cuál es la razón de ganados a perdidos?
g6-ratio-language-ask-5-all = Un equipo tiene { $a } partidos ganados y { $b } perdidos. ¿Cuál es la razón de ganados a todos los partidos?
g6-ratio-language-ask-6 = Un jardín tiene { $a } rosas y { $b } tulipanes. ¿Cuál es la razón de rosas a tulipanes?
g6-ratio-language-ask-6-all = Un jardín tiene { $a } rosas y { $b } tulipanes. ¿Cuál es la razón de rosas a todas las flores?
g6-ratio-language-field-1-first = Gatos
g6-ratio-language-field-1-second = Perros
g6-ratio-language-field-1-all = Todos los animales
g6-ratio-language-field-2-first = Roja
g6-ratio-language-field-2-second = Blanca
g6-ratio-language-field-2-all = Toda la pintura
g6-ratio-language-field-3-first = Nueces
g6-ratio-language-field-3-second = Dátiles
g6-ratio-language-field-3-all = Todas las piezas
g6-ratio-language-field-4-first = Harina
g6-ratio-language-field-4-second = Azúcar
g6-ratio-language-field-4-all = Toda la mezcla
g6-ratio-language-field-5-first = Ganados
g6-ratio-language-field-5-second = Perdidos
g6-ratio-language-field-5-all = Todos los partidos
g6-ratio-language-field-6-first = Rosas
g6-ratio-language-field-6-second = Tulipanes
g6-ratio-language-field-6-all = Todas las flores
g6-ratio-language-hint-order = Conserva el orden de las palabras.
g6-ratio-language-hint-divide = Divide los dos números entre el mayor número que cabe en los dos.
g6-ratio-language-step-divide = Divide los dos entre { $k }.

g6-unit-rate-ask-1 = { $n } kilogramos de arroz cuestan { $total } dólares. ¿Cuántos dólares cuesta 1 kilogramo?
g6-unit-rate-ask-2 = { $name } recorre { $total } kilómetros en bicicleta en { $n } horas a velocidad constante. ¿Cuántos kilómetros son en 1 hora?
g6-unit-rate-ask-3 = De una llave salen { $total } litros en { $n } minutos. ¿Cuántos litros son en 1 minuto?
g6-unit-rate-ask-4 = { $name } recibe { $total } dólares por { $n } horas de trabajo. ¿Cuántos dólares son por 1 hora?
g6-unit-rate-ask-5 = { $name } escribe { $total } renglones en { $n } minutos. ¿Cuántos renglones son en 1 minuto?
g6-unit-rate-ask-6 = Un autobús recorre { $total } millas en { $n } horas a velocidad constante. ¿Cuántas millas son en 1 hora?
g6-unit-rate-hint-one = Para hallar la cantidad de 1, divide.
g6-unit-rate-hint-table = Completa la tabla.
g6-unit-rate-table = Una tabla: { $total } para { $n }, y un cuadro para 1.

g6-ratio-table-ask-1 = La razón de cuentas rojas a azules no cambia. ¿Qué número va en el cuadro?
g6-ratio-table-ask-2 = El arroz y el agua se mezclan siempre igual. ¿Qué número va en el cuadro?
g6-ratio-table-ask-3 = Cada bote lleva la misma cantidad de personas. ¿Qué número va en el cuadro?
g6-ratio-table-table = Una tabla de razones iguales. Primero { $a } y { $b }, luego { $a2 } y { $b2 }, luego { $given } con un cuadro.
g6-ratio-table-hint-times = Multiplica los dos números de un par por el mismo número.
g6-ratio-table-hint-factor = ¿Por cuánto se multiplica? { $work }
g6-ratio-table-step-factor = En una fila: { $work }.
g6-ratio-table-step-same = Haz lo mismo en la otra fila: { $work }.
g6-ratio-table-ask-plot-1 = Con { $a ->
    [one] { $a } cuenta roja
   *[other] { $a } cuentas rojas
} siempre hay { $b ->
    [one] { $b } cuenta azul
   *[other] { $b } cuentas azules
}. A lo ancho: rojas. Hacia arriba: azules. Marca el par de { $given } cuentas rojas.
g6-ratio-table-ask-plot-2 = Para { $a ->
    [one] { $a } taza
   *[other] { $a } tazas
} de arroz se necesita { $b ->
    [one] { $b } taza
   *[other] un total de { $b } tazas
} de agua. A lo ancho: arroz. Hacia arriba: agua. Marca el par de { $given } tazas de arroz.
g6-ratio-table-ask-plot-3 = Para { $a ->
    [one] { $a } huevo
   *[other] { $a } huevos
} se usa { $b ->
    [one] { $b } cucharada
   *[other] un total de { $b } cucharadas
} de harina. A lo ancho: huevos. Hacia arriba: cucharadas. Marca el par de { $given } huevos.
g6-ratio-table-ask-mix-1 = La jarra A tiene { $a ->
    [one] { $a } taza
   *[other] { $a } tazas
} de jugo y { $b } tazas de agua. La jarra B tiene { $c ->
    [one] { $c } taza
   *[other] { $c } tazas
} de jugo y { $d } tazas de agua. ¿Cuál sabe más a jugo?
g6-ratio-table-ask-mix-2 = La pintura A tiene { $a ->
    [one] { $a } lata
   *[other] { $a } latas
} de rojo y { $b } latas de blanco. La pintura B tiene { $c ->
    [one] { $c } lata
   *[other] { $c } latas
} de rojo y { $d } latas de blanco. ¿Cuál es más roja?
g6-ratio-table-ask-mix-3 = El equipo A ganó { $a ->
    [one] { $a } partido
   *[other] { $a } partidos
} y perdió { $b }. El equipo B ganó { $c ->
    [one] { $c } partido
   *[other] { $c } partidos
} y perdió { $d }. ¿Cuál ganó más partidos por cada uno que perdió?
g6-ratio-table-hint-across = La primera cantidad va a lo ancho. La segunda va hacia arriba.
g6-ratio-table-hint-same-amount = Haz que la segunda cantidad sea igual en los dos. Luego compara la primera.
g6-ratio-table-hint-for-one = O halla la primera cantidad por 1 de la segunda: { $one } y { $two }.
g6-ratio-table-step-as-much = Con la misma segunda cantidad, la primera es { $work }.
g6-ratio-table-step-mix-first = A tiene más de la primera.
g6-ratio-table-step-mix-second = B tiene más de la primera.
g6-ratio-table-step-mix-same = Los dos tienen la misma cantidad de la primera.
mix-first = A
mix-second = B
mix-same = Es igual en los dos casos

g6-rate-problems-ask-1 = { $name } maneja { $total } kilómetros en { $n } horas a velocidad constante. ¿Cuántos kilómetros son en { $given } horas?
g6-rate-problems-ask-1-time = { $name } maneja { $total } kilómetros en { $n } horas a velocidad constante. ¿Cuántas horas tarda en manejar { $given } kilómetros?
g6-rate-problems-ask-2 = { $n } plumas cuestan { $total } centavos. ¿Cuántos centavos cuestan { $given } plumas?
g6-rate-problems-ask-2-time = { $n } plumas cuestan { $total } centavos. ¿Cuántas plumas se compran con { $given } centavos?
g6-rate-problems-ask-3 = Una bomba mueve { $total } litros en { $n } minutos. ¿Cuántos litros mueve en { $given } minutos?
g6-rate-problems-ask-3-time = Una bomba mueve { $total } litros en { $n } minutos. ¿Cuántos minutos necesita para { $given } litros?
g6-rate-problems-ask-4 = { $name } gana { $total } dólares en { $n } horas. ¿Cuántos dólares son en { $given } horas?
g6-rate-problems-ask-4-time = { $name } gana { $total } dólares en { $n } horas. ¿Cuántas horas tarda en ganar { $given } dólares?
g6-rate-problems-ask-5 = Una impresora imprime { $total } páginas en { $n } minutos. ¿Cuántas páginas imprime en { $given } minutos?
g6-rate-problems-ask-5-time = Una impresora imprime { $total } páginas en { $n } minutos. ¿Cuántos minutos necesita para { $given } páginas?
g6-rate-problems-ask-6 = { $n } boletos cuestan { $total } dólares. ¿Cuántos dólares cuestan { $given } boletos?
g6-rate-problems-ask-6-time = { $n } boletos cuestan { $total } dólares. ¿Cuántos boletos se compran con { $given } dólares?
g6-rate-problems-ask-buy = Un paquete de { $n } marcadores cuesta { $first } centavos. Un paquete de { $k } de los mismos marcadores cuesta { $second } centavos. ¿En qué paquete cuesta menos cada marcador?
g6-rate-problems-hint-one = Primero halla la cantidad de 1.
g6-rate-problems-hint-work = Calcula { $work }.
g6-rate-problems-step-one = Para 1: { $work }.

g6-percent-of-ask-1 = ¿Cuánto es el { $percent } de { $n }?
g6-percent-of-ask-2 = En un tanque caben { $n } litros. Está lleno al { $percent }. ¿Cuántos litros tiene?
g6-percent-of-ask-3 = Un sendero mide { $n } kilómetros. Ya se recorrió el { $percent }. ¿Cuántos kilómetros son?
g6-percent-of-ask-4 = Una bicicleta cuesta { $n } dólares. Un cupón descuenta el { $percent }. ¿Cuántos dólares descuenta?
g6-percent-of-ask-5 = Un examen tiene { $n } preguntas. Ya está resuelto el { $percent }. ¿Cuántas preguntas son?
g6-percent-of-ask-6 = Una escuela tiene { $n } estudiantes. El { $percent } llega en autobús. ¿Cuántos estudiantes llegan en autobús?
g6-percent-of-hint-hundred = El { $percent } quiere decir { $fraction }.
g6-percent-of-hint-bar = La barra es toda la cantidad.
g6-percent-of-hint-one = Primero halla una centésima parte: { $work }.
g6-percent-of-step-one = Una centésima parte: { $work }.

g6-percent-whole-ask-1 = { $part } es el { $percent } de un número. ¿Qué número es?
g6-percent-whole-ask-2 = { $part } estudiantes son el { $percent } de una escuela. ¿Cuántos estudiantes hay en la escuela?
g6-percent-whole-ask-3 = { $part } litros son el { $percent } de lo que cabe en un tanque. ¿Cuántos litros caben en el tanque?
g6-percent-whole-ask-4 = { $part } páginas son el { $percent } de un libro. ¿Cuántas páginas tiene el libro?
g6-percent-whole-ask-5 = { $part } asientos son el { $percent } de un teatro. ¿Cuántos asientos tiene el teatro?
g6-percent-whole-ask-6 = { $part } árboles son el { $percent } de un huerto. ¿Cuántos árboles hay en el huerto?
g6-percent-whole-hint-part = El { $percent } es { $part }. El total es el 100 por ciento.
g6-percent-whole-hint-one = El { $one } es { $work }.
g6-percent-whole-step-one = El { $one }: { $work }.
g6-percent-whole-step-hundred = El { $all } es 100 veces eso: { $whole }.

g6-ratio-convert-ask-rate = Usa { $rate }.
g6-ratio-convert-ask = Escribe { $given } en { $to }.
g6-ratio-convert-hint-table = Haz una tabla de razones iguales.
g6-ratio-convert-table = Una tabla. Primero { $rate }. Luego { $given } y un cuadro.
g6-ratio-convert-step-multiply = Por cada unidad grande hay las mismas pequeñas. Multiplica.
g6-ratio-convert-step-divide = Pregunta cuántas veces cabe. Divide.
buy-first = El primer paquete
buy-second = El segundo paquete
buy-same = En los dos cuesta lo mismo
