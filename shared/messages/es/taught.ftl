## Lo que se enseñó de nuevo y si ayudó: en pantallas y en papel.
taught-says-rose-more = Los resultados subieron más que en lo que no se enseñó de nuevo.
taught-says-likely-rose-more = Los resultados probablemente subieron más que en lo que no se enseñó de nuevo.
taught-says-cannot-tell = Aún no se puede decir si ayudó.
taught-says-cannot-tell-ever = No se puede decir si ayudó. Hay muy pocos resultados para eso.
taught-says-no-sign = No hay señal de que ayudara mucho.
taught-says-too-soon = Es pronto para decir si ayudó.
taught-says-no-answers = Quienes lo vieron de nuevo no tienen resultados desde entonces.
taught-says-few-others = Muy pocos otros conceptos tienen resultados desde entonces para comparar.
taught-says-taught-once-more = Poco después se enseñó otra vez. Allí está lo que resultó.
taught-once-more = { $count ->
    [one] { $count } de { $of } lo vio una vez más. Lo que vino después no se cuenta aquí.
   *[other] { $count } de { $of } lo vieron una vez más. Lo que vino después no se cuenta aquí.
}
taught-next = Vuelve a mirar el { $date }.
taught-answers = { $answers ->
    [one] Desde entonces, { $right } de { $answers } resultado fue correcto.
   *[other] Desde entonces, { $right } de { $answers } resultados fueron correctos.
}
taught-foretold = Por lo que se sabía ese día, serían correctos unos { $foretold }; con lo que cambió en los conceptos no enseñados de nuevo, unos { $expected }.
taught-difference = { $way ->
    [more] Eso es { $count } más de lo que se podía esperar.
    [fewer] Eso es { $count } menos de lo que se podía esperar.
   *[same] Se podían esperar más o menos los mismos.
}
taught-practised = { $count ->
    [0] Quienes lo vieron de nuevo no lo han practicado desde entonces.
    [one] Quienes lo vieron de nuevo han practicado un ejercicio desde entonces. No se cuenta.
   *[other] Quienes lo vieron de nuevo han practicado { $count } ejercicios desde entonces. No se cuentan.
}
taught-range = { $way ->
    [more] { $low ->
        [0] Contando con el azar, lo probable es algo más, { $high } como mucho.
       *[other] Contando con el azar, lo probable es de { $low } a { $high } más.
    }
    [fewer] Contando con el azar, lo probable es de { $low } a { $high } menos.
   *[mixed] Contando con el azar, lo probable está entre { $low } menos y { $high } más.
}
taught-recorded = Anotado ese día: { $has } de { $of } lo dominaban.
taught-whole-class = La clase
taught-from-talk = charla
taught-from-group = grupo pequeño
taught-from-assignment = tarea
taught-from-hand = a mano
taught-caution = Una diferencia puede tener también otras causas, como la práctica en casa o una corrección más benévola. Es una estimación, y no una nota para un estudiante ni para una lección.
