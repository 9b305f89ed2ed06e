shape-triangle = triángulo
shape-quadrilateral = cuadrilátero
shape-pentagon = pentágono
shape-hexagon = hexágono
shape-octagon = octágono
shape-square = cuadrado
shape-rectangle = rectángulo
shape-rhombus = rombo
shape-parallelogram = paralelogramo
shape-trapezoid = trapecio
shape-circle = círculo
shape-bar = rectángulo
shape-figure = Dibujo de una figura: { $shape }.
shape-all = Todos
shape-some = Algunos, no todos
shape-none = Ninguno
family-quadrilateral = cuadrilátero
family-rectangle = rectángulo
family-rhombus = rombo
family-triangle = triángulo
fact-equal-sides = Los cuatro lados miden lo mismo
fact-right-angles = Los cuatro ángulos son rectos
fact-two-parallel-pairs = Hay dos pares de lados paralelos
fact-one-parallel-pair = Hay un solo par de lados paralelos
fold-equilateral = triángulo de tres lados iguales
fold-isosceles = triángulo de solo dos lados iguales
fold-pentagon = pentágono de lados y ángulos iguales
fold-hexagon = hexágono de lados y ángulos iguales
triangle-right = Triángulo rectángulo
triangle-obtuse = Triángulo obtusángulo
triangle-acute = Triángulo acutángulo
angle-acute = Agudo
angle-right = Recto
angle-obtuse = Obtuso
stroke-segment = Segmento
stroke-ray = Rayo
stroke-line = Recta
pair-parallel = Paralelas
pair-perpendicular = Perpendiculares
pair-neither = Ninguna de las dos
all-squares = cuadrados
all-rectangles = rectángulos
all-rhombuses = rombos
all-parallelograms = paralelogramos
all-quadrilaterals = cuadriláteros
property-right-angles = cuatro ángulos rectos
property-equal-sides = cuatro lados iguales
property-parallel = dos pares de lados paralelos
property-opposite-sides = lados opuestos iguales
property-opposite-angles = ángulos opuestos iguales
property-four-sides = cuatro lados
property-five-angles = cinco ángulos
tree-neither = Ninguna está dentro de la otra

g3-shape-families-ask-sides = ¿Cuántos lados tiene un { $shape }?
g3-shape-families-ask-corners = ¿Cuántos vértices tiene un { $shape }?
g3-shape-families-ask-families = Este es un { $shape }. ¿Qué nombres describen esta figura? Elige todos.
g3-shape-families-ask-belongs = Piensa en cada { $shape }. ¿Cuántos son también un { $family }?
g3-shape-families-ask-belongs-1 = { $name } dibuja muchas figuras. Cada una es un { $shape }. ¿Cuántas son también un { $family }?
g3-shape-families-ask-belongs-2 = { $name } recorta figuras de papel. Cada una es un { $shape }. ¿A cuántas se les puede llamar también { $family }?
g3-shape-families-hint-walk = Piensa en recorrer el contorno de la figura.
g3-shape-families-hint-same = Una figura plana tiene tantos vértices como lados.
g3-shape-families-hint-rectangle = Un rectángulo tiene cuatro ángulos rectos.
g3-shape-families-hint-rhombus = Un rombo tiene cuatro lados iguales.
g3-shape-families-step-count = Un { $shape } tiene { $n }.
g3-shape-families-step-quadrilateral = Toda figura de cuatro lados es un cuadrilátero.
g3-shape-families-step-belongs = Cada uno tiene lo que pide la familia.
g3-shape-families-step-not = El número de lados es distinto, así que ninguno puede serlo.
g3-shape-families-step-some = Algunos tienen lo que pide la familia y otros no.
g3-shape-families-ask-no-name = ¿Qué figura no es rectángulo ni rombo? Un cuadrado es las dos cosas.
g3-shape-families-shape = Figura { $n }
g3-shape-families-corners = Una figura de cuatro lados sobre cuadrados. Sus vértices son { $a }, { $b }, { $c } y { $d }.
g3-shape-families-step-no-name = La figura { $n } no tiene cuatro ángulos rectos ni cuatro lados iguales.
g3-shape-families-ask-sticks = { $name } forma { $n } figuras con palitos, un palito por cada lado. Ningún palito se comparte. Cada figura es un { $shape }. ¿Cuántos palitos se necesitan?
g3-shape-families-hint-sticks = ¿Cuántos palitos se necesitan para una figura?

