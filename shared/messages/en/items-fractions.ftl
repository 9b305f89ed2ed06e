fraction-hint-multiply = Multiply the numerator and the denominator by the same number.
fraction-hint-divide = Divide the numerator and the denominator by the same number.
fraction-hint-same = The size stays the same. Only the parts change.
fraction-ask-which-equal = Which of these fractions are equal to { $fraction }? Choose all.
fraction-shown = { $fraction }
fraction-hint-shaded = Draw such a bar for each fraction. Which are shaded to the same length?
fraction-step-bars = Both bars are shaded to the same length. So the fractions are equal.
fraction-hint-bottoms = Look at the denominators: { $work }.
fraction-step-multiply = The denominator is multiplied by { $factor }. Multiply the numerator by { $factor } too.
fraction-step-divide = The denominator is divided by { $factor }. Divide the numerator by { $factor } too.
fraction-step-simplest = Write it in the simplest way.

mixed-hint-apart = Work with the whole numbers and the fractions apart.
mixed-hint-over = If the fractions make one whole or more, trade for a whole.
mixed-hint-trade = If the first fraction is too small, trade one whole for parts: { $one }.
mixed-step-wholes = Wholes: { $work }.
mixed-step-parts = Fractions: { $work }.
mixed-step-trade = That is more than one whole: { $work }.
mixed-step-open = The first fraction is too small. Trade one whole for parts. That leaves { $whole } and { $work }.

unlike-hint-same = You can only add or take away parts of the same size.
unlike-hint-common = Cut both into { $bottom } parts.
unlike-step-common = Use { $bottom } as the denominator for both.
unlike-step-add = Add the parts: { $work }.
unlike-step-subtract = Take away the parts: { $work }.

scaling-less = Less
scaling-equal = Equal
scaling-more = More

g3-fraction-name-ask = What fraction is shaded?
g3-fraction-name-ask-wholes = Each bar is one whole. What fraction is shaded in all?
g3-fraction-name-ask-shade = Shade { $fraction } of the whole.
g3-fraction-name-hint-bottom = The denominator counts the equal parts of one whole.
g3-fraction-name-hint-top = The numerator counts the shaded parts.
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
g3-fraction-name-story-1-bar = { $name } painted the shaded part of a wall. What fraction of the wall is that?
g3-fraction-name-story-2-bar = The bar is a garden bed. { $name } planted the shaded part. What fraction is planted?
g3-fraction-name-story-3-bar = The bar is a book. { $name } has read the shaded part. What fraction is that?
g3-fraction-name-story-1-round = { $name } ate the shaded part of a pie. What fraction of the pie is that?
g3-fraction-name-story-2-round = The circle is a park. { $name } plants trees on the shaded part. What fraction of the park is that?
g3-fraction-name-story-3-round = { $name } colored the shaded part of a wheel. What fraction of the wheel is that?
g3-fraction-name-ask-wholes-1 = Each bar is one wall. { $name } painted the shaded parts. What fraction of a wall is that in all?
g3-fraction-name-ask-wholes-2 = Each bar is one page. { $name } wrote on the shaded parts. What fraction of a page is that in all?
g3-fraction-name-ask-wholes-3 = Each bar is one mile. { $name } walked the shaded parts. What fraction of a mile is that in all?

g3-fraction-unit-on-line-ask-first = What fraction is at the point?
g3-fraction-unit-on-line-ask-mark = Put a point at { $fraction }.
g3-fraction-unit-on-line-hint-equal = The parts from 0 to 1 are all the same size.
g3-fraction-unit-on-line-hint-count = Count the spaces, not the marks.
g3-fraction-unit-on-line-step-parts = There are { $parts } equal spaces from 0 to 1.
g3-fraction-unit-on-line-step-first = One space from 0 is { $fraction }.
g3-fraction-unit-on-line-step-share = Share the { $marks } spaces into { $parts } equal groups. Each group has { $each }.
g3-fraction-unit-on-line-line = A number line from 0 to 1 in { $parts } equal parts. { $steps ->
    [one] A point is { $steps } part after 0.
   *[other] A point is { $steps } parts after 0.
}
g3-fraction-unit-on-line-ask-first-1 = The line is a path of one mile. { $name } has walked to the point. What fraction of the path is that?
g3-fraction-unit-on-line-ask-first-2 = The line is a rope. { $name } cuts it at the point. What fraction of the rope is left of the cut?
g3-fraction-unit-on-line-ask-first-3 = The line is one hour. { $name } stops at the point. What fraction of the hour is that?
g3-fraction-unit-on-line-ask-mark-1 = The line is a path of one mile. { $name } is at { $fraction } of it. Put a point there.
g3-fraction-unit-on-line-ask-mark-2 = The line is a rope. { $name } cuts { $fraction } of it from the left end. Put a point there.
g3-fraction-unit-on-line-ask-mark-3 = The line is one hour. { $name } stops after { $fraction } of it. Put a point there.

