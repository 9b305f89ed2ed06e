shape-triangle = triangle
shape-quadrilateral = quadrilateral
shape-pentagon = pentagon
shape-hexagon = hexagon
shape-octagon = octagon
shape-square = square
shape-rectangle = rectangle
shape-rhombus = rhombus
shape-parallelogram = parallelogram
shape-trapezoid = trapezoid
shape-circle = circle
shape-bar = rectangle
shape-figure = Picture of a shape: { $shape }.
shape-all = All of them
shape-some = Some of them, not all
shape-none = None of them
family-quadrilateral = quadrilateral
family-rectangle = rectangle
family-rhombus = rhombus
family-triangle = triangle
fact-equal-sides = All four sides have the same length
fact-right-angles = All four angles are right angles
fact-two-parallel-pairs = There are two pairs of parallel sides
fact-one-parallel-pair = There is exactly one pair of parallel sides
fold-equilateral = triangle with three equal sides
fold-isosceles = triangle with exactly two equal sides
fold-pentagon = pentagon with equal sides and angles
fold-hexagon = hexagon with equal sides and angles
triangle-right = Right triangle
triangle-obtuse = Obtuse triangle
triangle-acute = Acute triangle
angle-acute = Acute
angle-right = Right
angle-obtuse = Obtuse
stroke-segment = Line segment
stroke-ray = Ray
stroke-line = Line
pair-parallel = Parallel
pair-perpendicular = Perpendicular
pair-neither = Neither one
all-squares = squares
all-rectangles = rectangles
all-rhombuses = rhombuses
all-parallelograms = parallelograms
all-quadrilaterals = quadrilaterals
property-right-angles = four right angles
property-equal-sides = four equal sides
property-parallel = two pairs of parallel sides
property-opposite-sides = opposite sides that are equal
property-opposite-angles = opposite angles that are equal
property-four-sides = four sides
property-five-angles = five angles
tree-neither = Neither one is inside the other

g3-shape-families-ask-sides = Think of this shape: { $shape }. How many sides does it have?
g3-shape-families-ask-corners = Think of this shape: { $shape }. How many corners does it have?
g3-shape-families-ask-families = This is a { $shape }. Which names fit it? Choose all.
g3-shape-families-ask-belongs = Think of each { $shape }. How many of them are also a { $family }?
g3-shape-families-ask-belongs-1 = { $name } draws many shapes. Each is a { $shape }. How many of them are also a { $family }?
g3-shape-families-ask-belongs-2 = { $name } cuts shapes out of paper. Each is a { $shape }. How many of them can be called a { $family } too?
g3-shape-families-hint-walk = Think of going around the shape.
g3-shape-families-hint-same = A flat shape has the same number of corners and sides.
g3-shape-families-hint-rectangle = A rectangle has four right angles.
g3-shape-families-hint-rhombus = A rhombus has four equal sides.
g3-shape-families-step-count = It has { $n } of each: { $shape }.
g3-shape-families-step-quadrilateral = Each shape with four sides is a quadrilateral.
g3-shape-families-step-belongs = Each of them has what the family asks for.
g3-shape-families-step-not = The number of sides differs, so none of them can be.
g3-shape-families-step-some = Some of them have what the family asks for, and some do not.
g3-shape-families-ask-no-name = Which shape is not a rectangle and not a rhombus? A square is both.
g3-shape-families-shape = Shape { $n }
g3-shape-families-corners = A shape with four sides on squares. Its corners are { $a }, { $b }, { $c } and { $d }.
g3-shape-families-step-no-name = Shape { $n } does not have four right angles or four equal sides.
g3-shape-families-ask-sticks = { $name } lays { $n } shapes with sticks, one stick for each side. No stick is shared. Each is this shape: { $shape }. How many sticks does it take?
g3-shape-families-hint-sticks = How many sticks does one shape take?

