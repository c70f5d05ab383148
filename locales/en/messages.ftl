# What the bot says, in English: the verdict first, the reason in numbers, then the next step.
#
# The spelling and the dates follow the reader's region (en-US, en-GB); the words are the same.
# $crops is a crop's plural name ("cucumbers", "basil"); dates, lengths, temperatures and lists
# arrive already written in the reader's form.

## Dates

# A span of days that crosses a month: $from and $to are dates, "April 17" and "May 1".
date-range = { $from } to { $to }

# The number of a month's first day within a date, where a language writes it differently: $day is "1".
first-day = { $day }

# The days of a span within one month: $from and $to are day numbers. What stands around them is
# the date as the reader's region writes it: "April 17–24", "17–24 April".
day-range = { $from }–{ $to }

## Lengths of time

# $n is a whole number.
days = { $n ->
    [one] { $n } day
   *[other] { $n } days
}

# $n is a whole number or a number and a half: "3", "3½".
weeks = { $n ->
    [one] { $n } week
   *[other] { $n } weeks
}

# $from and $to are whole numbers.
days-range = { $to ->
    [one] { $from }–{ $to } day
   *[other] { $from }–{ $to } days
}

# $from and $to are whole numbers or numbers and a half.
weeks-range = { $to ->
    [one] { $from }–{ $to } week
   *[other] { $from }–{ $to } weeks
}

## Temperatures and lengths

# Two numbers, $low and $high, that stand before a unit.
number-range = { $low }–{ $high }

# The same where a minus sign would meet the dash.
number-range-signed = { $low } to { $high }

# $n is a number, or a range as above. {"\u00a0"} is a space at which no line breaks.
celsius = { $n }{ "\u00a0" }°C
fahrenheit = { $n }{ "\u00a0" }°F
millimetres = { $n }{ "\u00a0" }mm
centimetres = { $n }{ "\u00a0" }cm

# One inch or a part of one: "½ inch".
inch = { $n } inch

# More than one inch, or none: "1½ inches".
inches = { $n } inches

## When

when-now = today
when-on = on { $date }

## Steps, as they stand in a sentence

step-sow-indoors = sow { $crops } indoors
step-sow-outdoors = sow { $crops } in the ground
step-soak = soak the seed of { $crops }
step-nick = nick the seed of { $crops }
step-chill = chill the seed of { $crops }, moist
step-chit = chit { $crops }: stand the tubers in light to sprout
step-root-slips = start slips of { $crops } from a root
step-check = look for seedlings of { $crops }
step-harvest = pick the first { $crops }
step-first-bloom = look out for the first bloom of { $crops }
step-pot-up = pot up { $crops }
step-harden-off = harden off { $crops }
step-plant-out = set out { $crops }
step-plant = plant { $crops }

## Verdicts

verdict-too-early = Not yet. Wait until { $next } to { $what }.
verdict-early = A little early to { $what }, but it can work.
verdict-on-time = Go ahead: { $what } { $when }.
verdict-on-time-when-nights-allow = Go ahead: { $what } { $when }, if the week's nights stay above { $nights }.
verdict-late = Late, but still worth it: { $what } { $when }.
verdict-second-best = You can { $what } { $when }, but there is a better way.
verdict-too-late = It is too late to { $what } this season.
verdict-too-late-for-spring = It is too late to { $what } for the spring crop.
verdict-season-too-short = Your season is too short for { $crops } on their own.
verdict-no-cold = Your winter is too warm for { $crops }: without cold no bulbs form.

reason-no-frost-here = Frost dates don't decide when to start { $crops } in your garden: it has no frost.
reason-not-from-seed = Not from seed: { $crops }.
reason-never-sown-indoors = No, don't start { $crops } indoors.
reason-never-sown-outdoors = No, don't sow { $crops } straight in the ground here: a start indoors is needed.
reason-never-potted-up = No need to pot up { $crops }: the first cell does until setting out.
reason-never-set-out = Nothing to set out: sow { $crops } where they are to grow.

## One line for each of many crops

short-too-early = { $what }: not yet, from { $next }.
short-early = { $what }: early, but it can work; best from { $next }.
short-on-time = { $what }: go ahead, good until { $until }.
short-late = { $what }: late, but worth it until { $next }.
short-too-late = { $what }: too late now; next good day { $next }.
short-too-late-for-good = { $what }: too late, and your season is too short for another try.
or-else = Or: { $line }

## Why

why-too-old = Sown { $when }, the plants would be { $age } old by { $setout }, when they can go out. { $most } is the most they bear.
why-age = Sown { $when }, the plants are { $age } old when they can go out, around { $setout }; { $best } is best.
why-cold-soil = The soil is likely still too cold: it should stay at { $minimum } or more, and { $best } is best.
why-cold-soil-and-frost = The soil is likely too cold (it should stay at { $minimum } or more; { $best } is best), and a frost would kill what comes up.
why-soil-check = Check that the soil stays at { $minimum } or more; { $best } is best.
why-summer-sowing = They are sown in early summer and bloom the next year.
why-autumn-planting = They are planted in autumn, around the first frost, for the next year.
why-autumn-count = This sowing is for autumn, so it counts back from your first frost.
why-cold-nights = Nights are still too cold: hardened plants bear { $nights }, and about { $kills } kills them.
why-bears-cold = Hardened plants bear nights down to { $nights }.
why-harden-off = Take 7 to 14 days over it, a little longer outside each day, with nights no colder than { $nights }.
why-pot-up = Seedlings move best once their first true leaves have opened.
why-late = Best days: until { $ended }.
why-too-late-harvest = Started { $when }, the first harvest would come around { $ready }, and the season ends around { $end }.
why-too-late-bloom = Started { $when }, the first bloom would come around { $ready }, and the season ends around { $end }.
why-heat = Last day worth it: { $ended }; summer heat would catch them before they are ready.
why-window-closed = Last day worth it: { $ended }.
why-season-too-short = Between your frosts lie { $days } days; after a full start, about { $needs } more are needed to the first harvest.
why-no-frost = Heat and the wet months decide there; your local extension service has planting dates for your area.
why-months = In your garden heat and rain decide: planting begins around { $starts }, and the heat is back around { $heat }.
why-months-rain = In your garden rain decides: planting begins around { $starts }, and the rains are back around { $heat }.
why-months-bears-heat = They bear heat and rain; the coolest weeks, until around { $coolest }, hold them back.
why-months-too-late = Planting ended on { $ended }; what is started { $when } would meet the heat, which is back around { $heat }.
why-months-too-late-rain = Planting ended on { $ended }; what is started { $when } would meet the rains, which are back around { $heat }.
why-months-short = Between { $starts } and the heat around { $heat } they have not enough time.
why-months-short-rain = Between { $starts } and the rains around { $heat } they have not enough time.
cost-continuing = Expect about { $behind } less of picking.
cost-bloom = Expect about { $behind } less of bloom.
cost-once = They should be ready around { $ready }; the season ends around { $end }.
counted-average = Your average last frost is around { $frost }.
counted-average-at-risk = Your average last frost is around { $frost }; about one spring in ten still freezes after { $risk }.
counted-trusted = The date you trust is { $frost }.
counted-first-frost = Your first frost is around { $frost }.

## Where it grows

place-windowsill = on a windowsill
place-lights = under lights
place-heat-mat = on a heat mat
place-greenhouse = in a greenhouse
cover-fleece = fleece
cover-cold-frame = cold frame
cover-tunnel = tunnel
cover-sooner = With your { $cover }, that is { $weeks } sooner than without it.
cover-no-sooner = Your { $cover } does not keep nights and soil warm enough to bring { $crops } forward.
cover-later = With your { $cover }, the harvest ends about { $weeks } later than without it.
place-line-windowsill = On a windowsill seedlings stretch, so I let { $crops } grow { $most } old there at most.
place-line-lights = Under lights: keep them close above the plants and raise them as { $crops } grow.
place-line-heat-mat = Your heat mat keeps the soil warm; take { $crops } off it once they are up.
place-line-greenhouse = In the greenhouse, air { $crops } on sunny days and mind cold nights.
place-show = Your seedlings: { $place }. Cover outdoors: { $cover }.
place-not-said = not said
cover-none = none
place-how-to = Tap what fits, or tell me: “I grow under lights”, “I have a cold frame”, “no cover”.
place-noted = Noted.
place-bad = I know windowsill, lights, heat mat and greenhouse for seedlings, and fleece, cold frame and tunnel outdoors. “{ $written }” I do not know.
button-place = Where it grows
button-place-is = ✓ { $name }
button-place-windowsill = Windowsill
button-place-lights = Lights
button-place-heat-mat = Heat mat
button-place-greenhouse = Greenhouse
button-cover-fleece = Fleece
button-cover-cold-frame = Cold frame
button-cover-tunnel = Tunnel
button-cover-none = No cover
settings-place = • Seedlings { $place }
settings-cover = • Cover outdoors: { $cover }

## What to do next

