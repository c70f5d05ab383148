# What the bot says, in German: the verdict first, the reason in numbers, then the next step.
# It says "du", and it is the German of Germany, Austria and Switzerland; dates follow the reader's
# region.
#
# $crops is a crop's plural name ("Gurken") or, for what nobody counts, its name ("Basilikum").
# So the sentences around it take no article and no verb that would depend on it, and it stands
# where nominative and accusative are alike: "Gurken aussäen", "für Gurken", never "mit Gurken".
# No pronoun stands for it ("sie" would be wrong for Basilikum): "die Pflanzen", "der Samen".
# $what is a step in the infinitive ("Gurken drinnen aussäen"), which a modal verb or a colon takes.
# Dates follow "am", "um den", "bis zum", "ab dem"; where a date may be a span, they follow "etwa".
# Lengths of time never stand in the dative, which would be "in 5 Tagen".

## Dates

# A span of days that crosses a month: $from and $to are dates, "17. April" and "1. Mai".
date-range = { $from } bis { $to }

# Die Nummer des ersten Tages eines Monats in einem Datum: $day ist "1".
first-day = { $day }

# The days of a span within one month: $from and $to are day numbers; ". April" stands behind.
day-range = { $from }.–{ $to }

## Lengths of time

# $n is a whole number.
days = { $n ->
    [one] { $n } Tag
   *[other] { $n } Tage
}

# $n is a whole number or a number and a half: "3", "3½".
weeks = { $n ->
    [one] { $n } Woche
   *[other] { $n } Wochen
}

# $from and $to are whole numbers.
days-range = { $to ->
    [one] { $from }–{ $to } Tag
   *[other] { $from }–{ $to } Tage
}

# $from and $to are whole numbers or numbers and a half.
weeks-range = { $to ->
    [one] { $from }–{ $to } Woche
   *[other] { $from }–{ $to } Wochen
}

## Temperatures and lengths

# Two numbers, $low and $high, that stand before a unit.
number-range = { $low }–{ $high }

# The same where a minus sign would meet the dash.
number-range-signed = { $low } bis { $high }

# $n is a number, or a range as above. {"\u00a0"} is a space at which no line breaks.
celsius = { $n }{ "\u00a0" }°C
fahrenheit = { $n }{ "\u00a0" }°F
millimetres = { $n }{ "\u00a0" }mm
centimetres = { $n }{ "\u00a0" }cm

# One inch or a part of one: "½ Zoll".
inch = { $n } Zoll

# More than one inch, or none: "1½ Zoll".
inches = { $n } Zoll

## When

when-now = heute
when-on = am { $date }

## Steps, as they stand in a sentence

step-sow-indoors = { $crops } drinnen aussäen
step-sow-outdoors = { $crops } direkt ins Beet säen
step-soak = Samen für { $crops } einweichen
step-nick = Samen für { $crops } anritzen
step-chill = Samen für { $crops } feucht und kalt stellen
step-chit = { $crops } im Hellen vorkeimen
step-root-slips = für { $crops } aus einer Knolle Stecklinge ziehen
step-check = { $crops } auf Keimlinge prüfen
step-harvest = { $crops } zum ersten Mal ernten
step-first-bloom = { $crops } zum ersten Mal blühen sehen
step-pot-up = { $crops } umtopfen
step-harden-off = { $crops } abhärten
step-plant-out = { $crops } auspflanzen
step-plant = { $crops } pflanzen

## Verdicts

verdict-too-early = Noch nicht. Ab dem { $next } kannst du { $what }.
verdict-early = Etwas früh, aber machbar: { $what }.
verdict-on-time = Nur zu! Du kannst { $when } { $what }.
verdict-on-time-when-nights-allow = Nur zu! Du kannst { $when } { $what }, wenn die Nächte dieser Woche über { $nights } bleiben.
verdict-late = Spät, aber es lohnt sich noch: Du kannst { $when } { $what }.
verdict-second-best = Du kannst { $when } { $what }, aber es gibt einen besseren Weg.
verdict-too-late = Zu spät für diese Saison: { $what }.
verdict-too-late-for-spring = Zu spät für den Frühjahrsanbau: { $what }.
verdict-season-too-short = Ohne Hilfe ist deine Saison für { $crops } zu kurz.
verdict-no-cold = Dein Winter ist zu warm für { $crops }: Ohne Kälte bilden sich keine Knollen.

reason-no-frost-here = Für { $crops } zählen bei dir keine Frostdaten: In deinem Garten friert es nicht.
reason-not-from-seed = Nicht aus Samen: { $crops }.
reason-never-sown-indoors = Nein, { $crops } besser nicht drinnen aussäen.
reason-never-sown-outdoors = Nein, { $crops } hier nicht direkt ins Beet säen: Ohne Anzucht drinnen reicht die Zeit nicht.
reason-never-potted-up = { $crops } umtopfen ist nicht nötig: Der erste Topf genügt bis zum Auspflanzen.
reason-never-set-out = Auszupflanzen gibt es nichts: { $crops } gleich an Ort und Stelle säen.

## One line for each of many crops

short-too-early = { $what }: noch nicht, erst ab dem { $next }.
short-early = { $what }: früh, aber machbar; am besten ab dem { $next }.
short-on-time = { $what }: nur zu, gut bis zum { $until }.
short-late = { $what }: spät, aber lohnend bis zum { $next }.
short-too-late = { $what }: jetzt zu spät; wieder ab dem { $next }.
short-too-late-for-good = { $what }: zu spät, und für einen neuen Versuch ist deine Saison zu kurz.
or-else = Oder: { $line }

## Why

why-too-old = Säst du { $when }, wären die Pflanzen schon { $age } alt, wenn sie um den { $setout } ins Freie können. Mehr als { $most } vertragen sie nicht.
why-age = Säst du { $when }, sind die Pflanzen { $age } alt, wenn sie um den { $setout } ins Freie können; ideal: { $best }.
why-cold-soil = Der Boden ist wohl noch zu kalt: Er sollte dauerhaft mindestens { $minimum } haben, am besten { $best }.
why-cold-soil-and-frost = Der Boden ist wohl noch zu kalt (dauerhaft mindestens { $minimum }, am besten { $best }), und was aufgeht, würde ein Frost töten.
why-soil-check = Prüfe, ob der Boden dauerhaft mindestens { $minimum } hat; am besten sind { $best }.
why-summer-sowing = Gesät wird im Frühsommer, die Blüte kommt im Jahr darauf.
why-autumn-planting = Gepflanzt wird im Herbst, rund um den ersten Frost, für das nächste Jahr.
why-autumn-count = Diese Aussaat ist für den Herbst; gerechnet wird von deinem ersten Frost zurück.
why-cold-nights = Die Nächte sind noch zu kalt: Abgehärtete Pflanzen vertragen { $nights }, bei etwa { $kills } erfrieren sie.
why-bears-cold = Abgehärtete Pflanzen vertragen Nächte bis { $nights }.
why-harden-off = Nimm dir dafür 7 bis 14 Tage, jeden Tag etwas länger draußen, und keine Nacht kälter als { $nights }.
why-pot-up = Am besten gelingt es, sobald die ersten Laubblätter offen sind.
why-late = Beste Zeit: bis zum { $ended }.
why-too-late-harvest = Beginnst du { $when }, käme die erste Ernte um den { $ready }; die Saison endet um den { $end }.
why-too-late-bloom = Beginnst du { $when }, käme die erste Blüte um den { $ready }; die Saison endet um den { $end }.
why-heat = Letzter lohnender Tag: { $ended }; danach ist die Sommerhitze schneller.
why-window-closed = Letzter lohnender Tag: { $ended }.
why-season-too-short = Zwischen deinen Frösten liegen { $days } Tage; auch nach voller Anzucht braucht es noch etwa { $needs } Tage bis zur ersten Ernte.
why-no-frost = Dort entscheiden Hitze und Regenzeit; Pflanztermine für deine Gegend kennt die Gartenberatung vor Ort.
why-months = In deinem Garten entscheiden Hitze und Regen: Gepflanzt wird etwa ab dem { $starts }, und um den { $heat } ist die Hitze zurück.
why-months-rain = In deinem Garten entscheidet der Regen: Gepflanzt wird etwa ab dem { $starts }, und um den { $heat } ist der Regen zurück.
why-months-bears-heat = Hitze und Regen schaden nicht; nur die kühlsten Wochen, bis etwa zum { $coolest }, bremsen.
why-months-too-late = Die Pflanzzeit endete am { $ended }; was { $when } beginnt, käme in die Hitze, die um den { $heat } zurück ist.
why-months-too-late-rain = Die Pflanzzeit endete am { $ended }; was { $when } beginnt, käme in den Regen, der um den { $heat } zurück ist.
why-months-short = Zwischen dem { $starts } und der Hitze um den { $heat } ist die Zeit zu knapp.
why-months-short-rain = Zwischen dem { $starts } und dem Regen um den { $heat } ist die Zeit zu knapp.
cost-continuing = Das kostet etwa { $behind } Erntezeit.
cost-bloom = Das kostet etwa { $behind } Blüte.
cost-once = Erntereif um den { $ready }; die Saison endet um den { $end }.
counted-average = Dein letzter Frost kommt im Mittel um den { $frost }.
counted-average-at-risk = Dein letzter Frost kommt im Mittel um den { $frost }; in etwa einem von zehn Frühjahren friert es noch nach dem { $risk }.
counted-trusted = Du verlässt dich auf den { $frost }.
counted-first-frost = Dein erster Frost kommt um den { $frost }.
## Where it grows

# All three covers take "dein" and "mit deinem".
place-windowsill = auf der Fensterbank
place-lights = unter Lampen
place-heat-mat = auf einer Heizmatte
place-greenhouse = im Gewächshaus
cover-fleece = Vlies
cover-cold-frame = Frühbeet
cover-tunnel = Folientunnel
cover-sooner = Mit deinem { $cover } ist das { $weeks } früher als ohne.
cover-no-sooner = Dein { $cover } hält Nächte und Boden nicht warm genug, um { $crops } früher zu beginnen.
cover-later = Mit deinem { $cover } endet die Ernte etwa { $weeks } später als ohne.
place-line-windowsill = Auf der Fensterbank werden Sämlinge lang und dünn, darum lasse ich { $crops } dort höchstens { $most } alt werden.
place-line-lights = Die Lampen dicht über { $crops } hängen und mit dem Wachsen höher ziehen.
place-line-heat-mat = Deine Heizmatte hält den Boden warm; nimm { $crops } herunter, sobald die Keimlinge zu sehen sind.
place-line-greenhouse = Im Gewächshaus gilt für { $crops }: an sonnigen Tagen lüften, auf kalte Nächte achten.
place-show = Deine Anzucht: { $place }. Schutz draußen: { $cover }.
place-not-said = nicht angegeben
cover-none = keiner
place-how-to = Tipp an, was passt, oder sag es mir: „Ich ziehe unter Lampen an“, „Ich habe ein Frühbeet“, „kein Schutz“.
place-noted = Notiert.
place-bad = Für die Anzucht kenne ich Fensterbank, Lampen, Heizmatte und Gewächshaus, für draußen Vlies, Frühbeet und Folientunnel. „{ $written }“ kenne ich nicht.
button-place = Wo es wächst
button-place-is = ✓ { $name }
button-place-windowsill = Fensterbank
button-place-lights = Lampen
button-place-heat-mat = Heizmatte
button-place-greenhouse = Gewächshaus
button-cover-fleece = Vlies
button-cover-cold-frame = Frühbeet
button-cover-tunnel = Folientunnel
button-cover-none = Kein Schutz
settings-place = • Anzucht: { $place }
settings-cover = • Schutz draußen: { $cover }

## What to do next