g3-shape-equal-parts-ask-part = The shape is cut in equal parts. What fraction is the shaded part?
g3-shape-equal-parts-ask-how-many = Each part of a { $shape } is { $fraction } of it. How many equal parts are there?
g3-shape-equal-parts-ask-again = A { $shape } is cut into { $parts } equal parts. Each part is cut into { $again } equal parts. What fraction of the whole is one small part?
g3-shape-equal-parts-ask-again-1 = { $name } folds a { $shape } into { $parts } equal parts. Then { $name } folds each part into { $again } equal parts. What fraction of the whole is one small part?
g3-shape-equal-parts-ask-again-2 = A { $shape } has { $parts } equal parts. { $name } cuts each of them into { $again } equal parts and takes one small part. What fraction of the whole is that?
g3-shape-equal-parts-ask-cut = A bar is { $length } squares long. You cut it into { $parts } equal parts. After how many squares is each cut? Count from the left.
g3-shape-equal-parts-field-cut = Cut { $n }
g3-shape-equal-parts-hint-share = Share the squares among { $parts } parts.
g3-shape-equal-parts-hint-cut-on = From one cut to the next, count on by one part.
g3-shape-equal-parts-step-cuts = The cuts are after { $cuts } squares.
g3-shape-equal-parts-hint-equal = The parts must all be the same size. Count them all.
g3-shape-equal-parts-step-one = One of { $parts } equal parts is { $fraction }.
g3-shape-equal-parts-hint-one = The numerator is 1 for one part. The denominator is the number of all parts.
g3-shape-equal-parts-ask-part-1 = { $name } cuts a shape in equal parts and colors the shaded part. What fraction is that?
g3-shape-equal-parts-ask-part-2 = Some children share this in equal parts. { $name } gets the shaded part. What fraction is that?
g3-shape-equal-parts-ask-part-3 = A garden is cut in equal parts. { $name } plants the shaded part. What fraction is that?
g3-shape-equal-parts-ask-how-many-1 = { $name } cuts a { $shape } so that each child gets { $fraction } of it. How many children share it?
g3-shape-equal-parts-ask-how-many-2 = { $name } paints { $fraction } of a { $shape } each day. How many days does all of it take?
g3-shape-equal-parts-ask-how-many-3 = { $name } folds a { $shape } into equal parts. One part is { $fraction } of it. How many parts are there?

g4-classify-shapes-ask-triangle = A triangle has angles of { $angles } degrees. What kind is it?
g4-classify-shapes-ask-facts = This is a { $shape }. What is true? Choose all.
g4-classify-shapes-hint-largest = Look at the largest angle.
g4-classify-shapes-hint-ninety = Is it less than 90, exactly 90, or more than 90 degrees?
g4-classify-shapes-hint-parallel = Parallel sides are always the same distance apart.
g4-classify-shapes-hint-sides = Check the sides first. Then check the angles.
g4-classify-shapes-step-largest = The largest angle is { $angle } degrees.
g4-classify-shapes-step-right = It is exactly 90 degrees, so the triangle is a right triangle.
g4-classify-shapes-step-obtuse = It is more than 90 degrees, so the triangle is obtuse.
g4-classify-shapes-step-acute = It is less than 90 degrees, so the triangle is acute.
g4-classify-shapes-step-shape = Check each line for a { $shape }.
g4-classify-shapes-step-true = True: { $fact }

g4-symmetry-ask-count = How many lines of symmetry does the shape have? It is a { $shape }.
g4-symmetry-ask-folds = In how many ways can you fold the shape so that both halves match? It is a { $shape }.
g4-symmetry-ask-folds-1 = { $name } cuts this shape out of paper: { $shape }. In how many ways can it be folded so that both halves match?
g4-symmetry-ask-count-1 = { $name } draws this shape: { $shape }. How many lines of symmetry does it have?
g4-symmetry-hint-fold = Fold along a line. Both halves must lie on each other.
g4-symmetry-hint-corner = Try lines through corners. Try lines through the middles of sides.
g4-symmetry-step-count = { $lines ->
    [one] There is { $lines } such line.
   *[other] There are { $lines } such lines.
}
g4-symmetry-ask-lines = Which of these are lines of symmetry of the shape? Choose all.
g4-symmetry-grid = A shape with the corners A { $a }, B { $b }, C { $c } and D { $d }.
g4-symmetry-line-ac = The line through A and C
g4-symmetry-line-bd = The line through B and D
g4-symmetry-line-ab-cd = The line through the middles of AB and CD
g4-symmetry-line-bc-da = The line through the middles of BC and DA
g4-symmetry-step-line = This is one: { $line }.

