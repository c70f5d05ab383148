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
verdict-too-late = Ya es tarde para { $what } esta temporada.
verdict-too-late-for-spring = En la tanda de primavera ya es tarde para { $what }.
verdict-season-too-short = Tu temporada es demasiado corta para cultivar { $crops } sin ayuda.

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
why-months-bears-heat = Son plantas que aguantan el calor y la lluvia; las frenan las semanas más frescas, más o menos hasta el { $coolest }.
why-months-too-late = La época de siembra acabó el { $ended }; lo que empiece { $when } se toparía con el calor, que vuelve hacia el { $heat }.
why-months-short = Entre el { $starts } y el calor, hacia el { $heat }, no da tiempo.
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
instead-sow-outdoors = En su lugar, siembra directamente en la tierra: vale la pena hasta el { $until }.
instead-buy-plants = En su lugar, compra plantas jóvenes: trasplantar vale la pena hasta el { $until }.
instead-autumn = La siembra de otoño empieza el { $next }.
instead-next-season = Los buenos días de la próxima temporada empiezan el { $next }.
instead-faster-variety = Puede ayudar una variedad más rápida, comprar plantas ya crecidas o un túnel.

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
ripens-tight = Muy justo: quizá dé tiempo a cosechar { $crops }.
ripens-no = No: esta temporada no da tiempo a cosechar { $crops }.
blooms-yes = Sí, da tiempo. Primeras flores de { $crops }, más o menos: { $ready }.
blooms-tight = Muy justo: quizá dé tiempo a ver flores de { $crops }.
blooms-no = No: esta temporada no da tiempo a ver flores de { $crops }.
ripens-why = La cuenta es para { $what } el { $on }. La temporada acaba hacia el { $end }: aunque vaya lento, { $spare ->
    [one] sobra { $spare } día
   *[other] sobran { $spare } días
}.
ripens-why-short = La cuenta es para { $what } el { $on }. Fechas probables: { $ready }. La temporada acaba hacia el { $end }.
ripens-what-helps = Ayuda una variedad más rápida, comprar las plantas o cubrirlas en otoño.
ripens-no-frost = Ninguna helada acaba tu temporada, así que hay tiempo de sobra para { $crops }; deciden el calor y los meses de lluvia.
ripens-next-year = { $crops }: la cosecha o la flor llega al año siguiente de la siembra, así que este año ninguna helada mete prisa.

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
not-understood = Eso no lo entiendo. Pregúntame, por ejemplo, “¿puedo sembrar pepinos ya?” o “¿cuándo trasplanto los tomates?”.

## Por la mañana

morning-greeting = ¡Buenos días! Hoy, { $date }:
morning-check-forecast = Antes de sacar plantas sensibles al frío, aclimátalas y mira qué noches trae la semana.
morning-more = { $count ->
    [one] Espera una tarea más
   *[other] Esperan { $count } tareas más
}: /now
job-good-until = { $what }: buen momento hasta el { $until }.
job-last-good-day = { $what }: hoy es el último día bueno.
job-late = { $what }: tarde, pero vale la pena hasta el { $last }.
job-early = { $what }: pronto pero posible con cuidado; mejor desde el { $from }.
job-for-autumn = { $what } para el otoño
job-of-sowing = { $what } (siembra del { $date })
job-check = { $what }: ya deberían verse.
job-check-resow = { $what }: si aún no se ve nada, siembra otra vez.
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
notice-skip = Esta temporada ya no te lo recordaré.
notice-undone = Deshecho.
notice-job-gone = Esa tarea ya no está en tu plan, así que todo queda igual. Con /now ves las que hay.
notice-old-button = Este botón es de un mensaje antiguo y ya no puedo leerlo. Todo queda igual. Con /help ves lo que sé hacer.
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
    Quien administra el grupo puede poner las fechas de heladas y la zona horaria del club con /club.
