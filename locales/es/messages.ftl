# Lo que dice el bot, en español: primero el veredicto, luego el porqué en números, luego qué hacer.
#
# Se tutea, con palabras que se entienden igual en España y en América: nada de "coger", de
# "vosotros" ni de pretéritos que suenen a un solo lado. $crops es el nombre de un cultivo en plural
# ("pepinos", "albahaca"), sin artículo: puede ser femenino o masculino, singular o plural, así que
# nada concuerda con él; lo que concuerda es "las plantas", "la semilla" o "la cosecha". Los pasos
# ($what, $then, $step) son infinitivos. Las fechas vienen sin artículo ("22 de abril") y por eso
# llevan "el" delante; los tramos de días ($days) ya traen "del … al …" o son una sola fecha sin
# artículo, así que van detrás de dos puntos.

## Fechas

# Un tramo de días que pasa de un mes a otro: $from y $to son fechas, "17 de abril" y "1 de mayo".
date-range = del { $from } al { $to }

# El número del primer día de un mes dentro de una fecha: $day es "1".
first-day = { $day }

# Los días de un tramo dentro de un mes: $from y $to son números de día. Detrás va el mes como lo
# escribe la región: "del 17 al 24 de abril".
day-range = del { $from } al { $to }

## Duraciones

# $n es un número entero.
days = { $n ->
    [one] { $n } día
   *[other] { $n } días
}

# $n es un número entero, o un número y medio: "3", "3½".
weeks = { $n ->
    [one] { $n } semana
   *[other] { $n } semanas
}

# $from y $to son números enteros.
days-range = { $to ->
    [one] { $from }–{ $to } día
   *[other] { $from }–{ $to } días
}

# $from y $to son números enteros, o números y medio.
weeks-range = { $to ->
    [one] { $from }–{ $to } semana
   *[other] { $from }–{ $to } semanas
}

## Temperaturas y medidas

# Dos números, $low y $high, delante de una unidad.
number-range = { $low }–{ $high }

# Lo mismo donde un signo menos se juntaría con el guion.
number-range-signed = { $low } a { $high }

# $n es un número o un tramo como los de arriba. {"\u00a0"} es un espacio donde no se corta la línea.
celsius = { $n }{ "\u00a0" }°C
fahrenheit = { $n }{ "\u00a0" }°F
millimetres = { $n }{ "\u00a0" }mm
centimetres = { $n }{ "\u00a0" }cm

# Una pulgada o una parte: "½ pulgada".
inch = { $n } pulgada

# Más de una pulgada, o ninguna: "1½ pulgadas".
inches = { $n } pulgadas

## Cuándo

when-now = hoy
when-on = el { $date }

## Pasos, como van dentro de una frase

step-sow-indoors = sembrar { $crops } en interior
step-sow-outdoors = sembrar { $crops } en la tierra
step-soak = remojar la semilla de { $crops }
step-nick = raspar la semilla de { $crops }
step-chill = poner al frío, en húmedo, la semilla de { $crops }
step-chit = poner a brotar { $crops } a la luz
step-root-slips = sacar esquejes de { $crops } a partir de una raíz
step-check = mirar si asoman plántulas de { $crops }
step-harvest = empezar a cosechar { $crops }
step-first-bloom = esperar las primeras flores de { $crops }
step-pot-up = pasar { $crops } a una maceta mayor
step-harden-off = aclimatar { $crops }
step-plant-out = trasplantar { $crops } al aire libre
step-plant = plantar { $crops }

## Veredictos

verdict-too-early = Todavía no. Espera hasta el { $next } para { $what }.
verdict-early = Es un poco pronto para { $what }, pero puede salir bien.
verdict-on-time = Adelante: puedes { $what } { $when }.
verdict-on-time-when-nights-allow = Adelante: puedes { $what } { $when }, si las noches de la semana no bajan de { $nights }.
verdict-late = Es tarde, pero aún vale la pena { $what } { $when }.
verdict-second-best = Puedes { $what } { $when }, pero hay una manera mejor.
verdict-too-late = Ya es tarde para { $what } esta temporada.
verdict-too-late-for-spring = En la tanda de primavera ya es tarde para { $what }.
verdict-season-too-short = Tu temporada es demasiado corta para cultivar { $crops } sin ayuda.
verdict-no-cold = Tu invierno es demasiado suave para { $crops }: sin frío no se forman bulbos.

reason-no-frost-here = Las fechas de heladas no deciden cuándo empezar con { $crops } en tu huerto: ahí no hiela.
reason-not-from-seed = De semilla no: { $crops }.
reason-never-sown-indoors = No, no siembres { $crops } en interior.
reason-never-sown-outdoors = No, aquí no siembres { $crops } directamente en la tierra: hay que empezar en interior.
reason-never-potted-up = No hace falta pasar { $crops } a una maceta mayor: la primera celda basta hasta el trasplante.
reason-never-set-out = No hay nada que trasplantar: siembra { $crops } en su sitio definitivo.

## Una línea para cada cultivo, cuando son muchos

short-too-early = { $what }: todavía no, desde el { $next }.
short-early = { $what }: pronto, pero puede salir bien; mejor desde el { $next }.
short-on-time = { $what }: adelante, buen momento hasta el { $until }.
short-late = { $what }: tarde, pero vale la pena hasta el { $next }.
short-too-late = { $what }: ya es tarde; el próximo buen día es el { $next }.
short-too-late-for-good = { $what }: ya es tarde, y tu temporada no da para otro intento.
or-else = O bien: { $line }

## Por qué

why-too-old = Si siembras { $when }, las plantas tendrán ya { $age } el { $setout }, cuando puedan salir. Aguantan { $most } como mucho.
why-age = Si siembras { $when }, las plantas tendrán { $age } cuando puedan salir, hacia el { $setout }; lo mejor es { $best }.
why-cold-soil = Lo más probable es que la tierra aún esté fría: tiene que mantenerse a { $minimum } o más, y lo mejor es { $best }.
why-cold-soil-and-frost = Lo más probable es que la tierra aún esté fría (tiene que mantenerse a { $minimum } o más; lo mejor es { $best }), y una helada mataría lo que brote.
why-soil-check = Comprueba que la tierra se mantenga a { $minimum } o más; lo mejor es { $best }.
why-summer-sowing = La siembra es a principios de verano, y las flores llegan al año siguiente.
why-autumn-planting = Se planta en otoño, cerca de la primera helada, para el año siguiente.
why-autumn-count = Esta siembra es para el otoño, así que se cuenta hacia atrás desde tu primera helada.
why-cold-nights = Las noches aún son frías: las plantas aclimatadas aguantan { $nights }, y hacia { $kills } mueren.
why-bears-cold = Las plantas aclimatadas aguantan noches de hasta { $nights }.
why-harden-off = Tómate de 7 a 14 días, cada día un poco más de tiempo fuera, con noches que no bajen de { $nights }.
why-pot-up = Las plántulas se mueven mejor cuando ya han abierto las primeras hojas verdaderas.
why-late = Los mejores días eran hasta el { $ended }.
why-too-late-harvest = Si empiezas { $when }, la primera cosecha llegaría hacia el { $ready }, y la temporada acaba hacia el { $end }.
why-too-late-bloom = Si empiezas { $when }, las primeras flores llegarían hacia el { $ready }, y la temporada acaba hacia el { $end }.
why-heat = El último día que valía la pena era el { $ended }; ahora el calor del verano llegaría antes que la cosecha.
why-window-closed = El último día que valía la pena era el { $ended }.
why-season-too-short = Entre tus heladas hay { $days } días; después de criar las plantas en interior hacen falta unos { $needs } más hasta la primera cosecha.
why-no-frost = Ahí deciden el calor y los meses de lluvia; el servicio de extensión agrícola de tu zona tiene fechas de siembra.
why-months = En tu huerto deciden el calor y la lluvia: la época de siembra empieza hacia el { $starts }, y el calor vuelve hacia el { $heat }.
why-months-rain = En tu huerto decide la lluvia: la época de siembra empieza hacia el { $starts }, y la lluvia vuelve hacia el { $heat }.
why-months-bears-heat = Son plantas que aguantan el calor y la lluvia; las frenan las semanas más frescas, más o menos hasta el { $coolest }.
why-months-too-late = La época de siembra acabó el { $ended }; lo que empiece { $when } se toparía con el calor, que vuelve hacia el { $heat }.
why-months-too-late-rain = La época de siembra acabó el { $ended }; lo que empiece { $when } se toparía con la lluvia, que vuelve hacia el { $heat }.
why-months-short = Entre el { $starts } y el calor, hacia el { $heat }, no da tiempo.
why-months-short-rain = Entre el { $starts } y la lluvia, hacia el { $heat }, no da tiempo.
cost-continuing = Cuenta con perder cerca de { $behind } de cosecha.
cost-bloom = Cuenta con perder cerca de { $behind } de flores.
cost-once = La cosecha estaría lista hacia el { $ready }; la temporada acaba hacia el { $end }.
counted-average = Tu última helada, en promedio, es hacia el { $frost }.
counted-average-at-risk = Tu última helada, en promedio, es hacia el { $frost }; más o menos una primavera de cada diez todavía hiela después del { $risk }.
counted-trusted = La fecha en la que confías es el { $frost }.
counted-first-frost = Tu primera helada es hacia el { $frost }.

## Dónde crece

place-windowsill = junto a una ventana
place-lights = bajo luces
place-heat-mat = sobre una alfombrilla térmica
place-greenhouse = en un invernadero
cover-fleece = manta antiheladas
cover-cold-frame = cajonera fría
cover-tunnel = túnel
cover-sooner = Con tu { $cover }, esto es { $weeks } antes que al descubierto.
cover-no-sooner = Tu { $cover } no mantiene las noches y la tierra lo bastante calientes como para adelantar { $crops }.
cover-later = Con tu { $cover }, la cosecha acaba cerca de { $weeks } después que al descubierto.
place-line-windowsill = Junto a una ventana las plántulas se estiran, así que ahí cuento con { $most } como mucho para { $crops }.
place-line-lights = Bajo luces: tenlas muy cerca, encima de las plantas, y súbelas según crecen las de { $crops }.
place-line-heat-mat = Tu alfombrilla térmica mantiene caliente la tierra; en cuanto asomen las plántulas de { $crops }, sácalas de ahí.
place-line-greenhouse = En el invernadero, con { $crops } ventila los días de sol y vigila las noches frías.
place-show = Tus plántulas: { $place }. Protección al aire libre: { $cover }.
place-not-said = sin indicar
cover-none = ninguna
place-how-to = Toca lo que corresponda, o dímelo: “cultivo bajo luces”, “tengo una cajonera fría”, “sin protección”.
place-noted = Anotado.
place-bad = Para las plántulas conozco ventana, luces, alfombrilla térmica e invernadero; para el aire libre, manta antiheladas, cajonera fría y túnel. No conozco “{ $written }”.
button-place = Dónde crecen
button-place-is = ✓ { $name }
button-place-windowsill = Ventana
button-place-lights = Luces
button-place-heat-mat = Alfombrilla térmica
button-place-greenhouse = Invernadero
button-cover-fleece = Manta antiheladas
button-cover-cold-frame = Cajonera fría
button-cover-tunnel = Túnel
button-cover-none = Sin protección
settings-place = • Plántulas { $place }
settings-cover = • Protección al aire libre: { $cover }

## Qué hacer ahora

