ratio-amount = Amount
ratio-for = For
ratio-red = Red beads
ratio-blue = Blue beads
ratio-cups-rice = Cups of rice
ratio-cups-water = Cups of water
ratio-boats = Boats
ratio-people = People

g6-ratio-language-ask-simplest = Write it in the simplest way.
g6-ratio-language-ask-1 = There are { $a } cats and { $b } dogs. What is the ratio of cats to dogs?
g6-ratio-language-ask-1-all = There are { $a } cats and { $b } dogs. What is the ratio of cats to all the animals?
g6-ratio-language-ask-2 = A mix has { $a } cups of red paint and { $b } cups of white paint. What is the ratio of red to white?
g6-ratio-language-ask-2-all = A mix has { $a } cups of red paint and { $b } cups of white paint. What is the ratio of red to all the paint?
g6-ratio-language-ask-3 = A bag has { $a } nuts and { $b } dates. What is the ratio of nuts to dates?
g6-ratio-language-ask-3-all = A bag has { $a } nuts and { $b } dates. What is the ratio of nuts to all the pieces?
g6-ratio-language-ask-4 = A mix has { $a } cups of flour and { $b } cups of sugar. What is the ratio of flour to sugar?
g6-ratio-language-ask-4-all = A mix has { $a } cups of flour and { $b } cups of sugar. What is the ratio of flour to all the mix?
g6-ratio-language-ask-5 = A team has { $a } wins and { $b } losses. What is the ratio of wins to losses?
g6-ratio-language-ask-5-all = A team has { $a } wins and { $b } losses. What is the ratio of wins to all the games?
g6-ratio-language-ask-6 = A garden has { $a } roses and { $b } tulips. What is the ratio of roses to tulips?
g6-ratio-language-ask-6-all = A garden has { $a } roses and { $b } tulips. What is the ratio of roses to all the flowers?
g6-ratio-language-field-1-first = Cats
g6-ratio-language-field-1-second = Dogs
g6-ratio-language-field-1-all = All animals
g6-ratio-language-field-2-first = Red
g6-ratio-language-field-2-second = White
g6-ratio-language-field-2-all = All paint
g6-ratio-language-field-3-first = Nuts
g6-ratio-language-field-3-second = Dates
g6-ratio-language-field-3-all = All pieces
g6-ratio-language-field-4-first = Flour
g6-ratio-language-field-4-second = Sugar
g6-ratio-language-field-4-all = All the mix
g6-ratio-language-field-5-first = Wins
g6-ratio-language-field-5-second = Losses
g6-ratio-language-field-5-all = All games
g6-ratio-language-field-6-first = Roses
g6-ratio-language-field-6-second = Tulips
g6-ratio-language-field-6-all = All flowers
g6-ratio-language-hint-order = Keep the order of the words.
g6-ratio-language-hint-divide = Divide both numbers by the greatest number that goes into both.
g6-ratio-language-step-divide = Divide both by { $k }.

g6-unit-rate-ask-1 = { $n } kilograms of rice cost { $total } dollars. How many dollars does 1 kilogram cost?
g6-unit-rate-ask-2 = { $name } rides a bike { $total } kilometers in { $n } hours at a steady speed. How many kilometers is that in 1 hour?
g6-unit-rate-ask-3 = { $total } liters come out of a faucet in { $n } minutes. How many liters is that in 1 minute?
g6-unit-rate-ask-4 = { $name } gets { $total } dollars for { $n } hours of work. How many dollars is that for 1 hour?
g6-unit-rate-ask-5 = { $name } types { $total } lines in { $n } minutes. How many lines is that in 1 minute?
g6-unit-rate-ask-6 = A bus goes { $total } miles in { $n } hours at a steady speed. How many miles is that in 1 hour?
g6-unit-rate-hint-one = To get the amount for 1, divide.
g6-unit-rate-hint-table = Fill in the table.
g6-unit-rate-table = A table: { $total } for { $n }, and a box for 1.

g6-ratio-table-ask-1 = The ratio of red beads to blue beads stays the same. What number goes in the box?
g6-ratio-table-ask-2 = Rice and water are mixed the same way each time. What number goes in the box?
g6-ratio-table-ask-3 = Each boat takes the same number of people. What number goes in the box?
g6-ratio-table-table = A table of equal ratios. First { $a } and { $b }, then { $a2 } and { $b2 }, then { $given } with a box.
g6-ratio-table-hint-times = Multiply both numbers of a pair by the same number.
g6-ratio-table-hint-factor = By how much is it multiplied? { $work }
g6-ratio-table-step-factor = In one row: { $work }.
g6-ratio-table-step-same = Do the same in the other row: { $work }.
g6-ratio-table-ask-plot-1 = { $a ->
    [one] For { $a } red bead
   *[other] For { $a } red beads
} there { $b ->
    [one] is always { $b } blue bead
   *[other] are always { $b } blue beads
}. Across: red. Up: blue. Mark the pair for { $given } red beads.
g6-ratio-table-ask-plot-2 = { $a ->
    [one] For { $a } cup of rice
   *[other] For { $a } cups of rice
} you need { $b ->
    [one] { $b } cup
   *[other] { $b } cups
} of water. Across: rice. Up: water. Mark the pair for { $given } cups of rice.
g6-ratio-table-ask-plot-3 = { $a ->
    [one] For { $a } egg
   *[other] For { $a } eggs
} you need { $b ->
    [one] { $b } spoon
   *[other] { $b } spoons
} of flour. Across: eggs. Up: spoons. Mark the pair for { $given } eggs.
g6-ratio-table-ask-mix-1 = Jug A has { $a ->
    [one] { $a } cup
   *[other] { $a } cups
} of juice and { $b } cups of water. Jug B has { $c ->
    [one] { $c } cup
   *[other] { $c } cups
} of juice and { $d } cups of water. Which one tastes more of juice?
g6-ratio-table-ask-mix-2 = Paint A has { $a ->
    [one] { $a } can
   *[other] { $a } cans
} of red and { $b } cans of white. Paint B has { $c ->
    [one] { $c } can
   *[other] { $c } cans
} of red and { $d } cans of white. Which one is more red?
g6-ratio-table-ask-mix-3 = Team A has won { $a ->
    [one] { $a } game
   *[other] { $a } games
} and lost { $b }. Team B has won { $c ->
    [one] { $c } game
   *[other] { $c } games
} and lost { $d }. Which one has more wins for each loss?
g6-ratio-table-hint-across = The first amount goes across. The second goes up.
g6-ratio-table-hint-same-amount = Make the second amount the same in both. Then compare the first.
g6-ratio-table-hint-for-one = Or find the first amount for 1 of the second: { $one } and { $two }.
g6-ratio-table-step-as-much = With the same second amount, the first is { $work }.
g6-ratio-table-step-mix-first = A has more of the first.
g6-ratio-table-step-mix-second = B has more of the first.
g6-ratio-table-step-mix-same = Both have the same amount of the first.
mix-first = A
mix-second = B
mix-same = Both are the same

