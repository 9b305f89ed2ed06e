## Short prompts shared by many exercises.
common-work-out = Work it out.
common-box = What number goes in the box?
common-sign = Which sign makes it true?
common-sign-1 = These are the lengths of two ribbons in meters. Which sign makes it true?
common-sign-2 = These are the heights of two plants in meters. Which sign makes it true?
common-sign-3 = Two friends walk. These are their miles. Which sign makes it true?
common-sign-4 = Two jars hold water. These are the liters. Which sign makes it true?
common-sign-5 = These are the masses of two bags in kilograms. Which sign makes it true?
common-sign-6 = These are two long jumps in meters. Which sign makes it true?
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
answer-boxes = For example: { $sentence }
half-day-am = in the morning
half-day-pm = in the afternoon or evening

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
form-other-numbers = That is true. Use only the numbers that the question lets you use.
form-first-part-only = Your first answer is right. Look at the second part again.

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
unit-cubic-ft = cubic feet
    .one = cubic foot
    .part = cubic foot
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
mend-says-1 = { $name } answers this:
mend-says-2 = This is the answer that { $name } gives:
who-one-is-right = Only one of them is right. Who is it?
mend-ask = Is it right?
mend-right-answer = What is the right answer?
answer-sign-ask-1 = Call the answer A. Which sign makes this true?
answer-sign-ask-2 = Is the answer less, equal or greater? A stands for the answer.
answer-sign-step = Compare the answer with the other number.
estimate-first = First, do not work it out. Which number is closest to the answer?
estimate-then = Now work it out. What is the answer?

## Boxes to fill so that a sentence is true.
boxes-ask = Fill the boxes so that it is true. There is more than one way.
boxes-cards = Use each of these numbers only once: { $cards }
boxes-range = Use whole numbers from { $least } to { $greatest }.
boxes-area = A rectangle has an area of { $area ->
    [one] { $area } square unit
   *[other] { $area } square units
}. The boxes are its length and its width.
boxes-perimeter = A rectangle has a perimeter of { $perimeter ->
    [one] { $perimeter } unit
   *[other] { $perimeter } units
}. The boxes are its length and its width.
boxes-volume = A box has a volume of { $volume ->
    [one] { $volume } cubic unit
   *[other] { $volume } cubic units
}. The boxes are its length, width and height.
boxes-mean = Four numbers have the mean { $mean }. Two of them are missing.
boxes-percent = { $one } means { $part }. Which percent of which number is { $value }? The first box is the percent.
boxes-hint-last-digits = Look at the last digits first. Which two fit?
boxes-hint-numerators = The denominators are there already. Think about the numerators.
boxes-hint-same-parts = Write both fractions in parts of the same size first.
boxes-hint-factor = Try a number in one box. Then find what is left for the others.
boxes-hint-quotient = Look for two numbers where one fits into the other just that many times.
boxes-hint-order = Which part is worked out first? Try a small number there.
boxes-hint-equal-parts = Cut each part into the same number of smaller parts.
boxes-hint-between = Find one fraction that is a little less, and one that is a little more.
boxes-hint-from-left = Think of the number line. The least number is farthest to the left.
boxes-hint-order-least = Compare two of the numbers, place by place from the left.
boxes-hint-half-way = Length and width together are half of the way around.
boxes-hint-ratio = Multiply both numbers of the ratio by the same number.
boxes-hint-mean = First find the sum of all four numbers.
boxes-hint-percent = Twice the percent of half the number gives the same amount.
boxes-hint-places = How many hundreds are there? What is left for the tens?
boxes-hint-try = Put a number in one box. Check if the rest can be made true.
boxes-step-one = This is one way.
boxes-step-other = This is another way.

## A comparison and the fact that decides.
reason-ask = Which of these facts is true and helps you decide?
reason-same-parts = Both are made of parts of the same size.
reason-same-count = Both take the same number of parts.
reason-half-between = One is less than one half, and one is more.
reason-one-between = One is less than 1, and one is more than 1.
reason-one-part-missing = Each is one part less than 1.
reason-same-point = Both are at the same point of the number line.
reason-zero-between = One is less than 0, and one is more than 0.
reason-both-below-zero = Both are less than 0. So closer to 0 is greater.
reason-both-above-zero = Both are more than 0. So closer to 0 is less.
reason-same-distance = They are at the same distance from 0, on its two sides.
reason-differ-hundred-thousands = From the left, they first differ in the hundred thousands.
reason-differ-ten-thousands = From the left, they first differ in the ten thousands.
reason-differ-thousands = From the left, they first differ in the thousands.
reason-differ-hundreds = From the left, they first differ in the hundreds.
reason-differ-tens = From the left, they first differ in the tens.
reason-differ-ones = From the left, they first differ in the ones.
reason-differ-tenths = From the left, they first differ in the tenths.
reason-differ-hundredths = From the left, they first differ in the hundredths.
reason-same-in-each-place = No place differs.

## Lines of work with one mistake.
lines-ask = { $name } works out { $work }. One line has a mistake. The next lines go on from it. Which line is it?
lines-line = Line { $line }
lines-mend = What is the right number at the end of that line?
lines-hint-check = Check each line by itself. Is its left side the same as its right side?
lines-hint-first = Start at the first line. Work it out yourself, then go on to the next.
lines-step-line = Line { $line } is not true. This is right:

## Two ways to work something out.
ways-ask = { $first } and { $second } work out { $work }. Each has a way. Whose way gives the right answer?
ways-says = { $name }: { $way }
ways-first = Only { $first } is right
ways-second = Only { $second } is right
ways-both = Both are right
ways-neither = Neither is right
ways-compute = What is { $work }?
ways-hint-picture = Each way changes the numbers. Ask if that change is made good again.
ways-hint-small = Try each way with small numbers. Does it still work?
ways-step = { $name } gets this:

## The equation of a story, and then its answer.
equation-ask = First: which equation fits? The letter n is the number you look for.
equation-solve = Now solve it. What is n?
equation-hint-story = Read it again. What happens first, and what happens then?
## The mistake in an answer, the range of an answer, a missing number.
misconception-ask = Which mistake did { $name } make?
misconception-none = None. It is right
between-ask = First, do not work it out. Between which two numbers is the answer?
between-choice = { $low } and { $high }
between-step = The answer is between { $low } and { $high }.
between-hint = Think of easy numbers close to these.
missing-hint-undo = Go back from the result. Which operation takes you back?
missing-hint-try = Put your number in the box. Does it come out right?
missing-step-check = Check it:
