## The student's screens.
student-tabs = Parts of your tracker
student-today = Today
student-practice = Practice
student-path = My path
student-handin = Hand in
student-settings = Settings
student-settings-of = { $name }: settings

today-title = Today
today-day = Day { $day } of { $days }
today-rate = How well do you know { $title }?
today-outcome = How did { $title } go?
today-preview = Preview
today-preview-note = Preview: your class has not learned this yet. Not yet is just fine.
today-left = { $left ->
    [one] { $left } more to mark
   *[other] { $left } more to mark
}
today-done = All marked. Your check-in is saved.
today-saved-note = Each tap is saved right away.
today-last = Last time: { $rating }
today-no-school = No school today
today-no-school-next = Your next school day is { $date }.
today-no-school-over = There is no school day ahead. You can still practice.
today-to-practice = Practice now
today-catch-up = Missed days
today-catch-up-note = You can fill them in, or leave them.
today-other-day = This is { $date }.
today-back = Back to today

practice-title = Practice
practice-worked = First, read this one
practice-now-you = Now it is your turn
practice-sure = How sure are you?
practice-check = Check my answer
practice-hint = { $left ->
    [one] Hint ({ $left } left)
   *[other] Hint ({ $left } left)
}
practice-hint-label = Hint { $number }
practice-show-steps = Show me the steps
practice-right = Yes, that is right.
practice-right-hand = You got there.
practice-wrong-more = Not quite. You have one more try.
practice-wrong = Not this time. Here is how it goes.
practice-shown = Here is how it goes.
practice-answer = Answer
practice-steps = Steps
practice-see-steps = See the steps
practice-next = Next one
practice-stop = Stop for now
practice-fill = Fill in your answer first.
practice-time = { $done } of { $planned } min
practice-time-label = Tonight: { $done } of { $planned } minutes
practice-ahead = Coming up
practice-nothing = No practice yet
practice-nothing-text = First mark your concepts in Today. Then practice that fits you stands here.
practice-to-today = Go to Today
practice-over = Done for tonight
practice-over-text = { $finished ->
    [one] You finished { $finished } exercise in { $minutes } min.
   *[other] You finished { $finished } exercises in { $minutes } min.
}
practice-over-none = You can come back any time. Nothing is lost.
practice-alone = On your own: { $count }
practice-with-help = With a hint or a second try: { $count }
practice-you-said = You marked it
practice-you-thought = You thought
practice-you-did = You did
practice-did = { $right } of { $count } on your own
practice-more = Practice more
practice-finish = Finish

answer-box = Your answer
answer-top = Top number
answer-bottom = Bottom number
answer-whole = Whole number
answer-hour = Hour
answer-minute = Minutes
answer-hours = Hours
answer-amount = Amount in dollars
answer-x = Across
answer-y = Up
answer-quotient = Whole-number part
answer-remainder = Left over
answer-degrees = Degrees
answer-expression = Your expression
answer-equation = Your equation
answer-am = Before noon
answer-pm = After noon
answer-half-day = Time of day
answer-pad = Number pad
answer-erase = Erase
answer-clear = Clear
answer-next-box = Next box
answer-choose = Choose one
answer-choose-all = Choose all that fit
answer-sign = Choose the sign
answer-choice = Choice { $number }
answer-order = Put them in order
answer-earlier = Move { $thing } earlier
answer-later = Move { $thing } later
answer-place = Place { $place } of { $places }
answer-line-less = One step left
answer-line-more = One step right
answer-line-at = The point is at { $at }
answer-line-none = Tap the line to put the point
answer-ray-open = Empty circle: the point does not belong
answer-ray-closed = Filled circle: the point belongs
answer-ray-left = To the left
answer-ray-right = To the right
answer-ray-end = End point
answer-ray-way = Direction
answer-turn-less = Turn back
answer-turn-more = Turn on
answer-turn-at = { $degrees } degrees
answer-shade = Tap the parts to shade them
answer-part = Part { $part }
answer-shaded-count = { $count } of { $parts } parts shaded
answer-taller = More for { $column }
answer-shorter = Less for { $column }
answer-height = { $column }: { $value }
answer-squares = Tap squares to mark them
answer-square = Row { $row }, column { $column }
answer-squares-count = { $count ->
    [one] { $count } square marked
   *[other] { $count } squares marked
}
answer-grid = Tap the grid to put the point
answer-point = across { $x }, up { $y }

path-title = My path
path-lead = Your year so far. These are your own marks, not grades.
path-counts = { $rated } marks · { $practised } exercises
path-pass = Pass { $pass }
path-passes = Your marks, pass by pass
path-focus = My focus
path-focus-text = Choose up to three concepts to work on.
path-focus-add = Work on { $title }
path-focus-remove = Stop working on { $title }
path-focus-full = You have three. Take one out first.
path-practice = Practice
path-practice-of = Practice { $title }
path-results = { $alone } of { $answered } on your own
path-no-results = No practice yet
path-concept = Concept
path-print = Print my path
path-last = Now
path-empty = Your path starts with your first check-in
path-empty-text = Mark the concepts of a school day. They will stand here.

handin-title = Hand in
handin-lead = Make a sealed file for your teacher. Only your teacher can open it.
handin-class = For { $class }
handin-holds = What it holds
handin-holds-check-ins = { $check_ins ->
    [one] { $check_ins } mark from { $days } days
   *[other] { $check_ins } marks from { $days } days
}
handin-holds-answers = { $answers ->
    [one] Counts of { $answers } exercise
   *[other] Counts of { $answers } exercises
}
handin-holds-seat = Your seat code
handin-not = What it does not hold
handin-not-name = Your name, nickname, or picture
handin-not-answers = What you typed as answers
handin-not-time = The time of day
handin-make = Make my file
handin-made = Your file is made
handin-made-place = It is here: { $place }
handin-made-file = File: { $file }
handin-not-saved = You went back. No file was made. Nothing is lost.
handin-last = You made the last one on { $date }.
handin-new = { $new ->
    [0] Nothing new since then.
    [one] { $new } new entry since then.
   *[other] { $new } new entries since then.
}
handin-never = You have not made one yet.
handin-again-note = You can hand in as often as you like. Nothing counts twice.
handin-take = New class pack
handin-take-text = Did your teacher give you a new class pack? Open it here.
handin-take-button = Open a class pack
handin-taken = { $open ->
    [0] You have the new class pack.
    [one] You have the new class pack. { $open } assignment is open.
   *[other] You have the new class pack. { $open } assignments are open.
}

settings-minutes = How long is an evening?
settings-minutes-of = { $minutes } min
settings-language = Language
settings-theme = Colors
settings-saved = Saved.
settings-other-student = Another student
settings-stays = Your nickname and picture stay on this device.
