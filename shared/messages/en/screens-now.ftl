## The first screen of the desk: what the class needs now
tab-now = Now
now-title = What your class needs now
now-list = What to do, most important first
now-reporting = { $reporting } of { $seats } seats have reported, the newest { $newest }.
now-talk-today = Talk about “{ $concept }” today.
now-talk-day = Talk about “{ $concept }” on { $date }.
now-talk-wrong = { $count ->
    [0] Hardly anybody would get it wrong.
    [one] About one student would get it wrong.
   *[other] About { $count } students would get it wrong.
}
now-talk-order = The ratings put it among the first of that day.
now-way-teach-again = Teach it again, about { $minutes } minutes.
now-way-pair-talk = Let pairs explain it, about { $minutes } minutes.
now-way-short-look = A short look is enough, about { $minutes ->
    [one] one minute.
   *[other] { $minutes } minutes.
}
now-sure-and-wrong = The class feels sure of “{ $concept }”, but most answers are wrong.
now-sure-and-wrong-why = { $sure } of { $rated } who rated it chose On my own or Could teach it.
now-weak = “{ $concept }” { $certainty ->
    [clear] is
    [likely] is likely
   *[other] may be
} weak in the class.
now-weak-order = “{ $concept }” is among the weakest by the ratings.
now-weak-heads = About { $about } of { $of } students have it; the likely range is { $low } to { $high }.
now-weak-low = { $low } of { $rated } who rated it chose Not yet or With help.
now-nothing-weak = { $certainty ->
    [not_sure] No concept is clearly weak in the class now.
   *[other] No concept is weak in the class now.
}
now-nothing-weak-why = { $count ->
    [one] At least 7 in 10 students have the one concept that was taught and rated.
   *[other] At least 7 in 10 students have each of the { $count } concepts that were taught and rated.
}
now-together = { $count } students could work on “{ $concept }” in { $groups ->
    [one] a small group
   *[other] small groups
}.
now-together-why = They seem to need it, and most of those who reported do not.
now-together-why-order = Each of them last chose Not yet or With help.
now-taught-again = “{ $concept }”: { $help ->
    [rose_more] results on it rose more than on what was not taught again.
    [likely_rose_more] results on it likely rose more than on what was not taught again.
    [no_sign] there is no sign that teaching it again helped much.
    [cannot_tell] it cannot be told yet whether teaching it again helped.
   *[other] it cannot be told whether teaching it again helped.
}
now-taught-again-why = { $count ->
    [one] One student was taught it again on { $date }.
   *[other] { $count } students were taught it again on { $date }.
}
now-sure-but-wrong = { $count ->
    [one] One student says sure and gets it wrong: “{ $concept }”.
   *[other] { $count } students say sure and get it wrong: “{ $concept }”.
}
now-sure-but-wrong-why = Since the last rating, more was wrong or needed help than was right.
now-unsure-but-right = { $count ->
    [one] One student can do it and does not trust it yet: “{ $concept }”.
   *[other] { $count } students can do it and do not trust it yet: “{ $concept }”.
}
now-unsure-but-right-why = Since the last rating, more was right alone than was wrong or needed help.
now-certain-counted = This is counted.
now-certain-clear = This is clear.
now-certain-likely = This is likely.
now-certain-not-sure = This is not sure yet. Ask a few students first.
now-certain-ratings-alone = This goes by ratings alone.
now-certain-ask-first = Few have reported. Ask the class first.
now-do-show = Show on the projector
now-do-group = Suggest groups
now-do-assign = Assign practice
now-do-print = Print a sheet
now-numbers = The numbers
now-who = Who?
now-who-hide = Hide who
now-nothing-title = Nothing has been handed in yet
now-nothing-words = Students rate each concept after the review and hand in a small file. Then this page says in a few sentences what the class needs.
now-none-yet = Reports have come in, but none yet on a concept that was taught. The sentences come with the first of them.
now-known = What is known, and what will come
now-known-order = The ratings tell which concepts are weaker than others. How many students have a concept is said after about 430 results from five students or more.
now-known-small = This class has fewer than five students. So counts and an order are all that can be said.
now-known-trend = { $passes ->
    [0] Whether a concept rises or falls is said after six passes with three raters. There is none so far.
    [one] Whether a concept rises or falls is said after six passes with three raters. There is one so far.
   *[other] Whether a concept rises or falls is said after six passes with three raters. There are { $passes } so far.
}
now-board = The whole board
now-lacking = { $count ->
    [0] Who has not: nothing is missing
   *[other] Who has not: { $count } to look at
}

## Today and the next school day
days-title = Today and the next school day
days-today = Today
days-tomorrow = Tomorrow
days-on = { $name }, day { $day }
days-first-lesson = First lesson on this day.
days-preview = Not taught yet.
days-talk-teach-again = Teach it again.
days-talk-pair-talk = Let pairs explain it.
days-talk-short-look = Take a short look.
days-weak-before = Look at this first: { $concepts }.
days-plan = Plan the talk
days-sheet = Print a sheet to copy
days-paper = { $count ->
    [one] One student works on paper.
   *[other] { $count } students work on paper.
}
days-none = There is no school day ahead.
days-open = Today and the next school day: what to prepare and what to copy
