round-ask = Round { $n } to the nearest { $place }.
round-rule = A number half way goes up.
round-line = A number line from { $down } to { $up } with a point at { $n }.
round-hint-between = The number is between { $down } and { $up }.
round-hint-line = Which end is closer?
round-hint-ends = Which two round numbers is it between? Think of the nearest { $place }.
round-hint-half = Find the numbers half way to the round number below and above.
round-step-half = Half way is { $half }.
round-step-up = { $n } is half way or more. It rounds up to { $right }.
round-step-down = { $n } is less than half way. It rounds down to { $right }.
round-step-low = { $n } is half way. It goes up, so it fits.
round-step-high = { $n } is half way too. It goes up past the number, so it does not fit.
round-place-10 = ten
round-place-100 = hundred
round-place-1000 = thousand
round-place-10000 = ten thousand
round-place-100000 = hundred thousand
round-ask-which = Which of these numbers round to { $to }, to the nearest { $place }? Choose all.

g4-place-value-tens-ask-factor = { $large } is how many times as much as { $small }?
g4-place-value-tens-ask-value = What number is { $factor } times as much as { $small }?
g4-place-value-tens-hint-left = One place to the left is worth ten times as much.
g4-place-value-tens-hint-count = { $gap ->
    [one] The digit moves { $gap } place.
   *[other] The digit moves { $gap } places.
}
g4-place-value-tens-step-moved = { $gap ->
    [one] The digit moves { $gap } place to the left. That is { $factor } times as much.
   *[other] The digit moves { $gap } places to the left. That is { $factor } times as much.
}
g4-place-value-tens-ask-factor-1 = { $name } has { $small } points. A team has { $large } points. How many times as many is that?
g4-place-value-tens-ask-factor-2 = { $name } fills a small box with { $small } beads and a large box with { $large } beads. How many times as many is that?
g4-place-value-tens-ask-factor-3 = { $name } writes { $small } and then { $large }. How many times as much is the second number?
g4-place-value-tens-ask-value-1 = { $name } has { $small } points. A team has { $factor } times as many. How many points is that?
g4-place-value-tens-ask-value-2 = { $name } fills a small box with { $small } beads. A large box holds { $factor } times as many. How many is that?
g4-place-value-tens-ask-value-3 = { $name } writes { $small } and then a number that is { $factor } times as much. What is the second number?

g4-read-write-numbers-ask-words = Write this number in digits: { $words }.
g4-read-write-numbers-ask-parts = Write it as one number.
g4-read-write-numbers-ask-name = How do you read { $n }?
g4-read-write-numbers-hint-places = Give each part its own place.
g4-read-write-numbers-hint-zero = A place with no part gets a 0.
g4-read-write-numbers-hint-groups = Read the thousands first. Then read the rest.
g4-read-write-numbers-step-parts = Find the value of each part.
g4-read-write-numbers-step-zeros = The empty places get zeros: { $n }.

g4-compare-numbers-hint-digits = Count the digits first.
g4-compare-numbers-hint-left = If they have the same number of digits, look from the left. Find the first place that differs.
g4-compare-numbers-hint-parts = One side is a sum of parts. Write it as one number.
g4-compare-numbers-step-more-digits = The left number has { $left } digits. The right number has { $right } digits. More digits means a greater number.
g4-compare-numbers-step-first-different = In the first place that differs, the left number has { $left } and the right number has { $right }.

g5-place-value-powers-ask-factor = { $large } is how many times { $small }?
g5-place-value-powers-ask-tenth = What is { $part } of { $large }?
g5-place-value-powers-ask-factor-1 = { $name } writes { $small } and then { $large }. How many times as much is the second number?
g5-place-value-powers-ask-factor-2 = { $name } moves a digit to the left. Its value was { $small } and now is { $large }. How many times as much is that?
g5-place-value-powers-ask-tenth-1 = { $name } writes { $large }. The next number is { $part } of it. What is it?
g5-place-value-powers-ask-tenth-2 = { $name } moves a digit to the right. Its value was { $large }. Now it is { $part } of that. What is it now?
g5-place-value-powers-hint-left = One place to the left is worth ten times as much.
g5-place-value-powers-hint-right = One place to the right is worth one tenth as much.
g5-place-value-powers-hint-count = { $gap ->
    [one] The digit moves { $gap } place.
   *[other] The digit moves { $gap } places.
}
g5-place-value-powers-step-moved = { $gap ->
    [one] The digit moves { $gap } place to the left. That is { $factor } times as much.
   *[other] The digit moves { $gap } places to the left. That is { $factor } times as much.
}
g5-place-value-powers-step-right = { $gap ->
    [one] The digit moves { $gap } place to the right.
   *[other] The digit moves { $gap } places to the right.
}

g5-powers-of-ten-hint-power = { $exponent ->
    [one] The power has only one factor of 10. It is { $ten }.
   *[other] The power has { $exponent } factors of 10. It is { $ten }.
}
g5-powers-of-ten-hint-left = { $exponent ->
    [one] The number gets bigger. Each digit moves { $exponent } place to the left.
   *[other] The number gets bigger. Each digit moves { $exponent } places to the left.
}
g5-powers-of-ten-hint-right = { $exponent ->
    [one] The number gets smaller. Each digit moves { $exponent } place to the right.
   *[other] The number gets smaller. Each digit moves { $exponent } places to the right.
}
number-in-words = { $words }