next-best-days = Mejores días: { $days }.
next-good-until = Buen momento hasta el { $until }, y vale la pena hasta el { $last }.
next-good-until-only = Buen momento hasta el { $until }.
next-last-day = El último día que vale la pena es el { $last }.
next-both = Para ir sobre seguro, siembra una parte ahora y otra en la tierra desde el { $from }.
care-pot-up = Si empiezas ya, pasa las plantas una vez a una maceta mayor y dales mucha luz. Si no, espera hasta el { $next }.
care-own-cell = Mejor espera hasta el { $next }: a estas plantas no les gusta que las muevan. Si empiezas ya, dale a cada una su propia celda grande y mucha luz.
care-light = Si empiezas ya, dales a las plantas mucha luz y un sitio fresco. Si no, espera hasta el { $next }.
care-cover = Solo bajo manta antiheladas o campana, y solo con plantas aclimatadas. Sin esa protección, espera hasta el { $next }.
care-cover-planting = Solo con una manta antiheladas o un acolchado que puedas echar encima en las noches frías. Si no, espera hasta el { $next }.
care-cover-sowing = Solo a cubierto, o donde la tierra ya esté bastante caliente. Si no, espera hasta el { $next }.
care-harden-off = Solo si fuera tienes lista una manta antiheladas o una campana. Si no, espera hasta el { $next }.
how-short = A { $depth } de profundidad, con la tierra a { $warmth }; brota en { $days }.
how-short-surface = En la superficie, con la tierra a { $warmth }; brota en { $days }.
how-short-spacing = Deja { $apart } entre plantas.
other-now = En su lugar puedes { $what }: ahora va bien, hasta el { $until }.
other-from = En su lugar puedes { $what } desde el { $from }.
better-now = Es mejor { $what }: ahora va bien, hasta el { $until }.
better-from = Será mejor { $what } desde el { $from }.
instead-sow-outdoors = En su lugar, siembra directamente en la tierra: vale la pena hasta el { $until }.
instead-buy-plants = En su lugar, compra plantas jóvenes: trasplantar vale la pena hasta el { $until }.
instead-buy-plants-from = En su lugar, compra plantas jóvenes: se pueden trasplantar desde el { $from }.
instead-autumn = La siembra de otoño empieza el { $next }.
instead-next-season = Los buenos días de la próxima temporada empiezan el { $next }.
instead-faster-variety = Puede ayudar una variedad más rápida, comprar plantas ya crecidas o un túnel.
instead-before-heat = Puede ayudar una variedad más rápida o comprar plantas ya crecidas.
instead-chill-cloves = Puede ayudar enfriar los dientes ({ $crops }) { $weeks } a unos { $cold }, secos y sin que se hielen, y plantarlos antes de las semanas más frescas, hasta el { $date }. Los bulbos serán pequeños.

## Cuándo se hace cada cosa

when-head = { $crops }:
when-head-last-frost = { $crops }, contando desde tu última helada, en promedio hacia el { $frost }:
when-head-months = { $crops }, según tus meses de calor y de lluvia:
when-head-first-frost = { $crops }, contando desde tu primera helada, hacia el { $frost }:
when-line = • { $what }: { $days }
when-line-late = • { $what }: { $days }; vale la pena hasta el { $last }
when-line-autumn = • { $what } para el otoño: { $days }; vale la pena hasta el { $last }

## Cómo

how-head = { $crops }:
how-from-tubers = • se empieza con tubérculos de siembra
how-from-cloves = • se empieza con dientes, la punta hacia arriba
how-from-slips = • se empieza con esquejes enraizados
how-from-crowns = • se empieza con garras (coronas)
how-from-sets = • se empieza con bulbillos
how-soak = • remoja la semilla durante { $lead } antes de sembrar
how-nick = • raspa la cubierta de la semilla antes de sembrar; cuidado con los dedos
how-chill = • ten la semilla húmeda y al frío durante { $lead } antes de sembrar
how-chit = • deja brotar los tubérculos a la luz durante { $lead } antes de plantar
how-root-slips = • saca y enraíza los esquejes durante { $lead } antes de plantar
how-depth = • siembra a { $depth } de profundidad
how-planting-depth = • planta a { $depth } de profundidad
how-surface = • aprieta la semilla contra la superficie, sin cubrirla
how-light = • necesita luz para brotar
how-dark = • necesita oscuridad para brotar
how-warmth = • tierra: lo mejor es { $best }, como mínimo { $minimum }
how-days = • brota en { $days }
how-cell = • en interior: { $seeds ->
    [one] una semilla
   *[other] { $seeds } semillas
} por celda de { $cell }; sale fuera con { $age }
how-next-pot = • la maceta siguiente, de { $pot }
how-spacing = • { $apart } entre plantas, { $rows } entre filas

## Si da tiempo a madurar

ripens-yes = Sí, da tiempo. Primera cosecha de { $crops }, más o menos: { $ready }.
ripens-tight = Muy justo: quizá dé tiempo a cosechar { $crops }; en el mejor caso { $spare ->
    [one] sobra { $spare } día
   *[other] sobran { $spare } días
}.
ripens-no = No: esta temporada no da tiempo a cosechar { $crops }.
blooms-yes = Sí, da tiempo. Primeras flores de { $crops }, más o menos: { $ready }.
blooms-tight = Muy justo: quizá dé tiempo a ver flores de { $crops }; en el mejor caso { $spare ->
    [one] sobra { $spare } día
   *[other] sobran { $spare } días
}.
blooms-no = No: esta temporada no da tiempo a ver flores de { $crops }.
ripens-when = Primera cosecha de { $crops }, más o menos: { $ready }.
blooms-when = Primeras flores de { $crops }, más o menos: { $ready }.
ripens-not-by-then = Para entonces no. Primera cosecha de { $crops }, más o menos: { $ready }.
blooms-not-by-then = Para entonces no. Primeras flores de { $crops }, más o menos: { $ready }.
ripens-why = La cuenta es para { $what } el { $on }. La temporada acaba hacia el { $end }: aunque vaya lento, { $spare ->
    [one] sobra { $spare } día
   *[other] sobran { $spare } días
}.
ripens-if = La cuenta es para { $what } el { $on }.
ripens-why-short = La cuenta es para { $what } el { $on }. Cuenta con lo primero, más o menos: { $ready }.
ripens-sown-indoors = Contado desde tu siembra en interior del { $on }.
ripens-sown-outdoors = Contado desde tu siembra en la tierra del { $on }.
ripens-sown-too-early = Tu siembra en la tierra del { $on } fue demasiado pronto, así que se cuenta desde el { $from }.
ripens-count-on = Cuenta con lo primero, más o menos: { $ready }.
ripens-spare = La temporada acaba hacia el { $end }: aunque vaya lento, { $spare ->
    [one] sobra { $spare } día
   *[other] sobran { $spare } días
}.
ripens-end = La temporada acaba hacia el { $end }.
ripens-end-at-risk = Tu primera helada es hacia el { $end }; más o menos un otoño de cada diez ya hiela antes del { $risk }.
ripens-end-trusted = La fecha de otoño en la que confías es el { $end }.
helps-head = Qué ayudaría:
helps-earlier = • empezar antes: { $what } a más tardar el { $date }
helps-next-year = • la próxima vez, empezar antes: { $what } a más tardar el { $date }
helps-variety-from-setting-out = • una variedad más rápida o más pequeña, de { $days } días desde el trasplante como mucho
helps-variety-from-sowing = • una variedad más rápida o más pequeña, de { $days } días desde la siembra como mucho
helps-cover = • cubrir en otoño: una manta antiheladas mediana protege hasta unos { $fleece }; una gruesa, hasta unos { $blanket }
helps-nothing = Solo unas plantas compradas ya crecidas, o un túnel, podrían dar algo todavía.
ripens-no-frost = Ninguna helada acaba tu temporada, así que hay tiempo de sobra para { $crops }; deciden el calor y los meses de lluvia.
ripens-next-year = { $crops }: la cosecha o la flor llega al año siguiente de la siembra, así que este año ninguna helada mete prisa.

## Semilla: cuánta, pruebas, días hasta que brota

percent = { $n }{ "\u00a0" }%
years = { $n ->
    [one] { $n } año
   *[other] { $n } años
}
seed-count = Para { $plants ->
    [one] una planta
   *[other] { $plants } plantas
} de { $crop }, siembra { $seeds ->
    [one] una semilla
   *[other] { $seeds } semillas
}.
seed-cells = En celdas: { $each } semillas en cada una de { $cells ->
    [one] una celda
   *[other] { $cells } celdas
}, y luego deja una sola planta por celda; vacías, más o menos: { $empty }.
seed-cells-single = En celdas: una semilla en cada una de { $cells ->
    [one] una celda
   *[other] { $cells } celdas
}; vacías, más o menos: { $empty }.
seed-count-chance = Es el número más pequeño con una probabilidad del { $chance } o más de llegar a esas plantas, si después de brotar se pierde el { $losses } de las plántulas.
seed-rate-stated = Contado con la germinación que diste: { $rate }.
seed-rate-tested = Contado con tu prueba: brotaron { $sprouted } de { $tested }, el { $rate }.
seed-rate-standard-fresh = La germinación es una estimación para semilla fresca: { $rate }, el mínimo legal de Estados Unidos (7 CFR 201.31).
seed-rate-standard-aged = La germinación es una estimación: { $rate } para semilla de { $age }. La fresca cuenta como { $fresh }, el mínimo legal de Estados Unidos (7 CFR 201.31), y baja por igual cada año hasta la mitad en { $life }.
seed-rate-assumed-fresh = La germinación es una estimación y una suposición mía: { $rate } para semilla fresca, porque el mínimo legal de Estados Unidos (7 CFR 201.31) no incluye { $crop }.
seed-rate-assumed-aged = La germinación es una estimación y una suposición mía: { $rate } para semilla de { $age }. Para la fresca tomo { $fresh }, porque el mínimo legal de Estados Unidos (7 CFR 201.31) no incluye { $crop }; baja por igual cada año hasta la mitad en { $life }.
seed-better-fresh = Por debajo del { $least }, es mejor semilla fresca.
seed-test-first = Para saberlo mejor, pon a brotar 20 semillas en papel húmedo y dime el resultado, así: “brotaron 14 de 20 semillas de { $crop }”.
seed-too-old = No cuentes con esa semilla: la de { $crop } dura más o menos { $life }, y con { $age } casi ninguna brota. Consigue semilla fresca, o prueba antes con 20 semillas en papel húmedo.
seed-too-weak = No cuentes con esa semilla de { $crop }: con una germinación del { $rate } es mejor cambiarla.
seed-which-crop = ¿De qué cultivo? Pregunta, por ejemplo, “¿cuántas semillas de albahaca para 12 plantas?”.
seed-plants-range = Puedo contar semillas para 1 a { $most } plantas enteras, no para { $written }.
seed-per-cell-range = Puedo contar con 1 a { $most } semillas enteras por celda, no con { $written }.
seed-rate-range = Una germinación va del 1 al 100{ "\u00a0" }%, así que { $written }{ "\u00a0" }% no puede ser.
seed-age-range = Puedo contar con semilla de hasta { $most } años, no de { $written }.
seed-year-ahead = El año { $year } aún no ha llegado, así que la semilla no puede ser de entonces; ¿qué año pone en el sobre?
test-result = Brotaron { $sprouted } de { $tested }: el { $rate }. En todo el sobre, lo probable es entre el { $low } y el { $high } (intervalo del 95{ "\u00a0" }% según Wilson).
test-replace = Menos del 40{ "\u00a0" }%: cambia esta semilla.
test-sow-thicker = Del 40 al 50{ "\u00a0" }%: siémbrala más tupida que de costumbre.
test-sow-by-number = Del 50 al 80{ "\u00a0" }%: siembra según las plantas que quieras. Pregúntame, por ejemplo, “brotaron { $sprouted } de { $tested } semillas de { $crop }, ¿cuántas siembro para 12 plantas?”.
test-sow-by-number-plain = Del 50 al 80{ "\u00a0" }%: siembra según las plantas que quieras; dime el cultivo y cuántas plantas, y cuento las semillas.
test-sow-as-usual = Más del 80{ "\u00a0" }%: siembra como siempre.
test-too-few = Para fiarte del resultado, prueba al menos { $enough } semillas (Universidad Estatal de Iowa, 1999).
test-range = En una prueba se cuentan semillas enteras, de 1 a { $most }.
test-more-than-tested = { $sprouted } de { $tested } no puede ser: no brotan más semillas de las que se prueban.
emerge-days = A { $at } cuenta con { $days } hasta que brote la semilla de { $crops }.
emerge-between = Sale de trazar una línea recta entre { $low } y { $high } en los ensayos de Harrington y Minges (1954), con la semilla a { $depth } de profundidad.
emerge-tested = Así se contó en los ensayos de Harrington y Minges (1954), con la semilla a { $depth } de profundidad.
emerge-too-slow-cold = Más de tres semanas es demasiado frío: la semilla que pasa tanto tiempo en la tierra puede pudrirse.
emerge-too-slow-hot = Más de tres semanas es demasiado calor.
emerge-none-cold = A { $at } no cuentes con que brote nada de { $crops }: hace demasiado frío. En los ensayos brotó poco o nada (Harrington y Minges, 1954).
emerge-none-hot = A { $at } no cuentes con que brote nada de { $crops }: hace demasiado calor. En los ensayos brotó poco o nada (Harrington y Minges, 1954).
emerge-uncertain-cold = A { $at }, la semilla de { $crops } brotará despacio y desigual, si es que brota. En los ensayos brotó poco o nada a { $none }, y a { $counted } tardó { $days } (Harrington y Minges, 1954).
emerge-uncertain-hot = A { $at }, la semilla de { $crops } brotará mal, si es que brota. En los ensayos tardó { $days } a { $counted }, y a { $none } brotó poco o nada (Harrington y Minges, 1954).
emerge-not-tested = No sé cuánto tardaría la semilla de { $crops } a { $at }: eso no se ensayó. No quiere decir que no brote.
emerge-no-table = No sé cuánto tardaría la semilla de { $crops } a { $at }: no tengo ensayos de ese cultivo.
emerge-usual = Lo habitual, a { $best }: { $days }.
emerge-relative = Los ensayos fueron con { $relative }, un pariente cercano.
emerge-printings = Según otra edición de la tabla, a { $at } brota poco o nada.
emerge-which-crop = ¿De qué cultivo? Pregunta, por ejemplo, “¿cuánto tardan los pimientos en brotar a { $at }?”.
temperature-beyond = La tierra no puede estar a { $at }; puedo contar con temperaturas de { $low } a { $high }.

