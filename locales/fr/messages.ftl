# What the bot says, in French: the verdict first, the reason in numbers, then the next step.
#
# The bot says "tu". $crops is a crop's name with its article ("les concombres", "le basilic",
# "l'ail"), so no "de" or "à" stands before it, and no verb or adjective has to agree with it. $what,
# $step and $then are infinitives ("semer les concombres à l'intérieur"); none that can stand after
# "de" begins with a vowel. Dates come without an article ("22 avril", "1er mai"), ranges of dates
# with their prepositions ("du 17 au 24 avril"). A narrow no-break space (U+202F) stands before
# : ; ? ! and inside « », and apostrophes are curved; a test holds the file to that.

## Dates

# A span of days that crosses a month: $from and $to are dates, "17 avril" and "1er mai".
date-range = du { $from } au { $to }

# The number of a month's first day within a date: $day is "1".
first-day = { $day }er

# The days of a span within one month: $from and $to are day numbers, the month follows.
day-range = du { $from } au { $to }

## Lengths of time

# $n is a whole number.
days = { $n ->
    [one] { $n } jour
   *[other] { $n } jours
}

# $n is a whole number or a number and a half: "3", "3½".
weeks = { $n ->
    [one] { $n } semaine
   *[other] { $n } semaines
}

# $from and $to are whole numbers.
days-range = { $to ->
    [one] { $from } à { $to } jour
   *[other] { $from } à { $to } jours
}

# $from and $to are whole numbers or numbers and a half.
weeks-range = { $to ->
    [one] { $from } à { $to } semaine
   *[other] { $from } à { $to } semaines
}

## Temperatures and lengths

# Two numbers, $low and $high, that stand before a unit.
number-range = { $low } à { $high }

# The same where a minus sign would meet the dash.
number-range-signed = { $low } à { $high }

# $n is a number, or a range as above. {"\u00a0"} is a space at which no line breaks.
celsius = { $n }{ "\u00a0" }°C
fahrenheit = { $n }{ "\u00a0" }°F
millimetres = { $n }{ "\u00a0" }mm
centimetres = { $n }{ "\u00a0" }cm

# Inches, with the symbol that Québec uses: it is the same for one and for many.
inch = { $n }{ "\u00a0" }po
inches = { $n }{ "\u00a0" }po

## When

when-now = aujourd’hui
when-on = le { $date }

## Steps, as they stand in a sentence

step-sow-indoors = semer { $crops } à l’intérieur
step-sow-outdoors = semer { $crops } en pleine terre
step-soak = faire tremper les graines pour { $crops }
step-nick = entailler les graines pour { $crops }
step-chill = garder les graines au froid et humides pour { $crops }
step-chit = faire germer { $crops } à la lumière
step-root-slips = mettre un tubercule à germer pour { $crops }
step-check = vérifier la levée pour { $crops }
step-harvest = commencer à récolter { $crops }
step-first-bloom = voir fleurir { $crops }
step-pot-up = rempoter { $crops }
step-harden-off = endurcir { $crops }
step-plant-out = planter { $crops } au jardin
step-plant = planter { $crops }

## Verdicts

verdict-too-early = Pas encore. Attends le { $next } pour { $what }.
verdict-early = C’est un peu tôt pour { $what }, mais ça peut marcher.
verdict-on-time = Vas-y : tu peux { $what } { $when }.
verdict-on-time-when-nights-allow = Vas-y : tu peux { $what } { $when }, si les nuits de la semaine restent au-dessus de { $nights }.
verdict-late = C’est tard, mais ça vaut encore la peine : tu peux { $what } { $when }.
verdict-second-best = Tu peux { $what } { $when }, mais il y a une meilleure façon.
verdict-too-late = Il est trop tard pour { $what } cette saison.
verdict-too-late-for-spring = Il est trop tard pour { $what } pour la culture de printemps.
verdict-season-too-short = Ta saison est trop courte pour { $crops } sans un coup de pouce.
verdict-no-cold = Ton hiver est trop doux pour { $crops } : sans froid, aucun bulbe ne se forme.

reason-no-frost-here = Pour { $crops }, ce ne sont pas les dates de gel qui décident : ton jardin n’a pas de gel.
reason-not-from-seed = Pour { $crops }, on ne part pas de graines.
reason-never-sown-indoors = Non, ne sème pas { $crops } à l’intérieur.
reason-never-sown-outdoors = Non, ne sème pas { $crops } directement en pleine terre ici : il faut un départ à l’intérieur.
reason-never-potted-up = Pas besoin de rempoter { $crops } : la première alvéole suffit jusqu’à la plantation au jardin.
reason-never-set-out = Rien à planter au jardin : sème { $crops } directement en place.

## One line for each of many crops

short-too-early = { $what } : pas encore, à partir du { $next }.
short-early = { $what } : tôt, mais ça peut marcher ; mieux à partir du { $next }.
short-on-time = { $what } : vas-y, c’est bon jusqu’au { $until }.
short-late = { $what } : tard, mais ça vaut la peine jusqu’au { $next }.
short-too-late = { $what } : trop tard maintenant ; prochain bon jour le { $next }.
short-too-late-for-good = { $what } : trop tard, et ta saison est trop courte pour un autre essai.
or-else = Autre choix. { $line }

## Why

why-too-old = Si tu sèmes { $when }, les plants auront { $age } le { $setout }, quand ils pourront sortir. { $most }, c’est le plus qu’ils supportent.
why-age = Si tu sèmes { $when }, les plants auront { $age } quand ils pourront sortir, vers le { $setout } ; l’idéal est de { $best }.
why-cold-soil = La terre est sans doute encore trop froide : elle doit rester à { $minimum } ou plus, et l’idéal est de { $best }.
why-cold-soil-and-frost = La terre est sans doute trop froide (elle doit rester à { $minimum } ou plus ; l’idéal est de { $best }), et un gel tuerait ce qui lève.
why-soil-check = Vérifie que la terre reste à { $minimum } ou plus ; l’idéal est de { $best }.
why-summer-sowing = Le semis se fait au début de l’été, et la floraison vient l’année suivante.
why-autumn-planting = La plantation se fait en automne, vers le premier gel, pour l’année suivante.
why-autumn-count = Ce semis est pour l’automne : il se compte à rebours depuis ton premier gel.
why-cold-nights = Les nuits sont encore trop froides : les plants endurcis supportent jusqu’à { $nights }, et meurent vers { $kills }.
why-bears-cold = Les plants endurcis supportent des nuits jusqu’à { $nights }.
why-harden-off = Prends 7 à 14 jours : un peu plus de temps dehors chaque jour, avec des nuits qui ne descendent pas sous { $nights }.
why-pot-up = Les jeunes plants se déplacent le mieux quand leurs premières vraies feuilles sont ouvertes.
why-late = Meilleurs jours : jusqu’au { $ended }.
why-too-late-harvest = Si tu commences { $when }, la première récolte viendra vers le { $ready }, et la saison finit vers le { $end }.
why-too-late-bloom = Si tu commences { $when }, les premières fleurs viendront vers le { $ready }, et la saison finit vers le { $end }.
why-heat = Dernier jour utile : le { $ended } ; ensuite, la chaleur de l’été arriverait avant la récolte.
why-window-closed = Dernier jour utile : le { $ended }.
why-season-too-short = Entre tes gels, il y a { $days } jours ; après un départ complet, il en faut encore environ { $needs } jusqu’à la première récolte.
why-no-frost = Là où il ne gèle pas, la chaleur et les mois humides décident ; le service agricole de ta région a des dates de plantation pour ton coin.
why-months = Dans ton jardin, la chaleur et la pluie décident : on commence à planter vers le { $starts }, et la chaleur revient vers le { $heat }.
why-months-rain = Dans ton jardin, la pluie décide : on commence à planter vers le { $starts }, et la pluie revient vers le { $heat }.
why-months-bears-heat = Ces plantes supportent la chaleur et la pluie ; les semaines les plus fraîches, jusque vers le { $coolest }, les freinent.
why-months-too-late = Le temps de planter a pris fin le { $ended } ; ce qui commence { $when } tomberait dans la chaleur, de retour vers le { $heat }.
why-months-too-late-rain = Le temps de planter a pris fin le { $ended } ; ce qui commence { $when } tomberait sous la pluie, de retour vers le { $heat }.
why-months-short = Entre le { $starts } et la chaleur, de retour vers le { $heat }, le temps est trop court.
why-months-short-rain = Entre le { $starts } et la pluie, de retour vers le { $heat }, le temps est trop court.
cost-continuing = Compte environ { $behind } de récolte en moins.
cost-bloom = Compte environ { $behind } de floraison en moins.
cost-once = La récolte devrait être prête vers le { $ready } ; la saison finit vers le { $end }.
counted-average = Ton dernier gel tombe en moyenne vers le { $frost }.
counted-average-at-risk = Ton dernier gel tombe en moyenne vers le { $frost } ; environ un printemps sur dix, il gèle encore après le { $risk }.
counted-trusted = La date à laquelle tu te fies est le { $frost }.
counted-first-frost = Ton premier gel tombe vers le { $frost }.

## Where it grows

place-windowsill = sur un rebord de fenêtre
place-lights = sous lampes
place-heat-mat = sur un tapis chauffant
place-greenhouse = en serre
cover-fleece = voile
cover-cold-frame = châssis froid
cover-tunnel = tunnel
cover-sooner = Avec ton { $cover }, c’est { $weeks } plus tôt que sans.
cover-no-sooner = Ton { $cover } ne garde pas les nuits et la terre assez chaudes pour avancer { $crops }.
cover-later = Avec ton { $cover }, la récolte finit environ { $weeks } plus tard que sans.
place-line-windowsill = Sur un rebord de fenêtre, les jeunes plants s’étirent : j’y laisse { $crops } { $most } au plus.
place-line-lights = Sous lampes, pour { $crops } : garde-les tout près au-dessus des plants, et remonte-les quand ils grandissent.
place-line-heat-mat = Ton tapis chauffant garde la terre chaude ; retire { $crops } du tapis dès la levée.
place-line-greenhouse = En serre, aère { $crops } les jours de soleil et méfie-toi des nuits froides.
place-show = Tes jeunes plants : { $place }. Protection dehors : { $cover }.
place-not-said = pas indiqué
cover-none = aucune
place-how-to = Touche ce qui convient, ou dis-le-moi : « je sème sous lampes », « j’ai un châssis froid », « pas de protection ».
place-noted = C’est noté.
place-bad = Pour les jeunes plants, je connais le rebord de fenêtre, les lampes, le tapis chauffant et la serre ; dehors, le voile, le châssis froid et le tunnel. Je ne connais pas « { $written } ».
button-place = Où ça pousse
button-place-is = ✓ { $name }
button-place-windowsill = Rebord de fenêtre
button-place-lights = Lampes
button-place-heat-mat = Tapis chauffant
button-place-greenhouse = Serre
button-cover-fleece = Voile
button-cover-cold-frame = Châssis froid
button-cover-tunnel = Tunnel
button-cover-none = Sans protection
settings-place = • Jeunes plants { $place }
settings-cover = • Protection dehors : { $cover }

## What to do next

