## The student's screens.
student-tabs = Your screens
student-today = Today
student-practice = Practice
student-path = My path
student-handin = Hand in
student-settings = Settings
student-settings-of = { $name }: settings

today-title = Today
today-day = Day { $day } of { $days }
today-day-said = Day { $day } of { $days }, as you said
today-day-counted = Day { $day } of { $days }, counted from the day you said
today-day-short = Day { $day }
today-say-day = Not day { $day }?
today-say-school = We have school
today-which-day = Which day is your class on?
today-which-day-words = Look at the front of the class or ask your teacher. Your marks stay safe.
today-day-pack = Use the day of the class pack
today-others = Also marked on this day
today-others-note = These marks are saved, too.
today-rate = How well do you know { $title }?
today-outcome = How did { $title } go?
today-preview = Preview
today-preview-note = Preview: not learned yet in class. “Not yet” is just fine.
today-left = { $left ->
    [one] { $left } more to rate
   *[other] { $left } more to rate
}
today-done = All rated. Your check-in is saved.
today-saved-note = Each tap is saved right away.
today-no-school = No school today
today-no-school-next = Your next school day is { $date }.
today-no-school-over = There is no school day ahead. You can still practice.
today-to-practice = Practice now
today-catch-up = Days not marked
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
practice-count = { $done } of { $planned } done
practice-count-over = { $done } done
practice-count-over-label = Tonight: { $done } exercises, { $planned } were planned
practice-count-label = Tonight: { $done } of { $planned } exercises
practice-time-label = Tonight: { $done } of { $planned } minutes
practice-nothing = No practice yet
practice-nothing-text = First mark your concepts in Today. Then you find practice here that fits you.
practice-to-today = Go to Today
practice-over = Done for tonight
practice-over-text = { $finished ->
    [one] You finished { $finished } exercise in { $minutes } min.
   *[other] You finished { $finished } exercises in { $minutes } min.
}
practice-over-none = You can come back any time. Nothing is lost.
practice-week = This week: { $done } of { $planned } evenings
practice-week-done = You have practiced on all the evenings you planned this week. Tonight is free.
practice-alone = On your own: { $count }
practice-with-help = With a hint or a second try: { $count }
practice-you-said = You marked it
practice-you-thought = You thought
practice-you-did = You did
practice-did = { $right } of { $count } on your own
practice-tried = { $count } practiced
practice-right-count = You got { $right } of { $finished } right.
practice-right-none = { $finished ->
    [one] You kept at a hard exercise. That is how you learn.
   *[other] You kept at { $finished } hard exercises. That is how you learn.
}
practice-went-right = This went right
practice-right-of = { $right } of { $finished }
practice-again = You will see more of this soon: { $concepts }.
practice-how-sure = How sure you were, and what you did
practice-more = Practice more
practice-finish = Finish

entry-box = Your answer
entry-top = Top number
entry-bottom = Bottom number
entry-whole = Whole number
entry-hour = Hour
entry-minute = Minutes
entry-hours = Hours
entry-amount = Amount in dollars
entry-x = Across
entry-y = Up
entry-box-number = Box { $number }
entry-second-later = A second question comes after this.
entry-quotient = Whole-number part
entry-remainder = Left over
entry-degrees = Degrees
entry-expression = Your expression
entry-equation = Your equation
entry-am = Before noon
entry-pm = After noon
entry-half-day = Time of day
entry-pad = Number pad
entry-point-sign = Decimal point
entry-comma-sign = Decimal comma
entry-erase = Erase
entry-next-box = Next box
entry-choose = Choose one
entry-choose-all = Choose all that fit
entry-sign = Choose the sign
entry-order = Put them in order
entry-earlier = Move { $thing } earlier
entry-later = Move { $thing } later
entry-place = Place { $place } of { $places }
entry-line-less = One step left
entry-line-more = One step right
entry-line-at = The point is at { $at }
entry-line-none = Tap the line to put the point
entry-ray-open = Empty circle: the point does not belong
entry-ray-closed = Filled circle: the point belongs
entry-ray-left = To the left
entry-ray-right = To the right
entry-ray-end = End point
entry-ray-way = Direction
entry-turn-less = Turn back
entry-turn-more = Turn on
entry-turn-at = { $degrees } degrees
entry-shade = Tap the parts to shade them
entry-part = Part { $part }
entry-shaded-count = { $count } of { $parts } parts shaded
entry-taller = More for { $column }
entry-shorter = Less for { $column }
entry-squares = Tap squares to mark them
entry-square = Row { $row }, column { $column }
entry-squares-count = { $count ->
    [one] { $count } square marked
   *[other] { $count } squares marked
}
entry-grid = Tap the grid to put the point
entry-point = across { $x }, up { $y }

path-title = My path
path-lead = Your year so far. These are your own ratings, not grades.
path-counts = { $rated ->
    [one] { $rated } rating
   *[other] { $rated } ratings
} · { $practised ->
    [one] { $practised } exercise
   *[other] { $practised } exercises
}
path-pass = Pass { $pass }
path-legend = Each pile of stones is one pass. The line marks this pass.
path-passes = Your ratings, pass by pass
path-focus = My focus
path-focus-text = Choose up to three concepts to work on.
path-focus-add = Work on { $title }
path-focus-remove = Stop working on { $title }
path-focus-full = You have three. Take one out first.

