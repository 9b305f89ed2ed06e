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
g6-ratio-language-field-1-first = Gatos
g6-ratio-language-field-1-second = Perros
g6-ratio-language-field-1-all = Todos los animales
g6-ratio-language-field-2-first = Roja
g6-ratio-language-field-2-second = Blanca
g6-ratio-language-field-2-all = Toda la pintura
g6-ratio-language-field-3-first = Nueces
g6-ratio-language-field-3-second = Dátiles
g6-ratio-language-field-3-all = Todas las piezas
g6-ratio-language-hint-order = Conserva el orden de las palabras.
g6-ratio-language-hint-divide = Divide los dos números entre el mayor número que cabe en los dos.
g6-ratio-language-step-divide = Divide los dos entre { $k }.

g6-unit-rate-ask-1 = { $n } kg de arroz cuestan { $total } dólares. ¿Cuántos dólares cuesta 1 kg?
g6-unit-rate-ask-2 = { $name } recorre { $total } km en { $n } horas a velocidad constante. ¿Cuántos km son en 1 hora?
g6-unit-rate-ask-3 = Una llave llena { $total } litros en { $n } minutos. ¿Cuántos litros son en 1 minuto?
g6-unit-rate-ask-4 = { $name } recibe { $total } dólares por { $n } horas de trabajo. ¿Cuántos dólares son por 1 hora?
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

g6-rate-problems-ask-1 = { $name } maneja { $total } km en { $n } horas a velocidad constante. ¿Cuántos km son en { $given } horas?
g6-rate-problems-ask-1-time = { $name } maneja { $total } km en { $n } horas a velocidad constante. ¿Cuántas horas tarda en manejar { $given } km?
g6-rate-problems-ask-2 = { $n } plumas cuestan { $total } centavos. ¿Cuántos centavos cuestan { $given } plumas?
g6-rate-problems-ask-2-time = { $n } plumas cuestan { $total } centavos. ¿Cuántas plumas se compran con { $given } centavos?
g6-rate-problems-ask-3 = Una bomba mueve { $total } litros en { $n } minutos. ¿Cuántos litros mueve en { $given } minutos?
g6-rate-problems-ask-3-time = Una bomba mueve { $total } litros en { $n } minutos. ¿Cuántos minutos necesita para { $given } litros?
g6-rate-problems-hint-one = Primero halla la cantidad de 1.
g6-rate-problems-hint-work = Calcula { $work }.
g6-rate-problems-step-one = Para 1: { $work }.

g6-percent-of-ask-1 = ¿Cuánto es { $percent } de { $n }?
g6-percent-of-ask-2 = En un tanque caben { $n } litros. ¿Cuántos litros son { $percent } de eso?
g6-percent-of-ask-3 = Un paseo mide { $n } km. ¿Cuántos km son { $percent } de él?
g6-percent-of-hint-hundred = { $percent } quiere decir { $fraction }.
g6-percent-of-hint-bar = La barra es toda la cantidad.
g6-percent-of-hint-one = Primero halla un centésimo: { $work }.
g6-percent-of-step-one = Un centésimo: { $work }.

g6-percent-whole-ask-1 = ¿De qué número es { $part } el { $percent }?
g6-percent-whole-ask-2 = { $part } estudiantes son { $percent } de una escuela. ¿Cuántos estudiantes hay en la escuela?
g6-percent-whole-ask-3 = { $part } litros son { $percent } de un tanque. ¿Cuántos litros caben en el tanque?
g6-percent-whole-hint-part = { $percent } es { $part }. El total son todos los centésimos.
g6-percent-whole-hint-one = { $one } es { $work }.
g6-percent-whole-step-one = { $one }: { $work }.
g6-percent-whole-step-hundred = { $all } es 100 veces eso: { $whole }.

g6-ratio-convert-ask-rate = Usa 1 { $large } = { $rate } { $small }.
g6-ratio-convert-ask = ¿Cuántos { $to } son { $given } { $from }?
g6-ratio-convert-hint-table = Haz una tabla de razones iguales.
g6-ratio-convert-table = Una tabla. 1 { $large } va con { $rate } { $small }. { $given } { $from } va con un cuadro.
g6-ratio-convert-step-multiply = Por cada unidad grande hay las mismas pequeñas. Multiplica.
g6-ratio-convert-step-divide = Pregunta cuántas veces cabe. Divide.