## Temperatura de la tierra

soil-go = Adelante: siembra { $crops } en la tierra hoy. A { $at } la tierra tiene calor suficiente, y por fecha vale la pena hasta el { $next }.
soil-go-on = El { $date } puedes sembrar { $crops } en la tierra, si se mantiene a { $at }; por fecha vale la pena hasta el { $next }.
soil-go-believe-soil = Adelante: siembra { $crops } en la tierra. Por fecha tocaría el { $next }, pero créele a la tierra: { $at } basta, y lo que brote aguanta algo de helada.
soil-go-no-date = Por la tierra, adelante: { $at } basta para sembrar { $crops } en el huerto.
soil-wait-believe-soil = Todavía no: por fecha se podría, pero créele a la tierra. { $at } es demasiado frío para { $crops }; espera hasta que se mantenga a { $warm } o más.
soil-wait-no-date = Todavía no: { $at } es demasiado frío para { $crops }. Espera hasta que la tierra se mantenga a { $warm } o más.
soil-wait-both = Todavía no: la tierra y la fecha dicen lo mismo. { $at } es demasiado frío para { $crops }; siembra cuando se mantenga a { $warm } o más, pero no antes del { $next }.
soil-wait-frost = Todavía no: a { $at } la tierra tiene calor suficiente para { $crops }, pero créele a la fecha. Una helada mataría lo que brote, así que espera hasta el { $next }.
soil-wait-cover = Solo a cubierto: a { $at } la tierra tiene calor suficiente para { $crops }, pero créele a la fecha. Una helada mataría lo que brote; sin cubrir, espera hasta el { $next }.
soil-wait-window = Todavía no: a { $at } la tierra tiene calor suficiente para { $crops }, pero créele a la fecha. La próxima siembra empieza el { $next }.
soil-wait-cooler = Ahora no: { $at } es demasiado calor para que { $crops } brote bien. Espera hasta que la tierra se mantenga a { $cool } o menos.
soil-too-late = Por fecha ya es tarde para { $crops }, esté como esté la tierra. Los próximos buenos días empiezan el { $next }.
soil-too-late-for-good = Por fecha ya es tarde para { $crops }, esté como esté la tierra.
soil-needs = Para { $crops } hacen falta { $minimum } o más; lo mejor es { $best }.
soil-above = Por encima de { $maximum } no se puede contar con { $crops }.
soil-above-the-least = Para { $crops } es más que el mínimo ({ $minimum }) y menos que lo mejor ({ $best }), así que puede ir despacio; a esa temperatura no tengo ensayos.
soil-good = Para { $crops } está dentro de lo mejor: { $best }.
soil-frozen = La tierra helada no da agua a la semilla; nada brota hasta que se deshiele.
soil-measure = Mide a la profundidad de siembra y durante varios días: la tierra tiene que mantenerse así, no solo llegar una vez.
soil-list-head = Con la tierra a { $at } el { $date }, según la tierra y la fecha:
soil-list-none = Con la tierra a { $at } el { $date }, no hay nada que sembrar en ella.
soil-list-go = Sembrar en la tierra: { $crops }
soil-list-slow = Puede salir bien, pero despacio: { $crops }
soil-list-frost = Calor suficiente, pero una helada mataría lo que brote: { $crops }
soil-list-cold = Por fecha sí, pero la tierra está demasiado fría: { $crops }

## Qué hacer hoy

now-head = Lo que puedes empezar hoy, { $date }:
now-head-on = Lo que puedes empezar el { $date }:
now-nothing = El { $date } no hay nada que empezar entre tus { $kind }. Disfruta del huerto.
now-no-frost = En tu huerto no hiela, así que las fechas de heladas no dicen qué empezar ahora. Deciden el calor y los meses de lluvia; el servicio de extensión agrícola de tu zona tiene fechas de siembra.
now-until = { $crop } ({ $date })
now-from = { $crop } (mejor desde el { $date })
now-more = {" "}y { $count } más
group-late = { $how }, tarde pero vale la pena hasta:
group-on-time = { $how }, buen momento hasta:
group-early = { $how }, pronto pero posible con cuidado:
group-sow-indoors = sembrar en interior
group-sow-outdoors = sembrar en la tierra
group-plant-out = trasplantar o plantar
group-harden-off = aclimatar
group-pot-up = pasar a una maceta mayor
kind-crops = cultivos
kind-vegetables = hortalizas
kind-herbs = hierbas aromáticas
kind-flowers = flores

## Precauciones

caution-poisonous-plant = Cuidado: la planta y la semilla son venenosas. Mantenlas lejos de niños y mascotas.
caution-raw-beans = Cuidado: los granos crudos son venenosos; hay que cocerlos bien antes de comerlos.
caution-broad-bean-favism = Cuidado: las personas con favismo (deficiencia de G6PD) no deben comer habas; pregunta a un médico.
caution-bitter-squash = Cuidado: nunca comas un fruto de esta familia que sepa amargo; escúpelo y deséchalo.
caution-green-potatoes = Cuidado: no comas tubérculos verdes o brotados, y mantén bayas y hojas lejos de los niños.
caution-skin-irritant = Cuidado: la savia puede quemar la piel al sol; usa guantes y manga larga.
caution-treated-seed = Cuidado: la semilla puede estar tratada. Lee el sobre, usa guantes y mantenla lejos de niños y animales.
caution-heat-and-water = Cuidado: mantén secos los calefactores, las lámparas, las alfombrillas térmicas y sus enchufes, no los modifiques y sigue las normas eléctricas de tu zona.
caution-dusty-compost = Cuidado: humedece el sustrato polvoriento antes de tocarlo, no respires el polvo y lávate las manos.

## Palabras y nombres

which-crop = “{ $word }” puede referirse a { $crops }. ¿Cuál quieres decir?
which-or-outside = “{ $word }” puede ser dos plantas. ¿Quieres decir { $outside }? De esa no tengo fechas; lo que sigue es para la otra.
which-or-outside-ask = “{ $word }”: ¿quieres decir { $crop }? Para { $outside } no tengo fechas.
unknown-crop = No conozco “{ $written }”. Prueba con su nombre de siempre, por ejemplo “tomate”.
unknown-crop-near = No conozco “{ $written }”. ¿Quieres decir { $near }?
not-understood = Eso no lo entiendo; pregúntame, por ejemplo, “¿puedo sembrar pepinos ya?” o “¿cuándo trasplanto los tomates?”.
question-without-crop = ¿A qué cultivo te refieres? Envíame su nombre.
month-all = Se puede hacer durante todo { $month }.
month-part = En { $month } se puede hacer así: { $days }.
month-none = Ningún día de { $month } es bueno para eso.
# Stands above a line for each of many crops.
month-reckoned = Contado para el { $date }:
# $written es un día ya pasado, como "ayer".
date-gone-by = “{ $written }” ya pasó, así que respondo para hoy. Si sembraste entonces, dímelo así: /sown { $crop } { $written }
date-impossible = El calendario no tiene ningún día “{ $written }”. Pregunta otra vez con un día como “{ $example }”.
date-unclear = No sé qué día es “{ $written }”. Pregunta otra vez con un día como “{ $example }”.

## Por la mañana

morning-greeting = ¡Buenos días! Hoy, { $date }:
morning-check-forecast = Antes de sacar plantas sensibles al frío, aclimátalas y mira qué noches trae la semana.
morning-more = { $count ->
    [one] Espera una tarea más
   *[other] Esperan { $count } tareas más
}: /now
morning-coming = Lo que viene esta semana:
morning-coming-line = • { $date }: { $what }
job-good-until = { $what }: buen momento hasta el { $until }.
job-last-good-day = { $what }: hoy es el último día bueno.
job-last-good-is = { $what }: el último buen día es el { $until }.
job-late = { $what }: tarde, pero vale la pena hasta el { $last }.
job-early = { $what }: pronto pero posible con cuidado; mejor desde el { $from }.
job-for-autumn = { $what } para el otoño
job-of-sowing = { $what } (siembra del { $date })
job-check = { $what }: ya deberían verse.
job-check-resow = { $what }: si aún no se ve nada, siembra otra vez.
job-check-nothing = { $what }: ¿aún no se ve nada? { $then }
job-harvest = { $what }: por estos días.
job-worth-until = { $what }: vale la pena hasta el { $last }.
job-before = Hazlo antes de { $then }.
job-hedge = Es una segunda oportunidad, además de la siembra en interior, si quieres.
job-repeat = Por si quieres más: la última siembra fue el { $last }.
job-repeat-heat = Por si quieres más: la última siembra fue el { $last }, y el calor acaba pronto con cada una.
job-on-surface = Aprieta la semilla contra la superficie y no la cubras.
job-harden-off = { $what }: de 7 a 14 días, mientras las noches no bajen de { $nights }.
job-when-nights-allow = { $what } cuando las noches de la semana no bajen de { $nights }.
button-done = { $number } hecho
button-up = { $number } brotó
button-not-up = { $number } no salió nada
button-up-undo = { $number } brotó · deshacer
button-not-up-undo = { $number } no salió nada · deshacer
button-later = más tarde
button-skip = saltar
button-done-undo = { $number } hecho · deshacer
button-skipped-undo = { $number } saltado · deshacer
button-later-undo = { $number } más tarde · deshacer
notice-done = Anotado: hecho el { $date }.
notice-came-up = Anotado: brotó el { $date }.
notice-not-up = Anotado: no salió nada.
notice-later = Te lo recordaré el { $date }.
notice-later-too-late = Hoy es el último día que vale la pena, así que todo queda igual.
notice-skip = Esta temporada ya no te lo recordaré.
notice-undone = Deshecho.
notice-job-gone = Esa tarea ya no está en tu plan, así que todo queda igual. Con /now ves las que hay.
notice-old-button = Este botón es de un mensaje antiguo y ya no puedo leerlo. Todo queda igual. Con /help ves lo que sé hacer.
notice-not-yours = Esto es de quien lo pidió, así que todo queda igual. Pídemelo y tendrás lo tuyo.
notice-private-only = Eso, por favor, en nuestro chat privado.

