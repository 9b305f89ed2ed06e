part-factors = Factors
part-terms = Terms
part-coefficients = Coefficients
equal-always = Always equal
equal-not = Not always equal
equal-one-value = You need only one value to know they are always equal

g5-brackets-hint-first = Do what is in the brackets first.
g5-brackets-hint-inside = Start with { $work }.
g5-brackets-step-inside = Brackets: { $work }.
g5-brackets-step-times = Then multiply. Add or take away last.

g5-write-expressions-rule = Write the steps. Do not work it out.
g5-write-expressions-ask-1 = Add { $a } and { $b }. Then multiply by { $c }.
g5-write-expressions-ask-2 = Take { $b } away from { $a }. Then multiply by { $c }.
g5-write-expressions-ask-3 = Multiply { $a } by { $b }. Then add { $c }.
g5-write-expressions-ask-4 = Add { $a } and { $b }. Then divide by { $c }.
g5-write-expressions-ask-5 = Multiply { $b } by { $c }. Take that away from { $a }.
g5-write-expressions-ask-6 = Divide { $a } by { $b }. Then add { $c }.
g5-write-expressions-hint-order = What comes first? What comes then?
g5-write-expressions-hint-brackets = Put brackets around plus or minus when it comes before times.
g5-write-expressions-step-brackets = The first step goes in brackets.
g5-write-expressions-step-no-brackets = Times and divide come first without brackets.
g5-write-expressions-step-answer = { $text }

g5-two-patterns-head-place = Number
g5-two-patterns-head-x = First pattern
g5-two-patterns-head-y = Second pattern
g5-two-patterns-table = A table of the first three pairs. The second pair is { $x1 } and { $y1 }.
g5-two-patterns-ask = Two patterns start at { $start }. The first rule is: add { $a }. The second rule is: add { $b }.
g5-two-patterns-ask-pair = Make pairs: first pattern, second pattern. What is pair number { $n }?
g5-two-patterns-hint-first = Pair number 1 is { $pair }.
g5-two-patterns-step-x = First pattern: { $terms }.
g5-two-patterns-step-y = Second pattern: { $terms }.

g6-powers-hint-repeat = Multiply { $base } by itself. Write { $base } down { $exponent } times.
g6-powers-hint-long = Work out { $long }.

g6-evaluate-ask = What is { $expression } when { $value }?
g6-evaluate-ask-two = What is { $expression } when a is { $a } and b is { $b }?
g6-evaluate-hint-put = Put the number in place of the letter.
g6-evaluate-hint-beside = A number beside a letter or a bracket means times.
g6-evaluate-hint-power = Do the power first. Then multiply.
g6-evaluate-hint-brackets = Do what is in the brackets first.
g6-evaluate-step-put = With the number in place: { $work }.

g6-write-expressions-ask-1 = Write an expression: { $a } more than { $letter }.
g6-write-expressions-ask-2 = Write an expression: { $a } less than { $letter }.
g6-write-expressions-ask-3 = Write an expression: { $a } times { $letter }.
g6-write-expressions-ask-4 = Write an expression: { $letter } divided by { $a }.
g6-write-expressions-ask-5 = Write an expression: multiply { $letter } by { $a }, then add { $b }.
g6-write-expressions-ask-6 = Write an expression: add { $b } to { $letter }, then multiply by { $a }.
g6-write-expressions-ask-7 = Write an expression: take { $a } times { $letter } away from { $b }.
g6-write-expressions-ask-8 = Write an expression: take { $b } away from { $letter }, then divide by { $a }.
g6-write-expressions-hint-letter = { $letter } stands for a number.
g6-write-expressions-hint-try = Put 10 for { $letter }. What would you do with it?
g6-write-expressions-step-answer = { $text }

g6-expression-parts-ask-coefficient = What is the coefficient of { $letter } in { $expression }?
g6-expression-parts-ask-constant = Which number stands alone, without a letter, in { $expression }?
g6-expression-parts-ask-terms = How many terms does { $expression } have?
g6-expression-parts-ask-name-factors = Look at { $expression }. What are { $one } and { $two } to each other?
g6-expression-parts-ask-name-terms = Look at the brackets in { $expression }. What are { $one } and { $two } to each other?
g6-expression-parts-hint-terms = Terms are joined by plus or minus. Factors are multiplied.
g6-expression-parts-hint-coefficient = A coefficient is the number in front of a letter.
g6-expression-parts-step-coefficient = Look for the number in front of the letter.
g6-expression-parts-step-constant = Look for the term without a letter.
g6-expression-parts-step-terms = Count the parts between the plus signs.
g6-expression-parts-step-factors = Are they multiplied, or are they added?
g6-expression-parts-step-list = { $terms }

g6-equal-expressions-ask-expand = Write it without brackets. Join like terms.
g6-equal-expressions-ask-factor = Write it as a product. Put the greatest common factor in front.
g6-equal-expressions-ask-collect = Join like terms.
g6-equal-expressions-hint-both = Multiply each part in the brackets.
g6-equal-expressions-hint-first = Start with { $work }.
g6-equal-expressions-hint-common = Find the greatest number that divides both { $a } and { $b }.
g6-equal-expressions-hint-form = It looks like this: { $form }.
g6-equal-expressions-hint-like = Terms with { $letter } go together. Numbers go together.
g6-equal-expressions-hint-groups = Start with { $work }.
g6-equal-expressions-step-common = The greatest common factor is { $g }.