next-best-days = Meilleurs jours : { $days }.
next-good-until = C’est bon jusqu’au { $until }, et ça vaut la peine jusqu’au { $last }.
next-good-until-only = C’est bon jusqu’au { $until }.
next-last-day = Dernier jour utile : le { $last }.
next-both = Pour assurer : sèmes-en une partie maintenant, et le reste en pleine terre à partir du { $from }.
care-pot-up = Si tu commences maintenant, rempote les plants une fois et donne-leur beaucoup de lumière. Sinon, attends le { $next }.
care-own-cell = Mieux vaut attendre le { $next } : ces plants n’aiment pas être déplacés. Si tu commences maintenant, donne à chacun un grand godet et beaucoup de lumière.
care-light = Si tu commences maintenant, donne aux plants beaucoup de lumière et garde-les au frais. Sinon, attends le { $next }.
care-cover = Seulement sous un voile ou une cloche, et avec des plants endurcis. Sans protection, attends le { $next }.
care-cover-planting = Seulement sous un voile ou un paillis à remettre les nuits froides. Sans cela, attends le { $next }.
care-cover-sowing = Seulement sous abri, ou là où la terre est déjà assez chaude. Sinon, attends le { $next }.
care-harden-off = Seulement si un voile ou une cloche attend les plants dehors. Sinon, attends le { $next }.
how-short = Sème à une profondeur de { $depth }, dans une terre de { $warmth } ; levée en { $days }.
how-short-surface = Sème en surface, sur une terre de { $warmth } ; levée en { $days }.
how-short-spacing = Laisse { $apart } entre les plants.
other-now = Tu peux plutôt { $what } : c’est possible maintenant, jusqu’au { $until }.
other-from = Tu pourras plutôt { $what } à partir du { $from }.
better-now = Mieux vaut { $what } : c’est possible maintenant, jusqu’au { $until }.
better-from = Mieux vaudra { $what } à partir du { $from }.
instead-sow-outdoors = À la place, sème directement en pleine terre : ça vaut la peine jusqu’au { $until }.
instead-buy-plants = À la place, achète de jeunes plants : la plantation vaut la peine jusqu’au { $until }.
instead-buy-plants-from = À la place, achète de jeunes plants : ils pourront sortir à partir du { $from }.
instead-autumn = Le semis d’automne s’ouvre le { $next }.
instead-next-season = Les bons jours de la prochaine saison commencent le { $next }.
instead-faster-variety = Ce qui peut aider : une variété plus rapide, de grands plants achetés, ou un tunnel.
instead-before-heat = Ce qui peut aider : une variété plus rapide, ou de grands plants achetés.
instead-chill-cloves = Ce qui peut aider : garder les caïeux ({ $crops }) { $weeks } à environ { $cold }, au sec et sans gel, puis les planter avant les semaines les plus fraîches, jusqu’au { $date }. Les bulbes resteront petits.

## When

when-head = { $crops } :
when-head-last-frost = { $crops }, d’après ton dernier gel moyen, vers le { $frost } :
when-head-months = { $crops }, d’après tes mois chauds et humides :
when-head-first-frost = { $crops }, d’après ton premier gel, vers le { $frost } :
when-line = • { $what } : { $days }
when-line-late = • { $what } : { $days } ; ça vaut la peine jusqu’au { $last }
when-line-autumn = • { $what } pour l’automne : { $days } ; ça vaut la peine jusqu’au { $last }

## How

how-head = { $crops } :
how-from-tubers = • pars de tubercules de semence
how-from-cloves = • pars de gousses, la pointe en haut
how-from-slips = • pars de boutures racinées
how-from-crowns = • pars de griffes
how-from-sets = • pars de bulbilles
how-soak = • fais tremper les graines pendant { $lead } avant le semis
how-nick = • entaille la peau des graines avant le semis ; attention aux doigts
how-chill = • garde les graines au froid et humides pendant { $lead } avant le semis
how-chit = • fais germer les tubercules à la lumière pendant { $lead } avant la plantation
how-root-slips = • mets le tubercule à germer { $lead } avant la plantation
how-depth = • sème à une profondeur de { $depth }
how-planting-depth = • plante à une profondeur de { $depth }
how-surface = • presse les graines sur la surface, sans les couvrir
how-light = • il faut de la lumière pour lever
how-dark = • il faut de l’obscurité pour lever
how-warmth = • terre de { $best } de préférence, de { $minimum } au moins
how-days = • levée en { $days }
how-cell = • à l’intérieur : { $seeds ->
    [one] une graine
   *[other] { $seeds } graines
} par alvéole de { $cell } ; sortie à l’âge de { $age }
how-next-pot = • au rempotage, un pot de { $pot }
how-spacing = • { $apart } entre les plants, { $rows } entre les rangs

## Will it ripen

ripens-yes = Oui, il y a le temps pour { $crops }. Première récolte : { $ready }.
ripens-tight = C’est juste pour { $crops } : ça passera peut-être, avec au mieux { $spare ->
    [one] { $spare } jour
   *[other] { $spare } jours
} de marge.
ripens-no = Non, le temps manque pour { $crops } cette saison.
blooms-yes = Oui, il y a le temps pour { $crops }. Premières fleurs : { $ready }.
blooms-tight = C’est juste pour { $crops } : les fleurs viendront peut-être à temps, avec au mieux { $spare ->
    [one] { $spare } jour
   *[other] { $spare } jours
} de marge.
blooms-no = Non, le temps manque pour voir fleurir { $crops } cette saison.
ripens-when = Première récolte pour { $crops } : { $ready }.
blooms-when = Premières fleurs pour { $crops } : { $ready }.
ripens-not-by-then = Pas d’ici là. Première récolte pour { $crops } : { $ready }.
blooms-not-by-then = Pas d’ici là. Premières fleurs pour { $crops } : { $ready }.
ripens-why = Pour cela, il faut { $what } le { $on }. La saison finit vers le { $end } : { $spare ->
    [one] { $spare } jour de marge
   *[other] { $spare } jours de marge
}, en comptant large.
ripens-if = Pour cela, il faut { $what } le { $on }.
ripens-why-short = Début de la récolte ou des fleurs, s’il s’agit de { $what } le { $on } : { $ready }.
ripens-sown-indoors = Compté depuis ton semis à l’intérieur, le { $on }.
ripens-sown-outdoors = Compté depuis ton semis en place, le { $on }.
ripens-sown-too-early = Ton semis en place du { $on } était trop tôt : je compte donc depuis le { $from }.
ripens-count-on = Début de la récolte ou des fleurs : { $ready }.
ripens-spare = La saison finit vers le { $end } : { $spare ->
    [one] { $spare } jour de marge
   *[other] { $spare } jours de marge
}, en comptant large.
ripens-end = La saison finit vers le { $end }.
ripens-end-at-risk = Ton premier gel vient vers le { $end } ; environ un automne sur dix, il gèle dès le { $risk }.
ripens-end-trusted = La date d’automne à laquelle tu te fies est le { $end }.
helps-head = Ce qui aiderait :
helps-earlier = • commencer plus tôt : { $what } au plus tard le { $date }
helps-next-year = • la prochaine fois, commencer plus tôt : { $what } au plus tard le { $date }
helps-variety-from-setting-out = • une variété plus rapide ou plus petite, de { $days } jours au plus depuis la plantation
helps-variety-from-sowing = • une variété plus rapide ou plus petite, de { $days } jours au plus depuis le semis
helps-cover = • couvrir en automne : un voile moyen protège du gel jusqu’à environ { $fleece }, un voile d’hivernage épais jusqu’à environ { $blanket }
helps-nothing = Seuls de grands plants achetés, ou un tunnel, peuvent encore donner quelque chose.
ripens-no-frost = Aucun gel ne termine ta saison, il y a donc tout le temps pour { $crops } ; la chaleur et les mois humides décident à la place.
ripens-next-year = { $crops } : la récolte ou la floraison vient l’année après le semis, donc aucun gel ne presse cette année.

## Seed: how many, tests, days to come up

# $n is a whole number.
percent = { $n }{ "\u202f" }%

# $n is a whole number or one with a decimal: "3", "2.5".
years = { $n ->
    [one] { $n } an
   *[other] { $n } ans
}

seed-count = Pour { $plants ->
    [one] un plant
   *[other] { $plants } plants
} ({ $crop }), sème { $seeds ->
    [one] une graine
   *[other] { $seeds } graines
}.
seed-cells = En alvéoles : { $each } graines dans { $cells ->
    [one] une alvéole
   *[other] chacune des { $cells } alvéoles
}, en ne gardant qu’un plant ; alvéoles vides à prévoir : environ { $empty }.
seed-cells-single = En alvéoles : une graine dans { $cells ->
    [one] une alvéole
   *[other] chacune des { $cells } alvéoles
} ; alvéoles vides à prévoir : environ { $empty }.
seed-count-chance = C’est le plus petit nombre qui donne au moins { $chance } de chances d’avoir assez de plants, si { $losses } des plantules sont perdues après la levée.
seed-rate-stated = Compté avec la germination que tu donnes, { $rate }.
seed-rate-tested = Compté avec ton essai : { $sprouted } graines germées sur { $tested }, { $rate }.
seed-rate-standard-fresh = Le taux est une estimation pour des graines fraîches : { $rate }, la norme minimale des États-Unis (7 CFR 201.31).
seed-rate-standard-aged = Le taux est une estimation : { $rate } pour des graines de { $age }. Des graines fraîches comptent { $fresh }, la norme minimale des États-Unis (7 CFR 201.31), et cela baisse régulièrement jusqu’à la moitié à { $life }.
seed-rate-assumed-fresh = Le taux est une estimation, et une supposition à moi : { $rate } pour des graines fraîches, car la norme minimale des États-Unis (7 CFR 201.31) ne donne rien ici ({ $crop }).
seed-rate-assumed-aged = Le taux est une estimation, et une supposition à moi : { $rate } pour des graines de { $age }. Je compte { $fresh } pour des graines fraîches, car la norme minimale des États-Unis (7 CFR 201.31) ne donne rien ici ({ $crop }) ; cela baisse régulièrement jusqu’à la moitié à { $life }.
seed-better-fresh = Au-dessous de { $least }, mieux vaut des graines fraîches.
seed-test-first = Pour en savoir plus, fais germer 20 graines sur du papier humide et dis-le-moi comme ceci : « { $crop } : 14 graines sur 20 ont germé ».
seed-too-old = Ne compte pas sur ces graines ({ $crop }) : elles se gardent environ { $life }, et à { $age } il n’en lève presque plus. Prends des graines fraîches, ou fais d’abord germer 20 graines sur du papier humide.
seed-too-weak = Ne compte pas sur ces graines ({ $crop }) : à { $rate }, mieux vaut les remplacer.
seed-which-crop = De quelle culture ? Demande par exemple « combien de graines de basilic pour 12 plants ? »
seed-plants-range = Je peux compter les graines pour 1 à { $most } plants entiers, pas pour { $written }.
seed-per-cell-range = Je peux compter avec 1 à { $most } graines entières par alvéole, pas avec { $written }.
seed-rate-range = Un taux de germination va de 1 % à 100 %, donc { $written } % est impossible.
seed-age-range = Je peux compter avec des graines de { $most } ans au plus, pas de { $written }.
seed-year-ahead = L’année { $year } est encore à venir, les graines ne peuvent donc pas en être ; quelle année est sur le sachet ?

test-result = { $sprouted } sur { $tested } ont germé : { $rate }. Pour tout le sachet, le taux est sans doute entre { $low } et { $high } (intervalle à 95 % selon Wilson).
test-replace = Au-dessous de 40 % : remplace ces graines.
test-sow-thicker = De 40 à 50 % : sème plus serré que d’habitude.
test-sow-by-number = De 50 à 80 % : sème d’après le nombre qu’il te faut. Demande-moi par exemple « { $crop } : { $sprouted } graines sur { $tested } ont germé, combien de graines pour 12 plants ? »
test-sow-by-number-plain = De 50 à 80 % : sème d’après le nombre qu’il te faut ; dis-moi la culture et combien de plants tu veux, et je compte les graines.
test-sow-as-usual = Au-dessus de 80 % : sème comme d’habitude.
test-too-few = Pour s’y fier, il faut essayer au moins { $enough } graines (université d’État de l’Iowa, 1999).
test-range = Un essai compte des graines entières, de 1 à { $most }.
test-more-than-tested = { $sprouted } sur { $tested }, c’est impossible : il ne germe pas plus de graines qu’on n’en essaie.