g3-fraction-on-line-ask-name = What fraction is at the point?
g3-fraction-on-line-ask-mark = Put a point at { $fraction }.
g3-fraction-on-line-ask-steps = Start at 0. Take { $steps } steps of { $step }. What number are you at?
g3-fraction-on-line-line = A number line from 0 to { $to }. Each whole is in { $parts } equal parts. A point is { $steps ->
    [one] { $steps } part
   *[other] { $steps } parts
} after 0.
g3-fraction-on-line-hint-part = Each whole is in { $parts } equal parts.
g3-fraction-on-line-hint-jump = Start at 0 and count the jumps.
g3-fraction-on-line-step-part = One jump is { $step }.
g3-fraction-on-line-step-jumps = { $steps } jumps from 0 make { $fraction }.
g3-fraction-on-line-ask-name-1 = The line shows miles. { $name } is at the point. What fraction is that?
g3-fraction-on-line-ask-name-2 = The line shows hours. { $name } stops at the point. What fraction is that?
g3-fraction-on-line-ask-name-3 = The line shows yards of rope. { $name } cuts at the point. What fraction is that?
g3-fraction-on-line-ask-mark-1 = The line shows miles. { $name } is at { $fraction }. Put a point there.
g3-fraction-on-line-ask-mark-2 = The line shows hours. { $name } stops at { $fraction }. Put a point there.
g3-fraction-on-line-ask-mark-3 = The line shows yards of rope. { $name } cuts at { $fraction }. Put a point there.

g3-fraction-same-size-ask = Which fraction is the same size as { $fraction }?
g3-fraction-same-size-ask-1 = { $name } eats { $fraction } of a bar. Which fraction of a bar of that size is the same amount?
g3-fraction-same-size-ask-2 = { $name } walks { $fraction } of a path. Which fraction of the path is the same distance?
g3-fraction-same-size-hint-length = Look for the same length.
g3-fraction-same-size-hint-cut = Cut a bar of the same length into { $parts } parts.
g3-fraction-same-size-step-cut = Cut the second bar into { $parts } parts and shade the same length.
g3-fraction-same-size-step-same = { $one } and { $two } are the same size.

g3-fraction-whole-numbers-hint-one = One whole is { $one }.
g3-fraction-whole-numbers-hint-many = Think of { $whole } wholes.
g3-fraction-whole-numbers-hint-how-many = You have { $whole } parts. How many wholes do they make?
g3-fraction-whole-numbers-step-one = { $parts ->
    [one] Each whole has { $parts } part.
   *[other] Each whole has { $parts } parts.
}
g3-fraction-whole-numbers-step-many = { $whole } wholes have { $parts } parts.
g3-fraction-whole-numbers-story-1 = { $name } cuts { $whole } pies. Each piece is { $part } of a pie. How many pieces are there?
g3-fraction-whole-numbers-story-2 = { $name } cuts up { $whole } sheets of paper. Each part is { $part } of a sheet. How many parts are there?
g3-fraction-whole-numbers-story-3 = { $name } cuts { $whole } yards of rope. Each piece is { $part } of a yard. How many pieces are there?
g3-fraction-whole-numbers-story-1-back = { $name } puts pieces of pie together. They make { $fraction } of a pie. How many whole pies is that?
g3-fraction-whole-numbers-story-2-back = { $name } walks { $fraction } of a mile in short laps. How many miles is that?

