g3-time-tell-ask = What time does the clock show?
g3-time-tell-story-1 = { $name } looks at this clock. What time is it?
g3-time-tell-story-2 = { $name } gets on a bus when the clock shows this. What time is that?
g3-time-tell-story-3 = This clock is in a class. { $name } reads it. What time does it show?
g3-time-tell-story-4 = A movie starts when the clock shows this. { $name } is on time. What time is it?
g3-time-tell-story-5 = { $name } comes home at the time on this clock. What time is that?
g3-time-tell-hint-short = The short hand tells the hour it has passed.
g3-time-tell-hint-long = The long hand tells the minutes. Each number is 5 minutes. Each small mark is 1 minute.
g3-time-tell-step-hour = The short hand is past { $hour } and not yet at { $next }.
g3-time-tell-step-fives = { $fives ->
    [one] The long hand is at { $fives }: count 5. That is { $minute } minutes.
   *[other] The long hand is at { $fives }: count by 5 that many times. That is { $minute } minutes.
}
g3-time-tell-step-few = { $minute ->
    [one] Count { $minute } small mark from 12. That is { $minute } minute.
   *[other] Count { $minute } small marks from 12. That is { $minute } minutes.
}
g3-time-tell-step-minutes = Count by 5 to { $low }. Then count { $rest } more. { $minute ->
    [one] That is { $minute } minute.
   *[other] That is { $minute } minutes.
}

g3-time-elapsed-ask-1 = { $name } starts to read { $start } { $from } and stops { $end } { $to }. How many minutes does { $name } read?
g3-time-elapsed-ask-2 = A walk starts { $start } { $from } and ends { $end } { $to }. How many minutes does { $name } walk?
g3-time-elapsed-ask-end = { $name } starts to play { $hour } { $at } and plays for { $minutes } minutes. What time is it then?
g3-time-elapsed-ask-start = { $name } is done { $hour } { $at }. It took { $minutes } minutes. When did { $name } start?
g3-time-elapsed-line = A time line from { $from } to { $to }. A mark stands for 10 minutes.
g3-time-elapsed-hint-hour = Is there a full hour in between? Stop there first.
g3-time-elapsed-hint-line = Use a time line.
g3-time-elapsed-hint-on = Go on { $minutes } minutes.
g3-time-elapsed-hint-back = Go back { $minutes } minutes.
g3-time-elapsed-step-same-hour = Both times are in the same hour.
g3-time-elapsed-step-to-hour = { $minutes ->
    [one] To the next full hour it is { $minutes } minute.
   *[other] To the next full hour it is { $minutes } minutes.
}
g3-time-elapsed-step-past = { $minutes ->
    [one] After the hour it is { $minutes } minute more.
   *[other] After the hour it is { $minutes } minutes more.
}
g3-time-elapsed-step-rest = { $minutes ->
    [one] Then { $minutes } minute more. It ends { $hour } { $at }.
   *[other] Then { $minutes } minutes more. It ends { $hour } { $at }.
}
g3-time-elapsed-step-back-hour = { $minutes ->
    [one] Back to the full hour it is { $minutes } minute.
   *[other] Back to the full hour it is { $minutes } minutes.
}
g3-time-elapsed-step-back-rest = { $minutes ->
    [one] Then { $minutes } minute more back. It started { $hour } { $at }.
   *[other] Then { $minutes } minutes more back. It started { $hour } { $at }.
}