next-best-days = Best days: { $days }.
next-good-until = Good until { $until }, and worth it until { $last }.
next-good-until-only = Good until { $until }.
next-last-day = Last day worth it: { $last }.
next-both = A good hedge: sow some now, and some in the ground from { $from }.
care-pot-up = If you start now, pot them up once and give them plenty of light. Otherwise wait until { $next }.
care-own-cell = Better to wait until { $next }: they dislike being moved. If you start now, give each a large cell of its own and plenty of light.
care-light = If you start now, give them plenty of light and keep them cool. Otherwise wait until { $next }.
care-cover = Only under fleece or a cloche, and only hardened plants. Without cover wait until { $next }.
care-cover-planting = Only under fleece or mulch that you can pull over on cold nights. Without it wait until { $next }.
care-cover-sowing = Only under cover, or where the soil is already warm enough. Otherwise wait until { $next }.
care-harden-off = Only if fleece or a cloche waits for them outside. Otherwise wait until { $next }.
how-short = { $depth } deep, soil around { $warmth }; up in { $days }.
how-short-surface = On the surface, soil around { $warmth }; up in { $days }.
how-short-spacing = Set them { $apart } apart.
other-now = Instead, { $what }: that works now, until { $until }.
other-from = Instead, { $what } from { $from }.
better-now = Better, { $what }: that works now, until { $until }.
better-from = Better, { $what } from { $from }.
instead-sow-outdoors = Instead, sow them straight in the ground: worth it until { $until }.
instead-buy-plants = Instead, buy young plants: setting out is worth it until { $until }.
instead-buy-plants-from = Instead, buy young plants: they can go out from { $from }.
instead-autumn = The autumn sowing opens on { $next }.
instead-next-season = Next season's good days begin on { $next }.
instead-faster-variety = What can help: a faster variety, bought plants of full size, or a tunnel.
instead-before-heat = What can help: a faster variety, or bought plants of full size.
instead-chill-cloves = What can help: chill the cloves of { $crops } for { $weeks } at about { $cold }, dry and not frozen, and plant them before the coolest weeks, by { $date }. Expect small bulbs.

## When

when-head = { $crops }:
when-head-last-frost = { $crops }, counted from your average last frost around { $frost }:
when-head-months = { $crops }, counted by your hot and wet months:
when-head-first-frost = { $crops }, counted from your first frost around { $frost }:
when-line = • { $what }: { $days }
when-line-late = • { $what }: { $days }; worth it until { $last }
when-line-autumn = • { $what } for autumn: { $days }; worth it until { $last }

## How

how-head = { $crops }:
how-from-tubers = • start from seed potatoes
how-from-cloves = • start from cloves, pointed end up
how-from-slips = • start from rooted slips
how-from-crowns = • start from crowns
how-from-sets = • start from sets
how-soak = • soak the seed for { $lead } before sowing
how-nick = • nick the seed coat before sowing; mind your fingers
how-chill = • chill the seed, moist, for { $lead } before sowing
how-chit = • sprout the tubers in light for { $lead } before planting
how-root-slips = • root slips for { $lead } before planting
how-depth = • sow { $depth } deep
how-planting-depth = • plant { $depth } deep
how-surface = • press onto the surface, do not cover
how-light = • needs light to come up
how-dark = • needs the dark to come up
how-warmth = • soil { $best } is best, at least { $minimum }
how-days = • up in { $days }
how-cell = • indoors: { $seeds ->
    [one] one seed
   *[other] { $seeds } seeds
} to a cell of { $cell }; goes out at { $age }
how-next-pot = • potted up, it moves to { $pot }
how-spacing = • { $apart } apart, rows { $rows } apart

## Will it ripen

ripens-yes = Yes, in time: the first { $crops } around { $ready }.
ripens-tight = Tight: { $crops } may just make it, with { $spare ->
    [one] { $spare } day
   *[other] { $spare } days
} to spare at best.
ripens-no = No: { $crops } will not make it this season.
blooms-yes = Yes, in time: first bloom of { $crops } around { $ready }.
blooms-tight = Tight: { $crops } may just bloom in time, with { $spare ->
    [one] { $spare } day
   *[other] { $spare } days
} to spare at best.
blooms-no = No: { $crops } will not bloom in time this season.
ripens-when = The first { $crops }: around { $ready }.
blooms-when = First bloom of { $crops }: around { $ready }.
ripens-not-by-then = Not by then: the first { $crops } around { $ready }.
blooms-not-by-then = Not by then: first bloom of { $crops } around { $ready }.
ripens-why = That is if you { $what } on { $on }. The season ends around { $end }: { $spare ->
    [one] { $spare } day to spare
   *[other] { $spare } days to spare
} at the slow end.
ripens-if = That is if you { $what } on { $on }.
ripens-why-short = If you { $what } on { $on }, count on the first around { $ready }.
ripens-sown-indoors = Counted from your sowing indoors on { $on }.
ripens-sown-outdoors = Counted from your sowing in the ground on { $on }.
ripens-sown-too-early = Your sowing in the ground on { $on } was too early, so this counts from { $from }.
ripens-count-on = Count on the first around { $ready }.
ripens-spare = The season ends around { $end }: { $spare ->
    [one] { $spare } day to spare
   *[other] { $spare } days to spare
} at the slow end.
ripens-end = The season ends around { $end }.
ripens-end-at-risk = Your first frost is around { $end }; about one autumn in ten freezes by { $risk }.
ripens-end-trusted = The autumn date you trust is { $end }.
helps-head = What would help:
helps-earlier = • an earlier start: { $what } by { $date }
helps-next-year = • next time an earlier start: { $what } by { $date }
helps-variety-from-setting-out = • a faster or smaller variety, of at most { $days } days from setting out
helps-variety-from-sowing = • a faster or smaller variety, of at most { $days } days from sowing
helps-cover = • cover in autumn: medium fleece keeps frost off down to about { $fleece }, a heavy frost blanket down to about { $blanket }
helps-nothing = Only bought plants of full size, or a tunnel, may still bring some.
ripens-no-frost = No frost ends your season, so { $crops } have all the time they need; heat and the wet months decide instead.
ripens-next-year = { $crops }: harvest or bloom comes in the year after sowing, so no frost hurries it this year.

## Seed: how many, tests, days to come up

# $n is a whole number.
percent = { $n }%

# $n is a whole number or one with a decimal: "3", "2.5".
years = { $n ->
    [one] { $n } year
   *[other] { $n } years
}

seed-count = For { $plants ->
    [one] one plant
   *[other] { $plants } plants
} of { $crop }, sow { $seeds ->
    [one] one seed
   *[other] { $seeds } seeds
}.
seed-cells = In cells: { $each } seeds to each of { $cells ->
    [one] one cell
   *[other] { $cells } cells
}, thinned to one plant; expect about { $empty } to stay empty.
seed-cells-single = In cells: one seed to each of { $cells ->
    [one] one cell
   *[other] { $cells } cells
}; expect about { $empty } to stay empty.
seed-count-chance = That is the smallest number with at least a { $chance } chance of enough plants, if { $losses } of the seedlings are lost after they come up.
seed-rate-stated = Counted with the { $rate } germination you gave.
seed-rate-tested = Counted with your test: { $sprouted } of { $tested } sprouted, { $rate }.
seed-rate-standard-fresh = The rate is an estimate for fresh seed: { $rate }, the US minimum standard (7 CFR 201.31).
seed-rate-standard-aged = The rate is an estimate: { $rate } for seed { $age } old. Fresh seed counts as { $fresh }, the US minimum standard (7 CFR 201.31), falling evenly to half of that at { $life }.
seed-rate-assumed-fresh = The rate is an estimate and my own assumption: { $rate } for fresh seed, because the US minimum standard (7 CFR 201.31) does not list { $crop }.
seed-rate-assumed-aged = The rate is an estimate and my own assumption: { $rate } for seed { $age } old. I take fresh seed as { $fresh }, because the US minimum standard (7 CFR 201.31) does not list { $crop }; it falls evenly to half of that at { $life }.
seed-better-fresh = Below { $least }, fresh seed is the better choice.
seed-test-first = To know better, sprout 20 seeds on damp paper and tell me, like this: “14 of 20 { $crop } seeds sprouted”.
seed-too-old = Don't count on that seed: { $crop } seed keeps about { $life }, and at { $age } hardly any comes up. Get fresh seed, or sprout 20 seeds on damp paper first.
seed-too-weak = Don't count on that { $crop } seed: at { $rate } it is better replaced.
seed-which-crop = Which crop? Ask, for example, “how many basil seeds for 12 plants?”
seed-plants-range = I can count seeds for 1 to { $most } whole plants, not for { $written }.
seed-per-cell-range = I can count with 1 to { $most } whole seeds in a cell, not with { $written }.
seed-rate-range = A germination rate lies between 1% and 100%, so { $written }% cannot be.
seed-age-range = I can count with seed up to { $most } years old, not with { $written }.
seed-year-ahead = The year { $year } is still to come, so seed cannot be from it; which year is on the packet?

test-result = { $sprouted } of { $tested } sprouted: { $rate }. For the whole packet the rate is likely between { $low } and { $high } (95% interval after Wilson).
test-replace = Below 40%: replace this seed.
test-sow-thicker = 40 to 50%: sow it thicker than usual.
test-sow-by-number = 50 to 80%: sow by the number you need. Ask me, for example, “{ $sprouted } of { $tested } { $crop } seeds sprouted, how many for 12 plants?”
test-sow-by-number-plain = 50 to 80%: sow by the number you need; name the crop and the plants you want, and I count the seeds.
test-sow-as-usual = Above 80%: sow as usual.
test-too-few = To rely on it, test at least { $enough } seeds (Iowa State University, 1999).
test-range = A test counts whole seeds, 1 to { $most } of them.
test-more-than-tested = { $sprouted } of { $tested } cannot be: no more seeds sprout than were tested.

