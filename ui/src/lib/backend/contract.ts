// Written by `WRITE_CONTRACT=1 cargo test -p surefoot-app --test contract`; do not edit.
export type AddSeats = { 
/**
 * The class.
 */
class: string, 
/**
 * Their names; an empty text is a seat without a name.
 */
names: Array<string>, };
export type Agreement = { 
/**
 * Rows: the student's rating; columns: the teacher's. Counts of pairs.
 */
table: [[number, number, number, number], [number, number, number, number], [number, number, number, number], [number, number, number, number]], 
/**
 * Pairs of ratings.
 */
pairs: number, 
/**
 * Weighted kappa (quadratic weights); none below ten pairs, or if
 * both always chose the same one rating.
 */
kappa: number | null, 
/**
 * Its standard error.
 */
standard_error: number | null, };
export type Ahead = { 
/**
 * The concept.
 */
concept: ConceptName, 
/**
 * Why it is there.
 */
reason: Reason, };
export type Angle = { 
/**
 * The parts, turning on from the first side; one part is a plain angle.
 */
parts: Array<AnglePart>, 
/**
 * How far the first side is turned from pointing right, anticlockwise.
 */
turn_degrees: number, 
/**
 * What is written at the whole angle, when there are parts.
 */
whole_label: Expr | null, };
export type AnglePart = { 
/**
 * Its size.
 */
degrees: number, 
/**
 * What is written in it.
 */
label: Expr | null, };
export type AnswerGiven = { 
/**
 * The profile's id.
 */
student: string, 
/**
 * The exercise.
 */
exercise: string, 
/**
 * What was filled in.
 */
response: Response, 
/**
 * Seconds since the exercise was shown or last answered, by the screen's own count.
 */
seconds: number, };
export type AreaModel = { 
/**
 * Along the left side, from the top.
 */
rows: Array<Expr>, 
/**
 * Along the top, from the left.
 */
columns: Array<Expr>, 
/**
 * What each cell holds, row by row; `None` is empty, `Blank` is asked for.
 */
cells: Array<Array<Expr | null>>, };
export type Arg = { "kind": "count", 
/**
 * The number.
 */
value: number, } | { "kind": "number", 
/**
 * The number as text.
 */
text: string, } | { "kind": "numbers", 
/**
 * Each number as text.
 */
texts: Array<string>, } | { "kind": "math", 
/**
 * What to set.
 */
expr: Expr, } | { "kind": "text", 
/**
 * The words.
 */
text: string, } | { "kind": "words", 
/**
 * The words.
 */
words: Text, } | { "kind": "word", 
/**
 * Its Fluent message id.
 */
id: string, };
export type ArrayFigure = { 
/**
 * Rows.
 */
rows: number, 
/**
 * Things in each row.
 */
columns: number, 
/**
 * A cut below this many rows.
 */
split_row: number | null, 
/**
 * A cut right of this many columns.
 */
split_column: number | null, 
/**
 * Squares without gaps (an area) rather than dots.
 */
squares: boolean, };
export type Assign = { 
/**
 * The class.
 */
class: string, 
/**
 * What it is made from.
 */
assignment: NewAssignment, };
export type AssignedAmount = { 
/**
 * Exercises done.
 */
done: number, 
/**
 * Exercises asked for.
 */
of: number, };
export type AssignmentId = { 
/**
 * The class.
 */
class: string, 
/**
 * The assignment.
 */
assignment: string, };
export type AssignmentReport = { 
/**
 * Its id.
 */
id: string, 
/**
 * Its concepts.
 */
concepts: Array<ConceptName>, 
/**
 * Exercises of each concept.
 */
items_each: number, 
/**
 * First evening.
 */
from: string, 
/**
 * Last evening.
 */
due: string, 
/**
 * Whether it is for the whole class.
 */
whole_class: boolean, 
/**
 * Whether the last class pack carries it.
 */
in_pack: boolean, 
/**
 * Withdrawn; it can be restored.
 */
withdrawn: boolean, 
/**
 * Seats without a device yet: it cannot be sealed for them until their first hand-in.
 */
waiting: Array<number>, 
/**
 * Who has done how much.
 */
progress: Array<SeatProgress>, };
export type BackUp = { 
/**
 * Of which store.
 */
store: StoreName, 
/**
 * At least 8 characters.
 */
passphrase: string, };
export type Balance = { 
/**
 * Weights on the left pan.
 */
left: Array<Weight>, 
/**
 * Weights on the right pan.
 */
right: Array<Weight>, };
export type Bar = { 
/**
 * Its name.
 */
label: Say, 
/**
 * Its height.
 */
value: number, };
export type BarChart = { 
/**
 * What it is about.
 */
title: Say, 
/**
 * Its bars.
 */
bars: Array<Bar>, 
/**
 * Distance between marks of the scale.
 */
scale_step: number, 
/**
 * Top of the scale.
 */
scale_to: number, 
/**
 * Words at the scale.
 */
axis: Say, };
export type BaseTenBlocks = { 
/**
 * Large cubes (ten flats each).
 */
large_cubes: number, 
/**
 * Flats (ten rods each).
 */
flats: number, 
/**
 * Rods (ten small cubes each).
 */
rods: number, 
/**
 * Small cubes.
 */
cubes: number, 
/**
 * Which block counts as one.
 */
one: BlockPiece, };
export type Block = { "kind": "say", 
/**
 * The sentence.
 */
say: Say, } | { "kind": "math", 
/**
 * What to set.
 */
expr: Expr, } | { "kind": "figure", 
/**
 * The figure.
 */
figure: Figure, };
export type BlockPiece = "cube" | "rod" | "flat" | "large_cube";
export type Board = { 
/**
 * The class.
 */
class_title: string, 
/**
 * What "today" is.
 */
today: string, 
/**
 * The seats it is restricted to; empty for the whole class.
 */
group: Array<number>, 
/**
 * The pass of today, from 0.
 */
pass: number, 
/**
 * Day of the rotation today, from 1, on a school day.
 */
day: number | null, 
/**
 * Passes in the year.
 */
pass_count: number, 
/**
 * Seats in the class.
 */
seats: number, 
/**
 * Seats with a report.
 */
seats_reporting: number, 
/**
 * Days since the newest report.
 */
newest_report_days: number | null, 
/**
 * The median over the reporting seats of the days since their newest report.
 */
typical_report_days: number | null, 
/**
 * One row a concept: weakest first, then those not taught yet, then those without a report.
 */
rows: Array<BoardRow>, };
export type BoardRow = { 
/**
 * The concept.
 */
concept: ConceptName, 
/**
 * Grade 3 to 6.
 */
grade: number, 
/**
 * Its phase today.
 */
phase: Phase, 
/**
 * Day of the rotation, from 1.
 */
day: number, 
/**
 * Rank among the weak concepts, 1 is weakest; none before its first lesson or without a report.
 */
rank: number | null, 
/**
 * Estimated share of the class that has it, 0 to 1.
 */
has_it: number | null, 
/**
 * The likely range of that share, low end.
 */
low: number | null, 
/**
 * The likely range of that share, high end.
 */
high: number | null, 
/**
 * Students with at least one report on it.
 */
reporters: number, 
/**
 * Whether so few reported that one should ask first.
 */
ask_first: boolean, 
/**
 * Of the last rating of each reporter: how many chose each, `NotYet` first.
 */
latest: [number, number, number, number], 
/**
 * Of the last marked result of each reporter: right and wrong.
 */
results: [number, number], 
/**
 * Practice answers by everyone: alone, with help, wrong.
 */
practice: [number, number, number], 
/**
 * Days since the newest report on it.
 */
newest_days: number | null, 
/**
 * Its trend.
 */
trend: Trend, 
/**
 * Pass by pass: how many rated, and how many of these chose Not yet or With help.
 */
passes: Array<PassCell>, 
/**
 * The commonest misconceptions: code and count, most first, at most five.
 */
misconceptions: Array<MisconceptionCount>, };
export type BoxPlot = { 
/**
 * What it is about.
 */
title: Say, 
/**
 * Smallest value.
 */
least: Rational, 
/**
 * Lower quartile.
 */
lower_quartile: Rational, 
/**
 * Median.
 */
median: Rational, 
/**
 * Upper quartile.
 */
upper_quartile: Rational, 
/**
 * Greatest value.
 */
greatest: Rational, 
/**
 * Left end of the line.
 */
from: Rational, 
/**
 * Right end.
 */
to: Rational, 
/**
 * Distance between labelled ticks.
 */
step: Rational, 
/**
 * Words under the line.
 */
axis: Say, };
export type CalendarError = { "code": "ends_before_start", 
/**
 * First day as given.
 */
first_day: string, 
/**
 * Last day as given.
 */
last_day: string, } | { "code": "too_long", 
/**
 * Calendar days from first to last.
 */
days: number, 
/**
 * [`LONGEST_YEAR_DAYS`].
 */
most: number, } | { "code": "no_such_weekday", 
/**
 * The number as given.
 */
found: number, } | { "code": "no_school_day" };
export type CalibrationVerdict = "over" | "under" | "near" | "unclear" | "too_little";
export type CallError = { "code": "unknown_call", 
/**
 * The name asked for.
 */
name: string, } | { "code": "bad_arguments", 
/**
 * What the reader said.
 */
detail: string, } | { "code": "not_found", 
/**
 * `student`, `class`, `seat`, `concept`, `exercise`, `assignment`, `job`, `pack`, `copy`, `file`.
 */
what: string, } | { "code": "invalid", 
/**
 * The field: `title`, `names`, `dates`, `concepts`, `amount`, `nickname`, `minutes`, `seats`, `goals`.
 */
field: string, 
/**
 * The rule it breaks: `empty`, `too_long`, `too_many`, `too_few`, `order`, `range`, `not_today`.
 */
rule: string, } | { "code": "calendar", 
/**
 * Why.
 */
error: CalendarError, } | { "code": "rotation", 
/**
 * Why.
 */
error: RotationError, } | { "code": "refused", 
/**
 * Why.
 */
refusal: Refusal, } | { "code": "seat_code", 
/**
 * Why.
 */
error: SeatCodeError, } | { "code": "unreadable_answer", 
/**
 * What was wrong with it.
 */
detail: string, } | { "code": "newer_store", 
/**
 * Its schema version.
 */
found: number, 
/**
 * The newest known here.
 */
known: number, } | { "code": "damaged_store", 
/**
 * For the log.
 */
detail: string, } | { "code": "disk_full" } | { "code": "not_writable", 
/**
 * For the log.
 */
detail: string, } | { "code": "store_busy" } | { "code": "locked" } | { "code": "pin_wait", 
/**
 * Seconds left.
 */
wait_seconds: number, } | { "code": "storage", 
/**
 * For the log; holds no names.
 */
detail: string, } | { "code": "internal", 
/**
 * For the log; holds no names.
 */
detail: string, } | { "code": "files", 
/**
 * For the log.
 */
detail: string, } | { "code": "no_voice", 
/**
 * What is missing.
 */
missing: VoiceMissing, } | { "code": "cancelled" };
export type CarryAsked = { 
/**
 * The profile's id.
 */
student: string, 
/**
 * At least 8 characters.
 */
passphrase: string, };
export type CarryDone = { 
/**
 * The student of this device who has it now.
 */
student: string, 
/**
 * Whether the student is new on this device.
 */
new_here: boolean, 
/**
 * Check-ins that were new here.
 */
check_ins: number, 
/**
 * Finished exercises that were new here.
 */
answers: number, };
export type CatalogueFormat = "csv" | "case";
export type CatalogueReading = { 
/**
 * The file's name.
 */
file: string, 
/**
 * Its kind.
 */
format: CatalogueFormat, 
/**
 * The title of the package; empty for a table.
 */
title: string, 
/**
 * What could become a concept, in the order of the file.
 */
drafts: Array<ConceptDraft>, 
/**
 * What could not, and why.
 */
refused: Array<LineRefused>, };
export type Cell = { "kind": "say", 
/**
 * The words.
 */
say: Say, } | { "kind": "math", 
/**
 * What to set.
 */
expr: Expr, };
export type CheckInTap = { 
/**
 * The profile's id.
 */
student: string, 
/**
 * The school date.
 */
date: string, 
/**
 * The concept.
 */
concept: string, 
/**
 * The rating.
 */
confidence: Confidence | null, 
/**
 * How it went.
 */
outcome: Outcome | null, };
export type Choice = { 
/**
 * What it shows.
 */
shows: Block, };
export type ClassConcept = { 
/**
 * The class.
 */
class: string, 
/**
 * The concept.
 */
concept: string, };
export type ClassId = { 
/**
 * The class's id.
 */
class: string, };
export type ClassKeyAsked = { 
/**
 * The class.
 */
class: string, 
/**
 * At least 8 characters.
 */
passphrase: string, };
export type ClassSetup = { 
/**
 * The class in a line.
 */
summary: ClassSummary, 
/**
 * Its seats.
 */
seats: Array<Seat>, 
/**
 * Its school year.
 */
year: SchoolYear, 
/**
 * School days in the year.
 */
school_days: number, 
/**
 * Passes in the year.
 */
pass_count: number, 
/**
 * The rotation, day by day.
 */
rotation: Array<Array<PlacedConcept>>, 
/**
 * What is set for practice at home.
 */
practice: PracticeRules, };
export type ClassSummary = { 
/**
 * The class's id.
 */
id: string, 
/**
 * The teacher's name for it.
 */
title: string, 
/**
 * Seats in it.
 */
seats: number, 
/**
 * Seats with a report.
 */
seats_joined: number, 
/**
 * Concepts in its rotation.
 */
concepts: number, 
/**
 * The newest report.
 */
newest_report: string | null, 
/**
 * The version of the last class pack made, 0 for none.
 */
pack_version: number, 
/**
 * Whether something changed since that pack.
 */
pack_outdated: boolean, };
export type Clock = { 
/**
 * 1 to 12.
 */
hour: number, 
/**
 * 0 to 59.
 */
minute: number, };
export type CoinPile = { 
/**
 * Value of one piece, in hundredths.
 */
value_hundredths: number, 
/**
 * How many.
 */
count: number, 
/**
 * A note rather than a coin.
 */
note: boolean, };
export type Coins = { 
/**
 * Largest first.
 */
pieces: Array<CoinPile>, };
export type ColumnSign = "plus" | "minus" | "times";
export type ColumnWork = { 
/**
 * The sign before the last number.
 */
sign: ColumnSign, 
/**
 * The numbers as exact decimals, aligned at the decimal point.
 */
numbers: Array<string>, 
/**
 * Small digits over each column, as text from the left; empty when none.
 */
carries: Array<string>, 
/**
 * Under the line; `None` while it is asked for.
 */
result: string | null, };
export type Comparison = { 
/**
 * Last rating high, yet it went wrong; most wrong first.
 */
sure_but_wrong: Array<Mismatch>, 
/**
 * Last rating low, yet it went right; most right first.
 */
unsure_but_right: Array<Mismatch>, 
/**
 * Each student's calibration.
 */
students: Array<StudentCalibration>, 
/**
 * The commonest misconceptions over all concepts.
 */
misconceptions: Array<ConceptMisconception>, 
/**
 * Misconceptions beyond these that are not listed.
 */
misconceptions_left_out: number, 
/**
 * Students' ratings against the teacher's observations.
 */
agreement: Agreement, };
export type ConceptDraft = { 
/**
 * The line, from 1; 0 in a package.
 */
line: number, 
/**
 * The place in a package, such as `CFItems[3]`; empty in a table.
 */
at: string, 
/**
 * How other drafts name it: an id, a code or a package's identifier.
 */
key: string, 
/**
 * The id it will have.
 */
id: string, 
/**
 * A short title.
 */
title: Text, 
/**
 * The "I can" statement.
 */
i_can: Text, 
/**
 * Its strand, once chosen.
 */
strand: Strand | null, 
/**
 * Its school grade, once chosen.
 */
grade: number | null, 
/**
 * Keys, ids or titles of what comes before it.
 */
before: Array<string>, 
/**
 * Codes of published standards.
 */
codes: Array<string>, 
/**
 * What it stands under in its package; empty in a table.
 */
under: string, 
/**
 * Whether other items of its package stand under it.
 */
has_parts: boolean, };
export type ConceptId = string;
export type ConceptMisconception = { 
/**
 * The concept.
 */
concept: ConceptName, 
/**
 * The misconception's code.
 */
code: string, 
/**
 * How often it was made.
 */
count: number, 
/**
 * By how many students.
 */
students: number, 
/**
 * Days since it was last made.
 */
newest_days: number, };
export type ConceptName = { 
/**
 * The concept's id.
 */
id: string, 
/**
 * The strand's id, for its name in the messages (`strand-<id>`).
 */
strand: string, 
/**
 * Short title in the language asked for.
 */
title: string, 
/**
 * "I can" statement in the language asked for.
 */
i_can: string, 
/**
 * The language of the title, if it is missing in the language asked for.
 */
shown_in?: Language, 
/**
 * Whether there are exercises for it; without, it is self-rated only.
 */
has_exercises: boolean, };
export type ConceptReports = { 
/**
 * The board's row for the concept.
 */
row: BoardRow, 
/**
 * The test of its trend.
 */
trend_test: TrendTest, 
/**
 * One line a seat, who needs it most first.
 */
students: Array<StudentReport>, };
export type ConceptsPicked = { 
/**
 * The class.
 */
class: string, 
/**
 * The file's name, for the account.
 */
file: string, 
/**
 * What was picked, as the person left it.
 */
drafts: Array<ConceptDraft>, 
/**
 * What the reading refused, for the account.
 */
refused: Array<LineRefused>, };
export type Confidence = 0 | 1 | 2 | 3;
export type CoordinateGrid = { 
/**
 * Edges and steps.
 */
frame: GridFrame, 
/**
 * Points with letters.
 */
points: Array<NamedPoint>, 
/**
 * Straight strokes through points, in order.
 */
paths: Array<GridPath>, };
export type Copies = { 
/**
 * Newest first.
 */
copies: Array<StoredCopy>, 
/**
 * Why the last daily copy could not be made, if it could not.
 */
trouble: CallError | null, };
export type CopyClass = { 
/**
 * The class whose rotation and pace are copied.
 */
from: string, 
/**
 * The teacher's name for the new one, 1 to 60 characters.
 */
title: string, 
/**
 * Given names or codes, one a seat; an empty text is a seat without a name.
 */
names: Array<string>, 
/**
 * The new school year.
 */
year: SchoolYear, };
export type CopyKind = "daily" | "before_change" | "replaced";
export type CreateClass = { 
/**
 * What it is made from.
 */
class: NewClass, };
export type CubeBox = { 
/**
 * Left front bottom corner: across.
 */
x: number, 
/**
 * To the back.
 */
y: number, 
/**
 * Up.
 */
z: number, 
/**
 * Cubes across.
 */
width: number, 
/**
 * Cubes to the back.
 */
depth: number, 
/**
 * Cubes up.
 */
height: number, };
export type DamagedStore = { 
/**
 * Which.
 */
store: StoreName, 
/**
 * The student's nickname as the newest good copy has it.
 */
nickname: string | null, 
/**
 * Why it cannot be opened.
 */
why: CallError, 
/**
 * The newest copy that is whole.
 */
last_good: StoredCopy | null, };
export type DataTable = { 
/**
 * Words over the columns.
 */
header: Array<Say>, 
/**
 * Rows of cells.
 */
rows: Array<Array<Cell>>, };
export type DatedReport = { 
/**
 * School date.
 */
date: string, 
/**
 * The pass of the date, from 0.
 */
pass: number, 
/**
 * The rating.
 */
confidence: Confidence | null, 
/**
 * How it went.
 */
outcome: Outcome | null, };
export type DatedSight = { 
/**
 * School date.
 */
date: string, 
/**
 * On the students' own scale, if rated.
 */
rating: Confidence | null, 
/**
 * Whether the student has it.
 */
has_it: boolean, };
export type DecimalSign = "language" | "comma" | "point";
export type DeviceDecision = { 
/**
 * The class.
 */
class: string, 
/**
 * The seat's number.
 */
seat: number, 
/**
 * The device's id.
 */
device: string, 
/**
 * Whether its hand-ins count from now on, or it is rejected; nothing: undecided again.
 */
accept: boolean | null, };
export type DeviceSettings = { 
/**
 * Language of the start and of the teacher's screens.
 */
language: Language, 
/**
 * Colours.
 */
theme: Theme, 
/**
 * Whether names are covered on the teacher's screens.
 */
names_covered: boolean, 
/**
 * Screens whose guide was read; `all`: none is shown by itself.
 */
guides_read: Array<string>, };
export type DotColumn = { 
/**
 * The value.
 */
at: Rational, 
/**
 * How many dots.
 */
count: number, };
export type DotPlot = { 
/**
 * What it is about.
 */
title: Say, 
/**
 * Left end of the line.
 */
from: Rational, 
/**
 * Right end.
 */
to: Rational, 
/**
 * Distance between ticks.
 */
step: Rational, 
/**
 * Ticks that carry a label.
 */
labels: Array<LineLabel>, 
/**
 * Columns of dots.
 */
columns: Array<DotColumn>, 
/**
 * Words under the line.
 */
axis: Say, };
export type DoubleNumberLine = { 
/**
 * Upper line.
 */
upper: RatioRow, 
/**
 * Lower line, as many marks.
 */
lower: RatioRow, };
export type Draft = { "kind": "boxes", 
/**
 * What stands in each.
 */
texts: Array<string>, 
/**
 * The half of the day, once chosen.
 */
half_day: HalfDay | null, } | { "kind": "tapped", 
/**
 * As it would be checked.
 */
response: Response, };
export type DraftKept = { 
/**
 * The profile's id.
 */
student: string, 
/**
 * The exercise.
 */
exercise: string, 
/**
 * The draft; nothing when it was emptied.
 */
draft: Draft | null, };
export type Drawing = { "kind": "number_line" } & NumberLine | { "kind": "fraction_strips" } & FractionStrips | { "kind": "area_model" } & AreaModel | { "kind": "fraction_grid" } & FractionGrid | { "kind": "base_ten_blocks" } & BaseTenBlocks | { "kind": "array" } & ArrayFigure | { "kind": "equal_groups" } & EqualGroups | { "kind": "clock" } & Clock | { "kind": "coins" } & Coins | { "kind": "ruler" } & Ruler | { "kind": "protractor" } & Protractor | { "kind": "angle" } & Angle | { "kind": "polygon" } & Polygon | { "kind": "lines" } & Lines | { "kind": "unit_cubes" } & UnitCubes | { "kind": "net" } & Net | { "kind": "coordinate_grid" } & CoordinateGrid | { "kind": "bar_chart" } & BarChart | { "kind": "picture_graph" } & PictureGraph | { "kind": "dot_plot" } & DotPlot | { "kind": "histogram" } & Histogram | { "kind": "box_plot" } & BoxPlot | { "kind": "balance" } & Balance | { "kind": "ratio_table" } & RatioTable | { "kind": "double_number_line" } & DoubleNumberLine | { "kind": "tape_diagram" } & TapeDiagram | { "kind": "data_table" } & DataTable | { "kind": "column_work" } & ColumnWork | { "kind": "scale" } & Scale;
export type Entries = { 
/**
 * The class.
 */
class: string, 
/**
 * The day.
 */
date: string, 
/**
 * The cells.
 */
made: Array<EntryMade>, };
export type Entry = { "kind": "whole_number", 
/**
 * The minus key is offered.
 */
signed: boolean, 
/**
 * Words after the box, such as a unit.
 */
unit: Say | null, } | { "kind": "decimal", 
/**
 * The minus key is offered.
 */
signed: boolean, 
/**
 * Words after the box.
 */
unit: Say | null, } | { "kind": "fraction", 
/**
 * The minus key is offered.
 */
signed: boolean, 
/**
 * Words after the boxes.
 */
unit: Say | null, } | { "kind": "mixed", 
/**
 * The minus key is offered.
 */
signed: boolean, 
/**
 * Words after the boxes.
 */
unit: Say | null, } | { "kind": "money" } | { "kind": "time", 
/**
 * Morning or afternoon is asked too.
 */
half_day: boolean, } | { "kind": "duration", 
/**
 * A box for hours beside the box for minutes.
 */
hours: boolean, } | { "kind": "comparison" } | { "kind": "one_choice", 
/**
 * In the order shown.
 */
choices: Array<Choice>, } | { "kind": "several_choices", 
/**
 * In the order shown.
 */
choices: Array<Choice>, } | { "kind": "ordering", 
/**
 * In the order shown at first.
 */
things: Array<Choice>, 
/**
 * Words at the first place, such as "least".
 */
first: Say, 
/**
 * Words at the last place, such as "greatest".
 */
last: Say, } | { "kind": "expression", 
/**
 * The letters offered.
 */
letters: Array<string>, } | { "kind": "equation", 
/**
 * The letters offered.
 */
letters: Array<string>, 
/**
 * The signs offered.
 */
signs: Array<Sign>, } | { "kind": "coordinates", 
/**
 * The grid to tap, if any.
 */
frame: GridFrame | null, } | { "kind": "number_line_point", 
/**
 * The line; taps go to the nearest tick.
 */
line: NumberLine, } | { "kind": "number_line_ray", 
/**
 * The line; taps go to the nearest tick.
 */
line: NumberLine, } | { "kind": "angle", 
/**
 * The student turns a side on a protractor; else types the number.
 */
turned: boolean, } | { "kind": "shaded_fraction", 
/**
 * Bars or circles.
 */
shape: PartShape, 
/**
 * Wholes in a row.
 */
wholes: number, 
/**
 * Parts in each.
 */
parts: number, } | { "kind": "plot", 
/**
 * Bars, dots or symbols.
 */
style: PlotStyle, 
/**
 * Under each column.
 */
columns: Array<Choice>, 
/**
 * What one step of a column counts for.
 */
step: number, 
/**
 * Top of the scale.
 */
top: number, } | { "kind": "grid_area", 
/**
 * Rows of the grid.
 */
rows: number, 
/**
 * Columns of the grid.
 */
columns: number, } | { "kind": "quotient_remainder" } | { "kind": "several_numbers", 
/**
 * Words before each box.
 */
fields: Array<Say>, 
/**
 * Decimal key offered.
 */
decimals: boolean, 
/**
 * Minus key offered.
 */
signed: boolean, };
export type EntryAsked = { 
/**
 * The class.
 */
class: string, 
/**
 * The day.
 */
date: string | null, };
export type EntryCell = { 
/**
 * The rating typed in from paper.
 */
rating: Confidence | null, 
/**
 * The result typed in from paper.
 */
outcome: Outcome | null, 
/**
 * The rating that a device handed in.
 */
device_rating: Confidence | null, 
/**
 * The result that a device handed in.
 */
device_outcome: Outcome | null, 
/**
 * The observation.
 */
seen: Confidence | null, 
/**
 * After a small group: whether the student has it.
 */
group_result: boolean | null, };
export type EntryDay = { 
/**
 * The school date.
 */
date: string, 
/**
 * Day of the rotation, from 1; none on a day without school.
 */
day: number | null, 
/**
 * The school day before, if any.
 */
earlier: string | null, 
/**
 * The school day after, up to today.
 */
later: string | null, 
/**
 * The concepts of the day in the order of the review.
 */
concepts: Array<ConceptName>, 
/**
 * One row a seat.
 */
rows: Array<EntryRow>, };
export type EntryMade = { 
/**
 * The seat.
 */
seat: number, 
/**
 * The concept.
 */
concept: string, 
/**
 * What was filled in.
 */
value: EntryValue, };
export type EntryRow = { 
/**
 * The seat.
 */
seat: number, 
/**
 * Its name.
 */
name: string | null, 
/**
 * One cell a concept.
 */
cells: Array<EntryCell>, };
export type EntryValue = { "kind": "rating", 
/**
 * The rating.
 */
rating: Confidence | null, } | { "kind": "outcome", 
/**
 * The result.
 */
outcome: Outcome | null, } | { "kind": "seen", 
/**
 * On the students' own scale.
 */
rating: Confidence | null, } | { "kind": "group_result", 
/**
 * Whether the student has it.
 */
has_it: boolean, };
export type EqualGroups = { 
/**
 * Groups.
 */
groups: number, 
/**
 * Things in each.
 */
each: number, 
/**
 * Things outside the groups.
 */
left_over: number, };
export type ExerciseId = { 
/**
 * The profile's id.
 */
student: string, 
/**
 * The exercise.
 */
exercise: string, };
export type Expr = { "kind": "number", 
/**
 * The number as text.
 */
text: string, } | { "kind": "variable", 
/**
 * The letter.
 */
name: string, } | { "kind": "blank" } | { "kind": "fraction", 
/**
 * Numerator.
 */
top: Expr, 
/**
 * Denominator.
 */
bottom: Expr, } | { "kind": "mixed", 
/**
 * The whole number.
 */
whole: Expr, 
/**
 * Numerator.
 */
top: Expr, 
/**
 * Denominator.
 */
bottom: Expr, } | { "kind": "sum", 
/**
 * Two or more.
 */
terms: Array<Expr>, } | { "kind": "difference", 
/**
 * Taken from.
 */
left: Expr, 
/**
 * Taken away.
 */
right: Expr, } | { "kind": "product", 
/**
 * Two or more.
 */
factors: Array<Expr>, 
/**
 * Without a sign between them.
 */
side_by_side: boolean, } | { "kind": "quotient", 
/**
 * Dividend.
 */
left: Expr, 
/**
 * Divisor.
 */
right: Expr, } | { "kind": "relation", 
/**
 * Left side.
 */
left: Expr, 
/**
 * The sign.
 */
sign: Sign, 
/**
 * Right side.
 */
right: Expr, } | { "kind": "group", 
/**
 * What is inside.
 */
inner: Expr, } | { "kind": "power", 
/**
 * Base.
 */
base: Expr, 
/**
 * Exponent.
 */
exponent: Expr, } | { "kind": "negative", 
/**
 * Of what.
 */
inner: Expr, } | { "kind": "absolute", 
/**
 * Of what.
 */
inner: Expr, } | { "kind": "ratio", 
/**
 * First amount.
 */
left: Expr, 
/**
 * Second amount.
 */
right: Expr, } | { "kind": "percent", 
/**
 * How many of each hundred.
 */
inner: Expr, } | { "kind": "measure", 
/**
 * The number.
 */
amount: Expr, 
/**
 * Message id of the unit's sign.
 */
unit: string, } | { "kind": "money", 
/**
 * In hundredths.
 */
hundredths: number, } | { "kind": "time", 
/**
 * 1 to 12.
 */
hour: number, 
/**
 * 0 to 59.
 */
minute: number, } | { "kind": "pair", 
/**
 * Across.
 */
x: Expr, 
/**
 * Up.
 */
y: Expr, } | { "kind": "degrees", 
/**
 * How many.
 */
inner: Expr, };
export type Feedback = { 
/**
 * Whether it was right.
 */
right: boolean, 
/**
 * Whether the exercise is finished; otherwise one more try is open.
 */
finished: boolean, 
/**
 * What is said about it: the recognised thought, or an equivalent form.
 */
says: Array<Block>, 
/**
 * The right answer, once finished.
 */
answer: Array<Block> | null, 
/**
 * The worked steps, once finished.
 */
steps: Array<Array<Block>>, 
/**
 * Where the evening stands.
 */
session: Session, };
export type Figure = { 
/**
 * What the drawing shows, in words, and no more than it shows.
 */
alt: Say, 
/**
 * What to draw.
 */
drawing: Drawing, };
export type FileMade = { 
/**
 * Suggested name.
 */
file_name: string, 
/**
 * Where it was saved, in words; nothing when the person decided against it.
 */
place: string | null, 
/**
 * Its size in bytes.
 */
bytes: number, };
export type FileReport = { 
/**
 * The file's name.
 */
file_name: string, 
/**
 * The verdict.
 */
verdict: Verdict, 
/**
 * The seat it belongs to.
 */
seat: number | null, 
/**
 * The seat's name.
 */
name: string | null, 
/**
 * The class it belongs to.
 */
class_title: string | null, 
/**
 * Check-ins and practice counts that were new.
 */
new_entries: number, 
/**
 * Things to look at that did not stop the import.
 */
flags: Array<Flag>, };
export type FirstLessons = { 
/**
 * The class.
 */
class: string, 
/**
 * Each concept with the date of its first lesson; nothing takes it away.
 */
lessons: Array<[string, string | null]>, };
export type Flag = { "code": "future_date", 
/**
 * The furthest date.
 */
date: string, 
/**
 * How many entries.
 */
entries: number, } | { "code": "outside_year", 
/**
 * The furthest date.
 */
date: string, 
/**
 * How many entries.
 */
entries: number, } | { "code": "unknown_concept", 
/**
 * How many concepts.
 */
concepts: number, };
export type Focus = { 
/**
 * The profile's id.
 */
student: string, 
/**
 * At most three concepts.
 */
concepts: Array<string>, };
export type ForecastScore = { 
/**
 * Mean squared difference of forecast and result; 0 is best, 1 is worst.
 */
score: number, 
/**
 * How far each rating is from the share right after it; 0 is best.
 */
reliability: number, 
/**
 * How much the shares right differ between ratings; more is better.
 */
resolution: number, 
/**
 * The spread of the results themselves, the same for any ratings.
 */
uncertainty: number, };
export type FractionGrid = { 
/**
 * Rows in the whole.
 */
rows: number, 
/**
 * Columns in the whole.
 */
columns: number, 
/**
 * Rows shaded one way, from the top.
 */
shaded_rows: number, 
/**
 * Columns shaded the other way, from the left.
 */
shaded_columns: number, };
export type FractionStrips = { 
/**
 * Bars or circles.
 */
shape: PartShape, 
/**
 * One strip below the other, all of the same length per whole.
 */
strips: Array<Strip>, };
export type Goal = { 
/**
 * A short note, as the student wrote it.
 */
words: string, 
/**
 * Whether the student ticked it as reached.
 */
reached: boolean, };
export type Goals = { 
/**
 * The profile's id.
 */
student: string, 
/**
 * At most three, in their order.
 */
goals: Array<Goal>, };
export type GridFrame = { 
/**
 * Left edge.
 */
x_from: number, 
/**
 * Right edge.
 */
x_to: number, 
/**
 * Lower edge.
 */
y_from: number, 
/**
 * Upper edge.
 */
y_to: number, 
/**
 * Distance between grid lines across.
 */
x_step: number, 
/**
 * Distance between grid lines up.
 */
y_step: number, 
/**
 * Words at the axis across.
 */
x_title: Say | null, 
/**
 * Words at the axis up.
 */
y_title: Say | null, };
export type GridPath = { 
/**
 * In order.
 */
points: Array<Point>, 
/**
 * Back to the first point.
 */
closed: boolean, };
export type GroupBoard = { 
/**
 * The class.
 */
class: string, 
/**
 * The seats.
 */
group: Array<number>, };
export type GroupChosen = { 
/**
 * When, from 0.
 */
slot: number, 
/**
 * On what.
 */
concept: string, 
/**
 * Who.
 */
seats: Array<number>, };
export type GroupFault = { 
/**
 * Which rule.
 */
kind: GroupFaultKind, 
/**
 * The students concerned.
 */
students: Array<GroupMember>, 
/**
 * When, from 0.
 */
slot: number | null, 
/**
 * The concept concerned.
 */
concept: ConceptName | null, };
export type GroupFaultKind = "size" | "not_needed" | "absent" | "twice_in_slot" | "twice_on_concept" | "apart" | "split" | "too_many_groups" | "too_many_copies" | "no_such_slot";
export type GroupMember = { 
/**
 * The seat.
 */
seat: number, 
/**
 * Its name.
 */
name: string | null, 
/**
 * Probability that the student has the concept.
 */
has_it: number | null, };
export type GroupPage = { 
/**
 * On what.
 */
concept: ConceptName, 
/**
 * Grade 3 to 6.
 */
grade: number, 
/**
 * The members, with their last rating and result.
 */
members: Array<PageMember>, 
/**
 * Misconceptions of these students on the concept, most first.
 */
misconceptions: Array<MisconceptionCount>, 
/**
 * Concepts it builds on that not all of them have.
 */
first: Array<PageFirst>, 
/**
 * Exercises to do in the group, from entry to stretch level.
 */
exercises: Array<SampleExercise>, };
export type GroupPageAsked = { 
/**
 * The class.
 */
class: string, 
/**
 * On what.
 */
concept: string, 
/**
 * Who.
 */
seats: Array<number>, };
export type GroupRecord = { 
/**
 * The seat.
 */
seat: number, 
/**
 * The concept.
 */
concept: string, 
/**
 * Whether the student has it; otherwise needs more.
 */
has_it: boolean, };
export type GroupResult = { 
/**
 * The class.
 */
class: string, 
/**
 * The day of the group.
 */
date: string, 
/**
 * The seat.
 */
seat: number, 
/**
 * The concept.
 */
concept: string, 
/**
 * Has it, or needs more; nothing to take the record back.
 */
has_it: boolean | null, };
export type GroupView = { 
/**
 * When, from 0.
 */
slot: number, 
/**
 * On what.
 */
concept: ConceptName, 
/**
 * Who.
 */
members: Array<GroupMember>, };
export type GroupWishes = { 
/**
 * Times at which groups meet, one after the other, 1 to 6.
 */
slots: number, 
/**
 * Groups at the same time, 1 to 12.
 */
groups_at_once: number, 
/**
 * Fewest students of a group.
 */
size_least: number, 
/**
 * Most students of a group, at most 12. Groups of two to five gain most
 * (EEF toolkit, small group tuition); above six the gain falls off.
 */
size_most: number, 
/**
 * Seats that must not sit together.
 */
keep_apart: Array<[number, number]>, 
/**
 * Seats that should sit together.
 */
keep_together: Array<[number, number]>, 
/**
 * Seats that are not there today.
 */
absent: Array<number>, };
export type GroupsAsked = { 
/**
 * The class.
 */
class: string, 
/**
 * Room, pairs and absences; kept for the next time.
 */
wishes: GroupWishes, 
/**
 * Whether to prove how good the groups are, which takes a second or so.
 */
prove: boolean, };
export type GroupsDesk = { 
/**
 * What "today" is.
 */
today: string, 
/**
 * Every seat.
 */
seats: Array<GroupMember>, 
/**
 * The wishes as last given; who is absent today.
 */
wishes: GroupWishes, 
/**
 * Concepts of the rotation that have been taught, weakest first.
 */
concepts: Array<ConceptName>, 
/**
 * Groups that were kept, newest day first, at most ten days.
 */
kept: Array<GroupsOfDay>, };
export type GroupsEdited = { 
/**
 * The class.
 */
class: string, 
/**
 * Room, pairs and absences.
 */
wishes: GroupWishes, 
/**
 * The groups as edited.
 */
groups: Array<GroupChosen>, 
/**
 * The suggestion's bound on every plan.
 */
best_at_most: number, };
export type GroupsKept = { 
/**
 * The class.
 */
class: string, 
/**
 * The day.
 */
date: string, 
/**
 * The groups; none to take the day away.
 */
groups: Array<GroupChosen>, };
export type GroupsOfDay = { 
/**
 * The day.
 */
date: string, 
/**
 * The groups by slot.
 */
groups: Array<GroupView>, 
/**
 * What the teacher recorded afterwards.
 */
records: Array<GroupRecord>, };
export type GroupsView = { 
/**
 * The groups by slot.
 */
groups: Array<GroupView>, 
/**
 * Students who need something and found no place.
 */
unplaced: Array<GroupMember>, 
/**
 * Students who need something that is planned for and are there.
 */
in_need: number, 
/**
 * Worth of the plan: needs met, and students reached.
 */
value: number, 
/**
 * No plan under these wishes is worth more.
 */
best_at_most: number, 
/**
 * How far from the best plan this one can be at most, 0 to 1; 0 is proved best.
 */
proven_gap: number, 
/**
 * Rules that the plan breaks; a suggestion breaks none.
 */
faults: Array<GroupFault>, };
export type HalfDay = "am" | "pm";
export type HandInMade = { 
/**
 * The file's name.
 */
file_name: string, 
/**
 * Where it was put, as the shell names it; nothing when the person changed their mind.
 */
place: string | null, 
/**
 * Handed to another program instead; whether that one sent it, it does not say.
 */
shared: boolean, 
/**
 * Size of the sealed file.
 */
bytes: number, 
/**
 * Check-ins in it.
 */
check_ins: number, 
/**
 * Exercises counted in it.
 */
answers: number, };
export type HandInPreview = { 
/**
 * The class it goes to.
 */
class_title: string, 
/**
 * Check-ins it would hold.
 */
check_ins: number, 
/**
 * Exercises counted in it.
 */
answers: number, 
/**
 * When the last one was made.
 */
last_made_on: string | null, 
/**
 * Check-ins and exercises since the last one.
 */
new_since: number, 
/**
 * Days with check-ins.
 */
days: number, };
export type Histogram = { 
/**
 * What it is about.
 */
title: Say, 
/**
 * Intervals from the left.
 */
bins: Array<HistogramBin>, 
/**
 * Distance between marks of the scale.
 */
scale_step: number, 
/**
 * Words under the intervals.
 */
axis: Say, };
export type HistogramBin = { 
/**
 * Smallest value in it.
 */
from: number, 
/**
 * Greatest value in it.
 */
to: number, 
/**
 * How many values.
 */
count: number, };
export type ImportAsked = { 
/**
 * Where from.
 */
from: ImportFrom, };
export type ImportFrom = "folder" | "files" | "opened" | "sample_folder";
export type ImportLines = { 
/**
 * The import.
 */
import: number, 
/**
 * How many of its files are known already.
 */
from: number, };
export type ImportReport = { 
/**
 * Names the import in the journal.
 */
import: number, 
/**
 * The date it was made.
 */
made_on: string, 
/**
 * How many files it read.
 */
tally: Tally, 
/**
 * How many of them are to be looked at: refused, quarantined or flagged.
 */
to_look_at: number, 
/**
 * The first files, at most [`LINES_A_PAGE`]: those to look at, then those that brought
 * something, then the others, each in the order of the import.
 */
files: Array<FileReport>, 
/**
 * Whether it was stopped before the end; what was read counts.
 */
cancelled: boolean, 
/**
 * Whether it was undone since.
 */
undone: boolean, };
export type InnerLine = { 
/**
 * One end.
 */
from: Point, 
/**
 * The other.
 */
to: Point, 
/**
 * What is written beside it.
 */
label: Expr | null, 
/**
 * Broken rather than drawn through.
 */
dashed: boolean, };
export type ItemView = { 
/**
 * The concept it practises.
 */
concept: ConceptId, 
/**
 * Its level.
 */
level: Level, 
/**
 * What is shown.
 */
prompt: Array<Block>, 
/**
 * What the student fills in.
 */
entry: Entry, 
/**
 * How many hints can be asked for.
 */
hint_count: number, };
export type JobId = { 
/**
 * Its number.
 */
job: number, };
export type JobResult = { "kind": "sample_ready" } | { "kind": "import", 
/**
 * Its account.
 */
account: ImportReport, } | { "kind": "failed", 
/**
 * Why.
 */
error: CallError, };
export type JobState = { 
/**
 * Steps done.
 */
done: number, 
/**
 * Steps in all; 0 while unknown.
 */
total: number, 
/**
 * What came of it, once over.
 */
result: JobResult | null, };
export type Join = { 
/**
 * The picked pack.
 */
pack: number, 
/**
 * The code from the slip, as typed.
 */
seat_code: string, 
/**
 * 1 to 24 characters; stays on this device.
 */
nickname: string, 
/**
 * A picture's id; stays on this device.
 */
picture: string, 
/**
 * The student's language.
 */
language: Language, };
export type JoinSlip = { 
/**
 * The class.
 */
class_title: string, 
/**
 * The seat.
 */
seat: number, 
/**
 * Its name.
 */
name: string | null, 
/**
 * The code to type.
 */
code: string, };
export type Journal = { 
/**
 * At most [`IMPORTS_A_PAGE`], newest first.
 */
imports: Array<ImportReport>, 
/**
 * Whether there are older ones.
 */
older: boolean, 
/**
 * The import that can be undone.
 */
undoable: Undoable | null, };
export type JournalAsked = { 
/**
 * The imports before this one; nothing for the newest.
 */
before: number | null, };
export type Language = "en" | "es";
export type Level = 1 | 2 | 3;
export type LineFault = { "code": "file_too_large", 
/**
 * The greatest size.
 */
most_bytes: number, } | { "code": "too_many_files", 
/**
 * The greatest number.
 */
most: number, } | { "code": "not_known" } | { "code": "not_utf8" } | { "code": "loose_quote" } | { "code": "line_too_long" } | { "code": "wrong_cells", 
/**
 * Cells of the line.
 */
found: number, 
/**
 * Cells of the heading.
 */
wanted: number, } | { "code": "missing_column", 
/**
 * Its name.
 */
column: string, } | { "code": "unknown_column", 
/**
 * As written, cut to 40 characters.
 */
column: string, } | { "code": "column_twice", 
/**
 * Its name.
 */
column: string, } | { "code": "empty", 
/**
 * The column or the part.
 */
column: string, } | { "code": "unknown_concept", 
/**
 * As written, cut to 80 characters.
 */
text: string, } | { "code": "two_concepts", 
/**
 * As written.
 */
text: string, } | { "code": "unknown_kind", 
/**
 * As written.
 */
text: string, } | { "code": "bad_level", 
/**
 * As written.
 */
text: string, } | { "code": "bad_form", 
/**
 * As written.
 */
text: string, } | { "code": "key_breaks_form" } | { "code": "too_long", 
/**
 * The column or the part.
 */
column: string, 
/**
 * Its length.
 */
chars: number, 
/**
 * The greatest length.
 */
most: number, } | { "code": "too_many", 
/**
 * What: `choices`, `hints`, `steps`, `wrong`.
 */
column: string, 
/**
 * How many.
 */
found: number, 
/**
 * The greatest number.
 */
most: number, } | { "code": "bad_character", 
/**
 * The column or the part.
 */
column: string, } | { "code": "bad_braces", 
/**
 * The text between them, cut to 40 characters.
 */
text: string, } | { "code": "bad_answer", 
/**
 * As written, cut to 80 characters.
 */
text: string, 
/**
 * The kind.
 */
kind: string, } | { "code": "not_a_choice", 
/**
 * As written, cut to 80 characters.
 */
text: string, } | { "code": "too_few_choices" } | { "code": "choices_alike", 
/**
 * Which.
 */
text: string, } | { "code": "no_choices_here" } | { "code": "translation_parts", 
/**
 * The column.
 */
column: string, } | { "code": "wrong_is_right", 
/**
 * As written.
 */
text: string, } | { "code": "wrong_twice", 
/**
 * As written.
 */
text: string, } | { "code": "alone", 
/**
 * The column.
 */
column: string, } | { "code": "same_as_line", 
/**
 * The file.
 */
file: string, 
/**
 * The line.
 */
line: number, } | { "code": "already_there" } | { "code": "bank_full", 
/**
 * The greatest number.
 */
most: number, } | { "code": "bank_too_long", 
/**
 * The greatest size.
 */
most_bytes: number, } | { "code": "not_xml", 
/**
 * What the reader says.
 */
detail: string, } | { "code": "entities" } | { "code": "xml_too_large" } | { "code": "older_qti" } | { "code": "not_an_item", 
/**
 * The outermost element.
 */
element: string, } | { "code": "unknown_element", 
/**
 * Its name.
 */
element: string, } | { "code": "not_one_question", 
/**
 * How many.
 */
found: number, } | { "code": "no_declaration", 
/**
 * The name.
 */
text: string, } | { "code": "declaration_unfit", 
/**
 * The question's element.
 */
element: string, 
/**
 * As written.
 */
cardinality: string, 
/**
 * As written.
 */
base_type: string, } | { "code": "no_key" } | { "code": "unknown_processing", 
/**
 * The template, or the element in its place.
 */
text: string, } | { "code": "several_best" } | { "code": "none_best" } | { "code": "keys_disagree" } | { "code": "not_a_number", 
/**
 * As written.
 */
text: string, } | { "code": "unknown_strand", 
/**
 * As written.
 */
text: string, } | { "code": "unknown_language", 
/**
 * Its tag as written.
 */
text: string, } | { "code": "bad_grade", 
/**
 * As written.
 */
text: string, } | { "code": "bad_id", 
/**
 * As written.
 */
text: string, } | { "code": "concept_there", 
/**
 * The id.
 */
text: string, } | { "code": "circle", 
/**
 * The ids around it.
 */
text: string, } | { "code": "concepts_full", 
/**
 * The greatest number.
 */
most: number, } | { "code": "not_a_package", 
/**
 * What is missing or wrong.
 */
detail: string, } | { "code": "no_concept_chosen" };
export type LineJump = { 
/**
 * Start.
 */
from: Rational, 
/**
 * End.
 */
to: Rational, 
/**
 * What is written above the arc.
 */
label: Expr | null, };
export type LineLabel = { 
/**
 * Where.
 */
at: Rational, 
/**
 * What is written there.
 */
label: Expr, };
export type LinePoint = { 
/**
 * Where.
 */
at: Rational, 
/**
 * A letter or number above it.
 */
label: Expr | null, };
export type LineRay = { 
/**
 * The end point.
 */
from: Rational, 
/**
 * An empty circle at the end point: it does not belong.
 */
open: boolean, 
/**
 * Towards greater numbers.
 */
rightward: boolean, };
export type LineRefused = { 
/**
 * The line, from 1; 0 in a file without lines.
 */
line: number, 
/**
 * The place in a file without lines, such as `CFItems[3].fullStatement`; else empty.
 */
at: string, 
/**
 * Why.
 */
fault: LineFault, };
export type Lines = { 
/**
 * The parts of the drawing.
 */
strokes: Array<Stroke>, 
/**
 * Points with letters.
 */
points: Array<NamedPoint>, 
/**
 * Places with a right-angle mark.
 */
right_angles: Array<Point>, };
export type MessageFile = { 
/**
 * What it is about, such as `items-fractions`.
 */
area: string, 
/**
 * Its text.
 */
text: string, };
export type MisconceptionCount = { 
/**
 * The misconception's code.
 */
code: string, 
/**
 * How often.
 */
count: number, };
export type Mismatch = { 
/**
 * Who.
 */
student: GroupMember, 
/**
 * On what.
 */
concept: ConceptName, 
/**
 * The last rating.
 */
rating: Confidence, 
/**
 * Right and wrong results since that rating, by outcomes and observations.
 */
results: [number, number], 
/**
 * Practice answers since that rating: alone, with help, wrong.
 */
practice: [number, number, number], };
export type MoveYear = { 
/**
 * The class.
 */
class: string, 
/**
 * First day of the year.
 */
first_day: string, 
/**
 * Last day of the year.
 */
last_day: string, 
/**
 * Weekdays on which the class meets, 1 is Monday.
 */
weekdays: number[], };
export type MyPath = { 
/**
 * The school year.
 */
year: SchoolYear, 
/**
 * The pass of today, from 0.
 */
pass: number, 
/**
 * Passes in the year.
 */
pass_count: number, 
/**
 * Strand by strand.
 */
concepts: Array<PathConcept>, 
/**
 * Concepts the student chose to work on, at most three.
 */
focus: Array<string>, 
/**
 * Goals in the student's own words, at most three. They stay on the device.
 */
goals: Array<Goal>, 
/**
 * Check-ins this year, counted by concept and date.
 */
rated: number, 
/**
 * Exercises finished this year.
 */
practised: number, };
export type NameSeat = { 
/**
 * The class.
 */
class: string, 
/**
 * The seat's number.
 */
seat: number, 
/**
 * The name; nothing to take it away.
 */
name: string | null, };
export type NamedPoint = { 
/**
 * Where.
 */
at: Point, 
/**
 * Its letter.
 */
name: string, };
export type Net = { 
/**
 * Its faces, side by side.
 */
faces: Array<NetFace>, };
export type NetFace = { 
/**
 * Corners in order.
 */
corners: Array<Point>, 
/**
 * What is written at the side from each corner to the next.
 */
side_labels: Array<Expr | null>, };
export type NewAssignment = { 
/**
 * Concepts, 1 to 6.
 */
concepts: Array<string>, 
/**
 * Exercises of each concept, 1 to 20.
 */
items_each: number, 
/**
 * First evening.
 */
from: string, 
/**
 * Last evening.
 */
due: string, 
/**
 * Seats it is for; empty for the whole class.
 */
seats: Array<number>, };
export type NewClass = { 
/**
 * The teacher's name for it, 1 to 60 characters.
 */
title: string, 
/**
 * Given names or codes, one a seat; an empty text is a seat without a name.
 */
names: Array<string>, 
/**
 * The school year.
 */
year: SchoolYear, 
/**
 * Grades whose concepts of the catalogue the class gets.
 */
grades: Array<number>, 
/**
 * Days in the rotation, 1 to 20.
 */
rotation_days: number, 
/**
 * Most concepts of a day; the rotation has the first that fit.
 */
concepts_a_day: number, };
export type NewClosures = { 
/**
 * The class.
 */
class: string, 
/**
 * Dates without school.
 */
closures: Array<string>, };
export type NewPractice = { 
/**
 * The class.
 */
class: string, 
/**
 * Bounds, and a test to aim at.
 */
practice: PracticeRules, };
export type NewRotation = { 
/**
 * The class.
 */
class: string, 
/**
 * Concept ids day by day.
 */
days: Array<Array<string>>, };
export type NewStudentSettings = { 
/**
 * The profile's id.
 */
student: string, 
/**
 * Language of the screens.
 */
language: Language, 
/**
 * Minutes of an evening, within the teacher's bounds.
 */
minutes: number, 
/**
 * Exercises of an evening; nothing when it ends by minutes.
 */
exercises: number | null, 
/**
 * Evenings a week, within the teacher's bounds.
 */
evenings: number, 
/**
 * How the screens look and sound.
 */
look: StudentLook, };
export type NotTaken = { 
/**
 * Its name.
 */
file_name: string, 
/**
 * Why.
 */
why: CallError, };
export type Nothing = Record<symbol, never>;
export type NumberLine = { 
/**
 * Left (or lower) end.
 */
from: Rational, 
/**
 * Right (or upper) end.
 */
to: Rational, 
/**
 * Distance between tick marks.
 */
step: Rational, 
/**
 * Ticks that carry a label.
 */
labels: Array<LineLabel>, 
/**
 * Points drawn on the line.
 */
points: Array<LinePoint>, 
/**
 * Arcs above the line.
 */
jumps: Array<LineJump>, 
/**
 * Half-lines drawn thick, for inequalities.
 */
rays: Array<LineRay>, 
/**
 * Upright, as a thermometer.
 */
vertical: boolean, };
export type OpenExercise = { 
/**
 * Names this exercise in the calls that follow.
 */
exercise: string, 
/**
 * The concept practised.
 */
concept: ConceptName, 
/**
 * Why it is there.
 */
reason: Reason, 
/**
 * 1 entry, 2 expected, 3 stretch.
 */
level: number, 
/**
 * Prompt and what to fill in; no answer.
 */
item: ItemView, 
/**
 * The hints taken so far.
 */
hints_taken: Array<Array<Block>>, 
/**
 * How sure the student said to be, once said.
 */
sure: Confidence | null, 
/**
 * What stood in the answer when it was left, not yet checked.
 */
draft: Draft | null, 
/**
 * A like exercise with its steps, to be read first: in turn with the first exercises.
 */
worked_first: WorkedExample | null, 
/**
 * Where the evening stands.
 */
session: Session, };
export type OpenSealed = { 
/**
 * The picked file.
 */
picked: number, 
/**
 * Its passphrase.
 */
passphrase: string, };
export type OpenedFiles = { 
/**
 * The last class pack among them.
 */
pack: PackOffer | null, 
/**
 * Hand-ins and zips among them; they wait for an import from `opened`.
 */
hand_ins: number, 
/**
 * A carry file among them, waiting for its passphrase.
 */
carry: PickedSealed | null, 
/**
 * A backup among them, waiting for its passphrase.
 */
backup: PickedSealed | null, 
/**
 * What could not be taken; the other files are not touched by it.
 */
not_taken: Array<NotTaken>, };
export type Outcome = "right" | "wrong" | "not_done";
export type OwnConceptLine = { 
/**
 * The concept.
 */
concept: ConceptName, 
/**
 * Its school grade.
 */
grade: number, 
/**
 * Codes of published standards.
 */
codes: Array<string>, 
/**
 * Titles of its prerequisites.
 */
before: Array<string>, 
/**
 * Whether it is in the rotation.
 */
in_rotation: boolean, 
/**
 * Own exercises for it.
 */
exercises: number, };
export type OwnDesk = { 
/**
 * Own exercises, by concept.
 */
exercises: Array<OwnExerciseLine>, 
/**
 * Own concepts, in the rotation or not.
 */
concepts: Array<OwnConceptLine>, 
/**
 * Imports of either, the newest first.
 */
imports: Array<OwnImport>, };
export type OwnExerciseId = { 
/**
 * The class.
 */
class: string, 
/**
 * Its id.
 */
id: string, };
export type OwnExerciseLine = { 
/**
 * Its id.
 */
id: string, 
/**
 * Its concept.
 */
concept: ConceptName, 
/**
 * Whether the concept is in the rotation. Only then it is part of the class pack.
 */
in_rotation: boolean, 
/**
 * 1 entry, 2 expected, 3 stretch.
 */
level: number, 
/**
 * The kind of its answer.
 */
kind: OwnKind, 
/**
 * Its question, as plain text.
 */
question: string, 
/**
 * The language of the question, if it is missing in the language of the screens.
 */
shown_in?: Language, 
/**
 * Its answer, as plain text.
 */
answer: string, };
export type OwnExercisePage = { 
/**
 * Its id.
 */
id: string, 
/**
 * Its concept.
 */
concept: ConceptName, 
/**
 * As the student sees it.
 */
item: ItemView, 
/**
 * Its hints.
 */
hints: Array<Array<Block>>, };
export type OwnExerciseTry = { 
/**
 * The class.
 */
class: string, 
/**
 * Its id.
 */
id: string, 
/**
 * The answer.
 */
response: Response, };
export type OwnFile = { 
/**
 * Its name.
 */
file: string, 
/**
 * What was imported.
 */
taken: Array<OwnLineTaken>, 
/**
 * What was refused, and why.
 */
refused: Array<LineRefused>, };
export type OwnImport = { 
/**
 * 1, 2, 3 ... in its class.
 */
number: number, 
/**
 * What was imported.
 */
kind: OwnImportKind, 
/**
 * School date.
 */
made_on: string, 
/**
 * Taken back.
 */
undone: boolean, 
/**
 * File by file.
 */
files: Array<OwnFile>, };
export type OwnImportAsked = { 
/**
 * The class.
 */
class: string, 
/**
 * The concept that lines and items without one are for.
 */
concept: string | null, };
export type OwnImportId = { 
/**
 * The class.
 */
class: string, 
/**
 * Its number.
 */
number: number, };
export type OwnImportKind = "exercises" | "concepts";
export type OwnKind = "whole_number" | "decimal" | "fraction" | "mixed_number" | "money" | "time" | "comparison" | "remainder" | "one_choice" | "several_choices" | "order";
export type OwnLineTaken = { 
/**
 * The line, from 1; 0 in a file without lines.
 */
line: number, 
/**
 * The id of the exercise or concept.
 */
id: string, 
/**
 * Its question or title.
 */
words: string, 
/**
 * Languages of the program in which one of its texts is missing.
 */
missing_in: Array<Language>, 
/**
 * Parts of the file that were left out.
 */
left_out: Array<string>, };
export type OwnTried = { 
/**
 * Whether the answer was right.
 */
right: boolean, 
/**
 * The feedback.
 */
says: Array<Block>, 
/**
 * The right answer.
 */
answer: Array<Block>, 
/**
 * The worked steps.
 */
steps: Array<Array<Block>>, };
export type PacingFound = { 
/**
 * The concept.
 */
concept: ConceptName, 
/**
 * Its first lesson by the list.
 */
date: string, 
/**
 * Its present first lesson.
 */
before: string | null, };
export type PacingList = { 
/**
 * Concepts with the date of their first lesson, in the order of the list.
 */
found: Array<PacingFound>, 
/**
 * Lines that cannot be used.
 */
missed: Array<PacingMissed>, };
export type PacingMissed = { 
/**
 * The line, cut short.
 */
line: string, 
/**
 * Why.
 */
trouble: PacingTrouble, };
export type PacingText = { 
/**
 * The class.
 */
class: string, 
/**
 * As pasted.
 */
text: string, };
export type PacingTrouble = "no_such_concept" | "no_date" | "outside_year" | "twice";
export type PackOffer = { 
/**
 * Names the picked pack in [`Join`].
 */
pack: number, 
/**
 * The class's title.
 */
class_title: string, 
/**
 * Concepts in its rotation.
 */
concepts: number, 
/**
 * First day of its school year.
 */
first_day: string, 
/**
 * Last day of its school year.
 */
last_day: string, };
export type PackTaken = { 
/**
 * The version now held.
 */
version: number, 
/**
 * Assignments in it that are still open.
 */
open_assignments: number, };
export type PageFirst = { 
/**
 * The concept.
 */
concept: ConceptName, 
/**
 * Members who seem not to have it.
 */
lacking: Array<GroupMember>, };
export type PageMember = { 
/**
 * The seat.
 */
seat: number, 
/**
 * Its name.
 */
name: string | null, 
/**
 * Probability that the student has the concept.
 */
has_it: number | null, 
/**
 * The last rating.
 */
rating: Confidence | null, 
/**
 * The last result marked.
 */
outcome: Outcome | null, 
/**
 * Practice answers: alone, with help, wrong.
 */
practice: [number, number, number], };
export type PartShape = "bar" | "circle";
export type PassCell = { 
/**
 * Students who rated it.
 */
rated: number, 
/**
 * Of these, Not yet or With help.
 */
needs: number, 
/**
 * The newest rating of the pass.
 */
last_on: string | null, };
export type PathConcept = { 
/**
 * The concept.
 */
concept: ConceptName, 
/**
 * Its phase today.
 */
phase: Phase, 
/**
 * The last rating of each pass so far.
 */
ratings: Array<Confidence | null>, 
/**
 * Exercises answered.
 */
answered: number, 
/**
 * Of these, right without help.
 */
alone: number, 
/**
 * Of these, right with a hint or at the second try.
 */
with_help: number, };
export type PathPrint = { 
/**
 * The student's id.
 */
student: string, 
/**
 * The paper.
 */
paper: PrintPaper, 
/**
 * Whether the student's own goals go on it.
 */
with_goals: boolean, };
export type Phase = "preview" | "practice" | "review";
export type PickedSealed = { 
/**
 * Names it in the call that opens it.
 */
picked: number, 
/**
 * Its name.
 */
file_name: string, };
export type PictureGraph = { 
/**
 * What it is about.
 */
title: Say, 
/**
 * Its rows.
 */
rows: Array<PictureRow>, 
/**
 * What one whole symbol counts for.
 */
each: number, 
/**
 * Words for the key, such as "each circle stands for 4 books".
 */
key: Say, };
export type PictureRow = { 
/**
 * Its name.
 */
label: Say, 
/**
 * Symbols, counted in halves.
 */
half_symbols: number, };
export type PinReset = { 
/**
 * The profile's id.
 */
student: string, 
/**
 * The code on the slip, as typed.
 */
seat_code: string, };
export type PinTyped = { 
/**
 * The profile's id.
 */
student: string, 
/**
 * 4 to 8 digits.
 */
pin: string, };
export type PlacedConcept = { 
/**
 * The concept.
 */
concept: ConceptName, 
/**
 * Grade 3 to 6.
 */
grade: number, 
/**
 * The date of its first lesson.
 */
taught_from: string | null, 
/**
 * Its phase today.
 */
phase: Phase, };
export type PlotStyle = "bars" | "dots" | "pictures";
export type Point = { 
/**
 * Across.
 */
x: Rational, 
/**
 * Up.
 */
y: Rational, };
export type Polygon = { 
/**
 * Corners in order around the shape.
 */
corners: Array<Point>, 
/**
 * What is written at the side from each corner to the next.
 */
side_labels: Array<Expr | null>, 
/**
 * Corners (by place in the list) marked with a small square.
 */
right_angles: Array<number>, 
/**
 * Lines inside, such as a height or a line of symmetry.
 */
inner_lines: Array<InnerLine>, 
/**
 * Drawn on unit squares.
 */
on_grid: boolean, };
export type PracticeAsked = { 
/**
 * The profile's id.
 */
student: string, 
/**
 * The concept asked for.
 */
concept: string | null, 
/**
 * Whether to go on though the evening is over.
 */
more: boolean, };
export type PracticeRules = { 
/**
 * The fewest minutes an evening, 1 or more.
 */
minutes_least: number, 
/**
 * The most, at most 120.
 */
minutes_most: number, 
/**
 * The fewest evenings a week, 1 or more.
 */
evenings_least: number, 
/**
 * The most, at most 7.
 */
evenings_most: number, 
/**
 * The next test, within the school year.
 */
test_on?: string | null, };
export type PracticeStep = { "kind": "exercise" } & OpenExercise | { "kind": "done" } & Summary | { "kind": "nothing_yet" };
export type PrintOptions = { 
/**
 * The language of the print.
 */
language: Language, 
/**
 * The paper.
 */
paper: PrintPaper, 
/**
 * With space to work or write in; else as little paper as possible.
 */
roomy: boolean, };
export type PrintPaper = "a4" | "letter";
export type Profile = { 
/**
 * Names the student's database file on this device.
 */
id: string, 
/**
 * As the student typed it.
 */
nickname: string, 
/**
 * One of the pictures that come with the program, by its id.
 */
picture: string, 
/**
 * The student's language.
 */
language: Language, 
/**
 * How the screens look and sound for the student.
 */
look: StudentLook, 
/**
 * The class's title from its class pack.
 */
class_title: string, 
/**
 * Whether a PIN must be typed first.
 */
has_pin: boolean, };
export type Protractor = { 
/**
 * Size of the angle.
 */
degrees: number, 
/**
 * The fixed side points right (read the inner scale), else left.
 */
from_right: boolean, };
export type RatedLine = { 
/**
 * The concept's title.
 */
title: string, 
/**
 * Its "I can" statement.
 */
i_can: string, 
/**
 * The rating.
 */
rating: Confidence | null, 
/**
 * The words for the rating.
 */
words: string, };
export type RatioRow = { 
/**
 * What it counts.
 */
label: Say, 
/**
 * Its cells; `Blank` is asked for.
 */
cells: Array<Expr>, };
export type RatioTable = { 
/**
 * Two or more rows of the same length.
 */
rows: Array<RatioRow>, };
export type Rational = { 
/**
 * The numerator; carries the sign.
 */
top: number, 
/**
 * The denominator, greater than zero.
 */
bottom: number, };
export type ReadAloud = { 
/**
 * The text, with its mathematics in words.
 */
text: string, 
/**
 * The language it is in.
 */
language: Language, };
export type Reason = { "code": "assigned", 
/**
 * Last evening.
 */
due: string, 
/**
 * Exercises done of it.
 */
done: number, 
/**
 * Exercises asked for.
 */
of: number, } | { "code": "marked_not_yet", 
/**
 * The check-in's date.
 */
on: string, } | { "code": "marked_with_help", 
/**
 * The check-in's date.
 */
on: string, } | { "code": "wrong_last_time", 
/**
 * That answer's date.
 */
on: string, } | { "code": "time_to_see_again", 
/**
 * Days since it was last met.
 */
days: number, } | { "code": "focus" } | { "code": "chosen" } | { "code": "first_practice" } | { "code": "before", 
/**
 * The concept that builds on it.
 */
concept: string, };
export type Refusal = { "code": "too_large", 
/**
 * Size found, or the size at which reading stopped.
 */
found_bytes: number, 
/**
 * The cap.
 */
most_bytes: number, } | { "code": "unpacks_too_large", 
/**
 * The cap.
 */
most_bytes: number, } | { "code": "too_many_entries", 
/**
 * The cap.
 */
most: number, } | { "code": "too_much_at_once" } | { "code": "not_ours" } | { "code": "wrong_class" } | { "code": "damaged" } | { "code": "bad_signature" } | { "code": "newer_format", 
/**
 * Its format number.
 */
found: number, 
/**
 * The newest format known here.
 */
known: number, } | { "code": "bad_content", 
/**
 * Where, as a path into the content.
 */
at: string, } | { "code": "seat_unknown" } | { "code": "not_newer", 
/**
 * Its version.
 */
found: number, 
/**
 * The version held.
 */
held: number, } | { "code": "other_teacher" } | { "code": "wrong_passphrase" } | { "code": "too_much_work", 
/**
 * Work factor asked for, log2 of scrypt's N.
 */
found: number, 
/**
 * The cap.
 */
most: number, } | { "code": "unsafe_name" } | { "code": "unreadable" };
export type RemoveStudent = { 
/**
 * The profile's id.
 */
student: string, };
export type Removed = { 
/**
 * Its number, by which it is brought back or let go of.
 */
number: number, 
/**
 * The class.
 */
class: string, 
/**
 * Its title.
 */
title: string, 
/**
 * What it was.
 */
what: RemovedWhat, };
export type RemovedId = { 
/**
 * Its number.
 */
number: number, };
export type RemovedWhat = { "kind": "class" } | { "kind": "seat", 
/**
 * Its number.
 */
seat: number, 
/**
 * Its name.
 */
name: string | null, } | { "kind": "own_exercise" } | { "kind": "own_import" };
export type RenameClass = { 
/**
 * The class.
 */
class: string, 
/**
 * The teacher's name for it, 1 to 60 characters.
 */
title: string, };
export type ReportAsked = { 
/**
 * The class's id.
 */
class: string, 
/**
 * The name of the report in the table.
 */
report: string, 
/**
 * What was chosen for its fields.
 */
values: ReportValues, 
/**
 * How it looks.
 */
options: PrintOptions, };
export type ReportColumn = { 
/**
 * Its name.
 */
title: string, 
/**
 * Its share of the width.
 */
share: number, 
/**
 * Whether it holds numbers, which are centred.
 */
figures: boolean, };
export type ReportField = { "kind": "seat" } | { "kind": "group" } | { "kind": "minutes" } | { "kind": "concepts" } | { "kind": "level" } | { "kind": "count", 
/**
 * At most.
 */
most: number, } | { "kind": "key" } | { "kind": "names" } | { "kind": "numbers" } | { "kind": "paper" } | { "kind": "space" };
export type ReportInfo = { 
/**
 * Names it in `print` and `preview`.
 */
name: string, 
/**
 * Where it is listed.
 */
section: ReportSection, 
/**
 * Its title.
 */
title: string, 
/**
 * What it is for.
 */
about: string, 
/**
 * What it asks for.
 */
fields: Array<ReportField>, 
/**
 * Whether it can be looked at before it is printed.
 */
previewed: boolean, };
export type ReportPage = { 
/**
 * Its title.
 */
title: string, 
/**
 * Class and date.
 */
under: string, 
/**
 * Its parts, from the top.
 */
parts: Array<ReportPart>, };
export type ReportPart = { "kind": "heading", 
/**
 * Its words.
 */
text: string, } | { "kind": "words", 
/**
 * Its words.
 */
text: string, } | { "kind": "caution", 
/**
 * Its words.
 */
text: string, } | { "kind": "lines", 
/**
 * The lines.
 */
texts: Array<string>, } | { "kind": "ratings", 
/**
 * The lines.
 */
lines: Array<RatedLine>, } | { "kind": "table", 
/**
 * The table.
 */
table: ReportTable, } | { "kind": "content", 
/**
 * The blocks.
 */
blocks: Array<Block>, } | { "kind": "exercise", 
/**
 * Its number on the sheet.
 */
number: number, 
/**
 * What is asked.
 */
item: ItemView, 
/**
 * Its answer; empty without a key.
 */
answer: Array<Block>, } | { "kind": "write", 
/**
 * What to write.
 */
label: string, 
/**
 * How many lines.
 */
lines: number, };
export type ReportSection = "sheet" | "seat_sheet" | "chart" | "report" | "table" | "slips";
export type ReportTable = { 
/**
 * What it is about, for screen readers.
 */
summary: string, 
/**
 * Its columns.
 */
columns: Array<ReportColumn>, 
/**
 * Its rows; the first cell names the row.
 */
rows: Array<Array<string>>, };
export type ReportValues = { 
/**
 * For [`ReportField::Seat`].
 */
seat?: number, 
/**
 * For [`ReportField::Group`]: the concept.
 */
concept?: string, 
/**
 * For [`ReportField::Group`]: the seats.
 */
seats?: Array<number>, 
/**
 * For [`ReportField::Minutes`].
 */
minutes?: number, 
/**
 * For [`ReportField::Concepts`].
 */
concepts?: Array<string>, 
/**
 * For [`ReportField::Level`].
 */
level?: Level, 
/**
 * For [`ReportField::Count`].
 */
count?: number, 
/**
 * For [`ReportField::Key`].
 */
with_key?: boolean, 
/**
 * For [`ReportField::Names`].
 */
with_names?: boolean, 
/**
 * For [`ReportField::Numbers`].
 */
seed?: number, };
export type Response = { "kind": "whole_number", 
/**
 * As typed.
 */
text: string, } | { "kind": "decimal", 
/**
 * As typed.
 */
text: string, } | { "kind": "fraction", 
/**
 * As typed.
 */
top: string, 
/**
 * As typed.
 */
bottom: string, } | { "kind": "mixed", 
/**
 * As typed.
 */
whole: string, 
/**
 * As typed.
 */
top: string, 
/**
 * As typed.
 */
bottom: string, } | { "kind": "money", 
/**
 * As typed, without the currency sign.
 */
text: string, } | { "kind": "time", 
/**
 * As typed.
 */
hour: string, 
/**
 * As typed.
 */
minute: string, 
/**
 * When asked.
 */
half_day: HalfDay | null, } | { "kind": "duration", 
/**
 * As typed; empty is none.
 */
hours: string, 
/**
 * As typed; empty is none.
 */
minutes: string, } | { "kind": "comparison", 
/**
 * Which.
 */
sign: Sign, } | { "kind": "one_choice", 
/**
 * From 0.
 */
index: number, } | { "kind": "several_choices", 
/**
 * From 0, any order.
 */
indexes: Array<number>, } | { "kind": "ordering", 
/**
 * Each place once.
 */
order: Array<number>, } | { "kind": "expression", 
/**
 * As typed, such as `3(x+2)`.
 */
text: string, } | { "kind": "equation", 
/**
 * As typed, such as `c=9t`.
 */
text: string, } | { "kind": "coordinates", 
/**
 * As typed or tapped.
 */
x: string, 
/**
 * As typed or tapped.
 */
y: string, } | { "kind": "number_line_point", 
/**
 * Where, on a tick.
 */
at: Rational, } | { "kind": "number_line_ray", 
/**
 * The end point.
 */
from: Rational, 
/**
 * Empty circle.
 */
open: boolean, 
/**
 * Towards greater numbers.
 */
rightward: boolean, } | { "kind": "angle", 
/**
 * As typed or turned.
 */
text: string, } | { "kind": "shaded_fraction", 
/**
 * From 0, each once.
 */
parts: Array<number>, } | { "kind": "plot", 
/**
 * One for each column.
 */
heights: Array<number>, } | { "kind": "grid_area", 
/**
 * (row, column) from 0, each once.
 */
cells: Array<[number, number]>, } | { "kind": "quotient_remainder", 
/**
 * As typed.
 */
quotient: string, 
/**
 * As typed; empty is none.
 */
remainder: string, } | { "kind": "several_numbers", 
/**
 * As typed, one for each field.
 */
texts: Array<string>, };
export type RestoreCopy = { 
/**
 * Of which store.
 */
store: StoreName, 
/**
 * The copy's name.
 */
name: string, };
export type Restored = { 
/**
 * Which.
 */
store: StoreName, 
/**
 * Whether another one was in its place and is now in quarantine.
 */
quarantined: boolean, 
/**
 * What the screens show now.
 */
start: Start, };
export type RosterClass = { 
/**
 * Its title there, or the file's name; empty when the files name no class.
 */
title: string, 
/**
 * Given names or codes, in the order of the file.
 */
names: Array<string>, 
/**
 * Lines that could not be a name.
 */
left_out: number, };
export type RosterFile = { 
/**
 * The classes in them, by title.
 */
classes: Array<RosterClass>, };
export type RosterNames = { 
/**
 * One a seat.
 */
names: Array<string>, 
/**
 * Lines left out, each with its number from 1: empty, too long, or twice.
 */
left_out: Array<number>, };
export type RosterText = { 
/**
 * The text.
 */
text: string, };
export type RotationDays = { 
/**
 * The class.
 */
class: string, 
/**
 * Days in the rotation.
 */
days: number, };
export type RotationError = { "code": "length", 
/**
 * Days as given.
 */
found: number, 
/**
 * [`LONGEST_ROTATION_DAYS`].
 */
most: number, } | { "code": "twice", 
/**
 * The concept's id.
 */
concept: string, };
export type Ruler = { 
/**
 * Message id of the unit's sign.
 */
unit: string, 
/**
 * Whole units shown.
 */
length: number, 
/**
 * Marks per unit.
 */
parts: number, 
/**
 * Where the thing starts.
 */
thing_from: Rational, 
/**
 * Where it ends.
 */
thing_to: Rational, };
export type SampleExercise = { 
/**
 * The exercise.
 */
item: ItemView, 
/**
 * The answer in words or figures.
 */
answer: Array<Block>, 
/**
 * The worked solution.
 */
steps: Array<Array<Block>>, 
/**
 * A misconception that leads to a wrong answer here.
 */
misconception: SampleMisconception | null, };
export type SampleMisconception = { 
/**
 * Its code.
 */
code: string, 
/**
 * The wrong answer.
 */
answer: Array<Block>, 
/**
 * What to tell a student who answered so.
 */
say: Say, };
export type Say = { 
/**
 * The Fluent message id.
 */
id: string, 
/**
 * Its arguments by name.
 */
args: { [key in string]: Arg }, };
export type Scale = { 
/**
 * A jug filled from below, or a weighing dial.
 */
shape: ScaleShape, 
/**
 * Top of the scale.
 */
to: number, 
/**
 * Distance between marks.
 */
step: number, 
/**
 * Distance between marks with numbers.
 */
label_step: number, 
/**
 * The value that it shows.
 */
value: number, 
/**
 * Message id of the unit's sign.
 */
unit: string, };
export type ScaleShape = "jug" | "dial";
export type SchoolYear = { 
/**
 * First calendar day of the year.
 */
first_day: string, 
/**
 * Last calendar day of the year.
 */
last_day: string, 
/**
 * Weekdays on which the class meets, ISO 8601: 1 is Monday, 7 is Sunday.
 */
weekdays: number[], 
/**
 * Dates without school: holidays, closures, pupil-free days.
 */
closures: string[], };
export type Seat = { 
/**
 * 1, 2, 3 ... in the order of the roster.
 */
number: number, 
/**
 * Given name or code, when the teacher entered one.
 */
name: string | null, 
/**
 * The code on the join slip.
 */
code: string, 
/**
 * Devices whose hand-ins count for this seat.
 */
devices: number, 
/**
 * Quarantined devices of this seat.
 */
quarantined_devices: Array<string>, 
/**
 * The newest report from this seat.
 */
newest_report: string | null, };
export type SeatCodeError = { "code": "length", 
/**
 * Signs typed, without spaces and dashes.
 */
found: number, 
/**
 * Signs a code has.
 */
expected: number, } | { "code": "sign", 
/**
 * The sign.
 */
sign: string, } | { "code": "check" } | { "code": "other_class" };
export type SeatCodeTyped = { 
/**
 * The picked pack.
 */
pack: number, 
/**
 * The code as typed.
 */
seat_code: string, };
export type SeatHoldings = { 
/**
 * Hand-ins kept.
 */
hand_ins: number, 
/**
 * Ratings and results, from devices or from paper.
 */
reports: number, 
/**
 * Practice answers.
 */
answers: number, 
/**
 * The observation.
 */
observations: number, };
export type SeatId = { 
/**
 * The class.
 */
class: string, 
/**
 * The seat's number.
 */
seat: number, };
export type SeatProgress = { 
/**
 * The seat.
 */
seat: number, 
/**
 * Its name.
 */
name: string | null, 
/**
 * Done of asked.
 */
amount: AssignedAmount, };
export type Session = { 
/**
 * Exercises finished tonight.
 */
finished: number, 
/**
 * Minutes practised tonight.
 */
minutes_done: number, 
/**
 * Minutes meant for tonight: less what the evening before ran over.
 */
minutes_planned: number, 
/**
 * Exercises meant for tonight; nothing when it ends by minutes.
 */
exercises_planned: number | null, 
/**
 * What would come next, at most six, each with its reason.
 */
ahead: Array<Ahead>, };
export type Sign = "less" | "equal" | "greater" | "at_most" | "at_least" | "not_equal" | "about" | "blank";
export type Start = { 
/**
 * Today, as this device's calendar has it (in the sample class: the latest weekday).
 */
today: string, 
/**
 * Version of the program.
 */
version: string, 
/**
 * Own data or the sample class.
 */
world: World, 
/**
 * Whether the sample class has been made.
 */
sample_ready: boolean, 
/**
 * Students on this device.
 */
students: Array<Profile>, 
/**
 * Classes on this device.
 */
classes: Array<ClassSummary>, 
/**
 * Stores that cannot be opened, for the person to decide about.
 */
damaged: Array<DamagedStore>, 
/**
 * School years that are over while their data is still here.
 */
years_over: Array<YearOver>, 
/**
 * What was removed from the desk, while it can be restored; the newest first.
 */
removed: Array<Removed>, 
/**
 * Whether a file can be handed to another program by the system's share sheet.
 */
shares: boolean, 
/**
 * Settings of this device.
 */
settings: DeviceSettings, };
export type StoreName = { "kind": "desk" } | { "kind": "student", 
/**
 * The profile's id.
 */
student: string, };
export type StoredCopy = { 
/**
 * Names it in [`RestoreCopy`].
 */
name: string, 
/**
 * Why it is there.
 */
kind: CopyKind, 
/**
 * The day it was made, where that is known; a day after today is not.
 */
made_on: string | null, 
/**
 * Its size.
 */
bytes: number, };
export type Strand = "place-value" | "addition-subtraction" | "multiplication" | "fractions" | "decimals" | "measurement" | "geometry" | "data" | "ratio" | "number-system" | "expressions" | "statistics";
export type Strip = { 
/**
 * Wholes in a row.
 */
wholes: number, 
/**
 * Equal parts in each whole.
 */
parts: number, 
/**
 * Parts shaded, from the left, over all the wholes.
 */
shaded: number, 
/**
 * What is written beside it.
 */
label: Expr | null, };
export type Stroke = { 
/**
 * Segment, ray (arrow at `to`) or line (arrow at both ends).
 */
stroke: StrokeKind, 
/**
 * One end.
 */
from: Point, 
/**
 * The other.
 */
to: Point, };
export type StrokeKind = "segment" | "ray" | "line";
export type StudentCalibration = { 
/**
 * Who.
 */
student: GroupMember, 
/**
 * Answers with a rating before them.
 */
answers: number, 
/**
 * The verdict.
 */
verdict: CalibrationVerdict, 
/**
 * Claimed minus observed share of right answers; none below 20 answers.
 */
bias: number | null, 
/**
 * Low end of its 95% interval.
 */
low: number | null, 
/**
 * High end of its 95% interval.
 */
high: number | null, 
/**
 * Goodman and Kruskal's gamma: whether surer answers were more often right.
 */
gamma: number | null, 
/**
 * How good the ratings are as forecasts; none below 60 answers, or if all
 * answers have the same rating.
 */
brier: ForecastScore | null, };
export type StudentConcept = { 
/**
 * The concept.
 */
concept: ConceptName, 
/**
 * Its phase today.
 */
phase: Phase, 
/**
 * Probability that the student has it.
 */
has_it: number, 
/**
 * The last rating.
 */
rating: Confidence | null, 
/**
 * The last result marked.
 */
outcome: Outcome | null, 
/**
 * Practice answers: alone, with help, wrong.
 */
practice: [number, number, number], 
/**
 * Whether the student has it, by the last observation.
 */
seen: boolean | null, 
/**
 * Days since the newest report.
 */
newest_days: number, };
export type StudentDay = { 
/**
 * The profile's id.
 */
student: string, 
/**
 * The day asked for; nothing for today.
 */
date: string | null, };
export type StudentId = { 
/**
 * The profile's id.
 */
student: string, };
export type StudentLook = { 
/**
 * Colours.
 */
theme: StudentTheme, 
/**
 * Size of the text in percent, one of [`TEXT_PERCENTS`].
 */
text_percent: number, 
/**
 * The decimal sign.
 */
decimal_sign: DecimalSign, 
/**
 * No motion; else as the system says.
 */
less_motion: boolean, 
/**
 * Whether an exercise is read aloud as it opens.
 */
reads_aloud: boolean, };
export type StudentPage = { 
/**
 * Who.
 */
student: GroupMember, 
/**
 * The calibration of the ratings.
 */
calibration: StudentCalibration, 
/**
 * Concepts with a report, those needed most first.
 */
concepts: Array<StudentConcept>, 
/**
 * Concepts without a report.
 */
without_report: number, };
export type StudentPrint = { 
/**
 * The student's id.
 */
student: string, 
/**
 * The paper.
 */
paper: PrintPaper, };
export type StudentReport = { 
/**
 * The seat.
 */
seat: number, 
/**
 * Its name.
 */
name: string | null, 
/**
 * Probability that the student has it, by all reports; none without a report.
 */
has_it: number | null, 
/**
 * Rating and result of each date, oldest first.
 */
history: Array<DatedReport>, 
/**
 * Observations, oldest first.
 */
seen: Array<DatedSight>, 
/**
 * Practice answers: alone, with help, wrong.
 */
practice: [number, number, number], 
/**
 * Days since the newest report on it.
 */
newest_days: number | null, 
/**
 * Practice still assigned on this concept.
 */
assigned: AssignedAmount | null, };
export type StudentSettings = { 
/**
 * Language of the screens.
 */
language: Language, 
/**
 * Minutes of an evening.
 */
minutes: number, 
/**
 * The fewest the teacher set.
 */
minutes_least: number, 
/**
 * The most the teacher set.
 */
minutes_most: number, 
/**
 * Exercises of an evening; nothing when it ends by minutes.
 */
exercises: number | null, 
/**
 * The fewest that the teacher's minutes leave.
 */
exercises_least: number, 
/**
 * The most that the teacher's minutes leave.
 */
exercises_most: number, 
/**
 * Evenings a week.
 */
evenings: number, 
/**
 * The fewest the teacher allows.
 */
evenings_least: number, 
/**
 * The most the teacher allows.
 */
evenings_most: number, 
/**
 * A test that practice aims at, while it lies ahead.
 */
test_on: string | null, 
/**
 * How the screens look and sound.
 */
look: StudentLook, };
export type StudentTheme = "device" | "light" | "dark" | "contrast" | "contrast_dark";
export type Summary = { 
/**
 * Exercises finished tonight.
 */
finished: number, 
/**
 * Right without help.
 */
alone: number, 
/**
 * Right with a hint or at the second try.
 */
with_help: number, 
/**
 * Minutes practised tonight.
 */
minutes: number, 
/**
 * Evenings practised this week before tonight.
 */
evenings_done: number, 
/**
 * Evenings a week that the student means to practise.
 */
evenings_planned: number, 
/**
 * Concept by concept.
 */
concepts: Array<SummaryConcept>, 
/**
 * Whether more could be practised tonight.
 */
more: boolean, };
export type SummaryConcept = { 
/**
 * The concept.
 */
concept: ConceptName, 
/**
 * The last rating in class, if any.
 */
said: Confidence | null, 
/**
 * Exercises answered for each confidence said before the answer, `NotYet` first.
 */
thought: [number, number, number, number], 
/**
 * Of these, right without help.
 */
thought_right: [number, number, number, number], 
/**
 * Exercises finished.
 */
finished: number, 
/**
 * Right without help.
 */
alone: number, };
export type Sure = { 
/**
 * The profile's id.
 */
student: string, 
/**
 * The exercise.
 */
exercise: string, 
/**
 * How sure.
 */
sure: Confidence, };
export type TalkAsked = { 
/**
 * The class.
 */
class: string, 
/**
 * Minutes there are, 1 to 20.
 */
minutes: number, };
export type TalkConcept = { 
/**
 * The concept.
 */
concept: ConceptName, 
/**
 * Its phase.
 */
phase: Phase, 
/**
 * Whether it is chosen.
 */
chosen: boolean, 
/**
 * Whether it was talked about on that day.
 */
talked: boolean, 
/**
 * How to discuss it; none before the first lesson or without a report.
 */
way: TalkWay | null, 
/**
 * Minutes for it.
 */
minutes: number, 
/**
 * Its value, in students corrected.
 */
worth: number, 
/**
 * Estimated share of the class that has it.
 */
has_it: number | null, 
/**
 * Low end of its likely range.
 */
low: number | null, 
/**
 * High end of its likely range.
 */
high: number | null, 
/**
 * Students expected to get it wrong, of those there.
 */
expected_wrong: number, 
/**
 * Of these, expected among those whose last rating was On my own or Could teach it.
 */
sure_wrong: number, 
/**
 * Its trend.
 */
trend: Trend, 
/**
 * Whether it was talked about in this pass or the last.
 */
talked_lately: boolean, 
/**
 * Concepts building on it whose first lesson is within ten school days.
 */
dependants_soon: Array<ConceptName>, 
/**
 * The commonest misconceptions.
 */
misconceptions: Array<MisconceptionCount>, 
/**
 * One exercise to discuss, with a common misconception.
 */
exercise: SampleExercise | null, };
export type TalkNoted = { 
/**
 * The class.
 */
class: string, 
/**
 * The day.
 */
date: string, 
/**
 * The concept.
 */
concept: string, 
/**
 * Whether it was talked about.
 */
talked: boolean, };
export type TalkView = { 
/**
 * The class.
 */
class_title: string, 
/**
 * The school day it is for.
 */
date: string, 
/**
 * Whether that is today; otherwise today is without school.
 */
is_today: boolean, 
/**
 * Day of the rotation, from 1; none after the year.
 */
day: number | null, 
/**
 * Minutes there are.
 */
minutes: number, 
/**
 * Minutes for the chosen concepts.
 */
minutes_used: number, 
/**
 * Every concept of the day: the chosen ones first, in the order of the review.
 */
concepts: Array<TalkConcept>, };
export type TalkWay = "teach_again" | "pair_talk" | "short_look";
export type Tally = { 
/**
 * [`Verdict::New`].
 */
new: number, 
/**
 * [`Verdict::Updated`].
 */
updated: number, 
/**
 * [`Verdict::Known`].
 */
known: number, 
/**
 * [`Verdict::Older`].
 */
older: number, 
/**
 * [`Verdict::Quarantined`].
 */
quarantined: number, 
/**
 * [`Verdict::Refused`].
 */
refused: number, };
export type TapeBar = { 
/**
 * Its name.
 */
label: Say | null, 
/**
 * Its parts.
 */
parts: Array<TapePart>, 
/**
 * What is written over the whole bar.
 */
whole_label: Expr | null, };
export type TapeDiagram = { 
/**
 * One below the other, starting at the same place.
 */
bars: Array<TapeBar>, };
export type TapePart = { 
/**
 * Its length beside the others.
 */
length: number, 
/**
 * What is written in it.
 */
label: Expr | null, 
/**
 * Shaded.
 */
shaded: boolean, };
export type TaughtFrom = { 
/**
 * The class.
 */
class: string, 
/**
 * The concept.
 */
concept: string, 
/**
 * The date; nothing for "not this year".
 */
date: string | null, };
export type Text = { [tag in Language]?: string };
export type Theme = "system" | "light" | "dark" | "contrast" | "contrast_dark";
export type Today = { 
/**
 * The date shown.
 */
date: string, 
/**
 * What "today" is.
 */
today: string, 
/**
 * Pass and day from 1, when `date` is a school day.
 */
pass: number | null, 
/**
 * Day of the rotation from 1.
 */
day: number | null, 
/**
 * Days in the rotation.
 */
rotation_days: number, 
/**
 * The day's concepts in the order of the review; empty without school.
 */
concepts: Array<TodayConcept>, 
/**
 * The next school day, when today is none.
 */
next_school_day: string | null, 
/**
 * Recent school days with something left to rate, newest first, at most five.
 */
catch_up: Array<string>, };
export type TodayConcept = { 
/**
 * The concept.
 */
concept: ConceptName, 
/**
 * Preview, practice or review on this date.
 */
phase: Phase, 
/**
 * The rating given, if any.
 */
confidence: Confidence | null, 
/**
 * How it went, if marked.
 */
outcome: Outcome | null, };
export type Trend = "rising" | "falling" | "maybe_rising" | "maybe_falling" | "no_clear_change" | "too_soon";
export type TrendTest = { 
/**
 * Passes with at least three raters; a trend needs six.
 */
passes: number, 
/**
 * Median change of the rating (0 to 3) per pass; none below two passes.
 */
slope: number | null, 
/**
 * Low end of its 95% interval (Sen 1968).
 */
low: number | null, 
/**
 * High end of its 95% interval.
 */
high: number | null, 
/**
 * Two-sided p-value.
 */
p: number, 
/**
 * Concepts tested together.
 */
concepts: number, };
export type Undoable = { 
/**
 * The date it was made.
 */
made_on: string, 
/**
 * How many files it read.
 */
files: number, };
export type UnitCubes = { 
/**
 * Boxes that touch without overlapping.
 */
boxes: Array<CubeBox>, 
/**
 * Draw each unit cube; else only the edges of the boxes.
 */
show_cubes: boolean, 
/**
 * What is written at width, depth and height of each box.
 */
labels: Array<[Expr | null, Expr | null, Expr | null]>, };
export type Unlocked = { "kind": "open" } | { "kind": "wrong", 
/**
 * Seconds.
 */
wait_seconds: number, } | { "kind": "wait", 
/**
 * Seconds left.
 */
wait_seconds: number, };
export type Verdict = { "kind": "new" } | { "kind": "updated" } | { "kind": "known" } | { "kind": "older" } | { "kind": "quarantined" } | { "kind": "refused", 
/**
 * Why.
 */
refusal: Refusal, };
export type VoiceMissing = "speech_dispatcher" | "system_voice" | "tablet_voice" | "everything";
export type Watch = { 
/**
 * Where it is; nothing when none is watched.
 */
folder: string | null, 
/**
 * Whether this device can watch a folder at all.
 */
possible: boolean, 
/**
 * An import that the last look started.
 */
job: JobId | null, 
/**
 * Why the folder could not be looked at.
 */
trouble: CallError | null, };
export type Weight = { 
/**
 * What is written on each.
 */
label: Expr, 
/**
 * How many.
 */
count: number, };
export type WordsOf = { 
/**
 * The language.
 */
language: Language, };
export type WorkedExample = { 
/**
 * Its prompt.
 */
prompt: Array<Block>, 
/**
 * What there is to choose from or to put in order; empty for other entries.
 */
choices: Array<Block>, 
/**
 * Its steps.
 */
steps: Array<Array<Block>>, 
/**
 * Its answer.
 */
answer: Array<Block>, };
export type World = "own" | "sample";
export type YearOver = { "kind": "class", 
/**
 * The class.
 */
class: string, 
/**
 * Its title.
 */
title: string, 
/**
 * Its last school day.
 */
last_day: string, } | { "kind": "student", 
/**
 * The profile's id.
 */
student: string, 
/**
 * The nickname.
 */
nickname: string, 
/**
 * The class's last school day.
 */
last_day: string, };
export interface DeviceCalls {
  start: { args: Nothing; out: Start };
  save_device_settings: { args: DeviceSettings; out: Start };
  exercise_words: { args: WordsOf; out: Array<MessageFile> };
  make_sample: { args: Nothing; out: JobId };
  enter_sample: { args: Nothing; out: Start };
  leave_sample: { args: Nothing; out: Start };
  job: { args: JobId; out: JobState };
  cancel_job: { args: JobId; out: JobState };
  opened_files: { args: Nothing; out: OpenedFiles };
  copies: { args: StoreName; out: Copies };
  restore_copy: { args: RestoreCopy; out: Restored };
  back_up: { args: BackUp; out: FileMade };
  pick_backup: { args: Nothing; out: PickedSealed | null };
  restore_backup: { args: OpenSealed; out: Restored };
  remove_student: { args: RemoveStudent; out: Start };
  remove_everything: { args: Nothing; out: Start };
  speak: { args: ReadAloud; out: Nothing };
  stop_speaking: { args: Nothing; out: Nothing };
}
export interface StudentCalls {
  pick_class_pack: { args: Nothing; out: PackOffer | null };
  check_seat_code: { args: SeatCodeTyped; out: Nothing };
  join: { args: Join; out: Profile };
  today: { args: StudentDay; out: Today };
  check_in: { args: CheckInTap; out: Today };
  practice: { args: PracticeAsked; out: PracticeStep };
  sure: { args: Sure; out: OpenExercise };
  hint: { args: ExerciseId; out: OpenExercise };
  answer: { args: AnswerGiven; out: Feedback };
  show_steps: { args: ExerciseId; out: Feedback };
  keep_draft: { args: DraftKept; out: Nothing };
  practice_summary: { args: StudentId; out: Summary };
  my_path: { args: StudentId; out: MyPath };
  set_focus: { args: Focus; out: MyPath };
  set_goals: { args: Goals; out: MyPath };
  hand_in_preview: { args: StudentId; out: HandInPreview };
  hand_in: { args: StudentId; out: HandInMade };
  share_hand_in: { args: StudentId; out: HandInMade };
  take_class_pack: { args: StudentId; out: PackTaken | null };
  student_settings: { args: StudentId; out: StudentSettings };
  save_student_settings: { args: NewStudentSettings; out: StudentSettings };
  unlock: { args: PinTyped; out: Unlocked };
  lock_students: { args: Nothing; out: Nothing };
  set_pin: { args: PinTyped; out: Nothing };
  remove_pin: { args: StudentId; out: Nothing };
  reset_pin: { args: PinReset; out: Nothing };
  make_carry: { args: CarryAsked; out: FileMade };
  pick_carry: { args: Nothing; out: PickedSealed | null };
  take_carry: { args: OpenSealed; out: CarryDone };
  print_practice: { args: StudentPrint; out: FileMade };
  print_path: { args: PathPrint; out: FileMade };
}
export interface DeskCalls {
  read_roster: { args: RosterText; out: RosterNames };
  pick_roster: { args: Nothing; out: RosterFile | null };
  create_class: { args: CreateClass; out: ClassSummary };
  copy_class: { args: CopyClass; out: ClassSummary };
  class_setup: { args: ClassId; out: ClassSetup };
  name_seat: { args: NameSeat; out: ClassSetup };
  add_seats: { args: AddSeats; out: ClassSetup };
  rename_class: { args: RenameClass; out: ClassSetup };
  move_year: { args: MoveYear; out: ClassSetup };
  seat_holdings: { args: SeatId; out: SeatHoldings };
  remove_seat: { args: SeatId; out: ClassSetup };
  delete_class: { args: ClassId; out: Nothing };
  restore_removed: { args: RemovedId; out: Nothing };
  discard_removed: { args: RemovedId; out: Nothing };
  unscheduled_concepts: { args: ClassId; out: Array<PlacedConcept> };
  set_taught_from: { args: TaughtFrom; out: ClassSetup };
  read_pacing: { args: PacingText; out: PacingList };
  set_first_lessons: { args: FirstLessons; out: ClassSetup };
  balanced_rotation: { args: RotationDays; out: Array<Array<string>> };
  set_rotation: { args: NewRotation; out: ClassSetup };
  set_closures: { args: NewClosures; out: ClassSetup };
  set_practice: { args: NewPractice; out: ClassSetup };
  join_slips: { args: ClassId; out: Array<JoinSlip> };
  save_class_pack: { args: ClassId; out: FileMade };
  import_hand_ins: { args: ImportAsked; out: JobId | null };
  imports: { args: JournalAsked; out: Journal };
  import_lines: { args: ImportLines; out: Array<FileReport> };
  undo_import: { args: Nothing; out: Journal };
  watch: { args: Nothing; out: Watch };
  watch_folder: { args: Nothing; out: Watch };
  unwatch_folder: { args: Nothing; out: Watch };
  export_class: { args: ClassKeyAsked; out: FileMade };
  pick_class_key: { args: Nothing; out: PickedSealed | null };
  import_class: { args: OpenSealed; out: Nothing };
  decide_device: { args: DeviceDecision; out: ClassSetup };
  board: { args: ClassId; out: Board };
  group_board: { args: GroupBoard; out: Board };
  comparison: { args: ClassId; out: Comparison };
  student_page: { args: SeatId; out: StudentPage };
  talk: { args: TalkAsked; out: TalkView };
  note_talk: { args: TalkNoted; out: Nothing };
  groups_desk: { args: ClassId; out: GroupsDesk };
  suggest_groups: { args: GroupsAsked; out: GroupsView };
  score_groups: { args: GroupsEdited; out: GroupsView };
  keep_groups: { args: GroupsKept; out: GroupsDesk };
  group_page: { args: GroupPageAsked; out: GroupPage };
  record_group: { args: GroupResult; out: GroupsDesk };
  entry_day: { args: EntryAsked; out: EntryDay };
  make_entries: { args: Entries; out: Nothing };
  concept_reports: { args: ClassConcept; out: ConceptReports };
  assign: { args: Assign; out: Array<AssignmentReport> };
  assignments: { args: ClassId; out: Array<AssignmentReport> };
  withdraw_assignment: { args: AssignmentId; out: Array<AssignmentReport> };
  restore_assignment: { args: AssignmentId; out: Array<AssignmentReport> };
  reports: { args: Nothing; out: Array<ReportInfo> };
  print: { args: ReportAsked; out: FileMade };
  preview: { args: ReportAsked; out: ReportPage };
  own_desk: { args: ClassId; out: OwnDesk };
  import_own_exercises: { args: OwnImportAsked; out: OwnDesk | null };
  undo_own_import: { args: OwnImportId; out: OwnDesk };
  remove_own_exercise: { args: OwnExerciseId; out: OwnDesk };
  own_exercise: { args: OwnExerciseId; out: OwnExercisePage };
  try_own_exercise: { args: OwnExerciseTry; out: OwnTried };
  pick_concepts: { args: ClassId; out: CatalogueReading | null };
  import_concepts: { args: ConceptsPicked; out: OwnDesk };
}
export type Calls = DeviceCalls & StudentCalls & DeskCalls;