g3-shape-equal-parts-ask-part = La figura está cortada en partes iguales. ¿Qué fracción es la parte sombreada?
g3-shape-equal-parts-ask-how-many = Cada parte de un { $shape } es { $fraction } de él. ¿Cuántas partes iguales hay?
g3-shape-equal-parts-ask-again = Un { $shape } se corta en { $parts } partes iguales. Cada parte se corta en { $again } partes iguales. ¿Qué fracción del entero es una parte pequeña?
g3-shape-equal-parts-ask-again-1 = { $name } dobla un { $shape } en { $parts } partes iguales. Luego dobla cada parte en { $again } partes iguales. ¿Qué fracción del entero es una parte pequeña?
g3-shape-equal-parts-ask-again-2 = Un { $shape } tiene { $parts } partes iguales. { $name } corta cada una en { $again } partes iguales y toma una parte pequeña. ¿Qué fracción del entero es?
g3-shape-equal-parts-ask-cut = Una barra mide { $length } cuadrados de largo. La cortas en { $parts } partes iguales. ¿Después de cuántos cuadrados va cada corte? Cuenta desde la izquierda.
g3-shape-equal-parts-field-cut = Corte { $n }
g3-shape-equal-parts-hint-share = Reparte los cuadrados entre { $parts } partes.
g3-shape-equal-parts-hint-cut-on = De un corte al siguiente, cuenta una parte más.
g3-shape-equal-parts-step-cuts = Los cortes van después de { $cuts } cuadrados.
g3-shape-equal-parts-hint-equal = Las partes deben ser del mismo tamaño. Cuéntalas todas.
g3-shape-equal-parts-step-one = Una de { $parts } partes iguales es { $fraction }.
g3-shape-equal-parts-hint-one = El numerador es 1: una parte. El denominador es el número de todas las partes.
g3-shape-equal-parts-ask-part-1 = { $name } corta una figura en partes iguales y colorea la parte sombreada. ¿Qué fracción es?
g3-shape-equal-parts-ask-part-2 = Varias personas se reparten esto en partes iguales. A { $name } le toca la parte sombreada. ¿Qué fracción es?
g3-shape-equal-parts-ask-part-3 = Un jardín está cortado en partes iguales. { $name } siembra la parte sombreada. ¿Qué fracción es?
g3-shape-equal-parts-ask-how-many-1 = { $name } corta un { $shape } para que a cada persona le toque { $fraction } de él. ¿Entre cuántas personas se reparte?
g3-shape-equal-parts-ask-how-many-2 = { $name } pinta cada día { $fraction } de un { $shape }. ¿En cuántos días lo pinta todo?
g3-shape-equal-parts-ask-how-many-3 = { $name } dobla un { $shape } en partes iguales. Una parte es { $fraction } de él. ¿Cuántas partes hay?

g4-classify-shapes-ask-triangle = Un triángulo tiene ángulos de { $angles } grados. ¿De qué clase es?
g4-classify-shapes-ask-facts = Este es un { $shape }. ¿Qué es cierto? Elige todo.
g4-classify-shapes-hint-largest = Mira el ángulo mayor.
g4-classify-shapes-hint-ninety = ¿Es menor que 90, exactamente 90 o mayor que 90 grados?
g4-classify-shapes-hint-parallel = Los lados paralelos siempre están a la misma distancia.
g4-classify-shapes-hint-sides = Revisa primero los lados. Luego los ángulos.
g4-classify-shapes-step-largest = El ángulo mayor mide { $angle } grados.
g4-classify-shapes-step-right = Mide exactamente 90 grados, así que el triángulo es rectángulo.
g4-classify-shapes-step-obtuse = Mide más de 90 grados, así que el triángulo es obtusángulo.
g4-classify-shapes-step-acute = Mide menos de 90 grados, así que el triángulo es acutángulo.
g4-classify-shapes-step-shape = Revisa cada frase para un { $shape }.
g4-classify-shapes-step-true = Cierto: { $fact }

