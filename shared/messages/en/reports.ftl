## Words on printed pages.
report-page = Page { $page } of { $pages }
report-practice = Practice
report-name = Name
report-date = Date
report-number = No.
report-answer = Answer
report-key = Answer key: { $title }
report-remainder = remainder
report-fill-boxes = Write the numbers in the boxes.
report-write-sign = Write <, = or > in the circle.
report-order = Number them from 1 to { $count }. 1 is for: { $first }. { $count } is for: { $last }.
report-mark-line = Mark the point on the number line.
report-draw-line = Draw it on the number line.
report-mark-grid = Mark the point on the grid.
report-draw-side = Draw the other side of the angle.
report-shade = Shade the parts.
report-draw-graph = Draw the graph.
report-draw-squares = Shade the squares.

## The warm-up.
report-warm-up = Warm-up

## Self-rating charts.
report-day-chart = Class chart: day { $day }
report-day-chart-how = For each concept, write how sure the student is, from 0 to 3. A tick means right, a cross means wrong. The students are in the order of the screen Enter.
report-day-chart-summary = Students and the concepts of the day
report-chart = My self-ratings
report-chart-how = After the review, write how sure you are.
report-chart-more = Passes { $from } to { $to } follow on sheets of their own.
report-chart-summary = Self-ratings by pass: { $day }
report-own-view = This is your own view. It is not a grade.
report-day = Day { $day }
report-concept = Concept

## Dates and turns of phrase on reports.
report-on = { $month } { $day }, { $year }
report-month-1 = January
report-month-2 = February
report-month-3 = March
report-month-4 = April
report-month-5 = May
report-month-6 = June
report-month-7 = July
report-month-8 = August
report-month-9 = September
report-month-10 = October
report-month-11 = November
report-month-12 = December
report-seat = Seat { $seat }
report-slips = Join slips
report-total = Total
report-withheld = withheld
report-whole-class = Whole class
report-has-it = Has it
report-needs-more = Needs more
report-misconceptions = Common misconceptions
report-misconception-other = Another misconception
report-answers = { $count ->
    [one] { $count } answer
   *[other] { $count } answers
}
report-exercises = Exercises
report-no-reports = Nothing has been reported yet.
report-caution = A rating is a student's own view. It is not a grade and not a diagnosis.
report-trend-rising = rising
report-trend-falling = falling
report-trend-maybe-rising = perhaps rising
report-trend-maybe-falling = perhaps falling
report-trend-no-clear-change = no clear change
report-trend-too-soon = too soon to say
report-calibration-over = Feels surer than results show.
report-calibration-under = Feels less sure than results show.
report-calibration-near = About as sure as results show.
report-calibration-unclear = Not clear yet.
report-calibration-too-little = Too little to say.
report-col-rating = Last rating
report-col-result = Marked
report-col-practice = Alone / helped / wrong
report-col-seen = Teacher saw
report-col-likely = Likely has it
report-col-days = Days ago
report-col-share = Share that has it
report-col-trend = Trend
report-col-strand = Strand
report-col-class = Class
report-col-phase = Phase
report-col-raters = Students rating
report-col-low = Not yet or With help
report-col-high = On my own or Could teach it

## The family page.
report-family-title = How { $name } is doing in mathematics
report-family-title-no-name = How your child is doing in mathematics
report-family-what = Every mathematics lesson opens with a short review. After it, students say how sure they feel. This page shows which answer your child chose last.
report-family-well = What is going well
report-family-well-none = Nothing is listed here yet. It takes a few weeks.
report-family-time = What needs more time
report-family-time-none = Nothing was marked Not yet or With help lately.
report-family-practice = Practice at home
report-family-practice-none = No practice has been handed in yet.
report-family-help = How you can help
report-family-help-1 = Ask: "What can you show me today?" Let your child do the talking.
report-family-help-2 = Five to fifteen minutes on a few evenings is enough.
report-family-help-3 = When something is hard, "not yet" is a good answer. Please tell the teacher.
report-family-try = Something to try at home
report-family-try-place-value = Look for a long number on a bill or a box. Ask your child to read it aloud. Which digit is worth the most?
report-family-try-addition-subtraction = Choose two things in a shop. About how much do they cost together? Guess first, then add the prices.
report-family-try-multiplication = Put some spoons, beans or coins into equal rows. How many are there? Can your child make other equal rows of them?
report-family-try-fractions = Fold a sheet of paper into equal parts, or cut bread into them. What fraction is one part? What are three parts?
report-family-try-decimals = Compare two prices. Which one is more, and by how much? Let your child explain how to tell.
report-family-try-measurement = Guess how long a table is, or how long it takes to wash up. Then measure. How close was the guess?
report-family-try-geometry = Look for shapes in a room. Which sides are parallel? Where are right angles? Let your child show them.
report-family-try-data = Count something together for a few days, such as birds or cars. Let your child draw a chart and say what it shows.
report-family-try-statistics = Ask five people how many books they read last month. What is usual, and how far apart are the answers?
report-family-try-expressions = Think of a number, double it, add three, and say the result. Can your child find your number? Then change roles.
report-family-try-number-system = Look up the coldest and the warmest place today. How many degrees apart are they?
report-family-try-ratio = Take a recipe for two. How much of everything do four people need, or six? Cook it if you can.
report-family-note = From the teacher
report-family-caution = After the review, your child chooses one of four answers by a tap. The answers are your child's own view. They are not a grade and not a diagnosis. If you have questions, ask the teacher.