next-best-days = Beste Tage: { $days }.
next-good-until = Gut bis zum { $until }, lohnend bis zum { $last }.
next-good-until-only = Gut bis zum { $until }.
next-last-day = Letzter lohnender Tag: { $last }.
next-both = Doppelt hält besser: jetzt einen Teil, und ab dem { $from } einen Teil direkt ins Beet.
care-pot-up = Wenn du jetzt beginnst, topfe einmal um und gib viel Licht. Sonst warte bis zum { $next }.
care-own-cell = Besser bis zum { $next } warten: Die Wurzeln mögen kein Umsetzen. Wenn du jetzt beginnst, gib jeder Pflanze einen eigenen großen Topf und viel Licht.
care-light = Wenn du jetzt beginnst, gib viel Licht und halte die Pflanzen kühl. Sonst warte bis zum { $next }.
care-cover = Nur unter Vlies oder Haube, und nur abgehärtete Pflanzen. Ohne Schutz warte bis zum { $next }.
care-cover-planting = Nur mit Vlies oder Mulch, den du in kalten Nächten darüberziehst. Ohne warte bis zum { $next }.
care-cover-sowing = Nur unter Schutz, oder wo der Boden schon warm genug ist. Sonst warte bis zum { $next }.
care-harden-off = Nur wenn draußen Vlies oder Haube bereitliegt. Sonst warte bis zum { $next }.
how-short = { $depth } tief, Boden um { $warmth }; Keimdauer { $days }.
how-short-surface = Obenauf, Boden um { $warmth }; Keimdauer { $days }.
how-short-spacing = Abstand { $apart }.
other-now = Stattdessen: { $what }. Das geht jetzt, bis zum { $until }.
other-from = Stattdessen ab dem { $from }: { $what }.
better-now = Besser: { $what }. Das geht jetzt, bis zum { $until }.
better-from = Besser ab dem { $from }: { $what }.
instead-sow-outdoors = Stattdessen direkt ins Beet säen: Das lohnt sich bis zum { $until }.
instead-buy-plants = Stattdessen Jungpflanzen kaufen: Auspflanzen lohnt sich bis zum { $until }.
instead-buy-plants-from = Stattdessen Jungpflanzen kaufen: Ab dem { $from } können sie hinaus.
instead-autumn = Die Herbstaussaat beginnt am { $next }.
instead-next-season = In der nächsten Saison geht es am { $next } los.
instead-faster-variety = Was helfen kann: eine schnellere Sorte, große gekaufte Jungpflanzen oder ein Folientunnel.
instead-before-heat = Was helfen kann: eine schnellere Sorte oder große gekaufte Jungpflanzen.
instead-chill-cloves = Was helfen kann: die Zehen ({ $crops }) { $weeks } bei etwa { $cold } kühl halten, trocken und ohne Frost, und vor den kühlsten Wochen pflanzen, bis zum { $date }. Rechne mit kleinen Knollen.

## When

when-head = { $crops }:
when-head-last-frost = { $crops }, gerechnet von deinem letzten Frost, im Mittel um den { $frost }:
when-head-months = { $crops }, gerechnet nach deinen heißen und nassen Monaten:
when-head-first-frost = { $crops }, gerechnet von deinem ersten Frost um den { $frost }:
when-line = • { $what }: { $days }
when-line-late = • { $what }: { $days }; lohnend bis zum { $last }
when-line-autumn = • { $what }, für den Herbst: { $days }; lohnend bis zum { $last }

## How

how-head = { $crops }:
how-from-tubers = • aus Pflanzkartoffeln
how-from-cloves = • aus Zehen, Spitze nach oben
how-from-slips = • aus bewurzelten Stecklingen
how-from-crowns = • aus Wurzelstöcken
how-from-sets = • aus Steckzwiebeln
how-soak = • Samen vor der Aussaat { $lead } einweichen
how-nick = • Samenschale vor der Aussaat anritzen; pass auf deine Finger auf
how-chill = • Samen vor der Aussaat { $lead } feucht und kalt stellen
how-chit = • Knollen vor dem Pflanzen { $lead } im Hellen vorkeimen
how-root-slips = • vor dem Pflanzen { $lead } lang Stecklinge bewurzeln
how-depth = • { $depth } tief säen
how-planting-depth = • { $depth } tief pflanzen
how-surface = • obenauf andrücken, nicht bedecken
how-light = • Lichtkeimer: braucht Licht zum Keimen
how-dark = • Dunkelkeimer: keimt nur im Dunkeln
how-warmth = • Boden am besten { $best }, mindestens { $minimum }
how-days = • Keimdauer { $days }
how-cell = • drinnen: { $seeds ->
    [one] ein Korn
   *[other] { $seeds } Körner
} je Topf von { $cell }; Alter beim Auspflanzen { $age }
how-next-pot = • beim Umtopfen in einen Topf von { $pot }
how-spacing = • Abstand { $apart }, Reihen { $rows }

## Will it ripen

ripens-yes = Ja, für { $crops } reicht die Zeit: erste Ernte etwa { $ready }.
ripens-tight = Knapp: Für { $crops } könnte die Zeit gerade noch reichen, mit höchstens { $spare ->
    [one] { $spare } Tag
   *[other] { $spare } Tagen
} Luft.
ripens-no = Nein: Für { $crops } reicht die Zeit in dieser Saison nicht mehr.
blooms-yes = Ja, für { $crops } reicht die Zeit: erste Blüte etwa { $ready }.
blooms-tight = Knapp: Für { $crops } könnte es gerade noch zur Blüte reichen, mit höchstens { $spare ->
    [one] { $spare } Tag
   *[other] { $spare } Tagen
} Luft.
blooms-no = Nein: Für { $crops } reicht es in dieser Saison nicht mehr zur Blüte.
ripens-when = Zum ersten Mal { $crops }: etwa { $ready }.
blooms-when = { $crops }: Erste Blüte etwa { $ready }.
ripens-not-by-then = Bis dahin nicht. { $crops }: Erste Ernte etwa { $ready }.
blooms-not-by-then = Bis dahin nicht. { $crops }: Erste Blüte etwa { $ready }.
ripens-why = Gerechnet ab dem { $on }: { $what }. Die Saison endet um den { $end }; auch wenn es langsam geht, { $spare ->
    [one] bleibt { $spare } Tag
   *[other] bleiben { $spare } Tage
} Luft.
ripens-if = Das gilt so: { $what }, und zwar am { $on }.
ripens-why-short = Gerechnet ab dem { $on }: { $what }. So weit ist es dann etwa { $ready }.
ripens-sown-indoors = Gerechnet ab deiner Vorkultur vom { $on }.
ripens-sown-outdoors = Gerechnet ab deiner Aussaat im Freien vom { $on }.
ripens-sown-too-early = Deine Aussaat im Freien vom { $on } war zu früh, darum gerechnet ab dem { $from }.
ripens-count-on = Rechne mit den ersten etwa { $ready }.
ripens-spare = Die Saison endet um den { $end }: { $spare ->
    [one] { $spare } Tag
   *[other] { $spare } Tage
} Luft, wenn es langsam geht.
ripens-end = Die Saison endet um den { $end }.
ripens-end-at-risk = Dein erster Frost kommt um den { $end }; in etwa einem von zehn Herbsten friert es bis zum { $risk }.
ripens-end-trusted = Dein verlässliches Datum im Herbst ist der { $end }.
helps-head = Das würde helfen:
helps-earlier = • ein früherer Beginn: { $what }, bis zum { $date }
helps-next-year = • beim nächsten Mal ein früherer Beginn: { $what }, bis zum { $date }
helps-variety-from-setting-out = • eine schnellere oder kleinere Sorte mit höchstens { $days } Tagen ab dem Auspflanzen
helps-variety-from-sowing = • eine schnellere oder kleinere Sorte mit höchstens { $days } Tagen ab der Aussaat
helps-cover = • Schutz im Herbst: Mittleres Vlies hält Frost bis etwa { $fleece } ab, dickes Frostvlies bis etwa { $blanket }
helps-nothing = Nur gekaufte, schon große Pflanzen oder ein Folientunnel bringen vielleicht noch etwas.
ripens-no-frost = Kein Frost beendet deine Saison, für { $crops } ist also Zeit genug; es entscheiden Hitze und Regenzeit.
ripens-next-year = { $crops }: Ernte oder Blüte kommt erst im Jahr nach der Aussaat, kein Frost drängt also in diesem Jahr.
percent = { $n } %
years = { $n ->
    [one] { $n } Jahr
   *[other] { $n } Jahre
}
seed-count = { $crop }: Für { $plants ->
    [one] eine Pflanze
   *[other] { $plants } Pflanzen
} säst du { $seeds ->
    [one] einen Samen
   *[other] { $seeds } Samen
}.
seed-cells = In Töpfchen: je { $each } Samen in { $cells ->
    [one] ein Töpfchen
   *[other] { $cells } Töpfchen
}, auf eine Pflanze ausgedünnt; leer bleiben etwa { $empty }.
seed-cells-single = In Töpfchen: je ein Samen in { $cells ->
    [one] ein Töpfchen
   *[other] { $cells } Töpfchen
}; leer bleiben etwa { $empty }.
seed-count-chance = Das ist die kleinste Zahl, die mit mindestens { $chance } Wahrscheinlichkeit reicht, wenn nach dem Aufgehen { $losses } der Sämlinge verloren gehen.
seed-rate-stated = Gerechnet mit deiner Keimrate von { $rate }.
seed-rate-tested = Gerechnet mit deiner Keimprobe: { $sprouted } von { $tested } gekeimt, { $rate }.
seed-rate-standard-fresh = Die Keimrate ist für frisches Saatgut geschätzt: { $rate }, die Mindestnorm der USA (7 CFR 201.31).
seed-rate-standard-aged = Die Keimrate ist geschätzt: { $rate }, Alter des Saatguts: { $age }. Frisches zählt mit { $fresh }, der Mindestnorm der USA (7 CFR 201.31), und fällt gleichmäßig bis auf die Hälfte (Alter dann: { $life }).
seed-rate-assumed-fresh = Die Keimrate ist geschätzt und meine eigene Annahme: { $rate } für frisches Saatgut, denn in der Mindestnorm der USA (7 CFR 201.31) fehlt { $crop }.
seed-rate-assumed-aged = Die Keimrate ist geschätzt und meine eigene Annahme: { $rate }, Alter des Saatguts: { $age }. Für frisches nehme ich { $fresh }, denn in der Mindestnorm der USA (7 CFR 201.31) fehlt { $crop }; sie fällt gleichmäßig bis auf die Hälfte (Alter dann: { $life }).
seed-better-fresh = Unter { $least } ist frisches Saatgut die bessere Wahl.
seed-test-first = Genauer weißt du es, wenn du 20 Samen auf feuchtem Papier keimen lässt und mir das Ergebnis schreibst: „14 von 20 Samen { $crop } sind aufgegangen“.
seed-too-old = Auf dieses Saatgut ist kein Verlass: Samen für { $crop } halten etwa { $life }, und in diesem Alter ({ $age }) geht kaum noch etwas auf. Nimm frisches, oder lass vorher 20 Samen auf feuchtem Papier keimen.
seed-too-weak = Auf dieses Saatgut ({ $crop }) ist kein Verlass: Bei { $rate } ersetzt du es besser.
seed-which-crop = Für welche Pflanze? Frag zum Beispiel: „Wie viele Basilikumsamen für 12 Pflanzen?“
seed-plants-range = Ich kann Samen für 1 bis { $most } ganze Pflanzen ausrechnen, nicht für { $written }.
seed-per-cell-range = Ich kann mit 1 bis { $most } ganzen Samen je Töpfchen rechnen, nicht mit { $written }.
seed-rate-range = Eine Keimrate liegt zwischen 1 % und 100 %; { $written } % kann nicht sein.
seed-age-range = Ich kann mit höchstens { $most } Jahre altem Saatgut rechnen, nicht mit { $written }.
seed-year-ahead = Das Jahr { $year } kommt erst noch, daraus kann kein Saatgut sein. Welches Jahr steht auf der Packung?
test-result = { $sprouted } von { $tested } gekeimt: { $rate }. Für die ganze Packung liegt die Rate wohl zwischen { $low } und { $high } (95-%-Intervall nach Wilson).
test-replace = Unter 40 %: Ersetze dieses Saatgut.
test-sow-thicker = 40 bis 50 %: Säe dichter als sonst.
test-sow-by-number = 50 bis 80 %: Säe so viele, wie du brauchst. Frag mich zum Beispiel: „{ $sprouted } von { $tested } Samen { $crop } sind aufgegangen, wie viele für 12 Pflanzen?“
test-sow-by-number-plain = 50 bis 80 %: Säe so viele, wie du brauchst. Nenn mir die Pflanze und wie viele du willst, dann rechne ich die Samen aus.
test-sow-as-usual = Über 80 %: Säe wie gewohnt.
test-too-few = Verlässlich wird die Probe erst mit mindestens { $enough } Samen (Iowa State University, 1999).
test-range = Eine Keimprobe zählt ganze Samen, 1 bis { $most } Stück.
test-more-than-tested = { $sprouted } von { $tested } kann nicht sein: Es keimen nie mehr Samen, als in der Probe waren.
emerge-days = Bei { $at } vergehen etwa { $days }, bis { $crops } aufgehen.
emerge-between = Das ist auf gerader Linie zwischen { $low } und { $high } abgelesen, aus den Versuchen von Harrington und Minges (1954), Saattiefe { $depth }.
emerge-tested = So gezählt in den Versuchen von Harrington und Minges (1954), Saattiefe { $depth }.
emerge-too-slow-cold = Mehr als drei Wochen gelten als zu kalt: So lange liegendes Saatgut kann faulen.
emerge-too-slow-hot = Mehr als drei Wochen gelten als zu heiß.
emerge-none-cold = Bei { $at } gehen { $crops } wohl nicht auf: Es ist zu kalt. In den Versuchen ging wenig oder nichts auf (Harrington und Minges, 1954).
emerge-none-hot = Bei { $at } gehen { $crops } wohl nicht auf: Es ist zu heiß. In den Versuchen ging wenig oder nichts auf (Harrington und Minges, 1954).
emerge-uncertain-cold = Bei { $at } gehen { $crops } langsam und ungleichmäßig auf, wenn überhaupt. In den Versuchen ging bei { $none } wenig oder nichts auf, und bei { $counted } dauerte es so lange: { $days } (Harrington und Minges, 1954).
emerge-uncertain-hot = Bei { $at } gehen { $crops } schlecht auf, wenn überhaupt. In den Versuchen dauerte es bei { $counted } so lange: { $days }, und bei { $none } ging wenig oder nichts auf (Harrington und Minges, 1954).
emerge-not-tested = Wie lange { $crops } bei { $at } brauchen, weiß ich nicht: Das wurde nicht geprüft. Es heißt nicht, dass nichts aufgeht.
emerge-no-table = Wie lange { $crops } bei { $at } brauchen, weiß ich nicht: Dafür kenne ich keine Versuche.
emerge-usual = Üblich sind { $days } ({ $best }).
emerge-relative = Geprüft wurde { $relative }, nahe verwandt.
emerge-printings = In einer anderen Ausgabe der Tabelle geht bei { $at } wenig oder nichts auf.
emerge-which-crop = Welche Pflanze? Frag zum Beispiel: „Wie lange brauchen Paprika bei { $at } zum Keimen?“
temperature-beyond = { $at } kann für den Boden nicht stimmen; ich rechne mit { $low } bis { $high }.
soil-go = Los geht’s: Säe { $crops } heute ins Freie. Der Boden ist mit { $at } warm genug, und nach dem Datum lohnt es sich bis zum { $next }.
soil-go-on = Am { $date } kannst du { $crops } ins Freie säen, wenn der Boden { $at } hält; nach dem Datum lohnt es sich bis zum { $next }.
soil-go-believe-soil = Los geht’s: Säe { $crops } ins Freie. Nach dem Datum wäre es erst der { $next }, aber glaub dem Boden: { $at } sind warm genug, und was aufgeht, verträgt etwas Frost.
soil-go-no-date = Nach dem Boden geht es: { $at } sind warm genug, um { $crops } ins Freie zu säen.
soil-wait-believe-soil = Noch nicht: Das Datum würde passen, aber glaub dem Boden. { $at } sind für { $crops } zu kalt; warte, bis er mindestens { $warm } hält.
soil-wait-no-date = Noch nicht: { $at } sind für { $crops } zu kalt. Warte, bis der Boden mindestens { $warm } hält.
soil-wait-both = Noch nicht, da sind sich Boden und Datum einig: { $at } sind für { $crops } zu kalt. Säe, wenn der Boden mindestens { $warm } hält, aber nicht vor dem { $next }.
soil-wait-frost = Noch nicht: Für { $crops } ist der Boden mit { $at } warm genug, aber glaub dem Datum. Was aufgeht, würde ein Frost töten; warte bis zum { $next }.
soil-wait-cover = Nur unter Schutz: Für { $crops } ist der Boden mit { $at } warm genug, aber glaub dem Datum. Was aufgeht, würde ein Frost töten; ohne Schutz warte bis zum { $next }.
soil-wait-window = Noch nicht: Für { $crops } ist der Boden mit { $at } warm genug, aber glaub dem Datum. Die nächste Aussaat beginnt am { $next }.
soil-wait-cooler = Jetzt nicht: { $at } sind für { $crops } zu heiß, da geht wenig auf. Warte, bis der Boden höchstens { $cool } hat.
soil-too-late = Für { $crops } ist es nach dem Datum zu spät, wie warm der Boden auch ist. Die nächsten guten Tage beginnen am { $next }.
soil-too-late-for-good = Für { $crops } ist es nach dem Datum zu spät, wie warm der Boden auch ist.
soil-needs = Nötig für { $crops }: mindestens { $minimum }, am besten { $best }.
soil-above = Über { $maximum } ist auf { $crops } kein Verlass.
soil-above-the-least = Das liegt für { $crops } über dem Nötigen ({ $minimum }) und unter dem Besten ({ $best }), kann also langsam gehen; Versuche bei dieser Temperatur kenne ich nicht.
soil-good = Das liegt für { $crops } im besten Bereich, { $best }.
soil-frozen = Gefrorener Boden gibt dem Samen kein Wasser; vor dem Tauen geht nichts auf.
soil-measure = Miss in Saattiefe und mehrere Tage lang: Der Boden muss so warm bleiben, nicht nur einmal so warm sein.
soil-list-head = Bei { $at } im Boden am { $date }, nach Boden und Datum zusammen:
soil-list-none = Bei { $at } im Boden ist am { $date } nichts ins Freie zu säen.
soil-list-go = Ins Freie säen: { $crops }
soil-list-slow = Geht, aber langsam: { $crops }
soil-list-frost = Warm genug, aber Frost würde töten, was aufgeht: { $crops }
soil-list-cold = Vom Datum her richtig, aber der Boden ist zu kalt: { $crops }