g4-symmetry-ask-count = ¿Cuántos ejes de simetría tiene la figura? Es un { $shape }.
g4-symmetry-ask-folds = ¿De cuántas maneras puedes doblar la figura para que coincidan las dos mitades? Es un { $shape }.
g4-symmetry-ask-folds-1 = { $name } recorta esta figura de papel: { $shape }. ¿De cuántas maneras se puede doblar para que coincidan las dos mitades?
g4-symmetry-ask-count-1 = { $name } dibuja esta figura: { $shape }. ¿Cuántos ejes de simetría tiene?
g4-symmetry-hint-fold = Dobla por una línea. Las dos mitades deben quedar una sobre otra.
g4-symmetry-hint-corner = Prueba líneas por los vértices. Prueba líneas por la mitad de los lados.
g4-symmetry-step-count = { $lines ->
    [one] Hay { $lines } línea así.
   *[other] Hay { $lines } líneas así.
}
g4-symmetry-ask-lines = ¿Cuáles de estas líneas son ejes de simetría de la figura? Elige todas.
g4-symmetry-grid = Una figura con los vértices A { $a }, B { $b }, C { $c } y D { $d }.
g4-symmetry-line-ac = La línea que pasa por A y C
g4-symmetry-line-bd = La línea que pasa por B y D
g4-symmetry-line-ab-cd = La línea que pasa por la mitad de AB y la mitad de CD
g4-symmetry-line-bc-da = La línea que pasa por la mitad de BC y la mitad de DA
g4-symmetry-step-line = Este es uno: { $line }.

g4-angle-turn-ask-1 = ¿Cuántos grados son { $part } de una vuelta completa?
g4-angle-turn-ask-2 = Una rueda da { $part } de una vuelta completa. ¿Cuántos grados son?
g4-angle-turn-ask-part = ¿Qué parte de una vuelta completa son { $degrees } grados?
g4-angle-turn-ask-part-1 = { $name } gira { $degrees } grados. ¿Qué parte de una vuelta completa es?
g4-angle-turn-ask-part-2 = { $name } gira una rueda { $degrees } grados. ¿Qué parte de una vuelta completa es?
g4-angle-turn-ask-3 = La aguja larga de un reloj recorre { $part } de una vuelta completa. ¿Cuántos grados son?
g4-angle-turn-ask-4 = { $name } da { $part } de una vuelta completa al bailar. ¿Cuántos grados son?
g4-angle-turn-ask-5 = { $name } hace girar un robot { $part } de una vuelta completa. ¿Cuántos grados son?
g4-angle-turn-ask-6 = { $name } gira una perilla { $part } de una vuelta completa. ¿Cuántos grados son?
g4-angle-turn-hint-full = Una vuelta completa tiene 360 grados.
g4-angle-turn-hint-one = Una parte es { $work }.
g4-angle-turn-hint-fraction = Escribe { $fraction } y hazla más simple.

g4-angle-degrees-ask-same = Un lado da { $n } giros de un grado. Luego da { $more } más hacia el mismo lado. ¿Cuánto mide el ángulo?
g4-angle-degrees-ask-back = Un lado da { $n } giros de un grado. Luego regresa { $more }. ¿Cuánto mide el ángulo?
g4-angle-degrees-ask-full = Un lado da { $n } giros de un grado. ¿Cuántos más hacen una vuelta completa?
g4-angle-degrees-ask-on-back = Un lado da { $n } giros de un grado. Luego da { $more } más hacia el mismo lado y regresa { $back }. ¿Cuánto mide el ángulo?
g4-angle-degrees-hint-one = Cada giro de un grado suma 1 grado.
g4-angle-degrees-hint-on = Hacia el mismo lado quiere decir más.
g4-angle-degrees-hint-back = Regresar quiere decir menos.
g4-angle-degrees-hint-full = Una vuelta completa tiene 360 grados.
g4-angle-degrees-hint-on-back = Primero avanza y luego regresa.

