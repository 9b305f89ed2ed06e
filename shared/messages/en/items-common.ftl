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
form-other-bottom = That is equal. The question asks for another bottom number.
form-not-whole = That is equal. You can write it as a whole number.
form-extra-zeros = That is equal. You do not need the last zeros.
form-not-expanded = That is equal. Write it without brackets, and join like terms.
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

## Signs of units.
unit-mm = mm
unit-cm = cm
unit-m = m
unit-km = km
unit-in = in
unit-ft = ft
unit-yd = yd
unit-mi = mi
unit-g = g
unit-kg = kg
unit-oz = oz
unit-lb = lb
unit-ml = mL
unit-l = L
unit-cup = cups
unit-pt = pt
unit-qt = qt
unit-gal = gal
unit-s = s
unit-min = min
unit-h = h
unit-days = days
unit-weeks = weeks
unit-square-units = square units
unit-square-cm = square cm
unit-square-m = square m
unit-square-ft = square ft
unit-square-in = square in
unit-cubic-units = cubic units
unit-cubic-cm = cubic cm
unit-cubic-m = cubic m
unit-cubic-in = cubic in
unit-units = units
unit-dollars = dollars
unit-cents = cents
unit-degrees = degrees
unit-times = times

## What a teacher wrote: shown as it stands.
own-words = { $words }
own-first = First
own-last = Last