emerge-days = À { $at }, compte environ { $days } pour voir lever { $crops }.
emerge-between = C’est calculé en ligne droite entre { $low } et { $high } dans les essais de Harrington et Minges (1954), graines à { $depth } de profondeur.
emerge-tested = C’est compté dans les essais de Harrington et Minges (1954), graines à { $depth } de profondeur.
emerge-too-slow-cold = Plus de trois semaines, c’est trop froid : des graines qui attendent si longtemps peuvent pourrir.
emerge-too-slow-hot = Plus de trois semaines, c’est trop chaud.
emerge-none-cold = À { $at }, n’espère pas voir lever { $crops } : il fait trop froid. Dans les essais, rien ou presque n’a levé (Harrington et Minges, 1954).
emerge-none-hot = À { $at }, n’espère pas voir lever { $crops } : il fait trop chaud. Dans les essais, rien ou presque n’a levé (Harrington et Minges, 1954).
emerge-uncertain-cold = À { $at }, attends-toi à une levée lente et irrégulière pour { $crops }, ou à rien. Dans les essais, rien ou presque n’a levé à { $none }, et à { $counted } il a fallu { $days } (Harrington et Minges, 1954).
emerge-uncertain-hot = À { $at }, attends-toi à une mauvaise levée pour { $crops }, ou à rien. Dans les essais, il a fallu { $days } à { $counted }, et rien ou presque n’a levé à { $none } (Harrington et Minges, 1954).
emerge-not-tested = Je ne sais pas combien de temps il faut à { $at } pour { $crops } : cela n’a pas été essayé. Cela ne veut pas dire que rien ne lève.
emerge-no-table = Je ne sais pas combien de temps il faut à { $at } pour { $crops } : je n’ai pas d’essais là-dessus.
emerge-usual = D’ordinaire ({ $best }) : { $days }.
emerge-relative = Les essais portaient sur { $relative }, une espèce très proche.
emerge-printings = Dans une autre édition de la table, rien ou presque ne lève à { $at }.
emerge-which-crop = De quelle culture ? Demande par exemple « combien de temps pour lever les poivrons à { $at } ? »
temperature-beyond = Un sol à { $at }, c’est impossible ; je peux compter de { $low } à { $high }.

## Soil temperature

soil-go = Vas-y, tu peux semer { $crops } en pleine terre aujourd’hui. Un sol à { $at } est assez chaud, et d’après la date ça vaut la peine jusqu’au { $next }.
soil-go-on = Le { $date }, tu peux semer { $crops } en pleine terre si le sol reste à { $at } ; d’après la date, ça vaut la peine jusqu’au { $next }.
soil-go-believe-soil = Vas-y, tu peux semer { $crops } en pleine terre. D’après la date, ce serait à partir du { $next }, mais fie-toi au sol : { $at }, c’est assez chaud, et ce qui lève supporte un peu de gel.
soil-go-no-date = D’après le sol, vas-y : { $at }, c’est assez chaud pour semer { $crops } en pleine terre.
soil-wait-believe-soil = Pas encore : la date irait, mais fie-toi au sol. { $at }, c’est trop froid pour { $crops } ; attends qu’il reste à { $warm } ou plus.
soil-wait-no-date = Pas encore : { $at }, c’est trop froid pour { $crops }. Attends que le sol reste à { $warm } ou plus.
soil-wait-both = Pas encore, le sol et la date le disent tous deux. { $at }, c’est trop froid pour { $crops } ; sème quand il reste à { $warm } ou plus, mais pas avant le { $next }.
soil-wait-frost = Pas encore : un sol à { $at } est assez chaud pour { $crops }, mais fie-toi à la date. Le gel tuerait ce qui lève, attends donc le { $next }.
soil-wait-cover = Seulement sous protection : un sol à { $at } est assez chaud pour { $crops }, mais fie-toi à la date. Le gel tuerait ce qui lève ; sans protection, attends le { $next }.
soil-wait-window = Pas encore : un sol à { $at } est assez chaud pour { $crops }, mais fie-toi à la date. Le prochain semis commence le { $next }.
soil-wait-cooler = Pas maintenant : { $at }, c’est trop chaud pour bien faire lever { $crops }. Attends que le sol reste à { $cool } ou moins.
soil-too-late = D’après la date, c’est trop tard pour { $crops }, quel que soit le sol. Les prochains bons jours commencent le { $next }.
soil-too-late-for-good = D’après la date, c’est trop tard pour { $crops }, quel que soit le sol.
soil-needs = Il faut, pour { $crops }, { $minimum } ou plus ; le mieux : { $best }.
soil-above = Au-dessus de { $maximum }, on ne peut pas compter voir lever { $crops }.
soil-above-the-least = C’est au-dessus du minimum pour { $crops } ({ $minimum }) et au-dessous du mieux ({ $best }), ça peut donc être lent ; je n’ai pas d’essais à cette température.
soil-good = C’est dans la meilleure plage pour { $crops }, { $best }.
soil-frozen = Un sol gelé ne donne pas d’eau aux graines ; rien ne lève avant le dégel.
soil-measure = Mesure à la profondeur du semis, plusieurs jours de suite : le sol doit rester aussi chaud, pas seulement l’être une fois.
soil-list-head = Avec un sol à { $at } le { $date }, d’après le sol et la date :
soil-list-none = Avec un sol à { $at } le { $date }, il n’y a rien à semer en pleine terre.
soil-list-go = À semer en pleine terre : { $crops }
soil-list-slow = Possible, mais lent : { $crops }
soil-list-frost = Assez chaud, mais le gel tuerait ce qui lève : { $crops }
soil-list-cold = Bonne date, mais sol trop froid : { $crops }

## What now

now-head = Ce que tu peux commencer aujourd’hui, le { $date } :
now-head-on = Ce que tu peux commencer le { $date } :
now-nothing = Rien à commencer le { $date } parmi tes { $kind }. Profite du jardin.
now-no-frost = Ton jardin n’a pas de gel, les dates de gel ne disent donc pas quoi commencer maintenant. La chaleur et les mois humides décident ; le service agricole de ta région a des dates de plantation pour ton coin.
now-until = { $crop } ({ $date })
now-from = { $crop } (mieux à partir du { $date })
now-more = {" "}et { $count } de plus
group-late = tard, { $how }, ça vaut la peine jusqu’à la date donnée :
group-on-time = { $how }, c’est bon jusqu’à la date donnée :
group-early = tôt mais possible avec du soin, { $how } :
group-sow-indoors = semer à l’intérieur
group-sow-outdoors = semer en pleine terre
group-plant-out = planter au jardin
group-harden-off = endurcir
group-pot-up = rempoter
kind-crops = cultures
kind-vegetables = légumes
kind-herbs = herbes aromatiques
kind-flowers = fleurs

## Cautions

caution-poisonous-plant = Attention : la plante et les graines sont toxiques. Tiens-les loin des enfants et des animaux.
caution-raw-beans = Attention : ces haricots sont toxiques crus ; fais-les bien cuire avant d’en manger.
caution-broad-bean-favism = Attention : les personnes atteintes de favisme (déficit en G6PD) ne doivent pas en manger ; demande à un médecin.
caution-bitter-squash = Attention : ne mange jamais un fruit de cette famille s’il a un goût amer ; recrache-le et jette-le.
caution-green-potatoes = Attention : ne mange pas de pommes de terre vertes ou germées, et tiens les baies et les feuilles loin des enfants.
caution-skin-irritant = Attention : la sève peut brûler la peau au soleil ; mets des gants et des manches longues.
caution-treated-seed = Attention : les graines peuvent être traitées. Lis le sachet, mets des gants, et tiens-les loin des enfants et des animaux.
caution-heat-and-water = Attention : garde au sec les lampes, chauffages, tapis chauffants et leurs prises, ne les modifie pas, et suis les règles électriques de ton pays.
caution-dusty-compost = Attention : humidifie le terreau poussiéreux avant d’y toucher, ne respire pas la poussière et lave-toi les mains.

## Words and names

which-crop = « { $word } » peut désigner { $crops }. Que veux-tu dire ?
which-or-outside = « { $word } » peut désigner deux plantes. Tu veux dire { $outside } ? Pour cela je n’ai pas de dates ; ce qui suit est pour l’autre.
which-or-outside-ask = « { $word } » : tu veux dire { $crop } ? Je n’ai pas de dates pour { $outside }.
unknown-crop = Je ne connais pas « { $written } ». Essaie le nom de tous les jours, comme « tomate ».
unknown-crop-near = Je ne connais pas « { $written } ». Tu veux dire { $near } ?
not-understood = Je n’ai pas compris. Demande-moi par exemple « je peux semer les concombres maintenant ? » ou « quand planter les tomates au jardin ? »
question-without-crop = De quelle culture parles-tu ? Envoie-moi son nom.
month-all = C’est possible durant tout le mois ({ $month }).
month-part = En { $month }, c’est possible ainsi : { $days }.
month-none = Aucun jour ne convient pour cela en { $month }.
# Stands above a line for each of many crops.
month-reckoned = Compté pour le { $date } :
# $written est un jour passé, comme « hier ».
date-gone-by = « { $written } » est passé, je réponds donc pour aujourd’hui. Si tu as semé ce jour-là, dis-le-moi ainsi : /sown { $crop } { $written }
date-impossible = Le calendrier n’a pas de jour « { $written } ». Redemande avec un jour comme « { $example } ».
date-unclear = Je ne sais pas quel jour est « { $written } ». Redemande avec un jour comme « { $example } ».

## Mornings

morning-greeting = Bonjour ! Au programme ce { $date } :
morning-check-forecast = Avant de sortir un plant frileux, regarde les nuits de la semaine, et endurcis-le d’abord.
morning-more = { $count ->
    [one] Encore une tâche t’attend
   *[other] Encore { $count } tâches t’attendent
} : /now
morning-coming = À venir cette semaine :
morning-coming-line = • { $date } : { $what }
job-good-until = { $what } : c’est bon jusqu’au { $until }.
job-last-good-day = { $what } : aujourd’hui est le dernier bon jour.
job-last-good-is = { $what } : le dernier bon jour est le { $until }.
job-late = { $what } : tard, mais ça vaut la peine jusqu’au { $last }.
job-early = { $what } : tôt mais possible avec du soin, mieux à partir du { $from }.
job-for-autumn = { $what } pour l’automne
job-of-sowing = { $what } (semis du { $date })
job-check = { $what } : ça devrait pointer maintenant.
job-check-resow = { $what } : si rien ne pointe, sème de nouveau.
job-check-nothing = { $what } : toujours rien ? { $then }
job-harvest = { $what } : c’est à peu près maintenant.
job-worth-until = { $what } : ça vaut la peine jusqu’au { $last }.
job-before = À faire avant de { $then }.
job-hedge = Une seconde chance à côté du semis à l’intérieur, si tu veux.
job-repeat = Si tu en veux encore : le dernier semis est du { $last }.
job-repeat-heat = Si tu en veux encore : le dernier semis est du { $last }, et la chaleur arrête vite chaque semis.
job-on-surface = Presse les graines sur la surface, sans les couvrir.
job-harden-off = { $what } : sur 7 à 14 jours, tant que les nuits restent au-dessus de { $nights }.
job-when-nights-allow = { $what } dès que les nuits de la semaine restent au-dessus de { $nights }.
button-done = { $number } fait
button-up = { $number } a levé
button-not-up = { $number } rien n’a levé
button-up-undo = { $number } a levé · annuler
button-not-up-undo = { $number } n’a pas levé · annuler
button-later = plus tard
button-skip = laisser
button-done-undo = { $number } fait · annuler
button-skipped-undo = { $number } laissé · annuler
button-later-undo = { $number } plus tard · annuler
notice-done = Noté comme fait le { $date }.
notice-came-up = Noté : levé le { $date }.
notice-not-up = Noté : rien n’a levé.
notice-later = Je t’en reparle le { $date }.
notice-later-too-late = Aujourd’hui est le dernier jour qui en vaut la peine, rien n’a donc changé.
notice-skip = Je n’en parle plus cette saison.
notice-undone = Annulé.
notice-job-gone = Cette tâche n’est plus dans ton plan, rien n’a donc changé. /now montre ce qui y est.
notice-old-button = Ce bouton vient d’un vieux message et je ne sais plus le lire. Rien n’a changé. /help montre ce que je sais faire.
notice-not-yours = Ceci est à la personne qui l’a demandé, rien n’a donc changé. Demande-moi à ton tour et tu auras le tien.
notice-private-only = Fais cela dans notre conversation privée, s’il te plaît.

