## Una guía corta de cada pantalla; se abre sola la primera vez, y con la tecla ?.
guide-open = ¿Para qué es esta pantalla?
guide-close = Entendido
guide-hide = Ocultar todas las guías
guide-again = La tecla o el botón ? la muestra otra vez.
guide-reset = Mostrar otra vez las guías

guide-now-title = Lo que tu clase necesita ahora
guide-now-1 = Hasta cinco frases dicen qué necesita la clase, por qué y con qué seguridad. Cada una tiene sus botones: con uno se muestra, se agrupa, se asigna o se imprime.
guide-now-2 = Los números detrás de una frase están a un clic. También los nombres: esta página se puede proyectar.
guide-now-3 = Al lado están hoy y el próximo día de clase: qué preparar y qué copiar.

guide-board-title = El tablero: qué conceptos son débiles ahora, y con qué seguridad se sabe
guide-board-1 = Cada fila es un concepto, el más débil primero. La barra es la parte de la clase que probablemente lo domina. Una barra ancha dice que hay pocos informes o que son viejos.
guide-board-2 = Pulsa una fila para ver quién necesita el concepto y qué errores son frecuentes. Ahí puedes asignar práctica.
guide-board-3 = Puedes mostrar solo un área, una fase o unos estudiantes. N tapa los nombres antes de proyectar.

guide-compare-title = Donde no coinciden valoraciones y resultados
guide-compare-1 = Quien dice que lo sabe y le sale mal no pedirá ayuda. A quien puede hacerlo y no se fía, díselo.
guide-compare-2 = Por concepto, los nombres están a un clic. Las estadísticas de abajo muestran cuánto encajan las valoraciones de cada estudiante con los resultados. Con pocas respuestas no adivina.
guide-compare-3 = Anota lo que tú viste. La última tabla de las estadísticas muestra cómo coinciden tus observaciones y las valoraciones.

guide-concept-title = Un concepto, estudiante por estudiante
guide-concept-1 = Quien más lo necesita va primero, con lo que dijo, marcó y practicó.
guide-concept-2 = Quienes probablemente lo necesitan están marcados. Cambia las marcas y asigna.
guide-concept-3 = La tendencia compara a cada estudiante consigo mismo. Dice "sin cambio claro" hasta que se pueda descartar el azar.

guide-student-title = Un estudiante en todos los conceptos
guide-student-1 = Lo que más hace falta va primero. Los conceptos antes de su primera lección van al final.
guide-student-2 = Las valoraciones son la opinión del propio estudiante, no una nota ni un diagnóstico.

guide-talk-title = Los pocos minutos de hoy
guide-talk-1 = Di cuántos minutos tienes. Los conceptos de hoy van en orden: primero donde conversar ayuda a más estudiantes.
guide-talk-2 = Mostrar pone un ejercicio en el proyector, con un error frecuente para conversar. Nunca muestra nombres.
guide-talk-3 = Marca lo que conversaron: cuenta menos en los próximos días.

guide-groups-title = Quién se sienta con quién y para qué
guide-groups-1 = Di cuántos turnos y grupos hay, quién falta y quiénes deben o no deben estar juntos. Luego pide los grupos.
guide-groups-2 = Puedes mover a cualquier estudiante a mano. La línea de arriba dice lo que cuesta el cambio y qué reglas rompe.
guide-groups-3 = Guarda los grupos e imprime una hoja para cada uno. Después anota quién ya lo domina: la anotación cuenta en el tablero.
guide-taught-title = ¿Ayudó?
guide-taught-1 = Anota lo que enseñaste de nuevo: desde la charla, un grupo, una tarea, o aquí.
guide-taught-2 = Una vuelta después, Surefoot dice si quienes lo vieron subieron más que lo que no se enseñó de nuevo. También dice cuándo no se puede saber.
guide-taught-3 = Muestra un concepto o un estudiante, e imprime la lista para una charla.

guide-assign-title = Práctica para esta noche
guide-assign-1 = Elige conceptos, cantidad y fechas, para la clase o para algunos estudiantes.
guide-assign-2 = Llega a los estudiantes con el próximo paquete de clase: guárdalo y repártelo. Una carpeta de la clase lo hace sola.
guide-assign-3 = Aquí se ve cuánto ha hecho cada estudiante, según las últimas entregas.

guide-enter-title = Hojas de papel y lo que tú viste
guide-enter-1 = Las teclas 0 a 3 llenan una casilla y siguen; las flechas mueven. El día de una clase toma menos de un minuto. Todo se guarda enseguida.
guide-enter-2 = Valoraciones y resultados vienen de las hojas. "Lo que vi" es tu propia observación y cuenta como resultado.
guide-enter-3 = Ctrl Z deshace la última tecla.