g4-angle-measure-ask = ¿Cuántos grados mide el ángulo?
g4-angle-measure-hint-zero = Busca la escala que tiene 0 en un lado del ángulo. Lee la misma escala en el otro lado.
g4-angle-measure-hint-acute = Es menor que un ángulo recto. Así que mide menos de 90.
g4-angle-measure-hint-obtuse = Es mayor que un ángulo recto. Así que mide más de 90.
g4-angle-measure-step-right = Aquí la escala interior empieza en 0.
g4-angle-measure-step-left = Aquí la escala exterior empieza en 0.
g4-angle-measure-step-read = En esa escala el otro lado está en { $degrees }.
g4-angle-measure-ask-make = Gira el lado. Haz un ángulo de { $degrees } grados.
g4-angle-measure-ask-1 = { $name } abre un abanico. Se abre hasta aquí. ¿Cuántos grados mide el ángulo?
g4-angle-measure-ask-2 = { $name } dibuja un ángulo para una cometa. ¿Cuántos grados mide?
g4-angle-measure-hint-make = Empieza en el 0 de la derecha. Sigue en esa escala.
g4-angle-measure-step-make = En esa escala el otro lado va al { $degrees }.

g4-angle-add-ask-right = Los ángulos forman un ángulo recto. ¿Cuánto mide el que falta?
g4-angle-add-ask-straight = Los ángulos forman una línea recta. ¿Cuánto mide el que falta?
g4-angle-add-ask-full = Los ángulos forman una vuelta completa. ¿Cuánto mide el que falta?
g4-angle-add-ask-given = Los ángulos forman { $total } grados. ¿Cuánto mide el que falta?
g4-angle-add-hint-right = Un ángulo recto tiene { $total } grados.
g4-angle-add-hint-straight = Una línea recta tiene { $total } grados.
g4-angle-add-hint-full = Una vuelta completa tiene { $total } grados.
g4-angle-add-hint-given = Todas las partes son { $total } grados.
g4-angle-add-hint-parts = Resta del total las partes conocidas.
g4-angle-add-angle-two = Un ángulo en dos partes. Una mide { $a } grados. Se pregunta la otra.
g4-angle-add-angle-three = Un ángulo en tres partes. Dos miden { $a } y { $b } grados. Se pregunta la tercera.

g4-lines-angles-ask-angle = Un ángulo mide { $degrees } grados. ¿De qué clase es?
g4-lines-angles-ask-stroke = ¿Qué es el dibujo que pasa por { $a } y { $b }?
g4-lines-angles-ask-pair = ¿Cómo son las dos rectas entre sí?
g4-lines-angles-angle = Un ángulo de { $degrees } grados.
g4-lines-angles-stroke = Un trazo recto por { $a } y { $b }, { $ends ->
    [0] sin extremos
    [one] con { $ends } extremo
   *[other] con { $ends } extremos
} y { $arrows ->
    [0] sin flechas
    [one] con { $arrows } flecha
   *[other] con { $arrows } flechas
}.
g4-lines-angles-pair-parallel = Dos rectas. Cada una va { $x1 } a lo ancho y { $y1 } hacia arriba. Nunca se juntan.
g4-lines-angles-pair-square = Dos rectas que se cruzan. Una va { $x1 } a lo ancho y { $y1 } hacia arriba. La otra va { $x2 } a lo ancho y { $y2 } hacia arriba. Hay una marca cuadrada.
g4-lines-angles-pair-crossing = Dos rectas que se cruzan. Una va { $x1 } a lo ancho y { $y1 } hacia arriba. La otra va { $x2 } a lo ancho y { $y2 } hacia arriba.
g4-lines-angles-hint-right = Un ángulo recto mide 90 grados.
g4-lines-angles-hint-corner = Compáralo con la esquina de una hoja de papel.
g4-lines-angles-hint-arrows = Una flecha quiere decir que sigue y sigue.
g4-lines-angles-hint-ends = Un segmento tiene dos extremos. Un rayo tiene uno. Una recta no tiene.
g4-lines-angles-hint-parallel = Las rectas paralelas nunca se juntan.
g4-lines-angles-hint-perpendicular = Las rectas perpendiculares se cruzan en ángulo recto.
g4-lines-angles-step-acute = Mide menos de 90, así que es agudo.
g4-lines-angles-step-right-angle = Mide exactamente 90, así que es recto.
g4-lines-angles-step-obtuse = Mide más de 90, así que es obtuso.
g4-lines-angles-step-segment = Tiene dos extremos: un segmento.
g4-lines-angles-step-ray = Tiene un extremo: un rayo.
g4-lines-angles-step-line = No tiene extremos: una recta.
g4-lines-angles-step-parallel = Siempre están a la misma distancia: paralelas.
g4-lines-angles-step-perpendicular = Se cruzan en ángulo recto: perpendiculares.
g4-lines-angles-step-crossing = Se cruzan, pero no en ángulo recto.
g4-lines-angles-ask-turn-right = Gira el lado. Haz un ángulo recto.
g4-lines-angles-ask-turn-less = Gira el lado. Haz un ángulo que mida { $change } grados menos que un ángulo recto.
g4-lines-angles-ask-turn-more = Gira el lado. Haz un ángulo que mida { $change } grados más que un ángulo recto.
g4-lines-angles-hint-turn = Empieza en el 0 de la derecha. Sigue en esa escala.
g4-lines-angles-step-turn = En esa escala el otro lado va al { $degrees }.

