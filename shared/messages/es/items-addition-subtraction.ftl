column-add-start = Empieza con las unidades. Luego ve a la izquierda, columna por columna.
column-subtract-start = Empieza con las unidades. Si la cifra de arriba no alcanza, reagrupa: toma una de la izquierda.
column-line-up = Pon cada cifra en su lugar.
column-add = { $place }: { $work }. Escribe { $digit }.
column-add-carry = { $place }: { $work }. Escribe { $digit } y lleva 1.
column-subtract = { $place }: { $work }.
column-subtract-trade = { $place }: la cifra de arriba no alcanza. Toma una de la izquierda para tener { $left }. { $work }.
column-subtract-lent = { $place }: tomaste una, así que quedan { $left }. { $work }.
column-subtract-lent-trade = { $place }: tomaste una y la cifra no alcanza. Toma una de la izquierda para tener { $left }. { $work }.

g3-add-within-1000-hint-part = Las dos partes juntas son { $total }.
g3-add-within-1000-hint-take = Quita la parte que conoces: { $part }.
g3-add-within-1000-check = Comprueba: { $work }.
