## The teacher's screens.
tab-board = Board
tab-files = Files
tab-class = Class
tab-assign = Assign

desk-class = Class
desk-new-class = New class …
desk-screens = Screens
desk-settings = Settings
desk-language = Language
desk-theme = Colors
desk-leave = Leave the desk
desk-promise = Names stay on this computer. Surefoot sends nothing anywhere; a class folder is moved by your school.
desk-names-cover = Cover names
desk-names-show = Show names
desk-cover-key = Press N to cover or show the names
desk-lock = Lock
desk-lock-key = Press L to lock the desk
desk-seat = Seat { $seat }
desk-undone = Undone.
desk-age-none = no report yet
desk-age-today = today
desk-age-yesterday = yesterday
desk-age-days = { $days ->
    [one] { $days } day ago
   *[other] { $days } days ago
}

## Board
board-title = Board
board-reporting = { $reporting } of { $seats } seats have reported. The newest report is from { $newest }, the typical one from { $typical }.
board-reporting-none = { $seats ->
    [one] Nothing has come yet from the one seat.
   *[other] Nothing has come yet from the { $seats } seats.
}
board-empty-title = The board will show your class here
board-empty-words = Students rate each concept after the review and hand in a small file. Import the files, and every concept gets a line: who has it, how sure that is, and whether it rises or falls.
board-empty-do = Import hand-ins
board-empty-slips = Class pack and join slips
board-filters = What the board shows
board-filter-strand = Strand
board-filter-phase = Phase
board-filter-all = All
board-filter-today = Only day { $day }, today
board-shown = { $shown } of { $all } concepts
board-show-all = Show all
board-none-title = No concept fits these choices
board-none-words = The other concepts are only hidden.
board-own-view = Ratings are the students' own view. They are no grade and no diagnosis.
board-caption = Concepts of { $title }, weakest first or in the order you chose
board-col-rank = Rank
board-col-concept = Concept
board-col-has-it = Share that has it
board-col-range = and its likely range
board-col-reports = Reports
board-col-ratings = Latest rating of each student
board-col-results = Marked results
board-col-practice = Practice answers
board-col-practice-short = Practice
board-col-trend = Trend
board-col-passes = Needing help, by pass
board-columns = Columns
board-order = The order is by how many students certainly need the concept. A share from few or old reports counts for less, so a lower share can stand further down.
board-mistake = { $students ->
    [one] one student
   *[other] { $students } students
}, { $times } times, last { $last }
board-pass = Pass
board-place = { $strand } · day { $day } · { $phase ->
    [preview] preview
    [practice] practice
   *[review] review
}
board-range = { $low } to { $high }
board-ask-first = few reports: ask first
board-no-report = no report yet
board-order-only = no share yet
board-sure-and-wrong = sure, but wrong
board-level-unknown = So far there are too few results and too little practice. Ratings show which concepts are weaker than others. They do not show how many students can do them, so no share is shown yet.
board-of = { $part } of { $all }
board-right = { $count } right
board-wrong = { $count } wrong
board-alone = { $count } alone
board-with-help = { $count } with help
board-help-wrong = { $help } with help, { $wrong } wrong
board-trend-rising = rising
board-trend-falling = falling
board-trend-maybe-rising = perhaps rising
board-trend-maybe-falling = perhaps falling
board-trend-no-clear-change = no clear change
board-trend-too-soon = too soon to say
board-pass-cell = { $needs } of { $rated } who rated need help, { $share }
board-pass-count = { $needs } of { $rated } who rated need help
board-pass-last = Last rating on { $date }.
board-unranked = Not ranked: before the first lesson, or without a report