emerge-days = At { $at }, allow about { $days } for { $crops } to come up.
emerge-between = That is read in a straight line between { $low } and { $high } in the trials of Harrington and Minges (1954), seed { $depth } deep.
emerge-tested = That was counted in the trials of Harrington and Minges (1954), seed { $depth } deep.
emerge-too-slow-cold = Over three weeks counts as too cold: seed that lies so long may rot.
emerge-too-slow-hot = Over three weeks counts as too hot.
emerge-none-cold = At { $at }, don't expect { $crops } to come up: it is too cold. In the trials little or nothing did (Harrington and Minges, 1954).
emerge-none-hot = At { $at }, don't expect { $crops } to come up: it is too hot. In the trials little or nothing did (Harrington and Minges, 1954).
emerge-uncertain-cold = At { $at }, expect { $crops } to come up slowly and unevenly, if at all. In the trials little or nothing came up at { $none }, and at { $counted } it took { $days } (Harrington and Minges, 1954).
emerge-uncertain-hot = At { $at }, expect { $crops } to come up poorly, if at all. In the trials it took { $days } at { $counted }, and little or nothing came up at { $none } (Harrington and Minges, 1954).
emerge-not-tested = I don't know how long { $crops } would take at { $at }: that was not tested. It doesn't mean that nothing comes up.
emerge-no-table = I don't know how long { $crops } would take at { $at }: I have no trials of that crop.
emerge-usual = Usual at { $best }: { $days }.
emerge-relative = The trials were of { $relative }, a close relative.
emerge-printings = Another printing of the table has little or nothing coming up at { $at }.
emerge-which-crop = Which crop? Ask, for example, “how long do peppers take to come up at { $at }?”
temperature-beyond = { $at } cannot be right for soil; I can reckon with { $low } to { $high }.

## Soil temperature

soil-go = Go ahead: sow { $crops } in the ground today. Soil at { $at } is warm enough, and by date it is worth it until { $next }.
soil-go-on = On { $date } you can sow { $crops } in the ground, if the soil stays at { $at }; by date it is worth it until { $next }.
soil-go-believe-soil = Go ahead: sow { $crops } in the ground. By date it would be { $next }, but believe the soil: { $at } is warm enough, and what comes up bears some frost.
soil-go-no-date = By the soil, go ahead: { $at } is warm enough to sow { $crops } in the ground.
soil-wait-believe-soil = Not yet: the date would do, but believe the soil. { $at } is too cold for { $crops }; wait until it stays at { $warm } or more.
soil-wait-no-date = Not yet: { $at } is too cold for { $crops }. Wait until the soil stays at { $warm } or more.
soil-wait-both = Not yet: soil and date agree. { $at } is too cold for { $crops }; sow when it stays at { $warm } or more, but not before { $next }.
soil-wait-frost = Not yet: soil at { $at } is warm enough for { $crops }, but believe the date. A frost would kill what comes up, so wait until { $next }.
soil-wait-cover = Only under cover: soil at { $at } is warm enough for { $crops }, but believe the date. A frost would kill what comes up; without cover wait until { $next }.
soil-wait-window = Not yet: soil at { $at } is warm enough for { $crops }, but believe the date. The next sowing opens on { $next }.
soil-wait-cooler = Not now: { $at } is too hot for { $crops } to come up well. Wait until the soil stays at { $cool } or less.
soil-too-late = Too late for { $crops } by date, whatever the soil. The next good days begin on { $next }.
soil-too-late-for-good = Too late for { $crops } by date, whatever the soil.
soil-needs = Needed for { $crops }: { $minimum } or more; best: { $best }.
soil-above = Above { $maximum }, { $crops } can't be counted on.
soil-above-the-least = That is above the least for { $crops } ({ $minimum }) and below the best ({ $best }), so it may be slow; I have no trials at this temperature.
soil-good = That is within the best range for { $crops }, { $best }.
soil-frozen = Frozen soil gives seed no water; nothing comes up until it thaws.
soil-measure = Measure at sowing depth over several days: the soil must stay that warm, not touch it once.
soil-list-head = With soil at { $at } on { $date }, by soil and date together:
soil-list-none = With soil at { $at } on { $date }, there is nothing to sow in the ground.
soil-list-go = Sow in the ground: { $crops }
soil-list-slow = Can work, but slow: { $crops }
soil-list-frost = Warm enough, but frost would kill what comes up: { $crops }
soil-list-cold = Right date, but soil too cold: { $crops }

## What now

now-head = What you can start today, { $date }:
now-head-on = What you can start on { $date }:
now-nothing = Nothing to start on { $date } among your { $kind }. Enjoy the garden.
now-no-frost = Your garden has no frost, so frost dates don't say what to start now. Heat and the wet months decide; your local extension service has planting dates for your area.
now-until = { $crop } ({ $date })
now-from = { $crop } (best from { $date })
now-more = {" "}and { $count } more
group-late = late, { $how }, worth it until:
group-on-time = { $how }, good until:
group-early = early but workable with care, { $how }:
group-sow-indoors = sow indoors
group-sow-outdoors = sow in the ground
group-plant-out = set out or plant
group-harden-off = harden off
group-pot-up = pot up
kind-crops = crops
kind-vegetables = vegetables
kind-herbs = herbs
kind-flowers = flowers

## Cautions

caution-poisonous-plant = Care: plant and seed are poisonous. Keep them from children and pets.
caution-raw-beans = Care: the raw beans are poisonous; cook them well before anyone eats them.
caution-broad-bean-favism = Care: people with favism (G6PD deficiency) must not eat these beans; ask a doctor.
caution-bitter-squash = Care: never eat a fruit of this family that tastes bitter; spit it out and throw it away.
caution-green-potatoes = Care: don't eat green or sprouted potatoes, and keep berries and leaves from children.
caution-skin-irritant = Care: the sap can burn skin in sunlight; wear gloves and sleeves.
caution-treated-seed = Care: seed may be treated. Read the packet, wear gloves, and keep it from children and animals.
caution-heat-and-water = Care: keep lamps, heaters, heat mats and their plugs dry, leave them as the maker says, and follow your local electrical code.
caution-dusty-compost = Care: moisten dusty compost before you handle it, don't breathe the dust, and wash your hands.

## Words and names

which-crop = “{ $word }” can mean { $crops }. Which do you mean?
which-or-outside = “{ $word }” can mean two plants. Do you mean { $outside }? I have no dates for that; this is for the other one.
which-or-outside-ask = “{ $word }”: do you mean { $crop }? I have no dates for { $outside }.
unknown-crop = I don't know “{ $written }”. Try its everyday name, such as “tomato”.
unknown-crop-near = I don't know “{ $written }”. Did you mean { $near }?
not-understood = I did not understand that; ask me, for example, “can I start cucumbers now?” or “when do I plant out tomatoes?”
question-without-crop = Which crop do you mean? Send me its name.
month-all = That can be done all through { $month }.
month-part = In { $month }, that can be done { $days }.
month-none = No day of { $month } is right for that.
# Stands above a line for each of many crops.
month-reckoned = Reckoned for { $date }:
# $written is a day gone by, such as "yesterday".
date-gone-by = “{ $written }” has gone by, so this is about today. If you sowed then, tell me like this: /sown { $crop } { $written }
date-impossible = The calendar has no day “{ $written }”. Ask again with a day like “{ $example }”.
date-unclear = I can't tell which day “{ $written }” is. Ask again with a day like “{ $example }”.

## Mornings

morning-greeting = Good morning! { $date }:
morning-check-forecast = Before anything tender goes out, check the week's nights and harden it off first.
morning-more = { $count ->
    [one] One more job waits
   *[other] { $count } more jobs wait
}: /now
morning-coming = Coming this week:
morning-coming-line = • { $date }: { $what }
job-good-until = { $what }: good until { $until }.
job-last-good-day = { $what }: today is the last good day.
job-last-good-is = { $what }: the last good day is { $until }.
job-late = { $what }: late, but worth it until { $last }.
job-early = { $what }: early but workable with care, best from { $from }.
job-for-autumn = { $what } for autumn
job-of-sowing = { $what } (sown { $date })
job-check = { $what }: they should be up by now.
job-check-resow = { $what }: if nothing shows by now, sow again.
job-check-nothing = { $what }: nothing to see by now? { $then }
job-harvest = { $what }: about now.
job-worth-until = { $what }: worth it until { $last }.
job-before = Do it before you { $then }.
job-hedge = A second chance beside those sown indoors, if you like.
job-repeat = If you want more of them: the last were sown { $last }.
job-repeat-heat = If you want more of them: the last were sown { $last }, and heat ends each sowing soon.
job-on-surface = Press the seed onto the surface and do not cover it.
job-harden-off = { $what }: over 7 to 14 days, while nights stay above { $nights }.
job-when-nights-allow = { $what } when the week's nights stay above { $nights }.
button-done = { $number } done
button-up = { $number } is up
button-not-up = { $number } nothing came up
button-up-undo = { $number } is up · undo
button-not-up-undo = { $number } did not come up · undo
button-later = later
button-skip = skip
button-done-undo = { $number } is done · undo
button-skipped-undo = { $number } is skipped · undo
button-later-undo = { $number } later · undo
notice-done = Noted as done on { $date }.
notice-came-up = Noted as up on { $date }.
notice-not-up = Noted: nothing came up.
notice-later = I will name it again on { $date }.
notice-later-too-late = Today is the last day that is worth it, so nothing changed.
notice-skip = I will not name it again this season.
notice-undone = Taken back.
notice-job-gone = That job is no longer in your plan, so nothing changed. /now shows what is.
notice-old-button = This button is from an older message and I can no longer read it. Nothing changed. /help shows what I can do.
notice-not-yours = This belongs to whoever asked for it, so nothing changed. Ask me yourself and you get your own.
notice-private-only = Please do that in our private chat.

