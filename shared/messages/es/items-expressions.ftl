part-factors = Factores
part-terms = Términos
part-coefficients = Coeficientes
equal-always = Siempre iguales
equal-not = No siempre iguales
equal-one-value = Basta un valor para saber que siempre son iguales

g5-brackets-hint-first = Haz primero lo que está en el paréntesis.
g5-brackets-hint-inside = Empieza con { $work }.
g5-brackets-step-inside = Paréntesis: { $work }.
g5-brackets-step-times = Luego multiplica. Suma o resta al final.

g5-write-expressions-rule = Escribe los pasos. No lo calcules.
g5-write-expressions-ask-1 = Suma { $a } y { $b }. Luego multiplica por { $c }.
g5-write-expressions-ask-2 = Resta { $b } de { $a }. Luego multiplica por { $c }.
g5-write-expressions-ask-3 = Multiplica { $a } por { $b }. Luego suma { $c }.
g5-write-expressions-ask-4 = Suma { $a } y { $b }. Luego divide entre { $c }.
g5-write-expressions-ask-5 = Multiplica { $b } por { $c }. Réstalo de { $a }.
g5-write-expressions-ask-6 = Divide { $a } entre { $b }. Luego suma { $c }.
g5-write-expressions-hint-order = ¿Qué va primero? ¿Qué va después?
g5-write-expressions-hint-brackets = Pon paréntesis a la suma o resta que va antes de multiplicar.
g5-write-expressions-step-brackets = El primer paso va entre paréntesis.
g5-write-expressions-step-no-brackets = Multiplicar y dividir van primero sin paréntesis.
g5-write-expressions-step-answer = { $text }

g5-two-patterns-head-place = Número
g5-two-patterns-head-x = Primer patrón
g5-two-patterns-head-y = Segundo patrón
g5-two-patterns-table = Una tabla con los tres primeros pares. El segundo par es { $x1 } y { $y1 }.
g5-two-patterns-ask = Dos patrones empiezan en { $start }. La primera regla es: suma { $a }. La segunda regla es: suma { $b }.
g5-two-patterns-ask-pair = Forma pares: primer patrón, segundo patrón. ¿Cuál es el par número { $n }?
g5-two-patterns-hint-first = El par número 1 es { $pair }.
g5-two-patterns-step-x = Primer patrón: { $terms }.
g5-two-patterns-step-y = Segundo patrón: { $terms }.

g6-powers-hint-repeat = Multiplica { $base } por sí mismo. Escribe { $base } { $exponent } veces.
g6-powers-hint-long = Calcula { $long }.

g6-evaluate-ask = ¿Cuánto es { $expression } cuando { $value }?
g6-evaluate-ask-two = ¿Cuánto es { $expression } cuando a es { $a } y b es { $b }?
g6-evaluate-hint-put = Pon el número en lugar de la letra.
g6-evaluate-hint-beside = Un número junto a una letra o un paréntesis quiere decir por.
g6-evaluate-hint-power = Haz primero la potencia. Luego multiplica.
g6-evaluate-hint-brackets = Haz primero lo que está en el paréntesis.
g6-evaluate-step-put = Con el número en su lugar: { $work }.

g6-write-expressions-ask-1 = Escribe una expresión: { $a } más que { $letter }.
g6-write-expressions-ask-2 = Escribe una expresión: { $a } menos que { $letter }.
g6-write-expressions-ask-3 = Escribe una expresión: { $a } por { $letter }.
g6-write-expressions-ask-4 = Escribe una expresión: { $letter } dividido entre { $a }.
g6-write-expressions-ask-5 = Escribe una expresión: multiplica { $letter } por { $a } y luego suma { $b }.
g6-write-expressions-ask-6 = Escribe una expresión: suma { $b } a { $letter } y luego multiplica por { $a }.
g6-write-expressions-ask-7 = Escribe una expresión: resta { $a } por { $letter } de { $b }.
g6-write-expressions-ask-8 = Escribe una expresión: resta { $b } de { $letter } y luego divide entre { $a }.
g6-write-expressions-hint-letter = { $letter } representa un número.
g6-write-expressions-hint-try = Pon 10 en lugar de { $letter }. ¿Qué harías con él?
g6-write-expressions-step-answer = { $text }

