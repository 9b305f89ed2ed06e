## What was taught again, and whether it helped: on screens and on paper.
taught-says-rose-more = Those taught again rose more than the rest.
taught-says-likely-rose-more = Those taught again probably rose more than the rest.
taught-says-cannot-tell = It cannot be told yet whether it helped.
taught-says-no-sign = There is no sign that it helped much.
taught-says-too-soon = It is too soon to tell whether it helped.
taught-says-no-answers = Those taught have no results or practice since then.
taught-says-few-others = Too few other concepts have results since then to compare with.
taught-says-taught-once-more = It was taught once more soon after. What came of it stands there.
taught-next = Look again on { $date }.
taught-never = There are too few answers for that.
taught-answers = { $answers ->
    [one] Since then, { $right } of { $answers } answer was right.
   *[other] Since then, { $right } of { $answers } answers were right.
}
taught-foretold = By what was known on that day, about { $foretold } would be right; with what changed on concepts not taught again, about { $expected }.
taught-range = { $way ->
    [more] That is likely { $low } to { $high } more than expected.
    [fewer] That is likely { $low } to { $high } fewer than expected.
   *[mixed] That is likely between { $low } fewer and { $high } more than expected.
}
taught-recorded = Recorded that day: { $has } of { $of } had it.
taught-whole-class = The class
taught-from-talk = talk
taught-from-group = small group
taught-from-assignment = assignment
taught-from-hand = by hand
taught-caution = A difference can have other reasons too. This is an estimate, and no grade for a student or a lesson.