## Meeting people

start-private = Hello { $name }! I tell you what to sow, harden off and plant out, and when.
    Tell me what you grow (/grow tomato, basil) and I write you on the mornings when something is due.
start-joined = You are with { $club }.
start-token-unknown = That invitation is no longer valid; press the button in your club's group again.
start-need-frost = First, when are your frosts? Send the average last spring frost and first autumn frost, like this: /frost 05-15 10-05
start-has-frost = I reckon with { $frost }. /frost changes that for your garden.
start-need-zone = Which time zone are you in? Send a city, like this: /zone Denver. Until then I use UTC.
group-greeting = Hello! I help with the timing of sowing and planting. Ask me by command, for example /ask can I start cucumbers now?, or reply to one of my messages.
    For morning reminders, open a private chat with me: I may not write first.
    An administrator can set the club's frost dates and time zone with /club, and keep lists of crops with /list.
button-open-private = Get my reminders
help-short = I answer questions like “can I start cucumbers now?”, “when do tomatoes go out?”, “how deep do I sow peas?” and “will pumpkins ripen?”, and I remind you on the mornings when something is due.
help-private = I answer questions like “can I start cucumbers now?”, “when do tomatoes go out?”, “how deep do I sow peas?” and “will pumpkins ripen?”, and I count: “how many basil seeds for 12 plants?”, “14 of 20 leek seeds sprouted”, “soil is 14 °C, can I sow peas?”

    /grow tomato, basil – put crops on your list; I remind you of them
    /drop basil – take one off
    /mycrops – your list
    /lists – your club's lists, to subscribe to
    /now – what you can do today
    /sown basil 12 on 3 April – tell me what you sowed, and I follow its own dates
    /sowings – your sowings and what comes next
    /variety tomato Early Lantern, 75 days – reckon with a packet's numbers
    /undo – take the last change back
    /trays tomato 12, basil 6 – which seedlings share a tray
    /frost 05-15 10-05 – your last and first frost
    /place – where your seedlings grow
    /hold 7 days – wait out a cold spell
    /zone Denver – your time zone
    /hour 7:00 – when your reminder comes
    /holiday until 3 July – no messages before that day
    /quiet Sunday – no messages on that day of the week
    /weekends – put things off to the weekend
    /settings – all of it at a glance
    /export – all that I keep about you, as a file
    /forget – delete it

    To stop reminders, take your crops off with /drop all.
help-group = Ask with /ask, for example “/ask can I start cucumbers now?”, or reply to one of my messages. /now shows what you can start, /lists the club's lists to subscribe to; /club is for administrators. Here I go by the club's dates; what is about your own garden, and reminders, come in private.

## Manners in a group

# The last word of a message by which a member lets the group read the answer.
share-word = share
own-answered = I have answered you in private. If all may read it, end your message with “{ $word }”.
own-pointer = That is about your own garden, so it stays between us. Open our private chat with the button, and ask me there.
group-more = There is more to it, cautions among it where there are any.
button-our-chat = Open our chat
button-read-on = Read on in private
notice-read-on = I have written to you in private.
notice-question-gone = That was asked too long ago. Please ask it again.

## Inline queries

inline-need-frost = First tell me your frost dates
inline-ask = I know no crop of that name; ask me in private
inline-now = What can be started now

## My data

data-private-only = I speak about your data in private only. Open our chat with the button, and send { $command } there.
export-caption = All that I keep about you, as JSON. Once it is sent I keep no copy of this file. /forget deletes all of it.
forget-ask = This deletes all that I keep about you: your name and your settings, your list ({ $crops ->
    [one] one crop
   *[other] { $crops } crops
}), your sowings ({ $sowings }), what you told me of jobs, which clubs you are with, and every reminder still to come. Your clubs themselves stay as they are. It cannot be taken back; /export gives you a copy first.
    If you want that, press the button or send the words “{ $word }”.
forget-word = forget me
button-forget = Delete everything
button-keep = Keep it
forget-kept = Nothing was deleted.
forget-done = Done: all that I kept about you is deleted, and no reminder comes any more. This is my last message. If you ever want to begin anew, send /start. Good growing!
notice-forget-old = That question is too old to be answered, and nothing was deleted. Send /forget once more.

## Frost

frost-words = last frost around { $last }, first frost around { $first }
frost-words-trusted = last frost by { $last } and first frost from { $first }, dates you trust
frost-words-last-only = last frost around { $last }, no autumn frost
frost-words-free = no frost
frost-set = Noted for your garden: { $frost }. That is a season of { $days ->
    [one] { $days } day
   *[other] { $days } days
}.
frost-set-no-end = Noted for your garden: { $frost }.
frost-set-spans = It runs over the new year, as in the southern hemisphere.
frost-which-basis = Are these averages (half of all years are worse)? Or dates you trust (about one year in ten is worse)?
frost-set-free = Noted: your garden has no frost. Which months are too hot there, and which are wet? For example: hot June to September, wet June to October.
frost-hot-and-wet = Noted: { $months }. So I plan with planting from the beginning of { $starts }, until the heat is back in { $heat }. Ask me, for example, “when can I start beans?”
frost-only-wet = Noted: { $months }. So I plan with planting from the beginning of { $starts }, until the rain is back in { $heat }.
# $command is what to send.
months-no-hot = You named no hot months, so I reckon without heat; to add them, send { $command } and both.
months-how-to = I know no hot and wet months for this garden; send { $command }, and I ask for them and plan by them.
frost-months-not-understood = I could not read months in that. Which months are too hot, and which are wet? For example: hot June to September, wet June to October. Nothing changed.
frost-months-all = If every month is hot or wet, nothing is left to plant in. Name only the hottest months and the wettest ones, for example: hot June to September, wet June to October. Nothing changed.
frost-unset = Your own frost dates are gone; the club's hold where it has some.
frost-show = Your garden: { $frost }.
frost-show-club = Your club's dates hold for you: { $frost }.
frost-show-none = I don't know your frost dates yet.
frost-how-to = Send the last spring frost and the first autumn frost as month and day, like this: /frost 05-15 10-05. If it never freezes: /frost none
frost-soon = I see no weather forecast, but if frost comes: bring seedlings in, and cover tender plants in the beds with fleece before dusk. If planting out should wait, send /hold 7 days.
frost-only-last = I have { $last } as your last spring frost. When is the first autumn frost? Send both: /frost { $code } 10-05
# Asked of dates such as 5/6 and 10/5, with a button for each of the two readings.
frost-which-way = Does the month stand first there, or the day? Press what you mean.
frost-not-understood = I could not read that as frost dates.
frost-impossible = The calendar has no day “{ $written }”.
frost-same-day = Both dates are the same day; the last spring frost and the first autumn frost must differ.
frost-too-short = The dates { $last } and { $first } leave only { $days } days without frost, so I kept neither.
frost-unlikely = I read that as { $frost }. Those would be { $days } days without frost, which is rare, so I kept nothing yet.
frost-only-autumn = A first autumn frost needs a last spring frost before it; send both.
frost-first-needed = For that I need your frost dates. Send them like this: /frost 05-15 10-05
frost-first-needed-group = For that I need frost dates. An administrator can set the club's with /club. In private I go by your own: /frost 05-15 10-05
button-frost-meant = They are right
button-average = They are averages
button-trusted = I trust them
button-undo = Undo
button-undo-old = Take it back
button-put-back = Put it back
button-frost = Frost dates
button-zone = Time zone
button-hour = Reminder time
button-quiet = Quiet days
button-holiday = Holiday
button-holiday-over = Back from holiday
button-language = Language
button-metric = °C and cm
button-customary = °F and inches

## Crops