## What now

now-head = Das kannst du heute, am { $date }, beginnen:
now-head-on = Das kannst du am { $date } beginnen:
now-nothing = Am { $date } ist nichts zu beginnen ({ $kind }). Genieß den Garten.
now-no-frost = In deinem Garten friert es nicht, also sagen Frostdaten nicht, was jetzt dran ist. Es entscheiden Hitze und Regenzeit; Pflanztermine für deine Gegend kennt die Gartenberatung vor Ort.
now-until = { $crop } (bis { $date })
now-from = { $crop } (am besten ab { $date })
now-more = {" "}und { $count } weitere
group-late = { $how }, spät, aber noch lohnend:
group-on-time = { $how }, jetzt gut:
group-early = { $how }, früh, aber mit Sorgfalt machbar:
group-sow-indoors = drinnen aussäen
group-sow-outdoors = direkt ins Beet säen
group-plant-out = auspflanzen oder pflanzen
group-harden-off = abhärten
group-pot-up = umtopfen
kind-crops = deine Pflanzen
kind-vegetables = Gemüse
kind-herbs = Kräuter
kind-flowers = Blumen

## Cautions

caution-poisonous-plant = Vorsicht: Pflanze und Samen sind giftig. Halte Kinder und Haustiere davon fern.
caution-raw-beans = Vorsicht: Rohe Bohnen sind giftig; koche sie gut durch, bevor jemand sie isst.
caution-broad-bean-favism = Vorsicht: Wer Favismus (G6PD-Mangel) hat, darf diese Bohnen nicht essen; frag eine Ärztin oder einen Arzt.
caution-bitter-squash = Vorsicht: Iss nie eine Frucht dieser Familie, die bitter schmeckt; spuck sie aus und wirf sie weg.
caution-green-potatoes = Vorsicht: Iss keine grünen oder gekeimten Kartoffeln, und halte Kinder von Beeren und Laub fern.
caution-skin-irritant = Vorsicht: Der Saft kann die Haut in der Sonne verbrennen; trag Handschuhe und lange Ärmel.
caution-treated-seed = Vorsicht: Samen kann gebeizt sein. Lies die Packung, trag Handschuhe und halte Kinder und Tiere fern.
caution-heat-and-water = Vorsicht: Halte Lampen, Heizungen, Heizmatten und ihre Stecker trocken, benutze sie nach Anleitung und beachte die örtlichen Vorschriften für Elektroinstallationen.
caution-dusty-compost = Vorsicht: Feuchte staubige Erde an, bevor du sie anfasst, atme den Staub nicht ein und wasch dir die Hände.

## Words and names

which-crop = Was meinst du mit „{ $word }“: { $crops }?
which-or-outside = „{ $word }“ kann zwei Pflanzen heißen. Meinst du { $outside }? Dafür habe ich keine Termine; diese Antwort gilt der anderen.
which-or-outside-ask = „{ $word }“: Meinst du { $crop }? Für { $outside } habe ich keine Termine.
unknown-crop = „{ $written }“ kenne ich nicht. Versuch es mit dem gewöhnlichen Namen, zum Beispiel „Tomate“.
unknown-crop-near = „{ $written }“ kenne ich nicht. Vielleicht { $near }?
not-understood = Das habe ich nicht verstanden. Frag mich zum Beispiel „Kann ich jetzt Gurken aussäen?“ oder „Wann pflanze ich Tomaten aus?“
question-without-crop = Welche Pflanze meinst du? Schick mir ihren Namen.
month-all = Das geht den ganzen { $month } lang.
month-part = Im { $month } geht das so: { $days }.
month-none = Kein Tag im { $month } passt dafür.
# Stands above a line for each of many crops.
month-reckoned = Gerechnet für den { $date }:
# $written ist ein vergangener Tag, etwa „gestern“.
date-gone-by = „{ $written }“ ist vorbei, also gilt das für heute. Wenn du da gesät hast, sag es mir so: /sown { $crop } { $written }
date-impossible = Den Tag „{ $written }“ gibt es im Kalender nicht. Frag noch einmal mit einem Tag wie „{ $example }“.
date-unclear = Welcher Tag mit „{ $written }“ gemeint ist, kann ich nicht sagen. Frag noch einmal mit einem Tag wie „{ $example }“.

## Mornings

morning-greeting = Guten Morgen! { $date }:
morning-check-forecast = Bevor etwas Empfindliches hinauskommt, sieh dir die Nächte der Woche an und härte es erst ab.
morning-more = { $count ->
    [one] Noch eine Arbeit wartet
   *[other] Noch { $count } Arbeiten warten
}: /now
morning-coming = Das kommt diese Woche:
morning-coming-line = • { $date }: { $what }
job-good-until = { $what }: gut bis zum { $until }.
job-last-good-day = { $what }: heute ist der letzte gute Tag.
job-last-good-is = { $what }: Der letzte gute Tag ist der { $until }.
job-late = { $what }: spät, aber lohnend bis zum { $last }.
job-early = { $what }: früh, aber mit Sorgfalt machbar, am besten ab dem { $from }.
job-for-autumn = { $what }, für den Herbst
job-of-sowing = { $what } (gesät am { $date })
job-check = { $what }: Jetzt sollte etwas zu sehen sein.
job-check-resow = { $what }: Wenn jetzt nichts zu sehen ist, säe noch einmal.
job-check-nothing = { $what }: Noch nichts zu sehen? { $then }
job-harvest = { $what }: etwa jetzt.
job-worth-until = { $what }: lohnend bis zum { $last }.
job-before = Danach: { $then }.
job-hedge = Wenn du magst, als zweite Chance neben der Aussaat drinnen.
job-repeat = Wenn du mehr davon willst: Zuletzt gesät hast du am { $last }.
job-repeat-heat = Wenn du mehr davon willst: Zuletzt gesät hast du am { $last }, und Hitze beendet jede Aussaat bald.
job-on-surface = Drück den Samen obenauf an und bedecke ihn nicht.
job-harden-off = { $what }: 7 bis 14 Tage lang, solange die Nächte über { $nights } bleiben.
job-when-nights-allow = { $what }, sobald die Nächte der Woche über { $nights } bleiben.
button-done = { $number } erledigt
button-up = { $number } ist aufgegangen
button-not-up = { $number } nichts aufgegangen
button-up-undo = { $number } ist aufgegangen · zurück
button-not-up-undo = { $number } nicht aufgegangen · zurück
button-later = später
button-skip = auslassen
button-done-undo = { $number } ist erledigt · zurück
button-skipped-undo = { $number } ist ausgelassen · zurück
button-later-undo = { $number } später · zurück
notice-done = Notiert: am { $date } erledigt.
notice-came-up = Notiert: am { $date } aufgegangen.
notice-not-up = Notiert: nichts aufgegangen.
notice-later = Ich melde mich damit wieder am { $date }.
notice-later-too-late = Heute ist der letzte Tag, an dem es sich lohnt, also hat sich nichts geändert.
notice-skip = In dieser Saison erinnere ich nicht mehr daran.
notice-undone = Zurückgenommen.
notice-job-gone = Diese Arbeit steht nicht mehr in deinem Plan, also hat sich nichts geändert. /now zeigt, was ansteht.
notice-old-button = Dieser Knopf gehört zu einer älteren Nachricht, ich kann ihn nicht mehr lesen. Nichts hat sich geändert. /help zeigt, was ich kann.
notice-not-yours = Das gehört jemandem, der danach gefragt hat, also hat sich nichts geändert. Frag mich selbst, dann bekommst du deines.
notice-private-only = Mach das bitte in unserem privaten Chat.

