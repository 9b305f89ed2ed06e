parity-even = Even
parity-odd = Odd
parity-unknown = You cannot know
number-prime = Prime
number-composite = Composite
ordinal-4 = fourth
ordinal-5 = fifth
ordinal-6 = sixth
ordinal-7 = seventh
written-hint-split = Split one number into its places: { $work }.
written-hint-area = Find each part. Then add the parts.
written-step-add = Add the parts.
written-step-divide = { $rest } ÷ { $by }: write { $quotient }. { $times }. { $left }.

g3-multiply-equal-groups-ask-1 = There are { $groups } bags. Each bag has { $each } marbles. How many marbles are there?
g3-multiply-equal-groups-ask-2 = There are { $groups } boats. Each boat has { $each } seats. How many seats are there?
g3-multiply-equal-groups-ask-3 = There are { $groups } plates. Each plate has { $each } plums. How many plums are there?
g3-multiply-equal-groups-ask-4 = There are { $groups } boxes. Each box has { $each } pens. How many pens are there?
g3-multiply-equal-groups-hint-groups = There are { $groups } groups of { $each }.
g3-multiply-equal-groups-hint-count = Count by { $each }.
g3-multiply-equal-groups-ask-mark = Show { $work } as equal rows. Mark the squares.
g3-multiply-equal-groups-ask-5 = There are { $groups } vases. Each vase has { $each } roses. How many roses are there?
g3-multiply-equal-groups-ask-6 = There are { $groups } shelves. Each shelf has { $each } books. How many books are there?
g3-multiply-equal-groups-hint-rows = It is { $groups } rows of { $each }.
g3-multiply-equal-groups-hint-under = Mark { $each } squares in a row. Put the next row right under it.
g3-multiply-equal-groups-step-rows = Make { $groups } rows.

g3-missing-factor-hint-family = Multiplying and dividing belong together. Use the fact you know.
g3-missing-factor-hint-figure = Which multiplication has these numbers?
g3-missing-factor-step-family = The fact is { $fact }.
g3-missing-factor-story-1 = { $name } fills { $a } bags. All have the same number of marbles. There are { $c } marbles in all: { $equation }. What number goes in the box?
g3-missing-factor-story-2 = { $a } vans carry { $c } children. Each van carries the same number: { $equation }. What number goes in the box?
g3-missing-factor-story-3 = { $name } reads for { $a } days, the same number of pages each day. That makes { $c } pages: { $equation }. What number goes in the box?
g3-missing-factor-story-1-groups = { $name } has { $c } marbles and puts { $a } in each bag. Find how many bags there are: { $equation }. What number goes in the box?
g3-missing-factor-story-2-groups = { $c } children ride in vans. Each van carries { $a } children. Find how many vans there are: { $equation }. What number goes in the box?
g3-missing-factor-story-3-groups = { $name } reads { $a } pages each day until page { $c }. Find how many days it takes: { $equation }. What number goes in the box?

g3-multiply-properties-hint-split = Split each of the { $rows } rows in two parts.
g3-multiply-properties-hint-cut = The cut is after { $first } in each row. How many are left in each row?
g3-multiply-properties-step-split = The two parts make the whole row: { $work }.
g3-multiply-properties-hint-any-order = You may multiply in any order.
g3-multiply-properties-hint-first-two = Multiply the first two numbers first.
g3-multiply-properties-hint-turned = Look at the factors of the fact you know. What is the same?
g3-multiply-properties-step-first-two = First: { $work }.
g3-multiply-properties-ask-turned = You know { $known }. What is { $asked }?
g3-multiply-properties-ask-turned-box = You know { $known }. What number goes in the box? { $asked }

g3-divide-as-missing-factor-ask = What is { $divide }? Think: { $times }.
g3-divide-as-missing-factor-story-1 = { $total } chairs are in { $by } equal rows. Think: { $times }. How many chairs are in each row?
g3-divide-as-missing-factor-story-2 = { $name } puts { $total } stickers on { $by } pages, the same number on each. Think: { $times }. How many stickers are on each page?
g3-divide-as-missing-factor-story-3 = { $total } players make { $by } equal teams. Think: { $times }. How many players are on each team?
g3-divide-as-missing-factor-ask-same = Which equation has the same missing number? { $divide }
g3-divide-as-missing-factor-hint-same = A division asks how often one number fits into another.
g3-divide-as-missing-factor-hint-think = Find the number that makes { $times } true.
g3-divide-as-missing-factor-hint-rows = Put { $total } dots in { $rows } rows. How many are in each row?
g3-divide-as-missing-factor-step-fact = You know { $fact }.

