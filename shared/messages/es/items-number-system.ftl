quadrant-1 = Primer cuadrante
quadrant-2 = Segundo cuadrante
quadrant-3 = Tercer cuadrante
quadrant-4 = Cuarto cuadrante
order-coldest = Más fría
order-warmest = Más cálida
order-lowest = Más baja
order-highest = Más alta
order-least = Menor
order-greatest = Mayor
absolute-more = Mayor
absolute-less = Menor
absolute-same = Igual

g6-fraction-divide-hint-fit = ¿Cuántas veces cabe { $part } en { $amount }?
g6-fraction-divide-hint-times = Dividir entre una fracción es lo mismo que multiplicar por { $turned }.
g6-fraction-divide-ask-1 = ¿Cuántas porciones de { $part } de taza hay en { $amount } de taza de yogur?
g6-fraction-divide-ask-2 = Un terreno tiene un área de { $amount } de milla cuadrada y mide { $part } de milla de largo. ¿Cuántas millas mide de ancho?
g6-fraction-divide-ask-3 = Una cuerda mide { $amount } de yarda. ¿Cuántos trozos de { $part } de yarda salen? Cuenta también la parte de un trozo.

g6-divide-multi-digit-hint-multiples = Escribe algunos múltiplos del divisor: { $multiples }.
g6-divide-multi-digit-hint-first = Empieza por la izquierda. Divide un lugar a la vez.
g6-divide-multi-digit-step-place = Divide { $rest }: quita { $work }.

g6-greatest-common-factor-ask = ¿Cuál es el máximo común divisor de { $a } y { $b }?
g6-greatest-common-factor-hint-common = ¿Qué factores están en las dos listas? Toma el mayor.
g6-greatest-common-factor-hint-both = Haz una lista de los factores de los dos números.
g6-greatest-common-factor-step-list = Factores de { $n }: { $factors }.
g6-greatest-common-factor-step-common = Los dos tienen { $common }. El mayor es { $right }.

g6-least-common-multiple-ask = ¿Cuál es el mínimo común múltiplo de { $a } y { $b }?
g6-least-common-multiple-hint-list = Múltiplos de { $n }: { $multiples }, y así.
g6-least-common-multiple-hint-first = Para en el primero que también se divide entre { $n }.
g6-least-common-multiple-step-list = Múltiplos de { $n }: { $multiples }.
g6-least-common-multiple-step-first = El primero en las dos listas es { $right }.
g6-least-common-multiple-ask-1 = Dos luces se encienden ahora. Una se enciende cada { $a } segundos. La otra se enciende cada { $b } segundos. ¿Después de cuántos segundos se encienden juntas otra vez?
g6-least-common-multiple-ask-2 = Los lápices vienen en paquetes de { $a }. Las plumas vienen en paquetes de { $b }. Quieres tantas plumas como lápices. ¿Cuál es la menor cantidad de cada cosa?
g6-least-common-multiple-ask-3 = Un autobús sale cada { $a } minutos. El otro sale cada { $b } minutos. Los dos salen ahora. ¿En cuántos minutos salen juntos otra vez?
g6-least-common-multiple-ask-4 = { $name } da una vuelta en { $a } minutos. Otra persona tarda { $b } minutos. Empiezan al mismo tiempo. ¿Después de cuántos minutos están otra vez juntas en la salida?
g6-least-common-multiple-ask-5 = { $name } riega una planta cada { $a } días y otra cada { $b } días. Hoy riega las dos. ¿En cuántos días riega las dos otra vez?

g6-common-factor-sum-ask = Escribe la suma como producto. Pon el máximo común divisor delante del paréntesis.
g6-common-factor-sum-ask-1 = { $name } saca el máximo común divisor de esta suma. Escribe el producto.
g6-common-factor-sum-ask-2 = { $name } hace bolsas de regalo iguales, todas las que se pueda, con estas dos cantidades. Escribe un producto con el número de bolsas delante del paréntesis.
g6-common-factor-sum-hint-factor = Halla el número mayor que divide a { $a } y a { $b }.
g6-common-factor-sum-hint-form = Se ve así: { $form }.
g6-common-factor-sum-step-factor = El máximo común divisor es { $g }.