## Meeting people

start-private = Hallo { $name }! Ich sage dir, was du wann aussäen, abhärten und auspflanzen kannst.
    Sag mir, was du anbaust (/grow Tomaten, Basilikum), und ich schreibe dir an den Morgen, an denen etwas ansteht.
start-joined = Du gehörst zu { $club }.
start-token-unknown = Diese Einladung gilt nicht mehr; drück noch einmal den Knopf in der Gruppe deines Vereins.
start-need-frost = Zuerst: Wann friert es bei dir? Schick mir den mittleren letzten Frost im Frühjahr und den ersten im Herbst, Monat vor Tag, so: /frost 05-15 10-05
start-has-frost = Ich rechne mit: { $frost }. Mit /frost änderst du das für deinen Garten.
start-need-zone = In welcher Zeitzone bist du? Schick mir eine Stadt, so: /zone Berlin. Bis dahin nehme ich UTC.
group-greeting = Hallo! Ich helfe beim richtigen Zeitpunkt für Aussaat und Pflanzung. Frag mich mit einem Befehl, zum Beispiel /ask kann ich jetzt Gurken aussäen?, oder antworte auf eine meiner Nachrichten.
    Für Erinnerungen am Morgen öffne einen privaten Chat mit mir: Ich darf nicht zuerst schreiben.
    Frostdaten und Zeitzone des Vereins stellt ein Admin mit /club ein, Pflanzenlisten führt er mit /list.
button-open-private = Erinnerungen bekommen
help-short = Ich beantworte Fragen wie „Kann ich jetzt Gurken aussäen?“, „Wann kommen Tomaten raus?“, „Wie tief säe ich Erbsen?“ und „Werden Kürbisse noch reif?“, und ich erinnere dich an den Morgen, an denen etwas ansteht.
help-private = Ich beantworte Fragen wie „Kann ich jetzt Gurken aussäen?“, „Wann kommen Tomaten raus?“, „Wie tief säe ich Erbsen?“ und „Werden Kürbisse noch reif?“, und ich rechne: „Wie viele Basilikumsamen für 12 Pflanzen?“, „14 von 20 Lauchsamen sind aufgegangen“, „Der Boden hat 14 °C, kann ich Erbsen säen?“

    /grow Tomaten, Basilikum – Pflanzen auf deine Liste setzen; ich erinnere dich daran
    /drop Basilikum – eine von der Liste nehmen
    /mycrops – deine Liste
    /lists – die Listen deines Vereins, zum Abonnieren
    /now – was du heute tun kannst
    /sown Basilikum 12 am 3. April – sag mir, was du gesät hast, und ich rechne ab diesem Tag
    /sowings – deine Aussaaten und wie es weitergeht
    /variety Tomate Frühe Laterne, 75 Tage – mit den Zahlen einer Packung rechnen
    /undo – die letzte Änderung zurücknehmen
    /trays Tomate 12, Basilikum 6 – welche Sämlinge in eine Schale passen
    /frost 05-15 10-05 – dein letzter und dein erster Frost
    /place – wo du anziehst
    /hold 7 Tage – einen Kälteeinbruch abwarten
    /zone Berlin – deine Zeitzone
    /hour 7:00 – wann deine Erinnerung kommt
    /holiday bis 3. Juli – keine Nachrichten vor diesem Tag
    /quiet Sonntag – keine Nachrichten an diesem Wochentag
    /weekends – Arbeiten aufs Wochenende verschieben
    /settings – alles auf einen Blick
    /export – alles, was ich über dich gespeichert habe, als Datei
    /forget – es löschen

    Keine Erinnerungen mehr? Leere deine Liste mit /drop alle.
help-group = Frag mit /ask, zum Beispiel „/ask kann ich jetzt Gurken aussäen?“, oder antworte auf eine meiner Nachrichten. /now zeigt, was du beginnen kannst, /lists die Listen des Vereins zum Abonnieren; /club ist für Admins. Hier rechne ich mit den Daten des Vereins; was deinen eigenen Garten betrifft, und Erinnerungen kommen privat.

## Manners in a group

# Das letzte Wort einer Nachricht, mit dem ein Mitglied die Gruppe die Antwort lesen lässt.
share-word = öffentlich
own-answered = Ich habe dir privat geantwortet. Dürfen es alle lesen, beende deine Nachricht mit „{ $word }“.
own-pointer = Da geht es um deinen eigenen Garten, also bleibt es unter uns. Öffne mit dem Knopf unseren privaten Chat und frag mich dort.
group-more = Dazu gehört noch mehr, auch Warnungen, wo es welche gibt.
button-our-chat = Unseren Chat öffnen
button-read-on = Privat weiterlesen
notice-read-on = Ich habe dir privat geschrieben.
notice-question-gone = Diese Frage ist zu lange her. Bitte stell sie noch einmal.

## Inline queries

inline-need-frost = Sag mir zuerst deine Frostdaten
inline-ask = Eine Pflanze mit diesem Namen kenne ich nicht; frag mich privat
inline-now = Was man jetzt beginnen kann

## My data

data-private-only = Über deine Daten spreche ich nur privat. Öffne mit dem Knopf unseren Chat und schick { $command } dort.
export-caption = Alles, was ich über dich gespeichert habe, als JSON. Ist die Datei verschickt, behalte ich keine Kopie davon. /forget löscht alles.
forget-ask = Das löscht alles, was ich über dich gespeichert habe: deinen Namen und deine Einstellungen, deine Liste ({ $crops ->
    [one] eine Pflanze
   *[other] { $crops } Pflanzen
}), deine Aussaaten ({ $sowings }), was du mir von Arbeiten gesagt hast, bei welchen Vereinen du bist, und jede Erinnerung, die noch käme. Deine Vereine selbst bleiben, wie sie sind. Zurücknehmen lässt es sich nicht; mit /export bekommst du vorher eine Kopie.
    Wenn du das willst, drück den Knopf oder schick die Worte „{ $word }“.
forget-word = vergiss mich
button-forget = Alles löschen
button-keep = Behalten
forget-kept = Nichts wurde gelöscht.
forget-done = Erledigt: Alles, was ich über dich gespeichert hatte, ist gelöscht, und es kommt keine Erinnerung mehr. Das ist meine letzte Nachricht. Wenn du einmal neu beginnen willst, schick /start. Gutes Gedeihen!
notice-forget-old = Diese Frage ist zu alt für eine Antwort, und nichts wurde gelöscht. Schick /forget noch einmal.

## Frost

frost-words = letzter Frost um den { $last }, erster Frost um den { $first }
frost-words-trusted = letzter Frost bis zum { $last }, erster Frost ab dem { $first }, verlässliche Daten
frost-words-last-only = letzter Frost um den { $last }, kein Frost im Herbst
frost-words-free = kein Frost
frost-set = Für deinen Garten notiert: { $frost }. Das ist eine Saison von { $days ->
    [one] { $days } Tag
   *[other] { $days } Tagen
}.
frost-set-no-end = Für deinen Garten notiert: { $frost }.
frost-set-spans = Sie geht über den Jahreswechsel, wie auf der Südhalbkugel.
frost-which-basis = Sind das Mittelwerte (in der Hälfte der Jahre kommt es schlimmer)? Oder Daten, auf die du dich verlässt (etwa ein Jahr von zehn ist schlimmer)?
frost-set-free = Notiert: In deinem Garten friert es nicht. Welche Monate sind dort zu heiß, welche sind nass? Zum Beispiel: heiß Juni bis September, nass Juni bis Oktober.
frost-hot-and-wet = Notiert: { $months }. Ich plane das Pflanzen also ab Anfang { $starts }, bis im { $heat } die Hitze zurückkommt. Frag mich zum Beispiel „Wann kann ich Bohnen säen?“
frost-only-wet = Notiert: { $months }. Ich plane das Pflanzen also ab Anfang { $starts }, bis im { $heat } der Regen zurückkommt.
months-no-hot = Heiße Monate hast du keine genannt, also rechne ich ohne Hitze; um sie zu ergänzen, schick { $command } und dann beides.
months-how-to = Ich kenne für diesen Garten keine heißen und nassen Monate; schick { $command }, dann frage ich danach und plane damit.
frost-months-not-understood = Darin konnte ich keine Monate lesen. Welche Monate sind zu heiß, welche sind nass? Zum Beispiel: heiß Juni bis September, nass Juni bis Oktober. Nichts hat sich geändert.
frost-months-all = Wenn jeder Monat heiß oder nass ist, bleibt keiner zum Pflanzen. Nenn nur die heißesten und die nassesten Monate, zum Beispiel: heiß Juni bis September, nass Juni bis Oktober. Nichts hat sich geändert.
frost-unset = Deine eigenen Frostdaten sind gelöscht; nun gelten die deines Vereins, falls er welche hat.
frost-show = Dein Garten: { $frost }.
frost-show-club = Für dich gelten die Daten deines Vereins: { $frost }.
frost-show-none = Deine Frostdaten kenne ich noch nicht.
frost-how-to = Schick mir den letzten Frost im Frühjahr und den ersten im Herbst, Monat vor Tag, so: /frost 05-15 10-05. Wenn es nie friert: /frost none
frost-soon = Die Wettervorhersage sehe ich nicht, aber wenn Frost kommt: hol Jungpflanzen herein und deck empfindliche Pflanzen im Beet vor der Dämmerung mit Vlies ab. Soll das Auspflanzen warten, schick /hold 7 Tage.
frost-only-last = Als letzten Frost im Frühjahr habe ich den { $last }. Wann ist der erste im Herbst? Schick mir beide: /frost { $code } 10-05
# Gefragt bei Daten wie 5/6 und 10/5, mit einer Taste für jede der beiden Lesarten.
frost-which-way = Steht da der Monat zuerst oder der Tag? Drück, was du meinst.
frost-not-understood = Das konnte ich nicht als Frostdaten lesen.
frost-impossible = Den Tag „{ $written }“ gibt es im Kalender nicht.
frost-same-day = Beide Daten sind derselbe Tag; der letzte Frost im Frühjahr und der erste im Herbst müssen verschieden sein.
frost-too-short = Zwischen dem { $last } und dem { $first } liegen nur { $days } Tage ohne Frost, also habe ich beide nicht notiert.
frost-unlikely = Ich lese das so: { $frost }. Das wären { $days } Tage ohne Frost, und das ist selten; deshalb ist noch nichts notiert.
frost-only-autumn = Zum ersten Frost im Herbst gehört ein letzter im Frühjahr; schick mir beide.
frost-first-needed = Dafür brauche ich deine Frostdaten. Schick sie mir, Monat vor Tag, so: /frost 05-15 10-05
frost-first-needed-group = Dafür brauche ich Frostdaten. Die des Vereins stellt ein Admin mit /club ein. Privat rechne ich mit deinen eigenen: /frost 05-15 10-05
button-frost-meant = Sie stimmen
button-average = Es sind Mittelwerte
button-trusted = Ich verlasse mich darauf
button-undo = Rückgängig
button-undo-old = Zurücknehmen
button-put-back = Wiederherstellen
button-frost = Frostdaten
button-zone = Zeitzone
button-hour = Uhrzeit
button-quiet = Ruhetage
button-holiday = Urlaub
button-holiday-over = Zurück aus dem Urlaub
button-language = Sprache
button-metric = °C und cm
button-customary = °F und Zoll

## Crops

grow-how-to = Was baust du an? Schick mir die Namen, so: /grow Tomaten, Basilikum
grow-added = Auf deiner Liste: { $crops }.
grow-already = Schon auf deiner Liste: { $crops }.
grow-first-up = Als Nächstes ab dem { $date }: { $what }.
grow-late-up = Du kannst noch { $what }: spät, aber lohnend bis zum { $date }.
grow-now-up = Du kannst jetzt { $what }, gut bis zum { $date }.
grow-which = „{ $word }“ kann mehreres heißen: { $crops }. Was davon baust du an?
drop-how-to = Was soll ich von der Liste nehmen? Schick mir die Namen, so: /drop Basilikum
drop-done = Von deiner Liste genommen: { $crops }.
drop-not-there = Nicht auf deiner Liste: { $crops }.
drop-left-out = Aus deinem Plan gelassen: { $crops }. An { $lists } ändert sich nichts; mit /grow kommt eine Pflanze zurück.
drop-unsubscribed = Nicht mehr in deinem Plan: { $lists }.
drop-nothing = Deine Liste ist leer, da gibt es nichts wegzunehmen.
mycrops-empty = Deine Liste ist leer. Schick mir, was du anbaust, so: /grow Tomaten, Basilikum
mycrops-head = Auf deiner Liste { $count ->
    [one] steht eine Pflanze
   *[other] stehen { $count } Pflanzen
}:
mycrops-line = • { $crop }: { $what }, ab dem { $date }
mycrops-line-now = • { $crop }: jetzt { $what }, gut bis zum { $date }
mycrops-line-late = • { $crop }: jetzt { $what }, spät, aber lohnend bis zum { $date }
mycrops-line-plain = • { $crop }
mycrops-by-list = { $line } (aus { $lists })
mycrops-own-and-list = { $line } (deine eigene, und aus { $lists })
mycrops-left-out = Aus den Listen deines Vereins weggelassen: { $crops }
page-of = Seite { $page } von { $pages }
button-next-page = Mehr ›
button-previous-page = ‹ Zurück
button-add = { $crop } dazu
button-crop = { $crop }
button-remind = Erinnere mich: { $crop }

