fraction-hint-multiply = Multiply top and bottom by the same number.
fraction-hint-divide = Divide top and bottom by the same number.
fraction-hint-same = Keep the same size. Only the parts change.
fraction-hint-bottoms = Look at the bottom numbers: { $work }.
fraction-step-multiply = The bottom is multiplied by { $factor }. Multiply the top by { $factor } too.
fraction-step-divide = The bottom is divided by { $factor }. Divide the top by { $factor } too.
fraction-step-simplest = Write it in the simplest way.

mixed-hint-apart = Work with the whole numbers and the fractions apart.
mixed-hint-over = If the fractions make one whole or more, trade for a whole.
mixed-hint-trade = If the first fraction is too small, open one whole: { $one }.
mixed-step-wholes = Wholes: { $work }.
mixed-step-parts = Fractions: { $work }.
mixed-step-trade = That is more than one whole: { $work }.
mixed-step-open = The first fraction is too small. Open one whole. That leaves { $whole } and { $work }.

unlike-hint-same = You can only add or take away parts of the same size.
unlike-hint-common = Cut both into { $bottom } parts.
unlike-step-common = Use { $bottom } as the bottom number for both.
unlike-step-add = Add the parts: { $work }.
unlike-step-subtract = Take away the parts: { $work }.

scaling-less = Less
scaling-equal = Equal
scaling-more = More

g3-fraction-name-ask = What fraction is shaded?
g3-fraction-name-ask-wholes = One bar is one whole. What fraction is shaded in all?
g3-fraction-name-ask-shade = Shade { $fraction } of the whole.
g3-fraction-name-hint-bottom = The bottom number counts the equal parts of one whole.
g3-fraction-name-hint-top = The top number counts the shaded parts.
g3-fraction-name-step-bottom = One whole has { $parts } equal parts.
g3-fraction-name-step-top = { $shaded ->
    [one] { $shaded } part is shaded.
   *[other] { $shaded } parts are shaded.
}
g3-fraction-name-step-shade = { $shaded ->
    [one] Shade { $shaded } part.
   *[other] Shade { $shaded } parts.
}
g3-fraction-name-step-name = So the fraction is { $fraction }.

g3-fraction-unit-on-line-ask-first = The line from 0 to 1 is cut into { $parts } equal parts. What number is at the point?
g3-fraction-unit-on-line-ask-parts = The first mark after 0 is { $fraction }. How many equal parts are there from 0 to 1?
g3-fraction-unit-on-line-ask-mark = Put a point at { $fraction }.
g3-fraction-unit-on-line-hint-equal = The parts from 0 to 1 are all the same size.
g3-fraction-unit-on-line-hint-count = Count the spaces, not the marks.
g3-fraction-unit-on-line-step-parts = There are { $parts } equal spaces from 0 to 1.
g3-fraction-unit-on-line-step-first = One space from 0 is { $fraction }.

g3-fraction-on-line-ask-name = What fraction is at the point?
g3-fraction-on-line-ask-mark = Put a point at { $fraction }.
g3-fraction-on-line-ask-steps = Start at 0. Take { $steps } steps of { $step }. What number are you at?
g3-fraction-on-line-line = A number line from 0 to { $to }. Each whole is in { $parts } equal parts. A point is { $steps } parts after 0.
g3-fraction-on-line-hint-part = Each whole is in { $parts } equal parts.
g3-fraction-on-line-hint-jump = Start at 0 and count the jumps.
g3-fraction-on-line-step-part = One jump is { $step }.
g3-fraction-on-line-step-jumps = { $steps } jumps from 0 make { $fraction }.

g3-fraction-same-size-ask = Which fraction is the same size as { $fraction }?
g3-fraction-same-size-hint-length = Look for the same length.
g3-fraction-same-size-hint-cut = Cut a bar of the same length into { $parts } parts.
g3-fraction-same-size-step-cut = Cut the second bar into { $parts } parts and shade the same length.
g3-fraction-same-size-step-same = { $one } and { $two } are the same size.