g3-facts-multiply-hint-groups = { $groups ->
    [one] Think of { $groups } group of { $each }.
   *[other] Think of { $groups } groups of { $each }.
}
g3-facts-multiply-hint-zero = Zero groups, or groups of zero, are 0 in all.
g3-facts-multiply-hint-one = One group of a number is that number.
g3-facts-multiply-hint-near = Start from a fact you know. Then add the rest.
g3-facts-multiply-hint-rows = { $rows } rows of { $each }, cut in two parts.
g3-facts-multiply-hint-rows-turned = Turn it around: { $rows } rows of { $each } are the same number. They are cut in two parts.
g3-facts-multiply-step-near = First part: { $work }.
g3-facts-multiply-step-rest = Second part: { $work }.

g3-facts-divide-hint-times = Think of the multiplication fact.
g3-facts-divide-hint-fact = Find the missing number: { $fact }.
g3-facts-divide-step-fact = You know { $fact }.

g3-multiply-by-tens-hint-tens = { $n } is { $tens ->
    [one] { $tens } ten
   *[other] { $tens } tens
}.
g3-multiply-by-tens-hint-fact = First work out { $fact }.
g3-multiply-by-tens-story-1 = A box holds { $n } crayons. How many crayons are in { $a } boxes?
g3-multiply-by-tens-story-2 = A bus has { $n } seats. How many seats do { $a } of these buses have?
g3-multiply-by-tens-story-3 = { $name } reads { $n } pages each week. How many pages is that in { $a } weeks?
g3-multiply-by-tens-story-4 = { $name } lays { $a } boards end to end. Each board is { $n } inches long. How many inches is that in all?
g3-multiply-by-tens-story-1-missing = { $a } boxes hold { $total } crayons. All boxes hold the same number. How many crayons are in each box?
g3-multiply-by-tens-story-2-missing = { $name } reads { $total } pages in { $a } weeks, the same number each week. How many pages is that each week?
g3-multiply-by-tens-hint-missing = Think of tens: the product is { $total } tens.
g3-multiply-by-tens-hint-missing-fact = First find how many tens: { $fact }.
g3-multiply-by-tens-step-fact = The fact is { $fact }.
g3-multiply-by-tens-step-tens = { $tens } tens are { $n }.

g3-divide-share-ask-1 = { $name } shares { $total } stickers among { $n } friends. All get the same. How many does each friend get?
g3-divide-share-ask-2 = { $total } pencils are put in { $n } cups. Each cup gets the same. How many are in each cup?
g3-divide-share-ask-3 = { $total } chairs stand in { $n } equal rows. How many chairs are in a row?
g3-divide-share-ask-4 = { $name } has { $total } beads and puts { $n } on each string. How many strings can { $name } fill?
g3-divide-share-ask-5 = { $total } eggs go into boxes of { $n }. How many boxes are filled?
g3-divide-share-ask-6 = { $total } players form teams of { $n }. How many teams are there?
g3-divide-share-ask-7 = { $total } apples are put in { $n } baskets. Each basket gets the same. How many apples are in each basket?
g3-divide-share-ask-8 = { $name } plants { $total } seeds in { $n } equal rows. How many seeds are in each row?
g3-divide-share-ask-9 = { $n } children share { $total } crayons. All get the same. How many crayons does each child get?
g3-divide-share-ask-10 = { $name } has { $total } photos and puts { $n } on each page. How many pages does { $name } fill?
g3-divide-share-ask-11 = { $total } students sit at tables of { $n }. How many tables are full?
g3-divide-share-ask-12 = A ribbon is { $total } inches long. { $name } cuts it into pieces of { $n } inches. How many pieces are there?
g3-divide-share-hint-share = Share among { $n }. How many does each get?
g3-divide-share-hint-group = Make groups of { $n }. How many groups are there?
g3-divide-share-hint-fact = Use a multiplication fact: { $fact }.