g6-rate-problems-ask-1 = { $name } drives { $total } kilometers in { $n } hours at a steady speed. How many kilometers is that in { $given } hours?
g6-rate-problems-ask-1-time = { $name } drives { $total } kilometers in { $n } hours at a steady speed. How many hours does it take to drive { $given } kilometers?
g6-rate-problems-ask-2 = { $n } pens cost { $total } cents. How many cents do { $given } pens cost?
g6-rate-problems-ask-2-time = { $n } pens cost { $total } cents. How many pens can you get for { $given } cents?
g6-rate-problems-ask-3 = A pump moves { $total } liters in { $n } minutes. How many liters does it move in { $given } minutes?
g6-rate-problems-ask-3-time = A pump moves { $total } liters in { $n } minutes. How many minutes does it need for { $given } liters?
g6-rate-problems-ask-4 = { $name } earns { $total } dollars in { $n } hours. How many dollars is that in { $given } hours?
g6-rate-problems-ask-4-time = { $name } earns { $total } dollars in { $n } hours. How many hours does it take to earn { $given } dollars?
g6-rate-problems-ask-5 = A printer prints { $total } pages in { $n } minutes. How many pages does it print in { $given } minutes?
g6-rate-problems-ask-5-time = A printer prints { $total } pages in { $n } minutes. How many minutes does it need for { $given } pages?
g6-rate-problems-ask-6 = { $n } tickets cost { $total } dollars. How many dollars do { $given } tickets cost?
g6-rate-problems-ask-6-time = { $n } tickets cost { $total } dollars. How many tickets can you get for { $given } dollars?
g6-rate-problems-ask-buy = A pack of { $n } markers costs { $first } cents. A pack of { $k } of the same markers costs { $second } cents. Which pack costs less for each marker?
g6-rate-problems-hint-one = First find the amount for 1.
g6-rate-problems-hint-work = Work out { $work }.
g6-rate-problems-step-one = For 1: { $work }.

g6-percent-of-ask-1 = What is { $percent } of { $n }?
g6-percent-of-ask-2 = A tank holds { $n } liters. It is { $percent } full. How many liters are in it?
g6-percent-of-ask-3 = A trail is { $n } kilometers long. { $percent } of it is done. How many kilometers are done?
g6-percent-of-ask-4 = A bike costs { $n } dollars. A coupon takes off { $percent }. How many dollars does it take off?
g6-percent-of-ask-5 = A test has { $n } questions. { $percent } of them are done. How many questions are done?
g6-percent-of-ask-6 = A school has { $n } students. { $percent } of them come by bus. How many students come by bus?
g6-percent-of-hint-hundred = { $percent } means { $fraction }.
g6-percent-of-hint-bar = The bar stands for the whole amount.
g6-percent-of-hint-one = First find one hundredth: { $work }.
g6-percent-of-step-one = One hundredth: { $work }.

g6-percent-whole-ask-1 = { $part } is { $percent } of what number?
g6-percent-whole-ask-2 = { $part } students are { $percent } of a school. How many students are in the school?
g6-percent-whole-ask-3 = { $part } liters are { $percent } of what a tank holds. How many liters does the tank hold?
g6-percent-whole-ask-4 = { $part } pages are { $percent } of a book. How many pages does the book have?
g6-percent-whole-ask-5 = { $part } seats are { $percent } of a theater. How many seats does the theater have?
g6-percent-whole-ask-6 = { $part } trees are { $percent } of an orchard. How many trees are in the orchard?
g6-percent-whole-hint-part = { $percent } is { $part }. The whole is all of the hundredths.
g6-percent-whole-hint-one = { $one } is { $work }.
g6-percent-whole-step-one = { $one }: { $work }.
g6-percent-whole-step-hundred = { $all } is 100 times that: { $whole }.

g6-ratio-convert-ask-rate = Use { $rate }.
g6-ratio-convert-ask = How many { $to } are in { $given }?
g6-ratio-convert-hint-table = Make a table of equal ratios.
g6-ratio-convert-table = A table. First { $rate }. Then { $given } and a box.
g6-ratio-convert-step-multiply = For each large unit there is the same number of small ones. Multiply.
g6-ratio-convert-step-divide = Ask how many times the rate fits. Divide.
buy-first = The first pack
buy-second = The second pack
buy-same = Both cost the same for each
