## The first screen, joining, and the sample class.
start-title = Surefoot
start-lead = See what you know. Work on what comes next.
start-who = Who are you?
start-student = I am a student
start-student-text = Join your class with the code on your slip.
start-teacher = I am a teacher
start-teacher-text = Set up a class and see what it needs.
start-sample = Try the sample class
start-sample-text = Look around in an invented class. Nothing is real there.
start-students = Who is learning?
start-add-student = Another student
start-desk = Teacher's desk
start-settings = Language and colors
start-language = Language
start-theme = Colors
opened-not-taken = "{ $file }" was not opened. { $why }

sample-bar = An invented class. Nobody here is real.
sample-student = Student's tablet
sample-teacher = Teacher's desk
sample-leave = Leave
sample-making = Making the sample class
sample-making-text = Invented students join, check in, practice, and hand in. This takes a moment.
sample-progress = { $done } of { $total } steps
sample-stopped = You stopped it. Nothing was kept of the sample class.
sample-nobody = The sample class has no students on this tablet.

join-title = Join your class
join-pack = Open the class pack
join-pack-text = Your teacher gave you a file. Its name ends in .sfclass.
join-pack-button = Choose the file
join-pack-concepts = { $concepts ->
    [one] { $concepts } concept this year
   *[other] { $concepts } concepts this year
}
join-code = Type the long code on your slip
join-code-text = The code says which seat of the class is yours. It has no name in it.
join-code-label = Code
join-code-good = The code fits.
join-again = Is this you?
join-again-text = Somebody joined on this device with the same slip. Each student has a slip of their own.
join-again-mine = Yes, this is me
join-again-other = No, I type my own code
join-again-beside = No, and I have no other slip
join-again-beside-text = Then tell your teacher. Your work can still go to the right place.
slip-new = A new slip
slip-new-text = Did you move to a new class, or did you join with the wrong slip? Open the class pack and type your new code. All you did stays.
slip-new-pin = Your PIN goes away, because it is for the old slip. Set it again with the new one.
slip-pick = Choose the class pack
slip-take = Use this slip
slip-changed = You are in { $title } now.
join-you = Pick a nickname and a picture
join-you-text = They stay on this device. Do not use your full name.
join-nickname = Nickname
join-avatar = Picture
join-language = Your language
join-finish = Join
join-steps = Step { $step } of { $steps }

avatar-otter = Otter
avatar-heron = Heron
avatar-fish = Fish
avatar-moth = Moth
avatar-fern = Fern
avatar-acorn = Acorn
avatar-pine = Pine tree
avatar-fox = Fox
avatar-owl = Owl
avatar-turtle = Turtle
avatar-snail = Snail
avatar-bee = Bee
avatar-hedgehog = Hedgehog
avatar-frog = Frog
avatar-sunflower = Sunflower
avatar-mushroom = Mushroom