g4-angle-turn-ask-1 = How many degrees are { $part } of a full turn?
g4-angle-turn-ask-2 = A wheel makes { $part } of a full turn. How many degrees is that?
g4-angle-turn-ask-part = What part of a full turn are { $degrees } degrees?
g4-angle-turn-ask-part-1 = { $name } turns by { $degrees } degrees. What part of a full turn is that?
g4-angle-turn-ask-part-2 = { $name } turns a wheel by { $degrees } degrees. What part of a full turn is that?
g4-angle-turn-ask-3 = The long hand of a clock goes { $part } of the way around. How many degrees is that?
g4-angle-turn-ask-4 = { $name } dances and makes { $part } of a full turn. How many degrees is that?
g4-angle-turn-ask-5 = { $name } lets a robot turn by { $part } of a full turn. How many degrees is that?
g4-angle-turn-ask-6 = { $name } turns a knob by { $part } of a full turn. How many degrees is that?
g4-angle-turn-hint-full = A full turn has 360 degrees.
g4-angle-turn-hint-one = One part is { $work }.
g4-angle-turn-hint-fraction = Write { $fraction } and make it simpler.

g4-angle-degrees-ask-same = A side makes { $n } turns of one degree. Then it makes { $more } more the same way. How large is the angle?
g4-angle-degrees-ask-back = A side makes { $n } turns of one degree. Then it goes { $more } back. How large is the angle?
g4-angle-degrees-ask-full = A side makes { $n } turns of one degree. How many more make a full turn?
g4-angle-degrees-ask-on-back = A side makes { $n } turns of one degree. Then it goes { $more } more the same way, and { $back } back. How large is the angle?
g4-angle-degrees-hint-one = Each turn of one degree adds 1 degree.
g4-angle-degrees-hint-on = The same way means more.
g4-angle-degrees-hint-back = Back means less.
g4-angle-degrees-hint-full = A full turn has 360 degrees.
g4-angle-degrees-hint-on-back = First go on, then come back.

g4-angle-measure-ask = How many degrees is the angle?
g4-angle-measure-hint-zero = Find the scale that has 0 on one side of the angle. Read the same scale on the other side.
g4-angle-measure-hint-acute = It is less than a right angle. So it is less than 90.
g4-angle-measure-hint-obtuse = It is more than a right angle. So it is more than 90.
g4-angle-measure-step-right = The inner scale starts at 0 here.
g4-angle-measure-step-left = The outer scale starts at 0 here.
g4-angle-measure-step-read = On that scale the other side is at { $degrees }.
g4-angle-measure-ask-make = Turn the side. Make an angle of { $degrees } degrees.
g4-angle-measure-ask-1 = { $name } opens a fan. This is how far it opens. How many degrees is the angle?
g4-angle-measure-ask-2 = { $name } draws an angle for a kite. How many degrees is it?
g4-angle-measure-hint-make = Start at 0 on the right. Stay on that scale.
g4-angle-measure-step-make = On that scale the other side goes to { $degrees }.

g4-angle-add-ask-right = The angles make a right angle. How large is the missing angle?
g4-angle-add-ask-straight = The angles make a straight line. How large is the missing angle?
g4-angle-add-ask-full = The angles make a full turn. How large is the missing angle?
g4-angle-add-ask-given = The angles make { $total } degrees. How large is the missing angle?
g4-angle-add-hint-right = A right angle has { $total } degrees.
g4-angle-add-hint-straight = A straight line has { $total } degrees.
g4-angle-add-hint-full = A full turn has { $total } degrees.
g4-angle-add-hint-given = All parts make { $total } degrees.
g4-angle-add-hint-parts = Take the known parts away from the whole.
g4-angle-add-angle-two = An angle in two parts. One is { $a } degrees. The other is asked for.
g4-angle-add-angle-three = An angle in three parts. Two are { $a } and { $b } degrees. The third is asked for.