## The page of what was taught again.
report-taught-title = What was taught again
report-taught-title-of = What was tried with { $name }
report-taught-none = Nothing was noted as taught again.
report-taught-date = Day
report-taught-whom = With whom
report-taught-did = What was done
report-taught-came = What came of it

## The conference page.
report-conference-title = Talk with { $name }
report-conference-title-seat = Talk with seat { $seat }
report-conference-what = How to read the numbers:
report-conference-practice = Practice { $shown } is { $alone } right alone, { $helped } right with help, { $wrong } wrong.
report-conference-likely = Likely has it, { $shown }: of 100 students with reports like these, about { $count } can do it by themselves. It is an estimate and not a mark.
report-conference-days = Days ago counts from the newest report to today.
report-conference-needed = Needed most
report-conference-no-need = Nothing stands out: no concept needs more work now.
report-conference-best = Known best
report-conference-believe = How well the ratings fit the results
report-conference-agreed = What we agreed

## The class summary.
report-summary-title = Class summary
report-summary-range = The share that has it is an estimate; the likely range is in brackets. Weakest first.
report-summary-caution = For the teachers of this class. Small counts can point to a child: the school gets “Class table for the school” instead. A rating is a student's own view, not a grade and not a diagnosis.

## The share-safe table.
report-share-title = Class table for the school
report-share-what = How many students last rated themselves Not yet or With help, of those who rated. Only concepts that have been taught.
report-share-nothing = Nothing can be shown: fewer than { $least } students rated, or too few counts would be possible.
report-share-rules = How it was made
report-share-rule-group = Groups of fewer than { $least } students are withheld. There is no name and no seat in this table.
report-share-rule-further = Further counts are withheld, so that totals do not give small ones away.
report-share-rule-bands = Each share is shown as a band, so that no share can mean nobody or everybody.

## The group page.
report-group-title = Small group: { $concept }
report-group-members = Students of the group
report-group-who = Student
report-group-first = Look at first
report-group-noticed = What we noticed

## The talk plan.
report-talk-title = Today's talk
report-talk-none = No concept needs the few minutes today.
report-talk-teach-again = Teach it again
report-talk-pair-talk = Students explain it in pairs
report-talk-short-look = A short look together
report-talk-other = Also in today's review
report-substitute-title = For the substitute
report-substitute-day = Day { $day } of the rotation. After the review, these concepts are for the day. Those with minutes are worth a few words with the whole class.
report-substitute-no-day = There is no school day in the plan.
report-substitute-groups = Small groups
report-substitute-no-groups = No groups are planned. The whole class can work together.
report-substitute-kept = As they were kept on { $date }:
report-substitute-group = { $slot }. { $concept }: { $who }
report-substitute-tablets = Tablets and computers
report-substitute-rate = After the review, each student opens Surefoot and taps, for each concept, how sure they are and how it went.
report-substitute-practise = Who is done can open Practice. The program chooses the exercises and stops by itself.
report-substitute-hand-in = At the end, Hand in makes a file. It goes where it goes every day. Nobody has to open it today.
report-substitute-folder = At the end, nothing is to be handed in. The tablets do it by themselves.
report-substitute-pin = If a student forgot the PIN or the code, paper is fine. Please do not change settings.
report-substitute-none = Without a tablet: on a sheet of paper, write each student's name or seat number, and for each concept the answer from 0 (Not yet) to 3 (Could teach it).
report-substitute-projector = On the teacher's computer: Show today's review, below the passphrase, puts the exercises of the day on the projector.
report-substitute-caution = What students say of themselves is their own view and no grade. This page has names: please leave it in the teacher's drawer.
report-substitute-caution-seats = What students say of themselves is their own view and no grade. There are no names on this page.
report-substitute-next = The next school day, { $date }
report-substitute-noticed = What the teacher should know:

## My path.
report-path = My path
report-path-how = One column for each pass. Practice: right alone, of all answered.
report-path-practice = Practice
report-path-goals = My goals
report-path-goal = · { $goal }
report-path-goal-reached = · Reached: { $goal }

## Tables for other programs.
report-grid-board = Board
report-grid-summary = Class summary
report-grid-id = Concept id
report-grid-grade = Grade
report-grid-day = Day of the rotation
report-grid-rank = Rank
report-grid-share = Share that has it
report-grid-low = Likely range, low
report-grid-high = Likely range, high
report-grid-alone = Practice: alone
report-grid-helped = Practice: with help
report-grid-wrong = Practice: wrong
report-grid-rated = Pass { $pass }: rated
report-grid-needs = Pass { $pass }: Not yet or With help

