quadrant-1 = First quadrant
quadrant-2 = Second quadrant
quadrant-3 = Third quadrant
quadrant-4 = Fourth quadrant
order-coldest = Coldest
order-warmest = Warmest
order-lowest = Lowest
order-highest = Highest
order-least = Least
order-greatest = Greatest
absolute-more = More
absolute-less = Less
absolute-same = The same

g6-fraction-divide-hint-fit = How many { $part } fit in { $amount }?
g6-fraction-divide-hint-times = Dividing by a fraction is the same as multiplying by { $turned }.
g6-fraction-divide-ask-1 = How many servings of { $part } of a cup are in { $amount } of a cup of yogurt?
g6-fraction-divide-ask-2 = A strip of land has an area of { $amount } of a square mile and is { $part } of a mile long. How many miles wide is it?
g6-fraction-divide-ask-3 = A rope is { $amount } of a yard long. How many pieces of { $part } of a yard does it make? Count a part of a piece too.

g6-divide-multi-digit-hint-multiples = Write some multiples of the divisor: { $multiples }.
g6-divide-multi-digit-hint-first = Start on the left. Divide one place at a time.
g6-divide-multi-digit-step-place = Divide { $rest }: take away { $work }.

g6-greatest-common-factor-ask = What is the greatest common factor of { $a } and { $b }?
g6-greatest-common-factor-hint-common = Which factors are in both lists? Take the greatest.
g6-greatest-common-factor-hint-both = List the factors of both numbers.
g6-greatest-common-factor-step-list = Factors of { $n }: { $factors }.
g6-greatest-common-factor-step-common = Both have { $common }. The greatest is { $right }.

g6-least-common-multiple-ask = What is the least common multiple of { $a } and { $b }?
g6-least-common-multiple-hint-list = Multiples of { $n }: { $multiples }, and so on.
g6-least-common-multiple-hint-first = Stop at the first one that { $n } divides too.
g6-least-common-multiple-step-list = Multiples of { $n }: { $multiples }.
g6-least-common-multiple-step-first = The first one in both lists is { $right }.
g6-least-common-multiple-ask-1 = Two lights flash now. One flashes every { $a } seconds. The other flashes every { $b } seconds. After how many seconds do both flash again?
g6-least-common-multiple-ask-2 = Pencils come in packs of { $a }. Pens come in packs of { $b }. You want as many pens as pencils. What is the least number of each?
g6-least-common-multiple-ask-3 = One bus leaves every { $a } minutes. The other leaves every { $b } minutes. Both leave now. In how many minutes do both leave again?
g6-least-common-multiple-ask-4 = { $name } runs a lap in { $a } minutes. A friend takes { $b } minutes. They start together. After how many minutes are they at the start together again?
g6-least-common-multiple-ask-5 = { $name } waters one plant every { $a } days and another every { $b } days. Today it is both. In how many days is it both again?

g6-common-factor-sum-ask = Write the sum as a product. Put the greatest common factor in front of the parentheses.
g6-common-factor-sum-ask-1 = { $name } takes the greatest common factor out of this sum. Write the product.
g6-common-factor-sum-ask-2 = { $name } makes the greatest number of equal gift bags from these two amounts. Write it as a product, with the number of bags in front of the parentheses.
g6-common-factor-sum-hint-factor = Find the greatest number that divides both { $a } and { $b }.
g6-common-factor-sum-hint-form = It looks like this: { $form }.
g6-common-factor-sum-step-factor = The greatest common factor is { $g }.

