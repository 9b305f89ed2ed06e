## Why a concept is in practice.
reason-assigned = Your teacher chose this. { $done } of { $of } done.
reason-marked-not-yet = You marked it Not yet.
reason-marked-with-help = You marked it With help.
reason-wrong-last-time = It was tricky last time.
reason-time-to-see-again = { $days ->
    [one] You last met it yesterday. Time to see it again.
   *[other] You last met it { $days } days ago. Time to see it again.
}
reason-focus = You chose to work on it.
reason-chosen = You picked it just now.
reason-first-practice = It is new for you here.
reason-before = It helps with { $title }.
reason-before-plain = It helps with something you are learning.
