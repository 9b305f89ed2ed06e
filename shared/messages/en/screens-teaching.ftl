## The screens a teacher works with in class: talk, groups, entering a day,
## ratings beside results.
tab-talk = Talk
tab-groups = Groups
tab-enter = Enter

## The board for a group, and its second part
board-parts = Parts of the board
board-part-board = Concepts
board-part-compare = Ratings and results
board-group-all = Whole class · choose a group …
board-group-some = { $count ->
    [one] Only { $count } student: { $who }
   *[other] Only { $count } students: { $who }
}
board-group-kept = { $date }: { $concept }
board-group-clear = Whole class
concept-pass = { $count ->
    [0] Pass { $pass }: nobody rated
    [one] Pass { $pass }: { $count } student rated
   *[other] Pass { $pass }: { $count } students rated
}
concept-pass-all = Close this pass
concept-seen = you saw:

## Ratings beside results
compare-title = Ratings and results
compare-lead = Where a student's ratings and results do not fit, a short talk helps.
compare-empty-title = Ratings and results will be compared here
compare-empty-words = Once students have rated concepts and marked or practiced them, this shows where results contradict the ratings.
compare-contradicted = Ratings that results contradict
compare-by = Order of the list
compare-by-concept = By concept
compare-by-student = By student
compare-since-words = Counted from the last rating on, where one kind of answer leads and came at least twice. Help counts as wrong.
compare-none = No ratings are contradicted at the moment.
compare-concept-sure = { $count ->
    [one] One student says sure and gets it wrong
   *[other] { $count } students say sure and get it wrong
}
compare-concept-unsure = { $count ->
    [one] One student can do it and does not trust it
   *[other] { $count } students can do it and do not trust it
}
compare-student-sure = Says sure, gets it wrong: { $concepts }.
compare-student-unsure = Can do it, does not trust it: { $concepts }.
compare-student-over = Over all answers of the year: says sure more often than is right.
compare-student-under = Over all answers of the year: can do more than the ratings say.
compare-statistics = The statistics, and what they mean
compare-means-bias = Forecast minus result says how many more answers of 100 the ratings promise than came out right. Near 0 is best.
compare-means-gamma = Gamma says whether surer answers were more often right: 1 always, 0 no more than by chance.
compare-means-brier = The Brier score says how far the ratings are from what came out: 0 is perfect, { $half } is no better than always saying half.
compare-since = { $right } right, { $wrong } wrong
compare-more = Show all { $count }
compare-fewer = Show fewer
compare-misconceptions-left-out = { $count ->
    [one] One rarer misconception is not listed.
   *[other] { $count } rarer misconceptions are not listed.
}
compare-misconceptions = Common misconceptions
compare-misconceptions-none = No misconception has been recognized in practice yet.
compare-students = How well each student's ratings fit the results
compare-students-words = Each rating is read as a forecast of right answers in 100: Not yet 10, With help 40, On my own 80, Could teach it 95. From 20 answers on, forecast minus result is shown with its 95% range. From 60 on, the Brier score is shown: 0 for perfect forecasts, 1 for the worst. It is reliability minus resolution plus uncertainty.
compare-col-verdict = In short
compare-col-bias = Forecast minus result, in 100
compare-col-gamma = The surer, the more often right (gamma)
compare-col-brier = Brier score
compare-brier-parts = reliability { $reliability }, resolution { $resolution }, uncertainty { $uncertainty }
compare-col-answers = Answers
compare-bias = { $bias } ({ $low } to { $high })
compare-verdict-over = Feels surer than results show
compare-verdict-under = Feels less sure than results show
compare-verdict-near = About as sure as results show
compare-verdict-unclear = Not clear yet
compare-verdict-too-little = Too little to say
compare-agreement = Your observations beside the ratings
compare-agreement-none = None of your observations has a rating of the same pass yet.
compare-agreement-caption = Rows: the student's rating. Columns: what you saw in the same pass.
compare-kappa = Weighted kappa { $kappa } (standard error { $error }) from { $pairs } pairs: 0 is agreement by chance, 1 is full agreement.
compare-kappa-little = { $pairs ->
    [one] { $pairs } pair so far. A weighted kappa is shown from 10 on.
   *[other] { $pairs } pairs so far. A weighted kappa is shown from 10 on, and only where ratings differ.
}
compare-observe = Note observations
student-assign = { $count ->
    [0] Nothing to assign
    [one] Assign practice on { $count } concept
   *[other] Assign practice on { $count } concepts
}
student-back-concept = Concept
student-bias = forecast minus result: { $bias } in 100 ({ $low } to { $high }), from { $answers } answers
student-answers = { $answers ->
    [one] { $answers } answer with a rating before it
   *[other] { $answers } answers with a rating before them
}
student-col-rating = Last rating
student-col-result = Last result
student-col-seen = You saw
student-without = { $count ->
    [one] There is no report on { $count } more concept.
   *[other] There is no report on { $count } more concepts.
}

