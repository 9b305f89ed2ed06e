decimal-hint-places = Compare the ones first. Then compare the tenths, then the hundredths.
decimal-hint-even = Write the same number of places in both: { $left } and { $right }.
decimal-hint-line-up = Line up the decimal points.
decimal-hint-zeros = Fill empty places with zeros: { $work }.
decimal-hint-columns = Work from the right, one place at a time. Put the point in line with the others.
decimal-hint-as-wholes = Multiply as if there were no points: { $work }.
decimal-hint-places-together = { $places ->
    [one] The factors have { $places } decimal place in all. So does the product.
   *[other] The factors have { $places } decimal places in all. So does the product.
}
decimal-hint-whole-divisor = Make the divisor a whole number. Do the same to both numbers.
decimal-hint-point-up = The point in the answer goes above the point in the number you divide.
decimal-hint-check = Think of it as times: { $work }.
decimal-step-both = Multiply both by { $factor }: { $work }.
decimal-place-whole = whole number
decimal-place-tenth = tenth
decimal-place-hundredth = hundredth

g4-tenths-hundredths-hint-one = One tenth is ten hundredths.
g4-tenths-hundredths-hint-rods = A rod is one tenth. It is made of ten small cubes.
g4-tenths-hundredths-hint-blocks = Here are the tenths. Each rod is ten hundredths.
g4-tenths-hundredths-step-ten = Each tenth is 10 hundredths: { $work }.
g4-tenths-hundredths-story-1 = { $name } has { $fraction } of a meter of ribbon. A meter has { $given } centimeters. How many centimeters is that?
g4-tenths-hundredths-story-2 = { $name } has { $fraction } of a dollar. A dollar has { $given } cents. How many cents is that?
g4-tenths-hundredths-story-3 = { $name } shades { $fraction } of a square. The square has { $given } equal parts. How many parts is that?
g4-tenths-hundredths-story-4 = { $name } fills { $fraction } of a page of boxes. The page has { $given } boxes. How many boxes is that?

g4-decimal-write-ask = Write it as a decimal.
g4-decimal-write-hint-tenths = Tenths are in the first place after the point.
g4-decimal-write-hint-hundredths = Hundredths are in the second place after the point.
g4-decimal-write-hint-blocks = A flat is 1. A rod is a tenth. A small cube is a hundredth.
g4-decimal-write-step-tenths = { $tenths ->
    [one] { $tenths } tenth goes right after the point.
   *[other] { $tenths } tenths go right after the point.
}
g4-decimal-write-step-hundredths = Tenths place: { $tenths }. Hundredths place: { $hundredths }.

g4-decimal-on-line-ask-name = The line is cut into { $parts } equal parts. What decimal is at the point?
g4-decimal-on-line-ask-mark = Put a point at { $value }.
g4-decimal-on-line-line = A number line from { $from } to { $to } in { $parts } equal parts.
g4-decimal-on-line-line-point = A number line from { $from } to { $to } in { $parts } equal parts. A point is { $marks ->
    [one] { $marks } part
   *[other] { $marks } parts
} after the left end.
g4-decimal-on-line-hint-parts = How much is one of the { $parts } parts?
g4-decimal-on-line-hint-jump = Count the jumps from the left end.
g4-decimal-on-line-step-size = Each part is { $step }.
g4-decimal-on-line-step-count = { $marks ->
    [one] Go { $marks } part from { $from } to get to { $value }.
   *[other] Go { $marks } parts from { $from } to get to { $value }.
}
g4-decimal-on-line-story-1 = The line shows meters in { $parts } equal parts. { $name } jumps to the point. What decimal is that?
g4-decimal-on-line-story-2 = The line shows miles in { $parts } equal parts. { $name } is at the point. What decimal is that?
g4-decimal-on-line-story-3 = The line shows liters in { $parts } equal parts. { $name } fills a jar up to the point. What decimal is that?
g4-decimal-on-line-story-1-mark = The line shows meters. { $name } jumps to { $value }. Put a point there.
g4-decimal-on-line-story-2-mark = The line shows miles. { $name } is at { $value }. Put a point there.
g4-decimal-on-line-story-3-mark = The line shows liters. { $name } fills a jar up to { $value }. Put a point there.

g5-decimal-read-write-ask = Write it as a decimal.
g5-decimal-read-write-hint-places = After the point come tenths, hundredths, thousandths.
g5-decimal-read-write-hint-zero = A place with no part gets a 0.
g5-decimal-read-write-step-digits = Tenths: { $tenths }. Hundredths: { $hundredths }. Thousandths: { $thousandths }.
g5-decimal-read-write-ask-words = Which decimal is this?
g5-decimal-read-write-words-hundredths = { $ones } and { $part } hundredths
g5-decimal-read-write-words-thousandths = { $ones } and { $part } thousandths
g5-decimal-read-write-hint-and = The word "and" is where the point goes.
g5-decimal-read-write-hint-two-places = Hundredths have two places after the point.
g5-decimal-read-write-hint-three-places = Thousandths have three places after the point.

g5-decimal-round-ask = Round { $n } to the nearest { $place }.
g5-decimal-round-hint-ends = Which two numbers is it between? Think of the nearest { $place }.

decimal-hint-empty-place = An empty place at the end is worth 0.
misconception-rounded-to-larger-place = Look at the place you round to. You used a larger place.
    .name = Rounded to a larger place
misconception-not-rounded = You kept the number. Round it to the place asked for.
    .name = Did not round
