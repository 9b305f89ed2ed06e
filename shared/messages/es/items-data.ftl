graph-fruit = Fruta vendida
graph-count-fruit = Cantidad de frutas
fruit-apples = manzanas
fruit-pears = peras
fruit-plums = ciruelas
fruit-figs = higos
graph-travel = Cómo llegan los estudiantes a la escuela
graph-count-students = Cantidad de estudiantes
travel-walk = a pie
travel-bus = en autobús
travel-bike = en bicicleta
travel-car = en carro
graph-birds = Aves vistas
graph-count-birds = Cantidad de aves
bird-doves = palomas
bird-ducks = patos
bird-owls = búhos
bird-wrens = chochines
graph-kind = Clase
plot-leaves = Largo de las hojas
plot-shells = Largo de las conchas
plot-jars = Agua en los frascos
plot-inches = Pulgadas
plot-cups = Tazas

g3-scaled-graphs-ask-more = ¿Cuántos más hay para "{ $one }" que para "{ $two }"?
g3-scaled-graphs-ask-both = ¿Cuántos hay para "{ $one }" y "{ $two }" juntos?
g3-scaled-graphs-ask-two = Suma los números de "{ $one }" y "{ $two }". ¿Cuántos más son que para "{ $three }"?
g3-scaled-graphs-hint-scale = Mira primero la escala. ¿Cuánto vale un paso o un símbolo?
g3-scaled-graphs-hint-bar = La escala va de { $step } en { $step }. Lee dónde acaba cada barra.
g3-scaled-graphs-hint-picture = Cada símbolo vale { $step }. Multiplica.
g3-scaled-graphs-step-value = { $name }: { $work }.

g3-build-bar-graph-ask = Haz una gráfica de barras de la tabla. La escala va de { $step } en { $step }.
g3-build-bar-graph-table-3 = Una tabla: { $a } { $va }, { $b } { $vb }, { $c } { $vc }.
g3-build-bar-graph-table-4 = Una tabla: { $a } { $va }, { $b } { $vb }, { $c } { $vc }, { $d } { $vd }.
g3-build-bar-graph-hint-scale = Cada paso de la escala vale { $step }.
g3-build-bar-graph-hint-each = Haz una barra a la vez. Para en el número de la tabla.
g3-build-bar-graph-hint-symbol = Cada símbolo vale { $step }.
g3-build-bar-graph-hint-each-row = Haz una fila a la vez. Cuenta según lo que vale un símbolo.
g3-build-bar-graph-step-first = { $marks ->
    [one] La barra de { $name } acaba en { $value }. Es { $marks } paso.
   *[other] La barra de { $name } acaba en { $value }. Son { $marks } pasos.
}
g3-build-bar-graph-step-first-row = { $marks ->
    [one] La fila de { $name } vale { $value }. Es { $marks } símbolo.
   *[other] La fila de { $name } vale { $value }. Son { $marks } símbolos.
}
g3-build-bar-graph-ask-pictures = Haz una gráfica de dibujos de la tabla. Cada símbolo vale { $step }.

g3-measure-line-plot-ask-ruler-1 = ¿Cuánto mide la barra?
g3-measure-line-plot-ask-ruler-2 = La barra muestra el largo de una hoja. ¿Cuánto mide?
g3-measure-line-plot-ask-ruler-3 = La barra muestra el largo de un lápiz. ¿Cuánto mide?
g3-measure-line-plot-ask-ruler-4 = La barra muestra el largo de una concha. ¿Cuánto mide?
g3-measure-line-plot-ask-dots = Las marcas están a { $step }. ¿Cuántas hojas miden { $value }?
g3-measure-line-plot-ask-longer = Las marcas están a { $step }. ¿Cuántas hojas miden más de { $value }?
g3-measure-line-plot-hint-parts = Cada pulgada está en { $parts } partes iguales.
g3-measure-line-plot-hint-whole = Cuenta las pulgadas enteras. Luego cuenta las partes.
g3-measure-line-plot-hint-start = La barra no empieza en 0. Mira dónde empieza y dónde acaba.
g3-measure-line-plot-step-whole = La barra acaba después de { $whole }.
g3-measure-line-plot-step-part = Mide { $length }.
g3-measure-line-plot-hint-dot = Cada punto es una hoja.
g3-measure-line-plot-hint-find = Busca { $value } en la recta.
g3-measure-line-plot-step-count = Cuenta los puntos: { $right }.
g3-measure-line-plot-ask-build = Ocho hojas miden, en pulgadas: { $a }, { $b }, { $c }, { $d }, { $e }, { $f }, { $g }, { $h }. Haz el diagrama de puntos.
g3-measure-line-plot-hint-one-dot = Pon un punto por cada hoja.
g3-measure-line-plot-hint-how-many = ¿Cuántas hojas miden { $value }? Pon esa cantidad de puntos.
g3-measure-line-plot-step-column = { $count ->
    [one] { $count } hoja mide { $value }. Así que hay { $count } punto.
   *[other] { $count } hojas miden { $value }. Así que hay { $count } puntos.
}
g3-measure-line-plot-step-all = De izquierda a derecha los puntos son { $heights }.

g4-line-plot-ask-range = Las marcas están a { $step }. ¿Cuánto más mide la concha más larga que la más corta?
g4-line-plot-ask-total = Las marcas están a { $step }. Toma todas las conchas del largo más común. Ponlas una tras otra. ¿Cuánto mide la fila?
g4-line-plot-hint-ends = Busca la primera y la última marca con puntos.
g4-line-plot-hint-difference = Resta la más corta de la más larga.
g4-line-plot-hint-most = Busca la marca con más puntos.
g4-line-plot-hint-times = Multiplica el largo por la cantidad de puntos.
g4-line-plot-step-ends = La más larga mide { $long }. La más corta mide { $short }.
g4-line-plot-step-most = { $count } conchas miden { $value }.

g5-line-plot-ask = Las marcas están a { $step }. Toda el agua se reparte para que cada frasco tenga lo mismo. ¿Cuánto hay en cada frasco?
g5-line-plot-hint-total = Primero suma toda el agua.
g5-line-plot-hint-count = Hay { $count } frascos. Reparte entre ellos.
g5-line-plot-step-total = Toda el agua es { $total }.
