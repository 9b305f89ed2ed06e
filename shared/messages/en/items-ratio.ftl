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
g6-ratio-language-field-1-first = Cats
g6-ratio-language-field-1-second = Dogs
g6-ratio-language-field-1-all = All animals
g6-ratio-language-field-2-first = Red
g6-ratio-language-field-2-second = White
g6-ratio-language-field-2-all = All paint
g6-ratio-language-field-3-first = Nuts
g6-ratio-language-field-3-second = Dates
g6-ratio-language-field-3-all = All pieces
g6-ratio-language-hint-order = Keep the order of the words.
g6-ratio-language-hint-divide = Divide both numbers by the greatest number that goes into both.
g6-ratio-language-step-divide = Divide both by { $k }.

g6-unit-rate-ask-1 = { $n } kg of rice cost { $total } dollars. How many dollars does 1 kg cost?
g6-unit-rate-ask-2 = { $name } rides { $total } km in { $n } hours at a steady speed. How many km is that in 1 hour?
g6-unit-rate-ask-3 = A tap fills { $total } liters in { $n } minutes. How many liters is that in 1 minute?
g6-unit-rate-ask-4 = { $name } gets { $total } dollars for { $n } hours of work. How many dollars is that for 1 hour?
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

g6-rate-problems-ask-1 = { $name } drives { $total } km in { $n } hours at a steady speed. How many km is that in { $given } hours?
g6-rate-problems-ask-1-time = { $name } drives { $total } km in { $n } hours at a steady speed. How many hours does it take to drive { $given } km?
g6-rate-problems-ask-2 = { $n } pens cost { $total } cents. How many cents do { $given } pens cost?
g6-rate-problems-ask-2-time = { $n } pens cost { $total } cents. How many pens can you get for { $given } cents?
g6-rate-problems-ask-3 = A pump moves { $total } liters in { $n } minutes. How many liters does it move in { $given } minutes?
g6-rate-problems-ask-3-time = A pump moves { $total } liters in { $n } minutes. How many minutes does it need for { $given } liters?
g6-rate-problems-hint-one = First find the amount for 1.
g6-rate-problems-hint-work = Work out { $work }.
g6-rate-problems-step-one = For 1: { $work }.

g6-percent-of-ask-1 = What is { $percent } of { $n }?
g6-percent-of-ask-2 = A tank holds { $n } liters. How many liters are { $percent } of that?
g6-percent-of-ask-3 = A walk is { $n } km long. How many km are { $percent } of it?
g6-percent-of-hint-hundred = { $percent } means { $fraction }.
g6-percent-of-hint-bar = The bar stands for the whole amount.
g6-percent-of-hint-one = First find one hundredth: { $work }.
g6-percent-of-step-one = One hundredth: { $work }.

g6-percent-whole-ask-1 = { $part } is { $percent } of what number?
g6-percent-whole-ask-2 = { $part } students are { $percent } of a school. How many students are in the school?
g6-percent-whole-ask-3 = { $part } liters are { $percent } of a tank. How many liters does the tank hold?
g6-percent-whole-hint-part = { $percent } is { $part }. The whole is all of the hundredths.
g6-percent-whole-hint-one = { $one } is { $work }.
g6-percent-whole-step-one = { $one }: { $work }.
g6-percent-whole-step-hundred = { $all } is 100 times that: { $whole }.

g6-ratio-convert-ask-rate = Use 1 { $large } = { $rate } { $small }.
g6-ratio-convert-ask = How many { $to } are { $given } { $from }?
g6-ratio-convert-hint-table = Make a table of equal ratios.
g6-ratio-convert-table = A table. 1 { $large } goes with { $rate } { $small }. { $given } { $from } goes with a box.
g6-ratio-convert-step-multiply = For each large unit there is the same number of small ones. Multiply.
g6-ratio-convert-step-divide = Ask how many times the rate fits. Divide.