g3-multiply-divide-stories-ask-1 = There are { $a } rows of chairs with { $b } chairs in each row. How many chairs are there?
g3-multiply-divide-stories-ask-2 = { $name } buys { $a } packs of paper. Each pack has { $b } sheets. How many sheets is that?
g3-multiply-divide-stories-ask-3 = { $name } lays { $a } blocks in a line. Each block is { $b } inches long. How many inches long is the line?
g3-multiply-divide-stories-ask-4 = { $name } plants { $a } rows of beans with { $b } plants in each row. How many plants are there?
g3-multiply-divide-stories-ask-5 = A bus makes { $a } trips. It takes { $b } students on each trip. How many students does it take in all?
g3-multiply-divide-stories-ask-6 = { $name } reads { $b } pages each day for { $a } days. How many pages is that?
g3-multiply-divide-stories-ask-7 = { $total } plants stand in { $a } equal rows. How many plants are in each row?
g3-multiply-divide-stories-ask-8 = { $name } cuts { $total } inches of string into { $a } equal pieces. How many inches long is each piece?
g3-multiply-divide-stories-ask-9 = { $a } friends share { $total } shells. All get the same. How many shells does each get?
g3-multiply-divide-stories-ask-10 = { $name } puts { $total } books on { $a } shelves. Each shelf gets the same. How many books are on each shelf?
g3-multiply-divide-stories-ask-11 = { $total } muffins are baked in { $a } equal pans. How many muffins are in each pan?
g3-multiply-divide-stories-ask-12 = { $name } saves the same amount each week. In { $a } weeks it is { $total } dollars. How many dollars is that each week?
g3-multiply-divide-stories-hint-times = There are { $a } groups of { $b }.
g3-multiply-divide-stories-hint-divide = Make { $a } equal groups.
g3-multiply-divide-stories-hint-figure = Think of rows.
g3-multiply-divide-stories-hint-fact = Use a multiplication fact: { $fact }.

g3-two-step-stories-ask-1 = { $name } has { $have } cents and buys { $n } pens. Each pen costs { $each } cents. How many cents are left?
g3-two-step-stories-ask-2 = { $name } fills { $n } pages with { $each } stickers each. There are { $more } more stickers in a box. How many stickers are there in all?
g3-two-step-stories-ask-3 = { $name } picks { $one } red apples and { $two } green apples. They go into { $n } bags. Each bag gets the same. How many apples are in a bag?
g3-two-step-stories-ask-4 = { $name } puts { $total } cards in { $n } equal piles. Then { $name } takes { $used ->
    [one] { $used } card
   *[other] { $used } cards
} from one pile. How many cards are left in that pile?
g3-two-step-stories-hint-cost = First find what the pens cost.
g3-two-step-stories-hint-letter-left = Let m be the cents left: { $equation }.
g3-two-step-stories-step-left = Then take that from the money.
g3-two-step-stories-hint-groups = First find how many are in the groups.
g3-two-step-stories-hint-letter-all = Let m be all of them: { $equation }.
g3-two-step-stories-step-more = Then add the rest.
g3-two-step-stories-hint-join = First put the two amounts together.
g3-two-step-stories-hint-share = Share into { $n } equal parts.
g3-two-step-stories-hint-use = { $used ->
    [one] Then take { $used } away.
   *[other] Then take { $used } away.
}

g4-times-as-many-ask-1 = { $large } is how many times as many as { $small }?
g4-times-as-many-ask-2 = What number is { $n } times as many as { $small }?
g4-times-as-many-ask-3 = { $large } is { $n } times as many as a number. What is the number?
g4-times-as-many-hint-times = Comparing by times means multiplying.
g4-times-as-many-hint-bars = The long bar is made of short bars.
g4-times-as-many-hint-fact = Find the missing number.
g4-times-as-many-bars = One short bar. Under it, a bar of { $n } such parts.
g4-times-as-many-step-fact = The fact is { $fact }.
g4-times-as-many-step-answer = So { $large } is { $n } times as many as { $small }.

