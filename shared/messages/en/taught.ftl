## What was taught again, and whether it helped: on screens and on paper.
taught-says-rose-more = Results on it rose more than on what was not taught again.
taught-says-likely-rose-more = Results on it likely rose more than on what was not taught again.
taught-says-cannot-tell = It cannot be told yet whether it helped.
taught-says-cannot-tell-ever = It cannot be told whether it helped. There are too few results for that.
taught-says-no-sign = There is no sign that it helped much.
taught-says-too-soon = It is too soon to tell whether it helped.
taught-says-no-answers = Those taught have no results since then.
taught-says-few-others = Too few other concepts have results since then to compare with.
taught-says-taught-once-more = It was taught once more soon after. What came of it stands there.
taught-once-more = { $count ->
    [one] { $count } of { $of } was taught it once more. What came after that is left out here.
   *[other] { $count } of { $of } were taught it once more. What came after that is left out here.
}
taught-next = Look again on { $date }.
taught-answers = { $answers ->
    [one] Since then, { $right } of { $answers } result was right.
   *[other] Since then, { $right } of { $answers } results were right.
}
taught-foretold = By what was known on that day, about { $foretold } would be right; with what changed on concepts not taught again, about { $expected }.
taught-difference = { $way ->
    [more] That is { $count } more than expected.
    [fewer] That is { $count } fewer than expected.
   *[same] About as many were to be expected.
}
taught-practised = { $count ->
    [0] Those taught have not practised it since then.
    [one] Those taught have practised one exercise on it since then. It is not counted.
   *[other] Those taught have practised { $count } exercises on it since then. They are not counted.
}
taught-range = { $way ->
    [more] { $low ->
        [0] Allowing for chance, it is likely some more, { $high } at most.
       *[other] Allowing for chance, it is likely { $low } to { $high } more.
    }
    [fewer] Allowing for chance, it is likely { $low } to { $high } fewer.
   *[mixed] Allowing for chance, it is likely between { $low } fewer and { $high } more.
}
taught-recorded = Recorded that day: { $has } of { $of } had it.
taught-whole-class = The class
taught-from-talk = talk
taught-from-group = small group
taught-from-assignment = assignment
taught-from-hand = by hand
taught-caution = A difference can have other reasons too, such as practice at home or kinder marking. This is an estimate, and no grade for a student or a lesson.