g6-signed-meaning-ask-1 = Hace { $n } grados bajo cero. Escribe la temperatura como número.
g6-signed-meaning-ask-2 = Hace { $n } grados sobre cero. Escribe la temperatura como número.
g6-signed-meaning-ask-3 = Un buzo está { $n } pies bajo el nivel del mar. Escribe la altura como número.
g6-signed-meaning-ask-4 = Una cabaña está { $n } pies sobre el nivel del mar. Escribe la altura como número.
g6-signed-meaning-ask-5 = { $name } debe { $n } dólares. Escribe el saldo como número.
g6-signed-meaning-ask-6 = { $name } tiene { $n } dólares y no debe nada. Escribe el saldo como número.
g6-signed-meaning-ask-7 = Un elevador está { $n ->
    [one] { $n } piso
   *[other] { $n } pisos
} abajo de la planta baja. Escribe su piso como número.
g6-signed-meaning-ask-8 = Un elevador está { $n } pisos arriba de la planta baja. Escribe su piso como número.
g6-signed-meaning-ask-which = ¿Qué representa { $value }? Elige todas.
g6-signed-meaning-zero-1 = Un termómetro marca { $value } grados. ¿Qué significa 0 ahí?
g6-signed-meaning-zero-2 = Un lugar está a { $value } pies de altura. ¿Qué significa 0 ahí?
g6-signed-meaning-zero-3 = Un saldo es de { $value } dólares. ¿Qué significa 0 ahí?
g6-signed-meaning-zero-4 = Un elevador está en el piso { $value }. ¿Qué significa 0 ahí?
g6-signed-meaning-zero-1-right = El punto entre los grados bajo cero y sobre cero
g6-signed-meaning-zero-2-right = El nivel del mar
g6-signed-meaning-zero-3-right = No deber nada ni tener nada
g6-signed-meaning-zero-4-right = La planta baja
g6-signed-meaning-zero-least = Lo menor que puede haber
g6-signed-meaning-hint-zero = El cero es donde se juntan los dos lados.
g6-signed-meaning-hint-line = ¿De qué lado del cero está?
g6-signed-meaning-hint-which = ¿La cantidad baja o está por debajo? Entonces el número es negativo.
g6-signed-meaning-step-below = Está del lado bajo cero, así que el número es negativo.
g6-signed-meaning-step-above = Está del lado sobre cero, así que el número es positivo.
g6-signed-meaning-step-number = El número es { $value }.
g6-signed-meaning-step-less = Lo que se debe, se pierde, se gasta o está bajo cero es negativo.
g6-signed-meaning-step-more = Lo que se ahorra, se gana o está sobre cero es positivo.
g6-signed-meaning-means-owes = Deber { $n } dólares
g6-signed-meaning-means-below-zero = { $n } grados bajo cero
g6-signed-meaning-means-below-sea = { $n } pies bajo el nivel del mar
g6-signed-meaning-means-spends = Gastar { $n } dólares
g6-signed-meaning-means-colder = Un cambio a { $n } grados menos
g6-signed-meaning-means-loses = Perder { $n } puntos en un juego
g6-signed-meaning-means-saves = Ahorrar { $n } dólares
g6-signed-meaning-means-above-zero = { $n } grados sobre cero
g6-signed-meaning-means-above-sea = { $n } pies sobre el nivel del mar
g6-signed-meaning-means-earns = Ganar { $n } dólares
g6-signed-meaning-means-warmer = Un cambio a { $n } grados más
g6-signed-meaning-means-wins = Ganar { $n } puntos en un juego