g4-comparison-stories-ask-1 = A ribbon is { $small } centimeters long. A rope is { $n } times as long. How many centimeters long is the rope?
g4-comparison-stories-ask-2 = { $name } has { $small } stamps. { $other } has { $n } times as many. How many stamps does { $other } have?
g4-comparison-stories-ask-3 = { $name } read { $large } pages. That is { $n } times as many as { $other } read. How many pages did { $other } read?
g4-comparison-stories-ask-4 = One shelf has { $large } books. Another shelf has { $small } books. The first shelf has how many times as many books?
g4-comparison-stories-ask-5 = { $name } has { $large } shells. { $other } has { $small } shells. How many more shells does { $name } have?
g4-comparison-stories-hint-times = The amounts are compared by times. Think of equal parts.
g4-comparison-stories-hint-more = The question asks how many more. Find the difference.
g4-comparison-stories-hint-bars = The long bar is made of short bars.
g4-comparison-stories-hint-fact = Find the missing number.
g4-comparison-stories-hint-gap = How far is it from one to the other?
g4-comparison-stories-bars = One short bar. Under it, a bar of { $n } such parts.
g4-comparison-stories-step-times = The amounts are compared by times.
g4-comparison-stories-step-more = The amounts are compared by how many more.

g4-multi-step-stories-ask-1-two = { $one } girls and { $two } boys ride in vans. Each van holds { $by } children. How many vans do they need?
g4-multi-step-stories-ask-2-two = { $name } has { $one } blue tiles and { $two } white tiles. Each picture takes { $by } tiles of any kind. How many whole pictures can { $name } make?
g4-multi-step-stories-ask-3-two = { $name } picks { $one } pears and then { $two } more. They go into boxes of { $by }. All boxes are full. How many pears are left over?
g4-multi-step-stories-hint-divide = Divide by { $by }. Look at what is left over.
g4-multi-step-stories-hint-rest-1 = Everyone needs a place. What about those left over?
g4-multi-step-stories-hint-rest-2 = Only whole ones count.
g4-multi-step-stories-hint-rest-3 = The question asks for what is left over.
g4-multi-step-stories-step-join = First put the two amounts together.
g4-multi-step-stories-step-divide = { $work } is { $quotient } remainder { $rest }.
g4-multi-step-stories-step-rest-1 = { $rest ->
    [one] The last one needs one more van. The answer is { $answer }.
   *[other] The last { $rest } need one more van. The answer is { $answer }.
}
g4-multi-step-stories-step-rest-2 = The rest do not make a whole one. The answer is { $answer }.
g4-multi-step-stories-step-rest-3 = The answer is what is left over: { $answer }.
g4-multi-step-stories-ask-share-1 = { $name } has { $n } boxes with { $each } pens each and gives { $used } pens away. The rest go to { $shares } rooms, the same number to each. How many pens does each room get?
g4-multi-step-stories-ask-share-2 = { $n } rows of { $each } plants grow in a garden. { $used } plants are sold. The rest are put in { $shares } beds, the same number in each. How many plants are in each bed?
g4-multi-step-stories-ask-share-3 = A farm packs { $n } boxes with { $each } melons each. { $used } melons are eaten. The rest go on { $shares } trucks, the same number on each. How many melons are on each truck?
g4-multi-step-stories-ask-earn-1 = { $name } has { $start } dollars, gets { $each } dollars in each of { $n } weeks, and spends { $spent } dollars. How many dollars are left?
g4-multi-step-stories-ask-earn-2 = A library has { $start } books. It gets { $each } new books in each of { $n } months and gives { $spent } books away. How many books does it have now?
g4-multi-step-stories-ask-earn-3 = A train has { $start } people on it. At each of { $n } stops, { $each } more get on. Then { $spent } get off. How many people are on it now?
g4-multi-step-stories-hint-all = First find how many there are in all.
g4-multi-step-stories-hint-then-share = Take away what is gone. Then share the rest by { $shares }.
g4-multi-step-stories-hint-more = How many come in all? Add them.
g4-multi-step-stories-hint-then-less = At the end some go. Take them away.