g3-fraction-whole-numbers-hint-one = One whole is { $one }.
g3-fraction-whole-numbers-hint-many = Think of { $whole } wholes.
g3-fraction-whole-numbers-step-one = { $parts ->
    [one] Each whole has { $parts } part.
   *[other] Each whole has { $parts } parts.
}
g3-fraction-whole-numbers-step-many = { $whole } wholes have { $parts } parts.

g3-fraction-compare-hint-same-top = Both take the same number of parts. Which parts are larger?
g3-fraction-compare-hint-same-bottom = The parts are the same size. Which has more parts?
g3-fraction-compare-hint-figure = Compare the bars.
g3-fraction-compare-step-same-top = A larger bottom number means smaller parts.
g3-fraction-compare-step-same-bottom = More parts of the same size make more.

g4-fraction-compare-hint-half = Is each one more or less than a half?
g4-fraction-compare-hint-common = Write both with the bottom number { $bottom }.
g4-fraction-compare-step-common = Use { $bottom } as the bottom number for both.
g4-fraction-compare-step-left = Left: { $work }.
g4-fraction-compare-step-right = Right: { $work }.

g4-fraction-join-parts-hint-same = All the parts are of the same size: { $part }.
g4-fraction-join-parts-hint-count-on = { $parts ->
    [one] Count on { $parts } more part.
   *[other] Count on { $parts } more parts.
}
g4-fraction-join-parts-hint-take = { $parts ->
    [one] Take away { $parts } part.
   *[other] Take away { $parts } parts.
}
g4-fraction-join-parts-step-one = One whole is { $one }.
g4-fraction-join-parts-step-tops = Only the top numbers change: { $work }.

g4-fraction-decompose-hint-parts = Count parts of the size { $part }.
g4-fraction-decompose-hint-whole = Here is the whole amount.
g4-fraction-decompose-step-total = There are { $total } parts of { $part } in all.
g4-fraction-decompose-step-known = { $known ->
    [one] You have { $known } of them. Find the rest.
   *[other] You have { $known } of them. Find the rest.
}

g4-fraction-copies-hint-copies = A fraction is made of copies of one part.
g4-fraction-copies-hint-figure = Count the shaded parts.
g4-fraction-copies-step-part = One whole has { $parts } equal parts. One part is one copy.
g4-fraction-copies-step-count = There are { $copies } copies.

g4-fraction-times-whole-hint-groups = Think of { $n } groups of { $fraction }.
g4-fraction-times-whole-hint-figure = Take this amount { $n } times.
g4-fraction-times-whole-step-tops = Multiply the number of parts: { $work }.
g4-fraction-times-whole-step-bottom = The parts stay the same size. The bottom number stays { $bottom }.

g4-fraction-add-like-ask-1 = { $name } ate { $one } of a pie. Later, { $name } ate { $two } of the same pie. How much of the pie is that in all?
g4-fraction-add-like-ask-2 = { $name } walked { $one } of a mile. Then { $name } walked { $two } of a mile more. How many miles is that in all?
g4-fraction-add-like-ask-3 = { $name } filled { $one } of a jar with rice. Then { $name } put in { $two } of a jar more. How many jars of rice is that?
g4-fraction-add-like-ask-4 = { $name } had { $one } of a yard of ribbon. { $name } used { $two } of a yard. How many yards are left?
g4-fraction-add-like-ask-5 = A tank is { $one } full. { $name } lets out { $two } of the tank. How much of the tank is still full?
g4-fraction-add-like-ask-6 = { $name } has { $one } of a pan of corn bread. Friends eat { $two } of the pan. How much of the pan is left?
g4-fraction-add-like-hint-join = Put the two amounts together.
g4-fraction-add-like-hint-take = Take the second amount away from the first.
g4-fraction-add-like-hint-parts = Both count parts of the size { $part }.

g4-fraction-times-stories-ask-1 = { $name } fills { $n } cups. Each cup holds { $each } of a pint. How many pints is that?
g4-fraction-times-stories-ask-2 = { $name } runs { $each } of a mile each day. How many miles is that in { $n } days?
g4-fraction-times-stories-ask-3 = Each loaf needs { $each } of a pound of flour. How many pounds does { $name } need for { $n } loaves?
g4-fraction-times-stories-ask-4 = { $name } paints { $n } boards. Each board takes { $each } of an hour. How many hours is that?
g4-fraction-times-stories-hint-each = Each one takes { $each }.
g4-fraction-times-stories-hint-times = Multiply the fraction by the number of times.
g4-fraction-times-stories-step-between = The answer is between { $low } and { $high }.