## Meeting people

start-private = Bonjour { $name } ! Je te dis quoi semer, endurcir et planter au jardin, et quand.
    Dis-moi ce que tu cultives (/grow tomate, basilic) et je t’écris les matins où il y a quelque chose à faire.
start-joined = Te voilà avec { $club }.
start-token-unknown = Cette invitation n’est plus valable ; appuie de nouveau sur le bouton dans le groupe de ton club.
start-need-frost = D’abord, quand gèle-t-il chez toi ? Envoie le dernier gel de printemps et le premier gel d’automne, en moyenne, comme ceci : /frost 15 mai 5 octobre
start-has-frost = Je compte ainsi : { $frost }. /frost change cela pour ton jardin.
start-need-zone = Quel est ton fuseau horaire ? Envoie une ville, comme ceci : /zone Paris. D’ici là, je compte en UTC.
group-greeting = Bonjour ! J’aide à semer et à planter au bon moment. Demande-moi par commande, par exemple /ask je peux semer les concombres maintenant ?, ou réponds à un de mes messages.
    Pour les rappels du matin, ouvre une conversation privée avec moi : je n’ai pas le droit d’écrire en premier.
    Un administrateur peut régler les dates de gel et le fuseau horaire du club avec /club, et tenir des listes de cultures avec /list.
button-open-private = Recevoir mes rappels
help-short = Je réponds à des questions comme « je peux semer les concombres maintenant ? », « quand sortir les tomates ? », « à quelle profondeur semer les pois ? » et « les citrouilles vont-elles mûrir ? », et je te préviens les matins où il y a quelque chose à faire.
help-private = Je réponds à des questions comme « je peux semer les concombres maintenant ? », « quand sortir les tomates ? », « à quelle profondeur semer les pois ? » et « les citrouilles vont-elles mûrir ? », et je compte : « combien de graines de basilic pour 12 plants ? », « 14 graines de poireau sur 20 ont germé », « le sol est à 14 °C, je peux semer les pois ? »

    /grow tomate, basilic – mets des cultures sur ta liste ; je te les rappelle
    /drop basilic – enlèves-en une
    /mycrops – ta liste
    /lists – les listes de ton club, pour s’y abonner
    /now – ce que tu peux faire aujourd’hui
    /sown basilic 12 le 3 avril – dis-moi ce que tu as semé, et je suis ses propres dates
    /sowings – tes semis et la suite
    /variety tomate Lanterne, 75 jours – compter avec les chiffres d’un sachet
    /undo – annule le dernier changement
    /trays tomate 12, basilic 6 – quels semis partagent une plaque
    /frost 15 mai 5 octobre – ton dernier et ton premier gel
    /place – où grandissent tes jeunes plants
    /hold 7 jours – attendre la fin d’un coup de froid
    /zone Paris – ton fuseau horaire
    /hour 7:00 – l’heure de ton rappel
    /holiday jusqu’au 3 juillet – pas de message avant ce jour
    /quiet dimanche – pas de message ce jour de la semaine
    /weekends – tout remettre au week-end
    /settings – tout d’un coup d’œil
    /export – tout ce que je garde sur toi, dans un fichier
    /forget – l’effacer

    Pour arrêter les rappels, retire tes cultures avec /drop tout.
help-group = Demande avec /ask, par exemple « /ask je peux semer les concombres maintenant ? », ou réponds à un de mes messages. /now montre ce que tu peux commencer, /lists les listes du club pour s’y abonner ; /club est pour les administrateurs. Ici, je compte avec les dates du club ; ce qui concerne ton propre jardin et les rappels viennent en privé.

## Manners in a group

# Le dernier mot d'un message par lequel un membre laisse le groupe lire la réponse.
share-word = partager
own-answered = Je t’ai répondu en privé. Si tout le monde peut le lire, termine ton message par « { $word } ».
own-pointer = Cela concerne ton propre jardin, cela reste donc entre nous. Ouvre notre conversation privée avec le bouton et demande-moi là-bas.
group-more = Il y a plus à dire, avec des mises en garde s’il le faut.
button-our-chat = Ouvrir notre conversation
button-read-on = Lire la suite en privé
notice-read-on = Je t’ai écrit en privé.
notice-question-gone = Cette question date de trop longtemps. Repose-la, s’il te plaît.

## Inline queries

inline-need-frost = Donne-moi d’abord tes dates de gel
inline-ask = Je ne connais aucune culture de ce nom ; demande-moi en privé
inline-now = Ce qu’on peut commencer maintenant

## My data

data-private-only = Je ne parle de tes données qu’en privé. Ouvre notre conversation avec le bouton et envoie { $command } là-bas.
export-caption = Tout ce que je garde sur toi, en JSON. Une fois ce fichier envoyé, je n’en garde pas de copie. /forget efface tout.
forget-ask = Cela efface tout ce que je garde sur toi : ton nom et tes réglages, ta liste ({ $crops ->
    [one] { $crops } culture
   *[other] { $crops } cultures
}), tes semis ({ $sowings }), ce que tu m’as dit des travaux, les clubs dont tu fais partie et tous les rappels à venir. Tes clubs eux-mêmes restent comme ils sont. C’est sans retour ; /export t’en donne d’abord une copie.
    Si c’est ce que tu veux, appuie sur le bouton ou envoie les mots « { $word } ».
forget-word = oublie-moi
button-forget = Tout effacer
button-keep = Tout garder
forget-kept = Rien n’a été effacé.
forget-done = C’est fait : tout ce que je gardais sur toi est effacé, et plus aucun rappel ne viendra. Ceci est mon dernier message. Si un jour tu veux recommencer, envoie /start. Bon jardinage !
notice-forget-old = Cette question est trop ancienne pour une réponse, et rien n’a été effacé. Envoie /forget encore une fois.

## Frost

frost-words = dernier gel vers le { $last }, premier gel vers le { $first }
frost-words-trusted = dernier gel au plus tard le { $last } et premier gel au plus tôt le { $first }, des dates auxquelles tu te fies
frost-words-last-only = dernier gel vers le { $last }, pas de gel en automne
frost-words-free = pas de gel
frost-set = C’est noté pour ton jardin : { $frost }. Cela fait une saison de { $days ->
    [one] { $days } jour
   *[other] { $days } jours
}.
frost-set-no-end = C’est noté pour ton jardin : { $frost }.
frost-set-spans = Elle passe par le Nouvel An, comme dans l’hémisphère Sud.
frost-which-basis = Ce sont des moyennes (une année sur deux est pire) ? Ou des dates auxquelles tu te fies (environ une année sur dix est pire) ?
frost-set-free = C’est noté : ton jardin n’a pas de gel. Quels mois y sont trop chauds, et lesquels humides ? Par exemple : chaud de juin à septembre, humide de juin à octobre.
frost-hot-and-wet = C’est noté : { $months }. On plante donc dès le début du mois, en { $starts }, jusqu’au retour de la chaleur en { $heat }. Demande-moi par exemple « quand semer les haricots ? »
frost-only-wet = C’est noté : { $months }. On plante donc dès le début du mois, en { $starts }, jusqu’au retour de la pluie en { $heat }.
months-no-hot = Tu n’as nommé aucun mois chaud, je compte donc sans la chaleur ; pour les ajouter, envoie { $command } puis les deux.
months-how-to = Je ne connais pas les mois chauds et humides de ce jardin ; envoie { $command }, je te les demande et je planifie avec eux.
frost-months-not-understood = Je n’ai pas pu y lire de mois. Quels mois sont trop chauds, et lesquels humides ? Par exemple : chaud de juin à septembre, humide de juin à octobre. Rien n’a changé.
frost-months-all = Si tous les mois sont chauds ou humides, il n’en reste aucun pour planter. Ne donne que les plus chauds et les plus humides, par exemple : chaud de juin à septembre, humide de juin à octobre. Rien n’a changé.
frost-unset = Tes propres dates de gel sont effacées ; celles du club valent, s’il en a.
frost-show = Ton jardin : { $frost }.
frost-show-club = Les dates de ton club valent pour toi : { $frost }.
frost-show-none = Je ne connais pas encore tes dates de gel.
frost-how-to = Envoie le dernier gel de printemps et le premier gel d’automne, jour et mois, comme ceci : /frost 15 mai 5 octobre. S’il ne gèle jamais : /frost jamais
frost-soon = Je ne vois pas la météo, mais s’il va geler : rentre les plants et couvre d’un voile, avant la nuit, ce qui est fragile au jardin. Si la plantation doit attendre, envoie /hold 7 jours.
frost-only-last = J’ai le { $last } comme dernier gel de printemps. Quand vient le premier gel d’automne ? Envoie les deux : /frost { $code } 10-05
# Demandé pour des dates comme 5/6 et 10/5, avec un bouton pour chacune des deux lectures.
frost-which-way = Le mois vient-il d’abord, ou le jour ? Appuie sur ce que tu veux dire.
frost-not-understood = Je n’ai pas pu lire cela comme des dates de gel.
frost-impossible = Le calendrier n’a pas de jour « { $written } ».
frost-same-day = Les deux dates tombent le même jour ; le dernier gel de printemps et le premier gel d’automne doivent être différents.
frost-too-short = Entre le { $last } et le { $first }, il n’y a que { $days } jours sans gel, je n’ai donc rien noté.
frost-unlikely = Je lis ceci : { $frost }. Cela ferait { $days } jours sans gel, ce qui est rare, je n’ai donc encore rien noté.
frost-only-autumn = Avant un premier gel d’automne, il faut un dernier gel de printemps ; envoie les deux.
frost-first-needed = Pour cela, il me faut tes dates de gel. Envoie-les comme ceci : /frost 15 mai 5 octobre
frost-first-needed-group = Pour cela, il me faut des dates de gel. Un administrateur peut régler celles du club avec /club. En privé, je compte avec les tiennes : /frost 15 mai 5 octobre
button-frost-meant = Elles sont justes
button-average = Ce sont des moyennes
button-trusted = Je m’y fie
button-undo = Annuler
button-undo-old = L’annuler
button-put-back = Rétablir
button-frost = Dates de gel
button-zone = Fuseau horaire
button-hour = Heure du rappel
button-quiet = Jours de silence
button-holiday = Vacances
button-holiday-over = De retour de vacances
button-language = Langue
button-metric = °C et cm
button-customary = °F et pouces

## Crops

