graph-fruit = Fruit sold
graph-count-fruit = Number of fruits
fruit-apples = apples
fruit-pears = pears
fruit-plums = plums
fruit-figs = figs
graph-travel = How students come to school
graph-count-students = Number of students
travel-walk = on foot
travel-bus = by bus
travel-bike = by bike
travel-car = by car
graph-birds = Birds seen
graph-count-birds = Number of birds
bird-doves = doves
bird-ducks = ducks
bird-owls = owls
bird-wrens = wrens
graph-kind = Kind
plot-leaves = Lengths of leaves
plot-shells = Lengths of shells
plot-jars = Water in jars
plot-inches = Inches
plot-cups = Cups

g3-scaled-graphs-ask-more = How many more are there for "{ $one }" than for "{ $two }"?
g3-scaled-graphs-ask-both = How many are there for "{ $one }" and "{ $two }" together?
g3-scaled-graphs-ask-two = Add the numbers for "{ $one }" and "{ $two }". How many more is that than for "{ $three }"?
g3-scaled-graphs-hint-scale = Look at the scale first. What does one step or symbol stand for?
g3-scaled-graphs-hint-bar = The scale goes by { $step }. Read the end of each bar.
g3-scaled-graphs-hint-picture = Each symbol stands for { $step }. Multiply.
g3-scaled-graphs-step-value = { $name }: { $work }.

g3-build-bar-graph-ask = Make a bar graph of the table. The scale goes by { $step }.
g3-build-bar-graph-table-3 = A table: { $a } { $va }, { $b } { $vb }, { $c } { $vc }.
g3-build-bar-graph-table-4 = A table: { $a } { $va }, { $b } { $vb }, { $c } { $vc }, { $d } { $vd }.
g3-build-bar-graph-hint-scale = Each step of the scale is { $step }.
g3-build-bar-graph-hint-each = Make one bar at a time. Stop at the number in the table.
g3-build-bar-graph-hint-symbol = Each symbol stands for { $step }.
g3-build-bar-graph-hint-each-row = Make one row at a time. Count by what a symbol stands for.
g3-build-bar-graph-step-first = { $marks ->
    [one] The bar for { $name } ends at { $value }. That is { $marks } step.
   *[other] The bar for { $name } ends at { $value }. That is { $marks } steps.
}
g3-build-bar-graph-step-first-row = { $marks ->
    [one] The row for { $name } stands for { $value }. That is { $marks } symbol.
   *[other] The row for { $name } stands for { $value }. That is { $marks } symbols.
}
g3-build-bar-graph-ask-pictures = Make a picture graph of the table. Each symbol stands for { $step }.

g3-measure-line-plot-ask-ruler-1 = How long is the bar?
g3-measure-line-plot-ask-ruler-2 = The bar shows how long a leaf is. How long is it?
g3-measure-line-plot-ask-ruler-3 = The bar shows how long a pencil is. How long is it?
g3-measure-line-plot-ask-ruler-4 = The bar shows how long a shell is. How long is it?
g3-measure-line-plot-ask-dots = The marks are { $step } apart. How many leaves are { $value } long?
g3-measure-line-plot-ask-longer = The marks are { $step } apart. How many leaves are longer than { $value }?
g3-measure-line-plot-hint-parts = Each inch is in { $parts } equal parts.
g3-measure-line-plot-hint-whole = Count the whole inches. Then count the parts.
g3-measure-line-plot-hint-start = The bar does not start at 0. Find where it starts and where it ends.
g3-measure-line-plot-step-whole = The bar ends past { $whole }.
g3-measure-line-plot-step-part = Its length is { $length }.
g3-measure-line-plot-hint-dot = Each dot is one leaf.
g3-measure-line-plot-hint-find = Find { $value } on the line.
g3-measure-line-plot-step-count = Count the dots: { $right }.
g3-measure-line-plot-ask-build = Eight leaves are this long, in inches: { $a }, { $b }, { $c }, { $d }, { $e }, { $f }, { $g }, { $h }. Make the line plot.
g3-measure-line-plot-hint-one-dot = Put one dot for each leaf.
g3-measure-line-plot-hint-how-many = How many leaves are { $value } long? Put that many dots.
g3-measure-line-plot-step-column = { $count ->
    [one] { $count } leaf is { $value } long. So there is { $count } dot.
   *[other] { $count } leaves are { $value } long. So there are { $count } dots.
}
g3-measure-line-plot-step-all = From left to right the dots are { $heights }.

g4-line-plot-ask-range = The marks are { $step } apart. How much longer is the longest shell than the shortest?
g4-line-plot-ask-total = The marks are { $step } apart. Take all shells of the most common length. Lay them end to end. How long is the row?
g4-line-plot-hint-ends = Find the first and the last mark with dots.
g4-line-plot-hint-difference = Take the shortest away from the longest.
g4-line-plot-hint-most = Find the mark with the most dots.
g4-line-plot-hint-times = Multiply the length by the number of dots.
g4-line-plot-step-ends = The longest is { $long }. The shortest is { $short }.
g4-line-plot-step-most = { $count } shells are { $value } long.

g5-line-plot-ask = The marks are { $step } apart. All the water is shared so that each jar holds the same. How much is in each jar?
g5-line-plot-hint-total = First add all the water.
g5-line-plot-hint-count = There are { $count } jars. Share among them.
g5-line-plot-step-total = All the water is { $total }.