g6-signed-meaning-ask-1 = It is { $n } degrees below zero. Write the temperature as a number.
g6-signed-meaning-ask-2 = It is { $n } degrees above zero. Write the temperature as a number.
g6-signed-meaning-ask-3 = A diver is { $n } feet below sea level. Write the height as a number.
g6-signed-meaning-ask-4 = A hut is { $n } feet above sea level. Write the height as a number.
g6-signed-meaning-ask-5 = { $name } owes { $n } dollars. Write the balance as a number.
g6-signed-meaning-ask-6 = { $name } has { $n } dollars and owes nothing. Write the balance as a number.
g6-signed-meaning-ask-7 = An elevator is { $n ->
    [one] { $n } floor
   *[other] { $n } floors
} below the ground floor. Write its floor as a number.
g6-signed-meaning-ask-8 = An elevator is { $n } floors above the ground floor. Write its floor as a number.
g6-signed-meaning-ask-which = Which of these does { $value } stand for? Choose all.
g6-signed-meaning-zero-1 = A thermometer shows { $value } degrees. What does 0 mean there?
g6-signed-meaning-zero-2 = A place is at a height of { $value } feet. What does 0 mean there?
g6-signed-meaning-zero-3 = A balance is { $value } dollars. What does 0 mean there?
g6-signed-meaning-zero-4 = An elevator is at floor { $value }. What does 0 mean there?
g6-signed-meaning-zero-1-right = The point between degrees below zero and degrees above zero
g6-signed-meaning-zero-2-right = Sea level
g6-signed-meaning-zero-3-right = Owing nothing and having nothing
g6-signed-meaning-zero-4-right = The ground floor
g6-signed-meaning-zero-least = The least that is possible
g6-signed-meaning-hint-zero = Zero is where the two sides meet.
g6-signed-meaning-hint-line = Which side of zero is it on?
g6-signed-meaning-hint-which = Does the amount get less, or lie below? Then the number is negative.
g6-signed-meaning-step-below = It is on the side below zero, so the number is negative.
g6-signed-meaning-step-above = It is on the side above zero, so the number is positive.
g6-signed-meaning-step-number = The number is { $value }.
g6-signed-meaning-step-less = What is owed, lost, spent or below zero is negative.
g6-signed-meaning-step-more = What is saved, won, earned or above zero is positive.
g6-signed-meaning-means-owes = Owing { $n } dollars
g6-signed-meaning-means-below-zero = { $n } degrees below zero
g6-signed-meaning-means-below-sea = { $n } feet below sea level
g6-signed-meaning-means-spends = Spending { $n } dollars
g6-signed-meaning-means-colder = A change to { $n } degrees colder
g6-signed-meaning-means-loses = Losing { $n } points in a game
g6-signed-meaning-means-saves = Saving { $n } dollars
g6-signed-meaning-means-above-zero = { $n } degrees above zero
g6-signed-meaning-means-above-sea = { $n } feet above sea level
g6-signed-meaning-means-earns = Earning { $n } dollars
g6-signed-meaning-means-warmer = A change to { $n } degrees warmer
g6-signed-meaning-means-wins = Winning { $n } points in a game

g6-opposites-ask = What is the opposite of { $value }?
g6-opposites-ask-twice = What is the opposite of the opposite of { $value }?
g6-opposites-hint-side = Opposites are equally far from 0, on the two sides.
g6-opposites-hint-line = Look at both sides of 0.
g6-opposites-line = A number line with 0 in the middle and { $size } away from it on both sides.
g6-opposites-step-once = Go the same distance to the other side of 0.
g6-opposites-step-twice = Go to the other side of 0. Then come back.
g6-opposites-step-answer = That is { $right }.
g6-opposites-story-1 = { $name } reads { $value } on a thermometer. The next day it shows the opposite. What does it show then?
g6-opposites-story-2 = { $name } is at { $value } on a number line. The same distance on the other side of 0 is a tree. At what number is it?
g6-opposites-story-3 = { $name } folds a number line at 0. Which number comes to lie on { $value }?

g6-quadrants-ask-quadrant = In which quadrant is { $point }?
g6-quadrants-ask-x = Reflect { $point } across the x-axis. Where is the mirror point?
g6-quadrants-ask-y = Reflect { $point } across the y-axis. Where is the mirror point?
g6-quadrants-ask-both = Reflect { $point } across the x-axis. Then reflect it across the y-axis. Where does it end?
g6-quadrants-hint-signs = Look at the two signs. The first says left or right. The second says up or down.
g6-quadrants-hint-order = Quadrants go round from upper right to upper left, lower left, lower right.
g6-quadrants-hint-mirror = The mirror point is the same distance from the axis, on the other side.
g6-quadrants-grid = A coordinate grid from −10 to 10 both ways.
g6-quadrants-grid-point = A coordinate grid with the point P at { $x } across and { $y } up.
g6-quadrants-step-right = The first number is positive: go right.
g6-quadrants-step-left = The first number is negative: go left.
g6-quadrants-step-up = The second number is positive: go up.
g6-quadrants-step-down = The second number is negative: go down.
g6-quadrants-step-x = Across the x-axis, only the second number changes its sign.
g6-quadrants-step-y = Across the y-axis, only the first number changes its sign.
g6-quadrants-step-both = Both numbers change their signs.

