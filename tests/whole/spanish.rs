//! A Spanish member: the commands as the help shows them, questions, sowings, holds, varieties.

use crate::harness::{Person, World, shown};

const SPRING: &str = "2026-04-15T12:00:00Z";

async fn gardener(world: &World) -> Person {
    let ana = world.member("Ana").await;
    ana.asks("/settings").await;
    ana.presses("Language").await;
    ana.presses("Español").await;
    ana.asks("/frost 05-15 10-05").await;
    ana
}

#[tokio::test(flavor = "multi_thread")]
async fn what_the_help_shows_is_understood() {
    let world = World::start(SPRING).await;
    let ana = gardener(&world).await;
    insta::assert_snapshot!(ana.asks("/frost 15/5 5/10").await.text, @"
    Anotado para tu huerto: última helada hacia el 15 de mayo, primera helada hacia el 5 de octubre. Es una temporada de 143 días.
    ¿Son promedios (la mitad de los años es peor)? ¿O fechas en las que confías (más o menos un año de cada diez es peor)?
    ");
    insta::assert_snapshot!(ana.asks("/frost 15 de mayo y 5 de octubre").await.text, @"
    Anotado para tu huerto: última helada hacia el 15 de mayo, primera helada hacia el 5 de octubre. Es una temporada de 143 días.
    ¿Son promedios (la mitad de los años es peor)? ¿O fechas en las que confías (más o menos un año de cada diez es peor)?
    ");
    insta::assert_snapshot!(shown(&ana.asks("/grow tomate, albahaca, choclo, papa").await), @"
    Añadido a tu lista: tomate, albahaca, maíz dulce y patata.
    Todavía puedes sembrar tomates en interior: es tarde, pero vale la pena hasta el 9 de mayo.
    ");
    insta::assert_snapshot!(shown(&ana.asks("/sown albahaca 12 el 3 de abril").await), @"
    Anotado: albahaca (12), siembra en interior del 3 de abril.
    • Debería brotar: del 8 al 17 de abril. ¿Aún nada el 1 de mayo? Siembra otra vez.
    • Pasar albahaca a una maceta mayor: del 24 de abril al 1 de mayo
    • Aclimatar albahaca: desde el 8 de mayo
    • Trasplantar albahaca al aire libre: desde el 22 de mayo, cuando las noches de la semana no bajen de 10 °C
    • Primera cosecha: del 11 de junio al 1 de julio
    [Deshacer]
    ");
    insta::assert_snapshot!(shown(&ana.asks("/sowings").await), @"
    Una siembra:
    1. Albahaca (12), siembra en interior del 3 de abril. Lo próximo: mirar si asoman plántulas de albahaca, desde el 17 de abril
    [1 dar por perdida]
    ");
    insta::assert_snapshot!(shown(&ana.asks("/undo").await), @"
    Deshecho y olvidado: albahaca (12), siembra en interior del 3 de abril.
    [Rehacer]
    ");
    insta::assert_snapshot!(ana.asks("/hold 7 días").await.text, @"
    En pausa hasta el 22 de abril: hasta entonces no nombro nada que aclimatar ni trasplantar.
    En tu lista no había nada que aclimatar ni trasplantar antes de esa fecha.
    ");
    insta::assert_snapshot!(ana.asks("/hold fin").await.text, @"La pausa terminó; desde hoy vuelvo a nombrarlo todo.");
    insta::assert_snapshot!(shown(&ana.asks("/trays tomate 12, albahaca 6").await), @"
    Bandejas para lo que siembras en interior del 15 al 29 de abril:
    Bandeja 1, 48 celdas de 4 cm (calor: 18–29 °C): tomates 12. Plantas erguidas; salen fuera con 6–8 semanas.
    Bandeja 2, 36 celdas de 5 cm (calor: 18–27 °C): albahaca 6. Plantas erguidas; salen fuera con 4–7 semanas.
    Pasar albahaca a macetas de 9 cm: del 6 al 20 de mayo.
    ");
    insta::assert_snapshot!(shown(&ana.asks("/variety tomate Farolito: en interior 6-8 semanas antes de la última helada, 75 días").await), @"
    Anotado: tomate “Farolito”, siembra en interior 6–8 semanas antes de la última helada y 75 días hasta la cosecha. Desde ahora cuento con eso.
    [Deshacer]
    ");
    insta::assert_snapshot!(ana.asks("/latitude 33 S").await.text, @"
    Anotado: unos 33 grados sur.
    A esa latitud van bien las cebollas de día intermedio (bulbo con 12 a 14 horas de luz), y también las de día corto (de 10 a 12 horas).
    ");
    insta::assert_snapshot!(ana.asks("/holiday hasta el 3 de julio").await.text, @"
    ¡Que lo pases bien! No llegará ningún mensaje antes del 3 de julio. Lo que te pierdas y aún valga la pena entonces va en el primero.
    Esto se acaba antes, así que hazlo antes de irte:
    • Sembrar tomates en interior: tarde, pero vale la pena hasta el 9 de mayo.
    • Poner a brotar patatas a la luz: el último buen día es el 17 de abril. Hazlo antes de plantar patatas.
    • Sembrar albahaca en interior: el último buen día es el 24 de abril.
    • Sembrar maíz dulce en la tierra: el último buen día es el 12 de junio.
    ");
    insta::assert_snapshot!(ana.asks("/holiday fin").await.text, @"¡Qué bueno que volviste! Los mensajes llegan otra vez desde la próxima mañana.");
    insta::assert_snapshot!(ana.asks("/quiet domingo").await.text, @"
    Sin mensajes: domingo. Lo que habría llegado entonces va en el mensaje siguiente, y si entre esos días hay un último buen día, te lo digo antes.
    Pulsa un día para cambiarlo, o escríbelo, así: /quiet domingo
    ");
    insta::assert_snapshot!(ana.asks("/quiet no").await.text, @"
    Los mensajes pueden llegar cualquier día.
    Pulsa un día para cambiarlo, o escríbelo, así: /quiet domingo
    ");
    insta::assert_snapshot!(ana.asks("/settings").await.text, @"
    Tus ajustes
    • Heladas: última helada hacia el 15 de mayo, primera helada hacia el 5 de octubre
    • Zona horaria: sin indicar, así que UTC
    • Recordatorios: 07:00
    • Unidades: °C y cm
    • Idioma: Español
    ");
    insta::assert_snapshot!(shown(&ana.asks("/drop todo").await), @"
    Quitado de tu lista: tomate, albahaca, maíz dulce y patata.
    [Deshacer]
    ");
}

#[tokio::test(flavor = "multi_thread")]
async fn sentences_do_what_commands_do() {
    let world = World::start(SPRING).await;
    let ana = gardener(&world).await;
    insta::assert_snapshot!(shown(&ana.asks("Cultivo jitomates y calabacitas").await), @"
    Añadido a tu lista: tomate y calabacín.
    Todavía puedes sembrar tomates en interior: es tarde, pero vale la pena hasta el 9 de mayo.
    ");
    insta::assert_snapshot!(shown(&ana.asks("¿qué cultivo?").await), @"
    2 cultivos en tu lista:
    • tomate: aún puedes sembrar tomates en interior; tarde, pero vale la pena hasta el 9 de mayo
    • calabacín: ya puedes sembrar calabacines en interior; buen momento hasta el 1 de mayo
    ");
    insta::assert_snapshot!(shown(&ana.asks("Ya no cultivo calabacitas").await), @"
    Quitado de tu lista: calabacín.
    [Deshacer]
    ");
    insta::assert_snapshot!(shown(&ana.asks("ayer sembré 12 albahacas").await), @"
    Anotado: albahaca (12), siembra en interior del 14 de abril.
    • Debería brotar: del 19 al 28 de abril. ¿Aún nada el 12 de mayo? Siembra otra vez.
    • Pasar albahaca a una maceta mayor: del 5 al 12 de mayo
    • Aclimatar albahaca: desde el 8 de mayo
    • Trasplantar albahaca al aire libre: desde el 22 de mayo, cuando las noches de la semana no bajen de 10 °C
    • Primera cosecha: del 11 de junio al 1 de julio

    Añadido a tu lista: albahaca.
    [Deshacer]
    ");
    insta::assert_snapshot!(shown(&ana.asks("no salió nada de albahaca").await), @"
    Qué pena. Anotado que no salió nada: albahaca (12), siembra en interior del 14 de abril.
    Ya puedes sembrar albahaca otra vez; vale la pena hasta el 2 de julio.
    [Sembré otra vez hoy]
    [Deshacer]
    ");
    insta::assert_snapshot!(shown(&ana.asks("cultivo bajo luces").await), @"
    Anotado. Tus plántulas: bajo luces. Protección al aire libre: ninguna.
    Toca lo que corresponda, o dímelo: “cultivo bajo luces”, “tengo una cajonera fría”, “sin protección”.
    [Ventana] [✓ Luces]
    [Alfombrilla térmica] [Invernadero]
    [Manta antiheladas] [Cajonera fría]
    [Túnel] [✓ Sin protección]
    ");
    insta::assert_snapshot!(shown(&ana.asks("tengo un túnel").await), @"
    Anotado. Tus plántulas: bajo luces. Protección al aire libre: túnel.
    Toca lo que corresponda, o dímelo: “cultivo bajo luces”, “tengo una cajonera fría”, “sin protección”.
    [Ventana] [✓ Luces]
    [Alfombrilla térmica] [Invernadero]
    [Manta antiheladas] [Cajonera fría]
    [✓ Túnel] [Sin protección]
    ");
    insta::assert_snapshot!(ana.asks("avísame a las 8").await.text, @"Hora de tus recordatorios: 08:00 (UTC).");
    insta::assert_snapshot!(ana.asks("mi latitud es 40 grados norte").await.text, @"
    Anotado: unos 40 grados norte.
    A esa latitud van bien las cebollas de día largo (bulbo desde 14 horas de luz), y también las de día intermedio (de 12 a 14 horas).
    ");
    insta::assert_snapshot!(ana.asks("ola de frío de una semana").await.text, @"
    En pausa hasta el 22 de abril: hasta entonces no nombro nada que aclimatar ni trasplantar.
    Queda para después: aclimatar tomates.
    ");
    insta::assert_snapshot!(ana.asks("aquí nunca hiela").await.text, @"Anotado: en tu huerto no hiela. ¿Qué meses son demasiado calurosos y cuáles son lluviosos? Por ejemplo: calor de junio a septiembre, lluvia de junio a octubre.");
    insta::assert_snapshot!(ana.asks("calor de junio a septiembre, lluvia de junio a octubre").await.text, @"Anotado: calor de junio a septiembre, lluvia de junio a octubre. Así que cuento con sembrar desde principios de septiembre hasta que vuelva el calor, en junio. Pregúntame, por ejemplo, “¿cuándo puedo sembrar pepinos?”.");
}

#[tokio::test(flavor = "multi_thread")]
async fn questions_follow_one_another() {
    let world = World::start(SPRING).await;
    let ana = gardener(&world).await;
    insta::assert_snapshot!(ana.asks("puedo senbrar pepinos ya?").await.text, @"
    Es un poco pronto para sembrar pepinos en interior, pero puede salir bien.
    Si siembras hoy, las plantas tendrán 5½ semanas cuando puedan salir, hacia el 22 de mayo; lo mejor es 3–5 semanas. Tu última helada, en promedio, es hacia el 15 de mayo.
    Mejor espera hasta el 17 de abril: a estas plantas no les gusta que las muevan. Si empiezas ya, dale a cada una su propia celda grande y mucha luz.
    Cuidado: nunca comas un fruto de esta familia que sepa amargo; escúpelo y deséchalo.
    Cuidado: la semilla puede estar tratada. Lee el sobre, usa guantes y mantenla lejos de niños y animales.
    ");
    insta::assert_snapshot!(ana.asks("y afuera?").await.text, @"
    Todavía no. Espera hasta el 22 de mayo para sembrar pepinos en la tierra.
    Lo más probable es que la tierra aún esté fría (tiene que mantenerse a 16 °C o más; lo mejor es 18–35 °C), y una helada mataría lo que brote. Tu última helada, en promedio, es hacia el 15 de mayo.
    Mejores días: del 22 de mayo al 12 de junio.
    ");
    insta::assert_snapshot!(ana.asks("entonces cuándo?").await.text, @"
    Pepinos, contando desde tu última helada, en promedio hacia el 15 de mayo:
    • Sembrar pepinos en la tierra: del 22 de mayo al 12 de junio; vale la pena hasta el 9 de julio
    ");
    insta::assert_snapshot!(shown(&ana.asks("y los porotos?").await), @"
    “poroto” puede referirse a judías enanas, judías trepadoras o judías escarlata. ¿Cuál quieres decir?
    [judías enanas]
    [judías trepadoras]
    [judías escarlata]
    ");
    insta::assert_snapshot!(ana.asks("puedo arrancar el coche ahora").await.text, @"Eso no lo entiendo; pregúntame, por ejemplo, “¿puedo sembrar pepinos ya?” o “¿cuándo trasplanto los tomates?”.");
    insta::assert_snapshot!(shown(&ana.asks("puedo sembrar fresas").await), @"No conozco “fresas”. Prueba con su nombre de siempre, por ejemplo “tomate”.");
    insta::assert_snapshot!(ana.asks("cuantas semillas de albahaca para 12 plantas").await.text, @"
    Para 12 plantas de albahaca, siembra 28 semillas.
    En celdas: 3 semillas en cada una de 16 celdas, y luego deja una sola planta por celda; vacías, más o menos: 1.
    Es el número más pequeño con una probabilidad del 90 % o más de llegar a esas plantas, si después de brotar se pierde el 10 % de las plántulas.
    La germinación es una estimación y una suposición mía: 60 % para semilla fresca, porque el mínimo legal de Estados Unidos (7 CFR 201.31) no incluye albahaca.
    Para saberlo mejor, pon a brotar 20 semillas en papel húmedo y dime el resultado, así: “brotaron 14 de 20 semillas de albahaca”.
    ");
    insta::assert_snapshot!(ana.asks("brotaron 14 de 20 semillas de puerro").await.text, @"
    Brotaron 14 de 20: el 70 %. En todo el sobre, lo probable es entre el 48 % y el 85 % (intervalo del 95 % según Wilson).
    Del 50 al 80 %: siembra según las plantas que quieras. Pregúntame, por ejemplo, “brotaron 14 de 20 semillas de puerro, ¿cuántas siembro para 12 plantas?”.
    ");
    insta::assert_snapshot!(ana.asks("la tierra está a 14 °C, puedo sembrar guisantes?").await.text, @"
    Adelante: siembra guisantes en la tierra hoy. A 14 °C la tierra tiene calor suficiente, y por fecha vale la pena hasta el 29 de mayo.
    A 14 °C cuenta con 10 días hasta que brote la semilla de guisantes.
    Sale de trazar una línea recta entre 10 °C y 15 °C en los ensayos de Harrington y Minges (1954), con la semilla a 1,3 cm de profundidad.

    Mide a la profundidad de siembra y durante varios días: la tierra tiene que mantenerse así, no solo llegar una vez.
    ");
}