## Talk
talk-title = Talk
talk-today = Today is day { $day } of the rotation.
talk-next = No school today. This is for { $date }, day { $day }.
talk-second = This is for { $date }, day { $day }.
talk-over = The school year is over.
talk-days = Which school day
talk-have = Minutes available
talk-minutes = { $minutes } min
talk-chosen = { $count ->
    [one] This one deserves the minutes ({ $minutes } min)
   *[other] These deserve the minutes ({ $minutes } min)
}
talk-none = No concept of today needs the minutes more than the review itself does.
talk-unknown = Nothing can be said yet: no concept of this day has been taught and reported on.
talk-others = The day's other concepts
talk-empty-title = This day has no concepts
talk-empty-words = The talk plan takes the concepts of the day's review. This day has none.
talk-way-teach-again = Teach it again
talk-way-pair-talk = Explain it in pairs
talk-way-short-look = A short look together
talk-why-wrong = { $count ->
    [0] Almost all of those here would get it right.
    [1] About 1 of those here would get it wrong.
   *[other] About { $count } of those here would get it wrong.
}
talk-why-sure = { $count ->
    [1] About 1 of them feels sure. A wrong answer that surprises is remembered.
   *[other] About { $count } of them feel sure. A wrong answer that surprises is remembered.
}
talk-why-falling = Ratings are falling.
talk-why-dependants = { $count ->
    [one] { $concepts } builds on it within ten school days.
   *[other] { $concepts } build on it within ten school days.
}
talk-why-misconception = Most common misconception: { $misconception }.
talk-why-lately = It was talked about in this pass or the last, so it counts half.
talk-why-preview = Not taught yet: "Not yet" is to be expected.
talk-why-order = This goes by the order of the ratings alone. How many can do it is not known yet: let them explain it in pairs and listen.
talk-why-no-report = No report yet: ask the class first.
talk-show = Show on the projector
talk-talked = Talked about
talk-foot = Assumed: teaching again puts 45 of 100 wrong answers right, explaining in pairs 50, a short look 30. Under these numbers no other choice of at most two concepts does more. The projector shows no name.
talk-foot-order = There are too few results and too little practice to say how many students can do a concept. The plan goes by the order of the concepts alone: the weakest first, two minutes each. The projector shows no name.
talk-misconception = Someone answered
talk-misconception-ask = How could somebody get this answer?
talk-answer = The answer
talk-steps = Step by step
talk-next-misconception = A common misconception
talk-next-answer = The answer
talk-next-steps = Step by step
talk-next-concept = Next concept
talk-place = { $at } of { $of }
talk-no-exercise = There is no exercise for this concept. Take one from the review.

## The warm-up, part of Talk.
warm-up-title = Warm-up
warm-up-lead = For a class without a review of its own, or a day it failed: one fresh exercise for each concept of the day. The projector and the paper have the same ones. The next pass brings new numbers.
warm-up-day = School day
warm-up-today = Today
warm-up-show-one = Show one at a time
warm-up-show-all = Show all at once
warm-up-print = Print
warm-up-enter = Enter the results
warm-up-none = This day has no concepts.
warm-up-all-out = Every concept is left out. Put one back in to show or print it.
warm-up-is-out = Left out of this warm-up.
warm-up-swap = Another exercise
warm-up-swap-of = Another exercise: { $title }
warm-up-out = Leave out
warm-up-out-of = Leave out: { $title }
warm-up-in = Put back in
warm-up-in-of = Put back in: { $title }
warm-up-which = Exercise
warm-up-usual = A built-in exercise
warm-up-changed = The exercise was changed: { $title }
warm-up-left-out = Left out of the warm-up: { $title }
warm-up-back = Back in the warm-up: { $title }
warm-up-show-answers = Show the answers
warm-up-hide-answers = Hide the answers