## Goals in the student's own words.
goals = My goals
goals-empty = A goal says what you want to reach. Write it in your own words. It stays on this device.
goals-example = Like: I know my sevens by Friday.
goals-new = A goal of your own
goals-left = { $left } of { $most } left to write
goals-full = You have three goals. Take one out to write a new one.
goals-add = Add this goal
goals-reached = Reached: { $goal }
goals-change = Change “{ $goal }”
goals-change-label = Change your goal
goals-remove = Take out “{ $goal }”
goals-removed = “{ $goal }” is taken out.
goals-print = Put my goals on it

path-practice-of = Practice { $title }
path-results = { $alone } of { $answered } on your own
path-no-results = No practice yet
path-print = Print my path
path-empty = Your path starts with your first check-in
path-empty-text = Mark the concepts of a school day. Then you see them here.

handin-title = Hand in
handin-lead = Make a sealed file for your teacher. Only your teacher can open it.
handin-class = For { $class }
handin-holds = What it holds
handin-holds-check-ins = { $check_ins ->
    [one] { $check_ins } check-in
   *[other] { $check_ins } check-ins
} from { $days ->
    [one] { $days } day
   *[other] { $days } days
}
handin-holds-answers = { $answers ->
    [one] Counts of { $answers } exercise
   *[other] Counts of { $answers } exercises
}
handin-holds-seat = Which seat is yours
handin-not = What it does not hold
handin-not-name = Your name, nickname, or picture
handin-not-answers = What you typed as answers
handin-not-time = The time of day
handin-make = Make my file
handin-share = Send my file
handin-save = Save my file
handin-made = Your file is made
handin-made-place = It is here: { $place }
handin-made-sample = It went to the sample class's folder. The teacher's desk can import it.
handin-made-shared = It went to the app you chose. Did you send it there? If not, you can send it again.
handin-made-file = File: { $file }
handin-not-saved = You went back. No file was made. Nothing is lost.
handin-last = You made the last one on { $date }.
handin-new = { $new ->
    [0] Nothing new since then.
    [one] { $new } new entry since then.
   *[other] { $new } new entries since then.
}
handin-never = You have not made one yet.
handin-by-itself = Your file goes to the class folder by itself. You need not make one.
handin-again-note = You can hand in as often as you like. Nothing counts twice.
folder-student-text = Your class has a shared folder. Choose it here once. Then your file goes there by itself.
folder-student-show = Choose the folder
folder-student-other = Choose another folder
folder-student-ready = Your file will go there by itself.
folder-student-waiting = Your newest work goes there next.
folder-student-left = Your file is there. It was made on { $date }.
folder-student-nothing-lost = Nothing is lost. You can also hand in yourself.
folder-student-others = Other files there
folder-student-others-text = { $packs ->
    [one] { $packs } class pack there is not for your class. It was left alone.
   *[other] { $packs } class packs there are not for your class. They were left alone.
}
folder-student-late = Your work has not reached the class folder for some days. Nothing is lost. You can hand it in yourself.
folder-student-stop = Stop using the class folder?
folder-student-stop-text = Your file does not go there by itself any more. Others on this device keep it.
folder-student-stopped = You do not use the class folder.
folder-student-again = Use it again
handin-take = New class pack
handin-take-text = Did your teacher give you a new class pack? Open it here.
handin-take-button = Open a class pack
handin-taken = { $open ->
    [0] You have the new class pack.
    [one] You have the new class pack. { $open } assignment is open.
   *[other] You have the new class pack. { $open } assignments are open.
}

settings-ends = When does practice end each evening?
settings-ends-minutes = When the time is up
settings-ends-exercises = When the exercises are done
settings-exercises = How many exercises each evening?
settings-exercises-note = { $minutes ->
    [one] It also ends after { $minutes } minute.
   *[other] It also ends after { $minutes } minutes.
}
settings-minutes = How long do you practice each evening?
settings-minutes-of = { $minutes } min
settings-evenings = How many evenings a week?
settings-evenings-of = { $evenings }
settings-test = Your teacher named a test on { $date }. Practice gets you ready for it.
settings-language = Language
settings-theme = Colors
settings-text = Size of the text
settings-decimal = Sign in decimals
settings-decimal-language = By language: { $example }
settings-decimal-comma = Comma: { $example }
settings-decimal-point = Point: { $example }
settings-motion = Motion
settings-motion-system = As the device
settings-motion-less = Less motion
settings-aloud = Read aloud
settings-aloud-off = When I ask
settings-aloud-on = As an exercise opens
settings-appearance-note = Only your screens change. They change back when you leave.
settings-saved = Saved.
settings-other-student = Another student
settings-fingerprint = Fingerprint of this device
settings-fingerprint-text = Your teacher sees the same signs if your files came from this device.
settings-stays = Your nickname and picture stay on this device.

## A print of the student's own.
practice-print = Practice on paper
own-print-path = This makes a PDF of your year for your folder. Your name is not in it. Write it by hand.
own-print-practice = This makes a PDF with tonight's practice. The answers are on a page of their own.
own-print-paper = Paper
own-print-letter = Letter
own-print-a4 = A4
own-print-save = Save as PDF
own-print-saved = { $file } was saved.
own-print-not-saved = Nothing was saved.