grow-how-to = Que cultives-tu ? Envoie les noms, comme ceci : /grow tomate, basilic
grow-added = Sur ta liste : { $crops }.
grow-already = Déjà sur ta liste : { $crops }.
grow-first-up = Ensuite : { $what }, à partir du { $date }.
grow-late-up = Tu peux encore { $what } : tard, mais ça vaut la peine jusqu’au { $date }.
grow-now-up = Tu peux { $what } maintenant, c’est bon jusqu’au { $date }.
grow-which = « { $word } » peut désigner { $crops }. Que cultives-tu ?
drop-how-to = Que dois-je retirer ? Envoie les noms, comme ceci : /drop basilic
drop-done = Plus sur ta liste : { $crops }.
drop-not-there = Pas sur ta liste : { $crops }.
drop-left-out = Laissé hors de ton plan : { $crops }. Rien ne change sur { $lists } ; /grow remet une culture.
drop-unsubscribed = Plus dans ton plan : { $lists }.
drop-nothing = Ta liste est vide, il n’y a rien à retirer.
mycrops-empty = Ta liste est vide. Envoie ce que tu cultives, comme ceci : /grow tomate, basilic
mycrops-head = Sur ta liste, { $count ->
    [one] une culture
   *[other] { $count } cultures
} :
mycrops-line = • { $crop } : { $what } à partir du { $date }
mycrops-line-now = • { $crop } : { $what } maintenant, c’est bon jusqu’au { $date }
mycrops-line-late = • { $crop } : { $what } maintenant, tard, mais ça vaut la peine jusqu’au { $date }
mycrops-line-plain = • { $crop }
# $line is one of the lines above; $lists are the club's lists that bring the crop.
mycrops-by-list = { $line } (de { $lists })
mycrops-own-and-list = { $line } (à toi, et de { $lists })
mycrops-left-out = Laissé de côté dans les listes de ton club : { $crops }
page-of = Page { $page } sur { $pages }
button-next-page = Suite ›
button-previous-page = ‹ Retour
button-add = Ajouter : { $crop }
button-crop = { $crop }
button-remind = Me rappeler { $crop }

## Jobs of the day

now-jobs-head = Le { $date }, d’après ta liste :
now-jobs-none = Rien à faire aujourd’hui, le { $date }, pour les cultures de ta liste.

## Sowings

# $crops is a crop's name with its article, with its number where that is known.
sowing-count = { $crops } ({ $count })
sowing-indoors = { $crops }, semis intérieur du { $date }
sowing-outdoors = { $crops }, semis en pleine terre du { $date }
sown-noted = C’est noté : { $what }.
sown-how-to = Qu’as-tu semé, combien et quand ? Comme ceci : /sown basilic 12 le 3 avril
sown-impossible-day = Je ne connais pas de jour « { $written } », rien n’a donc changé. Comme ceci : /sown basilic 12 le 3 avril
sown-stray = Je ne sais pas bien ce que veut dire « { $written } », rien n’a donc changé. Comme ceci : /sown basilic 12 le 3 avril
sown-variety-unknown = Je ne connais pas la variété « { $written } ». Pour que je la garde, envoie ce que dit le sachet, comme ceci : /variety { $crop } { $written } : 75 jours
sown-future = Le { $date } est encore à venir, rien n’a donc changé. Dis-le-moi quand tu auras semé.
sown-long-ago = Le { $date }, c’était il y a plus d’un an, rien n’a donc changé.
sown-bad-count = Je peux noter de 1 à { $most } plants par semis, rien n’a donc changé.
sown-planted = Pas noté : { $crops }, cela se plante, et je ne garde ici que les semis.
sown-bad-warmth = { $at }, c’est impossible pour un sol ou une pièce ; je peux compter de { $low } à { $high }, rien n’a donc changé.
sown-without-frost = Avec tes dates de gel (/frost 15 mai 5 octobre), je peux te dire quand sortir les plants.
amiss-early = C’est un peu tôt : les bons jours commencent le { $from }. D’ici là, garde le semis sous abri.
amiss-too-early = C’est trop tôt, de { $early }.
amiss-too-early-cold = C’est trop tôt pour la pleine terre, de { $early } : la terre devrait rester à { $minimum } ou plus.
amiss-too-early-frost = C’est trop tôt pour la pleine terre, de { $early }, et un gel tuerait ce qui lève.
amiss-too-late = C’était trop tard pour que ça vaille la peine.
amiss-never-outdoors = Semer { $crops } directement en pleine terre ne réussit guère ici : il faut un départ à l’intérieur.
sowing-up = • Levée : { $days }. Toujours rien le { $resow } ? { $then }
sowing-up-room = • Levée dans une pièce à environ { $at } : { $days }. Toujours rien le { $resow } ? { $then }
sowing-up-at = • Levée à environ { $at } : { $days }. Toujours rien le { $resow } ? { $then }
sowing-warning = • { $what }
sowing-below-least = À { $at }, n’espère pas voir lever { $crops } : c’est trop froid, il faut { $minimum } ou plus.
sowing-above-most = À { $at }, n’espère pas voir lever { $crops } : au-dessus de { $maximum }, on ne peut plus y compter.
sowing-not-tested = Je n’ai pas d’essais à { $at } ; ce sont les jours habituels pour { $best }.
sowing-move-warmer = Mets tes pots là où il fait { $best } ; la levée vient alors en { $days }.
sowing-ground-warmer = La levée vient une fois que le sol reste à { $warm } ou plus, si les graines n’ont pas pourri d’ici là.
sowing-cooler = Garde tes pots plus au frais : { $cool } ou moins.
sowing-none-by = • Toujours rien le { $resow } ? { $then }
nothing-up-again = Sème de nouveau.
nothing-up-again-from = Sème de nouveau à partir du { $date }.
nothing-up-other-way = Mieux vaut alors { $what }.
nothing-up-buy = Il sera alors trop tard pour semer de nouveau ; achète de jeunes plants : la plantation vaut la peine jusqu’au { $date }.
nothing-up-too-late = Il sera alors trop tard pour semer de nouveau ; le prochain bon jour est le { $date }.
nothing-up-too-late-for-good = Il sera alors trop tard pour semer de nouveau.
sowing-step = • { $what } : { $days }
sowing-from = • { $what } : à partir du { $from }
sowing-out-mild = • { $what } : à partir du { $from }, dès que les nuits de la semaine restent au-dessus de { $nights }
sowing-harvest = • Première récolte : { $days }
sowing-bloom = • Premières fleurs : { $days }
sowing-old = • À leur sortie, les plants auront { $age }, et { $most }, c’est le plus qu’ils supportent : rempote-les, et donne-leur de la lumière.
sowing-too-old = • À leur sortie, les plants auront { $age }, et { $most }, c’est le plus qu’ils supportent. Mieux vaut semer de nouveau à partir du { $from }.
sowing-too-late = • La récolte ne viendrait qu’après ton premier gel : pour { $crops } de ce semis, il faut une place à l’abri.
came-up-none-waits = Je ne connais aucun semis qui attend de lever. Dis-moi ce que tu sèmes, comme ceci : /sown basilic 12 le 3 avril
came-up-which = Bien ! Lequel ?
not-up-which = Dommage. Lequel ?
came-up-noted = Bien, ça a levé : { $what }.
not-up-noted = Dommage. C’est noté, rien n’a levé : { $what }.
sow-again-now = Tu peux semer de nouveau maintenant.
sow-again-until = Tu peux semer { $crops } de nouveau maintenant ; ça vaut la peine jusqu’au { $last }.
sow-again-from = Attends pour { $crops } : le prochain bon jour pour semer de nouveau est le { $from }.
sow-again-too-late = Il est trop tard pour semer { $crops } de nouveau cette saison.
sow-again-next = Le prochain bon jour pour semer { $crops } est le { $next }.
button-sown-again = Semé de nouveau aujourd’hui
notice-sown-already = Ce semis est déjà noté.
sowings-none = Je ne connais aucun de tes semis qui pousse encore. Dis-moi ce que tu sèmes, comme ceci : /sown basilic 12 le 3 avril
sowings-head = { $count ->
    [one] Un semis :
   *[other] { $count } semis :
}
sowings-line = { $what }. Ensuite : { $step }, à partir du { $date }
sowings-line-now = { $what }. Maintenant : { $step }
sowings-line-plain = { $what }
button-give-up = { $number } abandonné
notice-given-up = Abandonné. /undo annule cela.
undo-nothing = Il n’y a rien à annuler.
undo-sowing-off = Annulé et oublié : { $what }.
undo-sowing-as = De nouveau comme avant : { $what }.
undo-job = Annulé : ce que tu as dit de « { $what } ».
# $setting is the name of what was changed.
undo-setting = { $setting ->
    [frost] Tes dates de gel sont de nouveau comme avant.
    [zone] Ton fuseau horaire est de nouveau comme avant.
    [language] Ta langue est de nouveau comme avant.
    [units] Tes unités sont de nouveau comme avant.
    [hour] Ton rappel vient de nouveau comme avant.
    [days] Tes jours sans message sont de nouveau comme avant.
    [months] Tes mois chauds et humides sont de nouveau comme avant.
    [latitude] Ta latitude est de nouveau comme avant.
    [place] L’endroit où poussent tes plants est de nouveau comme avant.
    [hold] La pause est de nouveau comme avant.
   *[other] Tes réglages sont de nouveau comme avant.
}
undo-crops-off = De nouveau hors de ta liste : { $crops }.
undo-crops-on = De nouveau sur ta liste : { $crops }.
undo-subscribed = « { $list } » est de nouveau dans ton plan.
undo-skip-off = De nouveau dans ton plan, par la liste de ton club : { $crops }.
undo-skip-on = De nouveau laissé de côté : { $crops }.
notice-undo-stale = Autre chose a changé depuis, rien n’a donc été annulé. /undo annule le dernier changement.
# $date est le jour du changement ; $what dit ce que cela donnerait.
undo-old = Ton dernier changement date du { $date }, je préfère donc demander. Rien n’est encore annulé. L’annuler donnerait :
    { $what }
undo-made-today = Ce changement datait d’aujourd’hui à { $time }.
undo-made-on = Ce changement datait du { $date }.
# $what dit ce qui vaut de nouveau.
undo-put-back = Rétabli. Tout est comme avant l’annulation :
    { $what }
notice-put-back-stale = Autre chose a changé depuis, rien n’a donc été rétabli.

## Plants sortis ou morts, arrêter, merci, les mots du métier

planted-noted = C’est noté, au jardin depuis le { $date } : { $crops }.
planted-early = C’est tôt pour { $crops } : couvre les plants pendant les nuits froides. Les bons jours commencent le { $from }.
planted-none = Pour { $crops }, je ne connais ni semis qui attend d’aller au jardin ni plantation dans ton plan, il n’y a donc rien à cocher. /grow met une culture sur ta liste.
potted-noted = C’est noté, repiqué en pot le { $date } : { $crops }.
hardened-noted = C’est noté, endurci le { $date } : { $crops }.
step-none = Rien à cocher : { $crops }, aucun semis n’attend cela et ce n’est pas dans ton plan. Pour noter un semis : /sown
step-future = Le { $date } n’est pas encore là, rien n’a donc changé. Dis-le-moi quand ce sera fait.
planted-future = Le { $date } n’est pas encore là, rien n’a donc changé. Dis-le-moi une fois les plants dehors.
planted-impossible-day = Je ne connais pas de jour « { $written } », rien n’a donc changé. Comme ceci : j’ai planté 6 brocolis le 3 mai
lost-noted = Je suis désolé. C’est noté, il n’en reste rien : { $what }.
lost-none = Je suis désolé. Je n’ai noté aucun semis pour { $crops }, rien n’a donc changé.
lost-some = Je suis désolé. Comme il en reste ({ $crops }), rien n’a changé. Si tout est perdu, dis-moi : « tout est mort : { $crops } ».
lost-which = Je suis désolé. Lequel ?
stop-how-to = Rien n’a encore changé. C’est toi qui décides de ce que je t’écris :
    • rien pendant un temps : /holiday jusqu’au 3 juillet
    • rien certains jours de la semaine : /quiet dimanche
    • plus aucun rappel : /drop tout vide ta liste
    • partir tout à fait : /forget efface tout ce que je garde sur toi