## One concept and the students behind it
concept-back = Board
concept-grade = grade { $grade }
concept-rank = rank { $rank } among the weak concepts
concept-sure-and-wrong = The class feels sure of this concept, but most answers are wrong.
concept-ask-first = { $count ->
    [0] Nobody has reported on this concept yet. Ask the class before you plan on it.
    [one] Only { $count } student has reported on this concept. Ask the class before you plan on it.
   *[other] Only { $count } students have reported on this concept. Ask the class before you plan on it.
}
concept-misconceptions = Common misconceptions in practice
concept-misconception-other = Another misconception
concept-times = { $count } ×
concept-students = Students, who needs it most first
concept-assign = { $count ->
    [0] Assign practice
    [one] Assign practice to { $count } student
   *[other] Assign practice to { $count } students
}
concept-no-exercises = There are no exercises for this concept; it is self-rated only.
concept-col-choose = For practice
concept-col-student = Student
concept-col-has-it = Likely has it
concept-col-history = Ratings and results, oldest first
concept-col-age = Newest report
concept-col-assigned = Assigned
concept-choose = Choose { $name } for practice
concept-earlier = { $count } earlier
concept-practice-none = none
concept-assigned = { $done } of { $of }

## Files
files-title = Files
files-lead = Point to the folder where hand-ins arrive. A newer file replaces the older one from the same device, so nothing counts twice. The files stay where they are.
files-take-sample = Import the sample class's folder
files-take-folder = Import a folder
files-take-files = Choose single files
files-running = Reading the files
files-progress = { $total ->
    [0] Looking for files …
   *[other] { $done } of { $total } files
}
files-stop = Stop
files-empty-title = Every file gets a line here
files-empty-words = After an import, this list shows the result for each file: new, updated, older than what is here, or not imported, and why.
files-report = { $date }:
files-report-none = there was no hand-in in it
files-to-check = { $count } to check
files-more = Show more ({ $count } left)
files-cancelled = stopped before the end
files-was-undone = undone
files-undone = The import was undone. The files are still where they were: import them by hand to have them again.
files-tally-new = { $count } new
files-tally-updated = { $count } updated
files-tally-known = { $count } already here
files-tally-older = { $count } older
files-tally-quarantined = { $count } waiting for your decision
files-tally-refused = { $count } not imported
files-col-verdict = Result
files-col-who = From
files-col-what = Details
files-col-file = File
files-verdict-new = New
files-verdict-updated = Updated
files-verdict-known = Already here
files-verdict-known-words = This was imported before. Nothing changed.
files-verdict-older = Older
files-verdict-older-words = A newer hand-in from this device is here. Nothing changed.
files-verdict-quarantined = Waiting
files-verdict-quarantined-words = It comes from another device for this seat. It is stored, and counts once you accept the device above.
files-verdict-refused = Not imported
files-new-entries = { $count ->
    [one] { $count } new entry
   *[other] { $count } new entries
}
flag-future-date = { $entries ->
    [one] { $entries } entry is dated in the future, up to { $date }. It is kept and shows once its day has come. Check the date of the device.
   *[other] { $entries } entries are dated in the future, up to { $date }. They are kept and show once their day has come. Check the date of the device.
}
flag-outside-year = { $entries ->
    [one] { $entries } entry is outside the school year ({ $date }). It is kept but does not count.
   *[other] { $entries } entries are outside the school year (up to { $date }). They are kept but do not count.
}
flag-unknown-concept = { $concepts ->
    [one] { $concepts } concept in it is not in this class. It is kept but not shown.
   *[other] { $concepts } concepts in it are not in this class. They are kept but not shown.
}
devices-title = Devices of the seats
devices-words = A device waits when a student joined on another one, or when someone typed the code of somebody else. Compare the signs with those under Settings on the student's tablet. Nothing from a waiting device counts until you decide. You can change your mind at any time.
devices-state-accepted = counts
devices-state-quarantined = waits for you
devices-state-rejected = rejected
devices-brought = since { $date }: { $handins ->
    [one] { $handins } hand-in
   *[other] { $handins } hand-ins
}, { $entries ->
    [one] { $entries } entry in the newest
   *[other] { $entries } entries in the newest
}
devices-show-all = Show the devices of all seats
devices-show-waiting = Show only waiting devices
devices-other = Belongs to another student …
quarantine-accept = Accept
quarantine-reject = Reject
quarantine-discard = Discard
quarantine-accept-title = Accept this device?
quarantine-accept-words = From now on, what it handed in counts for { $name }, together with what is there.
quarantine-reject-title = Reject this device?
quarantine-reject-words = What it handed in will not count for { $name }. You can accept it again later.
quarantine-discard-title = Discard what this device handed in?
quarantine-discard-words = The desk forgets the device and what it handed in for { $name }. The files stay where they are.
quarantine-accepted = The device counts for { $name } from now on.
quarantine-rejected = The device of { $name } was rejected.
quarantine-discarded = What the device handed in for { $name } was discarded.
journal-title = Imports
journal-older = Show older
journal-undo = Undo the last import
journal-undo-title = Undo the last import?
journal-undo-words = { $count ->
    [one] This takes back { $count } file imported on { $date }. The board will be as it was before. You can import the file again.
   *[other] This takes back { $count } files imported on { $date }. The board will be as it was before. You can import the files again.
}