button-open-private = Recibir mis recordatorios
help-short = Respondo a preguntas como “¿puedo sembrar pepinos ya?”, “¿cuándo trasplanto los tomates?”, “¿a qué profundidad siembro guisantes?” y “¿madurarán las calabazas?”, y te escribo las mañanas en que haya algo que hacer.
help-private = Respondo a preguntas como “¿puedo sembrar pepinos ya?”, “¿cuándo trasplanto los tomates?”, “¿a qué profundidad siembro guisantes?” y “¿madurarán las calabazas?”.

    /grow tomate, albahaca – pon cultivos en tu lista; te los recuerdo
    /drop albahaca – quita uno
    /mycrops – tu lista
    /now – lo que puedes hacer hoy
    /sown albahaca 12 el 3 de abril – dime qué sembraste y sigo sus propias fechas
    /sowings – tus siembras y lo que viene después
    /undo – deshacer el último cambio
    /frost 05-15 10-05 – tu última y tu primera helada, mes y día
    /zone Madrid – tu zona horaria
    /hour 7:00 – cuándo llega tu recordatorio
    /place – dónde crecen tus plántulas
    /hold 7 días – esperar a que pase una ola de frío
    /settings – todo de un vistazo

    Para no recibir más recordatorios, vacía tu lista con /drop todo.
help-group = Pregunta con /ask, por ejemplo “/ask ¿puedo sembrar pepinos ya?”, o responde a uno de mis mensajes. Con /now ves lo que puedes empezar; /club es para quien administra el grupo. Los recordatorios llegan en privado.

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
frost-months-not-understood = No reconozco meses ahí. ¿Cuáles son demasiado calurosos y cuáles lluviosos? Por ejemplo: calor de junio a septiembre, lluvia de junio a octubre. Todo queda igual.
frost-months-all = Si todos los meses son de calor o de lluvia, no queda ninguno para sembrar. Nombra solo los más calurosos y los más lluviosos, por ejemplo: calor de junio a septiembre, lluvia de junio a octubre. Todo queda igual.
frost-unset = Tus fechas de heladas están borradas; valen las del club, si las tiene.
frost-show = Tu huerto: { $frost }.
frost-show-club = Para ti valen las fechas de tu club: { $frost }.
frost-show-none = Todavía no sé tus fechas de heladas.
frost-how-to = Envía la última helada de primavera y la primera de otoño como mes y día, así: /frost 05-15 10-05. Si nunca hiela: /frost none
frost-only-last = Tengo el { $last } como tu última helada de primavera. ¿Cuándo es la primera de otoño? Envía las dos: /frost { $code } 10-05
frost-not-understood = No reconozco ahí fechas de heladas.
frost-impossible = El calendario no tiene ningún día “{ $written }”.
frost-same-day = Las dos fechas son el mismo día; la última helada de primavera y la primera de otoño tienen que ser distintas.
frost-too-short = Entre esas fechas solo hay { $days } días; revisa las dos.
frost-only-autumn = A la primera helada de otoño le falta la última de primavera; envía las dos.
frost-first-needed = Para eso necesito tus fechas de heladas. Envíalas así, mes y día: /frost 05-15 10-05
frost-first-needed-group = Para eso necesito fechas de heladas. Quien administra el grupo puede poner las del club con /club, y tú las tuyas con /frost 05-15 10-05
button-average = Son promedios
button-trusted = Confío en ellas
button-undo = Deshacer
button-frost = Fechas de heladas
button-zone = Zona horaria
button-hour = Hora del recordatorio
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
sown-future = El { $date } aún no ha llegado, así que todo queda igual. Cuéntamelo después de sembrar.
sown-long-ago = Del { $date } hace más de un año, así que todo queda igual.
sown-bad-count = En una siembra puedo anotar de 1 a { $most } plantas, así que todo queda igual.
sown-planted = Sin anotar: aquí solo guardo siembras, y lo de { $crops } es plantar.
sown-bad-warmth = A esa temperatura no brota ninguna semilla, así que todo queda igual. Revisa el número.
sown-without-frost = Con tus fechas de heladas (/frost 05-15 10-05) puedo decirte cuándo salen fuera las plantas.
sowing-up = • Debería brotar: { $days }. ¿Aún nada el { $resow }? Siembra otra vez.
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
sow-again-other-way = De esa manera ya es tarde, pero puedes { $what }: vale la pena hasta el { $last }.
sow-again-too-late = Esta temporada ya es tarde para sembrar { $crops } otra vez; quizá sirvan plantas compradas. El próximo buen día para sembrar es el { $next }.
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
undo-crops-off = Otra vez fuera de tu lista: { $crops }.
undo-crops-on = Otra vez en tu lista: { $crops }.
notice-undo-stale = Después cambió otra cosa, así que no deshago nada. Con /undo deshaces el último cambio.

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
hold-how-to = En una ola de frío, dime cuántos días quieres esperar para aclimatar y trasplantar, de 1 a 60: /hold 7 días. Para terminar la pausa: /hold fin
hold-how-to-club = En una ola de frío, dime cuántos días espera el club, de 1 a 60: /club hold 7 días. Para terminar la pausa: /club hold fin
hold-show = En pausa hasta el { $date }.
hold-bad = La pausa puede durar de 1 a 60 días, así: /hold 7 días. Todo queda igual.
hold-bad-club = La pausa puede durar de 1 a 60 días, así: /club hold 7 días. Todo queda igual.
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
language-how-to = ¿Qué idioma?
language-set = Desde ahora te hablo en este idioma: { $language }.
language-unknown = Todavía no hablo “{ $written }”. Hablo { $languages }.
language-name-en = English
language-name-en-GB = English (UK)
language-name-en-US = English (US)
language-name-es = Español
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
settings-units-metric = • Unidades: °C y cm
settings-units-customary = • Unidades: °F y pulgadas
settings-language = • Idioma: { $language }
settings-club = • Club: { $club }
settings-hot-and-wet = • Meses de calor y de lluvia: { $months }
settings-unreachable = Los recordatorios llegan en nuestro chat privado; ábrelo una vez y envía /start.