g3-fraction-compare-hint-same-top = Both take the same number of parts. Which parts are larger?
g3-fraction-compare-hint-same-bottom = The parts are the same size. Which has more parts?
g3-fraction-compare-hint-figure = Compare the bars.
g3-fraction-compare-step-same-top = A larger denominator means smaller parts.
g3-fraction-compare-step-same-bottom = More parts of the same size make more.
g3-fraction-compare-step-count = Both sides are { $parts } parts of the same size.
g3-fraction-equivalent-hint-cut = Cut each part of the bar into equal smaller parts.
g3-fraction-equivalent-hint-join = Join small parts of the bar into equal larger parts.
g3-fraction-equivalent-step-cut = Cut each part into { $factor }. There are now { $factor } parts for each one before.
g3-fraction-equivalent-step-join = Join { $factor } parts into each larger part. The length stays the same.
g3-fraction-equivalent-step-bars = Both bars are shaded to the same length.
g3-fraction-equivalent-story-1 = { $name } eats { $fraction } of a bar. A bar of the same size has { $given } equal parts. How many of these parts are the same amount?
g3-fraction-equivalent-story-2 = { $name } shades { $fraction } of a strip. Its back has { $given } equal parts. How many of these parts are the same amount?
g3-fraction-equivalent-story-3 = { $name } walks { $fraction } of a path. The path has { $given } equal parts. How many parts is that?

g4-fraction-compare-hint-half = Is each one more or less than a half?
g4-fraction-compare-hint-common = Write both with the denominator { $bottom }.
g4-fraction-compare-step-common = Use { $bottom } as the denominator for both.
g4-fraction-compare-step-left = Left: { $work }.
g4-fraction-compare-step-right = Right: { $work }.
g4-fraction-equivalent-ask-why = Why are the fractions equal?
g4-fraction-equivalent-why-times = There are { $k } times as many parts, and { $k } times as many are taken
g4-fraction-equivalent-why-added = The same number, { $n }, is added to both numbers
g4-fraction-equivalent-why-parts = Only the number of parts changes, and it is { $n } now
g4-fraction-equivalent-hint-cut = Cut each part again. How many parts are there now?
g4-fraction-equivalent-step-same = { $one } and { $two } are the same size.
g4-fraction-compare-ask-picture = Each bar is one whole. Which picture shows this?
g4-fraction-compare-picture = Picture { $n }
g4-fraction-compare-hint-parts = The denominator tells how many equal parts a bar has.
g4-fraction-compare-hint-shaded = The numerator tells how many parts are shaded.
g4-fraction-compare-step-picture = Picture { $n } shows both fractions.

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
g4-fraction-join-parts-step-tops = Only the numerators change: { $work }.

g4-fraction-decompose-hint-parts = Count parts of the size { $part }.
g4-fraction-decompose-hint-whole = Here is the whole amount.
g4-fraction-decompose-step-total = There are { $total } parts of { $part } in all.
g4-fraction-decompose-step-known = { $known ->
    [one] You have { $known } of them. Find the rest.
   *[other] You have { $known } of them. Find the rest.
}
g4-fraction-decompose-story-1 = { $name } has { $total } of a pie and eats { $known } of the pie. Each piece is { $part } of the pie. How many pieces are left?
g4-fraction-decompose-story-2 = { $name } walks { $total } of a mile in two parts. The first part is { $known } of a mile. How many steps of { $part } of a mile are in the second part?
g4-fraction-decompose-story-3 = { $name } fills { $total } of a jar with red and blue sand. { $known } of the jar is red. How many layers of { $part } of the jar are blue?

g4-fraction-copies-hint-copies = A fraction is made of copies of one part.
g4-fraction-copies-hint-figure = Count the shaded parts.
g4-fraction-copies-hint-whole = How many copies of { $unit } make one whole?
g4-fraction-copies-step-part = One whole has { $parts } equal parts. One part is one copy.
g4-fraction-copies-step-count = There are { $copies } copies.
g4-fraction-copies-step-whole = { $whole } is { $copies } copies of { $unit }.
g4-fraction-copies-ask-more = You have { $fraction }. How many more copies of { $unit } make { $whole }?
g4-fraction-copies-story-1 = { $name } eats { $fraction } of a pie. Each piece is { $unit } of the pie. How many pieces does { $name } eat?
g4-fraction-copies-story-2 = { $name } has { $fraction } of a yard of ribbon and cuts it up. Each piece is { $unit } of a yard. How many pieces are there?
g4-fraction-copies-story-3 = { $name } walks { $fraction } of a mile. Each lap is { $unit } of a mile. How many laps is that?