## Class
class-parts = Parts of the set-up
class-part-seats = Seats
class-part-calendar = Calendar
class-part-rotation = Rotation
class-part-pack = Pack and slips
class-change = Rename or delete …
class-change-title = This class
class-name-hint = Students see it once they open the next class pack.
class-renamed = The class has a new name.
class-delete = Delete this class …
class-delete-title = Delete { $title }?
class-delete-words = { $seats ->
    [one] Its one seat goes from this computer, with every report, every observation, and the keys that open its hand-ins.
   *[other] Its { $seats } seats go from this computer, with every report, every observation, and the keys that open its hand-ins.
} { $joined ->
    [0] Nobody has handed in yet.
    [one] One student has handed in.
   *[other] { $joined } students have handed in.
}
class-delete-type = To go on, type the name of the class: { $title }
class-delete-do = Delete
class-deleted = { $title } was deleted.
seats-lead = Names are optional and stay on this computer. Hand-ins carry the seat only.
seats-col-seat = Seat
seats-col-name = Name
seats-col-code = Code
seats-col-devices = Devices
seats-col-newest = Newest report
seats-no-name = no name
seats-name-of = Name of seat { $seat }
seats-named = The name of seat { $seat } was changed.
seats-devices = { $count ->
    [0] not joined yet
    [one] { $count } device
   *[other] { $count } devices
}
seats-quarantined = { $count } waiting
seats-assign-to = Assign practice to { $name }
seats-remove = Remove
seats-remove-of = Remove { $name }
seats-remove-title = Remove { $name } from the class?
seats-remove-nothing = Nothing has come from this seat yet.
seats-remove-what = This goes with it from this computer:
seats-remove-hand-ins = { $count ->
    [one] { $count } hand-in
   *[other] { $count } hand-ins
}
seats-remove-reports = Ratings and results: { $count }
seats-remove-answers = Practice answers: { $count }
seats-remove-observations = Your observations: { $count }
seats-remove-slip = The code on its slip no longer joins. Other seats keep their numbers and codes.
seats-remove-do = Remove
seats-removed = { $name } is no longer in the class.
seats-add = Add seats
seats-add-hint = One student a line, or a table. Leave it empty for one seat without a name.
seats-add-do = Add
seats-added = { $count ->
    [one] { $count } seat was added. It needs a join slip.
   *[other] { $count } seats were added. They need join slips.
}
move-do = Move
move-of = Move { $name }
move-title = Move { $name }
move-class = To another of your classes
move-class-words = Everything that you have of this student goes along to a new seat there. Groups, wishes, absences, and assignments stay. Print the new slip: until the student types it, the device keeps handing in, and that counts in the new class. The device asks for the old slip too. If it is lost, print it again before you move the student.
move-class-to = Class
move-class-none = You have no other class here.
move-done = { $name } now has seat { $seat } in { $title }. Print the new slip there, and save a new class pack.
move-done-folder = { $name } now has seat { $seat } in { $title }. Print the new slip there.
move-device = Work of another student
move-device-words = If somebody joined with this student's slip, give the work of that device to its owner. Compare the signs with those in the device's settings.
move-device-none = No device has handed in for this seat.
move-device-to = Device { $signs } belongs to
move-device-do = Give the work
move-device-done = The work of this device now counts for { $name }.
move-seat-of = { $seat }: { $name }
transfer-title = To a colleague
transfer-words = You save a file that your colleague opens. The student stays here until you remove the seat.
transfer-open = See what the file holds
transfer-for = File about { $name }
transfer-holds = The file will hold:
transfer-check-ins = Ratings and results from devices: { $count }
transfer-practice = Practice by day and concept: { $count }
transfer-paper = Entries from paper: { $count }
transfer-dates = From { $first } to { $last }
transfer-not = It will not hold your observations, groups, and assignments, or anything of another student.
transfer-name = Put the name in: { $name }
transfer-warning = A file that you gave away cannot be taken back. Tell your colleague the passphrase in person.
transfer-save = Save the file
transfer-made = { $file } is saved. Give it to your colleague, then remove { $name } here.
transfer-take = Open a colleague's file
transfer-take-words = A student comes from a colleague? Open the file that your colleague saved.
transfer-taken = { $name } has seat { $seat }. { $count } entries came along.
transfer-outside = { $count } of them are outside this school year and do not count.
transfer-other-concepts = { $count ->
    [one] One concept in them is not in this class.
   *[other] { $count } concepts in them are not in this class.
}
calendar-lead = { $first } to { $last }: { $days } school days, { $passes } passes of { $rotation } days. Tap a day to make it a day without school, or a school day again.
calendar-closures = Days without school
calendar-from = From
calendar-to = To (if more than one day)
calendar-close = No school then
calendar-open = School again
calendar-open-of = School again: { $what }
calendar-none = None yet. Every chosen weekday counts as a school day.
calendar-range = { $days ->
    [one] { $first } to { $last }, { $days } school day
   *[other] { $first } to { $last }, { $days } school days
}
calendar-day = No school on { $date }
calendar-changed = The calendar was changed. Days of the rotation move with it.
calendar-year-change = Change dates or weekdays
calendar-year-words = Closures, first lessons and reports keep their dates. Days of the rotation are counted again. Reports outside the year are kept but do not count.
calendar-year-effect = This makes { $days } school days and { $passes } passes (now { $before_days } and { $before_passes }).
calendar-year-changed = The school year was changed. Days of the rotation move with it.
calendar-lessons-outside = { $count ->
    [one] One first lesson is outside the school year.
   *[other] { $count } first lessons are outside the school year.
}
calendar-fault-none = Choose the first day without school.
calendar-fault-order = The last day comes before the first.
calendar-fault-outside = These days are outside the school year.
calendar-fault-no-school = There is no school on these days anyway.
practice-rules = Practice at home
practice-rules-lead = Students choose their minutes and evenings within these bounds. Those who would rather count exercises choose a number that usually fits into these minutes. Practice gets them ready for the test you name, and after it for the end of the year. All of it reaches them with the next class pack.
practice-rules-minutes-least = Fewest minutes an evening
practice-rules-minutes-most = Most minutes an evening
practice-rules-evenings-least = Fewest evenings a week
practice-rules-evenings-most = Most evenings a week
practice-rules-test = Next test (if there is one)
practice-rules-changed = The bounds of practice were changed.
rotation-lead = Drag a concept to another day, use its arrows, or press Alt with the left or right arrow key. Tap it to see how each student does.
rotation-by-day = Day by day
rotation-lessons = First lessons
rotation-day = { $count ->
    [one] Day { $day } · { $count } concept
   *[other] Day { $day } · { $count } concepts
}
rotation-earlier = { $title }: one day earlier
rotation-later = { $title }: one day later
rotation-moved = { $title } is on day { $day } now.
rotation-concepts = Add or take out concepts
rotation-add = Add from the catalogue
rotation-add-hint = They go to the lightest days. Concepts of an earlier grade count as taught; set the first lessons of the others afterwards.
rotation-add-do = { $count ->
    [0] Add concepts
    [one] Add the concept
   *[other] Add { $count } concepts
}
rotation-added = { $title } was added to day { $day }.
rotation-added-many = { $count } concepts were added to the lightest days.
rotation-take-out = Take out of the rotation
rotation-take-out-hint = Their reports are kept and come back with them.
rotation-take-out-do = { $count ->
    [0] Take concepts out
    [one] Take the concept out
   *[other] Take { $count } concepts out
}
rotation-taken-out = { $title } is no longer in the rotation.
rotation-taken-out-many = { $count } concepts are no longer in the rotation.
rotation-whole-grade = All of grade { $grade } ({ $count })
rotation-uneven = The days are uneven: up to { $most } concepts on one, { $least } on another. The review takes longer on full days.
lessons-lead = The first lesson decides when a concept goes from preview to practice and then to review. An empty date means: not this year.
lessons-col-first = First lesson
lessons-col-day = Day
lessons-col-phase = Today
lessons-date-of = First lesson of { $title }
lessons-not-this-year = not this year
lessons-changed = The first lesson of { $title } was changed.

