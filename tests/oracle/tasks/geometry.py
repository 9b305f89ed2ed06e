import math
from fractions import Fraction

from tasks import bound, exact, task
from tasks.measurement import shoelace

SIDES = {"triangle": 3, "quadrilateral": 4, "pentagon": 5, "hexagon": 6, "octagon": 8, "square": 4, "rectangle": 4, "rhombus": 4}

# Corners of one shape of each family, and what must hold for all of the family,
# worked out from corners (inclusive definitions; a trapezoid has one pair, as the picture shows).
SHAPES = {
    "square": [(0, 0), (2, 0), (2, 2), (0, 2)],
    "rectangle": [(0, 0), (3, 0), (3, 2), (0, 2)],
    "rhombus": [(0, 0), (5, 0), (8, 4), (3, 4)],
    "parallelogram": [(0, 0), (5, 0), (6, 2), (1, 2)],
    "trapezoid": [(0, 0), (6, 0), (4, 2), (1, 2)],
}


def edges(corners):
    return [(x2 - x1, y2 - y1) for (x1, y1), (x2, y2) in zip(corners, corners[1:] + corners[:1])]


def shape_facts(name):
    sides = edges(SHAPES[name])
    lengths = {dx * dx + dy * dy for dx, dy in sides}
    right = all(a[0] * b[0] + a[1] * b[1] == 0 for a, b in zip(sides, sides[1:]))
    parallel = sum(sides[i][0] * sides[i + 2][1] == sides[i][1] * sides[i + 2][0] for i in (0, 1))
    return len(lengths) == 1, right, parallel


@task("side_count")
def side_count(s):
    return SIDES[s["shape"]]


@task("families_of")
def families_of(s):
    equal, right, _ = shape_facts(s["shape"])
    names = {"quadrilateral"}
    if right:
        names.add("rectangle")
    if equal:
        names.add("rhombus")
    return names


@task("parts_cut_again")
def parts_cut_again(s):
    return Fraction(1, s["parts"]) / s["each_into"]


@task("facts_of_shape")
def facts_of_shape(s):
    equal, right, parallel = shape_facts(s["shape"])
    facts = set()
    if equal:
        facts.add("All four sides have the same length")
    if right:
        facts.add("All four angles are right angles")
    facts.add("There are two pairs of parallel sides" if parallel == 2 else "There is exactly one pair of parallel sides")
    return facts


@task("triangle_by_angles")
def triangle_by_angles(s):
    assert sum(s["angles"]) == 180
    largest = max(s["angles"])
    return "right triangle" if largest == 90 else "obtuse triangle" if largest > 90 else "acute triangle"


def regular(n):
    return [(math.cos(math.pi / 2 + 2 * math.pi * k / n), math.sin(math.pi / 2 + 2 * math.pi * k / n)) for k in range(n)]


@task("fold_lines")
def fold_lines(s):
    """Lines through the centre of gravity and a corner or the middle of a side that map the corners onto themselves."""
    drawn = dict(SHAPES, equilateral=regular(3), pentagon=regular(5), hexagon=regular(6), isosceles=[(0, 120), (-50, -60), (50, -60)])
    corners = drawn[s["shape"]]
    n = len(corners)
    cx, cy = sum(x for x, _ in corners) / n, sum(y for _, y in corners) / n
    middles = [((x1 + x2) / 2, (y1 + y2) / 2) for (x1, y1), (x2, y2) in zip(corners, corners[1:] + corners[:1])]
    found = set()
    for x, y in list(corners) + middles:
        angle = math.atan2(y - cy, x - cx)
        mirrored = []
        for px, py in corners:
            size, at = math.hypot(px - cx, py - cy), math.atan2(py - cy, px - cx)
            mirrored.append((cx + size * math.cos(2 * angle - at), cy + size * math.sin(2 * angle - at)))
        if all(any(math.hypot(a - c, b - d) < 1e-6 for c, d in corners) for a, b in mirrored):
            found.add(round((angle % math.pi) / math.pi * 1e6) % 1_000_000)
    return len(found)


RULES = {
    "squares": {"right-angles", "equal-sides", "parallel"},
    "rectangles": {"right-angles", "parallel"},
    "rhombuses": {"equal-sides", "parallel"},
    "parallelograms": {"parallel"},
    "quadrilaterals": set(),
}


@task("wider_family")
def wider_family(s):
    """The family with fewer rules includes the other; with other rules, neither does."""
    one, two = s["pair"]
    if not RULES[one] <= RULES[two] and not RULES[two] <= RULES[one]:
        return "neither one is inside the other"
    return one if RULES[one] < RULES[two] else two


@task("degrees_of_turn")
def degrees_of_turn(s):
    return exact(s["part"]) * 360


@task("part_of_turn")
def part_of_turn(s):
    return Fraction(s["degrees"], 360)