## Jobs of the day

now-jobs-head = { $date }, von deiner Liste:
now-jobs-none = Heute, am { $date }, ist für deine Liste nichts zu tun.

## Sowings

# $crops is a crop's plural name, with its number where that is known.
sowing-count = { $count } × { $crops }
sowing-indoors = { $crops }, am { $date } drinnen gesät
sowing-outdoors = { $crops }, am { $date } ins Beet gesät
sown-noted = Notiert: { $what }.
sown-how-to = Was hast du gesät, wie viel und wann? So zum Beispiel: /sown Basilikum 12 am 3. April
sown-impossible-day = Einen Tag „{ $written }“ kenne ich nicht, also hat sich nichts geändert. So geht es: /sown Basilikum 12 am 3. April
sown-stray = Ich bin nicht sicher, was „{ $written }“ heißen soll, also hat sich nichts geändert. So geht es: /sown Basilikum 12 am 3. April
sown-variety-unknown = Die Sorte „{ $written }“ kenne ich nicht. Damit ich sie mir merke, schick, was auf der Packung steht, so: /variety { $crop } { $written }: 75 Tage
sown-future = Der { $date } kommt erst noch, also hat sich nichts geändert. Sag es mir, wenn du gesät hast.
sown-long-ago = Der { $date } ist über ein Jahr her, also hat sich nichts geändert.
sown-bad-count = Für eine Aussaat kann ich 1 bis { $most } Pflanzen notieren, also hat sich nichts geändert.
sown-planted = Nicht notiert: { $crops } pflanzt du, und hier stehen nur Aussaaten.
sown-bad-warmth = { $at } kann für einen Boden oder Raum nicht stimmen; ich rechne mit { $low } bis { $high }. Es hat sich nichts geändert.
sown-without-frost = Mit deinen Frostdaten (/frost 05-15 10-05) kann ich sagen, wann die Pflanzen hinauskönnen.
amiss-early = Etwas früh: Die guten Tage beginnen am { $from }. Halte die Saat bis dahin unter Schutz.
amiss-too-early = Das ist { $early } zu früh.
amiss-too-early-cold = Das ist { $early } zu früh fürs Beet: Der Boden sollte dauerhaft { $minimum } oder mehr haben.
amiss-too-early-frost = Das ist { $early } zu früh fürs Beet, und Frost würde töten, was aufgeht.
amiss-too-late = Das war zu spät, um sich zu lohnen.
amiss-never-outdoors = Für { $crops } aus Saat im Beet reicht die Zeit hier kaum: Nötig ist eine Anzucht drinnen.
sowing-up = • Sichtbar: { $days }. Bis zum { $resow } noch nichts? { $then }
sowing-up-room = • Geht { $days } auf, in einem Raum mit etwa { $at }. Bis zum { $resow } nichts zu sehen? { $then }
sowing-up-at = • Geht { $days } auf, bei etwa { $at }. Bis zum { $resow } nichts zu sehen? { $then }
sowing-warning = • { $what }
sowing-below-least = Bei { $at } gehen { $crops } wohl nicht auf: Es ist zu kalt. Nötig sind mindestens { $minimum }.
sowing-above-most = Bei { $at } gehen { $crops } wohl nicht auf: Über { $maximum } ist darauf kein Verlass.
sowing-not-tested = Für { $at } kenne ich keine Versuche; das sind die üblichen Tage ({ $best }).
sowing-move-warmer = Stell sie wärmer ({ $best }); ab dann gehen sie { $days } auf.
sowing-ground-warmer = Sie gehen auf, sobald der Boden mindestens { $warm } hält, wenn der Samen bis dahin nicht gefault ist.
sowing-cooler = Stell sie kühler: höchstens { $cool }.
sowing-none-by = • Bis zum { $resow } nichts zu sehen? { $then }
nothing-up-again = Dann säe noch einmal.
nothing-up-again-from = Dann säe ab dem { $date } noch einmal.
nothing-up-other-way = Dann besser: { $what }.
nothing-up-buy = Dann ist es zum Nachsäen zu spät; kauf Jungpflanzen: Auspflanzen lohnt sich bis zum { $date }.
nothing-up-too-late = Dann ist es zum Nachsäen zu spät; der nächste gute Tag ist der { $date }.
nothing-up-too-late-for-good = Dann ist es zum Nachsäen zu spät.
sowing-step = • { $what }: { $days }
sowing-from = • { $what }: ab dem { $from }
sowing-out-mild = • { $what }: ab dem { $from }, wenn die Nächte der Woche über { $nights } bleiben
sowing-harvest = • Erste Ernte: { $days }
sowing-bloom = • Erste Blüte: { $days }
sowing-old = • Beim Auspflanzen sind die Pflanzen { $age } alt, und mehr als { $most } vertragen sie nicht: Topfe sie um und gib ihnen viel Licht.
sowing-too-old = • Beim Auspflanzen sind die Pflanzen { $age } alt, und mehr als { $most } vertragen sie nicht. Säe besser neu, ab dem { $from }.
sowing-too-late = • Reif würde diese Aussaat erst nach deinem ersten Frost; für { $crops } brauchst du dann einen geschützten Platz.
came-up-none-waits = Ich kenne keine Aussaat, die noch aufgehen muss. Sag mir, was du gesät hast, so: /sown Basilikum 12 am 3. April
came-up-which = Schön! Welche Aussaat meinst du?
not-up-which = Schade. Welche Aussaat meinst du?
came-up-noted = Schön, aufgegangen: { $what }.
not-up-noted = Schade. Notiert, dass nichts aufgegangen ist: { $what }.
sow-again-now = Du kannst jetzt noch einmal säen.
sow-again-until = Du kannst jetzt noch einmal { $crops } säen; das lohnt sich bis zum { $last }.
sow-again-from = Warte noch damit: { $crops } kannst du ab dem { $from } wieder säen.
sow-again-too-late = Für { $crops } ist es in dieser Saison zu spät.
sow-again-next = Wieder säen kannst du { $crops } ab dem { $next }.
button-sown-again = Heute neu gesät
notice-sown-already = Diese Aussaat ist schon notiert.
sowings-none = Ich kenne keine Aussaat von dir, die noch wächst. Sag mir, was du gesät hast, so: /sown Basilikum 12 am 3. April
sowings-head = { $count ->
    [one] Eine Aussaat:
   *[other] { $count } Aussaaten:
}
sowings-line = { $what }. Ab dem { $date }: { $step }
sowings-line-now = { $what }. Jetzt: { $step }
sowings-line-plain = { $what }
button-give-up = { $number } aufgegeben
notice-given-up = Aufgegeben. /undo nimmt das zurück.
undo-nothing = Es gibt nichts zurückzunehmen.
undo-sowing-off = Zurückgenommen und vergessen: { $what }.
undo-sowing-as = Wieder wie zuvor: { $what }.
undo-job = Zurückgenommen, was du dazu gesagt hast: „{ $what }“.
# $setting ist der Name dessen, was geändert wurde.
undo-setting = { $setting ->
    [frost] Deine Frostdaten sind wieder wie vorher.
    [zone] Deine Zeitzone ist wieder wie vorher.
    [language] Deine Sprache ist wieder wie vorher.
    [units] Deine Einheiten sind wieder wie vorher.
    [hour] Deine Erinnerung kommt wieder zur alten Zeit.
    [days] Deine Tage ohne Nachrichten sind wieder wie vorher.
    [months] Deine heißen und nassen Monate sind wieder wie vorher.
    [latitude] Wie weit nördlich du bist, steht wieder wie vorher.
    [place] Wo deine Pflanzen wachsen, steht wieder wie vorher.
    [hold] Der Kälteeinbruch steht wieder wie vorher.
   *[other] Deine Einstellungen sind wieder wie vorher.
}
undo-crops-off = Wieder von deiner Liste genommen: { $crops }.
undo-crops-on = Wieder auf deiner Liste: { $crops }.
undo-subscribed = „{ $list }“ ist wieder in deinem Plan.
undo-skip-off = Aus der Liste deines Vereins wieder in deinem Plan: { $crops }.
undo-skip-on = Wieder weggelassen: { $crops }.
notice-undo-stale = Inzwischen hat sich anderes geändert, also habe ich nichts zurückgenommen. /undo nimmt die letzte Änderung zurück.
# $date ist der Tag, an dem die Änderung gemacht wurde; $what sagt, was dann gilt.
undo-old = Deine letzte Änderung ist vom { $date }, darum frage ich lieber nach. Noch ist nichts zurückgenommen. Zurückgenommen hieße das:
    { $what }
undo-made-today = Diese Änderung war von heute um { $time }.
undo-made-on = Diese Änderung war vom { $date }.
# $what sagt, was wieder gilt.
undo-put-back = Wiederhergestellt. Es ist wie vor dem Zurücknehmen:
    { $what }
notice-put-back-stale = Inzwischen hat sich anderes geändert, also habe ich nichts wiederhergestellt.

## Ausgepflanzt oder eingegangen, aufhören, danke, Begriffe

planted-noted = Notiert, ausgepflanzt am { $date }: { $crops }.
planted-early = Früh für { $crops }: deck in kalten Nächten ab. Die guten Tage beginnen am { $from }.
planted-none = Für { $crops } gibt es nichts abzuhaken: Keine Aussaat davon wartet aufs Auspflanzen, und in deinem Plan steht es nicht. /grow setzt etwas auf deine Liste.
potted-noted = Als umgetopft notiert, am { $date }: { $crops }.
hardened-noted = Als abgehärtet notiert, am { $date }: { $crops }.
step-none = Nichts abzuhaken: { $crops } – dafür wartet keine Aussaat, und in deinem Plan steht es nicht. Eine Aussaat notierst du mit /sown
step-future = Der { $date } kommt erst noch, also hat sich nichts geändert. Sag es mir, wenn es getan ist.
planted-future = Der { $date } kommt erst noch, also hat sich nichts geändert. Sag es mir, wenn sie draußen sind.
planted-impossible-day = Einen Tag „{ $written }“ kenne ich nicht, also hat sich nichts geändert. So geht es: ausgepflanzt 6 Brokkoli am 3. Mai
lost-noted = Das tut mir leid. Notiert, dass es damit vorbei ist: { $what }.
lost-none = Das tut mir leid. Ich habe keine Aussaat notiert, zu der das passt ({ $crops }), also hat sich nichts geändert.
lost-some = Das tut mir leid. Weil noch etwas übrig ist ({ $crops }), hat sich nichts geändert. Wenn alles hin ist, sag mir: „alle eingegangen: { $crops }“.
lost-which = Das tut mir leid. Welche davon?
stop-how-to = Noch hat sich nichts geändert. Du bestimmst, wie viel du von mir hörst:
    • eine Zeit lang nichts: /holiday bis 3. Juli
    • an manchen Wochentagen nichts: /quiet Sonntag
    • keine Erinnerungen mehr: /drop alles nimmt alles von deiner Liste
    • ganz gehen: /forget löscht alles, was ich über dich aufbewahre