g4-fraction-times-whole-hint-groups = Think of { $n } groups of { $fraction }.
g4-fraction-times-whole-hint-figure = Take this amount { $n } times.
g4-fraction-times-whole-step-tops = Multiply the number of parts: { $work }.
g4-fraction-times-whole-step-bottom = The parts stay the same size. The denominator stays { $bottom }.

g4-fraction-add-like-ask-1 = { $name } walked { $one } of a mile. Then { $name } walked another { $two } of a mile. How many miles is that in all?
g4-fraction-add-like-ask-2 = { $name } used { $one } of a yard of red ribbon and { $two } of a yard of blue ribbon. How many yards is that in all?
g4-fraction-add-like-ask-3 = { $name } read for { $one } of an hour in the morning and for { $two } of an hour at night. How many hours is that in all?
g4-fraction-add-like-ask-4 = { $name } ate { $one } of a pie. Later, { $name } ate { $two } of the same pie. How much of the pie is that in all?
g4-fraction-add-like-ask-5 = { $name } painted { $one } of a fence. Then { $name } painted another { $two } of the fence. How much of the fence is painted?
g4-fraction-add-like-ask-6 = { $name } read { $one } of a book. Then { $name } read another { $two } of the book. How much of the book is read?
g4-fraction-add-like-ask-7 = { $name } had { $one } of a yard of ribbon. { $name } used { $two } of a yard. How many yards are left?
g4-fraction-add-like-ask-8 = A tank is { $one } full. { $name } lets out { $two } of the tank. How much of the tank is still full?
g4-fraction-add-like-ask-9 = { $name } has { $one } of a pan of corn bread. Friends eat { $two } of the pan. How much of the pan is left?
g4-fraction-add-like-ask-10 = { $name } lives { $one } of a mile from school. { $name } has walked { $two } of a mile. How many miles are left?
g4-fraction-add-like-ask-11 = A show lasts { $one } of an hour. { $name } has seen { $two } of an hour of it. How many hours are left?
g4-fraction-add-like-ask-12 = A bag holds { $one } of a pound of nuts. { $name } takes out { $two } of a pound. How many pounds are left?
g4-fraction-add-like-hint-join = Put the two amounts together.
g4-fraction-add-like-hint-take = Take the second amount away from the first.
g4-fraction-add-like-hint-parts = Both count parts of the size { $part }.

g4-fraction-times-stories-ask-1 = { $name } fills { $n } cups. Each cup holds { $each } of a pint. How many pints is that?
g4-fraction-times-stories-ask-2 = { $name } runs { $each } of a mile each day. How many miles is that in { $n } days?
g4-fraction-times-stories-ask-3 = Each loaf needs { $each } of a pound of flour. How many pounds does { $name } need for { $n } loaves?
g4-fraction-times-stories-ask-4 = { $name } paints { $n } boards. Each board takes { $each } of an hour. How many hours is that?
g4-fraction-times-stories-ask-5 = { $name } cuts { $n } pieces of tape. Each piece is { $each } of a foot long. How many feet of tape is that?
g4-fraction-times-stories-ask-6 = { $n } plants need { $each } of a gallon of water each. How many gallons of water do they need?
g4-fraction-times-stories-hint-each = Each one takes { $each }.
g4-fraction-times-stories-hint-times = Multiply the fraction by the number of groups.
g4-fraction-times-stories-step-between = The answer is between { $low } and { $high }.