g5-fraction-stories-ask-1 = { $name } walked { $one } of a mile. Then { $name } ran { $two } of a mile. How many miles is that in all?
g5-fraction-stories-ask-2 = { $name } used { $one } of a cup of milk. { $other } used { $two } of a cup. How many cups did they use in all?
g5-fraction-stories-ask-3 = { $name } read for { $one } of an hour. Later { $name } read for { $two } of an hour. How many hours is that in all?
g5-fraction-stories-ask-4 = { $name } has { $one } of a yard of rope and cuts off { $two } of a yard. How many yards are left?
g5-fraction-stories-ask-5 = { $name } grew a plant { $one } of a foot tall. The plant of { $other } is { $two } of a foot tall. How many feet taller is the first plant?
g5-fraction-stories-ask-6 = A bottle is { $one } full. { $name } drinks { $two } of the bottle. How much of the bottle is left?
g5-fraction-stories-hint-join = Put the two amounts together.
g5-fraction-stories-hint-take = Take the second amount away from the first.

g5-fraction-as-division-ask-1 = { $amount ->
    [one] { $amount } loaf is shared by { $shares } people. All get the same. How many loaves does each get?
   *[other] { $amount } loaves are shared by { $shares } people. All get the same. How many loaves does each get?
}
g5-fraction-as-division-ask-2 = { $amount ->
    [one] { $amount } liter of juice fills { $shares } glasses. All get the same. How many liters are in each glass?
   *[other] { $amount } liters of juice fill { $shares } glasses. All get the same. How many liters are in each glass?
}
g5-fraction-as-division-ask-3 = { $amount ->
    [one] { $amount } yard of string is cut into { $shares } equal pieces. How many yards long is each piece?
   *[other] { $amount } yards of string are cut into { $shares } equal pieces. How many yards long is each piece?
}
g5-fraction-as-division-ask-4 = { $amount ->
    [one] { $amount } pound of clay is split into { $shares } equal lumps. How many pounds is each lump?
   *[other] { $amount } pounds of clay are split into { $shares } equal lumps. How many pounds is each lump?
}
g5-fraction-as-division-hint-divide = Sharing is dividing. Write it as a fraction.
g5-fraction-as-division-hint-one = Share one whole first. Each gets { $part } of it.
g5-fraction-as-division-step-each = { $amount ->
    [one] Each gets { $part } of { $amount } whole.
   *[other] Each gets { $part } of each of the { $amount } wholes.
}

g5-fraction-multiply-hint-parts = { $take ->
    [one] Cut the amount into { $parts } equal parts. Take { $take } of them.
   *[other] Cut the amount into { $parts } equal parts. Take { $take } of them.
}
g5-fraction-multiply-hint-bar = The bar stands for the whole amount.
g5-fraction-multiply-hint-square = Count the small squares that are shaded both ways.
g5-fraction-multiply-step-tops = Multiply the tops: { $work }.
g5-fraction-multiply-step-bottoms = Multiply the bottoms: { $work }.

g5-fraction-area-ask = A rectangle is { $width } by { $height } { $unit }. What is its area?
g5-fraction-area-rectangle = A rectangle with sides { $width } and { $height }.
g5-fraction-area-hint-multiply = Area is side times side.
g5-fraction-area-hint-product = Work out { $work }.
g5-fraction-area-step-single = Write the mixed number as one fraction: { $work }.

g5-scaling-compare-ask = Do not work it out. Is { $work } less than, equal to, or more than { $number }?
g5-scaling-compare-hint-look = Look at the other factor: { $factor }.
g5-scaling-compare-hint-one = Is it less than 1, equal to 1, or more than 1?
g5-scaling-compare-step-less = { $factor } is less than 1.
g5-scaling-compare-step-equal = { $factor } is equal to 1.
g5-scaling-compare-step-more = { $factor } is more than 1.
g5-scaling-compare-step-shrinks = So you get only a part of { $number }. The product is less.
g5-scaling-compare-step-stays = So you get all of { $number }. The product is equal.
g5-scaling-compare-step-grows = So you get { $number } and some more. The product is more.

