## Text alternatives of figures.
figure-column-plus = { $top } y { $bottom } escritos uno sobre otro, para sumar.
figure-column-minus = { $bottom } escrito debajo de { $top }, para restar.
figure-column-times = { $bottom } escrito debajo de { $top }, para multiplicar.
figure-strip = Una barra en { $parts } partes iguales. { $shaded ->
    [one] { $shaded } está sombreada.
   *[other] { $shaded } están sombreadas.
}
figure-strip-wholes = { $wholes } barras, cada una en { $parts } partes iguales. En total, { $shaded } partes sombreadas.
figure-strips = Dos filas de barras del mismo largo. En una, cada barra tiene { $parts } partes iguales. Partes sombreadas en total: { $shaded }. En la otra, cada barra tiene { $parts2 } partes iguales. Partes sombreadas en total: { $shaded2 }.
figure-fraction-grid = Un cuadrado cortado en { $rows } filas y { $columns } columnas. Filas sombreadas de un modo: { $shadedrows }. Columnas sombreadas de otro modo: { $shadedcolumns }.
figure-array = Puntos en { $rows } filas, { $columns } en cada fila.
figure-array-split = Puntos en { $rows } filas, { $columns } en cada fila, con un corte después de { $split } en cada fila.
figure-squares = { $rows ->
    [one] { $columns } cuadrados unidad en una fila.
   *[other] Cuadrados unidad en { $rows } filas, { $columns } en cada fila.
}
figure-squares-split = Cuadrados unidad en { $rows } filas, { $columns } en cada fila, con un corte después de { $split } en cada fila.
figure-groups = Puntos en { $groups } grupos, { $each } en cada grupo.
figure-groups-left = Puntos en { $groups } grupos, { $each } en cada grupo, y { $left } fuera.
figure-clock = Un reloj. La aguja corta está entre { $hour } y { $next }. La aguja larga está { $marks } marcas pequeñas después de 12.
figure-clock-full = Un reloj. La aguja corta está en { $hour }. La aguja larga está en 12.
figure-blocks = Bloques de base diez: { $large ->
    [one] { $large } cubo grande
   *[other] { $large } cubos grandes
}, { $flats ->
    [one] { $flats } placa
   *[other] { $flats } placas
}, { $rods ->
    [one] { $rods } barra
   *[other] { $rods } barras
}, { $cubes ->
    [one] { $cubes } cubo pequeño
   *[other] { $cubes } cubos pequeños
}.
figure-blocks-hundredths = Bloques de base diez donde una placa vale uno: { $flats ->
    [one] { $flats } placa
   *[other] { $flats } placas
}, { $rods ->
    [one] { $rods } barra
   *[other] { $rods } barras
}, { $cubes ->
    [one] { $cubes } cubo pequeño
   *[other] { $cubes } cubos pequeños
}.
figure-area-model = Un rectángulo cortado en partes. Lado izquierdo: { $rows }. Lado de arriba: { $columns }.
figure-line = Una recta numérica de { $from } a { $to }.
figure-line-parts = Una recta numérica de { $from } a { $to }. Cada entero está en { $parts } partes iguales.
figure-line-plot = Diagrama de puntos: { $title }. La recta va de { $from } a { $to }. Puntos sobre las marcas en orden: { $counts }.
figure-cubes = Una caja de cubos unidad: { $width } de ancho, { $depth } de fondo, { $height } de alto.
figure-box = Una caja: { $width } de ancho, { $depth } de fondo, { $height } de alto.
figure-protractor-right = Un transportador sobre un ángulo. Un lado está en 0 de la escala interior. El otro lado está en { $inner } de la escala interior y en { $outer } de la exterior.
figure-protractor-left = Un transportador sobre un ángulo. Un lado está en 0 de la escala exterior. El otro lado está en { $inner } de la escala interior y en { $outer } de la exterior.
figure-ruler-inch = pulgada
figure-ruler-centimeter = centímetro
figure-ruler = Una regla. Cada { $unit } está en { $parts } partes iguales. Una barra va de { $from } a { $to }.
figure-jug = Una jarra con escala en { $unit }. Cada { $step } está en { $parts } partes. El agua está { $marks ->
    [0] en
    [one] { $marks } marca sobre
   *[other] { $marks } marcas sobre
} { $label }.
figure-dial = Una balanza de aguja en { $unit }. Cada { $step } está en { $parts } partes. La aguja está { $marks ->
    [0] en
    [one] { $marks } marca después de
   *[other] { $marks } marcas después de
} { $label }.
figure-coins = Monedas y billetes, en dólares: { $values }.
figure-bars-3 = Gráfica de barras: { $title }. Barras para { $a }, { $b }, { $c }, con alturas { $values }. La escala va de { $step } en { $step }.
figure-bars-4 = Gráfica de barras: { $title }. Barras para { $a }, { $b }, { $c }, { $d }, con alturas { $values }. La escala va de { $step } en { $step }.
figure-pictures-3 = Gráfica de dibujos: { $title }. Filas para { $a }, { $b }, { $c }, con { $symbols } símbolos. Cada símbolo vale { $each }.
figure-pictures-4 = Gráfica de dibujos: { $title }. Filas para { $a }, { $b }, { $c }, { $d }, con { $symbols } símbolos. Cada símbolo vale { $each }.
figure-picture-key = Cada símbolo vale { $each }.
figure-dots = Diagrama de puntos: { $title }. La recta va de { $from } a { $to }. Puntos sobre las marcas en orden: { $counts }.
figure-histogram = Histograma: { $title }. De { $from } a { $to }, cada barra abarca { $width }. Alturas en orden: { $counts }.
figure-box-plot = Diagrama de caja: { $title }. Menor { $least }, caja de { $lower } a { $upper } con una línea en { $median }, mayor { $greatest }.
figure-balance = Una balanza en equilibrio: { $equation }.
figure-tape = Una barra en { $parts } partes iguales. { $shaded ->
    [one] { $shaded } está sombreada.
   *[other] { $shaded } están sombreadas.
}
figure-circle = Un círculo en { $parts } partes iguales. { $shaded ->
    [one] { $shaded } está sombreada.
   *[other] { $shaded } están sombreadas.
}