g3-mass-volume-ask-jug = How much water is in the jug?
g3-mass-volume-ask-dial = What does the dial show?
g3-mass-volume-ask-times-1 = { $n } cans weigh { $each } grams each. How many grams is that in all?
g3-mass-volume-ask-times-2 = { $n } cups hold { $each } milliliters each. How many milliliters is that in all?
g3-mass-volume-ask-less-1 = { $name } has { $a } grams of flour and uses { $b } grams. How many grams are left?
g3-mass-volume-ask-less-2 = { $name } has { $a } milliliters of juice and drinks { $b } milliliters. How many milliliters are left?
g3-mass-volume-ask-share-1 = { $total } grams of rice go into { $n } bags. All bags get the same. How many grams are in each bag?
g3-mass-volume-ask-share-2 = { $total } milliliters of milk are poured into { $n } cups. All cups get the same. How many milliliters are in each cup?
g3-mass-volume-ask-large-1 = { $n } bags of soil weigh { $each } kilograms each. How many kilograms is that in all?
g3-mass-volume-ask-large-2 = { $n } buckets hold { $each } liters of water each. How many liters is that in all?
g3-mass-volume-ask-room-1 = A cart can carry { $most } kilograms. It has { $n } boxes of { $each } kilograms each. How many kilograms more can it carry?
g3-mass-volume-ask-room-2 = A tank holds { $most } liters. { $n } buckets of { $each } liters each are poured in. How many liters more fit?
g3-mass-volume-ask-mass = About how heavy is { $thing }?
g3-mass-volume-ask-holds = About how much does { $thing } hold?
g3-mass-volume-hint-between = It is between { $low } and { $high }.
g3-mass-volume-hint-mark = There are { $parts } small parts from one number to the next. How much is one?
g3-mass-volume-hint-times = All are the same. Multiply.
g3-mass-volume-hint-less = Some is taken away. Find what is left.
g3-mass-volume-hint-share = All get the same. Divide.
g3-mass-volume-hint-work = Work out { $work }.
g3-mass-volume-hint-first = First find how much is there.
g3-mass-volume-hint-gram = A paper clip weighs about 1 gram. A liter of water weighs 1 kilogram.
g3-mass-volume-hint-liter = A few drops make about 1 milliliter. A large bottle of milk holds about 2 liters.
g3-mass-volume-hint-compare = Compare it with these two things.
g3-mass-volume-step-mark = Each small part is { $step }.
g3-mass-volume-step-count = { $marks ->
    [one] Count { $marks } part up from { $low }. That is { $value }.
   *[other] Count { $marks } parts up from { $low }. That is { $value }.
}
g3-mass-volume-step-fits = It fits: { $amount }.

g3-area-unit-square-ask-one = A square has sides of { $side }. What is its area?
g3-area-unit-square-ask-row = { $n } squares are in a row. Each has sides of { $side }. What is the area of the row?
g3-area-unit-square-ask-halves = A shape is made of { $n } squares with sides of { $side }, and { $halves } halves of such a square. What is its area?
g3-area-unit-square-ask-larger = { $n } squares are in a row. Each has sides of { $side }. What is the area of the row?
g3-area-unit-square-hint-unit = A square with sides of 1 unit is one square unit.
g3-area-unit-square-hint-count = Area counts squares.
g3-area-unit-square-hint-fit = How many unit squares fit in it?
g3-area-unit-square-step-count = Count the squares: { $area }.
g3-area-unit-square-step-halves = Two halves make one unit square: { $halves } halves make { $wholes }.
g3-area-unit-square-step-larger = Each square has { $side } rows of { $side } unit squares: { $work }.

g3-area-cover-ask-gaps = { $name } puts { $a } unit squares on a shape. There is still room for { $b } more. What is the area of the shape?
g3-area-cover-ask-overlaps = { $name } puts { $a } unit squares on a shape, but { $b } of them lie on top of others. The shape is covered. What is its area?
g3-area-cover-ask-both = { $name } puts { $a } unit squares on a shape. { $b } of them lie on top of others, and there is still room for { $c } more. What is the area of the shape?
g3-area-cover-hint-rule = The squares must cover the shape with no gaps, and none on top of others.
g3-area-cover-hint-gaps = The gaps belong to the shape. Fill them.
g3-area-cover-hint-overlaps = A square on top of others covers nothing new. Leave it out.
g3-area-cover-hint-both = Leave out the squares on top. Then fill the gaps.

g3-area-count-ask = What is the area of the shape?
g3-area-count-shape = A shape on unit squares. Squares in its rows from the top: { $rows }.
g3-area-count-hint-count = Count the squares inside.
g3-area-count-hint-rows = Count each row. Then add.
g3-area-count-step-rows = The rows have { $rows } squares.

