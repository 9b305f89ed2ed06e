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
join-pack-text = Your teacher gave you a file. Its name ends in .sfclass. Or your class has a shared folder: choose that.
join-pack-button = Choose the file
join-folder-button = Choose the class folder
join-folder-choose = Which class is yours?
join-folder-none = There is no class pack in this folder. Choose another one.
join-pack-concepts = { $concepts ->
    [one] { $concepts } concept this year
   *[other] { $concepts } concepts this year
}
join-code = Type the long code on your slip
join-code-text = The code shows where you sit. It has no name in it.
join-code-label = Code
join-code-good = The code fits.
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
