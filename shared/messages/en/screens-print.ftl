## The teacher's Print screen.
tab-print = Print
print-title = Print
print-words = Sheets, charts and reports are PDFs in black and white that you save and print. A sheet mixes your own exercises with built-in ones.
print-what = What to print
print-level = Level
print-level-1 = First steps
print-level-2 = What the grade expects
print-level-3 = A stretch
print-count = Exercises of each
print-key = With the answer key, on a page of its own
print-language = Language on paper
print-room = Space
print-roomy = With space to work
print-compact = Compact, to save paper
print-will-sheet = { $concepts ->
    [one] { $concepts } concept
   *[other] { $concepts } concepts
}, { $exercises ->
    [one] { $exercises } exercise
   *[other] { $exercises } exercises
} with fresh numbers. { $paper }, { $language }.
print-save = Save as PDF
print-saved = { $file } was saved. { $place }
print-not-saved = Nothing was saved.
print-fault-concepts = Choose at least one concept.
print-fault-count = Choose 1 to { $most } exercises.
print-student = Student
print-day = For
print-day-today = Today
print-day-next = The next school day
print-day-other = Another day
print-day-date = Day
print-other-numbers = Other numbers
print-exercise = Exercise { $number }
print-answer = Answer:
print-section-sheet = Practice sheet
print-section-seat-sheet = Sheet for one student
print-section-warm-up = Warm-up
print-halves = Two half-sheets on a page, to cut apart
print-section-chart = Self-rating chart
print-section-report = Reports
print-section-table = Tables
print-preview-language = The exercises are shown here in { $shown }. The file has them in { $file }.
print-all-students = All students
print-without-font = No font on this computer has some signs of { $words }: { $signs }. They are printed as question marks.
print-section-slips = Join slips
print-report = Report
print-group = Group
print-group-line = { $slot }: { $concept }
print-group-none = No groups have been kept yet. Make them under Groups and keep them.
print-will-seat-sheet = Up to { $concepts } concepts, { $exercises ->
    [one] { $exercises } exercise
   *[other] { $exercises } exercises
} of each with fresh numbers. { $paper }, { $language }.
print-will-report = As shown below. { $paper }, { $language }.
print-will-file = One file. { $paper }, { $language }.
print-will-table = The words in it: { $language }.
print-save-table = Save the table
