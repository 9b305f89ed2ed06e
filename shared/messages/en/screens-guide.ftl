## A short guide to every screen; opened by itself the first time, and by the ? key.
guide-open = What is this screen for?
guide-close = Got it
guide-hide = Hide all guides
guide-again = The ? key or button shows it again.
guide-reset = Show the guides again

guide-board-title = The board: what is weak now, and how sure that is
guide-board-1 = Each row is a concept, the weakest first. The bar is the share of the class that likely has it. A wide bar means few or old reports.
guide-board-2 = Press a row to see who stands behind it and which mistakes are common. From there, one step leads to an assignment.
guide-board-3 = Look at one strand, one phase or a few students alone. N covers the names before you project.

guide-compare-title = Where ratings and results part
guide-compare-1 = Sure but wrong: these students will not ask for help by themselves. Right but unsure: tell them.
guide-compare-2 = Below stands how far each student's ratings can be believed. With few answers it says so instead of guessing.
guide-compare-3 = Enter what you saw yourself, and the last table shows how your view and the students' agree.

guide-concept-title = One concept, student by student
guide-concept-1 = Who needs it most comes first, with what they said, marked and practiced.
guide-concept-2 = Those who likely need it are ticked. Change the ticks, then assign.
guide-concept-3 = The trend compares each student with themselves. It says "no clear change" until chance can be ruled out.

guide-student-title = One student over all concepts
guide-student-1 = What is needed most comes first. Concepts before their first lesson come last.
guide-student-2 = Ratings are the student's own view, not a grade and not a diagnosis.

guide-talk-title = Today's few minutes
guide-talk-1 = Say how many minutes there are. Of today's concepts, those stand first where talk puts the most students right.
guide-talk-2 = Show puts one exercise on the projector, with a common slip to talk about. No name is ever on it.
guide-talk-3 = Mark what you talked about: it counts less in the next days.

guide-groups-title = Who sits together, on what
guide-groups-1 = Say how many rounds and groups there are, who is absent, and who should or should not sit together. Then ask for groups.
guide-groups-2 = Move anyone by hand. What the change costs, and any rule it breaks, stands on top.
guide-groups-3 = Keep the groups, print a page for each, and record afterwards who has it. The record counts on the board.

guide-assign-title = Practice for tonight
guide-assign-1 = Choose concepts, amount and dates, for the class or for some students.
guide-assign-2 = It reaches the students with the next class pack: save the pack and give it out.
guide-assign-3 = Here you see who has done how much, as far as they have handed in.

guide-enter-title = Paper charts, and what you saw
guide-enter-1 = Keys 0 to 3 fill a cell in and go on; the arrows move. A class's day takes under a minute. Everything is kept at once.
guide-enter-2 = Ratings and results come from paper charts. "What I saw" is your own view and counts as a result.
guide-enter-3 = Ctrl Z takes the last key back.

guide-files-title = Hand-ins come in here
guide-files-1 = Choose the folder with the files, or have it watched. Every file gets a line: new, updated, older, refused and why.
guide-files-2 = The same file twice counts once. The last import can be undone.
guide-files-3 = When another device claims a seat, you decide.

guide-class-seats-title = Seats and names
guide-class-seats-1 = A name here is optional and never leaves this computer. Hand-ins carry only the seat.
guide-class-seats-2 = The code on the slip lets a student join. Add seats below; remove one with all that came from it.

guide-class-calendar-title = The school year
guide-class-calendar-1 = Press a day to close it, or enter a holiday from one day to another. Days without students move the rotation on.
guide-class-calendar-2 = Below you bound the minutes and evenings of practice, and name a test to aim at.

guide-class-rotation-title = Which concept on which day
guide-class-rotation-1 = Drag a concept to another day, or use the arrows beside it. With the keys: Alt and the arrow left or right.
guide-class-rotation-2 = The checks tell whether days and strands are balanced. Spread evenly anew does it for you; Undo takes it back.
guide-class-rotation-3 = First lessons set the phase: preview before, practice from then on, review later. Paste your pacing list to set many at once.

guide-class-exercises-title = Exercises of your own
guide-class-exercises-1 = Take in a table or a QTI file: every line is checked first, and what does not fit is named.
guide-class-exercises-2 = Students get them in turn with the program's own, from the next class pack on.

guide-class-concepts-title = Concepts of your own
guide-class-concepts-1 = Take in your school's list as a table or a CASE file, or keep to the built-in concepts.
guide-class-concepts-2 = What you take in can then be added to the rotation.

guide-class-pack-title = Give the class its file
guide-class-pack-1 = Save the class pack and put it where students can get it. Print the slips: each seat has its own code.
guide-class-pack-2 = After a change or a new assignment, save it anew. An older pack still works, it only knows less.

guide-print-title = On paper
guide-print-1 = Charts to rate on, practice with answer keys, family and conference pages, and tables for the school.
guide-print-2 = Everything is black and white, on Letter or A4.

guide-safe-title = Keep it safe
guide-safe-1 = Copies on this computer are made by themselves. Make a sealed backup now and then and keep it elsewhere.
guide-safe-2 = Nobody can open a backup without its passphrase. Write it down.
guide-safe-3 = The class key takes a class to your second computer.

guide-new-class-title = A class in four steps
guide-new-class-1 = Name, students, year, rotation. Everything can be changed later.
guide-new-class-2 = No names? Say how many seats there are. Last year's rotation can be copied.

guide-my-today-title = Today
guide-my-today-1 = Tap a stone for how sure you are. Then tap how it went.
guide-my-today-2 = It is saved at once. You can change it.

guide-my-practice-title = Practice
guide-my-practice-1 = Say how sure you are. Then solve it.
guide-my-practice-2 = Stuck? Take a hint or see the steps.

guide-my-path-title = My path
guide-my-path-1 = Here is your year. More stones mean you feel more sure.
guide-my-path-2 = Choose a concept to work on it.

guide-my-handin-title = Hand in
guide-my-handin-1 = One tap makes your file. Give it to your teacher.
guide-my-handin-2 = Your name is not in it.

guide-my-settings-title = Settings
guide-my-settings-1 = Change your language, colors and PIN here.