g4-lines-angles-ask-angle = An angle has { $degrees } degrees. What kind is it?
g4-lines-angles-ask-stroke = What is the drawing through { $a } and { $b }?
g4-lines-angles-ask-pair = What kind of pair are the two lines?
g4-lines-angles-angle = An angle of { $degrees } degrees.
g4-lines-angles-stroke = A straight stroke through { $a } and { $b } with { $ends ->
    [0] no ends
    [one] { $ends } end
   *[other] { $ends } ends
} and { $arrows ->
    [0] no arrows
    [one] { $arrows } arrow
   *[other] { $arrows } arrows
}.
g4-lines-angles-pair-parallel = Two lines. Each goes { $x1 } across and { $y1 } up. They never meet.
g4-lines-angles-pair-square = Two lines that cross. One goes { $x1 } across and { $y1 } up. The other goes { $x2 } across and { $y2 } up. There is a square mark.
g4-lines-angles-pair-crossing = Two lines that cross. One goes { $x1 } across and { $y1 } up. The other goes { $x2 } across and { $y2 } up.
g4-lines-angles-hint-right = A right angle has 90 degrees.
g4-lines-angles-hint-corner = Compare it with the corner of a sheet of paper.
g4-lines-angles-hint-arrows = An arrow means it goes on and on.
g4-lines-angles-hint-ends = A segment has two ends. A ray has one. A line has none.
g4-lines-angles-hint-parallel = Parallel lines never meet.
g4-lines-angles-hint-perpendicular = Perpendicular lines meet at right angles.
g4-lines-angles-step-acute = It is less than 90, so it is acute.
g4-lines-angles-step-right-angle = It is exactly 90, so it is right.
g4-lines-angles-step-obtuse = It is more than 90, so it is obtuse.
g4-lines-angles-step-segment = It has two ends: a segment.
g4-lines-angles-step-ray = It has one end: a ray.
g4-lines-angles-step-line = It has no end: a line.
g4-lines-angles-step-parallel = They are always the same distance apart: parallel.
g4-lines-angles-step-perpendicular = They meet at right angles: perpendicular.
g4-lines-angles-step-crossing = They meet, but not at right angles.
g4-lines-angles-ask-turn-right = Turn the side. Make a right angle.
g4-lines-angles-ask-turn-less = Turn the side. Make an angle that is { $change } degrees less than a right angle.
g4-lines-angles-ask-turn-more = Turn the side. Make an angle that is { $change } degrees more than a right angle.
g4-lines-angles-hint-turn = Start at 0 on the right. Stay on that scale.
g4-lines-angles-step-turn = On that scale the other side goes to { $degrees }.

g5-shape-properties-hint-family = What must each shape of the family have?
g5-shape-properties-hint-example = Look for one of the family that does not have it.
g5-shape-properties-step-squares = A square has four equal sides and four right angles.
g5-shape-properties-step-rectangles = A rectangle has four right angles.
g5-shape-properties-step-rhombuses = A rhombus has four equal sides.
g5-shape-properties-step-parallelograms = A parallelogram has two pairs of parallel sides.
g5-shape-properties-step-quadrilaterals = A quadrilateral has four sides. It may have nothing more.
g5-shape-properties-step-check = Check each choice: all of them, or only some?
g5-shape-properties-ask-which = Which of these do all { $family } have? Choose all.
g5-shape-properties-ask-families = Which families always have { $property }? Choose all.

g5-shape-tree-ask = Which family is the wider one: { $one } or { $two }?
g5-shape-tree-hint-rules = The wider family has fewer rules.
g5-shape-tree-hint-more = The narrow family must keep more rules.
g5-shape-tree-step-every = All { $narrow } are { $wide }, but not the other way round.
g5-shape-tree-step-so = So the wider family is: { $wide }.
g5-shape-tree-step-chain = Go on like this: the next family has fewer rules.
g5-shape-tree-step-overlap = Some { $one } are not { $two }, and some { $two } are not { $one }.
g5-shape-tree-step-neither = So neither family is inside the other.
g5-shape-tree-ask-order = Put the families in order. Each family is inside the next.
g5-shape-tree-ask-1 = { $name } draws one family inside another. Which one is outside: { $one } or { $two }?
g5-shape-tree-ask-2 = { $name } looks for the family with more shapes in it. Is it { $one } or { $two }?
g5-shape-tree-ask-order-1 = { $name } draws each family inside the next. Put them in order.
g5-shape-tree-ask-order-2 = { $name } starts with the family that has the most rules. Put the families in order.
g5-shape-tree-narrowest = The narrowest family
g5-shape-tree-widest = The widest family