button-stop-holiday = Pause bis zu einem Tag
button-stop-days = Ruhetage
thanks = Gern geschehen. Möge alles gut aufgehen!
# $night ist eine Temperatur.
term-hardening-off = Abhärten heißt, Sämlinge von drinnen an Sonne, Wind und kühle Nächte zu gewöhnen, bevor sie draußen bleiben: erst einige Stunden im Schatten, dann jeden Tag länger und sonniger, ein bis zwei Wochen lang. Ich nenne es 14 bis 7 Tage vor dem Auspflanzen; hol sie in Nächten unter { $night } herein (University of Maryland Extension, 2023).
term-potting-up = Umtopfen oder Pikieren heißt, einen Sämling in einen größeren Topf zu setzen, bevor seine Wurzeln den alten füllen. Ich nenne es drei bis vier Wochen nach der Aussaat, wenn die ersten richtigen Blätter offen sind, wo es etwas bringt (übliche Praxis).
term-setting-out = Auspflanzen heißt, Sämlinge von drinnen in den Garten zu setzen. Die Tage dafür beginnen so viele Wochen vor oder nach deinem mittleren letzten Frost, wie die Klasse der Pflanze sagt, und bei Pflanzen, die Frost tötet, nicht vor dem Datum, auf das du dich verlässt; dann entscheiden die Nächte der Woche.
term-succession = Folgesaat heißt, alle paar Wochen wieder ein wenig zu säen, damit es immer etwas zu ernten gibt. Nach jeder Aussaat nenne ich die nächste im Abstand, der für die Pflanze gilt, solange sich das Säen ins Beet lohnt; wo Sommerhitze sie beendet, beginnen die Herbstsaaten eine eigene Reihe.
term-cover = Schutz ist, was die Kälte vom Beet hält, und damit rechne ich so: Vlies bringt, was Kälte verträgt, zwei Wochen voran und Empfindliches gar nicht (übliche Praxis; es hält nur leichten Frost ab, Colorado State University Extension), ein Frühbeet bringt, was Kälte verträgt, drei Wochen (University of Vermont Extension), ein Folientunnel alles drei Wochen (übliche Praxis). Sag mir mit /place, was du hast.
term-last-frost = Dein mittlerer letzter Frost ist der Tag, nach dem es in einem von zwei Frühjahren noch friert; Frost ist Luft mit 0 °C oder weniger. Verlässlich ist ein Datum, nach dem es nur etwa in einem von zehn Frühjahren noch friert; ich nehme an, dass es { $days } Tage später liegt (Moyer, University of Delaware, 1970). Von da an wird für die Aussaat zurückgezählt.
term-first-frost = Dein mittlerer erster Frost ist der Tag, vor dem es in einem von zwei Herbsten schon gefroren hat; Frost ist Luft mit 0 °C oder weniger. In etwa einem von zehn Herbsten hat es schon { $days } Tage früher gefroren, was vorher reift, ist also sicher. Herbstsaaten werden vom ersten Frost zurückgezählt.
term-your-frost = Hier rechne ich mit: { $frost }.

variety-name = { $crop } „{ $name }“
by-packet = Nach deiner Packung { $variety }: { $packet }.
short-variety = { $variety }: { $line }
variety-how-to = Schreib mir, was auf der Packung steht, die Pflanze zuerst: /variety Tomate Frühe Laterne: Vorkultur 6-8 Wochen vor dem letzten Frost, 75 Tage
variety-noted = Notiert: { $variety }, { $packet }. Damit rechne ich ab jetzt.
variety-already = { $variety } habe ich schon so; es hat sich nichts geändert.
variety-follows = Plan und Erinnerungen für { $crops } folgen jetzt dieser Sorte; nach den anderen frag mit ihrem Namen.
variety-now-follows = Plan und Erinnerungen folgen jetzt { $variety }.
variety-removed = Vergessen: { $variety }.
variety-crop-again = Für { $crops } rechne ich wieder mit den üblichen Zahlen.
variety-unknown = Eine Sorte „{ $written }“ von dir kenne ich nicht, also hat sich nichts geändert. /variety zeigt deine Sorten.
variety-which-one = Welche meinst du: { $varieties }? Schick es noch einmal mit ihrem Namen; es hat sich nichts geändert.
variety-which = „{ $word }“ kann { $crops } heißen. Schick es noch einmal mit dem vollen Namen; es hat sich nichts geändert.
variety-which-crop = Zu welcher Pflanze gehört die Packung? Schick es noch einmal mit dem Namen der Pflanze am Anfang; es hat sich nichts geändert.
variety-two-crops = Ich lese da zwei Pflanzen, { $crops }. Auf einer Packung ist eine, und keine Sorte darf wie eine Pflanze heißen; es hat sich nichts geändert.
variety-no-numbers = Ich habe da keine Zahl einer Samenpackung gefunden, also hat sich nichts geändert. So geht es: /variety Tomate Frühe Laterne: Vorkultur 6-8 Wochen vor dem letzten Frost, 75 Tage
variety-name-long = Der Name einer Sorte hat höchstens { $most } Zeichen, also hat sich nichts geändert. Schick die Pflanze und einen kurzen Namen, dann die Zahlen.
variety-name-common = „{ $written }“ ist ein zu gewöhnliches Wort, um eine Sorte daran zu erkennen, also hat sich nichts geändert. Gib ihr einen eigenen Namen oder keinen.
variety-too-many = Ich merke mir höchstens { $most } Sorten von dir, also hat sich nichts geändert. /variety zeigt sie; nimm zuerst eine weg.
varieties-head = Deine Sorten:
varieties-line = { $number }. { $variety }: { $packet }
varieties-line-followed = { $number }. { $variety }: { $packet } (Plan und Erinnerungen folgen dieser)
button-follow = { $number } folgen
button-drop-variety = { $number } entfernen
notice-variety-gone = Diese Sorte hat sich seither geändert; /variety zeigt, wie es jetzt ist.
undo-variety-off = Zurückgenommen und vergessen: { $variety }.
undo-variety-as = Wie es vorher war: { $variety }.
packet-indoors = Vorkultur { $weeks } vor dem letzten Frost
packet-set-out = auspflanzen { $when }
packet-in-place = ins Freie säen { $when }
packet-before = { $weeks } vor dem letzten Frost
packet-after = { $weeks } nach dem letzten Frost
packet-around = von { $before } vor bis { $after } nach dem letzten Frost
packet-at-frost = um den letzten Frost
packet-after-danger = nach dem letzten Frost ins Freie säen
packet-days = { $days } bis zur Ernte
packet-days-from-setting-out = { $days } vom Auspflanzen bis zur Ernte
packet-days-from-sowing = { $days } von der Aussaat bis zur Ernte
packet-up = Keimung: { $days }
packet-depth = Saattiefe { $depth }
packet-apart = Abstand { $apart }
packet-rows = Reihenabstand { $rows }
packet-left-indoors = { $crops } werden hier nicht vorgezogen, also habe ich die Wochen der Vorkultur weggelassen.
packet-left-outdoors = { $crops } werden hier nicht ins Freie gesät, also habe ich dieses Datum weggelassen.
packet-bad-days = { $number } Tage bis zur Ernte können nicht stimmen, also hat sich nichts geändert. Sieh auf der Packung nach: Ich nehme { $low } bis { $high }.
packet-bad-indoors = { $number } Wochen Vorkultur können nicht stimmen, also hat sich nichts geändert. Sieh auf der Packung nach: Ich nehme { $low } bis { $high }.
packet-bad-offset = { $number } Wochen Abstand vom letzten Frost können nicht stimmen, also hat sich nichts geändert. Sieh auf der Packung nach: Ich nehme { $low } bis { $high }.
packet-bad-up = { $number } Tage bis zum Aufgehen können nicht stimmen, also hat sich nichts geändert. Sieh auf der Packung nach: Ich nehme { $low } bis { $high }.
packet-bad-depth = Eine Saattiefe von { $depth } kann nicht stimmen, also hat sich nichts geändert. Sieh auf der Packung nach: Ich nehme bis { $most }.
packet-bad-spacing = Ein Abstand von { $apart } kann nicht stimmen, also hat sich nichts geändert. Sieh auf der Packung nach: Ich nehme bis { $most }.

## How far north

latitude-how-to = Wie viele Grad nördlich oder südlich des Äquators liegt dein Garten? So: /latitude 47
latitude-bad = „{ $written }“ ist keine geografische Breite. Schick mir 0 bis 90 Grad, so: /latitude 47, oder südlich des Äquators /latitude 33 S
latitude-set = Notiert: etwa { $degrees } Grad Nord.
latitude-set-south = Notiert: etwa { $degrees } Grad Süd.
onion-ask-latitude = Welche Zwiebeln Knollen bilden, hängt von der Tageslänge ab. Wie weit im Norden bist du? So: /latitude 47
onion-long = So weit vom Äquator nimm Langtagszwiebeln: Sie bilden ihre Zwiebel ab 14 Stunden Tageslicht.
onion-long-intermediate = Auf dieser Breite gelingen Langtagszwiebeln gut (Zwiebel ab 14 Stunden Tageslicht), mittlere (12 bis 14 Stunden) auch.
onion-intermediate = Auf dieser Breite nimm mittlere (tagneutrale) Zwiebeln: Sie bilden ihre Zwiebel bei 12 bis 14 Stunden Tageslicht.
onion-intermediate-short = Auf dieser Breite gelingen mittlere Zwiebeln gut (Zwiebel bei 12 bis 14 Stunden Tageslicht), Kurztagszwiebeln (10 bis 12 Stunden) auch.
onion-short = So nah am Äquator nimm Kurztagszwiebeln: Sie bilden ihre Zwiebel bei 10 bis 12 Stunden Tageslicht.
trays-head = Anzuchtschalen für das, was du { $days } vorziehst:
trays-none = Davon wird in den nächsten zwei Wochen nichts in Schalen gesät.
trays-none-of-list = Von deiner Liste wird in den nächsten zwei Wochen nichts in Schalen gesät.
trays-empty-list = Deine Liste ist leer. Nenn die Pflanzen und ihre Töpfchen: /trays Tomate 12, Basilikum 6
trays-how-to = Welche Pflanzen, und je wie viele Töpfchen? Schick sie so: /trays Tomate 12, Basilikum 6
trays-bad-count = „{ $written }“ ist keine Zahl von Töpfchen; nenn je Pflanze 1 bis { $most }: /trays Tomate 12, Basilikum 6
trays-no-crop = „{ $written }“ Töpfchen wovon? Schick jede Pflanze mit ihrer Zahl: /trays Tomate 12, Basilikum 6
trays-which = „{ $word }“ kann { $crops } heißen: Nenn eine davon.
trays-too-long = So viel kann ich nicht auf einmal verteilen; schick weniger Pflanzen.
tray-line = Schale { $number }, { $cells } Töpfchen zu { $size }{ $warmth }: { $crops }. { $like }
tray-line-several = Schalen { $number }–{ $last }, je { $cells } Töpfchen zu { $size }{ $warmth }: je { $crops }. { $like }
tray-warmth = {" "}(Wärme { $best })
tray-crop = { $crops } { $cells }
tray-crop-from = { $crops } { $cells } (Aussaat { $date })
tray-crop-early = { $crops } { $cells } (früh; am besten ab dem { $date })
tray-like = { $vigour ->
    [small] Klein
    [upright] Aufrecht
   *[sprawling] Ausladend
}, { $age } alt hinaus.
tray-light = Hell stellen, bis sie aufgehen.
tray-dark = Dunkel stellen, bis sie aufgehen.
tray-pot-up = { $crops } { $days } umtopfen, Topf: { $pot }.
tray-pot-up-plain = { $crops } { $days } umtopfen.
tray-too-early = { $crops }: noch nicht, erst ab dem { $next }.
tray-too-late = { $crops }: jetzt zu spät für eine Schale; der nächste gute Tag ist der { $next }.
tray-too-late-for-good = { $crops }: zu spät für eine Schale, und deine Saison ist für einen zweiten Anlauf zu kurz.
tray-why-together = { $vigour ->
    [small] Alle sind klein
    [upright] Alle wachsen aufrecht
   *[sprawling] Alle wachsen ausladend und stehen darum nicht bei kleineren
}, brauchen Töpfchen zu { $size }, verlassen die Schale etwa { $leave } und kommen am besten { $age } alt hinaus; dieselbe Wärme und dasselbe Licht passen ihrem Samen.
tray-why-alone = { $vigour ->
    [sprawling] Sie wachsen ausladend und stehen darum nicht bei kleineren, und sonst ist nichts Ähnliches dabei.
   *[other] Nichts anderes ist in Töpfchen, Wuchs, Alter, Wärme und Licht ähnlich genug, um dabeizustehen.
}
tray-why-no-gain = Andere könnten auch hier stehen, aber das würde keine Schale sparen.
tray-crop-why = { $vigour ->
    [small] Klein
    [upright] Aufrecht
   *[sprawling] Ausladend
}: Aussaat { $sow }, Alter beim Auspflanzen { $age }, etwa { $out }; Töpfchen zu { $size } reichen bis dahin.
tray-crop-why-pot-up = { $vigour ->
    [small] Klein
    [upright] Aufrecht
   *[sprawling] Ausladend
}: Aussaat { $sow }, Alter beim Auspflanzen { $age }, etwa { $out }; Töpfchen zu { $size } reichen nur bis zum { $by }, also topf sie um.
tray-crop-why-early = Das ist früh; am besten ab dem { $date }.
tray-rest-from = { $crop } (ab dem { $date })
tray-rest-not-yet = Noch nicht: { $crops }.
tray-rest-too-late = Zu spät für eine Schale: { $crops }.
tray-rest-in-place = Besser an Ort und Stelle gesät oder gepflanzt: { $crops }.
tray-rest-settled = Schon gesät oder ausgelassen: { $crops }.
## Cold spells

