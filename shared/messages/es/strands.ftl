## Nombres de los temas.
strand-place-value = Valor posicional
strand-addition-subtraction = Suma y resta
strand-multiplication = Multiplicación y división
strand-fractions = Fracciones
strand-decimals = Decimales
strand-measurement = Medición
strand-geometry = Geometría
strand-data = Datos
strand-statistics = Estadística
strand-expressions = Expresiones
strand-number-system = Sistema numérico
strand-ratio = Razones
