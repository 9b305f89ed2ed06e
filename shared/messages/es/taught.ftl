## Lo que se enseñó de nuevo y si ayudó: en pantallas y en papel.
taught-says-rose-more = Quienes lo vieron de nuevo subieron más que el resto.
taught-says-likely-rose-more = Quienes lo vieron de nuevo probablemente subieron más que el resto.
taught-says-cannot-tell = Aún no se puede decir si ayudó.
taught-says-no-sign = No hay señal de que ayudara mucho.
taught-says-too-soon = Es pronto para decir si ayudó.
taught-says-no-answers = Quienes lo vieron de nuevo no tienen resultados ni práctica desde entonces.
taught-says-few-others = Muy pocos otros conceptos tienen resultados desde entonces para comparar.
taught-says-taught-once-more = Poco después se enseñó otra vez. Allí está lo que resultó.
taught-next = Vuelve a mirar el { $date }.
taught-never = Hay muy pocas respuestas para eso.
taught-answers = { $answers ->
    [one] Desde entonces, { $right } de { $answers } respuesta fue correcta.
   *[other] Desde entonces, { $right } de { $answers } respuestas fueron correctas.
}
taught-foretold = Por lo que se sabía ese día, serían correctas unas { $foretold }; con lo que cambió en los conceptos no enseñados de nuevo, unas { $expected }.
taught-range = { $way ->
    [more] Lo probable es de { $low } a { $high } más de lo esperado.
    [fewer] Lo probable es de { $low } a { $high } menos de lo esperado.
   *[mixed] Lo probable está entre { $low } menos y { $high } más de lo esperado.
}
taught-recorded = Anotado ese día: { $has } de { $of } lo dominaban.
taught-whole-class = La clase
taught-from-talk = charla
taught-from-group = grupo pequeño
taught-from-assignment = tarea
taught-from-hand = a mano
taught-caution = Una diferencia puede tener también otras causas. Es una estimación, y no una nota para un estudiante ni para una lección.