## Presentarse

start-private = ¡Hola, { $name }! Te digo qué sembrar, aclimatar y trasplantar, y cuándo.
    Cuéntame qué cultivas (/grow tomate, albahaca) y te escribo las mañanas en que haya algo que hacer.
start-joined = Estás con { $club }.
start-token-unknown = Esa invitación ya no vale; toca otra vez el botón en el grupo de tu club.
start-need-frost = Para empezar, ¿cuándo hiela en tu huerto? Envía la última helada de primavera y la primera de otoño, en promedio, como mes y día: /frost 05-15 10-05
start-has-frost = Hago las cuentas con esto: { $frost }. Con /frost lo cambias para tu huerto.
start-need-zone = ¿En qué zona horaria vives? Envía una ciudad, así: /zone Madrid. Hasta entonces uso UTC.
group-greeting = ¡Hola! Ayudo con las fechas de siembra y trasplante. Pregúntame con un comando, por ejemplo /ask ¿puedo sembrar pepinos ya?, o responde a uno de mis mensajes.
    Para recibir recordatorios por la mañana, abre un chat privado conmigo: yo no puedo escribir primero.
    Quien administra el grupo puede poner las fechas de heladas y la zona horaria del club con /club, y llevar listas de cultivos con /list.
button-open-private = Recibir mis recordatorios
help-short = Respondo a preguntas como “¿puedo sembrar pepinos ya?”, “¿cuándo trasplanto los tomates?”, “¿a qué profundidad siembro guisantes?” y “¿madurarán las calabazas?”, y te escribo las mañanas en que haya algo que hacer.
help-private = Respondo a preguntas como “¿puedo sembrar pepinos ya?”, “¿cuándo trasplanto los tomates?”, “¿a qué profundidad siembro guisantes?” y “¿madurarán las calabazas?”, y hago cuentas: “¿cuántas semillas de albahaca para 12 plantas?”, “brotaron 14 de 20 semillas de puerro”, “la tierra está a 14 °C, ¿puedo sembrar guisantes?”.

    /grow tomate, albahaca – pon cultivos en tu lista; te los recuerdo
    /drop albahaca – quita uno
    /mycrops – tu lista
    /lists – las listas de tu club, para suscribirte
    /now – lo que puedes hacer hoy
    /sown albahaca 12 el 3 de abril – dime qué sembraste y sigo sus propias fechas
    /sowings – tus siembras y lo que viene después
    /variety tomate Farolito, 75 días – contar con los números de un sobre
    /undo – deshacer el último cambio
    /trays tomate 12, albahaca 6 – qué plántulas comparten bandeja
    /frost 05-15 10-05 – tu última y tu primera helada, mes y día
    /zone Madrid – tu zona horaria
    /hour 7:00 – cuándo llega tu recordatorio
    /place – dónde crecen tus plántulas
    /hold 7 días – esperar a que pase una ola de frío
    /holiday hasta el 3 de julio – sin mensajes antes de ese día
    /quiet domingo – sin mensajes ese día de la semana
    /weekends – dejar tareas para el fin de semana
    /settings – todo de un vistazo
    /export – todo lo que guardo sobre ti, en un archivo
    /forget – borrarlo

    Para no recibir más recordatorios, vacía tu lista con /drop todo.
help-group = Pregunta con /ask, por ejemplo “/ask ¿puedo sembrar pepinos ya?”, o responde a uno de mis mensajes. Con /now ves lo que puedes empezar y con /lists las listas del club; /club es para quien administra el grupo. Aquí cuento con las fechas del club; lo que es de tu propio huerto y los recordatorios llegan en privado.

## Modales en un grupo

# La última palabra de un mensaje con la que un miembro deja que el grupo lea la respuesta.
share-word = compartir
own-answered = Te respondí en privado. Si pueden leerlo todos, termina tu mensaje con “{ $word }”.
own-pointer = Eso es de tu propio huerto, así que queda entre nosotros. Abre nuestro chat privado con el botón y pregúntame allí.
group-more = Hay más que decir, con advertencias donde las haya.
button-our-chat = Abrir nuestro chat
button-read-on = Seguir leyendo en privado
notice-read-on = Te escribí en privado.
notice-question-gone = Esa pregunta es de hace demasiado tiempo. Hazla otra vez, por favor.

## Consultas desde otros chats

inline-need-frost = Primero dime tus fechas de heladas
inline-ask = No conozco ningún cultivo con ese nombre; pregúntame en privado
inline-now = Lo que se puede empezar ahora

## Mis datos

data-private-only = De tus datos hablo solo en privado. Abre nuestro chat con el botón y envía { $command } allí.
export-caption = Todo lo que guardo sobre ti, en JSON. Una vez enviado no guardo copia de este archivo. Con /forget se borra todo.
forget-ask = Esto borra todo lo que guardo sobre ti: tu nombre y tus ajustes, tu lista ({ $crops ->
    [one] un cultivo
   *[other] { $crops } cultivos
}), tus siembras ({ $sowings }), lo que me dijiste de las tareas, en qué clubes estás y cada recordatorio pendiente. Tus clubes siguen como están. No se puede deshacer; con /export recibes antes una copia.
    Si es lo que quieres, pulsa el botón o envía “{ $word }”.
forget-word = olvídame
button-forget = Borrar todo
button-keep = Conservarlo
forget-kept = No se borró nada.
forget-done = Listo: se borró todo lo que guardaba sobre ti y no llegará ningún recordatorio más. Este es mi último mensaje. Si algún día quieres empezar de nuevo, envía /start. ¡Buenas cosechas!
notice-forget-old = Esa pregunta es demasiado antigua y no se borró nada. Envía /forget otra vez.

## Heladas

frost-words = última helada hacia el { $last }, primera helada hacia el { $first }
frost-words-trusted = última helada el { $last } a más tardar y primera helada desde el { $first }, fechas en las que confías
frost-words-last-only = última helada hacia el { $last }, sin heladas en otoño
frost-words-free = sin heladas
frost-set = Anotado para tu huerto: { $frost }. Es una temporada de { $days ->
    [one] { $days } día
   *[other] { $days } días
}.
frost-set-no-end = Anotado para tu huerto: { $frost }.
frost-set-spans = Pasa por el año nuevo, como en el hemisferio sur.
frost-which-basis = ¿Son promedios (la mitad de los años es peor)? ¿O fechas en las que confías (más o menos un año de cada diez es peor)?
frost-set-free = Anotado: en tu huerto no hiela. ¿Qué meses son demasiado calurosos y cuáles son lluviosos? Por ejemplo: calor de junio a septiembre, lluvia de junio a octubre.
frost-hot-and-wet = Anotado: { $months }. Así que cuento con sembrar desde principios de { $starts } hasta que vuelva el calor, en { $heat }. Pregúntame, por ejemplo, “¿cuándo puedo sembrar pepinos?”.
frost-only-wet = Anotado: { $months }. Así que cuento con sembrar desde principios de { $starts } hasta que vuelva la lluvia, en { $heat }.
months-no-hot = No nombraste meses calurosos, así que calculo sin calor; para añadirlos, envía { $command } y después ambos.
months-how-to = No conozco los meses calurosos y lluviosos de este huerto; envía { $command }, te los pregunto y planifico con ellos.
frost-months-not-understood = No reconozco meses ahí. ¿Cuáles son demasiado calurosos y cuáles lluviosos? Por ejemplo: calor de junio a septiembre, lluvia de junio a octubre. Todo queda igual.
frost-months-all = Si todos los meses son de calor o de lluvia, no queda ninguno para sembrar. Nombra solo los más calurosos y los más lluviosos, por ejemplo: calor de junio a septiembre, lluvia de junio a octubre. Todo queda igual.
frost-unset = Tus fechas de heladas están borradas; valen las del club, si las tiene.
frost-show = Tu huerto: { $frost }.
frost-show-club = Para ti valen las fechas de tu club: { $frost }.
frost-show-none = Todavía no sé tus fechas de heladas.
frost-how-to = Envía la última helada de primavera y la primera de otoño como mes y día, así: /frost 05-15 10-05. Si nunca hiela: /frost none
frost-soon = No veo el pronóstico del tiempo, pero si va a helar: mete los plantines y cubre con manta antiheladas lo delicado del huerto antes del anochecer. Si hay que esperar para trasplantar, envía /hold 7 días.
frost-only-last = Tengo el { $last } como tu última helada de primavera. ¿Cuándo es la primera de otoño? Envía las dos: /frost { $code } 10-05
# Se pregunta por fechas como 5/6 y 10/5, con un botón para cada lectura.
frost-which-way = ¿Va primero el mes o el día? Pulsa lo que quieres decir.
frost-not-understood = No reconozco ahí fechas de heladas.
frost-impossible = El calendario no tiene ningún día “{ $written }”.
frost-same-day = Las dos fechas son el mismo día; la última helada de primavera y la primera de otoño tienen que ser distintas.
frost-too-short = Entre el { $last } y el { $first } solo hay { $days } días sin heladas, así que no anoto ninguna de las dos.
frost-unlikely = Lo leo así: { $frost }. Serían { $days } días sin heladas, y eso es raro, así que todavía no anoto nada.
frost-only-autumn = A la primera helada de otoño le falta la última de primavera; envía las dos.
frost-first-needed = Para eso necesito tus fechas de heladas. Envíalas así, mes y día: /frost 05-15 10-05
frost-first-needed-group = Para eso necesito fechas de heladas. Quien administra el grupo puede poner las del club con /club. En privado cuento con las tuyas: /frost 05-15 10-05
button-frost-meant = Son correctas
button-average = Son promedios
button-trusted = Confío en ellas
button-undo = Deshacer
button-undo-old = Deshacerlo
button-put-back = Rehacer
button-frost = Fechas de heladas
button-zone = Zona horaria
button-hour = Hora del recordatorio
button-quiet = Días sin mensajes
button-holiday = Vacaciones
button-holiday-over = Fin de vacaciones
button-language = Idioma
button-metric = °C y cm
button-customary = °F y pulgadas

## Cultivos

