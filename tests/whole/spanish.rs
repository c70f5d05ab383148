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
    insta::assert_snapshot!(ana.asks("/frost 15/5 5/10").await.text, @"");
    insta::assert_snapshot!(ana.asks("/frost 15 de mayo y 5 de octubre").await.text, @"");
    insta::assert_snapshot!(shown(&ana.asks("/grow tomate, albahaca, choclo, papa").await), @"");
    insta::assert_snapshot!(shown(&ana.asks("/sown albahaca 12 el 3 de abril").await), @"");
    insta::assert_snapshot!(shown(&ana.asks("/sowings").await), @"");
    insta::assert_snapshot!(shown(&ana.asks("/undo").await), @"");
    insta::assert_snapshot!(ana.asks("/hold 7 días").await.text, @"");
    insta::assert_snapshot!(ana.asks("/hold fin").await.text, @"");
    insta::assert_snapshot!(shown(&ana.asks("/trays tomate 12, albahaca 6").await), @"");
    insta::assert_snapshot!(shown(&ana.asks("/variety tomate Farolito: en interior 6-8 semanas antes de la última helada, 75 días").await), @"");
    insta::assert_snapshot!(ana.asks("/latitude 33 S").await.text, @"");
    insta::assert_snapshot!(ana.asks("/holiday hasta el 3 de julio").await.text, @"");
    insta::assert_snapshot!(ana.asks("/holiday fin").await.text, @"");
    insta::assert_snapshot!(ana.asks("/quiet domingo").await.text, @"");
    insta::assert_snapshot!(ana.asks("/quiet no").await.text, @"");
    insta::assert_snapshot!(ana.asks("/settings").await.text, @"");
    insta::assert_snapshot!(shown(&ana.asks("/drop todo").await), @"");
}

#[tokio::test(flavor = "multi_thread")]
async fn sentences_do_what_commands_do() {
    let world = World::start(SPRING).await;
    let ana = gardener(&world).await;
    insta::assert_snapshot!(shown(&ana.asks("Cultivo jitomates y calabacitas").await), @"");
    insta::assert_snapshot!(shown(&ana.asks("¿qué cultivo?").await), @"");
    insta::assert_snapshot!(shown(&ana.asks("Ya no cultivo calabacitas").await), @"");
    insta::assert_snapshot!(shown(&ana.asks("ayer sembré 12 albahacas").await), @"");
    insta::assert_snapshot!(shown(&ana.asks("no salió nada de albahaca").await), @"");
    insta::assert_snapshot!(shown(&ana.asks("cultivo bajo luces").await), @"");
    insta::assert_snapshot!(shown(&ana.asks("tengo un túnel").await), @"");
    insta::assert_snapshot!(ana.asks("avísame a las 8").await.text, @"");
    insta::assert_snapshot!(ana.asks("mi latitud es 40 grados norte").await.text, @"");
    insta::assert_snapshot!(ana.asks("ola de frío de una semana").await.text, @"");
    insta::assert_snapshot!(ana.asks("aquí nunca hiela").await.text, @"");
    insta::assert_snapshot!(ana.asks("calor de junio a septiembre, lluvia de junio a octubre").await.text, @"");
}

#[tokio::test(flavor = "multi_thread")]
async fn questions_follow_one_another() {
    let world = World::start(SPRING).await;
    let ana = gardener(&world).await;
    insta::assert_snapshot!(ana.asks("puedo senbrar pepinos ya?").await.text, @"");
    insta::assert_snapshot!(ana.asks("y afuera?").await.text, @"");
    insta::assert_snapshot!(ana.asks("entonces cuándo?").await.text, @"");
    insta::assert_snapshot!(shown(&ana.asks("y los porotos?").await), @"");
    insta::assert_snapshot!(ana.asks("puedo arrancar el coche ahora").await.text, @"");
    insta::assert_snapshot!(shown(&ana.asks("puedo sembrar fresas").await), @"");
    insta::assert_snapshot!(ana.asks("cuantas semillas de albahaca para 12 plantas").await.text, @"");
    insta::assert_snapshot!(ana.asks("brotaron 14 de 20 semillas de puerro").await.text, @"");
    insta::assert_snapshot!(ana.asks("la tierra está a 14 °C, puedo sembrar guisantes?").await.text, @"");
}