grow-how-to = Which crops do you grow? Send their names, like this: /grow tomato, basil
grow-added = On your list: { $crops }.
grow-already = Already on your list: { $crops }.
grow-first-up = Next: { $what }, from { $date }.
grow-late-up = You can still { $what }: late, but worth it until { $date }.
grow-now-up = You can { $what } now, good until { $date }.
grow-which = “{ $word }” can mean { $crops }. Which one do you grow?
drop-how-to = Which crops shall I take off? Send their names, like this: /drop basil
drop-done = Off your list: { $crops }.
drop-not-there = Not on your list: { $crops }.
drop-left-out = Left out of your plan: { $crops }. Nothing changes on { $lists }; /grow brings a crop back.
drop-unsubscribed = Not in your plan any more: { $lists }.
drop-nothing = Your list is empty, so there is nothing to take off.
mycrops-empty = Your list is empty. Send what you grow, like this: /grow tomato, basil
mycrops-head = You grow { $count ->
    [one] one crop
   *[other] { $count } crops
}:
mycrops-line = • { $crop }: { $what } from { $date }
mycrops-line-now = • { $crop }: { $what } now, good until { $date }
mycrops-line-late = • { $crop }: { $what } now, late, but worth it until { $date }
mycrops-line-plain = • { $crop }
# $line is one of the lines above; $lists are the club's lists that bring the crop.
mycrops-by-list = { $line } (from { $lists })
mycrops-own-and-list = { $line } (your own, and from { $lists })
mycrops-left-out = Left out of your club's lists: { $crops }
page-of = Page { $page } of { $pages }
button-next-page = More ›
button-previous-page = ‹ Back
button-add = Add { $crop }
button-crop = { $crop }
button-remind = Remind me of { $crop }

## Jobs of the day

now-jobs-head = { $date }, from your list:
now-jobs-none = Nothing to do today, { $date }, for the crops on your list.

## Sowings

# $crops is a crop's plural name, with its number where that is known.
sowing-count = { $count } { $crops }
sowing-indoors = { $crops }, sown indoors on { $date }
sowing-outdoors = { $crops }, sown in the ground on { $date }
sown-noted = Noted: { $what }.
sown-how-to = What did you sow, how many and when? Like this: /sown basil 12 on 3 April
sown-impossible-day = I know no day “{ $written }”, so nothing changed. Like this: /sown basil 12 on 3 April
sown-stray = I am not sure what “{ $written }” means, so nothing changed. Like this: /sown basil 12 on 3 April
sown-variety-unknown = I don't know the variety “{ $written }”. To keep it, send what its packet says, like this: /variety { $crop } { $written }: 75 days
sown-future = { $date } is still to come, so nothing changed. Tell me once you have sown.
sown-long-ago = { $date } is more than a year ago, so nothing changed.
sown-bad-count = I can note 1 to { $most } plants for one sowing, so nothing changed.
sown-planted = Not noted: you plant { $crops }, and only sowings are kept here.
sown-bad-warmth = { $at } cannot be right for soil or a room; I can reckon with { $low } to { $high }, so nothing changed.
sown-without-frost = With your frost dates (/frost 05-15 10-05) I can tell when they go out.
amiss-early = A little early: the good days begin on { $from }. Keep them under cover until then.
amiss-too-early = That is { $early } too early.
amiss-too-early-cold = That is { $early } too early for the ground: the soil should stay at { $minimum } or more.
amiss-too-early-frost = That is { $early } too early for the ground, and a frost would kill what comes up.
amiss-too-late = That was too late to be worth it.
amiss-never-outdoors = Sown in the ground, { $crops } hardly make it here: they need a start indoors.
sowing-up = • Up { $days }. Nothing by { $resow }? { $then }
sowing-up-room = • Up { $days } in a room of about { $at }. Nothing by { $resow }? { $then }
sowing-up-at = • Up { $days } at about { $at }. Nothing by { $resow }? { $then }
sowing-warning = • { $what }
sowing-below-least = At { $at }, don't expect { $crops } to come up: it is too cold. They need { $minimum } or more.
sowing-above-most = At { $at }, don't expect { $crops } to come up: above { $maximum } they can't be counted on.
sowing-not-tested = I have no trials at { $at }; those are the usual days at { $best }.
sowing-move-warmer = Move them where it is { $best }; they are up { $days } after that.
sowing-ground-warmer = They come up once the soil stays at { $warm } or more, if the seed has not rotted by then.
sowing-cooler = Keep them cooler: { $cool } or less.
sowing-none-by = • Nothing by { $resow }? { $then }
# What follows “Nothing by …?”; $date is a date.
nothing-up-again = Then sow again.
nothing-up-again-from = Then sow again from { $date }.
nothing-up-other-way = Then it is better to { $what }.
nothing-up-buy = Then it is too late to sow again; buy young plants, worth setting out until { $date }.
nothing-up-too-late = Then it is too late to sow again; the next good day is { $date }.
nothing-up-too-late-for-good = Then it is too late to sow again.
sowing-step = • { $what }: { $days }
sowing-from = • { $what }: from { $from }
sowing-out-mild = • { $what }: from { $from }, when the week's nights stay above { $nights }
sowing-harvest = • First harvest: { $days }
sowing-bloom = • First bloom: { $days }
sowing-old = • By the day they go out they are { $age } old, and { $most } is the most they bear: pot them up, and give them light.
sowing-too-old = • By the day they go out they are { $age } old, and { $most } is the most they bear. Better sow again from { $from }.
sowing-too-late = • They would be ready only after your first frost, so { $crops } from this sowing need a place under cover.
came-up-none-waits = I know of no sowing that waits to come up. Tell me what you sow, like this: /sown basil 12 on 3 April
came-up-which = Good! Which of them?
not-up-which = A pity. Which of them?
came-up-noted = Good, they are up: { $what }.
not-up-noted = A pity. Noted that nothing came up: { $what }.
sow-again-now = You can sow again now.
sow-again-until = You can sow { $crops } again now; that is worth it until { $last }.
sow-again-from = Wait with { $crops }: the next good day to sow again is { $from }.
sow-again-too-late = It is too late to sow { $crops } again this season.
sow-again-next = The next good day to sow { $crops } is { $next }.
button-sown-again = Sown again today
notice-sown-already = That sowing is noted already.
sowings-none = I know of no sowing of yours that still grows. Tell me what you sow, like this: /sown basil 12 on 3 April
sowings-head = { $count ->
    [one] One sowing:
   *[other] { $count } sowings:
}
sowings-line = { $what }. Next: { $step }, from { $date }
sowings-line-now = { $what }. Now: { $step }
sowings-line-plain = { $what }
button-give-up = { $number } given up
notice-given-up = Given up. /undo takes that back.
undo-nothing = There is nothing to take back.
undo-sowing-off = Taken back and forgotten: { $what }.
undo-sowing-as = As it was before: { $what }.
undo-job = Taken back: what you said of “{ $what }”.
# $setting is the name of what was changed.
undo-setting = { $setting ->
    [frost] Your frost dates are as they were before.
    [zone] Your time zone is as it was before.
    [language] Your language is as it was before.
    [units] Your units are as they were before.
    [hour] Your reminder comes when it came before.
    [days] Your days without messages are as they were before.
    [months] Your hot and wet months are as they were before.
    [latitude] How far north you are is as it was before.
    [place] Where your plants grow is as it was before.
    [hold] The cold spell is as it was before.
   *[other] Your settings are as they were before.
}
undo-crops-off = Off your list again: { $crops }.
undo-crops-on = Back on your list: { $crops }.
undo-subscribed = “{ $list }” is in your plan again.
undo-skip-off = Back in your plan from your club's list: { $crops }.
undo-skip-on = Left out again: { $crops }.
notice-undo-stale = Something else changed since, so nothing was taken back. /undo takes back the last change.
# $date is the day on which the change was made; $what says what taking it back leads to.
undo-old = Your last change was made on { $date }, so I ask first. Nothing is taken back yet. Taking it back would mean:
    { $what }
undo-made-today = That change was made today at { $time }.
undo-made-on = That change was made on { $date }.
# $what says what is as it was.
undo-put-back = Put back. It is as it was before the undo:
    { $what }
notice-put-back-stale = Something else changed since, so nothing was put back.

## Plants that went out or died, stopping, thanks, terms

planted-noted = Noted as set out on { $date }: { $crops }.
planted-early = That is early for { $crops }: cover them on cold nights. Their good days begin on { $from }.
planted-none = Nothing to tick off: no sowing of { $crops } waits to go out, and your plan has no setting out of it. /grow puts a crop on your list.
potted-noted = Noted as potted up on { $date }: { $crops }.
hardened-noted = Noted as hardened off on { $date }: { $crops }.
step-none = Nothing to tick off: I have no sowing of { $crops } waiting for that, and it is not in your plan. To note a sowing: /sown
step-future = { $date } is still to come, so nothing changed. Tell me once it is done.
planted-future = { $date } is still to come, so nothing changed. Tell me once they are out.
planted-impossible-day = I know no day “{ $written }”, so nothing changed. Like this: planted out 6 broccoli on 3 May
lost-noted = I am sorry. Noted that they are gone: { $what }.
lost-none = I am sorry. I have no sowing of { $crops } noted, so nothing changed.
lost-some = I am sorry about those. As not all of your { $crops } are gone, nothing changed. If all are, tell me: “all my { $crops } died”.
lost-which = I am sorry. Which of them?
stop-how-to = Nothing has changed yet. You decide how much you hear from me:
    • for a while: /holiday until 3 July
    • on some days of the week: /quiet Sunday
    • no reminders any more: /drop all takes your crops off
    • leave altogether: /forget deletes all that I keep about you
