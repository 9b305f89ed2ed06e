## Text alternatives of figures.
figure-column-plus = { $top } y { $bottom } escritos uno sobre otro, para sumar.
figure-column-minus = { $bottom } escrito debajo de { $top }, para restar.
figure-column-times = { $bottom } escrito debajo de { $top }, para multiplicar.