hold-set = Pause bis zum { $date }: So lange erinnere ich dich nicht ans Abhärten und Auspflanzen.
hold-set-club = Pause für den Verein bis zum { $date }: So lange erinnere ich niemanden ans Abhärten und Auspflanzen. /hold zeigt allen, welche ihrer Jungpflanzen nicht warten können.
hold-waits = Das verschiebt sich: { $jobs }.
hold-nothing-waits = Auf deiner Liste war bis dahin nichts abzuhärten oder auszupflanzen.
hold-can-wait = So lange können deine Jungpflanzen warten.
hold-pot-up = { $crops }: Die Pflanzen sind dann { $age } alt, zu alt für ihre Töpfe. Topfe sie um.
hold-too-old = { $crops }: Die Pflanzen sind dann { $age } alt, zu alt zum Warten. Härte sie ab und pflanze sie an den mildesten Tagen unter Schutz aus, oder kauf später Jungpflanzen.
hold-too-old-sow-again = { $crops }: Die Pflanzen sind dann { $age } alt, zu alt zum Warten. Pflanze sie an den mildesten Tagen unter Schutz aus, oder säe neu: Das lohnt sich bis zum { $last }.
hold-off = Die Pause ist vorbei; ab heute nenne ich wieder alles.
hold-off-own = Deine eigene Pause ist vorbei.
hold-off-club = Die Pause des Vereins ist vorbei; ab heute nenne ich wieder alles.
hold-none = Gerade ist keine Pause.
hold-club-counts = Dein Verein wartet bis zum { $date }, und das gilt auch für dich.
hold-how-to = Sag mir bei einem Kälteeinbruch, wie viele Tage Abhärten und Auspflanzen warten sollen, 1 bis 60: /hold 7 Tage, oder bis zu welchem Tag: /hold bis Freitag. Beenden: /hold aus
hold-how-to-club = Sag mir bei einem Kälteeinbruch, wie viele Tage der Verein warten soll, 1 bis 60: /club hold 7 Tage, oder bis zu welchem Tag: /club hold bis Freitag. Beenden: /club hold aus
hold-show = Pause bis zum { $date }.
hold-bad = Ich kann 1 bis 60 Tage warten, so: /hold 7 Tage, oder /hold bis Freitag. Nichts hat sich geändert.
hold-bad-club = Ich kann 1 bis 60 Tage warten, so: /club hold 7 Tage, oder /club hold bis Freitag. Nichts hat sich geändert.
now-held = Abhärten und Auspflanzen warten bis zum { $date }.
settings-hold = • Kälteeinbruch: Pause bis zum { $date }
settings-hold-club = • Kälteeinbruch: Pause bis zum { $date } (von deinem Verein)

## Time zone, hour, language, units

zone-set = Deine Zeitzone ist { $zone }; dort ist es jetzt { $time } Uhr.
zone-how-to = Schick mir eine Stadt oder den Namen einer Zeitzone, so: /zone Berlin
zone-show = Deine Zeitzone ist { $zone }.
zone-show-none = Deine Zeitzone kenne ich nicht und nehme UTC.
zone-near = Den Ort „{ $written }“ kenne ich nicht. Meinst du einen von diesen?
zone-unknown = Den Ort „{ $written }“ kenne ich nicht. Schick mir eine größere Stadt in der Nähe oder den Namen einer Zeitzone, etwa Europe/Berlin.
hour-set = Erinnerungen kommen um { $time } Uhr ({ $zone }).
hour-how-to = Schick mir eine Uhrzeit, so: /hour 7:00
hour-show = Erinnerungen kommen um { $time } Uhr ({ $zone }).
hour-bad = „{ $written }“ ist keine Uhrzeit. Schick sie mir so: /hour 7:00
quiet-none = Nachrichten dürfen an jedem Tag kommen.
quiet-show = Keine Nachrichten an diesen Tagen: { $days }. Was da gekommen wäre, steht in der nächsten, und einen letzten guten Tag darunter sage ich dir vorher.
quiet-how-to = Tipp auf einen Tag, um ihn zu ändern, oder schreib ihn so: /quiet Sonntag
quiet-bad = In „{ $written }“ habe ich keinen Wochentag gefunden, also hat sich nichts geändert. So geht es: /quiet Sonntag, oder /quiet aus
quiet-all = Dann bliebe kein Tag für Nachrichten, also hat sich nichts geändert. Für eine Pause: /holiday bis 3. Juli
button-day = { $day }
button-day-quiet = { $day }: Ruhe
weekends-how-to = Wann gärtnerst du? „Später“ verschiebt eine Arbeit dann auf den passenden Tag.
weekends-on = Notiert: Du gärtnerst am Wochenende. „Später“ verschiebt eine Arbeit auf das nächste, aber nie über ihren letzten guten Tag hinaus.
weekends-off = Notiert: Du gärtnerst an jedem Tag. „Später“ verschiebt eine Arbeit auf den nächsten Tag, an dem eine Nachricht kommen darf.
button-weekends-on = Ich gärtnere am Wochenende
button-weekends-off = Ich gärtnere an jedem Tag
holiday-how-to = Bis wann bist du weg? Schick den Tag, ab dem wieder Nachrichten kommen dürfen: /holiday bis 3. Juli
holiday-show = Du bist im Urlaub, vor dem { $date } kommen keine Nachrichten. Schick einen anderen Tag, um das zu ändern, oder /holiday aus, um ihn zu beenden.
holiday-set = Schönen Urlaub! Vor dem { $date } kommen keine Nachrichten. Was du versäumst und was sich dann noch lohnt, steht in der ersten.
holiday-before = Das hier endet vorher, also erledige es, bevor du fährst:
holiday-off = Willkommen zurück! Ab dem nächsten Morgen kommen wieder Nachrichten.
holiday-off-none = Du bist nicht im Urlaub; Nachrichten kommen wie gewohnt.
holiday-bad = In „{ $written }“ konnte ich keinen Tag lesen, also hat sich nichts geändert. So geht es: /holiday bis 3. Juli
holiday-impossible = Den Tag „{ $written }“ gibt es im Kalender nicht, also hat sich nichts geändert. So geht es: /holiday bis 3. Juli
holiday-past = Der { $date } liegt nicht nach heute, also hat sich nichts geändert. So geht es: /holiday bis 3. Juli
holiday-too-long = Bis zum { $date } ist es mehr als ein Jahr, also hat sich nichts geändert. Schick einen früheren Tag.
holiday-several = Das ist mehr als ein Tag, also hat sich nichts geändert. Ein Urlaub beginnt sofort; schick nur den Tag, ab dem wieder Nachrichten kommen dürfen: /holiday bis 3. Juli
language-how-to = Welche Sprache?
language-set = Von jetzt an spreche ich { $language } mit dir.
language-unknown = „{ $written }“ spreche ich noch nicht. Ich spreche { $languages }.
language-name-en = English
language-name-en-GB = English (UK)
language-name-en-US = English (US)
language-name-de = Deutsch
language-name-es = Español
language-name-fr = Français
units-set-metric = Von jetzt an in °C und cm.
units-set-customary = Von jetzt an in °F und Zoll.
settings-head = Deine Einstellungen
settings-frost = • Frost: { $frost }
settings-frost-none = • Frost: nicht angegeben
settings-frost-club = • Frost: { $frost } (von deinem Verein)
settings-zone = • Zeitzone: { $zone }
settings-zone-club = • Zeitzone: { $zone } (von deinem Verein)
settings-zone-none = • Zeitzone: nicht angegeben, also UTC
settings-hour = • Erinnerungen um { $time } Uhr
settings-quiet = • Keine Nachrichten an: { $days }
settings-weekends = • „Später“ wartet auf das Wochenende
settings-holiday = • Im Urlaub, keine Nachrichten vor dem { $date }
settings-units-metric = • Einheiten: °C und cm
settings-units-customary = • Einheiten: °F und Zoll
settings-language = • Sprache: { $language }
settings-club = • Verein: { $club }
settings-hot-and-wet = • Heiße und nasse Monate: { $months }
settings-unreachable = Erinnerungen kommen in unserem privaten Chat; öffne ihn einmal und schick /start.

## Club

club-head = { $club }, Einstellungen für alle, die keine eigenen haben
club-reach-all = • Mitglieder: { $members }; Erinnerungen erreichen alle
club-reach = • Mitglieder: { $members }; Erinnerungen erreichen { $reached }. Die anderen müssen unseren privaten Chat öffnen und /start schicken.
club-only-in-group = /club geht nur in der Gruppe deines Vereins, wo ich sehe, wer Admin ist.
club-not-administrator = Nur Admins dieser Gruppe können die Einstellungen des Vereins ändern. Mit /frost stellst du deinen eigenen Garten ein.
club-role-unknown = Ich konnte nicht prüfen, wer hier Admin ist. Versuch es bitte in einer Minute noch einmal.
club-frost-set = Für den Verein notiert: { $frost }. Das ist eine Saison von { $days ->
    [one] { $days } Tag
   *[other] { $days } Tagen
}. Wer eigene Daten hat, behält sie.
club-frost-set-no-end = Für den Verein notiert: { $frost }. Wer eigene Daten hat, behält sie.
club-frost-set-free = Notiert für den Verein: kein Frost. Welche Monate sind dort zu heiß, welche sind nass? Antworte auf diese Nachricht, zum Beispiel: heiß Juni bis September, nass Juni bis Oktober. Wer eigene Angaben hat, behält sie.
club-frost-unset = Der Verein hat keine Frostdaten mehr.
club-frost-how-to = Antworte auf diese Nachricht mit dem mittleren letzten Frost im Frühjahr und dem ersten im Herbst, Monat vor Tag, so: 05-15 10-05
club-zone-set = Die Zeitzone des Vereins ist { $zone }.
club-zone-how-to = Antworte auf diese Nachricht mit einer Stadt oder dem Namen einer Zeitzone, so: Berlin
club-language-set = Die Sprache des Vereins ist { $language }.
club-not-understood = Die Einstellung „{ $written }“ kenne ich nicht, also hat sich nichts geändert.
club-how-to = Stell sie hier ein oder in einer Zeile: /club frost 05-15 10-05, /club zone Berlin, /club language de, /club hold 7 Tage
settings-digest = • Die Vereinswoche: { $day }, { $time }
settings-digest-none = • Die Vereinswoche: wird nicht verschickt
digest-head = Die Vereinswoche, { $days }, nach den Frostdaten des Vereins:
digest-opens = Beginnt diese Woche:
digest-closes = Bald vorbei:
digest-line = • { $what }: { $when } ({ $count ->
    [one] ein Mitglied baut das an
   *[other] { $count } Mitglieder bauen das an
})
digest-from = ab dem { $date }
digest-until = gut bis zum { $date }
digest-more = { $count ->
    [one] und eines mehr
   *[other] und { $count } mehr
}
digest-foot = Deine eigenen Daten können abweichen: Frag mich mit /now.
digest-show = Diese Gruppe bekommt die Vereinswoche: { $day } um { $time }.
digest-show-none = Diese Gruppe bekommt keine Vereinswoche.
digest-how-to = Schick einen Tag und eine Uhrzeit: /club digest Montag 8:00. Mit „hier“ dahinter kommt sie in dem Thema, in dem du das schreibst. /club digest aus beendet sie.
digest-bad = In „{ $written }“ konnte ich keinen Wochentag mit Uhrzeit lesen, also hat sich nichts geändert. So geht es: /club digest Montag 8:00 hier, oder /club digest aus
digest-set = Notiert: Diese Gruppe bekommt die Vereinswoche: { $day } um { $time }. In einer Woche, in der nichts beginnt oder endet, kommt keine.
digest-set-here = Notiert: Die Vereinswoche kommt in diesem Thema: { $day } um { $time }. In einer Woche, in der nichts beginnt oder endet, kommt keine.
digest-topic-closed = Das Thema, in dem das kommen sollte, ist geschlossen, deshalb kommt es hier. Wer die Gruppe verwaltet oder hilft, kann ein anderes wählen: schreibt dort /club digest mit Tag, Uhrzeit und „hier“.
digest-off = Notiert: Die Vereinswoche wird nicht mehr verschickt.
digest-needs-frost = Dafür brauche ich zuerst die Frostdaten des Vereins: /club frost 05-15 10-05
helpers-none = Noch hilft dir niemand.
helpers-head = Diese Helfer dürfen die Einstellungen und Listen des Vereins ändern: { $names }.
helper-how-to = Um jemanden zu benennen, antworte auf eine Nachricht dieser Person mit /club helper add; um es zu beenden, mit /club helper remove.
helper-added = { $name } darf jetzt die Einstellungen und Listen des Vereins ändern. /club helpers zeigt alle, die das dürfen.
helper-already = { $name } hilft schon mit.
helper-removed = { $name } darf die Einstellungen und Listen des Vereins nicht mehr ändern.
helper-unknown = Diese Person gehört nicht zu den Helfern des Vereins, also hat sich nichts geändert.
helper-is-bot = Ein Bot oder jemand, der anonym schreibt, kann nicht mithelfen. Antworte auf die Nachricht einer Person mit /club helper add.
helpers-too-many = Ein Verein hat höchstens { $most } Helfer, also hat sich nichts geändert. /club helpers zeigt sie.
helpers-not-administrator = Nur Admins dieser Gruppe können Helfer benennen.
button-helper-remove = { $name } entfernen
which-club = Privat gelten für dich Frostdaten, Zeitzone, Sprache und Listen von { $club }. Welcher Verein soll gelten?
which-club-gone = Zu diesem Verein gehörst du nicht mehr, also hat sich nichts geändert. /club zeigt deine Vereine.
club-chosen = Privat gilt ab jetzt { $club }: Frostdaten, Zeitzone, Sprache und Listen, wo du nichts Eigenes eingestellt hast.
start-several = Du gehörst auch zu { $others }. Privat gilt ab jetzt { $club }; mit /club änderst du das.
button-club = { $club }
button-which-club = Ein anderer Verein
lists-head = Listen von { $club }. Abonniere eine, und ihre Pflanzen sind in deinem Plan:
lists-line = • { $list }: { $count ->
    [0] noch keine Pflanzen
    [one] eine Pflanze
   *[other] { $count } Pflanzen
}
lists-line-mine = • { $list }: { $count ->
    [0] noch keine Pflanzen
    [one] eine Pflanze
   *[other] { $count } Pflanzen
}, in deinem Plan
lists-none = { $club } führt noch keine Listen. In der Gruppe beginnt ein Admin oder Helfer eine so: /list new Salsabeet: Tomate, Paprika, Zwiebel
lists-no-club = Listen gehören zu einem Verein. Drück in der Gruppe deines Vereins auf den Knopf unter meiner Begrüßung und versuch es noch einmal.
lists-how-to-short = /list help zeigt, wie man sie ändert.
lists-how-to = Für Admins und ihre Helfer, in der Gruppe:
    /list new Salsabeet: Tomate, Paprika – eine Liste beginnen
    /list salsabeet + Basilikum, Dill – Pflanzen daraufsetzen
    /list salsabeet - Paprika – eine herunternehmen
    /list rename salsabeet to Warmes Beet – ein anderer Name
    /list note salsabeet: für das Beet am Tor – eine Zeile Text
    /list share salsabeet – ein Code, mit dem ein anderer Verein sie kopiert
    /list take ABCD-EFGH – die Liste eines anderen Vereins kopieren
    /list archive salsabeet – sie weglegen

    Für alle:
    /list salsabeet – sie ansehen
    /list join salsabeet, /list leave salsabeet – abonnieren oder nicht