guide-files-title = Aquí entran las entregas
guide-files-1 = Elige la carpeta con los archivos, o elige una vez la carpeta de la clase: así todo viaja solo. Cada archivo tiene su línea: nuevo, actualizado, más antiguo, o no importado y por qué.
guide-files-2 = Un archivo que llega dos veces cuenta una vez. Puedes deshacer la última importación.
guide-files-3 = Cuando un segundo dispositivo usa un asiento, tú decides si cuenta.

guide-class-seats-title = Asientos y nombres
guide-class-seats-1 = Un nombre aquí es opcional y nunca sale de esta computadora. Las entregas llevan solo el asiento.
guide-class-seats-2 = El código de su papel deja entrar a un estudiante. Abajo se agregan asientos. Si quitas uno, se quita todo lo que llegó de él. Mover lleva a un estudiante a otra clase o a un colega, con su trabajo.

guide-class-calendar-title = El año escolar
guide-class-calendar-1 = Pulsa un día sin clase, o escribe unas vacaciones con su primer y su último día. La rotación sigue después.
guide-class-calendar-2 = Abajo pones los límites de minutos y noches de práctica, y nombras el próximo examen.

guide-class-rotation-title = Qué concepto en qué día
guide-class-rotation-1 = Arrastra un concepto a otro día, o usa las flechas a su lado. Con el teclado: Alt y la flecha izquierda o derecha.
guide-class-rotation-2 = Las revisiones muestran si los días y las áreas están equilibrados. "Repartir de nuevo por igual" los equilibra, y se puede deshacer.
guide-class-rotation-3 = La primera lección da la fase: adelanto antes, práctica desde entonces, repaso después. Pega tu lista de ritmo para poner muchas a la vez.

guide-class-exercises-title = Ejercicios propios
guide-class-exercises-1 = Importa una tabla o un archivo QTI. Primero se revisa cada línea, y ves qué líneas no van y por qué.
guide-class-exercises-2 = Desde el próximo paquete de clase, los estudiantes los reciben alternados con los del programa.

guide-class-concepts-title = Conceptos propios
guide-class-concepts-1 = Importa la lista de tu escuela como tabla o archivo CASE, o usa solo los conceptos del programa.
guide-class-concepts-2 = Después agrega los conceptos importados a la rotación.

guide-class-pack-title = Dar a la clase su archivo
guide-class-pack-1 = Guarda el paquete de clase donde los estudiantes lo alcancen. Imprime los papeles: cada asiento tiene su código.
guide-class-pack-2 = Después de un cambio o una asignación nueva, guárdalo otra vez. Una carpeta de la clase lo hace sola. Un paquete viejo sigue sirviendo, pero sin el cambio.

guide-print-title = En papel
guide-print-1 = Hojas para valorarse, práctica con respuestas, páginas para la familia y para hablar con un estudiante, y tablas para la escuela.
guide-print-2 = Todo en blanco y negro, en carta o A4.

guide-safe-title = Cuidar los datos
guide-safe-1 = Surefoot hace copias en esta computadora por sí solo. De vez en cuando haz un respaldo sellado y guárdalo en otro lugar.
guide-safe-2 = Nadie puede abrir un respaldo sin su frase secreta. Escríbela en papel.
guide-safe-3 = La llave de la clase lleva una clase a tu segunda computadora.

guide-new-class-title = Una clase en cuatro pasos
guide-new-class-1 = Nombre, estudiantes, año, rotación. Todo se puede cambiar después.
guide-new-class-2 = ¿Sin nombres? Di cuántos asientos hay. La rotación del año pasado se puede copiar.

guide-my-today-title = Hoy
guide-my-today-1 = Toca una piedra según tu seguridad. Luego toca cómo te fue.
guide-my-today-2 = Se guarda enseguida. Lo puedes cambiar.
guide-my-today-3 = ¿No es ese el día? Toca el día de arriba y elige el correcto.

guide-my-practice-title = Práctica
guide-my-practice-1 = Di cuánta seguridad tienes. Luego resuelve.
guide-my-practice-2 = ¿No sale? Pide una pista o mira los pasos.

guide-my-path-title = Mi camino
guide-my-path-1 = Aquí está tu año. Más piedras dicen que tienes más seguridad.
guide-my-path-2 = Elige un concepto para trabajar en él.

guide-my-handin-title = Entregar
guide-my-handin-1 = Un toque hace tu archivo. Dáselo a tu maestra o maestro. Con una carpeta de la clase llega allí solo.
guide-my-handin-2 = Tu nombre no está en él.

guide-my-settings-title = Ajustes
guide-my-settings-1 = Aquí cambias el idioma, los colores y el PIN.