button-stop-holiday = Pause jusqu’à un jour
button-stop-days = Jours sans message
thanks = Avec plaisir. Que tout lève bien !
# $night est une température.
term-hardening-off = L’endurcissement habitue au soleil, au vent et aux nuits fraîches les plants venus de l’intérieur, avant qu’ils restent dehors : d’abord quelques heures à l’ombre, puis chaque jour plus longtemps et plus au soleil, pendant une à deux semaines. Je le nomme 14 à 7 jours avant la plantation ; rentre-les les nuits sous { $night } (University of Maryland Extension, 2023).
term-potting-up = Repiquer ou rempoter, c’est passer un jeune plant dans un pot plus grand avant que ses racines remplissent l’ancien. Je le nomme trois à quatre semaines après le semis, quand les premières vraies feuilles sont ouvertes, là où c’est utile (pratique courante).
term-setting-out = Planter au jardin, c’est y mettre les plants venus de l’intérieur. Les jours commencent autant de semaines avant ou après ton dernier gel moyen que le dit la classe de la culture, et pour ce que le gel tue, pas avant la date à laquelle tu te fies ; ensuite, ce sont les nuits de la semaine qui décident.
term-succession = Les semis échelonnés, c’est ressemer un peu de temps en temps pour avoir toujours de quoi récolter. Après chaque semis je nomme le suivant, à l’intervalle de la culture, tant que semer en pleine terre vaut la peine ; là où la chaleur de l’été met fin à une culture, les semis d’automne commencent une autre série.
term-cover = La protection tient le froid loin de la planche, et j’en tiens compte ainsi : un voile avance de deux semaines ce qui supporte le froid, et pas du tout ce qui est frileux (pratique courante ; il n’arrête qu’un gel léger, Colorado State University Extension), un châssis froid avance de trois semaines ce qui supporte le froid (University of Vermont Extension), un tunnel avance tout de trois semaines (pratique courante). Dis-moi avec /place ce que tu as.
term-last-frost = Ton dernier gel moyen est le jour après lequel il gèle encore un printemps sur deux ; il y a gel quand l’air est à 0 °C ou moins. Une date à laquelle tu te fies est celle après laquelle il ne gèle plus que dans un printemps sur dix environ ; je compte qu’elle vient { $days } jours plus tard (Moyer, University of Delaware, 1970). Les semis se comptent à rebours à partir de là.
term-first-frost = Ton premier gel moyen est le jour avant lequel il a déjà gelé un automne sur deux ; il y a gel quand l’air est à 0 °C ou moins. Dans un automne sur dix environ il a gelé { $days } jours plus tôt, ce qui mûrit avant est donc à l’abri. Les semis d’automne se comptent à rebours à partir du premier gel.
term-your-frost = Ici je compte avec : { $frost }.

## Varieties

# $name is a variety's name as the member wrote it.
variety-name = { $crop } « { $name } »
by-packet = D’après ton sachet de { $variety } : { $packet }.
short-variety = { $variety } : { $line }
variety-how-to = Dis-moi ce que dit un sachet, le nom de la culture d’abord, comme ceci : /variety tomate Lanterne : semer à l’intérieur 6-8 semaines avant le dernier gel, 75 jours
variety-noted = Noté : { $variety }, { $packet }. Je compte ainsi désormais.
variety-already = J’ai déjà exactement cela pour { $variety }, rien n’a changé.
variety-follows = Les plans et les rappels pour { $crops } suivent désormais cette variété ; pour les autres, demande avec leur nom.
variety-now-follows = Les plans et les rappels suivent désormais { $variety }.
variety-removed = Oublié : { $variety }.
variety-crop-again = Pour { $crops }, je compte de nouveau avec les chiffres habituels.
variety-unknown = Je ne connais aucune variété « { $written } » chez toi, rien n’a donc changé. /variety en montre la liste.
variety-which-one = Laquelle veux-tu dire : { $varieties } ? Renvoie-le avec son nom ; rien n’a changé.
variety-which = « { $word } » peut désigner { $crops }. Renvoie-le avec le nom complet ; rien n’a changé.
variety-which-crop = De quelle culture est ce sachet ? Renvoie-le avec son nom d’abord ; rien n’a changé.
variety-two-crops = J’y lis deux cultures, { $crops }. Un sachet n’en contient qu’une, et une variété ne peut pas porter le nom d’une culture ; rien n’a changé.
variety-no-numbers = Je n’y trouve aucun chiffre de sachet, rien n’a donc changé. Comme ceci : /variety tomate Lanterne : semer à l’intérieur 6-8 semaines avant le dernier gel, 75 jours
variety-name-long = Le nom d’une variété a { $most } caractères au plus, rien n’a donc changé. Envoie la culture et un nom court, puis les chiffres.
variety-name-common = « { $written } » est un mot trop courant pour reconnaître une variété, rien n’a donc changé. Donne-lui un nom bien à elle, ou aucun.
variety-too-many = Je garde { $most } variétés au plus pour toi, rien n’a donc changé. /variety en montre la liste ; enlèves-en une d’abord.
varieties-head = Tes variétés :
varieties-line = { $number }. { $variety } : { $packet }
varieties-line-followed = { $number }. { $variety } : { $packet } (les plans et les rappels suivent celle-ci)
button-follow = { $number } suivre
button-drop-variety = { $number } enlever
notice-variety-gone = Cette variété a changé depuis ; /variety montre où elles en sont.
undo-variety-off = Annulé et oublié : { $variety }.
undo-variety-as = De nouveau comme avant : { $variety }.
packet-indoors = semer à l’intérieur { $weeks } avant le dernier gel
packet-set-out = planter au jardin { $when }
packet-in-place = semer en place { $when }
packet-before = { $weeks } avant le dernier gel
packet-after = { $weeks } après le dernier gel
packet-around = entre { $before } avant et { $after } après le dernier gel
packet-at-frost = autour du dernier gel
packet-after-danger = semer en place après le dernier gel
packet-days = récolte en { $days }
packet-days-from-setting-out = récolte { $days } après la plantation
packet-days-from-sowing = récolte { $days } après le semis
packet-up = levée en { $days }
packet-depth = profondeur { $depth }
packet-apart = { $apart } entre les plants
packet-rows = { $rows } entre les rangs
packet-left-indoors = { $crops } : ici, pas de semis à l’intérieur, je laisse donc ces semaines de côté.
packet-left-outdoors = { $crops } : ici, pas de semis en place, je laisse donc cette date de côté.
packet-bad-days = { $number } jours jusqu’à la récolte, c’est impossible, rien n’a donc changé. Regarde le sachet : j’accepte de { $low } à { $high }.
packet-bad-indoors = { $number } semaines à l’intérieur, c’est impossible, rien n’a donc changé. Regarde le sachet : j’accepte de { $low } à { $high }.
packet-bad-offset = À { $number } semaines du dernier gel, c’est impossible, rien n’a donc changé. Regarde le sachet : j’accepte de { $low } à { $high }.
packet-bad-up = { $number } jours pour lever, c’est impossible, rien n’a donc changé. Regarde le sachet : j’accepte de { $low } à { $high }.
packet-bad-depth = Une profondeur de { $depth }, c’est impossible, rien n’a donc changé. Regarde le sachet : j’accepte jusqu’à { $most }.
packet-bad-spacing = Une distance de { $apart }, c’est impossible, rien n’a donc changé. Regarde le sachet : j’accepte jusqu’à { $most }.

## How far north

latitude-how-to = À combien de degrés au nord ou au sud de l’équateur est ton jardin ? Comme ceci : /latitude 47
latitude-bad = « { $written } » n’est pas une latitude. Envoie des degrés de 0 à 90, comme ceci : /latitude 47, ou au sud de l’équateur /latitude 33 S
latitude-set = C’est noté : environ { $degrees } degrés nord.
latitude-set-south = C’est noté : environ { $degrees } degrés sud.
onion-ask-latitude = La longueur de tes jours décide quels oignons forment des bulbes. À quelle latitude es-tu ? Comme ceci : /latitude 47
onion-long = Si loin de l’équateur, choisis des oignons de jours longs : ils forment leurs bulbes à partir de 14 heures de jour.
onion-long-intermediate = À cette latitude, les oignons de jours longs vont bien (bulbes à partir de 14 heures de jour), et ceux de jours intermédiaires (12 à 14 heures) aussi.
onion-intermediate = À cette latitude, choisis des oignons de jours intermédiaires : ils forment leurs bulbes avec 12 à 14 heures de jour.
onion-intermediate-short = À cette latitude, les oignons de jours intermédiaires vont bien (bulbes à partir de 12 à 14 heures de jour), et ceux de jours courts (10 à 12 heures) aussi.
onion-short = Si près de l’équateur, choisis des oignons de jours courts : ils forment leurs bulbes avec 10 à 12 heures de jour.

## Trays

# $vigour is small, upright or sprawling: how a seedling grows in the tray.
trays-head = Plaques pour ce que tu sèmes à l’intérieur { $days } :
trays-none = Rien de cela ne se sème en plaque dans les deux semaines qui viennent.
trays-none-of-list = Rien de ta liste ne se sème en plaque dans les deux semaines qui viennent.
trays-empty-list = Ta liste est vide. Donne les cultures et leurs alvéoles, comme ceci : /trays tomate 12, basilic 6
trays-how-to = Quelles cultures, et combien d’alvéoles pour chacune ? Comme ceci : /trays tomate 12, basilic 6
trays-bad-count = « { $written } » n’est pas un nombre d’alvéoles ; donne de 1 à { $most } par culture, comme ceci : /trays tomate 12, basilic 6
trays-no-crop = « { $written } » alvéoles de quoi ? Donne chaque culture avec son nombre, comme ceci : /trays tomate 12, basilic 6
trays-which = « { $word } » peut désigner { $crops } : donne un de ces noms.
trays-too-long = C’est plus que je ne peux répartir d’un coup ; envoie moins de cultures.

# $warmth is tray-warmth or nothing, $like is tray-like; trays that are alike are told together.
tray-line = Plaque { $number }, { $cells } alvéoles de { $size }{ $warmth } : { $crops }. { $like }
tray-line-several = Plaques { $number } à { $last }, chacune de { $cells } alvéoles de { $size }{ $warmth } : dans chacune { $crops }. { $like }
tray-warmth = { " " }(chaleur { $best })
tray-crop = { $crops } ({ $cells })
tray-crop-from = { $crops } ({ $cells }, à semer le { $date })
tray-crop-early = { $crops } ({ $cells }, tôt ; mieux à partir du { $date })
tray-like = { $vigour ->
    [small] Petits plants
    [upright] Plants dressés
   *[sprawling] Plants qui s’étalent
}, sortie à l’âge de { $age }.
tray-light = Laisse la plaque à la lumière jusqu’à la levée.
tray-dark = Laisse la plaque dans le noir jusqu’à la levée.
tray-pot-up = À rempoter { $days }, en pots de { $pot } : { $crops }.
tray-pot-up-plain = À rempoter { $days } : { $crops }.
tray-too-early = { $crops } : pas encore, à partir du { $next }.
tray-too-late = { $crops } : trop tard pour une plaque maintenant ; prochain bon jour le { $next }.
tray-too-late-for-good = { $crops } : trop tard pour une plaque, et ta saison est trop courte pour un autre essai.
tray-why-together = { $vigour ->
    [small] Tous ces plants sont petits
    [upright] Tous ces plants sont dressés
   *[sprawling] Tous ces plants s’étalent, loin des plus petits
} et veulent des alvéoles de { $size } ; fin du séjour en plaque : { $leave } ; meilleur âge à la sortie : { $age }. La même chaleur et la même lumière conviennent à leurs graines.
tray-why-alone = { $vigour ->
    [sprawling] Ces plants s’étalent, leur place est donc loin des plus petits, et rien d’autre ici ne leur ressemble.
   *[other] Rien d’autre ici n’est assez proche par les alvéoles, la croissance, l’âge, la chaleur et la lumière.
}
tray-why-no-gain = D’autres cultures iraient ici aussi, mais cela n’épargnerait aucune plaque.
tray-crop-why = { $vigour ->
    [small] Petits plants
    [upright] Plants dressés
   *[sprawling] Plants qui s’étalent
} : avec un semis du { $sow }, ils ont { $age } quand ils peuvent sortir, vers le { $out } ; des alvéoles de { $size } leur suffisent jusque-là.
tray-crop-why-pot-up = { $vigour ->
    [small] Petits plants
    [upright] Plants dressés
   *[sprawling] Plants qui s’étalent
} : avec un semis du { $sow }, ils ont { $age } quand ils peuvent sortir, vers le { $out } ; des alvéoles de { $size } leur suffisent jusqu’au { $by }, rempote-les donc.
tray-crop-why-early = C’est tôt ; mieux à partir du { $date }.