## Class pack and join slips
pack-none-yet = There is no class pack yet. Students need it to join.
pack-outdated = Something changed since class pack { $version }. Students see the change once they open a new one.
pack-save = Save the class pack
pack-not-saved = No file was written. Nothing is lost; save it whenever you like.
pack-saved = { $file } was saved. { $place }
pack-version = Class pack { $version }
pack-version-none = No class pack yet
pack-changed = changed
pack-up-to-date = up to date
pack-step-pack = Give out the class pack
pack-step-pack-words = One file for the whole class. Put it where students can open it: a shared folder, a USB stick, the class page. It holds no names.
pack-folder-words = It is in the class folder, and devices take it by themselves. Who has no folder needs the file.
pack-step-slips = Print the join slips
pack-step-slips-words = { $count ->
    [one] One slip with the code and the PIN signs of the seat. The student types the code once and keeps the slip.
   *[other] { $count } slips, one a seat, each with its code and PIN signs. The student types the code once and keeps the slip.
}
pack-step-hand-ins = Import the hand-ins
pack-step-hand-ins-do = Open Files
pack-step-hand-ins-words = Students make a hand-in with one tap. You point Surefoot to the folder where they arrive.
pack-hand-ins-folder = Hand-ins come through the class folder by themselves, while the desk is open.
slips-open = Show the slips
slips-words = Cut along the broken lines. A slip is for one student only.
slips-paper = Paper
slips-letter = US Letter
slips-a4 = A4
slips-names = With names
slips-one = Save this slip
slips-one-of = Save the slip of { $name }