report-family-practised = { $count ->
    [one] { $count } exercise so far: { $alone } right alone, { $helped } right with help, { $wrong } not right yet.
   *[other] { $count } exercises so far: { $alone } right alone, { $helped } right with help, { $wrong } not right yet.
}
report-conference-answers = { $count ->
    [one] { $verdict } ({ $count } answer with a rating before it)
   *[other] { $verdict } ({ $count } answers with a rating before them)
}
report-summary-what = { $reporting } of { $seats } students have handed in.
report-summary-other = { $count ->
    [one] { $count } concept is not taught yet or has no report.
   *[other] { $count } concepts are not taught yet or have no report.
}
report-share-audit = { $withheld ->
    [0] Nothing is withheld. For a protected count at least { $possible } values stay possible.
    [one] { $withheld } entry is withheld. Checked: for a protected count at least { $possible } values stay possible to whoever reads all of this table.
   *[other] { $withheld } entries are withheld. Checked: for a protected count at least { $possible } values stay possible to whoever reads all of this table.
}
report-talk-way = { $minutes ->
    [one] { $way }: { $minutes } minute.
   *[other] { $way }: { $minutes } minutes.
}
report-path-counts = { $rated ->
    [one] { $rated } rating
   *[other] { $rated } ratings
} and { $practised ->
    [one] { $practised } exercise
   *[other] { $practised } exercises
} this year.
report-share-too-few-changed = { $rows ->
    [one] This table cannot be handed out. Since an earlier table, fewer than { $least } students rated anew in its { $rows } row, or nearly all of them changed in the same way. The two tables together could give their ratings away. Wait until at least { $least } students have rated it on another day.
   *[other] This table cannot be handed out. Since an earlier table, fewer than { $least } students rated anew in each of { $rows } rows, or nearly all of them changed in the same way. The tables together could give their ratings away. Wait until at least { $least } students have rated the concept on another day.
}
report-share-unchanged = { $rows ->
    [one] { $rows } row is withheld: since an earlier table fewer than { $least } students rated it anew, or nearly all of them changed in the same way. It comes back when more have rated it on another day.
   *[other] { $rows } rows are withheld: since an earlier table fewer than { $least } students rated them anew, or nearly all of them changed in the same way. They come back when more have rated them on another day.
}

## What can be printed: names and uses, in the order of the table of reports.
report-name-sheet = Practice sheet
report-about-sheet = Exercises with fresh numbers from the concepts that you choose.
report-name-seat-sheet = Sheet for one student
report-about-seat-sheet = Up to six concepts for one student: what you assigned first, then what the reports say is needed most. For students without a device, or who would rather write.
report-name-warm-up = Warm-up
report-about-warm-up = One fresh exercise for each concept of a day, for a class without a review of its own or a day it failed. The same exercises as on the projector. Change them under Talk.
report-name-day-chart = Class chart of one day
report-about-day-chart = Every student with the concepts of one day, in the order of the screen Enter, to write in and then to enter quickly.
report-name-chart = Self-rating chart
report-about-chart = Every concept of the rotation, with room for a number from 0 to 3 in each pass. For students without a device; enter the numbers under Enter.
report-name-family = Family page
report-about-family = One page in plain words for the family of one student. No other student is named on it.
report-name-family-pages = Family pages for everyone
report-about-family-pages = A page in plain words for the family of every student who has reported, in one file.
report-name-conference = Page for a talk with a student
report-about-conference = Ratings, results, practice and what you saw, with room for what you agree on.
report-name-taught-again = What was taught again
report-about-taught-again = What was tried, with whom, and what came of it: for the class by concept, or for one student for a conference.
report-name-group = Small group
report-about-group = One page for a small group: who, what goes wrong, exercises, and what came of it.
report-name-talk = Today's talk
report-about-talk = The concepts that deserve the few minutes, each with an exercise and the common misconception. Without a name.
report-name-substitute = Substitute's page
report-about-substitute = One sheet for a substitute: the day, its concepts, the groups kept last, and what to do with tablets.
report-name-class-summary = Class summary
report-about-class-summary = Every concept with its estimate, ratings and practice. For the teachers of this class.
report-name-share-safe = Class table for the school
report-about-share-safe = Shares without a name, with small groups withheld and checked. Every table that is saved is noted. A later table withholds each row in which too little changed, because two tables together can give a student away.
report-name-workbook = Workbook (XLSX)
report-about-workbook = For spreadsheets, without a name. Small counts can point to a child: for the school, use the class table under Reports.
report-name-board-csv = Board (CSV)
report-about-board-csv = For spreadsheets, without a name. Small counts can point to a child: for the school, use the class table under Reports.
report-name-summary-csv = Class summary (CSV)
report-about-summary-csv = For spreadsheets, without a name. Small counts can point to a child: for the school, use the class table under Reports.
report-name-slips = Join slips
report-about-slips = A slip with a code for each student, to cut apart. With the class pack, it lets the student join.