grow-how-to = ¿Qué cultivas? Envía los nombres, así: /grow tomate, albahaca
grow-added = Añadido a tu lista: { $crops }.
grow-already = Esto ya estaba en tu lista: { $crops }.
grow-first-up = Lo próximo: { $what }, desde el { $date }.
grow-late-up = Todavía puedes { $what }: es tarde, pero vale la pena hasta el { $date }.
grow-now-up = Ya puedes { $what }; buen momento hasta el { $date }.
grow-which = “{ $word }” puede referirse a { $crops }. ¿Qué cultivas?
drop-how-to = ¿Qué cultivos quito? Envía los nombres, así: /drop albahaca
drop-done = Quitado de tu lista: { $crops }.
drop-not-there = Esto no está en tu lista: { $crops }.
drop-left-out = Fuera de tu plan: { $crops }. En { $lists } nada cambia; con /grow un cultivo vuelve.
drop-unsubscribed = Ya no está en tu plan: { $lists }.
drop-nothing = Tu lista está vacía, así que no hay nada que quitar.
mycrops-empty = Tu lista está vacía. Envía lo que cultivas, así: /grow tomate, albahaca
mycrops-head = { $count ->
    [one] Un cultivo en tu lista:
   *[other] { $count } cultivos en tu lista:
}
mycrops-line = • { $crop }: { $what } desde el { $date }
mycrops-line-now = • { $crop }: ya puedes { $what }; buen momento hasta el { $date }
mycrops-line-late = • { $crop }: aún puedes { $what }; tarde, pero vale la pena hasta el { $date }
mycrops-line-plain = • { $crop }
mycrops-by-list = { $line } (de { $lists })
mycrops-own-and-list = { $line } (tuyo, y de { $lists })
mycrops-left-out = Lo que dejas fuera de las listas del club: { $crops }
page-of = Página { $page } de { $pages }
button-next-page = Más ›
button-previous-page = ‹ Atrás
button-add = Añadir { $crop }
button-crop = { $crop }
button-remind = Recordarme { $crop }

## Tareas del día

now-jobs-head = De tu lista, { $date }:
now-jobs-none = Hoy, { $date }, no hay nada que hacer con los cultivos de tu lista.

## Siembras

# $crops es el nombre de un cultivo en plural, con su número si se sabe.
sowing-count = { $crops } ({ $count })
sowing-indoors = { $crops }, siembra en interior del { $date }
sowing-outdoors = { $crops }, siembra en la tierra del { $date }
sown-noted = Anotado: { $what }.
sown-how-to = ¿Qué sembraste, cuántas plantas y cuándo? Así: /sown albahaca 12 el 3 de abril
sown-impossible-day = No conozco ningún día “{ $written }”, así que todo queda igual. Así lo entiendo: /sown albahaca 12 el 3 de abril
sown-stray = No sé bien qué significa “{ $written }”, así que todo queda igual. Así lo entiendo: /sown albahaca 12 el 3 de abril
sown-variety-unknown = No conozco la variedad “{ $written }”. Para que la guarde, envía lo que dice el sobre, así: /variety { $crop } { $written }: 75 días
sown-future = El { $date } aún no ha llegado, así que todo queda igual. Cuéntamelo después de sembrar.
sown-long-ago = Del { $date } hace más de un año, así que todo queda igual.
sown-bad-count = En una siembra puedo anotar de 1 a { $most } plantas, así que todo queda igual.
sown-planted = Sin anotar: aquí solo guardo siembras, y lo de { $crops } es plantar.
sown-bad-warmth = { $at } no puede ser en la tierra ni en un cuarto; puedo contar con temperaturas de { $low } a { $high }, así que todo queda igual.
sown-without-frost = Con tus fechas de heladas (/frost 05-15 10-05) puedo decirte cuándo salen fuera las plantas.
amiss-early = Es un poco pronto: los buenos días empiezan el { $from }. Hasta entonces, mantén la siembra a cubierto.
amiss-too-early = Es demasiado pronto, por { $early }.
amiss-too-early-cold = Para la tierra es demasiado pronto, por { $early }: debería mantenerse a { $minimum } o más.
amiss-too-early-frost = Para la tierra es demasiado pronto, por { $early }, y una helada mataría lo que brote.
amiss-too-late = Era demasiado tarde para que valiera la pena.
amiss-never-outdoors = Sembrar { $crops } directamente en la tierra apenas funciona aquí: hay que empezar en interior.
sowing-up = • Debería brotar: { $days }. ¿Aún nada el { $resow }? { $then }
sowing-up-room = • Debería brotar, en un cuarto a unos { $at }: { $days }. ¿Aún nada el { $resow }? { $then }
sowing-up-at = • Debería brotar, a unos { $at }: { $days }. ¿Aún nada el { $resow }? { $then }
sowing-warning = • { $what }
sowing-below-least = A { $at } no cuentes con que brote nada de { $crops }: hace demasiado frío. Necesita { $minimum } o más.
sowing-above-most = A { $at } no cuentes con que brote nada de { $crops }: por encima de { $maximum } no es seguro.
sowing-not-tested = A { $at } no tengo ensayos; esos son los días habituales a { $best }.
sowing-move-warmer = Pon la siembra donde haya { $best }; a partir de ahí brota en { $days }.
sowing-ground-warmer = Brotará cuando la tierra se mantenga a { $warm } o más, si la semilla no se ha podrido antes.
sowing-cooler = Pon la siembra donde haga menos calor: { $cool } o menos.
sowing-none-by = • ¿Aún nada el { $resow }? { $then }
nothing-up-again = Siembra otra vez.
nothing-up-again-from = Siembra otra vez desde el { $date }.
nothing-up-other-way = Entonces es mejor { $what }.
nothing-up-buy = Entonces ya es tarde para sembrar otra vez; compra plantas jóvenes: trasplantar vale la pena hasta el { $date }.
nothing-up-too-late = Entonces ya es tarde para sembrar otra vez; el próximo buen día es el { $date }.
nothing-up-too-late-for-good = Entonces ya es tarde para sembrar otra vez.
sowing-step = • { $what }: { $days }
sowing-from = • { $what }: desde el { $from }
sowing-out-mild = • { $what }: desde el { $from }, cuando las noches de la semana no bajen de { $nights }
sowing-harvest = • Primera cosecha: { $days }
sowing-bloom = • Primeras flores: { $days }
sowing-old = • El día que salgan fuera, las plantas tendrán { $age }, y aguantan { $most } como mucho: pásalas a una maceta mayor y dales luz.
sowing-too-old = • El día que salgan fuera, las plantas tendrán { $age }, y aguantan { $most } como mucho. Mejor siembra otra vez desde el { $from }.
sowing-too-late = • Estaría a punto solo después de tu primera helada: esta siembra de { $crops } necesita un sitio a cubierto.
came-up-none-waits = No sé de ninguna siembra que esté por brotar. Cuéntame qué siembras, así: /sown albahaca 12 el 3 de abril
came-up-which = ¡Qué bien! ¿Cuál de ellas?
not-up-which = Qué pena. ¿Cuál de ellas?
came-up-noted = Qué bien, ya brotó: { $what }.
not-up-noted = Qué pena. Anotado que no salió nada: { $what }.
sow-again-now = Ya puedes sembrar otra vez.
sow-again-until = Ya puedes sembrar { $crops } otra vez; vale la pena hasta el { $last }.
sow-again-from = Espera con { $crops }: el próximo buen día para sembrar otra vez es el { $from }.
sow-again-too-late = Esta temporada ya es tarde para sembrar { $crops } otra vez.
sow-again-next = El próximo buen día para sembrar { $crops } es el { $next }.
button-sown-again = Sembré otra vez hoy
notice-sown-already = Esa siembra ya está anotada.
sowings-none = No sé de ninguna siembra tuya que siga creciendo. Cuéntame qué siembras, así: /sown albahaca 12 el 3 de abril
sowings-head = { $count ->
    [one] Una siembra:
   *[other] { $count } siembras:
}
sowings-line = { $what }. Lo próximo: { $step }, desde el { $date }
sowings-line-now = { $what }. Ahora: { $step }
sowings-line-plain = { $what }
button-give-up = { $number } dar por perdida
notice-given-up = Dada por perdida. Con /undo la recuperas.
undo-nothing = No hay nada que deshacer.
undo-sowing-off = Deshecho y olvidado: { $what }.
undo-sowing-as = Como antes: { $what }.
undo-job = Deshecho: lo que dijiste de “{ $what }”.
# $setting es el nombre de lo que se cambió.
undo-setting = { $setting ->
    [frost] Tus fechas de heladas están como antes.
    [zone] Tu zona horaria está como antes.
    [language] Tu idioma está como antes.
    [units] Tus unidades están como antes.
    [hour] Tu recordatorio llega a la hora de antes.
    [days] Tus días sin mensajes están como antes.
    [months] Tus meses de calor y de lluvia están como antes.
    [latitude] Tu latitud está como antes.
    [place] El sitio de tus plantas está como antes.
    [hold] La ola de frío está como antes.
   *[other] Tus ajustes están como antes.
}
undo-crops-off = Otra vez fuera de tu lista: { $crops }.
undo-crops-on = Otra vez en tu lista: { $crops }.
undo-subscribed = “{ $list }” está otra vez en tu plan.
undo-skip-off = Otra vez en tu plan, de la lista del club: { $crops }.
undo-skip-on = Otra vez fuera: { $crops }.
notice-undo-stale = Después cambió otra cosa, así que no deshago nada. Con /undo deshaces el último cambio.
# $date es el día en que se hizo el cambio; $what dice lo que pasaría.
undo-old = Tu último cambio es del { $date }, por eso pregunto antes. Aún no deshice nada. Deshacerlo significa:
    { $what }
undo-made-today = Ese cambio era de hoy a las { $time }.
undo-made-on = Ese cambio era del { $date }.
# $what dice lo que vuelve a valer.
undo-put-back = Rehecho. Está como antes de deshacer:
    { $what }
notice-put-back-stale = Después cambió otra cosa, así que no rehago nada.

## Plantas que salieron o murieron, parar, gracias, términos

planted-noted = Anotado, al aire libre desde el { $date }: { $crops }.
planted-early = Es pronto para { $crops }: cubre las plantas en las noches frías. Sus buenos días empiezan el { $from }.
planted-none = No sé de ninguna siembra de { $crops } que espere para salir ni de ningún trasplante en tu plan, así que no hay nada que marcar. Con /grow pones un cultivo en tu lista.
potted-noted = Anotado como repicado el { $date }: { $crops }.
hardened-noted = Anotado como aclimatado el { $date }: { $crops }.
step-none = Nada que marcar: { $crops }; ninguna siembra espera ese paso y no está en tu plan. Para anotar una siembra: /sown
step-future = El { $date } todavía no llegó, así que todo queda igual. Dímelo cuando esté hecho.
planted-future = El { $date } aún no llega, así que nada cambió. Dímelo cuando estén fuera.
planted-impossible-day = No conozco el día “{ $written }”, así que nada cambió. Así: trasplanté 6 brócolis el 3 de mayo
lost-noted = Lo siento. Anoto que se perdió: { $what }.
lost-none = Lo siento. No tengo anotada ninguna siembra de { $crops }, así que nada cambió.
lost-some = Lo siento. Como aún queda algo de { $crops }, nada cambió. Si se perdió todo, dime: “perdí todo: { $crops }”.
lost-which = Lo siento. ¿Cuál?
stop-how-to = Todavía no cambió nada. Tú decides cuánto sabes de mí:
    • un tiempo sin mensajes: /holiday hasta el 3 de julio
    • sin mensajes algún día de la semana: /quiet domingo
    • ningún recordatorio más: /drop todo vacía tu lista
    • irte del todo: /forget borra todo lo que guardo sobre ti