g5-shape-properties-hint-family = ¿Qué debe tener cada figura de la familia?
g5-shape-properties-hint-example = Busca una de la familia que no lo tenga.
g5-shape-properties-step-squares = Un cuadrado tiene cuatro lados iguales y cuatro ángulos rectos.
g5-shape-properties-step-rectangles = Un rectángulo tiene cuatro ángulos rectos.
g5-shape-properties-step-rhombuses = Un rombo tiene cuatro lados iguales.
g5-shape-properties-step-parallelograms = Un paralelogramo tiene dos pares de lados paralelos.
g5-shape-properties-step-quadrilaterals = Un cuadrilátero tiene cuatro lados. Puede no tener nada más.
g5-shape-properties-step-check = Revisa cada opción: ¿todos o solo algunos?
g5-shape-properties-ask-which = ¿Qué tienen todos los { $family }? Elige todo.
g5-shape-properties-ask-families = ¿Qué familias siempre tienen { $property }? Elige todas.

g5-shape-tree-ask = ¿Qué familia es más amplia: { $one } o { $two }?
g5-shape-tree-hint-rules = La familia más amplia tiene menos reglas.
g5-shape-tree-hint-more = La familia más pequeña debe cumplir más reglas.
g5-shape-tree-step-every = Todos los { $narrow } son { $wide }, pero no al revés.
g5-shape-tree-step-so = Así que la familia más amplia es: { $wide }.
g5-shape-tree-step-chain = Sigue así: la familia siguiente tiene menos reglas.
g5-shape-tree-step-overlap = Algunos { $one } no son { $two }, y algunos { $two } no son { $one }.
g5-shape-tree-step-neither = Así que ninguna familia está dentro de la otra.
g5-shape-tree-ask-order = Pon las familias en orden. Cada familia está dentro de la siguiente.
g5-shape-tree-ask-1 = { $name } dibuja una familia dentro de otra. ¿Cuál queda afuera: { $one } o { $two }?
g5-shape-tree-ask-2 = { $name } busca la familia que tiene más figuras. ¿Es { $one } o { $two }?
g5-shape-tree-ask-order-1 = { $name } dibuja cada familia dentro de la siguiente. Ponlas en orden.
g5-shape-tree-ask-order-2 = { $name } empieza con la familia que tiene más reglas. Pon las familias en orden.
g5-shape-tree-narrowest = La familia más pequeña
g5-shape-tree-widest = La familia más amplia

g5-coordinates-ask-walk = Empieza en (0, 0). Ve { $x } a la derecha y { $y } hacia arriba. ¿En qué punto estás?
g5-coordinates-ask-name = ¿Cuáles son las coordenadas de A?
g5-coordinates-ask-mark = Marca el punto { $point }.
g5-coordinates-ask-move-right-up = Empieza en { $point }. Ve { $dx } a la derecha y { $dy } hacia arriba. ¿Dónde estás?
g5-coordinates-ask-move-right-down = Empieza en { $point }. Ve { $dx } a la derecha y { $dy } hacia abajo. ¿Dónde estás?
g5-coordinates-ask-move-left-up = Empieza en { $point }. Ve { $dx } a la izquierda y { $dy } hacia arriba. ¿Dónde estás?
g5-coordinates-ask-move-left-down = Empieza en { $point }. Ve { $dx } a la izquierda y { $dy } hacia abajo. ¿Dónde estás?
g5-coordinates-grid = Una cuadrícula con el punto A, { $x } a la derecha y { $y } hacia arriba.
g5-coordinates-hint-first = El primer número dice cuánto ir a lo ancho.
g5-coordinates-hint-zero = Cuenta pasos, no líneas.
g5-coordinates-step-second = El segundo número dice cuánto subir.