g3-area-tile-ask-tiles-1 = A floor has { $rows } rows of tiles with { $each } tiles in each row. Each tile is one square unit. What is the area?
g3-area-tile-ask-tiles-2 = A wall has { $rows } rows of tiles with { $each } tiles in each row. Each tile is one square unit. What is the area?
g3-area-tile-ask-tiles-3 = A blanket has { $rows } rows of patches with { $each } patches in each row. Each patch is one square unit. What is the area?
g3-area-tile-ask-tiles-4 = A game board has { $rows } rows with { $each } squares in each row. Each square is one square unit. What is the area?
g3-area-tile-ask-mark = Mark a rectangle with { $rows } rows and an area of { $area } squares.
g3-area-tile-ask-missing = A rectangle of { $area } unit squares has { $rows } equal rows. How many squares are in each row?
g3-area-tile-hint-rows = All rows are the same.
g3-area-tile-hint-fact = Use a multiplication fact: { $fact }.
g3-area-tile-step-rows = There are { $rows } rows of { $each }.

g3-area-rectangle-ask-1 = A rug is { $width } by { $height }. What is its area?
g3-area-rectangle-ask-2 = A garden is { $width } by { $height }. What is its area?
g3-area-rectangle-ask-3 = A room is { $width } by { $height }. What is its area?
g3-area-rectangle-ask-4 = A photo is { $width } by { $height }. What is its area?
g3-area-rectangle-ask-5 = A card is { $width } by { $height }. What is its area?
g3-area-rectangle-ask-6 = A stage is { $width } by { $height }. What is its area?
g3-area-rectangle-shape = A rectangle with sides { $width } and { $height }.
g3-area-rectangle-hint-rows = Think of { $height } rows of { $width } squares.
g3-area-rectangle-step-multiply = Multiply the two sides.

g3-area-split-ask = A rectangle has { $height } rows. It is cut into a part { $a } wide and a part { $b } wide. What is the area of it all?
g3-area-split-hint-parts = Find the area of each part. Then add.
g3-area-split-hint-first = Start with { $work }.

g3-area-l-shape-ask = What is the area of the shape?
g3-area-l-shape-shape = An L-shape. The bottom is { $w }. The right side is { $h }. Then a step up of { $up }. The top is { $top }.
g3-area-l-shape-shape-left = An L-shape. The bottom is { $w }. The right side is { $h }. The left side is { $left }. The top is { $top }.
g3-area-l-shape-hint-cut = Cut the shape into two rectangles.
g3-area-l-shape-hint-low = The lower rectangle is { $work }.
g3-area-l-shape-step-low = Lower part: { $work }.
g3-area-l-shape-step-high = Upper part: { $work }.

g3-perimeter-ask-around = The sides are measured in { $unit }. What is the perimeter?
g3-perimeter-ask-side = A rectangle has a perimeter of { $perimeter }. One side is { $side } long. How long is the other side?
g3-perimeter-ask-missing = A shape with four sides has a perimeter of { $perimeter }. Three sides are { $a }, { $b } and { $c } long. How long is the fourth side?
g3-perimeter-ask-same = A rectangle is { $w } by { $h }. Another rectangle has the same perimeter, and one side is { $side } long. What is the area of the second rectangle?
g3-perimeter-rectangle = A rectangle with sides { $width } and { $height }.
g3-perimeter-hint-around = The perimeter is the way around the shape. Add all the sides.
g3-perimeter-hint-opposite = In a rectangle, opposite sides are the same.
g3-perimeter-hint-half = Two sides are known. Two are the same as each other.
g3-perimeter-hint-known = First add the sides you know: { $work }.
g3-perimeter-hint-same = First find the other side of the second rectangle.
g3-perimeter-step-two = The two known sides: { $work }.