# The member's other crops, a line for each reason; $crops is a list of names.
tray-rest-from = { $crop } (à partir du { $date })
tray-rest-not-yet = Pas encore : { $crops }.
tray-rest-too-late = Trop tard pour une plaque : { $crops }.
tray-rest-in-place = Mieux vaut semer ou planter en place : { $crops }.
tray-rest-settled = Déjà semé ou laissé : { $crops }.

## Cold spells

hold-set = En pause jusqu’au { $date } : d’ici là, je ne te dis pas d’endurcir ni de planter au jardin.
hold-set-club = En pause pour le club jusqu’au { $date } : d’ici là, je ne dis à personne d’endurcir ni de planter au jardin. /hold montre à chacun lesquels de ses plants ne peuvent pas attendre.
hold-waits = Cela repousse : { $jobs }.
hold-nothing-waits = Rien sur ta liste n’était à endurcir ou à planter au jardin d’ici là.
hold-can-wait = Tes jeunes plants peuvent attendre jusque-là.
hold-pot-up = { $crops } : les plants auront { $age } ce jour-là, plus qu’ils ne supportent dans leurs alvéoles. Rempote-les.
hold-too-old = { $crops } : les plants auront { $age } ce jour-là, trop pour attendre. Endurcis-les et plante-les sous abri les jours les plus doux, ou achète de jeunes plants plus tard.
hold-too-old-sow-again = { $crops } : les plants auront { $age } ce jour-là, trop pour attendre. Plante-les sous abri les jours les plus doux, ou sème de nouveau : ça vaut la peine jusqu’au { $last }.
hold-off = La pause est finie ; dès aujourd’hui, je reparle de tout.
hold-off-own = Ta propre pause est finie.
hold-off-club = La pause du club est finie ; dès aujourd’hui, je reparle de tout.
hold-none = Rien n’est en pause.
hold-club-counts = Ton club attend jusqu’au { $date }, et cela vaut aussi pour toi.
hold-how-to = En cas de coup de froid, dis combien de jours il faut attendre pour endurcir et planter au jardin, de 1 à 60 : /hold 7 jours, ou jusqu’à quel jour : /hold jusqu’à vendredi. Pour y mettre fin : /hold fin
hold-how-to-club = En cas de coup de froid, dis combien de jours le club doit attendre, de 1 à 60 : /club hold 7 jours, ou jusqu’à quel jour : /club hold jusqu’à vendredi. Pour y mettre fin : /club hold fin
hold-show = En pause jusqu’au { $date }.
hold-bad = Je peux attendre de 1 à 60 jours, comme ceci : /hold 7 jours, ou /hold jusqu’à vendredi. Rien n’a changé.
hold-bad-club = Je peux attendre de 1 à 60 jours, comme ceci : /club hold 7 jours, ou /club hold jusqu’à vendredi. Rien n’a changé.
now-held = Endurcir et planter au jardin attendent jusqu’au { $date }.
settings-hold = • Coup de froid : pause jusqu’au { $date }
settings-hold-club = • Coup de froid : pause jusqu’au { $date } (de ton club)

## Time zone, hour, language, units

zone-set = Ton fuseau horaire est { $zone } ; il y est maintenant { $time }.
zone-how-to = Envoie une ville ou le nom d’un fuseau, comme ceci : /zone Paris
zone-show = Ton fuseau horaire est { $zone }.
zone-show-none = Je ne connais pas ton fuseau horaire et je compte en UTC.
zone-near = Je ne connais pas le lieu « { $written } ». Tu veux dire l’un de ceux-ci ?
zone-unknown = Je ne connais pas le lieu « { $written } ». Envoie une plus grande ville près de chez toi, ou le nom d’un fuseau comme Europe/Paris.
hour-set = Les rappels viennent à { $time } ({ $zone }).
hour-how-to = Envoie une heure, comme ceci : /hour 7:00
hour-show = Les rappels viennent à { $time } ({ $zone }).
hour-bad = « { $written } » n’est pas une heure. Envoie-la comme ceci : /hour 7:00
quiet-none = Les messages peuvent venir tous les jours.
quiet-show = Jours sans message : { $days }. Ce qui serait venu est dans le message suivant, et un dernier bon jour qui tombe là est annoncé avant.
quiet-how-to = Touche un jour pour le changer, ou écris-le, comme ceci : /quiet dimanche
quiet-bad = Je n’ai trouvé aucun jour de la semaine dans « { $written } », rien n’a donc changé. Comme ceci : /quiet dimanche, ou /quiet fin
quiet-all = Il ne resterait aucun jour pour les messages, rien n’a donc changé. Pour les arrêter un moment : /holiday jusqu’au 3 juillet
button-day = { $day }
button-day-quiet = { $day } : silence
weekends-how-to = Quand jardines-tu ? « Plus tard » remet alors une tâche au bon jour.
weekends-on = Noté : tu jardines le week-end. « Plus tard » remet une tâche au week-end suivant, mais jamais après son dernier bon jour.
weekends-off = Noté : tu jardines n’importe quel jour. « Plus tard » remet une tâche au prochain jour où un message peut venir.
button-weekends-on = Je jardine le week-end
button-weekends-off = Je jardine tous les jours
holiday-how-to = Jusqu’à quand pars-tu ? Envoie le jour où les messages peuvent revenir, comme ceci : /holiday jusqu’au 3 juillet
holiday-show = Tu es en vacances, sans message avant le { $date }. Envoie un autre jour pour changer cela, ou /holiday fin pour y mettre fin.
holiday-set = Bonnes vacances ! Pas de message avant le { $date }. Ce que tu manques et qui en vaut encore la peine sera dans le premier.
holiday-before = Ceci se termine avant, fais-le donc avant de partir :
holiday-off = Bon retour ! Les messages reviennent dès le matin prochain.
holiday-off-none = Tu n’es pas en vacances ; les messages viennent comme d’habitude.
holiday-bad = Je n’ai pas pu lire de jour dans « { $written } », rien n’a donc changé. Comme ceci : /holiday jusqu’au 3 juillet
holiday-impossible = Le calendrier n’a pas de jour « { $written } », rien n’a donc changé. Comme ceci : /holiday jusqu’au 3 juillet
holiday-past = Le { $date } n’est pas après aujourd’hui, rien n’a donc changé. Comme ceci : /holiday jusqu’au 3 juillet
holiday-too-long = Le { $date } est à plus d’un an, rien n’a donc changé. Envoie un jour plus proche.
holiday-several = Cela fait plus d’un jour, rien n’a donc changé. Des vacances commencent tout de suite ; envoie seulement le jour où les messages peuvent revenir, comme ceci : /holiday jusqu’au 3 juillet
language-how-to = Quelle langue ?
language-set = D’accord, on continue dans cette langue : { $language }.
language-unknown = Je ne parle pas encore « { $written } ». Les langues que je parle : { $languages }.
language-name-en = English
language-name-en-GB = English (UK)
language-name-en-US = English (US)
language-name-de = Deutsch
language-name-es = Español
language-name-fr = Français
units-set-metric = Désormais en °C et en cm.
units-set-customary = Désormais en °F et en pouces.
settings-head = Tes réglages
settings-frost = • Gel : { $frost }
settings-frost-none = • Gel : pas indiqué
settings-frost-club = • Gel : { $frost } (de ton club)
settings-zone = • Fuseau horaire : { $zone }
settings-zone-club = • Fuseau horaire : { $zone } (de ton club)
settings-zone-none = • Fuseau horaire : pas indiqué, donc UTC
settings-hour = • Rappels à { $time }
settings-quiet = • Jours sans message : { $days }
settings-weekends = • « Plus tard » attend le week-end
settings-holiday = • En vacances, pas de message avant le { $date }
settings-units-metric = • Unités : °C et cm
settings-units-customary = • Unités : °F et pouces
settings-language = • Langue : { $language }
settings-club = • Club : { $club }
settings-hot-and-wet = • Mois chauds et humides : { $months }
settings-unreachable = Les rappels viennent dans notre conversation privée ; ouvre-la une fois et envoie /start.

## Club

club-head = { $club }, réglages pour tous ceux qui n’ont pas les leurs
club-reach-all = • Membres : { $members } ; les rappels peuvent joindre tout le monde
club-reach = • Membres : { $members } ; les rappels peuvent en joindre { $reached }. Les autres doivent ouvrir notre conversation privée et envoyer /start.
club-only-in-group = /club fonctionne dans le groupe de ton club, où je peux voir qui sont ses administrateurs.
club-not-administrator = Seuls les administrateurs de ce groupe peuvent changer les réglages du club. /frost règle ton propre jardin.
club-role-unknown = Je n’ai pas pu vérifier qui sont les administrateurs. Réessaie dans une minute, s’il te plaît.
club-frost-set = C’est noté pour le club : { $frost }. Cela fait une saison de { $days ->
    [one] { $days } jour
   *[other] { $days } jours
}. Les membres qui ont leurs propres dates les gardent.
club-frost-set-no-end = C’est noté pour le club : { $frost }. Les membres qui ont leurs propres dates les gardent.
club-frost-set-free = C’est noté pour le club : pas de gel. Quels mois y sont trop chauds, et lesquels humides ? Réponds à ce message, par exemple : chaud de juin à septembre, humide de juin à octobre. Les membres qui ont leurs propres réglages les gardent.
club-frost-unset = Le club n’a plus de dates de gel.
club-frost-how-to = Réponds à ce message avec le dernier gel de printemps et le premier gel d’automne du club, en moyenne, comme ceci : 15 mai 5 octobre
club-zone-set = Le fuseau horaire du club est { $zone }.
club-zone-how-to = Réponds à ce message avec une ville ou le nom d’un fuseau, comme ceci : Paris
club-language-set = La langue du club : { $language }.
club-not-understood = Je ne connais pas le réglage « { $written } », rien n’a donc changé.
club-how-to = Règle-les ici, ou en une ligne : /club frost 05-15 10-05, /club zone Paris, /club language fr, /club digest lundi 8:00, /club hold 7 jours
settings-digest = • La semaine du club : { $day }, { $time }
settings-digest-none = • La semaine du club : pas envoyée

## The club's week

# $count is how many members grow the crop, $when one of the two below.
digest-head = La semaine du club, { $days }, d’après les dates de gel du club :
digest-opens = Commence cette semaine :
digest-closes = Se termine bientôt :
digest-line = • { $what } : { $when } (dans { $count ->
    [one] un jardin
   *[other] { $count } jardins
} du club)
digest-from = à partir du { $date }
digest-until = c’est bon jusqu’au { $date }
digest-more = { $count ->
    [one] et une chose de plus
   *[other] et { $count } de plus
}
digest-foot = Tes propres dates peuvent différer : demande-moi /now.
digest-show = Ce groupe reçoit la semaine du club : { $day }, { $time }.
digest-show-none = Ce groupe ne reçoit pas la semaine du club.
digest-how-to = Envoie un jour et une heure, comme ceci : /club digest lundi 8:00. Avec « ici » à la fin, elle vient dans le sujet où tu l’écris. /club digest fin l’arrête.
digest-bad = Je n’ai pas pu lire un jour de la semaine et une heure dans « { $written } », rien n’a donc changé. Comme ceci : /club digest lundi 8:00 ici, ou /club digest fin
digest-set = Noté, ce groupe reçoit la semaine du club : { $day }, { $time }. Une semaine où rien ne commence ni ne se termine n’en a pas.
digest-set-here = Noté, la semaine du club vient dans ce sujet : { $day }, { $time }. Une semaine où rien ne commence ni ne se termine n’en a pas.
digest-topic-closed = Le sujet où elle devait venir est fermé, elle vient donc ici. Qui administre ou aide peut en choisir un autre : écrivez-y /club digest avec le jour, l’heure et « ici ».
digest-off = Noté : la semaine du club n’est plus envoyée.
digest-needs-frost = Il faut d’abord les dates de gel du club : /club frost 05-15 10-05

