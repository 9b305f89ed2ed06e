## Words on printed pages.
report-page = Page { $page } of { $pages }
report-practice = Practice
report-name = Name
report-date = Date
report-number = No.
report-answer = Answer
report-key = Answer key: { $title }
report-remainder = remainder
report-write-sign = Write <, = or > in the circle.
report-order = Number them from 1 to { $count }. 1 is for: { $first }. { $count } is for: { $last }.
report-mark-line = Mark the point on the number line.
report-draw-line = Draw it on the number line.
report-mark-grid = Mark the point on the grid.
report-draw-side = Draw the other side of the angle.
report-shade = Shade the parts.
report-draw-graph = Draw the graph.
report-draw-squares = Shade the squares.

## Self-rating charts.
report-chart = My self-ratings
report-chart-how = After the review, write how sure you are.
report-chart-summary = Self-ratings by pass: { $day }
report-own-view = This is your own view. It is not a grade.
report-day = Day { $day }
report-concept = Concept
