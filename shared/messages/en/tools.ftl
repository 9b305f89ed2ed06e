## Hands-on tools beside an exercise and on their own.
tools = Tools
tools-open = Tools
tools-pick = Take a tool
tools-alone = Open the tools
tools-lead = Try things out. Nothing here is handed in.
tool-clear = Start over
tool-less = Less: { $thing }
tool-more = More: { $thing }
tool-remove = Take away { $thing }
tool-left = to the left
tool-right = to the right

tool-line = Number line
tool-line-point = Point on the number line
tool-line-at = The point is at { $at }.
tool-line-hop = from { $from } to { $to }
tool-line-hops = Hops { $hops }.
tool-line-hop-by = Hop by
tool-line-range = Line
tool-line-range-of = { $from } to { $to }
tool-line-parts = Parts of each whole

tool-strips = Fraction strips
tool-strip = Strip { $strip }
tool-strip-is = Strip { $strip }: { $shaded } of { $parts } equal parts shaded.
tool-strips-same = Strips { $a } and { $b } are shaded to the same length.
tool-strips-none = There is no strip. Add one.
tool-strips-add = Add a strip with this many parts

tool-blocks = Base-ten blocks
tool-blocks-none = Add blocks below.
tool-blocks-cubes = Cubes
tool-blocks-rods = Rods
tool-blocks-flats = Flats
tool-blocks-large = Large cubes
tool-blocks-trade-cubes = 10 cubes for 1 rod
tool-blocks-trade-rods = 10 rods for 1 flat
tool-blocks-trade-flats = 10 flats for 1 large cube
tool-blocks-split-rods = 1 rod into 10 cubes
tool-blocks-split-flats = 1 flat into 10 rods
tool-blocks-split-large = 1 large cube into 10 flats

tool-counters = Counters
tool-counters-filled = Filled
tool-counters-ringed = Ringed
tool-frames = Ten-frames
tool-frame = Ten-frame { $frame }
tool-frame-is = Ten-frame { $frame }: { $filled } filled, { $ringed } ringed, { $empty } empty.

tool-chart = Hundred chart
tool-chart-none = No number is marked.
tool-chart-marked = Marked: { $numbers }.
tool-chart-on = Count on by { $step }
tool-chart-step = Count by

tool-protractor = Protractor
tool-protractor-less = Close by { $degrees } degrees
tool-protractor-more = Open by { $degrees } degrees
tool-protractor-side = The angle opens
tool-protractor-right = From the right
tool-protractor-left = From the left

tool-ruler = Ruler
tool-ruler-cm = Centimeters
tool-ruler-in = Inches
tool-ruler-units = Unit
tool-ruler-from = Left end
tool-ruler-to = Right end
tool-ruler-mark = { $end } one mark { $way }
tool-ruler-unit = { $end } one unit { $way }
tool-ruler-place = { $marks ->
    [one] { $whole } and { $marks } mark
   *[other] { $whole } and { $marks } marks
}

tool-clock = Clock
tool-clock-hour = 1 h
tool-clock-minutes = { $minutes } min
tool-clock-on = Turn on { $time }
tool-clock-back = Turn back { $time }

tool-timer = Timer
tool-timer-set = { $minutes ->
    [one] Set to { $minutes } minute. You do not have to use it.
   *[other] Set to { $minutes } minutes. You do not have to use it.
}
tool-timer-left = { $minutes ->
    [one] { $minutes } minute is left.
   *[other] { $minutes } minutes are left.
}
tool-timer-waits = It is paused.
tool-timer-over = The time is over. Go on as long as you like.
tool-timer-minutes = Minutes
tool-timer-start = Start
tool-timer-wait = Pause

tool-coins = Coins
tool-coins-none = No coins yet.
tool-coins-of = { $count } × { $worth }
tool-coins-are = On the table: { $pieces }.

tool-grid = Grid
tool-grid-kind = What to mark
tool-grid-squares = Squares
tool-grid-points = Points
tool-grid-none = No points yet.
tool-grid-are = Points: { $points }.
tool-grid-put = Point { $point }

tool-notes = Notepad
tool-notes-type = Or type here
tool-notes-are = { $strokes ->
    [one] { $strokes } pen stroke
   *[other] { $strokes } pen strokes
}, { $words ->
    [one] { $words } typed word
   *[other] { $words } typed words
}.