## Helpers of a club

helpers-none = Personne ne t’aide encore.
helpers-head = Ces personnes peuvent changer les réglages et les listes du club : { $names }.
helper-how-to = Pour nommer quelqu’un, réponds à un de ses messages avec /club helper add ; pour y mettre fin, avec /club helper remove.
helper-added = { $name } peut désormais changer les réglages du club et ses listes. /club helpers montre qui le peut.
helper-already = { $name } aide déjà le club.
helper-removed = { $name } n’aide plus le club.
helper-unknown = Cette personne n’aide pas le club, rien n’a donc changé.
helper-is-bot = Un bot, ou une personne qui écrit sous anonymat, ne peut pas aider ainsi. Réponds au message d’une personne avec /club helper add.
helpers-too-many = Un club compte { $most } aides au plus, rien n’a donc changé. /club helpers les montre.
helpers-not-administrator = Seuls les administrateurs de ce groupe peuvent nommer des aides.
button-helper-remove = Retirer { $name }

## Which club is meant

which-club = En privé, les dates de gel, le fuseau horaire, la langue et les listes valent pour toi d’après { $club }. Quel club veux-tu ?
which-club-gone = Tu n’es plus dans ce club, rien n’a donc changé. /club montre tes clubs.
club-chosen = En privé, c’est désormais { $club } qui vaut : ses dates de gel, son fuseau horaire, sa langue et ses listes, là où tu n’as rien choisi.
start-several = Tu es aussi dans { $others }. En privé, c’est désormais { $club } qui vaut ; /club change cela.
button-club = { $club }
button-which-club = Un autre club

## The club's lists

lists-head = Listes de { $club }. Abonne-toi, et les cultures d’une liste sont dans ton plan :
lists-line = • { $list } : { $count ->
    [0] encore aucune culture
    [one] une culture
   *[other] { $count } cultures
}
lists-line-mine = • { $list } : { $count ->
    [0] encore aucune culture
    [one] une culture
   *[other] { $count } cultures
}, dans ton plan
lists-none = { $club } n’a pas encore de liste. Dans le groupe, un administrateur ou une aide en commence une ainsi : /list nouvelle Coin salsa : tomate, poivron, oignon
lists-no-club = Les listes sont à un club. Appuie sur le bouton sous mon message d’accueil dans le groupe de ton club, puis essaie encore.
lists-how-to-short = /list aide montre comment les changer.
lists-how-to = Pour les administrateurs et leurs aides, dans le groupe :
    /list nouvelle Coin salsa : tomate, poivron – commencer une liste
    /list salsa + basilic, aneth – y mettre des cultures
    /list salsa - poivron – en retirer une
    /list renomme salsa Coin chaud – un autre nom
    /list note salsa : pour le carré près de la grille – une ligne de texte
    /list partage salsa – un code avec lequel un autre club la copie
    /list copie ABCD-EFGH – copier la liste d’un autre club
    /list archive salsa – la ranger
    Pour tout le monde :
    /list salsa – la regarder
    /list rejoins salsa, /list quitte salsa – s’abonner ou non
lists-only-in-group = Les listes du club se changent dans son groupe, où je vois qui en a le droit.
lists-not-coordinator = Seuls les administrateurs de ce groupe et les aides qu’ils nomment peuvent changer ses listes. /grow et /drop sont pour tes propres cultures.
lists-too-many = Un club garde { $most } listes au plus, rien n’a donc changé. /list archive en range une.
list-crops = Cultures : { $crops }
list-without-crops = Elle n’a encore aucune culture.
list-subscribers = { $count ->
    [0] Personne n’y est encore abonné.
    [one] Une personne y est abonnée.
   *[other] { $count } personnes y sont abonnées.
}
list-left-out = Tu laisses de côté : { $crops }. /grow remet une culture.
list-gone = Cette liste n’est pas parmi celles du club, rien n’a donc changé. /lists les montre.
list-unknown = Je ne connais pas de liste « { $written } » ici. Il y a { $lists }.
list-which = Quelle liste ? Commence par son nom, comme ceci : /list salsa + basilic
list-which-crop = « { $word } » peut désigner { $crops }. Renvoie-le avec le nom complet.
list-new-how-to = Comment s’appelle la liste ? Comme ceci : /list nouvelle Coin salsa : tomate, poivron, oignon
list-name-too-long = Le nom d’une liste a { $most } caractères au plus, rien n’a donc changé.
list-name-is-verb = Le nom d’une liste ne peut pas commencer par « { $word } », car ce mot me dit quoi faire. Choisis un autre nom ; rien n’a changé.
list-name-taken = Il y a déjà une liste « { $list } », rien n’a donc changé. Choisis un autre nom, ou renomme d’abord celle-là.
list-made = Nouvelle liste « { $list } » : { $crops }.
list-made-empty = Nouvelle liste « { $list } », encore sans cultures.
list-copied = Copiée comme liste de ce club, « { $list } » : { $crops }.
list-made-next = On s’abonne avec le bouton de la liste, ici ou en privé avec /lists.
list-too-many-crops = Une liste a { $most } cultures au plus, rien n’a donc changé.
list-added = Maintenant sur « { $list } » : { $crops }.
list-already = Déjà sur « { $list } » : { $crops }.
list-add-how-to = Quelles cultures ? Comme ceci : /list { $list } + basilic, aneth
list-taken-off = Plus sur « { $list } » : { $crops }.
list-not-on-it = Pas sur « { $list } » : { $crops }.
list-take-off-how-to = Quelles cultures ? Comme ceci : /list { $list } - basilic
list-who-hears = { $count ->
    [one] La personne qui y est abonnée l’apprend dans son prochain message du matin.
   *[other] Les { $count } personnes qui y sont abonnées l’apprennent dans leur prochain message du matin.
}
list-rename-how-to = Comment s’appellera-t-elle ? Comme ceci : /list renomme { $list } Coin chaud
list-renamed = « { $list } » s’appelle désormais « { $name } ».
list-note-how-to = Quelle ligne de texte ? Comme ceci : /list note { $list } : pour le carré près de la grille
list-note-too-long = La ligne de texte d’une liste a { $most } caractères au plus, rien n’a donc changé.
list-noted = « { $list } » a sa ligne de texte. /list { $list } la montre.
list-note-gone = « { $list } » n’a plus de ligne de texte.
list-archived = « { $list } » est rangée : elle n’est plus dans le plan de personne, et aucun code n’y mène.
list-reopened = « { $list } » est de retour, pour ses abonnés aussi. Partage-la de nouveau si un autre club a besoin de son code.
list-not-archived = Cette liste n’est pas rangée, rien n’a donc changé. /lists montre les listes du club.
list-shared = Dans un autre club, on copie « { $list } » avec ceci :
    /list copie { $code }
    Cela marche jusqu’à ce que la liste soit rangée ; les changements d’après restent dans chaque club.
list-copy-how-to = Envoie le code que l’autre club t’a donné, comme ceci : /list copie ABCD-EFGH
list-code-unknown = Aucune liste n’est partagée sous « { $written } ». Redemande le code à l’autre club.
list-subscribed = « { $list } » est maintenant dans ton plan.
list-subscribed-already = « { $list } » est déjà dans ton plan.
list-unsubscribed = « { $list } » n’est plus dans ton plan. Ce que tu as choisi toi-même y reste.
list-not-subscribed = « { $list } » n’était pas dans ton plan.
list-open-private = Pour les rappels, ouvre notre conversation privée et appuie sur Démarrer.
list-other-club-holds = En privé, c’est { $club } qui vaut pour toi à présent ; /club y change cela.
list-anonymous = Tu écris ici sous anonymat, je ne sais donc pas de quel plan il s’agit. /lists marche dans notre conversation privée.
list-news-came = Ton club a mis sur « { $list } » : { $crops }. C’est donc dans ton plan.
list-news-went = Ton club a retiré de « { $list } » : { $crops }.
list-news-both = Ton club a changé « { $list } ». Nouveau : { $came }. Retiré : { $went }.
list-news-archived = Ton club a rangé la liste « { $list } ». Parti avec elle : { $crops }.
list-news-stay = Toujours dans ton plan malgré cela : { $crops }.
list-news-next = /mycrops montre ton plan ; /grow y garde une culture, et /drop en laisse une de côté.
button-list = { $list }
button-all-lists = ‹ Toutes les listes
button-lists = Les listes du club
button-subscribe = S’abonner
button-unsubscribe = Se désabonner

## Trouble

went-wrong = Quelque chose a mal tourné de mon côté. Rien n’a changé ; essaie encore une fois, s’il te plaît.
unknown-command = Je ne connais pas cette commande. /help montre ce que je sais faire.

## Command menus (at most 256 characters each)

menu-ask = Je peux semer ça maintenant ?
menu-now = Que faire aujourd’hui ?
menu-grow = Mettre des cultures sur ma liste
menu-drop = Retirer une culture de ma liste
menu-mycrops = Ma liste
menu-lists = Les listes de cultures du club
menu-sown = J’ai semé quelque chose
menu-sowings = Mes semis
menu-variety = Mes variétés et leurs sachets
menu-undo = Annuler le dernier changement
menu-trays = Quels semis partagent une plaque
menu-frost = Mes dates de gel
menu-zone = Mon fuseau horaire
menu-hold = Attendre la fin d’un coup de froid
menu-place = Où grandissent mes jeunes plants
menu-hour = L’heure de mon rappel
menu-holiday = Pas de messages pendant un temps
menu-quiet = Jours sans messages
menu-weekends = Quand je jardine
menu-settings = Mes réglages
menu-export = Tout ce qui est gardé sur moi
menu-forget = Tout effacer
menu-help = Ce que le bot sait faire
menu-club = Les réglages du club

## Plan

plan-line = { $what } : { $days } (ça vaut la peine jusqu’au { $last }). { $why }
plan-why-sow-indoors = Pour des plants de { $age } à leur sortie, comptés depuis le dernier gel vers le { $last_frost }.
plan-why-pot-up = Trois à quatre semaines après le semis, quand les vraies feuilles sont ouvertes.
plan-why-harden-off = 7 à 14 jours avant la plantation au jardin.
plan-why-plant-out = Les plants endurcis supportent des nuits jusqu’à { $nights } ; le dernier gel tombe vers le { $last_frost }.
plan-why-sow-outdoors = La terre doit rester à { $minimum } ou plus ; le dernier gel tombe vers le { $last_frost }.
plan-why-autumn = Pour l’automne, compté à rebours depuis le premier gel vers le { $first_frost }.
plan-why-overwinter = Pour l’année prochaine, autour du premier gel le { $first_frost }.
plan-why-months = La chaleur et la pluie décident : on commence à planter vers le { $starts }, et la chaleur revient vers le { $heat }.
plan-why-months-rain = La pluie décide : on commence à planter vers le { $starts }, et la pluie revient vers le { $heat }.
plan-why-cover = Ton { $cover } décale cela.
plan-why-second-year = Semis au début de l’été, floraison l’année suivante.
plan-why-before = Cela prend { $days }, avant de { $then }.
plan-why-hedge = Une seconde chance à côté du premier semis : si l’un échoue, l’autre donnera.
plan-why-repeat = Un semis de plus, si tu en veux encore, après celui du { $last }.
plan-why-repeat-heat = Un semis de plus, si tu en veux encore, après celui du { $last } : la chaleur de l’été les arrête vite.
plan-why-sown = Compté depuis le semis du { $sown }.