g6-rational-on-line-ask = Put a point at { $value }.
g6-rational-on-line-ask-1 = The line shows degrees. { $name } reads { $value } on a thermometer. Put a point there.
g6-rational-on-line-ask-2 = The line shows yards. 0 is the water. { $name } is at { $value }. Put a point there.
g6-rational-on-line-ask-3 = The line shows points in a game. { $name } has { $value }. Put a point there.
g6-rational-on-line-hint-left = Negative numbers are to the left of 0.
g6-rational-on-line-hint-parts = { $parts ->
    [one] Each mark is one whole.
   *[other] Each whole is in { $parts } equal parts.
}
g6-rational-on-line-step-wholes = { $n ->
    [one] Go one mark to the left of 0.
   *[other] Go { $n } marks to the left of 0.
}
g6-rational-on-line-step-between = It is between { $low } and { $high }.
g6-rational-on-line-step-parts = { $n ->
    [one] From { $high } go one part to the left.
   *[other] From { $high } go { $n } parts to the left.
}

g6-compare-rational-hint-left = On the line, the number more to the left is less.
g6-compare-rational-hint-line = Think where each one is on the line.
g6-compare-rational-hint-form = Write both in the same form.
g6-compare-rational-hint-divide = The fraction is a division: { $work }. Keep the sign.
g6-compare-rational-step-left = { $less } is more to the left, so it is less.

g6-order-in-context-ask-1 = Put the temperatures in order.
g6-order-in-context-ask-2 = Put the heights in order. Sea level is 0.
g6-order-in-context-ask-3 = Put the balances in order.
g6-order-in-context-hint-line = Think of a number line. The least is the farthest left.
g6-order-in-context-hint-negative = Below zero, a bigger size means a lower number.
g6-order-in-context-step-order = From the least: { $order }.
g6-order-in-context-ask-two-1 = It is { $a } degrees in one town and { $b } degrees in another. Which sign makes it true?
g6-order-in-context-ask-two-2 = One place is at { $a } meters and another at { $b } meters. Sea level is 0. Which sign makes it true?
g6-order-in-context-ask-two-3 = One account has { $a } dollars and another has { $b } dollars. A debt is below 0. Which sign makes it true?
g6-order-in-context-ask-means-1 = What does that mean?
g6-order-in-context-ask-means-2 = What does it tell?
g6-order-in-context-ask-means-3 = What does it say?
g6-order-in-context-means-1-first = The first town is warmer.
g6-order-in-context-means-1-second = The second town is warmer.
g6-order-in-context-means-2-first = The first place is higher.
g6-order-in-context-means-2-second = The second place is higher.
g6-order-in-context-means-3-first = The first account has more.
g6-order-in-context-means-3-second = The second account has more.

g6-absolute-value-ask = Find the absolute value.
g6-absolute-value-ask-distance = How far is { $value } from 0 on the number line?
g6-absolute-value-hint-distance = Absolute value is the distance from 0. It is never negative.
g6-absolute-value-hint-line = Count from 0.
g6-absolute-value-story-1 = { $name } has a map of heights in meters. Sea level is 0. How far from sea level is { $value }?
g6-absolute-value-story-2 = { $name } reads { $value } on a thermometer. How far from 0 is that?
g6-absolute-value-story-3 = { $name } is at { $value } on a number line. How far is it to 0?

g6-absolute-vs-order-ask-1-size = One balance is { $one } dollars. Another is { $two } dollars. Is the second debt more or less than the first debt?
g6-absolute-vs-order-ask-1-number = One balance is { $one } dollars. Another is { $two } dollars. Is the second balance more or less than the first balance?
g6-absolute-vs-order-ask-2-size = One diver is at { $one } feet. Another is at { $two } feet. Is the second depth more or less than the first depth?
g6-absolute-vs-order-ask-2-number = One diver is at { $one } feet. Another is at { $two } feet. Is the second height more or less than the first height?
g6-absolute-vs-order-hint-zero = A debt or a depth is a size: how far it is from 0.
g6-absolute-vs-order-hint-left = A balance or a height is a number: it may be left or right of another on the line.
g6-absolute-vs-order-step-size = The sizes are { $one } and { $two }.
g6-absolute-vs-order-step-lower = { $two } is lower than { $one }, but its size is bigger.
g6-absolute-vs-order-step-higher = { $two } is higher than { $one }, but its size is smaller.
g6-absolute-vs-order-step-same = Both are at the same place, so they are the same.

g6-coordinate-distance-ask = How far is it from { $one } to { $two }?
g6-coordinate-distance-hint-same = One coordinate is the same. Look at the other one.
g6-coordinate-distance-hint-zero = Find how far each point is from 0 on that line.
g6-coordinate-distance-grid = A coordinate grid with A at { $x1 } across and { $y1 } up, and B at { $x2 } across and { $y2 } up.
g6-coordinate-distance-step-from-zero = From 0 it is { $one } to the first point and { $two } to the second.