## Assign
assign-title = Assign
assign-new = New assignment
assign-made = The assignment is made. Give out a new class pack so that it reaches the students.
assign-made-folder = The assignment is made. It reaches the students through the class folder.
assign-withdrawn = The assignment was withdrawn. Practice that was done stays.
assign-empty-title = Assigned practice will be listed here
assign-empty-words = Open a weak concept on the board, choose who needs it, and assign. It travels in the next class pack; here you see who did it.
assign-empty-do = Open the board
assign-each = { $count ->
    [one] { $count } exercise of each concept
   *[other] { $count } exercises of each concept
}
assign-dates = { $from } to { $due }
assign-whole-class = Whole class
assign-some = { $count ->
    [one] { $count } student
   *[other] Chosen students ({ $count })
}
assign-finished = { $done } of { $of } finished
assign-over = over
assign-not-in-pack = not in the class pack yet
assign-waiting = { $count ->
    [one] { $seats } has not joined or handed in yet; it can be sealed for that seat after the first hand-in.
   *[other] Not joined or handed in yet: { $seats }. It can be sealed for them after their first hand-in.
}
assign-withdraw = Withdraw
assign-withdrawn-list = { $count ->
    [one] One withdrawn assignment
   *[other] { $count } withdrawn assignments
}
assign-restore = Restore it
assign-withdraw-title = Withdraw this assignment?
assign-withdraw-words = It leaves the students' practice with the next class pack. Practice that was done stays and counts.
assign-concepts = Concepts
assign-concepts-hint = One to six. Only concepts with exercises are offered.
assign-concepts-add = Add a concept …
assign-concepts-remove = Take out { $title }
assign-amount = Exercises of each
assign-from = First evening
assign-due = Last evening
assign-who = For whom
assign-travels = It reaches students in the next class pack, sealed for each of them.
assign-give = Assign
assign-fault-concepts-none = Choose at least one concept.
assign-fault-concepts-many = Choose at most six concepts.
assign-fault-amount = Choose 1 to 20 exercises.
assign-fault-dates = The last evening must not come before the first.
assign-fault-seats = Choose at least one student.

