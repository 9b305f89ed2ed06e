import datetime
from fractions import Fraction

from tasks import exact, task


@task("clock_time")
def clock_time(s):
    """The hour hand is past an hour mark, the minute hand is at a small mark."""
    return (s["hour_hand_after"], s["small_marks"] % 60)


def clock(text):
    hour, minute = map(int, text.split(":"))
    return datetime.datetime(2000, 1, 1, hour % 12, minute)


def shown(moment):
    return ((moment.hour - 1) % 12 + 1, moment.minute)


@task("minutes_between")
def minutes_between(s):
    gap = clock(s["to"]) - clock(s["from"])
    return gap.seconds // 60


@task("end_time")
def end_time(s):
    return shown(clock(s["at"]) + datetime.timedelta(minutes=s["minutes"]))


@task("start_time")
def start_time(s):
    return shown(clock(s["at"]) - datetime.timedelta(minutes=s["minutes"]))


@task("read_scale")
def read_scale(s):
    return s["below"] + Fraction(s["label_step"], s["parts"]) * s["marks"]


@task("row_of_unit_squares")
def row_of_unit_squares(s):
    unit = s["unit"].replace("square-", "square ")
    return s["squares"] * s["side"] ** 2, unit


@task("row_of_unit_cubes")
def row_of_unit_cubes(s):
    return s["cubes"] * s["edge"] ** 3, s["unit"].replace("cubic-", "cubic ")


@task("cover_with_gaps")
def cover_with_gaps(s):
    return s["squares"] + s["other"]


@task("cover_with_overlaps")
def cover_with_overlaps(s):
    return s["squares"] - s["other"]


@task("pack_and_take_out")
def pack_and_take_out(s):
    return s["squares"] - s["other"]


@task("rows_of_squares")
def rows_of_squares(s):
    cells = {(r, c) for r, width in enumerate(s["rows"]) for c in range(width)}
    return len(cells)


@task("rectangle_of_area")
def rectangle_of_area(s):
    return tuple(sorted((s["rows"], s["area"] // s["rows"])))


@task("two_part_area")
def two_part_area(s):
    return s["height"] * sum(s["widths"])


def shoelace(points):
    total = sum(x1 * y2 - x2 * y1 for (x1, y1), (x2, y2) in zip(points, points[1:] + points[:1]))
    return abs(Fraction(total, 2))


def l_area(bottom, right, step_up, top):
    return shoelace([(0, 0), (bottom, 0), (bottom, right), (top, right), (top, right + step_up), (0, right + step_up)])


@task("l_shape")
def l_shape(s):
    return l_area(s["bottom"], s["right"], s["step_up"], s["top"])


@task("l_shape_from_left")
def l_shape_from_left(s):
    return l_area(s["bottom"], s["right"], s["left"] - s["right"], s["top"])


@task("rectangle_perimeter")
def rectangle_perimeter(s):
    return 2 * (s["width"] + s["height"])


@task("side_from_perimeter")
def side_from_perimeter(s):
    return Fraction(s["perimeter"], 2) - s["side"]


@task("missing_side")
def missing_side(s):
    return s["perimeter"] - sum(s["sides"])


@task("side_from_area")
def side_from_area(s):
    return Fraction(s["area"], s["side"])


@task("perimeter_from_area")
def perimeter_from_area(s):
    return 2 * (Fraction(s["area"], s["side"]) + s["side"])


# SI prefixes (BIPM) and the customary units of the US (NIST Handbook 44, appendix C), from memory.
IN_BASE = {
    "mm": ("length", Fraction(1)), "cm": ("length", Fraction(10)), "m": ("length", Fraction(1000)), "km": ("length", Fraction(10**6)),
    "in": ("us length", Fraction(1)), "ft": ("us length", Fraction(12)), "yd": ("us length", Fraction(36)), "mi": ("us length", Fraction(63360)),
    "g": ("mass", Fraction(1)), "kg": ("mass", Fraction(1000)),
    "oz": ("us mass", Fraction(1)), "lb": ("us mass", Fraction(16)),
    "ml": ("volume", Fraction(1)), "l": ("volume", Fraction(1000)),
    "cup": ("us volume", Fraction(1)), "pt": ("us volume", Fraction(2)), "qt": ("us volume", Fraction(4)), "gal": ("us volume", Fraction(16)),
    "s": ("time", Fraction(1)), "min": ("time", Fraction(60)), "h": ("time", Fraction(3600)), "days": ("time", Fraction(86400)), "weeks": ("time", Fraction(604800)),
}


def converted(s):
    (kind, size), (other, to) = IN_BASE[s["from"]], IN_BASE[s["to"]]
    assert kind == other
    return exact(s["amount"]) * size / to


@task("convert")
def convert(s):
    return converted(s)


@task("convert_and_add")
def convert_and_add(s):
    return converted(s) + s["more"]


@task("convert_then_subtract")
def convert_then_subtract(s):
    return converted(s) - s["more"]


@task("convert_then_share")
def convert_then_share(s):
    return converted(s) / s["shares"]


@task("box_volume")
def box_volume(s):
    w, d, h = s["edges"]
    return w * d * h


@task("volume_from_base")
def volume_from_base(s):
    return s["base_area"] * s["height"]


@task("height_from_volume")
def height_from_volume(s):
    return Fraction(s["volume"], s["base_area"])


@task("edge_from_volume")
def edge_from_volume(s):
    a, b = s["edges"]
    return Fraction(s["volume"], a * b)


@task("two_boxes")
def two_boxes(s):
    (a, b, c), (d, e, f) = s["lower"], s["upper"]
    return a * b * c + d * e * f


# What things weigh in grams or hold in milliliters, least and most, from experience.
SENSIBLE = {
    "apple": (100, 300), "pencil": (3, 10), "cat": (2500, 7000), "bike": (7000, 20000), "melon": (2000, 10000),
    "letter": (10, 50), "spoon": (4, 20), "glass": (150, 400), "bucket": (5000, 15000), "tub": (80000, 300000),
}


@task("sensible_amount")
def sensible_amount(s):
    low, high = SENSIBLE[s["thing"]]
    fits = [(Fraction(n), unit) for n, unit in s["choices"] if low <= n * IN_BASE[unit][1] <= high]
    assert len(fits) == 1
    return fits[0]


@task("cover_with_both")
def cover_with_both(s):
    return s["squares"] - s["on_top"] + s["gaps"]


@task("squares_and_halves")
def squares_and_halves(s):
    return (s["squares"] + Fraction(s["halves"], 2)) * s["side"] ** 2


@task("larger_squares")
def larger_squares(s):
    return s["squares"] * s["side"] ** 2


@task("larger_cubes")
def larger_cubes(s):
    return s["cubes"] * s["edge"] ** 3


@task("area_with_same_perimeter")
def area_with_same_perimeter(s):
    side = s["side"]
    return side * (sum(s["rectangle"]) - side)


SMALL_IN_LARGE = {"m": 100, "km": 1000, "l": 1000}


@task("parts_taken_from")
def parts_taken_from(s):
    return s["large"] * SMALL_IN_LARGE[s["unit"]] - s["parts"] * s["each"]


@task("many_in_large_unit")
def many_in_large_unit(s):
    """Grams in kilograms, meters in kilometers, milliliters in liters."""
    assert s["unit"] in ("g", "m", "ml")
    return Fraction(s["parts"] * s["each"], 1000)