g5-fraction-stories-ask-1 = { $name } walked { $one } of a mile. Then { $name } ran { $two } of a mile. How many miles is that in all?
g5-fraction-stories-ask-2 = { $name } used { $one } of a cup of milk. { $other } used { $two } of a cup. How many cups did they use in all?
g5-fraction-stories-ask-3 = { $name } read for { $one } of an hour. Later { $name } read for { $two } of an hour. How many hours is that in all?
g5-fraction-stories-ask-4 = { $name } puts { $one } of a pound of grapes and { $two } of a pound of plums in a bag. How many pounds of fruit are in the bag?
g5-fraction-stories-ask-5 = A shelf has one board that is { $one } of a yard long and one that is { $two } of a yard long. How many yards long are they end to end?
g5-fraction-stories-ask-6 = { $name } poured { $one } of a gallon of water into a tank. { $other } poured in { $two } of a gallon. How many gallons is that in all?
g5-fraction-stories-ask-7 = { $name } has { $one } of a yard of rope and cuts off { $two } of a yard. How many yards are left?
g5-fraction-stories-ask-8 = One plant is { $one } of a foot tall. Another plant is { $two } of a foot tall. How many feet taller is the first plant?
g5-fraction-stories-ask-9 = A bottle is { $one } full. { $name } drinks { $two } of the bottle. How much of the bottle is left?
g5-fraction-stories-ask-10 = { $name } lives { $one } of a mile from the library. { $other } lives { $two } of a mile from it. How many miles farther does { $name } live?
g5-fraction-stories-ask-11 = A bag holds { $one } of a pound of seeds. { $name } plants { $two } of a pound. How many pounds are left?
g5-fraction-stories-ask-12 = { $name } worked for { $one } of an hour and { $other } for { $two } of an hour. How many hours longer did { $name } work?
g5-fraction-stories-ask-closest = Do not work it out. Which number is { $work } closest to?
g5-fraction-stories-hint-join = Put the two amounts together.
g5-fraction-stories-hint-take = Take the second amount away from the first.
g5-fraction-stories-hint-closest = Is each fraction close to 0, to a half or to 1?
g5-fraction-stories-hint-bars = Look at how much of each bar is shaded.

g5-fraction-as-division-ask-1 = { $amount ->
    [one] { $amount } loaf is shared by { $shares } people. All get the same. How many loaves does each get?
   *[other] { $amount } loaves are shared by { $shares } people. All get the same. How many loaves does each get?
}
g5-fraction-as-division-ask-2 = { $amount ->
    [one] { $amount } liter of juice fills { $shares } equal containers. How many liters are in each container?
   *[other] { $amount } liters of juice fill { $shares } equal containers. How many liters are in each container?
}
g5-fraction-as-division-ask-3 = { $amount ->
    [one] { $amount } yard of string is cut into { $shares } equal pieces. How many yards long is each piece?
   *[other] { $amount } yards of string are cut into { $shares } equal pieces. How many yards long is each piece?
}
g5-fraction-as-division-ask-4 = { $amount ->
    [one] { $amount } pound of clay is split into { $shares } equal lumps. How many pounds is each lump?
   *[other] { $amount } pounds of clay are split into { $shares } equal lumps. How many pounds is each lump?
}
g5-fraction-as-division-ask-5 = { $amount ->
    [one] { $amount } gallon of paint is poured into { $shares } equal buckets. How many gallons are in each bucket?
   *[other] { $amount } gallons of paint are poured into { $shares } equal buckets. How many gallons are in each bucket?
}
g5-fraction-as-division-ask-6 = { $amount ->
    [one] { $amount } mile of road is split among { $shares } teams. All get the same. How many miles does each team get?
   *[other] { $amount } miles of road are split among { $shares } teams. All get the same. How many miles does each team get?
}
g5-fraction-as-division-ask-between = Between which two whole numbers is the answer?
g5-fraction-as-division-hint-divide = Sharing is dividing. Write it as a fraction.
g5-fraction-as-division-hint-one = Share one whole first. Each gets { $part } of it.
g5-fraction-as-division-hint-whole = How many whole ones does each get?
g5-fraction-as-division-step-each = { $amount ->
    [one] Each gets { $part } of { $amount } whole.
   *[other] Each gets { $part } of each of the { $amount } wholes.
}
g5-fraction-as-division-step-between = So it is between { $low } and { $high }.
g5-fraction-as-division-field-low = More than
g5-fraction-as-division-field-high = Less than
g5-fraction-subtract-unlike-story-1 = { $name } has { $left } of a yard of ribbon and cuts off { $right } of a yard. What part of a yard is left?
g5-fraction-subtract-unlike-story-2 = A jug is filled to { $left } of it. { $name } pours out { $right } of the jug. What part of the jug is left?
g5-fraction-subtract-unlike-story-3 = { $name } wants to walk { $left } of a mile and has walked { $right } of a mile. What part of a mile is left?

g5-fraction-multiply-hint-parts = { $take ->
    [one] Cut the amount into { $parts } equal parts. Take { $take } of them.
   *[other] Cut the amount into { $parts } equal parts. Take { $take } of them.
}
g5-fraction-multiply-hint-bar = The bar stands for the whole amount.
g5-fraction-multiply-hint-square = Count the small squares that are shaded both ways.
g5-fraction-multiply-step-tops = Multiply the numerators: { $work }.
g5-fraction-multiply-step-bottoms = Multiply the denominators: { $work }.

