## Words that several screens share.
one-moment = One moment …

action-back = Back
action-next = Next
action-close = Close
action-cancel = Cancel
action-stop = Stop
action-undo = Undo
action-try-again = Try again
action-save = Save
action-print = Print
action-change = Change

confidence-0 = Not yet
confidence-1 = With help
confidence-2 = On my own
confidence-3 = Could teach it
confidence-none = Not rated

outcome-right = Right
outcome-wrong = Wrong
outcome-not-done = Not done

phase-preview = Preview
phase-practice = Practice
phase-review = Review

## A text that is missing in the language of the screens.
only-in = only in { $language }

theme-system = As the device
theme-light = Light
theme-dark = Dark
theme-contrast = High contrast
theme-contrast-dark = High contrast, dark
theme-device = As the device

## Mathematics read out.
math-blank = blank
math-plus = plus
math-minus = minus
math-times = times
math-divided-by = divided by
math-fraction = { $top } over { $bottom }
math-mixed = { $whole } and { $top } over { $bottom }
math-group = open bracket { $inner } close bracket
math-power = { $base } to the power { $exponent }
math-absolute = absolute value of { $inner }
math-ratio = { $left } to { $right }
math-percent = { $inner } percent
math-pair = open bracket { $x }, { $y } close bracket
math-degrees = { $inner } degrees
math-sign-less = is less than
math-sign-equal = equals
math-sign-greater = is greater than
math-sign-at-most = is at most
math-sign-at-least = is at least
math-sign-not-equal = is not equal to
math-sign-about = is about
math-sign-blank = a sign is missing

## Read aloud.
aloud-read = Read aloud
aloud-stop = Stop reading
aloud-hint = Read hint { $number } aloud
aloud-feedback = Read the answer part aloud
aloud-none = Nothing can be read aloud
aloud-choice = Choice { $number }: { $words }
aloud-point = { $whole } point { $digits }
aloud-comma = { $whole } comma { $digits }
aloud-dollars = { $dollars ->
    [one] { $dollars } dollar
   *[other] { $dollars } dollars
}
aloud-money = { $dollars ->
    [one] { $dollars } dollar
   *[other] { $dollars } dollars
} and { $cents ->
    [one] { $cents } cent
   *[other] { $cents } cents
}
slips-how = Open the class pack in Surefoot and type this code.
slips-pin = Your PIN signs. Keep them to yourself. They set a PIN, or remove one that you forgot.
unsaved-title = Not saved yet
unsaved-text = What you wrote here is not saved. If you go back now, it is lost.
unsaved-stay = Stay here
unsaved-leave = Go back without it

## Words that lists of teachers use, in small letters, with commas between them.
reading-weekdays = mon, tue, tues, wed, thu, thur, thurs, fri, sat, sun, monday, tuesday, wednesday, thursday, friday, saturday, sunday
reading-week = week, wk, w, weeks, wks
reading-last-year = last year, taught last year, already taught, previous year, prior year, previously taught
reading-date-words = of, the, on
reading-until = to, until, through, thru
reading-pacing-headings = concept, concepts, topic, topics, title, date, dates, week, weeks, day, days, standard, standards, code, unit, lesson, skill, start, first, begins, taught, pacing, guide, list