## Club

club-head = { $club }, ajustes para quien no tenga los suyos propios
club-only-in-group = /club funciona en el grupo de tu club, donde puedo ver quién lo administra.
club-not-administrator = Los ajustes del club solo los cambia quien administra este grupo. Con /frost pones los de tu huerto.
club-role-unknown = No pude comprobar quién administra el grupo. Inténtalo otra vez en un minuto, por favor.
club-frost-set = Anotado para el club: { $frost }. Es una temporada de { $days ->
    [one] { $days } día
   *[other] { $days } días
}. Quien tenga fechas propias las conserva.
club-frost-set-no-end = Anotado para el club: { $frost }. Quien tenga fechas propias las conserva.
club-frost-unset = El club ya no tiene fechas de heladas.
club-frost-how-to = Responde a este mensaje con la última helada de primavera y la primera de otoño del club, en promedio, como mes y día: 05-15 10-05
club-zone-set = La zona horaria del club es { $zone }.
club-zone-how-to = Responde a este mensaje con una ciudad o el nombre de una zona, así: Madrid
club-language-set = El idioma del club es: { $language }.
club-how-to = Cámbialos aquí, o en una línea: /club frost 05-15 10-05, /club zone Madrid, /club language es, /club hold 7 días

## Problemas

went-wrong = Algo falló de mi lado. Todo queda igual; inténtalo otra vez, por favor.
unknown-command = No conozco ese comando. Con /help ves lo que sé hacer.

## Menús de comandos (256 caracteres como mucho cada uno)

menu-ask = ¿Puedo empezar esto ya?
menu-now = ¿Qué puedo hacer hoy?
menu-grow = Poner cultivos en mi lista
menu-drop = Quitar un cultivo de mi lista
menu-mycrops = Mi lista
menu-sown = Sembré algo
menu-sowings = Mis siembras
menu-undo = Deshacer el último cambio
menu-frost = Mis fechas de heladas
menu-zone = Mi zona horaria
menu-hold = Esperar a que pase el frío
menu-place = Dónde crecen mis plántulas
menu-hour = Cuándo llega mi recordatorio
menu-settings = Mis ajustes
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
plan-why-cover = Tu { $cover } mueve esta fecha.
plan-why-second-year = Con siembra a principios de verano, las flores llegan al año siguiente.
plan-why-before = Lleva { $days } antes de { $then }.
plan-why-hedge = Es una segunda oportunidad, además de la primera siembra: si una falla, queda la otra.
plan-why-repeat = Una siembra más, si quieres seguir cosechando, después de la del { $last }.
plan-why-repeat-heat = Una siembra más, si quieres seguir cosechando, después de la del { $last }: el calor del verano acaba pronto con cada una.
plan-why-sown = Se cuenta desde la siembra del { $sown }.