button-stop-holiday = Pausa hasta un día
button-stop-days = Días sin mensajes
thanks = De nada. ¡Que brote todo!
# $night es una temperatura.
term-hardening-off = Aclimatar es acostumbrar al sol, al viento y a las noches frescas las plántulas que crecieron dentro, antes de que se queden fuera: primero unas horas a la sombra, después cada día más tiempo y más sol, durante una o dos semanas. Lo nombro de 14 a 7 días antes del trasplante; en noches de menos de { $night } éntralas (University of Maryland Extension, 2023).
term-potting-up = Repicar o pasar a una maceta mayor es cambiar la plántula de recipiente antes de que sus raíces lo llenen. Lo nombro de tres a cuatro semanas después de sembrar, cuando se abren las primeras hojas verdaderas, donde vale la pena (práctica común).
term-setting-out = Trasplantar al aire libre es pasar al huerto las plántulas que crecieron dentro. Sus días empiezan tantas semanas antes o después de tu última helada media como dice la clase del cultivo, y si la helada lo mata, no antes de la fecha en que confías; después deciden las noches de la semana.
term-succession = La siembra escalonada es volver a sembrar un poco cada cierto tiempo para tener siempre algo que recoger. Después de cada siembra nombro la siguiente según el intervalo del cultivo, mientras valga la pena sembrar en la tierra; donde el calor del verano acaba con un cultivo, las siembras de otoño empiezan otra serie.
term-cover = La protección es lo que aparta el frío del bancal, y cuento así con ella: la manta antiheladas adelanta dos semanas lo que aguanta el frío y nada lo delicado (práctica común; solo para heladas ligeras, Colorado State University Extension), la cajonera fría adelanta tres semanas lo que aguanta el frío (University of Vermont Extension) y el túnel adelanta todo tres semanas (práctica común). Dime con /place lo que tienes.
term-last-frost = Tu última helada media es el día después del cual todavía hiela en una primavera de cada dos; hay helada cuando el aire está a 0 °C o menos. Una fecha en la que confías es aquella después de la cual solo hiela en cerca de una primavera de cada diez; cuento con que cae { $days } días más tarde (Moyer, University of Delaware, 1970). Desde ahí se cuentan hacia atrás las siembras.
term-first-frost = Tu primera helada media es el día antes del cual ya heló en un otoño de cada dos; hay helada cuando el aire está a 0 °C o menos. En cerca de un otoño de cada diez heló ya { $days } días antes, así que lo que madura antes está a salvo. Las siembras de otoño se cuentan hacia atrás desde la primera helada.
term-your-frost = Aquí cuento con: { $frost }.

## Variedades

# $name es el nombre de una variedad como lo escribió el miembro.
variety-name = { $crop } “{ $name }”
by-packet = Según tu sobre de { $variety }: { $packet }.
short-variety = { $variety }: { $line }
variety-how-to = Dime lo que pone en un sobre, primero el cultivo, así: /variety tomate Farolito: en interior 6-8 semanas antes de la última helada, 75 días
variety-noted = Anotado: { $variety }, { $packet }. Desde ahora cuento con eso.
variety-already = { $variety } ya está así; todo queda igual.
variety-follows = Los planes y recordatorios de { $crops } ahora se guían por ella; pregunta por las demás con su nombre.
variety-now-follows = Los planes y recordatorios ahora se guían por { $variety }.
variety-removed = Olvidado: { $variety }.
variety-crop-again = Para { $crops } vuelvo a contar con los números de siempre.
variety-unknown = No te conozco ninguna variedad “{ $written }”, así que todo queda igual. Con /variety ves las que tienes.
variety-which-one = ¿A cuál te refieres: { $varieties }? Envíalo otra vez con su nombre; todo queda igual.
variety-which = “{ $word }” puede referirse a { $crops }. Envíalo otra vez con el nombre completo; todo queda igual.
variety-which-crop = ¿De qué cultivo es ese sobre? Envíalo otra vez con el nombre del cultivo al principio; todo queda igual.
variety-two-crops = Ahí leo dos cultivos: { $crops }. Un sobre es de uno solo, y una variedad no puede llamarse como un cultivo; todo queda igual.
variety-no-numbers = Ahí no encuentro ningún número de un sobre de semillas, así que todo queda igual. Así: /variety tomate Farolito: en interior 6-8 semanas antes de la última helada, 75 días
variety-name-long = El nombre de una variedad tiene { $most } letras como mucho, así que todo queda igual. Envía el cultivo y un nombre corto, y después los números.
variety-name-common = “{ $written }” es una palabra demasiado común para reconocer una variedad, así que todo queda igual. Dale un nombre propio, o ninguno.
variety-too-many = Te guardo { $most } variedades como mucho, así que todo queda igual. Con /variety las ves; quita antes alguna.
varieties-head = Tus variedades:
varieties-line = { $number }. { $variety }: { $packet }
varieties-line-followed = { $number }. { $variety }: { $packet } (los planes y recordatorios se guían por esta)
button-follow = { $number } usar
button-drop-variety = { $number } quitar
notice-variety-gone = Esa variedad ha cambiado después; con /variety ves cómo están ahora.
undo-variety-off = Deshecho y olvidado: { $variety }.
undo-variety-as = Como antes: { $variety }.
packet-indoors = siembra en interior { $weeks } antes de la última helada
packet-set-out = trasplante { $when }
packet-in-place = siembra en la tierra { $when }
packet-before = { $weeks } antes de la última helada
packet-after = { $weeks } después de la última helada
packet-around = desde { $before } antes hasta { $after } después de la última helada
packet-at-frost = hacia la última helada
packet-after-danger = siembra en la tierra después de la última helada
packet-days = { $days } hasta la cosecha
packet-days-from-setting-out = { $days } del trasplante a la cosecha
packet-days-from-sowing = { $days } de la siembra a la cosecha
packet-up = brota en { $days }
packet-depth = a { $depth } de profundidad
packet-apart = a { $apart } entre plantas
packet-rows = a { $rows } entre filas
packet-left-indoors = Aquí no se hace semillero de { $crops }, así que dejé fuera las semanas en interior.
packet-left-outdoors = Aquí no se siembra { $crops } en la tierra, así que dejé fuera esa fecha.
packet-bad-days = { $number } días hasta la cosecha no puede ser, así que todo queda igual. Revisa el sobre: acepto de { $low } a { $high }.
packet-bad-indoors = { $number } semanas en interior no puede ser, así que todo queda igual. Revisa el sobre: acepto de { $low } a { $high }.
packet-bad-offset = { $number } semanas desde la última helada no puede ser, así que todo queda igual. Revisa el sobre: acepto de { $low } a { $high }.
packet-bad-up = { $number } días hasta brotar no puede ser, así que todo queda igual. Revisa el sobre: acepto de { $low } a { $high }.
packet-bad-depth = Una profundidad de { $depth } no puede ser, así que todo queda igual. Revisa el sobre: acepto hasta { $most }.
packet-bad-spacing = Una distancia de { $apart } no puede ser, así que todo queda igual. Revisa el sobre: acepto hasta { $most }.

## A qué distancia del ecuador

latitude-how-to = ¿A cuántos grados al norte o al sur del ecuador está tu huerto? Así: /latitude 40
latitude-bad = “{ $written }” no es una latitud. Envía grados de 0 a 90, así: /latitude 40, o al sur del ecuador /latitude 33 S
latitude-set = Anotado: unos { $degrees } grados norte.
latitude-set-south = Anotado: unos { $degrees } grados sur.
onion-ask-latitude = Qué cebollas forman bulbo depende de lo largos que sean tus días. ¿A qué latitud estás? Así: /latitude 40
onion-long = Tan lejos del ecuador elige cebollas de día largo: forman bulbo con 14 horas de luz o más.
onion-long-intermediate = A esa latitud van bien las cebollas de día largo (bulbo desde 14 horas de luz), y también las de día intermedio (de 12 a 14 horas).
onion-intermediate = A esa latitud elige cebollas de día intermedio (neutro): forman bulbo con 12 a 14 horas de luz.
onion-intermediate-short = A esa latitud van bien las cebollas de día intermedio (bulbo con 12 a 14 horas de luz), y también las de día corto (de 10 a 12 horas).
onion-short = Tan cerca del ecuador elige cebollas de día corto: forman bulbo con 10 a 12 horas de luz.

## Bandejas

# $vigour es small, upright o sprawling: cómo crece la plántula en la bandeja. $warmth es tray-warmth
# o nada, $like es tray-like; las bandejas iguales se cuentan juntas.
trays-head = Bandejas para lo que siembras en interior { $days }:
trays-none = Nada de eso se siembra en bandeja en las próximas dos semanas.
trays-none-of-list = Nada de tu lista se siembra en bandeja en las próximas dos semanas.
trays-empty-list = Tu lista está vacía. Nombra los cultivos y sus celdas, así: /trays tomate 12, albahaca 6
trays-how-to = ¿Qué cultivos, y cuántas celdas de cada uno? Envíalos así: /trays tomate 12, albahaca 6
trays-bad-count = “{ $written }” no es un número de celdas; da de 1 a { $most } por cultivo, así: /trays tomate 12, albahaca 6
trays-no-crop = ¿“{ $written }” celdas de qué? Envía cada cultivo con su número, así: /trays tomate 12, albahaca 6
trays-which = “{ $word }” puede referirse a { $crops }: nombra uno de ellos.
trays-too-long = Es más de lo que puedo repartir de una vez; envía menos cultivos.
tray-line = Bandeja { $number }, { $cells } celdas de { $size }{ $warmth }: { $crops }. { $like }
tray-line-several = Bandejas { $number }–{ $last }, cada una de { $cells } celdas de { $size }{ $warmth }: { $crops } en cada una. { $like }
tray-warmth = {" "}(calor: { $best })
tray-crop = { $crops } { $cells }
tray-crop-from = { $crops } { $cells } (sembrar el { $date })
tray-crop-early = { $crops } { $cells } (pronto; mejor desde el { $date })
tray-like = { $vigour ->
    [small] Plantas pequeñas
    [upright] Plantas erguidas
   *[sprawling] Plantas que se extienden
}; salen fuera con { $age }.
tray-light = Déjala a la luz hasta que brote.
tray-dark = Tenla a oscuras hasta que brote.
tray-pot-up = Pasar { $crops } a macetas de { $pot }: { $days }.
tray-pot-up-plain = Pasar { $crops } a una maceta mayor: { $days }.
tray-too-early = { $crops }: todavía no, desde el { $next }.
tray-too-late = { $crops }: ya es tarde para una bandeja; el próximo buen día es el { $next }.
tray-too-late-for-good = { $crops }: ya es tarde para una bandeja, y tu temporada no da para otro intento.
tray-why-together = { $vigour ->
    [small] Todas son plantas pequeñas
    [upright] Todas son plantas erguidas
   *[sprawling] Todas se extienden, lejos de las más pequeñas
}, quieren celdas de { $size } y salen fuera mejor con { $age }; les va el mismo calor y la misma luz. Dejan la bandeja, más o menos: { $leave }.
tray-why-alone = { $vigour ->
    [sprawling] Sus plantas se extienden, así que van lejos de las más pequeñas, y nada de lo demás se les parece.
   *[other] Nada de lo demás se parece lo bastante en celdas, crecimiento, edad, calor y luz para compartir bandeja.
}
tray-why-no-gain = Aquí podrían ir también otras, pero no ahorraría ninguna bandeja.
tray-crop-why = { $vigour ->
    [small] Plantas pequeñas
    [upright] Plantas erguidas
   *[sprawling] Plantas que se extienden
}: con siembra el { $sow } tienen { $age } cuando pueden salir, hacia el { $out }; hasta entonces les bastan celdas de { $size }.
tray-crop-why-pot-up = { $vigour ->
    [small] Plantas pequeñas
    [upright] Plantas erguidas
   *[sprawling] Plantas que se extienden
}: con siembra el { $sow } tienen { $age } cuando pueden salir, hacia el { $out }; las celdas de { $size } les bastan hasta el { $by }, así que pásalas antes a una maceta mayor.
tray-crop-why-early = Es pronto; mejor desde el { $date }.
tray-rest-from = { $crop } (desde el { $date })
tray-rest-not-yet = Todavía no: { $crops }.
tray-rest-too-late = Tarde para una bandeja: { $crops }.
tray-rest-in-place = Mejor sembrar o plantar en su sitio: { $crops }.
tray-rest-settled = Sembrado o saltado ya: { $crops }.

