## Una guía corta de cada pantalla; se abre sola la primera vez, y con la tecla ?.
guide-open = ¿Para qué es esta pantalla?
guide-close = Entendido
guide-hide = Ocultar todas las guías
guide-again = La tecla o el botón ? la muestra otra vez.
guide-reset = Mostrar otra vez las guías

guide-board-title = El tablero: qué está flojo ahora y con qué seguridad
guide-board-1 = Cada fila es un concepto, el más flojo primero. La barra es la parte de la clase que probablemente lo tiene. Una barra ancha dice que hay pocos informes o que son viejos.
guide-board-2 = Pulsa una fila para ver quién está detrás y qué errores son comunes. Desde ahí, un paso lleva a una asignación.
guide-board-3 = Mira solo un área, una fase o unos estudiantes. N cubre los nombres antes de proyectar.

guide-compare-title = Donde se separan valoraciones y resultados
guide-compare-1 = Con seguridad pero mal: estos estudiantes no pedirán ayuda por su cuenta. Bien pero sin seguridad: díselo.
guide-compare-2 = Abajo está hasta dónde se puede creer en las valoraciones de cada estudiante. Con pocas respuestas lo dice en vez de adivinar.
guide-compare-3 = Anota lo que tú viste, y la última tabla muestra cómo coinciden tu vista y la de los estudiantes.

guide-concept-title = Un concepto, estudiante por estudiante
guide-concept-1 = Quien más lo necesita va primero, con lo que dijo, marcó y practicó.
guide-concept-2 = Quienes probablemente lo necesitan están marcados. Cambia las marcas y asigna.
guide-concept-3 = La tendencia compara a cada estudiante consigo mismo. Dice "sin cambio claro" hasta que se pueda descartar el azar.

guide-student-title = Un estudiante en todos los conceptos
guide-student-1 = Lo que más hace falta va primero. Los conceptos antes de su primera lección van al final.
guide-student-2 = Las valoraciones son la vista propia del estudiante, no una nota ni un diagnóstico.

guide-talk-title = Los pocos minutos de hoy
guide-talk-1 = Di cuántos minutos hay. De los conceptos de hoy van primero aquellos en que conversar ayuda a más estudiantes.
guide-talk-2 = Mostrar pone un ejercicio en el proyector, con un error común para conversar. Nunca lleva nombres.
guide-talk-3 = Marca lo que conversaron: cuenta menos en los próximos días.

guide-groups-title = Quién se sienta con quién y para qué
guide-groups-1 = Di cuántos turnos y grupos hay, quién falta y quiénes deben o no deben estar juntos. Luego pide los grupos.
guide-groups-2 = Mueve a quien quieras a mano. Arriba dice lo que cuesta el cambio y qué regla rompe.
guide-groups-3 = Guarda los grupos, imprime una hoja para cada uno y anota después quién ya lo tiene. La anotación cuenta en el tablero.

guide-assign-title = Práctica para esta noche
guide-assign-1 = Elige conceptos, cantidad y fechas, para la clase o para algunos estudiantes.
guide-assign-2 = Llega a los estudiantes con el próximo paquete de clase: guárdalo y repártelo.
guide-assign-3 = Aquí se ve quién ha hecho cuánto, hasta donde han entregado.

guide-enter-title = Hojas de papel y lo que tú viste
guide-enter-1 = Las teclas 0 a 3 llenan una casilla y siguen; las flechas mueven. El día de una clase toma menos de un minuto. Todo se guarda enseguida.
guide-enter-2 = Valoraciones y resultados vienen de las hojas. "Lo que vi" es tu propia vista y cuenta como resultado.
guide-enter-3 = Ctrl Z deshace la última tecla.

guide-files-title = Aquí entran las entregas
guide-files-1 = Elige la carpeta con los archivos, o haz que se vigile. Cada archivo tiene su línea: nuevo, actualizado, más viejo, rechazado y por qué.
guide-files-2 = El mismo archivo dos veces cuenta una vez. La última recepción se puede deshacer.
guide-files-3 = Si otro dispositivo reclama un asiento, tú decides.