g6-opposites-ask = ¿Cuál es el opuesto de { $value }?
g6-opposites-ask-twice = ¿Cuál es el opuesto del opuesto de { $value }?
g6-opposites-hint-side = Los opuestos están igual de lejos de 0, uno a cada lado.
g6-opposites-hint-line = Mira los dos lados de 0.
g6-opposites-line = Una recta numérica con 0 en el centro y { $size } de distancia a cada lado.
g6-opposites-step-once = Ve a la misma distancia al otro lado de 0.
g6-opposites-step-twice = Ve al otro lado de 0. Luego regresa.
g6-opposites-step-answer = Es { $right }.
g6-opposites-story-1 = { $name } lee { $value } en un termómetro. Al otro día muestra el opuesto. ¿Qué muestra entonces?
g6-opposites-story-2 = { $name } está en { $value } en una recta numérica. A la misma distancia, al otro lado de 0, hay un árbol. ¿En qué número está?
g6-opposites-story-3 = { $name } dobla una recta numérica en 0. ¿Qué número queda sobre { $value }?

g6-quadrants-ask-quadrant = ¿En qué cuadrante está { $point }?
g6-quadrants-ask-x = Refleja { $point } en el eje x. ¿Dónde está el punto reflejado?
g6-quadrants-ask-y = Refleja { $point } en el eje y. ¿Dónde está el punto reflejado?
g6-quadrants-ask-both = Refleja { $point } en el eje x. Luego refléjalo en el eje y. ¿Dónde queda?
g6-quadrants-hint-signs = Mira los dos signos. El primero dice izquierda o derecha. El segundo dice arriba o abajo.
g6-quadrants-hint-order = Los cuadrantes van de arriba a la derecha, a arriba a la izquierda, abajo a la izquierda y abajo a la derecha.
g6-quadrants-hint-mirror = El punto reflejado está a la misma distancia del eje, del otro lado.
g6-quadrants-grid = Una cuadrícula de coordenadas de −10 a 10 en los dos sentidos.
g6-quadrants-grid-point = Una cuadrícula de coordenadas con el punto P en { $x } a lo ancho y { $y } a lo alto.
g6-quadrants-step-right = El primer número es positivo: a la derecha.
g6-quadrants-step-left = El primer número es negativo: a la izquierda.
g6-quadrants-step-up = El segundo número es positivo: arriba.
g6-quadrants-step-down = El segundo número es negativo: abajo.
g6-quadrants-step-x = En el eje x, solo el segundo número cambia de signo.
g6-quadrants-step-y = En el eje y, solo el primer número cambia de signo.
g6-quadrants-step-both = Los dos números cambian de signo.

g6-rational-on-line-ask = Pon un punto en { $value }.
g6-rational-on-line-ask-1 = La recta muestra grados. { $name } lee { $value } en un termómetro. Pon un punto allí.
g6-rational-on-line-ask-2 = La recta muestra yardas. 0 es el agua. { $name } está en { $value }. Pon un punto allí.
g6-rational-on-line-ask-3 = La recta muestra puntos de un juego. { $name } tiene { $value }. Pon un punto allí.
g6-rational-on-line-hint-left = Los números negativos están a la izquierda de 0.
g6-rational-on-line-hint-parts = { $parts ->
    [one] Cada marca es un entero.
   *[other] Cada entero está en { $parts } partes iguales.
}
g6-rational-on-line-step-wholes = { $n ->
    [one] Ve una marca a la izquierda de 0.
   *[other] Ve { $n } marcas a la izquierda de 0.
}
g6-rational-on-line-step-between = Está entre { $low } y { $high }.
g6-rational-on-line-step-parts = { $n ->
    [one] Desde { $high } ve una parte a la izquierda.
   *[other] Desde { $high } ve { $n } partes a la izquierda.
}

g6-compare-rational-hint-left = En la recta, el número que está más a la izquierda es menor.
g6-compare-rational-hint-line = Piensa dónde está cada uno.
g6-compare-rational-hint-form = Escribe los dos de la misma forma.
g6-compare-rational-hint-divide = La fracción es una división: { $work }. Conserva el signo.
g6-compare-rational-step-left = { $less } está más a la izquierda, así que es menor.