button-stop-holiday = Pause until a day
button-stop-days = Quiet days
thanks = You are welcome. May it all come up!
# $night is a temperature.
term-hardening-off = Hardening off is getting seedlings from indoors used to sun, wind and cool nights before they stay outside: some hours in the shade at first, then longer and sunnier each day, for one to two weeks. I name it 14 to 7 days before setting out; on nights below { $night } take them in (University of Maryland Extension, 2023).
term-potting-up = Potting up is moving a seedling into a larger pot before its roots fill the cell. I name it three to four weeks after sowing, once true leaves have opened, for crops that gain by it (common practice).
term-setting-out = Setting out is planting seedlings from indoors into the garden. Its days begin so many weeks before or after your average last frost as the crop's class says, and for crops that frost kills not before the date you trust; then the week's nights decide.
term-succession = Succession is sowing a little again every so often, so that there is always some to pick. After each sowing I name the next one at the crop's own interval, for as long as it is worth sowing in the ground; where summer heat ends a crop, the autumn sowings begin a series of their own.
term-cover = Cover is what keeps cold off a bed, and I count on it like this: fleece brings crops that bear cold two weeks forward and tender ones not at all (common practice; it keeps off only light frost, Colorado State University Extension), a cold frame crops that bear cold by three weeks (University of Vermont Extension), a tunnel all of them by three weeks (common practice). Tell me what you have with /place.
term-last-frost = Your average last frost is the day after which it still freezes in one spring of two; frost is air at 32 °F (0 °C) or below. A date you trust is one after which only about one spring in ten still freezes, and I take it to lie { $days } days later (Moyer, University of Delaware, 1970). Sowing dates are counted back from there.
term-first-frost = Your average first frost is the day before which it has frozen in one autumn of two; frost is air at 32 °F (0 °C) or below. About one autumn in ten has frozen { $days } days earlier, so what ripens before that is safe. Autumn sowings are counted back from the first frost.
term-your-frost = I reckon here with: { $frost }.

## Varieties

# $name is a variety's name as the member wrote it.
variety-name = { $crop } “{ $name }”
by-packet = By your packet of { $variety }: { $packet }.
short-variety = { $variety }: { $line }
variety-how-to = Tell me what a packet says, the crop first, like this: /variety tomato Early Lantern: start indoors 6-8 weeks before last frost, 75 days
variety-noted = Noted: { $variety }, { $packet }. I reckon with that from now on.
variety-already = I have { $variety } so already; nothing changed.
variety-follows = Plans and reminders for { $crops } follow it now; ask about the others by name.
variety-now-follows = Plans and reminders follow { $variety } now.
variety-removed = Forgotten: { $variety }.
variety-crop-again = I reckon with the usual figures for { $crops } again.
variety-unknown = I know no variety “{ $written }” of yours, so nothing changed. /variety lists them.
variety-which-one = Which do you mean: { $varieties }? Send it once more with its name; nothing changed.
variety-which = “{ $word }” can mean { $crops }. Send it once more with the full name; nothing changed.
variety-which-crop = Which crop is that packet of? Send it once more with the crop's name first; nothing changed.
variety-two-crops = I read two crops there, { $crops }. A packet is of one, and no variety may be called like a crop; nothing changed.
variety-no-numbers = I found no number of a seed packet there, so nothing changed. Like this: /variety tomato Early Lantern: start indoors 6-8 weeks before last frost, 75 days
variety-name-long = A variety's name has at most { $most } characters, so nothing changed. Send the crop and a short name, then the numbers.
variety-name-common = “{ $written }” is too common a word to know a variety by, so nothing changed. Give it a name of its own, or none.
variety-too-many = I keep at most { $most } varieties for you, so nothing changed. /variety lists them; remove one first.
varieties-head = Your varieties:
varieties-line = { $number }. { $variety }: { $packet }
varieties-line-followed = { $number }. { $variety }: { $packet } (plans and reminders follow this one)
button-follow = { $number } follow
button-drop-variety = { $number } remove
notice-variety-gone = That variety has changed since; /variety lists them as they are.
undo-variety-off = Taken back and forgotten: { $variety }.
undo-variety-as = As it was before: { $variety }.
packet-indoors = start indoors { $weeks } before the last frost
packet-set-out = set out { $when }
packet-in-place = sow in the ground { $when }
packet-before = { $weeks } before the last frost
packet-after = { $weeks } after the last frost
packet-around = from { $before } before to { $after } after the last frost
packet-at-frost = around the last frost
packet-after-danger = sow in the ground after the last frost
packet-days = { $days } to harvest
packet-days-from-setting-out = { $days } to harvest from setting out
packet-days-from-sowing = { $days } to harvest from sowing
packet-up = up in { $days }
packet-depth = { $depth } deep
packet-apart = { $apart } apart
packet-rows = rows { $rows } apart
packet-left-indoors = { $crops } are not raised indoors here, so I left the weeks indoors out.
packet-left-outdoors = { $crops } are not sown in the ground here, so I left that date out.
packet-bad-days = { $number } days to harvest can't be right, so nothing changed. Check the packet: I take { $low } to { $high }.
packet-bad-indoors = { $number } weeks indoors can't be right, so nothing changed. Check the packet: I take { $low } to { $high }.
packet-bad-offset = { $number } weeks from the last frost can't be right, so nothing changed. Check the packet: I take { $low } to { $high }.
packet-bad-up = { $number } days to come up can't be right, so nothing changed. Check the packet: I take { $low } to { $high }.
packet-bad-depth = A depth of { $depth } can't be right, so nothing changed. Check the packet: I take up to { $most }.
packet-bad-spacing = A spacing of { $apart } can't be right, so nothing changed. Check the packet: I take up to { $most }.

## How far north

latitude-how-to = How many degrees north or south of the equator is your garden? Like this: /latitude 47
latitude-bad = “{ $written }” is not a latitude. Send degrees from 0 to 90, like this: /latitude 47, or south of the equator /latitude 33 S
latitude-set = Noted: about { $degrees } degrees north.
latitude-set-south = Noted: about { $degrees } degrees south.
onion-ask-latitude = Which onions form bulbs depends on the length of your days. How far north are you? Like this: /latitude 47
onion-long = That far from the equator choose long-day onions: they form bulbs at 14 hours of daylight or more.
onion-long-intermediate = At that latitude long-day onions do well (bulbs from 14 hours of daylight), and intermediate ones (12 to 14 hours) do too.
onion-intermediate = At that latitude choose intermediate (day-neutral) onions: they form bulbs at 12 to 14 hours of daylight.
onion-intermediate-short = At that latitude intermediate onions do well (bulbs from 12 to 14 hours of daylight), and short-day ones (10 to 12 hours) do too.
onion-short = That near to the equator choose short-day onions: they form bulbs at 10 to 12 hours of daylight.

## Trays

# $vigour is small, upright or sprawling: how a seedling grows in the tray.
trays-head = Trays for what you sow indoors { $days }:
trays-none = Nothing of that is sown in a tray in the next two weeks.
trays-none-of-list = Nothing on your list is sown in a tray in the next two weeks.
trays-empty-list = Your list is empty. Name the crops and their cells, like this: /trays tomato 12, basil 6
trays-how-to = Which crops, and how many cells of each? Send them like this: /trays tomato 12, basil 6
trays-bad-count = “{ $written }” is no number of cells; give from 1 to { $most } for a crop, like this: /trays tomato 12, basil 6
trays-no-crop = “{ $written }” cells of what? Send each crop with its number, like this: /trays tomato 12, basil 6
trays-which = “{ $word }” can mean { $crops }: name one of them.
trays-too-long = That is more than I can lay out at once; send fewer crops.

# $warmth is tray-warmth or nothing, $like is tray-like; trays that are alike are told together.
tray-line = Tray { $number }, { $cells } cells of { $size }{ $warmth }: { $crops }. { $like }
tray-line-several = Trays { $number }–{ $last }, each { $cells } cells of { $size }{ $warmth }: { $crops } in each. { $like }
tray-warmth = {" "}(heat { $best })
tray-crop = { $crops } { $cells }
tray-crop-from = { $crops } { $cells } (sow { $date })
tray-crop-early = { $crops } { $cells } (early; best from { $date })
tray-like = { $vigour ->
    [small] Small
    [upright] Upright
   *[sprawling] Sprawling
}, out at { $age }.
tray-light = Keep it light until they are up.
tray-dark = Keep it dark until they are up.
tray-pot-up = Pot up { $crops } { $days }, into pots of { $pot }.
tray-pot-up-plain = Pot up { $crops } { $days }.
tray-too-early = { $crops }: not yet, from { $next }.
tray-too-late = { $crops }: too late for a tray now; next good day { $next }.
tray-too-late-for-good = { $crops }: too late for a tray, and your season is too short for another try.
tray-why-together = { $vigour ->
    [small] All are small
    [upright] All are upright
   *[sprawling] All sprawl, away from smaller ones
}, want cells of { $size }, leave the tray around { $leave } and are best set out at { $age }; the same warmth and light suit their seed.
tray-why-alone = { $vigour ->
    [sprawling] They sprawl, so they stand away from smaller ones, and nothing else here is like them.
   *[other] Nothing else here is alike enough in cells, growth, age, warmth and light to stand with them.
}
tray-why-no-gain = Others could stand here too, but that would save no tray.
tray-crop-why = { $vigour ->
    [small] Small
    [upright] Upright
   *[sprawling] Sprawling
}: sown { $sow }, they are { $age } old when they can go out, around { $out }; cells of { $size } carry them until then.
tray-crop-why-pot-up = { $vigour ->
    [small] Small
    [upright] Upright
   *[sprawling] Sprawling
}: sown { $sow }, they are { $age } old when they can go out, around { $out }; cells of { $size } carry them until { $by }, so pot them up.
tray-crop-why-early = That is early; best from { $date }.