g6-expression-parts-ask-coefficient = ¿Cuál es el coeficiente de { $letter } en { $expression }?
g6-expression-parts-ask-constant = ¿Qué número está solo, sin letra, en { $expression }?
g6-expression-parts-ask-terms = ¿Cuántos términos tiene { $expression }?
g6-expression-parts-ask-name-factors = Mira { $expression }. ¿Qué son { $one } y { $two } entre sí?
g6-expression-parts-ask-name-terms = Mira el paréntesis en { $expression }. ¿Qué son { $one } y { $two } entre sí?
g6-expression-parts-hint-terms = Los términos se unen con más o menos. Los factores se multiplican.
g6-expression-parts-hint-coefficient = Un coeficiente es el número delante de una letra.
g6-expression-parts-step-coefficient = Busca el número delante de la letra.
g6-expression-parts-step-constant = Busca el término sin letra.
g6-expression-parts-step-terms = Cuenta las partes entre los signos más.
g6-expression-parts-step-factors = ¿Se multiplican o se suman?
g6-expression-parts-step-list = { $terms }

g6-equal-expressions-ask-expand = Escríbelo sin paréntesis. Junta los términos semejantes.
g6-equal-expressions-ask-factor = Escríbelo como producto. Pon delante el máximo factor común.
g6-equal-expressions-ask-collect = Junta los términos semejantes.
g6-equal-expressions-hint-both = Multiplica cada parte del paréntesis.
g6-equal-expressions-hint-first = Empieza con { $work }.
g6-equal-expressions-hint-common = Halla el número mayor que divide a { $a } y a { $b }.
g6-equal-expressions-hint-form = Se ve así: { $form }.
g6-equal-expressions-hint-like = Los términos con { $letter } van juntos. Los números van juntos.
g6-equal-expressions-hint-groups = Empieza con { $work }.
g6-equal-expressions-step-common = El máximo factor común es { $g }.

g6-equivalent-test-ask = ¿Son iguales { $left } y { $right }?
g6-equivalent-test-hint-try = Prueba { $letter } = { $value } en las dos.
g6-equivalent-test-hint-rewrite = Un solo valor no basta. Reescribe una de ellas.
g6-equivalent-test-step-brackets = Multiplica cada parte del paréntesis.
g6-equivalent-test-step-like = Junta solo términos con la misma letra.
g6-equivalent-test-step-turned = Restar al revés da otro número.
g6-equivalent-test-step-yes = Las dos llegan a la misma forma. Siempre son iguales.
g6-equivalent-test-step-no = No llegan a la misma forma. No siempre son iguales.

g6-variables-in-stories-ask-1 = Una pluma cuesta { $a } dólares. ¿Cuántos dólares cuestan { $letter } plumas?
g6-variables-in-stories-ask-2 = { $name } caminó { $letter } millas. Hoy camina { $a } millas más. ¿Cuántas millas son en total?
g6-variables-in-stories-ask-3 = { $name } tiene { $letter } canicas y regala { $a }. ¿Cuántas quedan?
g6-variables-in-stories-ask-4 = { $letter } calcomanías se reparten entre { $a } amigos. A todos les toca igual. ¿Cuántas le tocan a cada uno?
g6-variables-in-stories-ask-5 = Un bote cuesta { $a } dólares por hora y { $b } dólares una vez. ¿Cuántos dólares cuesta por { $letter } horas?
g6-variables-in-stories-ask-6 = { $name } tiene { $b } cuentas. Cada uno de { $letter } hilos lleva { $a } cuentas. ¿Cuántas cuentas quedan?
g6-variables-in-stories-ask-7 = Cada bolsa tiene { $letter } cuentas rojas y { $b } cuentas azules. ¿Cuántas cuentas hay en { $a } bolsas?
g6-variables-in-stories-hint-number = Primero piensa en un número para { $letter }. ¿Qué harías?
g6-variables-in-stories-hint-same = Haz los mismos pasos con la letra.
g6-variables-in-stories-step-answer = { $text }

g6-test-solutions-ask-one = ¿Qué número la hace cierta? { $statement }
g6-test-solutions-ask-all = ¿Qué números la hacen cierta? { $statement } Elige todos.
g6-test-solutions-hint-put = Pon cada número en lugar de x.
g6-test-solutions-hint-one = Prueba primero { $value }. ¿Es mucho o poco?
g6-test-solutions-hint-equal-not = Igual no es menor.
g6-test-solutions-step-put = Pon { $value } en lugar de x.
g6-test-solutions-step-try = Con { $value } los dos lados son iguales: { $work }.
g6-test-solutions-step-below = Así que sirven todos los números menores que { $value }.