## Groups
groups-title = Groups
groups-lead = Who would gain most by sitting together on what, from the weakest concepts that have been taught.
groups-empty-title = Groups will be suggested here
groups-empty-words = Once hand-ins are in and a concept has been taught, Surefoot suggests who sits together on what.
groups-wishes = { $slots ->
    [one] { $slots } round
   *[other] { $slots } rounds
}, up to { $at_once } groups at once, { $least } to { $most } students, { $absent ->
    [0] nobody absent
   *[other] { $absent } absent
}
groups-slots = Rounds
groups-at-once = Groups at once
groups-size-least = Fewest in a group
groups-size-most = Most in a group
groups-fault-slots = Choose 1 to 6 rounds.
groups-fault-at-once = Choose 1 to 12 groups at once.
groups-fault-size = Choose 1 to 12 students, the fewest not above the most.
groups-absent = Absent today
groups-apart = Keep apart
groups-together = Keep together
groups-pair-first = First student
groups-pair-second = Second student
groups-pair-choose = Choose …
groups-pair-add = Add
groups-pair = { $first } and { $second }
groups-pair-remove = Take out: { $pair }
groups-suggest = Suggest groups
groups-suggest-anew = Suggest again
groups-first = Groups on “{ $concept }” come first.
groups-first-drop = Plan all concepts alike
groups-shares = Show how likely each has it
groups-shares-hide = Hide how likely each has it
groups-keep = Keep for today
groups-drop = Discard the suggestion
groups-dropped = The suggestion was discarded.
groups-anew = New groups were suggested. Your changes by hand are gone.
groups-pair-kept = { $pair }: noted.
groups-pair-gone = { $pair }: no longer noted.
groups-kept = The groups are kept for today. Afterwards, record who has it.
groups-reached = { $placed } of { $need } students who need a group have a place.
groups-reached-order = { $placed } of the { $need } students with the weakest ratings have a place. There are too few results and too little practice to say who needs a group.
groups-best = No other plan under these wishes is better: this is proved.
groups-gap = At most { $gap }% from the best possible plan.
groups-rough = How good it is has not been proved.
groups-proving = Checking how good it can get …
groups-breaks = { $count ->
    [one] It breaks one rule:
   *[other] It breaks { $count } rules:
}
groups-none = Nobody needs a group under these wishes, or no group can be formed.
groups-slot = Round { $slot }
groups-idle = { $count ->
    [one] { $count } student without a group in this round
   *[other] { $count } students without a group in this round
}
groups-wants = needs a group
groups-wants-order = among the weaker ratings
groups-unplaced = { $count ->
    [one] No place was found for { $who }.
   *[other] No place was found for { $who }.
}
groups-concept = Concept of the group
groups-page = One-page plan
groups-move = Move …
groups-move-of = Move { $name }
groups-move-to = Round { $slot }: { $concept }
groups-move-out = Out of the group
groups-move-new = New group in this round on
groups-moved = { $name } was moved.
groups-worth-less = The plan helps { $percent }% less than before.
groups-worth-more = The plan helps { $percent }% more than before.
groups-worth-same = The plan helps as much as before.
groups-concept-changed = A group in round { $slot } has another concept.
groups-broken-size = Round { $slot }, { $concept }: { $count } students; you wished { $least } to { $most }.
groups-broken-not-needed = { $who } does not need { $concept }.
groups-broken-absent = { $who } is absent today.
groups-broken-twice-in-slot = { $who } sits in two groups in round { $slot }.
groups-broken-twice-on-concept = { $who } is twice on { $concept }.
groups-broken-apart = { $who } are to be kept apart.
groups-broken-split = { $who } are to be kept together (round { $slot }).
groups-broken-too-many-groups = Round { $slot } has more than { $at_once } groups.
groups-broken-too-many-copies = Round { $slot } has more than two groups on { $concept }.
groups-broken-no-such-slot = There is no round { $slot } in the wishes.
groups-today = Groups of today
groups-earlier = Earlier groups
groups-recorded = · { $done } of { $of } recorded
groups-record-words = One tap each. The estimate counts it like four answers, and notes the concept as taught again. A second tap takes the record back.
groups-record-of = What came of it for { $name }
groups-has-it = Has it
groups-needs-more = Needs more
groups-remove = Remove these groups
groups-removed = The groups were removed. What was recorded stays.
groups-page-members = Who
groups-page-chance = · has it: { $share }
groups-page-first = Look at this first
groups-page-lacking = { $count ->
    [one] { $who } may lack it.
   *[other] { $who } may lack it.
}
groups-page-look = What to look for
groups-page-no-misconceptions = No misconception of these students has been recognized on this concept yet. Let them explain their steps.
groups-page-exercises = Exercises, from first steps to a stretch
groups-page-answer = Answer:
groups-page-misconception = Misconception ({ $misconception }):

