## Names of the strands.
strand-place-value = Place value
strand-addition-subtraction = Addition and subtraction
strand-multiplication = Multiplication and division
strand-fractions = Fractions
strand-decimals = Decimals
strand-measurement = Measurement
strand-geometry = Geometry
strand-data = Data
strand-statistics = Statistics
strand-expressions = Expressions
strand-number-system = Number system
strand-ratio = Ratio