g6-order-in-context-ask-1 = Pon en orden las temperaturas.
g6-order-in-context-ask-2 = Pon en orden las alturas. El nivel del mar es 0.
g6-order-in-context-ask-3 = Pon en orden los saldos.
g6-order-in-context-hint-line = Piensa en una recta numérica. El menor está más a la izquierda.
g6-order-in-context-hint-negative = Bajo cero, un tamaño mayor es un número menor.
g6-order-in-context-step-order = Desde el menor: { $order }.
g6-order-in-context-ask-two-1 = En un pueblo la temperatura es de { $a } grados y en otro es de { $b } grados. ¿Qué signo hace que sea cierto?
g6-order-in-context-ask-two-2 = Un lugar está a { $a } metros y otro a { $b } metros. El nivel del mar es 0. ¿Qué signo hace que sea cierto?
g6-order-in-context-ask-two-3 = Una cuenta tiene { $a } dólares y otra tiene { $b } dólares. Una deuda está por debajo de 0. ¿Qué signo hace que sea cierto?
g6-order-in-context-ask-means-1 = ¿Qué quiere decir eso?
g6-order-in-context-ask-means-2 = ¿Qué quiere decir?
g6-order-in-context-ask-means-3 = ¿Qué dice eso?
g6-order-in-context-means-1-first = En el primer pueblo hace más calor.
g6-order-in-context-means-1-second = En el segundo pueblo hace más calor.
g6-order-in-context-means-2-first = El primer lugar está más alto.
g6-order-in-context-means-2-second = El segundo lugar está más alto.
g6-order-in-context-means-3-first = La primera cuenta tiene más.
g6-order-in-context-means-3-second = La segunda cuenta tiene más.

g6-absolute-value-ask = Halla el valor absoluto.
g6-absolute-value-ask-distance = ¿A qué distancia de 0 está { $value } en la recta numérica?
g6-absolute-value-hint-distance = El valor absoluto es la distancia a 0. Nunca es negativo.
g6-absolute-value-hint-line = Cuenta desde 0.
g6-absolute-value-story-1 = { $name } tiene un mapa de alturas en metros. El nivel del mar es 0. ¿A qué distancia del nivel del mar está { $value }?
g6-absolute-value-story-2 = { $name } lee { $value } en un termómetro. ¿A qué distancia de 0 está?
g6-absolute-value-story-3 = { $name } está en { $value } en una recta numérica. ¿Qué distancia hay hasta 0?

g6-absolute-vs-order-ask-1-size = Un saldo es { $one } dólares. Otro es { $two } dólares. ¿La segunda deuda es mayor o menor que la primera?
g6-absolute-vs-order-ask-1-number = Un saldo es { $one } dólares. Otro es { $two } dólares. ¿El segundo saldo es mayor o menor que el primero?
g6-absolute-vs-order-ask-2-size = Un buzo está a { $one } pies. Otro está a { $two } pies. ¿La segunda profundidad es mayor o menor que la primera?
g6-absolute-vs-order-ask-2-number = Un buzo está a { $one } pies. Otro está a { $two } pies. ¿La segunda altura es mayor o menor que la primera?
g6-absolute-vs-order-hint-zero = Una deuda o una profundidad es un tamaño: lo lejos que está de 0.
g6-absolute-vs-order-hint-left = Un saldo o una altura es un número: puede estar a la izquierda o a la derecha de otro en la recta.
g6-absolute-vs-order-step-size = Los tamaños son { $one } y { $two }.
g6-absolute-vs-order-step-lower = { $two } está más abajo que { $one }, pero su tamaño es mayor.
g6-absolute-vs-order-step-higher = { $two } está más arriba que { $one }, pero su tamaño es menor.
g6-absolute-vs-order-step-same = Los dos están en el mismo lugar, así que son iguales.

g6-coordinate-distance-ask = ¿Qué distancia hay de { $one } a { $two }?
g6-coordinate-distance-hint-same = Una coordenada es igual. Mira la otra.
g6-coordinate-distance-hint-zero = Halla a qué distancia de 0 está cada punto en esa línea.
g6-coordinate-distance-grid = Una cuadrícula de coordenadas con A en { $x1 } a lo ancho y { $y1 } a lo alto, y B en { $x2 } a lo ancho y { $y2 } a lo alto.
g6-coordinate-distance-step-from-zero = Desde 0 hay { $one } hasta el primer punto y { $two } hasta el segundo.