g4-area-perimeter-rules-ask-area = A rectangle has an area of { $area }. One side is { $side } long. How long is the other side?
g4-area-perimeter-rules-ask-perimeter = A rectangle has a perimeter of { $perimeter }. One side is { $side } long. How long is the other side?
g4-area-perimeter-rules-ask-both = A rectangle has an area of { $area }. One side is { $side } long. What is its perimeter?
g4-area-perimeter-rules-hint-area = Area is side times side.
g4-area-perimeter-rules-hint-perimeter = The perimeter has each side twice.
g4-area-perimeter-rules-hint-work = Find the missing number: { $work }.
g4-area-perimeter-rules-hint-then = First find the other side. Then go around.

g4-units-convert-hint-one = { $one }
g4-units-convert-table-short = A table. First { $one } and { $small }. Then { $asked } and a box.
g4-units-convert-table = A table. First { $one } and { $small }, then { $two } and { $double }, then { $asked } and a box.

g5-units-convert-hint-one = { $one }
g5-units-convert-hint-divide = To a larger unit, divide.
g5-units-convert-hint-multiply = To a smaller unit, multiply.
g5-units-convert-ask-left-1 = { $name } has { $large ->
    [one] { $large } meter
   *[other] { $large } meters
} of rope and cuts off { $n } pieces of { $small } centimeters each. How many centimeters are left?
g5-units-convert-ask-left-2 = A path is { $large ->
    [one] { $large } kilometer
   *[other] { $large } kilometers
} long. { $name } has run { $n } parts of { $small } meters each. How many meters are left to run?
g5-units-convert-ask-left-3 = A jug holds { $large ->
    [one] { $large } liter
   *[other] { $large } liters
} of juice. { $name } fills { $n } glasses with { $small } milliliters each. How many milliliters are left?
g5-units-convert-ask-all-1 = { $name } carries { $n } bags of { $small } grams each. How many kilograms is that in all?
g5-units-convert-ask-all-2 = { $name } runs { $n } laps of { $small } meters each. How many kilometers is that in all?
g5-units-convert-ask-all-3 = { $name } pours { $n } jars of { $small } milliliters each into a tank. How many liters is that in all?
g5-units-convert-hint-same-unit = First write the large amount in the small unit.
g5-units-convert-hint-all-parts = How much are the { $n } parts together?
g5-units-convert-hint-first-all = First find how much it is in the small unit.

g4-measure-stories-ask-1 = { $name } has { $n } meters of rope and cuts off { $b } centimeters. How many centimeters are left?
g4-measure-stories-ask-2 = { $name } puts { $n } kilograms of flour into { $k } equal bags. How many grams are in each bag?
g4-measure-stories-ask-3 = { $name } works for { $n } hours and { $b } minutes. How many minutes is that?
g4-measure-stories-ask-4 = { $n } liters of juice fill { $k } equal jars. How many milliliters are in each jar?
g4-measure-stories-hint-same = First write both in the same small unit.
g4-measure-stories-hint-small = First write the amount in the small unit.
g4-measure-stories-hint-one = { $one }

g4-money-stories-ask-total = { $name } buys a book for { $a } and a map for { $b }. What is the total?
g4-money-stories-ask-change = { $name } buys a ball for { $price } and pays with { $paid }. How much change is there?
g4-money-stories-ask-each = { $name } buys { $n } pots. Each costs { $price }. What is the total?
g4-money-stories-hint-line-up = Line up dollars with dollars and cents with cents.
g4-money-stories-hint-estimate = It is about { $about }.
g4-money-stories-hint-count-up = Count up from the price to what was paid.
g4-money-stories-hint-next = First count up to { $next }.
g4-money-stories-hint-times = All cost the same. Multiply.
g4-money-stories-hint-apart = Take dollars and cents apart: { $dollars } and { $cents }.
g4-money-stories-step-up = Up to { $next } it is { $gap }.
g4-money-stories-step-dollars = Dollars: { $work }.
g4-money-stories-step-cents = Cents: { $work }.

