# What the bot says, in English.
#
# The spelling and the dates follow the reader's region (en-US, en-GB); the words are the same.

## Dates

# A span of days that crosses a month: $from and $to are dates, "April 17" and "May 1".
date-range = { $from } to { $to }

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