@task("turns_and_more")
def turns_and_more(s):
    return s["turns"] + s["more"] if s["way"] == "same" else s["turns"] - s["more"]


@task("turns_to_full")
def turns_to_full(s):
    return 360 - s["turns"]


@task("protractor_reading")
def protractor_reading(s):
    return s["degrees"]


@task("missing_angle")
def missing_angle(s):
    return {"right": 90, "straight": 180, "full": 360}[s["whole"]] - sum(s["known"])


@task("missing_angle_of")
def missing_angle_of(s):
    return s["total"] - sum(s["known"])


@task("angle_kind")
def angle_kind(s):
    return "acute" if s["degrees"] < 90 else "right" if s["degrees"] == 90 else "obtuse"


@task("stroke_kind")
def stroke_kind(s):
    return {2: "line segment", 1: "ray", 0: "line"}[s["ends"]]


@task("line_pair")
def line_pair(s):
    (a, b), (c, d) = s["directions"]
    if a * d == b * c:
        return "parallel"
    return "perpendicular" if a * c + b * d == 0 else "neither one"


@task("walk_to_point")
def walk_to_point(s):
    return (s["right"], s["up"])


@task("name_point")
def name_point(s):
    return (s["x"], s["y"])


@task("move_point")
def move_point(s):
    return (s["from"][0] + s["across"], s["from"][1] + s["up"])


@task("read_value_at")
def read_value_at(s):
    return dict(map(tuple, s["points"]))[s["x"]]


@task("change_between")
def change_between(s):
    at = dict(map(tuple, s["points"]))
    return at[s["to"]] - at[s["from"]]


@task("side_on_grid")
def side_on_grid(s):
    (x1, y1), (x2, y2) = s["from"], s["to"]
    return abs(x1 - x2) + abs(y1 - y2)


@task("fourth_corner")
def fourth_corner(s):
    a, b, c = s["corners"]
    return (a[0] + c[0] - b[0], a[1] + c[1] - b[1])


@task("rectangle_perimeter_on_grid")
def rectangle_perimeter_on_grid(s):
    a, b, c = s["corners"]
    return 2 * (math.dist(a, b) + math.dist(b, c)).__round__()


@task("triangle_area")
def triangle_area(s):
    return shoelace([(0, 0), (s["base"], 0), (1, s["height"])])


@task("triangle_height")
def triangle_height(s):
    return 2 * exact(s["area"]) / s["base"]


@task("parallelogram_area")
def parallelogram_area(s):
    b, h = s["base"], s["height"]
    return shoelace([(0, 0), (b, 0), (b + 1, h), (1, h)])


@task("trapezoid_area")
def trapezoid_area(s):
    (b, top), h = s["bases"], s["height"]
    return shoelace([(0, 0), (b, 0), (1 + top, h), (1, h)])


@task("house_area")
def house_area(s):
    w, wall, roof = s["width"], s["wall"], s["roof"]
    return shoelace([(0, 0), (2 * w, 0), (2 * w, wall), (w, wall + roof), (0, wall)]) / 2


@task("fraction_box")
def fraction_box(s):
    return math.prod(exact(e) for e in s["edges"])


@task("box_surface")
def box_surface(s):
    w, d, h = s["edges"]
    return sum(2 * a * b for a, b in ((w, d), (w, h), (d, h)))


@task("pyramid_surface")
def pyramid_surface(s):
    b, h = s["base_edge"], s["triangle_height"]
    return b * b + 4 * shoelace([(0, 0), (b, 0), (0, h)])


@bound("g5-coordinates")
def first_quadrant(s):
    numbers = [v for k, v in s.items() if k in ("x", "y", "right", "up") and s["task"] != "move_point"]
    return all(0 <= n <= 20 for n in numbers)


@task("angle_to_make")
def angle_to_make(s):
    return s["degrees"]


@task("turns_on_and_back")
def turns_on_and_back(s):
    return s["turns"] + s["on"] - s["back"]


WORDS = {
    "right-angles": "four right angles", "equal-sides": "four equal sides", "parallel": "two pairs of parallel sides",
    "opposite-sides": "opposite sides that are equal", "opposite-angles": "opposite angles that are equal",
    "four-sides": "four sides", "five-angles": "five angles",
}


# One shape of each family, as its corners; no shape has more than its family asks for.
EXAMPLES = {
    "squares": [(0, 0), (2, 0), (2, 2), (0, 2)],
    "rectangles": [(0, 0), (3, 0), (3, 2), (0, 2)],
    "rhombuses": [(0, 0), (5, 0), (8, 4), (3, 4)],
    "parallelograms": [(0, 0), (5, 0), (6, 2), (1, 2)],
    "quadrilaterals": [(0, 0), (7, 0), (5, 3), (1, 4)],
}


