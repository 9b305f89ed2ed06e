## Short prompts shared by many exercises.
common-work-out = Work it out.
common-box = What number goes in the box?
common-sign = Which sign makes it true?
common-choose-one = Choose one.
common-choose-all = Choose all that fit.
common-answer = The answer is { $answer }.
common-check = Check: { $work }.
common-yes = Yes
common-no = No
common-least = Least
common-greatest = Greatest

## How a given answer is told back.
answer-minutes = { $minutes ->
    [one] { $minutes } minute
   *[other] { $minutes } minutes
}
answer-hours-minutes = { $hours ->
    [one] { $hours } hour
   *[other] { $hours } hours
} { $minutes ->
    [one] { $minutes } minute
   *[other] { $minutes } minutes
}
answer-sign = { $sign }
answer-typed = { $text }
answer-ray-greater = All numbers greater than { $from }. { $from } is not part of it.
answer-ray-less = All numbers less than { $from }. { $from } is not part of it.
answer-ray-at-least = { $from } and all greater numbers.
answer-ray-at-most = { $from } and all lesser numbers.
answer-shaded = { $count ->
    [one] { $count } part
   *[other] { $count } parts
}
answer-heights = { $heights }
answer-rectangle = { $rows } by { $columns }
answer-remainder = { $quotient } remainder { $remainder }
answer-several = { $numbers }
half-day-am = in the morning
half-day-pm = after noon

answer-given-before = You gave this answer before, so it does not count again. Try another one.

## A kind word about the form of an equal answer.
form-not-simplest = That is equal. You can make it simpler.
form-not-mixed = That is equal. Try it as a mixed number.
form-not-single-fraction = That is equal. Try it as one fraction.
form-other-bottom = That is equal. The question asks for another denominator.
form-not-whole = That is equal. You can write it as a whole number.
form-extra-zeros = That is equal. You do not need the last zeros.
form-not-expanded = That is equal. Write it without parentheses, and combine like terms.
form-not-factored = That is equal. Write it as a product, with all of the common factor in front.
form-other-steps = That has the same value. Write the steps the question asks for.
form-other-form = That is equal. It is written in another way here.

## Places of a number.
place-ones = Ones
place-tens = Tens
place-hundreds = Hundreds
place-thousands = Thousands
place-ten-thousands = Ten thousands
place-hundred-thousands = Hundred thousands
place-millions = Millions

## Units: of several, `.one` of one, `.part` of a part of one.
unit-mm = millimeters
    .one = millimeter
    .part = millimeter
unit-cm = centimeters
    .one = centimeter
    .part = centimeter
unit-m = meters
    .one = meter
    .part = meter
unit-km = kilometers
    .one = kilometer
    .part = kilometer
unit-in = inches
    .one = inch
    .part = inch
unit-ft = feet
    .one = foot
    .part = foot
unit-yd = yards
    .one = yard
    .part = yard
unit-mi = miles
    .one = mile
    .part = mile
unit-g = grams
    .one = gram
    .part = gram
unit-kg = kilograms
    .one = kilogram
    .part = kilogram
unit-oz = ounces
    .one = ounce
    .part = ounce
unit-lb = pounds
    .one = pound
    .part = pound
unit-ml = milliliters
    .one = milliliter
    .part = milliliter
unit-l = liters
    .one = liter
    .part = liter
unit-cup = cups
    .one = cup
    .part = cup
unit-pt = pints
    .one = pint
    .part = pint
unit-qt = quarts
    .one = quart
    .part = quart
unit-gal = gallons
    .one = gallon
    .part = gallon
unit-s = seconds
    .one = second
    .part = second
unit-min = minutes
    .one = minute
    .part = minute
unit-h = hours
    .one = hour
    .part = hour
unit-days = days
    .one = day
    .part = day
unit-weeks = weeks
    .one = week
    .part = week
unit-square-units = square units
    .one = square unit
    .part = square unit
unit-square-cm = square centimeters
    .one = square centimeter
    .part = square centimeter
unit-square-m = square meters
    .one = square meter
    .part = square meter
unit-square-ft = square feet
    .one = square foot
    .part = square foot
unit-square-in = square inches
    .one = square inch
    .part = square inch
unit-cubic-units = cubic units
    .one = cubic unit
    .part = cubic unit
unit-cubic-cm = cubic centimeters
    .one = cubic centimeter
    .part = cubic centimeter
unit-cubic-m = cubic meters
    .one = cubic meter
    .part = cubic meter
unit-cubic-in = cubic inches
    .one = cubic inch
    .part = cubic inch
unit-units = units
    .one = unit
    .part = unit
unit-dollars = dollars
    .one = dollar
    .part = dollar
unit-cents = cents
    .one = cent
    .part = cent
unit-degrees = degrees
    .one = degree
    .part = degree
unit-times = times
    .one = time
    .part = time

## What a teacher wrote: shown as it stands.
own-words = { $words }
own-first = First
own-last = Last
who-says = { $first } says the answer is { $one }. { $second } says it is { $two }. Who is right?
who-name = { $name }
who-neither = Neither of them
who-hint = Find your own answer first. Then compare.
estimate-ask = Do not work it out. Which number is closest to the answer?
estimate-hint-round = Round each number to its first digit.
estimate-hint-size = Think how large the answer is: tens, hundreds, thousands?
estimate-step = The answer is about { $about }.