## Olas de frío

hold-set = En pausa hasta el { $date }: hasta entonces no nombro nada que aclimatar ni trasplantar.
hold-set-club = En pausa para el club hasta el { $date }: hasta entonces no le digo a nadie que aclimate ni trasplante. Con /hold, cada quien ve cuáles de sus plántulas no pueden esperar.
hold-waits = Queda para después: { $jobs }.
hold-nothing-waits = En tu lista no había nada que aclimatar ni trasplantar antes de esa fecha.
hold-can-wait = Tus plántulas pueden esperar hasta entonces.
hold-pot-up = { $crops }: para entonces las plantas tendrán { $age }, más de lo que aguantan en su celda. Pásalas a una maceta mayor.
hold-too-old = { $crops }: para entonces las plantas tendrán { $age }, demasiado para esperar. Aclimátalas y trasplántalas a cubierto en los días más suaves, o compra plantas jóvenes más adelante.
hold-too-old-sow-again = { $crops }: para entonces las plantas tendrán { $age }, demasiado para esperar. Trasplántalas a cubierto en los días más suaves, o siembra otra vez: vale la pena hasta el { $last }.
hold-off = La pausa terminó; desde hoy vuelvo a nombrarlo todo.
hold-off-own = Tu propia pausa terminó.
hold-off-club = La pausa del club terminó; desde hoy vuelvo a nombrarlo todo.
hold-none = No hay ninguna pausa.
hold-club-counts = Tu club espera hasta el { $date }, y eso también vale para ti.
hold-how-to = En una ola de frío, dime cuántos días quieres esperar para aclimatar y trasplantar, de 1 a 60: /hold 7 días, o hasta qué día: /hold hasta el viernes. Para terminar la pausa: /hold fin
hold-how-to-club = En una ola de frío, dime cuántos días espera el club, de 1 a 60: /club hold 7 días, o hasta qué día: /club hold hasta el viernes. Para terminar la pausa: /club hold fin
hold-show = En pausa hasta el { $date }.
hold-bad = La pausa puede durar de 1 a 60 días, así: /hold 7 días, o /hold hasta el viernes. Todo queda igual.
hold-bad-club = La pausa puede durar de 1 a 60 días, así: /club hold 7 días, o /club hold hasta el viernes. Todo queda igual.
now-held = Aclimatar y trasplantar esperan hasta el { $date }.
settings-hold = • Ola de frío: en pausa hasta el { $date }
settings-hold-club = • Ola de frío: en pausa hasta el { $date } (la de tu club)

## Zona horaria, hora, idioma, unidades

zone-set = Tu zona horaria es { $zone }; la hora allí, ahora mismo: { $time }.
zone-how-to = Envía una ciudad o el nombre de una zona, así: /zone Madrid
zone-show = Tu zona horaria es { $zone }.
zone-show-none = No sé tu zona horaria y uso UTC.
zone-near = No conozco el lugar “{ $written }”. ¿Quieres decir uno de estos?
zone-unknown = No conozco el lugar “{ $written }”. Envía una ciudad más grande cerca de ti, o el nombre de una zona, como America/Bogota.
hour-set = Hora de tus recordatorios: { $time } ({ $zone }).
hour-how-to = Envía una hora, así: /hour 7:00
hour-show = Hora de tus recordatorios: { $time } ({ $zone }).
hour-bad = “{ $written }” no es una hora del día. Envíala así: /hour 7:00
quiet-none = Los mensajes pueden llegar cualquier día.
quiet-show = Sin mensajes: { $days }. Lo que habría llegado entonces va en el mensaje siguiente, y si entre esos días hay un último buen día, te lo digo antes.
quiet-how-to = Pulsa un día para cambiarlo, o escríbelo, así: /quiet domingo
quiet-bad = En “{ $written }” no encuentro ningún día de la semana, así que todo queda igual. Así: /quiet domingo, o /quiet no
quiet-all = No quedaría ningún día para los mensajes, así que todo queda igual. Para pararlos un tiempo: /holiday hasta el 3 de julio
button-day = { $day }
button-day-quiet = { $day }: sin mensajes
weekends-how-to = ¿Cuándo trabajas en el huerto? Así, “más tarde” aplaza cada tarea al día adecuado.
weekends-on = Anotado: trabajas en el huerto los fines de semana. “Más tarde” aplaza cada tarea al siguiente, pero nunca más allá de su último buen día.
weekends-off = Anotado: trabajas en el huerto cualquier día. “Más tarde” aplaza cada tarea al próximo día en que pueda llegar un mensaje.
button-weekends-on = Los fines de semana
button-weekends-off = Cualquier día
holiday-how-to = ¿Hasta cuándo estás fuera? Envía el día en que pueden volver los mensajes, así: /holiday hasta el 3 de julio
holiday-show = Estás de vacaciones, sin mensajes antes del { $date }. Envía otro día para cambiarlo, o /holiday fin para acabarlas.
holiday-set = ¡Que lo pases bien! No llegará ningún mensaje antes del { $date }. Lo que te pierdas y aún valga la pena entonces va en el primero.
holiday-before = Esto se acaba antes, así que hazlo antes de irte:
holiday-off = ¡Qué bueno que volviste! Los mensajes llegan otra vez desde la próxima mañana.
holiday-off-none = No estás de vacaciones; los mensajes llegan como siempre.
holiday-bad = En “{ $written }” no reconozco ningún día, así que todo queda igual. Así: /holiday hasta el 3 de julio
holiday-impossible = El calendario no tiene ningún día “{ $written }”, así que todo queda igual. Así: /holiday hasta el 3 de julio
holiday-past = El { $date } no es posterior a hoy, así que todo queda igual. Así: /holiday hasta el 3 de julio
holiday-too-long = Para el { $date } falta más de un año, así que todo queda igual. Envía un día más cercano.
holiday-several = Ahí hay más de un día, así que todo queda igual. Las vacaciones empiezan enseguida; envía solo el día en que pueden volver los mensajes, así: /holiday hasta el 3 de julio
language-how-to = ¿Qué idioma?
language-set = Desde ahora te hablo en este idioma: { $language }.
language-unknown = Todavía no hablo “{ $written }”. Hablo { $languages }.
language-name-en = English
language-name-en-GB = English (UK)
language-name-en-US = English (US)
language-name-de = Deutsch
language-name-es = Español
language-name-fr = Français
units-set-metric = Desde ahora, en °C y cm.
units-set-customary = Desde ahora, en °F y pulgadas.
settings-head = Tus ajustes
settings-frost = • Heladas: { $frost }
settings-frost-none = • Heladas: sin fechas
settings-frost-club = • Heladas: { $frost } (las de tu club)
settings-zone = • Zona horaria: { $zone }
settings-zone-club = • Zona horaria: { $zone } (la de tu club)
settings-zone-none = • Zona horaria: sin indicar, así que UTC
settings-hour = • Recordatorios: { $time }
settings-quiet = • Sin mensajes: { $days }
settings-weekends = • “Más tarde” espera al fin de semana
settings-holiday = • De vacaciones, sin mensajes antes del { $date }
settings-units-metric = • Unidades: °C y cm
settings-units-customary = • Unidades: °F y pulgadas
settings-language = • Idioma: { $language }
settings-club = • Club: { $club }
settings-hot-and-wet = • Meses de calor y de lluvia: { $months }
settings-unreachable = Los recordatorios llegan en nuestro chat privado; ábrelo una vez y envía /start.

## Club

club-head = { $club }, ajustes para quien no tenga los suyos propios
club-reach-all = • Miembros: { $members }; los recordatorios les llegan a todos
club-reach = • Miembros: { $members }; los recordatorios les llegan a { $reached }. Los demás tienen que abrir nuestro chat privado y enviar /start.
club-only-in-group = /club funciona en el grupo de tu club, donde puedo ver quién lo administra.
club-not-administrator = Los ajustes del club solo los cambia quien administra este grupo y sus ayudantes. Con /frost pones los de tu huerto.
club-role-unknown = No pude comprobar quién administra el grupo. Inténtalo otra vez en un minuto, por favor.
club-frost-set = Anotado para el club: { $frost }. Es una temporada de { $days ->
    [one] { $days } día
   *[other] { $days } días
}. Quien tenga fechas propias las conserva.
club-frost-set-no-end = Anotado para el club: { $frost }. Quien tenga fechas propias las conserva.
club-frost-set-free = Anotado para el club: no hiela. ¿Qué meses son demasiado calurosos y cuáles son lluviosos? Responde a este mensaje, por ejemplo: calor de junio a septiembre, lluvia de junio a octubre. Quien tiene ajustes propios los conserva.
club-frost-unset = El club ya no tiene fechas de heladas.
club-frost-how-to = Responde a este mensaje con la última helada de primavera y la primera de otoño del club, en promedio, como mes y día: 05-15 10-05
club-zone-set = La zona horaria del club es { $zone }.
club-zone-how-to = Responde a este mensaje con una ciudad o el nombre de una zona, así: Madrid
club-language-set = El idioma del club es: { $language }.
club-not-understood = No conozco el ajuste “{ $written }”, así que nada cambió.
club-how-to = Cámbialos aquí, o en una línea: /club frost 05-15 10-05, /club zone Madrid, /club language es, /club digest lunes 8:00, /club hold 7 días
settings-digest = • La semana del club: { $day }, { $time }
settings-digest-none = • La semana del club: no se envía

## La semana del club

digest-head = La semana del club según sus fechas de heladas, { $days }:
digest-opens = Empieza esta semana:
digest-closes = A punto de acabarse:
digest-line = • { $what }: { $when } ({ $count ->
    [one] un miembro lo cultiva
   *[other] { $count } miembros lo cultivan
})
digest-from = desde el { $date }
digest-until = buen momento hasta el { $date }
digest-more = { $count ->
    [one] y uno más
   *[other] y { $count } más
}
digest-foot = Tus propias fechas pueden ser otras: pregúntame con /now.
digest-show = Este grupo recibe la semana del club: { $day } a las { $time }.
digest-show-none = Este grupo no recibe la semana del club.
digest-how-to = Envía un día y una hora, así: /club digest lunes 8:00. Con “aquí” al final llega en el tema donde lo escribas. Con /club digest no se deja de enviar.
digest-bad = En “{ $written }” no reconozco un día de la semana y una hora, así que todo queda igual. Así: /club digest lunes 8:00 aquí, o /club digest no
digest-set = Anotado: este grupo recibe la semana del club ({ $day } a las { $time }). Si en una semana nada empieza ni se acaba, no llega.
digest-set-here = Anotado: la semana del club llega en este tema ({ $day } a las { $time }). Si en una semana nada empieza ni se acaba, no llega.
digest-topic-closed = El tema en el que debía llegar está cerrado, por eso llega aquí. Quien administra o ayuda puede elegir otro: escribid en él /club digest con día, hora y «aquí».
digest-off = Anotado: la semana del club ya no se envía.
digest-needs-frost = Antes hacen falta las fechas de heladas del club: /club frost 05-15 10-05