def has(family, wanted):
    """Whether the plainest shape of a family has a property, from its corners."""
    p = EXAMPLES[family]
    sides = [(b[0] - a[0], b[1] - a[1]) for a, b in zip(p, p[1:] + p[:1])]
    lengths = [x * x + y * y for x, y in sides]
    cross = [abs(a[0] * b[1] - a[1] * b[0]) for a, b in ((sides[0], sides[2]), (sides[1], sides[3]))]
    dots = [a[0] * b[0] + a[1] * b[1] for a, b in zip(sides, sides[1:] + sides[:1])]
    cosines = [Fraction(d * abs(d), lengths[k] * lengths[(k + 1) % 4]) for k, d in enumerate(dots)]
    return {
        "right-angles": all(d == 0 for d in dots),
        "equal-sides": len(set(lengths)) == 1,
        "parallel": cross == [0, 0],
        "opposite-sides": lengths[0] == lengths[2] and lengths[1] == lengths[3],
        "opposite-angles": cosines[0] == cosines[2] and cosines[1] == cosines[3],
        "four-sides": len(p) == 4,
        "five-angles": len(p) == 5,
    }[wanted]


@task("properties_of_all")
def properties_of_all(s):
    return {WORDS[p] for p in s["choices"] if has(s["family"], p)}


@task("families_with")
def families_with(s):
    return {f for f in s["choices"] if has(f, s["property"])}


@task("families_in_order")
def families_in_order(s):
    """A family inside another has all its properties and more."""
    count = {f: sum(has(f, p) for p in WORDS) for f in s["choices"]}
    assert len(set(count.values())) == len(count)
    return sorted(s["choices"], key=lambda f: -count[f])


@task("how_many_in_family")
def how_many_in_family(s):
    sides = {"triangle": 3, "pentagon": 5, "hexagon": 6}
    if sides.get(s["shape"], 4) != sides.get(s["family"], 4):
        return "none of them"
    rules = {name[:-1] if name != "rhombuses" else "rhombus": rules for name, rules in RULES.items()}
    return "all of them" if rules[s["family"]] <= rules[s["shape"]] else "some of them, not all"


@task("cut_positions")
def cut_positions(s):
    assert s["length"] % s["parts"] == 0
    return [Fraction(s["length"] * n, s["parts"]) for n in range(1, s["parts"])]


def four_sided(corners):
    """Whether a shape with four sides is a rectangle, and whether it is a rhombus."""
    sides = edges([tuple(c) for c in corners])
    right = all(a[0] * b[0] + a[1] * b[1] == 0 for a, b in zip(sides, sides[1:]))
    return right, len({x * x + y * y for x, y in sides}) == 1


@task("no_named_family")
def no_named_family(s):
    (plain,) = [n for n, corners in enumerate(s["shapes"], 1) if not any(four_sided(corners))]
    return f"shape {plain}"


@task("angle_of_kind")
def angle_of_kind(s):
    return 90 + {"none": 0, "less": -1, "more": 1}[s["way"]] * s.get("change", 0)


@task("symmetry_lines")
def symmetry_lines(s):
    """Lines through two points that map the set of corners onto itself."""
    a, b, c, d = (tuple(map(Fraction, corner)) for corner in s["corners"])
    middle = lambda p, q: ((p[0] + q[0]) / 2, (p[1] + q[1]) / 2)
    lines = {
        "the line through a and c": (a, c),
        "the line through b and d": (b, d),
        "the line through the middles of ab and cd": (middle(a, b), middle(c, d)),
        "the line through the middles of bc and da": (middle(b, c), middle(d, a)),
    }

    def mirrored(point, p, q):
        dx, dy = q[0] - p[0], q[1] - p[1]
        along = ((point[0] - p[0]) * dx + (point[1] - p[1]) * dy) / (dx * dx + dy * dy)
        return (2 * (p[0] + along * dx) - point[0], 2 * (p[1] + along * dy) - point[1])

    return {words for words, (p, q) in lines.items() if {mirrored(x, p, q) for x in (a, b, c, d)} == {a, b, c, d}}


@task("solid_of_net")
def solid_of_net(s):
    """By the corners of the faces: triangles, squares, other rectangles."""
    kinds = []
    for corners in s["faces"]:
        lengths = {x * x + y * y for x, y in edges([tuple(c) for c in corners])}
        kinds.append((len(corners), len(lengths) == 1, lengths))
    corners = sorted(n for n, _, _ in kinds)
    if corners == [4] * 6:
        same = all(square for _, square, _ in kinds) and len(set.union(*(lengths for _, _, lengths in kinds))) == 1
        return "cube" if same else "rectangular prism that is not a cube"
    return {(3, 3, 3, 3, 4): "square pyramid", (3, 3, 4, 4, 4): "triangular prism"}[tuple(corners)]


@task("plot_story_point")
def plot_story_point(s):
    up = s["start"]
    for _ in range(s["x"]):
        up += s["each"]
    return (s["x"], up)


@task("sticks_for_shapes")
def sticks_for_shapes(s):
    return s["count"] * SIDES[s["shape"]]