## Entering a day
enter-title = Enter a day
enter-day = Day { $day } of the rotation
enter-no-school = No school on this day
enter-date = Go to a date
enter-earlier = Day before
enter-later = Day after
enter-empty-title = This day has no concepts
enter-empty-words = Paper charts and observations belong to a day of the review. Go to a school day.
enter-modes = What is entered
enter-mode-rating = Ratings from paper
enter-mode-outcome = Results from paper
enter-mode-seen = What I saw
enter-tally = { $done } of { $all } cells
enter-saving = · saving …
enter-keys-rating = Keys 0 to 3 fill a cell and go on; arrows move; Enter goes to the next student; Delete clears.
enter-keys-outcome = Key 1 is right, 0 is wrong, 2 is not done; arrows move; Enter goes to the next student; Delete clears.
enter-keys-seen = Keys 0 to 3 note what you saw, on the students' own scale. Their rating is beside it.
enter-foot-rating = Slanted numbers come from a device. Paper overrides them; clear a cell to see them again.
enter-foot-outcome = Slanted words come from a device. Paper overrides them; clear a cell to see them again.
enter-foot-seen = Observations count in the estimate as results: On my own and Could teach it as right, the others as wrong. "Ratings and results" under Board shows how they agree with the ratings.
enter-grid = Students by concepts
enter-pad = Fill the chosen cell
enter-clear = Clear
enter-cell-empty = empty
enter-cell-device = { $what }, from the device
enter-cell-both = { $seen }; student: { $own }
talk-marked = Noted as talked about: { $title }
talk-unmarked = No longer noted as talked about: { $title }
groups-record-kept = The record is kept and counts from now on.
rotation-check-once = { $concepts } concepts, each on one day.
rotation-check-load = Load: { $least } to { $most } concepts a day.
rotation-check-strands = Strands: each is spread over the days as evenly as possible.
rotation-check-strands-uneven = Strands that crowd on some days: { $strands }.
rotation-check-strand = { $strand } ({ $least } to { $most } a day)
rotation-balance = Spread evenly again
rotation-balanced = The concepts are spread evenly over { $days } days.
pacing-title = Paste a pacing list
pacing-label = Pacing list
pacing-hint = On each line a concept and when it is first taught. The concept is its title or the code of a standard; the time is a date such as 9/8, 8 Sep or September 14, a week such as Week 3, or "last year". A date alone on a line counts for the lines under it. You see what was understood before it is taken.
pacing-read = Check the list
pacing-found = { $count ->
    [0] No first lesson was found.
    [one] One first lesson was found. Nothing is changed yet.
   *[other] { $count } first lessons were found. Nothing is changed yet.
}
pacing-missed = { $count ->
    [one] One line cannot be used:
   *[other] { $count } lines cannot be used:
}
pacing-before = (now { $date })
pacing-day-first = The day comes first: 9/8 is the ninth of August
pacing-last-year = (taught last year, so it counts from the first day)
pacing-near = { $count ->
    [one] One line is close to a title. Choose what it means:
   *[other] { $count } lines are close to a title. Choose what each means:
}
pacing-near-none = Leave this line out
pacing-no-such-concept = No concept has this name or one close to it.
pacing-not-in-rotation = This concept is not in the rotation. Add it there first.
pacing-no-date = There is no date on the line or above it.
pacing-outside-year = The date is outside the school year.
pacing-twice = The concept is further up already.
pacing-set = { $count ->
    [one] Set this first lesson
   *[other] Set these { $count } first lessons
}
pacing-done = { $count ->
    [one] One first lesson was set.
   *[other] { $count } first lessons were set.
}
concept-trend-test = { $slope ->
    [0] No change
   *[other] { $slope } of a rating step
} a pass (95% range { $low } to { $high }), over { $passes } passes; p = { $p }. Each student is compared with themselves. { $concepts } concepts were tested. About one in ten of those called rising or falling is called so by chance.
concept-trend-few = { $passes } passes with three raters or more so far; it needs six.
enter-keys-row = Shift with a key fills in the rest of the student's line.