g5-coordinates-ask-walk = Start at (0, 0). Go { $x } to the right and { $y } up. At which point are you?
g5-coordinates-ask-name = What are the coordinates of A?
g5-coordinates-ask-mark = Mark the point { $point }.
g5-coordinates-ask-move-right-up = Start at { $point }. Go { $dx } to the right and { $dy } up. Where are you?
g5-coordinates-ask-move-right-down = Start at { $point }. Go { $dx } to the right and { $dy } down. Where are you?
g5-coordinates-ask-move-left-up = Start at { $point }. Go { $dx } to the left and { $dy } up. Where are you?
g5-coordinates-ask-move-left-down = Start at { $point }. Go { $dx } to the left and { $dy } down. Where are you?
g5-coordinates-grid = A grid with the point A, { $x } to the right and { $y } up.
g5-coordinates-hint-first = The first number tells how far to go across.
g5-coordinates-hint-zero = Count steps, not lines.
g5-coordinates-step-second = The second number tells how far to go up.

g5-coordinates-stories-ask-at-1 = Across: hours. Up: miles walked. { $x ->
    [one] How many miles are walked after { $x } hour?
   *[other] How many miles are walked after { $x } hours?
}
g5-coordinates-stories-ask-at-2 = Across: weeks. Up: height of a plant in centimeters. { $x ->
    [one] How tall is it after { $x } week?
   *[other] How tall is it after { $x } weeks?
}
g5-coordinates-stories-ask-change-1 = Across: hours. Up: miles walked. How many miles are walked from hour { $from } to hour { $to }?
g5-coordinates-stories-ask-change-2 = Across: weeks. Up: height of a plant in centimeters. How many centimeters does it grow from week { $from } to week { $to }?
g5-coordinates-stories-grid = A grid with points at 1, 2, 3 and 4 across. They are { $y1 }, { $y2 }, { $y3 } and { $y4 } up.
g5-coordinates-stories-hint-across = Find the number across first.
g5-coordinates-stories-step-point = The point is { $point }. Its second number tells how high.
g5-coordinates-stories-step-points = The points are { $from } and { $to }. Compare the second numbers.
g5-coordinates-stories-hint-up = Go up to the point. Read how high it is.
g5-coordinates-stories-ask-plot-1 = Across: weeks. Up: height of a plant in centimeters. It is { $start ->
    [one] { $start } centimeter
   *[other] { $start } centimeters
} tall at first and grows { $each ->
    [one] { $each } centimeter
   *[other] { $each } centimeters
} each week. Mark the point for week { $x }.
g5-coordinates-stories-ask-plot-2 = Across: hours. Up: miles walked. A group has walked { $start ->
    [one] { $start } mile
   *[other] { $start } miles
} at first and goes { $each ->
    [one] { $each } mile
   *[other] { $each } miles
} each hour. Mark the point for hour { $x }.
g5-coordinates-stories-ask-plot-3 = Across: days. Up: dollars in a box. { $start ->
    [one] { $start } dollar is
   *[other] { $start } dollars are
} in it at first, and { $each ->
    [one] { $each } dollar comes
   *[other] { $each } dollars come
} in each day. Mark the point for day { $x }.
g5-coordinates-stories-ask-plot-4 = Across: boxes. Up: kilograms. A cart has { $start ->
    [one] { $start } kilogram
   *[other] { $start } kilograms
} in it at first. Each box has { $each ->
    [one] { $each } kilogram
   *[other] { $each } kilograms
}. Mark the point for { $x } boxes.
g5-coordinates-stories-hint-each = How much comes on top up to there?

