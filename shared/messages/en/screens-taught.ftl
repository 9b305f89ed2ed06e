## The screen of what was taught again, and its button on other screens.
taught-title = Taught again
taught-lead = What was tried, with whom, and whether it helped.
taught-open = What was taught again
taught-empty-title = Nothing is noted yet
taught-empty-words = Note what you taught again. A pass later, Surefoot compares it with what was not taught again.
taught-button = Taught again
taught-button-of = Taught again: { $title }
taught-add = Note something
taught-form = What was taught again?
taught-concept = Concept
taught-date = On
taught-whom = With whom
taught-whom-class = The class, without those noted as absent
taught-whom-some = Some students
taught-note = What you did (you can leave this empty)
taught-note-help = Up to 200 letters, without names.
taught-save = Note it
taught-nobody = Choose at least one student.
taught-noted = Noted: { $title } was taught again.
taught-changed = The entry was changed.
taught-dropped = The entry was removed. The results stay.
taught-drop = Remove
taught-drop-of = Remove the entry: { $title }, { $date }
taught-edit = Change
taught-edit-of = Change the entry: { $title }, { $date }
taught-numbers = The numbers
taught-how-words = Everything reported up to that day foretells the answers after it, so a weak day that rights itself does not count as help. { $count ->
    [one] { $count } concept that was not taught again shows
   *[other] { $count } concepts that were not taught again show
} what changed anyway. By chance, “rose more” is said of about 5 in 100 that changed nothing, and “likely” of about 10 more.
taught-by = Show
taught-by-all = Everything
taught-by-none = Nothing was noted for this choice.
taught-print = Print this list
taught-of-class = with the class

## Small groups that last.
groups-continue = Continue on { $date }
groups-continued = The group is kept for { $date }: those who need more, and who was absent.
groups-repeat = Use again
groups-repeated = These groups are on the board. Nothing is kept until you keep them.
groups-coming = Groups for later
groups-missed = Absent that day: { $who }
groups-partner = Each group gets a stronger partner
groups-partner-words = Somebody who has the concept, says so, and sits in no group at that time.
groups-partner-of = Explains it: { $who }
groups-pairs = Pairs
groups-pairs-words = One who needs the concept and one who has it.
groups-alone = on their own: { $concept }
groups-show = Show to the class
groups-shown-title = Who sits where
groups-shown-round = Round { $slot }
groups-shown-group = Group { $nth }
groups-shown-others = All others: practise on your own.
groups-shown-back = Back