guide-class-seats-title = Asientos y nombres
guide-class-seats-1 = Un nombre aquí es opcional y nunca sale de esta computadora. Las entregas llevan solo el asiento.
guide-class-seats-2 = Con el código de su papel se une un estudiante. Abajo se agregan asientos; uno se quita con todo lo que llegó de él.

guide-class-calendar-title = El año escolar
guide-class-calendar-1 = Pulsa un día para cerrarlo, o escribe unas vacaciones de un día a otro. Los días sin estudiantes corren la rotación.
guide-class-calendar-2 = Abajo se limitan los minutos y las noches de práctica, y se nombra un examen como meta.

guide-class-rotation-title = Qué concepto en qué día
guide-class-rotation-1 = Arrastra un concepto a otro día, o usa las flechas a su lado. Con el teclado: Alt y la flecha izquierda o derecha.
guide-class-rotation-2 = Las revisiones dicen si los días y las áreas están equilibrados. Repartir de nuevo por igual lo hace por ti; se puede deshacer.
guide-class-rotation-3 = La primera lección da la fase: vista previa antes, práctica desde entonces, repaso después. Pega tu lista de ritmo para poner muchas a la vez.

guide-class-exercises-title = Ejercicios propios
guide-class-exercises-1 = Trae una tabla o un archivo QTI: primero se revisa cada línea, y se nombra lo que no cabe.
guide-class-exercises-2 = Los estudiantes los reciben por turnos con los del programa, desde el próximo paquete de clase.

guide-class-concepts-title = Conceptos propios
guide-class-concepts-1 = Trae la lista de tu escuela como tabla o archivo CASE, o quédate con los conceptos incluidos.
guide-class-concepts-2 = Lo que traigas se puede agregar luego a la rotación.

guide-class-pack-title = Dar a la clase su archivo
guide-class-pack-1 = Guarda el paquete de clase donde los estudiantes lo alcancen. Imprime los papeles: cada asiento tiene su código.
guide-class-pack-2 = Después de un cambio o una asignación nueva, guárdalo otra vez. Un paquete viejo sigue sirviendo, solo sabe menos.

guide-print-title = En papel
guide-print-1 = Hojas para valorarse, práctica con respuestas, páginas para la familia y para la conferencia, y tablas para la escuela.
guide-print-2 = Todo en blanco y negro, en carta o A4.

guide-safe-title = Cuidar los datos
guide-safe-1 = Las copias en esta computadora se hacen solas. De vez en cuando haz un respaldo sellado y guárdalo en otro lugar.
guide-safe-2 = Nadie puede abrir un respaldo sin su frase. Escríbela en papel.
guide-safe-3 = La llave de la clase lleva una clase a tu segunda computadora.

guide-new-class-title = Una clase en cuatro pasos
guide-new-class-1 = Nombre, estudiantes, año, rotación. Todo se puede cambiar después.
guide-new-class-2 = ¿Sin nombres? Di cuántos asientos hay. La rotación del año pasado se puede copiar.

guide-my-today-title = Hoy
guide-my-today-1 = Toca una piedra según tu seguridad. Luego toca cómo te fue.
guide-my-today-2 = Se guarda enseguida. Lo puedes cambiar.

guide-my-practice-title = Práctica
guide-my-practice-1 = Di cuánta seguridad tienes. Luego resuelve.
guide-my-practice-2 = ¿No sale? Pide una pista o mira los pasos.

guide-my-path-title = Mi camino
guide-my-path-1 = Aquí está tu año. Más piedras dicen que tienes más seguridad.
guide-my-path-2 = Elige un concepto para trabajar en él.

guide-my-handin-title = Entregar
guide-my-handin-1 = Un toque hace tu archivo. Dáselo a tu maestra o maestro.
guide-my-handin-2 = Tu nombre no está en él.

guide-my-settings-title = Ajustes
guide-my-settings-1 = Aquí cambias el idioma, los colores y el PIN.
