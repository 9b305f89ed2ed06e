## The teacher's Print screen.
tab-print = Print
print-title = Print
print-words = Sheets, charts and reports are PDFs in black and white that you save and print. On a sheet, your own exercises take turns with fresh ones.
print-what = What to print
print-sheet = Practice sheet
print-chart = Self-rating chart
print-slips = Join slips
print-slips-words = Slips with each student's code stand beside the class pack.
print-slips-open = Go to the class pack
print-chart-words = Every concept of the rotation, with room for a number from 0 to 3 in each pass. For students without a device; enter the numbers under Enter.
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
print-will-chart = One table for each day of the rotation. { $paper }, { $language }.
print-save = Save as PDF
print-saved = { $file } was saved. { $place }
print-not-saved = Nothing was saved.
print-fault-concepts = Choose at least one concept.
print-fault-count = Choose 1 to { $most } exercises.
print-seat-sheet = Sheet for one student
print-seat-sheet-words = Up to six concepts for one student: what you assigned first, then what the reports say is needed most. For students without a device, or who would rather write.
print-student = Student
print-other-numbers = Other numbers
print-exercise = Exercise { $number }
print-answer = Answer:
print-everyone = Everyone who has reported, a page each
print-reports = Reports
print-tables = Tables
print-tables-words = For spreadsheets, without a name. Small counts can point to a child: for the school, use the class table under Reports.
print-table-workbook = Workbook (XLSX)
print-table-board-csv = Board (CSV)
print-table-summary-csv = Class summary (CSV)
print-report = Report
print-report-family = Family page
print-report-family-words = One page in plain words for the family of one student. No other student stands on it.
print-report-conference = Page for a talk with a student
print-report-conference-words = Ratings, results, practice and what you saw, with room for what you agree on.
print-report-group = Small group
print-report-group-words = One page for a small group: who, what goes wrong, exercises, and what came of it.
print-report-talk = Today's talk
print-report-talk-words = The concepts that deserve the few minutes, each with an exercise and the common mistake. Without a name.
print-report-class-summary = Class summary
print-report-class-summary-words = Every concept with its estimate, ratings and practice. For the teachers of this class.
print-report-share-safe = Class table for the school
print-report-share-safe-words = Shares without a name, with small groups withheld and checked. Every table that is saved is noted, since two tables of nearly the same class can give a student away.
print-group = Group
print-group-line = { $slot }: { $concept }
print-group-none = No groups have been kept yet. Make them under Groups and keep them.
print-will-seat-sheet = Up to { $concepts } concepts, { $exercises ->
    [one] { $exercises } exercise
   *[other] { $exercises } exercises
} of each with fresh numbers. { $paper }, { $language }.
print-will-report = As shown below. { $paper }, { $language }.
print-will-table = The words in it: { $language }.
print-save-table = Save the table