g5-fraction-area-ask = A rectangle is { $width } by { $height }. What is its area?
g5-fraction-area-rectangle = A rectangle with sides { $width } and { $height }.
g5-fraction-area-hint-multiply = Area is side times side.
g5-fraction-area-hint-product = Work out { $work }.
g5-fraction-area-step-single = Write the mixed number as one fraction: { $work }.
g5-fraction-area-ask-tiles = A rectangle is { $width } by { $height }. It is covered with tiles of { $one } by { $two }. How many tiles cover it?
g5-fraction-area-ask-one-tile = A tile is { $one } by { $two }. Which fraction of a unit square does it cover?
g5-fraction-area-step-square = { $tiles } of them cover a unit square.
g5-fraction-area-step-rows = { $rows } fit along one side, and { $columns } along the other.
g5-fraction-area-hint-square = How many of them cover a unit square?
g5-fraction-area-hint-rows = { $rows } fit along one side of it, and { $columns } along the other.
g5-fraction-area-hint-along = How many times does { $one } fit into { $width }?
g5-fraction-area-hint-picture = Look at the part that is shaded both ways.

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
g5-scaling-reason-hint-one = Is { $factor } more or less than 1?
g5-scaling-reason-hint-bar = Here is the fraction. One bar is 1.
g5-scaling-reason-step-above = { $factor } is more than 1.
g5-scaling-reason-step-below = { $factor } is less than 1.
g5-scaling-reason-step-grows = You take { $number } once and some more of it. So the product is more.
g5-scaling-reason-step-shrinks = You take only a part of { $number }. So the product is less.

g5-fraction-multiply-stories-ask-1 = { $name } has { $two } of nuts and eats { $one } of them. How many pounds does { $name } eat?
g5-fraction-multiply-stories-ask-2 = A path is { $two } long. { $name } has walked { $one } of it. How many miles is that?
g5-fraction-multiply-stories-ask-3 = A ribbon is { $two } long. { $name } uses { $one } of it. How many yards is that?
g5-fraction-multiply-stories-ask-4 = A tank holds { $two } of water. { $name } uses { $one } of it. How many gallons is that?
g5-fraction-multiply-stories-ask-5 = One bag holds { $two } of seeds. { $name } buys { $one } bags. How many kilograms is that?
g5-fraction-multiply-stories-ask-6 = One batch needs { $two } of oats. { $name } makes { $one } batches. How many cups is that?
g5-fraction-multiply-stories-ask-7 = One board is { $two } long. { $name } lays { $one } boards end to end. How many feet is that?
g5-fraction-multiply-stories-ask-8 = One trip takes { $two }. { $name } makes { $one } trips. How many hours is that?
g5-fraction-multiply-stories-hint-work = Work out { $work }.
g5-fraction-multiply-stories-hint-part = A part of an amount: multiply.
g5-fraction-multiply-stories-hint-several = The same amount several times: multiply.

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
g5-unit-fraction-stories-ask-3 = A trail is { $n } miles long. There is a sign every { $part } of a mile, and one at the end. How many signs are there after the start?
g5-unit-fraction-stories-ask-4 = { $name } has { $part } of a pan of corn bread. { $n } friends share it. All get the same. What part of a pan does each get?
g5-unit-fraction-stories-ask-5 = { $n } plants share { $part } of a gallon of water. All get the same. How many gallons does each get?
g5-unit-fraction-stories-ask-6 = { $name } cuts { $part } of a yard of rope into { $n } equal pieces. How many yards long is each piece?
g5-unit-fraction-stories-hint-share = Divide the part by the number of shares.
g5-unit-fraction-stories-hint-cut = Cut the shaded part into { $n }.
g5-unit-fraction-stories-hint-fit = Ask how many parts fit.
g5-unit-fraction-stories-hint-one = How many { $part } fit in one whole?
g5-unit-fraction-stories-step-one = One whole holds { $parts } parts.

g5-fraction-as-division-hint-cut = Cut the whole into { $shares } equal parts.
misconception-fraction-kept-from-whole = The first number has no fraction. Trade one whole for parts first.
    .name = Did not trade a whole
