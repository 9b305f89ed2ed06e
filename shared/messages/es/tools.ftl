## Herramientas para probar, junto a un ejercicio o solas.
tools = Herramientas
tools-open = Herramientas
tools-pick = Toma una herramienta
tools-alone = Abrir las herramientas
tools-lead = Prueba cosas. Nada de esto se entrega.
tool-clear = Empezar de nuevo
tool-less = Menos: { $thing }
tool-more = Más: { $thing }
tool-remove = Quitar { $thing }
tool-left = a la izquierda
tool-right = a la derecha

tool-line = Recta numérica
tool-line-point = Punto en la recta numérica
tool-line-at = El punto está en { $at }.
tool-line-hop = de { $from } a { $to }
tool-line-hops = Saltos { $hops }.
tool-line-hop-by = Saltar de a
tool-line-range = Recta
tool-line-range-of = { $from } a { $to }
tool-line-parts = Partes de cada entero

tool-strips = Tiras de fracciones
tool-strip = Tira { $strip }
tool-strip-is = Tira { $strip }: { $shaded } de { $parts } partes iguales sombreadas.
tool-strips-same = Las tiras { $a } y { $b } están sombreadas hasta el mismo largo.
tool-strips-none = No hay tiras. Agrega una.
tool-strips-add = Agregar una tira con estas partes

tool-blocks = Bloques de base diez
tool-blocks-none = Agrega bloques abajo.
tool-blocks-cubes = Cubos
tool-blocks-rods = Barras
tool-blocks-flats = Placas
tool-blocks-large = Cubos grandes
tool-blocks-trade-cubes = 10 cubos por 1 barra
tool-blocks-trade-rods = 10 barras por 1 placa
tool-blocks-trade-flats = 10 placas por 1 cubo grande
tool-blocks-split-rods = 1 barra en 10 cubos
tool-blocks-split-flats = 1 placa en 10 barras
tool-blocks-split-large = 1 cubo grande en 10 placas

tool-counters = Fichas
tool-counters-filled = Llenas
tool-counters-ringed = Con aro
tool-frames = Marcos de diez
tool-frame = Marco de diez { $frame }
tool-frame-is = Marco de diez { $frame }: { $filled } llenas, { $ringed } con aro, { $empty } lugares libres.

tool-chart = Tabla del cien
tool-chart-none = No hay números marcados.
tool-chart-marked = Marcados: { $numbers }.
tool-chart-on = Seguir contando de { $step } en { $step }
tool-chart-step = Contar de

tool-protractor = Transportador
tool-protractor-less = Cerrar { $degrees } grados
tool-protractor-more = Abrir { $degrees } grados
tool-protractor-side = El ángulo se abre
tool-protractor-right = Desde la derecha
tool-protractor-left = Desde la izquierda

tool-ruler = Regla
tool-ruler-cm = Centímetros
tool-ruler-in = Pulgadas
tool-ruler-units = Unidad
tool-ruler-from = Extremo izquierdo
tool-ruler-to = Extremo derecho
tool-ruler-mark = { $end } una marca { $way }
tool-ruler-unit = { $end } una unidad { $way }
tool-ruler-place = { $marks ->
    [one] { $whole } y { $marks } marca
   *[other] { $whole } y { $marks } marcas
}

tool-clock = Reloj
tool-clock-hour = 1 h
tool-clock-minutes = { $minutes } min
tool-clock-on = Adelantar { $time }
tool-clock-back = Atrasar { $time }

tool-timer = Temporizador
tool-timer-set = { $minutes ->
    [one] Puesto en { $minutes } minuto. No tienes que usarlo.
   *[other] Puesto en { $minutes } minutos. No tienes que usarlo.
}
tool-timer-left = { $minutes ->
    [one] Queda { $minutes } minuto.
   *[other] Quedan { $minutes } minutos.
}
tool-timer-waits = Está en pausa.
tool-timer-over = Se acabó el tiempo. Sigue todo lo que quieras.
tool-timer-minutes = Minutos
tool-timer-start = Empezar
tool-timer-wait = Pausa

tool-coins = Monedas
tool-coins-none = Todavía no hay monedas.
tool-coins-of = { $count } × { $worth }
tool-coins-are = En la mesa: { $pieces }.

tool-grid = Cuadrícula
tool-grid-kind = Qué marcar
tool-grid-squares = Cuadrados
tool-grid-points = Puntos
tool-grid-none = Todavía no hay puntos.
tool-grid-are = Puntos: { $points }.
tool-grid-put = Punto { $point }

tool-notes = Hoja de notas
tool-notes-type = O escribe aquí
tool-notes-are = { $strokes ->
    [one] { $strokes } trazo de lápiz
   *[other] { $strokes } trazos de lápiz
}, { $words ->
    [one] { $words } palabra escrita
   *[other] { $words } palabras escritas
}.