# The member's other crops, a line for each reason; $crops is a list of names.
tray-rest-from = { $crop } (from { $date })
tray-rest-not-yet = Not yet: { $crops }.
tray-rest-too-late = Too late for a tray: { $crops }.
tray-rest-in-place = Better sown or planted where they grow: { $crops }.
tray-rest-settled = Sown or skipped already: { $crops }.

## Cold spells

hold-set = Held until { $date }: I name no hardening off and no setting out before then.
hold-set-club = Held for the club until { $date }: I tell nobody to harden off or set out before then. /hold shows each member which of their seedlings cannot wait.
hold-waits = That puts off: { $jobs }.
hold-nothing-waits = Nothing on your list was to be hardened off or set out before then.
hold-can-wait = Your seedlings can wait that long.
hold-pot-up = { $crops } will be { $age } old by then, more than they bear in their cells. Pot them up.
hold-too-old = { $crops } will be { $age } old by then, too old to wait. Harden them off and set them out under cover on the mildest days, or buy young plants later.
hold-too-old-sow-again = { $crops } will be { $age } old by then, too old to wait. Set them out under cover on the mildest days, or sow again: worth it until { $last }.
hold-off = The hold is over; from today I name everything again.
hold-off-own = Your own hold is over.
hold-off-club = The club's hold is over; from today I name everything again.
hold-none = Nothing is held.
hold-club-counts = Your club waits until { $date }, and that counts for you as well.
hold-how-to = In a cold spell, say how many days hardening off and setting out should wait, from 1 to 60: /hold 7 days, or until which day: /hold until Friday. To end it: /hold off
hold-how-to-club = In a cold spell, say how many days the club should wait, from 1 to 60: /club hold 7 days, or until which day: /club hold until Friday. To end it: /club hold off
hold-show = Held until { $date }.
hold-bad = I can hold for 1 to 60 days, like this: /hold 7 days, or /hold until Friday. Nothing changed.
hold-bad-club = I can hold for 1 to 60 days, like this: /club hold 7 days, or /club hold until Friday. Nothing changed.
now-held = Hardening off and setting out wait until { $date }.
settings-hold = • Cold spell: held until { $date }
settings-hold-club = • Cold spell: held until { $date } (your club's)

## Time zone, hour, language, units

zone-set = Your time zone is { $zone }; it is { $time } there now.
zone-how-to = Send a city or a zone's name, like this: /zone Denver
zone-show = Your time zone is { $zone }.
zone-show-none = I don't know your time zone and use UTC.
zone-near = I don't know the place “{ $written }”. Did you mean one of these?
zone-unknown = I don't know the place “{ $written }”. Send a larger city near you, or a zone's name such as America/Denver.
hour-set = Reminders come at { $time } ({ $zone }).
hour-how-to = Send a time of day, like this: /hour 7:00
hour-show = Reminders come at { $time } ({ $zone }).
hour-bad = “{ $written }” is not a time of day. Send it like this: /hour 7:00
quiet-none = Messages may come on any day.
quiet-show = No messages on { $days }. What would have come then is in the next message, and a last good day among them is told before.
quiet-how-to = Press a day to change it, or write it, like this: /quiet Sunday
quiet-bad = I found no day of the week in “{ $written }”, so nothing changed. Like this: /quiet Sunday, or /quiet off
quiet-all = That would leave no day for messages, so nothing changed. To stop them for a while: /holiday until 3 July
button-day = { $day }
button-day-quiet = { $day }: quiet
weekends-how-to = When do you garden? “Later” then puts a job off to the right day.
weekends-on = Noted: you garden at weekends. “Later” puts a job off to the next one, but never past its last good day.
weekends-off = Noted: you garden on any day. “Later” puts a job off to the next day on which a message may come.
button-weekends-on = I garden at weekends
button-weekends-off = I garden on any day
holiday-how-to = Until when are you away? Send the day on which messages may come again, like this: /holiday until 3 July
holiday-show = You are on holiday, with no messages before { $date }. Send another day to change that, or /holiday off to end it.
holiday-set = Have a good time! No messages before { $date }. What you miss and is still worth doing then is in the first one.
holiday-before = These end before that, so do them before you go:
holiday-off = Welcome back! Messages come again from the next morning on.
holiday-off-none = You are not on holiday; messages come as usual.
holiday-bad = I could not read a day in “{ $written }”, so nothing changed. Like this: /holiday until 3 July
holiday-impossible = The calendar has no day “{ $written }”, so nothing changed. Like this: /holiday until 3 July
holiday-past = { $date } is not after today, so nothing changed. Like this: /holiday until 3 July
holiday-too-long = { $date } is more than a year away, so nothing changed. Send an earlier day.
holiday-several = That is more than one day, so nothing changed. A holiday begins at once; send only the day on which messages may come again, like this: /holiday until 3 July
language-how-to = Which language?
language-set = From now on I speak { $language } with you.
language-unknown = I don't speak “{ $written }” yet. I speak { $languages }.
language-name-en = English
language-name-en-GB = English (UK)
language-name-en-US = English (US)
language-name-de = Deutsch
language-name-es = Español
language-name-fr = Français
units-set-metric = From now on in °C and cm.
units-set-customary = From now on in °F and inches.
settings-head = Your settings
settings-frost = • Frost: { $frost }
settings-frost-none = • Frost: not given
settings-frost-club = • Frost: { $frost } (your club's)
settings-zone = • Time zone: { $zone }
settings-zone-club = • Time zone: { $zone } (your club's)
settings-zone-none = • Time zone: not given, so UTC
settings-hour = • Reminders at { $time }
settings-quiet = • No messages on { $days }
settings-weekends = • “Later” waits for the weekend
settings-holiday = • On holiday, no messages before { $date }
settings-units-metric = • Units: °C and cm
settings-units-customary = • Units: °F and inches
settings-language = • Language: { $language }
settings-club = • Club: { $club }
settings-hot-and-wet = • Hot and wet months: { $months }
settings-unreachable = Reminders come in our private chat; open it once and send /start.

## Club

club-head = { $club }, settings for everybody who has none of their own
club-reach-all = • Members: { $members }; reminders can reach each of them
club-reach = • Members: { $members }; reminders can reach { $reached }. The others have to open our private chat and send /start.
club-only-in-group = /club works in your club's group, where I can see who its administrators are.
club-not-administrator = Only administrators of this group and the helpers they name can change the club's settings. /frost sets your own garden.
club-role-unknown = I could not check who the administrators are. Please try again in a minute.
club-frost-set = Noted for the club: { $frost }. That is a season of { $days ->
    [one] { $days } day
   *[other] { $days } days
}. Members with dates of their own keep them.
club-frost-set-no-end = Noted for the club: { $frost }. Members with dates of their own keep them.
club-frost-set-free = Noted for the club: no frost. Which months are too hot there, and which are wet? Reply to this message, for example: hot June to September, wet June to October. Members with settings of their own keep them.
club-frost-unset = The club has no frost dates any more.
club-frost-how-to = Reply to this message with the club's average last spring frost and first autumn frost, like this: 05-15 10-05
club-zone-set = The club's time zone is { $zone }.
club-zone-how-to = Reply to this message with a city or a zone's name, like this: Denver
club-language-set = The club's language is { $language }.
club-not-understood = I don't know the setting “{ $written }”, so nothing changed.
club-how-to = Set them here, or in one line: /club frost 05-15 10-05, /club zone Denver, /club language en, /club digest Monday 8:00, /club hold 7 days
settings-digest = • The club's week: { $day }, { $time }
settings-digest-none = • The club's week: not sent

## The club's week

# $count is how many members grow the crop, $when one of the two below.
digest-head = The club's week, { $days }, by the club's frost dates:
digest-opens = Opens this week:
digest-closes = About to close:
digest-line = • { $what }: { $when } ({ $count ->
    [one] one member grows them
   *[other] { $count } members grow them
})
digest-from = from { $date }
digest-until = good until { $date }
digest-more = { $count ->
    [one] and one more
   *[other] and { $count } more
}
digest-foot = Your own dates may differ: ask me /now.
digest-show = This group gets the club's week on { $day } at { $time }.
digest-show-none = This group does not get the club's week.
digest-how-to = Send a day and a time, like this: /club digest Monday 8:00. With “here” behind it, it comes in the topic where you write that. /club digest off stops it.
digest-bad = I could not read a day of the week and a time in “{ $written }”, so nothing changed. Like this: /club digest Monday 8:00 here, or /club digest off
digest-set = Noted: this group gets the club's week on { $day } at { $time }. A week in which nothing opens or closes has none.
digest-set-here = Noted: the club's week comes in this topic on { $day } at { $time }. A week in which nothing opens or closes has none.
digest-topic-closed = The topic that this was to come in is closed, so it comes here. An administrator or helper can choose another: write /club digest with day, time and “here” in that topic.
digest-off = Noted: the club's week is not sent any more.
digest-needs-frost = It needs the club's frost dates first: /club frost 05-15 10-05

## Helpers of a club

helpers-none = Nobody helps you yet.
helpers-head = These helpers may change the club's settings and lists: { $names }.
helper-how-to = To name somebody, reply to a message of theirs with /club helper add; to end it, with /club helper remove.
helper-added = { $name } may now change the club's settings and its lists. /club helpers shows everybody who may.
helper-already = { $name } is a helper already.
helper-removed = { $name } is no helper of the club any more.
helper-unknown = That person is no helper of the club, so nothing changed.
helper-is-bot = A bot, or somebody who writes anonymously, can be no helper. Reply to a person's message with /club helper add.
helpers-too-many = A club has at most { $most } helpers, so nothing changed. /club helpers shows them.
helpers-not-administrator = Only administrators of this group can name its helpers.
button-helper-remove = Remove { $name }

## Which club is meant

which-club = In private the frost dates, time zone, language and lists of { $club } hold for you. Which club's shall it be?
which-club-gone = You don't belong to that club any more, so nothing changed. /club shows your clubs.
club-chosen = In private { $club } holds from now on: its frost dates, time zone, language and lists, where you set none of your own.
start-several = You also belong to { $others }. In private { $club } holds from now on; /club changes that.
button-club = { $club }
button-which-club = Another club

## The club's lists

lists-head = Lists of { $club }. Subscribe to one, and its crops are in your plan:
lists-line = • { $list }: { $count ->
    [0] no crops yet
    [one] one crop
   *[other] { $count } crops
}
lists-line-mine = • { $list }: { $count ->
    [0] no crops yet
    [one] one crop
   *[other] { $count } crops
}, in your plan
lists-none = { $club } keeps no lists yet. In the group, an administrator or a helper starts one like this: /list new Salsa bed: tomato, pepper, onion
lists-no-club = Lists belong to a club. Press the button under my greeting in your club's group, then try again.
lists-how-to-short = /list help shows how to change them.
lists-how-to = For administrators and their helpers, in the group:
    /list new Salsa bed: tomato, pepper – start a list
    /list salsa + basil, dill – put crops on it
    /list salsa - pepper – take one off
    /list rename salsa to Hot bed – another name
    /list note salsa: for the bed by the gate – a line of text
    /list share salsa – a code with which another club copies it
    /list take ABCD-EFGH – copy another club's list
    /list archive salsa – put it away

    For everybody:
    /list salsa – look at it
    /list join salsa, /list leave salsa – subscribe or not
lists-only-in-group = The club's lists are changed in its group, where I can see who may.
lists-not-coordinator = Only administrators of this group and the helpers they name can change its lists. /grow and /drop are for your own crops.
lists-too-many = A club keeps at most { $most } lists, so nothing changed. /list archive puts one away.
list-crops = Crops: { $crops }
list-without-crops = No crops are on it yet.
list-subscribers = { $count ->
    [0] Nobody subscribes yet.
    [one] One member subscribes.
   *[other] { $count } members subscribe.
}
list-left-out = You leave out: { $crops }. /grow brings a crop back.
list-gone = That list is not among the club's lists, so nothing changed. /lists shows them.
list-unknown = I know no list “{ $written }” here. Your club has { $lists }.
list-which = Which list? Begin with its name, like this: /list salsa + basil
list-which-crop = “{ $word }” can mean { $crops }. Send it once more with the full name.
list-new-how-to = What shall the list be called? Like this: /list new Salsa bed: tomato, pepper, onion
list-name-too-long = A list's name has at most { $most } characters, so nothing changed.
list-name-is-verb = A list's name cannot begin with “{ $word }”, since that tells me what to do. Choose another name; nothing changed.
list-name-taken = There is a list “{ $list }” already, so nothing changed. Choose another name, or rename that one first.
list-made = New list “{ $list }”: { $crops }.
list-made-empty = New list “{ $list }”, without crops yet.
list-copied = Copied as a list of this club, “{ $list }”: { $crops }.
list-made-next = Members subscribe with the button of the list, here or in private with /lists.
list-too-many-crops = A list has at most { $most } crops, so nothing changed.
list-added = On “{ $list }” now: { $crops }.
list-already = Already on “{ $list }”: { $crops }.
list-add-how-to = Which crops? Like this: /list { $list } + basil, dill
list-taken-off = Off “{ $list }”: { $crops }.
list-not-on-it = Not on “{ $list }”: { $crops }.
list-take-off-how-to = Which crops? Like this: /list { $list } - basil
list-who-hears = { $count ->
    [one] The one member who subscribes hears of it in the next morning's message.
   *[other] The { $count } members who subscribe hear of it in their next morning's message.
}
list-rename-how-to = What shall it be called? Like this: /list rename { $list } to Hot bed
list-renamed = “{ $list }” is called “{ $name }” from now on.
list-note-how-to = Which line of text? Like this: /list note { $list }: for the bed by the gate
list-note-too-long = A list's line of text has at most { $most } characters, so nothing changed.
list-noted = “{ $list }” has its line of text. /list { $list } shows it.
list-note-gone = “{ $list }” has no line of text any more.
list-archived = “{ $list }” is put away: in nobody's plan any more, and no code leads to it.
list-reopened = “{ $list }” is there again, for those who subscribed too. Share it anew if another club needs its code.
list-not-archived = That list is not put away, so nothing changed. /lists shows the club's lists.
list-shared = Another club's coordinator copies “{ $list }” with this:
    /list take { $code }
    It works until the list is put away; later changes stay with each club.
list-copy-how-to = Send the code that the other club gave you, like this: /list take ABCD-EFGH
list-code-unknown = No list is shared as “{ $written }”. Ask the other club for the code once more.
list-subscribed = “{ $list }” is in your plan now.
list-subscribed-already = “{ $list }” is in your plan already.
list-unsubscribed = “{ $list }” is not in your plan any more. What you chose yourself stays.
list-not-subscribed = “{ $list }” was not in your plan.
list-open-private = For reminders open our private chat and press Start.
list-other-club-holds = In private { $club } holds for you at present; /club changes that there.
list-anonymous = You write anonymously here, so I cannot tell whose plan it is for. /lists works in our private chat.
list-news-came = Your club put { $crops } on “{ $list }”, and so into your plan.
list-news-went = Your club took { $crops } off “{ $list }”.
list-news-both = Your club changed “{ $list }”. New: { $came }. Gone: { $went }.
list-news-archived = Your club put the list “{ $list }” away. Gone with it: { $crops }.
list-news-stay = In your plan all the same: { $crops }.
list-news-next = /mycrops shows your plan; /grow keeps a crop in it, and /drop leaves one out.
button-list = { $list }
button-all-lists = ‹ All lists
button-lists = The club's lists
button-subscribe = Subscribe
button-unsubscribe = Unsubscribe

## Trouble

went-wrong = Something went wrong on my side with that. Nothing changed; please try it once more.
unknown-command = I don't know that command. /help shows what I can do.

## Command menus (at most 256 characters each)

menu-ask = Can I start this now?
menu-now = What can I do today?
menu-grow = Put crops on my list
menu-drop = Take a crop off my list
menu-mycrops = My list
menu-lists = The club's lists of crops
menu-sown = I have sown something
menu-sowings = My sowings
menu-variety = My varieties and their packets
menu-undo = Take the last change back
menu-trays = Which seedlings share a tray
menu-frost = My frost dates
menu-zone = My time zone
menu-hold = Wait out a cold spell
menu-place = Where my seedlings grow
menu-hour = When my reminder comes
menu-holiday = No messages for a while
menu-quiet = Days without messages
menu-weekends = When I garden
menu-settings = My settings
menu-export = All that is kept about me
menu-forget = Delete all of it
menu-help = What the bot can do
menu-club = The club's settings

## Plan

plan-line = { $days }: { $what } (worth it until { $last }). { $why }
plan-why-sow-indoors = So that they are { $age } old when they go out, counted from the last frost around { $last_frost }.
plan-why-pot-up = Three to four weeks after sowing, when true leaves have opened.
plan-why-harden-off = 7 to 14 days before they go out.
plan-why-plant-out = Hardened plants bear nights down to { $nights }; the last frost is around { $last_frost }.
plan-why-sow-outdoors = The soil should stay at { $minimum } or more; the last frost is around { $last_frost }.
plan-why-autumn = For autumn, counted back from the first frost around { $first_frost }.
plan-why-overwinter = For next year, around the first frost on { $first_frost }.
plan-why-months = Heat and rain decide: planting begins around { $starts }, and the heat is back around { $heat }.
plan-why-months-rain = Rain decides: planting begins around { $starts }, and the rains are back around { $heat }.
plan-why-cover = Your { $cover } moves this.
plan-why-second-year = Sown in early summer, it blooms the next year.
plan-why-before = It takes { $days }, before you { $then }.
plan-why-hedge = A second chance beside the first sowing: if one fails, the other crops.
plan-why-repeat = A repeat sowing, if you want more of them, after the one of { $last }.
plan-why-repeat-heat = A repeat sowing, if you want more of them, after the one of { $last }: summer heat ends each soon.
plan-why-sown = Counted from the sowing of { $sown }.