g5-volume-unit-cube-ask-one = A cube has edges of { $side }. What is its volume?
g5-volume-unit-cube-ask-row = { $n } cubes are in a row. Each has edges of { $side }. What is the volume of the row?
g5-volume-unit-cube-ask-larger = { $n } cubes are in a row. Each has edges of { $edge }. What is the volume of the row?
g5-volume-unit-cube-ask-larger-tower = { $n } cubes are stacked in a tower. Each has edges of { $edge }. What is the volume of the tower?
g5-volume-unit-cube-hint-unit = A cube with edges of 1 unit is one cubic unit.
g5-volume-unit-cube-hint-count = Volume counts cubes.
g5-volume-unit-cube-hint-fit = How many unit cubes fit in one of them?
g5-volume-unit-cube-step-count = Count the cubes: { $volume }.
g5-volume-unit-cube-step-larger = Each cube has { $edge } layers of unit cubes: { $work }.
g5-volume-unit-cube-ask-tower = { $n } cubes are stacked in a tower. Each has edges of { $side }. What is the volume of the tower?

g5-volume-pack-ask-gaps = { $name } packs { $a } unit cubes into a box. There is still room for { $b } more. What is the volume of the box?
g5-volume-pack-ask-out = A box is packed full with { $a } unit cubes. { $name } cuts a part off the box that holds { $b } of them. What is the volume of the rest?
g5-volume-pack-ask-both = { $name } puts { $a } unit cubes into a box. { $b } of them lie above the top, and there is still room for { $c } more inside. What is the volume of the box?
g5-volume-pack-hint-rule = The cubes must fill the solid with no gaps.
g5-volume-pack-hint-gaps = The room that is left is part of the box. Fill it.
g5-volume-pack-hint-out = The part cut off is no longer there. Leave it out.
g5-volume-pack-hint-both = Cubes outside do not count. The room inside does.

g5-volume-count-ask = How many unit cubes fill the box?
g5-volume-count-ask-1 = { $name } builds this box of unit cubes. How many cubes does it take?
g5-volume-count-ask-2 = { $name } packs unit cubes until this box is full. How many cubes are in it?
g5-volume-count-hint-layer = Count the cubes in the bottom layer.
g5-volume-count-hint-layers = There are { $layers } layers. Some cubes are hidden.
g5-volume-count-step-layer = One layer: { $work }.
g5-volume-count-step-layers = All layers: { $work }.

g5-volume-box-ask = What is the volume of the box?
g5-volume-box-hint-base = First find the area of the base. Then multiply by the height.
g5-volume-box-hint-work = Work out { $work }.
g5-volume-box-step-base = Base: { $work }.
g5-volume-box-step-height = Times the height: { $work }.

g5-volume-rules-ask-volume = A box has a base of { $base } square centimeters and is { $height } centimeters high. What is its volume?
g5-volume-rules-ask-height = A box has a volume of { $volume } cubic centimeters. Its base is { $base } square centimeters. How high is it?
g5-volume-rules-ask-edge = A box has a volume of { $volume } cubic centimeters. It is { $width } centimeters long and { $depth } centimeters wide. How high is it?
g5-volume-rules-hint-base = Volume is base area times height.
g5-volume-rules-hint-work = Work out { $work }.
g5-volume-rules-step-divide = Divide the volume by the base area.

g5-volume-add-ask = Two boxes make one solid. What is its volume?
g5-volume-add-solid = A box { $w } long, { $d } deep and { $h } high. On it stands a box { $w2 } long, as deep, and { $h2 } high.
g5-volume-add-hint-two = Find the volume of each box. Then add.
g5-volume-add-hint-lower = The lower box: { $work }.
g5-volume-add-step-lower = Lower box: { $work }.
g5-volume-add-step-upper = Upper box: { $work }.
clock-one = at
clock-many = at
thing-apple = an apple
thing-pencil = a pencil
thing-cat = a house cat
thing-bike = a bike
thing-melon = a watermelon
thing-letter = a letter
thing-spoon = a spoon
thing-glass = a glass
thing-bucket = a bucket
thing-tub = a bathtub
