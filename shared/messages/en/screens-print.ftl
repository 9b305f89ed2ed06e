## The teacher's Print screen.
tab-print = Print
print-title = Print
print-words = Every print is a PDF in black and white that you save, look at and print.
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
print-key = With the answer key, on a page apart
print-language = Language of the print
print-room = Room
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
print-fault-count = Choose 1 to 20 exercises.