g5-scaling-reason-ask = Think of { $work }. Which is true?
g5-scaling-reason-more-above = It is more than { $number }, because { $factor } is more than 1.
g5-scaling-reason-less-below = It is less than { $number }, because { $factor } is less than 1.
g5-scaling-reason-less-above = It is less than { $number }, because { $factor } is more than 1.
g5-scaling-reason-more-below = It is more than { $number }, because { $factor } is less than 1.
g5-scaling-reason-more-always = It is more than { $number }, because times always makes a number bigger.
g5-scaling-reason-less-always = It is less than { $number }, because a fraction always makes a number smaller.
g5-scaling-reason-hint-one = Is { $factor } more or less than 1?
g5-scaling-reason-hint-bar = Here is the fraction. One bar is 1.
g5-scaling-reason-step-above = { $factor } is more than 1.
g5-scaling-reason-step-below = { $factor } is less than 1.
g5-scaling-reason-step-grows = You take { $number } once and some more of it. So the product is more.
g5-scaling-reason-step-shrinks = You take only a part of { $number }. So the product is less.

g5-fraction-multiply-stories-ask-1 = { $name } has { $two } of a pound of nuts and eats { $one } of it. How many pounds does { $name } eat?
g5-fraction-multiply-stories-ask-2 = A path is { $two } miles long. { $name } has walked { $one } of it. How many miles is that?
g5-fraction-multiply-stories-ask-3 = One bag holds { $two } kg of seeds. { $name } buys { $one } bags. How many kg is that?
g5-fraction-multiply-stories-ask-4 = One batch needs { $two } cups of oats. { $name } makes { $one } batches. How many cups is that?
g5-fraction-multiply-stories-hint-of = Here "of" means times.
g5-fraction-multiply-stories-hint-work = Work out { $work }.

g5-unit-fraction-divided-hint-cut = The small part gets cut into even smaller parts.
g5-unit-fraction-divided-hint-share = Share { $part } among { $n }.
g5-unit-fraction-divided-hint-how-many = How many { $small } fit in { $large }?
g5-unit-fraction-divided-step-each = Cut each of the { $parts } parts of the whole into { $n }.
g5-unit-fraction-divided-step-times = Now count the parts in the whole: { $work }.

g5-divide-by-unit-fraction-hint-how-many = Ask: how many { $part } fit?
g5-divide-by-unit-fraction-hint-one = One whole holds { $parts } parts.
g5-divide-by-unit-fraction-step-one = One whole holds { $parts } parts of { $part }.
g5-divide-by-unit-fraction-step-all = For all the wholes: { $work }.

g5-unit-fraction-stories-ask-1 = { $name } has { $n } cups of rice. One scoop is { $part } of a cup. How many scoops is that?
g5-unit-fraction-stories-ask-2 = { $name } has { $n } yards of ribbon. Each bow takes { $part } of a yard. How many bows can { $name } make?
g5-unit-fraction-stories-ask-3 = A walk is { $n } miles long. There is a sign every { $part } of a mile, and one at the end. How many signs are there after the start?
g5-unit-fraction-stories-ask-4 = { $name } has { $part } of a pan of corn bread. { $n } friends share it. All get the same. What part of a pan does each get?
g5-unit-fraction-stories-ask-5 = { $n } plants share { $part } of a gallon of water. All get the same. How many gallons does each get?
g5-unit-fraction-stories-ask-6 = { $name } cuts { $part } of a yard of rope into { $n } equal pieces. How many yards long is each piece?
g5-unit-fraction-stories-hint-share = Divide the part by the number of shares.
g5-unit-fraction-stories-hint-cut = Cut the shaded part into { $n }.
g5-unit-fraction-stories-hint-fit = Ask how many parts fit.
g5-unit-fraction-stories-hint-one = How many { $part } fit in one whole?
g5-unit-fraction-stories-step-one = One whole holds { $parts } parts.