g3-number-patterns-ask-next = What number comes next? { $terms }
g3-number-patterns-ask-rule = What is the rule? { $terms }
g3-number-patterns-hint-each-gap = Check each gap, not only the first. Do the numbers grow?
g3-number-patterns-ask-parity = Is { $work } even or odd?
g3-number-patterns-ask-parity-box = There is a number in the box. Is { $work } even or odd?
g3-number-patterns-hint-gap = How far is it from one number to the next?
g3-number-patterns-hint-up = The rule is: add { $step }.
g3-number-patterns-hint-down = The rule is: take away { $step }.
g3-number-patterns-hint-pairs = An even number can be put in pairs.
g3-number-patterns-hint-last-digit = Look only at the last digits.
g3-number-patterns-hint-try-both = Put an even number in the box. Then put in an odd one.
g3-number-patterns-rule-odd-times-odd = An odd number times an odd number is odd.
g3-number-patterns-rule-even-times = An even number times any number is even.
g3-number-patterns-rule-same-plus = Two even numbers, or two odd numbers, have an even sum.
g3-number-patterns-rule-even-plus-odd = An even number plus an odd number is odd.
g3-number-patterns-step-check = Check: { $work }.
g3-number-patterns-step-unknown = One comes out even, the other odd. So you cannot know.

g4-factor-pairs-ask-which = Which of these are factors of { $n }? Choose all.
g4-factor-pairs-ask-count = How many factor pairs does { $n } have?
g4-factor-pairs-hint-rows = Put { $n } dots in equal rows. Which numbers of rows work?
g4-factor-pairs-hint-try = Try the numbers in order, from 1 on. Write the pairs.
g4-factor-pairs-step-all = { $pairs ->
    [one] There is { $pairs } pair in all.
   *[other] There are { $pairs } pairs in all.
}

g4-multiples-ask = Which of these are multiples of { $n }? Choose all.
g4-multiples-hint-count = Count by { $n }: { $count }, and so on.
g4-multiples-hint-divide = A multiple can be divided by { $n } with nothing left over.

g4-prime-composite-ask-one = Is { $n } prime or composite?
g4-prime-composite-ask-one-1 = { $name } says a number: { $n }. Is it prime or composite?
g4-prime-composite-ask-one-2 = { $name } lays { $n } tiles in equal rows. If only one row works, the number is prime. Is it prime or composite?
g4-prime-composite-ask-which = Which of these numbers are prime? Choose all.
g4-prime-composite-hint-two = A prime number has exactly two factors: 1 and itself.
g4-prime-composite-hint-rows = A composite number can be put in equal rows of two or more.
g4-prime-composite-step-try = No number from 2 up to half of it divides { $n }.
g4-prime-composite-step-prime = So { $n } is prime.
g4-prime-composite-step-composite = So { $n } is composite.
g4-prime-composite-step-not = { $n } is not prime: { $work }.
g4-prime-composite-step-primes = The prime numbers are { $primes }.

g4-pattern-rule-ask-add = A pattern starts at { $start }. The rule is: add { $by }. What is number { $place }, the { $ordinal } number?
g4-pattern-rule-ask-times = A pattern starts at { $start }. The rule is: multiply by { $by }. What is number { $place }, the { $ordinal } number?
g4-pattern-rule-hint-first = The first number is { $start }.
g4-pattern-rule-hint-next = Next: { $work }.
g4-pattern-rule-step-list = The numbers are { $terms }.
g4-pattern-rule-ask-feature = A pattern starts at { $start }. The rule is: add { $by }. What is true of its numbers?
g4-pattern-rule-hint-write = Write the first five numbers.
g4-pattern-rule-hint-digit = Look at the last digit of each.
g4-pattern-rule-step-even = Even plus even is even. So all are even.
g4-pattern-rule-step-odd = Odd plus even is odd. So all are odd.
g4-pattern-rule-step-turns = An odd number is added each time. So even becomes odd, and odd becomes even.
feature-even = They are all even
feature-odd = They are all odd
feature-turns = Even and odd take turns

g4-divide-one-digit-ask = Divide. Write what is left over as the remainder.
g4-divide-one-digit-hint-left = Start on the left. Divide one place at a time.
g4-divide-one-digit-hint-smaller = The remainder must be less than { $by }.
g4-divide-one-digit-step-check = Check: { $work }.

g5-divide-two-digit-hint-round = Round the divisor to { $round } to guess each digit.
g5-divide-two-digit-hint-tens = How many tens of the divisor fit? { $ten }.
g5-divide-two-digit-step-left = Start on the left. Divide one place at a time.
g5-divide-two-digit-step-check = Check: { $work }.
