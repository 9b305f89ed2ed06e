## Text alternatives of figures.
figure-column-plus = { $top } and { $bottom } written one above the other, to add.
figure-column-minus = { $bottom } written under { $top }, to take away.
figure-column-times = { $bottom } written under { $top }, to multiply.
figure-strip = A bar in { $parts } equal parts. { $shaded } of them shaded.
figure-strip-wholes = { $wholes } bars, each in { $parts } equal parts. { $shaded } parts shaded in all.
figure-strips = Two rows of bars of the same length. In one row each bar has { $parts } equal parts, with { $shaded } shaded in all. In the other each bar has { $parts2 } equal parts, with { $shaded2 } shaded in all.
figure-fraction-grid = A square cut into { $rows } rows and { $columns } columns. Rows shaded one way: { $shadedrows }. Columns shaded the other way: { $shadedcolumns }.
figure-array = Dots in { $rows } rows, { $columns } in each row.
figure-array-split = Dots in { $rows } rows, { $columns } in each row, with a cut after { $split } in each row.
figure-squares = { $rows ->
    [one] { $columns } unit squares in a row.
   *[other] Unit squares in { $rows } rows, { $columns } in each row.
}
figure-squares-split = Unit squares in { $rows } rows, { $columns } in each row, with a cut after { $split } in each row.
figure-groups = Dots in { $groups } groups, { $each } in each group.
figure-groups-left = Dots in { $groups } groups, { $each } in each group, and { $left } outside.
figure-clock = A clock. The short hand is between { $hour } and { $next }. The long hand is { $marks } small marks past 12.
figure-clock-full = A clock. The short hand is at { $hour }. The long hand is at 12.
figure-blocks = Base-ten blocks: { $large ->
    [one] { $large } large cube
   *[other] { $large } large cubes
}, { $flats ->
    [one] { $flats } flat
   *[other] { $flats } flats
}, { $rods ->
    [one] { $rods } rod
   *[other] { $rods } rods
}, { $cubes ->
    [one] { $cubes } small cube
   *[other] { $cubes } small cubes
}.
figure-blocks-hundredths = Base-ten blocks where a flat is one: { $flats ->
    [one] { $flats } flat
   *[other] { $flats } flats
}, { $rods ->
    [one] { $rods } rod
   *[other] { $rods } rods
}, { $cubes ->
    [one] { $cubes } small cube
   *[other] { $cubes } small cubes
}.
figure-area-model = A rectangle cut into parts. Left side: { $rows }. Top side: { $columns }.
figure-line = A number line from { $from } to { $to }.
figure-line-parts = A number line from { $from } to { $to }. Each whole is in { $parts } equal parts.
figure-line-plot = Line plot: { $title }. The line goes from { $from } to { $to }. Dots above the marks in order: { $counts }.
figure-cubes = A box of unit cubes: { $width } across, { $depth } deep, { $height } high.
figure-box = A box: { $width } across, { $depth } deep, { $height } high.
figure-protractor-right = A protractor on an angle. One side is at 0 on the inner scale. The other side is at { $inner } on the inner scale and { $outer } on the outer scale.
figure-protractor-left = A protractor on an angle. One side is at 0 on the outer scale. The other side is at { $inner } on the inner scale and { $outer } on the outer scale.
figure-ruler-inch = inch
figure-ruler-centimeter = centimeter
figure-ruler = A ruler. Each { $unit } is in { $parts } equal parts. A bar goes from { $from } to { $to }.
figure-jug = A jug with a scale in { $unit }. Each { $step } is in { $parts } parts. The water is { $marks ->
    [0] at
    [one] { $marks } mark above
   *[other] { $marks } marks above
} { $label }.
figure-dial = A dial in { $unit }. Each { $step } is in { $parts } parts. The hand is { $marks ->
    [0] at
    [one] { $marks } mark past
   *[other] { $marks } marks past
} { $label }.
figure-coins = Coins and bills, in dollars: { $values }.
figure-bars-3 = Bar graph: { $title }. Bars for { $a }, { $b }, { $c }, with heights { $values }. The scale goes by { $step }.
figure-bars-4 = Bar graph: { $title }. Bars for { $a }, { $b }, { $c }, { $d }, with heights { $values }. The scale goes by { $step }.
figure-pictures-3 = Picture graph: { $title }. Rows for { $a }, { $b }, { $c }, with { $symbols } symbols. Each symbol stands for { $each }.
figure-pictures-4 = Picture graph: { $title }. Rows for { $a }, { $b }, { $c }, { $d }, with { $symbols } symbols. Each symbol stands for { $each }.
figure-picture-key = Each symbol stands for { $each }.
figure-dots = Dot plot: { $title }. The line goes from { $from } to { $to }. Dots above the marks in order: { $counts }.
figure-histogram = Histogram: { $title }. From { $from } to { $to }, each bar { $width } wide. Heights in order: { $counts }.
figure-box-plot = Box plot: { $title }. Least { $least }, box from { $lower } to { $upper } with a line at { $median }, greatest { $greatest }.
figure-balance = A level balance: { $equation }.
figure-tape = A bar in { $parts } equal parts. { $shaded } of them shaded.
figure-circle = A circle in { $parts } equal parts. { $shaded } of them shaded.