g5-coordinates-stories-ask-at-1 = A lo ancho: horas. Hacia arriba: millas caminadas. { $x ->
    [one] ¿Cuántas millas van después de { $x } hora?
   *[other] ¿Cuántas millas van después de { $x } horas?
}
g5-coordinates-stories-ask-at-2 = A lo ancho: semanas. Hacia arriba: altura de una planta en centímetros. { $x ->
    [one] ¿Cuánto mide después de { $x } semana?
   *[other] ¿Cuánto mide después de { $x } semanas?
}
g5-coordinates-stories-ask-change-1 = A lo ancho: horas. Hacia arriba: millas caminadas. ¿Cuántas millas se caminan de la hora { $from } a la hora { $to }?
g5-coordinates-stories-ask-change-2 = A lo ancho: semanas. Hacia arriba: altura de una planta en centímetros. ¿Cuántos centímetros crece de la semana { $from } a la semana { $to }?
g5-coordinates-stories-grid = Una cuadrícula con puntos en 1, 2, 3 y 4 a lo ancho. Están a { $y1 }, { $y2 }, { $y3 } y { $y4 } de altura.
g5-coordinates-stories-hint-across = Busca primero el número a lo ancho.
g5-coordinates-stories-step-point = El punto es { $point }. Su segundo número dice la altura.
g5-coordinates-stories-step-points = Los puntos son { $from } y { $to }. Compara los segundos números.
g5-coordinates-stories-hint-up = Sube hasta el punto. Lee su altura.
g5-coordinates-stories-ask-plot-1 = A lo ancho: semanas. Hacia arriba: altura de una planta en centímetros. Al principio mide { $start ->
    [one] { $start } centímetro
   *[other] { $start } centímetros
} y cada semana crece { $each ->
    [one] { $each } centímetro
   *[other] { $each } centímetros
}. Marca el punto de la semana { $x }.
g5-coordinates-stories-ask-plot-2 = A lo ancho: horas. Hacia arriba: millas caminadas. Un grupo ya caminó { $start ->
    [one] { $start } milla
   *[other] { $start } millas
} y cada hora camina { $each ->
    [one] { $each } milla más
   *[other] { $each } millas más
}. Marca el punto de la hora { $x }.
g5-coordinates-stories-ask-plot-3 = A lo ancho: días. Hacia arriba: dólares en una caja. Al principio hay { $start ->
    [one] { $start } dólar
   *[other] { $start } dólares
} y cada día se ponen { $each ->
    [one] { $each } dólar más
   *[other] { $each } dólares más
}. Marca el punto del día { $x }.
g5-coordinates-stories-ask-plot-4 = A lo ancho: cajas. Hacia arriba: kilogramos. Un carro lleva al principio { $start ->
    [one] { $start } kilogramo
   *[other] { $start } kilogramos
}. Cada caja tiene { $each ->
    [one] { $each } kilogramo
   *[other] { $each } kilogramos
}. Marca el punto de { $x } cajas.
g5-coordinates-stories-hint-each = ¿Cuánto se agrega hasta ahí?

g6-polygons-on-grid-ask-side = ¿Cuánto mide el lado de { $a } a { $b }?
g6-polygons-on-grid-ask-corner = Tres vértices de un rectángulo son A { $a }, B { $b } y C { $c }. ¿Dónde está el cuarto vértice?
g6-polygons-on-grid-ask-perimeter = Tres vértices de un rectángulo son A { $a }, B { $b } y C { $c }. ¿Cuál es su perímetro?
g6-polygons-on-grid-grid = Una cuadrícula con los puntos A { $a }, B { $b } y C { $c }.
g6-polygons-on-grid-outline = Un rectángulo en una cuadrícula.
g6-polygons-on-grid-hint-straight = En un lado recto, una coordenada no cambia.
g6-polygons-on-grid-hint-draw = Piensa en la figura completa.
g6-polygons-on-grid-step-same = Los segundos números son iguales. Compara los primeros.
g6-polygons-on-grid-step-left = Toma el primer número de A y el segundo número de C.
g6-polygons-on-grid-step-sides = Los lados miden { $w } y { $h }.