g6-equivalent-test-ask = Are { $left } and { $right } equal?
g6-equivalent-test-hint-try = Try { $letter } = { $value } in both.
g6-equivalent-test-hint-rewrite = One value cannot show it. Rewrite one of them.
g6-equivalent-test-step-brackets = Multiply each part in the brackets.
g6-equivalent-test-step-like = Join only terms with the same letter.
g6-equivalent-test-step-turned = Taking away the other way round gives another number.
g6-equivalent-test-step-yes = Both come to the same form. They are always equal.
g6-equivalent-test-step-no = They do not come to the same form. They are not always equal.

g6-variables-in-stories-ask-1 = One pen costs { $a } dollars. What do { $letter } pens cost in dollars?
g6-variables-in-stories-ask-2 = { $name } walked { $letter } miles. Today { $name } walks { $a } miles more. How many miles is that in all?
g6-variables-in-stories-ask-3 = { $name } has { $letter } marbles and gives away { $a }. How many are left?
g6-variables-in-stories-ask-4 = { $letter } stickers are shared by { $a } friends. All get the same. How many does each get?
g6-variables-in-stories-ask-5 = A boat costs { $a } dollars an hour and { $b } dollars once. What does it cost in dollars for { $letter } hours?
g6-variables-in-stories-ask-6 = { $name } has { $b } beads. Each of { $letter } strings takes { $a } beads. How many beads are left?
g6-variables-in-stories-ask-7 = Each bag has { $letter } red beads and { $b } blue beads. How many beads are in { $a } bags?
g6-variables-in-stories-hint-number = Think of a number for { $letter } first. What would you do?
g6-variables-in-stories-hint-same = Do the same steps with the letter.
g6-variables-in-stories-step-answer = { $text }

g6-test-solutions-ask-one = Which number makes it true? { $statement }
g6-test-solutions-ask-all = Which numbers make it true? { $statement } Choose all.
g6-test-solutions-hint-put = Put each number in place of x.
g6-test-solutions-hint-one = Try { $value } first. Is it too much or too little?
g6-test-solutions-hint-equal-not = Equal is not less.
g6-test-solutions-step-put = Put { $value } in place of x.
g6-test-solutions-step-try = For { $value } both sides are equal: { $work }.
g6-test-solutions-step-below = So all numbers less than { $value } fit.

g6-solve-equations-ask = Find { $letter }.
g6-solve-equations-hint-take = Take the same number away on both sides.
g6-solve-equations-hint-divide = Divide both sides by the number in front.
g6-solve-equations-hint-balance = What you do on one side, do on the other.
g6-solve-equations-step-check = Check: { $work }.

g6-inequalities-ask-1 = You must be over { $limit } inches tall. Your height is { $letter }. Write the inequality.
g6-inequalities-ask-2 = The walk takes less than { $limit } minutes. Its time is { $letter }. Write the inequality.
g6-inequalities-ask-3 = You must be { $limit } years old or older. Your age is { $letter }. Write the inequality.
g6-inequalities-ask-4 = A bag may hold { $limit } pounds or less. Its weight is { $letter }. Write the inequality.
g6-inequalities-ask-cold-1 = It was warmer than { $limit } degrees. The temperature is { $letter }. Write the inequality.
g6-inequalities-ask-cold-2 = It was colder than { $limit } degrees. The temperature is { $letter }. Write the inequality.
g6-inequalities-ask-graph = Show { $statement } on the number line.
g6-inequalities-hint-values = Try some numbers. Which fit?
g6-inequalities-hint-limit = Does { $limit } itself fit?
g6-inequalities-hint-circle = An open circle leaves the number out. A full circle takes it in.
g6-inequalities-step-more = { $letter } is on the side of numbers greater than { $limit }.
g6-inequalities-step-less = { $letter } is on the side of numbers less than { $limit }.
g6-inequalities-step-open = { $limit } does not fit. Use an open circle.
g6-inequalities-step-closed = { $limit } fits. Use a full circle.
g6-inequalities-step-right = The arrow goes right.
g6-inequalities-step-left = The arrow goes left.

g6-two-variables-head-t = Tickets (t)
g6-two-variables-head-c = Cost (c)
g6-two-variables-head-h = Hours (h)
g6-two-variables-head-d = Miles (d)
g6-two-variables-head-a = First age (a)
g6-two-variables-head-b = Second age (b)
g6-two-variables-head-n = Start (n)
g6-two-variables-head-p = Now (p)
g6-two-variables-table = A table with the pairs { $x1 } and { $y1 }, { $x2 } and { $y2 }, { $x3 } and { $y3 }.
g6-two-variables-ask-1 = Each ticket costs { $k } dollars. Write an equation for the cost { $y } of { $x } tickets.
g6-two-variables-ask-2 = A boat goes { $k } miles each hour. Write an equation for the miles { $y } in { $x } hours.
g6-two-variables-ask-3 = One tree is { $k } years older than another. The younger one is { $x } years old. Write an equation for the age { $y } of the older one.
g6-two-variables-ask-4 = You had { $x } shells and found { $k } more. Write an equation for the shells { $y } you have now.
g6-two-variables-ask-table-1 = The table shows tickets and cost. Write an equation for { $y } with { $x }.
g6-two-variables-ask-table-2 = The table shows hours and miles. Write an equation for { $y } with { $x }.
g6-two-variables-ask-table-3 = The table shows two ages. Write an equation for { $y } with { $x }.
g6-two-variables-ask-table-4 = The table shows shells before and now. Write an equation for { $y } with { $x }.
g6-two-variables-hint-one = What comes out when { $x } is 1?
g6-two-variables-hint-more = The second amount is always as much more.
g6-two-variables-hint-times = The second amount is always as many times as much.
g6-two-variables-step-one = For 1 it is { $work }.