## A new class
new-class-title = Set up a class
new-class-lead = With its calendar, pacing list and join slips, a class takes about ten minutes. Everything can be changed later.
new-class-name = Name of the class
new-class-name-hint = As students know it, such as Room 12 or Grade 4 Math.
new-class-seats = Seats
new-class-seats-hint = One seat for each student. Names stay on this computer; without names, seats are only numbered.
new-class-by-names = Paste a list of names
new-class-by-count = Only a number of seats
new-class-roster = Names, one student a line
new-class-roster-hint = "Anika Patel", "Patel, Anika", codes of your own, or a table copied from a spreadsheet. You see what was understood before it is taken.
new-class-names-read = { $count ->
    [one] { $count } student.
   *[other] { $count } students.
}
new-class-seat-count = Number of seats
new-class-year = School year
new-class-first-day = First day
new-class-last-day = Last day
new-class-weekdays = Class meets on
new-class-closures = { $count ->
    [0] Add days without school (can wait)
    [one] Days without school: { $count }
   *[other] Days without school: { $count }
}
roster-file = From a file …
roster-file-hint = CSV with names, or the CSV files of a OneRoster export (choose users, enrollments and classes together). Only names or codes are read.
roster-kept-hint = Only the name under "Shown as" is kept.
roster-swap = Swap first and last names
roster-take = Take
roster-take-line = Take line { $line }: { $words }
roster-first = First name
roster-last = Last name
roster-kept = Shown as
roster-kept-of = Name shown for line { $line }
roster-reading-heading = A heading, not a student.
roster-reading-no-name = No name was found here.
roster-reading-full = A class has at most 60 seats.
roster-too-long = This name has { $count } letters, and { $most } fit. Write it shorter.
roster-empty = Write a name, or leave this line out.
roster-told-apart = Same first name twice.
roster-twice = { $name } is on lines { $lines }. One student, or different ones?
roster-twice-different = Different students
roster-twice-one = The same student
roster-file-classes = Which class?
roster-file-class = { $count ->
    [one] { $title } ({ $count } student)
   *[other] { $title } ({ $count } students)
}
new-class-copy = Rotation and first lessons
new-class-copy-hint = Surefoot suggests a new rotation from the grades, or copies one from a class you have. First lessons then keep their place in the year. If the year of that class still runs, its calendar with the days without school is copied too.
new-class-copy-none = Suggest a new rotation
new-class-grades = Grades
new-class-grades-hint = As many concepts of the highest grade as fit come first. Earlier grades fill what is left, so that their concepts are reviewed.
new-class-grade = Grade { $grade } ({ $count } concepts)
new-class-rotation = Rotation
new-class-rotation-hint = Every concept comes once in a rotation. Surefoot suggests which concept goes on which day; you can move them.
new-class-rotation-days = Days in the rotation
new-class-a-day = Concepts a day
new-class-sum = This makes
new-class-sum-seats = seats
new-class-sum-days = school days
new-class-sum-passes = passes
new-class-sum-concepts = concepts
new-class-left-out = { $count ->
    [one] { $count } concept of these grades does not fit. It fits with more days or more concepts a day.
   *[other] { $count } concepts of these grades do not fit. They fit with more days or more concepts a day.
}
new-class-create = Create the class
new-class-later = Names, seats, dates, closures, concepts and their days can be changed at any time.
new-class-done = { $title } is ready. Two things are left: give out the class pack and print the join slips.
new-class-faults = { $count ->
    [one] One thing is missing or does not fit. It is marked.
   *[other] { $count } things are missing or do not fit. They are marked.
}
new-class-fault-title-empty = Give the class a name.
new-class-fault-title-long = Use 60 characters or fewer.
new-class-fault-names-open = Answer the questions in the table of names first.
new-class-fault-names-none = Paste at least one name, or choose a number of seats.
new-class-fault-seats-none = Choose at least one seat.
new-class-fault-seats-many = Choose 1 to 60 seats.
new-class-fault-dates-none = Choose the first and the last day.
new-class-fault-dates-order = The last day comes before the first.
new-class-fault-dates-long = A school year has 400 days at most, from first to last.
new-class-fault-no-day = With these days no school day is left.
new-class-fault-weekdays = Choose at least one weekday.
new-class-fault-grades = Choose at least one grade.
new-class-fault-rotation = Choose 1 to 20 days and 1 to 12 concepts a day.
