//! A Spanish member: the commands as the help shows them, questions, sowings, holds, varieties.

use crate::harness::{Person, World, shown};

const SPRING: &str = "2026-04-15T12:00:00Z";

async fn gardener(world: &World) -> Person {
    let ana = world.member("Ana").await;
    ana.asks("/language es").await;
    ana.asks("/units metric").await;
    ana.asks("/frost 05-15 10-05").await;
    ana
}

#[tokio::test(flavor = "multi_thread")]
async fn what_the_help_shows_is_understood() {
    let world = World::start(SPRING).await;
    let ana = gardener(&world).await;
    insta::assert_snapshot!(ana.asks("/frost 15/5 5/10").await.text, @"I could not read that as frost dates. Send the last spring frost and the first autumn frost as month and day, like this: /frost 05-15 10-05. If it never freezes: /frost none");
    insta::assert_snapshot!(ana.asks("/frost 15 de mayo y 5 de octubre").await.text, @"I could not read that as frost dates. Send the last spring frost and the first autumn frost as month and day, like this: /frost 05-15 10-05. If it never freezes: /frost none");
    insta::assert_snapshot!(shown(&ana.asks("/grow tomate, albahaca, choclo, papa").await), @"
    On your list: tomato.
    You can still sow tomatoes indoors: late, but worth it until May 9.
    I don't know “albahaca”. Try its everyday name, such as “tomato”.
    I don't know “choclo”. Try its everyday name, such as “tomato”.
    I don't know “papa”. Did you mean Chinese cabbage?
    [Add Chinese cabbage]
    [Undo]
    ");
    insta::assert_snapshot!(shown(&ana.asks("/sown albahaca 12 el 3 de abril").await), @"I don't know “albahaca el de abril”. Try its everyday name, such as “tomato”.");
    insta::assert_snapshot!(shown(&ana.asks("/sowings").await), @"I know of no sowing of yours that still grows. Tell me what you sow, like this: /sown basil 12 on 3 April");
    insta::assert_snapshot!(shown(&ana.asks("/undo").await), @"Off your list again: tomato.");
    insta::assert_snapshot!(ana.asks("/hold 7 días").await.text, @"I can hold for 1 to 60 days, like this: /hold 7 days. Nothing changed.");
    insta::assert_snapshot!(ana.asks("/hold fin").await.text, @"I can hold for 1 to 60 days, like this: /hold 7 days. Nothing changed.");
    insta::assert_snapshot!(shown(&ana.asks("/trays tomate 12, albahaca 6").await), @"
    Trays for what you sow indoors April 15–29:
    Tray 1, 48 cells of 1½ inches (heat 65–85 °F): tomatoes 12. Upright, out at 6–8 weeks.
    I don't know “albahaca”. Try its everyday name, such as “tomato”.
    ");
    insta::assert_snapshot!(shown(&ana.asks("/variety tomate Farolito: en interior 6-8 semanas antes de la última helada, 75 días").await), @"I found no number of a seed packet there, so nothing changed. Like this: /variety tomato Early Lantern: start indoors 6-8 weeks before last frost, 75 days");
    insta::assert_snapshot!(ana.asks("/latitude 33 S").await.text, @"
    Noted: about 33 degrees south.
    At that latitude intermediate onions do well (bulbs from 12 to 14 hours of daylight), and short-day ones (10 to 12 hours) do too.
    ");
    insta::assert_snapshot!(ana.asks("/settings").await.text, @"
    Your settings
    • Frost: last frost around May 15, first frost around October 5
    • Time zone: not given, so UTC
    • Reminders at 7:00 AM
    • Units: °F and inches
    • Language: English
    ");
    insta::assert_snapshot!(shown(&ana.asks("/drop todo").await), @"Your list is empty, so there is nothing to take off.");
}

#[tokio::test(flavor = "multi_thread")]
async fn sentences_do_what_commands_do() {
    let world = World::start(SPRING).await;
    let ana = gardener(&world).await;
    insta::assert_snapshot!(shown(&ana.asks("Cultivo jitomates y calabacitas").await), @"I did not understand that; ask me, for example, “can I start cucumbers now?” or “when do I plant out tomatoes?”");
    insta::assert_snapshot!(shown(&ana.asks("¿qué cultivo?").await), @"I don't know “qué cultivo”. Try its everyday name, such as “tomato”.");
    insta::assert_snapshot!(shown(&ana.asks("Ya no cultivo calabacitas").await), @"I don't know “cultivo calabacitas”. Try its everyday name, such as “tomato”.");
    insta::assert_snapshot!(shown(&ana.asks("ayer sembré 12 albahacas").await), @"I did not understand that; ask me, for example, “can I start cucumbers now?” or “when do I plant out tomatoes?”");
    insta::assert_snapshot!(shown(&ana.asks("no salió nada de albahaca").await), @"I did not understand that; ask me, for example, “can I start cucumbers now?” or “when do I plant out tomatoes?”");
    insta::assert_snapshot!(shown(&ana.asks("cultivo bajo luces").await), @"I did not understand that; ask me, for example, “can I start cucumbers now?” or “when do I plant out tomatoes?”");
    insta::assert_snapshot!(shown(&ana.asks("tengo un túnel").await), @"I did not understand that; ask me, for example, “can I start cucumbers now?” or “when do I plant out tomatoes?”");
    insta::assert_snapshot!(ana.asks("avísame a las 8").await.text, @"I did not understand that; ask me, for example, “can I start cucumbers now?” or “when do I plant out tomatoes?”");
    insta::assert_snapshot!(ana.asks("mi latitud es 40 grados norte").await.text, @"I did not understand that; ask me, for example, “can I start cucumbers now?” or “when do I plant out tomatoes?”");
    insta::assert_snapshot!(ana.asks("ola de frío de una semana").await.text, @"I did not understand that; ask me, for example, “can I start cucumbers now?” or “when do I plant out tomatoes?”");
    insta::assert_snapshot!(ana.asks("aquí nunca hiela").await.text, @"I did not understand that; ask me, for example, “can I start cucumbers now?” or “when do I plant out tomatoes?”");
    insta::assert_snapshot!(ana.asks("calor de junio a septiembre, lluvia de junio a octubre").await.text, @"I did not understand that; ask me, for example, “can I start cucumbers now?” or “when do I plant out tomatoes?”");
}

#[tokio::test(flavor = "multi_thread")]
async fn questions_follow_one_another() {
    let world = World::start(SPRING).await;
    let ana = gardener(&world).await;
    insta::assert_snapshot!(ana.asks("puedo senbrar pepinos ya?").await.text, @"I did not understand that; ask me, for example, “can I start cucumbers now?” or “when do I plant out tomatoes?”");
    insta::assert_snapshot!(ana.asks("y afuera?").await.text, @"I don't know “y afuera”. Try its everyday name, such as “tomato”.");
    insta::assert_snapshot!(ana.asks("entonces cuándo?").await.text, @"I don't know “entonces cuándo”. Try its everyday name, such as “tomato”.");
    insta::assert_snapshot!(shown(&ana.asks("y los porotos?").await), @"I did not understand that; ask me, for example, “can I start cucumbers now?” or “when do I plant out tomatoes?”");
    insta::assert_snapshot!(ana.asks("puedo arrancar el coche ahora").await.text, @"I did not understand that; ask me, for example, “can I start cucumbers now?” or “when do I plant out tomatoes?”");
    insta::assert_snapshot!(shown(&ana.asks("puedo sembrar fresas").await), @"I did not understand that; ask me, for example, “can I start cucumbers now?” or “when do I plant out tomatoes?”");
    insta::assert_snapshot!(ana.asks("cuantas semillas de albahaca para 12 plantas").await.text, @"I did not understand that; ask me, for example, “can I start cucumbers now?” or “when do I plant out tomatoes?”");
    insta::assert_snapshot!(ana.asks("brotaron 14 de 20 semillas de puerro").await.text, @"I did not understand that; ask me, for example, “can I start cucumbers now?” or “when do I plant out tomatoes?”");
    insta::assert_snapshot!(ana.asks("la tierra está a 14 °C, puedo sembrar guisantes?").await.text, @"I did not understand that; ask me, for example, “can I start cucumbers now?” or “when do I plant out tomatoes?”");
}
