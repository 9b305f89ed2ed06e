## A short guide to every screen; opened by itself the first time, and by the ? key.
guide-open = What is this screen for?
guide-close = Got it
guide-hide = Hide all guides
guide-again = The ? key or button shows it again.
guide-reset = Show the guides again

guide-now-title = What your class needs now
guide-now-1 = Up to five sentences say what the class needs, why, and how sure that is. Each has its buttons: one press shows, groups, assigns or prints.
guide-now-2 = The numbers behind a sentence are one press away. So are the names: this page can be projected.
guide-now-3 = Beside them are today and the next school day: what to prepare, and what to copy.

guide-board-title = The board: what is weak now, and how sure that is
guide-board-1 = Each row is a concept, the weakest first. The bar is the share of the class that likely has it. A wide bar means few or old reports.
guide-board-2 = Press a row to see who needs the concept and which misconceptions are common. There you can assign practice.
guide-board-3 = Choose the columns you want. You can show one strand, one phase or a few students only. N covers the names before you project.

guide-compare-title = Where ratings and results differ
guide-compare-1 = Who says sure and gets it wrong will not ask for help. Who can do it and does not trust it should hear so from you.
guide-compare-2 = By concept, the names are one press away. The statistics below show how well each student's ratings fit the results. With few answers it does not guess.
guide-compare-3 = Enter what you saw yourself. The last table of the statistics shows how your observations agree with the ratings.

guide-concept-title = One concept, student by student
guide-concept-1 = Who needs it most comes first, with what they said, marked and practiced.
guide-concept-2 = Those who likely need it are ticked. Change the ticks, then assign.
guide-concept-3 = The trend compares each student with themselves. It says "no clear change" until chance can be ruled out.

guide-student-title = One student over all concepts
guide-student-1 = What is needed most comes first. Concepts before their first lesson come last.
guide-student-2 = Ratings are the student's own view, not a grade and not a diagnosis.

guide-talk-title = Today's few minutes
guide-talk-1 = Say how many minutes you have. Today's concepts come in order: first where a talk helps the most students.
guide-talk-2 = Show puts one exercise on the projector, with a common misconception to talk about. It never shows a name.
guide-talk-3 = Mark what you talked about: it counts less in the next days.

guide-groups-title = Who sits together, on what
guide-groups-1 = Say how many rounds and groups there are, who is absent, and who should or should not sit together. Then ask for groups.
guide-groups-2 = You can move any student by hand. The line at the top says what a move costs and which rules it breaks.
guide-groups-3 = Keep the groups and print a page for each. Afterwards, record who has it: the record counts on the board.
guide-taught-title = Did it help?
guide-taught-1 = Note what you taught again: from the talk, a group, an assignment, or here.
guide-taught-2 = One pass later, Surefoot says whether those taught rose more than what was not taught again. It says so too when it cannot be told.
guide-taught-3 = Show one concept or one student, and print the list for a conference.

guide-assign-title = Practice for tonight
guide-assign-1 = Choose concepts, amount and dates, for the class or for some students.
guide-assign-2 = It reaches the students with the next class pack: save the pack and give it out. A class folder does that by itself.
guide-assign-3 = Here you see how much each student has done, by the latest hand-ins.

guide-enter-title = Paper charts, and what you saw
guide-enter-1 = Keys 0 to 3 fill a cell and go on; the arrows move. A class's day takes under a minute. Everything is saved at once.
guide-enter-2 = Ratings and results come from paper charts. "What I saw" is your own view and counts as a result.
guide-enter-3 = Ctrl Z undoes the last key.

guide-files-title = Hand-ins come in here
guide-files-1 = Choose the folder with the files, or name a class folder once: then everything travels by itself. Every file gets a line: new, updated, older, or not imported and why.
guide-files-2 = A file that comes twice counts once. You can undo the last import.
guide-files-3 = When a second device uses a seat, you decide whether it counts.

guide-class-seats-title = Seats and names
guide-class-seats-1 = A name here is optional and never leaves this computer. Hand-ins carry only the seat.
guide-class-seats-2 = The code on the join slip lets a student join. Add seats below. If you remove one, all that came from it goes too. Move takes a student to another class or to a colleague, with the work.

guide-class-calendar-title = The school year
guide-class-calendar-1 = Press a day without school, or enter a holiday by its first and last day. The rotation then goes on after it.
guide-class-calendar-2 = Below you set bounds for the minutes and evenings of practice, and name the next test.

guide-class-rotation-title = Which concept on which day
guide-class-rotation-1 = Drag a concept to another day, or use the arrows beside it. With the keys: Alt and the arrow left or right.
guide-class-rotation-2 = The checks show whether days and strands are balanced. "Spread evenly again" balances them, and you can undo it.
guide-class-rotation-3 = First lessons set the phase: preview before, practice from then on, review later. Paste your pacing list to set many at once.

guide-class-exercises-title = Exercises of your own
guide-class-exercises-1 = Import a table or a QTI file. Every line is checked first, and you see which lines do not fit, and why.
guide-class-exercises-2 = From the next class pack on, students get them in turn with the built-in exercises.

guide-class-concepts-title = Concepts of your own
guide-class-concepts-1 = Import your school's list as a table or a CASE file, or use the built-in concepts only.
guide-class-concepts-2 = Then add the imported concepts to the rotation.

guide-class-pack-title = Give the class its file
guide-class-pack-1 = Save the class pack and put it where students can get it. Print the join slips: each seat has its own code.
guide-class-pack-2 = After a change or a new assignment, save it again. A class folder does that by itself. An older pack still works, but without the change.

guide-print-title = On paper
guide-print-1 = Charts to rate on, practice with answer keys, family pages, pages for a talk with a student, and tables for the school.
guide-print-2 = Everything is black and white, on Letter or A4.

guide-safe-title = Keep it safe
guide-safe-1 = Surefoot makes copies on this computer by itself. Make a sealed backup now and then and keep it elsewhere.
guide-safe-2 = Nobody can open a backup without its passphrase. Write it down.
guide-safe-3 = The class key takes a class to your second computer.

guide-new-class-title = A class in four steps
guide-new-class-1 = Name, students, year, rotation. Everything can be changed later.
guide-new-class-2 = No names? Say how many seats there are. Last year's rotation can be copied.

guide-my-today-title = Today
guide-my-today-1 = Tap a stone for how sure you are. Then tap how it went.
guide-my-today-2 = It is saved at once. You can change it.
guide-my-today-3 = Is it the wrong day? Tap the day at the top and choose the right one.

guide-my-practice-title = Practice
guide-my-practice-1 = Say how sure you are. Then solve it.
guide-my-practice-2 = Stuck? Take a hint or see the steps.

guide-my-path-title = My path
guide-my-path-1 = Here is your year. More stones mean you feel more sure.
guide-my-path-2 = Choose a concept to work on it.

guide-my-handin-title = Hand in
guide-my-handin-1 = One tap makes your file. Give it to your teacher. With a class folder it goes there by itself.
guide-my-handin-2 = Your name is not in it.

guide-my-settings-title = Settings
guide-my-settings-1 = Change your language, colors and PIN here.