g6-solve-equations-ask = Halla { $letter }.
g6-solve-equations-hint-take = Quita el mismo número de los dos lados.
g6-solve-equations-hint-divide = Divide los dos lados entre el número de delante.
g6-solve-equations-hint-balance = Lo que haces de un lado, hazlo del otro.
g6-solve-equations-step-check = Comprueba: { $work }.

g6-inequalities-ask-1 = Debes medir más de { $limit } pulgadas. Tu altura es { $letter }. Escribe la desigualdad.
g6-inequalities-ask-2 = El paseo dura menos de { $limit } minutos. Su tiempo es { $letter }. Escribe la desigualdad.
g6-inequalities-ask-3 = Debes tener { $limit } años o más. Tu edad es { $letter }. Escribe la desigualdad.
g6-inequalities-ask-4 = Una bolsa puede llevar { $limit } libras o menos. Su peso es { $letter }. Escribe la desigualdad.
g6-inequalities-ask-cold-1 = Hizo más calor que { $limit } grados. La temperatura es { $letter }. Escribe la desigualdad.
g6-inequalities-ask-cold-2 = Hizo más frío que { $limit } grados. La temperatura es { $letter }. Escribe la desigualdad.
g6-inequalities-ask-graph = Muestra { $statement } en la recta numérica.
g6-inequalities-hint-values = Prueba algunos números. ¿Cuáles sirven?
g6-inequalities-hint-limit = ¿Sirve { $limit }?
g6-inequalities-hint-circle = Un círculo vacío deja fuera el número. Un círculo lleno lo incluye.
g6-inequalities-step-more = { $letter } está del lado de los números mayores que { $limit }.
g6-inequalities-step-less = { $letter } está del lado de los números menores que { $limit }.
g6-inequalities-step-open = { $limit } no sirve. Usa un círculo vacío.
g6-inequalities-step-closed = { $limit } sirve. Usa un círculo lleno.
g6-inequalities-step-right = La flecha va a la derecha.
g6-inequalities-step-left = La flecha va a la izquierda.

g6-two-variables-head-t = Boletos (t)
g6-two-variables-head-c = Costo (c)
g6-two-variables-head-h = Horas (h)
g6-two-variables-head-d = Millas (d)
g6-two-variables-head-a = Primera edad (a)
g6-two-variables-head-b = Segunda edad (b)
g6-two-variables-head-n = Antes (n)
g6-two-variables-head-p = Ahora (p)
g6-two-variables-table = Una tabla con los pares { $x1 } y { $y1 }, { $x2 } y { $y2 }, { $x3 } y { $y3 }.
g6-two-variables-ask-1 = Cada boleto cuesta { $k } dólares. Escribe una ecuación para el costo { $y } de { $x } boletos.
g6-two-variables-ask-2 = Un bote avanza { $k } millas cada hora. Escribe una ecuación para las millas { $y } en { $x } horas.
g6-two-variables-ask-3 = Un árbol tiene { $k } años más que otro. El menor tiene { $x } años. Escribe una ecuación para la edad { $y } del mayor.
g6-two-variables-ask-4 = Tenías { $x } conchas y encontraste { $k } más. Escribe una ecuación para las conchas { $y } que tienes ahora.
g6-two-variables-ask-table-1 = La tabla muestra boletos y costo. Escribe una ecuación para { $y } con { $x }.
g6-two-variables-ask-table-2 = La tabla muestra horas y millas. Escribe una ecuación para { $y } con { $x }.
g6-two-variables-ask-table-3 = La tabla muestra dos edades. Escribe una ecuación para { $y } con { $x }.
g6-two-variables-ask-table-4 = La tabla muestra conchas antes y ahora. Escribe una ecuación para { $y } con { $x }.
g6-two-variables-hint-one = ¿Qué resulta cuando { $x } es 1?
g6-two-variables-hint-more = La segunda cantidad siempre tiene lo mismo de más.
g6-two-variables-hint-times = La segunda cantidad siempre es las mismas veces la primera.
g6-two-variables-step-one = Para 1 es { $work }.