lists-only-in-group = Die Listen des Vereins werden in seiner Gruppe geändert, wo ich sehe, wer das darf.
lists-not-coordinator = Nur Admins dieser Gruppe und ihre Helfer können die Listen ändern. Für deine eigenen Pflanzen gibt es /grow und /drop.
lists-too-many = Ein Verein führt höchstens { $most } Listen, also hat sich nichts geändert. /list archive legt eine weg.
list-crops = Pflanzen: { $crops }
list-without-crops = Es stehen noch keine Pflanzen darauf.
list-subscribers = { $count ->
    [0] Noch niemand hat sie abonniert.
    [one] Ein Mitglied hat sie abonniert.
   *[other] { $count } Mitglieder haben sie abonniert.
}
list-left-out = Du lässt weg: { $crops }. Mit /grow kommt eine Pflanze zurück.
list-gone = Diese Liste ist nicht unter den Listen des Vereins, also hat sich nichts geändert. /lists zeigt sie.
list-unknown = Eine Liste „{ $written }“ kenne ich hier nicht. Es gibt { $lists }.
list-which = Welche Liste? Beginn mit ihrem Namen: /list salsabeet + Basilikum
list-which-crop = „{ $word }“ kann { $crops } heißen. Schick es noch einmal mit dem vollen Namen.
list-new-how-to = Wie soll die Liste heißen? So geht es: /list new Salsabeet: Tomate, Paprika, Zwiebel
list-name-too-long = Der Name einer Liste hat höchstens { $most } Zeichen, also hat sich nichts geändert.
list-name-is-verb = Der Name einer Liste kann nicht mit „{ $word }“ beginnen, denn das sagt mir, was ich tun soll. Wähl einen anderen; es hat sich nichts geändert.
list-name-taken = Eine Liste „{ $list }“ gibt es schon, also hat sich nichts geändert. Wähl einen anderen Namen, oder benenn zuerst jene um.
list-made = Neue Liste „{ $list }“: { $crops }.
list-made-empty = Neue Liste „{ $list }“, noch ohne Pflanzen.
list-copied = Als Liste dieses Vereins kopiert, „{ $list }“: { $crops }.
list-made-next = Mitglieder abonnieren sie mit dem Knopf der Liste, hier oder privat mit /lists.
list-too-many-crops = Eine Liste hat höchstens { $most } Pflanzen, also hat sich nichts geändert.
list-added = Jetzt auf „{ $list }“: { $crops }.
list-already = Schon auf „{ $list }“: { $crops }.
list-add-how-to = Welche Pflanzen? So geht es: /list { $list } + Basilikum, Dill
list-taken-off = Von „{ $list }“ genommen: { $crops }.
list-not-on-it = Nicht auf „{ $list }“: { $crops }.
list-take-off-how-to = Welche Pflanzen? So geht es: /list { $list } - Basilikum
list-who-hears = { $count ->
    [one] Das eine Mitglied, das sie abonniert hat, erfährt es mit der nächsten Morgennachricht.
   *[other] Die { $count } Mitglieder, die sie abonniert haben, erfahren es mit ihrer nächsten Morgennachricht.
}
list-rename-how-to = Wie soll sie heißen? So geht es: /list rename { $list } to Warmes Beet
list-renamed = „{ $list }“ heißt ab jetzt „{ $name }“.
list-note-how-to = Welche Zeile Text? So geht es: /list note { $list }: für das Beet am Tor
list-note-too-long = Die Zeile Text einer Liste hat höchstens { $most } Zeichen, also hat sich nichts geändert.
list-noted = „{ $list }“ hat ihre Zeile Text. /list { $list } zeigt sie.
list-note-gone = „{ $list }“ hat keine Zeile Text mehr.
list-archived = „{ $list }“ ist weggelegt: Sie ist in niemandes Plan mehr, und kein Code führt zu ihr.
list-reopened = „{ $list }“ ist wieder da, auch für alle, die sie abonniert hatten. Teil sie neu, wenn ein anderer Verein ihren Code braucht.
list-not-archived = Diese Liste ist nicht weggelegt, also hat sich nichts geändert. /lists zeigt die Listen des Vereins.
list-shared = Ein Admin des anderen Vereins kopiert „{ $list }“ so:
    /list take { $code }
    Das geht, bis die Liste weggelegt wird; spätere Änderungen bleiben bei jedem Verein.
list-copy-how-to = Schick den Code, den dir der andere Verein gegeben hat: /list take ABCD-EFGH
list-code-unknown = Unter „{ $written }“ ist keine Liste geteilt. Bitte den anderen Verein noch einmal um den Code.
list-subscribed = „{ $list }“ ist jetzt in deinem Plan.
list-subscribed-already = „{ $list }“ ist schon in deinem Plan.
list-unsubscribed = „{ $list }“ ist nicht mehr in deinem Plan. Was du selbst gewählt hast, bleibt.
list-not-subscribed = „{ $list }“ war nicht in deinem Plan.
list-open-private = Für Erinnerungen öffne unseren privaten Chat und drück auf Start.
list-other-club-holds = Privat gilt für dich zurzeit { $club }; das änderst du dort mit /club.
list-anonymous = Du schreibst hier anonym, also weiß ich nicht, für wessen Plan es ist. /lists geht auch in unserem privaten Chat.
list-news-came = Dein Verein hat { $crops } auf „{ $list }“ gesetzt, also ist das in deinem Plan.
list-news-went = Dein Verein hat { $crops } von „{ $list }“ genommen.
list-news-both = Dein Verein hat „{ $list }“ geändert. Neu: { $came }. Weg: { $went }.
list-news-archived = Dein Verein hat die Liste „{ $list }“ weggelegt. Damit weg: { $crops }.
list-news-stay = Trotzdem weiter in deinem Plan: { $crops }.
list-news-next = /mycrops zeigt deinen Plan; /grow behält eine Pflanze darin, und /drop lässt eine weg.
button-list = { $list }
button-all-lists = ‹ Alle Listen
button-lists = Die Listen des Vereins
button-subscribe = Abonnieren
button-unsubscribe = Abbestellen

## Trouble

went-wrong = Da ist bei mir etwas schiefgegangen. Nichts hat sich geändert; versuch es bitte noch einmal.
unknown-command = Diesen Befehl kenne ich nicht. /help zeigt, was ich kann.

## Command menus (at most 256 characters each)

menu-ask = Kann ich das jetzt beginnen?
menu-now = Was kann ich heute tun?
menu-grow = Pflanzen auf meine Liste setzen
menu-drop = Eine Pflanze von meiner Liste nehmen
menu-mycrops = Meine Liste
menu-lists = Die Pflanzenlisten des Vereins
menu-sown = Ich habe etwas gesät
menu-sowings = Meine Aussaaten
menu-variety = Meine Sorten und ihre Packungen
menu-undo = Die letzte Änderung zurücknehmen
menu-trays = Welche Sämlinge in eine Schale passen
menu-frost = Meine Frostdaten
menu-zone = Meine Zeitzone
menu-hold = Einen Kälteeinbruch abwarten
menu-place = Wo ich anziehe
menu-hour = Wann meine Erinnerung kommt
menu-holiday = Eine Zeit lang keine Nachrichten
menu-quiet = Tage ohne Nachrichten
menu-weekends = Wann ich gärtnere
menu-settings = Meine Einstellungen
menu-export = Alles, was über mich gespeichert ist
menu-forget = Alles davon löschen
menu-help = Was der Bot kann
menu-club = Die Einstellungen des Vereins

## Plan

plan-line = { $days }: { $what } (lohnend bis zum { $last }). { $why }
plan-why-sow-indoors = Damit die Pflanzen { $age } alt sind, wenn sie hinauskommen, gerechnet vom letzten Frost um den { $last_frost }.
plan-why-pot-up = Drei bis vier Wochen nach der Aussaat, wenn die ersten Laubblätter offen sind.
plan-why-harden-off = 7 bis 14 Tage, bevor die Pflanzen hinauskommen.
plan-why-plant-out = Abgehärtete Pflanzen vertragen Nächte bis { $nights }; der letzte Frost kommt um den { $last_frost }.
plan-why-sow-outdoors = Der Boden sollte dauerhaft mindestens { $minimum } haben; der letzte Frost kommt um den { $last_frost }.
plan-why-autumn = Für den Herbst, zurückgerechnet vom ersten Frost um den { $first_frost }.
plan-why-overwinter = Für das nächste Jahr, rund um den ersten Frost am { $first_frost }.
plan-why-months = Hitze und Regen entscheiden: Gepflanzt wird etwa ab dem { $starts }, und um den { $heat } ist die Hitze zurück.
plan-why-months-rain = Der Regen entscheidet: Gepflanzt wird etwa ab dem { $starts }, und um den { $heat } ist der Regen zurück.
plan-why-cover = Dein { $cover } verschiebt das.
plan-why-second-year = Im Frühsommer gesät, blüht die Pflanze im Jahr darauf.
plan-why-before = Das dauert { $days }. Danach: { $then }.
plan-why-hedge = Eine zweite Chance neben der ersten Aussaat: Misslingt die eine, trägt die andere.
plan-why-repeat = Eine Folgesaat nach der vom { $last }, wenn du mehr davon willst.
plan-why-repeat-heat = Eine Folgesaat nach der vom { $last }, wenn du mehr davon willst: Sommerhitze beendet jede bald.
plan-why-sown = Gerechnet ab der Aussaat vom { $sown }.
