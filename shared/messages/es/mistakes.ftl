## Misconceptions: what the student is told, and (.name) what the teacher reads.
mistake-carry-forgotten = ¿Llevaste? Cuando una columna llega a diez o más, una decena pasa a la izquierda.
    .name = Olvidó llevar
mistake-carry-written-in-place = Escribe solo una cifra en cada columna. Lleva la decena a la izquierda.
    .name = Dos cifras en una columna
mistake-subtracted-instead = Mira el signo. Restaste, pero aquí hay que sumar.
    .name = Restó en vez de sumar
mistake-added-instead = Mira el signo. Sumaste, pero aquí hay que restar.
    .name = Sumó en vez de restar
mistake-smaller-from-larger = En cada columna, resta la cifra de abajo de la de arriba. Si no alcanza, cambia una.
    .name = Restó la cifra menor de la mayor
mistake-trade-not-taken-away = Cuando cambias, la cifra de la izquierda baja en uno.
    .name = Cambió, pero no bajó la otra columna
mistake-added-all-numbers = El último número es el total. Necesitas la parte que falta.
    .name = Sumó todos los números