## Ayudantes del club

helpers-none = Todavía no te ayuda nadie.
helpers-head = Pueden cambiar los ajustes y las listas del club: { $names }.
helper-how-to = Para nombrar a alguien, responde a un mensaje suyo con /club helper add; para quitarlo, con /club helper remove.
helper-added = { $name } ya puede cambiar los ajustes del club y sus listas. Con /club helpers ves a quienes pueden.
helper-already = { $name } ya ayuda al club.
helper-removed = { $name } ya no ayuda al club.
helper-unknown = Esa persona no ayuda al club, así que todo queda igual.
helper-is-bot = Un bot, o alguien que escribe de forma anónima, no puede ayudar. Responde al mensaje de una persona con /club helper add.
helpers-too-many = Al club lo ayudan { $most } personas como mucho, así que todo queda igual. Con /club helpers las ves.
helpers-not-administrator = Solo quien administra este grupo puede nombrar a sus ayudantes.
button-helper-remove = Quitar a { $name }

## De qué club se habla

which-club = En privado valen para ti las fechas de heladas, la zona horaria, el idioma y las listas de { $club }. ¿Las de qué club deben valer?
which-club-gone = Ya no eres de ese club, así que todo queda igual. Con /club ves tus clubes.
club-chosen = Desde ahora, en privado vale { $club }: sus fechas de heladas, zona horaria, idioma y listas, donde no tengas las tuyas.
start-several = También eres de { $others }. Desde ahora, en privado vale { $club }; con /club lo cambias.
button-club = { $club }
button-which-club = Otro club

## Las listas del club

lists-head = Listas de { $club }. Suscríbete a una y sus cultivos están en tu plan:
lists-line = • { $list }: { $count ->
    [0] aún sin cultivos
    [one] un cultivo
   *[other] { $count } cultivos
}
lists-line-mine = • { $list }: { $count ->
    [0] aún sin cultivos
    [one] un cultivo
   *[other] { $count } cultivos
}, en tu plan
lists-none = { $club } aún no tiene listas. En el grupo, quien lo administra o lo ayuda empieza una así: /list nueva Huerto de salsa: tomate, pimiento, cebolla
lists-no-club = Las listas son de un club. Pulsa el botón de mi saludo en el grupo de tu club y prueba otra vez.
lists-how-to-short = Con /list ayuda ves cómo cambiarlas.
lists-how-to = Para quienes administran y sus ayudantes, en el grupo:
    /list nueva Salsa: tomate, pimiento – empezar una lista
    /list salsa + albahaca, eneldo – poner cultivos
    /list salsa - pimiento – quitar uno
    /list renombra salsa = Picante – otro nombre
    /list nota salsa: para el bancal de la entrada – una línea de texto
    /list comparte salsa – un código con que otro club la copia
    /list copia ABCD-EFGH – copiar la lista de otro club
    /list archiva salsa – guardarla

    Para cualquiera:
    /list salsa – verla
    /list suscribe salsa, /list deja salsa – suscribirse o no
lists-only-in-group = Las listas del club se cambian en su grupo, donde veo quién puede.
lists-not-coordinator = Las listas solo las cambia quien administra este grupo y sus ayudantes. Tus propios cultivos son con /grow y /drop.
lists-too-many = Un club guarda { $most } listas como mucho, así que todo queda igual. Con /list archiva guardas una.
list-crops = Cultivos: { $crops }
list-without-crops = Aún no tiene cultivos.
list-subscribers = { $count ->
    [0] Aún sin suscripciones.
    [one] Un miembro la sigue.
   *[other] { $count } miembros la siguen.
}
list-left-out = Dejas fuera: { $crops }. Con /grow un cultivo vuelve.
list-gone = Esa lista no está entre las del club, así que todo queda igual. Con /lists las ves.
list-unknown = Aquí no conozco ninguna lista “{ $written }”. Hay estas: { $lists }.
list-which = ¿Qué lista? Empieza por su nombre, así: /list salsa + albahaca
list-which-crop = “{ $word }” puede referirse a { $crops }. Envíalo otra vez con el nombre completo.
list-new-how-to = ¿Cómo se llamará la lista? Así: /list nueva Salsa: tomate, pimiento, cebolla
list-name-too-long = El nombre de una lista tiene { $most } letras como mucho, así que todo queda igual.
list-name-is-verb = El nombre de una lista no puede empezar por “{ $word }”, porque así me dicen qué hacer. Elige otro nombre; todo queda igual.
list-name-taken = Ya hay una lista “{ $list }”, así que todo queda igual. Elige otro nombre, o cambia antes el de esa.
list-made = Lista nueva, “{ $list }”: { $crops }.
list-made-empty = Lista nueva, “{ $list }”, aún sin cultivos.
list-copied = Copiada como lista de este club, “{ $list }”: { $crops }.
list-made-next = Los miembros se suscriben con el botón de la lista, aquí o en privado con /lists.
list-too-many-crops = Una lista tiene { $most } cultivos como mucho, así que todo queda igual.
list-added = Ahora en “{ $list }”: { $crops }.
list-already = Ya en “{ $list }”: { $crops }.
list-add-how-to = ¿Qué cultivos? Así: /list { $list } + albahaca, eneldo
list-taken-off = Fuera de “{ $list }”: { $crops }.
list-not-on-it = No está en “{ $list }”: { $crops }.
list-take-off-how-to = ¿Qué cultivos? Así: /list { $list } - albahaca
list-who-hears = { $count ->
    [one] El único miembro que la sigue se entera en su mensaje de la próxima mañana.
   *[other] Los { $count } miembros que la siguen se enteran en su mensaje de la próxima mañana.
}
list-rename-how-to = ¿Cómo se llamará? Así: /list renombra { $list } = Picante
list-renamed = “{ $list }” se llama desde ahora “{ $name }”.
list-note-how-to = ¿Qué línea de texto? Así: /list nota { $list }: para el bancal de la entrada
list-note-too-long = La línea de texto de una lista tiene { $most } letras como mucho, así que todo queda igual.
list-noted = “{ $list }” ya tiene su línea de texto. Con /list { $list } la ves.
list-note-gone = “{ $list }” ya no tiene línea de texto.
list-archived = “{ $list }” queda guardada: ya no está en el plan de nadie, y ningún código lleva a ella.
list-reopened = “{ $list }” está otra vez, también para quienes la seguían. Compártela de nuevo si otro club necesita su código.
list-not-archived = Esa lista no está guardada, así que todo queda igual. Con /lists ves las del club.
list-shared = En otro club, quien lo coordina copia “{ $list }” con esto:
    /list copia { $code }
    Vale hasta que la lista se guarde; los cambios posteriores se quedan en cada club.
list-copy-how-to = Envía el código que te dio el otro club, así: /list copia ABCD-EFGH
list-code-unknown = Ninguna lista se comparte como “{ $written }”. Pide el código otra vez al otro club.
list-subscribed = “{ $list }” está ahora en tu plan.
list-subscribed-already = “{ $list }” ya está en tu plan.
list-unsubscribed = “{ $list }” ya no está en tu plan. Lo que elegiste por tu cuenta se queda.
list-not-subscribed = “{ $list }” no estaba en tu plan.
list-open-private = Para los recordatorios, abre nuestro chat privado y pulsa Iniciar.
list-other-club-holds = Ahora mismo, en privado vale para ti { $club }; allí lo cambias con /club.
list-anonymous = Aquí escribes de forma anónima, así que no sé de quién es el plan. /lists funciona en nuestro chat privado.
list-news-came = Tu club puso en “{ $list }”: { $crops }. Así que está en tu plan.
list-news-went = Tu club quitó de “{ $list }”: { $crops }.
list-news-both = Tu club cambió “{ $list }”. Nuevo: { $came }. Fuera: { $went }.
list-news-archived = Tu club guardó la lista “{ $list }”. Se va con ella: { $crops }.
list-news-stay = Siguen en tu plan de todos modos: { $crops }.
list-news-next = Con /mycrops ves tu plan; con /grow un cultivo se queda, y con /drop queda fuera.
button-list = { $list }
button-all-lists = ‹ Todas las listas
button-lists = Las listas del club
button-subscribe = Suscribirme
button-unsubscribe = Dejar la lista

## Problemas

went-wrong = Algo falló de mi lado. Todo queda igual; inténtalo otra vez, por favor.
unknown-command = No conozco ese comando. Con /help ves lo que sé hacer.

## Menús de comandos (256 caracteres como mucho cada uno)

menu-ask = ¿Puedo empezar esto ya?
menu-now = ¿Qué puedo hacer hoy?
menu-grow = Poner cultivos en mi lista
menu-drop = Quitar un cultivo de mi lista
menu-mycrops = Mi lista
menu-lists = Las listas de cultivos del club
menu-sown = Sembré algo
menu-sowings = Mis siembras
menu-variety = Mis variedades y sus sobres
menu-undo = Deshacer el último cambio
menu-trays = Qué plántulas comparten bandeja
menu-frost = Mis fechas de heladas
menu-zone = Mi zona horaria
menu-hold = Esperar a que pase el frío
menu-place = Dónde crecen mis plántulas
menu-hour = Cuándo llega mi recordatorio
menu-holiday = Sin mensajes por un tiempo
menu-quiet = Días sin mensajes
menu-weekends = Cuándo trabajo en el huerto
menu-settings = Mis ajustes
menu-export = Todo lo que se guarda sobre mí
menu-forget = Borrarlo todo
menu-help = Qué sabe hacer el bot
menu-club = Los ajustes del club

## Plan

plan-line = { $days }: { $what } (vale la pena hasta el { $last }). { $why }
plan-why-sow-indoors = Para que las plantas tengan { $age } cuando salgan, contando desde la última helada, hacia el { $last_frost }.
plan-why-pot-up = De tres a cuatro semanas después de la siembra, con las primeras hojas verdaderas abiertas.
plan-why-harden-off = De 7 a 14 días antes de salir fuera.
plan-why-plant-out = Las plantas aclimatadas aguantan noches de hasta { $nights }; la última helada es hacia el { $last_frost }.
plan-why-sow-outdoors = La tierra tiene que mantenerse a { $minimum } o más; la última helada es hacia el { $last_frost }.
plan-why-autumn = Para el otoño, contando hacia atrás desde la primera helada, hacia el { $first_frost }.
plan-why-overwinter = Para el año que viene, cerca de la primera helada, el { $first_frost }.
plan-why-months = Deciden el calor y la lluvia: la época de siembra empieza hacia el { $starts }, y el calor vuelve hacia el { $heat }.
plan-why-months-rain = Decide la lluvia: la época de siembra empieza hacia el { $starts }, y la lluvia vuelve hacia el { $heat }.
plan-why-cover = Tu { $cover } mueve esta fecha.
plan-why-second-year = Con siembra a principios de verano, las flores llegan al año siguiente.
plan-why-before = Lleva { $days } antes de { $then }.
plan-why-hedge = Es una segunda oportunidad, además de la primera siembra: si una falla, queda la otra.
plan-why-repeat = Una siembra más, si quieres seguir cosechando, después de la del { $last }.
plan-why-repeat-heat = Una siembra más, si quieres seguir cosechando, después de la del { $last }: el calor del verano acaba pronto con cada una.
plan-why-sown = Se cuenta desde la siembra del { $sown }.
