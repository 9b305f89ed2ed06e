## Copies, backups, second devices, PIN, removal.
safe-title = Keep it safe
safe-backup = Backup
safe-backup-text = A sealed file with everything in it. Keep it somewhere else, such as on a USB stick. Without its passphrase nobody can open it.
safe-backup-make = Make a backup
safe-backup-open = Open a backup
safe-backup-made = The backup is saved: { $file }
safe-backup-restored = The backup is open.
safe-backup-replaced = The backup is open. What was here before is kept among the copies.
safe-passphrase = Passphrase
safe-passphrase-again = The same again
safe-passphrase-hint = At least 8 letters, numbers or spaces. Four words that have nothing to do with each other are good. Write them down: nobody can tell you the passphrase later.
safe-passphrase-short = Use at least 8 letters, numbers or spaces.
safe-passphrase-differs = The two are not the same.
safe-passphrase-for = Passphrase of { $file }
safe-open = Open
safe-copies = Copies on this device
safe-copies-text = Surefoot makes a copy on each day of use and keeps the newest ones.
safe-copies-none = No copy has been made yet.
safe-copies-trouble = The last copy could not be made.
safe-copies-lock-trouble = Copies from before the lock could not all be overwritten. Someone may be able to read them without the passphrase.
safe-copy-daily = Copy of { $date }
safe-copy-change = Copy from before a newer Surefoot
safe-copy-replaced = Replaced on { $date }
safe-copy-no-day = an unknown day
safe-copy-use = Go back to it
safe-copy-used = That copy is in use now. What was here before is kept among the copies.
safe-copy-sure = Go back to this copy? What came after it is then no longer shown. What is here now is kept among the copies.
safe-damaged-student = The data of { $name } cannot be read.
safe-damaged-someone = The data of one student cannot be read.
safe-damaged-desk = The teacher's desk cannot be read.
safe-damaged-others = Everything else on this device works. The file stays as it was found.
safe-damaged-copy = There is a good copy of { $date }.
safe-damaged-none = There is no good copy on this device. If you have a backup, open it.
safe-second = Second device
safe-second-text = Take everything along to another device of yours. Both then hand in for your seat.
safe-second-make = Make a carry file
safe-second-made = The carry file is saved: { $file }
safe-second-open = Open a carry file
safe-second-new = { $name } is on this device now.
safe-second-done = { $count ->
    [0] Nothing was new in the carry file.
    [one] { $count } new entry came along.
   *[other] { $count } new entries came along.
}
safe-pin = PIN
safe-pin-text = On a shared tablet a PIN keeps others out of your pages.
safe-pin-is = A PIN is set.
safe-pin-set = Set a PIN
safe-pin-change = Change the PIN
safe-pin-remove = Remove the PIN
safe-pin-saved = The PIN is set.
safe-pin-removed = The PIN was removed.
safe-pin-digits = 4 to 8 digits
safe-pin-of = PIN of { $name }
safe-pin-wrong = This is not the PIN.
safe-pin-slip = Take your slip. Only you can set your PIN, because only you have the slip.
safe-pin-code = Long code on the slip
safe-pin-signs = PIN signs on the slip
safe-pin-forgot = Forgot it? Type the PIN signs of your slip here. Your teacher can print the slip again. You lose nothing.
safe-pin-reset = Remove the PIN
safe-lock = Lock of the desk
safe-lock-text = A lock encrypts the students' names, the codes on their slips and the keys of the classes on this computer. The passphrase is asked for when the desk opens, and again after a time without use.
safe-lock-limits = Ratings and results are not encrypted. They are stored by seat number.
safe-lock-backup = Make a backup first and keep its passphrase elsewhere. If you forget the passphrase of the desk, only a backup brings the names back.
safe-lock-copies-removed = This overwrites the copies on this computer that the current passphrase opens. A new copy is made. What you removed in the last ten minutes can then no longer be restored.
safe-lock-copies = This overwrites the copies on this computer that open without a passphrase or with the current one. A new copy is made. What you removed in the last ten minutes can then no longer be restored.
safe-lock-is = The desk has a lock.
safe-lock-set = Set a lock
safe-lock-change = Change the passphrase
safe-lock-remove = Remove the lock
safe-lock-was-set = The desk has a lock now.
safe-lock-was-changed = The passphrase is changed.
safe-lock-was-removed = The lock is removed. Names and keys are no longer protected.
safe-lock-current = Current passphrase
safe-lock-new = New passphrase
safe-lock-wrong = This is not the passphrase of the desk.
safe-lock-idle = Lock the desk
safe-lock-idle-minutes = after { $minutes } minutes without use
safe-lock-idle-never = never by itself
safe-lock-readable = { $count ->
    [one] { $count } copy on this computer may open without the passphrase. Change the passphrase to overwrite it.
   *[other] { $count } copies on this computer may open without the passphrase. Change the passphrase to overwrite them.
}
lock-title = The desk is locked
lock-lead = Type the passphrase of the desk.
lock-kept = Nothing is lost. The desk opens where you left it.
lock-open = Open the desk
lock-projector = Show today's review
lock-projector-text = A substitute can show the exercises of the day on the projector. It shows no names and nothing about how the class does.
lock-projector-none = There is nothing to show today.
lock-forgot = Forgot the passphrase?
lock-forgot-text = Nobody can open the desk without it. Open a backup: the desk is then as it was on that day, and has no lock. Import hand-ins again for newer ratings; what you typed in later is missing.
lock-forgot-kept = The locked desk stays among the copies on this computer. You can go back to it if you remember the passphrase.
lock-new-text = Without a backup you can start with an empty desk.
lock-new = Start an empty desk
lock-new-sure = Start an empty desk in the place of the locked one? The locked desk stays among the copies on this computer.
lock-new-done = The desk is empty now. The locked desk is among the copies.
safe-remove = Remove
safe-remove-student = Remove me from this device
safe-remove-student-sure = Remove everything of { $name } from this device, the copies too? This cannot be undone. Files that you saved or handed in elsewhere stay where they are.
safe-removed = Everything was removed.
safe-remove-text = A student or a class is removed on the class screen. The copies on this device that hold them are removed too; files that were saved elsewhere stay where they are.
safe-remove-all = Remove everything
safe-remove-all-what = { $classes ->
    [one] { $classes } class
   *[other] { $classes } classes
} with { $seats ->
    [one] { $seats } seat
   *[other] { $seats } seats
}, and { $students ->
    [0] no student
    [one] { $students } student
   *[other] { $students } students
} of this device.
safe-remove-all-type = To go on, type: { $word }
safe-remove-all-sure = Remove every class and every student from this device, with all copies? This cannot be undone. Files that were saved elsewhere stay where they are.
safe-remove-yes = Remove for good
safe-year-over-class = The school year of { $title } ended on { $date }. Keep only what is still needed: make a backup if you must, then remove the class.
safe-year-over-student = { $name }: the school year ended on { $date }. When you no longer need anything of it, remove it in the settings.
safe-class-key = Second computer
safe-class-key-text = A sealed file with the keys and names of this class. A second computer, of yours or of a teacher who shares the class, can then open the hand-ins. One computer saves the class packs. Opening a newer class key brings the other up to date.
safe-class-key-make = Save the class key
safe-class-key-made = The class key is saved: { $file }
safe-class-key-open = Open a class key
safe-class-key-done = The class is on this computer now.
packs-who = Who saves the class packs?
packs-stay = This computer, as before. The other one reads.
packs-over = The other computer from now on. This one reads.
packs-elsewhere = Another computer saves the packs of this class. What you change in the set-up here stays here.
packs-here = Save the packs here again
packs-here-ask = Save the packs here?
packs-here-words = Do this only if the other computer has stopped. Two computers that save packs disagree, and students get one pack or the other.
packs-here-done = This computer saves the class packs now.
folder-title = Class folder
folder-desk-text = Name a folder that your school shares already: on its network, in the cloud, or on a USB stick. Surefoot puts the class pack there after each change and imports hand-ins as they come, while the desk is open. Surefoot itself sends nothing: your school’s system moves the files. Students choose the folder on their device once.
folder-desk-readers = Others who can read this folder see how many devices hand in, and on which days. They cannot read a hand-in. Students' names are not in it.
folder-desk-name = Name the class folder
folder-desk-looking = Surefoot is looking at it for the first time.
folder-desk-waiting = A changed class pack goes there next.
folder-desk-reached = Last reached on { $date }. The class packs in it are up to date.
folder-desk-undo = Files in it that you undo do not come again by themselves. They come with the next hand-in of the student, or with Import a folder.
folder-last-reached = It was last reached on { $date }.
folder-stop = Stop using it
folder-desk-stop = Stop using the class folder?
folder-desk-stop-words = { $count ->
    [one] It stops for { $titles }. Packs and hand-ins no longer travel by themselves. What is in the folder stays.
   *[other] It stops for all your classes here: { $titles }. Packs and hand-ins no longer travel by themselves. What is in the folder stays.
}
folder-desk-stopped = The class folder is not used any more.
folder-trouble-away = The class folder is not there just now.
folder-trouble-full = The class folder is full.
folder-trouble-read-only = This device may not write in the class folder.
folder-trouble-silent = The class folder does not answer.
folder-trouble-no-pack = This folder has no class pack of this class.
folder-trouble-too-many = The class folder has too many files. Class packs still go there, but hand-ins may be missed. Remove the files that do not belong there.
folder-trouble-in-the-way = Something else in the class folder has the name of a file that goes there. Remove it.
folder-trouble-not-allowed = This device may not use the class folder any more. Choose the folder again.
folder-trouble-changes-names = This folder gives files other names, so Surefoot cannot use it. Choose another folder.
folder-trouble-other = The class folder cannot be used just now.
safe-notes = What to know
safe-note-law = Your local law and your school's policy on children's data come first. Ask your school before you begin.
safe-note-grade = A self-rating is the student's own view. It is not a grade and not a diagnosis.
safe-note-special = Decisions about special education are made in your school's own procedure, never by this program.
safe-note-names = Without a lock of the desk, whoever can read this computer's files can read the names in them. Lock the computer and encrypt its disk.
removed-class = { $title } was deleted.
removed-seat = { $name } was removed from { $title }.
removed-own-exercise = An exercise of your own was removed from { $title }.
removed-own-import = An import of your own was undone in { $title }.
removed-more = { $count ->
    [one] One more can be restored
   *[other] { $count } more can be restored
}
removed-words = It is no longer on the disk. For ten minutes, or until you close Surefoot, it can be restored from memory.
removed-restore = Restore
removed-discard = Delete it for good now
removed-restored = It is restored, as it was.
removed-moved = { $name } moved from { $title } to { $to }.
removed-moved-words = For ten minutes, or until you close Surefoot, you can move the student back, with everything.
removed-move-back = Move back
removed-moved-keep = Leave it so
removed-warning = It is removed from the disk and from the copies on this computer at once. For ten minutes, or until you close Surefoot, it can be restored. After that nobody can restore it.