g6-area-triangle-ask = ¿Cuál es el área del triángulo?
g6-area-triangle-ask-height = Un triángulo tiene un área de { $area } unidades cuadradas y una base de { $b } unidades. ¿Cuánto mide su altura?
g6-area-triangle-triangle = Un triángulo con base { $b } y altura { $h }.
g6-area-triangle-triangle-base = Un triángulo con base { $b } y su altura dibujada.
g6-area-triangle-hint-half = Un triángulo es la mitad de un rectángulo que lo encierra.
g6-area-triangle-hint-rule = El área es base por altura, entre 2.

g6-area-polygons-ask = ¿Cuál es el área de la figura?
g6-area-polygons-parallelogram = Un paralelogramo con base { $b }, lado inclinado { $side } y altura { $h }.
g6-area-polygons-trapezoid = Un trapecio con lados paralelos { $b } y { $top } y altura { $h }.
g6-area-polygons-house = Un rectángulo de { $b } de ancho y { $h } de alto con un triángulo de { $roof } de alto encima.
g6-area-polygons-hint-move = Corta el extremo inclinado y pásalo al otro lado. Queda un rectángulo.
g6-area-polygons-hint-upright = La altura va derecho hacia arriba, no por el lado inclinado.
g6-area-polygons-hint-two-triangles = Córtalo en dos triángulos.
g6-area-polygons-hint-trapezoid = Suma los lados paralelos. Multiplica por la altura. Divide entre 2.
g6-area-polygons-hint-parts = Córtalo en un rectángulo y un triángulo.
g6-area-polygons-hint-roof = El triángulo es la mitad de un rectángulo que lo encierra.

g6-volume-fraction-edges-ask = Una caja tiene aristas de { $a }, { $b } y { $c } unidades. ¿Cuál es su volumen en unidades cúbicas?
g6-volume-fraction-edges-hint-multiply = Multiplica las tres aristas.
g6-volume-fraction-edges-hint-work = Calcula { $work }.

g6-surface-area-ask-box = Una caja mide { $w } por { $d } por { $h }. ¿Cuál es su área de superficie?
g6-surface-area-ask-pyramid = Una pirámide tiene una base cuadrada con aristas de { $b }. Cada triángulo mide { $s } de alto. ¿Cuál es su área de superficie?
g6-surface-area-net-box = La caja desplegada en seis rectángulos. Aristas { $w }, { $d } y { $h }.
g6-surface-area-net-pyramid = La pirámide desplegada: un cuadrado con aristas de { $b } y un triángulo en cada lado.
g6-surface-area-hint-faces = Halla el área de cada cara. Luego suma.
g6-surface-area-hint-pairs = Las caras opuestas de una caja son iguales.
g6-surface-area-hint-triangles = Los cuatro triángulos son iguales.
g6-surface-area-step-base = Base: { $work }.
g6-surface-area-step-triangles = Triángulos: { $work }.
g6-surface-area-ask-net = ¿Qué cuerpo se forma con este desarrollo plano?
g6-surface-area-faces-cube = Seis cuadrados del mismo tamaño, unidos por sus aristas.
g6-surface-area-faces-box = Seis caras con cuatro ángulos rectos, unidas por sus aristas. No todas son del mismo tamaño.
g6-surface-area-faces-pyramid = Un cuadrado con un triángulo en cada lado.
g6-surface-area-faces-prism = Tres rectángulos en fila. El del medio tiene un triángulo en cada extremo.
g6-surface-area-hint-kinds = ¿Qué caras ves: cuadrados, rectángulos, triángulos?
g6-surface-area-hint-fold = Dóblalo. ¿Qué caras se juntan?
solid-cube = Cubo
solid-box = Prisma rectangular que no es un cubo
solid-pyramid = Pirámide cuadrada
solid-prism = Prisma triangular
solid-step = Al doblarlo se forma esto: { $solid }.

misconception-ray-and-segment-mixed-up = Un rayo tiene una flecha. Un segmento tiene dos extremos.
    .name = Confundió rayo y segmento