g6-polygons-on-grid-ask-side = How long is the side from { $a } to { $b }?
g6-polygons-on-grid-ask-corner = Three corners of a rectangle are A { $a }, B { $b } and C { $c }. Where is the fourth corner?
g6-polygons-on-grid-ask-perimeter = Three corners of a rectangle are A { $a }, B { $b } and C { $c }. What is its perimeter?
g6-polygons-on-grid-grid = A grid with the points A { $a }, B { $b } and C { $c }.
g6-polygons-on-grid-outline = A rectangle on a grid.
g6-polygons-on-grid-hint-straight = On a straight side, one coordinate stays the same.
g6-polygons-on-grid-hint-draw = Think of the whole shape.
g6-polygons-on-grid-step-same = The second numbers are the same. Compare the first ones.
g6-polygons-on-grid-step-left = Take the first number of A and the second number of C.
g6-polygons-on-grid-step-sides = The sides are { $w } and { $h }.

g6-area-triangle-ask = What is the area of the triangle?
g6-area-triangle-ask-height = A triangle has an area of { $area } square units and a base of { $b } units. How high is it?
g6-area-triangle-triangle = A triangle with base { $b } and height { $h }.
g6-area-triangle-triangle-base = A triangle with base { $b } and its height drawn in.
g6-area-triangle-hint-half = A triangle is half of a rectangle around it.
g6-area-triangle-hint-rule = Area is base times height, divided by 2.

g6-area-polygons-ask = What is the area of the shape?
g6-area-polygons-parallelogram = A parallelogram with base { $b }, slanted side { $side } and height { $h }.
g6-area-polygons-trapezoid = A trapezoid with parallel sides { $b } and { $top } and height { $h }.
g6-area-polygons-house = A rectangle { $b } wide and { $h } high with a triangle { $roof } high on top.
g6-area-polygons-hint-move = Cut off the slanted end and move it to the other side. You get a rectangle.
g6-area-polygons-hint-upright = The height goes straight up, not along the slanted side.
g6-area-polygons-hint-two-triangles = Cut it into two triangles.
g6-area-polygons-hint-trapezoid = Add the parallel sides. Multiply by the height. Divide by 2.
g6-area-polygons-hint-parts = Cut it into a rectangle and a triangle.
g6-area-polygons-hint-roof = The triangle is half of a rectangle around it.

g6-volume-fraction-edges-ask = A box has edges of { $a }, { $b } and { $c } units. What is its volume in cubic units?
g6-volume-fraction-edges-hint-multiply = Multiply the three edges.
g6-volume-fraction-edges-hint-work = Work out { $work }.

g6-surface-area-ask-box = A box is { $w } by { $d } by { $h }. What is its surface area?
g6-surface-area-ask-pyramid = A pyramid has a square base with edges of { $b }. Each triangle is { $s } high. What is its surface area?
g6-surface-area-net-box = The box unfolded into six rectangles. Edges { $w }, { $d } and { $h }.
g6-surface-area-net-pyramid = The pyramid unfolded: a square with edges of { $b } and a triangle on each side.
g6-surface-area-hint-faces = Find the area of each face. Then add.
g6-surface-area-hint-pairs = Opposite faces of a box are the same.
g6-surface-area-hint-triangles = The four triangles are the same.
g6-surface-area-step-base = Base: { $work }.
g6-surface-area-step-triangles = Triangles: { $work }.
g6-surface-area-ask-net = Which solid does this net make?
g6-surface-area-faces-cube = Six squares of the same size, joined at their edges.
g6-surface-area-faces-box = Six faces with four right angles, joined at their edges. Not all are of the same size.
g6-surface-area-faces-pyramid = A square with a triangle at each side.
g6-surface-area-faces-prism = Three rectangles in a row. The middle one has a triangle at each end.
g6-surface-area-hint-kinds = Which faces do you see: squares, rectangles, triangles?
g6-surface-area-hint-fold = Fold it up. Which faces meet?
solid-cube = Cube
solid-box = Rectangular prism that is not a cube
solid-pyramid = Square pyramid
solid-prism = Triangular prism
solid-step = It folds up to this: { $solid }.

misconception-ray-and-segment-mixed-up = A ray has one arrow. A segment has two ends.
    .name = Mixed up ray and segment