## The day of the class
day-title = Day of the class
day-number = Day { $day }
day-of = of { $days }, pass { $pass } of { $passes }
day-none = No school
day-next = Next: { $date }, day { $day }
day-over = There is no school day ahead.
day-close = No school today
day-open = School today after all
day-closed = { $date }: no school. The rotation waits a day. What was reported stays.
day-opened = { $date }: school again. The rotation is back where it was.
day-tell-folder = The devices learn it from the class folder.
day-tell-elsewhere = It stays on this computer: another one saves the packs. Tell its teacher, or save the packs here.
day-other = Another date
day-other-date = Date
day-other-open = School again on this date
day-half = On a half day without the review, close the day too. The rotation then waits.
day-unaware = { $count ->
    [one] By the last hand-in, one student’s device does not know these days: { $names }.
   *[other] By their last hand-ins, { $count } students’ devices do not know these days: { $names }.
}
day-unheard = { $count ->
    [one] One seat has not handed in, so it is not counted here.
   *[other] { $count } seats have not handed in, so they are not counted here.
}
day-unaware-file = These devices need the new class pack. Until then a student can say the day on Today.
day-unaware-folder = Devices take the new pack from the class folder when they are next opened, and then tell the desk. Until then a student can say the day on Today.
day-unaware-elsewhere = Another computer saves the packs of this class: tell its teacher, or save the packs here. Until then a student can say the day on Today.
day-more = { $count } more

## Who has not
who-title = Who has not
who-days = List seats without a hand-in for
who-days-option = { $days ->
    [one] one school day
   *[other] { $days } school days
}
who-copy-all = Copy the list
who-copy = Copy the reminder
who-copied = Copied.
who-not-copied = The system did not let the program copy. Mark the words and copy them.
who-no-pack = Nobody is waited for yet. Save a class pack and give it out first.
who-no-pack-folder = Nobody is waited for yet. The first class pack goes to the class folder by itself.
who-none = Nothing is missing.
who-read-out = To read out:
who-please = Please hand in today: { $names }.
who-nobody = Not known who
who-quarantined = Another device waits for your decision: { $signs }. It came on { $date } and brought { $handins ->
    [one] one hand-in.
   *[other] { $handins } hand-ins.
}
who-damaged-known = The file { $file } could not be read on { $date }. An earlier file of this name came from this seat. Ask for a new hand-in.
who-damaged = { $files ->
    [one] One file could not be read on { $date }: { $file }. Ask who is missing, and for a new hand-in.
   *[other] { $files } files could not be read, the last on { $date }: { $file }. Ask who is missing, and for new hand-ins.
}
who-not-joined = { $count ->
    [one] One seat has never handed in: { $names }. Perhaps the student has not joined yet.
   *[other] { $count } seats have never handed in: { $names }. Perhaps these students have not joined yet.
}
who-late = Handed in last on { $date }, { $days ->
    [one] one school day ago.
   *[other] { $days } school days ago.
} Ask for a new hand-in.
who-old-pack = Has class pack { $version }, by the hand-in of { $date }. The newest is { $newest }.
who-old-pack-none = Has no pack of this class yet, by the hand-in of { $date }. The newest is { $newest }.
who-old-pack-days = Has class pack { $version }, by the hand-in of { $date }. Its days are not those of the class. The newest is { $newest }.
who-everybody = All devices
who-pack-with-nobody = Class pack { $newest } is with nobody yet.
who-give-out = Give it out.
who-give-file = Give it out again.
who-give-folder = The device takes it from the class folder when it is next opened.
who-give-elsewhere = The computer that saves the packs gives it out.
who-show-device = Show the device
who-slips = { $count ->
    [one] Print the slip
   *[other] Print their slips
}
who-all = Show all { $count }
who-fewer = Show fewer
